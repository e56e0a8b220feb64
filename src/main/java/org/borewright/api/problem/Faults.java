package org.borewright.api.problem;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** The faults of one request, collected while it is read so that all are told at once: the first of each place, in the order found. */
public final class Faults {

    /** How many are told of; a body full of nonsense is not answered with a larger one. */
    public static final int MOST = 100;

    private final int status;
    private final Map<String, Fault> byPointer = new LinkedHashMap<>();

    private Faults(int status) {
        this.status = status;
    }

    /** No faults of a body yet. */
    public static Faults ofBody() {
        return new Faults(422);
    }

    /** No faults of the query parameters yet. */
    public static Faults ofParameters() {
        return new Faults(ProblemType.BAD_PARAMETER.status());
    }

    /** Notes a fault; of several at one place the first stands, for the others follow from it. */
    public void add(Fault fault) {
        byPointer.putIfAbsent(Objects.requireNonNull(fault.pointer(), "a fault of the request has a place"), fault);
    }

    /** Whether so many were found that no further one is told of, and explaining it is of no use. */
    public boolean isFull() {
        return byPointer.size() >= MOST;
    }

    /** Whether none was found. */
    public boolean none() {
        return byPointer.isEmpty();
    }

    /** Tells of all that was found. @throws ProblemException if any was: of their common type, else of {@link ProblemType#SEVERAL_FAULTS} */
    public void raise() {
        if (!none()) {
            throw new ProblemException(problem());
        }
    }

    private Problem problem() {
        List<Fault> told = byPointer.values().stream().limit(MOST).toList();
        List<ProblemType> types =
                byPointer.values().stream().map(Fault::type).distinct().toList();
        ProblemType type = types.size() == 1 ? types.get(0) : ProblemType.SEVERAL_FAULTS;
        return new Problem(type, status, detail(told), told);
    }

    private String detail(List<Fault> told) {
        if (byPointer.size() == 1) {
            return told.get(0).reason();
        }
        return byPointer.size() == told.size()
                ? String.format(Locale.ROOT, "%d faults were found; all are listed.", told.size())
                : String.format(Locale.ROOT, "%d faults were found; the first %d are listed.", byPointer.size(), MOST);
    }
}
