package org.borewright.kit.hole;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.borewright.catalog.BoreSpec;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.Finding;

/**
 * The largest that the reading which decides may be for a hole to be certain at a finish, all other readings as they are: what the finish
 * leaves over is turned back into the reading. A diameter counts twice in what the bar needs and once in what the hone needs, a
 * radius twice. Source: the clean-up of {@link org.borewright.fit.CleanUp} and {@link org.borewright.fit.HoneOnly}, solved for the reading.
 *
 * @param read which reading decides
 * @param at20 the limit at 20 °C, rounded down
 */
public record ReadingLimit(Read read, Length at20) {

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
                .flatMap(worst -> (hole.isProbed() ? ofWall(hole, worst, request, bore) : ofBareDiameter(hole))
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

    /** The radius probed; empty where the diameters ask for more. */
    private static Optional<ReadingLimit> ofWall(Hole hole, Length worst, MatchRequest request, BoreSpec bore) {
        return hole.survey()
                .wall()
                .reach()
                .filter(reach -> hole.cleanUp().best().filter(worst::equals).isEmpty())
                .map(reach -> bore.expansion()
                        .atReference(reach.radius(), request.climate().temperature()))
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
                deciding = new ReadingLimit(
                        there.equals(largest) ? Read.LARGEST_DIAMETER : Read.DIAMETER_AT_FINDING, there);
            }
        }
        return deciding;
    }

    /** The same reading, larger by what is left over; twice, for what is left over depends a little on the reading. */
    private ReadingLimit settled(Hole hole, MatchRequest request, BoreSpec bore, UnaryOperator<Length> leftOver) {
        Length limit = at20.plus(leftOver.apply(hole.uncertainty()));
        for (int i = 0; i < 2 && read != Read.PROBED_WALL; i++) {
            Length greatest = read == Read.LARGEST_DIAMETER
                    ? limit
                    : limit.max(hole.diameters().orElseThrow().greatest());
            Length uncertainty = Uncertainty.of(greatest, request.gauge(), request.climate(), bore.expansion())
                    .expanded();
            limit = at20.plus(leftOver.apply(uncertainty));
        }
        return new ReadingLimit(read, limit);
    }

    /** The limit as it would be read with the gauge and at the temperature of a request, rounded down. */
    public Length asRead(MatchRequest request, BoreSpec bore) {
        double ringGrowth = read == Read.PROBED_WALL ? 0 : request.gauge().ringGrowth();
        return bore.expansion().asRead(at20, ringGrowth, request.climate().temperature());
    }
}
