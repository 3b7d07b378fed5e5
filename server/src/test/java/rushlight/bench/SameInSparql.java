package rushlight.bench;

import org.apache.jena.query.Dataset;
import org.apache.jena.query.QueryExecutionFactory;
import org.apache.jena.rdf.model.Model;
import org.apache.jena.rdf.model.ModelFactory;
import rushlight.archive.Archive;

/** What a count would cost as a query over the stored film and the book. */
final class SameInSparql {
    private SameInSparql() {}

    /**
     * Counts for every prospect the reps {@code ?r} that match an opportunity and those that match an event too.
     *
     * @return how many prospects came back
     */
    static int rows(Archive archive, String opportunity, String event) {
        String query = """
                PREFIX rl: <https://rushlight.example/def#>
                PREFIX kb: <https://rushlight.example/id/>
                PREFIX skos: <http://www.w3.org/2004/02/skos/core#>
                SELECT ?p (COUNT(DISTINCT ?r) AS ?n) (COUNT(DISTINCT ?e) AS ?x) {
                  %s . ?r rl:log/rl:prospect ?p . OPTIONAL { %s . BIND (?r AS ?e) } } GROUP BY ?p
                """.formatted(opportunity, event);
        return archive.store().ask(data -> {
            try (var run = QueryExecutionFactory.create(query, withBook(archive, data))) {
                int count = 0;
                for (var answers = run.execSelect(); answers.hasNext(); answers.next()) {
                    count++;
                }
                return count;
            }
        });
    }

    private static Model withBook(Archive archive, Dataset data) {
        return ModelFactory.createUnion(
                data.getDefaultModel(),
                ModelFactory.createModelForGraph(archive.book().ontology().graph()));
    }
}
