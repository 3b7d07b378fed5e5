package rushlight.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import rushlight.archive.Archive;
import rushlight.film.Log;
import rushlight.web.http.Server;

/**
 * Many people at one server: they ask, assess, tag and import at once. All of them count up the note of the same few reps,
 * each after the version he saw, and add reps to the same few games; what was acknowledged must be there at the end.
 */
final class Load {
    private static final List<Work> IN_TURN = List.of(Work.values());
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int SHARED = 4;
    private static final String HEADER = "rep,prospect,game,phase,exchange,second_move_time,result,evaluator,note\n";
    private static final List<String> QUESTIONS = List.of(
            "edge players who wrong-arm kick-outs",
            "who wins with the long arm",
            "who loses the edge on kick-outs",
            "third down sacks",
            "counters to a bull rush when the tackle sits down",
            "drills for feet that stop on contact");
    private static final List<String> PLAYERS = List.of("teo-maravale", "bram-aldersey", "jem-sorrelby");

    /** What one of them does. */
    enum Work {
        ASK,
        ASSESS,
        COUNT_UP,
        ADD,
        IMPORT
    }

    /**
     * What came of it.
     *
     * @param millis how long each piece of work took, in order of time
     * @param errors answers that should not have been
     * @param lost what was acknowledged and is not there
     * @param stale edits that had to be made again, because somebody was quicker
     */
    record Result(Map<Work, List<Double>> millis, List<String> errors, List<String> lost, int stale) {
        int done(Work work) {
            return millis.get(work).size();
        }

        double percentile(Work work, double share) {
            double[] sorted =
                    millis.get(work).stream().mapToDouble(d -> d).sorted().toArray();
            return sorted.length == 0 ? 0 : sorted[(int) Math.ceil(share * sorted.length) - 1];
        }
    }

    private final Archive archive;
    private final HttpClient http = HttpClient.newHttpClient();
    private final Duration think;

    /** @param think how long each waits between two pieces of work, on average */
    Load(Archive archive, Duration think) {
        this.archive = archive;
        this.think = think;
    }

    /** Lets so many work for so long, then looks at what is kept. */
    Result run(int clients, Duration time) throws Exception {
        List<Client> all = new ArrayList<>();
        try (Server server = Server.start(archive, 0, true)) {
            String address = "http://localhost:" + server.port();
            Client first = new Client(-1, address);
            for (int i = 0; i < SHARED; i++) {
                first.send(
                        "POST", "/api/import?name=shared.csv", "text/csv", HEADER + row("Shared " + i, "count", "0"));
            }
            IntStream.range(0, clients).forEach(i -> all.add(new Client(i, address)));
            long end = System.nanoTime() + time.toNanos();
            work(all, end);
            all.add(first);
        }
        return result(all);
    }

