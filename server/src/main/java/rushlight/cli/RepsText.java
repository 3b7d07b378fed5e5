package rushlight.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rushlight.situation.Sighting;

/** Reps by game, as a person finds them on film. */
final class RepsText {
    private RepsText() {}

    /** The first reps, game by game, and how many more there are; nothing where there is none. */
    static void list(Page page, String indent, List<Sighting> reps, int most) {
        if (reps.isEmpty()) {
            return;
        }
        Map<String, List<String>> byGame = new LinkedHashMap<>();
        reps.stream()
                .limit(most)
                .forEach(at -> byGame.computeIfAbsent(at.game(), g -> new ArrayList<>())
                        .add(where(at)));
        String text = byGame.entrySet().stream()
                .map(game -> game.getKey() + " " + String.join(", ", game.getValue()))
                .collect(Collectors.joining("; "));
        String rest = reps.size() > most ? "; and " + (reps.size() - most) + " more" : "";
        page.wrapped(indent + "Reps: ", indent, text + rest + ".");
    }

    /** A rep with its quarter and clock, where they were charted. */
    static String where(Sighting at) {
        String clock = at.quarter().isPresent() && at.clock().isPresent()
                ? " Q" + at.quarter().getAsInt() + " " + at.clock().get()
                : "";
        return at.rep() + clock;
    }
}
