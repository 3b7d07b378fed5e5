package rushlight.cli;

import java.util.function.Supplier;
import picocli.CommandLine.Option;
import rushlight.web.Json;

/** For whom a command prints. */
final class FormatOption {
    @Option(
            names = "--format",
            paramLabel = "text|json",
            defaultValue = "text",
            description = "for people or for programs")
    private Format format = Format.TEXT;

    /** The answer for programs where they were asked for, else the page for people. */
    String print(Object answer, Supplier<?> page) {
        return format == Format.JSON ? Json.text(answer) : String.valueOf(page.get());
    }

    boolean isJson() {
        return format == Format.JSON;
    }
}
