package rushlight.report.practice;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Sessions as iCalendar (RFC 5545), one event each. Times are local and belong to no zone: a session at half past three is at
 * half past three wherever the phone is. A session keeps its UID when the weeks are made anew, so that a calendar replaces it.
 */
public final class PracticeCalendar {
    private static final String HOST = "@rushlight.example";
    private static final int LONGEST = 75;

    private final Practice practice;
    private final Optional<LocalTime> at;

    /**
     * Of these weeks.
     *
     * @param at when a session begins; empty makes each one a whole day's event
     */
    public PracticeCalendar(Practice practice, Optional<LocalTime> at) {
        this.practice = practice;
        this.at = at;
    }

    /** Whether every session has a date; without one there is nothing to put into a calendar. */
    public boolean hasDates() {
        return practice.sessions().findAny().isPresent()
                && practice.sessions().allMatch(session -> session.date().isPresent());
    }

    /**
     * Writes it.
     *
     * @param made when the plan was made
     */
    public void write(Writer out, Instant made) {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Rushlight//Practice//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        practice.sessions().forEach(session -> calendar.add(event(session, made)));
        try {
            StringWriter text = new StringWriter();
            new CalendarOutputter().output(calendar, text);
            out.write(folded(text.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lines of at most 75 octets: the library folds by letters, of which some are two or three octets long. */
    private static String folded(String written) {
        StringBuilder text = new StringBuilder(written.length());
        int octets = 0;
        for (int letter : written.replace("\r\n ", "").codePoints().toArray()) {
            int more = Character.toString(letter).getBytes(StandardCharsets.UTF_8).length;
            if (letter == '\r' || letter == '\n') {
                octets = 0;
            } else if (octets + more > LONGEST) {
                text.append("\r\n ");
                octets = 1 + more;
            } else {
                octets += more;
            }
            text.appendCodePoint(letter);
        }
        return text.toString();
    }

    private VEvent event(Practice.Session session, Instant made) {
        LocalDate day = session.date().orElseThrow();
        VEvent event = new VEvent(false);
        event.add(new Uid(practice.id() + "-session-" + session.place() + HOST));
        event.add(new DtStamp(made));
        at.ifPresentOrElse(
                time -> {
                    event.add(new DtStart<>(day.atTime(time)));
                    event.add(new DtEnd<>(day.atTime(time).plus(Duration.ofMinutes(Math.max(1, session.minutes())))));
                },
                () -> {
                    event.add(new DtStart<>(day));
                    event.add(new DtEnd<>(day.plusDays(1)));
                });
        event.add(new Summary(practice.prospect() + ": " + session.minutes() + " min"
                + (session.contactMinutes() > 0 ? ", " + session.contactMinutes() + " of full contact" : "")));
        event.add(new Description(description(session)));
        return event;
    }

    private String description(Practice.Session session) {
        String blocks = session.blocks().stream().map(PracticeCalendar::block).collect(Collectors.joining("\n"));
        String cautions = session.cautions().isEmpty()
                ? ""
                : "\n\nCautions:\n"
                        + session.cautions().stream().map(text -> "- " + text).collect(Collectors.joining("\n"));
        return blocks + cautions + "\n\n" + practice.decides();
    }

    /** "Mirror dodge (air), 6 min, 8 reps, for pad level. Good: 6 of 8." */
    static String block(Practice.Block block) {
        return block.drill() + " (" + block.contact() + "), " + block.minutes() + " min"
                + (block.reps() > 0 ? ", " + block.reps() + (block.reps() == 1 ? " rep" : " reps") : "") + ", for "
                + block.skill() + "." + (block.criterion().isBlank() ? "" : " Good: " + block.criterion());
    }
}
