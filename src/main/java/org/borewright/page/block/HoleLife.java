package org.borewright.page.block;

import java.util.List;
import org.borewright.api.order.answer.BlockAnswer.LifeAnswer;
import org.jspecify.annotations.Nullable;

/**
 * One hole over all its visits; that of a barrel is told by its tag.
 *
 * @param name what the hole is called
 * @param visits in the order things happened
 * @param picture of the visits it was measured at; absent where there is none
 */
record HoleLife(
        String name, List<LifeAnswer> visits, @Nullable LifePicture picture) {

    /** The visit it was last seen at: what is left, is left from there. */
    public LifeAnswer last() {
        return visits.get(visits.size() - 1);
    }
}
