package rushlight.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rushlight.evidence.Remembered;
import rushlight.evidence.Verdict;
import rushlight.film.Prospect;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situations;
import rushlight.situation.Tape;

/**
 * Holds every finding of the book against a prospect's tape. Safe for many threads: an assessment depends on the tape and the
 * book alone.
 */
public final class Assessor {
    private static final String RULES = "rules/prospect.rules";

    private final FindingBook book;
    private final Taxonomy taxonomy;
    private final ProspectRules rules;
    private final Remembered remembered = new Remembered();
    private final Measuring measuring = new Measuring(remembered);
    private final Comparing comparing = new Comparing();
    private final Concluding concluding;
    private final RoleFits roles;

    private Assessor(FindingBook book, Taxonomy taxonomy, ProspectRules rules) {
        this.book = book;
        this.taxonomy = taxonomy;
        this.rules = rules;
        this.concluding = new Concluding(book);
        this.roles = new RoleFits(book);
    }

    /** By this book, overlay included. */
    public static Assessor of(Ontology ontology, Taxonomy taxonomy, Situations situations) {
        return of(FindingBook.of(ontology, taxonomy, situations), taxonomy, Ontology.text(RULES));
    }

    static Assessor of(FindingBook book, Taxonomy taxonomy, String rules) {
        return new Assessor(book, taxonomy, new ProspectRules(rules));
    }

    /** The findings it looks for. */
    public FindingBook book() {
        return book;
    }

    /** What the film says about one prospect. */
    public Assessment assess(Tape tape) {
        Counts counts = new Counts(tape, book.conventions());
        Map<String, Judged> judged = new TreeMap<>();
        for (Finding finding : book.all()) {
            finding.counting().scope().ifPresent(scope -> judged.put(finding.slug(), judge(finding, counts, scope)));
        }
        for (Finding finding : book.all()) {
            if (!finding.counting().parents().isEmpty()) {
                judged.put(finding.slug(), judge(finding, counts, parents(finding, judged)));
            }
        }
        ProspectRules.Concluded concluded = rules.conclude(ProspectRules.facts(facts(counts, judged)));
        concluding.concluded(concluded, judged, counts);
        List<Judged> findings = judged.values().stream()
                .map(one -> Concluding.linked(one, concluded))
                .toList();
        Prospect prospect = tape.prospect();
        return new Assessment(
                prospect,
                tape.size(),
                counts.games().size(),
                counts.leftOut(),
                counts.primary().primary(),
                counts.primary().twoMoves(),
                findings,
                concluded.is(),
                concluded.likelyDuties(),
                roles.of(findings, finding -> asked(finding, counts)));
    }

    /**
     * Some findings held against a tape, without all the others: the same as {@link #assess} says of them, but for what they
     * have to do with each other.
     */
    public List<Judged> judge(Tape tape, Set<String> slugs) {
        List<Finding> wanted = slugs.stream()
                .sorted()
                .flatMap(slug -> book.finding(slug).stream())
                .toList();
        if (!wanted.stream().allMatch(finding -> finding.counting().scope().isPresent())) {
            return assess(tape).findings().stream()
                    .filter(one -> slugs.contains(one.finding().slug()))
                    .toList();
        }
        Counts counts = new Counts(tape, book.conventions());
        return wanted.stream()
                .map(finding ->
                        judge(finding, counts, finding.counting().scope().orElseThrow()))
                .toList();
    }

    private Judged judge(Finding finding, Counts counts, Counting.Scope scope) {
        Sample certain = counts.certain(scope);
        Measuring.Measured measured = measure(finding, counts, certain);
        Sample unknown = counts.unknown(scope);
        if (unknown.opportunities().isEmpty()) {
            return counts.held(scope, judged(finding, counts, measured, List.of(), List.of()));
        }
        Outcome all = measure(finding, counts, certain.or(unknown)).outcome();
        Outcome none = measured.outcome();
        List<Judged.Bound> bounds = List.of(
                new Judged.Bound("none", none.rate(), none.verdict()),
                new Judged.Bound("all", all.rate(), all.verdict()));
        List<Judged.Conditional> conditional = new ArrayList<>();
        new TreeSet<>(scope.duties())
                .forEach(duty -> conditional.add(new Judged.Conditional(duty, all.rate(), all.verdict())));
        if (!conditional.isEmpty()) {
            conditional.add(new Judged.Conditional("another", none.rate(), none.verdict()));
        }
        return counts.held(scope, judged(finding, counts, measured, bounds, conditional));
    }

    private Judged judge(Finding finding, Counts counts, Map<String, Sample> parents) {
        return judged(finding, counts, comparing.compare(finding, counts, parents), List.of(), List.of());
    }

    private Measuring.Measured measure(Finding finding, Counts counts, Sample sample) {
        return finding.measure() == Measure.DIFFERENCE
                ? comparing.compare(finding, counts, Map.of("", sample))
                : measuring.measure(finding, counts, sample);
    }

    private static Judged judged(
            Finding finding,
            Counts counts,
            Measuring.Measured measured,
            List<Judged.Bound> bounds,
            List<Judged.Conditional> conditional) {
        Sample sample = measured.sample();
        Optional<String> heavy = counts.heavyOpponent(sample.opportunities());
        return new Judged(
                finding,
                measured.outcome(),
                sample.games(counts.games()),
                heavy,
                bounds,
                conditional,
                List.of(),
                List.of(),
                new Evidence(counts.tape(), sample),
                Sentences.say(finding, measured.outcome(), heavy, bounds));
    }

    /** The reps of the parents that stand at watch or worse. */
    private static Map<String, Sample> parents(Finding finding, Map<String, Judged> judged) {
        Map<String, Sample> samples = new LinkedHashMap<>();
        for (String slug : finding.counting().parents()) {
            Judged parent = judged.get(slug);
            if (parent != null
                    && (parent.verdict() == Verdict.WATCH || parent.verdict().stands())) {
                samples.put(slug, parent.evidence().sample());
            }
        }
        return samples;
    }

    /** What a role asks for, where it was not judged among the findings; his drops count with the rest. */
    private Judged asked(Finding finding, Counts counts) {
        return finding.counting()
                .scope()
                .map(scope -> judge(finding, counts.withDrops(), scope))
                .orElseGet(() -> Concluding.unsaid(finding, counts));
    }

    private ProspectFacts facts(Counts counts, Map<String, Judged> judged) {
        Optional<String> primary = counts.primary().primary().map(Primary::move);
        return new ProspectFacts(
                judged.values(),
                primary,
                primary.map(taxonomy::closure).orElse(Set.of()),
                book.all().stream()
                        .filter(finding -> !finding.links().combines().isEmpty())
                        .toList());
    }
}
