package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import org.borewright.api.shown.Days;
import org.borewright.api.shown.ShownMoney;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Withdrawal;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.Need;
import org.jspecify.annotations.Nullable;

/**
 * The bill of materials.
 *
 * @param complete whether every need is covered
 * @param date when the last line is there; absent when the bill is not complete
 * @param lines what to order
 * @param surplus what is left over
 * @param inPlace which loose gaskets go on in place of those of the kit, which are left over too; absent where none does
 * @param missing what cannot be had
 * @param total of the lines; absent when there is none
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BillAnswer(
        boolean complete,
        @Nullable LocalDate date,
        List<LineAnswer> lines,
        List<SurplusAnswer> surplus,
        @Nullable List<InPlaceAnswer> inPlace,
        List<MissingAnswer> missing,
        @Nullable ShownMoney total) {

    /**
     * One line.
     *
     * @param number to order
     * @param packed engine box, cylinder box, pack or loose
     * @param quantity how many
     * @param covers what it is for, and for which holes
     * @param price of one
     * @param total price × quantity
     * @param availability in stock, or to be ordered
     * @param date when it is there
     */
    public record LineAnswer(
            String number,
            String packed,
            int quantity,
            List<CoversAnswer> covers,
            ShownMoney price,
            ShownMoney total,
            String availability,
            LocalDate date) {

        /** A line on the wire. */
        public static LineAnswer of(Kit.Line line, LocalDate on) {
            return new LineAnswer(
                    line.box().number().text(),
                    line.box().kind().label(),
                    line.quantity(),
                    line.covers().stream().map(CoversAnswer::of).toList(),
                    ShownMoney.of(line.price()),
                    ShownMoney.of(line.total()),
                    line.leadDays() == 0 ? "in stock" : "to be ordered, " + Days.inWords(line.leadDays()),
                    on.plusDays(line.leadDays()));
        }
    }

    /**
     * Parts that a line covers.
     *
     * @param part what it is
     * @param number its number
     * @param quantity how many are needed
     * @param cylinders the holes they are for; {@code engine} for parts of no hole
     */
    public record CoversAnswer(String part, String number, int quantity, List<String> cylinders) {

        /** Parts on the wire. */
        public static CoversAnswer of(Need need) {
            return new CoversAnswer(
                    need.part().kind().label(),
                    need.number().text(),
                    need.count(),
                    need.holes().stream().distinct().toList());
        }
    }

    /**
     * Parts left over.
     *
     * @param number of the part
     * @param quantity how many
     */
    public record SurplusAnswer(String number, int quantity) {}

    /**
     * A gasket that goes on in place of that of the kit, so that the kit's own is left over.
     *
     * @param number the loose one
     * @param part what it is, and what is left over
     * @param of the number of the kit
     */
    public record InPlaceAnswer(String number, String part, String of) {

        static @Nullable List<InPlaceAnswer> of(Gaskets gaskets) {
            String kit = gaskets.kit().number().text();
            return gaskets.loose() == 0
                    ? null
                    : gaskets.parts()
                            .skip(1)
                            .map(loose -> new InPlaceAnswer(
                                    loose.number().text(), loose.kind().label(), kit))
                            .toList();
        }
    }

    /**
     * A need that cannot be covered.
     *
     * @param part what it is
     * @param number its number
     * @param quantity how many are needed
     * @param obtainable how many of them can be had, which is from the shelf
     * @param reason replaced, discontinued, never made, or no more to be had
     */
    public record MissingAnswer(String part, String number, int quantity, int obtainable, String reason) {

        static MissingAnswer of(Kit.Missing missing) {
            return new MissingAnswer(
                    missing.part().kind().label(),
                    missing.part().number().text(),
                    missing.needed(),
                    missing.obtainable(),
                    missing.withdrawn().map(Withdrawal.State::label).orElse("no more to be had"));
        }
    }

    static BillAnswer of(Kit kit, LocalDate on) {
        return new BillAnswer(
                kit.isComplete(),
                kit.isComplete() ? on.plusDays(kit.leadDays()) : null,
                kit.lines().stream().map(line -> LineAnswer.of(line, on)).toList(),
                kit.surplus().stream()
                        .map(over -> new SurplusAnswer(over.number().text(), over.count()))
                        .toList(),
                InPlaceAnswer.of(kit.gaskets()),
                kit.missing().stream().map(MissingAnswer::of).toList(),
                kit.total().map(ShownMoney::of).orElse(null));
    }
}
