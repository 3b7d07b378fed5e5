package rushlight.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/** How long the program as people start it takes until it serves a folder. */
final class Started {
    private static final int RUNS = 5;

    private Started() {}

    /** Median and worst of some starts, seconds, after one that nobody counts. */
    static String on(Path folder) throws IOException, InterruptedException {
        double[] times = new double[RUNS];
        once(folder);
        for (int run = 0; run < RUNS; run++) {
            times[run] = once(folder);
        }
        Arrays.sort(times);
        return String.format(Locale.ROOT, "%.2f, at most %.2f", times[RUNS / 2], times[RUNS - 1]);
    }

    private static double once(Path folder) throws IOException, InterruptedException {
        long start = System.nanoTime();
        Process server = new ProcessBuilder("./rushlight", "serve", "--data", folder.toString(), "--port", "0")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8))) {
            String line = said.readLine();
            double took = (System.nanoTime() - start) / 1e9;
            if (line == null || !line.startsWith("Rushlight shows ")) {
                throw new IllegalStateException("The server did not start: " + line);
            }
            return took;
        } finally {
            server.destroy();
            server.waitFor();
        }
    }
}
