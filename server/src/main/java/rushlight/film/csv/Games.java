package rushlight.film.csv;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Game;

/** The games of a file: what some rows say of a game holds for all its rows, and two rows must not contradict. */
final class Games {
    private record Said(String value, int line) {}

    private static final List<String> DETAILS = List.of(Columns.DATE, Columns.OPPONENT, Columns.LEVEL);

    private final Names names = new Names(Columns.GAME);
    private final Map<String, String> nameOf = new HashMap<>();
    private final Map<String, Map<String, Said>> details = new HashMap<>();

    /** The slug of the game of a row; empty, and told, where the row contradicts an earlier one. */
    Optional<String> find(Draft draft, RowNotes notes) {
        String name = draft.text(Columns.GAME).orElse("");
        Optional<String> slug = names.address(name, notes);
        if (slug.isEmpty()) {
            return slug;
        }
        nameOf.putIfAbsent(slug.get(), name);
        Map<String, Said> known = details.computeIfAbsent(slug.get(), s -> new HashMap<>());
        boolean agrees = true;
        for (String column : DETAILS) {
            agrees &= agrees(column, draft.text(column), name, known, notes);
        }
        return agrees ? slug : Optional.empty();
    }

    /** The game with this slug, as far as its rows tell. */
    Game game(String slug) {
        Map<String, Said> known = details.getOrDefault(slug, Map.of());
        Optional<LocalDate> date =
                Optional.ofNullable(known.get(Columns.DATE)).map(said -> LocalDate.parse(said.value()));
        String id = date.map(day -> slug + "-" + day).orElse(slug);
        return new Game(
                id, nameOf.getOrDefault(slug, slug), date, value(known, Columns.OPPONENT), value(known, Columns.LEVEL));
    }

    private static String value(Map<String, Said> known, String column) {
        Said said = known.get(column);
        return said == null ? "" : said.value();
    }

    private static boolean agrees(
            String column, Optional<String> value, String game, Map<String, Said> known, RowNotes notes) {
        if (value.isEmpty()) {
            return true;
        }
        Said first = known.computeIfAbsent(column, c -> new Said(value.get(), notes.line()));
        if (first.value().equals(value.get())) {
            return true;
        }
        notes.fault(
                column,
                value.get(),
                Fault.Code.GAMES_COLLIDE,
                "the game \"" + game + "\" has the " + column + " \"" + first.value() + "\" in line " + first.line()
                        + " and \"" + value.get() + "\" here; if they are two games, give them two names.");
        return false;
    }
}
