package org.borewright.api.problem;

/**
 * What may have been meant. It is only ever suggested.
 *
 * @param value to send instead
 * @param why it may have been meant
 */
public record Suggestion(Object value, String why) {}
