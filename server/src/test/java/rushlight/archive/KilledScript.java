package rushlight.archive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * What a writer does in one folder, step by step, the same for the same folder; and what must be there after each step, by
 * a bookkeeping that knows nothing of stores.
 */
final class KilledScript {
    /** What a step does. */
    enum Deed {
        IMPORT,
        IMPORT_TWO,
        ADD,
        EDIT,
        REMOVE,
        UNDO,
        KEEP,
        FORGET
    }

    /**
     * One step.
     *
     * @param log which of a few logs
     * @param rep which rep of it
     * @param reps how many an import brings
     */
    record Step(Deed deed, int number, int log, int rep, int reps) {
        /** What is written into the note of every reading that this step writes. */
        String note() {
            return "step " + number;
        }
    }

    private static final int LOGS = 3;
    private static final int MOST = 6;

    private final long seed;
    private final Map<Integer, Map<String, String>> film = new TreeMap<>();
    private final Map<String, String> kept = new TreeMap<>();
    private final List<Map<Integer, Map<String, String>>> before = new ArrayList<>();

    KilledScript(long folder) {
        this.seed = folder;
    }

    /** The step of a number: undoing only straight after a change of the film, so that what it takes back is plain. */
    Step step(int number) {
        Random dice = new Random(seed * 1_000_003 + number);
        int log = dice.nextInt(LOGS);
        int rep = 1 + dice.nextInt(MOST);
        int reps = 1 + dice.nextInt(MOST);
        Deed[] deeds = Deed.values();
        return new Step(number == 0 ? Deed.IMPORT_TWO : deeds[dice.nextInt(deeds.length)], number, log, rep, reps);
    }

    /** The state after a step, as text that can be compared: logs by number, their notes by rep, and what is kept. */
    String after(Step step) {
        Map<Integer, Map<String, String>> was = copy(film);
        boolean changed = switch (step.deed()) {
            case IMPORT -> put(step.log(), step, false);
            case IMPORT_TWO -> {
                boolean first = put(step.log(), step, false);
                yield put((step.log() + 1) % LOGS, step, false) || first;
            }
            case ADD -> put(step.log(), step, true);
            case EDIT -> edit(step);
            case REMOVE -> remove(step);
            case UNDO -> undo();
            case KEEP -> {
                kept.put("question-" + step.log(), step.note());
                yield false;
            }
            case FORGET -> {
                kept.remove("question-" + step.log());
                yield false;
            }
        };
        if (changed && step.deed() != Deed.UNDO) {
            before.add(was);
        }
        return state(film, kept);
    }

    /** How a state is written down. */
    static String state(Map<Integer, Map<String, String>> film, Map<String, String> kept) {
        return new TreeMap<>(film) + " " + new TreeMap<>(kept);
    }

    /** The readings of a step, each named and noted. */
    static String csv(Step step, int log) {
        StringBuilder rows = new StringBuilder("rep,prospect,game,phase,exchange,result,evaluator,snap,note\n");
        for (int rep = 1; rep <= step.reps(); rep++) {
            rows.append(row(log, rep, step.note()));
        }
        return rows.toString();
    }

    private static String row(int log, int rep, String note) {
        return "r" + rep + ",Prospect " + log + ",Opener,pass-rush,bull-rush > [anchor-hop],lost,Eyes " + log + ","
                + rep + "," + note + "\n";
    }

    private boolean put(int log, Step step, boolean add) {
        Map<String, String> now = new TreeMap<>(add ? film.getOrDefault(log, Map.of()) : Map.of());
        for (int rep = 1; rep <= step.reps(); rep++) {
            now.put("r" + rep, step.note());
        }
        film.put(log, now);
        return true;
    }

    private boolean edit(Step step) {
        Map<String, String> its = film.getOrDefault(step.log(), Map.of());
        if (!its.containsKey("r" + step.rep())) {
            return false;
        }
        its.put("r" + step.rep(), step.note());
        return true;
    }

    private boolean remove(Step step) {
        Map<String, String> its = film.getOrDefault(step.log(), new TreeMap<>());
        if (its.remove("r" + step.rep()) == null) {
            return false;
        }
        if (its.isEmpty()) {
            film.remove(step.log());
        }
        return true;
    }

    /** Takes back the newest change that was not taken back yet. */
    private boolean undo() {
        if (before.isEmpty()) {
            return false;
        }
        film.clear();
        film.putAll(copy(before.remove(before.size() - 1)));
        return true;
    }

    private static Map<Integer, Map<String, String>> copy(Map<Integer, Map<String, String>> film) {
        Map<Integer, Map<String, String>> copy = new LinkedHashMap<>();
        film.forEach((log, its) -> copy.put(log, new TreeMap<>(its)));
        return copy;
    }
}
