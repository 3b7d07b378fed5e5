package rushlight.handbook;

import java.util.List;
import java.util.Optional;

/**
 * What a number of a front means, as programs read it.
 *
 * @param number as the systems write it
 * @param system letter of the system that was named, absent where none was
 * @param meanings what it stands for, system by system
 * @param unnamed the spot a film log keeps where nobody names the system, absent where the book leaves it to the usual reading
 * @param ambiguous whether it stays open
 */
public record NumberAnswer(
        String number, Optional<String> system, List<Meaning> meanings, Optional<String> unnamed, boolean ambiguous) {
    /** One reading of it: the spot, how usual it is in that system, and the alignments the book has there. */
    public record Meaning(String system, String position, int rank, List<String> alignments) {}
}
