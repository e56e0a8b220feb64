package org.borewright.api.order;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
import org.borewright.measure.survey.Finding;
import org.borewright.order.HoleRecord;

/**
 * What is kept of a hole in the life of its block.
 *
 * @param with gauge and temperature, in words
 */
record Measured(String with) {

    static Measured with(Measuring measuring) {
        String gauge = measuring.gauge().name().map(name -> "gauge " + name).orElse("a gauge that was not named");
        String warmth = measuring
                .climate()
                .stated()
                .map(temperature -> String.format(Locale.ROOT, "at %.1f °C", 20 + temperature.kelvinsAboveReference()))
                .orElse("temperature not stated");
        return new Measured("with " + gauge + ", " + warmth);
    }

    /** @param finishTold whether the sender told what it was last finished to */
    HoleRecord record(Hole hole, Optional<String> size, Optional<RebuildsLeft> left, boolean finishTold) {
        return new HoleRecord(
                hole.name(),
                size,
                hole.diameters().map(Limits::least),
                hole.diameters().map(Limits::greatest),
                left,
                Stream.concat(
                                Stream.of(hole.diameters().isPresent() ? with : "not measured"),
                                hole.survey().findings().stream().map(Measured::says))
                        .collect(Collectors.joining("; ")),
                finishTold);
    }

    /** As it was noted, at whatever temperature: no finding is known to the micrometre. */
    private static String says(Finding finding) {
        return finding.kind().label()
                + finding.depth()
                        .map(depth -> ", " + millimetres(depth) + " deep")
                        .orElse("")
                + finding.height()
                        .map(height -> ", " + millimetres(height) + " below the deck")
                        .orElse("");
    }

    private static String millimetres(Length length) {
        return ShownLength.of(length, LengthUnit.MILLIMETRE) + " mm";
    }
}
