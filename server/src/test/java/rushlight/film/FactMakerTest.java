package rushlight.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FactMakerTest {
    private static final Ontology BOOK = Ontology.packaged();
    private static final FactMaker MAKER = new FactMaker(BOOK, Taxonomy.of(BOOK));

    @Test
    void a_concept_stands_for_itself_and_everything_wider() {
        RepFacts facts = facts("bull-rush > [anchor-hop] > inside-arm-over", Map.of("blocker", "left-tackle"));

        assertThat(facts.tagged("blocker")).containsExactly("left-tackle");
        assertThat(facts.closed().get("blocker")).containsExactlyInAnyOrder("left-tackle", "tackle", "lineman");
        assertThat(facts.tagged("move")).containsExactlyInAnyOrder("bull-rush", "inside-arm-over");
        assertThat(facts.has("move", "inside-move")).isTrue();
        assertThat(facts.has("behavior", "blocker-anchor")).isTrue();
        assertThat(facts.has("move", "anchor-hop")).isFalse();
    }

    @Test
    void a_step_of_two_classes_stands_in_both_facets() {
        RepFacts facts = facts("[double-team] > split-the-double-team", Map.of());

        assertThat(facts.tagged("block")).containsExactly("double-team");
        assertThat(facts.tagged("behavior")).containsExactly("double-team");
        assertThat(facts.tagged("fit")).containsExactly("split-the-double-team");
        assertThat(facts.tagged("move")).containsExactly("split-the-double-team");
    }

    @ParameterizedTest(name = "{0} opens with {1}")
    @CsvSource(textBlock = """
            bull-rush > push-pull,            bull-rush, push-pull
            jab-step > long-arm > spin,       long-arm,  spin
            euro-step,                        '',        ''
            setup-move > rip,                 rip,       ''
            hesitation-rush > rip,            hesitation-rush, rip
            spin > flatten,                   spin,      ''
            power-move > second-effort > dip, power-move, dip
            [vertical-set] > chop > jab-step, chop,      ''
            lock-out,                         '',        ''
            """)
    void the_opening_is_the_first_step_that_is_more_than_a_setup(String exchange, String opening, String later) {
        List<Step> steps = steps(exchange);
        List<String> moves = MAKER.openings().laterMoves(steps).stream()
                .map(i -> steps.get(i).concept())
                .toList();

        assertThat(facts(exchange, Map.of()).tagged("openingMove"))
                .isEqualTo(opening.isEmpty() ? Set.of() : Set.of(opening));
        assertThat(moves).isEqualTo(later.isEmpty() ? List.of() : List.of(later));
    }

    @Test
    void a_list_column_is_seen_by_its_header_a_single_value_by_its_value() {
        RepFacts facts = facts("bull-rush", Map.of("result", "won"));

        assertThat(facts.tagged("seen"))
                .contains("faults", "help", "result", "exchange", "hands", "feet", "eyes", "pads")
                .doesNotContain("gap", "how_won", "chances");
        assertThat(facts("", Map.of()).tagged("seen")).doesNotContain("exchange");
    }

    @Test
    void what_the_view_hid_was_not_seen() {
        Map<String, String> cells = new HashMap<>(Map.of("gap", "inside", "not_seen", "hands;gap"));
        assertThat(facts("bull-rush", cells).tagged("seen"))
                .contains("feet", "faults")
                .doesNotContain("hands", "gap");

        cells.put("not_seen", "faults");
        assertThat(facts("bull-rush", cells).tagged("seen")).contains("gap").doesNotContain("faults", "hands", "pads");
    }

    @ParameterizedTest(name = "assignment \"{0}\" from \"{1}\" is {2}, {3}")
    @CsvSource(textBlock = """
            '',                 '',       assignment-unknown, unknown
            spill-assignment,   '',       spill-assignment,   stated
            spill-assignment,   inferred, spill-assignment,   inferred
            assignment-unknown, '',       assignment-unknown, unknown
            '',                 unknown,  assignment-unknown, unknown
            """)
    void a_blank_duty_means_that_nobody_knows(String duty, String source, String facet, String told) {
        Map<String, String> cells = new HashMap<>();
        if (!duty.isEmpty()) {
            cells.put("assignment", duty);
        }
        if (!source.isEmpty()) {
            cells.put("assignment_source", source);
        }
        RepFacts facts = facts("lock-out", cells);

        assertThat(facts.tagged("assignment")).containsExactly(facet);
        assertThat(facts.tagged("assignmentSource")).containsExactly(told);
        assertThat(facts.tagged("seen")).contains("assignment", "assignment_source");
        assertThat(MAKER.isUnsaid("assignment", facts)).isEqualTo(told.equals("unknown"));
    }

    @Test
    void integers_are_numbers_and_words_are_themselves() {
        RepFacts facts = facts("bull-rush", Map.of("down", "3", "bodies_taken", "2", "get_off", "late"));

        assertThat(facts.number("down")).hasValue(3);
        assertThat(facts.number("bodiesTaken")).hasValue(2);
        assertThat(facts.number("distance")).isEmpty();
        assertThat(facts.tagged("getOff")).containsExactly("late");
    }

    private static RepFacts facts(String exchange, Map<String, String> cells) {
        Map<String, List<String>> tags = new HashMap<>();
        cells.forEach((column, value) -> tags.put(column, List.of(value.split(";", -1))));
        Reading reading = new Reading(new RepId("p", "g", "r"), "e", tags, steps(exchange));
        return MAKER.facts(reading, Set.of("faults", "help", "results"));
    }

    private static List<Step> steps(String exchange) {
        List<Step> steps = new ArrayList<>();
        for (String word : exchange.split(">", -1)) {
            String step = word.trim();
            if (!step.isEmpty()) {
                steps.add(
                        step.startsWith("[")
                                ? new Step(Step.By.BLOCKER, step.substring(1, step.length() - 1), Optional.empty())
                                : new Step(Step.By.HIM, step, Optional.empty()));
            }
        }
        return steps;
    }
}
