package rushlight.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.io.FileUtils;
import rushlight.archive.Archive;
import rushlight.web.http.Server;

/**
 * Runs the usual commands once over the invented league, so that the runtime can lay by the classes that they load, and lays
 * the solver's library out beside them. The launcher calls it after a build; nobody else needs it, and nothing needs what it makes.
 */
final class Rehearsal {
    private static final Pattern LIBRARY = Pattern.compile("ortools-[^/]+/([^/]+)");
    private static final String WHO = "Tavish Mordell";

    private Rehearsal() {}

    /** Takes the folder to lay things out in, and the jar the program is in; ends with 0 where all went well. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Path data = folder.resolve("data");
        library(Path.of(args[1]), Files.createDirectories(folder.resolve("native")));
        boolean done = true;
        for (List<String> command : commands(data, folder.resolve("report.pdf"))) {
            done &= run(command);
        }
        serve(data);
        FileUtils.deleteDirectory(data.toFile());
        Files.deleteIfExists(folder.resolve("report.pdf"));
        System.exit(done ? 0 : 1);
    }

    private static List<List<String>> commands(Path data, Path pdf) {
        String there = data.toString();
        return List.of(
                List.of("demo", "--data", there),
                List.of("ask", "--data", there, "edge players who wrong-arm kick-outs"),
                List.of("plan", "--data", there, WHO),
                List.of("report", "--data", there, WHO, "-o", pdf.toString()),
                List.of("counters", "--data", there, "bull-rush", "--when", "sits down"),
                List.of("technique", "--data", there, "wrong-arm"));
    }

    private static boolean run(List<String> command) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return Main.run(nowhere, nowhere, command.toArray(String[]::new)) == 0;
    }

    private static void serve(Path data) throws IOException {
        try (Archive archive = Archive.open(data);
                Server server = Server.start(archive, 0, true)) {
            for (String page : List.of("", "api/prospects", "api/prospects/tavish-mordell/assessment")) {
                HttpURLConnection asked = (HttpURLConnection)
                        URI.create(server.address() + page).toURL().openConnection();
                try (InputStream answer = asked.getInputStream()) {
                    answer.transferTo(OutputStream.nullOutputStream());
                }
            }
        }
    }

    /** The files of the solver's library side by side, as the runtime looks for them. */
    private static void library(Path jar, Path folder) throws IOException {
        try (JarFile packed = new JarFile(jar.toFile())) {
            for (JarEntry entry : (Iterable<JarEntry>) packed.stream()::iterator) {
                Matcher named = LIBRARY.matcher(entry.getName());
                if (named.matches()) {
                    try (InputStream in = packed.getInputStream(entry)) {
                        Files.copy(in, folder.resolve(named.group(1)));
                    }
                }
            }
        }
    }
}
