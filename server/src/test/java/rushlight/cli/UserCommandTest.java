package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.accounts.Accounts;
import rushlight.accounts.Role;

/** Whoever runs the server says who may come in. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class UserCommandTest {
    @TempDir
    private Path folder;

    @Test
    void an_account_is_made_changed_and_taken_away() {
        assertThat(typing("four words in a row", "add", "Kim Orr", "--role", "administrator", "--stdin")
                        .out())
                .contains("Kim Orr is administrator.");
        assertThat(Accounts.in(folder).signIn("Kim Orr", "four words in a row".toCharArray()))
                .isPresent();
        assertThat(said("list").out()).startsWith("Kim Orr (administrator), since ");
        assertThat(said("role", "Kim Orr", "reader").code()).isZero();
        assertThat(typing("other words in a row", "password", "Kim Orr", "--stdin")
                        .code())
                .isZero();
        assertThat(Accounts.in(folder).signIn("Kim Orr", "other words in a row".toCharArray()))
                .map(user -> user.role())
                .contains(Role.READER);

        String secret = said("token", "Kim Orr", "--for", "nightly export", "--days", "90")
                .out()
                .lines()
                .findFirst()
                .orElseThrow();
        assertThat(Accounts.in(folder).byToken(secret)).isPresent();
        String listed = said("list", "--tokens").out();
        assertThat(listed).contains("nightly export").doesNotContain(secret);
        String id = listed.replaceAll("(?s).*token (\\w+):.*", "$1");
        assertThat(said("revoke", "Kim Orr", id).code()).isZero();
        assertThat(Accounts.in(folder).byToken(secret)).isEmpty();

        assertThat(said("remove", "Kim Orr").out()).contains("It was the last");
        assertThat(folder.resolve("audit.jsonl"))
                .content()
                .contains("rushlight user add", "rushlight user remove")
                .doesNotContain("four words");
    }

    @Test
    void what_will_not_do_is_told_and_changes_nothing() {
        assertThat(typing("short", "add", "Kim Orr", "--role", "reader", "--stdin")
                        .err())
                .contains("10 to 200 characters");
        assertThat(typing("", "add", "Kim Orr", "--role", "reader", "--stdin").code())
                .isNotZero();
        assertThat(said("add", "Kim Orr", "--role", "owner").err())
                .contains("A role is one of reader, evaluator, administrator");
        assertThat(said("add", "Kim Orr", "--role", "reader", "--team", "harrow-vale")
                        .err())
                .contains("--teams");
        assertThat(said("remove", "Nobody").err()).contains("Nobody here is called \"Nobody\"");
        assertThat(said("token", "Nobody", "--for", "x").code()).isEqualTo(1);
        assertThat(said("add", "Kim Orr", "--role", "reader", "--password", "x").code())
                .isEqualTo(2);
        assertThat(said().code()).isEqualTo(2);
        assertThat(Accounts.in(folder).any()).isFalse();
    }

    @Test
    void a_team_gets_its_folder_with_its_first_account() {
        Said added = typing(
                "four words in a row",
                "add",
                "Kim Orr",
                "--role",
                "reader",
                "--stdin",
                "--teams",
                folder.toString(),
                "--team",
                "harrow-vale");

        assertThat(added.out()).contains("Kim Orr is reader of harrow-vale.");
        assertThat(Files.isDirectory(folder.resolve("harrow-vale"))).isTrue();
        Said outside = typing(
                "four words in a row",
                "add",
                "Lee Arden",
                "--role",
                "reader",
                "--stdin",
                "--teams",
                folder.toString(),
                "--team",
                "../other");
        assertThat(outside.err()).contains("will not do");
        assertThat(Files.exists(folder.resolveSibling("other"))).isFalse();
    }

    @Test
    void without_accounts_others_are_not_served_and_the_way_out_is_told() {
        for (String[] how :
                new String[][] {{"--bind", "0.0.0.0"}, {"--bind", "192.0.2.7", "--behind-proxy"}, {"--behind-proxy"}}) {
            String[] words = new String[3 + how.length];
            System.arraycopy(new String[] {"serve", "--data", folder.toString()}, 0, words, 0, 3);
            System.arraycopy(how, 0, words, 3, how.length);
            Said said = Said.to(words).isPolite();
            assertThat(said.code()).isEqualTo(2);
            assertThat(said.err()).contains("rushlight user add NAME --role administrator");
        }
        typing("four words in a row", "add", "Kim Orr", "--role", "reader", "--stdin");
        assertThat(Said.to("serve", "--data", folder.toString(), "--bind", "0.0.0.0")
                        .err())
                .contains("--certificate FILE.p12");
    }

    private Said typing(String line, String... words) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream((line + "\n").getBytes(StandardCharsets.UTF_8)));
        try {
            return said(words);
        } finally {
            System.setIn(before);
        }
    }

    private Said said(String... words) {
        boolean named = java.util.List.of(words).contains("--teams") || words.length == 0;
        String[] all = new String[words.length + (named ? 1 : 3)];
        all[0] = "user";
        System.arraycopy(words, 0, all, 1, words.length);
        if (!named) {
            all[words.length + 1] = "--data";
            all[words.length + 2] = folder.toString();
        }
        return Said.to(all).isPolite();
    }
}
