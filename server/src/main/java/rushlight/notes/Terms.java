package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rushlight.knowledge.Taxonomy;
import rushlight.words.Label;
import rushlight.words.Lexicon;
import rushlight.words.Match;
import rushlight.words.Matcher;
import rushlight.words.Token;
import rushlight.words.Tokenizer;

/** Finds the terms of the book in notes: by its labels and by the spoken forms of the lists that {@code narration-lists} names. */
final class Terms {
    /**
     * A term that words may mean.
     *
     * @param slug the concept; empty where the words mean none of them
     * @param rank which is meant first, the smallest first
     * @param sense what must stand around the words
     * @param side a direction the words say themselves; empty where none
     * @param onHand whether it works on a hand, so that one named behind it is the other man's
     * @param band how far it can be trusted at best
     */
    record Term(String slug, int rank, Sense sense, String side, boolean onHand, Band band) {
        Term trusted(Band most) {
            return new Term(slug, rank, sense, side, onHand, most);
        }
    }

    /** Words that may mean some terms. */
    record Place(int first, int end, int from, int to, List<Term> terms) {
        /** Whether these tokens are among its own. */
        boolean holds(int begin, int behind) {
            return first <= begin && behind <= end;
        }
    }

    private static final int SPOKEN = -100;
    private static final int FAULT = 11;
    private static final int LABELS = 4;
    private static final Pattern DENIAL = Pattern.compile("(?:doesn't|does not|didn't|can't|never|no|not)[ -]");

    private final Matcher<Term> matcher;
    private final List<List<String>> sides =
            Lexicon.named("narration-sides", "term", "side").rows();
    private final List<List<String>> onHands =
            Lexicon.named("narration-targets", "term").rows();
    private final Kinds kinds;
    private final Taxonomy taxonomy;

    Terms(Taxonomy taxonomy, Tokenizer tokenizer, Kinds kinds) {
        this.kinds = kinds;
        this.taxonomy = taxonomy;
        Groups groups = new Groups();
        Matcher.Builder<Term> builder = groups.in(new Matcher.Builder<Term>(tokenizer).withBookWords());
        List<List<String>> spoken = spoken();
        Matcher<String> bases = bases(tokenizer, taxonomy, groups, spoken);
        for (List<String> row : spoken) {
            Sense sense = new Sense(row.get(2), bases::base);
            Band band = Band.valueOf(row.get(4).toUpperCase(java.util.Locale.ROOT));
            Term term = new Term(row.get(1), SPOKEN, sense, side(row.get(1), row.get(3)), isOnHand(row.get(1)), band);
            groups.add(builder, row.get(0), term);
        }
        Sense any = new Sense("-", bases::base);
        taxonomy.concepts()
                .forEach(concept -> kinds.of(concept.slug())
                        .ifPresent(kind -> Label.each(concept, (text, label) -> {
                            if (label.kind() != Label.Kind.CONTEXT && !isDenial(kind, text)) {
                                builder.add(
                                        text,
                                        new Term(
                                                concept.slug(),
                                                kind.rank() * LABELS + telling(label.kind()),
                                                any,
                                                side(concept.slug(), ""),
                                                isOnHand(concept.slug()),
                                                Band.SURE));
                            }
                        })));
        this.matcher = builder.build();
    }

    private static List<List<String>> spoken() {
        return Lexicon.named("narration-lists", "list").rows().stream()
                .flatMap(
                        row -> Lexicon.named(row.get(0), "pattern", "concept", "tests", "side", "band").rows().stream())
                .toList();
    }

    /** Whether a term stands in the word list, not only among the labels. */
    static boolean isListed(Term term) {
        return term.rank() == SPOKEN;
    }

    /** The side that words say, or else the one that lies in the term. */
    private String side(String slug, String said) {
        return sides.stream()
                .filter(row -> said.isEmpty() && taxonomy.isA(slug, row.get(0)))
                .map(row -> row.get(1))
                .findFirst()
                .orElse(said);
    }

    private boolean isOnHand(String slug) {
        return onHands.stream().anyMatch(row -> taxonomy.isA(slug, row.get(0)));
    }

    private static int telling(Label.Kind kind) {
        return switch (kind) {
            case PREFERRED -> 0;
            case OTHER -> 1;
            case HIDDEN -> 2;
            case CONTEXT -> 3;
        };
    }

    /** A fault that is named by what he does not do is told by the words for doing it, and their denial. */
    private static boolean isDenial(Kinds.Kind kind, String text) {
        return kind.rank() == FAULT && DENIAL.matcher(text).lookingAt();
    }

    /** Of every word by itself: whole patterns would cost as much again. */
    private static Matcher<String> bases(
            Tokenizer tokenizer, Taxonomy taxonomy, Groups groups, List<List<String>> spoken) {
        Matcher.Builder<String> builder = groups.in(new Matcher.Builder<String>(tokenizer).withBookWords());
        List<String> texts = new ArrayList<>();
        taxonomy.concepts().forEach(concept -> Label.each(concept, (text, label) -> texts.add(text)));
        spoken.forEach(row -> texts.add(row.get(0)));
        texts.stream()
                .flatMap(text -> tokenizer.tokens(text).stream())
                .filter(Token::word)
                .map(Token::key)
                .distinct()
                .forEach(word -> builder.add(word, word));
        return builder.build();
    }

    /** The base of a word form. */
    String base(String key) {
        return matcher.base(key);
    }

    boolean knows(String key) {
        return matcher.knows(key);
    }

    /** Every place where words may mean a term, overlapping ones too, in the order of the text. */
    List<Match<Term>> all(List<Token> tokens) {
        return matcher.all(tokens);
    }

    /** Those of such places that together say the most, none of which overlap; what is meant first stands first. */
    List<Place> best(List<Token> tokens, List<Match<Term>> matches) {
        return matcher.best(tokens, matches).stream().map(this::place).toList();
    }

    /** The places that begin at a token and end by another, the longest first. */
    List<Place> from(List<Token> tokens, int first, int end) {
        return matcher.from(tokens, first).stream()
                .filter(match -> match.end() <= end)
                .map(this::place)
                .toList();
    }

    /** What a bare number means as a place on the front. */
    Optional<Term> spot(Token number, String word) {
        return matcher.from(List.of(number, number.takenFor(word)), 0).stream()
                .filter(match -> match.end() == 2)
                .flatMap(match -> place(match).terms().stream())
                .findFirst();
    }

    Kinds kinds() {
        return kinds;
    }

    /** Where a wider and a narrower term are said by the same words, the narrower one is meant. */
    private boolean isWider(Term term, Match<Term> match) {
        return match.values().stream()
                .anyMatch(other -> !other.slug().equals(term.slug())
                        && !other.slug().isEmpty()
                        && !term.slug().isEmpty()
                        && taxonomy.isA(other.slug(), term.slug()));
    }

    private Place place(Match<Term> match) {
        return new Place(
                match.first(),
                match.end(),
                match.from(),
                match.to(),
                match.values().stream()
                        .sorted(Comparator.comparing((Term term) -> isWider(term, match))
                                .thenComparingInt(Term::rank)
                                .thenComparing(term -> -term.sense().asks())
                                .thenComparing(term -> term.slug().isEmpty()
                                        == term.sense().written().equals("-"))
                                .thenComparing(Term::slug))
                        .toList());
    }
}
