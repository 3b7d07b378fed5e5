package rushlight.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/** How the terms of the book stand to each other: which term a relation leads to, and how near. */
final class Links {
    /** The very term was asked about; a wider or a narrower one was. */
    private static final double VERY = 1;

    private static final double WIDER = 0.6;
    private static final double NARROWER = 0.5;

    private final Ontology ontology;
    private final Taxonomy taxonomy;
    private final Map<String, Map<String, List<String>>> byProperty = new HashMap<>();
    private volatile Map<String, List<String>> cautions = Map.of();

    Links(Ontology ontology, Taxonomy taxonomy) {
        this.ontology = ontology;
        this.taxonomy = taxonomy;
        Facts facts = new Facts(ontology.graph());
        for (String property : List.of(
                "beats", "requires", "helpedBy", "setsUp", "attacks", "from", "commonFault", "trains", "shows")) {
            byProperty.put(property, links(facts, property));
        }
        facts.withProperty(Rl.term("requiresOneOf"))
                .forEach(subject -> facts.list(subject, "requiresOneOf")
                        .forEach(one -> byProperty
                                .computeIfAbsent("requires", r -> new HashMap<>())
                                .computeIfAbsent(Rl.slug(subject), s -> new ArrayList<>())
                                .add(Rl.slug(one))));
    }

    private static Map<String, List<String>> links(Facts facts, String property) {
        Map<String, List<String>> links = new HashMap<>();
        facts.withProperty(Rl.term(property)).stream()
                .filter(Node::isURI)
                .forEach(subject -> links.put(Rl.slug(subject), new ArrayList<>(facts.slugs(subject, property))));
        return links;
    }

    /** Where a property leads from a term. */
    List<String> from(String slug, String property) {
        return byProperty.getOrDefault(property, Map.of()).getOrDefault(slug, List.of());
    }

    /** The terms that stand so to some of the slugs, with how near each does, 1 at most. */
    Map<String, Double> related(Filter.Relation relation, List<String> slugs) {
        return switch (relation) {
            case ITSELF, MOVE, TRIGGER -> itself(slugs);
            case BEATS -> backward("beats", slugs);
            case BEATEN_BY -> forward("beats", slugs);
            case NEEDED_FOR -> forward("requires", slugs);
            case REQUIRES -> backward("requires", slugs);
            case SETS_UP -> backward("setsUp", slugs);
            case SET_UP_BY -> forward("setsUp", slugs);
            case ATTACKS -> backward("attacks", slugs);
            case KIND_OF -> kinds(slugs);
            case FROM -> backward("from", slugs);
            case FAULT_OF -> forward("commonFault", slugs);
            case RIGHT_FOR -> right(slugs);
            case TRAINS -> backward("trains", slugs);
        };
    }

    private static Map<String, Double> itself(List<String> slugs) {
        Map<String, Double> found = new LinkedHashMap<>();
        slugs.forEach(slug -> found.put(slug, VERY));
        return found;
    }

    private Map<String, Double> kinds(List<String> slugs) {
        Map<String, Double> found = new LinkedHashMap<>();
        for (String slug : slugs) {
            new TreeSet<>(taxonomy.narrower(slug))
                    .stream()
                            .filter(narrower -> !slugs.contains(narrower))
                            .forEach(narrower -> found.put(narrower, direct(narrower, slug) ? VERY : NARROWER));
        }
        return found;
    }

    private boolean direct(String narrower, String wider) {
        return taxonomy.concept(narrower)
                .filter(c -> c.broader().contains(wider))
                .isPresent();
    }

    /** What the terms, or else wider ones, lead to. */
    private Map<String, Double> forward(String property, List<String> slugs) {
        Map<String, Double> found = new LinkedHashMap<>();
        for (String slug : slugs) {
            for (String at : new TreeSet<>(taxonomy.closure(slug))) {
                double near = at.equals(slug) ? VERY : WIDER;
                from(at, property).forEach(to -> found.merge(to, near, Math::max));
            }
        }
        return found;
    }

    /** What leads to the terms, or to a wider or a narrower one. */
    private Map<String, Double> backward(String property, List<String> slugs) {
        Map<String, Double> found = new LinkedHashMap<>();
        byProperty.getOrDefault(property, Map.of()).forEach((subject, objects) -> {
            for (String object : objects) {
                slugs.forEach(slug -> near(object, slug).ifPresent(near -> found.merge(subject, near, Math::max)));
            }
        });
        return found;
    }

    private Optional<Double> near(String object, String slug) {
        if (object.equals(slug)) {
            return Optional.of(VERY);
        }
        if (taxonomy.isA(slug, object)) {
            return Optional.of(WIDER);
        }
        return taxonomy.isA(object, slug) ? Optional.of(NARROWER) : Optional.empty();
    }

    /** The answers that are right for a block under a duty; either may be left open. */
    private Map<String, Double> right(List<String> slugs) {
        Map<String, Double> found = new LinkedHashMap<>();
        Set<String> blocks = new TreeSet<>(slugs);
        Set<String> duties = new TreeSet<>(slugs);
        blocks.retainAll(all(true));
        duties.retainAll(all(false));
        for (FitRule rule : taxonomy.fitRules()) {
            boolean block = blocks.isEmpty() || blocks.contains(rule.block());
            boolean duty = duties.isEmpty() || duties.contains(rule.assignment());
            if (block && duty && !(blocks.isEmpty() && duties.isEmpty())) {
                double near = rule.onlyIf().isEmpty() ? VERY : WIDER;
                rule.right().forEach(fit -> found.merge(fit, near, Math::max));
            }
        }
        return found;
    }

    private Set<String> all(boolean blocks) {
        Set<String> all = new TreeSet<>();
        taxonomy.fitRules().forEach(rule -> all.add(blocks ? rule.block() : rule.assignment()));
        return all;
    }

    /** What is told to be minded about a term; the lessons are read when this is first asked. */
    List<String> cautions(String slug) {
        Map<String, List<String>> known = cautions;
        if (known.isEmpty()) {
            known = readCautions(ontology.lessons());
            cautions = known;
        }
        return known.getOrDefault(slug, List.of());
    }

    private static Map<String, List<String>> readCautions(Graph lessons) {
        Facts facts = new Facts(lessons);
        Map<String, List<String>> found = new HashMap<>();
        for (Node lesson : facts.ofClass("Teaching")) {
            if (facts.slug(lesson, "part").equals(Optional.of("caution"))) {
                facts.slug(lesson, "about")
                        .ifPresent(about -> found.computeIfAbsent(about, a -> new ArrayList<>())
                                .addAll(facts.texts(lesson, Rl.term("text"))));
            }
        }
        return found;
    }
}
