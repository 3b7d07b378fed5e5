package rushlight.demo;

import java.util.Locale;
import java.util.Random;
import rushlight.demo.GameFlow.Snap;

/** The video of one game: a cut of his reps back to back, or the whole game. */
final class Reel {
    private final String video;
    private final boolean wholeGame;
    private final Random chance;
    private double at;

    Reel(String video, boolean wholeGame, Random chance) {
        this.video = video;
        this.wholeGame = wholeGame;
        this.chance = chance;
        this.at = 3 + chance.nextInt(6);
    }

    void cut(Row row, Snap snap) {
        if (wholeGame) {
            at = Math.max(at, snap.number() * 95.0 + (snap.quarter() > 2 ? 900 : 0) + chance.nextInt(20));
        }
        double length = (row.get("phase").equals("run") ? 5 : 6) + chance.nextInt(7) / 2.0;
        row.set("video", video).set("start", time(at)).set("end", time(at + length));
        at += length + 1 + chance.nextInt(6) / 2.0;
    }

    private String time(double seconds) {
        int whole = (int) seconds;
        String tenth = seconds > whole ? ".5" : "";
        if (wholeGame) {
            return String.format(Locale.ROOT, "%d:%02d:%02d%s", whole / 3600, whole / 60 % 60, whole % 60, tenth);
        }
        return String.format(Locale.ROOT, "%d:%02d%s", whole / 60, whole % 60, tenth);
    }
}
