package rushlight.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What something needs, in teaching order: the first rung is at the foot, the goal stands on top.
 *
 * @param heading what it is called
 * @param goal what is learned in the end
 * @param rungs what comes first stands first
 */
public record Ladder(Heading heading, String goal, List<Rung> rungs) {
    /** How much a rung is needed. */
    public enum Need {
        MUST("needed"),
        ONE_OF("one of these will do"),
        HELPS("helps");

        private final String words;

        Need(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * One step on the way.
     *
     * @param label what it is called
     * @param need how much it is needed
     */
    public record Rung(String label, Need need) {}

    private static final double WIDTH = 360;
    private static final double LEFT = 20;
    private static final double RIGHT = 340;
    private static final double STEP = 34;
    private static final double SIZE = 13;

    public Ladder {
        rungs = List.copyOf(rungs);
    }

    /** Draws it. */
    public Drawing draw() {
        return new Drawing(svg(), table());
    }

    private Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < rungs.size(); i++) {
            rows.add(List.of(
                    Integer.toString(i + 1),
                    rungs.get(i).label(),
                    rungs.get(i).need().words()));
        }
        rows.add(List.of(Integer.toString(rungs.size() + 1), goal, "the goal"));
        return new Table(heading.title(), List.of("Step", "What", "How much"), rows);
    }

    private String svg() {
        double top = 44;
        List<Rung> downward = new ArrayList<>(rungs);
        Collections.reverse(downward);
        double height =
                top + downward.stream().mapToDouble(r -> STEP + extra(r)).sum() + 14;
        Svg svg = new Svg("ladder", heading, WIDTH, height);
        svg.line(LEFT, 34, LEFT, height - 2, "figure-rail");
        svg.line(RIGHT, 34, RIGHT, height - 2, "figure-rail");
        goal(svg);
        double y = top + STEP / 2;
        for (int i = 0; i < downward.size(); i++) {
            Rung rung = downward.get(i);
            rung(svg, rung, downward.size() - i, y);
            y += STEP + extra(rung);
        }
        return svg.finish();
    }

    private void goal(Svg svg) {
        svg.empty("rect", "class", "figure-goal", "x", "8", "y", "6", "width", "344", "height", "28", "rx", "4");
        String words = Wrapping.lines(goal, Svg.letters(330, 14), 1).get(0);
        svg.text(WIDTH / 2, 25, 14, Svg.Anchor.MIDDLE, "figure-strong", words);
    }

    private static double extra(Rung rung) {
        return (lines(rung).size() - 1) * SIZE * 1.2;
    }

    private static List<String> lines(Rung rung) {
        double tail = rung.need() == Need.MUST ? 0 : 78;
        return Wrapping.lines(rung.label(), Svg.letters(RIGHT - LEFT - 44 - tail, SIZE), 3);
    }

    private static void rung(Svg svg, Rung rung, int number, double y) {
        double line = y + 8 + extra(rung);
        String dash = rung.need() == Need.MUST ? "none" : rung.need() == Need.ONE_OF ? "6 4" : "1.5 4";
        svg.empty(
                "line",
                "class",
                "figure-rung",
                "x1",
                Svg.number(LEFT),
                "y1",
                Svg.number(line),
                "x2",
                Svg.number(RIGHT),
                "y2",
                Svg.number(line),
                "stroke-dasharray",
                dash);
        svg.text(LEFT + 10, y + 2, SIZE, Svg.Anchor.START, "figure-number", number + ".");
        svg.lines(LEFT + 34, y + 2, SIZE, Svg.Anchor.START, "figure-label", lines(rung));
        if (rung.need() != Need.MUST) {
            String word = rung.need() == Need.ONE_OF ? "one of these" : "helps";
            svg.text(RIGHT - 8, y + 2, 11, Svg.Anchor.END, "figure-quiet", word);
        }
    }
}
