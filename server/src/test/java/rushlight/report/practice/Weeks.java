package rushlight.report.practice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rushlight.report.practice.Practice.Block;
import rushlight.report.practice.Practice.Session;
import rushlight.report.practice.Practice.Week;

/** Two invented weeks. */
final class Weeks {
    static final LocalDate MONDAY = LocalDate.of(2026, 8, 3);
    static final String SHOULDER = "Eyes up, head out of the way, near shoulder; the first bad one ends the set.";

    private Weeks() {}

    static Practice two() {
        return of(Optional.of(MONDAY));
    }

    static Practice undated() {
        return of(Optional.empty());
    }

    private static Practice of(Optional<LocalDate> start) {
        return new Practice(
                "tam-orrin",
                "Tam Orrin",
                "Two weeks in season; worked on: misses tackles in the edge lane, hooked on reach blocks",
                "Certified coaches, licensed medical staff and the local rules decide; nothing here is approved by"
                        + " itself.",
                List.of("Any sign of a head injury ends the session for him at once."),
                List.of(
                        new Week(
                                1,
                                List.of(
                                        new Session(1, "Monday", day(start, 0), List.of(puller(), tackle(), getOff())),
                                        new Session(2, "Tuesday", day(start, 1), List.of()),
                                        new Session(3, "Wednesday", day(start, 2), List.of(tackle(), thud())))),
                        new Week(2, List.of(new Session(4, "Monday", day(start, 7), List.of(getOff()))))),
                List.of("\"Missed at most 1 of the next 17 tackles he got to\" would clear it (from two games or"
                        + " more)."));
    }

    private static Optional<LocalDate> day(Optional<LocalDate> start, int later) {
        return start.map(monday -> monday.plusDays(later));
    }

    static Block puller() {
        return new Block(
                "puller path on the shield",
                "square shoulders at the line",
                "bag",
                5,
                0,
                6,
                "5 of 6 with the outside arm free; no step up the field, and the shoulders square \u2013"
                        + " \u201cheavy\u201d hands.",
                List.of("inside foot, inside shoulder", "eyes on the near hip"),
                List.of("Shield held away from the face."));
    }

    static Block tackle() {
        return new Block(
                "shield tackle fit at half speed",
                "shoulder-led tackling",
                "bag",
                6,
                0,
                8,
                "8 of 8",
                List.of(),
                List.of(SHOULDER));
    }

    static Block thud() {
        return new Block(
                "puller read, thud",
                "square shoulders at the line",
                "thud",
                6,
                6,
                0,
                "",
                List.of(),
                List.of(SHOULDER, "Nobody goes to the ground."));
    }

    static Block getOff() {
        return new Block("get-off on a moved ball", "get-off", "air", 4, 0, 10, "8 of 10", List.of(), List.of());
    }
}
