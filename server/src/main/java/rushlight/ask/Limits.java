package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rushlight.evidence.Verdict;
import rushlight.findings.Polarity;
import rushlight.findings.Severity;

/** Reads how many, how sure, of whom and from where. */
final class Limits {
    private static final String NONE = "-";

    private final Parts parts;
    private final List<Condition> conditions;

    Limits(Parts parts, List<Condition> conditions) {
        this.parts = parts;
        this.conditions = conditions;
    }

    List<Filter> filters() {
        List<Filter> found = new ArrayList<>();
        ids(Sense.Name.Kind.PROSPECT).map(Filter.Prospects::new).ifPresent(found::add);
        ids(Sense.Name.Kind.GAME).map(Filter.Games::new).ifPresent(found::add);
        ids(Sense.Name.Kind.OPPONENT).map(Filter.Opponents::new).ifPresent(found::add);
        ids(Sense.Name.Kind.TEAM).map(Filter.Teams::new).ifPresent(found::add);
        ids(Sense.Name.Kind.CLASS_YEAR).map(Filter.ClassYears::new).ifPresent(found::add);
        parts.parts().forEach(part -> size(part).ifPresent(found::add));
        ids(Sense.Name.Kind.LEVEL).map(Filter.Levels::new).ifPresent(found::add);
        atLeast().ifPresent(found::add);
        top().map(Filter.Top::new).ifPresent(found::add);
        direction().map(Filter.Order::new).ifPresent(found::add);
        verdicts().map(Filter.Verdicts::new).ifPresent(found::add);
        words(Act.POLARITY)
                .map(w -> new Filter.Polarities(
                        w.stream().map(x -> Polarity.valueOf(upper(x))).collect(Collectors.toSet())))
                .ifPresent(found::add);
        words(Act.SEVERITY)
                .map(w -> new Filter.Severities(
                        w.stream().map(x -> Severity.valueOf(upper(x))).collect(Collectors.toSet())))
                .ifPresent(found::add);
        parts.quoted().map(part -> new Filter.Note(part.text())).ifPresent(found::add);
        return found;
    }

    /** "Over 260 lb", "6-4 or taller"; a size alone says not on which side of it he is to be. */
    Optional<ManSize> size(Part part) {
        int at = parts.parts().indexOf(part);
        return part.size()
                .filter(size -> size.measure().isPresent())
                .flatMap(size -> bound(parts.parts(), at)
                        .map(bound -> new ManSize(size.measure().orElseThrow(), bound, size.value(), part.text())));
    }

    private static Optional<ManSize.Bound> bound(List<Part> all, int at) {
        if (at > 0 && all.get(at - 1).does(Act.AT_LEAST)) {
            boolean itself =
                    all.get(at - 1).value(Act.AT_LEAST).filter("0"::equals).isPresent();
            return Optional.of(itself ? ManSize.Bound.AT_LEAST : ManSize.Bound.OVER);
        }
        if (at > 0 && all.get(at - 1).does(Act.AT_MOST)) {
            boolean itself =
                    all.get(at - 1).value(Act.AT_MOST).filter("0"::equals).isPresent();
            return Optional.of(itself ? ManSize.Bound.AT_MOST : ManSize.Bound.UNDER);
        }
        if (at + 1 < all.size() && all.get(at + 1).does(Act.OR_MORE)) {
            return Optional.of(ManSize.Bound.AT_LEAST);
        }
        return at + 1 < all.size() && all.get(at + 1).does(Act.OR_LESS)
                ? Optional.of(ManSize.Bound.AT_MOST)
                : Optional.empty();
    }

    private Optional<List<String>> ids(Sense.Name.Kind kind) {
        List<String> ids =
                parts.names(kind).stream().map(Sense.Name::id).distinct().toList();
        return ids.isEmpty() ? Optional.empty() : Optional.of(ids);
    }

