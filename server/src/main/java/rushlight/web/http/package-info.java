/** The HTTP server: routes in, JSON or problem details out, and the pages of the browser client. */
@NullMarked
package rushlight.web.http;

import org.jspecify.annotations.NullMarked;
