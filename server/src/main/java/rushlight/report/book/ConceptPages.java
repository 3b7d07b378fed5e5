package rushlight.report.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rushlight.handbook.Handbook;
import rushlight.handbook.TechniqueAnswer;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Counters;
import rushlight.knowledge.FitAnswers;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Lessons;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Source;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TeachingOrder;

/** Makes the page of a concept from what the book tells of it. */
final class ConceptPages {
    private static final String RULE_NOTE = "ruleNote";

    private final Taxonomy taxonomy;
    private final Handbook handbook;
    private final Relations relations;
    private final Shelf shelf;
    private final Figures figures;

    ConceptPages(Ontology ontology, Taxonomy taxonomy, Relations relations, Shelf shelf) {
        this.taxonomy = taxonomy;
        this.handbook = Handbook.of(ontology, taxonomy);
        this.relations = relations;
        this.shelf = shelf;
        this.figures = new Figures(ontology, taxonomy);
    }

    ConceptPage of(Concept concept) {
        String slug = concept.slug();
        TechniqueAnswer answer = handbook.technique(slug).orElseThrow();
        List<TeachingOrder.Rung> order = handbook.teach(slug).ladder();
        List<ConceptPage.Pairs> pairings = pairings(slug);
        return new ConceptPage(
                heading(concept, answer),
                answer.definition(),
                answer.notes(),
                shortFacts(answer),
                support(answer.support(), relations.sources(slug)),
                cautions(answer),
                figures.front(answer),
                parts(answer),
                rules(answer),
                answer.faults().stream()
                        .map(f -> new ConceptPage.Fault(
                                shelf.link(f.fault()), f.looksLike().orElse("")))
                        .toList(),
                figures.around(answer, pairings),
                pairings,
                answer.counterTo().stream()
                        .map(p -> new ConceptPage.CounterTo(
                                p.move().map(shelf::link), p.trigger().map(shelf::link)))
                        .toList(),
                answer.fits().stream().map(this::fit).toList(),
                answer.judged().stream()
                        .map(j ->
                                new ConceptPage.Judged(j.right(), shelf.link(j.block()), shelf.links(j.assignments())))
                        .toList(),
                figures.ladder(answer, order),
                steps(slug, order),
                answer.relations().stream()
                        .map(r -> new ConceptPage.Links(r.title(), shelf.links(r.concepts())))
                        .toList(),
                numbers(answer));
    }

    private ConceptPage.Heading heading(Concept concept, TechniqueAnswer answer) {
        return new ConceptPage.Heading(
                concept.slug(),
                answer.label(),
                concept.local(),
                concept.classes().stream()
                        .sorted()
                        .map(name -> shelf.kindLink(name, Shelf.UP))
                        .toList(),
                answer.altLabels());
    }

    private static List<ConceptPage.Fact> shortFacts(TechniqueAnswer answer) {
        List<ConceptPage.Fact> found = new ArrayList<>();
        put(found, "Side", answer.side());
        put(found, "Seen in", String.join(", ", answer.seenIn()));
        put(found, "Why it matters", answer.because());
        put(found, "Rule out first", answer.ruleOutFirst());
        answer.facts().forEach(fact -> put(found, fact.title(), fact.value()));
        return found;
    }

    private static void put(List<ConceptPage.Fact> found, String what, String value) {
        if (!value.isEmpty()) {
            found.add(new ConceptPage.Fact(what, value));
        }
    }

    private List<ConceptPage.Told> cautions(TechniqueAnswer answer) {
        List<ConceptPage.Told> told = new ArrayList<>();
        answer.parts().stream()
                .filter(part -> part.part().equals(Lessons.CAUTION))
                .flatMap(part -> part.statements().stream())
                .forEach(s -> told.add(told(s, answer.slug())));
        answer.cautions().forEach(s -> told.add(told(s, answer.slug())));
        return told;
    }

    private List<ConceptPage.Part> parts(TechniqueAnswer answer) {
        return answer.parts().stream()
                .filter(part ->
                        !part.part().equals(Lessons.CAUTION) && !part.part().equals(RULE_NOTE))
                .map(part -> new ConceptPage.Part(
                        part.title(),
                        part.statements().stream()
                                .map(s -> told(s, answer.slug()))
                                .toList()))
                .toList();
    }

    private List<ConceptPage.Told> rules(TechniqueAnswer answer) {
        return answer.parts().stream()
                .filter(part -> part.part().equals(RULE_NOTE))
                .flatMap(part -> part.statements().stream())
                .map(s -> told(s, answer.slug()))
                .toList();
    }

