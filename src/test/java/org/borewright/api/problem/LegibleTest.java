package org.borewright.api.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LegibleTest {

    @ParameterizedTest(name = "U+{0}")
    @CsvSource({
        "0000, a control character",
        "001F, a control character",
        "007F, a control character",
        "009F, a control character",
        "D800, half of a character",
        "DFFF, half of a character",
        "202A, a mark that turns the direction of writing",
        "202E, a mark that turns the direction of writing",
        "2066, a mark that turns the direction of writing",
        "2069, a mark that turns the direction of writing",
    })
    void whatCannotBeSeenIsNamedWithItsPlace(String code, String what) {
        String character = Character.toString(Integer.parseInt(code, 16));

        assertThat(Legible.flaw("a\uD83D\uDCA5" + character + "b"))
                .contains("Character 3 is U+" + code + ", " + what + ".");
    }

    /** The neighbours of those above, and what scripts of the world are written with. */
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x20, 0x7E, 0xA0, 0x301, 0x5D0, 0x61C, 0x200D, 0x200E, 0x200F, 0x2029, 0x202F, 0x2065, 0x206A, 0xD7FF,
                0xE000, 0xFFFD, 0xFFFF, 0x1F4A5, 0x10FFFF
            })
    void everyOtherCharacterIsKept(int character) {
        assertThat(Legible.flaw("a" + Character.toString(character))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"one\ntwo", "one\r\ntwo", "one\ttwo"})
    void linesMayBreakWhereSeveralAreMeant(String text) {
        assertThat(Legible.flawOfLines(text)).isEmpty();
        assertThat(Legible.flaw(text))
                .hasValueSatisfying(flaw -> assertThat(flaw).contains("Character 4"));
        assertThat(Legible.flawOfLines(text + "\u202E")).isPresent();
    }

    @Test
    void noCharacterIsCutInHalf() {
        assertThat(Legible.first(2, "a\uD83D\uDCA5b")).isEqualTo("a\uD83D\uDCA5…");
        assertThat(Legible.first(3, "a\uD83D\uDCA5b")).isEqualTo("a\uD83D\uDCA5b");
    }
}
