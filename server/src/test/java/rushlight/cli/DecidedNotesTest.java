package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
import rushlight.archive.NotesDecisions;
import rushlight.notes.Carrying;
import rushlight.notes.Decisions;
import rushlight.notes.Narrations;
import rushlight.notes.Notes;

/** What was decided on a file holds where the command reads it again, corrected too. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class DecidedNotesTest {
    private static final String NOTES = "[0:04] Wide 9. Chop, dip. Sack.\n[0:15] Five tech. Bull rush, stoned.\n";

    @TempDir
    private Path data;

    @TempDir
    private Path folder;

    @Test
    void rejected_tags_stay_out_and_changed_ones_come_in_of_the_corrected_file_too() throws IOException {
        decide(new Decisions(
                Map.of("chop:chop", false, "dip:dip", true),
                Map.of("1", "pass-rush"),
                Map.of("dip:dip", "swim"),
                List.of(),
                Set.of(),
                Set.of()));

        Said same = csv(NOTES);
        Said corrected = csv("[0:01] Next one. Seven technique, rip, hurry.\n"
                + NOTES.replace("[0:04]", "[0:24] Next one.").replace("[0:15]", "[0:35]"));
        Said other = csv("[0:04] Spin, loop.");

        assertThat(same.out()).contains("swim").doesNotContain("chop", "dip");
        assertThat(same.err()).contains("friday.txt: decisions of", "not decided on, charted as read.");
        assertThat(corrected.out()).contains("rip", "swim", "bull-rush").doesNotContain("chop", "dip");
        assertThat(other.err()).contains("Nothing is decided on friday.txt");
        assertThat(other.out()).contains("spin");
    }

    @Test
    void without_a_named_folder_nothing_is_decided_and_nothing_is_made_in_one_that_is_empty() throws IOException {
        Said plain = csv(NOTES);

        assertThat(plain.out()).contains("chop", "dip");
        assertThat(data).isEmptyDirectory();
    }

    @Test
    void a_file_of_the_same_name_that_is_another_takes_no_decision_away() {
        try (Archive archive = Archive.open(data)) {
            NotesDecisions sets = NotesDecisions.of(archive);
            List<List<String>> one = List.of(List.of("rip:rips", "sack:sack"));
            List<List<String>> two = List.of(List.of("spin:spins", "hurry:hurry"));
            Decisions yes = new Decisions(Map.of("rip:rips", true), Map.of(), Map.of(), List.of(), Set.of(), Set.of());
            sets.put(sets.of("a.vtt", one).id(), "a.vtt", 0, new NotesDecisions.Review(yes, one));

            NotesDecisions.Found other = sets.of("a.vtt", two);
            sets.put(other.id(), "a.vtt", 0, new NotesDecisions.Review(Decisions.NONE, two));

            assertThat(other.version()).isZero();
            assertThat(other.others()).isEqualTo(1);
            assertThat(sets.of("a.vtt", one).decided()).isEqualTo(yes);
            assertThat(sets.all()).extracting(NotesDecisions.Kept::id).containsExactly("a-vtt", "a-vtt-2");
        }
    }

    private void decide(Decisions decided) {
        try (Archive archive = Archive.open(data)) {
            Notes notes = archive.book()
                    .notes()
                    .read(Narrations.read("friday.txt", NOTES.getBytes(StandardCharsets.UTF_8)), "Nils Ockham");
            NotesDecisions sets = NotesDecisions.of(archive);
            List<List<String>> outline = Carrying.outline(notes);
            String id = sets.of("friday.txt", outline).id();
            assertThat(sets.put(id, "friday.txt", 0, new NotesDecisions.Review(decided, outline))
                            .done())
                    .isTrue();
        }
    }

    private Said csv(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("friday.txt"), text);
        return Said.to(
                        "notes",
                        file.toString(),
                        "--data",
                        data.toString(),
                        "--prospect",
                        "Nils Ockham",
                        "--game",
                        "Opener",
                        "--format",
                        "csv")
                .isPolite();
    }
}
