package org.borewright.page.bench.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.order.State;
import org.borewright.page.Form;

/**
 * An order with what the bench needs of its papers.
 *
 * @param order itself
 * @param papers question and answer of the last survey, the last pairing and the last judgement, as far as there are any
 * @param offer that the customer said yes to; empty before
 */
public record Folder(OrderAnswer order, List<PaperAnswer> papers, Optional<Answer> offer) {

    /** Copies the papers. */
    public Folder {
        papers = List.copyOf(papers);
    }

    /** A form that is opened anew, for the order as it stands. */
    public Form asItStands(Form form) {
        return form.with("version", Integer.toString(order.version()));
    }

    /** The last paper of a kind: survey, bench or finish. */
    public Optional<PaperAnswer> last(String kind) {
        return papers.stream().filter(paper -> paper.kind().equals(kind)).findFirst();
    }

    /** Whether a move is allowed from where the order stands. */
    public boolean may(String move) {
        return order.next().contains(move);
    }

    /** The size of the pistons that were sold; empty before the yes, and where those in the engine stay. */
    public Optional<String> size() {
        return offer.flatMap(sold -> sold.at("size").text());
    }

    /** Whether new rings go on the pistons that are in it, so that there are none to pair and nothing to hone. */
    public boolean isRingsOnly() {
        return offer.isPresent() && size().isEmpty();
    }

    /** Where the order stands. */
    public State state() {
        return State.of(order.state()).orElseThrow();
    }

    /** Whether its pistons are confirmed, so that sizes and windows stand. */
    public boolean isConfirmed() {
        return state().isConfirmed();
    }

    /** Whether it is bored and honed now; once it is signed, the record of its block knows each hole better than the plan. */
    public boolean isOnTheBench() {
        return state() == State.CONFIRMED;
    }

    /** The numbers of the pistons that were sold for a hole, or that the owner brings, first the one that is covered first. */
    public List<String> pistonsFor(String cylinder) {
        return sold("piston")
                .filter(covers -> covers.at("cylinders").items().stream()
                        .anyMatch(name -> name.text().filter(cylinder::equals).isPresent()))
                .flatMap(covers -> covers.at("number").text().stream())
                .distinct()
                .toList();
    }

    /** The numbers of the ring sets that were sold; none before the yes. */
    public List<String> ringSets() {
        return sold("ring set")
                .flatMap(covers -> covers.at("number").text().stream())
                .distinct()
                .toList();
    }

    /** What the lines of the offer cover, of one kind of part, and the owner's own beside it. */
    private Stream<Answer> sold(String part) {
        return offer.stream()
                .flatMap(sold -> Stream.concat(sold.at("parts").items().stream(), Stream.of(sold.at("ownPistons"))))
                .flatMap(line -> line.at("covers").items().stream())
                .filter(covers -> covers.at("part").text().filter(part::equals).isPresent());
    }
}
