package rushlight.web;

import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.Optional;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.archive.Plans;
import rushlight.findings.Assessment;
import rushlight.plan.PlanAnswer;
import rushlight.plan.PlanByHand;
import rushlight.report.prospect.Material;
import rushlight.store.KeptPlans.Kept;

/**
 * The plan that stands for a man: the one that somebody kept, held against the film as it is now; where none is kept, or it no
 * longer keeps to every limit, one that is made.
 */
public final class StandingPlans implements ReportPlans {
    private final Book book;
    private final Plans kept;
    private final ReportPlans made;

    /**
     * Those of an open folder.
     *
     * @param made what makes a plan where none stands
     */
    public StandingPlans(Archive archive, ReportPlans made) {
        this.book = archive.book();
        this.kept = Plans.of(archive);
        this.made = made;
    }

    @Override
    public Material.Planned of(Assessment assessment) {
        return kept.standing(assessment.prospect().id())
                .map(one -> of(assessment, one))
                .orElseGet(() -> made.of(assessment));
    }

    private Material.Planned of(Assessment assessment, Kept one) {
        String which = "The plan" + (one.by().isEmpty() ? "" : " of " + one.by()) + ", kept on "
                + one.when().atZone(ZoneOffset.UTC).toLocalDate();
        Optional<PlanByHand> held = held(assessment, one);
        if (held.isEmpty()) {
            return instead(
                    assessment, which + ", was kept by another edition of the program and cannot be read by this one.");
        }
        if (held.get() instanceof PlanByHand.Held now) {
            return now.breaches().isEmpty()
                    ? new Material.Planned(new PlanAnswer.Made(now.plan()), which + ".")
                    : noLonger(
                            assessment,
                            which,
                            PlanCheckAnswer.sentence(now.breaches().get(0)));
        }
        return noLonger(
                assessment, which, ((PlanByHand.Refused) held.get()).reasons().get(0));
    }

    private Material.Planned noLonger(Assessment assessment, String which, String why) {
        return instead(assessment, which + ", no longer holds on the film as it is now: " + why);
    }

    private Material.Planned instead(Assessment assessment, String why) {
        PlanAnswer answer = made.of(assessment).answer();
        return new Material.Planned(answer, answer instanceof PlanAnswer.Made ? why + " This one is made anew." : why);
    }

    /** The kept sessions held against everything a plan keeps to; empty where they cannot be read. */
    private Optional<PlanByHand> held(Assessment assessment, Kept one) {
        try {
            PlanSheet sheet = PlanSheet.of(one);
            return Optional.of(book.planner()
                    .byHand(
                            assessment,
                            Json.read(one.request().getBytes(StandardCharsets.UTF_8), PlanIn.class)
                                    .request(),
                            sheet.workOn().stream().map(PlanSheet.Target::skill).toList(),
                            sheet.weeks().stream()
                                    .flatMap(week -> week.sessions().stream())
                                    .map(session -> session.blocks().stream()
                                            .map(PlanWeek.Block::exercise)
                                            .toList())
                                    .toList(),
                            sheet.proof().stream()
                                    .mapToInt(PlanSheet.Proof::bound)
                                    .findFirst()));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
