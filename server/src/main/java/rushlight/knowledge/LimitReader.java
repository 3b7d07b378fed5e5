package rushlight.knowledge;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.RDFS;

/** Reads limits with their profiles, presets with their days, and what stands on every plan. */
final class LimitReader {
    private final Ontology ontology;
    private final Facts facts;
    private final Map<Node, ContactLevel> levels;

    LimitReader(Ontology ontology, Map<Node, ContactLevel> levels) {
        this.ontology = ontology;
        this.facts = new Facts(ontology.graph());
        this.levels = levels;
    }

    List<LimitProfile> profiles() {
        List<Node> limits = facts.ofClass("Limit");
        return facts.ofClass("LimitProfile").stream()
                .map(profile -> new LimitProfile(
                        Rl.slug(profile),
                        label(profile),
                        facts.needed(profile, "playingLevel"),
                        facts.needed(profile, "standing"),
                        facts.needed(profile, "edition"),
                        facts.text(profile, "checkedOn").map(day -> date(profile, day)),
                        facts.needed(profile, "contactMeans"),
                        facts.text(profile, "text").orElse(""),
                        limits.stream()
                                .filter(limit -> facts.slugs(limit, "ofProfile").contains(Rl.slug(profile)))
                                .map(this::limit)
                                .toList(),
                        support(profile),
                        Source.of(profile, facts, facts),
                        ontology.isLocal(profile)))
                .toList();
    }

    private Limit limit(Node node) {
        Node kind = facts.all(node, Rl.term("limitKind")).stream()
                .findFirst()
                .orElseThrow(() -> new BrokenBookException("The book's " + Rl.slug(node) + " lacks rl:limitKind."));
        return new Limit(
                Rl.slug(node),
                Rl.slug(kind),
                label(kind),
                facts.needed(kind, "bound").equals("at most") ? Limit.Bound.AT_MOST : Limit.Bound.AT_LEAST,
                new BigDecimal(facts.needed(node, "amount")),
                facts.needed(kind, "unit"),
                facts.some(node, "contactLevel", levels).stream().findFirst(),
                facts.text(node, "seasonPart"),
                facts.text(node, "rangeOf")
                        .map(of -> new Limit.Range(of, decimal(node, "rangeFrom"), decimal(node, "rangeTo"))),
                facts.text(node, "text").orElse(""),
                support(node),
                Source.of(node, facts, facts),
                ontology.isLocal(node));
    }

    List<PlanPreset> presets() {
        List<Node> days = facts.ofClass("PresetDay").stream()
                .sorted(Comparator.comparingInt(day -> facts.number(day, "order")))
                .toList();
        return facts.ofClass("PlanPreset").stream()
                .map(preset -> new PlanPreset(
                        Rl.slug(preset),
                        label(preset),
                        facts.needed(preset, "seasonPart"),
                        facts.number(preset, "weeks"),
                        facts.text(preset, "text").orElse(""),
                        days.stream()
                                .filter(day -> facts.slugs(day, "ofPreset").contains(Rl.slug(preset)))
                                .map(this::day)
                                .toList(),
                        ontology.isLocal(preset)))
                .toList();
    }

    List<PlanNotice> notices() {
        return facts.ofClass("PlanNotice").stream()
                .map(node -> new PlanNotice(
                        Rl.slug(node),
                        part(node),
                        facts.number(node, "order"),
                        facts.needed(node, "text"),
                        support(node),
                        Source.of(node, facts, facts),
                        ontology.isLocal(node)))
                .sorted(Comparator.comparing(PlanNotice::part)
                        .thenComparing(PlanNotice::order)
                        .thenComparing(PlanNotice::slug))
                .toList();
    }

    private PlanNotice.Part part(Node notice) {
        String word = facts.needed(notice, "noticePart");
        return Stream.of(PlanNotice.Part.values())
                .filter(part -> part.slug().equals(word))
                .findFirst()
                .orElseThrow(() -> new BrokenBookException(
                        "The book's " + Rl.slug(notice) + " stands in no part of the notices: " + word + "."));
    }

    private PlanPreset.Day day(Node node) {
        return new PlanPreset.Day(
                DayOfWeek.valueOf(facts.needed(node, "weekday").toUpperCase(Locale.ROOT)),
                facts.number(node, "minutes"),
                facts.one(node, "contactLevel", levels),
                facts.number(node, "people"),
                facts.slugs(node, "without"),
                facts.number(node, "teamContactMinutes"),
                facts.text(node, "because").orElse(""));
    }

    private static LocalDate date(Node profile, String day) {
        try {
            return LocalDate.parse(day);
        } catch (DateTimeParseException e) {
            throw new BrokenBookException("The book's " + Rl.slug(profile) + " was checked on no date: " + day
                    + ". Write it like 2026-08-01.");
        }
    }

    private Optional<BigDecimal> decimal(Node node, String property) {
        return facts.text(node, property).map(BigDecimal::new);
    }

    private String support(Node node) {
        return facts.text(node, "support").orElse(Rl.COMMON_PRACTICE);
    }

    private String label(Node node) {
        return facts.texts(node, RDFS.label.asNode()).stream().findFirst().orElse(Rl.slug(node));
    }
}
