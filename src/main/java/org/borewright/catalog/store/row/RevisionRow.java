package org.borewright.catalog.store.row;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;

/** That a catalogue was loaded, and when; the last one is what the other tables hold. */
@Entity
@Table(name = "revisions")
public class RevisionRow extends PanacheEntityBase {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String fit;

    public String offers;

    public Instant loadedAt;

    /** The catalogue that the tables hold; empty before the first load. */
    public static Optional<RevisionRow> latest() {
        return findAll(Sort.descending("id")).firstResultOptional();
    }
}
