package org.borewright.fit.shape;

/**
 * How a thread is prepared, and the lowest plausible nut factor K in T = K·d·F. The lowest K gives the highest pull. Derived from
 * the torques and preloads of VDI 2230, M8 to M12: K = T/(d·F) is 0.14 at µ 0.10, 0.16 at µ 0.12; paste: common practice.
 */
public enum ThreadCondition {
    /** Clean and dry. */
    DRY("dry", 160),
    /** Engine oil on thread and face. */
    OILED("oiled", 140),
    /** Molybdenum or copper paste. */
    PASTE("paste", 110);

    private final String label;
    private final int lowestFactorThousandths;

    ThreadCondition(String label, int lowestFactorThousandths) {
        this.label = label;
        this.lowestFactorThousandths = lowestFactorThousandths;
    }

    /** The word as typed and shown. */
    public String label() {
        return label;
    }

    /** The lowest plausible K. */
    public double lowestFactor() {
        return lowestFactorThousandths / 1000.0;
    }
}
