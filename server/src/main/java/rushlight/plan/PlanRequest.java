package rushlight.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What a coach asks a plan for. What he leaves open is taken from the preset, the profile and the house.
 *
 * @param time how much of it there is
 * @param there who and what is there
 * @param rules whose rules hold, and what has been approved
 * @param wants what is to be worked on
 */
public record PlanRequest(Time time, There there, Rules rules, Wants wants) {
    /**
     * How much time there is.
     *
     * @param preset slug of the weeks to start from
     * @param weeks weeks of the block, from 1 to {@value Time#MOST_WEEKS}
     * @param sessions sessions a week, at most the days of the preset
     * @param minutes minutes of a session; those of the preset's days where empty
     * @param start the first day; no dates are told where empty
     */
    public record Time(
            Optional<String> preset,
            OptionalInt weeks,
            OptionalInt sessions,
            OptionalInt minutes,
            Optional<LocalDate> start) {
        /** The longest block. */
        public static final int MOST_WEEKS = 12;

        /** Nothing said. */
        public static final Time OPEN = new Time(
                Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty());
    }

    /**
     * Who and what is there.
     *
     * @param people the men of a session, himself among them; those of the preset's days where empty
     * @param equipment slugs of what is there; all but what the preset's days lack where empty
     */
    public record There(OptionalInt people, Optional<Set<String>> equipment) {
        /** Nothing said. */
        public static final There OPEN = new There(OptionalInt.empty(), Optional.empty());

        public There {
            equipment = equipment.map(Set::copyOf);
        }
    }

    /**
     * Whose rules hold, and what has been approved. Numbers may be stricter than those of the book, never looser.
     *
     * @param profile slug of the profile; rules not known where empty
     * @param checked when somebody in charge last held the profile against the rules in force
     * @param approved slug of the highest contact that coach and licensed medical staff have approved; the heaviest without
     *     another player where empty
     * @param contact minutes of full contact that the plan may use in a week
     * @param campDay the day of heat acclimatization on which the first session falls, from 1; past it where empty
     * @param afterBreak whether he comes back after two weeks off or more
     * @param stricter own numbers by the kind of limit
     */
    public record Rules(
            Optional<String> profile,
            Optional<LocalDate> checked,
            Optional<String> approved,
            OptionalInt contact,
            OptionalInt campDay,
            boolean afterBreak,
            Map<String, BigDecimal> stricter) {
        /** Nothing said. */
        public static final Rules OPEN = new Rules(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                false,
                Map.of());

        public Rules {
            stricter = Map.copyOf(stricter);
        }
    }

    /**
     * What is to be worked on.
     *
     * @param workOn slugs of findings or skills that come first, in this order
     * @param leaveOut slugs of findings or skills that stay out
     * @param has slugs of skills that staff has seen or screened: they count as there
     * @param fixed drills at sessions, decided by hand
     */
    public record Wants(List<String> workOn, List<String> leaveOut, List<String> has, List<Wish> fixed) {
        /** Nothing said. */
        public static final Wants OPEN = new Wants(List.of(), List.of(), List.of(), List.of());

        public Wants {
            workOn = List.copyOf(workOn);
            leaveOut = List.copyOf(leaveOut);
            has = List.copyOf(has);
            fixed = List.copyOf(fixed);
        }
    }

    /** Everything left open. */
    public static PlanRequest open() {
        return new PlanRequest(Time.OPEN, There.OPEN, Rules.OPEN, Wants.OPEN);
    }
}
