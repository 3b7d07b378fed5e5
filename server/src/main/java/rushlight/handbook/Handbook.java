package rushlight.handbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import rushlight.knowledge.Concept;
import rushlight.knowledge.FitAnswers;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Lessons;
import rushlight.knowledge.Numbering;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Source;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TeachingOrder;
import rushlight.knowledge.Training;
import rushlight.words.FrontNumbers;

/** The book as a coach opens it: a page for each concept, what to teach before it, what is right against a block. */
public final class Handbook {
    private final Taxonomy taxonomy;
    private final Relations relations;
    private final Lessons lessons;
    private final FitAnswers fits;
    private final TeachingOrder order;
    private final FrontNumbers frontNumbers;
    private final TrainingFacts training;

    private Handbook(Ontology ontology, Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
        this.relations = new Relations(ontology);
        this.lessons = Lessons.of(ontology);
        this.fits = new FitAnswers(ontology, taxonomy);
        this.order = new TeachingOrder(taxonomy, relations);
        this.frontNumbers = FrontNumbers.of(taxonomy);
        this.training = new TrainingFacts(Training.of(ontology), taxonomy);
    }

    /** Reads the lessons of a book; made once for each book. */
    public static Handbook of(Ontology ontology, Taxonomy taxonomy) {
        return new Handbook(ontology, taxonomy);
    }

    /** The lessons themselves. */
    public Lessons lessons() {
        return lessons;
    }

    /** What the classes of a concept are called, such as {@code rush move}. */
    public List<String> kinds(Concept concept) {
        return concept.classes().stream().sorted().map(relations::kind).toList();
    }

    /** The page of a concept; empty where the book has none with this slug. */
    public Optional<TechniqueAnswer> technique(String slug) {
        return taxonomy.concept(slug).map(this::page);
    }

    /** What to teach before a concept. */
    public TeachAnswer teach(String slug) {
        List<TeachingOrder.Rung> ladder = order.to(slug);
        Map<String, Set<String>> asked = new LinkedHashMap<>();
        for (TeachingOrder.Rung rung : ladder) {
            asked.computeIfAbsent(rung.concept(), c -> new LinkedHashSet<>());
            rung.drills()
                    .forEach(drill -> taxonomy.closure(drill).stream()
                            .sorted()
                            .forEach(above -> asked.computeIfAbsent(above, c -> new LinkedHashSet<>())
                                    .add(drill)));
        }
        List<TeachAnswer.Caution> cautions = new ArrayList<>();
        asked.forEach((concept, drills) -> {
            List<Lesson.Statement> told = lessons.about(concept, Lessons.CAUTION);
            if (!told.isEmpty()) {
                cautions.add(new TeachAnswer.Caution(concept, List.copyOf(drills), told));
            }
        });
        return new TeachAnswer(slug, ladder, List.copyOf(cautions));
    }

    /** What is right and wrong against a block under a duty, or under each. */
    public FitAnswer answers(String block, Optional<String> assignment) {
        List<Lesson.Statement> cautions = taxonomy.closure(block).stream()
                .sorted()
                .flatMap(wider -> Stream.of(Lessons.CAUTION, Lessons.RULE_NOTE)
                        .flatMap(part -> lessons.about(wider, part).stream()))
                .toList();
        return new FitAnswer(block, assignment, fits.to(block, assignment), cautions);
    }

    /** What a number means in a named system or in each; empty where no system has it. */
    public Optional<NumberAnswer> number(String number, Optional<String> system) {
        Numbering numbering = taxonomy.numbering();
        List<NumberAnswer.Meaning> meanings = new ArrayList<>();
        for (String name : system.map(Set::of).orElseGet(numbering::systems)) {
            List<String> positions = numbering.positions(name, number);
            for (int i = 0; i < positions.size(); i++) {
                meanings.add(
                        new NumberAnswer.Meaning(name, positions.get(i), i + 1, alignments(positions.get(i), number)));
            }
        }
        if (meanings.isEmpty()) {
            return Optional.empty();
        }
        long spots =
                meanings.stream().map(NumberAnswer.Meaning::position).distinct().count();
        return Optional.of(new NumberAnswer(
                numbering.numbers().getOrDefault(Numbering.key(number), number),
                system,
                List.copyOf(meanings),
                system.isPresent() ? Optional.empty() : numbering.unnamed(number),
                spots > 1));
    }

