package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.borewright.order.journal.Verification;
import org.jspecify.annotations.Nullable;

/**
 * Whether the journal is whole.
 *
 * @param holds whether every line follows from the one before, up to the last, and what it speaks of lies in the tables as it was sealed
 * @param lines that hold
 * @param seal of the last of them: noted elsewhere, it proves later that nothing up to here was changed
 * @param broken the position of the first line that is missing, was changed, does not follow, or tells of rows that are otherwise by now; absent
 *     where all hold
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record VerificationAnswer(
        boolean holds, long lines, String seal, @Nullable Long broken) {

    /** What was found. */
    public static VerificationAnswer of(Verification found) {
        return new VerificationAnswer(
                !found.broken(), found.lines(), found.seal(), found.broken() ? found.lines() + 1 : null);
    }
}
