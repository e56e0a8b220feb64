package org.borewright.measure;

import java.util.Locale;

/**
 * The ring a gauge was zeroed on, where it was not at 20 °C. Its marked size holds at 20 °C: warmer it is larger, and the gauge shows
 * so much too little.
 *
 * @param size as marked; above zero
 * @param temperature of the ring when the gauge was zeroed
 * @param expansion of its material
 */
public record SettingRing(Length size, Temperature temperature, Expansion expansion) {

    /** Hardened steel, where no material is stated: 11.5 × 10⁻⁶ /K (common practice). */
    public static final Expansion STEEL = new Expansion(11.5e-6, Expansion.USUAL_UNCERTAINTY);

    /** @throws IllegalArgumentException if the size is not above zero */
    public SettingRing {
        if (size.nanometres() <= 0) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "a setting ring of %s", size));
        }
    }

    /** How much larger it is than marked, S·α·(t − 20), in nanometres; negative when cold. Source: ISO 1 and the definition of α. */
    public double growth() {
        return size.nanometres() * expansion.perKelvin() * temperature.kelvinsAboveReference();
    }

    /**
     * The standard uncertainty of the growth in nanometres: S·α·u(t) and S·|t − 20|·u(α), added in squares (JCGM 100, 5.1.2). Its
     * temperature counts as read by itself, even where one thermometer served ring and block: that never makes it smaller.
     */
    public double standardUncertainty() {
        double fromTemperature = expansion.perKelvin() * Climate.at(temperature).standardUncertainty();
        double fromExpansion = temperature.kelvinsAboveReference() * expansion.standardUncertainty();
        return size.nanometres() * Math.hypot(fromTemperature, fromExpansion);
    }
}
