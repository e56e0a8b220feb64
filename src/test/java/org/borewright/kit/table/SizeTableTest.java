package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.surveys;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.Match;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.Block;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of every size for worn holes of 70.110 and 70.020 mm in the twin. */
class SizeTableTest {

    private final TwinShop shop = new TwinShop();

    /**
     * Piston to head: 199.4 + 0.5 − (80/2 + 125 + 34) + 1.0 = 1.9 mm at the least, 0.6 wanted.
     */
    @ParameterizedTest(name = "skim {0}: {1}")
    @CsvSource({"0, ", "1.3, ", "1.300001, PISTON_TO_HEAD_LEAST"})
    void aSkimIsTakenFromTheDistanceBetweenPistonAndHead(String skim, String rule) {
        MatchRequest plain = shop.request(Condition.WORN, "standard", surveys("70.110", "70.020"));
        Match match = shop.ask(plain.with(TwinShop.skimmed(skim)));

        assertThat(match.table())
                .allSatisfy(row -> assertThat(row.blocks().stream()
                                .flatMap(block -> block.checks().stream())
                                .filter(check -> check.rule() == Rule.PISTON_TO_HEAD_LEAST)
                                .map(check -> check.rule().name())
                                .toList())
                        .isEqualTo(rule == null ? List.of() : List.of(rule)));
    }

    @ParameterizedTest(name = "{0}, present {1}: {2} sizes would be cut")
    @CsvSource({
        "IRON_BARREL, standard, 0",
        "PLATED, standard, 4",
        "PLATED, +0.50, 2",
        "PLATED, +1.00, 0",
        "BARE_ALUMINIUM_SILICON, , 4",
    })
    void aWallThatIsNeverBoredBlocksEverySizeAboveThePresentOne(Construction construction, String present, int cut) {
        shop.construction = construction;

        Match match = shop.worn(present == null ? "" : present, "70.110", "70.020");

        assertThat(match.table())
                .filteredOn(row -> row.blocks().contains(Block.of(Block.Reason.NEVER_BORED)))
                .hasSize(cut);
    }

    @ParameterizedTest
    @CsvSource({"IRON_BARREL, true", "PLATED, false", "BARE_ALUMINIUM_SILICON, false"})
    void noCleanUpIsToldOfAWallThatTheBarNeverCuts(Construction construction, boolean told) {
        shop.construction = construction;

        Match match = shop.worn("standard", "70.010", "70.020");

        assertThat(match.holes())
                .allMatch(hole -> hole.cleanUp().isPresent() == told)
                .allMatch(hole -> hole.atSize().orElseThrow().metal().equals(Optional.of(Length.ZERO)) != told);
    }

