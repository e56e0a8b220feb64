package org.borewright.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.catalog.load.CatalogReadme;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The README of the catalogue tells the truth about the demo. */
class DemoReadmeTest {

    private static final Pattern BORE_AND_STROKE = Pattern.compile("([0-9.]+) × ([0-9.]+)");
    private static final Pattern SIZE = Pattern.compile("\\+[0-9.]+( in)?(?= to|,|;|$)");
    private static final Pattern CODE = Pattern.compile("[A-Z0-9]+(-[A-Z0-9]+)+");

    static List<List<String>> enginesOfReadme() {
        return CatalogReadme.table("## The engines of the demo");
    }

    @Test
    void theReadmeListsEveryEngine() {
        assertThat(enginesOfReadme())
                .extracting(row -> row.get(0))
                .containsExactlyInAnyOrderElementsOf(
                        Demo.CATALOGUE.engines().stream().map(Engine::code).toList());
    }

    @Test
    void theReadmeListsEveryGauge() {
        assertThat(CatalogReadme.table("## The gauges of the demo"))
                .extracting(row -> row.get(0))
                .containsExactlyElementsOf(Demo.CATALOGUE.gauges().keySet());
    }

    @ParameterizedTest
    @MethodSource("enginesOfReadme")
    void theReadmeDescribesTheEngineAsItIs(List<String> row) {
        Shelf shelf = Demo.shelf(row.get(0));
        Engine engine = shelf.engine();
        Matcher size = BORE_AND_STROKE.matcher(row.get(2));

        assertThat(row.get(1)).contains(engine.build().layout().label());
        assertThat(size.find()).isTrue();
        assertThat(Length.parseMillimetres(size.group(1)))
                .isEqualTo(engine.bore().nominal());
        assertThat(Length.parseMillimetres(size.group(2)))
                .isEqualTo(engine.deck().stroke());
        assertThat(row.get(3)).isEqualTo(engine.bore().labelNames().label());
        assertThat(row.get(4))
                .startsWith("standard")
                .satisfies(sizes -> assertThat(named(SIZE, sizes)).isSubsetOf(labels(shelf)))
                .satisfies(sizes -> assertThat(sizes.replaceFirst(" in grades A, B, C$", ""))
                        .endsWith(labels(shelf).get(shelf.sizes().size() - 1)));
        assertThat(named(CODE, row.get(5)))
                .isEqualTo(
                        shelf.parts().designs().stream().map(PistonDesign::code).toList());
    }

    @Test
    void whateverTheReadmeCallsAwkwardIsInTheCatalogue() {
        List<List<String>> awkward = CatalogReadme.table("## What is awkward on purpose");

        assertThat(awkward)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(Demo.CATALOGUE.shelf(row.get(0))).isPresent());
        assertThat(awkward.stream().flatMap(row -> Stream.of(row.get(1).split(", ", -1))))
                .filteredOn(number -> CODE.matcher(number).matches() && !number.startsWith("-"))
                .isNotEmpty()
                .allSatisfy(number -> assertThat(Demo.CATALOGUE.listing(new PartNumber(number)))
                        .isPresent());
    }

    private static List<String> labels(Shelf shelf) {
        return shelf.sizes().stream().map(Size::label).toList();
    }

    private static List<String> named(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(MatchResult::group).toList();
    }
}
