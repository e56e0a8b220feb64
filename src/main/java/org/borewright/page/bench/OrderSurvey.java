package org.borewright.page.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.order.OrderMoves;
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.api.problem.ProblemException;
import org.borewright.kit.request.PresentSize;
import org.borewright.page.Entry;
import org.borewright.page.Form;
import org.borewright.page.Page;
import org.borewright.page.SentForm;
import org.borewright.page.bench.paper.Answer;
import org.borewright.page.bench.paper.Folder;
import org.borewright.page.bench.paper.Folders;
import org.borewright.page.bench.paper.OfOrder;
import org.borewright.page.bench.paper.Recalled;
import org.borewright.page.bench.sheet.FormerSheet;
import org.borewright.page.bench.sheet.Sheet;

/** Surveys of an order, kept with it: as found, as it did not clean up, and for new rings before they go in and before it leaves. */
@Path("/orders/{order}")
@Produces(Page.MEDIA_TYPE)
public class OrderSurvey {

    private static final List<String> MEASURED =
            List.of("/readings/", "/diameter", "/findings/", "/wallReach/", "/readingsChecked");

    /** What a reading is told with, and is as old as that: a block comes warm from the bar. */
    private static final List<String> WHEN_READ =
            List.of("number:/temperature", "number:/pistonTemperature", "number:/gauge/ring/temperature");

    private static final String LAST_FINISH = "/lastFinish";

    private final Folders folders;
    private final SurveySheets sheets;
    private final OrderMoves moves;

    OrderSurvey(Folders folders, SurveySheets sheets, OrderMoves moves) {
        this.folders = folders;
        this.sheets = sheets;
        this.moves = moves;
    }

    /** The last survey, and a sheet for a new one where the order allows it. */
    @GET
    @Path("/survey")
    public Response survey(@BeanParam OfOrder of) throws JsonProcessingException {
        return shown(folders.open(of), Occasion.SURVEY);
    }

    /** Keeps a survey. */
    @POST
    @Path("/survey")
    @Consumes(Form.MEDIA_TYPE)
    public Response keep(@BeanParam OfOrder of, String sent) throws JsonProcessingException {
        return kept(folders.open(of), Occasion.SURVEY, Form.read(sent));
    }

    /** A sheet for holes that did not clean up. */
    @GET
    @Path("/did-not-clean-up")
    public Response didNotCleanUp(@BeanParam OfOrder of) throws JsonProcessingException {
        return shown(folders.open(of), Occasion.DID_NOT_CLEAN_UP);
    }

    /** Keeps it. */
    @POST
    @Path("/did-not-clean-up")
    @Consumes(Form.MEDIA_TYPE)
    public Response keepDidNotCleanUp(@BeanParam OfOrder of, String sent) throws JsonProcessingException {
        return kept(folders.open(of), Occasion.DID_NOT_CLEAN_UP, Form.read(sent));
    }

    /** The sheet of an order: as it was filled in last, where it was. */
    Response shown(Folder folder, Occasion occasion) throws JsonProcessingException {
        EngineAnswer engine = sheets.engine(folder.order().engine());
        Optional<PaperAnswer> judged = folder.last("finish").filter(paper -> isOfThisConfirmation(folder, paper));
        Optional<PaperAnswer> last =
                occasion == Occasion.FINISH ? judged.or(() -> folder.last("bench")) : folder.last("survey");
        Form form = last.flatMap(paper -> FormerSheet.of(SurveySheets.cylinders(engine), Recalled.of(paper)))
                .map(former -> judged.isPresent() ? former : former.only(name -> !name.equals(Honed.RINGS_FILED)))
                .map(former -> begun(former, folder, occasion))
                .orElseGet(() -> SurveySheets.blank(engine));
        if (isBored(folder, occasion)) {
            form = Bored.to(form, SurveySheets.cylinders(engine), folder);
        }
        return sheets.page(
                task(folder, occasion),
                engine,
                Entry.of(folder.asItStands(form)),
                occasion == Occasion.SURVEY || occasion == Occasion.FINISH ? last.map(Answer::of) : Optional.empty());
    }

    /** Whether a judgement came after what was confirmed last: of rings that went in before it no word stands. */
    private static boolean isOfThisConfirmation(Folder folder, PaperAnswer judged) {
        return folder.last("bench").filter(paper -> judged.id() > paper.id()).isPresent();
    }

    /**
     * Holes that are no longer as they were: what they were measured with stays, and not how warm all was; once a bar may have been in them
     * no finish of before does, and what was signed is the size they have.
     */
    private static Form begun(Form former, Folder folder, Occasion occasion) {
        if (occasion != Occasion.DID_NOT_CLEAN_UP) {
            return former;
        }
        boolean cut = folder.isConfirmed() && !folder.isRingsOnly();
        Form unread = former.only(name -> !isMeasured(name) && !(cut && name.endsWith(LAST_FINISH)));
        return cut && !folder.isOnTheBench()
                ? unread.with("/presentSize/size", folder.size().orElse(""))
                        .with("/presentSize/knownFrom", PresentSize.KnownFrom.RECORD.label())
                : unread;
    }

    private static boolean isMeasured(String name) {
        return WHEN_READ.contains(name)
                || (name.contains("/cylinders/") && MEASURED.stream().anyMatch(name::contains));
    }

    private static SurveySheets.Task task(Folder folder, Occasion occasion) {
        return new SurveySheets.Task(
                occasion,
                Long.toString(folder.order().number()),
                folder.may(occasion.move()),
                isBored(folder, occasion),
                occasion == Occasion.SURVEY ? Kept.of(folder).orElse(null) : null);
    }

    private static boolean isBored(Folder folder, Occasion occasion) {
        return occasion == Occasion.DID_NOT_CLEAN_UP && folder.isOnTheBench() && !folder.isRingsOnly();
    }

    /** Keeps a sheet, or shows it again: in another shape, or with what is wrong with it. */
    Response kept(Folder folder, Occasion occasion, Form form) throws JsonProcessingException {
        String order = Long.toString(folder.order().number());
        EngineAnswer engine = sheets.engine(folder.order().engine());
        Sheet sheet = new Sheet(SurveySheets.cylinders(engine), form);
        Optional<Sheet> reshaped = sheet.reshaped(form.typed("then"));
        if (reshaped.isPresent()) {
            return sheets.page(
                    task(folder, occasion), engine, Entry.of(reshaped.get().form()), Optional.empty());
        }
        try {
            Form asked = sheet.asked();
            moves.move(occasion.path(), new SentForm(order, occasion.path(), asked), asked.body());
            return Page.seeOther("/orders/" + order + (occasion == Occasion.CONFIRM ? "/hone" : after(occasion)));
        } catch (ProblemException refused) {
            return sheets.page(
                    task(folder, occasion),
                    engine,
                    Entry.of(
                            form,
                            sheet.inWords(refused.problem()),
                            folder.order().version()),
                    Optional.empty());
        }
    }

    private static String after(Occasion occasion) {
        return occasion == Occasion.FINISH ? "/finish" : "/survey";
    }
}
