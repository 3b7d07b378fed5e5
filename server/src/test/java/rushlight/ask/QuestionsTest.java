package rushlight.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rushlight.findings.FindingBook;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situation;
import rushlight.situation.Situations;

@DisplayNameGeneration(ReplaceUnderscores.class)
class QuestionsTest {
    static final Ontology ONTOLOGY = Ontology.packaged();
    static final Taxonomy TAXONOMY = Taxonomy.of(ONTOLOGY);
    static final FindingBook FINDINGS = FindingBook.of(ONTOLOGY, TAXONOMY, Situations.of(ONTOLOGY, TAXONOMY));
    static final Questions QUESTIONS = Questions.of(ONTOLOGY, TAXONOMY, FINDINGS);

    /** The names of the demo league. */
    static final People PEOPLE = new People(
            Map.ofEntries(
                    Map.entry("tavish-mordell", "Tavish Mordell"),
                    Map.entry("keverne-toll", "Keverne Toll"),
                    Map.entry("oren-castellow", "Oren Castellow"),
                    Map.entry("bram-aldersey", "Bram Aldersey"),
                    Map.entry("garrick-pellow", "Garrick Pellow"),
                    Map.entry("niko-vantry", "Niko Vantry"),
                    Map.entry("lucan-whitlow", "Lucan Whitlow"),
                    Map.entry("calix-draymoor", "Calix Draymoor"),
                    Map.entry("rufus-ennerdale", "Rufus Ennerdale"),
                    Map.entry("teo-maravale", "Teo Maravale"),
                    Map.entry("wendell-ashcombe", "Wendell Ashcombe"),
                    Map.entry("anselm-corrigate", "Anselm Corrigate"),
                    Map.entry("ishan-velloor", "Ishan Velloor"),
                    Map.entry("desmo-harkaway", "Desmo Harkaway"),
                    Map.entry("jem-sorrelby", "Jem Sorrelby"),
                    Map.entry("tobias-quern", "Tobias Quern"),
                    Map.entry("kwame-addlestone", "Kwame Addlestone"),
                    Map.entry("dashiell-morwen", "Dashiell Morwen")),
            Map.of(
                    "sable-point-at-stonefen",
                    "Sable Point at Stonefen",
                    "calder-mill-at-harrow-vale",
                    "Calder Mill at Harrow Vale",
                    "stonefen-v-calder-mill",
                    "Stonefen v Calder Mill"),
            Set.of("Lark Hollow", "Harrow Vale", "Calder Mill", "Gannet Rock", "Sable Point", "Brackwater", "Stonefen"),
            Set.of("college"),
            Set.of("Lark Hollow", "Harrow Vale", "Calder Mill", "Sable Point", "Port Ellery", "Stonefen"),
            Set.of("junior", "senior", "sophomore"));

    static List<String> misses(String file) {
        List<String> misses = new ArrayList<>();
        for (Judged judged : Judged.all(file, FINDINGS)) {
            Asked asked = Judged.plain(QUESTIONS.read(judged.question(), PEOPLE));
            if (!judged.fits(asked)) {
                misses.add(judged.id() + " " + judged.question() + "\n   judged " + judged.find() + " "
                        + judged.situation().map(Object::toString).orElse("-") + " " + judged.filters() + " "
                        + judged.unread() + "\n   read   " + asked.find() + " "
                        + asked.situation().map(Object::toString).orElse("-") + " " + asked.filters() + " "
                        + asked.unread());
            }
        }
        return misses;
    }

    @Test
    void of_the_judged_questions_nineteen_in_twenty_are_read_right(TestReporter report) {
        int all = Judged.all("questions.tsv", FINDINGS).size();
        List<String> misses = misses("questions.tsv");
        report.publishEntry("judged questions read right", (all - misses.size()) + " of " + all);
        misses.forEach(miss -> report.publishEntry("not read right", miss));
        assertThat(all).isGreaterThanOrEqualTo(80);
        assertThat((all - misses.size()) / (double) all)
                .as("share read right; not: %n%s", String.join("\n", misses))
                .isGreaterThanOrEqualTo(0.95);
    }

