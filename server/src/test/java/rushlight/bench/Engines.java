package rushlight.bench;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.jena.query.QueryExecutionFactory;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFDataMgr;
import org.eclipse.rdf4j.query.TupleQueryResult;
import org.eclipse.rdf4j.repository.sail.SailRepository;
import org.eclipse.rdf4j.repository.sail.SailRepositoryConnection;
import org.eclipse.rdf4j.rio.RDFFormat;
import org.eclipse.rdf4j.sail.memory.MemoryStore;
import rushlight.archive.Archive;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.Step;
import rushlight.index.Count;
import rushlight.situation.Situation;

/**
 * One count in four ways: of every prospect the reps on which he faced a kick-out block, and those of them that he
 * wrong-armed, each with all that is narrower. All must give the same figures.
 */
final class Engines {
    private static final String PREFIXES = """
            PREFIX rl: <https://rushlight.example/def#>
            PREFIX skos: <http://www.w3.org/2004/02/skos/core#>
            PREFIX kb: <https://rushlight.example/id/>
            """;
    private static final String SPARQL = PREFIXES + """
            SELECT ?p (COUNT(DISTINCT ?r) AS ?n) (COUNT(DISTINCT ?e) AS ?x) {
              ?r rl:blockerStep/rl:does/skos:broader* kb:kick-out-block . ?r rl:log/rl:prospect ?p .
              OPTIONAL { ?r rl:hisStep/rl:does/skos:broader* kb:wrong-arm . BIND (?r AS ?e) } } GROUP BY ?p
            """;
    private static final String SQL = """
            SELECT r.prospect, COUNT(DISTINCT r.id),
              COUNT(DISTINCT CASE WHEN EXISTS (SELECT 1 FROM step h JOIN wider hw ON hw.concept = h.concept
                WHERE h.rep = r.id AND h.his AND hw.wide = 'wrong-arm') THEN r.id END)
            FROM rep r JOIN step s ON s.rep = r.id AND NOT s.his JOIN wider w ON w.concept = s.concept
            WHERE w.wide = 'kick-out-block' GROUP BY r.prospect
            """;

    private final Archive archive;

    Engines(Archive archive) {
        this.archive = archive;
    }

    SortedMap<String, Count> index() {
        return archive.watch(
                film -> film.counts(Situation.has("block", "kick-out-block"), Situation.has("fit", "wrong-arm")));
    }

    SortedMap<String, Count> sparql() {
        return archive.store().ask(data -> {
            SortedMap<String, Count> counts = new TreeMap<>();
            var all = ModelFactory.createUnion(
                    data.getDefaultModel(),
                    ModelFactory.createModelForGraph(archive.book().ontology().graph()));
            try (var run = QueryExecutionFactory.create(SPARQL, all)) {
                run.execSelect()
                        .forEachRemaining(row -> counts.put(
                                last(row.getResource("p").getURI()),
                                new Count(
                                        row.getLiteral("n").getInt(),
                                        row.getLiteral("x").getInt())));
            }
            return counts;
        });
    }

    /** Puts film and book into a store of RDF4J in memory; to be shut down. */
    SailRepository other(Path work) throws IOException {
        Path film = work.resolve("film.ttl");
        try (OutputStream out = Files.newOutputStream(film)) {
            archive.store().writeTurtle(out);
            RDFDataMgr.write(out, archive.book().ontology().graph(), Lang.NTRIPLES);
        }
        SailRepository other = new SailRepository(new MemoryStore());
        try (SailRepositoryConnection connection = other.getConnection();
                InputStream in = new BufferedInputStream(Files.newInputStream(film))) {
            connection.begin();
            connection.add(in, RDFFormat.TURTLE);
            connection.commit();
        }
        Files.delete(film);
        return other;
    }

    SortedMap<String, Count> other(SailRepository repository) {
        SortedMap<String, Count> counts = new TreeMap<>();
        try (SailRepositoryConnection connection = repository.getConnection();
                TupleQueryResult rows = connection.prepareTupleQuery(SPARQL).evaluate()) {
            rows.forEach(row -> counts.put(
                    last(row.getValue("p").stringValue()),
                    new Count(
                            Integer.parseInt(row.getValue("n").stringValue()),
                            Integer.parseInt(row.getValue("x").stringValue()))));
        }
        return counts;
    }

    /** Puts the same film into tables of H2 in memory: reps, their steps, and the wider terms of each term. */
    Connection tables(List<Log> logs) throws SQLException {
        Connection tables = DriverManager.getConnection("jdbc:h2:mem:film");
        try (Statement statement = tables.createStatement()) {
            statement.execute("CREATE TABLE rep (id INT PRIMARY KEY, prospect VARCHAR)");
            statement.execute("CREATE TABLE step (rep INT, his BOOLEAN, concept VARCHAR)");
            statement.execute("CREATE TABLE wider (concept VARCHAR, wide VARCHAR)");
            fill(tables, logs);
            statement.execute("CREATE INDEX step_rep ON step (rep, his)");
            statement.execute("CREATE INDEX step_concept ON step (concept)");
            statement.execute("CREATE INDEX wider_concept ON wider (concept)");
            statement.execute("CREATE INDEX wider_wide ON wider (wide)");
            statement.execute("ANALYZE");
        }
        return tables;
    }

    private void fill(Connection tables, List<Log> logs) throws SQLException {
        try (PreparedStatement reps = tables.prepareStatement("INSERT INTO rep VALUES (?, ?)");
                PreparedStatement steps = tables.prepareStatement("INSERT INTO step VALUES (?, ?, ?)");
                PreparedStatement wider = tables.prepareStatement("INSERT INTO wider VALUES (?, ?)")) {
            int id = 0;
            for (Log log : logs) {
                for (Reading reading : log.readings()) {
                    id++;
                    add(reps, id, log.prospect().id());
                    for (Step step : reading.exchange()) {
                        add(steps, id, step.by() == Step.By.HIM, step.concept());
                    }
                }
                reps.executeBatch();
                steps.executeBatch();
            }
            for (var concept : archive.book().taxonomy().concepts()) {
                for (String wide : archive.book().taxonomy().closure(concept.slug())) {
                    add(wider, concept.slug(), wide);
                }
            }
            wider.executeBatch();
        }
    }

    private static void add(PreparedStatement into, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            into.setObject(i + 1, values[i]);
        }
        into.addBatch();
    }

    SortedMap<String, Count> tables(Connection connection) {
        SortedMap<String, Count> counts = new TreeMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(SQL)) {
            while (rows.next()) {
                counts.put(rows.getString(1), new Count(rows.getInt(2), rows.getInt(3)));
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return counts;
    }

    private static String last(String iri) {
        return iri.substring(iri.lastIndexOf('/') + 1);
    }
}
