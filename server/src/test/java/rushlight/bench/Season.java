package rushlight.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepId;

/** The league's reps dealt out again to made-up prospects, in games of some thirty reps. */
record Season(List<Log> league) {
    /** So many prospects with so many reps each; another batch has other prospects. */
    List<Log> of(int batch, int prospects, int repsEach) {
        List<Log> logs = new ArrayList<>();
        int at = batch * 7;
        for (int i = 0; i < prospects; i++) {
            Prospect prospect = Prospect.named("bench-" + batch + "-" + i, "Bench " + batch + " " + i);
            for (int done = 0; done < repsEach; at++) {
                Log from = league.get(at % league.size());
                Game game = new Game(
                        "game-" + batch + "-" + i + "-" + at,
                        "Game " + batch + " " + i + " " + at,
                        Optional.empty(),
                        "",
                        "");
                List<Reading> readings = from.readings().stream()
                        .limit(repsEach - done)
                        .map(r -> new Reading(
                                new RepId(prospect.id(), game.id(), r.rep().rep()),
                                from.evaluator(),
                                r.tags(),
                                r.exchange()))
                        .toList();
                logs.add(new Log(from.evaluator(), prospect, game, from.charted(), readings, from.source()));
                done += readings.size();
            }
        }
        return logs;
    }
}
