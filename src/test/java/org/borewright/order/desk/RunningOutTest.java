package org.borewright.order.desk;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.PersistenceException;
import jakarta.persistence.PessimisticLockException;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is written down where an order cannot be put back. */
class RunningOutTest {

    private final Logger log = Logger.getLogger(RunningOut.class.getName());
    private final List<LogRecord> written = new ArrayList<>();
    private final Handler reader = new Handler() {
        @Override
        public void publish(LogRecord line) {
            written.add(line);
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    };

    @BeforeEach
    void everyLineIsRead() {
        log.setLevel(Level.ALL);
        log.addHandler(reader);
    }

    @AfterEach
    void noneIsReadAnyMore() {
        log.removeHandler(reader);
        log.setLevel(null);
    }

    /** A lock or a row that others hold is no fault: it is asked again at the next look. */
    @ParameterizedTest
    @CsvSource({
        "lock,  INFO,  false",
        "40001, INFO,  false",
        "55P03, INFO,  false",
        "08006, ERROR, true",
        "fault, ERROR, true",
    })
    void othersInTheWayAreOneLineAndAFaultIsTold(String failure, String level, boolean told) {
        OrderDesk broken = new OrderDesk(null, null, null, null, null) {
            @Override
            public boolean runOut(long number, Instant now) {
                throw failing(failure);
            }
        };

        new RunningOut(broken, null, Clock.systemUTC()).runOut(8, Instant.EPOCH);

        assertThat(written).singleElement().satisfies(line -> {
            assertThat(line.getLevel().getName()).isEqualTo(level);
            assertThat(line.getThrown() != null).isEqualTo(told);
        });
    }

    private static RuntimeException failing(String failure) {
        return switch (failure) {
            case "lock" -> new PessimisticLockException("order 9 began to wait meanwhile");
            case "fault" -> new IllegalStateException("no such count");
            default -> new PersistenceException(new SQLException("no", failure));
        };
    }
}
