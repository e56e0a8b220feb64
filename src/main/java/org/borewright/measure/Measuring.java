package org.borewright.measure;

/**
 * With what, and how warm, things of one kind were measured.
 *
 * @param gauge the instrument
 * @param climate how warm they were
 */
public record Measuring(Gauge gauge, Climate climate) {

    /** What a reading is at 20 °C, with what the setting ring had grown, for a part of a material. Source: ISO 1. */
    public Length atReference(Length read, Expansion material) {
        return material.atReference(read, gauge.ringGrowth(), climate.temperature());
    }

    /** The uncertainty of a diameter taken so of a part of a material, term by term. Source: JCGM 100, 5.1.2. */
    public Uncertainty budget(Length diameter, Expansion material) {
        return Uncertainty.of(diameter, gauge, climate, material);
    }
}
