/** The pages of the bench: what a machinist enters with a gauge in the other hand, and reads from an arm's length. */
@NullMarked
package org.borewright.page.bench;

import org.jspecify.annotations.NullMarked;
