package rushlight.notes;

import java.util.List;
import java.util.Set;
import rushlight.words.Token;

/**
 * Weighs what speaks for a clause to open a rep where no word says so. The weights are whole numbers, set by hand so that
 * each sum can be read: a place to line up after the rep before has ended is enough, the beginning of a line alone is not.
 */
final class Openings {
    /** How far from its beginning, in tokens, a clause is led by something. */
    static final int SHORT = 3;

    private static final int PLACE_WITHIN = 4;

    private static final int ENOUGH = 6;
    private static final int OPENER = 4;
    private static final int LINE = 2;
    private static final int SENTENCE = 1;
    private static final int PLACE = 2;
    private static final int PLACED_BEFORE = 1;
    private static final int ENDED = 2;
    private static final int TOLD = 1;
    private static final int SILENCE = 1;
    private static final int TERSE = 1;
    private static final int TIMED = 3;
    private static final int OTHER_PHASE = 2;
    private static final int NOW = 1;
    private static final int NEW_WORDS = 1;
    private static final int OWN_TIME = 1;
    private static final int PARAGRAPH = 2;
    private static final int SAME_LOOK = -1;
    private static final Set<String> NOWS = SmallWords.of("now");
    private static final Set<String> GOING_ON = SmallWords.of("going-on");
    private static final Set<String> OF_THE_SAME = SmallWords.of("of-the-same");
    private static final Set<String> THIS = SmallWords.of("definite");
    private static final Set<String> MEN = SmallWords.of("some-man");

    /**
     * What is known of the rep that is being told.
     *
     * @param heard whether anything was said of it
     * @param placed whether it was said where he lined up
     * @param ended whether it was said how it ended
     * @param told whether a step or an end was told
     * @param steps how much was said of it
     * @param phase the phase of what was told last; empty where nothing was
     */
    record SoFar(boolean heard, boolean placed, boolean ended, boolean told, int steps, String phase) {
        static final SoFar NOTHING = new SoFar(false, false, false, false, 0, "");

        SoFar and(List<Hit> hits) {
            String last = phase;
            for (Hit hit : hits) {
                last = hit.kind().phase().isEmpty() ? last : hit.kind().phase();
            }
            return new SoFar(
                    heard || !hits.isEmpty(),
                    placed || hits.stream().anyMatch(Hit::isPlace),
                    ended || hits.stream().anyMatch(Hit::isEnd),
                    told || hits.stream().anyMatch(hit -> hit.kind().step() || hit.isEnd()),
                    steps + hits.size(),
                    last);
        }

        /** Whether it was told from its beginning to its end. */
        boolean isWhole() {
            return told && ended;
        }
    }

    private final Narration notes;
    private final List<Token> tokens;
    private final List<Clause> clauses;
    private final List<List<Hit>> hits;
    private final Generalities general;
    private final Manner manner;

    Openings(Narration notes, List<Token> tokens, List<Clause> clauses, List<List<Hit>> hits, Generalities general) {
        this.general = general;
        this.notes = notes;
        this.tokens = tokens;
        this.clauses = clauses;
        this.hits = hits;
        this.manner = new Manner(notes, tokens);
    }

    /**
     * Whether enough speaks for a new rep.
     *
     * @param at the clause
     * @param before what is known of the rep before
     * @param kind what the clause before belongs to
     * @param opener whether words lead the clause that often open a rep
     * @param line what the words of the rest of its line mark
     */
    boolean opens(int at, SoFar before, Segment.Kind kind, boolean opener, Set<Cues.Act> line) {
        Clause clause = clauses.get(at);
        if (clause.begins()
                && !opener
                && (line.contains(Cues.Act.REPLAY) || line.contains(Cues.Act.SUMMARY) || !tellsOfRep(at))) {
            return false;
        }
        if (!before.heard() && kind == Segment.Kind.REP) {
            return false;
        }
        boolean sentence = isSentence(at);
        boolean ownTime = notes.format() == Format.PLAIN || manner.terse();
        boolean next = ownTime && clause.begins() && before.ended() && !pointsBack(at);
        if (isEnding(at) && !opener && !next) {
            return false;
        }
        boolean place = hits.get(at).stream().anyMatch(hit -> isPlace(hit, clause)) || isPlacedFirst(at);
        if (clause.begins() && !opener && manner.isAtOnce(clause.cue()) && !(place && before.isWhole())) {
            return false;
        }
        if (clause.begins() && !opener && !place && !happens(at)) {
            return false;
        }
        boolean now = NOWS.contains(tokens.get(clause.first()).key());
        if (!sentence && !now && !place && !opener) {
            return false;
        }
        if (kind == Segment.Kind.SUMMARY && !(clause.begins() && (place || opener))) {
            return false;
        }
        int sum = clause.begins() ? LINE : sentence ? SENTENCE : 0;
        sum += opener ? OPENER : 0;
        sum += place ? PLACE + (before.placed() && before.told() ? PLACED_BEFORE : 0) : 0;
        sum += before.ended() ? ENDED : 0;
        sum += before.told() ? TOLD : 0;
        sum += now ? NOW : 0;
        if (clause.begins() && happens(at)) {
            sum += goesOn(at) ? 0 : NEW_WORDS;
            sum += notes.format() == Format.PLAIN && !manner.terse() && !isOfTheSame(at) ? OWN_TIME : 0;
            sum += manner.paragraphs() && before.told() && !goesOn(at) && isBlockers(at) ? PARAGRAPH : 0;
        }
        sum += clause.begins() && clause.cue() > 0 && manner.isSilenceBefore(clause.cue()) ? SILENCE : 0;
        sum += manner.terse() && clause.begins() ? TERSE + (notes.format() == Format.PLAIN ? TIMED : 0) : 0;
        sum += clause.begins() && isOtherPhase(at, before) ? OTHER_PHASE : 0;
        sum += kind == Segment.Kind.REPLAY && !clause.begins() ? SAME_LOOK : 0;
        return sum >= ENOUGH;
    }

