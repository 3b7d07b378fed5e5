package rushlight.plan;

import java.util.List;

/** What came of a request. */
public sealed interface PlanAnswer {
    /** A plan that keeps every rule. */
    record Made(Plan plan) implements PlanAnswer {}

    /**
     * The request cannot be granted as it stands.
     *
     * @param reasons why, one sentence each
     */
    record Refused(List<String> reasons) implements PlanAnswer {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * No schedule keeps all that was asked for.
     *
     * @param work what was to be worked on
     * @param reasons what can be said outright
     * @param clash limits that cannot hold together, in words
     * @param giveUp the least that would have to be given up, in words
     */
    record Impossible(Work work, List<String> reasons, List<String> clash, List<String> giveUp) implements PlanAnswer {
        public Impossible {
            reasons = List.copyOf(reasons);
            clash = List.copyOf(clash);
            giveUp = List.copyOf(giveUp);
        }
    }
}
