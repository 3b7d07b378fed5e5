package rushlight.web;

import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rushlight.archive.Archive;
import rushlight.archive.LogSummary;
import rushlight.archive.Opinions;
import rushlight.archive.Projections;
import rushlight.archive.ReportSheets;
import rushlight.report.prospect.Material;
import rushlight.report.prospect.Part;
import rushlight.report.prospect.Written;

/** Brings together what a report is made from. */
public final class ReportMaterial {
    private ReportMaterial() {}

    /** All that an open folder holds of one prospect, without a plan; empty where there is no film of this id. */
    public static Optional<Material> of(Archive archive, String prospect) {
        Written written = written(ReportSheets.of(archive).of(prospect));
        return archive.watch(footage -> CompareAnswer.Side.of(archive.book(), footage, prospect)
                .map(side -> new Material(
                        side.assessment(),
                        Opinions.of(archive).beside(side.assessment()),
                        side.profile(),
                        readers(archive, prospect),
                        foreseen(archive, prospect),
                        Optional.empty(),
                        written)));
    }

    /** The same with the plan of these, where its report has a part for one. */
    public static Material with(Material material, ReportPlans plans) {
        return material.written().parts().contains(Part.PLAN)
                ? material.with(plans.of(material.assessment()))
                : material;
    }

    private static List<Material.Foreseen> foreseen(Archive archive, String prospect) {
        return Projections.of(archive).of(prospect).stream()
                .map(kept -> new Material.Foreseen(
                        kept.projection(), kept.when().atZone(ZoneOffset.UTC).toLocalDate()))
                .toList();
    }

    /** What an evaluator put in, as a report takes it; a sheet that names no parts wants all of them. */
    public static Written written(ReportSheets.Sheet sheet) {
        List<Part> parts = sheet.parts().stream()
                .flatMap(slug -> Part.of(slug).stream())
                .distinct()
                .toList();
        return new Written(
                sheet.summary(),
                sheet.author(),
                sheet.when().map(when -> when.atZone(ZoneOffset.UTC).toLocalDate()),
                parts.isEmpty() ? Part.all() : parts);
    }

    private static List<Material.Reader> readers(Archive archive, String prospect) {
        return LogSummary.of(archive.store(), prospect).stream()
                .map(log -> new Material.Reader(
                        log.evaluator(), log.game().name(), log.game().date(), log.readings()))
                .sorted(Comparator.comparing(Material.Reader::evaluator)
                        .thenComparing(
                                reader -> reader.day().map(Object::toString).orElse(""))
                        .thenComparing(Material.Reader::game))
                .toList();
    }
}
