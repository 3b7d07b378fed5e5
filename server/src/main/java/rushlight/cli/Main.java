package rushlight.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Starts the program. */
public final class Main {
    private Main() {}

    /** Runs one command and ends with its exit code: 0 done, 1 the input has errors, 2 wrong use, 3 something broke. */
    public static void main(String[] args) {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        int code = runInMemory(out, err, args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    private static int runInMemory(PrintWriter out, PrintWriter err, String... args) {
        try {
            return run(out, err, args);
        } catch (OutOfMemoryError e) {
            err.println("There was not enough memory for that. Give more, as in JAVA_TOOL_OPTIONS=-Xmx4g, or import in"
                    + " several files.");
            return Trouble.BROKE;
        }
    }

    /** Runs one command with the given writers. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return program().setOut(out).setErr(err).execute(args);
    }

    /** The program with all its commands, before anything is typed. */
    static CommandLine program() {
        return new CommandLine(new RushlightCommand())
                .setUsageHelpWidth(Page.WIDTH)
                .setUsageHelpLongOptionsMaxWidth(30)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new Trouble())
                .setParameterExceptionHandler(new WrongUse());
    }

    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8), false);
    }
}
