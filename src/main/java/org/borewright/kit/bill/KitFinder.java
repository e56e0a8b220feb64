package org.borewright.kit.bill;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.Money;
import org.borewright.catalog.Offers;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Shelf;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;

/**
 * Finds the best kit for a choice of pistons. A kit depends on nothing measured but the piston of each hole, so it is worked out once for
 * each such set and remembered; what is remembered is what would be worked out again.
 */
public final class KitFinder {

    private final Shelf shelf;
    private final Offers offers;
    private final Map<Key, Optional<Kit>> known = new ConcurrentHashMap<>();

    /** A finder over one engine's shelf and the prices and stock of one moment. */
    public KitFinder(Shelf shelf, Offers offers) {
        this.shelf = shelf;
        this.offers = offers;
    }

    private record Key(
            String design, List<PartNumber> pistons, List<PartNumber> gaskets, Set<Work> work, boolean skimmed) {}

    /** The best kit; empty when no outfit or no gasket kit fits. */
    public Optional<Kit> best(Choice choice, List<HoleAtSize> holes, List<GasketFit> gaskets, Length skim) {
        Set<Work> work = EnumSet.noneOf(Work.class);
        List<PartNumber> pistons = new ArrayList<>(holes.size());
        for (HoleAtSize hole : holes) {
            work.add(hole.work());
            pistons.add(hole.piston().number());
        }
        List<PartNumber> sets = new ArrayList<>(gaskets.size());
        for (GasketFit fit : gaskets) {
            sets.add(fit.gaskets().kit().number());
            fit.gaskets().head().ifPresent(head -> sets.add(head.number()));
            fit.gaskets().base().ifPresent(base -> sets.add(base.number()));
        }
        Key key = new Key(choice.design().code(), pistons, sets, work, skim.isMoreThan(Length.ZERO));
        Optional<Kit> remembered = known.get(key);
        return remembered != null
                ? remembered
                : known.computeIfAbsent(key, unused -> search(choice, holes, gaskets, skim));
    }

    /** Sets with more loose gaskets stand later, and none of them comes before a kit that is complete without. */
    private Optional<Kit> search(Choice choice, List<HoleAtSize> holes, List<GasketFit> ranked, Length skim) {
        List<Fastener> touched = ShopWork.of(shelf, holes, skim).touched(shelf.fasteners());
        KitAssembly assembly = new KitAssembly(shelf, offers);
        Optional<Kit> best = Optional.empty();
        for (GasketFit fit : ranked) {
            if (best.filter(Kit::isComplete)
                    .filter(kit -> kit.gaskets().loose() < fit.gaskets().loose())
                    .isPresent()) {
                return best;
            }
            Optional<Kit> found = choice.outfits().stream()
                    .map(outfit -> assembly.of(holes, outfit, fit.gaskets(), touched))
                    .min(PREFERENCE);
            best = Stream.concat(best.stream(), found.stream()).min(OF_RANKED_GASKETS);
        }
        return best;
    }

    /**
     * Complete before incomplete, then the fewest loose gaskets (nobody changes ratio or ports for a day's wait), then complete now
     * before later, then the least left over, then the earliest, then box order by way of the cover.
     */
    private static final Comparator<Kit> WITHOUT_PRICE = Comparator.comparing(
                    (Kit kit) -> kit.missing().size())
            .thenComparing(kit -> kit.gaskets().loose())
            .thenComparing(kit -> kit.leadDays() > 0)
            .thenComparing(Kit::leftOver)
            .thenComparing(Kit::leadDays)
            .thenComparing(Kit::boxOrder);

    /** The same, then the price. */
    public static final Comparator<Kit> PREFERENCE = WITHOUT_PRICE.thenComparing(KitFinder::price);

    /** Of kits as they come the price still decides; of sets with loose gaskets that are alike so far the first stays. */
    private static final Comparator<Kit> OF_RANKED_GASKETS =
            WITHOUT_PRICE.thenComparing(kit -> kit.gaskets().loose() == 0 ? price(kit) : BigDecimal.ZERO);

    private static BigDecimal price(Kit kit) {
        return kit.total().map(Money::amount).orElse(BigDecimal.ZERO);
    }
}
