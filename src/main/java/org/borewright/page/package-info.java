/**
 * Pages for people at the desk and at the machine. A page asks what the API asks, in a body of the same form, and shows the figures of the
 * answer as they were told: nothing is reckoned here.
 */
@NullMarked
package org.borewright.page;

import org.jspecify.annotations.NullMarked;
