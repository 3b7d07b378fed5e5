package rushlight.report.prospect;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rushlight.film.Times;
import rushlight.findings.Assessment;
import rushlight.findings.Evidence;
import rushlight.findings.Judged;
import rushlight.situation.Sighting;

/**
 * The reps behind what stands, as chapters of their films: a WebVTT file a film (W3C, chapter cues), and links with media
 * fragments.
 */
public final class Chapters {
    /** How long a rep without a charted end is taken to last, in seconds. */
    private static final double USUAL = 8;

    private static final BigDecimal HOUR = BigDecimal.valueOf(3600);
    private static final BigDecimal MINUTE = BigDecimal.valueOf(60);

    private Chapters() {}

    /**
     * One rep of a film.
     *
     * @param rep the evaluator's name for it
     * @param game name of the game
     * @param start seconds from the beginning of the film
     * @param end seconds, after {@code start}
     * @param findings what it shows, in order of their weight
     * @param href the clip
     */
    public record Chapter(String rep, String game, double start, double end, List<String> findings, String href) {
        public Chapter {
            findings = List.copyOf(findings);
        }

        /** What the chapter is called. */
        public String title() {
            return rep + ": " + String.join("; ", findings);
        }
    }

    /**
     * One film.
     *
     * @param video file name or address as charted
     * @param chapters in the order of their beginnings
     */
    public record Film(String video, List<Chapter> chapters) {
        public Film {
            chapters = List.copyOf(chapters);
        }

        /** A name for the file of its chapters: letters, digits, dots and hyphens, ending in {@code .vtt}. */
        public String fileName() {
            String last = video.replaceFirst("[?#].*", "").replaceFirst(".*[/\\\\]", "");
            String bare = last.replaceFirst("\\.[A-Za-z0-9]{1,5}$", "").replaceAll("[^A-Za-z0-9.-]+", "-");
            return (bare.replaceAll("[.-]", "").isEmpty() ? "film" : bare) + ".vtt";
        }

        /** The chapters as WebVTT. */
        public String vtt() {
            StringBuilder out = new StringBuilder("WEBVTT\n");
            for (Chapter one : chapters) {
                out.append('\n')
                        .append(stamp(one.start()))
                        .append(" --> ")
                        .append(stamp(one.end()))
                        .append('\n')
                        .append(escaped(one.title()))
                        .append('\n');
            }
            return out.toString();
        }
    }

    /** The films with the reps behind what stands, or hangs on his duty, in order of their names. */
    public static List<Film> of(Assessment assessment) {
        Map<String, Map<String, Chapter>> films = new TreeMap<>();
        assessment.findings().stream()
                .sorted(Judged.mostTellingFirst())
                .filter(one -> one.verdict().stands() || Sorts.isSafety(one) || Sorts.hangsOnDuty(one))
                .forEach(one -> Places.showing(one).stream()
                        .map(Evidence.Rep::sighting)
                        .forEach(at -> add(films, at, one.finding().shown())));
        List<Film> all = new ArrayList<>();
        films.forEach((video, reps) -> all.add(new Film(
                video,
                reps.values().stream()
                        .sorted(Comparator.comparingDouble(Chapter::start).thenComparing(Chapter::rep))
                        .toList())));
        return all;
    }

    private static void add(Map<String, Map<String, Chapter>> films, Sighting at, String finding) {
        OptionalDouble start = at.start().map(Times::seconds).orElseGet(OptionalDouble::empty);
        Optional<String> href = Places.href(at);
        if (at.video().isEmpty() || start.isEmpty() || href.isEmpty()) {
            return;
        }
        double from = start.getAsDouble();
        double to =
                at.end().map(Times::seconds).orElseGet(OptionalDouble::empty).orElse(from + USUAL);
        Map<String, Chapter> reps = films.computeIfAbsent(at.video().get(), video -> new LinkedHashMap<>());
        Chapter before = reps.get(at.game() + "/" + at.rep());
        List<String> findings = new ArrayList<>(before == null ? List.of() : before.findings());
        findings.add(finding);
        reps.put(
                at.game() + "/" + at.rep(),
                new Chapter(at.rep(), at.game(), from, to > from ? to : from + USUAL, findings, href.get()));
    }

    /** Hours, minutes, seconds and thousandths, as a cue's time is written. */
    static String stamp(double seconds) {
        BigDecimal total = BigDecimal.valueOf(seconds).setScale(3, RoundingMode.HALF_UP);
        BigDecimal[] hours = total.divideAndRemainder(HOUR);
        BigDecimal[] minutes = hours[1].divideAndRemainder(MINUTE);
        return String.format(Locale.ROOT, "%02d:%02d:%06.3f", hours[0].intValue(), minutes[0].intValue(), minutes[1]);
    }

    /** A cue's words: no markup, no arrow, one line. */
    private static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replaceAll("\\s+", " ");
    }
}
