package rushlight.notes;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rushlight.words.Token;

/** What the words of a clause mark where they stand: many count only where they lead a line or a sentence. */
final class Markers {
    private static final Set<String> WEIGHTLESS = SmallWords.of("by-the-way");
    private static final Set<String> ARTICLES = SmallWords.of("articles");

    private final List<Token> tokens;
    private final List<Clause> clauses;
    private final ByClause<Cues.Found> cues;
    private final Edges edges;

    Markers(List<Token> tokens, List<Clause> clauses, ByClause<Cues.Found> cues, Edges edges) {
        this.tokens = tokens;
        this.clauses = clauses;
        this.cues = cues;
        this.edges = edges;
    }

    /** "14:52": a time of the game. */
    private boolean isClock(int first) {
        return first + 2 < tokens.size()
                && tokens.get(first).isNumber()
                && tokens.get(first + 1).text().equals(":")
                && tokens.get(first + 2).isNumber();
    }

    /** The part of "2.3" behind its point. */
    static boolean isDecimal(List<Token> tokens, int at) {
        return at > 1
                && tokens.get(at).isNumber()
                && tokens.get(at - 1).text().equals(".")
                && tokens.get(at - 2).isNumber()
                && tokens.get(at - 1).to() == tokens.get(at).from()
                && tokens.get(at - 2).to() == tokens.get(at - 1).from();
    }

    /** "Thirty-one." at the beginning of a line is the number of a play; up to nine it may be a place on the front. */
    boolean isNumbered(int at) {
        Clause clause = clauses.get(at);
        return isCount(clause) && !looksAgain(clause.cue(), at);
    }

    private boolean isCount(Clause clause) {
        Token number = tokens.get(clause.first());
        if (clause.begins() && isClock(clause.first())) {
            return true;
        }
        boolean alone = clause.first() + 1 >= tokens.size()
                || !tokens.get(clause.first() + 1).word();
        return clause.begins() && alone && number.isNumber() && number.key().length() > 1;
    }

    /** Whether the same words are listed as marking nothing: "the running back" is no look at the rep. */
    private boolean isDenied(Cues.Found cue, int clause) {
        Cues.Act denial = cue.act() == Cues.Act.REPLAY ? Cues.Act.NOT_REPLAY : Cues.Act.NOT_BOUNDARY;
        return cues.of(clause).stream().anyMatch(other -> other.act() == denial && other.first() == cue.first());
    }

    /** "If you wrong-arm the first one": what is counted is somebody in the middle of a sentence. */
    private boolean isObject(Cues.Found cue, Clause clause) {
        return !clause.spoken()
                && cue.first() > 0
                && ARTICLES.contains(tokens.get(cue.first() - 1).key())
                && edges.wordsBefore(cue.first()) > Openings.SHORT - 1;
    }

    private boolean isComma(int token) {
        return token < tokens.size() && tokens.get(token).text().equals(",");
    }

    /** "Okay, run" begins with the run. */
    private boolean isNothing(int from, int to) {
        return tokens.subList(from, to).stream().allMatch(token -> !token.word() || WEIGHTLESS.contains(token.key()));
    }

    /** Whether a line goes on with another look. */
    private boolean looksAgain(int cue, int from) {
        for (int i = from; i < clauses.size() && clauses.get(i).cue() == cue; i++) {
            if (cues.of(i).stream().anyMatch(found -> found.act() == Cues.Act.REPLAY)) {
                return true;
            }
        }
        return false;
    }

    /** What the words of a whole line mark, from a clause that begins it. */
    Set<Cues.Act> ofLine(int first, boolean told, boolean none) {
        Set<Cues.Act> said = EnumSet.noneOf(Cues.Act.class);
        int cue = clauses.get(first).cue();
        for (int i = first; i < clauses.size() && clauses.get(i).cue() == cue; i++) {
            said.addAll(of(i, told, none));
        }
        return said;
    }

    /**
     * What the words of a clause mark.
     *
     * @param told whether something was told of the rep before
     * @param none whether there is no rep before
     */
    Set<Cues.Act> of(int clause, boolean told, boolean none) {
        Set<Cues.Act> said = EnumSet.noneOf(Cues.Act.class);
        Clause own = clauses.get(clause);
        for (Cues.Found cue : cues.of(clause)) {
            if (isDenied(cue, clause) || (cue.act() == Cues.Act.BOUNDARY && isObject(cue, own))) {
                continue;
            }
            boolean alone = cue.end() >= tokens.size() || !tokens.get(cue.end()).word();
            boolean sentence = edges.isSentence(clause) && isNothing(own.first(), cue.first());
            boolean begins = own.begins() && sentence;
            boolean counts = switch (cue.value()) {
                case "first" -> begins && alone;
                case "count" -> begins && alone && !looksAgain(own.cue(), clause);
                case "begins" -> begins;
                case "sentence" -> sentence;
                case "remark" -> sentence && alone && !isComma(cue.end());
                case "told" -> begins && told;
                case "leads" -> edges.wordsBefore(cue.first()) <= Openings.SHORT;
                case "number" ->
                    begins && cue.end() < tokens.size() && tokens.get(cue.end()).isNumber();
                default -> true;
            };
            if (counts
                    && (cue.act() != Cues.Act.OPENER
                            || (none && own.spoken())
                            || cue.first() - own.first() <= Openings.SHORT)) {
                said.add(cue.act());
            }
        }
        return said;
    }
}
