package rushlight.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import rushlight.findings.FindingBook;
import rushlight.knowledge.BookCheck;
import rushlight.knowledge.BookCheck.Trouble;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.RefusedShapeException;
import rushlight.situation.Situations;

/** Everything that is wrong with the book of a data folder: what the shapes say, and what a user's own file clashes with. */
public final class OverlayCheck {
    private OverlayCheck() {}

    /** What to mend, the hard faults first; empty where the book is sound. */
    public static List<Trouble> of(Path folder) {
        Ontology book;
        try {
            book = Book.ontology(folder);
        } catch (BrokenBookException e) {
            return List.of(of(Book.OVERLAY, e));
        }
        OverlayStatements statements = OverlayStatements.of(book);
        List<Trouble> troubles = new ArrayList<>(statements.troubles());
        BookCheck.of(book).stream().filter(t -> !statements.settles(t)).forEach(troubles::add);
        troubles.addAll(deeper(folder, book, troubles.stream().allMatch(Trouble::warning)));
        return troubles.stream().distinct().sorted(Trouble.inOrder()).toList();
    }

    /** What shows only where the statements themselves are sound. */
    private static List<Trouble> deeper(Path folder, Ontology book, boolean soundSoFar) {
        List<Trouble> troubles = new ArrayList<>();
        try {
            Taxonomy taxonomy = Taxonomy.of(book);
            troubles.addAll(new LabelClashes(book, taxonomy).troubles());
            if (soundSoFar) {
                Map<String, String> refused = FindingBook.refused(book, taxonomy, Situations.of(book, taxonomy));
                refused.forEach((finding, why) -> troubles.add(new Trouble(
                        finding,
                        "Its reps cannot be counted. " + why,
                        false,
                        book.isLocal(Rl.concept(finding)),
                        book.line(Rl.concept(finding)))));
                if (refused.isEmpty()) {
                    Book.of(folder);
                }
            }
        } catch (BrokenBookException | RefusedShapeException | IllegalArgumentException e) {
            if (soundSoFar) {
                troubles.add(of(Book.OVERLAY, e));
            }
        }
        return troubles;
    }

    private static Trouble of(String file, RuntimeException e) {
        String message = String.valueOf(e.getMessage());
        String told = message.startsWith(file + " ") ? message.substring(file.length() + 1) : message;
        return new Trouble(file, told, false, true, OptionalLong.empty());
    }
}
