package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rushlight.words.Lexicon;
import rushlight.words.Match;
import rushlight.words.Matcher;
import rushlight.words.Phrasings;
import rushlight.words.Token;
import rushlight.words.Tokenizer;

/** Finds the words that say how the others are meant, by the word list {@code narration-cues}. */
final class Cues {
    /** What such words do; the names are those of the word list. */
    enum Act {
        PSEUDO,
        NEG,
        WANT,
        HYP,
        UNC,
        TEND,
        ATTEMPT,
        FAKE,
        RETRACT,
        OTHER_REP,
        ASK,
        BREAK,
        PRONOUN,
        PROSPECT,
        BLOCKER,
        OTHER,
        NO_SUBJECT,
        SIDE,
        HAND,
        BODY,
        ORDER,
        REPLAY,
        NOT_REPLAY,
        BOUNDARY,
        OPENER,
        NOT_BOUNDARY,
        SUMMARY,
        FORGET,
        OPINION,
        SPOT,
        NOT_SPOT,
        ANSWER;

        /** Whether it marks the stretches of the notes. */
        boolean parts() {
            return this == REPLAY
                    || this == NOT_REPLAY
                    || this == BOUNDARY
                    || this == OPENER
                    || this == NOT_BOUNDARY
                    || this == SUMMARY
                    || this == FORGET;
        }

        /** Whether it says how sure or how wanted something is. */
        boolean asserts() {
            return compareTo(ASK) <= 0;
        }

        /** Whether it names somebody. */
        boolean names() {
            return this == PRONOUN || this == PROSPECT || this == BLOCKER || this == OTHER;
        }
    }

    /** A cue where it stands: tokens {@code first} to {@code end}. */
    record Found(int first, int end, Act act, String value) {}

    private record Meaning(Act act, String value) {}

    /** The value of words that command where they lead a sentence. */
    static final String ORDER = "order";

    private final Matcher<Meaning> asserting;
    private final Matcher<Meaning> parting;
    private final Matcher<Meaning> naming;
    private final Matcher<Meaning> showing;

    Cues(Tokenizer tokenizer) {
        Groups groups = new Groups();
        var asserts = groups.in(new Matcher.Builder<Meaning>(tokenizer).withBookWords());
        var parts = groups.in(new Matcher.Builder<Meaning>(tokenizer).withBookWords());
        var names = groups.in(new Matcher.Builder<Meaning>(tokenizer).withBookWords());
        var others = groups.in(new Matcher.Builder<Meaning>(tokenizer).withBookWords());
        for (List<String> row :
                Lexicon.named("narration-cues", "pattern", "cue", "value").rows()) {
            Act act = Act.valueOf(row.get(1).toUpperCase(Locale.ROOT).replace('-', '_'));
            var builder = act.asserts() ? asserts : act.parts() ? parts : act.names() ? names : others;
            Phrasings.of(groups.spelled(row.get(0))).forEach(words -> builder.add(words, new Meaning(act, row.get(2))));
        }
        this.asserting = asserts.build();
        this.parting = parts.build();
        this.naming = names.build();
        this.showing = others.build();
    }

    List<Found> asserting(List<Token> tokens) {
        return found(asserting, tokens);
    }

    List<Found> parting(List<Token> tokens) {
        return found(parting, tokens);
    }

    /** Who is named; {@code prospect} are words of the name of the player the notes are about. */
    List<Found> naming(List<Token> tokens, Set<String> prospect) {
        List<Found> all = new ArrayList<>(found(naming, tokens));
        for (int i = 0; i < tokens.size(); i++) {
            if (prospect.contains(tokens.get(i).key())) {
                all.add(new Found(i, i + 1, Act.PROSPECT, ""));
            }
        }
        all.sort(Comparator.comparingInt(Found::first));
        return List.copyOf(all);
    }

    /** Sides, hands, opinions, breaks of a clause, and what stands before a bare number; overlapping ones too. */
    List<Found> showing(List<Token> tokens) {
        return showing.all(tokens).stream().flatMap(Cues::each).toList();
    }

    private static List<Found> found(Matcher<Meaning> matcher, List<Token> tokens) {
        return matcher.best(tokens).stream()
                .flatMap(Cues::each)
                .filter(cue -> !cue.value().equals(ORDER) || isPlain(matcher, tokens.get(cue.first())))
                .toList();
    }

    /** "Get your hands inside" is a command, "gets a hand on him" is none. */
    private static boolean isPlain(Matcher<Meaning> matcher, Token word) {
        return matcher.base(word.key()).equals(word.key());
    }

    private static java.util.stream.Stream<Found> each(Match<Meaning> match) {
        return match.values().stream()
                .map(meaning -> new Found(match.first(), match.end(), meaning.act(), meaning.value()));
    }
}
