package org.borewright.catalog;

/**
 * Which state of the catalogue an answer stands on: fingerprints of the loaded files. What fits depends on the first alone, so it may
 * be cached as long as that stays.
 *
 * @param fit of all files that say what fits
 * @param offers of prices and stock
 */
public record Revision(String fit, String offers) {}
