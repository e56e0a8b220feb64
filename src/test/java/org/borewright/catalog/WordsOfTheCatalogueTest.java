package org.borewright.catalog;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The words a catalogue file is written in, as its README lists them, and what is counted from them. */
class WordsOfTheCatalogueTest {

    @ParameterizedTest(name = "{2}")
    @MethodSource
    <T> void aWordIsWrittenAsInTheTrade(List<T> values, Function<T, String> label, String inOrder) {
        assertThat(values.stream().map(label).collect(joining(", "))).isEqualTo(inOrder);
    }

    static Stream<Arguments> aWordIsWrittenAsInTheTrade() {
        return Stream.of(
                words(
                        Construction.values(),
                        Construction::label,
                        "block, dry sleeve, wet liner, iron barrel, sleeved aluminium barrel, plated, bare aluminium-silicon"),
                words(
                        Construction.values(),
                        Construction::renewal,
                        "a sleeve fitted in the hole, another sleeve, another liner, another barrel, or a sleeve fitted in this one, "
                                + "another sleeve, another barrel, or a new plating, another block, or an iron sleeve"),
                words(Hand.values(), Hand::label, "any, left, right, front, rear"),
                words(
                        Layout.values(),
                        Layout::label,
                        "single, parallel twin, V-twin, flat twin, inline three, inline four, inline six"),
                words(BoreSpec.LabelNames.values(), BoreSpec.LabelNames::label, "piston, bore"),
                words(Box.Kind.values(), Box.Kind::label, "engine box, cylinder box, pack, loose"),
                words(PistonDesign.Coating.values(), PistonDesign.Coating::label, "none, over, beside"),
                words(ShopOperation.When.values(), ShopOperation.When::label, "always, plate, bore, hone, ports, skim"),
                words(ShopOperation.Per.values(), ShopOperation.Per::label, "hole, engine"),
                words(Withdrawal.State.values(), Withdrawal.State::label, "replaced, discontinued, never made"),
                words(
                        Part.Kind.values(),
                        Part.Kind::label,
                        "piston, ring set, wrist pin, clip, small-end bearing, gasket kit, head gasket, base gasket, single-use bolt"));
    }

    private static <T> Arguments words(T[] values, Function<T, String> label, String inOrder) {
        return Arguments.of(List.of(values), label, inOrder);
    }

    @ParameterizedTest
    @CsvSource({
        "SINGLE, 1",
        "PARALLEL_TWIN, 2",
        "V_TWIN, 2",
        "FLAT_TWIN, 2",
        "INLINE_THREE, 3",
        "INLINE_FOUR, 4",
        "INLINE_SIX, 6"
    })
    void aLayoutCountsItsCylinders(Layout layout, int cylinders) {
        assertThat(layout.cylinders()).isEqualTo(cylinders);
    }

    @ParameterizedTest
    @CsvSource({"TWO, 2", "FOUR, 4"})
    void strokesAreCounted(Strokes strokes, int count) {
        assertThat(strokes.count()).isEqualTo(count);
    }

    @ParameterizedTest
    @CsvSource({"ENGINE_BOX, 0", "CYLINDER_BOX, 1", "PACK, 2", "LOOSE, 3"})
    void theBoxThatHoldsMostIsTakenFirst(Box.Kind kind, int order) {
        assertThat(kind.order()).isEqualTo(order);
    }

    @ParameterizedTest
    @CsvSource({
        "BLOCK, true",
        "DRY_SLEEVE, true",
        "WET_LINER, true",
        "IRON_BARREL, true",
        "SLEEVED_ALUMINIUM_BARREL, true",
        "PLATED, false",
        "BARE_ALUMINIUM_SILICON, false"
    })
    void whatIsPlatedOrBareIsNeverBored(Construction construction, boolean mayBeBored) {
        assertThat(construction.mayBeBored()).isEqualTo(mayBeBored);
    }

    @ParameterizedTest
    @CsvSource({
        "ANY, LEFT, true",
        "ANY, ANY, true",
        "LEFT, LEFT, true",
        "LEFT, RIGHT, false",
        "LEFT, ANY, false",
        "FRONT, REAR, false",
        "REAR, REAR, true"
    })
    void aPistonOfAHandGoesIntoAHoleOfThatHandOnly(Hand piston, Hand hole, boolean goes) {
        assertThat(piston.goesInto(hole)).isEqualTo(goes);
    }
}
