package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.uhighlight.Passage;
import org.apache.lucene.search.uhighlight.PassageFormatter;
import org.apache.lucene.search.uhighlight.UnifiedHighlighter;
import org.apache.lucene.search.uhighlight.WholeBreakIterator;

/** Finds the places in a text that a query asked for. It writes no markup, so nothing in the text can become any. */
final class Marker {
    private final UnifiedHighlighter highlighter = UnifiedHighlighter.builderWithoutSearcher(Prose.read())
            .withBreakIterator(WholeBreakIterator::new)
            .withFormatter(new Places())
            .build();

    /** The places as spans rather than as marked-up text. */
    private static final class Places extends PassageFormatter {
        @Override
        public List<Marked.Span> format(Passage[] passages, String content) {
            List<Marked.Span> places = new ArrayList<>();
            for (Passage passage : passages) {
                for (int i = 0; i < passage.getNumMatches(); i++) {
                    places.add(new Marked.Span(passage.getMatchStarts()[i], passage.getMatchEnds()[i]));
                }
            }
            return places.stream()
                    .distinct()
                    .sorted(Comparator.comparingInt(Marked.Span::from))
                    .toList();
        }
    }

    /** The text with what the query finds in this field. */
    Marked mark(String field, Query query, String text) {
        try {
            Object places = text.isEmpty() ? List.of() : highlighter.highlightWithoutSearcher(field, query, text, 1);
            List<Marked.Span> marks = new ArrayList<>();
            if (places instanceof List<?> some) {
                some.forEach(place -> marks.add((Marked.Span) place));
            }
            return new Marked(text, marks);
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }
}
