package rushlight.plan;

/**
 * What it costs to give a rule up where not all can be kept: teaching habits first, then sets of a skill that only prepares
 * another, then what a person decided, then a gap, the lightest first. What keeps a man whole is never given up, nor is what a
 * room or a clock does not have.
 */
final class Price {
    private static final int VARIETY = 1;
    private static final int NOT_IN_A_ROW = 10;
    private static final int KEEPING_UP = 100;
    private static final int PREPARING = 1_000;
    private static final int DECIDED = 20_000;
    private static final int GAP = 100_000;

    private Price() {}

    /** The price of a rule; 0 where it is never given up. */
    static int of(PlanTask task, Rule rule) {
        return switch (rule.code()) {
            case "C17" -> VARIETY;
            case "C16" -> NOT_IN_A_ROW;
            case "C12" -> KEEPING_UP;
            case "W" -> DECIDED;
            case "C13", "C14" ->
                task.foci().stream()
                        .filter(focus -> focus.skill().equals(rule.about()))
                        .mapToInt(focus -> (focus.gap() ? GAP : PREPARING) + focus.weight())
                        .sum();
            default -> 0;
        };
    }
}
