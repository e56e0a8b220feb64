package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Rule;
import org.borewright.kit.Hold;
import org.borewright.kit.hole.PistonInHole;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Reading;
import org.jspecify.annotations.Nullable;

/**
 * Something that holds, and the way out.
 *
 * @param reason why, in a few words
 * @param says what holds and where, in one sentence, and one more for each kind of query
 * @param next the way out
 * @param cylinders the holes it concerns; empty for the engine
 * @param checks the checks it stands on, each with its place
 * @param queries what is asked about the readings of its one cylinder; absent where nothing is
 * @param provenHoles for clearances too close to call, the holes in which they would be proven; absent where it is something else
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record HoldAnswer(
        String reason,
        String says,
        String next,
        List<String> cylinders,
        List<ShownCheck> checks,
        @Nullable List<QueryAnswer> queries,
        @Nullable List<ProvenHoleAnswer> provenHoles) {

    /**
     * The holes in which any piston of a number is proven, when they are measured as this one was. At 20 °C, rounded inward.
     *
     * @param cylinder the hole that is too close to call
     * @param size the size in question
     * @param piston the number in question
     * @param least the smallest; absent where the tolerance of the piston leaves none
     * @param greatest the largest; absent where the tolerance of the piston leaves none
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record ProvenHoleAnswer(
            String cylinder,
            String size,
            String piston,
            @Nullable ShownLength least,
            @Nullable ShownLength greatest) {

        static ProvenHoleAnswer of(PistonInHole close, LengthUnit unit) {
            Optional<ShownLimits> proven = close.proven().map(holes -> ShownLimits.of(holes, unit));
            return new ProvenHoleAnswer(
                    close.hole().name(),
                    close.piston().size(),
                    close.piston().number().text(),
                    proven.map(ShownLimits::least).orElse(null),
                    proven.map(ShownLimits::greatest).orElse(null));
        }
    }

    /**
     * A question about readings that may be a slip. Diameters as they were sent, not at 20 °C, so that they can be found in the note.
     *
     * @param says what is odd
     * @param readings the readings in question; empty when it is the whole grid
     * @param beside the readings they were held against
     * @param sameAs the other cylinders with the same grid
     */
    public record QueryAnswer(
            String says, List<ReadingAnswer> readings, List<ReadingAnswer> beside, List<String> sameAs) {

        /** A query in a unit. */
        public static QueryAnswer of(Query query, LengthUnit unit) {
            return new QueryAnswer(
                    query.kind().label(),
                    readings(query.readings(), unit),
                    readings(query.beside(), unit),
                    query.sameAs());
        }

        private static List<ReadingAnswer> readings(List<Reading> readings, LengthUnit unit) {
            return readings.stream()
                    .map(reading -> ReadingAnswer.of(reading, unit))
                    .toList();
        }
    }

    /**
     * A reading of a grid and its place.
     *
     * @param depth from the deck
     * @param axis thrust, pin, or degrees from thrust
     * @param diameter as it was sent
     */
    public record ReadingAnswer(ShownLength depth, String axis, ShownLength diameter) {

        static ReadingAnswer of(Reading reading, LengthUnit unit) {
            return new ReadingAnswer(
                    ShownLength.of(reading.depth(), unit),
                    reading.axis().label(),
                    ShownLength.of(reading.diameter(), unit));
        }
    }

    /** What holds and where; of queried readings each with its place, as it was sent. */
    static String says(Hold hold, LengthUnit unit) {
        return hold.says()
                + hold.queries().stream()
                        .map(Query::kind)
                        .distinct()
                        .map(kind -> " Queried: " + kind.label() + " (" + queried(hold, kind, unit) + ").")
                        .collect(Collectors.joining());
    }

    private static String queried(Hold hold, Query.Kind kind, LengthUnit unit) {
        return hold.queries().stream()
                .filter(query -> query.kind() == kind)
                .flatMap(query -> Stream.concat(
                        query.readings().stream().map(reading -> placed(reading, unit)),
                        query.sameAs().stream().map(cylinder -> "cylinder " + cylinder)))
                .collect(Collectors.joining("; "));
    }

    private static String placed(Reading reading, LengthUnit unit) {
        return measured(reading.diameter(), unit) + " at depth " + measured(reading.depth(), unit) + ", "
                + reading.axis().label();
    }

    private static String measured(Length length, LengthUnit unit) {
        return ShownLength.of(length, unit) + " " + unit.symbol();
    }

    /** The way out of a hold: where the skim is too deep with the most it may be, where clearances are too close with what proves them. */
    static String next(Hold hold, LengthUnit unit) {
        return switch (hold.reason()) {
            case CHECK_OUT, CHECK_OPEN ->
                ShownCheck.waysOut(hold.checks(), unit).orElse(hold.reason().wayOut());
            case CLEARANCE_TOO_CLOSE -> withPistons(hold);
            case SKIMMED_TOO_FAR -> skimmed(hold, unit);
            case SKIMMED_TOO_FAR_BEFORE ->
                hold.reason().wayOut()
                        + (tooNear(hold) && most(hold, Rule.ENGINE_SKIM).isEmpty()
                                ? " A thicker gasket may rescue it, where one is found."
                                : "");
            default -> hold.reason().wayOut();
        };
    }

    private static String withPistons(Hold hold) {
        String never = hold.tooClose().stream()
                .filter(close -> close.proven().isEmpty())
                .map(close -> close.piston().number().text())
                .distinct()
                .collect(Collectors.joining(", "));
        boolean some = hold.tooClose().stream().anyMatch(close -> close.proven().isPresent());
        return hold.reason().wayOut()
                + (some ? " Without that, only a hole within the proven limits (provenHoles) is proven." : "")
                + (never.isEmpty()
                        ? ""
                        : " With the tolerance of " + never + " no hole is proven: only measured pistons settle it.");
    }

    private static String skimmed(Hold hold, LengthUnit unit) {
        return most(hold, Rule.DECK_SKIM)
                .map(most ->
                        (most.equals(Length.ZERO) ? "Do not skim" : "Skim at most " + shown(most, unit) + " altogether")
                                + (tooNear(hold) ? thicker(hold, most, unit) : "."))
                .orElse(hold.reason().wayOut());
    }

    /** What a thicker gasket may make of it: never more than the engine itself bears, and nothing where a set bears as much. */
    private static String thicker(Hold hold, Length bySets, LengthUnit unit) {
        return most(hold, Rule.ENGINE_SKIM)
                .map(most -> most.isMoreThan(bySets)
                        ? ", or at most " + shown(most, unit) + " where a thicker gasket is found."
                        : ".")
                .orElse(", or find a thicker gasket.");
    }

    /** The most that all skims may take by one rule; empty where it does not stand among the checks. */
    private static Optional<Length> most(Hold hold, Rule rule) {
        return hold.checks().stream()
                .filter(check -> check.rule() == rule)
                .flatMap(check -> check instanceof Comparison skim ? Stream.of(skim.limit()) : Stream.empty())
                .map(most -> Length.ofNanometres(most.units()))
                .max(Comparator.naturalOrder());
    }

    private static boolean tooNear(Hold hold) {
        return hold.checks().stream()
                .map(Check::rule)
                .anyMatch(rule -> rule == Rule.PISTON_TO_HEAD_LEAST || rule == Rule.COMPRESSION_RATIO);
    }

    private static String shown(Length most, LengthUnit unit) {
        return ShownLength.of(most, unit, Flattery.UPPER_LIMIT) + " " + unit.symbol();
    }

    /** A hold in a unit. */
    public static HoldAnswer of(Hold hold, LengthUnit unit) {
        return new HoldAnswer(
                hold.reason().label(),
                says(hold, unit),
                next(hold, unit),
                hold.cylinders(),
                hold.checks().stream().map(check -> ShownCheck.of(check, unit)).toList(),
                hold.queries().isEmpty()
                        ? null
                        : hold.queries().stream()
                                .map(query -> QueryAnswer.of(query, unit))
                                .toList(),
                hold.tooClose().isEmpty()
                        ? null
                        : hold.tooClose().stream()
                                .map(close -> ProvenHoleAnswer.of(close, unit))
                                .toList());
    }
}
