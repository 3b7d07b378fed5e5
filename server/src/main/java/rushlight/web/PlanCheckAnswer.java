package rushlight.web;

import java.util.List;
import java.util.Locale;
import rushlight.plan.Breach;
import rushlight.plan.PlanByHand;

/**
 * Sessions that were changed by hand, held against everything a plan keeps to.
 *
 * @param kept whether they keep all of it
 * @param breaches what they do not keep
 * @param proof what they are worth beside the best there is
 * @param weeks the weeks as they would be
 */
public record PlanCheckAnswer(boolean kept, List<Broken> breaches, PlanSheet.Proof proof, List<PlanWeek> weeks) {
    /**
     * Something that is not kept.
     *
     * @param code the constraint
     * @param limit what it holds to, in words
     * @param where the session or the week; empty for the block
     * @param text what is wrong, with the numbers
     * @param lacking whether something is missing, so that adding may mend it
     * @param sentence all of it in one sentence
     */
    public record Broken(String code, String limit, String where, String text, boolean lacking, String sentence) {
        static Broken of(Breach one) {
            return new Broken(
                    one.rule().code(),
                    one.rule().words(),
                    one.where(),
                    one.text(),
                    one.lacking(),
                    PlanCheckAnswer.sentence(one));
        }
    }

    /** The answer for a plan that was changed. */
    public static PlanCheckAnswer of(PlanByHand.Held held) {
        PlanSheet sheet = PlanSheet.of(held.plan());
        return new PlanCheckAnswer(
                held.breaches().isEmpty(),
                held.breaches().stream().map(Broken::of).toList(),
                sheet.proof().orElseThrow(),
                sheet.weeks());
    }

    /** "Week 2 Monday: 26 of 24 min. The limit: the minutes of a session." */
    public static String sentence(Breach one) {
        String what = one.where().isEmpty() ? one.text() : one.where() + ": " + one.text();
        return what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1) + ". The limit: "
                + one.rule().words() + ".";
    }
}