    /** A sleeve fitted since takes the place of the one as made, hole by hole, known to 0.003; +0.50 needs (75.590 − 70.550)/2 − 0.02 = 2.5. */
    @ParameterizedTest(name = "sleeve of {0}: {1}, {2}")
    @CsvSource({"75.593, IN, ", "75.592999, TOO_CLOSE, ", "75.587, OUT, WALL", ", UNKNOWN, "})
    void aSleeveFittedSinceIsJudgedByItsOwnOutside(String outside, Outcome outcome, Block.Reason reason) {
        Wall wall = new Wall(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(outside).map(TwinShop::mm),
                Optional.empty(),
                true);
        CylinderSurvey first = new CylinderSurvey("1", new SingleDiameter(mm("70.110")), wall, List.of());

        SizeRow half = shop.ask(
                        shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.020"))))
                .table()
                .get(2);

        assertThat(half.walls()).extracting(Check::outcome).containsExactly(outcome, Outcome.IN);
        assertThat(half.blocks()).extracting(Block::reason).isEqualTo(reason == null ? List.of() : List.of(reason));
        assertThat(half.blocks())
                .flatExtracting(Block::checks)
                .extracting(Check::place)
                .isEqualTo(reason == null ? List.of() : List.of("cylinder 1"));
    }

    /**
     * A wall found thinner than the sleeve as made leaves it is the one that counts: less half of 70.550 − 70.110, less 0.02, against 2.500, known to
     * 0.05. Of a thick one the sleeve, 3.705, counts.
     */
    @ParameterizedTest(name = "least wall {0}: {1}")
    @CsvSource({"2.600, OUT", "2.690, OUT", "2.690001, TOO_CLOSE", "2.789999, TOO_CLOSE", "2.790, IN", "5.000, IN"})
    void theLessOfSleeveAndSurveyedWallCounts(String leastWall, Outcome outcome) {
        Wall wall = new Wall(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(TwinShop.mm(leastWall)),
                false);
        CylinderSurvey first = new CylinderSurvey("1", new SingleDiameter(mm("70.110")), wall, List.of());

        SizeRow half = shop.ask(
                        shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.020"))))
                .table()
                .get(2);

        assertThat(half.walls()).extracting(Check::outcome).containsExactly(outcome, Outcome.IN);
    }

    /** Outside 78.000 as made the wall bears +1.00: (78.000 − 71.050)/2 − 0.02 = 3.455; a sleeve of 75.593 bears no more than +0.50. */
    @ParameterizedTest(name = "sleeves of {0} and {1}: {2} left after standard")
    @CsvSource({", , 4", "75.593, , 2", "75.593, 75.593, 2"})
    void aSleeveFittedSinceTakesRebuildsWithIt(Length first, Length second, int left) {
        List<CylinderSurvey> holes = List.of(sleeved("1", "70.110", first), sleeved("2", "70.020", second));

        assertThat(shop.ask(shop.request(Condition.WORN, "standard", holes))
                        .table()
                        .get(0)
                        .left()
                        .orElseThrow()
                        .byMetal())
                .isEqualTo(left);
    }

    private static CylinderSurvey sleeved(String cylinder, String diameter, Length outside) {
        Wall wall = new Wall(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(outside),
                Optional.empty(),
                outside != null);
        return new CylinderSurvey(cylinder, new SingleDiameter(mm(diameter)), wall, List.of());
    }

    @Test
    void aSizeWithoutPistonsKeepsItsRowAndItsRebuilds() {
        shop.pistons.removeIf(piston -> piston.size().equals("+0.50"));

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(match.table()).extracting(row -> row.size().label()).isEqualTo(labels());
        assertThat(match.table().get(2).choice()).isEmpty();
        assertThat(match.table().get(2).kit()).isEmpty();
        assertThat(match.table().get(2).left().orElseThrow().byMetal()).isEqualTo(2);
    }

    /**
     * 3.70 less (70.800 − 70.480)/2 less 0.02 is 3.52 at +0.75; less (71.050 − 70.480)/2 less 0.02 it is 3.395 at +1.00. No rebuild is
     * counted on +0.75, too close to 3.5.
     */
    @Test
    void theWallOfAHoleNotMeasuredIsReckonedFromItsPresentSize() {
        Optional<Length> none = Optional.empty();
        shop.wall = new WallShape(none, Optional.of(mm("3.5")), none, none, none);
        Wall surveyed = new Wall(none, none, Optional.empty(), none, Optional.of(mm("3.70")), false);

        Match match = shop.ask(shop.request(
                Condition.WORN,
                "+0.50",
                List.of(
                        new CylinderSurvey("1", new NotMeasured(), surveyed, List.of()),
                        new CylinderSurvey("2", new NotMeasured(), surveyed, List.of()))));

        assertThat(match.table())
                .filteredOn(row -> row.blocks().stream().anyMatch(block -> block.reason() == Block.Reason.WALL))
                .extracting(row -> row.size().label())
                .containsExactly("+1.00");
        assertThat(match.table())
                .extracting(row -> row.left().orElseThrow().byMetal())
                .containsExactly(2, 1, 0, 0, 0);
    }

    /** +0.50 needs an opening of 70.550 + 2 × 0.5 mm; what does not fit is shown all the same. */
    @Test
    void theGasketsThatDoNotFitAreShownWithTheSize() {
        shop.gaskets.set(0, TwinShop.gasket("GK-1", "71.549999"));

        SizeRow half = shop.worn("standard", "70.110", "70.020").table().get(2);

        assertThat(half.kit()).isEmpty();
        assertThat(half.gasket().orElseThrow().gaskets().kit().number()).hasToString("GK-1");
        assertThat(half.gasket().orElseThrow().fits()).isFalse();
    }

    /** GK-1 stands first, but cannot be had. */
    @Test
    void theGasketsOfARowAreThoseOfItsKit() {
        shop.gaskets.add(TwinShop.gasket("GK-2", "73"));
        shop.offer("GK-2", "30", 5);
        shop.lastOf("GK-1", 0);

        SizeRow half = shop.worn("standard", "70.110", "70.020").table().get(2);

        assertThat(half.gaskets().get(0).gaskets().kit().number()).hasToString("GK-1");
        assertThat(half.gasket().orElseThrow().gaskets().kit().number()).hasToString("GK-2");
    }

    private List<String> labels() {
        return shop.sizes.stream().map(size -> size.label()).toList();
    }
}
