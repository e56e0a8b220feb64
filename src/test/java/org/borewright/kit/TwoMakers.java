package org.borewright.kit;

import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Pin;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.MatchRequest;

/** The shop of the twin with a second maker's pistons of +0.25, P2-025 with R2-025, everything of them on the shelf. */
public final class TwoMakers {

    private final TwinShop shop;

    /** The second maker's pistons are made to an oversize of their own, and cost so much. */
    public TwoMakers(TwinShop shop, String oversize, String price) {
        this.shop = shop;
        Piston made = TwinShop.piston("P2-025", "+0.25", oversize, Optional.empty());
        shop.pistons.add(new Piston(made.number(), "DESIGN-2", made.size(), made.hand(), made.grade(), made.shape()));
        shop.rings.add(new RingSet(
                no("R2-025"),
                "DESIGN-2",
                "+0.25",
                mm("70").plus(mm(oversize)),
                shop.rings.get(1).rings()));
        shop.pins.add(new Pin(no("PIN-2"), "DESIGN-2", shop.pins.get(0).shape()));
        shop.clips.add(new Clip(no("CLIP-2"), "DESIGN-2", shop.clips.get(0).shape()));
        shop.offer("P2-025", price, 10);
        shop.offer("R2-025", "20", 10);
        shop.offer("PIN-2", "6", 20);
        shop.offer("CLIP-2", "0.50", 40);
    }

    /** The shelf with both makers' designs, the second listed first: nothing goes by the order of a list. */
    public Shelf shelf() {
        Shelf shelf = shop.shelf();
        Parts parts = shelf.parts();
        PistonDesign first = parts.designs().get(0);
        PistonDesign second = new PistonDesign(
                "DESIGN-2", "Likewright", first.expansion(), first.gaugeHeight(), first.coating(), first.wearLimit());
        return new Shelf(
                shelf.revision(),
                shelf.engine(),
                shelf.sizes(),
                new Parts(
                        List.of(second, first),
                        parts.pistons(),
                        parts.ringSets(),
                        parts.pins(),
                        parts.clips(),
                        parts.bearings(),
                        parts.gasketKits(),
                        parts.headGaskets(),
                        parts.baseGaskets()),
                shelf.fasteners(),
                shelf.operations(),
                List.copyOf(shelf.boxes()),
                shelf.withdrawals());
    }

    /** The answer to any request. */
    public Match ask(MatchRequest request) {
        Shelf shelf = shelf();
        return Match.of(FitTable.of(shelf), new KitFinder(shelf, new Offers(shop.offers)), request);
    }
}
