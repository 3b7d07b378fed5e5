package rushlight.web.http;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import rushlight.archive.Archive;
import rushlight.archive.PutResult;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.film.csv.BadRows;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ProspectsReader;
import rushlight.film.csv.ReadResult;
import rushlight.store.LogGraph;
import rushlight.web.FaultAnswer;
import rushlight.web.ImportReport;

/** Reads what was sent and keeps it where that is wanted. */
final class Importing {
    private static final int ROWS = 1_000;

    /**
     * What is wanted.
     *
     * @param keep whether anything is stored, or only looked at
     * @param add keep readings the file does not name
     * @param keepGood store the rows without a fault
     * @param by name of the account it is imported with; empty where there are none
     */
    record Wish(
            boolean keep,
            boolean add,
            boolean keepGood,
            Optional<String> evaluator,
            Optional<String> numbering,
            String by) {}

    private record Read(
            List<Log> logs,
            List<Prospect> prospects,
            List<FaultAnswer> faults,
            List<FaultAnswer> warnings,
            BadRows bad) {}

    private final Archive archive;

    Importing(Archive archive) {
        this.archive = archive;
    }

    /**
     * Reads a file, and stores it where that is wanted and nothing speaks against it.
     *
     * @param progress told how much of the file was read, from 0 to 1
     */
    ImportReport of(Upload file, Wish wish, DoubleConsumer progress) {
        boolean isList = ProspectsReader.isList(file.path());
        Read read = isList ? prospects(file) : logs(file, wish, progress);
        boolean stores = wish.keep()
                && (read.faults().isEmpty() || wish.keepGood())
                && !(read.logs().isEmpty() && read.prospects().isEmpty());
        if (!stores) {
            return report(file, isList, read, looked(read.logs()), List.of(), false);
        }
        PutResult result = archive.put(read.logs(), read.prospects(), wish.add(), wish.by());
        if (result instanceof PutResult.Stored stored) {
            return report(file, isList, read, stored.logs(), List.of(), true);
        }
        return report(file, isList, read, looked(read.logs()), ((PutResult.Refused) result).reasons(), false);
    }

    private static Read prospects(Upload file) {
        ProspectsReader.Result result;
        try (InputStream in = file.open()) {
            result = ProspectsReader.read(file.name(), in);
        } catch (IOException e) {
            throw new UncheckedIOException(file.name(), e);
        }
        return new Read(
                List.of(),
                result.faults().isEmpty() ? result.prospects() : List.of(),
                FaultAnswer.of(result.faults()),
                FaultAnswer.of(result.warnings()),
                new BadRows(List.of(), List.of()));
    }

    private Read logs(Upload file, Wish wish, DoubleConsumer progress) {
        FilmLogReader.Options options = new FilmLogReader.Options(
                wish.evaluator(), wish.numbering().or(archive::numbering), archive.prospects());
        try (InputStream in = new Counted(file.open(), Files.size(file.path()), progress)) {
            ReadResult result = FilmLogReader.of(archive.book().taxonomy()).read(file.name(), in, options);
            List<FaultAnswer> warnings = FaultAnswer.of(result.warnings());
            if (result instanceof ReadResult.Rejected rejected) {
                return new Read(
                        rejected.good(), List.of(), FaultAnswer.of(rejected.faults()), warnings, rejected.badRows());
            }
            return new Read(
                    ((ReadResult.Accepted) result).logs(),
                    List.of(),
                    List.of(),
                    warnings,
                    new BadRows(List.of(), List.of()));
        } catch (IOException e) {
            throw new UncheckedIOException(file.name(), e);
        }
    }

    /** What an import would do to each log. */
    private List<PutResult.Replaced> looked(List<Log> logs) {
        List<PutResult.Replaced> looked = new ArrayList<>();
        for (Log log : logs) {
            LogId id = LogGraph.idOf(log);
            looked.add(new PutResult.Replaced(
                    id, archive.store().readings(id), log.readings().size()));
        }
        return looked;
    }

    private ImportReport report(
            Upload file,
            boolean isList,
            Read read,
            List<PutResult.Replaced> logs,
            List<String> reasons,
            boolean imported) {
        return new ImportReport(
                file.name(),
                isList ? "prospects" : "film-log",
                imported,
                read.logs().stream().mapToInt(log -> log.readings().size()).sum(),
                imported ? logs.stream().mapToInt(PutResult.Replaced::after).sum() : 0,
                imported ? logs.stream().mapToInt(PutResult.Replaced::before).sum() : 0,
                read.prospects().size(),
                logs.stream()
                        .map(log -> new ImportReport.OfLog(
                                log.log().evaluator(),
                                log.log().prospect(),
                                log.log().game(),
                                log.before(),
                                log.after()))
                        .toList(),
                read.faults(),
                read.warnings(),
                read.bad().header(),
                read.bad().rows().stream()
                        .limit(ROWS)
                        .map(row -> new ImportReport.BadRow(row.line(), row.cells()))
                        .toList(),
                csv(read.bad()),
                reasons,
                archive.store().revision());
    }

    private static Optional<String> csv(BadRows bad) {
        if (bad.rows().isEmpty()) {
            return Optional.empty();
        }
        StringWriter out = new StringWriter();
        try {
            bad.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Optional.of(out.toString());
    }

    /** Tells how much was read. */
    private static final class Counted extends FilterInputStream {
        private final double length;
        private final DoubleConsumer progress;
        private long read;

        Counted(InputStream in, long length, DoubleConsumer progress) {
            super(in);
            this.length = Math.max(1, length);
            this.progress = progress;
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            tell(one < 0 ? 0 : 1);
            return one;
        }

        @Override
        public int read(byte[] bytes, int from, int most) throws IOException {
            int some = super.read(bytes, from, most);
            tell(Math.max(0, some));
            return some;
        }

        private void tell(int more) {
            read += more;
            progress.accept(Math.min(1, read / length));
        }
    }
}
