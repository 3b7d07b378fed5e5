package rushlight.web.http;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rushlight.accounts.Accounts;
import rushlight.archive.Archive;

/**
 * What is served, to whom, and where.
 *
 * @param spaces whose film it is: one without a name, or one a team
 * @param door who may come in and where it is recorded; empty where nobody is asked
 * @param bind the network address to listen on
 * @param port where to listen; 0 takes any free one
 * @param demo whether this is the invented league
 * @param behindProxy whether a proxy stands in front, whose word of where a request came from is believed
 * @param certificate what to speak HTTPS with; empty for plain HTTP
 * @param limits how often one may ask
 */
public record Serving(
        List<Team> spaces,
        Optional<Entrance> door,
        String bind,
        int port,
        boolean demo,
        boolean behindProxy,
        Optional<Certificate> certificate,
        Limits limits) {
    private static final String HERE = "127.0.0.1";

    /**
     * One team's film; it stays open when the server is closed.
     *
     * @param name the team's name; empty where there is one data folder
     * @param folder where its record of what was done is kept
     */
    public record Team(String name, Path folder, Archive archive) {}

    /**
     * Who may come in.
     *
     * @param folder where it is recorded who tried in vain
     */
    public record Entrance(Accounts accounts, Path folder) {}

    /**
     * What the server proves its name with.
     *
     * @param file a PKCS #12 file with key and certificates
     * @param password what opens the file
     */
    public record Certificate(Path file, String password) {
        /** Shows no password wherever it is printed. */
        @Override
        public String toString() {
            return file.toString();
        }
    }

    /**
     * How often one may ask, where there are accounts.
     *
     * @param requestsPerMinute of one person, or of one address where nobody is signed in
     * @param costlyPerMinute of those, what takes much work
     * @param passwordTries in a row for one name from one address; then one a minute
     */
    public record Limits(int requestsPerMinute, int costlyPerMinute, int passwordTries) {
        /** What is usual. */
        public static Limits usual() {
            return new Limits(1_200, 60, 5);
        }
    }

    public Serving {
        spaces = List.copyOf(spaces);
    }

    /** For this machine alone, without accounts: whoever sits here may do everything. */
    public static Serving here(Archive archive, int port, boolean demo) {
        return new Serving(
                List.of(new Team("", Path.of("."), archive)),
                Optional.empty(),
                HERE,
                port,
                demo,
                false,
                Optional.empty(),
                Limits.usual());
    }

    /** Whether it listens to this machine alone. */
    boolean isHere() {
        return isHere(bind);
    }

    /** Whether everybody has to sign in, even where the last account was taken away. */
    boolean isForOthers() {
        return !isHere() || behindProxy || isOfTeams();
    }

    /** Why it must not be served like this, in sentences that say what to do. */
    public Optional<String> refusal() {
        return refusal(
                bind,
                behindProxy,
                isOfTeams(),
                certificate.isPresent(),
                door.filter(entrance -> entrance.accounts().any()).isPresent());
    }

    /** The same, asked before any film is opened. */
    public static Optional<String> refusal(
            String bind, boolean behindProxy, boolean ofTeams, boolean hasCertificate, boolean hasAccounts) {
        boolean isForOthers = !isHere(bind) || behindProxy || ofTeams;
        if (isForOthers && !hasAccounts) {
            return Optional.of((ofTeams ? "Teams" : "Others than this machine")
                    + " are let in by account alone, and nobody has one: anybody who reached the server could read and"
                    + " change your film. Make the first account: rushlight user add NAME --role administrator");
        }
        if (!isHere(bind) && !hasCertificate && !behindProxy) {
            return Optional.of(
                    "Without HTTPS everybody in between could read passwords and film. Name your certificate with"
                            + " --certificate FILE.p12, or put a proxy that speaks HTTPS in front and say --behind-proxy.");
        }
        return Optional.empty();
    }

    /** Whether there are teams, which must not see each other. */
    private boolean isOfTeams() {
        return spaces.stream().anyMatch(space -> !space.name().isEmpty());
    }

    private static boolean isHere(String bind) {
        try {
            return InetAddress.getByName(bind).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
