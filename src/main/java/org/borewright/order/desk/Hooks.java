package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import org.borewright.order.journal.Deed;
import org.borewright.order.store.HookRow;
import org.borewright.order.store.JournalHead;

/** Who is told of changes. */
@ApplicationScoped
@Transactional
public class Hooks {

    /** As long as what HMAC-SHA256 makes of it (RFC 2104, 3). */
    private static final int SECRET_BYTES = 32;

    private final Turn turn;
    private final SecureRandom dice = new SecureRandom();

    Hooks(Turn turn) {
        this.turn = turn;
    }

    /** Tells somebody of every line of the journal from now on, this one excepted. */
    public HookRow make(String url, String by) {
        byte[] secret = new byte[SECRET_BYTES];
        dice.nextBytes(secret);
        HookRow hook = new HookRow();
        hook.url = url;
        hook.secret = Base64.getEncoder().encodeToString(secret);
        hook.madeAt = turn.now();
        hook.nextTry = hook.madeAt;
        hook.persistAndFlush();
        turn.write(new Deed(by, "hook " + hook.id, Optional.empty(), "make", "", url, false, Optional.empty()));
        hook.position = JournalHead.now().position;
        return hook;
    }

    /** Tells them no more. @return whether there was such a one */
    public boolean end(long id, String by) {
        // Held: of two who end it at once the second finds nothing.
        Optional<HookRow> hook = HookRow.findByIdOptional(id, LockModeType.PESSIMISTIC_WRITE);
        hook.ifPresent(row -> {
            row.delete();
            turn.write(new Deed(by, "hook " + id, Optional.empty(), "end", row.url, "", false, Optional.empty()));
        });
        return hook.isPresent();
    }
}
