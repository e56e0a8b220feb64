package org.borewright.page.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.lookup.gauge.GaugesAnswer;
import org.borewright.api.order.OrderMoves;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.api.problem.ProblemException;
import org.borewright.kit.bench.finish.Judgement;
import org.borewright.page.Entry;
import org.borewright.page.Form;
import org.borewright.page.Page;
import org.borewright.page.SentForm;
import org.borewright.page.bench.paper.Answer;
import org.borewright.page.bench.paper.Folder;
import org.borewright.page.bench.paper.Folders;
import org.borewright.page.bench.paper.OfOrder;
import org.borewright.page.bench.picture.Drawing;
import org.borewright.page.bench.picture.Profile;
import org.borewright.page.bench.picture.SizeLine;
import org.borewright.page.bench.sheet.Carried;
import org.borewright.page.bench.sheet.PistonOnSheet;
import org.borewright.page.bench.sheet.Queried;
import org.borewright.page.bench.sheet.Sheet;
import org.jspecify.annotations.Nullable;

/** Honed holes: read, judged with the pistons they were honed for, and signed where all is proven. */
@Path("/orders/{order}/finish")
@Produces(Page.MEDIA_TYPE)
public class Finishing {

    /** What stands in a field that is seen, besides the holes; whatever else the question has goes along unseen. */
    private static final List<String> SEEN =
            List.of("number:/temperature", "/gauge/name", "truth:/roomTemperature", Honed.RINGS_FILED, "/ringSet");

    private final Folders folders;
    private final OrderSurvey surveys;
    private final SurveySheets sheets;
    private final OrderMoves moves;

    Finishing(Folders folders, OrderSurvey surveys, SurveySheets sheets, OrderMoves moves) {
        this.folders = folders;
        this.surveys = surveys;
        this.sheets = sheets;
        this.moves = moves;
    }

    /**
     * The page.
     *
     * @param order that is judged
     * @param engine that it is about
     * @param sheet with the readings of its holes
     * @param entry the same as a form
     * @param tags of the pistons in hand
     * @param ringSets that go with them; one or none need not be chosen
     * @param filed whether it is asked if the rings are filed, for some of them must be
     * @param gauges of the register
     * @param unseen fields that go along
     * @param queried by the name of a field, what is asked about its reading
     * @param profiles of the holes, against their windows
     * @param open whether the order can be judged
     * @param judged the answer; absent before anything was asked
     * @param passes whether it says that all is proven, so that nothing is left but to sign
     */
    @CheckedTemplate(basePath = "page")
    record FinishPage(
            OrderAnswer order,
            EngineAnswer engine,
            Sheet sheet,
            Entry entry,
            List<String> tags,
            List<String> ringSets,
            boolean filed,
            GaugesAnswer gauges,
            Map<String, String> unseen,
            Map<String, String> queried,
            List<Profile> profiles,
            boolean open,
            @Nullable Object judged,
            boolean passes)
            implements TemplateInstance {}

    /** A sheet for the holes with their pistons as paired; after a judgement with what it said. */
    @GET
    public Response sheet(@BeanParam OfOrder of) throws JsonProcessingException {
        Folder folder = folders.open(of);
        if (folder.isRingsOnly()) {
            return surveys.shown(folder, Occasion.FINISH);
        }
        Honed honed = Honed.of(folder, sheets.engine(folder.order().engine()));
        return page(folder, honed, Entry.of(folder.asItStands(honed.form())), honed.judged());
    }

    /** Judges the holes, and signs what passes where that is asked for. */
    @POST
    @Consumes(Form.MEDIA_TYPE)
    public Response sent(@BeanParam OfOrder of, String sent) throws JsonProcessingException {
        Folder folder = folders.open(of);
        Form form = Form.read(sent);
        if (folder.isRingsOnly()) {
            return surveys.kept(folder, Occasion.FINISH, form);
        }
        EngineAnswer engine = sheets.engine(folder.order().engine());
        Honed honed = Honed.of(folder, engine);
        Sheet sheet = new Sheet(SurveySheets.cylinders(engine), form);
        Optional<Sheet> reshaped = sheet.reshaped(form.typed("then"));
        if (reshaped.isPresent()) {
            return page(folder, honed, Entry.of(reshaped.get().form()), Optional.empty());
        }
        Form asked = sheet.asked();
        try {
            if (form.typed("then").equals("sign")) {
                moves.finish(new SentForm(of.order(), "finish", asked), asked.body());
                return Page.seeOther("/orders/" + of.order() + "/finish");
            }
            return page(folder, honed, Entry.of(form), Optional.of(Answer.of(moves.judge(of.order(), asked.body()))));
        } catch (ProblemException refused) {
            return page(
                    folder,
                    honed,
                    Entry.of(
                            form,
                            sheet.inWords(refused.problem()),
                            folder.order().version()),
                    Optional.empty());
        }
    }

    /** Of what was judged: it tells of no rings but those that were said to be in, whichever were sold. */
    private static boolean isToBeFiled(Answer judged) {
        return Honed.isToBeFiled(judged, List.of());
    }

    private Response page(Folder folder, Honed honed, Entry entry, Optional<Answer> judged) {
        EngineAnswer engine = sheets.engine(folder.order().engine());
        Form form = entry.form();
        Sheet sheet = new Sheet(SurveySheets.cylinders(engine), form);
        return Page.of(
                entry.status(),
                new FinishPage(
                        folder.order(),
                        engine,
                        sheet,
                        entry,
                        PistonOnSheet.of(form).stream()
                                .map(piston -> form.typed(piston.tag()))
                                .toList(),
                        honed.ringSets(),
                        !form.typed(Honed.RINGS_FILED).isEmpty()
                                || Honed.isToBeFiled(honed.plan(), folder.ringSets())
                                || judged.filter(Finishing::isToBeFiled).isPresent(),
                        sheets.gauges(),
                        Carried.unseen(form, name -> SEEN.contains(name) || name.contains("/cylinders/")),
                        judged.map(told -> Queried.in(told, sheet)).orElse(Map.of()),
                        Drawing.ofEach(
                                sheet,
                                sheet.cylinders().stream()
                                        .map(cylinder -> SizeLine.ofWindow(honed.planned(cylinder)))
                                        .toList()),
                        folder.may("finish") && honed.isPlanned(),
                        judged.map(Answer::told).orElse(null),
                        judged.filter(told -> told.says("judgement", Judgement.PASS.label()))
                                .isPresent()));
    }
}
