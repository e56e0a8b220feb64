package org.borewright.catalog.store;

import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.BaseGasket;
import org.borewright.catalog.Bearing;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Engine;
import org.borewright.catalog.GasketKit;
import org.borewright.catalog.HeadGasket;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Pin;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Size;
import org.borewright.catalog.store.row.BearingRow;
import org.borewright.catalog.store.row.ClipRow;
import org.borewright.catalog.store.row.GasketKitRow;
import org.borewright.catalog.store.row.GasketRow;
import org.borewright.catalog.store.row.GrooveRow;
import org.borewright.catalog.store.row.PinRow;
import org.borewright.catalog.store.row.PistonDesignRow;
import org.borewright.catalog.store.row.PistonRow;
import org.borewright.catalog.store.row.RingRow;
import org.borewright.catalog.store.row.RingSetRow;
import org.borewright.fit.CommonPractice;
import org.borewright.fit.shape.ClipShape;
import org.borewright.fit.shape.GasketShape;
import org.borewright.fit.shape.PinShape;
import org.borewright.measure.Length;
import org.jspecify.annotations.Nullable;

/** The parts made for one engine, from their rows. */
final class PartsOfRows {

    private final Map<String, List<PistonDesignRow>> designs;
    private final Map<String, List<GrooveRow>> grooves;
    private final Map<String, List<PistonRow>> pistons;
    private final Map<String, List<RingSetRow>> ringSets;
    private final Map<String, List<RingRow>> rings;
    private final Map<String, List<PinRow>> pins;
    private final Map<String, List<ClipRow>> clips;
    private final Map<String, List<BearingRow>> bearings;
    private final Map<String, List<GasketKitRow>> gasketKits;
    private final Map<String, List<GasketRow>> gaskets;

    PartsOfRows(CatalogRows rows) {
        Map<String, String> engineOf =
                rows.of(PistonDesignRow.class).stream().collect(toMap(row -> row.design, row -> row.engine));
        designs = rows.by(row -> row.engine, PistonDesignRow.class);
        grooves = rows.by(row -> row.design, GrooveRow.class);
        pistons = rows.by(row -> engineOf.get(row.design), PistonRow.class);
        ringSets = rows.by(row -> engineOf.get(row.design), RingSetRow.class);
        rings = rows.by(row -> row.ringSet, RingRow.class);
        pins = rows.by(row -> engineOf.get(row.design), PinRow.class);
        clips = rows.by(row -> engineOf.get(row.design), ClipRow.class);
        bearings = rows.by(row -> row.engine, BearingRow.class);
        gasketKits = rows.by(row -> row.engine, GasketKitRow.class);
        gaskets = rows.by(row -> row.engine, GasketRow.class);
    }

    Parts of(Engine engine, List<Size> sizes) {
        Map<String, PistonOfRows> shapes = in(designs, engine.code()).stream()
                .collect(toMap(
                        row -> row.design,
                        row -> new PistonOfRows(
                                row, in(grooves, row.design), engine.bore().nominal(), sizes)));
        return new Parts(
                in(designs, engine.code()).stream().map(PartsOfRows::design).toList(),
                in(pistons, engine.code()).stream()
                        .map(row -> requireNonNull(shapes.get(row.design)).piston(row))
                        .toList(),
                in(ringSets, engine.code()).stream()
                        .map(row -> requireNonNull(shapes.get(row.design)).ringSet(row, in(rings, row.ringSet)))
                        .toList(),
                in(pins, engine.code()).stream().map(PartsOfRows::pin).toList(),
                in(clips, engine.code()).stream().map(PartsOfRows::clip).toList(),
                in(bearings, engine.code()).stream().map(PartsOfRows::bearing).toList(),
                in(gasketKits, engine.code()).stream()
                        .map(PartsOfRows::gasketKit)
                        .toList(),
                loose(engine, GasketRow.Place.HEAD).map(PartsOfRows::headGasket).toList(),
                loose(engine, GasketRow.Place.BASE).map(PartsOfRows::baseGasket).toList());
    }

    private static <R> List<R> in(Map<String, List<R>> rows, String owner) {
        return rows.getOrDefault(owner, List.of());
    }

    private static PistonDesign design(PistonDesignRow row) {
        return new PistonDesign(
                row.design,
                row.maker,
                EngineOfRows.expansion(row.expansion, Optional.empty()),
                row.gaugeHeight,
                row.coating,
                Optional.ofNullable(row.clearanceWear));
    }

    private static Pin pin(PinRow row) {
        return new Pin(new PartNumber(row.pin), row.design, new PinShape(row.outside, row.length));
    }

    private static Clip clip(ClipRow row) {
        return new Clip(new PartNumber(row.clip), row.design, new ClipShape(row.wire));
    }

    private static Bearing bearing(BearingRow row) {
        return new Bearing(new PartNumber(row.bearing));
    }

    private static GasketKit gasketKit(GasketKitRow row) {
        GasketShape shape = new GasketShape(row.opening, row.head, row.base, margin(row.margin));
        return new GasketKit(new PartNumber(row.gasketKit), shape, row.servesCylinders);
    }

    private Stream<GasketRow> loose(Engine engine, GasketRow.Place place) {
        return in(gaskets, engine.code()).stream().filter(row -> row.place == place);
    }

    private static HeadGasket headGasket(GasketRow row) {
        return new HeadGasket(
                new PartNumber(row.gasket), row.opening, row.thickness, margin(row.margin), row.servesCylinders);
    }

    private static BaseGasket baseGasket(GasketRow row) {
        return new BaseGasket(new PartNumber(row.gasket), row.thickness, row.servesCylinders);
    }

    private static Length margin(@Nullable Length stated) {
        return stated == null ? CommonPractice.gasketMargin() : stated;
    }
}
