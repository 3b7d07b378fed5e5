package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import rushlight.accounts.Accounts;
import rushlight.accounts.Role;
import rushlight.archive.Archive;
import rushlight.web.http.Server;
import rushlight.web.http.Serving;

/** Where there are accounts one signs in, works, changes the password and signs out, without a mouse. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class SignInPageTest {
    private static final String PASSWORD = "four words in a row";
    private static final int QUICK = 4;

    private final Browser stage;

    SignInPageTest(Browser stage) {
        this.stage = stage;
    }

    @Test
    void one_signs_in_is_led_back_to_the_page_one_wanted_and_signs_out(@TempDir Path folder) {
        Accounts accounts = Accounts.in(folder, QUICK, Clock.systemUTC());
        accounts.add("Kim Orr", "", Role.EVALUATOR, PASSWORD.toCharArray());
        try (Archive archive = Archive.open(folder.resolve("film"));
                Server server = Server.start(serving(archive, accounts, folder))) {
            Browser browser = new Browser(stage.driver(), server.address());
            browser.open("/cross-check");
            browser.waitsUntil("to be asked who one is", () -> browser.path().equals("/sign-in?next=%2Fcross-check"));
            browser.one("#sign-in-name");
            assertThat(Barriers.on(browser.driver())).isEmpty();
            browser.look(Browser.PHONE, 844, true);
            assertThat(browser.scrollsSideways()).isFalse();
            assertThat(Barriers.on(browser.driver())).isEmpty();
            browser.look(Browser.DESK, 900, false);

            browser.tabTo("sign-in-name");
            browser.keys("kim orr", Keys.TAB, "not these words", Keys.ENTER);
            browser.sees("The name or the password is wrong.");
            browser.keys(PASSWORD, Keys.ENTER);
            browser.waitsUntil("to be led back", () -> browser.path().equals("/cross-check"));
            browser.sees("Kim Orr, evaluator");
            assertThat(browser.script("return document.cookie"))
                    .as("no script reads the session")
                    .isEqualTo("");

            browser.open("/sign-in");
            browser.tabTo("password-old");
            browser.keys(PASSWORD, Keys.TAB, "other words in a row", Keys.TAB, "other words in a row", Keys.ENTER);
            browser.sees("Your password is another one now");
            assertThat(Barriers.on(browser.driver())).isEmpty();

            browser.click(browser.named("button", "Sign out"));
            browser.one("#sign-in-name");
            browser.open("/board");
            browser.waitsUntil("to be asked again", () -> browser.path().startsWith("/sign-in"));
            assertThat(accounts.signIn("Kim Orr", "other words in a row".toCharArray()))
                    .isPresent();
        }
        stage.complaints();
    }

    private static Serving serving(Archive archive, Accounts accounts, Path folder) {
        return new Serving(
                List.of(new Serving.Team("", folder, archive)),
                Optional.of(new Serving.Entrance(accounts, folder)),
                "127.0.0.1",
                0,
                false,
                false,
                Optional.empty(),
                Serving.Limits.usual());
    }
}
