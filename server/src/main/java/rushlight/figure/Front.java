package rushlight.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A line of men as a chart of the trade draws it, seen from behind them, and the spots across from it.
 *
 * <p>Places are counted in steps of half a man from the middle, negative to the left. A spot with a count is a bar with its
 * number; a spot without one is a mark.
 *
 * @param heading what it is called
 * @param line the men of the line
 * @param spots the spots, each with a count or with none
 */
public record Front(Heading heading, List<Man> line, List<Spot> spots) {
    /** How a man is drawn. */
    public enum Mark {
        CIRCLE,
        SQUARE
    }

    /**
     * One man of the line.
     *
     * @param label a short name below him; may be empty
     * @param at steps from the middle
     * @param back steps behind the line
     * @param there whether he stands there; a place left open is drawn dashed
     */
    public record Man(String label, double at, double back, Mark mark, boolean there) {}

    /**
     * One spot across from the line.
     *
     * @param label its name above it; may be empty
     * @param words what the table calls it
     * @param at steps from the middle
     * @param count how many; empty for a mark
     * @param certain whether it is this spot; one of several that may be meant is drawn hollow
     */
    public record Spot(String label, String words, double at, OptionalInt count, boolean certain) {}

    private static final double WIDTH = 360;
    private static final double MARGIN = 24;
    private static final double TALLEST = 64;
    private static final double SIZE = 13;
    private static final double WIDEST_STEP = 17;

    public Front {
        line = List.copyOf(line);
        spots = spots.stream().sorted(Comparator.comparingDouble(Spot::at)).toList();
    }

    /** Draws it. */
    public Drawing draw() {
        return new Drawing(svg(), table());
    }

    private Table table() {
        boolean counted = spots.stream().anyMatch(spot -> spot.count().isPresent());
        List<List<String>> rows = spots.stream()
                .map(spot -> counted
                        ? List.of(spot.label(), spot.words(), count(spot))
                        : List.of(spot.label(), spot.words()))
                .toList();
        return new Table(heading.title(), counted ? List.of("Spot", "Where", "Count") : List.of("Spot", "Where"), rows);
    }

    private static String count(Spot spot) {
        return spot.count().isPresent() ? Integer.toString(spot.count().getAsInt()) : "";
    }

