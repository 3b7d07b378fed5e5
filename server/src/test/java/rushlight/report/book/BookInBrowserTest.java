package rushlight.report.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import rushlight.web.browser.Barriers;
import rushlight.web.browser.OnStage;

/** The book as a reader opens it: from the disk, on a phone and on a desk. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@ResourceLock(OnStage.CHROMIUM)
class BookInBrowserTest {
    private static final String CHROMIUM = "/usr/bin/chromium";
    private static final String DRIVER = "/usr/bin/chromedriver";

    private ChromeDriver browser = start();

    private static ChromeDriver start() {
        if (!new File(CHROMIUM).canExecute() || !new File(DRIVER).canExecute()) {
            throw new IllegalStateException("This test opens the book in Chromium. Install it: apt-get install chromium"
                    + " chromium-driver (./check does so where it can).");
        }
        LoggingPreferences logging = new LoggingPreferences();
        logging.enable(LogType.BROWSER, Level.WARNING);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync");
        options.setCapability("goog:loggingPrefs", logging);
        ChromeDriver driver = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(new File(DRIVER))
                        .usingAnyFreePort()
                        .build(),
                options);
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
        return driver;
    }

    @BeforeAll
    void the_book_is_there() {
        assertThat(Published.book().resolve("index.html")).exists();
    }

    @AfterAll
    void the_browser_closes() {
        browser.quit();
    }

    /** One page of every kind of concept and every kind of page, at the width of a phone. */
    @Test
    void on_a_phone_no_page_runs_out_of_the_screen() {
        screen(390, "light");
        List<String> names = new ArrayList<>(List.of("index.html", "a-z.html", "sources.html"));
        names.addAll(List.of("kind/drill.html", "kind/finding.html", "concept/long-arm.html"));
        names.addAll(List.of("concept/kick-out-block.html", "concept/technique-7.html", "concept/wing-outside.html"));
        open("index.html");
        List<String> kinds = browser.findElements(By.cssSelector(".list dt a")).stream()
                .map(a -> a.getDomAttribute("href"))
                .toList();
        assertThat(kinds).hasSizeGreaterThan(25);
        for (String kind : kinds) {
            open(kind);
            String first = browser.findElement(By.cssSelector(".list dt a")).getDomAttribute("href");
            names.add(String.valueOf(first).replace("../", ""));
        }
        for (String name : names) {
            open(name);
            Object wide = browser.executeScript("return document.documentElement.scrollWidth");
            assertThat(wide).as("width of " + name).isEqualTo(390L);
            double smallest = number("""
                    return Math.min(99, ...[...document.querySelectorAll('svg text')].map(
                        t => parseFloat(getComputedStyle(t).fontSize) * t.ownerSVGElement.getScreenCTM().a))
                    """);
            assertThat(smallest).as("letters in drawings of " + name).isGreaterThan(9);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "index.html, light",
        "a-z.html, dark",
        "concept/long-arm.html, light",
        "concept/long-arm.html, dark",
        "concept/kick-out-block.html, dark",
        "concept/technique-7.html, light",
        "sources.html, light"
    })
    void nothing_keeps_a_reader_out(String name, String scheme) {
        screen(1280, scheme);
        open(name);
        assertThat(Barriers.on(browser)).isEmpty();
    }

    @Test
    void the_list_of_names_can_be_filtered_from_the_disk_and_nothing_complains() {
        screen(1280, "light");
        open("a-z.html");
        long all = shown();
        browser.findElement(By.id("filter")).sendKeys("kick-out");
        assertThat(shown()).isBetween(1L, all / 10);
        assertThat(browser.findElement(By.cssSelector("[role=status]")).getText())
                .contains("name");
        browser.findElement(By.id("filter")).clear();
        browser.findElement(By.id("filter")).sendKeys(" ");
        assertThat(shown()).isEqualTo(all);
        assertThat(browser.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
    }

    private long shown() {
        return (long)
                number("return [...document.querySelectorAll('.names-list li')].filter(li => li.offsetParent).length");
    }

    private double number(String script) {
        return browser.executeScript(script) instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    private void open(String name) {
        browser.get(Published.book().resolve(name).toUri().toString());
    }

    private void screen(int width, String scheme) {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", width < 500));
    }
}
