package org.borewright.catalog.load.table;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import org.borewright.catalog.Money;
import org.borewright.catalog.load.sheet.CellType;
import org.borewright.catalog.load.sheet.CellTypes;
import org.borewright.catalog.load.sheet.Cells;
import org.borewright.fit.shape.MassRange;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * One column of a file, or two that are one value together.
 *
 * @param names as they stand in the first line
 * @param reading from the cells of a line into its row
 * @param <R> the row
 */
record Column<R>(List<String> names, BiConsumer<Cells, R> reading) {

    static <R, T> Column<R> needed(String name, CellType<T> type, BiConsumer<R, T> into) {
        return new Column<>(
                List.of(name), (cells, row) -> cells.needed(name, type).ifPresent(value -> into.accept(row, value)));
    }

    static <R, T> Column<R> maybe(String name, CellType<T> type, BiConsumer<R, T> into) {
        return new Column<>(
                List.of(name), (cells, row) -> cells.maybe(name, type).ifPresent(value -> into.accept(row, value)));
    }

    /** Least and greatest of a length. */
    static <R> Column<R> limits(String name, CellType<Length> type, BiConsumer<R, Limits> into) {
        return new Both<>(name + "_least_mm", name + "_greatest_mm", type, type).needed(Limits::new, into);
    }

    /** Least and greatest of a length; both may be empty. */
    static <R> Column<R> maybeLimits(String name, CellType<Length> type, BiConsumer<R, Limits> into) {
        return new Both<>(name + "_least_mm", name + "_greatest_mm", type, type).maybe(Limits::new, into);
    }

    static <R> Column<R> mass(BiConsumer<R, MassRange> into) {
        CellType<Long> grams = CellTypes.counts(3, "1", "100000");
        return new Both<>("mass_least_g", "mass_greatest_g", grams, grams).needed(MassRange::new, into);
    }

    static <R> Column<R> price(BiConsumer<R, Money> into) {
        CellType<BigDecimal> amount = CellTypes.decimals(3, "0", "1000000");
        return new Both<>("price", "currency", amount, CellTypes.CURRENCY).needed(Money::new, into);
    }

    /** Two columns that are one value together; what does not go together is told beside the first. */
    private record Both<A, B>(String first, String second, CellType<A> firstType, CellType<B> secondType) {

        <R, T> Column<R> needed(BiFunction<A, B, T> together, BiConsumer<R, T> into) {
            return new Column<>(
                    List.of(first, second),
                    (cells, row) -> join(
                                    cells, cells.needed(first, firstType), cells.needed(second, secondType), together)
                            .ifPresent(value -> into.accept(row, value)));
        }

        <R, T> Column<R> maybe(BiFunction<A, B, T> together, BiConsumer<R, T> into) {
            return new Column<>(
                    List.of(first, second),
                    (cells, row) -> join(
                                    cells, cells.maybe(first, firstType), cells.maybe(second, secondType), together)
                            .ifPresent(value -> into.accept(row, value)));
        }

        private <T> Optional<T> join(Cells cells, Optional<A> a, Optional<B> b, BiFunction<A, B, T> together) {
            try {
                return a.flatMap(left -> b.map(right -> together.apply(left, right)));
            } catch (IllegalArgumentException apart) {
                cells.bad(first, String.valueOf(apart.getMessage()));
                return Optional.empty();
            }
        }
    }
}
