package rushlight.demo;

import java.util.HashMap;
import java.util.Map;

/** The ordinary man of the league: what is dealt for a habit on which a profile says nothing. */
final class Ordinary {
    static final Map<String, String> HABITS = read("""
            phase: rush 11, run 9
            phase/passing: rush 18, run 2
            phase/short: rush 5, run 15
            over: left 10, right 10
            surface: open-side 11, closed-side 9
            align/open-side: technique-5 12, wide-9 4, wide-5 3, technique-4i 1
            align/closed-side: technique-9 11, technique-7 6, technique-6 3
            align/passing: wide-9 10, technique-5 6, technique-9 3, wide-5 1
            stance: three-point-stance 13, two-point-stance 7
            rush-kind: alone 12, mismatch 2, helped 2, game 1, lane 1, quick 2
            rush-kind/first: alone 10, mismatch 2, helped 2, quick 2, read 3, screen 1
            rush-kind/passing: alone 14, helped 2, game 2, lane 1, screen 1
            rush-duty: stated 18, inferred 1, unknown 1
            opening: bull-rush 4, long-arm 4, speed-rush 4, dip-and-rip 3, two-hand-swipe 3, club-rip 2
            setup: none 16, jab-step 2, hesitation-rush 1, shake 1
            wins: yes 4, no 16
            wins/mismatch: yes 9, no 11
            wins/helped: yes 1, no 19
            time: yes 17, no 3
            answer: paired 8, stray 2, none 10
            counter-wins: yes 5, no 11
            effort: yes 1, no 19
            mismatch-word: mismatch 3, first-move 2
            pressure: hurry 8, sack 3, quarterback-hit 4, none 5
            finish: made 9, missed 2
            blind: yes 2, no 3
            strip: yes 3, no 7
            not-won: lost 12, even 8
            get-off: with 12, first 5, second 3
            power-fault: none 15, feet-stop-at-contact 2, high-pads 2, hands-outside 1
            speed-fault: none 16, rounded-track 2, rushes-past-depth 1, loses-balance-on-corner 1
            hands-fault: none 16, early-hands 2, late-hands 2
            inside-fault: none 16, no-edge-threat 2, spins-in-place 1, telegraphed-windup 1
            second-fault: none 17, pause-after-first-move 3
            edge-fault: none 9, no-flatten 1
            hand-cleared: yes 6, no 14
            strike: won 8, even 9, lost 3
            meets/bull-rush: anchor-hop 6, sits-down 4, leans-on-rusher 2, latched-inside 3, blocker-snatch 2, over-set 2
            meets/long-arm: anchor-hop 5, blocker-snatch 4, leans-on-rusher 3, over-set 2, latched-inside 2
            meets/speed-to-power: anchor-hop 6, leans-on-rusher 3, latched-inside 3, over-set 2
            meets/speed-rush: vertical-set 5, over-set 4, ride-past 4, patient-square-set 3, early-two-hand-punch 2, soft-set 1
            meets/dip-and-rip: ride-past 4, over-set 3, vertical-set 3, rip-clamp 3
            meets/ghost: late-two-hand-punch 3, ride-past 2, over-set 2
            meets/cross-chop: late-two-hand-punch 4, over-set 3, ride-past 3, hand-flash 1
            meets/two-hand-swipe: late-two-hand-punch 4, over-set 2, ride-past 2, hand-flash 2, wide-hands-hug 1
            meets/chop-rip: rip-clamp 4, independent-hands 3, over-set 2, late-two-hand-punch 3, ride-past 2
            meets/club-rip: patient-square-set 4, rip-clamp 3, over-set 2, ride-past 2
            meets/arm-over: early-two-hand-punch 3, patient-square-set 3, over-set 2
            meets/inside-spin: patient-square-set 4, under-set 2
            meets/up-and-under: patient-square-set 4, under-set 2
            gives/power: weight-on-heels 3, soft-set 3, heel-click 1, catch-absorb 2, none 5
            gives/outside: early-two-hand-punch 3, outside-hand-first 2, flat-set 2, blocker-stops-feet 2, under-set 2, none 6
            gives/inside: over-set 4, leans-outside 2, opens-gate 1
            helper: chip-by-back 4, chip-by-tight-end 3, double-team 4, slide-to 3, inside-help 2
            chip-fault: none 6, blindsided-by-chip 2
            double-fault: none 9, quits-on-second-blocker 1
            game: e-t-stunt 3, t-e-stunt 4
            game-fault: none 8, loop-too-wide 1, loop-too-soon 1
            game-wins: yes 5, no 12
            lane-duty: pass-contain-assignment 3, mush-assignment 2
            lane: kept 12, squeezed 6, escaped 1
            hand-up: yes 4, no 4
            retrace: yes 5, no 3
            read: rip 2, late 3, jerk 1
            drop-end: ball-not-in-area 6, tackle-made 2, missed-tackle 1
            film: cut-up
            drop: hook-curl-drop 3, flat-drop 3, curl-flat-drop 2, spot-drop 1, zone-blitz-drop 1
            playside-duty: spill-assignment 6, box-assignment 5, contain-force-assignment 5, unknown 4
            backside-duty: chase-assignment 9, bcr-assignment 7, unknown 4
            read-duty: read-quarterback-assignment 5, read-dive-assignment 3, unknown 2
            source: stated 17, inferred 3
            run-kind/open-side: base 4, reach 3, kick-out 3, pull 3, cutoff 2, away 2, sift 1, read 1, fan 1
            run-kind/closed-side: tight-end 5, reach 4, kick-out 3, double 2, pull 2, pin 1, cutoff 2, sift 1
            eyes: early 18, late 2
            pads: low 18, high 2
            squeeze: yes 9, no 1
            kick-word: kick-out-block 6, trap-block 1
            spill-fit: under 8, under-two 5, fell 2, open 2, boxed 2, upfield 1
            ricochet: yes 2, no 3
            box-fit: held 14, pinned 2, wide 2, upfield 1, under 1
            unknown-fit: under 4, held 4, pinned 1, wide 1
            bounced-outside: yes 1, no 4
            puller-strike: won 10, even 8, lost 2
            reach-fit: set 12, strung 5, hooked 2, backdoor 1
            base: beaten 6, stalemate 9, back 3, widened 1, sealed 1
            base/tight-end: beaten 8, stalemate 9, back 2, widened 1
            base-fault: none 14, no-extension 2, hands-outside 2, feet-stop-at-contact 1, stuck-on-block 1
            double: held 10, back 6, split 1
            pads-on-double: no 9, yes 1
            pin: crossed 4, washed 2
            fan: held 4, widened 2
            cutoff: crossed 7, stuck 2, around 1
            chase: flat 7, deep 1
            cutback: no 3, fit 1
            cutback-play: tackled 4, missed 1
            bcr-threat: yes 9, no 5
            bcr: home 9, left 1
            dive: crashed 6, soft 1
            read-play: patient 7, bit 2, widened 1
            cut: up 4, down 1
            tackle: made 5, shared 4, missed 1, none 10
            fades: no 19, yes 1
            view: clear 34, feet 1, hands 1, eyes 1, pads 1
            confidence: high 15, medium 5, high 14, medium 5, low 1
            note: yes 3, no 7
            tail: yes 1, no 2
            """);

    private Ordinary() {}

    /** One habit a line, {@code name: cards}. */
    static Map<String, String> read(String lines) {
        Map<String, String> habits = new HashMap<>();
        lines.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(line -> {
            String[] sides = line.split(": ", 2);
            habits.put(sides[0], sides[1]);
        });
        return Map.copyOf(habits);
    }
}
