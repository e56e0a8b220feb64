package org.borewright.scenario;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.HashMap;
import java.util.Map;
import org.borewright.database.TestDatabase;

/**
 * A shop of its own for tests that take parts off the shelf: nobody else finds fewer. It raises tax and asks a deposit, and its pages are
 * reached elsewhere.
 */
public class OwnShop implements QuarkusTestProfile {

    /** Where others reach its pages. */
    public static final String ADDRESS = "https://engines.example";

    /** How long it waits for a receiver of its journal. */
    public static final int PATIENCE_SECONDS = 3;

    @Override
    public Map<String, String> getConfigOverrides() {
        Map<String, String> settings = new HashMap<>(TestDatabase.own(TestDatabase.OWN_SHOP));
        settings.put("borewright.page.address", ADDRESS);
        settings.put("borewright.hook.patience", PATIENCE_SECONDS + "s");
        // Who waits for a lock in vain is told within the time that tests have.
        settings.put(
                "quarkus.datasource.jdbc.new-connection-sql",
                TestDatabase.isPostgres() ? "SET lock_timeout = '1s'" : "SET LOCK_TIMEOUT 1000");
        settings.put("borewright.order.tax-percent", "20");
        settings.put("borewright.order.deposit-percent", "30");
        return settings;
    }
}
