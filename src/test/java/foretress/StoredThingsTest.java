package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.running.Stored;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.PrePersist;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import java.io.IOException;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What is stored is right from birth: whatever a constructor, a factory or a verb is given, it refuses or leaves a row that its table
 * takes. One argument at a time is spoilt; what the tables want is read from the migrations. What is too long, the column itself refuses.
 */
class StoredThingsTest {
    private static final Path CLASSES = Path.of("target/classes");
    private static final Instant NOW = Instant.parse("2026-06-01T10:00:00Z");

    /** Columns that are there and may say nothing. */
    private static final Set<String> MAY_BE_BLANK = Set.of("salon.address", "salon.town", "salon.phone", "salon.email",
        "salon.closed_days", "menu_item.step_ids", "product_line.other_dyes", "product_line.shades",
        "client.given_name", "client.family_name");
    /** What cannot come before what; a wall clock may be put back between two acts, so only what one act writes is here. */
    private static final List<List<String>> IN_ORDER = List.of(List.of("made_at", "expires_at"),
        List.of("issued_at", "expires_at"), List.of("applied_at", "readable_from"), List.of("from_at", "to_at"));
    /** Made with the vault or the store at hand only: the wrong cases are tried all the same. */
    private static final Set<String> NEED_A_SERVER =
        Set.of("Task", "SetUpCode", "BenchClock", "BenchGap", "SignedConsent");

    /** For saying what a visit would owe: they are never stored. */
    private static final Set<String> NEVER_STORED = Set.of("foreseen", "stranger");

    /** Whether each column must say something, by table and name. */
    private static Map<String, Boolean> columns;
    private static List<Class<?>> stored;

    @BeforeAll
    static void read() throws SQLException, IOException {
        String store = "jdbc:h2:mem:stored;DB_CLOSE_DELAY=-1;CASE_INSENSITIVE_IDENTIFIERS=TRUE";
        Flyway.configure().dataSource(store, "sa", "").locations("filesystem:src/main/resources/db/migration").load()
            .migrate();
        columns = columns(store);
        try (Stream<Path> files = Files.walk(CLASSES.resolve("foretress"))) {
            stored = files.filter(file -> file.toString().endsWith(".class")).<Class<?>>map(StoredThingsTest::load)
                .filter(type -> type.isAnnotationPresent(Entity.class)).toList();
        }
    }

    @Test
    void noStoredThingHasASetter() {
        assertThat(stored.stream().flatMap(type -> Stream.of(type.getDeclaredMethods()))
            .filter(method -> !Modifier.isPrivate(method.getModifiers()) && method.getName().matches("set[A-Z].*")))
            .isEmpty();
    }

