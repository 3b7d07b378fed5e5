package rushlight.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.findings.DemoLeague;

/** The board of the demo league, one man at a time. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class BoardAnswerTest {
    /** Nobody knows what he was told on any of these reps, so none counts and all are told. */
    @Test
    void reps_on_which_nobody_knows_the_duty_are_counted_apart() {
        BoardAnswer.Row toll =
                row("Keverne Toll", "wrong-arms-reliably", "surrenders-edge-to-pullers", "late-block-recognition");

        assertThat(cell(toll, "wrong-arms-reliably").opportunities()).isZero();
        assertThat(cell(toll, "wrong-arms-reliably").unknownDuties()).isEqualTo(21);
        assertThat(cell(toll, "surrenders-edge-to-pullers").opportunities()).isZero();
        assertThat(cell(toll, "surrenders-edge-to-pullers").unknownDuties()).isEqualTo(24);
        assertThat(cell(toll, "late-block-recognition").opportunities()).isPositive();
        assertThat(cell(toll, "late-block-recognition").unknownDuties()).isZero();
    }

    private static FindingCell cell(BoardAnswer.Row row, String finding) {
        return Objects.requireNonNull(row.cells().get(finding), finding);
    }

    private static BoardAnswer.Row row(String name, String... findings) {
        return BoardAnswer.of(
                        List.of(findings),
                        DemoLeague.assessed().assessments().stream()
                                .filter(one -> one.prospect().name().equals(name))
                                .toList())
                .prospects()
                .get(0);
    }
}
