package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.archive.Opinions;
import rushlight.archive.Projections;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.csv.FilmLogReader;
import rushlight.findings.Assessment;
import rushlight.findings.Peers;
import rushlight.situation.Tape;
import rushlight.web.AssessAnswer;
import rushlight.web.Beside;
import rushlight.web.Json;

/** Says what film shows of a prospect: what he is, what he lacks, how sure that is, and which reps say so. */
@Command(
        name = "assess",
        mixinStandardHelpOptions = true,
        description = {
            "Says what the film shows of a prospect, and which reps say so.",
            "",
            "What he lacks, what he does well, what hangs on his duty, how sure each of it is. Without a name:"
                    + " everybody in the data folder.",
            ""
        },
        footer = {
            "",
            "The words, from least to most sure:",
            "  \u25cc not enough tape   fewer chances than a judgment needs",
            "  \u25d4 watch             enough chances, and they do not point far enough either way",
            "  \u25d1 likely            at least 4 to 1 that he is past the house line",
            "  \u25cf confirmed         at least 19 to 1, on 10 chances or more, from more than one game",
            "  \u25cb cleared           at least 19 to 1 that he is not",
            "",
            "Examples:",
            "  rushlight assess \"Jory Penwick\"",
            "  rushlight assess --log friday.csv              keep nothing, only look",
            "  rushlight assess \"Jory Penwick\" --explain r05   why the rules read that rep as they do",
            "  rushlight assess \"Jory Penwick\" --peers         each rate beside those of his position group",
            "  rushlight assess \"Jory Penwick\" --since 2025-10-01   then and now: what got better, and what cannot"
                    + " be told"
        })
final class AssessCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "PROSPECT", arity = "0..*", description = "names or ids; none means everybody")
    private List<String> names = List.of();

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "assess this film log and keep nothing; may repeat, the first evaluator counts")
    private List<Path> logs = List.of();

    @Mixin
    private FormatOption format = new FormatOption();

    @Option(names = "--all", description = "spell out every finding, and list every rep")
    private boolean all;

    @Option(names = "--short", description = "the claims and a few reps only")
    private boolean brief;

    @Option(
            names = "--peers",
            description = "read each rate beside those of the others of his position group; no verdict hangs on it")
    private boolean peers;

    @Option(
            names = "--explain",
            paramLabel = "REP",
            description = "say instead how the rules read this rep of the prospect")
    private Optional<String> explain = Optional.empty();

    @Option(
            names = "--since",
            paramLabel = "GAME|DATE",
            description = "say instead what became of his gaps from this game (name or id) or date on")
    private Optional<String> since = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return logs.isEmpty() ? stored() : fromFiles();
    }

    private int stored() {
        if (!data.isThere()) {
            return nothing();
        }
        try (Archive archive = data.open()) {
            List<Prospect> known = archive.prospects();
            if (known.isEmpty()) {
                return nothing();
            }
            Optional<List<Prospect>> wanted = wanted(known);
            if (wanted.isEmpty()) {
                return 1;
            }
            if (explain.isPresent()) {
                return new ExplainText(archive.book())
                        .print(explain.get(), archive.logs(), ids(wanted.get()), out(), err());
            }
            if (since.isPresent()) {
                List<String> ids = ids(wanted.get());
                return archive.watch(footage ->
                        progress(archive.book(), ids.stream().flatMap(id -> footage.tape(id).stream())));
            }
            Stream<Assessment> assessed = wanted.get().stream().flatMap(p -> archive.assess(p.id()).stream());
            Opinions opinions = Opinions.of(archive);
            Projections projections = Projections.of(archive);
            Function<Assessment, Beside> told = one -> Beside.of(one, opinions, projections);
            print(
                    archive.book(),
                    assessed.toList(),
                    peers ? among(archive.book().peers(archive.assess()), told) : told);
            return 0;
        }
    }

    private int nothing() {
        err().println("There is no film in " + data.folder() + " yet. Import a film log first: rushlight import FILE,");
        err().println("or look at the invented league: rushlight demo");
        return 1;
    }

    private int fromFiles() {
        Book book = data.book();
        LogFiles reader = new LogFiles(book.taxonomy(), FilmLogReader.Options.none(), err());
        List<Log> read = reader.read(logs);
        if (reader.faults() > 0) {
            err().println("Nothing was assessed. " + Numbers.of(reader.faults(), "fault") + " to mend first.");
            return 1;
        }
        List<Prospect> known = read.stream().map(Log::prospect).distinct().toList();
        Optional<List<Prospect>> wanted = wanted(known);
        if (wanted.isEmpty()) {
            return 1;
        }
        List<String> ids = ids(wanted.get());
        if (explain.isPresent()) {
            return new ExplainText(book).print(explain.get(), read, ids, out(), err());
        }
        List<Log> his =
                read.stream().filter(log -> ids.contains(log.prospect().id())).toList();
        if (since.isPresent()) {
            return progress(book, book.tapes(his).stream());
        }
        Function<Assessment, Beside> nothing = one -> Beside.NOTHING;
        print(book, book.assess(his), peers ? among(book.peers(book.assess(read)), nothing) : nothing);
        return 0;
    }

    private static Function<Assessment, Beside> among(Peers league, Function<Assessment, Beside> told) {
        return one -> told.apply(one).with(league, one);
    }

    private void print(Book book, List<Assessment> assessments, Function<Assessment, Beside> beside) {
        if (format.isJson()) {
            out().print(Json.text(assessments.stream()
                    .map(one -> AssessAnswer.of(one, beside.apply(one), true))
                    .toList()));
            return;
        }
        Depth depth = all ? Depth.FULL : brief ? Depth.SHORT : Depth.PLAIN;
        AssessText text = new AssessText(book.taxonomy(), depth);
        assessments.forEach(one -> out().println(text.of(one, beside.apply(one))));
        if (depth != Depth.SHORT) {
            out().println(AssessText.CAUTION);
        }
    }

    private int progress(Book book, Stream<Tape> tapes) {
        return new ProgressCommanded(book, since.orElseThrow(), format).print(tapes.toList(), out(), err());
    }

    /** The prospects that were named; empty, and told, where one of the names is nobody's. */
    private Optional<List<Prospect>> wanted(List<Prospect> known) {
        if (all && brief) {
            throw new ParameterException(spec.commandLine(), "Choose one of --all and --short.");
        }
        if (names.isEmpty()) {
            return Optional.of(known);
        }
        return ProspectNames.named(names, known, err());
    }

    private static List<String> ids(List<Prospect> prospects) {
        return prospects.stream().map(Prospect::id).toList();
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
