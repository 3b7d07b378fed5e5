package rushlight.notes;

import java.util.BitSet;
import java.util.List;
import rushlight.words.Match;
import rushlight.words.Token;

/** Names in a sentence, "the Sable Coast tackle": words written large beside a large word that means nothing here. */
final class Names {
    private final List<Token> tokens;
    private final BitSet known = new BitSet();

    /** Words of sentences written mostly small: where most are written large, none is a name for that. */
    private final BitSet amongSmall = new BitSet();

    Names(List<Token> tokens, List<Match<Terms.Term>> terms) {
        this.tokens = tokens;
        terms.forEach(match -> known.set(match.first(), match.end()));
        int from = 0;
        for (int i = 0; i <= tokens.size(); i++) {
            if (i == tokens.size() || isEdge(tokens.get(i))) {
                amongSmall.set(from, i, isMostlySmall(tokens.subList(from, i)));
                from = i + 1;
            }
        }
    }

    /** Whether words that may mean a term are part of a name. */
    boolean hold(Match<Terms.Term> match) {
        int at = match.first();
        return match.length() == 1 && amongSmall.get(at) && isLarge(at) && (isStrange(at - 1) || isStrange(at + 1));
    }

    private boolean isStrange(int at) {
        return isLarge(at) && !known.get(at);
    }

    /** Whether a word is written with a capital, and small letters behind it, where no sentence begins. */
    private boolean isLarge(int at) {
        if (at < 1 || at >= tokens.size() || !tokens.get(at - 1).word()) {
            return false;
        }
        String text = tokens.get(at).text();
        return text.length() > 1 && isCapital(tokens.get(at)) && Character.isLowerCase(text.charAt(1));
    }

    private static boolean isMostlySmall(List<Token> sentence) {
        long words = sentence.stream().filter(Token::word).count();
        long large =
                sentence.stream().filter(Token::word).filter(Names::isCapital).count();
        return 2 * large <= words;
    }

    private static boolean isCapital(Token token) {
        return Character.isUpperCase(token.text().charAt(0));
    }

    private static boolean isEdge(Token token) {
        return Edges.ends(token) || token.text().equals("\n");
    }
}
