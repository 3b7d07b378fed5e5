package rushlight;

import org.apache.jena.sys.JenaSystem;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Starts Jena before any class of tests: two threads that both begin to start it may wait for each other. */
public final class JenaFirst implements BeforeAllCallback {
    @Override
    public void beforeAll(ExtensionContext context) {
        JenaSystem.init();
    }
}
