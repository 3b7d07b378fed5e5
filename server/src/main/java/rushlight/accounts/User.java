package rushlight.accounts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Somebody with an account.
 *
 * @param name as shown, and as typed to sign in; letters of either case are the same there
 * @param team the team whose film is his; empty where the server has one data folder
 * @param role what he may do
 * @param password bcrypt hash of his password
 * @param made when the account was made, UTC
 * @param tokens what his programs show
 */
public record User(String name, String team, Role role, String password, String made, List<Token> tokens) {
    public User {
        tokens = List.copyOf(tokens);
    }

    /** Shows no hash wherever it is printed. */
    @Override
    public String toString() {
        return name + " (" + role.word() + (team.isEmpty() ? "" : " of " + team) + ")";
    }

    boolean is(String other) {
        return key(name).equals(key(other));
    }

    /** What a session was begun with: another password, and the session is over. */
    String stamp() {
        return Secrets.hash(password);
    }

    User withRole(Role other) {
        return new User(name, team, other, password, made, tokens);
    }

    User withPassword(String hash) {
        return new User(name, team, role, hash, made, tokens);
    }

    User with(Token token) {
        List<Token> all = new ArrayList<>(tokens);
        all.add(token);
        return new User(name, team, role, password, made, all);
    }

    User without(String token) {
        return new User(
                name,
                team,
                role,
                password,
                made,
                tokens.stream().filter(one -> !one.id().equals(token)).toList());
    }

    /** What a name is compared by. */
    static String key(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
