package rushlight.web.http;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import rushlight.findings.Assessment;
import rushlight.plan.PlanAnswer;
import rushlight.web.ReportPlans;

/**
 * Plans that were made for reports, kept as long as the film is the same: whoever writes a summary sees it anew many times, and
 * the plan does not change by it. One at a time is made; the same input gives the same plan.
 */
final class RememberedPlans implements ReportPlans {
    private static final int MOST = 64;

    /** Whose plan, made of which version of the film. */
    private record Key(String prospect, String version) {}

    private final ReportPlans plans;
    private final Supplier<String> version;
    private final Map<Key, PlanAnswer> made = new LinkedHashMap<>();

    RememberedPlans(ReportPlans plans, Supplier<String> version) {
        this.plans = plans;
        this.version = version;
    }

    @Override
    public synchronized PlanAnswer of(Assessment assessment) {
        Key key = new Key(assessment.prospect().id(), version.get());
        PlanAnswer known = made.get(key);
        if (known == null) {
            known = plans.of(assessment);
            if (made.size() >= MOST) {
                made.remove(made.keySet().iterator().next());
            }
            made.put(key, known);
        }
        return known;
    }
}
