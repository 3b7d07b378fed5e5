package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.findings.Finding;
import rushlight.findings.Measure;
import rushlight.situation.Situation;
import rushlight.situation.Situations;

/** Counts and situations as sentences. */
final class Wording {
    private static final int LONG = 160;

    private final Situations situations;
    private final Claims claims;

    Wording(Situations situations, Claims claims) {
        this.situations = situations;
        this.claims = claims;
    }

    String phrase(Situation situation) {
        String phrase = situations.phrase(situation);
        return phrase.length() <= LONG ? phrase : phrase.substring(0, phrase.lastIndexOf(' ', LONG)) + " \u2026";
    }

    /** A count of what was asked, first in words: those of the finding, where the question is about one. */
    String happened(Asked asked, SituationPair pair, Answer.Count count) {
        List<String> named =
                asked.filter(Filter.Findings.class).map(Filter.Findings::slugs).orElse(List.of());
        return named.size() == 1
                ? claims.finding(named.get(0))
                        .flatMap(finding -> finding(finding, pair, count))
                        .orElseGet(() -> happened(pair, count))
                : happened(pair, count);
    }

    /** The finding's own sentence, and what else the reps were held to. */
    private Optional<String> finding(Finding finding, SituationPair pair, Answer.Count count) {
        Optional<SituationPair> whole = claims.pair(finding.slug());
        if (finding.measure() == Measure.DIFFERENCE || whole.isEmpty()) {
            return Optional.empty();
        }
        List<Situation> rest = new ArrayList<>(parts(pair.opportunity()));
        rest.removeAll(parts(whole.get().opportunity()));
        String held = rest.isEmpty() ? "" : " Counted only where " + phrase(Situation.all(rest)) + ".";
        return finding.advice()
                .said(count.rate())
                .map(said -> said.replaceAll("\\.$", "") + " (" + Counted.range(count) + ")." + held);
    }

    private static List<Situation> parts(Situation situation) {
        return situation instanceof Situation.And and ? and.parts() : List.of(situation);
    }

    /** A count of an event, first in words. */
    String happened(SituationPair pair, Answer.Count count) {
        if (pair.opportunity().equals(pair.event())) {
            int reps = count.rate().events();
            return (reps == 1 ? "1 rep" : reps + " reps") + " on which " + phrase(pair.event()) + ".";
        }
        String event = phrase(pair.event());
        return Character.toUpperCase(event.charAt(0)) + event.substring(1) + " on " + Counted.times(count)
                + " reps on which " + phrase(pair.opportunity()) + " (" + Counted.range(count) + ").";
    }

    /** "of the film", or of the part a question keeps to. */
    String where(Scene scene) {
        return scene.asked().isOfPart() ? "of the part of the film you ask about" : "of the film";
    }
}
