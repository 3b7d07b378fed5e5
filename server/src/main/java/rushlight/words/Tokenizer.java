package rushlight.words;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Cuts a text into words and marks. A hyphen, a slash or an underscore parts two words and is no mark; {@code "doesn't"}
 * is two words, {@code "five"} is {@code "5"}, {@code "9tech"} is {@code "9 technique"}.
 */
public final class Tokenizer {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern WITHOUT_G = Pattern.compile(".*[aeiouy].*in");

    private final Map<String, String> whole = new HashMap<>();
    private final Map<String, String> ends = new HashMap<>();
    private final Map<String, String> same = new HashMap<>();
    private final Map<String, String> afterNumber = new HashMap<>();
    private final int longestEnd;

    private Tokenizer(Lexicon spellings) {
        for (List<String> row : spellings.rows()) {
            Map<String, String> table = switch (row.get(0)) {
                case "whole" -> whole;
                case "end" -> ends;
                case "after-number" -> afterNumber;
                default -> same;
            };
            table.put(row.get(1), row.get(2));
        }
        this.longestEnd = ends.keySet().stream().mapToInt(String::length).max().orElse(0);
    }

    /** With the spellings of the book. */
    public static Tokenizer ofBook() {
        return new Tokenizer(Lexicon.named("spellings", "place", "written", "means"));
    }

    /** The words and marks of a text, in order. */
    public List<Token> tokens(String text) {
        List<Token> found = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            int c = text.codePointAt(at);
            int next = at + Character.charCount(c);
            if (isWordPart(c)) {
                int end = endOfWord(text, next);
                word(text, at, end, found);
                at = end;
            } else {
                if (isMark(c)) {
                    mark(text, at, next, found);
                }
                at = next;
            }
        }
        return List.copyOf(found);
    }

    /** A mark that the spellings name is a word. */
    private void mark(String text, int from, int to, List<Token> found) {
        String mark = text.substring(from, to);
        if (whole.containsKey(mark)) {
            word(text, from, to, found);
        } else {
            found.add(new Token(mark, mark, from, to, false, false));
        }
    }

    private static int endOfWord(String text, int from) {
        int at = from;
        while (at < text.length()) {
            int c = text.codePointAt(at);
            int next = at + Character.charCount(c);
            boolean inner = isApostrophe(c) && next < text.length() && isWordPart(text.codePointAt(next));
            if (!isWordPart(c) && !inner) {
                return at;
            }
            at = next;
        }
        return at;
    }

    private void word(String text, int from, int to, List<Token> found) {
        String key = spelledOut(key(text.substring(from, to)), text, to);
        String together = whole.get(key);
        if (together != null) {
            for (String part : together.split(" ", -1)) {
                add(found, text, from, to, part);
            }
            return;
        }
        boolean oneToOne = key.length() == to - from;
        for (int length = Math.min(longestEnd, key.length() - 1); oneToOne && length > 0; length--) {
            String end = ends.get(key.substring(key.length() - length));
            if (end != null) {
                add(found, text, from, to - length, key.substring(0, key.length() - length));
                if (!end.isEmpty()) {
                    add(found, text, to - length, to, end);
                }
                return;
            }
        }
        int digits = leadingDigits(key);
        if (oneToOne && digits > 0 && afterNumber.containsKey(key.substring(digits))) {
            add(found, text, from, from + digits, key.substring(0, digits));
            add(found, text, from + digits, to, key.substring(digits));
            return;
        }
        add(found, text, from, to, key);
    }

    /** "Closin'" is "closing", but the spin of 'a spin' is none: what is left of a word that lost its g has a vowel. */
    private static String spelledOut(String key, String text, int to) {
        boolean dropped = to < text.length()
                && isApostrophe(text.codePointAt(to))
                && WITHOUT_G.matcher(key).matches();
        return dropped ? key + "g" : key;
    }

    private void add(List<Token> found, String text, int from, int to, String key) {
        String plain = key.replace("'", "");
        Token before = found.isEmpty() ? null : found.get(found.size() - 1);
        String meant = before != null && before.isNumber() ? afterNumber.get(plain) : null;
        String used = meant != null ? meant : same.getOrDefault(plain, plain);
        found.add(new Token(text.substring(from, to), used, from, to, true, false));
    }

    private static String key(String word) {
        String lower = word.toLowerCase(Locale.ROOT).replace('\u2019', '\'').replace('\u2018', '\'');
        if (lower.chars().allMatch(c -> c < 128)) {
            return lower;
        }
        return ACCENTS.matcher(Normalizer.normalize(lower, Normalizer.Form.NFKD))
                .replaceAll("");
    }

    private static int leadingDigits(String key) {
        int n = 0;
        while (n < key.length() && key.charAt(n) >= '0' && key.charAt(n) <= '9') {
            n++;
        }
        return n < key.length() ? n : 0;
    }

    private static boolean isWordPart(int c) {
        return Character.isLetterOrDigit(c)
                || Character.getType(c) == Character.NON_SPACING_MARK
                || Character.getType(c) == Character.COMBINING_SPACING_MARK;
    }

    private static boolean isApostrophe(int c) {
        return c == '\'' || c == '\u2019' || c == '\u2018';
    }

    private static boolean isMark(int c) {
        return !Character.isWhitespace(c)
                && !Character.isSpaceChar(c)
                && !Character.isISOControl(c)
                && c != '-'
                && c != '/'
                && c != '_'
                && Character.getType(c) != Character.DASH_PUNCTUATION
                && Character.getType(c) != Character.FORMAT;
    }
}
