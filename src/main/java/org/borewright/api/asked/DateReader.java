package org.borewright.api.asked;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.borewright.api.problem.ProblemType;

/** Reads a day. */
public final class DateReader {

    private static final LocalDate EARLIEST = LocalDate.of(2000, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2099, 12, 31);

    /** The days that are read, in words. */
    public static final String RANGE = EARLIEST + " to " + LATEST;

    private DateReader() {}

    /** The day; empty when it is not given, or is none. */
    public static Optional<LocalDate> read(Place place) {
        return place.text().flatMap(text -> parsed(place, text)).filter(date -> inRange(place, date));
    }

    private static Optional<LocalDate> parsed(Place place, String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException refused) {
            place.fault(
                    ProblemType.BAD_DATE,
                    "\"" + Place.shortened(text) + "\" is not a day of the calendar.",
                    "year-month-day, as 2026-12-01");
            return Optional.empty();
        }
    }

    private static boolean inRange(Place place, LocalDate date) {
        if (!isInRange(date)) {
            place.fault(ProblemType.BAD_DATE, "The date is out of range.", RANGE);
        }
        return isInRange(date);
    }

    /** Whether such a day is read, in a body or elsewhere. */
    public static boolean isInRange(LocalDate date) {
        return !date.isBefore(EARLIEST) && !date.isAfter(LATEST);
    }
}
