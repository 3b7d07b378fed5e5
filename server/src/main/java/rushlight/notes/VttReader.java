package rushlight.notes;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads WebVTT by the parsing rules of the W3C's specification, "WebVTT file parsing" and "cue timings and settings". */
final class VttReader {
    private static final String ARROW = "-->";
    private static final String STAMP = "(?:(\\d+):)?(\\d{2}):(\\d{2})\\.(\\d{3})";
    private static final Pattern TIMING =
            Pattern.compile("[ \\t\\f]*" + STAMP + "[ \\t\\f]*-->[ \\t\\f]*" + STAMP + "(?!\\d).*", Pattern.DOTALL);
    private static final Pattern WITH_COMMA = Pattern.compile("\\d,\\d{3}\\s*-->");
    private static final Pattern SIGNATURE = Pattern.compile("WEBVTT(?:[ \\t].*)?", Pattern.DOTALL);
    private static final Pattern COMMENT = Pattern.compile("(?:NOTE|STYLE|REGION)(?:[ \\t].*)?", Pattern.DOTALL);

    private final List<String> lines;
    private final CueList cues;
    private final Set<String> ids = new HashSet<>();

    private VttReader(List<String> lines, CueList cues) {
        this.lines = lines;
        this.cues = cues;
    }

    static boolean isSigned(List<String> lines) {
        return !lines.isEmpty() && SIGNATURE.matcher(lines.get(0)).matches();
    }

    static void read(List<String> lines, CueList cues) {
        new VttReader(lines, cues).blocks();
    }

    private void blocks() {
        int at = 1;
        while (at < lines.size() && !lines.get(at).isEmpty() && !lines.get(at).contains(ARROW)) {
            at++;
        }
        while (at < lines.size()) {
            if (lines.get(at).isEmpty()) {
                at++;
            } else {
                at = block(at);
            }
        }
    }

    /** Reads one block and gives the line behind it; a second arrow ends a block and begins the next. */
    private int block(int first) {
        boolean timed = lines.get(first).contains(ARROW);
        int timing = timed ? first : first + 1;
        boolean named = !timed && timing < lines.size() && lines.get(timing).contains(ARROW);
        int at = timed || named ? timing + 1 : first + 1;
        int payload = at;
        while (at < lines.size() && !lines.get(at).isEmpty() && !lines.get(at).contains(ARROW)) {
            at++;
        }
        if (timed || named) {
            cue(timed ? "" : lines.get(first), timing, payload, at);
        } else if (!isComment(lines.get(first))) {
            cues.report("NO_TIMING", first + 1, "These lines have no time; they are left out.");
        }
        return at;
    }

    private static boolean isComment(String line) {
        return COMMENT.matcher(line).matches();
    }

    private void cue(String id, int timing, int from, int to) {
        Matcher found = TIMING.matcher(lines.get(timing));
        OptionalDouble start = found.matches() ? seconds(found, 1) : OptionalDouble.empty();
        OptionalDouble end = found.matches() ? seconds(found, 5) : OptionalDouble.empty();
        if (start.isEmpty() || end.isEmpty()) {
            boolean comma = WITH_COMMA.matcher(lines.get(timing)).find();
            cues.report(
                    comma ? "LOOKS_LIKE_SRT" : "BAD_TIMING",
                    timing + 1,
                    comma
                            ? "The time is written with a comma, as SubRip does; WebVTT wants a full stop. The cue is"
                                    + " left out."
                            : "\"" + Narrations.shortened(lines.get(timing))
                                    + "\" is no time as WebVTT writes it (00:01.000 --> 00:02.000). The cue is left"
                                    + " out.");
            return;
        }
        if (!id.isEmpty() && !ids.add(id)) {
            cues.report("SAME_ID", timing, "The name \"" + Narrations.shortened(id) + "\" stands twice.");
        }
        CueText text = CueText.of(String.join("\n", lines.subList(from, to)));
        if (text.swallowed()) {
            cues.report(
                    "UNCLOSED_TAG_SWALLOWED_TEXT",
                    from + 1,
                    "A \"<\" that is never closed hides the rest of the cue; write &lt; for the sign.");
        }
        cues.add(id, start, end, text.voices(), text.words(), timing + 1);
    }

    private static OptionalDouble seconds(Matcher found, int group) {
        String hours = found.group(group);
        long minutes = Long.parseLong(found.group(group + 1));
        long seconds = Long.parseLong(found.group(group + 2));
        if (minutes > 59 || seconds > 59 || (hours != null && hours.length() > 9)) {
            return OptionalDouble.empty();
        }
        long whole = (hours == null ? 0 : Long.parseLong(hours)) * 3600 + minutes * 60 + seconds;
        return OptionalDouble.of(whole + Integer.parseInt(found.group(group + 3)) / 1000.0);
    }
}
