package rushlight.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.Book;

/** Which data folder a command works on. */
final class DataFolder {
    @Option(
            names = "--data",
            paramLabel = "DIR",
            converter = Folder.class,
            defaultValue = "${env:RUSHLIGHT_DATA:-${sys:user.home}/.rushlight}",
            description = "the data folder (now: ${DEFAULT-VALUE})")
    private Path folder = Path.of(".");

    @Mixin
    private StorePlace place = new StorePlace();

    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    /** Whether it was named on the command line. */
    boolean isNamed() {
        return command != null
                && command.commandLine() != null
                && command.commandLine().getParseResult().hasMatchedOption("--data");
    }

    /** The folder of everybody who names none. */
    static Path usual() {
        return Optional.ofNullable(System.getenv("RUSHLIGHT_DATA"))
                .filter(text -> !text.isBlank())
                .map(Path::of)
                .orElse(Path.of(System.getProperty("user.home")).resolve(".rushlight"));
    }

    Path folder() {
        return folder;
    }

    /** Whether there may be film: the folder is there, or what is kept elsewhere is to be fetched into it. */
    boolean isThere() {
        return Files.isDirectory(folder) || place.isElsewhere();
    }

    /** Whether it was said where its film is kept. */
    boolean isKept() {
        return place.isNamed();
    }

    /** The book as this folder reads it, without opening the film. */
    Book book() {
        return Book.of(folder);
    }

    Archive open() {
        return place.open(folder, err());
    }

    private PrintWriter err() {
        return command == null || command.commandLine() == null
                ? new PrintWriter(Writer.nullWriter())
                : command.commandLine().getErr();
    }
}
