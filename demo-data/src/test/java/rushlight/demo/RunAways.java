package rushlight.demo;

/** Runs that start away from him and plays that read him. */
final class RunAways {
    private final Habits habits;

    RunAways(Habits habits) {
        this.habits = habits;
    }

    void cutoff(Row row) {
        if (homeFirst(row)) {
            return;
        }
        boolean hinge = habits.chance().nextInt(4) == 0;
        RunEnds.away(row, hinge ? "power-play" : "outside-zone");
        row.set("blocker", row.get("over") + "-tackle")
                .set("ball_reach", "one-gap")
                .set("depth_at_contact", "at-heel-line")
                .blocker(hinge ? "hinge-block" : "cutoff-block");
        boolean late = RunEnds.lateEyes(habits, row, "cutoff");
        String end = late ? "stuck" : habits.deal("cutoff");
        row.topics.add("cutoff-" + end);
        switch (end) {
            case "stuck" ->
                row.his("lock-out")
                        .set("first_contact", late ? "lost" : "even")
                        .set("shed", "none")
                        .ended("even", "stalemate", "short-gain");
            case "around" ->
                row.his("backside-chase")
                        .fault("runs-around-block")
                        .set("first_contact", "even")
                        .set("shed", "before-ball")
                        .ended("lost", "ball-cut-back", "medium-gain");
            default -> {
                row.his("cross-face-run").set("first_contact", "won");
                chases(row, "blocker-beaten");
            }
        }
    }

    void away(Row row) {
        if (homeFirst(row)) {
            return;
        }
        RunEnds.away(row, "inside-zone");
        row.set("ball_reach", "one-gap")
                .set("depth_at_contact", "at-heel-line")
                .blocker("tackle-away")
                .his("squeeze-down");
        chases(row, "edge-untouched");
    }

    /** Read plays: the dive man crashes, the quarterback's man waits. */
    void read(Row row) {
        RunEnds.at(row, "read-option");
        row.set("ball_reach", "in-his-lane")
                .set("depth_at_contact", "at-heel-line")
                .set("shed", "none");
        boolean arc = habits.chance().nextInt(3) == 0;
        row.set("blocker", arc ? "h-back" : "").blocker(arc ? "arc-block" : "unblocked-read-key");
        if (row.get("assignment").equals("read-quarterback-assignment")) {
            readQuarterback(row, arc);
            return;
        }
        boolean soft = habits.deal("dive").equals("soft");
        row.topics.add("dive");
        row.his("squeeze-down", soft ? "surf" : "crash-the-mesh");
        if (soft) {
            row.fault("hesitant").ended("lost", "edge-untouched", "inside-lane-open", "medium-gain");
        } else if (habits.chance().nextInt(3) == 0) {
            row.set("direction", "run-at-him;quarterback-keep-at-him");
            row.ended("even", "edge-untouched", "edge-lost-outside", "medium-gain");
        } else {
            row.ended("won", "edge-untouched", "tackle-made", "no-gain");
        }
    }

    private void readQuarterback(Row row, boolean arc) {
        String play = habits.deal("read-play");
        row.topics.add("read-" + play);
        if (play.equals("bit") || (play.equals("widened") && !arc)) {
            row.his("crash-the-mesh").fault("bites-on-dive").set("direction", "run-at-him;quarterback-keep-at-him");
            row.ended("lost", "edge-untouched", "edge-lost-outside", RunEnds.big(habits));
        } else if (play.equals("widened")) {
            row.his("contain").fault("widens-with-arc");
            row.ended("lost", "edge-widened", "inside-lane-open", "medium-gain");
        } else {
            row.his(habits.chance().nextInt(2) == 0 ? "surf" : "slow-play-the-read");
            row.ended("won", "edge-untouched", "edge-held", RunEnds.small(habits));
        }
    }

    /** With boot, counter and reverse to check first: home, or gone too early. */
    private boolean homeFirst(Row row) {
        if (!row.get("assignment").equals("bcr-assignment")) {
            return false;
        }
        boolean threat = habits.says("bcr-threat");
        boolean reverse = threat && habits.chance().nextInt(2) == 0;
        RunEnds.away(row, reverse ? "reverse" : "inside-zone");
        if (threat) {
            row.set("direction", reverse ? "run-away;reverse-to-him" : "run-away;quarterback-keep-at-him");
        }
        row.set("ball_reach", threat ? "in-his-lane" : "out-of-reach").set("depth_at_contact", "at-heel-line");
        row.blocker("tackle-away").his("squeeze-down").set("shed", "none");
        boolean left = threat && habits.deal("bcr").equals("left");
        row.topics.add(left ? "bcr-left" : threat ? "bcr-home" : "bcr-quiet");
        if (left) {
            row.his("flat-chase").fault("loses-backside");
            row.ended("lost", "edge-untouched", "edge-lost-outside", RunEnds.big(habits));
        } else if (threat) {
            row.his("boot-counter-reverse-check").ended("won", "edge-untouched", "edge-held", RunEnds.small(habits));
            RunEnds.tackle(habits, row, "none");
        } else {
            row.his("boot-counter-reverse-check", "trail-chase").ended("even", "edge-untouched", "ball-not-in-area");
        }
        return true;
    }

    private void chases(Row row, String block) {
        String cutback = habits.deal("cutback");
        row.set("shed", block.equals("edge-untouched") ? "none" : "after-ball");
        if (habits.deal("chase").equals("deep")) {
            row.his("trail-chase").fault("chases-too-deep").ended("even", block, "ball-not-in-area");
            return;
        }
        row.his("flat-chase");
        if (!cutback.equals("fit")) {
            row.ended("even", block, "ball-not-in-area").topics.add("chase");
            return;
        }
        row.set("direction", "run-away;cutback-to-him").set("ball_reach", "in-his-lane");
        String play = habits.deal("cutback-play");
        row.topics.add("cutback-" + play);
        if (play.equals("missed")) {
            row.fault("misses-cutback").ended("lost", block, "ball-cut-back", RunEnds.big(habits));
        } else {
            row.ended("won", block, "ball-cut-back", "tackle-made", RunEnds.small(habits));
        }
    }
}
