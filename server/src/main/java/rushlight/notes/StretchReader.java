package rushlight.notes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.words.Token;

/** Reads one stretch of notes after the other; what was said before is remembered as far as the next one needs it. */
final class StretchReader {
    /** "The one going first" is somebody, and no place on the front. */
    private static final String SOMEONE = "one";

    private static final Set<String> OBJECTS = SmallWords.of("object");

    private final Kinds kinds;
    private final Terms terms;
    private final Cues cues;
    private final Set<String> names;
    private final Set<Assembly.Saying> stated = new HashSet<>();
    private Segmenter.Start start = Segmenter.Start.FRESH;

    /**
     * @param names words of the name of the player the notes are about
     */
    StretchReader(Kinds kinds, Terms terms, Cues cues, Set<String> names) {
        this.kinds = kinds;
        this.terms = terms;
        this.cues = cues;
        this.names = names;
    }

    Notes read(Stretches.Stretch stretch, List<Diagnostic> diagnostics) {
        Narration narration = stretch.notes();
        List<Token> tokens = stretch.tokens();
        Cues.Marks marks = cues.in(tokens, names);
        List<Clause> clauses = Clauses.of(narration, tokens, marks);
        List<Hidden> hidden = new ArrayList<>();
        ByClause<Cues.Found> shownIn = ByClause.of(clauses, marks.showing(), Cues.Found::first);
        ByClause<Cues.Found> namedIn = ByClause.of(clauses, marks.naming(), Cues.Found::first);
        ByClause<Cues.Found> assertedIn = ByClause.of(clauses, marks.asserting(), Cues.Found::first);
        List<Attributes> attributes = new ArrayList<>();
        for (int i = 0; i < clauses.size(); i++) {
            attributes.add(new Attributes(tokens, assertedIn.of(i), namedIn.of(i), shownIn.of(i)));
        }
        Answers answers = new Answers(tokens, clauses, shownIn);
        Senses senses = Senses.of(terms, tokens, clauses, attributes);
        ByClause<Terms.Place> meantIn = ByClause.of(clauses, senses.meant(), Terms.Place::first);
        ByClause<Terms.Place> otherwiseIn = ByClause.of(clauses, senses.otherwise(), Terms.Place::first);
        List<List<Hit>> hits = new ArrayList<>();
        for (int i = 0; i < clauses.size(); i++) {
            Attributes here = attributes
                    .get(i)
                    .with(meantIn.of(i), answers.denies(i, meantIn.of(i)) ? Optional.of(false) : answers.to(i));
            attributes.set(i, here);
            hits.add(hits(tokens, clauses.get(i), meantIn.of(i), shownIn.of(i)));
            otherwiseIn.of(i).stream()
                    .filter(place -> !place.terms().get(0).slug().isEmpty() && !here.names(place.first()))
                    .forEach(place -> hidden.add(new Hidden(
                            place.terms().get(0).slug(),
                            narration.words(place.from(), place.to()),
                            place.from(),
                            place.to(),
                            "another sense here")));
        }
        Segmenter segmenter = new Segmenter(
                narration,
                tokens,
                clauses,
                ByClause.of(clauses, marks.parting(), Cues.Found::first),
                namedIn,
                hits,
                asOfRep(clauses, hits, attributes),
                start,
                stretch.last());
        List<Segmenter.Part> parts = segmenter.parts();
        start = segmenter.end();
        Assembly assembly =
                new Assembly(narration, tokens, clauses, parts, hidden, new Sequence(tokens, marks.showing()), stated);
        for (int i = 0; i < clauses.size(); i++) {
            int at = i;
            Clause clause = clauses.get(i);
            Attributes here = attributes.get(i);
            Attributes before = attributes.get(Math.max(0, i - 1));
            Optional<Cues.Found> back = answers.isAnswer(i) ? Optional.empty() : here.retraction(clause);
            boolean taken = false;
            for (Hit hit : hits.get(i)) {
                if (!taken && back.isPresent() && hit.first() >= back.get().first()) {
                    assembly.takeBack(at, back.get(), instead(hits, back.get(), at));
                    taken = true;
                }
                if (here.isOfAnotherRep(hit, clause, before)) {
                    assembly.hide(hit, Assembly.OF_ANOTHER_REP);
                } else {
                    assembly.add(i, hit, here.mention(hit, clause, parts.get(i).kind()));
                }
            }
            if (!taken && back.isPresent()) {
                assembly.takeBack(at, back.get(), instead(hits, back.get(), at));
            }
        }
        return assembly.notes(diagnostics);
    }

