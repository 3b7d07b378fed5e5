package rushlight.store;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.vocabulary.RDFS;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.knowledge.FilmColumns;

/** Makes one change inside of a transaction: only the triples that differ are written. */
final class Changing {
    private final DatasetGraph data;
    private final Graph film;
    private final FilmColumns columns;
    private final LogGraph writer;
    private final String rules;
    private final Instant when;

    Changing(DatasetGraph data, FilmColumns columns, LogGraph writer, String rules, Instant when) {
        this.data = data;
        this.film = data.getDefaultGraph();
        this.columns = columns;
        this.writer = writer;
        this.rules = rules;
        this.when = when;
    }

    /** Makes the change and gives its number. */
    long make(Change change) {
        Map<LogId, Optional<Log>> before = new HashMap<>();
        Map<LogId, Optional<Log>> after = new HashMap<>();
        Set<LogId> touched = prospects(change.prospects());
        for (Classified classified : change.logs()) {
            LogId id = LogGraph.idOf(classified.log());
            before.computeIfAbsent(id, this::stored);
            put(id, classified, after.put(id, Optional.of(classified.log())) != null);
        }
        for (LogId id : change.gone()) {
            before.computeIfAbsent(id, this::stored);
            after.put(id, Optional.empty());
            StoredLogs.remove(film, id);
        }
        touched.addAll(after.keySet());
        long revision = StoredRevision.raise(data, touched, when);
        History history = new History(data, columns);
        History.tell(data, revision, change.note());
        after.forEach((id, now) -> history.keep(revision, id, before.getOrDefault(id, Optional.empty()), now, writer));
        return revision;
    }

    private Optional<Log> stored(LogId id) {
        return film.contains(Addresses.log(id), Terms.PROSPECT, Node.ANY)
                ? Optional.of(new LogReader(film, columns).log(id))
                : Optional.empty();
    }

    /** Writes a log; one that is named twice in a change adds to what the first of them wrote. */
    private void put(LogId id, Classified classified, boolean isAdded) {
        Node prospect = Addresses.prospect(classified.log().prospect().id());
        boolean known = film.contains(prospect, RDFS.label.asNode(), Node.ANY);
        Set<Triple> old = isAdded ? Set.of() : new HashSet<>(StoredLogs.triples(film, id));
        Set<Triple> wanted = new LinkedHashSet<>();
        writer.write(classified.log(), classified.classes(), rules, when, t -> {
            if (!known || !t.getSubject().equals(prospect)) {
                wanted.add(t);
            }
        });
        old.stream().filter(t -> !wanted.contains(t)).forEach(film::delete);
        wanted.stream().filter(t -> !old.contains(t)).forEach(film::add);
    }

    /** Writes prospects in place of what was known of them; gives their logs. */
    private Set<LogId> prospects(Iterable<Prospect> prospects) {
        Set<String> ids = new HashSet<>();
        for (Prospect prospect : prospects) {
            ids.add(prospect.id());
            film.remove(Addresses.prospect(prospect.id()), Node.ANY, Node.ANY);
            writer.writeProspect(prospect, film::add);
        }
        Set<LogId> logs = ids.isEmpty() ? new HashSet<>() : new HashSet<>(StoredLogs.ids(film));
        logs.removeIf(id -> !ids.contains(id.prospect()));
        return logs;
    }
}
