package rushlight.web;

import java.util.List;
import rushlight.report.prospect.Chapters;

/**
 * The reps behind what stands, film by film.
 *
 * @param films the films, in order of their names
 */
public record ChaptersAnswer(List<Film> films) {
    /**
     * One film.
     *
     * @param video as charted
     * @param vtt where its chapters are as WebVTT
     * @param chapters the reps in the order of the film
     */
    public record Film(String video, String vtt, List<Chapter> chapters) {}

    /**
     * One rep.
     *
     * @param rep its name
     * @param game name of the game
     * @param start seconds
     * @param end seconds
     * @param title what the chapter is called
     * @param clip the film with the times as a media fragment
     */
    public record Chapter(String rep, String game, double start, double end, String title, String clip) {}

    /** The chapters of a prospect's films. */
    public static ChaptersAnswer of(String prospect, List<Chapters.Film> films) {
        return new ChaptersAnswer(films.stream()
                .map(film -> new Film(
                        film.video(),
                        "/api/prospects/" + Addresses.part(prospect) + "/clips.vtt?video="
                                + Addresses.part(film.video()),
                        film.chapters().stream()
                                .map(one -> new Chapter(
                                        one.rep(), one.game(), one.start(), one.end(), one.title(), one.href()))
                                .toList()))
                .toList());
    }
}
