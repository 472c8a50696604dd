# Die Saitenkarte: wie eine Saite ersetzt wird, Vorsicht, und was noch offen ist.

## Eine Saite ersetzen

steps = Eine Saite ersetzen
step-find = Die Saite in der Tabelle suchen: der richtige Ton in der richtigen Oktave. Eine Oktave daneben ist der häufigste Fehler.
step-take-off = Schutzbrille aufsetzen. Die alte Saite langsam entspannen, den Wickel festhalten und die Reste herausziehen.
step-knot = Die neue Saite hinter der Decke verknoten. Vom mittleren C (C4) an aufwärts ein kurzes Stück dicke Saite als Saitenanker mit einknoten; Drähte bringen ihren eigenen mit.
step-lead = Durch ihr Loch, am Stegstift vorbei und in den Stimmwirbel fädeln.
step-slack = Saite für einige Umdrehungen lassen; Draht braucht mindestens zwei.
step-turns = Saite für etwa { $turns } { $turns ->
    [one] Umdrehung
   *[other] Umdrehungen
} lassen; Draht braucht mindestens zwei.
step-side-by-side = Die Windungen nebeneinander zum Hals hin legen, keine über die andere.
step-pitch = Langsam auf Tonhöhe bringen, immer nur ein wenig.
step-settle = Täglich nachstimmen, bis sie hält: Draht ein bis drei Tage, Darm einige Tage, Nylon bis zu zwei Wochen. Dann das Ende auf etwa 12 mm kürzen.

## Vorsicht

care = Vorsicht.
cautions = Gespannte Saiten können verletzen. Schutzbrille tragen, langsam entspannen und das Gesicht aus der Ebene der Saiten halten. Eine andere Stärke oder ein anderes Material ändert die Last auf der Harfe. Die für diesen Entwurf berechneten Lasten sind Schätzungen, keine Abnahme einer Konstruktion: örtliche Vorschriften und fachkundige Praxis gehen vor. Zeigen Decke, Hals oder Säule Risse oder bewegen sie sich, vor dem Höherstimmen in einer Fachwerkstatt fragen.

## Was offen ist

findings = Noch offene Befunde: { $count }, { $count ->
    [one] bei
   *[other] der ernsteste bei
} Saite { $string }.
findings-gravest = Noch offene Befunde: { $count }. { $count ->
    [one] { $gravest }
   *[other] Der ernsteste: { $gravest }
}
frame = Rahmen, Anteil des Zulässigen: { $lead }. Nicht alles ist beurteilt.

## Der Code und die Zeichen

caption = Diesen Entwurf im Browser öffnen
no-link = Diese Karte hat keinen Link. Die Entwurfsdatei mit der Kennung { $mark } aufbewahren.
long-link = Der Link zu diesem Entwurf, { $count } Zeichen, ist zu lang für einen gedruckten Code. Die Entwurfsdatei mit der Kennung { $mark } aufbewahren.
mark-c = C-Saite
mark-f = F-Saite
