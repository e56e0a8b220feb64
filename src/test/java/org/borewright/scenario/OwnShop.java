package org.borewright.scenario;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A shop of its own for tests that take parts off the shelf: nobody else finds fewer. It raises tax and asks a deposit. */
public class OwnShop implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of(
                "quarkus.datasource.jdbc.url", "jdbc:h2:mem:own-shop;DB_CLOSE_DELAY=-1",
                "borewright.order.tax-percent", "20",
                "borewright.order.deposit-percent", "30");
    }
}
