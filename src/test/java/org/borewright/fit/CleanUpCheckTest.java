package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.named;
import static org.borewright.fit.Shapes.nm;
import static org.borewright.fit.Shapes.worth;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CleanUpCheckTest {

    /** Worst 70.260, U 0.005: the reading counts twice, so the guard is 0.010; the gauge that settles it is worth half the margin. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            70.270000, IN,        10000,
            70.269999, TOO_CLOSE, 9999,   0.004999
            70.262000, TOO_CLOSE, 2000,   0.001
            70.260001, TOO_CLOSE, 1,
            70.260000, TOO_CLOSE, 0,
            70.250001, TOO_CLOSE, -9999,  0.004999
            70.250000, OUT,       -10000,
            """)
    void byTheBarTheReadingCountsTwice(Length barSize, Outcome outcome, long margin, Length settledWithin) {
        Comparison check = CleanUpCheck.byBar(mm("70.260"), barSize, worth(mm("0.005")));
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.margin()).isEqualTo(margin);
        assertThat(named(check)).isEqualTo(Optional.ofNullable(settledWithin));
        assertThat(check.rule()).isEqualTo(Rule.CLEAN_UP);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            70.120000, IN,        5000,
            70.119999, TOO_CLOSE, 4999,  0.004999
            70.115000, TOO_CLOSE, 0,
            70.110001, TOO_CLOSE, -4999, 0.004999
            70.110000, OUT,       -5000,
            """)
    void byTheHoneItCountsOnce(Length finish, Outcome outcome, long margin, Length settledWithin) {
        Comparison check = CleanUpCheck.byHone(mm("70.115"), finish, worth(mm("0.005")));
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.margin()).isEqualTo(margin);
        assertThat(named(check)).isEqualTo(Optional.ofNullable(settledWithin));
        assertThat(check.place()).isEqualTo("by the hone");
    }

    @Property
    boolean theCheckPassesExactlyWhereTheSizeIsCertain(
            @ForAll @LongRange(min = 70_000_000, max = 70_100_000) long worst,
            @ForAll @LongRange(min = 70_000_000, max = 70_100_000) long bar,
            @ForAll @LongRange(min = 0, max = 20_000) long uncertainty) {
        Length u = nm(uncertainty);
        CleanUp cleanUp = new CleanUp(Optional.of(nm(worst)), Optional.empty(), Optional.empty(), u.doubled(), u);
        boolean certain = cleanUp.at(nm(bar), Length.ZERO) == Certainty.CERTAIN;
        return certain == (CleanUpCheck.byBar(nm(worst), nm(bar), worth(u)).outcome() == Outcome.IN);
    }
}
