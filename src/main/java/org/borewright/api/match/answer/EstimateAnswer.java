package org.borewright.api.match.answer;

import java.time.LocalDate;
import java.util.List;
import org.borewright.api.match.request.AskedEstimate;
import org.borewright.catalog.Revision;
import org.borewright.catalog.Shelf;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.ladder.Estimate;

/**
 * What an engine may come to before it is measured.
 *
 * @param engine its code
 * @param revision the catalogue revision it stands on
 * @param unit of all lengths
 * @param date from which dates are reckoned
 * @param stamp as sent, and how it was read
 * @param says the whole in plain sentences
 * @param branches the ways to restore the engine, those that take least metal first
 * @param cautions what must be said
 */
public record EstimateAnswer(
        String engine,
        Revision revision,
        String unit,
        LocalDate date,
        StampAnswer stamp,
        String says,
        List<BranchAnswer> branches,
        List<String> cautions) {

    /**
     * A stamp and the one way to read it.
     *
     * @param text as stamped
     * @param size it leads to
     * @param readAs what it was taken for
     */
    public record StampAnswer(String text, String size, String readAs) {}

    /** The answer to a question, in the unit of the stencils. */
    public static EstimateAnswer of(Shelf shelf, AskedEstimate question, Estimate estimate, Stencils stencils) {
        LocalDate on = question.asked().request().on();
        StampAnswer stamp = new StampAnswer(
                question.stamp().text(),
                question.reading().size().label(),
                question.reading().as());
        return new EstimateAnswer(
                shelf.engine().code(),
                shelf.revision(),
                stencils.unit().symbol(),
                on,
                stamp,
                EstimateSentence.of(stamp, estimate, on, stencils.unit()),
                estimate.branches().stream()
                        .map(branch -> BranchAnswer.of(branch, on, stencils))
                        .toList(),
                estimate.match().cautions().stream().map(Caution::text).toList());
    }
}
