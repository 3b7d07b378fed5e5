package rushlight.web.http;

import rushlight.archive.Archive;
import rushlight.archive.Opinions;
import rushlight.archive.Projections;

/** The entity tag of everything that is said of the film as it is now. */
final class FilmVersion {
    private static final int SHORT = 12;

    private final Archive archive;
    private final Opinions opinions;
    private final Projections projections;

    FilmVersion(Archive archive) {
        this.archive = archive;
        this.opinions = Opinions.of(archive);
        this.projections = Projections.of(archive);
    }

    /** Changes with every change of the film, again when questions are answered from it, with every change of what was said or thought of players, or of the book. */
    String now() {
        return "W/\"" + archive.store().revision() + "-" + archive.shown() + "-" + opinions.revision() + "-"
                + projections.revision() + "-" + book() + "\"";
    }

    /** Changes with the book alone. */
    String ofBook() {
        return "W/\"" + book() + "\"";
    }

    private String book() {
        return archive.book().ontology().fingerprint().substring(0, SHORT);
    }
}
