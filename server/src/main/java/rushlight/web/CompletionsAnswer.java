package rushlight.web;

import java.util.List;
import rushlight.words.Completions.Completion;

/** What a text that is still being typed may become. */
public record CompletionsAnswer(List<Item> completions) {
    /** One thing it may become. */
    public record Item(String slug, String label, String kind, String matched, String gloss) {}

    /** A concept. */
    public static Item item(Completion completion) {
        var concept = completion.concept();
        return new Item(
                concept.slug(),
                concept.label(),
                concept.classes().stream().sorted().findFirst().orElse(""),
                completion.matched(),
                concept.definition());
    }

    /** A plain word. */
    public static Item item(String word) {
        return new Item(word, word.replace('-', ' '), "word", word, "");
    }
}
