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
    private static final int ROUND = 20;
    private static final String DOING = "ing";
    private static final Set<String> JOINS = SmallWords.of("and-then");
    private static final Set<String> WEIGHTLESS = SmallWords.of("weightless");

    /** Finds them, with the clauses and what is said in each. */
    static Senses of(Terms terms, List<Token> tokens, List<Clause> clauses, List<Attributes> attributes) {
        List<Match<Terms.Term>> kept = new ArrayList<>();
        List<Match<Terms.Term>> left = new ArrayList<>();
        List<Match<Terms.Term>> all = terms.all(tokens);
        Phases phases = new Phases(terms, tokens, clauses, all);
        int at = 0;
        for (Match<Terms.Term> match : all) {
            while (at + 1 < clauses.size() && match.first() >= clauses.get(at).end()) {
                at++;
            }
            if (at < clauses.size() && clauses.get(at).holds(match.first())) {
                List<Terms.Term> fit = fitting(terms, tokens, clauses, attributes, match, at, phases.of(at));
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
            Terms terms,
            List<Token> tokens,
            List<Clause> clauses,
            List<Attributes> attributes,
            Match<Terms.Term> match,
            int at,
            String phase) {
        if (match.values().stream().allMatch(term -> term.sense().isAny())) {
            return match.values();
        }
        String subject = subject(tokens, clauses, attributes, at, match.first());
        Surroundings around = around(terms, tokens, clauses.get(at), subject, match.first(), match.end(), phase);
        return match.values().stream()
                .filter(term -> term.sense().fits(around) && !isTested(term, match, around))
                .toList();
    }

    private static Surroundings around(
            Terms terms, List<Token> tokens, Clause clause, String subject, int first, int end, String phase) {
        List<String> next = bases(terms, tokens, end, Math.min(clause.end(), end + 2));
        List<String> previous = bases(terms, tokens, Math.max(clause.first(), first - 2), first);
        List<String> all = new ArrayList<>(bases(terms, tokens, clause.first(), first));
        all.addAll(bases(terms, tokens, end, clause.end()));
        return new Surroundings(
                bases(terms, tokens, first, end),
                next,
                previous,
                all,
                bases(terms, tokens, Math.max(0, first - ROUND), Math.min(tokens.size(), end + ROUND)),
                subject,
                all.isEmpty(),
                isApart(tokens, clause, first, end),
                first == clause.first(),
                tokens.subList(first, end).stream().anyMatch(token -> isDoing(terms, token.key())),
                phase);
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

    private static boolean isApart(List<Token> tokens, Clause clause, int first, int end) {
        int from = first;
        while (from > clause.first() && tokens.get(from - 1).word()) {
            from--;
        }
        int to = end;
        while (to < clause.end() && tokens.get(to).word()) {
            to++;
        }
        return isWeightless(tokens.subList(from, first)) && isWeightless(tokens.subList(end, to));
    }

    private static boolean isWeightless(List<Token> tokens) {
        return tokens.stream().allMatch(token -> WEIGHTLESS.contains(token.key()));
    }

    private static boolean isDoing(Terms terms, String key) {
        return key.endsWith(DOING) && !terms.base(key).equals(key);
    }

    private static List<String> bases(Terms terms, List<Token> tokens, int from, int to) {
        return tokens.subList(from, Math.max(from, to)).stream()
                .filter(Token::word)
                .map(token -> terms.base(token.key()))
                .toList();
    }
}
