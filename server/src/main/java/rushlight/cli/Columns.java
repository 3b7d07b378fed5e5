package rushlight.cli;

import java.util.List;

/** A page with a column of titles at the left and what is said beside them. */
final class Columns {
    private static final int TITLE = 23;
    private static final String NO_TITLE = " ".repeat(TITLE);

    private final Page page;

    Columns(Page page) {
        this.page = page;
    }

    /** One text under one title. */
    void say(String title, String text) {
        if (!text.isBlank()) {
            page.wrapped(start(title), NO_TITLE, text);
        }
    }

    /** Several texts under one title, numbered where there are several. */
    void list(String title, List<String> texts) {
        if (texts.size() == 1) {
            say(title, texts.get(0));
            return;
        }
        for (int i = 0; i < texts.size(); i++) {
            String number = (i + 1) + ". ";
            page.wrapped(start(i == 0 ? title : "") + number, NO_TITLE + " ".repeat(number.length()), texts.get(i));
        }
    }

    /** Several texts under one title, one below the other. */
    void lines(String title, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            page.wrapped(start(i == 0 ? title : ""), NO_TITLE + "  ", texts.get(i));
        }
    }

    /** The title, filled up to the column; a title too long for that gets a line of its own. */
    private String start(String title) {
        if (title.length() < TITLE) {
            return title + " ".repeat(TITLE - title.length());
        }
        page.line(title);
        return NO_TITLE;
    }
}
