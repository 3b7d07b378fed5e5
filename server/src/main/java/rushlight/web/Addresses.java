package rushlight.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import rushlight.film.Identity;
import rushlight.film.RepId;

/** Where things are found over HTTP. */
public final class Addresses {
    private Addresses() {}

    /** The address of one evaluator's reading of a rep. */
    public static String reading(RepId rep, String evaluator) {
        return "/api/reps/" + part(rep.prospect()) + "/" + part(rep.game()) + "/" + part(Identity.slug(rep.rep()))
                + "?by=" + part(evaluator);
    }

    /** One part of an address, with everything escaped that could be taken for something else. */
    public static String part(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
