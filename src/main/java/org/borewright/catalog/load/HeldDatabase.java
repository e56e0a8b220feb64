package org.borewright.catalog.load;

import io.quarkus.flyway.FlywayConfigurationCustomizer;
import io.quarkus.runtime.PreventFurtherStepsException;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.h2.api.ErrorCode;

/**
 * Ends a start beside a database file that a running one holds, in a sentence: nothing is broken. It is asked before the first migration,
 * which would end the same way with the stack of everybody who took part.
 */
@ApplicationScoped
class HeldDatabase implements FlywayConfigurationCustomizer {

    private static final String FILE = "jdbc:h2:file:";

    private final String database;

    HeldDatabase(CatalogSettings settings) {
        this.database = settings.database();
    }

    @Override
    public void customize(FluentConfiguration configuration) {
        try {
            configuration.getDataSource().getConnection().close();
        } catch (SQLException refused) {
            // Whatever else is wrong the first migration meets as well, and tells.
            if (refused.getErrorCode() == ErrorCode.DATABASE_ALREADY_OPEN_1) {
                throw new PreventFurtherStepsException(
                        "The database " + named(database)
                                + " is held by another start of the service that still runs. Stop that"
                                + " one, or give this one a folder of its own (-Dborewright.home=...) and a port (-Dquarkus.http.port=...).",
                        FirstLoad.REFUSED);
            }
        }
    }

    /** The file of an address, without the options behind it: a password may be among them, and a log is read by many. */
    static String named(String address) {
        String file = address.replace(FILE, "");
        int options = file.indexOf(';');
        return options < 0 ? file : file.substring(0, options);
    }
}
