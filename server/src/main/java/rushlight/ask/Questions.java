package rushlight.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.findings.FindingBook;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situation;
import rushlight.situation.Situations;

/** Reads questions, by the labels of one book and its word lists. Safe for many threads; one question always has one reading. */
public final class Questions {
    /** So much of a question is read; what stands behind it is unread as a whole. */
    static final int LONGEST = 4_000;

    private static final Set<Find> OF_REPS = Set.of(Find.PROSPECTS, Find.REPS, Find.COMPARE);

    private final Taxonomy taxonomy;
    private final QuestionWords words;
    private final Places places;
    private final Conditions conditions;
    private final Claims claims;
    private final Pairs pairs;
    private final Topics topics;
    private final Traits traits;
    private final Chips chips;
    private final Said said;

    private Questions(Ontology ontology, Taxonomy taxonomy, Situations situations, FindingBook findings) {
        this.taxonomy = taxonomy;
        this.places = new Places(taxonomy, situations.facets());
        this.words = new QuestionWords(
                taxonomy,
                slug -> places.of(slug)
                        .filter(place -> place.role() == Chip.Role.BLOCKER)
                        .isPresent());
        this.conditions = new Conditions(taxonomy, places);
        this.claims = Claims.of(ontology, taxonomy, findings, situations.facets());
        this.pairs = new Pairs(places, conditions, claims);
        this.topics = new Topics(taxonomy, places);
        this.traits = new Traits(claims, topics);
        this.chips = new Chips(taxonomy, words, topics);
        this.said = new Said(taxonomy, situations);
    }

    /** By the labels, situations and findings of a book. */
    public static Questions of(Ontology ontology, Taxonomy taxonomy, FindingBook findings) {
        return new Questions(ontology, taxonomy, Situations.of(ontology, taxonomy), findings);
    }

    /** How a question is read; whatever the text, there is a reading. */
    public Asked read(String question, People people) {
        String readable = question.length() > LONGEST ? question.substring(0, LONGEST) : question;
        Parts parts = words.cut(readable, people);
        List<Condition> found = conditions.of(parts.parts());
        Intent.Decided decided = new Intent(parts, found).decided();
        Limits limits = new Limits(parts, found);
        List<Filter> filters = new ArrayList<>(limits.filters());
        Set<Part> used = new HashSet<>();
        Optional<SituationPair> pair = Optional.empty();
        if (OF_REPS.contains(decided.find())) {
            pair = reps(decided.find(), parts, found, limits, filters, used);
        } else {
            if (decided.find() != Find.FINDINGS) {
                filters.removeIf(Filter.Order.class::isInstance);
            }
            filters.addAll(topics.of(decided.find(), parts));
            parts.parts().stream().filter(p -> isTold(decided.find(), p)).forEach(used::add);
        }
        List<Asked.Unread> unread = unread(question, parts, used, limits);
        return new Asked(
                question,
                decided.find(),
                said.sentence(decided.find(), pair, filters, people),
                pair,
                filters,
                unread,
                chips.of(parts, found, decided, used));
    }

    private Optional<SituationPair> reps(
            Find find, Parts parts, List<Condition> found, Limits limits, List<Filter> filters, Set<Part> used) {
        Optional<Part> finding = findingPart(parts, found).filter(part -> find != Find.REPS || isFindingOnly(part));
        List<Condition> kept = new ArrayList<>(found);
        finding.ifPresent(part -> kept.removeIf(c -> c.part().equals(part)));
        if (kept.stream().anyMatch(c -> c.role() == Chip.Role.PLAY)) {
            kept.removeIf(Pairs::isPhase);
        }
        sides(find, parts, kept).ifPresent(sides -> {
            filters.add(sides);
            kept.removeIf(c -> c.said().equals(sides.first()) || c.said().equals(sides.second()));
        });
        found.forEach(c -> used.add(c.part()));
        finding.ifPresent(used::add);
        boolean sure = parts.has(Act.VERDICT);
        Optional<Claims.Claimed> claim = finding.map(part -> new Claims.Claimed(findingOf(part), conditions.met(kept)))
                .or(() -> find == Find.PROSPECTS && (sure || kept.stream().anyMatch(Condition::denied))
                        ? claims.of(conditions.afterOpening(kept))
                        : Optional.empty());
        if (claim.isPresent()) {
            if (find != Find.REPS) {
                filters.add(new Filter.Findings(List.of(claim.get().finding())));
            }
            return claims.pair(claim.get().finding())
                    .map(pair -> narrowed(pair, claim.get().rest()));
        }
        Optional<String> judged = limits.quality().filter(q -> find == Find.PROSPECTS && kept.isEmpty());
        if (judged.isPresent() && traits.isOfOne(parts, used)) {
            return traits.shown(parts, judged.get().equals("won"), filters, used);
        }
        if (find == Find.COMPARE && parts.has(Act.PERHAPS) && Conditions.isEither(kept)) {
            filters.add(new Filter.Ways(kept.stream()
                    .filter(Condition::event)
                    .map(c -> new Filter.Ways.Way(c.said(), name(c)))
                    .toList()));
        }
        Optional<Situation> subject = parts.doing(Act.WHO).stream()
                .flatMap(part -> part.value(Act.WHO).stream())
                .filter(value -> value.contains("="))
                .map(places::condition)
                .findFirst();
        boolean outcome = kept.stream().anyMatch(Condition::event);
        if (outcome && limits.quality().filter("lost"::equals).isPresent() && find != Find.COMPARE) {
            filters.replaceAll(
                    filter -> filter instanceof Filter.Order ? new Filter.Order(Filter.Direction.LEAST) : filter);
        }
        boolean contrasted = filters.stream().anyMatch(Filter.Sides.class::isInstance);
        Optional<String> quality = limits.quality().or(() -> contrasted ? Optional.of("won") : Optional.empty());
        return pairs.of(find, kept, quality, subject);
    }

