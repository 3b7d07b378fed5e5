# What the class queries build on, told in SPARQL alone: nothing here knows of the rule files or of the Java closure.
PREFIX kb: <https://rushlight.example/id/>
PREFIX rl: <https://rushlight.example/def#>
PREFIX skos: <http://www.w3.org/2004/02/skos/core#>
PREFIX t: <urn:test:>

# Steps by whose they are, with what they are.
INSERT { ?s t:is ?c ; t:of ?rep ; t:by "him" } WHERE { ?rep rl:hisStep ?s . ?s rl:does/skos:broader* ?c } ;
INSERT { ?s t:is ?c ; t:of ?rep ; t:by "blocker" } WHERE { ?rep rl:blockerStep ?s . ?s rl:does/skos:broader* ?c } ;
INSERT { ?a t:before ?b } WHERE { ?a t:of ?rep ; rl:order ?m . ?b t:of ?rep ; rl:order ?n . FILTER(?m < ?n) } ;

# Cells, closed upward.
INSERT { ?rep t:help ?c } WHERE { ?rep rl:help/skos:broader* ?c } ;
INSERT { ?rep t:helped ?c } WHERE { ?rep t:help ?c } ;
INSERT { ?rep t:helped ?c } WHERE { ?rep rl:blockerStep/t:is ?c } ;
INSERT { ?rep t:play ?c } WHERE { ?rep rl:play/skos:broader* ?c } ;
INSERT { ?rep t:result ?c } WHERE { ?rep rl:result/skos:broader* ?c } ;
INSERT { ?rep t:fault ?c } WHERE { ?rep rl:fault/skos:broader* ?c } ;
INSERT { ?rep t:rush "yes" } WHERE { ?rep rl:phase "pass-rush" } ;
INSERT { ?rep t:sawAll "yes" } WHERE { ?rep rl:hisStep|rl:blockerStep ?any FILTER NOT EXISTS { ?rep rl:notSeen "exchange" } } ;

# His duty, where somebody knows it.
INSERT { ?rep t:duty ?d } WHERE {
  ?rep rl:assignment ?d FILTER(?d != kb:assignment-unknown) FILTER NOT EXISTS { ?rep rl:assignmentSource "unknown" }
} ;
INSERT { ?rep t:dutyUnknown "yes" } WHERE { ?rep a rl:Reading FILTER NOT EXISTS { ?rep t:duty ?d } } ;

# The design of the run: the direction written first.
INSERT { ?rep t:design ?d } WHERE {
  ?rep rl:asListed ?cell FILTER(STRSTARTS(?cell, "direction="))
  BIND(IRI(CONCAT(STR(kb:), STRBEFORE(CONCAT(STRAFTER(?cell, "="), ";"), ";"))) AS ?d)
} ;
INSERT { ?rep t:design ?d } WHERE {
  ?rep rl:direction ?d
  FILTER NOT EXISTS { ?rep rl:asListed ?cell FILTER(STRSTARTS(?cell, "direction=")) }
  FILTER NOT EXISTS { ?rep rl:direction ?e FILTER(STR(?e) < STR(?d)) }
} ;

# A call moved him.
INSERT { ?rep t:moved "yes" } WHERE {
  { ?rep rl:movement "yes" } UNION { ?rep rl:hisStep/t:is kb:called-movement } UNION { ?rep rl:hisStep/t:is kb:called-slant }
  UNION { ?rep t:duty kb:movement-assignment }
} ;

# Moves: what opens an exchange, what follows it.
INSERT { ?c t:opens "yes" } WHERE {
  ?c a ?class FILTER(?class IN (rl:RushMove, rl:RushFamily)) FILTER(?c != kb:setup-move)
  FILTER(NOT EXISTS { ?c skos:broader ?any }
    || EXISTS { ?c skos:broader ?up FILTER NOT EXISTS { ?up skos:broader* kb:setup-move } })
} ;
INSERT { ?rep t:opening ?s } WHERE {
  ?rep rl:hisStep ?s . ?s rl:does ?c . ?c t:opens "yes"
  FILTER NOT EXISTS { ?e t:before ?s . ?rep rl:hisStep ?e . ?e rl:does/t:opens "yes" }
} ;
INSERT { ?rep t:later ?s } WHERE {
  ?rep t:opening ?o ; rl:hisStep ?s . ?o t:before ?s . ?s rl:does ?c . ?c t:opens "yes"
  FILTER NOT EXISTS { ?s t:is kb:finish-technique }
} ;
INSERT { ?rep t:last ?s } WHERE {
  { ?rep t:later ?s } UNION { ?rep t:opening ?s }
  FILTER NOT EXISTS { ?rep t:later ?e . ?s t:before ?e }
} ;
INSERT { ?rep t:won "yes" } WHERE {
  ?rep t:rush "yes" ; t:opening ?o
  FILTER(EXISTS { ?rep rl:howWon "first-move" }
    || EXISTS { ?rep rl:outcome "won" ; t:sawAll "yes" FILTER NOT EXISTS { ?rep t:later ?s } })
} ;

