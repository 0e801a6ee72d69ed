package foretress.salon;

import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Optional;

/** A resource method's route as {@link Rights} writes it: method and path template, without what a parameter must look like. */
final class Route {
    private Route() {}

    static String of(Class<?> resource, Method method) {
        return verb(method).orElse("?") + " "
            + path(resource.getAnnotation(Path.class), method.getAnnotation(Path.class));
    }

    static Optional<String> verb(Method method) {
        return Arrays.stream(method.getAnnotations())
            .flatMap(a -> Optional.ofNullable(a.annotationType().getAnnotation(HttpMethod.class)).stream())
            .map(HttpMethod::value).findFirst();
    }

    private static String path(Path onClass, Path onMethod) {
        String joined = "/" + value(onClass) + "/" + value(onMethod);
        String clean = joined.replaceAll("\\{\\s*([^}:\\s]+)\\s*:[^}]*}", "{$1}").replaceAll("/{2,}", "/");
        return clean.length() > 1 ? clean.replaceAll("/$", "") : clean;
    }

    private static String value(Path path) {
        return path == null ? "" : path.value();
    }
}
