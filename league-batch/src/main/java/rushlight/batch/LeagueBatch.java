package rushlight.batch;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.storage.StorageLevel;

/**
 * Assesses every prospect of a folder of film logs as one Spark job and writes what {@code rushlight assess --log FILE...
 * --format json} writes of the same files in order of their names, byte for byte.
 *
 * <p>A prospect is the unit of work: files are read where they lie, logs go to whoever has the prospect, and what is said of
 * him hangs on nobody else. Where the logs of one evaluator and another meet, the file that stands first by name counts, as
 * on one machine.
 */
public final class LeagueBatch {
    private final JavaSparkContext spark;
    private final int parts;

    /**
     * @param spark where the work is done
     * @param parts into how many parts files and prospects are dealt, at least 1
     */
    public LeagueBatch(JavaSparkContext spark, int parts) {
        this.spark = spark;
        this.parts = parts;
    }

    /**
     * Assesses the logs of a folder.
     *
     * @param folder the folder of {@code .csv} files, as the cluster reaches it
     * @param out the file to write; it is there whole, or as it was before
     * @return the faults of the files, in order; where there is one, nothing was assessed and nothing written
     * @throws IOException when the file cannot be written
     */
    public List<String> assess(String folder, Path out) throws IOException {
        JavaRDD<ReadFile> files = spark.binaryFiles(folder + "/*.csv", parts)
                .map(file -> ReadFile.of(file._1(), file._2()))
                .persist(StorageLevel.MEMORY_AND_DISK_SER());
        try {
            List<String> faults = files.flatMap(file -> file.faults().iterator())
                    .sortBy(text -> text, true, 1)
                    .collect();
            if (faults.isEmpty()) {
                assess(files, out);
            }
            return faults;
        } finally {
            files.unpersist();
        }
    }

    private void assess(JavaRDD<ReadFile> files, Path out) throws IOException {
        // Sorting looks at everything once before it sorts: what was assessed for that look is kept.
        JavaPairRDD<String, String> said = files.flatMapToPair(ReadFile::byProspect)
                .groupByKey(parts)
                .mapValues(Pieces::assessment)
                .persist(StorageLevel.MEMORY_AND_DISK_SER());
        try {
            write(said.sortByKey().values().toLocalIterator(), out);
        } finally {
            said.unpersist();
        }
    }

    /** Writes the objects as one array, in the form of the program's own. */
    private static void write(Iterator<String> objects, Path out) throws IOException {
        Path beside = out.resolveSibling(out.getFileName() + ".part");
        try (BufferedWriter writer = Files.newBufferedWriter(beside, StandardCharsets.UTF_8)) {
            writer.write("[ ");
            String between = "";
            while (objects.hasNext()) {
                writer.write(between);
                writer.write(objects.next());
                between = ", ";
            }
            writer.write(between.isEmpty() ? "]\n" : " ]\n");
        }
        Files.move(beside, out, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Runs the job; the master is Spark's own setting ({@code spark.master}), this machine where none is given.
     *
     * @param arguments the folder of film logs, and the file to write
     * @throws IOException when the file cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 2) {
            System.err.println("Give the folder of film logs and the file to write: LeagueBatch FOLDER OUT.json");
            System.exit(2);
        }
        SparkConf settings = new SparkConf().setAppName("Rushlight: a league").setIfMissing("spark.master", "local[*]");
        try (JavaSparkContext spark = new JavaSparkContext(settings)) {
            List<String> faults =
                    new LeagueBatch(spark, spark.defaultParallelism() * 4).assess(arguments[0], Path.of(arguments[1]));
            if (!faults.isEmpty()) {
                faults.forEach(System.err::println);
                System.err.println("Nothing was assessed. Mend these files first: rushlight check FILE.");
                System.exit(1);
            }
        }
    }
}
