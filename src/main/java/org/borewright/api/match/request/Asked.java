package org.borewright.api.match.request;

import org.borewright.catalog.Catalogue;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.LengthUnit;

/**
 * A question that holds together, with the state of the catalogue it was judged by: what answers it takes all from there.
 *
 * @param catalogue as it was when the question was read
 * @param fits what fits the engine asked for
 * @param request what is asked
 * @param unit the question was put in, and is to be answered in
 */
public record Asked(Catalogue catalogue, FitTable fits, MatchRequest request, LengthUnit unit) {

    /** The same with another request. */
    public Asked with(MatchRequest other) {
        return new Asked(catalogue, fits, other, unit);
    }
}
