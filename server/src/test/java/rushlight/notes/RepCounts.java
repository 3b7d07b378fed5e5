package rushlight.notes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Counts what is told of the stretches of a narration: where reps begin, how many there are, what a replay did. */
final class RepCounts {
    private RepCounts() {}

    static void add(Gold gold, Proposal.All read, Tallies tallies) {
        List<Integer> marked = starts(gold.segments());
        List<Integer> found = starts(read.segments());
        tallies.add("rep count", Tally.of(marked.size() == found.size()));
        List<Integer> left =
                new ArrayList<>(marked.stream().map(at -> cue(gold, at)).toList());
        for (int start : found) {
            boolean right = left.remove((Integer) cue(gold, start));
            tallies.add("rep starts", right ? Tally.RIGHT : Tally.WRONG);
        }
        left.forEach(missed -> tallies.add("rep starts", Tally.MISSED));
        int first = read.segments().isEmpty() ? 0 : read.segments().get(0).from();
        gold.segments().stream()
                .filter(s -> s.kind().equals("replay"))
                .forEach(s -> tallies.add(
                        "replays",
                        Tally.of(found.stream().anyMatch(at -> at > first && s.from() <= at && at < s.to()))));
        boundaries(gold, read, tallies);
    }

    /** Where the first stretch of each rep begins. */
    private static List<Integer> starts(List<Gold.Stretch> segments) {
        Set<String> seen = new HashSet<>();
        return segments.stream()
                .filter(s -> s.kind().equals("rep") && seen.add(s.rep()))
                .map(Gold.Stretch::from)
                .toList();
    }

    private static int cue(Gold gold, int offset) {
        return (int)
                gold.text().substring(0, offset).chars().filter(c -> c == '\n').count();
    }

    private static void boundaries(Gold gold, Proposal.All read, Tallies tallies) {
        List<Integer> words = new ArrayList<>();
        boolean inside = false;
        for (int i = 0; i < gold.text().length(); i++) {
            boolean blank = Character.isWhitespace(gold.text().charAt(i));
            if (!blank && !inside) {
                words.add(i);
            }
            inside = !blank;
        }
        boolean[] reference = boundaries(gold.segments(), words);
        boolean[] guess = boundaries(read.segments(), words);
        int k = Math.min(Segmentation.window(reference), reference.length);
        double pk = Segmentation.pk(reference, guess, k);
        double difference = Segmentation.windowDiff(reference, guess, k);
        tallies.add("Pk", new Tally(pk, 0, 1 - pk));
        tallies.add("WindowDiff", new Tally(difference, 0, 1 - difference));
    }

    private static boolean[] boundaries(List<Gold.Stretch> segments, List<Integer> words) {
        boolean[] boundaries = new boolean[Math.max(1, words.size() - 1)];
        for (Gold.Stretch segment : segments.subList(Math.min(1, segments.size()), segments.size())) {
            for (int i = 1; i < words.size(); i++) {
                if (words.get(i) >= segment.from()) {
                    boundaries[i - 1] = true;
                    break;
                }
            }
        }
        return boundaries;
    }
}
