package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.borewright.catalog.Revision;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files beside a catalogue that is kept: silence where they say the same, else a warning with the way to load them. */
class PassedOverTest {

    @TempDir
    Path path;

    private Folder folder;
    private Revision kept;

    @BeforeEach
    void loadOnce() {
        folder = Folder.in(path);
        kept = folder.delivery().revision();
    }

    static Stream<UnaryOperator<Folder>> sameInOtherForm() {
        return Stream.of(
                files -> files,
                files -> files.text("sizes.csv", text -> text.replace("\n", "\r\n")),
                files -> files.text("sizes.csv", text -> "\uFEFF" + text));
    }

    @ParameterizedTest
    @MethodSource("sameInOtherForm")
    void filesThatSayWhatIsKeptAreNotSpokenOf(UnaryOperator<Folder> form) {
        folder = form.apply(folder);

        assertThat(warning()).isEmpty();
    }

    @Test
    void goodFilesThatSayElseAreNamedByTheirRevisionWithTheWayToLoadThem() {
        Revision found =
                folder.cell("prices.csv", 2, "price", "47.01").delivery().revision();

        assertThat(warning()).contains("""
                        The service keeps catalogue %s, offers %s.
                        The files in %s say something else, %s, offers %s, and were passed over.
                        To load the files, stop the service, remove its database (data/, unless it was put elsewhere) and start it anew.""".formatted(kept.fit(), kept.offers(), path, found.fit(), found.offers()));
    }

    static Stream<Arguments> brokenFiles() {
        return Stream.of(
                Arguments.of(change(files -> files.cell("stock.csv", 2, "on_hand", "-1")), "stock.csv line 2, on_hand"),
                Arguments.of(change(files -> files.with("stock.csv", "torn")), "has 1 cells"),
                Arguments.of(change(files -> files.text("stock.csv", text -> "")), "stock.csv: has no line"),
                Arguments.of(change(files -> files.bytes("stock.csv", new byte[] {-1})), "stock.csv: is not UTF-8"),
                Arguments.of(change(files -> files.remove("stock.csv")), "stock.csv: is missing"));
    }

    @ParameterizedTest
    @MethodSource("brokenFiles")
    void brokenFilesAreToldOfAndToBePutRightFirst(UnaryOperator<Folder> broken, String told) {
        folder = broken.apply(folder);

        assertThat(warning().orElseThrow())
                .startsWith("The service keeps catalogue %s, offers %s.\n".formatted(kept.fit(), kept.offers()))
                .contains(told, "Put that right first.\nTo load the files,")
                .doesNotContain("say something else");
    }

    @Test
    void aFolderThatIsNotThereIsToldOfFileByFile() {
        Path none = path.resolve("none");

        assertThat(Delivery.unlike(kept, none).orElseThrow().passedOver(kept, none))
                .contains("in " + none, "engines.csv: is missing", "withdrawn.csv: is missing");
    }

    private static UnaryOperator<Folder> change(UnaryOperator<Folder> change) {
        return change;
    }

    private Optional<String> warning() {
        return Delivery.unlike(kept, path).map(files -> files.passedOver(kept, path));
    }
}
