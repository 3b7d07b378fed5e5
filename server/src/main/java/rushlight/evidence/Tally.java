package rushlight.evidence;

/**
 * What rare events are held against: k of them among the latest m opportunities.
 *
 * @param events k, 1 or more
 * @param within m, at least k
 */
public record Tally(int events, int within) {
    public Tally {
        if (events < 1 || within < events) {
            throw new IllegalArgumentException(
                    "A tally wants 1 or more events within at least as many opportunities, but this is " + events
                            + " within " + within);
        }
    }

    /**
     * The word for a tally: k events make it likely, and confirmed when they come from two games; fewer are watched; none in
     * m opportunities clear it; none in fewer say nothing.
     *
     * @param latest the events among the latest m opportunities, and how many of those there were, at most m
     * @param gamesWithEvent the games those events come from
     */
    public Verdict verdict(Rate latest, int gamesWithEvent) {
        if (latest.events() >= events) {
            return gamesWithEvent >= 2 ? Verdict.CONFIRMED : Verdict.LIKELY;
        }
        if (latest.events() > 0) {
            return Verdict.WATCH;
        }
        return latest.opportunities() >= within ? Verdict.CLEARED : Verdict.NOT_ENOUGH_TAPE;
    }
}
