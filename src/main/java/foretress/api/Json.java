package foretress.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a record that is sent or answered says of a field, or of itself, beyond its type. {@link RecordShape} reads it. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ ElementType.RECORD_COMPONENT, ElementType.TYPE })
@interface Json {
    /** The name in JSON where it is not the component's own; on a record the name it has in the document. */
    String name() default "";

    /** A sentence for the document. */
    String says() default "";

    /** The least number, characters of a text or entries of a list. */
    double least() default 0;

    /** The most of the same; without it a number or a text is any, and a list has up to 10 000 entries. */
    double most() default Double.POSITIVE_INFINITY;

    /** The name of a shape that only knowledge can give, such as the codes of its services. */
    String as() default "";

    /** Of the texts that are a list's entries. */
    int mostOfEach() default 0;

    /** The fields of this record stand among those of the record around it. */
    boolean flat() default false;
}
