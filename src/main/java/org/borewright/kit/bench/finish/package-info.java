/** Whether finished holes are good with the pistons that go in. */
@NullMarked
package org.borewright.kit.bench.finish;

import org.jspecify.annotations.NullMarked;
