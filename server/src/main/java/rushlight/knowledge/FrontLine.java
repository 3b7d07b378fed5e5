package rushlight.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.SKOS;

/** Where the men of the line and the spots across from them stand in a drawing, in steps of half a man from the middle. */
public final class FrontLine {
    /**
     * A man of the line.
     *
     * @param slug the man
     * @param shortName what stands in his circle
     * @param out steps from the middle, negative to the offense's left
     * @param back steps behind the line
     * @param square whether he is drawn as a square
     */
    public record Man(String slug, String shortName, int out, int back, boolean square) {}

    /**
     * A spot, the same on either side.
     *
     * @param out steps from the middle
     * @param lastMan who ends the line when it is taken
     */
    public record Spot(int out, String lastMan) {}

    private static final Node NOTATION = SKOS.notation.asNode();

    private final List<Man> men;
    private final Map<String, Spot> spots;

    private FrontLine(List<Man> men, Map<String, Spot> spots) {
        this.men = List.copyOf(men);
        this.spots = Map.copyOf(spots);
    }

    /** Reads what the book says. */
    public static FrontLine of(Ontology ontology) {
        Facts facts = new Facts(ontology.graph());
        List<Man> men = new ArrayList<>();
        Map<String, Spot> spots = new TreeMap<>();
        for (Node subject : facts.withProperty(Rl.term("stepsOut"))) {
            int out = number(facts, subject, "stepsOut");
            Optional<String> last = facts.slug(subject, "lastMan");
            if (last.isPresent()) {
                spots.put(Rl.slug(subject), new Spot(out, last.get()));
            } else {
                men.add(new Man(
                        Rl.slug(subject),
                        facts.texts(subject, NOTATION).stream().findFirst().orElse(""),
                        out,
                        number(facts, subject, "stepsBack"),
                        facts.text(subject, "drawnAs").filter("square"::equals).isPresent()));
            }
        }
        for (Node alignment : facts.ofClass("Alignment")) {
            facts.slug(alignment, "atPosition")
                    .map(spots::get)
                    .ifPresent(at -> spots.putIfAbsent(Rl.slug(alignment), at));
        }
        men.sort(Comparator.comparingInt(Man::out));
        return new FrontLine(men, spots);
    }

    /** The men, from the left. */
    public List<Man> men() {
        return men;
    }

    /** Where a position or an alignment stands; empty where it has no single place. */
    public Optional<Spot> spot(String slug) {
        return Optional.ofNullable(spots.get(slug));
    }

    private static int number(Facts facts, Node subject, String property) {
        return facts.text(subject, property).map(Integer::parseInt).orElse(0);
    }
}