    private static SituationPair narrowed(SituationPair pair, List<Condition> rest) {
        List<Situation> all = new ArrayList<>(List.of(pair.opportunity()));
        rest.forEach(condition -> all.add(condition.said()));
        return new SituationPair(Situation.all(all), pair.event());
    }

    /** Words that name a finding, where no other act is asked for. */
    private Optional<Part> findingPart(Parts parts, List<Condition> found) {
        return parts.parts().stream()
                .filter(part -> !findingOf(part).isEmpty())
                .filter(part -> found.stream().allMatch(c -> c.part().equals(part))
                        || found.stream().noneMatch(c -> c.part().equals(part) || (c.event() && !c.opening())))
                .findFirst();
    }

    private boolean isFindingOnly(Part part) {
        return part.terms().stream()
                .allMatch(label -> claims.finding(label.slug()).isPresent());
    }

    private String findingOf(Part part) {
        return part.terms().stream()
                .map(label -> label.slug())
                .filter(slug -> claims.finding(slug).isPresent())
                .findFirst()
                .orElse("");
    }

    /** "Better against these than against those". */
    private Optional<Filter.Sides> sides(Find find, Parts parts, List<Condition> found) {
        Optional<Part> than = parts.doing(Act.THAN).stream()
                .findFirst()
                .or(() -> parts.doing(Act.OR).stream().findFirst());
        if (than.isEmpty() || !parts.has(Act.BETTER)) {
            return find == Find.COMPARE
                    ? Contrast.of(parts, found).map(contrast -> sides(contrast.first(), contrast.second()))
                    : Optional.empty();
        }
        Optional<Condition> first =
                found.stream().filter(c -> c.part().from() < than.get().from()).reduce((a, b) -> b);
        Optional<Condition> second =
                found.stream().filter(c -> c.part().from() > than.get().from()).findFirst();
        return first.isEmpty() || second.isEmpty() ? Optional.empty() : Optional.of(sides(first.get(), second.get()));
    }

    private Filter.Sides sides(Condition first, Condition second) {
        return new Filter.Sides(first.said(), name(first), second.said(), name(second));
    }

    private String name(Condition condition) {
        return condition.slug().map(taxonomy::label).orElse(condition.part().text());
    }

    /** Whether a topic question makes something of these words. */
    private boolean isTold(Find find, Part part) {
        boolean term = part.isTerm() && find != Find.SIMILAR;
        boolean stopped = find == Find.COUNTERS
                && part.value(Act.IS).filter(v -> v.contains("first-move")).isPresent();
        return term || stopped;
    }

    private List<Asked.Unread> unread(String question, Parts parts, Set<Part> used, Limits limits) {
        List<Asked.Unread> all = new ArrayList<>(parts.unread());
        List<Part> list = parts.parts();
        for (int i = 0; i < list.size(); i++) {
            Part part = list.get(i);
            boolean sized = part.size().isPresent() && limits.size(part).isEmpty();
            boolean silent = part.number() < 0
                    && !sized
                    && !part.isTerm()
                    && !(part.does(Act.IS) && part.senses().size() == 1);
            if (!silent && !used.contains(part) && !(part.number() >= 0 && isCounted(list, i))) {
                all.add(new Asked.Unread(part.text(), part.from(), part.to()));
            }
        }
        if (question.length() > LONGEST) {
            all.add(new Asked.Unread(question.substring(LONGEST), LONGEST, question.length()));
        }
        all.sort((a, b) -> Integer.compare(a.from(), b.from()));
        return all;
    }

    private static boolean isCounted(List<Part> list, int i) {
        boolean before = i > 0
                && (list.get(i - 1).does(Act.AT_LEAST)
                        || list.get(i - 1).does(Act.TOP)
                        || list.get(i - 1).does(Act.ORDER));
        boolean behind = i + 2 < list.size() && list.get(i + 2).does(Act.OR_MORE);
        boolean after = i + 1 < list.size()
                && (list.get(i + 1).does(Act.OR_MORE)
                        || list.get(i + 1)
                                .value(Act.UNIT)
                                .filter("events"::equals)
                                .isPresent()
                        || Limits.isListed(list.get(i + 1)));
        return before || after || behind;
    }
}
