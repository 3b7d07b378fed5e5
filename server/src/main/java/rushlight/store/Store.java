package rushlight.store;

import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.jena.atlas.iterator.Iter;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.Dataset;
import org.apache.jena.query.DatasetFactory;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sys.JenaSystem;
import org.apache.jena.tdb2.DatabaseMgr;
import org.apache.jena.tdb2.sys.TDBInternal;
import org.apache.jena.vocabulary.RDFS;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.knowledge.FilmColumns;

/** The stored film. Every change is one transaction that raises the revision and records which logs it touched. */
public final class Store implements AutoCloseable {
    private static final Node ALL = Node.ANY;

    private final DatasetGraph data;
    private final FilmColumns columns;
    private final LogGraph writer;
    private final Transactions transactions;
    private final Optional<Path> folder;

    private Store(
            DatasetGraph data, FilmColumns columns, Room room, Optional<RemoteStore> remote, Optional<Path> folder) {
        this.data = data;
        this.columns = columns;
        this.writer = new LogGraph(columns);
        this.transactions = new Transactions(data, room, remote);
        this.folder = folder;
    }

    /** Opens, and where there is none makes, the store in a folder that exists. One process at a time. */
    public static Store in(Path folder, FilmColumns columns) {
        return in(folder, columns, Optional.empty());
    }

    /** The same as the copy of one elsewhere: no change counts that is not made there, too. */
    public static Store in(Path folder, FilmColumns columns, Optional<RemoteStore> remote) {
        return in(folder, columns, Room.on(folder), remote);
    }

    /** The same, with a disk that is told to be fuller than it is. */
    static Store in(Path folder, FilmColumns columns, Room room, Optional<RemoteStore> remote) {
        JenaSystem.init();
        TornJournal.mend(folder);
        return room.told(() -> new Store(
                DatabaseMgr.connectDatasetGraph(folder.toString()), columns, room, remote, Optional.of(folder)));
    }

    /** A store that is gone when the program ends. */
    public static Store inMemory(FilmColumns columns) {
        JenaSystem.init();
        return new Store(
                DatabaseMgr.createDatasetGraph(), columns, Room.boundless(), Optional.empty(), Optional.empty());
    }

    /** The number of the last change; 0 where nothing was ever written. */
    public long revision() {
        return transactions.read(StoredRevision::current);
    }

    /**
     * Puts logs in place of those of the same evaluator, prospect and game: all of them or, if anything fails, none.
     *
     * @param logs what to store
     * @param rules fingerprint of the book that classified them
     * @param when time of the change
     * @return the new revision
     */
    public long replace(Collection<Classified> logs, String rules, Instant when) {
        return change(new Change(logs, List.of(), List.of(), Change.Note.of(Change.Kind.IMPORT, "")), rules, when);
    }

    /**
     * Makes a change: all of it or, if anything fails, nothing.
     *
     * @param rules fingerprint of the book that classified its logs
     * @param when time of the change
     * @return the new revision
     */
    public long change(Change change, String rules, Instant when) {
        return transactions.write(data -> new Changing(data, columns, writer, rules, when).make(change));
    }

    /** The changes that were made, the newest first, as many as are taken; good until the question is answered. */
    public <T> T history(Function<Stream<PastChange>, T> question) {
        return transactions.read(graphs -> {
            History history = new History(graphs, columns);
            return question.apply(history.revisions().stream().flatMap(revision -> history.change(revision).stream()));
        });
    }

    /** Puts what other rules conclude in place of what was concluded before; nothing that was charted changes. */
    public long reclassify(Collection<Classified> logs, String rules, Instant when) {
        return transactions.writeAsItIs(data -> {
            Graph film = data.getDefaultGraph();
            Set<LogId> touched = new HashSet<>();
            for (Classified classified : logs) {
                LogId id = LogGraph.idOf(classified.log());
                touched.add(id);
                LogGraph.reclassify(film, id, classified, rules);
            }
            return StoredRevision.raise(data, touched, when);
        });
    }

    /** Every stored log, in the order of evaluator, prospect and game. */
    public List<LogId> logs() {
        return transactions.read(graphs -> StoredLogs.ids(graphs.getDefaultGraph()));
    }

    /** The logs that changed after a revision. */
    public Set<LogId> changedSince(long revision) {
        return transactions.read(graphs -> StoredRevision.changedSince(graphs, revision));
    }

