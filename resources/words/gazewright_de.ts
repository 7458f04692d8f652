<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>gazewright</name>
    <message>
        <source>%1 would have %2 and %3 of droop at %4 instead of %5 of pan inertia</source>
        <translation>%1 hätte %2 und %3 Durchsenkung bei %4 statt %5 Trägheitsmoment um Pan</translation>
    </message>
    <message>
        <source>; a single arm</source>
        <translation>; ein einzelner Arm</translation>
    </message>
    <message>
        <source>; a fork</source>
        <translation>; eine Gabel</translation>
    </message>
    <message>
        <source>weight and the largest accelerations of both axes at once, against a third of %1's least strength, %2, because it comes back with every move (common practice, no source)</source>
        <translation>Gewicht und die größten Beschleunigungen beider Achsen zugleich, gegen ein Drittel der geringsten Festigkeit von %1, %2, weil es mit jeder Bewegung wiederkehrt (übliche Praxis, ohne Quelle)</translation>
    </message>
    <message>
        <source>the gain of the speed loop stays below 1: it does not shake the arm</source>
        <translation>die Verstärkung der Drehzahlregelung bleibt unter 1: sie regt den Arm nicht an</translation>
    </message>
    <message>
        <source>the speed loop crosses 1 at %1; three times that should lie below the arm's first mode about this axis (common practice, no source)%2</source>
        <translation>Durchtritt der Drehzahlregelung bei %1; das Dreifache davon sollte unter der ersten Eigenfrequenz des Arms um diese Achse liegen (übliche Praxis, ohne Quelle)%2</translation>
    </message>
    <message>
        <source>the material is known</source>
        <translation>der Werkstoff ist bekannt</translation>
    </message>
    <message>
        <source>Arm bears the largest acceleration</source>
        <translation>Arm erträgt die größte Beschleunigung</translation>
    </message>
    <message>
        <source>would spare the arm</source>
        <translation>würde den Arm schonen</translation>
    </message>
    <message>
        <source>Speed loop stays below the arm's first mode</source>
        <translation>Durchtritt unter der Eigenfrequenz des Arms</translation>
    </message>
    <message>
        <source>would keep the loop off the arm's first mode</source>
        <translation>würde den Regelkreis von der ersten Eigenfrequenz des Arms fernhalten</translation>
    </message>
    <message>
        <source>Arm's material is known</source>
        <translation>Werkstoff des Arms ist bekannt</translation>
    </message>
    <message>
        <source>would give it its values</source>
        <translation>würde ihm seine Werte geben</translation>
    </message>
    <message>
        <source>the arms of a fork bend instead of twisting</source>
        <translation>die Arme einer Gabel biegen sich, statt sich zu verdrehen</translation>
    </message>
    <message>
        <source>cantilever, Bansal, Strength of Materials, ch. 13; handbook: structure</source>
        <translation>Kragbalken, Bansal, Strength of Materials, Kap. 13; Handbuch: structure</translation>
    </message>
    <message>
        <source>Rayleigh, 33/140 of the beam's mass (Blevins, from memory); handbook: structure</source>
        <translation>Rayleigh, 33/140 der Balkenmasse (Blevins, aus dem Gedächtnis); Handbuch: structure</translation>
    </message>
    <message>
        <source>rigid load on a beam element, all directions coupled; handbook: structure</source>
        <translation>starre Last auf einem Balkenelement, alle Richtungen gekoppelt; Handbuch: structure</translation>
    </message>
    <message>
        <source>statics of rigid bodies; handbook: structure</source>
        <translation>Statik starrer Körper; Handbuch: structure</translation>
    </message>
    <message>
        <source>a third of the arm's mode: common practice, no source</source>
        <translation>ein Drittel der Eigenfrequenz des Arms: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Mass that the arm's end carries</source>
        <translation>Masse, die das Armende trägt</translation>
    </message>
    <message>
        <source>on_tilt and the bodies of on_pan in the last quarter of the arm's height</source>
        <translation>on_tilt und die Körper von on_pan im letzten Viertel der Armhöhe</translation>
    </message>
    <message>
        <source>Mass of the arm</source>
        <translation>Masse des Arms</translation>
    </message>
    <message>
        <source>density·area·length, two arms of a fork</source>
        <translation>Dichte·Fläche·Länge, zwei Arme bei einer Gabel</translation>
    </message>
    <message>
        <source>Load beside the arm</source>
        <translation>Last neben dem Arm</translation>
    </message>
    <message>
        <source>from the arm's middle to the load's centre, along the tilt axis</source>
        <translation>von der Armmitte zur Mitte der Last, längs der Tilt-Achse</translation>
    </message>
    <message>
        <source>Droop of the load</source>
        <translation>Durchsenkung der Last</translation>
    </message>
    <message>
        <source>side: (m·g·e·L/EI)·e + m·g·L/EA; fork: m·g·L/2EA</source>
        <translation>side: (m·g·e·L/EI)·e + m·g·L/EA; fork: m·g·L/2EA</translation>
    </message>
    <message>
        <source>Tilt axis out of the level</source>
        <translation>Tilt-Achse aus der Waagerechten</translation>
    </message>
    <message>
        <source>side: m·g·(e·cos λ·L/EI + sin λ·L²/2EI) + own weight; fork: by its pressed arms</source>
        <translation>side: m·g·(e·cos λ·L/EI + sin λ·L²/2EI) + Eigengewicht; fork: durch die Stauchung der Arme</translation>
    </message>
    <message>
        <source>Arm's end to the side</source>
        <translation>Armende zur Seite</translation>
    </message>
    <message>
        <source>side: M·L²/2EI + F·L³/3EI + own weight; fork: F·L³/6EI</source>
        <translation>side: M·L²/2EI + F·L³/3EI + Eigengewicht; fork: F·L³/6EI</translation>
    </message>
    <message>
        <source>Bending, load as a point</source>
        <translation>Biegung, Last als Punkt</translation>
    </message>
    <message>
        <source>√(3EI/(L³(M + 33/140·m)))/2π, the weaker direction</source>
        <translation>√(3EI/(L³(M + 33/140·m)))/2π, die schwächere Richtung</translation>
    </message>
    <message>
        <source>Torsion, arm's end held in place</source>
        <translation>Torsion, Armende festgehalten</translation>
    </message>
    <message>
        <source>First mode of the arm</source>
        <translation>Erste Eigenfrequenz des Arms</translation>
    </message>
    <message>
        <source>lowest of det(K − ω²M) = 0, 6 by 6</source>
        <translation>niedrigste Lösung von det(K − ω²M) = 0, 6 mal 6</translation>
    </message>
    <message>
        <source>First mode that the axis' drive shakes</source>
        <translation>Erste Eigenfrequenz, die der Antrieb der Achse anregt</translation>
    </message>
    <message>
        <source>lowest with 5 % of the inertia about the axis</source>
        <translation>niedrigste mit 5 % des Trägheitsmoments um die Achse</translation>
    </message>
    <message>
        <source>Speed loop crosses 1 below</source>
        <translation>Zulässiger Durchtritt der Drehzahlregelung</translation>
    </message>
    <message>
        <source>Speed gain that the arm bears</source>
        <translation>Drehzahlverstärkung, die der Arm verträgt</translation>
    </message>
    <message>
        <source>(load + rotor_reflected)·2π·mode/3</source>
        <translation>(Last + rotor_reflected)·2π·Eigenfrequenz/3</translation>
    </message>
    <message>
        <source>Largest stress where the arm is held</source>
        <translation>Größte Spannung an der Einspannung des Arms</translation>
    </message>
    <message>
        <source>√(σ² + 3τ²): weight, both axes' largest accelerations at once</source>
        <translation>√(σ² + 3τ²): Gewicht, größte Beschleunigungen beider Achsen zugleich</translation>
    </message>
    <message>
        <source>beam theory, von Mises; handbook: structure</source>
        <translation>Balkentheorie, von Mises; Handbuch: structure</translation>
    </message>
    <message>
        <source>Droop with one arm</source>
        <translation>Durchsenkung mit einem Arm</translation>
    </message>
    <message>
        <source>as arm.droop, support side</source>
        <translation>wie arm.droop, support side</translation>
    </message>
    <message>
        <source>Droop with a fork</source>
        <translation>Durchsenkung mit einer Gabel</translation>
    </message>
    <message>
        <source>as arm.droop, support fork</source>
        <translation>wie arm.droop, support fork</translation>
    </message>
    <message>
        <source>First mode with one arm</source>
        <translation>Erste Eigenfrequenz mit einem Arm</translation>
    </message>
    <message>
        <source>as arm.first_mode</source>
        <translation>wie arm.first_mode</translation>
    </message>
    <message>
        <source>First mode with a fork</source>
        <translation>Erste Eigenfrequenz mit einer Gabel</translation>
    </message>
    <message>
        <source>Pan inertia of one arm</source>
        <translation>Trägheitsmoment eines Arms um Pan</translation>
    </message>
    <message>
        <source>parallel-axis theorem; handbook: structure</source>
        <translation>Satz von Steiner; Handbuch: structure</translation>
    </message>
    <message>
        <source>Pan inertia of a fork's arms</source>
        <translation>Trägheitsmoment der Gabelarme um Pan</translation>
    </message>
    <message>
        <source>m·(x² + y² + (w² + h²)/12) of both</source>
        <translation>m·(x² + y² + (w² + h²)/12) von beiden</translation>
    </message>
    <message>
        <source>needs materials[%1].%2</source>
        <translation>braucht materials[%1].%2</translation>
    </message>
    <message>
        <source>%1 has no %2</source>
        <translation>bei %1 fehlt %2</translation>
    </message>
    <message>
        <source>needs %1</source>
        <translation>braucht %1</translation>
    </message>
    <message>
        <source>needs %1 above 0, as a bar without a filling is nothing: a tube is a box</source>
        <translation>braucht %1 über 0, denn ein Stab ohne Füllung ist nichts: ein Rohr ist ein Kasten</translation>
    </message>
    <message>
        <source>a fifth of the stall torque %1 (common practice, no source) against gravity at %2</source>
        <translation>ein Fünftel des Stillstandsmoments %1 (übliche Praxis, ohne Quelle) gegen die Schwerkraft bei %2</translation>
    </message>
    <message>
        <source>; a counterweight of %1 would take it away</source>
        <translation>; ein Gegengewicht von %1 würde sie aufheben</translation>
    </message>
    <message>
        <source>tilt's motor and gearbox weigh %1 together, the bodies on pan %2: enter them among those, they are usually much of its inertia</source>
        <translation>Motor und Getriebe der Neigung wiegen zusammen %1, die Körper auf dem Schwenk %2: unter diese eintragen, sie sind meist viel von seiner Trägheit</translation>
    </message>
    <message>
        <source>Gravity leaves the motor most of its torque</source>
        <translation>Schwerkraft lässt dem Motor den Großteil seines Moments</translation>
    </message>
    <message>
        <source>would leave most of the torque</source>
        <translation>würde den Großteil des Moments übrig lassen</translation>
    </message>
    <message>
        <source>Tilt's drive is among the bodies on pan</source>
        <translation>Antrieb der Neigung steht unter den Körpern auf dem Schwenk</translation>
    </message>
    <message>
        <source>the gearbox locks itself: nothing turns it back</source>
        <translation>das Getriebe ist selbsthemmend: nichts dreht es zurück</translation>
    </message>
    <message>
        <source>gravity does not turn it</source>
        <translation>die Schwerkraft dreht es nicht</translation>
    </message>
    <message>
        <source>its centre of mass is on the axis</source>
        <translation>der Schwerpunkt liegt auf der Achse</translation>
    </message>
    <message>
        <source>statics of rigid bodies; handbook: balance</source>
        <translation>Statik starrer Körper; Handbuch: balance</translation>
    </message>
    <message>
        <source>torque constant, cold winding, friction's help left out; handbook: balance</source>
        <translation>Drehmomentkonstante, kalte Wicklung, ohne die Hilfe der Reibung; Handbuch: balance</translation>
    </message>
    <message>
        <source>Centre of mass off the pan axis</source>
        <translation>Schwerpunkt neben der Pan-Achse</translation>
    </message>
    <message>
        <source>√(x² + y²) in P, tilt at 0</source>
        <translation>√(x² + y²) in P, Tilt bei 0</translation>
    </message>
    <message>
        <source>Moment of mass forward of the axis</source>
        <translation>Massenmoment vor der Achse</translation>
    </message>
    <message>
        <source>Σ m·x in P</source>
        <translation>Σ m·x in P</translation>
    </message>
    <message>
        <source>Moment of mass left of the axis</source>
        <translation>Massenmoment links der Achse</translation>
    </message>
    <message>
        <source>Σ m·y in P</source>
        <translation>Σ m·y in P</translation>
    </message>
    <message>
        <source>Σ m·x in T</source>
        <translation>Σ m·x in T</translation>
    </message>
    <message>
        <source>Moment of mass above the axis</source>
        <translation>Massenmoment über der Achse</translation>
    </message>
    <message>
        <source>Σ m·z in T</source>
        <translation>Σ m·z in T</translation>
    </message>
    <message>
        <source>Angle of the largest gravity torque</source>
        <translation>Winkel des größten Schwerkraftmoments</translation>
    </message>
    <message>
        <source>where |−∂V/∂q| is largest, usable travel or a turn</source>
        <translation>wo |−∂V/∂q| am größten ist, nutzbarer Verfahrbereich oder eine Umdrehung</translation>
    </message>
    <message>
        <source>Current that holds the worst angle</source>
        <translation>Strom, der den ungünstigsten Winkel hält</translation>
    </message>
    <message>
        <source>gravity/(N·Kt), amplitude</source>
        <translation>Schwerkraft/(N·Kt), Amplitude</translation>
    </message>
    <message>
        <source>Heat of holding the worst angle</source>
        <translation>Wärme beim Halten im ungünstigsten Winkel</translation>
    </message>
    <message>
        <source>Friction over gravity without power</source>
        <translation>Reibung zu Schwerkraft ohne Strom</translation>
    </message>
    <message>
        <source>power_off.holding_torque / largest gravity torque; from 1 on it stays</source>
        <translation>power_off.holding_torque / größtes Schwerkraftmoment; ab 1 bleibt es stehen</translation>
    </message>
    <message>
        <source>Counterweight</source>
        <translation>Gegengewicht</translation>
    </message>
    <message>
        <source>Counterweight as a ball</source>
        <translation>Gegengewicht als Kugel</translation>
    </message>
    <message>
        <source>Counterweight's inertia about the axis</source>
        <translation>Trägheitsmoment des Gegengewichts um die Achse</translation>
    </message>
    <message>
        <source>m·(arm² + diameter²/10)</source>
        <translation>m·(Hebelarm² + Durchmesser²/10)</translation>
    </message>
    <message>
        <source>Inertia that the counterweight adds</source>
        <translation>Zusätzliches Trägheitsmoment durch das Gegengewicht</translation>
    </message>
    <message>
        <source>its inertia/(load + rotor_reflected)</source>
        <translation>sein Trägheitsmoment/(Last + rotor_reflected)</translation>
    </message>
    <message>
        <source>cylindrical rollers bear no axial load: see &lt;axis&gt;.bearing.contact_angle</source>
        <translation>Zylinderrollen tragen keine Axiallast: siehe &lt;axis&gt;.bearing.contact_angle</translation>
    </message>
    <message>
        <source>an axis without inertia speeds up without end</source>
        <translation>eine Achse ohne Trägheitsmoment beschleunigt ohne Ende</translation>
    </message>
    <message>
        <source>needs &lt;axis&gt;.gearbox.overhung_at, as the load has a moment about its face</source>
        <translation>braucht &lt;axis&gt;.gearbox.overhung_at, da die Last ein Moment um die Stirnfläche hat</translation>
    </message>
    <message>
        <source>it carries %1 radially, %2 axially and %3 of moment</source>
        <translation>es trägt %1 radial, %2 axial und %3 Moment</translation>
    </message>
    <message>
        <source>the nearer bearing carries %1 radially, the farther one %2, axially up to %3</source>
        <translation>das nähere Lager trägt %1 radial, das fernere %2, axial bis zu %3</translation>
    </message>
    <message>
        <source>the duty does not turn it</source>
        <translation>das Lastspiel dreht es nicht</translation>
    </message>
    <message>
        <source>%1; on the mean it turns %2</source>
        <translation>%1; im Mittel dreht es sich mit %2</translation>
    </message>
    <message>
        <source>%1; together as %2 against C0</source>
        <translation>%1; zusammen als %2 gegen C0</translation>
    </message>
    <message>
        <source>hitting the stop at top speed pushes %1 on the tab, which the bearings take besides; a second tab opposite would halve it</source>
        <translation>der Aufprall am Anschlag bei Höchstdrehzahl drückt mit %1 auf die Nase, was die Lager zusätzlich tragen; eine zweite Nase gegenüber würde es halbieren</translation>
    </message>
    <message>
        <source>the rating over a static safety of %1; weight makes %2 of it</source>
        <translation>die Tragzahl durch eine statische Sicherheit von %1; das Gewicht macht %2 davon aus</translation>
    </message>
    <message>
        <source>it may tip by %1 from side to side, %2 at the lens; the band is ± as wide</source>
        <translation>es kann um %1 von einer Seite zur anderen kippen, %2 am Objektiv; das Band ist ± so breit</translation>
    </message>
    <message>
        <source>the load is %1 and %2 at %3 from the output's face, counted as a force %4 from it; a bearing of its own would take it</source>
        <translation>die Last ist %1 und %2 bei %3 ab der Stirnfläche des Abtriebs, gerechnet als Kraft %4 davor; ein eigenes Lager würde sie aufnehmen</translation>
    </message>
    <message>
        <source>weight makes %1 of it, moving at the fastest the rest</source>
        <translation>das Gewicht macht %1 davon aus, die schnellste Bewegung den Rest</translation>
    </message>
    <message>
        <source>The bearings last the wanted life</source>
        <translation>Die Lager erreichen die gewünschte Lebensdauer</translation>
    </message>
    <message>
        <source>would make the bearings last</source>
        <translation>würde die Lager lange genug halten lassen</translation>
    </message>
    <message>
        <source>Static safety of the bearings</source>
        <translation>Statische Sicherheit der Lager</translation>
    </message>
    <message>
        <source>would keep dents out of the bearings</source>
        <translation>würde die Lager vor Eindrückungen bewahren</translation>
    </message>
    <message>
        <source>Static safety of the bearings at the stop's blow</source>
        <translation>Statische Sicherheit der Lager beim Aufprall am Anschlag</translation>
    </message>
    <message>
        <source>would keep the blow from denting the bearings</source>
        <translation>würde die Lager vor Eindrückungen durch den Aufprall bewahren</translation>
    </message>
    <message>
        <source>Tilting moment on the bearing</source>
        <translation>Kippmoment am Lager</translation>
    </message>
    <message>
        <source>would let the bearing bear the moment</source>
        <translation>würde das Lager das Moment tragen lassen</translation>
    </message>
    <message>
        <source>Play of the bearings in the picture</source>
        <translation>Lagerluft im Bild</translation>
    </message>
    <message>
        <source>would bring the play inside the band</source>
        <translation>würde die Luft in das Band bringen</translation>
    </message>
    <message>
        <source>Overhung load on the gearbox's output</source>
        <translation>Radiallast am Abtrieb des Getriebes</translation>
    </message>
    <message>
        <source>would spare the gearbox's output</source>
        <translation>würde den Abtrieb des Getriebes schonen</translation>
    </message>
    <message>
        <source>Axial load on the gearbox's output</source>
        <translation>Axiallast am Abtrieb des Getriebes</translation>
    </message>
    <message>
        <source>no play of its bearings is entered</source>
        <translation>keine Luft der Lager eingetragen</translation>
    </message>
    <message>
        <source>bearings of its own carry the load</source>
        <translation>eigene Lager tragen die Last</translation>
    </message>
    <message>
        <source>rigid-body statics and dynamics; handbook: loads</source>
        <translation>Statik und Dynamik starrer Körper; Handbuch: loads</translation>
    </message>
    <message>
        <source>statics; handbook: loads</source>
        <translation>Statik; Handbuch: loads</translation>
    </message>
    <message>
        <source>ISO 281:2007; handbook: loads</source>
        <translation>ISO 281:2007; Handbuch: loads</translation>
    </message>
    <message>
        <source>ISO 76:2006; handbook: loads</source>
        <translation>ISO 76:2006; Handbuch: loads</translation>
    </message>
    <message>
        <source>geometry; handbook: loads</source>
        <translation>Geometrie; Handbuch: loads</translation>
    </message>
    <message>
        <source>it does not turn in a pair of bearings of its own</source>
        <translation>es dreht sich nicht in einem eigenen Lagerpaar</translation>
    </message>
    <message>
        <source>it does not turn in one bearing that bears the moment alone</source>
        <translation>es dreht sich nicht in einem Lager, das allein das Moment trägt</translation>
    </message>
    <message>
        <source>the bearings in the gearbox carry it</source>
        <translation>die Lager im Getriebe tragen es</translation>
    </message>
    <message>
        <source>Largest radial load on the axis</source>
        <translation>Größte Radiallast auf die Achse</translation>
    </message>
    <message>
        <source>weight and inertia m·(g, r·√(α² + ω⁴)) of all it turns, both axes at their fastest, added</source>
        <translation>Gewicht und Trägheit m·(g, r·√(α² + ω⁴)) von allem, was sie dreht, beide Achsen am schnellsten, addiert</translation>
    </message>
    <message>
        <source>Largest axial load on the axis</source>
        <translation>Größte Axiallast auf die Achse</translation>
    </message>
    <message>
        <source>as radial_load, along the axis</source>
        <translation>wie radial_load, längs der Achse</translation>
    </message>
    <message>
        <source>Largest tilting moment on the axis</source>
        <translation>Größtes Kippmoment auf die Achse</translation>
    </message>
    <message>
        <source>as radial_load, across the axis about the centre of mass' place on it</source>
        <translation>wie radial_load, quer zur Achse um den Ort des Schwerpunkts auf ihr</translation>
    </message>
    <message>
        <source>Radial load, weight's part</source>
        <translation>Radiallast, Anteil des Gewichts</translation>
    </message>
    <message>
        <source>m·g across the axis, worst pose</source>
        <translation>m·g quer zur Achse, ungünstigste Lage</translation>
    </message>
    <message>
        <source>Tilting moment, weight's part</source>
        <translation>Kippmoment, Anteil des Gewichts</translation>
    </message>
    <message>
        <source>m·g along the axis times the centre of mass' distance, worst pose</source>
        <translation>m·g längs der Achse mal Abstand des Schwerpunkts, ungünstigste Lage</translation>
    </message>
    <message>
        <source>Mean speed over the duty</source>
        <translation>Mittlere Drehzahl im Lastspiel</translation>
    </message>
    <message>
        <source>swept angle over time: moves per minute · move, or the duty's list</source>
        <translation>überstrichener Winkel durch Zeit: Bewegungen je Minute · Bewegung, oder die Liste des Lastspiels</translation>
    </message>
    <message>
        <source>swept angle counts as turns, common practice, no source; handbook: loads</source>
        <translation>überstrichener Winkel zählt als Umdrehungen, übliche Praxis, ohne Quelle; Handbuch: loads</translation>
    </message>
    <message>
        <source>Radial force of the blow into the stop</source>
        <translation>Radialkraft des Aufpralls am Anschlag</translation>
    </message>
    <message>
        <source>Radial load on the nearer bearing</source>
        <translation>Radiallast am näheren Lager</translation>
    </message>
    <message>
        <source>radial·|1 + overhang/spacing| + moment/spacing</source>
        <translation>radial·|1 + Überhang/Lagerabstand| + Moment/Lagerabstand</translation>
    </message>
    <message>
        <source>Radial load on the farther bearing</source>
        <translation>Radiallast am ferneren Lager</translation>
    </message>
    <message>
        <source>radial·|overhang|/spacing + moment/spacing</source>
        <translation>radial·|Überhang|/Lagerabstand + Moment/Lagerabstand</translation>
    </message>
    <message>
        <source>Tilting moment at the bearing</source>
        <translation>Kippmoment im Lager</translation>
    </message>
    <message>
        <source>radial·|overhang| + moment</source>
        <translation>radial·|Überhang| + Moment</translation>
    </message>
    <message>
        <source>Equivalent load of the worst bearing</source>
        <translation>Äquivalente Last des ungünstigsten Lagers</translation>
    </message>
    <message>
        <source>X·Fr + Y·Fa where Fa/Fr &gt; e, else Fr; preload in Fa</source>
        <translation>X·Fr + Y·Fa, wo Fa/Fr &gt; e, sonst Fr; Vorspannkraft in Fa</translation>
    </message>
    <message>
        <source>Rating life of the bearings</source>
        <translation>Lebensdauer der Lager</translation>
    </message>
    <message>
        <source>10⁶·(C/P)^p·2π/mean_speed, p = 3 (balls) or 10/3 (rollers)</source>
        <translation>10⁶·(C/P)^p·2π/mean_speed, p = 3 (Kugeln) oder 10/3 (Rollen)</translation>
    </message>
    <message>
        <source>Static equivalent load of the worst bearing</source>
        <translation>Statisch äquivalente Last des ungünstigsten Lagers</translation>
    </message>
    <message>
        <source>max(Fr, X0·Fr + Y0·Fa)</source>
        <translation>max(Fr, X0·Fr + Y0·Fa)</translation>
    </message>
    <message>
        <source>C0 over the static load with stop_force on the nearer bearing</source>
        <translation>C0 durch die statische Last mit stop_force auf dem näheren Lager</translation>
    </message>
    <message>
        <source>Play of the bearings as an angle</source>
        <translation>Lagerluft als Winkel</translation>
    </message>
    <message>
        <source>2·radial_play/spacing of a pair, 2·axial_play/pitch_diameter of a single one</source>
        <translation>2·radial_play/Lagerabstand bei einem Paar, 2·axial_play/pitch_diameter bei einem einzelnen</translation>
    </message>
    <message>
        <source>Play of the bearings at the lens</source>
        <translation>Lagerluft am Objektiv</translation>
    </message>
    <message>
        <source>radial_play·max(1, |1 + 2·arm/spacing|) of a pair, radial_play + play·|arm| of a single one</source>
        <translation>radial_play·max(1, |1 + 2·Hebelarm/Lagerabstand|) bei einem Paar, radial_play + Luft·|Hebelarm| bei einem einzelnen</translation>
    </message>
    <message>
        <source>Radial load on the gearbox's output, where its data sheet has it</source>
        <translation>Radiallast am Abtrieb des Getriebes, wo das Datenblatt sie angibt</translation>
    </message>
    <message>
        <source>max(radial, (radial·load_at + moment)/overhung_at)</source>
        <translation>max(radial, (radial·load_at + Moment)/overhung_at)</translation>
    </message>
    <message>
        <source>nothing makes it point amiss</source>
        <translation>nichts verfälscht die Ausrichtung</translation>
    </message>
    <message>
        <source>most of it: </source>
        <translation>das meiste davon: </translation>
    </message>
    <message>
        <source>95 of 100 errors are within that; %1</source>
        <translation>95 von 100 Fehlern liegen darin; %1</translation>
    </message>
    <message>
        <source>Pointing error inside the settle band</source>
        <translation>Ausrichtfehler im Einschwingband</translation>
    </message>
    <message>
        <source>would bring the pointing error inside the band</source>
        <translation>würde den Ausrichtfehler in das Band bringen</translation>
    </message>
    <message>
        <source>has no finite value with these inputs</source>
        <translation>hat mit diesen Eingaben keinen endlichen Wert</translation>
    </message>
    <message>
        <source>it cannot move against friction and gravity</source>
        <translation>es kann sich gegen Reibung und Schwerkraft nicht bewegen</translation>
    </message>
    <message>
        <source>JCGM 100:2008 (GUM) 4.3, 5.1, 5.2; handbook: pointing</source>
        <translation>JCGM 100:2008 (GUM) 4.3, 5.1, 5.2; Handbuch: pointing</translation>
    </message>
    <message>
        <source>statics of springs; handbook: pointing</source>
        <translation>Statik der Federn; Handbuch: pointing</translation>
    </message>
    <message>
        <source>geometry; handbook: pointing</source>
        <translation>Geometrie; Handbuch: pointing</translation>
    </message>
    <message>
        <source>Pointing error of the encoder</source>
        <translation>Ausrichtfehler des Encoders</translation>
    </message>
    <message>
        <source>(error + half a count)/N, not divided where it is at the output; its magnet's error where that is larger</source>
        <translation>(Fehler + halbes Inkrement)/N, ungeteilt, wo er am Abtrieb sitzt; der Fehler seines Magneten, wo dieser größer ist</translation>
    </message>
    <message>
        <source>Windup of the gear at hold</source>
        <translation>Verdrehung des Getriebes beim Halten</translation>
    </message>
    <message>
        <source>largest |gravity + cable| over the usable travel / stiffness</source>
        <translation>größtes |Schwerkraft + Kabel| im nutzbaren Verfahrbereich / Steifigkeit</translation>
    </message>
    <message>
        <source>Droop of loops without an integral</source>
        <translation>Durchsenkung der Regelkreise ohne Integralanteil</translation>
    </message>
    <message>
        <source>largest |gravity + cable| / (speed_gain·position_gain)</source>
        <translation>größtes |Schwerkraft + Kabel| / (speed_gain·position_gain)</translation>
    </message>
    <message>
        <source>Error that friction holds</source>
        <translation>Fehler, den die Reibung hält</translation>
    </message>
    <message>
        <source>breakaway/stiffness + (breakaway − coulomb)·(1/(speed_gain·position_gain + speed_integral_gain) + 1/stiffness); without an integral breakaway/(speed_gain·position_gain) in place of the second; the first is seen by an encoder at the output</source>
        <translation>Losbrechen/Steifigkeit + (Losbrechen − Coulomb)·(1/(speed_gain·position_gain + speed_integral_gain) + 1/Steifigkeit); ohne Integralanteil Losbrechen/(speed_gain·position_gain) anstelle des zweiten; das erste sieht ein Encoder am Abtrieb</translation>
    </message>
    <message>
        <source>statics, a mass on a spring; handbook: pointing</source>
        <translation>Statik, eine Masse an einer Feder; Handbuch: pointing</translation>
    </message>
    <message>
        <source>Bend of the bracket at hold</source>
        <translation>Biegung des Halters beim Halten</translation>
    </message>
    <message>
        <source>largest |gravity + cable| / bracket stiffness</source>
        <translation>größtes |Schwerkraft + Kabel| / Steifigkeit des Halters</translation>
    </message>
    <message>
        <source>Bend of the bracket at full acceleration</source>
        <translation>Biegung des Halters bei voller Beschleunigung</translation>
    </message>
    <message>
        <source>load·acceleration_peak/bracket stiffness·pixels_per_radian; gone when it stands</source>
        <translation>Last·acceleration_peak/Steifigkeit des Halters·pixels_per_radian; weg, wenn er steht</translation>
    </message>
    <message>
        <source>Tilt in the play of the bearings</source>
        <translation>Verkippung in der Lagerluft</translation>
    </message>
    <message>
        <source>pair: atan(radial_play/spacing); single: atan(axial_play/pitch_diameter); across the axis</source>
        <translation>Paar: atan(radial_play/Lagerabstand); einzeln: atan(axial_play/pitch_diameter); quer zur Achse</translation>
    </message>
    <message>
        <source>Largest ripple by cogging</source>
        <translation>Größte Welligkeit durch das Rastmoment</translation>
    </message>
    <message>
        <source>cogging_torque·largest |compliance|</source>
        <translation>cogging_torque·größte |Nachgiebigkeit|</translation>
    </message>
    <message>
        <source>linear model wound tight; handbook: smoothness</source>
        <translation>lineares Modell, ohne Spiel verspannt; Handbuch: smoothness</translation>
    </message>
    <message>
        <source>Pointing error, root-sum-square</source>
        <translation>Ausrichtfehler, Wurzel der Quadratsumme</translation>
    </message>
    <message>
        <source>√Σ(largest errors)²; windup, droop and bend under the same weight are added first</source>
        <translation>√Σ(größte Fehler)²; Verdrehung, Durchsenkung und Biegung unter demselben Gewicht werden vorher addiert</translation>
    </message>
    <message>
        <source>Pointing error, worst case</source>
        <translation>Ausrichtfehler, ungünstigster Fall</translation>
    </message>
    <message>
        <source>Σ largest errors</source>
        <translation>Σ größte Fehler</translation>
    </message>
    <message>
        <source>Root-sum-square in the picture</source>
        <translation>Wurzel der Quadratsumme im Bild</translation>
    </message>
    <message>
        <source>small-angle pinhole</source>
        <translation>Lochkamera bei kleinen Winkeln</translation>
    </message>
    <message>
        <source>Worst case in the picture</source>
        <translation>Ungünstigster Fall im Bild</translation>
    </message>
    <message>
        <source>Root-sum-square at the target</source>
        <translation>Wurzel der Quadratsumme am Ziel</translation>
    </message>
    <message>
        <source>small angle</source>
        <translation>kleiner Winkel</translation>
    </message>
    <message>
        <source>Combined standard uncertainty</source>
        <translation>Kombinierte Standardunsicherheit</translation>
    </message>
    <message>
        <source>√Σu², u = a/√3 rectangular, a/√2 arcsine, a/3 normal; those of the same weight added first</source>
        <translation>√Σu², u = a/√3 Rechteck, a/√2 Arkussinus, a/3 normal; die unter demselben Gewicht vorher addiert</translation>
    </message>
    <message>
        <source>Expanded uncertainty, k = 2</source>
        <translation>Erweiterte Unsicherheit, k = 2</translation>
    </message>
    <message>
        <source>2·deviation: about 95 % of the errors are within</source>
        <translation>2·Abweichung: etwa 95 % der Fehler liegen darin</translation>
    </message>
    <message>
        <source>Expanded uncertainty in the picture</source>
        <translation>Erweiterte Unsicherheit im Bild</translation>
    </message>
    <message>
        <source>Root-sum-square with the encoder at the motor</source>
        <translation>Wurzel der Quadratsumme mit dem Encoder am Motor</translation>
    </message>
    <message>
        <source>rss with encoder.at motor, the same bits and error</source>
        <translation>rss mit encoder.at motor, gleiche Bits und gleicher Fehler</translation>
    </message>
    <message>
        <source>Root-sum-square with the encoder at the output</source>
        <translation>Wurzel der Quadratsumme mit dem Encoder am Abtrieb</translation>
    </message>
    <message>
        <source>rss with encoder.at output, the same bits and error: no gap, no windup, not divided</source>
        <translation>rss mit encoder.at output, gleiche Bits und gleicher Fehler: kein Spiel, keine Verdrehung, ungeteilt</translation>
    </message>
    <message>
        <source>Root-sum-square with the teeth held together</source>
        <translation>Wurzel der Quadratsumme mit anliegenden Zähnen</translation>
    </message>
    <message>
        <source>rss without the gap: preload, or a bias of bias_needed</source>
        <translation>rss ohne das Spiel: Vorspannung oder ein Vormoment von bias_needed</translation>
    </message>
    <message>
        <source>Pull that holds the teeth on one side</source>
        <translation>Moment, das die Zähne auf einer Seite hält</translation>
    </message>
    <message>
        <source>least |gravity + cable| over the usable travel; 0 where it changes its sign</source>
        <translation>kleinstes |Schwerkraft + Kabel| im nutzbaren Verfahrbereich; 0, wo es das Vorzeichen wechselt</translation>
    </message>
    <message>
        <source>Bias that would hold the teeth together</source>
        <translation>Vormoment, das die Zähne zusammenhalten würde</translation>
    </message>
    <message>
        <source>breakaway − least (gravity + cable), towards the side it favours; 0: it holds them</source>
        <translation>Losbrechen − kleinstes (Schwerkraft + Kabel), zur begünstigten Seite hin; 0: es hält sie</translation>
    </message>
    <message>
        <source>needs more</source>
        <translation>braucht mehr</translation>
    </message>
    <message>
        <source>the teeth are pressed together all the time</source>
        <translation>die Zähne liegen ständig aneinander an</translation>
    </message>
    <message>
        <source>the speed loop's integral takes it away</source>
        <translation>der Integralanteil der Drehzahlregelung nimmt es weg</translation>
    </message>
    <message>
        <source>the gearbox's own bearings carry it, and their play is not stated</source>
        <translation>die Lager des Getriebes tragen es, und ihre Luft ist nicht angegeben</translation>
    </message>
    <message>
        <source>no cogging torque is entered</source>
        <translation>kein Rastmoment eingetragen</translation>
    </message>
    <message>
        <source>the encoder at the output sees it</source>
        <translation>der Encoder am Abtrieb sieht es</translation>
    </message>
    <message>
        <source>Backlash</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>Encoder</source>
        <translation>Encoder</translation>
    </message>
    <message>
        <source>Windup of the gear</source>
        <translation>Getriebeverdrehung</translation>
    </message>
    <message>
        <source>Droop of the loop</source>
        <translation>Durchsenkung des Regelkreises</translation>
    </message>
    <message>
        <source>Friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>Bracket</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>Bearing play</source>
        <translation>Lagerluft</translation>
    </message>
    <message>
        <source>Cogging</source>
        <translation>Rastmoment</translation>
    </message>
    <message>
        <source>Mounting</source>
        <translation>Montage</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>Vision noise</source>
        <translation>Erkennungsrauschen</translation>
    </message>
    <message>
        <source>Largest current, %1: %2.</source>
        <translation>Größter Strom, %1: %2.</translation>
    </message>
    <message>
        <source>Highest voltage, %1: %2.</source>
        <translation>Höchste Spannung, %1: %2.</translation>
    </message>
    <message>
        <source>The chopper puts %1 across the bus at %2: %3 while it is on, against at most %4 that come back.</source>
        <translation>Der Bremschopper legt %1 bei %2 an den Zwischenkreis: %3 im eingeschalteten Zustand, gegen höchstens %4, die zurückkommen.</translation>
    </message>
    <message>
        <source>Leads of %1 copper carry %2 by the cautious rule for bundles; the fuse at the source may not be larger than what they bear.</source>
        <translation>Zuleitungen mit %1 Kupfer tragen nach der vorsichtigen Regel für Bündel %2; die Sicherung an der Quelle darf nicht größer sein als das, was sie vertragen.</translation>
    </message>
    <message>
        <source>The fuse of %1 has to stand the peaks and the charging of the capacitors: look at its time-current curve.</source>
        <translation>Die Sicherung mit %1 muss die Spitzen und das Laden der Kondensatoren aushalten: Zeit-Strom-Kennlinie beachten.</translation>
    </message>
    <message>
        <source>a slip ring turns without end</source>
        <translation>ein Schleifring dreht ohne Ende</translation>
    </message>
    <message>
        <source>a cable crosses an axis that has no stops</source>
        <translation>ein Kabel läuft über eine Achse, die keine Anschläge hat</translation>
    </message>
    <message>
        <source>the stops let it turn ±%1, the cable ±%2</source>
        <translation>die Anschläge lassen ±%1 Drehung zu, das Kabel ±%2</translation>
    </message>
    <message>
        <source>%1; how many bends it lives through is for its maker to say</source>
        <translation>%1; wie viele Biegungen es übersteht, muss der Hersteller sagen</translation>
    </message>
    <message>
        <source>the rule for a bend that stands still; one that moves all its life wants %1 unless its maker says less: look up the radius for moving bends and enter it as the data sheet's</source>
        <translation>die Regel für eine ruhende Biegung; eine dauernd bewegte braucht %1, wenn der Hersteller nicht weniger nennt: den Radius für bewegte Biegungen nachsehen und als Datenblattwert eintragen</translation>
    </message>
    <message>
        <source>the rule for a bend that stands still; one that moves all its life wants %1 unless its maker says less</source>
        <translation>die Regel für eine ruhende Biegung; eine dauernd bewegte braucht %1, wenn der Hersteller nicht weniger nennt</translation>
    </message>
    <message>
        <source>with so much slack the clamps would touch</source>
        <translation>bei so viel Längenvorrat würden sich die Klemmen berühren</translation>
    </message>
    <message>
        <source>twisted ±%1, the outermost cable lies %2 from the axis</source>
        <translation>um ±%1 verdrillt, das äußerste Kabel liegt %2 von der Achse</translation>
    </message>
    <message>
        <source>Cable lasts to the stops</source>
        <translation>Kabel reicht bis zu den Anschlägen</translation>
    </message>
    <message>
        <source>would let the stop come before the cable</source>
        <translation>würde den Anschlag vor dem Kabelende kommen lassen</translation>
    </message>
    <message>
        <source>Cable bends wide enough</source>
        <translation>Kabel biegt sich weit genug</translation>
    </message>
    <message>
        <source>would bend the cable wide enough</source>
        <translation>würde das Kabel weit genug biegen</translation>
    </message>
    <message>
        <source>Bend radius against the rule</source>
        <translation>Biegeradius gegen die Regel</translation>
    </message>
    <message>
        <source>would keep to the rule</source>
        <translation>würde die Regel einhalten</translation>
    </message>
    <message>
        <source>Slack for the twist</source>
        <translation>Längenvorrat für die Verdrillung</translation>
    </message>
    <message>
        <source>would leave slack enough</source>
        <translation>würde genug Längenvorrat lassen</translation>
    </message>
    <message>
        <source>geometry; handbook: cables</source>
        <translation>Geometrie; Handbuch: cables</translation>
    </message>
    <message>
        <source>NASA-STD-8739.4, 7.3.21; how many bends it lives through is for its maker to say</source>
        <translation>NASA-STD-8739.4, 7.3.21; wie viele Biegungen es übersteht, muss der Hersteller sagen</translation>
    </message>
    <message>
        <source>only a cable along the axis twists</source>
        <translation>nur ein Kabel längs der Achse verdrillt sich</translation>
    </message>
    <message>
        <source>the cable is not coiled</source>
        <translation>das Kabel ist nicht gewickelt</translation>
    </message>
    <message>
        <source>the cable hangs in no loop</source>
        <translation>das Kabel hängt in keiner Schlaufe</translation>
    </message>
    <message>
        <source>there is no slip ring</source>
        <translation>es gibt keinen Schleifring</translation>
    </message>
    <message>
        <source>Travel the cable allows</source>
        <translation>Verfahrbereich, den das Kabel zulässt</translation>
    </message>
    <message>
        <source>twist: 2·twist_rating·free_length; coil: 2π·(turns on the hub − turns at the wall); loop: 2·acos((a² + ρ² − D²)/2aρ), D = L − (π − 2)·R</source>
        <translation>twist: 2·twist_rating·free_length; coil: 2π·(Windungen auf der Nabe − Windungen an der Wand); loop: 2·acos((a² + ρ² − D²)/2aρ), D = L − (π − 2)·R</translation>
    </message>
    <message>
        <source>twist rating by the cable's maker; else geometry; handbook: cables</source>
        <translation>zulässige Verdrillung nach Kabelhersteller; sonst Geometrie; Handbuch: cables</translation>
    </message>
    <message>
        <source>Diameter of the cable bundle</source>
        <translation>Durchmesser des Kabelbündels</translation>
    </message>
    <message>
        <source>2·lay_radius + outer_diameter</source>
        <translation>2·lay_radius + outer_diameter</translation>
    </message>
    <message>
        <source>Stretch of the outermost cable without slack</source>
        <translation>Dehnung des äußersten Kabels ohne Längenvorrat</translation>
    </message>
    <message>
        <source>Slack that the twist needs</source>
        <translation>Längenvorrat, den die Verdrillung braucht</translation>
    </message>
    <message>
        <source>Turns when wound tight</source>
        <translation>Windungen, fest aufgewickelt</translation>
    </message>
    <message>
        <source>Turns when let out</source>
        <translation>Windungen, ganz abgewickelt</translation>
    </message>
    <message>
        <source>Share of the coil's room that is filled</source>
        <translation>Gefüllter Anteil des Wickelraums</translation>
    </message>
    <message>
        <source>L·t/(π·(r_w² − r_h²)); most travel at half</source>
        <translation>L·t/(π·(r_w² − r_h²)); größter Verfahrbereich bei der Hälfte</translation>
    </message>
    <message>
        <source>How far the loop hangs down</source>
        <translation>Durchhang der Schlaufe</translation>
    </message>
    <message>
        <source>Tightest bend of the cable</source>
        <translation>Engste Biegung des Kabels</translation>
    </message>
    <message>
        <source>twist: L²/(lay_radius·(usable/2)²); coil: hub_radius; loop: |a − ρ|/2</source>
        <translation>twist: L²/(lay_radius·(nutzbar/2)²); coil: hub_radius; loop: |a − ρ|/2</translation>
    </message>
    <message>
        <source>Bend radius for lasting use by rule</source>
        <translation>Biegeradius für Dauerbewegung nach Regel</translation>
    </message>
    <message>
        <source>10·outer_diameter; a ribbon: 10·thickness; as shipped, data file cables</source>
        <translation>10·outer_diameter; Flachkabel: 10·Dicke; wie ausgeliefert, Datendatei cables</translation>
    </message>
    <message>
        <source>Bend radius standing still by rule</source>
        <translation>Biegeradius in Ruhe nach Regel</translation>
    </message>
    <message>
        <source>6·outer_diameter; a ribbon: 3·thickness; as shipped, data file cables</source>
        <translation>6·outer_diameter; Flachkabel: 3·Dicke; wie ausgeliefert, Datendatei cables</translation>
    </message>
    <message>
        <source>how far the cable winds up is not known: needs the usable travel</source>
        <translation>wie weit sich das Kabel aufwickelt, ist nicht bekannt: braucht den nutzbaren Verfahrbereich</translation>
    </message>
    <message>
        <source>wound up %1, rubbing %2; friction, gravity and drag take %3 of the motor's; cables can be several times as stiff in the cold</source>
        <translation>Aufwickeln %1, Reiben %2; Reibung, Schwerkraft und Schleppmoment nehmen %3 vom Moment des Motors; in der Kälte können Kabel mehrmals so steif sein</translation>
    </message>
    <message>
        <source>Torque left for the cable</source>
        <translation>Verbleibendes Moment für das Kabel</translation>
    </message>
    <message>
        <source>would leave the torque for the cable</source>
        <translation>würde das Moment für das Kabel übrig lassen</translation>
    </message>
    <message>
        <source>no stiffness or friction of a cable is entered</source>
        <translation>keine Steifigkeit oder Reibung eines Kabels eingetragen</translation>
    </message>
    <message>
        <source>twisted bar GJ/L: Boresi &amp; Schmidt, ch. 6; spiral EI/L: Khurmi &amp; Gupta, Machine Design; handbook: motion</source>
        <translation>verdrehter Stab GJ/L: Boresi &amp; Schmidt, Kap. 6; Spirale EI/L: Khurmi &amp; Gupta, Machine Design; Handbuch: motion</translation>
    </message>
    <message>
        <source>Stiffness of the cable against turning</source>
        <translation>Drehsteifigkeit des Kabels</translation>
    </message>
    <message>
        <source>twist: count·torsion_stiffness/free_length; coil: count·bending_stiffness/free_length; loop, slip_ring: 0</source>
        <translation>twist: Anzahl·torsion_stiffness/free_length; coil: Anzahl·bending_stiffness/free_length; loop, slip_ring: 0</translation>
    </message>
    <message>
        <source>Largest torque of the cable</source>
        <translation>Größtes Moment des Kabels</translation>
    </message>
    <message>
        <source>cable.stiffness·usable/2 + cable friction, at the end of the usable travel</source>
        <translation>cable.stiffness·nutzbar/2 + Kabelreibung, am Ende des nutzbaren Verfahrbereichs</translation>
    </message>
    <message>
        <source>a cable on the axis twists and does not bend</source>
        <translation>ein Kabel auf der Achse verdrillt sich und biegt sich nicht</translation>
    </message>
    <message>
        <source>the helix of the outermost cable at the end of the travel</source>
        <translation>die Schraubenlinie des äußersten Kabels am Ende des Verfahrbereichs</translation>
    </message>
    <message>
        <source>wound tight on the hub</source>
        <translation>fest auf die Nabe gewickelt</translation>
    </message>
    <message>
        <source>half the way between the clamps where they pass</source>
        <translation>der halbe Abstand der Klemmen, wo sie aneinander vorbeilaufen</translation>
    </message>
    <message>
        <source>a slip ring bends no cable</source>
        <translation>ein Schleifring biegt kein Kabel</translation>
    </message>
    <message>
        <source>there is no cable across this axis</source>
        <translation>kein Kabel führt über diese Achse</translation>
    </message>
    <message>
        <source>stops or cable do not give a travel</source>
        <translation>Anschläge oder Kabel ergeben keinen Verfahrbereich</translation>
    </message>
    <message>
        <source>the twist would wind the cable up flat</source>
        <translation>die Verdrillung würde das Kabel ganz flach aufwickeln</translation>
    </message>
    <message>
        <source>no limit is stated</source>
        <translation>kein Grenzwert angegeben</translation>
    </message>
    <message>
        <source>the motor has a sensor of its own</source>
        <translation>der Motor hat einen eigenen Geber</translation>
    </message>
    <message>
        <source>Pan: </source>
        <translation>Pan: </translation>
    </message>
    <message>
        <source>Tilt: </source>
        <translation>Tilt: </translation>
    </message>
    <message>
        <source>Findings: %1</source>
        <translation>Befunde: %1</translation>
    </message>
    <message>
        <source>Worst margin</source>
        <translation>Kleinste Reserve</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>variant %1</source>
        <translation>Variante %1</translation>
    </message>
    <message>
        <source>present design</source>
        <translation>jetziger Entwurf</translation>
    </message>
    <message>
        <source>not worked out yet</source>
        <translation>noch nicht berechnet</translation>
    </message>
    <message>
        <source>%1, spread</source>
        <translation>%1, Streuung</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>none stated</source>
        <translation>keine angegeben</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Anschläge</translation>
    </message>
    <message>
        <source>Cable</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Path</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>a size or a place off the axis for what turns (its inertia is 0)</source>
        <translation>eine Größe oder einen Platz neben der Achse für das, was sich dreht (sein Trägheitsmoment ist 0)</translation>
    </message>
    <message>
        <source>a counterweight of %1 at %2 opposite to the centre of mass</source>
        <translation>ein Gegengewicht von %1 bei %2 gegenüber dem Schwerpunkt</translation>
    </message>
    <message>
        <source>runs away: a loop is unstable</source>
        <translation>läuft davon: ein Regelkreis ist instabil</translation>
    </message>
    <message>
        <source>nothing ties it to the other axis</source>
        <translation>nichts koppelt sie mit der anderen Achse</translation>
    </message>
    <message>
        <source>cannot hold its weight: %1 pulls against %2 of the motor, and it falls by %3 whatever %4 does</source>
        <translation>kann ihr Gewicht nicht halten: %1 ziehen gegen %2 des Motors, und sie fällt um %3, was auch immer %4 tut</translation>
    </message>
    <message>
        <source>%1's move pushes it off by %2 (%3 px) at %4</source>
        <translation>die Bewegung von %1 drückt sie um %2 (%3 px) weg, bei %4</translation>
    </message>
    <message>
        <source>Hold still while the other axis moves</source>
        <translation>Stillhalten, während die andere Achse sich bewegt</translation>
    </message>
    <message>
        <source>would keep it inside the settle band</source>
        <translation>würde sie im Einschwingband halten</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>%1 not settled after %2</source>
        <translation>%1 nach %2 nicht eingeschwungen</translation>
    </message>
    <message>
        <source>simulation of both axes at once; handbook: motion</source>
        <translation>Simulation beider Achsen zugleich; Handbuch: motion</translation>
    </message>
    <message>
        <source>Pushed off by the other axis</source>
        <translation>Von der anderen Achse weggedrückt</translation>
    </message>
    <message>
        <source>largest angle off its place while it holds and the other axis makes its task move</source>
        <translation>größter Winkel neben der Lage, während sie hält und die andere Achse ihre Aufgabenbewegung macht</translation>
    </message>
    <message>
        <source>Pushed off by the other axis, in the picture</source>
        <translation>Von der anderen Achse weggedrückt, im Bild</translation>
    </message>
    <message>
        <source>disturbance · pixels_per_radian</source>
        <translation>Störung · pixels_per_radian</translation>
    </message>
    <message>
        <source>Move and settle, both axes at once</source>
        <translation>Bewegen und einschwingen, beide Achsen zugleich</translation>
    </message>
    <message>
        <source>last time that either is outside ± settle band, both begun together on one supply</source>
        <translation>letzter Zeitpunkt, an dem eine der beiden außerhalb ± Einschwingband ist, beide zugleich gestartet an einer Versorgung</translation>
    </message>
    <message>
        <source>Peak current from the supply, both axes at once</source>
        <translation>Spitzenstrom aus der Versorgung, beide Achsen zugleich</translation>
    </message>
    <message>
        <source>largest sum of both bus currents, Σ 1.5·i·(R·i + e)/V</source>
        <translation>größte Summe beider Zwischenkreisströme, Σ 1.5·i·(R·i + e)/V</translation>
    </message>
    <message>
        <source>%1 loop: gain above 1 up to half the sample rate, which no sampled loop can hold</source>
        <translation>%1regelung: Verstärkung über 1 bis zur halben Abtastrate, das kann kein abgetasteter Regelkreis halten</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>%1's %2</source>
        <translation>%2 (%1)</translation>
    </message>
    <message>
        <source>the %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>at either end</source>
        <translation>an beiden Enden</translation>
    </message>
    <message>
        <source>at the upper end</source>
        <translation>am oberen Ende</translation>
    </message>
    <message>
        <source>at the lower end</source>
        <translation>am unteren Ende</translation>
    </message>
    <message>
        <source>%1 would tell whether %2 holds: %3 of its range there is none (%4)</source>
        <translation>%1 würde zeigen, ob der Wert für %2 Bestand hat: %3 des Bereichs gibt es keinen (%4)</translation>
    </message>
    <message>
        <source>%1 would take %2 of the ±%3 off %4</source>
        <translation>%1 würde von ±%3 Unsicherheit bei %4 %2 wegnehmen</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>Values without a spread, taken as exact: %1</source>
        <translation>Werte ohne Streuung, als genau genommen: %1</translation>
    </message>
    <message>
        <source>no main figure is known, or none moves noticeably</source>
        <translation>kein Hauptkennwert ist bekannt, oder keiner bewegt sich merklich</translation>
    </message>
    <message>
        <source>no value has a spread, nor a source with a usual one</source>
        <translation>kein Wert hat eine Streuung oder eine Quelle mit einer üblichen</translation>
    </message>
    <message>
        <source>the </source>
        <translation>die </translation>
    </message>
    <message>
        <source>Torque constant</source>
        <translation>Drehmomentkonstante</translation>
    </message>
    <message>
        <source>(√3/2)·60/(2π·KV), per ampere of phase amplitude</source>
        <translation>(√3/2)·60/(2π·KV), je Ampere Phasenamplitude</translation>
    </message>
    <message>
        <source>Krishnan, PM Synchronous and Brushless DC Motor Drives, 2010 (citation from memory)</source>
        <translation>Krishnan, PM Synchronous and Brushless DC Motor Drives, 2010 (Zitat aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Motor constant</source>
        <translation>Motorkonstante</translation>
    </message>
    <message>
        <source>definition Km = T/√P of copper loss</source>
        <translation>Definition Km = T/√P der Kupferverluste</translation>
    </message>
    <message>
        <source>Stall torque at the output</source>
        <translation>Stillstandsmoment am Abtrieb</translation>
    </message>
    <message>
        <source>η·N·Kt·i at standstill, at most the gearbox's peak torque</source>
        <translation>η·N·Kt·i im Stillstand, höchstens das Spitzenmoment des Getriebes</translation>
    </message>
    <message>
        <source>handbook: drive</source>
        <translation>Handbuch: drive</translation>
    </message>
    <message>
        <source>Top speed at the output, without the loop's limit</source>
        <translation>Höchstdrehzahl am Abtrieb, ohne die Grenze der Regelung</translation>
    </message>
    <message>
        <source>m·V·KV/N, at most input_speed_limit/N and the drive's speed limit</source>
        <translation>m·V·KV/N, höchstens input_speed_limit/N und die Drehzahlgrenze des Antriebsreglers</translation>
    </message>
    <message>
        <source>Peak acceleration</source>
        <translation>Spitzenbeschleunigung</translation>
    </message>
    <message>
        <source>(stall torque − coulomb − |gravity at rest|)/(load + η·rotor_reflected)</source>
        <translation>(Stillstandsmoment − Coulomb − |Schwerkraft in Ruhe|)/(Last + η·rotor_reflected)</translation>
    </message>
    <message>
        <source>Dubey ex. 2.1 (gear efficiency on the motor's side); handbook: motion</source>
        <translation>Dubey Bsp. 2.1 (Getriebewirkungsgrad auf der Motorseite); Handbuch: motion</translation>
    </message>
    <message>
        <source>Ratio of greatest acceleration</source>
        <translation>Übersetzung der größten Beschleunigung</translation>
    </message>
    <message>
        <source>Khurmi &amp; Gupta, Theory of Machines, ex. 3.17 (method); Pasch &amp; Seering 1984 (memory)</source>
        <translation>Khurmi &amp; Gupta, Theory of Machines, Bsp. 3.17 (Verfahren); Pasch &amp; Seering 1984 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>no-load speed per volt of line-to-line back-EMF amplitude</source>
        <translation>Leerlaufdrehzahl je Volt der Amplitude der verketteten Gegenspannung</translation>
    </message>
    <message>
        <source>phase current counted as its amplitude (peak), as all currents here</source>
        <translation>Strangstrom als Amplitude (Scheitelwert) gezählt, wie alle Ströme hier</translation>
    </message>
    <message>
        <source>for a drive that counts RMS: its current limits are then those here over √2</source>
        <translation>für einen Regler, der Effektivwerte zählt: seine Stromgrenzen sind dann die hiesigen durch √2</translation>
    </message>
    <message>
        <source>of one phase; a meter between two leads shows twice it</source>
        <translation>eines Strangs; ein Messgerät zwischen zwei Leitungen zeigt das Doppelte</translation>
    </message>
    <message>
        <source>what a sensor or a model in the drive sees is cooler than the hottest spot</source>
        <translation>was ein Fühler oder ein Modell im Antrieb sieht, ist kühler als die heißeste Stelle</translation>
    </message>
    <message>
        <source>amplitude; what drive, motor and the gearbox's peak torque all bear</source>
        <translation>Amplitude; was Regler, Motor und das Spitzenmoment des Getriebes alle ertragen</translation>
    </message>
    <message>
        <source>friction and weight alone may take %1: raise the first in small steps</source>
        <translation>Reibung und Gewicht allein können %1 brauchen: den ersten Wert in kleinen Schritten anheben</translation>
    </message>
    <message>
        <source>heat would allow %1</source>
        <translation>die Wärme ließe %1 zu</translation>
    </message>
    <message>
        <source>the worst winding, standing still, bears no more; turning, %1 would do</source>
        <translation>mehr verträgt die am stärksten belastete Wicklung im Stillstand nicht; drehend gingen %1</translation>
    </message>
    <message>
        <source>none is entered; it reaches %1</source>
        <translation>keine ist eingetragen; sie erreicht %1</translation>
    </message>
    <message>
        <source>not entered; the axis can do %1 at most</source>
        <translation>nicht eingetragen; die Achse schafft höchstens %1</translation>
    </message>
    <message>
        <source>turns of the motor for one of the output</source>
        <translation>Umdrehungen des Motors für eine des Abtriebs</translation>
    </message>
    <message>
        <source>to the left, seen from above; turn the sign where the gearbox reverses</source>
        <translation>nach links, von oben gesehen; das Vorzeichen wenden, wo das Getriebe umkehrt</translation>
    </message>
    <message>
        <source>camera upwards; turn the sign where the gearbox reverses</source>
        <translation>Kamera nach oben; das Vorzeichen wenden, wo das Getriebe umkehrt</translation>
    </message>
    <message>
        <source>at the output</source>
        <translation>am Abtrieb</translation>
    </message>
    <message>
        <source>at the motor</source>
        <translation>am Motor</translation>
    </message>
    <message>
        <source>First power-up with the first set: the arm off the stops and free to turn, the stand clamped, nobody in reach, a current-limited supply and a hand at the switch that cuts the motor power. Check by hand that torque, encoder and command agree in sign before a loop is closed, then raise current, speed and gains step by step. A fifth of current, speed and acceleration, a quarter of the gains and no integral are common practice, no source. The drive's own manual comes first, and local rules and licensed practitioners have the last word.</source>
        <translation>Erstes Einschalten mit dem ersten Satz: der Arm weg von den Anschlägen und frei drehbar, der Ständer festgeklemmt, niemand in Reichweite, eine strombegrenzte Versorgung und eine Hand am Schalter, der die Motorleistung trennt. Von Hand prüfen, dass Drehmoment, Encoder und Sollwert im Vorzeichen übereinstimmen, bevor ein Regelkreis geschlossen wird, dann Strom, Drehzahl und Verstärkungen Schritt für Schritt anheben. Ein Fünftel von Strom, Drehzahl und Beschleunigung, ein Viertel der Verstärkungen und kein Integralanteil sind übliche Praxis, ohne Quelle. Das Handbuch des Reglers geht vor, und örtliche Vorschriften und zugelassene Fachleute haben das letzte Wort.</translation>
    </message>
    <message>
        <source>Currents are amplitudes of a phase, resistance and inductance are of one phase to the star point, a turn is 2π rad. Compare these, and amplitude or RMS, with the drive's manual before a value is entered: a wrong convention is off by 1.41, 2 or 6.28.</source>
        <translation>Ströme sind Amplituden eines Strangs, Widerstand und Induktivität gelten für einen Strang bis zum Sternpunkt, eine Umdrehung (turn) ist 2π rad. Dies, und ob Amplitude oder Effektivwert, mit dem Handbuch des Reglers vergleichen, bevor ein Wert eingegeben wird: eine falsche Zählweise liegt um 1,41, 2 oder 6,28 daneben.</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Torque constant, per ampere of amplitude</source>
        <translation>Drehmomentkonstante, je Ampere Amplitude</translation>
    </message>
    <message>
        <source>Torque constant, per ampere RMS</source>
        <translation>Drehmomentkonstante, je Ampere effektiv</translation>
    </message>
    <message>
        <source>Thermal trip of the winding</source>
        <translation>Thermische Abschaltung der Wicklung</translation>
    </message>
    <message>
        <source>winding's limit − 10 K</source>
        <translation>Grenze der Wicklung − 10 K</translation>
    </message>
    <message>
        <source>Current limit, peak</source>
        <translation>Stromgrenze, Spitze</translation>
    </message>
    <message>
        <source>min(drive, motor's peak, gearbox's peak torque/(η·N·Kt))</source>
        <translation>min(Regler, Spitze des Motors, Spitzenmoment des Getriebes/(η·N·Kt))</translation>
    </message>
    <message>
        <source>Current limit, lasting</source>
        <translation>Stromgrenze, dauernd</translation>
    </message>
    <message>
        <source>what heat allows, turning and standing still, at most the peak limit</source>
        <translation>was die Wärme erlaubt, drehend und im Stillstand, höchstens die Spitzengrenze</translation>
    </message>
    <message>
        <source>Speed limit, at the output</source>
        <translation>Drehzahlgrenze, am Abtrieb</translation>
    </message>
    <message>
        <source>min(loop, drive, gearbox's input/N)</source>
        <translation>min(Regelkreis, Regler, Eingang des Getriebes/N)</translation>
    </message>
    <message>
        <source>Speed limit, at the motor</source>
        <translation>Drehzahlgrenze, am Motor</translation>
    </message>
    <message>
        <source>Acceleration limit, at the output</source>
        <translation>Beschleunigungsgrenze, am Abtrieb</translation>
    </message>
    <message>
        <source>Acceleration limit, at the motor</source>
        <translation>Beschleunigungsgrenze, am Motor</translation>
    </message>
    <message>
        <source>Gear and encoder</source>
        <translation>Getriebe und Encoder</translation>
    </message>
    <message>
        <source>Positive direction</source>
        <translation>Positive Richtung</translation>
    </message>
    <message>
        <source>Counts per turn of the encoder</source>
        <translation>Schritte je Umdrehung des Encoders</translation>
    </message>
    <message>
        <source>Counts per turn of the output</source>
        <translation>Schritte je Umdrehung des Abtriebs</translation>
    </message>
    <message>
        <source>Travel and homing</source>
        <translation>Weg und Referenzfahrt</translation>
    </message>
    <message>
        <source>Soft limit, least angle</source>
        <translation>Softwaregrenze, kleinster Winkel</translation>
    </message>
    <message>
        <source>Soft limit, greatest angle</source>
        <translation>Softwaregrenze, größter Winkel</translation>
    </message>
    <message>
        <source>centre − soft travel/2</source>
        <translation>Mitte − Weg zwischen den Softwaregrenzen/2</translation>
    </message>
    <message>
        <source>centre + soft travel/2</source>
        <translation>Mitte + Weg zwischen den Softwaregrenzen/2</translation>
    </message>
    <message>
        <source>Soft limit, least, in motor turns</source>
        <translation>Softwaregrenze, kleinste, in Motorumdrehungen</translation>
    </message>
    <message>
        <source>Soft limit, greatest, in motor turns</source>
        <translation>Softwaregrenze, größte, in Motorumdrehungen</translation>
    </message>
    <message>
        <source>N·φ/2π, from the output's zero</source>
        <translation>N·φ/2π, von der Null des Abtriebs an</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>on the magnet's axis, %1 off its face</source>
        <translation>auf der Achse des Magneten, %1 vor seiner Stirnfläche</translation>
    </message>
    <message>
        <source>the sensor is more than half the magnet's radius off its axis</source>
        <translation>der Sensor liegt mehr als den halben Magnetradius neben der Achse</translation>
    </message>
    <message>
        <source>what offset and tilt bend the reading by, against the encoder's error</source>
        <translation>Verfälschung der Ablesung durch Versatz und Verkippung, gegen den Fehler des Encoders</translation>
    </message>
    <message>
        <source>the motor gives %1 of its torque in the worst place</source>
        <translation>der Motor gibt an der schlechtesten Stelle %1 seines Drehmoments</translation>
    </message>
    <message>
        <source>the motor may push the wrong way</source>
        <translation>der Motor kann in die falsche Richtung drücken</translation>
    </message>
    <message>
        <source>; it is read through the gear's gap and spring: a drive that commutates by it wants a sensor at the motor, entered as its motor sensor</source>
        <translation>; gelesen wird durch Spiel und Feder des Getriebes: ein Regler, der danach kommutiert, braucht einen Geber am Motor, einzutragen als Motorgeber</translation>
    </message>
    <message>
        <source>Encoder good enough to commutate by</source>
        <translation>Encoder gut genug zum Kommutieren</translation>
    </message>
    <message>
        <source>would let the drive commutate by it</source>
        <translation>ließe den Regler danach kommutieren</translation>
    </message>
    <message>
        <source>Field strong enough for the encoder</source>
        <translation>Feld stark genug für den Encoder</translation>
    </message>
    <message>
        <source>would make the field strong enough</source>
        <translation>würde das Feld stark genug machen</translation>
    </message>
    <message>
        <source>Field weak enough for the encoder</source>
        <translation>Feld schwach genug für den Encoder</translation>
    </message>
    <message>
        <source>would make the field weak enough</source>
        <translation>würde das Feld schwach genug machen</translation>
    </message>
    <message>
        <source>Magnet centred within the encoder's error</source>
        <translation>Magnet im Rahmen des Encoderfehlers zentriert</translation>
    </message>
    <message>
        <source>would keep the magnet within the encoder's error</source>
        <translation>würde den Magneten im Rahmen des Encoderfehlers halten</translation>
    </message>
    <message>
        <source>surface charge of a uniform magnet; handbook: homing</source>
        <translation>Flächenladung eines homogenen Magneten; Handbuch: homing</translation>
    </message>
    <message>
        <source>Commutation angle off by, electrical</source>
        <translation>Fehler des Kommutierungswinkels, elektrisch</translation>
    </message>
    <message>
        <source>pole pairs·(error + half a count); at the output times N, with half the gap and torque_stall/stiffness</source>
        <translation>Polpaare·(Fehler + halber Schritt); am Abtrieb mal N, mit halbem Spiel und torque_stall/Steifigkeit</translation>
    </message>
    <message>
        <source>geometry; handbook: homing</source>
        <translation>Geometrie; Handbuch: homing</translation>
    </message>
    <message>
        <source>Control samples in an electrical turn at top speed</source>
        <translation>Regeltakte je elektrische Umdrehung bei Höchstgeschwindigkeit</translation>
    </message>
    <message>
        <source>2π·control rate/(pole pairs·N·speed_top)</source>
        <translation>2π·Regeltakt/(Polpaare·N·speed_top)</translation>
    </message>
    <message>
        <source>Field at the encoder's sensor</source>
        <translation>Feld am Sensor des Encoders</translation>
    </message>
    <message>
        <source>Angle error from the magnet's offset and tilt</source>
        <translation>Winkelfehler durch Versatz und Verkippung des Magneten</translation>
    </message>
    <message>
        <source>half the range of field direction less angle over a turn, worst tilt direction</source>
        <translation>halbe Spanne von Feldrichtung minus Winkel über eine Umdrehung, ungünstigste Kipprichtung</translation>
    </message>
    <message>
        <source>Error of the same offset, read at the magnet's rim</source>
        <translation>Fehler bei gleichem Versatz, am Rand des Magneten abgelesen</translation>
    </message>
    <message>
        <source>offset/R, as of a ring or scale</source>
        <translation>Versatz/R, wie bei einem Ring oder Maßstab</translation>
    </message>
    <message>
        <source>geometry: ±e/R; handbook: homing</source>
        <translation>Geometrie: ±e/R; Handbuch: homing</translation>
    </message>
    <message>
        <source>unnamed body</source>
        <translation>unbenannter Körper</translation>
    </message>
    <message>
        <source>bodies that turn with tilt</source>
        <translation>Körper, die sich mit Tilt drehen</translation>
    </message>
    <message>
        <source>bodies that turn with pan</source>
        <translation>Körper, die sich mit Pan drehen</translation>
    </message>
    <message>
        <source>All parts are rigid; springs, gaps and friction belong to the drive line.</source>
        <translation>Alle Teile sind starr; Federn, Spiel und Reibung gehören zum Antriebsstrang.</translation>
    </message>
    <message>
        <source>Friction is sliding friction only and cogging is left out, so both axes hold a little better than this; grease, wear and shaking take some of it away.</source>
        <translation>Die Reibung ist nur Gleitreibung, und das Rastmoment ist weggelassen; beide Achsen halten also etwas besser als hier; Fett, Verschleiß und Erschütterungen nehmen etwas davon weg.</translation>
    </message>
    <message>
        <source>Sine currents in phase with the back-EMF; iron losses, saturation, temperature and field weakening are left out.</source>
        <translation>Sinusströme in Phase mit der Gegen-EMK; Eisenverluste, Sättigung, Temperatur und Feldschwächung sind weggelassen.</translation>
    </message>
    <message>
        <source>Rigid bodies behind a gear with gap, spring and damper, one axis at a time; the bracket, the stand, torque ripple and friction higher at rest are left out.</source>
        <translation>Starre Körper hinter einem Getriebe mit Spiel, Feder und Dämpfer, je eine Achse; Halter, Stativ, Drehmomentwelligkeit und höhere Reibung im Stillstand sind weggelassen.</translation>
    </message>
    <message>
        <source>Small motions, the gear wound tight; counts, current limits, the structure beyond the output and the other axis are left out.</source>
        <translation>Kleine Bewegungen, das Getriebe ohne Spiel verspannt; Inkremente, Stromgrenzen, die Struktur hinter dem Abtrieb und die andere Achse sind weggelassen.</translation>
    </message>
    <message>
        <source>The bracket does not act back on its axis; modes beyond the first are left out.</source>
        <translation>Der Halter wirkt nicht auf seine Achse zurück; Eigenfrequenzen über der ersten sind weggelassen.</translation>
    </message>
    <message>
        <source>Teeth held together by friction; presliding, ripple of the winding's torque and errors within a turn of the encoder are left out.</source>
        <translation>Zähne durch Reibung zusammengehalten; Vorgleiten, Welligkeit des Wicklungsmoments und Fehler innerhalb einer Umdrehung des Encoders sind weggelassen.</translation>
    </message>
    <message>
        <source>Iron loss and windage, ripple of the current, heat from one motor to the next and a fan are left out; the moves are simulated with the resistance at 20 °C.</source>
        <translation>Eisenverluste und Luftreibung, Stromwelligkeit, Wärme von Motor zu Motor und ein Lüfter sind weggelassen; die Bewegungen sind mit dem Widerstand bei 20 °C simuliert.</translation>
    </message>
    <message>
        <source>A stop as a spring, the rig rigid; losses in gear and bearings and the rig giving way are left out: all but gravity make the blow smaller.</source>
        <translation>Ein Anschlag als Feder, das Rig starr; Verluste in Getriebe und Lagern und das Nachgeben des Rigs sind weggelassen: alles außer der Schwerkraft macht den Aufprall kleiner.</translation>
    </message>
    <message>
        <source>Spinning rotors (their gyroscopic moment is small behind a gearbox), cables, belts and people leaning on it are left out.</source>
        <translation>Drehende Rotoren (ihr Kreiselmoment ist hinter einem Getriebe klein), Kabel, Riemen und sich anlehnende Personen sind weggelassen.</translation>
    </message>
    <message>
        <source>Rigid train, braked at the end of its envelope; a stop's own give is left out.</source>
        <translation>Starrer Strang, am Ende seiner Grenzkurve gebremst; das Nachgeben eines Anschlags ist weggelassen.</translation>
    </message>
    <message>
        <source>Jackets as stiff as at room temperature; stiffness that grows as a bundle winds tight is left out.</source>
        <translation>Mäntel so steif wie bei Raumtemperatur; die Versteifung eines Bündels beim festen Aufwickeln ist weggelassen.</translation>
    </message>
    <message>
        <source>Stiction above coulomb friction and cold grease are left out.</source>
        <translation>Haftreibung über der Coulomb-Reibung und kaltes Fett sind weggelassen.</translation>
    </message>
    <message>
        <source>Slender beams and a rigid foot; corners, holes, inserts, creep and heat are left out.</source>
        <translation>Schlanke Balken und ein starrer Fuß; Ecken, Löcher, Einsätze, Kriechen und Wärme sind weggelassen.</translation>
    </message>
    <message>
        <source>Bodies without a shape, and pairs that touch at tilt 0, are left out of collisions.</source>
        <translation>Körper ohne Form und Paare, die sich bei Tilt 0 berühren, sind bei Kollisionen weggelassen.</translation>
    </message>
    <message>
        <source>Small angles; a part whose inputs are missing is left out and named, the sum is then too small.</source>
        <translation>Kleine Winkel; ein Teil, dessen Eingaben fehlen, ist weggelassen und genannt, die Summe ist dann zu klein.</translation>
    </message>
    <message>
        <source>Moves at the full voltage; a source that folds back and ripple of the switching are left out.</source>
        <translation>Bewegungen bei voller Spannung; eine Quelle mit Rückfallbegrenzung und die Welligkeit des Schaltens sind weggelassen.</translation>
    </message>
    <message>
        <source>An axis stops dead at the end of its travel, braking before it is left out; cables do not hold it.</source>
        <translation>Eine Achse bleibt am Ende ihres Verfahrbereichs schlagartig stehen, das Bremsen davor ist weggelassen; Kabel halten sie nicht.</translation>
    </message>
    <message>
        <source>handbook: </source>
        <translation>Handbuch: </translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>%1 or less</source>
        <translation>%1 oder weniger</translation>
    </message>
    <message>
        <source>%1 or nearer to 0</source>
        <translation>%1 oder näher an 0</translation>
    </message>
    <message>
        <source>another motor for %1</source>
        <translation>ein anderer Motor für %1</translation>
    </message>
    <message>
        <source>another gearbox for %1</source>
        <translation>ein anderes Getriebe für %1</translation>
    </message>
    <message>
        <source>another encoder for %1</source>
        <translation>ein anderer Encoder für %1</translation>
    </message>
    <message>
        <source>another magnet for the encoder of %1</source>
        <translation>ein anderer Magnet für den Encoder von %1</translation>
    </message>
    <message>
        <source>other bearings for %1</source>
        <translation>andere Lager für %1</translation>
    </message>
    <message>
        <source>another cable for %1</source>
        <translation>ein anderes Kabel für %1</translation>
    </message>
    <message>
        <source>another slip ring for %1</source>
        <translation>ein anderer Schleifring für %1</translation>
    </message>
    <message>
        <source>another supply, or another setting of it</source>
        <translation>eine andere Versorgung oder eine andere Einstellung von ihr</translation>
    </message>
    <message>
        <source>another motor for %1, or better cooling</source>
        <translation>ein anderer Motor für %1 oder bessere Kühlung</translation>
    </message>
    <message>
        <source>another material for the motor bracket of %1</source>
        <translation>ein anderer Werkstoff für den Motorhalter von %1</translation>
    </message>
    <message>
        <source>another encoder for %1, or a calibration of it</source>
        <translation>ein anderer Encoder für %1 oder eine Kalibrierung von ihm</translation>
    </message>
    <message>
        <source>another second encoder for %1</source>
        <translation>ein anderer zweiter Encoder für %1</translation>
    </message>
    <message>
        <source>another flag sensor for %1</source>
        <translation>ein anderer Fahnensensor für %1</translation>
    </message>
    <message>
        <source>another drive for %1, or another setting of it</source>
        <translation>ein anderer Antriebsregler für %1 oder eine andere Einstellung von ihm</translation>
    </message>
    <message>
        <source>bearings, seals and cables of %1 that stick less</source>
        <translation>Lager, Dichtungen und Kabel von %1, die weniger haften</translation>
    </message>
    <message>
        <source>a brake on %1</source>
        <translation>eine Bremse an %1</translation>
    </message>
    <message>
        <source>another supply</source>
        <translation>eine andere Versorgung</translation>
    </message>
    <message>
        <source>another brake resistor</source>
        <translation>ein anderer Bremswiderstand</translation>
    </message>
    <message>
        <source>another camera, or another mode of it</source>
        <translation>eine andere Kamera oder ein anderer Modus von ihr</translation>
    </message>
    <message>
        <source>cannot move: %1 at the output is not more than friction and gravity</source>
        <translation>kann sich nicht bewegen: %1 am Abtrieb ist nicht mehr als Reibung und Schwerkraft</translation>
    </message>
    <message>
        <source>there is no step to look at</source>
        <translation>es gibt keinen Sprung zu betrachten</translation>
    </message>
    <message>
        <source>runs away: the loop is unstable</source>
        <translation>läuft davon: der Regelkreis ist instabil</translation>
    </message>
    <message>
        <source>still swings by ±%1 after %2</source>
        <translation>schwingt nach %2 noch um ±%1</translation>
    </message>
    <message>
        <source>still %1 from the target after %2%3</source>
        <translation>nach %2 noch %1 vom Ziel%3</translation>
    </message>
    <message>
        <source>: it rests in the gap of the gearbox</source>
        <translation>: ruht im Getriebespiel</translation>
    </message>
    <message>
        <source>the speed estimator's, %1 of %2</source>
        <translation>die des Drehzahlschätzers, %1 von %2</translation>
    </message>
    <message>
        <source>that of sampling and computing, %1 of %2</source>
        <translation>die von Abtastung und Berechnung, %1 von %2</translation>
    </message>
    <message>
        <source>the current loop's, %1 of %2</source>
        <translation>die der Stromregelung, %1 von %2</translation>
    </message>
    <message>
        <source>, at %1</source>
        <translation>, bei %1</translation>
    </message>
    <message>
        <source>the wanted bandwidth</source>
        <translation>die gewünschte Bandbreite</translation>
    </message>
    <message>
        <source>the resonance%1</source>
        <translation>die Resonanz%1</translation>
    </message>
    <message>
        <source>the lags of the loop%1</source>
        <translation>die Verzögerungen des Regelkreises%1</translation>
    </message>
    <message>
        <source>the gap of the gearbox%1</source>
        <translation>das Spiel des Getriebes%1</translation>
    </message>
    <message>
        <source>the steps of the encoder</source>
        <translation>die Stufen des Encoders</translation>
    </message>
    <message>
        <source>the bracket</source>
        <translation>der Halter</translation>
    </message>
    <message>
        <source>Higher gains would hold too: the wanted bandwidth sets them.</source>
        <translation>Auch höhere Verstärkungen würden halten: die gewünschte Bandbreite bestimmt sie.</translation>
    </message>
    <message>
        <source>Higher, load and motor would ring against each other: antiresonance %1, resonance %2, the limit is met at %3. A stiffer gearbox moves it up.</source>
        <translation>Bei höheren würden Last und Motor gegeneinander schwingen: Antiresonanz %1, Resonanz %2, die Grenze liegt bei %3. Ein steiferes Getriebe hebt sie an.</translation>
    </message>
    <message>
        <source>Higher, the lags would use up the margin at %1. The largest is %2.</source>
        <translation>Bei höheren würden die Verzögerungen die Reserve bei %1 aufbrauchen. Die größte ist %2.</translation>
    </message>
    <message>
        <source>Even so it keeps swinging in the gap of the gearbox: less backlash, or the encoder at the motor.</source>
        <translation>Selbst so schwingt es im Spiel des Getriebes weiter: weniger Spiel oder den Encoder am Motor.</translation>
    </message>
    <message>
        <source>Higher, it would buzz in the gap of the gearbox: there the motor turns alone and its loop is %1 times as quick.</source>
        <translation>Bei höheren würde es im Spiel des Getriebes schnarren: dort dreht der Motor allein, und sein Regelkreis ist %1-mal so schnell.</translation>
    </message>
    <message>
        <source>Higher, it would keep swinging in the gap of the gearbox.</source>
        <translation>Bei höheren würde es im Spiel des Getriebes weiterschwingen.</translation>
    </message>
    <message>
        <source>Higher, every count of the encoder would be felt. More bits, or a lower bandwidth of the speed estimator, raise the limit.</source>
        <translation>Bei höheren wäre jedes Inkrement des Encoders zu spüren. Mehr Bits oder eine kleinere Bandbreite des Drehzahlschätzers heben die Grenze an.</translation>
    </message>
    <message>
        <source>Higher, it would come too near to the swing of the camera on its bracket. A stiffer bracket raises the limit.</source>
        <translation>Bei höheren käme es der Schwingung der Kamera auf ihrem Halter zu nahe. Ein steiferer Halter hebt die Grenze an.</translation>
    </message>
    <message>
        <source>Speed gain %1: the speed loop crosses at %2</source>
        <translation>Drehzahlverstärkung %1: die Drehzahlregelung hat ihren Durchtritt bei %2</translation>
    </message>
    <message>
        <source> (%1 is wanted and not sound)</source>
        <translation> (gewünscht ist %1, was nicht tragfähig ist)</translation>
    </message>
    <message>
        <source> and keeps %1</source>
        <translation> und behält %1 Phasenreserve</translation>
    </message>
    <message>
        <source> and a factor of %1</source>
        <translation> und eine Amplitudenreserve von %1</translation>
    </message>
    <message>
        <source>Speed integral gain %1%2</source>
        <translation>Integralverstärkung der Drehzahl %1%2</translation>
    </message>
    <message>
        <source>: it takes over below a quarter of that crossover.</source>
        <translation>: sie übernimmt unter einem Viertel dieses Durchtritts.</translation>
    </message>
    <message>
        <source>: with any, the axis would hunt in the gap of the gearbox.</source>
        <translation>: mit jedem größeren Wert würde die Achse im Spiel des Getriebes pendeln.</translation>
    </message>
    <message>
        <source>Position gain %1: the angle follows</source>
        <translation>Lageverstärkung %1: der Winkel folgt</translation>
    </message>
    <message>
        <source> up to %1</source>
        <translation> bis %1</translation>
    </message>
    <message>
        <source>, %1 left</source>
        <translation>, %1 Reserve</translation>
    </message>
    <message>
        <source>%1, without a peak to speak of.</source>
        <translation>%1, ohne nennenswerte Überhöhung.</translation>
    </message>
    <message>
        <source>For comparison: without gap and resonance the symmetrical optimum would be %1 and %2, the modulus optimum of the position loop %3.</source>
        <translation>Zum Vergleich: ohne Spiel und Resonanz wären das symmetrische Optimum %1 und %2, das Betragsoptimum der Lageregelung %3.</translation>
    </message>
    <message>
        <source>One count of the encoder asks for %1, %2 of the stall torque.</source>
        <translation>Ein Inkrement des Encoders verlangt %1, das sind %2 des Stillstandsmoments.</translation>
    </message>
    <message>
        <source>Gains cannot be advised: %1.</source>
        <translation>Keine Verstärkungen zu empfehlen: %1.</translation>
    </message>
    <message>
        <source>No gains hold %1: the resonance at %2 is hardly damped. More damping in the gearbox, or the encoder at the motor.</source>
        <translation>Keine Verstärkungen halten %1 ein: die Resonanz bei %2 ist kaum gedämpft. Mehr Dämpfung im Getriebe oder den Encoder am Motor.</translation>
    </message>
    <message>
        <source>The load has %1 times the inertia of the motor as seen at the output.</source>
        <translation>Die Last hat das %1-Fache des Trägheitsmoments des Motors, am Abtrieb gesehen.</translation>
    </message>
    <message>
        <source>The margins do not include the bracket, on which the camera swings at %1: three times the crossover stays below that.</source>
        <translation>Die Reserven enthalten den Halter nicht, auf dem die Kamera mit %1 schwingt: das Dreifache der Durchtrittsfrequenz bleibt darunter.</translation>
    </message>
    <message>
        <source>%1 gains %2, %3 and %4</source>
        <translation>%1-Verstärkungen %2, %3 und %4</translation>
    </message>
    <message>
        <source>With these gains the move settles in %1</source>
        <translation>Mit diesen Verstärkungen schwingt die Bewegung in %1 ein</translation>
    </message>
    <message>
        <source>With these gains the move never settles</source>
        <translation>Mit diesen Verstärkungen schwingt die Bewegung nie ein</translation>
    </message>
    <message>
        <source>With these gains the move never settles, with today's in %1</source>
        <translation>Mit diesen Verstärkungen schwingt die Bewegung nie ein, mit den heutigen in %1</translation>
    </message>
    <message>
        <source>The move never settles, neither with these gains nor with today's</source>
        <translation>Die Bewegung schwingt nie ein, weder mit diesen Verstärkungen noch mit den heutigen</translation>
    </message>
    <message>
        <source>With these gains the move settles in %1, with today's it never does</source>
        <translation>Mit diesen Verstärkungen schwingt die Bewegung in %1 ein, mit den heutigen nie</translation>
    </message>
    <message>
        <source>With these gains the move settles slower, in %1 instead of %2</source>
        <translation>Mit diesen Verstärkungen schwingt die Bewegung langsamer ein, in %1 statt %2</translation>
    </message>
    <message>
        <source>With these gains the move settles in %1, as with today's</source>
        <translation>Mit diesen Verstärkungen schwingt die Bewegung in %1 ein, wie mit den heutigen</translation>
    </message>
    <message>
        <source>With these gains the move settles in %1 instead of %2</source>
        <translation>Mit diesen Verstärkungen schwingt die Bewegung in %1 statt %2 ein</translation>
    </message>
    <message>
        <source>phase margin %1 instead of %2</source>
        <translation>Phasenreserve %1 statt %2</translation>
    </message>
    <message>
        <source>phase margin %1</source>
        <translation>Phasenreserve %1</translation>
    </message>
    <message>
        <source>gain margin %1 instead of %2</source>
        <translation>Amplitudenreserve %1 statt %2</translation>
    </message>
    <message>
        <source>gain margin %1</source>
        <translation>Amplitudenreserve %1</translation>
    </message>
    <message>
        <source>These gains leave %1.</source>
        <translation>Diese Verstärkungen lassen %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1. That buys margin: %2.</source>
        <translation>%1. Dafür gewinnt man Reserve: %2.</translation>
    </message>
    <message>
        <source>%1, and they buy no margin: %2.</source>
        <translation>%1, und sie bringen keine Reserve: %2.</translation>
    </message>
    <message>
        <source>motor at its current limit, standing still; the figures assume the drive is held below the gearbox's peak</source>
        <translation>Motor an seiner Stromgrenze, im Stillstand; die Kennwerte setzen voraus, dass der Antriebsregler unter dem Spitzenmoment des Getriebes bleibt</translation>
    </message>
    <message>
        <source>in the simulated step, at %1; the motor standing gives %2, and one that comes through the gap brings its speed along</source>
        <translation>im simulierten Sprung, nach %1; im Stillstand gibt der Motor %2, und wenn er durch das Spiel kommt, bringt er seine Drehzahl mit</translation>
    </message>
    <message>
        <source>root mean cube over the duty's moves, by the angle turned; what the teeth hold at rest does not wear them</source>
        <translation>kubisches Mittel über die Bewegungen des Lastspiels, nach dem Drehwinkel gewichtet; was die Zähne in Ruhe halten, verschleißt sie nicht</translation>
    </message>
    <message>
        <source>the fastest that bus voltage and speed limits let the motor turn</source>
        <translation>höchste Drehzahl, die Zwischenkreisspannung und Drehzahlgrenzen dem Motor erlauben</translation>
    </message>
    <message>
        <source>%1; in the simulated step it overshoots to %2 for a moment</source>
        <translation>%1; im simulierten Sprung schwingt er kurz bis %2 über</translation>
    </message>
    <message>
        <source>the load rests anywhere in the gap; the band is ± as wide</source>
        <translation>die Last ruht irgendwo im Spiel; das Band ist ± so breit</translation>
    </message>
    <message>
        <source>one encoder count seen in the picture</source>
        <translation>ein Encoder-Inkrement, im Bild gesehen</translation>
    </message>
    <message>
        <source>Motor torque through the gearbox</source>
        <translation>Motormoment durch das Getriebe</translation>
    </message>
    <message>
        <source>would stay below the gearbox's peak</source>
        <translation>würde unter dem Spitzenmoment des Getriebes bleiben</translation>
    </message>
    <message>
        <source>Gear torque in the step against the peak</source>
        <translation>Getriebemoment im Sprung gegen das Spitzenmoment</translation>
    </message>
    <message>
        <source>would spare the teeth in the step</source>
        <translation>würde die Zähne im Sprung schonen</translation>
    </message>
    <message>
        <source>Mean gear torque over the duty against the rating</source>
        <translation>Mittleres Getriebemoment im Lastspiel gegen das Nennmoment</translation>
    </message>
    <message>
        <source>would let the gearbox live its whole life</source>
        <translation>ließe das Getriebe so lange leben wie vorgesehen</translation>
    </message>
    <message>
        <source>Gearbox input speed</source>
        <translation>Antriebsdrehzahl des Getriebes</translation>
    </message>
    <message>
        <source>would keep the input slow enough</source>
        <translation>würde den Getriebeantrieb langsam genug halten</translation>
    </message>
    <message>
        <source>Gap in the picture</source>
        <translation>Spiel im Bild</translation>
    </message>
    <message>
        <source>would bring the gap inside the band</source>
        <translation>würde das Spiel ins Band bringen</translation>
    </message>
    <message>
        <source>Encoder count in the picture</source>
        <translation>Encoder-Inkrement im Bild</translation>
    </message>
    <message>
        <source>would make a count finer than the band</source>
        <translation>würde ein Inkrement feiner als das Band machen</translation>
    </message>
    <message>
        <source>thermal runaway %1: the copper's loss outgrows the cooling, there is no steady temperature</source>
        <translation>thermisches Durchgehen %1: der Verlust im Kupfer wächst schneller als die Kühlung, es gibt keine Beharrungstemperatur</translation>
    </message>
    <message>
        <source>over the duty</source>
        <translation>über das Lastspiel</translation>
    </message>
    <message>
        <source>%1 at %2 RMS over the duty, %3, air %4, limit %5</source>
        <translation>%1 bei %2 Effektivstrom über das Lastspiel, %3, Luft %4, Grenze %5</translation>
    </message>
    <message>
        <source>; a move never settles: what still swings at its end goes on until the next</source>
        <translation>; eine Bewegung schwingt nie ein: Was an ihrem Ende noch schwingt, geht bis zur nächsten weiter</translation>
    </message>
    <message>
        <source>; %1 moves are scaled from the task's</source>
        <translation>; %1 Bewegungen sind aus der Bewegung der Aufgabe skaliert</translation>
    </message>
    <message>
        <source>holding %1 with %2 in one winding</source>
        <translation>beim Halten von %1 mit %2 in einer Wicklung</translation>
    </message>
    <message>
        <source>, all that the current limit leaves of %1</source>
        <translation>, mehr lässt die Stromgrenze von %1 nicht übrig</translation>
    </message>
    <message>
        <source>%1 %2, limit %3</source>
        <translation>%1 %2, Grenze %3</translation>
    </message>
    <message>
        <source>no softening temperature is entered for the material “%1”</source>
        <translation>für den Werkstoff „%1“ ist keine Erweichungstemperatur eingegeben</translation>
    </message>
    <message>
        <source>%1; or enter motor.mount_limit</source>
        <translation>%1; oder motor.mount_limit eingeben</translation>
    </message>
    <message>
        <source>holding the worst angle</source>
        <translation>beim Halten des ungünstigsten Winkels</translation>
    </message>
    <message>
        <source>%1 at the motor %2, %3 gives way at %4</source>
        <translation>%1 am Motor %2, %3 gibt bei %4 nach</translation>
    </message>
    <message>
        <source>; without winding_to_housing the bracket is taken to be as hot as the winding</source>
        <translation>; ohne winding_to_housing gilt der Halter als so heiß wie die Wicklung</translation>
    </message>
    <message>
        <source>%1, between winding and housing, limit %2; above it they lose strength for good</source>
        <translation>%1, zwischen Wicklung und Gehäuse, Grenze %2; darüber verlieren sie dauerhaft an Stärke</translation>
    </message>
    <message>
        <source>%1, as hot as the housing, limit %2</source>
        <translation>%1, so heiß wie das Gehäuse, Grenze %2</translation>
    </message>
    <message>
        <source>winding limit %1 against %2 of class %3</source>
        <translation>Wicklungsgrenze %1 gegen %2 der Klasse %3</translation>
    </message>
    <message>
        <source>the task asks for no moves</source>
        <translation>die Aufgabe verlangt keine Bewegungen</translation>
    </message>
    <message>
        <source>it never settles after the task's move, so the picture is steady at no pace</source>
        <translation>sie schwingt nach der Bewegung der Aufgabe nie ein, bei keinem Takt steht das Bild still</translation>
    </message>
    <message>
        <source>both axes move and settle in %1, a move is due every %2</source>
        <translation>beide Achsen bewegen sich und schwingen ein in %1, eine Bewegung ist alle %2 fällig</translation>
    </message>
    <message>
        <source>it moves and settles in %1, a move is due every %2; the other axis never settles</source>
        <translation>sie bewegt sich und schwingt ein in %1, eine Bewegung ist alle %2 fällig; die andere Achse schwingt nie ein</translation>
    </message>
    <message>
        <source>the usable travel is not known</source>
        <translation>der nutzbare Verfahrbereich ist nicht bekannt</translation>
    </message>
    <message>
        <source>farthest angle of the duty from the middle of the usable travel</source>
        <translation>Winkel des Lastspiels, der am weitesten von der Mitte des nutzbaren Verfahrbereichs liegt</translation>
    </message>
    <message>
        <source>rests %1 times as long</source>
        <translation>eine %1-mal so lange Pause</translation>
    </message>
    <message>
        <source>Winding stays cool enough over the duty</source>
        <translation>Wicklung bleibt über das Lastspiel kühl genug</translation>
    </message>
    <message>
        <source>would keep the winding below its limit</source>
        <translation>würde die Wicklung unter ihrer Grenze halten</translation>
    </message>
    <message>
        <source>Winding stays cool enough holding still</source>
        <translation>Wicklung bleibt beim Halten kühl genug</translation>
    </message>
    <message>
        <source>would let it hold the worst angle without end</source>
        <translation>würde den ungünstigsten Winkel unbegrenzt halten lassen</translation>
    </message>
    <message>
        <source>Bracket at the motor stays firm</source>
        <translation>Halter am Motor bleibt fest</translation>
    </message>
    <message>
        <source>would keep the bracket from softening</source>
        <translation>würde den Halter vor dem Erweichen bewahren</translation>
    </message>
    <message>
        <source>Magnets stay cool enough</source>
        <translation>Magnete bleiben kühl genug</translation>
    </message>
    <message>
        <source>would keep the magnets below their limit</source>
        <translation>würde die Magnete unter ihrer Grenze halten</translation>
    </message>
    <message>
        <source>Motor bearings stay cool enough</source>
        <translation>Motorlager bleiben kühl genug</translation>
    </message>
    <message>
        <source>would keep the bearings below their limit</source>
        <translation>würde die Lager unter ihrer Grenze halten</translation>
    </message>
    <message>
        <source>Winding limit within its insulation class</source>
        <translation>Wicklungsgrenze innerhalb der Wärmeklasse</translation>
    </message>
    <message>
        <source>would keep to the insulation's class</source>
        <translation>würde die Wärmeklasse der Isolation einhalten</translation>
    </message>
    <message>
        <source>Moves fit into the duty's pace</source>
        <translation>Bewegungen passen in den Takt des Lastspiels</translation>
    </message>
    <message>
        <source>would leave time for each move</source>
        <translation>würde für jede Bewegung Zeit lassen</translation>
    </message>
    <message>
        <source>Duty stays within the travel</source>
        <translation>Lastspiel bleibt im Verfahrbereich</translation>
    </message>
    <message>
        <source>would let it reach every angle of the duty</source>
        <translation>würde jeden Winkel des Lastspiels erreichen lassen</translation>
    </message>
    <message>
        <source>the loop runs away in a move of the duty</source>
        <translation>der Regelkreis läuft in einer Bewegung des Lastspiels davon</translation>
    </message>
    <message>
        <source>nothing moves</source>
        <translation>nichts bewegt sich</translation>
    </message>
    <message>
        <source>two heat capacities, copper fed back; handbook: heat</source>
        <translation>zwei Wärmekapazitäten, Kupfer rückgekoppelt; Handbuch: heat</translation>
    </message>
    <message>
        <source>the duty's simulated moves; handbook: heat</source>
        <translation>die simulierten Bewegungen des Lastspiels; Handbuch: heat</translation>
    </message>
    <message>
        <source>IEC 60034-1, two heat capacities, copper fed back; handbook: heat</source>
        <translation>IEC 60034-1, zwei Wärmekapazitäten, Kupfer rückgekoppelt; Handbuch: heat</translation>
    </message>
    <message>
        <source>thermal runaway: the copper's loss outgrows the cooling, there is no steady temperature</source>
        <translation>thermisches Durchgehen: der Verlust im Kupfer wächst schneller als die Kühlung, es gibt keine Beharrungstemperatur</translation>
    </message>
    <message>
        <source>never: it stays below the limit without end</source>
        <translation>nie: sie bleibt unbegrenzt unter der Grenze</translation>
    </message>
    <message>
        <source>the air alone is as hot as the winding's limit</source>
        <translation>die Luft allein ist so heiß wie die Grenze der Wicklung</translation>
    </message>
    <message>
        <source>RMS current over the duty</source>
        <translation>Effektivstrom über das Lastspiel</translation>
    </message>
    <message>
        <source>√(∫i² dt/cycle), phase amplitude, moves simulated, holding in between</source>
        <translation>√(∫i² dt/Zyklus), Phasenamplitude, Bewegungen simuliert, dazwischen Halten</translation>
    </message>
    <message>
        <source>Cyclic duration factor</source>
        <translation>Relative Einschaltdauer</translation>
    </message>
    <message>
        <source>time in motion over the cycle</source>
        <translation>Zeit in Bewegung durch Zyklusdauer</translation>
    </message>
    <message>
        <source>duty type S3 of IEC 60034-1</source>
        <translation>Betriebsart S3 nach IEC 60034-1</translation>
    </message>
    <message>
        <source>Gear loss over the duty</source>
        <translation>Getriebeverlust über das Lastspiel</translation>
    </message>
    <message>
        <source>(∫ drag, tooth friction and damping)/cycle; all of it heats the housing</source>
        <translation>(∫ Schleppmoment, Zahnreibung und Dämpfung)/Zyklus; alles heizt das Gehäuse</translation>
    </message>
    <message>
        <source>Hottest winding over the duty</source>
        <translation>Heißeste Wicklung über das Lastspiel</translation>
    </message>
    <message>
        <source>C_w·θ_w' = 1.5·R20·i²·(1 + α·θ_w) − (θ_w − θ_h)/R_wh, periodic; air with its spread</source>
        <translation>C_w·θ_w' = 1.5·R20·i²·(1 + α·θ_w) − (θ_w − θ_h)/R_wh, periodisch; Luft mit ihrer Streuung</translation>
    </message>
    <message>
        <source>Hottest housing over the duty</source>
        <translation>Heißestes Gehäuse über das Lastspiel</translation>
    </message>
    <message>
        <source>C_h·θ_h' = (θ_w − θ_h)/R_wh + gear loss − (θ_h − θ_air)/R_ha, periodic</source>
        <translation>C_h·θ_h' = (θ_w − θ_h)/R_wh + Getriebeverlust − (θ_h − θ_air)/R_ha, periodisch</translation>
    </message>
    <message>
        <source>Bracket at the motor over the duty</source>
        <translation>Halter am Motor über das Lastspiel</translation>
    </message>
    <message>
        <source>housing − housing_to_mount·half of the heat; without details as hot as the winding</source>
        <translation>Gehäuse − housing_to_mount·halbe Wärme; ohne Angaben so heiß wie die Wicklung</translation>
    </message>
    <message>
        <source>common practice, no source; handbook: heat</source>
        <translation>übliche Praxis, ohne Quelle; Handbuch: heat</translation>
    </message>
    <message>
        <source>Magnets over the duty</source>
        <translation>Magnete über das Lastspiel</translation>
    </message>
    <message>
        <source>mean of winding and housing</source>
        <translation>Mittel aus Wicklung und Gehäuse</translation>
    </message>
    <message>
        <source>largest pull of gravity and cables/(N·Kt), no friction helping; at most the limit</source>
        <translation>größtes Moment aus Schwerkraft und Kabeln/(N·Kt), ohne Hilfe der Reibung; höchstens die Grenze</translation>
    </message>
    <message>
        <source>statics; handbook: heat</source>
        <translation>Statik; Handbuch: heat</translation>
    </message>
    <message>
        <source>Worst winding holding the worst angle</source>
        <translation>Ungünstigste Wicklung beim Halten des ungünstigsten Winkels</translation>
    </message>
    <message>
        <source>steady, R·i² in one winding of 3·R_wh, a quarter in the others; R_wh 40 % if not entered</source>
        <translation>Beharrung, R·i² in einer Wicklung mit 3·R_wh, ein Viertel in den anderen; R_wh 40 %, wenn nicht eingegeben</translation>
    </message>
    <message>
        <source>balanced three-phase current at standstill; handbook: heat</source>
        <translation>symmetrischer Drehstrom im Stillstand; Handbuch: heat</translation>
    </message>
    <message>
        <source>Current that it bears without end, turning</source>
        <translation>Dauerstrom, drehend</translation>
    </message>
    <message>
        <source>√((θ_limit − θ_air)/(R_th·1.5·R20·(1 + α·θ_limit))), duty type S1</source>
        <translation>√((θ_limit − θ_air)/(R_th·1.5·R20·(1 + α·θ_limit))), Betriebsart S1</translation>
    </message>
    <message>
        <source>Current that it bears without end, standing</source>
        <translation>Dauerstrom, stehend</translation>
    </message>
    <message>
        <source>the same for the worst winding at standstill</source>
        <translation>dasselbe für die ungünstigste Wicklung im Stillstand</translation>
    </message>
    <message>
        <source>Current that it bears in the duty's moves</source>
        <translation>Zulässiger Strom in den Bewegungen des Lastspiels</translation>
    </message>
    <message>
        <source>heats the winding just to its limit, turning while it moves, none at rest, periodic: duty type S3; at most the smaller of the motor's peak and the drive's limit</source>
        <translation>erwärmt die Wicklung gerade bis an ihre Grenze, drehend in den Bewegungen, keiner in der Ruhe, periodisch: Betriebsart S3; höchstens der kleinere von Spitzenstrom des Motors und Stromgrenze des Antriebsreglers</translation>
    </message>
    <message>
        <source>Current that it bears for 10 min from cold</source>
        <translation>Zulässiger Strom für 10 min ab kaltem Zustand</translation>
    </message>
    <message>
        <source>heats the winding just to its limit in 10 min, turning: duty type S2 10 min; at most the smaller of the motor's peak and the drive's limit</source>
        <translation>erwärmt die Wicklung in 10 min gerade bis an ihre Grenze, drehend: Betriebsart S2 10 min; höchstens der kleinere von Spitzenstrom des Motors und Stromgrenze des Antriebsreglers</translation>
    </message>
    <message>
        <source>Current of thermal runaway</source>
        <translation>Strom des thermischen Durchgehens</translation>
    </message>
    <message>
        <source>1/√(R_th·1.5·R20·α): above it there is no steady temperature</source>
        <translation>1/√(R_th·1.5·R20·α): darüber gibt es keine Beharrungstemperatur</translation>
    </message>
    <message>
        <source>Time to the winding's limit, stalled</source>
        <translation>Zeit bis zur Wicklungsgrenze, im Stillstand</translation>
    </message>
    <message>
        <source>worst winding, standing at the current limit from the air's temperature on</source>
        <translation>ungünstigste Wicklung, stehend an der Stromgrenze, ab Lufttemperatur</translation>
    </message>
    <message>
        <source>Time to the limit at 1.5 times the lasting current</source>
        <translation>Zeit bis zur Grenze beim 1,5-Fachen des Dauerstroms</translation>
    </message>
    <message>
        <source>turning, from the air's temperature on</source>
        <translation>drehend, ab Lufttemperatur</translation>
    </message>
    <message>
        <source>Time to the limit at twice the lasting current</source>
        <translation>Zeit bis zur Grenze beim Doppelten des Dauerstroms</translation>
    </message>
    <message>
        <source>Time to the limit at 3 times the lasting current</source>
        <translation>Zeit bis zur Grenze beim 3-Fachen des Dauerstroms</translation>
    </message>
    <message>
        <source>winding to housing is not below the whole thermal resistance, of which it is a part</source>
        <translation>Wicklung zu Gehäuse ist nicht kleiner als der gesamte Wärmewiderstand, von dem es ein Teil ist</translation>
    </message>
    <message>
        <source>duty type S1, continuous</source>
        <translation>Betriebsart S1, Dauerbetrieb</translation>
    </message>
    <message>
        <source>duty type S3 %1, cycle %2</source>
        <translation>Betriebsart S3 %1, Zyklus %2</translation>
    </message>
    <message>
        <source>%1 between equal readings</source>
        <translation>%1 zwischen gleichen Messwerten</translation>
    </message>
    <message>
        <source>there are no stops, but the drive keeps its count</source>
        <translation>es gibt keine Anschläge, aber der Antriebsregler behält seinen Zählerstand</translation>
    </message>
    <message>
        <source>there are no stops to home against: a flag, an encoder at the output or a second encoder would tell the turns apart</source>
        <translation>es gibt keine Anschläge für eine Referenzfahrt: eine Schaltfahne, ein Encoder am Abtrieb oder ein zweiter Encoder würde die Umdrehungen unterscheiden</translation>
    </message>
    <message>
        <source>a stop found with just more torque than friction, against half the %1</source>
        <translation>ein Anschlag, gefunden mit kaum mehr Moment als der Reibung, gegen die Hälfte der %1</translation>
    </message>
    <message>
        <source>the flag's error and half the gap, against half the %1</source>
        <translation>der Fehler der Schaltfahne und das halbe Spiel, gegen die Hälfte der %1</translation>
    </message>
    <message>
        <source>the travel is less than the %1</source>
        <translation>der Verfahrbereich ist kleiner als die %1</translation>
    </message>
    <message>
        <source>the errors of both encoders, seen at the second, against half of how near its readings come where the first reads the same</source>
        <translation>die Fehler beider Encoder, am zweiten gesehen, gegen die Hälfte des kleinsten Abstands seiner Messwerte, bei denen der erste dasselbe anzeigt</translation>
    </message>
    <message>
        <source>the encoder reads the output</source>
        <translation>der Encoder misst den Abtrieb</translation>
    </message>
    <message>
        <source>a turn, there being no stops, against the angle after which both encoders read the same again</source>
        <translation>eine Umdrehung, da es keine Anschläge gibt, gegen den Winkel, nach dem beide Encoder wieder dasselbe anzeigen</translation>
    </message>
    <message>
        <source>the travel between the stops, against the angle after which both encoders read the same again</source>
        <translation>der Verfahrbereich zwischen den Anschlägen, gegen den Winkel, nach dem beide Encoder wieder dasselbe anzeigen</translation>
    </message>
    <message>
        <source>friction, gearbox, cable and gravity at %1, against the push at %2</source>
        <translation>Reibung, Getriebe, Kabel und Schwerkraft bei %1, gegen das Andruckmoment bei %2</translation>
    </message>
    <message>
        <source>the push and %1 from meeting the stop at %2, against the lesser of the gearbox's rated and peak torque</source>
        <translation>das Andruckmoment und %1 vom Auftreffen auf den Anschlag bei %2, gegen das kleinere aus Nenn- und Spitzenmoment des Getriebes</translation>
    </message>
    <message>
        <source>after a restart it may be %1 off</source>
        <translation>nach einem Neustart kann sie um %1 danebenliegen</translation>
    </message>
    <message>
        <source>%1, and its soft limits with it: it could run into a stop at full speed</source>
        <translation>%1, und ihre Softlimits mit ihr: sie könnte mit voller Drehzahl in einen Anschlag laufen</translation>
    </message>
    <message>
        <source>%1: the cable, good for ±%2, could be wound to ±%3</source>
        <translation>%1: das Kabel, gut für ±%2, könnte auf ±%3 aufgewickelt werden</translation>
    </message>
    <message>
        <source>the drive keeps its count through a restart</source>
        <translation>der Antriebsregler behält seinen Zählerstand über einen Neustart</translation>
    </message>
    <message>
        <source>the stop is found again after each restart</source>
        <translation>der Anschlag wird nach jedem Neustart neu gefunden</translation>
    </message>
    <message>
        <source>nothing winds up, and a turn is all it needs</source>
        <translation>nichts wickelt sich auf, und eine Umdrehung genügt</translation>
    </message>
    <message>
        <source>what homing tells apart after a restart, against the usable travel</source>
        <translation>was die Referenzfahrt nach einem Neustart unterscheidet, gegen den nutzbaren Verfahrbereich</translation>
    </message>
    <message>
        <source>it turns without end</source>
        <translation>sie dreht endlos</translation>
    </message>
    <message>
        <source>the farther of home and park, against where the usable travel ends, both from its middle</source>
        <translation>die entferntere von Grundstellung und Parklage, gegen das Ende des nutzbaren Verfahrbereichs, beide von seiner Mitte aus</translation>
    </message>
    <message>
        <source>the travel between the stops is not known</source>
        <translation>der Verfahrbereich zwischen den Anschlägen ist nicht bekannt</translation>
    </message>
    <message>
        <source>Homing tells the motor's turns apart</source>
        <translation>Referenzfahrt unterscheidet die Umdrehungen des Motors</translation>
    </message>
    <message>
        <source>would tell the turns apart</source>
        <translation>würde die Umdrehungen unterscheiden</translation>
    </message>
    <message>
        <source>Two encoders together cover the travel</source>
        <translation>Zwei Encoder zusammen decken den Verfahrbereich ab</translation>
    </message>
    <message>
        <source>would make the two encoders cover the travel</source>
        <translation>würde die zwei Encoder den Verfahrbereich abdecken lassen</translation>
    </message>
    <message>
        <source>Homing current beats friction</source>
        <translation>Referenzfahrtstrom überwindet die Reibung</translation>
    </message>
    <message>
        <source>would move it to the stop</source>
        <translation>würde sie zum Anschlag bewegen</translation>
    </message>
    <message>
        <source>Homing spares the gearbox</source>
        <translation>Referenzfahrt schont das Getriebe</translation>
    </message>
    <message>
        <source>would spare the gearbox</source>
        <translation>würde das Getriebe schonen</translation>
    </message>
    <message>
        <source>The turn is known after a restart</source>
        <translation>Die Umdrehung ist nach einem Neustart bekannt</translation>
    </message>
    <message>
        <source>would leave one turn only</source>
        <translation>würde nur eine Umdrehung übrig lassen</translation>
    </message>
    <message>
        <source>Home and park lie within the travel</source>
        <translation>Grundstellung und Parklage liegen im Verfahrbereich</translation>
    </message>
    <message>
        <source>would bring home and park within the travel</source>
        <translation>würde Grundstellung und Parklage in den Verfahrbereich bringen</translation>
    </message>
    <message>
        <source>the first encoder alone tells the angles apart</source>
        <translation>der erste Encoder allein unterscheidet die Winkel</translation>
    </message>
    <message>
        <source>at %1 meeting the stop alone is more than the gearbox should bear</source>
        <translation>bei %1 ist schon das Auftreffen auf den Anschlag mehr, als das Getriebe tragen sollte</translation>
    </message>
    <message>
        <source>the gearbox has no torque limit</source>
        <translation>das Getriebe hat keine Momentgrenze</translation>
    </message>
    <message>
        <source>the push alone is more than the gearbox should bear</source>
        <translation>schon das Andruckmoment ist mehr, als das Getriebe tragen sollte</translation>
    </message>
    <message>
        <source>needs no move: two encoders are read</source>
        <translation>braucht keine Bewegung: zwei Encoder werden abgelesen</translation>
    </message>
    <message>
        <source>handbook: homing</source>
        <translation>Handbuch: homing</translation>
    </message>
    <message>
        <source>common practice, no source; handbook: homing</source>
        <translation>übliche Praxis, ohne Quelle; Handbuch: homing</translation>
    </message>
    <message>
        <source>needs no move: an encoder reads the output</source>
        <translation>braucht keine Bewegung: ein Encoder misst den Abtrieb</translation>
    </message>
    <message>
        <source>Angle between equal encoder readings</source>
        <translation>Winkel zwischen gleichen Encoder-Messwerten</translation>
    </message>
    <message>
        <source>2π/N, encoder at the motor; 2π at the output</source>
        <translation>2π/N, Encoder am Motor; 2π am Abtrieb</translation>
    </message>
    <message>
        <source>Output angles that fit one reading</source>
        <translation>Abtriebswinkel, die zu einem Messwert passen</translation>
    </message>
    <message>
        <source>⌈travel between stops / spacing⌉</source>
        <translation>⌈Verfahrbereich zwischen Anschlägen / Abstand⌉</translation>
    </message>
    <message>
        <source>Angle after which both encoders repeat</source>
        <translation>Winkel, nach dem sich beide Encoder wiederholen</translation>
    </message>
    <message>
        <source>2π·q/gcd(p, s), turns p/q and s/q per output turn; else 2π/|N − N₂|</source>
        <translation>2π·q/gcd(p, s), Umdrehungen p/q und s/q je Abtriebsumdrehung; sonst 2π/|N − N₂|</translation>
    </message>
    <message>
        <source>Error that the second encoder may have in all</source>
        <translation>Fehler, den der zweite Encoder insgesamt haben darf</translation>
    </message>
    <message>
        <source>½·min|k·N₂/N − nearest whole|·2π, k = 1 … travel/spacing</source>
        <translation>½·min|k·N₂/N − nächste ganze Zahl|·2π, k = 1 … Verfahrbereich/Abstand</translation>
    </message>
    <message>
        <source>Homing current that beats friction</source>
        <translation>Referenzfahrtstrom, der die Reibung überwindet</translation>
    </message>
    <message>
        <source>(friction + drag at the homing speed + largest |gravity + cable| of any pose)/(η·N·Kt)</source>
        <translation>(Reibung + Schleppmoment bei der Drehzahl der Referenzfahrt + größtes |Schwerkraft + Kabel| aller Lagen)/(η·N·Kt)</translation>
    </message>
    <message>
        <source>Homing current that spares the gearbox</source>
        <translation>Referenzfahrtstrom, der das Getriebe schont</translation>
    </message>
    <message>
        <source>(min(rated, peak) − ω·√(k·J))/(η·N·Kt), at most the drive's and motor's limit</source>
        <translation>(min(Nenn, Spitze) − ω·√(k·J))/(η·N·Kt), höchstens die Grenze von Antriebsregler und Motor</translation>
    </message>
    <message>
        <source>Push at the homing current</source>
        <translation>Andruckmoment beim Referenzfahrtstrom</translation>
    </message>
    <message>
        <source>torque constant; handbook: homing</source>
        <translation>Drehmomentkonstante; Handbuch: homing</translation>
    </message>
    <message>
        <source>Torque on the stop when homing</source>
        <translation>Moment am Anschlag bei der Referenzfahrt</translation>
    </message>
    <message>
        <source>energy balance ½Jω² = ½kφ²; handbook: homing</source>
        <translation>Energiebilanz ½Jω² = ½kφ²; Handbuch: homing</translation>
    </message>
    <message>
        <source>Homing speed that spares the gearbox</source>
        <translation>Drehzahl der Referenzfahrt, die das Getriebe schont</translation>
    </message>
    <message>
        <source>(min(rated, peak) − η·N·Kt·i)/√(k·J)</source>
        <translation>(min(Nenn, Spitze) − η·N·Kt·i)/√(k·J)</translation>
    </message>
    <message>
        <source>energy balance; handbook: homing</source>
        <translation>Energiebilanz; Handbuch: homing</translation>
    </message>
    <message>
        <source>Time to find the stop or flag from the far end</source>
        <translation>Zeit, um Anschlag oder Schaltfahne vom fernen Ende aus zu finden</translation>
    </message>
    <message>
        <source>travel/speed, for a stop 0.2 s more; 30 deg/s where no speed is entered</source>
        <translation>Verfahrbereich/Drehzahl, für einen Anschlag 0,2 s mehr; 30 deg/s, wo keine Drehzahl eingegeben ist</translation>
    </message>
    <message>
        <source> with at most %1</source>
        <translation> mit höchstens %1</translation>
    </message>
    <message>
        <source>%1 (the window of currents %2)</source>
        <translation>%1 (das Stromfenster %2)</translation>
    </message>
    <message>
        <source>%1 (no current both moves it, from %2 on, and spares gearbox and drive: look for it slower or with a softer stop)</source>
        <translation>%1 (kein Strom bewegt sie, ab %2, und schont zugleich Getriebe und Antriebsregler: langsamer oder mit weicherem Anschlag suchen)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 (window %2)</source>
        <translation>%1 (Fenster %2)</translation>
    </message>
    <message>
        <source> (enter a homing current: %1 would do)</source>
        <translation> (einen Referenzfahrtstrom eingeben: %1 würde genügen)</translation>
    </message>
    <message>
        <source>, the usual speed</source>
        <translation>, die übliche Drehzahl</translation>
    </message>
    <message>
        <source>How many output angles fit one encoder reading %1.</source>
        <translation>Die Zahl der Abtriebswinkel, die zu einem Messwert des Encoders passen, %1.</translation>
    </message>
    <message>
        <source>needs the stops</source>
        <translation>braucht die Anschläge</translation>
    </message>
    <message>
        <source>Only one output angle fits the encoder's reading then.</source>
        <translation>Nur ein Abtriebswinkel passt dann zum Messwert des Encoders.</translation>
    </message>
    <message>
        <source>Of %1 output angles %2 apart that fit the encoder's reading, take the one nearest to that.</source>
        <translation>Von %1 Abtriebswinkeln im Abstand %2, die zum Messwert des Encoders passen, den nächstgelegenen nehmen.</translation>
    </message>
    <message>
        <source>There is no stop to push to: choose a flag, an encoder at the output or a second encoder.</source>
        <translation>Es gibt keinen Anschlag, gegen den zu drücken wäre: eine Schaltfahne, einen Encoder am Abtrieb oder einen zweiten Encoder wählen.</translation>
    </message>
    <message>
        <source>Move slowly (%1) towards the minus end%2.</source>
        <translation>Langsam (%1) zum Minus-Ende fahren%2.</translation>
    </message>
    <message>
        <source>When the speed has stayed below %1 for %2, it stands at the stop</source>
        <translation>Ist die Drehzahl %2 lang unter %1 geblieben, steht die Achse am Anschlag</translation>
    </message>
    <message>
        <source>%1: the output is at %2%3. From the far end that takes %4.</source>
        <translation>%1: der Abtrieb steht bei %2%3. Vom fernen Ende aus dauert das %4.</translation>
    </message>
    <message>
        <source> ± %1, gap and wind-up</source>
        <translation> ± %1, Spiel und Verdrehung</translation>
    </message>
    <message>
        <source> (how far off it may be %1)</source>
        <translation> (die mögliche Abweichung %1)</translation>
    </message>
    <message>
        <source>Move slowly (%1) towards the minus end%2 until the flag switches%3.</source>
        <translation>Langsam (%1) zum Minus-Ende fahren%2, bis die Schaltfahne schaltet%3.</translation>
    </message>
    <message>
        <source>; at the stop turn back</source>
        <translation>; am Anschlag umkehren</translation>
    </message>
    <message>
        <source>The output is then where the flag is, ± %1, the flag's error and half the gap.</source>
        <translation>Der Abtrieb steht dann bei der Schaltfahne, ± %1, Fehler der Schaltfahne und halbes Spiel.</translation>
    </message>
    <message>
        <source>The output is then where the flag is; how far off %1%2.</source>
        <translation>Der Abtrieb steht dann bei der Schaltfahne; die Abweichung %1%2.</translation>
    </message>
    <message>
        <source> (less than %1 in all would do)</source>
        <translation> (insgesamt weniger als %1 würde genügen)</translation>
    </message>
    <message>
        <source>Read both encoders standing still; what they tell apart %1.</source>
        <translation>Beide Encoder im Stillstand ablesen; was sie unterscheiden, %1.</translation>
    </message>
    <message>
        <source>Read both encoders standing still: they turn %1 and %2 times a turn of the output, and read the same again after %3.</source>
        <translation>Beide Encoder im Stillstand ablesen: sie drehen %1-mal und %2-mal je Umdrehung des Abtriebs und zeigen nach %3 wieder dasselbe an.</translation>
    </message>
    <message>
        <source>Of %1 output angles that fit the first reading, take the one whose second reading fits: they come as near as %2 to each other at the second encoder, so all errors may add up to %3 there.</source>
        <translation>Von %1 Abtriebswinkeln, die zum ersten Messwert passen, den nehmen, dessen zweiter Messwert passt: am zweiten Encoder kommen sie einander bis auf %2 nahe, alle Fehler zusammen dürfen dort also bis zu %3 betragen.</translation>
    </message>
    <message>
        <source>Read the encoder at the output standing still: one reading fits one angle of a turn%1</source>
        <translation>Den Encoder am Abtrieb im Stillstand ablesen: ein Messwert passt zu einem Winkel einer Umdrehung%1</translation>
    </message>
    <message>
        <source>; the motor's encoder is set from it.</source>
        <translation>; der Encoder des Motors wird danach gesetzt.</translation>
    </message>
    <message>
        <source>Set the limits to %1 and %2, then go</source>
        <translation>Die Grenzen auf %1 und %2 setzen, dann</translation>
    </message>
    <message>
        <source>%1 home to %2.</source>
        <translation>%1 zur Grundstellung %2 fahren.</translation>
    </message>
    <message>
        <source>Go</source>
        <translation>Dann</translation>
    </message>
    <message>
        <source>Park at %1 before power is switched off.</source>
        <translation>Vor dem Ausschalten bei %1 parken.</translation>
    </message>
    <message>
        <source>The drive keeps its count: do this once, and again when the count was lost.</source>
        <translation>Der Antriebsregler behält seinen Zählerstand: einmal ausführen und erneut, wenn der Zählerstand verloren ging.</translation>
    </message>
    <message>
        <source>The drive forgets its count: do this after every power-up.</source>
        <translation>Der Antriebsregler vergisst seinen Zählerstand: nach jedem Einschalten ausführen.</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>Pan</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>Tilt</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>Versorgung</translation>
    </message>
    <message>
        <source>surroundings</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>Stativ</translation>
    </message>
    <message>
        <source>motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>drive</source>
        <translation>Antriebsregler</translation>
    </message>
    <message>
        <source>gearbox</source>
        <translation>Getriebe</translation>
    </message>
    <message>
        <source>encoder</source>
        <translation>Encoder</translation>
    </message>
    <message>
        <source>friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>stops</source>
        <translation>Anschläge</translation>
    </message>
    <message>
        <source>cable</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>homing</source>
        <translation>Referenzfahrt</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>Regelkreis</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>bearing</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>balance</source>
        <translation>Gegengewicht</translation>
    </message>
    <message>
        <source>arm</source>
        <translation>Arm</translation>
    </message>
    <message>
        <source>camera</source>
        <translation>Kamera</translation>
    </message>
    <message>
        <source>task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>tracking</source>
        <translation>Verfolgung</translation>
    </message>
    <message>
        <source>pointing</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>Lastspiel</translation>
    </message>
    <message>
        <source>flag</source>
        <translation>Schaltfahne</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>tilt body %1</source>
        <translation>Tilt-Körper %1</translation>
    </message>
    <message>
        <source>pan body %1</source>
        <translation>Pan-Körper %1</translation>
    </message>
    <message>
        <source>keep-out %1</source>
        <translation>Sperrbereich %1</translation>
    </message>
    <message>
        <source>detector %1</source>
        <translation>Detektor %1</translation>
    </message>
    <message>
        <source>duty %1</source>
        <translation>Lastspiel %1</translation>
    </message>
    <message>
        <source>material %1</source>
        <translation>Werkstoff %1</translation>
    </message>
    <message>
        <source>the bodies on tilt</source>
        <translation>die Körper auf Tilt</translation>
    </message>
    <message>
        <source>the bodies on pan</source>
        <translation>die Körper auf Pan</translation>
    </message>
    <message>
        <source>the place%1 of the tilt axis</source>
        <translation>Lage%1 der Tilt-Achse</translation>
    </message>
    <message>
        <source>%1 of the %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>weighing the %1</source>
        <translation>„%1“ zu wiegen</translation>
    </message>
    <message>
        <source>measuring %1</source>
        <translation>„%1“ zu messen</translation>
    </message>
    <message>
        <source> xx</source>
        <translation> xx</translation>
    </message>
    <message>
        <source> yy</source>
        <translation> yy</translation>
    </message>
    <message>
        <source> zz</source>
        <translation> zz</translation>
    </message>
    <message>
        <source> xy</source>
        <translation> xy</translation>
    </message>
    <message>
        <source> xz</source>
        <translation> xz</translation>
    </message>
    <message>
        <source> yz</source>
        <translation> yz</translation>
    </message>
    <message>
        <source> from</source>
        <translation> von</translation>
    </message>
    <message>
        <source> to</source>
        <translation> bis</translation>
    </message>
    <message>
        <source>&lt;both steps&gt;</source>
        <translation>&lt;both steps&gt;</translation>
    </message>
    <message>
        <source>hitting the stop at top speed</source>
        <translation>Aufprall auf den Anschlag bei Höchstdrehzahl</translation>
    </message>
    <message>
        <source>the motor at its limit, %1 either way</source>
        <translation>der Motor an seiner Grenze, %1 in jeder Richtung</translation>
    </message>
    <message>
        <source>; advised is a tightening torque of %1</source>
        <translation>; empfohlen ist ein Anziehdrehmoment von %1</translation>
    </message>
    <message>
        <source>%1; %2 of preload a screw to count on%3%4</source>
        <translation>%1; %2 sichere Vorspannkraft je Schraube%3%4</translation>
    </message>
    <message>
        <source>, as plastic creeps</source>
        <translation>, da Kunststoff kriecht</translation>
    </message>
    <message>
        <source>pull and twist together at %1 of preload%2</source>
        <translation>Zug und Torsion zusammen bei %1 Vorspannkraft%2</translation>
    </message>
    <message>
        <source>the largest preload that this torque may give, %1 above the mean%2</source>
        <translation>die größte Vorspannkraft, die dieses Drehmoment ergeben kann, %1 über dem Mittel%2</translation>
    </message>
    <message>
        <source>what hangs on the joint pulls at its screws; beyond their preload the faces part</source>
        <translation>was an der Verbindung hängt, zieht an ihren Schrauben; über deren Vorspannkraft hinaus klaffen die Flächen</translation>
    </message>
    <message>
        <source>The screwed joint holds the largest torque</source>
        <translation>Die Schraubverbindung hält das größte Moment</translation>
    </message>
    <message>
        <source>would keep the joint from slipping</source>
        <translation>würde die Verbindung am Rutschen hindern</translation>
    </message>
    <message>
        <source>Stress in the screws while tightening</source>
        <translation>Spannung in den Schrauben beim Anziehen</translation>
    </message>
    <message>
        <source>would spare the screws</source>
        <translation>würde die Schrauben schonen</translation>
    </message>
    <message>
        <source>Preload against pulling the thread out</source>
        <translation>Vorspannkraft gegen Ausreißen des Gewindes</translation>
    </message>
    <message>
        <source>would keep the thread in its hole</source>
        <translation>würde das Gewinde in seinem Loch halten</translation>
    </message>
    <message>
        <source>The joint's faces stay together</source>
        <translation>Die Flächen der Verbindung bleiben beisammen</translation>
    </message>
    <message>
        <source>would keep the faces together</source>
        <translation>würde die Flächen beisammenhalten</translation>
    </message>
    <message>
        <source>The shaft's hold bears the largest torque</source>
        <translation>Die Wellenbefestigung trägt das größte Moment</translation>
    </message>
    <message>
        <source>would keep the shaft from turning in its hold</source>
        <translation>würde die Welle am Durchdrehen in ihrer Befestigung hindern</translation>
    </message>
    <message>
        <source>the thread is not cut into metal</source>
        <translation>das Gewinde ist nicht in Metall geschnitten</translation>
    </message>
    <message>
        <source>the load does not sit on a shaft</source>
        <translation>die Last sitzt nicht auf einer Welle</translation>
    </message>
    <message>
        <source>energy balance of the blow; handbook: loads</source>
        <translation>Energiebilanz des Stoßes; Handbuch: loads</translation>
    </message>
    <message>
        <source>T = K·d·F; handbook: loads</source>
        <translation>T = K·d·F; Handbuch: loads</translation>
    </message>
    <message>
        <source>ISO 898-1, von Mises; handbook: loads</source>
        <translation>ISO 898-1, von Mises; Handbuch: loads</translation>
    </message>
    <message>
        <source>Coulomb friction; handbook: loads</source>
        <translation>Coulombsche Reibung; Handbuch: loads</translation>
    </message>
    <message>
        <source>Largest torque that reverses in the joint</source>
        <translation>Größtes Wechselmoment in der Verbindung</translation>
    </message>
    <message>
        <source>the largest of torque_stall, the stop's blow through the gear, and what slows the load in it</source>
        <translation>das größte aus torque_stall, dem Stoß des Anschlags durch das Getriebe und dem, was die Last darin bremst</translation>
    </message>
    <message>
        <source>Preload of a screw as tightened</source>
        <translation>Vorspannkraft einer Schraube nach dem Anziehen</translation>
    </message>
    <message>
        <source>tightening_torque/(K·d), K = (0.159·P + 0.578·d2·µ + head/2·µ)/d</source>
        <translation>tightening_torque/(K·d), K = (0.159·P + 0.578·d2·µ + Kopf/2·µ)/d</translation>
    </message>
    <message>
        <source>Preload of a screw to count on</source>
        <translation>Sichere Vorspannkraft einer Schraube</translation>
    </message>
    <message>
        <source>preload less 35 % of scatter, half of that in plastic; as shipped, data file joints</source>
        <translation>Vorspannkraft abzüglich 35 % Streuung, davon die Hälfte in Kunststoff; wie ausgeliefert, Datendatei joints</translation>
    </message>
    <message>
        <source>SAND2008-0371; handbook: loads</source>
        <translation>SAND2008-0371; Handbuch: loads</translation>
    </message>
    <message>
        <source>Largest preload of a screw</source>
        <translation>Größte Vorspannkraft einer Schraube</translation>
    </message>
    <message>
        <source>preload and 35 % of scatter; as shipped, data file joints</source>
        <translation>Vorspannkraft und 35 % Streuung; wie ausgeliefert, Datendatei joints</translation>
    </message>
    <message>
        <source>Stress in a screw while tightening</source>
        <translation>Spannung in einer Schraube beim Anziehen</translation>
    </message>
    <message>
        <source>√(σ² + 3τ²), σ = preload/As, τ of the thread's part of the torque</source>
        <translation>√(σ² + 3τ²), σ = Vorspannkraft/As, τ aus dem Gewindeanteil des Drehmoments</translation>
    </message>
    <message>
        <source>Torque at which the screwed joint slips</source>
        <translation>Moment, bei dem die Schraubverbindung rutscht</translation>
    </message>
    <message>
        <source>Advised tightening torque</source>
        <translation>Empfohlenes Anziehdrehmoment</translation>
    </message>
    <message>
        <source>to 80 % of the proof stress, in plastic to half of the pull-out force at most</source>
        <translation>bis 80 % der Prüfspannung, in Kunststoff höchstens bis zur halben Ausreißkraft</translation>
    </message>
    <message>
        <source>common practice, no source; handbook: loads</source>
        <translation>übliche Praxis, ohne Quelle; Handbuch: loads</translation>
    </message>
    <message>
        <source>Engagement for a thread as strong as the screw</source>
        <translation>Einschraubtiefe für ein Gewinde, so fest wie die Schraube</translation>
    </message>
    <message>
        <source>2·As/(0.5·π·(d − 0.6495·P)), same material</source>
        <translation>2·As/(0.5·π·(d − 0.6495·P)), gleicher Werkstoff</translation>
    </message>
    <message>
        <source>FED-STD-H28, simplified; from memory</source>
        <translation>FED-STD-H28, vereinfacht; aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Pull of the load on the worst screw</source>
        <translation>Zug der Last an der ungünstigsten Schraube</translation>
    </message>
    <message>
        <source>4·(radial·load_at + moment)/(screws·circle_diameter) + axial/screws</source>
        <translation>4·(radial·load_at + Moment)/(Schrauben·circle_diameter) + axial/Schrauben</translation>
    </message>
    <message>
        <source>Torque that the shaft's hold passes on</source>
        <translation>Moment, das die Wellenbefestigung überträgt</translation>
    </message>
    <message>
        <source>clamp µ·F·d; flat p·L·(0.6·d)²/12; key p·L·d²/16</source>
        <translation>Klemme µ·F·d; Abflachung p·L·(0.6·d)²/12; Passfeder p·L·d²/16</translation>
    </message>
    <message>
        <source>worked out when nothing is dragged</source>
        <translation>wird berechnet, wenn nichts gezogen wird</translation>
    </message>
    <message>
        <source>%1 of the time %2 holds it back</source>
        <translation>%1 der Zeit bremst %2</translation>
    </message>
    <message>
        <source>%1 would save %2</source>
        <translation>%1 würde %2 sparen</translation>
    </message>
    <message>
        <source>the move is inside the settle band from the start</source>
        <translation>die Bewegung ist von Anfang an im Einschwingband</translation>
    </message>
    <message>
        <source>cannot make the move: torque below friction, gravity and cable</source>
        <translation>kann die Bewegung nicht ausführen: Moment unter Reibung, Schwerkraft und Kabel</translation>
    </message>
    <message>
        <source>samples in which it is the limit in force / settle_time</source>
        <translation>Abtastungen, in denen sie die wirksame Grenze ist / settle_time</translation>
    </message>
    <message>
        <source>simulation of design section 5, sample by sample; handbook: motion</source>
        <translation>Simulation nach Entwurfsabschnitt 5, Abtastung für Abtastung; Handbuch: motion</translation>
    </message>
    <message>
        <source>time on that end of the envelope / shortest_time</source>
        <translation>Zeit an diesem Ende der Grenzkurve / shortest_time</translation>
    </message>
    <message>
        <source>envelope along the shortest move; handbook: motion</source>
        <translation>Grenzkurve entlang der kürzesten Bewegung; Handbuch: motion</translation>
    </message>
    <message>
        <source>Step limited by the drive's current</source>
        <translation>Sprung begrenzt durch den Strom des Antriebsreglers</translation>
    </message>
    <message>
        <source>Step limited by the motor's current</source>
        <translation>Sprung begrenzt durch den Strom des Motors</translation>
    </message>
    <message>
        <source>Step limited by the gearbox's torque</source>
        <translation>Sprung begrenzt durch das Moment des Getriebes</translation>
    </message>
    <message>
        <source>Step limited by the bus voltage</source>
        <translation>Sprung begrenzt durch die Zwischenkreisspannung</translation>
    </message>
    <message>
        <source>Step limited by the supply's current</source>
        <translation>Sprung begrenzt durch den Strom der Versorgung</translation>
    </message>
    <message>
        <source>Step limited by the loop's speed limit</source>
        <translation>Sprung begrenzt durch die Drehzahlgrenze des Regelkreises</translation>
    </message>
    <message>
        <source>Step limited by the loop itself</source>
        <translation>Sprung begrenzt durch den Regelkreis selbst</translation>
    </message>
    <message>
        <source>Step in the gap of the gearbox</source>
        <translation>Sprung im Spiel des Getriebes</translation>
    </message>
    <message>
        <source>Shortest move limited by the drive's current</source>
        <translation>Kürzeste Bewegung begrenzt durch den Strom des Antriebsreglers</translation>
    </message>
    <message>
        <source>Shortest move limited by the motor's current</source>
        <translation>Kürzeste Bewegung begrenzt durch den Strom des Motors</translation>
    </message>
    <message>
        <source>Shortest move limited by the gearbox's torque</source>
        <translation>Kürzeste Bewegung begrenzt durch das Moment des Getriebes</translation>
    </message>
    <message>
        <source>Shortest move limited by the bus voltage</source>
        <translation>Kürzeste Bewegung begrenzt durch die Zwischenkreisspannung</translation>
    </message>
    <message>
        <source>Shortest move limited by the supply's current</source>
        <translation>Kürzeste Bewegung begrenzt durch den Strom der Versorgung</translation>
    </message>
    <message>
        <source>the resonance of motor and load at %1</source>
        <translation>die Resonanz von Motor und Last bei %1</translation>
    </message>
    <message>
        <source>%1 is too fast for the control rate, but the speed loop's gain there is only %2</source>
        <translation>%1 ist zu schnell für den Regeltakt, aber die Verstärkung der Drehzahlregelung beträgt dort nur %2</translation>
    </message>
    <message>
        <source>four samples a period of %1; the speed loop's gain there is %2</source>
        <translation>vier Abtastungen je Periode (%1); die Verstärkung der Drehzahlregelung beträgt dort %2</translation>
    </message>
    <message>
        <source>the gain of the speed loop stays below 1: it moves no bracket</source>
        <translation>die Verstärkung der Drehzahlregelung bleibt unter 1: sie bewegt keinen Halter</translation>
    </message>
    <message>
        <source>the camera swings on its bracket at %1, %2 times the speed loop's crossover of %3; three times is common practice</source>
        <translation>die Kamera schwingt auf ihrem Halter mit %1, dem %2-fachen der Durchtrittsfrequenz der Drehzahlregelung von %3; das Dreifache ist übliche Praxis</translation>
    </message>
    <message>
        <source>the gap keeps no swing going</source>
        <translation>das Spiel hält kein Pendeln aufrecht</translation>
    </message>
    <message>
        <source>keeps swinging by ±%1 at %2, teeth from side to side</source>
        <translation>pendelt dauernd um ±%1 bei %2, die Zähne von Flanke zu Flanke</translation>
    </message>
    <message>
        <source>the advised %1</source>
        <translation>der empfohlene Satz %1</translation>
    </message>
    <message>
        <source>%1 (settling slower: in %2 instead of %3)</source>
        <translation>%1 (schwingt langsamer ein: in %2 statt %3)</translation>
    </message>
    <message>
        <source>%1 (which never settle, today's do in %2)</source>
        <translation>%1 (damit schwingt es nie ein, mit den heutigen in %2)</translation>
    </message>
    <message>
        <source>Control rate against the resonance</source>
        <translation>Regeltakt gegen die Resonanz</translation>
    </message>
    <message>
        <source>would be quick enough for the resonance</source>
        <translation>wäre für die Resonanz schnell genug</translation>
    </message>
    <message>
        <source>Bracket stiff enough for the loop</source>
        <translation>Halter steif genug für den Regelkreis</translation>
    </message>
    <message>
        <source>would keep the bracket's swing three times above the loop</source>
        <translation>würde die Halterschwingung beim Dreifachen des Regelkreises halten</translation>
    </message>
    <message>
        <source>Swing in the gap against the settle band</source>
        <translation>Pendeln im Spiel gegen das Einschwingband</translation>
    </message>
    <message>
        <source>would end the swing in the gap</source>
        <translation>würde das Pendeln im Spiel beenden</translation>
    </message>
    <message>
        <source>there is no gap</source>
        <translation>es gibt kein Spiel</translation>
    </message>
    <message>
        <source>it comes to rest: the gap keeps no swing going</source>
        <translation>sie kommt zur Ruhe: das Spiel hält kein Pendeln aufrecht</translation>
    </message>
    <message>
        <source>follows beyond half the sample rate, or not at all</source>
        <translation>folgt über die halbe Abtastrate hinaus oder gar nicht</translation>
    </message>
    <message>
        <source>never settles with the advised gains</source>
        <translation>schwingt mit den empfohlenen Verstärkungen nie ein</translation>
    </message>
    <message>
        <source>linear model wound tight; handbook: loops</source>
        <translation>lineares Modell, verspannt; Handbuch: loops</translation>
    </message>
    <message>
        <source>harmonic balance; Gelb &amp; Vander Velde 1968 (memory); handbook: loops</source>
        <translation>harmonische Balance; Gelb &amp; Vander Velde 1968 (aus dem Gedächtnis); Handbuch: loops</translation>
    </message>
    <message>
        <source>searched in the linear model; handbook: loops</source>
        <translation>im linearen Modell gesucht; Handbuch: loops</translation>
    </message>
    <message>
        <source>the loop never crosses unit gain below half the sample rate</source>
        <translation>der Regelkreis kreuzt unter der halben Abtastrate nie die Verstärkung 1</translation>
    </message>
    <message>
        <source>the loops are unstable: there is no steady answer</source>
        <translation>die Regelkreise sind instabil: es gibt keine eingeschwungene Antwort</translation>
    </message>
    <message>
        <source>Speed loop delay margin</source>
        <translation>Totzeitreserve der Drehzahlregelung</translation>
    </message>
    <message>
        <source>phase margin/ω, least of all crossings</source>
        <translation>Phasenreserve/ω, kleinste aller Durchtritte</translation>
    </message>
    <message>
        <source>Position loop delay margin</source>
        <translation>Totzeitreserve der Lageregelung</translation>
    </message>
    <message>
        <source>Bandwidth of the closed position loop</source>
        <translation>Bandbreite der geschlossenen Lageregelung</translation>
    </message>
    <message>
        <source>|angle/command| first passes 1/√2</source>
        <translation>|Winkel/Vorgabe| unterschreitet erstmals 1/√2</translation>
    </message>
    <message>
        <source>Peak of the closed position loop</source>
        <translation>Überhöhung der geschlossenen Lageregelung</translation>
    </message>
    <message>
        <source>largest |angle/command|</source>
        <translation>größtes |Winkel/Vorgabe|</translation>
    </message>
    <message>
        <source>Model of the loops holds up to</source>
        <translation>Modell der Regelkreise gilt bis</translation>
    </message>
    <message>
        <source>the least of the current loop's bandwidth and, where the arm is described, its mode</source>
        <translation>das Kleinste aus der Bandbreite des Stromreglers und, wo der Arm beschrieben ist, dessen Eigenfrequenz</translation>
    </message>
    <message>
        <source>what the model leaves out; handbook: loops</source>
        <translation>was das Modell weglässt; Handbuch: loops</translation>
    </message>
    <message>
        <source>Swing in the gap</source>
        <translation>Pendeln im Spiel</translation>
    </message>
    <message>
        <source>harmonic balance of dead zone, friction and loops, each way</source>
        <translation>harmonische Balance von toter Zone, Reibung und Regelkreisen, je Richtung</translation>
    </message>
    <message>
        <source>Frequency of the swing in the gap</source>
        <translation>Frequenz des Pendelns im Spiel</translation>
    </message>
    <message>
        <source>harmonic balance of dead zone, friction and loops</source>
        <translation>harmonische Balance von toter Zone, Reibung und Regelkreisen</translation>
    </message>
    <message>
        <source>Swing in the gap in the picture</source>
        <translation>Pendeln im Spiel, im Bild</translation>
    </message>
    <message>
        <source>swing·pixels per radian</source>
        <translation>Pendeln·Pixel je Radiant</translation>
    </message>
    <message>
        <source>Advised position gain</source>
        <translation>Empfohlene Lageverstärkung</translation>
    </message>
    <message>
        <source>highest with margins and without a peak above 1.05</source>
        <translation>höchste mit Reserven und ohne Überhöhung über 1,05</translation>
    </message>
    <message>
        <source>Advised speed gain</source>
        <translation>Empfohlene Drehzahlverstärkung</translation>
    </message>
    <message>
        <source>highest with the wanted margin, or for the wanted bandwidth</source>
        <translation>höchste mit der gewünschten Reserve oder für die gewünschte Bandbreite</translation>
    </message>
    <message>
        <source>Advised speed integral gain</source>
        <translation>Empfohlene Integralverstärkung der Drehzahl</translation>
    </message>
    <message>
        <source>speed gain²/(4·inertia)</source>
        <translation>Drehzahlverstärkung²/(4·Trägheitsmoment)</translation>
    </message>
    <message>
        <source>Speed loop crossover with the advised gains</source>
        <translation>Durchtritt der Drehzahlregelung mit den empfohlenen Verstärkungen</translation>
    </message>
    <message>
        <source>first |L| = 1</source>
        <translation>erstes |L| = 1</translation>
    </message>
    <message>
        <source>Settle time with the advised gains</source>
        <translation>Einschwingzeit mit den empfohlenen Verstärkungen</translation>
    </message>
    <message>
        <source>simulated as the settle time</source>
        <translation>simuliert wie die Einschwingzeit</translation>
    </message>
    <message>
        <source>simulated; handbook: loops</source>
        <translation>simuliert; Handbuch: loops</translation>
    </message>
    <message>
        <source>Phase margin with the advised gains</source>
        <translation>Phasenreserve mit den empfohlenen Verstärkungen</translation>
    </message>
    <message>
        <source>the smaller of both loops</source>
        <translation>die kleinere beider Regelkreise</translation>
    </message>
    <message>
        <source>statics of rigid bodies; handbook: bodies</source>
        <translation>Statik starrer Körper; Handbuch: bodies</translation>
    </message>
    <message>
        <source>parallel-axis theorem, handbook tables of solids; handbook: bodies</source>
        <translation>Satz von Steiner, Körpertabellen aus Handbüchern; Handbuch: bodies</translation>
    </message>
    <message>
        <source>Mass that turns with pan only</source>
        <translation>Masse, die nur mit Pan dreht</translation>
    </message>
    <message>
        <source>sum of on_pan</source>
        <translation>Summe von on_pan</translation>
    </message>
    <message>
        <source>Mass that tilts</source>
        <translation>Masse, die mit Tilt schwenkt</translation>
    </message>
    <message>
        <source>sum of on_tilt</source>
        <translation>Summe von on_tilt</translation>
    </message>
    <message>
        <source>Moving mass</source>
        <translation>Bewegte Masse</translation>
    </message>
    <message>
        <source>on_pan + on_tilt</source>
        <translation>on_pan + on_tilt</translation>
    </message>
    <message>
        <source>Load inertia about the axis</source>
        <translation>Lastträgheitsmoment um die Achse</translation>
    </message>
    <message>
        <source>sum of I + m·d² of all bodies the axis turns, tilt at 0</source>
        <translation>Summe von I + m·d² aller Körper, die die Achse dreht, Tilt bei 0</translation>
    </message>
    <message>
        <source>Least load inertia over the tilt travel</source>
        <translation>Kleinstes Lastträgheitsmoment über den Tilt-Verfahrbereich</translation>
    </message>
    <message>
        <source>least M11(θ), θ in the usable tilt travel</source>
        <translation>kleinstes M11(θ), θ im nutzbaren Tilt-Verfahrbereich</translation>
    </message>
    <message>
        <source>Largest load inertia over the tilt travel</source>
        <translation>Größtes Lastträgheitsmoment über den Tilt-Verfahrbereich</translation>
    </message>
    <message>
        <source>largest M11(θ), θ in the usable tilt travel</source>
        <translation>größtes M11(θ), θ im nutzbaren Tilt-Verfahrbereich</translation>
    </message>
    <message>
        <source>Rotor through the gear</source>
        <translation>Rotor durch das Getriebe</translation>
    </message>
    <message>
        <source>N²·(rotor + gearbox inertia)</source>
        <translation>N²·(Rotor + Trägheitsmoment des Getriebes)</translation>
    </message>
    <message>
        <source>reflected inertia, Dubey, Fundamentals of Electrical Drives, ex. 2.1</source>
        <translation>reduziertes Trägheitsmoment, Dubey, Fundamentals of Electrical Drives, Bsp. 2.1</translation>
    </message>
    <message>
        <source>Load over reflected rotor</source>
        <translation>Last zu reduziertem Rotor</translation>
    </message>
    <message>
        <source>load / rotor_reflected</source>
        <translation>Last / rotor_reflected</translation>
    </message>
    <message>
        <source>definition; sources disagree on what is acceptable, see handbook: motion</source>
        <translation>Definition; die Quellen sind uneins, was zulässig ist, siehe Handbuch: motion</translation>
    </message>
    <message>
        <source>Centre of mass off the tilt axis</source>
        <translation>Schwerpunkt neben der Tilt-Achse</translation>
    </message>
    <message>
        <source>√(x² + z²) in T</source>
        <translation>√(x² + z²) in T</translation>
    </message>
    <message>
        <source>Largest gravity torque</source>
        <translation>Größtes Schwerkraftmoment</translation>
    </message>
    <message>
        <source>largest |−∂V/∂q| over the usable travel of both axes</source>
        <translation>größtes |−∂V/∂q| über den nutzbaren Verfahrbereich beider Achsen</translation>
    </message>
    <message>
        <source>; along the %1 move in %2</source>
        <translation>; entlang der Bewegung „%1“ in %2</translation>
    </message>
    <message>
        <source>; the move back never settles</source>
        <translation>; die Bewegung zurück schwingt nie ein</translation>
    </message>
    <message>
        <source>; the move back in %1, as weight or cable pull to one side</source>
        <translation>; die Bewegung zurück in %1, weil Gewicht oder Kabel zu einer Seite ziehen</translation>
    </message>
    <message>
        <source>never settles: %1</source>
        <translation>schwingt nie ein: %1</translation>
    </message>
    <message>
        <source>settles in %1</source>
        <translation>schwingt in %1 ein</translation>
    </message>
    <message>
        <source>%1, but the camera swings on its bracket for longer than 30 s</source>
        <translation>%1, aber die Kamera schwingt auf ihrem Halter länger als 30 s</translation>
    </message>
    <message>
        <source>%1, the camera on its bracket in %2</source>
        <translation>%1, die Kamera auf ihrem Halter in %2</translation>
    </message>
    <message>
        <source>friction %1, gravity at its worst angle %2, gearbox drag %3%4</source>
        <translation>Reibung %1, Schwerkraft im ungünstigsten Winkel %2, Schleppmoment des Getriebes %3%4</translation>
    </message>
    <message>
        <source>, cable wound up %1</source>
        <translation>, aufgewickeltes Kabel %1</translation>
    </message>
    <message>
        <source>no crossover, cannot swing</source>
        <translation>kein Durchtritt, kann nicht schwingen</translation>
    </message>
    <message>
        <source>the gain of both loops stays below 1: slow, no swing</source>
        <translation>die Verstärkung beider Regelkreise bleibt unter 1: langsam, kein Schwingen</translation>
    </message>
    <message>
        <source>speed loop %1, position loop %2; 45° is common practice</source>
        <translation>Drehzahlregelung %1, Lageregelung %2; 45° sind übliche Praxis</translation>
    </message>
    <message>
        <source>the phase never reaches −180° below half the sample rate</source>
        <translation>die Phase erreicht unter der halben Abtastrate nie −180°</translation>
    </message>
    <message>
        <source>a factor of 2 (6 dB) is common practice</source>
        <translation>ein Faktor 2 (6 dB) ist übliche Praxis</translation>
    </message>
    <message>
        <source>Move and settle in time</source>
        <translation>Rechtzeitig bewegen und einschwingen</translation>
    </message>
    <message>
        <source>would make the move in time</source>
        <translation>würde die Bewegung rechtzeitig schaffen</translation>
    </message>
    <message>
        <source>Torque to start moving</source>
        <translation>Moment zum Anlaufen</translation>
    </message>
    <message>
        <source>would start it moving</source>
        <translation>würde sie in Bewegung setzen</translation>
    </message>
    <message>
        <source>Phase margin of the loops</source>
        <translation>Phasenreserve der Regelkreise</translation>
    </message>
    <message>
        <source>would leave 45°</source>
        <translation>würde 45° lassen</translation>
    </message>
    <message>
        <source>Gain margin of the loops</source>
        <translation>Amplitudenreserve der Regelkreise</translation>
    </message>
    <message>
        <source>would leave a factor of 2</source>
        <translation>würde einen Faktor 2 lassen</translation>
    </message>
    <message>
        <source>the move there never settles</source>
        <translation>schon die Bewegung hin schwingt nie ein</translation>
    </message>
    <message>
        <source>weight and cable pull to neither side</source>
        <translation>Gewicht und Kabel ziehen zu keiner Seite</translation>
    </message>
    <message>
        <source>never settles</source>
        <translation>schwingt nie ein</translation>
    </message>
    <message>
        <source>never reaches 90 % of the move</source>
        <translation>erreicht nie 90 % der Bewegung</translation>
    </message>
    <message>
        <source>simulation of design section 5; handbook: motion</source>
        <translation>Simulation nach Entwurfsabschnitt 5; Handbuch: motion</translation>
    </message>
    <message>
        <source>linear model wound tight; handbook: motion</source>
        <translation>lineares Modell, verspannt; Handbuch: motion</translation>
    </message>
    <message>
        <source>Shortest time of the move</source>
        <translation>Kürzeste Zeit der Bewegung</translation>
    </message>
    <message>
        <source>rest to rest inside the envelope, train rigid, full torque one way then the other</source>
        <translation>von Ruhe zu Ruhe innerhalb der Grenzkurve, Antriebsstrang starr, volles Moment in die eine, dann in die andere Richtung</translation>
    </message>
    <message>
        <source>handbook: motion</source>
        <translation>Handbuch: motion</translation>
    </message>
    <message>
        <source>Ratio of shortest time</source>
        <translation>Übersetzung der kürzesten Zeit</translation>
    </message>
    <message>
        <source>N in 1…200 that makes shortest_time least</source>
        <translation>N in 1…200 mit der kleinsten shortest_time</translation>
    </message>
    <message>
        <source>Rise time</source>
        <translation>Anstiegszeit</translation>
    </message>
    <message>
        <source>10 to 90 % of the move</source>
        <translation>10 bis 90 % der Bewegung</translation>
    </message>
    <message>
        <source>Overshoot</source>
        <translation>Überschwingen</translation>
    </message>
    <message>
        <source>largest angle over the move, less 1</source>
        <translation>größter Winkel zur Bewegung, minus 1</translation>
    </message>
    <message>
        <source>Move and settle</source>
        <translation>Bewegen und Einschwingen</translation>
    </message>
    <message>
        <source>last time outside ± settle band, in pixels at the picture's centre</source>
        <translation>letzter Zeitpunkt außerhalb von ± Einschwingband, in Pixeln in der Bildmitte</translation>
    </message>
    <message>
        <source>Move back and settle</source>
        <translation>Zurück bewegen und einschwingen</translation>
    </message>
    <message>
        <source>the same stretch back, where weight and cable pull by 1 % of the stall torque or more at rest; of the camera, where it is on a bracket</source>
        <translation>dieselbe Strecke zurück, wo Gewicht und Kabel in der Ruhelage mit 1 % des Stillstandsmoments oder mehr ziehen; der Kamera, wo sie auf einem Halter sitzt</translation>
    </message>
    <message>
        <source>Peak phase current in the step</source>
        <translation>Spitzenphasenstrom im Sprung</translation>
    </message>
    <message>
        <source>largest phase amplitude</source>
        <translation>größte Phasenamplitude</translation>
    </message>
    <message>
        <source>Peak speed in the step</source>
        <translation>Spitzendrehzahl im Sprung</translation>
    </message>
    <message>
        <source>Largest gear torque in the step</source>
        <translation>Größtes Getriebemoment im Sprung</translation>
    </message>
    <message>
        <source>largest |stiffness·wind-up + damping·its speed| of the teeth, per control sample</source>
        <translation>größtes |Steifigkeit·Verdrehung + Dämpfung·deren Geschwindigkeit| der Zähne, je Reglertakt</translation>
    </message>
    <message>
        <source>Mean gear torque over the duty</source>
        <translation>Mittleres Getriebemoment im Lastspiel</translation>
    </message>
    <message>
        <source>(∫|τ|³·dφ / ∫dφ)^⅓ of the teeth over the moves, by the angle turned</source>
        <translation>(∫|τ|³·dφ / ∫dφ)^⅓ der Zähne über die Bewegungen, nach dem Drehwinkel gewichtet</translation>
    </message>
    <message>
        <source>root mean cube as of rolling fatigue, common practice, no source; handbook: motion</source>
        <translation>kubisches Mittel wie bei Wälzermüdung, übliche Praxis, ohne Quelle; Handbuch: motion</translation>
    </message>
    <message>
        <source>Antiresonance</source>
        <translation>Antiresonanz</translation>
    </message>
    <message>
        <source>Leonhard, Control of Electrical Drives (memory)</source>
        <translation>Leonhard, Control of Electrical Drives (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Resonance</source>
        <translation>Resonanz</translation>
    </message>
    <message>
        <source>√(k·(1/J_load + 1/(N²·J_rotor)))</source>
        <translation>√(k·(1/J_load + 1/(N²·J_rotor)))</translation>
    </message>
    <message>
        <source>Leonhard, Control of Electrical Drives (memory); Bevan ch. 15 ex. 11</source>
        <translation>Leonhard, Control of Electrical Drives (aus dem Gedächtnis); Bevan Kap. 15 Bsp. 11</translation>
    </message>
    <message>
        <source>Speed loop crossover</source>
        <translation>Durchtritt der Drehzahlregelung</translation>
    </message>
    <message>
        <source>Speed loop phase margin</source>
        <translation>Phasenreserve der Drehzahlregelung</translation>
    </message>
    <message>
        <source>180° + phase at crossover, least of all crossings</source>
        <translation>180° + Phase am Durchtritt, kleinste aller Durchtritte</translation>
    </message>
    <message>
        <source>Speed loop gain margin</source>
        <translation>Amplitudenreserve der Drehzahlregelung</translation>
    </message>
    <message>
        <source>1/|L| where the phase is −180°</source>
        <translation>1/|L|, wo die Phase −180° ist</translation>
    </message>
    <message>
        <source>Position loop crossover</source>
        <translation>Durchtritt der Lageregelung</translation>
    </message>
    <message>
        <source>Position loop phase margin</source>
        <translation>Phasenreserve der Lageregelung</translation>
    </message>
    <message>
        <source>Position loop gain margin</source>
        <translation>Amplitudenreserve der Lageregelung</translation>
    </message>
    <message>
        <source>of the %1 until it settles: %2</source>
        <translation>von den %1 bis zum Einschwingen: %2</translation>
    </message>
    <message>
        <source>of the %1 of the shortest move, gear rigid and torque switched ideally: %2</source>
        <translation>von den %1 der kürzesten Bewegung, Getriebe starr und Moment ideal geschaltet: %2</translation>
    </message>
    <message>
        <source>the drive's current limit</source>
        <translation>die Stromgrenze des Antriebsreglers</translation>
    </message>
    <message>
        <source>the motor's peak current</source>
        <translation>der Spitzenstrom des Motors</translation>
    </message>
    <message>
        <source>the gearbox's peak torque</source>
        <translation>das Spitzenmoment des Getriebes</translation>
    </message>
    <message>
        <source>the bus voltage</source>
        <translation>die Zwischenkreisspannung</translation>
    </message>
    <message>
        <source>the supply's current limit</source>
        <translation>die Stromgrenze der Versorgung</translation>
    </message>
    <message>
        <source>the loop's speed limit</source>
        <translation>die Drehzahlgrenze des Regelkreises</translation>
    </message>
    <message>
        <source>the loop itself</source>
        <translation>der Regelkreis selbst</translation>
    </message>
    <message>
        <source>the gap of the gearbox</source>
        <translation>das Spiel des Getriebes</translation>
    </message>
    <message>
        <source>fails, but within the doubt: %1 short, ±%2</source>
        <translation>versagt, aber innerhalb der Unsicherheit: es fehlen %1, ±%2</translation>
    </message>
    <message>
        <source>holds, but within the doubt: %1 left, ±%2</source>
        <translation>hält, aber innerhalb der Unsicherheit: %1 übrig, ±%2</translation>
    </message>
    <message>
        <source>holds, but within the doubt: with an input at its end it never settles</source>
        <translation>hält, aber innerhalb der Unsicherheit: mit einer Eingabe an ihrem Ende schwingt sie nie ein</translation>
    </message>
    <message>
        <source>%1; alone it can turn a verdict: %2, %3</source>
        <translation>%1; allein schon kann es ein Urteil umkehren: %2, %3</translation>
    </message>
    <message>
        <source>roller</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>listed above</source>
        <translation>oben aufgeführt</translation>
    </message>
    <message>
        <source>%1 pole pairs</source>
        <translation>%1 Polpaare</translation>
    </message>
    <message>
        <source>peak %1</source>
        <translation>Spitze %1</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Antriebsregler</translation>
    </message>
    <message>
        <source>bus %1</source>
        <translation>Zwischenkreis %1</translation>
    </message>
    <message>
        <source>Gearbox</source>
        <translation>Getriebe</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>Spiel %1</translation>
    </message>
    <message>
        <source>rated %1</source>
        <translation>Nennwert %1</translation>
    </message>
    <message>
        <source>%1 bits</source>
        <translation>%1 Bit</translation>
    </message>
    <message>
        <source>error %1</source>
        <translation>Fehler %1</translation>
    </message>
    <message>
        <source>Second encoder</source>
        <translation>Zweiter Encoder</translation>
    </message>
    <message>
        <source>%1 turns an output turn</source>
        <translation>%1 Umdrehungen je Abtriebsumdrehung</translation>
    </message>
    <message>
        <source>Homing flag</source>
        <translation>Schaltfahne</translation>
    </message>
    <message>
        <source>Encoder's magnet</source>
        <translation>Magnet des Encoders</translation>
    </message>
    <message>
        <source>thickness %1</source>
        <translation>Dicke %1</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>%1 apart</source>
        <translation>%1 auseinander</translation>
    </message>
    <message>
        <source>Screw of the joint</source>
        <translation>Schraube der Verbindung</translation>
    </message>
    <message>
        <source>circle ⌀ %1</source>
        <translation>Lochkreis ⌀ %1</translation>
    </message>
    <message>
        <source>tightened with %1</source>
        <translation>mit %1 angezogen</translation>
    </message>
    <message>
        <source>Slip ring</source>
        <translation>Schleifring</translation>
    </message>
    <message>
        <source>%1 free</source>
        <translation>%1 frei</translation>
    </message>
    <message>
        <source>bend radius %1</source>
        <translation>Biegeradius %1</translation>
    </message>
    <message>
        <source>%1 circuits</source>
        <translation>%1 Kreise</translation>
    </message>
    <message>
        <source>Camera</source>
        <translation>Kamera</translation>
    </message>
    <message>
        <source>%1 columns</source>
        <translation>%1 Spalten</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 Zeilen</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Versorgung</translation>
    </message>
    <message>
        <source>Bus capacitors</source>
        <translation>Kondensatoren am Zwischenkreis</translation>
    </message>
    <message>
        <source>Brake resistor</source>
        <translation>Bremswiderstand</translation>
    </message>
    <message>
        <source>Fuse</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Körper</translation>
    </message>
    <message>
        <source>the shutter is global: camera.readout is 0</source>
        <translation>der Verschluss ist global: camera.readout ist 0</translation>
    </message>
    <message>
        <source>Picture scale at the centre</source>
        <translation>Bildmaßstab in der Mitte</translation>
    </message>
    <message>
        <source>pinhole camera, Hartley &amp; Zisserman</source>
        <translation>Lochkamera, Hartley &amp; Zisserman</translation>
    </message>
    <message>
        <source>Smear at pan top speed</source>
        <translation>Verwischung bei Pan-Höchstdrehzahl</translation>
    </message>
    <message>
        <source>pixels_per_radian · pan speed_top · exposure</source>
        <translation>pixels_per_radian · Pan speed_top · Belichtung</translation>
    </message>
    <message>
        <source>Smear at tilt top speed</source>
        <translation>Verwischung bei Tilt-Höchstdrehzahl</translation>
    </message>
    <message>
        <source>pixels_per_radian · tilt speed_top · exposure</source>
        <translation>pixels_per_radian · Tilt speed_top · Belichtung</translation>
    </message>
    <message>
        <source>Lean of upright lines at pan top speed</source>
        <translation>Schrägverzug senkrechter Linien bei Pan-Höchstdrehzahl</translation>
    </message>
    <message>
        <source>pixels_per_radian · pan speed_top · readout</source>
        <translation>pixels_per_radian · Pan speed_top · Auslesezeit</translation>
    </message>
    <message>
        <source>rolling shutter, row by row</source>
        <translation>Rolling Shutter, Zeile für Zeile</translation>
    </message>
    <message>
        <source>Stretch of the picture at tilt top speed</source>
        <translation>Streckung des Bildes bei Tilt-Höchstdrehzahl</translation>
    </message>
    <message>
        <source>pixels_per_radian · tilt speed_top · readout</source>
        <translation>pixels_per_radian · Tilt speed_top · Auslesezeit</translation>
    </message>
    <message>
        <source>Fastest speed with a smear of one pixel</source>
        <translation>Höchste Drehzahl mit einem Pixel Verwischung</translation>
    </message>
    <message>
        <source>1/(pixels_per_radian · exposure)</source>
        <translation>1/(pixels_per_radian · Belichtung)</translation>
    </message>
    <message>
        <source>Fastest speed with a lean of one pixel</source>
        <translation>Höchste Drehzahl mit einem Pixel Schrägverzug</translation>
    </message>
    <message>
        <source>1/(pixels_per_radian · readout)</source>
        <translation>1/(pixels_per_radian · Auslesezeit)</translation>
    </message>
    <message>
        <source>Longest exposure with a smear of one pixel at pan top speed</source>
        <translation>Längste Belichtung mit einem Pixel Verwischung bei Pan-Höchstdrehzahl</translation>
    </message>
    <message>
        <source>1/(pixels_per_radian · pan speed_top)</source>
        <translation>1/(pixels_per_radian · Pan speed_top)</translation>
    </message>
    <message>
        <source>Pointing error in the gap</source>
        <translation>Ausrichtfehler im Spiel</translation>
    </message>
    <message>
        <source>geometry: the load rests anywhere in the gap</source>
        <translation>Geometrie: die Last ruht irgendwo im Spiel</translation>
    </message>
    <message>
        <source>The whole gap in the picture</source>
        <translation>Das ganze Spiel im Bild</translation>
    </message>
    <message>
        <source>backlash · pixels_per_radian</source>
        <translation>Spiel · pixels_per_radian</translation>
    </message>
    <message>
        <source>Pan against a human saccade</source>
        <translation>Pan im Vergleich zu einer menschlichen Sakkade</translation>
    </message>
    <message>
        <source>pan settle_time / (2.2 ms/° · move + 21 ms)</source>
        <translation>Pan settle_time / (2.2 ms/° · Bewegung + 21 ms)</translation>
    </message>
    <message>
        <source>Carpenter, Movements of the Eyes, 1988 (attribution from memory); people scatter ±20 %</source>
        <translation>Carpenter, Movements of the Eyes, 1988 (Zuschreibung aus dem Gedächtnis); Menschen streuen ±20 %</translation>
    </message>
    <message>
        <source>, its count rectangular</source>
        <translation>, sein Inkrement rechteckig</translation>
    </message>
    <message>
        <source>, tilt at %1</source>
        <translation>, die Neigung bei %1</translation>
    </message>
    <message>
        <source>, pan at %1</source>
        <translation>, der Schwenk bei %1</translation>
    </message>
    <message>
        <source>the gearbox locks itself: the load cannot turn it</source>
        <translation>das Getriebe ist selbsthemmend: die Last kann es nicht drehen</translation>
    </message>
    <message>
        <source>friction %1 and the gearbox driven back %2 against %3 at the worst angle%4</source>
        <translation>Reibung %1 und das rückwärts getriebene Getriebe %2 gegen %3 beim ungünstigsten Winkel%4</translation>
    </message>
    <message>
        <source>gravity and the cable's spring</source>
        <translation>Schwerkraft und Federkraft des Kabels</translation>
    </message>
    <message>
        <source>gravity</source>
        <translation>Schwerkraft</translation>
    </message>
    <message>
        <source>: it turns by itself, mind fingers in its way; a counterweight, a softer cable or a brake would keep it</source>
        <translation>: sie dreht von selbst, auf Finger in ihrem Weg achten; ein Gegengewicht, ein weicheres Kabel oder eine Bremse würde sie halten</translation>
    </message>
    <message>
        <source>: it falls, mind fingers in its way; a counterweight or a brake would keep it</source>
        <translation>: sie fällt, auf Finger in ihrem Weg achten; ein Gegengewicht oder eine Bremse würde sie halten</translation>
    </message>
    <message>
        <source>power drops at %1 where gravity and cable carry it on the most: it </source>
        <translation>der Strom fällt bei %1 aus, wo Schwerkraft und Kabel am weitesten treiben: die Achse </translation>
    </message>
    <message>
        <source>power drops at %1 at the soft limit, %2 before the stop: it </source>
        <translation>der Strom fällt bei %1 am Softlimit aus, %2 vor dem Anschlag: die Achse </translation>
    </message>
    <message>
        <source>comes to rest before it</source>
        <translation>kommt davor zur Ruhe</translation>
    </message>
    <message>
        <source>coasts into it at %1 with %2</source>
        <translation>läuft mit %1 und %2 hinein</translation>
    </message>
    <message>
        <source>%1; no peak torque of the gearbox is stated</source>
        <translation>%1; für das Getriebe ist kein Spitzenmoment angegeben</translation>
    </message>
    <message>
        <source>Stays where it is without power</source>
        <translation>Bleibt stromlos stehen</translation>
    </message>
    <message>
        <source>would keep it from falling</source>
        <translation>würde sie am Fallen hindern</translation>
    </message>
    <message>
        <source>Coasting into the stop when power drops</source>
        <translation>Auslaufen in den Anschlag bei Stromausfall</translation>
    </message>
    <message>
        <source>gravity and cable together are</source>
        <translation>Schwerkraft und Kabel zusammen sind</translation>
    </message>
    <message>
        <source>gravity is</source>
        <translation>die Schwerkraft ist</translation>
    </message>
    <message>
        <source>coasts into the stop: nothing slows it</source>
        <translation>läuft in den Anschlag aus: nichts bremst</translation>
    </message>
    <message>
        <source>coasts into the stop: %1 more than friction, it goes on at %2</source>
        <translation>läuft in den Anschlag aus: %1 größer als die Reibung, es geht mit %2 weiter</translation>
    </message>
    <message>
        <source>coasts into the stop: %1 more than what slows it</source>
        <translation>läuft in den Anschlag aus: %1 größer als das, was bremst</translation>
    </message>
    <message>
        <source>energy of the rigid train; handbook: travel</source>
        <translation>Energie des starren Antriebsstrangs; Handbuch: travel</translation>
    </message>
    <message>
        <source>Angle it coasts from top speed without power</source>
        <translation>Auslaufwinkel aus Höchstdrehzahl ohne Strom</translation>
    </message>
    <message>
        <source>∫ ω/deceleration dω up to speed_top, motor open, worst |gravity + cable| pushing on</source>
        <translation>∫ ω/Verzögerung dω bis speed_top, Motor offen, größtes treibendes |Schwerkraft + Kabel|</translation>
    </message>
    <message>
        <source>Angle it coasts with the motor's phases shorted</source>
        <translation>Auslaufwinkel mit kurzgeschlossenen Motorphasen</translation>
    </message>
    <message>
        <source>the same with T = Kt·e·R/(R² + X²), e = Kt·ω_m/1.5, X = p·ω_m·L</source>
        <translation>ebenso mit T = Kt·e·R/(R² + X²), e = Kt·ω_m/1,5, X = p·ω_m·L</translation>
    </message>
    <message>
        <source>steady short circuit of a synchronous machine, from memory; handbook: travel</source>
        <translation>Dauerkurzschluss einer Synchronmaschine, aus dem Gedächtnis; Handbuch: travel</translation>
    </message>
    <message>
        <source>Torque that friction holds without power</source>
        <translation>Moment, das die Reibung ohne Strom hält</translation>
    </message>
    <message>
        <source>coulomb + N·drag/η_back</source>
        <translation>Coulomb-Reibung + N·Schleppmoment/η_back</translation>
    </message>
    <message>
        <source>statics of a gear that its load drives; handbook: travel</source>
        <translation>Statik eines von der Last getriebenen Getriebes; Handbuch: travel</translation>
    </message>
    <message>
        <source>Speed into the hard stop when power drops, if the loop's limit fails</source>
        <translation>Drehzahl am harten Anschlag bei Stromausfall, falls die Grenze der Regelung versagt</translation>
    </message>
    <message>
        <source>dω²/dφ = −2·deceleration from speed_top, motor open, at the worst place between the soft limits</source>
        <translation>dω²/dφ = −2·Verzögerung ab speed_top, Motor offen, an der ungünstigsten Stelle zwischen den Softlimits</translation>
    </message>
    <message>
        <source>Speed into the hard stop when power drops at the loop's limit</source>
        <translation>Drehzahl am harten Anschlag bei Stromausfall an der Grenze der Regelung</translation>
    </message>
    <message>
        <source>the same from min(speed_top, loop.speed_limit)</source>
        <translation>dasselbe ab min(speed_top, loop.speed_limit)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (demand %2, capacity %3)</source>
        <translation>%1 (Bedarf %2, Vermögen %3)</translation>
    </message>
    <message>
        <source>%1, but then this fails: %2</source>
        <translation>%1, aber dann versagt: %2</translation>
    </message>
    <message>
        <source>never settles along this profile</source>
        <translation>schwingt mit diesem Profil nie ein</translation>
    </message>
    <message>
        <source>simulation of design section 5 along the profile; handbook: profiles</source>
        <translation>Simulation nach Entwurfsabschnitt 5 entlang des Profils; Handbuch: profiles</translation>
    </message>
    <message>
        <source>the camera swings on its bracket for longer than 30 s</source>
        <translation>die Kamera schwingt auf ihrem Halter länger als 30 s</translation>
    </message>
    <message>
        <source>planned time</source>
        <translation>geplante Zeit</translation>
    </message>
    <message>
        <source>length of the planned move</source>
        <translation>Dauer der geplanten Bewegung</translation>
    </message>
    <message>
        <source>move and settle</source>
        <translation>bis zur Ruhe</translation>
    </message>
    <message>
        <source>last time outside ± settle band</source>
        <translation>letzter Zeitpunkt außerhalb ± Einschwingband</translation>
    </message>
    <message>
        <source>peak phase current</source>
        <translation>Spitze des Phasenstroms</translation>
    </message>
    <message>
        <source>RMS phase current</source>
        <translation>Effektivwert des Phasenstroms</translation>
    </message>
    <message>
        <source>root of the mean square of the phase amplitude from start to settled</source>
        <translation>quadratischer Mittelwert der Phasenamplitude vom Start bis zum Ende des Einschwingens</translation>
    </message>
    <message>
        <source>ringing at the camera</source>
        <translation>Nachschwingen an der Kamera</translation>
    </message>
    <message>
        <source>amplitude of the bracket's swing when move and settling are over · pixels_per_radian</source>
        <translation>Amplitude der Halterschwingung nach Bewegung und Einschwingen · pixels_per_radian</translation>
    </message>
    <message>
        <source>picture usable</source>
        <translation>Bild brauchbar</translation>
    </message>
    <message>
        <source>camera settled, with the bracket's ringing where its stiffness is entered, + exposure + delay</source>
        <translation>Kamera eingeschwungen, mit Nachschwingen des Halters, wo seine Steifigkeit eingetragen ist, + Belichtung + Verzögerung</translation>
    </message>
    <message>
        <source>Swing of the bracket</source>
        <translation>Schwingen des Halters</translation>
    </message>
    <message>
        <source>handbook: profiles; all that the axis turns on one spring</source>
        <translation>Handbuch: profiles; alles, was die Achse dreht, an einer Feder</translation>
    </message>
    <message>
        <source>Move and settle at the camera</source>
        <translation>Bewegen und Einschwingen an der Kamera</translation>
    </message>
    <message>
        <source>last time output and the bracket's swing together are outside ± settle band</source>
        <translation>letzter Zeitpunkt, zu dem Ausgang und Halterschwingung zusammen außerhalb ± Einschwingband sind</translation>
    </message>
    <message>
        <source>simulation of design section 5; handbook: profiles</source>
        <translation>Simulation nach Entwurfsabschnitt 5; Handbuch: profiles</translation>
    </message>
    <message>
        <source>Picture usable after the step</source>
        <translation>Bild brauchbar nach dem Sprung</translation>
    </message>
    <message>
        <source>planned to take %1: what takes longer than %2 is not simulated</source>
        <translation>geplante Dauer %1: was länger als %2 dauert, wird nicht simuliert</translation>
    </message>
    <message>
        <source>; no planned move is quicker</source>
        <translation>; keine geplante Bewegung ist schneller</translation>
    </message>
    <message>
        <source>; the plain step never settles</source>
        <translation>; der einfache Sprung schwingt nie ein</translation>
    </message>
    <message>
        <source>, %1 before the plain step</source>
        <translation>, %1 vor dem einfachen Sprung</translation>
    </message>
    <message>
        <source>, with %1 at most instead of %2</source>
        <translation>, mit höchstens %1 statt %2</translation>
    </message>
    <message>
        <source>no profile settles</source>
        <translation>kein Profil schwingt ein</translation>
    </message>
    <message>
        <source> gives a usable picture first, after </source>
        <translation> liefert als erstes ein brauchbares Bild, nach </translation>
    </message>
    <message>
        <source> settles first, after </source>
        <translation> schwingt als erstes ein, nach </translation>
    </message>
    <message>
        <source>; without speed feed-forward every planned move trails behind its plan</source>
        <translation>; ohne Drehzahlvorsteuerung hinkt jede geplante Bewegung ihrem Plan hinterher</translation>
    </message>
    <message>
        <source>&lt;axis&gt;.stops and &lt;axis&gt;.cable</source>
        <translation>&lt;axis&gt;.stops und &lt;axis&gt;.cable</translation>
    </message>
    <message>
        <source>pan stop</source>
        <translation>Pan-Anschlag</translation>
    </message>
    <message>
        <source>pan cable</source>
        <translation>Pan-Kabel</translation>
    </message>
    <message>
        <source>pan soft limit</source>
        <translation>Pan-Softlimit</translation>
    </message>
    <message>
        <source>tilt stop</source>
        <translation>Tilt-Anschlag</translation>
    </message>
    <message>
        <source>tilt cable</source>
        <translation>Tilt-Kabel</translation>
    </message>
    <message>
        <source>tilt soft limit</source>
        <translation>Tilt-Softlimit</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 and %2, %3 deep in each other</source>
        <translation>%1 und %2, %3 tief ineinander</translation>
    </message>
    <message>
        <source>; left out, as they touch at rest: %1</source>
        <translation>; weggelassen, weil sie sich in Ruhe berühren: %1</translation>
    </message>
    <message>
        <source>; where they do not belong together, move one or make it smaller</source>
        <translation>; wo sie nicht zusammengehören, eines verschieben oder kleiner machen</translation>
    </message>
    <message>
        <source>; without a shape and left out: %1</source>
        <translation>; ohne Form und ausgelassen: %1</translation>
    </message>
    <message>
        <source>%1 meets %2 at tilt %3</source>
        <translation>%1 trifft auf %2 bei Tilt %3</translation>
    </message>
    <message>
        <source>nothing is met within half a turn%1</source>
        <translation>keine Berührung innerhalb einer halben Umdrehung%1</translation>
    </message>
    <message>
        <source>a keep-out</source>
        <translation>ein Sperrbereich</translation>
    </message>
    <message>
        <source>no keep-out lies across the move</source>
        <translation>kein Sperrbereich liegt im Weg der Bewegung</translation>
    </message>
    <message>
        <source>the rest pose itself is in %1</source>
        <translation>die Ruhelage selbst liegt in %1</translation>
    </message>
    <message>
        <source>%1 lies %2 from the rest pose</source>
        <translation>%1 liegt %2 von der Ruhelage entfernt</translation>
    </message>
    <message>
        <source>Bodies stay clear over the travel</source>
        <translation>Körper im Verfahrbereich kollisionsfrei</translation>
    </message>
    <message>
        <source>would stop it before they meet</source>
        <translation>würde vor der Berührung anhalten</translation>
    </message>
    <message>
        <source>The task's move stays out of the keep-outs</source>
        <translation>Die Bewegung der Aufgabe bleibt außerhalb der Sperrbereiche</translation>
    </message>
    <message>
        <source>would stay out of it</source>
        <translation>würde außerhalb bleiben</translation>
    </message>
    <message>
        <source>nothing is met within half a turn</source>
        <translation>keine Berührung innerhalb einer halben Umdrehung</translation>
    </message>
    <message>
        <source>needs the usable travel: stops and cable</source>
        <translation>braucht den nutzbaren Verfahrbereich: Anschläge und Kabel</translation>
    </message>
    <message>
        <source>there is no blind sector: every direction is near</source>
        <translation>es gibt keinen blinden Sektor: jede Richtung ist nah</translation>
    </message>
    <message>
        <source>it cannot make a move as long as its travel</source>
        <translation>eine Bewegung über den ganzen Verfahrbereich ist nicht möglich</translation>
    </message>
    <message>
        <source>geometry; handbook: reach</source>
        <translation>Geometrie; Handbuch: reach</translation>
    </message>
    <message>
        <source>needs the usable travel of pan and tilt: stops and cable</source>
        <translation>braucht den nutzbaren Verfahrbereich von Pan und Tilt: Anschläge und Kabel</translation>
    </message>
    <message>
        <source>First collision looking down</source>
        <translation>Erste Kollision beim Blick nach unten</translation>
    </message>
    <message>
        <source>first tilt below 0 at which a body that tilts is within 0.1 mm of another</source>
        <translation>erster Tilt-Winkel unter 0, bei dem ein Körper am Tilt einem anderen auf 0,1 mm nahe kommt</translation>
    </message>
    <message>
        <source>First collision looking up</source>
        <translation>Erste Kollision beim Blick nach oben</translation>
    </message>
    <message>
        <source>first tilt above 0 at which a body that tilts is within 0.1 mm of another</source>
        <translation>erster Tilt-Winkel über 0, bei dem ein Körper am Tilt einem anderen auf 0,1 mm nahe kommt</translation>
    </message>
    <message>
        <source>Time of the long way round</source>
        <translation>Zeit für den langen Weg herum</translation>
    </message>
    <message>
        <source>shortest move over the usable travel, no faster than the speed limits; the slower way</source>
        <translation>kürzeste Bewegung über den nutzbaren Verfahrbereich, nicht schneller als die Drehzahlgrenzen; die langsamere Richtung</translation>
    </message>
    <message>
        <source>handbook: reach</source>
        <translation>Handbuch: reach</translation>
    </message>
    <message>
        <source>Share of the sphere it can point at</source>
        <translation>Anteil der Kugel, auf den gezielt werden kann</translation>
    </message>
    <message>
        <source>Σ Δpan·(sin b − sin a)/4π over the usable poses</source>
        <translation>Σ Δpan·(sin b − sin a)/4π über die nutzbaren Stellungen</translation>
    </message>
    <message>
        <source>Share of the sphere it can see</source>
        <translation>Anteil der Kugel, der zu sehen ist</translation>
    </message>
    <message>
        <source>directions in the picture at some usable pose, in rings of a quarter degree</source>
        <translation>Richtungen, die in einer nutzbaren Stellung im Bild liegen, in Ringen von einem Viertelgrad</translation>
    </message>
    <message>
        <source>more than 10⁶ h</source>
        <translation>mehr als 10⁶ h</translation>
    </message>
    <message>
        <source>needs </source>
        <translation>braucht </translation>
    </message>
    <message>
        <source> and %1 more</source>
        <translation> und %1 weitere</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 ist %2</translation>
    </message>
    <message>
        <source>%1; advised: %2</source>
        <translation>%1; empfohlen: %2</translation>
    </message>
    <message>
        <source>for a drive that reads its speed at the output: %1</source>
        <translation>für einen Regler, der seine Drehzahl am Abtrieb liest: %1</translation>
    </message>
    <message>
        <source>%1 to %2 would do</source>
        <translation>%1 bis %2 würden genügen</translation>
    </message>
    <message>
        <source>the same at output and motor</source>
        <translation>an Abtrieb und Motor gleich</translation>
    </message>
    <message>
        <source>push to a stop</source>
        <translation>gegen einen Anschlag fahren</translation>
    </message>
    <message>
        <source>pass a flag</source>
        <translation>an einer Schaltfahne vorbeifahren</translation>
    </message>
    <message>
        <source>read the encoder at the output</source>
        <translation>den Encoder am Abtrieb lesen</translation>
    </message>
    <message>
        <source>compare two encoders</source>
        <translation>zwei Encoder vergleichen</translation>
    </message>
    <message>
        <source>not entered: lower than %1, to which the task's moves pull the bus</source>
        <translation>nicht eingetragen: tiefer als %1, wohin die Bewegungen der Aufgabe den Zwischenkreis ziehen</translation>
    </message>
    <message>
        <source>not entered: lower than %1 less what is lost under load</source>
        <translation>nicht eingetragen: tiefer als %1 abzüglich dessen, was unter Last verloren geht</translation>
    </message>
    <message>
        <source>Speed gain, at the output</source>
        <translation>Drehzahlverstärkung, am Abtrieb</translation>
    </message>
    <message>
        <source>Speed gain, at the motor</source>
        <translation>Drehzahlverstärkung, am Motor</translation>
    </message>
    <message>
        <source>Speed gain, as current at the motor</source>
        <translation>Drehzahlverstärkung, als Strom am Motor</translation>
    </message>
    <message>
        <source>K/N²; N·m per turn/s</source>
        <translation>K/N²; N·m je Umdrehung/s</translation>
    </message>
    <message>
        <source>K/(N²·Kt); A per rad/s</source>
        <translation>K/(N²·Kt); A je rad/s</translation>
    </message>
    <message>
        <source>Speed integral gain, at the output</source>
        <translation>Integralverstärkung der Drehzahl, am Abtrieb</translation>
    </message>
    <message>
        <source>Speed integral gain, at the motor</source>
        <translation>Integralverstärkung der Drehzahl, am Motor</translation>
    </message>
    <message>
        <source>Speed integral gain, as current at the motor</source>
        <translation>Integralverstärkung der Drehzahl, als Strom am Motor</translation>
    </message>
    <message>
        <source>K/N²; N·m a second per turn/s</source>
        <translation>K/N²; N·m in der Sekunde je Umdrehung/s</translation>
    </message>
    <message>
        <source>K/(N²·Kt); A a second per rad/s</source>
        <translation>K/(N²·Kt); A in der Sekunde je rad/s</translation>
    </message>
    <message>
        <source>Loops</source>
        <translation>Regelkreise</translation>
    </message>
    <message>
        <source>Homing</source>
        <translation>Referenzfahrt</translation>
    </message>
    <message>
        <source>Homing speed</source>
        <translation>Drehzahl der Referenzfahrt</translation>
    </message>
    <message>
        <source>Homing speed, at the motor</source>
        <translation>Drehzahl der Referenzfahrt, am Motor</translation>
    </message>
    <message>
        <source>Bus</source>
        <translation>Zwischenkreis</translation>
    </message>
    <message>
        <source>Bus voltage</source>
        <translation>Zwischenkreisspannung</translation>
    </message>
    <message>
        <source>Over-voltage trip</source>
        <translation>Abschaltung bei Überspannung</translation>
    </message>
    <message>
        <source>Under-voltage trip</source>
        <translation>Abschaltung bei Unterspannung</translation>
    </message>
    <message>
        <source>Current that may be drawn</source>
        <translation>Strom, der entnommen werden darf</translation>
    </message>
    <message>
        <source>Current that may flow back</source>
        <translation>Strom, der zurückfließen darf</translation>
    </message>
    <message>
        <source>not entered: the usual value</source>
        <translation>nicht eingetragen: der übliche Wert</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>sticks and slips below %1: friction falls faster than the loops hold</source>
        <translation>ruckt unter %1 durch Haften und Gleiten: die Reibung fällt schneller, als die Regelkreise halten</translation>
    </message>
    <message>
        <source>cogging shakes it most at %1</source>
        <translation>das Rastmoment rüttelt am stärksten bei %1</translation>
    </message>
    <message>
        <source>; steady from %1 on</source>
        <translation>; gleichmäßig ab %1</translation>
    </message>
    <message>
        <source>Slow moves without jerks</source>
        <translation>Langsame Bewegungen ohne Rucken</translation>
    </message>
    <message>
        <source>would keep slow moves within the settle band</source>
        <translation>würde langsame Bewegungen im Einschwingband halten</translation>
    </message>
    <message>
        <source>the loops swing by themselves: no speed is steady</source>
        <translation>die Regelkreise schwingen von selbst: keine Drehzahl ist gleichmäßig</translation>
    </message>
    <message>
        <source>no breakaway torque above the Coulomb friction is entered</source>
        <translation>kein Losbrechmoment über der Coulomb-Reibung eingetragen</translation>
    </message>
    <message>
        <source>Lowest steady speed</source>
        <translation>Kleinste gleichmäßige Drehzahl</translation>
    </message>
    <message>
        <source>the largest of the limits by friction, cogging and encoder</source>
        <translation>die größte der Grenzen durch Reibung, Rastmoment und Encoder</translation>
    </message>
    <message>
        <source>Lowest speed without stick-slip</source>
        <translation>Kleinste Drehzahl ohne Ruckgleiten</translation>
    </message>
    <message>
        <source>where the friction falls with speed as steeply as the loops just stand; 0: nowhere</source>
        <translation>wo die Reibung so steil mit der Drehzahl fällt, wie die Regelkreise gerade noch halten; 0: nirgends</translation>
    </message>
    <message>
        <source>Armstrong-Hélouvry's curve, stability of the sampled loop; handbook: smoothness</source>
        <translation>Kurve nach Armstrong-Hélouvry, Stabilität des abgetasteten Regelkreises; Handbuch: smoothness</translation>
    </message>
    <message>
        <source>Lowest speed over the cogging</source>
        <translation>Kleinste Drehzahl über dem Rastmoment</translation>
    </message>
    <message>
        <source>where cogging_torque·periods·N·|compliance| is 1: the ripple's speed is the mean speed</source>
        <translation>wo cogging_torque·Perioden·N·|Nachgiebigkeit| 1 ist: die Drehzahl der Welligkeit ist die mittlere</translation>
    </message>
    <message>
        <source>Lowest speed over the counts</source>
        <translation>Kleinste Drehzahl über den Inkrementen</translation>
    </message>
    <message>
        <source>where the loops' gain for reading errors at speed/count is 1/2: the ripple's speed is the mean speed</source>
        <translation>wo die Verstärkung der Regelkreise für Lesefehler bei Drehzahl/Inkrement 1/2 ist: die Drehzahl der Welligkeit ist die mittlere</translation>
    </message>
    <message>
        <source>Speed of one count in a sample</source>
        <translation>Drehzahl bei einem Inkrement je Abtastung</translation>
    </message>
    <message>
        <source>(1 − exp(−2π·estimator_bandwidth·dt))·count/dt</source>
        <translation>(1 − exp(−2π·estimator_bandwidth·dt))·Inkrement/dt</translation>
    </message>
    <message>
        <source>design section 5</source>
        <translation>Entwurfsabschnitt 5</translation>
    </message>
    <message>
        <source>Ripple at the lowest steady speed</source>
        <translation>Welligkeit bei der kleinsten gleichmäßigen Drehzahl</translation>
    </message>
    <message>
        <source>(cogging_torque·|compliance| + count/π·|gain for reading errors|)·pixels_per_radian</source>
        <translation>(cogging_torque·|Nachgiebigkeit| + Inkrement/π·|Verstärkung für Lesefehler|)·pixels_per_radian</translation>
    </message>
    <message>
        <source>Cogging at the lowest steady speed</source>
        <translation>Rastmoment bei der kleinsten gleichmäßigen Drehzahl</translation>
    </message>
    <message>
        <source>Speed of the worst cogging ripple</source>
        <translation>Drehzahl der größten Rastwelligkeit</translation>
    </message>
    <message>
        <source>where |compliance| at periods·N·speed is largest</source>
        <translation>wo |Nachgiebigkeit| bei Perioden·N·Drehzahl am größten ist</translation>
    </message>
    <message>
        <source>Worst cogging ripple</source>
        <translation>Größte Rastwelligkeit</translation>
    </message>
    <message>
        <source>cogging_torque·largest |compliance|·pixels_per_radian</source>
        <translation>cogging_torque·größte |Nachgiebigkeit|·pixels_per_radian</translation>
    </message>
    <message>
        <source>Jump when it breaks away</source>
        <translation>Sprung beim Losbrechen</translation>
    </message>
    <message>
        <source>2·(breakaway − coulomb)·(1/(speed_gain·position_gain + speed_integral_gain) + 1/stiffness)·pixels_per_radian</source>
        <translation>2·(Losbrechen − Coulomb-Reibung)·(1/(speed_gain·position_gain + speed_integral_gain) + 1/Steifigkeit)·pixels_per_radian</translation>
    </message>
    <message>
        <source>a mass on a spring, undamped; handbook: smoothness</source>
        <translation>eine Masse an einer Feder, ungedämpft; Handbuch: smoothness</translation>
    </message>
    <message>
        <source>it is screwed down</source>
        <translation>es ist festgeschraubt</translation>
    </message>
    <message>
        <source>both axes' fastest moves at once push with %1, lean and offset with %2; at rest it tips at a lean of %3</source>
        <translation>die schnellsten Bewegungen beider Achsen zugleich drücken mit %1, Neigung und Versatz mit %2; in Ruhe kippt es bei einer Neigung von %3</translation>
    </message>
    <message>
        <source>pan's reaction at the feet %1, masses off their axes %2, lean %3</source>
        <translation>Rückwirkung von Pan an den Füßen %1, Massen neben ihren Achsen %2, Neigung %3</translation>
    </message>
    <message>
        <source>the axis itself never settles</source>
        <translation>die Achse selbst schwingt nie ein</translation>
    </message>
    <message>
        <source>%1%2 (%3 px); its first mode is at %4</source>
        <translation>%1%2 (%3 px); die erste Eigenfrequenz liegt bei %4</translation>
    </message>
    <message>
        <source>pan's move twists it by </source>
        <translation>die Pan-Bewegung verdreht es um </translation>
    </message>
    <message>
        <source>tilt's move sways it by </source>
        <translation>die Tilt-Bewegung lässt es schwanken um </translation>
    </message>
    <message>
        <source>Stand stays on its feet</source>
        <translation>Stativ kippt nicht</translation>
    </message>
    <message>
        <source>would keep it on its feet</source>
        <translation>würde das Kippen verhindern</translation>
    </message>
    <message>
        <source>Feet stay where they stand</source>
        <translation>Füße rutschen nicht</translation>
    </message>
    <message>
        <source>would keep the feet in place</source>
        <translation>würde die Füße am Platz halten</translation>
    </message>
    <message>
        <source>Stand is still when the axis has settled</source>
        <translation>Stativ steht still, wenn die Achse eingeschwungen ist</translation>
    </message>
    <message>
        <source>would leave the stand still</source>
        <translation>würde das Stativ still stehen lassen</translation>
    </message>
    <message>
        <source>the axis never settles</source>
        <translation>die Achse schwingt nie ein</translation>
    </message>
    <message>
        <source>statics of a rigid stand, its own centre at half its height; handbook: structure</source>
        <translation>Statik eines starren Stativs, eigener Schwerpunkt auf halber Höhe; Handbuch: structure</translation>
    </message>
    <message>
        <source>a damped spring at the foot, the task's step of each axis; twist as stiff as sway (a round column's is 0.77 of it); handbook: structure</source>
        <translation>eine gedämpfte Feder am Fuß, der Sprung der Aufgabe für jede Achse; Verdrehen so steif wie Schwanken (bei einer runden Säule das 0,77-Fache); Handbuch: structure</translation>
    </message>
    <message>
        <source>one degree of freedom, the stand as an even column; handbook: structure</source>
        <translation>ein Freiheitsgrad, das Stativ als gleichmäßige Säule; Handbuch: structure</translation>
    </message>
    <message>
        <source>Moment that holds the stand upright</source>
        <translation>Moment, das das Stativ aufrecht hält</translation>
    </message>
    <message>
        <source>(stand.mass + moving mass)·g·cos λ·half_width</source>
        <translation>(stand.mass + bewegte Masse)·g·cos λ·half_width</translation>
    </message>
    <message>
        <source>Moment that tips it at rest</source>
        <translation>Moment, das es in Ruhe kippt</translation>
    </message>
    <message>
        <source>load's offset and lean, the worst pose</source>
        <translation>Versatz der Last und Neigung, ungünstigste Stellung</translation>
    </message>
    <message>
        <source>Lean at which it tips at rest</source>
        <translation>Neigung, bei der es in Ruhe kippt</translation>
    </message>
    <message>
        <source>atan2(mass·half_width − load·offset, masses·heights)</source>
        <translation>atan2(Masse·half_width − Last·Versatz, Massen·Höhen)</translation>
    </message>
    <message>
        <source>Moment that the fastest moves tip it with</source>
        <translation>Moment, mit dem die schnellsten Bewegungen es kippen</translation>
    </message>
    <message>
        <source>tilt's reaction + m·offset·√(α² + ω⁴)·height of both axes at once</source>
        <translation>Rückwirkung von Tilt + m·Versatz·√(α² + ω⁴)·Höhe beider Achsen zugleich</translation>
    </message>
    <message>
        <source>Largest torque that pan turns the stand with</source>
        <translation>Größtes Moment, mit dem Pan das Stativ dreht</translation>
    </message>
    <message>
        <source>(load + N·rotor)·largest acceleration</source>
        <translation>(Last + N·Rotor)·größte Beschleunigung</translation>
    </message>
    <message>
        <source>Friction that keeps the feet in place</source>
        <translation>Reibungszahl, die die Füße am Platz hält</translation>
    </message>
    <message>
        <source>(weight·sin λ + sideways force + pan's reaction/half_width)/(weight·cos λ)</source>
        <translation>(Gewicht·sin λ + Querkraft + Rückwirkung von Pan/half_width)/(Gewicht·cos λ)</translation>
    </message>
    <message>
        <source>First mode of the stand</source>
        <translation>Erste Eigenfrequenz des Stativs</translation>
    </message>
    <message>
        <source>Stand sways in the task's moves</source>
        <translation>Schwanken des Stativs bei den Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>larger one of pan's twist and tilt's sway</source>
        <translation>der größere Wert aus Verdrehen durch Pan und Schwanken durch Tilt</translation>
    </message>
    <message>
        <source>Stand sways in the picture</source>
        <translation>Schwanken des Stativs im Bild</translation>
    </message>
    <message>
        <source>sway · pixels_per_radian</source>
        <translation>Schwanken · pixels_per_radian</translation>
    </message>
    <message>
        <source>Stand turns in the axis' move</source>
        <translation>Drehen des Stativs bei der Bewegung der Achse</translation>
    </message>
    <message>
        <source>largest of x'' + 2ζω·x' + ω²·x = T(t)/J</source>
        <translation>größter Wert aus x'' + 2ζω·x' + ω²·x = T(t)/J</translation>
    </message>
    <message>
        <source>Stand still sways when the axis has settled</source>
        <translation>Restschwanken des Stativs, wenn die Achse eingeschwungen ist</translation>
    </message>
    <message>
        <source>amplitude from settle_time on · pixels_per_radian</source>
        <translation>Amplitude ab settle_time · pixels_per_radian</translation>
    </message>
    <message>
        <source>needs &lt;axis&gt;.stops.hard_stiffness, as its bumper has a travel</source>
        <translation>braucht &lt;axis&gt;.stops.hard_stiffness, da der Puffer einen Weg hat</translation>
    </message>
    <message>
        <source>; a runaway (encoder lost, commutation wrong), which no speed limit holds, would hit with %1 at %2: a stop that bears it or a switch that cuts the supply, and hands off while it is powered</source>
        <translation>; ein Durchgehen (Geber verloren, Kommutierung falsch), das keine Drehzahlgrenze hält, träfe mit %1 bei %2: ein Anschlag, der das aushält, oder ein Schalter, der die Versorgung trennt, und Hände weg, solange sie unter Spannung steht</translation>
    </message>
    <message>
        <source>%1 (full torque over the whole travel reaches no more)</source>
        <translation>%1 (mehr erreicht das volle Moment über den ganzen Weg nicht)</translation>
    </message>
    <message>
        <source>hitting the stop at %1, the drive still pushing; %2 % of the energy is the rotor's</source>
        <translation>Aufprall auf den Anschlag mit %1, der Antriebsregler treibt weiter; %2 % der Energie stammen vom Rotor</translation>
    </message>
    <message>
        <source>; the gear is a spring, and its teeth swing to %1 as it pushes</source>
        <translation>; das Getriebe ist eine Feder, und seine Zähne schwingen beim Nachdrücken bis %1</translation>
    </message>
    <message>
        <source>hitting the stop at %1, the drive still pushing; it bears %2%3</source>
        <translation>Aufprall auf den Anschlag mit %1, der Antriebsregler treibt weiter; er trägt %2%3</translation>
    </message>
    <message>
        <source> as the bumper bottoms out</source>
        <translation> beim Durchschlagen des Puffers</translation>
    </message>
    <message>
        <source>the stop bears %1, a rigid gear would carry %2 of it</source>
        <translation>der Anschlag trägt %1, ein starres Getriebe davon %2</translation>
    </message>
    <message>
        <source>needs &lt;axis&gt;.stops.tab_strength or a material</source>
        <translation>braucht &lt;axis&gt;.stops.tab_strength oder einen Werkstoff</translation>
    </message>
    <message>
        <source>%1 on the tab; its material bears %2 to %3 pulled, the least counts%4</source>
        <translation>%1 auf die Nase; ihr Werkstoff trägt %2 bis %3 auf Zug, der kleinste Wert zählt%4</translation>
    </message>
    <message>
        <source>, less in shear</source>
        <translation>, weniger auf Schub</translation>
    </message>
    <message>
        <source>Stop torque at top speed against gearbox peak</source>
        <translation>Anschlagmoment bei Höchstdrehzahl gegen Spitzenmoment des Getriebes</translation>
    </message>
    <message>
        <source>The bumper takes the blow at top speed</source>
        <translation>Der Puffer fängt den Aufprall bei Höchstdrehzahl auf</translation>
    </message>
    <message>
        <source>would keep the bumper from bottoming out</source>
        <translation>würde den Puffer vor dem Durchschlagen bewahren</translation>
    </message>
    <message>
        <source>Blow through the gearbox against its peak torque</source>
        <translation>Stoß durch das Getriebe gegen dessen Spitzenmoment</translation>
    </message>
    <message>
        <source>would spare the teeth</source>
        <translation>würde die Zähne schonen</translation>
    </message>
    <message>
        <source>The tab bears the bending of the blow</source>
        <translation>Die Nase trägt die Biegung beim Aufprall</translation>
    </message>
    <message>
        <source>would keep the tab whole</source>
        <translation>würde die Nase heil lassen</translation>
    </message>
    <message>
        <source>The tab bears the shear of the blow</source>
        <translation>Die Nase trägt den Schub beim Aufprall</translation>
    </message>
    <message>
        <source>would keep the tab from shearing off</source>
        <translation>würde die Nase vor dem Abscheren bewahren</translation>
    </message>
    <message>
        <source>its stop has no bumper that could bottom out</source>
        <translation>der Anschlag hat keinen Puffer, der durchschlagen könnte</translation>
    </message>
    <message>
        <source>stop and gear are of too different stiffness: take the others</source>
        <translation>Anschlag und Getriebe sind zu verschieden steif: die anderen Werte verwenden</translation>
    </message>
    <message>
        <source>energy balance ½Jω² = ½kφ², Khurmi &amp; Gupta ex. 3.21</source>
        <translation>Energiebilanz ½Jω² = ½kφ², Khurmi &amp; Gupta Bsp. 3.21</translation>
    </message>
    <message>
        <source>energy balance ½Jω² + Tφ = energy of the spring; handbook: stops</source>
        <translation>Energiebilanz ½Jω² + Tφ = Energie der Feder; Handbuch: stops</translation>
    </message>
    <message>
        <source>rigid train of design section 5, integrated; handbook: stops</source>
        <translation>starrer Strang nach Entwurfsabschnitt 5, integriert; Handbuch: stops</translation>
    </message>
    <message>
        <source>kinetic energy; handbook: stops</source>
        <translation>kinetische Energie; Handbuch: stops</translation>
    </message>
    <message>
        <source>bending and shear of a short cantilever; handbook: stops</source>
        <translation>Biegung und Schub eines kurzen Kragträgers; Handbuch: stops</translation>
    </message>
    <message>
        <source>Energy into the stop at top speed</source>
        <translation>Energie in den Anschlag bei Höchstdrehzahl</translation>
    </message>
    <message>
        <source>½·(load + rotor_reflected)·speed_top²</source>
        <translation>½·(Last + rotor_reflected)·speed_top²</translation>
    </message>
    <message>
        <source>Energy into the stop at top speed, load's share</source>
        <translation>Energie in den Anschlag bei Höchstdrehzahl, Anteil der Last</translation>
    </message>
    <message>
        <source>Energy into the stop at top speed, rotor's share</source>
        <translation>Energie in den Anschlag bei Höchstdrehzahl, Anteil des Rotors</translation>
    </message>
    <message>
        <source>Speed of a runaway at the stop</source>
        <translation>Geschwindigkeit am Anschlag beim Durchgehen</translation>
    </message>
    <message>
        <source>from rest at one soft limit to the far stop, full driving torque; the drive's speed limit does not bind</source>
        <translation>aus der Ruhe an einem Softlimit bis zum fernen Anschlag, volles Antriebsmoment; die Drehzahlgrenze des Reglers bindet nicht</translation>
    </message>
    <message>
        <source>Energy of a runaway into the stop</source>
        <translation>Energie in den Anschlag beim Durchgehen</translation>
    </message>
    <message>
        <source>½·(load + rotor_reflected)·runaway_speed²</source>
        <translation>½·(load + rotor_reflected)·runaway_speed²</translation>
    </message>
    <message>
        <source>Torque on the stop at top speed</source>
        <translation>Moment am Anschlag bei Höchstdrehzahl</translation>
    </message>
    <message>
        <source>speed_top·√(stiffness·(load + rotor_reflected)) + torque_stall</source>
        <translation>speed_top·√(Steifigkeit·(Last + rotor_reflected)) + torque_stall</translation>
    </message>
    <message>
        <source>Torque on the stop, bumper and all, drive pushing</source>
        <translation>Moment am Anschlag samt Puffer, Antriebsregler treibt</translation>
    </message>
    <message>
        <source>T + √(T² + stiffness·J·speed_top²), T = torque_stall; past the bumper the second spring</source>
        <translation>T + √(T² + Steifigkeit·J·speed_top²), T = torque_stall; hinter dem Puffer die zweite Feder</translation>
    </message>
    <message>
        <source>Torque on the stop, bumper and all, drive dead</source>
        <translation>Moment am Anschlag samt Puffer, Antriebsregler stromlos</translation>
    </message>
    <message>
        <source>speed_top·√(stiffness·J); past the bumper the second spring</source>
        <translation>speed_top·√(Steifigkeit·J); hinter dem Puffer die zweite Feder</translation>
    </message>
    <message>
        <source>Energy past the soft limit, load's share</source>
        <translation>Energie hinter dem Softlimit, Anteil der Last</translation>
    </message>
    <message>
        <source>Energy past the soft limit, rotor's share</source>
        <translation>Energie hinter dem Softlimit, Anteil des Rotors</translation>
    </message>
    <message>
        <source>Torque on the stop past the soft limit, drive pushing</source>
        <translation>Moment am Anschlag hinter dem Softlimit, Antriebsregler treibt</translation>
    </message>
    <message>
        <source>as torque_pushing, at travel.speed_at_stop; 0 where it stands before the stop</source>
        <translation>wie torque_pushing, bei travel.speed_at_stop; 0, wo es vor dem Anschlag steht</translation>
    </message>
    <message>
        <source>Torque on the stop past the soft limit, drive dead</source>
        <translation>Moment am Anschlag hinter dem Softlimit, Antriebsregler stromlos</translation>
    </message>
    <message>
        <source>as torque_dead, at travel.speed_at_stop</source>
        <translation>wie torque_dead, bei travel.speed_at_stop</translation>
    </message>
    <message>
        <source>How far the stop gives way at top speed</source>
        <translation>Nachgeben des Anschlags bei Höchstdrehzahl</translation>
    </message>
    <message>
        <source>where ½Jω² + Tφ is in the spring</source>
        <translation>wo ½Jω² + Tφ in der Feder steckt</translation>
    </message>
    <message>
        <source>Bumper travel that takes the blow</source>
        <translation>Pufferweg, der den Aufprall auffängt</translation>
    </message>
    <message>
        <source>(T + √(T² + stiffness·J·speed_top²))/stiffness</source>
        <translation>(T + √(T² + Steifigkeit·J·speed_top²))/Steifigkeit</translation>
    </message>
    <message>
        <source>Torque through the gearbox in the blow, gear rigid</source>
        <translation>Moment durch das Getriebe beim Aufprall, Getriebe starr</translation>
    </message>
    <message>
        <source>(torque_pushing·rotor_reflected + T·load)/J</source>
        <translation>(torque_pushing·rotor_reflected + T·Last)/J</translation>
    </message>
    <message>
        <source>equal deceleration; handbook: stops</source>
        <translation>gleiche Verzögerung; Handbuch: stops</translation>
    </message>
    <message>
        <source>Torque through the gearbox in the blow, gear as a spring</source>
        <translation>Moment durch das Getriebe beim Aufprall, Getriebe als Feder</translation>
    </message>
    <message>
        <source>load and rotor about the gear's stiffness, integrated</source>
        <translation>Last und Rotor um die Getriebesteifigkeit, integriert</translation>
    </message>
    <message>
        <source>handbook: stops</source>
        <translation>Handbuch: stops</translation>
    </message>
    <message>
        <source>Most through the gearbox at a stop that gives no way</source>
        <translation>Größtes Moment durch das Getriebe an einem starren Anschlag</translation>
    </message>
    <message>
        <source>speed_top·√(gear stiffness·(rotor_reflected + rebound²·load))</source>
        <translation>speed_top·√(Getriebesteifigkeit·(rotor_reflected + Rückprall²·Last))</translation>
    </message>
    <message>
        <source>energy balance; handbook: stops</source>
        <translation>Energiebilanz; Handbuch: stops</translation>
    </message>
    <message>
        <source>Speed after the blow</source>
        <translation>Drehzahl nach dem Aufprall</translation>
    </message>
    <message>
        <source>definition of the rebound</source>
        <translation>Definition des Rückpralls</translation>
    </message>
    <message>
        <source>Energy given back by the stop</source>
        <translation>Vom Anschlag zurückgegebene Energie</translation>
    </message>
    <message>
        <source>½·(load + rotor_reflected)·rebound_speed²</source>
        <translation>½·(Last + rotor_reflected)·rebound_speed²</translation>
    </message>
    <message>
        <source>Bending stress at the tab's root</source>
        <translation>Biegespannung an der Wurzel der Nase</translation>
    </message>
    <message>
        <source>Shear stress in the tab</source>
        <translation>Schubspannung in der Nase</translation>
    </message>
    <message>
        <source>Tensile strength to count on in the tab</source>
        <translation>Anzusetzende Zugfestigkeit der Nase</translation>
    </message>
    <message>
        <source>entered less its spread, or the least of the material</source>
        <translation>eingetragen abzüglich der Streuung oder der kleinste Wert des Werkstoffs</translation>
    </message>
    <message>
        <source>typical data sheets, from memory; handbook: stops</source>
        <translation>typische Datenblätter, aus dem Gedächtnis; Handbuch: stops</translation>
    </message>
    <message>
        <source>; held to the limit, and more as the bus sags</source>
        <translation>; an der Grenze gehalten, und mehr, weil der Zwischenkreis einbricht</translation>
    </message>
    <message>
        <source>; the drives have to keep their sum within the limit</source>
        <translation>; die Antriebsregler müssen ihre Summe innerhalb der Grenze halten</translation>
    </message>
    <message>
        <source>; what the drives take while idle and the sag come on top</source>
        <translation>; Ruheleistung der Antriebsregler und Spannungseinbruch kommen hinzu</translation>
    </message>
    <message>
        <source>; %1 on the bus</source>
        <translation>; %1 am Zwischenkreis</translation>
    </message>
    <message>
        <source>, or a chopper at %1 with %2 or less,</source>
        <translation>, oder ein Bremschopper bei %1 mit höchstens %2,</translation>
    </message>
    <message>
        <source>%1 would take it</source>
        <translation>%1 würde sie aufnehmen</translation>
    </message>
    <message>
        <source>the chopper would burn power all the time: its voltage is not above the supply's</source>
        <translation>der Bremschopper würde ständig Leistung verheizen: seine Spannung liegt nicht über der Versorgungsspannung</translation>
    </message>
    <message>
        <source>without capacitors nothing holds the bus while braking</source>
        <translation>ohne Kondensatoren hält beim Bremsen nichts den Zwischenkreis</translation>
    </message>
    <message>
        <source> or more</source>
        <translation> oder mehr</translation>
    </message>
    <message>
        <source> or less</source>
        <translation> oder weniger</translation>
    </message>
    <message>
        <source>mean over the duty; while it is on it takes %1: whether it stands such pulses says its data sheet</source>
        <translation>Mittel über das Lastspiel; eingeschaltet nimmt er %1 auf: ob er solche Pulse aushält, sagt sein Datenblatt</translation>
    </message>
    <message>
        <source>the source cannot give the power through its resistance: the voltage collapses</source>
        <translation>die Quelle kann die Leistung über ihren Widerstand nicht liefern: die Spannung bricht zusammen</translation>
    </message>
    <message>
        <source>%1 of %2 in source and leads at %3; the moves are computed without it; %4</source>
        <translation>%1 von %2 in Quelle und Zuleitungen bei %3; die Bewegungen sind ohne dies gerechnet; %4</translation>
    </message>
    <message>
        <source>out and back %1 at %2; %3</source>
        <translation>hin und zurück %1 bei %2; %3</translation>
    </message>
    <message>
        <source>%1 circular mil per ampere</source>
        <translation>%1 Circular Mil je Ampere</translation>
    </message>
    <message>
        <source>RMS over the duty; %1, for wires in a bundle</source>
        <translation>Effektivwert über das Lastspiel; %1, für Adern im Bündel</translation>
    </message>
    <message>
        <source>twice</source>
        <translation>das Doppelte</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation>%1-mal</translation>
    </message>
    <message>
        <source>peaks reach %1, %2 of its rating: compare with its time-current curve, the charging of the capacitors at switching on too</source>
        <translation>Spitzen erreichen %1, %2 des Nennstroms: mit der Zeit-Strom-Kennlinie vergleichen, auch das Laden der Kondensatoren beim Einschalten</translation>
    </message>
    <message>
        <source>RMS over the duty at %1 of the rating; </source>
        <translation>Effektivwert über das Lastspiel bei %1 des Nennstroms; </translation>
    </message>
    <message>
        <source>%1 the rating for short peaks; </source>
        <translation>%1 der Nennstrom für kurze Spitzen; </translation>
    </message>
    <message>
        <source>the fuse has to open before the lead's insulation burns: %1 circular mil per ampere of it; local codes may ask for less</source>
        <translation>die Sicherung muss auslösen, bevor die Isolierung der Zuleitung brennt: %1 circular mil je Ampere von ihr; örtliche Vorschriften können weniger verlangen</translation>
    </message>
    <message>
        <source>Supply gives the current of the worst moves</source>
        <translation>Versorgung liefert den Strom der ungünstigsten Bewegungen</translation>
    </message>
    <message>
        <source>would give it</source>
        <translation>würde ihn liefern</translation>
    </message>
    <message>
        <source>Bus stays below the trip voltage</source>
        <translation>Zwischenkreis unter der Abschaltspannung</translation>
    </message>
    <message>
        <source>would keep the bus below it</source>
        <translation>würde den Zwischenkreis darunter halten</translation>
    </message>
    <message>
        <source>Brake resistor bears its average power</source>
        <translation>Bremswiderstand verträgt seine mittlere Leistung</translation>
    </message>
    <message>
        <source>would spare the resistor</source>
        <translation>würde den Widerstand schonen</translation>
    </message>
    <message>
        <source>Voltage holds under load</source>
        <translation>Spannung hält unter Last</translation>
    </message>
    <message>
        <source>would hold the voltage</source>
        <translation>würde die Spannung halten</translation>
    </message>
    <message>
        <source>Voltage drop in the supply's leads</source>
        <translation>Spannungsabfall in den Zuleitungen der Versorgung</translation>
    </message>
    <message>
        <source>would keep the drop small</source>
        <translation>würde den Abfall klein halten</translation>
    </message>
    <message>
        <source>Supply's leads bear the current</source>
        <translation>Zuleitungen der Versorgung tragen den Strom</translation>
    </message>
    <message>
        <source>would keep the leads cool</source>
        <translation>würde die Zuleitungen kühl halten</translation>
    </message>
    <message>
        <source>Fuse carries the current</source>
        <translation>Sicherung trägt den Strom</translation>
    </message>
    <message>
        <source>would carry it</source>
        <translation>würde ihn tragen</translation>
    </message>
    <message>
        <source>Fuse protects the leads</source>
        <translation>Sicherung schützt die Zuleitungen</translation>
    </message>
    <message>
        <source>would be protected</source>
        <translation>wäre geschützt</translation>
    </message>
    <message>
        <source>no moves were found</source>
        <translation>keine Bewegungen gefunden</translation>
    </message>
    <message>
        <source>the chopper's voltage is not above the supply's</source>
        <translation>die Spannung des Bremschoppers liegt nicht über der Versorgungsspannung</translation>
    </message>
    <message>
        <source>nothing is returned that the source does not absorb</source>
        <translation>nichts wird zurückgespeist, was die Quelle nicht aufnimmt</translation>
    </message>
    <message>
        <source>the trip voltage is not above the supply's</source>
        <translation>die Abschaltspannung liegt nicht über der Versorgungsspannung</translation>
    </message>
    <message>
        <source>simulation of both axes at once; handbook: supply</source>
        <translation>Simulation beider Achsen zugleich; Handbuch: supply</translation>
    </message>
    <message>
        <source>search with simulated moves; handbook: supply</source>
        <translation>Suche mit simulierten Bewegungen; Handbuch: supply</translation>
    </message>
    <message>
        <source>energy balance of the bus; handbook: supply</source>
        <translation>Energiebilanz des Zwischenkreises; Handbuch: supply</translation>
    </message>
    <message>
        <source>Ohm's law; handbook: supply</source>
        <translation>Ohmsches Gesetz; Handbuch: supply</translation>
    </message>
    <message>
        <source>there is no brake resistor</source>
        <translation>kein Bremswiderstand vorhanden</translation>
    </message>
    <message>
        <source>Peak power from the supply, task's moves</source>
        <translation>Spitzenleistung aus der Versorgung, Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>largest Σ 1.5·i·(R·i + e) + idle power, both axes begun together</source>
        <translation>größte Σ 1.5·i·(R·i + e) + Ruheleistung, beide Achsen zugleich gestartet</translation>
    </message>
    <message>
        <source>Peak current from the supply, task's moves</source>
        <translation>Spitzenstrom aus der Versorgung, Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>largest current of the source while both axes move</source>
        <translation>größter Strom der Quelle, während sich beide Achsen bewegen</translation>
    </message>
    <message>
        <source>Average power over the duty</source>
        <translation>Mittlere Leistung über das Lastspiel</translation>
    </message>
    <message>
        <source>mean of the power into the drives, moves and rests</source>
        <translation>Mittel der Leistung in die Antriebsregler, Bewegungen und Pausen</translation>
    </message>
    <message>
        <source>Average current over the duty</source>
        <translation>Mittlerer Strom über das Lastspiel</translation>
    </message>
    <message>
        <source>mean of the source's current, moves and rests</source>
        <translation>Mittel des Quellenstroms, Bewegungen und Pausen</translation>
    </message>
    <message>
        <source>root mean square of the source's current, moves and rests</source>
        <translation>quadratischer Mittelwert des Quellenstroms, Bewegungen und Pausen</translation>
    </message>
    <message>
        <source>Energy returned while braking, task's moves</source>
        <translation>Beim Bremsen zurückgespeiste Energie, Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>∫ of the power's negative part, after all losses, both axes together</source>
        <translation>∫ des negativen Teils der Leistung, nach allen Verlusten, beide Achsen zusammen</translation>
    </message>
    <message>
        <source>Peak power returned while braking, task's moves</source>
        <translation>Beim Bremsen zurückgespeiste Spitzenleistung, Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>largest power that both drives together give back</source>
        <translation>größte Leistung, die beide Antriebsregler zusammen zurückgeben</translation>
    </message>
    <message>
        <source>Peak voltage of the bus, task's moves</source>
        <translation>Spitzenspannung des Zwischenkreises, Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>½·C·(V₂² − V₁²) = energy returned and neither absorbed nor burnt; trip left out</source>
        <translation>½·C·(V₂² − V₁²) = zurückgespeiste, weder aufgenommene noch verheizte Energie; ohne Abschaltung</translation>
    </message>
    <message>
        <source>Energy in the capacitors at the peak voltage</source>
        <translation>Energie in den Kondensatoren bei der Spitzenspannung</translation>
    </message>
    <message>
        <source>Voltage lost in source and leads</source>
        <translation>Spannungsverlust in Quelle und Zuleitungen</translation>
    </message>
    <message>
        <source>voltage − least voltage of the bus in the task's moves</source>
        <translation>Spannung − kleinste Zwischenkreisspannung bei den Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>Voltage drop of the leads, out and back</source>
        <translation>Spannungsabfall der Zuleitungen, hin und zurück</translation>
    </message>
    <message>
        <source>2·peak current·R'·length, R' in its surroundings</source>
        <translation>2·Spitzenstrom·R'·Länge, R' in ihrer Umgebung</translation>
    </message>
    <message>
        <source>Cautious current of a lead</source>
        <translation>Vorsichtig bemessener Strom einer Zuleitung</translation>
    </message>
    <message>
        <source>700 circular mil per ampere; as shipped, data file wires</source>
        <translation>700 Circular Mil je Ampere; wie ausgeliefert, Datendatei wires</translation>
    </message>
    <message>
        <source>Handbook of Electronic Tables and Formulas</source>
        <translation>Handbook of Electronic Tables and Formulas</translation>
    </message>
    <message>
        <source>RMS current over the fuse's rating</source>
        <translation>Effektivstrom zu Nennstrom der Sicherung</translation>
    </message>
    <message>
        <source>rms_current / fuse</source>
        <translation>rms_current / Sicherung</translation>
    </message>
    <message>
        <source>Largest current over the fuse's rating</source>
        <translation>Größter Strom zu Nennstrom der Sicherung</translation>
    </message>
    <message>
        <source>worst_current / fuse; for how long it stands that says its curve</source>
        <translation>worst_current / Sicherung; wie lange sie das aushält, sagt ihre Kennlinie</translation>
    </message>
    <message>
        <source>Largest current found</source>
        <translation>Größter gefundener Strom</translation>
    </message>
    <message>
        <source>over sizes, speeds, poses and shifts of both axes' moves</source>
        <translation>über Weiten, Geschwindigkeiten, Stellungen und Zeitversatz der Bewegungen beider Achsen</translation>
    </message>
    <message>
        <source>Highest bus voltage found</source>
        <translation>Höchste gefundene Zwischenkreisspannung</translation>
    </message>
    <message>
        <source>Largest power returned, as found</source>
        <translation>Größte gefundene zurückgespeiste Leistung</translation>
    </message>
    <message>
        <source>Capacitance that would do without a resistor</source>
        <translation>Kapazität, die ohne Widerstand genügt</translation>
    </message>
    <message>
        <source>2E/(trip² − voltage²), E the most energy in the capacitors at once, worst moves</source>
        <translation>2E/(Abschaltspannung² − Spannung²), E die größte Energie in den Kondensatoren zugleich, ungünstigste Bewegungen</translation>
    </message>
    <message>
        <source>Largest brake resistor that would do</source>
        <translation>Größter Bremswiderstand, der genügt</translation>
    </message>
    <message>
        <source>V/I at the chopper's voltage, I = returned power/V − absorbed, worst moves</source>
        <translation>V/I bei der Spannung des Bremschoppers, I = zurückgespeiste Leistung/V − Aufnahme, ungünstigste Bewegungen</translation>
    </message>
    <message>
        <source>Dubey, Fundamentals of Electrical Drives, ex. 5.9; handbook: supply</source>
        <translation>Dubey, Fundamentals of Electrical Drives, Bsp. 5.9; Handbuch: supply</translation>
    </message>
    <message>
        <source>Power of the brake resistor while it is on</source>
        <translation>Leistung des Bremswiderstands im eingeschalteten Zustand</translation>
    </message>
    <message>
        <source>V²/R at the highest voltage of the worst moves, at least the chopper's</source>
        <translation>V²/R bei der höchsten Spannung der ungünstigsten Bewegungen, mindestens der des Bremschoppers</translation>
    </message>
    <message>
        <source>Energy into the brake resistor, task's moves</source>
        <translation>Energie in den Bremswiderstand, Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>∫ of its power</source>
        <translation>∫ seiner Leistung</translation>
    </message>
    <message>
        <source>Average power of the brake resistor</source>
        <translation>Mittlere Leistung des Bremswiderstands</translation>
    </message>
    <message>
        <source>mean over the duty</source>
        <translation>Mittel über das Lastspiel</translation>
    </message>
    <message>
        <source>Average power returned over the duty</source>
        <translation>Mittlere zurückgespeiste Leistung über das Lastspiel</translation>
    </message>
    <message>
        <source>mean of what the drives give back: the most that a resistor would have to burn</source>
        <translation>Mittel dessen, was die Antriebsregler zurückgeben: mehr müsste ein Widerstand nicht verheizen</translation>
    </message>
    <message>
        <source>there is no move</source>
        <translation>keine Bewegung vorhanden</translation>
    </message>
    <message>
        <source>needs duty[%1].</source>
        <translation>braucht duty[%1].</translation>
    </message>
    <message>
        <source>stopped early</source>
        <translation>vorzeitig beendet</translation>
    </message>
    <message>
        <source>at %1, at pan %2, tilt %3</source>
        <translation>nach %1, bei Pan %2, Tilt %3</translation>
    </message>
    <message>
        <source>%1 holds at %2</source>
        <translation>%1 hält bei %2</translation>
    </message>
    <message>
        <source> goes from %1 to %2</source>
        <translation> fährt von %1 nach %2</translation>
    </message>
    <message>
        <source> no faster than %1</source>
        <translation> nicht schneller als %1</translation>
    </message>
    <message>
        <source>, %1 beginning %2 later</source>
        <translation>, Beginn von %1 %2 später</translation>
    </message>
    <message>
        <source>both axes making the task's moves</source>
        <translation>beide Achsen mit den Bewegungen der Aufgabe</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>%1 would settle in %2 (now %3)</source>
        <translation>würde %1 in %2 einschwingen (jetzt %3)</translation>
    </message>
    <message>
        <source>%1 would never settle (now %2)</source>
        <translation>würde %1 nie einschwingen (jetzt %2)</translation>
    </message>
    <message>
        <source>with gains advised for each</source>
        <translation>mit jeweils empfohlenen Verstärkungen</translation>
    </message>
    <message>
        <source>with gains advised for pan and today's for tilt</source>
        <translation>mit empfohlenen Verstärkungen für Pan und den heutigen für Tilt</translation>
    </message>
    <message>
        <source>with gains advised for tilt and today's for pan</source>
        <translation>mit empfohlenen Verstärkungen für Tilt und den heutigen für Pan</translation>
    </message>
    <message>
        <source>with today's gains</source>
        <translation>mit den heutigen Verstärkungen</translation>
    </message>
    <message>
        <source>what exchanging the gearboxes would do is not known: %1</source>
        <translation>was ein Vertauschen der Getriebe brächte, ist nicht bekannt: %1</translation>
    </message>
    <message>
        <source>%1, with the gearboxes exchanged pan would settle in %2 (now %3), tilt in %4 (now %5)</source>
        <translation>%1 wäre bei getauschten Getrieben Pan in %2 eingeschwungen (jetzt %3), Tilt in %4 (jetzt %5)</translation>
    </message>
    <message>
        <source>%1, with the gearboxes exchanged %2, %3</source>
        <translation>%1, bei getauschten Getrieben %2, %3</translation>
    </message>
    <message>
        <source>Each gearbox is on its better axis</source>
        <translation>Jedes Getriebe sitzt an der passenderen Achse</translation>
    </message>
    <message>
        <source>exchanging the gearboxes would make the slower axis settle in %1</source>
        <translation>mit vertauschten Getrieben würde die langsamere Achse in %1 einschwingen</translation>
    </message>
    <message>
        <source>exchanging the gearboxes and taking the gains advised for them would make the slower axis settle in %1</source>
        <translation>mit vertauschten Getrieben und den dafür empfohlenen Verstärkungen würde die langsamere Achse in %1 einschwingen</translation>
    </message>
    <message>
        <source>%1: its speed loop never crosses unit gain</source>
        <translation>%1: die Drehzahlregelung erreicht nie die Verstärkung eins</translation>
    </message>
    <message>
        <source>%1: its speed loop is unstable</source>
        <translation>%1: die Drehzahlregelung ist instabil</translation>
    </message>
    <message>
        <source>%1: it cannot move against friction and gravity</source>
        <translation>%1: Bewegung gegen Reibung und Schwerkraft nicht möglich</translation>
    </message>
    <message>
        <source>the target does not move this axis</source>
        <translation>das Ziel bewegt diese Achse nicht</translation>
    </message>
    <message>
        <source>with %1 the target is off by %2 on average (root mean square)</source>
        <translation>mit %1 liegt das Ziel im Mittel um %2 daneben (quadratischer Mittelwert)</translation>
    </message>
    <message>
        <source>; it leads beyond the travel, which holds the axis for %1 of the time</source>
        <translation>; es führt über den Verfahrbereich hinaus, was die Achse %1 der Zeit festhält</translation>
    </message>
    <message>
        <source>with %1 the dead time is %2; a phase margin of 45° is common practice</source>
        <translation>mit %1 ist die Totzeit %2; eine Phasenreserve von 45° ist übliche Praxis</translation>
    </message>
    <message>
        <source>Keeps the target in the picture</source>
        <translation>Hält das Ziel im Bild</translation>
    </message>
    <message>
        <source>would keep it in the picture</source>
        <translation>würde es im Bild halten</translation>
    </message>
    <message>
        <source>Gain of the outer loop below its ceiling</source>
        <translation>Verstärkung des äußeren Regelkreises unter ihrer Obergrenze</translation>
    </message>
    <message>
        <source>would leave a phase margin of 45°</source>
        <translation>würde eine Phasenreserve von 45° lassen</translation>
    </message>
    <message>
        <source>a target that jumps has no speed</source>
        <translation>ein springendes Ziel hat keine Geschwindigkeit</translation>
    </message>
    <message>
        <source>there is one detector only</source>
        <translation>es gibt nur einen Detektor</translation>
    </message>
    <message>
        <source>handbook: tracking</source>
        <translation>Handbuch: tracking</translation>
    </message>
    <message>
        <source>simulated; handbook: tracking</source>
        <translation>simuliert; Handbuch: tracking</translation>
    </message>
    <message>
        <source>Peak speed of the target</source>
        <translation>Spitzengeschwindigkeit des Ziels</translation>
    </message>
    <message>
        <source>largest speed of the angle that points at it</source>
        <translation>größte Geschwindigkeit des Winkels, der auf das Ziel zeigt</translation>
    </message>
    <message>
        <source>Dead time of the outer loop</source>
        <translation>Totzeit des äußeren Regelkreises</translation>
    </message>
    <message>
        <source>delay + mean age of a held answer + 1/speed loop crossover; acting on the angle only the last</source>
        <translation>Verzögerung + mittleres Alter einer gehaltenen Antwort + 1/Durchtritt der Drehzahlregelung; bei Wirkung auf den Winkel nur Letzteres</translation>
    </message>
    <message>
        <source>Gain of the outer loop</source>
        <translation>Verstärkung des äußeren Regelkreises</translation>
    </message>
    <message>
        <source>as entered; else 0.5/dead time, acting on the angle the position gain</source>
        <translation>wie eingetragen; sonst 0,5/Totzeit, bei Wirkung auf den Winkel die Lageverstärkung</translation>
    </message>
    <message>
        <source>Gain ceiling of the outer loop</source>
        <translation>Obergrenze der Verstärkung des äußeren Regelkreises</translation>
    </message>
    <message>
        <source>(π/2 − 45°)/dead time</source>
        <translation>(π/2 − 45°)/Totzeit</translation>
    </message>
    <message>
        <source>integrator with dead time; handbook: tracking</source>
        <translation>Integrator mit Totzeit; Handbuch: tracking</translation>
    </message>
    <message>
        <source>Lag behind a steady target</source>
        <translation>Nachlauf hinter einem gleichmäßig bewegten Ziel</translation>
    </message>
    <message>
        <source>peak target speed · (1/gain + age of the angle) · (1 − feed-forward); the age counts only where it acts on the angle</source>
        <translation>Spitzengeschwindigkeit des Ziels · (1/Verstärkung + Alter des Winkels) · (1 − Vorsteuerung); das Alter zählt nur bei Wirkung auf den Winkel</translation>
    </message>
    <message>
        <source>type-1 loop on a ramp, Franklin, Powell &amp; Emami-Naeini; handbook: tracking</source>
        <translation>Typ-1-Regelkreis an einer Rampe, Franklin, Powell &amp; Emami-Naeini; Handbuch: tracking</translation>
    </message>
    <message>
        <source>Tracking error</source>
        <translation>Verfolgungsfehler</translation>
    </message>
    <message>
        <source>root mean square of target less axis, first detector</source>
        <translation>quadratischer Mittelwert von Ziel minus Achse, erster Detektor</translation>
    </message>
    <message>
        <source>Tracking error, no speed fed forward</source>
        <translation>Verfolgungsfehler ohne Drehzahlvorsteuerung</translation>
    </message>
    <message>
        <source>the same with feed-forward 0</source>
        <translation>ebenso mit Vorsteuerung 0</translation>
    </message>
    <message>
        <source>Tracking error, all speed fed forward</source>
        <translation>Verfolgungsfehler mit voller Drehzahlvorsteuerung</translation>
    </message>
    <message>
        <source>the same with feed-forward 1</source>
        <translation>ebenso mit Vorsteuerung 1</translation>
    </message>
    <message>
        <source>Largest tracking error in the picture</source>
        <translation>Größter Verfolgungsfehler im Bild</translation>
    </message>
    <message>
        <source>pixels_per_radian · tan(error), pan's error times cos tilt, first detector</source>
        <translation>pixels_per_radian · tan(Fehler), Pan-Fehler mal cos Tilt, erster Detektor</translation>
    </message>
    <message>
        <source>Held at the end of its travel</source>
        <translation>Am Ende des Verfahrbereichs festgehalten</translation>
    </message>
    <message>
        <source>part of the time at the soft limit, where none is known at the hard stop, first detector</source>
        <translation>Zeitanteil am Softlimit, wo keines bekannt ist am harten Anschlag, erster Detektor</translation>
    </message>
    <message>
        <source>Time in the middle of the picture</source>
        <translation>Zeit in der Bildmitte</translation>
    </message>
    <message>
        <source>part of the time within the inner third of width and height, first detector</source>
        <translation>Zeitanteil im inneren Drittel von Breite und Höhe, erster Detektor</translation>
    </message>
    <message>
        <source>Smear while it follows</source>
        <translation>Verwischung beim Verfolgen</translation>
    </message>
    <message>
        <source>slip of target against axis over the exposure, less in 95 % of the pictures</source>
        <translation>Schlupf des Ziels gegen die Achse während der Belichtung, in 95 % der Bilder weniger</translation>
    </message>
    <message>
        <source>Lean of upright lines</source>
        <translation>Schrägverzug senkrechter Linien</translation>
    </message>
    <message>
        <source>pixels_per_radian · largest pan speed while it follows · readout</source>
        <translation>pixels_per_radian · größte Pan-Geschwindigkeit beim Verfolgen · Auslesezeit</translation>
    </message>
    <message>
        <source>Detector with the least error</source>
        <translation>Detektor mit dem kleinsten Fehler</translation>
    </message>
    <message>
        <source>its place in the list, by root mean square in the picture</source>
        <translation>sein Platz in der Liste, nach quadratischem Mittelwert im Bild</translation>
    </message>
    <message>
        <source>Blind cone straight up, half angle</source>
        <translation>Blinder Kegel senkrecht nach oben, halber Winkel</translation>
    </message>
    <message>
        <source>asin(v/d · max(1/ω, √(0.65/α)))</source>
        <translation>asin(v/d · max(1/ω, √(0.65/α)))</translation>
    </message>
    <message>
        <source>geometry; handbook: tracking</source>
        <translation>Geometrie; Handbuch: tracking</translation>
    </message>
    <message>
        <source>Peak speed against a human saccade</source>
        <translation>Spitzengeschwindigkeit gegen eine menschliche Sakkade</translation>
    </message>
    <message>
        <source>step peak_speed / (551°/s · (1 − exp(−move/14°)))</source>
        <translation>peak_speed des Sprungs / (551°/s · (1 − exp(−Bewegung/14°)))</translation>
    </message>
    <message>
        <source>Baloh et al., Neurology 25, 1975 (coefficients from memory)</source>
        <translation>Baloh et al., Neurology 25, 1975 (Koeffizienten aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Top speed against smooth pursuit</source>
        <translation>Höchstdrehzahl gegen gleitende Augenfolgebewegung</translation>
    </message>
    <message>
        <source>lower of speed_top and the loop's limit, over 100°/s</source>
        <translation>kleinerer Wert aus speed_top und Grenze des Regelkreises, durch 100°/s</translation>
    </message>
    <message>
        <source>smooth pursuit of an eye ends at about 100°/s (lecture notes)</source>
        <translation>die gleitende Folgebewegung eines Auges endet bei etwa 100°/s (Vorlesungsskript)</translation>
    </message>
    <message>
        <source>turns without end</source>
        <translation>dreht endlos</translation>
    </message>
    <message>
        <source>room on both sides of the rest pose</source>
        <translation>Platz auf beiden Seiten der Ruhelage</translation>
    </message>
    <message>
        <source>it cannot brake against gravity and cable at all</source>
        <translation>Bremsen gegen Schwerkraft und Kabel ist gar nicht möglich</translation>
    </message>
    <message>
        <source>braking from %1, %2 of it before the brake acts</source>
        <translation>Bremsen aus %1, davon %2, bevor die Bremse wirkt</translation>
    </message>
    <message>
        <source>soft limit</source>
        <translation>Softlimit</translation>
    </message>
    <message>
        <source>hard stop</source>
        <translation>harter Anschlag</translation>
    </message>
    <message>
        <source>the travel of the cable or of the stops is not known</source>
        <translation>der Verfahrbereich des Kabels oder der Anschläge ist nicht bekannt</translation>
    </message>
    <message>
        <source>a cable crosses an axis that has no soft limits</source>
        <translation>ein Kabel kreuzt eine Achse ohne Softlimits</translation>
    </message>
    <message>
        <source>one way %1; the other way %2</source>
        <translation>in einer Richtung %1; in der anderen %2</translation>
    </message>
    <message>
        <source>The task's move fits the travel</source>
        <translation>Die Bewegung der Aufgabe passt in den Verfahrbereich</translation>
    </message>
    <message>
        <source>would make room for the move</source>
        <translation>würde Platz für die Bewegung schaffen</translation>
    </message>
    <message>
        <source>Room to brake between soft limit and stop</source>
        <translation>Bremsweg zwischen Softlimit und Anschlag</translation>
    </message>
    <message>
        <source>would stop it before the hard stop</source>
        <translation>würde vor dem harten Anschlag anhalten</translation>
    </message>
    <message>
        <source>Soft limits come before the cable's</source>
        <translation>Softlimits kommen vor der Grenze des Kabels</translation>
    </message>
    <message>
        <source>would stop it before the cable does</source>
        <translation>würde vor dem Kabelende anhalten</translation>
    </message>
    <message>
        <source>cannot brake: gravity and cable are more than braking torque and friction</source>
        <translation>kann nicht bremsen: Schwerkraft und Kabel sind größer als Bremsmoment und Reibung</translation>
    </message>
    <message>
        <source>Travel between the hard stops</source>
        <translation>Verfahrbereich zwischen den harten Anschlägen</translation>
    </message>
    <message>
        <source>with w = 2·asin(width/2r): 2π − w_tab − w_post; n loose tabs: + n·(2π − 2·w_loose); window: window − w_tab</source>
        <translation>mit w = 2·asin(Breite/2r): 2π − w_tab − w_post; n lose Nasen: + n·(2π − 2·w_loose); Fenster: Fenster − w_tab</translation>
    </message>
    <message>
        <source>Travel between the soft limits</source>
        <translation>Verfahrbereich zwischen den Softlimits</translation>
    </message>
    <message>
        <source>stops − 2·soft_inset</source>
        <translation>Anschläge − 2·soft_inset</translation>
    </message>
    <message>
        <source>Usable travel</source>
        <translation>Nutzbarer Verfahrbereich</translation>
    </message>
    <message>
        <source>the part that all limits leave</source>
        <translation>der Teil, den alle Grenzen lassen</translation>
    </message>
    <message>
        <source>Blind sector</source>
        <translation>Blinder Sektor</translation>
    </message>
    <message>
        <source>2π − usable</source>
        <translation>2π − nutzbar</translation>
    </message>
    <message>
        <source>Angle to stop from top speed</source>
        <translation>Anhaltewinkel aus Höchstdrehzahl</translation>
    </message>
    <message>
        <source>∫ ω/deceleration dω up to speed_top, worst |gravity + cable| pushing on</source>
        <translation>∫ ω/Verzögerung dω bis speed_top, größtes treibendes |Schwerkraft + Kabel|</translation>
    </message>
    <message>
        <source>Angle to stop from the speed limit</source>
        <translation>Anhaltewinkel aus der Drehzahlgrenze</translation>
    </message>
    <message>
        <source>∫ ω/deceleration dω up to min(speed_top, loop.speed_limit), worst |gravity + cable| pushing on</source>
        <translation>∫ ω/Verzögerung dω bis min(speed_top, loop.speed_limit), größtes treibendes |Schwerkraft + Kabel|</translation>
    </message>
    <message>
        <source>Smallest safe inset of the soft limits</source>
        <translation>Kleinster sicherer Abstand der Softlimits</translation>
    </message>
    <message>
        <source>braking_angle_limit + ω·(2/control_rate + 1/(2π·current_bandwidth))</source>
        <translation>braking_angle_limit + ω·(2/control_rate + 1/(2π·current_bandwidth))</translation>
    </message>
    <message>
        <source>Speed at the hard stop, braking from the soft limit</source>
        <translation>Drehzahl am harten Anschlag, gebremst ab dem Softlimit</translation>
    </message>
    <message>
        <source>dω²/dφ = −2·deceleration over soft_inset from the speed limit, worst |gravity + cable| pushing on</source>
        <translation>dω²/dφ = −2·Verzögerung über soft_inset ab der Drehzahlgrenze, größtes treibendes |Schwerkraft + Kabel|</translation>
    </message>
    <message>
        <source>%1 (if the loop's limit of %2 fails)</source>
        <translation>%1 (falls die Grenze der Regelung von %2 versagt)</translation>
    </message>
    <message>
        <source>geometry; handbook: travel</source>
        <translation>Geometrie; Handbuch: travel</translation>
    </message>
    <message>
        <source>geometry; handbook: stops</source>
        <translation>Geometrie; Handbuch: stops</translation>
    </message>
    <message>
        <source>tab or post is wider than twice the stop radius</source>
        <translation>Nase oder Pfosten ist breiter als der doppelte Anschlagradius</translation>
    </message>
    <message>
        <source>there are no stops: it turns without end</source>
        <translation>keine Anschläge: die Achse dreht endlos</translation>
    </message>
    <message>
        <source>the tab does not fit into the window, or is wider than twice the stop radius</source>
        <translation>die Nase passt nicht ins Fenster oder ist breiter als der doppelte Anschlagradius</translation>
    </message>
    <message>
        <source>a tab, loose tab or post is wider than twice the stop radius</source>
        <translation>eine Nase, lose Nase oder ein Pfosten ist breiter als der doppelte Anschlagradius</translation>
    </message>
    <message>
        <source>needs the usable travel of both axes, see their stops and cables</source>
        <translation>braucht den nutzbaren Verfahrbereich beider Achsen, siehe deren Anschläge und Kabel</translation>
    </message>
    <message>
        <source>wires of all cables against rings; shields count as wires</source>
        <translation>Adern aller Kabel gegen Ringe; Schirme zählen als Adern</translation>
    </message>
    <message>
        <source>%1 rings in parallel would carry one wire's current</source>
        <translation>%1 Ringe parallel würden den Strom einer Ader tragen</translation>
    </message>
    <message>
        <source>one ring to a wire</source>
        <translation>ein Ring je Ader</translation>
    </message>
    <message>
        <source>what the ring passes; brush noise comes on top</source>
        <translation>was der Ring durchlässt; Bürstenrauschen kommt hinzu</translation>
    </message>
    <message>
        <source>%1 circular mil per ampere, for wires in a bundle; one in free air bears about six times that</source>
        <translation>%1 Circular Mil je Ampere, für Adern im Bündel; eine in freier Luft verträgt etwa das Sechsfache</translation>
    </message>
    <message>
        <source>out and back %1; %2</source>
        <translation>hin und zurück %1; %2</translation>
    </message>
    <message>
        <source>Slip ring has rings enough</source>
        <translation>Schleifring hat genug Ringe</translation>
    </message>
    <message>
        <source>would give every wire its ring</source>
        <translation>würde jeder Ader ihren Ring geben</translation>
    </message>
    <message>
        <source>Slip ring bears the current</source>
        <translation>Schleifring trägt den Strom</translation>
    </message>
    <message>
        <source>would spare the rings</source>
        <translation>würde die Ringe schonen</translation>
    </message>
    <message>
        <source>Slip ring passes the signal</source>
        <translation>Schleifring lässt das Signal durch</translation>
    </message>
    <message>
        <source>would let the signal through</source>
        <translation>würde das Signal durchlassen</translation>
    </message>
    <message>
        <source>Wire bears its current</source>
        <translation>Ader trägt ihren Strom</translation>
    </message>
    <message>
        <source>would keep the wire cool</source>
        <translation>würde die Ader kühl halten</translation>
    </message>
    <message>
        <source>Voltage drop in the lead</source>
        <translation>Spannungsabfall in der Zuleitung</translation>
    </message>
    <message>
        <source>annealed copper, 100 % IACS, IEC 60028; handbook: cables</source>
        <translation>weichgeglühtes Kupfer, 100 % IACS, IEC 60028; Handbuch: cables</translation>
    </message>
    <message>
        <source>Ohm's law; handbook: cables</source>
        <translation>Ohmsches Gesetz; Handbuch: cables</translation>
    </message>
    <message>
        <source>Wires across the axis</source>
        <translation>Adern über die Achse</translation>
    </message>
    <message>
        <source>what a slip ring needs in circuits; handbook: cables</source>
        <translation>was ein Schleifring an Stromkreisen braucht; Handbuch: cables</translation>
    </message>
    <message>
        <source>Wire resistance at 20 °C</source>
        <translation>Aderwiderstand bei 20 °C</translation>
    </message>
    <message>
        <source>Wire resistance in its surroundings</source>
        <translation>Aderwiderstand in der Umgebung</translation>
    </message>
    <message>
        <source>Cautious current of one wire</source>
        <translation>Vorsichtig bemessener Strom einer Ader</translation>
    </message>
    <message>
        <source>Voltage drop, out and back</source>
        <translation>Spannungsabfall, hin und zurück</translation>
    </message>
    <message>
        <source>2·current·R'·supply_length, R' in its surroundings</source>
        <translation>2·Strom·R'·supply_length, R' in der Umgebung</translation>
    </message>
    <message>
        <source>Voltage drop over supply voltage</source>
        <translation>Spannungsabfall zu Versorgungsspannung</translation>
    </message>
    <message>
        <source>drop / voltage</source>
        <translation>Abfall / Spannung</translation>
    </message>
    <message>
        <source>; with tilt at %1, where its load is largest: %2</source>
        <translation>; mit der Neigung bei %1, wo seine Last am größten ist: %2</translation>
    </message>
    <message>
        <source>its pitch is too coarse for its diameter</source>
        <translation>die Steigung ist zu grob für den Durchmesser</translation>
    </message>
    <message>
        <source>its head rubs inside its thread</source>
        <translation>der Kopf reibt innerhalb des Gewindes</translation>
    </message>
    <message>
        <source>its proof stress is above its tensile strength</source>
        <translation>die Prüfspannung liegt über der Zugfestigkeit</translation>
    </message>
    <message>
        <source>its angle tells which table it belongs to and cannot be changed</source>
        <translation>der Winkel bestimmt die zugehörige Tabelle und ist nicht änderbar</translation>
    </message>
    <message>
        <source>the columns of this file are %1</source>
        <translation>die Spalten dieser Datei sind %1</translation>
    </message>
    <message>
        <source>did you mean %1?</source>
        <translation>war %1 gemeint?</translation>
    </message>
    <message>
        <source>is no known column</source>
        <translation>ist keine bekannte Spalte</translation>
    </message>
    <message>
        <source>is no {value, source}</source>
        <translation>ist kein {value, source}</translation>
    </message>
    <message>
        <source>has no source</source>
        <translation>hat keine Quelle</translation>
    </message>
    <message>
        <source>say where it comes from: %1</source>
        <translation>Herkunft angeben: %1</translation>
    </message>
    <message>
        <source>cannot be read: %1</source>
        <translation>ist nicht lesbar: %1</translation>
    </message>
    <message>
        <source>has a spread that cannot be read: %1</source>
        <translation>hat eine nicht lesbare Streuung: %1</translation>
    </message>
    <message>
        <source>has a spread that reaches beyond what is possible</source>
        <translation>hat eine Streuung, die über das Mögliche hinausreicht</translation>
    </message>
    <message>
        <source>write the half-width of the range that it is found in</source>
        <translation>die halbe Breite des Bereichs angeben, in dem der Wert liegt</translation>
    </message>
    <message>
        <source>the file is no map of named rows</source>
        <translation>die Datei ist keine Zuordnung benannter Zeilen</translation>
    </message>
    <message>
        <source>write for example pla: {density: {value: 1.24 g/cm3, source: scale}}</source>
        <translation>zum Beispiel pla: {density: {value: 1.24 g/cm3, source: scale}} schreiben</translation>
    </message>
    <message>
        <source>%1 is no map of values</source>
        <translation>%1 ist keine Zuordnung von Werten</translation>
    </message>
    <message>
        <source>write for example {value: 3 GPa, source: "data sheet of the maker"}</source>
        <translation>zum Beispiel {value: 3 GPa, source: "data sheet of the maker"} schreiben</translation>
    </message>
    <message>
        <source>own materials.yaml</source>
        <translation>eigene materials.yaml</translation>
    </message>
    <message>
        <source>the rig's own, no source stated</source>
        <translation>eigene Angabe des Rigs, ohne Quelle</translation>
    </message>
    <message>
        <source>there is no material “%1”</source>
        <translation>Werkstoff „%1“ gibt es nicht</translation>
    </message>
    <message>
        <source>; did you mean %1?</source>
        <translation>; war %1 gemeint?</translation>
    </message>
    <message>
        <source> There are </source>
        <translation> – vorhanden: </translation>
    </message>
    <message>
        <source>%1; a material of your own can be added to the rig or to your data folder</source>
        <translation>%1; ein eigener Werkstoff kann im Rig oder in Ihrem Datenordner ergänzt werden</translation>
    </message>
    <message>
        <source>%1 is no row that the program uses</source>
        <translation>%1 ist keine Zeile, die das Programm verwendet</translation>
    </message>
    <message>
        <source>the rows of this file are %1</source>
        <translation>die Zeilen dieser Datei sind %1</translation>
    </message>
    <message>
        <source>%1 has no use for %2</source>
        <translation>%1 hat keine Verwendung für %2</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>%1 has no %2 that can be used</source>
        <translation>%1 hat kein brauchbares %2</translation>
    </message>
    <message>
        <source>add for example %1: {value: 1 %2, source: "data sheet"}</source>
        <translation>zum Beispiel %1: {value: 1 %2, source: "data sheet"} ergänzen</translation>
    </message>
    <message>
        <source>check its values and their units</source>
        <translation>die Werte und ihre Einheiten prüfen</translation>
    </message>
    <message>
        <source>no data file has this name; it is not read</source>
        <translation>keine Datendatei heißt so; sie wird nicht gelesen</translation>
    </message>
    <message>
        <source>the names are %1</source>
        <translation>die Namen sind %1</translation>
    </message>
    <message>
        <source>this folder of data files cannot be read</source>
        <translation>dieser Ordner mit Datendateien lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>check that it is a folder and its rights</source>
        <translation>prüfen, ob es ein Ordner ist und welche Rechte er hat</translation>
    </message>
    <message>
        <source>there are %1 more problems</source>
        <translation>es gibt %1 weitere Probleme</translation>
    </message>
    <message>
        <source>mend these first</source>
        <translation>zuerst diese beheben</translation>
    </message>
    <message>
        <source>: error: </source>
        <translation>: Fehler: </translation>
    </message>
    <message>
        <source>: warning: </source>
        <translation>: Warnung: </translation>
    </message>
    <message>
        <source>
  fix: %1</source>
        <translation>
  Abhilfe: %1</translation>
    </message>
    <message>
        <source>list its bodies, for example %1</source>
        <translation>Körper aufzählen, zum Beispiel %1</translation>
    </message>
    <message>
        <source>say where the tilt axis is, for example %1</source>
        <translation>angeben, wo die Tilt-Achse liegt, zum Beispiel %1</translation>
    </message>
    <message>
        <source>describe what there is, or write %1</source>
        <translation>beschreiben, was vorhanden ist, oder %1 schreiben</translation>
    </message>
    <message>
        <source>say its shape, for example %1, or all numbers of its inertia</source>
        <translation>die Form angeben, zum Beispiel %1, oder alle Zahlen der Trägheit</translation>
    </message>
    <message>
        <source>write all numbers of %1</source>
        <translation>alle Zahlen von %1 schreiben</translation>
    </message>
    <message>
        <source>add %1 to %2</source>
        <translation>%1 bei %2 ergänzen</translation>
    </message>
    <message>
        <source>add %1 to %2, a number</source>
        <translation>%1 bei %2 ergänzen, eine Zahl</translation>
    </message>
    <message>
        <source>add %1 to %2, in %3</source>
        <translation>%1 bei %2 ergänzen, in %3</translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>: [{name: camera, mass: 48 g, centre: [38 mm, 0 mm, 2 mm]}]</source>
        <translation>: [{name: camera, mass: 48 g, centre: [38 mm, 0 mm, 2 mm]}]</translation>
    </message>
    <message>
        <source>axis_at: [0 mm, 0 mm, 165 mm]</source>
        <translation>axis_at: [0 mm, 0 mm, 165 mm]</translation>
    </message>
    <message>
        <source>: none</source>
        <translation>: none</translation>
    </message>
    <message>
        <source>shape: {box: [40 mm, 16 mm, 170 mm]}</source>
        <translation>shape: {box: [40 mm, 16 mm, 170 mm]}</translation>
    </message>
    <message>
        <source>shelf is %1; this program reads version 1</source>
        <translation>shelf ist %1; dieses Programm liest Version 1</translation>
    </message>
    <message>
        <source>write shelf: 1, or open it with a newer Gazewright</source>
        <translation>shelf: 1 schreiben oder mit einem neueren Gazewright öffnen</translation>
    </message>
    <message>
        <source>the file holds no part</source>
        <translation>die Datei enthält kein Teil</translation>
    </message>
    <message>
        <source>the file holds a second part</source>
        <translation>die Datei enthält ein zweites Teil</translation>
    </message>
    <message>
        <source>give each part a file</source>
        <translation>jedem Teil eine eigene Datei geben</translation>
    </message>
    <message>
        <source>the file is no map of a part's fields</source>
        <translation>die Datei ist keine Zuordnung der Felder eines Teils</translation>
    </message>
    <message>
        <source>write one of motor, gearbox, drive, bearing, cable, camera and supply with its fields, for example motor: {speed_constant: 300 rpm/V}</source>
        <translation>eines von motor, gearbox, drive, bearing, cable, camera und supply mit seinen Feldern schreiben, zum Beispiel motor: {speed_constant: 300 rpm/V}</translation>
    </message>
    <message>
        <source>shelf: 1
name: </source>
        <translation>shelf: 1
name: </translation>
    </message>
    <message>
        <source>note: </source>
        <translation>note: </translation>
    </message>
    <message>
        <source>"%1" is no number</source>
        <translation>„%1“ ist keine Zahl</translation>
    </message>
    <message>
        <source>the line does not hold three values</source>
        <translation>die Zeile enthält nicht drei Werte</translation>
    </message>
    <message>
        <source>the time is not after that of the point before it</source>
        <translation>die Zeit liegt nicht nach der des vorigen Punkts</translation>
    </message>
    <message>
        <source>sort the lines by their times</source>
        <translation>die Zeilen nach der Zeit sortieren</translation>
    </message>
    <message>
        <source>there are more than %1 points</source>
        <translation>es sind mehr als %1 Punkte</translation>
    </message>
    <message>
        <source>leave out every second line</source>
        <translation>jede zweite Zeile weglassen</translation>
    </message>
    <message>
        <source>the file is larger than 1 MiB</source>
        <translation>die Datei ist größer als 1 MiB</translation>
    </message>
    <message>
        <source>leave out lines</source>
        <translation>Zeilen weglassen</translation>
    </message>
    <message>
        <source>there are fewer than two points; nothing moves</source>
        <translation>es sind weniger als zwei Punkte; nichts bewegt sich</translation>
    </message>
    <message>
        <source>write time in seconds, pan and tilt in degrees with commas between them: 0.5,-20,4</source>
        <translation>Zeit in Sekunden, Pan und Tilt in Grad schreiben, durch Kommas getrennt: 0.5,-20,4</translation>
    </message>
    <message>
        <source>%1: a wall of %2 does not fit into a diameter of %3</source>
        <translation>%1: eine Wand von %2 passt nicht in einen Durchmesser von %3</translation>
    </message>
    <message>
        <source>write a wall of at most half the diameter</source>
        <translation>eine Wand von höchstens dem halben Durchmesser schreiben</translation>
    </message>
    <message>
        <source>%1: a bore of %2 does not fit into a diameter of %3</source>
        <translation>%1: eine Bohrung von %2 passt nicht in einen Durchmesser von %3</translation>
    </message>
    <message>
        <source>write a bore that is less than the diameter</source>
        <translation>eine Bohrung kleiner als der Durchmesser schreiben</translation>
    </message>
    <message>
        <source>%1: no body can have this inertia; each principal moment is at most the sum of the other two</source>
        <translation>%1: kein Körper kann dieses Trägheitsmoment haben; jedes Hauptträgheitsmoment ist höchstens die Summe der beiden anderen</translation>
    </message>
    <message>
        <source>check the six values and their order: [xx, yy, zz, xy, xz, yz]</source>
        <translation>die sechs Werte und ihre Reihenfolge prüfen: [xx, yy, zz, xy, xz, yz]</translation>
    </message>
    <message>
        <source>xx, yy, zz, xy, xz, yz</source>
        <translation>xx, yy, zz, xy, xz, yz</translation>
    </message>
    <message>
        <source>%1: the shape %2 is not known or has no measures</source>
        <translation>%1: die Form %2 ist nicht bekannt oder hat keine Maße</translation>
    </message>
    <message>
        <source>%1 shapes</source>
        <translation>%1 Formen</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>%1: %2 where one shape is due</source>
        <translation>%1: %2, erwartet wird eine Form</translation>
    </message>
    <message>
        <source>%1: the shape %2 is not known</source>
        <translation>%1: die Form %2 ist nicht bekannt</translation>
    </message>
    <message>
        <source>%1 is %2; a list of bodies is due</source>
        <translation>%1 ist %2; erwartet wird eine Liste von Körpern</translation>
    </message>
    <message>
        <source>begin each body with a dash: - {name: ball, mass: 160 g, ...}</source>
        <translation>jeden Körper mit einem Strich beginnen: - {name: ball, mass: 160 g, ...}</translation>
    </message>
    <message>
        <source>%1 holds %2 bodies; at most 500 are read</source>
        <translation>%1 enthält %2 Körper; gelesen werden höchstens 500</translation>
    </message>
    <message>
        <source>join small bodies into one</source>
        <translation>kleine Körper zu einem zusammenfassen</translation>
    </message>
    <message>
        <source>write point, or one of {ball: ...}, {shell: ...}, {tube: ...}, {box: ...}, {inertia: ...}</source>
        <translation>point schreiben oder eines von {ball: ...}, {shell: ...}, {tube: ...}, {box: ...}, {inertia: ...}</translation>
    </message>
    <message>
        <source>%1: it ends at %2, below where it begins, %3</source>
        <translation>%1: endet bei %2, unter dem Anfang bei %3</translation>
    </message>
    <message>
        <source>write the lower angle first: [from, to]</source>
        <translation>den kleineren Winkel zuerst schreiben: [von, bis]</translation>
    </message>
    <message>
        <source>from, to</source>
        <translation>von, bis</translation>
    </message>
    <message>
        <source>%1 is %2; a list of keep-outs is due</source>
        <translation>%1 ist %2; erwartet wird eine Liste von Sperrbereichen</translation>
    </message>
    <message>
        <source>begin each with a dash: - {name: lamp post, pan: [-20 deg, 15 deg], tilt: [30 deg, 60 deg]}</source>
        <translation>jeden mit einem Strich beginnen: - {name: lamp post, pan: [-20 deg, 15 deg], tilt: [30 deg, 60 deg]}</translation>
    </message>
    <message>
        <source>%1 holds %2 keep-outs; at most 100 are read</source>
        <translation>%1 enthält %2 Sperrbereiche; gelesen werden höchstens 100</translation>
    </message>
    <message>
        <source>join those that touch</source>
        <translation>sich berührende zusammenfassen</translation>
    </message>
    <message>
        <source>the line rig: 1 is missing; this may not be a rig file</source>
        <translation>die Zeile rig: 1 fehlt; das ist vielleicht keine Rig-Datei</translation>
    </message>
    <message>
        <source>this rig is of version %1; this program reads version 1</source>
        <translation>dieses Rig hat Version %1; dieses Programm liest Version 1</translation>
    </message>
    <message>
        <source>open it with a newer Gazewright, or save it there as version 1</source>
        <translation>mit einem neueren Gazewright öffnen oder dort als Version 1 speichern</translation>
    </message>
    <message>
        <source>rig is %1; the version of the file is due</source>
        <translation>rig ist %1; erwartet wird die Version der Datei</translation>
    </message>
    <message>
        <source>%1: a window of %2 leaves no room to turn for a tab of %3 on a radius of %4</source>
        <translation>%1: ein Fenster von %2 lässt einer Nase von %3 auf einem Radius von %4 keinen Platz zum Drehen</translation>
    </message>
    <message>
        <source>write a wider window, or a narrower tab</source>
        <translation>ein breiteres Fenster oder eine schmalere Nase schreiben</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Nase</translation>
    </message>
    <message>
        <source>post</source>
        <translation>Pfosten</translation>
    </message>
    <message>
        <source>loose tab</source>
        <translation>lose Nase</translation>
    </message>
    <message>
        <source>%1: a %2 of %3 does not fit on a radius of %4</source>
        <translation>%1: %2 mit einer Breite von %3 passt nicht auf einen Radius von %4</translation>
    </message>
    <message>
        <source>write a width under twice the radius</source>
        <translation>eine Breite unter dem doppelten Radius schreiben</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>the file holds %1; a rig is a map of keys</source>
        <translation>die Datei enthält %1; ein Rig ist eine Zuordnung von Schlüsseln</translation>
    </message>
    <message>
        <source>write the line rig: 1 at the top of the file</source>
        <translation>die Zeile rig: 1 an den Anfang der Datei schreiben</translation>
    </message>
    <message>
        <source>{name: fast, frame_rate: 60 Hz, delay: 20 ms, noise: 6}</source>
        <translation>{name: fast, frame_rate: 60 Hz, delay: 20 ms, noise: 6}</translation>
    </message>
    <message>
        <source>{pan: 40 deg, tilt: -10 deg, dwell: 800 ms}</source>
        <translation>{pan: 40 deg, tilt: -10 deg, dwell: 800 ms}</translation>
    </message>
    <message>
        <source>{name: my print, modulus: 2.1 GPa, softening: 70 degC}</source>
        <translation>{name: my print, modulus: 2.1 GPa, softening: 70 degC}</translation>
    </message>
    <message>
        <source>time, pan, tilt</source>
        <translation>Zeit, Pan, Tilt</translation>
    </message>
    <message>
        <source>%1: a point lacks one of its three values</source>
        <translation>%1: einem Punkt fehlt einer seiner drei Werte</translation>
    </message>
    <message>
        <source>%1 holds fewer than two points; nothing moves</source>
        <translation>%1 enthält weniger als zwei Punkte; nichts bewegt sich</translation>
    </message>
    <message>
        <source>%1[%2] is at %3, not after the point before it at %4</source>
        <translation>%1[%2] liegt bei %3, nicht nach dem vorigen Punkt bei %4</translation>
    </message>
    <message>
        <source>write the points in the order of their times</source>
        <translation>die Punkte in der Reihenfolge ihrer Zeiten schreiben</translation>
    </message>
    <message>
        <source>write points of time, pan and tilt: [[0 s, -20 deg, 0 deg], [1 s, 20 deg, 5 deg]]</source>
        <translation>Punkte aus Zeit, Pan und Tilt schreiben: [[0 s, -20 deg, 0 deg], [1 s, 20 deg, 5 deg]]</translation>
    </message>
    <message>
        <source>%1 has no rig: nothing says what the variant is</source>
        <translation>%1 hat kein rig: nichts sagt, was die Variante ist</translation>
    </message>
    <message>
        <source>write rig: and under it supply, pan, tilt ... as in a rig file</source>
        <translation>rig: schreiben und darunter supply, pan, tilt ... wie in einer Rig-Datei</translation>
    </message>
    <message>
        <source>variants</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>begin each with a dash: - {name: low ratio, rig: {...}}</source>
        <translation>jede mit einem Strich beginnen: - {name: low ratio, rig: {...}}</translation>
    </message>
    <message>
        <source>%1 is %2; a map of its fields is due</source>
        <translation>%1 ist %2; erwartet wird eine Zuordnung seiner Felder</translation>
    </message>
    <message>
        <source>write for example {%1: ...}</source>
        <translation>zum Beispiel {%1: ...} schreiben</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> in %1</translation>
    </message>
    <message>
        <source>the key %1%2 is not known; it is kept and not used</source>
        <translation>der Schlüssel %1%2 ist nicht bekannt; er bleibt erhalten und wird nicht verwendet</translation>
    </message>
    <message>
        <source>check the spelling, or leave it as a remark of your own</source>
        <translation>die Schreibweise prüfen oder als eigene Anmerkung stehen lassen</translation>
    </message>
    <message>
        <source>did you mean %1?%2</source>
        <translation>war %1 gemeint?%2</translation>
    </message>
    <message>
        <source>%1: %2 where one quantity is due</source>
        <translation>%1: %2, erwartet wird eine einzelne Größe</translation>
    </message>
    <message>
        <source>write one number%1</source>
        <translation>eine Zahl schreiben%1</translation>
    </message>
    <message>
        <source> with its unit</source>
        <translation> mit Einheit</translation>
    </message>
    <message>
        <source>%1: %2 has a comma in its number</source>
        <translation>%1: %2 enthält ein Komma in der Zahl</translation>
    </message>
    <message>
        <source>write %1</source>
        <translation>schreiben Sie %1</translation>
    </message>
    <message>
        <source>%1: %2 is unusual; %3</source>
        <translation>%1: %2 ist ungewöhnlich; %3</translation>
    </message>
    <message>
        <source>check the number and its unit, or leave it so</source>
        <translation>prüfen Sie Zahl und Einheit, oder lassen Sie es so</translation>
    </message>
    <message>
        <source>%1: the map has no value</source>
        <translation>%1: die Zuordnung hat keinen Wert (value)</translation>
    </message>
    <message>
        <source>write for example {value: 1%1, source: measured}</source>
        <translation>zum Beispiel {value: 1%1, source: measured} schreiben</translation>
    </message>
    <message>
        <source>Spread of %1</source>
        <translation>Streuung von %1</translation>
    </message>
    <message>
        <source>write for example 10 %</source>
        <translation>zum Beispiel 10 % schreiben</translation>
    </message>
    <message>
        <source>Source of %1: "%2" is not known</source>
        <translation>Quelle von %1: „%2“ ist nicht bekannt</translation>
    </message>
    <message>
        <source>write measured, datasheet, estimate or default</source>
        <translation>measured, datasheet, estimate oder default schreiben</translation>
    </message>
    <message>
        <source>%1 is %2; a text is due</source>
        <translation>%1 ist %2; erwartet wird ein Text</translation>
    </message>
    <message>
        <source>write a text, in quotes where it holds : or #</source>
        <translation>einen Text schreiben, in Anführungszeichen, wenn er : oder # enthält</translation>
    </message>
    <message>
        <source>; one of your own goes into %1.yaml of your data folder</source>
        <translation>; ein eigener Eintrag gehört in %1.yaml in Ihrem Datenordner</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>%1: %2 is not one of its choices</source>
        <translation>%1: %2 gehört nicht zur Auswahl</translation>
    </message>
    <message>
        <source>write %1%2</source>
        <translation>möglich: %1%2</translation>
    </message>
    <message>
        <source>write %1 quantities in brackets: [%2]</source>
        <translation>%1 Größen in Klammern schreiben: [%2]</translation>
    </message>
    <message>
        <source>%1: %2 where a list of %3 is due</source>
        <translation>%1: %2, erwartet wird eine Liste mit %3 Werten</translation>
    </message>
    <message>
        <source>%1: the list holds %2; %3 are due</source>
        <translation>%1: die Liste enthält %2; erwartet werden %3</translation>
    </message>
    <message>
        <source>%1 is %2; a list of %3 is due</source>
        <translation>%1 ist %2; erwartet wird eine Liste: %3</translation>
    </message>
    <message>
        <source>%1 holds %2 %3; at most %4 are read</source>
        <translation>%1 enthält %2 %3; gelesen werden höchstens %4</translation>
    </message>
    <message>
        <source>leave some of them out</source>
        <translation>einige davon weglassen</translation>
    </message>
    <message>
        <source>begin each with a dash: - %1</source>
        <translation>jeden Eintrag mit einem Strich beginnen: - %1</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <translation>Namen und Ordner prüfen</translation>
    </message>
    <message>
        <source>a part of its path is a file, not a folder</source>
        <translation>ein Teil des Pfads ist eine Datei, kein Ordner</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation>das ist ein Ordner, keine Datei</translation>
    </message>
    <message>
        <source>choose a rig file in it</source>
        <translation>eine Rig-Datei darin wählen</translation>
    </message>
    <message>
        <source>you may not read this file</source>
        <translation>für diese Datei fehlt das Leserecht</translation>
    </message>
    <message>
        <source>ask for the right to read it, or copy it</source>
        <translation>das Leserecht erbitten oder die Datei kopieren</translation>
    </message>
    <message>
        <source>the file cannot be read: %1</source>
        <translation>die Datei lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>check the disk, or choose another file</source>
        <translation>den Datenträger prüfen oder eine andere Datei wählen</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>den Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>make the folder first, or choose another</source>
        <translation>zuerst den Ordner anlegen oder einen anderen wählen</translation>
    </message>
    <message>
        <source>choose another folder</source>
        <translation>einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>choose a file name in it</source>
        <translation>einen Dateinamen darin wählen</translation>
    </message>
    <message>
        <source>you may not write here</source>
        <translation>hier fehlt das Schreibrecht</translation>
    </message>
    <message>
        <source>choose another folder, or ask for the right to write</source>
        <translation>einen anderen Ordner wählen oder das Schreibrecht erbitten</translation>
    </message>
    <message>
        <source>this disk is read-only</source>
        <translation>dieser Datenträger ist schreibgeschützt</translation>
    </message>
    <message>
        <source>choose a folder on another disk</source>
        <translation>einen Ordner auf einem anderen Datenträger wählen</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>make room, or choose another disk</source>
        <translation>Platz schaffen oder einen anderen Datenträger wählen</translation>
    </message>
    <message>
        <source>the file would be larger than is allowed here</source>
        <translation>die Datei würde größer als hier erlaubt</translation>
    </message>
    <message>
        <source>choose another disk</source>
        <translation>einen anderen Datenträger wählen</translation>
    </message>
    <message>
        <source>the file name is too long</source>
        <translation>der Dateiname ist zu lang</translation>
    </message>
    <message>
        <source>choose a shorter name</source>
        <translation>einen kürzeren Namen wählen</translation>
    </message>
    <message>
        <source>the file cannot be written: %1</source>
        <translation>die Datei lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>check the disk, or choose another folder</source>
        <translation>den Datenträger prüfen oder einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>a rig takes a few kilobytes; choose another file</source>
        <translation>ein Rig braucht wenige Kilobyte; eine andere Datei wählen</translation>
    </message>
    <message>
        <source>the file holds a NUL byte; it is not text</source>
        <translation>die Datei enthält ein NUL-Byte; sie ist kein Text</translation>
    </message>
    <message>
        <source>choose a rig file, or save it as UTF-8 text</source>
        <translation>eine Rig-Datei wählen oder als UTF-8-Text speichern</translation>
    </message>
    <message>
        <source>the file holds a control character</source>
        <translation>die Datei enthält ein Steuerzeichen</translation>
    </message>
    <message>
        <source>remove it in a text editor</source>
        <translation>es in einem Texteditor entfernen</translation>
    </message>
    <message>
        <source>the file is not UTF-8 text from here on</source>
        <translation>ab hier ist die Datei kein UTF-8-Text</translation>
    </message>
    <message>
        <source>save it as UTF-8 in a text editor</source>
        <translation>in einem Texteditor als UTF-8 speichern</translation>
    </message>
    <message>
        <source>1 over it</source>
        <translation>1 geteilt durch sie</translation>
    </message>
    <message>
        <source>in rpm/V it is 8.27 over N.m per ampere of amplitude</source>
        <translation>in rpm/V: 8,27 geteilt durch N·m je Ampere Amplitude</translation>
    </message>
    <message>
        <source>half of what is measured between two leads</source>
        <translation>die Hälfte dessen, was zwischen zwei Leitungen gemessen wird</translation>
    </message>
    <message>
        <source>half of the magnets</source>
        <translation>die Hälfte der Magnete</translation>
    </message>
    <message>
        <source>the power of two that gives as many steps</source>
        <translation>die Zweierpotenz, die so viele Schritte ergibt</translation>
    </message>
    <message>
        <source>Null</source>
        <translation>Null</translation>
    </message>
    <message>
        <source>a text of %1 bytes is too long</source>
        <translation>ein Text von %1 Byte ist zu lang</translation>
    </message>
    <message>
        <source>keep every entry under 100 000 bytes</source>
        <translation>jeden Eintrag unter 100 000 Byte halten</translation>
    </message>
    <message>
        <source>anchors (&amp;) and aliases (*) are not read in a rig file</source>
        <translation>Anker (&amp;) und Verweise (*) werden in einer Rig-Datei nicht gelesen</translation>
    </message>
    <message>
        <source>write the value out, or put a text that begins with &amp; or * in quotes</source>
        <translation>den Wert ausschreiben oder einen Text, der mit &amp; oder * beginnt, in Anführungszeichen setzen</translation>
    </message>
    <message>
        <source>a key must be a short word</source>
        <translation>ein Schlüssel muss ein kurzes Wort sein</translation>
    </message>
    <message>
        <source>write for example mass: 140 g</source>
        <translation>zum Beispiel mass: 140 g schreiben</translation>
    </message>
    <message>
        <source>the key %1 is written twice in one map</source>
        <translation>der Schlüssel %1 steht zweimal in einer Zuordnung</translation>
    </message>
    <message>
        <source>keep one of the two</source>
        <translation>einen der beiden behalten</translation>
    </message>
    <message>
        <source>the quotes that open here never close</source>
        <translation>die hier geöffneten Anführungszeichen werden nie geschlossen</translation>
    </message>
    <message>
        <source>put a quote sign at the end of the text</source>
        <translation>ein Anführungszeichen ans Ende des Textes setzen</translation>
    </message>
    <message>
        <source>a tab stands before the first word of this line</source>
        <translation>vor dem ersten Wort dieser Zeile steht ein Tabulator</translation>
    </message>
    <message>
        <source>indent with spaces</source>
        <translation>mit Leerzeichen einrücken</translation>
    </message>
    <message>
        <source>this is not YAML: %1</source>
        <translation>das ist kein YAML: %1</translation>
    </message>
    <message>
        <source>check brackets, quotes and indentation here; a text with : or # goes in quotes</source>
        <translation>hier Klammern, Anführungszeichen und Einrückung prüfen; ein Text mit : oder # gehört in Anführungszeichen</translation>
    </message>
    <message>
        <source>the file holds more than one document</source>
        <translation>die Datei enthält mehr als ein Dokument</translation>
    </message>
    <message>
        <source>keep one rig in a file</source>
        <translation>ein Rig je Datei behalten</translation>
    </message>
    <message>
        <source>lists and maps are nested more than 32 deep</source>
        <translation>Listen und Zuordnungen sind tiefer als 32-fach verschachtelt</translation>
    </message>
    <message>
        <source>write the rig with less nesting</source>
        <translation>das Rig mit weniger Verschachtelung schreiben</translation>
    </message>
    <message>
        <source>the file cannot be read as YAML: %1</source>
        <translation>die Datei lässt sich nicht als YAML lesen: %1</translation>
    </message>
    <message>
        <source>check it in a text editor</source>
        <translation>sie in einem Texteditor prüfen</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a map</source>
        <translation>eine Zuordnung</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <source>trapezoid</source>
        <translation>Trapez</translation>
    </message>
    <message>
        <source>jerk-limited</source>
        <translation>ruckbegrenzt</translation>
    </message>
    <message>
        <source>minimum-jerk</source>
        <translation>minimaler Ruck</translation>
    </message>
    <message>
        <source>minimum-time</source>
        <translation>minimale Zeit</translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>triangular</source>
        <translation>Dreieck</translation>
    </message>
    <message>
        <source>arcsine</source>
        <translation>Arkussinus</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>What the rig is called, on the window and the sheet.</source>
        <translation>So heißt das Rig im Fenster und auf dem Entwurfsblatt.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Anything to remember about the rig.</source>
        <translation>Alles, was zum Rig zu merken ist.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What you call the body.</source>
        <translation>So wird der Körper genannt.</translation>
    </message>
    <message>
        <source>What stands there.</source>
        <translation>Was dort steht.</translation>
    </message>
    <message>
        <source>Outer diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Outside of one cable; usually 2 to 8 mm. Measure with a calliper.</source>
        <translation>Außenmaß eines Kabels; meist 2 bis 8 mm. Mit dem Messschieber messen.</translation>
    </message>
    <message>
        <source>Number of cables</source>
        <translation>Anzahl der Kabel</translation>
    </message>
    <message>
        <source>How many such cables cross the axis.</source>
        <translation>Wie viele solche Kabel über die Achse führen.</translation>
    </message>
    <message>
        <source>Free length</source>
        <translation>Freie Länge</translation>
    </message>
    <message>
        <source>Length of cable between the two clamps that takes up the turning; usually 100 to 600 mm.</source>
        <translation>Kabellänge zwischen den beiden Klemmen, die die Drehung aufnimmt; meist 100 bis 600 mm.</translation>
    </message>
    <message>
        <source>10 outer diameters (of a ribbon: thicknesses), NASA-STD-8739.4</source>
        <translation>10 Außendurchmesser (bei Flachkabel: Dicken), NASA-STD-8739.4</translation>
    </message>
    <message>
        <source>Bend radius</source>
        <translation>Biegeradius</translation>
    </message>
    <message>
        <source>Smallest radius for moving use; usually 7 to 10 outer diameters. In the cable's data sheet; how many bends it lives through is for its maker to say.</source>
        <translation>Kleinster Radius bei Bewegung; meist 7 bis 10 Außendurchmesser. Im Datenblatt des Kabels; wie viele Biegungen es aushält, sagt der Hersteller.</translation>
    </message>
    <message>
        <source>Twist rating</source>
        <translation>Zulässige Verdrillung</translation>
    </message>
    <message>
        <source>Twist that the cable bears each way per metre of free length; usually 180 to 1080 deg/m. In the cable's data sheet.</source>
        <translation>Verdrillung, die das Kabel je Richtung und Meter freier Länge aushält; meist 180 bis 1080 deg/m. Im Datenblatt des Kabels.</translation>
    </message>
    <message>
        <source>how so many round cables pack about the axis</source>
        <translation>wie sich so viele runde Kabel um die Achse packen</translation>
    </message>
    <message>
        <source>Lay radius</source>
        <translation>Lageradius der Kabel</translation>
    </message>
    <message>
        <source>Twist: from the axis to the centre of the outermost cable; 0 for one cable on the axis.</source>
        <translation>Bei twist: von der Achse zur Mitte des äußersten Kabels; 0 für ein Kabel auf der Achse.</translation>
    </message>
    <message>
        <source>Slack</source>
        <translation>Längenvorrat</translation>
    </message>
    <message>
        <source>Twist: spare length that the clamps leave when untwisted; usually 2 to 20 mm.</source>
        <translation>Bei twist: Mehrlänge, die die Klemmen unverdrillt lassen; meist 2 bis 20 mm.</translation>
    </message>
    <message>
        <source>Hub radius</source>
        <translation>Nabenradius</translation>
    </message>
    <message>
        <source>Coil: radius of the turning hub on which the cable winds; usually 10 to 40 mm.</source>
        <translation>Bei coil: Radius der drehenden Nabe, auf die sich das Kabel wickelt; meist 10 bis 40 mm.</translation>
    </message>
    <message>
        <source>Wall radius</source>
        <translation>Wandradius</translation>
    </message>
    <message>
        <source>Coil: inside radius of the fixed wall round the coil; usually 25 to 80 mm.</source>
        <translation>Bei coil: Innenradius der festen Wand um den Wickel; meist 25 bis 80 mm.</translation>
    </message>
    <message>
        <source>the outer diameter</source>
        <translation>der Außendurchmesser</translation>
    </message>
    <message>
        <source>Thickness in the coil</source>
        <translation>Dicke im Wickel</translation>
    </message>
    <message>
        <source>Coil: thickness of one layer; that of a ribbon is less than its width.</source>
        <translation>Bei coil: Dicke einer Lage; bei Flachkabel kleiner als die Breite.</translation>
    </message>
    <message>
        <source>Fixed clamp radius</source>
        <translation>Radius der festen Klemme</translation>
    </message>
    <message>
        <source>Loop: from the axis to the clamp that stands still; usually 20 to 150 mm.</source>
        <translation>Bei loop: von der Achse zur feststehenden Klemme; meist 20 bis 150 mm.</translation>
    </message>
    <message>
        <source>Turning clamp radius</source>
        <translation>Radius der drehenden Klemme</translation>
    </message>
    <message>
        <source>Loop: from the axis to the clamp that turns; usually 20 to 100 mm.</source>
        <translation>Bei loop: von der Achse zur mitdrehenden Klemme; meist 20 bis 100 mm.</translation>
    </message>
    <message>
        <source>Torsional stiffness</source>
        <translation>Torsionssteifigkeit</translation>
    </message>
    <message>
        <source>Twist: torque times length per angle of one cable; usually 1e-4 to 5e-3 N.m2/rad. Turn a metre of it by hand with a scale.</source>
        <translation>Bei twist: Drehmoment mal Länge je Winkel eines Kabels; meist 1e-4 bis 5e-3 N.m2/rad. Einen Meter davon von Hand mit einer Waage verdrehen.</translation>
    </message>
    <message>
        <source>Bending stiffness</source>
        <translation>Biegesteifigkeit</translation>
    </message>
    <message>
        <source>Coil: moment per curvature of one cable; usually 1e-4 to 2e-2 N.m2.</source>
        <translation>Bei coil: Moment je Krümmung eines Kabels; meist 1e-4 bis 2e-2 N.m2.</translation>
    </message>
    <message>
        <source>Torque with which the cables rub or the slip ring brakes; a slip ring usually has 5 to 50 mN.m.</source>
        <translation>Drehmoment, mit dem die Kabel reiben oder der Schleifring bremst; ein Schleifring hat meist 5 bis 50 mN.m.</translation>
    </message>
    <message>
        <source>Conductors</source>
        <translation>Adern</translation>
    </message>
    <message>
        <source>Wires in one cable, supply and return counted apart.</source>
        <translation>Adern in einem Kabel, Hin- und Rückleiter einzeln gezählt.</translation>
    </message>
    <message>
        <source>Copper diameter</source>
        <translation>Kupferdurchmesser</translation>
    </message>
    <message>
        <source>Of one wire's copper, as a diameter or as a gauge such as 24 AWG.</source>
        <translation>Vom Kupfer einer Ader, als Durchmesser oder als Maß wie 24 AWG.</translation>
    </message>
    <message>
        <source>Current in a wire</source>
        <translation>Strom je Ader</translation>
    </message>
    <message>
        <source>Lasting current that one wire carries.</source>
        <translation>Dauerstrom, den eine Ader führt.</translation>
    </message>
    <message>
        <source>Length to the supply</source>
        <translation>Länge bis zur Versorgung</translation>
    </message>
    <message>
        <source>Of the whole lead, one way, for its voltage drop.</source>
        <translation>Der ganzen Zuleitung, einfacher Weg, für ihren Spannungsabfall.</translation>
    </message>
    <message>
        <source>Signal bandwidth</source>
        <translation>Signalbandbreite</translation>
    </message>
    <message>
        <source>Highest frequency that has to pass, about half the bit rate of the camera's link.</source>
        <translation>Höchste Frequenz, die durchkommen muss, etwa die halbe Bitrate der Kameraverbindung.</translation>
    </message>
    <message>
        <source>Slip ring circuits</source>
        <translation>Schleifring-Stromkreise</translation>
    </message>
    <message>
        <source>Rings that it has.</source>
        <translation>Anzahl seiner Ringe.</translation>
    </message>
    <message>
        <source>Slip ring current</source>
        <translation>Schleifringstrom</translation>
    </message>
    <message>
        <source>Lasting current that one ring may carry.</source>
        <translation>Dauerstrom, den ein Ring führen darf.</translation>
    </message>
    <message>
        <source>Slip ring bandwidth</source>
        <translation>Schleifringbandbreite</translation>
    </message>
    <message>
        <source>Highest frequency that the ring passes. In its data sheet.</source>
        <translation>Höchste Frequenz, die der Ring durchlässt. In seinem Datenblatt.</translation>
    </message>
    <message>
        <source>Routing</source>
        <translation>Kabelführung</translation>
    </message>
    <message>
        <source>How the cable takes up the turning: by a twist along the axis (twist), a clock spring coil (coil), a hanging loop (loop), or a slip ring (slip_ring), whose brushes turn without end.</source>
        <translation>Wie das Kabel die Drehung aufnimmt: durch Verdrillung entlang der Achse (twist), Uhrfederwickel (coil), hängende Schlaufe (loop) oder Schleifring (slip_ring), dessen Bürsten endlos drehen.</translation>
    </message>
    <message>
        <source>Mounting error</source>
        <translation>Montagefehler</translation>
    </message>
    <message>
        <source>Largest angle by which stand and camera are mounted amiss; usually 0.2 to 2 deg.</source>
        <translation>Größter Winkel, um den Stativ und Kamera falsch montiert sind; meist 0,2 bis 2 deg.</translation>
    </message>
    <message>
        <source>Calibration error</source>
        <translation>Kalibrierfehler</translation>
    </message>
    <message>
        <source>Largest angle that is left after the camera was calibrated to the axes; usually 0.05 to 0.5 deg.</source>
        <translation>Größter Winkel, der nach dem Kalibrieren der Kamera auf die Achsen bleibt; meist 0,05 bis 0,5 deg.</translation>
    </message>
    <message>
        <source>Standard deviation of the place that the detector finds; usually 0.5 to 10 px.</source>
        <translation>Standardabweichung des Orts, den der Detektor findet; meist 0,5 bis 10 px.</translation>
    </message>
    <message>
        <source>Pan to</source>
        <translation>Pan nach</translation>
    </message>
    <message>
        <source>Pan angle that the move goes to.</source>
        <translation>Pan-Winkel, zu dem die Bewegung führt.</translation>
    </message>
    <message>
        <source>Tilt to</source>
        <translation>Tilt nach</translation>
    </message>
    <message>
        <source>Tilt angle that the move goes to.</source>
        <translation>Tilt-Winkel, zu dem die Bewegung führt.</translation>
    </message>
    <message>
        <source>Dwell</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>How long it rests there until the next move; usually 0.2 to 30 s.</source>
        <translation>Wie lange es dort bis zur nächsten Bewegung ruht; meist 0,2 bis 30 s.</translation>
    </message>
    <message>
        <source>What you call the gearbox, for the sheet and the shopping list.</source>
        <translation>So wird das Getriebe genannt, für Entwurfsblatt und Einkaufsliste.</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Übersetzung</translation>
    </message>
    <message>
        <source>Motor speed over output speed; 3 to 10 for one planetary stage, 12 to 60 for two, 1 without a gearbox.</source>
        <translation>Motordrehzahl durch Abtriebsdrehzahl; 3 bis 10 für eine Planetenstufe, 12 bis 60 für zwei, 1 ohne Getriebe.</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>Power out over power in while the motor drives; 0.95 to 0.97 a metal stage, 0.8 to 0.9 a printed one.</source>
        <translation>Abgegebene durch aufgenommene Leistung, wenn der Motor treibt; je Stufe 0,95 bis 0,97 aus Metall, 0,8 bis 0,9 gedruckt.</translation>
    </message>
    <message>
        <source>2 - 1 / efficiency</source>
        <translation>2 - 1 / Wirkungsgrad</translation>
    </message>
    <message>
        <source>Back-driving efficiency</source>
        <translation>Rücktreibwirkungsgrad</translation>
    </message>
    <message>
        <source>Power that reaches the motor over power of the load while the load drives; near 2 - 1/efficiency. 0 means that the gear locks itself.</source>
        <translation>Leistung, die den Motor erreicht, durch Leistung der Last, wenn die Last treibt; nahe 2 - 1/Wirkungsgrad. 0 heißt: das Getriebe ist selbsthemmend.</translation>
    </message>
    <message>
        <source>Inertia at the input</source>
        <translation>Trägheitsmoment am Antrieb</translation>
    </message>
    <message>
        <source>Inertia of the gears as the motor feels it; usually 1 to 100 g.cm2. In the data sheet.</source>
        <translation>Trägheitsmoment des Getriebes, wie der Motor es spürt; meist 1 bis 100 g.cm2. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Free play at the output from flank to flank; 3 to 20 arcmin for metal, 20 to 120 for printed gears. Hold the motor and rock the output.</source>
        <translation>Spiel am Abtrieb von Flanke zu Flanke; 3 bis 20 arcmin bei Metall, 20 bis 120 bei gedruckten Zahnrädern. Den Motor festhalten und am Abtrieb wackeln.</translation>
    </message>
    <message>
        <source>Torque that winds the output by an angle with the motor held, past the play; usually 100 to 5000 N.m/rad.</source>
        <translation>Drehmoment je Winkel, um den sich der Abtrieb bei festgehaltenem Motor jenseits des Spiels verdreht; meist 100 bis 5000 N.m/rad.</translation>
    </message>
    <message>
        <source>Torsional damping</source>
        <translation>Torsionsdämpfung</translation>
    </message>
    <message>
        <source>Damping across the gear's spring; usually 0.05 to 2 N.m.s/rad. 0 is the cautious side.</source>
        <translation>Dämpfung parallel zur Feder des Getriebes; meist 0,05 bis 2 N.m.s/rad. 0 liegt auf der sicheren Seite.</translation>
    </message>
    <message>
        <source>Drag at the input</source>
        <translation>Schleppmoment am Antrieb</translation>
    </message>
    <message>
        <source>Torque at the input that keeps the unloaded gearbox just turning; usually 2 to 50 mN.m. Measure with a lever and a small weight.</source>
        <translation>Drehmoment am Antrieb, das das unbelastete Getriebe gerade noch dreht; meist 2 bis 50 mN.m. Mit Hebel und kleinem Gewicht messen.</translation>
    </message>
    <message>
        <source>Viscous drag at the input</source>
        <translation>Viskoses Schleppmoment am Antrieb</translation>
    </message>
    <message>
        <source>Part of the drag that grows with the input's speed; usually 5 to 200 uN.m.s/rad.</source>
        <translation>Anteil des Schleppmoments, der mit der Antriebsdrehzahl wächst; meist 5 bis 200 uN.m.s/rad.</translation>
    </message>
    <message>
        <source>Rated torque</source>
        <translation>Nennmoment</translation>
    </message>
    <message>
        <source>Output torque that the teeth carry for the whole life, or none for no limit. In the data sheet.</source>
        <translation>Abtriebsmoment, das die Zähne die ganze Lebensdauer tragen, oder none für keine Grenze. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Peak torque</source>
        <translation>Spitzenmoment</translation>
    </message>
    <message>
        <source>Output torque that the teeth carry for short starts and stops, often twice the rated one, or none for no limit. In the data sheet.</source>
        <translation>Abtriebsmoment, das die Zähne bei kurzem Anfahren und Bremsen tragen, oft das Doppelte des Nennmoments, oder none für keine Grenze. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Input speed limit</source>
        <translation>Grenze der Antriebsdrehzahl</translation>
    </message>
    <message>
        <source>Fastest speed at the input; usually 4000 to 10 000 rpm, or none. In the data sheet.</source>
        <translation>Höchste Drehzahl am Antrieb; meist 4000 bis 10 000 rpm, oder none. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Mass of the gearbox without the motor; usually 50 to 1500 g. Put it on a scale.</source>
        <translation>Masse des Getriebes ohne Motor; meist 50 bis 1500 g. Auf die Waage legen.</translation>
    </message>
    <message>
        <source>Overhung load</source>
        <translation>Radiallast am Abtrieb</translation>
    </message>
    <message>
        <source>Radial force that the output shaft bears; usually 50 to 2000 N. In the data sheet.</source>
        <translation>Radialkraft, die die Abtriebswelle aushält; meist 50 bis 2000 N. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Overhung load at</source>
        <translation>Abstand der Radiallast</translation>
    </message>
    <message>
        <source>How far from the output's face the data sheet has it act.</source>
        <translation>Wie weit von der Abtriebsfläche sie laut Datenblatt angreift.</translation>
    </message>
    <message>
        <source>Axial load</source>
        <translation>Axiallast</translation>
    </message>
    <message>
        <source>Force along the output shaft that it bears. In the data sheet.</source>
        <translation>Kraft längs der Abtriebswelle, die sie aushält. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Load at</source>
        <translation>Abstand der Last</translation>
    </message>
    <message>
        <source>From the output's face to the centre of what hangs on it, along the axis; usually 10 to 120 mm.</source>
        <translation>Von der Abtriebsfläche zur Mitte dessen, was daran hängt, längs der Achse; meist 10 bis 120 mm.</translation>
    </message>
    <message>
        <source>Bits</source>
        <translation>Bits</translation>
    </message>
    <message>
        <source>Resolution: 2 to this power steps a turn; usually 12 to 21. In the data sheet.</source>
        <translation>Auflösung: 2 hoch diese Zahl Schritte je Umdrehung; meist 12 bis 21. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Largest difference between reading and true angle of the encoder's own shaft; usually 0.02 to 1 deg. In the data sheet as nonlinearity.</source>
        <translation>Größte Abweichung der Anzeige vom wahren Winkel der Encoderwelle selbst; meist 0,02 bis 1 deg. Im Datenblatt als Nichtlinearität.</translation>
    </message>
    <message>
        <source>Magnet offset</source>
        <translation>Magnetversatz</translation>
    </message>
    <message>
        <source>From the magnet's axis to the shaft's; usually 0.05 to 0.3 mm.</source>
        <translation>Von der Achse des Magneten zur Wellenachse; meist 0,05 bis 0,3 mm.</translation>
    </message>
    <message>
        <source>Magnet tilt</source>
        <translation>Magnetverkippung</translation>
    </message>
    <message>
        <source>Between the magnet's face and the sensor's; usually 0.5 to 3 deg.</source>
        <translation>Zwischen Magnetfläche und Sensorfläche; meist 0,5 bis 3 deg.</translation>
    </message>
    <message>
        <source>Magnet gap</source>
        <translation>Magnetabstand</translation>
    </message>
    <message>
        <source>From the magnet's face to the sensing plane inside the chip; usually 0.8 to 3 mm.</source>
        <translation>Von der Magnetfläche zur Messebene im Chip; meist 0,8 bis 3 mm.</translation>
    </message>
    <message>
        <source>Magnet diameter</source>
        <translation>Magnetdurchmesser</translation>
    </message>
    <message>
        <source>Of the disc magnetised across its diameter; usually 4 to 10 mm.</source>
        <translation>Der in Durchmesserrichtung magnetisierten Scheibe; meist 4 bis 10 mm.</translation>
    </message>
    <message>
        <source>Magnet thickness</source>
        <translation>Magnetdicke</translation>
    </message>
    <message>
        <source>Usually 2 to 4 mm.</source>
        <translation>Meist 2 bis 4 mm.</translation>
    </message>
    <message>
        <source>Magnet remanence</source>
        <translation>Magnetremanenz</translation>
    </message>
    <message>
        <source>About 1.2 T for a neodymium magnet of usual grade, 0.4 T for ferrite.</source>
        <translation>Etwa 1,2 T bei einem Neodym-Magneten üblicher Güte, 0,4 T bei Ferrit.</translation>
    </message>
    <message>
        <source>Least field</source>
        <translation>Kleinstes Magnetfeld</translation>
    </message>
    <message>
        <source>Weakest field that the sensor works with; usually 20 to 40 mT. In its data sheet.</source>
        <translation>Schwächstes Feld, mit dem der Sensor arbeitet; meist 20 bis 40 mT. In seinem Datenblatt.</translation>
    </message>
    <message>
        <source>Most field</source>
        <translation>Größtes Magnetfeld</translation>
    </message>
    <message>
        <source>Strongest field that the sensor works with; usually 70 to 100 mT. In its data sheet.</source>
        <translation>Stärkstes Feld, mit dem der Sensor arbeitet; meist 70 bis 100 mT. In seinem Datenblatt.</translation>
    </message>
    <message>
        <source>Mounted at</source>
        <translation>Sitzt an</translation>
    </message>
    <message>
        <source>Whether the encoder reads the motor's shaft (before the play and the spring of the gear) or the output.</source>
        <translation>Ob der Encoder die Motorwelle (vor Spiel und Feder des Getriebes) oder den Abtrieb abliest.</translation>
    </message>
    <message>
        <source>Motor sensor</source>
        <translation>Motorgeber</translation>
    </message>
    <message>
        <source>Whether the drive commutates by a sensor of the motor's own, halls or a second encoder; asked where the encoder is at the output, behind the play and the spring of the gear.</source>
        <translation>Ob der Regler nach einem eigenen Geber des Motors kommutiert, Hall-Sensoren oder einem zweiten Encoder; gefragt, wo der Encoder am Abtrieb sitzt, hinter Spiel und Feder des Getriebes.</translation>
    </message>
    <message>
        <source>Coulomb friction</source>
        <translation>Coulomb-Reibung</translation>
    </message>
    <message>
        <source>Torque at the output that keeps the load just turning, bearings and cables without the gearbox; usually 10 to 200 mN.m. Pull with a spring scale on a lever.</source>
        <translation>Drehmoment am Abtrieb, das die Last gerade noch dreht, Lager und Kabel ohne Getriebe; meist 10 bis 200 mN.m. Mit einer Federwaage an einem Hebel ziehen.</translation>
    </message>
    <message>
        <source>Viscous friction</source>
        <translation>Viskose Reibung</translation>
    </message>
    <message>
        <source>Part of the output's friction that grows with speed; usually 0 to 20 mN.m.s/rad.</source>
        <translation>Anteil der Reibung am Abtrieb, der mit der Drehzahl wächst; meist 0 bis 20 mN.m.s/rad.</translation>
    </message>
    <message>
        <source>the Coulomb friction</source>
        <translation>die Coulomb-Reibung</translation>
    </message>
    <message>
        <source>Breakaway torque</source>
        <translation>Losbrechmoment</translation>
    </message>
    <message>
        <source>Torque at the output that starts the load from rest; usually 1.1 to 2 times the Coulomb friction.</source>
        <translation>Drehmoment am Abtrieb, das die Last aus der Ruhe in Gang setzt; meist das 1,1- bis 2-Fache der Coulomb-Reibung.</translation>
    </message>
    <message>
        <source>Stribeck speed</source>
        <translation>Stribeck-Drehzahl</translation>
    </message>
    <message>
        <source>Output speed at which the friction has fallen from breakaway 63 % of the way to Coulomb's; usually 0.1 to 5 deg/s.</source>
        <translation>Abtriebsdrehzahl, bei der die Reibung vom Losbrechen um 63 % des Wegs zur Coulomb-Reibung gefallen ist; meist 0,1 bis 5 deg/s.</translation>
    </message>
    <message>
        <source>Homing by</source>
        <translation>Referenzfahrt durch</translation>
    </message>
    <message>
        <source>How the output angle is found after power-up: push to a stop (stop), pass a flag (flag), read an encoder at the output, or compare with a second encoder (second_encoder) of another ratio.</source>
        <translation>Wie nach dem Einschalten der Abtriebswinkel gefunden wird: gegen einen Anschlag fahren (stop), an einer Schaltfahne vorbeifahren (flag), einen Encoder am Abtrieb lesen (output), oder ein zweiter Encoder (second_encoder) anderer Übersetzung zum Vergleich.</translation>
    </message>
    <message>
        <source>Keeps count</source>
        <translation>Behält Zählerstand</translation>
    </message>
    <message>
        <source>Whether the drive still knows the motor's turns after a restart.</source>
        <translation>Ob der Antriebsregler die Umdrehungen des Motors nach einem Neustart noch kennt.</translation>
    </message>
    <message>
        <source>Homing current</source>
        <translation>Strom der Referenzfahrt</translation>
    </message>
    <message>
        <source>Phase current amplitude with which it pushes to the stop; enough to beat friction, too little to hurt the gears.</source>
        <translation>Amplitude des Phasenstroms, mit dem es an den Anschlag drückt; genug gegen die Reibung, zu wenig, um den Zahnrädern zu schaden.</translation>
    </message>
    <message>
        <source>Output speed while it looks for its stop or flag; usually 10 to 60 deg/s.</source>
        <translation>Abtriebsdrehzahl beim Suchen von Anschlag oder Schaltfahne; meist 10 bis 60 deg/s.</translation>
    </message>
    <message>
        <source>Flag error</source>
        <translation>Fehler der Schaltfahne</translation>
    </message>
    <message>
        <source>How far off the flag may be found, at the output; usually 0.2 to 1 deg.</source>
        <translation>Wie weit daneben die Schaltfahne gefunden werden kann, am Abtrieb; meist 0,2 bis 1 deg.</translation>
    </message>
    <message>
        <source>Second encoder ratio</source>
        <translation>Übersetzung des zweiten Encoders</translation>
    </message>
    <message>
        <source>Turns of the second encoder per turn of the output, for instance 17 beside a gearbox of 18.</source>
        <translation>Umdrehungen des zweiten Encoders je Umdrehung des Abtriebs, zum Beispiel 17 neben einem Getriebe mit 18.</translation>
    </message>
    <message>
        <source>Second encoder error</source>
        <translation>Fehler des zweiten Encoders</translation>
    </message>
    <message>
        <source>Error of the second encoder in its own turns, gear play included; usually 0.2 to 2 deg.</source>
        <translation>Fehler des zweiten Encoders in seinen eigenen Umdrehungen, mit Zahnspiel; meist 0,2 bis 2 deg.</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Grundstellung</translation>
    </message>
    <message>
        <source>Axis angle that it goes to once it knows where it is.</source>
        <translation>Achswinkel, der angefahren wird, sobald die Lage bekannt ist.</translation>
    </message>
    <message>
        <source>the home angle</source>
        <translation>der Winkel der Grundstellung</translation>
    </message>
    <message>
        <source>Park</source>
        <translation>Parklage</translation>
    </message>
    <message>
        <source>Axis angle at which it is left when powered off.</source>
        <translation>Achswinkel, in dem die Achse beim Ausschalten bleibt.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Two apart (pair): their spacing bears the moment. One alone (single): it bears the moment itself, such as a crossed-roller ring. Those in the gearbox (gearbox): there are no others.</source>
        <translation>Zwei mit Abstand (pair): der Abstand trägt das Moment. Eines allein (single): es trägt das Moment selbst, etwa ein Kreuzrollenlager. Die im Getriebe (gearbox): andere gibt es nicht.</translation>
    </message>
    <message>
        <source>Rolls on</source>
        <translation>Wälzkörper</translation>
    </message>
    <message>
        <source>What rolls in the bearing: balls or rollers.</source>
        <translation>Was im Lager rollt: Kugeln oder Rollen.</translation>
    </message>
    <message>
        <source>Dynamic rating C</source>
        <translation>Dynamische Tragzahl C</translation>
    </message>
    <message>
        <source>Basic dynamic load rating of one bearing; usually 300 to 10 000 N. In the catalogue.</source>
        <translation>Dynamische Tragzahl eines Lagers; meist 300 bis 10 000 N. Im Katalog.</translation>
    </message>
    <message>
        <source>Static rating C0</source>
        <translation>Statische Tragzahl C0</translation>
    </message>
    <message>
        <source>Basic static load rating of one bearing; usually 100 to 10 000 N. In the catalogue.</source>
        <translation>Statische Tragzahl eines Lagers; meist 100 bis 10 000 N. Im Katalog.</translation>
    </message>
    <message>
        <source>Moment rating</source>
        <translation>Zulässiges Kippmoment</translation>
    </message>
    <message>
        <source>Static tilting moment that a single bearing bears; usually 2 to 500 N.m. In the catalogue.</source>
        <translation>Statisches Kippmoment, das ein einzelnes Lager trägt; meist 2 bis 500 N.m. Im Katalog.</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Lagerabstand</translation>
    </message>
    <message>
        <source>Kind pair: from one bearing's centre to the other's; usually 10 to 120 mm.</source>
        <translation>Bei pair: von der Mitte des einen Lagers zu der des anderen; meist 10 bis 120 mm.</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Überhang</translation>
    </message>
    <message>
        <source>Along the axis, from the nearer bearing's centre to the centre of what it carries; negative where that lies between both bearings.</source>
        <translation>Längs der Achse, von der Mitte des näheren Lagers zur Mitte dessen, was es trägt; negativ, wenn diese zwischen beiden Lagern liegt.</translation>
    </message>
    <message>
        <source>Pitch diameter</source>
        <translation>Teilkreisdurchmesser</translation>
    </message>
    <message>
        <source>Mean of bore and outer diameter; usually 10 to 150 mm.</source>
        <translation>Mittel aus Bohrung und Außendurchmesser; meist 10 bis 150 mm.</translation>
    </message>
    <message>
        <source>Contact angle</source>
        <translation>Druckwinkel</translation>
    </message>
    <message>
        <source>0 deg for deep-groove bearings; 15 to 40 deg for angular contact.</source>
        <translation>0 deg bei Rillenkugellagern; 15 bis 40 deg bei Schräglagern.</translation>
    </message>
    <message>
        <source>Calculation factor f0</source>
        <translation>Berechnungsfaktor f0</translation>
    </message>
    <message>
        <source>Of a ball bearing's axial factor; usually 12 to 16. In the catalogue.</source>
        <translation>Für den Axialfaktor eines Kugellagers; meist 12 bis 16. Im Katalog.</translation>
    </message>
    <message>
        <source>Preload</source>
        <translation>Vorspannkraft</translation>
    </message>
    <message>
        <source>Axial force that presses the pair together; usually 0 to 100 N.</source>
        <translation>Axialkraft, die das Lagerpaar zusammendrückt; meist 0 bis 100 N.</translation>
    </message>
    <message>
        <source>Radial play</source>
        <translation>Radialluft</translation>
    </message>
    <message>
        <source>Of one bearing as mounted, from side to side; usually 0 to 20 um, 0 with preload.</source>
        <translation>Eines eingebauten Lagers, von Seite zu Seite; meist 0 bis 20 um, 0 bei Vorspannung.</translation>
    </message>
    <message>
        <source>Axial play</source>
        <translation>Axialluft</translation>
    </message>
    <message>
        <source>Of one bearing as mounted, from end to end; usually 0 to 150 um, 0 with preload.</source>
        <translation>Eines eingebauten Lagers, von Ende zu Ende; meist 0 bis 150 um, 0 bei Vorspannung.</translation>
    </message>
    <message>
        <source>Wanted life</source>
        <translation>Gewünschte Lebensdauer</translation>
    </message>
    <message>
        <source>Running hours that 90 % of such bearings should reach; usually 5000 to 40 000 hours.</source>
        <translation>Betriebsstunden, die 90 % solcher Lager erreichen sollen; meist 5000 bis 40 000 Stunden.</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Of the screws that hold the load on the output.</source>
        <translation>Der Schrauben, die die Last am Abtrieb halten.</translation>
    </message>
    <message>
        <source>Property class</source>
        <translation>Festigkeitsklasse</translation>
    </message>
    <message>
        <source>Of the screws: on their heads; A2-70 is the usual stainless steel.</source>
        <translation>Der Schrauben: auf dem Kopf; A2-70 ist der übliche Edelstahl.</translation>
    </message>
    <message>
        <source>Holds in</source>
        <translation>Gewinde sitzt in</translation>
    </message>
    <message>
        <source>What the thread is in: a nut (nut), metal, a heat-set insert (insert), or the print itself (print).</source>
        <translation>Worin das Gewinde sitzt: Mutter (nut), Metall (metal), Einschmelzbuchse (insert) oder Druckteil selbst (print).</translation>
    </message>
    <message>
        <source>Shaft joint</source>
        <translation>Wellenverbindung</translation>
    </message>
    <message>
        <source>How the load sits on a round shaft, if it does: clamped (clamp), by a flat (flat), by a key (key).</source>
        <translation>Wie die Last auf einer runden Welle sitzt, falls sie es tut: geklemmt (clamp), Abflachung (flat), Passfeder (key).</translation>
    </message>
    <message>
        <source>Screws</source>
        <translation>Schrauben</translation>
    </message>
    <message>
        <source>How many, spread over a circle; usually 4 to 8.</source>
        <translation>Wie viele, auf einem Kreis verteilt; meist 4 bis 8.</translation>
    </message>
    <message>
        <source>Circle diameter</source>
        <translation>Lochkreisdurchmesser</translation>
    </message>
    <message>
        <source>Of the circle on which the screws' centres lie; usually 16 to 80 mm.</source>
        <translation>Des Kreises, auf dem die Mitten der Schrauben liegen; meist 16 bis 80 mm.</translation>
    </message>
    <message>
        <source>Tightening torque</source>
        <translation>Anziehdrehmoment</translation>
    </message>
    <message>
        <source>Of one screw; 0.5 N.m for M2.5 to 10 N.m for M6, much less in prints.</source>
        <translation>Einer Schraube; 0,5 N.m bei M2.5 bis 10 N.m bei M6, viel weniger in Druckteilen.</translation>
    </message>
    <message>
        <source>Thread friction</source>
        <translation>Gewindereibung</translation>
    </message>
    <message>
        <source>Friction coefficient of thread and head; 0.12 to 0.18 dry, 0.08 to 0.12 greased.</source>
        <translation>Reibungszahl von Gewinde und Kopf; 0,12 bis 0,18 trocken, 0,08 bis 0,12 gefettet.</translation>
    </message>
    <message>
        <source>Face friction</source>
        <translation>Flächenreibung</translation>
    </message>
    <message>
        <source>Friction coefficient between the clamped faces; 0.1 to 0.15 for metal, 0.2 to 0.3 for plastics.</source>
        <translation>Reibungszahl zwischen den verspannten Flächen; 0,1 bis 0,15 bei Metall, 0,2 bis 0,3 bei Kunststoff.</translation>
    </message>
    <message>
        <source>Pull-out force</source>
        <translation>Ausreißkraft</translation>
    </message>
    <message>
        <source>Axial force that pulls one insert or printed thread out; usually 200 to 1500 N. Pull one out of a test piece.</source>
        <translation>Axialkraft, die eine Buchse oder ein gedrucktes Gewinde ausreißt; meist 200 bis 1500 N. An einem Probestück ausreißen.</translation>
    </message>
    <message>
        <source>Shaft diameter</source>
        <translation>Wellendurchmesser</translation>
    </message>
    <message>
        <source>Of the shaft where it is held; usually 4 to 20 mm.</source>
        <translation>Der Welle, wo sie gehalten wird; meist 4 bis 20 mm.</translation>
    </message>
    <message>
        <source>Length of the hold</source>
        <translation>Länge der Wellenbefestigung</translation>
    </message>
    <message>
        <source>Along the shaft; usually 8 to 30 mm.</source>
        <translation>Längs der Welle; meist 8 bis 30 mm.</translation>
    </message>
    <message>
        <source>Clamping force</source>
        <translation>Klemmkraft</translation>
    </message>
    <message>
        <source>Shaft clamp: of all its screws together; usually 1000 to 10 000 N.</source>
        <translation>Wellenklemmung: aller ihrer Schrauben zusammen; meist 1000 bis 10 000 N.</translation>
    </message>
    <message>
        <source>Bearable pressure</source>
        <translation>Zulässige Pressung</translation>
    </message>
    <message>
        <source>That flat, key or hub bear on their faces; usually 30 MPa for prints, 100 MPa for steel.</source>
        <translation>Die Abflachung, Passfeder oder Nabe an ihren Flächen tragen; meist 30 MPa bei Druckteilen, 100 MPa bei Stahl.</translation>
    </message>
    <message>
        <source>Counterweight arm</source>
        <translation>Hebelarm des Gegengewichts</translation>
    </message>
    <message>
        <source>From the axis to where a counterweight would sit, opposite to the centre of mass; usually 20 to 120 mm.</source>
        <translation>Von der Achse dorthin, wo ein Gegengewicht säße, dem Schwerpunkt gegenüber; meist 20 bis 120 mm.</translation>
    </message>
    <message>
        <source>Counterweight density</source>
        <translation>Dichte des Gegengewichts</translation>
    </message>
    <message>
        <source>7.85 g/cm3 for steel, 11.3 for lead, 19 for tungsten.</source>
        <translation>7,85 g/cm3 für Stahl, 11,3 für Blei, 19 für Wolfram.</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>Name of a built-in material, such as pla, petg, asa, nylon, polycarbonate, aluminium or steel, or of one of the rig's own.</source>
        <translation>Name eines eingebauten Werkstoffs, etwa pla, petg, asa, nylon, polycarbonate, aluminium oder steel, oder eines eigenen des Rigs.</translation>
    </message>
    <message>
        <source>Support</source>
        <translation>Abstützung</translation>
    </message>
    <message>
        <source>Side arm (side): it alone carries the tilt axis. Fork of two arms (fork): both do.</source>
        <translation>Arm an der Seite (side): er trägt die Tilt-Achse allein. Gabel aus zwei Armen (fork): beide tragen sie.</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Hollow (box): with a wall. Full or filled (bar): without one.</source>
        <translation>Hohl (box): mit Wand. Voll oder gefüllt (bar): ohne.</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Schichten</translation>
    </message>
    <message>
        <source>How the print's layers lie: along the arm (along), or across the arm (across), which is weaker.</source>
        <translation>Wie die Schichten des Druckteils liegen: längs zum Arm (along) oder quer zum Arm (across), was schwächer ist.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>From where it is held to the tilt axis; usually 60 to 250 mm.</source>
        <translation>Von der Einspannung zur Tilt-Achse; meist 60 bis 250 mm.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Of the section, across the tilt axis; usually 20 to 60 mm.</source>
        <translation>Des Querschnitts, quer zur Tilt-Achse; meist 20 bis 60 mm.</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Of the section, along the tilt axis; usually 6 to 25 mm.</source>
        <translation>Des Querschnitts, längs der Tilt-Achse; meist 6 bis 25 mm.</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Of a box section; usually 1.6 to 4 mm when printed.</source>
        <translation>Eines Kastenquerschnitts; gedruckt meist 1,6 bis 4 mm.</translation>
    </message>
    <message>
        <source>Infill</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>Part of the inside that is filled, of a bar all of it unless entered; usually 0.15 to 0.4.</source>
        <translation>Gefüllter Teil des Innern, bei einem Stab ganz, wenn nicht eingetragen; meist 0,15 bis 0,4.</translation>
    </message>
    <message>
        <source>Modulus</source>
        <translation>Elastizitätsmodul</translation>
    </message>
    <message>
        <source>Elastic modulus along the arm instead of the material's; usually 1.5 to 3.5 GPa printed.</source>
        <translation>Elastizitätsmodul längs des Arms statt des Werts des Werkstoffs; gedruckt meist 1,5 bis 3,5 GPa.</translation>
    </message>
    <message>
        <source>As the rig's parts call it.</source>
        <translation>So nennen es die Teile des Rigs.</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Where the values come from.</source>
        <translation>Woher die Werte stammen.</translation>
    </message>
    <message>
        <source>Elastic modulus along the layers; usually 1.5 to 3.5 GPa printed.</source>
        <translation>Elastizitätsmodul längs der Schichten; gedruckt meist 1,5 bis 3,5 GPa.</translation>
    </message>
    <message>
        <source>Modulus across layers</source>
        <translation>Elastizitätsmodul quer zu den Schichten</translation>
    </message>
    <message>
        <source>Elastic modulus across the layers; usually 60 to 95 % of that along them.</source>
        <translation>Elastizitätsmodul quer zu den Schichten; meist 60 bis 95 % des Werts längs.</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Festigkeit</translation>
    </message>
    <message>
        <source>Tensile strength along the layers; usually 25 to 60 MPa printed.</source>
        <translation>Zugfestigkeit längs der Schichten; gedruckt meist 25 bis 60 MPa.</translation>
    </message>
    <message>
        <source>Strength across layers</source>
        <translation>Festigkeit quer zu den Schichten</translation>
    </message>
    <message>
        <source>Tensile strength across the layers; usually 30 to 70 % of that along them.</source>
        <translation>Zugfestigkeit quer zu den Schichten; meist 30 bis 70 % derjenigen längs dazu.</translation>
    </message>
    <message>
        <source>Softening</source>
        <translation>Erweichung</translation>
    </message>
    <message>
        <source>Temperature at which it gives way under load; 55 degC for pla, 70 for petg.</source>
        <translation>Temperatur, bei der der Werkstoff unter Last nachgibt; 55 degC bei pla, 70 bei petg.</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>Solid; usually 1.0 to 1.3 g/cm3 for plastics.</source>
        <translation>Massiv; bei Kunststoffen meist 1,0 bis 1,3 g/cm3.</translation>
    </message>
    <message>
        <source>Position gain</source>
        <translation>Lageverstärkung</translation>
    </message>
    <message>
        <source>Commanded output speed per angle of error; usually 10 to 80 1/s. In the drive's settings.</source>
        <translation>Sollwert der Abtriebsdrehzahl je Winkelfehler; meist 10 bis 80 1/s. In den Einstellungen des Antriebsreglers.</translation>
    </message>
    <message>
        <source>Speed gain</source>
        <translation>Drehzahlverstärkung</translation>
    </message>
    <message>
        <source>Commanded output torque per output speed error; usually 0.1 to 10 N.m.s/rad. In the drive's settings.</source>
        <translation>Sollwert des Abtriebsmoments je Drehzahlfehler am Abtrieb; meist 0,1 bis 10 N.m.s/rad. In den Einstellungen des Antriebsreglers.</translation>
    </message>
    <message>
        <source>Speed integral gain</source>
        <translation>Integralverstärkung der Drehzahl</translation>
    </message>
    <message>
        <source>Output torque that a lasting speed error adds, per angle it has missed; usually 0 to 100 N.m/rad.</source>
        <translation>Abtriebsmoment, das ein anhaltender Drehzahlfehler je verfehltem Winkel hinzufügt; meist 0 bis 100 N.m/rad.</translation>
    </message>
    <message>
        <source>Speed limit</source>
        <translation>Drehzahlgrenze</translation>
    </message>
    <message>
        <source>Output speed that the position loop never asks beyond; usually 200 to 1500 deg/s, or none.</source>
        <translation>Abtriebsdrehzahl, über die die Lageregelung nie hinausgeht; meist 200 bis 1500 deg/s, oder none.</translation>
    </message>
    <message>
        <source>Speed estimator bandwidth</source>
        <translation>Bandbreite des Drehzahlschätzers</translation>
    </message>
    <message>
        <source>Frequency up to which the drive's speed reading follows the encoder; usually 50 to 1000 Hz. In the drive's settings.</source>
        <translation>Frequenz, bis zu der der Drehzahlwert des Antriebsreglers dem Encoder folgt; meist 50 bis 1000 Hz. In den Einstellungen des Antriebsreglers.</translation>
    </message>
    <message>
        <source>Speed feed-forward</source>
        <translation>Drehzahlvorsteuerung</translation>
    </message>
    <message>
        <source>Part of a planned move's speed that is added to the speed command; 1 is all of it.</source>
        <translation>Anteil der Geschwindigkeit einer geplanten Bewegung, der zum Drehzahlsollwert addiert wird; 1 ist alles.</translation>
    </message>
    <message>
        <source>Acceleration feed-forward</source>
        <translation>Beschleunigungsvorsteuerung</translation>
    </message>
    <message>
        <source>Part of the torque that a planned move needs for its acceleration and that is added to the torque command; 1 is all of it.</source>
        <translation>Anteil des Drehmoments für die Beschleunigung einer geplanten Bewegung, der zum Momentensollwert addiert wird; 1 ist alles.</translation>
    </message>
    <message>
        <source>80 % of what the axis can do</source>
        <translation>80 % dessen, was die Achse kann</translation>
    </message>
    <message>
        <source>Acceleration limit</source>
        <translation>Beschleunigungsgrenze</translation>
    </message>
    <message>
        <source>Largest acceleration of a planned move, at the output; usually 2000 to 50 000 deg/s2.</source>
        <translation>Größte Beschleunigung einer geplanten Bewegung, am Abtrieb; meist 2000 bis 50 000 deg/s2.</translation>
    </message>
    <message>
        <source>so that the jerk takes a quarter of the time of speeding up</source>
        <translation>so, dass der Ruck ein Viertel der Beschleunigungszeit dauert</translation>
    </message>
    <message>
        <source>Jerk limit</source>
        <translation>Ruckgrenze</translation>
    </message>
    <message>
        <source>Fastest change of a planned move's acceleration, at the output; usually 1e5 to 1e7 deg/s3.</source>
        <translation>Schnellste Änderung der Beschleunigung einer geplanten Bewegung, am Abtrieb; meist 1e5 bis 1e7 deg/s3.</translation>
    </message>
    <message>
        <source>Wanted bandwidth</source>
        <translation>Gewünschte Bandbreite</translation>
    </message>
    <message>
        <source>Crossover of the speed loop that the advised gains aim at; left out they aim as high as is sound.</source>
        <translation>Durchtritt der Drehzahlregelung, auf den die empfohlenen Verstärkungen zielen; ohne Angabe so hoch wie vertretbar.</translation>
    </message>
    <message>
        <source>Wanted phase margin</source>
        <translation>Gewünschte Phasenreserve</translation>
    </message>
    <message>
        <source>Phase margin that the advised gains keep; usually 40 to 60 deg.</source>
        <translation>Phasenreserve, die die empfohlenen Verstärkungen einhalten; meist 40 bis 60 deg.</translation>
    </message>
    <message>
        <source>Bracket stiffness</source>
        <translation>Steifigkeit des Halters</translation>
    </message>
    <message>
        <source>Torque that bends the arm between the output and the camera by an angle; usually 100 to 20 000 N.m/rad. Hold the output and pull at the camera.</source>
        <translation>Drehmoment, das den Arm zwischen Abtrieb und Kamera um einen Winkel biegt; meist 100 bis 20 000 N.m/rad. Abtrieb festhalten und an der Kamera ziehen.</translation>
    </message>
    <message>
        <source>Bracket damping</source>
        <translation>Dämpfung des Halters</translation>
    </message>
    <message>
        <source>Damping ratio of its swinging; 0.01 to 0.02 for metal, 0.02 to 0.05 for prints.</source>
        <translation>Dämpfungsgrad seiner Schwingung; 0,01 bis 0,02 bei Metall, 0,02 bis 0,05 bei Druckteilen.</translation>
    </message>
    <message>
        <source>What you call the motor, for the sheet and the shopping list.</source>
        <translation>Name des Motors für Entwurfsblatt und Einkaufsliste.</translation>
    </message>
    <message>
        <source>Bracket material</source>
        <translation>Werkstoff des Halters</translation>
    </message>
    <message>
        <source>Of the part that holds the motor: pla, petg, asa, nylon, polycarbonate, aluminium, steel, or one of the rig's own materials.</source>
        <translation>Des Teils, das den Motor hält: pla, petg, asa, nylon, polycarbonate, aluminium, steel oder einer der eigenen Werkstoffe des Rigs.</translation>
    </message>
    <message>
        <source>Insulation class</source>
        <translation>Wärmeklasse der Isolation</translation>
    </message>
    <message>
        <source>Thermal class of the winding; gives its limit where none is entered: A 105, E 120, B 130, F 155, H 180, N 200 degC.</source>
        <translation>Wärmeklasse der Wicklung; gibt deren Grenze vor, wo keine eingetragen ist: A 105, E 120, B 130, F 155, H 180, N 200 degC.</translation>
    </message>
    <message>
        <source>Speed constant (KV)</source>
        <translation>Drehzahlkonstante (KV)</translation>
    </message>
    <message>
        <source>No-load speed per volt of line-to-line back-EMF amplitude; usually 30 to 1000 rpm/V. On the motor's label as KV.</source>
        <translation>Leerlaufdrehzahl je Volt Amplitude der verketteten Gegen-EMK; meist 30 bis 1000 rpm/V. Auf dem Typenschild des Motors als KV.</translation>
    </message>
    <message>
        <source>Phase resistance</source>
        <translation>Strangwiderstand</translation>
    </message>
    <message>
        <source>Resistance of one phase to the star point at 20 degC, half of what a meter shows between two leads; usually 20 mohm to 10 ohm.</source>
        <translation>Widerstand eines Strangs bis zum Sternpunkt bei 20 degC, die Hälfte des zwischen zwei Motoranschlüssen gemessenen Werts; meist 20 mohm bis 10 ohm.</translation>
    </message>
    <message>
        <source>Phase inductance</source>
        <translation>Stranginduktivität</translation>
    </message>
    <message>
        <source>Inductance of one phase, half of what a meter shows between two leads; usually 5 to 5000 uH.</source>
        <translation>Induktivität eines Strangs, die Hälfte des zwischen zwei Motoranschlüssen gemessenen Werts; meist 5 bis 5000 uH.</translation>
    </message>
    <message>
        <source>Pole pairs</source>
        <translation>Polpaare</translation>
    </message>
    <message>
        <source>Magnets of the rotor divided by two; usually 4 to 21. Count the magnets.</source>
        <translation>Magnete des Rotors geteilt durch zwei; meist 4 bis 21. Magnete zählen.</translation>
    </message>
    <message>
        <source>Rotor inertia</source>
        <translation>Trägheitsmoment des Rotors</translation>
    </message>
    <message>
        <source>Inertia of everything that turns at motor speed, without the gearbox; usually 5 to 2000 g.cm2. In the data sheet, or from the mass and radius of the bell.</source>
        <translation>Trägheitsmoment von allem, was mit Motordrehzahl dreht, ohne Getriebe; meist 5 bis 2000 g.cm2. Im Datenblatt, oder aus Masse und Radius der Glocke.</translation>
    </message>
    <message>
        <source>Peak current</source>
        <translation>Spitzenstrom</translation>
    </message>
    <message>
        <source>Largest phase-current amplitude for a second or less; usually two to five times the lasting one. In the data sheet.</source>
        <translation>Größte Amplitude des Phasenstroms für höchstens eine Sekunde; meist das Zwei- bis Fünffache des Dauerstroms. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Mass of the motor; usually 30 to 1000 g. Put it on a scale.</source>
        <translation>Masse des Motors; meist 30 bis 1000 g. Auf die Waage legen.</translation>
    </message>
    <message>
        <source>Thermal resistance</source>
        <translation>Wärmewiderstand</translation>
    </message>
    <message>
        <source>How much hotter than the air the winding gets per watt of lasting loss, as mounted; usually 1 to 15 K/W.</source>
        <translation>Erwärmung der Wicklung über die Luft je Watt Dauerverlust, im eingebauten Zustand; meist 1 bis 15 K/W.</translation>
    </message>
    <message>
        <source>Thermal time constant</source>
        <translation>Thermische Zeitkonstante</translation>
    </message>
    <message>
        <source>Time in which a steady loss brings the winding 63 % of the way to its end temperature; usually 3 to 40 min.</source>
        <translation>Zeit, in der ein gleichbleibender Verlust die Wicklung zu 63 % auf ihre Endtemperatur bringt; meist 3 bis 40 min.</translation>
    </message>
    <message>
        <source>that of the insulation class, where it is stated</source>
        <translation>die der Wärmeklasse, sofern angegeben</translation>
    </message>
    <message>
        <source>Winding limit</source>
        <translation>Grenze der Wicklung</translation>
    </message>
    <message>
        <source>Hottest lasting temperature of the winding's insulation; usually 80 to 155 degC. In the data sheet.</source>
        <translation>Höchste Dauertemperatur der Wicklungsisolation; meist 80 bis 155 degC. Im Datenblatt.</translation>
    </message>
    <message>
        <source>Winding to housing</source>
        <translation>Wicklung zu Gehäuse</translation>
    </message>
    <message>
        <source>Part of the thermal resistance that lies between the winding and the housing; usually 10 to 40 % of it.</source>
        <translation>Anteil des Wärmewiderstands zwischen Wicklung und Gehäuse; meist 10 bis 40 % davon.</translation>
    </message>
    <message>
        <source>Winding time constant</source>
        <translation>Zeitkonstante der Wicklung</translation>
    </message>
    <message>
        <source>Time in which the winding follows the housing; usually 5 to 60 s.</source>
        <translation>Zeit, in der die Wicklung dem Gehäuse folgt; meist 5 bis 60 s.</translation>
    </message>
    <message>
        <source>Housing to bracket</source>
        <translation>Gehäuse zu Halter</translation>
    </message>
    <message>
        <source>How much cooler than the housing the bracket is per watt that flows into it; usually 0.5 to 5 K/W. Left out, the bracket is as hot as the housing.</source>
        <translation>Um wie viel der Halter kühler ist als das Gehäuse, je Watt, das in ihn fließt; meist 0,5 bis 5 K/W. Ohne Angabe ist der Halter so heiß wie das Gehäuse.</translation>
    </message>
    <message>
        <source>Magnet limit</source>
        <translation>Grenze der Magnete</translation>
    </message>
    <message>
        <source>Hottest temperature of the magnets; usually 80 to 150 degC.</source>
        <translation>Höchste Temperatur der Magnete; meist 80 bis 150 degC.</translation>
    </message>
    <message>
        <source>Bearing limit</source>
        <translation>Grenze der Lager</translation>
    </message>
    <message>
        <source>Hottest temperature of the bearings' grease; usually 90 to 120 degC.</source>
        <translation>Höchste Temperatur des Lagerfetts; meist 90 bis 120 degC.</translation>
    </message>
    <message>
        <source>Bracket softens at</source>
        <translation>Halter erweicht bei</translation>
    </message>
    <message>
        <source>Where the part that holds the motor gives way, instead of its material's value; usually 50 to 110 degC.</source>
        <translation>Wo das Teil nachgibt, das den Motor hält, anstelle des Werts seines Werkstoffs; meist 50 bis 110 degC.</translation>
    </message>
    <message>
        <source>Cogging torque</source>
        <translation>Rastmoment</translation>
    </message>
    <message>
        <source>Amplitude of the unpowered rotor's pull to its rest places; usually 1 to 5 % of the lasting torque. Hang weights on a lever until it snaps over.</source>
        <translation>Amplitude, mit der der stromlose Rotor in seine Raststellungen gezogen wird; meist 1 bis 5 % des Dauermoments. Gewichte an einen Hebel hängen, bis er umschnappt.</translation>
    </message>
    <message>
        <source>Cogging periods a turn</source>
        <translation>Rastperioden je Umdrehung</translation>
    </message>
    <message>
        <source>Rest places in one turn of the rotor: least common multiple of slots and poles.</source>
        <translation>Raststellungen je Umdrehung des Rotors: kleinstes gemeinsames Vielfaches von Nuten und Polen.</translation>
    </message>
    <message>
        <source>Current limit</source>
        <translation>Stromgrenze</translation>
    </message>
    <message>
        <source>Largest phase-current amplitude that the drive is set to or can give; usually 5 to 100 A.</source>
        <translation>Größte Amplitude des Phasenstroms, auf die der Antriebsregler eingestellt ist oder die er liefern kann; meist 5 bis 100 A.</translation>
    </message>
    <message>
        <source>Control rate</source>
        <translation>Regeltakt</translation>
    </message>
    <message>
        <source>How often the speed and position loops run; usually 1 to 20 kHz. In the drive's settings.</source>
        <translation>Wie oft Drehzahl- und Lageregelung laufen; meist 1 bis 20 kHz. In den Einstellungen des Antriebsreglers.</translation>
    </message>
    <message>
        <source>Current bandwidth</source>
        <translation>Strombandbreite</translation>
    </message>
    <message>
        <source>Frequency up to which the torque follows its command; usually 0.3 to 3 kHz. In the drive's settings.</source>
        <translation>Frequenz, bis zu der das Drehmoment seinem Sollwert folgt; meist 0,3 bis 3 kHz. In den Einstellungen des Antriebsreglers.</translation>
    </message>
    <message>
        <source>Modulation limit</source>
        <translation>Modulationsgrenze</translation>
    </message>
    <message>
        <source>Part of the bus voltage that the drive can use, 1 being the largest undistorted sine; usually 0.85 to 1.</source>
        <translation>Anteil der Zwischenkreisspannung, den der Antriebsregler nutzen kann, 1 ist der größte unverzerrte Sinus; meist 0,85 bis 1.</translation>
    </message>
    <message>
        <source>Output speed that the drive never commands beyond, or none. In the drive's settings.</source>
        <translation>Abtriebsdrehzahl, über die der Antriebsregler nie hinausgeht, oder none. In den Einstellungen des Antriebsreglers.</translation>
    </message>
    <message>
        <source>Idle power</source>
        <translation>Ruheleistung</translation>
    </message>
    <message>
        <source>What the drive and its fans take while nothing moves; usually 0.5 to 5 W.</source>
        <translation>Was der Antriebsregler und seine Lüfter aufnehmen, während sich nichts bewegt; meist 0,5 bis 5 W.</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Diameter of the solid ball.</source>
        <translation>Durchmesser der Vollkugel.</translation>
    </message>
    <message>
        <source>Outside of the hollow ball.</source>
        <translation>Außendurchmesser der Hohlkugel.</translation>
    </message>
    <message>
        <source>Wall of the hollow ball; 1.6 to 3 mm when printed.</source>
        <translation>Wandstärke der Hohlkugel; gedruckt 1,6 bis 3 mm.</translation>
    </message>
    <message>
        <source>Outside of the tube or rod.</source>
        <translation>Außendurchmesser des Rohrs oder Stabs.</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Inside of the tube; 0 mm for a solid rod.</source>
        <translation>Innendurchmesser des Rohrs; 0 mm bei einem Vollstab.</translation>
    </message>
    <message>
        <source>Length along the tube's own axis.</source>
        <translation>Länge entlang der eigenen Achse des Rohrs.</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>Which axis of its carrier the tube lies along.</source>
        <translation>Achse seines Trägers, entlang derer das Rohr liegt.</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Pixels across the picture; usually 640 to 4096.</source>
        <translation>Pixel über die Breite des Bilds; meist 640 bis 4096.</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>Pixels down the picture; usually 480 to 3072.</source>
        <translation>Pixel über die Höhe des Bilds; meist 480 bis 3072.</translation>
    </message>
    <message>
        <source>Horizontal view</source>
        <translation>Horizontaler Bildwinkel</translation>
    </message>
    <message>
        <source>Angle between the left and right edge of the picture; usually 20 to 120 deg. In the lens' data sheet.</source>
        <translation>Winkel zwischen linkem und rechtem Bildrand; meist 20 bis 120 deg. Im Datenblatt des Objektivs.</translation>
    </message>
    <message>
        <source>Exposure</source>
        <translation>Belichtung</translation>
    </message>
    <message>
        <source>How long one picture gathers light; usually 1 to 20 ms indoors.</source>
        <translation>Wie lange ein Bild Licht sammelt; in Räumen meist 1 bis 20 ms.</translation>
    </message>
    <message>
        <source>Frame rate</source>
        <translation>Bildrate</translation>
    </message>
    <message>
        <source>Pictures a second; usually 30 to 120 Hz.</source>
        <translation>Bilder je Sekunde; meist 30 bis 120 Hz.</translation>
    </message>
    <message>
        <source>Vision delay</source>
        <translation>Bildverzögerung</translation>
    </message>
    <message>
        <source>From the middle of the exposure to the new target angle: read-out, transfer and detection; usually 20 to 150 ms.</source>
        <translation>Von der Mitte der Belichtung bis zum neuen Zielwinkel: Auslesen, Übertragung und Erkennung; meist 20 bis 150 ms.</translation>
    </message>
    <message>
        <source>Readout</source>
        <translation>Auslesezeit</translation>
    </message>
    <message>
        <source>From the first row's exposure to the last row's: 0 ms for a global shutter, 5 to 30 ms for a rolling one.</source>
        <translation>Von der Belichtung der ersten Zeile bis zu der der letzten: 0 ms bei Global Shutter, 5 bis 30 ms bei Rolling Shutter.</translation>
    </message>
    <message>
        <source>Pan move</source>
        <translation>Pan-Bewegung</translation>
    </message>
    <message>
        <source>Size of the pan move that must be fast, centred on the rest pose; usually 10 to 90 deg.</source>
        <translation>Größe der Pan-Bewegung, die schnell sein muss, um die Ruhelage zentriert; meist 10 bis 90 deg.</translation>
    </message>
    <message>
        <source>Tilt move</source>
        <translation>Tilt-Bewegung</translation>
    </message>
    <message>
        <source>Size of the tilt move that must be fast, centred on the rest pose; usually 10 to 60 deg.</source>
        <translation>Größe der Tilt-Bewegung, die schnell sein muss, um die Ruhelage zentriert; meist 10 bis 60 deg.</translation>
    </message>
    <message>
        <source>Within</source>
        <translation>Innerhalb von</translation>
    </message>
    <message>
        <source>Time in which the move must have settled; an eye takes 40 to 200 ms.</source>
        <translation>Zeit, in der die Bewegung eingeschwungen sein muss; ein Auge braucht 40 bis 200 ms.</translation>
    </message>
    <message>
        <source>Settle band (pixels)</source>
        <translation>Einschwingband (Pixel)</translation>
    </message>
    <message>
        <source>How near to the target, each way, counts as settled, in pixels of the camera; usually 2 to 10.</source>
        <translation>Wie nahe am Ziel, nach jeder Seite, als eingeschwungen gilt, in Pixeln der Kamera; meist 2 bis 10.</translation>
    </message>
    <message>
        <source>Target distance</source>
        <translation>Zielentfernung</translation>
    </message>
    <message>
        <source>How far away what it looks at usually is; usually 0.5 to 10 m.</source>
        <translation>Wie weit das Betrachtete gewöhnlich entfernt ist; meist 0,5 bis 10 m.</translation>
    </message>
    <message>
        <source>Moves per minute</source>
        <translation>Bewegungen je Minute</translation>
    </message>
    <message>
        <source>How many such moves a minute over the day; an attentive eye makes 20 to 60.</source>
        <translation>Anzahl solcher Bewegungen je Minute über den Tag; ein aufmerksames Auge macht 20 bis 60.</translation>
    </message>
    <message>
        <source>Tilt axis at</source>
        <translation>Lage der Tilt-Achse</translation>
    </message>
    <message>
        <source>Where the tilt axis crosses the pan frame: forward, left and up of the pan axis' foot.</source>
        <translation>Wo die Tilt-Achse das Pan-Koordinatensystem kreuzt: nach vorn, links und oben vom Fuß der Pan-Achse.</translation>
    </message>
    <message>
        <source>Mass of the body. Put it on a scale, or take it from the slicer.</source>
        <translation>Masse des Körpers. Auf die Waage legen oder aus dem Slicer übernehmen.</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Mittelpunkt</translation>
    </message>
    <message>
        <source>Centre of the body: forward, left and up in the frame that carries it.</source>
        <translation>Mittelpunkt des Körpers: nach vorn, links und oben im Koordinatensystem, das ihn trägt.</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Length of the box along one axis of its carrier.</source>
        <translation>Länge des Quaders entlang einer Achse seines Trägers.</translation>
    </message>
    <message>
        <source>Moment of inertia</source>
        <translation>Trägheitsmoment</translation>
    </message>
    <message>
        <source>Moment of inertia about one axis through the body's centre; from a drawing program.</source>
        <translation>Trägheitsmoment um eine Achse durch den Mittelpunkt des Körpers; aus einem Zeichenprogramm.</translation>
    </message>
    <message>
        <source>Product of inertia</source>
        <translation>Deviationsmoment</translation>
    </message>
    <message>
        <source>Tensor element with its sign (minus the integral of x times y over the mass); 0 for symmetric bodies.</source>
        <translation>Tensorelement mit seinem Vorzeichen (minus das Integral von x mal y über die Masse); 0 bei symmetrischen Körpern.</translation>
    </message>
    <message>
        <source>Pan</source>
        <translation>Pan</translation>
    </message>
    <message>
        <source>Pan angles, from and to, of a window that the camera must stay out of.</source>
        <translation>Pan-Winkel, von und bis, eines Fensters, in das die Kamera nicht hineindarf.</translation>
    </message>
    <message>
        <source>Tilt</source>
        <translation>Tilt</translation>
    </message>
    <message>
        <source>Tilt angles, from and to, of a window that the camera must stay out of.</source>
        <translation>Tilt-Winkel, von und bis, eines Fensters, in das die Kamera nicht hineindarf.</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Voltage at the drives' input under load; usually 12 to 48 V. On the supply's label.</source>
        <translation>Spannung am Eingang der Antriebsregler unter Last; meist 12 bis 48 V. Auf dem Typenschild der Versorgung.</translation>
    </message>
    <message>
        <source>Current that the supply gives for seconds before it folds back or trips; usually 3 to 40 A, or none for no limit. On the supply's label.</source>
        <translation>Strom, den die Versorgung sekundenlang liefert, bevor sie ihn begrenzt oder abschaltet; meist 3 bis 40 A, oder none für keine Grenze. Auf dem Typenschild der Versorgung.</translation>
    </message>
    <message>
        <source>Absorbs</source>
        <translation>Aufnehmbarer Rückstrom</translation>
    </message>
    <message>
        <source>Current that may flow back into the supply while braking: 0 A for a mains supply, the charging limit for a battery.</source>
        <translation>Strom, der beim Bremsen in die Versorgung zurückfließen darf: 0 A bei einem Netzteil, die Ladegrenze bei einem Akku.</translation>
    </message>
    <message>
        <source>Bus capacitance</source>
        <translation>Zwischenkreiskapazität</translation>
    </message>
    <message>
        <source>Capacitors between the supply and the drives, added up; usually 0.2 to 10 mF. In the drives' data sheets.</source>
        <translation>Kondensatoren zwischen Versorgung und Antriebsreglern, zusammengezählt; meist 0,2 bis 10 mF. In den Datenblättern der Antriebsregler.</translation>
    </message>
    <message>
        <source>Trip voltage</source>
        <translation>Abschaltspannung</translation>
    </message>
    <message>
        <source>Voltage at which the first drive or the supply switches off; 10 to 50 % above the supply. In the drives' data sheets.</source>
        <translation>Spannung, bei der der erste Antriebsregler oder die Versorgung abschaltet; 10 bis 50 % über der Versorgung. In den Datenblättern der Antriebsregler.</translation>
    </message>
    <message>
        <source>Resistor that a chopper puts across the bus while braking; usually 1 to 20 ohm, or none where there is none.</source>
        <translation>Widerstand, den ein Bremschopper beim Bremsen an den Zwischenkreis legt; meist 1 bis 20 ohm, oder none, wo keiner vorhanden ist.</translation>
    </message>
    <message>
        <source>Source resistance</source>
        <translation>Quellenwiderstand</translation>
    </message>
    <message>
        <source>Inside the source, without the leads: how far its voltage sags per ampere; usually 5 to 100 mohm for a battery, near 0 for a mains supply.</source>
        <translation>In der Quelle, ohne Zuleitungen: Spannungseinbruch je Ampere; meist 5 bis 100 mohm bei einem Akku, nahe 0 bei einem Netzteil.</translation>
    </message>
    <message>
        <source>Lead length</source>
        <translation>Länge der Zuleitung</translation>
    </message>
    <message>
        <source>From the source to the drives, one way; usually 0.3 to 5 m.</source>
        <translation>Von der Quelle zu den Antriebsreglern, einfacher Weg; meist 0,3 bis 5 m.</translation>
    </message>
    <message>
        <source>Lead copper diameter</source>
        <translation>Kupferdurchmesser der Zuleitung</translation>
    </message>
    <message>
        <source>Of one lead's copper, as a diameter or as a gauge such as 16 AWG.</source>
        <translation>Des Kupfers einer Zuleitung, als Durchmesser oder als Drahtmaß wie 16 AWG.</translation>
    </message>
    <message>
        <source>Rated current of the fuse at the source; usually 5 to 40 A.</source>
        <translation>Nennstrom der Sicherung an der Quelle; meist 5 bis 40 A.</translation>
    </message>
    <message>
        <source>90 % of the trip voltage</source>
        <translation>90 % der Abschaltspannung</translation>
    </message>
    <message>
        <source>Brake chopper voltage</source>
        <translation>Spannung des Bremschoppers</translation>
    </message>
    <message>
        <source>Bus voltage above which the chopper puts the brake resistor across the bus. In the drives' settings.</source>
        <translation>Zwischenkreisspannung, ab der der Bremschopper den Bremswiderstand an den Zwischenkreis legt. In den Einstellungen der Antriebsregler.</translation>
    </message>
    <message>
        <source>Brake resistor power</source>
        <translation>Leistung des Bremswiderstands</translation>
    </message>
    <message>
        <source>Lasting power that the brake resistor bears as mounted; usually 5 to 200 W.</source>
        <translation>Dauerleistung, die der Bremswiderstand im eingebauten Zustand verträgt; meist 5 bis 200 W.</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Air around the rig on the hottest day it must work; usually 20 to 40 degC.</source>
        <translation>Luft um das Rig am heißesten Tag, an dem es arbeiten muss; meist 20 bis 40 degC.</translation>
    </message>
    <message>
        <source>Lean</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>How far the pan axis leans forwards from the plumb line; 0 deg on a level table.</source>
        <translation>Wie weit sich die Pan-Achse vom Lot nach vorn neigt; 0 deg auf einem waagrechten Tisch.</translation>
    </message>
    <message>
        <source>Stand and base with everything that does not turn; usually 1 to 20 kg. Put it on a scale.</source>
        <translation>Stativ und Basis mit allem, was sich nicht dreht; meist 1 bis 20 kg. Auf die Waage legen.</translation>
    </message>
    <message>
        <source>Half width</source>
        <translation>Halbe Breite</translation>
    </message>
    <message>
        <source>From the pan axis to the nearest tipping edge of the foot; usually 60 to 300 mm.</source>
        <translation>Von der Pan-Achse zur nächsten Kippkante des Fußes; meist 60 bis 300 mm.</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>From the foot to the mounting plane of the pan axis; usually 50 to 1500 mm.</source>
        <translation>Vom Fuß zur Montagefläche der Pan-Achse; meist 50 bis 1500 mm.</translation>
    </message>
    <message>
        <source>Sway stiffness</source>
        <translation>Schwanksteifigkeit</translation>
    </message>
    <message>
        <source>Turning moment that bends the stand by an angle; usually 200 to 20 000 N.m/rad. Pull sideways with a spring scale and measure the lean.</source>
        <translation>Moment, das das Stativ um einen Winkel biegt; meist 200 bis 20 000 N.m/rad. Mit einer Federwaage seitlich ziehen und die Neigung messen.</translation>
    </message>
    <message>
        <source>Sway damping</source>
        <translation>Schwankdämpfung</translation>
    </message>
    <message>
        <source>Damping ratio of the stand's swaying; usually 0.01 to 0.1.</source>
        <translation>Dämpfungsgrad des Schwankens des Stativs; meist 0,01 bis 0,1.</translation>
    </message>
    <message>
        <source>Grip of the feet</source>
        <translation>Haftung der Füße</translation>
    </message>
    <message>
        <source>Friction coefficient of the feet on their ground: 0.3 plastic on wood, 0.7 rubber; none where it is screwed down.</source>
        <translation>Reibungszahl der Füße auf dem Untergrund: 0,3 Kunststoff auf Holz, 0,7 Gummi; none, wo das Stativ festgeschraubt ist.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>What it has to follow: somebody who walks past (walk), something that runs a sine (sine) or jumps (jump), both on both axes, or that follows a path (path) of points.</source>
        <translation>Was zu verfolgen ist: geht vorbei (walk), jemand zu Fuß; fährt einen Sinus (sine) oder springt (jump), beides auf beiden Achsen; folgt einer Bahn (path) aus Punkten.</translation>
    </message>
    <message>
        <source>Acts on</source>
        <translation>Wirkt auf</translation>
    </message>
    <message>
        <source>What sets the speed: the error in the picture (error) as it comes, or the angle of the target (angle), which is that error added to the encoder's angle of the same instant, less the angle of now.</source>
        <translation>Was die Geschwindigkeit vorgibt: Fehler im Bild (error), wie er kommt, oder Winkel des Ziels (angle), das ist dieser Fehler plus der Encoderwinkel desselben Augenblicks, minus dem jetzigen Winkel.</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Speed of somebody who walks past on a straight line; 1.4 m/s walks, 4 m/s runs.</source>
        <translation>Geschwindigkeit von jemandem, der auf gerader Linie vorbeigeht; 1,4 m/s geht, 4 m/s rennt.</translation>
    </message>
    <message>
        <source>the task's target distance</source>
        <translation>die Zielentfernung der Aufgabe</translation>
    </message>
    <message>
        <source>Passing distance</source>
        <translation>Abstand beim Vorbeigehen</translation>
    </message>
    <message>
        <source>Distance on the ground at which the walk passes the pan axis; usually 0.5 to 10 m.</source>
        <translation>Abstand am Boden, in dem der Weg an der Pan-Achse vorbeiführt; meist 0,5 bis 10 m.</translation>
    </message>
    <message>
        <source>How far the target is above the tilt axis; below it is negative.</source>
        <translation>Wie weit das Ziel über der Tilt-Achse liegt; darunter ist negativ.</translation>
    </message>
    <message>
        <source>Amplitude</source>
        <translation>Amplitude</translation>
    </message>
    <message>
        <source>Amplitude of the sine, each way; usually 5 to 30 deg.</source>
        <translation>Amplitude des Sinus, nach jeder Seite; meist 5 bis 30 deg.</translation>
    </message>
    <message>
        <source>Frequency</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>Frequency of the sine; usually 0.1 to 3 Hz.</source>
        <translation>Frequenz des Sinus; meist 0,1 bis 3 Hz.</translation>
    </message>
    <message>
        <source>the task's move of each axis</source>
        <translation>die Bewegung der Aufgabe je Achse</translation>
    </message>
    <message>
        <source>Jump</source>
        <translation>Sprungweite</translation>
    </message>
    <message>
        <source>How far the target jumps, on both axes; usually 5 to 30 deg.</source>
        <translation>Wie weit das Ziel springt, auf beiden Achsen; meist 5 bis 30 deg.</translation>
    </message>
    <message>
        <source>0.5 over the dead time; the axis' position gain where it acts on the angle</source>
        <translation>0,5 geteilt durch die Totzeit; die Lageverstärkung der Achse, wo sie auf den Winkel wirkt</translation>
    </message>
    <message>
        <source>Gain</source>
        <translation>Verstärkung</translation>
    </message>
    <message>
        <source>Speed that the outer loop asks for per angle of error; usually 2 to 20 1/s. In the tracking program's settings.</source>
        <translation>Geschwindigkeit, die der äußere Regelkreis je Winkelfehler verlangt; meist 2 bis 20 1/s. In den Einstellungen des Verfolgungsprogramms.</translation>
    </message>
    <message>
        <source>Feed-forward</source>
        <translation>Vorsteuerung</translation>
    </message>
    <message>
        <source>Part of the target's estimated speed that is added to the command; 1 is all of it.</source>
        <translation>Anteil der geschätzten Geschwindigkeit des Ziels, der zum Sollwert addiert wird; 1 ist alles.</translation>
    </message>
    <message>
        <source>What you call the detector.</source>
        <translation>Name des Detektors.</translation>
    </message>
    <message>
        <source>the camera's</source>
        <translation>wie bei der Kamera</translation>
    </message>
    <message>
        <source>Pictures a second that it looks at; usually 5 to 120 Hz.</source>
        <translation>Bilder je Sekunde, die er auswertet; meist 5 bis 120 Hz.</translation>
    </message>
    <message>
        <source>Delay</source>
        <translation>Verzögerung</translation>
    </message>
    <message>
        <source>From the middle of the exposure to the new target angle: read-out, transfer and detection; usually 20 to 300 ms.</source>
        <translation>Von der Mitte der Belichtung bis zum neuen Zielwinkel: Auslesen, Übertragung und Erkennung; meist 20 bis 300 ms.</translation>
    </message>
    <message>
        <source>Noise</source>
        <translation>Rauschen</translation>
    </message>
    <message>
        <source>Standard deviation of the place that it finds, in pixels of the camera; usually 1 to 15.</source>
        <translation>Standardabweichung des gefundenen Orts, in Pixeln der Kamera; meist 1 bis 15.</translation>
    </message>
    <message>
        <source>Drop-outs</source>
        <translation>Aussetzer</translation>
    </message>
    <message>
        <source>Part of the pictures in which it finds nothing; usually 0 to 0.2.</source>
        <translation>Anteil der Bilder, in denen er nichts findet; meist 0 bis 0,2.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Time of a point.</source>
        <translation>Zeit eines Punkts.</translation>
    </message>
    <message>
        <source>Pan angle of a point.</source>
        <translation>Pan-Winkel eines Punkts.</translation>
    </message>
    <message>
        <source>Tilt angle of a point.</source>
        <translation>Tilt-Winkel eines Punkts.</translation>
    </message>
    <message>
        <source>Tab and post (tab): one meets the other, under one turn. Loose tabs between (trailing): they add a turn each. Window: the tab moves in a cut-out.</source>
        <translation>Nase und Pfosten (tab): eine trifft auf den anderen, unter einer Umdrehung. Lose Nasen dazwischen (trailing): sie bringen je eine Umdrehung mehr. Fenster (window): die Nase bewegt sich in einem Ausschnitt.</translation>
    </message>
    <message>
        <source>Tab material</source>
        <translation>Werkstoff der Nase</translation>
    </message>
    <message>
        <source>What the tab is made of; gives its strength where none is entered. Printed parts: lying flat, load along the layers.</source>
        <translation>Woraus die Nase besteht; gibt ihre Festigkeit vor, wo keine eingetragen ist. Druckteile: liegend, Last längs der Schichten.</translation>
    </message>
    <message>
        <source>Tab width</source>
        <translation>Breite der Nase</translation>
    </message>
    <message>
        <source>Width of the tab that turns with the axis and meets the post; usually 4 to 20 mm.</source>
        <translation>Breite der Nase, die sich mit der Achse dreht und auf den Pfosten trifft; meist 4 bis 20 mm.</translation>
    </message>
    <message>
        <source>Post width</source>
        <translation>Breite des Pfostens</translation>
    </message>
    <message>
        <source>Width of the fixed post, along the circle on which they meet; usually 4 to 20 mm.</source>
        <translation>Breite des festen Pfostens, entlang des Kreises, auf dem sie sich treffen; meist 4 bis 20 mm.</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>From the axis to where tab and post meet; usually 15 to 80 mm.</source>
        <translation>Von der Achse bis dorthin, wo Nase und Pfosten sich treffen; meist 15 bis 80 mm.</translation>
    </message>
    <message>
        <source>Axis angle half-way between the two ends; 0 deg when the post is right behind.</source>
        <translation>Achswinkel in der Mitte zwischen den beiden Enden; 0 deg, wenn der Pfosten genau hinten steht.</translation>
    </message>
    <message>
        <source>Soft limit inset</source>
        <translation>Abstand des Softlimits</translation>
    </message>
    <message>
        <source>How far before each hard stop the drive's soft limit lies; usually 3 to 10 deg.</source>
        <translation>Wie weit vor jedem harten Anschlag das Softlimit des Antriebsreglers liegt; meist 3 bis 10 deg.</translation>
    </message>
    <message>
        <source>Stop stiffness</source>
        <translation>Steifigkeit des Anschlags</translation>
    </message>
    <message>
        <source>Torque that presses the axis into the stop by an angle; usually 100 to 5000 N.m/rad, less with rubber.</source>
        <translation>Drehmoment, das die Achse um einen Winkel in den Anschlag drückt; meist 100 bis 5000 N.m/rad, mit Gummi weniger.</translation>
    </message>
    <message>
        <source>Loose tabs</source>
        <translation>Lose Nasen</translation>
    </message>
    <message>
        <source>With loose tabs between: how many run between tab and post.</source>
        <translation>Bei losen Nasen dazwischen: wie viele zwischen Nase und Pfosten mitlaufen.</translation>
    </message>
    <message>
        <source>Loose tab width</source>
        <translation>Breite der losen Nasen</translation>
    </message>
    <message>
        <source>With loose tabs between: width of one along the circle; usually 4 to 20 mm.</source>
        <translation>Bei losen Nasen dazwischen: Breite einer davon entlang des Kreises; meist 4 bis 20 mm.</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Kind window: angle of the cut-out from face to face; usually 60 to 200 deg.</source>
        <translation>Art window: Winkel des Ausschnitts von Fläche zu Fläche; meist 60 bis 200 deg.</translation>
    </message>
    <message>
        <source>Bumper travel</source>
        <translation>Pufferweg</translation>
    </message>
    <message>
        <source>How far the stop gives way at its stiffness before it is hard; usually 0.5 to 5 deg, or none.</source>
        <translation>Wie weit der Anschlag mit seiner Steifigkeit nachgibt, bevor er hart ist; meist 0,5 bis 5 deg, oder none.</translation>
    </message>
    <message>
        <source>Stiffness beyond the bumper</source>
        <translation>Steifigkeit hinter dem Puffer</translation>
    </message>
    <message>
        <source>Once the bumper is used up: tab, post and bracket; usually 1000 to 20000 N.m/rad.</source>
        <translation>Wenn der Puffer aufgebraucht ist: Nase, Pfosten und Halter; meist 1000 bis 20000 N.m/rad.</translation>
    </message>
    <message>
        <source>Rebound</source>
        <translation>Rückprall</translation>
    </message>
    <message>
        <source>Speed after the blow over the speed before; about 0.3 for soft rubber, 0.5 for plastic, 0.8 for metal.</source>
        <translation>Geschwindigkeit nach dem Stoß durch die davor; etwa 0,3 bei weichem Gummi, 0,5 bei Kunststoff, 0,8 bei Metall.</translation>
    </message>
    <message>
        <source>Tab height</source>
        <translation>Höhe der Nase</translation>
    </message>
    <message>
        <source>From the tab's root to where the post presses, the lever of its bending; usually 4 to 15 mm.</source>
        <translation>Vom Grund der Nase bis dorthin, wo der Pfosten drückt, der Hebelarm ihrer Biegung; meist 4 bis 15 mm.</translation>
    </message>
    <message>
        <source>Tab thickness</source>
        <translation>Dicke der Nase</translation>
    </message>
    <message>
        <source>Of the tab along the axis; usually 4 to 12 mm.</source>
        <translation>Der Nase entlang der Achse; meist 4 bis 12 mm.</translation>
    </message>
    <message>
        <source>Tab strength</source>
        <translation>Festigkeit der Nase</translation>
    </message>
    <message>
        <source>Tensile strength of the tab's material, instead of the one listed for it; usually 20 to 60 MPa printed.</source>
        <translation>Zugfestigkeit des Werkstoffs der Nase, anstelle des dafür hinterlegten Werts; gedruckt meist 20 bis 60 MPa.</translation>
    </message>
    <message>
        <source>not a number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>not a finite number</source>
        <translation>keine endliche Zahl</translation>
    </message>
    <message>
        <source>%1 is negative; a mass cannot be negative</source>
        <translation>%1 ist negativ; eine Masse kann nicht negativ sein</translation>
    </message>
    <message>
        <source>%1 is not allowed: it must be above %2</source>
        <translation>%1 ist nicht zulässig: der Wert muss über %2 liegen</translation>
    </message>
    <message>
        <source>%1 is below the least allowed, %2</source>
        <translation>%1 liegt unter dem kleinsten zulässigen Wert, %2</translation>
    </message>
    <message>
        <source>%1 is above the most allowed, %2</source>
        <translation>%1 liegt über dem größten zulässigen Wert, %2</translation>
    </message>
    <message>
        <source>%1 is not a whole number</source>
        <translation>%1 ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>usually %1 to %2</source>
        <translation>üblich sind %1 bis %2</translation>
    </message>
    <message>
        <source>motor and gearbox</source>
        <translation>motor and gearbox</translation>
    </message>
    <message>
        <source>gearbox and motor</source>
        <translation>gearbox and motor</translation>
    </message>
    <message>
        <source>a %1 on the shelf</source>
        <translation>ein Teil der Art %1 im Regal</translation>
    </message>
    <message>
        <source>no body is called “tilt %1”: its mass does not count on pan</source>
        <translation>kein Körper heißt „tilt %1“: seine Masse zählt auf der Pan-Achse nicht mit</translation>
    </message>
    <message>
        <source>%1.loop.speed_limit is missing: no limit of speed but the parts' own</source>
        <translation>%1.loop.speed_limit fehlt: keine Drehzahlgrenze außer denen der Teile selbst</translation>
    </message>
    <message>
        <source>there is no drive on the shelf: the rig's own stay</source>
        <translation>kein Antriebsregler im Regal: die eigenen des Rigs bleiben</translation>
    </message>
    <message>
        <source>%1 where %2 is allowed</source>
        <translation>%1 bei zulässigen %2</translation>
    </message>
    <message>
        <source>runs away</source>
        <translation>läuft davon</translation>
    </message>
    <message>
        <source>rises by %1</source>
        <translation>steigt um %1</translation>
    </message>
    <message>
        <source>torque to start</source>
        <translation>Drehmoment zum Anfahren</translation>
    </message>
    <message>
        <source>time of the move</source>
        <translation>Dauer der Bewegung</translation>
    </message>
    <message>
        <source>gearbox rated torque</source>
        <translation>Nennmoment des Getriebes</translation>
    </message>
    <message>
        <source>heat of the winding</source>
        <translation>Erwärmung der Wicklung</translation>
    </message>
    <message>
        <source>gap in the picture</source>
        <translation>Spiel im Bild</translation>
    </message>
    <message>
        <source>%1 hold it back, it has %2</source>
        <translation>%1 halten zurück, verfügbar sind %2</translation>
    </message>
    <message>
        <source>%1 where the task wants %2</source>
        <translation>%1, die Aufgabe verlangt %2</translation>
    </message>
    <message>
        <source>%1 over the duty on a rated %2</source>
        <translation>%1 über das Lastspiel bei Nennwert %2</translation>
    </message>
    <message>
        <source>%1 in a band of %2</source>
        <translation>%1 in einem Band von %2</translation>
    </message>
    <message>
        <source>; %1 %2 held to %3 for the %4</source>
        <translation>; %1 %2 begrenzt auf %3 (%4)</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>gearbox's peak</source>
        <translation>Spitzenmoment des Getriebes</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>gearbox's input</source>
        <translation>Antriebsdrehzahl des Getriebes</translation>
    </message>
    <message>
        <source>; not all of %1 is known: %2</source>
        <translation>; nicht alles ist bekannt für %1: %2</translation>
    </message>
    <message>
        <source>fails: %1%2</source>
        <translation>versagt: %1%2</translation>
    </message>
    <message>
        <source>, over by %1</source>
        <translation>, überschritten um %1</translation>
    </message>
    <message>
        <source>%1 is the slower; closest limit: %2, %3 left</source>
        <translation>%1 ist langsamer; engste Grenze: %2, Reserve %3</translation>
    </message>
    <message>
        <source>there is no home folder for the parts shelf</source>
        <translation>kein Benutzerordner für das Teileregal vorhanden</translation>
    </message>
    <message>
        <source>set XDG_DATA_HOME to a folder of yours</source>
        <translation>XDG_DATA_HOME auf einen eigenen Ordner setzen</translation>
    </message>
    <message>
        <source>the shelf holds %1 files; %2 are read</source>
        <translation>das Regal enthält %1 Dateien; gelesen werden %2</translation>
    </message>
    <message>
        <source>take some of them away</source>
        <translation>einige davon entfernen</translation>
    </message>
    <message>
        <source>the wall of the coil is not outside its hub</source>
        <translation>die Wand des Wickels liegt nicht außerhalb seiner Nabe</translation>
    </message>
    <message>
        <source>the coil does not fit between hub and wall</source>
        <translation>der Wickel passt nicht zwischen Nabe und Wand</translation>
    </message>
    <message>
        <source>a clamp on the axis twists the cable instead of bending it</source>
        <translation>eine Klemme auf der Achse verdrillt das Kabel, statt es zu biegen</translation>
    </message>
    <message>
        <source>the loop is shorter than half a turn at its bend radius</source>
        <translation>die Schlaufe ist kürzer als eine halbe Windung mit ihrem Biegeradius</translation>
    </message>
    <message>
        <source>the loop is taut already where its clamps pass each other</source>
        <translation>die Schlaufe ist schon straff, wo ihre Klemmen aneinander vorbeilaufen</translation>
    </message>
    <message>
        <source>a body</source>
        <translation>ein Körper</translation>
    </message>
    <message>
        <source>Deg</source>
        <translation>Deg</translation>
    </message>
    <message>
        <source>(0.001 arc_degree)</source>
        <translation>(0.001 arc_degree)</translation>
    </message>
    <message>
        <source>Ncm</source>
        <translation>Ncm</translation>
    </message>
    <message>
        <source>Nmm</source>
        <translation>Nmm</translation>
    </message>
    <message>
        <source>Nms</source>
        <translation>Nms</translation>
    </message>
    <message>
        <source>a voltage</source>
        <translation>eine Spannung</translation>
    </message>
    <message>
        <source>a current</source>
        <translation>ein Strom</translation>
    </message>
    <message>
        <source>a capacitance</source>
        <translation>eine Kapazität</translation>
    </message>
    <message>
        <source>an inductance</source>
        <translation>eine Induktivität</translation>
    </message>
    <message>
        <source>a resistance</source>
        <translation>ein Widerstand</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>eine Temperatur</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>ein Winkel</translation>
    </message>
    <message>
        <source>a mass</source>
        <translation>eine Masse</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>eine Zeit</translation>
    </message>
    <message>
        <source>a frequency</source>
        <translation>eine Frequenz</translation>
    </message>
    <message>
        <source>a rate</source>
        <translation>eine Rate</translation>
    </message>
    <message>
        <source>an angular speed</source>
        <translation>eine Winkelgeschwindigkeit</translation>
    </message>
    <message>
        <source>a torque</source>
        <translation>ein Drehmoment</translation>
    </message>
    <message>
        <source>a torque per angle</source>
        <translation>ein Drehmoment je Winkel</translation>
    </message>
    <message>
        <source>a torque per angular speed</source>
        <translation>ein Drehmoment je Winkelgeschwindigkeit</translation>
    </message>
    <message>
        <source>an inertia</source>
        <translation>ein Trägheitsmoment</translation>
    </message>
    <message>
        <source>a temperature rise per power</source>
        <translation>eine Temperaturerhöhung je Leistung</translation>
    </message>
    <message>
        <source>an angle per length</source>
        <translation>ein Winkel je Länge</translation>
    </message>
    <message>
        <source>an angular speed per voltage</source>
        <translation>eine Winkelgeschwindigkeit je Spannung</translation>
    </message>
    <message>
        <source>a plain number</source>
        <translation>eine reine Zahl</translation>
    </message>
    <message>
        <source>a speed along a line</source>
        <translation>eine Geschwindigkeit entlang einer Linie</translation>
    </message>
    <message>
        <source>a force</source>
        <translation>eine Kraft</translation>
    </message>
    <message>
        <source>a power</source>
        <translation>eine Leistung</translation>
    </message>
    <message>
        <source>a mass times a length</source>
        <translation>eine Masse mal einer Länge</translation>
    </message>
    <message>
        <source>an area</source>
        <translation>eine Fläche</translation>
    </message>
    <message>
        <source>a volume</source>
        <translation>ein Volumen</translation>
    </message>
    <message>
        <source>a force per length</source>
        <translation>eine Kraft je Länge</translation>
    </message>
    <message>
        <source>an electric charge</source>
        <translation>eine elektrische Ladung</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>ein Druck</translation>
    </message>
    <message>
        <source>another kind of quantity</source>
        <translation>eine andere Größenart</translation>
    </message>
    <message>
        <source>%1 is due</source>
        <translation>erwartet wird %1</translation>
    </message>
    <message>
        <source>write for example </source>
        <translation>schreiben Sie zum Beispiel </translation>
    </message>
    <message>
        <source>, or none</source>
        <translation>, oder none</translation>
    </message>
    <message>
        <source>write for example %1 %2 or %3</source>
        <translation>schreiben Sie zum Beispiel %1 %2 oder %3</translation>
    </message>
    <message>
        <source>%1 is not a finite number; %2</source>
        <translation>%1 ist keine endliche Zahl; %2</translation>
    </message>
    <message>
        <source>none is not allowed here; %1</source>
        <translation>none ist hier nicht zulässig; %1</translation>
    </message>
    <message>
        <source>nothing is written; %1</source>
        <translation>nichts eingetragen; %1</translation>
    </message>
    <message>
        <source>"%1" does not begin with a number; %2</source>
        <translation>"%1" beginnt nicht mit einer Zahl; %2</translation>
    </message>
    <message>
        <source>divide by 2π: %1 Hz</source>
        <translation>durch 2π teilen: %1 Hz</translation>
    </message>
    <message>
        <source>turns a second are %1 deg/s</source>
        <translation>Umdrehungen je Sekunde entsprechen %1 deg/s</translation>
    </message>
    <message>
        <source>the table of units is missing</source>
        <translation>die Einheitentabelle fehlt</translation>
    </message>
    <message>
        <source>install the package libudunits2-data</source>
        <translation>das Paket libudunits2-data installieren</translation>
    </message>
    <message>
        <source>the unit "%1" is not known; %2</source>
        <translation>die Einheit "%1" ist nicht bekannt; %2</translation>
    </message>
    <message>
        <source>%1 could mean turns or radians a second; %2</source>
        <translation>%1 könnte Umdrehungen oder Radiant je Sekunde bedeuten; %2</translation>
    </message>
    <message>
        <source>write it in 1/s, for a bandwidth 2π times its Hz</source>
        <translation>in 1/s schreiben, bei einer Bandbreite das 2π-Fache ihrer Hz</translation>
    </message>
    <message>
        <source>%1 is %2; %3</source>
        <translation>%1 ist %2; %3</translation>
    </message>
    <message>
        <source>nm is a nanometre; %1</source>
        <translation>nm ist ein Nanometer; %1</translation>
    </message>
    <message>
        <source>kV is a kilovolt; write %1 KV or %1 rpm/V</source>
        <translation>kV ist ein Kilovolt; %1 KV oder %1 rpm/V schreiben</translation>
    </message>
    <message>
        <source>a whole number </source>
        <translation>eine ganze Zahl </translation>
    </message>
    <message>
        <source>a value </source>
        <translation>einen Wert </translation>
    </message>
    <message>
        <source>write %1%2%3%4%5%6</source>
        <translation>schreiben Sie %1%2%3%4%5%6</translation>
    </message>
    <message>
        <source>above </source>
        <translation>über </translation>
    </message>
    <message>
        <source>from </source>
        <translation>von </translation>
    </message>
    <message>
        <source> and up to </source>
        <translation> und bis </translation>
    </message>
    <message>
        <source> to </source>
        <translation> bis </translation>
    </message>
    <message>
        <source>write %1%2%3%4</source>
        <translation>schreiben Sie %1%2%3%4</translation>
    </message>
    <message>
        <source>of at least </source>
        <translation>von mindestens </translation>
    </message>
    <message>
        <source>%1 has a comma in its number</source>
        <translation>%1 enthält ein Komma in der Zahl</translation>
    </message>
    <message>
        <source>%1 is a number of pixels; %2</source>
        <translation>%1 ist eine Anzahl von Pixeln; %2</translation>
    </message>
    <message>
        <source>%1 has no unit; %2</source>
        <translation>%1 hat keine Einheit; %2</translation>
    </message>
    <message>
        <source>%1 is two numbers; a ratio is one</source>
        <translation>%1 sind zwei Zahlen; eine Übersetzung ist eine</translation>
    </message>
    <message>
        <source>write %1: so many turns of the motor for one of the output</source>
        <translation>schreiben Sie %1: so viele Umdrehungen des Motors auf eine des Abtriebs</translation>
    </message>
    <message>
        <source>%1 is negative; a spread is the half-width of a range</source>
        <translation>%1 ist negativ; eine Streuung ist die halbe Breite eines Bereichs</translation>
    </message>
    <message>
        <source>a share of a temperature depends on where its scale begins</source>
        <translation>ein Anteil einer Temperatur hängt davon ab, wo ihre Skala beginnt</translation>
    </message>
    <message>
        <source>write for example 5 K</source>
        <translation>zum Beispiel 5 K schreiben</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>Coulomb</source>
        <translation>Coulomb</translation>
    </message>
    <message>
        <source>%1 speed loop</source>
        <translation>%1 Drehzahlregelung</translation>
    </message>
    <message>
        <source>%1 position loop</source>
        <translation>%1 Lageregelung</translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation>%1 geschlossen</translation>
    </message>
    <message>
        <source>%1 error per disturbance</source>
        <translation>%1 Fehler je Störung</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 loop crosses at %3 with %4 and %5 of delay left</source>
        <translation>%1, Regelkreis %2: Durchtritt bei %3 mit %4 und %5 Totzeitreserve</translation>
    </message>
    <message>
        <source>%1 %2 loop: gain margin %3 (%4 dB)</source>
        <translation>%1, Regelkreis %2: Amplitudenreserve %3 (%4 dB)</translation>
    </message>
    <message>
        <source>%1 dB left</source>
        <translation>noch %1 dB</translation>
    </message>
    <message>
        <source>%1 %2 at %3</source>
        <translation>%1 %2 bei %3</translation>
    </message>
    <message>
        <source>antiresonance</source>
        <translation>Antiresonanz</translation>
    </message>
    <message>
        <source>resonance</source>
        <translation>Resonanz</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>%1: the model holds up to %2</source>
        <translation>%1: das Modell gilt bis %2</translation>
    </message>
    <message>
        <source>beyond the model</source>
        <translation>jenseits des Modells</translation>
    </message>
    <message>
        <source>beyond half the control rate</source>
        <translation>über dem halben Regeltakt</translation>
    </message>
    <message>
        <source>there is no loop beyond half the control rate, %1</source>
        <translation>über dem halben Regeltakt, %1, gibt es keinen Regelkreis</translation>
    </message>
    <message>
        <source>speed loop</source>
        <translation>Drehzahlregelung</translation>
    </message>
    <message>
        <source>position loop</source>
        <translation>Lageregelung</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>%1 speed loop before</source>
        <translation>%1 Drehzahlregelung vorher</translation>
    </message>
    <message>
        <source>%1 (%2 px)</source>
        <translation>%1 (%2 px)</translation>
    </message>
    <message>
        <source>%1 stays in its place while %2 moves</source>
        <translation>%1 bleibt an seinem Platz, während sich %2 bewegt</translation>
    </message>
    <message>
        <source>%1 is pushed off by up to %2 while it holds and %3 moves</source>
        <translation>Größte Ablenkung von %1 beim Halten, während sich %3 bewegt: %2</translation>
    </message>
    <message>
        <source>%1 alone %2</source>
        <translation>%1 allein %2</translation>
    </message>
    <message>
        <source>Both moves at once settle after %1</source>
        <translation>Beide zugleich schwingen nach %1 ein</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>both settled %1</source>
        <translation>beide eingeschwungen %1</translation>
    </message>
    <message>
        <source>Both moves at once: %1</source>
        <translation>Beide zugleich: %1</translation>
    </message>
    <message>
        <source>Together they draw up to %1 from the supply</source>
        <translation>Zusammen ziehen sie bis zu %1 aus der Versorgung</translation>
    </message>
    <message>
        <source>the supply is short for %1, and both get the same part of the power they want</source>
        <translation>Die Versorgung ist %1 lang zu knapp, und beide erhalten denselben Anteil der gewünschten Leistung</translation>
    </message>
    <message>
        <source>the supply has enough for both</source>
        <translation>Die Versorgung reicht für beide</translation>
    </message>
    <message>
        <source>settle band ±%1</source>
        <translation>Einschwingband ±%1</translation>
    </message>
    <message>
        <source>Off its place</source>
        <translation>Abweichung von der Lage</translation>
    </message>
    <message>
        <source>Worked out as soon as the rig stops changing.</source>
        <translation>Wird berechnet, sobald sich das Rig nicht mehr ändert.</translation>
    </message>
    <message>
        <source>%1 while %2 moves</source>
        <translation>%1, während sich %2 bewegt</translation>
    </message>
    <message>
        <source>%1 before</source>
        <translation>%1 vorher</translation>
    </message>
    <message>
        <source>most current</source>
        <translation>größter Strom</translation>
    </message>
    <message>
        <source>most voltage</source>
        <translation>größte Spannung</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>supply's limit %1</source>
        <translation>Grenze der Versorgung %1</translation>
    </message>
    <message>
        <source>The task's moves draw up to %1</source>
        <translation>Die Bewegungen der Aufgabe ziehen bis zu %1</translation>
    </message>
    <message>
        <source>they return %1 while braking</source>
        <translation>Beim Bremsen speisen sie %1 zurück</translation>
    </message>
    <message>
        <source>which lifts the bus to %1</source>
        <translation>Das hebt den Zwischenkreis auf %1</translation>
    </message>
    <message>
        <source>bus</source>
        <translation>Zwischenkreis</translation>
    </message>
    <message>
        <source>trip %1</source>
        <translation>Abschaltung %1</translation>
    </message>
    <message>
        <source>chopper %1</source>
        <translation>Bremschopper %1</translation>
    </message>
    <message>
        <source>supply %1</source>
        <translation>Versorgung %1</translation>
    </message>
    <message>
        <source>%1 at least</source>
        <translation>%1 mindestens</translation>
    </message>
    <message>
        <source>%1 at most</source>
        <translation>%1 höchstens</translation>
    </message>
    <message numerus="yes">
        <source>%n points have no value and leave a gap</source>
        <translation><numerusform>%n Punkt hat keinen Wert und lässt eine Lücke</numerusform><numerusform>%n Punkte haben keinen Wert und lassen eine Lücke</numerusform></translation>
    </message>
    <message>
        <source>Nothing computed yet. Open or describe a rig.</source>
        <translation>Noch nichts berechnet. Ein Rig öffnen oder beschreiben.</translation>
    </message>
    <message>
        <source>%1: nothing to show</source>
        <translation>%1: nichts darzustellen</translation>
    </message>
    <message>
        <source>No variant is in the plots. Pin the present design first.</source>
        <translation>Keine Variante ist in den Diagrammen. Heften Sie zuerst den jetzigen Entwurf an.</translation>
    </message>
    <message>
        <source>No variant has a curve here.</source>
        <translation>Keine Variante hat hier eine Kurve.</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>1/Δ, slope</source>
        <translation>1/Δ, Steigung</translation>
    </message>
    <message>
        <source>tab and post</source>
        <translation>Nase und Pfosten</translation>
    </message>
    <message>
        <source>loose tabs between</source>
        <translation>lose Nasen dazwischen</translation>
    </message>
    <message>
        <source>window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>PLA</source>
        <translation>PLA</translation>
    </message>
    <message>
        <source>PETG</source>
        <translation>PETG</translation>
    </message>
    <message>
        <source>ASA</source>
        <translation>ASA</translation>
    </message>
    <message>
        <source>twist along the axis</source>
        <translation>Verdrillung entlang der Achse</translation>
    </message>
    <message>
        <source>clock spring coil</source>
        <translation>Uhrfederwickel</translation>
    </message>
    <message>
        <source>hanging loop</source>
        <translation>hängende Schlaufe</translation>
    </message>
    <message>
        <source>slip ring</source>
        <translation>Schleifring</translation>
    </message>
    <message>
        <source>output</source>
        <translation>Abtrieb</translation>
    </message>
    <message>
        <source>walks past</source>
        <translation>geht vorbei</translation>
    </message>
    <message>
        <source>runs a sine</source>
        <translation>fährt einen Sinus</translation>
    </message>
    <message>
        <source>jumps</source>
        <translation>springt</translation>
    </message>
    <message>
        <source>follows a path</source>
        <translation>folgt einer Bahn</translation>
    </message>
    <message>
        <source>error in the picture</source>
        <translation>Fehler im Bild</translation>
    </message>
    <message>
        <source>angle of the target</source>
        <translation>Winkel des Ziels</translation>
    </message>
    <message>
        <source>second encoder</source>
        <translation>zweiter Encoder</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>two apart</source>
        <translation>zwei mit Abstand</translation>
    </message>
    <message>
        <source>one alone</source>
        <translation>eines allein</translation>
    </message>
    <message>
        <source>those in the gearbox</source>
        <translation>die im Getriebe</translation>
    </message>
    <message>
        <source>balls</source>
        <translation>Kugeln</translation>
    </message>
    <message>
        <source>rollers</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>a nut</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>a heat-set insert</source>
        <translation>Einschmelzbuchse</translation>
    </message>
    <message>
        <source>the print itself</source>
        <translation>Druckteil selbst</translation>
    </message>
    <message>
        <source>clamped</source>
        <translation>geklemmt</translation>
    </message>
    <message>
        <source>by a flat</source>
        <translation>Abflachung</translation>
    </message>
    <message>
        <source>by a key</source>
        <translation>Passfeder</translation>
    </message>
    <message>
        <source>side arm</source>
        <translation>Arm an der Seite</translation>
    </message>
    <message>
        <source>fork of two arms</source>
        <translation>Gabel aus zwei Armen</translation>
    </message>
    <message>
        <source>hollow</source>
        <translation>hohl</translation>
    </message>
    <message>
        <source>full or filled</source>
        <translation>voll oder gefüllt</translation>
    </message>
    <message>
        <source>along the arm</source>
        <translation>längs zum Arm</translation>
    </message>
    <message>
        <source>across the arm</source>
        <translation>quer zum Arm</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>unterscheidet sich</translation>
    </message>
    <message>
        <source>blind %1</source>
        <translation>blind %1</translation>
    </message>
    <message>
        <source>travel unknown</source>
        <translation>Verfahrbereich unbekannt</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>%1 turns</source>
        <translation>%1 Umdrehungen</translation>
    </message>
    <message>
        <source>%1 travel</source>
        <translation>Verfahrbereich %1</translation>
    </message>
    <message>
        <source>stops %1</source>
        <translation>Anschläge %1</translation>
    </message>
    <message>
        <source>no stops</source>
        <translation>keine Anschläge</translation>
    </message>
    <message>
        <source>soft limits %1</source>
        <translation>Softlimits %1</translation>
    </message>
    <message>
        <source>cable %1</source>
        <translation>Kabel %1</translation>
    </message>
    <message>
        <source>no cable limit</source>
        <translation>keine Kabelgrenze</translation>
    </message>
    <message>
        <source>travel unknown: stops or cable are missing</source>
        <translation>Verfahrbereich unbekannt: Anschläge oder Kabel fehlen</translation>
    </message>
    <message>
        <source>bumper %1 beyond the stops</source>
        <translation>Puffer %1 hinter den Anschlägen</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Anschlag</translation>
    </message>
    <message>
        <source>bumper</source>
        <translation>Puffer</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>Soft</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>home</source>
        <translation>Grundstellung</translation>
    </message>
    <message>
        <source>park</source>
        <translation>Parklage</translation>
    </message>
    <message>
        <source>end of the bumper</source>
        <translation>Ende des Puffers</translation>
    </message>
    <message>
        <source>cable limit</source>
        <translation>Kabelgrenze</translation>
    </message>
    <message>
        <source>routing</source>
        <translation>Kabelführung</translation>
    </message>
    <message>
        <source>%1 %2 at %3.</source>
        <translation>%1: %2 bei %3.</translation>
    </message>
    <message>
        <source>Drag it, or use the arrow keys, to change the %1.</source>
        <translation>Ziehen oder Pfeiltasten ändern „%1“.</translation>
    </message>
    <message>
        <source>It follows from the %1 and the card's measures.</source>
        <translation>Ergibt sich aus „%1“ und den Maßen der Karte.</translation>
    </message>
    <message>
        <source>With Shift only this side moves.</source>
        <translation>Mit Umschalt bewegt sich nur diese Seite.</translation>
    </message>
    <message>
        <source>Double-click to type.</source>
        <translation>Doppelklick zum Eintippen.</translation>
    </message>
    <message>
        <source>Drag a mark, or use the arrow and Page keys.</source>
        <translation>Eine Marke ziehen oder Pfeil- und Bildtasten benutzen.</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>present design less the variant “%1”</source>
        <translation>jetziger Entwurf minus Variante „%1“</translation>
    </message>
    <message>
        <source>%1 differs by up to %2 at %3</source>
        <translation>%1 weicht um bis zu %2 ab, bei %3</translation>
    </message>
    <message>
        <source>%1 less “%2”</source>
        <translation>%1 minus „%2“</translation>
    </message>
    <message>
        <source>Of the present design there is nothing to compare.</source>
        <translation>Vom jetzigen Entwurf gibt es nichts zu vergleichen.</translation>
    </message>
    <message>
        <source>as “%1”</source>
        <translation>wie „%1“</translation>
    </message>
    <message>
        <source>±2 standard uncertainties, about 95 %</source>
        <translation>±2 Standardunsicherheiten, etwa 95 %</translation>
    </message>
    <message>
        <source>about 95 %</source>
        <translation>etwa 95 %</translation>
    </message>
    <message>
        <source>shaded: %1</source>
        <translation>schattiert: %1</translation>
    </message>
    <message>
        <source>%1 ±%2 %</source>
        <translation>%1 ±%2 %</translation>
    </message>
    <message>
        <source>%1; usual spread</source>
        <translation>%1; übliche Streuung</translation>
    </message>
    <message>
        <source>&lt; 1 %</source>
        <translation>&lt; 1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>±%1 points</source>
        <translation>±%1 Pkt.</translation>
    </message>
    <message>
        <source>none (%1)</source>
        <translation>keine (%1)</translation>
    </message>
    <message>
        <source>± is two standard uncertainties, about 95 % where many unknowns add up. Each unknown was put to both ends of its range, the others as entered; that unknowns hang together is left out, and so is what no value of the rig stands for.</source>
        <translation>± sind zwei Standardunsicherheiten, etwa 95 %, wo viele Unbekannte zusammenkommen. Jede Unbekannte wurde auf beide Enden ihres Bereichs gesetzt, die anderen wie eingegeben; dass Unbekannte zusammenhängen, bleibt außer Acht, ebenso alles, wofür kein Wert des Rigs steht.</translation>
    </message>
    <message>
        <source>centre of mass %1 off</source>
        <translation>Schwerpunkt %1 daneben</translation>
    </message>
    <message>
        <source>No body with a size and a place yet. Add bodies to on_pan and on_tilt to see the rig.</source>
        <translation>Noch kein Körper mit Größe und Lage. Körper in on_pan und on_tilt anlegen, um das Rig zu sehen.</translation>
    </message>
    <message>
        <source>body %1</source>
        <translation>Körper %1</translation>
    </message>
    <message>
        <source>tilt axis, height</source>
        <translation>Tilt-Achse, Höhe</translation>
    </message>
    <message>
        <source>tilt axis, to the left</source>
        <translation>Tilt-Achse, nach links</translation>
    </message>
    <message>
        <source>tilt axis, forward</source>
        <translation>Tilt-Achse, nach vorn</translation>
    </message>
    <message>
        <source>%1, place</source>
        <translation>%1, Lage</translation>
    </message>
    <message>
        <source>%1, diameter</source>
        <translation>%1, Durchmesser</translation>
    </message>
    <message>
        <source>gravity torque left %1</source>
        <translation>verbleibendes Schwerkraftmoment %1</translation>
    </message>
    <message>
        <source>no mass here would cancel</source>
        <translation>keine Masse hier würde ausgleichen</translation>
    </message>
    <message>
        <source>%1 here would leave %2</source>
        <translation>%1 hier ließe %2 übrig</translation>
    </message>
    <message>
        <source>%1 here would cancel</source>
        <translation>%1 hier würde ausgleichen</translation>
    </message>
    <message>
        <source>Size of the move</source>
        <translation>Größe der Bewegung</translation>
    </message>
    <message>
        <source>%1 at best</source>
        <translation>%1 bestenfalls</translation>
    </message>
    <message>
        <source>%1 follows when the hand rests</source>
        <translation>%1 folgt, wenn die Hand ruht</translation>
    </message>
    <message>
        <source>through the loop</source>
        <translation>durch den Regelkreis</translation>
    </message>
    <message>
        <source>at best</source>
        <translation>bestenfalls</translation>
    </message>
    <message>
        <source>human eye</source>
        <translation>menschliches Auge</translation>
    </message>
    <message>
        <source>eye, 2.2 ms/° + 21 ms</source>
        <translation>Auge, 2,2 ms/° + 21 ms</translation>
    </message>
    <message>
        <source>eye, 2.7 ms/° + 23 ms</source>
        <translation>Auge, 2,7 ms/° + 23 ms</translation>
    </message>
    <message>
        <source>Pan takes %1 times as long as an eye</source>
        <translation>Pan braucht %1-mal so lange wie ein Auge</translation>
    </message>
    <message>
        <source>Peak speed</source>
        <translation>Spitzengeschwindigkeit</translation>
    </message>
    <message>
        <source>eye, 551 °/s · (1 − e^(−size/14°))</source>
        <translation>Auge, 551 °/s · (1 − e^(−Größe/14°))</translation>
    </message>
    <message>
        <source>eye, end of smooth pursuit</source>
        <translation>Auge, Ende der gleitenden Folgebewegung</translation>
    </message>
    <message>
        <source>%1 reaches %2 times the peak speed of an eye</source>
        <translation>%1 erreicht das %2-Fache der Spitzengeschwindigkeit eines Auges</translation>
    </message>
    <message>
        <source>%1 stays without power</source>
        <translation>%1 bleibt stromlos stehen</translation>
    </message>
    <message>
        <source>gravity does not turn %1</source>
        <translation>Schwerkraft dreht %1 nicht</translation>
    </message>
    <message>
        <source>gravity turns %1 with up to %2</source>
        <translation>Schwerkraft dreht %1 mit bis zu %2</translation>
    </message>
    <message>
        <source>%1's gearbox locks itself against %2</source>
        <translation>%1: Getriebe ist gegen %2 selbsthemmend</translation>
    </message>
    <message>
        <source>%1 turns by itself without power: gravity %2, friction %3</source>
        <translation>%1 dreht sich stromlos von selbst: Schwerkraft %2, Reibung %3</translation>
    </message>
    <message>
        <source>%1 stays without power: gravity %2, friction %3</source>
        <translation>%1 bleibt stromlos stehen: Schwerkraft %2, Reibung %3</translation>
    </message>
    <message>
        <source>%1 needs %2 to hold its worst angle</source>
        <translation>%1 braucht %2, um den ungünstigsten Winkel zu halten</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Gravity torque</source>
        <translation>Schwerkraftmoment</translation>
    </message>
    <message>
        <source>%1 winding</source>
        <translation>%1: Wicklung</translation>
    </message>
    <message>
        <source>%1 bracket</source>
        <translation>%1: Halter</translation>
    </message>
    <message>
        <source>%1 runs away: it never gets steady</source>
        <translation>%1 läuft thermisch davon: kein stationärer Zustand</translation>
    </message>
    <message>
        <source>, limit %1</source>
        <translation>, Grenze %1</translation>
    </message>
    <message>
        <source>%1 winding gets to %2%3; %4</source>
        <translation>%1: Wicklung erreicht %2%3; %4</translation>
    </message>
    <message>
        <source>%1: worked out anew when nothing is dragged</source>
        <translation>%1: wird neu berechnet, sobald nichts gezogen wird</translation>
    </message>
    <message>
        <source>brackets give way</source>
        <translation>Halter geben nach</translation>
    </message>
    <message>
        <source>%1 bracket gives way</source>
        <translation>%1: Halter gibt nach</translation>
    </message>
    <message>
        <source>windings' limit</source>
        <translation>Grenze der Wicklungen</translation>
    </message>
    <message>
        <source>%1 winding's limit</source>
        <translation>%1: Grenze der Wicklung</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>winding</source>
        <translation>Wicklung</translation>
    </message>
    <message>
        <source>%1, %2 in all</source>
        <translation>%1, insgesamt %2</translation>
    </message>
    <message>
        <source>Axis,Part,Inertia / kg·m²</source>
        <translation>Achse,Teil,Trägheitsmoment / kg·m²</translation>
    </message>
    <message>
        <source>%1: a mass, a place, a shape or the gear is missing</source>
        <translation>%1: eine Masse, eine Lage, eine Form oder das Getriebe fehlt</translation>
    </message>
    <message>
        <source>rotor × N²</source>
        <translation>Rotor × N²</translation>
    </message>
    <message>
        <source>gearbox × N²</source>
        <translation>Getriebe × N²</translation>
    </message>
    <message>
        <source>drive current</source>
        <translation>Reglerstrom</translation>
    </message>
    <message>
        <source>motor current</source>
        <translation>Motorstrom</translation>
    </message>
    <message>
        <source>gear torque</source>
        <translation>Getriebemoment</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>speed limit</source>
        <translation>Drehzahlgrenze</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Check,Verdict,Demand and capacity,Margin</source>
        <translation>Prüfung,Urteil,Bedarf und Vermögen,Reserve</translation>
    </message>
    <message>
        <source>%1 more, all with more margin</source>
        <translation>%1 weitere, alle mit mehr Reserve</translation>
    </message>
    <message>
        <source>Nothing to compare yet. Enter the ratings of the bearings, the screws, the arm or what the gearbox's output bears on their cards.</source>
        <translation>Noch nichts zu vergleichen. Auf den Karten die Kennwerte der Lager, der Schrauben, des Arms oder der Belastbarkeit des Getriebeabtriebs eingeben.</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>two columns are wanted, time and angle</source>
        <translation>zwei Spalten sind nötig, Zeit und Winkel</translation>
    </message>
    <message>
        <source>"%1" are not two numbers</source>
        <translation>„%1“ sind nicht zwei Zahlen</translation>
    </message>
    <message>
        <source>the time has to rise from line to line</source>
        <translation>die Zeit muss von Zeile zu Zeile steigen</translation>
    </message>
    <message>
        <source>more than a million lines; leave some out</source>
        <translation>mehr als eine Million Zeilen; einige weglassen</translation>
    </message>
    <message>
        <source>two lines of numbers at least are wanted</source>
        <translation>mindestens zwei Zeilen mit Zahlen sind nötig</translation>
    </message>
    <message>
        <source>%1 ratio %2</source>
        <translation>%1-Übersetzung %2</translation>
    </message>
    <message>
        <source>%1 drive limit %2</source>
        <translation>%1-Antriebsregler bis %2</translation>
    </message>
    <message>
        <source>pan and tilt</source>
        <translation>Pan und Tilt</translation>
    </message>
    <message>
        <source>a plot cannot be written as "%1"</source>
        <translation>ein Diagramm lässt sich nicht als „%1“ schreiben</translation>
    </message>
    <message>
        <source>end the name in .png, .svg, .pdf or .csv</source>
        <translation>Namen auf .png, .svg, .pdf oder .csv enden lassen</translation>
    </message>
    <message>
        <source>Step response</source>
        <translation>Sprungantwort</translation>
    </message>
    <message>
        <source>Time against ratio</source>
        <translation>Zeit über der Übersetzung</translation>
    </message>
    <message>
        <source>Torque and speed, with the step</source>
        <translation>Drehmoment und Drehzahl, mit Sprung</translation>
    </message>
    <message>
        <source>Speed in the step</source>
        <translation>Drehzahl im Sprung</translation>
    </message>
    <message>
        <source>Current in the step</source>
        <translation>Strom im Sprung</translation>
    </message>
    <message>
        <source>Both axes at once</source>
        <translation>Beide Achsen zugleich</translation>
    </message>
    <message>
        <source>Frequency response</source>
        <translation>Frequenzgang</translation>
    </message>
    <message>
        <source>Move profiles</source>
        <translation>Bewegungsprofile</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Verfahrbereich</translation>
    </message>
    <message>
        <source>Speed over travel</source>
        <translation>Drehzahl über dem Verfahrbereich</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Erreichbarkeit</translation>
    </message>
    <message>
        <source>Where the inertia is</source>
        <translation>Wo das Trägheitsmoment sitzt</translation>
    </message>
    <message>
        <source>Against the eye: time</source>
        <translation>Vergleich mit dem Auge: Zeit</translation>
    </message>
    <message>
        <source>Against the eye: peak speed</source>
        <translation>Vergleich mit dem Auge: Spitzengeschwindigkeit</translation>
    </message>
    <message>
        <source>Temperature over the duty</source>
        <translation>Temperatur im Lastspiel</translation>
    </message>
    <message>
        <source>Current and voltage of the bus</source>
        <translation>Strom und Spannung des Zwischenkreises</translation>
    </message>
    <message>
        <source>Gravity over the travel</source>
        <translation>Schwerkraft über dem Verfahrbereich</translation>
    </message>
    <message>
        <source>Margins of bearings and joints</source>
        <translation>Reserven der Lager und Verbindungen</translation>
    </message>
    <message>
        <source>Where the pointing error is</source>
        <translation>Woher der Ausrichtfehler kommt</translation>
    </message>
    <message>
        <source>There are no curves over one x here.</source>
        <translation>Hier gibt es keine Kurven über einem gemeinsamen x.</translation>
    </message>
    <message>
        <source>%1, ±%2 in 95 of 100 cases</source>
        <translation>%1, ±%2 in 95 von 100 Fällen</translation>
    </message>
    <message>
        <source>Axis,Error,Largest / rad,Standard deviation / rad,Distribution</source>
        <translation>Achse,Fehler,Größter / rad,Standardabweichung / rad,Verteilung</translation>
    </message>
    <message>
        <source>best: %1, settled %2</source>
        <translation>bestes: %1, eingeschwungen %2</translation>
    </message>
    <message>
        <source>Of a variant only the profile that is best for it is here, which may be another.</source>
        <translation>Von einer Variante steht hier nur das für sie beste Profil; das kann ein anderes sein.</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>%1 settled</source>
        <translation>%1 eingeschwungen</translation>
    </message>
    <message>
        <source>%1 shortest</source>
        <translation>%1 kürzeste</translation>
    </message>
    <message>
        <source>within 5 % of best</source>
        <translation>innerhalb 5 % vom Besten</translation>
    </message>
    <message>
        <source>%1 is within 5 % of its shortest time from ratio %2 to %3</source>
        <translation>%1 liegt bei Übersetzungen von %2 bis %3 innerhalb 5 % der kürzesten Zeit</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1 : 1</translation>
    </message>
    <message>
        <source>%1 at %2 : 1 moves in %3 at best</source>
        <translation>%1 bei %2 : 1 bewegt sich bestenfalls in %3</translation>
    </message>
    <message>
        <source>%1 at %2 : 1 has settled after %3</source>
        <translation>%1 bei %2 : 1 ist nach %3 eingeschwungen</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>gefordert %1</translation>
    </message>
    <message>
        <source>shortest</source>
        <translation>kürzeste</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>eingeschwungen</translation>
    </message>
    <message>
        <source>rings: the shortest move of %1</source>
        <translation>Ringe: die kürzeste Bewegung von %1</translation>
    </message>
    <message>
        <source>A variant is one place here, at its own ratio, and not a curve.</source>
        <translation>Eine Variante ist hier ein Punkt bei ihrer eigenen Übersetzung und keine Kurve.</translation>
    </message>
    <message>
        <source>The ratios are being tried out, or no rig is open.</source>
        <translation>Die Übersetzungen werden gerade durchprobiert, oder es ist kein Rig geöffnet.</translation>
    </message>
    <message>
        <source>%1 cannot make the move at any ratio from 1 to 200</source>
        <translation>%1 schafft die Bewegung mit keiner Übersetzung von 1 bis 200</translation>
    </message>
    <message>
        <source>No ratio makes the move.</source>
        <translation>Keine Übersetzung schafft die Bewegung.</translation>
    </message>
    <message>
        <source>ticks: ratios that gearboxes are usually sold in</source>
        <translation>Striche: handelsübliche Getriebeübersetzungen</translation>
    </message>
    <message>
        <source>ticks: ratios of the gearboxes on the shelf</source>
        <translation>Striche: Übersetzungen der Getriebe im Regal</translation>
    </message>
    <message>
        <source>Pan / ° across; cross: the moves; thick line: blind</source>
        <translation>Pan / ° waagrecht; Kreuz: Bewegungen; dick: blind</translation>
    </message>
    <message>
        <source>Tilt / °</source>
        <translation>Tilt / °</translation>
    </message>
    <message>
        <source>The map follows when the drag ends.</source>
        <translation>Die Erreichbarkeitskarte folgt, wenn das Ziehen endet.</translation>
    </message>
    <message>
        <source>Points at %1 of the sphere</source>
        <translation>Richtet sich auf %1 der Kugel aus</translation>
    </message>
    <message>
        <source>sees %1 of it</source>
        <translation>sieht %1 davon</translation>
    </message>
    <message>
        <source>blind wedge of %1</source>
        <translation>blinder Keil von %1</translation>
    </message>
    <message>
        <source>long way round it %1</source>
        <translation>langer Weg darum herum %1</translation>
    </message>
    <message>
        <source>blind cone overhead of ±%1</source>
        <translation>blinder Kegel über Kopf von ±%1</translation>
    </message>
    <message>
        <source>reachable</source>
        <translation>erreichbar</translation>
    </message>
    <message>
        <source>collision</source>
        <translation>Kollision</translation>
    </message>
    <message>
        <source>keep-out</source>
        <translation>Sperrbereich</translation>
    </message>
    <message>
        <source>The map is being worked out.</source>
        <translation>Die Erreichbarkeitskarte wird berechnet.</translation>
    </message>
    <message>
        <source>Keep-outs…</source>
        <translation>Sperrbereiche…</translation>
    </message>
    <message>
        <source>Enter directions that the camera must stay out of</source>
        <translation>Richtungen eingeben, die die Kamera meiden muss</translation>
    </message>
    <message>
        <source>Pan / °,Tilt / °,Limit</source>
        <translation>Pan / °,Tilt / °,Grenze</translation>
    </message>
    <message>
        <source>pan %1, tilt %2: %3</source>
        <translation>Pan %1, Tilt %2: %3</translation>
    </message>
    <message>
        <source>. Press to show its card.</source>
        <translation>. Drücken zeigt die zugehörige Karte.</translation>
    </message>
    <message>
        <source>same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source>Not shown, it needs more height: %1</source>
        <translation>Nicht gezeigt, dafür fehlt die Höhe: %1</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>hält</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>fails</source>
        <translation>versagt</translation>
    </message>
    <message>
        <source>%1 camera</source>
        <translation>%1 Kamera</translation>
    </message>
    <message>
        <source>%1 rises (10–90 %) in %2</source>
        <translation>%1 steigt (10–90 %) in %2</translation>
    </message>
    <message>
        <source>rise %1</source>
        <translation>Anstieg %1</translation>
    </message>
    <message>
        <source>%1 overshoots by %2</source>
        <translation>%1 schwingt um %2 über</translation>
    </message>
    <message>
        <source>±%1 px, %2</source>
        <translation>±%1 px, %2</translation>
    </message>
    <message>
        <source>%1 settles after %2</source>
        <translation>%1 ist nach %2 eingeschwungen</translation>
    </message>
    <message>
        <source>settled %1</source>
        <translation>eingeschwungen %1</translation>
    </message>
    <message>
        <source>%1: the camera on its bracket is still after %2</source>
        <translation>%1: die Kamera auf ihrem Halter ruht nach %2</translation>
    </message>
    <message>
        <source>camera still %1</source>
        <translation>Kamera ruht %1</translation>
    </message>
    <message>
        <source>%1 reaches %2</source>
        <translation>%1 erreicht %2</translation>
    </message>
    <message>
        <source>speed limit of the loop</source>
        <translation>Drehzahlgrenze des Regelkreises</translation>
    </message>
    <message>
        <source>%1 speed limit of the loop</source>
        <translation>%1: Drehzahlgrenze des Regelkreises</translation>
    </message>
    <message>
        <source>%1 phase</source>
        <translation>%1: Phase</translation>
    </message>
    <message>
        <source>%1 bus</source>
        <translation>%1: Zwischenkreis</translation>
    </message>
    <message>
        <source>phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>%1 draws up to %2 in a phase</source>
        <translation>%1 zieht bis zu %2 in einer Phase</translation>
    </message>
    <message>
        <source>drive limit</source>
        <translation>Grenze des Antriebsreglers</translation>
    </message>
    <message>
        <source>%1 drive limit</source>
        <translation>%1: Grenze des Antriebsreglers</translation>
    </message>
    <message>
        <source>%1 driving limit</source>
        <translation>%1: Antriebsgrenze</translation>
    </message>
    <message>
        <source>%1 braking limit</source>
        <translation>%1: Bremsgrenze</translation>
    </message>
    <message>
        <source>%1 lasting</source>
        <translation>%1 dauernd</translation>
    </message>
    <message>
        <source>lasting</source>
        <translation>dauernd</translation>
    </message>
    <message>
        <source>%1 bears %2 without end</source>
        <translation>%1 erträgt %2 auf Dauer</translation>
    </message>
    <message>
        <source>%1 driving limit, hot</source>
        <translation>%1: Antriebsgrenze, heiß</translation>
    </message>
    <message>
        <source>hot, %1</source>
        <translation>heiß, %1</translation>
    </message>
    <message>
        <source>%1 hot is with its winding at %2, else at %3</source>
        <translation>%1 heiß: Wicklung bei %2, sonst bei %3</translation>
    </message>
    <message>
        <source>%1 step</source>
        <translation>%1: Sprung</translation>
    </message>
    <message>
        <source>gearbox peak</source>
        <translation>Getriebespitze</translation>
    </message>
    <message>
        <source>%1 gearbox peak</source>
        <translation>%1: Getriebespitze</translation>
    </message>
    <message>
        <source>%1 gives up to %2 and reaches %3</source>
        <translation>%1 gibt bis zu %2 ab und erreicht %3</translation>
    </message>
    <message>
        <source>driving</source>
        <translation>antreibend</translation>
    </message>
    <message>
        <source>braking</source>
        <translation>bremsend</translation>
    </message>
    <message>
        <source>the step</source>
        <translation>der Sprung</translation>
    </message>
    <message>
        <source>driving, hot</source>
        <translation>antreibend, heiß</translation>
    </message>
    <message>
        <source>Output speed</source>
        <translation>Abtriebsdrehzahl</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>%1: %2 from the centre on average, %3 of the time in the middle</source>
        <translation>%1: im Mittel %2 von der Mitte, %3 der Zeit in der Bildmitte</translation>
    </message>
    <message>
        <source>%1: %2 stands at the end of its travel for %3 of the time</source>
        <translation>%1: %2 steht %3 der Zeit am Ende des Verfahrbereichs</translation>
    </message>
    <message>
        <source>%1: inner third</source>
        <translation>%1: inneres Drittel</translation>
    </message>
    <message>
        <source>Target from the centre</source>
        <translation>Ziel von der Mitte</translation>
    </message>
    <message>
        <source>The target does not move this axis.</source>
        <translation>Das Ziel bewegt diese Achse nicht.</translation>
    </message>
    <message>
        <source>Axis,Centre / °,Stops / °,Soft limits / °,Cable / °,Usable / °,Home / °,Park / °</source>
        <translation>Achse,Mitte / °,Anschläge / °,Softlimits / °,Kabel / °,Nutzbar / °,Grundstellung / °,Parklage / °</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorwärts</translation>
    </message>
    <message>
        <source>back</source>
        <translation>rückwärts</translation>
    </message>
    <message>
        <source>%1 %2 to soft limit</source>
        <translation>%1 %2 bis Softlimit</translation>
    </message>
    <message>
        <source>%1 %2 to stop</source>
        <translation>%1 %2 bis Anschlag</translation>
    </message>
    <message>
        <source>between the soft limits</source>
        <translation>zwischen den Softlimits</translation>
    </message>
    <message>
        <source>%1 needs %2 to stop from full speed</source>
        <translation>%1 braucht %2, um aus voller Drehzahl anzuhalten</translation>
    </message>
    <message>
        <source>%1 still hits the stop at %2 when it brakes at the soft limit</source>
        <translation>%1 trifft den Anschlag noch mit %2, wenn am Softlimit gebremst wird</translation>
    </message>
    <message>
        <source>loop's speed limit</source>
        <translation>Drehzahlgrenze der Regelung</translation>
    </message>
    <message>
        <source>%1 loop's speed limit</source>
        <translation>%1: Drehzahlgrenze der Regelung</translation>
    </message>
    <message>
        <source>%1 has no stops to brake for</source>
        <translation>%1 hat keine Anschläge, vor denen zu bremsen wäre</translation>
    </message>
    <message>
        <source>%1: the soft limits leave no travel</source>
        <translation>%1: die Softlimits lassen keinen Verfahrbereich übrig</translation>
    </message>
    <message>
        <source>to soft limit</source>
        <translation>bis Softlimit</translation>
    </message>
    <message>
        <source>to stop</source>
        <translation>bis Anschlag</translation>
    </message>
    <message>
        <source>thin lines: %1</source>
        <translation>dünne Linien: %1</translation>
    </message>
    <message>
        <source>%1, design sheet</source>
        <translation>%1, Entwurfsblatt</translation>
    </message>
    <message>
        <source>Not known: %1.</source>
        <translation>Nicht bekannt: %1.</translation>
    </message>
    <message>
        <source>Centre of mass %1 off the axis; gravity turns it with up to %2.</source>
        <translation>Schwerpunkt %1 neben der Achse; Schwerkraft dreht sie mit bis zu %2.</translation>
    </message>
    <message>
        <source>Holding the worst angle takes %1 and heats the winding with %2.</source>
        <translation>Halten im ungünstigsten Winkel braucht %1 und heizt die Wicklung mit %2.</translation>
    </message>
    <message>
        <source>Friction holds it without power.</source>
        <translation>Reibung hält sie stromlos.</translation>
    </message>
    <message>
        <source>It turns by itself without power: keep hands clear and park it before switching off.</source>
        <translation>Sie dreht sich stromlos von selbst: Hände fernhalten und vor dem Ausschalten in Parklage fahren.</translation>
    </message>
    <message>
        <source>A counterweight of %1 (a ball of %2) would balance it and add %3 of inertia.</source>
        <translation>Ein Gegengewicht von %1 (eine Kugel von %2) würde sie ausgleichen und das Trägheitsmoment um %3 erhöhen.</translation>
    </message>
    <message>
        <source>Droop %1, first mode %2; one arm %3, %4 and %5 of pan inertia, a fork %6, %7 and %8. Strength of %9: %10.</source>
        <translation>Durchsenkung %1, erste Eigenfrequenz %2; ein Arm %3, %4 und %5 Pan-Trägheitsmoment, eine Gabel %6, %7 und %8. Festigkeit von %9: %10.</translation>
    </message>
    <message>
        <source>Balance, arm and stand</source>
        <translation>Gleichgewicht, Arm und Stativ</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Arm</translation>
    </message>
    <message>
        <source>At rest it tips at a lean of %1.</source>
        <translation>In Ruhe kippt es bei einer Neigung von %1.</translation>
    </message>
    <message>
        <source>The fastest moves tip it with %1 against %2.</source>
        <translation>Die schnellsten Bewegungen kippen es mit %1 gegen %2.</translation>
    </message>
    <message>
        <source>First mode %1; it sways by %2 in the task's moves.</source>
        <translation>Erste Eigenfrequenz %1; bei den Bewegungen der Aufgabe schwankt es um %2.</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Stativ</translation>
    </message>
    <message>
        <source>Fast masses and pinch points.</source>
        <translation>Schnelle Massen und Quetschstellen.</translation>
    </message>
    <message>
        <source>The head starts without warning and faster than a hand can draw back. Keep fingers, hair and cables out of the gaps at stops, arm and ball; guard them where people can reach. Wear eye protection at the first fast moves.</source>
        <translation>Der Kopf läuft ohne Vorwarnung an und schneller, als eine Hand zurückweichen kann. Finger, Haare und Kabel von den Spalten an Anschlägen, Arm und Kugel fernhalten; die Spalte abdecken, wo Menschen hinreichen. Bei den ersten schnellen Bewegungen Schutzbrille tragen.</translation>
    </message>
    <message>
        <source>Hot motors.</source>
        <translation>Heiße Motoren.</translation>
    </message>
    <message>
        <source>Windings and brackets may burn skin and soften prints before the shell feels warm; metal above some 60 °C burns at a touch. Guard what people can reach, keep paper, cloth and solvents away, give every motor a thermal trip, never leave a stalled motor unwatched, and measure the bracket in the first hour.</source>
        <translation>Wicklungen und Halter können Haut verbrennen und Druckteile erweichen, bevor sich das Gehäuse warm anfühlt; an Metall über etwa 60 °C verbrennt man sich schon bei kurzer Berührung. Erreichbares abdecken, Papier, Stoff und Lösemittel fernhalten, jedem Motor eine thermische Abschaltung geben, einen blockierten Motor nie unbeaufsichtigt lassen und in der ersten Stunde am Halter messen.</translation>
    </message>
    <message>
        <source>Stored and returned energy.</source>
        <translation>Gespeicherte und rückgespeiste Energie.</translation>
    </message>
    <message>
        <source>Braking lifts the bus voltage; a supply that cannot take it back needs a brake resistor or room in its capacitors. Capacitors stay charged after switching off: wait and measure before touching. Fuse batteries at the cell, charge them watched, and never short them. Brake resistors get hot enough to burn skin: mount them clear of prints and cables. Never replace a fuse by one rated above its wire.</source>
        <translation>Bremsen hebt die Zwischenkreisspannung; eine Versorgung, die keine Energie zurücknimmt, braucht einen Bremswiderstand oder Reserve in ihren Kondensatoren. Kondensatoren bleiben nach dem Ausschalten geladen: vor dem Berühren warten und messen. Akkus direkt an der Zelle absichern, unter Aufsicht laden und nie kurzschließen. Bremswiderstände werden so heiß, dass man sich an ihnen verbrennt: fern von Druckteilen und Kabeln montieren. Eine Sicherung nie durch eine ersetzen, deren Nennstrom über dem ihrer Ader liegt.</translation>
    </message>
    <message>
        <source>Screws and bearings work loose.</source>
        <translation>Schrauben und Lager lockern sich.</translation>
    </message>
    <message>
        <source>Reversing torque undoes screws: lock the threads with something that suits the material (some lockers crack plastics). Prints and inserts creep under a screw: tighten again after a day and after the first hot hours, and look at screws and play at every service. What hangs over heads needs a second hold.</source>
        <translation>Wechselndes Drehmoment löst Schrauben: Gewinde mit einem zum Werkstoff passenden Mittel sichern (manche Sicherungslacke lassen Kunststoff reißen). Druckteile und Gewindeeinsätze kriechen unter einer Schraube: nach einem Tag und nach den ersten heißen Stunden nachziehen und bei jeder Wartung Schrauben und Lagerluft prüfen. Was über Köpfen hängt, braucht eine zweite Sicherung.</translation>
    </message>
    <message>
        <source>What falls and tips.</source>
        <translation>Was fällt und kippt.</translation>
    </message>
    <message>
        <source>An axis that gravity turns drops when power goes: park it or hold it before switching off, and fix counterweights so that they cannot come loose. A stand that somebody leans on tips earlier than computed: screw it down where people pass. Printed arms tire, creep and soften in heat; look for cracks, and do not hang a load over people on print alone.</source>
        <translation>Eine Achse, die von der Schwerkraft gedreht wird, fällt bei Stromausfall: vor dem Ausschalten in Parklage fahren oder halten und Gegengewichte so befestigen, dass sie sich nicht lösen können. Ein Stativ, an das sich jemand lehnt, kippt früher als berechnet: festschrauben, wo Menschen vorbeigehen. Gedruckte Arme ermüden, kriechen und erweichen bei Wärme; auf Risse achten und keine Last allein an Druckteilen über Menschen hängen.</translation>
    </message>
    <message>
        <source>First power-up.</source>
        <translation>Erstes Einschalten.</translation>
    </message>
    <message>
        <source>Clamp the stand. Start with a current-limited supply and a tenth to a fifth of the final current and speed (common practice, no source), with the head off or balanced. Check the sign of encoder and torque, then soft limits by hand, then an emergency stop that cuts the motor power, and only then raise current step by step.</source>
        <translation>Das Stativ festspannen. Mit strombegrenzter Versorgung und einem Zehntel bis einem Fünftel des endgültigen Stroms und der endgültigen Drehzahl beginnen (übliche Praxis, ohne Quelle), der Kopf abgenommen oder ausgewuchtet. Vorzeichen von Encoder und Drehmoment prüfen, dann die Softlimits von Hand, dann einen Not-Halt, der die Motorleistung abschaltet, und erst danach den Strom schrittweise erhöhen.</translation>
    </message>
    <message>
        <source>What this sheet is not.</source>
        <translation>Was dieses Blatt nicht ist.</translation>
    </message>
    <message>
        <source>Figures come from a model and from the assumptions above; they replace neither a measurement nor a risk assessment. Local codes and rules and the judgement of licensed practitioners have the last word.</source>
        <translation>Die Kennwerte stammen aus einem Modell und den obigen Annahmen; sie ersetzen weder eine Messung noch eine Risikobeurteilung. Örtliche Vorschriften und Regeln und das Urteil zugelassener Fachleute haben das letzte Wort.</translation>
    </message>
    <message>
        <source>Before you build and switch on</source>
        <translation>Vor Bau und Einschalten</translation>
    </message>
    <message>
        <source>Checked and released</source>
        <translation>Geprüft und freigegeben</translation>
    </message>
    <message>
        <source>Designed by, date</source>
        <translation>Entworfen von, Datum</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>Geprüft von, Datum</translation>
    </message>
    <message>
        <source>Released by, date</source>
        <translation>Freigegeben von, Datum</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>or more: at an end it has no value</source>
        <translation>oder mehr: an einem Ende gibt es keinen Wert</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennwert</translation>
    </message>
    <message>
        <source>Axis</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>moved most by, from end to end of its range</source>
        <translation>am stärksten bewegt durch, von Ende zu Ende des Bereichs</translation>
    </message>
    <message>
        <source>Verdicts within the doubt</source>
        <translation>Urteile innerhalb der Unsicherheit</translation>
    </message>
    <message>
        <source>Worth measuring</source>
        <translation>Messen lohnt sich</translation>
    </message>
    <message>
        <source>Taken as</source>
        <translation>Angenommen als</translation>
    </message>
    <message>
        <source>Share of the doubt</source>
        <translation>Anteil an der Unsicherheit</translation>
    </message>
    <message>
        <source>What measuring it tells</source>
        <translation>Was die Messung klärt</translation>
    </message>
    <message>
        <source>How far to trust these numbers</source>
        <translation>Wie weit diesen Zahlen zu trauen ist</translation>
    </message>
    <message>
        <source>Nothing to rank: %1.</source>
        <translation>Nichts zu ordnen: %1.</translation>
    </message>
    <message>
        <source>Masses</source>
        <translation>Massen</translation>
    </message>
    <message>
        <source>Inertia</source>
        <translation>Trägheitsmoment</translation>
    </message>
    <message>
        <source>Balance and gravity</source>
        <translation>Gleichgewicht und Schwerkraft</translation>
    </message>
    <message>
        <source>At the output</source>
        <translation>Am Abtrieb</translation>
    </message>
    <message>
        <source>Ratio and shortest move</source>
        <translation>Übersetzung und kürzeste Bewegung</translation>
    </message>
    <message>
        <source>Slow turning</source>
        <translation>Langsames Drehen</translation>
    </message>
    <message>
        <source>Advised gains</source>
        <translation>Empfohlene Verstärkungen</translation>
    </message>
    <message>
        <source>Hard stops</source>
        <translation>Harte Anschläge</translation>
    </message>
    <message>
        <source>Without power</source>
        <translation>Stromlos</translation>
    </message>
    <message>
        <source>Picture and pointing</source>
        <translation>Bild und Ausrichtung</translation>
    </message>
    <message>
        <source>Tracking</source>
        <translation>Verfolgung</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Bearings and gearbox output</source>
        <translation>Lager und Getriebeabtrieb</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Verbindungen</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Kennwerte</translation>
    </message>
    <message>
        <source>The handbook has the formula and the source of each.</source>
        <translation>Das Handbuch enthält Formel und Quelle zu jedem.</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beide</translation>
    </message>
    <message>
        <source>? Missing inputs: %1. Without them %2 figures and %3 findings are not known. Fill in first: %4.</source>
        <translation>? Fehlende Eingaben: %1. Ohne sie sind %2 Kennwerte und %3 Befunde nicht bekannt. Zuerst eingeben: %4.</translation>
    </message>
    <message>
        <source>What fails or is tight, and what to do</source>
        <translation>Was versagt oder knapp ist, und was zu tun ist</translation>
    </message>
    <message>
        <source>Nothing that is known fails or is tight. What holds stands under “What holds”.</source>
        <translation>Nichts Bekanntes versagt oder ist knapp. Was hält, steht unter „Was hält“.</translation>
    </message>
    <message>
        <source>Nothing is known yet that fails or is tight.</source>
        <translation>Noch ist nichts bekannt, was versagt oder knapp ist.</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation>Bedarf</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Vermögen</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>What would make it hold</source>
        <translation>Was Abhilfe schafft</translation>
    </message>
    <message>
        <source>What is not known</source>
        <translation>Was nicht bekannt ist</translation>
    </message>
    <message>
        <source>What holds</source>
        <translation>Was hält</translation>
    </message>
    <message>
        <source>without end</source>
        <translation>ohne Ende</translation>
    </message>
    <message>
        <source>, the drive's limit</source>
        <translation>, die Grenze des Antriebsreglers</translation>
    </message>
    <message>
        <source>%1, winding limit %2</source>
        <translation>%1, Wicklungsgrenze %2</translation>
    </message>
    <message>
        <source> Times until the winding is at its limit: turning from the air's temperature and from the hottest moment of the duty, standing with one winding under full current. Currents are phase amplitudes. They come from a model with two heat capacities; set the drive's thermal trip below them and measure.</source>
        <translation> Zeiten, bis die Wicklung an ihrer Grenze ist: drehend ab Lufttemperatur und ab dem heißesten Moment des Lastspiels, stehend mit einer Wicklung unter vollem Strom. Ströme sind Phasenamplituden. Sie stammen aus einem Modell mit zwei Wärmekapazitäten; die thermische Abschaltung des Antriebsreglers darunter einstellen und messen.</translation>
    </message>
    <message>
        <source>Of the lasting current</source>
        <translation>Vom Dauerstrom</translation>
    </message>
    <message>
        <source>Turning, cold</source>
        <translation>Drehend, kalt</translation>
    </message>
    <message>
        <source>Turning, warm</source>
        <translation>Drehend, warm</translation>
    </message>
    <message>
        <source>Standing, cold</source>
        <translation>Stehend, kalt</translation>
    </message>
    <message>
        <source>Gain advice</source>
        <translation>Empfohlene Verstärkungen</translation>
    </message>
    <message>
        <source>Homing plan</source>
        <translation>Plan der Referenzfahrt</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>%1 (default)</source>
        <translation>%1 (Vorgabe)</translation>
    </message>
    <message>
        <source>Detector %1</source>
        <translation>Detektor %1</translation>
    </message>
    <message>
        <source>Move %1 of the duty</source>
        <translation>Bewegung %1 des Lastspiels</translation>
    </message>
    <message>
        <source>Material %1</source>
        <translation>Werkstoff %1</translation>
    </message>
    <message>
        <source>Surroundings</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Regelkreis</translation>
    </message>
    <message>
        <source>Bearings</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>Pointing</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Place of the tilt axis</source>
        <translation>Lage der Tilt-Achse</translation>
    </message>
    <message>
        <source>ball</source>
        <translation>Kugel</translation>
    </message>
    <message>
        <source>shell</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>tube along %1</source>
        <translation>Rohr entlang %1</translation>
    </message>
    <message>
        <source>box</source>
        <translation>Quader</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>tensor</source>
        <translation>Tensor</translation>
    </message>
    <message>
        <source>Bodies</source>
        <translation>Körper</translation>
    </message>
    <message>
        <source>Turns with</source>
        <translation>Dreht sich mit</translation>
    </message>
    <message>
        <source>Centre x, y, z</source>
        <translation>Mitte x, y, z</translation>
    </message>
    <message>
        <source>Keep-outs</source>
        <translation>Sperrbereiche</translation>
    </message>
    <message>
        <source>Keep-out</source>
        <translation>Sperrbereich</translation>
    </message>
    <message>
        <source>Pan from</source>
        <translation>Pan von</translation>
    </message>
    <message>
        <source>Tilt from</source>
        <translation>Tilt von</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>From own data files</source>
        <translation>Aus eigenen Datendateien</translation>
    </message>
    <message>
        <source>Values of the trade that are not the built-in ones.</source>
        <translation>Fachwerte, die von den eingebauten abweichen.</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Value of</source>
        <translation>Wert von</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>datasheet</source>
        <translation>Datenblatt</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>default</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>source not stated</source>
        <translation>Quelle nicht angegeben</translation>
    </message>
    <message>
        <source>Stops, screws, bearings, wiring and supply</source>
        <translation>Anschläge, Schrauben, Lager, Verkabelung und Versorgung</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>Annahmen</translation>
    </message>
    <message>
        <source>Every input as it was written, with its spread and source where they are stated. What nobody gave is marked default or missing. Stops, screws, bearings, wiring, supply and bodies stand with what is needed to build.</source>
        <translation>Jede Eingabe, wie sie geschrieben wurde, mit Streuung und Quelle, soweit angegeben. Was niemand angegeben hat, ist als Vorgabe oder fehlend gekennzeichnet. Anschläge, Schrauben, Lager, Verkabelung, Versorgung und Körper stehen bei dem, was zum Bauen gebraucht wird.</translation>
    </message>
    <message>
        <source>What limits the moves</source>
        <translation>Was die Bewegungen begrenzt</translation>
    </message>
    <message>
        <source>revision %1</source>
        <translation>Revision %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Supply %1; pan %2 : 1, tilt %3 : 1; moves of %4 and %5; settled within ±%6 px.</source>
        <translation>Versorgung %1; Pan %2 : 1, Tilt %3 : 1; Bewegungen von %4 und %5; eingeschwungen innerhalb ±%6 px.</translation>
    </message>
    <message>
        <source>Drawing to scale, at pan 0° and tilt 0°</source>
        <translation>Maßstäbliche Zeichnung, bei Pan 0° und Tilt 0°</translation>
    </message>
    <message>
        <source>Plots</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>%1, torque and speed with the step</source>
        <translation>%1, Drehmoment und Drehzahl mit Sprung</translation>
    </message>
    <message>
        <source>%1, speed over travel</source>
        <translation>%1, Drehzahl über dem Verfahrbereich</translation>
    </message>
    <message>
        <source>%1, frequency response of the loops</source>
        <translation>%1, Frequenzgang der Regelkreise</translation>
    </message>
    <message>
        <source>%1, where the pointing error is</source>
        <translation>%1, woher der Ausrichtfehler kommt</translation>
    </message>
    <message>
        <source>Root-sum-square of the largest</source>
        <translation>Wurzel der Quadratsumme der größten</translation>
    </message>
    <message>
        <source>Worst case, their sum</source>
        <translation>Ungünstigster Fall, ihre Summe</translation>
    </message>
    <message>
        <source>Expanded, twice the combined deviation</source>
        <translation>Erweitert, doppelte kombinierte Abweichung</translation>
    </message>
    <message>
        <source>Largest, ±</source>
        <translation>Größter, ±</translation>
    </message>
    <message>
        <source>In the picture</source>
        <translation>Im Bild</translation>
    </message>
    <message>
        <source>At the target</source>
        <translation>Am Ziel</translation>
    </message>
    <message>
        <source>Distribution</source>
        <translation>Verteilung</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>%1, not counted: %2.</source>
        <translation>%1, nicht gezählt: %2.</translation>
    </message>
    <message>
        <source>The same root-sum-square if it were built otherwise, with the same encoder, and what would hold the teeth on one side.</source>
        <translation>Dieselbe Wurzel der Quadratsumme bei anderem Aufbau mit gleichem Encoder, und was die Zähne auf einer Seite hielte.</translation>
    </message>
    <message>
        <source>Otherwise</source>
        <translation>Andernfalls</translation>
    </message>
    <message>
        <source>Encoder at the motor</source>
        <translation>Encoder am Motor</translation>
    </message>
    <message>
        <source>Encoder at the output</source>
        <translation>Encoder am Abtrieb</translation>
    </message>
    <message>
        <source>Teeth held together by preload or bias</source>
        <translation>Zähne durch Vorspannung oder Vormoment aneinander gehalten</translation>
    </message>
    <message>
        <source>Pull of weight and cable that holds them everywhere</source>
        <translation>Moment aus Gewicht und Kabel, das sie überall anliegen lässt</translation>
    </message>
    <message>
        <source>Bias that is missing for it</source>
        <translation>Dafür fehlendes Vormoment</translation>
    </message>
    <message>
        <source>Turning while a picture is taken: smear over the exposure, lean or stretch over the readout of a rolling shutter (none with a global one). Following: less smear in 95 % of the pictures.</source>
        <translation>Drehung während einer Aufnahme: Verwischung über die Belichtung, Schrägverzug oder Streckung über das Auslesen eines Rolling Shutter (keine bei Global Shutter). Verfolgung: in 95 % der Bilder ist die Verwischung geringer.</translation>
    </message>
    <message>
        <source>Following, %1</source>
        <translation>Verfolgung, %1</translation>
    </message>
    <message>
        <source>Pan at top speed, if the loop's limit fails</source>
        <translation>Pan bei Höchstdrehzahl, falls die Grenze der Regelung versagt</translation>
    </message>
    <message>
        <source>Tilt at top speed, if the loop's limit fails</source>
        <translation>Tilt bei Höchstdrehzahl, falls die Grenze der Regelung versagt</translation>
    </message>
    <message>
        <source>Smear of one pixel</source>
        <translation>Verwischung von einem Pixel</translation>
    </message>
    <message>
        <source>Lean of one pixel</source>
        <translation>Schrägverzug von einem Pixel</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>Smear</source>
        <translation>Verwischung</translation>
    </message>
    <message>
        <source>How far off each axis may look where it stands, and by what. Combined by the GUM (JCGM 100): parts by the square of their standard deviations; 95 of 100 errors are within the expanded one.</source>
        <translation>Wie weit jede Achse im Stillstand danebenzielen kann und wodurch. Kombiniert nach GUM (JCGM 100): Teile mit dem Quadrat ihrer Standardabweichungen; 95 von 100 Fehlern liegen innerhalb des erweiterten.</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Zur Ruhe</translation>
    </message>
    <message>
        <source>Picture usable</source>
        <translation>Bild brauchbar</translation>
    </message>
    <message>
        <source>RMS current</source>
        <translation>Effektivstrom</translation>
    </message>
    <message>
        <source>Ringing</source>
        <translation>Nachschwingen</translation>
    </message>
    <message>
        <source>rig</source>
        <translation>Gesamt</translation>
    </message>
    <message>
        <source>Drive settings</source>
        <translation>Reglereinstellungen</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>first</source>
        <translation>zuerst</translation>
    </message>
    <message>
        <source>Comes from</source>
        <translation>Kommt von</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Figures that tell it</source>
        <translation>Kennwerte</translation>
    </message>
    <message>
        <source>Mass of one</source>
        <translation>Masse je Stück</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Power returned</source>
        <translation>Rückgespeiste Leistung</translation>
    </message>
    <message>
        <source>Capacitance needed, no resistor</source>
        <translation>Nötige Kapazität, ohne Widerstand</translation>
    </message>
    <message>
        <source>Brake resistor, at most</source>
        <translation>Bremswiderstand, höchstens</translation>
    </message>
    <message>
        <source>Power of the brake resistor</source>
        <translation>Leistung des Bremswiderstands</translation>
    </message>
    <message>
        <source>Both axes together</source>
        <translation>Beide Achsen zusammen</translation>
    </message>
    <message>
        <source>Task's moves, peak</source>
        <translation>Bewegungen der Aufgabe, Spitze</translation>
    </message>
    <message>
        <source>Duty, mean or RMS</source>
        <translation>Lastspiel, Mittel- oder Effektivwert</translation>
    </message>
    <message>
        <source>Worst moves found</source>
        <translation>Ungünstigste gefundene Bewegungen</translation>
    </message>
    <message>
        <source>A fuse is replaced by one of its own rating, never by one above its wire's; a brake resistor gets hot enough to burn and to light what touches it.</source>
        <translation>Eine Sicherung wird durch eine mit gleichem Nennstrom ersetzt, nie durch eine über dem ihrer Ader; ein Bremswiderstand wird so heiß, dass man sich an ihm verbrennt und sich entzündet, was ihn berührt.</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>soft %1</source>
        <translation>Soft %1</translation>
    </message>
    <message>
        <source>centre %1</source>
        <translation>Mitte %1</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>rotor %1</source>
        <translation>Rotor %1</translation>
    </message>
    <message>
        <source>motor: %1</source>
        <translation>Motor: %1</translation>
    </message>
    <message>
        <source>gearbox: %1</source>
        <translation>Getriebe: %1</translation>
    </message>
    <message>
        <source>settles</source>
        <translation>eingeschwungen</translation>
    </message>
    <message>
        <source>camera still</source>
        <translation>Kamera ruht</translation>
    </message>
    <message>
        <source>%1 fail</source>
        <translation>%1 × versagt</translation>
    </message>
    <message>
        <source>%1 tight</source>
        <translation>%1 × knapp</translation>
    </message>
    <message>
        <source>%1 unknown</source>
        <translation>%1 × unbekannt</translation>
    </message>
    <message>
        <source>%1 hold</source>
        <translation>%1 × hält</translation>
    </message>
    <message>
        <source>Untitled rig</source>
        <translation>Rig ohne Titel</translation>
    </message>
    <message>
        <source>Design sheet of a pan-tilt rig</source>
        <translation>Entwurfsblatt eines Pan-Tilt-Rigs</translation>
    </message>
    <message>
        <source>Drive line of each axis</source>
        <translation>Antriebszeile jeder Achse</translation>
    </message>
    <message>
        <source>The target %1; the outer loop acts on the %2, with %3 of the target's speed fed forward. Error: root mean square of the distance from the picture's centre. Middle: time within the inner third. Smear: less in 95 % of the pictures.</source>
        <translation>Das Ziel: %1; der äußere Regelkreis wirkt auf: %2, mit %3 der Zielgeschwindigkeit als Vorsteuerung. Fehler: Effektivwert des Abstands von der Bildmitte. Bildmitte: Zeitanteil im inneren Drittel. Verwischung: in 95 % der Bilder geringer.</translation>
    </message>
    <message>
        <source>Detector</source>
        <translation>Detektor</translation>
    </message>
    <message>
        <source>Frames</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>Pan gain</source>
        <translation>Pan-Verst.</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>Tilt gain</source>
        <translation>Tilt-Verst.</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Bildmitte</translation>
    </message>
    <message>
        <source>best</source>
        <translation>am besten</translation>
    </message>
    <message>
        <source>Variants</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>Inputs that differ</source>
        <translation>Abweichende Eingaben</translation>
    </message>
    <message>
        <source>Main figures that differ</source>
        <translation>Abweichende Hauptkennwerte</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>Start a rig with everything missing</source>
        <translation>Ein Rig beginnen, in dem alles fehlt</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open a rig file</source>
        <translation>Eine Rig-Datei öffnen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Write the rig to its file</source>
        <translation>Das Rig in seine Datei schreiben</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Write the rig to another file</source>
        <translation>Das Rig in eine andere Datei schreiben</translation>
    </message>
    <message>
        <source>Design sheet (&amp;PDF)…</source>
        <translation>Entwurfsblatt (&amp;PDF)…</translation>
    </message>
    <message>
        <source>Write the sheet to build from</source>
        <translation>Das Blatt zum Bauen schreiben</translation>
    </message>
    <message>
        <source>Prin&amp;t the design sheet…</source>
        <translation>Entwurfsblatt d&amp;rucken…</translation>
    </message>
    <message>
        <source>Put the sheet to build from on paper</source>
        <translation>Das Blatt, nach dem gebaut wird, zu Papier bringen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Close Gazewright</source>
        <translation>Gazewright beenden</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Take the last change back</source>
        <translation>Die letzte Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Make the change again</source>
        <translation>Die Änderung erneut ausführen</translation>
    </message>
    <message>
        <source>Apply a re&amp;medy</source>
        <translation>Ab&amp;hilfe anwenden</translation>
    </message>
    <message>
        <source>Apply a remedy of the selected finding</source>
        <translation>Eine Abhilfe des gewählten Befunds anwenden</translation>
    </message>
    <message>
        <source>Add a body that turns with &amp;pan only</source>
        <translation>Körper hinzufügen (nur &amp;Pan)</translation>
    </message>
    <message>
        <source>Add a body to the fork</source>
        <translation>Der Gabel einen Körper hinzufügen</translation>
    </message>
    <message>
        <source>Add a body that turns with &amp;tilt</source>
        <translation>Körper hinzufügen (mit &amp;Tilt)</translation>
    </message>
    <message>
        <source>Add a body to the ball</source>
        <translation>Der Kugel einen Körper hinzufügen</translation>
    </message>
    <message>
        <source>Add a &amp;counterweight</source>
        <translation>&amp;Gegengewicht hinzufügen</translation>
    </message>
    <message>
        <source>Add a body that balances tilt, or pan where its load is selected; drag it in the drawing</source>
        <translation>Einen Körper hinzufügen, der Tilt ausgleicht, oder Pan, wenn dessen Last gewählt ist; in der Zeichnung ziehen</translation>
    </message>
    <message>
        <source>Add a &amp;keep-out</source>
        <translation>&amp;Sperrbereich hinzufügen</translation>
    </message>
    <message>
        <source>Add a window of pan by tilt that the camera must stay out of</source>
        <translation>Ein Fenster aus Pan und Tilt hinzufügen, das die Kamera meiden muss</translation>
    </message>
    <message>
        <source>Save this part to the shel&amp;f</source>
        <translation>Dieses Teil ins Regal &amp;legen</translation>
    </message>
    <message>
        <source>Keep the part whose card is shown on your parts shelf</source>
        <translation>Das Teil, dessen Karte gezeigt wird, im eigenen Teileregal aufbewahren</translation>
    </message>
    <message>
        <source>&amp;Settings</source>
        <translation>&amp;Einstellungen</translation>
    </message>
    <message>
        <source>Theme, text size, paper, what opens, and folders</source>
        <translation>Farbschema, Textgröße, Papier, was sich öffnet und Ordner</translation>
    </message>
    <message>
        <source>Which parts fit &amp;best</source>
        <translation>Welche Teile passen am &amp;besten</translation>
    </message>
    <message>
        <source>Rank every motor and gearbox of the shelf for this rig</source>
        <translation>Alle Motoren und Getriebe des Regals für dieses Rig in eine Rangfolge bringen</translation>
    </message>
    <message>
        <source>Parts &amp;shelf</source>
        <translation>Teile&amp;regal</translation>
    </message>
    <message>
        <source>Your own parts, to put on an axis</source>
        <translation>Eigene Teile, um sie an eine Achse zu setzen</translation>
    </message>
    <message>
        <source>P&amp;in this design</source>
        <translation>Diesen Entwurf &amp;anheften</translation>
    </message>
    <message>
        <source>Keep the present design as a variant</source>
        <translation>Den jetzigen Entwurf als Variante behalten</translation>
    </message>
    <message>
        <source>&amp;Variants</source>
        <translation>&amp;Varianten</translation>
    </message>
    <message>
        <source>Compare the present design with its variants</source>
        <translation>Den jetzigen Entwurf mit seinen Varianten vergleichen</translation>
    </message>
    <message>
        <source>&amp;Swap the gearboxes</source>
        <translation>&amp;Getriebe tauschen</translation>
    </message>
    <message>
        <source>Pan gets tilt's gearbox and tilt pan's</source>
        <translation>Pan bekommt das Getriebe von Tilt und Tilt das von Pan</translation>
    </message>
    <message>
        <source>Go to &amp;pan ratio</source>
        <translation>Zur &amp;Pan-Übersetzung</translation>
    </message>
    <message>
        <source>Go to pan's ratio scale</source>
        <translation>Zur Übersetzungsskala von Pan gehen</translation>
    </message>
    <message>
        <source>Go to &amp;tilt ratio</source>
        <translation>Zur &amp;Tilt-Übersetzung</translation>
    </message>
    <message>
        <source>Go to tilt's ratio scale</source>
        <translation>Zur Übersetzungsskala von Tilt gehen</translation>
    </message>
    <message>
        <source>&amp;Next part</source>
        <translation>&amp;Nächstes Teil</translation>
    </message>
    <message>
        <source>Show the card of the next part</source>
        <translation>Die Karte des nächsten Teils zeigen</translation>
    </message>
    <message>
        <source>P&amp;revious part</source>
        <translation>&amp;Vorheriges Teil</translation>
    </message>
    <message>
        <source>Show the card of the part before</source>
        <translation>Die Karte des vorherigen Teils zeigen</translation>
    </message>
    <message>
        <source>&amp;Why?</source>
        <translation>&amp;Warum?</translation>
    </message>
    <message>
        <source>Explain what has the focus: formula, inputs, source, conditions</source>
        <translation>Erklären, was den Fokus hat: Formel, Eingaben, Quelle, Bedingungen</translation>
    </message>
    <message>
        <source>All f&amp;igures</source>
        <translation>Alle &amp;Kennwerte</translation>
    </message>
    <message>
        <source>Every figure, to search and to explain</source>
        <translation>Jeder Kennwert, zum Suchen und Erklären</translation>
    </message>
    <message>
        <source>What &amp;limits the moves</source>
        <translation>Was die &amp;Bewegungen begrenzt</translation>
    </message>
    <message>
        <source>What holds each axis back, and which change would save how much</source>
        <translation>Was jede Achse aufhält und welche Änderung wie viel sparen würde</translation>
    </message>
    <message>
        <source>Worth m&amp;easuring</source>
        <translation>Messen &amp;lohnt sich</translation>
    </message>
    <message>
        <source>Which values the headline figures hang on, and how far these can be trusted</source>
        <translation>An welchen Werten die Hauptkennwerte hängen und wie weit diesen zu trauen ist</translation>
    </message>
    <message>
        <source>Dri&amp;ve settings</source>
        <translation>Reglereinstell&amp;ungen</translation>
    </message>
    <message>
        <source>What to set in the drive of each axis, and with what to begin at the first power-up</source>
        <translation>Was im Regler jeder Achse einzustellen ist, und womit beim ersten Einschalten zu beginnen ist</translation>
    </message>
    <message>
        <source>F&amp;ull screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>The window over the whole screen</source>
        <translation>Das Fenster über den ganzen Bildschirm</translation>
    </message>
    <message>
        <source>&amp;Card or drawing</source>
        <translation>Karte &amp;oder Zeichnung</translation>
    </message>
    <message>
        <source>Show the other one where both share a place (small windows)</source>
        <translation>Das jeweils andere zeigen, wo sich beide einen Platz teilen (kleine Fenster)</translation>
    </message>
    <message>
        <source>&amp;Play the move</source>
        <translation>Bewegung &amp;abspielen</translation>
    </message>
    <message>
        <source>Run the simulated move once in real time, or stop it</source>
        <translation>Die simulierte Bewegung einmal in Echtzeit abspielen oder anhalten</translation>
    </message>
    <message>
        <source>Play ten times sl&amp;ower</source>
        <translation>&amp;Zehnmal langsamer abspielen</translation>
    </message>
    <message>
        <source>Run the simulated move once at a tenth of its speed, or stop it</source>
        <translation>Die simulierte Bewegung einmal mit einem Zehntel ihrer Geschwindigkeit abspielen oder anhalten</translation>
    </message>
    <message>
        <source>&amp;More plots</source>
        <translation>&amp;Mehr Diagramme</translation>
    </message>
    <message>
        <source>Show one plot more, six at most</source>
        <translation>Ein Diagramm mehr zeigen, höchstens sechs</translation>
    </message>
    <message>
        <source>&amp;Fewer plots</source>
        <translation>Weni&amp;ger Diagramme</translation>
    </message>
    <message>
        <source>Show one plot less, two at least</source>
        <translation>Ein Diagramm weniger zeigen, mindestens zwei</translation>
    </message>
    <message>
        <source>Theme of the &amp;desktop</source>
        <translation>Farbschema des &amp;Desktops</translation>
    </message>
    <message>
        <source>Light or dark as the desktop is</source>
        <translation>Hell oder dunkel wie der Desktop</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>Light ground</source>
        <translation>Heller Grund</translation>
    </message>
    <message>
        <source>Dar&amp;k</source>
        <translation>D&amp;unkel</translation>
    </message>
    <message>
        <source>Dark ground</source>
        <translation>Dunkler Grund</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Hoher &amp;Kontrast</translation>
    </message>
    <message>
        <source>Strongest contrast</source>
        <translation>Stärkster Kontrast</translation>
    </message>
    <message>
        <source>&amp;Larger</source>
        <translation>&amp;Größer</translation>
    </message>
    <message>
        <source>Larger text in the whole window</source>
        <translation>Größerer Text im ganzen Fenster</translation>
    </message>
    <message>
        <source>&amp;Smaller</source>
        <translation>&amp;Kleiner</translation>
    </message>
    <message>
        <source>Smaller text in the whole window</source>
        <translation>Kleinerer Text im ganzen Fenster</translation>
    </message>
    <message>
        <source>&amp;Usual size</source>
        <translation>&amp;Übliche Größe</translation>
    </message>
    <message>
        <source>Text as large as the desktop's</source>
        <translation>Text so groß wie auf dem Desktop</translation>
    </message>
    <message>
        <source>&amp;Reset the layout</source>
        <translation>Anordnung zurü&amp;cksetzen</translation>
    </message>
    <message>
        <source>Sizes and plots as on the first start</source>
        <translation>Größen und Diagramme wie beim ersten Start</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>Formulas, sources and how to, opened at what has the focus</source>
        <translation>Formeln, Quellen und Anleitungen, geöffnet bei dem, was den Fokus hat</translation>
    </message>
    <message>
        <source>&amp;First steps</source>
        <translation>&amp;Erste Schritte</translation>
    </message>
    <message>
        <source>The strip that leads from the masses to the sheet</source>
        <translation>Der Streifen, der von den Massen zum Blatt führt</translation>
    </message>
    <message>
        <source>&amp;Keyboard shortcuts</source>
        <translation>&amp;Tastenkürzel</translation>
    </message>
    <message>
        <source>Every shortcut in one list</source>
        <translation>Alle Tastenkürzel in einer Liste</translation>
    </message>
    <message>
        <source>What is &amp;this?</source>
        <translation>&amp;Was ist das?</translation>
    </message>
    <message>
        <source>Show the tool tip of what has the focus</source>
        <translation>Die Kurzhilfe zu dem zeigen, was den Fokus hat</translation>
    </message>
    <message>
        <source>Open my &amp;data folder</source>
        <translation>Meinen &amp;Datenordner öffnen</translation>
    </message>
    <message>
        <source>Where your own materials, screws and rules go</source>
        <translation>Wo eigene Werkstoffe, Schrauben und Regeln liegen</translation>
    </message>
    <message>
        <source>&amp;About Gazewright</source>
        <translation>&amp;Über Gazewright</translation>
    </message>
    <message>
        <source>Version and licences</source>
        <translation>Version und Lizenzen</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Use these gains</source>
        <translation>Diese Verstärkungen übernehmen</translation>
    </message>
    <message>
        <source>Enters all three gains; one step to undo</source>
        <translation>Trägt alle drei Verstärkungen ein; mit einem Schritt rückgängig zu machen</translation>
    </message>
    <message>
        <source>Show or hide the reasons</source>
        <translation>Die Gründe zeigen oder verbergen</translation>
    </message>
    <message>
        <source>%1: advised gains</source>
        <translation>%1: empfohlene Verstärkungen</translation>
    </message>
    <message>
        <source>pan only</source>
        <translation>nur Pan</translation>
    </message>
    <message>
        <source>tube</source>
        <translation>Rohr</translation>
    </message>
    <message>
        <source>inertia about its centre</source>
        <translation>Trägheitsmoment um den eigenen Schwerpunkt</translation>
    </message>
    <message>
        <source>Move the body up in its list</source>
        <translation>Den Körper in seiner Liste nach oben schieben</translation>
    </message>
    <message>
        <source>Move the body down in its list</source>
        <translation>Den Körper in seiner Liste nach unten schieben</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplizieren</translation>
    </message>
    <message>
        <source>Add a copy of this body</source>
        <translation>Eine Kopie dieses Körpers hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Take the body off the rig; undo brings it back</source>
        <translation>Den Körper vom Rig nehmen; Rückgängig bringt ihn zurück</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>carrier</source>
        <translation>Träger</translation>
    </message>
    <message>
        <source>order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>duplicate</source>
        <translation>duplizieren</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Bodies that turn with tilt</source>
        <translation>Körper, die sich mit Tilt drehen</translation>
    </message>
    <message>
        <source>Bodies that turn with pan only</source>
        <translation>Körper, die sich nur mit Pan drehen</translation>
    </message>
    <message>
        <source>Show this body's card</source>
        <translation>Die Karte dieses Körpers zeigen</translation>
    </message>
    <message>
        <source>Add a body</source>
        <translation>Körper hinzufügen</translation>
    </message>
    <message>
        <source>Add a 60 mm ball of 100 g to start from</source>
        <translation>Als Anfang eine Kugel von 60 mm und 100 g hinzufügen</translation>
    </message>
    <message>
        <source>add a body</source>
        <translation>Körper hinzufügen</translation>
    </message>
    <message>
        <source>mass missing</source>
        <translation>Masse fehlt</translation>
    </message>
    <message>
        <source>Show the card of another part</source>
        <translation>Die Karte eines anderen Teils zeigen</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Show the drawing in place of the card</source>
        <translation>Die Zeichnung anstelle der Karte zeigen</translation>
    </message>
    <message>
        <source>Blow and bumper</source>
        <translation>Stoß und Puffer</translation>
    </message>
    <message>
        <source>Strength of the tab</source>
        <translation>Festigkeit der Nase</translation>
    </message>
    <message>
        <source>Torque of the cable</source>
        <translation>Drehmoment des Kabels</translation>
    </message>
    <message>
        <source>Wires</source>
        <translation>Adern</translation>
    </message>
    <message>
        <source>Housing, bracket, magnets</source>
        <translation>Gehäuse, Halter, Magnete</translation>
    </message>
    <message>
        <source>Braking</source>
        <translation>Bremsen</translation>
    </message>
    <message>
        <source>Source, leads and fuse</source>
        <translation>Quelle, Zuleitungen und Sicherung</translation>
    </message>
    <message>
        <source>Magnet</source>
        <translation>Magnet</translation>
    </message>
    <message>
        <source>What its output bears</source>
        <translation>Belastbarkeit des Abtriebs</translation>
    </message>
    <message>
        <source>Play and preload</source>
        <translation>Luft und Vorspannkraft</translation>
    </message>
    <message>
        <source>Contact and wanted life</source>
        <translation>Kontakt und gewünschte Lebensdauer</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Add a keep-out</source>
        <translation>Sperrbereich hinzufügen</translation>
    </message>
    <message>
        <source>Add a window of 30° by 30° to start from</source>
        <translation>Als Anfang ein Fenster von 30° mal 30° hinzufügen</translation>
    </message>
    <message>
        <source>add a keep-out</source>
        <translation>Sperrbereich hinzufügen</translation>
    </message>
    <message>
        <source>Take this keep-out away; undo brings it back</source>
        <translation>Diesen Sperrbereich entfernen; Rückgängig bringt ihn zurück</translation>
    </message>
    <message>
        <source>A keep-out is a window of pan by tilt that the camera must stay out of: a lamp that blinds it, a wall it would meet. The reach map shows it, and the task's move is held against it.</source>
        <translation>Ein Sperrbereich ist ein Fenster aus Pan und Tilt, das die Kamera meiden muss: eine Lampe, die sie blendet, eine Wand, an die sie stieße. Die Erreichbarkeitskarte zeigt ihn, und die Bewegung der Aufgabe wird daran geprüft.</translation>
    </message>
    <message>
        <source>Keep-out %1</source>
        <translation>Sperrbereich %1</translation>
    </message>
    <message>
        <source>Add a detector</source>
        <translation>Detektor hinzufügen</translation>
    </message>
    <message>
        <source>Another way of finding the target, to compare</source>
        <translation>Ein weiterer Weg, das Ziel zu finden, zum Vergleich</translation>
    </message>
    <message>
        <source>add a detector</source>
        <translation>Detektor hinzufügen</translation>
    </message>
    <message>
        <source>Take this detector away; undo brings it back</source>
        <translation>Diesen Detektor entfernen; Rückgängig bringt ihn zurück</translation>
    </message>
    <message>
        <source>Add a move to the duty</source>
        <translation>Dem Lastspiel eine Bewegung hinzufügen</translation>
    </message>
    <message>
        <source>Another pair of angles to go to, with a rest</source>
        <translation>Ein weiteres anzufahrendes Winkelpaar mit einer Pause</translation>
    </message>
    <message>
        <source>add a move to the duty</source>
        <translation>dem Lastspiel eine Bewegung hinzufügen</translation>
    </message>
    <message>
        <source>Take this move away; undo brings it back</source>
        <translation>Diese Bewegung entfernen; Rückgängig bringt sie zurück</translation>
    </message>
    <message>
        <source>Without a list of moves, the task's move is made to and fro at the pace above. A list is repeated without end: go to these angles, rest there, go on. Motors are warmed by it.</source>
        <translation>Ohne Liste von Bewegungen wird die Bewegung der Aufgabe im oben genannten Takt hin und her gefahren. Eine Liste wird endlos wiederholt: diese Winkel anfahren, dort ruhen, weiterfahren. Die Motoren erwärmen sich dabei.</translation>
    </message>
    <message>
        <source>Add a material</source>
        <translation>Werkstoff hinzufügen</translation>
    </message>
    <message>
        <source>A material of the rig's own, to start with the values of the arm's</source>
        <translation>Ein eigener Werkstoff des Rigs, zu Beginn mit den Werten des Arms</translation>
    </message>
    <message>
        <source>add a material</source>
        <translation>Werkstoff hinzufügen</translation>
    </message>
    <message>
        <source>Take this material away; undo brings it back</source>
        <translation>Diesen Werkstoff entfernen; Rückgängig holt ihn zurück</translation>
    </message>
    <message>
        <source>Material: %1</source>
        <translation>Werkstoff: %1</translation>
    </message>
    <message>
        <source>Show or hide these fields</source>
        <translation>Diese Felder ein- oder ausblenden</translation>
    </message>
    <message>
        <source>%1 (own)</source>
        <translation>%1 (eigen)</translation>
    </message>
    <message>
        <source>described below</source>
        <translation>unten beschrieben</translation>
    </message>
    <message>
        <source>Present</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>Not stated leaves the travel unknown; none means there is no such limit.</source>
        <translation>Ohne Angabe bleibt der Verfahrbereich unbekannt; „keine“ heißt, dass es keine solche Grenze gibt.</translation>
    </message>
    <message>
        <source>%1: present</source>
        <translation>%1: vorhanden</translation>
    </message>
    <message>
        <source>There is no home folder for it; set XDG_DATA_HOME to a folder of yours</source>
        <translation>Es gibt keinen Benutzerordner dafür; XDG_DATA_HOME auf einen eigenen Ordner setzen</translation>
    </message>
    <message>
        <source>%1 cannot be made; check the rights of the folder above it</source>
        <translation>%1 lässt sich nicht anlegen; Rechte des übergeordneten Ordners prüfen</translation>
    </message>
    <message>
        <source>Your own data files have faults; the rest of them is used</source>
        <translation>Ihre eigenen Datendateien haben Fehler; der Rest wird verwendet</translation>
    </message>
    <message>
        <source>Your parts are in %1</source>
        <translation>Ihre Teile liegen in %1</translation>
    </message>
    <message>
        <source>Your parts are in %1; open it in a file manager</source>
        <translation>Ihre Teile liegen in %1; im Dateimanager öffnen</translation>
    </message>
    <message>
        <source>The example cannot be written</source>
        <translation>Das Beispiel lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>Your data files are in %1; changes count from the next start</source>
        <translation>Ihre Datendateien liegen in %1; Änderungen gelten ab dem nächsten Start</translation>
    </message>
    <message>
        <source>Your data files are in %1; open it in a file manager. Changes count from the next start</source>
        <translation>Ihre Datendateien liegen in %1; im Dateimanager öffnen. Änderungen gelten ab dem nächsten Start</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>unbenannt</translation>
    </message>
    <message>
        <source>reload of the file</source>
        <translation>Neuladen der Datei</translation>
    </message>
    <message>
        <source>Values that are not known exactly, the one most worth measuring first. Enter goes to its field.</source>
        <translation>Werte, die nicht genau bekannt sind, der am meisten messenswerte zuerst. Enter führt zu seinem Feld.</translation>
    </message>
    <message>
        <source>All figures with ±</source>
        <translation>Alle Kennwerte mit ±</translation>
    </message>
    <message>
        <source>Every figure, with its ± and what moves it</source>
        <translation>Jeder Kennwert mit seinem ± und dem, was ihn bewegt</translation>
    </message>
    <message>
        <source>State of the list</source>
        <translation>Zustand der Liste</translation>
    </message>
    <message>
        <source>What measuring the chosen value tells</source>
        <translation>Was das Messen des gewählten Werts bringt</translation>
    </message>
    <message>
        <source>How far the headline figures can be trusted</source>
        <translation>Wie weit den Hauptkennwerten zu trauen ist</translation>
    </message>
    <message>
        <source>How far to trust the headline figures</source>
        <translation>Verlässlichkeit der Hauptkennwerte</translation>
    </message>
    <message>
        <source>Nothing to rank: %1. State a source or a spread beside a value in its card, such as “estimate” or “± 10 %”; its doubt is then counted.</source>
        <translation>Nichts zu ordnen: %1. Quelle oder Streuung neben einem Wert in seiner Karte angeben, etwa „Schätzung“ oder „± 10 %“; dann zählt seine Unsicherheit.</translation>
    </message>
    <message>
        <source>Of the rig before the last change; being worked out again.</source>
        <translation>Vom Rig vor der letzten Änderung; wird neu berechnet.</translation>
    </message>
    <message>
        <source>Being worked out.</source>
        <translation>Wird berechnet.</translation>
    </message>
    <message>
        <source>Of the variance of the headline figures, the mean over those it moves or not</source>
        <translation>Anteil an der Varianz der Hauptkennwerte, Mittel über bewegte und unbewegte</translation>
    </message>
    <message>
        <source>Drag it, or use the arrow keys (Shift: fine, Page keys: coarse). Alt: not on whole millimetres. Double-click to type.</source>
        <translation>Ziehen oder Pfeiltasten (Umschalt: fein, Bildtasten: grob). Alt: nicht auf ganze Millimeter. Doppelklick: Wert eintippen.</translation>
    </message>
    <message>
        <source>Drawing of the rig to scale</source>
        <translation>Maßstäbliche Zeichnung des Rigs</translation>
    </message>
    <message>
        <source>%1. Arrow keys move it, Shift: fine, Page keys: coarse; Tab: the next handle.</source>
        <translation>%1. Pfeiltasten verschieben, Umschalt: fein, Bildtasten: grob; Tab: nächster Griff.</translation>
    </message>
    <message>
        <source>Tab goes through its handles, Space plays the move.</source>
        <translation>Tab geht durch die Griffe, Leertaste spielt die Bewegung ab.</translation>
    </message>
    <message>
        <source>Play the simulated move (Space in the drawing)</source>
        <translation>Simulierte Bewegung abspielen (Leertaste in der Zeichnung)</translation>
    </message>
    <message>
        <source>Play the move</source>
        <translation>Bewegung abspielen</translation>
    </message>
    <message>
        <source>÷10</source>
        <translation>÷10</translation>
    </message>
    <message>
        <source>Play ten times slower than it is</source>
        <translation>Zehnmal langsamer als in Wirklichkeit abspielen</translation>
    </message>
    <message>
        <source>Ten times slower</source>
        <translation>Zehnmal langsamer</translation>
    </message>
    <message>
        <source>All three views to one scale; needs a larger panel</source>
        <translation>Alle drei Ansichten in einem Maßstab; braucht eine größere Fläche</translation>
    </message>
    <message>
        <source>Look at the rig from this side</source>
        <translation>Rig von dieser Seite ansehen</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Show the card in place of the drawing</source>
        <translation>Karte anstelle der Zeichnung zeigen</translation>
    </message>
    <message>
        <source>Stop the move</source>
        <translation>Bewegung anhalten</translation>
    </message>
    <message>
        <source>voltage missing</source>
        <translation>U fehlt</translation>
    </message>
    <message>
        <source>shared with pan</source>
        <translation>gemeinsam mit Pan</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>current missing</source>
        <translation>Strom fehlt</translation>
    </message>
    <message>
        <source>no current limit</source>
        <translation>ohne Stromgrenze</translation>
    </message>
    <message>
        <source>capacitance missing</source>
        <translation>Kapazität fehlt</translation>
    </message>
    <message>
        <source>control rate missing</source>
        <translation>Regeltakt fehlt</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>speed limit missing</source>
        <translation>Drehzahlgrenze fehlt</translation>
    </message>
    <message>
        <source>no speed limit</source>
        <translation>bis unbegrenzt</translation>
    </message>
    <message>
        <source>KV missing</source>
        <translation>KV fehlt</translation>
    </message>
    <message>
        <source>Kt unknown</source>
        <translation>Kt unbekannt</translation>
    </message>
    <message>
        <source>ratio missing</source>
        <translation>Übersetzung fehlt</translation>
    </message>
    <message>
        <source>stall %1</source>
        <translation>Stillstand %1</translation>
    </message>
    <message>
        <source>held to %1</source>
        <translation>begrenzt auf %1</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>The loop holds it to its limit; without that it could turn at %1.</source>
        <translation>Die Regelung hält sie an ihrer Grenze; ohne diese könnte sie mit %1 drehen.</translation>
    </message>
    <message>
        <source>Torque at the output while it stands still, and its top speed.</source>
        <translation>Drehmoment am Ausgang im Stillstand und seine Höchstdrehzahl.</translation>
    </message>
    <message>
        <source>turns on freely</source>
        <translation>dreht frei weiter</translation>
    </message>
    <message>
        <source>loose tabs: %1</source>
        <translation>lose Nasen: %1</translation>
    </message>
    <message>
        <source>window %1</source>
        <translation>Fenster %1</translation>
    </message>
    <message>
        <source>free length missing</source>
        <translation>freie Länge fehlt</translation>
    </message>
    <message>
        <source>circuits: %1</source>
        <translation>Stromkreise: %1</translation>
    </message>
    <message>
        <source>%1 a ring</source>
        <translation>%1 je Ring</translation>
    </message>
    <message>
        <source>coil %1 in %2</source>
        <translation>Wickel %1 in %2</translation>
    </message>
    <message>
        <source>loop %1 to %2</source>
        <translation>Schlaufe %1 bis %2</translation>
    </message>
    <message>
        <source>twist %1</source>
        <translation>Verdrillung %1</translation>
    </message>
    <message>
        <source>no cable</source>
        <translation>kein Kabel</translation>
    </message>
    <message>
        <source>mass unknown</source>
        <translation>Masse unbekannt</translation>
    </message>
    <message>
        <source>balance unknown</source>
        <translation>Auswuchtung unbekannt</translation>
    </message>
    <message>
        <source>%1 off axis</source>
        <translation>%1 neben der Achse</translation>
    </message>
    <message>
        <source>Inertia of the load about the axis; below it the motor's rotor seen through the gear, and the mass that moves or how far its centre is off the axis.</source>
        <translation>Trägheitsmoment der Last um die Achse; darunter der Rotor des Motors, durch das Getriebe gesehen, und die bewegte Masse oder der Abstand ihres Schwerpunkts von der Achse.</translation>
    </message>
    <message>
        <source>%1 gap</source>
        <translation>%1 Spiel</translation>
    </message>
    <message>
        <source>gap unknown</source>
        <translation>Spiel unbekannt</translation>
    </message>
    <message>
        <source>What to set in the drive of each axis, and with what to begin. Enter goes to the field.</source>
        <translation>Was im Regler jeder Achse einzustellen ist, und womit zu beginnen ist. Die Eingabetaste führt zum Feld.</translation>
    </message>
    <message>
        <source>First power-up</source>
        <translation>Erstes Einschalten</translation>
    </message>
    <message>
        <source>Conventions</source>
        <translation>Zählweisen</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Pan, first</source>
        <translation>Pan, zuerst</translation>
    </message>
    <message>
        <source>Tilt, first</source>
        <translation>Tilt, zuerst</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>%1, its place and shape</source>
        <translation>%1, seine Lage und Form</translation>
    </message>
    <message>
        <source>Inputs, with what they are now and where that is from</source>
        <translation>Eingaben mit jetzigem Wert und dessen Herkunft</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>fehlend: %1</translation>
    </message>
    <message>
        <source>estimates: %1</source>
        <translation>Schätzungen: %1</translation>
    </message>
    <message>
        <source>usual values: %1</source>
        <translation>übliche Werte: %1</translation>
    </message>
    <message>
        <source>source not stated: %1</source>
        <translation>ohne Quellenangabe: %1</translation>
    </message>
    <message numerus="yes">
        <source>Of its %n inputs – %1.</source>
        <translation><numerusform>Von seiner %n Eingabe – %1.</numerusform><numerusform>Von seinen %n Eingaben – %1.</numerusform></translation>
    </message>
    <message>
        <source>%1, two standard uncertainties (about 95 %). What moves it most, how far from end to end of its range, and its share:</source>
        <translation>%1, zwei Standardunsicherheiten (etwa 95 %). Was ihn am meisten bewegt, wie weit von einem Ende seines Bereichs zum anderen, und der Anteil:</translation>
    </message>
    <message>
        <source>At an end of a range it has no value, so this is the least: </source>
        <translation>An einem Ende eines Bereichs hat er keinen Wert, dies ist daher das Mindeste: </translation>
    </message>
    <message>
        <source>How far to trust it</source>
        <translation>Wie weit ihm zu trauen ist</translation>
    </message>
    <message>
        <source>, margin %1</source>
        <translation>, Reserve %1</translation>
    </message>
    <message>
        <source>usual value, not entered</source>
        <translation>üblicher Wert, nicht eingegeben</translation>
    </message>
    <message>
        <source>entered, source not stated</source>
        <translation>eingegeben, Quelle nicht angegeben</translation>
    </message>
    <message>
        <source>exactly %1</source>
        <translation>genau %1</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Formel</translation>
    </message>
    <message>
        <source>Source of the formula</source>
        <translation>Quelle der Formel</translation>
    </message>
    <message>
        <source>Holds under these conditions</source>
        <translation>Gilt unter diesen Bedingungen</translation>
    </message>
    <message>
        <source>In the handbook: %1</source>
        <translation>Im Handbuch: %1</translation>
    </message>
    <message>
        <source>In files and lists: %1</source>
        <translation>In Dateien und Listen: %1</translation>
    </message>
    <message>
        <source>margin = capacity / demand − 1; below 0 it fails, up to 15 % it is tight</source>
        <translation>Reserve = Vermögen / Bedarf − 1; unter 0 versagt es, bis 15 % ist es knapp</translation>
    </message>
    <message>
        <source>Demand and capacity</source>
        <translation>Bedarf und Vermögen</translation>
    </message>
    <message>
        <source>demand %1, capacity %2</source>
        <translation>Bedarf %1, Vermögen %2</translation>
    </message>
    <message>
        <source>Figures of the same subject</source>
        <translation>Kennwerte zum selben Thema</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>Remedies</source>
        <translation>Abhilfen</translation>
    </message>
    <message>
        <source>In the handbook: findings</source>
        <translation>Im Handbuch: Befunde</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Zulässig</translation>
    </message>
    <message>
        <source>Left empty</source>
        <translation>Leer gelassen</translation>
    </message>
    <message numerus="yes">
        <source>What stands on it: %n figures</source>
        <translation><numerusform>Was darauf beruht: %n Kennwert</numerusform><numerusform>Was darauf beruht: %n Kennwerte</numerusform></translation>
    </message>
    <message>
        <source>In the handbook: the rig file</source>
        <translation>Im Handbuch: die Rig-Datei</translation>
    </message>
    <message>
        <source>Figures shown at: %1</source>
        <translation>Kennwerte bei: %1</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>Meldungen</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Search all figures</source>
        <translation>Alle Kennwerte durchsuchen</translation>
    </message>
    <message>
        <source>All figures</source>
        <translation>Alle Kennwerte</translation>
    </message>
    <message>
        <source>List every figure again</source>
        <translation>Wieder alle Kennwerte auflisten</translation>
    </message>
    <message>
        <source>No such figure</source>
        <translation>Kein solcher Kennwert</translation>
    </message>
    <message>
        <source>None has all these words in its name, formula or id.</source>
        <translation>Keiner enthält alle diese Wörter in Name, Formel oder Kennung.</translation>
    </message>
    <message>
        <source>Clear the search</source>
        <translation>Suche leeren</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy the explanation as text</source>
        <translation>Erklärung als Text kopieren</translation>
    </message>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Open the handbook where it speaks of this</source>
        <translation>Handbuch an der zugehörigen Stelle öffnen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close this window</source>
        <translation>Dieses Fenster schließen</translation>
    </message>
    <message>
        <source>Figures that stand on it</source>
        <translation>Kennwerte, die darauf beruhen</translation>
    </message>
    <message>
        <source>This finding is not made any more.</source>
        <translation>Diesen Befund gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>Choose a figure; its formula, inputs and source are shown here.</source>
        <translation>Kennwert wählen; hier stehen dann Formel, Eingaben und Quelle.</translation>
    </message>
    <message>
        <source>%1 more ▾</source>
        <translation>%1 weitere ▾</translation>
    </message>
    <message>
        <source>In the rig file: %1</source>
        <translation>In der Rig-Datei: %1</translation>
    </message>
    <message>
        <source>1 fails</source>
        <translation>1 versagt</translation>
    </message>
    <message>
        <source>1 tight</source>
        <translation>1 knapp</translation>
    </message>
    <message>
        <source>1 unknown</source>
        <translation>1 unbekannt</translation>
    </message>
    <message>
        <source>1 holds</source>
        <translation>1 hält</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What would make it hold, or why it does</source>
        <translation>Was Abhilfe schafft oder warum es hält</translation>
    </message>
    <message>
        <source>No findings: the analysis has not run yet.</source>
        <translation>Keine Befunde: Die Analyse ist noch nicht gelaufen.</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Explain the selected finding: formula, inputs, source (F2)</source>
        <translation>Gewählten Befund erklären: Formel, Eingaben, Quelle (F2)</translation>
    </message>
    <message>
        <source>Whether it settles is unknown: it %1.</source>
        <translation>Ob es sich einschwingt, ist nicht bekannt: es %1.</translation>
    </message>
    <message>
        <source>No gains are advised for %1: %2</source>
        <translation>Keine Verstärkungen für %1: %2</translation>
    </message>
    <message>
        <source>Simulated, it fails in: %1</source>
        <translation>Simuliert versagt es bei: %1</translation>
    </message>
    <message>
        <source>all hold</source>
        <translation>alle halten</translation>
    </message>
    <message numerus="yes">
        <source>No ranking: the rig lacks %n inputs, see below.</source>
        <translation><numerusform>Keine Rangfolge: dem Rig fehlt %n Eingabe, siehe unten.</numerusform><numerusform>Keine Rangfolge: dem Rig fehlen %n Eingaben, siehe unten.</numerusform></translation>
    </message>
    <message>
        <source>No ranking: %1.</source>
        <translation>Keine Rangfolge: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln combinations: %1 fit, %2 fail, %3 lack data.</source>
        <translation><numerusform>%Ln Kombination: %1 passend, %2 nicht passend, %3 ohne ausreichende Daten.</numerusform><numerusform>%Ln Kombinationen: %1 passend, %2 nicht passend, %3 ohne ausreichende Daten.</numerusform></translation>
    </message>
    <message>
        <source> They fail by: %1.</source>
        <translation> Sie scheitern an: %1.</translation>
    </message>
    <message>
        <source>Cancelled. Until then: </source>
        <translation>Abgebrochen. Bis dahin: </translation>
    </message>
    <message>
        <source>Fill in these, then rank again:</source>
        <translation>Diese eingeben, dann neu ordnen:</translation>
    </message>
    <message>
        <source>Missing for single measures, for the simulation and for advised gains:</source>
        <translation>Fehlt für einzelne Maße, für die Simulation und für empfohlene Verstärkungen:</translation>
    </message>
    <message>
        <source>Not ranked: %1 %2</source>
        <translation>Nicht eingestuft: %1 %2</translation>
    </message>
    <message numerus="yes">
        <source>and %n parts more</source>
        <translation><numerusform>und %n weiteres Teil</numerusform><numerusform>und %n weitere Teile</numerusform></translation>
    </message>
    <message>
        <source>Of %1 pairs of simulated ones, %2 stand in the order of the ranking.</source>
        <translation>Von %1 Paaren simulierter Kombinationen stehen %2 in der Reihenfolge der Rangliste.</translation>
    </message>
    <message>
        <source>Which parts fit best</source>
        <translation>Welche Teile am besten passen</translation>
    </message>
    <message>
        <source>Summary of the ranking</source>
        <translation>Zusammenfassung der Rangliste</translation>
    </message>
    <message>
        <source>Combinations, the best first</source>
        <translation>Kombinationen, die beste zuerst</translation>
    </message>
    <message>
        <source>Shortest</source>
        <translation>Kürzeste</translation>
    </message>
    <message>
        <source>Settles</source>
        <translation>Schwingt ein</translation>
    </message>
    <message>
        <source>Least margin</source>
        <translation>Kleinste Reserve</translation>
    </message>
    <message>
        <source>What the rig lacks</source>
        <translation>Was dem Rig fehlt</translation>
    </message>
    <message>
        <source>Why this combination stands here</source>
        <translation>Warum diese Kombination hier steht</translation>
    </message>
    <message>
        <source>What was not counted</source>
        <translation>Was nicht berücksichtigt wurde</translation>
    </message>
    <message>
        <source>Progress of the ranking</source>
        <translation>Fortschritt der Rangliste</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>A&amp;bbrechen</translation>
    </message>
    <message>
        <source>End the ranking with what there is</source>
        <translation>Rangliste mit dem Vorhandenen beenden</translation>
    </message>
    <message>
        <source>Rank &amp;again</source>
        <translation>&amp;Neu einstufen</translation>
    </message>
    <message>
        <source>Rank for the rig as it is now</source>
        <translation>Für das Rig im jetzigen Stand einstufen</translation>
    </message>
    <message>
        <source>Try the shelf's &amp;drives too</source>
        <translation>Auch die Antriebs&amp;regler des Regals probieren</translation>
    </message>
    <message>
        <source>Weighing every motor with every gearbox …</source>
        <translation>Jeder Motor wird mit jedem Getriebe bewertet …</translation>
    </message>
    <message>
        <source> The best are being simulated …</source>
        <translation> Die besten werden simuliert …</translation>
    </message>
    <message>
        <source>no move</source>
        <translation>keine Bewegung</translation>
    </message>
    <message>
        <source>Press a row to try it; undo takes it back.</source>
        <translation>Eine Zeile anklicken, um sie auszuprobieren; Rückgängig nimmt sie zurück.</translation>
    </message>
    <message>
        <source>State the task</source>
        <translation>Aufgabe angeben</translation>
    </message>
    <message>
        <source>How far each axis has to jump, in what time, and how many pixels off still counts as arrived.</source>
        <translation>Wie weit jede Achse springen muss, in welcher Zeit, und wie viele Pixel Abweichung noch als angekommen gelten.</translation>
    </message>
    <message>
        <source>Put in your masses</source>
        <translation>Massen eingeben</translation>
    </message>
    <message>
        <source>Ball, camera and arm: what the kitchen scale says, and roughly where they sit.</source>
        <translation>Kugel, Kamera und Arm: was die Küchenwaage zeigt und wo sie ungefähr sitzen.</translation>
    </message>
    <message>
        <source>Name motors and supply</source>
        <translation>Motoren und Versorgung angeben</translation>
    </message>
    <message>
        <source>KV, winding, rotor and current of both motors, and what the supply gives.</source>
        <translation>KV, Wicklung, Rotor und Strom beider Motoren, und was die Versorgung liefert.</translation>
    </message>
    <message>
        <source>Choose the ratios</source>
        <translation>Übersetzungen wählen</translation>
    </message>
    <message>
        <source>Drag each ratio into the tinted band: there the move is within 5 % of the quickest.</source>
        <translation>Jede Übersetzung in das getönte Band ziehen: Dort liegt die Bewegung höchstens 5 % über der schnellsten.</translation>
    </message>
    <message>
        <source>Mend what fails</source>
        <translation>Mängel beheben</translation>
    </message>
    <message>
        <source>Take the findings from the top; a press on a remedy applies it, and undo takes it back.</source>
        <translation>Befunde von oben abarbeiten; ein Klick auf eine Abhilfe wendet sie an, Rückgängig nimmt sie zurück.</translation>
    </message>
    <message>
        <source>Make the sheet</source>
        <translation>Entwurfsblatt erstellen</translation>
    </message>
    <message>
        <source>Everything to build from on paper, with the inputs it stands on.</source>
        <translation>Alles zum Bauen auf Papier, mit den Eingaben, auf denen es beruht.</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Erste Schritte</translation>
    </message>
    <message>
        <source>Put the first steps away; Help brings them back</source>
        <translation>Erste Schritte ausblenden; das Menü Hilfe holt sie zurück</translation>
    </message>
    <message>
        <source>Put the first steps away</source>
        <translation>Erste Schritte ausblenden</translation>
    </message>
    <message>
        <source>Step %1: %2, %3</source>
        <translation>Schritt %1: %2, %3</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>not done yet</source>
        <translation>noch nicht erledigt</translation>
    </message>
    <message>
        <source>Search all pages</source>
        <translation>Alle Seiten durchsuchen</translation>
    </message>
    <message>
        <source>Search all pages of the handbook</source>
        <translation>Alle Seiten des Handbuchs durchsuchen</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Page of the handbook</source>
        <translation>Seite des Handbuchs</translation>
    </message>
    <message>
        <source>Nothing found; fewer or shorter words find more.</source>
        <translation>Nichts gefunden; weniger oder kürzere Wörter finden mehr.</translation>
    </message>
    <message numerus="yes">
        <source>Found in: %n sections</source>
        <translation><numerusform>Gefunden in: %n Abschnitt</numerusform><numerusform>Gefunden in: %n Abschnitten</numerusform></translation>
    </message>
    <message>
        <source>Pages: %1</source>
        <translation>Seiten: %1</translation>
    </message>
    <message>
        <source>The handbook is not installed.</source>
        <translation>Das Handbuch ist nicht installiert.</translation>
    </message>
    <message>
        <source>It would end at %1, below where it begins, %2. Enter the lower angle as “from”.</source>
        <translation>Er würde bei %1 enden, unterhalb seines Beginns bei %2. Den kleineren Winkel als „von“ eingeben.</translation>
    </message>
    <message>
        <source>What limits the move</source>
        <translation>Was die Bewegung begrenzt</translation>
    </message>
    <message>
        <source>%1. Press to apply it.</source>
        <translation>%1. Klicken, um es anzuwenden.</translation>
    </message>
    <message>
        <source>Copy the table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>As text with tabs (Ctrl+C)</source>
        <translation>Als Text mit Tabulatoren (Strg+C)</translation>
    </message>
    <message>
        <source>the file is larger than 100 MB</source>
        <translation>die Datei ist größer als 100 MB</translation>
    </message>
    <message>
        <source>Measured move beside the computed one</source>
        <translation>Gemessene Bewegung neben der berechneten</translation>
    </message>
    <message>
        <source>Computed and measured angle</source>
        <translation>Berechneter und gemessener Winkel</translation>
    </message>
    <message>
        <source>Measured less computed angle</source>
        <translation>Gemessener minus berechneter Winkel</translation>
    </message>
    <message>
        <source>What the comparison says</source>
        <translation>Was der Vergleich ergibt</translation>
    </message>
    <message>
        <source>Progress of reading</source>
        <translation>Fortschritt des Lesens</translation>
    </message>
    <message>
        <source>&amp;Open a log…</source>
        <translation>Aufzeichnung ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>CSV with two columns, time and angle; a first line may name ms, us or rad</source>
        <translation>CSV mit zwei Spalten, Zeit und Winkel; eine erste Zeile kann ms, us oder rad nennen</translation>
    </message>
    <message>
        <source> ms</source>
        <translation> ms</translation>
    </message>
    <message>
        <source>&amp;Find the shift</source>
        <translation>Verschiebung &amp;suchen</translation>
    </message>
    <message>
        <source>The shift that leaves the least difference</source>
        <translation>Die Verschiebung mit der kleinsten Differenz</translation>
    </message>
    <message>
        <source>&amp;Axis</source>
        <translation>&amp;Achse</translation>
    </message>
    <message>
        <source>&amp;Time shift</source>
        <translation>&amp;Zeitverschiebung</translation>
    </message>
    <message>
        <source>S&amp;cale</source>
        <translation>S&amp;kalierung</translation>
    </message>
    <message>
        <source>O&amp;ffset</source>
        <translation>&amp;Versatz</translation>
    </message>
    <message>
        <source>Open a log</source>
        <translation>Aufzeichnung öffnen</translation>
    </message>
    <message>
        <source>Logs (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Aufzeichnungen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>Berechnet</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>Measured less computed</source>
        <translation>Gemessen minus berechnet</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Differenz</translation>
    </message>
    <message>
        <source>The two share no time. Shift the log, or find the shift.</source>
        <translation>Die beiden haben keine gemeinsame Zeit. Aufzeichnung verschieben oder die Verschiebung suchen.</translation>
    </message>
    <message numerus="yes">
        <source>%n points compared: rms %1°, at most %2°.</source>
        <translation><numerusform>%n Punkt verglichen: Effektivwert %1°, höchstens %2°.</numerusform><numerusform>%n Punkte verglichen: Effektivwert %1°, höchstens %2°.</numerusform></translation>
    </message>
    <message>
        <source>Open a log of a real move: time and angle from rest, as CSV.</source>
        <translation>Aufzeichnung einer wirklichen Bewegung öffnen: Zeit und Winkel aus der Ruhe, als CSV.</translation>
    </message>
    <message>
        <source>No log: %1.</source>
        <translation>Keine Aufzeichnung: %1.</translation>
    </message>
    <message>
        <source>drag taken back</source>
        <translation>Ziehen zurückgenommen</translation>
    </message>
    <message>
        <source>add a counterweight</source>
        <translation>Gegengewicht hinzufügen</translation>
    </message>
    <message>
        <source>%1 is nothing that the window takes. Drop a rig or a part of the shelf, which end in .yaml, a target's path with time, pan and tilt, or a measured move with time and angle, which end in .csv.</source>
        <translation>%1 nimmt das Fenster nicht an. Ablegen lassen sich ein Rig oder ein Teil des Regals (enden auf .yaml), die Bahn eines Ziels mit Zeit, Pan und Tilt oder eine gemessene Bewegung mit Zeit und Winkel (enden auf .csv).</translation>
    </message>
    <message>
        <source>That</source>
        <translation>Das</translation>
    </message>
    <message>
        <source>No path taken. %1</source>
        <translation>Keine Bahn übernommen. %1</translation>
    </message>
    <message>
        <source>%1 did not get on the shelf. What to mend:</source>
        <translation>%1 kam nicht ins Regal. Was zu beheben ist:</translation>
    </message>
    <message>
        <source>Rig files (*.rig.yaml);;All files (*)</source>
        <translation>Rig-Dateien (*.rig.yaml);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 was not opened; this is a new rig, still empty. What to mend:</source>
        <translation>%1 wurde nicht geöffnet; dies ist ein neues, noch leeres Rig. Zu beheben:</translation>
    </message>
    <message>
        <source>%1 was not opened; the rig before is still here. What to mend:</source>
        <translation>%1 wurde nicht geöffnet; das bisherige Rig ist noch da. Zu beheben:</translation>
    </message>
    <message>
        <source>%1 was not opened. What to mend:</source>
        <translation>%1 wurde nicht geöffnet. Zu beheben:</translation>
    </message>
    <message>
        <source>%1 is open. Worth a look:</source>
        <translation>%1 ist geöffnet. Einen Blick wert:</translation>
    </message>
    <message>
        <source>Open a rig</source>
        <translation>Rig öffnen</translation>
    </message>
    <message>
        <source>Not saved. %1</source>
        <translation>Nicht gespeichert. %1</translation>
    </message>
    <message>
        <source>Save the rig</source>
        <translation>Rig speichern</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungesicherte Änderungen</translation>
    </message>
    <message>
        <source>Save the changes to “%1”?</source>
        <translation>Änderungen an „%1“ speichern?</translation>
    </message>
    <message>
        <source>Discarding loses every change since it was last saved.</source>
        <translation>Beim Verwerfen gehen alle Änderungen seit dem letzten Speichern verloren.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <source>Nothing to draw yet</source>
        <translation>Noch nichts zu zeichnen</translation>
    </message>
    <message>
        <source>Add the ball, the camera and what carries them.</source>
        <translation>Kugel, Kamera und was sie trägt hinzufügen.</translation>
    </message>
    <message>
        <source>Add a body that tilts</source>
        <translation>Körper hinzufügen, der mit Tilt schwenkt</translation>
    </message>
    <message>
        <source>&amp;Rig</source>
        <translation>&amp;Rig</translation>
    </message>
    <message>
        <source>Open a sa&amp;mple</source>
        <translation>Be&amp;ispiel öffnen</translation>
    </message>
    <message>
        <source>&amp;Recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>An&amp;zeigen</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Farbschema</translation>
    </message>
    <message>
        <source>Te&amp;xt size</source>
        <translation>Te&amp;xtgröße</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>swap of the gearboxes</source>
        <translation>Tausch der Getriebe</translation>
    </message>
    <message>
        <source>The gearboxes are exchanged, the gains are still those of before. The cards of both drives advise them anew.</source>
        <translation>Die Getriebe sind vertauscht, die Verstärkungen noch die alten. Die Karten beider Antriebe empfehlen neue.</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>%1 (not there any more)</source>
        <translation>%1 (nicht mehr vorhanden)</translation>
    </message>
    <message>
        <source>No rig opened yet</source>
        <translation>Noch kein Rig geöffnet</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>Diese Liste leeren</translation>
    </message>
    <message>
        <source>The list of recent rigs is empty; the files are where they were.</source>
        <translation>Die Liste der zuletzt geöffneten Rigs ist leer; die Dateien sind, wo sie waren.</translation>
    </message>
    <message>
        <source>No samples found</source>
        <translation>Keine Beispiele gefunden</translation>
    </message>
    <message>
        <source>About Gazewright</source>
        <translation>Über Gazewright</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Gazewright %1&lt;/h3&gt;&lt;p&gt;Design fast two-axis pan-tilt rigs.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later, without any warranty.&lt;/p&gt;&lt;p&gt;Built on Qt (LGPL), QCustomPlot (GPL), Eigen (MPL), yaml-cpp (MIT) and UDUNITS-2 (BSD-like).&lt;/p&gt;&lt;p&gt;Built with Qt %2 for %3, running on Qt %4.&lt;/p&gt;&lt;p&gt;It sends nothing anywhere.&lt;/p&gt;&lt;p&gt;Report a fault to whoever you got the program from: the maintainer of the package, or the issues beside the source. Say this version and add the rig file.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Gazewright %1&lt;/h3&gt;&lt;p&gt;Schnelle zweiachsige Pan-Tilt-Rigs entwerfen.&lt;/p&gt;&lt;p&gt;Freie Software unter der GNU General Public License, Version 3 oder später, ohne jede Gewährleistung.&lt;/p&gt;&lt;p&gt;Baut auf Qt (LGPL), QCustomPlot (GPL), Eigen (MPL), yaml-cpp (MIT) und UDUNITS-2 (BSD-ähnlich) auf.&lt;/p&gt;&lt;p&gt;Erstellt mit Qt %2 für %3, läuft mit Qt %4.&lt;/p&gt;&lt;p&gt;Es sendet nichts, nirgendwohin.&lt;/p&gt;&lt;p&gt;Fehler bitte dort melden, woher das Programm stammt: beim Betreuer des Pakets oder in der Fehlerliste beim Quelltext. Diese Version nennen und die Rig-Datei beilegen.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>◌ updating</source>
        <translation>◌ wird aktualisiert</translation>
    </message>
    <message>
        <source>%1: ratio</source>
        <translation>%1: Übersetzung</translation>
    </message>
    <message>
        <source>remedy “%1”</source>
        <translation>Abhilfe „%1“</translation>
    </message>
    <message>
        <source>Parts shelf</source>
        <translation>Teileregal</translation>
    </message>
    <message>
        <source>A file for each of your parts</source>
        <translation>Eine Datei für jedes Ihrer Teile</translation>
    </message>
    <message>
        <source>Data files</source>
        <translation>Datendateien</translation>
    </message>
    <message>
        <source>Your own materials, screws, wires and rules</source>
        <translation>Ihre eigenen Werkstoffe, Schrauben, Adern und Regeln</translation>
    </message>
    <message>
        <source>Every setting is as at first.</source>
        <translation>Alle Einstellungen sind wie zu Beginn.</translation>
    </message>
    <message>
        <source>Sizes and plots are as at first.</source>
        <translation>Größen und Diagramme sind wie zu Beginn.</translation>
    </message>
    <message>
        <source>Write the design sheet</source>
        <translation>Entwurfsblatt schreiben</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print the design sheet</source>
        <translation>Entwurfsblatt drucken</translation>
    </message>
    <message>
        <source>No sheet written. %1</source>
        <translation>Kein Blatt geschrieben. %1</translation>
    </message>
    <message>
        <source>The design sheet is in %1</source>
        <translation>Das Entwurfsblatt liegt in %1</translation>
    </message>
    <message>
        <source>The design sheet could not be printed.</source>
        <translation>Das Entwurfsblatt konnte nicht gedruckt werden.</translation>
    </message>
    <message>
        <source>The design sheet is printed, pages: %1.</source>
        <translation>Das Entwurfsblatt ist gedruckt, Seiten: %1.</translation>
    </message>
    <message>
        <source>The sheet is written as soon as the figures are up to date.</source>
        <translation>Das Blatt wird geschrieben, sobald die Kennwerte aktuell sind.</translation>
    </message>
    <message>
        <source>The shelf keeps motors, gearboxes, drives, bearings, cables, cameras and supplies. Show the card of one of them first.</source>
        <translation>Das Regal enthält Motoren, Getriebe, Antriebsregler, Lager, Kabel, Kameras und Versorgungen. Zuerst die Karte eines davon zeigen.</translation>
    </message>
    <message>
        <source>parts of the shelf, rank %1</source>
        <translation>Teile des Regals, Rang %1</translation>
    </message>
    <message>
        <source>What is wrong with the arm's material</source>
        <translation>Was am Werkstoff des Arms nicht stimmt</translation>
    </message>
    <message>
        <source>Materials to choose from: %1.</source>
        <translation>Werkstoffe zur Auswahl: %1.</translation>
    </message>
    <message>
        <source>Problems of the file</source>
        <translation>Probleme der Datei</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Make it as it was before</source>
        <translation>Wiederherstellen, wie es vorher war</translation>
    </message>
    <message>
        <source>Hide this message</source>
        <translation>Diese Meldung ausblenden</translation>
    </message>
    <message>
        <source>? missing: without it one figure is unknown: %1.</source>
        <translation>? fehlt: ohne das ist ein Kennwert unbekannt: %1.</translation>
    </message>
    <message numerus="yes">
        <source>? missing: without it %n figures are unknown: %1.</source>
        <translation><numerusform>? fehlt: ohne das ist %n Kennwert unbekannt: %1.</numerusform><numerusform>? fehlt: ohne das sind %n Kennwerte unbekannt: %1.</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>? missing: without it %n figures are unknown: %1 and %2 more.</source>
        <translation><numerusform>? fehlt: ohne das ist %n Kennwert unbekannt: %1 und %2 weitere.</numerusform><numerusform>? fehlt: ohne das sind %n Kennwerte unbekannt: %1 und %2 weitere.</numerusform></translation>
    </message>
    <message>
        <source>Inputs that are missing</source>
        <translation>Eingaben, die fehlen</translation>
    </message>
    <message>
        <source>Enter it</source>
        <translation>Eingeben</translation>
    </message>
    <message>
        <source>Go to the first of the fields to fill in</source>
        <translation>Zum ersten der Felder gehen, die auszufüllen sind</translation>
    </message>
    <message numerus="yes">
        <source>? %n inputs are missing; without them unknown: %1.</source>
        <translation><numerusform>? Es fehlt %n Eingabe; ohne sie unbekannt: %1.</numerusform><numerusform>? Es fehlen %n Eingaben; ohne sie unbekannt: %1.</numerusform></translation>
    </message>
    <message>
        <source>Fill in:</source>
        <translation>Eingeben:</translation>
    </message>
    <message>
        <source>Fill in first, then nothing else is missing for %1:</source>
        <translation>Zuerst eingeben, dann fehlt nichts anderes mehr für %1:</translation>
    </message>
    <message>
        <source>Unknown without it: %1</source>
        <translation>Ohne das unbekannt: %1</translation>
    </message>
    <message>
        <source>the bodies that turn with tilt</source>
        <translation>die Körper, die sich mit Tilt drehen</translation>
    </message>
    <message>
        <source>the bodies that turn with pan</source>
        <translation>die Körper, die sich mit Pan drehen</translation>
    </message>
    <message numerus="yes">
        <source>%n figures</source>
        <translation><numerusform>%n Kennwert</numerusform><numerusform>%n Kennwerte</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n findings</source>
        <translation><numerusform>%n Befund</numerusform><numerusform>%n Befunde</numerusform></translation>
    </message>
    <message>
        <source>What would help</source>
        <translation>Was helfen würde</translation>
    </message>
    <message>
        <source>What one change would save, simulated, the most first. Enter goes to its field.</source>
        <translation>Was eine einzelne Änderung sparen würde, simuliert, das meiste zuerst. Enter führt zum Feld.</translation>
    </message>
    <message>
        <source>No single change of a field that limits a move saves 1 % of its time.</source>
        <translation>Keine einzelne Änderung eines Feldes, das eine Bewegung begrenzt, spart 1 % ihrer Zeit.</translation>
    </message>
    <message>
        <source>What limits %1</source>
        <translation>Was %1 begrenzt</translation>
    </message>
    <message>
        <source>bearings</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Unnamed body</source>
        <translation>Unbenannter Körper</translation>
    </message>
    <message>
        <source>Arm to the tilt axis</source>
        <translation>Arm zur Tilt-Achse</translation>
    </message>
    <message>
        <source>Control loop</source>
        <translation>Regelkreis</translation>
    </message>
    <message>
        <source>Joint to the load</source>
        <translation>Verbindung zur Last</translation>
    </message>
    <message>
        <source>Friction at the output</source>
        <translation>Reibung am Abtrieb</translation>
    </message>
    <message>
        <source>Bracket up to the camera</source>
        <translation>Halter zur Kamera</translation>
    </message>
    <message>
        <source>Tilt axis, in the pan frame</source>
        <translation>Tilt-Achse, im Pan-Koordinatensystem</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Rig</translation>
    </message>
    <message>
        <source>Supply, surroundings</source>
        <translation>Versorgung, Umgebung</translation>
    </message>
    <message>
        <source>Stand and arm</source>
        <translation>Stativ und Arm</translation>
    </message>
    <message>
        <source>The whole</source>
        <translation>Das Ganze</translation>
    </message>
    <message>
        <source>body: %1</source>
        <translation>Körper: %1</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 kann nicht gelesen werden: %2</translation>
    </message>
    <message>
        <source>import a path</source>
        <translation>Bahn importieren</translation>
    </message>
    <message>
        <source>It would be at %1, not after the point before it, at %2.</source>
        <translation>Er läge bei %1, nicht nach dem Punkt davor bei %2.</translation>
    </message>
    <message>
        <source>It would be at %1, not before the point after it, at %2.</source>
        <translation>Er läge bei %1, nicht vor dem Punkt danach bei %2.</translation>
    </message>
    <message>
        <source>What is wrong with the point</source>
        <translation>Was an dem Punkt nicht stimmt</translation>
    </message>
    <message>
        <source>Add a point</source>
        <translation>Punkt hinzufügen</translation>
    </message>
    <message>
        <source>After the chosen one, or at the end</source>
        <translation>Nach dem gewählten oder am Ende</translation>
    </message>
    <message>
        <source>Remove the point</source>
        <translation>Punkt entfernen</translation>
    </message>
    <message>
        <source>The chosen one; the last two go together</source>
        <translation>Den gewählten; die letzten zwei nur zusammen</translation>
    </message>
    <message>
        <source>Points of the target's path</source>
        <translation>Punkte der Bahn des Ziels</translation>
    </message>
    <message>
        <source>A point has all three values.</source>
        <translation>Ein Punkt hat alle drei Werte.</translation>
    </message>
    <message>
        <source>Point %1: </source>
        <translation>Punkt %1: </translation>
    </message>
    <message>
        <source>Still %1.</source>
        <translation>Weiterhin %1.</translation>
    </message>
    <message>
        <source>path: point %1</source>
        <translation>Bahn: Punkt %1</translation>
    </message>
    <message>
        <source>path: add a point</source>
        <translation>Bahn: Punkt hinzufügen</translation>
    </message>
    <message>
        <source>path: remove a point</source>
        <translation>Bahn: Punkt entfernen</translation>
    </message>
    <message>
        <source>Picture of “%1”</source>
        <translation>Bild von „%1“</translation>
    </message>
    <message>
        <source>PNG (pixels)</source>
        <translation>PNG (Pixel)</translation>
    </message>
    <message>
        <source>SVG (vectors)</source>
        <translation>SVG (Vektoren)</translation>
    </message>
    <message>
        <source>PDF (vectors)</source>
        <translation>PDF (Vektoren)</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source> dpi</source>
        <translation> dpi</translation>
    </message>
    <message>
        <source>White</source>
        <translation>Weiß</translation>
    </message>
    <message>
        <source>Transparent</source>
        <translation>Transparent</translation>
    </message>
    <message>
        <source>for the caption, may be empty</source>
        <translation>für die Bildunterschrift, darf leer sein</translation>
    </message>
    <message>
        <source>&amp;Kind of file</source>
        <translation>&amp;Dateityp</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Breite</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <source>&amp;Resolution</source>
        <translation>&amp;Auflösung</translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation>Hinter&amp;grund</translation>
    </message>
    <message>
        <source>&amp;Variant or revision</source>
        <translation>&amp;Variante oder Revision</translation>
    </message>
    <message>
        <source>&amp;Save…</source>
        <translation>&amp;Speichern…</translation>
    </message>
    <message>
        <source>The colours are those for light paper.</source>
        <translation>Die Farben sind die für helles Papier.</translation>
    </message>
    <message>
        <source>%1 × %2 pixels. %3</source>
        <translation>%1 × %2 Pixel. %3</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Cursors of “%1”</source>
        <translation>Cursor von „%1“</translation>
    </message>
    <message>
        <source>Cursor A</source>
        <translation>Cursor A</translation>
    </message>
    <message>
        <source>Cursor B</source>
        <translation>Cursor B</translation>
    </message>
    <message>
        <source>&amp;Hold cursor A where it is</source>
        <translation>Cursor A an seiner Stelle &amp;halten</translation>
    </message>
    <message>
        <source>What the cursors read</source>
        <translation>Was die Cursor anzeigen</translation>
    </message>
    <message>
        <source>Cursor &amp;A</source>
        <translation>Cursor &amp;A</translation>
    </message>
    <message>
        <source>Cursor &amp;B</source>
        <translation>Cursor &amp;B</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>nicht gesetzt</translation>
    </message>
    <message>
        <source>&amp;Plot</source>
        <translation>&amp;Diagramm</translation>
    </message>
    <message>
        <source>&amp;Copy picture</source>
        <translation>Bild &amp;kopieren</translation>
    </message>
    <message>
        <source>Copy &amp;data</source>
        <translation>&amp;Daten kopieren</translation>
    </message>
    <message>
        <source>Save &amp;picture…</source>
        <translation>&amp;Bild speichern…</translation>
    </message>
    <message>
        <source>&amp;Save data…</source>
        <translation>Daten &amp;speichern…</translation>
    </message>
    <message>
        <source>Save &amp;visible data…</source>
        <translation>Si&amp;chtbare Daten speichern…</translation>
    </message>
    <message>
        <source>Data as &amp;table</source>
        <translation>Daten als &amp;Tabelle</translation>
    </message>
    <message>
        <source>&amp;Whole view</source>
        <translation>&amp;Gesamtansicht</translation>
    </message>
    <message>
        <source>View &amp;before</source>
        <translation>&amp;Vorige Ansicht</translation>
    </message>
    <message>
        <source>View a&amp;fter</source>
        <translation>&amp;Nächste Ansicht</translation>
    </message>
    <message>
        <source>Fi&amp;xed scale</source>
        <translation>&amp;Fester Maßstab</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>G&amp;itter</translation>
    </message>
    <message>
        <source>L&amp;ogarithmic time</source>
        <translation>&amp;Logarithmische Zeit</translation>
    </message>
    <message>
        <source>F&amp;requency in rad/s</source>
        <translation>F&amp;requenz in rad/s</translation>
    </message>
    <message>
        <source>&amp;Lines</source>
        <translation>Lini&amp;en</translation>
    </message>
    <message>
        <source>D&amp;ifference to</source>
        <translation>Diffe&amp;renz zu</translation>
    </message>
    <message>
        <source>&amp;None: the curves themselves</source>
        <translation>&amp;Keiner: die Kurven selbst</translation>
    </message>
    <message>
        <source>&amp;Second cursor</source>
        <translation>&amp;Zweiter Cursor</translation>
    </message>
    <message>
        <source>&amp;Hold the cursor</source>
        <translation>Cursor &amp;halten</translation>
    </message>
    <message>
        <source>&amp;Zoom to between the cursors</source>
        <translation>Z&amp;wischen die Cursor zoomen</translation>
    </message>
    <message>
        <source>Copy &amp;readout</source>
        <translation>&amp;Ablesewerte kopieren</translation>
    </message>
    <message>
        <source>C&amp;ursors by number…</source>
        <translation>C&amp;ursor als Zahlen…</translation>
    </message>
    <message>
        <source>Co&amp;mpare with a measured log…</source>
        <translation>Mit ge&amp;messener Aufzeichnung vergleichen…</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>%1 files (*.%2)</source>
        <translation>%1-Dateien (*.%2)</translation>
    </message>
    <message>
        <source>Save data</source>
        <translation>Daten speichern</translation>
    </message>
    <message>
        <source>CSV files, comma and decimal point (*.csv)</source>
        <translation>CSV-Dateien, Komma und Dezimalpunkt (*.csv)</translation>
    </message>
    <message>
        <source>%1 is written.</source>
        <translation>%1 ist geschrieben.</translation>
    </message>
    <message>
        <source>%1 was not written: %2. %3</source>
        <translation>%1 wurde nicht geschrieben: %2. %3</translation>
    </message>
    <message>
        <source>Data of “%1”</source>
        <translation>Daten von „%1“</translation>
    </message>
    <message>
        <source>What the plot says</source>
        <translation>Was das Diagramm sagt</translation>
    </message>
    <message>
        <source>Data of %1</source>
        <translation>Daten von %1</translation>
    </message>
    <message>
        <source>Copy, save, zoom and cursors of this plot</source>
        <translation>Kopieren, Speichern, Zoom und Cursor dieses Diagramms</translation>
    </message>
    <message>
        <source>Close this plot</source>
        <translation>Dieses Diagramm schließen</translation>
    </message>
    <message>
        <source>Which plot: %1</source>
        <translation>Welches Diagramm: %1</translation>
    </message>
    <message>
        <source>Menu of %1</source>
        <translation>Menü von %1</translation>
    </message>
    <message>
        <source>source?</source>
        <translation>Quelle?</translation>
    </message>
    <message>
        <source>Source of %1</source>
        <translation>Quelle von %1</translation>
    </message>
    <message>
        <source>Where the value comes from</source>
        <translation>Woher der Wert kommt</translation>
    </message>
    <message>
        <source>How far off the value may be, as a percent or a quantity</source>
        <translation>Wie weit der Wert danebenliegen kann, in Prozent oder als Größe</translation>
    </message>
    <message>
        <source>Allowed: %1.</source>
        <translation>Zulässig: %1.</translation>
    </message>
    <message>
        <source>“none” means no such limit.</source>
        <translation>„none“ bedeutet: keine solche Grenze.</translation>
    </message>
    <message>
        <source>Left empty: %1.</source>
        <translation>Leer gelassen: %1.</translation>
    </message>
    <message>
        <source>Unusual: %1.</source>
        <translation>Ungewöhnlich: %1.</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation>wird berechnet</translation>
    </message>
    <message>
        <source>%1: spread of %2</source>
        <translation>%1: Streuung von %2</translation>
    </message>
    <message>
        <source>%1: source of %2</source>
        <translation>%1: Quelle von %2</translation>
    </message>
    <message>
        <source>Still missing.</source>
        <translation>Fehlt noch.</translation>
    </message>
    <message>
        <source>more than %1, up to %2</source>
        <translation>mehr als %1, bis %2</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>mehr als %1</translation>
    </message>
    <message>
        <source>A spread needs a value.</source>
        <translation>Eine Streuung braucht einen Wert.</translation>
    </message>
    <message>
        <source>Enter the value first.</source>
        <translation>Zuerst den Wert eingeben.</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Hide this without an answer</source>
        <translation>Ohne Antwort ausblenden</translation>
    </message>
    <message>
        <source>%1 gearbox ratio</source>
        <translation>%1: Getriebeübersetzung</translation>
    </message>
    <message>
        <source>%1 to 1</source>
        <translation>%1 zu 1</translation>
    </message>
    <message>
        <source>within 5 % of the quickest move from %1 to %2</source>
        <translation>höchstens 5 % über der schnellsten Bewegung von %1 bis %2</translation>
    </message>
    <message>
        <source>lower ratios run out of %1</source>
        <translation>bei kleineren Übersetzungen reicht nicht: %1</translation>
    </message>
    <message>
        <source>higher ratios run out of %1</source>
        <translation>bei größeren Übersetzungen reicht nicht: %1</translation>
    </message>
    <message>
        <source>Ticks: gearboxes on the shelf.</source>
        <translation>Striche: Getriebe im Regal.</translation>
    </message>
    <message>
        <source>Ticks: ratios that are usually sold.</source>
        <translation>Striche: handelsübliche Übersetzungen.</translation>
    </message>
    <message>
        <source>Drag, or use the arrow and Page keys; Home takes the quickest, a digit types.</source>
        <translation>Ziehen oder Pfeil- und Bildtasten; Pos1 nimmt die schnellste, eine Ziffer gibt ein.</translation>
    </message>
    <message>
        <source>torque runs out</source>
        <translation>Moment reicht nicht</translation>
    </message>
    <message>
        <source>‹ %1 runs out</source>
        <translation>‹ %1 reicht nicht</translation>
    </message>
    <message>
        <source>speed runs out</source>
        <translation>Drehzahl reicht nicht</translation>
    </message>
    <message>
        <source>%1 runs out ›</source>
        <translation>%1 reicht nicht ›</translation>
    </message>
    <message>
        <source>‹ %1</source>
        <translation>‹ %1</translation>
    </message>
    <message>
        <source>%1 ›</source>
        <translation>%1 ›</translation>
    </message>
    <message>
        <source>Edits are not kept safe from a crash: save often. %1</source>
        <translation>Änderungen sind nicht gegen einen Absturz gesichert: oft speichern. %1</translation>
    </message>
    <message>
        <source>%1 is open in another window too: whoever saves last replaces what the other saved.</source>
        <translation>%1 ist auch in einem anderen Fenster offen: Wer zuletzt speichert, ersetzt, was der andere gespeichert hat.</translation>
    </message>
    <message>
        <source>Work on a copy</source>
        <translation>Mit einer Kopie arbeiten</translation>
    </message>
    <message>
        <source>Leave that file alone; this rig gets a file when it is saved</source>
        <translation>Jene Datei nicht anrühren; dieses Rig bekommt beim Speichern eine eigene Datei</translation>
    </message>
    <message>
        <source>%1 was moved or removed by another program.</source>
        <translation>%1 wurde von einem anderen Programm verschoben oder gelöscht.</translation>
    </message>
    <message>
        <source>Save it again</source>
        <translation>Erneut speichern</translation>
    </message>
    <message>
        <source>Write the rig to that place anew</source>
        <translation>Rig an dieser Stelle neu schreiben</translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translation>%1 wurde von einem anderen Programm geändert.</translation>
    </message>
    <message>
        <source>Reload</source>
        <translation>Neu laden</translation>
    </message>
    <message>
        <source>Take what is in the file now; undo brings this rig back</source>
        <translation>Den jetzigen Inhalt der Datei übernehmen; Rückgängig holt dieses Rig zurück</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation>Meine behalten</translation>
    </message>
    <message>
        <source>Go on with this rig; saving replaces what is in the file</source>
        <translation>Mit diesem Rig weiterarbeiten; Speichern ersetzt den Inhalt der Datei</translation>
    </message>
    <message>
        <source>Not reloaded; the rig here is unchanged. %1</source>
        <translation>Nicht neu geladen; das Rig hier ist unverändert. %1</translation>
    </message>
    <message>
        <source>Not saved: %1 was changed by another program since it was read. Keep mine, then save, to replace that.</source>
        <translation>Nicht gespeichert: %1 wurde seit dem Lesen von einem anderen Programm geändert. „Meine behalten“ wählen und dann speichern, um es zu ersetzen.</translation>
    </message>
    <message>
        <source>Unsaved edits of %1 were found, of a rig without a file: “%2”.</source>
        <translation>Ungesicherte Änderungen von %1 gefunden, an einem Rig ohne Datei: „%2“.</translation>
    </message>
    <message>
        <source>no title</source>
        <translation>ohne Titel</translation>
    </message>
    <message>
        <source>Unsaved edits of %1 were found, of %2.</source>
        <translation>Ungesicherte Änderungen von %1 gefunden, an %2.</translation>
    </message>
    <message>
        <source>The file was changed after them.</source>
        <translation>Die Datei wurde danach geändert.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Open them as one step that can be undone; nothing is saved</source>
        <translation>Als einen Schritt öffnen, der sich rückgängig machen lässt; nichts wird gespeichert</translation>
    </message>
    <message>
        <source>Delete them for good</source>
        <translation>Endgültig löschen</translation>
    </message>
    <message>
        <source>The edits cannot be read; they stay in their file. %1</source>
        <translation>Die Änderungen können nicht gelesen werden; sie bleiben in ihrer Datei. %1</translation>
    </message>
    <message>
        <source>restored edits</source>
        <translation>wiederhergestellte Änderungen</translation>
    </message>
    <message>
        <source>The edits of %1 are restored, but not saved yet.</source>
        <translation>Die Änderungen von %1 sind wiederhergestellt, aber noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Desktop</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Hoher Kontrast</translation>
    </message>
    <message>
        <source>100 % (the desktop's)</source>
        <translation>100 % (wie der Desktop)</translation>
    </message>
    <message>
        <source>&amp;Reduced motion, also where the desktop does not ask for it</source>
        <translation>&amp;Weniger Animation, auch wenn der Desktop es nicht verlangt</translation>
    </message>
    <message>
        <source>Menus appear at once and the text cursor does not blink</source>
        <translation>Menüs erscheinen sofort, und der Textcursor blinkt nicht</translation>
    </message>
    <message>
        <source>&amp;Language, from the next start on</source>
        <translation>Sp&amp;rache, ab dem nächsten Start</translation>
    </message>
    <message>
        <source>&amp;Paper of the sheet</source>
        <translation>&amp;Papier des Blatts</translation>
    </message>
    <message>
        <source>As usual in the region</source>
        <translation>Wie in der Region üblich</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>&amp;Open at start</source>
        <translation>&amp;Beim Start öffnen</translation>
    </message>
    <message>
        <source>The first sample</source>
        <translation>Das erste Beispiel</translation>
    </message>
    <message>
        <source>The rig of the last time</source>
        <translation>Das Rig vom letzten Mal</translation>
    </message>
    <message>
        <source>A new rig</source>
        <translation>Ein neues Rig</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open it in the file manager</source>
        <translation>Im Dateimanager öffnen</translation>
    </message>
    <message>
        <source>Open: %1</source>
        <translation>Öffnen: %1</translation>
    </message>
    <message>
        <source>Reset the &amp;layout</source>
        <translation>A&amp;nordnung zurücksetzen</translation>
    </message>
    <message>
        <source>Sizes and plots as at first</source>
        <translation>Größen und Diagramme wie zu Beginn</translation>
    </message>
    <message>
        <source>Restore &amp;defaults</source>
        <translation>&amp;Vorgaben wiederherstellen</translation>
    </message>
    <message>
        <source>Every setting as at first</source>
        <translation>Alle Einstellungen wie zu Beginn</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>Motors</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>Gearboxes</source>
        <translation>Getriebe</translation>
    </message>
    <message>
        <source>Drives</source>
        <translation>Antriebsregler</translation>
    </message>
    <message>
        <source>Cables</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Cameras</source>
        <translation>Kameras</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Versorgungen</translation>
    </message>
    <message>
        <source>Parts of the shelf</source>
        <translation>Teile des Regals</translation>
    </message>
    <message>
        <source>Changed: not as “%1” on the shelf in %2.</source>
        <translation>Geändert: nicht wie „%1“ im Regal bei: %2.</translation>
    </message>
    <message>
        <source>Filter: words of the name or figures</source>
        <translation>Filter: Wörter aus Name oder Kennwerten</translation>
    </message>
    <message>
        <source>Filter the parts</source>
        <translation>Teile filtern</translation>
    </message>
    <message>
        <source>Files of the shelf that were left out</source>
        <translation>Ausgelassene Dateien des Regals</translation>
    </message>
    <message>
        <source>&amp;Bring back</source>
        <translation>&amp;Zurückholen</translation>
    </message>
    <message>
        <source>Undo the last removal or renaming on the shelf</source>
        <translation>Letztes Entfernen oder Umbenennen im Regal rückgängig machen</translation>
    </message>
    <message>
        <source>Put on &amp;pan</source>
        <translation>Bei &amp;Pan einsetzen</translation>
    </message>
    <message>
        <source>Put the part in the place of pan's own</source>
        <translation>Teil anstelle des vorhandenen von Pan einsetzen</translation>
    </message>
    <message>
        <source>Put on &amp;tilt</source>
        <translation>Bei &amp;Tilt einsetzen</translation>
    </message>
    <message>
        <source>Put the part in the place of tilt's own</source>
        <translation>Teil anstelle des vorhandenen von Tilt einsetzen</translation>
    </message>
    <message>
        <source>Re&amp;name</source>
        <translation>&amp;Umbenennen</translation>
    </message>
    <message>
        <source>Give the part another name (F2)</source>
        <translation>Dem Teil einen anderen Namen geben (F2)</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Take the part off the shelf (Delete)</source>
        <translation>Teil aus dem Regal nehmen (Entf)</translation>
    </message>
    <message>
        <source>Which fits &amp;best</source>
        <translation>Was passt am &amp;besten</translation>
    </message>
    <message>
        <source>Rank every motor with every gearbox of the shelf for this rig</source>
        <translation>Jeden Motor mit jedem Getriebe des Regals für dieses Rig einstufen</translation>
    </message>
    <message>
        <source>Put on the ri&amp;g</source>
        <translation>In das Ri&amp;g einsetzen</translation>
    </message>
    <message>
        <source>Drag a part onto a drive line, or press Enter. Files: %1</source>
        <translation>Teil auf eine Antriebszeile ziehen oder Enter drücken. Dateien: %1</translation>
    </message>
    <message>
        <source>“%1” is on the shelf now.</source>
        <translation>„%1“ ist jetzt im Regal.</translation>
    </message>
    <message>
        <source>“%1” is called “%2” now.</source>
        <translation>„%1“ heißt jetzt „%2“.</translation>
    </message>
    <message>
        <source>“%1” is off the shelf.</source>
        <translation>„%1“ ist nicht mehr im Regal.</translation>
    </message>
    <message>
        <source>It is back on the shelf as it was.</source>
        <translation>Es ist unverändert zurück im Regal.</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>go to the next control, or to the one before</source>
        <translation>zum nächsten oder vorigen Bedienelement</translation>
    </message>
    <message>
        <source>F10</source>
        <translation>F10</translation>
    </message>
    <message>
        <source>go to the menus</source>
        <translation>zu den Menüs</translation>
    </message>
    <message>
        <source>Drive lines</source>
        <translation>Antriebszeilen</translation>
    </message>
    <message>
        <source>← →</source>
        <translation>← →</translation>
    </message>
    <message>
        <source>from tile to tile</source>
        <translation>von Kachel zu Kachel</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>show the card of the tile</source>
        <translation>Karte der Kachel zeigen</translation>
    </message>
    <message>
        <source>Ratio scale</source>
        <translation>Übersetzungsskala</translation>
    </message>
    <message>
        <source>← → ↑ ↓</source>
        <translation>← → ↑ ↓</translation>
    </message>
    <message>
        <source>a lower or higher ratio</source>
        <translation>kleinere oder größere Übersetzung</translation>
    </message>
    <message>
        <source>Shift+← →</source>
        <translation>Umschalt+← →</translation>
    </message>
    <message>
        <source>the same in fine steps</source>
        <translation>dasselbe in feinen Schritten</translation>
    </message>
    <message>
        <source>Page Up, Page Down</source>
        <translation>Bild auf, Bild ab</translation>
    </message>
    <message>
        <source>the same in steps of a quarter</source>
        <translation>dasselbe in Schritten von einem Viertel</translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation>Pos1, Ende</translation>
    </message>
    <message>
        <source>the quickest ratio</source>
        <translation>die schnellste Übersetzung</translation>
    </message>
    <message>
        <source>0 … 9</source>
        <translation>0 … 9</translation>
    </message>
    <message>
        <source>type a ratio, in the gearbox's card</source>
        <translation>Übersetzung eintippen, in der Karte des Getriebes</translation>
    </message>
    <message>
        <source>↑ ↓</source>
        <translation>↑ ↓</translation>
    </message>
    <message>
        <source>select a finding and show its part</source>
        <translation>Befund wählen und sein Teil zeigen</translation>
    </message>
    <message>
        <source>Enter, Space</source>
        <translation>Enter, Leertaste</translation>
    </message>
    <message>
        <source>apply a remedy</source>
        <translation>Abhilfe anwenden</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>take the entry</source>
        <translation>Eingabe übernehmen</translation>
    </message>
    <message>
        <source>↑ ↓, Page Up, Page Down</source>
        <translation>↑ ↓, Bild auf, Bild ab</translation>
    </message>
    <message>
        <source>one more or less in the second digit; ten</source>
        <translation>eins mehr oder weniger in der zweiten Stelle; zehn</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>bring the last valid entry back</source>
        <translation>letzte gültige Eingabe zurückholen</translation>
    </message>
    <message>
        <source>step the cursor</source>
        <translation>Cursor schrittweise bewegen</translation>
    </message>
    <message>
        <source>+ −, Alt++, Alt+−</source>
        <translation>+ −, Alt++, Alt+−</translation>
    </message>
    <message>
        <source>zoom; only across</source>
        <translation>zoomen; nur waagrecht</translation>
    </message>
    <message>
        <source>zoom up and down</source>
        <translation>senkrecht zoomen</translation>
    </message>
    <message>
        <source>whole view</source>
        <translation>Gesamtansicht</translation>
    </message>
    <message>
        <source>Alt+← →</source>
        <translation>Alt+← →</translation>
    </message>
    <message>
        <source>view before and after</source>
        <translation>vorige und nächste Ansicht</translation>
    </message>
    <message>
        <source>Ctrl+arrows</source>
        <translation>Strg+Pfeiltasten</translation>
    </message>
    <message>
        <source>move the view</source>
        <translation>Ansicht verschieben</translation>
    </message>
    <message>
        <source>B, H, Z</source>
        <translation>B, H, Z</translation>
    </message>
    <message>
        <source>second cursor; hold the cursor; zoom to between them</source>
        <translation>zweiter Cursor; Cursor halten; zwischen beide zoomen</translation>
    </message>
    <message>
        <source>D</source>
        <translation>D</translation>
    </message>
    <message>
        <source>difference to the next variant; the curves themselves</source>
        <translation>Differenz zur nächsten Variante; die Kurven selbst</translation>
    </message>
    <message>
        <source>F, G, L, R, 1 … 9</source>
        <translation>F, G, L, R, 1 … 9</translation>
    </message>
    <message>
        <source>fixed scale; grid; logarithmic time; rad/s for Hz; show or hide a line</source>
        <translation>fester Maßstab; Gitter; logarithmische Zeit; rad/s statt Hz; Linie ein- oder ausblenden</translation>
    </message>
    <message>
        <source>Menu key, Shift+F10</source>
        <translation>Menütaste, Umschalt+F10</translation>
    </message>
    <message>
        <source>the menu of the plot</source>
        <translation>Menü des Diagramms</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>the next handle</source>
        <translation>nächster Griff</translation>
    </message>
    <message>
        <source>move the handle by 1 mm</source>
        <translation>Griff um 1 mm verschieben</translation>
    </message>
    <message>
        <source>the same by 0.1 mm</source>
        <translation>dasselbe um 0,1 mm</translation>
    </message>
    <message>
        <source>the same by 10 mm</source>
        <translation>dasselbe um 10 mm</translation>
    </message>
    <message>
        <source>play the simulated move, or stop it</source>
        <translation>simulierte Bewegung abspielen oder anhalten</translation>
    </message>
    <message>
        <source>Alt while dragging</source>
        <translation>Alt beim Ziehen</translation>
    </message>
    <message>
        <source>not on whole millimetres</source>
        <translation>nicht auf ganze Millimeter</translation>
    </message>
    <message>
        <source>take the drag back</source>
        <translation>Ziehen zurücknehmen</translation>
    </message>
    <message>
        <source>Travel dials</source>
        <translation>Rundskalen des Verfahrbereichs</translation>
    </message>
    <message>
        <source>move the chosen mark</source>
        <translation>gewählte Marke verschieben</translation>
    </message>
    <message>
        <source>choose another mark</source>
        <translation>andere Marke wählen</translation>
    </message>
    <message>
        <source>type the mark's value</source>
        <translation>Wert der Marke eintippen</translation>
    </message>
    <message>
        <source>explain another figure</source>
        <translation>anderen Kennwert erklären</translation>
    </message>
    <message>
        <source>go to the explanation; Tab there goes from link to link</source>
        <translation>zur Erklärung; Tab geht dort von Verweis zu Verweis</translation>
    </message>
    <message>
        <source>close the window</source>
        <translation>Fenster schließen</translation>
    </message>
    <message>
        <source>choose another value</source>
        <translation>anderen Wert wählen</translation>
    </message>
    <message>
        <source>go to the value's field</source>
        <translation>zum Feld des Werts</translation>
    </message>
    <message>
        <source>Keyboard shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Search the shortcuts</source>
        <translation>Tastenkürzel durchsuchen</translation>
    </message>
    <message>
        <source>From the command until the picture stays within the settle band, and how far the backlash lets the picture rock. The task's card says what is wanted.</source>
        <translation>Vom Befehl, bis das Bild im Einschwingband bleibt, und wie weit das Spiel das Bild wackeln lässt. Die Karte der Aufgabe sagt, was verlangt ist.</translation>
    </message>
    <message>
        <source>%1, about 95 % sure; Ctrl+M lists what is worth measuring. </source>
        <translation>%1, zu etwa 95 % sicher; Strg+M listet auf, wo Messen lohnt. </translation>
    </message>
    <message>
        <source>Ctrl+L lists what limits the moves.</source>
        <translation>Strg+L zeigt, was die Bewegungen begrenzt.</translation>
    </message>
    <message>
        <source>What is wrong with the path</source>
        <translation>Was an der Bahn nicht stimmt</translation>
    </message>
    <message>
        <source>Import a path…</source>
        <translation>Bahn importieren…</translation>
    </message>
    <message>
        <source>CSV: a line for each point, time in seconds, pan and tilt in degrees. The points go into the rig.</source>
        <translation>CSV: eine Zeile je Punkt, Zeit in Sekunden, Pan und Tilt in Grad. Die Punkte werden ins Rig übernommen.</translation>
    </message>
    <message>
        <source>No path is entered.</source>
        <translation>Keine Bahn eingegeben.</translation>
    </message>
    <message numerus="yes">
        <source>Path of %n points, %1 long.</source>
        <translation><numerusform>Bahn aus %n Punkt, Dauer %1.</numerusform><numerusform>Bahn aus %n Punkten, Dauer %1.</numerusform></translation>
    </message>
    <message>
        <source>Import a path</source>
        <translation>Bahn importieren</translation>
    </message>
    <message>
        <source>CSV (*.csv);;All files (*)</source>
        <translation>CSV (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>A rig holds %1 variants at most. Remove one first.</source>
        <translation>Ein Rig fasst höchstens %1 Varianten. Zuerst eine entfernen.</translation>
    </message>
    <message>
        <source>The present design is pinned already, as %1.</source>
        <translation>Der jetzige Entwurf ist schon angeheftet, als %1.</translation>
    </message>
    <message>
        <source>With one more variant the rig file would be larger than 1 MiB. Remove one first.</source>
        <translation>Mit einer weiteren Variante wäre die Rig-Datei größer als 1 MiB. Zuerst eine entfernen.</translation>
    </message>
    <message>
        <source>Variant</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>pin %1</source>
        <translation>%1 anheften</translation>
    </message>
    <message>
        <source>Pinned as %1: it stays in the plots while you go on. Ctrl+Shift+D compares.</source>
        <translation>Angeheftet als %1: bleibt in den Diagrammen, während Sie weiterarbeiten. Strg+Umschalt+D vergleicht.</translation>
    </message>
    <message>
        <source>A variant needs a name.</source>
        <translation>Eine Variante braucht einen Namen.</translation>
    </message>
    <message>
        <source>There is a variant “%1” already.</source>
        <translation>Es gibt schon eine Variante „%1“.</translation>
    </message>
    <message>
        <source>rename %1</source>
        <translation>%1 umbenennen</translation>
    </message>
    <message>
        <source>note of %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>restore %1</source>
        <translation>%1 wiederherstellen</translation>
    </message>
    <message>
        <source>The plots show %1 variants at most. Hide one first.</source>
        <translation>Die Diagramme zeigen höchstens %1 Varianten. Zuerst eine ausblenden.</translation>
    </message>
    <message>
        <source>Pin this design</source>
        <translation>Diesen Entwurf anheften</translation>
    </message>
    <message>
        <source>Keep the present design as a variant (Ctrl+D)</source>
        <translation>Jetzigen Entwurf als Variante behalten (Strg+D)</translation>
    </message>
    <message>
        <source>Make the variant of the current column the present design</source>
        <translation>Variante der aktuellen Spalte zum jetzigen Entwurf machen</translation>
    </message>
    <message>
        <source>Pin, then restore</source>
        <translation>Anheften, dann wiederherstellen</translation>
    </message>
    <message>
        <source>Keep the present design as a variant first</source>
        <translation>Zuerst den jetzigen Entwurf als Variante behalten</translation>
    </message>
    <message>
        <source>Remove the variant of the current column (Delete)</source>
        <translation>Variante der aktuellen Spalte entfernen (Entf)</translation>
    </message>
    <message>
        <source>No variants yet. Pin this design, change it, and come back to compare: what differs, what it gains and what it costs. Variants are kept in the rig file.</source>
        <translation>Noch keine Varianten. Diesen Entwurf anheften, ihn ändern und zum Vergleichen zurückkommen: was sich unterscheidet, was es bringt und was es kostet. Varianten stehen in der Rig-Datei.</translation>
    </message>
    <message>
        <source>Why it was not done</source>
        <translation>Warum es nicht ausgeführt wurde</translation>
    </message>
    <message>
        <source>Enter or F2 edits a name or a note, Space shows or hides a variant in the plots.</source>
        <translation>Enter oder F2 bearbeitet einen Namen oder eine Notiz, Leertaste blendet eine Variante in den Diagrammen ein oder aus.</translation>
    </message>
    <message>
        <source>Present design and variants</source>
        <translation>Jetziger Entwurf und Varianten</translation>
    </message>
    <message>
        <source>✓ best</source>
        <translation>✓ beste</translation>
    </message>
    <message>
        <source>Main figures</source>
        <translation>Hauptkennwerte</translation>
    </message>
    <message>
        <source>Present design</source>
        <translation>Jetziger Entwurf</translation>
    </message>
    <message>
        <source>shown</source>
        <translation>gezeigt</translation>
    </message>
    <message>
        <source>hidden</source>
        <translation>ausgeblendet</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>In the plots</source>
        <translation>In den Diagrammen</translation>
    </message>
</context>
</TS>
