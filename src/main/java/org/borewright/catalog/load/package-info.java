/**
 * How a folder of catalogue files becomes a catalogue: read as text, cell by cell into rows, then held against each other, then judged
 * by the rules of fit that a match uses. Every bad cell of every file is named at once, and then nothing is changed.
 */
@NullMarked
package org.borewright.catalog.load;

import org.jspecify.annotations.NullMarked;
