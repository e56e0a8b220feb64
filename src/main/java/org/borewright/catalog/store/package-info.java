/**
 * Where the catalogue is kept: {@code row} holds the tables, {@link org.borewright.catalog.store.Stocktaking} makes the heart's values of rows, and
 * {@link org.borewright.catalog.store.Shelves} keeps them in memory, so that a question never waits for the database.
 */
@NullMarked
package org.borewright.catalog.store;

import org.jspecify.annotations.NullMarked;
