package rushlight.film.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Identity;
import rushlight.film.Prospect;
import rushlight.words.NearestLabels;

/** Reads a list of prospects: who they are and how they measure, in the units of the column names. */
public final class ProspectsReader {
    /**
     * What came of reading a list.
     *
     * @param prospects in the order of the file; none where the file has a fault
     * @param faults every fault of the file, in order of its lines
     * @param warnings oddities that stop nothing
     */
    public record Result(List<Prospect> prospects, List<Fault> faults, List<Fault> warnings) {
        public Result {
            prospects = List.copyOf(prospects);
            faults = List.copyOf(faults);
            warnings = List.copyOf(warnings);
        }
    }

    static final String ID = "id";
    static final String NAME = "name";
    static final String POSITION = "position";
    static final String TEAM = "team";
    static final String CLASS_YEAR = "class_year";
    static final String NOTES = "notes";

    static final List<String> COLUMNS = List.of(
            ID, NAME, POSITION, "height_cm", "height_in", "weight_kg", "weight_lb", "arm_in", TEAM, CLASS_YEAR, NOTES);

    private static final NearestLabels NEAREST = NearestLabels.words(COLUMNS);

    private final FaultList found = new FaultList();
    private final Suggestions suggestions = new Suggestions();
    private final Names names = new Names(ID);
    private final Map<String, Integer> ids = new HashMap<>();
    private final List<Prospect> prospects = new ArrayList<>();

    private ProspectsReader() {}

    /** Whether a file starts as a list of prospects does, and not as a film log. */
    public static boolean isList(Path file) {
        if (InputFile.refusal(file).isPresent()) {
            return false;
        }
        try (CsvRows rows = CsvRows.open(InputFile.name(file), InputFile.open(file))) {
            List<String> header = rows.next().map(CsvRows.Row::cells).orElse(List.of()).stream()
                    .map(ProspectsReader::plain)
                    .toList();
            return header.contains(NAME) && !header.contains(Columns.REP) && !header.contains(Columns.GAME);
        } catch (IOException e) {
            return false; // whoever reads it as a film log says why
        }
    }

    /** Reads a file. */
    public static Result read(Path file) {
        Optional<Fault> refusal = InputFile.refusal(file);
        if (refusal.isPresent()) {
            return refused(refusal.get());
        }
        String name = InputFile.name(file);
        try (InputStream in = InputFile.open(file)) {
            return read(name, in);
        } catch (IOException e) {
            return refused(InputFile.unreadable(name, e));
        }
    }

    /** Reads what was sent under a name. */
    public static Result read(String name, InputStream in) {
        try (CsvRows rows = CsvRows.open(name, in)) {
            return new ProspectsReader().all(name, rows);
        } catch (IOException e) {
            return refused(InputFile.unreadable(name, e));
        }
    }

    private Result all(String name, CsvRows rows) throws IOException {
        Optional<CsvRows.Row> first = rows.next();
        if (first.isEmpty()) {
            return refused(Fault.ofFile(
                    Fault.Code.EMPTY_FILE,
                    name + " is empty; a list of prospects starts with a row of column names: name, position, ..."));
        }
        List<String> header = header(first.get());
        if (found.faults().isEmpty()) {
            for (Optional<CsvRows.Row> row = rows.next(); row.isPresent(); row = rows.next()) {
                RowNotes notes = new RowNotes(row.get().line(), suggestions);
                prospect(header, row.get(), notes).ifPresent(prospects::add);
                found.take(notes);
            }
        }
        return new Result(found.faults().isEmpty() ? prospects : List.of(), found.faults(), found.warnings());
    }

    private List<String> header(CsvRows.Row row) {
        RowNotes notes = new RowNotes(row.line(), suggestions);
        List<String> header = new ArrayList<>();
        if (Header.isPartedOtherwise(row, notes)) {
            found.take(notes);
            return header;
        }
        for (String cell : row.cells()) {
            String column = plain(cell);
            if (header.contains(column)) {
                notes.fault(
                        column,
                        column,
                        Fault.Code.REPEATED_COLUMN,
                        "the column stands in the header twice; keep one of them.");
            } else if (!COLUMNS.contains(column)) {
                List<String> near = NEAREST.to(column, 3);
                notes.fault(
                        column,
                        column,
                        Fault.Code.UNKNOWN_COLUMN,
                        "a list of prospects has no column \"" + column + "\"" + Sentences.didYouMean(near),
                        near);
            }
            header.add(column);
        }
        if (!header.contains(NAME)) {
            notes.fault(
                    NAME,
                    "",
                    Fault.Code.MISSING_COLUMN,
                    "the header lacks the column name, which every list of prospects needs.");
        }
        found.take(notes);
        return header;
    }

    private static String plain(String column) {
        return column.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
    }

    private Optional<Prospect> prospect(List<String> header, CsvRows.Row row, RowNotes notes) {
        if (row.cells().size() != header.size()) {
            notes.fault(
                    "",
                    "",
                    Fault.Code.CELL_COUNT,
                    RowReader.cellCount(row.cells().size(), header.size()));
            return Optional.empty();
        }
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            String column = header.get(i);
            String cell = row.cells().get(i);
            if (RowReader.isClean(column, cell, notes)) {
                cells.put(column, column.equals(NOTES) ? cell : cell.strip());
            }
        }
        String name = cells.getOrDefault(NAME, "");
        if (name.isEmpty()) {
            notes.fault(NAME, "", Fault.Code.BLANK, "every row needs a value here.");
            return Optional.empty();
        }
        Optional<String> id = id(cells.getOrDefault(ID, ""), name, notes);
        return id.map(i -> new Prospect(
                i,
                name,
                cells.getOrDefault(POSITION, ""),
                Measure.HEIGHT.read(cells, notes),
                Measure.WEIGHT.read(cells, notes),
                Measure.ARM.read(cells, notes),
                cells.getOrDefault(TEAM, ""),
                cells.getOrDefault(CLASS_YEAR, ""),
                cells.getOrDefault(NOTES, "")));
    }

    /** His id, which must be a slug already because it stands in addresses; else the slug of his name. */
    private Optional<String> id(String given, String name, RowNotes notes) {
        if (!given.isEmpty() && !Identity.slug(given).equals(given)) {
            notes.fault(
                    ID,
                    given,
                    Fault.Code.NO_LETTER,
                    "\"" + given + "\" cannot stand in an address; write small letters, digits and hyphens, such as "
                            + Identity.slug(name) + ".");
            return Optional.empty();
        }
        Optional<String> id = given.isEmpty() ? names.address(name, notes) : Optional.of(given);
        if (id.isEmpty() || (!given.isEmpty() && !names.claim(given, name, notes))) {
            return Optional.empty();
        }
        Integer first = ids.putIfAbsent(id.get(), notes.line());
        if (first != null) {
            notes.fault(
                    ID,
                    id.get(),
                    Fault.Code.NAMES_COLLIDE,
                    "\"" + name + "\" stands in line " + first + " already; if they are two men, give each an id.");
            return Optional.empty();
        }
        return id;
    }

    private static Result refused(Fault fault) {
        return new Result(List.of(), List.of(fault), List.of());
    }
}
