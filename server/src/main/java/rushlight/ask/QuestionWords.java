package rushlight.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import rushlight.knowledge.Taxonomy;
import rushlight.words.Label;
import rushlight.words.Lexicon;
import rushlight.words.Match;
import rushlight.words.Matcher;
import rushlight.words.Phrasings;
import rushlight.words.Token;
import rushlight.words.Tokenizer;

/** Finds in a question the terms of the book, the words that do something, and the names of the folder at hand. */
final class QuestionWords {
    private static final Pattern QUOTED =
            Pattern.compile("[\"\u201C\u201D\u201E]([^\"\u201C\u201D\u201E]{1,200})[\"\u201C\u201D\u201F]");

    private record Named(People people, Matcher<Sense> matcher) {}

    private final Tokenizer tokenizer = Tokenizer.ofBook();
    private final Matcher<Sense> words;
    private final Sizes sizes = new Sizes();
    private final TeamWords teams = new TeamWords();
    private final Predicate<String> other;
    private final Map<String, String> firstPattern = new HashMap<>();
    private final Map<String, String> spots = new HashMap<>();
    private final Set<String> common = new HashSet<>();
    private volatile Named latest;

    /** By the labels of a book; {@code other} tells the terms for men who are asked about but never for. */
    QuestionWords(Taxonomy taxonomy, Predicate<String> other) {
        this.other = other;
        var builder = new Matcher.Builder<Sense>(tokenizer).withBookWords();
        for (List<String> row :
                Lexicon.named("questions", "pattern", "act", "value").rows()) {
            Act act = Act.of(row.get(1));
            if (act == Act.SPOT) {
                spots.put(row.get(0), row.get(2));
                continue;
            }
            for (String phrasing : Phrasings.of(row.get(0))) {
                if (act == Act.MEANS) {
                    builder.add(phrasing, new Sense.Term(new Label(row.get(2), Label.Kind.PREFERRED)));
                }
                builder.add(phrasing, new Sense.Cue(act, row.get(2)));
                firstPattern.putIfAbsent(row.get(1) + " " + row.get(2), phrasing);
            }
        }
        taxonomy.concepts()
                .forEach(concept -> Label.each(concept, (text, label) -> builder.add(text, new Sense.Term(label))));
        this.words = builder.build();
        Lexicon.named("common-words", "word").rows().forEach(row -> common.add(row.get(0)));
        this.latest = new Named(People.NOBODY, NameWords.of(tokenizer, People.NOBODY));
    }

    /** Words that do this, such as to offer them. */
    Optional<String> pattern(Act act, String value) {
        return Optional.ofNullable(firstPattern.get(act.name().toLowerCase(java.util.Locale.ROOT) + " " + value));
    }

    Parts cut(String question, People people) {
        Matcher<Sense> names = namesOf(people);
        Optional<Part> quoted = quoted(question);
        List<Token> tokens = tokenizer.tokens(question).stream()
                .filter(token -> quoted.isEmpty()
                        || token.to() <= quoted.get().from()
                        || token.from() >= quoted.get().to())
                .toList();
        tokens = names.repaired(tokens, words::knows);
        tokens = words.repaired(tokens, names::knows);
        List<Match<Sense>> all = matches(tokens, names, question);
        return assembled(question, tokens, words.best(tokens, all), all, quoted);
    }

    private static Optional<Part> quoted(String question) {
        var found = QUOTED.matcher(question);
        return found.find()
                ? Optional.of(new Part(
                        found.group(1).strip(), found.start(), found.end(), 0, false, List.of(), List.of(), -1))
                : Optional.empty();
    }

    /** Every place with all its meanings, without those that count for nothing there. */
    private List<Match<Sense>> matches(List<Token> tokens, Matcher<Sense> names, String question) {
        Map<List<Integer>, Match<Sense>> bySpan = new LinkedHashMap<>();
        List<Match<Sense>> all = new ArrayList<>(names.all(tokens));
        all.addAll(words.all(tokens));
        for (Match<Sense> match : all) {
            List<Sense> kept = kept(match, tokens);
            if (!kept.isEmpty() && !sizes.isAmong(tokens, question, match.first(), match.end())) {
                bySpan.merge(List.of(match.first(), match.end()), match.with(kept), QuestionWords::joined);
            }
        }
        return bySpan.values().stream()
                .map(match -> match.with(Meanings.decided(match, question)))
                .toList();
    }

    private static Match<Sense> joined(Match<Sense> a, Match<Sense> b) {
        List<Sense> both = new ArrayList<>(a.values());
        both.addAll(b.values());
        return a.with(both);
    }

