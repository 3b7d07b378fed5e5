package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.accounts.Accounts;
import rushlight.accounts.AccountsException;
import rushlight.accounts.Role;
import rushlight.accounts.Token;
import rushlight.accounts.User;

/** Says who may come in when the film is served to others. */
@Command(
        name = "user",
        mixinStandardHelpOptions = true,
        description = {
            "Makes and changes the accounts of people who use one server together.",
            "",
            "As soon as there is one, everybody signs in. A reader looks, asks and prints; an evaluator also reads film;"
                    + " an administrator also sees who did what. Passwords are typed, or read from standard input, never"
                    + " given as words of a command. A running server knows of a change at once.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight user add \"Kim Orr\" --role administrator",
            "  rushlight user add \"Lee Arden\" --role evaluator --teams /srv/film --team harrow-vale",
            "  rushlight user token \"Kim Orr\" --for \"nightly export\" --days 90",
            "  rushlight user role \"Lee Arden\" reader"
        })
final class UserCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "Say what to do: add, list, remove, role, password, token or revoke.");
    }

    @Command(mixinStandardHelpOptions = true, description = "Makes an account.")
    int add(
            @Mixin AccountsFolder where,
            @Parameters(paramLabel = "NAME", description = "name as it is shown, and typed to sign in") String name,
            @Option(
                            names = "--role",
                            paramLabel = "ROLE",
                            required = true,
                            description = "reader, evaluator or administrator")
                    String role,
            @Option(names = "--team", paramLabel = "TEAM", description = "whose film; with --teams alone")
                    Optional<String> team,
            @Option(names = "--stdin", description = "read the password from standard input") boolean stdin) {
        Role wanted = role(role);
        if (where.isOfTeams() != team.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(),
                    where.isOfTeams()
                            ? "Say with --team whose film it is."
                            : "A --team is in a folder of teams; name that with --teams.");
        }
        return doing(where, "add", accounts -> {
            char[] password = new Passwords(spec).fresh(stdin);
            team.filter(Accounts::isTeam).ifPresent(where::make);
            accounts.add(name, team.orElse(""), wanted, password);
            say(name + " is " + wanted.word() + team.map(t -> " of " + t).orElse("") + ".");
        });
    }

    @Command(mixinStandardHelpOptions = true, description = "Shows who has an account.")
    int list(
            @Mixin AccountsFolder where,
            @Option(names = "--tokens", description = "with their tokens") boolean tokens) {
        List<User> users = Accounts.in(where.folder()).users();
        if (users.isEmpty()) {
            say("Nobody has an account, so the film is served to this machine alone.");
        }
        for (User user : users) {
            say(user + ", since " + user.made().substring(0, 10));
            for (Token token : tokens ? user.tokens() : List.<Token>of()) {
                say("    token " + token.id() + ": " + token.what() + ", until "
                        + token.end()
                                .map(end -> end.toString().substring(0, 10))
                                .orElse("revoked"));
            }
        }
        return 0;
    }

    @Command(mixinStandardHelpOptions = true, description = "Takes an account away; its sessions and tokens end.")
    int remove(@Mixin AccountsFolder where, @Parameters(paramLabel = "NAME") String name) {
        return doing(where, "remove", accounts -> {
            accounts.remove(name);
            say(name + " has no account any more."
                    + (accounts.any() ? "" : " It was the last: a server for this machine alone asks nobody now."));
        });
    }

    @Command(mixinStandardHelpOptions = true, description = "Gives somebody another role.")
    int role(
            @Mixin AccountsFolder where,
            @Parameters(paramLabel = "NAME") String name,
            @Parameters(paramLabel = "ROLE") String role) {
        Role wanted = role(role);
        return doing(where, "role", accounts -> {
            accounts.role(name, wanted);
            say(name + " is " + wanted.word() + " now.");
        });
    }

    @Command(mixinStandardHelpOptions = true, description = "Gives somebody another password; his sessions end.")
    int password(
            @Mixin AccountsFolder where,
            @Parameters(paramLabel = "NAME") String name,
            @Option(names = "--stdin", description = "read the password from standard input") boolean stdin) {
        return doing(where, "password", accounts -> {
            accounts.password(accounts.known(name).name(), new Passwords(spec).fresh(stdin));
            say(name + " has another password; sessions begun with the old one are over.");
        });
    }

    @Command(mixinStandardHelpOptions = true, description = "Makes a token for a program and shows it, once.")
    int token(
            @Mixin AccountsFolder where,
            @Parameters(paramLabel = "NAME") String name,
            @Option(names = "--for", paramLabel = "WORDS", required = true, description = "what it is for") String what,
            @Option(names = "--days", paramLabel = "NUMBER", description = "how long it holds (until it is revoked)")
                    Optional<Integer> days) {
        if (days.filter(number -> number < 1).isPresent()) {
            throw new ParameterException(spec.commandLine(), "--days is a whole number from 1.");
        }
        return doing(where, "token", accounts -> {
            say(accounts.token(name, what, days.map(Duration::ofDays)));
            say(
                    "Keep it where only that program reads it; nobody can show it again. It is sent as Authorization: Bearer.");
        });
    }

    @Command(mixinStandardHelpOptions = true, description = "Takes a token back.")
    int revoke(
            @Mixin AccountsFolder where,
            @Parameters(paramLabel = "NAME") String name,
            @Parameters(paramLabel = "TOKEN") String token) {
        return doing(where, "revoke", accounts -> {
            accounts.revoke(name, token);
            say("Token " + token + " of " + name + " is worth nothing now.");
        });
    }

    /** Does it, tells what was wrong with it, and writes it down. */
    private int doing(AccountsFolder where, String what, Consumer<Accounts> deed) {
        if (!Files.isDirectory(where.folder())) {
            spec.commandLine()
                    .getErr()
                    .println("There is no folder " + where.folder() + ". Import a film log first, or make it.");
            return 1;
        }
        try {
            deed.accept(Accounts.in(where.folder()));
            where.record("rushlight user " + what);
            return 0;
        } catch (AccountsException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return 1;
        }
    }

    private Role role(String word) {
        return Role.of(word)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "A role is one of " + Role.words() + "; not \"" + word + "\"."));
    }

    private void say(String sentence) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(sentence);
        out.flush();
    }
}
