package org.borewright.order.quote;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Size;
import org.borewright.kit.Match;
import org.borewright.kit.table.SizeRow;

/**
 * Which of several proposals is quoted.
 *
 * @param way asked for; empty for what the survey says
 * @param size asked for, where the way leads to one
 */
public record Choosing(Optional<String> way, Optional<Size> size) {

    /**
     * The proposal asked for; where none was, the one that the match names. Empty where there is no such proposal, or the match names no
     * size and somebody has to choose.
     */
    public Optional<Proposal> among(List<Proposal> proposals, Match match) {
        if (way.isPresent() || size.isPresent()) {
            return proposals.stream()
                    .filter(proposal -> way.isEmpty() || way.get().equals(proposal.way()))
                    .filter(proposal -> size.isEmpty() || size.equals(proposal.size()))
                    .findFirst();
        }
        Optional<Size> named = match.ruling().row().map(SizeRow::size);
        return named.flatMap(size -> proposals.stream()
                .filter(proposal -> proposal.size().equals(named))
                .findFirst());
    }
}
