package org.borewright.order.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;
import static org.borewright.kit.TwinShop.surveys;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.DeckFlatness;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.bill.Need;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Wall;
import org.borewright.order.PistonsSold;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a price can be named for, and under which conditions. */
class ProposalTest {

    private static final Terms TERMS = new Terms(new BigDecimal("20"), new BigDecimal("30"), 30);
    private static final Deck FLAT = new Deck(
            Optional.of(new DeckFlatness(mm("0.01"), Optional.empty())), Length.ZERO, Optional.of(Length.ZERO));

    private final TwinShop shop = new TwinShop();

    private Estimate estimate(MatchRequest request) {
        Shelf shelf = shop.shelf();
        return Estimate.of(FitTable.of(shelf), new KitFinder(shelf, new Offers(shop.offers)), request);
    }

    private MatchRequest worn(String... diameters) {
        return shop.request(Condition.WORN, "standard", surveys(diameters)).with(FLAT);
    }

    private List<Proposal> proposals(MatchRequest request) {
        return Proposal.of(request, estimate(request));
    }

    private static String names(List<Proposal> proposals) {
        return proposals.stream()
                .map(proposal -> proposal.way()
                        + proposal.size().map(size -> " " + size.label()).orElse(""))
                .collect(Collectors.joining(", "));
    }

    @Test
    void whatTheReadingsProveHasNoCondition() {
        MatchRequest request = worn("70.110", "70.020");
        Estimate estimate = estimate(request);

        Proposal chosen = new Choosing(Optional.empty(), Optional.empty())
                .among(Proposal.of(request, estimate), request, estimate.match())
                .orElseThrow();

        assertThat(chosen.size()).isEqualTo(estimate.match().ruling().row().map(row -> row.size()));
        assertThat(chosen.conditions()).isEmpty();
    }

    @Test
    void holesThatNobodyMeasuredAreAConditionEach() {
        assertThat(proposals(worn("-", "-")))
                .isNotEmpty()
                .allSatisfy(way -> assertThat(way.conditions())
                        .contains("Cylinder 1 was not measured.", "Cylinder 2 was not measured."));
    }

    /** The size of the other is named and held by that alone: it is said once, of the hole. */
    @Test
    void besideAFinishedHoleTheOneThatNobodyMeasuredIsSaidOnce() {
        MatchRequest request =
                shop.request(Condition.FINISHED, "", surveys("-", "70.510")).with(FLAT);

        assertThat(proposals(request))
                .extracting(way -> way.size().map(Size::label).orElse(""), Proposal::conditions)
                .containsExactly(tuple("+0.50", List.of("Cylinder 1 was not measured.")));
    }

    @Test
    void aDeckThatNobodyMeasuredIsACondition() {
        MatchRequest flat = worn("-", "-");
        Deck unknown = new Deck(Optional.empty(), Length.ZERO, Optional.of(Length.ZERO));
        String condition = "The deck was not measured: a skim, where it needs one, is not in the price.";

        assertThat(proposals(flat.with(unknown)))
                .allSatisfy(way -> assertThat(way.conditions()).contains(condition));
        assertThat(proposals(flat))
                .allSatisfy(way -> assertThat(way.conditions()).doesNotContain(condition));
    }

    @Test
    void aWayThatIsNotProvenSaysSo() {
        assertThat(proposals(worn("-", "-")))
                .allSatisfy(way -> assertThat(way.conditions().get(0)).startsWith("Not proven by the readings"));
    }

    /** Of a sleeve that was put in before nobody knows the outside: how much wall is left is open at every size it would be bored to. */
    @Test
    void aHoleSleevedBeforeIsACondition() {
        List<CylinderSurvey> holes = new ArrayList<>(surveys("70.110", "70.020"));
        holes.set(
                1,
                holes.get(1)
                        .with(new Wall(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                true)));
        MatchRequest request = shop.request(Condition.WORN, "standard", holes).with(FLAT);

        assertThat(proposals(request))
                .extracting(way -> way.size().map(Size::label).orElse(""), Proposal::conditions)
                .contains(
                        tuple(
                                "+0.25",
                                List.of(
                                        "Not proven by the readings: the way, and with it the price, may turn out to be another.",
                                        "Open: wall left, cylinder 2.")),
                        tuple("+0.50", List.of("A check is not proven: wall left; cylinder 2.")));
    }

