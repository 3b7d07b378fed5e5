package rushlight.demo;

import java.util.Map;
import java.util.Set;
import rushlight.demo.GameFlow.Snap;
import rushlight.demo.League.Game;

/** How one man's film is charted: the context of a rep, where he lines up, what the view hides, a note here and there. */
final class Watching {
    private static final Map<String, Set<String>> SEEN_IN = Map.of(
            "feet",
                    Set.of(
                            "feet-stop-at-contact",
                            "rounded-track",
                            "rushes-past-depth",
                            "no-flatten",
                            "loses-balance-on-corner",
                            "late-get-off"),
            "hands", Set.of("early-hands", "late-hands", "hands-outside", "no-extension", "telegraphed-windup"),
            "eyes", Set.of("late-eyes", "blindsided-by-chip", "hesitant"),
            "pads", Set.of("high-pads"));

    private final Habits habits;
    private final Player player;
    private final Notes notes;
    private final RushReps rushes;
    private final RunReps runs;

    Watching(Habits habits, Player player, Notes notes) {
        this.habits = habits;
        this.player = player;
        this.notes = notes;
        this.rushes = new RushReps(habits, player.favored());
        this.runs = new RunReps(habits);
    }

    Reel reel(Game game) {
        return new Reel(game.video(), habits.deal("film").equals("full"), habits.chance());
    }

    Row rep(Game game, Snap snap, int number, String evaluator) {
        Row row = context(game, snap, number, evaluator);
        lineUp(row, snap);
        row.set("get_off", habits.deal("get-off"));
        if (row.get("get_off").equals("late")) {
            row.fault("late-get-off");
        }
        switch (habits.deal("phase", snap.shortYardage() ? "short" : snap.passing() ? "passing" : "any")) {
            case "rush" -> rushes.chart(row, snap);
            case "run" -> runs.chart(row, snap);
            default -> drop(row);
        }
        hide(row, habits.deal("view"));
        row.set("confidence", habits.deal("confidence"));
        if (habits.says("note")) {
            row.set("note", notes.on(row, habits.says("tail")));
        }
        return row;
    }

    private Row context(Game game, Snap snap, int number, String evaluator) {
        return new Row()
                .set("rep", (number < 10 ? "r0" : "r") + number)
                .set("prospect", player.name())
                .set("game", game.name())
                .set("date", game.date())
                .set("level", "college")
                .set("opponent", game.opponent())
                .set("quarter", snap.quarter())
                .set("clock", snap.clock())
                .set("down", snap.down())
                .set("distance", snap.distance())
                .set("snap", snap.number())
                .set("hash", snap.hash())
                .set("evaluator", evaluator);
    }

    private void lineUp(Row row, Snap snap) {
        String surface = habits.deal("surface");
        boolean open = surface.equals("open-side");
        row.set("over", habits.deal("over")).set("surface", surface);
        row.set("alignment", habits.deal("align", open && snap.passing() ? "passing" : surface));
        row.set("stance", snap.passing() && open ? "two-point-stance" : habits.deal("stance"));
    }

    private void drop(Row row) {
        row.set("phase", "drop").set("play", "dropback").set("movement", "no").his(habits.deal("drop"));
        row.set("assignment_source", "unknown");
        String end = habits.deal("drop-end");
        row.topics.add("drop");
        row.ended(end.equals("tackle-made") ? "won" : end.equals("missed-tackle") ? "lost" : "even", end);
    }

    /** What a view hides is neither tagged nor spoken of. */
    private static void hide(Row row, String view) {
        if (view.equals("clear")) {
            return;
        }
        Set<String> hidden = SEEN_IN.getOrDefault(view, Set.of());
        row.set("not_seen", view).withdraw(hidden);
    }
}
