package rushlight.words;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Chooses matches that together say the most, no two of which overlap. */
final class Cover {
    private static final int FULL = 3;

    private final List<Token> tokens;
    private final Set<String> passedOver;
    private final Set<String> light;

    Cover(List<Token> tokens, Set<String> passedOver, Set<String> light) {
        this.tokens = tokens;
        this.passedOver = passedOver;
        this.light = light;
    }

    <S> List<Match<S>> best(List<Match<S>> matches) {
        List<List<Match<S>>> starting = new ArrayList<>();
        tokens.forEach(token -> starting.add(new ArrayList<>()));
        matches.forEach(match -> starting.get(match.first()).add(match));
        int[] most = new int[tokens.size() + 1];
        List<@Nullable Match<S>> chosen = new ArrayList<>(Collections.nCopies(tokens.size(), null));
        for (int at = tokens.size() - 1; at >= 0; at--) {
            most[at] = most[at + 1];
            for (Match<S> match : starting.get(at)) {
                int with = weight(match) + most[match.end()];
                if (with > most[at] || (with == most[at] && chosen.get(at) == null)) {
                    most[at] = with;
                    chosen.set(at, match);
                }
            }
        }
        List<Match<S>> found = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            Match<S> match = chosen.get(at);
            if (match != null) {
                found.add(match);
            }
            at = match == null ? at + 1 : match.end();
        }
        return List.copyOf(found);
    }

    private int weight(Match<?> match) {
        int words = 0;
        int passed = 0;
        for (int i = match.first(); i < match.end(); i++) {
            String key = tokens.get(i).key();
            words += passedOver.contains(key) ? 0 : light.contains(key) ? 1 : FULL;
            passed += passedOver.contains(key) ? 1 : 0;
        }
        return 1 + words * words * 4 + passed;
    }
}
