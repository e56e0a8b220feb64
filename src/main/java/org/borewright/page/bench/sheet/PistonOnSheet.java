package org.borewright.page.bench.sheet;

import java.util.List;
import java.util.stream.IntStream;
import org.borewright.page.Form;

/**
 * One piston on a sheet, with the names of its fields.
 *
 * @param index its place in the body, from 0
 * @param tag field of what it is marked with
 * @param number field of the number it was bought by
 * @param diameter field of its reading
 * @param mass field of its mass in grams
 */
public record PistonOnSheet(int index, String tag, String number, String diameter, String mass) {

    private static final int MOST = 24;

    static PistonOnSheet at(int index) {
        String place = "/pistons/" + index + "/";
        return new PistonOnSheet(
                index, place + "tag", place + "number", "number:" + place + "diameter", "number:" + place + "mass");
    }

    /** All its fields, in the order they are entered. */
    public List<String> names() {
        return List.of(tag, number, diameter, mass);
    }

    /** The pistons that a form has fields for. */
    public static List<PistonOnSheet> of(Form form) {
        return IntStream.range(0, MOST)
                .mapToObj(PistonOnSheet::at)
                .takeWhile(piston -> form.fields().containsKey(piston.tag()))
                .toList();
    }

    /** A form with fields for one piston more. */
    public static Form oneMore(Form form) {
        int next = of(form).size();
        return next < MOST ? at(next).in(form, "", "") : form;
    }

    /** A form with the piston entered by its tag and number, its reading still to come. */
    public static Form added(Form form, String tag, String number) {
        return at(of(form).size()).in(form, tag, number);
    }

    private Form in(Form form, String marked, String bought) {
        return form.with(tag, marked).with(number, bought).with(diameter, "").with(mass, "");
    }
}
