package org.borewright.kit.bill;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Withdrawal;
import org.borewright.kit.choice.Outfit;

/** Assembles the bill of materials for known needs: covers what can be had, names what cannot, and says for which hole each line is. */
final class KitAssembly {

    private final Shelf shelf;
    private final Offers offers;

    KitAssembly(Shelf shelf, Offers offers) {
        this.shelf = shelf;
        this.offers = offers;
    }

    /** The kit that covers the needs of an outfit and a set of gaskets. */
    Kit of(List<Need> needs, Outfit outfit, Gaskets gaskets) {
        List<Need> coverable = coverable(needs);
        Cover cover = search(coverable).best();
        List<Kit.Missing> missing = needs.stream()
                .filter(need -> !coverable.contains(need))
                .map(need -> missing(need, needs, coverable))
                .toList();
        return new Kit(
                outfit, gaskets, needs, lines(cover, coverable), cover.surplus(coverable), missing, cover.total());
    }

    /** All needs when they can be covered together, else those that can still be covered after leaving out, in order, what cannot. */
    private List<Need> coverable(List<Need> needs) {
        if (search(needs).isPossible()) {
            return needs;
        }
        List<Need> kept = new ArrayList<>();
        for (Need need : needs) {
            kept.add(need);
            if (!search(kept).isPossible()) {
                kept.remove(need);
            }
        }
        return kept;
    }

    private CoverSearch search(List<Need> needs) {
        return CoverSearch.of(needs, shelf, offers);
    }

    /** Counted as when it was left out: beside the coverable needs before it. */
    private Kit.Missing missing(Need need, List<Need> needs, List<Need> coverable) {
        List<Need> tried = new ArrayList<>(needs.subList(0, needs.indexOf(need)));
        tried.retainAll(coverable);
        tried.add(need);
        return new Kit.Missing(
                need.part(),
                need.count(),
                Math.toIntExact(search(tried).obtainable(tried.size() - 1, 0)),
                Optional.ofNullable(shelf.withdrawals().get(need.number())).map(Withdrawal::state));
    }

    private static List<Kit.Line> lines(Cover cover, List<Need> needs) {
        Map<PartNumber, Deque<String>> open = new HashMap<>();
        needs.forEach(need -> open.put(need.number(), new ArrayDeque<>(need.holes())));
        return cover.picks().stream()
                .map(pick -> new Kit.Line(
                        pick.packed().box(),
                        pick.quantity(),
                        covers(pick, needs, open),
                        pick.packed().offer().price(),
                        pick.leadDays()))
                .sorted(Comparator.comparing((Kit.Line line) -> line.box().kind())
                        .thenComparing(KitAssembly::firstKind))
                .toList();
    }

    private static Part.Kind firstKind(Kit.Line line) {
        return line.covers().get(0).part().kind();
    }

    private static List<Need> covers(Cover.Pick pick, List<Need> needs, Map<PartNumber, Deque<String>> open) {
        List<Need> covers = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            Deque<String> waiting = open.getOrDefault(needs.get(i).number(), new ArrayDeque<>());
            List<String> served = new ArrayList<>();
            int held = pick.packed().holds().get(i) * pick.quantity();
            while (served.size() < held && !waiting.isEmpty()) {
                served.add(waiting.removeFirst());
            }
            if (!served.isEmpty()) {
                covers.add(new Need(needs.get(i).part(), served));
            }
        }
        return covers;
    }
}