    private String svg() {
        double from = places().min().orElse(-1) - 1;
        double to = places().max().orElse(1) + 1;
        double step = Math.min(WIDEST_STEP, (WIDTH - 2 * MARGIN) / (to - from));
        double left = (WIDTH - step * (to - from)) / 2 - from * step;
        boolean counted = spots.stream().anyMatch(spot -> spot.count().isPresent());
        List<Integer> floors = floors(step);
        int highest = floors.stream().mapToInt(Integer::intValue).max().orElse(0);
        double ground = 18 + (highest + 1) * SIZE * 1.15 + (counted ? TALLEST : 22);
        double radius = step;
        double feet = ground + 14 + radius;
        double deepest = line.stream().mapToDouble(Man::back).max().orElse(0) * step;
        double height = feet + radius + deepest + (named() ? 20 : 6);
        Svg svg = new Svg("front", heading, WIDTH, height);
        svg.line(MARGIN / 2, ground + 7, WIDTH - MARGIN / 2, ground + 7, "figure-rule");
        for (Man man : line) {
            man(svg, man, left + man.at() * step, feet + man.back() * step, radius);
        }
        int most = spots.stream().mapToInt(s -> s.count().orElse(0)).max().orElse(0);
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            Spot spot = spots.get(i);
            double wide = Math.min(14, step * 0.8) / sharing(spot);
            double x = left + spot.at() * step + wide * aside(i);
            double top = spot.count().isPresent() ? bar(svg, spot, x, ground, wide, most) : mark(svg, spot, x, ground);
            double base = (counted ? ground - TALLEST - 8 : top - 6) - floors.get(i) * SIZE * 1.15;
            labels.add(new Label(spot, x, top, base, counted || floors.get(i) > 0));
        }
        // A line to a high label passes the low ones: their words are drawn over it.
        labels.forEach(label -> label.lead(svg));
        labels.forEach(label -> label.words(svg));
        return svg.finish();
    }

    /** How many spots lie where this one lies. */
    private long sharing(Spot spot) {
        return spots.stream().filter(other -> other.at() == spot.at()).count();
    }

    /** How far a bar moves aside, in its own widths, for those that share its place. */
    private double aside(int place) {
        double at = spots.get(place).at();
        long before = spots.subList(0, place).stream()
                .filter(other -> other.at() == at)
                .count();
        return before - (sharing(spots.get(place)) - 1) / 2.0;
    }

    /** The words above a spot, with the line that leads there. */
    private record Label(Spot spot, double x, double top, double base, boolean led) {
        void lead(Svg svg) {
            if (led) {
                svg.line(x, top - 2, x, base + 3, "figure-lead");
            }
        }

        void words(Svg svg) {
            String words = spot.count().isPresent()
                    ? (spot.label().isEmpty() ? "" : spot.label() + ": ")
                            + spot.count().getAsInt()
                    : spot.label();
            svg.text(x, base, SIZE, Svg.Anchor.MIDDLE, "figure-label figure-halo", words);
        }
    }

    private java.util.stream.DoubleStream places() {
        return Stream.concat(line.stream().map(Man::at), spots.stream().map(Spot::at))
                .mapToDouble(Double::doubleValue);
    }

    private boolean named() {
        return line.stream().anyMatch(man -> !man.label().isEmpty());
    }

    private static void man(Svg svg, Man man, double x, double y, double radius) {
        String classes = man.there() ? "figure-man" : "figure-man figure-open";
        String dash = man.there() ? "none" : "3 3";
        double half = radius * 0.86;
        if (man.mark() == Mark.SQUARE) {
            svg.empty(
                    "rect",
                    "class",
                    classes,
                    "x",
                    Svg.number(x - half),
                    "y",
                    Svg.number(y - half),
                    "width",
                    Svg.number(2 * half),
                    "height",
                    Svg.number(2 * half),
                    "stroke-dasharray",
                    dash);
        } else {
            svg.empty(
                    "circle",
                    "class",
                    classes,
                    "cx",
                    Svg.number(x),
                    "cy",
                    Svg.number(y),
                    "r",
                    Svg.number(radius * 0.9),
                    "stroke-dasharray",
                    dash);
        }
        if (!man.label().isEmpty()) {
            double size = Math.min(11, radius * 1.05);
            svg.text(x, y + size * 0.36, size, Svg.Anchor.MIDDLE, "figure-quiet", man.label());
        }
    }

    /** A wedge whose point looks at the line, as a chart draws a man of the defense. */
    private static double mark(Svg svg, Spot spot, double x, double ground) {
        double tip = ground + 1;
        String points = Svg.number(x - 8) + "," + Svg.number(tip - 15) + " " + Svg.number(x + 8) + ","
                + Svg.number(tip - 15) + " " + Svg.number(x) + "," + Svg.number(tip);
        svg.empty(
                "polygon",
                "class",
                spot.certain() ? "figure-mark" : "figure-mark figure-open",
                "points",
                points,
                "fill",
                spot.certain() ? "currentColor" : "none");
        return tip - 15;
    }

    private static double bar(Svg svg, Spot spot, double x, double ground, double wide, int most) {
        double tall = most == 0 ? 0 : TALLEST * spot.count().orElse(0) / most;
        svg.empty(
                "rect",
                "class",
                "figure-bar",
                "x",
                Svg.number(x - wide / 2),
                "y",
                Svg.number(ground - tall),
                "width",
                Svg.number(wide),
                "height",
                Svg.number(Math.max(1, tall)),
                "fill",
                "currentColor",
                "stroke",
                "none");
        return ground - tall;
    }

    /** On which floor each label stands, so that no two on one floor run into each other. */
    private List<Integer> floors(double step) {
        List<Double> ends = new ArrayList<>();
        List<Integer> floors = new ArrayList<>();
        for (Spot spot : spots) {
            int letters = spot.label().length()
                    + (spot.count().isPresent() ? 2 + count(spot).length() : 0);
            double half = letters * SIZE * 0.3 + 2;
            int floor = 0;
            while (floor < ends.size() && ends.get(floor) > spot.at() * step - half) {
                floor++;
            }
            if (floor == ends.size()) {
                ends.add(0.0);
            }
            ends.set(floor, spot.at() * step + half);
            floors.add(floor);
        }
        return floors;
    }
}
