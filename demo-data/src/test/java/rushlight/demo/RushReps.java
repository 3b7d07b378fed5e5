package rushlight.demo;

import java.util.HashSet;
import java.util.Set;
import rushlight.demo.GameFlow.Snap;

/** Pass-rush reps of one man: who blocks him, the first move, the answer, what he does then and how it ends. */
final class RushReps {
    /** What is not held against a man whose second move wins. */
    private static final Set<String> FORGIVEN =
            Set.of("feet-stop-at-contact", "rushes-past-depth", "pause-after-first-move", "loses-balance-on-corner");

    private final Habits habits;
    private final RushDuties duties;
    private final Set<String> favored;

    RushReps(Habits habits, Set<String> favored) {
        this.habits = habits;
        this.favored = new HashSet<>(favored);
        this.duties = new RushDuties(habits);
    }

    void chart(Row row, Snap snap) {
        row.set("phase", "pass-rush").set("movement", "no");
        String tackle = row.get("over") + "-tackle";
        switch (kind(snap)) {
            case "mismatch" -> {
                boolean closed = row.get("surface").equals("closed-side");
                duel(free(row, closed ? "tight-end" : "running-back"), "mismatch");
                if (row.won() && row.get("how_won").equals("first-move")) {
                    row.set("how_won", habits.deal("mismatch-word"));
                }
            }
            case "helped" -> helped(free(row, tackle));
            case "game" -> duties.game(row, tackle);
            case "lane" -> duties.lane(row, tackle);
            case "quick" -> duties.quick(row, tackle);
            case "screen" -> duties.screen(row, tackle);
            case "read" -> duties.read(row, tackle);
            case "unblocked" -> duties.unblocked(row);
            default -> duel(free(row, tackle), row.get("over"));
        }
    }

    private String kind(Snap snap) {
        return habits.deal("rush-kind", snap.passing() ? "passing" : snap.down() == 1 ? "first" : "any");
    }

    private Row free(Row row, String blocker) {
        String known = habits.deal("rush-duty");
        boolean unknown = known.equals("unknown");
        return row.set("play", "dropback")
                .set("assignment", unknown ? "" : "free-rush-assignment")
                .set("assignment_source", known)
                .set("blocker", blocker);
    }

    private void helped(Row row) {
        String helper = habits.deal("helper");
        row.help.add(helper);
        if (helper.equals("double-team")) {
            row.his(habits.deal("opening"))
                    .blocker("double-team")
                    .fault(habits.deal("double-fault"))
                    .set("second_move_time", "yes")
                    .set("hand_cleared", "no")
                    .set("hip_cleared", "no")
                    .ended(row.faults.isEmpty() ? "even" : "lost", "no-pressure")
                    .topics
                    .add("double-team");
            if (habits.says("effort", "double")) {
                row.his("split-the-double-team");
            }
            return;
        }
        duel(row, "helped");
        row.topics.add(helper);
        if (helper.startsWith("chip") && !row.won()) {
            row.fault(habits.deal("chip-fault"));
        }
    }

    private void duel(Row row, String against) {
        String move = habits.deal("opening", row.get("alignment"));
        String setup = habits.deal("setup");
        if (!setup.equals("none") && !Answers.INSIDE.contains(move)) {
            row.his(setup);
            row.topics.add("setup-" + setup);
        }
        row.set("hand_cleared", "no").set("hip_cleared", "no").set("second_move_time", "yes");
        if (!move.equals("speed-rush") && !move.equals("ghost")) {
            row.set("first_contact", habits.deal("strike"));
        }
        if (habits.says("wins", against)) {
            firstMoveWins(row, move);
        } else {
            firstMoveStopped(row, move);
        }
        handFaults(row, move);
    }

    private void firstMoveWins(Row row, String move) {
        String given = habits.deal("gives", Answers.INSIDE.contains(move) ? "inside" : style(move));
        if (given.equals("none")) {
            row.his(move);
        } else if (Answers.INSIDE.contains(move)) {
            row.blocker(given).his(move);
        } else {
            row.his(move).blocker(given);
        }
        row.topics.add("won-" + style(move));
        finishes(row, move, "first-move");
    }

    private void firstMoveStopped(Row row, String move) {
        String met = habits.deal("meets/" + move);
        row.his(move).blocker(met);
        row.topics.add("met-" + met);
        if (Answers.POWER.contains(move)) {
            row.fault(habits.deal("power-fault", met));
        } else if (Answers.INSIDE.contains(move)) {
            row.fault(habits.deal("inside-fault"));
        } else {
            row.fault(habits.deal("speed-fault", met));
        }
        if (!habits.says("time")) {
            row.set("second_move_time", "no").ended("even", "ball-out", "no-pressure");
            return;
        }
        String answer = habits.deal("answer", met);
        if (answer.equals("none")) {
            stopped(row, met);
            return;
        }
        String second = answer.equals("paired")
                ? Answers.paired(move, met, favored, habits.chance())
                : Answers.stray(habits.chance());
        row.his(second).fault(habits.deal("second-fault"));
        row.topics.add(answer + "-second");
        if (answer.equals("paired") && habits.says("counter-wins", met)) {
            row.withdraw(FORGIVEN).topics.add("won-counter");
            finishes(row, second, "counter");
        } else {
            row.blocker("mirror");
            stopped(row, met);
        }
    }

    private void finishes(Row row, String move, String how) {
        boolean outside = Answers.OUTSIDE.contains(move);
        if (Answers.HANDS.contains(move) || (!Answers.POWER.contains(move) && habits.says("hand-cleared"))) {
            row.set("hand_cleared", "yes");
        }
        row.set("hip_cleared", Answers.POWER.contains(move) && !outside ? "no" : "yes");
        String edge = outside ? habits.deal("edge-fault") : "none";
        if (!edge.equals("none")) {
            row.fault(edge)
                    .ended("even", edge.equals("rushes-past-depth") ? "pushed-past" : "blocker-beaten", "no-pressure");
            return;
        }
        if (outside && !move.equals("flatten")) {
            row.his("flatten");
        }
        row.set("how_won", how).ended("won");
        String pressure = habits.deal("pressure");
        switch (pressure) {
            case "none" -> row.ended("won", "clean-win", "no-pressure");
            case "hurry" -> row.ended("won", "blocker-beaten", "hurry");
            default -> duties.atThePasser(row, pressure);
        }
    }

    private void stopped(Row row, String met) {
        if (habits.says("effort")) {
            row.his("second-effort").set("how_won", "effort").ended("won", "hurry");
            row.topics.add("effort");
            return;
        }
        if (row.exchange.stream().anyMatch(Answers.HANDS::contains) && habits.says("hand-cleared")) {
            row.set("hand_cleared", "yes");
            row.topics.add("hand-without-hip");
        }
        String result = met.equals("ride-past")
                ? "pushed-past"
                : row.faults.contains("feet-stop-at-contact") ? "stonewalled" : "stalemate";
        row.ended(habits.deal("not-won"), result, "no-pressure");
    }

    private void handFaults(Row row, String move) {
        boolean hands = Answers.HANDS.contains(move);
        if (row.won() || !hands) {
            return;
        }
        String fault = habits.deal("hands-fault");
        row.fault(fault);
        if (fault.equals("late-hands")) {
            row.set("first_contact", "lost");
        }
        if (!fault.equals("none")) {
            row.set("hand_cleared", "no");
        }
    }

    private static String style(String move) {
        return Answers.POWER.contains(move) ? "power" : "outside";
    }
}
