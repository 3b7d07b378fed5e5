package rushlight.web.http;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.accounts.Accounts;
import rushlight.accounts.AuditLog;
import rushlight.accounts.Role;
import rushlight.accounts.Sessions;
import rushlight.accounts.User;

/** Knows people by their session or token, and lets them in where the rule of a route says so. */
final class Door {
    /** A page of another site cannot send it without asking first, and it is never told yes. */
    private static final String OURS = "X-Requested-With";

    private static final String OUR_PAGES = "rushlight";
    private static final String BEARER = "bearer ";
    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

    private final Optional<Accounts> accounts;
    private final Map<String, AuditLog> records = new HashMap<>();
    private final Optional<AuditLog> record;
    private final Optional<Sessions> sessions;
    private final Allowances allowances;
    private final Caller caller;
    private final boolean forOthers;

    Door(Serving serving, Caller caller) {
        this.accounts = serving.door().map(Serving.Entrance::accounts);
        this.record = serving.door().map(entrance -> AuditLog.in(entrance.folder()));
        serving.spaces().forEach(team -> records.put(team.name(), AuditLog.in(team.folder())));
        this.sessions = accounts.map(some -> new Sessions(some, Clock.systemUTC()));
        this.allowances = new Allowances(serving.limits());
        this.caller = caller;
        this.forOthers = serving.isForOthers();
    }

    /** Whether people have to sign in. */
    boolean isShut() {
        return forOthers || accounts.filter(Accounts::any).isPresent();
    }

    /** Lets somebody in, or ends the request. */
    Visitor admit(Context ctx, Rule rule) {
        if (!isShut()) {
            if (caller.cameUnannounced(ctx)) {
                throw Problem.of(
                                421,
                                "This came by a proxy, and there are no accounts. Make some with rushlight user add, and"
                                        + " serve with --behind-proxy.")
                        .thrown();
            }
            return Visitor.HERE;
        }
        ctx.header("Cache-Control", "no-store");
        Visitor visitor = visitor(ctx);
        visitor.comesTo(ctx);
        allowances.ask(
                ctx, visitor.isSomebody() ? "name " + visitor.name() : "from " + caller.address(ctx), rule.costly());
        boolean isForged = visitor.with() == Visitor.With.SESSION
                && !READING.contains(ctx.method())
                && !OUR_PAGES.equals(ctx.header(OURS));
        if (isForged) {
            throw Problem.of(403, "Changes are taken from the pages of this program, or with a token.")
                    .thrown();
        }
        if (!rule.anyone()) {
            check(ctx, visitor, rule.role());
        }
        return visitor;
    }

    private static void check(Context ctx, Visitor visitor, Optional<Role> needed) {
        if (!visitor.isSomebody()) {
            ctx.header("WWW-Authenticate", "Bearer realm=\"rushlight\"");
            throw Problem.of(401, "Sign in first; a program shows its token as Authorization: Bearer.")
                    .thrown();
        }
        Role least = needed.orElseThrow(
                () -> Problem.of(403, "Nobody was given leave to ask for this.").thrown());
        if (!visitor.may(least)) {
            throw Problem.of(
                            403,
                            "That takes the role " + least.word() + "; yours is "
                                    + visitor.role().map(Role::word).orElse("none")
                                    + ". An administrator can change it.")
                    .thrown();
        }
    }

    private Visitor visitor(Context ctx) {
        String shown = ctx.header("Authorization");
        if (shown != null && shown.regionMatches(true, 0, BEARER, 0, BEARER.length())) {
            return accounts.flatMap(
                            all -> all.byToken(shown.substring(BEARER.length()).strip()))
                    .map(user -> Visitor.of(user, Visitor.With.TOKEN))
                    .orElseThrow(() -> unknownToken(ctx));
        }
        return session(ctx).map(user -> Visitor.of(user, Visitor.With.SESSION)).orElse(Visitor.NOBODY);
    }

    private ProblemException unknownToken(Context ctx) {
        allowances.tryToken(ctx, caller.address(ctx));
        record.ifPresent(log -> log.add("", "token", "unknown token", 401, caller.address(ctx)));
        ctx.header("WWW-Authenticate", "Bearer realm=\"rushlight\", error=\"invalid_token\"");
        return Problem.of(401, "That token is not known here, or it has ended.").thrown();
    }

    private Optional<User> session(Context ctx) {
        Optional<String> secret = Optional.ofNullable(ctx.cookie(cookie(ctx)));
        return secret.flatMap(text -> sessions.flatMap(all -> all.user(text)));
    }

    /** Whoever has this name and knows this password; empty where one of them is wrong. */
    Optional<User> knows(Context ctx, String name, String password) {
        allowances.tryPassword(ctx, Accounts.key(name), caller.address(ctx));
        return accounts.flatMap(all -> all.signIn(name, password.toCharArray()));
    }

    /** Begins a session in place of the one that the request shows. */
    void begin(Context ctx, User user) {
        signOut(ctx);
        bake(ctx, sessions.orElseThrow().begin(user), Sessions.WHOLE.toSeconds());
    }

    /** Ends the session that the request shows, if there is one. */
    void signOut(Context ctx) {
        Optional<String> secret = Optional.ofNullable(ctx.cookie(cookie(ctx)));
        secret.ifPresent(text -> sessions.ifPresent(all -> all.end(text)));
        bake(ctx, "", 0);
    }

    Optional<Accounts> accounts() {
        return accounts;
    }

    /** Where it is written down what a team does; what is nobody's stands with the accounts. */
    Optional<AuditLog> record(Optional<String> team) {
        return record.map(all -> team.map(records::get).orElse(all));
    }

    Caller caller() {
        return caller;
    }

    /** Scripts cannot read it, other sites cannot send it, and under HTTPS it is bound to this very host. */
    private void bake(Context ctx, String secret, long seconds) {
        ctx.res()
                .setHeader(
                        "Set-Cookie",
                        cookie(ctx) + "=" + secret + "; Path=/; Max-Age=" + seconds + "; HttpOnly; SameSite=Strict"
                                + (caller.isSecret(ctx) ? "; Secure" : ""));
    }

    private String cookie(Context ctx) {
        return caller.isSecret(ctx) ? "__Host-rushlight" : "rushlight";
    }
}
