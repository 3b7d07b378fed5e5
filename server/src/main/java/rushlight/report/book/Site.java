package rushlight.report.book;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.jena.graph.Graph;
import org.apache.jena.riot.RDFDataMgr;
import org.apache.jena.riot.RDFFormat;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Lessons;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Taxonomy;

/** Every file of the published book, by its name in the folder. */
final class Site {
    /** The whole book as Turtle. */
    static final String TURTLE = "rushlight.ttl";

    /** The whole book as JSON-LD. */
    static final String JSON_LD = "rushlight.jsonld";

    private final Ontology ontology;
    private final Taxonomy taxonomy;
    private final Templates templates = new Templates();
    private final SortedMap<String, byte[]> files = new TreeMap<>();

    private Site(Ontology ontology, Taxonomy taxonomy) {
        this.ontology = ontology;
        this.taxonomy = taxonomy;
    }

    static SortedMap<String, byte[]> of(Ontology ontology, Taxonomy taxonomy) {
        Site site = new Site(ontology, taxonomy);
        site.data();
        site.pages();
        return site.files;
    }

    private void data() {
        Graph graph = BookGraph.of(ontology);
        String firstLine = "Rushlight, version " + ontology.version() + ": the whole book in one file.";
        files.put(TURTLE, TurtleText.of(graph, firstLine).getBytes(StandardCharsets.UTF_8));
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        RDFDataMgr.write(json, graph, RDFFormat.JSONLD11_PRETTY);
        files.put(JSON_LD, json.toByteArray());
    }

    private void pages() {
        Relations relations = new Relations(ontology);
        Shelf shelf = new Shelf(taxonomy, relations);
        ListPages lists = new ListPages(ontology, taxonomy, relations, shelf);
        ConceptPages concepts = new ConceptPages(ontology, taxonomy, relations, shelf);
        for (Concept concept : taxonomy.concepts()) {
            page(Shelf.conceptFile(concept.slug()), "concept", Map.of("page", concepts.of(concept)), Shelf.UP);
        }
        for (ListPages.Retired retired : lists.retired()) {
            page(Shelf.conceptFile(retired.slug()), "retired", Map.of("retired", retired), Shelf.UP);
        }
        List<ListPages.Kind> kinds = lists.kinds("");
        lists.kinds(Shelf.UP)
                .forEach(kind -> page(Shelf.kindFile(kind.name()), "kind", Map.of("kind", kind), Shelf.UP));
        page(
                "index.html",
                "index",
                Map.of("kinds", kinds, "concepts", taxonomy.concepts().size()),
                "");
        page("a-z.html", "names", Map.of("letters", lists.letters()), "");
        page("sources.html", "sources", Map.of("sources", lists.sources(Lessons.of(ontology))), "");
        files.put("style.css", joined("/rushlight/book/book.css", "/rushlight/figure/figure.css"));
        files.put("filter.js", joined("/rushlight/book/filter.js"));
    }

    private void page(String file, String template, Map<String, Object> values, String root) {
        Map<String, Object> all = new HashMap<>(values);
        all.put("version", ontology.version());
        all.put("root", root);
        files.put(file, templates.fill(template, all));
    }

    private static byte[] joined(String... resources) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (String name : resources) {
            try (InputStream in = Site.class.getResourceAsStream(name)) {
                if (in == null) {
                    throw new IllegalStateException("The program lacks its file " + name + ".");
                }
                in.transferTo(out);
            } catch (IOException e) {
                throw new UncheckedIOException(name, e);
            }
        }
        return out.toByteArray();
    }
}
