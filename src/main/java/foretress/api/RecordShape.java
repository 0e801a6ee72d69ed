package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.questionnaire.Code;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.Temporal;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.StreamSupport;

/**
 * A record is the one place where a field is written: its components are what is documented, checked, read and answered. An
 * {@code Optional} may be left out, an enum is its codes, a sealed interface one of its records, told apart by the first field.
 */
final class RecordShape {
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;
    private static final int MOST_ENTRIES = 10_000;

    private static final Map<Class<?>, Shape> TIMES =
        Map.of(LocalDate.class, Times.day(), LocalTime.class, Times.time(), ZoneId.class, Times.zone(),
            YearMonth.class, Times.month());
    private static final Map<Class<?>, Function<String, Object>> READ = Map.of(LocalDate.class, LocalDate::parse,
        LocalTime.class, LocalTime::parse, ZoneId.class, ZoneId::of, Instant.class, Times::instant,
        YearMonth.class, YearMonth::parse);

    private static final Map<Enum<?>, String> CODES = new ConcurrentHashMap<>();

    /** What only knowledge can give, by the names in {@link Json#as}. */
    private final Map<String, Shape> known;

    RecordShape(Map<String, Shape> known) {
        this.known = known;
    }

    /** Of a record that needs no knowledge. */
    static Shape of(Class<?> type) {
        return new RecordShape(Map.of()).shape(type);
    }

    Shape shape(Class<?> type) {
        Shape plain = type.isSealed() ? either(type) : fields(type);
        Json said = type.getAnnotation(Json.class);
        return said == null ? plain : named(saying(plain, said), said);
    }

    private static Shape named(Shape shape, Json said) {
        return said.name().isEmpty() ? shape : shape.named(said.name());
    }

    private static Shape saying(Shape shape, Json said) {
        return said.says().isEmpty() ? shape : shape.saying(said.says());
    }

    Shape.Fields fields(Class<?> type) {
        Shape.Fields fields = Shape.object();
        for (RecordPart part : RecordPart.of(type)) {
            if (part.flat()) {
                fields = fields.and(fields(part.raw()));
                continue;
            }
            boolean may = part.raw() == Optional.class;
            Shape shape = shape(may ? inside(part.type(), 0) : part.type(), part);
            fields = may ? fields.may(part.name(), shape) : fields.need(part.name(), shape);
        }
        return fields;
    }

    private Shape either(Class<?> type) {
        return either(List.of(type.getPermittedSubclasses()));
    }

    /** One of these records, told apart by the first field. */
    Shape either(List<? extends Class<?>> ways) {
        Shape.Either either = Shape.either();
        for (Class<?> way : ways) {
            either = either.or(first(way), fields(way));
        }
        return either;
    }

    private static String first(Class<?> way) {
        return RecordPart.of(way).get(0).name();
    }

    private Shape shape(Type type, RecordPart part) {
        Optional<Json> said = part.said();
        Shape shape = said.filter(s -> s.most() < Double.POSITIVE_INFINITY).map(s -> limited(type, s))
            .or(() -> said.map(Json::as).map(known::get)).orElseGet(() -> any(type));
        return said.map(s -> saying(shape, s)).orElse(shape);
    }

    private Shape limited(Type type, Json said) {
        int least = (int) said.least();
        int most = (int) said.most();
        if (type == double.class || type == Double.class) {
            return Shape.number(said.least(), said.most());
        }
        if (type == int.class || type == Integer.class) {
            return Shape.whole(least, most);
        }
        if (type == String.class) {
            return Shape.text(least, most);
        }
        if (raw(type) == Map.class) {
            return map(raw(inside(type, 0)), limited(inside(type, 1), said));
        }
        Type each = inside(type, 0);
        Shape entry = said.mostOfEach() > 0 ? Shape.text(1, said.mostOfEach()) : any(each);
        return raw(type) == Set.class ? Shape.set(entry, least, most) : Shape.list(entry, least, most);
    }

    private Shape any(Type type) {
        Class<?> raw = raw(type);
        if (raw == boolean.class) {
            return Shape.flag();
        }
        if (raw.isPrimitive() || Number.class.isAssignableFrom(raw)) {
            return Shape.number();
        }
        if (TIMES.containsKey(raw)) {
            return TIMES.get(raw);
        }
        if (raw == String.class || Temporal.class.isAssignableFrom(raw)) {
            return Shape.text();
        }
        if (raw.isEnum()) {
            return codes(raw);
        }
        if (raw == Map.class) {
            return map(raw(inside(type, 0)), any(inside(type, 1)));
        }
        return raw == List.class ? Shape.list(any(inside(type, 0)), 0, MOST_ENTRIES) : shape(raw);
    }

