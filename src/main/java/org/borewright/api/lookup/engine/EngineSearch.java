package org.borewright.api.lookup.engine;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.borewright.catalog.Engine;

/** Finds engines by what is known of them. */
final class EngineSearch {

    private EngineSearch() {}

    /** The engines that answer a query, in the order given. */
    static List<Engine> find(List<Engine> engines, EngineQuery query) {
        return engines.stream()
                .filter(engine -> hasWords(engine, query.words()))
                .filter(engine -> query.maker()
                        .filter(maker ->
                                !folded(maker).equals(folded(engine.name().maker())))
                        .isEmpty())
                .filter(engine -> query.displacementFrom()
                        .filter(least -> displacement(engine).compareTo(least) < 0)
                        .isEmpty())
                .filter(engine -> query.displacementTo()
                        .filter(most -> displacement(engine).compareTo(most) > 0)
                        .isEmpty())
                .toList();
    }

    /** The displacement at the nominal bore in cm³, as it is shown: to a tenth. What is looked for is compared with what is shown. */
    static BigDecimal displacement(Engine engine) {
        return BigDecimal.valueOf(engine.displacement(engine.bore().nominal())).setScale(1, RoundingMode.HALF_EVEN);
    }

    private static boolean hasWords(Engine engine, Optional<String> words) {
        String all = folded(engine.name().maker() + " " + engine.name().model() + " " + engine.code());
        return words.stream()
                .flatMap(text -> Arrays.stream(folded(text).split("\\s+")))
                .allMatch(all::contains);
    }

    /** Without case and accents. */
    private static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }
}
