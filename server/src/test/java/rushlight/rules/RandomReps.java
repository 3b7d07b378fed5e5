package rushlight.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.knowledge.Column;
import rushlight.knowledge.Concept;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Taxonomy;

/** Reps that nobody would play, so that every rule meets every tag: seeded, half built from the book's own rows. */
final class RandomReps {
    private final Taxonomy taxonomy;
    private final Random random;

    RandomReps(Taxonomy taxonomy, long seed) {
        this.taxonomy = taxonomy;
        this.random = new Random(seed);
    }

    List<Reading> some(int count) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Map<String, List<String>> tags = cells();
            boolean run = random.nextInt(2) == 0;
            if (chance(90)) {
                tags.put("phase", List.of(run ? "run" : "pass-rush"));
            }
            List<Step> steps = run ? runSteps(tags) : rushSteps();
            readings.add(
                    new Reading(new RepId("nobody", "nowhere", "x" + i), "dice", tags, chance(95) ? steps : List.of()));
        }
        return readings;
    }

    private Map<String, List<String>> cells() {
        Map<String, List<String>> tags = new HashMap<>();
        for (Column column : taxonomy.film().all()) {
            List<String> values = values(column);
            if (!values.isEmpty() && chance(35)) {
                tags.put(column.name(), values);
            }
        }
        tags.remove("assignment_source");
        if (tags.containsKey("assignment") && chance(50)) {
            boolean unknown = tags.get("assignment").contains("assignment-unknown");
            tags.put("assignment_source", List.of(unknown ? "unknown" : chance(50) ? "stated" : "inferred"));
        }
        if (chance(80)) {
            tags.remove("movement");
            tags.remove("not_seen");
        }
        return tags;
    }

    private List<String> values(Column column) {
        return switch (column.kind()) {
            case WORDS -> some(column, column.oneOf());
            case CONCEPT ->
                some(
                        column,
                        column.oneOf().isEmpty()
                                ? column.classes().stream()
                                        .sorted()
                                        .flatMap(name -> taxonomy.ofClass(name).stream())
                                        .map(Concept::slug)
                                        .filter(slug -> column.narrowerThan().isEmpty()
                                                || taxonomy.isA(
                                                        slug,
                                                        column.narrowerThan().get()))
                                        .toList()
                                : column.oneOf());
            case INTEGER ->
                List.of(Integer.toString(1 + random.nextInt(column.name().equals("distance") ? 12 : 4)));
            case TEXT, DATE, CLOCK, TIME, EXCHANGE -> List.of();
        };
    }

    private List<String> some(Column column, List<String> all) {
        List<String> values = new ArrayList<>(List.of(any(all)));
        if (column.list() && chance(30)) {
            String more = any(all);
            if (!values.contains(more)) {
                values.add(more);
            }
        }
        return values;
    }

    private List<Step> rushSteps() {
        List<Step> steps = new ArrayList<>();
        if (chance(50)) {
            Pairing pairing = any(taxonomy.pairings());
            if (chance(20)) {
                steps.add(his("RushMove"));
            }
            steps.add(pairing.primary().map(slug -> his(slug)).orElseGet(() -> his("RushMove")));
            steps.add(pairing.trigger()
                    .map(this::loosely)
                    .map(RandomReps::blockers)
                    .orElseGet(() -> blockers()));
            if (chance(75)) {
                steps.add(chance(60) ? his(loosely(pairing.counter())) : his("RushMove"));
            }
            if (chance(20)) {
                steps.add(his("Finish"));
            }
            return steps;
        }
        if (chance(20)) {
            steps.add(new Step(Step.By.HIM, "speed-rush", Optional.empty()));
            steps.add(his("RushMove"));
        }
        for (int n = random.nextInt(5); n >= 0; n--) {
            steps.add(
                    chance(60)
                            ? his(any(List.of("RushMove", "RushMove", "RushFamily", "Finish", "RushGame")))
                            : blockers());
        }
        return steps;
    }

    private List<Step> runSteps(Map<String, List<String>> tags) {
        List<Step> steps = new ArrayList<>();
        if (chance(60)) {
            FitRule rule = any(taxonomy.fitRules());
            if (chance(50)) {
                tags.put("assignment", List.of(rule.assignment()));
                tags.remove("assignment_source");
            }
            if (chance(15)) {
                steps.add(his("RunFit"));
            }
            steps.add(new Step(Step.By.BLOCKER, rule.block(), Optional.empty()));
            List<String> fits = new ArrayList<>(rule.right().stream().sorted().toList());
            fits.addAll(rule.wrong().stream().sorted().toList());
            for (String fit : fits) {
                if (chance(25)) {
                    boolean fault =
                            taxonomy.concept(fit).orElseThrow().classes().contains("Fault");
                    if (fault) {
                        tags.put("faults", List.of(fit));
                    } else {
                        steps.add(his(fit));
                    }
                }
            }
            if (chance(20)) {
                steps.add(blockers());
                steps.add(his("RunFit"));
            }
            return steps;
        }
        for (int n = random.nextInt(4); n >= 0; n--) {
            steps.add(chance(50) ? his("RunFit") : blockers());
        }
        return steps;
    }

    /** The word itself, or now and then a wider one. */
    private String loosely(String slug) {
        List<String> wider = taxonomy.concept(slug).orElseThrow().broader();
        return chance(20) && !wider.isEmpty() ? any(wider) : slug;
    }

    private Step blockers() {
        return blockers(any(taxonomy.ofClass(chance(50) ? "RunBlock" : "BlockerBehavior"))
                .slug());
    }

    private static Step blockers(String slug) {
        return new Step(Step.By.BLOCKER, slug, Optional.empty());
    }

    private Step his(String classOrSlug) {
        List<Concept> all = taxonomy.ofClass(classOrSlug);
        return new Step(Step.By.HIM, all.isEmpty() ? classOrSlug : any(all).slug(), Optional.empty());
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
