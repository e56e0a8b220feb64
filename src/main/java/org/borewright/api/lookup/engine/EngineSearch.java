package org.borewright.api.lookup.engine;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;

/** Finds engines by what is known of them. */
final class EngineSearch {

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(\\.[\\p{L}\\p{N}]+)*");

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

    /** Each word asked for begins one of the engine's, or its code written in one: {@code v twin} is no {@code parallel twin}. */
    private static boolean hasWords(Engine engine, Optional<String> asked) {
        if (asked.isEmpty()) {
            return true;
        }
        List<String> words = words(asked.get());
        List<String> own = ownWords(engine);
        return !words.isEmpty() && words.stream().allMatch(word -> own.stream().anyMatch(one -> one.startsWith(word)));
    }

    private static List<String> ownWords(Engine engine) {
        return Stream.of(
                        engine.code(),
                        engine.code().replace("-", ""),
                        engine.name().maker(),
                        engine.name().model(),
                        engine.build().layout().label(),
                        engine.build().construction().label())
                .flatMap(text -> words(text).stream())
                .toList();
    }

    /** Letters and figures; the point of {@code 1.6} belongs to its word. */
    private static List<String> words(String text) {
        return WORD.matcher(folded(text)).results().map(MatchResult::group).toList();
    }

    /** Without case and accents. */
    private static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }
}
