package rushlight.accounts;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What somebody may do; each may do what those before it may. */
public enum Role {
    /** Looks, asks and prints. */
    READER,
    /** Also reads film: imports, tags, reconciles, undoes. */
    EVALUATOR,
    /** Also reads the record of what everybody did. */
    ADMINISTRATOR;

    /** Whether somebody of this role may do what asks for another. */
    public boolean covers(Role needed) {
        return compareTo(needed) >= 0;
    }

    /** The word of this role. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The role of a word. */
    public static Optional<Role> of(String word) {
        return Arrays.stream(values())
                .filter(role -> role.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** All words, the least first, for people to choose from. */
    public static String words() {
        return Arrays.stream(values()).map(Role::word).collect(Collectors.joining(", "));
    }
}
