package rushlight.findings;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;

/** What one rush says and does not say of him. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RushFindingsScenarioTest extends ArguedReps {
    // finding | what the rep is for it | a coach's argument | the rep as typed
    private static final List<Scenario> REPS = Scenario.table("pass-rush", """
            no-inside-counter | event | the over-set gave the inside and he ran on | exchange=speed-rush > [over-set], result=lost, second_move_time=yes
             | chance | won around an over-set | exchange=speed-rush > [over-set] > flatten, result=won
             | chance | came underneath | exchange=speed-rush > [over-set] > inside-spin, result=lost
             | nothing | help sat inside | exchange=speed-rush > [over-set], help=slide-to, result=lost
             | nothing | the lane was his duty | exchange=speed-rush > [over-set], assignment=pass-contain-assignment, result=lost
             | nothing | ridden past, which is another answer | exchange=speed-rush > [ride-past], result=lost
            no-outside-answer | event | the under-set gave the corner and he bulled on | exchange=bull-rush > [under-set], result=lost
             | chance | the bull won | exchange=bull-rush > [under-set], result=won
             | nothing | a tight end waited there to chip | exchange=bull-rush > [under-set], help=chip-by-tight-end, result=lost
             | nothing | a game sent him inside | exchange=bull-rush > [under-set], assignment=game-assignment, result=lost
            no-power-answer | event | ran around a man on his heels and lost | exchange=speed-rush > [weight-on-heels], result=lost
             | chance | ran around him and won | exchange=speed-rush > [weight-on-heels], result=won
             | nothing | an open gate is an inside chance | exchange=speed-rush > [opens-gate], result=lost
             | nothing | the everyday set, and the first move won | exchange=speed-rush > [vertical-set], result=won
             | nothing | help arrived | exchange=speed-rush > [weight-on-heels], help=double-team, result=lost
            no-first-touch-answer | event | swiped at hands kept home | exchange=two-hand-swipe > [late-two-hand-punch], result=lost
             | chance | struck first | exchange=long-arm > [late-two-hand-punch], result=lost
             | chance | a plain lost edge is no swipe at air | exchange=speed-rush > [late-two-hand-punch], result=lost
             | nothing | the hands came early | exchange=two-hand-swipe > [early-two-hand-punch], result=lost
            no-pull-off-lean | event | kept bulling into a lean | exchange=bull-rush > [leans-on-rusher], result=lost
             | chance | pulled him | exchange=bull-rush > [leans-on-rusher] > push-pull, result=lost
             | chance | a rip off the bull is an answer | exchange=bull-rush > [sits-down] > bull-rip, result=lost
             | nothing | two men | exchange=bull-rush > [leans-on-rusher], help=double-team, result=lost
            hands-unpunished | event | both hands given early and nothing done | exchange=speed-rush > [early-two-hand-punch], result=lost
             | chance | bulled under the hands and won | exchange=[early-two-hand-punch] > bull-rush, result=won
             | nothing | he struck first, so the hands gave nothing away | exchange=bull-rush > [outside-hand-first], result=lost
            primary-without-counter | event | stopped with time, and nothing followed | exchange=bull-rush > [sits-down], second_move_time=yes, result=lost
             | chance | a counter with no name is a counter | exchange=speed-rush > [over-set] > counter-move, second_move_time=yes, result=lost
             | chance | answer untagged: any second move counts | exchange=speed-rush > inside-spin, second_move_time=yes, result=lost
             | nothing | no time for a second move | exchange=bull-rush > [sits-down], second_move_time=no, result=lost
             | nothing | chipped | exchange=bull-rush > [sits-down], second_move_time=yes, help=chip-by-back, result=lost
            power-stalls-feet-stop | event | bulled and stopped his feet | exchange=bull-rush, faults=feet-stop-at-contact, result=lost
             | chance | stopped his feet and won another way | exchange=bull-rush, faults=feet-stop-at-contact, result=won
             | nothing | no power try | exchange=speed-rush, faults=feet-stop-at-contact, result=lost
             | nothing | view hid the feet | exchange=bull-rush, result=lost, not_seen=feet
            plays-high | event | stood up into contact | exchange=bull-rush, blocker=left-tackle, faults=high-pads, result=lost
             | chance | stayed low | exchange=bull-rush, blocker=left-tackle, result=lost
             | nothing | pure speed met nobody high | exchange=speed-rush, blocker=left-tackle, faults=high-pads, result=lost
             | nothing | view hid the pads | exchange=bull-rush, blocker=left-tackle, result=lost, not_seen=pads
            hands-land-late | event | the hands were on him first | exchange=[latched-inside] > bull-rush, blocker=left-tackle, result=lost
             | chance | his hands first | exchange=bull-rush, blocker=left-tackle, result=lost
             | nothing | no hands are due on a ghost | exchange=ghost, blocker=left-tackle, faults=late-hands, result=lost
            swings-at-air | event | swung too early | exchange=two-hand-swipe, faults=early-hands
             | chance | swung in time | exchange=two-hand-swipe
             | nothing | no hand move | exchange=bull-rush, faults=early-hands
             | nothing | help arrived | exchange=two-hand-swipe, help=double-team, faults=early-hands
            hands-outside-frame | event | struck the shoulders | exchange=long-arm, faults=hands-outside
             | chance | struck the chest | exchange=long-arm
             | nothing | view hid the hands | exchange=long-arm, not_seen=hands
            hand-removal-without-finish | event | hand gone, hip behind | exchange=speed-rush > two-hand-swipe > rip, hand_cleared=yes, hip_cleared=no, result=lost
             | chance | hand gone, hip behind, won all the same | exchange=speed-rush > two-hand-swipe > rip, hand_cleared=yes, hip_cleared=no, result=won
             | nothing | the swipe became a bull | exchange=two-hand-swipe > bull-rush, hand_cleared=yes, hip_cleared=no, result=lost
             | nothing | nobody charted the hip | exchange=speed-rush > two-hand-swipe > rip, hand_cleared=yes, result=lost
            no-flatten-after-edge | event | past the hip and on past the passer | exchange=speed-rush > rip, hip_cleared=yes, faults=no-flatten
             | chance | past the hip and down | exchange=speed-rush > rip, hip_cleared=yes
             | nothing | nobody blocked him | exchange=speed-rush > rip, hip_cleared=yes, how_won=unblocked, faults=no-flatten
            runs-past-the-passer | event | ran the arc past the passer | exchange=speed-rush, faults=rushes-past-depth
             | chance | past the depth and spun back late | exchange=speed-rush > late-spin, faults=rushes-past-depth
             | nothing | no outside try | exchange=bull-rush, faults=rushes-past-depth
            wins-only-vs-tight-ends-and-backs | event | beat a tight end | exchange=speed-rush, blocker=tight-end, result=won
             | chance | beat a tackle | exchange=speed-rush, blocker=left-tackle, result=won
             | nothing | lost, so no win to look at | exchange=speed-rush, blocker=tight-end, result=lost
            late-wins-only | event | won by effort | exchange=speed-rush, blocker=left-tackle, how_won=effort, result=won
             | chance | won with the first move | exchange=speed-rush, blocker=left-tackle, how_won=first-move, result=won
             | nothing | the blocker was not alone | exchange=speed-rush, blocker=left-tackle, help=double-team, how_won=effort, result=won
            slow-get-off | event | late | exchange=speed-rush, get_off=late
             | chance | neither first nor last | exchange=speed-rush, get_off=with
             | nothing | read duty starts late by design | exchange=speed-rush, get_off=late, assignment=read-rush-assignment
            no-rush-plan | event | ran on into an over-set | exchange=speed-rush > [over-set], blocker=left-tackle, result=lost
             | chance | no answer to the opening, and won another way | exchange=speed-rush > [over-set], blocker=left-tackle, result=won
             | nothing | neither set nor hands were tagged | exchange=speed-rush, blocker=left-tackle, result=lost
            head-on-rusher | event | went at the middle of the man | exchange=two-hand-swipe, blocker=left-tackle, faults=head-on-attack
             | chance | worked half of him | exchange=two-hand-swipe, blocker=left-tackle
             | nothing | a bull goes head on | exchange=bull-rush, blocker=left-tackle, faults=head-on-attack
            counter-without-threat | event | inside with nothing shown outside | exchange=inside-spin, faults=no-edge-threat
             | chance | inside off a threat | exchange=speed-rush > inside-spin
             | nothing | a cross-face has no threat by design | exchange=cross-face, faults=no-edge-threat
             | nothing | slant called | exchange=called-slant > inside-spin, faults=no-edge-threat
            wasted-spin | event | turned on the spot | exchange=inside-spin, faults=spins-in-place
             | chance | gained ground | exchange=inside-spin
             | nothing | lane lost by something else | exchange=speed-rush, faults=loses-contain-pass
            swim-exposure | event | ribs open | exchange=arm-over, faults=exposed-ribs
             | chance | quick and low | exchange=arm-over
             | nothing | a rip shows no ribs | exchange=rip, faults=exposed-ribs
            long-arm-collapses | event | the elbow gave | exchange=long-arm, faults=collapsed-arm
             | chance | locked | exchange=long-arm
             | nothing | help arrived | exchange=long-arm, help=double-team, faults=collapsed-arm
            slow-second-move | event | stood between the moves | exchange=speed-rush > [over-set] > inside-spin, second_move_time=yes, result=lost, faults=pause-after-first-move
             | chance | went straight on | exchange=speed-rush > [over-set] > inside-spin, second_move_time=yes, result=lost
             | nothing | no second move at all is another finding | exchange=speed-rush > [over-set], second_move_time=yes, result=lost, faults=pause-after-first-move
            telegraphs-move | event | wound up | exchange=two-hand-swipe, faults=telegraphed-windup
             | chance | from where it was | exchange=two-hand-swipe
             | nothing | no hand move | exchange=bull-rush, faults=telegraphed-windup
            chip-erased | event | never saw the chip | exchange=speed-rush, help=chip-by-back, faults=blindsided-by-chip, result=lost
             | event | nothing after the chip, and lost | exchange=speed-rush > [chip-by-back], result=lost
             | chance | chipped and went on | exchange=speed-rush > [chip-by-back] > inside-spin, result=lost
             | nothing | no chip | exchange=speed-rush, result=lost
            double-erased | event | quit | exchange=bull-rush, help=double-team, faults=quits-on-second-blocker
             | chance | lost ground to two and fought | exchange=bull-rush, help=double-team, result=lost
             | nothing | one man | exchange=bull-rush, faults=quits-on-second-blocker
            contain-lost | event | out through his lane | exchange=speed-rush, assignment=pass-contain-assignment, faults=loses-contain-pass
             | chance | kept it | exchange=speed-rush, assignment=pass-contain-assignment
             | nothing | duty another's: he had a free rush | exchange=speed-rush, assignment=free-rush-assignment, faults=loses-contain-pass
             | nothing | the ball was gone | exchange=speed-rush, assignment=pass-contain-assignment, play=quick-game, faults=loses-contain-pass
             | perhaps | duty unknown | exchange=speed-rush, faults=loses-contain-pass
            too-passive-in-lane | event | never dented it | exchange=speed-rush, assignment=pass-contain-assignment, result=lost
             | chance | pressed with power | exchange=bull-rush, assignment=pass-contain-assignment, result=lost
             | nothing | free rush | exchange=speed-rush, assignment=free-rush-assignment, result=lost
            missed-finishes | event | had him and missed | chances=opp-finish, faults=missed-tackle
             | chance | had him and got him | chances=opp-finish, results=sack
             | nothing | the throw went off on contact: a hit | chances=opp-finish, results=quarterback-hit, faults=missed-tackle
            no-hands-in-lane | event | not home, hands down | exchange=speed-rush, chances=opp-not-home
             | chance | not home, hand up | exchange=speed-rush > hand-in-lane, chances=opp-not-home
             | nothing | nobody charted the moves | chances=opp-not-home
            screen-draw-blind | event | never turned | exchange=speed-rush, chances=opp-screen-draw
             | chance | retraced | exchange=speed-rush > retrace, chances=opp-screen-draw
             | nothing | held at the line | exchange=speed-rush > [blocker-hold], chances=opp-screen-draw
            off-the-ground | event | fell on the corner | exchange=speed-rush, blocker=left-tackle, faults=loses-balance-on-corner
             | chance | kept his feet | exchange=speed-rush, blocker=left-tackle
             | nothing | jumped and batted it | exchange=speed-rush, blocker=left-tackle, faults=leaves-feet, results=batted-pass
            scheme-fed-production | event | sack with nobody on him | how_won=unblocked, results=sack
             | chance | earned | exchange=speed-rush, how_won=first-move, results=sack
             | chance | his part in a game earns it | exchange=e-t-stunt > penetrate, how_won=scheme, results=sack
             | nothing | no production | how_won=unblocked, results=no-pressure
            rounded-rush | event | wide arc | exchange=speed-rush, faults=rounded-track
             | chance | tight | exchange=speed-rush
             | nothing | a contain path is wide on purpose | exchange=speed-rush, assignment=pass-contain-assignment, faults=rounded-track
            """);

    RushFindingsScenarioTest() {
        super(REPS);
    }
}
