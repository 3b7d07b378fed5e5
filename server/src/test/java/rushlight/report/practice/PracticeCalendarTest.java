package rushlight.report.practice;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.util.DateTimeComponents;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** What is written is read back by another library than the one that wrote it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PracticeCalendarTest {
    private static final Instant MADE = Instant.parse("2026-08-01T09:30:00Z");
    private static final Optional<LocalTime> HALF_PAST_THREE = Optional.of(LocalTime.of(15, 30));

    @Test
    void every_session_is_an_event_and_a_day_off_is_none() {
        ICalendar read = read(written(Weeks.two(), HALF_PAST_THREE));

        assertThat(read.getVersion()).isEqualTo(ICalVersion.V2_0);
        assertThat(read.getEvents())
                .extracting(event -> event.getUid().getValue())
                .containsExactly(
                        "tam-orrin-session-1@rushlight.example",
                        "tam-orrin-session-3@rushlight.example",
                        "tam-orrin-session-4@rushlight.example");
        assertThat(read.getEvents())
                .extracting(event -> event.getSummary().getValue())
                .containsExactly("Tam Orrin: 15 min", "Tam Orrin: 12 min, 6 of full contact", "Tam Orrin: 4 min");
        assertThat(read.getEvents())
                .allSatisfy(
                        event -> assertThat(event.getDateTimeStamp().getValue()).isEqualTo(Date.from(MADE)));
        assertThat(Biweekly.parse(written(Weeks.two(), HALF_PAST_THREE)).first().validate(ICalVersion.V2_0))
                .isEmpty();
    }

    @Test
    void times_are_local_and_belong_to_no_zone() {
        String text = written(Weeks.two(), HALF_PAST_THREE);
        VEvent first = read(text).getEvents().get(0);
        DateTimeComponents start = first.getDateStart().getValue().getRawComponents();
        DateTimeComponents end = first.getDateEnd().getValue().getRawComponents();

        assertThat(List.of(start.getYear(), start.getMonth(), start.getDate(), start.getHour(), start.getMinute()))
                .containsExactly(2026, 8, 3, 15, 30);
        assertThat(List.of(end.getHour(), end.getMinute())).containsExactly(15, 45);
        assertThat(start.isUtc()).isFalse();
        assertThat(first.getDateStart().getParameters().getTimezoneId()).isNull();
        assertThat(text).contains("DTSTART:20260803T153000\r\n").doesNotContain("TZID", "VTIMEZONE");
    }

    @Test
    void without_a_time_of_the_day_a_session_is_a_whole_day() {
        VEvent first = read(written(Weeks.two(), Optional.empty())).getEvents().get(0);

        assertThat(first.getDateStart().getValue().hasTime()).isFalse();
        assertThat(first.getDateStart().getValue().getRawComponents().getDate()).isEqualTo(3);
        assertThat(first.getDateEnd().getValue().getRawComponents().getDate()).isEqualTo(4);
    }

    @Test
    void the_description_has_the_drills_the_cautions_once_and_who_decides() {
        String said = read(written(Weeks.two(), HALF_PAST_THREE))
                .getEvents()
                .get(1)
                .getDescription()
                .getValue();

        assertThat(said)
                .startsWith(
                        "shield tackle fit at half speed (bag), 6 min, 8 reps, for shoulder-led tackling. Good: 8 of"
                                + " 8\n")
                .contains("Cautions:\n- " + Weeks.SHOULDER + "\n- Nobody goes to the ground.\n")
                .endsWith(Weeks.two().decides());
        assertThat(read(written(Weeks.two(), HALF_PAST_THREE))
                        .getEvents()
                        .get(0)
                        .getDescription()
                        .getValue())
                .contains("free; no step up the field, and the shoulders square \u2013 \u201cheavy\u201d hands.");
    }

    @Test
    void lines_are_folded_at_75_octets_and_end_as_the_standard_says() {
        String text = written(Weeks.two(), HALF_PAST_THREE);

        assertThat(text).endsWith("END:VCALENDAR\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(Arrays.asList(text.split("\r\n", -1)))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
    }

    @Test
    void the_same_weeks_are_written_the_same_and_weeks_without_dates_are_not() {
        assertThat(written(Weeks.two(), HALF_PAST_THREE)).isEqualTo(written(Weeks.two(), HALF_PAST_THREE));
        assertThat(new PracticeCalendar(Weeks.two(), HALF_PAST_THREE).hasDates())
                .isTrue();
        assertThat(new PracticeCalendar(Weeks.undated(), HALF_PAST_THREE).hasDates())
                .isFalse();
    }

    private static String written(Practice practice, Optional<LocalTime> at) {
        StringWriter out = new StringWriter();
        new PracticeCalendar(practice, at).write(out, MADE);
        return out.toString();
    }

    private static ICalendar read(String text) {
        return Biweekly.parse(text).first();
    }
}
