package rushlight.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * What one thing wins against, what stops it, and what follows then: three short lists around a name, read downward.
 *
 * @param heading what it is called
 * @param name the thing itself
 * @param beats what it wins against
 * @param stops what stops it, each with what is done about it
 * @param words what the two lists are called and how the answers are
 */
public record Relations(Heading heading, String name, List<String> beats, List<Stop> stops, Words words) {
    /**
     * Something that stops it.
     *
     * @param by what stops it
     * @param answers what is done about it, best first; may be empty
     */
    public record Stop(String by, List<String> answers) {
        public Stop {
            answers = List.copyOf(answers);
        }
    }

    /** What the lists are called. */
    public record Words(String beats, String stops, String answer) {}

    private static final double WIDTH = 360;
    private static final double SPINE = 18;
    private static final double SIZE = 12.5;
    private static final double LINE = SIZE * 1.2;
    private static final double MIDDLE = 190;

    public Relations {
        beats = List.copyOf(beats);
        stops = List.copyOf(stops);
    }

    /** Draws it. */
    public Drawing draw() {
        return new Drawing(svg(), table());
    }

    private Table table() {
        List<List<String>> rows = new ArrayList<>();
        beats.forEach(label -> rows.add(List.of(words.beats(), label, "")));
        stops.forEach(stop -> rows.add(List.of(words.stops(), stop.by(), String.join(", ", stop.answers()))));
        return new Table(heading.title(), List.of("Which way", "What", words.answer()), rows);
    }

    private String svg() {
        List<Row> rows = rows();
        double height = 50 + rows.stream().mapToDouble(Row::height).sum();
        Svg svg = new Svg("relations", heading, WIDTH, height);
        svg.empty("rect", "class", "figure-goal", "x", "2", "y", "4", "width", "356", "height", "28", "rx", "4");
        svg.text(
                14,
                23,
                14,
                Svg.Anchor.START,
                "figure-strong",
                Wrapping.lines(name, Svg.letters(330, 14), 1).get(0));
        double y = 40;
        double last = y;
        for (Row row : rows) {
            if (row.isHead()) {
                svg.lines(SPINE + 14, y + 18, 12, Svg.Anchor.START, "figure-head", row.left());
                svg.lines(MIDDLE + 24, y + 18, 12, Svg.Anchor.START, "figure-head", row.right());
            } else {
                double at = y + 10;
                entry(svg, row, at);
                last = at - 2;
            }
            y += row.height();
        }
        svg.line(SPINE, 32, SPINE, last, "figure-spine");
        return svg.finish();
    }

    private static void entry(Svg svg, Row row, double at) {
        svg.line(SPINE, at - 2, SPINE + 10, at - 2, "figure-spine");
        svg.empty(
                "circle",
                "class",
                row.stops() ? "figure-stop" : "figure-win",
                "cx",
                Svg.number(SPINE + 14),
                "cy",
                Svg.number(at - 2),
                "r",
                "4",
                "fill",
                row.stops() ? "none" : "currentColor");
        svg.lines(SPINE + 26, at + 2, SIZE, Svg.Anchor.START, "figure-label", row.left());
        if (!row.right().isEmpty()) {
            svg.line(MIDDLE, at - 2, MIDDLE + 14, at - 2, "figure-arrow");
            String points = Svg.number(MIDDLE + 13) + "," + Svg.number(at - 6) + " " + Svg.number(MIDDLE + 20) + ","
                    + Svg.number(at - 2) + " " + Svg.number(MIDDLE + 13) + "," + Svg.number(at + 2);
            svg.empty("polygon", "class", "figure-arrow", "points", points, "fill", "currentColor", "stroke", "none");
            svg.lines(MIDDLE + 26, at + 2, SIZE, Svg.Anchor.START, "figure-label", row.right());
        }
    }

    private record Row(boolean isHead, boolean stops, List<String> left, List<String> right) {
        double height() {
            return isHead ? 26 : Math.max(left.size(), right.size()) * LINE + 8;
        }
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        if (!beats.isEmpty()) {
            rows.add(new Row(true, false, List.of(words.beats()), List.of()));
            int wide = Svg.letters(WIDTH - SPINE - 30, SIZE);
            beats.forEach(label -> rows.add(new Row(false, false, Wrapping.lines(label, wide, 2), List.of())));
        }
        if (!stops.isEmpty()) {
            boolean answered = stops.stream().anyMatch(stop -> !stop.answers().isEmpty());
            rows.add(new Row(true, true, List.of(words.stops()), answered ? List.of(words.answer()) : List.of()));
            int left = Svg.letters(MIDDLE - SPINE - 30, SIZE);
            int right = Svg.letters(WIDTH - MIDDLE - 28, SIZE);
            for (Stop stop : stops) {
                List<String> answers = new ArrayList<>();
                stop.answers().forEach(answer -> answers.addAll(Wrapping.lines(answer, right, 2)));
                rows.add(new Row(false, true, Wrapping.lines(stop.by(), left, 3), answers));
            }
        }
        return rows;
    }
}
