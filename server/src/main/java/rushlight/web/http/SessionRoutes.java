package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rushlight.accounts.Accounts;
import rushlight.accounts.AccountsException;
import rushlight.accounts.Role;
import rushlight.accounts.User;
import rushlight.web.AuditAnswer;
import rushlight.web.SessionAnswer;

/** Signing in and out, and the record of what was done. */
final class SessionRoutes {
    private static final int MOST = 1_000;
    private static final int LONGEST = 200;
    private static final String WRONG = "The name or the password is wrong.";

    /** Who wants in. */
    record In(@Nullable String name, @Nullable String password) {}

    /** Another password, by one who knows the one he has. */
    record Change(@Nullable String old, @Nullable String password) {}

    private final Door door;

    SessionRoutes(Door door) {
        this.door = door;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/session", ctx -> answer(ctx, Visitor.of(ctx))),
                Route.post("/api/session", this::signIn),
                Route.delete("/api/session", this::signOut),
                Route.put("/api/session/password", this::change),
                Route.get("/api/audit", this::audit));
    }

    private void answer(Context ctx, Visitor visitor) {
        ctx.header("Cache-Control", "no-store");
        Versions.json(
                ctx,
                new SessionAnswer(
                        door.isShut(),
                        visitor.isSomebody(),
                        visitor.name(),
                        visitor.role().map(Role::word),
                        visitor.team()));
    }

    private void signIn(Context ctx) {
        if (!door.isShut()) {
            throw Problem.of(409, "There are no accounts here, so nobody has to sign in.")
                    .thrown();
        }
        In in = Body.json(ctx, In.class);
        String name = word(in.name());
        Optional<User> user = door.knows(ctx, name, word(in.password()));
        // Who is not known is not named: people type passwords where their name goes.
        Optional<User> tried = user.or(() -> door.accounts().flatMap(all -> all.user(name)));
        door.record(tried.map(User::team))
                .ifPresent(log -> log.add(
                        tried.map(User::name).orElse(""),
                        "password",
                        "POST /api/session",
                        user.isPresent() ? 200 : 401,
                        door.caller().address(ctx)));
        User known = user.orElseThrow(() -> Problem.of(401, WRONG).thrown());
        door.begin(ctx, known);
        answer(ctx, Visitor.of(known, Visitor.With.SESSION));
    }

    private void signOut(Context ctx) {
        door.signOut(ctx);
        ctx.header("Clear-Site-Data", "\"cache\"");
        answer(ctx, door.isShut() ? Visitor.NOBODY : Visitor.HERE);
    }

    private void change(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        if (visitor.with() != Visitor.With.SESSION) {
            throw Problem.of(409, "Sign in with your password to change it; a token changes none.")
                    .thrown();
        }
        Change in = Body.json(ctx, Change.class);
        if (door.knows(ctx, visitor.name(), word(in.old())).isEmpty()) {
            throw Problem.of(422, "That is not the password you have.").thrown();
        }
        Accounts accounts = door.accounts().orElseThrow();
        try {
            accounts.password(visitor.name(), word(in.password()).toCharArray());
        } catch (AccountsException e) {
            throw Problem.of(422, String.valueOf(e.getMessage())).thrown();
        }
        accounts.user(visitor.name()).ifPresent(user -> door.begin(ctx, user));
        answer(ctx, visitor);
    }

    private void audit(Context ctx) {
        int limit = Request.number(ctx, "limit", 100, 1, MOST);
        ctx.header("Cache-Control", "no-store");
        Versions.json(
                ctx,
                new AuditAnswer(door.record(Optional.of(Visitor.of(ctx).team()))
                        .map(log -> log.latest(limit))
                        .orElse(List.of())));
    }

    private static String word(@Nullable String text) {
        String word = Objects.requireNonNullElse(text, "");
        if (word.length() > LONGEST) {
            throw Problem.of(401, WRONG).thrown();
        }
        return word;
    }
}