    /** "At least 10 pulls", "10 or more", "three times", "twice". */
    private Optional<Filter.AtLeast> atLeast() {
        List<Part> all = parts.parts();
        for (int i = 0; i < all.size(); i++) {
            int number = all.get(i).number();
            Optional<String> before = i > 0 ? all.get(i - 1).value(Act.AT_LEAST) : Optional.empty();
            boolean behind = i + 2 < all.size()
                    && all.get(i + 2).does(Act.OR_MORE)
                    && all.get(i + 1).isTerm();
            boolean after = behind || (i + 1 < all.size() && all.get(i + 1).does(Act.OR_MORE));
            if (number >= 0 && (before.isPresent() || after)) {
                int more = before.map(Integer::parseInt).orElse(0);
                return Optional.of(new Filter.AtLeast(counted(all, i + (after && !behind ? 2 : 1)), number + more));
            }
            boolean times = i + 1 < all.size()
                    && all.get(i + 1).value(Act.UNIT).filter("events"::equals).isPresent();
            if (number > 0 && times && !isTop(all, i)) {
                return Optional.of(new Filter.AtLeast(Filter.Counted.EVENTS, number));
            }
        }
        return parts.doing(Act.COUNT).stream()
                .map(part -> Integer.parseInt(part.value(Act.COUNT).orElseThrow()))
                .findFirst()
                .map(number -> new Filter.AtLeast(Filter.Counted.EVENTS, number));
    }

    private Filter.Counted counted(List<Part> all, int at) {
        if (at < all.size()) {
            Optional<String> unit = all.get(at).value(Act.UNIT);
            if (unit.isPresent()) {
                return Filter.Counted.valueOf(upper(unit.get()));
            }
            if (conditions.stream().anyMatch(c -> c.event() && c.part().equals(all.get(at)))) {
                return Filter.Counted.EVENTS;
            }
        }
        return Filter.Counted.OPPORTUNITIES;
    }

    private Optional<Integer> top() {
        List<Part> all = parts.parts();
        for (int i = 0; i < all.size(); i++) {
            if (isTop(all, i)) {
                return Optional.of(all.get(i).number());
            }
        }
        return Optional.empty();
    }

    private static boolean isTop(List<Part> all, int i) {
        boolean before =
                i > 0 && (all.get(i - 1).does(Act.TOP) || all.get(i - 1).does(Act.ORDER));
        boolean minimum = i > 0 && all.get(i - 1).does(Act.AT_LEAST);
        boolean after = i + 1 < all.size() && isListed(all.get(i + 1)) && !minimum;
        return all.get(i).number() > 0 && (before || after);
    }

    /** What a number before it counts: "five rushers", "three drills", "the 4 best". */
    static boolean isListed(Part part) {
        boolean wanted = part.does(Act.FIND) || part.does(Act.WHO) || part.does(Act.KIND);
        return wanted || part.does(Act.ORDER) || part.does(Act.POLARITY);
    }

    /** The words of an order, leaving out "top" in front of a number. */
    private Stream<String> orders() {
        List<Part> all = parts.parts();
        return all.stream()
                .filter(part -> !(part.does(Act.TOP)
                        && all.indexOf(part) + 1 < all.size()
                        && all.get(all.indexOf(part) + 1).number() >= 0))
                .flatMap(part -> part.value(Act.ORDER).stream());
    }

    private Optional<Filter.Direction> direction() {
        return orders().findFirst().map(word -> word.equals("least") ? Filter.Direction.LEAST : Filter.Direction.MOST);
    }

    /** Whether the good ones or the bad ones are asked for: "won" or "lost". */
    Optional<String> quality() {
        Optional<String> word =
                orders().filter(w -> w.equals("best") || w.equals("worst")).findFirst();
        Optional<String> better = parts.doing(Act.BETTER).stream()
                .map(part -> part.value(Act.BETTER).orElseThrow())
                .findFirst();
        Optional<String> top = top().filter(n -> parts.has(Act.TOP)).map(n -> "won");
        return word.map(w -> w.equals("best") ? "won" : "lost").or(() -> better).or(() -> top);
    }

    private Optional<Set<Verdict>> verdicts() {
        Set<Verdict> found = new TreeSet<>();
        List<Part> all = parts.parts();
        for (int i = 0; i < all.size(); i++) {
            Optional<String> words = all.get(i).value(Act.VERDICT);
            if (words.isPresent()) {
                Set<Verdict> these = Stream.of(words.get().split(" ", -1))
                        .map(word -> Verdict.valueOf(upper(word)))
                        .collect(Collectors.toSet());
                boolean denied = i > 0 && all.get(i - 1).does(Act.NOT);
                Stream.of(Verdict.values())
                        .filter(verdict -> these.contains(verdict) != denied)
                        .forEach(found::add);
            }
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    private Optional<Set<String>> words(Act act) {
        Set<String> found = parts.doing(act).stream()
                .map(part -> part.value(act).orElse(NONE))
                .collect(Collectors.toCollection(TreeSet::new));
        return found.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    private static String upper(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}
