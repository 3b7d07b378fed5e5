package rushlight.web;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import rushlight.knowledge.ContactLevel;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.Training;
import rushlight.report.practice.Practice;

/** Turns a plan, one that was kept long ago too, into weeks ready for a calendar and for the field sheet. */
public final class Practices {
    private static final String DRILL = "drill";

    private final Taxonomy taxonomy;
    private final Training training;

    /** By the names of this book. */
    public Practices(Taxonomy taxonomy, Training training) {
        this.taxonomy = taxonomy;
        this.training = training;
    }

    /**
     * The weeks of a plan.
     *
     * @throws IllegalArgumentException where there is no plan in it
     */
    public Practice of(PlanSheet sheet) {
        PlanSheet.Frame frame = sheet.frame().orElseThrow(() -> new IllegalArgumentException("There is no plan."));
        Map<String, String> cautions = new HashMap<>();
        sheet.cautions().stream()
                .filter(one -> one.part().equals(DRILL))
                .forEach(one -> cautions.put(one.code(), one.text()));
        Map<String, String> skills = new HashMap<>();
        sheet.workOn().forEach(target -> skills.put(target.skill(), target.label()));
        int weeks = sheet.weeks().size();
        return new Practice(
                sheet.id(),
                sheet.prospect(),
                (weeks == 1 ? "One week" : weeks + " weeks") + ", from \"" + frame.label() + "\". Works on: "
                        + String.join(
                                ", ",
                                sheet.workOn().stream()
                                        .map(PlanSheet.Target::label)
                                        .toList())
                        + ".",
                sheet.decides(),
                sheet.cautions().stream()
                        .filter(one -> !one.part().equals(DRILL) && !one.text().equals(sheet.decides()))
                        .map(PlanSheet.Caution::text)
                        .toList(),
                sheet.weeks().stream().map(week -> week(week, cautions, skills)).toList(),
                sheet.retest().stream()
                        .map(one -> sentence(taxonomy.shown(one.finding())) + ": " + one.sentence())
                        .toList());
    }

    private Practice.Week week(PlanWeek week, Map<String, String> cautions, Map<String, String> skills) {
        return new Practice.Week(
                week.week(),
                week.sessions().stream()
                        .map(session -> new Practice.Session(
                                session.place() + 1,
                                session.day(),
                                session.date().map(LocalDate::parse),
                                session.blocks().stream()
                                        .map(block -> block(block, cautions, skills))
                                        .toList()))
                        .toList());
    }

    private Practice.Block block(PlanWeek.Block block, Map<String, String> cautions, Map<String, String> skills) {
        return new Practice.Block(
                block.check()
                        ? sentence(block.label()) + ", looked at in " + taxonomy.label(block.drill())
                        : block.label(),
                skills.getOrDefault(block.skill(), taxonomy.label(block.skill())),
                training.level(block.level())
                        .map(ContactLevel::label)
                        .orElse(block.level())
                        .toLowerCase(Locale.ROOT),
                block.minutes(),
                block.contactMinutes(),
                block.reps(),
                block.success(),
                block.points(),
                block.cautions().stream()
                        .map(code -> cautions.getOrDefault(code, taxonomy.label(code)))
                        .toList());
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
