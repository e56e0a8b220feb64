package org.borewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.borewright.scenario.Orders;
import org.junit.jupiter.api.Test;

/**
 * What each page weighs with style and script, as sent, and how long the server takes for it, asked one after the other; beside a file that
 * lies there ready, from the same server.
 */
@QuarkusTest
@TestProfile(EndpointBenchmark.Bench.class)
class PagesBenchmark {

    private static final int WARM_UP = 200;
    private static final int MEASURED = 400;
    private static final double P99 = 0.99;
    private static final int HEAVIEST_BYTES = 100_000;
    private static final Pattern LOOK = Pattern.compile("(?:href|src)=\"(/look/[^\"]+)\"");

    private final HttpClient browser = HttpClient.newHttpClient();

    @TestHTTPResource("/")
    URI service;

    @Test
    void weightAndTimeOfEachPageBesideAFile() throws IOException, InterruptedException {
        List.of("NH-H131-CB050", "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
        Orders done = confirmed("BENCH-1");
        done.does("finish", Orders.HONED).statusCode(200);
        String ours = "/orders/" + confirmed("BENCH-2").number();
        String quoted = "/orders/" + Orders.quoted("BENCH-3").number();
        String file = look(got("/").body()).last();
        List<String> paths = List.of(
                "/",
                "/desk/OSTRAVEL-6?known=survey",
                "/desk/OSTRAVEL-6/example",
                "/orders",
                ours,
                "/bench",
                "/bench/survey?engine=OSTRAVEL-6",
                quoted + "/survey",
                ours + "/confirm",
                ours + "/hone",
                ours + "/finish",
                ours + "/card",
                ours + "/card.pdf",
                "/shelf",
                "/shelf?engine=OSTRAVEL-6",
                "/blocks",
                "/blocks/BENCH-1");
        for (String path : paths) {
            print("page " + path, path, weight(path));
        }
        print("yardstick: the file " + file, file, got(file).body().length);
    }

    private static Orders confirmed(String block) {
        Orders order = Orders.quoted(block);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        return order;
    }

    private void print(String name, String path, int weight) throws IOException, InterruptedException {
        long first = nanos(path);
        for (int i = 0; i < WARM_UP; i++) {
            nanos(path);
        }
        long[] nanos = new long[MEASURED];
        for (int i = 0; i < MEASURED; i++) {
            nanos[i] = nanos(path);
        }
        Arrays.sort(nanos);
        System.out.printf(
                Locale.ROOT,
                "%n%s: %,d bytes; first %.1f ms, then median %.2f ms, p99 %.2f ms",
                name,
                weight,
                first / 1e6,
                nanos[MEASURED / 2] / 1e6,
                nanos[(int) (MEASURED * P99)] / 1e6);
    }

    private long nanos(String path) throws IOException, InterruptedException {
        long start = System.nanoTime();
        got(path);
        return System.nanoTime() - start;
    }

    /** With all that it loads. */
    private int weight(String path) throws IOException, InterruptedException {
        byte[] page = got(path).body();
        int weight = page.length;
        for (String file : look(page)) {
            weight += got(file).body().length;
        }
        assertThat(weight).as(path).isLessThan(HEAVIEST_BYTES);
        return weight;
    }

    private static SortedSet<String> look(byte[] page) {
        return LOOK.matcher(new String(page, StandardCharsets.UTF_8))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private HttpResponse<byte[]> got(String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = browser.send(
                HttpRequest.newBuilder(service.resolve(path))
                        .header("Accept", "text/html,*/*;q=0.8")
                        .build(),
                BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer;
    }
}
