/** What is entered on the bench: the holes side by side, and what is seen in each. */
@NullMarked
package org.borewright.page.bench.sheet;

import org.jspecify.annotations.NullMarked;
