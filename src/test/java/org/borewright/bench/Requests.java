package org.borewright.bench;

import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Match requests for the four-cylinder engine of the demo, each with other readings, so that no answer can be a remembered one. */
final class Requests {

    private static final int DIFFERENT = 512;
    private static final int HOLES = 4;
    private static final int LEAST_WEAR = 4;
    private static final int MOST_WEAR = 160;

    private Requests() {}

    /** Full surveys: three depths by two axes in every hole. */
    static String[] surveys() {
        Random random = new Random(20260302);
        return IntStream.range(0, DIFFERENT).mapToObj(i -> survey(random)).toArray(String[]::new);
    }

    private static String survey(Random random) {
        String cylinders = IntStream.rangeClosed(1, HOLES)
                .mapToObj(hole -> hole(hole, random))
                .collect(Collectors.joining(","));
        return """
                {"engine":"OSTRAVEL-4","unit":"mm","condition":"worn","date":"2026-03-02","temperature":21.5,
                 "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[%s]}""".formatted(cylinders);
    }

    private static String hole(int hole, Random random) {
        // No two holes wear alike, for the same grid twice would be queried and not computed from.
        int wear = random.nextInt(LEAST_WEAR / HOLES, MOST_WEAR / HOLES) * HOLES + hole;
        String rows = IntStream.of(wear, wear * 2 / 3, wear / 3)
                .mapToObj(thousandths -> String.format(
                        Locale.ROOT, "[%.3f,%.3f]", 77.205 + thousandths / 1000.0, 77.203 + thousandths / 1200.0))
                .collect(Collectors.joining(","));
        return """
                {"cylinder":"%d","grid":{"depths":[12,60,115],"axes":["thrust","pin"],"readings":[%s]}}""".formatted(hole, rows);
    }
}
