package rushlight.notes;

import java.util.Set;
import rushlight.knowledge.BrokenBookException;
import rushlight.words.Lexicon;

/** Small words by what they are taken for, of the word list {@code narration-words}. */
final class SmallWords {
    private SmallWords() {}

    /**
     * The words of a use.
     *
     * @throws BrokenBookException where the list has none
     */
    static Set<String> of(String use) {
        return Lexicon.named("narration-words", "use", "words").rows().stream()
                .filter(row -> row.get(0).equals(use))
                .map(row -> Set.of(row.get(1).split("\\|", -1)))
                .findFirst()
                .orElseThrow(
                        () -> new BrokenBookException("lexicon/narration-words.tsv has no words for " + use + "."));
    }
}
