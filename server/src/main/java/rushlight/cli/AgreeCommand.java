package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.agreement.CrossCheck;
import rushlight.agreement.Crossing;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reconciled;
import rushlight.film.csv.FilmLogReader;
import rushlight.web.AgreeAnswer;
import rushlight.words.NearestLabels;

/** Holds two evaluators who read the same games against each other. */
@Command(
        name = "agree",
        mixinStandardHelpOptions = true,
        description = {
            "Says how far two evaluators agree about the reps that both have read.",
            "",
            "Column by column and tag by tag, with what is more than chance, and the reps they read differently side"
                    + " by side.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight agree                                          where only two have read the same games",
            "  rushlight agree \"Jory Penwick\" --between \"A. Moss\" \"B. Reed\"",
            "  rushlight agree --log mine.csv --log yours.csv           keep nothing, only compare"
        })
final class AgreeCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "PROSPECT", arity = "0..*", description = "names or ids; none means everybody")
    private List<String> names = List.of();

    @Option(
            names = "--between",
            arity = "2",
            paramLabel = "EVALUATOR",
            description = "the two to compare; needed where more than two have read the same games")
    private List<String> between = List.of();

    @Option(names = "--log", paramLabel = "FILE", description = "compare these film logs and keep nothing; may repeat")
    private List<Path> files = List.of();

    @Option(names = "--all", description = "every tag and every rep")
    private boolean all;

    @Mixin
    private FormatOption format = new FormatOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!files.isEmpty()) {
            Book book = data.book();
            LogFiles reader = new LogFiles(book.taxonomy(), FilmLogReader.Options.none(), err());
            List<Log> read = reader.read(files);
            if (reader.faults() > 0) {
                err().println("Nothing was compared. " + Numbers.of(reader.faults(), "fault") + " to mend first.");
                return 1;
            }
            return compare(book, read);
        }
        if (!data.isThere()) {
            err().println("There is no film in " + data.folder()
                    + " yet. Import a film log first: rushlight import FILE");
            return 1;
        }
        try (Archive archive = data.open()) {
            return compare(archive.book(), archive.logs());
        }
    }

    private int compare(Book book, List<Log> logs) {
        Optional<List<Log>> his = named(logs);
        if (his.isEmpty()) {
            return 1;
        }
        Optional<List<String>> two = two(his.get());
        if (two.isEmpty()) {
            return 1;
        }
        Optional<CrossCheck> check = Crossing.of(book.ontology(), book.taxonomy())
                .of(by(two.get().get(0), his.get()), by(two.get().get(1), his.get()), Set.of());
        if (check.isEmpty()) {
            err().println(String.join(" and ", two.get()) + " have read no game in common.");
            return 1;
        }
        spec.commandLine()
                .getOut()
                .print(format.print(
                        AgreeAnswer.of(check.get()), () -> new AgreeText(book.taxonomy(), all).of(check.get())));
        return 0;
    }

    /** The logs of the prospects that were named; empty, and told, where a name is nobody's. */
    private Optional<List<Log>> named(List<Log> logs) {
        List<Prospect> known = logs.stream().map(Log::prospect).distinct().toList();
        return names.isEmpty()
                ? Optional.of(logs)
                : ProspectNames.named(names, known, err())
                        .map(his -> logs.stream()
                                .filter(log -> his.contains(log.prospect()))
                                .toList());
    }

    /** The two that were named, else the only two who have read the same games; empty, and told, where that is not clear. */
    private Optional<List<String>> two(List<Log> logs) {
        List<String> who = logs.stream()
                .map(Log::evaluator)
                .filter(name -> !Reconciled.is(name))
                .distinct()
                .toList();
        if (!between.isEmpty()) {
            List<String> strangers =
                    between.stream().filter(name -> by(name, logs).isEmpty()).toList();
            strangers.forEach(
                    name -> err().println("No log here is by \"" + name + "\". Nearest: " + near(name, who) + "."));
            if (Identity.slug(between.get(0)).equals(Identity.slug(between.get(1)))) {
                err().println("Name two different evaluators.");
                return Optional.empty();
            }
            return strangers.isEmpty() ? Optional.of(between) : Optional.empty();
        }
        List<List<String>> pairs = pairs(who, logs);
        if (pairs.size() == 1) {
            return Optional.of(pairs.get(0));
        }
        err().println(
                        pairs.isEmpty()
                                ? "No game has been read by two evaluators. Import a second one's log of the same game"
                                        + " first."
                                : "More than two have read the same games. Say which two with --between: "
                                        + pairs.stream()
                                                .map(pair -> "\"" + pair.get(0) + "\" \"" + pair.get(1) + "\"")
                                                .collect(Collectors.joining(" or "))
                                        + ".");
        return Optional.empty();
    }

    private static List<List<String>> pairs(List<String> who, List<Log> logs) {
        List<List<String>> pairs = new ArrayList<>();
        for (int i = 0; i < who.size(); i++) {
            for (int j = i + 1; j < who.size(); j++) {
                List<Log> theirs = by(who.get(j), logs);
                if (by(who.get(i), logs).stream()
                        .anyMatch(log -> theirs.stream().anyMatch(other -> sameGame(log, other)))) {
                    pairs.add(List.of(who.get(i), who.get(j)));
                }
            }
        }
        return pairs;
    }

    private static boolean sameGame(Log one, Log other) {
        return one.prospect().id().equals(other.prospect().id())
                && one.game().id().equals(other.game().id());
    }

    private static List<Log> by(String evaluator, List<Log> logs) {
        return logs.stream()
                .filter(log -> Identity.slug(log.evaluator()).equals(Identity.slug(evaluator)))
                .toList();
    }

    private static String near(String name, List<String> known) {
        return String.join(", ", NearestLabels.words(known).to(name, 3));
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
