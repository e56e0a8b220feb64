package org.borewright.api.lookup;

import jakarta.ws.rs.core.UriInfo;
import java.util.Optional;
import org.borewright.api.guard.Parameters;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.UnknownName;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Listing;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.measure.Gauge;
import org.borewright.measure.LengthUnit;

/** Finds what the path of a look-up names, and answers 404 with the near names where nothing bears the name. */
public final class Named {

    private Named() {}

    /** The unit, where it is the only parameter. */
    public static LengthUnit unitOf(UriInfo asked) {
        Parameters parameters = new Parameters(asked);
        LengthUnit unit = parameters.unit();
        parameters.end();
        return unit;
    }

    public static Shelf engine(String code, Catalogue catalogue) {
        return catalogue
                .shelf(code)
                .orElseThrow(() -> new ProblemException(Problem.of(UnknownName.engine("engine", code, catalogue))));
    }

    public static Size size(String label, Shelf shelf) {
        return shelf.size(label)
                .orElseThrow(() -> new ProblemException(Problem.of(UnknownName.size("size", label, shelf))));
    }

    public static Listing part(String text, Catalogue catalogue) {
        return number(text)
                .flatMap(catalogue::listing)
                .orElseThrow(() -> new ProblemException(Problem.of(UnknownName.part("number", text, catalogue))));
    }

    public static Gauge gauge(String name, Catalogue catalogue) {
        return catalogue
                .gauge(name)
                .orElseThrow(() -> new ProblemException(Problem.of(UnknownName.gauge("name", name, catalogue))));
    }

    /** What has not the form of a number bears none. */
    private static Optional<PartNumber> number(String text) {
        try {
            return Optional.of(new PartNumber(text));
        } catch (IllegalArgumentException noNumber) {
            return Optional.empty();
        }
    }
}
