package rushlight.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TrainedSkill;
import rushlight.knowledge.Training;

/**
 * Chooses what a block works on: safety first, then what a person wants, then the gaps that stand by their rank. Findings that
 * one missing skill explains share it; what a skill needs and film shows to be missing comes before it. The same film and the
 * same wishes give the same choice.
 */
final class WorkChooser {
    /** Gaps in one block; few things at a time is common practice. */
    private static final int MOST_GAPS = 4;
    /** What a prerequisite is worth, by what it prepares. */
    private static final double INHERITED = 0.6;

    private final Training training;
    private final Assessment assessment;
    private final PlanRequest.Wants wants;
    private final SkillRoots roots;
    private final WorkWords words;
    private final int room;
    private final int opening;
    private final Function<String, Optional<String>> lacks;
    private final List<Work.Left> left = new ArrayList<>();
    private final Map<String, List<Ranked>> bySkill = new LinkedHashMap<>();
    private final Map<String, List<Ranked>> explained = new HashMap<>();
    private final Set<String> chosen = new LinkedHashSet<>();
    private final Set<String> gaps = new LinkedHashSet<>();
    private final Set<String> safety = new LinkedHashSet<>();
    private final Map<String, Integer> weights = new HashMap<>();
    private final Map<String, Set<String>> prepares = new HashMap<>();
    private final List<String> blocked = new ArrayList<>();

    /**
     * @param room skills that fit into the block
     * @param opening skills of safety that can open it
     * @param lacks why a skill cannot be trained in the sessions there are; empty where it can
     */
    WorkChooser(
            Training training,
            Taxonomy taxonomy,
            Assessment assessment,
            PlanRequest.Wants wants,
            int room,
            int opening,
            Function<String, Optional<String>> lacks) {
        this.training = training;
        this.assessment = assessment;
        this.wants = wants;
        this.roots = new SkillRoots(training, assessment, Set.copyOf(wants.has()));
        this.words = new WorkWords(training, taxonomy, roots);
        this.room = room;
        this.opening = opening;
        this.lacks = lacks;
    }

    Work choose() {
        StandingGaps standing = new StandingGaps(assessment, roots, words, wants.leaveOut());
        List<Ranked> ranked = standing.ranked();
        left.addAll(standing.left());
        standing.blocked().ifPresent(blocked::add);
        int top = Math.max(100, ranked.stream().mapToInt(Ranked::score).max().orElse(0));
        pinned(top);
        share(ranked);
        ranked.stream()
                .filter(Ranked::isSafety)
                .forEach(r -> safety.add(r.skill().slug()));
        safety.retainAll(bySkill.keySet());
        safety.forEach(skill -> add(skill, top));
        bySkill.keySet().forEach(skill -> add(skill, weights.getOrDefault(skill, best(skill))));
        int most = weights.values().stream().mapToInt(w -> w).max().orElse(top);
        safety.stream().filter(chosen::contains).forEach(skill -> weights.put(skill, most));
        open();
        List<Work.Target> targets = targets();
        List<String> told = new ArrayList<>();
        targets.forEach(t -> told.addAll(t.findings()));
        left.forEach(l -> told.add(l.finding()));
        left.addAll(words.open(assessment, told));
        return new Work(targets, left, looks(), blocked.stream().findFirst());
    }

    private void pinned(int top) {
        List<String> asked = wants.workOn();
        for (int i = 0; i < asked.size(); i++) {
            String slug = asked.get(i);
            int weight = top + top * (asked.size() - i) / 10;
            Optional<Judged> finding = assessment.finding(slug);
            Optional<TrainedSkill> skill = finding.flatMap(roots::answer).or(() -> training.skill(slug));
            if (skill.isEmpty()) {
                continue;
            }
            List<Ranked> own = bySkill.computeIfAbsent(skill.get().slug(), s -> new ArrayList<>());
            finding.ifPresent(f -> own.add(Ranked.of(f, skill.get(), roots.film(skill.get()), assessment.games())));
            weights.putIfAbsent(skill.get().slug(), weight);
        }
    }

    /** Puts each gap to its skill, or to the gap that explains it. */
    private void share(List<Ranked> ranked) {
        Map<String, Ranked> bySlug = new LinkedHashMap<>();
        ranked.forEach(r -> bySlug.put(r.finding(), r));
        for (Ranked one : ranked) {
            Ranked root = one.isSafety() ? one : StandingGaps.root(one, bySlug);
            boolean asked = weights.containsKey(one.skill().slug());
            if (!root.equals(one) && !root.skill().equals(one.skill()) && !asked) {
                explained
                        .computeIfAbsent(root.skill().slug(), s -> new ArrayList<>())
                        .add(one);
                leave(one.gap(), words.explained(one, root));
            } else {
                List<Ranked> own = bySkill.computeIfAbsent(one.skill().slug(), s -> new ArrayList<>());
                if (own.stream().noneMatch(r -> r.finding().equals(one.finding()))) {
                    own.add(one);
                }
            }
        }
    }

