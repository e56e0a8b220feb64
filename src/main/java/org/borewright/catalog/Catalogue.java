package org.borewright.catalog;

import java.time.Instant;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.borewright.measure.Gauge;

/**
 * The whole catalogue at one revision: immutable, shared by all who ask, swapped as one.
 *
 * @param revision of the files it was loaded from
 * @param loadedAt when that was
 * @param shelves of every engine, by its code
 * @param listings of every number, by the number
 * @param offers prices and stock
 * @param gauges the shop's register of gauges, by name
 */
public record Catalogue(
        Revision revision,
        Instant loadedAt,
        SortedMap<String, Shelf> shelves,
        SortedMap<PartNumber, Listing> listings,
        Offers offers,
        SortedMap<String, Gauge> gauges) {

    /** Copies the maps. */
    public Catalogue {
        shelves = Collections.unmodifiableSortedMap(new TreeMap<>(shelves));
        listings = Collections.unmodifiableSortedMap(new TreeMap<>(listings));
        gauges = Collections.unmodifiableSortedMap(new TreeMap<>(gauges));
    }

    /** The catalogue of these shelves, with the numbers that are withdrawn, on a shelf or not; no gauge is registered yet. */
    public static Catalogue of(
            Revision revision,
            Instant loadedAt,
            Collection<Shelf> shelves,
            Map<PartNumber, Withdrawal> withdrawals,
            Offers offers) {
        SortedMap<String, Shelf> byEngine = new TreeMap<>();
        shelves.forEach(shelf -> byEngine.put(shelf.engine().code(), shelf));
        return new Catalogue(
                revision, loadedAt, byEngine, Listings.of(byEngine.values(), withdrawals), offers, new TreeMap<>());
    }

    /** The same catalogue with this register; a gauge without a name is in none. */
    public Catalogue registering(Collection<Gauge> register) {
        SortedMap<String, Gauge> byName = new TreeMap<>();
        register.forEach(gauge -> gauge.name().ifPresent(name -> byName.put(name, gauge)));
        return new Catalogue(revision, loadedAt, shelves, listings, offers, byName);
    }

    /** The same catalogue with other prices and stock; what fits stays as it is. */
    public Catalogue offering(Offers other, String named) {
        return new Catalogue(new Revision(revision.fit(), named), loadedAt, shelves, listings, other, gauges);
    }

    /** The shelf of an engine; empty when no engine has this code. */
    public Optional<Shelf> shelf(String engineCode) {
        return Optional.ofNullable(shelves.get(engineCode));
    }

    /** All engines, sorted by code. */
    public List<Engine> engines() {
        return shelves.values().stream().map(Shelf::engine).toList();
    }

    /** The gauge of a name; empty when the register has none such. */
    public Optional<Gauge> gauge(String name) {
        return Optional.ofNullable(gauges.get(name));
    }

    /** What is known of a number; empty when nothing bears it. */
    public Optional<Listing> listing(PartNumber number) {
        return Optional.ofNullable(listings.get(number));
    }
}
