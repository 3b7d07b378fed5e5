package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What decisions on notes teach of some words and a concept, counted over every file that was decided on.
 *
 * @param kind whether the words want to be a name of the concept, or were taken for it in vain
 * @param concept its slug
 * @param words as they were said: lower case, no marks
 * @param places where it was decided so, in the order of the files
 * @param held how often the same tag was accepted as it was read
 */
public record Learned(Kind kind, String concept, String words, List<Place> places, int held) {
    /** A single rejection may be of one rep alone. */
    private static final int WARNED = 2;

    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}'\u2019-]+");
    private static final Pattern HANGING =
            Pattern.compile("(?<![\\p{L}\\p{N}])['\u2019-]+|['\u2019-]+(?![\\p{L}\\p{N}])");

    /** What is learned. */
    public enum Kind {
        /** The words were tagged by hand: the book may take them as a name. */
        NAME,
        /** The words were read as the concept and rejected, or changed to another. */
        WARNING
    }

    /**
     * A file with what was decided on it.
     *
     * @param id where the decisions are kept
     * @param file its name
     * @param outline the keys of the tags of each rep, and last of what was said in general
     */
    public record Source(String id, String file, Decisions decided, List<List<String>> outline) {}

    /** Where it was decided: the rep is its ordinal in the notes, 0 where it was said of the player in general. */
    public record Place(String id, String file, int rep) {}

    public Learned {
        places = List.copyOf(places);
    }

    /** How often it was decided so. */
    public int times() {
        return places.size();
    }

    /** A name for it that stays the same whatever is decided elsewhere. */
    public String key() {
        return (kind == Kind.WARNING ? "not-" : "") + concept + ":" + words;
    }

    /** What all of these teach: names first, and of each kind what was decided most often. */
    public static List<Learned> of(List<Source> sources) {
        Tally tally = new Tally();
        sources.forEach(tally::add);
        return tally.learned();
    }

    /** Words without marks, as a label has them. */
    static String plain(String text) {
        String letters = NO_WORD.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ");
        return HANGING.matcher(letters.replace('\u2019', '\''))
                .replaceAll(" ")
                .strip()
                .replaceAll("\\s+", " ");
    }

    /** A concept and words of it. */
    private record Said(String concept, String words) {
        /** What a key of {@link TagKeys} names. */
        static Said of(String key) {
            int colon = key.indexOf(':');
            String named = key.substring(key.startsWith(TagKeys.GENERAL) ? TagKeys.GENERAL.length() : 0, colon);
            int nth = named.indexOf('#');
            return new Said(nth < 0 ? named : named.substring(0, nth), plain(key.substring(colon + 1)));
        }
    }

    /** Counts decisions. */
    private static final class Tally {
        private final Map<Said, List<Place>> tagged = new HashMap<>();
        private final Map<Said, List<Place>> refused = new HashMap<>();
        private final Map<Said, Integer> accepted = new HashMap<>();

        void add(Source source) {
            Map<String, Place> where = new TreeMap<>();
            for (int i = 0; i < source.outline().size(); i++) {
                for (String key : source.outline().get(i)) {
                    // What a program sent that is no key teaches nothing.
                    if (key.indexOf(':') < 0) {
                        continue;
                    }
                    where.put(key, new Place(source.id(), source.file(), key.startsWith(TagKeys.GENERAL) ? 0 : i + 1));
                }
            }
            Decisions decided = source.decided();
            where.forEach((key, place) -> {
                String instead = decided.changed().get(key);
                if (instead != null) {
                    put(refused, Said.of(key), place);
                    put(tagged, new Said(instead, Said.of(key).words()), place);
                } else if (decided.chosen().containsKey(key)) {
                    if (decided.chosen().getOrDefault(key, false)) {
                        accepted.merge(Said.of(key), 1, Integer::sum);
                    } else {
                        put(refused, Said.of(key), place);
                    }
                }
            });
            for (Decisions.Added one : decided.added()) {
                put(
                        tagged,
                        new Said(one.concept(), plain(one.text())),
                        new Place(source.id(), source.file(), one.rep()));
            }
        }

        private static void put(Map<Said, List<Place>> map, Said said, Place place) {
            if (!said.words().isEmpty()) {
                map.computeIfAbsent(said, s -> new ArrayList<>()).add(place);
            }
        }

        List<Learned> learned() {
            List<Learned> all = new ArrayList<>();
            tagged.forEach((said, places) -> all.add(learned(Kind.NAME, said, places)));
            refused.forEach((said, places) -> {
                if (places.size() >= WARNED) {
                    all.add(learned(Kind.WARNING, said, places));
                }
            });
            all.sort(Comparator.comparing(Learned::kind)
                    .thenComparing(Comparator.comparingInt(Learned::times).reversed())
                    .thenComparing(Learned::words)
                    .thenComparing(Learned::concept));
            return List.copyOf(all);
        }

        private Learned learned(Kind kind, Said said, List<Place> places) {
            List<Place> inOrder = places.stream()
                    .sorted(Comparator.comparing(Place::file)
                            .thenComparing(Place::id)
                            .thenComparingInt(Place::rep))
                    .toList();
            return new Learned(kind, said.concept(), said.words(), inOrder, accepted.getOrDefault(said, 0));
        }
    }
}
