package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.util.Optional;

/** A block or a set of barrels that bears a tag of the shop. */
@Entity
@Table(name = "blocks")
public class BlockRow extends PanacheEntityBase {

    @Id
    public String tag;

    public String engine;

    /** The order that it is in the shop for; none where that has ended. */
    public Long openOrder;

    /** A block that nobody else changes until this transaction ends. */
    public static Optional<BlockRow> held(String tag) {
        return BlockRow.<BlockRow>findByIdOptional(tag, LockModeType.PESSIMISTIC_WRITE);
    }
}
