package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import rushlight.web.browser.Stage.Given;

/** Spoken notes beside the reps they propose: decided on by key, taken back, taken in. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@ExtendWith(Given.class)
class NotesPageTest {
    private static final String SPOKEN = """
        WEBVTT

        00:04.000 --> 00:09.000
        Wide nine. Chops, dips, flattens. Sack.

        00:12.000 --> 00:15.000
        Look at that again. See the dip.

        00:20.000 --> 00:24.000
        Next one. Five technique. Bull rush, gets stoned.
        """;

    private static final String EARLIER = """
        WEBVTT

        00:02.000 --> 00:05.000
        First one. Seven technique. Long arm, pressure.

        """;

    private static final String OTHER = """
        WEBVTT

        00:01.000 --> 00:02.000
        Spin move, hurry.
        """;

    @TempDir
    private Path folder;

    private final Browser browser;

    NotesPageTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void notes_are_decided_on_by_key_and_taken_in() throws IOException {
        pick("friday.vtt", SPOKEN);
        browser.sees("2 reps in friday.vtt");
        browser.sees("Looked at again: rep 1");
        int tags = browser.all(".tag-keys").size();
        assertThat(Barriers.on(browser.driver())).isEmpty();
        assertThat(browser.scrollsSideways()).isFalse();

        browser.click(browser.one("h2"));
        browser.keys("j");
        assertThat(browser.all("mark.lit").stream().map(mark -> mark.getText().toLowerCase(java.util.Locale.ROOT)))
                .containsExactly("wide nine");
        assertThat(browser.one(".tag.lit").getText()).contains("Wide nine");
        browser.keys("a", "r");
        browser.sees("1 tag accepted on 1 rep · " + (tags - 2) + " tags to look at");
        assertThat(browser.all(".tag.rejected")).hasSize(1);
        browser.keys("u");
        browser.sees("1 tag accepted on 1 rep · " + (tags - 1) + " tags to look at");
        for (int i = 1; i < tags; i++) {
            browser.keys("a");
        }
        browser.sees(tags + " tags accepted on 2 reps · every tag is decided on");

        browser.click(browser.named("main button", "Take in what is accepted"));
        browser.sees("whose reps these are");
        browser.one("#prospect").sendKeys("Perrin Vale");
        browser.one("#game").sendKeys("Spoken Bowl", Keys.TAB);
        browser.sees("every tag is decided on");
        browser.click(browser.named("main button", "Take in what is accepted"));
        browser.sees("2 reps of friday.vtt came in");
        assertThat(browser.complaints()).isEmpty();
        browser.click(browser.named("main [role=alert] a", "his film log"));
        browser.sees("2 readings");
    }

    @Test
    void what_was_decided_still_holds_when_the_corrected_file_is_opened() throws IOException {
        pick("monday.vtt", SPOKEN);
        browser.sees("2 reps in monday.vtt");
        browser.click(browser.one("h2"));
        browser.keys("j", "a");
        browser.sees("1 tag accepted");

        pick("monday.vtt", SPOKEN.replace("gets stoned", "and he walks him back, hurry"));

        browser.sees("2 reps in monday.vtt");
        browser.sees("1 tag accepted");

        pick("monday.vtt", later());

        browser.sees("3 reps in monday.vtt");
        browser.sees("1 tag accepted on 1 rep");
        assertThat(browser.one(".tag.accepted").getText()).contains("Wide nine");
        assertThat(browser.one(".stretch:has(.tag.accepted)").getText()).contains("Rep 2");
    }

    @Test
    void another_file_of_the_same_name_takes_no_decision_away() throws IOException {
        pick("sunday.vtt", SPOKEN);
        browser.sees("2 reps in sunday.vtt");
        browser.click(browser.one("h2"));
        browser.keys("j", "a");
        browser.sees("1 tag accepted");

        pick("sunday.vtt", OTHER);
        browser.sees("1 rep in sunday.vtt");
        browser.sees("0 tags accepted");
        pick("sunday.vtt", SPOKEN);

        browser.sees("1 tag accepted");
    }

    @Test
    void the_words_are_shown_with_every_mark_between_them() throws IOException {
        pick("marks.vtt", SPOKEN);
        browser.sees("2 reps in marks.vtt");
        String shown = browser.all(".stretch .words").stream()
                .map(words -> String.valueOf(words.getDomProperty("textContent")))
                .collect(java.util.stream.Collectors.joining());

        assertThat(shown)
                .isEqualTo("Wide nine. Chops, dips, flattens. Sack.\nLook at that again. See the dip.\n"
                        + "Next one. Five technique. Bull rush, gets stoned.");
    }

    @Test
    void hostile_notes_are_read_as_text() throws IOException {
        pick("lines.txt", "[0:04] Wide 9, rips. " + Stage.HOSTILE + "\n[0:09] bull rush " + Stage.HOSTILE + "\n");
        browser.sees(Stage.HOSTILE);
        assertThat(browser.script("return window.struck")).isEqualTo("");
    }

    /** The notes with a rep before them, which makes all that was there ten minutes later. */
    private static String later() {
        return SPOKEN.replace("00:", "00:10:")
                .replace("Wide nine. Chops", "Next one. Wide nine. Chops")
                .replace("WEBVTT\n", EARLIER);
    }

    private void pick(String name, String text) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text);
        browser.open("/notes");
        browser.one("#notes-file").sendKeys(file.toString());
    }
}
