package rushlight.accounts;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * Who may come in. They stand in a file of their own beside the film, never in the store; a change by the command line holds
 * for a running server at its next request.
 */
public final class Accounts {
    /** The fewest characters of a password. */
    public static final int SHORTEST = 10;

    private static final int LONGEST = 200;
    private static final int COST = 12;
    private static final String PREFIX = "rl_";
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} .'\u2019_-]{0,59}");

    /** A team is a folder: a word that leads nowhere else. */
    private static final Pattern TEAM = Pattern.compile("[a-z0-9](?:[a-z0-9-]{0,38}[a-z0-9])?");

    private final AccountsFile file;
    private final Secrets secrets;
    private final Clock clock;

    private Accounts(Path folder, int cost, Clock clock) {
        this.file = new AccountsFile(folder);
        this.secrets = new Secrets(cost);
        this.clock = clock;
    }

    /** Those of a folder; there need not be any. */
    public static Accounts in(Path folder) {
        return in(folder, COST, Clock.systemUTC());
    }

    /**
     * The same with another clock and other hashing.
     *
     * @param cost the logarithm of bcrypt's rounds, 4 to 31; 12 where people are kept out
     */
    public static Accounts in(Path folder, int cost, Clock clock) {
        return new Accounts(folder, cost, clock);
    }

    /** Everybody, in order of their names. */
    public List<User> users() {
        return file.users().stream()
                .sorted((a, b) -> User.key(a.name()).compareTo(User.key(b.name())))
                .toList();
    }

    /** Whether anybody has an account. */
    public boolean any() {
        return !file.users().isEmpty();
    }

    /** Somebody by name. */
    public Optional<User> user(String name) {
        return file.users().stream().filter(user -> user.is(name)).findFirst();
    }

    /**
     * Makes an account.
     *
     * @param team the team whose film is his; empty where there is one data folder
     * @throws AccountsException where the name, the team or the password will not do, or the name is taken
     */
    public void add(String name, String team, Role role, char[] password) {
        String shown = name.strip().replaceAll("\\s+", " ");
        check(
                NAME.matcher(shown).matches(),
                "A name has up to 60 letters, digits, blanks, points, hyphens; \"" + shown + "\" will not do.");
        check(team.isEmpty() || isTeam(team), notATeam(team));
        checkPassword(shown, password);
        String hash = secrets.password(password);
        file.change(users -> {
            check(
                    users.stream().noneMatch(user -> user.is(shown)),
                    "\"" + shown + "\" has an account already. Choose another name.");
            List<User> all = new ArrayList<>(users);
            all.add(new User(shown, team, role, hash, now().toString(), List.of()));
            return all;
        });
    }

    /** Takes an account away; its sessions and tokens end at once. */
    public void remove(String name) {
        known(name);
        file.change(users -> users.stream().filter(user -> !user.is(name)).toList());
    }

    /** Gives somebody another role, at once. */
    public void role(String name, Role role) {
        change(name, user -> user.withRole(role));
    }

    /** Gives somebody another password; his sessions end, his tokens stay. */
    public void password(String name, char[] password) {
        checkPassword(name, password);
        String hash = secrets.password(password);
        change(name, user -> user.withPassword(hash));
    }

    /**
     * Makes a token and gives the secret, which nobody can be told again.
     *
     * @param what what it is for, in words
     * @param lasts how long it holds; empty for ever
     */
    public String token(String name, String what, Optional<Duration> lasts) {
        check(what.length() <= LONGEST, "Say in up to " + LONGEST + " characters what the token is for.");
        String secret = PREFIX + secrets.secret();
        Instant made = now();
        Token token = new Token(
                secrets.id(),
                what.strip(),
                Secrets.hash(secret),
                made.toString(),
                lasts.map(made::plus).map(Instant::toString).orElse(null));
        change(name, user -> user.with(token));
        return secret;
    }

    /** Takes a token back. */
    public void revoke(String name, String token) {
        check(
                known(name).tokens().stream().anyMatch(one -> one.id().equals(token)),
                "\"" + name + "\" has no token \"" + token + "\". See: rushlight user list --tokens");
        change(name, user -> user.without(token));
    }

    /** Whoever has this name and password; it takes as long where there is no such name. */
    public Optional<User> signIn(String name, char[] password) {
        Optional<User> user = user(name).filter(one -> password.length <= LONGEST);
        if (user.isEmpty()) {
            secrets.pretend(password.length <= LONGEST ? password : new char[0]);
            return Optional.empty();
        }
        return user.filter(one -> secrets.isPassword(password, one.password()));
    }

    /** Whoever has a token with this secret that still holds. */
    public Optional<User> byToken(String secret) {
        if (!secret.startsWith(PREFIX) || secret.length() > LONGEST) {
            return Optional.empty();
        }
        String hash = Secrets.hash(secret);
        Instant now = clock.instant();
        return file.users().stream()
                .filter(user ->
                        user.tokens().stream().anyMatch(token -> token.hash().equals(hash) && token.holds(now)))
                .findFirst();
    }

    /** Whether a word can be a team's. */
    public static boolean isTeam(String word) {
        return TEAM.matcher(word).matches();
    }

    /** What is said of a word that cannot be a team's. */
    public static String notATeam(String word) {
        return "A team is named by small letters, digits and hyphens, as in \"harrow-vale\"; \"" + word
                + "\" will not do.";
    }

    /** What a name is compared by: letters of either case are the same. */
    public static String key(String name) {
        return User.key(name);
    }

    private void change(String name, UnaryOperator<User> change) {
        known(name);
        file.change(users -> users.stream()
                .map(user -> user.is(name) ? change.apply(user) : user)
                .toList());
    }

    /**
     * Somebody by name.
     *
     * @throws AccountsException where nobody is called that
     */
    public User known(String name) {
        return user(name)
                .orElseThrow(() ->
                        new AccountsException("Nobody here is called \"" + name + "\". See: rushlight user list"));
    }

    private static void checkPassword(String name, char[] password) {
        check(
                password.length >= SHORTEST && password.length <= LONGEST,
                "A password has " + SHORTEST + " to " + LONGEST + " characters. Four words in a row are easy to keep.");
        String text = User.key(new String(password));
        check(
                !text.contains(User.key(name)) && text.chars().distinct().count() > 3,
                "That password is too easy to guess. Four words in a row are easy to keep.");
    }

    private static void check(boolean good, String otherwise) {
        if (!good) {
            throw new AccountsException(otherwise);
        }
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
