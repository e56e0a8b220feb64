package org.borewright.catalog.load.rule;

import java.util.List;
import org.borewright.catalog.store.row.GasketKitRow;
import org.borewright.catalog.store.row.GasketRow;
import org.borewright.measure.Length;

/** What loose gaskets owe the gasket kits of their engine. */
final class GasketRules {

    private GasketRules() {}

    static void check(Examination examination) {
        List<GasketKitRow> kits = examination.rows(GasketKitRow.class);
        for (GasketRow gasket : examination.rows(GasketRow.class)) {
            boolean placed = gasket.place == GasketRow.Place.HEAD
                    || !examination.isWhole(GasketKitRow.class, "engine", gasket.engine)
                    || kits.stream()
                            .anyMatch(kit -> kit.engine.equals(gasket.engine)
                                    && kit.base.greatest().isMoreThan(Length.ZERO));
            if (!placed) {
                examination.bad(gasket, "place", Duty.BASE_GASKET, gasket.engine);
            }
        }
    }
}
