package rushlight.film;

/**
 * The evaluator under whose name a reading stands that two evaluators have settled on. It is a reading like any other, with
 * its log and its history, and counts before all others of its rep.
 */
public final class Reconciled {
    /** The name, in the column of the evaluator and as part of addresses. */
    public static final String NAME = "reconciled";

    private Reconciled() {}

    /** Whether this is the name, in any spelling. */
    public static boolean is(String evaluator) {
        return Identity.slug(evaluator).equals(NAME);
    }
}
