package rushlight.findings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situations;

/** The shipped book with some findings of a test's own on top. */
record World(Taxonomy taxonomy, Assessor assessor) {
    private static final String PREFIXES = """
            @prefix kb: <https://rushlight.example/id/> .
            @prefix rl: <https://rushlight.example/def#> .
            @prefix sh: <http://www.w3.org/ns/shacl#> .
            @prefix shape: <https://rushlight.example/shape/> .
            @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
            """;

    static World with(String turtle) {
        try {
            Path overlay = Files.createTempFile("overlay", ".ttl");
            Files.writeString(overlay, PREFIXES + turtle);
            Ontology ontology = Ontology.withOverlay(overlay);
            Files.delete(overlay);
            Taxonomy taxonomy = Taxonomy.of(ontology);
            return new World(taxonomy, Assessor.of(ontology, taxonomy, Situations.of(ontology, taxonomy)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Film film() {
        return new Film(taxonomy);
    }

    Assessment assess(Film film) {
        return assessor.assess(film.tape());
    }

    Judged judge(String finding, Film film) {
        return assess(film).finding(finding).orElseThrow();
    }
}
