package rushlight.archive;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rushlight.ask.SavedQuestion;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.film.csv.TypedRow;

/**
 * A program of its own that writes into several folders at once until it is killed, and says after each change that it is
 * stored. Arguments: for each folder its path, and the number of the step to begin with.
 */
final class KilledWriter {
    private final Archive archive;
    private final KilledScript script;

    private KilledWriter(Archive archive, KilledScript script) {
        this.archive = archive;
        this.script = script;
    }

    /** Writes until somebody ends it, or until {@code -Drushlight.steps} are done in each folder. */
    public static void main(String[] args) {
        Book book = Book.packaged();
        int most = Integer.getInteger("rushlight.steps", Integer.MAX_VALUE);
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i + 1 < args.length; i += 2) {
            int folder = i / 2;
            Path path = Path.of(args[i]);
            int first = Integer.parseInt(args[i + 1]);
            threads.add(new Thread(() -> write(book, folder, path, first, most)));
        }
        threads.forEach(Thread::start);
    }

    static void write(Book book, int folder, Path path, int first, int most) {
        try (Archive archive = Archive.open(path, () -> book, Layouts.KNOWN)) {
            KilledWriter writer = new KilledWriter(archive, new KilledScript(folder));
            for (int number = first; number - first < most; number++) {
                writer.make(writer.script.step(number));
                say(folder + " " + number);
            }
        } catch (RuntimeException e) {
            say("! " + folder + " " + e.getClass().getSimpleName() + " " + e.getMessage());
        }
    }

    private static synchronized void say(String line) {
        System.out.println(line);
        System.out.flush();
    }

    private void make(KilledScript.Step step) {
        switch (step.deed()) {
            case IMPORT -> archive.put(logs(step, step.log()), false);
            case IMPORT_TWO -> {
                List<Log> two = new ArrayList<>(logs(step, step.log()));
                two.addAll(logs(step, (step.log() + 1) % 3));
                archive.put(two, false);
            }
            case ADD -> archive.put(logs(step, step.log()), true);
            case EDIT -> edit(step);
            case REMOVE -> archive.edits().remove(id(step), "r" + step.rep(), Optional.empty());
            case UNDO -> archive.edits().undo(Optional.empty());
            case KEEP -> SavedQuestions.of(archive).save("question " + step.log(), step.note(), "");
            case FORGET -> SavedQuestions.of(archive).forget("question " + step.log());
        }
    }

    private void edit(KilledScript.Step step) {
        String rep = "r" + step.rep();
        Optional<KeptReading> seen = archive.edits().reading(id(step), rep);
        if (seen.isEmpty()) {
            return;
        }
        Map<String, String> row = new LinkedHashMap<>();
        row.put("rep", rep);
        row.put("prospect", "Prospect " + step.log());
        row.put("game", "Opener");
        row.put("phase", "pass-rush");
        row.put("exchange", "rip");
        row.put("result", "won");
        row.put("evaluator", "Eyes " + step.log());
        row.put("snap", Integer.toString(step.rep()));
        row.put("note", step.note());
        Log typed = TypedRow.of(archive.book().taxonomy())
                .read(row, Set.of(), FilmLogReader.Options.none(), new Log.Source("typed in", "00"))
                .log()
                .orElseThrow();
        archive.edits().edit(id(step), rep, ReadingVersion.of(seen.get().reading()), typed);
    }

    private List<Log> logs(KilledScript.Step step, int log) {
        ReadResult read = FilmLogReader.of(archive.book().taxonomy())
                .read(
                        "log-" + step.number() + ".csv",
                        new ByteArrayInputStream(KilledScript.csv(step, log).getBytes(StandardCharsets.UTF_8)),
                        FilmLogReader.Options.none());
        return ((ReadResult.Accepted) read).logs();
    }

    private static LogId id(KilledScript.Step step) {
        return new LogId("eyes-" + step.log(), "prospect-" + step.log(), "opener");
    }

    /** What a folder holds, written down as the script does. */
    static String state(Archive archive) {
        Map<Integer, Map<String, String>> film = new TreeMap<>();
        for (Log log : archive.logs()) {
            Map<String, String> its = new TreeMap<>();
            log.readings()
                    .forEach(reading ->
                            its.put(reading.rep().rep(), reading.one("note").orElse("")));
            film.put(Integer.parseInt(log.evaluator().replace("Eyes ", "")), its);
        }
        Map<String, String> kept = new TreeMap<>();
        for (SavedQuestion question : SavedQuestions.of(archive).all()) {
            kept.put(question.name().replace(' ', '-'), question.question());
        }
        return KilledScript.state(film, kept);
    }
}
