package rushlight.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.film.Game;
import rushlight.findings.Assessor;
import rushlight.findings.Countable;
import rushlight.index.Count;
import rushlight.index.Footage;
import rushlight.index.Slice;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situation;
import rushlight.situation.Situations;

/** Answers a question that was read. Safe for many threads: an answer depends on the reading, the book and the film alone. */
public final class Asker {
    private final Countable countable;
    private final Links links;
    private final PlayerAnswers players;
    private final RepAnswers reps;
    private final TermAnswers terms;
    private final CounterFilm counterFilm;
    private final CounterAnswers counters;
    private final DrillAnswers drills;
    private final FindingAnswers findings;
    private final ComparedAnswers compared;
    private final AlikeAnswers alike;

    private Asker(Ontology ontology, Taxonomy taxonomy, Situations situations, Assessor assessor) {
        Wording wording = new Wording(situations, Claims.of(ontology, taxonomy, assessor.book(), situations.facets()));
        Counted counted = new Counted();
        this.countable = Countable.of(ontology, taxonomy, situations);
        this.links = new Links(ontology, taxonomy);
        this.players = new PlayerAnswers(countable, wording, counted);
        this.reps = new RepAnswers(countable, wording);
        this.terms = new TermAnswers(taxonomy, links, countable, wording, counted);
        this.counterFilm = new CounterFilm(countable);
        this.counters = new CounterAnswers(taxonomy, counterFilm, counted);
        this.findings = new FindingAnswers(assessor, taxonomy, counted);
        this.drills = new DrillAnswers(taxonomy, links, assessor.book(), findings);
        this.compared = new ComparedAnswers(countable, wording, counted, findings);
        this.alike = new AlikeAnswers(taxonomy, situations.facets(), countable);
    }

    /** Answers by this book. */
    public static Asker of(Ontology ontology, Taxonomy taxonomy, Situations situations, Assessor assessor) {
        return new Asker(ontology, taxonomy, situations, assessor);
    }

    /** The names that a question about this film may use. */
    public static People people(Footage footage) {
        return footage.once(People.class, Asker::named);
    }

    private static People named(Footage footage) {
        Map<String, String> prospects = new HashMap<>();
        footage.prospects().forEach(prospect -> prospects.put(prospect.id(), prospect.name()));
        Map<String, String> games = new HashMap<>();
        Set<String> opponents = new HashSet<>();
        Set<String> levels = new HashSet<>();
        Set<String> teams = new HashSet<>();
        Set<String> years = new HashSet<>();
        footage.prospects().forEach(prospect -> {
            teams.add(prospect.team());
            years.add(prospect.classYear());
        });
        for (Game game : footage.games()) {
            games.put(game.id(), game.name());
            opponents.add(game.opponent());
            levels.add(game.level());
        }
        List.of(opponents, levels, teams, years).forEach(names -> names.remove(""));
        return new People(prospects, games, opponents, levels, teams, years);
    }

    /** The answers to a question from this film. */
    public Answers answer(Footage footage, Asked asked, Answers.Window window) {
        Scene scene = new Scene(footage, asked, window);
        Answers.Listed listed = listed(scene);
        return new Answers(
                asked,
                listed.total(),
                listed.answers(),
                leftOut(scene),
                listed.why(),
                listed.total() == 0 ? Tries.of(scene) : List.of(),
                cautions(listed.answers()));
    }

    /** How often a counter was thrown off a move after an answer, and how often that won. */
    public Count seen(Footage footage, Optional<String> move, Optional<String> answer, String counter) {
        return counterFilm.seen(footage, Slice.everything(), move, answer, counter);
    }

    private Answers.Listed listed(Scene scene) {
        if (scene.men().filter(Set::isEmpty).isPresent()) {
            return Answers.Listed.nothing("Nobody on this film is such a player.");
        }
        return switch (scene.asked().find()) {
            case PROSPECTS -> asksForFindings(scene.asked()) ? findings.players(scene) : players.of(scene);
            case REPS -> reps.of(scene);
            case TECHNIQUES -> asksForNotes(scene.asked()) ? reps.of(scene) : terms.of(scene);
            case COUNTERS -> counters.of(scene);
            case DRILLS -> drills.of(scene);
            case FINDINGS -> findings.of(scene);
            case COMPARE -> compared.of(scene);
            case SIMILAR -> alike.of(scene);
        };
    }

    /** Whether players are asked for by what was found of them rather than by what they did. */
    private static boolean asksForFindings(Asked asked) {
        return asked.filters().stream()
                .anyMatch(filter -> filter instanceof Filter.Verdicts
                        || filter instanceof Filter.Polarities
                        || filter instanceof Filter.Severities
                        || (filter instanceof Filter.Findings
                                && asked.situation().isEmpty()));
    }

    /** Words of a note are words of reps; no term of the book has any. */
    private static boolean asksForNotes(Asked asked) {
        return asked.filter(Filter.Note.class).isPresent()
                && asked.filters(Filter.About.class).isEmpty();
    }

    /** Reps that would have counted, had their evaluator been sure of them. */
    private int leftOut(Scene scene) {
        Optional<Situation> chance = scene.asked().situation().map(SituationPair::opportunity);
        return chance.map(opportunity -> scene
                        .footage()
                        .counts(
                                Situation.all(List.of(opportunity, countable.leftOut())),
                                countable.leftOut(),
                                scene.slice())
                        .values()
                        .stream()
                        .mapToInt(Count::opportunities)
                        .sum())
                .orElse(0);
    }

    private List<String> cautions(List<Answer> answers) {
        List<String> all = new ArrayList<>();
        for (Answer answer : answers) {
            if (answer instanceof Answer.Drill drill) {
                all.addAll(drill.cautions());
            } else if (answer instanceof Answer.Term term) {
                all.addAll(links.cautions(term.slug()));
            } else if (answer instanceof Answer.Counter counter) {
                all.addAll(links.cautions(counter.pairing().counter()));
            }
        }
        return all.stream().distinct().toList();
    }
}
