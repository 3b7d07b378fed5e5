package rushlight.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rushlight.evidence.Verdict;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Polarity;
import rushlight.knowledge.TrainedSkill;

/** The gaps of one man that a block could work on, in their order. */
final class StandingGaps {
    /** Where fewer stand than this, those that are more likely than not are taken up, and it is said that they are not sure. */
    private static final int FEWEST = 2;

    private final Assessment assessment;
    private final SkillRoots roots;
    private final WorkWords words;
    private final List<String> leaveOut;
    private final List<Work.Left> left = new ArrayList<>();
    private Optional<String> blocked = Optional.empty();

    StandingGaps(Assessment assessment, SkillRoots roots, WorkWords words, List<String> leaveOut) {
        this.assessment = assessment;
        this.roots = roots;
        this.words = words;
        this.leaveOut = leaveOut;
    }

    /** Those that were left out on the way. */
    List<Work.Left> left() {
        return left;
    }

    /** Why nobody hits; empty where nothing forbids it. */
    Optional<String> blocked() {
        return blocked;
    }

    /** The gaps that stand, and matters of safety, in their order; those left out by hand are told. */
    List<Ranked> ranked() {
        List<Ranked> ranked = new ArrayList<>();
        List<Ranked> leaning = new ArrayList<>();
        for (Judged one : assessment.findings()) {
            boolean safe = !one.finding().safety() || one.outcome().rate().events() == 0;
            if (one.finding().polarity() != Polarity.GAP
                    || (safe && !one.verdict().stands() && !leans(one))) {
                continue;
            }
            Optional<TrainedSkill> skill = roots.answer(one);
            if (safe && leans(one)) {
                skill.filter(s -> !isOut(one.finding().slug()) && !isOut(s.slug()))
                        .ifPresent(s -> leaning.add(Ranked.of(one, s, roots.film(s), assessment.games())));
            } else if (skill.isEmpty()) {
                leave(one, words.nothingToTrain(one));
                if (!safe) {
                    blocked = Optional.of("a matter of safety is open for which there is no drill");
                }
            } else if (isOut(one.finding().slug()) || isOut(skill.get().slug())) {
                leave(one, safe ? "Left out by hand." : "Left out by hand; there is no full contact while it is open.");
                if (!safe) {
                    blocked = Optional.of("a matter of safety was left out by hand");
                }
            } else {
                ranked.add(Ranked.of(one, skill.get(), roots.film(skill.get()), assessment.games()));
            }
        }
        ranked.sort(Ranked.firstThingsFirst());
        leaning.stream()
                .sorted(Ranked.firstThingsFirst())
                .limit(Math.max(0, FEWEST - ranked.size()))
                .forEach(ranked::add);
        return ranked;
    }

    /** Whether a gap is not sure, and more likely than not. */
    static boolean leans(Judged one) {
        return one.verdict() == Verdict.WATCH && one.outcome().probability().orElse(0) >= 0.5;
    }

    /** The finding at the end of the chain of those that may explain it; itself where nothing does. */
    static Ranked root(Ranked one, Map<String, Ranked> bySlug) {
        Set<String> seen = new TreeSet<>(Set.of(one.finding()));
        Ranked at = one;
        while (true) {
            Optional<Ranked> next = at.gap().rootedIn().stream()
                    .flatMap(slug -> Optional.ofNullable(bySlug.get(slug)).stream())
                    .min(Ranked.firstThingsFirst());
            if (next.isEmpty() || !seen.add(next.get().finding())) {
                return next.isEmpty() ? at : one;
            }
            at = next.get();
        }
    }

    private boolean isOut(String slug) {
        return leaveOut.contains(slug);
    }

    private void leave(Judged one, String why) {
        left.add(new Work.Left(one.finding().slug(), one.finding().shown(), why));
    }
}
