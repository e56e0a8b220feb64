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
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.kit.bench.Readiness;
import org.borewright.order.OrderHold;
import org.borewright.page.Entry;
import org.borewright.page.Form;
import org.borewright.page.Page;
import org.borewright.page.SentForm;
import org.borewright.page.bench.paper.Answer;
import org.borewright.page.bench.paper.Folder;
import org.borewright.page.bench.paper.Folders;
import org.borewright.page.bench.paper.OfOrder;
import org.borewright.page.bench.paper.Recalled;
import org.borewright.page.bench.picture.Pairing;
import org.borewright.page.bench.sheet.Carried;
import org.borewright.page.bench.sheet.PistonOnSheet;
import org.jspecify.annotations.Nullable;

/** Pistons in hand: measured, paired with the holes, and confirmed before anything is bored. */
@Path("/orders/{order}/confirm")
@Produces(Page.MEDIA_TYPE)
public class Confirming {

    private static final String LEFT_OUT = "left out";

    /** What stands in a field that is seen, besides the pistons; whatever else the question has goes along unseen. */
    private static final List<String> SEEN = List.of(
            "number:/temperature",
            "/gauge/name",
            "number:/pistonTemperature",
            "/pistonGauge/name",
            "/weighed",
            "/design",
            "number:/deckSkim");

    private final Folders folders;
    private final OrderSurvey surveys;
    private final SurveySheets sheets;
    private final OrderMoves moves;

    Confirming(Folders folders, OrderSurvey surveys, SurveySheets sheets, OrderMoves moves) {
        this.folders = folders;
        this.surveys = surveys;
        this.sheets = sheets;
        this.moves = moves;
    }

    /**
     * The page.
     *
     * @param order whose pistons they are
     * @param engine that they go into
     * @param entry the form
     * @param pistons with their fields
     * @param gauges of the register
     * @param unseen fields that go along
     * @param hasFindings whether the survey saw something in a hole
     * @param open whether the order can be confirmed
     * @param toCome which of its parts are still to come; absent where all are here
     * @param pairing drawn; absent before anything was asked
     * @param plan the answer of the bench; absent before anything was asked
     * @param besides what else of the order stands in the way
     * @param ready whether nothing is left but to confirm
     */
    @CheckedTemplate(basePath = "page")
    record ConfirmPage(
            OrderAnswer order,
            EngineAnswer engine,
            Entry entry,
            List<PistonOnSheet> pistons,
            GaugesAnswer gauges,
            Map<String, String> unseen,
            boolean hasFindings,
            boolean open,
            @Nullable String toCome,
            @Nullable Pairing pairing,
            @Nullable Object plan,
            List<OrderHold> besides,
            boolean ready)
            implements TemplateInstance {}

    /**
     * What the bench makes of a sheet.
     *
     * @param answer of the bench; absent before anything was asked
     * @param besides what else of the order stands in the way
     */
    private record Planned(@Nullable Answer answer, List<OrderHold> besides) {

        private static final Planned NOTHING = new Planned(null, List.of());

        /** Whether the pistons are all there and nothing else stands in the way. */
        boolean isReady() {
            return answer != null && answer.says("readiness", Readiness.READY.label()) && besides.isEmpty();
        }
    }

    /** A sheet for the pistons that were sold; for new rings alone a sheet for the holes. */
    @GET
    public Response sheet(@BeanParam OfOrder of) throws JsonProcessingException {
        Folder folder = folders.open(of);
        if (folder.isRingsOnly()) {
            return surveys.shown(folder, Occasion.CONFIRM);
        }
        Optional<PaperAnswer> former = folder.last("bench").filter(paper -> folder.isConfirmed());
        Form form = folder.asItStands(former.map(paper -> Recalled.of(paper).only(name -> !name.equals("/date")))
                .orElseGet(() -> begun(folder)));
        return page(
                folder,
                Entry.of(form),
                former.map(paper -> new Planned(Answer.of(paper), List.of())).orElse(Planned.NOTHING));
    }

    /** What the survey tells of the holes, and a row for the piston that was sold for each. */
    private Form begun(Folder folder) {
        Form form = folder.last("survey")
                .map(paper -> Carried.fromSurvey(Recalled.of(paper)))
                .orElseGet(Form::empty)
                .with("/engine", folder.order().engine())
                .with("/size", folder.size().orElse(""));
        int marked = 0;
        for (String cylinder :
                SurveySheets.cylinders(sheets.engine(folder.order().engine()))) {
            List<String> sold = folder.pistonsFor(cylinder);
            form = PistonOnSheet.added(form, Character.toString('A' + marked++), sold.isEmpty() ? "" : sold.get(0));
        }
        return form;
    }

    /** Shows how the bench pairs them, or confirms that. */
    @POST
    @Consumes(Form.MEDIA_TYPE)
    public Response sent(@BeanParam OfOrder of, String sent) throws JsonProcessingException {
        Folder folder = folders.open(of);
        Form form = Form.read(sent);
        if (folder.isRingsOnly()) {
            return surveys.kept(folder, Occasion.CONFIRM, form);
        }
        if (form.typed("then").equals("more")) {
            return page(folder, Entry.of(PistonOnSheet.oneMore(form)), Planned.NOTHING);
        }
        Form asked = form.typed("found").equals(LEFT_OUT) ? Carried.withoutFindings(form) : form;
        try {
            if (form.typed("then").equals("confirm")) {
                moves.confirm(new SentForm(of.order(), "confirm", asked), asked.body());
                return Page.seeOther("/orders/" + of.order() + "/hone");
            }
            return page(folder, Entry.of(form), planned(of, asked));
        } catch (ProblemException refused) {
            Entry entry = Entry.of(form, refused.problem(), folder.order().version());
            return page(folder, entry, plannedStill(of, asked));
        }
    }

    private Planned planned(OfOrder of, Form asked) throws JsonProcessingException {
        OrderMoves.Plan plan = moves.plan(of.order(), asked.body());
        return new Planned(Answer.of(plan.answer()), plan.besides());
    }

    /** What is refused of an order may still be planned, and then shows why. */
    private Planned plannedStill(OfOrder of, Form asked) throws JsonProcessingException {
        try {
            return planned(of, asked);
        } catch (ProblemException refused) {
            return Planned.NOTHING;
        }
    }

    private Response page(Folder folder, Entry entry, Planned planned) {
        Form form = entry.form();
        return Page.of(
                entry.status(),
                new ConfirmPage(
                        folder.order(),
                        sheets.engine(folder.order().engine()),
                        entry,
                        PistonOnSheet.of(form),
                        sheets.gauges(),
                        Carried.unseen(form, name -> SEEN.contains(name) || name.contains("/pistons/")),
                        form.fields().keySet().stream().anyMatch(name -> name.contains("/findings/")),
                        folder.may("confirm"),
                        OrderMoves.stillToCome(folder.order())
                                .map(Problem::detail)
                                .orElse(null),
                        planned.answer() == null ? null : Pairing.of(planned.answer()),
                        planned.answer() == null ? null : planned.answer().told(),
                        planned.besides(),
                        planned.isReady()));
    }
}
