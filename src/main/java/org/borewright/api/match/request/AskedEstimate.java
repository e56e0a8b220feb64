package org.borewright.api.match.request;

import org.borewright.kit.request.Stamp;

/**
 * A question for an estimate that holds together.
 *
 * @param asked what would be asked of a match
 * @param stamp as sent
 * @param reading the one way it can be read
 */
public record AskedEstimate(Asked asked, Stamp stamp, Stamp.Reading reading) {}
