package rushlight.demo;

import java.util.List;

/** The men whose logs are generated. Who each is meant to be stands in the README of this module. */
final class Players {
    static final List<Player> ALL = List.of(
            Player.of("Oren Castellow", "Port Ellery", 9, 20, "inside-spin up-and-under", """
                    phase: rush 15, run 5
                    opening: speed-rush 13, dip-and-rip 3, long-arm 2, cross-chop 2
                    meets/speed-rush: over-set 8, vertical-set 4, ride-past 3, patient-square-set 2, soft-set 2
                    answer/over-set: paired 9, none 1
                    answer/vertical-set: none 9, paired 1
                    answer/soft-set: none
                    answer: paired 6, none 4
                    counter-wins/over-set: yes 3, no 2
                    wins: yes 5, no 15
                    get-off: first 8, with 10, second 2
                    hands-fault: none 19, late-hands 1
                    """),
            Player.of("Bram Aldersey", "Lark Hollow", 2, 11, "bull-jerk", """
                    phase: rush 11, run 9
                    opening: long-arm 2, bull-rush 2, speed-rush 2, chop-rip 1
                    """),
            Player.of("Garrick Pellow", "Stonefen", 9, 20, "push-pull", """
                    phase: rush 8, run 12
                    surface: closed-side 17, open-side 3
                    rush-kind: alone 9, mismatch 8, helped 1, lane 1, quick 1
                    opening: bull-rush 8, long-arm 4, club-rip 3
                    wins: yes 1, no 19
                    wins/mismatch: yes 15, no 5
                    counter-wins: no
                    effort: no
                    base/tight-end: beaten 11, stalemate 8, back 1
                    reach-fit: set 17, strung 2, hooked 1
                    pads/tight-end: low 19, high 1
                    film: full
                    """),
            Player.of("Niko Vantry", "Sable Point", 9, 20, "up-and-under", """
                    phase: rush 16, run 4
                    rush-kind: alone 17, helped 2, quick 1
                    opening: cross-chop 10, dip-and-rip 4, long-arm 3, bull-rush 3
                    wins/left: yes 11, no 9
                    wins/right: yes 1, no 19
                    answer: paired 5, stray 2, none 13
                    counter-wins: yes 1, no 5
                    edge-fault: none
                    effort: no
                    """),
            Player.of("Lucan Whitlow", "Harrow Vale", 9, 20, "speed-to-power", """
                    phase: rush 14, run 6
                    rush-kind: alone 15, mismatch 1, helped 2, quick 2
                    opening: speed-rush 19, long-arm 1
                    setup: none
                    meets/speed-rush: over-set 6, vertical-set 4, ride-past 5, patient-square-set 3, early-two-hand-punch 2
                    answer: none 17, stray 1, paired 1
                    answer/over-set: none
                    wins: yes 8, no 12
                    edge-fault: none 5, no-flatten 5, rushes-past-depth 1
                    speed-fault: none 11, rounded-track 5, rushes-past-depth 4
                    get-off: first 9, with 9, second 2
                    """),
            Player.of("Calix Draymoor", "Brackwater", 9, 20, "push-pull long-arm-rip", """
                    opening: long-arm 8, bull-rush 3, club-rip 5, two-hand-swipe 2
                    get-off: late 8, with 9, second 3
                    hands-fault: none 7, late-hands 12, early-hands 1
                    meets/long-arm: latched-inside 8, anchor-hop 4, blocker-snatch 3, over-set 1
                    power-fault: none 8, late-hands 11, feet-stop-at-contact 1
                    tackle: made 6, shared 4, none 10
                    film: full
                    """),
            Player.of("Rufus Ennerdale", "Gannet Rock", 9, 20, "bull-jerk push-pull", """
                    phase: rush 7, run 13
                    run-kind/open-side: base 3, reach 3, kick-out 4, pull 3, cutoff 3, sift 4
                    run-kind/closed-side: tight-end 5, reach 3, kick-out 4, pull 3, cutoff 2, sift 3
                    eyes: early 10, late 10
                    eyes/sift: early 3, late 7
                    opening: bull-rush 7, long-arm 4, club-rip 3
                    power-fault: none 19, hands-outside 1
                    """),
            Player.of("Teo Maravale", "Merrow Bay", 9, 20, "inside-arm-over", """
                    phase: rush 10, run 10
                    tackle: made 3, shared 3, missed 7, none 4
                    finish: made 4, missed 5
                    wins: yes 6, no 14
                    pressure: sack 6, quarterback-hit 5, hurry 4
                    base: beaten 11, stalemate 8, back 1
                    base/tight-end: beaten 11, stalemate 8, back 1
                    reach-fit: set 17, strung 3
                    opening: chop-rip 8, two-hand-swipe 4, long-arm 4, speed-rush 4
                    """),
            Player.of("Wendell Ashcombe", "Calder Mill", 9, 20, "push-pull", """
                    phase: rush 10, run 10
                    rush-kind: alone 9, lane 8, helped 2, quick 1
                    rush-kind/passing: alone 9, lane 8, helped 2, screen 1
                    rush-kind/first: alone 8, lane 6, read 3, helped 1
                    run-kind/open-side: away 7, cutoff 4, base 4, reach 3, read 2
                    run-kind/closed-side: away 6, cutoff 3, tight-end 5, reach 3, kick-out 2
                    backside-duty: bcr-assignment 17, chase-assignment 3
                    bcr: home 29, left 1
                    lane: kept 12, squeezed 8
                    opening: bull-rush 6, long-arm 6, two-hand-swipe 4, dip-and-rip 4
                    eyes: early 19, late 1
                    """),
            Player.of("Anselm Corrigate", "Port Ellery", 9, 20, "push-pull", """
                    phase: rush 7, run 13
                    run-kind/open-side: kick-out 6, pull 6, base 3, reach 3, cutoff 2
                    run-kind/closed-side: kick-out 6, pull 5, tight-end 4, reach 2, double 1, sift 2
                    playside-duty: spill-assignment 10, box-assignment 5, contain-force-assignment 5
                    source: stated
                    spill-fit: under 10, under-two 8, fell 1, open 1
                    box-fit: held 18, wide 1, pinned 1
                    bounced-outside: yes 1, no 9
                    eyes: early 19, late 1
                    puller-strike: won 15, even 5
                    squeeze: yes 19, no 1
                    opening: bull-rush 6, long-arm 5, dip-and-rip 5
                    film: full
                    """),
            Player.of("Ishan Velloor", "Harrow Vale", 9, 20, "long-arm", """
                    phase: rush 15, run 5
                    opening: two-hand-swipe 11, chop-rip 4, cross-chop 3, speed-rush 2
                    meets/two-hand-swipe: late-two-hand-punch 7, hand-flash 4, over-set 2, wide-hands-hug 1, ride-past 1
                    meets/chop-rip: late-two-hand-punch 5, rip-clamp 2, independent-hands 1
                    meets/cross-chop: late-two-hand-punch 4, hand-flash 2, over-set 1
                    hands-fault: early-hands 11, none 8, late-hands 1
                    answer/late-two-hand-punch: none 9, paired 1
                    answer/hand-flash: none 7, paired 1
                    answer: paired 4, none 6
                    wins: yes 5, no 15
                    """),
            Player.of("Desmo Harkaway", "Sable Point", 9, 21, "inside-spin", """
                    phase: drop 9, rush 5, run 6
                    phase/passing: drop 11, rush 8, run 1
                    surface: open-side 8, closed-side 12
                    stance: two-point-stance
                    align/open-side: wide-5 6, wide-9 8, technique-5 2
                    align/closed-side: technique-9 9, technique-8 4, wide-9 4
                    rush-kind: alone 6, lane 6, mismatch 3, helped 2, quick 2
                    opening: dip-and-rip 6, speed-rush 6, long-arm 3, ghost 2
                    eyes: early 19, late 1
                    tackle: made 6, shared 3, none 9
                    drop-end: ball-not-in-area 5, tackle-made 4
                    """),
            Player.of("Jem Sorrelby", "Stonefen", 9, 20, "long-arm-rip", """
                    phase: rush 9, run 11
                    run-kind/open-side: reach 9, base 5, kick-out 2, cutoff 2, away 1
                    run-kind/closed-side: reach 8, tight-end 6, kick-out 2, double 1, cutoff 1
                    playside-duty: contain-force-assignment 9, box-assignment 9, unknown 1, spill-assignment 1
                    reach-fit: set 8, strung 2, hooked-held 9, hooked 1
                    base: beaten 8, stalemate 10, back 1
                    base/tight-end: beaten 8, stalemate 10, back 1
                    opening: long-arm 8, bull-rush 8, two-hand-swipe 3
                    """),
            Player.of("Tobias Quern", "Brackwater", 9, 20, "bull-jerk", """
                    phase: rush 8, run 12
                    run-kind/open-side: kick-out 6, pull 7, base 3, reach 2, cutoff 2
                    run-kind/closed-side: kick-out 6, pull 6, tight-end 5, reach 2
                    playside-duty: contain-force-assignment 7, spill-assignment 5, unknown 8, box-assignment 2
                    box-fit: pinned 5, lost 4, held 8, wide 1
                    spill-fit: under 9, under-two 4, fell 1
                    bounced-outside: yes 3, no 2
                    unknown-fit: lost 5, pinned 2, held 4, under 2
                    puller-strike: won 6, even 10, lost 2
                    opening: bull-rush 8, club-rip 5, long-arm 5
                    film: full
                    """),
            Player.of("Kwame Addlestone", "Merrow Bay", 9, 20, "long-arm-rip bull-jerk inside-arm-over", """
                    phase: rush 14, run 6
                    opening: long-arm 12, bull-rush 4, speed-to-power 2, two-hand-swipe 2
                    answer: paired 17, stray 1, none 2
                    counter-wins: yes 9, no 9
                    wins: yes 6, no 14
                    power-fault: none 19, hands-outside 1
                    second-fault: none 19, pause-after-first-move 1
                    edge-fault: none 19, no-flatten 1
                    get-off: with 13, first 5, second 2
                    """),
            Player.of("Dashiell Morwen", "Thornmere", 9, 20, "arm-over push-pull", """
                    phase: rush 8, run 12
                    align/open-side: technique-4i 9, technique-5 8, technique-4 3
                    align/closed-side: technique-6 8, technique-7 8, technique-4i 4
                    align/passing: technique-5 12, technique-4i 5
                    stance: three-point-stance 15, four-point-stance 5
                    run-kind/open-side: double 7, base 6, reach 3, fan 2, cutoff 2
                    run-kind/closed-side: double 6, tight-end 9, reach 2, kick-out 2
                    playside-duty: two-gap-assignment 10, spill-assignment 6, unknown 3
                    double: held 13, split 2, back 1
                    pads: low 16, high 4
                    pads/tight-end: high 14, low 5
                    opening: bull-rush 11, long-arm 4, club-rip 3, arm-over 2
                    power-fault: high-pads 11, none 6, feet-stop-at-contact 2
                    """));

    private Players() {}
}
