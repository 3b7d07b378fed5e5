package rushlight.notes;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rushlight.words.Match;
import rushlight.words.Token;

/**
 * What the words of a stretch mean where they stand: of every place where words may mean a term, those are kept whose tests
 * hold, and of these the ones that together say the most.
 *
 * @param meant where words mean a term, or are taken out; none overlap
 * @param otherwise where words could have meant a term, and nothing else is meant
 */
record Senses(List<Terms.Place> meant, List<Terms.Place> otherwise) {
    private static final Set<String> JOINS = SmallWords.of("and-then");
    private static final Set<String> WEIGHTLESS = SmallWords.of("weightless");

    /** Finds them, with the clauses and what is said in each. */
    static Senses of(Terms terms, List<Token> tokens, List<Clause> clauses, List<Attributes> attributes) {
        List<Match<Terms.Term>> kept = new ArrayList<>();
        List<Match<Terms.Term>> left = new ArrayList<>();
        List<Match<Terms.Term>> all = terms.all(tokens);
        Phases phases = new Phases(terms, tokens, clauses, all);
        List<String> bases = tokens.stream()
                .map(token -> token.word() ? terms.base(token.key()) : "")
                .toList();
        int at = 0;
        String phase = clauses.isEmpty() ? "" : phases.of(0);
        Names names = new Names(tokens, all);
        for (Match<Terms.Term> match : all) {
            while (at + 1 < clauses.size() && match.first() >= clauses.get(at).end()) {
                at++;
                phase = phases.of(at);
            }
            if (at < clauses.size() && clauses.get(at).holds(match.first())) {
                List<Terms.Term> fit =
                        names.hold(match) ? List.of() : fitting(tokens, bases, clauses, attributes, match, at, phase);
                if (fit.isEmpty()) {
                    left.add(match);
                } else {
                    kept.add(match.with(fit));
                }
            }
        }
        List<Terms.Place> meant = terms.best(tokens, kept);
        BitSet taken = new BitSet();
        meant.forEach(place -> taken.set(place.first(), place.end()));
        left.removeIf(match -> !taken.get(match.first(), match.end()).isEmpty());
        return new Senses(meant, terms.best(tokens, left));
    }

    private static List<Terms.Term> fitting(
            List<Token> tokens,
            List<String> bases,
            List<Clause> clauses,
            List<Attributes> attributes,
            Match<Terms.Term> match,
            int at,
            String phase) {
        if (match.values().stream().allMatch(term -> term.sense().isAny())) {
            return match.values();
        }
        String subject = subject(tokens, clauses, attributes, at, match.first());
        Surroundings around =
                new Surroundings(tokens, bases, clauses.get(at), match.first(), match.end(), subject, phase);
        return match.values().stream()
                .filter(term -> term.sense().fits(around) && !isTested(term, match, around))
                .toList();
    }

    /** A label of one word counts only as far as the word list lets the word mean its concept. */
    private static boolean isTested(Terms.Term label, Match<Terms.Term> match, Surroundings around) {
        List<Terms.Term> listed = match.values().stream()
                .filter(term -> Terms.isListed(term) && term.slug().equals(label.slug()))
                .toList();
        return match.length() == 1
                && !Terms.isListed(label)
                && !listed.isEmpty()
                && listed.stream().noneMatch(term -> term.sense().fits(around));
    }

    /** Who acts: who is named before the words, or whoever acted before an "and" that goes on with what he did next. */
    private static String subject(
            List<Token> tokens, List<Clause> clauses, List<Attributes> attributes, int at, int first) {
        Optional<Cues.Found> named = attributes.get(at).subject(first);
        if (named.isEmpty() && goesOn(tokens, clauses.get(at), first)) {
            named = attributes.get(at).named(first);
            boolean same = at > 0
                    && clauses.get(at - 1).cue() == clauses.get(at).cue()
                    && !Edges.ends(tokens.get(clauses.get(at).first() - 1));
            if (named.isEmpty() && same) {
                named = attributes.get(at - 1).named(first);
            }
        }
        return named.map(found -> found.act().name().toLowerCase(Locale.ROOT)).orElse("nobody");
    }

    private static boolean goesOn(List<Token> tokens, Clause clause, int first) {
        int i = first - 1;
        while (i > clause.first()
                && WEIGHTLESS.contains(tokens.get(i).key())
                && !JOINS.contains(tokens.get(i).key())) {
            i--;
        }
        return i >= clause.first() && JOINS.contains(tokens.get(i).key());
    }
}
