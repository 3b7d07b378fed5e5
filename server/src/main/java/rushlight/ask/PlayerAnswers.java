package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rushlight.film.Prospect;
import rushlight.findings.Countable;
import rushlight.index.Count;
import rushlight.index.FoundRep;
import rushlight.situation.Situation;

/** Players, ranked by what a count allows to say and not by the bare rate. */
final class PlayerAnswers {
    private static final String UNCOUNTABLE =
            "Nothing in the question can be counted on film, so nobody can be ranked by it.";

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
        if (scene.asked().situation().isEmpty()) {
            return scene.asked().isUncountable() ? Answers.Listed.nothing(UNCOUNTABLE) : roll(scene);
        }
        SituationPair pair = scene.asked().situation().orElseThrow();
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
                    wording.happened(scene.asked(), pair, one.count()),
                    Optional.empty(),
                    reps.getOrDefault(one.prospect().id(), List.of())));
        }
        return Answers.Listed.of(all.size(), answers);
    }

    /** Who there is, by name: where nothing is counted, nobody stands before anybody. */
    private Answers.Listed roll(Scene scene) {
        SituationPair pair = SituationPair.just(countable.anyRep());
        Map<String, Count> counts = scene.footage().counts(pair.opportunity(), pair.event(), scene.slice());
        List<Ranked> all = scene.top(ranked(scene, counts).stream()
                .sorted(Comparator.comparing(one -> one.prospect().name()))
                .toList());
        if (all.isEmpty()) {
            return Answers.Listed.nothing(why(scene, pair, counts));
        }
        List<Ranked> shown = scene.window().of(all);
        Map<String, List<SeenRep>> reps = reps(scene, pair.opportunity(), pair.event(), shown);
        return Answers.Listed.of(
                all.size(),
                shown.stream()
                        .map(one -> new Answer.Player(
                                one.prospect(),
                                one.count(),
                                1,
                                who(one),
                                Optional.empty(),
                                reps.getOrDefault(one.prospect().id(), List.of())))
                        .toList());
    }

    /** "Defensive end, Stonefen, senior. 170 reps on film." */
    private static String who(Ranked one) {
        Prospect his = one.prospect();
        String known = Stream.of(his.position(), his.team(), his.classYear())
                .filter(word -> !word.isBlank())
                .collect(Collectors.joining(", "));
        int reps = one.count().rate().opportunities();
        String told = known.isEmpty() ? "" : Character.toUpperCase(known.charAt(0)) + known.substring(1) + ". ";
        return told + (reps == 1 ? "1 rep" : reps + " reps") + " on film.";
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
