package rushlight.situation;

import java.util.List;
import java.util.stream.Collectors;
import rushlight.knowledge.Rl;

/** A situation as SPARQL over readings whose facets are closed. {@code ?reading} is the reading that fits. */
final class SituationSparql {
    private static final String PREFIXES = "PREFIX rl: <" + Rl.SCHEMA + ">\nPREFIX t: <urn:test:>\n";
    private static final String ANY = "?reading a rl:Reading . ";

    private final Facets facets;
    private int variables;

    SituationSparql(Facets facets) {
        this.facets = facets;
    }

    /** Every reading that fits. */
    String readings(Situation situation) {
        return PREFIXES + "SELECT DISTINCT ?reading WHERE { " + group(situation) + "}";
    }

    /** How many reps of each prospect fit, one reading a rep. */
    String counts(Situation situation) {
        return PREFIXES + "SELECT ?prospect (COUNT(DISTINCT ?reading) AS ?count) WHERE { " + group(situation)
                + "?reading t:counts \"yes\" ; rl:log/rl:prospect ?prospect } GROUP BY ?prospect";
    }

    private String group(Situation situation) {
        return ANY + conditions(situation);
    }

    private String conditions(Situation situation) {
        if (situation instanceof Situation.And and) {
            return and.parts().stream().map(this::conditions).collect(Collectors.joining());
        }
        if (situation instanceof Situation.Or or) {
            return or.parts().stream().map(part -> "{ " + group(part) + "} ").collect(Collectors.joining("UNION "));
        }
        if (situation instanceof Situation.Not not) {
            return "FILTER NOT EXISTS { " + group(not.inner()) + "} ";
        }
        if (situation instanceof Situation.Has has) {
            return "?reading rl:" + has.facet() + " " + value(has.facet(), has.value()) + " . ";
        }
        if (situation instanceof Situation.AnyOf any) {
            return "FILTER EXISTS { VALUES ?v" + ++variables + " { " + values(any.facet(), any.values())
                    + " } ?reading rl:" + any.facet() + " ?v" + variables + " } ";
        }
        Situation.Between between = (Situation.Between) situation;
        String number = "?v" + ++variables;
        return "?reading rl:" + between.facet() + " " + number + " FILTER(" + number + " >= "
                + between.least().orElse(Integer.MIN_VALUE) + " && " + number + " <= "
                + between.most().orElse(Integer.MAX_VALUE) + ") ";
    }

    private String values(String facet, List<String> values) {
        return values.stream().map(value -> value(facet, value)).collect(Collectors.joining(" "));
    }

    private String value(String facet, String value) {
        return facets.named(facet).orElseThrow().kind() == Facet.Kind.CONCEPT
                ? "<" + Rl.CONCEPT + value + ">"
                : '"' + value + '"';
    }
}
