package rushlight.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Cards dealt until none is left, then shuffled anew. What a profile says of a man so comes out as often as it says,
 * whatever the seed; only the order is chance.
 */
final class Deck {
    private final List<String> cards;
    private final Random chance;
    private final List<String> left = new ArrayList<>();

    private Deck(List<String> cards, Random chance) {
        this.cards = cards;
        this.chance = chance;
    }

    /** Reads {@code "over-set 3, vertical-set 2"}: three cards of the one, two of the other; no number is one card. */
    static Deck of(String text, Random chance) {
        List<String> cards = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            String[] card = part.strip().split(" ", -1);
            int copies = card.length > 1 ? Integer.parseInt(card[1]) : 1;
            cards.addAll(Collections.nCopies(copies, card[0]));
        }
        return new Deck(List.copyOf(cards), chance);
    }

    String deal() {
        if (left.isEmpty()) {
            left.addAll(cards);
            Collections.shuffle(left, chance);
        }
        return left.remove(left.size() - 1);
    }
}
