package rushlight.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rushlight.knowledge.FrontLine;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** Draws the front of the book: where a spot is, and how often spots were taken. */
public final class Fronts {
    /** Which side of the middle a spot is drawn on. */
    public enum Hand {
        LEFT(-1),
        RIGHT(1);

        private final int sign;

        Hand(int sign) {
            this.sign = sign;
        }
    }

    /**
     * How often a spot was taken.
     *
     * @param spot a position or an alignment
     * @param hand on which side of the middle
     * @param label what stands above it, such as a number
     * @param count how often
     */
    public record Taken(String spot, Hand hand, String label, int count) {}

    private final FrontLine line;
    private final Taxonomy taxonomy;

    private Fronts(FrontLine line, Taxonomy taxonomy) {
        this.line = line;
        this.taxonomy = taxonomy;
    }

    /** Draws what this book says. */
    public static Fronts of(Ontology ontology, Taxonomy taxonomy) {
        return new Fronts(FrontLine.of(ontology), taxonomy);
    }

    /** Where one spot is; a word for several spots shows each of them hollow. Empty where it has no place. */
    public Optional<Drawing> of(Heading heading, String slug) {
        Optional<FrontLine.Spot> one = line.spot(slug);
        if (one.isPresent()) {
            Front.Spot spot = new Front.Spot(
                    taxonomy.label(slug), taxonomy.label(slug), one.get().out(), OptionalInt.empty(), true);
            return Optional.of(draw(heading, List.of(spot), Set.of(one.get().lastMan()), Set.of()));
        }
        Map<Integer, List<String>> places = new TreeMap<>();
        Set<String> last = new TreeSet<>();
        taxonomy.narrower(slug).stream()
                .sorted()
                .forEach(narrow -> line.spot(narrow).ifPresent(spot -> {
                    places.computeIfAbsent(spot.out(), out -> new ArrayList<>()).add(taxonomy.label(narrow));
                    last.add(spot.lastMan());
                }));
        if (places.isEmpty()) {
            return Optional.empty();
        }
        List<Front.Spot> spots = new ArrayList<>();
        places.forEach((out, labels) ->
                spots.add(new Front.Spot("", String.join(" or ", labels), out, OptionalInt.empty(), false)));
        return Optional.of(draw(heading, spots, last, Set.of()));
    }

    /** How often spots were taken, as bars; spots without a place are left to the table beside it. */
    public Drawing counts(Heading heading, List<Taken> taken) {
        List<Front.Spot> spots = new ArrayList<>();
        Set<String> right = new TreeSet<>();
        Set<String> left = new TreeSet<>();
        for (Taken some : taken) {
            line.spot(some.spot()).ifPresent(spot -> {
                spots.add(new Front.Spot(
                        some.label(),
                        taxonomy.label(some.spot()),
                        some.hand().sign * (double) spot.out(),
                        OptionalInt.of(some.count()),
                        true));
                (some.hand() == Hand.LEFT ? left : right).add(spot.lastMan());
            });
        }
        return draw(heading, spots, right, left);
    }

    private Drawing draw(Heading heading, List<Front.Spot> spots, Set<String> right, Set<String> left) {
        List<Front.Man> men = new ArrayList<>();
        double farthest = spots.stream().mapToDouble(Front.Spot::at).max().orElse(0);
        double nearest = spots.stream().mapToDouble(Front.Spot::at).min().orElse(0);
        for (FrontLine.Man man : line.men()) {
            boolean paired = line.men().stream().anyMatch(other -> other.out() == -man.out());
            if (paired) {
                men.add(man(man, 1, true));
            } else {
                add(men, man, 1, right, farthest);
                add(men, man, -1, left, -nearest);
            }
        }
        return new Front(heading, men, spots).draw();
    }

    /** A man who may stand on either side is there when the spot needs him; near a spot, one of the line leaves an open place. */
    private void add(List<Front.Man> men, FrontLine.Man man, int sign, Set<String> last, double farthest) {
        int end = line.men().stream()
                .filter(m -> last.stream().anyMatch(l -> taxonomy.isA(m.slug(), l)))
                .mapToInt(m -> Math.abs(m.out()))
                .max()
                .orElse(0);
        if (end >= man.out()) {
            men.add(man(man, sign, true));
        } else if (end > 0 && man.back() == 0 && farthest > man.out() - 6) {
            men.add(man(man, sign, false));
        }
    }

    private static Front.Man man(FrontLine.Man man, int sign, boolean there) {
        return new Front.Man(
                man.shortName(),
                (double) sign * man.out(),
                man.back(),
                man.square() ? Front.Mark.SQUARE : Front.Mark.CIRCLE,
                there);
    }
}
