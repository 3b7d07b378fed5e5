package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import rushlight.words.Lexicon;
import rushlight.words.Match;
import rushlight.words.Matcher;
import rushlight.words.Phrasings;
import rushlight.words.Token;
import rushlight.words.Tokenizer;

/** Finds the words that say how the others are meant, by the word list {@code narration-cues}. */
final class Cues {
    /** What such words are for. */
    private enum Role {
        /** How sure or how wanted something is. */
        ASSERTING,
        /** Where the stretches of the notes begin. */
        PARTING,
        /** Who is named. */
        NAMING,
        /** Sides, hands, opinions, breaks of a clause, and what stands before a bare number. */
        SHOWING
    }

    /** What such words do; the names are those of the word list. */
    enum Act {
        PSEUDO(Role.ASSERTING),
        NEG(Role.ASSERTING),
        WANT(Role.ASSERTING),
        HYP(Role.ASSERTING),
        UNC(Role.ASSERTING),
        TEND(Role.ASSERTING),
        ATTEMPT(Role.ASSERTING),
        FAKE(Role.ASSERTING),
        RETRACT(Role.ASSERTING),
        OTHER_REP(Role.ASSERTING),
        ASK(Role.ASSERTING),
        PRONOUN(Role.NAMING),
        PROSPECT(Role.NAMING),
        BLOCKER(Role.NAMING),
        OTHER(Role.NAMING),
        REPLAY(Role.PARTING),
        NOT_REPLAY(Role.PARTING),
        BOUNDARY(Role.PARTING),
        OPENER(Role.PARTING),
        NOT_BOUNDARY(Role.PARTING),
        SUMMARY(Role.PARTING),
        FORGET(Role.PARTING),
        BREAK(Role.SHOWING),
        NO_SUBJECT(Role.SHOWING),
        SIDE(Role.SHOWING),
        NOT_SIDE(Role.SHOWING),
        HAND(Role.SHOWING),
        BODY(Role.SHOWING),
        ORDER(Role.SHOWING),
        OPINION(Role.SHOWING),
        SPOT(Role.SHOWING),
        NOT_SPOT(Role.SHOWING),
        ANSWER(Role.SHOWING);

        private final Role role;

        Act(Role role) {
            this.role = role;
        }
    }

    /** A cue where it stands: tokens {@code first} to {@code end}. */
    record Found(int first, int end, Act act, String value) {
        private static final String BALL = "ball";

        /** Whether it names another man than him and the blocker; who has the ball is none of them. */
        boolean isSomebodyElse() {
            return act == Act.OTHER && !value.equals(BALL);
        }
    }

    private record Meaning(Act act, String value) {}

    /** The value of words that command where they lead a sentence. */
    static final String ORDER = "order";

    /**
     * The cues of some notes, by what they are for.
     *
     * @param asserting no two of which overlap, as of those that part and name
     * @param showing overlapping ones too
     */
    record Marks(List<Found> asserting, List<Found> parting, List<Found> naming, List<Found> showing) {}

    private final Matcher<Meaning> matcher;

    Cues(Tokenizer tokenizer) {
        Groups groups = new Groups();
        var builder = groups.in(new Matcher.Builder<Meaning>(tokenizer).withBookWords());
        for (List<String> row :
                Lexicon.named("narration-cues", "pattern", "cue", "value").rows()) {
            Act act = Act.valueOf(row.get(1).toUpperCase(Locale.ROOT).replace('-', '_'));
            Phrasings.of(groups.spelled(row.get(0))).forEach(words -> builder.add(words, new Meaning(act, row.get(2))));
        }
        this.matcher = builder.build();
    }

    /**
     * All that stands there.
     *
     * @param prospect words of the name of the player the notes are about
     */
    Marks in(List<Token> tokens, Set<String> prospect) {
        List<Match<Meaning>> all = matcher.all(tokens);
        List<Found> naming = new ArrayList<>(best(tokens, all, Role.NAMING));
        for (int i = 0; i < tokens.size(); i++) {
            if (prospect.contains(tokens.get(i).key())) {
                naming.add(new Found(i, i + 1, Act.PROSPECT, ""));
            }
        }
        naming.sort(Comparator.comparingInt(Found::first));
        return new Marks(
                best(tokens, all, Role.ASSERTING),
                best(tokens, all, Role.PARTING),
                List.copyOf(naming),
                of(all, Role.SHOWING).stream().flatMap(Cues::each).toList());
    }

    /** Where the stretches of the notes begin. */
    List<Found> parting(List<Token> tokens) {
        return best(tokens, matcher.all(tokens), Role.PARTING);
    }

    private List<Found> best(List<Token> tokens, List<Match<Meaning>> all, Role role) {
        return matcher.best(tokens, of(all, role)).stream()
                .flatMap(Cues::each)
                .filter(cue -> !cue.value().equals(ORDER) || isPlain(tokens.get(cue.first())))
                .toList();
    }

    private static List<Match<Meaning>> of(List<Match<Meaning>> all, Role role) {
        return all.stream()
                .flatMap(match -> match.only(meaning -> meaning.act().role == role).stream())
                .toList();
    }

    /** "Get your hands inside" is a command, "gets a hand on him" is none. */
    private boolean isPlain(Token word) {
        return matcher.base(word.key()).equals(word.key());
    }

    private static Stream<Found> each(Match<Meaning> match) {
        return match.values().stream()
                .map(meaning -> new Found(match.first(), match.end(), meaning.act(), meaning.value()));
    }
}
