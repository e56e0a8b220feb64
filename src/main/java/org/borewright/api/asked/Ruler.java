package org.borewright.api.asked;

import java.math.BigDecimal;
import java.util.Optional;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.ProblemType;
import org.borewright.api.problem.Suggestion;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.Slip;

/**
 * Reads lengths in the unit of the request, and judges whether this engine can have them.
 *
 * @param unit of every length in the request; empty when that could not be read, and then lengths are judged as numbers only
 * @param believed the diameters its holes can have; empty when the engine is not known
 * @param deepest how far below the deck a hole can reach: to the crankshaft's axis
 */
public record Ruler(Optional<LengthUnit> unit, Optional<Limits> believed, Length deepest) {

    /** No piston that runs has more clearance than this, and none is measured so far across the pin. */
    private static final Length SMALLER_THAN_HOLES = Length.ofMicrometres(1_000);

    /** The ruler for an engine. */
    public static Ruler of(Optional<LengthUnit> unit, Optional<FitTable> fits) {
        return new Ruler(
                unit,
                fits.map(FitTable::plausible),
                fits.map(table -> table.shelf().engine().deck().barrelHeight().greatest())
                        .orElse(Length.LONGEST_TYPED));
    }

    /** A diameter of a hole. */
    public Optional<Length> diameter(Place place) {
        return believable(place, believed, "hole");
    }

    /** A diameter of a piston: from a little below the holes that are believed, for a worn skirt is smaller, up to the largest of them. */
    public Optional<Length> piston(Place place) {
        return believable(
                place,
                believed.map(
                        diameters -> new Limits(diameters.least().minus(SMALLER_THAN_HOLES), diameters.greatest())),
                "piston");
    }

    /** A radius of a hole. */
    public Optional<Length> radius(Place place) {
        return believable(
                place,
                believed.map(diameters -> new Limits(
                        diameters.least().halfRoundedUp(), diameters.greatest().halfRoundedDown())),
                "hole");
    }

    /** A size not far from the holes: from half the smallest that is believed to twice the largest. */
    public Optional<Length> nearHole(Place place) {
        Limits near = believed.map(diameters -> new Limits(
                        diameters.least().halfRoundedUp(), diameters.greatest().doubled()))
                .orElse(new Limits(Length.ofNanometres(1), Length.LONGEST_TYPED));
        return within(place, near, figure(near.least(), Flattery.LOWER_LIMIT) + " to ");
    }

    /** A distance below the deck. */
    public Optional<Length> belowDeck(Place place) {
        return upTo(place, deepest);
    }

    /** A length above zero, up to a most. */
    public Optional<Length> above(Place place, Length most) {
        return within(place, new Limits(Length.ofNanometres(1), most), "above 0, at most ");
    }

    /** A length from zero to a most, both allowed. */
    public Optional<Length> upTo(Place place, Length most) {
        return within(place, new Limits(Length.ZERO, most), "0 to ");
    }

    /** Whether a typed length stands for an exact one: no other that can be typed in the unit of the request lies between them. */
    boolean isSameAsTyped(Length typed, Length exact) {
        long step = unit.orElse(LengthUnit.MILLIMETRE).typedStep();
        return typed.minus(exact).absolute().isLessThan(Length.ofNanometres(step));
    }

    /** An uncertainty as it is shown in the unit of the request. */
    String uncertainty(Length length) {
        LengthUnit shown = unit.orElse(LengthUnit.MILLIMETRE);
        return ShownLength.of(length, shown, Flattery.UNCERTAINTY) + " " + shown.symbol();
    }

    private Optional<Length> within(Place place, Limits limits, String upTo) {
        Optional<Length> length = length(place);
        if (length.isPresent() && !limits.hold(length.get())) {
            boolean negative = length.get().isNegative();
            place.fault(
                    ProblemType.BAD_FIGURE,
                    negative ? "The length is negative." : "The length is outside its range.",
                    upTo + upper(limits.greatest()));
            return Optional.empty();
        }
        return length;
    }

    /** A slip is suggested where exactly one explains what is not believed. */
    private Optional<Length> believable(Place place, Optional<Limits> limits, String of) {
        Optional<Length> length = length(place);
        if (length.isPresent() && limits.isPresent() && !limits.get().hold(length.get())) {
            place.add(notBelieved(place, length.get(), limits.get(), of));
            return Optional.empty();
        }
        return length;
    }

    private Fault notBelieved(Place place, Length length, Limits limits, String of) {
        boolean small = length.isLessThan(limits.least());
        Fault fault = Fault.of(
                        ProblemType.BAD_READING,
                        place.pointer(),
                        small
                                ? "The reading is smaller than any " + of + " of this engine."
                                : "The reading is larger than any " + of + " of this engine.")
                .sent(place.sent())
                .against(range(limits));
        return unit.filter(known -> place.isTold())
                .flatMap(known -> place.number().flatMap(typed -> Slip.suggest(typed, known, limits)))
                .map(slip -> fault.suggesting(new Suggestion(slip.value(), slip.slip()))
                        .wayOut("Did you mean " + slip.value().toPlainString()
                                + "? Compare with the note from the bench."))
                .orElse(fault);
    }

    private Optional<Length> length(Place place) {
        Optional<BigDecimal> number = place.number();
        if (number.isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Length.parse(number.get(), unit.get()));
        } catch (IllegalArgumentException refused) {
            place.fault(
                    ProblemType.BAD_FIGURE,
                    refused.getMessage() + ".",
                    "at most " + unit.get().typedDecimals() + " decimals, and 10 m");
            return Optional.empty();
        }
    }

    private String range(Limits limits) {
        return figure(limits.least(), Flattery.LOWER_LIMIT) + " to " + upper(limits.greatest());
    }

    private String upper(Length length) {
        return figure(length, Flattery.UPPER_LIMIT) + " "
                + unit.orElse(LengthUnit.MILLIMETRE).symbol();
    }

    private String figure(Length length, Flattery kind) {
        return ShownLength.of(length, unit.orElse(LengthUnit.MILLIMETRE), kind).toString();
    }
}
