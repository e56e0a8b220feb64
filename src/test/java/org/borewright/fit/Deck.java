package org.borewright.fit;

import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;

import java.util.Optional;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.GasketShape;
import org.borewright.fit.shape.HeadShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/** Crankshaft to head: stroke 60, rod 100 and compression height 32 take 162 mm of the barrel. */
final class Deck {

    /** 0.900 to 1.200 mm asked for. */
    static final Limits PISTON_TO_HEAD = limits("0.900", "1.200");

    static final Crown FLAT = new Crown(mm("32.000"), Length.ZERO, 0);

    private Deck() {}

    static DeckShape deck(Limits barrelHeight, Length stroke, HeadShape head) {
        return new DeckShape(barrelHeight, stroke, mm("100.000"), PISTON_TO_HEAD, head);
    }

    /** A chamber of 20 cm³ with a land of 75 mm and a ratio up to 10.5. */
    static HeadShape head(boolean flat) {
        return new HeadShape(20, flat, Optional.empty(), mm("75.000"), 10_500_000);
    }

    static GasketShape gasket(Limits opening, Limits headThickness, Limits baseThickness) {
        return new GasketShape(opening, headThickness, baseThickness, mm("0.500"));
    }
}
