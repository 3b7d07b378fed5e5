package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.FieldInfo;
import org.apache.lucene.index.FieldInfos;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.util.BytesRef;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The power goes, the laptop lid falls, somebody kills the program: what was said to be stored is stored, nothing is half
 * there, and whoever comes next just opens the folder. One kill strikes several folders that are written at once, each
 * at a point of its own; the folders go on being used from kill to kill.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class KilledTest {
    private static final int FOLDERS = 5;
    private static final int SHORT = 20;
    private static final long SEED = 20260906;
    private static final int LONGEST_MILLIS = 900;
    private static final Book BOOK = Book.packaged();

    @TempDir
    private Path home;

    @Test
    void killed_at_any_point_nothing_acknowledged_is_lost_nothing_is_half_and_the_index_is_as_if_made_anew()
            throws Exception {
        String asked = System.getenv("RUSHLIGHT_KILLS");
        int points = asked == null || asked.isBlank() ? SHORT : Integer.parseInt(asked.strip());
        Random dice = new Random(SEED);
        int[] done = new int[FOLDERS];
        int inFlight = 0;
        List<KilledScript> scripts = new ArrayList<>();
        List<String> states = new ArrayList<>();
        for (int i = 0; i < FOLDERS; i++) {
            scripts.add(new KilledScript(i));
            states.add(KilledScript.state(Map.of(), Map.of()));
        }
        for (int struck = 0; struck < points; struck += FOLDERS) {
            int[] acknowledged = killed(done, dice.nextInt(LONGEST_MILLIS));
            for (int i = 0; i < FOLDERS; i++) {
                while (done[i] <= acknowledged[i]) {
                    states.set(i, scripts.get(i).after(scripts.get(i).step(done[i])));
                    done[i]++;
                }
                try (Archive archive = Archive.open(folder(i), () -> BOOK, Layouts.KNOWN)) {
                    String found = KilledWriter.state(archive);
                    if (!found.equals(states.get(i))) {
                        // The change that was under way: all of it, or nothing.
                        states.set(i, scripts.get(i).after(scripts.get(i).step(done[i])));
                        done[i]++;
                        inFlight++;
                    }
                    assertThat(found)
                            .as("folder %d after step %d", i, done[i] - 1)
                            .isEqualTo(states.get(i));
                }
                SortedSet<String> caughtUp = index(i);
                try (Archive archive = Archive.open(folder(i), () -> BOOK, Layouts.KNOWN)) {
                    archive.rebuild();
                }
                SortedSet<String> anew = index(i);
                assertThat(caughtUp).isNotEmpty();
                assertThat(only(caughtUp, anew))
                        .as("in the index that caught up alone")
                        .isEmpty();
                assertThat(only(anew, caughtUp))
                        .as("in the index made anew alone")
                        .isEmpty();
            }
        }
        int all = 0;
        for (int some : done) {
            all += some;
        }
        System.out.println("Killed at " + points + " points: " + all + " changes, " + inFlight
                + " of them whole though not acknowledged.");
        assertThat(all).as("changes that the writers came to").isGreaterThan(points);
    }

    @Test
    void a_disk_that_fills_up_ends_the_work_in_a_sentence_and_takes_nothing_that_was_acknowledged() throws Exception {
        KilledScript script = new KilledScript(0);
        int begun = 12;
        KilledWriter.write(BOOK, 0, folder(0), 0, begun);
        long nodes = largest(folder(0).resolve("store"));
        // A limit on the length of files stands in for a full disk: the system refuses the write in the same place.
        List<String> command =
                new ArrayList<>(List.of("bash", "-c", "ulimit -f " + (nodes / 1024 + 12) + "; exec \"$@\"", "-"));
        command.addAll(java("-Drushlight.steps=2000"));
        command.addAll(List.of(folder(0).toString(), Integer.toString(begun)));
        int last = begun - 1;
        String told = "";
        Process writer = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                if (line.startsWith("!")) {
                    told = line;
                } else {
                    last = Integer.parseInt(line.split(" ", -1)[1]);
                }
            }
        } finally {
            writer.destroyForcibly();
            writer.waitFor();
        }
        assertThat(told).contains("full").contains("Make room");
        List<String> may = new ArrayList<>();
        for (int number = 0; number <= last + 1; number++) {
            may.add(script.after(script.step(number)));
        }
        try (Archive archive = Archive.open(folder(0), () -> BOOK, Layouts.KNOWN)) {
            assertThat(KilledWriter.state(archive)).isIn(may.get(last), may.get(last + 1));
        }
    }

    /** The longest file of a store that grows by what is written, and not by whole segments. */
    private static long largest(Path store) throws IOException {
        try (Stream<Path> all = Files.walk(store)) {
            return all.filter(file -> file.toString().endsWith("nodes-data.obj"))
                    .mapToLong(file -> file.toFile().length())
                    .max()
                    .orElseThrow();
        }
    }

    private static List<String> java(String... more) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-XX:+UseSerialGC",
                "-Xmx768m",
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(List.of(more));
        command.add(KilledWriter.class.getName());
        return command;
    }

    /** Starts the writer, kills it some time after every folder had a change, and gives the last step each acknowledged. */
    private int[] killed(int[] done, int millis) throws IOException, InterruptedException {
        List<String> command = java();
        int[] last = new int[FOLDERS];
        for (int i = 0; i < FOLDERS; i++) {
            last[i] = done[i] - 1;
            command.add(folder(i).toString());
            command.add(Integer.toString(done[i]));
        }
        Process writer = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        Thread killer = new Thread(() -> {
            try {
                Thread.sleep(millis);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            writer.toHandle().destroyForcibly(); // unlike the process, this leaves what it said to be read
        });
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                assertThat(line).doesNotStartWith("!");
                String[] words = line.split(" ", -1);
                if (words.length < 2 || words[1].isEmpty()) {
                    continue; // cut off in the middle of saying it
                }
                last[Integer.parseInt(words[0])] = Integer.parseInt(words[1]);
                if (killer.getState() == Thread.State.NEW) {
                    killer.start();
                }
            }
        } finally {
            writer.destroyForcibly();
            writer.waitFor();
            killer.join();
        }
        return last;
    }

    private Path folder(int number) {
        return home.resolve("folder-" + number);
    }

    /** Everything the index holds: each document as it is stored, and each term of each field with its documents. */
    private SortedSet<String> index(int number) throws IOException {
        SortedSet<String> all = new TreeSet<>();
        try (FSDirectory directory = FSDirectory.open(folder(number).resolve("index"));
                DirectoryReader reader = DirectoryReader.open(directory)) {
            for (LeafReaderContext leaf : reader.leaves()) {
                tell(leaf.reader(), all);
            }
        }
        return all;
    }

    private static List<String> only(SortedSet<String> these, SortedSet<String> others) {
        return these.stream().filter(one -> !others.contains(one)).limit(20).toList();
    }

    /** Sets are packed in an order that each start of the program deals anew; which bytes there are stays the same. */
    private static String packed(BytesRef stored) {
        byte[] bytes = BytesRef.deepCopyOf(stored).bytes;
        Arrays.sort(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    private static void tell(LeafReader leaf, SortedSet<String> all) throws IOException {
        String[] names = new String[leaf.maxDoc()];
        for (int document = 0; document < leaf.maxDoc(); document++) {
            if (leaf.getLiveDocs() == null || leaf.getLiveDocs().get(document)) {
                names[document] = leaf.storedFields().document(document).getFields().stream()
                        .map(field -> field.name() + "="
                                + (field.binaryValue() == null ? field.stringValue() : packed(field.binaryValue())))
                        .sorted()
                        .toList()
                        .toString();
                all.add(names[document]);
            }
        }
        FieldInfos fields = leaf.getFieldInfos();
        for (FieldInfo field : fields) {
            Terms terms = leaf.terms(field.name);
            if (terms == null) {
                continue;
            }
            TermsEnum each = terms.iterator();
            for (var term = each.next(); term != null; term = each.next()) {
                PostingsEnum postings = each.postings(null, PostingsEnum.NONE);
                for (int document = postings.nextDoc();
                        document != DocIdSetIterator.NO_MORE_DOCS;
                        document = postings.nextDoc()) {
                    if (names[document] != null) {
                        all.add(field.name + ":" + term + " in " + names[document].hashCode());
                    }
                }
            }
        }
    }
}
