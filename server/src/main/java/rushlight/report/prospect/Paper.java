package rushlight.report.prospect;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a report is printed on. */
public enum Paper {
    LETTER("8.5in 11in"),
    A4("210mm 297mm");

    private final String size;

    Paper(String size) {
        this.size = size;
    }

    /** The word for it in options and addresses. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The paper of this word. */
    public static Optional<Paper> of(String slug) {
        return Stream.of(values()).filter(paper -> paper.slug().equals(slug)).findFirst();
    }

    /** Width and height as a style sheet has them. */
    public String size() {
        return size;
    }
}
