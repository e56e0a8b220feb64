package org.borewright.order.quote;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.Match;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.ladder.Way;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;

/**
 * Which of several proposals is quoted.
 *
 * @param way asked for; empty for what the survey says
 * @param size asked for, where the way leads to one
 */
public record Choosing(Optional<String> way, Optional<Size> size) {

    /**
     * The proposal asked for. Where none was, and no size either, rings only where that is certain, for it takes no metal out; else the one
     * that the match names. Empty where there is no such proposal, or the match names no size and somebody has to choose.
     *
     * @param told what the match answers
     */
    public Optional<Proposal> among(List<Proposal> proposals, MatchRequest told, Match match) {
        if (way.isPresent() || size.isPresent()) {
            return proposals.stream()
                    .filter(proposal -> way.isEmpty() || way.get().equals(proposal.way()))
                    .filter(proposal -> size.isEmpty() || size.equals(proposal.size()))
                    .findFirst();
        }
        return ringsOnly(proposals, match)
                .filter(rings -> told.asked().isEmpty())
                .or(() -> ofSizeNamed(proposals, match));
    }

    /** That of the rings that were found certain; empty where they, or what goes with them, cannot be had. */
    private static Optional<Proposal> ringsOnly(List<Proposal> proposals, Match match) {
        Optional<Kit> certain = match.ringsOnly()
                .filter(rings -> rings.certainty() == Certainty.CERTAIN)
                .flatMap(rings -> rings.job().kit());
        return proposals.stream()
                .filter(proposal -> proposal.way().equals(Way.RINGS_ONLY.label()))
                .filter(proposal -> certain.filter(proposal.kit()::equals).isPresent())
                .findFirst();
    }

    private static Optional<Proposal> ofSizeNamed(List<Proposal> proposals, Match match) {
        Optional<Size> named = match.ruling().row().map(SizeRow::size);
        return named.flatMap(size -> proposals.stream()
                .filter(proposal -> proposal.size().equals(named))
                .findFirst());
    }
}
