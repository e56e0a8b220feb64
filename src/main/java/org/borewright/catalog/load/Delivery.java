package org.borewright.catalog.load;

import static java.util.stream.Collectors.joining;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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

    /**
     * Reads a folder beside a catalogue that is kept, changing nothing.
     *
     * @return empty where its files say just what is kept, which is seen from their text and costs no judging
     */
    static Optional<Delivery> unlike(Revision kept, Path folder) {
        Reading reading = new Reading(folder);
        return reading.says(kept) ? Optional.empty() : Optional.of(reading.delivery());
    }

    /** That these files were passed over at a start that keeps its catalogue, and how they may be loaded. */
    String passedOver(Revision kept, Path folder) {
        String files = isGood()
                ? "The files in %s say something else, %s, and were passed over.".formatted(folder, named(revision))
                : report(folder) + "\nPut that right first.";
        return """
                The service keeps catalogue %s.
                %s
                To load the files, stop the service, remove its database (data/, unless it was put elsewhere) and start it anew.""".formatted(named(kept), files);
    }

    private static String named(Revision revision) {
        return "%s, offers %s".formatted(revision.fit(), revision.offers());
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
