package rushlight.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.knowledge.Ontology;

@DisplayNameGeneration(ReplaceUnderscores.class)
class StrataTest {
    @Test
    void a_class_does_not_hang_on_the_reps_beside_it() {
        List<Reading> reps = new RandomReps(Reps.TAXONOMY, 7).some(250);
        List<RepFacts> together = Reps.RULES.classify(reps, Reps.CHARTED);
        for (int i = 0; i < reps.size(); i++) {
            assertThat(Reps.classes(reps.get(i)))
                    .as(reps.get(i).toString())
                    .isEqualTo(together.get(i).tagged("repClass"));
        }
    }

    @Test
    void both_strata_in_one_pass_would_say_that_things_did_not_happen_which_did() {
        String all = Ontology.text("rules/rep-1-tags.rules") + Ontology.text("rules/rep-2-absence.rules");
        RepRules onePass = RepRules.of(RuleBook.of("", all), Reps.BOOK, Reps.TAXONOMY);
        List<Reading> reps = new RandomReps(Reps.TAXONOMY, 7).some(600);
        List<RepFacts> right = Reps.RULES.classify(reps, Reps.CHARTED);
        List<RepFacts> wrong = onePass.classify(reps, Reps.CHARTED);
        int differ = 0;
        for (int i = 0; i < reps.size(); i++) {
            Set<String> two = right.get(i).tagged("repClass");
            Set<String> one = wrong.get(i).tagged("repClass");
            assertThat(one).containsAll(two);
            differ += one.equals(two) ? 0 : 1;
        }
        assertThat(differ).isPositive();
    }

    @Test
    void classes_stand_closed_in_the_facts() {
        RepFacts facts = Reps.facts(Reps.rush("bull-rush > [anchor-hop]", "chances=opp-blind-side-finish"));
        assertThat(facts.tagged("repClass")).contains("opp-blind-side-finish").doesNotContain("opp-opening");
        assertThat(facts.has("repClass", "opp-finish")).isTrue();
        assertThat(facts.has("repClass", "opp-opening"))
                .as("weight forward is an opening")
                .isTrue();
        assertThat(facts.has("repClass", "rush-opportunity")).isTrue();
    }
}
