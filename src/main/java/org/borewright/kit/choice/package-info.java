/** What fits an engine at each size before a hole is measured: pistons with their rings, pins, clips and gaskets, part against part. */
@NullMarked
package org.borewright.kit.choice;

import org.jspecify.annotations.NullMarked;
