package rushlight.web.http;

import io.javalin.http.Context;
import java.util.Optional;
import rushlight.accounts.Role;
import rushlight.accounts.User;

/**
 * Who asks.
 *
 * @param name his name; empty where nobody is signed in
 * @param team whose film he may see; empty where there is one data folder
 * @param role what he may do; empty for nobody
 * @param with how he is known
 */
record Visitor(String name, String team, Optional<Role> role, With with) {
    /** How somebody is known. */
    enum With {
        NOTHING,
        SESSION,
        TOKEN,
        /** He sits at the machine itself, and there are no accounts. */
        MACHINE
    }

    /** Somebody who is not signed in. */
    static final Visitor NOBODY = new Visitor("", "", Optional.empty(), With.NOTHING);

    /** Whoever sits at a machine without accounts: it is his. */
    static final Visitor HERE = new Visitor("", "", Optional.of(Role.ADMINISTRATOR), With.MACHINE);

    private static final String KEY = "rushlight.visitor";

    static Visitor of(User user, With with) {
        return new Visitor(user.name(), user.team(), Optional.of(user.role()), with);
    }

    /** Who asks for this. */
    static Visitor of(Context ctx) {
        return Optional.<Visitor>ofNullable(ctx.attribute(KEY)).orElse(NOBODY);
    }

    void comesTo(Context ctx) {
        ctx.attribute(KEY, this);
    }

    boolean isSomebody() {
        return role.isPresent();
    }

    boolean hasAccount() {
        return with == With.SESSION || with == With.TOKEN;
    }

    boolean may(Role needed) {
        return role.filter(mine -> mine.covers(needed)).isPresent();
    }
}
