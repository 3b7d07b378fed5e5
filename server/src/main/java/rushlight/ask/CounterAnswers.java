package rushlight.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.knowledge.Counters;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Taxonomy;

/** What the book teaches off a move and against an answer: every timing is listed, what works within the rep first. */
final class CounterAnswers {
    private final Taxonomy taxonomy;
    private final Counters counters;
    private final CounterFilm film;
    private final Counted counted;

    CounterAnswers(Taxonomy taxonomy, CounterFilm film, Counted counted) {
        this.taxonomy = taxonomy;
        this.counters = new Counters(taxonomy);
        this.film = film;
        this.counted = counted;
    }

    Answers.Listed of(Scene scene) {
        List<Optional<String>> moves = open(scene.asked().about(Filter.Relation.MOVE));
        List<Optional<String>> triggers = open(scene.asked().about(Filter.Relation.TRIGGER));
        Map<String, Taught> all = new LinkedHashMap<>();
        for (Optional<String> move : moves) {
            for (Optional<String> trigger : triggers) {
                for (Pairing pairing : taught(move, trigger)) {
                    String once = pairing.counter() + " " + pairing.trigger().orElse("");
                    all.putIfAbsent(once, new Taught(pairing, move, trigger, all.size()));
                }
            }
        }
        if (all.isEmpty()) {
            return Answers.Listed.nothing("The book has no counter" + said(" off the ", moves)
                    + said(" when the blocker shows ", triggers) + ".");
        }
        List<Taught> top = scene.top(new ArrayList<>(all.values()));
        return Answers.Listed.of(
                top.size(),
                scene.window().of(top).stream().map(one -> answer(scene, one)).toList());
    }

    /** A pairing with what was asked, and how many stand before it. */
    private record Taught(Pairing pairing, Optional<String> move, Optional<String> trigger, int before) {}

    private List<Pairing> taught(Optional<String> move, Optional<String> trigger) {
        return move.isEmpty() && trigger.isEmpty() ? List.of() : counters.of(move, trigger);
    }

    private static List<Optional<String>> open(List<String> slugs) {
        return slugs.isEmpty()
                ? List.of(Optional.empty())
                : slugs.stream().map(Optional::of).toList();
    }

    private String said(String before, List<Optional<String>> terms) {
        String labels =
                terms.stream().flatMap(Optional::stream).map(taxonomy::label).collect(Collectors.joining(" or "));
        return labels.isEmpty() ? "" : before + labels;
    }

    private Answer.Counter answer(Scene scene, Taught taught) {
        Pairing pairing = taught.pairing();
        Optional<String> shown = pairing.trigger().or(taught::trigger);
        Answer.Count seen =
                counted.of(film.seen(scene.footage(), scene.slice(), taught.move(), shown, pairing.counter()));
        return new Answer.Counter(
                pairing.id(),
                taxonomy.label(pairing.counter()),
                1.0 / (1 + taught.before()),
                pairing.because(),
                pairing,
                pairing.trigger().map(taxonomy::label).orElse(""),
                taxonomy.requires(pairing.counter()),
                seen.rate().opportunities() == 0 ? Optional.empty() : Optional.of(seen));
    }
}
