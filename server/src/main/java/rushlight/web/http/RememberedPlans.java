package rushlight.web.http;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import rushlight.findings.Assessment;
import rushlight.report.prospect.Material;
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
    private final Map<Key, Material.Planned> made = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Material.Planned> eldest) {
            return size() > MOST;
        }
    };

    RememberedPlans(ReportPlans plans, Supplier<String> version) {
        this.plans = plans;
        this.version = version;
    }

    @Override
    public Material.Planned of(Assessment assessment) {
        Key key = new Key(assessment.prospect().id(), version.get());
        // Who asks for a plan that is there does not wait for another man's.
        return known(key).orElseGet(() -> made(key, assessment));
    }

    private synchronized Material.Planned made(Key key, Assessment assessment) {
        return known(key).orElseGet(() -> {
            Material.Planned answer = plans.of(assessment);
            synchronized (made) {
                made.put(key, answer);
            }
            return answer;
        });
    }

    private Optional<Material.Planned> known(Key key) {
        synchronized (made) {
            return Optional.ofNullable(made.get(key));
        }
    }
}
