package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import rushlight.film.Prospect;
import rushlight.findings.Countable;
import rushlight.index.Count;
import rushlight.index.FoundRep;
import rushlight.situation.Situation;

/** Players, ranked by what a count allows to say and not by the bare rate. */
final class PlayerAnswers {
    private final Countable countable;
    private final Wording wording;
    private final Counted counted;

    /** A player before his reps are looked up. */
    private record Ranked(Prospect prospect, Answer.Count count) {}

    PlayerAnswers(Countable countable, Wording wording, Counted counted) {
        this.countable = countable;
        this.wording = wording;
        this.counted = counted;
    }

    Answers.Listed of(Scene scene) {
        SituationPair pair = scene.asked().situation().orElseGet(() -> SituationPair.just(countable.anyRep()));
        Situation chance = countable.opportunity(pair.opportunity(), pair.event());
        Map<String, Count> counts = scene.footage().counts(chance, pair.event(), scene.slice());
        List<Ranked> ranked = ranked(scene, counts);
        if (ranked.isEmpty()) {
            return Answers.Listed.nothing(why(scene, pair, counts));
        }
        List<Ranked> all = scene.top(ranked);
        List<Ranked> shown = scene.window().of(all);
        Map<String, List<SeenRep>> reps = reps(scene, chance, pair.event(), shown);
        List<Answer> answers = new ArrayList<>();
        for (Ranked one : shown) {
            answers.add(new Answer.Player(
                    one.prospect(),
                    one.count(),
                    Counted.score(one.count(), scene.direction()),
                    wording.happened(pair, one.count()),
                    Optional.empty(),
                    reps.getOrDefault(one.prospect().id(), List.of())));
        }
        return Answers.Listed.of(all.size(), answers);
    }

    private List<Ranked> ranked(Scene scene, Map<String, Count> counts) {
        Map<String, Prospect> known =
                scene.footage().once(Everybody.class, Everybody::of).byId();
        boolean least = scene.direction() == Filter.Direction.LEAST;
        List<Ranked> ranked = new ArrayList<>();
        counts.forEach((id, count) -> {
            Answer.Count figures = counted.of(count);
            Prospect prospect = known.get(id);
            if (prospect != null && (least || count.events() > 0) && scene.enough(figures)) {
                ranked.add(new Ranked(prospect, figures));
            }
        });
        ranked.sort(Comparator.comparing(Ranked::count, Counted.order(scene.direction()))
                .thenComparing(one -> one.prospect().name()));
        return ranked;
    }

    private Map<String, List<SeenRep>> reps(Scene scene, Situation chance, Situation event, List<Ranked> shown) {
        if (shown.isEmpty()) {
            return new HashMap<>();
        }
        List<String> ids = shown.stream().map(one -> one.prospect().id()).toList();
        List<FoundRep> found =
                scene.footage().found(chance, event, scene.slice().only(ids)).all();
        return found.stream()
                .map(SeenRep::of)
                .collect(Collectors.groupingBy(rep -> rep.prospect().id()));
    }

    private String why(Scene scene, SituationPair pair, Map<String, Count> counts) {
        if (scene.footage().prospects().isEmpty()) {
            return "There is no film yet.";
        }
        Count all = counts.values().stream().reduce(new Count(0, 0), Count::plus);
        if (all.opportunities() == 0) {
            return "No rep " + wording.where(scene) + " shows it: " + wording.phrase(pair.opportunity()) + ".";
        }
        if (all.events() == 0) {
            return "It never happened: " + all.opportunities() + " times it could have, " + wording.where(scene) + ".";
        }
        return "It happened " + all.events() + " of " + all.opportunities()
                + " times, but nobody has as many as you ask" + " for.";
    }

    /** Everybody of whom there is film. */
    record Everybody(Map<String, Prospect> byId) {
        static Everybody of(rushlight.index.Footage footage) {
            return new Everybody(
                    footage.prospects().stream().collect(Collectors.toMap(Prospect::id, Function.identity())));
        }
    }
}