    private static void work(List<Client> clients, long end) throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(clients.size());
        try {
            List<Callable<Void>> works = new ArrayList<>();
            clients.forEach(client -> works.add(() -> client.until(end)));
            for (Future<Void> done : threads.invokeAll(works)) {
                done.get();
            }
        } finally {
            threads.shutdown();
        }
    }

    private Result result(List<Client> clients) {
        Map<Work, List<Double>> millis = new EnumMap<>(Work.class);
        List<String> errors = new ArrayList<>();
        List<String> lost = new ArrayList<>();
        int[] counted = new int[SHARED];
        int stale = 0;
        Set<String> kept = new HashSet<>();
        List<Log> logs = archive.logs();
        logs.forEach(log -> log.readings()
                .forEach(r -> kept.add(r.rep().prospect() + "/" + r.rep().game() + "/"
                        + r.rep().rep())));
        for (Work work : Work.values()) {
            List<Double> its = new ArrayList<>();
            clients.forEach(c -> its.addAll(c.millis.get(work)));
            millis.put(work, its);
        }
        for (Client client : clients) {
            errors.addAll(client.errors);
            client.acknowledged.stream().filter(rep -> !kept.contains(rep)).forEach(lost::add);
            Arrays.setAll(counted, i -> counted[i] + client.counted[i]);
            stale += client.stale;
        }
        for (int i = 0; i < SHARED; i++) {
            int there = note(logs, i);
            if (there != counted[i]) {
                lost.add("Shared " + i + " was counted up " + counted[i] + " times and stands at " + there);
            }
        }
        int reps = kept.size();
        int indexed = archive.watch(film -> film.size());
        if (indexed != reps || archive.lag() != 0) {
            lost.add("The index has " + indexed + " of " + reps + " reps");
        }
        return new Result(millis, errors, lost, stale);
    }

    private static int note(List<Log> logs, int shared) {
        return logs.stream()
                .flatMap(log -> log.readings().stream())
                .filter(r -> r.rep().game().equals("shared-" + shared)
                        && r.rep().rep().equals("count"))
                .mapToInt(r -> Integer.parseInt(r.all("note").get(0)))
                .sum();
    }

    private static String row(String game, String rep, String note) {
        return rep + ",Load Runner," + game + ",pass-rush,long-arm > [sits-down] > arm-over > flatten,yes,won,L. Oad,"
                + note + "\n";
    }

    /** One of the many, with what he was told is kept. */
    private final class Client {
        private final int number;
        private final String address;
        private final Random random;
        private final Map<Work, List<Double>> millis = new EnumMap<>(Work.class);
        private final List<String> errors = new ArrayList<>();
        private final List<String> acknowledged = new ArrayList<>();
        private final int[] counted = new int[SHARED];
        private int stale;
        private int made;

        Client(int number, String address) {
            this.number = number;
            this.address = address;
            this.random = new Random(number);
            Arrays.stream(Work.values()).forEach(work -> millis.put(work, new ArrayList<>()));
        }

        Void until(long end) throws Exception {
            while (System.nanoTime() < end || made < Work.values().length) {
                Thread.sleep((long) (think.toMillis() * 2 * random.nextDouble()));
                Work work = next();
                long start = System.nanoTime();
                boolean isDone = work(work);
                if (isDone) {
                    millis.get(work).add((System.nanoTime() - start) / 1e6);
                }
            }
            return null;
        }

        private Work next() {
            if (made < IN_TURN.size()) {
                return IN_TURN.get(made); // each of them does everything at least once
            }
            int dice = random.nextInt(100);
            if (dice < 60) {
                return Work.ASK;
            }
            if (dice < 78) {
                return Work.ASSESS;
            }
            return dice < 88 ? Work.COUNT_UP : dice < 96 ? Work.ADD : Work.IMPORT;
        }

        private boolean work(Work work) throws Exception {
            made++;
            return switch (work) {
                case ASK -> good(send("GET", "/api/ask?limit=10&q=" + url(any(QUESTIONS)), "", ""));
                case ASSESS -> good(send("GET", "/api/prospects/" + any(PLAYERS) + "/assessment", "", ""));
                case COUNT_UP -> countUp(random.nextInt(SHARED));
                case ADD -> add("Shared " + random.nextInt(SHARED), "c" + number + "-" + made);
                case IMPORT -> bring("Own " + number, "c" + number + "-" + made);
            };
        }

        private boolean countUp(int shared) throws Exception {
            String rep = "/api/reps/load-runner/shared-" + shared + "/count";
            while (true) {
                HttpResponse<String> seen = send("GET", rep, "", "");
                if (!good(seen)) {
                    return false;
                }
                ObjectNode cells = (ObjectNode) JSON.readTree(seen.body()).get("cells");
                cells.put("note", Integer.toString(cells.get("note").asInt() + 1));
                HttpResponse<String> answer = send(
                        "PUT",
                        rep,
                        "application/json",
                        cells(cells),
                        "If-Match",
                        seen.headers().firstValue("ETag").orElseThrow());
                if (answer.statusCode() == 412) {
                    stale++;
                    continue;
                }
                if (good(answer)) {
                    counted[shared]++;
                    return true;
                }
                return false;
            }
        }

        private boolean add(String game, String rep) throws Exception {
            ObjectNode cells = JSON.createObjectNode();
            String[] names = HEADER.strip().split(",", -1);
            String[] values = row(game, rep, "added").strip().split(",", -1);
            IntStream.range(0, names.length).forEach(i -> cells.put(names[i], values[i]));
            return acknowledged(good(send("POST", "/api/reps", "application/json", cells(cells))), game, rep);
        }

        private boolean bring(String game, String rep) throws Exception {
            String csv = HEADER + row(game, rep, "brought");
            return acknowledged(good(send("POST", "/api/import?mode=add&name=own.csv", "text/csv", csv)), game, rep);
        }

        private boolean acknowledged(boolean isKept, String game, String rep) {
            if (isKept) {
                acknowledged.add("load-runner/" + game.toLowerCase(Locale.ROOT).replace(' ', '-') + "/" + rep);
            }
            return isKept;
        }

        private boolean good(HttpResponse<String> answer) {
            if (answer.statusCode() == 200 || answer.statusCode() == 201) {
                return true;
            }
            errors.add(
                    answer.request().method() + " " + answer.uri() + ": " + answer.statusCode() + " " + answer.body());
            return false;
        }

        private HttpResponse<String> send(String method, String path, String type, String body, String... headers)
                throws IOException, InterruptedException {
            HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address + path));
            if (!type.isEmpty()) {
                request.header("Content-Type", type);
            }
            if (headers.length > 0) {
                request.headers(headers);
            }
            return http.send(
                    request.method(method, body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body))
                            .build(),
                    BodyHandlers.ofString());
        }

        private <T> T any(List<T> some) {
            return some.get(random.nextInt(some.size()));
        }
    }

    private static String cells(JsonNode cells) {
        return JSON.createObjectNode().set("cells", cells).toString();
    }

    private static String url(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
