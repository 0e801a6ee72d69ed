package foretress.web;

import java.io.UnsupportedEncodingException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileSystemException;
import java.util.Arrays;
import java.util.stream.Stream;

/** Tells what the framework throws over a form that nobody could read, which is the sender's fault, from faults of ours. */
final class UnreadableForms {
    private static final String FRAMEWORK = "org.jboss.resteasy.reactive.";

    private UnreadableForms() {}

    /** Thrown over what was sent, by what reads it; a disk that takes no files is not the sender's fault. */
    static boolean is(Throwable failure) {
        return causes(failure).noneMatch(cause -> cause instanceof FileSystemException || cause instanceof Error)
            && causes(failure).anyMatch(cause -> isOfReading(cause) || isThrownByTheReader(cause));
    }

    /** Somewhere on the way to reading a form, before anything of ours had looked at it. */
    private static boolean isOfReading(Throwable cause) {
        return places(cause).takeWhile(name -> !name.startsWith("foretress."))
            .anyMatch(name -> name.startsWith(FRAMEWORK + "server.core.multipart.")
                || name.startsWith(FRAMEWORK + "server.handlers.FormBodyHandler"));
    }

    /** A header or a letter the framework could not make out, whoever asked it to. */
    private static boolean isThrownByTheReader(Throwable cause) {
        boolean complains = cause instanceof IllegalArgumentException || cause instanceof CharacterCodingException
            || cause instanceof UnsupportedEncodingException;
        return complains && places(cause).dropWhile(name -> name.startsWith("java.")).findFirst()
            .filter(name -> name.startsWith(FRAMEWORK)).isPresent();
    }

    private static Stream<String> places(Throwable cause) {
        return Arrays.stream(cause.getStackTrace()).map(StackTraceElement::getClassName);
    }

    private static Stream<Throwable> causes(Throwable failure) {
        return Stream.iterate(failure, cause -> cause != null, Throwable::getCause).limit(10);
    }

    /** Its kind alone: the message may quote what was sent. */
    static String named(Throwable failure) {
        return causes(failure).reduce((outer, inner) -> inner).orElse(failure).getClass().getSimpleName();
    }
}
