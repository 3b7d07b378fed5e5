package rushlight.findings;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Single reps argued for and against each finding of a table. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class ArguedReps {
    private final Scenario.Judge judge = new Scenario.Judge();
    private final List<Scenario> table;

    ArguedReps(List<Scenario> table) {
        this.table = table;
    }

    Stream<Arguments> reps() {
        return Scenario.arguments(table);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("reps")
    void a_rep_says_what_a_coach_would_say(String finding, String why, Scenario rep) {
        assertThat(judge.says(rep)).as("%s: %s (%s)", finding, why, rep.cells()).isEqualTo(rep.says());
    }

    @Test
    void every_finding_has_a_rep_for_it_one_against_it_and_one_that_does_not_count() {
        Map<String, Set<Scenario.Says>> argued =
                table.stream().collect(groupingBy(Scenario::finding, mapping(Scenario::says, toSet())));
        assertThat(argued).hasSizeGreaterThanOrEqualTo(25);
        assertThat(argued.values())
                .allSatisfy(says -> assertThat(says)
                        .contains(Scenario.Says.EVENT, Scenario.Says.CHANCE)
                        .containsAnyOf(Scenario.Says.NOTHING, Scenario.Says.PERHAPS));
    }
}
