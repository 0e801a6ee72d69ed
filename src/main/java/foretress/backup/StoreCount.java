package foretress.backup;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a store held at one moment.
 *
 * @param version of the schema, as the migrations number it
 * @param takenAt milliseconds since 1970
 * @param tables rows and sum of each
 */
public record StoreCount(String version, long takenAt, SortedMap<String, Sum.Of> tables) {
    public StoreCount {
        tables = new TreeMap<>(tables);
    }

    public long rows() {
        return tables.values().stream().mapToLong(Sum.Of::rows).sum();
    }

    /** Tables that are not the same there, with both sides' rows; empty when nothing differs. */
    public Map<String, String> unlike(StoreCount other) {
        Map<String, String> unlike = new TreeMap<>();
        Map<String, Sum.Of> all = new TreeMap<>(tables);
        all.putAll(other.tables);
        all.keySet().forEach(name -> {
            Sum.Of here = tables.getOrDefault(name, Sum.Of.NONE);
            Sum.Of there = other.tables.getOrDefault(name, Sum.Of.NONE);
            if (!here.equals(there)) {
                unlike.put(name, "%d rows, %d there".formatted(here.rows(), there.rows()));
            }
        });
        return unlike;
    }
}
