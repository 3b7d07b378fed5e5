package rushlight.demo;

import java.util.Locale;
import java.util.Random;

/** The run of one game as a defense lives it: clock, down and distance, one snap after the other. */
final class GameFlow {
    private static final int QUARTER = 15 * 60;
    private static final int SECONDS_A_SNAP = 57;

    private final Random chance;
    private int quarter = 1;
    private int clock = QUARTER;
    private int down = 1;
    private int distance = 10;
    private int toGoal = 75;
    private int snaps;
    private String hash = "middle-of-field";

    GameFlow(Random chance) {
        this.chance = chance;
        run(chance.nextBoolean() ? between(4, 9) : between(120, 280));
    }

    /** One snap: what stands in the context columns of the log. */
    record Snap(int quarter, int seconds, int down, int distance, int number, String hash) {
        String clock() {
            return String.format(Locale.ROOT, "%02d:%02d", seconds / 60, seconds % 60);
        }

        boolean passing() {
            return (down >= 3 && distance >= 5) || (down == 2 && distance >= 9);
        }

        boolean shortYardage() {
            return down >= 3 && distance <= 2;
        }
    }

    boolean over() {
        return quarter > 4;
    }

    /** About how many more snaps this defense will see. */
    double snapsLeft() {
        return Math.max(1.0, ((4 - quarter) * (double) QUARTER + clock) / SECONDS_A_SNAP);
    }

    Snap next() {
        snaps++;
        return new Snap(quarter, clock, down, distance, snaps, hash);
    }

    /** The play gained {@code yards}; {@code stopped} where it also stopped the clock. */
    void after(int yards, boolean stopped) {
        toGoal -= yards;
        distance -= yards;
        run(stopped ? between(5, 9) : between(24, 41));
        hash = switch (chance.nextInt(4)) {
            case 0 -> "left-hash";
            case 1 -> "right-hash";
            case 2 -> hash;
            default -> "middle-of-field";
        };
        if (toGoal <= 0) {
            nextDrive();
        } else if (distance <= 0) {
            down = 1;
            distance = Math.min(10, toGoal);
        } else if (down == 4 || (down == 3 && (distance > 1 || chance.nextBoolean()))) {
            nextDrive();
        } else {
            down++;
        }
    }

    private void nextDrive() {
        run(between(100, 260));
        down = 1;
        distance = 10;
        toGoal = between(55, 85);
        hash = "middle-of-field";
    }

    private void run(int seconds) {
        clock -= seconds;
        if (clock <= 0) {
            quarter++;
            clock = QUARTER - between(0, 40);
        }
    }

    private int between(int least, int most) {
        return least + chance.nextInt(most - least + 1);
    }
}