# What a word may stand for, and what a step counts as.
INSERT { ?wide t:mayBe ?narrow } WHERE { ?narrow skos:broader+ ?wide } ;
INSERT { ?wide t:mayBe ?narrow } WHERE { ?wide rl:foldsTo ?narrow } ;
INSERT { ?c t:counts ?k } WHERE { { ?c a rl:RushMove } UNION { ?c a rl:RushFamily } UNION { ?c a rl:Finish } ?c (^rl:partOf)*/skos:broader* ?k } ;

INSERT { ?word t:draws ?k } WHERE {
  ?p a rl:Pairing ; rl:trigger ?trigger ; rl:counter ?k . { ?trigger ^skos:broader* ?word } UNION { ?word t:mayBe ?trigger }
} ;
INSERT { ?move t:near ?k } WHERE {
  { SELECT DISTINCT ?k { ?p a rl:Pairing ; rl:counter ?k } } { ?k ^skos:broader* ?move } UNION { ?move t:mayBe ?k }
} ;

# Pairings that a step of the blocker's brings into play.
INSERT { ?p t:now "yes" } WHERE { ?p a rl:Pairing ; rl:timing ?when FILTER(?when IN ("read", "in-rep")) } ;
INSERT { ?b t:offers ?p } WHERE {
  ?rep t:rush "yes" ; rl:blockerStep ?b . ?b t:is ?trigger . ?a t:before ?b ; t:by "him" ; t:is ?move .
  ?p rl:trigger ?trigger ; rl:primary ?move ; t:now "yes" .
} ;
INSERT { ?b t:perhaps ?p } WHERE {
  ?rep t:rush "yes" ; rl:blockerStep ?b . ?b rl:does/t:mayBe ?trigger . ?a t:before ?b ; t:by "him" ; t:is ?move .
  ?p rl:trigger ?trigger ; rl:primary ?move ; t:now "yes" .
} ;
INSERT { ?b t:perhaps ?p ; t:anyway ?p } WHERE {
  ?rep t:rush "yes" ; rl:blockerStep ?b . ?b t:is ?trigger FILTER EXISTS { ?a t:before ?b ; t:by "him" }
  ?p rl:trigger ?trigger ; t:now "yes" FILTER NOT EXISTS { ?p rl:primary ?move }
} ;
INSERT { ?rep t:paired ?p } WHERE {
  ?b t:offers ?p ; t:of ?rep ; t:before ?c . ?c t:by "him" ; rl:does/t:counts ?k . ?p rl:counter ?k .
} ;
INSERT { ?rep t:likely ?p } WHERE {
  ?b t:perhaps ?p ; t:of ?rep ; t:before ?c . ?c t:by "him" ; rl:does/t:counts ?k . ?p rl:counter ?k .
} ;
INSERT { ?rep t:likely ?p } WHERE {
  ?b t:offers|t:perhaps ?p ; t:of ?rep ; t:before ?c . ?c t:by "him" ; rl:does ?word . ?word t:mayBe ?k . ?p rl:counter ?k
  FILTER NOT EXISTS { ?word t:counts ?k }
} ;
INSERT { ?rep t:likely ?p } WHERE {
  ?b t:offers ?p ; t:of ?rep ; t:before ?c . ?c t:by "him" ; rl:does ?word . ?word a rl:RushFamily ; skos:broader*/rl:side ?path .
  ?p rl:side ?path
} ;
INSERT { ?rep t:likely ?c } WHERE { ?rep t:later ?c ; t:rush "yes" . ?c t:is kb:counter-move } ;
INSERT { ?move t:general ?k } WHERE {
  ?p rl:primary ?move ; rl:counter ?k ; t:now "yes" FILTER NOT EXISTS { ?p rl:trigger ?any }
} ;
INSERT { ?move t:general ?k } WHERE {
  ?p rl:primary ?move ; rl:counter ?k ; t:now "yes"
  FILTER NOT EXISTS { ?q rl:primary ?move ; t:now "yes" FILTER NOT EXISTS { ?q rl:trigger ?any } }
} ;
INSERT { ?rep t:general ?c } WHERE {
  ?rep t:rush "yes" ; t:opening ?o . ?o t:is/t:general ?k ; t:before ?c . ?c t:by "him" ; rl:does/(t:counts|t:mayBe) ?k .
} ;
INSERT { ?rep t:lane "yes" } WHERE { ?rep t:duty ?d FILTER(?d IN (kb:pass-contain-assignment, kb:mush-assignment)) } ;
INSERT { ?rep t:inGame "yes" } WHERE {
  { ?rep t:duty kb:game-assignment } UNION { ?rep rl:hisStep/t:is kb:inside-stick }
  UNION { ?rep rl:hisStep/rl:does ?g . ?g a rl:RushGame }
} ;
INSERT { ?rep t:mayUse ?p } WHERE {
  ?b t:offers|t:perhaps ?p ; t:of ?rep . ?p rl:side ?side
  FILTER(?side != "inside" || NOT EXISTS { ?rep t:lane|t:inGame "yes" })
} ;
INSERT { ?rep t:quick "yes" } WHERE {
  ?rep t:rush "yes" FILTER(EXISTS { ?rep t:play kb:quick-game } || EXISTS { ?rep t:play kb:screen } || EXISTS { ?rep t:result kb:ball-out })
} ;
INSERT { ?rep t:game "yes" } WHERE {
  ?rep t:rush "yes" ; rl:hisStep/t:is ?g FILTER(?g IN (kb:two-man-game, kb:multi-man-game, kb:penetrate, kb:loop))
} ;

