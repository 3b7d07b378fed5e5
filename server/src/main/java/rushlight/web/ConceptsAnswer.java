package rushlight.web;

import java.util.List;

/**
 * Concepts of the book.
 *
 * @param total how many there are without paging
 * @param kinds every kind of concept
 * @param concepts this page of them
 */
public record ConceptsAnswer(int total, List<Kind> kinds, List<ConceptBrief> concepts) {
    /** One kind with its name for people. */
    public record Kind(String kind, String label, int concepts) {}
}
