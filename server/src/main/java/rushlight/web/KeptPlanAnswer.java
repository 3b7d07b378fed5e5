package rushlight.web;

import com.fasterxml.jackson.annotation.JsonRawValue;
import java.util.List;
import java.util.Optional;
import rushlight.store.KeptPlans;

/**
 * The plan that is kept of a prospect, as it was when it was kept.
 *
 * @param prospect id of the prospect
 * @param version which version this is, from 1; 0 where none was ever kept
 * @param etag of the newest version, to be named when it is changed
 * @param when when it was kept
 * @param by who kept it; may be empty
 * @param note why; may be empty
 * @param takenBack whether this version says that there is none any more
 * @param filmChanged whether the film has changed since
 * @param request what it was asked for with; null where none was ever kept
 * @param sheet the plan; null where none was ever kept
 * @param versions every version, the newest first
 */
public record KeptPlanAnswer(
        String prospect,
        int version,
        String etag,
        Optional<String> when,
        String by,
        String note,
        boolean takenBack,
        boolean filmChanged,
        @JsonRawValue String request,
        @JsonRawValue String sheet,
        List<Version> versions) {
    /** A version in the list. */
    public record Version(int version, String when, String by, String note, boolean takenBack) {}

    /**
     * One version.
     *
     * @param history every version, the newest first
     * @param one the one that is looked at
     * @param film the revision of the film now
     */
    public static KeptPlanAnswer of(
            String prospect, List<KeptPlans.Kept> history, Optional<KeptPlans.Kept> one, long film) {
        return new KeptPlanAnswer(
                prospect,
                one.map(KeptPlans.Kept::version).orElse(0),
                etag(history.isEmpty() ? 0 : history.get(0).version()),
                one.map(kept -> kept.when().toString()),
                one.map(KeptPlans.Kept::by).orElse(""),
                one.map(KeptPlans.Kept::note).orElse(""),
                one.map(KeptPlans.Kept::takenBack).orElse(false),
                one.map(kept -> kept.film() != film).orElse(false),
                one.map(KeptPlans.Kept::request).orElse("null"),
                one.map(KeptPlans.Kept::sheet).orElse("null"),
                history.stream()
                        .map(kept -> new Version(
                                kept.version(), kept.when().toString(), kept.by(), kept.note(), kept.takenBack()))
                        .toList());
    }

    /** The entity tag of a version. */
    public static String etag(int version) {
        return "\"plan-" + version + "\"";
    }
}
