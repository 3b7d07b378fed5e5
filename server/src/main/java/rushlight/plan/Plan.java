package rushlight.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rushlight.film.Prospect;
import rushlight.knowledge.ContactLevel;
import rushlight.knowledge.Drill;
import rushlight.knowledge.PlanNotice;

/**
 * Weeks of practice for one man.
 *
 * @param prospect who
 * @param request what was asked for
 * @param frame the weeks and the numbers they keep to
 * @param work what is worked on, and why
 * @param weeks the weeks, each with its sessions
 * @param result the schedule, with what is proven of it
 * @param task what the schedule was made from: a change is held against it
 * @param retest what film must show afterwards
 * @param notices what stands on every plan; never empty
 */
public record Plan(
        Prospect prospect,
        PlanRequest request,
        Frame frame,
        Work work,
        List<Week> weeks,
        Schedule.Found result,
        PlanTask task,
        List<RetestTarget> retest,
        List<PlanNotice> notices) {
    /**
     * The weeks and the numbers they keep to.
     *
     * @param preset slug of the weeks it started from
     * @param label their name
     * @param season the part of the year
     * @param profile whose rules hold
     * @param approved name of the highest contact that has been approved
     * @param held the numbers, with where each comes from
     * @param notes what a coach should know of them
     */
    public record Frame(
            String preset,
            String label,
            String season,
            String profile,
            String approved,
            List<Held> held,
            List<String> notes) {
        public Frame {
            held = List.copyOf(held);
            notes = List.copyOf(notes);
        }
    }

    /**
     * A number that the plan keeps to.
     *
     * @param kind slug of what is limited
     * @param what the same in words
     * @param atMost whether it is the most, else the least
     * @param amount the number
     * @param unit its unit
     * @param from whose it is
     * @param source where that comes from
     */
    public record Held(
            String kind, String what, boolean atMost, double amount, String unit, String from, String source) {
        /** The number with where it comes from. */
        public String text() {
            return (atMost ? "at most " : "at least ") + counted() + " (" + from
                    + (source.isEmpty() ? "" : "; " + source) + ")";
        }

        private String counted() {
            String number = number(amount);
            return switch (unit) {
                case "rank" -> "rank " + number;
                case "percent" -> number + " %";
                default -> number + " " + (amount == 1 ? unit.replaceFirst("s$", "") : unit);
            };
        }

        private static String number(double amount) {
            return amount == Math.rint(amount) ? Long.toString((long) amount) : Double.toString(amount);
        }
    }

    /** A week, from 1, with its sessions in order. */
    public record Week(int week, List<Session> sessions) {
        public Week {
            sessions = List.copyOf(sessions);
        }
    }

    /**
     * One session.
     *
     * @param place its place in the plan, from 0
     * @param day the day of the week
     * @param date the date; empty where no start was told
     * @param slot what it has room for
     * @param because why the day is so
     * @param blocks what is done, in order
     */
    public record Session(
            int place, DayOfWeek day, Optional<LocalDate> date, Slot slot, String because, List<Block> blocks) {
        public Session {
            blocks = List.copyOf(blocks);
        }

        /** The day of the week in words. */
        public String dayName() {
            return PlanDays.name(day);
        }

        /** Minutes of all blocks. */
        public int minutes() {
            return blocks.stream().mapToInt(Block::minutes).sum();
        }

        /** Minutes of full contact of all blocks. */
        public int contactMinutes() {
            return blocks.stream().mapToInt(Block::contactMinutes).sum();
        }
    }

    /**
     * One set of a drill, or a check.
     *
     * @param exercise slug of the drill, or of the check
     * @param drill the drill; for a check the one it is looked at in
     * @param check whether it shows where the skill stands
     * @param skill slug of the skill
     * @param skillLabel its name
     * @param level the contact
     * @param minutes what it takes
     * @param contactMinutes the part of it that is full contact
     * @param reps reps of the set; 0 where nothing is said
     * @param success when it was good
     * @param points what the coach says
     * @param findings slugs of the findings it works on
     * @param because why it is there, in a few words
     */
    public record Block(
            String exercise,
            Drill drill,
            boolean check,
            String skill,
            String skillLabel,
            ContactLevel level,
            int minutes,
            int contactMinutes,
            int reps,
            String success,
            List<String> points,
            List<String> findings,
            String because) {
        public Block {
            points = List.copyOf(points);
            findings = List.copyOf(findings);
        }

        /** What it is called. */
        public String label() {
            return check ? "check: " + skillLabel : drill.label();
        }

        /** What is said against what can hurt; told wherever another player or a hit is involved. */
        public List<Drill.Hazard> cautions() {
            return drill.hazards();
        }
    }

    public Plan {
        weeks = List.copyOf(weeks);
        retest = List.copyOf(retest);
        notices = List.copyOf(notices);
        if (notices.stream().noneMatch(n -> n.part() == PlanNotice.Part.DECIDES)) {
            throw new IllegalArgumentException("No plan without the line that says who decides.");
        }
    }

    /** All blocks in order. */
    public Stream<Block> blocks() {
        return weeks.stream().flatMap(w -> w.sessions().stream()).flatMap(s -> s.blocks().stream());
    }

    /** The line that stands on every plan: who decides. */
    public String decides() {
        return notices.stream()
                .filter(n -> n.part() == PlanNotice.Part.DECIDES)
                .map(PlanNotice::text)
                .findFirst()
                .orElseThrow();
    }
}
