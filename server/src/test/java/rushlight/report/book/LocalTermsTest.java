package rushlight.report.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** A user's own terms, and terms that went. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LocalTermsTest {
    private static final String OVERLAY = """
            @prefix dct: <http://purl.org/dc/terms/> .
            @prefix kb: <https://rushlight.example/id/> .
            @prefix owl: <http://www.w3.org/2002/07/owl#> .
            @prefix rl: <https://rushlight.example/def#> .
            @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
            @prefix source: <https://rushlight.example/source/> .

            kb:barn-door a skos:Concept , rl:RushMove ;
              skos:prefLabel "barn <door> & \\"gate\\""@en ;
              skos:definition "Swings wide & shuts <late>."@en ;
              rl:requires kb:rip ;
              dct:source source:common-practice ; rl:support "common-practice" .
            kb:barn-door--cue a rl:Teaching ;
              rl:about kb:barn-door ; rl:part rl:cue ; rl:order 1 ;
              rl:text "<script>alert('x')</script>"@en ;
              dct:source source:common-practice ; rl:support "common-practice" .
            kb:old-gate a skos:Concept , rl:RushMove ;
              skos:prefLabel "old gate"@en ; skos:definition "An older name."@en ;
              owl:deprecated true ; dct:isReplacedBy kb:barn-door ;
              dct:source source:common-practice ; rl:support "common-practice" .
            """;

    @TempDir
    private static Path temp;

    private static SortedMap<String, byte[]> files = new java.util.TreeMap<>();

    @BeforeAll
    static void the_book_with_an_overlay() throws IOException {
        Path overlay = Files.writeString(temp.resolve("overlay.ttl"), OVERLAY);
        Ontology ontology = Ontology.withOverlay(overlay);
        files = Site.of(ontology, Taxonomy.of(ontology));
    }

    @Test
    void a_term_of_ones_own_is_marked_wherever_it_shows() {
        assertThat(page("concept/barn-door.html").select("h1").text()).isEqualTo("barn <door> & \"gate\" (yours)");
        assertThat(page("concept/barn-door.html").select(".part").text()).contains("(yours)");
        assertThat(page("kind/rush-move.html").select("a[href$=barn-door.html]").text())
                .contains("(yours)");
        assertThat(page("a-z.html").select("a[href$=barn-door.html]").text()).contains("(yours)");
        assertThat(page("concept/rip.html").select("a[href$=barn-door.html]").text())
                .contains("(yours)");
        assertThat(page("concept/rip.html").select("h1").text()).isEqualTo("rip");
    }

    @Test
    void markup_in_a_term_is_shown_and_never_run() {
        Document page = page("concept/barn-door.html");
        assertThat(page.select("script")).isEmpty();
        assertThat(page.text()).contains("<script>alert('x')</script>", "Swings wide & shuts <late>.");
    }

    @Test
    void a_term_that_went_has_a_page_that_leads_to_what_took_its_place() {
        assertThat(page("concept/old-gate.html").select(".retired").text()).contains("Retired", "barn");
        assertThat(page("concept/old-gate.html").select(".retired a").attr("href"))
                .isEqualTo("../concept/barn-door.html");
        assertThat(page("a-z.html").select("li:contains(old gate) a").attr("href"))
                .isEqualTo("concept/barn-door.html");
    }

    @Test
    void the_data_holds_it_too() {
        assertThat(text(Site.TURTLE)).contains("kb:barn-door a ", "kb:barn-door--cue a rl:Teaching");
        assertThat(text(Site.JSON_LD)).contains("\"kb:barn-door\"", "\"kb:barn-door--cue\"");
    }

    private static Document page(String name) {
        return Jsoup.parse(text(name));
    }

    private static String text(String name) {
        return new String(files.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
    }
}
