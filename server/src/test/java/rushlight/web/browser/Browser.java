package rushlight.web.browser;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;

/** What a person does and sees. */
final class Browser {
    /** Width of a desk, and of a phone. */
    static final int DESK = 1280;

    static final int PHONE = 390;

    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Duration GLANCE = Duration.ofMillis(40);

    private final ChromeDriver driver;
    private final String address;

    Browser(ChromeDriver driver, String address) {
        this.driver = driver;
        this.address = address;
    }

    ChromeDriver driver() {
        return driver;
    }

    /** A desk, by day, nothing in the cache or in the log. */
    void fresh() {
        look(DESK, 900, false);
        driver.manage().logs().get(LogType.BROWSER);
    }

    /** Sets the size of the window and the setting of the system. */
    void look(int width, int height, boolean dark) {
        cdp(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        cdp(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    }

    /** Opens a page and waits until it is drawn. */
    void open(String path) {
        driver.get(address + path.substring(1));
        drawn();
    }

    /** Waits until the page is drawn. */
    void drawn() {
        until(() -> script("return document.querySelector('main[aria-busy=\"false\"] h1') !== null")
                .equals(true));
    }

    /** Waits until some text is to be seen. */
    void sees(String text) {
        until(() -> text().contains(text), "to see \"" + text + "\"");
    }

    /** What is to be read on the page. */
    String text() {
        return String.valueOf(script("return document.body.innerText"));
    }

    /** Where the page stands. */
    String path() {
        return Objects.requireNonNull(driver.getCurrentUrl()).substring(address.length() - 1);
    }

    /** The first element that fits, once it is there. */
    WebElement one(String css) {
        until(() -> !driver.findElements(By.cssSelector(css)).isEmpty(), "for " + css);
        return driver.findElement(By.cssSelector(css));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    /** A link or button by its words. */
    WebElement named(String css, String words) {
        AtomicReference<WebElement> found = new AtomicReference<>();
        until(
                () -> {
                    shown(css, words).ifPresent(found::set);
                    return found.get() != null;
                },
                "for " + words);
        return found.get();
    }

    /** What is there now; a page that is just drawn anew has it not yet. */
    private Optional<WebElement> shown(String css, String words) {
        try {
            return all(css).stream()
                    .filter(one -> one.isDisplayed() && one.getText().contains(words))
                    .findFirst();
        } catch (StaleElementReferenceException drawnAnew) {
            return Optional.empty();
        }
    }

    void click(WebElement element) {
        script("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", element);
        element.click();
    }

    /** Presses keys, wherever the caret is. */
    void keys(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** Presses a key while others are held. */
    void chord(CharSequence key, Keys... held) {
        Actions actions = new Actions(driver);
        for (Keys one : held) {
            actions.keyDown(one);
        }
        actions.sendKeys(key);
        for (Keys one : held) {
            actions.keyUp(one);
        }
        actions.perform();
    }

    /** The element that has the keyboard. */
    WebElement active() {
        return driver.switchTo().activeElement();
    }

    /** Presses the tab key until the element with this id has the keyboard. */
    void tabTo(String id) {
        for (int i = 0; i < 120; i++) {
            if (id.equals(active().getDomAttribute("id"))) {
                return;
            }
            keys(Keys.TAB);
        }
        throw new AssertionError("The tab key never reaches " + id);
    }

    Object script(String code, Object... arguments) {
        Object found = driver.executeScript(code, arguments);
        return found == null ? "" : found;
    }

    long number(String code) {
        return ((Number) script(code)).longValue();
    }

    void cdp(String command, Map<String, Object> parameters) {
        driver.executeCdpCommand(command, parameters);
    }

    /** What the browser complained about since the last time; what the server refused on purpose is no complaint. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.SEVERE.intValue())
                .map(entry -> entry.getMessage())
                .filter(message -> !message.contains("status of 422") && !message.contains("status of 412"))
                .toList();
    }

    /** Whether the page is wider than the window. */
    boolean scrollsSideways() {
        return script("return document.documentElement.scrollWidth > window.innerWidth")
                .equals(true);
    }

    private void until(Condition condition) {
        until(condition, "for the page to be drawn");
    }

    private void until(Condition condition, String what) {
        new WebDriverWait(driver, PATIENCE, GLANCE)
                .ignoring(StaleElementReferenceException.class)
                .withMessage(() -> "Waited in vain " + what + " at " + path() + ". There stands: " + text())
                .until(ignored -> condition.holds());
    }

    /** Something that comes true. */
    @FunctionalInterface
    interface Condition {
        boolean holds();
    }

    /** Waits until something comes true. */
    void waitsUntil(String what, Condition condition) {
        until(condition, what);
    }
}
