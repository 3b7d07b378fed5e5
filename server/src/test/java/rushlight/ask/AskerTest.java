package rushlight.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rushlight.archive.ImportedLeague;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.findings.Assessment;
import rushlight.findings.Counting;
import rushlight.findings.Finding;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.findings.Polarity;
import rushlight.situation.Situation;

/** What answers a reading on the invented league. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AskerTest {
    private static final Answers.Window ALL = Answers.Window.first(1_000);
    private static final Situation KICKED_OUT = Situation.has("block", "kick-out-block");
    private static final Situation WRONG_ARM = Situation.has("fit", "wrong-arm");

    @RegisterExtension
    private static final ImportedLeague LEAGUE = new ImportedLeague();

    @Test
    void players_rank_by_the_lower_end_of_the_likely_range_then_events_then_name() {
        Answers answers = ask(Find.PROSPECTS, Optional.of(new SituationPair(KICKED_OUT, WRONG_ARM)));

        assertThat(answers.answers()).hasSizeGreaterThan(2).hasSize(answers.total());
        List<Answer.Player> players = players(answers);
        assertThat(players)
                .isSortedAccordingTo(Comparator.<Answer.Player>comparingDouble(
                                p -> -p.found().rate().jeffreys(Rate.SHOWN).low())
                        .thenComparing(p -> -p.found().rate().events())
                        .thenComparing(p -> p.prospect().name()));
        assertThat(players).allSatisfy(player -> {
            assertThat(player.found().rate().events()).isPositive();
            assertThat(player.reps()).hasSize(player.found().rate().opportunities());
            assertThat(player.reps().stream().filter(SeenRep::event))
                    .hasSize(player.found().rate().events());
            assertThat(player.found().thin()).isEqualTo(player.found().rate().opportunities() < 6);
        });
    }

    @Test
    void a_window_shows_a_part_and_counts_them_all() {
        SituationPair pair = new SituationPair(KICKED_OUT, WRONG_ARM);
        List<Answer> all = ask(Find.PROSPECTS, Optional.of(pair)).answers();

        Answers second = LEAGUE.archive()
                .watch(f -> asker().answer(f, asked(Find.PROSPECTS, Optional.of(pair)), new Answers.Window(1, 1)));

        assertThat(second.total()).isEqualTo(all.size());
        assertThat(second.answers())
                .extracting(Answer::id)
                .containsExactly(all.get(1).id());
        assertThat(ask(Find.PROSPECTS, Optional.of(pair), new Filter.Top(2)).answers())
                .extracting(Answer::id)
                .isEqualTo(all.subList(0, 2).stream().map(Answer::id).toList());
    }

    @Test
    void who_has_fewer_than_asked_for_is_no_answer() {
        SituationPair pair = new SituationPair(KICKED_OUT, WRONG_ARM);

        List<Answer.Player> players =
                players(ask(Find.PROSPECTS, Optional.of(pair), new Filter.AtLeast(Filter.Counted.OPPORTUNITIES, 15)));

        assertThat(players)
                .isNotEmpty()
                .allMatch(p -> p.found().rate().opportunities() >= 15)
                .hasSizeLessThan(ask(Find.PROSPECTS, Optional.of(pair)).total());
    }

    /** Every finding that counts a plain rate: asked as a question, it comes to the same numbers for everybody. */
    @Test
    void what_is_asked_comes_to_the_counts_of_the_findings() {
        Map<String, Map<String, Rate>> expected = new HashMap<>();
        for (Assessment assessment : LEAGUE.archive().assess()) {
            for (Judged judged : assessment.findings()) {
                if (judged.outcome().rate().events() > 0) {
                    expected.computeIfAbsent(judged.finding().slug(), f -> new HashMap<>())
                            .put(assessment.prospect().id(), judged.outcome().rate());
                }
            }
        }
        int compared = 0;
        for (Finding finding : LEAGUE.archive().book().assessor().book().all()) {
            Optional<Counting.Scope> scope = finding.counting().scope();
            if (scope.isEmpty()
                    || finding.measure() != Measure.RATE
                    || finding.counting().split().isPresent()) {
                continue;
            }
            List<Situation> parts = new ArrayList<>(List.of(scope.get().opportunity()));
            if (!scope.get().duties().isEmpty()) {
                parts.add(Situation.anyOf("assignment", scope.get().duties()));
            }
            SituationPair pair =
                    new SituationPair(Situation.all(parts), scope.get().event());
            Map<String, Rate> answered = new HashMap<>();
            players(ask(Find.PROSPECTS, Optional.of(pair)))
                    .forEach(p -> answered.put(p.id(), p.found().rate()));
            assertThat(answered).as(finding.slug()).isEqualTo(expected.getOrDefault(finding.slug(), Map.of()));
            compared++;
        }
        assertThat(compared).isGreaterThan(50);
    }

    @Test
    void reps_are_those_that_the_players_answers_count() {
        SituationPair pair = new SituationPair(KICKED_OUT, WRONG_ARM);
        int events = players(ask(Find.PROSPECTS, Optional.of(pair))).stream()
                .mapToInt(p -> p.found().rate().events())
                .sum();

        Answers reps = ask(Find.REPS, Optional.of(pair));

        assertThat(reps.total()).isEqualTo(events);
        assertThat(reps.answers()).hasSize(events).extracting(Answer::id).doesNotHaveDuplicates();
        Answers his = ask(Find.REPS, Optional.of(pair), new Filter.Prospects(List.of("anselm-corrigate")));
        assertThat(his.answers()).isNotEmpty().allMatch(a -> a.id().startsWith("anselm-corrigate/"));
    }

    @Test
    void a_note_narrows_the_reps_and_says_where_its_words_stand() {
        Answers reps = ask(Find.REPS, Optional.empty(), new Filter.Note("hands"));

        assertThat(reps.answers()).isNotEmpty().allSatisfy(answer -> {
            var note = ((Answer.Rep) answer).rep().note();
            assertThat(note.marks())
                    .isNotEmpty()
                    .allSatisfy(span -> assertThat(note.text().substring(span.from(), span.to()))
                            .startsWithIgnoringCase("hand"));
        });
    }

    @Test
    void counters_list_every_timing_in_the_rep_first() {
        Answers answers = ask(
                Find.COUNTERS,
                Optional.empty(),
                new Filter.About(Filter.Relation.MOVE, List.of("bull-rush")),
                new Filter.About(Filter.Relation.TRIGGER, List.of("sits-down")));

        List<Answer.Counter> counters =
                answers.answers().stream().map(a -> (Answer.Counter) a).toList();
        assertThat(counters).isNotEmpty();
        assertThat(counters.get(0).pairing().timing()).contains("in-rep");
        List<Integer> ranks = counters.stream()
                .filter(c -> c.pairing().primary().equals(Optional.of("bull-rush"))
                        && c.pairing().timing().contains("in-rep"))
                .map(c -> c.pairing().rank())
                .toList();
        assertThat(ranks).isSorted();
    }

    @Test
    void drills_train_what_a_finding_says_to_train_first() {
        Finding finding = LEAGUE.archive()
                .book()
                .assessor()
                .book()
                .finding("power-stalls-feet-stop")
                .orElseThrow();

        Answers answers = ask(
                Find.DRILLS,
                Optional.empty(),
                new Filter.About(Filter.Relation.TRAINS, List.of("power-stalls-feet-stop")));

        assertThat(answers.answers()).isNotEmpty();
        assertThat(finding.advice().starterDrill())
                .contains(answers.answers().get(0).id());
        assertThat(answers.answers())
                .filteredOn(a -> !((Answer.Drill) a).trains().isEmpty())
                .allMatch(a -> finding.advice().trainFirst().stream()
                        .anyMatch(skill -> ((Answer.Drill) a)
                                .trains().stream()
                                        .anyMatch(t -> LEAGUE.archive()
                                                .book()
                                                .taxonomy()
                                                .isA(t, skill))));
    }

    @Test
    void findings_are_those_of_the_assessment_that_stand() {
        Answers answers = ask(
                Find.FINDINGS,
                Optional.empty(),
                new Filter.Prospects(List.of("tavish-mordell")),
                new Filter.Polarities(Set.of(Polarity.GAP)));

        List<String> expected = LEAGUE.archive().assess("tavish-mordell").orElseThrow().findings().stream()
                .filter(j -> j.verdict().stands() && j.finding().polarity() == Polarity.GAP)
                .sorted(Judged.mostTellingFirst())
                .map(j -> "tavish-mordell/" + j.finding().slug())
                .toList();
        assertThat(answers.answers()).extracting(Answer::id).isEqualTo(expected).isNotEmpty();
    }

    @Test
    void players_with_a_confirmed_finding_have_it_confirmed() {
        Answers answers = ask(
                Find.PROSPECTS,
                Optional.empty(),
                new Filter.Findings(List.of("no-inside-counter")),
                new Filter.Verdicts(Set.of(Verdict.CONFIRMED)));

        List<String> expected = LEAGUE.archive().assess().stream()
                .filter(a -> a.finding("no-inside-counter").orElseThrow().verdict() == Verdict.CONFIRMED)
                .map(a -> a.prospect().id())
                .toList();
        assertThat(answers.answers()).extracting(Answer::id).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(expected).isNotEmpty();
    }

    @Test
    void two_kinds_of_reps_are_held_against_each_other() {
        Situation rush = Situation.has("phase", "pass-rush");
        Answers answers = ask(
                Find.COMPARE,
                Optional.of(new SituationPair(rush, Situation.has("outcome", "won"))),
                new Filter.Sides(
                        Situation.has("over", "left"),
                        "from the left",
                        Situation.has("over", "right"),
                        "from the right"));

        assertThat(answers.answers()).isNotEmpty().allSatisfy(answer -> {
            Answer.Compared compared = (Answer.Compared) answer;
            assertThat(compared.rows()).hasSize(2);
            Answer.Compared.Gap gap = compared.gap().orElseThrow();
            assertThat(gap.observed()).isPositive();
            assertThat(gap.shown().low()).isLessThanOrEqualTo(gap.observed());
            assertThat(compared.reps())
                    .hasSize(compared.rows().get(0).count().rate().opportunities()
                            + compared.rows().get(1).count().rate().opportunities());
        });
        assertThat(answers.answers()).isSortedAccordingTo(Comparator.comparingDouble((Answer a) -> -a.score()));
    }

    @Test
    void players_like_him_come_with_reasons() {
        Answers answers = ask(Find.SIMILAR, Optional.empty(), new Filter.Prospects(List.of("tavish-mordell")));

        assertThat(answers.total()).isEqualTo(17);
        assertThat(answers.answers()).extracting(Answer::id).doesNotContain("tavish-mordell");
        assertThat(answers.answers())
                .isSortedAccordingTo(Comparator.comparingDouble((Answer a) -> -a.score()))
                .allMatch(a -> a.score() > 0 && a.score() < 1);
        assertThat(((Answer.Alike) answers.answers().get(0)).alike()).isNotEmpty();
    }

    @Test
    void moves_are_ranked_by_what_came_of_them_on_film() {
        Answers answers = ask(
                Find.TECHNIQUES,
                Optional.of(new SituationPair(Situation.has("phase", "pass-rush"), Situation.has("outcome", "won"))),
                new Filter.Kinds(Set.of("RushMove")),
                new Filter.Prospects(List.of("ishan-velloor")));

        assertThat(answers.answers()).isNotEmpty().allMatch(a -> a.count().isPresent());
        assertThat(answers.answers()).isSortedAccordingTo(Comparator.comparingDouble((Answer a) -> -a.score()));
    }

    @Test
    void an_empty_answer_says_why_and_what_to_try() {
        Answers never = ask(
                Find.PROSPECTS,
                Optional.of(new SituationPair(KICKED_OUT, WRONG_ARM)),
                new Filter.AtLeast(Filter.Counted.EVENTS, 10_000));

        assertThat(never.total()).isZero();
        assertThat(never.why().orElseThrow()).contains("nobody has as many");
        assertThat(never.tries()).isNotEmpty();
    }

    private static Answers ask(Find find, Optional<SituationPair> pair, Filter... filters) {
        return LEAGUE.archive().watch(f -> asker().answer(f, asked(find, pair, filters), ALL));
    }

    private static Asker asker() {
        return LEAGUE.archive().book().asker();
    }

    private static Asked asked(Find find, Optional<SituationPair> pair, Filter... filters) {
        return new Asked("a question", find, "a reading", pair, List.of(filters), List.of(), List.of());
    }

    private static List<Answer.Player> players(Answers answers) {
        return answers.answers().stream().map(a -> (Answer.Player) a).toList();
    }
}
