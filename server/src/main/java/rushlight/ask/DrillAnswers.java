package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.findings.Finding;
import rushlight.findings.FindingBook;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;

/** What to train a skill, a fault, a finding or a move with. */
final class DrillAnswers {
    private static final String DRILL = "Drill";

    private final Taxonomy taxonomy;
    private final Links links;
    private final FindingBook findings;
    private final FindingAnswers found;

    /** What a drill has to train: how much the skill weighs, and the drill to begin with. */
    private record Wanted(Map<String, Double> skills, Set<String> starters) {}

    DrillAnswers(Taxonomy taxonomy, Links links, FindingBook findings, FindingAnswers found) {
        this.taxonomy = taxonomy;
        this.links = links;
        this.findings = findings;
        this.found = found;
    }

    Answers.Listed of(Scene scene) {
        List<String> asked = asked(scene);
        Wanted wanted = new Wanted(new LinkedHashMap<>(), new HashSet<>());
        asked.forEach(slug -> want(slug, wanted));
        List<Answer.Drill> drills = new ArrayList<>();
        for (Concept drill : taxonomy.ofClass(DRILL)) {
            List<String> trains = links.from(drill.slug(), "trains").stream()
                    .filter(skill -> weight(skill, wanted) > 0)
                    .sorted(Comparator.comparingDouble(skill -> -weight(skill, wanted)))
                    .toList();
            boolean starter = wanted.starters().contains(drill.slug());
            if (!trains.isEmpty() || starter) {
                drills.add(drill(drill, trains, starter, wanted));
            }
        }
        if (drills.isEmpty()) {
            String terms = asked.stream().map(taxonomy::label).collect(Collectors.joining(", "));
            return Answers.Listed.nothing(
                    asked.isEmpty() && !scene.prospects().isEmpty()
                            ? "No gap of his stands on this film, so there is none to train first."
                            : asked.isEmpty()
                                    ? "The question names no skill, fault or finding to train."
                                    : "The book has no drill for " + terms + ".");
        }
        drills.sort(Comparator.comparingDouble((Answer.Drill d) -> -d.score()).thenComparing(Answer.Drill::label));
        List<Answer.Drill> top = scene.top(drills);
        return Answers.Listed.of(top.size(), scene.window().of(top));
    }

    /** What is named; else what the players who are named lack. */
    private List<String> asked(Scene scene) {
        List<String> slugs = new ArrayList<>(scene.asked().about(Filter.Relation.TRAINS));
        scene.asked().filters(Filter.Findings.class).forEach(filter -> slugs.addAll(filter.slugs()));
        boolean named = slugs.isEmpty() && !scene.prospects().isEmpty();
        return named ? found.gaps(scene) : slugs.stream().distinct().toList();
    }

    /** A finding says what to train first, a fault what is missing, a move what it is made of. */
    private void want(String slug, Wanted wanted) {
        Optional<Finding> finding = findings.finding(slug);
        if (finding.isPresent()) {
            List<String> first = finding.get().advice().trainFirst();
            for (int i = 0; i < first.size(); i++) {
                wanted.skills().merge(first.get(i), 1.0 / (1 + i), Math::max);
            }
            finding.get().advice().starterDrill().ifPresent(wanted.starters()::add);
            return;
        }
        wanted.skills().merge(slug, 1.0, Math::max);
        links.from(slug, "shows").forEach(skill -> wanted.skills().merge(skill, 0.9, Math::max));
        links.from(slug, "requires").forEach(skill -> wanted.skills().merge(skill, 0.4, Math::max));
    }

    /** A skill weighs what it was wanted for; one narrower than a wanted one weighs a little less. */
    private double weight(String skill, Wanted wanted) {
        double weight = 0;
        for (Map.Entry<String, Double> one : wanted.skills().entrySet()) {
            if (one.getKey().equals(skill)) {
                weight = Math.max(weight, one.getValue());
            } else if (taxonomy.isA(skill, one.getKey())) {
                weight = Math.max(weight, 0.8 * one.getValue());
            }
        }
        return weight;
    }

    private Answer.Drill drill(Concept drill, List<String> trains, boolean starter, Wanted wanted) {
        double most =
                trains.stream().mapToDouble(skill -> weight(skill, wanted)).sum();
        double score = (starter ? 1 : 0) + most / (1 + most);
        String what = trains.stream().map(taxonomy::label).collect(Collectors.joining(", "));
        String sentence = (starter ? "Begin here. " : "") + (what.isEmpty() ? "" : "Trains " + what + ".");
        return new Answer.Drill(
                drill.slug(), drill.label(), score, sentence.strip(), drill.definition(), trains, cautions(drill));
    }

    private List<String> cautions(Concept drill) {
        List<String> all = new ArrayList<>(links.cautions(drill.slug()));
        drill.broader().forEach(group -> all.addAll(links.cautions(group)));
        return all;
    }
}
