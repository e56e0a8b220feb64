package org.borewright.api.hook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.borewright.order.desk.Hooks;
import org.borewright.order.store.HookRow;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A courier of years to come, who alone finds due what is not to be told before then. */
@QuarkusTest
@TestProfile(OwnShop.class)
class CourierTest {

    private static final Instant THEN = Instant.parse("2126-03-02T09:00:00Z");

    @Inject
    ObjectMapper json;

    @Inject
    Hooks hooks;

    private long id;

    /** A hook that has not been told of its own making. */
    private Courier courierFor(String url, String secret) {
        id = QuarkusTransaction.requiringNew().call(() -> {
            HookRow hook = hooks.make(url, "Ada");
            hook.position--;
            hook.nextTry = THEN.minusSeconds(1);
            hook.secret = secret;
            return hook.id;
        });
        return new Courier(json, Clock.fixed(THEN, ZoneOffset.UTC), () -> Duration.ofSeconds(10));
    }

    @AfterEach
    void nobodyIsToldAnyMore() {
        hooks.end(id, "Ada");
    }

    private HookRow hook() {
        return QuarkusTransaction.requiringNew().call(() -> HookRow.findById(id));
    }

    @Test
    void aMessageThatCannotBeMadeIsAFailureLikeAnyOther() throws InterruptedException {
        Courier courier = courierFor("http://127.0.0.1:9/", "no base 64");

        courier.goRound();

        await().atMost(Duration.ofSeconds(10)).until(() -> hook().failures == 1);
        assertThat(hook().lastFailure).isEqualTo("not sent: no message could be made; the log of the service says why");
        assertThat(hook().nextTry).isEqualTo(THEN.plusSeconds(1));
        courier.goHome();
    }

    /** An interrupted thread that wrote to the tables would close their file for everybody. */
    @Test
    void whoGoesHomeMeanwhileNotesNothing() throws Exception {
        try (ServerSocket silent = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Courier courier = courierFor("http://127.0.0.1:" + silent.getLocalPort() + "/", "AAAA");

            courier.goRound();
            try (Socket caller = silent.accept()) {
                courier.goHome();
                assertThat(caller.isConnected()).isTrue();
            }

            assertThat(hook().failures).isZero();
            assertThat(hook().lastFailure).isNull();
            assertThat(hook().nextTry).isEqualTo(THEN.plusSeconds(30));
        }
    }
}
