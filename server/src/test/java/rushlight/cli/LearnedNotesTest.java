package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;
import rushlight.archive.LearnedWords;
import rushlight.archive.NotesDecisions;
import rushlight.notes.Carrying;
import rushlight.notes.Decisions;
import rushlight.notes.Narrations;
import rushlight.notes.Notes;

/** What a staff says its own way is learned once from what it decided, by a person, and can be unlearned. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LearnedNotesTest {
    private static final String FRIDAY =
            "[0:04] Wide 9. Corkscrews him off. Chop, sack.\n[0:15] Five tech. Corkscrews him off again. Chop.\n";
    private static final String MONDAY = "[0:04] Wide 9. Rip, corkscrews him off. Sack.\n";
    private static final String NAME = "long-arm:corkscrews him off";

    @TempDir
    private Path data;

    @TempDir
    private Path folder;

    @Test
    void words_that_were_tagged_by_hand_become_a_name_and_the_next_reading_knows_it() throws IOException {
        decided();
        assertThat(csv(MONDAY)).doesNotContain("long-arm");

        Said listed = run("notes", "--learned");
        Said taken = run("notes", "--take", "1");
        Said after = run("notes", "--learned");

        assertThat(listed.out())
                .contains("\u201Ccorkscrews him off\u201D was tagged as long arm 3 times")
                .contains("friday.txt rep 1, 2; monday.txt rep 1")
                .contains("\u201Cchop\u201D was rejected as chop 2 times, accepted never");
        assertThat(taken.out()).contains("is a name of long arm from now on");
        assertThat(taken.code()).isZero();
        assertThat(after.out()).containsPattern("monday.txt rep 1\\).\\s+Taken\\.");
        assertThat(csv(MONDAY)).contains("rip > long-arm");
        assertThat(run("check").out()).contains("1 more name: corkscrews him off (yours) for long arm.");
        assertThat(run("technique", "corkscrews him off").out()).contains("Long arm");

        assertThat(run("notes", "--bring-back", NAME).out()).contains("is a name of long arm no more");
        assertThat(csv(MONDAY)).doesNotContain("long-arm");
    }

    @Test
    void in_one_open_folder_the_reading_after_the_taking_knows_the_name() {
        decided();
        try (Archive archive = Archive.open(data)) {
            assertThat(concepts(archive)).doesNotContain("long-arm");

            LearnedWords.of(archive).take(NAME);

            assertThat(concepts(archive)).contains("long-arm");
        }
    }

    @Test
    void what_is_ignored_stays_so_until_it_is_brought_back() throws IOException {
        decided();

        assertThat(run("notes", "--ignore", "1", "--ignore", "not-chop:chop").code())
                .isZero();

        assertThat(state(NAME)).isEqualTo("ignored");
        assertThat(state("not-chop:chop")).isEqualTo("ignored");
        assertThat(run("notes", "--bring-back", NAME).out()).contains("is suggested again");
        assertThat(state(NAME)).isEqualTo("open");
    }

    @Test
    void what_the_staff_wrote_itself_stays_byte_for_byte_and_a_name_that_clashes_is_not_written() throws IOException {
        String own = "@prefix kb: <https://rushlight.example/id/> .\n@prefix skos:"
                + " <http://www.w3.org/2004/02/skos/core#> .\nkb:rip skos:altLabel \"corkscrews him off\"@en .";
        Files.writeString(data.resolve("overlay.ttl"), own);
        decided();

        Said refused = run("notes", "--take", NAME);

        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("means rip already", "Choose another name.");
        assertThat(Files.readString(data.resolve("overlay.ttl"))).isEqualTo(own);

        String other = own.replace("corkscrews him off", "shoelace move");
        Files.writeString(data.resolve("overlay.ttl"), other);
        assertThat(run("notes", "--take", NAME).code()).isZero();
        assertThat(Files.readString(data.resolve("overlay.ttl"))).startsWith(other + "\n<https:");
        run("notes", "--bring-back", NAME);
        assertThat(Files.readString(data.resolve("overlay.ttl"))).isEqualTo(other + "\n");
        try (var files = Files.list(data)) {
            assertThat(files.map(file -> file.getFileName().toString())).noneMatch(name -> name.startsWith(".overlay"));
        }
    }

    @Test
    void words_that_say_nothing_or_mean_another_thing_already_are_no_names() {
        decide(
                "one.txt",
                "[0:04] Wide 9. Spins, and he is on it. Sack.\n",
                List.of(),
                Map.of("spin:spins", "rip"),
                "on it");

        Said small = run("notes", "--take", "long-arm:on it");
        Said another = run("notes", "--take", "rip:spins");
        Said warning = run("notes", "--take", "not-spin:spins");
        Said unknown = run("notes", "--take", "99");

        assertThat(small.err()).contains("would be heard everywhere");
        assertThat(another.err()).contains("spin");
        assertThat(warning.err()).contains("Nothing of what was learned goes by");
        assertThat(unknown.err()).contains("Nothing of what was learned goes by \"99\"");
        assertThat(List.of(small.code(), another.code(), warning.code(), unknown.code()))
                .containsOnly(1);
        assertThat(data.resolve("overlay.ttl")).doesNotExist();
    }

    @Test
    void files_and_what_was_learned_are_not_asked_for_in_one_breath() {
        assertThat(Said.to("notes", "a.vtt", "--learned").err()).contains("leave out the files");
        assertThat(Said.to("notes").err()).contains("Name at least one file");
    }

    private void decided() {
        decide(
                "friday.txt",
                FRIDAY,
                List.of("chop:chop", "chop#2:chop"),
                Map.of(),
                "Corkscrews him off",
                "corkscrews him off");
        decide("monday.txt", MONDAY, List.of(), Map.of(), "corkscrews him off");
    }

    /** Decides on a file: what is rejected, what is changed, and words that are added as a long arm, one a rep. */
    private void decide(String file, String text, List<String> rejected, Map<String, String> changed, String... added) {
        try (Archive archive = Archive.open(data)) {
            Notes notes = read(archive, file, text);
            List<List<String>> outline = Carrying.outline(notes);
            Map<String, Boolean> chosen = new java.util.HashMap<>();
            rejected.forEach(key -> chosen.put(key, false));
            changed.keySet().forEach(key -> chosen.put(key, true));
            List<Decisions.Added> all = new java.util.ArrayList<>();
            for (int i = 0; i < added.length; i++) {
                all.add(new Decisions.Added(
                        "long-arm", added[i], i + 1, outline.get(i).get(0)));
            }
            NotesDecisions sets = NotesDecisions.of(archive);
            var review = new NotesDecisions.Review(
                    new Decisions(chosen, Map.of(), changed, all, Set.of(), Set.of()), outline);
            assertThat(sets.put(sets.of(file, outline).id(), file, 0, review).done())
                    .isTrue();
        }
    }

    private static Notes read(Archive archive, String file, String text) {
        return archive.book().notes().read(Narrations.read(file, text.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> concepts(Archive archive) {
        return read(archive, "monday.txt", MONDAY).reps().stream()
                .flatMap(rep -> rep.tags().stream())
                .map(tag -> tag.concept())
                .toList();
    }

    private String state(String key) throws IOException {
        for (JsonNode one : new ObjectMapper()
                .readTree(run("notes", "--learned", "--format", "json").out())
                .get("suggestions")) {
            if (one.get("key").asText().equals(key)) {
                return one.get("state").asText();
            }
        }
        return "missing";
    }

    private String csv(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("tuesday.txt"), text);
        return run("notes", file.toString(), "--prospect", "Nils Ockham", "--game", "Opener", "--format", "csv")
                .out();
    }

    private Said run(String... words) {
        List<String> all = new java.util.ArrayList<>(List.of(words));
        all.addAll(List.of("--data", data.toString()));
        return Said.to(all.toArray(String[]::new)).isPolite();
    }
}
