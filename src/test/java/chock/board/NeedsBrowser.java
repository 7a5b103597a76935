package chock.board;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** A test that drives Debian's Chromium. Where Chromium or its driver is not installed, {@link BrowserWanted} decides whether it is skipped. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(BrowserWanted.class)
@interface NeedsBrowser { }
