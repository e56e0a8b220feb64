package org.borewright.page.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.page.Form;
import org.borewright.page.bench.paper.Answer;
import org.borewright.page.bench.paper.Folder;
import org.borewright.page.bench.paper.Recalled;
import org.borewright.page.bench.sheet.Carried;
import org.borewright.page.bench.sheet.FormerSheet;
import org.borewright.page.bench.sheet.Sheet;

/**
 * What is known of honed holes before they are judged.
 *
 * @param plan the pairing that was confirmed; holds nothing before
 * @param form of the judgement: as it was sent last, or begun from the pairing
 * @param judged what the last judgement of this pairing said; empty before
 */
record Honed(Answer plan, Form form, Optional<Answer> judged) {

    /** The field in which whoever fitted the rings says whether they are filed. */
    static final String RINGS_FILED = "truth:/ringsFiled";

    /** Of the papers of an order. */
    static Honed of(Folder folder, EngineAnswer engine) {
        List<String> cylinders = SurveySheets.cylinders(engine);
        Optional<PaperAnswer> paired = folder.last("bench").filter(paper -> folder.isConfirmed());
        Answer plan = paired.map(paper -> Answer.of(paper)).orElse(new Answer(null));
        Optional<PaperAnswer> last = folder.last("finish")
                .filter(paper ->
                        paired.filter(pairing -> paper.id() > pairing.id()).isPresent());
        Optional<Form> sent = last.flatMap(paper -> FormerSheet.of(cylinders, Recalled.of(paper)))
                .map(form -> form.only(name -> !name.equals("/date")));
        return new Honed(
                plan,
                sent.or(() -> paired.map(paper -> begun(cylinders, Recalled.of(paper), plan)
                                .with(
                                        "/ringSet",
                                        folder.ringSets().stream().findFirst().orElse(""))))
                        .orElseGet(() -> Sheet.blank(cylinders)),
                last.map(paper -> Answer.of(paper)));
    }

    /** The pistons as measured, each for the hole it was paired with, and a sheet on which nothing is read. */
    private static Form begun(List<String> cylinders, Form pairing, Answer plan) {
        Form form = Carried.fromPairing(pairing)
                .with("/size", plan.at("size").at("size").text().orElse(""))
                .with("/design", plan.at("size").at("design").text().orElse(""));
        for (Map.Entry<String, String> field : Sheet.blank(cylinders).fields().entrySet()) {
            form = form.with(field.getKey(), field.getValue());
        }
        for (Answer hole : plan.at("holes").items()) {
            int index = cylinders.indexOf(hole.at("cylinder").text().orElse(""));
            form = form.with(
                    "/cylinders/" + index + "/tag", hole.at("tag").text().orElse(""));
        }
        return form;
    }

    boolean isPlanned() {
        return plan.told() != null;
    }

    /** What was planned for a hole. */
    Answer planned(String cylinder) {
        return plan.at("holes").items().stream()
                .filter(hole ->
                        hole.at("cylinder").text().filter(cylinder::equals).isPresent())
                .findFirst()
                .orElse(new Answer(null));
    }

    /**
     * Whether an answer tells of a ring that must be filed for its hole.
     *
     * @param sold ring sets, of which no other runs; empty where that is not known
     */
    static boolean isToBeFiled(Answer told, List<String> sold) {
        return told.at("holes").items().stream()
                .flatMap(hole -> hole.at("ringGaps").items().stream())
                .filter(gap -> sold.isEmpty()
                        || gap.at("ringSet").text().map(sold::contains).orElse(true))
                .anyMatch(gap -> gap.at("fileTo").told() != null);
    }

    /** The ring sets that go with its pistons. */
    List<String> ringSets() {
        return plan.at("holes").items().stream()
                .flatMap(hole -> hole.at("ringGaps").items().stream())
                .flatMap(gap -> gap.at("ringSet").text().stream())
                .distinct()
                .toList();
    }
}
