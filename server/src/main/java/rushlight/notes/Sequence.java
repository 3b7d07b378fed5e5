package rushlight.notes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import rushlight.words.Token;

/** The order in which the steps of a rep were done: that of telling, unless words say another. */
final class Sequence {
    private static final int NEAR = 4;
    /** No rep has so many steps; they stand as they were told. */
    private static final int MOST = 100;

    private static final String ENDS = ".!?;";
    private static final String LAST = "last";

    private final List<Token> tokens;
    private final NavigableMap<Integer, Cues.Found> cues = new TreeMap<>();

    Sequence(List<Token> tokens, List<Cues.Found> shown) {
        this.tokens = tokens;
        shown.stream()
                .filter(cue -> cue.act() == Cues.Act.ORDER)
                .forEach(cue -> cues.merge(cue.first(), cue, (a, b) -> a.end() >= b.end() ? a : b));
    }

    /** The place of each step, from 1; the steps stand as they were told. */
    Map<Hit, Integer> of(List<Hit> told) {
        List<Hit> done = new ArrayList<>(told);
        if (told.size() > 1 && told.size() <= MOST) {
            var between = cues.subMap(
                    told.get(0).first() - NEAR, true, told.get(told.size() - 1).end(), true);
            between.values().stream()
                    .filter(cue -> cue.value().equals(LAST))
                    .forEach(cue -> behind(told, cue).ifPresent(step -> {
                        done.remove(step);
                        done.add(step);
                    }));
            between.values().stream()
                    .filter(cue -> !cue.value().equals(LAST))
                    .forEach(cue -> behind(told, cue)
                            .ifPresent(step -> before(told, cue).ifPresent(later -> {
                                done.remove(step);
                                done.add(done.indexOf(later), step);
                            })));
        }
        Map<Hit, Integer> places = new HashMap<>();
        for (int i = 0; i < done.size(); i++) {
            places.put(done.get(i), i + 1);
        }
        return places;
    }

    private Optional<Hit> behind(List<Hit> told, Cues.Found cue) {
        return told.stream().filter(hit -> isNear(cue.end(), hit.first())).findFirst();
    }

    private Optional<Hit> before(List<Hit> told, Cues.Found cue) {
        return told.stream().filter(hit -> isNear(hit.end(), cue.first())).reduce((a, b) -> b);
    }

    private boolean isNear(int from, int to) {
        return from <= to
                && to - from < NEAR
                && tokens.subList(from, to).stream().noneMatch(token -> !token.word() && ENDS.contains(token.text()));
    }
}
