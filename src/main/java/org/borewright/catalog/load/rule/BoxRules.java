package org.borewright.catalog.load.rule;

import static java.util.stream.Collectors.toSet;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.borewright.catalog.Box;
import org.borewright.catalog.Withdrawal;
import org.borewright.catalog.load.rule.Uses.Made;
import org.borewright.catalog.store.row.BearingRow;
import org.borewright.catalog.store.row.BoxRow;
import org.borewright.catalog.store.row.CatalogRow;
import org.borewright.catalog.store.row.ClipRow;
import org.borewright.catalog.store.row.GasketKitRow;
import org.borewright.catalog.store.row.GasketRow;
import org.borewright.catalog.store.row.PinRow;
import org.borewright.catalog.store.row.PistonRow;
import org.borewright.catalog.store.row.RingSetRow;
import org.borewright.catalog.store.row.WithdrawnRow;

/** What boxes owe: each is packed one way, a pack holds one part, and those of one size are few enough for a match to try them all. */
final class BoxRules {

    private final Examination examination;
    private final Map<String, List<BoxRow>> boxes;
    private final Uses uses;

    private BoxRules(Examination examination) {
        this.examination = examination;
        this.boxes = examination.rows(BoxRow.class, row -> row.box);
        this.uses = new Uses(examination);
    }

    static void check(Examination examination) {
        BoxRules rules = new BoxRules(examination);
        rules.boxes.values().forEach(rules::packed);
        Map<String, Set<String>> byEngine = rules.byEngine();
        examination.rows(PistonRow.class).stream()
                .map(row -> new Made(rules.uses.engineOf(row.design), row.design, row.size))
                .distinct()
                .forEach(made -> rules.few(made, byEngine.getOrDefault(made.engine(), Set.of())));
    }

    private void packed(List<BoxRow> box) {
        BoxRow first = box.get(0);
        for (BoxRow row : box.subList(1, box.size())) {
            if (row.packed != first.packed) {
                examination.bad(row, "packed", Duty.PACKED, first.packed.label(), first.line);
            } else if (row.packed == Box.Kind.PACK) {
                examination.bad(row, "part", Duty.PACK, first.part);
            }
        }
    }

    /** The boxes that hold a part of an engine and are supplied, in the order of the file. */
    private Map<String, Set<String>> byEngine() {
        Set<String> gone = examination.rows(WithdrawnRow.class).stream()
                .filter(row -> row.state != Withdrawal.State.DISCONTINUED)
                .map(row -> row.number)
                .collect(toSet());
        Map<String, Set<String>> byEngine = new HashMap<>();
        examination.rows(BoxRow.class).stream()
                .filter(row -> !gone.contains(row.box))
                .forEach(row -> uses.of(row.part)
                        .forEach(use -> byEngine.computeIfAbsent(use.engine(), unused -> new LinkedHashSet<>())
                                .add(row.box)));
        return byEngine;
    }

    /** For each kit boxes that serve several needs are tried together, in every number that can be of use; those that serve one for themselves. */
    private void few(Made made, Set<String> ofEngine) {
        long ways = kits(made);
        Map<String, Integer> alone = new HashMap<>();
        for (String box : ofEngine) {
            List<BoxRow> serving = serving(box, made);
            if (serving.size() == 1) {
                BoxRow row = serving.get(0);
                if (alone.merge(row.part, 1, Integer::sum) > Box.mostPacks()) {
                    examination.bad(row, "box", Duty.FEW_PACKS, Box.mostPacks(), row.part);
                }
            } else if (!serving.isEmpty()) {
                ways *= 1 + mostOfUse(serving, made);
                if (ways > Box.mostWays()) {
                    examination.bad(serving.get(0), "box", Duty.FEW_BOXES, words(made), Box.mostWays());
                    ways = Box.mostWays();
                }
            }
        }
    }

    /**
     * How many kits a match looks through at the most: every outfit with every set of gaskets, but no set beside one that needs less of the
     * same. Of h head and b base gaskets that is each alone, or each head with each base.
     */
    private long kits(Made made) {
        long outfits = lines(RingSetRow.class, row -> row.design.equals(made.design()) && row.size.equals(made.size()))
                * lines(PinRow.class, row -> row.design.equals(made.design()))
                * lines(ClipRow.class, row -> row.design.equals(made.design()))
                * lines(BearingRow.class, row -> row.engine.equals(made.engine()));
        long heads = loose(made, GasketRow.Place.HEAD);
        long bases = loose(made, GasketRow.Place.BASE);
        long kits = lines(GasketKitRow.class, row -> row.engine.equals(made.engine()));
        return outfits * kits * Math.max(1, Math.max(heads * bases, heads + bases));
    }

    private long loose(Made made, GasketRow.Place place) {
        return examination.rows(GasketRow.class).stream()
                .filter(row -> row.engine.equals(made.engine()) && row.place == place)
                .count();
    }

    /** How many lines there are to choose from; 1 where there is no choice. */
    private <R extends CatalogRow> long lines(Class<R> kind, Predicate<R> concerned) {
        return Math.max(1, examination.rows(kind).stream().filter(concerned).count());
    }

    /** What of a box is needed with pistons of a size; nothing where the box holds a piston or a ring set of another. */
    private List<BoxRow> serving(String box, Made made) {
        List<BoxRow> rows = boxes.getOrDefault(box, List.of());
        return rows.stream().anyMatch(row -> uses.isOfAnotherSize(row.part, made))
                ? List.of()
                : rows.stream().filter(row -> uses.taken(row.part, made) > 0).toList();
    }

    private int mostOfUse(List<BoxRow> serving, Made made) {
        return serving.stream()
                .mapToInt(row -> (uses.taken(row.part, made) + row.count - 1) / row.count)
                .max()
                .orElse(0);
    }

    private static String words(Made made) {
        return "%s at %s".formatted(made.design(), made.size());
    }
}
