package rushlight.web.http;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Tags;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmHeapPressureMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import rushlight.archive.Archive;

/** What can be measured of a running server, as Prometheus reads it. Nothing in it names a person. */
final class Meters implements AutoCloseable {
    /** The media type of the text. */
    static final String TEXT = "text/plain; version=0.0.4; charset=utf-8";

    private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST", "PUT", "DELETE", "OPTIONS");
    private static final Duration[] REQUESTS = millis(5, 10, 25, 50, 100, 150, 250, 500, 1_000, 2_500, 5_000, 10_000);
    private static final Duration[] IMPORTS = millis(100, 500, 1_000, 5_000, 15_000, 60_000, 300_000);

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final Map<Archive, String> teams = new ConcurrentHashMap<>();
    private final JvmGcMetrics collector = new JvmGcMetrics();
    private final JvmHeapPressureMetrics pressure = new JvmHeapPressureMetrics();

    Meters() {
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        new UptimeMetrics().bindTo(registry);
        collector.bindTo(registry);
        pressure.bindTo(registry);
    }

    /**
     * Measures a data folder, each time somebody asks.
     *
     * @param team whose it is; blank where there is only one
     */
    void film(Archive archive, String team) {
        teams.put(archive, team);
        Tags tags = team.isBlank() ? Tags.empty() : Tags.of("team", team);
        gauge(
                "rushlight.film.revision",
                "Number of the last change of the film",
                tags,
                archive,
                a -> a.store().revision());
        gauge("rushlight.film.reps", "Reps that count", tags, archive, a -> a.watch(film -> film.size()));
        gauge(
                "rushlight.film.prospects",
                "Prospects with film",
                tags,
                archive,
                a -> a.watch(film -> film.prospects().size()));
        gauge("rushlight.index.lag", "Changes of the film that the index lacks", tags, archive, Archive::lag);
    }

    private void gauge(String name, String what, Tags tags, Archive archive, ToDoubleFunction<Archive> value) {
        Gauge.builder(name, archive, value).description(what).tags(tags).register(registry);
    }

    /** Counts a request that was answered. */
    void answered(ServerLog.Answered request) {
        Timer.builder("rushlight.requests")
                .description("Requests from the first byte to the last of the answer")
                .serviceLevelObjectives(REQUESTS)
                .tag("method", METHODS.contains(request.method()) ? request.method() : "other")
                .tag("route", request.route())
                .tag("status", Integer.toString(request.status()))
                .register(registry)
                .record(Duration.ofNanos((long) (request.milliseconds() * 1e6)));
    }

    /** Does an import and measures how long it took, and how it ended. */
    <T> T importing(Supplier<T> work) {
        Timer.Sample sample = Timer.start(registry);
        String outcome = "broke";
        try {
            T done = work.get();
            outcome = "stored";
            return done;
        } catch (ProblemException e) {
            outcome = "refused";
            throw e;
        } finally {
            sample.stop(Timer.builder("rushlight.imports")
                    .description("Imports, from the file to the index")
                    .serviceLevelObjectives(IMPORTS)
                    .tag("outcome", outcome)
                    .register(registry));
        }
    }

    /** Everything but the film of other teams, in the text format of Prometheus. */
    String text(Archive asking) {
        String own = "team=\"" + teams.getOrDefault(asking, "") + "\"";
        return registry.scrape()
                .lines()
                .filter(line -> !line.contains("{team=\"") || line.contains(own))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    @Override
    public void close() {
        collector.close();
        pressure.close();
        registry.close();
    }

    private static Duration[] millis(long... some) {
        return Arrays.stream(some).mapToObj(Duration::ofMillis).toArray(Duration[]::new);
    }
}
