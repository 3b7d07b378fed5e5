package rushlight.notes;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.StringEscapeUtils;

/**
 * The payload of a cue without its marks.
 *
 * @param words what is said
 * @param voices who says it from where on
 * @param swallowed whether an unclosed tag hid some of it
 */
record CueText(String words, List<Cue.Voice> voices, boolean swallowed) {
    private static final Pattern REFERENCE = Pattern.compile("&(?:#(\\d{1,9})|#[xX]([0-9a-fA-F]{1,7})|\\w{2,31});");
    private static final Pattern VOICE = Pattern.compile("v(?:\\.[^ \\t\\n\\f]*)?[ \\t\\n\\f]+(.*)", Pattern.DOTALL);
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final String UNKNOWN = "\uFFFD";

    static CueText of(String payload) {
        StringBuilder words = new StringBuilder();
        List<Cue.Voice> voices = new ArrayList<>();
        boolean swallowed = false;
        int at = 0;
        while (at < payload.length()) {
            int open = payload.indexOf('<', at);
            words.append(decoded(payload.substring(at, open < 0 ? payload.length() : open)));
            if (open < 0) {
                break;
            }
            int close = payload.indexOf('>', open);
            int end = close < 0 ? payload.length() : close;
            Matcher named = VOICE.matcher(payload.substring(open + 1, end));
            if (named.matches()) {
                voices.add(new Cue.Voice(decoded(named.group(1)).strip(), words.length()));
            }
            swallowed |= close < 0 && payload.length() > open + 1;
            at = end + 1;
        }
        return new CueText(words.toString(), voices, swallowed);
    }

    /** With character references put for what they stand for. */
    private static String decoded(String text) {
        return REFERENCE.matcher(text).replaceAll(m -> Matcher.quoteReplacement(character(m)));
    }

    private static String character(MatchResult reference) {
        if (reference.group(1) != null) {
            return character(Integer.parseInt(reference.group(1)));
        }
        if (reference.group(2) != null) {
            return character(Integer.parseInt(reference.group(2), 16));
        }
        return reference.group().equals("&apos;") ? "'" : StringEscapeUtils.unescapeHtml4(reference.group());
    }

    /** As HTML reads a number: what no character has is shown as unknown, 128 to 159 are those of Windows. */
    private static String character(int code) {
        if (code >= 0x80 && code <= 0x9F) {
            return new String(new byte[] {(byte) code}, WINDOWS);
        }
        boolean none = code == 0 || !Character.isValidCodePoint(code) || (code >= 0xD800 && code <= 0xDFFF);
        return none ? UNKNOWN : Character.toString(code);
    }
}
