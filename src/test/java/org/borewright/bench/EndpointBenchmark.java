package org.borewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.net.URL;
import java.util.Locale;
import java.util.Map;
import org.borewright.bench.Load.Measured;
import org.junit.jupiter.api.Test;

/** Throughput and 99th percentile of the match beside an echo of bodies of the same sizes in the same process. */
@QuarkusTest
@TestProfile(EndpointBenchmark.Bench.class)
class EndpointBenchmark {

    private static final int WARM_UP = 60_000;
    private static final int MEASURED = 60_000;
    private static final int ROUNDS = 3;

    /** Puts the echo beside the service. */
    public static class Bench implements QuarkusTestProfile {

        @Override
        public String getConfigProfile() {
            return "bench";
        }

        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "quarkus.datasource.jdbc.url",
                    "jdbc:h2:mem:bench;DB_CLOSE_DELAY=-1",
                    "quarkus.http.test-port",
                    "0");
        }
    }

    @TestHTTPResource
    URL address;

    @Test
    void matchBesideEcho() throws InterruptedException {
        String[] surveys = Requests.surveys();
        Load load = new Load(address.getPort());
        int bytes = load.run("/api/match", surveys, WARM_UP).bytes();
        String echo = "/bench/echo?bytes=" + bytes;
        load.run(echo, surveys, WARM_UP);
        System.out.printf(Locale.ROOT, "%nrequest %d bytes, answer %d bytes%n", surveys[0].length(), bytes);
        for (int round = 1; round <= ROUNDS; round++) {
            Measured yardstick = load.run(echo, surveys, MEASURED);
            Measured match = load.run("/api/match", surveys, MEASURED);
            System.out.printf(
                    Locale.ROOT,
                    "round %d: match %,.0f/s, p99 %,.0f µs; echo %,.0f/s, p99 %,.0f µs; match is %.0f %% of echo%n",
                    round,
                    match.perSecond(),
                    match.p99Micros(),
                    yardstick.perSecond(),
                    yardstick.p99Micros(),
                    100 * match.perSecond() / yardstick.perSecond());
            assertThat(match.bytes()).isPositive();
        }
        load.close();
    }
}
