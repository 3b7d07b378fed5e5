package rushlight.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Asks for a password where nobody reads it over one's shoulder, or takes it from standard input. */
final class Passwords {
    private final CommandSpec spec;

    Passwords(CommandSpec spec) {
        this.spec = spec;
    }

    /** A new one, typed twice where it is typed. */
    // From Java 22 on there is a console without a terminal too; it reads standard input as well.
    @SuppressWarnings("SystemConsoleNull")
    char[] fresh(boolean fromInput) {
        Console console = System.console();
        if (fromInput || console == null) {
            return line();
        }
        char[] first = typed(console, "Password: ");
        if (!Arrays.equals(first, typed(console, "Once more: "))) {
            throw new ParameterException(spec.commandLine(), "That was not twice the same. Nothing was changed.");
        }
        return first;
    }

    private char[] typed(Console console, String prompt) {
        return given(console.readPassword("%s", prompt));
    }

    private char[] line() {
        try {
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            String line = in.readLine();
            return given(line == null ? null : line.toCharArray());
        } catch (IOException e) {
            throw new UncheckedIOException("standard input", e);
        }
    }

    private char[] given(char @Nullable [] password) {
        if (password == null) {
            throw new ParameterException(
                    spec.commandLine(), "No password was given. Type one, or send it with --stdin.");
        }
        return password;
    }
}