    private static List<List<Mention>> asOfRep(
            List<Clause> clauses, List<List<Hit>> hits, List<Attributes> attributes) {
        List<List<Mention>> said = new ArrayList<>();
        for (int i = 0; i < clauses.size(); i++) {
            Clause clause = clauses.get(i);
            Attributes here = attributes.get(i);
            said.add(hits.get(i).stream()
                    .map(hit -> here.mention(hit, clause, Segment.Kind.REP))
                    .toList());
        }
        return said;
    }

    /** What is said in place of what is taken back: in the same breath, or the next. */
    private static Optional<Hit> instead(List<List<Hit>> hits, Cues.Found cue, int at) {
        return hits.subList(at, Math.min(hits.size(), at + 2)).stream()
                .flatMap(List::stream)
                .filter(hit -> hit.first() >= cue.end())
                .findFirst();
    }

    private List<Hit> hits(List<Token> tokens, Clause clause, List<Terms.Place> places, List<Cues.Found> shown) {
        List<Hit> found = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        for (Terms.Place place : places) {
            for (int i = place.first(); i < place.end(); i++) {
                taken.add(i);
            }
            Terms.Term meant = place.terms().get(0);
            kinds.of(meant.slug()).ifPresent(kind -> {
                found.add(new Hit(place.first(), place.end(), place.from(), place.to(), meant, kind));
                if (kind.actor() == Actor.BLOCKER) {
                    answered(tokens, place).ifPresent(found::add);
                }
            });
        }
        for (int i = clause.first(); i < clause.end(); i++) {
            if (tokens.get(i).isNumber() && !taken.contains(i) && !Markers.isDecimal(tokens, i)) {
                spot(tokens, i, clause, shown).ifPresent(found::add);
            }
        }
        found.sort((a, b) -> Integer.compare(a.first(), b.first()));
        return found;
    }

    /** What the blocker answers is itself done: "chops his long arm down". */
    private Optional<Hit> answered(List<Token> tokens, Terms.Place place) {
        for (int i = place.first() + 2; i < place.end(); i++) {
            if (OBJECTS.contains(tokens.get(i - 1).key())) {
                for (Terms.Place inner : terms.from(tokens, i, place.end())) {
                    Terms.Term term = inner.terms().get(0);
                    Optional<Kinds.Kind> kind = kinds.of(term.slug()).filter(Kinds.Kind::step);
                    if (kind.isPresent()) {
                        return Optional.of(new Hit(i, inner.end(), inner.from(), inner.to(), term, kind.get()));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** "A five", or "5," at the beginning, is a place on the front; "third and five" is none. */
    private Optional<Hit> spot(List<Token> tokens, int at, Clause clause, List<Cues.Found> shown) {
        Optional<Cues.Found> before = shown.stream()
                .filter(cue -> cue.act() == Cues.Act.SPOT && cue.end() == at)
                .findFirst();
        boolean behind = shown.stream().anyMatch(cue -> cue.act() == Cues.Act.NOT_SPOT && cue.first() == at + 1);
        boolean follows = shown.stream().anyMatch(cue -> cue.act() == Cues.Act.NOT_SPOT && cue.end() == at);
        boolean clock = at + 1 < tokens.size() && tokens.get(at + 1).text().equals(":");
        boolean alone = !clock
                && at == clause.first()
                && at + 1 < tokens.size()
                && !tokens.get(at + 1).word()
                && (clause.begins() || (clause.end() == at + 1 && Edges.ends(tokens.get(at + 1))));
        boolean someone = tokens.get(at).text().equalsIgnoreCase(SOMEONE);
        if ((before.isEmpty() && !alone) || behind || someone || (follows && before.isEmpty())) {
            return Optional.empty();
        }
        String word = before.map(Cues.Found::value).orElse("technique");
        Token number = tokens.get(at);
        return terms.spot(number, word)
                .flatMap(term -> kinds.of(term.slug())
                        .map(kind -> new Hit(at, at + 1, number.from(), number.to(), term.trusted(Band.CHECK), kind)));
    }
}
