package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** Spoken notes beside the reps they propose: decided on by key, taken back, taken in. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
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
    void what_this_browser_kept_before_the_server_did_is_brought_to_it_once() throws IOException {
        browser.open("/notes");
        browser.script("""
            return fetch('/api/notes?name=older.vtt', {method: 'POST', headers: {'Content-Type': 'text/plain'}, body: arguments[0]})
              .then(answer => answer.json()).then(sheet => {
                const outline = sheet.notes.reps.map(rep => rep.tags.map(tag => tag.key));
                localStorage.setItem('notes:older.vtt', JSON.stringify({chosen: {[outline[0][0]]: true}, phases: {}, outline}));
              })
            """, SPOKEN);
        pick("older.vtt", SPOKEN);
        browser.sees("1 tag accepted on 1 rep");
        assertThat(browser.script("return String(localStorage.getItem('notes:older.vtt'))"))
                .isEqualTo("null");

        pick("older.vtt", SPOKEN);

        browser.sees("1 tag accepted on 1 rep");
    }

    @Test
    void somebody_who_decides_on_the_same_notes_gets_both_versions_shown() throws IOException {
        pick("shared.vtt", SPOKEN);
        browser.sees("2 reps in shared.vtt");
        browser.click(browser.one("h2"));
        browser.keys("j", "a");
        browser.sees("\u00b7 kept");
        browser.script("return fetch('/api/notes/decisions/shared-vtt').then(a => a.json()).then(one =>"
                + " fetch('/api/notes/decisions/shared-vtt',{method: 'PUT', headers: {'Content-Type':"
                + " 'application/json', 'If-Match': '\"d' + one.version + '\"'}, body: JSON.stringify({file:"
                + " one.file, decided: {chosen: {}}, outline: one.outline})})).then(a => a.status)");

        browser.keys("r");
        browser.sees("Somebody decided on these notes after you opened them.");
        browser.click(browser.named("main [role=alert] button", "Keep mine"));
        browser.sees("\u00b7 kept");
        pick("shared.vtt", SPOKEN);

        browser.sees("1 tag accepted on 1 rep");
        assertThat(browser.all(".tag.rejected")).hasSize(1);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void a_tag_is_changed_and_added_and_reps_are_split_and_joined_by_key_and_all_of_it_taken_back() throws IOException {
        pick("review.vtt", SPOKEN);
        browser.sees("2 reps in review.vtt");
        browser.click(browser.one("h2"));
        browser.keys("j", "j", "c");
        browser.one(".tag-editor input").sendKeys("spin");
        browser.one(".tag-editor [role=option]");
        browser.keys(Keys.ENTER);
        browser.sees("read as");
        assertThat(browser.one(".tag.lit.accepted").getText().toLowerCase(java.util.Locale.ROOT))
                .contains("spin");

        browser.script(
                "const words = document.querySelector('.words'), mark = [...words.querySelectorAll('mark')].find(one"
                        + " => /dips/.test(one.textContent));const range = document.createRange();"
                        + " range.selectNodeContents(mark); getSelection().removeAllRanges();"
                        + " getSelection().addRange(range)");
        browser.keys("t");
        browser.one(".tag-editor input").sendKeys("long arm");
        browser.one(".tag-editor [role=option]");
        browser.keys(Keys.ENTER);
        browser.sees("added by you");
        browser.sees("2 tags accepted on 1 rep");
        assertThat(browser.one(".tag.lit").getText()).contains("\u201cdips\u201d");

        browser.keys("j", "b");
        browser.sees("Rep 1b");
        browser.keys("k", "m");
        browser.waitsUntil("the reps to be joined", () -> !browser.text().contains("Rep 1b"));
        browser.keys("m");
        browser.sees("Goes on with rep 1.");
        browser.click(browser.named(".stretch button", "Make it a rep of its own"));
        browser.waitsUntil("the rep to stand alone", () -> !browser.text().contains("Goes on with rep 1."));
        browser.keys("m");
        browser.waitsUntil(
                "a third rep",
                () -> browser.text().contains("Goes on") || browser.text().contains("Rep 2"));

        browser.sees("\u00b7 kept");
        pick("review.vtt", SPOKEN);
        browser.sees("added by you");
        browser.sees("read as");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void a_move_of_his_is_found_and_one_that_only_comes_near_is_taken_by_choice_alone() throws IOException {
        pick("near.vtt", SPOKEN);
        browser.sees("2 reps in near.vtt");
        browser.click(browser.one("h2"));
        browser.keys("j", "j", "c");
        browser.one(".tag-editor input").sendKeys("spim");
        browser.one(".tag-editor [role=option]");
        browser.keys(Keys.ENTER);
        browser.sees("No term begins with \u201cspim\u201d. Choose one of the list with the arrow keys.");
        assertThat(browser.text()).doesNotContain("read as");
        assertThat(Barriers.on(browser.driver())).isEmpty();

        browser.one(".tag-editor input").clear();
        browser.one(".tag-editor input").sendKeys("spin", Keys.ENTER);
        browser.sees("read as");
        assertThat(browser.one(".tag.lit .tag-name").getText().toLowerCase(java.util.Locale.ROOT))
                .endsWith("spin");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void the_list_of_terms_opens_above_the_bar_at_the_foot() throws IOException {
        pick("foot.txt", "[0:04] Wide 9, rips, dips, flattens, chops, spins, sack.\n".repeat(12));
        browser.sees("12 reps in foot.txt");
        browser.click(browser.one("h2"));
        browser.keys("j", "j", "j", "j", "j", "j", "j", "j", "j", "j", "j", "c");
        browser.one(".tag-editor input").sendKeys("s");
        browser.one(".tag-editor [role=option]");

        browser.waitsUntil(
                "to see the whole list",
                () -> browser.script("const list = document.querySelector('.tag-editor [role=listbox]'),"
                                + " box = list.getBoundingClientRect(); return [box.top + 8, box.bottom - 8].every(y =>"
                                + " list.contains(document.elementFromPoint(box.left + 40, y)))")
                        .equals(true));
    }

    @Test
    void the_heading_counts_the_reps_as_they_are_left() throws IOException {
        pick("joined.vtt", SPOKEN);
        browser.sees("2 reps in joined.vtt");
        browser.click(browser.one("h2"));

        browser.keys("j", "m");
        browser.sees("1 rep in joined.vtt");
        browser.keys("u");
        browser.sees("2 reps in joined.vtt");
    }

    @Test
    void a_file_of_notes_that_is_not_utf_8_is_told_by_its_line() throws IOException {
        Path file = Files.write(
                folder.resolve("excel.txt"),
                "[0:04] Wide 9, rips, sack.\n[0:09] Bull rush by Zo\u00eb.\n".getBytes(StandardCharsets.ISO_8859_1));
        browser.open("/notes");
        browser.one("#notes-file").sendKeys(file.toString());

        browser.sees("Line 2: The file is not all UTF-8");
    }

    @Test
    void a_click_on_the_words_turns_the_film_to_their_line() throws IOException {
        pick("filmed.vtt", SPOKEN);
        browser.sees("2 reps in filmed.vtt");
        browser.one("#video").sendKeys("calder-mill-at-harrow-vale.webm", Keys.TAB);
        browser.click(browser.all(".stretch .words").get(1));

        browser.waitsUntil(
                "the film to stand at the second line",
                () -> browser.script("const film = document.querySelector('video'); return Boolean(film.src) &&"
                                + " film.readyState > 0 && Math.abs(film.currentTime - 12) < 0.2")
                        .equals(true));
        browser.click(browser.named("button.cue", "0:20"));
        browser.waitsUntil(
                "the film to stand at the third line",
                () -> browser.script("return Math.abs(document.querySelector('video').currentTime - 20) < 0.2")
                        .equals(true));
    }

    @Test
    void words_that_were_tagged_by_hand_are_taken_as_a_name_on_the_page_and_brought_back() throws IOException {
        String said = SPOKEN.replace("Chops, dips", "Chops, shoelaces him, dips");
        pick("own-words.vtt", said);
        browser.sees("2 reps in own-words.vtt");
        browser.script("return fetch('/api/notes/decisions/own-words-vtt', {method: 'PUT', headers: {'Content-Type':"
                + " 'application/json', 'If-None-Match': '*'}, body: JSON.stringify({file: 'own-words.vtt', decided:"
                + " {added: [1, 2].map(rep => ({concept: 'long-arm', text: 'shoelaces him', rep, after: ''}))}, outline:"
                + " [['chop:chops'], ['sack:sack']]})}).then(a => a.status)");
        browser.open("/notes");

        browser.click(browser.named(".learned summary", "What your decisions teach"));
        browser.sees("\u201cshoelaces him\u201d was tagged as long arm twice.");
        browser.sees("own-words.vtt, rep 1 and rep 2");
        assertThat(Barriers.on(browser.driver())).isEmpty();
        browser.click(browser.named(".learned button", "Take"));
        browser.sees("is a name of long arm from now on");
        pick("own-words-again.vtt", said);
        browser.sees("2 reps in own-words-again.vtt");
        assertThat(browser.all(".tag-said").stream().map(tag -> tag.getText().toLowerCase(java.util.Locale.ROOT)))
                .anyMatch(words -> words.contains("shoelaces him"));

        browser.click(browser.named(".learned summary", "What your decisions teach"));
        browser.click(browser.named(".learned summary", "taken or ignored"));
        browser.click(browser.named(".learned button", "Bring back"));
        browser.sees("is a name of long arm no more");
        browser.look(Browser.PHONE, 800, true);
        assertThat(browser.scrollsSideways()).isFalse();
        assertThat(browser.complaints()).isEmpty();
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
