package rushlight.report.prospect;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A part of a report that its author may leave out or move. Safety, the limits of the tape and the cautions are none. */
public enum Part {
    SUMMARY("Summary"),
    FIGURES("Where he lines up, what follows what"),
    STRENGTHS("What he does well"),
    GAPS("What he lacks"),
    DUTY("If and then: what hangs on his duty"),
    ROLES("Which job the film shows"),
    PROJECTION("What he will be, as evaluators judge it"),
    PLAN("What to work on"),
    SAID("What was said of him"),
    OPEN("Still open, and cleared"),
    LINES("House lines"),
    READERS("Who read which games");

    private final String title;

    Part(String title) {
        this.title = title;
    }

    /** The word for it in files and addresses. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Its heading. */
    public String title() {
        return title;
    }

    /** The part of this word. */
    public static Optional<Part> of(String slug) {
        return Stream.of(values()).filter(part -> part.slug().equals(slug)).findFirst();
    }

    /** All of them in the order of a report that nobody rearranged. */
    public static List<Part> all() {
        return List.of(values());
    }
}
