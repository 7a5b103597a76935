package chock.record;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The form of a record that brought a key. On a name in {@link Raw}; a file of an earlier form that uses the key is refused. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Since {
    /** From 2: every key without this annotation is of the first form. */
    int value();
}
