package rushlight.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.film.Prospect;
import rushlight.plan.Planner;
import rushlight.report.prospect.Chapters;
import rushlight.report.prospect.Material;
import rushlight.report.prospect.Paper;
import rushlight.report.prospect.ProspectReports;
import rushlight.web.ReportMaterial;
import rushlight.web.ReportPlans;
import rushlight.web.StandingPlans;

/** One prospect on two pages, or his reps as chapters and links. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description = {
            "Writes one prospect on two pages, to read or to print.",
            "",
            "What he does well and what he lacks with the reps behind it, what hangs on his duty, the limits of the tape."
                    + " The summary is the one written on the report page; without one the report says so.",
            ""
        },
        footer = {
            "",
            "Formats:",
            "  pdf     two pages, tagged, fonts in it (default)",
            "  html    the same as a page",
            "  clips   a folder with a WebVTT chapter file for each film: play it beside the film",
            "  links   a line a rep: the clip as film#t=start,end, the game, the rep, what it shows",
            "",
            "Examples:",
            "  rushlight report \"Jory Penwick\"",
            "  rushlight report \"Jory Penwick\" -o penwick.pdf --paper a4",
            "  rushlight report \"Jory Penwick\" --format clips -o chapters"
        })
final class ReportCommand implements Callable<Integer> {
    /** What can be written. */
    enum Kind {
        PDF("", ".pdf"),
        HTML("", ".html"),
        CLIPS("-clips", ""),
        LINKS("-links", ".txt");

        private final String suffix;

        /** Of the file's name, with the dot; empty for a folder. */
        private final String ending;

        Kind(String suffix, String ending) {
            this.suffix = suffix;
            this.ending = ending;
        }

        /** Whether a file of this name holds what its ending says; a name without an ending says nothing. */
        boolean fits(String file) {
            int dot = file.lastIndexOf('.');
            return ending.isEmpty() || dot <= 0 || file.substring(dot).equalsIgnoreCase(ending);
        }

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "PROSPECT", description = "name or id")
    private String name = "";

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "${COMPLETION-CANDIDATES} (default: by the ending of FILE, else pdf)")
    private Optional<Kind> format = Optional.empty();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "where to write (default: the prospect's id in this folder)")
    private Optional<Path> output = Optional.empty();

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4 (default: letter)")
    private Optional<String> paper = Optional.empty();

    @Option(names = "--letter", description = "the same as --paper letter")
    private boolean letter;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Paper chosen = paper();
        Kind kind = kind();
        if (!data.isThere()) {
            return refuse(
                    "There is no film in " + data.folder() + " yet. Import a film log first: rushlight import FILE,"
                            + " or look at the invented league: rushlight demo");
        }
        boolean pages = kind == Kind.PDF || kind == Kind.HTML;
        if (pages) {
            Ahead.begin(ProspectReports::prepare);
            Ahead.begin(Planner::prepare);
        }
        try (Archive archive = data.open()) {
            if (pages) {
                Ahead.begin(archive.book()::handbook);
            }
            Optional<Prospect> who = ProspectNames.one(
                    name, archive.prospects(), spec.commandLine().getErr());
            if (who.isEmpty()) {
                return 1;
            }
            Optional<Material> material = ReportMaterial.of(archive, who.get().id());
            return material.isEmpty()
                    ? refuse("There is no film of \"" + name + "\" yet.")
                    : write(archive, material.get(), kind, chosen);
        }
    }

    private int write(Archive archive, Material material, Kind kind, Paper chosen) {
        Path file =
                output.orElseGet(() -> Path.of(material.assessment().prospect().id() + kind.suffix + kind.ending));
        if (kind == Kind.CLIPS) {
            return chapters(material, file);
        }
        Optional<String> refusal = WholeFile.refusal(file);
        if (refusal.isPresent()) {
            return refuse(refusal.get());
        }
        if (kind == Kind.LINKS) {
            WholeFile.write(file, links(material).getBytes(StandardCharsets.UTF_8));
        } else {
            Book book = archive.book();
            ProspectReports reports = new ProspectReports(book.ontology(), book.taxonomy(), book.handbook());
            Material planned = ReportMaterial.with(material, new StandingPlans(archive, ReportPlans.made(book)));
            WholeFile.write(
                    file,
                    kind == Kind.PDF
                            ? reports.print(planned, chosen).pdf()
                            : reports.html(planned, chosen).getBytes(StandardCharsets.UTF_8));
        }
        out("Wrote " + file + ".");
        return 0;
    }

    private int chapters(Material material, Path folder) {
        if (Files.isRegularFile(folder)) {
            return refuse(folder + " is a file; chapters want a folder. Nothing was written.");
        }
        Map<String, String> files = new LinkedHashMap<>();
        for (Chapters.Film film : Chapters.of(material.assessment())) {
            String file = film.fileName();
            for (int i = 2; files.containsKey(file); i++) {
                file = film.fileName().replaceFirst("\\.vtt$", "-" + i + ".vtt");
            }
            files.put(file, film.vtt());
        }
        if (files.isEmpty()) {
            return refuse("None of the reps behind what stands has a film and a time; nothing was written.");
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
        files.forEach((file, text) -> WholeFile.write(folder.resolve(file), text.getBytes(StandardCharsets.UTF_8)));
        out("Wrote " + Numbers.of(files.size(), "chapter file") + " to " + folder + ": "
                + String.join(", ", files.keySet()) + ".");
        return 0;
    }

    private static String links(Material material) {
        return Chapters.of(material.assessment()).stream()
                .flatMap(film -> film.chapters().stream())
                .map(one -> one.href() + "\t" + one.game() + "\t" + one.title() + "\n")
                .collect(Collectors.joining());
    }

    /** What was asked for, else what the file's ending says, else pages to print. */
    private Kind kind() {
        String file = output.map(Path::getFileName).map(Path::toString).orElse("");
        Kind kind = format.orElseGet(() -> !Kind.PDF.fits(file) && Kind.HTML.fits(file) ? Kind.HTML : Kind.PDF);
        if (!kind.fits(file)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "A report "
                            + format.map(asked -> "as " + asked + " ends in " + asked.ending)
                                    .orElse("ends in .pdf or .html")
                            + "; no " + file + " was written. Chapters and links are asked for with --format clips and"
                            + " --format links.");
        }
        return kind;
    }

    private Paper paper() {
        if (letter && paper.isPresent()) {
            throw new ParameterException(spec.commandLine(), "Choose one of --letter and --paper.");
        }
        return paper.map(word -> Paper.of(word.toLowerCase(Locale.ROOT))
                        .orElseThrow(() -> new ParameterException(
                                spec.commandLine(), "The paper is letter or a4, not \"" + word + "\".")))
                .orElse(Paper.LETTER);
    }

    private int refuse(String why) {
        spec.commandLine().getErr().println(why);
        return 1;
    }

    private void out(String words) {
        spec.commandLine().getOut().println(words);
    }
}
