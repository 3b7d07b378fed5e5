package rushlight.agreement;

import java.util.List;

/**
 * How two evaluators filled one column.
 *
 * @param column header of the column
 * @param agreed the column as a whole; sets of tags by their overlap (Jaccard)
 * @param strict the same by MASI, which forgives less; equal to {@code agreed} for columns of one value
 * @param tags a tag each, for columns that hold several; those they differ about most first
 */
public record FacetAgreement(String column, Agreed agreed, Agreed strict, List<TagAgreement> tags) {
    public FacetAgreement {
        tags = List.copyOf(tags);
    }
}
