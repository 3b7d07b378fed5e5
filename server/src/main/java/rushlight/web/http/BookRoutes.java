package rushlight.web.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.jena.vocabulary.RDFS;
import rushlight.archive.Archive;
import rushlight.index.Count;
import rushlight.knowledge.Column;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Rl;
import rushlight.knowledge.StepFacet;
import rushlight.knowledge.Taxonomy;
import rushlight.web.ColumnsAnswer;
import rushlight.web.CompletionsAnswer;
import rushlight.web.ConceptBrief;
import rushlight.web.ConceptsAnswer;
import rushlight.web.CountersAnswer;
import rushlight.web.FindingsAnswer;
import rushlight.words.Completions;
import rushlight.words.NearestLabels;

/** What the book knows. */
final class BookRoutes {
    private static final int MOST = 1_000;
    private static final int MOST_COMPLETIONS = 50;

    /** As a book is looked through: by the name, whatever the capitals. */
    private static final Comparator<Concept> BY_NAME =
            Comparator.comparing(Concept::label, String.CASE_INSENSITIVE_ORDER).thenComparing(Concept::slug);

    private final Archive archive;
    private final FilmVersion version;
    private final Taxonomy taxonomy;
    private final Map<String, Completions> completions = new ConcurrentHashMap<>();

