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
import rushlight.notes.Diagnostic;
import rushlight.notes.Narration;
import rushlight.notes.NoteFile;
import rushlight.notes.ProposedLog;
import rushlight.web.NotesStream;

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
        try {
            return read(err) ? 0 : 1;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether every file could be read and held notes. */
    private boolean read(PrintWriter err) throws IOException {
        NotesPrinting printing = printing(err);
        List<Narration> narrations = new ArrayList<>();
        boolean whole = true;
        for (Path path : files) {
            byte[] bytes = bytes(path, err);
            whole &= bytes.length > 0;
            if (bytes.length > 0) {
                NoteFile file = NoteFile.of(path.getFileName().toString(), bytes);
                int[] cues = {0};
                List<Diagnostic> faults = file.each(cue -> cues[0]++);
                faults.forEach(d -> err.println(file.source() + ", line " + d.line() + ": " + d.message()));
                whole &= cues[0] > 0;
                printing.file(file, faults);
                if (save) {
                    narrations.add(file.whole());
                }
            }
        }
        printing.end();
        if (save) {
            OpinionSaving.save(data, narrations, prospect, evaluator, shape == Shape.TEXT ? out() : err);
        }
        return whole;
    }

    private NotesPrinting printing(PrintWriter err) throws IOException {
        Book book = data.book();
        return switch (shape) {
            case TEXT -> new NotesPrinting.AsText(book.notes(), book.taxonomy(), prospect, out());
            case JSON -> new NotesPrinting.AsJson(book.notes(), prospect, new NotesStream(out()));
            case CSV ->
                new NotesPrinting.AsRows(
                        book.notes(),
                        ProposedLog.of(book.taxonomy()),
                        new ProposedLog.Heading(prospect, game, video, evaluator),
                        data.isNamed() ? DecidedRows.of(data) : Optional.empty(),
                        out(),
                        err);
        };
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
}
