package rushlight.report.book;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** Writes the whole book into a folder: all of it or nothing. */
public final class BookPublisher {
    /** What came of it. */
    public sealed interface Outcome {
        /** Written: how many files, and how many of them pages of concepts. */
        record Written(int files, int concepts) implements Outcome {}

        /** Nothing was written, and why, in sentences for a person. */
        record Refused(List<String> reasons) implements Outcome {
            public Refused {
                reasons = List.copyOf(reasons);
            }
        }
    }

    private BookPublisher() {}

    /**
     * Publishes a book.
     *
     * @param folder where to; it must be new, empty, or hold a book that this wrote
     * @param replace whether a book that lies there may be replaced
     */
    public static Outcome publish(Ontology ontology, Taxonomy taxonomy, Path folder, boolean replace) {
        OutputFolder output = new OutputFolder(folder);
        List<String> objections = output.objections(replace);
        if (!objections.isEmpty()) {
            return new Outcome.Refused(objections);
        }
        SortedMap<String, byte[]> files = Site.of(ontology, taxonomy);
        List<String> inTheWay = output.inTheWay(files.keySet());
        if (!inTheWay.isEmpty()) {
            return new Outcome.Refused(inTheWay);
        }
        output.write(files);
        return new Outcome.Written(files.size(), taxonomy.concepts().size());
    }
}
