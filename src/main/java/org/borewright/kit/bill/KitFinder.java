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
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Money;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Shelf;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.choice.Outfit;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;

/**
 * Finds the best kit for a choice of pistons. A kit depends on nothing measured but the piston of each hole, so it is worked out once for
 * each such set and remembered; what is remembered is what would be worked out again. Grades go into the holes, and gaskets onto a skim,
 * in very many ways, so what is remembered is forgotten when it is {@linkplain #mostRemembered() too much}.
 */
public final class KitFinder {

    private final Shelf shelf;
    private final Offers offers;
    private final Optional<Choice> own;
    private final Map<Key, Optional<Kit>> known = new ConcurrentHashMap<>();

    /** A finder over one engine's shelf and the prices and stock of one moment. */
    public KitFinder(Shelf shelf, Offers offers) {
        this(shelf, offers, Optional.empty());
    }

    private KitFinder(Shelf shelf, Offers offers, Optional<Choice> own) {
        this.shelf = shelf;
        this.offers = offers;
        this.own = own;
    }

    /** A finder over the same, for an owner who brings these pistons: a kit of them needs all but the pistons. */
    public KitFinder withOwn(Choice pistons) {
        return new KitFinder(shelf, offers, Optional.of(pistons));
    }

    private record Key(
            String design, List<PartNumber> parts, List<PartNumber> gaskets, Set<Work> work, boolean skimmed) {}

    /** The best kit; empty when no outfit or no gasket kit fits. */
    public Optional<Kit> best(Choice choice, List<HoleAtSize> holes, List<GasketFit> gaskets, Length skim) {
        Set<Work> work = EnumSet.noneOf(Work.class);
        List<PartNumber> pistons = new ArrayList<>(holes.size());
        for (HoleAtSize hole : holes) {
            work.add(hole.work());
            pistons.add(hole.piston().number());
        }
        Key key = new Key(choice.design().code(), pistons, numbers(gaskets), work, skim.isMoreThan(Length.ZERO));
        return remembered(key, () -> {
            List<Fastener> touched = touched(holes, skim);
            KitAssembly assembly = new KitAssembly(shelf, offers);
            return search(
                    gaskets,
                    set -> choice.outfits().stream()
                            .map(outfit -> assembly.of(
                                    toBuy(choice, Needs.of(shelf.engine(), holes, outfit, set, touched)), outfit, set))
                            .min(PREFERENCE));
        });
    }

    private List<Need> toBuy(Choice choice, List<Need> needs) {
        return own.filter(choice::equals).isEmpty()
                ? needs
                : needs.stream()
                        .filter(need -> need.part().kind() != Part.Kind.PISTON)
                        .toList();
    }

    /**
     * The best kit of new rings alone: clips, gaskets and the bolts that are touched besides, but no piston, pin or bearing; empty when no
     * set of gaskets fits.
     *
     * @param outfit whose rings and clips are fitted
     * @param holes as they are, with the pistons that stay
     */
    public Optional<Kit> ofRings(Outfit outfit, List<HoleAtSize> holes, List<GasketFit> gaskets, Length skim) {
        List<PartNumber> parts = Stream.concat(
                        Stream.of(outfit.rings().number()), outfit.clip().map(Clip::number).stream())
                .toList();
        Key key = new Key(outfit.rings().design(), parts, numbers(gaskets), Set.of(), skim.isMoreThan(Length.ZERO));
        return remembered(key, () -> {
            List<Fastener> touched = touched(holes, skim);
            KitAssembly assembly = new KitAssembly(shelf, offers);
            return search(
                    gaskets,
                    set -> Optional.of(
                            assembly.of(Needs.ofRings(shelf.engine(), holes, outfit, set, touched), outfit, set)));
        });
    }

    private static List<PartNumber> numbers(List<GasketFit> gaskets) {
        List<PartNumber> numbers = new ArrayList<>(gaskets.size());
        for (GasketFit fit : gaskets) {
            numbers.add(fit.gaskets().kit().number());
            fit.gaskets().head().ifPresent(head -> numbers.add(head.number()));
            fit.gaskets().base().ifPresent(base -> numbers.add(base.number()));
        }
        return numbers;
    }

    private Optional<Kit> remembered(Key key, Supplier<Optional<Kit>> search) {
        Optional<Kit> before = known.get(key);
        return before != null ? before : remember(key, search.get());
    }

    /** Who looked for the same kit at the same time is handed the same, for what is written of it is kept by its identity. */
    private Optional<Kit> remember(Key key, Optional<Kit> found) {
        synchronized (known) {
            if (known.size() >= mostRemembered()) {
                known.clear();
            }
            Optional<Kit> before = known.putIfAbsent(key, found);
            return before != null ? before : found;
        }
    }

    /** How many kits are remembered at the most; what is asked for next is worked out anew. */
    public static int mostRemembered() {
        return 256;
    }

    /** How many are remembered. */
    int remembered() {
        return known.size();
    }

    /**
     * Sets with more loose gaskets stand later, and none of them comes before a kit that is complete without. Nor does a set before one that
     * needs less of the same: as much is missing at the least, and more is loose.
     */
    private static Optional<Kit> search(List<GasketFit> ranked, Function<Gaskets, Optional<Kit>> kits) {
        Optional<Kit> best = Optional.empty();
        for (GasketFit fit : ranked) {
            if (ranked.stream().anyMatch(other -> fit.gaskets().needMoreThan(other.gaskets()))) {
                continue;
            }
            if (best.filter(Kit::isComplete)
                    .filter(kit -> kit.gaskets().loose() < fit.gaskets().loose())
                    .isPresent()) {
                return best;
            }
            Optional<Kit> found = kits.apply(fit.gaskets());
            best = Stream.concat(best.stream(), found.stream()).min(OF_RANKED_GASKETS);
        }
        return best;
    }

    private List<Fastener> touched(List<HoleAtSize> holes, Length skim) {
        return ShopWork.of(shelf, holes, skim).touched(shelf.fasteners());
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
