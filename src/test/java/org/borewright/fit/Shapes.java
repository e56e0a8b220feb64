package org.borewright.fit;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.MassRange;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.RingFace;
import org.borewright.fit.shape.RingSection;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

/** Parts on the bench: what a test says nothing of is an unremarkable figure. */
final class Shapes {

    private Shapes() {}

    static Length mm(String millimetres) {
        return Length.parseMillimetres(millimetres);
    }

    static Length nm(long nanometres) {
        return Length.ofNanometres(nanometres);
    }

    /** A reading worth so much, of which nothing else is told. */
    static Uncertainty worth(Length expanded) {
        return Uncertainty.ofCalibration(expanded);
    }

    /** A reading with a gauge of which two differ by so much. */
    static Uncertainty differing(Length expanded) {
        return new Uncertainty(0, 0, (expanded.nanometres() - 0.5) / Math.sqrt(8), 0, 0, 0, 0);
    }

    /** The figure of the better gauge that a close call names; empty where it names none. */
    static Optional<Length> named(Comparison check) {
        return check.closer()
                .flatMap(closer -> closer instanceof CloserReading.Better better
                        ? Optional.of(better.atMost())
                        : Optional.empty());
    }

    static Limits limits(String least, String greatest) {
        return new Limits(mm(least), mm(greatest));
    }

    /** A flat piston with a plain pin bore and no grooves. */
    static PistonShape piston(Limits diameter, ClearanceWindow clearance) {
        return new PistonShape(
                diameter,
                mm("70.000"),
                clearance,
                new Crown(mm("32.000"), Length.ZERO, 0),
                List.of(),
                new PinSeat(limits("18.000", "18.006"), limits("0.000", "0.014")),
                Optional.empty(),
                new MassRange(250_000, 252_000));
    }

    /** A rectangular compression ring for a bore of 70 mm, by its gap in the gauge and what may be filed off. */
    static RingShape ring(Limits gap, Length fileAllowance) {
        return new RingShape(
                "top",
                RingSection.RECTANGULAR,
                limits("1.170", "1.190"),
                limits("2.900", "3.100"),
                gap,
                mm("70.000"),
                fileAllowance,
                RingFace.PLAIN);
    }

    /** A rectangular top groove, by the gap it allows. */
    static GrooveShape groove(Limits gap) {
        return new GrooveShape(
                "top",
                RingSection.RECTANGULAR,
                limits("1.220", "1.240"),
                limits("63.000", "63.100"),
                gap,
                limits("0.020", "0.080"),
                mm("0.200"));
    }
}
