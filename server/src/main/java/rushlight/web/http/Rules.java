package rushlight.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rushlight.accounts.Role;
import rushlight.knowledge.BrokenBookException;

/**
 * Who may ask for what. The description of the interface is the one place where that stands: {@code x-role} of each operation
 * is {@code anyone} or a role, {@code x-costly} and {@code x-recorded} say more. What is not described answers to nobody.
 */
final class Rules {
    static final String DESCRIPTION = "/rushlight/api/openapi.json";
    private static final String ANYONE = "anyone";

    private final Map<String, Rule> rules = new HashMap<>();

    private Rules() {}

    /** Those of the description that was packed with the program. */
    static Rules described() {
        try (InputStream in = Rules.class.getResourceAsStream(DESCRIPTION)) {
            if (in == null) {
                throw new BrokenBookException("The program was packed without " + DESCRIPTION + ".");
            }
            return of(new ObjectMapper().readTree(in));
        } catch (IOException e) {
            throw new UncheckedIOException(DESCRIPTION, e);
        }
    }

    static Rules of(JsonNode description) {
        Rules all = new Rules();
        for (Map.Entry<String, JsonNode> path : description.path("paths").properties()) {
            for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
                all.rules.put(
                        operation.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey(), rule(operation.getValue()));
            }
        }
        return all;
    }

    Rule of(Route route) {
        return rules.getOrDefault(route.method().name() + " " + route.path(), Rule.CLOSED);
    }

    private static Rule rule(JsonNode operation) {
        String word = operation.path("x-role").asText();
        boolean anyone = word.equals(ANYONE);
        Optional<Role> role = Role.of(word);
        if (!anyone && role.isEmpty()) {
            return Rule.CLOSED;
        }
        return new Rule(
                anyone,
                role,
                operation.path("x-costly").asBoolean(),
                operation.path("x-recorded").asBoolean());
    }
}
