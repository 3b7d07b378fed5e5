package rushlight.demo;

import rushlight.demo.GameFlow.Snap;

/** Run reps of one man: which block came, what his duty was, how he fitted and where the ball went. */
final class RunReps {
    private final Habits habits;
    private final KickOuts kickOuts;
    private final RunAways aways;

    RunReps(Habits habits) {
        this.habits = habits;
        this.kickOuts = new KickOuts(habits);
        this.aways = new RunAways(habits);
    }

    void chart(Row row, Snap snap) {
        row.set("phase", "run").set("movement", "no").set("bodies_taken", 1).set("depth_at_contact", "at-line");
        String kind = habits.deal("run-kind", row.get("surface"));
        switch (kind) {
            case "kick-out", "pull" -> kickOuts.chart(duty(row, "playside-duty"), kind);
            case "sift" -> kickOuts.sift(duty(row, "backside-duty"));
            case "reach" -> reach(duty(row, "playside-duty"));
            case "double" -> twoMen(duty(row, "playside-duty"), snap);
            case "pin" -> pin(duty(row, "playside-duty"));
            case "fan" -> fan(duty(row, "playside-duty"));
            case "cut" -> cut(duty(row, "playside-duty"));
            case "cutoff" -> aways.cutoff(duty(row, "backside-duty"));
            case "away" -> aways.away(duty(row, "backside-duty"));
            case "read" -> aways.read(duty(row, "read-duty"));
            default -> base(duty(row, "playside-duty"), kind.equals("tight-end"));
        }
    }

    private Row duty(Row row, String habit) {
        String duty = habits.deal(habit, row.get("surface"));
        boolean unknown = duty.equals("unknown");
        String gap = switch (duty) {
            case "spill-assignment", "chase-assignment", "read-dive-assignment" -> "inside";
            case "two-gap-assignment" -> "both";
            case "unknown" -> habits.chance().nextInt(3) == 0 ? "" : "outside";
            default -> "outside";
        };
        return row.set("assignment", unknown ? "" : duty)
                .set("assignment_source", unknown ? "unknown" : habits.deal("source"))
                .set("gap", gap);
    }

    private void reach(Row row) {
        boolean closed = row.get("surface").equals("closed-side");
        RunEnds.at(row, closed || habits.chance().nextInt(4) > 0 ? "outside-zone" : "toss-sweep");
        row.set("blocker", closed ? "tight-end" : row.get("over") + "-tackle").blocker("reach-block");
        boolean late = RunEnds.lateEyes(habits, row, "reach");
        RunEnds.pads(habits, row, closed);
        row.set("first_contact", late ? "lost" : habits.deal("strike")).set("ball_reach", "in-his-lane");
        String fit = habits.deal("reach-fit", closed ? "tight-end" : "tackle");
        row.topics.add("reach-" + fit);
        switch (fit) {
            case "strung" -> {
                row.his("set-the-edge", "string-out")
                        .ended("even", "stalemate", "edge-held", "ball-cut-back", "short-gain");
                RunEnds.tackle(habits, row, "shed");
            }
            case "hooked" -> {
                row.his("set-the-edge")
                        .fault("outside-arm-pinned")
                        .set("first_contact", "lost")
                        .set("shed", "none");
                row.ended("lost", "reached", "edge-lost-outside", "ball-hit-design-lane", RunEnds.big(habits));
            }
            case "hooked-held" -> {
                row.his("set-the-edge")
                        .fault("outside-arm-pinned")
                        .set("first_contact", "lost")
                        .set("shed", "none");
                row.ended("even", "edge-held", "ball-cut-back", "short-gain");
            }
            case "backdoor" -> {
                row.his("rip-through").fault("backdoors-block").set("shed", "none");
                row.ended("lost", "edge-lost-outside", "ball-bounced", RunEnds.big(habits));
            }
            default -> {
                row.his("set-the-edge").ended("won", "edge-held", "ball-cut-back", RunEnds.small(habits));
                row.results.add(row.get("first_contact").equals("won") ? "blocker-beaten" : "stalemate");
                RunEnds.tackle(habits, row, "shed");
            }
        }
    }