    @Test
    void aWayWhosePartsCannotBeHadIsNoProposal() {
        String before = names(proposals(worn("-", "-")));
        shop.offers.remove(no("P-025"));

        String after = names(proposals(worn("-", "-")));

        assertThat(before).contains("+0.25");
        assertThat(after).doesNotContain("+0.25");
    }

    @Test
    void whereNoSizeIsProvenSomebodyHasToChoose() {
        MatchRequest request = worn("-", "-");
        Estimate estimate = estimate(request);
        List<Proposal> all = Proposal.of(request, estimate);
        Size quarter = shop.shelf().size("+0.25").orElseThrow();

        assertThat(new Choosing(Optional.empty(), Optional.empty()).among(all, request, estimate.match()))
                .isEmpty();
        assertThat(new Choosing(Optional.empty(), Optional.of(quarter)).among(all, request, estimate.match()))
                .get()
                .extracting(Proposal::way)
                .isEqualTo("rebore");
        assertThat(new Choosing(Optional.of("rings only"), Optional.of(quarter)).among(all, request, estimate.match()))
                .isEmpty();
    }

    /** Two by themselves, or the box that holds as many or more: what it holds beyond the need may go in all the same. */
    @ParameterizedTest
    @CsvSource({"0, 2", "2, 2", "3, 3"})
    void theBoxesTellHowManyPistonsAreSold(int inBox, int sold) {
        if (inBox > 0) {
            shop.box("SET-050", Box.Kind.PACK, "P-050 " + inBox, "30", 5);
            shop.offers.remove(no("P-050"));
        }
        MatchRequest request = worn("70.110", "70.020");
        Estimate estimate = estimate(request);

        Proposal chosen = new Choosing(Optional.empty(), Optional.empty())
                .among(Proposal.of(request, estimate), request, estimate.match())
                .orElseThrow();
        PistonsSold pistons = chosen.sold(shop.shelf().parts()).orElseThrow();

        assertThat(pistons.design()).contains("DESIGN-1");
        assertThat(pistons.counts()).isEqualTo(Map.of("P-050", sold));
    }

    /** Of two makers one alone goes into an engine; a spare of the other in a box is no piston of it. */
    @Test
    void noEngineIsSoldPistonsOfTwoMakers() {
        Proposal way = proposals(worn("-", "-")).stream()
                .filter(proposal -> proposal.way().equals("rebore"))
                .findFirst()
                .orElseThrow();
        Kit kit = way.kit();
        Need pistons = kit.needs().get(0);
        Piston ours = (Piston) pistons.part();
        Piston other = new Piston(no("X-050"), "DESIGN-2", ours.size(), ours.hand(), ours.grade(), ours.shape());
        shop.pistons.add(other);
        Box both = new Box(no("BOX-2"), Box.Kind.PACK, new TreeMap<>(Map.of(ours.number(), 2, other.number(), 1)));
        Kit.Line line = new Kit.Line(both, 1, List.of(pistons), TwinShop.money("80"), 0);

        assertThat(with(way, kit, List.of(pistons), line)
                        .sold(shop.shelf().parts())
                        .orElseThrow()
                        .counts())
                .containsOnlyKeys(ours.number().text());
        Need mixed = new Need(other, List.of("2"));
        assertThatIllegalStateException()
                .isThrownBy(() -> with(way, kit, List.of(pistons, mixed), line)
                        .sold(shop.shelf().parts()))
                .withMessageContaining("DESIGN-2");
    }

