package rushlight.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rushlight.archive.ReportSheets;
import rushlight.knowledge.Taxonomy;
import rushlight.report.prospect.Material;
import rushlight.report.prospect.Part;
import rushlight.report.prospect.Suggested;
import rushlight.report.prospect.Written;

/**
 * What an evaluator put into a report, and what he may put in.
 *
 * @param prospect id of the prospect
 * @param name of the prospect
 * @param summary his words; may be empty
 * @param author who wrote them; may be empty
 * @param etag the version, to be named when it is changed
 * @param longest how many characters a summary may have
 * @param parts every part that can be left out or moved, those wanted first and in their order
 * @param suggested sentences that the counts have earned
 */
public record ReportAnswer(
        String prospect,
        String name,
        String summary,
        String author,
        String etag,
        int longest,
        List<PartOf> parts,
        List<String> suggested) {
    /**
     * One part.
     *
     * @param part its word
     * @param title its heading
     * @param wanted whether it is in the report
     */
    public record PartOf(String part, String title, boolean wanted) {}

    /** The sheet of a prospect, beside what his film suggests. */
    public static ReportAnswer of(Material material, ReportSheets.Sheet sheet, Taxonomy taxonomy) {
        List<Part> wanted = ReportMaterial.written(sheet).parts();
        List<Part> others = new ArrayList<>(Part.all());
        others.removeAll(wanted);
        return new ReportAnswer(
                material.assessment().prospect().id(),
                material.assessment().prospect().name(),
                sheet.summary(),
                sheet.author(),
                etag(sheet),
                Written.LONGEST,
                Stream.concat(
                                wanted.stream().map(part -> new PartOf(part.slug(), part.title(), true)),
                                others.stream().map(part -> new PartOf(part.slug(), part.title(), false)))
                        .toList(),
                Suggested.sentences(material.assessment(), taxonomy));
    }

    /** The version of a sheet. */
    public static String etag(ReportSheets.Sheet sheet) {
        return "\"sheet-" + sheet.revision() + "\"";
    }
}
