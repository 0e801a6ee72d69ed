package foretress.backup;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads what {@link Snapshot} wrote to its very end, and checks every count and sum on the way. */
final class BackupReading {
    /** What is done with it. */
    interface To {
        /** Once, before the first table. */
        default void version(String version) throws SQLException, IOException {}

        default void table(String name, List<Catalogue.Column> columns) throws SQLException, IOException {}

        default void row(Object[] values) throws SQLException, IOException {}

        default void end() throws SQLException, IOException {}
    }

    private final DataInputStream in;
    private final To to;

    private BackupReading(InputStream in, To to) {
        this.in = new DataInputStream(in);
        this.to = to;
    }

    /** @throws IOException when it is cut short, or not what was written */
    static StoreCount read(InputStream in, To to) throws IOException, SQLException {
        return new BackupReading(in, to).all();
    }

    private StoreCount all() throws IOException, SQLException {
        expect(in.readUTF().equals(Snapshot.MARK), "this is no store");
        int format = in.readInt();
        expect(format == Snapshot.FORMAT, "it is written in format %d, and this program reads %d".formatted(format,
            Snapshot.FORMAT));
        String version = in.readUTF();
        long takenAt = in.readLong();
        to.version(version);
        Map<String, Sum.Of> tables = new TreeMap<>();
        while (in.readBoolean()) {
            String name = in.readUTF();
            tables.put(name, table(name));
        }
        expect(in.readInt() == tables.size(), "tables are missing");
        expect(in.read() == -1, "something stands behind its end");
        return new StoreCount(version, takenAt, new TreeMap<>(tables));
    }

    private Sum.Of table(String name) throws IOException, SQLException {
        List<Catalogue.Column> columns = new ArrayList<>();
        int count = in.readInt();
        for (int i = 0; i < count; i++) {
            columns.add(new Catalogue.Column(in.readUTF(), cell(in.readByte())));
        }
        to.table(name, columns);
        Sum.Of sum = rows(columns);
        expect(sum.equals(new Sum.Of(in.readLong(), in.readUTF())),
            "the rows of %s are not as counted".formatted(name));
        to.end();
        return sum;
    }

    private Sum.Of rows(List<Catalogue.Column> columns) throws IOException, SQLException {
        var sum = new Sum();
        var bytes = new ByteArrayOutputStream();
        while (in.readBoolean()) {
            bytes.reset();
            var again = new DataOutputStream(bytes);
            Object[] row = new Object[columns.size()];
            for (int i = 0; i < row.length; i++) {
                row[i] = columns.get(i).cell().read(in);
                columns.get(i).cell().write(again, row[i]);
            }
            sum.add(bytes.toByteArray(), bytes.size());
            to.row(row);
        }
        return sum.done();
    }

    private static Cell cell(int place) throws IOException {
        expect(place >= 0 && place < Cell.values().length, "a column is of a kind this program does not know");
        return Cell.values()[place];
    }

    private static void expect(boolean holds, String otherwise) throws IOException {
        if (!holds) {
            throw new IOException(otherwise);
        }
    }
}
