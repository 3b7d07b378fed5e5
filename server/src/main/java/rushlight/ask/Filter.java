package rushlight.ask;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import rushlight.evidence.Verdict;
import rushlight.film.Prospect;
import rushlight.findings.Polarity;
import rushlight.findings.Severity;
import rushlight.situation.Situation;

/** What a question asks beside the reps it counts: of whom, from which games, how many, how sure. */
public sealed interface Filter {
    /**
     * Only these players; in a comparison, those who stand side by side; for likeness, the one the others are like.
     *
     * @param ids as in the film logs, in the order of the question
     */
    record Prospects(List<String> ids) implements Filter {
        public Prospects {
            ids = List.copyOf(ids);
        }
    }

    /** Only these games, by their ids. */
    record Games(List<String> ids) implements Filter {
        public Games {
            ids = List.copyOf(ids);
        }
    }

    /** Only against these opponents, as the logs write them. */
    record Opponents(List<String> names) implements Filter {
        public Opponents {
            names = List.copyOf(names);
        }
    }

    /** What a list of prospects says of the man himself, whatever he did. */
    sealed interface OfMan extends Filter permits Teams, ClassYears, ManSize {
        /** Whether he is such a man; one of whom the list says nothing is not. */
        boolean fits(Prospect prospect);
    }

    /** Only players of these teams, as the list of prospects writes them. */
    record Teams(List<String> names) implements OfMan {
        public Teams {
            names = List.copyOf(names);
        }

        @Override
        public boolean fits(Prospect prospect) {
            return names.contains(prospect.team());
        }
    }

    /** Only players of these class years, as the list of prospects writes them. */
    record ClassYears(List<String> names) implements OfMan {
        public ClassYears {
            names = List.copyOf(names);
        }

        @Override
        public boolean fits(Prospect prospect) {
            return names.contains(prospect.classYear());
        }
    }

    /** Only at these levels of play, as the logs write them. */
    record Levels(List<String> names) implements Filter {
        public Levels {
            names = List.copyOf(names);
        }
    }

    /** What is counted for a minimum. */
    enum Counted {
        OPPORTUNITIES,
        EVENTS;

        /** The word as it is written in answers. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Only who has at least so many. */
    record AtLeast(Counted counted, int number) implements Filter {}

    /** At most so many answers. */
    record Top(int number) implements Filter {}

    /** Whether the most or the least stand first. */
    enum Direction {
        MOST,
        LEAST;

        /** The word as it is written in answers. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Which end stands first; without it, the most. */
    record Order(Direction direction) implements Filter {}

    /** Only findings with one of these verdicts. */
    record Verdicts(Set<Verdict> verdicts) implements Filter {
        public Verdicts {
            verdicts = Set.copyOf(verdicts);
        }
    }

    /** Only these findings, any of them, by slug. */
    record Findings(List<String> slugs) implements Filter {
        public Findings {
            slugs = List.copyOf(slugs);
        }
    }

    /** Only findings that say such things. */
    record Polarities(Set<Polarity> polarities) implements Filter {
        public Polarities {
            polarities = Set.copyOf(polarities);
        }
    }

    /** Only findings that matter so much. */
    record Severities(Set<Severity> severities) implements Filter {
        public Severities {
            severities = Set.copyOf(severities);
        }
    }

    /** Only reps whose note has these words. */
    record Note(String words) implements Filter {}

    /** How terms of the book stand to what is asked for. */
    enum Relation {
        /** The very terms that are named. */
        ITSELF,
        /** The move to be answered: for counters. */
        MOVE,
        /** What the blocker shows: for counters. */
        TRIGGER,
        /** Terms that beat one of these. */
        BEATS,
        /** Terms that one of these beats. */
        BEATEN_BY,
        /** Terms that these need first. */
        NEEDED_FOR,
        /** Terms that need one of these. */
        REQUIRES,
        /** Terms that set up one of these. */
        SETS_UP,
        /** Terms that one of these sets up. */
        SET_UP_BY,
        /** Terms that attack one of these landmarks. */
        ATTACKS,
        /** Terms narrower than one of these. */
        KIND_OF,
        /** Terms worked from one of these alignments. */
        FROM,
        /** Faults that go with one of these terms. */
        FAULT_OF,
        /** Answers that are right, block and duty being among these. */
        RIGHT_FOR,
        /** Drills that train one of these. */
        TRAINS;

        /** The word as it is written in answers, such as {@code set-up-by}. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * What terms of the book are asked for; where there are several, all hold.
     *
     * @param relation how they stand to the concepts
     * @param slugs the concepts, any of them; a label that could mean several leaves several here
     */
    record About(Relation relation, List<String> slugs) implements Filter {
        public About {
            slugs = List.copyOf(slugs);
        }
    }

    /** Only terms of one of these classes of the book, such as {@code RushMove}. */
    record Kinds(Set<String> classes) implements Filter {
        public Kinds {
            classes = Set.copyOf(classes);
        }
    }

    /**
     * What he does on the same reps, one way or another: how often each is wanted.
     *
     * @param ways the ways, in the order of the question
     */
    record Ways(List<Way> ways) implements Filter {
        /** One thing he may do, and what it is called. */
        public record Way(Situation event, String name) {}

        public Ways {
            ways = List.copyOf(ways);
        }
    }

    /**
     * Two situations to compare: each refines the opportunity.
     *
     * @param first the side that stands first in the question
     * @param firstName what it is called
     * @param second the other side
     * @param secondName what it is called
     */
    record Sides(Situation first, String firstName, Situation second, String secondName) implements Filter {}
}
