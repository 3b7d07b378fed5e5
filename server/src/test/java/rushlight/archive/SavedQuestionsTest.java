package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.ask.SavedQuestion;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SavedQuestionsTest {
    @TempDir
    Path folder;

    @Test
    void a_question_is_kept_until_it_is_forgotten() {
        try (Archive archive = Archive.open(folder)) {
            SavedQuestions.of(archive).save("Spill players", "who wrong-arms <script>", "for Friday");
        }
        try (Archive archive = Archive.open(folder)) {
            SavedQuestions saved = SavedQuestions.of(archive);
            SavedQuestion kept = saved.named("spill-players").orElseThrow();
            assertThat(kept.question()).isEqualTo("who wrong-arms <script>");
            assertThat(kept.note()).isEqualTo("for Friday");

            saved.save("SPILL players", "who spills", "");
            assertThat(saved.all()).extracting(SavedQuestion::question).containsExactly("who spills");

            assertThat(saved.forget("spill players")).isTrue();
            assertThat(saved.forget("spill players")).isFalse();
            assertThat(saved.all()).isEmpty();
        }
    }

    @Test
    void keeping_a_question_is_no_change_of_the_film() {
        try (Archive archive = Archive.open(folder)) {
            long before = archive.store().revision();
            SavedQuestions.of(archive).save("one", "who spills", "");

            assertThat(archive.store().revision()).isEqualTo(before);
            ByteArrayOutputStream turtle = new ByteArrayOutputStream();
            archive.store().writeTurtle(turtle);
            assertThat(turtle.toString(StandardCharsets.UTF_8)).doesNotContain("who spills");
        }
    }

    @Test
    void a_name_without_letters_is_none() {
        try (Archive archive = Archive.open(folder)) {
            assertThatThrownBy(() -> SavedQuestions.of(archive).save("--", "who spills", ""))
                    .hasMessageContaining("needs a letter");
        }
    }
}
