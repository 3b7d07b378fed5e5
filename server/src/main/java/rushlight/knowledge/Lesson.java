package rushlight.knowledge;

import java.util.List;
import java.util.Optional;

/**
 * One part of what a coach tells about a concept.
 *
 * @param part the part, such as {@code cue}
 * @param title what it is called
 * @param order its place in the telling
 * @param statements what he says, in order
 */
public record Lesson(String part, String title, int order, List<Statement> statements) {
    /**
     * One thing he says.
     *
     * @param id slug of the statement
     * @param about the concept it is about
     * @param text what he says
     * @param support {@code strong}, {@code fair} or {@code common-practice}
     * @param sources where it comes from
     * @param code whose rules a rule note is about
     * @param edition the year of the rule book it rests on
     * @param rulesRisk whether something once taught, or easily done, is a foul
     * @param local whether the user's own file tells it
     */
    public record Statement(
            String id,
            String about,
            String text,
            String support,
            List<Source> sources,
            Optional<String> code,
            Optional<String> edition,
            boolean rulesRisk,
            boolean local) {
        public Statement {
            sources = List.copyOf(sources);
        }
    }

    public Lesson {
        statements = List.copyOf(statements);
    }
}
