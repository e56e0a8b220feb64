package org.borewright.catalog;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.borewright.measure.Length;
import org.jspecify.annotations.Nullable;

/**
 * Everything of one engine at one catalogue revision that says what fits: immutable, shared by all who ask.
 *
 * @param revision of the catalogue
 * @param engine the engine
 * @param sizes rising, standard first
 * @param parts made for it
 * @param fasteners in the order they are tightened
 * @param operations of the shop, in the order they are done
 * @param boxes that hold any of the parts, a loose part apart
 * @param withdrawals of numbers among parts and boxes
 */
public record Shelf(
        Revision revision,
        Engine engine,
        List<Size> sizes,
        Parts parts,
        List<Fastener> fasteners,
        List<ShopOperation> operations,
        List<Box> boxes,
        Map<PartNumber, Withdrawal> withdrawals) {

    /** Copies the lists and the map; sizes and withdrawals are sorted. */
    public Shelf {
        sizes = sizes.stream().sorted().toList();
        fasteners = List.copyOf(fasteners);
        operations = List.copyOf(operations);
        boxes = List.copyOf(boxes);
        withdrawals = Collections.unmodifiableMap(new LinkedHashMap<>(new TreeMap<>(withdrawals)));
    }

    /**
     * By how much the ports of a two-stroke stand higher over the crankshaft with a set of gaskets than as the engine was made, which is with
     * its first kit; negative where they stand lower, empty where they stay or there are none.
     */
    public Optional<Length> portsHigher(Gaskets gaskets) {
        return parts.gasketKits().stream()
                .findFirst()
                .filter(asMade -> engine.build().strokes() == Strokes.TWO)
                .map(gaskets::baseThickerThan)
                .filter(higher -> !higher.equals(Length.ZERO));
    }

    /** Whether a piston of a size was ever made, though none be left: no crown bears the stamp of another. */
    public boolean wasMade(Size size) {
        return madeIn(size).findAny().isPresent();
    }

    /** The pistons of a size that were ever made, supplied or not. */
    public Stream<Piston> madeIn(Size size) {
        return parts.pistons().stream()
                .filter(piston -> piston.size().equals(size.label()))
                .filter(piston -> Optional.ofNullable(withdrawals.get(piston.number()))
                        .filter(known -> known.state() == Withdrawal.State.NEVER_MADE)
                        .isEmpty());
    }

    /**
     * The same for somebody who has these numbers already: what became of them since does not take them away from him. What took the place of
     * one is not what he has, unless he has that too.
     */
    public Shelf having(Set<PartNumber> numbers) {
        Map<PartNumber, Withdrawal> theirs = new TreeMap<>(withdrawals);
        theirs.keySet().removeAll(numbers);
        for (PartNumber number : numbers) {
            successors(number)
                    .filter(successor -> !numbers.contains(successor))
                    .forEach(successor -> theirs.put(
                            successor,
                            new Withdrawal(
                                    successor,
                                    Withdrawal.State.REPLACED,
                                    Optional.of(number),
                                    number.text() + " is there in its place")));
        }
        return new Shelf(revision, engine, sizes, parts, fasteners, operations, boxes, theirs);
    }

    /** What took the place of a number, one after the other; a ring of them, which no catalogue has, is gone round once. */
    private Stream<PartNumber> successors(PartNumber number) {
        return Stream.iterate(number, Objects::nonNull, this::successor).skip(1).limit(withdrawals.size());
    }

    private @Nullable PartNumber successor(PartNumber number) {
        return Optional.ofNullable(withdrawals.get(number))
                .flatMap(Withdrawal::replacedBy)
                .orElse(null);
    }

    /** The size of a label; empty when the engine has none such. */
    public Optional<Size> size(String label) {
        return sizes.stream().filter(size -> size.label().equals(label)).findFirst();
    }
}
