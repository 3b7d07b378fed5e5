package rushlight.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Ten invented schools that meet once each, on nine Saturdays. */
final class League {
    private static final List<String> SCHOOLS = List.of(
            "Calder Mill",
            "Port Ellery",
            "Harrow Vale",
            "Sable Point",
            "Thornmere",
            "Brackwater",
            "Stonefen",
            "Lark Hollow",
            "Gannet Rock",
            "Merrow Bay");
    private static final LocalDate FIRST_SATURDAY = LocalDate.of(2025, 9, 6);

    private League() {}

    /** A game as the school's own evaluators name it. */
    record Game(String name, LocalDate date, String opponent) {
        String video() {
            return slug(name) + ".mp4";
        }
    }

    static List<Game> season(String school) {
        int own = SCHOOLS.indexOf(school);
        List<Game> games = new ArrayList<>();
        for (int round = 0; round < SCHOOLS.size() - 1; round++) {
            int other = opponent(own, round);
            boolean home = (Math.min(own, other) + round) % 2 == 0 == own < other;
            String opponent = SCHOOLS.get(other);
            games.add(new Game(school + (home ? " v " : " at ") + opponent, FIRST_SATURDAY.plusWeeks(round), opponent));
        }
        return games;
    }

    static String slug(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** The circle method: the last school stands still, the others go round. */
    private static int opponent(int own, int round) {
        int still = SCHOOLS.size() - 1;
        if (own == still) {
            return round;
        }
        return own == round ? still : Math.floorMod(2 * round - own, still);
    }
}
