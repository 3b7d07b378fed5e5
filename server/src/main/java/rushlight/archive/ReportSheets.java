package rushlight.archive;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import rushlight.store.KeptReports;
import rushlight.store.Store;

/** What evaluators put into reports, kept in a data folder. It is no film: keeping it changes no count and no revision. */
public final class ReportSheets {
    private final Store store;

    private ReportSheets(Store store) {
        this.store = store;
    }

    /** Those of an open folder. */
    public static ReportSheets of(Archive archive) {
        return new ReportSheets(archive.store());
    }

    /**
     * What was put into one report.
     *
     * @param summary the evaluator's words; may be empty
     * @param author who wrote them; may be empty
     * @param parts the parts wanted, in order
     * @param revision how often it was kept; 0 where it never was
     * @param when when it was kept last; empty where it never was
     */
    public record Sheet(String summary, String author, List<String> parts, long revision, Optional<Instant> when) {
        /** Nobody put anything in. */
        public static final Sheet EMPTY = new Sheet("", "", List.of(), 0, Optional.empty());

        public Sheet {
            parts = List.copyOf(parts);
        }
    }

    /** What was put into the report of a prospect; {@link Sheet#EMPTY} where nothing was. */
    public Sheet of(String prospect) {
        return store.ask(data -> sheet(KeptReports.in(data).of(prospect)));
    }

    /**
     * Keeps a sheet in place of the one of this revision.
     *
     * @return what is kept now; empty, and nothing kept, where another revision stands
     */
    public Optional<Sheet> keep(String prospect, String summary, String author, List<String> parts, long revision) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        return store.keep(kept -> {
            KeptReports reports = kept.reports();
            if (sheet(reports.of(prospect)).revision() != revision) {
                return Optional.empty();
            }
            KeptReports.Kept next = new KeptReports.Kept(prospect, summary, author, parts, revision + 1, now);
            reports.put(next);
            return Optional.of(sheet(Optional.of(next)));
        });
    }

    private static Sheet sheet(Optional<KeptReports.Kept> kept) {
        return kept.map(one ->
                        new Sheet(one.summary(), one.author(), one.parts(), one.revision(), Optional.of(one.when())))
                .orElse(Sheet.EMPTY);
    }
}
