package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rushlight.accounts.Accounts;
import rushlight.web.http.Serving;

/** Where else than to this machine the film is served, and how. */
final class ServeOptions {
    private static final String PASSWORD = "RUSHLIGHT_CERTIFICATE_PASSWORD";

    @Option(
            names = "--bind",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "network address to listen on; without accounts only this machine's (127.0.0.1)")
    private String bind = "127.0.0.1";

    @Option(
            names = "--teams",
            paramLabel = "DIR",
            converter = Folder.class,
            description = "a folder with a data folder for each team; none sees another's film")
    private Optional<Path> teams = Optional.empty();

    @Option(
            names = "--certificate",
            paramLabel = "FILE",
            description = "speak HTTPS with the key and certificates in this PKCS #12 file")
    private Optional<Path> certificate = Optional.empty();

    @Option(
            names = "--certificate-password",
            paramLabel = "FILE",
            description = "a file whose first line opens it (otherwise $" + PASSWORD + ")")
    private Optional<Path> password = Optional.empty();

    @Option(
            names = "--behind-proxy",
            description = "a proxy stands in front and speaks HTTPS; believe its X-Forwarded headers")
    private boolean behindProxy;

    @Mixin
    private StorePlace place = new StorePlace();

    boolean isOfTeams() {
        return teams.isPresent();
    }

    /** What is shown, for people. */
    Object shown(Path folder) {
        return teams.<Object>map(dir -> "the teams in " + dir).orElse(folder);
    }

    /** Opens the film of all teams, or of one data folder. */
    Archives open(Path folder, PrintWriter err) {
        return teams.map(dir -> Archives.ofTeams(dir, place, err)).orElseGet(() -> Archives.of(folder, place, err));
    }

    /** Whether it was said where the film is kept. */
    boolean isKept() {
        return place.isNamed();
    }

    /** Why it must not be served like this. */
    Optional<String> refusal(Path folder) {
        boolean hasAccounts = Accounts.in(teams.orElse(folder)).any();
        return Serving.refusal(bind, behindProxy, isOfTeams(), certificate.isPresent(), hasAccounts);
    }

    Serving serving(Archives archives, Path folder, int port, boolean demo) {
        Path home = teams.orElse(folder);
        return new Serving(
                archives.teams(),
                Optional.of(new Serving.Entrance(Accounts.in(home), home)),
                bind,
                port,
                demo,
                behindProxy,
                certificate.map(file -> new Serving.Certificate(file, password())),
                Serving.Limits.usual());
    }

    private String password() {
        return Secret.of(password, PASSWORD).orElse("");
    }
}
