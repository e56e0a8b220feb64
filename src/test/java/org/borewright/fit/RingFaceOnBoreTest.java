package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.fit.shape.BoreSurface;
import org.borewright.fit.shape.RingFace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingFaceOnBoreTest {

    /** Common practice: no chrome ring in chrome, nor on bare silicon. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            FACE,       IRON, CHROME, NICKEL, SILICON
            PLAIN,      IN,   IN,     IN,     IN
            CHROME,     IN,   OUT,    IN,     OUT
            NITRIDED,   IN,   IN,     IN,     IN
            MOLYBDENUM, IN,   IN,     IN,     IN
            """)
    void likeDoesNotRunOnLike(RingFace face, Outcome iron, Outcome chrome, Outcome nickel, Outcome silicon) {
        assertThat(on(BoreSurface.IRON, face)).isEqualTo(iron);
        assertThat(on(BoreSurface.CHROME, face)).isEqualTo(chrome);
        assertThat(on(BoreSurface.NICKEL, face)).isEqualTo(nickel);
        assertThat(on(BoreSurface.SILICON, face)).isEqualTo(silicon);
    }

    @ParameterizedTest
    @CsvSource({
        "CHROME, CHROME, chrome on chrome, a face that suits chrome",
        "PLAIN, SILICON, plain on silicon, a face that suits silicon"
    })
    void theAnswerNamesBoth(RingFace face, BoreSurface surface, String found, String asked) {
        Suitability check = RingFaceOnBore.check("top", face, surface);
        assertThat(check.found()).isEqualTo(found);
        assertThat(check.asked()).isEqualTo(asked);
        assertThat(check.place()).isEqualTo("top");
        assertThat(check.rule()).isEqualTo(Rule.RING_FACE);
    }

    private static Outcome on(BoreSurface surface, RingFace face) {
        return RingFaceOnBore.check("top", face, surface).outcome();
    }
}
