package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.config.ConfigRegistry;

/**
 * Instants in and out, always in UTC: a time without its zone would be read an hour off twice a year. Both databases keep
 * microseconds, so finer parts are cut off before.
 */
final class Times {

    private Times() {}

    static void teach(Jdbi jdbi) {
        jdbi.registerArgument(new Factory());
    }

    private static final class Factory extends AbstractArgumentFactory<Instant> {

        Factory() {
            super(Types.TIMESTAMP_WITH_TIMEZONE);
        }

        @Override
        protected Argument build(Instant value, ConfigRegistry config) {
            OffsetDateTime utc = value.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
            return (position, statement, context) -> statement.setObject(position, utc);
        }
    }

    static Instant get(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }

    static Optional<Instant> maybe(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(get(row, column));
    }
}
