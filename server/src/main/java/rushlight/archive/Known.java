package rushlight.archive;

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
        if (known.size() + log.readings().size() > ROOM) {
            known.clear();
        }
        List<Asked> asked = log.readings().stream()
                .map(reading -> new Asked(reading, log.charted()))
                .toList();
        List<Asked> strangers =
                asked.stream().filter(one -> !known.containsKey(one)).toList();
        List<RepFacts> fresh =
                book.rules().classify(strangers.stream().map(Asked::reading).toList(), log.charted());
        for (int i = 0; i < fresh.size(); i++) {
            known.put(strangers.get(i), fresh.get(i));
        }
        return new LogFacts(log, asked.stream().map(known::get).toList());
    }
}
