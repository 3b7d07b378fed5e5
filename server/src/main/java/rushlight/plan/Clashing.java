package rushlight.plan;

import java.util.List;
import rushlight.knowledge.Taxonomy;

/** Says in a coach's words why no schedule keeps all that was asked for, and what would have to give. */
final class Clashing {
    private Clashing() {}

    static PlanAnswer told(Taxonomy taxonomy, Work work, Schedule schedule) {
        if (schedule instanceof Schedule.Clash clash) {
            return new PlanAnswer.Impossible(
                    work,
                    clash.reasons(),
                    clash.clash().stream().map(rule -> named(taxonomy, rule)).toList(),
                    clash.giveUp().stream().map(rule -> relaxed(taxonomy, rule)).toList());
        }
        String why = schedule instanceof Schedule.Unknown unknown ? unknown.why() : "nothing was found";
        return new PlanAnswer.Impossible(work, List.of(why), List.of(), List.of());
    }

    static String nothing() {
        return "No gap stands that these sessions could train. More film may show one; a skill can be asked for by"
                + " hand.";
    }

    private static String named(Taxonomy taxonomy, Rule rule) {
        return rule.about().isEmpty() || rule.code().equals("W")
                ? rule.words()
                : new Rule(rule.code(), taxonomy.label(rule.about())).words();
    }

    private static String relaxed(Taxonomy taxonomy, Rule rule) {
        String about = rule.code().equals("W") ? rule.about() : taxonomy.label(rule.about());
        return switch (rule.code()) {
            case "C17" -> "let one drill come more often";
            case "C16" -> "let a skill come in three sessions in a row";
            case "C12" -> "let a week pass without a skill that was begun";
            case "C13" -> "take fewer sets of " + about;
            case "C14" -> "do without the check of " + about;
            case "W" -> "take back what was decided by hand: " + about;
            default -> rule.words();
        };
    }
}
