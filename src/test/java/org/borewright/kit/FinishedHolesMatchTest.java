package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Size;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Pistons for finished holes. A standard piston is 69.940 to 69.950 mm with 0.040 to 0.100 mm: proven from 69.990 + U to 70.040 − U, where U is
 * 0.005 281 mm.
 */
class FinishedHolesMatchTest {

    @ParameterizedTest(name = "{0} and {1}: {2} {3}")
    @CsvSource({
        "70.005, 70.010, serves, standard, ",
        "70.255, 70.260, serves, +0.25, ",
        // the window, proven to the nanometre
        "69.995281, 70.010, serves, standard, ",
        "69.995280, 70.010, hold, standard, CLEARANCE_TOO_CLOSE",
        "70.034719, 70.010, serves, standard, ",
        "70.034720, 70.010, hold, standard, CLEARANCE_TOO_CLOSE",
        // two sizes, brought together by honing the smaller
        "70.010, 70.260, hold, -, HOLES_DIFFER",
        // between sizes: both can be honed to +0.25
        "70.100, 70.120, hold, -, BETWEEN_SIZES",
        // one has its size, the other lies between
        "70.010, 70.120, hold, -, HOLES_DIFFER",
        // beyond the last window
        "71.100, 70.010, no common size, -, NO_COMMON_SIZE",
    })
    void oneSizeMustHoldAllHoles(String first, String second, String verdict, String size, String reason) {
        Match match = new TwinShop().finished(first, second);

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(match.ruling().holds().stream()
                        .map(hold -> hold.reason().name())
                        .toList())
                .isEqualTo(reason == null ? List.of() : List.of(reason));
    }

    /**
     * To +0.25 a hole must be 70.250. A hone takes what is left where that is no more than its stock of 0.05, from the largest reading
     * + 0.005 on; the bar takes the rest before it.
     */
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource({
        "70.190, rebore, certain",
        "70.194700, rebore, certain",
        "70.194800, hone only, certain",
        "70.234700, hone only, certain",
        "70.234800, as it is, possible",
    })
    void whatIsLeftToALargerSizeIsBoredOrHoned(String diameter, String work, String certainty) {
        HoleAtSize fate = new TwinShop()
                .finished(diameter, "70.260")
                .table()
                .get(1)
                .holes()
                .get(0);

        assertThat(fate.work().label()).isEqualTo(work);
        assertThat(fate.certainty().label()).isEqualTo(certainty);
    }

    /** Where the hone needs more than the target it goes so far, and the window of +0.25 holds it, proven: 70.290 less 2U, U = 0.005 282. */
    @ParameterizedTest(name = "a hone that takes {0} more: to {1}, {2}")
    @CsvSource({
        "0.005,    70.250,    certain",
        "0.020,    70.250,    certain",
        "0.020001, 70.250001, certain",
        "0.049436, 70.279436, certain",
        "0.049437, 70.279437, possible",
    })
    void aFinishedHoleIsHonedAsFarAsItNeeds(Length beyond, Length finish, String certainty) {
        TwinShop shop = new TwinShop();
        shop.honeCleanUp = beyond;

        HoleAtSize fate =
                shop.finished("70.230", "70.260").table().get(1).holes().get(0);

        assertThat(fate.finish()).isEqualTo(finish);
        assertThat(fate.certainty().label()).isEqualTo(certainty);
    }

