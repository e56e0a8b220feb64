/**
 * What rows of different files owe each other, told as bad cells of the files they came from.
 */
@NullMarked
package org.borewright.catalog.load.rule;

import org.jspecify.annotations.NullMarked;
