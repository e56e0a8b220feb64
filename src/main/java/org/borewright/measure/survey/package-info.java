/**
 * What was found in the holes: readings, their shape, and findings. A survey says what it does not know; it never fills in.
 */
@NullMarked
package org.borewright.measure.survey;

import org.jspecify.annotations.NullMarked;
