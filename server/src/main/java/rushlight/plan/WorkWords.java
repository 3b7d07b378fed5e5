package rushlight.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.evidence.Verdict;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Polarity;
import rushlight.knowledge.Prerequisite;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TrainedSkill;
import rushlight.knowledge.Training;

/** Says why something is worked on, or is not. */
final class WorkWords {
    private final Training training;
    private final Taxonomy taxonomy;
    private final SkillRoots roots;

    WorkWords(Training training, Taxonomy taxonomy, SkillRoots roots) {
        this.training = training;
        this.taxonomy = taxonomy;
        this.roots = roots;
    }

    String label(String slug) {
        return taxonomy.shown(slug);
    }

    /** Why a skill that film shows to be missing is worked on. */
    List<String> gap(List<Ranked> own, List<Ranked> explained, Set<String> chosen, boolean asked) {
        List<String> because = new ArrayList<>();
        if (own.isEmpty() || asked) {
            because.add("Asked for by hand.");
        }
        for (Ranked one : own) {
            because.add(RetestWords.capital(name(one)) + ". " + one.gap().sentence());
        }
        if (own.size() > 1) {
            because.add("One skill answers " + (own.size() == 2 ? "both" : "all " + own.size()) + " of them.");
        }
        if (own.stream().anyMatch(Ranked::isSafety)) {
            because.add("Safety comes before every rank: it opens the block, and nobody hits before its check.");
        } else {
            own.stream().limit(1).map(Ranked::words).forEach(because::add);
        }
        if (own.stream().noneMatch(one -> one.gap().verdict().stands() || one.isSafety()) && !own.isEmpty()) {
            because.add("It is not sure yet; there is room for it, and more film should settle it meanwhile.");
        }
        own.stream()
                .flatMap(one -> roots.goodAlready(one.gap()).stream())
                .filter(skill -> !chosen.contains(skill.slug()))
                .distinct()
                .forEach(skill -> because.add("No time of its own for " + skill.label() + ": " + shows(skill)));
        if (!explained.isEmpty()) {
            because.add("It may also explain " + names(explained) + ".");
        }
        own.stream()
                .flatMap(one -> one.gap().finding().advice().ruleOutFirst().stream())
                .distinct()
                .forEach(first -> because.add("Rule out first: " + first));
        return because;
    }

    /** Why a skill that prepares others is worked on. */
    List<String> prerequisite(String skill, Collection<String> after, SkillRoots.State state) {
        List<String> because = new ArrayList<>();
        because.add("Comes before " + labels(after) + ".");
        after.stream()
                .flatMap(s -> training.prerequisites(s).stream())
                .filter(p -> p.needs().equals(skill) && !p.because().isEmpty())
                .map(Prerequisite::because)
                .distinct()
                .limit(1)
                .forEach(because::add);
        because.add(
                state == SkillRoots.State.MISSING
                        ? "Film shows that it is missing."
                        : "Film does not show whether he has it. If the staff has seen it, say so, and the time goes"
                                + " elsewhere.");
        return because;
    }

    Work.Look look(String skill, List<Prerequisite> choice) {
        Prerequisite first = choice.get(0);
        String what = choice.stream().map(p -> label(p.needs())).collect(Collectors.joining(" or "));
        return new Work.Look(
                first.needs(),
                what,
                "Film does not show whether he has it, and " + label(skill) + " stands on it."
                        + (first.because().isEmpty() ? "" : " " + first.because()));
    }

    /** Why nothing is worked on for a gap. */
    String nothingToTrain(Judged gap) {
        List<TrainedSkill> good = roots.goodAlready(gap);
        return good.isEmpty()
                ? "It says what to look at; there is no skill to train for it."
                : "What the book trains for it needs no weeks. "
                        + good.stream()
                                .map(skill -> RetestWords.capital(skill.label()) + ": " + shows(skill))
                                .collect(Collectors.joining(" "))
                        + " Look for what else may be behind it.";
    }

    private String shows(TrainedSkill skill) {
        return roots.good(skill).map(film -> "film shows " + film.words()).orElse("");
    }

    String explained(Ranked one, Ranked root) {
        return "\"" + name(root)
                + "\" may explain it: that is worked on first, and this is looked at again afterwards. "
                + one.gap().sentence();
    }

    String noRoom(List<String> chain, int room) {
        return "There is room for " + room + (room == 1 ? " skill" : " skills") + " in this block"
                + (chain.isEmpty() ? "" : ", and it needs " + labels(chain) + " first") + "; it comes next.";
    }

    /** What film says of the rest, as far as a coach should know that it was not forgotten. */
    List<Work.Left> open(Assessment assessment, List<String> told) {
        return assessment.findings().stream()
                .filter(one -> !told.contains(one.finding().slug()))
                .sorted(Judged.mostTellingFirst())
                .flatMap(one -> why(one).stream()
                        .map(why -> new Work.Left(
                                one.finding().slug(), one.finding().shown(), why)))
                .toList();
    }

    private static List<String> why(Judged one) {
        boolean gap = one.finding().polarity() == Polarity.GAP;
        if (one.finding().polarity() == Polarity.CONDITIONAL && one.verdict().stands()) {
            return List.of("It hangs on his duty, which nobody has said. "
                    + one.finding().advice().question().orElse("Ask what he was told."));
        }
        if (gap && one.verdict() == Verdict.WATCH) {
            return List.of("Not sure enough to spend weeks on. " + one.sentence());
        }
        if (gap
                && one.verdict() == Verdict.NOT_ENOUGH_TAPE
                && one.outcome().rate().events() > 0) {
            return List.of("Collect reps first. " + one.sentence());
        }
        return List.of();
    }

    private static String name(Ranked one) {
        return one.gap().finding().shown();
    }

    private static String names(List<Ranked> some) {
        return some.stream().map(one -> "\"" + name(one) + "\"").collect(Collectors.joining(", "));
    }

    private String labels(Collection<String> slugs) {
        return slugs.stream().map(this::label).collect(Collectors.joining(", "));
    }
}
