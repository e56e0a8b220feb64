package org.borewright.catalog.store;

import static java.util.stream.Collectors.collectingAndThen;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import io.quarkus.hibernate.orm.panache.Panache;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.borewright.catalog.store.row.BearingRow;
import org.borewright.catalog.store.row.BoxRow;
import org.borewright.catalog.store.row.CatalogRow;
import org.borewright.catalog.store.row.ClipRow;
import org.borewright.catalog.store.row.CylinderRow;
import org.borewright.catalog.store.row.EngineRow;
import org.borewright.catalog.store.row.FastenerRow;
import org.borewright.catalog.store.row.GasketKitRow;
import org.borewright.catalog.store.row.GasketRow;
import org.borewright.catalog.store.row.GaugeRow;
import org.borewright.catalog.store.row.GrooveRow;
import org.borewright.catalog.store.row.PinRow;
import org.borewright.catalog.store.row.PistonDesignRow;
import org.borewright.catalog.store.row.PistonRow;
import org.borewright.catalog.store.row.PriceRow;
import org.borewright.catalog.store.row.RingRow;
import org.borewright.catalog.store.row.RingSetRow;
import org.borewright.catalog.store.row.ShopOperationRow;
import org.borewright.catalog.store.row.SizeRow;
import org.borewright.catalog.store.row.StockRow;
import org.borewright.catalog.store.row.TorqueStageRow;
import org.borewright.catalog.store.row.WithdrawnRow;

/** All rows of one catalogue, each kind in the order of its file, whether just read from files or kept in tables. */
public final class CatalogRows {

    /** Every kind of row, what is referred to before what refers to it. */
    private static final List<Class<? extends CatalogRow>> KINDS = List.of(
            ShopOperationRow.class,
            GaugeRow.class,
            EngineRow.class,
            CylinderRow.class,
            SizeRow.class,
            PistonDesignRow.class,
            GrooveRow.class,
            PistonRow.class,
            RingSetRow.class,
            RingRow.class,
            PinRow.class,
            ClipRow.class,
            BearingRow.class,
            GasketKitRow.class,
            GasketRow.class,
            FastenerRow.class,
            TorqueStageRow.class,
            BoxRow.class,
            WithdrawnRow.class,
            PriceRow.class,
            StockRow.class);

    private final Map<Class<? extends CatalogRow>, List<? extends CatalogRow>> byKind;

    private CatalogRows(Map<Class<? extends CatalogRow>, List<? extends CatalogRow>> byKind) {
        this.byKind = byKind;
    }

    /** These rows, each list in the order of its file. */
    public static CatalogRows of(List<? extends CatalogRow> rows) {
        Map<Class<? extends CatalogRow>, List<? extends CatalogRow>> byKind =
                rows.stream().collect(groupingBy(CatalogRow::getClass, collectingAndThen(toList(), List::copyOf)));
        return new CatalogRows(byKind);
    }

    /** The rows that the tables hold. */
    static CatalogRows kept() {
        return kept(KINDS);
    }

    /** The rows of some kinds that the tables hold. */
    static CatalogRows kept(List<Class<? extends CatalogRow>> kinds) {
        EntityManager tables = Panache.getEntityManager();
        List<CatalogRow> rows = new ArrayList<>();
        kinds.forEach(kind ->
                rows.addAll(tables.createQuery("from %s order by line".formatted(kind.getSimpleName()), kind)
                        .getResultList()));
        return of(rows);
    }

    /** Puts these rows in place of those that the tables hold. */
    void keep() {
        EntityManager tables = Panache.getEntityManager();
        List<Class<? extends CatalogRow>> lastFirst = new ArrayList<>(KINDS);
        Collections.reverse(lastFirst);
        lastFirst.forEach(kind ->
                tables.createQuery("delete from " + kind.getSimpleName()).executeUpdate());
        for (Class<? extends CatalogRow> kind : KINDS) {
            CatalogRow.persist(of(kind));
            CatalogRow.flush();
        }
    }

    /** The rows of one kind, in the order of their file. */
    public <R extends CatalogRow> List<R> of(Class<R> kind) {
        return byKind.getOrDefault(kind, List.of()).stream().map(kind::cast).toList();
    }

    /** The rows of one kind, by what they belong to. */
    public <R extends CatalogRow> Map<String, List<R>> by(Function<R, String> owner, Class<R> kind) {
        return of(kind).stream().collect(groupingBy(owner, LinkedHashMap::new, toList()));
    }
}