    /** Whether a clause begins with how a rep ended. */
    private boolean isEnding(int at) {
        List<Hit> here = hits.get(at);
        return !here.isEmpty()
                && here.get(0).isEnd()
                && here.get(0).first() - clauses.get(at).first() <= SHORT;
    }

    /** Whether a line goes on with what was said: "and he", "that is why". */
    private boolean goesOn(int at) {
        return GOING_ON.contains(tokens.get(clauses.get(at).first()).key());
    }

    /** Whether a line is joined to what was said of him before: "and he", "but once". */
    private boolean isOfTheSame(int at) {
        int first = clauses.get(at).first();
        return goesOn(at)
                && first + 1 < tokens.size()
                && OF_THE_SAME.contains(tokens.get(first + 1).key());
    }

    /** Whether an end is pointed at as that of the rep before: "that is a sack", "and he gets the hit". */
    private boolean pointsBack(int at) {
        return THIS.contains(tokens.get(clauses.get(at).first()).key()) || isOfTheSame(at);
    }

    /** Whether something is told to have happened in a line, not only wished or denied. */
    private boolean happens(int first) {
        int cue = clauses.get(first).cue();
        for (int i = first; i < clauses.size() && clauses.get(i).cue() == cue; i++) {
            if (!general.isGeneral(i)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the first that is told in a line, which begins with this clause, is where he lines up. */
    private boolean isPlacedFirst(int at) {
        Clause clause = clauses.get(at);
        int next = at;
        while (next < clauses.size()
                && clauses.get(next).cue() == clause.cue()
                && hits.get(next).isEmpty()) {
            next++;
        }
        return clause.begins()
                && next > at
                && next < clauses.size()
                && clauses.get(next).cue() == clause.cue()
                && isPlace(hits.get(next).get(0), clauses.get(next));
    }

    /** Whether the first that is told in a clause is what a blocker did: a rep begins with his set or his block. */
    private boolean isBlockers(int at) {
        return hits.get(at).stream()
                .findFirst()
                .filter(hit -> hit.kind().actor() == Actor.BLOCKER)
                .isPresent();
    }

    /** He lines up; "the three-technique" is somebody who does. */
    private boolean isPlace(Hit hit, Clause clause) {
        return hit.isPlace()
                && hit.first() - clause.first() <= PLACE_WITHIN
                && (hit.first() == 0
                        || !MEN.contains(tokens.get(hit.first() - 1).key()));
    }

    /** A run after a rush, or a rush after a run. */
    private boolean isOtherPhase(int at, SoFar before) {
        return hits.get(at).stream()
                .map(hit -> hit.kind().phase())
                .filter(phase -> !phase.isEmpty())
                .findFirst()
                .filter(phase -> !before.phase().isEmpty() && !phase.equals(before.phase()))
                .isPresent();
    }

    /** Whether a line tells of a rep at all. */
    private boolean tellsOfRep(int first) {
        int cue = clauses.get(first).cue();
        for (int i = first; i < clauses.size() && clauses.get(i).cue() == cue; i++) {
            if (hits.get(i).stream().anyMatch(Hit::tellsOfRep)) {
                return true;
            }
        }
        return false;
    }

    private boolean isSentence(int at) {
        Clause clause = clauses.get(at);
        return clause.begins() || Edges.ends(tokens.get(clause.first() - 1));
    }
}
