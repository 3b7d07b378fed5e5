package rushlight.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static rushlight.rules.Reps.CHARTED;
import static rushlight.rules.Reps.RULES;
import static rushlight.rules.Reps.run;
import static rushlight.rules.Reps.rush;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.film.Reading;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ExplanationTest {
    @Test
    void a_counter_is_explained_by_its_steps_and_its_pairing() {
        Explanation why = one("paired-counter", rush("bull-rush > [anchor-hop] > push-pull", "result=won"));

        assertThat(why.rule()).isEqualTo("paired-counter");
        assertThat(why.sentence())
                .isEqualTo(
                        "He moved, the blocker answered, and he went to a move that is taught for exactly that answer.");
        assertThat(why.tags())
                .contains(tag("exchange", "bull-rush"), tag("exchange", "[anchor-hop]"), tag("exchange", "push-pull"));
        assertThat(why.book()).containsExactly("bull-rush--anchor-hop--push-pull");
        assertThat(why.through()).contains("The blocker answered his move in a way for which counters are taught.");
    }

    @Test
    void a_wrong_fit_names_the_fit_rule_and_what_it_hangs_on() {
        Explanation why =
                one("fit-wrong", run("[pull-and-kick-block] > wrong-arm", "assignment=contain-force-assignment"));

        assertThat(why.sentence()).isEqualTo("Under his duty this answer is wrong against that block.");
        assertThat(why.tags())
                .contains(
                        tag("assignment", "contain-force-assignment"),
                        tag("exchange", "[pull-and-kick-block]"),
                        tag("exchange", "wrong-arm"));
        assertThat(why.book()).containsExactly("pull-and-kick-block--contain-force-assignment");
        assertThat(why.hangsOn()).singleElement().asString().contains("crack, cloud, exchange");
    }

    @Test
    void a_verdict_that_depends_names_two_duties_that_disagree_about_one_answer() {
        Explanation why = one("fit-depends", run("[down-block] > squeeze-down > [pull-and-kick-block] > wrong-arm"));

        assertThat(why.book()).hasSize(2).allMatch(id -> id.startsWith("pull-and-kick-block--"));
        assertThat(why.tags()).contains(tag("exchange", "wrong-arm")).doesNotContain(tag("exchange", "squeeze-down"));
    }

    @Test
    void a_tag_is_shown_as_it_was_charted_not_as_the_rule_asks() {
        Explanation why = one("opp-chip", rush("speed-rush", "help=chip-by-tight-end"));

        assertThat(why.tags()).contains(tag("help", "chip-by-tight-end"));
    }

    @Test
    void every_class_of_a_rep_is_explained_and_nothing_else() {
        for (Reading rep : new RandomReps(Reps.TAXONOMY, 11).some(150)) {
            List<Explanation> all = RULES.explain(rep, CHARTED);
            assertThat(all.stream().map(Explanation::repClass).collect(Collectors.toSet()))
                    .as(rep.toString())
                    .isEqualTo(Reps.classes(rep));
            assertThat(all)
                    .allSatisfy(why -> assertThat(why.tags()).as(why.rule()).isNotEmpty());
        }
    }

    private static Explanation one(String repClass, Reading reading) {
        return RULES.explain(reading, CHARTED).stream()
                .filter(why -> why.repClass().equals(repClass))
                .findFirst()
                .orElseThrow();
    }

    private static Explanation.Tag tag(String column, String value) {
        return new Explanation.Tag(column, value);
    }
}
