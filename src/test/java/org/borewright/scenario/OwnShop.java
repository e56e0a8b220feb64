package org.borewright.scenario;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.HashMap;
import java.util.Map;
import org.borewright.database.TestDatabase;

/** A shop of its own for tests that take parts off the shelf: nobody else finds fewer. It raises tax and asks a deposit. */
public class OwnShop implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        Map<String, String> settings = new HashMap<>(TestDatabase.own(TestDatabase.OWN_SHOP));
        if (TestDatabase.isPostgres()) {
            // As H2 does of itself.
            settings.put("quarkus.datasource.jdbc.new-connection-sql", "SET lock_timeout = '2s'");
        }
        settings.put("borewright.order.tax-percent", "20");
        settings.put("borewright.order.deposit-percent", "30");
        return settings;
    }
}
