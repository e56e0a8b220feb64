package org.borewright.api.lookup.size;

import java.util.List;
import org.borewright.api.shown.ShownCheck;
import org.borewright.kit.choice.Block;
import org.borewright.measure.LengthUnit;

/**
 * Why a size is not offered.
 *
 * @param says the reason
 * @param checks the checks that failed, where it was a check
 */
public record BlockedAnswer(String says, List<ShownCheck> checks) {

    static BlockedAnswer of(Block block, LengthUnit unit) {
        return new BlockedAnswer(
                block.reason().sentence(),
                block.checks().stream().map(check -> ShownCheck.of(check, unit)).toList());
    }
}
