package rushlight.film.csv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.film.Game;
import rushlight.film.GameOrder;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepId;

/** Puts the rows of a file together into logs: one for each evaluator, prospect and game. */
final class LogBuilder {
    private record Seen(String rep, int line) {}

    private record Part(Prospect prospect, String evaluator, List<Draft> drafts) {}

    private final String defaultEvaluator;
    private final Prospects prospects;
    private final Names evaluators = new Names(Columns.EVALUATOR);
    private final Games games = new Games();
    private final Map<LogId, Map<String, Seen>> reps = new HashMap<>();
    private final Map<LogId, Part> parts = new LinkedHashMap<>();

    LogBuilder(FilmLogReader.Options options) {
        this.defaultEvaluator = options.evaluator().orElse(FilmLogReader.UNNAMED);
        this.prospects = new Prospects(options.prospects());
    }

    /** Takes a row in, unless it has a fault, of its own or beside the rows before it. */
    void add(Draft draft, RowNotes notes) {
        Optional<String> rep = draft.text(Columns.REP);
        if (rep.isEmpty()
                || draft.text(Columns.PROSPECT).isEmpty()
                || draft.text(Columns.GAME).isEmpty()) {
            return;
        }
        String evaluator = draft.text(Columns.EVALUATOR).orElse(defaultEvaluator);
        Optional<Prospect> prospect =
                prospects.find(draft.text(Columns.PROSPECT).get(), notes);
        Optional<String> game = games.find(draft, notes);
        Optional<String> person = evaluators.address(evaluator, notes);
        if (prospect.isEmpty() || game.isEmpty() || person.isEmpty()) {
            return;
        }
        LogId id = new LogId(person.get(), prospect.get().id(), game.get());
        if (isNew(rep.get(), id, notes) && notes.faults().isEmpty()) {
            parts.computeIfAbsent(id, i -> new Part(prospect.get(), evaluator, new ArrayList<>()))
                    .drafts()
                    .add(draft.packed());
        }
    }

    /** The logs, in order of their first row. */
    List<Log> logs(Set<String> charted, Log.Source source) {
        List<Log> logs = new ArrayList<>();
        parts.forEach((id, part) -> {
            Game game = games.game(id.game());
            List<Reading> readings = new ArrayList<>(part.drafts().size());
            for (Draft draft : part.drafts()) {
                RepId rep = new RepId(
                        id.prospect(), game.id(), draft.text(Columns.REP).orElseThrow());
                readings.add(new Reading(rep, part.evaluator(), draft.tags(), draft.exchange()));
            }
            logs.add(new Log(part.evaluator(), part.prospect(), game, charted, GameOrder.of(readings), source));
        });
        return logs;
    }

    private boolean isNew(String rep, LogId id, RowNotes notes) {
        String slug = Identity.slug(rep);
        if (slug.isEmpty()) {
            notes.fault(
                    Columns.REP,
                    rep,
                    Fault.Code.NO_LETTER,
                    "\"" + rep + "\" has no letter and no digit, so it makes no address; number the reps.");
            return false;
        }
        Seen first = reps.computeIfAbsent(id, i -> new HashMap<>()).putIfAbsent(slug, new Seen(rep, notes.line()));
        if (first == null) {
            return true;
        }
        String written = first.rep().equals(rep) ? "" : " as \"" + first.rep() + "\"";
        notes.fault(
                Columns.REP,
                rep,
                Fault.Code.REPEATED_REP,
                "this evaluator has the rep \"" + rep + "\" of this prospect and game already in line " + first.line()
                        + written + "; give one of them another name.");
        return false;
    }
}
