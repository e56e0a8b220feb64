package org.borewright.page.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.util.Base64;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.borewright.api.problem.ProblemException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CodeTest {

    @ParameterizedTest
    @ValueSource(strings = {"http://127.0.0.1:8080/orders/7", "https://shop.example/orders/999999999999999999"})
    void saysItsAddressAsAPictureAndAsAnImage(String address) throws IOException {
        Code code = Code.of(address);

        assertThat(CodeReader.read(CodeReader.drawn(code.path(), code.size()))).isEqualTo(address);
        assertThat(CodeReader.read(ImageIO.read(
                        new ByteArrayInputStream(Base64.getDecoder().decode(code.png())))))
                .isEqualTo(address);
    }

    /** Four modules of white all around, as the standard asks. */
    @Test
    void standsInItsQuietZone() {
        Code code = Code.of("http://127.0.0.1:8080/orders/7");
        BufferedImage drawn = CodeReader.drawn(code.path(), code.size());
        for (int y = 0; y < code.size(); y++) {
            for (int x = 0; x < code.size(); x++) {
                boolean dark = (drawn.getRGB(x * CodeReader.DOTS, y * CodeReader.DOTS) & 0xFFFFFF) == 0;
                boolean outside = Math.min(Math.min(x, y), code.size() - 1 - Math.max(x, y)) < 4;
                assertThat(dark && outside).as("%s, %s", x, y).isFalse();
            }
        }
        assertThat(code.path()).startsWith("M4 4h7v1h-7z");
    }

    @ParameterizedTest(name = "set {0}, asked {1}: {2}")
    @CsvSource({
        ", http://127.0.0.1:8080/, http://127.0.0.1:8080",
        "https://shop.example, http://127.0.0.1:8080/, https://shop.example",
        "https://shop.example/engines//, http://127.0.0.1:8080/, https://shop.example/engines",
    })
    void leadsToWhereTheShopIsReached(String set, URI asked, String site) {
        assertThat(BenchCard.site(Optional.ofNullable(set), asked)).isEqualTo(site);
    }

    @Test
    void anAddressLongerThanAnyHostIsRefused() {
        assertThat(BenchCard.site(Optional.empty(), URI.create("http://" + "a".repeat(293))))
                .hasSize(300);
        assertThatThrownBy(() -> BenchCard.site(Optional.empty(), URI.create("http://" + "a".repeat(294))))
                .isInstanceOf(ProblemException.class);
    }
}
