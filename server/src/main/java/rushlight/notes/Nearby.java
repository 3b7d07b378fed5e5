package rushlight.notes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.words.Token;

/** What stands right beside a term in its clause: a side, a hand, a word of praise or blame. */
final class Nearby {
    static final Set<String> LISTS = SmallWords.of("or");

    private static final int AFTER = 3;
    private static final int BEFORE = 2;
    private static final int HAND_AFTER = 6;
    private static final int OPINION_NEAR = 3;
    private static final Set<String> ARTICLES = SmallWords.of("definite");
    private static final Set<String> MEANS = SmallWords.of("by-means");
    private static final Set<String> LINKS = SmallWords.of("links");

    private final List<Token> tokens;
    private final List<Cues.Found> showing;
    private final List<Terms.Place> here;

    /**
     * @param showing what such words stand in the clause
     * @param here where words of the clause mean a term
     */
    Nearby(List<Token> tokens, List<Cues.Found> showing, List<Terms.Place> here) {
        this.tokens = tokens;
        this.showing = showing;
        this.here = here;
    }

    /** The same, with the places of the clause where words mean a term. */
    Nearby among(List<Terms.Place> places) {
        return new Nearby(tokens, showing, places);
    }

    /** The side, by the words nearest to it; those that name a part of the body or belong to another term say nothing of it. */
    Optional<String> side(Hit hit) {
        return showing.stream()
                .filter(cue -> cue.act() == Cues.Act.SIDE && !isNoSide(cue) && !isOfAnother(cue, hit) && !isOfBody(cue))
                .filter(cue -> isIn(cue, hit)
                        || isBefore(cue, hit)
                        || (isAfter(cue, hit, AFTER) && !isCut(hit.end(), cue.first()))
                        || (isAfter(cue, hit, HAND_AFTER) && isAlone(cue) && !isStepBetween(hit.end(), cue.first())))
                .min(Comparator.comparingInt(cue -> distance(cue, hit)))
                .map(Cues.Found::value)
                .or(() -> sideBefore(hit));
    }

    /** "Right under the chin" is no side. */
    private boolean isNoSide(Cues.Found side) {
        return showing.stream().anyMatch(cue -> cue.act() == Cues.Act.NOT_SIDE && cue.first() == side.first());
    }

    /** "Comes inside with the rip", "inside counter, arm over": how he goes there, he does on that side. */
    private Optional<String> sideBefore(Hit hit) {
        int end = linked(hit.first());
        int last = end > 0 && tokens.get(end - 1).text().equals(",") ? end - 1 : end;
        return here.stream()
                .filter(place -> place.end() == last)
                .map(place -> place.terms().get(0).side())
                .filter(side -> !side.isEmpty())
                .findFirst();
    }

    /** His own hand: "rips with the inside arm", "long arm, inside arm". */
    Optional<String> hand(Hit hit) {
        return hands(hit).filter(cue -> !isTarget(cue, hit)).map(Cues.Found::value);
    }

    /** The other man's hand or arm: "chops the outside hand". */
    Optional<String> target(Hit hit) {
        return hands(hit).filter(cue -> isTarget(cue, hit)).map(Cues.Found::value);
    }

    private Optional<Cues.Found> hands(Hit hit) {
        return showing.stream()
                .filter(cue -> cue.act() == Cues.Act.HAND && !isOfAnother(cue, hit))
                .filter(cue -> (isIn(cue, hit) && cue.first() > hit.first())
                        || isBefore(cue, hit)
                        || (isAfter(cue, hit, HAND_AFTER)
                                && !isStepBetween(hit.end(), cue.first())
                                && (!isCut(hit.end(), cue.first()) || isAlone(cue))))
                .min(Comparator.comparingInt(cue -> distance(cue, hit)));
    }

    /** A move against hands goes for the one named right behind it, unless that is what he does it with. */
    private boolean isTarget(Cues.Found cue, Hit hit) {
        int before = cue.first() - 1;
        boolean named =
                before >= hit.first() && ARTICLES.contains(tokens.get(before).key());
        while (before >= hit.end() && ARTICLES.contains(tokens.get(before).key())) {
            before--;
        }
        return hit.term().onHand()
                && named
                && !MEANS.contains(tokens.get(before).key());
    }

    private static boolean isIn(Cues.Found cue, Hit hit) {
        return cue.first() >= hit.first() && cue.end() <= hit.end();
    }

    private static boolean isAfter(Cues.Found cue, Hit hit, int reach) {
        return cue.first() >= hit.end() && cue.first() - hit.end() < reach;
    }

    private boolean isBefore(Cues.Found cue, Hit hit) {
        int first = Math.max(linked(hit.first()), Math.min(cue.end(), hit.first()));
        return cue.end() <= first && first - cue.end() < BEFORE && !isCut(cue.end(), first);
    }

    /** Where the words begin that only link a term to what stands before it. */
    private int linked(int first) {
        int from = first;
        while (from > 0 && LINKS.contains(tokens.get(from - 1).key())) {
            from--;
        }
        return from;
    }

    /** Whether nothing else stands between two marks: "long arm, inside arm." */
    private boolean isAlone(Cues.Found cue) {
        return !tokens.get(cue.first() - 1).word()
                && (cue.end() >= tokens.size() || !tokens.get(cue.end()).word());
    }

    private boolean isOfAnother(Cues.Found cue, Hit hit) {
        return here.stream().anyMatch(place -> place.first() != hit.first() && place.holds(cue.first(), cue.end()));
    }

    /** "The inside shoulder" says nothing of where he goes. */
    private boolean isOfBody(Cues.Found side) {
        return showing.stream()
                .anyMatch(cue -> (cue.act() == Cues.Act.HAND || cue.act() == Cues.Act.BODY)
                        && cue.first() <= side.first()
                        && side.end() <= cue.end());
    }

    private boolean isStepBetween(int from, int to) {
        return here.stream()
                .anyMatch(place -> place.first() >= from
                        && place.end() <= to
                        && !place.terms().get(0).slug().isEmpty());
    }

    private static int distance(Cues.Found cue, Hit hit) {
        return cue.first() >= hit.end() ? cue.first() - hit.end() : Math.max(0, hit.first() - cue.end());
    }

    /** From -2, strongly negative, to 2. */
    int opinion(Hit hit, Clause clause) {
        int sum = 0;
        for (Cues.Found cue : showing) {
            boolean near = clause.holds(cue.first())
                    && ((cue.end() <= hit.first() && hit.first() - cue.end() < 2)
                            || (cue.first() >= hit.end() && cue.first() - hit.end() < OPINION_NEAR));
            if (cue.act() == Cues.Act.OPINION && near) {
                sum += Integer.parseInt(cue.value());
            }
        }
        return Math.max(-2, Math.min(2, sum));
    }

    /** A comma ends what a word reaches, unless the list goes on with "or". */
    boolean isCut(int from, int to) {
        for (int i = from; i < to; i++) {
            boolean goesOn =
                    i + 1 < tokens.size() && LISTS.contains(tokens.get(i + 1).key());
            if (!tokens.get(i).word() && !goesOn && !tokens.get(i).text().equals(":")) {
                return true;
            }
        }
        return false;
    }
}
