package rushlight.agreement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.Times;

/**
 * Finds the reps that two logs of one prospect and game have in common: readings of the same name whose quarter, clock and
 * down do not contradict, and pairs a person accepted. What is left over on both sides is proposed by snap, by overlapping
 * clip, or by quarter and clock, where that points to exactly one.
 */
final class Matching {
    private static final List<String> WHEN = List.of("quarter", "clock", "down");

    /** Of the shorter clip, how much has to lie in the longer one. */
    private static final double OVERLAP = 0.5;

    private Matching() {}

    static MatchedGame of(Log first, Log second, Set<Accepted> accepted) {
        Map<String, Reading> theirs = new HashMap<>();
        second.readings().forEach(reading -> theirs.put(name(reading), reading));
        Map<String, String> sameRep = new HashMap<>();
        accepted.forEach(pair -> sameRep.put(Identity.slug(pair.first()), Identity.slug(pair.second())));
        List<Pair> pairs = new ArrayList<>();
        List<Reading> firstAlone = new ArrayList<>();
        for (Reading reading : first.readings()) {
            String mine = name(reading);
            boolean said = sameRep.containsKey(mine);
            Reading other = theirs.get(sameRep.getOrDefault(mine, mine));
            if (other != null && (said || !contradict(reading, other))) {
                pairs.add(new Pair(reading, other));
                theirs.remove(name(other));
            } else {
                firstAlone.add(reading);
            }
        }
        List<Reading> secondAlone =
                second.readings().stream().filter(theirs::containsValue).toList();
        return new MatchedGame(
                first.prospect(),
                first.game(),
                pairs,
                firstAlone,
                secondAlone,
                proposals(firstAlone, new ArrayList<>(secondAlone)));
    }

    private static List<Proposal> proposals(List<Reading> mine, List<Reading> theirs) {
        List<Proposal> proposals = new ArrayList<>();
        List<Reading> open = new ArrayList<>(mine);
        for (Proposal.Why why : Proposal.Why.values()) {
            for (Reading reading : List.copyOf(open)) {
                List<Reading> like = theirs.stream()
                        .filter(other -> like(reading, other, why) && !contradict(reading, other))
                        .toList();
                if (like.size() == 1) {
                    proposals.add(new Proposal(reading.rep(), like.get(0).rep(), why));
                    open.remove(reading);
                    theirs.remove(like.get(0));
                }
            }
        }
        return proposals;
    }

    private static boolean like(Reading one, Reading other, Proposal.Why why) {
        return switch (why) {
            case SNAP -> same(one, other, "snap");
            case CLIP -> overlap(one, other);
            case CLOCK -> same(one, other, "quarter") && same(one, other, "clock");
        };
    }

    private static boolean overlap(Reading one, Reading other) {
        OptionalDouble[] times = {time(one, "start"), time(one, "end"), time(other, "start"), time(other, "end")};
        for (OptionalDouble time : times) {
            if (time.isEmpty()) {
                return false;
            }
        }
        double shared = Math.min(times[1].getAsDouble(), times[3].getAsDouble())
                - Math.max(times[0].getAsDouble(), times[2].getAsDouble());
        double shorter = Math.min(
                times[1].getAsDouble() - times[0].getAsDouble(), times[3].getAsDouble() - times[2].getAsDouble());
        return same(one, other, "video") && shorter > 0 && shared >= OVERLAP * shorter;
    }

    private static OptionalDouble time(Reading reading, String column) {
        return reading.one(column).map(Times::seconds).orElseGet(OptionalDouble::empty);
    }

    private static boolean same(Reading one, Reading other, String column) {
        return one.one(column).isPresent() && one.one(column).equals(other.one(column));
    }

    private static boolean contradict(Reading one, Reading other) {
        return WHEN.stream().anyMatch(column -> {
            Optional<String> here = one.one(column);
            Optional<String> there = other.one(column);
            return here.isPresent() && there.isPresent() && !here.equals(there);
        });
    }

    private static String name(Reading reading) {
        return Identity.slug(reading.rep().rep());
    }
}