    /** The alignments at a spot, those that bear the number in their name first. */
    private List<String> alignments(String position, String number) {
        return taxonomy.numbering().alignmentsAt(position).stream()
                .sorted(Comparator.comparing(
                        slug -> !frontNumbers.in(taxonomy.label(slug)).equals(frontNumbers.in(number))))
                .toList();
    }

    private TechniqueAnswer page(Concept concept) {
        String slug = concept.slug();
        List<Lesson> told = lessons.about(slug);
        List<Lesson.Statement> cautions = Stream.concat(
                        taxonomy.closure(slug).stream()
                                .filter(wider -> !wider.equals(slug))
                                .sorted()
                                .flatMap(wider -> lessons.about(wider, Lessons.CAUTION).stream()),
                        training.hazards(slug).stream())
                .toList();
        PairingsOf pairings = new PairingsOf(taxonomy);
        List<FitAnswers.Answer> rules = fits.to(slug, Optional.empty());
        return new TechniqueAnswer(
                slug,
                concept.label(),
                concept.altLabels(),
                kinds(concept),
                concept.definition(),
                relations.notes(slug),
                relations.text(slug, "side"),
                relations.texts(slug, "seenIn"),
                relations.text(slug, "because"),
                relations.text(slug, "ruleOutFirst"),
                training.of(slug),
                told,
                cautions,
                TechniqueLinks.of(slug, taxonomy, relations),
                relations.choices(slug, "requiresOneOf"),
                faults(slug),
                pairings.of(slug),
                pairings.counteredBy(slug),
                rules.isEmpty() ? fits.under(slug) : rules,
                judged(slug),
                numbers(slug),
                relations.support(slug),
                relations.sources(slug),
                sources(slug, told, cautions),
                concept.local());
    }

    private List<TechniqueAnswer.FaultLook> faults(String slug) {
        return relations.from(slug, "commonFault").stream()
                .sorted(Comparator.comparing(taxonomy::label))
                .map(fault -> new TechniqueAnswer.FaultLook(
                        fault,
                        lessons.about(fault, "looksLike").stream()
                                .map(Lesson.Statement::text)
                                .findFirst()))
                .toList();
    }

    private List<TechniqueAnswer.Judged> judged(String slug) {
        List<TechniqueAnswer.Judged> found = new ArrayList<>();
        for (boolean right : new boolean[] {true, false}) {
            Map<String, Set<String>> byBlock = new TreeMap<>(Comparator.comparing(taxonomy::label));
            for (FitRule rule : taxonomy.fitRules()) {
                if ((right ? rule.right() : rule.wrong()).contains(slug)) {
                    byBlock.computeIfAbsent(rule.block(), b -> new LinkedHashSet<>())
                            .add(rule.assignment());
                }
            }
            byBlock.forEach((block, duties) -> found.add(new TechniqueAnswer.Judged(
                    right,
                    block,
                    duties.stream()
                            .sorted(Comparator.comparing(taxonomy::label))
                            .toList())));
        }
        return List.copyOf(found);
    }

    /** The numbers of the spot that a concept is or stands at, by numbering system. */
    public Map<String, List<String>> numbers(String slug) {
        Numbering numbering = taxonomy.numbering();
        String spot = numbering.positionOf(slug).orElse(slug);
        Map<String, List<String>> found = new TreeMap<>();
        for (String system : numbering.systems()) {
            List<String> here = numbering.numbers(system).stream()
                    .filter(number -> numbering.positions(system, number).contains(spot))
                    .toList();
            if (!here.isEmpty()) {
                found.put(system, here);
            }
        }
        return found;
    }

    private List<Source> sources(String slug, List<Lesson> told, List<Lesson.Statement> cautions) {
        Set<Source> found = new LinkedHashSet<>(relations.sources(slug));
        told.forEach(lesson -> lesson.statements().forEach(s -> found.addAll(s.sources())));
        cautions.forEach(s -> found.addAll(s.sources()));
        return List.copyOf(found);
    }
}
