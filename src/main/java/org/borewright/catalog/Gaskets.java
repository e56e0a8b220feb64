package org.borewright.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.fit.shape.GasketShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * The gaskets of one rebuild: a kit, and loose ones in place of its own.
 *
 * @param kit the gasket kit
 * @param head the head gasket in place of the kit's own; empty where that goes on
 * @param base the base gasket in place of the kit's own; empty where that goes on, or there is none
 */
public record Gaskets(GasketKit kit, Optional<HeadGasket> head, Optional<BaseGasket> base) {

    /** A kit as it comes. */
    public static Gaskets of(GasketKit kit) {
        return new Gaskets(kit, Optional.empty(), Optional.empty());
    }

    /**
     * Every kit of an engine as it comes and with every loose gasket in place of its own, in the order of the files. Where a kit holds
     * no base gasket there is no joint for one. The catalogue keeps them few: it refuses more kits and loose gaskets of an engine than
     * can be looked through.
     */
    public static List<Gaskets> of(Parts parts) {
        List<Gaskets> all = new ArrayList<>();
        for (GasketKit kit : parts.gasketKits()) {
            List<BaseGasket> bases = kit.holdsBase() ? parts.baseGaskets() : List.of();
            for (Optional<HeadGasket> head : orOwn(parts.headGaskets())) {
                orOwn(bases).forEach(base -> all.add(new Gaskets(kit, head, base)));
            }
        }
        return all;
    }

    private static <T> List<Optional<T>> orOwn(List<T> loose) {
        List<Optional<T>> all = new ArrayList<>(List.of(Optional.empty()));
        loose.forEach(gasket -> all.add(Optional.of(gasket)));
        return all;
    }

    /** Their dimensions together. */
    public GasketShape shape() {
        GasketShape own = kit.shape();
        Limits thickness = base.map(BaseGasket::thickness).orElse(own.baseThickness());
        return head.map(loose -> new GasketShape(loose.opening(), loose.thickness(), thickness, loose.margin()))
                .orElse(new GasketShape(own.opening(), own.headThickness(), thickness, own.margin()));
    }

    /** How many of them are loose. */
    public int loose() {
        return (head.isPresent() ? 1 : 0) + (base.isPresent() ? 1 : 0);
    }

    /** Whether they are another set of the same kit, and more of its own is replaced: all that the other needs, and more. */
    public boolean needMoreThan(Gaskets other) {
        return kit.equals(other.kit)
                && loose() > other.loose()
                && (other.head.isEmpty() || other.head.equals(head))
                && (other.base.isEmpty() || other.base.equals(base));
    }

    /** Every part of them: the kit, then what is loose. */
    public Stream<Part> parts() {
        return Stream.of(Optional.of(kit), head, base).flatMap(Optional::stream);
    }

    /** By how much the base gasket is thicker than another, both taken at the middle of their limits, to the nearest nanometre. */
    public Length baseThickerThan(GasketKit other) {
        Limits mine = shape().baseThickness();
        Limits theirs = other.shape().baseThickness();
        return mine.least()
                .plus(mine.greatest())
                .minus(theirs.least())
                .minus(theirs.greatest())
                .halfRoundedUp();
    }

    /** In words, such as {@code TKP2-GK with TKP2-H12}. */
    public String words() {
        return parts().map(part -> part.number().text()).collect(Collectors.joining(" with "));
    }
}
