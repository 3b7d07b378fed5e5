package rushlight.ask;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.film.Prospect;
import rushlight.index.Footage;
import rushlight.index.Slice;
import rushlight.situation.Narrowing;

/**
 * A question with the film it is asked of.
 *
 * @param footage the film
 * @param asked how the question was read
 * @param window which answers are listed
 */
record Scene(Footage footage, Asked asked, Answers.Window window) {
    /** The part of the film the question keeps to. */
    Slice slice() {
        return new Slice(
                men().orElseGet(() -> Set.copyOf(prospects())),
                set(asked.filters(Filter.Games.class).stream()
                        .map(Filter.Games::ids)
                        .toList()),
                set(asked.filters(Filter.Opponents.class).stream()
                        .map(Filter.Opponents::names)
                        .toList()),
                set(asked.filters(Filter.Levels.class).stream()
                        .map(Filter.Levels::names)
                        .toList()),
                asked.filter(Filter.Note.class).map(Filter.Note::words));
    }

    /** The part of a tape the question keeps to; several games or opponents narrow it no further than one can say. */
    Narrowing narrowing() {
        Slice part = slice();
        return new Narrowing(only(part.games()), Optional.empty(), only(part.opponents()));
    }

    private static Optional<String> only(Set<String> values) {
        return values.size() == 1 ? values.stream().findFirst() : Optional.empty();
    }

    /** The players who are as the question says a man is, of those who are named; empty where it says nothing of that. */
    Optional<Set<String>> men() {
        List<Filter.OfMan> wanted = asked.filters(Filter.OfMan.class);
        List<String> named = prospects();
        return wanted.isEmpty()
                ? Optional.empty()
                : Optional.of(footage.prospects().stream()
                        .filter(one -> named.isEmpty() || named.contains(one.id()))
                        .filter(one -> wanted.stream().allMatch(man -> man.fits(one)))
                        .map(Prospect::id)
                        .collect(Collectors.toSet()));
    }

    /** The players whom answers may be about, in the order of the film's list. */
    List<Prospect> wanted() {
        Set<String> wanted = slice().prospects();
        return footage.prospects().stream()
                .filter(one -> wanted.isEmpty() || wanted.contains(one.id()))
                .toList();
    }

    /** The players who are named. */
    List<String> prospects() {
        return asked.filter(Filter.Prospects.class).map(Filter.Prospects::ids).orElse(List.of());
    }

    Filter.Direction direction() {
        return asked.filter(Filter.Order.class).map(Filter.Order::direction).orElse(Filter.Direction.MOST);
    }

    /** Those of a ranked list that the question wants to see at all. */
    <T> List<T> top(List<T> ranked) {
        Optional<Integer> top = asked.filter(Filter.Top.class).map(Filter.Top::number);
        return ranked.subList(0, Math.min(ranked.size(), top.orElse(ranked.size())));
    }

    /** Whether a count has as many as the question wants. */
    boolean enough(Answer.Count count) {
        return asked.filters(Filter.AtLeast.class).stream()
                .allMatch(least -> least.number()
                        <= (least.counted() == Filter.Counted.EVENTS
                                ? count.rate().events()
                                : count.rate().opportunities()));
    }

    private static Set<String> set(List<List<String>> lists) {
        Set<String> all = new HashSet<>();
        lists.forEach(all::addAll);
        return all;
    }
}
