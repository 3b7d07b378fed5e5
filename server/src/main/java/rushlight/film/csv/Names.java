package rushlight.film.csv;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Identity;

/** The names of one kind in a file, each with its address: two names must not share one. */
final class Names {
    private record Seen(String name, int line) {}

    private final String column;
    private final Map<String, String> addresses = new HashMap<>();
    private final Map<String, Seen> owners = new HashMap<>();

    Names(String column) {
        this.column = column;
    }

    /** The address of a name; empty, and told, where it has none or another name took it. */
    Optional<String> address(String name, RowNotes notes) {
        String slug = addresses.computeIfAbsent(name, Identity::slug);
        if (slug.isEmpty()) {
            notes.fault(
                    column,
                    name,
                    Fault.Code.NO_LETTER,
                    "\"" + name + "\" has no letter and no digit, so it makes no address; give it a name.");
            return Optional.empty();
        }
        return claim(slug, name, notes) ? Optional.of(slug) : Optional.empty();
    }

    /** Whether an address belongs to this name, from now on or already. */
    boolean claim(String address, String name, RowNotes notes) {
        Seen owner = owners.computeIfAbsent(address, a -> new Seen(name, notes.line()));
        if (owner.name().equals(name)) {
            return true;
        }
        notes.fault(
                column,
                name,
                Fault.Code.NAMES_COLLIDE,
                "\"" + name + "\" and \"" + owner.name() + "\" " + place(owner) + " have one address, " + address
                        + "; write one of them everywhere, or tell the two apart.");
        return false;
    }

    private static String place(Seen owner) {
        return owner.line() == 0 ? "in the list of prospects" : "in line " + owner.line();
    }
}
