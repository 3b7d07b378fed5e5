package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.semanticweb.HermiT.ReasonerFactory;
import org.semanticweb.elk.owlapi.ElkReasonerFactory;
import org.semanticweb.owlapi.apibinding.OWLManager;
import org.semanticweb.owlapi.io.StringDocumentSource;
import org.semanticweb.owlapi.model.OWLOntology;
import org.semanticweb.owlapi.model.OWLOntologyCreationException;
import org.semanticweb.owlapi.profiles.Profiles;
import org.semanticweb.owlapi.reasoner.OWLReasoner;
import org.semanticweb.owlapi.reasoner.OWLReasonerFactory;

@DisplayNameGeneration(ReplaceUnderscores.class)
class OwlTest {
    private static final String SCHEMA = OntologyFiles.text(OntologyFiles.file("schema.ttl"));

    static List<OWLReasonerFactory> reasoners() {
        return List.of(new ElkReasonerFactory(), new ReasonerFactory());
    }

    @Test
    void the_schema_stays_inside_owl_2_el() throws OWLOntologyCreationException {
        assertThat(Profiles.OWL2_EL.checkOntology(read(SCHEMA)).getViolations()).isEmpty();
    }

    @Test
    void a_schema_that_leaves_owl_2_el_is_noticed() throws OWLOntologyCreationException {
        OWLOntology outside = read(SCHEMA + "\nrl:commonFault owl:inverseOf rl:trains .\n");
        assertThat(Profiles.OWL2_EL.checkOntology(outside).getViolations()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("reasoners")
    void the_schema_is_consistent_and_every_class_can_have_members(OWLReasonerFactory factory)
            throws OWLOntologyCreationException {
        OWLOntology schema = read(SCHEMA);
        assertThat(schema.classesInSignature().count()).isGreaterThan(40);
        OWLReasoner reasoner = factory.createReasoner(schema);
        assertThat(reasoner.isConsistent()).isTrue();
        assertThat(unsatisfiable(reasoner)).isEmpty();
        reasoner.dispose();
    }

    @ParameterizedTest
    @MethodSource("reasoners")
    void a_class_that_can_have_no_member_is_found(OWLReasonerFactory factory) throws OWLOntologyCreationException {
        OWLReasoner reasoner = factory.createReasoner(
                read(SCHEMA + "\nrl:Planted a owl:Class ; rdfs:subClassOf rl:Drill , rl:Skill .\n"));
        assertThat(unsatisfiable(reasoner)).containsExactly("https://rushlight.example/def#Planted");
        reasoner.dispose();
    }

    private static Set<String> unsatisfiable(OWLReasoner reasoner) {
        return reasoner.getUnsatisfiableClasses().getEntitiesMinusBottom().stream()
                .map(found -> found.getIRI().toString())
                .collect(Collectors.toSet());
    }

    private static OWLOntology read(String turtle) throws OWLOntologyCreationException {
        return OWLManager.createOWLOntologyManager().loadOntologyFromOntologyDocument(new StringDocumentSource(turtle));
    }
}
