package rushlight.cli;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.knowledge.Drill;
import rushlight.knowledge.PlanNotice;
import rushlight.knowledge.Taxonomy;
import rushlight.plan.Plan;
import rushlight.plan.PlanAnswer;
import rushlight.plan.RetestTarget;
import rushlight.plan.Work;

/** A plan as a position coach reads it, week by week and session by session, with who decides on top. */
final class PlanText {
    private final Taxonomy taxonomy;

    PlanText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    String of(Plan plan) {
        Page page = new Page();
        Plan.Frame frame = plan.frame();
        int sessions = plan.weeks().stream().mapToInt(w -> w.sessions().size()).sum();
        String left = plan.prospect().name();
        String right = Numbers.of(plan.weeks().size(), "week") + ", " + Numbers.of(sessions, "session") + ", from \""
                + frame.label() + "\"";
        page.line(left + " ".repeat(Math.max(2, Page.WIDTH - left.length() - right.length())) + right);
        page.line("=".repeat(Page.WIDTH));
        page.wrapped("", "", plan.decides());
        page.blank().line("NOT APPROVED until each of these has a name and a date:");
        notices(page, plan, PlanNotice.Part.APPROVAL, "  [ ] ", "      ");
        page.blank();
        page.wrapped(
                "Rules: ", "       ", frame.profile() + ". Highest contact in this plan: " + frame.approved() + ".");
        frame.notes().forEach(note -> page.wrapped("  - ", "    ", note));
        work(page, plan.work());
        Set<String> shown = new HashSet<>();
        for (Plan.Week week : plan.weeks()) {
            page.blank().line("WEEK " + week.week());
            week.sessions().forEach(session -> session(page, session, shown));
        }
        page.blank().wrapped("", "", sentence(plan.result().words()));
        retest(page, plan.retest());
        page.blank().line("In every session");
        notices(page, plan, PlanNotice.Part.RULE, "  - ", "    ");
        page.blank().line("Stop now");
        notices(page, plan, PlanNotice.Part.STOP, "  ! ", "    ");
        hazards(page, plan);
        page.blank().line("Limits it keeps to");
        frame.held().forEach(held -> page.wrapped("  - ", "    ", held.what() + ": " + held.text() + "."));
        left(page, plan.work());
        return page.toString();
    }

    /** Why there is no plan. */
    String none(String name, PlanAnswer answer) {
        Page page = new Page();
        if (answer instanceof PlanAnswer.Refused no) {
            page.wrapped("", "", "No plan for " + name + ":");
            no.reasons().forEach(reason -> page.wrapped("  - ", "    ", reason));
        } else if (answer instanceof PlanAnswer.Impossible no) {
            page.wrapped("", "", "No plan for " + name + ":");
            no.reasons().forEach(reason -> page.wrapped("  - ", "    ", reason));
            if (!no.clash().isEmpty()) {
                page.wrapped("These cannot hold together: ", "    ", String.join("; ", no.clash()) + ".");
            }
            if (!no.giveUp().isEmpty()) {
                page.wrapped("The least that would have to give: ", "    ", String.join("; ", no.giveUp()) + ".");
            } else if (!no.clash().isEmpty()) {
                page.wrapped("", "", "Nothing that may give way would help: more minutes, men or days would.");
            }
            left(page, no.work());
        }
        return page.toString();
    }

    private static void notices(Page page, Plan plan, PlanNotice.Part part, String first, String rest) {
        plan.notices().stream()
                .filter(notice -> notice.part() == part)
                .forEach(notice -> page.wrapped(first, rest, notice.text()));
    }

    private void work(Page page, Work work) {
        page.blank().line("What he works on, in teaching order");
        int number = 0;
        for (Work.Target target : work.targets()) {
            number++;
            page.wrapped("  " + number + ". ", "     ", target.label() + " (" + role(target) + ")");
            target.because().forEach(because -> page.wrapped("     ", "     ", because));
        }
        if (!work.look().isEmpty()) {
            page.blank().line("Look at these in the first week, before anything heavier");
            work.look().forEach(look -> page.wrapped("  - ", "    ", look.label() + ": " + look.why()));
        }
    }

