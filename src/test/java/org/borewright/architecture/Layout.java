package org.borewright.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.library.modules.syntax.AllowedModuleDependencies.allow;
import static com.tngtech.archunit.library.modules.syntax.ModuleDependencyScope.consideringOnlyDependenciesBetweenModules;
import static com.tngtech.archunit.library.modules.syntax.ModuleRuleDefinition.modules;

import com.tngtech.archunit.lang.ArchRule;

/**
 * The rules of the house. The first two list what may be leaned on: a name misspelt there refuses, it never lets pass. The others list
 * what is refused, so each has a planted offender for every name on its list.
 */
enum Layout {
    /** A new room may lean on nothing until it has its line here. */
    ROOMS_LEAN_ONE_WAY(modules()
            .definedByPackages("org.borewright.(*)..")
            .should()
            .respectTheirAllowedDependencies(
                    allow().fromModule("measure")
                            .toModules()
                            .fromModule("fit")
                            .toModules("measure")
                            .fromModule("catalog")
                            .toModules("measure", "fit")
                            .fromModule("kit")
                            .toModules("measure", "fit", "catalog")
                            .fromModule("order")
                            .toModules("measure", "fit", "catalog", "kit")
                            .fromModule("api")
                            .toModules("measure", "fit", "catalog", "kit", "order")
                            .fromModule("page")
                            .toModules("measure", "fit", "catalog", "kit", "order", "api"),
                    consideringOnlyDependenciesBetweenModules())),

    THE_HEART_KNOWS_ITSELF_AND_PLAIN_JAVA(classes()
            .that(Heart.resides())
            .should()
            .onlyDependOnClassesThat(Heart.resides().or(Heart.isPlainJava()).or(Heart.isGraphs()))),

    THE_PAIRING_ALONE_KNOWS_GRAPHS(noClasses().that(not(Heart.pairs())).should().dependOnClassesThat(Heart.isGraphs())),

    NO_SUB_ROOMS_STAND_IN_A_RING(
            slices().matching("org.borewright.(**)").should().beFreeOfCycles()),

    ROWS_STAND_IN_A_STORE(noClasses()
            .that(not(resideInAPackage("..store..")))
            .should()
            .beAnnotatedWith("jakarta.persistence.Entity")
            .orShould()
            .beAnnotatedWith("jakarta.persistence.Embeddable")
            .orShould()
            .beAnnotatedWith("jakarta.persistence.MappedSuperclass")),

    ROWS_ARE_SEEN_BY_STORE_AND_LOAD_ALONE(noClasses()
            .that(not(resideInAnyPackage("org.borewright.catalog.store..", "org.borewright.catalog.load..")))
            .should()
            .dependOnClassesThat(resideInAPackage("..store.row.."))),

    NOBODY_LEANS_ON_THE_LOADING(noClasses()
            .that(not(resideInAPackage("org.borewright.catalog.load..")))
            .should()
            .dependOnClassesThat(resideInAPackage("org.borewright.catalog.load.."))),

    /** Text, tables and rules in this order; physical sense beside them, for it sees shelves as a match does. */
    THE_LOADING_LEANS_ONE_WAY(modules()
            .definedByPackages("org.borewright.catalog.load.(*)..")
            .should()
            .respectTheirAllowedDependencies(
                    allow().fromModule("table")
                            .toModules("sheet")
                            .fromModule("rule")
                            .toModules("sheet"),
                    consideringOnlyDependenciesBetweenModules())),

    PHYSICAL_SENSE_SEES_SHELVES_ALONE(noClasses()
            .that(resideInAPackage("org.borewright.catalog.load.sense"))
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.borewright.catalog.store..", "org.borewright.catalog.load"))),

    THE_API_AND_THE_PAGES_ALONE_SPEAK_HTTP_AND_JSON(noClasses()
            .that(not(resideInAnyPackage("org.borewright.api..", "org.borewright.page..")))
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "jakarta.ws.rs..", "org.jboss.resteasy..", "io.vertx..", "com.fasterxml.jackson.."))),

    THE_HEART_ASKS_NEITHER_CLOCK_NOR_CHANCE(
            noClasses().that(Heart.resides()).should().accessTargetWhere(Heart.clockOrChance())),

    NO_ORDER_IS_LEFT_TO_CHANCE(noClasses().should().accessTargetWhere(Shuffled.isMade())),

    WHAT_THE_HEART_HOLDS_IS_FINAL(
            fields().that().areDeclaredInClassesThat(Heart.resides()).should().beFinal()),

    TYPES_ARE_NAMED_FOR_WHAT_THEY_ARE(
            noClasses().should().haveNameMatching(".*(Impl|Utils?|Helpers?|Managers?|DTOs?|Dtos?|Mappers?|Services?)")),

    PACKAGES_ARE_NAMED_FOR_WHAT_IS_IN_THEM(noClasses()
            .should()
            .resideInAnyPackage(
                    "..util..", "..helper..", "..common..", "..impl..", "..dto..", "..mapper..", "..service.."));

    @SuppressWarnings("ImmutableEnumChecker") // a rule does not change, but has no mark that says so
    private final ArchRule rule;

    Layout(ArchRule rule) {
        this.rule = rule;
    }

    ArchRule rule() {
        return rule;
    }
}
