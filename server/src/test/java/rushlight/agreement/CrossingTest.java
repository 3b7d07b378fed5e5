package rushlight.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** Two evaluators watch the same Saturday: what counts as the same rep, what as agreement, and what as neither. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CrossingTest {
    private static final Ontology ONTOLOGY = Ontology.packaged();
    private static final Taxonomy TAXONOMY = Taxonomy.of(ONTOLOGY);
    private static final String HEADER = "rep,prospect,game,evaluator,phase,";

    @Test
    void a_rep_is_the_same_by_its_name_where_the_clock_does_not_say_otherwise() {
        MatchedGame game = cross(
                        "quarter,clock,result",
                        "r1,Jory Penwick,Opener,Moss,pass-rush,1,14:12,won\nr2,Jory Penwick,Opener,Moss,pass-rush,1,9:00,won",
                        "r1,Jory Penwick,Opener,Reed,pass-rush,1,14:12,lost\nr2,Jory Penwick,Opener,Reed,pass-rush,3,2:10,won")
                .games()
                .get(0);
        assertThat(game.pairs())
                .singleElement()
                .satisfies(pair -> assertThat(pair.second().rep().rep()).isEqualTo("r1"));
        assertThat(game.firstAlone()).hasSize(1);
        assertThat(game.secondAlone()).hasSize(1);
        assertThat(game.proposals()).isEmpty();
    }

    @Test
    void reps_of_other_names_are_proposed_by_snap_then_film_then_clock_and_count_only_when_accepted() {
        String mine = """
            a,Jory Penwick,Opener,Moss,pass-rush,7,x.webm,0:10,0:20,1,14:12
            b,Jory Penwick,Opener,Moss,pass-rush,,x.webm,1:00,1:10,,
            c,Jory Penwick,Opener,Moss,pass-rush,,,,,4,0:30
            """;
        String theirs = """
            k,Jory Penwick,Opener,Reed,pass-rush,7,,,,,
            l,Jory Penwick,Opener,Reed,pass-rush,,x.webm,1:02,1:14,,
            m,Jory Penwick,Opener,Reed,pass-rush,,,,,4,0:30
            """;
        String columns = "snap,video,start,end,quarter,clock";
        MatchedGame game = cross(columns, mine, theirs).games().get(0);
        assertThat(game.pairs()).isEmpty();
        assertThat(game.proposals().stream()
                        .map(one -> one.first().rep() + one.second().rep() + " " + one.why()))
                .containsExactly("ak SNAP", "bl CLIP", "cm CLOCK");

        CrossCheck accepted = Crossing.of(ONTOLOGY, TAXONOMY)
                .of(
                        logs(columns, mine),
                        logs(columns, theirs),
                        Set.of(new Accepted("jory-penwick", "opener", "b", "l")))
                .orElseThrow();
        assertThat(accepted.pairs()).singleElement().satisfies(pair -> {
            assertThat(pair.first().rep().rep()).isEqualTo("b");
            assertThat(pair.second().rep().rep()).isEqualTo("l");
        });
        assertThat(accepted.games().get(0).proposals()).hasSize(2);
    }

    @Test
    void a_blank_is_no_answer_in_a_column_of_one_value_and_an_answer_in_a_charted_list() {
        CrossCheck check = cross(
                "get_off,faults,not_seen",
                "r1,Jory Penwick,Opener,Moss,pass-rush,first,high-pads,\nr2,Jory Penwick,Opener,Moss,pass-rush,late,,",
                "r1,Jory Penwick,Opener,Reed,pass-rush,,,\nr2,Jory Penwick,Opener,Reed,pass-rush,late,high-pads,pads");
        assertThat(of(check, "get_off").agreed().common()).isEqualTo(1);
        assertThat(of(check, "get_off").agreed().same()).isEqualTo(1);
        FacetAgreement faults = of(check, "faults");
        assertThat(faults.agreed().common()).isEqualTo(2);
        assertThat(faults.agreed().same())
                .as("the pads of the second rep were not seen by both")
                .isEqualTo(1);
        assertThat(faults.tags()).singleElement().satisfies(tag -> {
            assertThat(tag.firstOnly()).isEqualTo(1);
            assertThat(tag.agreed().common()).isEqualTo(1);
        });
        assertThat(check.differences())
                .singleElement()
                .satisfies(
                        one -> assertThat(one.cells()).containsExactly(new Difference.Cell("faults", "high-pads", "")));
    }

    @Test
    void a_duty_nobody_knows_is_not_held_against_one_that_is_told() {
        CrossCheck check = cross(
                "assignment,assignment_source",
                "r1,Jory Penwick,Opener,Moss,run,assignment-unknown,",
                "r1,Jory Penwick,Opener,Reed,run,spill-assignment,stated");
        assertThat(check.facets().stream().map(FacetAgreement::column)).doesNotContain("assignment");
        assertThat(check.differences()).isEmpty();
    }

    @Test
    void under_thirty_reps_there_are_counts_and_no_coefficient() {
        CrossCheck check = cross("result", rows("Moss", 29, "won", "lost"), rows("Reed", 29, "won", "lost"));
        assertThat(of(check, "result").agreed().trust()).isEqualTo(Trust.TOO_FEW);
        assertThat(of(check, "result").agreed().alpha()).isEmpty();
        assertThat(of(check, "result").agreed().same()).isEqualTo(29);
    }

    @Test
    void two_who_always_say_the_same_one_thing_have_not_shown_that_they_agree() {
        CrossCheck check = cross("result", rows("Moss", 40, "won", "won"), rows("Reed", 40, "won", "won"));
        assertThat(of(check, "result").agreed().trust()).isEqualTo(Trust.NO_VARIETY);
        assertThat(of(check, "phase").agreed().trust()).isEqualTo(Trust.NO_VARIETY);
    }

    @Test
    void calling_a_lost_rep_even_is_half_as_wrong_as_calling_it_won() {
        String truth = rows("Moss", 40, "won", "lost");
        double nearly =
                value(cross("result", truth, rows("Reed", 40, "won", "lost").replaceFirst("lost", "even")));
        double wholly =
                value(cross("result", truth, rows("Reed", 40, "won", "lost").replaceFirst("lost", "won")));
        assertThat(nearly).isGreaterThan(wholly);
        assertThat(of(cross("result", truth, rows("Reed", 40, "won", "lost")), "result")
                        .agreed()
                        .trust())
                .isEqualTo(Trust.GOOD);
    }

    @Test
    void an_exchange_that_shares_two_of_three_steps_is_nearer_than_one_that_shares_none() {
        String mine = rows("Moss", 32, "bull-rush > [sits-down] > push-pull", "speed-rush > [over-set]");
        String near = rows("Reed", 32, "bull-rush > [anchor-hop] > push-pull", "speed-rush > [over-set]");
        String far = rows("Reed", 32, "long-arm > [anchor-hop] > rip", "speed-rush > [over-set]");
        FacetAgreement close = of(cross("exchange", mine, near), "exchange");
        FacetAgreement apart = of(cross("exchange", mine, far), "exchange");
        assertThat(close.agreed().alpha().orElseThrow().value())
                .isGreaterThan(apart.agreed().alpha().orElseThrow().value());
        assertThat(close.strict().alpha().orElseThrow().value())
                .as("MASI forgives less")
                .isLessThan(close.agreed().alpha().orElseThrow().value());
        assertThat(close.tags().get(0).tag()).isEqualTo("[anchor-hop]");
    }

    @Test
    void evaluators_without_a_game_in_common_cannot_be_compared() {
        assertThat(Crossing.of(ONTOLOGY, TAXONOMY)
                        .of(
                                logs("result", "r1,Jory Penwick,Opener,Moss,run,won"),
                                logs("result", "r1,Jory Penwick,Second Week,Reed,run,won"),
                                Set.of()))
                .isEmpty();
    }

    private static double value(CrossCheck check) {
        return of(check, "result").agreed().alpha().orElseThrow().value();
    }

    /** Reps r1 to rn, with one cell and the other by turns. */
    private static String rows(String evaluator, int reps, String even, String odd) {
        StringBuilder rows = new StringBuilder();
        for (int i = 1; i <= reps; i++) {
            rows.append("r%d,Jory Penwick,Opener,%s,pass-rush,%s%n".formatted(i, evaluator, i % 2 == 0 ? even : odd));
        }
        return rows.toString();
    }

    private static FacetAgreement of(CrossCheck check, String column) {
        return check.facets().stream()
                .filter(facet -> facet.column().equals(column))
                .findFirst()
                .orElseThrow();
    }

    private static CrossCheck cross(String columns, String first, String second) {
        return Crossing.of(ONTOLOGY, TAXONOMY)
                .of(logs(columns, first), logs(columns, second), Set.of())
                .orElseThrow();
    }

    private static List<Log> logs(String columns, String rows) {
        byte[] csv = (HEADER + columns + "\n" + rows).getBytes(StandardCharsets.UTF_8);
        ReadResult result =
                FilmLogReader.of(TAXONOMY).read("log.csv", new ByteArrayInputStream(csv), FilmLogReader.Options.none());
        assertThat(result).isInstanceOf(ReadResult.Accepted.class);
        return ((ReadResult.Accepted) result).logs();
    }
}
