package rushlight.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.RDFS;
import org.apache.jena.vocabulary.SKOS;

/** Turns the statements of the book about drills and skills into records; {@link LimitReader} reads the numbers. */
final class TrainingReader {
    private final Ontology ontology;
    private final Facts facts;

    TrainingReader(Ontology ontology) {
        this.ontology = ontology;
        this.facts = new Facts(ontology.graph());
    }

    Training read() {
        Map<Node, ContactLevel> levels = byNode("ContactLevel", this::level);
        Map<Node, Drill.Hazard> hazards = byNode("Hazard", this::hazard);
        Map<Node, Drill.Equipment> equipment =
                byNode("Equipment", node -> new Drill.Equipment(Rl.slug(node), label(node)));
        Map<String, Drill> drills = new TreeMap<>();
        for (Node node : facts.withProperty(Rl.term("trainsFirst"))) {
            drills.put(Rl.slug(node), drill(node, levels, equipment, hazards));
        }
        List<Prerequisite> links = prerequisites();
        Layers layers = new Layers(links);
        Map<String, TrainedSkill> skills = new TreeMap<>();
        for (Node node : facts.withProperty(Rl.term("judgedAt"))) {
            skills.put(Rl.slug(node), skill(node, levels, layers));
        }
        LimitReader limits = new LimitReader(ontology, levels);
        return new Training(
                levels.values().stream()
                        .sorted(Comparator.comparingInt(ContactLevel::rank).thenComparing(ContactLevel::slug))
                        .toList(),
                drills,
                skills,
                links,
                limits.profiles(),
                limits.presets(),
                limits.notices());
    }

    private <T> Map<Node, T> byNode(String kind, Function<Node, T> read) {
        return facts.ofClass(kind).stream().collect(Collectors.toMap(node -> node, read));
    }

    private ContactLevel level(Node node) {
        return new ContactLevel(
                Rl.slug(node),
                label(node),
                facts.number(node, "contactRank"),
                facts.yes(node, "fullContact"),
                facts.yes(node, "planned"));
    }

    private Drill.Hazard hazard(Node node) {
        return new Drill.Hazard(
                Rl.slug(node),
                label(node),
                facts.needed(node, "text"),
                facts.text(node, "because").orElse(""),
                facts.text(node, "support").orElse(Rl.COMMON_PRACTICE),
                Source.of(node, facts, facts),
                ontology.isLocal(node));
    }

    private Drill drill(
            Node node,
            Map<Node, ContactLevel> levels,
            Map<Node, Drill.Equipment> equipment,
            Map<Node, Drill.Hazard> hazards) {
        Node phase = facts.all(node, SKOS.broader.asNode()).stream()
                .filter(wider -> facts.text(wider, "phaseOrder").isPresent())
                .findFirst()
                .orElseThrow(() -> new BrokenBookException(
                        "The book's " + Rl.slug(node) + " does not say which step of the progression it is."));
        String first = facts.slugs(node, "trainsFirst").get(0);
        List<String> trains = new ArrayList<>(List.of(first));
        facts.slugs(node, "trains").stream()
                .filter(skill -> !skill.equals(first))
                .forEach(trains::add);
        return new Drill(
                Rl.slug(node),
                label(node),
                trains,
                Rl.slug(phase),
                facts.number(phase, "phaseOrder"),
                facts.one(node, "contactLevel", levels),
                facts.some(node, "equipment", equipment),
                facts.number(node, "people"),
                facts.number(node, "minutes"),
                facts.text(node, "repetitions").map(Integer::parseInt).orElse(0),
                facts.text(node, "success").orElse(""),
                facts.some(node, "hazard", hazards),
                facts.text(node, "support").orElse(Rl.COMMON_PRACTICE),
                Source.of(node, facts, facts),
                ontology.isLocal(node));
    }

    private TrainedSkill skill(Node node, Map<Node, ContactLevel> levels, Layers layers) {
        return new TrainedSkill(
                Rl.slug(node),
                label(node),
                facts.needed(node, "skillKind"),
                facts.one(node, "judgedAt", levels),
                Double.parseDouble(facts.needed(node, "trainability")),
                facts.text(node, "measuredBy").orElse(""),
                facts.slugs(node, "shownBy"),
                layers.of(Rl.slug(node)),
                ontology.isLocal(node));
    }

    private List<Prerequisite> prerequisites() {
        List<Prerequisite> links = new ArrayList<>();
        Map<List<Node>, Node> reasons = new HashMap<>();
        facts.ofClass("PrerequisiteReason")
                .forEach(reason -> facts.all(reason, Rl.term("ofSkill"))
                        .forEach(skill -> facts.all(reason, Rl.term("wants"))
                                .forEach(wanted -> reasons.put(List.of(skill, wanted), reason))));
        for (Node skill : facts.withProperty(Rl.term("judgedAt"))) {
            add(links, reasons, skill, facts.all(skill, Rl.term("requires")), Prerequisite.Strength.MUST, 0);
            add(links, reasons, skill, facts.all(skill, Rl.term("helpedBy")), Prerequisite.Strength.HELPS, 0);
            List<List<Node>> choices = facts.all(skill, Rl.term("requiresOneOf")).stream()
                    .map(facts::list)
                    .filter(list -> !list.isEmpty())
                    .sorted(Comparator.comparing(list -> Rl.slug(list.get(0))))
                    .toList();
            for (int i = 0; i < choices.size(); i++) {
                add(links, reasons, skill, choices.get(i), Prerequisite.Strength.ONE_OF, i + 1);
            }
        }
        links.sort(Comparator.comparing(Prerequisite::skill)
                .thenComparing(Prerequisite::needs)
                .thenComparing(Prerequisite::strength));
        return links;
    }

    private void add(
            List<Prerequisite> links,
            Map<List<Node>, Node> reasons,
            Node skill,
            List<Node> needs,
            Prerequisite.Strength strength,
            int group) {
        for (Node node : needs) {
            if (facts.text(node, "skillKind").isPresent()) {
                Optional<Node> reason = Optional.ofNullable(reasons.get(List.of(skill, node)));
                links.add(new Prerequisite(
                        Rl.slug(skill),
                        Rl.slug(node),
                        strength,
                        group,
                        reason.flatMap(r -> facts.text(r, "because")).orElse(""),
                        reason.filter(r -> facts.yes(r, "safety")).isPresent()));
            }
        }
    }

    private String label(Node node) {
        Optional<String> preferred =
                facts.texts(node, SKOS.prefLabel.asNode()).stream().findFirst();
        return preferred.orElseGet(() ->
                facts.texts(node, RDFS.label.asNode()).stream().findFirst().orElse(Rl.slug(node)));
    }
}
