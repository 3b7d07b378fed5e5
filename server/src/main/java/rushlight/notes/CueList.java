package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Hands the cues of a file on as they are read, each with its place in the text they make together, and collects what was wrong with them. */
final class CueList {
    private static final int TOLD = 100;

    /** A cue of more characters is cut at a blank, so that no line makes the reading slow. */
    private static final int LONGEST = 8_000;

    private final boolean lasting;
    private final Consumer<Cue> use;
    private final List<Diagnostic> diagnostics = new ArrayList<>();
    private @Nullable Cue held;
    private int count;
    private int length;
    private int untold;
    private double latest = Double.NEGATIVE_INFINITY;

    /**
     * @param lasting whether a cue without an end lasts until the next one begins
     * @param use takes each cue
     */
    CueList(boolean lasting, Consumer<Cue> use) {
        this.lasting = lasting;
        this.use = use;
    }

    boolean isEmpty() {
        return count == 0;
    }

    void add(String id, OptionalDouble start, OptionalDouble end, List<Cue.Voice> voices, String words, int line) {
        OptionalDouble kept = end;
        if (start.isPresent() && end.isPresent() && end.getAsDouble() < start.getAsDouble()) {
            report("END_BEFORE_START", line, "The cue ends before it starts; its end is taken as unknown.");
            kept = OptionalDouble.empty();
        }
        if (start.isPresent()) {
            if (start.getAsDouble() < latest) {
                report(
                        "TIME_RUNS_BACK",
                        line,
                        "This starts before what stands above it; the order of the file is kept.");
            }
            latest = start.getAsDouble();
        }
        String rest = words;
        int at = 0;
        if (rest.length() > LONGEST) {
            report("LONG_LINE", line, "This is longer than anybody speaks in one go; it is read in pieces.");
        }
        while (rest.length() > LONGEST) {
            int blank = rest.lastIndexOf(' ', LONGEST);
            int cut = blank > LONGEST / 2 ? blank : LONGEST;
            put(id, start, kept, heard(voices, at, cut), rest.substring(0, cut));
            int next = blank > LONGEST / 2 ? cut + 1 : cut;
            rest = rest.substring(next);
            at += next;
        }
        put(id, start, kept, heard(voices, at, rest.length()), rest);
    }

    /** Those who begin to speak in a piece of the words. */
    private static List<Cue.Voice> heard(List<Cue.Voice> voices, int from, int length) {
        return voices.stream()
                .filter(voice -> voice.from() >= from && voice.from() <= from + length)
                .map(voice -> new Cue.Voice(voice.name(), voice.from() - from))
                .toList();
    }

    private void put(String id, OptionalDouble start, OptionalDouble end, List<Cue.Voice> voices, String words) {
        int from = count == 0 ? 0 : length + 1;
        count++;
        length = from + words.length();
        Cue now = new Cue(count, id, start, end, voices, words, from);
        release(start);
        held = now;
    }

    /** Hands the cue on that waited for the start of the next. */
    private void release(OptionalDouble next) {
        Cue cue = held;
        if (cue == null) {
            return;
        }
        boolean follows = lasting
                && cue.end().isEmpty()
                && cue.start().isPresent()
                && next.isPresent()
                && next.getAsDouble() > cue.start().getAsDouble();
        use.accept(
                follows
                        ? new Cue(cue.number(), cue.id(), cue.start(), next, cue.voices(), cue.text(), cue.from())
                        : cue);
        held = null;
    }

    /** Words of nobody in particular, of which the time is not known. */
    void add(String words, int line) {
        add("", OptionalDouble.empty(), OptionalDouble.empty(), List.of(), words, line);
    }

    void report(String code, int line, String message) {
        if (diagnostics.size() < TOLD) {
            diagnostics.add(new Diagnostic(code, line, message));
        } else {
            untold++;
        }
    }

    /** Hands the last cue on, and says what was wrong. */
    List<Diagnostic> end() {
        release(OptionalDouble.empty());
        if (untold > 0) {
            int line = diagnostics.get(TOLD - 1).line();
            diagnostics.add(new Diagnostic(
                    "AND_MORE", line, "Behind this line " + untold + " more faults were found; they are not listed."));
        }
        return List.copyOf(diagnostics);
    }
}
