package rushlight.report.prospect;

import java.util.List;
import java.util.Optional;
import rushlight.figure.Drawing;
import rushlight.figure.Table;

/**
 * Everything that stands in a report, in the order of the page.
 *
 * @param name of the prospect
 * @param description the report in a sentence, for those who list documents
 * @param body position, team, year and measures; may be empty
 * @param lead the tape and his main rush, a sentence each
 * @param sections the parts in the author's order
 * @param cautions what always prints
 * @param style the style sheet for its paper
 */
public record ReportPage(
        String name,
        String description,
        String body,
        List<String> lead,
        List<Section> sections,
        List<String> cautions,
        String style) {
    /**
     * One part.
     *
     * @param id its name on the page
     * @param title its heading
     * @param paragraphs what it says at first
     * @param drawings what it shows
     * @param tables what it lists by weeks or counts
     * @param entries its findings, those that matter most first
     * @param more what did not fit, or was left out and why; empty where all of it stands here
     */
    public record Section(
            String id,
            String title,
            List<String> paragraphs,
            List<Drawing> drawings,
            List<Table> tables,
            List<Entry> entries,
            Optional<String> more) {
        public Section {
            paragraphs = List.copyOf(paragraphs);
            drawings = List.copyOf(drawings);
            tables = List.copyOf(tables);
            entries = List.copyOf(entries);
        }

        /** A part of words alone. */
        static Section ofWords(String id, String title, List<String> paragraphs) {
            return new Section(id, title, paragraphs, List.of(), List.of(), List.of(), Optional.empty());
        }

        /** A part of findings alone. */
        static Section ofEntries(String id, String title, List<Entry> entries, Optional<String> more) {
            return new Section(id, title, List.of(), List.of(), List.of(), entries, more);
        }
    }

    /**
     * One finding, or one thing that was said.
     *
     * @param mark the shape of its verdict; empty for what was said
     * @param title the verdict's word and the finding's name; empty for what was said
     * @param sentence what a person reads
     * @param strip the rate as a drawing
     * @param notes what hangs on it
     * @param film the reps that show it
     */
    public record Entry(
            String mark, String title, String sentence, Optional<Drawing> strip, List<String> notes, List<Film> film) {
        public Entry {
            notes = List.copyOf(notes);
            film = List.copyOf(film);
        }

        /** Something told in a sentence, without a rate. */
        static Entry told(String mark, String title, String sentence, List<Film> film) {
            return new Entry(mark, title, sentence, Optional.empty(), List.of(), film);
        }
    }

    /**
     * Reps of one game.
     *
     * @param lead what stands before it
     * @param game its name
     * @param moments the reps
     */
    public record Film(String lead, String game, List<Moment> moments) {
        public Film {
            moments = List.copyOf(moments);
        }
    }

    /**
     * One rep on film.
     *
     * @param lead what stands before it
     * @param words its name and its time
     * @param href the clip as a media fragment; empty where the film is not known
     */
    public record Moment(String lead, String words, Optional<String> href) {}

    public ReportPage {
        lead = List.copyOf(lead);
        sections = List.copyOf(sections);
        cautions = List.copyOf(cautions);
    }
}
