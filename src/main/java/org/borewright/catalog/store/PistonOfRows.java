package org.borewright.catalog.store;

import static java.util.Comparator.comparingInt;
import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Size;
import org.borewright.catalog.store.row.GrooveRow;
import org.borewright.catalog.store.row.PistonDesignRow;
import org.borewright.catalog.store.row.PistonRow;
import org.borewright.catalog.store.row.RingRow;
import org.borewright.catalog.store.row.RingSetRow;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.ClipSeat;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Length;

/** The pistons and ring sets of one design, each at its size. */
final class PistonOfRows {

    private final PistonDesignRow design;
    private final List<GrooveRow> grooves;
    private final List<String> grooveOrder;
    private final Length standardBore;
    private final Map<String, Length> oversizes;

    PistonOfRows(PistonDesignRow design, List<GrooveRow> grooves, Length standardBore, List<Size> sizes) {
        this.design = design;
        this.grooves = grooves.stream().sorted(comparingInt(row -> row.order)).toList();
        this.grooveOrder = this.grooves.stream().map(row -> row.groove).toList();
        this.standardBore = standardBore;
        this.oversizes = sizes.stream().collect(toMap(Size::label, Size::oversize));
    }

    Piston piston(PistonRow row) {
        Length oversize = requireNonNull(oversizes.get(row.size));
        PistonShape shape = new PistonShape(
                row.diameter,
                standardBore.plus(oversize),
                new ClearanceWindow(design.clearanceLeast, design.clearanceTarget, design.clearanceGreatest),
                new Crown(design.compressionHeight, design.domeHeight, design.domeVolume),
                grooves.stream().map(groove -> groove(groove, oversize)).toList(),
                new PinSeat(design.pinBore, design.pinFit),
                clipSeat(),
                row.mass);
        return new Piston(
                new PartNumber(row.piston), row.design, row.size, row.hand, Optional.ofNullable(row.grade), shape);
    }

    RingSet ringSet(RingSetRow row, List<RingRow> rings) {
        return new RingSet(
                new PartNumber(row.ringSet),
                row.design,
                row.size,
                row.nominalBore,
                rings.stream()
                        .sorted(comparingInt(ring -> grooveOrder.indexOf(ring.groove)))
                        .map(ring -> ring(ring, row.nominalBore))
                        .toList());
    }

    /** A groove is cut as much larger at the bottom as the piston is larger, so that the same wall of ring fits. */
    private static GrooveShape groove(GrooveRow row, Length oversize) {
        return new GrooveShape(
                row.groove, row.section, row.width, row.root.plus(oversize), row.gap, row.play, row.backLeast);
    }

    private static RingShape ring(RingRow row, Length gaugeBore) {
        return new RingShape(
                row.groove, row.section, row.axial, row.wall, row.gap, gaugeBore, row.fileAllowance, row.face);
    }

    private Optional<ClipSeat> clipSeat() {
        return Optional.ofNullable(design.clipSpan)
                .map(span -> new ClipSeat(span, design.clipGroove, design.clipFloat, design.clipPlayGreatest));
    }
}
