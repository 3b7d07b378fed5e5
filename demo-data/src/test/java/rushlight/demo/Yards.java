package rushlight.demo;

import java.util.Random;
import java.util.Set;

/** What a rep's results mean for the next down: yards, and whether the clock stops. */
final class Yards {
    private Yards() {}

    static int gained(Row row, Random chance) {
        Set<String> results = row.results;
        if (results.contains("long-gain")) {
            return 10 + chance.nextInt(18);
        }
        if (results.contains("medium-gain")) {
            return 4 + chance.nextInt(6);
        }
        if (results.contains("short-gain")) {
            return 1 + chance.nextInt(3);
        }
        if (results.contains("no-gain")) {
            return 0;
        }
        if (results.contains("sack")) {
            return -(4 + chance.nextInt(6));
        }
        if (row.get("phase").equals("run")) {
            return chance.nextInt(7);
        }
        boolean rushed = results.contains("hurry") || results.contains("quarterback-hit");
        boolean complete = !results.contains("batted-pass") && chance.nextInt(100) < (rushed ? 35 : 62);
        return complete ? 4 + chance.nextInt(11) : 0;
    }

    static boolean stopped(Row row) {
        return row.results.contains("hurry") || row.results.contains("batted-pass");
    }
}
