package rushlight.notes;

/**
 * A clause: tokens {@code first} to {@code end}.
 *
 * @param first its first token
 * @param end the token behind its last
 * @param cue the place of its cue among the cues
 * @param begins whether it begins a cue
 * @param question whether it ends with a question mark
 * @param spoken whether its cue has no marks: words as a machine hears them
 */
record Clause(int first, int end, int cue, boolean begins, boolean question, boolean spoken) {
    boolean holds(int token) {
        return first <= token && token < end;
    }
}
