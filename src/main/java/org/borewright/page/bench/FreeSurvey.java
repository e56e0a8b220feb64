package org.borewright.page.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Optional;
import org.borewright.api.guard.Parameters;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.match.MatchResource;
import org.borewright.api.problem.ProblemException;
import org.borewright.page.Entry;
import org.borewright.page.Form;
import org.borewright.page.Page;
import org.borewright.page.bench.paper.Answer;
import org.borewright.page.bench.sheet.Sheet;

/** A survey of an engine for which there is no order: it is answered, and not kept. */
@Path("/bench/survey")
@Produces(Page.MEDIA_TYPE)
public class FreeSurvey {

    private static final SurveySheets.Task TASK = new SurveySheets.Task(Occasion.NO_ORDER, "", true, false, null);

    private final SurveySheets sheets;
    private final MatchResource matches;

    FreeSurvey(SurveySheets sheets, MatchResource matches) {
        this.sheets = sheets;
        this.matches = matches;
    }

    /** A sheet of the engine named. */
    @GET
    public Response sheet(@Context UriInfo asked) throws JsonProcessingException {
        Parameters parameters = new Parameters(asked);
        Optional<String> code = parameters.text("engine");
        parameters.end();
        if (code.isEmpty()) {
            return Page.seeOther("/bench");
        }
        EngineAnswer engine = sheets.engine(code.get());
        return sheets.page(TASK, engine, Entry.of(SurveySheets.blank(engine)), Optional.empty());
    }

    /** The same sheet with what a match says of it. */
    @POST
    @Consumes(Form.MEDIA_TYPE)
    public Response answer(String sent) throws JsonProcessingException {
        Form form = Form.read(sent);
        EngineAnswer engine = sheets.engine(form.typed("/engine"));
        Sheet sheet = new Sheet(SurveySheets.cylinders(engine), form);
        Optional<Sheet> reshaped = sheet.reshaped(form.typed("then"));
        if (reshaped.isPresent()) {
            return sheets.page(TASK, engine, Entry.of(reshaped.get().form()), Optional.empty());
        }
        try {
            Answer answer = Answer.of(matches.match(sheet.asked().body()));
            return sheets.page(TASK, engine, Entry.of(form), Optional.of(answer));
        } catch (ProblemException refused) {
            return sheets.page(TASK, engine, Entry.of(form, sheet.inWords(refused.problem())), Optional.empty());
        }
    }
}
