package rushlight.report.practice;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** The weeks as a page to print and to take to the field: boxes to tick, one block of lines a session, no color needed. */
public final class FieldSheet {
    private static final String PAGE = "practice/sheet.jte";

    private final TemplateEngine engine;

    /** With the templates that were compiled with the program. */
    public FieldSheet() {
        this(TemplateEngine.createPrecompiled(ContentType.Html));
    }

    FieldSheet(TemplateEngine engine) {
        this.engine = engine;
    }

    /** The page, whole. */
    public String of(Practice practice) {
        StringOutput out = new StringOutput();
        engine.render(PAGE, Map.of("practice", practice), out);
        return out.toString();
    }
}
