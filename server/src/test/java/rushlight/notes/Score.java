package rushlight.notes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * How well a reader reads annotated narrations. Mentions: one of the same concept over shared words is found, in the order of
 * the text; one that was set aside as said again counts as found and not as false. Tags: what a person would keep of a rep, as
 * a set of rep, concept, assertion and actor. Rates pool the counts of all narrations.
 */
final class Score {
    /** Hits, false ones and missed ones. */
    static final class Tally {
        int right;
        int wrong;
        int missed;

        double precision() {
            return right + wrong == 0 ? 1 : right / (double) (right + wrong);
        }

        double recall() {
            return right + missed == 0 ? 1 : right / (double) (right + missed);
        }

        double f1() {
            return right == 0 ? 0 : 2.0 * right / (2 * right + wrong + missed);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "P %.3f R %.3f F1 %.3f (%d right, %d false, %d missed)",
                    precision(),
                    recall(),
                    f1(),
                    right,
                    wrong,
                    missed);
        }
    }

    private static final Set<String> DENIED = Set.of("not-performed", "wanted", "hypothetical", "uncertain");

    private static final Set<String> ASIDE = Set.of(Assembly.SAID_AGAIN, Assembly.TAKEN_BACK, Assembly.OF_ANOTHER_REP);

    final Tally concepts = new Tally();
    final Tally repStarts = new Tally();
    final Tally tags = new Tally();
    final Tally statements = new Tally();
    int narrations;
    int exactCounts;
    int assertionsRight;
    int assertions;
    int actorsRight;
    int inverted;
    int denied;
    int replaysThatOpened;
    double windowDiffs;
    double pks;

    private final BiPredicate<String, String> accepted;

    /** A score that takes a concept for another where {@code accepted} says so of the one read and the one marked. */
    Score(BiPredicate<String, String> accepted) {
        this.accepted = accepted;
    }

    /** A score that takes only the same concept. */
    static Score strict() {
        return new Score(String::equals);
    }

    double assertionAccuracy() {
        return assertionsRight / (double) assertions;
    }

    double actorAccuracy() {
        return actorsRight / (double) assertions;
    }

    double windowDiff() {
        return windowDiffs / narrations;
    }

    double pk() {
        return pks / narrations;
    }

    void add(Gold gold, Notes read) {
        narrations++;
        mentions(gold, read);
        repStarts(gold, read);
        tags(gold, read);
        boundaries(gold, read);
    }

    private void mentions(Gold gold, Notes read) {
        List<Mention> said = new ArrayList<>(read.statements());
        read.reps().forEach(rep -> said.addAll(rep.tags()));
        List<Hidden> again = read.hidden().stream()
                .filter(hidden -> ASIDE.contains(hidden.why()))
                .toList();
        Set<Object> used = new HashSet<>();
        for (Gold.Mark mark : gold.marks()) {
            Mention found = said.stream()
                    .filter(m -> !used.contains(m) && isSame(m.concept(), m.from(), m.to(), mark))
                    .findFirst()
                    .orElse(null);
            boolean aside = found == null && again.stream().anyMatch(h -> isSame(h.concept(), h.from(), h.to(), mark));
            if (found != null) {
                used.add(found);
            }
            if (mark.optional()) {
                continue;
            }
            if (found == null && !aside) {
                concepts.missed++;
            } else {
                concepts.right++;
            }
            if (found != null) {
                assertions++;
                assertionsRight += found.assertion().slug().equals(mark.assertion()) ? 1 : 0;
                actorsRight += found.actor().slug().equals(mark.actor()) ? 1 : 0;
                denied += DENIED.contains(mark.assertion()) ? 1 : 0;
                inverted += DENIED.contains(mark.assertion()) && found.assertion() == Assertion.PERFORMED ? 1 : 0;
            }
        }
        for (Mention mention : said) {
            boolean marked = gold.marks().stream()
                    .anyMatch(mark -> isSame(mention.concept(), mention.from(), mention.to(), mark));
            concepts.wrong += used.contains(mention) || marked ? 0 : 1;
        }
    }

    private boolean isSame(String concept, int from, int to, Gold.Mark mark) {
        return accepted.test(concept, mark.concept()) && mark.overlaps(from, to);
    }

    /** A rep starts where its first stretch does; in the same cue is near enough. */
    private void repStarts(Gold gold, Notes read) {
        List<Integer> marked = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        gold.segments().stream()
                .filter(s -> s.kind().equals("rep") && seen.add(s.rep()))
                .forEach(s -> marked.add(cue(gold.text(), s.from())));
        List<Integer> found = new ArrayList<>();
        Set<Integer> reps = new HashSet<>();
        Set<Integer> known = new HashSet<>();
        for (Segment segment : read.segments()) {
            if (segment.kind() == Segment.Kind.REP && reps.add(segment.rep())) {
                found.add(cue(gold.text(), segment.from()));
                boolean inReplay = gold.segments().stream()
                        .anyMatch(s ->
                                s.kind().equals("replay") && s.from() <= segment.from() && segment.from() < s.to());
                replaysThatOpened += inReplay && known.size() > 0 ? 1 : 0;
            }
            known.add(segment.rep());
        }
        exactCounts += marked.size() == found.size() ? 1 : 0;
        List<Integer> left = new ArrayList<>(marked);
        for (Integer start : found) {
            if (left.remove(start)) {
                repStarts.right++;
            } else {
                repStarts.wrong++;
            }
        }
        repStarts.missed += left.size();
    }

    private static int cue(String text, int offset) {
        return (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
    }

    private void tags(Gold gold, Notes read) {
        Set<List<String>> marked = new HashSet<>();
        Set<List<String>> optional = new HashSet<>();
        Set<List<String>> general = new HashSet<>();
        for (Gold.Mark mark : gold.marks()) {
            List<String> tag = List.of(mark.rep(), mark.concept(), mark.assertion(), mark.actor());
            if (mark.isTag()) {
                marked.add(tag);
            } else if (mark.optional()) {
                optional.add(tag);
            }
            if (mark.scope().equals("summary") && !mark.restates() && !mark.optional()) {
                general.add(List.of(mark.concept(), mark.assertion()));
            }
        }
        Set<List<String>> proposed = new HashSet<>();
        read.reps()
                .forEach(rep -> rep.tags()
                        .forEach(m -> proposed.add(List.of(
                                "r" + rep.ordinal(),
                                m.concept(),
                                m.assertion().slug(),
                                m.actor().slug()))));
        count(marked, optional, proposed, tags);
        Set<List<String>> stated = new HashSet<>();
        read.statements()
                .forEach(m -> stated.add(List.of(m.concept(), m.assertion().slug())));
        count(general, Set.of(), stated, statements);
    }

    private void count(Set<List<String>> marked, Set<List<String>> optional, Set<List<String>> proposed, Tally tally) {
        Set<List<String>> left = new HashSet<>(marked);
        for (List<String> tag : proposed) {
            List<String> match =
                    left.stream().filter(gold -> fits(tag, gold)).findFirst().orElse(List.of());
            if (!match.isEmpty()) {
                left.remove(match);
                tally.right++;
            } else if (optional.stream().noneMatch(gold -> fits(tag, gold))) {
                tally.wrong++;
            }
        }
        tally.missed += left.size();
    }

    private boolean fits(List<String> tag, List<String> gold) {
        int concept = tag.size() == 4 ? 1 : 0;
        for (int i = 0; i < tag.size(); i++) {
            if (i == concept
                    ? !accepted.test(tag.get(i), gold.get(i))
                    : !tag.get(i).equals(gold.get(i))) {
                return false;
            }
        }
        return true;
    }

    private void boundaries(Gold gold, Notes read) {
        List<Integer> words = new ArrayList<>();
        boolean inside = false;
        for (int i = 0; i < gold.text().length(); i++) {
            boolean blank = Character.isWhitespace(gold.text().charAt(i));
            if (!blank && !inside) {
                words.add(i);
            }
            inside = !blank;
        }
        boolean[] reference = new boolean[Math.max(1, words.size() - 1)];
        boolean[] guess = new boolean[reference.length];
        gold.segments().stream().skip(1).forEach(s -> mark(reference, words, s.from()));
        read.segments().stream().skip(1).forEach(s -> mark(guess, words, s.from()));
        int k = Math.min(Segmentation.window(reference), reference.length);
        pks += Segmentation.pk(reference, guess, k);
        windowDiffs += Segmentation.windowDiff(reference, guess, k);
    }

    private static void mark(boolean[] boundaries, List<Integer> words, int from) {
        for (int i = 1; i < words.size(); i++) {
            if (words.get(i) >= from) {
                boundaries[i - 1] = true;
                return;
            }
        }
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "concepts %s%nassertion %.3f, inverted %d of %d, actor %.3f%nrep starts %s, exact count %d of %d,"
                        + " replays that opened a rep %d%nPk %.3f WindowDiff %.3f%nrep tags %s%nstatements %s",
                concepts,
                assertionAccuracy(),
                inverted,
                denied,
                actorAccuracy(),
                repStarts,
                exactCounts,
                narrations,
                replaysThatOpened,
                pk(),
                windowDiff(),
                tags,
                statements);
    }
}
