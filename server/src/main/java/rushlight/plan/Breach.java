package rushlight.plan;

/**
 * Where a schedule does not keep a rule.
 *
 * @param rule the rule
 * @param where the session or the week; empty for the block
 * @param text what is wrong, with the numbers
 * @param lacking whether something is missing: adding to the schedule may mend it
 */
public record Breach(Rule rule, String where, String text, boolean lacking) {}