# Conditions of fit rules, in the words of the book.
INSERT { ?rep t:away "yes" } WHERE { { ?rep rl:direction kb:run-away } UNION { ?rep t:design kb:cutback-to-him } } ;
INSERT { ?rep t:holds "the run starts away from him" } WHERE { { ?rep t:away "yes" } UNION { ?rep t:design kb:reverse-to-him } } ;
INSERT { ?rep t:holds "the run starts away from him (boot or waggle action)" } WHERE { ?rep t:away "yes" ; t:play kb:boot } ;
INSERT { ?rep t:holds "the run starts away from him (boot, waggle or reverse action)" } WHERE {
  ?rep t:away "yes" ; t:play ?play FILTER(?play IN (kb:boot, kb:reverse))
} ;
INSERT { ?rep t:holds "the outside gap is his" } WHERE { ?rep rl:gap ?g FILTER(?g IN ("outside", "both")) } ;
INSERT { ?rep t:holds "the inside gap is his" } WHERE { ?rep rl:gap ?g FILTER(?g IN ("inside", "both")) } ;
INSERT { ?rep t:holds "a scrape exchange is called" } WHERE { ?rep rl:hisStep/t:is kb:scrape-exchange } ;

# Which fit rule speaks on which block, and what it says.
INSERT { ?s t:judged "yes" } WHERE { ?s t:by "blocker" ; t:is ?b FILTER EXISTS { ?f a rl:FitRule ; rl:block ?b } } ;
INSERT { ?s t:answer ?u } WHERE {
  ?s t:judged "yes" ; t:of ?rep . ?rep rl:hisStep ?u
  FILTER((EXISTS { ?s t:before ?u } && NOT EXISTS { ?s t:before ?x . ?x t:judged "yes" ; t:before ?u })
    || (EXISTS { ?u t:before ?s } && NOT EXISTS { ?x t:judged "yes" ; t:before ?s }))
} ;
INSERT { ?word t:rule ?f } WHERE {
  ?word a ?class FILTER(?class IN (rl:RunBlock, rl:BlockerBehavior)) ?f a rl:FitRule ; rl:block ?b ; rl:assignment ?d . ?word skos:broader* ?b
  FILTER NOT EXISTS { ?g rl:assignment ?d ; rl:block ?n . ?word skos:broader* ?n . ?n skos:broader+ ?b }
} ;
INSERT { ?s t:heldTo ?f } WHERE {
  ?s t:judged "yes" ; rl:does ?word ; t:of ?rep . ?word t:rule ?f . ?f rl:assignment ?d
  FILTER(EXISTS { ?rep t:duty ?d } || EXISTS { ?rep t:dutyUnknown "yes" })
  FILTER NOT EXISTS { ?f rl:onlyIf ?if FILTER NOT EXISTS { ?rep t:holds ?h FILTER(?h = STR(?if)) } }
} ;
INSERT { ?rep t:judgedUnder ?d } WHERE {
  ?s t:heldTo ?f ; t:answer ?u ; t:of ?rep . ?f rl:right ?any ; rl:assignment ?d
} ;
INSERT { ?rep t:rightUnder ?d . ?s t:rightFor ?d } WHERE {
  ?s t:heldTo ?f ; t:answer ?u ; t:of ?rep . ?u t:is ?c . ?f rl:right ?c ; rl:assignment ?d
} ;
INSERT { ?rep t:wrongUnder ?d . ?s t:wrongFor ?d } WHERE {
  ?s t:heldTo ?f ; t:answer ?u ; t:of ?rep . ?u t:is ?c . ?f rl:wrong ?c ; rl:assignment ?d
} ;
INSERT { ?rep t:faultUnder ?d . ?s t:faultFor ?d } WHERE {
  ?s t:heldTo ?f ; t:of ?rep . ?rep t:fault ?c . ?f rl:wrong ?c ; rl:assignment ?d
} ;
INSERT { ?rep t:mayJudge "yes" } WHERE {
  ?rep a rl:Reading FILTER NOT EXISTS { ?rep t:moved "yes" } FILTER NOT EXISTS { ?rep rl:phase "drop" }
} ;

