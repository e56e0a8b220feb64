package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonRawValue;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.borewright.api.match.answer.BillAnswer;
import org.borewright.api.match.answer.OperationsAnswer;
import org.borewright.api.shown.ShownMoney;
import org.borewright.catalog.Revision;
import org.borewright.catalog.Size;
import org.borewright.kit.Match;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.caution.Caution;
import org.borewright.order.quote.OwnPistons;
import org.borewright.order.quote.Proposal;
import org.borewright.order.quote.Sum;
import org.borewright.order.quote.Terms;
import org.jspecify.annotations.Nullable;

/**
 * What a quote offers, frozen: prices, stock and catalogue as they stood.
 *
 * @param shop its name on paper; absent where none is configured
 * @param engine its code
 * @param revision of the catalogue
 * @param inPlaceOf the quote that the customer had said yes to before holes did not clean up; absent where there was none
 * @param date it was made on
 * @param validUntil the last day it holds
 * @param way what is done
 * @param size of the pistons; absent where those in the engine stay
 * @param ready the day it can go out, when the yes comes on the day of the quote
 * @param conditional whether something must turn out right for the price to hold
 * @param conditions what that is
 * @param parts all of them
 * @param ownPistons those that the owner brings, which are not sold; absent where there are none
 * @param work what the shop does; empty where the machining is done elsewhere
 * @param sum what it comes to
 * @param alternatives the other ways that a price can be named for; only where they were asked for
 * @param cautions what must be said
 * @param match the full answer that it stands on; left out where a document is read back
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record OfferDocument(
        @Nullable String shop,
        String engine,
        Revision revision,
        @Nullable Integer inPlaceOf,
        LocalDate date,
        LocalDate validUntil,
        String way,
        @Nullable String size,
        LocalDate ready,
        boolean conditional,
        List<String> conditions,
        List<BillAnswer.LineAnswer> parts,
        @Nullable OwnPistonsAnswer ownPistons,
        List<OperationsAnswer.LineAnswer> work,
        SumAnswer sum,
        @Nullable List<AlternativeAnswer> alternatives,
        List<String> cautions,

        @Nullable @JsonProperty(access = JsonProperty.Access.READ_ONLY) @JsonRawValue
        String match) {

    /**
     * What it comes to.
     *
     * @param parts all of them
     * @param work all of it
     * @param net both
     * @param taxPercent on that
     * @param tax on that, rounded once
     * @param total with tax
     * @param deposit due with the yes; absent where none is asked
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record SumAnswer(
            ShownMoney parts,
            ShownMoney work,
            ShownMoney net,
            BigDecimal taxPercent,
            ShownMoney tax,
            ShownMoney total,
            @Nullable ShownMoney deposit) {

        static SumAnswer of(Sum sum, Terms terms) {
            return new SumAnswer(
                    ShownMoney.of(sum.parts()),
                    ShownMoney.of(sum.work()),
                    ShownMoney.of(sum.net()),
                    terms.taxPercent(),
                    ShownMoney.of(sum.tax()),
                    ShownMoney.of(sum.total()),
                    sum.deposit().map(ShownMoney::of).orElse(null));
        }
    }

    /**
     * Pistons that the owner brings.
     *
     * @param design of their maker
     * @param covers which go into which holes
     */
    public record OwnPistonsAnswer(String design, List<BillAnswer.CoversAnswer> covers) {

        static OwnPistonsAnswer of(OwnPistons own) {
            return new OwnPistonsAnswer(
                    own.choice().design().code(),
                    own.pistons().stream().map(BillAnswer.CoversAnswer::of).toList());
        }
    }

    /**
     * Another way.
     *
     * @param way what is done
     * @param size of the pistons; absent where those in the engine stay
     * @param total with tax
     * @param ready the day it can go out
     * @param conditions what must turn out right for the price to hold
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record AlternativeAnswer(
            String way, @Nullable String size, ShownMoney total, LocalDate ready, List<String> conditions) {

        static AlternativeAnswer of(Proposal proposal, Terms terms, LocalDate on) {
            return new AlternativeAnswer(
                    proposal.way(),
                    proposal.size().map(Size::label).orElse(null),
                    ShownMoney.of(proposal.sum(terms).total()),
                    proposal.ready(on),
                    proposal.conditions());
        }
    }

    /**
     * What a quote stands on besides the readings.
     *
     * @param shop its name on paper; empty where none is configured
     * @param engine its code
     * @param revision of the catalogue
     * @param inPlaceOf the quote given before that it stands in place of; empty where there is none
     * @param terms of the shop
     * @param on the day
     */
    public record Basis(
            Optional<String> shop,
            String engine,
            Revision revision,
            Optional<Integer> inPlaceOf,
            Terms terms,
            LocalDate on) {}

    /** The document of a proposal. */
    public static OfferDocument of(Basis basis, Proposal chosen, List<Proposal> others, Match match, String answer) {
        Kit kit = chosen.kit();
        ShopWork work = chosen.job().work();
        Terms terms = basis.terms();
        LocalDate on = basis.on();
        return new OfferDocument(
                basis.shop().orElse(null),
                basis.engine(),
                basis.revision(),
                basis.inPlaceOf().orElse(null),
                on,
                terms.validUntil(on),
                chosen.way(),
                chosen.size().map(Size::label).orElse(null),
                chosen.ready(on),
                !chosen.conditions().isEmpty(),
                chosen.conditions(),
                kit.lines().stream()
                        .map(line -> BillAnswer.LineAnswer.of(line, on))
                        .toList(),
                chosen.own().map(OwnPistonsAnswer::of).orElse(null),
                work.lines().stream().map(OperationsAnswer.LineAnswer::of).toList(),
                SumAnswer.of(chosen.sum(terms), terms),
                Optional.of(others)
                        .filter(told -> !told.isEmpty())
                        .map(told -> told.stream()
                                .map(other -> AlternativeAnswer.of(other, terms, on))
                                .toList())
                        .orElse(null),
                match.cautions().stream().map(Caution::text).toList(),
                answer);
    }

    /** What was written of a quote, but for the answer it stands on. */
    public static OfferDocument read(ObjectMapper json, String written) {
        try {
            return json.readValue(written, OfferDocument.class);
        } catch (JsonProcessingException unreadable) {
            throw new IllegalStateException("a quote is kept as it was written", unreadable);
        }
    }
}
