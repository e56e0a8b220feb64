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
        List<PartNumber> kits = new ArrayList<>(gaskets.size());
        for (GasketFit fit : gaskets) {
            kits.add(fit.kit().number());
        }
        Key key = new Key(choice.design().code(), pistons, kits, work, skim.isMoreThan(Length.ZERO));
        Optional<Kit> remembered = known.get(key);
        return remembered != null
                ? remembered
                : known.computeIfAbsent(key, unused -> search(choice, holes, gaskets, skim));
    }

    private Optional<Kit> search(Choice choice, List<HoleAtSize> holes, List<GasketFit> gaskets, Length skim) {
        List<Fastener> touched = ShopWork.of(shelf, holes, skim).touched(shelf.fasteners());
        KitAssembly assembly = new KitAssembly(shelf, offers);
        return choice.outfits().stream()
                .flatMap(outfit -> gaskets.stream().map(fit -> assembly.of(holes, outfit, fit.kit(), touched)))
                .min(PREFERENCE);
    }

    /**
     * Complete before incomplete, then complete now before later, then the least left over, then the earliest, then box order by way
     * of the cover, then price.
     */
    public static final Comparator<Kit> PREFERENCE = Comparator.comparing(
                    (Kit kit) -> kit.missing().size())
            .thenComparing(kit -> kit.leadDays() > 0)
            .thenComparing(Kit::leftOver)
            .thenComparing(Kit::leadDays)
            .thenComparing(Kit::boxOrder)
            .thenComparing(kit -> kit.total().map(Money::amount).orElse(BigDecimal.ZERO));
}