    /** A common word that counts only beside other evidence is none by itself. */
    private List<Sense> kept(Match<Sense> match, List<Token> tokens) {
        boolean weak =
                match.length() == 1 && common.contains(tokens.get(match.first()).key());
        return match.values().stream()
                .filter(sense -> !(weak
                        && sense instanceof Sense.Term term
                        && term.label().kind() == Label.Kind.CONTEXT))
                .toList();
    }

    private Parts assembled(
            String question,
            List<Token> tokens,
            List<Match<Sense>> chosen,
            List<Match<Sense>> all,
            Optional<Part> quoted) {
        List<Part> parts = new ArrayList<>();
        List<Asked.Unread> unread = new ArrayList<>();
        Map<Integer, Match<Sense>> starts = new HashMap<>();
        chosen.forEach(match -> starts.put(match.first(), match));
        Optional<Match<Sense>> before = Optional.empty();
        int at = 0;
        while (at < tokens.size()) {
            Match<Sense> match = starts.get(at);
            Token token = tokens.get(at);
            if (match != null) {
                boolean relative = before.isPresent() && isRelative(before.get(), match);
                parts.add(new Part(
                        question.substring(match.from(), match.to()),
                        match.from(),
                        match.to(),
                        at,
                        match.guessed(),
                        relative ? List.of(new Sense.Cue(Act.GRAMMAR, "")) : teams.decided(match, tokens),
                        relative ? List.of() : within(match, all),
                        -1));
                before = Optional.of(match);
                at = match.end();
                continue;
            }
            Optional<Sizes.Found> size = sizes.at(tokens, at, question);
            if (size.isPresent()) {
                int last = size.get().end() - 1;
                parts.add(part(
                        question,
                        token.from(),
                        tokens.get(last).to(),
                        at,
                        false,
                        List.of(size.get().size()),
                        -1));
                before = Optional.empty();
                at = last + 1;
                continue;
            }
            if (token.isNumber()) {
                parts.add(part(question, token.from(), token.to(), at, false, spot(tokens, at), token.number()));
            } else if (token.word()) {
                unread.add(new Asked.Unread(token.text(), token.from(), token.to()));
            } else if (";.?!:".contains(token.text())) {
                parts.add(
                        part(question, token.from(), token.to(), at, false, List.of(new Sense.Cue(Act.STOP, "")), -1));
            }
            at++;
        }
        return new Parts(question, parts, unread.stream().distinct().toList(), quoted);
    }

    /** "A tackle who sits": behind the term for such a man, with nothing in between, the word leads back to it and asks for nobody. */
    private boolean isRelative(Match<Sense> before, Match<Sense> match) {
        boolean asks = match.length() == 1
                && match.values().stream()
                        .anyMatch(s -> s instanceof Sense.Cue cue
                                && cue.act() == Act.WHO
                                && cue.value().isEmpty());
        return asks
                && before.end() == match.first()
                && before.values().stream()
                        .anyMatch(s -> s instanceof Sense.Term term
                                && other.test(term.label().slug()));
    }

    /** "From a 9" is a spot on the front. */
    private List<Sense> spot(List<Token> tokens, int at) {
        Optional<String> word =
                at > 0 ? Optional.ofNullable(spots.get(tokens.get(at - 1).key())) : Optional.empty();
        boolean counted =
                at + 1 < tokens.size() && words.from(tokens, at + 1).stream().anyMatch(match -> counts(match.values()));
        if (word.isEmpty() || counted) {
            return List.of();
        }
        List<Token> spoken = List.of(tokens.get(at), tokens.get(at).takenFor(word.get()));
        return words.from(spoken, 0).stream()
                .filter(match -> match.end() == 2)
                .flatMap(match -> match.values().stream())
                .filter(Sense.Term.class::isInstance)
                .toList();
    }

    private static boolean counts(List<Sense> senses) {
        return senses.stream().anyMatch(s -> s instanceof Sense.Cue cue && cue.act() == Act.UNIT);
    }

    private static List<Label> within(Match<Sense> match, List<Match<Sense>> all) {
        return all.stream()
                .filter(inner -> inner.length() < match.length())
                .filter(inner -> inner.first() >= match.first() && inner.end() <= match.end())
                .flatMap(inner -> inner.values().stream())
                .filter(Sense.Term.class::isInstance)
                .map(sense -> ((Sense.Term) sense).label())
                .distinct()
                .toList();
    }

    private static Part part(
            String question, int from, int to, int first, boolean guessed, List<Sense> senses, int number) {
        return new Part(question.substring(from, to), from, to, first, guessed, senses, List.of(), number);
    }

    private Matcher<Sense> namesOf(People people) {
        Named known = latest;
        if (!known.people().equals(people)) {
            known = new Named(people, NameWords.of(tokenizer, people));
            latest = known;
        }
        return known.matcher();
    }
}
