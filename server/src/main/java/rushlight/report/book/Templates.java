package rushlight.report.book;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Fills the templates of {@code src/main/jte/book}, which are compiled with the program. */
final class Templates {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

    byte[] fill(String name, Map<String, Object> values) {
        StringOutput out = new StringOutput();
        engine.render("book/" + name + ".jte", values, out);
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }
}
