package rushlight.demo;

import java.util.Set;

/** Pass reps that are no plain one-on-one: lanes, games, quick throws, screens, run fakes, nobody on him. */
final class RushDuties {
    private final Habits habits;

    RushDuties(Habits habits) {
        this.habits = habits;
    }

    void game(Row row, String blocker) {
        String game = habits.deal("game");
        boolean loops = game.equals("t-e-stunt");
        duty(row, "dropback", "game-assignment", blocker)
                .his(game, loops ? "loop" : "penetrate")
                .blocker("patient-square-set");
        row.topics.add("game");
        if (habits.says("game-wins")) {
            row.set("how_won", "scheme").ended("won", "hurry");
            return;
        }
        String fault = habits.deal("game-fault");
        row.fault(fault.startsWith("loop") && !loops ? "no-contact-by-penetrator" : fault)
                .ended("even", "no-pressure");
    }

    void lane(Row row, String blocker) {
        boolean passing = habits.chance().nextInt(3) > 0;
        String duty = habits.deal("lane-duty");
        duty(row, passing ? "dropback" : "boot", duty, blocker);
        row.his(duty.startsWith("mush") ? "mush-rush" : "contain-rush").blocker(passing ? "anchor-hop" : "mirror");
        String lane = habits.deal("lane");
        row.topics.add("lane-" + lane);
        if (lane.equals("escaped")) {
            row.chances.add("opp-escape");
            row.fault("loses-contain-pass").ended("lost", "quarterback-escapes");
            return;
        }
        if (!passing || habits.chance().nextInt(2) == 0) {
            row.chances.add("opp-escape");
        }
        if (lane.equals("squeezed")) {
            row.his("squeeze-pocket").set("how_won", "effort").ended("won", "hurry");
        } else {
            row.ended("even", "no-pressure");
        }
    }

    void quick(Row row, String blocker) {
        duty(row, "quick-game", "free-rush-assignment", blocker)
                .set("second_move_time", "no")
                .his(habits.deal("opening"))
                .blocker(habits.chance().nextInt(3) == 0 ? "cut-block" : "jump-set");
        if (row.exchange.contains("[cut-block]")) {
            row.his("play-the-cut");
        } else if (habits.chance().nextInt(3) > 0) {
            row.chances.add("opp-not-home");
            if (habits.says("hand-up")) {
                row.his("hand-in-lane");
                if (habits.chance().nextInt(5) == 0) {
                    row.ended("won", "batted-pass").topics.add("batted");
                    return;
                }
            }
        }
        row.ended("even", "ball-out", "no-pressure").topics.add("quick");
    }

    void screen(Row row, String blocker) {
        duty(row, "screen", "free-rush-assignment", blocker)
                .set("second_move_time", "no")
                .his(habits.deal("opening"))
                .blocker("soft-set");
        row.chances.add("opp-screen-draw");
        if (habits.says("retrace")) {
            row.his("retrace").ended("even", "no-pressure").topics.add("screen-seen");
        } else {
            row.ended("lost", "no-pressure").topics.add("screen-missed");
        }
    }

    void read(Row row, String blocker) {
        duty(row, "play-action", "read-rush-assignment", blocker)
                .set("second_move_time", "yes")
                .set("first_contact", habits.deal("strike"))
                .blocker("run-action-set");
        row.topics.add("run-fake");
        switch (habits.deal("read")) {
            case "rip" -> {
                row.his("read-rush").blocker("anchor-hop").his("bull-rip").set("how_won", "counter");
                row.set("hand_cleared", "yes").set("hip_cleared", "yes").ended("won", "hurry");
            }
            case "jerk" ->
                row.his("read-rush")
                        .blocker("anchor-hop")
                        .his("bull-jerk")
                        .blocker("mirror")
                        .ended("even", "no-pressure");
            default -> row.his("read-rush").blocker("latched-inside").ended("lost", "no-pressure");
        }
    }

    void unblocked(Row row) {
        row.set("play", "dropback").set("assignment_source", "unknown").set("how_won", "unblocked");
        row.topics.add("unblocked");
        atThePasser(row.ended("won", "edge-untouched"), habits.chance().nextInt(3) == 0 ? "sack" : "hurry");
    }

    /** He is at the passer: makes it, or lets him go. */
    void atThePasser(Row row, String pressure) {
        if (!row.results.contains("edge-untouched")) {
            row.ended("won", "blocker-beaten");
        }
        row.chances.add("opp-finish");
        if (habits.says("blind")) {
            row.chances.add("opp-blind-side-finish");
        }
        if (habits.deal("finish").equals("missed")) {
            row.ended("won", "missed-tackle", "hurry").topics.add("missed-passer");
            return;
        }
        row.ended("won", pressure).topics.add(pressure);
        boolean strips = row.chances.contains("opp-blind-side-finish") && habits.says("strip");
        if (strips && Set.of("sack", "quarterback-hit").contains(pressure)) {
            row.his("strip-at-ball");
        }
    }

    private static Row duty(Row row, String play, String duty, String blocker) {
        return row.set("play", play)
                .set("assignment", duty)
                .set("assignment_source", "stated")
                .set("blocker", blocker)
                .set("hand_cleared", "no")
                .set("hip_cleared", "no");
    }
}
