package rushlight.ontology;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.jena.query.Query;
import org.apache.jena.query.QueryExecution;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.query.ResultSet;
import org.apache.jena.query.ResultSetFormatter;
import org.apache.jena.rdf.model.Model;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.riot.RDFDataMgr;

/** The files of this module as they lie in the repository. */
final class OntologyFiles {
    private static final Path ROOT = Path.of("").toAbsolutePath();

    static final String PREFIXES = """
            PREFIX dct: <http://purl.org/dc/terms/>
            PREFIX kb: <https://rushlight.example/id/>
            PREFIX rl: <https://rushlight.example/def#>
            PREFIX shape: <https://rushlight.example/shape/>
            PREFIX skos: <http://www.w3.org/2004/02/skos/core#>
            PREFIX source: <https://rushlight.example/source/>
            """;

    private OntologyFiles() {}

    static Path file(String name) {
        return ROOT.resolve(name);
    }

    static List<Path> endingWith(String folder, String suffix) {
        try (Stream<Path> files = Files.list(ROOT.resolve(folder))) {
            return files.filter(file -> file.getFileName().toString().endsWith(suffix))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Path> turtle() {
        return endingWith("", ".ttl");
    }

    static boolean isShapes(Path file) {
        return file.getFileName().toString().endsWith(".shapes.ttl");
    }

    /** Everything but the shapes that guard the files. */
    static Model facts() {
        return load(turtle().stream().filter(file -> !isShapes(file)).toList());
    }

    static Model shapes() {
        return load(turtle().stream().filter(OntologyFiles::isShapes).toList());
    }

    static Model load(List<Path> files) {
        Model model = ModelFactory.createDefaultModel();
        files.forEach(file -> RDFDataMgr.read(model, file.toUri().toString()));
        return model;
    }

    /** The facts with a few statements more: a fault planted to see a check fail. */
    static Model with(Model facts, String turtle) {
        return ModelFactory.createUnion(facts, planted(turtle));
    }

    static Model planted(String turtle) {
        Model planted = ModelFactory.createDefaultModel();
        String prefixes = PREFIXES.replace("PREFIX", "@prefix").replace(">\n", "> .\n");
        planted.read(new StringReader(prefixes + turtle), null, "TURTLE");
        return planted;
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows a query finds, one line each. */
    static List<String> rows(Model model, Path query) {
        return rows(model, QueryFactory.create(text(query)));
    }

    static List<String> rows(Model model, Query query) {
        try (QueryExecution run = QueryExecution.create(query, model)) {
            ResultSet results = run.execSelect();
            return ResultSetFormatter.toList(results).stream()
                    .map(Object::toString)
                    .sorted()
                    .toList();
        }
    }
}
