/**
 * The columns of every catalogue file, the row that a line becomes, and what its lines owe each other.
 */
@NullMarked
package org.borewright.catalog.load.table;

import org.jspecify.annotations.NullMarked;
