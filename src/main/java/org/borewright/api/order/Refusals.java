package org.borewright.api.order;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.NearNames;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemType;
import org.borewright.order.Awaited;
import org.borewright.order.BlockKind;
import org.borewright.order.Lacking;
import org.borewright.order.Move;
import org.borewright.order.OrderHold;
import org.borewright.order.Refusal;
import org.borewright.order.State;
import org.jspecify.annotations.Nullable;

/** Says why something cannot be done with an order, and what can. */
final class Refusals {

    private Refusals() {}

    static Problem problem(Refusal refusal) {
        if (refusal instanceof Refusal.UnknownOrder unknown) {
            return said(ProblemType.UNKNOWN_ORDER, "There is no order %d.", unknown.order());
        } else if (refusal instanceof Refusal.UnknownQuote unknown) {
            return said(
                    ProblemType.UNKNOWN_QUOTE,
                    "Order %d has no quote %d; its last is %d.",
                    unknown.order(),
                    unknown.quote(),
                    unknown.last());
        } else if (refusal instanceof Refusal.Changed changed) {
            return said(
                    ProblemType.ORDER_CHANGED,
                    "Order %d is at version %d by now; the change was meant for version %d.",
                    changed.order(),
                    changed.now(),
                    changed.asked());
        } else if (refusal instanceof Refusal.NotAllowed move) {
            return notAllowed(move);
        } else {
            return ofQuote(refusal);
        }
    }

    private static Problem ofQuote(Refusal refusal) {
        if (refusal instanceof Refusal.QuoteRanOut quote) {
            return said(
                    ProblemType.QUOTE_RAN_OUT,
                    "Quote %d of order %d held until %s.",
                    quote.quote(),
                    quote.order(),
                    quote.validUntil());
        } else if (refusal instanceof Refusal.QuoteOfOlderSurvey quote) {
            return said(
                    ProblemType.QUOTE_RAN_OUT,
                    "Order %d was surveyed anew after quote %d was given.",
                    quote.order(),
                    quote.quote());
        } else if (refusal instanceof Refusal.TooFew few) {
            return tooFew(few);
        } else if (refusal instanceof Refusal.StillToCome awaited) {
            return stillToCome(awaited);
        } else if (refusal instanceof Refusal.Busy) {
            return Problem.of(ProblemType.BUSY, "Others changed the same things again and again meanwhile.");
        } else {
            return ofBench(refusal);
        }
    }

    private static Problem ofBench(Refusal refusal) {
        if (refusal instanceof Refusal.BlockTaken block) {
            return taken(block);
        } else if (refusal instanceof Refusal.OfAnother other) {
            return otherJob(other);
        } else if (refusal instanceof Refusal.BenchHolds bench) {
            return held(bench);
        }
        throw new IllegalStateException("not said: " + refusal);
    }

    private static Problem taken(Refusal.BlockTaken block) {
        String what = block.kind() == BlockKind.BARREL ? "Barrel " : "Block ";
        if (block.why() instanceof Refusal.Taken.InTheShop shop) {
            return taken(
                    block,
                    what + block.tag() + " is in the shop for order " + shop.order() + ", which has not ended.",
                    "Finish or withdraw order " + shop.order() + ", or compare the tag.");
        } else if (block.why() instanceof Refusal.Taken.OfEngine other) {
            return taken(
                    block,
                    what + block.tag() + " was tagged for engine " + other.engine() + ".",
                    "Compare the tag and the engine; what is new in the shop needs a tag of its own.");
        } else {
            return taken(
                    block,
                    block.tag() + " is the tag of a " + block.kind().label() + ".",
                    "Compare the tag; what is new in the shop needs a tag of its own.");
        }
    }

    private static Problem taken(Refusal.BlockTaken block, String reason, String wayOut) {
        return Problem.of(Fault.of(ProblemType.BLOCK_TAKEN, block.pointer(), reason)
                .sent(block.tag())
                .wayOut(wayOut));
    }

