package rushlight.film;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** The stable names that stand in addresses. */
public final class Identity {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern ENDS = Pattern.compile("^-+|-+$");

    private Identity() {}

    /**
     * The slug of a name: compatibility-decomposed (NFKD), marks dropped, lower case, everything but letters and digits
     * a hyphen. Empty where the name has neither letter nor digit.
     */
    public static String slug(String name) {
        if (isSlug(name)) {
            return name;
        }
        String plain =
                MARKS.matcher(Normalizer.normalize(name, Normalizer.Form.NFKD)).replaceAll("");
        String hyphens = OTHER.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll("-");
        return ENDS.matcher(hyphens).replaceAll("");
    }

    private static boolean isSlug(String name) {
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            boolean inside = i > 0 && i < name.length() - 1 && c == '-' && name.charAt(i - 1) != '-';
            if (!inside && (c < 'a' || c > 'z') && (c < '0' || c > '9')) {
                return false;
            }
        }
        return true;
    }
}
