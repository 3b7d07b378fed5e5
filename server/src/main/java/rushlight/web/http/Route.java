package rushlight.web.http;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;

/**
 * One thing the server answers to, as the interface description names it.
 *
 * @param method how it is asked
 * @param path where, with its parts in braces
 * @param handler what answers
 */
record Route(HandlerType method, String path, Handler handler) {
    static Route get(String path, Handler handler) {
        return new Route(HandlerType.GET, path, handler);
    }

    static Route post(String path, Handler handler) {
        return new Route(HandlerType.POST, path, handler);
    }

    static Route put(String path, Handler handler) {
        return new Route(HandlerType.PUT, path, handler);
    }

    static Route delete(String path, Handler handler) {
        return new Route(HandlerType.DELETE, path, handler);
    }

    /** Whether an address is one of this route's. */
    boolean matches(String address) {
        String[] mine = path.split("/", -1);
        String[] its = address.split("/", -1);
        if (mine.length != its.length) {
            return false;
        }
        for (int i = 0; i < mine.length; i++) {
            int open = mine[i].indexOf('{');
            boolean fits = open < 0
                    ? mine[i].equals(its[i])
                    : !its[i].isEmpty() && its[i].endsWith(mine[i].substring(mine[i].indexOf('}') + 1));
            if (!fits) {
                return false;
            }
        }
        return true;
    }
}
