package org.borewright.fit.shape;

import org.borewright.measure.Length;

/** The property class of a bolt or stud and its stress under proof load (ISO 898-1:2013, table 3). */
public enum PropertyClass {
    /** Class 8.8: 580 MPa up to M16, 600 MPa above. */
    CLASS_8_8("8.8", 580, 600),
    /** Class 10.9: 830 MPa. */
    CLASS_10_9("10.9", 830, 830),
    /** Class 12.9: 970 MPa. */
    CLASS_12_9("12.9", 970, 970);

    private static final Length M16 = Length.ofMicrometres(16_000);

    private final String label;
    private final int proofStressToM16;
    private final int proofStressAbove;

    PropertyClass(String label, int proofStressToM16, int proofStressAbove) {
        this.label = label;
        this.proofStressToM16 = proofStressToM16;
        this.proofStressAbove = proofStressAbove;
    }

    /** The marking, such as {@code 8.8}. */
    public String label() {
        return label;
    }

    /** The proof load of a thread in newtons: stress under proof load × stress area. */
    public double proofLoad(MetricThread thread) {
        int stress = thread.diameter().isMoreThan(M16) ? proofStressAbove : proofStressToM16;
        return stress * thread.stressArea();
    }
}
