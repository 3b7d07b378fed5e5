package rushlight.findings;

import java.util.BitSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import rushlight.evidence.Line;
import rushlight.situation.ReadTwice;
import rushlight.situation.Situation;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;

/** One prospect's tape as the findings see it: what is left out, whose duty is unknown, which move is his main one. */
final class Counts {
    private final Tape tape;
    private final Conventions conventions;
    private final BitSet counted;
    private final Primary.Found primary;
    private final Optional<ReadTwice> readTwice;

    Counts(Tape tape, Conventions conventions) {
        this.tape = tape;
        this.conventions = conventions;
        this.readTwice = tape.readTwice();
        BitSet all = new BitSet(tape.size());
        all.set(0, tape.size());
        this.counted = Sample.without(
                Sample.without(all, tape.fitting(conventions.lowConfidence())), tape.fitting(conventions.drops()));
        this.primary = Primary.of(
                rows(conventions.primaryFacet(), fitting(conventions.primaryReps())), conventions.primaryMinimum());
    }

    private Counts(Counts whole, BitSet counted) {
        this.tape = whole.tape;
        this.conventions = whole.conventions;
        this.primary = whole.primary;
        this.readTwice = whole.readTwice;
        this.counted = counted;
    }

    /** The same tape with his drops among what is counted. */
    Counts withDrops() {
        return new Counts(this, Sample.or(counted, sureDrops()));
    }

    Tape tape() {
        return tape;
    }

    /** A finding with no surer word than two evaluators' agreement on its event carries, where two have read his reps. */
    Judged held(Counting.Scope scope, Judged judged) {
        return readTwice
                .flatMap(twice -> Raters.of(twice, scope))
                .map(raters -> raters.hold(judged))
                .orElse(judged);
    }

    List<TapedGame> games() {
        return tape.games();
    }

    Assessment.LeftOut leftOut() {
        return new Assessment.LeftOut(
                tape.fitting(conventions.lowConfidence()).cardinality(),
                sureDrops().cardinality());
    }

    private BitSet sureDrops() {
        return Sample.without(tape.fitting(conventions.drops()), tape.fitting(conventions.lowConfidence()));
    }

    Primary.Found primary() {
        return primary;
    }

    /** The reps that fit and are counted at all. */
    BitSet fitting(Situation situation) {
        return Sample.and(tape.fitting(situation), counted);
    }

    /** The reps that a finding counts: where a duty is asked for, those of that duty. */
    Sample certain(Counting.Scope scope) {
        return Sample.of(his(scope, fitting(scope.opportunity())), tape.fitting(scope.event()));
    }

    /** The reps that may have been his chance and that nobody can tell. */
    Sample unknown(Counting.Scope scope) {
        if (scope.duties().isEmpty() && scope.perhaps().isEmpty()) {
            return Sample.NONE;
        }
        BitSet able = fitting(scope.opportunity());
        BitSet unknown =
                scope.duties().isEmpty() ? new BitSet() : Sample.and(able, tape.fitting(conventions.unknownDuty()));
        BitSet maybe = scope.perhaps()
                .map(this::fitting)
                .map(p -> Sample.or(unknown, p))
                .orElse(unknown);
        return Sample.of(Sample.without(maybe, his(scope, able)), tape.fitting(scope.event()));
    }

    private BitSet his(Counting.Scope scope, BitSet able) {
        if (scope.duties().isEmpty()) {
            return able;
        }
        return Sample.and(able, tape.fitting(Situation.anyOf(conventions.dutyFacet(), scope.duties())));
    }

    /** The reps among {@code reps} by the values of a split. */
    NavigableMap<String, BitSet> rows(Counting.Split split, BitSet reps) {
        if (split.among().isEmpty()) {
            return rows(split.facet(), reps);
        }
        NavigableMap<String, BitSet> rows = new TreeMap<>();
        split.among()
                .forEach(value -> rows.put(value, Sample.and(reps, tape.fitting(Situation.has(split.facet(), value)))));
        return rows;
    }

    private NavigableMap<String, BitSet> rows(String facet, BitSet reps) {
        NavigableMap<String, BitSet> rows = new TreeMap<>();
        tape.rows(facet).forEach((value, having) -> {
            BitSet row = Sample.and(having, reps);
            if (!row.isEmpty()) {
                rows.put(value, row);
            }
        });
        return rows;
    }

    /** Whether all the film is there that the finding wants beside its own. */
    boolean hasTapeFor(Counting counting) {
        return counting.tape().stream()
                .allMatch(wanted -> fitting(wanted.reps()).cardinality() >= wanted.atLeast());
    }

    /** The opponent against whom more than half of the sample was played, where there are enough reps to say so. */
    Optional<String> heavyOpponent(BitSet opportunities) {
        int all = opportunities.cardinality();
        NavigableMap<String, Integer> byOpponent = new TreeMap<>();
        for (TapedGame game : games()) {
            String opponent = game.opponent().isEmpty() ? game.name() : game.opponent();
            byOpponent.merge(opponent, Sample.and(opportunities, game.reps()).cardinality(), Integer::sum);
        }
        return all < Line.FLOOR
                ? Optional.empty()
                : byOpponent.entrySet().stream()
                        .filter(entry -> 2 * entry.getValue() > all)
                        .map(entry -> entry.getKey())
                        .findFirst();
    }
}
