package org.borewright.api.guard;

import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.Legible;
import org.borewright.api.problem.NearNames;
import org.borewright.api.problem.ProblemType;
import org.borewright.api.problem.Suggestion;
import org.borewright.measure.LengthUnit;

/** Reads the query parameters of a request. What cannot be used is noted, and told at the end together with what was not asked for. */
public final class Parameters {

    private static final int LONGEST = 100;
    private static final Pattern FIGURE = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private final MultivaluedMap<String, String> sent;
    private final SortedSet<String> known = new TreeSet<>();
    private final Faults faults = Faults.ofParameters();

    public Parameters(UriInfo asked) {
        sent = asked.getQueryParameters();
    }

    /** Refuses them all, where none is read. */
    public static void none(UriInfo asked) {
        new Parameters(asked).end();
    }

    /** A text; empty when it is not given or holds nothing. */
    public Optional<String> text(String name) {
        known.add(name);
        List<String> values = sent.getOrDefault(name, List.of());
        if (values.size() > 1) {
            fault(name, "The parameter is given " + values.size() + " times.", "once");
            return Optional.empty();
        }
        Optional<String> text = values.stream()
                .map(String::strip)
                .filter(value -> !value.isEmpty())
                .findFirst();
        if (text.isPresent() && text.get().length() > LONGEST) {
            fault(name, "The parameter is too long.", "at most " + LONGEST + " characters");
            return Optional.empty();
        }
        Optional<String> flaw = text.flatMap(Legible::flaw);
        flaw.ifPresent(reason ->
                faults.add(Fault.of(ProblemType.BAD_PARAMETER, name, reason).wayOut(Legible.WAY_OUT)));
        return text.filter(value -> flaw.isEmpty());
    }

    /** A whole number within a range. */
    public int whole(String name, int least, int most, int usual) {
        return number(name, BigDecimal.valueOf(least), BigDecimal.valueOf(most), 0)
                .map(BigDecimal::intValueExact)
                .orElse(usual);
    }

    /** A number within a range. */
    public Optional<BigDecimal> number(String name, BigDecimal least, BigDecimal most, int decimals) {
        Optional<String> text = text(name);
        Optional<BigDecimal> number =
                text.filter(typed -> FIGURE.matcher(typed).matches()).map(BigDecimal::new);
        if (text.isPresent() && number.isEmpty()) {
            fault(name, "This is not a plain number.", range(least, most, decimals));
        }
        boolean fine = number.filter(value -> value.stripTrailingZeros().scale() > decimals)
                .isEmpty();
        boolean within = number.filter(value -> value.compareTo(least) < 0 || value.compareTo(most) > 0)
                .isEmpty();
        if (!within || !fine) {
            String reason = within ? "The number has too many decimals." : "The number is outside its range.";
            fault(name, reason, range(least, most, decimals));
        }
        return number.filter(value -> within && fine);
    }

    private static String range(BigDecimal least, BigDecimal most, int decimals) {
        String fineness = switch (decimals) {
            case 0 -> "whole";
            case 1 -> "at most one decimal";
            default -> "at most " + decimals + " decimals";
        };
        return least.toPlainString() + " to " + most.toPlainString() + ", " + fineness;
    }

    /** The unit lengths are to be shown in; millimetres unless asked otherwise. */
    public LengthUnit unit() {
        Optional<String> text = text("unit");
        Optional<LengthUnit> unit = text.flatMap(symbol -> Arrays.stream(LengthUnit.values())
                .filter(known -> known.symbol().equals(symbol))
                .findFirst());
        if (text.isPresent() && unit.isEmpty()) {
            fault("unit", "The unit is not known.", "mm or in");
        }
        return unit.orElse(LengthUnit.MILLIMETRE);
    }

    /** Whether nothing was wrong with what was read so far. */
    public boolean isWithoutFault() {
        return faults.none();
    }

    /** Notes a parameter that is needed and was left out: to leave it out is no way out of that. */
    public void missing(String name, String reason, String limit, String wayOut) {
        faults.add(
                Fault.of(ProblemType.BAD_PARAMETER, name, reason).against(limit).wayOut(wayOut));
    }

    /** Notes what is wrong with a parameter that could be read. */
    public void fault(String name, String reason, String limit) {
        List<String> values = sent.getOrDefault(name, List.of());
        boolean repeated = values.size() == 1 && values.get(0).length() <= LONGEST;
        faults.add(Fault.of(ProblemType.BAD_PARAMETER, name, reason)
                .sent(repeated ? values.get(0) : null)
                .against(limit));
    }

    /** Ends the reading. @throws ProblemException with all that was noted, and every parameter nobody read */
    public void end() {
        sent.keySet().stream().filter(name -> !known.contains(name)).sorted().forEach(this::unknown);
        faults.raise();
    }

    private void unknown(String name) {
        Fault fault = Fault.of(
                        ProblemType.BAD_PARAMETER, Legible.first(LONGEST, name), "The parameter is not known here.")
                .against("known here: " + (known.isEmpty() ? "none" : String.join(", ", known)));
        List<String> near = NearNames.of(name, known);
        faults.add(near.isEmpty() ? fault : fault.suggesting(new Suggestion(near.get(0), "the nearest name")));
    }
}
