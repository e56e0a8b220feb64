package org.borewright.page.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.borewright.api.lookup.engine.EngineAnswer.SizeAnswer;
import org.borewright.api.order.answer.BlockAnswer.LifeAnswer;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.page.block.LifePicture.Bar;
import org.borewright.page.block.LifePicture.Scale;
import org.borewright.page.block.LifePicture.SizeLine;
import org.junit.jupiter.api.Test;

/** The picture goes from 14 at the top to 186 at the bottom, and from 14 at the left to 232. */
class LifePictureTest {

    private static final List<SizeAnswer> SIZES = List.of(
            size("standard", 70_000_000, false), size("+1.00", 71_000_000, false), size("+2.00", 72_000_000, true));

    @Test
    void aLargerHoleStandsHigherAndALaterVisitFurtherRight() {
        List<LifeAnswer> life =
                List.of(visit("surveyed", 70_000_000, 70_250_000), visit("finished", 70_500_000, 70_500_000));

        LifePicture picture = LifePicture.of(life, Scale.of(life, SIZES));

        assertThat(picture.visits()).containsExactly(new Bar(1, 68, 143, 43, false), new Bar(2, 177, 100, 3, true));
        assertThat(picture.path()).isEqualTo("68,143 177,100");
    }

    @Test
    void aLineStandsAtEachSizeThatIsOffered() {
        List<LifeAnswer> life = List.of(visit("surveyed", 70_000_000, 70_250_000));

        assertThat(LifePicture.of(life, Scale.of(life, SIZES)).sizes())
                .containsExactly(new SizeLine(186, "standard"), new SizeLine(14, "+1.00"));
    }

    @Test
    void aHoleBeyondEverySizeIsStillInThePicture() {
        List<LifeAnswer> life = List.of(visit("surveyed", 69_900_000, 71_100_000));

        LifePicture picture = LifePicture.of(life, Scale.of(life, SIZES));

        assertThat(picture.visits()).containsExactly(new Bar(1, 123, 14, 172, false));
        assertThat(picture.sizes()).extracting(SizeLine::y).containsExactly(171L, 28L);
    }

    @Test
    void aVisitWithoutReadingsKeepsItsNumberAndHasNoBar() {
        List<LifeAnswer> life = List.of(unmeasured(), visit("surveyed", 70_000_000, 70_000_000));

        assertThat(LifePicture.of(life, Scale.of(life, SIZES)).visits())
                .extracting(Bar::no)
                .containsExactly(2);
        assertThat(LifePicture.of(List.of(unmeasured()), Scale.of(List.of(unmeasured()), SIZES)))
                .isNull();
    }

    @Test
    void withoutSizesAndWithOneFigureItStandsInTheMiddle() {
        List<LifeAnswer> life = List.of(visit("surveyed", 70_000_000, 70_000_000));

        assertThat(LifePicture.of(life, Scale.of(life, List.of())).visits())
                .containsExactly(new Bar(1, 123, 100, 3, false));
    }

    private static LifeAnswer visit(String what, long smallest, long largest) {
        return new LifeAnswer(
                "B-1",
                "1",
                null,
                1,
                Instant.EPOCH,
                "Ada",
                what,
                "standard",
                shown(smallest),
                shown(largest),
                null,
                null,
                "");
    }

    private static LifeAnswer unmeasured() {
        return new LifeAnswer("B-1", "1", null, 1, Instant.EPOCH, "Ada", "surveyed", null, null, null, null, null, "");
    }

    private static SizeAnswer size(String label, long least, boolean furtherWork) {
        return new SizeAnswer(label, shown(0), new ShownLimits(shown(least), shown(least + 20_000)), furtherWork, true);
    }

    private static ShownLength shown(long nanometres) {
        return new ShownLength(nanometres, nanometres);
    }
}