    private void base(Row row, boolean tightEnd) {
        boolean run = habits.chance().nextInt(2) == 0;
        RunEnds.at(row, run ? "inside-zone" : tightEnd ? "duo" : "iso");
        row.set("blocker", tightEnd ? "tight-end" : row.get("over") + "-tackle")
                .blocker(
                        tightEnd
                                ? "tight-end-base-block"
                                : habits.chance().nextInt(4) == 0 ? "drive-block" : "base-block");
        boolean late = RunEnds.lateEyes(habits, row, "base");
        RunEnds.pads(habits, row, tightEnd);
        row.set("ball_reach", habits.chance().nextInt(3) == 0 ? "in-his-lane" : "one-gap")
                .his("lock-out");
        String end = habits.deal("base", tightEnd ? "tight-end" : "tackle");
        row.topics.add((tightEnd ? "tight-end-" : "base-") + end);
        boolean outside = RunEnds.outsideIsHis(row);
        switch (end) {
            case "beaten" -> {
                row.set("first_contact", late ? "even" : "won").ended("won", "blocker-beaten", RunEnds.small(habits));
                RunEnds.tackle(habits, row, "stack-and-shed");
            }
            case "back" ->
                row.set("first_contact", "lost")
                        .set("shed", "none")
                        .ended("lost", "edge-moved-back", RunEnds.big(habits));
            case "widened" ->
                row.set("first_contact", "even")
                        .set("shed", "none")
                        .ended("lost", "edge-widened", "inside-lane-open", RunEnds.big(habits));
            case "sealed" ->
                row.set("first_contact", "lost")
                        .set("shed", "none")
                        .ended(
                                "lost",
                                "edge-sealed",
                                outside ? "edge-lost-outside" : "ball-bounced",
                                RunEnds.big(habits));
            default ->
                row.his("stack")
                        .set("first_contact", "even")
                        .set("shed", "none")
                        .ended("even", "stalemate", "short-gain");
        }
        if (outside
                && row.results.stream().noneMatch(result -> result.matches("edge-(lost.*|sealed|moved.*)|inside.*"))) {
            row.results.add("edge-held");
        }
        String fault = habits.deal("base-fault", tightEnd ? "tight-end" : "tackle");
        if (!fault.equals("stuck-on-block") || row.get("shed").equals("none")) {
            row.fault(fault);
        }
    }

    private void twoMen(Row row, Snap snap) {
        RunEnds.at(row, snap.shortYardage() ? "goal-line-short-yardage" : "duo");
        boolean combo = habits.chance().nextInt(3) == 0;
        row.help.add("double-team");
        row.set("blocker", row.get("surface").equals("closed-side") ? "tight-end" : row.get("over") + "-tackle")
                .set("bodies_taken", 2)
                .set("ball_reach", "in-his-lane")
                .set("shed", "none")
                .blocker(combo ? "combo-block" : "double-team")
                .his("hold-the-double-team");
        String end = habits.deal("double");
        row.topics.add("double-" + end);
        switch (end) {
            case "back" -> {
                row.set("first_contact", "lost").set("depth_at_contact", "behind-heel-line");
                row.fault(habits.says("pads-on-double") ? "high-pads" : "none");
                row.ended("lost", "edge-moved-back", "medium-gain");
            }
            case "split" -> {
                row.his("split-the-double-team").set("first_contact", "won");
                row.ended("won", "blocker-beaten", "two-blockers-taken", "no-gain");
            }
            default ->
                row.set("first_contact", habits.deal("puller-strike"))
                        .ended("won", "two-blockers-taken", "stalemate", RunEnds.small(habits));
        }
    }

    private void pin(Row row) {
        RunEnds.at(row, "pin-and-pull");
        row.set("gap", row.get("assignment").equals("spill-assignment") ? row.get("gap") : "outside")
                .set("blocker", "wing")
                .set("ball_reach", "one-gap")
                .blocker("pin-block");
        RunEnds.lateEyes(habits, row, "pin");
        if (habits.deal("pin").equals("crossed")) {
            row.his("cross-face-run").set("first_contact", "won");
            row.ended("won", "blocker-beaten", "edge-held", "ball-cut-back", RunEnds.small(habits));
            RunEnds.tackle(habits, row, "rip-through");
        } else {
            row.his("lock-out")
                    .fault("washed-inside")
                    .set("first_contact", "lost")
                    .set("shed", "none");
            row.ended("lost", "edge-moved-inside", "edge-lost-outside", RunEnds.big(habits));
        }
    }

    private void fan(Row row) {
        RunEnds.at(row, habits.chance().nextInt(2) == 0 ? "draw" : "iso");
        row.set("blocker", row.get("over") + "-tackle")
                .set("ball_reach", "one-gap")
                .blocker("fan-block");
        row.his("fight-back-inside");
        if (habits.deal("fan").equals("held")) {
            row.set("first_contact", "won").ended("won", "stalemate", RunEnds.small(habits));
            RunEnds.tackle(habits, row, "shed");
        } else {
            row.fault("widened-by-block").set("first_contact", "lost").set("shed", "none");
            row.ended("lost", "edge-widened", "inside-lane-open", RunEnds.big(habits));
        }
    }

    private void cut(Row row) {
        RunEnds.at(row, "outside-zone");
        row.set("blocker", row.get("over") + "-tackle")
                .set("ball_reach", "one-gap")
                .blocker("cut-block")
                .his("play-the-cut");
        row.set("shed", "none");
        if (habits.deal("cut").equals("up")) {
            row.ended("won", "edge-held", "short-gain");
            RunEnds.tackle(habits, row, "none");
        } else {
            row.ended("lost", "edge-grounded", "medium-gain");
        }
    }
}
