package org.borewright.kit.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.Match;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.kit.table.Settling;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Temperature;

/**
 * The ways to restore a worn engine, rising by the metal they take: rings only, the present size, each size that is not excluded up to the first
 * that serves, a larger one that is asked for, a sleeve. An old hole cannot be bought again, so the lowest rung that holds is the one to
 * stand on; which, the shop decides.
 */
public final class Ladder {

    private static final int SIZES_SHOWN_OF_UNCERTAIN = 2;

    private final BoreSpec bore;
    private final Temperature temperature;
    private final Optional<Size> asked;
    private final Match match;

    private Ladder(BoreSpec bore, MatchRequest request, Match match) {
        this.bore = bore;
        this.temperature = request.climate().temperature();
        this.asked = request.asked();
        this.match = match;
    }

    /** The rungs of the answer to a request; none for finished holes. */
    public static List<Rung> of(Engine engine, MatchRequest request, Match match) {
        return match.ringsOnly()
                .map(rings -> new Ladder(engine.bore(), request, match).rungs(rings))
                .orElse(List.of());
    }

    private List<Rung> rungs(RingsOnly rings) {
        List<Rung> rungs = new ArrayList<>();
        List<String> open = new ArrayList<>(rings.open());
        open.addAll(rings.lacking());
        rungs.add(new Rung(Way.RINGS_ONLY, Optional.empty(), rings.certainty(), open, List.of()));
        atPresentSize().ifPresent(rungs::add);
        rungs.addAll(reboring());
        asked.filter(size -> rungs.stream().noneMatch(rung -> leadsTo(rung, size)))
                .map(this::best)
                .filter(row -> row.certainty() != Certainty.NO && row.choice().isPresent())
                .ifPresent(row -> rungs.add(rung(way(row), row)));
        rungs.add(new Rung(
                Way.SLEEVE,
                Optional.empty(),
                Certainty.POSSIBLE,
                List.of("ask a specialist: no sleeve stands in the catalogue"),
                List.of()));
        return rungs;
    }

    /** Empty where nobody knows the present size of a wall that may be bored. */
    private Optional<Rung> atPresentSize() {
        return match.table().stream()
                .filter(row -> !row.holes().isEmpty() && !isBored(row))
                .min(Comparator.comparing(SizeRow::certainty).thenComparing(SizeRow::size))
                .map(row -> rung(way(row), best(row.size())));
    }

    private static Way way(SizeRow row) {
        if (isBored(row)) {
            return Way.REBORE;
        }
        return row.isAsItIs() ? Way.NEW_PISTONS : Way.HONE_ONLY;
    }

    private static boolean leadsTo(Rung rung, Size size) {
        return rung.row().filter(row -> row.size().equals(size)).isPresent();
    }

    /** Up to the first that serves; where none does, up to the second that might. What stands against a size is no reason to leave it out. */
    private List<Rung> reboring() {
        List<Rung> rungs = new ArrayList<>();
        boolean served = match.table().stream().anyMatch(row -> isBored(row) && row.serves());
        int mightServe = 0;
        for (Size size : sizesToBore()) {
            SizeRow row = best(size);
            rungs.add(rung(Way.REBORE, row));
            mightServe += row.mightServe() ? 1 : 0;
            if (served ? row.serves() : mightServe == SIZES_SHOWN_OF_UNCERTAIN) {
                return rungs;
            }
        }
        return rungs;
    }

    private List<Size> sizesToBore() {
        return match.table().stream()
                .filter(row -> isBored(row) && row.certainty() != Certainty.NO)
                .map(SizeRow::size)
                .distinct()
                .toList();
    }

    private static boolean isBored(SizeRow row) {
        return row.holes().stream().anyMatch(hole -> hole.work() == Work.REBORE);
    }

    /** The best row of a size: the one with the best kit that serves, else the one with least against it. */
    private SizeRow best(Size size) {
        return SizeRow.bestAt(size, match.table())
                .orElseGet(() -> match.table().stream()
                        .filter(row -> row.size().equals(size))
                        .min(Comparator.comparing((SizeRow row) -> !row.isOpen())
                                .thenComparing(SizeRow::certainty))
                        .orElseThrow());
    }

    private Rung rung(Way way, SizeRow row) {
        List<String> open = new ArrayList<>(
                row.blocks().stream().map(block -> block.reason().sentence()).toList());
        List<Settling.Reading> readings = row.certainty() == Certainty.POSSIBLE
                ? Settling.at(bore, temperature, match.surveyed(), row)
                        .map(Settling::readings)
                        .orElse(List.of())
                : List.of();
        if (row.certainty() == Certainty.POSSIBLE && readings.isEmpty()) {
            open.add("no reading of the holes can prove it");
        }
        return new Rung(way, Optional.of(row), row.certainty(), open, readings);
    }
}