    /** Sets by other hands, scored once each (10 of 20, 14 of 40, 29 of 40) before what they missed was mended by its causes. */
    @ParameterizedTest
    @CsvSource({"questions-second.tsv, 17", "questions-third.tsv, 38", "questions-fourth.tsv, 33"})
    void of_the_sets_by_other_hands_what_was_mended_stays_mended(String file, int least, TestReporter report) {
        Set<String> all = new TreeSet<>();
        Set<String> right = new TreeSet<>();
        for (Judged judged : Judged.all(file, FINDINGS)) {
            all.add(judged.name());
            if (judged.fits(Judged.plain(QUESTIONS.read(judged.question(), PEOPLE)))) {
                right.add(judged.name());
            }
        }
        report.publishEntry(file + " read right", right.size() + " of " + all.size());
        assertThat(right.size())
                .as("not read right: %s", String.join("\n", misses(file)))
                .isGreaterThanOrEqualTo(least);
    }

    @Test
    void a_chip_cut_or_swapped_is_a_question_that_is_read_again() {
        Asked asked = QUESTIONS.read("who never wrong-arms kick-outs", PEOPLE);
        Chip fit = chip(asked, "wrong-arm");
        assertThat(fit.role()).isEqualTo(Chip.Role.DID_NOT);
        assertThat(asked.question().substring(fit.from(), fit.to())).isEqualTo("wrong-arms");
        Asked swapped = QUESTIONS.read(asked.swapped(fit, "box"), PEOPLE);
        assertThat(swapped.situation().orElseThrow().event())
                .isEqualTo(Situation.not(Situation.has("fit", "box-and-squeeze")));
        Asked without = QUESTIONS.read(asked.without(chip(asked, "kick-out-block")), PEOPLE);
        assertThat(without.question()).isEqualTo("who never wrong-arms");
        assertThat(without.situation().orElseThrow().event())
                .isEqualTo(asked.situation().orElseThrow().event());
    }

    @Test
    void every_choice_of_a_chip_is_read_as_what_it_says() {
        Asked asked = QUESTIONS.read("confirmed gaps of Toll", PEOPLE);
        Chip verdict = asked.chips().stream()
                .filter(chip -> chip.role() == Chip.Role.VERDICT)
                .findFirst()
                .orElseThrow();
        assertThat(verdict.choices()).hasSize(4).allSatisfy(choice -> {
            Asked again = QUESTIONS.read(asked.swapped(verdict, choice.words()), PEOPLE);
            assertThat(again.filter(Filter.Verdicts.class).orElseThrow().verdicts())
                    .extracting(v -> v.slug().replace('-', ' '))
                    .containsExactly(choice.label());
        });
    }

    @Test
    void a_misspelled_word_is_repaired_and_its_chip_says_so() {
        Asked asked = QUESTIONS.read("Mordel bul rush", PEOPLE);
        assertThat(asked.filter(Filter.Prospects.class).orElseThrow().ids()).containsExactly("tavish-mordell");
        assertThat(asked.chips()).allMatch(Chip::guessed);
    }

    @Test
    void a_word_that_means_nothing_is_listed_where_it_stands() {
        Asked asked = QUESTIONS.read("who bull rushes on Tuesdays", PEOPLE);
        assertThat(asked.unread()).containsExactly(new Asked.Unread("Tuesdays", 19, 27));
    }

    @Test
    void what_the_film_log_cannot_say_is_unread_and_not_dropped() {
        Asked asked = QUESTIONS.read("sacks in the red zone", PEOPLE);
        assertThat(asked.unread()).extracting(Asked.Unread::word).containsExactly("red zone");
    }

    @Test
    void the_reading_is_said_in_words() {
        assertThat(QUESTIONS
                        .read("top five who wrong-arm kick-outs with at least 10 pulls", PEOPLE)
                        .text())
                .isEqualTo(
                        "Players: he answered with wrong-arm, of the reps where he met the kick-out block and he met the"
                                + " pulling lineman; at least 10 chances; the first 5.");
    }

    private static Chip chip(Asked asked, String concept) {
        return asked.chips().stream()
                .filter(chip -> chip.concept().filter(concept::equals).isPresent())
                .findFirst()
                .orElseThrow();
    }
}
