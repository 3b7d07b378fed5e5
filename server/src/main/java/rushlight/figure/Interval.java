package rushlight.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A rate, the range it likely lies in, and the line it is held against.
 *
 * @param heading what it is called
 * @param events how often it happened
 * @param opportunities how often it could have
 * @param low lower end of the likely range, 0 to 1
 * @param high upper end
 * @param line where a rate starts to mean something; empty where there is no line
 */
public record Interval(Heading heading, int events, int opportunities, double low, double high, OptionalDouble line) {
    private static final double WIDTH = 360;
    private static final double LEFT = 16;
    private static final double RIGHT = 344;
    private static final double AXIS = 30;
    private static final double STRIP = 160;
    private static final double EDGE = 5;

    public Interval {
        if (events < 0 || events > opportunities || low < 0 || high > 1 || low > high) {
            throw new IllegalArgumentException("A rate of " + events + " in " + opportunities + ", likely range " + low
                    + " to " + high + ", cannot be drawn.");
        }
    }

    /** Draws it. */
    public Drawing draw() {
        return new Drawing(svg(), table());
    }

    /** The same without letters, as low as a line of text, for where the words stand beside it. */
    public Drawing strip() {
        Svg svg = new Svg("strip", heading, STRIP, STRIP / 10);
        double middle = STRIP / 20;
        double wide = STRIP - 2 * EDGE;
        svg.line(EDGE, middle, STRIP - EDGE, middle, "figure-axis");
        for (int i = 0; i <= 4; i++) {
            double x = EDGE + wide * i / 4;
            svg.line(x, middle - 2, x, middle + 2, "figure-axis");
        }
        range(svg, EDGE + wide * low, Math.max(2, wide * (high - low)), middle - 4, 8);
        line.ifPresent(
                value -> svg.line(EDGE + wide * value, middle - 7, EDGE + wide * value, middle + 7, "figure-line"));
        if (opportunities > 0) {
            mark(svg, EDGE + wide * events / opportunities, middle, 3.5);
        }
        return new Drawing(svg.finish(), table());
    }

    private Table table() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Count", events + " of " + opportunities));
        if (opportunities > 0) {
            rows.add(List.of("Rate", percent((double) events / opportunities)));
        }
        rows.add(List.of("Likely range", percent(low) + " to " + percent(high)));
        line.ifPresent(value -> rows.add(List.of("Line", percent(value))));
        return new Table(heading.title(), List.of("What", "Value"), rows);
    }

    private String svg() {
        Svg svg = new Svg("interval", heading, WIDTH, 64);
        svg.line(LEFT, AXIS, RIGHT, AXIS, "figure-axis");
        for (int i = 0; i <= 4; i++) {
            double x = x(i / 4.0);
            svg.line(x, AXIS - 3, x, AXIS + 3, "figure-axis");
        }
        svg.text(LEFT, AXIS + 18, 11, Svg.Anchor.START, "figure-quiet", "0 %");
        svg.text(RIGHT, AXIS + 18, 11, Svg.Anchor.END, "figure-quiet", "100 %");
        range(svg, x(low), Math.max(2, x(high) - x(low)), AXIS - 6, 12);
        line.ifPresent(value -> line(svg, value));
        if (opportunities > 0) {
            double x = x((double) events / opportunities);
            mark(svg, x, AXIS, 5);
            svg.text(x, 16, 12, anchor(x), "figure-strong", events + " of " + opportunities);
        }
        return svg.finish();
    }

    private static void range(Svg svg, double from, double wide, double top, double tall) {
        svg.empty(
                "rect",
                "class",
                "figure-range",
                "x",
                Svg.number(from),
                "y",
                Svg.number(top),
                "width",
                Svg.number(wide),
                "height",
                Svg.number(tall),
                "rx",
                Svg.number(tall / 2),
                "fill",
                "currentColor",
                "fill-opacity",
                "0.18");
    }

    private static void mark(Svg svg, double x, double y, double radius) {
        svg.empty(
                "circle",
                "class",
                "figure-mark",
                "cx",
                Svg.number(x),
                "cy",
                Svg.number(y),
                "r",
                Svg.number(radius),
                "fill",
                "currentColor");
    }

    private static void line(Svg svg, double value) {
        double x = x(value);
        svg.line(x, AXIS - 12, x, AXIS + 20, "figure-line");
        svg.text(x, AXIS + 32, 11, anchor(x), "figure-quiet", "line " + percent(value));
    }

    /** A text near an end of the scale leans inward. */
    private static Svg.Anchor anchor(double x) {
        if (x < 60) {
            return Svg.Anchor.START;
        }
        return x > WIDTH - 60 ? Svg.Anchor.END : Svg.Anchor.MIDDLE;
    }

    private static double x(double share) {
        return LEFT + (RIGHT - LEFT) * share;
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }
}
