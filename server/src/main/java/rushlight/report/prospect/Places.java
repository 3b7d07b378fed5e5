package rushlight.report.prospect;

import java.math.BigDecimal;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Side;
import rushlight.film.Times;
import rushlight.findings.Evidence;
import rushlight.findings.Judged;
import rushlight.situation.Sighting;

/** Where reps are on film, for a page: a few of them, game by game, each as a link to its clip. */
final class Places {
    private static final int MOST = 3;

    private Places() {}

    /** The reps that show a finding: those with the event, or without it where the lack of it is what was found. */
    static List<Evidence.Rep> showing(Judged one) {
        boolean isLack = one.finding().standard().side().equals(Optional.of(Side.BELOW));
        return one.evidence().reps().stream()
                .filter(rep -> rep.event() != isLack)
                .toList();
    }

    /** The first of the reps that show it, and how many more there are. */
    static List<ReportPage.Film> of(Judged one) {
        return of(showing(one).stream().map(Evidence.Rep::sighting).toList());
    }

    /** The first of these, and how many more there are. */
    static List<ReportPage.Film> of(List<Sighting> showing) {
        Map<String, List<ReportPage.Moment>> byGame = new LinkedHashMap<>();
        showing.stream().limit(MOST).forEach(at -> {
            List<ReportPage.Moment> moments = byGame.computeIfAbsent(at.game(), game -> new ArrayList<>());
            moments.add(new ReportPage.Moment(moments.isEmpty() ? "" : ",", words(at), href(at)));
        });
        List<ReportPage.Film> film = new ArrayList<>();
        byGame.forEach((game, moments) -> film.add(new ReportPage.Film(film.isEmpty() ? ":" : ";", game, moments)));
        if (showing.size() > MOST) {
            film.add(new ReportPage.Film(";", "and " + (showing.size() - MOST) + " more", List.of()));
        }
        return film;
    }

    /** "r03 0:20:41 to 0:20:48.5"; where the film has no times, the quarter and the clock. */
    static String words(Sighting at) {
        Optional<String> start = at.start().flatMap(Times::film);
        if (start.isPresent()) {
            return at.rep() + " " + start.get()
                    + at.end().flatMap(Times::film).map(end -> " to " + end).orElse("");
        }
        String clock = at.quarter().isPresent() && at.clock().isPresent()
                ? " Q" + at.quarter().getAsInt() + " " + at.clock().get()
                : "";
        return at.rep() + clock;
    }

    /** The clip as a media fragment with times in seconds (W3C Media Fragments URI 1.0, section 4.2.1). */
    static Optional<String> href(Sighting at) {
        return at.video()
                .flatMap(video -> fragment(at).flatMap(time -> address(video).map(it -> it + time)));
    }

    private static Optional<String> fragment(Sighting at) {
        OptionalDouble start = at.start().map(Times::seconds).orElseGet(OptionalDouble::empty);
        if (start.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble end = at.end().map(Times::seconds).orElseGet(OptionalDouble::empty);
        return Optional.of(
                "#t=" + number(start.getAsDouble()) + (end.isPresent() ? "," + number(end.getAsDouble()) : ""));
    }

    /** A web address as it is, without a fragment of its own; anything else as the name of a file, escaped. */
    private static Optional<String> address(String video) {
        try {
            if (video.startsWith("http://") || video.startsWith("https://")) {
                return Optional.of(new URI(video).toASCIIString().replaceFirst("#.*", ""));
            }
            return Optional.of(new URI(null, null, "./" + video.replace('\\', '/'), null)
                    .toASCIIString()
                    .substring(2));
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }

    /** Seconds without an exponent and without zeros at the end. */
    static String number(double seconds) {
        return BigDecimal.valueOf(seconds).stripTrailingZeros().toPlainString();
    }
}
