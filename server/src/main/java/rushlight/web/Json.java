package rushlight.web;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Objects;
import java.util.stream.Collectors;

/** Writes answers as JSON. */
public final class Json {
    private static final ObjectMapper MAPPER =
            new ObjectMapper().registerModule(new Jdk8Module()).enable(SerializationFeature.INDENT_OUTPUT);

    private static final ObjectWriter COMPACT = MAPPER.writer().without(SerializationFeature.INDENT_OUTPUT);

    private static final ObjectWriter PIECES = MAPPER.writer().without(SerializationFeature.FLUSH_AFTER_WRITE_VALUE);

    private static final ObjectReader STRICT = MAPPER.reader().with(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private Json() {}

    /** An answer as indented JSON with a newline at its end. */
    public static String text(Object answer) {
        try {
            return MAPPER.writeValueAsString(answer) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(
                    "No JSON for " + answer.getClass().getSimpleName(), e);
        }
    }

    /** Writes JSON value by value, indented as {@link #text} does; nothing that is open is closed with it. */
    static JsonGenerator generator(Writer out) throws IOException {
        return PIECES.createGenerator(out)
                .setPrettyPrinter(new DefaultPrettyPrinter())
                .disable(JsonGenerator.Feature.AUTO_CLOSE_JSON_CONTENT);
    }

    /** Writes one value. */
    static void write(JsonGenerator json, Object value) {
        try {
            PIECES.writeValue(json, value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An answer as JSON without a blank too many. */
    public static String compact(Object answer) {
        try {
            return COMPACT.writeValueAsString(answer);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(
                    "No JSON for " + answer.getClass().getSimpleName(), e);
        }
    }

    /**
     * Reads what a program sent.
     *
     * @throws IllegalArgumentException where it is no such JSON; the message says why
     */
    public static <T> T read(byte[] json, Class<T> type) {
        try {
            T value = STRICT.forType(type).readValue(json);
            if (value == null) {
                throw new IllegalArgumentException("it is null.");
            }
            return value;
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(told(e), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is wrong, in words of what was sent and none of the program. */
    private static String told(JsonProcessingException wrong) {
        if (wrong instanceof UnrecognizedPropertyException unknown) {
            return "it has \"" + unknown.getPropertyName() + "\", which means nothing here.";
        }
        if (wrong instanceof JsonMappingException kind) {
            String where = kind.getPath().stream()
                    .map(JsonMappingException.Reference::getFieldName)
                    .filter(Objects::nonNull)
                    .collect(Collectors.joining("."));
            return (where.isEmpty() ? "it" : "\"" + where + "\"") + " is of another kind than is wanted.";
        }
        return wrong.getOriginalMessage().lines().findFirst().orElse("it cannot be read.");
    }
}
