package rushlight.knowledge;

/** How a term, a pairing or a finding of the user's own file is told apart from the shipped ones wherever it is read. */
public final class Local {
    private static final String MARK = " (yours)";

    private Local() {}

    /** A label with the mark behind it where it is the user's own. */
    public static String shown(String label, boolean local) {
        return label + mark(local);
    }

    /** The mark itself, with a blank before it; nothing for what was shipped. */
    public static String mark(boolean local) {
        return local ? MARK : "";
    }
}
