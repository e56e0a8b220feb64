package org.borewright.api.demo;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.borewright.database.TestDatabase;
import org.junit.jupiter.api.Test;

@QuarkusTest
@TestProfile(DemoOrdersTest.NewShop.class)
class DemoOrdersTest {

    @Inject
    DemoOrders demo;

    /** A shop that opens for the first time, with the file of the demo catalogue. */
    public static class NewShop implements QuarkusTestProfile {

        @Override
        public Map<String, String> getConfigOverrides() {
            Map<String, String> settings = new HashMap<>(TestDatabase.own(TestDatabase.DEMO_ORDERS));
            settings.put("borewright.demo.orders", "catalog-data/demo-orders.jsonl");
            return settings;
        }
    }

    @Test
    void aNewShopSeesOrdersInEveryStateThatTellsSomething() throws Exception {
        var orders = given().get("/api/orders").jsonPath();

        assertThat(orders.getList("orders.state", String.class))
                .containsExactly("received", "surveyed", "quoted", "accepted", "confirmed", "released", "declined");
        assertThat(given().get("/api/journal/verification").jsonPath().getBoolean("holds"))
                .isTrue();

        demo.onStart(null);

        assertThat(given().get("/api/orders").jsonPath().getList("orders")).hasSize(7);
    }
}
