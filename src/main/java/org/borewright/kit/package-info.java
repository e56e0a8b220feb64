/**
 * From a survey and a shelf to the answer: one size for the engine, and a complete kit. Pure: the same request on the same catalogue
 * revision gives the same answer, and the date it is asked for is part of the request.
 */
@NullMarked
package org.borewright.kit;

import org.jspecify.annotations.NullMarked;
