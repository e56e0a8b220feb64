/** Orders over HTTP: each change is asked once, by somebody, of the order as they know it. */
@NullMarked
package org.borewright.api.order;

import org.jspecify.annotations.NullMarked;
