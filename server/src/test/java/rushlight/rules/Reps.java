package rushlight.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** Short words for reps in tests: {@code rep("bull-rush > [anchor-hop]", "phase=pass-rush", "result=lost")}. */
final class Reps {
    static final Ontology BOOK = Ontology.packaged();
    static final Taxonomy TAXONOMY = Taxonomy.of(BOOK);
    static final RepRules RULES = RepRules.of(BOOK, TAXONOMY);
    static final Set<String> CHARTED = Set.of("help", "faults", "results", "direction", "chances");

    private Reps() {}

    static Reading rep(String exchange, String... cells) {
        Map<String, List<String>> tags = new HashMap<>();
        for (String cell : cells) {
            int at = cell.indexOf('=');
            tags.put(cell.substring(0, at), List.of(cell.substring(at + 1).split(";", -1)));
        }
        return new Reading(new RepId("jory-penwick", "harbor-game", "r1"), "first-eyes", tags, steps(exchange));
    }

    static Reading rush(String exchange, String... cells) {
        return with("phase=pass-rush", exchange, cells);
    }

    static Reading run(String exchange, String... cells) {
        return with("phase=run", exchange, cells);
    }

    private static Reading with(String phase, String exchange, String... cells) {
        List<String> all = new ArrayList<>(List.of(cells));
        all.add(phase);
        return rep(exchange, all.toArray(String[]::new));
    }

    static List<Step> steps(String exchange) {
        List<Step> steps = new ArrayList<>();
        for (String word : exchange.split(">", -1)) {
            String step = word.trim();
            if (!step.isEmpty()) {
                boolean blockers = step.startsWith("[");
                String concept = blockers ? step.substring(1, step.length() - 1) : step;
                steps.add(new Step(blockers ? Step.By.BLOCKER : Step.By.HIM, concept, Optional.empty()));
            }
        }
        return steps;
    }

    static RepFacts facts(Reading reading) {
        return RULES.classify(reading, CHARTED);
    }

    static Set<String> classes(Reading reading) {
        return new TreeSet<>(facts(reading).tagged("repClass"));
    }
}
