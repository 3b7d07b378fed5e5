package rushlight.ask;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;
import rushlight.film.Prospect;
import rushlight.findings.Judged;
import rushlight.index.Marked;
import rushlight.knowledge.Pairing;

/** One answer to a question, with what it rests on. */
public sealed interface Answer {
    /** A name that no other answer to the question has. */
    String id();

    /** What to call it. */
    String label();

    /** What it was ranked by; the answer before it has no less. */
    double score();

    /** What a person reads. */
    String sentence();

    /** The reps that say it; empty where it is the book that says it. */
    default List<SeenRep> reps() {
        return List.of();
    }

    /** What was counted; empty where nothing was. */
    default Optional<Count> count() {
        return Optional.empty();
    }

    /**
     * A count of reps.
     *
     * @param rate events and opportunities
     * @param shown its likely range: the 90 % Jeffreys interval
     * @param thin whether there are fewer opportunities than any judgment needs
     */
    record Count(Rate rate, Interval shown, boolean thin) {}

    /** An answer that is a player, once each. */
    sealed interface OfPlayer extends Answer {
        /** Who. */
        Prospect prospect();

        @Override
        default String id() {
            return prospect().id();
        }

        @Override
        default String label() {
            return prospect().name();
        }
    }

    /**
     * A player with how often it happened.
     *
     * @param found the count, and the rank it gives
     */
    record Player(
            Prospect prospect, Count found, double score, String sentence, Optional<Judged> judged, List<SeenRep> reps)
            implements OfPlayer {
        public Player {
            reps = List.copyOf(reps);
        }

        @Override
        public Optional<Count> count() {
            return Optional.of(found);
        }
    }

    /** One rep. */
    record Rep(SeenRep rep, double score, String sentence) implements Answer {
        @Override
        public String id() {
            return rep.prospect().id() + "/" + rep.game() + "/" + rep.sighting().rep();
        }

        @Override
        public String label() {
            return rep.prospect().name() + ", " + rep.sighting().game() + ", "
                    + rep.sighting().rep();
        }

        @Override
        public List<SeenRep> reps() {
            return List.of(rep);
        }
    }

    /**
     * A term of the book.
     *
     * @param slug its name that never changes
     * @param classes what it is, such as {@code RushMove}
     * @param about what it is told to be, with the words that found it
     * @param count how it went on film, where reps were asked about
     */
    record Term(
            String slug,
            String label,
            Set<String> classes,
            double score,
            String sentence,
            Marked about,
            Optional<Count> count)
            implements Answer {
        public Term {
            classes = Set.copyOf(classes);
        }

        @Override
        public String id() {
            return slug;
        }
    }

    /**
     * What is taught against an answer of the blocker.
     *
     * @param pairing what the book says
     * @param requires what must be owned before it
     * @param count how often it was thrown, and how often that won
     */
    record Counter(
            String id,
            String label,
            double score,
            String sentence,
            Pairing pairing,
            String trigger,
            List<String> requires,
            Optional<Count> count)
            implements Answer {
        public Counter {
            requires = List.copyOf(requires);
        }
    }

    /**
     * Something to train with.
     *
     * @param slug its name that never changes
     * @param trains which of the skills asked for it trains, the first to train first
     * @param cautions what to mind, each a sentence
     */
    record Drill(
            String slug,
            String label,
            double score,
            String sentence,
            String about,
            List<String> trains,
            List<String> cautions)
            implements Answer {
        public Drill {
            trains = List.copyOf(trains);
            cautions = List.copyOf(cautions);
        }

        @Override
        public String id() {
            return slug;
        }
    }

    /** What film says of a player. */
    record Finding(Prospect prospect, Judged judged, Count found, double score, List<SeenRep> reps) implements Answer {
        public Finding {
            reps = List.copyOf(reps);
        }

        @Override
        public String id() {
            return prospect.id() + "/" + judged.finding().slug();
        }

        @Override
        public String label() {
            return prospect.name() + ": " + judged.finding().label();
        }

        @Override
        public String sentence() {
            return judged.sentence();
        }

        @Override
        public Optional<Count> count() {
            return Optional.of(found);
        }
    }

    /**
     * One side of a comparison.
     *
     * @param rows what is compared, with the counts of each
     * @param gap how far the first row lies over the second, and its likely range; empty where one of them has no chance
     */
    record Compared(
            Prospect prospect,
            Count found,
            double score,
            String sentence,
            List<Row> rows,
            Optional<Gap> gap,
            List<SeenRep> reps)
            implements OfPlayer {
        /** One row of a comparison. */
        public record Row(String name, Count count) {}

        /** A difference of two shares, -1 to 1, with its 90 % Newcombe interval. */
        public record Gap(double observed, Interval shown, double probability) {}

        public Compared {
            rows = List.copyOf(rows);
            reps = List.copyOf(reps);
        }

        @Override
        public Optional<Count> count() {
            return Optional.of(found);
        }
    }

    /**
     * A player like the one asked about.
     *
     * @param score likeness, 1 for the same and 0 for nothing in common
     * @param alike what both do more than the league, in words
     * @param apart where they differ most, in words
     */
    record Alike(Prospect prospect, double score, String sentence, List<String> alike, List<String> apart)
            implements OfPlayer {
        public Alike {
            alike = List.copyOf(alike);
            apart = List.copyOf(apart);
        }
    }
}
