package rushlight.report.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.jena.graph.Graph;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.riot.RDFDataMgr;
import org.apache.jena.sparql.graph.GraphFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(ReplaceUnderscores.class)
class PublishedBookTest {
    private static final Map<Path, Document> PAGES = new TreeMap<>();

    @BeforeAll
    static void every_page_is_read_once() throws IOException {
        for (Path page : Published.pages()) {
            PAGES.put(page, Jsoup.parse(Files.readString(page)));
        }
    }

    @Test
    void no_link_is_broken_and_no_anchor_is_missing() {
        Map<Path, Set<String>> anchors = new HashMap<>();
        PAGES.forEach((path, page) ->
                anchors.put(path, new TreeSet<>(page.select("[id]").eachAttr("id"))));
        Set<String> broken = new TreeSet<>();
        int[] followed = {0};
        PAGES.forEach((path, page) -> page.select("a[href]").forEach(link -> {
            followed[0]++;
            URI to = path.toUri().resolve(link.attr("href"));
            Path target = Path.of(URI.create(to.toString().replaceFirst("#.*", "")));
            boolean there = Files.exists(target);
            boolean anchored = to.getFragment() == null
                    || anchors.getOrDefault(target, Set.of()).contains(to.getFragment());
            if (!there || !anchored || link.text().isBlank()) {
                broken.add(path.getFileName() + " -> " + link.attr("href"));
            }
        }));
        assertThat(broken).isEmpty();
        assertThat(followed[0]).isGreaterThan(20_000);
    }

    @Test
    void nothing_asks_for_anything_outside_the_folder() throws IOException {
        Path root = Published.book();
        PAGES.forEach((path, page) -> {
            for (Element element : page.select("[src], [href], [data], [action], [srcset], [poster]")) {
                for (String name : new String[] {"src", "href", "data", "action", "srcset", "poster"}) {
                    String value = element.attr(name);
                    if (!value.isEmpty() && !value.equals("data:,")) {
                        assertThat(value).as(path + " " + element.tagName()).doesNotContain(":", "//");
                        assertThat(path.resolveSibling(value.replaceFirst("#.*", ""))
                                        .normalize())
                                .startsWith(root);
                    }
                }
            }
            assertThat(page.select("[style], style, [onclick], iframe, object, embed, base, meta[http-equiv]"))
                    .isEmpty();
        });
        assertThat(Files.readString(root.resolve("style.css"))).doesNotContain("url(", "@import", "http");
        assertThat(Files.readString(root.resolve("filter.js"))).doesNotContain("fetch", "import", "http", "XMLHttp");
    }

    @Test
    void every_page_is_valid_html() throws Exception {
        assertThat(new HtmlChecker().complaints(Published.pages())).isEmpty();
    }

    @Test
    void a_page_that_is_not_valid_is_noticed(@TempDir Path folder) throws Exception {
        Path page = folder.resolve("bad.html");
        String good = Files.readString(Published.book().resolve("index.html"));
        Files.writeString(page, good.replace("</h1>", "</h1><p><div role=\"nothing\" id=\"main\"></p>"));
        assertThat(new HtmlChecker().complaints(List.of(page))).anyMatch(said -> said.contains("bad.html line"));
    }

    @Test
    void every_concept_has_a_page_and_every_name_stands_in_the_list_from_a_to_z() {
        Taxonomy taxonomy = Taxonomy.of(Ontology.packaged());
        Set<String> listed =
                new TreeSet<>(page("a-z.html").select(".names-list a").eachText());
        for (Concept concept : taxonomy.concepts()) {
            Document page = page("concept/" + concept.slug() + ".html");
            assertThat(page.select("h1").text())
                    .isEqualTo(concept.label().strip().replaceAll("\\s+", " "));
            assertThat(page.text()).contains(concept.definition().replaceAll("\\s+", " "));
            assertThat(listed).contains(concept.label());
            assertThat(listed).containsAll(concept.altLabels());
            for (String kind : concept.classes()) {
                assertThat(page("kind/"
                                        + kind.replaceAll("(?<=.)([A-Z])", "-$1")
                                                .toLowerCase(java.util.Locale.ROOT) + ".html")
                                .select("dt a[href$=/" + concept.slug() + ".html]"))
                        .hasSize(1);
            }
        }
    }

    @Test
    void turtle_and_json_ld_read_back_as_the_book() {
        Ontology ontology = Ontology.packaged();
        Graph expected = GraphFactory.createDefaultGraph();
        ontology.graph().find().forEachRemaining(expected::add);
        ontology.lessons().find().forEachRemaining(expected::add);
        for (String name : new String[] {"rushlight.ttl", "rushlight.jsonld"}) {
            Graph read =
                    RDFDataMgr.loadGraph(Published.book().resolve(name).toUri().toString());
            assertThat(read.size()).as(name).isEqualTo(expected.size());
            assertThat(ModelFactory.createModelForGraph(read)
                            .isIsomorphicWith(ModelFactory.createModelForGraph(expected)))
                    .as(name)
                    .isTrue();
        }
    }

