package foretress.consent;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.stream.Stream;

/** Makes records that differ in one component, to try each field by itself. */
final class Evidences {
    private Evidences() {}

    @SuppressWarnings("unchecked")
    static <R extends Record> R with(R record, String component, Object value) {
        RecordComponent[] parts = record.getClass().getRecordComponents();
        try {
            Object[] values = new Object[parts.length];
            for (int i = 0; i < parts.length; i++) {
                parts[i].getAccessor().setAccessible(true);
                values[i] = parts[i].getName().equals(component) ? value : parts[i].getAccessor().invoke(record);
            }
            Class<?>[] types = Stream.of(parts).map(part -> part.getType()).toArray(Class<?>[]::new);
            return (R) record.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException refused) {
                throw refused;
            }
            throw new IllegalStateException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
