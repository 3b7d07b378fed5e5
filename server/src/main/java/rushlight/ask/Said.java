package rushlight.ask;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situations;

/** Says a reading in a sentence a coach can check. */
final class Said {
    private static final Map<Find, String> WANTED = Map.of(
            Find.PROSPECTS, "Players",
            Find.REPS, "Reps",
            Find.TECHNIQUES, "Terms of the book",
            Find.COUNTERS, "Counters",
            Find.DRILLS, "Drills",
            Find.FINDINGS, "Findings",
            Find.COMPARE, "Side by side",
            Find.SIMILAR, "Players like another");

    private static final Map<Filter.Relation, String> RELATIONS = Map.ofEntries(
            Map.entry(Filter.Relation.ITSELF, "about "),
            Map.entry(Filter.Relation.MOVE, "off "),
            Map.entry(Filter.Relation.TRIGGER, "against "),
            Map.entry(Filter.Relation.BEATS, "that beat "),
            Map.entry(Filter.Relation.BEATEN_BY, "beaten by "),
            Map.entry(Filter.Relation.NEEDED_FOR, "needed first for "),
            Map.entry(Filter.Relation.REQUIRES, "that need "),
            Map.entry(Filter.Relation.SETS_UP, "that set up "),
            Map.entry(Filter.Relation.SET_UP_BY, "set up by "),
            Map.entry(Filter.Relation.ATTACKS, "that attack "),
            Map.entry(Filter.Relation.KIND_OF, "of the kind "),
            Map.entry(Filter.Relation.FROM, "from "),
            Map.entry(Filter.Relation.FAULT_OF, "that go wrong in "),
            Map.entry(Filter.Relation.RIGHT_FOR, "right for "),
            Map.entry(Filter.Relation.TRAINS, "that train "));

    private final Taxonomy taxonomy;
    private final Situations situations;

    Said(Taxonomy taxonomy, Situations situations) {
        this.taxonomy = taxonomy;
        this.situations = situations;
    }

    String sentence(Find find, Optional<SituationPair> pair, List<Filter> filters, People people) {
        List<String> said = new ArrayList<>();
        boolean counted = filters.stream().anyMatch(Filter.Findings.class::isInstance);
        if (pair.isPresent() && !counted) {
            said.add(reps(pair.get()));
        }
        filters.forEach(filter -> said.add(filter(filter, people)));
        String all = find == Find.TECHNIQUES ? " by your words" : ", everything";
        return WANTED.getOrDefault(find, "") + (said.isEmpty() ? all : ": " + String.join("; ", said)) + ".";
    }

    private String reps(SituationPair pair) {
        String event = situations.phrase(pair.event());
        return pair.event().equals(pair.opportunity())
                ? "reps where " + event
                : event + ", of the reps where " + situations.phrase(pair.opportunity());
    }

    private String filter(Filter filter, People people) {
        if (filter instanceof Filter.Prospects f) {
            return f.ids().stream()
                    .map(id -> people.prospects().getOrDefault(id, id))
                    .collect(Collectors.joining(" and "));
        }
        if (filter instanceof Filter.Games f) {
            return "in "
                    + f.ids().stream()
                            .map(id -> people.games().getOrDefault(id, id))
                            .collect(Collectors.joining(" or "));
        }
        if (filter instanceof Filter.Opponents f) {
            return "against " + String.join(" or ", f.names());
        }
        if (filter instanceof Filter.Teams f) {
            return "from " + String.join(" or ", f.names());
        }
        if (filter instanceof Filter.ClassYears f) {
            return "of the class year " + String.join(" or ", f.names());
        }
        if (filter instanceof ManSize f) {
            return f.measure().slug() + " " + f.bound().slug().replace('-', ' ') + " " + f.words();
        }
        if (filter instanceof Filter.Levels f) {
            return "at the level " + String.join(" or ", f.names());
        }
        if (filter instanceof Filter.AtLeast f) {
            return "at least " + f.number() + (f.counted() == Filter.Counted.EVENTS ? " times" : " chances");
        }
        if (filter instanceof Filter.Top f) {
            return "the first " + f.number();
        }
        if (filter instanceof Filter.Order f) {
            return f.direction() == Filter.Direction.MOST ? "the most first" : "the least first";
        }
        return more(filter);
    }

    private String more(Filter filter) {
        if (filter instanceof Filter.Verdicts f) {
            return "with the verdict "
                    + words(f.verdicts().stream()
                            .sorted()
                            .map(v -> v.slug().replace('-', ' '))
                            .toList());
        }
        if (filter instanceof Filter.Findings f) {
            return "what the book counts as \u201C" + words(labels(f.slugs())) + "\u201D";
        }
        if (filter instanceof Filter.Polarities f) {
            return words(
                    f.polarities().stream().sorted().map(p -> p.slug() + "s").toList());
        }
        if (filter instanceof Filter.Severities f) {
            return "of "
                    + words(f.severities().stream().sorted().map(s -> s.slug()).toList()) + " weight";
        }
        if (filter instanceof Filter.Note f) {
            return "with \u201C" + f.words() + "\u201D in the note";
        }
        if (filter instanceof Filter.About f) {
            return RELATIONS.getOrDefault(f.relation(), "") + words(labels(f.slugs()));
        }
        if (filter instanceof Filter.Kinds f) {
            return "only "
                    + words(f.classes().stream()
                            .sorted()
                            .map(name -> name.replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                                            .toLowerCase(java.util.Locale.ROOT) + "s")
                            .toList());
        }
        if (filter instanceof Filter.Ways f) {
            return "how often each of "
                    + f.ways().stream().map(Filter.Ways.Way::name).collect(Collectors.joining(" and "));
        }
        Filter.Sides sides = (Filter.Sides) filter;
        return sides.firstName() + " against " + sides.secondName();
    }

    private List<String> labels(Collection<String> slugs) {
        return slugs.stream().map(taxonomy::label).toList();
    }

    private static String words(List<String> words) {
        return String.join(" or ", words);
    }
}
