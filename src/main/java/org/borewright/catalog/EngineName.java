package org.borewright.catalog;

/**
 * What an engine is called.
 *
 * @param code the short code it is asked for by, such as {@code OSTRAVEL-4}
 * @param model the maker's name for it
 * @param maker who made it
 */
public record EngineName(String code, String model, String maker) {}
