package rushlight.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Remarks beside a rep, from what happened in it; each phrase of a topic is used before one comes again. */
final class Notes {
    private final Map<String, List<String>> left = new HashMap<>();
    private final Random chance;

    Notes(Random chance) {
        this.chance = chance;
    }

    /** A remark on the rep, or nothing where it had nothing to remark. */
    String on(Row row, boolean more) {
        List<String> topics =
                row.topics.stream().filter(Phrases.ON::containsKey).toList();
        if (topics.isEmpty()) {
            return "";
        }
        String topic = topics.get(chance.nextInt(topics.size()));
        String note = next(topic);
        if (more) {
            note += " " + next(row.won() ? "good" : row.get("result").equals("lost") ? "bad" : "so-so");
        }
        return filled(note, row);
    }

    private String next(String topic) {
        List<String> phrases = left.computeIfAbsent(topic, name -> new ArrayList<>());
        if (phrases.isEmpty()) {
            phrases.addAll(Phrases.ON.getOrDefault(topic, List.of()));
            Collections.shuffle(phrases, chance);
        }
        return phrases.remove(phrases.size() - 1);
    }

    private static String filled(String note, Row row) {
        return note.replace("{opponent}", row.get("opponent"))
                .replace("{side}", row.get("over"))
                .replace("{down}", row.get("down"))
                .replace("{distance}", row.get("distance"))
                .replace("{quarter}", row.get("quarter"));
    }
}
