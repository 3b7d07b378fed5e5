package rushlight.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drills, skills and limits of the book against the lists they were drawn up in. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TrainingTest {
    private static final Training TRAINING = Training.of(Ontology.packaged());

    static List<List<String>> drills() {
        return rows("drills");
    }

    static List<List<String>> skills() {
        return rows("skills");
    }

    static List<List<String>> prerequisites() {
        return rows("prerequisites");
    }

    @ParameterizedTest
    @MethodSource("drills")
    void a_drill_is_as_it_was_drawn_up(List<String> row) {
        Drill drill = TRAINING.drill(row.get(0)).orElseThrow();
        List<String> trains = several(row.get(1));
        assertThat(drill.first()).isEqualTo(trains.get(0));
        assertThat(drill.trains()).containsAll(trains).doesNotHaveDuplicates();
        assertThat(drill.phase()).isEqualTo(row.get(2));
        assertThat(drill.level().slug()).isEqualTo(row.get(3));
        assertThat(drill.equipment())
                .extracting(Drill.Equipment::slug)
                .containsExactlyInAnyOrderElementsOf(
                        several(row.get(4)).stream().map(e -> "equipment-" + e).toList());
        assertThat(drill.people()).isEqualTo(Integer.parseInt(row.get(5)));
        assertThat(drill.minutes()).isEqualTo(Integer.parseInt(row.get(6)));
        assertThat(drill.repetitions()).isEqualTo(Integer.parseInt(row.get(7)));
        assertThat(drill.hazards())
                .extracting(Drill.Hazard::slug)
                .containsAll(
                        several(row.get(8)).stream().map(h -> "hazard-" + h).toList());
        assertThat(drill.success()).endsWith(".");
        assertThat(drill.sources()).isNotEmpty();
    }

    @Test
    void no_drill_is_there_that_was_not_drawn_up() {
        assertThat(TRAINING.drills())
                .extracting(Drill::slug)
                .containsExactlyElementsOf(
                        drills().stream().map(row -> row.get(0)).toList());
        assertThat(TRAINING.drill("sled-drill")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("skills")
    void a_skill_is_as_it_was_drawn_up(List<String> row) {
        TrainedSkill skill = TRAINING.skill(row.get(0)).orElseThrow();
        assertThat(skill.kind()).isEqualTo(row.get(1));
        assertThat(skill.judgedAt().slug()).isEqualTo(row.get(2));
        assertThat(skill.trainability()).isEqualTo(Double.parseDouble(row.get(3)));
        assertThat(skill.measuredBy()).isNotEmpty();
    }

    @Test
    void every_skill_has_a_drill_that_is_light_and_one_at_which_it_can_be_judged() {
        assertThat(TRAINING.skills()).hasSize(64).allSatisfy(skill -> {
            List<Drill> drills = TRAINING.drillsFor(skill.slug());
            assertThat(drills).isNotEmpty();
            assertThat(drills.get(0).level().rank()).isLessThanOrEqualTo(1);
            assertThat(TRAINING.drills().stream()
                            .filter(drill -> drill.trains().contains(skill.slug()))
                            .mapToInt(drill -> drill.level().rank())
                            .max()
                            .orElse(-1))
                    .isGreaterThanOrEqualTo(skill.judgedAt().rank());
        });
    }

    @ParameterizedTest
    @MethodSource("prerequisites")
    void a_prerequisite_is_as_it_was_reviewed(List<String> row) {
        String wanted = row.get(3).equals("-") ? row.get(2) : row.get(3);
        assertThat(TRAINING.prerequisites(row.get(0)).stream()
                        .filter(link -> link.needs().equals(row.get(1)))
                        .map(link -> switch (link.strength()) {
                            case MUST -> "must";
                            case HELPS -> "helps";
                            case ONE_OF -> "one-of";
                        }))
                .isEqualTo(wanted.equals("dropped") ? List.of() : List.of(wanted));
    }

    @Test
    void the_graph_of_skills_ends_and_every_skill_is_reached_from_one_that_needs_none() {
        List<Prerequisite> links = TRAINING.prerequisites();
        Set<String> done = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(TRAINING.skills().stream()
                .map(TrainedSkill::slug)
                .filter(skill -> TRAINING.prerequisites(skill).isEmpty())
                .toList());
        assertThat(open).hasSizeGreaterThanOrEqualTo(9);
        while (!open.isEmpty()) {
            done.add(open.pop());
            links.stream()
                    .map(Prerequisite::skill)
                    .filter(skill -> !done.contains(skill) && !open.contains(skill))
                    .filter(skill -> TRAINING.prerequisites(skill).stream().allMatch(l -> done.contains(l.needs())))
                    .distinct()
                    .forEach(open::add);
        }
        assertThat(done).hasSize(64);
        assertThat(links).allSatisfy(link -> assertThat(layer(link.skill())).isGreaterThan(layer(link.needs())));
    }

    @Test
    void every_prerequisite_says_why_and_four_are_a_matter_of_safety() {
        assertThat(TRAINING.prerequisites())
                .hasSize(168)
                .allSatisfy(link -> assertThat(link.because()).endsWith("."));
        assertThat(TRAINING.prerequisites().stream()
                        .filter(Prerequisite::safety)
                        .map(link -> link.skill() + " after " + link.needs()))
                .containsExactly(
                        "legal-passer-tackle after tackling-form",
                        "tackling-form after neck-shoulder-strength",
                        "wrong-arm after neck-shoulder-strength",
                        "wrong-arm after tackling-form");
    }

    @Test
    void contact_levels_are_in_order_and_two_of_them_are_full_contact() {
        assertThat(TRAINING.levels())
                .extracting(ContactLevel::slug)
                .containsExactly("air", "bag", "control", "thud", "live");
        assertThat(TRAINING.levels().stream().filter(ContactLevel::fullContact))
                .extracting(ContactLevel::slug)
                .containsExactly("thud", "live");
        assertThat(TRAINING.levels().stream().filter(level -> !level.planned()))
                .extracting(ContactLevel::slug)
                .containsExactly("live");
    }

    @Test
    void a_drill_against_another_player_says_what_can_hurt_and_who_decides() {
        assertThat(TRAINING.drills().stream().filter(drill -> drill.level().rank() > 1))
                .hasSize(37)
                .allSatisfy(drill -> assertThat(drill.hazards()).hasSizeGreaterThan(2));
        assertThat(TRAINING.drills().stream().filter(drill -> drill.level().fullContact()))
                .hasSize(11)
                .allSatisfy(drill -> assertThat(drill.hazards())
                        .extracting(Drill.Hazard::text)
                        .anySatisfy(text -> assertThat(text).contains("coach"))
                        .anySatisfy(text -> assertThat(text).contains("edical staff")));
    }

    @Test
    void limits_have_number_unit_level_of_play_and_source() {
        assertThat(TRAINING.profiles()).hasSize(16).allSatisfy(profile -> {
            assertThat(profile.limits()).isNotEmpty();
            assertThat(profile.sources()).isNotEmpty();
            assertThat(profile.contactMeans()).endsWith(".");
        });
        assertThat(TRAINING.profiles().stream().flatMap(profile -> profile.limits().stream()))
                .hasSize(86)
                .allSatisfy(limit -> {
                    assertThat(limit.amount()).isGreaterThanOrEqualTo(BigDecimal.ZERO);
                    assertThat(limit.unit()).isNotEmpty();
                    assertThat(limit.sources()).isNotEmpty();
                });
    }

    @Test
    void limits_are_asked_for_by_kind_and_part_of_the_year() {
        LimitProfile youth = TRAINING.profile("profile-youth-2021").orElseThrow();
        assertThat(amounts(youth, "contact-minutes-a-week", "in-season")).containsExactly("60.0 min");
        assertThat(amounts(youth, "contact-minutes-a-week", "preseason")).containsExactly("75.0 min");
        assertThat(amounts(youth, "contact-games-a-week", "in-season")).containsExactly("1.0 games");
        assertThat(youth.playingLevel()).isEqualTo("youth");
        assertThat(youth.checkedOn()).isEmpty();
        LimitProfile unknown = TRAINING.profile("profile-unknown").orElseThrow();
        assertThat(amounts(unknown, "contact-minutes-a-week", "in-season")).containsExactly("0.0 min");
    }

    @Test
    void acclimatization_goes_up_by_the_day() {
        LimitProfile heat = TRAINING.profile("profile-acclimatization").orElseThrow();
        assertThat(List.of(1, 2, 3, 5, 6, 14).stream()
                        .map(day -> heat.limits("highest-contact-level", "preseason").stream()
                                .filter(limit -> limit.range().orElseThrow().holds(BigDecimal.valueOf(day)))
                                .map(limit -> limit.level().orElseThrow().slug())
                                .collect(Collectors.joining())))
                .containsExactly("air", "air", "bag", "bag", "thud", "thud");
    }

    @Test
    void presets_are_there_for_the_season_and_for_the_time_without_games() {
        assertThat(TRAINING.presets()).extracting(PlanPreset::seasonPart).containsExactly("in-season", "off-season");
        PlanPreset season = TRAINING.preset("preset-in-season").orElseThrow();
        assertThat(season.weeks()).isEqualTo(4);
        assertThat(season.days())
                .extracting(PlanPreset.Day::weekday)
                .containsExactly(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY);
        assertThat(season.days()).extracting(PlanPreset.Day::minutes).containsExactly(15, 20, 15, 10);
        assertThat(season.days()).extracting(PlanPreset.Day::teamContactMinutes).containsExactly(0, 15, 0, 0);
        assertThat(season.days().get(3).without()).containsExactly("equipment-sled");
        assertThat(TRAINING.preset("preset-off-season").orElseThrow().days())
                .allSatisfy(day -> assertThat(day.highest().fullContact()).isFalse());
    }

    @Test
    void a_file_of_ones_own_adds_a_drill_and_sets_numbers(@TempDir Path folder) throws IOException {
        Training own = Training.of(Ontology.withOverlay(overlay(folder, """
                kb:towel-pull a skos:Concept , rl:Drill ; skos:prefLabel "towel pull"@en ; skos:definition "Two men, one towel."@en ;
                  skos:broader kb:partner-drill ; rl:trains kb:grip-endurance ; rl:trainsFirst kb:grip-endurance ;
                  rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 4 ; rl:repetitions 5 ; rl:hazard kb:hazard-wrist ;
                  rl:success "4 of 5 held."@en ; dct:source source:common-practice ; rl:support "common-practice" .
                kb:grip-and-carry rl:minutes 9 .
                kb:profile-youth-2021 rl:checkedOn "2026-08-01"^^xsd:date .
                kb:limit-youth-2021--contact-minutes-a-week--in-season rl:amount 45.0 .
                """)));
        Drill drill = own.drill("towel-pull").orElseThrow();
        assertThat(drill.local()).isTrue();
        assertThat(drill.phaseOrder()).isEqualTo(4);
        assertThat(own.drillsFor("grip-endurance")).extracting(Drill::slug).endsWith("towel-pull");
        assertThat(own.drill("grip-and-carry").orElseThrow().minutes()).isEqualTo(9);
        LimitProfile youth = own.profile("profile-youth-2021").orElseThrow();
        assertThat(youth.checkedOn()).contains(LocalDate.of(2026, 8, 1));
        assertThat(amounts(youth, "contact-minutes-a-week", "in-season")).containsExactly("45.0 min");
    }

    @Test
    void a_drill_that_does_not_say_what_it_takes_is_refused_by_name(@TempDir Path folder) throws IOException {
        Ontology book = Ontology.withOverlay(overlay(folder, """
                kb:towel-pull a skos:Concept , rl:Drill ; skos:prefLabel "towel pull"@en ; skos:broader kb:partner-drill ;
                  rl:trains kb:grip-endurance ; rl:trainsFirst kb:grip-endurance ; rl:contactLevel kb:control ; rl:minutes 4 .
                """));
        assertThatThrownBy(() -> Training.of(book))
                .isInstanceOf(BrokenBookException.class)
                .hasMessageContaining("towel-pull lacks rl:people");
    }

    private static int layer(String skill) {
        return TRAINING.skill(skill).orElseThrow().layer();
    }

    private static List<String> amounts(LimitProfile profile, String kind, String part) {
        return profile.limits(kind, part).stream()
                .map(limit -> limit.amount() + " " + limit.unit())
                .toList();
    }

    private static Path overlay(Path folder, String turtle) throws IOException {
        return Files.writeString(folder.resolve("overlay.ttl"), """
                @prefix dct: <http://purl.org/dc/terms/> .
                @prefix kb: <https://rushlight.example/id/> .
                @prefix rl: <https://rushlight.example/def#> .
                @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
                @prefix source: <https://rushlight.example/source/> .
                @prefix xsd: <http://www.w3.org/2001/XMLSchema#> .
                """ + turtle);
    }

    private static List<String> several(String cell) {
        return cell.equals("-") ? List.of() : Arrays.asList(cell.split(";", -1));
    }

    private static List<List<String>> rows(String name) {
        try (InputStream in =
                        Objects.requireNonNull(TrainingTest.class.getResourceAsStream("/training/" + name + ".tsv"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .skip(2)
                    .map(line -> List.of(line.split("\t", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
