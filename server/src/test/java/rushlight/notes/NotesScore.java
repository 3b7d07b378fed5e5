package rushlight.notes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/**
 * Scores the reader of notes on a file of annotated narrations, YAML or one JSON object a line, and writes the report. Run by
 * {@code server/bench score FILE}; {@code tuned} behind the file takes the bars of narrations the reader was tuned on.
 */
public final class NotesScore {
    /** What a report calls the kinds of concepts; the first that a concept has is its own. */
    private static final List<Map.Entry<String, String>> GROUPS = List.of(
            Map.entry("RushMove", "moves"),
            Map.entry("RunFit", "run fits"),
            Map.entry("RushFamily", "moves"),
            Map.entry("RunBlock", "blocks"),
            Map.entry("BlockerBehavior", "blocker behaviour"),
            Map.entry("Result", "outcomes"),
            Map.entry("Alignment", "alignments"),
            Map.entry("Shade", "alignments"),
            Map.entry("Stance", "alignments"),
            Map.entry("Trait", "traits"),
            Map.entry("Fault", "faults"));

    private NotesScore() {}

    /** The kind of a concept, as reports call it. */
    static String group(Taxonomy taxonomy, String slug) {
        Optional<String> found = taxonomy.concept(slug)
                .flatMap(concept -> GROUPS.stream()
                        .filter(entry -> concept.classes().contains(entry.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst());
        return found.orElse("other");
    }

    static Narration narration(Gold gold) {
        return Narrations.read(gold.id() + "." + gold.format(), gold.raw().getBytes(StandardCharsets.UTF_8));
    }

    /** The score of a reader; where {@code narrower} holds, a narrower concept stands for the one marked. */
    static Score of(List<Gold> all, NoteReader reader, Taxonomy taxonomy, boolean narrower) {
        return of(all, reader, taxonomy, narrower, concept -> true);
    }

    private static Score of(
            List<Gold> all, NoteReader reader, Taxonomy taxonomy, boolean narrower, Predicate<String> lookedFor) {
        Score score = new Score(narrower ? taxonomy::isA : String::equals, slug -> NotesScore.group(taxonomy, slug));
        all.forEach(gold -> score.add(
                gold, Proposal.of(reader.read(narration(gold), gold.prospect())).ofConcepts(lookedFor)));
        return score;
    }

    /** Writes a report beside what the build makes, and gives its text. */
    static String write(String name, Score score, boolean seen) throws IOException {
        String report = ScoreReport.of("Notes: " + name, score, seen);
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "notes-score-" + name + ".md"), report);
        return report;
    }

    public static void main(String[] args) throws IOException {
        if (args.length == 0) {
            System.err.println("server/bench score FILE [tuned] [CONCEPTS]");
            System.exit(2);
        }
        Path file = Path.of(args[0]);
        boolean seen = args.length > 1 && args[1].equals("tuned");
        Taxonomy taxonomy = Taxonomy.of(Ontology.packaged());
        Predicate<String> lookedFor = concept -> true;
        String name = String.valueOf(file.getFileName()).replaceFirst("\\.[a-z]+$", "");
        int next = seen ? 2 : 1;
        if (args.length > next) {
            List<String> listed = Files.readAllLines(Path.of(args[next]));
            lookedFor = concept -> listed.stream().anyMatch(wide -> taxonomy.isA(concept, wide));
            name += "-listed";
        }
        Score score = of(Gold.of(file), NoteReader.of(taxonomy), taxonomy, true, lookedFor);
        System.out.print(write(name, score, seen));
    }
}
