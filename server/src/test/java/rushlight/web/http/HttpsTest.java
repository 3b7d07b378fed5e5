package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.accounts.Accounts;
import rushlight.accounts.Role;
import rushlight.archive.Archive;
import rushlight.archive.FolderException;

/** With a certificate of one's own the server speaks HTTPS and nothing else. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class HttpsTest {
    private static final String SECRET = "of the certificate";

    @TempDir
    private Path folder;

    @Test
    void one_signs_in_over_https_and_plain_words_get_no_answer() throws Exception {
        Path certificate = certificate();
        Accounts accounts = Accounts.in(folder, 4, Clock.systemUTC());
        accounts.add("Kim Orr", "", Role.READER, Guests.PASSWORD.toCharArray());
        try (Archive archive = Archive.open(folder.resolve("film"))) {
            try (Server server = Server.start(serving(archive, accounts, certificate, SECRET))) {
                HttpClient client = HttpClient.newBuilder()
                        .sslContext(trusting(certificate))
                        .build();
                assertThat(server.address()).startsWith("https://localhost:");
                HttpResponse<String> in = client.send(
                        HttpRequest.newBuilder(URI.create(server.address() + "api/session"))
                                .header("Content-Type", "application/json")
                                .header("Origin", server.address().replaceFirst("/$", ""))
                                .POST(BodyPublishers.ofString(
                                        "{\"name\": \"Kim Orr\", \"password\": \"" + Guests.PASSWORD + "\"}"))
                                .build(),
                        BodyHandlers.ofString());
                assertThat(in.statusCode()).as(in.body()).isEqualTo(200);
                assertThat(Guests.cookie(in)).startsWith("__Host-rushlight=");
                assertThat(in.headers().firstValue("Set-Cookie").orElse("")).contains("; Secure");
                assertThat(in.headers().firstValue("Strict-Transport-Security")).contains("max-age=31536000");

                URI plain = URI.create("http://localhost:" + server.port() + "/api/session");
                assertThatThrownBy(() -> HttpClient.newHttpClient()
                                .send(HttpRequest.newBuilder(plain).build(), BodyHandlers.ofString()))
                        .isInstanceOf(IOException.class);
            }
            assertThatThrownBy(() -> Server.start(serving(archive, accounts, certificate, "a wrong word")))
                    .isInstanceOf(FolderException.class)
                    .hasMessageContaining("password");
            assertThatThrownBy(() -> Server.start(serving(archive, accounts, folder.resolve("none.p12"), "")))
                    .isInstanceOf(FolderException.class)
                    .hasMessageContaining("There is no certificate");
        }
    }

    private Serving serving(Archive archive, Accounts accounts, Path certificate, String password) {
        return new Serving(
                List.of(new Serving.Team("", folder, archive)),
                Optional.of(new Serving.Entrance(accounts, folder)),
                "127.0.0.1",
                0,
                false,
                false,
                Optional.of(new Serving.Certificate(certificate, password)),
                Guests.PLENTY);
    }

    /** A certificate for this machine, signed by itself, as the JDK's own tool makes it. */
    private Path certificate() throws Exception {
        Path file = folder.resolve("film.p12");
        Process tool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-keyalg",
                        "EC",
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "SAN=dns:localhost,ip:127.0.0.1",
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        file.toString(),
                        "-storepass",
                        SECRET)
                .redirectErrorStream(true)
                .start();
        assertThat(tool.waitFor())
                .as(new String(tool.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
                .isZero();
        return file;
    }

    private static SSLContext trusting(Path certificate) throws Exception {
        KeyStore own = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(certificate)) {
            own.load(in, SECRET.toCharArray());
        }
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("server", own.getCertificate(own.aliases().nextElement()));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }
}
