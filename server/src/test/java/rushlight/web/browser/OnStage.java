package rushlight.web.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.parallel.ResourceLock;

/** A class of tests that is handed the {@link Browser} of the stage; there is one, so one such class runs at a time. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@ExtendWith(Stage.Given.class)
@ResourceLock(OnStage.CHROMIUM)
public @interface OnStage {
    /** The lock of whatever opens a browser: two at once would make both slow. */
    String CHROMIUM = "chromium";
}
