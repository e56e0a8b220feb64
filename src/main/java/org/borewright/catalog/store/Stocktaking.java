package org.borewright.catalog.store;

import static java.util.stream.Collectors.toMap;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Revision;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.catalog.Withdrawal;
import org.borewright.catalog.store.row.CylinderRow;
import org.borewright.catalog.store.row.EngineRow;
import org.borewright.catalog.store.row.SizeRow;

/**
 * Makes the catalogue of its rows. It is the only way from one to the other, so that what the loader judges is what a match will
 * see: a row just read from a file becomes the same shelf as one that lay in a table.
 */
public final class Stocktaking {

    private final Revision revision;
    private final Map<String, List<CylinderRow>> cylinders;
    private final Map<String, List<SizeRow>> sizes;
    private final PartsOfRows parts;
    private final WorkOfRows work;
    private final List<Box> boxes;
    private final Map<PartNumber, Withdrawal> withdrawals;

    private Stocktaking(CatalogRows rows, Revision revision) {
        this.revision = revision;
        cylinders = rows.by(row -> row.engine, CylinderRow.class);
        sizes = rows.by(row -> row.engine, SizeRow.class);
        parts = new PartsOfRows(rows);
        work = new WorkOfRows(rows);
        boxes = SalesOfRows.boxes(rows);
        withdrawals = SalesOfRows.withdrawals(rows);
    }

    /** The catalogue of rows that hold together: every reference leads somewhere, every engine has a cylinder. */
    public static Catalogue of(CatalogRows rows, Revision revision, Instant loadedAt) {
        Stocktaking taking = new Stocktaking(rows, revision);
        List<Shelf> shelves =
                rows.of(EngineRow.class).stream().map(taking::shelf).toList();
        return Catalogue.of(revision, loadedAt, shelves, taking.withdrawals, SalesOfRows.offers(rows))
                .registering(GaugeOfRows.register(rows));
    }

    private Shelf shelf(EngineRow row) {
        Engine engine = EngineOfRows.of(row, cylinders.getOrDefault(row.engine, List.of()));
        List<Size> made = sizes.getOrDefault(row.engine, List.of()).stream()
                .map(size -> new Size(size.size, size.oversize, size.furtherWork))
                .toList();
        Parts parts = this.parts.of(engine, made);
        List<Fastener> fasteners = work.fasteners(row.engine);
        Set<PartNumber> numbers = numbers(parts, fasteners);
        List<Box> holding = boxes.stream().filter(box -> holdsAny(box, numbers)).toList();
        holding.forEach(box -> numbers.add(box.number()));
        return new Shelf(revision, engine, made, parts, fasteners, work.operations(), holding, withdrawalsOf(numbers));
    }

    private static boolean holdsAny(Box box, Set<PartNumber> numbers) {
        return box.contents().keySet().stream().anyMatch(numbers::contains);
    }

    private Map<PartNumber, Withdrawal> withdrawalsOf(Set<PartNumber> numbers) {
        return withdrawals.values().stream()
                .filter(withdrawal -> numbers.contains(withdrawal.number()))
                .collect(toMap(Withdrawal::number, withdrawal -> withdrawal));
    }

    private static Set<PartNumber> numbers(Parts parts, List<Fastener> fasteners) {
        Set<PartNumber> numbers = new HashSet<>();
        Stream.of(
                        parts.pistons(),
                        parts.ringSets(),
                        parts.pins(),
                        parts.clips(),
                        parts.bearings(),
                        parts.gasketKits(),
                        parts.headGaskets(),
                        parts.baseGaskets())
                .flatMap(List::stream)
                .map(Part::number)
                .forEach(numbers::add);
        fasteners.forEach(fastener -> fastener.singleUse().ifPresent(bolt -> numbers.add(bolt.number())));
        return numbers;
    }
}
