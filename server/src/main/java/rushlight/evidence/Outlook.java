package rushlight.evidence;

/**
 * What further opportunities would do to an unsettled count, by the beta-binomial predictive of its posterior: each further
 * event has the chance (x + 1/2) / (n + 1), and a word once settled ends the run.
 *
 * @param confirmed chance of being confirmed within the run, 0 to 1
 * @param cleared chance of being cleared within the run, 0 to 1
 * @param evenChance the fewest further opportunities that settle it with a chance of at least one half; 0 where the run is
 *     too short for that
 */
public record Outlook(double confirmed, double cleared, int evenChance) {
    /**
     * The outlook over the next {@code further} opportunities, games not considered.
     *
     * @param further how far to look, 1 or more
     */
    public static Outlook of(Rate rate, Line line, int further) {
        double[] open = new double[further + 2];
        open[0] = 1;
        double[] settled = new double[2]; // cleared, confirmed
        int lowest = 0;
        int highest = 0;
        int half = 0;
        for (int k = 1; k <= further && lowest <= highest; k++) {
            highest++;
            step(open, lowest, highest, rate, k);
            // The word only moves one way in the events, so what is settled stands at the two ends.
            while (lowest <= highest && settles(word(rate, line, lowest, k), open, lowest, settled)) {
                lowest++;
            }
            while (lowest <= highest && settles(word(rate, line, highest, k), open, highest, settled)) {
                highest--;
            }
            half = half == 0 && settled[0] + settled[1] >= 0.5 ? k : half;
        }
        return new Outlook(settled[1], settled[0], half);
    }

    /** Moves the chance of a settled state from the open ones to its word; whether it did. */
    private static boolean settles(Verdict word, double[] open, int state, double[] settled) {
        if (!word.settled()) {
            return false;
        }
        settled[word == Verdict.CONFIRMED ? 1 : 0] += open[state];
        open[state] = 0;
        return true;
    }

    private static Verdict word(Rate rate, Line line, int more, int k) {
        return line.verdict(new Rate(rate.events() + more, rate.opportunities() + k));
    }

    /** One opportunity more: the chances of so many further events, from those one opportunity earlier. */
    private static void step(double[] open, int lowest, int highest, Rate rate, int k) {
        for (int more = highest; more >= lowest; more--) {
            double stays = open[more] * (1 - chance(rate, more, k));
            double comes = more > lowest ? open[more - 1] * chance(rate, more - 1, k) : 0;
            open[more] = stays + comes;
        }
    }

    private static double chance(Rate rate, int more, int k) {
        return (rate.events() + more + 0.5) / (rate.opportunities() + k);
    }
}
