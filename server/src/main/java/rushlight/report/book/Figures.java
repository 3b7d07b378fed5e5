package rushlight.report.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.figure.Drawing;
import rushlight.figure.Fronts;
import rushlight.figure.Heading;
import rushlight.figure.Ladder;
import rushlight.figure.Relations;
import rushlight.handbook.TechniqueAnswer;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TeachingOrder;

/** The drawings of a page. */
final class Figures {
    private static final int MOST = 9;
    private static final int ANSWERS = 2;

    private final Taxonomy taxonomy;
    private final Fronts fronts;

    Figures(Ontology ontology, Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
        this.fronts = Fronts.of(ontology, taxonomy);
    }

    Optional<Drawing> front(TechniqueAnswer answer) {
        String label = answer.label();
        return fronts.of(
                new Heading(
                        "front",
                        "Where " + label + " is",
                        "The offensive line from behind, the square in the middle; the mark stands across from it."),
                answer.slug());
    }

    /** What it needs, from the foot up; nothing for what needs nothing. */
    Optional<Drawing> ladder(TechniqueAnswer answer, List<TeachingOrder.Rung> order) {
        List<Ladder.Rung> rungs = new ArrayList<>();
        order.stream()
                .filter(rung -> !rung.concept().equals(answer.slug()))
                .forEach(rung -> rungs.add(new Ladder.Rung(label(rung.concept()), Ladder.Need.MUST)));
        answer.oneOf()
                .forEach(choice -> choice.forEach(slug -> rungs.add(new Ladder.Rung(label(slug), Ladder.Need.ONE_OF))));
        answer.related("helpedBy").forEach(slug -> rungs.add(new Ladder.Rung(label(slug), Ladder.Need.HELPS)));
        if (rungs.isEmpty()) {
            return Optional.empty();
        }
        Heading heading = new Heading(
                "ladder",
                "What " + answer.label() + " needs",
                "A ladder of " + rungs.size() + (rungs.size() == 1 ? " rung" : " rungs")
                        + "; what is taught first is at the foot.");
        return Optional.of(new Ladder(heading, label(answer.slug()), rungs).draw());
    }

    /** What it beats, what stops it and what follows then; nothing where the book knows neither. */
    Optional<Drawing> around(TechniqueAnswer answer, List<ConceptPage.Pairs> pairings) {
        List<String> beats = answer.related("beats");
        Map<String, List<String>> stops = new LinkedHashMap<>();
        Map<String, List<String>> answers = new LinkedHashMap<>();
        pairings.forEach(pairs -> pairs.trigger()
                .ifPresent(trigger -> answers.put(
                        trigger.label(),
                        pairs.counters().stream()
                                .map(c -> c.counter().label())
                                .distinct()
                                .limit(ANSWERS)
                                .toList())));
        Set<String> beatenBy = new LinkedHashSet<>();
        answer.related("inverse-beats").forEach(slug -> beatenBy.add(label(slug)));
        beatenBy.stream()
                .filter(answers::containsKey)
                .forEach(by -> stops.put(by, answers.getOrDefault(by, List.of())));
        beatenBy.forEach(by -> stops.putIfAbsent(by, List.of()));
        if (beats.isEmpty() && stops.isEmpty()) {
            return Optional.empty();
        }
        List<Relations.Stop> shown = new ArrayList<>();
        stops.forEach((by, then) -> {
            if (shown.size() < MOST) {
                shown.add(new Relations.Stop(by, then));
            }
        });
        List<String> won = beats.stream().limit(MOST).map(this::label).toList();
        String more = beats.size() > MOST || stops.size() > MOST ? " The lists below hold the rest." : "";
        Heading heading = new Heading(
                "around",
                "What " + answer.label() + " beats, and what beats it",
                "It beats " + beats.size() + " and is beaten by " + stops.size() + "." + more);
        return Optional.of(new Relations(
                        heading, label(answer.slug()), won, shown, new Relations.Words("Beats", "Beaten by", "Then"))
                .draw());
    }

    private String label(String slug) {
        return taxonomy.shown(slug);
    }
}
