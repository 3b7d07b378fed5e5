package rushlight.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.jena.graph.Triple;
import org.apache.jena.reasoner.InfGraph;
import org.apache.jena.reasoner.rulesys.Rule;
import org.apache.jena.reasoner.rulesys.RuleDerivation;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rushlight.film.FactMaker;
import rushlight.film.Reading;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(ReplaceUnderscores.class)
class RuleFiringTest {
    private static final Path CASES = Path.of("src", "test", "resources", "rule-firings.txt");
    private static final RuleBook BOOK = RuleBook.packaged();
    private static final FactMaker MAKER = new FactMaker(Reps.BOOK, Reps.TAXONOMY);

    record Case(String rule, String fires, String misses) {
        @Override
        public String toString() {
            return rule;
        }
    }

    static List<Case> cases() {
        try (Stream<String> lines = Files.lines(CASES)) {
            return lines.filter(line -> !line.startsWith("#"))
                    .map(line -> line.split("\\|", -1))
                    .map(cell -> new Case(cell[0].trim(), cell[1].trim(), cell[2].trim()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void every_rule_has_a_case() {
        Set<String> rules = Stream.concat(BOOK.tags().stream(), BOOK.absence().stream())
                .map(Rule::getName)
                .collect(Collectors.toCollection(HashSet::new));
        assertThat(rules.remove("speaks-if-both")).isTrue();
        assertThat(cases()).extracting(Case::rule).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(rules);
    }

    @Test
    void a_rule_of_two_conditions_speaks_where_both_hold(@TempDir Path folder) throws IOException {
        Path overlay = folder.resolve("overlay.ttl");
        Files.writeString(overlay, """
                @prefix kb: <https://rushlight.example/id/> .
                @prefix rl: <https://rushlight.example/def#> .
                kb:pin-block--two-gap-assignment--ours a rl:FitRule ;
                  rl:block kb:pin-block ; rl:assignment kb:two-gap-assignment ;
                  rl:right kb:squeeze-down ;
                  rl:onlyIf "the run starts away from him"@en , "the inside gap is his"@en .
                """);
        Ontology ours = Ontology.withOverlay(overlay);
        RepRules rules = RepRules.of(ours, Taxonomy.of(ours));
        String both =
                "[pin-block] > squeeze-down / phase=run assignment=two-gap-assignment gap=inside direction=run-away";

        assertThat(fired(rules, both)).contains("speaks-if-both", "fit-right");
        assertThat(fired(rules, both.replace("run-away", "run-at-him"))).doesNotContain("speaks-if-both");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void a_rule_fires_on_its_rep_and_not_on_a_near_miss(Case one) {
        assertThat(fired(one.fires())).as("fires on %s", one.fires()).contains(one.rule());
        assertThat(fired(one.misses())).as("not on %s", one.misses()).doesNotContain(one.rule());
    }

    private static Set<String> fired(String words) {
        return fired(Reps.RULES, words);
    }

    private static Set<String> fired(RepRules rules, String words) {
        String[] parts = words.split(" / ", -1);
        Reading reading = Reps.rep(parts[0], parts[1].split(" ", -1));
        RepRules.Pass pass = rules.trace(reading, MAKER.facts(reading, Reps.CHARTED));
        Set<String> names = new HashSet<>();
        for (InfGraph stratum : List.of(pass.tags(), pass.absence())) {
            for (Triple concluded : stratum.getDeductionsGraph().find().toList()) {
                stratum.getDerivation(concluded)
                        .forEachRemaining(
                                d -> names.add(((RuleDerivation) d).getRule().getName()));
            }
        }
        return names;
    }
}
