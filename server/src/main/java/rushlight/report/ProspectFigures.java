package rushlight.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rushlight.figure.Drawing;
import rushlight.figure.Fronts;
import rushlight.figure.Heading;
import rushlight.findings.Flow;
import rushlight.findings.Profile;
import rushlight.handbook.Handbook;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** Drawings of what a prospect does: where he lines up, and what follows what. */
public final class ProspectFigures {
    private static final Map<String, Fronts.Hand> HANDS = Map.of("left", Fronts.Hand.LEFT, "right", Fronts.Hand.RIGHT);
    private static final List<String> STAGES = List.of("His move", "The answer", "His next move", "Result");
    private static final List<String> NOTHING = List.of("none", "no answer seen", "no second move", "not told");
    private static final String REST = "other";
    private static final List<Integer> MOST = List.of(4, 6, 4, 4);

    private final Taxonomy taxonomy;
    private final Fronts fronts;
    private final Handbook handbook;

    /** Draws with the words of a book. */
    public ProspectFigures(Ontology ontology, Taxonomy taxonomy, Handbook handbook) {
        this.taxonomy = taxonomy;
        this.fronts = Fronts.of(ontology, taxonomy);
        this.handbook = handbook;
    }

    /** His spots on the front, each with how often he was there. */
    public Drawing front(Profile profile) {
        Map<String, Fronts.Taken> taken = new LinkedHashMap<>();
        int untold = 0;
        for (Profile.Spot spot : profile.spots()) {
            Optional<Fronts.Hand> hand = spot.over().map(HANDS::get);
            int reps = spot.ended().reps();
            if (hand.isPresent()) {
                String number = number(spot.alignment());
                taken.merge(
                        hand.get() + number,
                        new Fronts.Taken(spot.alignment(), hand.get(), number, reps),
                        (first, more) -> new Fronts.Taken(
                                first.spot(), first.hand(), first.label(), first.count() + more.count()));
            } else {
                untold += reps;
            }
        }
        Heading heading = new Heading(
                "his-front",
                "Where he lines up",
                "The offensive line from behind. A bar over each spot is as tall as he was there often: "
                        + profile.reps() + " reps" + (untold > 0 ? ", " + untold + " of them without a side." : "."));
        return fronts.counts(heading, List.copyOf(taken.values()));
    }

    /** What followed what on his rushes; empty where the exchange of none was seen. */
    public Optional<Drawing> flow(Profile profile) {
        Flow flow = profile.flow();
        if (flow.ways().isEmpty()) {
            return Optional.empty();
        }
        Heading heading = new Heading(
                "his-flow",
                "What follows what",
                "His first move, the blocker's answer, his next move and the result of " + flow.reps()
                        + " rushes; streams are as wide as they were frequent.");
        return Optional.of(new rushlight.figure.Flow(heading, STAGES, streams(flow)).draw());
    }

    /** The number by which the trade calls a spot: the one in its name, else the first of its numbers; else its name. */
    private String number(String spot) {
        String label = taxonomy.shown(spot);
        List<String> numbers =
                handbook.numbers(spot).values().stream().flatMap(List::stream).toList();
        return numbers.stream()
                .filter(label::contains)
                .max(Comparator.comparingInt(String::length))
                .or(() -> numbers.stream().findFirst())
                .orElse(label);
    }

    /** The ways with what was rare at a stage taken together. */
    private List<rushlight.figure.Flow.Stream> streams(Flow flow) {
        List<Set<String>> frequent = new ArrayList<>();
        for (int stage = 0; stage < STAGES.size(); stage++) {
            frequent.add(frequent(flow, stage));
        }
        Map<List<String>, Integer> streams = new LinkedHashMap<>();
        for (Flow.Way way : flow.ways()) {
            List<String> stations = new ArrayList<>();
            for (int stage = 0; stage < STAGES.size(); stage++) {
                String station = station(way.points().get(stage));
                stations.add(frequent.get(stage).contains(station) ? station : REST);
            }
            streams.merge(stations, way.reps(), Integer::sum);
        }
        return streams.entrySet().stream()
                .sorted(Map.Entry.<List<String>, Integer>comparingByValue().reversed())
                .map(stream -> new rushlight.figure.Flow.Stream(stream.getKey(), stream.getValue()))
                .toList();
    }

    private Set<String> frequent(Flow flow, int stage) {
        Map<String, Integer> counts = new TreeMap<>();
        flow.ways().forEach(way -> counts.merge(station(way.points().get(stage)), way.reps(), Integer::sum));
        return counts.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .limit(MOST.get(stage))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    private String station(Flow.Point point) {
        return point.value()
                .map(taxonomy::shown)
                .orElseGet(() -> NOTHING.get(point.stage().place()));
    }
}
