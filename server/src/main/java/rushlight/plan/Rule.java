package rushlight.plan;

import java.util.Map;

/**
 * A constraint that a schedule keeps to, as far as it is about one thing.
 *
 * @param code {@code C01} to {@code C21}, or {@code W} for what a person decided
 * @param about the skill it is about, or the wish in words; empty where it is about every session
 */
public record Rule(String code, String about) implements Comparable<Rule> {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("C01", "the minutes of a session"),
            Map.entry("C02", "the highest contact of a day"),
            Map.entry("C03", "the minutes and days of full contact"),
            Map.entry("C04", "the equipment that is there"),
            Map.entry("C05", "the men who are there"),
            Map.entry("C06", "skills in a session"),
            Map.entry("C07", "new skills in a session"),
            Map.entry("C08", "one set of a skill in a session"),
            Map.entry("C09", "lighter contact before heavier"),
            Map.entry("C10", "what comes before a skill"),
            Map.entry("C11", "sessions of a skill in a week"),
            Map.entry("C12", "no week without a skill that was begun"),
            Map.entry("C13", "sets of a skill in the block"),
            Map.entry("C14", "a check in the last week, with no training after it"),
            Map.entry("C15", "safety in the first session, and without full contact"),
            Map.entry("C16", "not three sessions in a row"),
            Map.entry("C17", "how often one drill may come"),
            Map.entry("C18", "full contact only after the check of safety"),
            Map.entry("C20", "what has been approved"),
            Map.entry("C21", "days and minutes of a week"),
            Map.entry("W", "what was decided by hand"));

    /** A rule about every session. */
    static Rule of(String code) {
        return new Rule(code, "");
    }

    /** What the rule holds to, in words. */
    public String words() {
        return WORDS.getOrDefault(code, code) + (about.isEmpty() ? "" : ": " + about);
    }

    @Override
    public int compareTo(Rule other) {
        int byCode = code.compareTo(other.code);
        return byCode != 0 ? byCode : about.compareTo(other.about);
    }
}
