package rushlight.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How something goes on from column to column, each stream as wide as its count.
 *
 * @param heading what it is called
 * @param columns what the columns are called, from left to right
 * @param streams one for each way that was seen, with how often; as many stations as there are columns
 */
public record Flow(Heading heading, List<String> columns, List<Stream> streams) {
    /**
     * One way through.
     *
     * @param stations what it went through, one label a column
     * @param count how often
     */
    public record Stream(List<String> stations, int count) {
        public Stream {
            stations = List.copyOf(stations);
        }
    }

    private static final double WIDTH = 440;
    private static final double BAR = 7;
    private static final double TOP = 30;
    private static final double SIZE = 12;
    private static final double APART = 12;
    private static final double LEAST = 30;
    private static final double TALL = 190;

    public Flow {
        columns = List.copyOf(columns);
        streams = List.copyOf(streams);
        int size = columns.size();
        if (streams.stream().anyMatch(s -> s.stations().size() != size || s.count() < 1)) {
            throw new IllegalArgumentException("Every stream has a station in each column and a count of 1 or more.");
        }
    }

    /** Draws it. */
    public Drawing draw() {
        List<String> heads = new ArrayList<>(columns);
        heads.add("Count");
        List<List<String>> rows = new ArrayList<>();
        for (Stream stream : streams) {
            List<String> row = new ArrayList<>(stream.stations());
            row.add(Integer.toString(stream.count()));
            rows.add(row);
        }
        return new Drawing(svg(), new Table(heading.title(), heads, rows));
    }

    /** A label in a column with its place. */
    private record Node(double x, double y, double tall, int count) {}

    private String svg() {
        int total = streams.stream().mapToInt(Stream::count).sum();
        double unit = total == 0 ? 0 : TALL / total;
        List<Map<String, Node>> nodes = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) {
            nodes.add(column(c, unit));
        }
        double height = nodes.stream()
                        .flatMap(n -> n.values().stream())
                        .mapToDouble(n -> n.y() + Math.max(LEAST, n.tall()))
                        .max()
                        .orElse(TOP)
                + 6;
        Svg svg = new Svg("flow", heading, WIDTH, height);
        for (int c = 0; c < columns.size(); c++) {
            svg.text(x(c), 14, 11, Svg.Anchor.START, "figure-head", columns.get(c));
        }
        for (int c = 0; c + 1 < columns.size(); c++) {
            ribbons(svg, c, nodes.get(c), nodes.get(c + 1), unit);
        }
        nodes.forEach(column -> column.forEach((label, node) -> node(svg, label, node)));
        return svg.finish();
    }

    private Map<String, Node> column(int c, double unit) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        streams.forEach(s -> counts.merge(s.stations().get(c), s.count(), Integer::sum));
        List<Map.Entry<String, Integer>> order = new ArrayList<>(counts.entrySet());
        order.sort(Map.Entry.<String, Integer>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()));
        Map<String, Node> nodes = new LinkedHashMap<>();
        double y = TOP;
        for (Map.Entry<String, Integer> entry : order) {
            double tall = entry.getValue() * unit;
            nodes.put(entry.getKey(), new Node(x(c), y, tall, entry.getValue()));
            y += Math.max(LEAST, tall) + APART;
        }
        return nodes;
    }

    private double x(int column) {
        double gap = columns.size() < 2 ? 0 : (WIDTH - 96) / (columns.size() - 1);
        return 2 + column * gap;
    }

    private void ribbons(Svg svg, int c, Map<String, Node> from, Map<String, Node> to, double unit) {
        Map<String, Double> leaving = new HashMap<>();
        Map<String, Double> coming = new HashMap<>();
        from.forEach((left, a) -> to.forEach((right, b) -> {
            double wide = between(c, left, right) * unit;
            if (wide > 0) {
                double ay = a.y() + leaving.getOrDefault(left, 0.0) + wide / 2;
                double by = b.y() + coming.getOrDefault(right, 0.0) + wide / 2;
                leaving.merge(left, wide, Double::sum);
                coming.merge(right, wide, Double::sum);
                ribbon(svg, a.x() + BAR, ay, b.x(), by, wide);
            }
        }));
    }

    private int between(int c, String left, String right) {
        return streams.stream()
                .filter(s -> s.stations().get(c).equals(left)
                        && s.stations().get(c + 1).equals(right))
                .mapToInt(Stream::count)
                .sum();
    }

    private static void ribbon(Svg svg, double x1, double y1, double x2, double y2, double wide) {
        String middle = Svg.number((x1 + x2) / 2);
        String path = "M" + Svg.number(x1) + " " + Svg.number(y1) + "C" + middle + " " + Svg.number(y1) + " " + middle
                + " " + Svg.number(y2) + " " + Svg.number(x2) + " " + Svg.number(y2);
        svg.empty(
                "path",
                "class",
                "figure-stream",
                "d",
                path,
                "stroke-width",
                Svg.number(Math.max(1, wide)),
                "stroke-opacity",
                "0.22");
    }

    private static void node(Svg svg, String label, Node node) {
        svg.empty(
                "rect",
                "class",
                "figure-bar",
                "x",
                Svg.number(node.x()),
                "y",
                Svg.number(node.y()),
                "width",
                Svg.number(BAR),
                "height",
                Svg.number(Math.max(2, node.tall())),
                "fill",
                "currentColor",
                "stroke",
                "none");
        List<String> lines = Wrapping.lines(label + " " + node.count(), Svg.letters(88, SIZE), 2);
        svg.lines(node.x() + BAR + 4, node.y() + SIZE, SIZE, Svg.Anchor.START, "figure-label figure-halo", lines);
    }
}
