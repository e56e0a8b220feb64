/**
 * Whether what is on the shelf of an engine goes together, by the rules of fit that a match asks. It sees shelves, as a match does, and
 * neither files nor rows.
 */
@NullMarked
package org.borewright.catalog.load.sense;

import org.jspecify.annotations.NullMarked;
