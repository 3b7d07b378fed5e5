package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rushlight.archive.Archive;

/** A staff's own terms: taken in, marked wherever they show, told what is wrong with them, and gone with their file. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class OverlayCommandsTest {
    private static final Path EXAMPLE = Path.of("..", "demo-data", "overlay-example.ttl");
    private static final String LOG = """
            rep,prospect,game,phase,exchange,second_move_time,result
            r1,Ari Vale,Opener,pass-rush,freight elevator > [outside-hand-first] > wrist roll,yes,won
            r2,Ari Vale,Opener,pass-rush,bull-rush > [outside-hand-first] > rip,yes,lost
            r3,Ari Vale,Opener,pass-rush,bull-rush > [outside-hand-first],yes,lost
            r4,Ari Vale,Opener,pass-rush,bull-rush > [outside-hand-first],yes,lost
            r5,Ari Vale,Opener,pass-rush,bull-rush > [outside-hand-first],yes,lost
            r6,Ari Vale,Opener,pass-rush,bull-rush > [outside-hand-first],yes,lost
            r7,Ari Vale,Opener,pass-rush,bull-rush > [outside-hand-first],yes,lost
            """;
    private static final String COMMON = " dct:source source:common-practice ; rl:support \"common-practice\" .";
    private static final String MOVE = "kb:wrist-roll a skos:Concept , rl:RushMove ; skos:prefLabel \"wrist roll\"@en ;"
            + " skos:definition \"Rolls the wrist.\"@en ; rl:from kb:technique-5 ;";

    @TempDir
    private Path folder;

    @Test
    void one_of_each_kind_is_taken_and_listed_as_yours() throws IOException {
        example();

        Said said = run("check", "--data", folder.toString());

        assertThat(said.out().lines().toList())
                .contains(
                        "From your overlay.ttl:",
                        "  2 terms: leaves the lone hand alone (yours); wrist roll (yours).",
                        "  1 pairing: bull-rush--outside-hand-first--wrist-roll (yours).",
                        "  1 fit rule: arc-block--box-assignment--our-safety (yours).",
                        "  2 statements of lessons: wrist-roll--cue (yours); wrist-roll--example (yours).",
                        "  1 more name: freight elevator (yours) for bull rush.")
                .anyMatch(line -> line.contains("quits on the double: line 0.40 (yours), house 0.25"))
                .noneMatch(line -> line.startsWith("mend") || line.startsWith("note"));
        assertThat(said.code()).isZero();
    }

    @Test
    void a_counter_of_yours_is_marked_in_text_and_in_json() throws IOException {
        example();

        Said text = run("counters", "freight elevator", "--when", "outside-hand-first", "--data", folder.toString());
        Said json = run(
                "counters",
                "bull-rush",
                "--when",
                "outside-hand-first",
                "--format",
                "json",
                "--data",
                folder.toString());

        assertThat(text.out()).containsPattern("wrist roll \\(yours\\) .* common-practice \\(yours\\)");
        assertThat(text.out()).doesNotContainPattern("chop \\(yours\\)");
        List<String> local = new ArrayList<>();
        List<String> shipped = new ArrayList<>();
        for (JsonNode counter : new ObjectMapper().readTree(json.out()).get("counters")) {
            (counter.get("local").asBoolean() ? local : shipped)
                    .add(counter.get("counter").asText());
        }
        assertThat(local).containsExactly("wrist-roll");
        assertThat(shipped).contains("chop");
    }

    @Test
    void the_pages_of_the_book_mark_what_is_yours() throws IOException {
        example();

        String page =
                run("technique", "wrist roll", "--data", folder.toString()).out();
        String answers = run("answers", "arc block", "--assignment", "box assignment", "--data", folder.toString())
                .out();

        assertThat(page).startsWith("Wrist roll (yours)").contains("past it. (yours)");
        assertThat(answers.lines().filter(line -> line.contains("(yours)")))
                .singleElement()
                .asString()
                .startsWith("Box assignment");
        assertThat(answers).contains("our safety has called for the quarterback");
    }

    @Test
    void a_finding_of_yours_is_marked_in_an_assessment_and_everything_is_gone_with_the_file() throws IOException {
        String before = counters();
        String housePrint = fingerprint();
        example();
        Files.writeString(folder.resolve("log.csv"), LOG);
        assertThat(run("import", folder.resolve("log.csv").toString(), "--data", folder.toString())
                        .code())
                .isZero();
        String yourPrint = fingerprint();

        assertThat(run("assess", "--data", folder.toString()).out()).contains("Leaves the lone hand alone (yours)");
        JsonNode yours = assessed();
        assertThat(yours.get("leaves-the-lone-hand").get("local").asBoolean()).isTrue();
        assertThat(yours.get("leaves-the-lone-hand").get("opportunities").asInt())
                .isEqualTo(7);
        assertThat(yours.get("leaves-the-lone-hand").get("events").asInt()).isEqualTo(1);
        assertThat(yours.get("double-erased").get("local").asBoolean()).isFalse();
        assertThat(yours.get("double-erased").get("line").asDouble()).isEqualTo(0.40);
        assertThat(yours.get("double-erased").get("houseLine").asDouble()).isEqualTo(0.25);

        Files.delete(folder.resolve("overlay.ttl"));

        JsonNode house = assessed();
        assertThat(house.has("leaves-the-lone-hand")).isFalse();
        assertThat(house.get("double-erased").get("line").asDouble()).isEqualTo(0.25);
        assertThat(counters()).isEqualTo(before);
        assertThat(yourPrint).isNotEqualTo(housePrint);
        assertThat(fingerprint()).isEqualTo(housePrint);
        assertThat(run("check", "--data", folder.toString()).out()).doesNotContain("(yours)");
    }

    static Stream<Arguments> broken() {
        return Stream.of(
                Arguments.of(
                        "kb:bull-rush rl:requires kb:spin .",
                        "mend   overlay.ttl, line 7, bull-rush: Your file says requires of a shipped term. Add labels to it"
                                + " or set its amount, checked on, line, minimum, minutes, people, repetitions, severity,"
                                + " standard, success, team contact minutes, trainability, true side, weeks; for anything"
                                + " else make a term of your own."),
                Arguments.of(
                        "kb:rip a skos:Concept , rl:Skill ; skos:prefLabel \"tear\"@en .",
                        "mend   overlay.ttl, line 7, rip: The shipped book has something of this name already (rip). Give"
                                + " yours another name; what was shipped stays as it is."),
                Arguments.of(
                        "kb:bull-rush skos:altLabel \"Long Arm\"@en .",
                        "mend   overlay.ttl, line 7, bull-rush: \"Long Arm\" means long arm already, and the exchange could"
                                + " not tell them apart. Choose another name."),
                Arguments.of(
                        "kb:mine a rl:Pairing ; rl:primary kb:speed-rush ; rl:trigger kb:over-set ; rl:counter kb:rip ;"
                                + " rl:rank 1 ; rl:side \"inside\" ; rl:timing \"read\" ; rl:because \"Mine.\"@en ;"
                                + COMMON,
                        "mend   overlay.ttl, line 7, mine: Two counters to the same thing cannot both have rank 1:"
                                + " up-and-under has it. Give this one a rank that is free."),
                Arguments.of(
                        MOVE + " rl:requires kb:roll-two ;" + COMMON + "\n"
                                + MOVE.replace("wrist-roll", "roll-two").replace("wrist roll", "roll two")
                                + " rl:requires kb:wrist-roll ;" + COMMON,
                        "mend   overlay.ttl, line 7, wrist-roll: It needs itself first, by way of roll two. Take one of the"
                                + " links away."),
                Arguments.of(
                        MOVE + " skos:broader kb:roll-two ;" + COMMON + "\n"
                                + MOVE.replace("wrist-roll", "roll-two").replace("wrist roll", "roll two")
                                + " skos:broader kb:wrist-roll ;" + COMMON,
                        "mend   overlay.ttl, line 8, roll-two: It is wider than itself, by way of wrist roll. Take one of"
                                + " the links away."),
                Arguments.of(
                        "kb:mine a rl:FitRule ; rl:block kb:kick-out-block ; rl:assignment kb:spill-assignment ;\n"
                                + "  rl:right kb:wrong-arm ; rl:wrong kb:wrong-arm ;" + COMMON,
                        "mend   overlay.ttl, line 8, mine: The same answer cannot be right and wrong in one rule. (found:"
                                + " wrong-arm)"),
                Arguments.of(
                        "kb:mine a rl:FitRule ; rl:block kb:kick-out-block ; rl:assignment kb:spill-assignment ;"
                                + " rl:wrong kb:wrong-arm ;" + COMMON,
                        "mend   overlay.ttl, line 7, mine: One rule calls wrong-arm right and another calls it wrong"
                                + " against kick-out block under spill assignment. Say with rl:onlyIf when each speaks,"
                                + " or take the answer out of one."),
                Arguments.of(
                        finding("[ sh:path rl:move ; sh:in ( kb:rip ) ]"),
                        "mend   overlay.ttl, line 7, mine: Its reps cannot be counted. shape:mine-event: plain sh:in"
                                + " also passes a rep that has no rl:move."),
                Arguments.of(
                        finding("[ sh:path rl:moove ; sh:hasValue kb:rip ]"),
                        "mend   overlay.ttl, line 7, mine: Its reps cannot be counted. shape:mine-event: there is no facet"
                                + " rl:moove that can be counted."),
                Arguments.of(
                        "kb:double-eraesd rl:line 0.4 .",
                        "mend   overlay.ttl, line 7, double-eraesd: The book has no term of this name. Nearest:"
                                + " double-erased,"),
                Arguments.of(
                        "kb:double-erased rl:line 40 .",
                        "mend   overlay.ttl, line 7, double-erased: A line is one share between 0 and 1. (found: \"40\")"),
                Arguments.of(
                        "kb:bull-rush rl:line 0.4 .",
                        "mend   overlay.ttl, line 7, bull-rush: It has no line that could be set: nothing of its kind has"
                                + " one."),
                Arguments.of(
                        MOVE + " rl:beats kb:over-sett ;" + COMMON,
                        "mend   overlay.ttl, line 7, wrist-roll: It names kb:over-sett, which the book does not have."
                                + " Nearest: over-set,"),
                Arguments.of(
                        MOVE + " rl:beets kb:over-set ;" + COMMON,
                        "mend   overlay.ttl, line 7, wrist-roll: There is no rl:beets. Nearest: beats,"),
                Arguments.of(
                        "kb:mine a rl:Teaching ; rl:about kb:rip ; rl:part rl:cue ; rl:text \"Mine.\"@en ; rl:order 1 ;"
                                + COMMON,
                        "mend   overlay.ttl, line 7, mine: Two statements of the same part cannot stand in the same place."),
                Arguments.of(
                        "rl:column-mood a rl:Column ; rl:columnName \"mood\" .",
                        "mend   overlay.ttl, line 7, column-mood: This name is outside of the book. Write kb: and a name of"
                                + " your own."),
                Arguments.of(
                        "shape:mine a sh:NodeShape ; sh:targetClass rl:RushMove .",
                        "mend   overlay.ttl, line 7, mine: A shape of yours describes reps for a finding. It cannot lay"
                                + " down what terms have: take sh:targetClass out."));
    }

    @ParameterizedTest
    @MethodSource("broken")
    void what_is_wrong_is_said_with_its_line_and_the_way_out(String statements, String sentence) throws IOException {
        overlay(statements);

        Said said = run("check", "--data", folder.toString());

        assertThat(said.out().lines()).anyMatch(line -> line.startsWith(sentence));
        assertThat(said.out().lines().filter(line -> line.startsWith("mend")))
                .as("nothing is said twice")
                .hasSizeLessThanOrEqualTo(2)
                .allMatch(line -> line.startsWith("mend   overlay.ttl, line "));
        assertThat(said.out()).contains(" to mend.");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).isEmpty();
    }

    @Test
    void a_drill_that_does_not_say_what_it_takes_sends_to_check_where_everything_it_lacks_is_named()
            throws IOException {
        overlay("""
                kb:towel-pull a skos:Concept , rl:Drill ; skos:prefLabel "towel pull"@en ; skos:definition "Two men, one towel."@en ;
                  skos:broader kb:partner-drill ; rl:trains kb:grip-endurance ; rl:trainsFirst kb:grip-endurance ;
                  rl:contactLevel kb:control ; rl:people 2 ; dct:source source:common-practice ; rl:support "common-practice" .
                """);

        assertThat(run("technique", "rip", "--data", folder.toString()).err())
                .startsWith("overlay.ttl cannot be used: The book's towel-pull lacks rl:minutes.");
        assertThat(run("check", "--data", folder.toString()).out())
                .contains(
                        "Say how many minutes one set of the drill takes, from 1 to 60.",
                        "A drill against another player says what can hurt: name the hazards.");
    }

    @Test
    void a_file_that_cannot_be_used_sends_other_commands_to_check() throws IOException {
        overlay(finding("[ sh:path rl:move ; sh:in ( kb:rip ) ]"));

        Said said = run("counters", "bull-rush", "--data", folder.toString());

        assertThat(said.code()).isEqualTo(3);
        assertThat(said.err())
                .startsWith("overlay.ttl cannot be used: shape:mine-event: ")
                .contains("\"rushlight check\" says everything to mend in it.");
    }

    @Test
    void the_coverage_counts_your_terms_and_names_what_they_lack() throws IOException {
        overlay(MOVE + COMMON);

        Said text = run("check", "--coverage", "--data", folder.toString());
        Said json = run("check", "--coverage", "--format", "json", "--data", folder.toString());

        assertThat(text.out())
                .contains("rush move: 1 of ", "rush move without cue (must have it): wrist roll (yours).");
        assertThat(text.code()).isEqualTo(1);
        JsonNode coverage = new ObjectMapper().readTree(json.out());
        assertThat(coverage.get("whole").asBoolean()).isFalse();
        assertThat(coverage.get("kinds").get(0).get("local").asInt()).isEqualTo(1);
        assertThat(coverage.get("orphans")).isEmpty();
        JsonNode cue = coverage.get("kinds").get(0).get("parts").get(1);
        assertThat(cue.get("part").asText()).isEqualTo("cue");
        assertThat(cue.get("missing").get(0).asText()).isEqualTo("wrist-roll");
        assertThat(cue.get("share").asDouble()).isBetween(0.9, 0.999);
    }

    @Test
    void the_shipped_book_is_covered_and_its_table_has_a_row_a_kind() {
        Said said = run("check", "--coverage", "--data", folder.toString());

        assertThat(said.out()).containsPattern("run fit +47( +47 100 %\\*?){4}").contains("every term is linked");
        assertThat(said.code()).isZero();
        assertThat(run("check", "--all", "--data", folder.toString()).code()).isEqualTo(2);
    }

    private static String finding(String event) {
        return "kb:mine a skos:Concept , rl:Finding ; skos:prefLabel \"mine\"@en ; skos:definition \"Mine.\"@en ;"
                + " skos:broader kb:rush-technique-gap ; rl:polarity rl:gap ; rl:opportunity shape:mine-chance ;"
                + " rl:event shape:mine-event ; rl:line 0.3 ; rl:trueSide rl:above ; rl:minimum 6 ; rl:severity rl:low ;"
                + " rl:because \"Mine.\"@en ; rl:sentence \"{events} of {opportunities}.\"@en ;" + COMMON
                + "\nshape:mine-chance a sh:NodeShape ;"
                + " sh:property [ sh:path rl:behavior ; sh:hasValue kb:over-set ] ."
                + "\nshape:mine-event a sh:NodeShape ; sh:property " + event + " .";
    }

    private void example() throws IOException {
        Files.copy(EXAMPLE, folder.resolve("overlay.ttl"));
    }

    private void overlay(String statements) throws IOException {
        Files.writeString(folder.resolve("overlay.ttl"), """
                @prefix dct: <http://purl.org/dc/terms/> .
                @prefix kb: <https://rushlight.example/id/> .
                @prefix rl: <https://rushlight.example/def#> .
                @prefix sh: <http://www.w3.org/ns/shacl#> .
                @prefix shape: <https://rushlight.example/shape/> .
                @prefix skos: <http://www.w3.org/2004/02/skos/core#> . @prefix source: <https://rushlight.example/source/> .
                """ + statements);
    }

    private String counters() {
        return run(
                        "counters",
                        "bull-rush",
                        "--when",
                        "outside-hand-first",
                        "--format",
                        "json",
                        "--data",
                        folder.toString())
                .out();
    }

    private String fingerprint() {
        try (Archive archive = Archive.open(folder)) {
            return archive.book().ontology().fingerprint();
        }
    }

    /** What the only prospect is assessed with, by the slug of the finding. */
    private JsonNode assessed() throws IOException {
        String json =
                run("assess", "--format", "json", "--data", folder.toString()).out();
        ObjectNode findings = new ObjectMapper().createObjectNode();
        new ObjectMapper()
                .readTree(json)
                .get(0)
                .get("findings")
                .forEach(one -> findings.set(one.get("finding").asText(), one));
        return findings;
    }

    private static Said run(String... args) {
        return Said.to(args);
    }
}
