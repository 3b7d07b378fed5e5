package rushlight.agreement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import rushlight.agreement.JudgedColumns.Said;
import rushlight.evidence.raters.Distance;
import rushlight.evidence.raters.Ratings;
import rushlight.evidence.raters.SetDistance;
import rushlight.film.Log;
import rushlight.knowledge.Column;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** Holds two evaluators against each other, by the columns the book calls judged. */
public final class Crossing {
    private final JudgedColumns columns;

    private Crossing(JudgedColumns columns) {
        this.columns = columns;
    }

    /** Compares by the columns of this book. */
    public static Crossing of(Ontology ontology, Taxonomy taxonomy) {
        return new Crossing(JudgedColumns.of(ontology, taxonomy));
    }

    /**
     * Compares what two evaluators read.
     *
     * @param first logs of the first evaluator, one for a prospect in a game
     * @param second logs of the second
     * @param accepted readings of different names that are of one rep
     * @return empty where they have no prospect's game in common
     */
    public Optional<CrossCheck> of(List<Log> first, List<Log> second, Set<Accepted> accepted) {
        List<MatchedGame> games = new ArrayList<>();
        List<Both> reps = new ArrayList<>();
        for (Log mine : first) {
            second.stream().filter(log -> sameGame(mine, log)).findFirst().ifPresent(theirs -> {
                MatchedGame game = Matching.of(mine, theirs, in(mine, accepted));
                games.add(game);
                game.pairs()
                        .forEach(pair -> reps.add(
                                new Both(pair, columns.said(mine, pair.first()), columns.said(theirs, pair.second()))));
            });
        }
        if (games.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CrossCheck(
                first.get(0).evaluator(),
                second.get(0).evaluator(),
                games,
                columns.all().stream()
                        .map(column -> facet(column, reps))
                        .filter(facet -> facet.agreed().common() > 0)
                        .toList(),
                reps.stream()
                        .map(this::difference)
                        .filter(difference -> !difference.cells().isEmpty())
                        .toList()));
    }

    /** What the two said of one rep. */
    private record Both(Pair pair, Said first, Said second) {
        /** Two sets, or nothing where one of them did not look. */
        List<Set<String>> in(Column column) {
            Optional<Set<String>> mine = first.in(column, second.seen());
            Optional<Set<String>> theirs = second.in(column, first.seen());
            return mine.isPresent() && theirs.isPresent() ? List.of(mine.get(), theirs.get()) : List.of();
        }
    }

    private static boolean sameGame(Log one, Log other) {
        return one.prospect().id().equals(other.prospect().id())
                && one.game().id().equals(other.game().id());
    }

    private static Set<Accepted> in(Log log, Set<Accepted> accepted) {
        Set<Accepted> here = new HashSet<>(accepted);
        here.removeIf(one -> !one.game().equals(log.game().id())
                || !one.prospect().equals(log.prospect().id()));
        return here;
    }

    private Difference difference(Both rep) {
        List<Difference.Cell> cells = new ArrayList<>();
        for (Column column : columns.all()) {
            List<Set<String>> said = rep.in(column);
            if (said.size() == 2 && !said.get(0).equals(said.get(1))) {
                cells.add(new Difference.Cell(
                        column.name(), rep.first().written(column), rep.second().written(column)));
            }
        }
        return new Difference(rep.pair(), cells);
    }

    private FacetAgreement facet(Column column, List<Both> reps) {
        List<List<Set<String>>> said = reps.stream()
                .map(rep -> rep.in(column))
                .filter(two -> two.size() == 2)
                .toList();
        if (!JudgedColumns.isSet(column)) {
            Ratings<String> ratings = ratings(said, set -> set.iterator().next());
            Agreed agreed = columns.isGraded(column)
                    ? Counted.byGrade(ratings, column.oneOf())
                    : Counted.by(ratings, Distance.nominal(), true);
            return new FacetAgreement(column.name(), agreed, agreed, List.of());
        }
        Ratings<Set<String>> ratings = ratings(said, set -> set);
        return new FacetAgreement(
                column.name(),
                Counted.by(ratings, SetDistance::jaccard, false),
                Counted.plain(ratings, SetDistance::masi),
                tags(column, reps));
    }

    private static <T> Ratings<T> ratings(List<List<Set<String>>> said, Function<Set<String>, T> label) {
        return new Ratings<>(said.stream()
                .map(two -> two.stream().map(label).map(Optional::of).toList())
                .toList());
    }

    /** Each tag that one of them used, tagged or not; a rep on which one could not see it is left out. */
    private static List<TagAgreement> tags(Column column, List<Both> reps) {
        Set<String> used = new TreeSet<>();
        reps.forEach(rep -> rep.in(column).forEach(used::addAll));
        Map<String, List<List<Boolean>>> said = new LinkedHashMap<>();
        for (Both rep : reps) {
            List<Set<String>> two = rep.in(column);
            if (two.size() == 2) {
                used.stream()
                        .filter(tag -> rep.first().looked(tag, rep.first().seen())
                                && rep.first().looked(tag, rep.second().seen()))
                        .forEach(tag -> said.computeIfAbsent(tag, t -> new ArrayList<>())
                                .add(List.of(
                                        two.get(0).contains(tag), two.get(1).contains(tag))));
            }
        }
        return said.entrySet().stream()
                .map(one -> tag(one.getKey(), one.getValue()))
                .sorted(Comparator.comparingInt((TagAgreement tag) -> -tag.firstOnly() - tag.secondOnly())
                        .thenComparing(TagAgreement::tag))
                .toList();
    }

    private static TagAgreement tag(String tag, List<List<Boolean>> said) {
        int both = count(said, true, true);
        return new TagAgreement(
                tag,
                both,
                count(said, true, false),
                count(said, false, true),
                Counted.plain(
                        new Ratings<>(said.stream()
                                .map(two -> two.stream().map(Optional::of).toList())
                                .toList()),
                        Distance.nominal()));
    }

    private static int count(List<List<Boolean>> said, boolean first, boolean second) {
        return (int) said.stream()
                .filter(two -> Objects.equals(two, List.of(first, second)))
                .count();
    }
}
