package rushlight.cli;

/** What a command will need later, begun in a thread of its own while the book is read. */
final class Ahead {
    private Ahead() {}

    /** Begins it. Whatever goes wrong in it goes wrong again where it is needed, and is told there. */
    static void begin(Runnable work) {
        Thread thread = new Thread(work, "ahead");
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler((ignored, unused) -> {});
        thread.start();
    }
}
