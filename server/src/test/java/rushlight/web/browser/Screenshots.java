package rushlight.web.browser;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Takes the pictures of the README over the demo league. Run by {@code client-web/screenshots}. */
public final class Screenshots {
    private static final String GAME = "calder-mill-at-harrow-vale-2025-09-13";
    private static final String NOTES = "lark-hollow-v-thornmere.vtt";
    private static final int TALLEST = 1_400;

    /** One picture: its file, the page, how wide, by day or by night, how tall at most. */
    private record Picture(String name, String path, int width, boolean dark, int tallest) {
        static Picture of(String name, String path) {
            return new Picture(name, path, Browser.DESK, false, TALLEST);
        }
    }

    private static final List<Picture> PICTURES = List.of(
            new Picture("ask", "/", Browser.DESK, false, 760),
            Picture.of("answers", "/?q=edge players who wrong-arm kick-outs"),
            Picture.of("prospect", "/prospect/tavish-mordell"),
            Picture.of("technique", "/technique/bull-rush"),
            new Picture("film", "/film/tavish-mordell", Browser.DESK, false, 1_000),
            new Picture("sheet", "/rep/tavish-mordell/" + GAME + "/r04", Browser.DESK, false, 1_250),
            Picture.of("compare", "/compare?id=tavish-mordell&id=keverne-toll&id=kwame-addlestone"),
            Picture.of("board", "/board"),
            Picture.of("plan", "/plan/lucan-whitlow"),
            new Picture("report", "/report/tavish-mordell", Browser.DESK, false, 1_000),
            new Picture("prospect-dark", "/prospect/keverne-toll", Browser.DESK, true, TALLEST),
            new Picture("prospect-phone", "/prospect/tavish-mordell", Browser.PHONE, false, 1_600),
            new Picture("answers-phone-dark", "/?q=edge players who wrong-arm kick-outs", Browser.PHONE, true, 1_600));

    private static final String SLIPS = """
        rep,prospect,game,quarter,clock,phase,alignment,blocker,exchange,faults,result
        r01,Jory Penwick,Opener,1,14:12,pass-rush,wide-9,right-tackle,speed-rush > [over-set] > up-and-under,,won
        r02,Jory Penwick,Opener,1,13:40,pas-rush,wide-9,right-tackle,speed-rush > [vertical-set],,lost
        r03,Jory Penwick,Opener,1,12:05,run,technique-9,tight-end,[kick-out-block] > rong arm,hi pads,even
        r04,Jory Penwick,Opener,2,9:21,pass-rush,wide-9,right-tackle,bul rush > [sits-down],,lost
        """;

    private Screenshots() {}

    /** Writes the pictures into a folder. */
    public static void main(String... args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        try (Stage stage = Stage.open("")) {
            Browser browser = stage.browser();
            for (Picture picture : PICTURES) {
                browser.look(picture.width(), picture.tallest(), picture.dark());
                browser.open(picture.path());
                settle(browser);
                look(browser, picture);
                take(browser, picture.name(), picture.width(), picture.tallest(), folder);
            }
            browser.look(Browser.DESK, 1_000, false);
            Path csv = Files.writeString(Files.createTempDirectory("slips").resolve("opener.csv"), SLIPS);
            browser.open("/import");
            browser.one("#csv").sendKeys(csv.toString());
            browser.sees("4 faults in opener.csv");
            take(browser, "import", Browser.DESK, TALLEST, folder);
            notes(browser, folder);
        }
    }

    /** Waits until a film stands at its rep, and takes the caret out of the box. */
    private static void settle(Browser browser) {
        browser.script("document.activeElement.blur()");
        browser.waitsUntil(
                "for the film",
                () -> browser.script(
                                "return [...document.querySelectorAll('video[src]')].every(one => one.readyState >= 2)")
                        .equals(true));
    }

    /** Waits for what a page works out by itself, and turns to what it is about. */
    private static void look(Browser browser, Picture picture) {
        switch (picture.name()) {
            case "plan" -> {
                browser.sees("Week by week");
                browser.script("document.getElementById('weeks').scrollIntoView({behavior: 'instant'})");
            }
            case "report" -> browser.sees("Two pages.");
            default -> {}
        }
    }

    /** What was spoken over a game, with the first rep accepted. */
    private static void notes(Browser browser, Path folder) throws IOException {
        Path vtt = Files.createTempDirectory("notes").resolve(NOTES);
        try (InputStream in = Screenshots.class.getResourceAsStream("/rushlight/demo/notes/" + NOTES)) {
            Files.copy(Objects.requireNonNull(in, NOTES), vtt);
        }
        browser.open("/notes");
        browser.one("#notes-file").sendKeys(vtt.toString());
        browser.sees("Accept what is sure");
        browser.click(browser.named("button", "Accept what is sure"));
        browser.script("scrollTo({top: 440, behavior: 'instant'})");
        take(browser, "notes", Browser.DESK, 1_000, folder);
    }

    private static void take(Browser browser, String name, int width, int tallest, Path folder) throws IOException {
        long whole = browser.number("return document.documentElement.scrollHeight");
        long from = browser.number("return Math.round(scrollY)");
        Map<String, Object> clip =
                Map.of("x", 0, "y", from, "width", width, "height", Math.min(whole - from, tallest), "scale", 1);
        Object data = browser.driver()
                .executeCdpCommand(
                        "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true, "clip", clip))
                .get("data");
        Files.write(folder.resolve(name + ".png"), Base64.getDecoder().decode(String.valueOf(data)));
    }
}
