package org.borewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The sources keep the {@link Form}, and each of its limits is seen to let pass what is on it and to refuse what is beyond. */
class SourceFormTest {

    private static List<Source> sources;

    @BeforeAll
    static void readTheSources() throws IOException {
        sources = Source.below(Path.of("src", "main", "java"));
    }

    @ParameterizedTest
    @EnumSource
    void theSourcesKeepTheForm(Form form) {
        assertThat(form.offences(sources)).isEmpty();
    }

    @Test
    void aRoomThatMayBeLargeIsLarge() {
        assertThat(Form.Rooms.MAY_BE_LARGE.keySet())
                .allSatisfy(room -> assertThat(Form.files(sources))
                        .hasEntrySatisfying(room, files -> assertThat(files).isGreaterThan(15)));
    }

    @ParameterizedTest
    @CsvSource({"400, 0", "401, 1"})
    void aFileIsRefusedFrom401Lines(int lines, int refused) throws IOException {
        String source = "class Long {" + "\n".repeat(lines - 1) + "}";
        assertThat(offences(Form.FILES_ARE_SHORT, "api", source)).hasSize(refused);
    }

    @ParameterizedTest
    @CsvSource({"15, api.match, 0", "16, api.match, 1", "16, fit, 0"})
    void aRoomIsRefusedFrom16FilesUnlessItMayBeLarge(int files, String room, int refused) throws IOException {
        List<Planted> planted = IntStream.range(0, files)
                .mapToObj(i -> Planted.in("org.borewright." + room, "class File%s {}".formatted(i)))
                .toList();
        assertThat(Form.ROOMS_ARE_SMALL.offences(Source.read(planted))).hasSize(refused);
    }

    @ParameterizedTest
    @CsvSource({"40, 0", "41, 1"})
    void aBodyIsRefusedFrom41Lines(int lines, int refused) throws IOException {
        String source = "class Tall { int of(int a)\n{" + "\n".repeat(lines - 1) + "} }";
        assertThat(offences(Form.BODIES_ARE_SHORT, "api", source)).hasSize(refused);
    }

    @ParameterizedTest
    @CsvSource({"5, 0", "6, 1"})
    void aMethodIsRefusedFromSixParameters(int parameters, int refused) throws IOException {
        String list = String.join(", ", Collections.nCopies(parameters, "int a"));
        assertThat(offences(Form.PARAMETERS_ARE_FEW, "api", "class Wide { int of(%s) {} }".formatted(list)))
                .hasSize(refused);
        assertThat(offences(Form.PARAMETERS_ARE_FEW, "api", "record Wide(%s) { Wide {} }".formatted(list)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 | fit                | public class Bare {}
            1 | kit.choice         | public record Bare(int a) {}
            1 | measure            | /** Said. */ public class Half { public int of(int a) { return a; } }
            1 | catalog            | /** Said. */ public class Half { public Half(int a) {} }
            1 | measure.survey     | /** Said. */ public class Half { public enum Bare {} }
            1 | fit                | /** Said. */ public interface Half { int of(int a); } class Other {}
            0 | fit                | class Within {}
            0 | fit                | class Within { public int of(int a) { return a; } }
            0 | kit                | /** Said. */ public class Said { int of(int a) { return a; } }
            0 | kit                | /** Said. */ public class Said { @Override public int hashCode() { return 0; } }
            0 | kit                | /** Said. */ public record Said(int a) { public int a() { return a; } public Said {} }
            0 | kit                | /** Said. */ public class Said { /** Said. */ public int of(int a) { return a; } }
            0 | catalog.store      | public class Technique { public int of(int a) { return a; } }
            0 | api                | public class Technique {}
            """)
    void whatTheHeartHandsOutIsRefusedWithoutJavadoc(int refused, String room, String source) throws IOException {
        assertThat(offences(Form.THE_HEART_IS_EXPLAINED, room, source)).hasSize(refused);
    }

    private static List<String> offences(Form form, String room, String source) throws IOException {
        return form.offences(Source.read(List.of(Planted.in("org.borewright." + room, source))));
    }
}
