package rushlight.notes;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.words.Token;

/** Says of a term in its clause how it was meant, who did it, where and how well. */
final class Attributes {
    private static final int REACH = 8;
    private static final int REACH_SPOKEN = 6;
    private static final int REACH_IF = 14;
    private static final int BACK = 5;
    private static final int STEPS_TO = 5;
    private static final int RESULT = 6;
    private static final int FAULT = 11;
    private static final int SHORT_FORM = 3;
    private static final int TRAIT = 10;
    private static final String BALL = "ball";
    private static final Set<String> THEN = SmallWords.of("and-then");
    private static final Set<String> WHERE = SmallWords.of("where");
    private static final Set<Cues.Act> ONE = EnumSet.of(Cues.Act.NEG, Cues.Act.UNC);
    private static final List<String> FORMS = List.of("s", "ed");

    private final List<Token> tokens;
    private final List<Cues.Found> asserting;
    private final List<Cues.Found> naming;
    private final Nearby nearby;
    private final List<Terms.Place> here;
    private final Optional<Boolean> answer;

    /** The cues that begin in one clause. */
    Attributes(List<Token> tokens, List<Cues.Found> asserting, List<Cues.Found> naming, List<Cues.Found> showing) {
        this(tokens, asserting, naming, new Nearby(tokens, showing), List.of(), Optional.empty());
    }

    private Attributes(
            List<Token> tokens,
            List<Cues.Found> asserting,
            List<Cues.Found> naming,
            Nearby nearby,
            List<Terms.Place> here,
            Optional<Boolean> answer) {
        this.here = here;
        this.answer = answer;
        this.tokens = tokens;
        this.asserting = asserting;
        this.naming = naming;
        this.nearby = nearby;
    }

    /** The same, with the places of the clause where words mean a term, and what is answered where it asks. */
    Attributes with(List<Terms.Place> places, Optional<Boolean> answered) {
        return new Attributes(tokens, asserting, naming, nearby, places, answered);
    }

    /** Who is said to act before these tokens; none where nobody is named. */
    Optional<Cues.Found> subject(int first) {
        return naming.stream()
                .filter(name -> name.end() <= first && !nearby.isCut(name.end(), first))
                .findFirst();
    }

    /** Who is named first in the clause before these tokens, whatever stands between; none where nobody is. */
    Optional<Cues.Found> named(int first) {
        return naming.stream().filter(name -> name.end() <= first).findFirst();
    }

    /** Whether somebody is named there. */
    boolean names(int token) {
        return naming.stream().anyMatch(name -> name.first() <= token && token < name.end());
    }

    Mention mention(Hit hit, Clause clause, Segment.Kind segment) {
        List<String> because = new ArrayList<>();
        Assertion assertion = assertion(hit, clause, segment, because);
        Actor actor = actor(hit, because);
        Optional<String> side = hit.term().side().isEmpty() && hit.kind().step()
                ? nearby.of(hit, Cues.Act.SIDE)
                : Optional.of(hit.term().side()).filter(s -> !s.isEmpty());
        boolean check = !because.isEmpty() || hit.term().band() == Band.CHECK;
        Band band = hit.term().band() == Band.WEAK ? Band.WEAK : check ? Band.CHECK : Band.SURE;
        return new Mention(
                hit.term().slug(),
                assertion,
                actor,
                side,
                hit.kind().step() ? nearby.of(hit, Cues.Act.HAND) : Optional.empty(),
                0,
                nearby.opinion(hit, clause),
                "",
                hit.from(),
                hit.to(),
                band,
                because);
    }

    private Assertion assertion(Hit hit, Clause clause, Segment.Kind segment, List<String> because) {
        Set<Cues.Act> acts = EnumSet.noneOf(Cues.Act.class);
        boolean stop = false;
        for (Cues.Found cue : asserting) {
            if (reaches(cue, hit, clause)) {
                acts.add(cue.act());
                stop |= cue.value().equals("stop");
                if (cue.act() != Cues.Act.PSEUDO && cue.act() != Cues.Act.ASK) {
                    because.add(
                            cue.act().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + ": " + words(cue));
                }
            }
        }
        if (answer.isPresent()) {
            because.add(answer.get() ? "asked and affirmed" : "asked and denied");
            return answer.get() ? Assertion.PERFORMED : Assertion.NOT_PERFORMED;
        }
        boolean act = hit.kind().rank() <= STEPS_TO || hit.kind().rank() == FAULT;
        if (stop && act) {
            return Assertion.TENDENCY;
        }
        if (acts.contains(Cues.Act.UNC)) {
            return Assertion.UNCERTAIN;
        }
        if (acts.contains(Cues.Act.HYP)) {
            return Assertion.HYPOTHETICAL;
        }
        if (acts.contains(Cues.Act.WANT) && !isOfAnother(hit) && hit.kind().actor() == Actor.PROSPECT) {
            return Assertion.WANTED;
        }
        boolean failed = acts.contains(Cues.Act.ATTEMPT) && hit.kind().rank() == RESULT;
        if (acts.contains(Cues.Act.NEG) || acts.contains(Cues.Act.FAKE) || failed) {
            return Assertion.NOT_PERFORMED;
        }
        if (acts.contains(Cues.Act.TEND) && hit.kind().rank() != TRAIT) {
            return Assertion.TENDENCY;
        }
        if (clause.question() && asserting.stream().anyMatch(cue -> cue.act() == Cues.Act.ASK)) {
            because.add("asked, not said");
            return Assertion.UNCERTAIN;
        }
        return segment == Segment.Kind.SUMMARY && act ? Assertion.TENDENCY : Assertion.PERFORMED;
    }