    /** Pistons that can no longer be had are no hindrance where the owner has them; rings, pins, clips and gaskets are bought as for any. */
    @Test
    void theOwnersPistonsAreNotBought() {
        shop.offers.remove(no("P-050"));
        FitTable fits = FitTable.of(shop.shelf());
        Choice own = fits.at(shop.shelf().size("+0.50").orElseThrow()).get(0);
        MatchRequest request = worn("70.110", "70.020").asking(own.size());
        KitFinder kits = new KitFinder(shop.shelf(), new Offers(shop.offers));
        Estimate estimate = Estimate.of(fits.with(own), kits.withOwn(own), request);

        List<Proposal> all = Proposal.of(request, estimate).stream()
                .map(proposal -> proposal.with(own, estimate.match()))
                .toList();
        Proposal chosen = new Choosing(Optional.empty(), Optional.of(own.size()))
                .among(all, request, estimate.match())
                .orElseThrow();

        assertThat(names(proposals(request))).doesNotContain("+0.50");
        assertThat(chosen.kit().needs())
                .extracting(need -> need.part().kind().label(), Need::count)
                .containsExactly(
                        tuple("ring set", 2),
                        tuple("wrist pin", 2),
                        tuple("clip", 4),
                        tuple("gasket kit", 1),
                        tuple("single-use bolt", 6));
        assertThat(chosen.conditions().get(0))
                .startsWith("The pistons are the owner's own (2 × P-050): they are measured");
        assertThat(chosen.sold(shop.shelf().parts()))
                .contains(PistonsSold.ofOwner("DESIGN-1", "+0.50", new TreeSet<>(rings(chosen))));
        assertThat(rings(chosen)).hasSize(1);
        assertThat(all).filteredOn(other -> other.own().isPresent()).containsExactly(chosen);
    }

    /** The owner may bring pistons larger than the holes need; it is told what that costs. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "+0.50 | ''",
                "+0.75 | +0.50 would serve the holes as they were measured: +0.75 takes more metal than they need, and leaves them fewer rebuilds.",
            })
    void largerPistonsOfTheOwnerAreToldToCostMetal(String size, String told) {
        FitTable fits = FitTable.of(shop.shelf());
        Choice own = fits.at(shop.shelf().size(size).orElseThrow()).get(0);
        MatchRequest request = worn("70.110", "70.020").asking(own.size());
        Estimate estimate =
                Estimate.of(fits.with(own), new KitFinder(shop.shelf(), new Offers(shop.offers)).withOwn(own), request);

        Proposal chosen = Proposal.of(request, estimate).stream()
                .map(proposal -> proposal.with(own, estimate.match()))
                .filter(proposal -> proposal.own().isPresent())
                .findFirst()
                .orElseThrow();

        assertThat(chosen.conditions())
                .filteredOn(condition -> condition.contains("would serve"))
                .isEqualTo(told.isEmpty() ? List.of() : List.of(told));
    }

    private static List<String> rings(Proposal proposal) {
        return proposal.kit().needs().stream()
                .filter(need -> need.part() instanceof RingSet)
                .map(need -> need.number().text())
                .toList();
    }

    private static Proposal with(Proposal way, Kit kit, List<Need> needs, Kit.Line line) {
        Kit other =
                new Kit(kit.outfit(), kit.gaskets(), needs, List.of(line), kit.surplus(), kit.missing(), kit.total());
        return new Proposal(
                way.way(), way.size(), new Job(Optional.of(other), way.job().work()), way.conditions());
    }

    /** Parts and work, 20 % on the sum of both, and 30 % of all of it at once. */
    @Test
    void theSumIsPartsAndWorkWithTax() {
        MatchRequest request = worn("-", "-");
        Proposal way = proposals(request).get(0);
        Sum sum = way.sum(TERMS);

        assertThat(sum.net()).isEqualTo(way.job().total().orElseThrow());
        assertThat(sum.parts().plus(sum.work())).isEqualTo(sum.net());
        assertThat(sum.tax().amount()).isEqualByComparingTo(sum.net().amount().multiply(new BigDecimal("0.2")));
        assertThat(sum.total()).isEqualTo(sum.net().plus(sum.tax()));
        assertThat(sum.deposit().orElseThrow().amount())
                .isEqualByComparingTo(sum.total().amount().multiply(new BigDecimal("0.3")));
    }

    @Test
    void withoutWorkOnlyThePartsArePaid() {
        Proposal way = proposals(worn("-", "-")).get(0);
        Sum alone = way.withoutWork().sum(TERMS);

        assertThat(alone.work().amount()).isZero();
        assertThat(alone.net()).isEqualTo(way.sum(TERMS).parts());
    }
}
