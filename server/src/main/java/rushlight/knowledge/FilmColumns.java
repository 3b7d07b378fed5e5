package rushlight.knowledge;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What a film log can say: its columns in order, the facets read from the exchange, and the facets the rules add. */
public final class FilmColumns {
    private final Map<String, Column> byName = new LinkedHashMap<>();
    private final Map<String, Column> byFacet = new LinkedHashMap<>();
    private final List<StepFacet> stepFacets;
    private final Set<String> derivedFacets;
    private final List<ImplausiblePair> implausible;
    private final Map<String, String> unsaid;

    FilmColumns(
            Collection<Column> columns,
            List<StepFacet> stepFacets,
            Set<String> derivedFacets,
            List<ImplausiblePair> implausible,
            Map<String, String> unsaid) {
        columns.stream().sorted(Comparator.comparingInt(Column::position)).forEach(column -> {
            byName.put(column.name(), column);
            if (column.kind() != Column.Kind.EXCHANGE) {
                byFacet.put(column.facet(), column);
            }
        });
        this.stepFacets = List.copyOf(stepFacets);
        this.derivedFacets = Set.copyOf(derivedFacets);
        this.implausible = List.copyOf(implausible);
        this.unsaid = Map.copyOf(unsaid);
    }

    /** The columns in the order of the header. */
    public Collection<Column> all() {
        return Collections.unmodifiableCollection(byName.values());
    }

    /** The column with this header. */
    public Optional<Column> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** The column that carries a facet; empty for a facet of the exchange or of the rules. */
    public Optional<Column> ofFacet(String facet) {
        return Optional.ofNullable(byFacet.get(facet));
    }

    /** The facets that are read from the exchange. */
    public List<StepFacet> stepFacets() {
        return stepFacets;
    }

    /** The facet of the exchange with this name. */
    public Optional<StepFacet> stepFacet(String facet) {
        return stepFacets.stream().filter(f -> f.facet().equals(facet)).findFirst();
    }

    /** The one column that holds an exchange. */
    public Column exchange() {
        return byName.values().stream()
                .filter(column -> column.kind() == Column.Kind.EXCHANGE)
                .findFirst()
                .orElseThrow(() -> new BrokenBookException("film.ttl describes no column for the exchange."));
    }

    /** Cells that hardly go together. */
    public List<ImplausiblePair> implausible() {
        return implausible;
    }

    /** The value of a column that says nobody knows, and so is no value. */
    public Optional<String> unsaid(String column) {
        return Optional.ofNullable(unsaid.get(column));
    }

    /** The names of every facet a situation may ask about. */
    public Set<String> facets() {
        Set<String> all = new TreeSet<>(byFacet.keySet());
        all.addAll(stepFacets.stream().map(StepFacet::facet).collect(Collectors.toSet()));
        all.addAll(derivedFacets);
        return all;
    }
}
