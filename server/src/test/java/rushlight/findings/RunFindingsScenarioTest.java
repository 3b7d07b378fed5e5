package rushlight.findings;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;

/** What one run rep says and does not say of him. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RunFindingsScenarioTest extends ArguedReps {
    // finding | what the rep is for it | a coach's argument | the rep as typed
    private static final List<Scenario> REPS = Scenario.table("run", """
            surrenders-edge-to-pullers | event | contain man under the kick-out, ball around him | exchange=[pull-and-kick-block] > wrong-arm, assignment=contain-force-assignment, faults=outside-arm-pinned, results=edge-lost-outside
             | chance | a pinned arm with the edge held is no lost edge | exchange=[trap-block], assignment=box-assignment, faults=outside-arm-pinned, results=edge-held
             | nothing | duty another's: the outside was not a spill man's | exchange=[trap-block], assignment=spill-assignment, results=edge-lost-outside
             | perhaps | nobody told his duty | exchange=[trap-block], results=edge-lost-outside
             | nothing | movement called | exchange=[trap-block], assignment=contain-force-assignment, movement=yes, results=edge-lost-outside
             | nothing | view hid the hands, so a pinned arm could not be seen | exchange=[trap-block], assignment=contain-force-assignment, results=edge-held, not_seen=hands
            trouble-stacking-pullers | event | the puller won the contact | exchange=[pull-and-kick-block] > box-and-squeeze, first_contact=lost
             | chance | on the ground with a share of the tackle | exchange=[pull-and-kick-block] > box-and-squeeze, first_contact=won, results=edge-grounded;tackle-shared
             | nothing | a spill man does not try to stack | exchange=[pull-and-kick-block] > wrong-arm, first_contact=lost
             | nothing | sift, no puller | exchange=[sift-block] > box-and-squeeze, first_contact=lost
            wrong-shoulder-on-kick-out | event | boxed under a spill rule, fault left blank | exchange=[kick-out-block] > box-and-squeeze, assignment=spill-assignment
             | chance | boxed under a box rule | exchange=[kick-out-block] > box-and-squeeze, assignment=box-assignment
             | nothing | duty inferred from his own shoulder | exchange=[kick-out-block] > box-and-squeeze, assignment=spill-assignment, assignment_source=inferred
             | nothing | sift is a team rule of its own | exchange=[sift-block] > wrong-arm, assignment=box-assignment
             | nothing | wide pin-and-pull under spill | exchange=[pin-and-pull-block] > box-and-squeeze, assignment=spill-assignment
             | event | ricochet by a contain man | exchange=[pin-and-pull-block] > ricochet, assignment=contain-force-assignment
            upfield-before-the-fit | event | past the heels, both lanes open | exchange=[down-block], direction=run-at-him, assignment=spill-assignment, down=1, distance=10, faults=too-far-upfield, results=both-lanes-open
             | chance | upfield and nothing opened | exchange=[down-block], direction=run-at-him, assignment=spill-assignment, down=1, distance=10, faults=too-far-upfield
             | nothing | passing down | exchange=[down-block], direction=run-at-him, assignment=spill-assignment, down=3, distance=8, faults=too-far-upfield, results=inside-lane-open
             | perhaps | contain may be told to go up the field | exchange=[down-block], direction=run-at-him, assignment=contain-force-assignment, down=1, distance=8, faults=too-far-upfield, results=inside-lane-open
            no-squeeze-on-down-blocks | event | the man over him went down and he stood | exchange=[veer-release], assignment=box-assignment, alignment=technique-9, numbering=A, down=1, distance=10, faults=no-squeeze
             | chance | squeezed the down block | exchange=[down-block] > squeeze-down, assignment=box-assignment, alignment=technique-9, numbering=A, down=1, distance=10
             | nothing | a linebacker has the inside gap of a wide man | exchange=[down-block], assignment=box-assignment, alignment=wide-9, gap=outside, down=1, distance=10, faults=no-squeeze
             | perhaps | wide, and nobody told whose the gap was | exchange=[down-block], assignment=box-assignment, alignment=wide-9, down=1, distance=10, faults=no-squeeze
             | nothing | how far contain closes is the call's | exchange=[down-block], assignment=contain-force-assignment, alignment=technique-9, numbering=A, down=1, distance=10, faults=no-squeeze
            hooked-on-reach-blocks | event | reached with the outside his | exchange=[reach-block], direction=run-at-him, assignment=box-assignment, results=reached
             | chance | strung out with a free arm | exchange=[reach-block], direction=run-at-him, assignment=contain-force-assignment, results=edge-lost-outside
             | perhaps | spill man, gap unknown | exchange=[reach-block], direction=run-at-him, assignment=spill-assignment, faults=outside-arm-pinned
             | nothing | run away | exchange=[reach-block], direction=run-away, assignment=contain-force-assignment, results=reached
             | nothing | inside gap his | exchange=[reach-block], direction=run-at-him, gap=inside, results=reached
            beaten-by-tight-ends | event | moved back by a lone tight end | exchange=[tight-end-base-block], results=edge-moved-back
             | chance | sealed with the inside gap his | exchange=[pin-block], blocker=tight-end, gap=inside, assignment=spill-assignment, results=edge-sealed
             | perhaps | sealed, and nobody knows whose the outside was | exchange=[pin-block], blocker=tight-end, results=edge-sealed
             | perhaps | contain accepts the width | exchange=[fan-block], blocker=tight-end, assignment=contain-force-assignment, results=edge-widened;inside-lane-open
             | nothing | a cutoff is another block | exchange=[cutoff-block], blocker=tight-end, results=edge-moved-back
            washed-by-pin-blocks | event | carried inside, tagged as a result only | exchange=[pin-block], assignment=box-assignment, results=edge-moved-inside
             | chance | held the pin | exchange=[pin-block], assignment=box-assignment, results=edge-held
             | nothing | inside gap his | exchange=[pin-block], assignment=spill-assignment, gap=inside, results=edge-moved-inside
            runs-around-blocks | event | went around with no movement called | exchange=[base-block], movement=no, faults=runs-around-block
             | chance | took the block on | exchange=[base-block], movement=no
             | nothing | unknown movement may be a slant | exchange=[base-block], movement=unknown, faults=runs-around-block
             | nothing | under the kick-out is the spill man's side | exchange=[kick-out-block], movement=no, assignment=spill-assignment, faults=runs-around-block
             | perhaps | a kick-out with the rule unknown | exchange=[kick-out-block], movement=no, faults=runs-around-block
            good-squeeze-no-shed | event | stuck with the ball in his lane | exchange=[kick-out-block] > box-and-squeeze, assignment=box-assignment, bodies_taken=1, ball_reach=in-his-lane, shed=none, faults=stuck-on-block
             | chance | off late, but off | exchange=[base-block] > stack, assignment=spill-assignment, bodies_taken=1, ball_reach=one-gap, shed=after-ball
             | nothing | a box man keeps the edge until the ball commits | exchange=[kick-out-block] > box-and-squeeze, assignment=box-assignment, bodies_taken=1, ball_reach=one-gap, shed=none, faults=stuck-on-block
             | nothing | holding two is the job | exchange=[base-block] > stack, assignment=spill-assignment, bodies_taken=2, ball_reach=in-his-lane, shed=none, faults=stuck-on-block
            sheds-too-early | event | left the inside gap that was his | exchange=[base-block], direction=run-at-him, assignment=spill-assignment, shed=before-ball, results=inside-lane-open
             | chance | the inside gap was not the contain man's | exchange=[base-block], direction=run-at-him, assignment=contain-force-assignment, shed=before-ball, results=inside-lane-open
             | perhaps | duty unknown | exchange=[base-block], direction=run-at-him, shed=before-ball, results=inside-lane-open
             | nothing | never off the block | exchange=[base-block], direction=run-at-him, assignment=spill-assignment, shed=none, results=inside-lane-open
            cut-blocks-put-him-down | event | cut and on the ground | exchange=[cut-block], bodies_taken=1, results=edge-grounded
             | chance | tackle made on the ground | exchange=[cut-block], bodies_taken=1, results=edge-grounded;tackle-made
             | nothing | no cut | exchange=[base-block], bodies_taken=1, results=edge-grounded
            plays-through-cuts | event | cut, and made the tackle on the ground | exchange=[cut-block], bodies_taken=1, results=edge-grounded;tackle-made
             | chance | cut and out of it | exchange=[cut-block], bodies_taken=1, results=edge-grounded
             | nothing | movement called | exchange=[cut-block], movement=yes, bodies_taken=1, results=tackle-made
            late-block-recognition | event | late eyes on a run away | exchange=[base-block], direction=run-away, faults=late-eyes
             | chance | saw it | exchange=[base-block], direction=run-away
             | nothing | the corner owes him the crack | exchange=[crack-block], direction=run-at-him, faults=late-eyes
             | nothing | view hid the eyes | exchange=[base-block], direction=run-away, not_seen=eyes
            peeks-inside-before-the-block | event | looked in with a man on him | exchange=[base-block], direction=run-at-him, faults=peeks-inside
             | chance | eyes on the block | exchange=[base-block], direction=run-at-him
             | nothing | boot, counter and reverse are told to look in | exchange=[cutoff-block], direction=run-away, assignment=bcr-assignment, faults=peeks-inside
             | nothing | nobody on him | exchange=[tackle-away], direction=run-away, assignment=chase-assignment, faults=peeks-inside
            loses-backside-on-boot-counter-reverse | event | reverse back behind him | direction=run-away;reverse-to-him, assignment=bcr-assignment, faults=loses-backside
             | event | a boot is a pass play and counts | phase=pass-rush, play=boot, direction=run-away, assignment=bcr-assignment, faults=loses-backside
             | chance | stayed home for the reverse | direction=run-away;reverse-to-him, assignment=bcr-assignment
             | nothing | nothing came back | direction=run-away, assignment=bcr-assignment, faults=loses-backside
             | perhaps | duty unknown | direction=run-away;reverse-to-him, faults=loses-backside
            loops-too-deep-on-backside | event | too deep behind a hinge | exchange=[hinge-block], direction=run-away, assignment=chase-assignment, faults=chases-too-deep
             | chance | flat down the line | exchange=[tackle-away] > flat-chase, direction=run-away, assignment=chase-assignment
             | perhaps | the deep trail is the chase in some trees | exchange=[tackle-away] > trail-chase, direction=run-away, assignment=chase-assignment, faults=chases-too-deep
            bites-on-the-dive | event | took the back with the quarterback his | exchange=[unblocked-read-key], assignment=read-quarterback-assignment, faults=bites-on-dive
             | chance | stayed on the quarterback | exchange=[unblocked-read-key], assignment=read-quarterback-assignment
             | nothing | exchange called | exchange=[unblocked-read-key] > scrape-exchange, assignment=read-quarterback-assignment, faults=bites-on-dive
             | perhaps | duty unknown | exchange=[unblocked-read-key], faults=bites-on-dive
            soft-on-the-dive | event | the back got the ball and the lane | exchange=[unblocked-read-key], assignment=read-dive-assignment, results=inside-lane-open
             | chance | lane open, tackle made | exchange=[unblocked-read-key], assignment=read-dive-assignment, results=inside-lane-open;tackle-made
             | nothing | the quarterback pulled because he crashed | exchange=[unblocked-read-key], assignment=read-dive-assignment, direction=quarterback-keep-at-him, results=inside-lane-open
            widens-with-arc-blocks | event | went out with the arc | exchange=[arc-block], assignment=read-quarterback-assignment, faults=widens-with-arc
             | chance | let the arc go by | exchange=[arc-block], assignment=read-quarterback-assignment
             | nothing | the releasing man is his in coverage | exchange=[arc-block] > man-on-tight-end, assignment=read-quarterback-assignment, faults=widens-with-arc
            misses-tackles-in-the-edge-lane | event | missed | faults=missed-tackle
             | chance | shared | results=tackle-shared
             | nothing | no try | results=edge-held
            finishes-tackles | event | for a loss | results=tackle-for-loss
             | chance | missed | results=missed-tackle
             | nothing | no try | results=edge-held
            slows-in-pursuit | event | free and faded, the ball far off | results=edge-untouched, ball_reach=out-of-reach, faults=fades-in-pursuit
             | chance | free and ran | results=edge-untouched, ball_reach=out-of-reach
             | nothing | the boot was his to check first | results=edge-untouched, assignment=bcr-assignment, faults=fades-in-pursuit
             | nothing | still on a block | exchange=[base-block], shed=none, faults=fades-in-pursuit
            wrong-arms-reliably | event | under it and the ball bounced | exchange=[kick-out-block] > spill, assignment=spill-assignment, results=ball-bounced
             | chance | under it and the lane stayed open | exchange=[kick-out-block] > wrong-arm, assignment=spill-assignment, results=inside-lane-open
             | nothing | duty inferred from his own shoulder | exchange=[kick-out-block] > spill, assignment=spill-assignment, assignment_source=inferred, results=ball-bounced
             | perhaps | duty unknown | exchange=[kick-out-block] > spill, results=ball-bounced
            boxes-reliably | event | boxed with a tight lane | exchange=[kick-out-block] > box-and-squeeze, assignment=contain-force-assignment
             | chance | boxed without squeezing | exchange=[kick-out-block] > box-and-squeeze, assignment=contain-force-assignment, faults=no-squeeze
             | nothing | sift is a team rule of its own | exchange=[sift-block] > box-and-squeeze, assignment=box-assignment
            stacks-and-sheds | event | stacked and came off | exchange=[base-block] > stack-and-shed, ball_reach=one-gap, shed=after-ball
             | chance | stacked and stuck | exchange=[base-block] > stack-and-shed, ball_reach=one-gap, shed=none
             | nothing | a spill man could never earn it on a kick-out | exchange=[kick-out-block] > wrong-arm, assignment=spill-assignment, ball_reach=one-gap, shed=none
            holds-double-teams | event | two taken | exchange=[combo-block], results=two-blockers-taken
             | chance | nobody tagged what became of it | exchange=[double-team]
             | chance | held by two, and washed sideways | exchange=[double-team], results=two-blockers-taken;edge-moved-inside
             | nothing | one man | exchange=[base-block], results=stalemate
            edge-lost-assignment-unknown | event | lost, and nobody told | exchange=[reach-block], results=edge-lost-outside
             | chance | kept, and nobody told | exchange=[reach-block], results=edge-held
             | nothing | the duty is known | exchange=[kick-out-block], assignment=spill-assignment, results=edge-lost-outside
            likely-spill-rule | event | went under | exchange=[trap-block] > wrong-arm
             | chance | boxed | exchange=[trap-block] > box-and-squeeze
             | nothing | sift, not kick-out | exchange=[sift-block] > wrong-arm
            crossed-face-and-bounced-unknown | event | ducked in and the ball bounced | exchange=[reach-block], direction=run-at-him, faults=backdoors-block, results=ball-bounced
             | chance | ducked in and it did not | exchange=[reach-block], direction=run-at-him, faults=backdoors-block
             | nothing | no movement was called, and it is known | exchange=[reach-block], direction=run-at-him, movement=no, faults=backdoors-block, results=ball-bounced
            goes-down-on-spills | event | on the ground alone | exchange=[kick-out-block] > wrong-arm, assignment=spill-assignment, faults=falls-on-spill, bodies_taken=1
             | chance | took two down with him | exchange=[kick-out-block] > wrong-arm, assignment=spill-assignment, faults=falls-on-spill, bodies_taken=2
             | nothing | a boxed rep cannot show it | exchange=[kick-out-block] > box-and-squeeze, assignment=spill-assignment, bodies_taken=1
            stops-feet-on-contact | event | boxed and stopped | exchange=[kick-out-block] > box-and-squeeze, faults=feet-stop-at-contact
             | chance | boxed and drove | exchange=[kick-out-block] > box-and-squeeze
             | nothing | spilled with the shoulder | exchange=[kick-out-block] > wrong-arm, faults=feet-stop-at-contact
             | nothing | view hid the feet | exchange=[base-block], not_seen=feet
            fanned-out-easily | event | widened with the lane open | exchange=[fan-block], assignment=spill-assignment, down=1, distance=10, results=edge-widened;inside-lane-open
             | chance | widened, lane shut | exchange=[fan-block], assignment=spill-assignment, down=1, distance=10, results=edge-widened
             | perhaps | contain may hold the width | exchange=[fan-block], assignment=contain-force-assignment, down=1, distance=10, results=edge-widened;inside-lane-open
             | nothing | passing down, a fan looks like a set | exchange=[fan-block], assignment=spill-assignment, down=3, distance=9, results=edge-widened;inside-lane-open
            sets-the-edge-consistently | event | held it, ball outside | exchange=[base-block], direction=run-outside-of-him, assignment=contain-force-assignment, results=edge-held
             | chance | lost it | exchange=[base-block], direction=run-at-him, assignment=contain-force-assignment, results=edge-lost-outside
             | nothing | ball inside of him | exchange=[base-block], direction=run-inside-of-him, assignment=contain-force-assignment, results=edge-held
             | nothing | on a run away every edge is held | exchange=[base-block], direction=run-away, assignment=contain-force-assignment, results=edge-held
            """);

    RunFindingsScenarioTest() {
        super(REPS);
    }
}
