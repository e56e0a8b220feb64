package org.borewright.catalog.load;

import static java.util.stream.Collectors.joining;

import java.nio.file.Path;
import java.util.List;
import org.borewright.catalog.Revision;
import org.borewright.catalog.load.sheet.BadCell;
import org.borewright.catalog.store.CatalogRows;

/**
 * What a folder of catalogue files delivers: rows to keep, or everything that is bad about them.
 *
 * @param rows of all lines without complaint; the whole catalogue when there is none
 * @param revision fingerprints of the files
 * @param bad every bad cell of every file, in the order of files and lines
 * @param unjudged sorted codes of engines whose parts were not held against each other, because a line about them is bad
 */
public record Delivery(CatalogRows rows, Revision revision, List<BadCell> bad, List<String> unjudged) {

    /** Whether the catalogue may be kept. */
    public boolean isGood() {
        return bad.isEmpty();
    }

    /** Reads a folder, changing nothing. */
    public static Delivery from(Path folder) {
        return new Reading(folder).delivery();
    }

    /** Everything that is bad, one line each, for whoever keeps the files. */
    public String report(Path folder) {
        String notJudged = unjudged.isEmpty()
                ? ""
                : "\nNot yet held against each other, because a line about them is bad: the parts of "
                        + String.join(", ", unjudged);
        return bad.stream()
                .map(BadCell::toString)
                .collect(joining(
                        "\n",
                        "The catalogue in %s was not loaded, and nothing was changed:\n".formatted(folder),
                        notJudged));
    }
}
