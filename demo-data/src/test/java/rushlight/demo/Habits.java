package rushlight.demo;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** One man on film: what his profile deals for each decision, the league's ordinary habit where it is silent. */
final class Habits {
    private final Map<String, String> own;
    private final Map<String, Deck> decks = new HashMap<>();
    private final Random chance;

    Habits(Map<String, String> own, Random chance) {
        this.own = own;
        this.chance = chance;
    }

    String deal(String habit) {
        return deck(habit).deal();
    }

    /** The habit in one situation ({@code wins/left}), where the profile or the league tells it apart. */
    String deal(String habit, String situation) {
        String narrow = habit + "/" + situation;
        if (own.containsKey(narrow)) {
            return deal(narrow);
        }
        boolean ordinary = !own.containsKey(habit) && Ordinary.HABITS.containsKey(narrow);
        return deal(ordinary ? narrow : habit);
    }

    boolean says(String habit) {
        return deal(habit).equals("yes");
    }

    boolean says(String habit, String situation) {
        return deal(habit, situation).equals("yes");
    }

    Random chance() {
        return chance;
    }

    private Deck deck(String habit) {
        return decks.computeIfAbsent(habit, name -> Deck.of(cards(name), chance));
    }

    private String cards(String habit) {
        @Nullable String cards = own.getOrDefault(habit, Ordinary.HABITS.get(habit));
        if (cards == null) {
            throw new IllegalArgumentException("No cards for the habit '" + habit + "'");
        }
        return cards;
    }
}
