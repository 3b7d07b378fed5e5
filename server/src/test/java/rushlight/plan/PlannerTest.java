package rushlight.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.findings.Assessment;
import rushlight.findings.DemoLeague;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.findings.Outcome;
import rushlight.findings.Polarity;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.PlanNotice;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TrainedSkill;
import rushlight.knowledge.Training;

/** The way from what film shows of everybody in the demo league to weeks of practice. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PlannerTest {
    private static final Ontology BOOK = Ontology.packaged();
    private static final Taxonomy TAXONOMY = Taxonomy.of(BOOK);
    private static final Planner PLANNER = Planner.of(BOOK, Training.of(BOOK), TAXONOMY);
    private static final List<Assessment> LEAGUE = DemoLeague.assessed().assessments().stream()
            .sorted(Comparator.comparing(one -> one.prospect().name()))
            .toList();
    private static final String FOOTPRINT = "inside-step-footprint";
    private static final PlanRequest.Rules HITTING = new PlanRequest.Rules(
            Optional.of("high-school-2014"),
            Optional.of(LocalDate.of(2026, 8, 1)),
            Optional.of("thud"),
            OptionalInt.empty(),
            OptionalInt.empty(),
            false,
            Map.of());

    @Test
    void everybody_gets_a_plan_that_keeps_every_rule_or_hears_that_no_gap_stands() {
        int made = 0;
        for (Assessment one : LEAGUE) {
            PlanAnswer answer = PLANNER.plan(one, request(2, 2, HITTING, PlanRequest.Wants.OPEN));
            if (answer instanceof PlanAnswer.Made m) {
                Plan plan = m.plan();
                made++;
                assertThat(PlanCheck.of(plan.task(), plan.result().sessions()))
                        .as(one.prospect().name())
                        .isEmpty();
                assertThat(plan.decides()).contains("Certified coaches and licensed medical staff decide");
                assertThat(plan.notices()).extracting(PlanNotice::part).contains(PlanNotice.Part.values());
                assertThat(plan.blocks().filter(b -> b.level().rank() > 1))
                        .allSatisfy(b -> assertThat(b.cautions()).isNotEmpty());
                assertThat(plan.work().targets())
                        .isNotEmpty()
                        .allSatisfy(t -> assertThat(t.because()).isNotEmpty());
                assertThat(plan.retest()).isNotEmpty();
            } else {
                assertThat(((PlanAnswer.Impossible) answer).reasons().get(0)).startsWith("No gap stands");
            }
        }
        assertThat(made).isGreaterThanOrEqualTo(14);
    }

    @Test
    void the_same_film_and_the_same_wishes_give_the_same_plan() {
        PlanRequest request = request(2, 2, HITTING, PlanRequest.Wants.OPEN);
        Plan one = made(PLANNER.plan(player("Lucan Whitlow"), request));
        Plan other = made(PLANNER.plan(player("Lucan Whitlow"), request));
        assertThat(other.weeks()).isEqualTo(one.weeks());
        assertThat(other.work()).isEqualTo(one.work());
    }

    @Test
    void what_a_skill_needs_stands_before_it_and_several_findings_share_one_skill() {
        Work work =
                made(PLANNER.plan(player("Lucan Whitlow"), PlanRequest.open())).work();
        List<String> order = work.targets().stream().map(Work.Target::skill).toList();
        for (Work.Target target : work.targets()) {
            assertThat(order.subList(0, order.indexOf(target.skill()))).containsAll(target.first());
        }
        assertThat(work.target("rush-plan").orElseThrow().findings())
                .contains("primary-without-counter", "one-move-rusher");
        assertThat(work.target("inside-step-redirect").orElseThrow().first()).contains("set-recognition");
        assertThat(work.target("set-recognition").orElseThrow().role()).isEqualTo(Work.Role.PREREQUISITE);
        assertThat(work.look())
                .extracting(Work.Look::skill)
                .as("what film shows neither way; his starts were counted, and are good")
                .contains("hand-speed")
                .doesNotContain("ball-key");
        assertThat(work.left()).extracting(Work.Left::finding).contains("trouble-stacking-pullers");
    }

    /** Of the log by hand: the gap no-inside-counter counts the misses, so what is good is the rest of its chances. */
    @Test
    void the_reasons_say_what_film_shows_of_the_skill() {
        Assessment one = player("Tavish Mordell");
        Work work = made(PLANNER.plan(one, PlanRequest.open())).work();
        var rate = one.finding("no-inside-counter").orElseThrow().outcome().rate();

        assertThat(String.join(
                        " ", work.target("inside-step-redirect").orElseThrow().because()))
                .contains("What film shows of inside re-direct: " + (rate.opportunities() - rate.events()) + " of "
                        + rate.opportunities() + " good (")
                .contains("by \"no inside counter\"");
    }

    /** He kept pushing on 20 of 24 leans with his hands inside on 55 of 55: the pull wants the weeks, and not the hands. */
    @Test
    void the_skill_that_answers_a_gap_gets_the_time_and_what_film_shows_as_good_gets_none() {
        Work work =
                made(PLANNER.plan(player("Tavish Mordell"), PlanRequest.open())).work();

        Work.Target pull = work.target("pull-timing").orElseThrow();
        assertThat(pull.role()).isEqualTo(Work.Role.GAP);
        assertThat(pull.findings()).containsExactly("no-pull-off-lean");
        assertThat(pull.because())
                .anyMatch(why -> why.startsWith(
                        "No time of its own for inside hand placement: film shows 55 of 55 good (100 %"));
        assertThat(work.target("inside-hand-placement")).isEmpty();
    }

    @Test
    void no_skill_of_anybody_is_a_need_while_its_own_count_would_pass_a_retest() {
        for (Assessment one : LEAGUE) {
            SkillRoots roots = new SkillRoots(PLANNER.training(), one, Set.of());
            for (Judged gap : one.findings()) {
                if (gap.finding().polarity() == Polarity.GAP && !gap.finding().safety()) {
                    assertThat(roots.answer(gap).flatMap(roots::good))
                            .as(one.prospect().name() + ", " + gap.finding().slug())
                            .isEmpty();
                }
            }
        }
    }

    /** The book trains the time of the hand, the clear and the plan for it; film shows the first and the last as good. */
    @Test
    void where_the_last_skill_of_a_gap_is_good_the_one_before_it_answers_and_where_all_are_there_none_does() {
        Assessment one = player("Garrick Pellow");
        Judged gap = one.finding("wins-only-vs-tight-ends-and-backs").orElseThrow();

        assertThat(new SkillRoots(PLANNER.training(), one, Set.of()).answer(gap).map(TrainedSkill::slug))
                .contains("hand-clear");
        SkillRoots seen = new SkillRoots(PLANNER.training(), one, Set.of("hand-clear"));
        assertThat(seen.answer(gap)).isEmpty();
        assertThat(new WorkWords(PLANNER.training(), TAXONOMY, seen).nothingToTrain(gap))
                .startsWith("What the book trains for it needs no weeks.")
                .contains("Time the hand: film shows 43 of 49 good", "Rush plan: film shows 15 of 24 good");
    }

    @Test
    void where_nobody_names_the_rules_nobody_hits_anybody() {
        Plan plan = made(
                PLANNER.plan(player("Lucan Whitlow"), request(2, 2, PlanRequest.Rules.OPEN, PlanRequest.Wants.OPEN)));
        assertThat(plan.blocks()).isNotEmpty().allSatisfy(b -> {
            assertThat(b.contactMinutes()).isZero();
            assertThat(b.level().rank()).isLessThanOrEqualTo(1);
        });
        assertThat(plan.frame().notes()).anyMatch(note -> note.contains("nobody has said whose rules hold"));
    }

    @Test
    void a_looser_number_is_refused_with_the_one_it_would_loosen_and_a_stricter_one_holds() {
        List<String> refused = refused(limits(Map.of("contact-minutes-a-week", new BigDecimal(90))));
        assertThat(refused)
                .singleElement()
                .asString()
                .contains("90 min would be looser than at most 60 min", "high school, national recommendation of 2014");
        assertThat(refused(limits(Map.of("lighter-sets-before-control", BigDecimal.ZERO))))
                .singleElement()
                .asString()
                .contains("looser than at least 1 set");
        Plan plan = made(PLANNER.plan(
                player("Lucan Whitlow"),
                request(2, 2, limits(Map.of("skills-a-session", BigDecimal.ONE)), PlanRequest.Wants.OPEN)));
        assertThat(plan.weeks())
                .allSatisfy(w -> assertThat(w.sessions())
                        .allSatisfy(s -> assertThat(s.blocks()).hasSizeLessThanOrEqualTo(1)));
    }

    @Test
    void rules_that_were_checked_long_ago_allow_no_full_contact() {
        PlanRequest.Time time = new PlanRequest.Time(
                Optional.empty(),
                OptionalInt.of(1),
                OptionalInt.of(2),
                OptionalInt.empty(),
                Optional.of(LocalDate.of(2028, 8, 7)));
        Plan plan = made(PLANNER.plan(
                player("Lucan Whitlow"),
                new PlanRequest(time, PlanRequest.There.OPEN, HITTING, PlanRequest.Wants.OPEN)));
        assertThat(plan.frame().notes()).anyMatch(note -> note.contains("last checked on 2026-08-01"));
        assertThat(plan.blocks()).allSatisfy(b -> assertThat(b.contactMinutes()).isZero());
        assertThat(plan.weeks().get(0).sessions().get(0).date()).contains(LocalDate.of(2028, 8, 7));
    }

    @Test
    void days_of_heat_acclimatization_hold_the_contact_down() {
        PlanRequest.Rules camp = new PlanRequest.Rules(
                HITTING.profile(),
                HITTING.checked(),
                HITTING.approved(),
                OptionalInt.empty(),
                OptionalInt.of(1),
                false,
                Map.of());
        Plan plan = made(PLANNER.plan(player("Lucan Whitlow"), request(2, 4, camp, PlanRequest.Wants.OPEN)));
        List<Slot> slots = plan.task().slots();
        assertThat(slots.subList(0, 2)).allSatisfy(s -> assertThat(s.highest()).isZero());
        assertThat(slots.subList(2, 5)).allSatisfy(s -> assertThat(s.highest()).isLessThanOrEqualTo(1));
    }

    @Test
    void what_a_person_wants_comes_first_in_his_order_and_what_he_leaves_out_stays_out() {
        PlanRequest.Wants wants = new PlanRequest.Wants(
                List.of("plays-high", "no-inside-counter"),
                List.of("rush-plan"),
                List.of("set-recognition"),
                List.of());
        Plan plan = made(PLANNER.plan(player("Lucan Whitlow"), request(2, 3, HITTING, wants)));
        Work work = plan.work();
        int high = work.target("first-two-steps").orElseThrow().weight();
        int inside = work.target("inside-step-redirect").orElseThrow().weight();
        assertThat(high).isGreaterThan(inside);
        assertThat(work.targets()).allSatisfy(t -> assertThat(t.weight()).isLessThanOrEqualTo(high));
        assertThat(work.target("rush-plan")).isEmpty();
        assertThat(work.target("set-recognition")).isEmpty();
        assertThat(work.left())
                .anyMatch(l -> l.finding().equals("one-move-rusher") && l.why().equals("Left out by hand."));
        assertThat(refused(HITTING, new PlanRequest.Wants(List.of("no-such"), List.of(), List.of(), List.of())))
                .singleElement()
                .asString()
                .contains("no-such");
    }

    @Test
    void matters_of_safety_open_the_block_and_keep_full_contact_away_while_they_are_left_out() {
        Assessment his = withOneCrown(player("Lucan Whitlow"));
        Plan plan = made(PLANNER.plan(his, request(2, 3, HITTING, PlanRequest.Wants.OPEN)));
        Work.Target safety = plan.work().targets().stream()
                .filter(t -> t.role() == Work.Role.SAFETY)
                .findFirst()
                .orElseThrow();
        assertThat(plan.weeks().get(0).sessions().get(0).blocks())
                .extracting(Plan.Block::skill)
                .contains(safety.skill());
        assertThat(plan.work().targets()).allSatisfy(t -> assertThat(t.weight()).isLessThanOrEqualTo(safety.weight()));

        PlanRequest.Wants without =
                new PlanRequest.Wants(List.of("inside-hand-placement"), safety.findings(), List.of(), List.of());
        Plan other = made(PLANNER.plan(his, request(2, 3, HITTING, without)));
        assertThat(other.frame().notes()).anyMatch(note -> note.contains("a matter of safety was left out by hand"));
        assertThat(other.task().limits().approvedRank())
                .isLessThan(other.task().limits().contactRank());
    }

    @Test
    void where_nothing_keeps_all_limits_it_says_which_clash_and_what_would_have_to_give() {
        PlanAnswer answer = PLANNER.plan(
                player("Lucan Whitlow"),
                request(2, 3, HITTING, fixed(new Wish.Pin(0, FOOTPRINT), new Wish.Leave(FOOTPRINT))));
        assertThat(answer).isInstanceOf(PlanAnswer.Impossible.class);
        PlanAnswer.Impossible no = (PlanAnswer.Impossible) answer;
        assertThat(no.clash()).anyMatch(rule -> rule.contains("what was decided by hand"));
        assertThat(no.giveUp()).singleElement().asString().startsWith("take back what was decided by hand");
    }

    @Test
    void a_drill_put_into_a_session_by_hand_stays_there_and_one_for_nothing_in_the_plan_is_told() {
        Plan plan = made(PLANNER.plan(
                player("Lucan Whitlow"),
                request(2, 3, HITTING, fixed(new Wish.Pin(2, FOOTPRINT), new Wish.Pin(0, "puller-path-shield")))));
        assertThat(plan.result().sessions().get(2)).contains(FOOTPRINT);
        assertThat(plan.frame().notes())
                .filteredOn(note -> note.contains("by hand"))
                .singleElement()
                .asString()
                .startsWith("\"puller path on shield\" was given a day by hand, but no skill of this plan");
    }

    /** One move and nothing behind it is no rate: it weighs by what film counts of the skill that it shows to be missing. */
    @Test
    void a_gap_that_is_no_rate_weighs_by_how_far_the_skill_falls_short_on_film() {
        Assessment one = player("Tavish Mordell");
        Judged gap = LEAGUE.stream()
                .flatMap(man -> man.findings().stream())
                .filter(j ->
                        j.finding().measure() != Measure.RATE && j.verdict().stands())
                .findFirst()
                .orElseThrow();
        Judged counted = one.finding("no-inside-counter").orElseThrow();
        TrainedSkill skill = PLANNER.training().skill("inside-step-redirect").orElseThrow();

        int unknown = Ranked.of(gap, skill, Optional.empty(), 4).score();
        int poor =
                Ranked.of(gap, skill, ShownSkill.of(with(counted, 28, 30)), 4).score();
        int good = Ranked.of(gap, skill, ShownSkill.of(with(counted, 2, 30)), 4).score();

        assertThat(poor).isGreaterThan(unknown);
        assertThat(unknown).isGreaterThan(good);
    }

    private static PlanRequest.Wants fixed(Wish... wishes) {
        return new PlanRequest.Wants(List.of("no-inside-counter"), List.of(), List.of(), List.of(wishes));
    }

    /** The same man, who once dropped his head into contact. */
    private static Assessment withOneCrown(Assessment one) {
        List<Judged> findings = one.findings().stream()
                .map(j -> j.finding().slug().equals("crown-first-contact") ? once(j) : j)
                .toList();
        return new Assessment(
                one.prospect(),
                one.reps(),
                one.games(),
                one.leftOut(),
                one.primary(),
                one.twoMoves(),
                findings,
                one.conclusions(),
                one.likelyDuties(),
                List.of());
    }

    private static Judged once(Judged j) {
        return with(j, 1, 20);
    }

    private static Judged with(Judged j, int events, int opportunities) {
        Outcome outcome = new Outcome(
                Verdict.LIKELY,
                new Rate(events, opportunities),
                OptionalDouble.of(0.05),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                false,
                List.of(),
                Optional.empty());
        return new Judged(
                j.finding(),
                outcome,
                j.games(),
                j.heavyOpponent(),
                j.bounds(),
                j.conditional(),
                j.mixedWith(),
                j.rootedIn(),
                j.evidence(),
                "As counted by hand.");
    }

    private static PlanRequest.Rules limits(Map<String, BigDecimal> stricter) {
        return new PlanRequest.Rules(
                HITTING.profile(),
                HITTING.checked(),
                HITTING.approved(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                false,
                stricter);
    }

    private static List<String> refused(PlanRequest.Rules rules) {
        return refused(rules, PlanRequest.Wants.OPEN);
    }

    private static List<String> refused(PlanRequest.Rules rules, PlanRequest.Wants wants) {
        PlanAnswer answer = PLANNER.plan(player("Lucan Whitlow"), request(2, 2, rules, wants));
        return ((PlanAnswer.Refused) answer).reasons();
    }

    private static Assessment player(String name) {
        return LEAGUE.stream()
                .filter(one -> one.prospect().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static PlanRequest request(int weeks, int sessions, PlanRequest.Rules rules, PlanRequest.Wants wants) {
        PlanRequest.Time time = new PlanRequest.Time(
                Optional.empty(),
                OptionalInt.of(weeks),
                OptionalInt.of(sessions),
                OptionalInt.empty(),
                Optional.empty());
        return new PlanRequest(time, PlanRequest.There.OPEN, rules, wants);
    }

    private static Plan made(PlanAnswer answer) {
        assertThat(answer).as(answer.toString()).isInstanceOf(PlanAnswer.Made.class);
        return ((PlanAnswer.Made) answer).plan();
    }
}
