package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.rdf.model.Model;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words that mean more than one thing in the trade: each thing they may mean says how to tell. Source: common practice. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WordsTest {
    private final Model facts = OntologyFiles.facts();

    @ParameterizedTest
    @CsvSource({
        "swim, arm-over inside-arm-over club-swim",
        "hump, hump inside-spin forearm-lift",
        "ice pick, inside-spin",
        "flipper, forearm-lift",
        "swipe, hand-swipe",
        "swat, hand-swipe two-hand-swipe",
        "slap, hand-swipe two-hand-swipe",
        "two-hand chop, two-hand-swipe",
        "chop, chop cut-block",
        "stab, long-arm push-pull",
        "snatch, snatch-trap blocker-snatch",
        "trap, snatch-trap trap-block trap-play blocker-snatch",
        "pull, push-pull",
        "power rush, bull-rush power-move speed-to-power",
        "jet, speed-rush get-off",
        "under, up-and-under under-set",
        "inside move, inside-move",
        "bend, bend bend-the-corner dip",
        "get-off, get-off get-off-phase",
        "ghost, ghost",
        "loop, loop nose-loop loop-long",
        "twist, t-t-twist game-role-move",
        "stick, inside-stick long-stick",
        "spike, inside-stick spike",
        "pinch, pinch",
        "crash, penetrate",
        "peel, peel",
        "hop, anchor-hop euro-step",
        "set, jump-set short-set",
        "chip, chip-by-back chip-by-tight-end",
        "contain, contain-rush contain contain-force-assignment",
        "force, force contain contain-force-assignment",
        "crosses, cross-face cross-face-run",
        "spin back, late-spin",
        "hands, scissors",
        "two-piece, cross-chop",
        "chase, flat-chase trail-chase",
        "BCR, bcr-assignment boot-counter-reverse-check",
        "box, box-assignment box-and-squeeze",
        "squeeze, squeeze-down box-and-squeeze pinch",
        "hook, reach-block hook-curl-drop",
        "cut, cut-block cutback-lane cutoff-block",
        "wrap, pull-and-wrap-block wrap",
        "wide, wide-shade wing-alignment",
        "wing, wing wing-alignment",
        "7, technique-7",
        "6, technique-6",
        "9, technique-9",
        "strong, strong-side"
    })
    void each_thing_a_word_may_mean_says_how_to_tell(String word, String terms) {
        for (String term : terms.split(" ", -1)) {
            assertThat(rows("""
                            SELECT ?text WHERE {
                              { ?told rl:about kb:TERM ; rl:part rl:howToTell ; rl:text ?text } UNION
                              { kb:TERM skos:scopeNote ?text }
                              FILTER CONTAINS(LCASE(?text), LCASE("WORD")) }""".replace("TERM", term).replace("WORD", word)))
                    .as(word + " as " + term)
                    .isNotEmpty();
        }
    }

    @Test
    void a_scope_note_is_a_sentence() {
        assertThat(rows("""
                        SELECT ?note WHERE { ?term skos:scopeNote ?note
                          FILTER (!REGEX(?note, "^[\\"A-Z0-9].*[.?!\\"]$") || REGEX(?note, "^\\"[^\\"]+\\": ")) }""")).isEmpty();
    }

    private List<String> rows(String query) {
        return OntologyFiles.rows(facts, QueryFactory.create(OntologyFiles.PREFIXES + query));
    }
}