    private static String role(Work.Target target) {
        return switch (target.role()) {
            case SAFETY -> "safety, before everything";
            case GAP -> "gap";
            case PREREQUISITE -> "groundwork";
        };
    }

    private void session(Page page, Plan.Session session, Set<String> shown) {
        StringBuilder head = new StringBuilder("  ").append(session.dayName());
        session.date().ifPresent(date -> head.append(' ').append(date));
        head.append(": ")
                .append(session.minutes())
                .append(" of ")
                .append(session.slot().minutes())
                .append(" min, ")
                .append(
                        session.contactMinutes() == 0
                                ? "no full contact in it"
                                : session.contactMinutes() + " min full contact");
        if (session.slot().teamContactMinutes() > 0) {
            head.append("; the team has ")
                    .append(session.slot().teamContactMinutes())
                    .append(" min of it");
        }
        page.wrapped("", "    ", head.append(". ").append(session.because()).toString())
                .blank();
        int number = 0;
        for (Plan.Block block : session.blocks()) {
            number++;
            block(page, number, block, shown.add(block.exercise()));
        }
        if (session.blocks().isEmpty()) {
            page.line("     nothing: rest, or the team's own work");
        }
        page.blank();
    }

    private static void block(Page page, int number, Plan.Block block, boolean firstTime) {
        String in = "        ";
        page.wrapped(
                "     " + number + ". ",
                in,
                block.label() + " - " + block.minutes() + " min, contact: "
                        + block.level().label().toLowerCase(Locale.ROOT)
                        + (block.reps() > 0 ? ", " + Numbers.of(block.reps(), "rep") : "") + " - " + block.skillLabel()
                        + ", "
                        + block.because());
        if (block.check()) {
            page.wrapped(in, in, "Looked at in: " + block.drill().label() + ".");
        }
        if (!block.success().isEmpty()) {
            page.wrapped(in, in, "Good when: " + block.success());
        }
        if (firstTime) {
            block.points().forEach(point -> page.wrapped(in, in, "Say: " + point));
        }
        if (againstAMan(block)) {
            block.cautions().forEach(hazard -> page.wrapped(in + "! ", in + "  ", hazard.text()));
        } else if (!block.cautions().isEmpty()) {
            page.wrapped(
                    in,
                    in,
                    "Careful: "
                            + block.cautions().stream().map(Drill.Hazard::label).collect(Collectors.joining(", "))
                            + ".");
        }
    }

    /** Whether another player is hit: the level above bags and all heavier ones. */
    private static boolean againstAMan(Plan.Block block) {
        return block.level().rank() > 1;
    }

    private void retest(Page page, List<RetestTarget> targets) {
        if (targets.isEmpty()) {
            return;
        }
        page.blank().line("What the next games must show");
        targets.forEach(t -> page.wrapped("  - ", "    ", taxonomy.shown(t.finding()) + ": " + t.sentence()));
    }

    private static void hazards(Page page, Plan plan) {
        List<Drill.Hazard> all = plan.blocks()
                .flatMap(block -> block.cautions().stream())
                .distinct()
                .sorted((a, b) -> a.slug().compareTo(b.slug()))
                .toList();
        if (!all.isEmpty()) {
            page.blank().line("What can hurt");
            all.forEach(hazard -> page.wrapped("  ! ", "    ", sentence(hazard.label()) + " " + hazard.text()));
        }
    }

    private static void left(Page page, Work work) {
        if (work.left().isEmpty()) {
            return;
        }
        page.blank().line("Left out, and why");
        work.left().forEach(left -> page.wrapped("  - ", "    ", left.label() + ": " + left.why()));
    }

    private static String sentence(String words) {
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toUpperCase(Locale.ROOT)
                        + words.substring(1)
                        + (words.endsWith(".") ? "" : ".");
    }
}
