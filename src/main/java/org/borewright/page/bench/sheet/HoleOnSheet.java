package org.borewright.page.bench.sheet;

import java.util.List;

/**
 * One hole on a sheet, with the names of its fields.
 *
 * @param index its place in the body, from 0
 * @param cylinder its name, as the maker counts
 * @param rows of its grid, from the deck down
 * @param findings the fields of what was seen in it, with room for more
 */
public record HoleOnSheet(int index, String cylinder, List<HoleOnSheet.Row> rows, List<HoleOnSheet.Seen> findings) {

    /** Copies the lists. */
    public HoleOnSheet {
        rows = List.copyOf(rows);
        findings = List.copyOf(findings);
    }

    /**
     * The readings at one depth.
     *
     * @param depth as typed; empty where nobody typed it yet
     * @param number of the row, from 1
     * @param cells one for each axis
     */
    public record Row(String depth, int number, List<HoleOnSheet.Cell> cells) {}

    /**
     * The place of one reading.
     *
     * @param name of its field
     * @param axis along which it is taken
     */
    public record Cell(String name, String axis) {}

    /**
     * Something seen in it.
     *
     * @param kind field of what it is
     * @param depth field of how deep it goes into the wall
     * @param height field of how far below the deck it lies
     */
    public record Seen(String kind, String depth, String height) {

        static Seen in(int hole, int index) {
            String place = "/cylinders/" + hole + "/findings/" + index + "/";
            return new Seen(place + "kind", "number:" + place + "depth", "number:" + place + "height");
        }

        List<String> names() {
            return List.of(kind, depth, height);
        }
    }

    /** The field of a member that is a text. */
    public String text(String member) {
        return "/cylinders/" + index + "/" + member;
    }

    /** The field of a member that is a number. */
    public String number(String member) {
        return "number:" + text(member);
    }

    /** The field of a member that is yes or no. */
    public String truth(String member) {
        return "truth:" + text(member);
    }
}
