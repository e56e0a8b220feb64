package org.borewright.api.order;

import java.util.Locale;
import java.util.Optional;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
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

    HoleRecord record(Hole hole, Optional<String> size, Optional<RebuildsLeft> left) {
        return new HoleRecord(
                hole.name(),
                size,
                hole.diameters().map(Limits::least),
                hole.diameters().map(Limits::greatest),
                left,
                hole.diameters().isPresent() ? with : "not measured");
    }
}
