package rushlight.cli;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rushlight.plan.PlanRequest;

/** What a plan is asked for with. */
final class PlanOptions {
    @Option(
            names = "--preset",
            paramLabel = "NAME",
            description = "weeks to start from: in-season (default), off-season")
    private Optional<String> preset = Optional.empty();

    @Option(names = "--weeks", paramLabel = "N", description = "weeks of the block (of the preset)")
    private @Nullable Integer weeks;

    @Option(names = "--sessions", paramLabel = "N", description = "sessions a week (all days of the preset)")
    private @Nullable Integer sessions;

    @Option(names = "--minutes", paramLabel = "N", description = "minutes of a session (those of the preset)")
    private @Nullable Integer minutes;

    @Option(names = "--start", paramLabel = "DATE", description = "the first day, such as 2026-08-03")
    private Optional<LocalDate> start = Optional.empty();

    @Option(names = "--people", paramLabel = "N", description = "men in a session, himself among them")
    private @Nullable Integer people;

    @Option(
            names = "--equipment",
            paramLabel = "NAME",
            split = ",",
            description = "what is there, such as sled,cones; else all")
    private List<String> equipment = List.of();

    @Option(names = "--profile", paramLabel = "NAME", description = "whose rules hold, such as high-school-2014")
    private Optional<String> profile = Optional.empty();

    @Option(names = "--checked", paramLabel = "DATE", description = "when somebody last checked those rules")
    private Optional<LocalDate> checked = Optional.empty();

    @Option(
            names = "--approved",
            paramLabel = "LEVEL",
            description = "highest contact that coach and medical staff approved: air, bag (default), control, thud")
    private Optional<String> approved = Optional.empty();

    @Option(names = "--contact", paramLabel = "N", description = "minutes of full contact a week for this plan")
    private @Nullable Integer contact;

    @Option(names = "--camp-day", paramLabel = "N", description = "day of heat acclimatization of the first session")
    private @Nullable Integer campDay;

    @Option(names = "--after-break", description = "he comes back after two weeks off or more: fewer sets at first")
    private boolean afterBreak;

    @Option(
            names = "--limit",
            paramLabel = "KIND=N",
            description = "a stricter number, such as contact-minutes-a-week=20")
    private Map<String, BigDecimal> limits = Map.of();

    @Option(
            names = "--work-on",
            paramLabel = "NAME",
            split = ",",
            description = "findings or skills that come first, in order")
    private List<String> workOn = List.of();

    @Option(names = "--leave-out", paramLabel = "NAME", split = ",", description = "findings or skills to leave out")
    private List<String> leaveOut = List.of();

    @Option(names = "--has", paramLabel = "SKILL", split = ",", description = "skills that staff has seen or screened")
    private List<String> has = List.of();

    /**
     * The request; empty where a name is nobody's.
     *
     * @param slugs names of findings and skills to their slugs
     */
    Optional<PlanRequest> request(Function<List<String>, Optional<List<String>>> slugs) {
        Optional<List<String>> work = slugs.apply(workOn);
        Optional<List<String>> out = slugs.apply(leaveOut);
        Optional<List<String>> there = slugs.apply(has);
        if (work.isEmpty() || out.isEmpty() || there.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PlanRequest(
                new PlanRequest.Time(preset, number(weeks), number(sessions), number(minutes), start),
                new PlanRequest.There(
                        number(people), equipment.isEmpty() ? Optional.empty() : Optional.of(Set.copyOf(equipment))),
                new PlanRequest.Rules(profile, checked, approved, number(contact), number(campDay), afterBreak, limits),
                new PlanRequest.Wants(work.get(), out.get(), there.get(), List.of())));
    }

    private static OptionalInt number(@Nullable Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }
}
