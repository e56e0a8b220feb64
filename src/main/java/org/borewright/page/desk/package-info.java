/** What the desk is asked before a block is on the bench, or right after: what will it take, what does it cost, when can it go out. */
@NullMarked
package org.borewright.page.desk;

import org.jspecify.annotations.NullMarked;
