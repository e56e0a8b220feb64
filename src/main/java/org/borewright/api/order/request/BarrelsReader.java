package org.borewright.api.order.request;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.borewright.api.asked.CylindersReader;
import org.borewright.api.asked.Place;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.Engine;
import org.borewright.order.desk.OrderDesk.Opening.Barrel;

/** Reads the tags of barrels: one for each cylinder, and no tag twice, be it that of the block. */
final class BarrelsReader {

    /** Where each tag was told first, without regard to case. */
    private final Map<String, String> told = new HashMap<>();

    /** The tag of the block is not that of a barrel. */
    BarrelsReader(Optional<String> block) {
        block.ifPresent(tag -> told.put(folded(tag), "/block"));
    }

    /** The barrels of an engine, in its order; none where nothing is said of them. */
    List<Barrel> read(Place place, Optional<Engine> engine) {
        List<Barrel> barrels = new ArrayList<>();
        if (place.isGiven() && engine.isPresent() && !engine.get().hasSeparateBarrels()) {
            place.fault(
                    ProblemType.WRONG_FORM,
                    engine.get().code() + " has no barrels that come off one by one.",
                    "the tag of the block alone");
        } else if (place.isGiven()) {
            new CylindersReader<>(this::barrel, missing -> Optional.<Barrel>empty(), engine)
                    .read(place)
                    .forEach(barrel -> barrel.ifPresent(barrels::add));
        }
        return barrels;
    }

    private Optional<Barrel> barrel(Place item) {
        if (!item.isObject("cylinder", "tag")) {
            return Optional.empty();
        }
        item.at("cylinder").need("The name of the cylinder is missing.");
        Place place = item.at("tag");
        place.need("The barrel has no tag.");
        Optional<String> tag = OrderReader.tag(place);
        Optional<String> before = tag.map(typed -> told.putIfAbsent(folded(typed), place.pointer()));
        before.ifPresent(first -> place.fault(
                ProblemType.WRONG_FORM,
                "This tag is told twice.",
                "a tag of its own for each barrel; the first is at " + first));
        return item.at("cylinder")
                .text()
                .flatMap(cylinder -> tag.map(typed -> new Barrel(cylinder, typed, place.pointer())));
    }

    private static String folded(String tag) {
        return tag.toLowerCase(Locale.ROOT);
    }
}
