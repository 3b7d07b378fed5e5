package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.OutputType;

/** Everybody in one table, with the findings one chooses. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class BoardPageTest {
    private static final String SCROLLER = "document.querySelector('.scroller')";

    private final Browser browser;

    BoardPageTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void words_that_no_finding_has_are_told_so() {
        browser.open("/board");
        browser.one("#add-finding").sendKeys("zzzz");

        browser.sees("No finding is called like that.");

        browser.one("#add-finding").clear();
        browser.one("#add-finding").sendKeys("counter");
        browser.one("[role=option]");
        assertThat(browser.text()).doesNotContain("No finding is called like that.");
    }

    @Test
    void a_board_with_more_columns_than_room_has_a_shadow_where_they_go_on() throws IOException {
        browser.open("/board");
        assertThat(browser.script("return " + SCROLLER + ".scrollWidth > " + SCROLLER + ".clientWidth"))
                .isEqualTo(true);

        int before = light();
        browser.script(SCROLLER + ".scrollLeft = 10000");
        int atTheEnd = light();

        assertThat(before).isLessThan(atTheEnd);
    }

    /** How light the right edge of the board is at its foot, from 0 to 255. */
    private int light() throws IOException {
        browser.script(SCROLLER + ".scrollIntoView({block: 'end', behavior: 'instant'})");
        String edge = "const box = " + SCROLLER + ".getBoundingClientRect(); return Math.round(";
        int x = (int) browser.number(edge + "box.right)") - 2;
        int y = (int) browser.number(edge + "box.bottom)") - 4;
        byte[] picture = browser.driver().getScreenshotAs(OutputType.BYTES);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture));
        return image.getRGB(x, y) & 0xFF;
    }
}
