package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import rushlight.evidence.Verdict;
import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.findings.Assessor;
import rushlight.findings.Judged;
import rushlight.findings.Polarity;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Tape;

/** What film says of players, by verdict, kind and weight; and who has a finding. */
final class FindingAnswers {
    private final Assessor assessor;
    private final Counted counted;
    private final FindingTopics topics;

    /** A finding held against one player's tape. */
    private record Held(Prospect prospect, Judged judged) {}

    FindingAnswers(Assessor assessor, Taxonomy taxonomy, Counted counted) {
        this.assessor = assessor;
        this.topics = new FindingTopics(taxonomy);
        this.counted = counted;
    }

    /** The findings themselves, what a coach should read first standing first. */
    Answers.Listed of(Scene scene) {
        List<Held> held = held(scene);
        List<Held> wanted = wanted(scene, held).stream()
                .sorted(Comparator.comparing(Held::judged, Judged.mostTellingFirst())
                        .thenComparing(one -> one.prospect().name()))
                .toList();
        if (wanted.isEmpty()) {
            return Answers.Listed.nothing(why(held));
        }
        List<Held> top = scene.top(wanted);
        List<Held> shown = scene.window().of(top);
        List<Answer> answers = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            Held one = shown.get(i);
            int place = Math.max(0, scene.window().offset()) + i;
            answers.add(new Answer.Finding(
                    one.prospect(),
                    one.judged(),
                    counted.of(one.judged().outcome().rate()),
                    1.0 / (1 + place),
                    SeenRep.of(one.prospect(), one.judged())));
        }
        return Answers.Listed.of(top.size(), answers);
    }

    /** The players who have a finding, ranked by its count; the surest word of each where several findings are asked for. */
    Answers.Listed players(Scene scene) {
        List<Held> held = held(scene);
        Map<String, Held> best = new HashMap<>();
        wanted(scene, held)
                .forEach(one -> best.merge(one.prospect().id(), one, (a, b) -> score(a) >= score(b) ? a : b));
        List<Held> ranked = best.values().stream()
                .filter(one -> scene.enough(counted.of(one.judged().outcome().rate())))
                .sorted(Comparator.comparingDouble((Held one) -> -score(one))
                        .thenComparing(one -> -one.judged().outcome().rate().events())
                        .thenComparing(one -> one.prospect().name()))
                .toList();
        if (ranked.isEmpty()) {
            return Answers.Listed.nothing(why(held));
        }
        List<Held> top = scene.top(ranked);
        return Answers.Listed.of(
                top.size(), scene.window().of(top).stream().map(this::player).toList());
    }

    private Answer player(Held one) {
        return new Answer.Player(
                one.prospect(),
                counted.of(one.judged().outcome().rate()),
                score(one),
                one.judged().sentence(),
                Optional.of(one.judged()),
                SeenRep.of(one.prospect(), one.judged()));
    }

    private double score(Held one) {
        return counted.of(one.judged().outcome().rate()).shown().low();
    }

    /** The findings that cost the players who are named something and stand, what a coach should read first standing first. */
    List<String> gaps(Scene scene) {
        return held(scene).stream()
                .map(Held::judged)
                .filter(one -> one.finding().polarity() == Polarity.GAP
                        && one.verdict().stands())
                .sorted(Judged.mostTellingFirst())
                .map(one -> one.finding().slug())
                .distinct()
                .toList();
    }

    private List<Held> held(Scene scene) {
        Set<String> slugs = scene.asked().filters(Filter.Findings.class).stream()
                .flatMap(filter -> filter.slugs().stream())
                .collect(Collectors.toSet());
        boolean everybody =
                scene.slice().prospects().isEmpty() && scene.narrowing().keepsAll() && !slugs.isEmpty();
        return everybody
                ? scene.footage()
                        .once(Remembered.class, footage -> new Remembered())
                        .of(slugs, () -> held(scene, slugs))
                : held(scene, slugs);
    }

    private List<Held> held(Scene scene, Set<String> slugs) {
        List<Held> all = new ArrayList<>();
        for (String prospect : whose(scene)) {
            scene.footage()
                    .tape(prospect)
                    .map(scene.narrowing()::of)
                    .ifPresent(tape -> judged(tape, slugs).forEach(judged -> {
                        if (slugs.isEmpty() || slugs.contains(judged.finding().slug())) {
                            all.add(new Held(tape.prospect(), judged));
                        }
                    }));
        }
        return all;
    }

    /** The findings last held against everybody's tape, as long as the film stays as it is. */
    private static final class Remembered {
        private static final int MOST = 8;

        private final Map<Set<String>, List<Held>> last = new LinkedHashMap<>(MOST, 1, true);

        synchronized List<Held> of(Set<String> slugs, Supplier<List<Held>> work) {
            List<Held> known = last.get(slugs);
            if (known == null) {
                known = work.get();
                last.put(slugs, known);
                if (last.size() > MOST) {
                    last.remove(last.keySet().iterator().next());
                }
            }
            return known;
        }
    }

    private List<Judged> judged(Tape tape, Set<String> slugs) {
        return slugs.isEmpty() ? assess(tape).findings() : assessor.judge(tape, slugs);
    }

    private Assessment assess(Tape tape) {
        return assessor.assess(tape);
    }

    private static List<String> whose(Scene scene) {
        List<String> named = scene.prospects();
        return named.isEmpty() || scene.men().isPresent()
                ? scene.wanted().stream().map(Prospect::id).toList()
                : named;
    }

    private List<Held> wanted(Scene scene, List<Held> held) {
        List<String> about = scene.asked().about(Filter.Relation.ITSELF);
        Set<Verdict> verdicts = scene.asked()
                .filter(Filter.Verdicts.class)
                .map(Filter.Verdicts::verdicts)
                .orElse(Set.of(Verdict.CONFIRMED, Verdict.LIKELY));
        return held.stream()
                .filter(one -> verdicts.contains(one.judged().verdict()))
                .filter(one -> about.isEmpty() || topics.isAbout(one.judged().finding(), about))
                .filter(one -> scene.asked()
                        .filter(Filter.Polarities.class)
                        .map(p -> p.polarities().contains(one.judged().finding().polarity()))
                        .orElse(true))
                .filter(one -> scene.asked()
                        .filter(Filter.Severities.class)
                        .map(s -> s.severities().contains(one.judged().finding().severity()))
                        .orElse(true))
                .toList();
    }

    private static String why(List<Held> held) {
        if (held.isEmpty()) {
            return "There is no film of that.";
        }
        long thin = held.stream()
                .filter(one -> one.judged().verdict() == Verdict.NOT_ENOUGH_TAPE)
                .count();
        return "Nothing of that kind stands on this film. " + held.size() + " times it was looked at; " + thin
                + " times there was not enough tape.";
    }
}
