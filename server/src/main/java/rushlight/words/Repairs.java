package rushlight.words;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Replaces misspelled words of a text where a matcher finds more with the nearest word it knows. */
final class Repairs<T> {
    private static final int FARTHEST = 5;

    private final Matcher<T> matcher;
    private final Slips slips;

    Repairs(Matcher<T> matcher, Slips slips) {
        this.matcher = matcher;
        this.slips = slips;
    }

    List<Token> of(List<Token> tokens, Predicate<String> known) {
        List<Token> result = new ArrayList<>(tokens);
        int tries = 0;
        for (int i = 0; i < tokens.size() && tries < Slips.MOST; i++) {
            Token token = tokens.get(i);
            if (!isSlip(token, known) || longestOver(tokens, i) > 0) {
                continue;
            }
            tries++;
            int best = 0;
            for (String near : slips.nearest(token.key())) {
                List<Token> tried = new ArrayList<>(result);
                tried.set(i, token.takenFor(near));
                int length = longestOver(tried, i);
                if (length > best && (length > 1 || token.key().length() > Slips.SHORT)) {
                    best = length;
                    result.set(i, token.takenFor(near));
                }
            }
        }
        return List.copyOf(result);
    }

    private boolean isSlip(Token token, Predicate<String> known) {
        boolean word = token.word() && !token.isNumber() && !token.repaired();
        return word && !matcher.knows(token.key()) && !known.test(token.key());
    }

    private int longestOver(List<Token> tokens, int i) {
        return IntStream.rangeClosed(Math.max(0, i - FARTHEST), i)
                .boxed()
                .flatMap(first -> matcher.from(tokens, first).stream())
                .filter(match -> match.end() > i)
                .mapToInt(Match::length)
                .max()
                .orElse(0);
    }
}
