package chock.rehearse;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a step says, or what may stand for a word in braces; {@code docs/steps.md} is written from it. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@interface Explained {
    /** One sentence for whoever writes scenarios. */
    String value();

    /** One line as it stands in a scenario, without its keyword. */
    String example();
}
