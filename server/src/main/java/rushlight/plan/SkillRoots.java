package rushlight.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rushlight.evidence.Verdict;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Polarity;
import rushlight.knowledge.Prerequisite;
import rushlight.knowledge.TrainedSkill;
import rushlight.knowledge.Training;

/** Which skills are there, which are missing, and what a skill waits for, by one man's film. */
final class SkillRoots {
    /** What film says of a skill. */
    enum State {
        /** It is there: its own count is good, film cleared the gap that would show it missing, or staff has seen it. */
        THERE,
        /** It is missing: a gap that shows it stands. */
        MISSING,
        /** Neither. */
        NOT_SHOWN
    }

    private final Training training;
    private final Assessment assessment;
    private final Map<String, State> states = new HashMap<>();

    SkillRoots(Training training, Assessment assessment, Set<String> has) {
        this.training = training;
        this.assessment = assessment;
        for (Judged one : assessment.findings()) {
            if (one.finding().polarity() != Polarity.GAP) {
                continue;
            }
            last(one).ifPresent(skill -> {
                if (one.verdict().stands() && (isSafety(one) || good(skill).isEmpty())) {
                    states.put(skill.slug(), State.MISSING);
                } else if (one.verdict() == Verdict.CLEARED) {
                    states.putIfAbsent(skill.slug(), State.THERE);
                }
            });
        }
        training.skills().stream()
                .filter(skill -> good(skill).isPresent())
                .forEach(skill -> states.putIfAbsent(skill.slug(), State.THERE));
        has.forEach(skill -> states.put(skill, State.THERE));
    }

    /**
     * The skill that answers a gap: the last of those that the book would train for it, the others prepare it. Where film counts
     * that one as good, the nearest before it that is not there; empty where none is left. A matter of safety keeps its last.
     */
    Optional<TrainedSkill> answer(Judged gap) {
        Optional<TrainedSkill> last = last(gap);
        if (isSafety(gap) || last.filter(skill -> good(skill).isPresent()).isEmpty()) {
            return last;
        }
        return trained(gap).filter(skill -> state(skill.slug()) != State.THERE).reduce((earlier, later) -> later);
    }

    /** What the book would train for a gap, and film counts as good; in the order of the book. */
    List<TrainedSkill> goodAlready(Judged gap) {
        return trained(gap).filter(skill -> good(skill).isPresent()).toList();
    }

    private Optional<TrainedSkill> last(Judged gap) {
        return trained(gap).reduce((earlier, later) -> later);
    }

    private Stream<TrainedSkill> trained(Judged gap) {
        return gap.finding().advice().trainFirst().stream().flatMap(skill -> training.skill(skill).stream());
    }

    private static boolean isSafety(Judged gap) {
        return gap.finding().safety() && gap.outcome().rate().events() > 0;
    }

    /** The count by which a skill needs no weeks of its own: good enough to pass a retest, while no gap that counts it is open. */
    Optional<ShownSkill> good(TrainedSkill skill) {
        boolean open = skill.shownBy().stream()
                .flatMap(slug -> assessment.finding(slug).stream())
                .anyMatch(one -> one.finding().polarity() == Polarity.GAP
                        && (one.verdict().stands() || StandingGaps.leans(one)));
        return open ? Optional.empty() : film(skill).filter(ShownSkill::isGoodEnough);
    }

    /** What film counts of a skill: of the findings that show it the one with most chances, where there are enough to say. */
    Optional<ShownSkill> film(TrainedSkill skill) {
        return skill.shownBy().stream()
                .flatMap(slug -> assessment.finding(slug).stream())
                .flatMap(one -> ShownSkill.of(one).stream())
                .max(Comparator.comparingInt(shown -> shown.good().opportunities()));
    }

    State state(String skill) {
        return states.getOrDefault(skill, State.NOT_SHOWN);
    }

    /** All that a skill needs, near and far. */
    Set<String> ancestors(String skill) {
        Set<String> found = new TreeSet<>();
        ancestors(skill, found);
        return found;
    }

    private void ancestors(String skill, Set<String> found) {
        for (Prerequisite p : musts(skill)) {
            if (found.add(p.needs())) {
                ancestors(p.needs(), found);
            }
        }
    }

    List<Prerequisite> musts(String skill) {
        return training.prerequisites(skill).stream()
                .filter(p -> p.strength() == Prerequisite.Strength.MUST)
                .toList();
    }

    /**
     * What has to be trained before a skill, roots first: what the book trains for the gap before it, unless it is there, and
     * whatever film shows to be missing below it. A skill that is there cuts the chain.
     */
    List<String> missingBefore(String skill, List<String> trainFirst) {
        Set<String> missing = new HashSet<>();
        for (String earlier : trainFirst) {
            if (!earlier.equals(skill) && training.skill(earlier).isPresent() && state(earlier) != State.THERE) {
                missing.add(earlier);
                below(earlier, missing, new HashSet<>());
            }
        }
        below(skill, missing, new HashSet<>());
        missing.remove(skill);
        return inOrder(missing);
    }

    private void below(String skill, Set<String> missing, Set<String> seen) {
        for (Prerequisite p : musts(skill)) {
            if (state(p.needs()) != State.THERE && seen.add(p.needs())) {
                if (state(p.needs()) == State.MISSING) {
                    missing.add(p.needs());
                }
                below(p.needs(), missing, seen);
            }
        }
    }

    /** Skills from the roots up. */
    List<String> inOrder(Set<String> skills) {
        return skills.stream()
                .sorted(Comparator.<String>comparingInt(
                                s -> training.skill(s).map(TrainedSkill::layer).orElse(0))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    /** What a skill needs that film has shown neither way, and that is not among {@code planned}: single ones and choices. */
    List<List<Prerequisite>> notShown(String skill, Set<String> planned) {
        List<List<Prerequisite>> open = new ArrayList<>();
        for (Prerequisite p : musts(skill)) {
            if (state(p.needs()) == State.NOT_SHOWN && !planned.contains(p.needs())) {
                open.add(List.of(p));
            }
        }
        training.prerequisites(skill).stream()
                .filter(p -> p.strength() == Prerequisite.Strength.ONE_OF)
                .mapToInt(Prerequisite::group)
                .distinct()
                .sorted()
                .forEach(group -> {
                    List<Prerequisite> choice = training.prerequisites(skill).stream()
                            .filter(p -> p.strength() == Prerequisite.Strength.ONE_OF && p.group() == group)
                            .toList();
                    if (choice.stream()
                            .noneMatch(p -> state(p.needs()) == State.THERE || planned.contains(p.needs()))) {
                        open.add(choice);
                    }
                });
        return open;
    }
}