    private boolean reaches(Cues.Found cue, Hit hit, Clause clause) {
        boolean order = cue.value().equals(Cues.ORDER);
        if (!clause.holds(cue.first()) || (!order && cue.first() >= hit.first() && cue.end() <= hit.end())) {
            return false;
        }
        if (order) {
            return isOrder(cue.first(), clause) && hit.end() > cue.end() && hit.first() - cue.end() < REACH;
        }
        if (cue.act() == Cues.Act.NEG && isOfTerm(cue, hit)) {
            return false;
        }
        boolean ends = cue.end() >= tokens.size() || !tokens.get(cue.end()).word();
        if (cue.value().equals("before") || (cue.value().equals("ends") && ends)) {
            boolean last = cue.end() == clause.end();
            return hit.end() <= cue.first()
                    && cue.first() - hit.end() < BACK
                    && (last || !nearby.isCut(hit.end(), cue.first()));
        }
        if (nearby.isCut(cue.end(), hit.first())) {
            return false;
        }
        if (EnumSet.of(Cues.Act.NEG, Cues.Act.FAKE, Cues.Act.ATTEMPT).contains(cue.act()) && actsAnew(cue, hit)) {
            return false;
        }
        if (clause.spoken() && ONE.contains(cue.act()) && isSpent(cue, hit, clause)) {
            return false;
        }
        int reach = cue.value().equals("far") ? REACH_IF : clause.spoken() ? REACH_SPOKEN : REACH;
        return cue.end() <= hit.first() && hit.first() - cue.end() < reach && cue.act() != Cues.Act.PSEUDO;
    }

    /** "Never threatens the edge" is a fault of its own, and denies nothing behind it. */
    private boolean isOfTerm(Cues.Found cue, Hit hit) {
        return here.stream().anyMatch(term -> term.holds(cue.first(), cue.end()) && term.end() <= hit.first());
    }

    /** A command stands at the beginning of its sentence; without marks nobody can tell. */
    private boolean isOrder(int first, Clause clause) {
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
        String key = tokens.get(hit.first()).key();
        boolean form = key.length() > SHORT_FORM && FORMS.stream().anyMatch(key::endsWith);
        boolean verb =
                cue.act() != Cues.Act.NEG || tokens.get(cue.end() - 1).key().equals("not");
        return verb
                && form
                && hit.first() > cue.end()
                && THEN.contains(tokens.get(hit.first() - 1).key());
    }

    /** Whether the words speak of another rep: "like the one before, where he spun". */
    boolean isOfAnotherRep(Hit hit, Clause clause, Attributes before) {
        return asserting.stream().anyMatch(cue -> cue.act() == Cues.Act.OTHER_REP && reaches(cue, hit, clause))
                || (WHERE.contains(tokens.get(clause.first()).key())
                        && before.asserting.stream().anyMatch(cue -> cue.act() == Cues.Act.OTHER_REP));
    }

    /** What takes back what was said before; none where nothing does. */
    Optional<Cues.Found> retraction(Clause clause) {
        return asserting.stream()
                .filter(cue -> cue.act() == Cues.Act.RETRACT)
                .filter(cue -> !cue.value().equals("mark")
                        || (cue.first() == clause.first()
                                && cue.end() < tokens.size()
                                && !tokens.get(cue.end()).word()))
                .findFirst();
    }

    private String words(Cues.Found cue) {
        return tokens.subList(cue.first(), cue.end()).stream().map(Token::key).collect(Collectors.joining(" "));
    }

    private Actor actor(Hit hit, List<String> because) {
        Optional<Cues.Found> subject = subject(hit.first());
        if (naming.stream()
                .anyMatch(name -> name.act() == Cues.Act.OTHER
                        && !name.value().equals(BALL)
                        && name.first() <= hit.first()
                        && hit.first() < name.end())) {
            return Actor.OTHER;
        }
        if (hit.kind().actor() == Actor.PROSPECT
                && subject.filter(s -> s.act() == Cues.Act.OTHER
                                && !(s.value().equals(BALL) && hit.kind().rank() == RESULT))
                        .isPresent()) {
            because.add("who acts: " + words(subject.get()));
            return Actor.OTHER;
        }
        return hit.kind().actor();
    }

    /** Somebody else has to: nobody wishes it of the player. */
    private boolean isOfAnother(Hit hit) {
        return subject(hit.first()).filter(s -> s.act() == Cues.Act.OTHER).isPresent();
    }
}
