package rushlight.evidence.raters;

import java.util.Collection;
import java.util.Map;
import java.util.stream.IntStream;
import org.dkpro.statistics.agreement.coding.CodingAnnotationStudy;
import org.dkpro.statistics.agreement.coding.FleissKappaAgreement;

/**
 * Fleiss' kappa of several raters who rated every unit equally often (Fleiss 1971; computed by the DKPro library): not who
 * rated, only how often each label was given.
 */
public final class FleissKappa {
    private FleissKappa() {}

    /**
     * Kappa, 1 for full agreement and 0 for what chance gives.
     *
     * @param counts a row a unit: how many raters gave each label; every row has the same sum, 2 or more
     * @throws IllegalArgumentException where the sums differ
     */
    public static double of(Collection<Map<String, Integer>> counts) {
        int[] sums = counts.stream()
                .mapToInt(unit ->
                        unit.values().stream().mapToInt(Integer::intValue).sum())
                .distinct()
                .toArray();
        if (sums.length != 1 || sums[0] < 2) {
            throw new IllegalArgumentException("Every unit needs the same number of ratings, and two or more.");
        }
        CodingAnnotationStudy study = new CodingAnnotationStudy(sums[0]);
        counts.forEach(unit -> study.addItemAsArray(unit.entrySet().stream()
                .flatMap(one -> IntStream.range(0, one.getValue()).mapToObj(i -> one.getKey()))
                .toArray()));
        return new FleissKappaAgreement(study).calculateAgreement();
    }
}
