package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.borewright.order.store.JournalRow;
import org.jspecify.annotations.Nullable;

/**
 * Lines of the journal, in the order they were committed. Asked again from {@code after} on it is a feed of all changes, of which none is
 * ever missed or told twice.
 *
 * @param lines of this page
 * @param after what to ask with for what follows
 */
public record JournalAnswer(List<JournalAnswer.LineAnswer> lines, long after) {

    /**
     * One line.
     *
     * @param position its place, from 1, without gaps
     * @param at when
     * @param by who
     * @param subject what it concerns
     * @param order its number; absent where it concerns none
     * @param did what was done
     * @param before what stood before
     * @param after what stands now
     * @param covers what the seal covers: words, or words and rows
     * @param version of the order from this line on; absent where the seal covers words alone
     * @param written digest of the papers, quotes and holes written with it, likewise
     * @param standing digest of the order as it stood from here on, likewise
     * @param seal over this line and the seal of the one before
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record LineAnswer(
            long position,
            Instant at,
            String by,
            String subject,
            @Nullable Long order,
            String did,
            String before,
            String after,
            String covers,
            @Nullable Integer version,
            @Nullable String written,
            @Nullable String standing,
            String seal) {

        static LineAnswer of(JournalRow row) {
            return new LineAnswer(
                    row.position,
                    row.at,
                    row.by,
                    row.subject,
                    row.orderNumber,
                    row.did,
                    row.before,
                    row.after,
                    row.entry().covers().label(),
                    row.orderVersion,
                    row.written,
                    row.standing,
                    row.seal);
        }
    }

    /** Lines that follow a position. */
    public static JournalAnswer of(long after, List<JournalRow> rows) {
        return new JournalAnswer(
                rows.stream().map(LineAnswer::of).toList(),
                rows.isEmpty() ? after : rows.get(rows.size() - 1).position);
    }
}
