package org.borewright.catalog.store;

import io.quarkus.hibernate.orm.panache.Panache;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Revision;
import org.borewright.catalog.store.row.LoadingRow;
import org.borewright.catalog.store.row.PriceRow;
import org.borewright.catalog.store.row.RevisionRow;
import org.borewright.catalog.store.row.StockRow;
import org.jspecify.annotations.Nullable;

/**
 * The catalogue in force, kept in memory and swapped as one after a load. Reading never touches the database, so it may be done on
 * the event loop.
 */
@ApplicationScoped
public class Shelves {

    private volatile @Nullable Catalogue inForce;

    /**
     * The catalogue in force; whoever asks more than one question of it asks them of this one value.
     *
     * @throws IllegalStateException before the first load
     */
    public Catalogue catalogue() {
        Catalogue now = inForce;
        if (now == null) {
            throw new IllegalStateException("no catalogue is loaded yet");
        }
        return now;
    }

    /** Whether a catalogue is loaded yet. */
    public boolean isFilled() {
        return inForce != null;
    }

    /** Keeps other machines from filling the database until this transaction ends, and waits for one that does. */
    @Transactional(Transactional.TxType.MANDATORY)
    public void keepOthersFromLoading() {
        LoadingRow.hold();
    }

    /** Takes what the tables hold into memory. @return whether they hold a catalogue */
    @Transactional
    public boolean reload() {
        Optional<RevisionRow> latest = RevisionRow.latest();
        latest.ifPresent(
                row -> inForce = Stocktaking.of(CatalogRows.kept(), new Revision(row.fit, row.offers), row.loadedAt));
        return latest.isPresent();
    }

    /**
     * Takes prices and stock into memory anew, without what fits.
     *
     * @param stockPosition counts the changes of the stock since the load; the offers are named by it, for no two states of them bear one name
     */
    @Transactional
    public void restock(long stockPosition) {
        RevisionRow latest = RevisionRow.latest().orElseThrow();
        String named = stockPosition == 0 ? latest.offers : latest.offers + "." + stockPosition;
        inForce = catalogue()
                .offering(SalesOfRows.offers(CatalogRows.kept(List.of(PriceRow.class, StockRow.class))), named);
    }

    /** Puts a whole catalogue in place of what the tables hold, in one transaction; who reads it next reads the tables. */
    @Transactional
    public void replace(CatalogRows rows, Revision revision, Instant loadedAt) {
        rows.keep();
        RevisionRow row = new RevisionRow();
        row.fit = revision.fit();
        row.offers = revision.offers();
        row.loadedAt = loadedAt;
        row.persistAndFlush();
        Panache.getEntityManager().clear();
    }
}
