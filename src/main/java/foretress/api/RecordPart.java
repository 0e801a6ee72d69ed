package foretress.api;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One component of a record, as JSON has it. Reflected once a record: the machine parses annotations anew for whoever asks.
 *
 * @param name its own, unless {@link Json} has another
 * @param flat its fields stand among those of the record itself
 */
record RecordPart(String name, Class<?> raw, Type type, Optional<Json> said, boolean flat, Method accessor) {
    private static final ClassValue<List<RecordPart>> PARTS = new ClassValue<>() {
        @Override
        protected List<RecordPart> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents()).map(RecordPart::of).toList();
        }
    };

    /** Of a record, in its order. */
    static List<RecordPart> of(Class<?> type) {
        return PARTS.get(type);
    }

    private static RecordPart of(RecordComponent part) {
        Optional<Json> said = Optional.ofNullable(part.getAnnotation(Json.class));
        part.getAccessor().setAccessible(true);
        return new RecordPart(said.map(Json::name).filter(name -> !name.isEmpty()).orElse(part.getName()),
            part.getType(), part.getGenericType(), said, said.filter(Json::flat).isPresent(), part.getAccessor());
    }

    Object in(Record record) {
        try {
            return accessor.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
