package rushlight.web.http;

import java.util.List;

/**
 * One team's film with everything that answers over it. Nothing of it is reached by a name in a request: who asks decides
 * which space he is in.
 *
 * @param routes in the same order in every space
 */
record Space(String team, Jobs jobs, List<Route> routes) {
    Space {
        routes = List.copyOf(routes);
    }
}
