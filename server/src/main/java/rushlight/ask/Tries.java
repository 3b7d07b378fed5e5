package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rushlight.index.Texts;

/** What to ask instead where a question has no answer. */
final class Tries {
    private static final int NOTES = 3;

    private Tries() {}

    static List<String> of(Scene scene) {
        Asked asked = scene.asked();
        List<String> tries = new ArrayList<>();
        if (scene.footage().prospects().isEmpty()) {
            tries.add("Import a film log first, or look at the invented league.");
            return tries;
        }
        asked.filters().forEach(filter -> {
            if (filter instanceof Filter.AtLeast least) {
                tries.add("Ask without \"at least " + least.number() + "\".");
            } else if (filter instanceof Filter.Games || filter instanceof Filter.Opponents) {
                tries.add("Ask about all games.");
            } else if (filter instanceof Filter.Verdicts) {
                tries.add("Ask for what is only watched so far.");
            }
        });
        if (asked.isUncountable()) {
            tries.add("Ask what film shows: who does something, how often it wins, or who has a finding of the book.");
        }
        String unread = asked.unread().stream().map(Asked.Unread::word).collect(Collectors.joining(" "));
        if (!unread.isBlank()) {
            notes(scene, unread, tries);
        }
        if (tries.isEmpty()) {
            tries.add("Ask with a wider word, or leave one condition out.");
        }
        return tries;
    }

    /** Words nothing was made of may still stand in a note. */
    private static void notes(Scene scene, String words, List<String> tries) {
        List<Texts.NoteHit> hits = scene.footage().texts().notes(words, NOTES);
        String reps = hits.stream()
                .map(hit -> hit.rep().prospect().name() + ", "
                        + hit.rep().sighting().game() + ", "
                        + hit.rep().sighting().rep())
                .collect(Collectors.joining("; "));
        tries.add(
                hits.isEmpty()
                        ? "Nothing was made of: " + words + ". Say it in other words."
                        : "Nothing was made of: " + words + ". It stands in notes: " + reps + ".");
    }
}
