package rushlight.report.practice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Weeks of practice in words, ready to be written down.
 *
 * @param id of the prospect; it makes the names of the sessions in a calendar
 * @param prospect his name
 * @param title what the weeks are called
 * @param decides the line that stands on everything: who decides
 * @param notices what else stands on every plan, in order
 * @param weeks the weeks
 * @param retest what film must show afterwards, a sentence each
 */
public record Practice(
        String id,
        String prospect,
        String title,
        String decides,
        List<String> notices,
        List<Week> weeks,
        List<String> retest) {
    /** A week, from 1, with its sessions in order. */
    public record Week(int week, List<Session> sessions) {
        public Week {
            sessions = List.copyOf(sessions);
        }
    }

    /**
     * One session.
     *
     * @param place its place in all weeks, from 1
     * @param day the day of the week in words
     * @param date the date; empty where no start was told
     * @param blocks what is done, in order; a session without one is a day off
     */
    public record Session(int place, String day, Optional<LocalDate> date, List<Block> blocks) {
        public Session {
            blocks = List.copyOf(blocks);
        }

        /** Minutes of all blocks. */
        public int minutes() {
            return blocks.stream().mapToInt(Block::minutes).sum();
        }

        /** Minutes of full contact of all blocks. */
        public int contactMinutes() {
            return blocks.stream().mapToInt(Block::contactMinutes).sum();
        }

        /** The cautions of its blocks, each once. */
        public List<String> cautions() {
            return blocks.stream()
                    .flatMap(block -> block.cautions().stream())
                    .distinct()
                    .toList();
        }
    }

    /**
     * One set of a drill, or a check.
     *
     * @param drill what it is called
     * @param skill what it trains
     * @param contact the contact level in words
     * @param minutes what it takes
     * @param contactMinutes the part of it that is full contact
     * @param reps reps of the set; 0 where nothing is said
     * @param criterion when it was good; empty where nothing is said
     * @param points what the coach says
     * @param cautions what is said against what can hurt
     */
    public record Block(
            String drill,
            String skill,
            String contact,
            int minutes,
            int contactMinutes,
            int reps,
            String criterion,
            List<String> points,
            List<String> cautions) {
        public Block {
            points = List.copyOf(points);
            cautions = List.copyOf(cautions);
        }
    }

    public Practice {
        notices = List.copyOf(notices);
        weeks = List.copyOf(weeks);
        retest = List.copyOf(retest);
        if (decides.isBlank()) {
            throw new IllegalArgumentException("No plan without the line that says who decides.");
        }
    }

    /** Every session on which something is done, in order. */
    public Stream<Session> sessions() {
        return weeks.stream()
                .flatMap(week -> week.sessions().stream())
                .filter(session -> !session.blocks().isEmpty());
    }
}
