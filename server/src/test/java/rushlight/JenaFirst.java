package rushlight;

import org.apache.jena.sys.JenaSystem;
import org.junit.jupiter.api.extension.Extension;

/**
 * Starts Jena where JUnit looks for extensions, before it begins with any class of tests: two threads that both begin to start it
 * may wait for each other, and what is made for a class may need it before anything that runs ahead of its tests.
 */
public final class JenaFirst implements Extension {
    /** Made once, in the thread that begins the tests. */
    public JenaFirst() {
        JenaSystem.init();
    }
}
