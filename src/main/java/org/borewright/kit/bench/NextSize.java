package org.borewright.kit.bench;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Engine;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.FinishedHoles;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.WornHoles;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.PresentSize;

/**
 * The smallest larger size that would save holes too large for their pistons: one size for the whole engine, with nothing against it
 * but the wear.
 *
 * @param size the size
 * @param design whose pistons
 * @param certainty certain where the readings prove it of every hole; possible where a match must be asked, for the wear may be all on one wall
 */
public record NextSize(Size size, PistonDesign design, Certainty certainty) {

    /** The size after that of the request which brings every hole clean, or may; empty when there is none. */
    static Optional<NextSize> after(BenchRequest request, FitTable fits, List<Hole> holes) {
        Engine engine = fits.shelf().engine();
        return fits.shelf().sizes().stream()
                .filter(size -> size.compareTo(request.choice().size()) > 0)
                .flatMap(size -> fits.at(size).stream())
                .filter(larger -> fits.blocks(larger, request.deck().lowered()).isEmpty())
                .map(larger -> new NextSize(
                        larger.size(), larger.design(), certainty(larger, engine, request.condition(), holes)))
                .filter(next -> next.certainty != Certainty.NO)
                .findFirst();
    }

    private static Certainty certainty(Choice larger, Engine engine, Condition condition, List<Hole> holes) {
        FinishedHoles finished = new FinishedHoles(engine);
        WornHoles worn = new WornHoles(engine, PresentSize.NOT_KNOWN);
        Certainty least = Certainty.CERTAIN;
        for (int i = 0; i < holes.size(); i++) {
            HoleAtSize fate = switch (condition) {
                case WORN -> worn.at(larger, holes.get(i), larger.pistons().get(i));
                case FINISHED -> finished.at(holes.get(i), larger.pistons().get(i));
            };
            least = least.and(fate.certainty());
        }
        return least;
    }
}
