package rushlight.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Sessions as a person changed them, with what they were made from.
 *
 * @param request what the plan was asked for with
 * @param skills slugs of the skills that the plan works on
 * @param sessions slugs of drills and checks for each session, in the order of the plan
 * @param note why it is kept
 * @param by who keeps it
 */
public record PlanChangeIn(
        @Nullable PlanIn request,
        @Nullable List<String> skills,
        @Nullable List<List<String>> sessions,
        @Nullable String note,
        @Nullable String by) {
    private static final int MOST_SESSIONS = 100;
    private static final int MOST_NAMES = 100;

    /** What was asked for. */
    public PlanIn asked() {
        return required("request", request);
    }

    /** The skills, none twice. */
    public List<String> worked() {
        return names(required("skills", skills));
    }

    /** The sessions. */
    public List<List<String>> changed() {
        List<List<String>> given = required("sessions", sessions);
        if (given.size() > MOST_SESSIONS) {
            throw new IllegalArgumentException("More than " + MOST_SESSIONS + " sessions are no plan.");
        }
        List<List<String>> changed = new ArrayList<>();
        for (List<String> session : given) {
            changed.add(names(required("sessions", session)));
        }
        return changed;
    }

    private static List<String> names(List<String> given) {
        if (given.size() > MOST_NAMES) {
            throw new IllegalArgumentException("A list has more than " + MOST_NAMES + " names.");
        }
        given.forEach(name -> required("name", name));
        return List.copyOf(given);
    }

    private static <T> T required(String field, @Nullable T given) {
        if (given == null) {
            throw new IllegalArgumentException("\"" + field + "\" is missing.");
        }
        return given;
    }
}