    /**
     * Two makers' pistons of +0.25 for holes that one size holds, the second's finished as large or 0.001 larger: the shelf decides whose they
     * are, measured or not, but where certainty ends first.
     */
    @ParameterizedTest(name = "{0} and {1}, {2} to {3}, rings gone: {4}: {5}")
    @CsvSource({
        "0.250, 70.256, 70.256, -,     '',      DESIGN-1",
        "0.250, 70.256, 70.256, -,     R-025,   DESIGN-2",
        "0.250, 70.256, 70.256, -,     R2-025,  DESIGN-1",
        "0.251, 70.256, 70.256, -,     '',      DESIGN-2",
        "0.251, 70.256, 70.256, -,     R2-025,  DESIGN-1",
        "0.251, 70.256, 70.256, +0.25, '',      DESIGN-2",
        "0.251, 70.256, 70.256, +0.25, R2-025,  DESIGN-1",
        "0.250, 70.256, -,      -,     R-025,   DESIGN-2",
        "0.250, 70.256, -,      +0.25, '',      DESIGN-1",
        "0.250, 70.256, -,      +0.25, R-025,   DESIGN-2",
        "0.250, 70.256, -,      +0.25, R2-025,  DESIGN-1",
        "0.251, 70.256, -,      +0.25, '',      DESIGN-2",
        "0.260, 70.254, 70.254, -,     R-025,   DESIGN-1",
    })
    void ofOneSizeTheMakerWhoseKitCanBeHadIsTaken(
            String oversize, String first, String second, String asked, String gone, String design) {
        TwinShop shop = new TwinShop();
        TwoMakers makers = new TwoMakers(shop, oversize, "40");
        if (!gone.isEmpty()) {
            shop.lastOf(gone, 0);
        }
        MatchRequest finished = shop.request(Condition.FINISHED, "-", TwinShop.surveys(first, second));

        Match match = makers.ask(
                asked.equals("-") ? finished : finished.asking(shop.size(asked).orElseThrow()));

        assertThat(match.ruling().row().flatMap(SizeRow::choice))
                .map(choice -> choice.design().code())
                .contains(design);
    }

    /** 70.031 mm is 0.026 off the target of standard, and 0.004 off that of +0.03: an empty shelf never moves it to the other. */
    @ParameterizedTest(name = "rings gone: {0}")
    @CsvSource({"''", "R-STD", "R-003"})
    void ofTwoSizesThatHoldAHoleTheNearestIsTakenWhateverIsOnTheShelf(String gone) {
        TwinShop shop = new TwinShop();
        shop.size("+0.03", "0.03");
        if (!gone.isEmpty()) {
            shop.lastOf(gone, 0);
        }

        Match match = shop.finished("70.031", "70.031");

        assertThat(TwinShop.named(match)).isEqualTo("+0.03");
    }

    @ParameterizedTest(name = "asked for {0}: {1} {2}")
    @CsvSource({
        "standard, serves, standard",
        "+0.50, serves, +0.50",
        "+1.00, serves, +1.00",
    })
    void aLargerSizeMayBeAskedFor(String asked, String verdict, String size) {
        TwinShop shop = new TwinShop();
        Match match = asking(shop, asked, "70.010", "70.010");

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
    }

    /** Every kind of finding in one of two finished holes that read as standard. Deep or not measured, only what is cosmetic may pass. */
    @ParameterizedTest
    @EnumSource
    void onlyCosmeticFindingsLetAFinishedHolePass(Finding.Kind kind) {
        for (Construction construction : List.of(Construction.IRON_BARREL, Construction.PLATED)) {
            for (Optional<Length> depth : List.of(Optional.<Length>empty(), Optional.of(mm("0.010")))) {
                TwinShop shop = new TwinShop();
                shop.construction = construction;
                Match match = shop.ask(shop.request(
                        Condition.FINISHED,
                        "standard",
                        List.of(
                                TwinShop.survey("1", "70.010", new Finding(kind, depth, Optional.empty())),
                                TwinShop.survey("2", "70.010"))));

                assertThat(match.ruling().verdict() == Verdict.SERVES)
                        .as("%s %s %s", construction, kind, depth)
                        .isEqualTo(kind.weight() == Finding.Weight.COSMETIC);
            }
        }
    }

    @Test
    void aSizeAskedForThatIsTooSmallIsHeld() {
        Match match = asking(new TwinShop(), "standard", "70.260", "70.260");

        assertThat(TwinShop.named(match)).isEqualTo("+0.25");
        assertThat(match.ruling().holds())
                .extracting(hold -> hold.reason().name())
                .containsExactly("ASKED_SIZE_DOES_NOT_SERVE");
    }

    @Test
    void aPlatedHoleIsNeverSentToTheHone() {
        TwinShop shop = new TwinShop();
        shop.construction = Construction.PLATED;

        Match match = shop.finished("70.100", "70.100");

        assertThat(match.ruling().verdict().label()).isEqualTo("no common size");
        assertThat(match.table().get(0).holes()).allMatch(hole -> hole.work() == Work.AS_IS);
        assertThat(shop.finished("69.900", "69.900").finishedHoles(Condition.FINISHED))
                .allMatch(hole -> hole.toGo().isEmpty());
    }

