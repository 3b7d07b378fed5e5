package rushlight.notes;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import rushlight.film.Opinion;

/** What notes say of the player in general, as opinions: each with the sentence it stands in and who said it when. */
public final class GeneralOpinions {
    private static final int ID_BYTES = 8;
    private static final int LONGEST = 160;
    private static final String ENDS = ".!?";

    private final Narration narration;
    private final Notes notes;
    private final String prospect;
    private final String speaker;

    /**
     * Of notes about one player.
     *
     * @param prospect his id
     * @param speaker who speaks; where it is empty, whom the file names
     */
    public GeneralOpinions(Narration narration, Notes notes, String prospect, String speaker) {
        this.narration = narration;
        this.notes = notes;
        this.prospect = prospect;
        this.speaker = speaker;
    }

    /** All but the guesses. */
    public List<Opinion> sure() {
        List<Mention> said = notes.statements();
        List<String> keys = TagKeys.ofStatements(notes);
        return of(key -> said.get(keys.indexOf(key)).band() != Band.WEAK);
    }

    /** Those whose keys a person accepted. */
    public List<Opinion> of(Predicate<String> accepted) {
        List<String> keys = TagKeys.ofStatements(notes);
        List<Opinion> opinions = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            Mention said = notes.statements().get(i);
            if (said.actor() == Actor.PROSPECT && accepted.test(keys.get(i))) {
                opinions.add(opinion(said, keys.get(i)));
            }
        }
        return opinions;
    }

    private Opinion opinion(Mention said, String key) {
        Segment stretch = stretch(said);
        int from = sentenceStart(said.from(), stretch.from());
        int to = sentenceEnd(said.to(), stretch.to());
        List<String> against = notes.statements().stream()
                .filter(one -> one.actor() == Actor.BLOCKER && one.from() >= from && one.to() <= to)
                .map(Mention::concept)
                .distinct()
                .sorted()
                .toList();
        Optional<Cue> cue = narration.cues().stream()
                .filter(one -> one.from() <= said.from() && said.from() < one.to())
                .findFirst();
        return new Opinion(
                id(key),
                prospect,
                speaker.isBlank() ? cue.map(one -> voice(one, said.from())).orElse("") : speaker.strip(),
                narration.text().substring(from, to).strip().replaceAll("\\s+", " "),
                cue.map(Cue::start).orElseGet(OptionalDouble::empty),
                narration.source(),
                polarity(said.assertion()),
                said.concept(),
                against);
    }

    /** A sentence does not begin in what was said of a rep. */
    private Segment stretch(Mention said) {
        return notes.segments().stream()
                .filter(one -> one.from() <= said.from() && said.to() <= one.to())
                .findFirst()
                .orElseGet(() ->
                        new Segment(Segment.Kind.SUMMARY, 0, 0, narration.text().length()));
    }

    private static Opinion.Polarity polarity(Assertion assertion) {
        return switch (assertion) {
            case PERFORMED, TENDENCY -> Opinion.Polarity.DOES;
            case NOT_PERFORMED, WANTED -> Opinion.Polarity.DOES_NOT;
            case HYPOTHETICAL, UNCERTAIN -> Opinion.Polarity.UNSURE;
        };
    }

    private static String voice(Cue cue, int at) {
        return cue.voices().stream()
                .filter(voice -> cue.from() + voice.from() <= at)
                .reduce((first, second) -> second)
                .map(Cue.Voice::name)
                .orElse("");
    }

    /** After the end of the sentence before, or at the nearest blank where nothing ends one. */
    private int sentenceStart(int from, int least) {
        String text = narration.text();
        int at = from;
        while (at > least && ENDS.indexOf(text.charAt(at - 1)) < 0) {
            if (from - at > LONGEST / 2 && Character.isWhitespace(text.charAt(at - 1))) {
                break;
            }
            at--;
        }
        return at;
    }

    private int sentenceEnd(int to, int most) {
        String text = narration.text();
        int at = to;
        while (at < most && ENDS.indexOf(text.charAt(at)) < 0) {
            if (at - to > LONGEST / 2 && Character.isWhitespace(text.charAt(at))) {
                return at;
            }
            at++;
        }
        return at < text.length() && ENDS.indexOf(text.charAt(at)) >= 0 ? at + 1 : at;
    }

    private String id(String key) {
        try {
            String of = prospect + "\n" + narration.source() + "\n" + key;
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(of.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash, 0, ID_BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
