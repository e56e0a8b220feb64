package org.borewright.database;

import java.util.Map;

/**
 * The database of the test run. Each start of the service has a class loader of its own, so that what one start is to know of the run stands
 * in the properties of the machine.
 */
public final class TestDatabase {

    /** Where the server of this run listens, up to the name of a database; absent in a run on H2. */
    static final String SERVER = "borewright.test.postgresql";

    /** A shop that tests take parts off the shelf of. */
    public static final String OWN_SHOP = "own-shop";

    /** One that is started twice. */
    public static final String TWO_STARTS = "two-starts";

    /** One that older versions filled. */
    static final String UPGRADES = "upgrades";

    /** A shop that is shown the demo orders. */
    public static final String DEMO_ORDERS = "demo-orders";

    private TestDatabase() {}

    /** Settings of a start with a database of its own, of this name. */
    public static Map<String, String> own(String name) {
        return Map.of(
                "quarkus.datasource.jdbc.url",
                isPostgres() ? System.getProperty(SERVER) + name : "jdbc:h2:mem:" + name + ";DB_CLOSE_DELAY=-1");
    }

    /** Whether this run is on PostgreSQL. */
    public static boolean isPostgres() {
        return System.getProperty(SERVER) != null;
    }
}
