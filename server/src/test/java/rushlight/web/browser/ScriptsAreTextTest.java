package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a note, a name, a label or a file is called, it is shown as it was written and does nothing. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class ScriptsAreTextTest {
    private static final String HOSTILE = Stage.HOSTILE;

    @TempDir
    private Path folder;

    private final Browser browser;

    ScriptsAreTextTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void a_hostile_log_is_read_as_text_on_every_page() throws IOException {
        Path file = Files.writeString(folder.resolve("<script>window.struck=1<_script>.csv"), """
            rep,prospect,game,opponent,phase,exchange,faults,result,evaluator,note
            r1,%1$s Vane,%1$s Bowl,%1$s State,pass-rush,bull-rush > [sits-down],,lost,%1$s Eye,%1$s said
            r2,%1$s Vane,%1$s Bowl,%1$s State,pass-rush,bull-rush,%1$s,lost,%1$s Eye,
            """.formatted(HOSTILE));
        browser.open("/import");
        browser.one("#csv").sendKeys(file.toString());
        browser.sees("1 fault in <script>window.struck=1<_script>.csv");
        browser.click(browser.named("main button", "Take in the 1 good rep"));
        browser.sees("1 rep came");

        browser.open("/board");
        browser.sees(HOSTILE + " Vane");
        browser.click(browser.named("th a", "Vane"));
        browser.sees(HOSTILE + " Vane");
        browser.click(browser.named(".links a", "His film log"));
        browser.sees(HOSTILE + " Bowl");
        browser.click(browser.one(".grid tbody a"));
        browser.sees("What the rules make of it");
        browser.sees(HOSTILE + " Eye");
        assertThat(browser.one("#cell-note").getDomProperty("value")).isEqualTo(HOSTILE + " said");
        assertThat(struck()).isEqualTo("");
    }

    @Test
    void a_hostile_label_is_a_name_like_others() {
        browser.open("/technique/bull-rush");
        browser.sees(HOSTILE + " freight");
        assertThat(struck()).isEqualTo("");
    }

    @Test
    void a_hostile_question_is_read_as_words() {
        browser.open("/?q=" + URLEncoder.encode("who bulls " + HOSTILE, StandardCharsets.UTF_8));
        browser.sees("Read as");
        assertThat(struck()).isEqualTo("");
        assertThat(browser.one(".question input").getDomProperty("value")).isEqualTo("who bulls " + HOSTILE);
    }

    private Object struck() {
        return browser.script("return window.struck");
    }
}
