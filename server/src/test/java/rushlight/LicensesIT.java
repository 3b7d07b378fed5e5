package rushlight;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** What ships beside our own: every library is listed, and may be passed on under the license of the program. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LicensesIT {
    /** Licenses a program under Apache 2.0 may be shipped with, as SPDX and the libraries themselves write them. */
    private static final Set<String> MAY_SHIP = Set.of(
            "Apache-2.0",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "CC0-1.0",
            "CDDL-1.0",
            "EPL-1.0",
            "EPL-2.0",
            "LGPL-2.1-only",
            "LGPL-2.1-or-later",
            "MIT",
            "MIT-0",
            "MPL-2.0",
            "W3C");

    @Test
    void every_library_that_ships_has_a_license_that_may_ship() throws IOException {
        TreeMap<String, Set<String>> strangers = new TreeMap<>();
        for (JsonNode library : libraries()) {
            Set<String> licenses = licenses(library);
            if (licenses.stream().noneMatch(MAY_SHIP::contains)) {
                strangers.put(name(library), licenses);
            }
        }

        assertThat(strangers)
                .as("libraries whose license nobody has looked at: look, then list it or leave the library out")
                .isEmpty();
    }

    @Test
    void the_list_names_what_the_program_stands_on_and_nothing_that_only_tests_need() throws IOException {
        List<String> names = libraries().stream().map(LicensesIT::name).toList();

        assertThat(names)
                .contains(
                        "jena-tdb2",
                        "jena-rdfconnection",
                        "lucene-core",
                        "javalin",
                        "picocli",
                        "ortools-java",
                        "openhtmltopdf-pdfbox")
                .doesNotContain(
                        "junit-jupiter",
                        "jena-fuseki-main",
                        "selenium-chrome-driver",
                        "rdf4j-sail-memory",
                        "spark-core_2.13");
        assertThat(libraries())
                .allSatisfy(library -> assertThat(library.path("hashes"))
                        .as(name(library))
                        .anySatisfy(
                                hash -> assertThat(hash.path("alg").asText()).isEqualTo("SHA-256")));
    }

    private static List<JsonNode> libraries() throws IOException {
        String bom = Objects.requireNonNull(System.getProperty("rushlight.bom"), "rushlight.bom");
        JsonNode read = new ObjectMapper().readTree(Path.of(bom).toFile());
        List<JsonNode> libraries = new ArrayList<>();
        read.path("components").forEach(one -> {
            if (!one.path("group").asText().equals("rushlight")) {
                libraries.add(one);
            }
        });
        return libraries;
    }

    private static String name(JsonNode library) {
        return library.path("name").asText();
    }

    private static Set<String> licenses(JsonNode library) {
        Set<String> licenses = new TreeSet<>();
        library.path("licenses").forEach(one -> {
            JsonNode license = one.path("license");
            licenses.add(
                    one.has("expression")
                            ? one.path("expression").asText()
                            : license.path("id").asText(license.path("name").asText()));
        });
        return licenses;
    }
}
