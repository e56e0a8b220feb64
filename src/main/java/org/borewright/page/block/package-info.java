/** The life of a block: what each hole was at each visit, as a picture beside the figures. */
@NullMarked
package org.borewright.page.block;

import org.jspecify.annotations.NullMarked;
