package org.borewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.architecture.Layout.NOBODY_LEANS_ON_THE_LOADING;
import static org.borewright.architecture.Layout.NO_ORDER_IS_LEFT_TO_CHANCE;
import static org.borewright.architecture.Layout.NO_SUB_ROOMS_STAND_IN_A_RING;
import static org.borewright.architecture.Layout.PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM;
import static org.borewright.architecture.Layout.PHYSICAL_SENSE_SEES_SHELVES_ALONE;
import static org.borewright.architecture.Layout.ROOMS_LEAN_ONE_WAY;
import static org.borewright.architecture.Layout.ROWS_ARE_SEEN_BY_STORE_AND_LOAD_ALONE;
import static org.borewright.architecture.Layout.ROWS_STAND_IN_A_STORE;
import static org.borewright.architecture.Layout.THE_API_AND_THE_PAGES_ALONE_SPEAK_HTTP_AND_JSON;
import static org.borewright.architecture.Layout.THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE;
import static org.borewright.architecture.Layout.THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA;
import static org.borewright.architecture.Layout.THE_LOADING_LEANS_ONE_WAY;
import static org.borewright.architecture.Layout.THE_PAIRING_ALONE_KNOWS_GRAPHS;
import static org.borewright.architecture.Layout.TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE;
import static org.borewright.architecture.Layout.WHAT_THE_HEART_HOLDS_IS_FINAL;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The house is laid out as {@link Layout} says, and each of its rules is seen to refuse what it is there to refuse. */
class LayoutTest {

    private static final Path HOUSE = Path.of("target", "classes");
    private static final JavaClasses HOUSE_AS_BUILT = new ClassFileImporter().importPath(HOUSE);

