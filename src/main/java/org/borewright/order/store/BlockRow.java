package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.borewright.order.BlockKind;

/** A block, a set of barrels or one barrel that bears a tag of the shop. */
@Entity
@Table(name = "blocks")
public class BlockRow extends PanacheEntityBase {

    /** How tags are sorted that are held one after the other: as they are found, so that all who hold some take them in one order. */
    public static final Comparator<String> IN_TURN =
            Comparator.comparing(BlockRow::folded).thenComparing(Comparator.naturalOrder());

    @Id
    public String tag;

    /** The tag without regard to case, by which it is found; none of a block that was told from another by case alone, long ago. */
    public String folded;

    /** Whether a block or a barrel bears it. */
    @Enumerated(EnumType.STRING)
    public BlockKind kind;

    public String engine;

    /** The order that it is in the shop for; none where that has ended. */
    public Long openOrder;

    /** A block or barrel that bears a tag from now on, as it was first written. */
    public static BlockRow tagged(String tag, BlockKind kind, String engine) {
        BlockRow block = new BlockRow();
        block.tag = tag;
        block.folded = folded(tag);
        block.kind = kind;
        block.engine = engine;
        block.persistAndFlush();
        return block;
    }

    /** The block or barrel that bears a tag, whatever its case. */
    public static Optional<BlockRow> bearing(String tag) {
        return BlockRow.<BlockRow>findByIdOptional(tag)
                .or(() -> find("folded", folded(tag)).firstResultOptional());
    }

    /** The same, and nobody else changes it until this transaction ends. */
    public static Optional<BlockRow> held(String tag) {
        Optional<BlockRow> block = bearing(tag);
        block.ifPresent(row -> getEntityManager().refresh(row, LockModeType.PESSIMISTIC_WRITE));
        return block;
    }

    private static String folded(String tag) {
        return tag.toLowerCase(Locale.ROOT);
    }

    /**
     * So many blocks at the most whose tag begins so, whatever its case, by tag as the database sorts; one that was told from another by case
     * alone is not among them.
     */
    public static List<BlockRow> beginning(String tag, int most) {
        String literally = folded(tag).replace("!", "!!").replace("%", "!%").replace("_", "!_");
        return BlockRow.<BlockRow>find("folded like ?1 escape '!'", Sort.by("tag"), literally + "%")
                .page(0, most)
                .list();
    }
}
