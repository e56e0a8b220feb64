package org.borewright.api.order;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.Size;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.order.store.HoleLifeRow;
import org.borewright.order.store.OrderRow;

/**
 * What this shop signed the holes of a block at the last time: the next rebuild starts from it. Where barrels are told apart each hole goes by
 * its barrel, in whatever block and at whatever cylinder that was signed.
 *
 * @param signed the last signature of each hole, by cylinder
 */
record BlockRecord(Map<String, HoleLifeRow> signed) {

    /** That of the block or the barrels of an order; nothing for parts alone. */
    static BlockRecord of(OrderRow order) {
        Map<String, HoleLifeRow> signed = new HashMap<>();
        if (!order.barrels.isEmpty()) {
            order.barrels.forEach((cylinder, barrel) ->
                    signed(HoleLifeRow.ofBarrel(barrel)).forEach(life -> signed.put(cylinder, life)));
        } else if (order.block != null) {
            signed(HoleLifeRow.ofBlock(order.block)).forEach(life -> signed.put(life.cylinder, life));
            // Which barrel sits there by now is not told.
            signed.values().removeIf(life -> life.barrel != null);
        }
        return new BlockRecord(signed);
    }

    private static Stream<HoleLifeRow> signed(List<HoleLifeRow> life) {
        return life.stream().filter(visit -> visit.what == HoleLifeRow.What.FINISHED);
    }

    /**
     * The question with the finish on record of each worn hole, where the present size is known from the record, is the one signed, and no
     * other finish is told. Of a hole that was not finished round the smallest counts, for the wear is then reckoned no smaller than it is.
     */
    MatchRequest recalledBy(MatchRequest request) {
        Optional<String> present = Optional.of(request.present())
                .filter(known -> known.knownFrom() == PresentSize.KnownFrom.RECORD)
                .flatMap(PresentSize::size)
                .map(Size::label);
        return request.condition() == Condition.WORN && present.isPresent()
                ? request.surveyed(request.cylinders().stream()
                        .map(hole -> recalledBy(hole, present.get()))
                        .toList())
                : request;
    }

    private CylinderSurvey recalledBy(CylinderSurvey hole, String present) {
        return Optional.ofNullable(signed.get(hole.cylinder()))
                .filter(life -> present.equals(life.size) && life.smallest != null)
                .map(life -> hole.with(hole.wall().recalling(Length.ofNanometres(life.smallest))))
                .orElse(hole);
    }
}
