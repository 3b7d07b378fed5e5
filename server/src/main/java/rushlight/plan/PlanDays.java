package rushlight.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.knowledge.Drill;
import rushlight.knowledge.PlanPreset;
import rushlight.knowledge.Training;

/** The sessions of a block: the days of a preset, as the request and the rules leave them. */
final class PlanDays {
    /**
     * One session.
     *
     * @param day its day of the week
     * @param date its date, where a start was told
     * @param slot what it has room for
     * @param because why the day is so
     */
    record Day(DayOfWeek day, Optional<LocalDate> date, Slot slot, String because) {}

    private final Training training;
    private final PlanRequest request;
    private final PlanPreset preset;
    private final RulesInForce rules;
    private final int contactRank;

    PlanDays(Training training, PlanRequest request, PlanPreset preset, RulesInForce rules, int contactRank) {
        this.training = training;
        this.request = request;
        this.preset = preset;
        this.rules = rules;
        this.contactRank = contactRank;
    }

    /** How many weeks the block has. */
    static int weeks(PlanRequest request, PlanPreset preset) {
        return request.time().weeks().orElse(preset.weeks());
    }

    /** What about time and place cannot be granted, in words. */
    List<String> refused() {
        List<String> refused = new ArrayList<>();
        int weeks = weeks(request, preset);
        if (weeks < 1 || weeks > PlanRequest.Time.MOST_WEEKS) {
            refused.add("A block has 1 to " + PlanRequest.Time.MOST_WEEKS + " weeks, but this is " + weeks + ".");
        }
        int days = preset.days().size();
        int sessions = request.time().sessions().orElse(days);
        if (sessions < 1 || sessions > days) {
            refused.add("\"" + preset.label() + "\" has " + days + " practice days a week, so sessions are 1 to " + days
                    + ", but this is " + sessions + ". More days stand in a preset of your own.");
        }
        int minutes = request.time().minutes().orElse(1);
        int most = rules.number("minutes-a-practice", rules.number("minutes-a-day", 180));
        if (minutes < 1 || minutes > most) {
            refused.add("A session has 1 to " + most + " minutes, but this is " + minutes + ".");
        }
        request.time()
                .start()
                .map(LocalDate::getYear)
                .filter(year -> year < 1900 || year > 2200)
                .ifPresent(year -> {
                    refused.add("The first day lies in the year " + year + "; is that meant?");
                });
        int last = weeks * sessions;
        request.wants().fixed().stream()
                .filter(wish -> !PlanTask.isInside(wish, last))
                .findFirst()
                .ifPresent(wish -> refused.add("A drill was given a session by hand that is not among the " + last
                        + " of these weeks: take that back, or plan more weeks."));
        if (request.there().people().orElse(1) < 1) {
            refused.add("One man is there at least: himself.");
        }
        Set<String> known = equipment();
        request.there().equipment().orElse(Set.of()).stream()
                .filter(thing -> !known.contains(thing) && !known.contains("equipment-" + thing))
                .sorted()
                .forEach(thing -> refused.add("The book knows no equipment \"" + thing + "\". It knows: "
                        + known.stream()
                                .sorted()
                                .map(s -> s.replace("equipment-", ""))
                                .collect(Collectors.joining(", "))
                        + "."));
        return refused;
    }

    List<Day> days() {
        List<PlanPreset.Day> week = chosen();
        int approved = rules.approvedRank(contactRank);
        List<Day> days = new ArrayList<>();
        for (int number = 1; number <= weeks(request, preset); number++) {
            int contactDays = 0;
            for (PlanPreset.Day day : week) {
                int highest = Math.min(day.highest().rank(), approved);
                highest = Math.min(highest, rules.campRank(days.size()).orElse(highest));
                boolean contact = highest >= contactRank || day.teamContactMinutes() > 0;
                if (contact && contactDays >= rules.number(RulesInForce.CONTACT_DAYS, 7)) {
                    highest = Math.min(highest, contactRank - 1);
                } else {
                    contactDays += contact ? 1 : 0;
                }
                days.add(day(number, day, highest));
            }
        }
        return days;
    }

    private Day day(int week, PlanPreset.Day day, int highest) {
        int offset = (week - 1) * 7 + offset(day.weekday());
        Optional<LocalDate> date = request.time().start().map(start -> start.plusDays(offset));
        int minutes = request.time().minutes().orElse(day.minutes());
        Slot slot = new Slot(
                "week " + week + " " + name(day.weekday()),
                week,
                offset,
                (int) Math.floor(minutes * (1 - rules.cut(week)) + 1e-9),
                highest,
                request.there().people().orElse(day.people()),
                without(day),
                day.teamContactMinutes());
        return new Day(day.weekday(), date, slot, day.because());
    }

    /** The days of a week, those with the most time where not all are wanted, in the order of the week. */
    private List<PlanPreset.Day> chosen() {
        return preset.days().stream()
                .sorted(Comparator.comparingInt(PlanPreset.Day::minutes)
                        .reversed()
                        .thenComparing(PlanPreset.Day::weekday))
                .limit(request.time().sessions().orElse(preset.days().size()))
                .sorted(Comparator.comparingInt(day -> offset(day.weekday())))
                .toList();
    }

    private int offset(DayOfWeek day) {
        DayOfWeek first = request.time().start().map(LocalDate::getDayOfWeek).orElse(DayOfWeek.MONDAY);
        return Math.floorMod(day.getValue() - first.getValue(), 7);
    }

    private Set<String> without(PlanPreset.Day day) {
        Set<String> without = new HashSet<>(day.without());
        request.there().equipment().ifPresent(there -> {
            without.clear();
            equipment().stream()
                    .filter(thing -> !there.contains(thing) && !there.contains(thing.replace("equipment-", "")))
                    .forEach(without::add);
        });
        return without;
    }

    private Set<String> equipment() {
        return training.drills().stream()
                .flatMap(drill -> drill.equipment().stream())
                .map(Drill.Equipment::slug)
                .collect(Collectors.toSet());
    }

    static String name(DayOfWeek day) {
        return day.name().charAt(0) + day.name().substring(1).toLowerCase(Locale.ROOT);
    }
}
