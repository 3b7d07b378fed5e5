package rushlight.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.RDFS;

/** What a coach tells about each concept, in the order in which he tells it. */
public final class Lessons {
    /** The part that says how to tell two meanings of a word apart. */
    public static final String HOW_TO_TELL = "howToTell";

    /** The part that says what can hurt, and who decides. */
    public static final String CAUTION = "caution";

    /** The part that says what a rule book says. */
    public static final String RULE_NOTE = "ruleNote";

    private record Part(String slug, String title, int order) {}

    private record Placed(Part part, int order, Lesson.Statement statement) {}

    private final Map<String, List<Lesson>> byConcept;

    private Lessons(Map<String, List<Lesson>> byConcept) {
        this.byConcept = byConcept;
    }

    /** Reads every lesson of a book once. */
    public static Lessons of(Ontology ontology) {
        Facts book = new Facts(ontology.graph());
        Facts lessons = new Facts(ontology.lessons());
        Map<Node, Part> parts = book.ofClass("TeachingPart").stream()
                .collect(Collectors.toMap(
                        node -> node,
                        node -> new Part(
                                Rl.slug(node),
                                book.texts(node, RDFS.label.asNode()).stream()
                                        .findFirst()
                                        .orElse(Rl.slug(node)),
                                number(book, node))));
        Map<String, List<Placed>> placed = new TreeMap<>();
        for (Node node : lessons.ofClass("Teaching")) {
            Optional<Part> part = lessons.all(node, Rl.term("part")).stream()
                    .flatMap(p -> Optional.ofNullable(parts.get(p)).stream())
                    .findFirst();
            Optional<String> about = lessons.slug(node, "about");
            if (part.isPresent() && about.isPresent()) {
                placed.computeIfAbsent(about.get(), slug -> new ArrayList<>())
                        .add(new Placed(
                                part.get(), number(lessons, node), statement(node, about.get(), lessons, ontology)));
            }
        }
        Map<String, List<Lesson>> byConcept = new TreeMap<>();
        placed.forEach((slug, told) -> byConcept.put(slug, inOrder(told)));
        return new Lessons(byConcept);
    }

    /** Everything that is told about a concept itself; empty where nothing is. */
    public List<Lesson> about(String slug) {
        return byConcept.getOrDefault(slug, List.of());
    }

    /** What is told about a concept in one part. */
    public List<Lesson.Statement> about(String slug, String part) {
        return about(slug).stream()
                .filter(lesson -> lesson.part().equals(part))
                .flatMap(lesson -> lesson.statements().stream())
                .toList();
    }

    private static List<Lesson> inOrder(List<Placed> told) {
        told.sort(Comparator.<Placed>comparingInt(p -> p.part().order())
                .thenComparing(p -> p.part().slug())
                .thenComparing(Placed::order)
                .thenComparing(p -> p.statement().id()));
        List<Lesson> lessons = new ArrayList<>();
        for (int from = 0; from < told.size(); ) {
            Part part = told.get(from).part();
            int to = from;
            while (to < told.size() && told.get(to).part().equals(part)) {
                to++;
            }
            lessons.add(new Lesson(
                    part.slug(),
                    part.title(),
                    part.order(),
                    told.subList(from, to).stream().map(Placed::statement).toList()));
            from = to;
        }
        return List.copyOf(lessons);
    }

    private static Lesson.Statement statement(Node node, String about, Facts lessons, Ontology ontology) {
        return new Lesson.Statement(
                Rl.slug(node),
                about,
                lessons.text(node, "text").orElse(""),
                lessons.text(node, "support").orElse(Rl.COMMON_PRACTICE),
                Source.of(node, lessons, new Facts(ontology.graph())),
                lessons.text(node, "code"),
                lessons.text(node, "edition"),
                lessons.yes(node, "rulesRisk"),
                ontology.isLocal(node));
    }

    private static int number(Facts facts, Node node) {
        return facts.text(node, "order").map(Integer::parseInt).orElse(Integer.MAX_VALUE);
    }
}
