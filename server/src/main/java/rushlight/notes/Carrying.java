package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Decisions carried over to the corrected file: by the order of the tags, whatever their times. A tag keeps its decision
 * where it stands in the same order among the others; a rep keeps its phase where most of it is still there.
 */
public final class Carrying {
    private static final Pattern NTH = Pattern.compile("^([^:#]*)#\\d+:");
    private static final String REP = "|";

    private final Decisions before;
    private final List<Token> old;
    private final List<Token> fresh;
    private final List<List<String>> now;
    private final Map<String, Token> home = new HashMap<>();
    private final Map<Integer, Integer> reps = new HashMap<>();
    private final int alike;

    /** A rep, or a tag of one; a tag's word is its key without the count. */
    private record Token(String word, String key, int rep) {}

    private Carrying(Decisions before, List<List<String>> outline, List<List<String>> now) {
        this.before = before;
        this.old = tokens(outline);
        this.fresh = tokens(now);
        this.now = now;
        Map<Integer, Map<Integer, Integer>> homes = new TreeMap<>();
        int found = 0;
        for (LongestRow.Pair pair : LongestRow.of(words(old), words(fresh))) {
            Token from = old.get(pair.one());
            Token to = fresh.get(pair.other());
            if (!from.key.isEmpty()) {
                home.put(from.key, to);
                found++;
            }
            homes.computeIfAbsent(from.rep, rep -> new TreeMap<>()).merge(to.rep, 1, Integer::sum);
        }
        this.alike = found;
        homes.forEach((rep, all) -> reps.put(
                rep,
                all.entrySet().stream()
                        .max(Map.Entry.<Integer, Integer>comparingByValue()
                                .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                        .orElseThrow()
                        .getKey()));
    }

    /** What notes propose, in short: the keys of the tags of each rep in order, and last of what was said in general. */
    public static List<List<String>> outline(Notes notes) {
        List<List<String>> outline = new ArrayList<>(TagKeys.ofReps(notes));
        List<String> general = TagKeys.ofStatements(notes);
        if (!general.isEmpty()) {
            outline.add(general);
        }
        return outline;
    }

    /**
     * The decisions as they hold for another reading of the notes.
     *
     * @param outline the outline of the file they were made on
     * @param now that of the file as it is
     */
    public static Decisions carried(Decisions before, List<List<String>> outline, List<List<String>> now) {
        return outline.equals(now) ? before : new Carrying(before, outline, now).decisions();
    }

    /** How much of two outlines is alike: the tags that both have in one order, by those of the shorter; from 0 to 1. */
    public static double likeness(List<List<String>> one, List<List<String>> other) {
        if (one.equals(other)) {
            return 1;
        }
        long shorter = Math.min(tags(one), tags(other));
        return shorter == 0 ? 0 : (double) new Carrying(Decisions.NONE, one, other).alike / shorter;
    }

    private static long tags(List<List<String>> outline) {
        return outline.stream().mapToLong(List::size).sum();
    }

    private Decisions decisions() {
        Map<String, Boolean> chosen = moved(before.chosen());
        return new Decisions(chosen, phases(), moved(before.changed()), added(chosen), splits(), merges());
    }

    private <T> Map<String, T> moved(Map<String, T> map) {
        Map<String, T> moved = new TreeMap<>();
        map.forEach((key, value) -> key(key).ifPresent(to -> moved.put(to, value)));
        return moved;
    }

    private Optional<String> key(String key) {
        return Optional.ofNullable(home.get(key)).map(Token::key);
    }

    private Map<String, String> phases() {
        Map<String, String> phases = new TreeMap<>();
        before.phases().forEach((where, phase) -> {
            Optional<String> to = isOrdinal(where)
                    ? Optional.ofNullable(reps.get(Integer.parseInt(where))).map(String::valueOf)
                    : key(where);
            to.ifPresent(rep -> phases.putIfAbsent(rep, phase));
        });
        return phases;
    }

    static boolean isOrdinal(String where) {
        return where.matches("\\d{1,9}");
    }

    /** A tag that was added and that the new reading finds itself is one that is accepted. */
    private List<Decisions.Added> added(Map<String, Boolean> chosen) {
        List<Decisions.Added> all = new ArrayList<>();
        Set<String> taken = new TreeSet<>(home.values().stream().map(Token::key).toList());
        for (Decisions.Added one : before.added()) {
            Optional<Token> anchor = anchor(one);
            int rep = anchor.map(Token::rep).orElse(reps.getOrDefault(one.rep(), 0));
            if (rep == 0) {
                continue;
            }
            String word = one.concept() + ":" + TagKeys.words(one.text());
            Optional<Token> itself = fresh.stream()
                    .filter(token -> token.rep == rep && token.word.equals(word) && !taken.contains(token.key))
                    .findFirst();
            if (itself.isPresent() && !one.text().isBlank()) {
                taken.add(itself.get().key);
                chosen.put(itself.get().key, true);
            } else {
                String after = anchor.map(Token::key).orElse("");
                all.add(new Decisions.Added(one.concept(), one.text(), rep, after));
            }
        }
        return all;
    }

    /** The tag it stands behind, or the nearest one before that in its rep. */
    private Optional<Token> anchor(Decisions.Added one) {
        Optional<Token> anchor = Optional.empty();
        if (one.after().isEmpty()) {
            return anchor;
        }
        for (Token token : old) {
            if (token.rep == one.rep()) {
                Optional<Token> last = anchor;
                anchor = Optional.ofNullable(home.get(token.key)).or(() -> last);
                if (token.key.equals(one.after())) {
                    return anchor;
                }
            }
        }
        return anchor;
    }

    /** A rep that the notes now open themselves needs no split. */
    private Set<String> splits() {
        Set<String> splits = new TreeSet<>();
        for (String split : before.splits()) {
            key(split).filter(key -> !isFirst(key)).ifPresent(splits::add);
        }
        return splits;
    }

    private Set<String> merges() {
        Set<String> merges = new TreeSet<>();
        for (String merge : before.merges()) {
            old.stream()
                    .filter(token -> token.key.equals(merge))
                    .findFirst()
                    .map(token -> reps.get(token.rep))
                    .map(rep -> now.get(rep - 1))
                    .filter(tags -> !tags.isEmpty()
                            && key(merge).filter(key -> !isFirst(key)).isEmpty())
                    .ifPresent(tags -> merges.add(tags.get(0)));
        }
        return merges;
    }

    private boolean isFirst(String key) {
        return now.stream().anyMatch(tags -> !tags.isEmpty() && tags.get(0).equals(key));
    }

    private static List<Token> tokens(List<List<String>> outline) {
        List<Token> tokens = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            tokens.add(new Token(REP, "", i + 1));
            for (String key : outline.get(i)) {
                tokens.add(new Token(NTH.matcher(key).replaceFirst("$1:"), key, i + 1));
            }
        }
        return tokens;
    }

    private static List<String> words(List<Token> tokens) {
        return tokens.stream().map(Token::word).toList();
    }
}
