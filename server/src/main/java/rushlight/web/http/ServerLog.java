package rushlight.web.http;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.web.Json;

/**
 * What a running server tells of its work, one line a request. No line names a person: routes stand as they are
 * described, without the ids of an address, and what broke is told by its kind and place, without its message.
 */
public final class ServerLog {
    private static final Logger LOG = LoggerFactory.getLogger(ServerLog.class);
    private static final String NONE = "-";

    /** How a line is written. */
    public enum Form {
        JSON,
        TEXT
    }

    /**
     * One request that was answered.
     *
     * @param method how it was asked
     * @param route the route as it is described, or what it was instead
     * @param status HTTP status
     * @param milliseconds from its first byte to the last of the answer
     * @param bytes length of what was answered
     * @param id name of the request, as the answer bears it; empty where it came to no route
     */
    record Answered(String method, String route, int status, double milliseconds, long bytes, String id) {}

    private final Optional<Form> form;
    private final Consumer<String> out;

    private ServerLog(Optional<Form> form, Consumer<String> out) {
        this.form = form;
        this.out = out;
    }

    /** One that tells only what broke, in the program's own log. */
    public static ServerLog quiet() {
        return new ServerLog(Optional.empty(), line -> {});
    }

    /** One that writes a line for everything to {@code out}, which may be called by several threads. */
    public static ServerLog of(Form form, Consumer<String> out) {
        return new ServerLog(Optional.of(form), out);
    }

    /** Tells of the server itself: that it has started, say. */
    public void say(String event) {
        line(event, Map.of());
    }

    void answered(Answered request) {
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("method", request.method());
        said.put("route", request.route());
        said.put("status", request.status());
        said.put("milliseconds", Math.round(request.milliseconds() * 10) / 10.0);
        said.put("bytes", request.bytes());
        said.put("request", request.id().isEmpty() ? NONE : request.id());
        line("request", said);
    }

    /** Something broke: where a log is kept, its kinds and places stand there, else the whole in the program's log. */
    void broke(String what, String id, Throwable why) {
        if (form.isEmpty()) {
            LOG.error("{} broke (request {})", what, id, why);
            return;
        }
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("what", what);
        said.put("request", id);
        said.put("why", chain(why));
        line("broke", said);
        LOG.debug("{} broke (request {})", what, id, why);
    }

    private void line(String event, Map<String, Object> said) {
        form.ifPresent(how -> {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("time", Instant.now().truncatedTo(ChronoUnit.MILLIS).toString());
            all.put("event", event);
            all.putAll(said);
            out.accept(how == Form.JSON ? Json.compact(all) : text(all));
        });
    }

    private static String text(Map<String, Object> said) {
        return said.entrySet().stream()
                .map(e -> e.getKey().equals("time") || e.getKey().equals("event")
                        ? String.valueOf(e.getValue())
                        : String.format(Locale.ROOT, "%s=%s", e.getKey(), e.getValue()))
                .collect(Collectors.joining(" "));
    }

    /** Kinds and places, the outermost first; messages may name people. */
    private static String chain(Throwable why) {
        StringBuilder said = new StringBuilder();
        for (Throwable at = why; at != null && said.length() < 4_000; at = at.getCause()) {
            said.append(said.isEmpty() ? "" : " because of ")
                    .append(at.getClass().getName());
            for (StackTraceElement place : at.getStackTrace()) {
                if (place.getClassName().startsWith("rushlight.")) {
                    said.append(" at ").append(place.getClassName()).append('.').append(place.getMethodName());
                    said.append(':').append(place.getLineNumber());
                }
            }
        }
        return said.toString();
    }
}
