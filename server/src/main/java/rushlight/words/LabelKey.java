package rushlight.words;

/** The form in which two spellings of one label are equal. */
public final class LabelKey {
    private LabelKey() {}

    /**
     * Lower case, without apostrophes, with one blank for any run of blanks, hyphens, underscores and slashes: {@code
     * "Wrong-Arm "} and {@code "wrong arm"} have one key.
     */
    public static String of(String text) {
        StringBuilder key = new StringBuilder(text.length());
        boolean gap = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isGap(c)) {
                gap = key.length() > 0;
            } else if (!isApostrophe(c)) {
                if (gap) {
                    key.append(' ');
                    gap = false;
                }
                key.append(Character.toLowerCase(c));
            }
        }
        return key.toString();
    }

    private static boolean isGap(char c) {
        return c == '-'
                || c == '_'
                || c == '/'
                || Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || Character.getType(c) == Character.DASH_PUNCTUATION;
    }

    private static boolean isApostrophe(char c) {
        return c == '\'' || c == '\u2019' || c == '\u2018' || c == '`';
    }
}
