package chock.record;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The form of a record that brought a key, on a name in {@link Raw}, or a word, on a constant of {@link Machine}. A file of an
 * earlier form that uses it is refused.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD})
@interface Since {
    /** From 2: every key without this annotation is of the first form. */
    int value();
}
