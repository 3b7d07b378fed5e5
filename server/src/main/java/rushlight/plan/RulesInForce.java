package rushlight.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rushlight.knowledge.ContactLevel;
import rushlight.knowledge.Limit;
import rushlight.knowledge.LimitProfile;
import rushlight.knowledge.Training;

/**
 * The numbers that hold for a plan: the strictest of all profiles that apply, and stricter ones of the coach. A looser number
 * is refused and the one it would loosen is named with its source. What is not known allows no full contact.
 */
final class RulesInForce {
    static final String CONTACT_A_WEEK = "contact-minutes-a-week";
    static final String OWN_CONTACT_A_WEEK = "plan-contact-minutes-a-week";
    static final String CONTACT_A_DAY = "contact-minutes-a-day";
    static final String CONTACT_A_PRACTICE = "contact-minutes-a-practice";
    static final String CONTACT_DAYS = "contact-days-a-week";
    static final String HIGHEST = "highest-contact-level";
    private static final BigDecimal MOST = BigDecimal.valueOf(10_000);
    private static final int DIGITS = 4;
    private static final String HOUSE = "profile-house";
    private static final String UNKNOWN = "profile-unknown";
    private static final String YOUNG = "profile-young-athletes";
    private static final String CAMP = "profile-acclimatization";
    private static final String BREAK = "profile-re-entry";

    private final Training training;
    private final PlanRequest.Rules rules;
    private final String season;
    private final LimitProfile profile;
    private final List<LimitProfile> applied = new ArrayList<>();
    private final List<String> refused = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final Map<String, BigDecimal> stricter;
    private final Map<String, Plan.Held> used = new TreeMap<>();

    RulesInForce(Training training, PlanRequest.Rules rules, String season, Optional<LocalDate> start) {
        this.training = training;
        this.rules = rules;
        this.season = season;
        this.stricter = new HashMap<>(rules.stricter());
        rules.contact().ifPresent(minutes -> stricter.put(OWN_CONTACT_A_WEEK, BigDecimal.valueOf(minutes)));
        String named = rules.profile().orElse(UNKNOWN);
        Optional<LimitProfile> found = training.profile(named).or(() -> training.profile("profile-" + named));
        if (found.isEmpty()) {
            refused.add("There are no rules called \"" + named + "\". There are: "
                    + training.profiles().stream().map(LimitProfile::slug).collect(Collectors.joining(", ")) + ".");
        }
        this.profile = found.or(() -> training.profile(UNKNOWN)).orElseThrow();
        applied.add(profile);
        training.profile(HOUSE).ifPresent(applied::add);
        if (profile.playingLevel().equals("high school")
                || profile.playingLevel().equals("youth")) {
            training.profile(YOUNG).ifPresent(applied::add);
        }
        stricter.forEach(this::refuseLooser);
        noContact(start).ifPresent(why -> {
            notes.add("No full contact in this plan: " + why);
            refused.addAll(
                    rules.contact().orElse(0) > 0 ? List.of("Full contact was asked for, but " + why) : List.of());
        });
    }

    /** What cannot be granted, in words; empty where everything can. */
    List<String> refused() {
        return refused;
    }

    /** What a coach should know of the rules. */
    List<String> notes() {
        return notes;
    }

    /** The profile that was asked for. */
    LimitProfile profile() {
        return profile;
    }

    /** The numbers that were used, in order of their kinds. */
    List<Plan.Held> used() {
        return List.copyOf(used.values());
    }

    /** The number of a kind, rounded to the safe side; {@code open} where no rule says one. */
    int number(String kind, int open) {
        Optional<Plan.Held> held = held(kind);
        held.ifPresent(h -> used.put(kind, h));
        return held.map(h -> (int) (h.atMost() ? Math.floor(h.amount()) : Math.ceil(h.amount())))
                .orElse(open);
    }

    /** The minutes of full contact that the plan may use in a week by itself. */
    int ownContact(Optional<LocalDate> start) {
        int number = number(OWN_CONTACT_A_WEEK, 0);
        return noContact(start).isPresent() ? 0 : number;
    }

    /** The highest rank that the rules and those who must approve allow. */
    int approvedRank(int contactRank) {
        int approved = rules.approved()
                .flatMap(training::level)
                .map(ContactLevel::rank)
                .orElse(contactRank - 2);
        return Math.min(approved, number(HIGHEST, Integer.MAX_VALUE));
    }

