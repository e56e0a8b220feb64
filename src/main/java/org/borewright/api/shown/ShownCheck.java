package org.borewright.api.shown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Rule;
import org.borewright.fit.Suitability;
import org.borewright.fit.Unchecked;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * One check on the wire.
 *
 * @param check what was checked
 * @param place where; absent where the rule says it all
 * @param outcome how it ended
 * @param figures value, limit and margin, where amounts were compared
 * @param found what was found, where kinds were compared, or a ratio has no end
 * @param asked what was asked for, likewise
 * @param source where rule and limit come from
 * @param next what to do; absent when it is in
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ShownCheck(
        String check,
        @Nullable String place,
        String outcome,
        @Nullable Figures figures,
        @Nullable String found,
        @Nullable String asked,
        String source,
        @Nullable String next) {

    private static final String NO_ROOM = "without end: no room is left above the piston";

    /**
     * The figures of a comparison.
     *
     * @param value what was found
     * @param sense on which side of the limit it must lie
     * @param limit the limit
     * @param margin how far inside; negative when beyond
     * @param uncertainty expanded uncertainty of the value; absent for part against part
     * @param conformance the probability that the true value is within the limit; absent for part against part
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Figures(
            ShownAmount value,
            String sense,
            ShownAmount limit,
            ShownAmount margin,
            @Nullable ShownAmount uncertainty,
            @Nullable BigDecimal conformance) {

        private static final BigDecimal HIGHEST_SHOWN = new BigDecimal("0.9999");

        /** Rounded down to four decimals, and never shown as a certainty. */
        private static BigDecimal shown(double probability) {
            return BigDecimal.valueOf(probability)
                    .setScale(4, RoundingMode.DOWN)
                    .min(HIGHEST_SHOWN);
        }

        static Figures of(Comparison check, LengthUnit unit) {
            Flattery limit = switch (check.sense()) {
                case AT_LEAST -> Flattery.LOWER_LIMIT;
                case AT_MOST -> Flattery.UPPER_LIMIT;
                case EXACTLY -> Flattery.VALUE;
            };
            return new Figures(
                    ShownAmount.of(check.value(), unit, Flattery.VALUE),
                    check.sense().label(),
                    ShownAmount.of(check.limit(), unit, limit),
                    ShownAmount.of(check.margin(), check.value().quantity(), unit, Flattery.MARGIN),
                    check.uncertainty() == 0
                            ? null
                            : ShownAmount.of(check.uncertainty(), check.value().quantity(), unit, Flattery.UNCERTAINTY),
                    check.conformance().isPresent() ? shown(check.conformance().getAsDouble()) : null);
        }
    }

    /** A check in a unit. */
    public static ShownCheck of(Check check, LengthUnit unit) {
        String place = check.place().isEmpty() ? null : check.place();
        String outcome = check.outcome().label();
        String source = check.rule().source();
        String next = next(check, unit);
        if (check instanceof Comparison endless && endless.value().isEndless()) {
            return new ShownCheck(check.rule().title(), place, outcome, null, NO_ROOM, asked(endless), source, next);
        }
        if (check instanceof Comparison comparison) {
            return new ShownCheck(
                    check.rule().title(), place, outcome, Figures.of(comparison, unit), null, null, source, next);
        }
        if (check instanceof Suitability kinds) {
            return new ShownCheck(
                    check.rule().title(), place, outcome, null, kinds.found(), kinds.asked(), source, next);
        }
        return new ShownCheck(check.rule().title(), place, outcome, null, null, null, source, next);
    }

    private static String asked(Comparison ratio) {
        return ratio.sense().label() + " "
                + BigDecimal.valueOf(ratio.limit().units(), 6)
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private static @Nullable String next(Check check, LengthUnit unit) {
        if (check instanceof Unchecked unchecked) {
            return unchecked.reason();
        }
        return switch (check.outcome()) {
            case IN -> check.rule() == Rule.RING_GAP_TO_FILE ? check.rule().wayOut() : null;
            case NOT_CHECKED, UNKNOWN -> null;
            case OUT -> check.rule().wayOut();
            case TOO_CLOSE -> tooClose(check, unit);
        };
    }

    private static @Nullable String tooClose(Check check, LengthUnit unit) {
        String closer = closer(check, unit);
        return switch (check.rule()) {
            case RING_FILED -> check.rule().wayOut();
            case DECK_FLATNESS -> closer + ", or " + check.rule().wayOut();
            default -> closer;
        };
    }

    private static @Nullable String closer(Check check, LengthUnit unit) {
        return check instanceof Comparison close
                ? close.closer()
                        .map(closer -> ShownCloser.of(close, closer, unit))
                        .orElse(null)
                : null;
    }

    /** The ways out of checks, each once and in a sentence of its own; empty where none of them has one. */
    public static Optional<String> waysOut(List<Check> checks, LengthUnit unit) {
        return Optional.of(checks.stream()
                        .map(check -> next(check, unit))
                        .filter(Objects::nonNull)
                        .distinct()
                        .map(ShownCheck::sentence)
                        .collect(Collectors.joining(" ")))
                .filter(told -> !told.isEmpty());
    }

    /** The same where each place has a way of its own: those of one way together, in a sentence that begins with them as they are written. */
    public static String waysOutByPlace(List<Check> checks, LengthUnit unit) {
        Map<String, Set<String>> places = new LinkedHashMap<>();
        for (Check check : checks) {
            String way = next(check, unit);
            if (way != null) {
                places.computeIfAbsent(way, told -> new LinkedHashSet<>()).add(check.place());
            }
        }
        return places.entrySet().stream()
                .map(told -> String.join(", ", told.getValue()) + ": " + ended(told.getKey()))
                .collect(Collectors.joining(" "));
    }

    private static String sentence(String way) {
        return way.substring(0, 1).toUpperCase(Locale.ROOT) + ended(way.substring(1));
    }

    private static String ended(String way) {
        return way.endsWith(".") || way.endsWith("?") ? way : way + ".";
    }
}
