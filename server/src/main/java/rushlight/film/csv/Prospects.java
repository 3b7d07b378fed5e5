package rushlight.film.csv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Prospect;

/** Whose film a row is: a listed prospect by his id or name, else a new one by his name. */
final class Prospects {
    private final Names names = new Names(Columns.PROSPECT);
    private final Map<String, Prospect> byId = new HashMap<>();
    private final Map<String, List<Prospect>> byName = new HashMap<>();

    Prospects(List<Prospect> known) {
        RowNotes list = new RowNotes(0, new Suggestions());
        for (Prospect prospect : known) {
            byId.put(prospect.id(), prospect);
            byName.computeIfAbsent(prospect.name(), n -> new ArrayList<>(1)).add(prospect);
            names.claim(prospect.id(), prospect.name(), list);
        }
    }

    Optional<Prospect> find(String text, RowNotes notes) {
        Prospect listed = byId.get(text);
        if (listed != null) {
            return Optional.of(listed);
        }
        List<Prospect> named = byName.getOrDefault(text, List.of());
        if (named.size() > 1) {
            List<String> ids = named.stream().map(Prospect::id).toList();
            notes.fault(
                    Columns.PROSPECT,
                    text,
                    Fault.Code.AMBIGUOUS_LABEL,
                    "more than one listed prospect is called \"" + text + "\"; write his id: " + Sentences.or(ids)
                            + ".",
                    ids);
            return Optional.empty();
        }
        if (named.size() == 1) {
            return Optional.of(named.get(0));
        }
        return names.address(text, notes).map(slug -> {
            Prospect prospect = Prospect.named(slug, text);
            byName.put(text, List.of(prospect));
            return prospect;
        });
    }
}
