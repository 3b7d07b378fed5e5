package rushlight.situation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.sparql.graph.GraphFactory;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.film.RepFacts;
import rushlight.film.RepId;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SituationTest {
    private static final Ontology BOOK = Ontology.packaged();
    private static final Situations SITUATIONS = Situations.of(BOOK, Taxonomy.of(BOOK));
    private static final Node HERE = NodeFactory.createURI(Rl.SHAPE + "here");

    @Test
    void a_shape_is_read_with_its_conditions_in_any_order() {
        Situation read = read("""
                sh:property [ sh:path rl:down ; sh:minCount 1 ; sh:minInclusive 1 ; sh:maxInclusive 3 ] ,
                            [ sh:path rl:phase ; sh:hasValue "run" ] ;
                sh:not [ sh:property [ sh:path rl:help ; sh:qualifiedMinCount 1 ;
                         sh:qualifiedValueShape [ sh:in ( kb:double-team kb:chip ) ] ] ]""");

        assertThat(read)
                .isEqualTo(Situation.all(List.of(
                        Situation.has("phase", "run"),
                        Situation.not(Situation.anyOf("help", List.of("chip", "double-team"))),
                        Situation.between("down", 1, 3))));
    }

    @Test
    void several_lists_of_alternatives_must_each_be_met() {
        Situation read = read("""
                sh:or ( [ sh:property [ sh:path rl:outcome ; sh:hasValue "won" ] ]
                        [ sh:property [ sh:path rl:outcome ; sh:hasValue "even" ] ] ) ,
                      ( [ sh:property [ sh:path rl:over ; sh:hasValue "left" ] ]
                        [ sh:property [ sh:path rl:over ; sh:hasValue "right" ] ] )""");

        assertThat(read)
                .isEqualTo(Situation.all(List.of(
                        Situation.any(List.of(Situation.has("outcome", "won"), Situation.has("outcome", "even"))),
                        Situation.any(List.of(Situation.has("over", "left"), Situation.has("over", "right"))))));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void what_is_written_as_SHACL_is_read_back_the_same(long seed) {
        RandomSituations random = new RandomSituations(seed, SITUATIONS.facets());
        for (int i = 0; i < 100; i++) {
            Situation situation = random.next(4);
            Graph graph = GraphFactory.createDefaultGraph();

            SITUATIONS.write(situation, graph, HERE);

            assertThat(SITUATIONS.read(graph, HERE)).isEqualTo(situation);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "sh:property [ sh:path rl:help ; sh:in ( kb:chip ) ]"
                        + "|plain sh:in also passes a rep that has no rl:help",
                "sh:property [ sh:path rl:down ; sh:minInclusive 3 ]"
                        + "|a range also passes a rep that has no rl:down. Add sh:minCount 1.",
                "sh:property [ sh:path rl:downs ; sh:hasValue \"3\" ]|there is no facet rl:downs that can be counted",
                "sh:property [ sh:path rl:note ; sh:hasValue \"x\" ]|there is no facet rl:note that can be counted",
                "sh:property [ sh:path rl:fault ; sh:hasValue kb:bull-rush ]|kb:bull-rush is no value of rl:fault",
                "sh:property [ sh:path rl:move ; sh:hasValue kb:bull-rsh ]|kb:bull-rsh is no value of rl:move",
                "sh:property [ sh:path rl:move ; sh:hasValue \"bull-rush\" ]|\"bull-rush\" is none. Write kb: and the slug.",
                "sh:property [ sh:path rl:phase ; sh:hasValue \"pass\" ]"
                        + "|\"pass\" is no value of rl:phase. It knows pass-rush, run, drop.",
                "sh:property [ sh:path rl:phase ; sh:hasValue kb:run ]|rl:phase holds plain words, but kb:run is none.",
                "sh:property [ sh:path rl:phase ; sh:hasValue \"run\"@en ]|rl:phase holds plain words",
                "sh:property [ sh:path rl:seen ; sh:hasValue \"ears\" ]|\"ears\" is no value of rl:seen",
                "sh:property [ sh:path rl:down ; sh:hasValue 3 ]|rl:down is a number: ask for it with sh:minCount 1",
                "sh:property [ sh:path rl:phase ; sh:minCount 1 ; sh:minInclusive 3 ]|rl:phase has no numbers",
                "sh:property [ sh:path rl:down ; sh:minCount 1 ]|rl:down with sh:minCount is not a condition",
                "sh:property [ sh:path rl:down ; sh:minCount 2 ; sh:minInclusive 3 ]|sh:minCount of rl:down must be 1",
                "sh:property [ sh:path rl:down ; sh:minCount 1 ; sh:minInclusive 2.5 ]|must be one whole number",
                "sh:property [ sh:path rl:down ; sh:minCount 1 ; sh:minInclusive 4 ; sh:maxInclusive 2 ]"
                        + "|No down is from 4 to 2",
                "sh:property [ sh:path rl:fault ; sh:hasValue kb:high-pads , kb:feet-stop-at-contact ]"
                        + "|sh:hasValue of rl:fault has 2 values",
                "sh:property [ sh:path rl:fault ; sh:qualifiedMinCount 2 ;"
                        + " sh:qualifiedValueShape [ sh:in ( kb:high-pads ) ] ]|sh:qualifiedMinCount of rl:fault must be 1",
                "sh:property [ sh:path rl:fault ; sh:qualifiedMinCount 1 ; sh:qualifiedValueShape"
                        + " [ sh:in ( kb:high-pads ) ; sh:nodeKind sh:IRI ] ]|must be just [ sh:in ( ... ) ]",
                "sh:property [ sh:path rl:fault ; sh:maxCount 0 ]|rl:fault with sh:maxCount is not a condition",
                "sh:property [ sh:path ( rl:hisStep rl:does ) ; sh:hasValue kb:chip ]|exactly one sh:path",
                "sh:not [ sh:path rl:phase ; sh:hasValue \"run\" ]|a property stands bare",
                "sh:xone ( [ sh:property [ sh:path rl:phase ; sh:hasValue \"run\" ] ] )"
                        + "|sh:xone is not used in situations",
                "sh:closed true|sh:closed is not used in situations",
                "sh:targetClass rl:Reading|sh:targetClass is not used in situations",
                "sh:or ()|sh:or needs a list of shapes",
                "sh:not shape:here|it refers to itself",
                "sh:name \"nothing\"|it asks for nothing",
            })
    void anything_else_is_refused_with_the_reason(String body, String reason) {
        assertThatThrownBy(() -> read(body))
                .isInstanceOf(RefusedShapeException.class)
                .hasMessageStartingWith("shape:here: ")
                .hasMessageContaining(reason);
    }

    @Test
    void a_shape_that_is_not_there_is_named() {
        assertThatThrownBy(() -> SITUATIONS.named("no-such-thing"))
                .isInstanceOf(RefusedShapeException.class)
                .hasMessage("shape:no-such-thing: there is no such shape.");
    }

    @Test
    void a_grouping_concept_of_another_kind_stands_for_the_narrower_ones() {
        assertThat(read("sh:property [ sh:path rl:repClass ; sh:hasValue kb:opp-kick-out ]"))
                .isEqualTo(Situation.has("repClass", "opp-kick-out"));
        assertThat(read("sh:property [ sh:path rl:move ; sh:hasValue kb:power-move ]"))
                .isEqualTo(Situation.has("move", "power-move"));
    }

    @Test
    void a_rep_without_a_value_meets_no_condition_on_it() {
        RepFacts bare = rep(Map.of(), Map.of());

        assertThat(Situation.has("fault", "high-pads").fits(bare)).isFalse();
        assertThat(Situation.anyOf("help", List.of("chip", "slide-to")).fits(bare))
                .isFalse();
        assertThat(Situation.between("down", 1, 4).fits(bare)).isFalse();
        assertThat(Situation.not(Situation.between("down", 1, 4)).fits(bare)).isTrue();
    }

    @Test
    void a_rep_is_held_against_every_part() {
        RepFacts rep =
                rep(Map.of("move", Set.of("bull-rush", "power-move"), "help", Set.of("chip")), Map.of("down", 3));
        Situation power = Situation.has("move", "power-move");
        Situation alone = Situation.not(Situation.anyOf("help", List.of("chip", "double-team")));

        assertThat(power.fits(rep)).isTrue();
        assertThat(alone.fits(rep)).isFalse();
        assertThat(Situation.all(List.of(power, alone)).fits(rep)).isFalse();
        assertThat(Situation.any(List.of(power, alone)).fits(rep)).isTrue();
        assertThat(Situation.between("down", 3, 4).fits(rep)).isTrue();
        assertThat(new Situation.Between("down", OptionalInt.of(4), OptionalInt.empty()).fits(rep))
                .isFalse();
        assertThat(new Situation.Between("down", OptionalInt.empty(), OptionalInt.of(3)).fits(rep))
                .isTrue();
    }

    @Test
    void it_tells_what_it_reads_and_what_it_needs_looked_for() {
        Situation situation = Situation.all(List.of(
                Situation.has("phase", "run"),
                Situation.not(Situation.all(List.of(
                        Situation.anyOf("help", List.of("chip", "double-team")),
                        Situation.between("down", 1, 2),
                        Situation.not(Situation.has("fault", "high-pads")))))));

        assertThat(situation.reads())
                .isEqualTo(Map.of(
                        "phase", Set.of("run"),
                        "help", Set.of("chip", "double-team"),
                        "down", Set.of(),
                        "fault", Set.of("high-pads")));
        assertThat(situation.readsAbsent()).isEqualTo(Map.of("help", Set.of("chip", "double-team"), "down", Set.of()));
    }

    @Test
    void it_says_itself_in_words() {
        Situation situation = Situation.all(List.of(
                Situation.has("secondMoveTime", "yes"),
                Situation.not(Situation.anyOf("repClass", List.of("opp-kick-out", "opp-inside-open"))),
                Situation.any(List.of(Situation.has("move", "bull-rush"), Situation.between("down", 3, 4)))));

        Taxonomy book = Taxonomy.of(BOOK);
        assertThat(SITUATIONS.phrase(situation))
                .isEqualTo("there was time for a second move and the rep does not count as \u201C"
                        + book.label("opp-inside-open") + "\u201D or \u201C" + book.label("opp-kick-out")
                        + "\u201D and (the down was 3 to 4 or he used the " + book.label("bull-rush") + ")");
        assertThat(SITUATIONS.phrase(Situation.not(Situation.has("phase", "run"))))
                .isEqualTo("he did not play the run");
    }

    private static RepFacts rep(Map<String, Set<String>> closed, Map<String, Integer> numbers) {
        return new RepFacts(new RepId("p", "g", "r"), "e", closed, closed, numbers);
    }

    private static Situation read(String body) {
        Graph graph = GraphFactory.createDefaultGraph();
        RDFParser.fromString("""
                        prefix sh: <http://www.w3.org/ns/shacl#>
                        prefix rl: <https://rushlight.example/def#>
                        prefix kb: <https://rushlight.example/id/>
                        prefix shape: <https://rushlight.example/shape/>
                        shape:here a sh:NodeShape ;\n""" + body + " .", Lang.TURTLE).parse(graph);
        return SITUATIONS.read(graph, HERE);
    }
}
