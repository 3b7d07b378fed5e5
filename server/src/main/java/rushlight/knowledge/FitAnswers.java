package rushlight.knowledge;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;

/** What the book says is right and wrong against a block, duty by duty. */
public final class FitAnswers {
    private static final int FAR = 1_000;

    /**
     * One rule that speaks to the block.
     *
     * @param rule slug of the rule
     * @param block the block it is about
     * @param wider whether that is a wider block than the one asked about, whose rules hold too
     * @param assignment the duty it is about
     * @param right what answers the block: what hangs on nothing first, then what the rules name most often
     * @param wrong what does not, in the same order
     * @param onlyIf conditions under which alone it speaks, each by itself
     * @param dependsOn what could turn the whole rule around
     * @param caveats what could turn single answers around
     * @param support {@code strong}, {@code fair} or {@code common-practice}
     * @param sources where it comes from
     * @param local whether the user's own file says it
     */
    public record Answer(
            String rule,
            String block,
            boolean wider,
            String assignment,
            List<String> right,
            List<String> wrong,
            List<String> onlyIf,
            List<String> dependsOn,
            List<FitRule.Caveat> caveats,
            String support,
            List<Source> sources,
            boolean local) {}

    private final Taxonomy taxonomy;
    private final Facts facts;
    private final Relations relations;

    /** Answers from the fit rules of a book. */
    public FitAnswers(Ontology ontology, Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
        this.facts = new Facts(ontology.graph());
        this.relations = new Relations(ontology);
    }

    /**
     * The rules for a block, its own before those of wider blocks, then by duty.
     *
     * @param assignment his duty; rules for it, for a wider and for a narrower duty are given. Empty means every duty.
     */
    public List<Answer> to(String block, Optional<String> assignment) {
        return taxonomy.fitRules().stream()
                .filter(rule -> taxonomy.isA(block, rule.block()))
                .filter(rule -> assignment.isEmpty() || distance(assignment.get(), rule.assignment()) < FAR)
                .sorted(Comparator.<FitRule>comparingInt(rule -> block.equals(rule.block()) ? 0 : 1)
                        .thenComparing(rule -> taxonomy.label(rule.block()))
                        .thenComparing(rule -> assignment.isEmpty() ? 0 : distance(assignment.get(), rule.assignment()))
                        .thenComparing(rule -> taxonomy.label(rule.assignment()))
                        .thenComparing(FitRule::id))
                .map(rule -> answer(rule, block))
                .toList();
    }

    /** The rules for a duty, block by block. */
    public List<Answer> under(String assignment) {
        return taxonomy.fitRules().stream()
                .filter(rule -> rule.assignment().equals(assignment))
                .sorted(Comparator.<FitRule, String>comparing(rule -> taxonomy.label(rule.block()))
                        .thenComparing(FitRule::id))
                .map(rule -> answer(rule, rule.block()))
                .toList();
    }

    /** 0 for the very duty, 1 for a wider and 2 for a narrower one. */
    private int distance(String asked, String ruled) {
        if (asked.equals(ruled)) {
            return 0;
        }
        if (taxonomy.isA(asked, ruled)) {
            return 1;
        }
        return taxonomy.isA(ruled, asked) ? 2 : FAR;
    }

    private Answer answer(FitRule rule, String block) {
        Node node = Rl.concept(rule.id());
        return new Answer(
                rule.id(),
                rule.block(),
                !rule.block().equals(block),
                rule.assignment(),
                inOrder(rule.right(), rule, FitRule::right),
                inOrder(rule.wrong(), rule, FitRule::wrong),
                facts.texts(node, Rl.term("onlyIf")),
                rule.dependsOn(),
                rule.caveats().stream()
                        .sorted(Comparator.comparing(FitRule.Caveat::dependsOn))
                        .toList(),
                relations.support(rule.id()),
                relations.sources(rule.id()),
                rule.local());
    }

    /**
     * What hangs on nothing stands first, then what the rules call so most often (a rule that names a wider fit calls
     * the narrower one so too), then the narrower before the wider.
     */
    private List<String> inOrder(Set<String> slugs, FitRule rule, Function<FitRule, Set<String>> side) {
        Set<String> hanging =
                rule.caveats().stream().flatMap(c -> c.flips().stream()).collect(Collectors.toSet());
        return slugs.stream()
                .sorted(Comparator.<String, Boolean>comparing(hanging::contains)
                        .thenComparing(slug -> -rules(side, named -> taxonomy.isA(slug, named)))
                        .thenComparing(slug -> slugs.stream()
                                .filter(other -> taxonomy.isA(other, slug))
                                .count())
                        .thenComparing(slug -> -rules(side, slug::equals))
                        .thenComparing(taxonomy::label))
                .toList();
    }

    private long rules(Function<FitRule, Set<String>> side, Predicate<String> named) {
        return taxonomy.fitRules().stream()
                .filter(rule -> side.apply(rule).stream().anyMatch(named))
                .count();
    }
}
