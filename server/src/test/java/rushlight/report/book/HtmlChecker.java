package rushlight.report.book;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import nu.validator.checker.jing.CheckerSchema;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** The checker of HTML that the W3C runs as a service, in this process. It guesses no languages, which needs a server. */
public final class HtmlChecker {
    private final List<String> complaints = new ArrayList<>();
    private final SimpleDocumentValidator validator = new SimpleDocumentValidator(false);
    private String page = "";

    /** Reads the schema, which takes a second or two. */
    public HtmlChecker() throws Exception {
        ErrorHandler handler = new ErrorHandler() {
            @Override
            public void warning(SAXParseException e) {
                note(e);
            }

            @Override
            public void error(SAXParseException e) {
                note(e);
            }

            @Override
            public void fatalError(SAXParseException e) {
                note(e);
            }
        };
        validator.setUpMainSchema("http://s.validator.nu/html5-all.rnc", handler);
        Field guessing = SimpleDocumentValidator.class.getDeclaredField("langdetectSchema");
        guessing.setAccessible(true);
        guessing.set(validator, CheckerSchema.NORMALIZATION_CHECKER);
        validator.setUpValidatorAndParsers(handler, true, false);
    }

    /** What is wrong with these pages: page, line and complaint. */
    public List<String> complaints(List<Path> pages) throws Exception {
        complaints.clear();
        for (Path file : pages) {
            page = file.getFileName().toString();
            check(file);
        }
        return List.copyOf(complaints);
    }

    private void check(Path file) throws Exception {
        try (var in = Files.newInputStream(file)) {
            validator.checkHtmlInputSource(new InputSource(in));
        } catch (IOException e) {
            complaints.add(page + ": " + e.getMessage());
        }
    }

    private void note(SAXParseException e) {
        complaints.add(page + " line " + e.getLineNumber() + ": " + e.getMessage());
    }
}
