package rushlight.web.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A gate before every route: who may not pass is turned back, who passes stays in his own space, and it is written down. */
final class Gates {
    private static final int BROKE = 500;
    private static final int FORBIDDEN = 403;

    private final Door door;
    private final Rules rules;
    private final Map<String, Space> spaces;
    private final Space first;

    Gates(Door door, Rules rules, List<Space> spaces) {
        this.door = door;
        this.rules = rules;
        this.spaces = spaces.stream().collect(Collectors.toMap(Space::team, Function.identity()));
        this.first = spaces.get(0);
    }

    /** Puts up all gates. */
    void open(RoutesConfig config) {
        for (int i = 0; i < first.routes().size(); i++) {
            Route route = first.routes().get(i);
            int place = i;
            Rule rule = rules.of(route);
            config.addHttpHandler(route.method(), route.path(), ctx -> pass(ctx, route, rule, place));
        }
    }

    private void pass(Context ctx, Route route, Rule rule, int place) throws Exception {
        int status = BROKE;
        try {
            Visitor visitor = door.admit(ctx, rule);
            visitor.comesTo(ctx);
            space(visitor, rule).routes().get(place).handler().handle(ctx);
            status = ctx.statusCode();
            if (visitor.with() != Visitor.With.MACHINE) {
                ctx.header("Cache-Control", "no-store");
            }
        } catch (ProblemException e) {
            status = e.problem().status();
            throw e;
        } catch (HttpResponseException e) {
            status = e.getStatus();
            throw e;
        } finally {
            record(ctx, route, rule, status);
        }
    }

    /** The space somebody is in. What answers to anyone says nothing of film, and is the same in all of them. */
    private Space space(Visitor visitor, Rule rule) {
        if (rule.anyone() && !visitor.isSomebody()) {
            return first;
        }
        return Optional.ofNullable(spaces.get(visitor.team()))
                .orElseThrow(() -> Problem.of(
                                403, "Your account belongs to a team that is not served here. Ask who runs the server.")
                        .thrown());
    }

    private void record(Context ctx, Route route, Rule rule, int status) {
        Visitor visitor = Visitor.of(ctx);
        if (!visitor.hasAccount() || !(rule.isRecorded() || status == FORBIDDEN || status >= BROKE)) {
            return;
        }
        door.record(Optional.of(visitor.team()))
                .ifPresent(log -> log.add(
                        visitor.name(),
                        visitor.with().name().toLowerCase(Locale.ROOT),
                        route.method().name() + " " + route.path(),
                        status,
                        door.caller().address(ctx)));
    }
}
