package rushlight.web.http;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.findings.Countable;
import rushlight.index.Count;
import rushlight.index.Footage;
import rushlight.index.IndexedRep;
import rushlight.situation.Facet;
import rushlight.situation.Situation;
import rushlight.situation.Tape;
import rushlight.web.FilmOfAnswer;
import rushlight.web.RepSight;

/** Looks up what the logs show of a concept. */
final class FilmOf {
    private static final int EXAMPLES = 6;
    private static final String OUTCOME = "outcome";

    private final Archive archive;
    private final Book book;
    private final Situation countable;

    FilmOf(Archive archive) {
        this.archive = archive;
        this.book = archive.book();
        this.countable = Countable.of(book.ontology(), book.taxonomy(), book.situations())
                .anyRep();
    }

    FilmOfAnswer of(String concept) {
        List<String> facets = book.situations().facets().all().stream()
                .filter(facet ->
                        facet.kind() == Facet.Kind.CONCEPT && facet.values().contains(concept))
                .map(Facet::name)
                .toList();
        if (facets.isEmpty()) {
            return new FilmOfAnswer(concept, facets, 0, 0, 0, List.of(), List.of());
        }
        Situation shows = Situation.all(List.of(
                Situation.any(facets.stream()
                        .map(facet -> Situation.has(facet, concept))
                        .toList()),
                countable));
        return archive.watch(footage -> of(concept, facets, shows, footage));
    }

    private FilmOfAnswer of(String concept, List<String> facets, Situation shows, Footage footage) {
        Map<String, Count> won = footage.counts(shows, Situation.has(OUTCOME, "won"));
        Map<String, Count> lost = footage.counts(shows, Situation.has(OUTCOME, "lost"));
        Map<String, String> names =
                footage.prospects().stream().collect(Collectors.toMap(Prospect::id, Prospect::name));
        List<FilmOfAnswer.His> his = new ArrayList<>();
        won.forEach((id, count) -> his.add(new FilmOfAnswer.His(
                id,
                names.getOrDefault(id, id),
                count.opportunities(),
                count.events(),
                lost.getOrDefault(id, new Count(0, 0)).events())));
        his.sort(Comparator.<FilmOfAnswer.His>comparingInt(one -> -one.reps()).thenComparing(FilmOfAnswer.His::id));
        return new FilmOfAnswer(
                concept,
                facets,
                his.stream().mapToInt(FilmOfAnswer.His::reps).sum(),
                his.stream().mapToInt(FilmOfAnswer.His::won).sum(),
                his.stream().mapToInt(FilmOfAnswer.His::lost).sum(),
                his,
                examples(his, shows, footage));
    }

    /** The last rep of each of those who have most. */
    private List<RepSight> examples(List<FilmOfAnswer.His> his, Situation shows, Footage footage) {
        Map<String, Game> games = FilmRoutes.games(footage);
        List<RepSight> examples = new ArrayList<>();
        for (FilmOfAnswer.His one : his.subList(0, Math.min(EXAMPLES, his.size()))) {
            Tape tape = footage.tape(one.id()).orElseThrow();
            int last = tape.fitting(shows).length() - 1;
            IndexedRep rep = footage.reps(one.id()).get(last);
            String id = rep.reading().rep().game();
            examples.add(RepSight.of(rep.reading(), Objects.requireNonNull(games.get(id)), book.taxonomy()));
        }
        return examples;
    }
}
