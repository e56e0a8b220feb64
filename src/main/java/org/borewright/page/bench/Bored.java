package org.borewright.page.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.borewright.measure.LengthUnit;
import org.borewright.page.Form;
import org.borewright.page.bench.paper.Answer;
import org.borewright.page.bench.paper.Folder;

/** What the bar was to reach in the holes of a confirmed order: the wall that an anew measured hole was last finished to. */
final class Bored {

    private Bored() {}

    /** A form on which that stands for every hole that was to be bored, in its unit and to the step of the bench card. */
    static Form to(Form form, List<String> cylinders, Folder folder) {
        Form told = form;
        LengthUnit unit =
                form.typed("/unit").equals(LengthUnit.INCH.symbol()) ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
        List<Answer> holes = folder.last("bench")
                .map(paper -> Answer.of(paper).at("holes").items())
                .orElse(List.of());
        for (Answer hole : holes) {
            int index = cylinders.indexOf(hole.at("cylinder").text().orElse(""));
            Optional<String> bar = hole.at("boreTo")
                    .at("nm")
                    .text()
                    .filter(nanometres -> index >= 0)
                    .map(nanometres -> in(unit, nanometres));
            if (bar.isPresent()) {
                told = told.with("number:/cylinders/" + index + "/lastFinish", bar.get());
            }
        }
        return told;
    }

    private static String in(LengthUnit unit, String nanometres) {
        return new BigDecimal(nanometres)
                .divide(BigDecimal.valueOf(unit.nanometres()), unit.gaugeDecimals(), RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
