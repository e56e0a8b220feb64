package org.borewright.api.match.answer;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.borewright.api.match.answer.deck.GasketsAnswer;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.Stencil;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.ShopOperation;
import org.borewright.fit.Check;
import org.borewright.fit.DeckFlatness;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.choice.TorqueReminder;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.LengthUnit;

/**
 * What the answers about one engine repeat word for word in one unit: part against part, torques, operations, bills. Most of an answer
 * is that, and it is written once. They go by the identity of what they were cut from, for the fit table and the kit finder hand out
 * the same objects every time; anything else is written when asked for, and so no answer can be an old one.
 */
public final class Stencils {

    private final ObjectMapper json;
    private final LengthUnit unit;
    private final Shelf shelf;
    private final IdentityHashMap<Check, Stencil<ShownCheck>> checks = new IdentityHashMap<>();
    private final IdentityHashMap<List<GasketFit>, List<Stencil<GasketsAnswer>>> gaskets = new IdentityHashMap<>();
    private final IdentityHashMap<TorqueReminder, Stencil<TorqueAnswer>> torques = new IdentityHashMap<>();
    private final IdentityHashMap<ShopOperation, List<Stencil<OperationsAnswer.LineAnswer>>> operations =
            new IdentityHashMap<>();
    private final Map<Kit, Bill> bills = Collections.synchronizedMap(new IdentityHashMap<>());

    /** The bill of a kit on the last day it was asked for. */
    private record Bill(LocalDate on, Stencil<BillAnswer> whole, Stencil<SizeRowAnswer.KitSummary> brief) {}

    /** Cut by a mapper from what fits an engine, in a unit. */
    public Stencils(ObjectMapper json, FitTable fits, LengthUnit unit) {
        this.json = json;
        this.unit = unit;
        this.shelf = fits.shelf();
        cut(List.of(DeckFlatness.NOT_MEASURED));
        fits.choices().values().forEach(choices -> choices.forEach(this::cut));
        cut(RingsOnly.untold());
        fits.torques().forEach(torque -> torques.put(torque, Stencil.of(json, TorqueAnswer.of(torque, unit))));
        int holes = fits.shelf().engine().cylinders().size();
        fits.shelf().operations().forEach(operation -> operations.put(operation, lines(operation, holes)));
    }

    private void cut(Choice choice) {
        cut(choice.metalChecks());
        choice.wallAsMade().ifPresent(wall -> cut(List.of(wall)));
        choice.blocks().forEach(block -> cut(block.checks()));
        choice.outfits().forEach(outfit -> cut(outfit.checks()));
        choice.gaskets().forEach(gasket -> cut(gasket.checks()));
        gaskets.put(choice.gaskets(), shown(choice.gaskets(), set -> Stencil.of(json, set)));
    }

    private void cut(List<Check> of) {
        of.forEach(check -> checks.computeIfAbsent(check, repeated -> Stencil.of(json, ShownCheck.of(repeated, unit))));
    }

    private List<Stencil<GasketsAnswer>> shown(
            List<GasketFit> ranked, Function<GasketsAnswer, Stencil<GasketsAnswer>> as) {
        return GasketsAnswer.of(shelf, ranked, unit).stream().map(as).toList();
    }

    private List<Stencil<OperationsAnswer.LineAnswer>> lines(ShopOperation operation, int holes) {
        List<Stencil<OperationsAnswer.LineAnswer>> lines = new ArrayList<>(holes);
        for (int quantity = 1; quantity <= holes; quantity++) {
            ShopWork.Line line = new ShopWork.Line(operation, quantity);
            lines.add(Stencil.of(json, OperationsAnswer.LineAnswer.of(line)));
        }
        return lines;
    }

    /** The unit of all lengths. */
    LengthUnit unit() {
        return unit;
    }

    List<Stencil<ShownCheck>> checks(List<Check> asked) {
        List<Stencil<ShownCheck>> shown = new ArrayList<>(asked.size());
        for (Check check : asked) {
            Stencil<ShownCheck> kept = checks.get(check);
            shown.add(kept == null ? Stencil.uncut(ShownCheck.of(check, unit)) : kept);
        }
        return shown;
    }

    List<Stencil<GasketsAnswer>> gaskets(SizeRow row) {
        List<Stencil<GasketsAnswer>> kept = gaskets.get(row.gaskets());
        return kept == null ? shown(row.gaskets(), Stencil::uncut) : kept;
    }

    List<Stencil<TorqueAnswer>> torques(List<TorqueReminder> reminders) {
        return reminders.stream().map(torques::get).toList();
    }

    List<Stencil<OperationsAnswer.LineAnswer>> operations(ShopWork work) {
        List<Stencil<OperationsAnswer.LineAnswer>> shown =
                new ArrayList<>(work.lines().size());
        for (ShopWork.Line line : work.lines()) {
            shown.add(Objects.requireNonNull(operations.get(line.operation())).get(line.quantity() - 1));
        }
        return shown;
    }

    Stencil<BillAnswer> bill(Kit kit, LocalDate on) {
        return billed(kit, on).whole;
    }

    Stencil<SizeRowAnswer.KitSummary> brief(Kit kit, LocalDate on) {
        return billed(kit, on).brief;
    }

    private Bill billed(Kit kit, LocalDate on) {
        Bill kept = bills.get(kit);
        if (kept != null && kept.on.equals(on)) {
            return kept;
        }
        Bill made = new Bill(
                on, Stencil.of(json, BillAnswer.of(kit, on)), Stencil.of(json, SizeRowAnswer.KitSummary.of(kit, on)));
        keep(kit, made);
        return made;
    }

    /** A kit that the finder forgot is never asked for again, so its bill must not stay. */
    private void keep(Kit kit, Bill made) {
        synchronized (bills) {
            if (bills.size() >= KitFinder.mostRemembered()) {
                bills.clear();
            }
            bills.put(kit, made);
        }
    }

    /** How many bills are kept. */
    int bills() {
        return bills.size();
    }
}