    BookRoutes(Archive archive, FilmVersion version) {
        this.archive = archive;
        this.version = version;
        this.taxonomy = archive.book().taxonomy();
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/labels", this::labels),
                Route.get("/api/columns", this::columns),
                Route.get("/api/complete", this::complete),
                Route.get("/api/findings", this::findings),
                Route.get("/api/concepts", this::concepts),
                Route.get("/api/concepts/{slug}/counters", this::counters),
                Route.get("/api/concepts/{slug}/film", this::film));
    }

    private void labels(Context ctx) {
        Versions.json(ctx, version.ofBook(), () -> {
            Map<String, String> labels = new TreeMap<>();
            taxonomy.concepts().forEach(concept -> labels.put(concept.slug(), concept.label()));
            return labels;
        });
    }

    private void columns(Context ctx) {
        Versions.json(ctx, version.ofBook(), () -> ColumnsAnswer.of(taxonomy, archive.numbering()));
    }

    private void findings(Context ctx) {
        Versions.json(
                ctx, version.ofBook(), () -> FindingsAnswer.of(archive.book().findings()));
    }

    private void complete(Context ctx) {
        String text = Request.word(ctx, "q").orElse("");
        int most = Request.number(ctx, "limit", 10, 1, MOST_COMPLETIONS);
        Optional<Column> column = Request.word(ctx, "column").map(this::column);
        String by = Request.word(ctx, "by").map(this::whose).orElse("");
        if (column.isPresent() && column.get().kind() == Column.Kind.WORDS) {
            List<String> words = column.get().oneOf().stream()
                    .filter(word -> word.contains(text.toLowerCase(java.util.Locale.ROOT)))
                    .limit(most)
                    .toList();
            Versions.json(
                    ctx,
                    new CompletionsAnswer(
                            words.stream().map(CompletionsAnswer::item).toList()));
            return;
        }
        Completions all = completions.computeIfAbsent(
                column.map(Column::name).orElse("") + " " + by, key -> Completions.of(among(column, by)));
        Versions.json(
                ctx,
                new CompletionsAnswer(
                        all.of(text, most).stream().map(CompletionsAnswer::item).toList()));
    }

    private Column column(String name) {
        return taxonomy.film().named(name).orElseThrow(() -> {
            List<String> names =
                    taxonomy.film().all().stream().map(Column::name).toList();
            return Problem.of(400, "A film log has no column \"" + name + "\".")
                    .withNearest(NearestLabels.words(names).to(name, 3))
                    .thrown();
        });
    }

    /** Whose step of an exchange is meant, as the book names those who take one. */
    private String whose(String by) {
        List<String> known = taxonomy.film().stepFacets().stream()
                .map(StepFacet::by)
                .distinct()
                .sorted()
                .toList();
        if (!known.contains(by)) {
            throw Problem.of(400, "\"by\" is " + String.join(" or ", known) + ", not \"" + by + "\".")
                    .withNearest(known)
                    .thrown();
        }
        return by;
    }

    private Collection<Concept> among(Optional<Column> column, String by) {
        if (column.isEmpty()) {
            return taxonomy.concepts();
        }
        Column its = column.get();
        Collection<String> classes = its.kind() == Column.Kind.EXCHANGE
                ? taxonomy.film().stepFacets().stream()
                        .filter(step -> by.isEmpty() || step.by().equals(by))
                        .flatMap(step -> step.classes().stream())
                        .distinct()
                        .toList()
                : its.classes();
        return classes.stream()
                .flatMap(name -> taxonomy.ofClass(name).stream())
                .distinct()
                .filter(concept -> its.narrowerThan().isEmpty()
                        || taxonomy.isA(concept.slug(), its.narrowerThan().get()))
                .toList();
    }

    private void concepts(Context ctx) {
        Optional<String> kind = Request.word(ctx, "kind");
        Optional<String> text = Request.word(ctx, "q");
        int limit = Request.number(ctx, "limit", 100, 1, MOST);
        int offset = Request.number(ctx, "offset", 0, 0, Integer.MAX_VALUE);
        Versions.json(ctx, version.ofBook(), () -> {
            Collection<Concept> some = kind.map(name -> (Collection<Concept>) taxonomy.ofClass(name))
                    .orElseGet(taxonomy::concepts);
            List<Concept> found = text.isEmpty()
                    ? some.stream().sorted(BY_NAME).toList()
                    : Completions.of(some).of(text.get(), MOST).stream()
                            .map(Completions.Completion::concept)
                            .toList();
            return new ConceptsAnswer(
                    found.size(),
                    kinds(),
                    found.stream()
                            .skip(offset)
                            .limit(limit)
                            .map(ConceptBrief::of)
                            .toList());
        });
    }

    private List<ConceptsAnswer.Kind> kinds() {
        Facts facts = new Facts(archive.book().ontology().graph());
        Map<String, Integer> counts = new TreeMap<>();
        taxonomy.concepts().forEach(c -> c.classes().forEach(name -> counts.merge(name, 1, Integer::sum)));
        List<ConceptsAnswer.Kind> kinds = new ArrayList<>();
        counts.forEach((name, count) -> kinds.add(new ConceptsAnswer.Kind(
                name,
                facts.texts(Rl.term(name), RDFS.label.asNode()).stream()
                        .findFirst()
                        .orElse(name),
                count)));
        return kinds;
    }

    private void counters(Context ctx) {
        String slug = known(ctx).slug();
        Optional<String> when = Request.word(ctx, "when");
        Optional<String> from = Request.word(ctx, "from");
        Versions.json(ctx, version.now(), () -> {
            boolean isAnswer = taxonomy.pairings().stream()
                    .flatMap(pairing -> pairing.trigger().stream())
                    .anyMatch(trigger -> taxonomy.isA(trigger, slug) || taxonomy.isA(slug, trigger));
            Optional<String> move = isAnswer ? Optional.empty() : Optional.of(slug);
            Optional<String> answer = isAnswer ? Optional.of(slug) : when;
            return CountersAnswer.of(archive.book(), move, answer, from, pairing -> {
                Count seen = archive.seen(move, pairing.trigger().or(() -> answer), pairing.counter());
                return Optional.of(new CountersAnswer.Seen(seen.opportunities(), seen.events()));
            });
        });
    }

    private void film(Context ctx) {
        Concept concept = known(ctx);
        Versions.json(ctx, version.now(), () -> new FilmOf(archive).of(concept.slug()));
    }

    /** The concept that an address names. */
    Concept known(Context ctx) {
        String slug = ctx.pathParam("slug");
        return taxonomy.concept(slug).orElseThrow(() -> {
            List<String> near = Completions.of(taxonomy.concepts()).of(slug.replace('-', ' '), 3).stream()
                    .map(completion -> completion.concept().slug())
                    .toList();
            return Problem.of(404, "The book has no \"" + slug + "\".")
                    .withNearest(near)
                    .thrown();
        });
    }
}
