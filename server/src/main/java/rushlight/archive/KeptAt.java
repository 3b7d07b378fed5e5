package rushlight.archive;

import java.time.Duration;
import java.util.Optional;
import rushlight.store.RemoteAddress;
import rushlight.store.RemoteLogin;
import rushlight.store.RemoteStore;

/**
 * Where the film of a folder is to be kept.
 *
 * @param wanted the address of a store on another machine, or {@link #HERE}; empty for where the folder remembers
 * @param login who asks there, where it wants to know
 * @param patience how long to wait for its answer
 */
public record KeptAt(Optional<String> wanted, Optional<RemoteLogin> login, Duration patience) {
    /** In the folder itself, whatever it remembers. */
    public static final String HERE = "none";

    private static final Duration USUAL = Duration.ofSeconds(60);

    /** Where it was kept before, by nobody in particular. */
    public static KeptAt asBefore() {
        return of(Optional.empty(), Optional.empty());
    }

    /** The same with the usual patience. */
    public static KeptAt of(Optional<String> wanted, Optional<RemoteLogin> login) {
        return new KeptAt(wanted, login, USUAL);
    }

    /** Where a folder of such settings is kept; empty for in itself. */
    Optional<RemoteAddress> address(Settings settings) {
        return wanted.or(settings::keptAt).filter(text -> !text.equals(HERE)).map(RemoteAddress::of);
    }

    RemoteStore store(RemoteAddress address) {
        return RemoteStore.at(address, login, patience);
    }
}
