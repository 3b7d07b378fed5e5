package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Ontology;

/** The shipped rules over verdicts as they would come from film. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ProspectRulesTest {
    private static final World WORLD = World.with("");
    private static final ProspectRules RULES = new ProspectRules(Ontology.text("rules/prospect.rules"));

    @Test
    void every_rule_of_the_file_is_read() {
        long brackets = Ontology.text("rules/prospect.rules")
                .lines()
                .filter(line -> line.startsWith("["))
                .count();

        assertThat(RULES.size()).isEqualTo((int) brackets).isGreaterThan(8);
    }

    @Test
    void one_opener_and_no_counter_make_a_one_way_rusher_and_say_from_what() {
        var concluded = conclude(
                Optional.empty(),
                judged("one-move-rusher", Verdict.CONFIRMED, 30, 32),
                judged("primary-without-counter", Verdict.LIKELY, 9, 10));

        assertThat(concluded.is())
                .contains(new Assessment.Conclusion(
                        "one-way-rusher",
                        "one-way-rusher",
                        "He opens with one move, and nothing follows when it is stopped: a one-way rusher.",
                        List.of("one-move-rusher", "primary-without-counter")));
    }

    @Test
    void what_is_only_watched_concludes_nothing() {
        var concluded = conclude(
                Optional.empty(),
                judged("one-move-rusher", Verdict.WATCH, 18, 32),
                judged("primary-without-counter", Verdict.LIKELY, 9, 10));

        assertThat(concluded.is()).isEmpty();
    }

    @Test
    void the_wider_kinds_of_his_main_move_count() {
        var concluded = conclude(Optional.of("bull-rush"), judged("primary-without-counter", Verdict.LIKELY, 9, 10));

        assertThat(concluded.is())
                .extracting(Assessment.Conclusion::slug)
                .containsExactly("power-primary-without-counter");
    }

    @Test
    void a_strength_and_a_gap_on_the_same_reps_are_mixed_both_ways() {
        var concluded = conclude(
                Optional.empty(),
                judged("wrong-arms-reliably", Verdict.LIKELY, 9, 10),
                judged("goes-down-on-spills", Verdict.LIKELY, 6, 9),
                judged("boxes-reliably", Verdict.NOT_ENOUGH_TAPE, 1, 1));

        assertThat(concluded.mixed())
                .containsEntry("wrong-arms-reliably", Set.of("goes-down-on-spills"))
                .containsEntry("goes-down-on-spills", Set.of("wrong-arms-reliably"));
    }

    @Test
    void two_good_rates_with_enough_reps_make_him_versatile() {
        assertThat(conclude(
                                Optional.empty(),
                                judged("wrong-arms-reliably", Verdict.WATCH, 7, 10),
                                judged("boxes-reliably", Verdict.WATCH, 6, 10))
                        .is())
                .extracting(Assessment.Conclusion::slug)
                .containsExactly("spill-and-box-versatile");
        assertThat(conclude(
                                Optional.empty(),
                                judged("wrong-arms-reliably", Verdict.WATCH, 7, 10),
                                judged("boxes-reliably", Verdict.WATCH, 5, 10))
                        .is())
                .isEmpty();
    }

    @Test
    void a_likely_rule_is_named_and_kept_apart() {
        var concluded = conclude(Optional.empty(), judged("likely-spill-rule", Verdict.CONFIRMED, 12, 13));

        assertThat(concluded.is()).isEmpty();
        assertThat(concluded.likelyDuties())
                .extracting(Assessment.Conclusion::slug)
                .containsExactly("spill-assignment");
    }

    @Test
    void the_root_of_a_finding_is_named() {
        var concluded = conclude(
                Optional.empty(),
                judged("hands-land-late", Verdict.LIKELY, 8, 12),
                judged("slow-get-off", Verdict.CONFIRMED, 14, 30));

        assertThat(concluded.rooted()).containsEntry("hands-land-late", Set.of("slow-get-off"));
    }

    @Test
    void a_rule_without_a_sentence_is_refused() {
        assertThatThrownBy(() -> new ProspectRules("[silent: (?a ?b ?c) -> (?c ?b ?a)]"))
                .isInstanceOf(BrokenBookException.class)
                .hasMessage("rules/prospect.rules: the rule silent has no sentence in quotes on the line before it.");
    }

    private static ProspectRules.Concluded conclude(Optional<String> primary, Judged... findings) {
        FindingBook book = WORLD.assessor().book();
        return RULES.conclude(ProspectRules.facts(new ProspectFacts(
                List.of(findings),
                primary,
                primary.map(WORLD.taxonomy()::closure).orElse(Set.of()),
                book.all().stream()
                        .filter(finding -> !finding.links().combines().isEmpty())
                        .toList())));
    }

    private static Judged judged(String slug, Verdict verdict, int events, int opportunities) {
        Rate rate = new Rate(events, opportunities);
        Outcome outcome = new Outcome(
                verdict,
                rate,
                rate.share(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                false,
                List.of(),
                Optional.empty());
        return Stream.of(WORLD.assessor().book().finding(slug).orElseThrow())
                .map(finding -> new Judged(
                        finding,
                        outcome,
                        2,
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        new Evidence(WORLD.film().tape(), Sample.NONE),
                        ""))
                .findFirst()
                .orElseThrow();
    }
}
