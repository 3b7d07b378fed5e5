package rushlight.knowledge;

import java.util.List;

/**
 * How far the book goes: what the terms of each kind have, what they lack, and which terms stand alone.
 *
 * @param kinds the kinds of terms, in the order of the report
 * @param orphans slugs of the terms that nothing points to or from
 */
public record Coverage(List<Kind> kinds, List<String> orphans) {
    /**
     * One kind of terms.
     *
     * @param kind local name of its class
     * @param label its name for people
     * @param terms how many there are
     * @param yours how many of them the user's own file added
     * @param parts what is counted for the kind
     */
    public record Kind(String kind, String label, int terms, int yours, List<Part> parts) {
        public Kind {
            parts = List.copyOf(parts);
        }
    }

    /**
     * One part of what a term can be told with.
     *
     * @param heading its name for people
     * @param have how many terms of the kind have it
     * @param must whether none may lack it
     * @param missing slugs of the terms that lack it
     */
    public record Part(String heading, int have, boolean must, List<String> missing) {
        public Part {
            missing = List.copyOf(missing);
        }

        /** Whether a part that none may lack is lacking. */
        public boolean broken() {
            return must && !missing.isEmpty();
        }
    }

    public Coverage {
        kinds = List.copyOf(kinds);
        orphans = List.copyOf(orphans);
    }

    /** The coverage of a book, with its lessons and the user's own terms. */
    public static Coverage of(Ontology ontology) {
        return new CoverageReader(ontology).read();
    }

    /** Whether every kind has what it must have, and no term stands alone. */
    public boolean whole() {
        return orphans.isEmpty()
                && kinds.stream().flatMap(kind -> kind.parts().stream()).noneMatch(Part::broken);
    }
}
