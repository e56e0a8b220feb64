package org.borewright.kit;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Size;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentPiston;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.survey.CylinderSurvey;

/** The same request but for one thing; of another deck the request itself makes one. */
public final class Requests {

    private Requests() {}

    /** Of another present size. */
    public static MatchRequest of(MatchRequest like, PresentSize present) {
        return new MatchRequest(
                like.condition(),
                present,
                like.cylinders(),
                like.gauge(),
                like.climate(),
                like.deck(),
                like.asked(),
                like.asFound(),
                like.rings(),
                like.on());
    }

    /** Of holes otherwise surveyed. */
    public static MatchRequest surveyed(MatchRequest like, List<CylinderSurvey> cylinders) {
        return new MatchRequest(
                like.condition(),
                like.present(),
                cylinders,
                like.gauge(),
                like.climate(),
                like.deck(),
                like.asked(),
                like.asFound(),
                like.rings(),
                like.on());
    }

    /** Measured with another gauge, and as warm. */
    public static MatchRequest measured(MatchRequest like, Gauge gauge) {
        return measured(like, gauge, like.climate());
    }

    /** Measured with the same gauge, otherwise warm. */
    public static MatchRequest measured(MatchRequest like, Climate climate) {
        return measured(like, like.gauge(), climate);
    }

    /** Measured with another gauge, otherwise warm. */
    public static MatchRequest measured(MatchRequest like, Gauge gauge, Climate climate) {
        return new MatchRequest(
                like.condition(),
                like.present(),
                like.cylinders(),
                gauge,
                climate,
                like.deck(),
                like.asked(),
                like.asFound(),
                like.rings(),
                like.on());
    }

    /** For another size. */
    public static MatchRequest asking(MatchRequest like, Optional<Size> asked) {
        return new MatchRequest(
                like.condition(),
                like.present(),
                like.cylinders(),
                like.gauge(),
                like.climate(),
                like.deck(),
                asked,
                like.asFound(),
                like.rings(),
                like.on());
    }

    /** Of a hole of which no more is known than whose piston is in it. */
    public static AsFound pistonOf(Optional<PistonDesign> design) {
        return new AsFound(
                new PresentPiston(design, Optional.empty(), Optional.empty(), PresentPiston.NOT_TOLD.measuring()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** With other pistons and walls. */
    public static MatchRequest seen(MatchRequest like, List<AsFound> asFound) {
        return new MatchRequest(
                like.condition(),
                like.present(),
                like.cylinders(),
                like.gauge(),
                like.climate(),
                like.deck(),
                like.asked(),
                asFound,
                like.rings(),
                like.on());
    }
}
