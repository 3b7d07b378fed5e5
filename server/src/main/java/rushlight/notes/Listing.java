package rushlight.notes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.words.Token;

/** Lists of terms in a clause: "bend, anchor, or a counter". What denies or wishes the first speaks of the others too. */
final class Listing {
    /** What holds a list together: the strongest of its joins. */
    enum Join {
        COMMA,
        AND,
        OR
    }

    private static final Set<String> AND = SmallWords.of("list-and");
    private static final Set<String> LEADS = SmallWords.of("item-leads");
    private static final Set<String> TAILS = SmallWords.of("item-tails");
    private static final Set<String> THINGS = SmallWords.of("item-things");
    private static final Set<String> BETTER = SmallWords.of("item-better");

    /** So many words may be an item that is no term: "no sack, nothing at all, or hurry". */
    private static final int UNKNOWN = 3;

    private final List<Token> tokens;
    private final List<Terms.Place> here;

    /**
     * @param here where words of the clause mean a term, in the order of the text
     */
    Listing(List<Token> tokens, List<Terms.Place> here) {
        this.tokens = tokens;
        this.here = here;
    }

    /** The first term that a word speaks of, where this one may be a later one of a list; none where there is no other. */
    Optional<Terms.Place> head(Cues.Found cue, Hit hit) {
        return here.stream()
                .filter(place -> place.first() >= cue.first() && place.end() > cue.end() && place.end() <= hit.first())
                .findFirst();
    }

    /** How the list that begins with a term goes on to another one, and to its end; none where there is no such list. */
    Optional<Join> to(Hit hit, Terms.Place head) {
        Optional<Join> strongest = Optional.empty();
        int at = head.end();
        for (Terms.Place item : here) {
            if (item.first() >= at) {
                Optional<Join> join = between(at, item.first());
                if (join.isEmpty()) {
                    break;
                }
                strongest = strongest.filter(j -> j.compareTo(join.get()) > 0).or(() -> join);
                at = item.end();
            }
        }
        if (at < hit.end() || runsOn(hit)) {
            return Optional.empty();
        }
        return opensOr(at) ? Optional.of(Join.OR) : strongest;
    }

    /** Whether an "or" goes on with something that is no term. */
    private boolean opensOr(int at) {
        int next = at < tokens.size() && tokens.get(at).text().equals(",") ? at + 1 : at;
        return next < tokens.size() && isOr(next);
    }

    /** Whether more of something is spoken of: "better pad level". */
    boolean isBetter(Hit hit) {
        return hit.first() > 0 && BETTER.contains(tokens.get(hit.first() - 1).key());
    }

    /** Whether a term stands there as a thing: "a spin", "better hands", "anchor". */
    boolean isThing(Hit hit) {
        String first = tokens.get(hit.first()).key();
        return !hit.kind().step()
                || LEADS.contains(first)
                || isBetter(hit)
                || THINGS.contains(first)
                || (hit.first() > 0
                        && LEADS.contains(tokens.get(hit.first() - 1).key()));
    }

    private boolean isOr(int token) {
        return Nearby.LISTS.contains(tokens.get(token).key());
    }

    private Optional<Join> between(int from, int to) {
        int i = from;
        Optional<Join> join = Optional.empty();
        if (i < to && tokens.get(i).text().equals(",")) {
            join = Optional.of(Join.COMMA);
            i++;
            int or = i;
            while (or < to && or - i <= UNKNOWN && tokens.get(or).word() && !isOr(or)) {
                or++;
            }
            i = or < to && isOr(or) ? or : i;
        }
        if (i < to && (isOr(i) || AND.contains(tokens.get(i).key()))) {
            join = Optional.of(isOr(i) ? Join.OR : Join.AND);
            i++;
        }
        boolean leads = tokens.subList(i, to).stream()
                .allMatch(token -> LEADS.contains(token.key()) || BETTER.contains(token.key()));
        return leads ? join : Optional.empty();
    }

    /** Whether something is said of a term behind it, so that it is no item: "a counter, the rip is fine". */
    private boolean runsOn(Hit hit) {
        if (hit.end() >= tokens.size() || !tokens.get(hit.end()).word()) {
            return false;
        }
        String next = tokens.get(hit.end()).key();
        return !isOr(hit.end()) && !AND.contains(next) && !TAILS.contains(next);
    }
}