    /** The highest rank on a day of heat acclimatization; none where he is past it. */
    Optional<Integer> campRank(int session) {
        if (rules.campDay().isEmpty()) {
            return Optional.empty();
        }
        return inRange(CAMP, HIGHEST, rules.campDay().getAsInt() + session).map(BigDecimal::intValue);
    }

    /** The part of the sets that falls away in a week after a break: 0 to 1. */
    double cut(int week) {
        return rules.afterBreak()
                ? inRange(BREAK, "cut-of-the-sets", week)
                        .map(p -> p.doubleValue() / 100)
                        .orElse(0.0)
                : 0;
    }

    private Optional<BigDecimal> inRange(String slug, String kind, int at) {
        return training.profile(slug).stream()
                .flatMap(p -> p.limits().stream())
                .filter(limit -> limit.kind().equals(kind))
                .filter(limit -> limit.range()
                        .filter(r -> r.holds(BigDecimal.valueOf(at)))
                        .isPresent())
                .map(Limit::amount)
                .min(Comparator.naturalOrder());
    }

    /** Why the plan has no full contact; empty where the rules and the approvals allow some. */
    Optional<String> noContact(Optional<LocalDate> start) {
        int lightest = training.levels().stream()
                .filter(ContactLevel::fullContact)
                .mapToInt(ContactLevel::rank)
                .min()
                .orElse(0);
        if (rules.profile().isEmpty()) {
            return Optional.of("nobody has said whose rules hold.");
        }
        Optional<LocalDate> checked = rules.checked().or(profile::checkedOn);
        int days = training.profile(HOUSE).stream()
                .flatMap(p -> p.limits("days-since-checked", season).stream())
                .mapToInt(l -> l.amount().intValue())
                .min()
                .orElse(0);
        if (checked.isEmpty()) {
            return Optional.of(
                    "nobody has checked the rules \"" + profile.label() + "\" against those in force this season.");
        }
        if (start.isPresent() && ChronoUnit.DAYS.between(checked.get(), start.get()) > days) {
            return Optional.of("the rules \"" + profile.label() + "\" were last checked on " + checked.get()
                    + ", more than " + days + " days before the start.");
        }
        return approvedRank(lightest) < lightest
                ? Optional.of("coach and licensed medical staff have not approved it.")
                : Optional.empty();
    }

    private Optional<Plan.Held> held(String kind) {
        Optional<Plan.Held> house = ofBook(kind);
        BigDecimal own = stricter.get(kind);
        if (own == null) {
            return house;
        }
        return house.map(h -> new Plan.Held(
                kind,
                h.what(),
                h.atMost(),
                own.doubleValue(),
                h.unit(),
                "your own number",
                "stricter than " + h.text()));
    }

    private Optional<Plan.Held> ofBook(String kind) {
        return applied.stream()
                .flatMap(p -> p.limits(kind, season).stream()
                        .filter(limit -> limit.range().isEmpty())
                        .map(limit -> of(p, limit)))
                .min(Comparator.comparingDouble(h -> h.atMost() ? h.amount() : -h.amount()));
    }

    private static Plan.Held of(LimitProfile profile, Limit limit) {
        return new Plan.Held(
                limit.kind(),
                limit.what(),
                limit.bound() == Limit.Bound.AT_MOST,
                limit.amount().doubleValue(),
                limit.unit(),
                profile.label(),
                limit.sources().stream()
                        .map(s -> s.printed() ? s.text() : "common practice")
                        .collect(Collectors.joining("; ")));
    }

    private void refuseLooser(String kind, BigDecimal own) {
        if (own.compareTo(MOST) > 0 || own.scale() > DIGITS) {
            refused.add("The number for \"" + kind + "\" is from 0 to " + MOST + ", with " + DIGITS
                    + " digits after the point at most.");
            return;
        }
        Optional<Plan.Held> book = ofBook(kind);
        if (book.isEmpty()) {
            refused.add("No rule that applies here has a number for \"" + kind + "\", so there is nothing to tighten.");
            return;
        }
        Plan.Held held = book.get();
        double number = own.doubleValue();
        if (number < 0 || (held.atMost() ? number > held.amount() : number < held.amount())) {
            refused.add(held.what() + ": " + own.toPlainString() + " " + held.unit() + " would be looser than "
                    + held.text()
                    + ". A number may be made stricter here, never looser; looser rules stand in a profile"
                    + " of your own, with their source.");
        }
    }
}
