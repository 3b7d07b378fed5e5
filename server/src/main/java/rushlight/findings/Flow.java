package rushlight.findings;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rushlight.film.Reading;
import rushlight.film.Step;
import rushlight.index.IndexedRep;

/**
 * What followed what: his opening move, the blocker's answer to it, his next move, the result.
 *
 * @param reps how many rushes have an opening move
 * @param links how often one thing led to the next, most often first within a stage
 * @param ways how often a rush went one whole way, most often first
 */
public record Flow(int reps, List<Link> links, List<Way> ways) {
    /** The stages in order. */
    public enum Stage {
        MOVE(0),
        ANSWER(1),
        NEXT_MOVE(2),
        RESULT(3);

        private final int place;

        Stage(int place) {
            this.place = place;
        }

        /** Its place in the order, from 0. */
        public int place() {
            return place;
        }
    }

    /**
     * Something at a stage.
     *
     * @param stage which
     * @param value its slug; empty where nothing was tagged there
     */
    public record Point(Stage stage, Optional<String> value) {
        private String key() {
            return stage.place() + value.orElse("~");
        }
    }

    /** How often one thing led to the next. */
    public record Link(Point from, Point to, int reps) {}

    /** How often rushes went through these points, one a stage. */
    public record Way(List<Point> points, int reps) {
        public Way {
            points = List.copyOf(points);
        }
    }

    public Flow {
        links = List.copyOf(links);
        ways = List.copyOf(ways);
    }

    static Flow of(List<IndexedRep> reps, BitSet counted, String openingFacet) {
        Map<List<Point>, Integer> steps = counts();
        Map<List<Point>, Integer> ways = counts();
        int found = 0;
        for (int i = counted.nextSetBit(0); i >= 0; i = counted.nextSetBit(i + 1)) {
            List<Point> way = way(reps.get(i), openingFacet);
            if (!way.isEmpty()) {
                found++;
                ways.merge(way, 1, Integer::sum);
                for (int at = 0; at + 1 < way.size(); at++) {
                    steps.merge(List.of(way.get(at), way.get(at + 1)), 1, Integer::sum);
                }
            }
        }
        List<Link> links = new ArrayList<>();
        steps.forEach((pair, times) -> links.add(new Link(pair.get(0), pair.get(1), times)));
        links.sort(
                Comparator.<Link, Stage>comparing(link -> link.from().stage()).thenComparing(link -> -link.reps()));
        List<Way> whole = new ArrayList<>();
        ways.forEach((points, times) -> whole.add(new Way(points, times)));
        whole.sort(Comparator.comparing(way -> -way.reps()));
        return new Flow(found, links, whole);
    }

    private static Map<List<Point>, Integer> counts() {
        return new TreeMap<>(
                Comparator.comparing(points -> points.stream().map(Point::key).collect(Collectors.joining(" "))));
    }

    private static List<Point> way(IndexedRep rep, String openingFacet) {
        Reading reading = rep.reading();
        List<Step> exchange = reading.exchange();
        Optional<String> opening = rep.facts().tagged(openingFacet).stream().findFirst();
        if (opening.isEmpty()) {
            return List.of();
        }
        int at = 0;
        while (at < exchange.size() && !isHis(exchange.get(at), opening.get())) {
            at++;
        }
        int answer = next(exchange, at + 1, Step.By.BLOCKER);
        int move = next(exchange, (answer < 0 ? at : answer) + 1, Step.By.HIM);
        return List.of(
                new Point(Stage.MOVE, opening),
                new Point(Stage.ANSWER, concept(exchange, answer)),
                new Point(Stage.NEXT_MOVE, concept(exchange, move)),
                new Point(Stage.RESULT, reading.one("result")));
    }

    private static boolean isHis(Step step, String concept) {
        return step.by() == Step.By.HIM && step.concept().equals(concept);
    }

    private static int next(List<Step> exchange, int from, Step.By by) {
        for (int i = from; i < exchange.size(); i++) {
            if (exchange.get(i).by() == by) {
                return i;
            }
        }
        return -1;
    }

    private static Optional<String> concept(List<Step> exchange, int at) {
        return at < 0 ? Optional.empty() : Optional.of(exchange.get(at).concept());
    }
}