    private ConceptPage.Told told(Lesson.Statement statement, String page) {
        String note = Stream.of(statement.code(), statement.edition().map(e -> e.matches("\\d+") ? e + " edition" : e))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return new ConceptPage.Told(
                statement.text(),
                support(statement.support(), statement.sources()),
                statement.about().equals(page) ? Optional.empty() : Optional.of(shelf.link(statement.about())),
                note,
                statement.rulesRisk(),
                statement.local());
    }

    private static ConceptPage.Support support(String word, List<Source> sources) {
        String words = word.equals(Rl.COMMON_PRACTICE) ? "common practice" : word + " support";
        return new ConceptPage.Support(
                words,
                sources.stream().filter(Source::printed).map(Shelf::source).toList());
    }

    /** What is taught off it, answer by answer; where it is itself the answer, what is taught against it. */
    private List<ConceptPage.Pairs> pairings(String slug) {
        Counters counters = new Counters(taxonomy);
        Map<Optional<String>, List<Pairing>> off = counters.of(Optional.of(slug), Optional.empty()).stream()
                .filter(p -> p.primary().isPresent())
                .collect(Collectors.groupingBy(Pairing::trigger, LinkedHashMap::new, Collectors.toList()));
        List<ConceptPage.Pairs> found = new ArrayList<>();
        off.forEach((trigger, some) ->
                found.add(pairs(trigger.isPresent() ? "Against" : "As a rule", trigger.map(shelf::link), some)));
        List<Pairing> against = counters.of(Optional.empty(), Optional.of(slug)).stream()
                .filter(p -> p.trigger().isPresent())
                .toList();
        if (!against.isEmpty()) {
            found.add(pairs("How it is attacked", Optional.empty(), against));
        }
        return found;
    }

    /** Neighbors in the order that share a reason and what bears it out are told together. */
    private ConceptPage.Pairs pairs(String title, Optional<Link> trigger, List<Pairing> pairings) {
        List<ConceptPage.Reason> reasons = new ArrayList<>();
        for (int from = 0; from < pairings.size(); ) {
            ConceptPage.Reason first = reason(pairings.get(from), from);
            int to = from + 1;
            while (to < pairings.size() && isSame(first, reason(pairings.get(to), to))) {
                to++;
            }
            reasons.add(new ConceptPage.Reason(
                    first.because(),
                    first.support(),
                    from + 1,
                    pairings.subList(from, to).stream().map(this::counter).toList()));
            from = to;
        }
        return new ConceptPage.Pairs(title, trigger, reasons);
    }

    private ConceptPage.Reason reason(Pairing p, int at) {
        return new ConceptPage.Reason(
                p.because(), support(p.support(), relations.sources(p.id())), at, List.of(counter(p)));
    }

    private static boolean isSame(ConceptPage.Reason a, ConceptPage.Reason b) {
        return a.because().equals(b.because()) && a.support().equals(b.support());
    }

    private ConceptPage.Counter counter(Pairing p) {
        String timing = p.timing().stream().sorted().collect(Collectors.joining(", "));
        return new ConceptPage.Counter(shelf.link(p.counter()), p.side(), timing.replace('-', ' '), p.local());
    }

    private ConceptPage.Fit fit(FitAnswers.Answer answer) {
        return new ConceptPage.Fit(
                shelf.link(answer.block()),
                shelf.link(answer.assignment()),
                answer.wider(),
                shelf.links(answer.right()),
                shelf.links(answer.wrong()),
                answer.onlyIf(),
                answer.dependsOn(),
                answer.caveats().stream()
                        .map(c -> new ConceptPage.Turn(shelf.links(c.flips()), c.dependsOn()))
                        .toList(),
                support(answer.support(), answer.sources()));
    }

    private List<ConceptPage.Step> steps(String slug, List<TeachingOrder.Rung> order) {
        List<ConceptPage.Step> steps = new ArrayList<>();
        for (TeachingOrder.Rung rung : order) {
            steps.add(new ConceptPage.Step(
                    steps.size() + 1,
                    shelf.link(rung.concept()),
                    shelf.links(rung.drills()),
                    rung.concept().equals(slug)));
        }
        return steps.size() == 1 && steps.get(0).drills().isEmpty() ? List.of() : steps;
    }

    private static List<ConceptPage.Fact> numbers(TechniqueAnswer answer) {
        return answer.numbers().entrySet().stream()
                .map(e -> new ConceptPage.Fact("System " + e.getKey(), String.join(", ", e.getValue())))
                .toList();
    }
}
