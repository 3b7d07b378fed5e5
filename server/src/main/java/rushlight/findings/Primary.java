package rushlight.findings;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;
import rushlight.evidence.Side;

/**
 * The move a prospect opens with most.
 *
 * @param move its slug, exactly as tagged
 * @param rate the reps that opened with it, of all that opened with a move
 */
public record Primary(String move, Rate rate) {
    /** The likely range of its share. */
    public Interval shown() {
        return rate.jeffreys(Rate.SHOWN);
    }

    /**
     * What a tape says of the main move.
     *
     * @param primary the move, where one clearly leads
     * @param twoMoves the two that lead together, where neither does
     */
    record Found(Optional<Primary> primary, List<String> twoMoves) {}

    /**
     * A move is his main one where he has opened with some move on at least {@code minimum} reps, and it is at least 4 to 1
     * that he uses it more than the next one: Pr(share &gt; 1/2) under the Jeffreys posterior of the two counts.
     */
    static Found of(Map<String, BitSet> rows, int minimum) {
        List<Map.Entry<String, Integer>> moves = rows.entrySet().stream()
                .map(row -> Map.entry(row.getKey(), row.getValue().cardinality()))
                .sorted(Comparator.comparing(entry -> -entry.getValue()))
                .toList();
        int all = moves.stream().mapToInt(Map.Entry::getValue).sum();
        if (all < minimum) {
            return new Found(Optional.empty(), List.of());
        }
        int first = moves.get(0).getValue();
        int second = count(moves, 1);
        if (new Rate(first, first + second).probability(Side.ABOVE, 0.5) >= 0.80) {
            return new Found(Optional.of(new Primary(moves.get(0).getKey(), new Rate(first, all))), List.of());
        }
        boolean two = second > count(moves, 2);
        return new Found(
                Optional.empty(),
                two ? List.of(moves.get(0).getKey(), moves.get(1).getKey()) : List.of());
    }

    private static int count(List<Map.Entry<String, Integer>> moves, int rank) {
        return rank < moves.size() ? moves.get(rank).getValue() : 0;
    }
}
