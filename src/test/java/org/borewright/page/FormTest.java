package org.borewright.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.borewright.api.problem.ProblemException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "%2Fengine=OSTRAVEL-4 | {\"engine\":\"OSTRAVEL-4\"}",
                "/stamp=020 | {\"stamp\":\"020\"}",
                "number:/temperature=20 | {\"temperature\":20}",
                "number:/diameter=77.370 | {\"diameter\":77.370}",
                "number:/diameter=+77.370++ | {\"diameter\":77.370}",
                "number:/diameter=3.0462999999999999991 | {\"diameter\":3.0462999999999999991}",
                "number:/skim=.002 | {\"skim\":0.002}",
                "number:/skim=-.5 | {\"skim\":-0.5}",
                "number:/skim=. | {\"skim\":\".\"}",
                "number:/skim=5. | {\"skim\":\"5.\"}",
                "number:/skim= | {}",
                "number:/skim=-0.1 | {\"skim\":-0.1}",
                "number:/diameter=77%2C37 | {\"diameter\":\"77,37\"}",
                "number:/diameter=077.37 | {\"diameter\":\"077.37\"}",
                "number:/diameter=1e3 | {\"diameter\":\"1e3\"}",
                "number:/diameter=NaN | {\"diameter\":\"NaN\"}",
                "truth:/mayWait=true | {\"mayWait\":true}",
                "truth:/mayWait=yes | {\"mayWait\":\"yes\"}",
                "/a=&number:/b=++&/c=1 | {\"c\":\"1\"}",
                "/a=1&/a=2 | {\"a\":\"2\"}",
                "/presentSize/size=standard&/presentSize/knownFrom=record | {\"presentSize\":{\"size\":\"standard\",\"knownFrom\":\"record\"}}",
                "number:/cylinders/1/diameter=77.3&/cylinders/0/cylinder=1 | {\"cylinders\":[{\"cylinder\":\"1\"},{\"diameter\":77.3}]}",
                "number:/readings/1/1=5 | {\"readings\":[null,[null,5]]}",
                "/a~1b/m~0n=1 | {\"a/b\":{\"m~n\":\"1\"}}",
                "number:/readings/0/0=-&number:/readings/0/1=5&number:/readings/0/2=%E2%80%93 | {\"readings\":[[null,5,null]]}",
                "/notes=- | {\"notes\":\"-\"}",
                "by=Ada&key=1 | {}",
                "text:/notes= | {\"notes\":\"\"}",
                "/notes=a%0D%0Ab | {\"notes\":\"a\\nb\"}",
                "/notes=caf%C3%A9+%26+%22more%22 | {\"notes\":\"café & \\\"more\\\"\"}",
            })
    void aFilledFieldStandsAtItsPlaceAsTyped(String sent, String body) {
        assertThat(new String(Form.read(sent).body(), StandardCharsets.UTF_8)).isEqualTo(body);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/a=1&/a/b=2", "/a/b=1&/a/0=2", "/a/0=1&/a/b=2", "/0=1", "/a=%zz", "%=1"})
    void whatIsNoFormOfOursIsRefused(String sent) {
        assertThatThrownBy(() -> Form.read(sent).body()).isInstanceOf(ProblemException.class);
    }

    @Test
    void aPlaceDeeperThanAnyBodyGoesIsRefusedAndNoneOfTheirsIsSo() {
        assertThat(new String(Form.read("/a".repeat(12) + "=1").body(), StandardCharsets.UTF_8))
                .isEqualTo("{\"a\":".repeat(12) + "\"1\"" + "}".repeat(12));
        for (String sent : List.of(
                "/a".repeat(13) + "=1",
                "number:" + "/a".repeat(1_100) + "=1",
                "%2Fa".repeat(1_100) + "=1",
                "/0".repeat(100_000) + "=1")) {
            assertThatThrownBy(() -> Form.read(sent).body()).isInstanceOf(ProblemException.class);
        }
    }

    @Test
    void aPlaceFarOutIsNoPlaceOfAList() {
        assertThat(new String(Form.read("/a/100=1").body(), StandardCharsets.UTF_8))
                .isEqualTo("{\"a\":{\"100\":\"1\"}}");
    }

    @Test
    void whatWasTypedStaysAndIsFoundByItsPlace() {
        Form form = Form.read("number:/cylinders/0/diameter=77%2C37&by=Ada");

        assertThat(form.typed("number:/cylinders/0/diameter")).isEqualTo("77,37");
        assertThat(form.typed("nowhere")).isEmpty();
        assertThat(form.nameOf("/cylinders/0/diameter")).contains("number:/cylinders/0/diameter");
        assertThat(form.nameOf("by")).contains("by");
        assertThat(form.question()).containsOnlyKeys("number:/cylinders/0/diameter");
    }
}
