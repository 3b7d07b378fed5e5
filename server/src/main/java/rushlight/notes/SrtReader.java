package rushlight.notes;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads SubRip, which nobody has specified, as tolerantly as its many writers need. */
final class SrtReader {
    private static final String STAMP = "(\\d{1,3}):(\\d{1,2}):(\\d{1,2})([,.])(\\d{1,3})";
    private static final Pattern TIMING = Pattern.compile("\\s*" + STAMP + "\\s*-->\\s*" + STAMP + "(?:\\s.*)?");
    private static final Pattern MARKS =
            Pattern.compile("</?(?:b|i|u|font)(?:\\s[^>]*)?>|\\{\\\\[^}]*}", Pattern.CASE_INSENSITIVE);

    private final List<String> lines;
    private final CueList cues = new CueList();

    private SrtReader(List<String> lines) {
        this.lines = lines;
    }

    /** Whether the first lines that are not blank are a block of it. */
    static boolean begins(List<String> lines) {
        List<String> first =
                lines.stream().filter(line -> !line.isBlank()).limit(2).toList();
        return first.stream().anyMatch(line -> TIMING.matcher(line).matches())
                && (isTiming(first.get(0)) || isNumber(first.get(0)));
    }

    static Narration read(String source, List<String> lines) {
        SrtReader reader = new SrtReader(lines);
        reader.blocks();
        return reader.cues.narration(source, Format.SRT);
    }

    private void blocks() {
        int at = 0;
        while (at < lines.size()) {
            if (isTiming(lines.get(at))) {
                at = cue(at);
            } else {
                boolean number = isNumber(lines.get(at)) && at + 1 < lines.size() && isTiming(lines.get(at + 1));
                if (!number && !lines.get(at).isBlank()) {
                    cues.report("NO_TIMING", at + 1, "This line has no time; it is left out.");
                }
                at++;
            }
        }
    }

    private int cue(int timing) {
        Matcher found = TIMING.matcher(lines.get(timing));
        if (!found.matches()) {
            return timing + 1;
        }
        if (found.group(4).equals(".") || found.group(9).equals(".")) {
            cues.report(
                    "FULL_STOP",
                    timing + 1,
                    "The time is written with a full stop; SubRip writes a comma. It is read.");
        }
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
        String id = timing > 0 && isNumber(lines.get(timing - 1))
                ? lines.get(timing - 1).strip()
                : "";
        cues.add(id, seconds(found, 1), seconds(found, 6), "", words.toString(), timing + 1);
        return at;
    }

    private boolean beginsBlock(int at) {
        return isTiming(lines.get(at))
                || (isNumber(lines.get(at)) && at + 1 < lines.size() && isTiming(lines.get(at + 1)));
    }

    private static boolean isTiming(String line) {
        return TIMING.matcher(line).matches();
    }

    private static boolean isNumber(String line) {
        return line.strip().matches("\\d{1,9}");
    }

    private static OptionalDouble seconds(Matcher found, int group) {
        String digits = found.group(group + 4);
        return OptionalDouble.of(Integer.parseInt(found.group(group)) * 3600
                + Integer.parseInt(found.group(group + 1)) * 60
                + Integer.parseInt(found.group(group + 2))
                + Integer.parseInt(digits) / Math.pow(10, digits.length()));
    }
}
