package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rushlight.evidence.Difference;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;
import rushlight.film.Prospect;
import rushlight.findings.Countable;
import rushlight.index.Count;
import rushlight.index.FoundRep;
import rushlight.situation.Situation;

/** Players side by side, or one player's two kinds of reps. A difference is told with its likely range. */
final class ComparedAnswers {
    private static final Count NONE = new Count(0, 0);

    /** The chance of a gap before it is reckoned. */
    private static final double UNKNOWN = Double.NaN;

    private final Countable countable;
    private final Wording wording;
    private final Counted counted;
    private final FindingAnswers findings;

    ComparedAnswers(Countable countable, Wording wording, Counted counted, FindingAnswers findings) {
        this.countable = countable;
        this.wording = wording;
        this.counted = counted;
        this.findings = findings;
    }

    Answers.Listed of(Scene scene) {
        Optional<SituationPair> pair = scene.asked().situation();
        Optional<Filter.Sides> sides = scene.asked().filter(Filter.Sides.class);
        if (sides.isPresent()) {
            return sides(scene, pair.orElseGet(() -> SituationPair.just(countable.anyRep())), sides.get());
        }
        Optional<Filter.Ways> ways = scene.asked().filter(Filter.Ways.class);
        if (ways.isPresent() && pair.isPresent()) {
            return ways(scene, pair.get(), ways.get().ways());
        }
        return pair.isPresent() ? players(scene, pair.get()) : findings.of(scene);
    }

    /** Each player's two kinds of reps; the one whose first kind lies most surely over the second stands first. */
    private Answers.Listed sides(Scene scene, SituationPair pair, Filter.Sides sides) {
        Situation chance = countable.opportunity(pair.opportunity(), pair.event());
        Situation first = Situation.all(List.of(chance, sides.first()));
        Situation second = Situation.all(List.of(chance, sides.second()));
        Map<String, Count> one = scene.footage().counts(first, pair.event(), scene.slice());
        Map<String, Count> two = scene.footage().counts(second, pair.event(), scene.slice());
        boolean turned = scene.direction() == Filter.Direction.LEAST;
        List<Answer.Compared> all = new ArrayList<>();
        for (Prospect prospect : scene.footage().prospects()) {
            Count a = one.getOrDefault(prospect.id(), NONE);
            Count b = two.getOrDefault(prospect.id(), NONE);
            boolean named = scene.prospects().contains(prospect.id());
            boolean both = a.opportunities() > 0 && b.opportunities() > 0;
            if ((named && a.opportunities() + b.opportunities() > 0)
                    || (both && share(a) != share(b) && share(a) > share(b) != turned)) {
                all.add(sides(prospect, row(sides.firstName(), a), row(sides.secondName(), b), turned));
            }
        }
        return listed(
                scene,
                all,
                Situation.all(List.of(chance, Situation.any(List.of(sides.first(), sides.second())))),
                pair);
    }

    private Answer.Compared sides(
            Prospect prospect, Answer.Compared.Row first, Answer.Compared.Row second, boolean turned) {
        Optional<Answer.Compared.Gap> gap =
                gap(first.count().rate(), second.count().rate());
        String said = Counted.figures(first.count()) + " " + first.name() + ", " + Counted.figures(second.count()) + " "
                + second.name() + "." + gap.map(ComparedAnswers::told).orElse(" Nothing to compare on one side.");
        double score =
                gap.map(g -> turned ? -g.shown().high() : g.shown().low()).orElse(-1.0);
        return new Answer.Compared(prospect, first.count(), score, said, List.of(first, second), gap, List.of());
    }

    /** How often he did one thing, and how often the other, of the same reps; the two shares are no two samples to hold apart. */
    private Answers.Listed ways(Scene scene, SituationPair pair, List<Filter.Ways.Way> ways) {
        Situation chance = countable.opportunity(pair.opportunity(), pair.event());
        List<Answer.Compared> all = new ArrayList<>();
        for (Prospect prospect : scene.wanted()) {
            List<Answer.Compared.Row> rows = ways.stream()
                    .map(way -> row(
                            way.name(),
                            scene.footage()
                                    .counts(chance, way.event(), scene.slice())
                                    .getOrDefault(prospect.id(), NONE)))
                    .toList();
            Answer.Count first = rows.get(0).count();
            if (first.rate().opportunities() > 0) {
                String said = "Of " + first.rate().opportunities() + " reps on which "
                        + wording.phrase(pair.opportunity()) + ": "
                        + rows.stream()
                                .map(row -> row.name() + " on "
                                        + row.count().rate().events() + " (" + Counted.range(row.count()) + ")")
                                .collect(Collectors.joining(", "))
                        + ".";
                all.add(new Answer.Compared(
                        prospect,
                        first,
                        Counted.score(first, scene.direction()),
                        said,
                        rows,
                        Optional.empty(),
                        List.of()));
            }
        }
        return listed(scene, all, chance, pair);
    }