    /** Takes a skill, and what has to come before it, into the block, where there is room. */
    private void add(String skill, int weight) {
        List<Ranked> own = bySkill.getOrDefault(skill, List.of());
        if (gaps.contains(skill)) {
            return;
        }
        Optional<String> lack = lacks.apply(skill);
        boolean asked = weights.containsKey(skill);
        if (lack.isPresent() || (!asked && !safety.contains(skill) && gaps.size() >= MOST_GAPS)) {
            leave(skill, own, lack.orElse("Four things at a time are enough; it comes next."));
            return;
        }
        List<String> train =
                own.isEmpty() ? List.of() : own.get(0).gap().finding().advice().trainFirst();
        List<String> chain = new ArrayList<>(roots.missingBefore(skill, train));
        chain.removeIf(s -> chosen.contains(s)
                || wants.leaveOut().contains(s)
                || lacks.apply(s).isPresent());
        int needed = chain.size() + (chosen.contains(skill) ? 0 : 1);
        if (chosen.size() + needed > room && !chosen.isEmpty()) {
            leave(skill, own, words.noRoom(chain, room));
            return;
        }
        while (chain.size() + 1 > Math.max(1, room)) {
            chain.remove(chain.size() - 1);
        }
        chosen.addAll(chain);
        chosen.add(skill);
        gaps.add(skill);
        weights.put(skill, Math.max(1, weight));
        chain.forEach(
                s -> prepares.computeIfAbsent(s, k -> new LinkedHashSet<>()).add(skill));
        roots.ancestors(skill).stream()
                .filter(chosen::contains)
                .forEach(s ->
                        prepares.computeIfAbsent(s, k -> new LinkedHashSet<>()).add(skill));
    }

    private int best(String skill) {
        return bySkill.getOrDefault(skill, List.of()).stream()
                .mapToInt(Ranked::score)
                .max()
                .orElse(0);
    }

    /** No more matters of safety than can open the block; nobody hits while one of them waits. */
    private void open() {
        List<String> all = List.copyOf(safety);
        all.stream()
                .filter(s -> !chosen.contains(s))
                .forEach(s -> blocked.add("a matter of safety has no place in it"));
        List<String> in = all.stream().filter(chosen::contains).toList();
        if (in.size() > opening) {
            safety.removeAll(in.subList(opening, in.size()));
            blocked.add("more than " + opening + " matters of safety are open");
        }
    }

    private List<Work.Target> targets() {
        List<Work.Target> targets = new ArrayList<>();
        for (String skill : roots.inOrder(chosen)) {
            Set<String> before = new TreeSet<>(roots.ancestors(skill));
            before.retainAll(chosen);
            TrainedSkill trained = training.skill(skill).orElseThrow();
            boolean gap = gaps.contains(skill);
            Collection<String> after = prepares.getOrDefault(skill, Set.of());
            int inherited = after.stream()
                    .mapToInt(s -> (int) Math.round(INHERITED * weights.getOrDefault(s, 0)))
                    .max()
                    .orElse(0);
            List<Ranked> own = gap
                    ? bySkill.getOrDefault(skill, List.of())
                    : after.stream()
                            .flatMap(s -> bySkill.getOrDefault(s, List.of()).stream())
                            .toList();
            targets.add(new Work.Target(
                    skill,
                    trained.label(),
                    !gap ? Work.Role.PREREQUISITE : safety.contains(skill) ? Work.Role.SAFETY : Work.Role.GAP,
                    Math.max(1, Math.max(gap ? weights.getOrDefault(skill, 1) : 0, inherited)),
                    own.stream().map(Ranked::finding).distinct().toList(),
                    roots.inOrder(before),
                    gap
                            ? words.gap(
                                    own,
                                    explained.getOrDefault(skill, List.of()),
                                    chosen,
                                    wants.workOn().contains(skill))
                            : words.prerequisite(skill, after, roots.state(skill))));
        }
        return targets;
    }

    private List<Work.Look> looks() {
        Map<String, Work.Look> looks = new LinkedHashMap<>();
        for (String skill : roots.inOrder(chosen)) {
            roots.notShown(skill, chosen).forEach(choice -> {
                Work.Look look = words.look(skill, choice);
                looks.putIfAbsent(look.skill(), look);
            });
        }
        return List.copyOf(looks.values());
    }

    private void leave(String skill, List<Ranked> own, String why) {
        own.stream().sorted(Comparator.comparing(Ranked::finding)).forEach(r -> leave(r.gap(), why));
        if (own.isEmpty()) {
            left.add(new Work.Left(skill, words.label(skill), why));
        }
    }

    private void leave(Judged one, String why) {
        left.add(new Work.Left(one.finding().slug(), one.finding().shown(), why));
    }
}
