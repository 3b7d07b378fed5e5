package rushlight.ask;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rushlight.findings.Counting;
import rushlight.findings.Finding;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;
import rushlight.words.LabelKey;

/** Which findings are about a term: they count it, they stand under it, or their words name it. */
final class FindingTopics {
    private final Taxonomy taxonomy;

    FindingTopics(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** Whether the finding is about one of the terms. */
    boolean isAbout(Finding finding, Collection<String> slugs) {
        Set<String> counted = new HashSet<>();
        finding.counting().scope().ifPresent(scope -> counted.addAll(read(scope)));
        String words =
                " " + LabelKey.of(finding.label() + " " + finding.definition().replaceAll("[,.;:()]", " ")) + " ";
        return slugs.stream()
                .anyMatch(slug -> taxonomy.isA(finding.slug(), slug)
                        || counted.stream().anyMatch(value -> taxonomy.isA(value, slug))
                        || names(slug).anyMatch(name -> words.contains(" " + LabelKey.of(name) + " ")));
    }

    private static Set<String> read(Counting.Scope scope) {
        Set<String> values = new HashSet<>();
        for (Map<String, Set<String>> reads :
                List.of(scope.opportunity().reads(), scope.event().reads())) {
            reads.values().forEach(values::addAll);
        }
        return values;
    }

    private Stream<String> names(String slug) {
        return taxonomy.concept(slug).stream().flatMap(FindingTopics::names);
    }

    private static Stream<String> names(Concept concept) {
        return Stream.of(
                        Stream.of(concept.label()),
                        concept.altLabels().stream(),
                        concept.hiddenLabels().stream(),
                        concept.contextLabels().stream())
                .flatMap(some -> some);
    }
}
