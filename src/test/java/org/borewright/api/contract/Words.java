package org.borewright.api.contract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.borewright.api.lookup.part.PartAnswer;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Box;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Layout;
import org.borewright.catalog.Listing;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.ShopOperation;
import org.borewright.catalog.Strokes;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Certainty;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.Sense;
import org.borewright.fit.shape.BoreSurface;
import org.borewright.fit.shape.PropertyClass;
import org.borewright.fit.shape.ThreadCondition;
import org.borewright.kit.Hold;
import org.borewright.kit.Verdict;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.Readiness;
import org.borewright.kit.bench.Step;
import org.borewright.kit.bench.Weighed;
import org.borewright.kit.bench.finish.Judgement;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.choice.Block;
import org.borewright.kit.hole.ReadingLimit;
import org.borewright.kit.hole.WhenNew;
import org.borewright.kit.hole.Work;
import org.borewright.kit.ladder.Way;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.PresentSize;
import org.borewright.kit.table.Settling;
import org.borewright.measure.Gauge;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Temperature;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Query;
import org.borewright.order.BlockKind;
import org.borewright.order.Move;
import org.borewright.order.OrderKind;
import org.borewright.order.State;
import org.borewright.order.journal.Entry;
import org.borewright.order.quote.Proposal;
import org.borewright.order.store.HoleLifeRow;
import org.borewright.order.store.PaperRow;

/** The lists of words that the code holds, by the names of the schemas that list them in the contract. */
final class Words {

    private static final Map<String, List<String>> OF_CODE = new TreeMap<>();

    static {
        ofTheRequest();
        ofTheMatch();
        ofTheCatalogue();
        ofTheBench();
        ofOrders();
        add("ProblemPath", ProblemType.values(), ProblemType::path);
        add("ProblemTitle", ProblemType.values(), ProblemType::title);
    }

    private Words() {}

    /** All of them. */
    static Map<String, List<String>> ofCode() {
        return OF_CODE;
    }

    private static void ofTheRequest() {
        add("LengthUnit", LengthUnit.values(), LengthUnit::symbol);
        add("TemperatureUnit", Temperature.Scale.values(), Temperature.Scale::symbol);
        add("GaugeKind", Gauge.Kind.values(), Gauge.Kind::label);
        add("FigureSource", Gauge.Source.values(), Gauge.Source::label);
        add("Condition", Condition.values(), Condition::label);
        add("KnownFrom", PresentSize.KnownFrom.values(), PresentSize.KnownFrom::label);
        add("FindingKind", Finding.Kind.values(), Finding.Kind::label);
        add("Grooves", AsFound.Grooves.values(), AsFound.Grooves::label);
        add("Ridge", AsFound.Ridge.values(), AsFound.Ridge::label);
        add("Glaze", AsFound.Glaze.values(), AsFound.Glaze::label);
    }

    private static void ofTheMatch() {
        add("Verdict", Verdict.values(), Verdict::label);
        add("Certainty", Certainty.values(), Certainty::label);
        add("Outcome", Outcome.values(), Outcome::label);
        add("Sense", Sense.values(), Sense::label);
        add("CheckTitle", Rule.values(), Rule::title);
        add("HoldReason", Hold.Reason.values(), Hold.Reason::label);
        add("BlockReason", Block.Reason.values(), Block.Reason::sentence);
        add("WhatToRead", Settling.What.values(), Settling.What::label);
        add("DecidingReading", ReadingLimit.Read.values(), ReadingLimit.Read::label);
        add("UncertaintyTerm", Uncertainty.Term.values(), Uncertainty.Term::label);
        add("QueryKind", Query.Kind.values(), Query.Kind::label);
        add("BoreForm", BoreShape.Form.values(), BoreShape.Form::label);
        add("FindingWeight", Finding.Weight.values(), Finding.Weight::says);
        add("WhenNewFrom", WhenNew.From.values(), WhenNew.From::label);
        add("Work", Work.values(), Work::label);
        add("WayToRestore", Way.values(), Way::label);
        add("Caution", Caution.values(), Caution::text);
        add("MissingReason", Withdrawal.State.values(), Withdrawal.State::label);
        OF_CODE.get("MissingReason").add("no more to be had");
    }

    private static void ofTheBench() {
        add("Weighed", Weighed.values(), Weighed::label);
        add("Readiness", Readiness.values(), Readiness::label);
        add("Judgement", Judgement.values(), Judgement::label);
        add("BenchHoldReason", BenchHold.Reason.values(), BenchHold.Reason::label);
        add("BenchStep", Step.values(), Step::text);
    }

    private static void ofOrders() {
        add("OrderKind", OrderKind.values(), OrderKind::label);
        add("BlockKind", BlockKind.values(), BlockKind::label);
        add("OrderState", State.values(), State::label);
        add("OrderMove", Move.values(), Move::label);
        // Nobody makes it: the clock does.
        OF_CODE.get("OrderMove").remove(Move.RUN_OUT.label());
        add("PaperKind", PaperRow.Kind.values(), PaperRow.Kind::label);
        add("SealCovers", Entry.Covers.values(), Entry.Covers::label);
        add("HoleOccasion", HoleLifeRow.What.values(), HoleLifeRow.What::label);
        add("WayQuoted", Way.values(), Way::label);
        OF_CODE.get("WayQuoted").add(Proposal.FINISHED_HOLES);
    }

    private static void ofTheCatalogue() {
        add("EngineLayout", Layout.values(), Layout::label);
        add("Construction", Construction.values(), Construction::label);
        add("BoreSurface", BoreSurface.values(), BoreSurface::label);
        add("LabelNames", BoreSpec.LabelNames.values(), BoreSpec.LabelNames::label);
        add("Hand", Hand.values(), Hand::label);
        add("Strokes", Strokes.values(), strokes -> Integer.toString(strokes.count()));
        add("ThreadCondition", ThreadCondition.values(), ThreadCondition::label);
        add("PropertyClass", PropertyClass.values(), PropertyClass::label);
        add("WithdrawnState", Withdrawal.State.values(), Withdrawal.State::label);
        add("PriceFor", ShopOperation.Per.values(), ShopOperation.Per::label);
        add("PartKind", Part.Kind.values(), Part.Kind::label);
        add("Packed", Box.Kind.values(), Box.Kind::label);
        add("BoxKind", Box.Kind.values(), Box.Kind::label);
        // A part sold by itself is packed loose in a bill, and is no box of the catalogue.
        OF_CODE.get("BoxKind").remove(Box.Kind.LOOSE.label());
        OF_CODE.put("WhatItIs", whatItIs());
    }

    private static List<String> whatItIs() {
        return Stream.of(
                        OF_CODE.get("PartKind"),
                        OF_CODE.get("BoxKind"),
                        List.of(withoutPart(Withdrawal.State.DISCONTINUED), withoutPart(Withdrawal.State.NEVER_MADE)))
                .flatMap(List::stream)
                .toList();
    }

    /** What a number is of which no more is known than its withdrawal. */
    private static String withoutPart(Withdrawal.State state) {
        PartNumber number = new PartNumber("GONE");
        return PartAnswer.what(new Listing(
                number,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Withdrawal(number, state, Optional.empty(), "")),
                List.of(),
                List.of()));
    }

    private static <E> void add(String schema, E[] values, Function<E, String> word) {
        OF_CODE.put(schema, new ArrayList<>(Arrays.stream(values).map(word).toList()));
    }
}
