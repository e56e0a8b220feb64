package org.borewright.page.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.lookup.engine.EngineLookup;
import org.borewright.api.lookup.gauge.GaugeLookup;
import org.borewright.api.lookup.gauge.GaugesAnswer;
import org.borewright.api.match.MatchResource;
import org.borewright.measure.LengthUnit;
import org.borewright.page.Entry;
import org.borewright.page.Form;
import org.borewright.page.Page;
import org.borewright.page.bench.paper.Answer;
import org.borewright.page.bench.picture.Drawing;
import org.borewright.page.bench.picture.Profile;
import org.borewright.page.bench.picture.SizeLine;
import org.borewright.page.bench.sheet.Carried;
import org.borewright.page.bench.sheet.Queried;
import org.borewright.page.bench.sheet.Sheet;
import org.jspecify.annotations.Nullable;

/** Lays out sheets on which the holes of an engine are surveyed. */
@ApplicationScoped
class SurveySheets {

    /** What stands in a field that is seen, besides the holes; whatever else the question has goes along unseen, but for its day. */
    private static final List<String> SEEN = List.of(
            "/engine",
            "/date",
            "/condition",
            "/presentSize/size",
            "/presentSize/knownFrom",
            "/askedSize",
            "/unit",
            "/gauge/name",
            "number:/temperature",
            "/temperatureUnit",
            "number:/gauge/ring/size",
            "number:/gauge/ring/temperature",
            "number:/gauge/uncertainty",
            "number:/gauge/resolution",
            "number:/pistonTemperature",
            "number:/deckFlatness",
            "number:/deckSkim",
            "number:/skimmedBefore",
            Honed.RINGS_FILED);

    private final EngineLookup engines;
    private final GaugeLookup gauges;
    private final MatchResource matches;

    SurveySheets(EngineLookup engines, GaugeLookup gauges, MatchResource matches) {
        this.engines = engines;
        this.gauges = gauges;
        this.matches = matches;
    }

    /**
     * What a sheet is for.
     *
     * @param occasion of the survey
     * @param order its number; empty for a sheet of no order
     * @param open whether it may be filled in
     * @param bored whether the bar may have been in its holes, so that what it reached is asked for
     * @param kept the survey that stands, where a new one would take its place
     */
    record Task(
            Occasion occasion,
            String order,
            boolean open,
            boolean bored,
            @Nullable Kept kept) {

        /** Of the page. */
        public String title() {
            return occasion.title();
        }

        /** What is entered, in a sentence. */
        public String lead() {
            return occasion.lead();
        }

        /** Where it is sent to. */
        public String action() {
            return order.isEmpty() ? "/bench/survey" : "/orders/" + order + "/" + occasion.path();
        }

        /** What sends it; where a survey stands it must not look as if the first were still to be sent. */
        public String button() {
            return kept == null ? occasion.button() : "Survey anew";
        }

        /** Whether the engine leaves if all is well, so that whoever fitted the rings must say if they are filed. */
        public boolean isLast() {
            return occasion == Occasion.FINISH;
        }
    }

    /**
     * The page.
     *
     * @param task what the sheet is for
     * @param engine that is surveyed
     * @param sheet with its readings
     * @param entry the same as a form
     * @param gauges of the register
     * @param unseen fields that go along
     * @param queried by the name of a field, what is asked about its reading
     * @param profiles of the holes
     * @param answer what came of it; absent where nothing did yet
     */
    @CheckedTemplate(basePath = "page")
    record SurveyPage(
            Task task,
            EngineAnswer engine,
            Sheet sheet,
            Entry entry,
            GaugesAnswer gauges,
            Map<String, String> unseen,
            Map<String, String> queried,
            List<Profile> profiles,
            @Nullable Object answer)
            implements TemplateInstance {}

    /** The engine of a sheet. @throws ProblemException if no engine bears the code */
    EngineAnswer engine(String code) {
        return engines.known(code, LengthUnit.MILLIMETRE);
    }

    /** The gauges of the register. */
    GaugesAnswer gauges() {
        return gauges.known(LengthUnit.MILLIMETRE);
    }

    /** The names of its holes. */
    static List<String> cylinders(EngineAnswer engine) {
        return engine.cylinders().stream()
                .map(EngineAnswer.CylinderAnswer::cylinder)
                .toList();
    }

    /** A sheet of an engine that nobody filled in. */
    static Form blank(EngineAnswer engine) {
        return Sheet.blank(cylinders(engine))
                .with("/engine", engine.engine())
                .with("/unit", engine.steps())
                .with("/condition", "worn");
    }

    /** The page of a sheet, with what came of it. */
    Response page(Task task, EngineAnswer engine, Entry entry, Optional<Answer> answer) throws JsonProcessingException {
        Sheet sheet = new Sheet(cylinders(engine), entry.form());
        return Page.of(
                entry.status(),
                new SurveyPage(
                        task,
                        engine,
                        sheet,
                        entry,
                        gauges(),
                        Carried.unseen(entry.form(), name -> SEEN.contains(name) || name.contains("/cylinders/")),
                        answer.map(told -> Queried.in(told, sheet)).orElse(Map.of()),
                        Drawing.of(sheet, sizes(engine)),
                        answer.map(Answer::told).orElse(null)));
    }

    /** What a match says of the sizes of an engine of which nothing is read. */
    private List<SizeLine> sizes(EngineAnswer engine) throws JsonProcessingException {
        Form unread = blank(engine).with("/unit", LengthUnit.MILLIMETRE.symbol());
        return SizeLine.ofSizes(Answer.of(
                matches.match(new Sheet(cylinders(engine), unread).asked().body())));
    }
}
