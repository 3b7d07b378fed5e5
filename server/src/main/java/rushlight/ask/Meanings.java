package rushlight.ask;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rushlight.words.Match;

/** Decides which of their meanings words have. */
final class Meanings {
    private Meanings() {}

    /** A name written like one is a name; else what the words do comes before what they may name. */
    static List<Sense> decided(Match<Sense> match, String question) {
        List<Sense> values = match.values();
        List<Sense> names = values.stream().filter(Sense.Name.class::isInstance).toList();
        boolean means = values.stream().anyMatch(s -> s instanceof Sense.Cue cue && cue.act() == Act.MEANS);
        List<Sense> cues = values.stream()
                .filter(s -> s instanceof Sense.Cue cue && cue.act() != Act.MEANS)
                .toList();
        boolean capital = Character.isUpperCase(question.codePointAt(match.from()));
        if (!names.isEmpty() && (names.size() == values.size() || capital)) {
            return names;
        }
        if (means) {
            String slug = values.stream()
                    .filter(s -> s instanceof Sense.Cue cue && cue.act() == Act.MEANS)
                    .map(s -> ((Sense.Cue) s).value())
                    .findFirst()
                    .orElseThrow();
            Optional<Sense> term = values.stream()
                    .filter(s -> s instanceof Sense.Term t && t.label().slug().equals(slug))
                    .findFirst();
            return Stream.concat(term.stream(), cues.stream().filter(Meanings::isBeside))
                    .toList();
        }
        boolean grammarAlone = cues.stream().allMatch(s -> ((Sense.Cue) s).act() == Act.GRAMMAR);
        List<Sense> others =
                values.stream().filter(s -> !(s instanceof Sense.Cue)).toList();
        return cues.isEmpty() ? others : grammarAlone && match.length() > 1 && !others.isEmpty() ? others : cues;
    }

    private static boolean isBeside(Sense sense) {
        return sense instanceof Sense.Cue cue && (cue.act() == Act.PERHAPS || cue.act() == Act.LATER);
    }
}
