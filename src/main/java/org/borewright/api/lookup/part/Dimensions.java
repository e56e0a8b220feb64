package org.borewright.api.lookup.part;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.BaseGasket;
import org.borewright.catalog.Clip;
import org.borewright.catalog.GasketKit;
import org.borewright.catalog.HeadGasket;
import org.borewright.catalog.Part;
import org.borewright.catalog.Pin;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.fit.shape.ClipSeat;
import org.borewright.fit.shape.GasketShape;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.LengthUnit;

/** Lists the dimensions of a part, as they are called on the bench. */
final class Dimensions {

    private Dimensions() {}

    static List<DimensionAnswer> of(Part part, LengthUnit unit) {
        if (part instanceof Piston piston) {
            return piston(piston.shape(), unit).toList();
        }
        if (part instanceof RingSet set) {
            Stream<DimensionAnswer> bore = Stream.of(DimensionAnswer.of("made for a bore of", set.nominalBore(), unit));
            return Stream.concat(bore, set.rings().stream().flatMap(ring -> ring(ring, unit)))
                    .toList();
        }
        if (part instanceof Pin pin) {
            return List.of(
                    DimensionAnswer.of("outside diameter", pin.shape().outside(), unit),
                    DimensionAnswer.of("length", pin.shape().length(), unit));
        }
        if (part instanceof Clip clip) {
            return List.of(DimensionAnswer.of("wire", clip.shape().wire(), unit));
        }
        if (part instanceof HeadGasket head) {
            return List.of(
                    DimensionAnswer.of("opening", head.opening(), unit),
                    DimensionAnswer.of("head gasket, compressed", head.thickness(), unit),
                    DimensionAnswer.of("margin round the hole", head.margin(), unit));
        }
        if (part instanceof BaseGasket base) {
            return List.of(DimensionAnswer.of("base gasket, compressed", base.thickness(), unit));
        }
        return part instanceof GasketKit kit ? gaskets(kit.shape(), unit) : List.of();
    }

    /** The piston design a part belongs to. */
    static Optional<String> design(Part part) {
        if (part instanceof Piston piston) {
            return Optional.of(piston.design());
        }
        if (part instanceof RingSet set) {
            return Optional.of(set.design());
        }
        if (part instanceof Pin pin) {
            return Optional.of(pin.design());
        }
        return part instanceof Clip clip ? Optional.of(clip.design()) : Optional.empty();
    }

    private static Stream<DimensionAnswer> piston(PistonShape shape, LengthUnit unit) {
        Stream<DimensionAnswer> body = Stream.of(
                DimensionAnswer.of("diameter at gauge height", shape.diameter(), unit),
                DimensionAnswer.of("made for a bore of", shape.nominalBore(), unit),
                DimensionAnswer.of("clearance in the hole", shape.clearance().limits(), unit),
                DimensionAnswer.of("clearance to hone for", shape.clearance().target(), unit),
                DimensionAnswer.of("compression height", shape.crown().compressionHeight(), unit),
                DimensionAnswer.of("dome height", shape.crown().domeHeight(), unit),
                DimensionAnswer.of("pin bore", shape.pinSeat().bore(), unit));
        return Stream.of(
                        body,
                        shape.grooves().stream().flatMap(groove -> groove(groove, unit)),
                        shape.clipSeat().stream().flatMap(seat -> clipSeat(seat, unit)))
                .flatMap(stream -> stream);
    }

    private static Stream<DimensionAnswer> groove(GrooveShape groove, LengthUnit unit) {
        return Stream.of(
                DimensionAnswer.of(groove.name() + " groove: width", groove.width(), unit),
                DimensionAnswer.of(groove.name() + " groove: root diameter", groove.root(), unit),
                DimensionAnswer.of(groove.name() + " groove: ring gap", groove.gap(), unit));
    }

    private static Stream<DimensionAnswer> clipSeat(ClipSeat seat, LengthUnit unit) {
        return Stream.of(
                DimensionAnswer.of("clip grooves: span", seat.span(), unit),
                DimensionAnswer.of("clip grooves: width", seat.width(), unit));
    }

    private static Stream<DimensionAnswer> ring(RingShape ring, LengthUnit unit) {
        return Stream.of(
                DimensionAnswer.of(ring.groove() + " ring: height", ring.axialWidth(), unit),
                DimensionAnswer.of(ring.groove() + " ring: radial wall", ring.radialWall(), unit),
                DimensionAnswer.of(ring.groove() + " ring: closed gap", ring.gap(), unit),
                DimensionAnswer.of(ring.groove() + " ring: may be filed by", ring.fileAllowance(), unit));
    }

    private static List<DimensionAnswer> gaskets(GasketShape shape, LengthUnit unit) {
        return List.of(
                DimensionAnswer.of("opening", shape.opening(), unit),
                DimensionAnswer.of("head gasket, compressed", shape.headThickness(), unit),
                DimensionAnswer.of("base gasket, compressed", shape.baseThickness(), unit),
                DimensionAnswer.of("margin round the hole", shape.margin(), unit));
    }
}
