package rushlight.web.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rushlight.web.FaultAnswer;

/**
 * What went wrong, as RFC 9457 has it.
 *
 * @param type which kind of problem
 * @param title the kind in words
 * @param status HTTP status
 * @param detail what was wrong here, and what to do
 * @param faults what is wrong in a row or a file
 * @param reasons why something does not go with what is there
 * @param nearest what may have been meant
 * @param current the version that somebody else wrote meanwhile
 * @param yours the version that was sent
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
record Problem(
        String type,
        String title,
        int status,
        String detail,
        List<FaultAnswer> faults,
        List<String> reasons,
        List<String> nearest,
        @Nullable Object current,
        @Nullable Object yours) {
    static final String MEDIA_TYPE = "application/problem+json";
    private static final Map<Integer, String> TITLES = Map.ofEntries(
            Map.entry(400, "The request cannot be read"),
            Map.entry(401, "Sign in first"),
            Map.entry(403, "Not allowed"),
            Map.entry(404, "There is no such thing"),
            Map.entry(405, "Not in this way"),
            Map.entry(406, "Not in this form"),
            Map.entry(409, "It does not go with what is there"),
            Map.entry(412, "Somebody changed it meanwhile"),
            Map.entry(413, "Too long"),
            Map.entry(414, "The address is too long"),
            Map.entry(415, "Another media type is needed"),
            Map.entry(416, "There is no such part"),
            Map.entry(421, "Not this server"),
            Map.entry(422, "Something in it is wrong"),
            Map.entry(428, "Say which version you change"),
            Map.entry(429, "Too often"),
            Map.entry(431, "The headers are too long"),
            Map.entry(501, "Not in this way"),
            Map.entry(503, "It took too long"),
            Map.entry(505, "Another version of HTTP is needed"));

    static Problem of(int status, String detail) {
        String title = TITLES.getOrDefault(status, status < 500 ? "It cannot be done" : "Something broke");
        String kind = title.toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
        return new Problem("/problems/" + kind, title, status, detail, List.of(), List.of(), List.of(), null, null);
    }

    Problem withFaults(List<FaultAnswer> some) {
        return new Problem(type, title, status, detail, some, reasons, nearest, current, yours);
    }

    Problem withReasons(List<String> some) {
        return new Problem(type, title, status, detail, faults, some, nearest, current, yours);
    }

    Problem withNearest(List<String> some) {
        return new Problem(type, title, status, detail, faults, reasons, some, current, yours);
    }

    Problem withVersions(@Nullable Object theirs, Object sent) {
        return new Problem(type, title, status, detail, faults, reasons, nearest, theirs, sent);
    }

    ProblemException thrown() {
        return new ProblemException(this);
    }
}
