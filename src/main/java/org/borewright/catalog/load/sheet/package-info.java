/**
 * Catalogue files as text: lines, cells, how a cell is read, what lines owe each other in their text alone, and what is bad about them.
 */
@NullMarked
package org.borewright.catalog.load.sheet;

import org.jspecify.annotations.NullMarked;
