package rushlight.report.prospect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rushlight.figure.Drawing;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.OpinionsBeside;
import rushlight.knowledge.Taxonomy;
import rushlight.report.Bodies;
import rushlight.report.ProspectFigures;

/**
 * Puts a report together. What always prints is there whatever is asked; of the rest the entries that matter most are kept,
 * the first of every part before the second of any.
 */
final class Composer {
    /** The entries of the parts, and which of them come first. */
    private record Candidate(Part part, int place, ReportPage.Entry entry) {}

    private final Material material;
    private final Paragraphs text;
    private final Paper paper;
    private final Taxonomy taxonomy;
    private final List<Judged> inOrder;
    private final List<Drawing> drawings;
    private final List<ReportPage.Entry> safety;
    private final List<Candidate> candidates = new ArrayList<>();

    Composer(Material material, Taxonomy taxonomy, ProspectFigures figures, Paper paper) {
        this.material = material;
        this.paper = paper;
        this.taxonomy = taxonomy;
        this.inOrder = material.assessment().findings().stream()
                .sorted(Judged.mostTellingFirst())
                .toList();
        this.text = new Paragraphs(material, inOrder, taxonomy);
        this.drawings = Stream.concat(
                        Stream.of(figures.front(material.profile())), figures.flow(material.profile()).stream())
                .toList();
        Entries entries = new Entries(taxonomy);
        add(Part.GAPS, gaps().map(entries::of).toList());
        add(Part.STRENGTHS, judged(Sorts::isStrength).map(entries::of).toList());
        add(
                Part.DUTY,
                judged(Sorts::hangsOnDuty)
                        .filter(one -> !Sorts.isSafety(one))
                        .map(entries::of)
                        .toList());
        RoleEntries roles = new RoleEntries(taxonomy);
        add(Part.ROLES, material.assessment().roles().stream().map(roles::of).toList());
        add(Part.PROJECTION, material.foreseen().stream().map(roles::of).toList());
        add(Part.SAID, said());
        candidates.sort(Comparator.comparingInt(Candidate::place));
        this.safety = judged(Sorts::isSafety).map(entries::of).toList();
    }

    /** How many entries may be kept. */
    int most() {
        return candidates.size();
    }

    /** The report with so many of the entries. */
    ReportPage page(int kept) {
        Set<Candidate> in = new HashSet<>(candidates.subList(0, kept));
        List<ReportPage.Section> sections = new ArrayList<>();
        if (!safety.isEmpty()) {
            sections.add(ReportPage.Section.ofEntries("safety", "Safety first", safety, Optional.empty()));
        }
        material.written().parts().forEach(part -> section(part, in).ifPresent(sections::add));
        sections.add(ReportPage.Section.ofWords("limits", "Limits of the tape", text.limits()));
        Assessment assessment = material.assessment();
        String name = assessment.prospect().name();
        return new ReportPage(
                name,
                "What the film shows of " + name + ": strengths, gaps, what hangs on his duty, and the reps behind it.",
                Bodies.of(assessment.prospect()),
                text.lead(),
                sections,
                Cautions.ALWAYS,
                Styles.of(paper, name));
    }

    private Optional<ReportPage.Section> section(Part part, Set<Candidate> in) {
        return switch (part) {
            case SUMMARY -> Optional.of(section(part, text.summary()));
            case FIGURES ->
                Optional.of(new ReportPage.Section(
                        part.slug(), part.title(), List.of(), drawings, List.of(), List.of(), Optional.empty()));
            case PLAN -> material.plan().map(plan -> new PlanPart(taxonomy, material.assessment()).of(part, plan));
            case OPEN -> Optional.of(section(part, text.open()));
            case LINES -> Optional.of(section(part, text.lines()));
            case READERS -> Optional.of(section(part, text.readers()));
            case GAPS, STRENGTHS, DUTY, ROLES, PROJECTION, SAID -> listed(part, in);
        };
    }

    private Optional<ReportPage.Section> listed(Part part, Set<Candidate> in) {
        List<Candidate> all =
                candidates.stream().filter(one -> one.part() == part).toList();
        if (all.isEmpty()) {
            return part == Part.GAPS || part == Part.STRENGTHS
                    ? Optional.of(section(part, List.of("Nothing stands on this tape; see what is still open.")))
                    : Optional.empty();
        }
        List<ReportPage.Entry> kept =
                all.stream().filter(in::contains).map(Candidate::entry).toList();
        int more = all.size() - kept.size();
        return Optional.of(ReportPage.Section.ofEntries(
                part.slug(),
                part.title(),
                kept,
                more == 0
                        ? Optional.empty()
                        : Optional.of(more + (kept.isEmpty() ? "" : " more") + " on the screen.")));
    }

    private static ReportPage.Section section(Part part, List<String> paragraphs) {
        return ReportPage.Section.ofWords(part.slug(), part.title(), paragraphs);
    }

    private void add(Part part, List<ReportPage.Entry> entries) {
        if (material.written().parts().contains(part)) {
            for (int i = 0; i < entries.size(); i++) {
                candidates.add(new Candidate(part, i, entries.get(i)));
            }
        }
    }

    private Stream<Judged> judged(Predicate<Judged> which) {
        return inOrder.stream().filter(which);
    }

    private Stream<Judged> gaps() {
        return judged(one -> Sorts.isGap(one) && !Sorts.isSafety(one));
    }

    /** What the log answers, then what it does not. */
    private List<ReportPage.Entry> said() {
        Map<String, ReportPage.Entry> entries = new LinkedHashMap<>();
        inOrder.forEach(one -> material.spoken()
                .to(one.finding().slug())
                .forEach(said -> entries.putIfAbsent(said.opinion().id(), plain(said.sentence()))));
        material.spoken()
                .apart()
                .forEach(said ->
                        entries.putIfAbsent(said.id(), plain(OpinionsBeside.quoted(said) + " No finding answers it.")));
        return List.copyOf(entries.values());
    }

    private static ReportPage.Entry plain(String sentence) {
        return ReportPage.Entry.told("", "", sentence, List.of());
    }
}
