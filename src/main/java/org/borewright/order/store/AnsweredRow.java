package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** How a request with a key was answered; the same key gets the same answer again. */
@Entity
@Table(name = "answered_requests")
public class AnsweredRow extends PanacheEntityBase {

    @Id
    public String requestKey;

    /** Of path, parameters and body; not of the version that the request was meant for. */
    public String fingerprint;

    public Instant at;

    public int status;

    /** The path of what was made; none where nothing was. */
    public String location;

    /** The version that the order had afterwards. */
    public Integer version;

    public String body;

    /** Forgets what was answered before a time. */
    public static void forget(Instant before) {
        delete("at < ?1", before);
    }
}
