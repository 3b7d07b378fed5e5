package rushlight.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.jena.graph.Node;
import org.apache.jena.reasoner.TriplePattern;
import org.apache.jena.reasoner.rulesys.ClauseEntry;
import org.apache.jena.reasoner.rulesys.Functor;
import org.apache.jena.reasoner.rulesys.Rule;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;

@DisplayNameGeneration(ReplaceUnderscores.class)
class RuleBookTest {
    private static final RuleBook BOOK = RuleBook.packaged();
    private static final String PREFIX = "@prefix rl: <https://rushlight.example/def#> .\n";
    private static final String RULE = "[a: (?r rl:phase 'run') -> (?r rl:moved 'yes')]\n";

    @Test
    void the_rules_are_all_there() {
        assertThat(BOOK.tags()).hasSize(131);
        assertThat(BOOK.absence()).hasSize(63);
    }

    @Test
    void every_rule_says_a_sentence_to_a_person() {
        assertThat(Stream.concat(BOOK.tags().stream(), BOOK.absence().stream()))
                .allSatisfy(rule -> assertThat(BOOK.sentence(rule.getName()))
                        .matches("[A-Z].*[.]")
                        .doesNotContain("kb:", "rl:", "?"));
    }

    @Test
    void only_the_second_stratum_says_and_not() {
        assertThat(BOOK.tags()).noneMatch(RuleBookTest::hasNegation);
        assertThat(BOOK.absence()).anyMatch(RuleBookTest::hasNegation);
    }

    @Test
    void no_rule_says_and_not_of_what_its_own_stratum_concludes() {
        Set<List<Node>> concluded = new HashSet<>();
        BOOK.absence().forEach(rule -> {
            for (ClauseEntry head : rule.getHead()) {
                TriplePattern pattern = (TriplePattern) head;
                concluded.add(List.of(pattern.getPredicate(), pattern.getObject()));
            }
        });
        assertThat(BOOK.absence()).allSatisfy(rule -> {
            for (ClauseEntry clause : rule.getBody()) {
                if (clause instanceof Functor functor && functor.getName().equals("noValue")) {
                    Node[] args = functor.getArgs();
                    assertThat(concluded)
                            .as(rule.getName())
                            .noneMatch(head -> head.get(0).equals(args[1])
                                    && (args.length < 3 || head.get(1).equals(args[2])));
                }
            }
        });
    }

    @Test
    void every_condition_of_a_fit_rule_is_known_to_the_rules_or_known_to_be_beyond_a_log() {
        Set<String> beyond = Set.of(
                "the lead back's path is outside",
                "the lead back's path is inside",
                "the wham is on him",
                "the puller left from his side",
                "there is no replace call",
                "the corner replaces",
                "one man plays both");
        String rules = Ontology.text("rules/rep-1-tags.rules");
        Facts facts = new Facts(Reps.BOOK.graph());
        assertThat(Reps.TAXONOMY.fitRules())
                .flatExtracting(rule -> facts.texts(Rl.concept(rule.id()), Rl.term("onlyIf")))
                .hasSizeGreaterThan(50)
                .allSatisfy(words -> assertThat(beyond.contains(words) || rules.contains("'" + words + "'"))
                        .as(words)
                        .isTrue());
        assertThat(Reps.TAXONOMY.fitRules()).extracting(FitRule::id).doesNotHaveDuplicates();
    }

    @Test
    void a_rule_without_a_sentence_is_refused() {
        assertThatThrownBy(() -> RuleBook.of(PREFIX + RULE, ""))
                .isInstanceOf(BrokenBookException.class)
                .hasMessageContaining("rep-1-tags.rules")
                .hasMessageContaining("rule a lacks the sentence");
    }

    @Test
    void two_rules_of_one_name_are_refused() {
        String said = "# \"He was moved.\"\n" + RULE;
        assertThatThrownBy(() -> RuleBook.of(PREFIX + said, PREFIX + said))
                .isInstanceOf(BrokenBookException.class)
                .hasMessageContaining("two rules are called a");
    }

    @Test
    void a_rule_the_parser_loses_in_silence_is_noticed() {
        String lost = "# \"He was moved.\"\n" + PREFIX.strip() + " " + RULE;
        assertThatThrownBy(() -> RuleBook.of(lost, ""))
                .isInstanceOf(BrokenBookException.class)
                .hasMessageContaining("has 1 rules, but 0 could be read")
                .hasMessageContaining("@prefix must stand alone");
    }

    private static boolean hasNegation(Rule rule) {
        for (ClauseEntry clause : rule.getBody()) {
            if (clause instanceof Functor functor && functor.getName().equals("noValue")) {
                return true;
            }
        }
        return false;
    }
}
