package rushlight.web;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import rushlight.plan.PlanRequest;
import rushlight.plan.Wish;

/**
 * What a plan is asked for with, as programs send it; what is left out is left open. See {@link PlanRequest}.
 *
 * @param limits own, stricter numbers by the kind of limit
 * @param fixed what was decided by hand
 */
public record PlanIn(
        @Nullable String preset,
        @Nullable Integer weeks,
        @Nullable Integer sessions,
        @Nullable Integer minutes,
        @Nullable String start,
        @Nullable Integer people,
        @Nullable List<String> equipment,
        @Nullable String profile,
        @Nullable String checked,
        @Nullable String approved,
        @Nullable Integer contact,
        @Nullable Integer campDay,
        @Nullable Boolean afterBreak,
        @Nullable Map<String, BigDecimal> limits,
        @Nullable List<String> workOn,
        @Nullable List<String> leaveOut,
        @Nullable List<String> has,
        @Nullable List<Fixed> fixed) {
    /** More names in one list are no wish of a person. */
    private static final int MOST = 100;

    private static final int LONGEST = 200;

    /**
     * One thing that was decided by hand.
     *
     * @param wish {@code pin}, {@code drop}, {@code leave} or {@code before}
     * @param exercise slug of a drill or a check
     * @param session place of the session in the plan, from 0, for {@code pin} and {@code drop}
     * @param later slug of the one that waits, for {@code before}
     */
    public record Fixed(
            @Nullable String wish,
            @Nullable String exercise,
            @Nullable Integer session,
            @Nullable String later) {}

    /**
     * The request.
     *
     * @throws IllegalArgumentException where it cannot be meant so; the message says why, for people
     */
    public PlanRequest request() {
        return new PlanRequest(
                new PlanRequest.Time(
                        text("preset", preset), number(weeks), number(sessions), number(minutes), date("start", start)),
                new PlanRequest.There(
                        number(people),
                        equipment == null
                                ? Optional.empty()
                                : Optional.of(new LinkedHashSet<>(names("equipment", equipment)))),
                new PlanRequest.Rules(
                        text("profile", profile),
                        date("checked", checked),
                        text("approved", approved),
                        number(contact),
                        number(campDay),
                        Boolean.TRUE.equals(afterBreak),
                        numbers()),
                new PlanRequest.Wants(
                        names("workOn", workOn), names("leaveOut", leaveOut), names("has", has), wishes()));
    }

    private Map<String, BigDecimal> numbers() {
        Map<String, BigDecimal> numbers = new LinkedHashMap<>();
        if (limits != null) {
            need(limits.size() <= MOST, "\"limits\" has more than " + MOST + " numbers.");
            limits.forEach((kind, number) -> {
                need(number != null, "The limit \"" + kind + "\" has no number.");
                numbers.put(kind, Objects.requireNonNull(number));
            });
        }
        return numbers;
    }

    private List<Wish> wishes() {
        List<Fixed> all = Objects.requireNonNullElse(fixed, List.of());
        need(all.size() <= MOST, "More than " + MOST + " things are decided by hand.");
        return all.stream().map(PlanIn::wish).toList();
    }

    private static Wish wish(@Nullable Fixed one) {
        if (one == null) {
            throw new IllegalArgumentException("What is decided by hand names a wish and an exercise.");
        }
        String exercise = name("exercise", one.exercise());
        return switch (name("wish", one.wish())) {
            case "pin" -> new Wish.Pin(session(one), exercise);
            case "drop" -> new Wish.Drop(session(one), exercise);
            case "leave" -> new Wish.Leave(exercise);
            case "before" -> new Wish.Before(exercise, name("later", one.later()));
            default -> throw new IllegalArgumentException("A wish is pin, drop, leave or before.");
        };
    }

    private static int session(Fixed one) {
        Integer session = one.session();
        if (session == null) {
            throw new IllegalArgumentException("Say in which session: its place in the plan, from 0.");
        }
        return session;
    }

    private static List<String> names(String field, @Nullable List<String> given) {
        List<String> names = Objects.requireNonNullElse(given, List.of());
        need(names.size() <= MOST, "\"" + field + "\" has more than " + MOST + " names.");
        return names.stream().map(one -> name(field, one)).distinct().toList();
    }

    private static String name(String field, @Nullable String given) {
        return text(field, given).orElseThrow(() -> new IllegalArgumentException("\"" + field + "\" lacks a name."));
    }

    private static Optional<String> text(String field, @Nullable String given) {
        String text = Objects.requireNonNullElse(given, "").strip();
        need(text.length() <= LONGEST, "\"" + field + "\" is longer than " + LONGEST + " characters.");
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private static Optional<LocalDate> date(String field, @Nullable String given) {
        return text(field, given).map(text -> {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeException e) {
                throw new IllegalArgumentException("\"" + field + "\" is a date such as 2026-08-03.", e);
            }
        });
    }

    private static OptionalInt number(@Nullable Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }

    private static void need(boolean right, String message) {
        if (!right) {
            throw new IllegalArgumentException(message);
        }
    }
}
