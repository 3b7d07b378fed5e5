package rushlight.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.knowledge.Drill;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TrainedSkill;
import rushlight.knowledge.Training;

/** What it takes to run a drill, how a skill is judged, and what can hurt, as short facts and cautions of a page. */
final class TrainingFacts {
    private final Training training;
    private final Taxonomy taxonomy;

    TrainingFacts(Training training, Taxonomy taxonomy) {
        this.training = training;
        this.taxonomy = taxonomy;
    }

    List<TechniqueAnswer.Fact> of(String slug) {
        List<TechniqueAnswer.Fact> found = new ArrayList<>();
        training.drill(slug).ifPresent(drill -> drill(found, drill));
        training.skill(slug).ifPresent(skill -> skill(found, skill));
        training.level(slug).ifPresent(level -> {
            put(
                    found,
                    "contactRank",
                    "Order",
                    (level.rank() + 1) + " of " + training.levels().size() + ", the lightest first");
            put(found, "fullContact", "Full contact", level.fullContact() ? "yes" : "no");
            put(
                    found,
                    "planned",
                    "In a plan",
                    level.planned() ? "where the rules, the day and medical staff allow it" : "never by itself");
        });
        return List.copyOf(found);
    }

    private void drill(List<TechniqueAnswer.Fact> found, Drill drill) {
        put(found, "trainsFirst", "Chosen for", taxonomy.label(drill.first()));
        put(found, "phaseOrder", "Step", drill.phaseOrder() + ", " + taxonomy.label(drill.phase()));
        put(
                found,
                "contactLevel",
                "Contact",
                drill.level().label() + (drill.level().fullContact() ? ", counted as full contact" : ""));
        String gear = drill.equipment().stream().map(Drill.Equipment::label).collect(Collectors.joining(", "));
        put(found, "equipment", "Equipment", gear.isEmpty() ? "none" : gear);
        put(found, "people", "Men", drill.people() + (drill.people() == 1 ? ", himself" : ", himself among them"));
        put(
                found,
                "minutes",
                "One set",
                drill.minutes() + " min" + (drill.repetitions() > 0 ? ", " + drill.repetitions() + " reps" : ""));
        if (!drill.success().isEmpty()) {
            put(found, "success", "Good when", drill.success());
        }
    }

    private static void skill(List<TechniqueAnswer.Fact> found, TrainedSkill skill) {
        put(found, "skillKind", "Sort of skill", skill.kind());
        put(
                found,
                "judgedAt",
                "Judged from",
                "contact level " + skill.judgedAt().label());
        if (!skill.measuredBy().isEmpty()) {
            put(found, "measuredBy", "What is counted", skill.measuredBy());
        }
    }

    private static void put(List<TechniqueAnswer.Fact> found, String property, String title, String value) {
        found.add(new TechniqueAnswer.Fact(property, title, value));
    }

    /** What can hurt in a drill, as cautions of its own page; none for anything else. */
    List<Lesson.Statement> hazards(String slug) {
        return training.drill(slug).map(Drill::hazards).orElse(List.of()).stream()
                .map(hazard -> new Lesson.Statement(
                        hazard.slug(),
                        slug,
                        hazard.text(),
                        hazard.support(),
                        hazard.sources(),
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        hazard.local()))
                .toList();
    }
}
