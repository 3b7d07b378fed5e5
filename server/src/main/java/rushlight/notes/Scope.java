package rushlight.notes;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.words.Token;

/** How far words that deny, wish, doubt or command reach in their clause. */
final class Scope {
    private static final int REACH = 8;
    private static final int REACH_SPOKEN = 6;
    private static final int REACH_IF = 14;
    private static final int REACH_LIST = 18;
    private static final int BACK = 5;
    private static final int SHORT_FORM = 3;
    private static final Set<String> THEN = SmallWords.of("and-then");
    private static final String NOT = "not";
    private static final String NOW = "now";
    private static final Set<String> LEADS = SmallWords.of("now");
    private static final Set<String> VERBS = SmallWords.of("order");
    private static final Set<String> OBJECTS = SmallWords.of("order-object");
    private static final Set<Cues.Act> ONE = EnumSet.of(Cues.Act.NEG, Cues.Act.UNC);
    /** What is wished or doubted is so even where the words belong to the name: "could have pulled him". */
    private static final Set<Cues.Act> OPEN = EnumSet.of(Cues.Act.HYP, Cues.Act.WANT, Cues.Act.UNC);

    private static final Set<Cues.Act> LISTED = EnumSet.of(Cues.Act.NEG, Cues.Act.WANT);
    private static final Set<String> NOES = SmallWords.of("noes");
    private static final Set<Cues.Act> DENIALS = EnumSet.of(Cues.Act.NEG, Cues.Act.FAKE, Cues.Act.ATTEMPT);
    private static final List<String> FORMS = List.of("s", "ed");

    private final List<Token> tokens;
    private final Nearby nearby;
    private final List<Terms.Place> here;
    private final Listing list;

    /**
     * @param here where words of the clause mean a term
     */
    Scope(List<Token> tokens, Nearby nearby, List<Terms.Place> here) {
        this.tokens = tokens;
        this.nearby = nearby;
        this.here = here;
        this.list = new Listing(tokens, here);
    }

    /** Whether a cue says something of a term in the same clause. */
    boolean reaches(Cues.Found cue, Hit hit, Clause clause) {
        boolean order = cue.value().equals(Cues.ORDER);
        if (cue.first() == hit.first() && cue.end() < hit.end() && OPEN.contains(cue.act())) {
            return true;
        }
        if (!clause.holds(cue.first()) || (!order && cue.first() >= hit.first() && cue.end() <= hit.end())) {
            return false;
        }
        if (order) {
            return isOrder(cue.first(), clause) && hit.end() > cue.end() && hit.first() - cue.end() < REACH;
        }
        if (cue.act() == Cues.Act.NEG && (isOfTerm(cue, hit) || deniesItself(cue, hit))) {
            return false;
        }
        if (cue.value().equals("joined")) {
            return hit.end() == cue.first();
        }
        if (cue.first() < hit.first() && hit.first() < cue.end()) {
            return cue.act() != Cues.Act.PSEUDO;
        }
        boolean ends = cue.end() >= tokens.size() || !tokens.get(cue.end()).word();
        if (cue.value().equals("before") || (cue.value().equals("ends") && ends)) {
            boolean last = cue.end() == clause.end();
            return hit.end() <= cue.first()
                    && cue.first() - hit.end() < BACK
                    && (last || !nearby.isCut(hit.end(), cue.first()));
        }
        if (nearby.isCut(cue.end(), hit.first())) {
            return goesOnTo(hit, cue);
        }
        if (DENIALS.contains(cue.act()) && actsAnew(cue, hit)) {
            return false;
        }
        if (clause.spoken() && ONE.contains(cue.act()) && isSpent(cue, hit, clause)) {
            return false;
        }
        int reach = cue.value().equals("far") ? REACH_IF : clause.spoken() ? REACH_SPOKEN : REACH;
        return cue.end() <= hit.first() && hit.first() - cue.end() < reach && cue.act() != Cues.Act.PSEUDO;
    }

    /** "Needs anchor, better hands and a plan": what is denied or wished of the first in a list is so of the others. */
    private boolean goesOnTo(Hit hit, Cues.Found cue) {
        return LISTED.contains(cue.act())
                && hit.first() - cue.end() < REACH_LIST
                && list.head(cue, hit)
                        .filter(head -> !nearby.isCut(cue.first(), head.first()))
                        .filter(head -> list.to(hit, head)
                                .filter(join -> isListed(hit, cue, head, join))
                                .isPresent())
                        .isPresent();
    }

