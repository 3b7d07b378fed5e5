package rushlight.demo;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What is said of the topics of a rep, one topic a line. */
final class Phrases {
    static final Map<String, List<String>> ON = read("""
            won-power: Walked him back. | Collapsed the {side} side by himself. | Pop in the hands, tackle on skates. | Got under the pads and stayed there. | "That's a man's rush." | Hips through contact, rare for this group. | {opponent} had no answer to that strength.
            won-outside: Clean at the top. | Beat the hands, beat the hip, gone. | Tackle was never square. | Shoulder low, edge soft, easy. | Took the corner in three steps. | Good track to the spot. | Won it before the fourth step.
            won-counter: Felt it and went the other way. | Second move landed, and that is the difference. | Counter off the stop, no pause. | Tackle was leaning, he made him pay. | Two-part rush, both parts finished. | This is the counter I wanted on tape.
            effort: Never quit on it. | Late, ugly, and it counts. | Third try got there. | Motor play.
            paired-second: Right idea for that set. | Had the answer ready. | Went to the counter in time. | Reads the stop, picks the right door. | Answer was there, finish was not.
            stray-second: Second move had nothing to do with what the tackle gave him. | Guessing after contact. | "What was that?" in the margin from my first look. | Random second hand, wasted. | Went to a move the block did not ask for.
            met-over-set: Tackle set wide of him. | Inside was open. | Overset, clear as day from the end zone. | B gap had nobody in it, guard turned away. | Setter cheated to the corner.
            met-vertical-set: Deep set, he had a runway. | Tackle gave ground and never got bumped. | Vertical set; room to convert. | Soft depth by {opponent} all night.
            met-ride-past: Ridden by the spot. | Pushed past nine yards. | Too much arc, tackle just helped him along. | Ran the hoop.
            met-anchor-hop: Tackle hopped twice and sat. | Anchor held. | Hop, re-fit, done. | Stopped at three yards by the anchor.
            met-sits-down: Blocker was waiting on the power. | Sat on it. | Hips dropped before contact.
            met-leans-on-rusher: Blocker had his weight out over his toes. | All lean, no base. | That tackle was begging to be pulled.
            met-late-two-hand-punch: Patient hands on the other side. | Tackle kept his hands home. | No punch to beat until late. | Waited him out.
            met-rip-clamp: Rip got clamped. | Arm pinned under the overhook. | Tackle hooked the arm and hung on.
            met-patient-square-set: Square, quiet set. | Tackle never bit. | Good pro set by {opponent}.
            met-latched-inside: Blocker won the chest. | Grabbed and held inside, no call. | Hands inside, that was it.
            met-blocker-snatch: Hands knocked down. | Snatched at contact. | Tackle trapped his arms.
            met-under-set: Inside was shut. | Tackle sat inside, the corner was free. | Wrong door.
            met-hand-flash: Bit on the flash. | Fake punch, he swung at it.
            met-early-two-hand-punch: Took both hands in the chest. | Early punch got him square.
            feet-stop-at-contact: Feet died. | Hands fight, legs do not. | Stops running on contact. | No leg drive after the strike.
            high-pads: Pads up. | Too tall at contact. | Stood up, lost the leverage he had. | Chest open by step three. | Plays like he is looking for someone in the stands.
            early-hands: Swung at nothing. | Hands left before the punch came. | Air. | Threw the swipe a yard too soon. | Whiff on the hands, exposed the chest.
            late-hands: Hands late. | Got hit first. | Punch was on him before the move started.
            hands-outside: Hands wide on the strike. | Grabbed cloth outside the numbers.
            rounded-track: Banana path. | Rounded it off. | Too wide a turn for that depth.
            rushes-past-depth: Ran past the launch point. | Deeper than the passer, no brakes. | Out of the play at the top.
            no-flatten: Had the edge and kept on going upfield. | Never turned his toe in. | Hip is by him, and then he runs to the band. | Wins the corner, does not collect. | Flatten! Flatten!
            late-get-off: Last man off the ball. | Late on the snap again. | Watching the ball, moving with the guard. | A full beat slow out of the stance. | Everyone else is gone before he is. | Slow twitch today.
            late-eyes: Never saw it coming. | Looking in the backfield, hit from the side. | Read came after the block did. | Eyes late. | A step behind the block. | Stared at the mesh and got blocked. | Recognition is the issue, not the body.
            no-edge-threat: No threat outside first. | Inside move out of nowhere.
            spins-in-place: Spun on a dime and stayed on it. | Spin went nowhere.
            pause-after-first-move: Stopped to think. | Pause between one and two. | First move, a breath, second move.
            loses-balance-on-corner: Lost his feet on the turn. | Slipped at the top.
            blindsided-by-chip: Blown up by the chip, head was down. | Never felt the chipper.
            double-team: Two on him. | Doubled, ate it. | They turned the guard to him. | Respect from the protection.
            chip-by-back: Back got a piece of him. | Chipped on the way out.
            chip-by-tight-end: Tight end nudged him off the track. | Wing chip.
            slide-to: Slide came his way. | Full slide, nowhere to go.
            inside-help: Guard sat inside for help. | Had company inside.
            setup-jab-step: Jab made the tackle look. | Jab inside first, good. | Stuck the inside foot, tackle looked in.
            setup-hesitation-rush: Little hitch first. | Stutter at the top, tackle's feet stopped. | Changed his speed for once.
            setup-shake: Shake froze nobody. | Head fake before the move. | Shook him, shoulders only.
            game: Ran the game on time. | Twist; did his part. | Stunt inside. | Game was picked up.
            lane-kept: Stayed in the lane. | Did his job, kept the width. | Boring and right.
            lane-squeezed: Closed the pocket from his side. | Squeezed without losing the edge.
            lane-escaped: Lost the lane. | Quarterback out the {side} side, that is on him. | Went under with contain, ball is out the door.
            quick: Ball out on three steps. | No time for anyone. | Quick game, nothing to grade.
            batted: Got a hand on it. | Eyes on the throw, hand up, ball down.
            screen-seen: Smelled the screen. | Turned and ran with the back. | Retraced right away.
            screen-missed: Ran himself out of the screen. | Let go free, did not wonder why.
            run-fake: Played the fake first. | Run action, slow to turn it into a rush. | Half a count behind on the boot fake.
            unblocked: Nobody touched him. | Free runner, credit the call. | Left free by {opponent}.
            missed-passer: There, and slid off him. | Had the sack in his arms. | Arm tackle, quarterback stepped out of it.
            sack: Sack. | Got him on the ground. | Finished the play. | Sack on {down} and {distance}, big one.
            quarterback-hit: Hit him as it left. | Put him down after the throw, clean. | On the passer, a tick late.
            tight-end-beaten: Threw the tight end aside. | Tight end has no chance with these hands. | Rag-dolled number whatever-it-was. | Owned the man.
            tight-end-stalemate: Even with the tight end. | Held the point against the tight end. | Locked out, no give.
            tight-end-back: Moved by a tight end. Note it. | Tight end got under him.
            base-beaten: Stack, find, shed. | Tackle on the ground, he is not. | Strong off the block.
            base-stalemate: Held the point. | Even. | Neither man moved.
            base-back: Gave two yards. | Driven off the spot. | Lost the line.
            base-widened: Opened the lane inside. | Wider than he needed to be.
            reach-set: Beat the reach. | Outside arm clean. | Set it and made the back cut. | Never hooked.
            reach-strung: Strung it to the numbers. | Ran with it, kept the outside.
            reach-hooked: Hooked. | Reached and gone, ball outside. | Arm pinned, edge lost.
            reach-hooked-held: Arm is pinned but the back cut it anyway. | Hooked, and lucky: runner turned in. | Technique loses, play is stopped. | Caught on his outside half, pursuit saved it.
            double-held: Held two. | Did not give an inch to the double. | Two men, no movement. | Linebackers ran free behind that.
            double-back: Moved by two. | Double got him turned.
            double-split: Split it. | Got skinny, came out the back.
            spill-under: Got under it. | Wrong arm, inside hip, ball bounces. | Low man inside. | Spilled it like they drew it.
            spill-under-two: Took two for one. | Pile-up in the hole, his doing.
            spill-fell: On the ground for nothing. | Fell under the puller, only cost them one.
            spill-boxed: Boxed it, and they were spilling. | Wrong shoulder for the call.
            spill-open: Soft under it, lane stayed open. | Kicked out of the hole.
            box-held: Boxed it tight. | Inside shoulder, outside arm free. | Lane was a keyhole. | Turned it back in.
            box-pinned: Outside arm pinned, ball around him. | Got logged. | Lost his outside half to the puller.
            box-lost: Turned his shoulders, edge is gone. | Ball outside and it was his.
            box-wide: Too much air inside of him. | Boxed, did not squeeze.
            unknown-duty: Do not know the call. | Whose edge? Ask. | No grade without the call sheet. | "Force or spill?" - nobody here can say. | If contain, bad; if spill, fine.
            sift: Saw the sift man. | Closed and met it. | Ready for the split block.
            sift-late: Sift hit him in the ear. | Never saw the wing come across.
            cutoff-crossed: Crossed the cutoff. | Would not be cut off. | Over the top and running.
            cutoff-stuck: Stuck on the backside. | Cut off.
            cutoff-around: Ran around it, cutback was there.
            chase: Chased it flat. | Good angle from the back side. | Ran to the ball.
            bcr-home: Stayed home, and here it came. | Checked, then went. | Reverse came to him and died. | Patient. Trust him back there.
            bcr-quiet: Checked the boot, nothing there. | Stayed for boot, counter, reverse. | Discipline rep.
            bcr-left: Left early, ball behind him. | Chased the fake.
            cutback-tackled: Cutback ran into him. | Sat in the cutback lane.
            cutback-missed: Overran the cutback. | Back door open.
            dive: Took the dive. | Crashed down on the back.
            read-patient: Made the quarterback wait. | Slow-played the read. | Gave him nothing to read.
            read-bit: Bit on the back. | Quarterback pulled it, nobody home.
            tackle-missed: Missed the tackle. | Clean shot, no wrap. | Hit him with a shoulder and bounced off. | Arrives, does not bring his arms. | Ducks his head and whiffs. | Over-ran it in the hole. | Left his feet. | Fell off at the thigh. | Went high, back spun out.
            tackle-made: Made the stop. | Sure tackle. | Wrapped and drove.
            tackle-shared: In on it. | Helped on the stop.
            drop: Got to the landmark. | Good depth, eyes back. | Opened late but recovered. | Comfortable in space. | Walled the crosser. | Looks like a linebacker doing it. | Carried it and passed it off.
            good: Like it. | More of that. | Plus rep. | Took over on {down} and {distance}. | He can play. | Big one in quarter {quarter}.
            bad: Has to be better. | Coach it. | Cost them. | Not good enough on {down} and {distance}. | Seen this before. | Fix this first.
            so-so: Push. | Fair rep. | Nothing gained, nothing lost. | Move on. | Could go either way.
            """);

    private Phrases() {}

    private static Map<String, List<String>> read(String lines) {
        return lines.lines()
                .map(line -> line.split(": ", 2))
                .collect(
                        Collectors.toUnmodifiableMap(sides -> sides[0], sides -> List.of(sides[1].split(" \\| ", -1))));
    }
}
