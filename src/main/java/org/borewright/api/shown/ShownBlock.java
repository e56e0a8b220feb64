package org.borewright.api.shown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.catalog.Withdrawal;
import org.borewright.kit.choice.Block;
import org.borewright.measure.LengthUnit;

/**
 * Why a size is not offered.
 *
 * @param says the reason
 * @param checks the checks that failed, where it was a check
 * @param withdrawn the numbers that are wanting; left out where it is not for want of a part
 */
public record ShownBlock(
        String says,
        List<ShownCheck> checks,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Wanting> withdrawn) {

    /**
     * A number that is not supplied.
     *
     * @param number which
     * @param state what became of it
     */
    public record Wanting(String number, String state) {

        static Wanting of(Withdrawal gone) {
            return new Wanting(gone.number().text(), gone.state().label());
        }
    }

    /** A block in a unit. */
    public static ShownBlock of(Block block, LengthUnit unit) {
        return new ShownBlock(
                block.reason().sentence(),
                block.checks().stream().map(check -> ShownCheck.of(check, unit)).toList(),
                block.withdrawn().stream().map(Wanting::of).toList());
    }
}
