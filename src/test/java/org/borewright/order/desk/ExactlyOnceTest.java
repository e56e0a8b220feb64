package org.borewright.order.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.PersistenceException;
import jakarta.persistence.PessimisticLockException;
import java.sql.SQLException;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is tried again, and what is not. */
@QuarkusTest
class ExactlyOnceTest {

    private static final Reply DONE = new Reply(200, Optional.empty(), Optional.empty(), "{}");

    @Inject
    ExactlyOnce once;

    private final AtomicInteger tries = new AtomicInteger();

    private Optional<Reply> reply(Supplier<Reply> work) {
        return once.reply(UUID.randomUUID().toString(), "all that was sent", () -> {
            tries.incrementAndGet();
            return work.get();
        });
    }

    private static PersistenceException failure(String state) {
        return new PersistenceException(new IllegalStateException(new SQLException("no", state)));
    }

    @ParameterizedTest
    @CsvSource({"23505", "40001", "40P01", "55P03", "HYT00", "90131"})
    void whereOthersAreInTheWayEachTimeItIsRefusedAtLast(String state) {
        assertThatThrownBy(() -> reply(() -> {
                    throw failure(state);
                }))
                .asInstanceOf(InstanceOfAssertFactories.type(RefusedException.class))
                .extracting(RefusedException::refusal)
                .isEqualTo(new Refusal.Busy());
        assertThat(tries).hasValue(5);
    }

    @Test
    void whoFindsTheWayFreeAtLastIsAnswered() {
        assertThat(reply(() -> {
                    if (tries.get() < 5) {
                        throw new PessimisticLockException("somebody began to wait meanwhile");
                    }
                    return DONE;
                }))
                .contains(DONE);
    }

    /** A text too long, a server that is gone, a fault without a name: it would be no better the next time. */
    @ParameterizedTest
    @CsvSource(
            value = {"22001", "08006", "-"},
            nullValues = "-")
    void whatNobodyWasInTheWayOfIsNotTriedAgain(String state) {
        PersistenceException failure = failure(state);

        assertThatThrownBy(() -> reply(() -> {
                    throw failure;
                }))
                .isSameAs(failure);
        assertThat(tries).hasValue(1);
    }
}
