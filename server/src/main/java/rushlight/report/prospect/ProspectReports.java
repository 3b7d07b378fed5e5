package rushlight.report.prospect;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import rushlight.handbook.Handbook;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.report.ProspectFigures;

/** Makes reports of prospects with the words of a book. Safe for many threads. */
public final class ProspectReports {
    /** What a report may fill. */
    public static final int PAGES = 2;

    private final Taxonomy taxonomy;
    private final ProspectFigures figures;
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

    /** Reports by this book. */
    public ProspectReports(Ontology ontology, Taxonomy taxonomy, Handbook handbook) {
        this.taxonomy = taxonomy;
        this.figures = new ProspectFigures(ontology, taxonomy, handbook);
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

        @Override
        public void close() {
            press.close();
        }
    }

    /** With as many entries as fit: everything is tried first, then the half of what is in question. */
    private Fitted fitted(Material material, Paper paper) {
        Composer composer = new Composer(material, taxonomy, figures, paper);
        Fitted all = Fitted.of(page(composer.page(composer.most())));
        if (all.fits() || composer.most() == 0) {
            return all;
        }
        all.close();
        return most(composer);
    }

    /** The fullest report that fits, laid out once for each that is tried; the emptiest where none does. */
    private Fitted most(Composer composer) {
        Fitted best = Fitted.of(page(composer.page(0)));
        int fits = 0;
        int tooMany = composer.most();
        while (tooMany - fits > 1) {
            int next = (fits + tooMany) / 2;
            Fitted tried = Fitted.of(page(composer.page(next)));
            if (tried.fits()) {
                best.close();
                best = tried;
                fits = next;
            } else {
                tried.close();
                tooMany = next;
            }
        }
        return best;
    }

    private String page(ReportPage page) {
        StringOutput out = new StringOutput();
        engine.render("report/prospect.jte", page, out);
        return out.toString();
    }
}
