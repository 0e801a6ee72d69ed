package foretress.backup;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** How one value stands in a backup: the same bytes whichever database it came from. A new kind goes to the end, for its place is what is written. */
enum Cell {
    UUID("uuid") {
        @Override
        Object get(ResultSet row, int at) throws SQLException {
            return row.getObject(at, UUID.class);
        }

        @Override
        void put(DataOutputStream out, Object value) throws IOException {
            UUID id = (UUID) value;
            out.writeLong(id.getMostSignificantBits());
            out.writeLong(id.getLeastSignificantBits());
        }

        @Override
        Object take(DataInputStream in) throws IOException {
            return new UUID(in.readLong(), in.readLong());
        }
    },
    TEXT("text", "varchar", "character varying", "character large object", "clob", "char", "bpchar", "character") {
        @Override
        Object get(ResultSet row, int at) throws SQLException {
            return row.getString(at);
        }

        @Override
        void put(DataOutputStream out, Object value) throws IOException {
            bytes(out, ((String) value).getBytes(StandardCharsets.UTF_8));
        }

        @Override
        Object take(DataInputStream in) throws IOException {
            return new String(bytes(in), StandardCharsets.UTF_8);
        }
    },
    NUMBER("int2", "int4", "int8", "smallint", "integer", "bigint", "bigserial", "serial") {
        @Override
        Object get(ResultSet row, int at) throws SQLException {
            long value = row.getLong(at);
            return row.wasNull() ? null : value;
        }

        @Override
        void put(DataOutputStream out, Object value) throws IOException {
            out.writeLong((Long) value);
        }

        @Override
        Object take(DataInputStream in) throws IOException {
            return in.readLong();
        }
    },
    TRUTH("bool", "boolean") {
        @Override
        Object get(ResultSet row, int at) throws SQLException {
            boolean value = row.getBoolean(at);
            return row.wasNull() ? null : value;
        }

        @Override
        void put(DataOutputStream out, Object value) throws IOException {
            out.writeBoolean((Boolean) value);
        }

        @Override
        Object take(DataInputStream in) throws IOException {
            return in.readBoolean();
        }
    },
    MOMENT("timestamptz", "timestamp with time zone") {
        @Override
        Object get(ResultSet row, int at) throws SQLException {
            OffsetDateTime value = row.getObject(at, OffsetDateTime.class);
            return value == null ? null : value.withOffsetSameInstant(ZoneOffset.UTC);
        }

        @Override
        void put(DataOutputStream out, Object value) throws IOException {
            Instant moment = ((OffsetDateTime) value).toInstant();
            out.writeLong(moment.getEpochSecond());
            out.writeInt(moment.getNano());
        }

        @Override
        Object take(DataInputStream in) throws IOException {
            return Instant.ofEpochSecond(in.readLong(), in.readInt()).atOffset(ZoneOffset.UTC);
        }
    },
    DAY("date") {
        @Override
        Object get(ResultSet row, int at) throws SQLException {
            return row.getObject(at, LocalDate.class);
        }

        @Override
        void put(DataOutputStream out, Object value) throws IOException {
            out.writeLong(((LocalDate) value).toEpochDay());
        }

        @Override
        Object take(DataInputStream in) throws IOException {
            return LocalDate.ofEpochDay(in.readLong());
        }
    },
    /** A day and time of the salon's own clock. */
    LOCAL("timestamp") {
        @Override
        Object get(ResultSet row, int at) throws SQLException {
            return row.getObject(at, LocalDateTime.class);
        }

        @Override
        void put(DataOutputStream out, Object value) throws IOException {
            LocalDateTime time = (LocalDateTime) value;
            out.writeLong(time.toEpochSecond(ZoneOffset.UTC));
            out.writeInt(time.getNano());
        }

        @Override
        Object take(DataInputStream in) throws IOException {
            return LocalDateTime.ofEpochSecond(in.readLong(), in.readInt(), ZoneOffset.UTC);
        }
    },
    BYTES("bytea", "binary varying", "binary large object", "blob", "varbinary") {
        @Override
        Object get(ResultSet row, int at) throws SQLException {
            return row.getBytes(at);
        }

        @Override
        void put(DataOutputStream out, Object value) throws IOException {
            bytes(out, (byte[]) value);
        }

        @Override
        Object take(DataInputStream in) throws IOException {
            return bytes(in);
        }
    };

    /** A paper of thirty pages is below one megabyte; what claims more than this is no backup. */
    private static final int MOST_BYTES = 256 << 20;

    private final Set<String> names;

    Cell(String... names) {
        this.names = Set.of(names);
    }

    /** @param type as the driver calls it; empty for a kind that no backup knows yet */
    static Optional<Cell> of(String type) {
        String name = type.toLowerCase(Locale.ROOT).replaceAll("\\(.*?\\)", "");
        for (Cell cell : values()) {
            if (cell.names.contains(name)) {
                return Optional.of(cell);
            }
        }
        return Optional.empty();
    }

    abstract Object get(ResultSet row, int at) throws SQLException;

    abstract void put(DataOutputStream out, Object value) throws IOException;

    abstract Object take(DataInputStream in) throws IOException;

    void write(DataOutputStream out, Object value) throws IOException {
        out.writeBoolean(value != null);
        if (value != null) {
            put(out, value);
        }
    }

    Object read(DataInputStream in) throws IOException {
        return in.readBoolean() ? take(in) : null;
    }

    private static void bytes(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static byte[] bytes(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > MOST_BYTES) {
            throw new IOException("a value claims to be " + length + " bytes long");
        }
        byte[] bytes = new byte[length];
        in.readFully(bytes);
        return bytes;
    }
}
