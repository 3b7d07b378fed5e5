package rushlight.plan;

import java.util.List;

/** What came of sessions that a person changed. */
public sealed interface PlanByHand {
    /**
     * They were held against everything a plan keeps to.
     *
     * @param plan the weeks as they would be
     * @param breaches what they do not keep, in words; empty where they keep all
     */
    record Held(Plan plan, List<Breach> breaches) implements PlanByHand {
        public Held {
            breaches = List.copyOf(breaches);
        }
    }

    /**
     * They cannot be held against anything.
     *
     * @param reasons why, one sentence each
     */
    record Refused(List<String> reasons) implements PlanByHand {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }
}
