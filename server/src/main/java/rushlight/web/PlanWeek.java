package rushlight.web;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import rushlight.knowledge.Drill;
import rushlight.plan.Plan;

/**
 * A week of a plan as programs read it.
 *
 * @param week its number, from 1
 * @param sessions its sessions in order
 */
public record PlanWeek(int week, List<Session> sessions) {
    public PlanWeek {
        sessions = List.copyOf(sessions);
    }

    /** A session, numbered from 1 within its week; {@code place} from 0 within the plan. */
    public record Session(
            int session,
            int place,
            String day,
            Optional<String> date,
            int minutes,
            int free,
            int contactMinutes,
            int teamContactMinutes,
            int people,
            String because,
            List<Block> blocks) {
        public Session {
            blocks = List.copyOf(blocks);
        }
    }

    /** One set, or a check. */
    public record Block(
            String exercise,
            String drill,
            String label,
            boolean check,
            String skill,
            String level,
            List<String> findings,
            int minutes,
            int contactMinutes,
            int reps,
            String success,
            List<String> points,
            List<String> cautions,
            String because) {
        public Block {
            Objects.requireNonNull(exercise);
        }
    }

    /** A week of a plan. */
    static PlanWeek of(Plan.Week week) {
        List<Session> sessions = new ArrayList<>();
        for (Plan.Session s : week.sessions()) {
            sessions.add(new Session(
                    sessions.size() + 1,
                    s.place(),
                    s.dayName(),
                    s.date().map(Object::toString),
                    s.minutes(),
                    s.slot().minutes(),
                    s.contactMinutes(),
                    s.slot().teamContactMinutes(),
                    s.slot().people(),
                    s.because(),
                    s.blocks().stream().map(PlanWeek::block).toList()));
        }
        return new PlanWeek(week.week(), sessions);
    }

    /** A day of the week as people write it. */
    static String name(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private static Block block(Plan.Block b) {
        return new Block(
                b.exercise(),
                b.drill().slug(),
                b.label(),
                b.check(),
                b.skill(),
                b.level().slug(),
                b.findings(),
                b.minutes(),
                b.contactMinutes(),
                b.reps(),
                b.success(),
                b.points(),
                b.cautions().stream().map(Drill.Hazard::slug).toList(),
                b.because());
    }
}
