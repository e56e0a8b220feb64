package org.borewright.api.order.request;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;
import org.borewright.api.asked.JsonBody;
import org.borewright.api.asked.Place;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.ProblemType;

/** Reads bodies of few members. An empty body is an object without any. */
public final class ShortBody {

    private static final byte[] NO_MEMBERS = "{}".getBytes(StandardCharsets.UTF_8);

    private ShortBody() {}

    /** The top of a body with these members. @throws ProblemException if it is no object */
    static Place top(byte[] body, Faults faults, String... known) {
        Place top = JsonBody.read(body.length == 0 ? NO_MEMBERS : body, faults);
        if (!top.isObject(known)) {
            top.wrongForm("an object");
            faults.raise();
        }
        return top;
    }

    /**
     * The one member of a body.
     *
     * @param missing what is to be said where it is not there
     * @param sample what may stand there, as JSON
     * @param read reads it
     * @throws ProblemException if it is not there, or cannot be read
     */
    public static <T> T only(
            byte[] body, String name, String missing, String sample, Function<Place, Optional<T>> read) {
        Faults faults = Faults.ofBody();
        Place place = top(body, faults, name).at(name);
        if (!place.isGiven()) {
            place.add(Fault.of(ProblemType.MISSING_FIELD, place.pointer(), missing)
                    .wayOut("Send {\"" + name + "\": " + sample + "}."));
        }
        Optional<T> member = read.apply(place);
        faults.raise();
        return member.orElseThrow();
    }
}
