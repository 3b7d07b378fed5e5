package rushlight.store;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Where a store on another machine answers, by the protocols of SPARQL 1.1.
 *
 * @param text as a person wrote it, and as it is shown to him
 * @param query where it is asked
 * @param update where it is changed
 * @param data where whole graphs are put and fetched
 */
public record RemoteAddress(String text, URI query, URI update, URI data) {
    private static final int ALL_THREE = 3;

    /**
     * Reads an address: one of a data set, below which {@code /query}, {@code /update} and {@code /data} answer, or the three
     * of them with commas between.
     *
     * @throws RemoteStoreException where it is none
     */
    public static RemoteAddress of(String text) {
        List<String> parts =
                Arrays.stream(text.split(",", -1)).map(String::strip).toList();
        if (parts.size() == ALL_THREE) {
            return new RemoteAddress(
                    String.join(",", parts), whole(parts.get(0)), whole(parts.get(1)), whole(parts.get(2)));
        }
        if (parts.size() != 1) {
            throw unfit(
                    "A store is named by one address, or by three with commas between: where to ask, where to change,"
                            + " where to put and fetch graphs.");
        }
        URI base = whole(parts.get(0));
        if (base.getRawQuery() != null) {
            throw unfit("The address of a store has no question mark. Where its three addresses differ, name all three"
                    + " with commas between: where to ask, where to change, where to put and fetch graphs.");
        }
        String start = base.toString().replaceAll("/+$", "");
        return new RemoteAddress(
                start, URI.create(start + "/query"), URI.create(start + "/update"), URI.create(start + "/data"));
    }

    /** Where one graph is put and fetched. */
    URI graph(String parameter) {
        return URI.create(data + (data.getRawQuery() == null ? "?" : "&") + parameter);
    }

    /** Whether nobody in between can read what is said. */
    boolean isPrivate() {
        return List.of(query, update, data).stream().allMatch(uri -> scheme(uri).equals("https") || isHere(uri));
    }

    private static boolean isHere(URI uri) {
        String host = uri.getHost();
        return host.equals("localhost") || host.equals("[::1]") || host.matches("127(\\.\\d{1,3}){3}");
    }

    private static URI whole(String text) {
        try {
            URI uri = new URI(text);
            if (uri.getRawUserInfo() != null) {
                throw unfit("Leave name and password out of the address of the store: others of this machine could read"
                        + " them. Put them into a file, as name:password, and name it with --store-password.");
            }
            if (!List.of("http", "https").contains(scheme(uri))
                    || uri.getHost() == null
                    || uri.getRawFragment() != null) {
                throw none(text);
            }
            return uri;
        } catch (URISyntaxException e) {
            throw none(text);
        }
    }

    /** Where it may hold a password, it is not repeated. */
    private static RemoteStoreException none(String text) {
        return unfit(
                text.contains("@")
                        ? "This is no address of a store. One looks like https://film.example/edges, without name and password."
                        : "\"" + text + "\" is no address of a store. One looks like https://film.example/edges.");
    }

    private static String scheme(URI uri) {
        return uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
    }

    private static RemoteStoreException unfit(String why) {
        return new RemoteStoreException(RemoteStoreException.Kind.UNFIT, why, null);
    }

    @Override
    public String toString() {
        return text;
    }
}
