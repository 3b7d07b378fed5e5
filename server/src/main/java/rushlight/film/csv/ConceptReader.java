package rushlight.film.csv;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rushlight.words.Meaning;
import rushlight.words.Vocabulary;

/** A column that takes concepts of the book, by slug or by any label. */
final class ConceptReader implements ValueReader {
    private final String column;
    private final Vocabulary vocabulary;
    private final Function<String, List<String>> columnsThatKnow;

    /** Reads for one column; {@code columnsThatKnow} names the columns that would take a value. */
    ConceptReader(String column, Vocabulary vocabulary, Function<String, List<String>> columnsThatKnow) {
        this.column = column;
        this.vocabulary = vocabulary;
        this.columnsThatKnow = columnsThatKnow;
    }

    @Override
    public Optional<String> read(String text, RowNotes notes) {
        Meaning meaning = vocabulary.meaning(text);
        if (meaning instanceof Meaning.One one) {
            return Optional.of(one.slug());
        }
        if (meaning instanceof Meaning.Several several) {
            ambiguous(column, text, several, notes);
        } else {
            unknown(text, notes);
        }
        return Optional.empty();
    }

    static void ambiguous(String column, String text, Meaning.Several several, RowNotes notes) {
        notes.fault(
                column,
                text,
                Fault.Code.AMBIGUOUS_LABEL,
                "\"" + text + "\" has more than one meaning here; write " + Sentences.or(several.slugs()) + ".",
                several.slugs());
    }

    private void unknown(String text, RowNotes notes) {
        List<String> elsewhere = columnsThatKnow.apply(text);
        if (!elsewhere.isEmpty()) {
            notes.fault(
                    column,
                    text,
                    Fault.Code.OTHER_COLUMN,
                    "\"" + text + "\" belongs in the column " + Sentences.or(elsewhere) + ".",
                    List.of());
            return;
        }
        List<String> near = notes.suggestions().forValue(column, text, () -> vocabulary.nearest(text, 3));
        notes.fault(
                column,
                text,
                Fault.Code.UNKNOWN_LABEL,
                "there is no \"" + text + "\"" + Sentences.didYouMean(near),
                near);
    }
}
