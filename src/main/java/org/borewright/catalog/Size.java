package org.borewright.catalog;

import org.borewright.measure.Length;

/**
 * A size an engine is rebuilt to.
 *
 * @param label as on crown and box: {@code standard}, {@code +0.50}, {@code +0.020 in}
 * @param oversize over standard; zero at standard
 * @param furtherWork whether it needs further engine work, so that it is shown and not offered
 */
public record Size(String label, Length oversize, boolean furtherWork) implements Comparable<Size> {

    @Override
    public int compareTo(Size other) {
        return oversize.compareTo(other.oversize);
    }
}
