/** Whether new rings on the pistons that are in an engine will do, hole by hole, and the kit for it: no metal is taken out. */
@NullMarked
package org.borewright.kit.rings;

import org.jspecify.annotations.NullMarked;
