package org.borewright.catalog.load.rule;

/** What the rows of different files owe each other. */
public final class RowRules {

    private RowRules() {}

    /** Complains of every row that owes something. */
    public static void check(Examination examination) {
        EngineRules.check(examination);
        PistonRules.check(examination);
        RingRules.check(examination);
        GasketRules.check(examination);
        WorkRules.check(examination);
        GaugeRules.check(examination);
        BoxRules.check(examination);
        SalesRules.check(examination);
    }
}
