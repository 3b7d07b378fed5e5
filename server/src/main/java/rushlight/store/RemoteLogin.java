package rushlight.store;

/**
 * Who asks a store on another machine.
 *
 * @param user his name there
 * @param password his password there
 */
public record RemoteLogin(String user, String password) {
    /**
     * Reads {@code name:password}; only the first colon parts them.
     *
     * @throws RemoteStoreException where there is no colon
     */
    public static RemoteLogin of(String text) {
        int colon = text.indexOf(':');
        if (colon < 1) {
            throw new RemoteStoreException(
                    RemoteStoreException.Kind.UNFIT,
                    "The password of the store is written as name:password, in one line.",
                    null);
        }
        return new RemoteLogin(text.substring(0, colon), text.substring(colon + 1));
    }

    /** Shows no password wherever it is printed. */
    @Override
    public String toString() {
        return user;
    }
}
