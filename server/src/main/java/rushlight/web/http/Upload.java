package rushlight.web.http;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A file that was sent, set aside until it is read: as the body itself, or as the part {@code file} of a form. */
final class Upload implements AutoCloseable {
    private static final long LONGEST = 256L << 20;
    private static final int LONGEST_NAME = 200;

    private final String name;
    private final Path path;

    private Upload(String name, Path path) {
        this.name = name;
        this.path = path;
    }

    static Upload of(Context ctx) {
        String type = Body.mediaType(ctx);
        if (type.equals("multipart/form-data")) {
            UploadedFile file = Body.file(ctx);
            return kept(name(ctx, file.filename()), file.content());
        }
        if (type.equals("text/csv") || type.equals("text/plain")) {
            return kept(name(ctx, "upload.csv"), ctx.bodyInputStream());
        }
        throw Problem.of(415, "Send a CSV, as Content-Type: text/csv or as a form with a part named \"file\".")
                .thrown();
    }

    /** The name it came under, without folders. */
    String name() {
        return name;
    }

    Path path() {
        return path;
    }

    InputStream open() throws IOException {
        return Files.newInputStream(path);
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String name(Context ctx, String otherwise) {
        String given = Request.word(ctx, "name").orElse(otherwise);
        String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1)
                .strip();
        String cut = last.length() > LONGEST_NAME ? last.substring(0, LONGEST_NAME) : last;
        return Optional.of(cut).filter(text -> !text.isEmpty()).orElse("upload.csv");
    }

    private static Upload kept(String name, InputStream content) {
        try (InputStream in = content) {
            Path path = Files.createTempFile("rushlight-", ".csv");
            try (OutputStream out = Files.newOutputStream(path)) {
                copy(in, out);
            } catch (IOException | ProblemException e) {
                Files.deleteIfExists(path);
                throw e;
            }
            return new Upload(name, path);
        } catch (IOException e) {
            throw new UncheckedIOException("The upload broke off.", e);
        }
    }

    private static void copy(InputStream in, OutputStream out) throws IOException {
        byte[] buffer = new byte[1 << 16];
        long total = 0;
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            total += read;
            if (total > LONGEST) {
                throw Problem.of(
                                413,
                                "The file is longer than " + (LONGEST >> 20) + " MB. Import it in parts, or with"
                                        + " the command rushlight import.")
                        .thrown();
            }
            out.write(buffer, 0, read);
        }
    }
}
