package rushlight.report.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldSheetTest {
    private final Document page = Jsoup.parse(new FieldSheet().of(Weeks.two()));

    @Test
    void every_block_has_a_box_to_tick_and_every_rep_a_small_one() {
        assertThat(page.select(".box")).hasSize(6);
        assertThat(page.select(".reps i")).hasSize(6 + 8 + 10 + 8 + 10);
        assertThat(page.select("article")).hasSize(4);
        assertThat(page.select("article").get(1).text()).isEqualTo("Tuesday, 2026-08-04 nothing planned");
    }

    @Test
    void it_says_who_decides_before_anything_is_done_and_cautions_beside_the_drills() {
        assertThat(page.select(".decides").text()).isEqualTo(Weeks.two().decides());
        assertThat(page.select("article").get(2).select(".caution").text())
                .isEqualTo("Caution. " + Weeks.SHOULDER + " Nobody goes to the ground.");
        assertThat(page.select("article").get(3).select(".caution")).isEmpty();
        assertThat(page.text()).contains("12 min, 6 min of full contact", "15 min, no full contact", "Coach, date");
    }

    @Test
    void it_stands_alone_and_needs_no_color() {
        assertThat(page.select("[src], script, link[rel=stylesheet]")).isEmpty();
        assertThat(page.select("style").get(0).data())
                .contains("@page", "@media print")
                .doesNotContainPattern("#(?!111|fff|555|ccc|333|444|777)[0-9a-f]{3}");
    }

    @Test
    void markup_in_what_people_wrote_stays_text() {
        Practice odd = new Practice("x", "<b>Tam</b>", "t", "d", List.of(), List.of(), List.of());

        assertThat(Jsoup.parse(new FieldSheet().of(odd)).select("h1 b")).isEmpty();
    }
}
