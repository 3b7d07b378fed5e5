package rushlight.plan;

import java.util.List;

/** What came of a {@link PlanTask}. */
public sealed interface Schedule {
    /** How much is known of how good a schedule is. */
    enum Proof {
        /** No schedule is better. */
        BEST,
        /** A bound is proven; a better schedule may exist below it. */
        BOUNDED,
        /** Nothing is proven. */
        NOT_PROVEN
    }

    /**
     * A schedule that keeps every rule.
     *
     * @param sessions slugs of drills and checks for each session, in the order of the task
     * @param value what it is worth
     * @param bound no schedule is worth more; the value itself where nothing is proven
     * @param proof what is proven
     */
    record Found(List<List<String>> sessions, int value, int bound, Proof proof) implements Schedule {
        public Found {
            sessions = sessions.stream().map(List::copyOf).toList();
        }

        /** By how many percent of its value a better schedule could be better, rounded up; 0 or more. */
        public int betterAtMost() {
            return value <= 0 ? (bound > value ? 100 : 0) : (int) Math.ceil(100.0 * (bound - value) / value);
        }

        /** What is proven, in words. */
        public String words() {
            return switch (proof) {
                case BEST -> "no better schedule exists under these limits";
                case BOUNDED -> "at most " + betterAtMost() + " % better is possible";
                case NOT_PROVEN -> "not proven best";
            };
        }
    }

    /**
     * No schedule keeps all the rules.
     *
     * @param reasons what can be said outright, such as a check that no session has the men for; often empty
     * @param clash rules that no schedule keeps together; without any one of them there would be one
     * @param giveUp the least that must be given up for a schedule to exist; empty where only another week helps
     */
    record Clash(List<String> reasons, List<Rule> clash, List<Rule> giveUp) implements Schedule {
        public Clash {
            reasons = List.copyOf(reasons);
            clash = List.copyOf(clash);
            giveUp = List.copyOf(giveUp);
        }
    }

    /**
     * None was found, and whether there is one is not known.
     *
     * @param why what was tried
     */
    record Unknown(String why) implements Schedule {}
}