    @Test
    void the_turtle_is_in_order_and_its_blank_nodes_have_no_names() throws IOException {
        String turtle = Files.readString(Published.book().resolve("rushlight.ttl"));
        List<String> moves = Pattern.compile("^kb:([a-z0-9-]+) ", Pattern.MULTILINE)
                .matcher(turtle)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(moves).isSorted().contains("bull-rush", "long-arm--cue").doesNotHaveDuplicates();
        assertThat(turtle).doesNotContain("_:").contains("@prefix kb: <https://rushlight.example/id/> .");
        assertThat(Files.readString(Published.book().resolve("rushlight.jsonld")))
                .contains("\"kb:bull-rush\"");
    }

    @Test
    void the_same_book_gives_the_same_bytes(@TempDir Path folder) throws IOException {
        Path again = folder.resolve("again");
        Published.publish(again);
        List<Path> files = Published.files(Published.book()).toList();
        assertThat(Published.files(again)).hasSameSizeAs(files);
        for (Path file : files) {
            Path name = Published.book().relativize(file);
            assertThat(Files.mismatch(file, again.resolve(name)))
                    .as(name.toString())
                    .isEqualTo(-1);
        }
    }

    @Test
    void a_move_is_told_in_the_order_of_the_lesson_each_sentence_with_its_support() {
        Document page = page("concept/long-arm.html");
        assertThat(page.select(".part h3").eachText())
                .containsSubsequence("when to use it", "footwork", "hands", "hand by side", "cue on film", "one rep");
        assertThat(page.select(".part .said"))
                .isNotEmpty()
                .allSatisfy(said -> assertThat(said.select(".support").text())
                        .isIn("strong support", "fair support", "common practice"));
        assertThat(page.select(".caution").text()).contains("foul");
        assertThat(page.select("svg[role=img] > title").eachText())
                .contains("What long arm beats, and what beats it", "What long arm needs");
        assertThat(page.select(".pairs h3").text()).contains("anchor / hop");
        assertThat(page.select(".evidence a[href^=../sources.html#]")).isNotEmpty();
    }

    @Test
    void a_block_is_answered_by_duty() {
        Document page = page("concept/kick-out-block.html");
        Element spill = fit(page, "spill assignment");
        Element box = fit(page, "box assignment");
        assertThat(spill.select("p:contains(Right)").text())
                .contains("wrong-arm")
                .doesNotContain("set the edge");
        assertThat(box.select("p:contains(Wrong)").text()).contains("wrong-arm");
        assertThat(box.select(".depends").text()).contains("Turned around for");
    }

    @Test
    void a_rule_note_names_its_edition_and_defers() {
        List<Document> noted = PAGES.values().stream()
                .filter(page -> page.select("#rules").size() == 1)
                .toList();
        assertThat(noted).hasSizeGreaterThan(5).allSatisfy(page -> {
            assertThat(page.select(".defers").text()).contains("local officials decide");
            assertThat(page.select("section[aria-labelledby=rules] .note").text())
                    .containsPattern("\\d{4}|undated");
        });
        assertThat(page("concept/cut-block.html").select("section[aria-labelledby=rules]"))
                .hasSize(1);
    }

    @Test
    void an_alignment_is_drawn_and_named_in_each_system() {
        Document page = page("concept/technique-7.html");
        assertThat(page.select("svg.figure-front")).hasSize(1);
        assertThat(page.select("section[aria-labelledby=numbers] dl").text()).contains("System A 7", "System B 6i");
    }

    @Test
    void a_drill_says_what_it_takes_and_what_can_hurt() {
        Document page = page("concept/puller-stack-control.html");
        assertThat(page.select("header ~ dl.facts div").eachText())
                .contains("Contact control", "Equipment none", "Men 4, himself among them", "One set 5 min, 5 reps")
                .anySatisfy(fact -> assertThat(fact).startsWith("Good when In 4 of 5"));
        assertThat(page.select("section.caution").text()).contains("certified coach", "Medical staff");
        assertThat(page.select("#lesson ~ section h3").eachText()).contains("coaching point", "what goes wrong");
        assertThat(page("concept/thud.html").select("dl.facts div").eachText()).contains("Full contact yes");
    }

    @Test
    void every_source_is_there_with_how_much_of_it_was_seen() {
        Document page = page("sources.html");
        assertThat(page.select(".source")).hasSizeGreaterThan(120);
        assertThat(page.select(".source[id=wrong-arm]").text()).contains("2009", "Seen: excerpt read", "Rests on it:");
    }

    private static Element fit(Document page, String duty) {
        return page.select(".fit").stream()
                .filter(fit -> fit.select("h3").text().equals(duty))
                .findFirst()
                .orElseThrow();
    }

    private static Document page(String name) {
        return PAGES.getOrDefault(Published.book().resolve(name), new Document(""));
    }
}