    private static final List<Offence> OFFENCES = List.of(
            offence(ROOMS_LEAN_ONE_WAY, "measure", "class LooksUp { org.borewright.kit.Match up; }"),
            offence(ROOMS_LEAN_ONE_WAY, "fit", "class KnowsNumbers { org.borewright.catalog.PartNumber number; }"),
            offence(
                    ROOMS_LEAN_ONE_WAY,
                    "catalog.load",
                    "class Answers { Object a = org.borewright.api.problem.ProblemType.values(); }"),
            offence(
                    ROOMS_LEAN_ONE_WAY,
                    "kit.bill",
                    "class Shows extends RuntimeException { Shows(org.borewright.api.shown.ShownMoney money) {} }"),
            offence(ROOMS_LEAN_ONE_WAY, "api.shown", "class ShowsAPage { org.borewright.page.Form form; }"),
            offence(ROOMS_LEAN_ONE_WAY, "attic", "class NotOnTheList { org.borewright.measure.Length length; }"),
            offence(
                    THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA,
                    "fit",
                    "@jakarta.enterprise.context.ApplicationScoped class Enrolled {}"),
            offence(
                    THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA,
                    "catalog",
                    "record ShownAsJson(@com.fasterxml.jackson.annotation.JsonProperty(\"s\") String size) {}"),
            offence(
                    THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA,
                    "kit.choice",
                    "class OpensTheStore { org.borewright.catalog.store.Shelves shelves; }"),
            offence(
                    THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA,
                    "measure.survey",
                    "class ReadsAFile { boolean is(String name) { return new java.io.File(name).exists(); } }"),
            offence(
                    THE_PAIRING_ALONE_KNOWS_GRAPHS,
                    "kit.bench",
                    "class PairsToo { org.jgrapht.Graph<String, String> graph; }"),
            offence(
                    THE_PAIRING_ALONE_KNOWS_GRAPHS,
                    "api.match",
                    "class ShowsAGraph { Object graph = org.jgrapht.Graphs.class; }"),
            offence(
                    NO_SUB_ROOMS_STAND_IN_A_RING,
                    "kit.request",
                    "class KnowsTheAnswer { org.borewright.kit.Match answer; }"),
            offence(
                    NO_SUB_ROOMS_STAND_IN_A_RING,
                    "measure",
                    "class KnowsTheSurvey { org.borewright.measure.survey.Grid grid; }"),
            offence(
                    ROWS_STAND_IN_A_STORE,
                    "catalog.load",
                    "@jakarta.persistence.Entity class StrayRow { @jakarta.persistence.Id long id; }"),
            offence(
                    ROWS_STAND_IN_A_STORE,
                    "api.match",
                    "@jakarta.persistence.Embeddable record StrayColumns(int a, int b) {}"),
            offence(ROWS_STAND_IN_A_STORE, "kit", "@jakarta.persistence.MappedSuperclass class StrayHead {}"),
            offence(
                    ROWS_ARE_SEEN_BY_STORE_AND_LOAD_ALONE,
                    "api.shown",
                    "class ShowsARow { org.borewright.catalog.store.row.PinRow row; }"),
            offence(
                    NOBODY_LEANS_ON_THE_LOADING,
                    "catalog.store",
                    "class Loads { org.borewright.catalog.load.Delivery delivery; }"),
            offence(
                    THE_LOADING_LEANS_ONE_WAY,
                    "catalog.load.sheet",
                    "class KnowsTheTables { org.borewright.catalog.load.table.Table<?> table; }"),
            offence(
                    THE_LOADING_LEANS_ONE_WAY,
                    "catalog.load.table",
                    "class KnowsTheRules { org.borewright.catalog.load.rule.Examination examination; }"),
            offence(
                    THE_LOADING_LEANS_ONE_WAY,
                    "catalog.load.sense",
                    "class ReadsText { org.borewright.catalog.load.sheet.Sheets sheets; }"),
            offence(
                    PHYSICAL_SENSE_SEES_SHELVES_ALONE,
                    "catalog.load.sense",
                    "class ReadsRows { org.borewright.catalog.store.row.PinRow row; }"),
            offence(
                    PHYSICAL_SENSE_SEES_SHELVES_ALONE,
                    "catalog.load.sense",
                    "class ReadsFolders { org.borewright.catalog.load.Delivery delivery; }"),
            offence(
                    THE_API_AND_THE_PAGES_ALONE_SPEAK_HTTP_AND_JSON,
                    "catalog.store",
                    "@jakarta.ws.rs.Path(\"/shelf\") class AnswersByItself {}"),
            offence(
                    THE_API_AND_THE_PAGES_ALONE_SPEAK_HTTP_AND_JSON,
                    "catalog.load",
                    "class WritesJson { com.fasterxml.jackson.databind.ObjectMapper json; }"),
            offence(
                    THE_API_AND_THE_PAGES_ALONE_SPEAK_HTTP_AND_JSON,
                    "kit",
                    "class Routed { io.vertx.ext.web.Router router; }"),
            offence(
                    THE_API_AND_THE_PAGES_ALONE_SPEAK_HTTP_AND_JSON,
                    "catalog.load",
                    "class AnswersRest { org.jboss.resteasy.reactive.RestResponse<String> answer; }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "class KnowsTheDay { java.time.LocalDate day() { return java.time.LocalDate.now(); } }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit.hole",
                    "class KnowsTheHour { java.util.function.Supplier<?> hour = java.time.Instant::now; }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "catalog",
                    "class CarriesAClock { long at(java.time.Clock clock) { return clock.millis(); } }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "measure",
                    "class StopsTheTime { long at() { return System.nanoTime(); } }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "fit",
                    "class ThrowsDice { int dice() { return new java.util.Random().nextInt(); } }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "class StopsTheDay { long at() { return System.currentTimeMillis(); } }"),
            offence(THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE, "kit", "class RollsOne { double dice = Math.random(); }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "class NumbersItself { Object id = java.util.UUID.randomUUID(); }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "class DatesItself { Object day = new java.util.Date(); }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "class HangsACalendar { Object day = java.util.Calendar.getInstance(); }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "class HangsAnother { Object day = new java.util.GregorianCalendar(); }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "class RollsTwo { Object dice = new java.util.SplittableRandom(); }"),
            offence(
                    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE,
                    "kit",
                    "class RollsThree { Object dice = java.util.concurrent.ThreadLocalRandom.current(); }"),
            offence(
                    NO_ORDER_IS_LEFT_TO_CHANCE,
                    "api.shown",
                    "class CopiesASet { Object a(java.util.List<String> b) { return java.util.Set.copyOf(b); } }"),
            offence(
                    NO_ORDER_IS_LEFT_TO_CHANCE,
                    "catalog",
                    "class CopiesAMap { Object a(java.util.Map<String, String> b) { return java.util.Map.copyOf(b); } }"),
            offence(
                    NO_ORDER_IS_LEFT_TO_CHANCE,
                    "catalog.store",
                    "class SplitsIntoASet { Object a = java.util.Set.of(\"a b\".split(\" \")); }"),
            offence(NO_ORDER_IS_LEFT_TO_CHANCE, "kit", "class HoldsTwo { Object a = java.util.Set.of(1, 2); }"),
            offence(
                    NO_ORDER_IS_LEFT_TO_CHANCE,
                    "kit.bill",
                    "class HoldsFour { Object a = java.util.Map.of(1, 2, 3, 4); }"),
            offence(
                    NO_ORDER_IS_LEFT_TO_CHANCE,
                    "catalog.load",
                    "class HoldsEntries { Object a = java.util.Map.ofEntries(java.util.Map.entry(1, 2)); }"),
            offence(
                    NO_ORDER_IS_LEFT_TO_CHANCE,
                    "api",
                    "class CollectsASet { Object a = java.util.stream.Collectors.toUnmodifiableSet(); }"),
            offence(
                    NO_ORDER_IS_LEFT_TO_CHANCE,
                    "api",
                    "class CollectsAMap { Object a = java.util.stream.Collectors.toUnmodifiableMap(b -> b, b -> b); }"),
            offence(WHAT_THE_HEART_HOLDS_IS_FINAL, "kit", "class Changes { int size; }"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "kit", "class MatchImpl {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "api", "class StringUtils {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "fit", "class GapHelper {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "catalog.store", "class RowManager {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "api.match", "class MatchDTO {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "catalog.store", "class PinMapper {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "kit", "class MatchService {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "measure", "class LengthUtil {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "measure", "class LengthHelpers {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "kit", "class KitManagers {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "api.match", "class KitDto {}"),
            offence(TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE, "api.guard", "class FaultMappers {}"),
            offence(PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "measure.util", "class Lengths {}"),
            offence(PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "kit.helper", "class Lists {}"),
            offence(PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "common", "class Things {}"),
            offence(PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "fit.impl", "class Gap {}"),
            offence(PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "api.dto", "class Copy {}"),
            offence(PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "catalog.store.mapper", "class Twin {}"),
            offence(PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM, "service", "class Any {}"));

    private record Offence(Layout rule, Planted offender) {}

    private static Offence offence(Layout rule, String room, String source) {
        return new Offence(rule, Planted.in("org.borewright." + room, source));
    }

    private static JavaClasses withOffenders;
    private static JavaClasses withRings;

    /** Rings apart: the offenders of other rules close so many that no report names them all. */
    @BeforeAll
    static void plant(@TempDir Path offenders, @TempDir Path rings) {
        withOffenders = houseWith(offenders(layout -> layout != NO_SUB_ROOMS_STAND_IN_A_RING), offenders);
        withRings = houseWith(offenders(layout -> layout == NO_SUB_ROOMS_STAND_IN_A_RING), rings);
    }

    private static JavaClasses houseWith(List<Planted> offenders, Path folder) {
        Planted.compile(offenders, folder);
        return new ClassFileImporter().importPaths(HOUSE, folder);
    }

    private static List<Planted> offenders(Predicate<Layout> rule) {
        return OFFENCES.stream()
                .filter(offence -> rule.test(offence.rule()))
                .map(Offence::offender)
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void theHouseKeepsTheRule(Layout layout) {
        layout.rule().check(HOUSE_AS_BUILT);
    }

    @ParameterizedTest
    @EnumSource
    void theRuleFindsEveryOffender(Layout layout) {
        JavaClasses planted = layout == NO_SUB_ROOMS_STAND_IN_A_RING ? withRings : withOffenders;
        String found = layout.rule().evaluate(planted).getFailureReport().toString();
        assertThat(offenders(layout::equals))
                .isNotEmpty()
                .allSatisfy(offender -> assertThat(found).contains(offender.type()));
    }
}
