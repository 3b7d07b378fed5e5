package rushlight.demo;

import java.util.List;
import java.util.Map;
import java.util.Random;

/** The same reps read by another evaluator: he agrees on what ends a rep more often than on hands, pads and sets. */
final class SecondEyes {
    private static final Map<String, String> SEES_AS = Map.of(
            "[over-set]", "[vertical-set]",
            "[anchor-hop]", "[sits-down]",
            "[latched-inside]", "[blocker-snatch]",
            "[late-two-hand-punch]", "[patient-square-set]",
            "[base-block]", "[drive-block]",
            "set-the-edge", "lock-out",
            "stack", "lock-out",
            "long-arm", "bull-rush");
    private static final List<String> TOUCHY =
            List.of("high-pads", "late-hands", "early-hands", "outside-arm-pinned", "hands-outside", "late-eyes");

    private final Random chance;

    SecondEyes(Random chance) {
        this.chance = chance;
    }

    /** Changes the row into his reading of it. */
    Row read(Row row, String evaluator) {
        row.set("evaluator", evaluator).set("note", "");
        row.set("confidence", chance.nextInt(4) == 0 ? "medium" : "high");
        row.exchange.replaceAll(step -> chance.nextInt(6) == 0 ? SEES_AS.getOrDefault(step, step) : step);
        row.faults.removeIf(fault -> TOUCHY.contains(fault) && chance.nextInt(3) == 0);
        if (chance.nextInt(12) == 0) {
            row.faults.add(row.get("phase").equals("run") ? "no-extension" : "high-pads");
        }
        if (row.get("result").equals("lost") && chance.nextInt(6) == 0) {
            row.set("result", "even");
        }
        if (!row.get("first_contact").isEmpty() && chance.nextInt(4) == 0) {
            row.set("first_contact", "even");
        }
        return row;
    }
}
