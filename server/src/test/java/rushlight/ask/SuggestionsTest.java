package rushlight.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.index.IndexState;
import rushlight.index.RepIndex;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Facets;
import rushlight.situation.LogFacts;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SuggestionsTest {
    private static final Ontology BOOK = Ontology.packaged();
    private static final Taxonomy TAXONOMY = Taxonomy.of(BOOK);
    private static final Suggestions SUGGESTIONS =
            Suggestions.of(TAXONOMY, List.of("edge players who wrong-arm kick-outs"));

    @Test
    void terms_are_suggested_by_any_of_their_names_once() {
        assertThat(ids(SUGGESTIONS.terms("bull r", Set.of(), 8)))
                .contains("bull-rush")
                .doesNotHaveDuplicates();
        assertThat(ids(SUGGESTIONS.terms("wrong a", Set.of(), 8))).contains("wrong-arm");
    }

    @Test
    void a_cell_gets_terms_of_its_own_classes_alone() {
        assertThat(SUGGESTIONS.terms("ki", Set.of("RunBlock"), 8))
                .isNotEmpty()
                .allMatch(s -> TAXONOMY.concept(s.id()).orElseThrow().classes().contains("RunBlock"));
    }

    @Test
    void the_question_box_gets_players_first_then_terms_and_questions() {
        try (RepIndex index = RepIndex.inMemory(Facets.of(BOOK, TAXONOMY), List.of())) {
            Prospect prospect = Prospect.named("edgar-vale", "Edgar Vale");
            Game game = new Game("g", "G", Optional.empty(), "", "");
            Log log = new Log("Eyes", prospect, game, Set.of(), List.of(), new Log.Source("a.csv", "00"));
            index.rebuild(Stream.of(new LogFacts(log, List.of())), List.of(prospect), new IndexState(1, "book"));

            List<Suggestions.Suggestion> found =
                    index.read(List.of(), footage -> SUGGESTIONS.toAsk(footage, "edg", 30));

            assertThat(found.get(0).kind()).isEqualTo(Suggestions.PROSPECT);
            assertThat(found).extracting(Suggestions.Suggestion::text).contains("Edgar Vale");
            List<Suggestions.Suggestion> questions =
                    index.read(List.of(), footage -> SUGGESTIONS.toAsk(footage, "edge players wr", 30));
            assertThat(questions).extracting(Suggestions.Suggestion::kind).contains(Suggestions.QUESTION);
            List<Suggestions.Suggestion> none = index.read(List.of(), footage -> SUGGESTIONS.toAsk(footage, "", 8));
            assertThat(none).isEmpty();
        }
    }

    private static List<String> ids(List<Suggestions.Suggestion> found) {
        return found.stream().map(Suggestions.Suggestion::id).toList();
    }
}
