/** What is asked of an engine. */
@NullMarked
package org.borewright.kit.request;

import org.jspecify.annotations.NullMarked;
