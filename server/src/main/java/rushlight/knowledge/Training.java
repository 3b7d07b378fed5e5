package rushlight.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the book knows of training: drills, the skills they are chosen for, what a skill wants first, contact levels, limits and
 * weeks to start from. Read from the statements of the book and of the user's own file.
 */
public final class Training {
    private final List<ContactLevel> levels;
    private final Map<String, Drill> drills;
    private final Map<String, TrainedSkill> skills;
    private final List<Prerequisite> prerequisites;
    private final List<LimitProfile> profiles;
    private final List<PlanPreset> presets;
    private final List<PlanNotice> notices;

    Training(
            List<ContactLevel> levels,
            Map<String, Drill> drills,
            Map<String, TrainedSkill> skills,
            List<Prerequisite> prerequisites,
            List<LimitProfile> profiles,
            List<PlanPreset> presets,
            List<PlanNotice> notices) {
        this.levels = List.copyOf(levels);
        this.drills = Map.copyOf(drills);
        this.skills = Map.copyOf(skills);
        this.prerequisites = List.copyOf(prerequisites);
        this.profiles = List.copyOf(profiles);
        this.presets = List.copyOf(presets);
        this.notices = List.copyOf(notices);
    }

    /**
     * Reads a book.
     *
     * @throws BrokenBookException where a drill, a skill, a limit or a preset lacks what it must have
     */
    public static Training of(Ontology ontology) {
        return new TrainingReader(ontology).read();
    }

    /** The contact levels, the lightest first. */
    public List<ContactLevel> levels() {
        return levels;
    }

    /** The contact level with this slug. */
    public Optional<ContactLevel> level(String slug) {
        return levels.stream().filter(level -> level.slug().equals(slug)).findFirst();
    }

    /** All drills that can be run, in order of their slugs. */
    public List<Drill> drills() {
        return drills.values().stream()
                .sorted((a, b) -> a.slug().compareTo(b.slug()))
                .toList();
    }

    /** The drill with this slug; empty for a kind of drill. */
    public Optional<Drill> drill(String slug) {
        return Optional.ofNullable(drills.get(slug));
    }

    /** The drills that are chosen for a skill, the lightest contact first, then in the order of the progression. */
    public List<Drill> drillsFor(String skill) {
        return drills.values().stream()
                .filter(drill -> drill.first().equals(skill))
                .sorted((a, b) -> {
                    int byLevel = Integer.compare(a.level().rank(), b.level().rank());
                    int byPhase = Integer.compare(a.phaseOrder(), b.phaseOrder());
                    return byLevel != 0
                            ? byLevel
                            : byPhase != 0 ? byPhase : a.slug().compareTo(b.slug());
                })
                .toList();
    }

    /** The skills that drills are chosen for, in order of their slugs. */
    public List<TrainedSkill> skills() {
        return skills.values().stream()
                .sorted((a, b) -> a.slug().compareTo(b.slug()))
                .toList();
    }

    /** The skill with this slug. */
    public Optional<TrainedSkill> skill(String slug) {
        return Optional.ofNullable(skills.get(slug));
    }

    /** Every prerequisite between two of the skills, in order of the skill and of what it needs. */
    public List<Prerequisite> prerequisites() {
        return prerequisites;
    }

    /** What one skill wants first. */
    public List<Prerequisite> prerequisites(String skill) {
        return prerequisites.stream().filter(p -> p.skill().equals(skill)).toList();
    }

    /** The profiles with their limits, in order of their slugs. */
    public List<LimitProfile> profiles() {
        return profiles;
    }

    /** The profile with this slug. */
    public Optional<LimitProfile> profile(String slug) {
        return profiles.stream().filter(profile -> profile.slug().equals(slug)).findFirst();
    }

    /** The weeks to start from, in order of their slugs. */
    public List<PlanPreset> presets() {
        return presets;
    }

    /** The preset with this slug. */
    public Optional<PlanPreset> preset(String slug) {
        return presets.stream().filter(preset -> preset.slug().equals(slug)).findFirst();
    }

    /** What stands on every plan, part by part and in order; never empty in a sound book. */
    public List<PlanNotice> notices() {
        return notices;
    }

    /** What stands on every plan in one part. */
    public List<PlanNotice> notices(PlanNotice.Part part) {
        return notices.stream().filter(notice -> notice.part() == part).toList();
    }
}