# Runs.
INSERT { ?rep t:run "yes" } WHERE {
  ?rep rl:phase "run" FILTER NOT EXISTS { ?rep t:moved "yes" } FILTER NOT EXISTS { ?rep t:duty kb:spy-assignment }
} ;
INSERT { ?rep t:at "yes" } WHERE {
  ?rep t:design ?d FILTER(?d IN (kb:run-at-him, kb:run-outside-of-him, kb:run-inside-of-him, kb:bounce-to-him))
} ;
INSERT { ?rep t:kick "yes" } WHERE {
  ?rep t:run "yes" ; rl:blockerStep/t:is ?b FILTER(?b IN (kb:kick-out-block, kb:pin-and-pull-block))
} ;
INSERT { ?rep t:read "yes" } WHERE {
  ?rep t:run "yes" ; rl:blockerStep/t:is ?b FILTER(?b IN (kb:arc-block, kb:bluff-block, kb:unblocked-read-key))
} ;
INSERT { ?s t:onHim "yes" } WHERE {
  ?s t:by "blocker" ; t:is ?b FILTER(?b IN (kb:one-man-block, kb:moving-block))
  FILTER NOT EXISTS { ?s rl:does ?w FILTER(?w IN (kb:pull-and-wrap-block, kb:insert-block)) }
} ;
INSERT { ?rep t:lost "yes" } WHERE { ?rep t:result ?r FILTER(?r IN (kb:edge-lost-outside, kb:both-lanes-open)) } ;
INSERT { ?s t:strike "yes" } WHERE { ?s t:by "him" ; t:is ?c FILTER(?c IN (kb:power-move, kb:hand-removal-move)) } ;
INSERT { ?rep t:firstStrike ?s } WHERE {
  ?s t:strike "yes" ; t:of ?rep FILTER NOT EXISTS { ?e t:strike "yes" ; t:before ?s }
} ;
INSERT { ?rep t:shows ?o } WHERE { ?rep t:rush "yes" ; rl:blockerStep ?s . ?s t:is/rl:opens ?o } ;
INSERT { ?rep t:outsideEnd "yes" } WHERE {
  ?rep t:rush "yes" ; t:last ?s . ?s rl:does ?c
  FILTER NOT EXISTS { ?s t:is kb:inside-move } FILTER(?c != kb:flatten)
  FILTER(EXISTS { ?s t:is kb:outside-move } || ?c IN (kb:rip, kb:arm-over, kb:rip-to-swim))
}
