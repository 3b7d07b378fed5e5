package rushlight.web.http;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import org.apache.jena.graph.Node;
import org.apache.jena.query.Query;
import org.apache.jena.sparql.algebra.Algebra;
import org.apache.jena.sparql.algebra.Op;
import org.apache.jena.sparql.algebra.OpVisitorBase;
import org.apache.jena.sparql.algebra.op.OpBGP;
import org.apache.jena.sparql.algebra.op.OpService;
import org.apache.jena.sparql.algebra.walker.Walker;
import org.apache.jena.sparql.expr.E_Regex;
import org.apache.jena.sparql.expr.E_StrReplace;
import org.apache.jena.sparql.expr.Expr;
import org.apache.jena.sparql.expr.ExprFunction;
import org.apache.jena.sparql.expr.ExprFunctionN;
import org.apache.jena.sparql.expr.ExprVisitorBase;

/**
 * Finds what a query would reach out for: other servers, classes of the program by their address, or the processor for ever, by a
 * pattern that tries the same letters again and again and looks at no clock.
 */
final class Reaching {
    private static final String CLASSES = "java:";
    private static final int LONGEST_PATTERN = 200;
    private static final int MOST_REPEATS = 3;
    private static final int MOST_CHOICES = 12;
    private static final int PLACE_OF_PATTERN = 2;
    private static final Pattern REPEATED_GROUP = Pattern.compile("\\)[*+{]|\\\\[1-9]");
    private static final Pattern REPEAT = Pattern.compile("[*+]|\\{\\d*,\\d*}");
    private static final Pattern CHOICE = Pattern.compile("[?|]");

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
            if (function instanceof E_Regex || function instanceof E_StrReplace) {
                pattern(function.getArg(PLACE_OF_PATTERN));
            }
        }

        private void pattern(Expr pattern) {
            if (!pattern.isConstant()) {
                found.set("A pattern is written out in the question; it cannot be computed.");
                return;
            }
            String text = pattern.getConstant().asString();
            if (text.length() > LONGEST_PATTERN
                    || REPEATED_GROUP.matcher(text).find()
                    || REPEAT.matcher(text).results().count() > MOST_REPEATS
                    || CHOICE.matcher(text).results().count() > MOST_CHOICES) {
                found.set("That pattern may never come to an end. Write it in up to " + LONGEST_PATTERN
                        + " characters, with " + MOST_REPEATS + " repeats and " + MOST_CHOICES
                        + " choices at most, and no repeat of a group.");
            }
        }

        private void address(ExprFunction function) {
            String iri = function.getFunctionIRI();
            if (iri != null) {
                check(found, iri);
            }
        }
    }
}
