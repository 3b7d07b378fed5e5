package rushlight.demo;

/** Kick-outs and pullers that come at him: under them, square on them, or around the wrong side of them. */
final class KickOuts {
    private final Habits habits;

    KickOuts(Habits habits) {
        this.habits = habits;
    }

    void chart(Row row, String kind) {
        boolean pull = kind.equals("pull");
        String block = pull ? "pull-and-kick-block" : habits.deal("kick-word");
        boolean trap = block.equals("trap-block");
        RunEnds.at(row, pull ? "counter-play" : trap ? "trap-play" : "power-play");
        row.set("blocker", blocker(row, pull || trap))
                .set("ball_reach", "in-his-lane")
                .set("depth_at_contact", "at-heel-line");
        boolean down = habits.chance().nextInt(10) < 8;
        if (down) {
            row.blocker("down-block");
        }
        boolean squeezed = !down || habits.says("squeeze");
        if (squeezed) {
            row.his("squeeze-down");
        } else {
            row.fault("no-squeeze");
        }
        row.blocker(block);
        row.set("first_contact", RunEnds.lateEyes(habits, row, "kick-out") ? "lost" : habits.deal("puller-strike"));
        fit(row);
        if (row.get("first_contact").equals("lost") && !row.exchange.contains("wrong-arm") && !row.won()) {
            row.results.add("edge-moved-back");
        }
    }

    void sift(Row row) {
        RunEnds.away(row, "split-zone");
        row.set("blocker", "h-back").set("ball_reach", "one-gap").set("depth_at_contact", "at-heel-line");
        row.his("squeeze-down").blocker("sift-block");
        if (RunEnds.lateEyes(habits, row, "sift")) {
            row.his("stack").set("first_contact", "lost").set("shed", "none");
            row.ended("lost", "inside-lane-open", "edge-moved-back", RunEnds.big(habits))
                    .topics
                    .add("sift-late");
            return;
        }
        boolean under = row.get("assignment").equals("chase-assignment")
                && habits.chance().nextInt(2) == 0;
        row.his(under ? "wrong-arm" : "box-and-squeeze").set("first_contact", habits.deal("puller-strike"));
        row.ended("won", under ? "blocker-beaten" : "edge-held", RunEnds.small(habits))
                .topics
                .add("sift");
        RunEnds.tackle(habits, row, "shed");
    }

    private void fit(Row row) {
        switch (row.get("assignment")) {
            case "spill-assignment" -> spill(row, habits.deal("spill-fit"));
            case "box-assignment", "contain-force-assignment" -> {
                String fit = habits.deal("box-fit");
                box(row, fit.equals("held") && row.faults.contains("no-squeeze") ? "wide" : fit);
            }
            case "two-gap-assignment" -> box(row, "held");
            default -> unknown(row, habits.deal("unknown-fit"));
        }
    }

    private void spill(Row row, String fit) {
        row.topics.add("spill-" + fit);
        row.set("shed", "none");
        switch (fit) {
            case "boxed" -> {
                row.his("box-and-squeeze").fault("wrong-shoulder");
                row.ended("lost", "inside-lane-open", "ball-hit-design-lane", "medium-gain");
            }
            case "upfield" -> upfield(row);
            case "fell" -> {
                row.his("wrong-arm").fault("falls-on-spill");
                row.ended("lost", "ball-bounced", "edge-grounded", "medium-gain");
            }
            case "open" -> {
                row.his("wrong-arm").set("first_contact", "lost");
                row.ended("lost", "inside-lane-open", "ball-hit-design-lane", RunEnds.big(habits));
            }
            case "under-two" -> {
                row.his("wrong-arm").set("bodies_taken", 2).set("first_contact", "won");
                row.ended("won", "two-blockers-taken", "ball-bounced", RunEnds.small(habits));
            }
            default -> under(row);
        }
    }

    private void under(Row row) {
        row.his("wrong-arm");
        if (habits.says("bounced-outside")) {
            row.ended("even", "ball-bounced", "edge-lost-outside", "medium-gain");
            return;
        }
        row.ended("won", "ball-bounced", RunEnds.small(habits));
        if (habits.says("ricochet")) {
            RunEnds.tackle(habits, row, "ricochet");
        }
    }

    private void box(Row row, String fit) {
        row.topics.add("box-" + fit);
        row.set("shed", "none");
        switch (fit) {
            case "pinned" -> {
                row.his("box-and-squeeze").fault("outside-arm-pinned").set("first_contact", "lost");
                row.ended("lost", "edge-lost-outside", "ball-bounced", RunEnds.big(habits));
            }
            case "lost" -> {
                row.his("set-the-edge").fault("turned-shoulders");
                row.ended("lost", "edge-lost-outside", "ball-bounced", RunEnds.big(habits));
            }
            case "wide" -> {
                row.his("box-and-squeeze").fault("no-squeeze");
                row.exchange.remove("squeeze-down");
                row.ended("lost", "inside-lane-open", "ball-hit-design-lane", "medium-gain");
            }
            case "upfield" -> upfield(row);
            case "under" -> {
                row.his("wrong-arm").fault("wrong-shoulder");
                row.ended("lost", "edge-lost-outside", "ball-bounced", RunEnds.big(habits));
            }
            default -> {
                String ball = habits.chance().nextInt(2) == 0 ? "ball-turned-back" : "ball-hit-design-lane";
                row.his("box-and-squeeze").ended("won", "edge-held", ball, RunEnds.small(habits));
                RunEnds.tackle(habits, row, "shed");
            }
        }
    }

    private void unknown(Row row, String fit) {
        row.topics.add("unknown-duty");
        row.set("shed", "none");
        switch (fit) {
            case "under" -> under(row);
            case "pinned" -> {
                row.his("box-and-squeeze").fault("outside-arm-pinned").set("first_contact", "lost");
                row.ended("lost", "edge-lost-outside", "ball-bounced", RunEnds.big(habits));
            }
            case "lost" -> {
                row.his("box-and-squeeze");
                row.ended("even", "edge-lost-outside", "ball-bounced", RunEnds.big(habits));
            }
            case "wide" -> {
                row.his("box-and-squeeze");
                row.ended("even", "inside-lane-open", "ball-hit-design-lane", "medium-gain");
            }
            default -> {
                row.his("box-and-squeeze").ended("won", "edge-held", "ball-hit-design-lane", RunEnds.small(habits));
                RunEnds.tackle(habits, row, "shed");
            }
        }
    }

    private void upfield(Row row) {
        row.his("stack").fault("too-far-upfield").set("depth_at_contact", "beyond-line");
        row.ended("lost", "inside-lane-open", "ball-hit-design-lane", RunEnds.big(habits));
    }

    private String blocker(Row row, boolean guard) {
        if (guard) {
            return (habits.chance().nextInt(4) == 0 ? "right" : "left").equals(row.get("over"))
                    ? row.get("over") + "-guard"
                    : opposite(row.get("over")) + "-guard";
        }
        return habits.chance().nextInt(2) == 0 ? "fullback" : "h-back";
    }

    private static String opposite(String side) {
        return side.equals("left") ? "right" : "left";
    }
}
