package rushlight.web.browser;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import rushlight.archive.Archive;
import rushlight.archive.DemoLeague;
import rushlight.web.http.Server;

/** The demo league, a server and one Chromium, started once for all tests that ask for a {@link Browser}. */
final class Stage implements AutoCloseable {
    /** What nobody should be called. */
    static final String HOSTILE = "<script>window.struck=1</script><img src=x onerror=window.struck=1>";

    /** What the staff of the tested folder added to the book. */
    private static final String OVERLAY = """
        @prefix kb: <https://rushlight.example/id/> .
        @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
        kb:bull-rush skos:altLabel "%s freight"@en .
        """.formatted(HOSTILE);

    private static final List<String> BROWSERS = List.of(
            "/usr/bin/chromium",
            "/usr/bin/chromium-browser",
            "/usr/bin/google-chrome",
            "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome");
    private static final List<String> DRIVERS =
            List.of("/usr/bin/chromedriver", "/usr/local/bin/chromedriver", "/opt/homebrew/bin/chromedriver");

    private final Path folder;
    private final Archive archive;
    private final Server server;
    private final ChromeDriver driver;

    private Stage(Path folder, Archive archive, Server server, ChromeDriver driver) {
        this.folder = folder;
        this.archive = archive;
        this.server = server;
        this.driver = driver;
    }

    /** Starts everything; {@code overlay} is what the user of this folder added to the book. */
    static Stage open(String overlay) {
        try {
            Path folder = Files.createTempDirectory("rushlight-browser");
            Files.writeString(folder.resolve("overlay.ttl"), overlay);
            Archive archive = Archive.open(folder);
            DemoLeague.into(archive);
            return new Stage(folder, archive, Server.start(archive, 0, true), chromium());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Browser browser() {
        return new Browser(driver, server.address());
    }

    @Override
    public void close() {
        driver.quit();
        server.close();
        archive.close();
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ChromeDriver chromium() {
        Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.WARNING);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(found("chromium", BROWSERS));
        options.setCapability("goog:loggingPrefs", logs);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--lang=en-US",
                "--autoplay-policy=no-user-gesture-required");
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(found("chromium-driver", DRIVERS)))
                .withSilent(true)
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
        return driver;
    }

    private static String found(String what, List<String> places) {
        return places.stream()
                .filter(place -> Files.isExecutable(Path.of(place)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("The pages are tested in a browser, and " + what
                        + " is not installed (looked at " + String.join(", ", places)
                        + "). On Debian: apt-get install chromium chromium-driver."));
    }

    /** Hands the browser to tests; the stage is closed after the last of them. */
    static final class Given implements ParameterResolver {
        @Override
        public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
            return parameter.getParameter().getType() == Browser.class;
        }

        @Override
        public Browser resolveParameter(ParameterContext parameter, ExtensionContext context) {
            ExtensionContext.Store store = context.getRoot().getStore(ExtensionContext.Namespace.create(Stage.class));
            Browser browser = store.getOrComputeIfAbsent(Stage.class, key -> open(OVERLAY), Stage.class)
                    .browser();
            browser.fresh();
            return browser;
        }
    }
}
