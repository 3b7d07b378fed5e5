package rushlight.notes;

import java.util.List;
import java.util.Optional;

/**
 * A concept that the notes name.
 *
 * @param concept its slug
 * @param assertion how it was said
 * @param actor who did it
 * @param side the direction or shoulder that was worked; empty where none was said
 * @param hand his own hand; empty where none was said
 * @param target the hand or arm of the other man that it works on; empty where none was said
 * @param order its place among the steps of the rep, from 1; 0 where it is no step
 * @param opinion the speaker's judgement: -2 to 2, 0 where none was said
 * @param text the words
 * @param from where they begin in the text of the notes
 * @param to where they end
 * @param band how far it can be trusted
 * @param because why it was read so
 */
public record Mention(
        String concept,
        Assertion assertion,
        Actor actor,
        Optional<String> side,
        Optional<String> hand,
        Optional<String> target,
        int order,
        int opinion,
        String text,
        int from,
        int to,
        Band band,
        List<String> because) {
    public Mention {
        because = List.copyOf(because);
    }

    Mention inOrder(int place) {
        return new Mention(
                concept, assertion, actor, side, hand, target, place, opinion, text, from, to, band, because);
    }

    /** The same, told by these words. */
    Mention saying(String words) {
        return new Mention(
                concept, assertion, actor, side, hand, target, order, opinion, words, from, to, band, because);
    }

    /** The same of another concept, which this one does. */
    Mention of(String other, Actor by) {
        return new Mention(other, assertion, by, side, hand, target, order, opinion, text, from, to, band, because);
    }
}
