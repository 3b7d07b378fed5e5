package rushlight.notes;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.StringEscapeUtils;

/**
 * The payload of a cue without its marks.
 *
 * @param words what is said
 * @param voice who says it, the first where there are several; empty where nobody is named
 * @param swallowed whether an unclosed tag hid some of it
 */
record CueText(String words, String voice, boolean swallowed) {
    private static final Pattern REFERENCE = Pattern.compile("&(?:#\\d{1,7}|#[xX][0-9a-fA-F]{1,6}|\\w{2,31});");
    private static final Pattern VOICE = Pattern.compile("v(?:\\.[^ \\t\\n]*)?[ \\t\\n]+(.*)", Pattern.DOTALL);

    static CueText of(String payload) {
        StringBuilder words = new StringBuilder();
        String voice = "";
        boolean swallowed = false;
        int at = 0;
        while (at < payload.length()) {
            char c = payload.charAt(at);
            if (c != '<') {
                words.append(c);
                at++;
                continue;
            }
            int close = payload.indexOf('>', at);
            Matcher named = VOICE.matcher(payload.substring(at + 1, close < 0 ? payload.length() : close));
            if (voice.isEmpty() && named.matches()) {
                voice = decoded(named.group(1)).strip();
            }
            swallowed |= close < 0 && payload.length() > at + 1;
            at = close < 0 ? payload.length() : close + 1;
        }
        return new CueText(decoded(words.toString()), voice, swallowed);
    }

    /** With character references put for what they stand for; "&amp;lrm;" and "&amp;rlm;" are HTML 4 names too. */
    private static String decoded(String text) {
        return REFERENCE
                .matcher(text)
                .replaceAll(m -> Matcher.quoteReplacement(
                        switch (m.group()) {
                            case "&apos;" -> "'";
                            default -> StringEscapeUtils.unescapeHtml4(m.group());
                        }));
    }
}
