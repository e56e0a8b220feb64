package org.borewright.kit.choice;

import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Withdrawal;

/** Whether a number is still one to order: replaced and never made numbers are not, a discontinued one is while it lasts. */
public final class Supply {

    private Supply() {}

    /** Whether a number may go into a kit. */
    public static boolean isSupplied(Shelf shelf, PartNumber number) {
        Withdrawal withdrawal = shelf.withdrawals().get(number);
        return withdrawal == null || withdrawal.state() == Withdrawal.State.DISCONTINUED;
    }
}
