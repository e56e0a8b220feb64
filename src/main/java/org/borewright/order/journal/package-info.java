/** What was done, by whom and when, chained so that nothing can be changed or left out unseen. */
@NullMarked
package org.borewright.order.journal;

import org.jspecify.annotations.NullMarked;
