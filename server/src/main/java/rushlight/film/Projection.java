package rushlight.film;

/**
 * What an evaluator thinks a player will be. It is his own judgement: it stands beside what reps say and is never counted.
 *
 * @param prospect id of the player
 * @param evaluator whose judgement it is
 * @param role slug of the job he sees him in; empty where he names none
 * @param readiness what he could be asked to do, and when
 * @param ceiling the best he may become
 * @param floor the least he will be
 * @param risk what may go wrong
 * @param words anything else
 * @param scale the name of the evaluator's own scale
 * @param tier where on that scale he stands; empty without a scale
 */
public record Projection(
        String prospect,
        String evaluator,
        String role,
        String readiness,
        String ceiling,
        String floor,
        String risk,
        String words,
        String scale,
        String tier) {
    /** Whether nothing is said in it. */
    public boolean isBlank() {
        return (role + readiness + ceiling + floor + risk + words + tier).isBlank();
    }

    /** The slug of the evaluator, as it stands in addresses. */
    public String by() {
        return Identity.slug(evaluator);
    }
}