    /** Several players and one count; each is held against the next. */
    private Answers.Listed players(Scene scene, SituationPair pair) {
        Situation chance = countable.opportunity(pair.opportunity(), pair.event());
        Map<String, Count> counts = scene.footage().counts(chance, pair.event(), scene.slice());
        List<Answer.Compared.Row> rows = new ArrayList<>();
        List<Prospect> players = scene.wanted().stream()
                .filter(prospect ->
                        counts.containsKey(prospect.id()) || scene.prospects().contains(prospect.id()))
                .sorted(Comparator.comparing(
                                (Prospect prospect) -> counted.of(counts.getOrDefault(prospect.id(), NONE)),
                                Counted.order(scene.direction()))
                        .thenComparing(Prospect::name))
                .toList();
        players.forEach(prospect -> rows.add(row(prospect.name(), counts.getOrDefault(prospect.id(), NONE))));
        List<Answer.Compared> all = new ArrayList<>();
        for (int i = 0; i < players.size(); i++) {
            int other = i + 1 < players.size() ? i + 1 : Math.max(0, i - 1);
            Optional<Answer.Compared.Gap> gap =
                    gap(rows.get(i).count().rate(), rows.get(other).count().rate());
            String said = wording.happened(scene.asked(), pair, rows.get(i).count())
                    + gap.filter(g -> players.size() > 1)
                            .map(g -> " Against " + rows.get(other).name() + ":" + told(g))
                            .orElse("");
            all.add(new Answer.Compared(
                    players.get(i),
                    rows.get(i).count(),
                    Counted.score(rows.get(i).count(), scene.direction()),
                    said,
                    List.of(rows.get(i), rows.get(other)),
                    gap,
                    List.of()));
        }
        return listed(scene, all, chance, pair);
    }

    private Answers.Listed listed(Scene scene, List<Answer.Compared> all, Situation chance, SituationPair pair) {
        if (all.isEmpty()) {
            return Answers.Listed.nothing("There is nothing to compare " + wording.where(scene) + ": "
                    + wording.phrase(pair.opportunity()) + ".");
        }
        all.sort(Comparator.comparingDouble((Answer.Compared one) -> -one.score())
                .thenComparing(one -> -one.found().rate().events())
                .thenComparing(Answer.Compared::label));
        List<Answer.Compared> top = scene.top(all);
        List<Answer.Compared> shown = scene.window().of(top);
        List<String> ids = new ArrayList<>(
                new TreeSet<>(shown.stream().map(one -> one.prospect().id()).toList()));
        List<FoundRep> reps = ids.isEmpty()
                ? List.of()
                : scene.footage()
                        .found(chance, pair.event(), scene.slice().only(ids))
                        .all();
        return Answers.Listed.of(
                top.size(), shown.stream().map(one -> withReps(one, reps)).toList());
    }

    private static Answer.Compared withReps(Answer.Compared one, List<FoundRep> reps) {
        List<SeenRep> his = reps.stream()
                .filter(rep -> rep.prospect().id().equals(one.prospect().id()))
                .map(SeenRep::of)
                .toList();
        return new Answer.Compared(
                one.prospect(),
                one.found(),
                one.score(),
                one.sentence(),
                one.rows(),
                one.gap().map(gap -> sure(one, gap)),
                his);
    }

    /** The gap with the chance that it is one at all, which takes long to reckon and is wanted of few. */
    private static Answer.Compared.Gap sure(Answer.Compared one, Answer.Compared.Gap gap) {
        Difference difference = new Difference(
                one.rows().get(0).count().rate(), one.rows().get(1).count().rate());
        return new Answer.Compared.Gap(gap.observed(), gap.shown(), difference.probabilityOver(0));
    }

    private Answer.Compared.Row row(String name, Count count) {
        return new Answer.Compared.Row(name, counted.of(count));
    }

    private static double share(Count count) {
        return (double) count.events() / count.opportunities();
    }

    private static Optional<Answer.Compared.Gap> gap(Rate first, Rate second) {
        if (first.opportunities() == 0 || second.opportunities() == 0) {
            return Optional.empty();
        }
        Difference difference = new Difference(first, second);
        return Optional.of(new Answer.Compared.Gap(difference.observed(), difference.newcombe(Rate.SHOWN), UNKNOWN));
    }

    private static String told(Answer.Compared.Gap gap) {
        Interval shown = gap.shown();
        return " " + Math.round(100 * gap.observed()) + " points apart, likely " + Math.round(100 * shown.low())
                + " to " + Math.round(100 * shown.high()) + (shown.contains(0) ? "; it may be nothing." : ".");
    }
}
