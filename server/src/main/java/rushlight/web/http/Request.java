package rushlight.web.http;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.OptionalInt;
import rushlight.situation.Narrowing;

/** What a request asks for, read with care: a wrong value is told, never guessed at. */
final class Request {
    private static final int LONGEST = 2_000;

    private Request() {}

    /** A word of the address; empty where it is not given or blank. */
    static Optional<String> word(Context ctx, String name) {
        String value = ctx.queryParam(name);
        if (value != null && value.length() > LONGEST) {
            throw Problem.of(400, "\"" + name + "\" is longer than " + LONGEST + " characters.")
                    .thrown();
        }
        return Optional.ofNullable(value).map(String::strip).filter(text -> !text.isEmpty());
    }

    static int number(Context ctx, String name, int otherwise, int least, int most) {
        OptionalInt given = number(ctx, name);
        int value = given.orElse(otherwise);
        if (value < least || value > most) {
            throw Problem.of(400, "\"" + name + "\" is a whole number from " + least + " to " + most + ".")
                    .thrown();
        }
        return value;
    }

    static OptionalInt number(Context ctx, String name) {
        Optional<String> text = word(ctx, name);
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        try {
            return OptionalInt.of(Integer.parseInt(text.get()));
        } catch (NumberFormatException e) {
            throw Problem.of(400, "\"" + name + "\" is a whole number.").thrown();
        }
    }

    static boolean flag(Context ctx, String name, boolean otherwise) {
        return word(ctx, name).map(value -> !value.equals("false")).orElse(otherwise);
    }

    /** What narrows a tape. */
    static Narrowing narrowing(Context ctx) {
        return new Narrowing(word(ctx, "game"), word(ctx, "over"), word(ctx, "opponent"));
    }
}
