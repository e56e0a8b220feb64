/**
 * The tables of the catalogue, one class per file of the same name: what was typed, in whole nanometres, without any decision. A
 * field is null exactly where the cell may be empty; the tables hold that, so nothing here is marked.
 */
@NullUnmarked
package org.borewright.catalog.store.row;

import org.jspecify.annotations.NullUnmarked;
