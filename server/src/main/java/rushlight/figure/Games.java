package rushlight.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One rate game by game, from the first at the top to the last: what was counted, the range it likely lies in, and the line it
 * is held against.
 *
 * @param heading what it is called
 * @param played the games in the order they were played
 * @param line where a rate starts to mean something, 0 to 1; empty where there is no line
 * @param cut the place of the first game of the second half, from 1 up; empty where nothing is cut
 */
public record Games(Heading heading, List<Played> played, OptionalDouble line, OptionalInt cut) {
    /**
     * One game.
     *
     * @param name as it is written beside its row
     * @param events how often it happened
     * @param opportunities how often it could have; where 0, nothing is drawn
     * @param low lower end of the likely range, 0 to 1
     * @param high upper end
     */
    public record Played(String name, int events, int opportunities, double low, double high) {
        public Played {
            if (events < 0 || events > opportunities || low < 0 || high > 1 || low > high) {
                throw new IllegalArgumentException("A rate of " + events + " in " + opportunities + ", likely range "
                        + low + " to " + high + ", cannot be drawn.");
            }
        }
    }

    private static final double WIDTH = 480;
    private static final double LEFT = 168;
    private static final double RIGHT = 412;
    private static final double ROW = 24;
    private static final double TOP = 26;
    private static final double SMALL = 11;

    public Games {
        played = List.copyOf(played);
    }

    /** Draws it. */
    public Drawing draw() {
        return new Drawing(svg(), table());
    }

    private Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < played.size(); i++) {
            Played game = played.get(i);
            boolean none = game.opportunities == 0;
            rows.add(List.of(
                    game.name,
                    cut.isEmpty() ? "all" : i < cut.getAsInt() ? "before" : "since",
                    game.events + " of " + game.opportunities,
                    none ? "no chance" : percent((double) game.events / game.opportunities),
                    none ? "" : percent(game.low) + " to " + percent(game.high)));
        }
        String held = line.isPresent() ? ", line " + percent(line.getAsDouble()) : "";
        return new Table(heading.title() + held, List.of("Game", "Half", "Count", "Rate", "Likely range"), rows);
    }

    private String svg() {
        double bottom = TOP + played.size() * ROW;
        Svg svg = new Svg("games", heading, WIDTH, bottom + 26);
        svg.line(LEFT, bottom + 4, RIGHT, bottom + 4, "figure-axis");
        for (int i = 0; i <= 4; i++) {
            svg.line(x(i / 4.0), bottom + 1, x(i / 4.0), bottom + 7, "figure-axis");
        }
        svg.text(LEFT, bottom + 20, SMALL, Svg.Anchor.MIDDLE, "figure-quiet", "0 %");
        svg.text(RIGHT, bottom + 20, SMALL, Svg.Anchor.MIDDLE, "figure-quiet", "100 %");
        line.ifPresent(value -> {
            svg.line(x(value), TOP - 8, x(value), bottom + 4, "figure-line");
            svg.text(x(value), TOP - 13, SMALL, Svg.Anchor.MIDDLE, "figure-quiet", "line " + percent(value));
        });
        for (int i = 0; i < played.size(); i++) {
            row(svg, played.get(i), TOP + i * ROW + ROW / 2);
        }
        cut.ifPresent(at -> {
            double y = TOP + at * ROW;
            svg.line(0, y, WIDTH, y, "figure-rule");
            svg.text(WIDTH, y - 3, 10, Svg.Anchor.END, "figure-quiet", "before");
            svg.text(WIDTH, y + 10, 10, Svg.Anchor.END, "figure-quiet", "since");
        });
        return svg.finish();
    }

    private static void row(Svg svg, Played game, double y) {
        String name = Wrapping.lines(game.name, Svg.letters(LEFT - 14, SMALL), 1).stream()
                .findFirst()
                .orElse("");
        svg.text(LEFT - 12, y + 4, SMALL, Svg.Anchor.END, "figure-quiet", name);
        if (game.opportunities == 0) {
            svg.text(x(0) + 2, y + 4, SMALL, Svg.Anchor.START, "figure-quiet", "no chance");
            return;
        }
        svg.empty(
                "rect",
                "class",
                "figure-range",
                "x",
                Svg.number(x(game.low)),
                "y",
                Svg.number(y - 5),
                "width",
                Svg.number(Math.max(2, x(game.high) - x(game.low))),
                "height",
                "10",
                "rx",
                "5",
                "fill",
                "currentColor",
                "fill-opacity",
                "0.18",
                "stroke-width",
                "0.75");
        svg.empty(
                "circle",
                "class",
                "figure-mark",
                "cx",
                Svg.number(x((double) game.events / game.opportunities)),
                "cy",
                Svg.number(y),
                "r",
                "4",
                "fill",
                "currentColor");
        svg.text(RIGHT + 10, y + 4, SMALL, Svg.Anchor.START, "figure-strong", game.events + "/" + game.opportunities);
    }

    private static double x(double share) {
        return LEFT + (RIGHT - LEFT) * share;
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }
}
