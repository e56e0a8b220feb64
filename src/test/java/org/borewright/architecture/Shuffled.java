package org.borewright.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import java.util.Set;

/** The sets and maps that Java shuffles anew in every process, so that no order may come from them. */
final class Shuffled {

    private static final Set<String> ALWAYS = Set.of(
            "java.util.Set.copyOf",
            "java.util.Map.copyOf",
            "java.util.Map.ofEntries",
            "java.util.stream.Collectors.toUnmodifiableSet",
            "java.util.stream.Collectors.toUnmodifiableMap");

    private Shuffled() {}

    /** An empty one, or one of a single thing, has no order to shuffle. */
    static DescribedPredicate<JavaAccess<?>> isMade() {
        return describe("target makes a shuffled set or map", access -> isMade(access.getTarget()));
    }

    private static boolean isMade(AccessTarget target) {
        String name = target.getOwner().getName() + "." + target.getName();
        return ALWAYS.contains(name)
                || ("java.util.Set.of".equals(name) && (parameters(target) > 1 || takesAnArray(target)))
                || ("java.util.Map.of".equals(name) && parameters(target) > 2);
    }

    private static int parameters(AccessTarget target) {
        return target instanceof CodeUnitAccessTarget called
                ? called.getRawParameterTypes().size()
                : 0;
    }

    private static boolean takesAnArray(AccessTarget target) {
        return target instanceof CodeUnitAccessTarget called
                && called.getRawParameterTypes().stream().anyMatch(type -> type.isArray());
    }
}
