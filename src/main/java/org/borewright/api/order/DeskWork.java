package org.borewright.api.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.borewright.api.order.request.OrderReader;
import org.borewright.order.Errand;
import org.borewright.order.Move;
import org.borewright.order.desk.OrderDesk;
import org.borewright.order.store.OrderRow;

/** Takes in what a customer says, and what the desk does about it. */
@ApplicationScoped
class DeskWork {

    private final OrderReader reader;
    private final OrderDesk desk;

    DeskWork(OrderReader reader, OrderDesk desk) {
        this.reader = reader;
        this.desk = desk;
    }

    /** Refuses what cannot be done with an order as it stands, whatever else is sent. */
    void see(Errand errand, Optional<Move> move) {
        desk.see(errand, move);
    }

    /** Refuses what cannot be done with an order as it stands. */
    void see(long order, Move move) {
        desk.see(order, move);
    }

    OrderRow accept(Errand errand, byte[] body) {
        OrderReader.Yes yes = reader.yes(body);
        return desk.accept(errand, yes.quote(), yes.mayWait());
    }

    OrderRow decline(Errand errand, byte[] body) {
        return desk.decline(errand, reader.reason(body));
    }

    OrderRow withdraw(Errand errand, byte[] body) {
        return desk.withdraw(errand, reader.reason(body));
    }

    OrderRow write(Errand errand, byte[] body) {
        return desk.write(errand, reader.notes(body));
    }

    OrderRow release(Errand errand, byte[] body) {
        reader.nothing(body);
        return desk.release(errand);
    }
}
