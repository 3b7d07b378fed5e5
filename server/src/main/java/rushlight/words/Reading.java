package rushlight.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A text as one matcher reads it: what is asked of each of its words is worked out once, when it is first asked. */
final class Reading {
    /** So many words may stand for one group. */
    static final int LONGEST = 3;

    private final List<Token> tokens;
    private final Inflections inflections;
    private final Slips slips;
    private final Map<String, Set<String>> groups;
    private final int first;
    private final int end;
    private final String[] bases;
    private final String[] fused;
    private final List<List<Set<String>>> grouped = new ArrayList<>();

    /**
     * @param first the first token that is asked for
     * @param end the one behind the last
     */
    Reading(
            List<Token> tokens,
            int first,
            int end,
            Inflections inflections,
            Slips slips,
            Map<String, Set<String>> groups) {
        this.tokens = tokens;
        this.first = first;
        this.end = end;
        this.inflections = inflections;
        this.slips = slips;
        this.groups = groups;
        this.bases = new String[end - first];
        this.fused = new String[end - first];
        for (int i = first; i < end; i++) {
            grouped.add(List.of());
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
            known = inflections.base(slips.fused(key(at), key(at + 1)));
            fused[at - first] = known;
        }
        return known;
    }

    /** The groups that so many words from here stand for. */
    Set<String> groups(int at, int words) {
        int place = at - first;
        if (grouped.get(place).isEmpty()) {
            grouped.set(place, groupsFrom(at));
        }
        return grouped.get(place).get(words - 1);
    }

    private List<Set<String>> groupsFrom(int at) {
        List<Set<String>> found = new ArrayList<>();
        String words = "";
        boolean whole = true;
        for (int i = at; i < at + LONGEST; i++) {
            whole &= isWord(i);
            words = whole ? (words + " " + base(i)).strip() : words;
            found.add(whole ? groups.getOrDefault(words, Set.of()) : Set.of());
        }
        return List.copyOf(found);
    }
}
