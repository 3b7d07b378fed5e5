package rushlight.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.archive.ImportedLeague;
import rushlight.archive.Plans;
import rushlight.findings.Assessment;
import rushlight.plan.Plan;
import rushlight.plan.PlanAnswer;
import rushlight.report.prospect.Material;
import rushlight.store.KeptPlans.Kept;

/** A coach made a plan and kept it: the report he hands in tells of that one. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class StandingPlansTest {
    private static final String ASKED = "{\"weeks\": 1, \"sessions\": 2}";

    @RegisterExtension
    private static final ImportedLeague LEAGUE = new ImportedLeague();

    @Test
    void a_plan_that_was_kept_stands_until_it_is_taken_back() {
        Assessment man = LEAGUE.archive().assess("lucan-whitlow").orElseThrow();
        Kept kept = keep(man, sheet(man));

        Material.Planned standing = plans().of(man);

        assertThat(standing.which()).isEqualTo("The plan of Ansel Reddick, kept on " + day(kept) + ".");
        assertThat(weeks(standing)).hasSize(1);
        Plans.of(LEAGUE.archive()).takeBack(kept, kept.version());
        assertThat(plans().of(man).which()).isEmpty();
    }

    @Test
    void one_that_breaks_a_limit_by_now_gives_way_to_a_new_one_and_says_so() {
        Assessment man = LEAGUE.archive().assess("teo-maravale").orElseThrow();
        PlanSheet sheet = sheet(man);
        PlanWeek week = sheet.weeks().get(0);
        PlanWeek.Session full = week.sessions().get(0);
        // Everything twice: as if a stricter rule had halved the minutes of a session.
        PlanWeek.Session twice = new PlanWeek.Session(
                full.session(),
                full.place(),
                full.day(),
                full.date(),
                full.minutes(),
                full.free(),
                full.contactMinutes(),
                full.teamContactMinutes(),
                full.people(),
                full.because(),
                List.of(full.blocks(), week.sessions().get(1).blocks()).stream()
                        .flatMap(List::stream)
                        .toList());
        keep(man, with(sheet, new PlanWeek(1, List.of(twice, week.sessions().get(1)))));

        Material.Planned standing = plans().of(man);

        assertThat(standing.which())
                .startsWith("The plan of Ansel Reddick, kept on ")
                .contains(", no longer holds on the film as it is now: Week 1 ")
                .endsWith(" This one is made anew.");
        assertThat(weeks(standing)).hasSizeGreaterThan(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"weeks\": \"four\"}", "{}", "{\"workOn\": [{}], \"weeks\": []}"})
    void one_of_another_edition_that_cannot_be_read_gives_way_too(String sheet) {
        Assessment man = LEAGUE.archive().assess("tavish-mordell").orElseThrow();
        Plans plans = Plans.of(LEAGUE.archive());
        plans.keep("tavish-mordell", new Plans.Written(ASKED, sheet, "", ""), plans.newest("tavish-mordell"));

        assertThat(plans().of(man).which())
                .contains(
                        "was kept by another edition of the program and cannot be read by this one. This one is made anew.");
    }

    private static ReportPlans plans() {
        return new StandingPlans(
                LEAGUE.archive(), ReportPlans.made(LEAGUE.archive().book()));
    }

    private static PlanSheet sheet(Assessment man) {
        PlanIn asked = Json.read(ASKED.getBytes(StandardCharsets.UTF_8), PlanIn.class);
        PlanAnswer.Made made =
                (PlanAnswer.Made) LEAGUE.archive().book().planner().plan(man, asked.request());
        return PlanSheet.of(made.plan());
    }

    private static Kept keep(Assessment man, PlanSheet sheet) {
        Plans.Written written = new Plans.Written(ASKED, Json.compact(sheet), "Ansel Reddick", "");
        return Plans.of(LEAGUE.archive()).keep(man.prospect().id(), written, 0).orElseThrow();
    }

    private static PlanSheet with(PlanSheet sheet, PlanWeek week) {
        return new PlanSheet(
                sheet.prospect(),
                sheet.id(),
                sheet.decides(),
                sheet.frame(),
                sheet.proof(),
                sheet.workOn(),
                sheet.look(),
                List.of(week),
                sheet.retest(),
                sheet.cautions(),
                sheet.left(),
                Optional.empty());
    }

    private static List<Plan.Week> weeks(Material.Planned planned) {
        return ((PlanAnswer.Made) planned.answer()).plan().weeks();
    }

    private static String day(Kept kept) {
        return kept.when().toString().substring(0, 10);
    }
}
