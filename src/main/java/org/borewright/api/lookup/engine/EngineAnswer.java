package org.borewright.api.lookup.engine;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.util.List;
import org.borewright.api.match.answer.TorqueAnswer;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.kit.choice.TorqueReminder;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * One engine with all that is asked of it.
 *
 * @param engine its code
 * @param maker who made it
 * @param model the maker's name for it
 * @param strokes two or four
 * @param layout how the cylinders stand
 * @param construction how the holes are made
 * @param separateBarrels whether each hole is in a barrel of its own, that can be put on another engine
 * @param mayBeBored whether bar and hone may touch the wall
 * @param surface what the rings run on
 * @param torquePlate whether it is bored, honed and measured with a plate on, tightened as the head is
 * @param steps the unit its oversizes step in
 * @param displacement of the whole engine at standard in cm³
 * @param cylinders in the maker's order
 * @param sizes rising
 * @param bore the hole and the metal around it
 * @param deck from crankshaft to head
 * @param limits in service
 * @param torques how its fasteners are tightened: reminders
 * @param unit of all lengths
 * @param revision of the catalogue as to what fits
 */
public record EngineAnswer(
        String engine,
        String maker,
        String model,
        int strokes,
        String layout,
        String construction,
        boolean separateBarrels,
        boolean mayBeBored,
        String surface,
        boolean torquePlate,
        String steps,
        BigDecimal displacement,
        List<CylinderAnswer> cylinders,
        List<SizeAnswer> sizes,
        BoreAnswer bore,
        DeckAnswer deck,
        LimitsAnswer limits,
        List<TorqueAnswer> torques,
        String unit,
        String revision) {

    /**
     * A hole.
     *
     * @param cylinder its name
     * @param hand which hand of piston it takes
     * @param pitchToNext to the axis of the next hole in the same casting; absent where none follows
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record CylinderAnswer(
            String cylinder, String hand, @Nullable ShownLength pitchToNext) {

        static CylinderAnswer of(Cylinder hole, LengthUnit unit) {
            return new CylinderAnswer(hole.name(), hole.hand().label(), ShownLength.of(hole.pitchToNext(), unit));
        }
    }

    /**
     * A size it is rebuilt to.
     *
     * @param size its label
     * @param oversize over standard
     * @param newBore the limits of a new hole of this size
     * @param furtherWork whether it needs further engine work, so that it is shown and not offered
     * @param made whether a piston was made for it
     */
    public record SizeAnswer(
            String size, ShownLength oversize, ShownLimits newBore, boolean furtherWork, boolean made) {

        static SizeAnswer of(Shelf shelf, Size size, LengthUnit unit) {
            return new SizeAnswer(
                    size.label(),
                    ShownLength.of(size.oversize(), unit),
                    ShownLimits.of(shelf.engine().newBore(size), unit),
                    size.furtherWork(),
                    shelf.parts().pistons().stream()
                            .anyMatch(piston -> piston.size().equals(size.label())));
        }
    }

    static EngineAnswer of(Shelf shelf, LengthUnit unit) {
        Engine engine = shelf.engine();
        return new EngineAnswer(
                engine.code(),
                engine.name().maker(),
                engine.name().model(),
                engine.build().strokes().count(),
                engine.build().layout().label(),
                engine.build().construction().label(),
                engine.hasSeparateBarrels(),
                engine.build().construction().mayBeBored(),
                engine.build().surface().label(),
                engine.build().torquePlate(),
                engine.build().steps().symbol(),
                EngineSearch.displacement(engine),
                engine.cylinders().stream()
                        .map(hole -> CylinderAnswer.of(hole, unit))
                        .toList(),
                shelf.sizes().stream()
                        .map(size -> SizeAnswer.of(shelf, size, unit))
                        .toList(),
                BoreAnswer.of(engine, unit),
                DeckAnswer.of(engine, unit),
                LimitsAnswer.of(engine.limits(), unit),
                shelf.fasteners().stream()
                        .map(TorqueReminder::of)
                        .map(reminder -> TorqueAnswer.of(reminder, unit))
                        .toList(),
                unit.symbol(),
                shelf.revision().fit());
    }
}
