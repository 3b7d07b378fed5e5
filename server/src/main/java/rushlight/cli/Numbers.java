package rushlight.cli;

/** Counts of things as a sentence has them. */
final class Numbers {
    private Numbers() {}

    /** The number and the noun, with an s where there is not exactly one. */
    static String of(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
