package rushlight.notes;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads SubRip, which nobody has specified, as tolerantly as its many writers need. */
final class SrtReader {
    private static final String ARROW = "-->";
    private static final String STAMP = "(?:(\\d{1,3}):)?(\\d{1,2}):(\\d{1,2})([,.])(\\d{1,3})";
    private static final Pattern TIMING =
            Pattern.compile("\\s*" + STAMP + "\\s*-->\\s*" + STAMP + "(?:\\s.*)?", Pattern.DOTALL);
    private static final Pattern ALMOST = Pattern.compile("\\s*-?\\d{1,3}[:.,][^\\s>]*\\s*-->.*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("\\s*\\d{1,9}\\s*");
    private static final Pattern MARKS =
            Pattern.compile("</?(?:b|i|u|font)(?:\\s[^<>]*)?>|\\{\\\\[^{}]*}", Pattern.CASE_INSENSITIVE);

    private final List<String> lines;
    private final CueList cues;
    private boolean fullStops;

    private SrtReader(List<String> lines, CueList cues) {
        this.lines = lines;
        this.cues = cues;
    }

    /** Whether the first lines that are not blank are a block of it. */
    static boolean begins(List<String> lines) {
        List<String> first =
                lines.stream().filter(line -> !line.isBlank()).limit(2).toList();
        return first.stream().anyMatch(SrtReader::isTiming) && (isTiming(first.get(0)) || isNumber(first.get(0)));
    }

    static boolean isTiming(String line) {
        return line.contains(ARROW) && TIMING.matcher(line).matches();
    }

    static void read(List<String> lines, CueList cues) {
        new SrtReader(lines, cues).blocks();
    }

    private void blocks() {
        int at = 0;
        while (at < lines.size()) {
            if (isMeantAsTiming(lines.get(at))) {
                at = cue(at);
            } else {
                if (!beginsBlock(at) && !lines.get(at).isBlank()) {
                    cues.report("NO_TIMING", at + 1, "This line stands before any time; it is left out.");
                }
                at++;
            }
        }
    }

    private int cue(int timing) {
        int at = timing + 1;
        boolean joined = false;
        StringBuilder words = new StringBuilder();
        while (at < lines.size() && !beginsBlock(at)) {
            String line = MARKS.matcher(lines.get(at)).replaceAll("").strip();
            if (!line.isEmpty()) {
                joined |= !words.isEmpty() && lines.get(at - 1).isBlank();
                words.append(words.isEmpty() ? "" : "\n").append(line);
            }
            at++;
        }
        if (joined) {
            cues.report("BLANK_LINE_INSIDE", timing + 1, "A blank line stands inside this cue; the parts are joined.");
        }
        Matcher found = TIMING.matcher(lines.get(timing));
        if (found.matches()) {
            if (!fullStops && (found.group(4).equals(".") || found.group(9).equals("."))) {
                fullStops = true;
                cues.report(
                        "FULL_STOP",
                        timing + 1,
                        "Times are written with a full stop; SubRip writes a comma. They are read.");
            }
            String id = timing > 0 && isNumber(lines.get(timing - 1))
                    ? lines.get(timing - 1).strip()
                    : "";
            cues.add(id, seconds(found, 1), seconds(found, 6), List.of(), words.toString(), timing + 1);
        } else {
            cues.report(
                    "BAD_TIMING",
                    timing + 1,
                    "\"" + Narrations.shortened(lines.get(timing))
                            + "\" is no time as SubRip writes it (00:00:01,000 --> 00:00:02,000). The words are kept"
                            + " without one.");
            cues.add(words.toString(), timing + 1);
        }
        return at;
    }

    private boolean beginsBlock(int at) {
        return isMeantAsTiming(lines.get(at))
                || (isNumber(lines.get(at)) && at + 1 < lines.size() && isMeantAsTiming(lines.get(at + 1)));
    }

    private static boolean isMeantAsTiming(String line) {
        return line.contains(ARROW)
                && (TIMING.matcher(line).matches() || ALMOST.matcher(line).matches());
    }

    private static boolean isNumber(String line) {
        return NUMBER.matcher(line).matches();
    }

    private static OptionalDouble seconds(Matcher found, int group) {
        String hours = found.group(group);
        String digits = found.group(group + 4);
        return OptionalDouble.of((hours == null ? 0 : Integer.parseInt(hours)) * 3600
                + Integer.parseInt(found.group(group + 1)) * 60
                + Integer.parseInt(found.group(group + 2))
                + Integer.parseInt(digits) / Math.pow(10, digits.length()));
    }
}
