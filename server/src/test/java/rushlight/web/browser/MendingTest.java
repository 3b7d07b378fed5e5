package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A film log with slips in it: found, mended beside its rows, taken in. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class MendingTest {
    @TempDir
    private Path folder;

    private final Browser browser;

    MendingTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void a_bad_csv_is_mended_where_it_stands_and_taken_in() throws IOException {
        pick("slips.csv", """
            rep,prospect,game,phase,exchange,faults,result,note
            r1,Jory Penwick,Mended Bowl,pas-rush,bull-rush > [sits-down],,lost,"two
            lines"
            r2,Jory Penwick,Mended Bowl,pass-rush,bul rush > [sits-down],,lost,
            r3,Jory Penwick,Mended Bowl,pass-rush,bull-rush,high-pads,won,
            """);
        browser.sees("2 faults in slips.csv");
        browser.sees("there is no \"bul rush\"");
        browser.sees("1 rep is good");

        browser.click(browser.named(".nearest button", "bull rush"));
        browser.one("#fault-0").clear();
        browser.one("#fault-0").sendKeys("pass-rush");
        browser.click(browser.named("main button", "Check again"));
        browser.sees("slips.csv can be taken in");
        browser.click(browser.named("main button", "Take in 3 reps"));
        browser.sees("slips.csv is in");
        assertThat(browser.complaints()).isEmpty();

        browser.open("/film/jory-penwick");
        browser.sees("3 readings");
    }

    @Test
    void the_good_rows_can_be_taken_in_alone() throws IOException {
        pick("half.csv", """
            rep,prospect,game,phase,result
            r1,Ansel Tully,Half Bowl,pass-rush,won
            r2,Ansel Tully,Half Bowl,hovering,won
            """);
        browser.sees("1 fault in half.csv");
        browser.click(browser.named("main button", "Take in the 1 good rep"));
        browser.sees("1 rep came, 1 fault stayed out");
    }

    @Test
    void a_file_that_is_not_utf_8_is_refused_as_it_is_and_no_letter_of_it_is_guessed() throws IOException {
        pick("excel.csv", """
            rep,prospect,game,phase,result
            r1,Zo\u00eb O\u2019Hara,Excel Bowl,pass-rush,won
            """, Charset.forName("windows-1252"));

        browser.sees("the byte 0xEB is not UTF-8; save the file as \"CSV UTF-8\"");
        browser.sees("Nothing can be mended here");
        assertThat(browser.all("main button")).isEmpty();
        assertThat(browser.script("return fetch('/api/logs').then(answer => answer.text())")
                        .toString())
                .doesNotContain("Excel Bowl");
        assertThat(browser.complaints()).isEmpty();
    }

    private void pick(String name, String text) throws IOException {
        pick(name, text, StandardCharsets.UTF_8);
    }

    private void pick(String name, String text, Charset form) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text, form);
        browser.open("/import");
        browser.one("#csv").sendKeys(file.toString());
    }
}
