package org.borewright.order.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** SHA-256, and texts that cannot run into each other. */
class DigestTest {

    /** FIPS 180-2, appendix B: the messages of one block and of two; the digest of nothing is known likewise. */
    @ParameterizedTest
    @CsvSource({
        "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq, 248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
        "'', e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    })
    void itIsSha256(String message, String digest) {
        assertThat(Digest.hex(message.getBytes(StandardCharsets.US_ASCII))).isEqualTo(digest);
    }

    @Test
    void aCharacterMovedToTheNextTextMakesAnother() {
        assertThat(new Digest().text("ab").text("c").hex())
                .isNotEqualTo(new Digest().text("a").text("bc").hex());
    }

    @Test
    void nothingIsNoText() {
        String nothing = new Digest().maybe(null).hex();

        assertThat(nothing).isEqualTo(new Digest().text(null).hex());
        assertThat(nothing).isNotEqualTo(new Digest().text("").hex());
        assertThat(nothing).isNotEqualTo(new Digest().text("null").hex());
    }

    @Test
    void whateverThereIsGoesInAsText() {
        assertThat(new Digest().maybe(53).hex())
                .isEqualTo(new Digest().text("53").hex());
    }
}
