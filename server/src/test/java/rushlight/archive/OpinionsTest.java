package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.film.Opinion;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.findings.Agreement;
import rushlight.findings.Assessment;
import rushlight.findings.Spoken;
import rushlight.notes.GeneralOpinions;
import rushlight.notes.Narration;
import rushlight.notes.Narrations;
import rushlight.web.AssessAnswer;
import rushlight.web.Beside;
import rushlight.web.Json;

/** A coach says something of a player in general, and his reps answer. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class OpinionsTest {
    private static final String COUNTER = "no-inside-counter";

    /** The set gave the inside, and he ran on. */
    private static final String RAN_ON = "speed-rush > [over-set],lost";

    /** The set gave the inside, and he took it. */
    private static final String TOOK_IT = "speed-rush > [over-set] > inside-spin,won";

    private static final String OWN = """
        @prefix kb: <https://rushlight.example/id/> .
        @prefix rl: <https://rushlight.example/def#> .
        @prefix dct: <http://purl.org/dc/terms/> .
        @prefix source: <https://rushlight.example/source/> .
        kb:claim-of-mine a rl:Claim ;
          rl:speaksOf kb:ghost ; rl:asserted "performed" ; rl:claimOf kb:no-inside-counter ;
          dct:source source:common-practice ; rl:support "common-practice" .
        """;

    @TempDir
    private static Path folder;

    private static Archive archive;
    private static int players;

    /** Every test speaks of a player of its own. */
    private final String who = "Tam Orrin " + ++players;

    @BeforeAll
    static void open() throws IOException {
        Files.writeString(folder.resolve(Book.OVERLAY), OWN);
        archive = Archive.open(folder);
    }

    @AfterAll
    static void close() {
        archive.close();
    }

    @Test
    void he_could_use_a_counter_inside_and_the_log_agrees() {
        film(RAN_ON, 12);
        Spoken.Said said = heard("Overall, he could use a counter inside.", COUNTER);

        assertThat(said.agreement()).isEqualTo(Agreement.AGREES);
        assertThat(said.sentence())
                .isEqualTo("Dole Marrow said: \u201COverall, he could use a counter inside.\u201D The log agrees:"
                        + " \u201Cno inside counter\u201D, 12 of 12, confirmed.");
    }

    @Test
    void he_lacks_an_inside_counter_and_the_log_has_seen_it() {
        film(TOOK_IT, 16);
        Spoken.Said said = heard("Overall, he lacks an inside counter.", COUNTER);

        assertThat(said.agreement()).isEqualTo(Agreement.DISAGREES);
        assertThat(said.sentence()).endsWith("The log does not: \u201Cno inside counter\u201D, 0 of 16, cleared.");
    }

    @Test
    void he_lacks_an_inside_counter_and_five_chances_are_not_enough_tape() {
        film(TOOK_IT, 5);
        Spoken.Said said = heard("Overall, he lacks an inside counter.", COUNTER);

        assertThat(said.agreement()).isEqualTo(Agreement.NOT_ENOUGH_TAPE);
        assertThat(said.sentence()).endsWith("The log has 0 of 5 for \u201Cno inside counter\u201D: not enough tape.");
    }

    @Test
    void praise_speaks_against_the_gap_that_its_opposite_claims() {
        film(RAN_ON, 12);
        keep(opinion(Opinion.Polarity.DOES, "inside-move", List.of()));

        assertThat(spoken().to(COUNTER)).extracting(Spoken.Said::agreement).containsExactly(Agreement.DISAGREES);
    }

    @Test
    void hooked_is_claimed_against_reach_blocks_alone() {
        film(RAN_ON, 1);
        keep(opinion(Opinion.Polarity.DOES, "reached", List.of()));
        assertThat(spoken().apart()).hasSize(1);

        keep(opinion(Opinion.Polarity.DOES, "reached", List.of("reach-block")));
        Spoken.Said said = spoken().to("hooked-on-reach-blocks").get(0);
        assertThat(said.sentence())
                .endsWith("The log has no chance of \u201Chooked on reach blocks\u201D yet: not enough tape.");
    }

    @Test
    void what_no_finding_answers_is_listed_apart_and_so_is_a_doubt() {
        film(RAN_ON, 12);
        take("Overall, he rips a lot. Maybe he lacks an inside counter.");
        keep(opinion(Opinion.Polarity.UNSURE, "inside-move", List.of()));

        Spoken spoken = spoken();
        assertThat(spoken.apart()).extracting(Opinion::concept).contains("rip", "inside-move");
        assertThat(spoken.to(COUNTER)).isEmpty();
    }

    @Test
    void an_opinion_taken_back_is_silent_and_can_be_brought_back() {
        film(RAN_ON, 12);
        Spoken.Said said = heard("Overall, he could use a counter inside.", COUNTER);
        Opinions opinions = Opinions.of(archive);
        long before = opinions.revision();

        assertThat(opinions.takeBack(said.opinion().id())).contains(said.opinion());
        assertThat(spoken()).isEqualTo(Spoken.NOTHING);
        assertThat(opinions.revision()).isGreaterThan(before);

        opinions.bringBack(said.opinion().id());
        assertThat(spoken().to(COUNTER)).containsExactly(said);
        assertThat(opinions.takeBack("nobody")).isEmpty();
    }

    @Test
    void an_opinion_is_no_evidence() {
        film(TOOK_IT, 5);
        Assessment before = archive.assess(id()).orElseThrow();
        long revision = archive.store().revision();

        take("Overall, he could use a counter inside. He lacks an inside counter.");

        Assessment after = archive.assess(id()).orElseThrow();
        assertThat(Json.text(AssessAnswer.of(after))).isEqualTo(Json.text(AssessAnswer.of(before)));
        assertThat(archive.store().revision()).isEqualTo(revision);
    }

    @Test
    void what_is_kept_stays_as_it_was_said_and_said_twice_is_kept_once() {
        film(RAN_ON, 12);
        take("Overall, he could use a counter inside.");
        Opinion said = heard("Overall, he could use a counter inside.", COUNTER).opinion();
        String answer = answer();

        archive.close();
        archive = Archive.open(folder);

        assertThat(Opinions.of(archive).of(id())).containsExactly(said);
        assertThat(answer()).isEqualTo(answer);
        assertThat(said.at()).hasValue(20);
        assertThat(said.source()).isEqualTo("friday.vtt");
        assertThat(said.polarity()).isEqualTo(Opinion.Polarity.DOES_NOT);
    }

    @Test
    void a_claim_of_ones_own_joins_words_and_finding() {
        assertThat(OverlayCheck.of(folder)).isEmpty();
        film(RAN_ON, 12);
        keep(opinion(Opinion.Polarity.DOES, "ghost", List.of()));

        assertThat(spoken().to(COUNTER)).extracting(Spoken.Said::agreement).containsExactly(Agreement.AGREES);
    }

    private Opinion opinion(Opinion.Polarity polarity, String concept, List<String> against) {
        return new Opinion(
                "one of " + who,
                id(),
                "",
                "Said so.",
                OptionalDouble.empty(),
                "friday.vtt",
                polarity,
                concept,
                against);
    }

    private void keep(Opinion opinion) {
        Opinions.of(archive).keep(List.of(opinion));
    }

    /** Keeps what these notes say, and gives what stands beside one finding. */
    private Spoken.Said heard(String words, String finding) {
        take(words);
        return spoken().to(finding).get(0);
    }

    private void take(String words) {
        String notes = "WEBVTT\n\n00:01.000 --> 00:05.000\nWide nine, bull rush, stopped.\n\n"
                + "00:20.000 --> 00:30.000\n" + words + "\n";
        Narration narration = Narrations.read("friday.vtt", notes.getBytes(StandardCharsets.UTF_8));
        Opinions opinions = Opinions.of(archive);
        opinions.keep(new GeneralOpinions(
                        narration, archive.book().notes().read(narration, who), opinions.prospect(who), "Dole Marrow")
                .sure());
    }

    private Spoken spoken() {
        return Opinions.of(archive).beside(archive.assess(id()).orElseThrow());
    }

    private String answer() {
        return Json.text(
                AssessAnswer.of(archive.assess(id()).orElseThrow(), new Beside(spoken(), List.of(), Map.of()), true));
    }

    private String id() {
        return Opinions.of(archive).prospect(who);
    }

    /** So many reps alike, spread over two games. */
    private void film(String rep, int times) {
        StringBuilder csv = new StringBuilder("rep,prospect,game,phase,exchange,result,help,faults,not_seen\n");
        for (int i = 0; i < times; i++) {
            csv.append("r").append(i).append(',').append(who).append(i % 2 == 0 ? ",Fen at Holm" : ",Holm at Tarn");
            csv.append(",pass-rush,").append(rep).append(",,,\n");
        }
        ReadResult read = FilmLogReader.of(archive.book().taxonomy())
                .read(
                        "film.csv",
                        new ByteArrayInputStream(csv.toString().getBytes(StandardCharsets.UTF_8)),
                        FilmLogReader.Options.none());
        archive.put(((ReadResult.Accepted) read).logs(), false);
    }
}
