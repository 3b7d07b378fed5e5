package rushlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Book;
import rushlight.film.csv.RowsWriter;
import rushlight.notes.Narration;
import rushlight.notes.Narrations;
import rushlight.notes.NoteReader;
import rushlight.notes.Notes;
import rushlight.notes.ProposedLog;
import rushlight.web.Json;
import rushlight.web.NotesAnswer;

/** Reads spoken or typed notes, and proposes the reps they speak of. */
@Command(
        name = "notes",
        mixinStandardHelpOptions = true,
        description = {
            "Reads spoken notes, and proposes the reps they speak of.",
            "",
            "Notes with times: WebVTT, SubRip, or lines such as \"[1:02] wide 9, dips\". No rep is kept: look at the"
                    + " reps, or write them as a film log to edit and to import. What is said of the player in general is"
                    + " kept by --save, and stands beside his reps in rushlight assess. What was decided on a file on the"
                    + " notes page holds for --format csv where --data DIR names the folder: rejected tags stay out,"
                    + " changed and added ones come in, split and merged reps are as they were left.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight notes friday.vtt --prospect \"Jory Penwick\"",
            "  rushlight notes friday.vtt --prospect \"Jory Penwick\" --game \"Stonefen v Calder Mill\" --format csv",
            "  rushlight notes --learned, then rushlight notes --take 1"
        })
final class NotesCommand implements Callable<Integer> {
    /** What the command writes. */
    enum Shape {
        TEXT,
        CSV,
        JSON
    }

    private static final long LARGEST = 64L << 20;

    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private LearnedWishes learned = new LearnedWishes();

    @Parameters(paramLabel = "FILE", arity = "0..*", description = "files of notes")
    private List<Path> files = List.of();

    @Option(
            names = "--prospect",
            paramLabel = "NAME",
            defaultValue = "",
            description = "the player the notes are about")
    private String prospect = "";

    @Option(names = "--game", paramLabel = "NAME", defaultValue = "", description = "the game, for --format csv")
    private String game = "";

    @Option(names = "--video", paramLabel = "FILE", defaultValue = "", description = "the film the times belong to")
    private String video = "";

    @Option(names = "--evaluator", paramLabel = "NAME", defaultValue = "", description = "who speaks")
    private String evaluator = "";

    @Option(names = "--save", description = "keep what is said of the player in general")
    private boolean save;

    @Option(
            names = "--format",
            paramLabel = "text|csv|json",
            defaultValue = "text",
            description = "for people, as a film log to edit, or for programs")
    private Shape shape = Shape.TEXT;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        if (learned.any() == !files.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    learned.any()
                            ? "--learned, --take, --ignore and --bring-back look at what was decided: leave out the files."
                            : "Name at least one file of notes, or ask for --learned.");
        }
        if (learned.any()) {
            return learned.done(data, shape == Shape.JSON, out(), err);
        }
        if (shape == Shape.CSV && (prospect.isBlank() || game.isBlank())) {
            err.println("A film log names the player and the game: add --prospect NAME and --game NAME.");
            return 2;
        }
        if (save && prospect.isBlank()) {
            err.println("Opinions are kept of a player: add --prospect NAME.");
            return 2;
        }
        Book book = data.book();
        NoteReader reader = book.notes();
        List<Notes> all = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        List<Narration> narrations = new ArrayList<>();
        ProposedLog log = ProposedLog.of(book.taxonomy());
        var heading = new ProposedLog.Heading(prospect, game, video, evaluator);
        boolean whole = true;
        Optional<DecidedRows> decided = data.isNamed() && shape == Shape.CSV ? DecidedRows.of(data) : Optional.empty();
        for (Path file : files) {
            byte[] bytes = bytes(file, err);
            whole &= bytes.length > 0;
            if (bytes.length > 0) {
                Narration narration = Narrations.read(file.getFileName().toString(), bytes);
                narration
                        .diagnostics()
                        .forEach(d -> err.println(file.getFileName() + ", line " + d.line() + ": " + d.message()));
                whole &= !narration.cues().isEmpty();
                narrations.add(narration);
                if (decided.isPresent() && shape == Shape.CSV) {
                    rows.addAll(decided.get().rows(narration, reader, log, heading, err));
                } else if (shape == Shape.CSV) {
                    reader.each(narration, prospect, piece -> rows.addAll(log.rows(piece, heading)));
                } else {
                    all.add(reader.read(narration, prospect));
                }
            }
        }
        print(book, all, rows);
        if (save) {
            OpinionSaving.save(data, narrations, prospect, evaluator, shape == Shape.TEXT ? out() : err);
        }
        return whole ? 0 : 1;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private static byte[] bytes(Path file, PrintWriter err) {
        try {
            if (Files.isDirectory(file)) {
                err.println(file + " is a folder; name the files of notes in it.");
            } else if (Files.size(file) > LARGEST) {
                err.println(file + " is larger than 64 MB; notes of a whole season are smaller. Cut it into games.");
            } else {
                byte[] bytes = Files.readAllBytes(file);
                if (bytes.length == 0) {
                    err.println(file + " is empty.");
                }
                return bytes;
            }
        } catch (NoSuchFileException e) {
            err.println("There is no file " + file + ".");
        } catch (AccessDeniedException e) {
            err.println(file + " may not be read by this user; change its permissions, or copy it.");
        } catch (IOException e) {
            err.println(file + " cannot be read: " + e.getMessage());
        }
        return new byte[0];
    }

    private void print(Book book, List<Notes> all, List<List<String>> rows) {
        PrintWriter out = out();
        if (shape == Shape.JSON) {
            out.print(Json.text(all.stream().map(NotesAnswer::of).toList()));
        } else if (shape == Shape.TEXT) {
            all.forEach(notes -> out.print(new NotesText(book.taxonomy()).of(notes)));
        } else {
            try {
                RowsWriter.write(ProposedLog.HEADER, rows, out);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            int phase = ProposedLog.HEADER.indexOf("phase");
            long open = rows.stream().filter(row -> row.get(phase).isEmpty()).count();
            if (open > 0) {
                spec.commandLine()
                        .getErr()
                        .println(Numbers.of(open, "rep") + " without a phase: nothing said whether he rushed or played"
                                + " the run. Fill the column before you import.");
            }
        }
    }
}
