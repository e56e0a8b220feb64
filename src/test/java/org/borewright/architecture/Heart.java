package org.borewright.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.PackageMatcher;
import java.util.Arrays;
import java.util.Set;

/** The rooms whose types decide, and the little they may know besides each other. */
final class Heart {

    /** Of the catalogue and of orders only what decides: their other rooms are technique. */
    private static final String[] ROOMS = {
        "org.borewright.measure..",
        "org.borewright.fit..",
        "org.borewright.catalog",
        "org.borewright.kit..",
        "org.borewright.order",
        "org.borewright.order.quote"
    };

    /** Package by package: nothing among them logs, reads a file or calls out. */
    private static final String[] PLAIN_JAVA = {
        "java.lang",
        "java.lang.annotation",
        "java.lang.invoke",
        "java.lang.runtime",
        "java.math",
        "java.time",
        "java.util",
        "java.util.concurrent",
        "java.util.function",
        "java.util.regex",
        "java.util.stream",
        "org.jspecify.annotations"
    };

    private static final Set<String> READS_A_CLOCK_OR_THROWS_DICE = Set.of(
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.lang.Math.random",
            "java.util.UUID.randomUUID");

    private static final Set<String> IS_A_CLOCK_OR_DICE = Set.of(
            "java.time.Clock",
            "java.util.Calendar",
            "java.util.Date",
            "java.util.GregorianCalendar",
            "java.util.Random",
            "java.util.SplittableRandom",
            "java.util.concurrent.ThreadLocalRandom");

    private Heart() {}

    static DescribedPredicate<JavaClass> resides() {
        return resideInAnyPackage(ROOMS).as("reside in the heart");
    }

    /** Whether a package is one of the heart's. */
    static boolean holds(String room) {
        return Arrays.stream(ROOMS).map(PackageMatcher::of).anyMatch(matcher -> matcher.matches(room));
    }

    static DescribedPredicate<JavaClass> isPlainJava() {
        return resideInAnyPackage(PLAIN_JAVA).as("are plain Java");
    }

    static DescribedPredicate<JavaClass> isGraphs() {
        return resideInAPackage("org.jgrapht..").as("are graphs");
    }

    /** The one class that pairs pistons with holes. */
    static DescribedPredicate<JavaClass> pairs() {
        return describe("pairs", type -> "org.borewright.kit.bench.Pairing".equals(type.getName()));
    }

    static DescribedPredicate<JavaAccess<?>> clockOrChance() {
        return describe("target is a clock or chance", access -> isClockOrChance(access.getTarget()));
    }

    private static boolean isClockOrChance(AccessTarget target) {
        JavaClass owner = target.getOwner();
        boolean asksForNow = owner.getPackageName().startsWith("java.time") && "now".equals(target.getName());
        return asksForNow
                || IS_A_CLOCK_OR_DICE.contains(owner.getName())
                || READS_A_CLOCK_OR_THROWS_DICE.contains(owner.getName() + "." + target.getName());
    }
}