    /** One log as it was charted. */
    public Optional<Log> log(LogId id) {
        return stored(id, reader -> reader.log(id));
    }

    /** One log without its readings. */
    public Optional<Log> head(LogId id) {
        return stored(id, reader -> reader.head(id));
    }

    /** The file a log came from. */
    public Optional<Log.Source> source(LogId id) {
        return stored(id, reader -> reader.source(Addresses.log(id)));
    }

    private <T> Optional<T> stored(LogId id, Function<LogReader, T> question) {
        return transactions.read(graphs -> Optional.of(graphs.getDefaultGraph())
                .filter(film -> film.contains(Addresses.log(id), Terms.PROSPECT, ALL))
                .map(film -> question.apply(new LogReader(film, columns))));
    }

    /** How many readings a log holds; 0 where there is no such log. */
    public int readings(LogId id) {
        return transactions.read(
                graphs -> (int) Iter.count(graphs.getDefaultGraph().find(ALL, Terms.LOG, Addresses.log(id))));
    }

    /** Every prospect the store knows, in order of id. */
    public List<Prospect> prospects() {
        return transactions.read(graphs -> {
            Graph film = graphs.getDefaultGraph();
            LogReader reader = new LogReader(film, columns);
            String start = Addresses.DATA + "prospect/";
            return film.find(ALL, RDFS.label.asNode(), ALL).mapWith(Triple::getSubject).toList().stream()
                    .filter(node -> node.getURI().startsWith(start))
                    .distinct()
                    .map(reader::prospect)
                    .sorted((a, b) -> a.id().compareTo(b.id()))
                    .toList();
        });
    }

    /** What is known of a prospect. */
    public Optional<Prospect> prospect(String id) {
        return known(Addresses.prospect(id), LogReader::prospect);
    }

    /** What is known of a game. */
    public Optional<Game> game(String id) {
        return known(Addresses.game(id), LogReader::game);
    }

    /** The name of an evaluator as it was first written. */
    public Optional<String> evaluator(String slug) {
        return known(Addresses.person(slug), LogReader::name);
    }

    /** Writes the film, without history, as Turtle. */
    public void writeTurtle(OutputStream out) {
        transactions.read(graphs -> {
            FilmTurtle.write(graphs.getDefaultGraph(), out);
            return true;
        });
    }

    /** Asks a question of one consistent state. What it returns must not lead back into the graph. */
    public <T> T ask(Function<Dataset, T> question) {
        return transactions.read(graphs -> question.apply(DatasetFactory.wrap(graphs)));
    }

    /** Changes what people keep beside the film, in one transaction; no revision is raised. */
    public <T> T keep(Function<KeptThings, T> change) {
        return change(data -> change.apply(KeptThings.in(data)));
    }

    /** Changes what is kept beside the film, its history too, in one transaction; no revision is raised. */
    public <T> T change(Function<Dataset, T> change) {
        return transactions.write(data -> change.apply(DatasetFactory.wrap(data)));
    }

    /** All there is as one thing, to be taken elsewhere. */
    public Whole whole() {
        return new Whole(transactions);
    }

    /** The logs that another book than this one classified. */
    public List<LogId> classifiedOtherwise(String rules) {
        return transactions.read(graphs -> StoredLogs.classifiedOtherwise(graphs.getDefaultGraph(), rules));
    }

    /** What there is of single people, to be given out or erased. */
    public Personal personal() {
        return new Personal(transactions);
    }

    /** How it stands to the store elsewhere that it is a copy of, where it is one. */
    public Elsewhere elsewhere() {
        return new Elsewhere(transactions, folder);
    }

    private <T> Optional<T> known(Node node, BiFunction<LogReader, Node, T> reader) {
        return transactions.read(graphs -> {
            Graph film = graphs.getDefaultGraph();
            return film.contains(node, RDFS.label.asNode(), ALL)
                    ? Optional.of(reader.apply(new LogReader(film, columns), node))
                    : Optional.<T>empty();
        });
    }

    /** Closes it, so that its folder can be moved or opened by another program; the library collects garbage meanwhile. */
    @Override
    public void close() {
        data.close();
        folder.ifPresent(at -> TDBInternal.expel(data, true));
    }
}
