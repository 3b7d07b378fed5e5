package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Collects the cues of a file, what was wrong with them, and the text they make together. */
final class CueList {
    private static final int TOLD = 100;

    /** A cue of more characters is cut at a blank, so that no line makes the reading slow. */
    private static final int LONGEST = 8_000;

    private final List<Cue> cues = new ArrayList<>();
    private final List<Diagnostic> diagnostics = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private int untold;
    private double latest = Double.NEGATIVE_INFINITY;

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
        if (!cues.isEmpty()) {
            text.append('\n');
        }
        cues.add(new Cue(cues.size() + 1, id, start, end, voices, words, text.length()));
        text.append(words);
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

    /** Gives every cue without an end the start of the next one. */
    private List<Cue> ended() {
        List<Cue> all = new ArrayList<>();
        for (int i = 0; i < cues.size(); i++) {
            Cue cue = cues.get(i);
            OptionalDouble next = i + 1 < cues.size() ? cues.get(i + 1).start() : OptionalDouble.empty();
            boolean follows = cue.end().isEmpty()
                    && cue.start().isPresent()
                    && next.isPresent()
                    && next.getAsDouble() > cue.start().getAsDouble();
            all.add(
                    follows
                            ? new Cue(cue.number(), cue.id(), cue.start(), next, cue.voices(), cue.text(), cue.from())
                            : cue);
        }
        return all;
    }

    Narration narration(String source, Format format) {
        if (untold > 0) {
            int line = diagnostics.get(TOLD - 1).line();
            diagnostics.add(new Diagnostic(
                    "AND_MORE", line, "Behind this line " + untold + " more faults were found; they are not listed."));
        }
        return new Narration(source, format, format == Format.PLAIN ? ended() : cues, text.toString(), diagnostics);
    }
}
