package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SegmentationTest {
    private static boolean[] boundaries(String written) {
        boolean[] all = new boolean[written.length()];
        for (int i = 0; i < all.length; i++) {
            all[i] = written.charAt(i) == '1';
        }
        return all;
    }

    /** The values of NLTK's documentation of nltk.metrics.segmentation. */
    @ParameterizedTest
    @CsvSource({"000100000010, 000010000100, 3, 0.30", "000010000100, 100000010000, 3, 0.80"})
    void window_diff_is_as_NLTK_documents_it(String reference, String guess, int k, double value) {
        assertThat(Segmentation.windowDiff(boundaries(reference), boundaries(guess), k))
                .isCloseTo(value, within(0.005));
    }

    /** The same source. */
    @Test
    void pk_of_all_or_no_boundaries_is_one_half() {
        String reference = "0100".repeat(100);
        assertThat(Segmentation.pk(boundaries(reference), boundaries("1".repeat(400)), 2))
                .isCloseTo(0.50, within(0.005));
        assertThat(Segmentation.pk(boundaries(reference), boundaries("0".repeat(400)), 2))
                .isCloseTo(0.50, within(0.005));
    }

    /** Twelve units, boundaries after the fourth and the eighth, worked by hand. */
    @ParameterizedTest
    @CsvSource({
        "00010001000, 0.00, 0.00",
        "00001001000, 0.20, 0.20",
        "00010000000, 0.20, 0.20",
        "01010001000, 0.20, 0.20",
        "00011001000, 0.10, 0.20",
        "00000000000, 0.40, 0.40",
        "11111111111, 0.60, 1.00"
    })
    void an_extra_boundary_beside_a_true_one_counts_in_window_diff_only(String guess, double pk, double windowDiff) {
        boolean[] reference = boundaries("00010001000");
        assertThat(Segmentation.window(reference)).isEqualTo(2);
        assertThat(Segmentation.pk(reference, boundaries(guess), 2)).isCloseTo(pk, within(1e-9));
        assertThat(Segmentation.windowDiff(reference, boundaries(guess), 2)).isCloseTo(windowDiff, within(1e-9));
    }
}
