package rushlight.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MaxValuesExceededException;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Says what was wrong with the words typed and what to write instead, and where to read how it is done. What the library
 * that reads the words says of them speaks of types and indexes, so only its findings are taken, and none of its sentences.
 */
final class WrongUse implements CommandLine.IParameterExceptionHandler {
    /** What is written where a value of a type is wanted, for the types that need no list of their words. */
    private static final Map<Class<?>, String> WANTED = Map.of(
            LocalDate.class,
            "a day of the calendar such as 2026-08-03",
            LocalTime.class,
            "a time of day such as 15:30",
            Path.class,
            "the name of a file or folder",
            BigDecimal.class,
            "a number such as 20");

    @Override
    public int handleParseException(ParameterException trouble, String[] args) {
        CommandLine command = trouble.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(sentence(trouble));
        UnmatchedArgumentException.printSuggestions(trouble, err);
        err.println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        err.flush();
        return CommandLine.ExitCode.USAGE;
    }

    /** What was wrong and what to write instead; the commands' own complaints as they are. */
    static String sentence(ParameterException trouble) {
        CommandSpec command = trouble.getCommandLine().getCommandSpec();
        if (trouble instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched, command);
        }
        if (trouble instanceof MissingParameterException missing) {
            return missing.getMissing().stream().map(WrongUse::missing).collect(Collectors.joining(" "));
        }
        if (trouble instanceof OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " is there twice; write it once.";
        }
        if (trouble instanceof MaxValuesExceededException) {
            return "There are more words than " + command.qualifiedName() + " takes.";
        }
        if (trouble.getCause() instanceof Folder.IsFile file) {
            return file.getMessage() + " Name a folder with " + name(trouble.getArgSpec()) + ".";
        }
        if (trouble.getArgSpec() != null) {
            return misread(trouble.getArgSpec(), Optional.ofNullable(trouble.getValue()));
        }
        if (trouble.getValue() != null) {
            return "There is no command \"" + trouble.getValue() + "\".";
        }
        return Objects.requireNonNullElse(trouble.getMessage(), "It was not understood.");
    }

    private static String unmatched(UnmatchedArgumentException trouble, CommandSpec command) {
        String word = trouble.getUnmatched().get(0);
        if (trouble.isUnknownOption()) {
            return command.qualifiedName() + " has no option " + word.replaceFirst("=.*", "") + ".";
        }
        if (!command.subcommands().isEmpty()) {
            return "There is no command \"" + word + "\".";
        }
        return "\"" + word + "\" is more than " + command.qualifiedName()
                + " takes. Put a name of several words between quotation marks.";
    }

    private static String missing(ArgSpec what) {
        int fewest = Math.max(1, what.arity().min());
        if (!what.isOption()) {
            return (fewest == 1 ? "Say " : "Say as many as are wanted of ") + what.paramLabel() + told(what) + ".";
        }
        String usage = name(what) + " " + String.join(" ", Collections.nCopies(fewest, what.paramLabel()));
        String lack = fewest == 1 ? " lacks its value. Write " : " wants " + fewest + " values. Write ";
        return (what.required() ? "This needs " : name(what) + lack) + usage + told(what) + ".";
    }

    private static String misread(ArgSpec what, Optional<String> value) {
        List<Class<?>> types = Arrays.asList(what.auxiliaryTypes());
        Class<?> type = types.isEmpty() ? what.type() : types.get(types.size() - 1);
        if (type == boolean.class || type == Boolean.class) {
            return name(what) + " takes no value; write it alone.";
        }
        String typed = value.map(text -> ", not \"" + text + "\"").orElse("");
        String wanted = types.size() > 1 ? what.paramLabel() : wanted(what, type, value);
        return name(what) + " takes " + wanted + typed + ".";
    }

    private static String wanted(ArgSpec what, Class<?> type, Optional<String> value) {
        if (type.isEnum()) {
            List<String> words = Arrays.stream(type.getEnumConstants())
                    .map(word -> String.valueOf(word).toLowerCase(Locale.ROOT))
                    .toList();
            return "one of " + String.join(", ", words);
        }
        if (type == int.class || type == Integer.class) {
            boolean digits = value.filter(text -> text.matches("[+-]?\\d+")).isPresent();
            return digits ? "a smaller number" : "a whole number, in digits";
        }
        return WANTED.getOrDefault(type, what.paramLabel());
    }

    private static String name(ArgSpec what) {
        return what instanceof OptionSpec option ? option.longestName() : what.paramLabel();
    }

    /** What it is, behind a colon, where the help tells of it. */
    private static String told(ArgSpec what) {
        String description = String.join(" ", what.description());
        return description.isEmpty() ? "" : ": " + description;
    }
}
