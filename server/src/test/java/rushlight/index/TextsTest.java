package rushlight.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Facets;
import rushlight.situation.LogFacts;
import rushlight.situation.Situation;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TextsTest {
    private static final Ontology BOOK = Ontology.packaged();
    private static final Taxonomy TAXONOMY = Taxonomy.of(BOOK);
    private static final Facets FACETS = Facets.of(BOOK, TAXONOMY);
    private static final IndexState STATE = new IndexState(1, "book");
    private static final Situation ANY = Situation.not(Situation.has("phase", "no such phase"));

    private final RepIndex index =
            RepIndex.inMemory(FACETS, TAXONOMY.concepts().stream().map(Page::of).toList());

    @AfterEach
    void close() {
        index.close();
    }

    @Test
    void a_page_is_found_by_every_label_it_has() {
        index.rebuild(Stream.of(), List.of(), STATE);
        for (Page page : TAXONOMY.ofClass("RushMove").stream().map(Page::of).toList()) {
            for (String name : page.names()) {
                assertThat(pages(name, 12))
                        .as(name)
                        .extracting(hit -> hit.page().id())
                        .contains(page.id());
            }
        }
    }

    @Test
    void what_goes_by_the_very_name_stands_first() {
        index.rebuild(Stream.of(), List.of(), STATE);

        assertThat(pages("Bull-Rush", 5).get(0).page().id()).isEqualTo("bull-rush");
        assertThat(pages("wrong arms", 5)).extracting(hit -> hit.page().id()).contains("wrong-arm");
    }

    @Test
    void a_note_is_found_by_its_words_and_says_where_they_stand() {
        index.rebuild(
                Stream.of(noted("p1", "His feet quit on contact. Quits again."), noted("p2", "Fine.")),
                List.of(),
                STATE);

        List<Texts.NoteHit> hits = notes("quitting feet", 5);

        assertThat(hits).hasSize(1);
        FoundRep rep = hits.get(0).rep();
        assertThat(rep.prospect().id()).isEqualTo("p1");
        assertThat(marked(rep.note())).containsExactly("feet", "quit", "Quits");
    }

    @Test
    void markup_in_a_note_is_text_and_stays_what_it_was() {
        String evil = "<script>alert('quit')</script> & <b>feet</b>";
        index.rebuild(Stream.of(noted("p1", evil)), List.of(), STATE);

        Marked note = notes("script feet", 5).get(0).rep().note();

        assertThat(note.text()).isEqualTo(evil);
        assertThat(marked(note)).containsExactly("script", "script", "feet");
    }

    @Test
    void a_part_of_the_film_is_counted_alone() {
        index.rebuild(
                Stream.of(noted("p1", "Feet quit."), noted("p2", "Feet kept going."), noted("p3", "")),
                List.of(),
                STATE);

        assertThat(counts(f -> f.counts(ANY, ANY)).keySet()).containsExactly("p1", "p2", "p3");
        assertThat(counts(f -> f.counts(ANY, ANY, Slice.of(List.of("p2", "p3")))))
                .containsOnlyKeys("p2", "p3");
        assertThat(counts(f -> f.counts(
                        ANY, ANY, new Slice(Set.of(), Set.of(), Set.of(), Set.of(), Optional.of("feet quits")))))
                .containsOnlyKeys("p1");
        assertThat(counts(f -> f.counts(
                        ANY, ANY, new Slice(Set.of(), Set.of("no-such-game"), Set.of(), Set.of(), Optional.empty()))))
                .isEmpty();
    }

    @Test
    void the_reps_that_are_found_are_those_that_are_counted() {
        RandomFilm film = new RandomFilm(11, FACETS, TAXONOMY);
        index.rebuild(film.logs(5, 3, 20).stream(), List.of(), STATE);
        Situation rush = Situation.has("phase", "pass-rush");
        Situation event = Situation.has("outcome", "won");

        Map<String, Count> counts = counts(f -> f.counts(rush, event));
        List<FoundRep> found =
                read(f -> f.found(rush, event, Slice.everything()).all());

        Map<String, Count> again = new HashMap<>();
        found.forEach(rep -> again.merge(rep.prospect().id(), new Count(1, rep.event() ? 1 : 0), Count::plus));
        assertThat(again).isEqualTo(counts).isNotEmpty();
        List<FoundRep> events =
                read(f -> f.found(rush, event, Slice.everything()).events(0, 1_000));
        assertThat(events)
                .extracting(rep -> rep.sighting())
                .isEqualTo(found.stream()
                        .filter(FoundRep::event)
                        .map(FoundRep::sighting)
                        .toList());
    }

    @Test
    void values_of_a_facet_are_counted_as_tagged() {
        RandomFilm film = new RandomFilm(12, FACETS, TAXONOMY);
        List<LogFacts> logs = List.of(film.log("First Eyes", RandomFilm.prospect(1), RandomFilm.game(1), 60));
        index.rebuild(logs.stream(), List.of(), STATE);
        Map<String, Count> expected = new HashMap<>();
        logs.get(0).facts().stream()
                .filter(ANY::fits)
                .forEach(facts -> facts.tagged("blocker")
                        .forEach(value ->
                                expected.merge(value, new Count(1, facts.has("outcome", "won") ? 1 : 0), Count::plus)));

        assertThat(counts(f -> f.values("blocker", ANY, Situation.has("outcome", "won"), Slice.everything())))
                .isEqualTo(expected)
                .isNotEmpty();
    }

    @Test
    void a_prospect_is_found_by_name_and_by_what_is_told_of_him() {
        OptionalDouble none = OptionalDouble.empty();
        Prospect one =
                new Prospect("p1", "Ódran Vale", "edge", none, none, none, "Calder Mill", "junior", "Ran hurdles");
        index.rebuild(Stream.of(noted("p1", "")), List.of(one), STATE);

        assertThat(prospects("odran", 3)).hasSize(1);
        assertThat(prospects("hurdle", 3)).hasSize(1);
        assertThat(prospects("swimmer", 3)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "*", "\"unclosed (and -", "a:b AND NOT", "\u0000\u0007", "мяч", "the of and", "<script>"
            })
    void any_text_can_be_looked_up(String text) {
        index.rebuild(Stream.of(noted("p1", "Feet quit.")), List.of(), STATE);

        assertThat(notes(text, 5)).isEmpty();
        assertThat(pages(text, 5)).hasSizeLessThan(6);
        assertThat(pages(text.repeat(2_000), 5)).hasSizeLessThan(6);
    }

    private <T> T read(Function<Footage, T> question) {
        return index.read(List.of(), question);
    }

    private List<Texts.PageHit> pages(String text, int most) {
        return read(f -> f.texts().pages(text, most));
    }

    private List<Texts.ProspectHit> prospects(String text, int most) {
        return read(f -> f.texts().prospects(text, most));
    }

    private List<Texts.NoteHit> notes(String text, int most) {
        return read(f -> f.texts().notes(text, most));
    }

    private Map<String, Count> counts(Function<Footage, Map<String, Count>> question) {
        return read(question);
    }

    private static List<String> marked(Marked note) {
        return note.marks().stream()
                .map(span -> note.text().substring(span.from(), span.to()))
                .toList();
    }

    private static LogFacts noted(String prospect, String note) {
        LogFacts film = new RandomFilm(3, FACETS, TAXONOMY)
                .log("First Eyes", Prospect.named(prospect, prospect), RandomFilm.game(1), 1);
        Log log = film.log();
        List<Reading> readings = new ArrayList<>();
        for (Reading reading : log.readings()) {
            Map<String, List<String>> tags = new HashMap<>(reading.tags());
            tags.put("note", List.of(note));
            readings.add(new Reading(reading.rep(), reading.evaluator(), tags, reading.exchange()));
        }
        return new LogFacts(
                new Log(log.evaluator(), log.prospect(), log.game(), log.charted(), readings, log.source()),
                film.facts());
    }
}
