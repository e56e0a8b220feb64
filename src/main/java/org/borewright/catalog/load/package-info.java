/**
 * How a folder of catalogue files becomes a catalogue: read as text ({@code sheet}), cell by cell into rows ({@code table}), then held
 * against each other ({@code rule}), then judged by the rules of fit that a match uses ({@code sense}). Every bad cell of every file is
 * named at once, and then nothing is changed.
 */
@NullMarked
package org.borewright.catalog.load;

import org.jspecify.annotations.NullMarked;
