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
    private static final int STEPS_TO = 5;
    private static final int RESULT = 6;
    private static final int TRAIT = 10;
    private static final String RUSH = "pass-rush";
    private static final Set<String> ARTICLES = SmallWords.of("definite");
    private static final Set<String> PREPOSITIONS = SmallWords.of("prepositions");
    private static final Set<String> WHERE = SmallWords.of("where");

    private final List<Token> tokens;
    private final List<Cues.Found> asserting;
    private final List<Cues.Found> naming;
    private final Nearby nearby;
    private final Scope scope;
    private final Optional<Boolean> answer;

    /** The cues that begin in one clause. */
    Attributes(List<Token> tokens, List<Cues.Found> asserting, List<Cues.Found> naming, List<Cues.Found> showing) {
        this(tokens, asserting, naming, new Nearby(tokens, showing, List.of()), List.of(), Optional.empty());
    }

    private Attributes(
            List<Token> tokens,
            List<Cues.Found> asserting,
            List<Cues.Found> naming,
            Nearby nearby,
            List<Terms.Place> here,
            Optional<Boolean> answer) {
        this.scope = new Scope(tokens, nearby, here);
        this.answer = answer;
        this.tokens = tokens;
        this.asserting = asserting;
        this.naming = naming;
        this.nearby = nearby;
    }

    /** The same, with the places of the clause where words mean a term, and what is answered where it asks, or denied behind it. */
    Attributes with(List<Terms.Place> places, Optional<Boolean> answered) {
        return new Attributes(tokens, asserting, naming, nearby.among(places), places, answered);
    }

    /** Who is said to act before these tokens; none where nobody is named. */
    Optional<Cues.Found> subject(int first) {
        return naming.stream()
                .filter(name -> name.end() <= first && !nearby.isCut(name.end(), first) && !isObject(name))
                .findFirst();
    }

    /** Who is named first in the clause before these tokens, whatever stands between; none where nobody is. */
    Optional<Cues.Found> named(int first) {
        return naming.stream()
                .filter(name -> name.end() <= first && !isObject(name))
                .findFirst();
    }

    /** "Outside the tackle": he is only where somebody else goes. */
    private boolean isObject(Cues.Found name) {
        int before = name.first() - 1;
        while (before > 0 && ARTICLES.contains(tokens.get(before).key())) {
            before--;
        }
        return before >= 0 && PREPOSITIONS.contains(tokens.get(before).key());
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
                ? nearby.side(hit)
                : Optional.of(hit.term().side()).filter(s -> !s.isEmpty());
        boolean rush = hit.kind().step() && hit.kind().phase().equals(RUSH);
        boolean check = !because.isEmpty() || hit.term().band() == Band.CHECK;
        Band band = hit.term().band() == Band.WEAK ? Band.WEAK : check ? Band.CHECK : Band.SURE;
        return new Mention(
                hit.term().slug(),
                assertion,
                actor,
                side,
                rush ? nearby.hand(hit) : Optional.empty(),
                nearby.target(hit),
                0,
                opinion(hit, clause, assertion),
                "",
                hit.from(),
                hit.to(),
                band,
                because);
    }

    /** What the words beside it say; where they say nothing, "long" is praise and "late off the ball" is blame. */
    private int opinion(Hit hit, Clause clause, Assertion assertion) {
        int said = nearby.opinion(hit, clause);
        return said == 0 && assertion == Assertion.PERFORMED ? hit.kind().judged() : said;
    }

    private Assertion assertion(Hit hit, Clause clause, Segment.Kind segment, List<String> because) {
        Set<Cues.Act> acts = EnumSet.noneOf(Cues.Act.class);
        boolean stop = false;
        for (Cues.Found cue : asserting) {
            if (scope.reaches(cue, hit, clause)) {
                acts.add(cue.act());
                stop |= cue.value().equals("stop");
                if (cue.act() != Cues.Act.PSEUDO && cue.act() != Cues.Act.ASK) {
                    because.add(
                            cue.act().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + ": " + words(cue));
                }
            }
        }
        if (answer.isPresent()) {
            because.add(answered(clause, answer.get()));
            return answer.get() ? Assertion.PERFORMED : Assertion.NOT_PERFORMED;
        }
        boolean act = hit.kind().rank() <= STEPS_TO || hit.isFault();
        if (stop && act) {
            return Assertion.TENDENCY;
        }
        if (acts.contains(Cues.Act.UNC)) {
            return Assertion.UNCERTAIN;
        }
        if (acts.contains(Cues.Act.HYP)) {
            return Assertion.HYPOTHETICAL;
        }
        if (scope.isCommand(hit, clause)) {
            because.add("a command");
            return Assertion.WANTED;
        }
        if (acts.contains(Cues.Act.WANT) && !isOfAnother(hit) && hit.kind().actor() == Actor.PROSPECT) {
            return Assertion.WANTED;
        }
        boolean failed = acts.contains(Cues.Act.ATTEMPT) && hit.kind().rank() == RESULT;
        if (acts.contains(Cues.Act.NEG)
                || acts.contains(Cues.Act.FAKE)
                || failed
                || hit.term().sense().absent()
                || isDeniedInList(hit, because)) {
            return Assertion.NOT_PERFORMED;
        }
        if (acts.contains(Cues.Act.TEND) && hit.kind().rank() != TRAIT) {
            return Assertion.TENDENCY;
        }
        boolean asks = asserting.stream().anyMatch(cue -> cue.act() == Cues.Act.ASK);
        if (clause.question() && (asks || clause.end() - clause.first() <= hit.end() - hit.first() + 1)) {
            because.add("asked, not said");
            return Assertion.UNCERTAIN;
        }
        return segment == Segment.Kind.SUMMARY && act ? Assertion.TENDENCY : Assertion.PERFORMED;
    }

    private static String answered(Clause clause, boolean yes) {
        if (!clause.question()) {
            return "denied behind it";
        }
        return yes ? "asked and affirmed" : "asked and denied";
    }

    private boolean isDeniedInList(Hit hit, List<String> because) {
        Optional<Terms.Place> head = scope.deniedWith(hit);
        head.ifPresent(place -> because.add("neg: " + words(place.first(), place.end())));
        return head.isPresent();
    }

    /** Whether the words speak of another rep: "like the one before, where he spun". */
    boolean isOfAnotherRep(Hit hit, Clause clause, Attributes before) {
        return asserting.stream().anyMatch(cue -> cue.act() == Cues.Act.OTHER_REP && scope.reaches(cue, hit, clause))
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
        return words(cue.first(), cue.end());
    }

    private String words(int from, int to) {
        return tokens.subList(from, to).stream().map(Token::key).collect(Collectors.joining(" "));
    }

    private Actor actor(Hit hit, List<String> because) {
        Optional<Cues.Found> subject = subject(hit.first()).or(() -> before(hit));
        if (naming.stream()
                .anyMatch(name -> name.isSomebodyElse() && name.first() <= hit.first() && hit.first() < name.end())) {
            return Actor.OTHER;
        }
        if (hit.kind().actor() == Actor.PROSPECT
                && subject.filter(s -> s.act() == Cues.Act.OTHER
                                && (s.isSomebodyElse() || hit.kind().rank() != RESULT))
                        .isPresent()) {
            because.add("who acts: " + words(subject.get()));
            return Actor.OTHER;
        }
        return hit.kind().actor();
    }

    /** "The safety fills, tackle": what follows the comma is the end of what he does. */
    private Optional<Cues.Found> before(Hit hit) {
        int comma = hit.first() - 1;
        return hit.kind().rank() == RESULT
                        && comma >= 0
                        && tokens.get(comma).text().equals(",")
                ? subject(comma).filter(Cues.Found::isSomebodyElse)
                : Optional.empty();
    }

    /** Somebody else has to: nobody wishes it of the player. */
    private boolean isOfAnother(Hit hit) {
        return subject(hit.first()).filter(s -> s.act() == Cues.Act.OTHER).isPresent();
    }
}
