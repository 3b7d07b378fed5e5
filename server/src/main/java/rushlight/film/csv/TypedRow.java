package rushlight.film.csv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.knowledge.Column;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Taxonomy;

/** Reads one row that somebody types, by the same rules as a row of a file. */
public final class TypedRow {
    private static final String NOBODY = "?";

    /**
     * What was typed.
     *
     * @param faults what is wrong with it
     * @param warnings what is odd about it
     * @param reading what its good cells say; under a name of its own where the row does not name its rep yet
     * @param log the row as a log of one reading; only where nothing is wrong
     */
    public record Result(List<Fault> faults, List<Fault> warnings, Reading reading, Optional<Log> log) {
        public Result {
            faults = List.copyOf(faults);
            warnings = List.copyOf(warnings);
        }
    }

    private final FilmColumns film;
    private final RowReader rows;

    private TypedRow(Taxonomy taxonomy) {
        this.film = taxonomy.film();
        this.rows = new RowReader(taxonomy);
    }

    /** A reader for any number of rows. */
    public static TypedRow of(Taxonomy taxonomy) {
        return new TypedRow(taxonomy);
    }

    /**
     * Reads a row.
     *
     * @param cells by column; blank ones may be left out
     * @param charted list columns that were looked at though they are blank
     * @param source where the row comes from
     */
    public Result read(
            Map<String, String> cells, Set<String> charted, FilmLogReader.Options options, Log.Source source) {
        Map<String, String> all = new LinkedHashMap<>(cells);
        film.all().stream().filter(Column::required).forEach(column -> all.putIfAbsent(column.name(), ""));
        RowNotes notes = new RowNotes(0, new Suggestions());
        Header header = Header.read(new CsvRows.Row(0, List.copyOf(all.keySet())), film, notes);
        Draft draft = rows.read(header, new CsvRows.Row(0, List.copyOf(all.values())), options.numbering(), notes);
        LogBuilder builder = new LogBuilder(options);
        builder.add(draft, notes);
        Set<String> looked = looked(draft, charted);
        List<Log> logs = notes.faults().isEmpty() ? builder.logs(looked, source) : List.of();
        return new Result(
                notes.faults(),
                notes.warnings(),
                logs.isEmpty() ? unnamed(draft) : logs.get(0).readings().get(0),
                logs.stream().findFirst());
    }

    /** The list columns that were looked at: those said to be, and those in which something stands. */
    private Set<String> looked(Draft draft, Set<String> charted) {
        Set<String> looked = new TreeSet<>();
        film.all().stream()
                .filter(column -> column.list() && !column.name().equals(Columns.NOT_SEEN))
                .map(Column::name)
                .filter(name -> charted.contains(name) || draft.tags().containsKey(name))
                .forEach(looked::add);
        return looked;
    }

    private static Reading unnamed(Draft draft) {
        RepId rep = new RepId(NOBODY, NOBODY, draft.text(Columns.REP).orElse(NOBODY));
        return new Reading(
                rep,
                draft.text(Columns.EVALUATOR).orElse(NOBODY),
                new HashMap<>(draft.tags()),
                new ArrayList<>(draft.exchange()));
    }
}
