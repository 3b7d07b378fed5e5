package rushlight.notes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What must stand around some words for them to mean a term, as the word lists write it: tests apart by a blank, words in a
 * test apart by commas. {@code next:x} and {@code prev:x} look at the neighboring word, {@code near:x} at the clause,
 * {@code round:x} at what is told before and after it too, {@code has:x} at the words themselves, {@code said:x} at their
 * very forms ("driven" is done to him, "drives" he does);
 * {@code not-...} turns a test round; {@code subject:blocker} asks who acts, {@code alone:yes} for words that are the whole
 * clause, {@code apart:yes} for words with marks on both sides and nothing of weight beside them, {@code first:yes} for words
 * that begin the clause, {@code doing:yes} for words with a verb in its "-ing" form; {@code phase:run} or
 * {@code phase:pass-rush} asks what is told round about. {@code absent:yes} is no test: the words deny their term themselves.
 */
final class Sense {
    private record Test(String place, boolean denied, Set<String> words) {}

    private static final String FORMS = "said:";
    private static final String ABSENT = "absent:yes";

    private final List<Test> tests = new ArrayList<>();
    private final String written;

    Sense(String written, UnaryOperator<String> base) {
        this.written = written;
        if (!written.equals("-") && !written.isEmpty()) {
            for (String test : written.split(" ", -1)) {
                if (test.equals(ABSENT)) {
                    continue;
                }
                String place = test.substring(0, test.indexOf(':'));
                boolean denied = place.startsWith("not-");
                tests.add(new Test(
                        denied ? place.substring(4) : place,
                        denied,
                        Arrays.stream(test.substring(test.indexOf(':') + 1).split(",", -1))
                                .map(test.contains(FORMS) ? UnaryOperator.identity() : base)
                                .collect(Collectors.toSet())));
            }
        }
    }

    /** Whether the words at these tokens of a clause are meant so. */
    boolean fits(Surroundings around) {
        return tests.stream().allMatch(test -> holds(test, around) != test.denied());
    }

    /** Whether the words say themselves that there is none: "no answer". */
    boolean absent() {
        return written.contains(ABSENT);
    }

    /** Whether it tests nothing. */
    boolean isAny() {
        return tests.isEmpty();
    }

    /** How much of it must stand there: what asks for more means more. */
    int asks() {
        return (int) tests.stream().filter(test -> !test.denied()).count();
    }

    String written() {
        return written;
    }

    private static boolean holds(Test test, Surroundings around) {
        return switch (test.place()) {
            case "next" -> around.next(test.words());
            case "prev" -> around.previous(test.words());
            case "near" -> around.near(test.words());
            case "has" -> around.has(test.words());
            case "said" -> around.said(test.words());
            case "round" -> around.round(test.words());
            case "subject" -> test.words().contains(around.subject());
            case "alone" -> around.alone();
            case "first" -> around.begins();
            case "apart" -> around.apart();
            case "doing" -> around.doing();
            case "phase" -> test.words().contains(around.phase());
            default -> throw new IllegalArgumentException("No test of a sense: " + test.place());
        };
    }
}
