package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rushlight.findings.Countable;
import rushlight.index.Count;
import rushlight.index.Marked;
import rushlight.index.Texts;
import rushlight.knowledge.Concept;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situation;

/** Terms of the book: by how they stand to others, by how they went on film, or by the words of the question. */
final class TermAnswers {
    private static final int MOST_BY_WORDS = 20;

    private final Taxonomy taxonomy;
    private final Links links;
    private final Countable countable;
    private final Wording wording;
    private final Counted counted;

    TermAnswers(Taxonomy taxonomy, Links links, Countable countable, Wording wording, Counted counted) {
        this.taxonomy = taxonomy;
        this.links = links;
        this.countable = countable;
        this.wording = wording;
        this.counted = counted;
    }

    Answers.Listed of(Scene scene) {
        List<Filter.About> abouts = scene.asked().filters(Filter.About.class);
        if (scene.asked().situation().isPresent() && abouts.isEmpty()) {
            return onFilm(scene, scene.asked().situation().orElseThrow());
        }
        List<Answer> all = abouts.isEmpty() ? byWords(scene) : related(scene, abouts);
        if (all.isEmpty() && abouts.isEmpty()) {
            return Answers.Listed.nothing(
                    "The book has nothing of that name. Ask about a player, a rep, a technique, a block or a drill.");
        }
        if (all.isEmpty()) {
            String terms = abouts.stream()
                    .flatMap(about -> about.slugs().stream())
                    .map(taxonomy::label)
                    .collect(Collectors.joining(", "));
            return Answers.Listed.nothing(
                    "The book names nothing of that kind" + (terms.isEmpty() ? "." : ": " + terms + "."));
        }
        List<Answer> top = scene.top(all);
        return Answers.Listed.of(top.size(), scene.window().of(top));
    }

    /** What stands in every relation that is asked for. */
    private List<Answer> related(Scene scene, List<Filter.About> abouts) {
        Map<String, Double> found = new HashMap<>(
                links.related(abouts.get(0).relation(), abouts.get(0).slugs()));
        for (Filter.About about : abouts.subList(1, abouts.size())) {
            Map<String, Double> more = links.related(about.relation(), about.slugs());
            found.keySet().retainAll(more.keySet());
            found.replaceAll((slug, near) -> near * more.getOrDefault(slug, 0.0));
        }
        Set<String> named = abouts.stream()
                .filter(about -> about.relation() != Filter.Relation.ITSELF)
                .flatMap(about -> about.slugs().stream())
                .collect(Collectors.toSet());
        String reason = abouts.stream().map(this::reason).collect(Collectors.joining("; "));
        return found.entrySet().stream()
                .filter(entry -> !named.contains(entry.getKey()))
                .flatMap(entry -> taxonomy.concept(entry.getKey()).stream()
                        .filter(concept -> isAsked(scene, concept))
                        .map(concept -> term(concept, entry.getValue(), reason)))
                .sorted(Comparator.comparingDouble((Answer term) -> -term.score())
                        .thenComparing(Answer::label))
                .toList();
    }

    private String reason(Filter.About about) {
        String terms = about.slugs().stream().map(taxonomy::label).collect(Collectors.joining(" or "));
        return about.relation() == Filter.Relation.ITSELF
                ? ""
                : about.relation().slug().replace('-', ' ') + " " + terms;
    }

    private boolean isAsked(Scene scene, Concept concept) {
        return scene.asked()
                .filter(Filter.Kinds.class)
                .map(kinds -> concept.classes().stream().anyMatch(kinds.classes()::contains))
                .orElse(true);
    }

    private Answer term(Concept concept, double score, String reason) {
        String sentence = concept.definition().isEmpty() ? reason : concept.definition();
        return new Answer.Term(
                concept.slug(),
                concept.label(),
                concept.classes(),
                score,
                sentence,
                new Marked(reason, List.of()),
                Optional.empty());
    }

    private List<Answer> byWords(Scene scene) {
        List<Answer> found = new ArrayList<>();
        for (Texts.PageHit hit : scene.footage().texts().pages(words(scene.asked()), MOST_BY_WORDS)) {
            taxonomy.concept(hit.page().id())
                    .filter(concept -> isAsked(scene, concept))
                    .ifPresent(concept -> found.add(new Answer.Term(
                            concept.slug(),
                            concept.label(),
                            concept.classes(),
                            hit.score(),
                            concept.definition(),
                            hit.about(),
                            Optional.empty())));
        }
        return found;
    }

    /** What is looked up: the words nothing else was made of, so that an "is" or a "the" finds no page. */
    private static String words(Asked asked) {
        return asked.unread().isEmpty()
                ? asked.question()
                : asked.unread().stream().map(Asked.Unread::word).collect(Collectors.joining(" "));
    }

    /** The terms of the kinds that are asked for, by what came of the reps that have them. */
    private Answers.Listed onFilm(Scene scene, SituationPair pair) {
        Situation chance = countable.opportunity(pair.opportunity(), pair.event());
        Map<String, Count> counts = new TreeMap<>();
        for (String facet : facets(scene)) {
            scene.footage().values(facet, chance, pair.event(), scene.slice()).forEach((value, count) -> {
                if (taxonomy.concept(value).filter(c -> isAsked(scene, c)).isPresent()) {
                    counts.merge(value, count, (a, b) -> a.opportunities() >= b.opportunities() ? a : b);
                }
            });
        }
        Map<String, Answer.Count> figures = new LinkedHashMap<>();
        boolean least = scene.direction() == Filter.Direction.LEAST;
        counts.forEach((value, count) -> {
            Answer.Count one = counted.of(count);
            if ((least || count.events() > 0) && scene.enough(one)) {
                figures.put(value, one);
            }
        });
        List<Map.Entry<String, Answer.Count>> ranked = figures.entrySet().stream()
                .sorted(Map.Entry.<String, Answer.Count>comparingByValue(Counted.order(scene.direction()))
                        .thenComparing(entry -> taxonomy.label(entry.getKey())))
                .toList();
        if (ranked.isEmpty()) {
            return Answers.Listed.nothing(
                    "No rep " + wording.where(scene) + " shows it: " + wording.phrase(pair.both()) + ".");
        }
        List<Map.Entry<String, Answer.Count>> top = scene.top(ranked);
        return Answers.Listed.of(
                top.size(),
                scene.window().of(top).stream()
                        .map(entry -> onFilm(entry.getKey(), entry.getValue(), scene.direction(), pair))
                        .toList());
    }

    private Answer onFilm(String slug, Answer.Count count, Filter.Direction direction, SituationPair pair) {
        Concept concept = taxonomy.concept(slug).orElseThrow();
        return new Answer.Term(
                slug,
                concept.label(),
                concept.classes(),
                Counted.score(count, direction),
                wording.happened(pair, count),
                new Marked(concept.definition(), List.of()),
                Optional.of(count));
    }

    /** The facets that hold terms of the kinds that are asked for. */
    private List<String> facets(Scene scene) {
        Set<String> kinds = scene.asked()
                .filter(Filter.Kinds.class)
                .map(Filter.Kinds::classes)
                .orElse(Set.of());
        FilmColumns film = taxonomy.film();
        List<String> facets = new ArrayList<>();
        film.stepFacets().stream()
                .filter(facet ->
                        facet.passesOver().isEmpty() && facet.classes().stream().anyMatch(kinds::contains))
                .forEach(facet -> facets.add(facet.facet()));
        film.all().stream()
                .filter(column -> column.classes().stream().anyMatch(kinds::contains))
                .forEach(column -> facets.add(column.facet()));
        return facets;
    }
}
