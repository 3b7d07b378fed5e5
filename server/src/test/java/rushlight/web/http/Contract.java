package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** The description of the interface, and what it asks of an answer. */
final class Contract {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String PLANNED = "Planned";

    private final JsonNode document;
    private final JsonSchemaFactory schemas = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    private final Set<String> called = new TreeSet<>();

    Contract() {
        try (InputStream in = Contract.class.getResourceAsStream("/rushlight/api/openapi.json")) {
            this.document = JSON.readTree(Objects.requireNonNull(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Everything it describes as built, such as {@code GET /api/health}. */
    Set<String> operations() {
        return operations(false);
    }

    /** Everything it says is still to come. */
    Set<String> planned() {
        return operations(true);
    }

    /** What was called so far. */
    Set<String> called() {
        return called;
    }

    private Set<String> operations(boolean planned) {
        Set<String> all = new TreeSet<>();
        for (Map.Entry<String, JsonNode> path : document.get("paths").properties()) {
            for (Map.Entry<String, JsonNode> method : path.getValue().properties()) {
                if (method.getValue().path("description").asText().startsWith(PLANNED) == planned) {
                    all.add(method.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey());
                }
            }
        }
        return all;
    }

    /** Holds an answer to the description of its operation: its status, its media type, its shape. */
    void hold(String method, String address, HttpResponse<byte[]> answer) {
        String path = address.replaceFirst("\\?.*$", "");
        JsonNode operation = MissingNode.getInstance();
        for (Map.Entry<String, JsonNode> described : document.get("paths").properties()) {
            JsonNode its = described.getValue().get(method.toLowerCase(Locale.ROOT));
            if (its != null && Route.get(described.getKey(), ctx -> {}).matches(path)) {
                operation = its;
                called.add(method + " " + described.getKey());
            }
        }
        assertThat(operation.isMissingNode())
                .as("%s %s is described", method, path)
                .isFalse();
        JsonNode response = deref(operation.path("responses").path(Integer.toString(answer.statusCode())));
        assertThat(response.isMissingNode())
                .as("%s %s may answer %d: %s", method, address, answer.statusCode(), text(answer))
                .isFalse();
        if (response.path("content").isEmpty()) {
            return;
        }
        String type = answer.headers().firstValue("Content-Type").orElse("").replaceFirst(";.*$", "");
        assertThat(response.get("content").has(type))
                .as("%s %s answers %d as %s", method, address, answer.statusCode(), type)
                .isTrue();
        if (type.endsWith("json")) {
            assertThat(faults(response.get("content").get(type).get("schema"), text(answer)))
                    .as("%s %s", method, address)
                    .isEmpty();
        }
    }

    private Set<ValidationMessage> faults(JsonNode schema, String text) {
        ObjectNode whole = schema.deepCopy();
        whole.set("components", document.get("components"));
        try {
            return schemas.getSchema(whole).validate(JSON.readTree(text));
        } catch (IOException e) {
            throw new UncheckedIOException(text, e);
        }
    }

    private JsonNode deref(JsonNode node) {
        String reference = node.path("$ref").asText();
        return reference.isEmpty() ? node : document.at(reference.substring(1));
    }

    static String text(HttpResponse<byte[]> answer) {
        return new String(answer.body(), StandardCharsets.UTF_8);
    }
}
