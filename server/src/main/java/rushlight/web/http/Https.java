package rushlight.web.http;

import io.javalin.config.JavalinConfig;
import java.nio.file.Files;
import org.eclipse.jetty.http.HttpVersion;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import rushlight.archive.FolderException;

/** HTTPS by a certificate of one's own, and by nothing older than TLS 1.2. */
final class Https {
    private Https() {}

    /** @throws FolderException where there is no such file */
    static void speak(JavalinConfig config, Serving serving, Serving.Certificate certificate) {
        if (!Files.isReadable(certificate.file())) {
            throw new FolderException("There is no certificate " + certificate.file() + " that may be read.");
        }
        config.jetty.addConnector((server, http) -> connector(server, http, serving, certificate));
    }

    /** Why it did not start: nearly always the certificate, where there is one. */
    static RuntimeException unopened(Serving serving, RuntimeException why) {
        return serving.certificate()
                .<RuntimeException>map(certificate -> new FolderException(
                        "The certificate " + certificate.file()
                                + " cannot be opened. Is it PKCS #12, and its password right"
                                + " ($RUSHLIGHT_CERTIFICATE_PASSWORD, or --certificate-password FILE)?",
                        why))
                .orElse(why);
    }

    private static ServerConnector connector(
            Server server, HttpConfiguration http, Serving serving, Serving.Certificate certificate) {
        SslContextFactory.Server ssl = new SslContextFactory.Server();
        ssl.setKeyStorePath(certificate.file().toString());
        ssl.setKeyStoreType("PKCS12");
        ssl.setKeyStorePassword(certificate.password());
        ssl.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        HttpConfiguration https = new HttpConfiguration(http);
        https.addCustomizer(new SecureRequestCustomizer(false));
        ServerConnector connector = new ServerConnector(
                server,
                new SslConnectionFactory(ssl, HttpVersion.HTTP_1_1.asString()),
                new HttpConnectionFactory(https));
        connector.setHost(serving.bind());
        connector.setPort(serving.port());
        return connector;
    }
}
