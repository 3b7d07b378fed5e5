package rushlight.web;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.knowledge.Drill;
import rushlight.knowledge.Limit;
import rushlight.knowledge.LimitProfile;
import rushlight.knowledge.PlanPreset;
import rushlight.knowledge.Training;
import rushlight.plan.PlanRequest;

/**
 * What a plan can be asked for with.
 *
 * @param presets weeks to start from
 * @param profiles rules that say how much contact there may be
 * @param levels contact that can be approved, the lightest first
 * @param equipment what drills may need
 * @param limits numbers that can be made stricter
 * @param skills what can be worked on
 * @param mostWeeks the longest block
 */
public record PlanChoices(
        List<Preset> presets,
        List<Profile> profiles,
        List<Level> levels,
        List<Thing> equipment,
        List<Kind> limits,
        List<Thing> skills,
        int mostWeeks) {
    private static final String CONTACT = "contact-";
    private static final String ANYBODY = "any";

    /** Weeks to start from. */
    public record Preset(String preset, String label, String season, int weeks, String note, List<Day> days) {}

    /** A practice day of every week. */
    public record Day(String day, int minutes, String highest, int people, int teamContactMinutes, String because) {}

    /** Rules for one level of play; {@code checked} is when the book's numbers were last held against those in force. */
    public record Profile(
            String profile, String label, String playingLevel, String standing, Optional<String> checked) {}

    /** A contact level. */
    public record Level(String level, String label, boolean fullContact) {}

    /** Something with a name. */
    public record Thing(String slug, String label) {}

    /** A kind of limit; {@code bound} is {@code most} or {@code least}. */
    public record Kind(String kind, String what, String bound, String unit, BigDecimal house) {}

    /** By this book. */
    public static PlanChoices of(Training training) {
        return new PlanChoices(
                training.presets().stream().map(PlanChoices::preset).toList(),
                training.profiles().stream()
                        .filter(PlanChoices::isOfPlay)
                        .map(p -> new Profile(
                                p.slug(),
                                p.label(),
                                p.playingLevel(),
                                p.standing(),
                                p.checkedOn().map(Object::toString)))
                        .toList(),
                training.levels().stream()
                        .filter(level -> level.planned())
                        .map(level -> new Level(level.slug(), level.label(), level.fullContact()))
                        .toList(),
                training.drills().stream()
                        .flatMap(drill -> drill.equipment().stream())
                        .distinct()
                        .sorted(Comparator.comparing(Drill.Equipment::label))
                        .map(one -> new Thing(one.slug(), one.label()))
                        .toList(),
                kinds(training),
                training.skills().stream()
                        .map(one -> new Thing(one.slug(), one.label()))
                        .toList(),
                PlanRequest.Time.MOST_WEEKS);
    }

    private static boolean isOfPlay(LimitProfile profile) {
        return !profile.playingLevel().equals(ANYBODY)
                && profile.limits().stream().anyMatch(limit -> limit.kind().startsWith(CONTACT));
    }

    private static Preset preset(PlanPreset one) {
        return new Preset(
                one.slug(),
                one.label(),
                one.seasonPart(),
                one.weeks(),
                one.note(),
                one.days().stream()
                        .map(day -> new Day(
                                PlanWeek.name(day.weekday()),
                                day.minutes(),
                                day.highest().label(),
                                day.people(),
                                day.teamContactMinutes(),
                                day.because()))
                        .toList());
    }

    /** Every kind that always holds for everybody, so that a number of one's own has something to be stricter than. */
    private static List<Kind> kinds(Training training) {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        training.profiles().stream()
                .filter(profile -> profile.playingLevel().equals(ANYBODY))
                .flatMap(profile -> profile.limits().stream())
                .filter(limit -> limit.range().isEmpty() && limit.level().isEmpty())
                .forEach(limit -> kinds.putIfAbsent(
                        limit.kind(),
                        new Kind(
                                limit.kind(),
                                limit.what(),
                                limit.bound() == Limit.Bound.AT_MOST ? "most" : "least",
                                limit.unit(),
                                limit.amount())));
        return List.copyOf(kinds.values());
    }
}
