package rushlight.handbook;

import java.util.List;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.TeachingOrder;

/**
 * What to teach before a technique, in teaching order, as programs read it.
 *
 * @param concept slug of what is to be taught
 * @param ladder what it needs and itself, last; no rung stands before one it needs
 * @param cautions what can hurt on the way, and who decides
 */
public record TeachAnswer(String concept, List<TeachingOrder.Rung> ladder, List<Caution> cautions) {
    /** Cautions of one concept: of a rung, of a drill, or of the kind of drill it is. */
    public record Caution(String concept, List<String> drills, List<Lesson.Statement> statements) {}
}
