package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.UnaryOperator;

/** Counts what is told of single mentions: that they are there, and how they are meant. */
final class MentionCounts {
    private static final Set<String> DENIED = Set.of("not-performed", "wanted", "hypothetical", "uncertain");

    private final Gold gold;
    private final Tallies tallies;
    private final UnaryOperator<String> group;
    private final List<Miss> misses = new ArrayList<>();

    private MentionCounts(Gold gold, Tallies tallies, UnaryOperator<String> group) {
        this.gold = gold;
        this.tallies = tallies;
        this.group = group;
    }

    /** Adds the counts of one narration, and gives what went wrong. */
    static List<Miss> add(
            Gold gold,
            Proposal.All read,
            BiPredicate<String, String> accepted,
            UnaryOperator<String> group,
            Tallies tallies) {
        MentionCounts counts = new MentionCounts(gold, tallies, group);
        Pairs pairs = Pairs.of(gold, read, accepted, false);
        counts.concepts(pairs);
        for (Pairs.Pair pair : pairs.counted()) {
            pair.shown().ifPresent(shown -> counts.attributes(pair.mark(), shown));
        }
        counts.order(pairs.counted());
        Pairs exact = Pairs.of(gold, read, accepted, true);
        exact.counted().forEach(pair -> tallies.add("concepts, same words", Tally.of(pair.found())));
        exact.extra().forEach(proposal -> tallies.add("concepts, same words", Tally.WRONG));
        for (Gold.Place place : gold.distractors()) {
            boolean shown = pairs.extra().stream().anyMatch(p -> p.from() < place.to() && place.from() < p.to());
            tallies.add("distractors", Tally.of(shown));
        }
        return counts.misses;
    }

    private void concepts(Pairs pairs) {
        for (Pairs.Pair pair : pairs.counted()) {
            count(pair.mark().concept(), Tally.of(pair.found()));
            tallies.add("wrongly hidden", Tally.of(pair.wronglyHidden()));
            if (!pair.found()) {
                String what = pair.wronglyHidden() ? "hidden, though it stands" : "missed";
                miss(pair.mark().from(), pair.mark().to(), pair.mark().concept(), what);
            }
        }
        for (Proposal proposal : pairs.extra()) {
            count(proposal.concept(), Tally.WRONG);
            miss(proposal.from(), proposal.to(), proposal.concept(), "false");
        }
    }

    private void count(String concept, Tally tally) {
        tallies.add("concepts", tally);
        tallies.add("slug:" + concept, tally);
        tallies.add("class:" + group.apply(concept), tally);
        tallies.add("style:" + gold.style(), tally);
    }

    private void attributes(Gold.Mark mark, Proposal shown) {
        classes("assertion", mark.assertion(), shown.assertion());
        classes("actor", mark.actor(), shown.actor());
        if (DENIED.contains(mark.assertion())) {
            tallies.add("inverted", Tally.of(shown.assertion().equals("performed")));
        }
        word(mark, "side", mark.side(), shown.side());
        word(mark, "hand", mark.hand(), shown.hand());
        word(mark, "target", mark.target(), shown.target());
        int judged = Integer.signum(mark.opinion());
        int read = Integer.signum(shown.opinion());
        if (judged != 0) {
            tallies.add("opinion", Tally.of(judged == read));
        } else if (read != 0) {
            tallies.add("opinion", Tally.WRONG);
        }
        if (!mark.assertion().equals(shown.assertion()) || !mark.actor().equals(shown.actor())) {
            String what = mark.assertion() + " by " + mark.actor() + ", read as " + shown.assertion() + " by "
                    + shown.actor();
            miss(mark.from(), mark.to(), mark.concept(), what);
        }
    }

    /** One of a few values that every mention has: the share that is right, and each value by itself. */
    private void classes(String name, String marked, String read) {
        tallies.add(name, Tally.of(marked.equals(read)));
        tallies.add(name + ":" + marked, Tally.of(marked.equals(read)));
        if (!marked.equals(read)) {
            tallies.add(name + ":" + read, Tally.WRONG);
        }
    }

    /** A word that few mentions have: right or missed where it was marked, false where only the reader has it. */
    private void word(Gold.Mark mark, String name, String marked, String read) {
        if (!marked.isEmpty() || !read.isEmpty()) {
            Tally tally = marked.isEmpty() ? Tally.WRONG : Tally.of(marked.equals(read));
            tallies.add(name, tally);
            tallies.add("side, hand, target", tally);
            if (!marked.equals(read)) {
                String what = name + " " + (marked.isEmpty() ? "none" : marked) + ", read as "
                        + (read.isEmpty() ? "none" : read);
                miss(mark.from(), mark.to(), mark.concept(), what);
            }
        }
    }

    /** Of all pairs of steps of a rep that were both found, those in the right order. */
    private void order(List<Pairs.Pair> pairs) {
        for (Pairs.Pair one : pairs) {
            for (Pairs.Pair other : pairs) {
                Optional<Proposal> first = one.shown();
                Optional<Proposal> then = other.shown();
                boolean ordered = one.mark().order() > 0
                        && one.mark().order() < other.mark().order()
                        && one.mark().rep().equals(other.mark().rep());
                if (ordered && first.isPresent() && then.isPresent()) {
                    Proposal a = first.get();
                    Proposal b = then.get();
                    boolean right =
                            a.order() > 0 && a.order() < b.order() && a.rep().equals(b.rep());
                    tallies.add("order", Tally.of(right));
                    if (!right) {
                        Gold.Mark mark = one.mark();
                        String what =
                                "before " + other.mark().concept() + ", read as " + a.order() + " and " + b.order();
                        miss(mark.from(), mark.to(), mark.concept(), what);
                    }
                }
            }
        }
    }

    private void miss(int from, int to, String concept, String what) {
        int begin = gold.text().lastIndexOf('\n', Math.max(0, from - 1)) + 1;
        int end = gold.text().indexOf('\n', to);
        String line = gold.text()
                .substring(Math.min(begin, from), end < 0 ? gold.text().length() : end);
        misses.add(new Miss(
                gold.id(),
                line.replace('\n', ' '),
                gold.text().substring(from, to).replace('\n', ' '),
                concept,
                what));
    }
}
