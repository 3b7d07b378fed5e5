package rushlight.report.prospect;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rushlight.handbook.Handbook;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.report.ProspectFigures;

/** Makes reports of prospects with the words of a book. Safe for many threads. */
public final class ProspectReports {
    /** What a report may fill. */
    public static final int PAGES = 2;

    /** How many pages the entries of a full report take, about; a first guess and no more. */
    private static final double ENTRIES = 1;

    /** Something of everything that a report has. */
    private static final String SAMPLE = """
            <!DOCTYPE html>
            <html xmlns="http://www.w3.org/1999/xhtml" lang="en"><head><title>A sample</title>
            <meta name="description" content="A sample." /><style>@page { size: 8in 11in; }
            p { font-family: "DejaVu Sans Condensed"; } .drawing { width: 80mm; }</style></head>
            <body><p>A line, <b>a strong one</b> and <a href="film.mp4#t=1">a place on film</a>.</p>
            <table><thead><tr><th>Head</th></tr></thead><tbody><tr><td>Cell</td></tr></tbody></table>
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 20"><title>A</title><desc>B</desc>
            <path d="M0 0C5 5 5 9 9 9" stroke="currentColor" stroke-opacity="0.2" /><text class="figure-halo" y="9">a</text></svg>
            </body></html>
            """;

    private static final Pattern PERCENT = Pattern.compile("(\\d) %");

    private final Taxonomy taxonomy;
    private final ProspectFigures figures;
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

    /** Reports by this book. */
    public ProspectReports(Ontology ontology, Taxonomy taxonomy, Handbook handbook) {
        this.taxonomy = taxonomy;
        this.figures = new ProspectFigures(ontology, taxonomy, handbook);
    }

    /** Loads what the press needs, fonts and libraries, before the words are there; worth a thread of its own. */
    public static void prepare() {
        try (PdfPress press = new PdfPress(SAMPLE)) {
            press.print();
        }
    }

    /**
     * A report with no more in it than two pages have room for.
     *
     * @param html well-formed XHTML that is read as HTML too
     * @param pdf the same as tagged PDF (ISO 14289-1) with its fonts in it
     */
    @SuppressWarnings("ArrayRecordComponent") // made to be written out, never to be compared
    public record Printed(String html, byte[] pdf) {}

    /** The report as a page. */
    public String html(Material material, Paper paper) {
        try (Fitted fitted = fitted(material, paper)) {
            return fitted.html();
        }
    }

    /** The report as a page and as PDF. */
    public Printed print(Material material, Paper paper) {
        try (Fitted fitted = fitted(material, paper)) {
            return new Printed(fitted.html(), fitted.press().print());
        }
    }

    /** A page and how it lies on paper. */
    private record Fitted(String html, PdfPress press) implements AutoCloseable {
        private static Fitted of(String html) {
            return new Fitted(html, new PdfPress(html));
        }

        private boolean fits() {
            return press.pages() <= PAGES;
        }

        private double length() {
            return Math.max(press.length(), fits() ? 0 : PAGES);
        }

        @Override
        public void close() {
            press.close();
        }
    }

    /**
     * With as many entries as fit. Everything is tried first; how far it is too long, and how far a shorter one falls short,
     * tells where to look next; every third time that is the middle.
     */
    private Fitted fitted(Material material, Paper paper) {
        Composer composer = new Composer(material, taxonomy, figures, paper);
        Fitted all = Fitted.of(page(composer.page(composer.most())));
        if (all.fits() || composer.most() == 0) {
            return all;
        }
        int tooMany = composer.most();
        double over = all.length() - PAGES;
        all.close();
        int fits = 0;
        double under = ENTRIES;
        int turns = 0;
        @Nullable Fitted best = null;
        while (tooMany - fits > 1) {
            double share = ++turns % 3 == 0 ? 0.5 : under / (under + over);
            int next = Math.max(fits + 1, Math.min(tooMany - 1, fits + (int) Math.round(share * (tooMany - fits))));
            Fitted tried = Fitted.of(page(composer.page(next)));
            if (tried.fits()) {
                fits = next;
                under = PAGES - tried.length();
                close(best);
                best = tried;
            } else {
                tooMany = next;
                over = tried.length() - PAGES;
                tried.close();
            }
        }
        return best == null ? Fitted.of(page(composer.page(0))) : best;
    }

    private static void close(@Nullable Fitted fitted) {
        if (fitted != null) {
            fitted.close();
        }
    }

    private String page(ReportPage page) {
        StringOutput out = new StringOutput();
        engine.render("report/prospect.jte", page, out);
        return PERCENT.matcher(out.toString()).replaceAll("$1\u00A0%");
    }
}
