/** Reads the question of a match: every fault is found, with its place, before anything is answered. */
@NullMarked
package org.borewright.api.match.request;

import org.jspecify.annotations.NullMarked;
