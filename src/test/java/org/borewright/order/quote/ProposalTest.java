package org.borewright.order.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;
import static org.borewright.kit.TwinShop.surveys;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.DeckFlatness;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;

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
                .among(Proposal.of(request, estimate), estimate.match())
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

        assertThat(new Choosing(Optional.empty(), Optional.empty()).among(all, estimate.match()))
                .isEmpty();
        assertThat(new Choosing(Optional.empty(), Optional.of(quarter)).among(all, estimate.match()))
                .get()
                .extracting(Proposal::way)
                .isEqualTo("rebore");
        assertThat(new Choosing(Optional.of("rings only"), Optional.of(quarter)).among(all, estimate.match()))
                .isEmpty();
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
