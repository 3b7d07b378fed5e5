package rushlight.store;

import java.io.IOException;
import java.net.ConnectException;
import java.net.UnknownHostException;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpTimeoutException;
import java.nio.channels.UnresolvedAddressException;
import java.util.Optional;
import java.util.function.Predicate;
import javax.net.ssl.SSLException;
import org.apache.jena.atlas.web.HttpException;
import org.apache.jena.query.QueryException;
import org.apache.jena.riot.RiotException;
import org.apache.jena.shared.JenaException;
import org.jspecify.annotations.Nullable;
import rushlight.store.RemoteStoreException.Kind;

/** Says in words why a store on another machine did not do what was asked. What it answers is not repeated: it may be a page. */
final class RemoteFailures {
    private static final int DEEPEST = 20;

    private final RemoteAddress address;

    RemoteFailures(RemoteAddress address) {
        this.address = address;
    }

    /** Does what may fail, and tells a failure as a sentence. */
    void told(Runnable work) {
        try {
            work.run();
        } catch (JenaException | HttpException e) {
            throw spoken(e);
        }
    }

    private RemoteStoreException spoken(RuntimeException why) {
        Optional<HttpException> http = behind(why, HttpException.class);
        if (http.isPresent()) {
            int status = http.get().getStatusCode();
            return status > 0 ? answered(status, why) : broken(why);
        }
        boolean isNoStore = why instanceof RiotException || why instanceof QueryException;
        return isNoStore && behind(why, IOException.class).isEmpty() ? noStore(why) : broken(why);
    }

    /** An answer that is no success. */
    RemoteStoreException answered(int status, @Nullable Exception why) {
        return switch (status) {
            case 401 ->
                of(
                        Kind.REFUSED,
                        "lets nobody in who does not give the right name and password. Put them into a file,"
                                + " as name:password, and name it with --store-password, or set RUSHLIGHT_STORE_PASSWORD",
                        why);
            case 403 -> of(Kind.REFUSED, "does not allow you to do that", why);
            case 413 ->
                of(Kind.REFUSED, "does not take so much at once. Import in several parts, or raise its limit", why);
            case 301, 302, 303, 307, 308 -> of(Kind.UNFIT, "has moved elsewhere. Name its new address", why);
            case 404, 405, 415 ->
                of(
                        Kind.UNFIT,
                        "answers that there is no SPARQL 1.1 store at this place, or not one that may"
                                + " be changed (status " + status + "). Look at its address",
                        why);
            case 408, 425, 429 -> of(Kind.AWAY, "has too much to do (status " + status + ")", why);
            default ->
                status < 500
                        ? of(Kind.REFUSED, "does not take what it was sent (status " + status + ")", why)
                        : of(Kind.AWAY, "is in trouble of its own (status " + status + "); its log says why", why);
        };
    }

    /** No answer, or half of one. */
    RemoteStoreException broken(Exception why) {
        if (behind(why, HttpConnectTimeoutException.class).isPresent()) {
            return of(Kind.UNREACHED, "cannot be reached: nobody answers at that machine", why);
        }
        if (behind(why, HttpTimeoutException.class).isPresent()) {
            return of(Kind.AWAY, "did not answer in time", why);
        }
        if (behind(why, UnresolvedAddressException.class).isPresent()
                || behind(why, UnknownHostException.class).isPresent()) {
            return of(Kind.UNREACHED, "cannot be reached: nobody knows a machine of that name", why);
        }
        if (behind(why, ConnectException.class).isPresent()) {
            return of(Kind.UNREACHED, "cannot be reached: nothing listens there", why);
        }
        if (behind(why, SSLException.class).isPresent()) {
            return of(
                    Kind.UNFIT,
                    "cannot be spoken to in private: its certificate is not one that this Java trusts",
                    why);
        }
        boolean many = behind(why, at -> String.valueOf(at.getMessage()).contains("too many authentication attempts"))
                .isPresent();
        return many ? answered(401, why) : of(Kind.AWAY, "broke off while it was spoken to", why);
    }

    private RemoteStoreException noStore(Exception why) {
        return of(Kind.UNFIT, "answers, but not as a SPARQL 1.1 store does. Look at its address", why);
    }

    private RemoteStoreException of(Kind kind, String what, @Nullable Exception why) {
        return new RemoteStoreException(kind, "The store at " + address + " " + what + ". Nothing was changed.", why);
    }

    private static <T extends Throwable> Optional<T> behind(Throwable trouble, Class<T> kind) {
        return behind(trouble, kind::isInstance).map(kind::cast);
    }

    private static Optional<Throwable> behind(Throwable trouble, Predicate<Throwable> is) {
        @Nullable Throwable at = trouble;
        for (int i = 0; at != null && i < DEEPEST; i++, at = at.getCause()) {
            if (is.test(at)) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }
}