    private static Match asking(TwinShop shop, String asked, String first, String second) {
        MatchRequest plain = shop.request(
                Condition.FINISHED, "standard", List.of(TwinShop.survey("1", first), TwinShop.survey("2", second)));
        return shop.ask(Requests.asking(
                plain,
                shop.sizes.stream().filter(size -> size.label().equals(asked)).findFirst()));
    }

    @Test
    void holesThatDifferAreNamedWithTheSizeThatBringsThemTogether() {
        Match match = new TwinShop().finished("70.010", "70.260");

        assertThat(match.finishedHoles(Condition.FINISHED))
                .extracting(hole -> hole.size().map(Size::label).orElse("between"))
                .containsExactly("standard", "+0.25");
        assertThat(match.bringTogether(Condition.FINISHED).orElseThrow().size().label())
                .isEqualTo("+0.25");
    }

    /** Just in, on the limit and just not out for the U of the reading: the hole belongs to the size, proven or not. */
    @ParameterizedTest
    @CsvSource({"69.995280, possible", "70.010, certain", "70.034719, certain", "70.034720, possible"})
    void aHoleNearTheEdgeOfAWindowStillBelongsToItsSize(String diameter, String certainty) {
        FinishedHole hole = new TwinShop()
                .finished(diameter, "70.010")
                .finishedHoles(Condition.FINISHED)
                .get(0);

        assertThat(hole.size()).contains(size("standard", "0"));
        assertThat(hole.certainty().label()).isEqualTo(certainty);
        assertThat(hole.tooLooseFor()).isEmpty();
        assertThat(hole.toGo()).isEmpty();
    }

    @Test
    void aHoleBetweenSizesHearsHowMuchTooLooseAndHowMuchToGo() {
        Match match = new TwinShop().finished("70.100", "70.010");
        FinishedHole between = match.finishedHoles(Condition.FINISHED).get(0);

        assertThat(between.size()).isEmpty();
        assertThat(between.tooLooseFor()).contains(new FinishedHole.Gap(size("standard", "0"), mm("0.060")));
        assertThat(between.toGo()).contains(new FinishedHole.Gap(size("+0.25", "0.25"), mm("0.150")));
    }

    /** A size of 0.04 mm runs from 70.030 on, so that 70.0325 belongs to two: the pistons named are those of the one it fits best. */
    @Test
    void aHoleOfTwoSizesNamesThePistonsOfOne() {
        TwinShop shop = new TwinShop();
        shop.sizes.add(1, size("+0.04", "0.04"));
        shop.pistons.add(TwinShop.piston("P-004", "+0.04", "0.04", Optional.empty()));

        FinishedHole hole = shop.finished("70.0325", "70.010")
                .finishedHoles(Condition.FINISHED)
                .get(0);

        assertThat(hole.size()).contains(size("standard", "0"));
        assertThat(hole.others()).containsExactly(size("+0.04", "0.04"));
        assertThat(hole.pistons()).extracting(piston -> piston.number().text()).containsExactly("P-STD");
    }

    /** Beyond the largest oversize a hole has no size, whatever was made; and of a size that was never made none belongs to it. */
    @Test
    void aHoleBelongsToSizesThatTheEngineBearsAndThatWereMade() {
        TwinShop shop = new TwinShop();
        shop.largestOversize = mm("0.5");
        shop.pistons.removeIf(piston -> piston.size().equals("+0.25"));

        List<FinishedHole> holes = shop.finished("70.760", "70.260").finishedHoles(Condition.FINISHED);

        assertThat(holes).allMatch(hole -> hole.size().isEmpty());
        assertThat(holes.get(0).toGo()).isEmpty();
        assertThat(holes.get(1).toGo()).contains(new FinishedHole.Gap(size("+0.50", "0.50"), mm("0.240")));
    }

    private static Size size(String label, String oversize) {
        return new Size(label, mm(oversize), false);
    }
}
