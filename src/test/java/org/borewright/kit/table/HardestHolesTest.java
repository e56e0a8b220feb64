package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.kit.Match;
import org.borewright.kit.TwinShop;
import org.borewright.kit.Verdict;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.request.Condition;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The holes of a 70.000 mm twin that drag the other to a larger size. By the bar a hole needs 2·D − 70.000 + 0.04 + 2U and the hone 0.05, so
 * that +0.25 is certain up to 70.0747 mm and +0.50 up to 70.1997 mm (U = 0.0053 mm).
 */
class HardestHolesTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest
    @CsvSource({
        // hole 1, hole 2,   hardest, the other alone, what it loses
        "70.060, 70.150,     2,       +0.25,           1:0.25",
        "70.150, 70.060,     1,       +0.25,           2:0.25",
        "70.060, 70.300,     2,       +0.25,           1:0.5",
        "69.985, 70.060,     2,       standard,        1:0.25",
        "70.150, 70.300,     2,       +0.50,           1:0.25",
    })
    void theHardestHoleTakesMetalFromTheOther(String first, String second, String hardest, String alone, String loss) {
        HardestHoles found = shop.worn("standard", first, second).hardest().orElseThrow();

        assertThat(found.cylinders()).containsExactly(hardest);
        assertThat(found.alone().size().label()).isEqualTo(alone);
        assertThat(found.losses().stream()
                        .map(lost -> lost.cylinder() + ":" + lost.metal().toMillimetres())
                        .collect(Collectors.joining(" ")))
                .isEqualTo(loss);
    }

    @Test
    void itTakesTheRebuildsBetweenTheTwoSizesFromTheEngine() {
        Match match = shop.worn("standard", "70.060", "70.300");

        assertThat(match.hardest().orElseThrow().rebuildsLost()).contains(new RebuildsLeft(2, 2));
    }

    @ParameterizedTest
    @CsvSource({
        // both need the same size; where nothing was measured a reading may tell; and where both are too large, neither
        // is the one; 70.500 may come clean at +0.75, which 70.210 needs
        "70.060, 70.062",
        "70.150, 70.190",
        "70.060, -",
        "71.000, 71.000",
        "70.210, 70.500",
    })
    void noneDragsWhereBothNeedTheSameOrNoneIsCertain(String first, String second) {
        assertThat(shop.worn("standard", first, second).hardest()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"70.060, 71.000, 2, +0.25", "71.000, 70.150, 1, +0.50", "69.985, 71.000, 2, standard"})
    void aHoleThatNoSizeBringsCleanIsNamedWithWhatTheOtherCouldGoTo(
            String first, String second, String hardest, String alone) {
        Match match = shop.worn("standard", first, second);

        assertBeyond(match, hardest, alone);
        assertThat(match.ruling().holds().get(0).says())
                .isEqualTo("No size that is made and allowed brings every cylinder clean: cylinder " + hardest + ".");
    }

    /** By the bar +1.00 is certain up to 70.4497 mm. */
    @ParameterizedTest
    @CsvSource({"70.060, 70.900, 2, +0.25", "70.900, 69.985, 1, standard", "70.190, 70.500, 2, +0.50"})
    void oneThatNoSizeIsCertainForIsNamedThoughTheLastMayDo(String first, String second, String hardest, String alone) {
        Match match = shop.worn("standard", first, second);

        assertBeyond(match, hardest, alone);
        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_CERTAIN_SIZE);
        assertThat(match.hardest().orElseThrow().isLessened(match.settling().orElseThrow()))
                .isTrue();
    }

    @ParameterizedTest
    @EnumSource(
            value = Finding.Kind.class,
            names = {"HOLED", "MELTED", "CRACKED"})
    void soIsOneThatIsBeyondMachining(Finding.Kind found) {
        Finding finding = new Finding(found, Optional.empty(), Optional.empty());
        CylinderSurvey first =
                new CylinderSurvey("1", new SingleDiameter(TwinShop.mm("70.010")), Wall.UNKNOWN, List.of(finding));

        assertBeyond(
                shop.ask(shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.060")))),
                "1",
                "+0.25");
    }

    private static void assertBeyond(Match match, String hardest, String alone) {
        HardestHoles found = match.hardest().orElseThrow();
        assertThat(found.cylinders()).containsExactly(hardest);
        assertThat(found.alone().size().label()).isEqualTo(alone);
        assertThat(found.losses()).isEmpty();
        assertThat(found.rebuildsLost()).isEmpty();
    }

    /** 70.260 needs +0.75, and a probe may bring +0.50; the other alone goes to +0.25, and no probe of 70.260 brings that. */
    @Test
    void aReadingThatLessensTheSizeAloneDoesNotSpareTheOther() {
        Match match = shop.worn("standard", "70.060", "70.260");
        HardestHoles hardest = match.hardest().orElseThrow();
        Settling settling = match.settling().orElseThrow();

        assertThat(settling.row().size().label()).isEqualTo("+0.50");
        assertThat(hardest.alone().size().label()).isEqualTo("+0.25");
        assertThat(hardest.isLessened(settling)).isTrue();
        assertThat(hardest.isSpared(settling)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"2, cylinder 2", "1 left, 'cylinders 1, left'"})
    void theyAreCalledByTheirNames(String holes, String words) {
        SizeRow alone = shop.worn("standard", "70.060", "70.150").table().get(1);

        assertThat(new HardestHoles(List.of(holes.split(" ")), alone, List.of(), Optional.empty()).inWords())
                .isEqualTo(words);
    }

    @Test
    void aReadingOfTheHardestHoleMaySpareTheOther() {
        Match match = shop.worn("standard", "70.060", "70.150");

        assertThat(match.hardest().orElseThrow().isSpared(match.settling().orElseThrow()))
                .isTrue();
    }

    /** 70.400 needs +1.00 and 70.250 alone +0.75; +0.50 is to be had only by a probe of both. */
    @Test
    void aReadingOfTheOtherTooSparesNothing() {
        Match match = shop.worn("standard", "70.400", "70.250");

        assertThat(match.settling().orElseThrow().readings())
                .extracting(Settling.Reading::cylinder)
                .containsExactly("1", "2");
        assertThat(match.hardest().orElseThrow().isLessened(match.settling().orElseThrow()))
                .isFalse();
        assertThat(match.hardest().orElseThrow().isSpared(match.settling().orElseThrow()))
                .isFalse();
    }

    /** 70.250 is a hole of +0.25 that 70.000 is bored to: it was finished so, and did not wear. */
    @Test
    void finishedHolesDragNothing() {
        assertThat(shop.finished("70.000", "70.000").hardest()).isEmpty();
        assertThat(shop.finished("70.000", "70.250").hardest()).isEmpty();
    }
}
