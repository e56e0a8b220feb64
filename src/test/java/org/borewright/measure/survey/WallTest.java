package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class WallTest {

    @Test
    void ofAnUnknownWallNothingIsFilledIn() {
        assertThat(Wall.UNKNOWN)
                .isEqualTo(new Wall(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false));
    }
}
