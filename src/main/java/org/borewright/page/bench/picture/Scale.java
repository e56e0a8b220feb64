package org.borewright.page.bench.picture;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * What lies at the left edge of a picture and at the right one, in mm.
 *
 * @param left the least diameter
 * @param right the greatest
 */
record Scale(double left, double right) {

    private static final double LEFT = 8;
    private static final double RIGHT = 232;
    private static final double HALF_A_LABEL = 24;
    private static final double MARGIN = 0.12;
    private static final double LEAST_SPAN_MM = 0.02;

    /** From the line below the readings to the one above; over all lines where nothing is read. */
    static Scale of(List<Double> read, List<SizeLine> lines) {
        List<Double> at = lines.stream().map(line -> line.at().doubleValue()).toList();
        List<Double> shown = read.isEmpty() ? at : read;
        double least = each(shown).min().orElse(0);
        double greatest = each(shown).max().orElse(0);
        double from = each(at).filter(line -> line <= least).max().orElse(least);
        double to = each(at).filter(line -> line >= greatest).min().orElse(greatest);
        double margin = Math.max(to - from, LEAST_SPAN_MM) * MARGIN;
        return new Scale(from - margin, to + margin);
    }

    private static DoubleStream each(List<Double> values) {
        return values.stream().mapToDouble(value -> value);
    }

    /** Where a diameter lies. */
    String x(double mm) {
        return place(at(mm));
    }

    /** Where the middle of its label stands. */
    String labelX(double mm) {
        return place(Math.min(Math.max(at(mm), LEFT + HALF_A_LABEL), RIGHT - HALF_A_LABEL));
    }

    private double at(double mm) {
        return LEFT + (mm - left) / (right - left) * (RIGHT - LEFT);
    }

    boolean shows(double mm) {
        return mm >= left && mm <= right;
    }

    static String place(double at) {
        return String.format(Locale.ROOT, "%.1f", at);
    }
}
