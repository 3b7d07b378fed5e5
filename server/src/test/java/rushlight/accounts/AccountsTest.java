package rushlight.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may come in, and what is kept of that. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AccountsTest {
    private static final int QUICK = 4;
    private static final char[] PASSWORD = "four words in a row".toCharArray();

    private final Watch watch = new Watch();

    @TempDir
    private Path folder;

    @Test
    void a_password_is_known_again_and_neither_it_nor_a_token_stands_in_the_file() throws IOException {
        Accounts accounts = accounts();
        accounts.add("Kim Orr", "", Role.EVALUATOR, PASSWORD);
        String secret = accounts.token("kim orr", "nightly export", Optional.empty());

        assertThat(accounts.signIn("KIM  ORR", PASSWORD)).map(User::name).contains("Kim Orr");
        assertThat(accounts.signIn("Kim Orr", "four words in a hat".toCharArray()))
                .isEmpty();
        assertThat(accounts.signIn("Lee Arden", PASSWORD)).isEmpty();
        assertThat(accounts.byToken(secret)).map(User::role).contains(Role.EVALUATOR);
        assertThat(accounts.byToken(secret + "x")).isEmpty();
        Path file = folder.resolve("accounts.json");
        assertThat(file)
                .content()
                .doesNotContain("four words")
                .doesNotContain(secret)
                .contains("$2a$");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(accounts.users().toString()).isEqualTo("[Kim Orr (evaluator)]");
    }

    @Test
    void a_password_beyond_what_bcrypt_reads_counts_to_its_last_letter() {
        Accounts accounts = accounts();
        String seventyTwo = "abcdefgh ".repeat(8);
        accounts.add("Kim Orr", "", Role.READER, (seventyTwo + "one end").toCharArray());

        assertThat(accounts.signIn("Kim Orr", (seventyTwo + "one end").toCharArray()))
                .isPresent();
        assertThat(accounts.signIn("Kim Orr", (seventyTwo + "another").toCharArray()))
                .isEmpty();
    }

    @Test
    void another_program_sees_a_change_at_once() {
        Accounts server = accounts();
        assertThat(server.any()).isFalse();

        accounts().add("Kim Orr", "", Role.READER, PASSWORD);
        assertThat(server.user("Kim Orr")).map(User::role).contains(Role.READER);
        accounts().role("Kim Orr", Role.ADMINISTRATOR);
        assertThat(server.user("Kim Orr")).map(User::role).contains(Role.ADMINISTRATOR);
        accounts().remove("Kim Orr");
        assertThat(server.any()).isFalse();
    }

    @Test
    void a_spoilt_file_lets_nobody_in() throws IOException {
        Accounts accounts = accounts();
        accounts.add("Kim Orr", "", Role.READER, PASSWORD);
        Files.writeString(folder.resolve("accounts.json"), "{\"format\": 1, \"users\": [");

        assertThatThrownBy(accounts::any)
                .isInstanceOf(AccountsException.class)
                .hasMessageContaining("nobody is let in");
        Files.writeString(folder.resolve("accounts.json"), "{\"format\": 2, \"users\": []}");
        assertThatThrownBy(accounts::any).hasMessageContaining("newer Rushlight");
    }

    @ParameterizedTest
    @CsvSource({
        "Kim Orr,       four words in a row, has an account already",
        "Lee Arden,     short,               has 10 to 200 characters",
        "Lee Arden,     lee arden lee arden, too easy to guess",
        "Lee Arden,     aaaaaaaaaaaaaa,      too easy to guess",
        "../etc,        four words in a row, will not do",
        "<b>Lee</b>,    four words in a row, will not do"
    })
    void what_will_not_do_is_told(String name, String password, String told) {
        Accounts accounts = accounts();
        accounts.add("Kim Orr", "", Role.READER, PASSWORD);

        assertThatThrownBy(() -> accounts.add(name, "", Role.READER, password.toCharArray()))
                .isInstanceOf(AccountsException.class)
                .hasMessageContaining(told);
        assertThat(accounts.users()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"../harrow-vale", "harrow/vale", "Harrow", "-x", ".", "''"})
    void a_team_leads_out_of_no_folder(String team) {
        assertThat(Accounts.isTeam(team)).isFalse();
        assertThat(Accounts.isTeam("harrow-vale")).isTrue();
    }

    @Test
    void a_token_ends_on_its_day_and_when_it_is_taken_back() {
        Accounts accounts = accounts();
        accounts.add("Kim Orr", "", Role.READER, PASSWORD);
        String short_lived = accounts.token("Kim Orr", "a week", Optional.of(Duration.ofDays(7)));
        String lasting = accounts.token("Kim Orr", "for good", Optional.empty());

        watch.pass(Duration.ofDays(7).plusSeconds(1));
        assertThat(accounts.byToken(short_lived)).isEmpty();
        assertThat(accounts.byToken(lasting)).isPresent();
        accounts.revoke("Kim Orr", accounts.known("Kim Orr").tokens().get(1).id());
        assertThat(accounts.byToken(lasting)).isEmpty();
    }

    @Test
    void a_session_ends_by_rest_by_age_and_with_the_password_it_was_begun_with() {
        Accounts accounts = accounts();
        accounts.add("Kim Orr", "", Role.READER, PASSWORD);
        Sessions sessions = new Sessions(accounts, watch);
        User kim = accounts.known("Kim Orr");

        String rested = sessions.begin(kim);
        watch.pass(Sessions.IDLE.minusMinutes(1));
        assertThat(sessions.user(rested)).isPresent();
        watch.pass(Sessions.IDLE);
        assertThat(sessions.user(rested)).isEmpty();

        String busy = sessions.begin(kim);
        for (int hour = 1; hour < Sessions.WHOLE.toHours(); hour++) {
            watch.pass(Duration.ofHours(1));
            assertThat(sessions.user(busy)).isPresent();
        }
        watch.pass(Duration.ofHours(1));
        assertThat(sessions.user(busy)).isEmpty();

        String old = sessions.begin(kim);
        accounts.role("Kim Orr", Role.EVALUATOR);
        assertThat(sessions.user(old)).map(User::role).contains(Role.EVALUATOR);
        accounts.password("Kim Orr", "other words in a row".toCharArray());
        assertThat(sessions.user(old)).isEmpty();

        String ended = sessions.begin(accounts.known("Kim Orr"));
        sessions.end(ended);
        assertThat(sessions.user(ended)).isEmpty();
    }

    @Test
    void the_record_is_only_added_to_and_a_torn_line_hides_no_other() throws IOException {
        AuditLog log = AuditLog.in(folder);
        assertThat(log.latest(10)).isEmpty();
        log.add("Kim Orr", "session", "PUT /api/reps/{prospect}/{game}/{rep}", 200, "10.0.0.7");
        Path file = folder.resolve("audit.jsonl");
        Files.writeString(file, Files.readString(file) + "{\"when\": \"2025-\n");
        AuditLog.in(folder).add("kim", "command", "rushlight user add", 200, null);

        assertThat(log.latest(10))
                .extracting(AuditLog.Entry::what)
                .containsExactly("rushlight user add", "PUT /api/reps/{prospect}/{game}/{rep}");
        assertThat(log.latest(1)).hasSize(1);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }

    private Accounts accounts() {
        return Accounts.in(folder, QUICK, watch);
    }

    /** A clock one can push. */
    private static final class Watch extends Clock {
        private Instant now = Instant.parse("2025-10-04T18:00:00Z");

        void pass(Duration time) {
            now = now.plus(time);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
