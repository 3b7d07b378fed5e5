package rushlight.web.http;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.jena.graph.Node;
import org.apache.jena.query.Query;
import org.apache.jena.sparql.algebra.Algebra;
import org.apache.jena.sparql.algebra.Op;
import org.apache.jena.sparql.algebra.OpVisitorBase;
import org.apache.jena.sparql.algebra.op.OpBGP;
import org.apache.jena.sparql.algebra.op.OpService;
import org.apache.jena.sparql.algebra.walker.Walker;
import org.apache.jena.sparql.expr.ExprFunction;
import org.apache.jena.sparql.expr.ExprFunctionN;
import org.apache.jena.sparql.expr.ExprVisitorBase;

/** Finds what a query would reach out for: other servers, or classes of the program by their address. */
final class Reaching {
    private static final String CLASSES = "java:";

    private Reaching() {}

    /** What is wrong with the query, in a sentence. */
    static Optional<String> in(Query query) {
        AtomicReference<String> found = new AtomicReference<>("");
        Op op = Algebra.compile(query);
        Walker.walk(op, new Operators(found), new Functions(found));
        return Optional.ofNullable(found.get()).filter(text -> !text.isEmpty());
    }

    private static void check(AtomicReference<String> found, String address) {
        if (address.startsWith(CLASSES)) {
            found.set("Functions that are classes of the program cannot be called from here.");
        }
    }

    private static final class Operators extends OpVisitorBase {
        private final AtomicReference<String> found;

        Operators(AtomicReference<String> found) {
            this.found = found;
        }

        @Override
        public void visit(OpService service) {
            found.set("SERVICE would ask other servers; this one does not.");
        }

        @Override
        public void visit(OpBGP pattern) {
            pattern.getPattern().forEach(triple -> {
                Node property = triple.getPredicate();
                if (property.isURI()) {
                    check(found, property.getURI());
                }
            });
        }
    }

    private static final class Functions extends ExprVisitorBase {
        private final AtomicReference<String> found;

        Functions(AtomicReference<String> found) {
            this.found = found;
        }

        @Override
        public void visit(ExprFunctionN function) {
            address(function);
        }

        private void address(ExprFunction function) {
            String iri = function.getFunctionIRI();
            if (iri != null) {
                check(found, iri);
            }
        }
    }
}
