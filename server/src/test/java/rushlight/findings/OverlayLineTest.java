package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Rate;

/** A user's own line replaces the house's, and both are shown. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class OverlayLineTest {
    @Test
    void your_line_is_used_and_the_house_line_is_kept_beside_it() {
        World house = World.with("");
        World yours = World.with("kb:double-erased rl:line 0.50 ; rl:minimum 12 ; rl:severity rl:low .");
        Standard shipped =
                house.assessor().book().finding("double-erased").orElseThrow().standard();
        Finding changed = yours.assessor().book().finding("double-erased").orElseThrow();

        assertThat(shipped.isYours()).isFalse();
        assertThat(changed.standard().line()).hasValue(0.50);
        assertThat(changed.standard().houseLine()).isEqualTo(shipped.line());
        assertThat(changed.standard().minimum()).isEqualTo(12);
        assertThat(changed.standard().houseMinimum()).isEqualTo(shipped.minimum());
        assertThat(changed.standard().isYours()).isTrue();
        assertThat(changed.severity()).isEqualTo(Severity.LOW);
    }

    @Test
    void the_sentence_names_both_lines() {
        World yours = World.with("kb:double-erased rl:line 0.50 .");
        Film film = yours.film()
                .game("Opener", "")
                .reps(8, "phase=pass-rush repClass=opp-double fault=quits-on-second-blocker");

        Judged judged = yours.judge("double-erased", film);

        assertThat(judged.outcome().rate()).isEqualTo(new Rate(8, 8));
        assertThat(judged.sentence()).contains("over the line of 50 % (yours; house line 25 %)");
    }
}
