package org.borewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;

/** The house is laid out as {@link Layout} says, and each of its rules is seen to refuse what it is there to refuse. */
class LayoutTest {

    private static final Path HOUSE = Path.of("target", "classes");

    private static final List<Offence> OFFENCES = List.of(
            offence(Layout.ROOMS_LEAN_ONE_WAY, "measure", "LooksUp", "class LooksUp { org.borewright.kit.Match up; }"),
            offence(
                    Layout.ROOMS_LEAN_ONE_WAY,
                    "fit",
                    "KnowsNumbers",
                    "class KnowsNumbers { org.borewright.catalog.PartNumber number; }"),
            offence(
                    Layout.ROOMS_LEAN_ONE_WAY,
                    "catalog.load",
                    "Answers",
                    "class Answers { Object a = org.borewright.api.problem.ProblemType.values(); }"),
            offence(
                    Layout.ROOMS_LEAN_ONE_WAY,
                    "kit.bill",
                    "Shows",
                    "class Shows extends RuntimeException { Shows(org.borewright.api.shown.ShownMoney money) {} }"),
            offence(
                    Layout.ROOMS_LEAN_ONE_WAY,
                    "attic",
                    "NotOnTheList",
                    "class NotOnTheList { org.borewright.measure.Length length; }"),
            offence(
                    Layout.THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA,
                    "fit",
                    "Enrolled",
                    "@jakarta.enterprise.context.ApplicationScoped class Enrolled {}"),
            offence(
                    Layout.THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA,
                    "catalog",
                    "ShownAsJson",
                    "record ShownAsJson(@com.fasterxml.jackson.annotation.JsonProperty(\"s\") String size) {}"),
            offence(
                    Layout.THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA,
                    "kit.choice",
                    "OpensTheStore",
                    "class OpensTheStore { org.borewright.catalog.store.Shelves shelves; }"),
            offence(
                    Layout.THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA,
                    "measure.survey",
                    "ReadsAFile",
                    "class ReadsAFile { boolean is(String name) { return new java.io.File(name).exists(); } }"),
            offence(
                    Layout.NO_SUB_ROOMS_STAND_IN_A_RING,
                    "kit.request",
                    "KnowsTheAnswer",
                    "class KnowsTheAnswer { org.borewright.kit.Match answer; }"),
            offence(
                    Layout.NO_SUB_ROOMS_STAND_IN_A_RING,
                    "measure",
                    "KnowsTheSurvey",
                    "class KnowsTheSurvey { org.borewright.measure.survey.Grid grid; }"),
            offence(
                    Layout.ROWS_STAND_IN_A_STORE,
                    "catalog.load",
                    "StrayRow",
                    "@jakarta.persistence.Entity class StrayRow { @jakarta.persistence.Id long id; }"),
            offence(
                    Layout.ROWS_STAND_IN_A_STORE,
                    "api.match",
                    "StrayColumns",
                    "@jakarta.persistence.Embeddable record StrayColumns(int a, int b) {}"),
            offence(
                    Layout.ROWS_STAND_IN_A_STORE,
                    "kit",
                    "StrayHead",
                    "@jakarta.persistence.MappedSuperclass class StrayHead {}"),
            offence(
                    Layout.ROWS_ARE_SEEN_BY_STORE_AND_LOAD_ALONE,
                    "api.shown",
                    "ShowsARow",
                    "class ShowsARow { org.borewright.catalog.store.row.PinRow row; }"),
            offence(
                    Layout.NOBODY_LEANS_ON_THE_LOADING,
                    "catalog.store",
                    "Loads",
                    "class Loads { org.borewright.catalog.load.FirstLoad first; }"),
            offence(
                    Layout.THE_API_ALONE_SPEAKS_HTTP_AND_JSON,
                    "catalog.store",
                    "AnswersByItself",
                    "@jakarta.ws.rs.Path(\"/shelf\") class AnswersByItself {}"),
            offence(
                    Layout.THE_API_ALONE_SPEAKS_HTTP_AND_JSON,
                    "catalog.load",
                    "WritesJson",
                    "class WritesJson { com.fasterxml.jackson.databind.ObjectMapper json; }"),
            offence(
                    Layout.THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "KnowsTheDay",
                    "class KnowsTheDay { java.time.LocalDate day() { return java.time.LocalDate.now(); } }"),
            offence(
                    Layout.THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit.hole",
                    "KnowsTheHour",
                    "class KnowsTheHour { java.util.function.Supplier<?> hour = java.time.Instant::now; }"),
            offence(
                    Layout.THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "catalog",
                    "CarriesAClock",
                    "class CarriesAClock { long at(java.time.Clock clock) { return clock.millis(); } }"),
            offence(
                    Layout.THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "measure",
                    "StopsTheTime",
                    "class StopsTheTime { long at() { return System.nanoTime(); } }"),
            offence(
                    Layout.THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "fit",
                    "ThrowsDice",
                    "class ThrowsDice { int dice() { return new java.util.Random().nextInt(); } }"),
            offence(Layout.WHAT_THE_HEART_HOLDS_IS_FINAL, "kit", "Changes", "class Changes { int size; }"),
            offence(Layout.TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "kit", "MatchImpl", "class MatchImpl {}"),
            offence(Layout.TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "api", "StringUtils", "class StringUtils {}"),
            offence(Layout.TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "fit", "GapHelper", "class GapHelper {}"),
            offence(Layout.TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "catalog.store", "RowManager", "class RowManager {}"),
            offence(Layout.TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "api.match", "MatchDTO", "class MatchDTO {}"),
            offence(Layout.TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "catalog.store", "PinMapper", "class PinMapper {}"),
            offence(Layout.TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "kit", "MatchService", "class MatchService {}"),
            offence(Layout.PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "measure.util", "Lengths", "class Lengths {}"),
            offence(Layout.PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "kit.helper", "Lists", "class Lists {}"),
            offence(Layout.PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "common", "Things", "class Things {}"),
            offence(Layout.PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "fit.impl", "Gap", "class Gap {}"),
            offence(Layout.PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "api.dto", "Copy", "class Copy {}"),
            offence(Layout.PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "catalog.store.mapper", "Twin", "class Twin {}"),
            offence(Layout.PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "service", "Any", "class Any {}"));

    private static JavaClasses house;
    private static JavaClasses withOffenders;

    private record Offence(Layout rule, Planted offender) {}

    private static Offence offence(Layout rule, String room, String name, String source) {
        return new Offence(rule, new Planted("org.borewright." + room, name, source));
    }

    @BeforeAll
    static void readTheHouse(@TempDir Path planted) throws IOException {
        Planted.compile(OFFENCES.stream().map(Offence::offender).toList(), planted);
        house = new ClassFileImporter().importPath(HOUSE);
        withOffenders = new ClassFileImporter().importPaths(HOUSE, planted);
    }

    @ParameterizedTest
    @EnumSource
    void theHouseKeepsTheRule(Layout layout) {
        layout.rule().check(house);
    }

    @ParameterizedTest
    @FieldSource("OFFENCES")
    void theRuleFindsTheOffender(Offence offence) {
        String found =
                offence.rule().rule().evaluate(withOffenders).getFailureReport().toString();
        assertThat(found).contains(offence.offender().type());
    }

    @Test
    void everyRuleHasAnOffender() {
        assertThat(OFFENCES).extracting(Offence::rule).contains(Layout.values());
    }
}
