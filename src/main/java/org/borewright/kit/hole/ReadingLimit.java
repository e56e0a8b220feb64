package org.borewright.kit.hole;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.borewright.catalog.BoreSpec;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;

/**
 * The largest that the reading which decides may be for a hole to be certain at a finish, all other readings as they are: what the finish
 * leaves over is turned back into the reading. A diameter counts twice in what the bar needs and once in what the hone needs or a clearance
 * leaves, a radius twice. It is true to the few nanometres that the rounding of a correction and of an uncertainty may come to, and the rule
 * itself tells the last. Source: the clean-up of {@link org.borewright.fit.CleanUp} and {@link org.borewright.fit.HoneOnly} and the
 * {@link org.borewright.fit.Clearance}, solved for the reading.
 *
 * @param read which reading decides
 * @param height where it was read, how far below the deck, where a finding makes it decide; empty for the largest of the hole
 * @param at20 the limit at 20 °C, rounded down
 */
public record ReadingLimit(Read read, Optional<Length> height, Length at20) {

    /** Of a reading that decides wherever it was read. */
    ReadingLimit(Read read, Length at20) {
        this(read, Optional.empty(), at20);
    }

    /** Which reading decides what a hole needs. */
    public enum Read {
        /** The largest diameter of the hole. */
        LARGEST_DIAMETER("largest diameter"),
        /** The largest diameter where a finding lies. */
        DIAMETER_AT_FINDING("largest diameter at the finding"),
        /** How far the wall stands off the axis. */
        PROBED_WALL("probed wall");

        private final String label;

        Read(String label) {
            this.label = label;
        }

        /** The words as shown. */
        public String label() {
            return label;
        }
    }

    /** At a finish that the bar leads to; empty where no reading decides. */
    public static Optional<ReadingLimit> byBar(Hole hole, Length finish, MatchRequest request, BoreSpec bore) {
        Length bar = finish.minus(bore.honeStock());
        return hole.cleanUp()
                .worst()
                .flatMap(worst -> hole.isProbed()
                        ? ofWall(hole, worst, finish, bore)
                        : ofBareDiameter(hole)
                                .map(reading -> reading.settled(
                                        hole,
                                        request,
                                        bore,
                                        uncertainty -> bar.minus(worst)
                                                .minus(uncertainty.doubled())
                                                .halfRoundedDown())));
    }

    /** At a finish that the hone alone leads to; empty where no reading decides. */
    public static Optional<ReadingLimit> byHone(Hole hole, Length finish, MatchRequest request, BoreSpec bore) {
        return hole.honeCleanUp()
                .filter(needed ->
                        !HoleCleanUp.isOpen(hole.survey()) && !hole.survey().isAlwaysMachined())
                .map(needed -> ofDiameter(hole, 2)
                        .settled(
                                hole,
                                request,
                                bore,
                                uncertainty -> finish.minus(needed).minus(uncertainty)));
    }

    /** In a hole that is left as it is; empty where it was not measured, or something stands in the way. */
    public static Optional<ReadingLimit> asItIs(Hole hole, PistonShape piston, MatchRequest request, BoreSpec bore) {
        Length most = piston.diameter().least().plus(piston.clearance().greatest());
        return hole.diameters()
                .filter(measured -> !HoleCleanUp.isOpen(hole.survey()))
                .map(measured -> new ReadingLimit(Read.LARGEST_DIAMETER, measured.greatest())
                        .settled(
                                hole,
                                request,
                                bore,
                                uncertainty -> most.minus(measured.greatest()).minus(uncertainty)));
    }

    /** The radius probed; empty where the diameters ask for more. */
    private static Optional<ReadingLimit> ofWall(Hole hole, Length worst, Length finish, BoreSpec bore) {
        return hole.probe()
                .filter(reach -> hole.cleanUp().best().filter(worst::equals).isEmpty())
                .map(reach -> reach.fromBarAxis() ? Length.ZERO : bore.centringError())
                .map(hole.wallWithin(finish, bore)::minus)
                .map(radius -> new ReadingLimit(Read.PROBED_WALL, radius));
    }

