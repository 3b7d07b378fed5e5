package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.rdf.model.Model;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.rdf.model.RDFNode;
import org.apache.jena.shacl.ShaclValidator;
import org.apache.jena.shacl.Shapes;
import org.apache.jena.shacl.ValidationReport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShapesTest {
    private Model facts = OntologyFiles.facts();
    private Shapes shapes = Shapes.parse(OntologyFiles.shapes().getGraph());

    @BeforeAll
    void shapes_were_found() {
        assertThat(shapes.numShapes()).isGreaterThan(10);
    }

    @Test
    void the_shipped_files_conform_without_a_warning() {
        assertThat(messages(ShaclValidator.get().validate(shapes, facts.getGraph())))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            A technique needs a definition, in our own words. | kb:planted a skos:Concept , rl:RushMove ; skos:prefLabel "planted"@en ; dct:source source:common-practice ; rl:support "common-practice" .
            Give the term one preferred label in English. | kb:planted a skos:Concept , rl:RushMove ; skos:definition "Planted."@en ; dct:source source:common-practice ; rl:support "common-practice" .
            Say what kind of thing the term is: a rush move, a run block, a fault and so on. | kb:planted a skos:Concept ; skos:prefLabel "planted"@en ; skos:definition "Planted."@en ; dct:source source:common-practice ; rl:support "common-practice" .
            Say where this is described, or mark it as common practice. | kb:planted a skos:Concept , rl:RushMove ; skos:prefLabel "planted"@en ; skos:definition "Planted."@en ; rl:support "common-practice" .
            How well is it borne out? Write strong, fair or common-practice. | kb:rip rl:support "certain" .
            The wider term must be a term of the book. | kb:rip skos:broader kb:no-such-thing .
            What it needs first must be a term of the book. | kb:rip rl:requires kb:no-such-thing .
            A move beats something a blocker does; a blocker beats a move. | kb:rip rl:beats kb:power-play .
            A fault is seen in the hands, the feet, the eyes or the pads. | kb:high-pads rl:seenIn "helmet" .
            A fault shows that a skill is missing: name a skill. | kb:high-pads rl:shows kb:rip .
            Say which skill is missing when this fault is seen. | kb:planted a skos:Concept , rl:Fault ; skos:prefLabel "planted"@en ; skos:definition "Planted."@en ; dct:source source:common-practice ; rl:support "common-practice" .
            A duty owns the inside or the outside of the block. | kb:spill-assignment rl:owns "middle" .
            Say which skill the drill trains. | kb:planted a skos:Concept , rl:Drill ; skos:prefLabel "planted"@en ; skos:definition "Planted."@en ; dct:source source:common-practice ; rl:support "common-practice" .
            A drill trains a skill: name a skill. | kb:track-line-run rl:trains kb:technique-7 .
            A behavior opens one of the kinds of opening. | kb:over-set rl:opens kb:opp-kick-out .
            A pairing names one counter: a move or a finish of his. | kb:planted a rl:Pairing ; rl:primary kb:rip ; rl:counter kb:over-set ; rl:rank 1 ; rl:side "inside" ; rl:timing "read" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            A pairing starts from a move of his, from something the blocker does, or from both. | kb:planted a rl:Pairing ; rl:counter kb:rip ; rl:rank 1 ; rl:side "inside" ; rl:timing "read" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            A pairing's trigger is something a blocker does. | kb:planted a rl:Pairing ; rl:trigger kb:rip ; rl:counter kb:arm-over ; rl:rank 1 ; rl:side "inside" ; rl:timing "read" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            When is it taken? Write read, in-rep or next-rep, one or more. | kb:planted a rl:Pairing ; rl:primary kb:rip ; rl:counter kb:arm-over ; rl:rank 1 ; rl:side "inside" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            Which way does it go? Write inside, outside, through, either or none. | kb:planted a rl:Pairing ; rl:primary kb:rip ; rl:counter kb:arm-over ; rl:rank 1 ; rl:side "left" ; rl:timing "read" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            Say in one sentence why this counter fits. | kb:planted a rl:Pairing ; rl:primary kb:rip ; rl:counter kb:arm-over ; rl:rank 1 ; rl:side "inside" ; rl:timing "read" ; dct:source source:common-practice ; rl:support "fair" .
            Counters are put in order: the best is 1. | kb:planted a rl:Pairing ; rl:primary kb:rip ; rl:counter kb:arm-over ; rl:rank 0 ; rl:side "inside" ; rl:timing "read" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            Two counters to the same thing cannot both have rank 1: up-and-under has it. Give this one a rank that is free. | kb:planted a rl:Pairing ; rl:primary kb:speed-rush ; rl:trigger kb:over-set ; rl:counter kb:rip ; rl:rank 1 ; rl:side "inside" ; rl:timing "read" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            Two counters to the same thing cannot both have rank 1: up-and-under has it. Give this one a rank that is free. | kb:planted a rl:Pairing ; rl:trigger kb:over-set ; rl:counter kb:rip ; rl:rank 1 ; rl:side "inside" ; rl:timing "read" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            It needs itself first, by way of planted. Take one of the links away. | kb:planted skos:prefLabel "planted"@en ; rl:requires kb:rip . kb:rip rl:requires kb:planted .
            It is wider than itself, by way of planted. Take one of the links away. | kb:planted skos:prefLabel "planted"@en ; skos:broader kb:rip . kb:rip skos:broader kb:planted .
            One rule calls wrong-arm right and another calls it wrong against kick-out block under spill assignment. Say with rl:onlyIf when each speaks, or take the answer out of one. | kb:planted a rl:FitRule ; rl:block kb:kick-out-block ; rl:assignment kb:spill-assignment ; rl:wrong kb:wrong-arm ; dct:source source:common-practice ; rl:support "fair" .
            A fit rule is about one block. | kb:planted a rl:FitRule ; rl:assignment kb:spill-assignment ; rl:right kb:wrong-arm ; dct:source source:common-practice ; rl:support "fair" .
            A fit rule is about one assignment. | kb:planted a rl:FitRule ; rl:block kb:kick-out-block ; rl:right kb:wrong-arm ; dct:source source:common-practice ; rl:support "fair" .
            The same answer cannot be right and wrong in one rule. | kb:planted a rl:FitRule ; rl:block kb:kick-out-block ; rl:assignment kb:spill-assignment ; rl:right kb:wrong-arm ; rl:wrong kb:wrong-arm ; dct:source source:common-practice ; rl:support "fair" .
            What is right is something he does: a fit, a move, a finish or a skill. | kb:planted a rl:FitRule ; rl:block kb:kick-out-block ; rl:assignment kb:spill-assignment ; rl:right kb:over-set ; dct:source source:common-practice ; rl:support "fair" .
            What is wrong is a fit, a move or a fault of his. | kb:planted a rl:FitRule ; rl:block kb:kick-out-block ; rl:assignment kb:spill-assignment ; rl:wrong kb:over-set ; dct:source source:common-practice ; rl:support "fair" .
            The rule says nothing: name what is right, what is wrong, or what it hangs on. | kb:planted a rl:FitRule ; rl:block kb:kick-out-block ; rl:assignment kb:spill-assignment ; dct:source source:common-practice ; rl:support "fair" .
            A caveat turns around an answer that its rule calls right or wrong. | kb:planted a rl:FitRule ; rl:block kb:kick-out-block ; rl:assignment kb:spill-assignment ; rl:right kb:wrong-arm ; rl:caveat kb:planted-too ; dct:source source:common-practice ; rl:support "fair" . kb:planted-too a rl:Caveat ; rl:flips kb:stack ; rl:dependsOn "a call"@en .
            A caveat says in words what it hangs on. | kb:planted a rl:Caveat ; rl:flips kb:wrong-arm .
            A numbered label stands for one spot. | kb:planted a rl:NumberedLabel ; rl:number "7" ; rl:rank 1 .
            A column says what it holds: text, integer, date, clock, time, words, concept or exchange. | rl:column-planted a rl:Column ; rl:columnName "planted" ; rl:order 99 ; rl:facet rl:rep ; rl:valueKind "number" .
            A column of words lists them. | rl:column-planted a rl:Column ; rl:columnName "planted" ; rl:order 99 ; rl:facet rl:rep ; rl:valueKind "words" .
            A column of terms says of which kinds. | rl:column-planted a rl:Column ; rl:columnName "planted" ; rl:order 99 ; rl:facet rl:rep ; rl:valueKind "concept" .
            A rep class reads columns of the film log. | kb:opp-chip rl:reads "colour" .
            Only a skill that drills are chosen for is shown by a finding. | kb:hand-power rl:shownBy kb:plays-high .
            A skill is shown by findings of the book. | kb:pad-level rl:shownBy kb:rip .
            A skill is shown by a finding that is a rate and has a line. | kb:legal-passer-tackle rl:shownBy kb:late-or-low-hits-on-the-passer .
            Give the group one name, of several men: "ends". | kb:group-ends <http://www.w3.org/2000/01/rdf-schema#label> "defensive ends"@en .
            Say by which positions of a list of prospects a man is of the group. | kb:planted a rl:PositionGroup ; <http://www.w3.org/2000/01/rdf-schema#label> "planted"@en ; dct:source source:common-practice ; rl:support "common-practice" .
            A group lies within one wider group of the book, or within none. | kb:group-ends rl:withinGroup kb:rip .
            What a role wants to see is a strength among the findings or a task. A gap goes with rl:mustBeWithout or rl:betterWithout. | kb:big-end rl:mustShow kb:anchor .
            What a role wants to see is a strength among the findings or a task. A gap goes with rl:mustBeWithout or rl:betterWithout. | kb:big-end rl:mayShow kb:plays-high .
            What a role wants a man to be without is a gap among the findings. | kb:big-end rl:betterWithout kb:holds-double-teams .
            What must a man show for the role? Name one strength or task, or one gap he must be without. | kb:planted a rl:Role .
            Which reps are his chance? Give the task one opportunity, and write its shape. | kb:two-gap-task rl:opportunity shape:nowhere .
            Which of them show it? Give the task one event, and write its shape. | kb:two-gap-task rl:event shape:nowhere .
            How often is enough? Give the task one line, a share between 0 and 1. | kb:two-gap-task rl:line 0.8 .
            On which side of the line is the task shown? Write rl:above or rl:below. | kb:two-gap-task rl:trueSide rl:below .
            Nothing is said of a task on fewer than six chances: give it a minimum. | kb:two-gap-task rl:minimum 5 .
            How is its count said? Give the task one sentence with {events} and {opportunities} in it. | kb:two-gap-task rl:sentence "Often."@en .
            Say in one sentence why a job asks for the task. | kb:two-gap-task rl:because "Again."@en .
            A task needs columns of the film log: mend the name. | kb:two-gap-task rl:needs "colour" .
            Say who wrote or published the source; where no author is shown, say so and what kind of page it is. | source:planted a rl:Source ; dct:title "Planted"@en ; dct:date "2020" ; rl:howSeen "page read"@en .
            Give the year of the source in four digits, or write undated. | source:planted a rl:Source ; dct:title "Planted"@en ; dct:contributor "nobody" ; rl:howSeen "page read"@en .
            Give the year of the source in four digits, or write undated. | source:planted a rl:Source ; dct:title "Planted"@en ; dct:contributor "nobody" ; dct:date "last year" ; rl:howSeen "page read"@en .
            Say how much of the source was read. | source:planted a rl:Source ; dct:title "Planted"@en ; dct:contributor "nobody" ; dct:date "2020" .
            The source is not listed: add it to the sources. | kb:rip dct:source source:planted .
            A source has a title. | source:planted a rl:Source ; rl:howSeen "page read"@en .
            A finding is a gap, a strength, conditional or a note. | kb:planted a skos:Concept , rl:Finding ; skos:prefLabel "planted"@en ; skos:definition "Planted."@en ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            Nothing is said on fewer than six chances. | kb:planted a skos:Concept , rl:Finding ; rl:polarity rl:gap ; rl:minimum 5 ; skos:prefLabel "planted"@en ; skos:definition "Planted."@en ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            Say which one term of the book this statement is about. | kb:planted a rl:Teaching ; rl:part rl:caution ; rl:text "Planted."@en ; rl:order 9 ; dct:source source:common-practice ; rl:support "fair" .
            Say what this statement tells: the cue, the hands, the footwork or another part of the lesson. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:film ; rl:text "Planted."@en ; rl:order 9 ; dct:source source:common-practice ; rl:support "fair" .
            Write it as a coach says it: whole sentences in English, with a capital and a period. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:caution ; rl:text "planted"@en ; rl:order 9 ; dct:source source:common-practice ; rl:support "fair" .
            Number the statements of one part from 1. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:caution ; rl:text "Planted."@en ; rl:order 0 ; dct:source source:common-practice ; rl:support "fair" .
            Say where this statement comes from, or mark it as common practice. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:caution ; rl:text "Planted."@en ; rl:order 9 ; rl:support "fair" .
            How well is this statement borne out? Write strong, fair or common-practice. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:caution ; rl:text "Planted."@en ; rl:order 9 ; dct:source source:common-practice ; rl:support "certain" .
            A rule note names its rules and the year, and says that the current book and the local officials decide. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:ruleNote ; rl:text "Planted."@en ; rl:order 9 ; dct:source source:common-practice ; rl:support "fair" .
            A rule note is about one set of rules: NFHS, NCAA or pro. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:caution ; rl:text "Planted."@en ; rl:order 9 ; rl:code "club" ; dct:source source:common-practice ; rl:support "fair" .
            Give the year of the rule book or notice in four digits, or write undated. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:caution ; rl:text "Planted."@en ; rl:order 9 ; rl:edition "last year" ; dct:source source:common-practice ; rl:support "fair" .
            Two statements of the same part cannot stand in the same place. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:cue ; rl:text "Planted."@en ; rl:order 1 ; dct:source source:common-practice ; rl:support "fair" .
            Say what a coach sees on film when he does this. | kb:planted a skos:Concept , rl:RushMove .
            Say from which spots the move is used. | kb:planted a skos:Concept , rl:RushMove .
            A spot that is drawn names the last man of the line. | kb:interior-position rl:stepsOut 2 .
            A man who is drawn has one short name, such as TE. | kb:lineman rl:stepsOut 2 .
            A man of the line is drawn as a square or a circle. | kb:center rl:drawnAs "star" .
            A move is used from an alignment of the book. | kb:rip rl:from kb:over-set .
            Tell one rep in which it is done. | kb:planted a skos:Concept , rl:RushMove .
            Say what shows first when a blocker does this. | kb:planted a skos:Concept , rl:BlockerBehavior .
            Say what tells it apart on film from what is like it. | kb:planted a skos:Concept , rl:BlockerBehavior .
            Say what tells it apart on film from what is like it. | kb:planted a skos:Concept , rl:RunFit .
            Say what each man does in the game. | kb:planted a skos:Concept , rl:RushGame .
            Say who keeps the passer in when the game is called. | kb:planted a skos:Concept , rl:RushGame .
            Say what this fault looks like on film. | kb:planted a skos:Concept , rl:Fault .
            Say for which one skill the drill is chosen first. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 5 ; rl:repetitions 5 ; rl:success "5 of 5."@en ; rl:hazard kb:hazard-head .
            Say at which contact level the drill is run: air, bag, control, thud or live. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:high-pads ; rl:people 2 ; rl:minutes 5 ; rl:repetitions 5 ; rl:success "5 of 5."@en ; rl:hazard kb:hazard-head .
            Say how many men the drill takes, in a whole number from 1. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:control ; rl:people 0 ; rl:minutes 5 ; rl:repetitions 5 ; rl:success "5 of 5."@en ; rl:hazard kb:hazard-head .
            Say how many minutes one set of the drill takes, from 1 to 60. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:control ; rl:people 2 ; rl:repetitions 5 ; rl:success "5 of 5."@en ; rl:hazard kb:hazard-head .
            Say how many reps a set of the drill has. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 5 ; rl:success "5 of 5."@en ; rl:hazard kb:hazard-head .
            Say when a set of the drill was good, in a count or a measure. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 5 ; rl:repetitions 5 ; rl:hazard kb:hazard-head .
            What a drill is run with must be a piece of equipment of the book. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 5 ; rl:repetitions 5 ; rl:success "5 of 5."@en ; rl:hazard kb:hazard-head ; rl:equipment kb:rip .
            What can hurt in a drill must be a hazard of the book. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 5 ; rl:repetitions 5 ; rl:success "5 of 5."@en ; rl:hazard kb:rip .
            Say which step of the progression the drill is: on air, bag and shield, sled, partner, one on one, group or team. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:rip ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 5 ; rl:repetitions 5 ; rl:success "5 of 5."@en ; rl:hazard kb:hazard-head .
            The skill it is chosen for first stands among those it trains. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:anchor ; rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 5 ; rl:repetitions 5 ; rl:success "5 of 5."@en ; rl:hazard kb:hazard-head .
            A drill against another player says what can hurt: name the hazards. | kb:planted a skos:Concept , rl:Drill ; skos:broader kb:partner-drill ; rl:trains kb:rip-strength ; rl:trainsFirst kb:rip-strength ; rl:contactLevel kb:control ; rl:people 2 ; rl:minutes 5 ; rl:repetitions 5 ; rl:success "5 of 5."@en .
            Two contact levels cannot have the same rank. | kb:planted a rl:ContactLevel ; rl:contactRank 2 ; rl:fullContact "no" ; rl:planned "yes" .
            Say whether the minutes of the level count as full contact: yes or no. | kb:planted a rl:ContactLevel ; rl:contactRank 7 ; rl:planned "yes" .
            Say what is told on the field against the hazard, in whole sentences. | kb:planted a rl:Hazard ; rl:text "careful"@en ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            A skill is a trait, a technique, perceptual or tactical. | kb:rip-strength rl:skillKind "strong" .
            How much of the skill moves in one block? Write a decimal above 0 and up to 1.0. | kb:rip-strength rl:trainability 7.0 .
            No drill is chosen for this skill first. | kb:hand-power rl:judgedAt kb:bag ; rl:skillKind "trait" ; rl:trainability 0.5 ; rl:measuredBy "planted"@en .
            A limit has one number, written with a point: 30.0. | kb:planted a rl:Limit ; rl:ofProfile kb:profile-youth-2021 ; rl:limitKind kb:contact-minutes-a-week ; rl:seasonPart "in-season" ; dct:source source:common-practice ; rl:support "fair" .
            A claim speaks of one term of the book: what he does, or what is wrong with it. | kb:planted a rl:Claim ; rl:asserted "performed" ; rl:claimOf kb:eyes-down ; dct:source source:common-practice ; rl:support "fair" .
            Say whether the claim is that he does it or that he does not: performed or not-performed. | kb:planted a rl:Claim ; rl:speaksOf kb:rip ; rl:asserted "wanted" ; rl:claimOf kb:eyes-down ; dct:source source:common-practice ; rl:support "fair" .
            A claim is made against one thing he meets, a term of the book. | kb:planted a rl:Claim ; rl:speaksOf kb:rip ; rl:asserted "performed" ; rl:claimedAgainst kb:nothing ; rl:claimOf kb:eyes-down ; dct:source source:common-practice ; rl:support "fair" .
            A claim is of one finding of the book. | kb:planted a rl:Claim ; rl:speaksOf kb:rip ; rl:asserted "performed" ; rl:claimOf kb:rip ; dct:source source:common-practice ; rl:support "fair" .
            Two claims say the same of him and speak of two findings: leave one of them. | kb:planted a rl:Claim ; rl:speaksOf kb:inside-move ; rl:asserted "not-performed" ; rl:claimOf kb:eyes-down ; dct:source source:common-practice ; rl:support "fair" .
            A limit belongs to one profile. | kb:planted a rl:Limit ; rl:ofProfile kb:rip ; rl:limitKind kb:contact-minutes-a-week ; rl:amount 30.0 ; rl:seasonPart "in-season" ; dct:source source:common-practice ; rl:support "fair" .
            A part of the year is preseason, in-season, spring or off-season. | kb:planted a rl:Limit ; rl:ofProfile kb:profile-youth-2021 ; rl:limitKind kb:contact-minutes-a-week ; rl:amount 30.0 ; rl:seasonPart "summer" ; dct:source source:common-practice ; rl:support "fair" .
            Say where this comes from, or mark it as common practice. | kb:planted a rl:Limit ; rl:ofProfile kb:profile-youth-2021 ; rl:limitKind kb:contact-minutes-a-week ; rl:amount 30.0 ; rl:seasonPart "in-season" ; rl:support "fair" .
            The number of a highest contact level is the rank of that level. | kb:planted a rl:Limit ; rl:ofProfile kb:profile-youth-2021 ; rl:limitKind kb:highest-contact-level ; rl:amount 30.0 ; rl:seasonPart "in-season" ; dct:source source:common-practice ; rl:support "fair" ; rl:contactLevel kb:bag .
            Say for whom the limits are: youth, high school, college or any. | kb:profile-youth-2021 rl:playingLevel "club" .
            Write the day of the week in English, such as Monday. | kb:preset-off-season--1 rl:weekday "Montag" .
            Say the notice in whole sentences. | kb:planted a rl:PlanNotice ; rl:noticePart "rule" ; rl:order 9 ; rl:text "careful"@en ; dct:source source:common-practice ; rl:support "fair" .
            A preset has at least one day. | kb:planted a rl:PlanPreset ; rl:seasonPart "in-season" ; rl:weeks 2 .
            A reason is told for a link that is there: the skill neither requires this nor is helped by it. | kb:planted a rl:PrerequisiteReason ; rl:ofSkill kb:anchor ; rl:wants kb:wrong-arm ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            What is a matter of safety is required, not only a help. | kb:planted a rl:PrerequisiteReason ; rl:ofSkill kb:anchor ; rl:wants kb:trunk-stiffness ; rl:safety "yes" ; rl:because "Planted."@en ; dct:source source:common-practice ; rl:support "fair" .
            Mark a rules risk with yes, or leave the mark away. | kb:planted a rl:Teaching ; rl:about kb:rip ; rl:part rl:caution ; rl:text "Planted."@en ; rl:order 9 ; rl:rulesRisk "maybe" ; dct:source source:common-practice ; rl:support "fair" .
            """)
    void a_planted_fault_is_told_in_words(String message, String planted) {
        Model more = OntologyFiles.planted(planted);
        Graph all = ModelFactory.createUnion(facts, more).getGraph();
        Stream<Node> touched = more.listStatements().toList().stream()
                .flatMap(said -> Stream.of(said.getSubject(), said.getObject()))
                .map(RDFNode::asNode)
                .distinct();
        assertThat(touched.flatMap(node -> messages(ShaclValidator.get().validate(shapes, all, node)).stream()))
                .contains(message);
    }

    private static List<String> messages(ValidationReport report) {
        return report.getEntries().stream()
                .map(entry -> entry.message())
                .distinct()
                .toList();
    }
}
