package org.borewright.api.match.answer.size;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.table.SizeRow;
import org.jspecify.annotations.Nullable;

/**
 * A size and whose pistons.
 *
 * @param size its label
 * @param design the pistons' design; absent where none was made
 * @param maker who makes them; absent where none was made
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SizeAnswer(
        String size, @Nullable String design, @Nullable String maker) {

    /** The size of a choice of pistons. */
    public static SizeAnswer of(Choice choice) {
        return new SizeAnswer(
                choice.size().label(), choice.design().code(), choice.design().maker());
    }

    /** The size of a row. */
    public static SizeAnswer of(SizeRow row) {
        Choice choice = row.choice().orElse(null);
        return choice == null ? new SizeAnswer(row.size().label(), null, null) : of(choice);
    }
}
