package rushlight.findings;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rushlight.evidence.BetaBinomial;
import rushlight.evidence.Rate;
import rushlight.knowledge.PositionGroup;

/**
 * The men of a league by position group, to read one man's rates beside those of the others: of the narrowest group around him
 * that has tape enough, himself left out, so that his reps count once.
 */
public final class Peers {
    private final Map<String, PositionGroup> groups;
    private final List<Man> league;

    /** What is compared of one man; his tape is let go. */
    private record Man(String id, String position, Map<String, Rate> rates) {
        static Man of(Assessment one) {
            Map<String, Rate> rates = new HashMap<>();
            one.findings()
                    .forEach(judged ->
                            rates.put(judged.finding().slug(), judged.outcome().rate()));
            return new Man(one.prospect().id(), PositionGroup.key(one.prospect().position()), rates);
        }
    }

    /**
     * @param groups by the position that a list of prospects gives
     * @param league everybody there is film of
     */
    public Peers(Map<String, PositionGroup> groups, Collection<Assessment> league) {
        this.groups = Map.copyOf(groups);
        this.league = league.stream().map(Man::of).toList();
    }

    /** Each finding of his that is a rate, by its slug. */
    public Map<String, PeerRate> beside(Assessment one) {
        Map<String, PeerRate> found = new TreeMap<>();
        for (Judged judged : one.findings()) {
            if (judged.finding().measure() == Measure.RATE) {
                found.put(judged.finding().slug(), beside(one, judged));
            }
        }
        return found;
    }

    private PeerRate beside(Assessment one, Judged judged) {
        String position = one.prospect().position();
        if (position.isBlank()) {
            return PeerRate.ofNobody();
        }
        Optional<PositionGroup> at = Optional.of(Optional.ofNullable(groups.get(PositionGroup.key(position)))
                .orElseGet(() -> PositionGroup.ofNoGroup(position)));
        PeerRate widest = PeerRate.ofNobody();
        while (at.isPresent()) {
            widest = among(at.get(), one, judged);
            if (widest.guess().isPresent()) {
                return widest;
            }
            at = at.get().wider();
        }
        return widest;
    }

    private PeerRate among(PositionGroup group, Assessment one, Judged judged) {
        List<Rate> others = league.stream()
                .filter(other -> !other.id().equals(one.prospect().id()))
                .filter(other -> group.names().contains(other.position()))
                .map(other -> other.rates().getOrDefault(judged.finding().slug(), new Rate(0, 0)))
                .toList();
        return PeerRate.of(
                group.label(),
                others.size(),
                BetaBinomial.telling(others).size(),
                BetaBinomial.of(others),
                judged.outcome().rate());
    }
}
