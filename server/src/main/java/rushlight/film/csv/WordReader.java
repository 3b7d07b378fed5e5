package rushlight.film.csv;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.knowledge.Column;
import rushlight.words.LabelKey;
import rushlight.words.NearestLabels;

/** A column that takes one of a few words, whatever their capitals and hyphens. */
final class WordReader implements ValueReader {
    private static final int FEW = 8;

    private final String column;
    private final List<String> words;
    private final Map<String, String> byWord = new HashMap<>();
    private final Map<String, String> byKey = new HashMap<>();
    private final NearestLabels nearest;

    WordReader(Column column) {
        this.column = column.name();
        this.words = column.oneOf();
        words.forEach(word -> {
            byWord.put(word, word);
            byKey.put(LabelKey.of(word), word);
        });
        this.nearest = NearestLabels.words(words);
    }

    @Override
    public Optional<String> read(String text, RowNotes notes) {
        String exact = byWord.get(text);
        String word = exact != null ? exact : byKey.get(LabelKey.of(text));
        if (word == null) {
            List<String> near = notes.suggestions().forValue(column, text, () -> nearest.to(text, 3));
            String end = words.size() <= FEW ? "; write " + Sentences.or(words) + "." : Sentences.didYouMean(near);
            notes.fault(column, text, Fault.Code.UNKNOWN_WORD, "there is no \"" + text + "\"" + end, near);
        }
        return Optional.ofNullable(word);
    }
}
