package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import org.borewright.order.journal.Digest;

/** What one hole of a block was on one day. */
@Entity
@Table(name = "hole_lives")
public class HoleLifeRow extends PanacheEntityBase {

    /** On what occasion. */
    public enum What {
        /** As it was found. */
        SURVEYED("surveyed"),
        /** As it was found once more, when it did not clean up or something hidden came to light. */
        DID_NOT_CLEAN_UP("did not clean up"),
        /** As it was signed. */
        FINISHED("finished"),
        /** As it was signed to run on with new rings: worn, and no finish of its own. */
        RINGS_ONLY("rings only");

        private final String label;

        What(String label) {
            this.label = label;
        }

        /** The word as shown. */
        public String label() {
            return label;
        }
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String block;

    public String cylinder;

    /** The tag of the barrel it is in; none where barrels were not told apart. */
    public String barrel;

    public long orderNumber;

    /** The version of the order that it was written with; 0 where that was not noted. */
    public int orderVersion;

    public Instant at;

    @Column(name = "by_whom")
    public String by;

    @Enumerated(EnumType.STRING)
    public What what;

    /** The size of its pistons; none where nobody knew. */
    public String size;

    /** The smallest diameter at 20 °C, in nanometres; none where it was not measured. */
    public Long smallest;

    /** The largest likewise. */
    public Long largest;

    /** The rebuilds left after this by the metal; none where that is not known. */
    public Integer leftByMetal;

    /** Those of them for which pistons exist. */
    public Integer leftByPistons;

    /** With what and how warm it was measured, and what was found. */
    public String says;

    /** Of all of it. */
    String digest() {
        Digest all = new Digest()
                .whole(id)
                .text(block)
                .text(cylinder)
                .whole(orderNumber)
                .whole(orderVersion)
                .time(at)
                .text(by)
                .text(what.name())
                .text(size)
                .maybe(smallest)
                .maybe(largest)
                .maybe(leftByMetal)
                .maybe(leftByPistons)
                .text(says);
        // None of holes measured before barrels had tags, whose lines were sealed without.
        return (barrel == null ? all : all.text(barrel)).hex();
    }

    /** The life of a block with all its holes, in the order things happened. */
    public static List<HoleLifeRow> ofBlock(String tag) {
        return list("block", Sort.by("id"), tag);
    }

    /** The life of a barrel likewise, in whatever block and at whatever cylinder it sat. */
    public static List<HoleLifeRow> ofBarrel(String tag) {
        return list("barrel", Sort.by("id"), tag);
    }
}
