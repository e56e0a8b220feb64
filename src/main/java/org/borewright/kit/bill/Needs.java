package org.borewright.kit.bill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Part;
import org.borewright.kit.choice.Outfit;
import org.borewright.kit.hole.HoleAtSize;

/** Counts what a kit needs, from the engine and not from a constant: no need stands twice. */
public final class Needs {

    private static final int CLIPS_PER_PISTON = 2;

    private final Map<Part, List<String>> byPart = new LinkedHashMap<>();

    private Needs() {}

    /** The needs of a kit, in the order of a kit list. */
    static List<Need> of(
            Engine engine, List<HoleAtSize> holes, Outfit outfit, Gaskets gaskets, List<Fastener> touched) {
        Needs needs = new Needs();
        needs.addPistons(holes);
        for (HoleAtSize hole : holes) {
            needs.addRings(outfit, hole);
            needs.add(outfit.pin(), hole.cylinder(), 1);
            outfit.bearing().ifPresent(bearing -> needs.add(bearing, hole.cylinder(), 1));
        }
        return needs.with(engine, gaskets, touched);
    }

    /** The needs of new rings on pistons that stay, in the same order. */
    static List<Need> ofRings(
            Engine engine, List<HoleAtSize> holes, Outfit outfit, Gaskets gaskets, List<Fastener> touched) {
        Needs needs = new Needs();
        holes.forEach(hole -> needs.addRings(outfit, hole));
        return needs.with(engine, gaskets, touched);
    }

    /** The pistons alone, each number with the holes it goes into. */
    public static List<Need> ofPistons(List<HoleAtSize> holes) {
        Needs needs = new Needs();
        needs.addPistons(holes);
        return needs.listed();
    }

    private void addPistons(List<HoleAtSize> holes) {
        holes.forEach(hole -> add(hole.piston(), hole.cylinder(), 1));
    }

    /** Rings, and the clips that are new whenever a piston was out (common practice). */
    private void addRings(Outfit outfit, HoleAtSize hole) {
        add(outfit.rings(), hole.cylinder(), 1);
        outfit.clip().ifPresent(clip -> add(clip, hole.cylinder(), CLIPS_PER_PISTON));
    }

    /** These and what belongs to no hole. */
    private List<Need> with(Engine engine, Gaskets gaskets, List<Fastener> touched) {
        int cylinders = engine.cylinders().size();
        add(gaskets.kit(), Need.ENGINE, count(cylinders, gaskets.kit().servesCylinders()));
        gaskets.head().ifPresent(head -> add(head, Need.ENGINE, count(cylinders, head.servesCylinders())));
        gaskets.base().ifPresent(base -> add(base, Need.ENGINE, count(cylinders, base.servesCylinders())));
        touched.forEach(fastener -> fastener.singleUse().ifPresent(bolt -> add(bolt, Need.ENGINE, fastener.count())));
        return listed();
    }

    private List<Need> listed() {
        return byPart.entrySet().stream()
                .map(entry -> new Need(entry.getKey(), entry.getValue()))
                .sorted((a, b) -> a.part().kind().compareTo(b.part().kind()))
                .toList();
    }

    private static int count(int cylinders, int oneServes) {
        return (cylinders + oneServes - 1) / oneServes;
    }

    private void add(Part part, String hole, int count) {
        byPart.computeIfAbsent(part, each -> new ArrayList<>()).addAll(Collections.nCopies(count, hole));
    }
}
