package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeldDatabaseTest {

    @ParameterizedTest
    @CsvSource({
        "jdbc:h2:file:./data/borewright, ./data/borewright",
        "jdbc:h2:file:./data/borewright;USER=shop;PASSWORD=secret, ./data/borewright",
    })
    void aDatabaseIsNamedWithoutTheOptionsOfItsAddress(String address, String named) {
        assertThat(HeldDatabase.named(address)).isEqualTo(named);
    }
}
