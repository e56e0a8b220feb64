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

    /**
     * The kit that covers the needs of an outfit and a set of gaskets. More of a box never takes anything away, so each need can be covered
     * or not whatever becomes of the others.
     */
    Kit of(List<Need> needs, Outfit outfit, Gaskets gaskets) {
        CoverSearch search = CoverSearch.of(needs, shelf, offers);
        List<Need> coverable = new ArrayList<>();
        List<Kit.Missing> missing = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            if (search.isPossible(i)) {
                coverable.add(needs.get(i));
            } else {
                missing.add(missing(needs.get(i), Math.toIntExact(search.obtainable(i, 0))));
            }
        }
        Cover cover = (missing.isEmpty() ? search : search.only(coverable)).best();
        return new Kit(
                outfit, gaskets, needs, lines(cover, coverable), cover.surplus(coverable), missing, cover.total());
    }

    private Kit.Missing missing(Need need, int obtainable) {
        return new Kit.Missing(
                need.part(),
                need.count(),
                obtainable,
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
