package rushlight.demo;

import java.util.Set;

/** How run reps begin and end alike: the direction, the read, the gain, the tackle. */
final class RunEnds {
    private static final Set<String> GAINS =
            Set.of("yardage-loss", "no-gain", "short-gain", "medium-gain", "long-gain");

    private RunEnds() {}

    static void at(Row row, String play) {
        row.set("play", play).set("direction", "run-at-him");
    }

    static void away(Row row, String play) {
        row.set("play", play).set("direction", "run-away");
    }

    static boolean outsideIsHis(Row row) {
        return Set.of("box-assignment", "contain-force-assignment").contains(row.get("assignment"));
    }

    static boolean lateEyes(Habits habits, Row row, String block) {
        boolean late = habits.deal("eyes", block).equals("late");
        if (late) {
            row.fault("late-eyes");
        }
        return late;
    }

    static void pads(Habits habits, Row row, boolean tightEnd) {
        if (habits.deal("pads", tightEnd ? "tight-end" : "tackle").equals("high")) {
            row.fault("high-pads");
        }
    }

    static String small(Habits habits) {
        return habits.chance().nextInt(3) == 0 ? "no-gain" : "short-gain";
    }

    static String big(Habits habits) {
        return habits.chance().nextInt(4) == 0 ? "long-gain" : "medium-gain";
    }

    /** Off the block and at the ball, or not: {@code off} is the step that frees him, {@code none} where none is due. */
    static void tackle(Habits habits, Row row, String off) {
        String end = habits.deal("tackle");
        if (end.equals("none")) {
            row.set("shed", "none");
            return;
        }
        if (!off.equals("none")) {
            row.his(off).set("shed", "after-ball");
        }
        row.topics.add("tackle-" + end);
        switch (end) {
            case "made" -> row.results.add("tackle-made");
            case "shared" -> row.results.add("tackle-shared");
            default -> {
                row.results.removeAll(GAINS);
                row.results.add("missed-tackle");
                row.ended("even", big(habits));
            }
        }
        if (habits.says("fades")) {
            row.fault("fades-in-pursuit");
        }
    }
}
