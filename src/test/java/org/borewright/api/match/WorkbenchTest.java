package org.borewright.api.match;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.Instant;
import org.borewright.api.match.answer.Stencils;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Stocktaking;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.api.Test;

/** Stencils are cut when somebody first asks in their unit, and once. */
class WorkbenchTest {

    private final CountingMapper json = new CountingMapper();
    private final Workbench bench = bench();

    private static final class CountingMapper extends ObjectMapper {

        private static final long serialVersionUID = 1L;

        private int written;

        @Override
        public String writeValueAsString(Object value) throws JsonProcessingException {
            written++;
            return super.writeValueAsString(value);
        }
    }

    private Workbench bench() {
        Delivery delivery = Delivery.from(Path.of("src/test/resources/catalog-small"));
        Catalogue small = Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
        return Workbench.lay(FitTable.of(small.shelf("HALVERN-T2").orElseThrow()), small.offers(), json);
    }

    @Test
    void nothingIsCutBeforeAnybodyAsks() {
        assertThat(json.written).isZero();
    }

    @Test
    void eachUnitIsCutWhenItIsFirstAskedForAndNotAgain() {
        Stencils millimetres = bench.in(LengthUnit.MILLIMETRE);
        int inOneUnit = json.written;
        assertThat(inOneUnit).isPositive();

        assertThat(bench.in(LengthUnit.MILLIMETRE)).isSameAs(millimetres);
        assertThat(json.written).isEqualTo(inOneUnit);

        assertThat(bench.in(LengthUnit.INCH)).isNotSameAs(millimetres);
        assertThat(json.written).isEqualTo(2 * inOneUnit);
    }
}
