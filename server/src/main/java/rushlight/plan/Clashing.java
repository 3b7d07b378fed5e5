package rushlight.plan;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rushlight.knowledge.Taxonomy;

/** Says in a coach's words why no schedule keeps all that was asked for, and what would have to give. */
final class Clashing {
    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)+");

    private Clashing() {}

    static PlanAnswer told(Taxonomy taxonomy, Work work, Schedule schedule) {
        if (schedule instanceof Schedule.Clash clash) {
            return new PlanAnswer.Impossible(
                    work,
                    clash.reasons().stream()
                            .map(text -> inWords(taxonomy, text))
                            .toList(),
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

    /** A text with the names of drills, checks and things in place of their slugs. */
    private static String inWords(Taxonomy taxonomy, String text) {
        return SLUG.matcher(text).replaceAll(found -> Matcher.quoteReplacement(name(taxonomy, found.group())));
    }

    private static String name(Taxonomy taxonomy, String slug) {
        return slug.startsWith(DrillPool.CHECK)
                ? "the check of " + taxonomy.label(slug.substring(DrillPool.CHECK.length()))
                : taxonomy.label(slug);
    }

    private static String named(Taxonomy taxonomy, Rule rule) {
        return rule.about().isEmpty() || rule.code().equals("W")
                ? inWords(taxonomy, rule.words())
                : new Rule(rule.code(), taxonomy.label(rule.about())).words();
    }

    private static String relaxed(Taxonomy taxonomy, Rule rule) {
        String about = rule.code().equals("W") ? inWords(taxonomy, rule.about()) : taxonomy.label(rule.about());
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
