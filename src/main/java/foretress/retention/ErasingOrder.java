package foretress.retention;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** In which order tables are emptied of a person: what points at a row, or is found through it, goes before it. */
final class ErasingOrder {
    private ErasingOrder() {}

    /**
     * @param rows by table, the condition that finds its rows
     * @param pointsAt by table, the tables its foreign keys point at
     * @return every table of {@code rows} once
     * @throws IllegalStateException when two tables each have to go before the other
     */
    static List<String> of(Map<String, String> rows, Map<String, Set<String>> pointsAt) {
        List<String> order = new ArrayList<>();
        Set<String> left = new TreeSet<>(rows.keySet());
        while (!left.isEmpty()) {
            Set<String> needed = new HashSet<>();
            left.forEach(table -> left.stream().filter(other -> !other.equals(table))
                .filter(other -> needs(table, other, rows, pointsAt)).forEach(needed::add));
            List<String> next = left.stream().filter(table -> !needed.contains(table)).toList();
            if (next.isEmpty()) {
                throw new IllegalStateException("each of these tables has to be erased before another: " + left);
            }
            order.addAll(next);
            next.forEach(left::remove);
        }
        return List.copyOf(order);
    }

    private static boolean needs(String table, String other, Map<String, String> rows,
        Map<String, Set<String>> pointsAt) {
        return pointsAt.getOrDefault(table, Set.of()).contains(other)
            || Pattern.compile("\\bfrom " + other + "\\b").matcher(rows.get(table)).find();
    }
}
