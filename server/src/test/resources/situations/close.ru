# The stored film closed as the design says it, in SPARQL alone: nothing here knows of the Java that makes the same facts.
PREFIX kb: <https://rushlight.example/id/>
PREFIX rdfs: <http://www.w3.org/2000/01/rdf-schema#>
PREFIX rl: <https://rushlight.example/def#>
PREFIX skos: <http://www.w3.org/2004/02/skos/core#>
PREFIX t: <urn:test:>

# Which reading of a rep counts: that of the evaluator who stands first, unless the two are of different snaps.
INSERT { ?reading t:counts "yes" } WHERE {
  ?log t:place ?place ; rl:prospect ?prospect ; rl:game ?game . ?reading rl:log ?log ; rl:rep ?name
  FILTER NOT EXISTS {
    ?first rl:prospect ?prospect ; rl:game ?game ; t:place ?before FILTER(?before < ?place)
    ?other rl:log ?first ; rl:rep ?name
    FILTER NOT EXISTS {
      VALUES ?clock { rl:quarter rl:clock rl:down }
      ?reading ?clock ?here . ?other ?clock ?there FILTER(?here != ?there)
    }
  }
} ;

# A duty is known where one is given that is not "unknown" and nobody says that it is; else it is the unknown duty.
INSERT { ?reading t:dutyKnown "yes" } WHERE {
  ?reading rl:assignment ?duty FILTER(?duty != kb:assignment-unknown)
  FILTER NOT EXISTS { ?reading rl:assignmentSource "unknown" }
} ;
DELETE { ?reading rl:assignment ?duty } WHERE {
  ?reading rl:assignment ?duty FILTER NOT EXISTS { ?reading t:dutyKnown "yes" }
} ;
DELETE { ?reading rl:assignmentSource ?source } WHERE {
  ?reading rl:assignmentSource ?source FILTER NOT EXISTS { ?reading t:dutyKnown "yes" }
} ;
INSERT { ?reading rl:assignment kb:assignment-unknown ; rl:assignmentSource "unknown" } WHERE {
  ?reading a rl:Reading FILTER NOT EXISTS { ?reading t:dutyKnown "yes" }
} ;
INSERT { ?reading rl:assignmentSource "stated" } WHERE {
  ?reading t:dutyKnown "yes" FILTER NOT EXISTS { ?reading rl:assignmentSource ?source }
} ;

# What was looked at: list columns of the header, single cells that are filled, an exchange that has steps; then what was hidden.
INSERT { ?reading t:looked ?column } WHERE { ?reading rl:log/rl:charted ?column } ;
INSERT { ?reading t:looked ?name } WHERE {
  ?column a rl:Column ; rl:columnName ?name ; rl:facet ?facet FILTER NOT EXISTS { ?column rl:list "yes" }
  ?reading a rl:Reading ; ?facet ?value
} ;
INSERT { ?reading t:looked "exchange" } WHERE { ?reading rl:hisStep|rl:blockerStep ?step } ;
INSERT { ?reading t:looked ?view } WHERE {
  VALUES ?view { "hands" "feet" "eyes" "pads" }
  ?reading t:looked "faults" FILTER NOT EXISTS { ?reading rl:notSeen "faults" }
} ;
INSERT { ?reading rl:seen ?what } WHERE {
  ?reading t:looked ?what FILTER NOT EXISTS { ?reading rl:notSeen ?what }
} ;

# The facets of the exchange.
INSERT { ?reading ?facet ?concept } WHERE {
  ?facet a rl:StepFacet ; rl:by "him" ; rl:ofClass/^rdfs:subClassOf* ?class FILTER NOT EXISTS { ?facet rl:passesOver ?any }
  ?reading rl:hisStep/rl:does ?concept . ?concept a ?class
} ;
INSERT { ?reading ?facet ?concept } WHERE {
  ?facet a rl:StepFacet ; rl:by "blocker" ; rl:ofClass/^rdfs:subClassOf* ?class .
  ?reading rl:blockerStep/rl:does ?concept . ?concept a ?class
} ;

# The opening move: the first step of his that is a rush move by some way up that does not lead through the setups.
INSERT { ?concept t:up ?wider } WHERE {
  ?concept skos:broader ?wider FILTER(?concept != kb:setup-move && ?wider != kb:setup-move)
} ;
INSERT { ?concept t:opens "yes" } WHERE {
  ?concept a ?class FILTER(?class IN (rl:RushMove, rl:RushFamily)) FILTER(?concept != kb:setup-move)
  ?concept t:up* ?top FILTER NOT EXISTS { ?top skos:broader ?any }
} ;
INSERT { ?reading rl:openingMove ?concept } WHERE {
  ?reading a rl:Reading ; rl:hisStep ?step . ?step rl:order ?place ; rl:does ?concept . ?concept t:opens "yes"
  FILTER NOT EXISTS {
    ?reading rl:hisStep ?earlier . ?earlier rl:order ?before ; rl:does/t:opens "yes" FILTER(?before < ?place)
  }
} ;

# A concept stands for everything wider.
INSERT { ?reading ?facet ?wider } WHERE {
  { ?facet ^rl:facet/rl:valueKind "concept" } UNION { ?facet a rl:StepFacet } UNION { ?facet a rl:Facet ; rl:ofClass ?class }
  ?reading a rl:Reading ; ?facet ?concept . ?concept skos:broader+ ?wider
}