    private static Problem otherJob(Refusal.OfAnother other) {
        String differs = other.differences().stream()
                .map(found -> String.format(
                        Locale.ROOT,
                        "The %s asked about is %s; order %d has %s.",
                        found.what(),
                        found.asked(),
                        other.order(),
                        found.ordered()))
                .collect(Collectors.joining(" "));
        List<Fault> faults = other.differences().stream()
                .map(found -> Fault.of(ProblemType.OTHER_JOB, found.pointer(), "The " + found.what() + " differs.")
                        .sent(found.asked())
                        .against(found.ordered())
                        .wayOut(found.wayOut()))
                .toList();
        return new Problem(ProblemType.OTHER_JOB, ProblemType.OTHER_JOB.status(), differs, faults);
    }

    private static Problem held(Refusal.BenchHolds bench) {
        String why = bench.holds().stream().map(hold -> " " + hold.says()).collect(Collectors.joining());
        List<Fault> faults = bench.holds().stream()
                .map(hold -> new Fault(
                        ProblemType.BENCH_HOLDS, place(hold), null, null, null, hold.says(), hold.next(), null))
                .toList();
        return new Problem(
                ProblemType.BENCH_HOLDS,
                ProblemType.BENCH_HOLDS.status(),
                String.format(
                        Locale.ROOT,
                        "Order %d cannot be confirmed, the bench says \"%s\".%s",
                        bench.order(),
                        bench.readiness(),
                        why),
                faults);
    }

    /** None where it stands against all of them, as the deck does. */
    private static @Nullable String place(OrderHold hold) {
        if (!hold.cylinders().isEmpty()) {
            return "/cylinders";
        }
        return hold.pistons().isEmpty() ? null : "/pistons";
    }

    private static Problem notAllowed(Refusal.NotAllowed refused) {
        List<String> next = refused.kind().next(refused.state(), refused.partsToCome()).stream()
                .map(Move::label)
                .toList();
        List<String> from =
                refused.kind().before(refused.move()).stream().map(State::label).toList();
        String way =
                next.isEmpty() ? "It has ended: open a new order." : "Allowed now: " + NearNames.either(next) + ".";
        return said(
                ProblemType.MOVE_NOT_ALLOWED,
                "Order %d (%s) is %s, and \"%s\" is %s. %s",
                refused.order(),
                refused.kind().label(),
                refused.state().label(),
                refused.move().label(),
                from.isEmpty() ? "no move of such an order" : "allowed only where it is " + NearNames.either(from),
                way);
    }

    private static Problem tooFew(Refusal.TooFew few) {
        boolean canWait = !few.mayWait() && few.lacking().stream().allMatch(Lacking::canBeHad);
        String way = canWait
                ? "If the customer waits for what is missing, say so with the yes (mayWait); else quote anew."
                : "Survey or quote anew: other boxes may be had.";
        String each = few.lacking().stream()
                .map(part -> String.format(
                        Locale.ROOT, "%s (needed %d, here %d)", part.number(), part.wanted(), part.left()))
                .collect(Collectors.joining(", "));
        return new Problem(
                ProblemType.STOCK_SHORT,
                ProblemType.STOCK_SHORT.status(),
                "The shelf has too few for order " + few.order() + ", and nothing was put aside: " + each + ".",
                few.lacking().stream().map(part -> lacking(part).wayOut(way)).toList());
    }

    private static Fault lacking(Lacking part) {
        return Fault.ofPart(
                        ProblemType.STOCK_SHORT,
                        part.number(),
                        String.format(
                                Locale.ROOT,
                                "%d needed; %s.",
                                part.wanted(),
                                part.canBeHad() ? "more can be ordered" : "no more can be had"))
                .against(part.left() + " left");
    }

    private static Problem stillToCome(Refusal.StillToCome refused) {
        String each = refused.awaited().stream()
                .map(part -> String.format(Locale.ROOT, "%d of %s, %s", part.toCome(), part.number(), when(part)))
                .collect(Collectors.joining("; "));
        return new Problem(
                ProblemType.PARTS_TO_COME,
                ProblemType.PARTS_TO_COME.status(),
                "Parts of order " + refused.order() + " are still to come: " + each + ".",
                refused.awaited().stream()
                        .map(part -> Fault.ofPart(
                                ProblemType.PARTS_TO_COME,
                                part.number(),
                                part.toCome() + " to come, " + when(part) + "."))
                        .toList());
    }

    private static String when(Awaited part) {
        return part.expectedOn().map(day -> "expected by " + day).orElse("no day is known");
    }

    private static Problem said(ProblemType type, String sentence, Object... of) {
        return Problem.of(type, String.format(Locale.ROOT, sentence, of));
    }
}
