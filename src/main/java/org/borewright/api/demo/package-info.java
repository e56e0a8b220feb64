/** Orders that show a new shop what orders look like. */
@NullMarked
package org.borewright.api.demo;

import org.jspecify.annotations.NullMarked;