    /** An enum that is a class of its own has its name in the document too. */
    private static Shape codes(Class<?> type) {
        Shape codes = Shape.code(Arrays.stream(type.getEnumConstants()).map(c -> code((Enum<?>) c)).toList());
        return type.getEnclosingClass() == null ? codes.named(type.getSimpleName()) : codes;
    }

    /** By whatever names, or by the codes of an enum, each of which may be left out. */
    private Shape map(Class<?> keys, Shape entry) {
        if (!keys.isEnum()) {
            return Shape.map(entry);
        }
        Shape.Fields fields = Shape.object();
        for (Object constant : keys.getEnumConstants()) {
            fields = fields.may(code((Enum<?>) constant), entry);
        }
        return fields;
    }

    private static Type inside(Type type, int at) {
        return ((ParameterizedType) type).getActualTypeArguments()[at];
    }

    private static Class<?> raw(Type type) {
        return type instanceof ParameterizedType several ? raw(several.getRawType()) : (Class<?>) type;
    }

    /** As data files write it where the enum says so itself, else its name in small letters. */
    static String code(Enum<?> constant) {
        return CODES.computeIfAbsent(constant, RecordShape::reflected);
    }

    private static String reflected(Enum<?> constant) {
        try {
            return (String) constant.getDeclaringClass().getMethod("code").invoke(constant);
        } catch (NoSuchMethodException e) {
            return Code.of(constant);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    // -- answering

    /** The record as JSON, in the order of its components. */
    static ObjectNode write(Record record) {
        ObjectNode node = NODE.objectNode();
        for (RecordPart part : RecordPart.of(record.getClass())) {
            Object value = part.in(record);
            if (part.flat()) {
                node.setAll(write((Record) value));
            } else if (!Optional.empty().equals(value)) {
                node.set(part.name(), node(value instanceof Optional<?> there ? there.orElseThrow() : value));
            }
        }
        return node;
    }

    private static JsonNode node(Object value) {
        if (value instanceof Record record) {
            return write(record);
        }
        if (value instanceof Enum<?> constant) {
            return NODE.textNode(code(constant));
        }
        if (value instanceof Temporal) {
            return NODE.textNode(value.toString());
        }
        if (value instanceof Collection<?> entries) {
            ArrayNode list = NODE.arrayNode();
            entries.forEach(entry -> list.add(node(entry)));
            return list;
        }
        if (value instanceof Map<?, ?> map) {
            ObjectNode object = NODE.objectNode();
            map.forEach((key, entry) -> object.set(key instanceof Enum<?> one ? code(one) : (String) key, node(entry)));
            return object;
        }
        return JsonBodies.JSON.valueToTree(value);
    }

    // -- reading

    /** The record a body stands for, once {@link #shape} has found nothing wrong with it. */
    static <R> R read(JsonNode body, Class<R> type) {
        Class<?> way = type.isSealed() ? Arrays.stream(type.getPermittedSubclasses())
            .filter(one -> body.has(first(one))).findFirst().orElseThrow() : type;
        List<RecordPart> parts = RecordPart.of(way);
        Object[] values = parts.stream().map(part -> part.flat() ? read(body, part.raw())
            : read(body.get(part.name()), part.type())).toArray();
        try {
            Constructor<?> made = way.getDeclaredConstructor(
                parts.stream().map(RecordPart::raw).toArray(Class<?>[]::new));
            made.setAccessible(true);
            return type.cast(made.newInstance(values));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object read(JsonNode node, Type type) {
        Class<?> raw = raw(type);
        if (raw == Optional.class) {
            return Optional.ofNullable(node).map(there -> read(there, inside(type, 0)));
        }
        if (READ.containsKey(raw)) {
            return READ.get(raw).apply(node.textValue());
        }
        if (raw == List.class || raw == Set.class) {
            List<?> entries = StreamSupport.stream(node.spliterator(), false)
                .map(entry -> read(entry, inside(type, 0))).toList();
            return raw == List.class ? entries : new LinkedHashSet<>(entries);
        }
        if (raw == Map.class) {
            Map<Object, Object> entries = new LinkedHashMap<>();
            node.properties().forEach(f -> entries.put(read(NODE.textNode(f.getKey()), inside(type, 0)),
                read(f.getValue(), inside(type, 1))));
            return entries;
        }
        if (raw.isEnum()) {
            return Arrays.stream(raw.getEnumConstants()).filter(c -> code((Enum<?>) c).equals(node.textValue()))
                .findFirst().orElseThrow();
        }
        return raw == JsonNode.class ? node
            : raw.isRecord() || raw.isSealed() ? read(node, raw) : JsonBodies.JSON.convertValue(node, raw);
    }
}
