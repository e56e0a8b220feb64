/**
 * What every question holds, read out of its body: engine, unit, gauges, temperatures, holes. Every fault is found, with its place, before
 * anything is answered.
 */
@NullMarked
package org.borewright.api.asked;

import org.jspecify.annotations.NullMarked;
