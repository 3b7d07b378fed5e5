package rushlight.findings;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rushlight.index.IndexedRep;
import rushlight.situation.Tape;

/**
 * Where a prospect lines up and what he opens with, counted and not judged.
 *
 * @param reps the reps that count: those an evaluator was unsure of are left out
 * @param phases reps by phase
 * @param spots his alignments over each side of the offense, most used first
 * @param moves his opening moves on rushes whose exchange was seen, most used first
 * @param flow what followed what on those rushes
 */
public record Profile(int reps, SortedMap<String, Integer> phases, List<Spot> spots, List<Move> moves, Flow flow) {
    /** How reps ended. */
    public record Ended(int reps, int won, int lost) {
        private static Ended of(BitSet reps, BitSet won, BitSet lost) {
            return new Ended(
                    reps.cardinality(),
                    Sample.and(reps, won).cardinality(),
                    Sample.and(reps, lost).cardinality());
        }
    }

    /**
     * An alignment.
     *
     * @param alignment its slug
     * @param over side of the offense he stood over; empty where nobody said
     * @param ended how it went from there
     */
    public record Spot(String alignment, Optional<String> over, Ended ended) {}

    /**
     * An opening move.
     *
     * @param move its slug
     * @param share its part of the rushes that have an opening move
     * @param ended how it went
     */
    public record Move(String move, double share, Ended ended) {}

    public Profile {
        spots = List.copyOf(spots);
        moves = List.copyOf(moves);
    }

    /**
     * Counts a tape by the conventions of a book.
     *
     * @param reps the readings of the tape, in its order
     */
    public static Profile of(Tape tape, List<IndexedRep> reps, FindingBook book) {
        Conventions conventions = book.conventions();
        BitSet sure = new BitSet();
        sure.set(0, tape.size());
        sure.andNot(tape.fitting(conventions.lowConfidence()));
        SortedMap<String, BitSet> outcome = tape.rows("outcome");
        BitSet won = outcome.getOrDefault("won", new BitSet());
        BitSet lost = outcome.getOrDefault("lost", new BitSet());
        SortedMap<String, Integer> phases = new TreeMap<>();
        tape.rows("phase")
                .forEach((phase, some) ->
                        phases.put(phase, Sample.and(some, sure).cardinality()));
        BitSet rushes = Sample.and(sure, tape.fitting(conventions.primaryReps()));
        Map<String, BitSet> opened = tape.rows(conventions.primaryFacet());
        return new Profile(
                sure.cardinality(),
                phases,
                spots(tape, sure, won, lost),
                moves(opened, rushes, won, lost),
                Flow.of(reps, rushes, conventions.primaryFacet()));
    }

    private static List<Spot> spots(Tape tape, BitSet sure, BitSet won, BitSet lost) {
        SortedMap<String, BitSet> sides = tape.rows("over");
        BitSet unsaid = new BitSet();
        unsaid.or(sure);
        sides.values().forEach(unsaid::andNot);
        Map<Optional<String>, BitSet> over = new LinkedHashMap<>();
        sides.forEach((side, some) -> over.put(Optional.of(side), Sample.and(some, sure)));
        over.put(Optional.empty(), unsaid);
        List<Spot> spots = new ArrayList<>();
        tape.rows("alignment")
                .forEach((alignment, his) -> over.forEach((side, there) ->
                        spots.add(new Spot(alignment, side, Ended.of(Sample.and(his, there), won, lost)))));
        spots.removeIf(spot -> spot.ended().reps() == 0);
        spots.sort(Comparator.<Spot>comparingInt(spot -> -spot.ended().reps())
                .thenComparing(Spot::alignment)
                .thenComparing(spot -> spot.over().orElse("~")));
        return spots;
    }

    private static List<Move> moves(Map<String, BitSet> rows, BitSet rushes, BitSet won, BitSet lost) {
        Map<String, BitSet> opened = new LinkedHashMap<>();
        BitSet all = new BitSet();
        rows.forEach((move, some) -> {
            BitSet his = Sample.and(some, rushes);
            opened.put(move, his);
            all.or(his);
        });
        List<Move> moves = new ArrayList<>();
        opened.forEach((move, some) -> {
            Ended ended = Ended.of(some, won, lost);
            moves.add(new Move(move, all.isEmpty() ? 0 : (double) ended.reps() / all.cardinality(), ended));
        });
        moves.removeIf(move -> move.ended().reps() == 0);
        moves.sort(Comparator.<Move>comparingInt(move -> -move.ended().reps()).thenComparing(Move::move));
        return moves;
    }
}