    /**
     * Whether an item is denied or wished with the first: an "or" goes on with what has the same form; without one, things and traits
     * do, but no end, place or fault is: "no counter, stonewalled".
     */
    private boolean isListed(Hit hit, Cues.Found cue, Terms.Place head, Listing.Join join) {
        if (join == Listing.Join.OR) {
            return !hit.kind().step() || form(head.first()).equals(form(hit.first()));
        }
        boolean closed = cue.act() == Cues.Act.WANT || (join == Listing.Join.AND && !endsWithNot(cue));
        boolean fault = hit.isFault() && !list.isBetter(hit);
        return closed && list.isThing(hit) && !hit.isEnd() && !hit.isPlace() && !fault;
    }

    /** The term that denies itself and begins a list, "no bend or anchor", which goes on to this one; none where there is none. */
    Optional<Terms.Place> deniedWith(Hit hit) {
        return here.stream()
                .filter(place -> place.end() <= hit.first()
                        && place.terms().get(0).sense().absent())
                .filter(place -> list.to(hit, place)
                        .filter(join -> join == Listing.Join.OR)
                        .isPresent())
                .findFirst();
    }

    /** The ending of a verb as it is told, "rips", "chipped"; empty where a word has none. */
    private String form(int token) {
        String key = tokens.get(token).key();
        return key.length() > SHORT_FORM
                ? FORMS.stream().filter(key::endsWith).findFirst().orElse("")
                : "";
    }

    private boolean endsWithNot(Cues.Found cue) {
        return tokens.get(cue.end() - 1).key().equals(NOT);
    }

    /** "Nobody is there, no pressure": what says no by itself is not turned round by another no. */
    private boolean deniesItself(Cues.Found cue, Hit hit) {
        return cue.end() <= hit.first() && NOES.contains(tokens.get(hit.first()).key());
    }

    /** "Never threatens the edge" is a fault of its own, and denies nothing behind it. */
    private boolean isOfTerm(Cues.Found cue, Hit hit) {
        return here.stream().anyMatch(term -> term.holds(cue.first(), cue.end()) && term.end() <= hit.first());
    }

    /** A command stands at the beginning of its sentence, or behind a "now"; without marks nobody can tell. */
    private boolean isOrder(int at, Clause clause) {
        int first = at > clause.first() && tokens.get(at - 1).key().equals(NOW) ? at - 1 : at;
        return first == clause.first() && !clause.spoken() && (clause.begins() || Edges.ends(tokens.get(first - 1)));
    }

    /** Without marks, what is denied or doubted is the next term only, unless an "or" goes on with it. */
    private boolean isSpent(Cues.Found cue, Hit hit, Clause clause) {
        return here.stream().anyMatch(other -> other.first() >= cue.end() && other.end() <= hit.first())
                && tokens.subList(cue.end(), clause.end()).stream()
                        .noneMatch(token -> Nearby.LISTS.contains(token.key()));
    }

    /** "Does not bite and sets the edge", "fakes it and goes outside": what he does then, in a form of its own, he does. */
    private boolean actsAnew(Cues.Found cue, Hit hit) {
        boolean verb = cue.act() != Cues.Act.NEG || endsWithNot(cue);
        return verb
                && !form(hit.first()).isEmpty()
                && hit.first() > cue.end()
                && THEN.contains(tokens.get(hit.first() - 1).key());
    }

    /** "Chop it", "now take the inside": a bare verb that leads its sentence, and goes on with what it is done to or only commands. */
    boolean isCommand(Hit hit, Clause clause) {
        int lead = hit.first();
        while (lead > clause.first() && LEADS.contains(tokens.get(lead - 1).key())) {
            lead--;
        }
        if (!isOrder(lead, clause)
                || hit.kind().actor() != Actor.PROSPECT
                || !hit.kind().step()) {
            return false;
        }
        String verb = tokens.get(hit.first()).key();
        int next = hit.first() + 1;
        return VERBS.contains(verb)
                || (next < tokens.size()
                        && FORMS.stream().noneMatch(verb::endsWith)
                        && OBJECTS.contains(tokens.get(next).key()));
    }
}
