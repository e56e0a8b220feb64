package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;
import static org.borewright.fit.Shapes.worth;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoneOnlyTest {

    /** The largest reading and a little more, 0.005 mm by common practice; a defect is cut on both sides. */
    @ParameterizedTest
    @CsvSource({
        "70.010,    0,        0.005, 70.015",
        "70.010,    0.010,    0.005, 70.035",
        "70.010001, 0.000001, 0.005, 70.015003",
        "70.010,    0.010,    0.008, 70.038",
        "70.010,    0,        0,     70.010",
    })
    void aHoneFollowsTheHole(Length largest, Length defect, Length beyond, Length cleanUp) {
        assertThat(HoneOnly.cleanUp(largest, defect, beyond)).isEqualTo(cleanUp);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0.005, 70.020000, CERTAIN
            0.005, 70.019999, POSSIBLE
            0.005, 70.015000, POSSIBLE
            0.005, 70.010000, POSSIBLE
            0.005, 70.009999, NO
            0,     70.015000, CERTAIN
            0,     70.014999, NO
            """)
    void isCertainFromTheUncertaintyUpAndNoBelowIt(Length uncertainty, Length finish, Certainty certainty) {
        assertThat(HoneOnly.at(finish, mm("70.015"), uncertainty)).isEqualTo(certainty);
    }

    @Property
    boolean moreWearNeverMakesAHoneMoreCertain(
            @ForAll @LongRange(min = 69_990_000, max = 70_050_000) long largest,
            @ForAll @LongRange(min = 0, max = 30_000) long more,
            @ForAll @LongRange(min = 70_000_000, max = 70_050_000) long finish,
            @ForAll @LongRange(min = 0, max = 10_000) long uncertainty) {
        Certainty before = HoneOnly.at(
                nm(finish), HoneOnly.cleanUp(nm(largest), Length.ZERO, CommonPractice.honeCleanUp()), nm(uncertainty));
        Certainty after = HoneOnly.at(
                nm(finish),
                HoneOnly.cleanUp(nm(largest + more), Length.ZERO, CommonPractice.honeCleanUp()),
                nm(uncertainty));
        return before.and(after) == after;
    }

    @Property
    boolean theCheckPassesExactlyWhereTheHoneIsCertain(
            @ForAll @LongRange(min = 69_990_000, max = 70_050_000) long cleanUp,
            @ForAll @LongRange(min = 70_000_000, max = 70_050_000) long finish,
            @ForAll @LongRange(min = 0, max = 10_000) long uncertainty) {
        boolean certain = HoneOnly.at(nm(finish), nm(cleanUp), nm(uncertainty)) == Certainty.CERTAIN;
        return certain
                == (CleanUpCheck.byHone(nm(cleanUp), nm(finish), worth(nm(uncertainty)))
                                .outcome()
                        == Outcome.IN);
    }
}
