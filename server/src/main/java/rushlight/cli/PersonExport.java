package rushlight.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rushlight.archive.Archive;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.csv.FilmLogWriter;
import rushlight.film.csv.ProspectsWriter;

/** Everything that is kept of one prospect, in one file to hand to him. */
final class PersonExport {
    private static final String READ_ME = """
        Everything that this copy of Rushlight keeps of %s.

        prospect.csv     who he is
        film.csv         every rep that was read of him, as film logs that import again
        everything.trig  all of it as RDF (TriG), with the history of changes, opinions, projections, what was put into
                         reports, and saved questions that name him: the same statements that "rushlight erase" takes away

        Not in it: what is computed from the film whenever somebody asks (assessments, answers, plans), files that were
        exported, printed or backed up before, and the record of who used the program, which names no prospect.
        """;

    private PersonExport() {}

    static void write(Archive archive, Prospect prospect, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        Writer text = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
        zip.putNextEntry(new ZipEntry("read-me.txt"));
        text.write(READ_ME.formatted(prospect.name()));
        text.flush();
        zip.putNextEntry(new ZipEntry("prospect.csv"));
        ProspectsWriter.write(List.of(prospect), text);
        text.flush();
        zip.putNextEntry(new ZipEntry("film.csv"));
        List<Log> logs = archive.logs().stream()
                .filter(log -> log.prospect().id().equals(prospect.id()))
                .toList();
        FilmLogWriter.of(archive.book().taxonomy().film()).write(logs, text);
        text.flush();
        zip.putNextEntry(new ZipEntry("everything.trig"));
        archive.erasing().write(prospect.id(), zip);
        zip.closeEntry();
        zip.finish();
        zip.flush();
    }
}
