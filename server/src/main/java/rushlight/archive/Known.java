package rushlight.archive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.situation.LogFacts;

/**
 * The readings that were classified last: whoever changes one rep of a log leaves all others as they were, and what a book
 * concludes of a reading hangs on that reading alone. Safe for many threads.
 */
final class Known {
    /** Readings; a log has some thirty. */
    private static final int ROOM = 3_000;

    private final Book book;
    private final Map<Asked, RepFacts> known = new HashMap<>();

    private record Asked(Reading reading, Set<String> charted) {}

    Known(Book book) {
        this.book = book;
    }

    /** What the book concludes of a log. */
    synchronized LogFacts classified(Log log) {
        List<Reading> strangers = log.readings().stream()
                .filter(reading -> !known.containsKey(new Asked(reading, log.charted())))
                .toList();
        List<RepFacts> fresh = book.rules().classify(strangers, log.charted());
        if (known.size() + fresh.size() > ROOM) {
            known.clear();
        }
        for (int i = 0; i < fresh.size(); i++) {
            known.put(new Asked(strangers.get(i), log.charted()), fresh.get(i));
        }
        List<RepFacts> facts = new ArrayList<>();
        for (Reading reading : log.readings()) {
            RepFacts its = known.get(new Asked(reading, log.charted()));
            facts.add(its == null ? book.rules().classify(reading, log.charted()) : its);
        }
        return new LogFacts(log, facts);
    }
}
