package rushlight.report.prospect;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** A report laid out on its paper, ready to be written as tagged PDF with its fonts in it. */
final class PdfPress implements AutoCloseable {
    private static final String FONTS = "/rushlight/report/fonts/";
    private static final String FAMILY = "DejaVu Sans Condensed";
    private static final String PRODUCER = "Rushlight";

    static {
        XRLog.setLoggingEnabled(false);
    }

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final PdfBoxRenderer renderer;

    PdfPress(String xhtml) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(PrintedPage.of(xhtml), null);
        builder.usePdfUaAccessibility(true);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.withProducer(PRODUCER);
        builder.useFont(font("DejaVuSansCondensed.ttf"), FAMILY, 400, BaseRendererBuilder.FontStyle.NORMAL, true);
        builder.useFont(font("DejaVuSansCondensed-Bold.ttf"), FAMILY, 700, BaseRendererBuilder.FontStyle.NORMAL, true);
        builder.toStream(out);
        renderer = builder.buildPdfRenderer();
        renderer.layout();
    }

    /** How many pages it takes. */
    int pages() {
        return renderer.getRootBox().getLayer().getPages().size();
    }

    /** How many pages its words would fill; a page that was left early for the sake of what comes next counts whole. */
    double length() {
        PageBox first = renderer.getRootBox().getLayer().getPages().get(0);
        return (double) renderer.getRootBox().getHeight() / (first.getBottom() - first.getTop());
    }

    /** The PDF; to be asked for once. */
    byte[] print() {
        try {
            renderer.createPDF();
        } catch (IOException e) {
            throw new UncheckedIOException("The report could not be written as PDF.", e);
        }
        return out.toByteArray();
    }

    @Override
    public void close() {
        renderer.close();
    }

    private static FSSupplier<InputStream> font(String file) {
        return () -> {
            InputStream in = PdfPress.class.getResourceAsStream(FONTS + file);
            if (in == null) {
                throw new IllegalStateException("The program lacks its font " + file + ".");
            }
            return in;
        };
    }
}
