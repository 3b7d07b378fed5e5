package rushlight.demo;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** What the men of the league were taught: the moves that go with a first move once the blocker has answered it. */
final class Answers {
    static final Set<String> INSIDE = Set.of(
            "up-and-under", "inside-arm-over", "inside-spin", "hump", "inside-club-rip", "inside-rip", "cross-face");
    static final Set<String> OUTSIDE = Set.of(
            "speed-rush",
            "dip-and-rip",
            "ghost",
            "cross-chop",
            "two-hand-swipe",
            "chop-rip",
            "club-rip",
            "chop",
            "bull-rip",
            "long-arm-rip",
            "re-rip",
            "flatten");
    static final Set<String> POWER =
            Set.of("bull-rush", "long-arm", "speed-to-power", "bull-rip", "long-arm-rip", "push-pull", "bull-jerk");
    static final Set<String> HANDS = Set.of(
            "two-hand-swipe",
            "chop-rip",
            "club-rip",
            "cross-chop",
            "arm-over",
            "hand-swipe",
            "chop",
            "rip",
            "re-rip",
            "rip-to-swim",
            "hand-refit",
            "snatch-and-clear",
            "inside-arm-over",
            "inside-club-rip",
            "club-swim");

    /** Second moves that nobody teaches off anything here. */
    private static final List<String> STRAYS = List.of("forearm-lift", "scissors", "lockout-press", "forklift");

    private static final Map<String, List<String>> TAUGHT = read("""
            bull-rush anchor-hop: bull-jerk push-pull bull-rip arm-over inside-spin
            bull-rush leans-on-rusher: bull-jerk push-pull snatch-and-clear arm-over
            bull-rush sits-down: push-pull bull-rip arm-over bull-jerk
            bull-rush blocker-snatch: hand-refit arm-over rip
            bull-rush latched-inside: hand-refit snatch-and-clear rip
            bull-rush over-set: inside-arm-over inside-club-rip hump
            bull-rush leans-outside: inside-arm-over hump inside-club-rip
            long-arm anchor-hop: long-arm-rip push-pull inside-arm-over
            long-arm blocker-snatch: long-arm-rip inside-arm-over arm-over
            long-arm leans-on-rusher: inside-arm-over bull-jerk long-arm-rip
            long-arm over-set: inside-arm-over hump inside-spin
            long-arm latched-inside: hand-refit snatch-and-clear rip
            speed-to-power anchor-hop: bull-jerk bull-rip inside-arm-over push-pull
            speed-to-power over-set: up-and-under inside-arm-over hump
            speed-to-power leans-on-rusher: bull-jerk push-pull arm-over
            speed-to-power latched-inside: hand-refit snatch-and-clear rip
            speed-rush over-set: up-and-under inside-arm-over inside-spin hump
            speed-rush opens-gate: speed-to-power up-and-under inside-spin
            speed-rush ride-past: late-spin flatten speed-to-power
            speed-rush vertical-set: speed-to-power long-arm up-and-under
            speed-rush soft-set: speed-to-power bull-rush long-arm
            speed-rush early-two-hand-punch: two-hand-swipe chop-rip cross-chop
            speed-rush patient-square-set: speed-to-power long-arm bull-rush
            speed-rush leans-outside: hump inside-arm-over inside-club-rip
            dip-and-rip ride-past: flatten late-spin
            dip-and-rip over-set: up-and-under inside-spin inside-arm-over
            dip-and-rip vertical-set: speed-to-power long-arm up-and-under
            dip-and-rip rip-clamp: re-rip rip-to-swim inside-spin
            ghost late-two-hand-punch: speed-to-power long-arm
            ghost over-set: up-and-under inside-arm-over
            ghost ride-past: late-spin flatten
            cross-chop late-two-hand-punch: long-arm speed-to-power bull-rush
            cross-chop over-set: up-and-under inside-arm-over inside-spin
            cross-chop hand-flash: long-arm bull-rush
            cross-chop ride-past: flatten late-spin re-rip
            two-hand-swipe late-two-hand-punch: speed-to-power long-arm
            two-hand-swipe hand-flash: long-arm bull-rush
            two-hand-swipe over-set: inside-arm-over up-and-under inside-spin
            two-hand-swipe ride-past: flatten late-spin
            two-hand-swipe wide-hands-hug: bull-rush rip long-arm
            chop-rip rip-clamp: re-rip rip-to-swim inside-spin
            chop-rip independent-hands: two-hand-swipe bull-rush hand-swipe
            chop-rip over-set: inside-arm-over up-and-under inside-spin
            chop-rip late-two-hand-punch: long-arm speed-to-power bull-rush
            chop-rip ride-past: flatten late-spin re-rip
            club-rip patient-square-set: bull-rush long-arm push-pull
            club-rip rip-clamp: re-rip rip-to-swim inside-spin
            club-rip over-set: inside-club-rip inside-arm-over up-and-under
            club-rip ride-past: flatten late-spin re-rip
            arm-over early-two-hand-punch: club-rip rip two-hand-swipe
            arm-over over-set: inside-arm-over up-and-under
            arm-over patient-square-set: bull-rush long-arm
            inside-spin patient-square-set: speed-rush two-hand-swipe long-arm
            inside-spin under-set: speed-rush two-hand-swipe dip-and-rip
            up-and-under patient-square-set: long-arm bull-rush speed-to-power
            up-and-under under-set: dip-and-rip two-hand-swipe chop-rip ghost
            """);

    private Answers() {}

    /** A move taught for exactly this: one that he favors where there is one, else mostly the first of the list. */
    static String paired(String move, String met, Set<String> favored, Random chance) {
        List<String> taught = TAUGHT.getOrDefault(move + " " + met, List.of());
        if (taught.isEmpty()) {
            throw new IllegalArgumentException("Nothing is taught off " + move + " against " + met);
        }
        List<String> liked = taught.stream().filter(favored::contains).toList();
        if (!liked.isEmpty()) {
            return liked.get(chance.nextInt(liked.size()));
        }
        return taught.get(chance.nextInt(3) == 0 ? chance.nextInt(taught.size()) : 0);
    }

    static String stray(Random chance) {
        return STRAYS.get(chance.nextInt(STRAYS.size()));
    }

    private static Map<String, List<String>> read(String lines) {
        Map<String, List<String>> taught = new HashMap<>();
        lines.lines().forEach(line -> {
            String[] sides = line.split(": ", -1);
            taught.put(sides[0], List.of(sides[1].split(" ", -1)));
        });
        return Map.copyOf(taught);
    }
}
