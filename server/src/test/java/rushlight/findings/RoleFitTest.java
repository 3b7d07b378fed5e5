package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.knowledge.BrokenBookException;

/** Roles are held against film: what is shown, what is not, and of what there is no tape. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoleFitTest {
    private static final String STANDING = "phase=pass-rush repClass=opp-one-on-one stance=two-point-stance outcome=";
    private static final String DROP = "phase=drop outcome=";

    private final World book = World.with("");

    @ParameterizedTest
    @CsvSource({
        "NOT_ENOUGH_TAPE, NO_TAPE, NO_TAPE",
        "WATCH, NOT_SHOWN, NOT_SHOWN",
        "LIKELY, SHOWN, NOT_SHOWN",
        "CONFIRMED, SHOWN, NOT_SHOWN",
        "CLEARED, NOT_SHOWN, SHOWN"
    })
    void a_strength_is_shown_when_it_stands_and_a_gap_when_it_is_cleared(Verdict verdict, Shown wanted, Shown without) {
        assertThat(Shown.of(verdict, false)).isEqualTo(wanted);
        assertThat(Shown.of(verdict, true)).isEqualTo(without);
    }

    @Test
    void there_is_no_tape_of_what_had_too_few_chances() {
        RoleFit fit = fit(book, "stand-up-outside-backer", one -> one.reps(7, DROP + "won"));

        assertThat(fit.fit()).isEqualTo(Shown.NO_TAPE);
        assertThat(need(fit, "coverage-task").judged().outcome().rate()).isEqualTo(new Rate(7, 7));
        assertThat(fit.summary())
                .isEqualTo(
                        "Not enough tape: coverage holds up (7 of 7), sets the edge consistently (no chance), one-on-one"
                                + " wins standing up (no chance).");
    }

    @Test
    void what_has_chances_enough_and_does_not_show_is_not_shown_on_this_tape() {
        RoleFit fit = fit(
                book,
                "stand-up-outside-backer",
                one -> one.reps(8, DROP + "won").reps(18, STANDING + "lost").reps(2, STANDING + "won"));

        assertThat(need(fit, "coverage-task").shown()).isEqualTo(Shown.SHOWN);
        assertThat(need(fit, "stand-up-rush-task").judged().outcome().rate()).isEqualTo(new Rate(2, 20));
        assertThat(fit.fit()).isEqualTo(Shown.NOT_SHOWN);
        assertThat(fit.summary())
                .isEqualTo("Shown: coverage holds up. Not shown on this tape: one-on-one wins standing up (2 of 20)."
                        + " Not enough tape: sets the edge consistently (no chance).");
    }

    @Test
    void a_rep_of_another_stance_is_no_chance_and_a_hidden_result_counts_for_nothing() {
        RoleFit fit = fit(
                book,
                "stand-up-outside-backer",
                one -> one.reps(9, STANDING + "won hidden=result")
                        .reps(9, STANDING.replace("two-point", "three-point") + "won")
                        .reps(3, STANDING + "even"));

        assertThat(need(fit, "stand-up-rush-task").judged().outcome().rate()).isEqualTo(new Rate(0, 3));
    }

    @Test
    void a_gap_that_nobody_could_have_shown_is_not_cleared() {
        RoleFit fit = fit(book, "wide-rush-end", one -> one.reps(3, STANDING + "won"));

        assertThat(need(fit, "slow-get-off").asked().without()).isTrue();
        assertThat(need(fit, "slow-get-off").shown()).isEqualTo(Shown.NO_TAPE);
    }

    /** Counted from the CSV files of the demo by a few lines of Python, without the program. */
    @ParameterizedTest
    @CsvSource({
        "Desmo Harkaway, coverage-task, 86, 86",
        "Dashiell Morwen, inside-run-task, 51, 58",
        "Dashiell Morwen, two-gap-task, 49, 52"
    })
    void the_counts_are_those_of_the_files(String prospect, String task, int events, int opportunities) {
        Judged judged = DemoLeague.assessed().of(prospect).counted(task).orElseThrow();
        assertThat(judged.outcome().rate()).isEqualTo(new Rate(events, opportunities));
        assertThat(judged.evidence().reps()).hasSize(opportunities);
        assertThat(judged.evidence().reps().stream().filter(Evidence.Rep::event))
                .hasSize(events);
    }

    @Test
    void a_fit_is_shown_just_where_all_that_is_required_is() {
        assertThat(DemoLeague.assessed().assessments()).allSatisfy(one -> {
            assertThat(one.roles()).hasSize(6);
            assertThat(one.roles()).allSatisfy(fit -> {
                assertThat(fit.fit() == Shown.SHOWN)
                        .isEqualTo(fit.required().stream().allMatch(need -> need.shown() == Shown.SHOWN));
                assertThat(fit.summary()).doesNotContainIgnoringCase("cannot").isNotBlank();
            });
            assertThat(one.roles()).isSortedAccordingTo(RoleFit.bestFirst());
        });
        List<Shown> all = DemoLeague.assessed().assessments().stream()
                .flatMap(one -> one.roles().stream())
                .map(RoleFit::fit)
                .collect(Collectors.toList());
        assertThat(all).contains(Shown.values());
    }

    @Test
    void a_file_of_your_own_adds_a_role_and_a_task() {
        World yours = World.with("""
                kb:spot-dropper a skos:Concept , rl:Role ;
                  skos:prefLabel "spot dropper"@en ;
                  rl:mustShow kb:ball-drop-task , kb:coverage-task .
                kb:ball-drop-task a skos:Concept , rl:RoleTask ;
                  skos:prefLabel "wins in coverage"@en ;
                  rl:opportunity shape:coverage-task-opportunity ;
                  rl:event shape:ball-drop-task-event ;
                  rl:line 0.50 ; rl:trueSide rl:above ; rl:minimum 8 ;
                  rl:because "He is there for the ball."@en ;
                  rl:sentence "Won {events} of {opportunities} drops."@en .
                shape:ball-drop-task-event a sh:NodeShape ;
                  sh:property [ sh:path rl:outcome ; sh:hasValue "won" ] .
                """);
        RoleFit fit =
                fit(yours, "spot-dropper", one -> one.reps(9, DROP + "won").reps(3, DROP + "even"));

        assertThat(fit.role().shown()).isEqualTo("spot dropper (yours)");
        assertThat(need(fit, "ball-drop-task").judged().sentence()).contains("won 9 of 12 drops");
        assertThat(fit.summary())
                .isEqualTo("All that is required is on film: wins in coverage (yours), coverage holds up.");
    }

    @Test
    void a_role_that_asks_for_what_reps_do_not_show_is_refused() {
        assertThatThrownBy(() -> World.with("""
                        kb:bad-role a skos:Concept , rl:Role ; skos:prefLabel "bad role"@en ; rl:mustShow kb:anchor .
                        """))
                .isInstanceOf(BrokenBookException.class)
                .hasMessageContaining("A role asks for anchor");
    }

    private static RoleFit fit(World world, String role, Function<Film, Film> reps) {
        Film film = reps.apply(world.film().game("Opener", "Early Town"));
        return world.assess(film).roles().stream()
                .filter(fit -> fit.role().slug().equals(role))
                .findFirst()
                .orElseThrow();
    }

    private static RoleFit.Need need(RoleFit fit, String asked) {
        return fit.needs()
                .filter(need -> need.asked().slug().equals(asked))
                .findFirst()
                .orElseThrow();
    }
}
