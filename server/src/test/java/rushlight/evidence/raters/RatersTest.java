package rushlight.evidence.raters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Interval;

/** The coefficients against the values their authors printed, and where they fall into a trap. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RatersTest {
    private static final int[][] COHEN_1960 = {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}};
    private static final int[][] PATHOLOGISTS = {{22, 2, 2, 0}, {5, 7, 14, 0}, {0, 2, 36, 0}, {0, 1, 17, 10}};
    private static final int[][] ABSTRACTORS = {{13, 0, 0}, {0, 20, 7}, {0, 4, 56}};

    /** Thirty patients, six raters, five diagnoses: Fleiss 1971, Psychological Bulletin 76, table 1. */
    private static final String FLEISS_1971 =
            "00060 03003 01401 00006 03030 20400 00402 20310 20040 00006 10050 11040 03300 10050 02031 "
                    + "00501 30012 51000 02040 10203 00006 01050 02013 20040 10041 05010 40002 02040 10500 00006";

    /** Four coders, twelve units, gaps: Krippendorff 2011, "Computing Krippendorff's alpha-reliability", part C. */
    private static final Ratings<Integer> FOUR_CODERS = raters(
            "1 2 3 3 2 1 4 1 2 . . .", "1 2 3 3 2 2 4 1 2 5 . 3", ". 3 3 3 2 3 4 2 2 5 1 .", "1 2 3 3 2 4 4 1 2 5 1 .");

    @Test
    void kappa_of_Cohens_own_table() {
        // Cohen 1960, Educational and Psychological Measurement 20, pages 45 and 37
        Kappa kappa = Kappa.of(COHEN_1960).orElseThrow();
        assertThat(kappa.observed()).isCloseTo(0.70, within(0.0001));
        assertThat(kappa.expected()).isCloseTo(0.41, within(0.0001));
        assertThat(kappa.value()).isCloseTo(0.492, within(0.0005));
        Kappa below =
                Kappa.of(new int[][] {{25, 12, 3}, {13, 2, 15}, {12, 16, 2}}).orElseThrow();
        assertThat(below.observed()).isCloseTo(0.29, within(0.005));
        assertThat(below.expected()).isCloseTo(0.35, within(0.005));
        assertThat(below.value()).isNegative();
    }

    @Test
    void kappa_and_its_error_of_the_SAS_example() {
        // SAS/STAT documentation, agreement of two raters, as reproduced in the tests of statsmodels
        int[][] table = {{0, 4, 1}, {0, 8, 0}, {0, 1, 5}};
        Kappa kappa = Kappa.of(table).orElseThrow();
        assertThat(kappa.value()).isCloseTo(0.4842, within(0.00005));
        assertThat(kappa.error()).isCloseTo(0.1380, within(0.00005));
        Kappa linear = Kappa.weighted(table, agreement(new double[][] {{0, 1, 2}, {1, 0, 1}, {2, 1, 0}}))
                .orElseThrow();
        assertThat(linear.value()).isCloseTo(0.4701, within(0.00005));
        assertThat(linear.error()).isCloseTo(0.1457, within(0.00005));
    }

    @Test
    void kappa_of_two_pathologists() {
        // Landis and Koch 1977; Agresti 1992: .493 with error .057
        Kappa kappa = Kappa.of(PATHOLOGISTS).orElseThrow();
        assertThat(kappa.value()).isCloseTo(0.493, within(0.0005));
        assertThat(kappa.error()).isCloseTo(0.057, within(0.0005));
        assertThat(kappa.interval().contains(kappa.value())).isTrue();
    }

    @Test
    void weighted_kappa_of_Cohens_weights() {
        // Cohen 1968, Psychological Bulletin 70: .348, and .353 with weights that are not the same both ways
        assertThat(Kappa.weighted(COHEN_1960, agreement(new double[][] {{0, 1, 3}, {1, 0, 6}, {3, 6, 0}}))
                        .orElseThrow()
                        .value())
                .isCloseTo(0.348, within(0.0005));
        assertThat(Kappa.weighted(COHEN_1960, agreement(new double[][] {{0, 1, 4}, {1, 0, 6}, {2, 2, 0}}))
                        .orElseThrow()
                        .value())
                .isCloseTo(0.353, within(0.0005));
    }

    /** DKPro's own weighted kappa returns .4732 and .5136 here; ours must not (linear published, from memory; others R only). */
    @Test
    void weighted_kappa_does_not_fall_into_the_trap_of_unscaled_weights() {
        assertThat(Kappa.weighted(PATHOLOGISTS, agreement(steps(1)))
                        .orElseThrow()
                        .value())
                .isCloseTo(0.6488, within(0.00005));
        Kappa quadratic = Kappa.weighted(PATHOLOGISTS, agreement(steps(2))).orElseThrow();
        assertThat(quadratic.value()).isCloseTo(0.7838, within(0.00005));
        assertThat(quadratic.error()).isCloseTo(0.0387, within(0.00005));
    }

    @Test
    void the_same_share_agreed_gives_a_high_and_a_low_kappa_where_one_label_is_rare_and_AC1_stays() {
        // Feinstein and Cicchetti 1990, Journal of Clinical Epidemiology 43: .70 and .32 for .85 agreed (AC1: R only)
        int[][] even = {{40, 9}, {6, 45}};
        int[][] lopsided = {{80, 10}, {5, 5}};
        assertThat(Kappa.of(even).orElseThrow().value()).isCloseTo(0.70, within(0.005));
        assertThat(Kappa.of(lopsided).orElseThrow().value()).isCloseTo(0.32, within(0.005));
        assertThat(Ac1.of(spread(even)).orElseThrow()).isCloseTo(0.7007, within(0.00005));
        assertThat(Ac1.of(spread(lopsided)).orElseThrow()).isCloseTo(0.8080, within(0.00005));
    }

    @Test
    void AC1_where_all_but_seven_agree_on_one_label() {
        // Gwet 2008, from memory: kappa -.023, AC1 .941
        int[][] table = {{118, 5}, {2, 0}};
        assertThat(Kappa.of(table).orElseThrow().value()).isCloseTo(-0.023, within(0.0005));
        assertThat(Ac1.of(spread(table)).orElseThrow()).isCloseTo(0.941, within(0.0005));
    }

    @Test
    void AC1_and_kappa_of_the_abstractors() {
        // documentation of irrCAC (cont3x3abstractors): kappa .7964094, error .05891072, AC1 .8493305
        Kappa kappa = Kappa.of(spread(ABSTRACTORS)).orElseThrow();
        assertThat(kappa.value()).isCloseTo(0.7964094, within(5e-8));
        assertThat(kappa.error()).isCloseTo(0.05891072, within(3e-4)); // irrCAC divides by n - 1
        assertThat(Ac1.of(spread(ABSTRACTORS)).orElseThrow()).isCloseTo(0.8493305, within(5e-8));
    }

    @Test
    void AC1_with_gaps() {
        // documentation of irrCAC (cac.raw4raters): .77544
        assertThat(Ac1.of(FOUR_CODERS).orElseThrow()).isCloseTo(0.77544, within(0.000005));
    }

    @Test
    void Fleiss_kappa_of_his_thirty_patients() {
        // Fleiss 1971: .430; documentation of irrCAC, first fifteen rows: Fleiss .4139265, AC1 .4448007, alpha .4204384
        List<Map<String, Integer>> all = patients(30);
        assertThat(FleissKappa.of(all)).isCloseTo(0.430, within(0.0005));
        assertThat(FleissKappa.of(patients(15))).isCloseTo(0.4139265, within(5e-8));
        assertThat(Ac1.of(asked(patients(15))).orElseThrow()).isCloseTo(0.4448007, within(5e-8));
        assertThat(Alpha.of(asked(patients(15)), Distance.nominal()).orElseThrow())
                .isCloseTo(0.4204384, within(5e-8));
    }

    @Test
    void Fleiss_kappa_asks_for_the_same_number_of_ratings() {
        assertThatThrownBy(() -> FleissKappa.of(List.of(Map.of("a", 2), Map.of("a", 3))))
                .hasMessageContaining("same number");
    }

    @Test
    void alpha_of_four_coders_with_gaps() {
        // Krippendorff 2011, part C: nominal .743, ordinal .815, interval .849
        assertThat(Alpha.of(FOUR_CODERS, Distance.nominal()).orElseThrow()).isCloseTo(0.743, within(0.0005));
        assertThat(Alpha.ordinal(FOUR_CODERS).orElseThrow()).isCloseTo(0.815, within(0.0005));
        assertThat(Alpha.of(FOUR_CODERS, (a, b) -> (double) (a - b) * (a - b)).orElseThrow())
                .isCloseTo(0.849, within(0.0005));
    }

    @Test
    void alpha_of_two_coders() {
        // Krippendorff 1980 and 2004: .095; 2011, part B, from memory: .692
        assertThat(Alpha.of(raters("0 1 0 0 0 0 0 0 1 0", "1 1 1 0 0 1 0 0 0 0"), Distance.nominal())
                        .orElseThrow())
                .isCloseTo(0.095, within(0.0005));
        assertThat(Alpha.of(raters("1 1 2 2 4 3 3 3 5 4 4 1", "2 1 2 2 2 3 3 3 5 4 4 4"), Distance.nominal())
                        .orElseThrow())
                .isCloseTo(0.692, within(0.0005));
    }

    @Test
    void alpha_is_undefined_where_only_one_label_was_given() {
        assertThat(Alpha.of(raters("1 1 1", "1 1 1"), Distance.nominal())).isEmpty();
        assertThat(Alpha.interval(raters("1 1 1", "1 1 1"), Distance.nominal())).isEmpty();
        assertThat(Kappa.of(raters("1 1 1", "1 1 1"))).isEmpty();
        assertThat(Ac1.of(raters("1 1 1", "1 1 1"))).isEmpty();
        assertThat(Alpha.of(raters("1 2 .", ". . 1"), Distance.nominal())).isEmpty();
    }

    @Test
    void the_range_of_alpha_holds_alpha_and_comes_out_the_same_twice() {
        Interval range = Alpha.interval(FOUR_CODERS, Distance.nominal()).orElseThrow();
        assertThat(range.contains(0.743)).isTrue();
        assertThat(range.high() - range.low()).isBetween(0.1, 0.8);
        assertThat(Alpha.interval(FOUR_CODERS, Distance.nominal())).contains(range);
        assertThat(Alpha.ordinalInterval(FOUR_CODERS).orElseThrow().contains(0.815))
                .isTrue();
    }

    @Test
    void MASI_is_the_published_one() {
        // Passonneau 2006; NLTK's documentation prints .665 and .868 with 2/3 and 1/3 rounded to .67 and .33
        assertThat(SetDistance.masi(Set.of(1, 2), Set.of(1, 2, 3, 4))).isCloseTo(2.0 / 3, within(1e-12));
        assertThat(SetDistance.masi(Set.of(1, 2, 3, 4), Set.of(3, 4, 5))).isCloseTo(0.8667, within(0.00005));
        assertThat(SetDistance.jaccard(Set.of(1, 2, 3, 4), Set.of(3, 4, 5))).isCloseTo(0.6, within(1e-12));
        assertThat(SetDistance.masi(Set.of(), Set.of())).isZero();
        assertThat(SetDistance.masi(Set.of(), Set.of(1))).isEqualTo(1);
    }

    @Test
    void alpha_of_sets_of_tags() {
        // computed in R from the definitions; no published table of this kind was found
        Ratings<Set<String>> ten = Ratings.pairs(Stream.of(
                        "bull/bull",
                        "bull long-arm/bull",
                        "spin/spin",
                        "chop rip/chop rip",
                        "rip/chop rip",
                        "bull/long-arm",
                        "chop dip/chop rip",
                        "swim/swim",
                        "bull/bull",
                        "spin/spin rip")
                .map(row -> Map.entry(words(row, 0), words(row, 1)))
                .toList());
        assertThat(Alpha.of(ten, SetDistance::masi).orElseThrow()).isCloseTo(0.5356145, within(5e-8));
        assertThat(Alpha.of(ten, SetDistance::jaccard).orElseThrow()).isCloseTo(0.6114101, within(5e-8));
        assertThat(Alpha.of(ten, Distance.nominal()).orElseThrow()).isCloseTo(0.4242424, within(5e-8));
        assertThat(ten.unanimous()).isEqualTo(5);
    }

    private static Set<String> words(String row, int side) {
        return Set.of(row.split("/", -1)[side].split(" ", -1));
    }

    private static double[][] steps(int power) {
        double[][] weights = new double[4][4];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                weights[i][j] = Math.pow(Math.abs(i - j), power);
            }
        }
        return weights;
    }

    private static double[][] agreement(double[][] disagreement) {
        double most = Arrays.stream(disagreement)
                .flatMapToDouble(Arrays::stream)
                .max()
                .orElseThrow();
        return Arrays.stream(disagreement)
                .map(row -> Arrays.stream(row).map(d -> 1 - d / most).toArray())
                .toArray(double[][]::new);
    }

    private static Ratings<Integer> spread(int[][] table) {
        List<Map.Entry<Integer, Integer>> pairs = new ArrayList<>();
        for (int i = 0; i < table.length; i++) {
            for (int j = 0; j < table.length; j++) {
                for (int n = 0; n < table[i][j]; n++) {
                    pairs.add(Map.entry(i, j));
                }
            }
        }
        return Ratings.pairs(pairs);
    }

    private static Ratings<Integer> raters(String... rows) {
        String[][] cells = Stream.of(rows).map(row -> row.split(" ", -1)).toArray(String[][]::new);
        List<List<Optional<Integer>>> units = new ArrayList<>();
        for (int unit = 0; unit < cells[0].length; unit++) {
            int place = unit;
            units.add(Stream.of(cells)
                    .map(row -> row[place].equals(".")
                            ? Optional.<Integer>empty()
                            : Optional.of(Integer.valueOf(row[place])))
                    .toList());
        }
        return new Ratings<>(units);
    }

    private static List<Map<String, Integer>> patients(int first) {
        return Stream.of(FLEISS_1971.split(" ", -1))
                .limit(first)
                .map(row -> {
                    Map<String, Integer> counts = new HashMap<>();
                    for (int i = 0; i < row.length(); i++) {
                        counts.put("d" + i, row.charAt(i) - '0');
                    }
                    return counts;
                })
                .toList();
    }

    private static Ratings<String> asked(List<Map<String, Integer>> counts) {
        return new Ratings<>(counts.stream()
                .map(unit -> unit.entrySet().stream()
                        .flatMap(one ->
                                Stream.generate(() -> Optional.of(one.getKey())).limit(one.getValue()))
                        .toList())
                .toList());
    }
}