    @Test
    void eachIsMadeWholeOrNotAtAll() {
        Set<String> complaints = new TreeSet<>();
        for (Class<?> type : stored) {
            for (Executable way : ways(type)) {
                for (Object[] spoilt : spoilt(way)) {
                    made(way, spoilt).ifPresent(thing -> complaints.addAll(faults(thing, way)));
                }
            }
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void noVerbSpoilsWhatWasWhole() {
        Set<String> complaints = new TreeSet<>();
        for (Class<?> type : stored) {
            for (Method verb : verbs(type)) {
                for (Object[] spoilt : spoilt(verb)) {
                    example(type).ifPresent(thing -> {
                        call(verb, thing, spoilt);
                        complaints.addAll(faults(thing, verb));
                    });
                }
            }
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    @DisplayName("the test can make one of each, or it would prove nothing")
    void oneOfEachCanBeMade() {
        assertThat(stored).hasSizeGreaterThan(40);
        assertThat(stored.stream().filter(type -> example(type).isEmpty()).map(Class::getSimpleName))
            .containsExactlyInAnyOrderElementsOf(NEED_A_SERVER);
        assertThat(stored.stream().flatMap(type -> example(type).stream())
            .flatMap(thing -> faults(thing, ways(thing.getClass()).get(0)).stream())).isEmpty();
    }

    // what is wrong with one

    private static Set<String> faults(Object thing, Executable by) {
        String table = thing.getClass().getAnnotation(Table.class).name();
        Set<String> faults = new TreeSet<>();
        Stream.of(thing.getClass().getDeclaredMethods()).filter(each -> each.isAnnotationPresent(PrePersist.class))
            .forEach(each -> call(each, thing));
        for (Field field : fields(thing.getClass())) {
            String column = table + "." + column(field);
            fault(column, value(field, thing)).ifPresent(fault -> faults.add(
                "%s %s after %s".formatted(column, fault,
                    by.getDeclaringClass().getSimpleName() + "." + by.getName())));
        }
        for (List<String> pair : IN_ORDER) {
            Optional<Instant> first = moment(thing, pair.get(0)), then = moment(thing, pair.get(1));
            if (first.isPresent() && then.isPresent() && then.get().isBefore(first.get())) {
                faults.add(table + " out of order " + pair);
            }
        }
        return faults;
    }

    private static Optional<String> fault(String name, Object value) {
        boolean needed = columns.get(name);
        if (value == null) {
            return needed ? Optional.of("is null") : Optional.empty();
        }
        if (value instanceof String text && text.isBlank()) {
            return needed && !MAY_BE_BLANK.contains(name) ? Optional.of("is blank") : Optional.empty();
        }
        return value instanceof Number number && number.longValue() < 0 ? Optional.of("is below nothing")
            : Optional.empty();
    }

    private static Optional<Instant> moment(Object thing, String column) {
        return fields(thing.getClass()).stream().filter(field -> column(field).equals(column))
            .map(field -> (Instant) value(field, thing)).filter(Objects::nonNull).findFirst();
    }

    // how one is made

    /** Constructors and factories, but not the one that only the mapping uses. */
    private static List<Executable> ways(Class<?> type) {
        return Stream.<Executable>concat(Stream.of(type.getDeclaredConstructors()), Stream.of(type.getDeclaredMethods())
            .filter(each -> Modifier.isStatic(each.getModifiers()) && each.getReturnType() == type))
            .filter(way -> !Modifier.isPrivate(way.getModifiers()) && way.getParameterCount() > 0 && !way.isSynthetic()
                && !NEVER_STORED.contains(way.getName()))
            .toList();
    }

    private static List<Method> verbs(Class<?> type) {
        return Stream.of(type.getDeclaredMethods())
            .filter(each -> !Modifier.isStatic(each.getModifiers()) && !Modifier.isPrivate(each.getModifiers())
                && !each.isSynthetic() && each.getParameterCount() > 0)
            .toList();
    }

    private static Optional<Object> example(Class<?> type) {
        return ways(type).stream().flatMap(way -> made(way, goodOnes(way)).stream()).map(StoredThingsTest::theOne)
            .findFirst();
    }

    /** All that are made are one another's: every id is the same. */
    private static Object theOne(Object thing) {
        if (thing instanceof Stored row) {
            row.id = (UUID) good(UUID.class);
        }
        return thing;
    }

    private static Object[] goodOnes(Executable way) {
        return Stream.of(way.getGenericParameterTypes()).map(StoredThingsTest::good).toArray();
    }

    /** The good arguments with one of them spoilt, in every way. */
    private static List<Object[]> spoilt(Executable way) {
        List<Object[]> all = new ArrayList<>();
        Type[] types = way.getGenericParameterTypes();
        for (int i = 0; i < types.length; i++) {
            for (Object bad : bad(types[i])) {
                Object[] arguments = goodOnes(way);
                arguments[i] = bad;
                all.add(arguments);
            }
        }
        return all;
    }

    private static Object good(Type type) {
        Class<?> raw = raw(type);
        if (raw == Optional.class) {
            return Optional.ofNullable(good(argument(type)));
        }
        if (Collection.class.isAssignableFrom(raw)) {
            Stream<Object> one = Stream.ofNullable(good(argument(type)));
            return raw == Set.class ? one.collect(Collectors.toSet()) : one.toList();
        }
        if (raw == Map.class) {
            return Map.of();
        }
        if (raw.isEnum()) {
            return raw.getEnumConstants()[0];
        }
        return switch (raw.getSimpleName()) {
            case "UUID" -> UUID.nameUUIDFromBytes(new byte[1]);
            case "String" -> "en";
            case "int" -> 1;
            case "long" -> 1L;
            case "boolean" -> true;
            case "Instant" -> NOW;
            case "Duration" -> Duration.ofHours(1);
            case "LocalDate" -> LocalDate.parse("2026-06-01");
            case "LocalDateTime" -> LocalDateTime.parse("2026-06-01T10:00");
            case "ZoneId" -> ZoneId.of("UTC");
            case "byte[]" -> new byte[1];
            case "UnaryOperator" -> (UnaryOperator<String>) place -> "sealed";
            default -> raw.getName().startsWith("foretress.") ? anyOf(raw).orElse(null) : null;
        };
    }

    private static Optional<Object> anyOf(Class<?> type) {
        return Stream.<Executable>concat(Stream.of(type.getDeclaredConstructors()), Stream.of(type.getDeclaredMethods())
            .filter(each -> Modifier.isStatic(each.getModifiers()) && each.getReturnType() == type))
            .filter(way -> !way.isSynthetic() && !(type.isAnnotationPresent(Entity.class)
                && way.getParameterCount() == 0) && !List.of(way.getParameterTypes()).contains(type))
            .flatMap(way -> made(way, goodOnes(way)).stream()).map(StoredThingsTest::theOne).findFirst();
    }

    private static List<Object> bad(Type type) {
        Class<?> raw = raw(type);
        List<Object> bad = new ArrayList<>();
        if (!raw.isPrimitive()) {
            bad.add(null);
        }
        if (raw == String.class) {
            bad.addAll(List.of("", "  "));
        } else if (raw == int.class) {
            bad.add(-1);
        } else if (raw == long.class) {
            bad.add(-1L);
        } else if (raw == Instant.class) {
            bad.add(NOW.minusSeconds(1));
            bad.add(NOW.plusSeconds(1));
        } else if (raw == Duration.class) {
            bad.add(Duration.ofHours(-1));
        } else if (raw == UnaryOperator.class) {
            bad.addAll(List.of((UnaryOperator<String>) place -> null, (UnaryOperator<String>) place -> ""));
        } else if (raw == Optional.class) {
            bad.add(Optional.empty());
            bad(argument(type)).stream().filter(Objects::nonNull).map(Optional::of).forEach(bad::add);
        } else if (Collection.class.isAssignableFrom(raw)) {
            bad.add(raw == Set.class ? Set.of() : List.of());
        } else if (raw.isRecord()) {
            Executable way = raw.getDeclaredConstructors()[0];
            spoilt(way).forEach(arguments -> made(way, arguments).ifPresent(bad::add));
        }
        return bad;
    }

    private static Type argument(Type type) {
        return ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    private static Class<?> raw(Type type) {
        return type instanceof ParameterizedType generic ? (Class<?>) generic.getRawType()
            : type instanceof Class<?> one ? one : Object.class;
    }

    /** Empty when it was refused. */
    private static Optional<Object> made(Executable way, Object[] arguments) {
        try {
            way.setAccessible(true);
            return Optional.ofNullable(way instanceof Method factory ? factory.invoke(null, arguments)
                : ((Constructor<?>) way).newInstance(arguments));
        } catch (InvocationTargetException | IllegalArgumentException refused) {
            return Optional.empty();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void call(Method verb, Object thing, Object... arguments) {
        try {
            verb.setAccessible(true);
            verb.invoke(thing, arguments);
        } catch (InvocationTargetException refused) {
            // it must be whole all the same
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    // what is written in classes and tables

    private static List<Field> fields(Class<?> type) {
        return type == PanacheEntityBase.class ? List.of() : Stream.concat(fields(type.getSuperclass()).stream(),
            Stream.of(type.getDeclaredFields())
                .filter(field -> !Modifier.isStatic(field.getModifiers()) && !field.isAnnotationPresent(Transient.class)
                    && !Collection.class.isAssignableFrom(field.getType())))
            .toList();
    }

    private static String column(Field field) {
        String named = named(field);
        return named.isEmpty() ? field.getName() : named;
    }

    private static String named(AnnotatedElement field) {
        return field.isAnnotationPresent(JoinColumn.class) ? field.getAnnotation(JoinColumn.class).name()
            : field.isAnnotationPresent(Column.class) ? field.getAnnotation(Column.class).name() : "";
    }

    private static Object value(Field field, Object thing) {
        try {
            field.setAccessible(true);
            return field.get(thing);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Class<?> load(Path file) {
        String name = CLASSES.relativize(file).toString().replace('/', '.').replaceAll("\\.class$", "");
        try {
            return Class.forName(name, false, StoredThingsTest.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, Boolean> columns(String store) throws SQLException {
        Map<String, Boolean> read = new HashMap<>();
        try (Connection open = DriverManager.getConnection(store, "sa", "");
            ResultSet row = open.createStatement().executeQuery("select table_name, column_name, is_nullable"
                + " from information_schema.columns where table_schema = 'PUBLIC'")) {
            while (row.next()) {
                read.put((row.getString(1) + "." + row.getString(2)).toLowerCase(Locale.ROOT),
                    row.getString(3).equals("NO"));
            }
        }
        return read;
    }
}
