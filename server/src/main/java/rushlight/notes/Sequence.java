package rushlight.notes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import rushlight.words.Token;

/** The order in which the steps of a rep were done: that of telling, unless words say another. */
final class Sequence {
    private static final int NEAR = 4;
    private static final int FAR = 7;
    /** No rep has so many steps; they stand as they were told. */
    private static final int MOST = 100;

    private static final String ENDS = ".!?;";
    private static final String LAST = "last";
    private static final String NAMED = "named";

    private final List<Token> tokens;
    private final NavigableMap<Integer, Cues.Found> cues = new TreeMap<>();

    Sequence(List<Token> tokens, List<Cues.Found> shown) {
        this.tokens = tokens;
        shown.stream()
                .filter(cue -> cue.act() == Cues.Act.ORDER)
                .forEach(cue -> cues.merge(cue.first(), cue, (a, b) -> a.end() >= b.end() ? a : b));
    }

    /** Where a step is said, the first time or once more. */
    private record Said(int first, int end, Hit step) {
        boolean isAgain() {
            return first != step.first();
        }
    }

    /**
     * The place of each step, from 1.
     *
     * @param told the steps as they were told
     * @param again where steps were told once more, each with the one it tells again
     */
    Map<Hit, Integer> of(List<Hit> told, Map<Hit, Hit> again) {
        List<Hit> done = new ArrayList<>(told);
        if (told.size() > 1 && told.size() <= MOST) {
            List<Said> said = Stream.concat(
                            told.stream().map(hit -> new Said(hit.first(), hit.end(), hit)),
                            again.entrySet().stream()
                                    .map(e -> new Said(
                                            e.getKey().first(), e.getKey().end(), e.getValue())))
                    .sorted(Comparator.comparingInt(Said::first))
                    .toList();
            Collection<Cues.Found> between = cues.subMap(
                            said.get(0).first() - NEAR,
                            true,
                            said.get(said.size() - 1).end(),
                            true)
                    .values();
            between.stream()
                    .filter(cue -> cue.value().equals(LAST))
                    .forEach(cue -> behind(said, cue.end(), NEAR).ifPresent(one -> {
                        done.remove(one.step());
                        done.add(one.step());
                    }));
            between.stream().filter(cue -> !cue.value().equals(LAST)).forEach(cue -> earlier(said, cue, done));
        }
        Map<Hit, Integer> places = new HashMap<>();
        for (int i = 0; i < done.size(); i++) {
            places.put(done.get(i), i + 1);
        }
        return places;
    }

    /** "Spin, set up by a jab"; "but before the rip there is a chop", where the rip was told before. */
    private void earlier(List<Said> said, Cues.Found cue, List<Hit> done) {
        if (cue.value().equals(NAMED)) {
            behind(said, cue.end(), NEAR)
                    .filter(Said::isAgain)
                    .ifPresent(later -> behind(said, later.end(), FAR).ifPresent(one -> move(done, one, later)));
        } else {
            behind(said, cue.end(), FAR).ifPresent(one -> before(said, cue).ifPresent(later -> move(done, one, later)));
        }
    }

    private static void move(List<Hit> done, Said one, Said later) {
        boolean apart = !one.isAgain() && !one.step().equals(later.step());
        if (apart && done.contains(later.step()) && done.remove(one.step())) {
            done.add(done.indexOf(later.step()), one.step());
        }
    }

    private Optional<Said> behind(List<Said> said, int from, int reach) {
        return said.stream().filter(one -> isNear(from, one.first(), reach)).findFirst();
    }

    private Optional<Said> before(List<Said> said, Cues.Found cue) {
        return said.stream().filter(one -> isNear(one.end(), cue.first(), NEAR)).reduce((a, b) -> b);
    }

    private boolean isNear(int from, int to, int reach) {
        return from <= to
                && to - from < reach
                && tokens.subList(from, to).stream().noneMatch(token -> !token.word() && ENDS.contains(token.text()));
    }
}
