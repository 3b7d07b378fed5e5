package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * What was marked, each with the one proposal that names it: the same concept over shared words (or over the very same words),
 * in the order of the text. What was set aside is a find only where the annotator set it aside too: else a person never sees
 * what he should. A further proposal over the words of a find is not false.
 *
 * @param extra what was proposed and not marked
 */
record Pairs(List<Pair> pairs, List<Proposal> extra) {
    /** What was marked, with the proposal that is shown; set aside on both sides, there is none and yet it is found. */
    record Pair(Gold.Mark mark, Optional<Proposal> shown, boolean aside) {
        boolean found() {
            return shown.isPresent() || (aside && mark.isAside());
        }

        /** Whether the reader hid what it should have shown. */
        boolean wronglyHidden() {
            return !found() && aside;
        }
    }

    static Pairs of(Gold gold, Proposal.All read, BiPredicate<String, String> accepted, boolean exact) {
        List<Gold.Mark> marks = gold.marks().stream()
                .sorted(Comparator.comparingInt(Gold.Mark::from))
                .toList();
        List<Proposal> live = read.live();
        List<Proposal> aside = read.mentions().stream().filter(Proposal::aside).toList();
        Set<Integer> used = new HashSet<>();
        List<Pair> pairs = new ArrayList<>();
        for (Gold.Mark mark : marks) {
            Optional<Proposal> shown = Optional.empty();
            for (int i = 0; i < live.size() && shown.isEmpty(); i++) {
                if (!used.contains(i) && fits(live.get(i), mark, accepted, exact)) {
                    shown = Optional.of(live.get(i));
                    used.add(i);
                }
            }
            boolean hidden = aside.stream().anyMatch(p -> fits(p, mark, accepted, exact));
            pairs.add(new Pair(mark, shown, hidden));
        }
        List<Proposal> rest = new ArrayList<>();
        for (int i = 0; i < live.size(); i++) {
            Proposal proposal = live.get(i);
            boolean known = pairs.stream()
                    .filter(pair -> pair.found() || pair.mark().optional())
                    .anyMatch(pair -> fits(proposal, pair.mark(), accepted, false));
            if (!used.contains(i) && !known) {
                rest.add(proposal);
            }
        }
        return new Pairs(pairs, rest);
    }

    /** Those that count: what the annotator left open counts neither way. */
    List<Pair> counted() {
        return pairs.stream().filter(pair -> !pair.mark().optional()).toList();
    }

    private static boolean fits(
            Proposal proposal, Gold.Mark mark, BiPredicate<String, String> accepted, boolean exact) {
        return accepted.test(proposal.concept(), mark.concept())
                && mark.overlaps(proposal.from(), proposal.to())
                && (!exact || (proposal.from() == mark.from() && proposal.to() == mark.to()));
    }
}
