package rushlight.words;

import java.util.ArrayList;
import java.util.List;

/** A text as one matcher reads it: what is asked of each of its words is worked out once, when it is first asked. */
final class Reading {
    private final List<Token> tokens;
    private final Inflections inflections;
    private final Slips slips;
    private final int first;
    private final int end;
    private final String[] bases;
    private final String[] fused;
    private final List<List<String>> rows = new ArrayList<>();

    /**
     * @param first the first token that is asked for
     * @param end the one behind the last
     */
    Reading(List<Token> tokens, int first, int end, Inflections inflections, Slips slips) {
        this.tokens = tokens;
        this.first = first;
        this.end = end;
        this.inflections = inflections;
        this.slips = slips;
        this.bases = new String[end - first];
        this.fused = new String[end - first];
        for (int i = first; i < end; i++) {
            rows.add(new ArrayList<>(0));
        }
    }

    List<Token> tokens() {
        return tokens;
    }

    boolean isWord(int at) {
        return at < end && tokens.get(at).word();
    }

    String key(int at) {
        return tokens.get(at).key();
    }

    String base(int at) {
        String known = bases[at - first];
        if (known == null) {
            known = inflections.base(key(at));
            bases[at - first] = known;
        }
        return known;
    }

    /** The base of a word and the next as one. */
    String fused(int at) {
        String known = fused[at - first];
        if (known == null) {
            known = slips.fused(key(at), key(at + 1));
            fused[at - first] = known;
        }
        return known;
    }

    /** So many words from here, each by its base; empty where there are not so many in a row. */
    String words(int at, int count) {
        if (count == 1) {
            return base(at);
        }
        List<String> known = rows.get(at - first);
        while (known.size() < count - 1) {
            int next = at + known.size() + 1;
            String words = known.isEmpty() ? base(at) : known.get(known.size() - 1);
            known.add(words.isEmpty() || !isWord(next) ? "" : words + " " + base(next));
        }
        return known.get(count - 2);
    }
}
