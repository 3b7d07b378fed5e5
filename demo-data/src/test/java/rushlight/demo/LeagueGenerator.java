package rushlight.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rushlight.demo.GameFlow.Snap;
import rushlight.demo.League.Game;

/**
 * Writes the film logs of the league that no evaluator wrote by hand, the same bytes every time:
 * {@code java rushlight.demo.LeagueGenerator logs}.
 */
final class LeagueGenerator {
    private static final long SEED = 20250906L;
    private static final String EVALUATOR = "M. Ordway";
    private static final String SECOND_EVALUATOR = "T. Quillon";
    private static final String READ_TWICE = "Jem Sorrelby";
    private static final int GAMES_READ_TWICE = 4;

    private final Notes notes = new Notes(new Random(SEED));

    public static void main(String... folder) throws IOException {
        for (Map.Entry<String, String> log : new LeagueGenerator().logs().entrySet()) {
            Files.writeString(Path.of(folder[0], log.getKey()), log.getValue());
        }
    }

    /** Every generated log, by the name of its file. */
    Map<String, String> logs() {
        Map<String, String> logs = new TreeMap<>();
        for (Player player : Players.ALL) {
            logs.put(player.file(), csv(season(player)));
        }
        return logs;
    }

    private List<Row> season(Player player) {
        Random chance = new Random(SEED ^ player.name().hashCode());
        Habits habits = new Habits(player.habits(), chance);
        Watching watching = new Watching(habits, player, notes);
        List<Row> rows = new ArrayList<>();
        List<Row> again = new ArrayList<>();
        for (Game game : League.season(player.school()).subList(0, player.games())) {
            List<Row> reps = game(player, watching, game, chance);
            rows.addAll(reps);
            boolean readTwice =
                    player.name().equals(READ_TWICE) && again.size() < GAMES_READ_TWICE * player.reps() - 10;
            if (readTwice) {
                again.addAll(reps);
            }
        }
        List<Row> all = new ArrayList<>(rows);
        SecondEyes second = new SecondEyes(chance);
        again.forEach(row -> all.add(second.read(row.copy(), SECOND_EVALUATOR)));
        return all;
    }

    private static List<Row> game(Player player, Watching watching, Game game, Random chance) {
        GameFlow flow = new GameFlow(chance);
        Reel reel = watching.reel(game);
        List<Row> rows = new ArrayList<>();
        while (!flow.over()) {
            Snap snap = flow.next();
            double wanted = (player.reps() - rows.size()) / flow.snapsLeft();
            if (snap.down() < 4 && chance.nextDouble() < wanted) {
                Row row = watching.rep(game, snap, rows.size() + 1, EVALUATOR);
                reel.cut(row, snap);
                rows.add(row);
                flow.after(Yards.gained(row, chance), Yards.stopped(row));
            } else {
                int yards = chance.nextInt(3) == 0 ? 0 : chance.nextInt(10) - 1;
                flow.after(yards, yards == 0 && chance.nextBoolean());
            }
        }
        return rows;
    }

    private static String csv(List<Row> rows) {
        return Stream.concat(Stream.of(Row.COLUMNS), rows.stream().map(Row::values))
                .map(values -> values.stream().map(LeagueGenerator::quoted).collect(Collectors.joining(",", "", "\n")))
                .collect(Collectors.joining());
    }

    private static String quoted(String value) {
        boolean plain = value.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n');
        return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
    }
}
