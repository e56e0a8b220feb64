package org.borewright.page.bench.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.page.bench.paper.Answer;
import org.junit.jupiter.api.Test;

class PairingTest {

    @Test
    void eachPistonIsJoinedToItsHoleAndASpareOneStandsAlone() {
        Pairing pairing = Pairing.of(Answer.of("""
                {"holes":[{"cylinder":"front","tag":"C"},{"cylinder":"rear"}],
                 "pistons":[{"tag":"A"},{"tag":"B"},{"tag":"C"}],"spare":["A","B"]}"""));

        assertThat(pairing.width()).isEqualTo(330);
        assertThat(pairing.joins()).containsExactly(new Pairing.Join(275, 55));
        assertThat(pairing.holes())
                .containsExactly(new Pairing.Spot("front", 55, true), new Pairing.Spot("rear", 165, false));
        assertThat(pairing.pistons()).extracting(Pairing.Spot::joined).containsExactly(false, false, true);
        assertThat(pairing.says()).isEqualTo("hole front: piston C, hole rear: no piston yet");
    }
}
