package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Decisions find their tags again in the corrected file. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CarryingTest {
    @Test
    void the_pairs_are_of_like_words_in_order_and_as_many_as_can_be() {
        for (int seed = 1; seed <= 400; seed++) {
            Random random = new Random(seed);
            List<String> a = row(random);
            List<String> b = row(random);

            List<LongestRow.Pair> pairs = LongestRow.of(a, b);

            for (int i = 0; i < pairs.size(); i++) {
                assertThat(a.get(pairs.get(i).one()))
                        .isEqualTo(b.get(pairs.get(i).other()));
                if (i > 0) {
                    assertThat(pairs.get(i).one())
                            .isGreaterThan(pairs.get(i - 1).one());
                    assertThat(pairs.get(i).other())
                            .isGreaterThan(pairs.get(i - 1).other());
                }
            }
            assertThat(pairs).as("seed %d", seed).hasSize(longest(a, b));
        }
    }

    @Test
    void the_same_file_keeps_every_decision() {
        for (int seed = 1; seed <= 100; seed++) {
            Random random = new Random(seed);
            List<List<String>> keys = keyed(told(random));
            Decisions decided = decided(keys, random);

            assertThat(Carrying.carried(decided, keys, keys)).isEqualTo(decided);
            List<List<String>> copy = new ArrayList<>(keys);
            copy.add(List.of("in-general/new:words"));
            assertThat(Carrying.carried(decided, keys, copy))
                    .as("seed %d", seed)
                    .isEqualTo(decided);
        }
    }

    @Test
    void where_one_tag_became_another_every_other_keeps_its_decision_however_often_its_words_come_again() {
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            List<List<String>> words = told(random);
            List<int[]> places = new ArrayList<>();
            for (int i = 0; i < words.size(); i++) {
                for (int j = 0; j < words.get(i).size(); j++) {
                    places.add(new int[] {i, j});
                }
            }
            if (places.isEmpty()) {
                continue;
            }
            int[] other = places.get(random.nextInt(places.size()));
            List<List<String>> before = keyed(words);
            Map<String, Boolean> chosen = decided(before, random).chosen();
            List<List<String>> changed = new ArrayList<>();
            words.forEach(rep -> changed.add(new ArrayList<>(rep)));
            changed.get(other[0]).set(other[1], "new");
            List<List<String>> after = keyed(changed);
            Map<String, Boolean> wanted = new HashMap<>();
            for (int[] at : places) {
                Boolean value = chosen.get(before.get(at[0]).get(at[1]));
                if (value != null && at != other) {
                    wanted.put(after.get(at[0]).get(at[1]), value);
                }
            }

            Decisions carried = Carrying.carried(choosing(chosen), before, after);

            assertThat(carried.chosen()).as("seed %d", seed).isEqualTo(wanted);
        }
    }

    @Test
    void a_rep_that_came_in_before_moves_phases_and_added_tags_along() {
        List<List<String>> before = keyed(List.of(List.of("rip", "sack"), List.of("dip")));
        List<List<String>> after = keyed(List.of(List.of("bull"), List.of("rip", "sack"), List.of("dip", "sack")));
        Decisions decided = new Decisions(
                Map.of("sack:said sack", true, "dip:said dip", false),
                Map.of("1", "run", "2", "drop"),
                Map.of("sack:said sack", "hurry"),
                List.of(
                        new Decisions.Added("chop", "chops", 1, "rip:said rip"),
                        new Decisions.Added("club", "", 2, "")),
                Set.of("sack:said sack"),
                Set.of("dip:said dip"));

        Decisions carried = Carrying.carried(decided, before, after);

        assertThat(carried)
                .isEqualTo(new Decisions(
                        Map.of("sack:said sack", true, "dip:said dip", false),
                        Map.of("2", "run", "3", "drop"),
                        Map.of("sack:said sack", "hurry"),
                        List.of(
                                new Decisions.Added("chop", "chops", 2, "rip:said rip"),
                                new Decisions.Added("club", "", 3, "")),
                        Set.of("sack:said sack"),
                        Set.of("dip:said dip")));
    }

    @Test
    void an_added_tag_that_the_new_reading_finds_itself_is_accepted() {
        List<List<String>> before = keyed(List.of(List.of("rip", "sack")));
        List<List<String>> after = List.of(List.of("rip:said rip", "long-arm:pins him off", "sack:said sack"));
        Decisions decided = new Decisions(
                Map.of(),
                Map.of(),
                Map.of(),
                List.of(new Decisions.Added("long-arm", "Pins  him off", 1, "rip:said rip")),
                Set.of(),
                Set.of());

        Decisions carried = Carrying.carried(decided, before, after);

        assertThat(carried.added()).isEmpty();
        assertThat(carried.chosen()).isEqualTo(Map.of("long-arm:pins him off", true));
    }

    @Test
    void an_added_tag_whose_neighbor_went_stands_behind_the_one_before_that() {
        List<List<String>> before = keyed(List.of(List.of("rip", "sack", "dip")));
        List<List<String>> after = keyed(List.of(List.of("rip", "dip")));
        Decisions decided = new Decisions(
                Map.of(),
                Map.of(),
                Map.of(),
                List.of(new Decisions.Added("chop", "", 1, "sack:said sack")),
                Set.of(),
                Set.of());

        assertThat(Carrying.carried(decided, before, after).added())
                .containsExactly(new Decisions.Added("chop", "", 1, "rip:said rip"));
    }

    @Test
    void a_split_is_needless_where_the_notes_now_open_a_rep_and_a_merge_where_they_do_not() {
        List<List<String>> one = keyed(List.of(List.of("rip", "sack", "bull", "hurry")));
        List<List<String>> two = keyed(List.of(List.of("rip", "sack"), List.of("bull", "hurry")));
        Decisions split = new Decisions(Map.of(), Map.of(), Map.of(), List.of(), Set.of("bull:said bull"), Set.of());
        Decisions merge = new Decisions(Map.of(), Map.of(), Map.of(), List.of(), Set.of(), Set.of("bull:said bull"));

        assertThat(Carrying.carried(split, one, two)).isEqualTo(Decisions.NONE);
        assertThat(Carrying.carried(merge, two, one)).isEqualTo(Decisions.NONE);
    }

    @Test
    void another_file_is_not_like_it_and_a_corrected_one_is() {
        List<List<String>> file = keyed(List.of(List.of("rip", "sack"), List.of("dip", "bull")));

        assertThat(Carrying.likeness(file, keyed(List.of(List.of("spin", "hurry")))))
                .isZero();
        assertThat(Carrying.likeness(file, keyed(List.of(List.of("rip", "sack", "spin"), List.of("dip")))))
                .isEqualTo(0.75);
        assertThat(Carrying.likeness(file, file)).isEqualTo(1);
    }

    private static List<String> row(Random random) {
        List<String> row = new ArrayList<>();
        for (int i = random.nextInt(25); i > 0; i--) {
            row.add(String.valueOf("abc".charAt(random.nextInt(3))));
        }
        return row;
    }

    /** The length of the longest row in both, by the table that everybody knows. */
    private static int longest(List<String> a, List<String> b) {
        int[][] table = new int[a.size() + 1][b.size() + 1];
        for (int i = 1; i <= a.size(); i++) {
            for (int j = 1; j <= b.size(); j++) {
                table[i][j] = a.get(i - 1).equals(b.get(j - 1))
                        ? table[i - 1][j - 1] + 1
                        : Math.max(table[i - 1][j], table[i][j - 1]);
            }
        }
        return table[a.size()][b.size()];
    }

    /** Some reps of some words each, few words so that many come again. */
    private static List<List<String>> told(Random random) {
        List<List<String>> reps = new ArrayList<>();
        for (int i = random.nextInt(30); i >= 0; i--) {
            List<String> words = new ArrayList<>();
            for (int j = random.nextInt(6); j > 0; j--) {
                words.add(String.valueOf("abcdefgh".charAt(random.nextInt(8))));
            }
            reps.add(words);
        }
        return reps;
    }

    /** Keys as {@link TagKeys} makes them: a word that comes again is counted. */
    private static List<List<String>> keyed(List<List<String>> reps) {
        Map<String, Integer> given = new HashMap<>();
        List<List<String>> keyed = new ArrayList<>();
        for (List<String> words : reps) {
            List<String> keys = new ArrayList<>();
            for (String word : words) {
                int nth = given.merge(word, 1, Integer::sum);
                keys.add(word + (nth == 1 ? "" : "#" + nth) + ":said " + word);
            }
            keyed.add(keys);
        }
        return keyed;
    }

    private static Decisions choosing(Map<String, Boolean> chosen) {
        return new Decisions(chosen, Map.of(), Map.of(), List.of(), Set.of(), Set.of());
    }

    /** Every kind of decision, on some of the tags. */
    private static Decisions decided(List<List<String>> keys, Random random) {
        Map<String, Boolean> chosen = new HashMap<>();
        Map<String, String> changed = new HashMap<>();
        List<Decisions.Added> added = new ArrayList<>();
        Set<String> splits = new HashSet<>();
        Set<String> merges = new HashSet<>();
        for (int i = 0; i < keys.size(); i++) {
            List<String> rep = keys.get(i);
            for (String key : rep) {
                boolean first = key.equals(rep.get(0));
                switch (random.nextInt(8)) {
                    case 0, 1 -> chosen.put(key, true);
                    case 2, 3 -> chosen.put(key, false);
                    case 4 -> changed.put(key, "other");
                    case 5 -> added.add(new Decisions.Added("chop", "chops " + key, i + 1, key));
                    case 6 -> (first ? merges : splits).add(key);
                    default -> {}
                }
            }
        }
        return new Decisions(chosen, Map.of("1", "run"), changed, added, splits, merges);
    }
}
