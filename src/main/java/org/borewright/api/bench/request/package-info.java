/** Reads the questions of the bench: every fault is found, with its place, before anything is answered. */
@NullMarked
package org.borewright.api.bench.request;

import org.jspecify.annotations.NullMarked;
