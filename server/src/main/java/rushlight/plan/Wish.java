package rushlight.plan;

/** What a person decided about a schedule; it is kept as the limits are. */
public sealed interface Wish {
    /**
     * This stands in that session.
     *
     * @param session the session, from 0
     * @param exercise slug of the drill or check
     */
    record Pin(int session, String exercise) implements Wish {}

    /**
     * This does not stand in that session.
     *
     * @param session the session, from 0
     * @param exercise slug of the drill or check
     */
    record Drop(int session, String exercise) implements Wish {}

    /**
     * This comes nowhere in the block.
     *
     * @param exercise slug of the drill or check
     */
    record Leave(String exercise) implements Wish {}

    /**
     * The one comes in an earlier session than the first of the other.
     *
     * @param earlier slug of the drill or check that comes first
     * @param later slug of the one that waits for it
     */
    record Before(String earlier, String later) implements Wish {}
}
