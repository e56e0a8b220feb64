package org.borewright.api.order.answer;

import java.util.List;
import org.borewright.order.desk.StockRoom;

/**
 * What arrived.
 *
 * @param number of a box or loose part
 * @param quantity how many
 * @param left how many are left on the shelf, without those put aside for orders
 * @param putAside for the orders that waited for them, by their numbers
 */
public record ArrivalAnswer(String number, int quantity, int left, List<ArrivalAnswer.GivenAnswer> putAside) {

    /** How many an order got. */
    public record GivenAnswer(long order, int quantity) {}

    /** An arrival of so many of a number. */
    public static ArrivalAnswer of(String number, int quantity, StockRoom.Arrived arrived) {
        return new ArrivalAnswer(
                number,
                quantity,
                arrived.left(),
                arrived.givenTo().entrySet().stream()
                        .map(given -> new GivenAnswer(given.getKey(), given.getValue()))
                        .toList());
    }
}
