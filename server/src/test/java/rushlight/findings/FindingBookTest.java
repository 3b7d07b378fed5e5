package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Tally;
import rushlight.situation.Situation;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FindingBookTest {
    private static final FindingBook BOOK = World.with("").assessor().book();

    @Test
    void every_finding_that_the_log_carries_is_read_and_says_its_count() {
        assertThat(BOOK.all())
                .hasSizeGreaterThan(100)
                .filteredOn(
                        finding -> finding.counting().scope().isPresent() && finding.measure() != Measure.DIFFERENCE)
                .allSatisfy(finding -> assertThat(finding.advice().sentence().orElse(""))
                        .as(finding.slug())
                        .contains("{events}"));
    }

    @Test
    void what_the_log_cannot_carry_is_left_out() {
        assertThat(BOOK.finding("low-hit-habit")).isEmpty();
        assertThat(BOOK.finding("crown-first-contact").orElseThrow().counting().tally())
                .contains(new Tally(1, 20));
    }

    @Test
    void the_event_and_the_exclusions_decide_what_must_have_been_seen() {
        Counting.Scope scope = BOOK.finding("power-stalls-feet-stop")
                .orElseThrow()
                .counting()
                .scope()
                .orElseThrow();

        assertThat(((Situation.And) scope.opportunity()).parts())
                .contains(
                        Situation.has("seen", "faults"),
                        Situation.has("seen", "feet"),
                        Situation.has("seen", "help"),
                        Situation.has("seen", "result"))
                .doesNotContain(
                        Situation.has("seen", "hands"),
                        Situation.has("seen", "exchange"),
                        Situation.has("seen", "phase"));
    }

    @Test
    void a_class_wants_the_columns_its_rule_looks_at() {
        Counting.Scope scope =
                BOOK.finding("chip-erased").orElseThrow().counting().scope().orElseThrow();

        assertThat(((Situation.And) scope.opportunity()).parts()).contains(Situation.has("seen", "exchange"));
    }

    @Test
    void rows_go_by_short_names() {
        assertThat(BOOK.finding("wins-one-side-only").orElseThrow().counting().pairs())
                .extracting(Counting.Pair::firstName, Counting.Pair::secondName)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("over-the-left", "over-the-right"));
    }
}