    /** The diameter of a wall not probed; empty where the one reading is the size when new as well. */
    private static Optional<ReadingLimit> ofBareDiameter(Hole hole) {
        boolean isAlsoSizeWhenNew = hole.diameters()
                        .filter(all -> all.least().equals(all.greatest()))
                        .isPresent()
                && hole.whenNew()
                        .filter(known -> known.from() == WhenNew.From.SMALLEST_READING)
                        .isPresent();
        return isAlsoSizeWhenNew ? Optional.empty() : Optional.of(ofDiameter(hole, 1));
    }

    /** The diameter that decides, where the depth of a finding counts so often beside it. */
    private static ReadingLimit ofDiameter(Hole hole, int depths) {
        Length largest = hole.diameters().orElseThrow().greatest();
        ReadingLimit deciding = new ReadingLimit(Read.LARGEST_DIAMETER, largest);
        Length most = largest;
        for (Finding finding : hole.survey().findings()) {
            Length there = finding.height().flatMap(hole.at20()::largestNear).orElse(largest);
            Length needed = there.plus(finding.cut().times(depths));
            if (needed.isMoreThan(most)) {
                most = needed;
                deciding = there.equals(largest)
                        ? new ReadingLimit(Read.LARGEST_DIAMETER, there)
                        : new ReadingLimit(Read.DIAMETER_AT_FINDING, finding.height(), there);
            }
        }
        return deciding;
    }

    /** The same reading, larger by what is left over; twice, for what is left over depends a little on the reading. */
    private ReadingLimit settled(Hole hole, MatchRequest request, BoreSpec bore, UnaryOperator<Length> leftOver) {
        Length limit = at20.plus(leftOver.apply(hole.uncertainty()));
        for (int i = 0; i < 2; i++) {
            Length greatest = read == Read.LARGEST_DIAMETER
                    ? limit
                    : limit.max(hole.diameters().orElseThrow().greatest());
            Length uncertainty = Uncertainty.of(greatest, request.gauge(), request.climate(), bore.expansion())
                    .expanded();
            limit = at20.plus(leftOver.apply(uncertainty));
        }
        return new ReadingLimit(read, height, limit);
    }

    /** The same reading as it was taken. */
    public Length now(CylinderSurvey survey) {
        return switch (read) {
            case PROBED_WALL -> survey.wall().reach().orElseThrow().radius();
            case LARGEST_DIAMETER -> survey.asRead().largest().orElseThrow();
            case DIAMETER_AT_FINDING ->
                survey.asRead().largestNear(height.orElseThrow()).orElseThrow();
        };
    }

    /** The survey with this reading moved: no other of its place above it, and where it grows none but the largest moved. */
    public CylinderSurvey moved(CylinderSurvey survey, Length to) {
        return switch (read) {
            case PROBED_WALL -> survey.reaching(to);
            case LARGEST_DIAMETER -> withLargest(survey, to);
            case DIAMETER_AT_FINDING ->
                survey.with(survey.asRead().mapNear(height.orElseThrow(), move(now(survey), to)));
        };
    }

    /** The survey of a hole with its largest diameter moved likewise. */
    public static CylinderSurvey withLargest(CylinderSurvey survey, Length to) {
        return survey.with(survey.asRead().map(move(survey.asRead().largest().orElseThrow(), to)));
    }

    private static UnaryOperator<Length> move(Length now, Length to) {
        return to.isLessThan(now) ? diameter -> diameter.min(to) : diameter -> diameter.equals(now) ? to : diameter;
    }

    /** The limit as it would be read with the gauge and at the temperature of a request, rounded down. */
    public Length asRead(MatchRequest request, BoreSpec bore) {
        double ringGrowth = read == Read.PROBED_WALL ? 0 : request.gauge().ringGrowth();
        return bore.expansion().asRead(at20, ringGrowth, request.climate().temperature());
    }
}
