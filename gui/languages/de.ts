<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source> % of reading</source>
        <translation> % der Anzeige</translation>
    </message>
    <message>
        <source> With beds at {celsius} °C {machine} and {other} would, within what their intervals leave open.</source>
        <translation> Bei Heizbetten mit {celsius} °C würden {machine} und {other} tauschen, innerhalb dessen, was ihre Intervalle offen lassen.</translation>
    </message>
    <message>
        <source> With beds at {celsius} °C {machine} and {other} would.</source>
        <translation> Bei Heizbetten mit {celsius} °C würden {machine} und {other} tauschen.</translation>
    </message>
    <message>
        <source> for {seconds}</source>
        <translation> über {seconds}</translation>
    </message>
    <message>
        <source>%: electricity</source>
        <translation>%: Strom</translation>
    </message>
    <message>
        <source>&amp;About Samepart</source>
        <translation>Über Sa&amp;mepart</translation>
    </message>
    <message>
        <source>&amp;Add a band</source>
        <translation>Preisst&amp;ufe hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Add column</source>
        <translation>S&amp;palte hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Add logs…</source>
        <translation>&amp;Logs hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Add to Publish</source>
        <translation>Zum &amp;Veröffentlichen hinzufügen</translation>
    </message>
    <message>
        <source>&amp;After the test</source>
        <translation>&amp;Nach dem Versuch</translation>
    </message>
    <message>
        <source>&amp;Bed (°C)</source>
        <translation>Hei&amp;zbett (°C)</translation>
    </message>
    <message>
        <source>&amp;Bed at (°C):</source>
        <translation>H&amp;eizbett bei (°C):</translation>
    </message>
    <message>
        <source>&amp;Before the test</source>
        <translation>&amp;Vor dem Versuch</translation>
    </message>
    <message>
        <source>&amp;Bundle…</source>
        <translation>B&amp;ündel…</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Vorsicht</translation>
    </message>
    <message>
        <source>&amp;Clear</source>
        <translation>A&amp;ufheben</translation>
    </message>
    <message>
        <source>&amp;Copy the picture and its numbers</source>
        <translation>Bild und Zahlen &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Counted:</source>
        <translation>&amp;Gezählt:</translation>
    </message>
    <message>
        <source>C&amp;urrency</source>
        <translation>W&amp;ährung</translation>
    </message>
    <message>
        <source>&amp;Diagnostics…</source>
        <translation>&amp;Diagnose…</translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translation>Zei&amp;chnen</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>Em&amp;issivity of the faces</source>
        <translation>Emissions&amp;grad der Flächen</translation>
    </message>
    <message>
        <source>Everythin&amp;g…</source>
        <translation>A&amp;lles…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>F&amp;ile:</source>
        <translation>Da&amp;tei:</translation>
    </message>
    <message>
        <source>First &amp;layers at</source>
        <translation>&amp;Erste Schichten bei</translation>
    </message>
    <message>
        <source>F&amp;or</source>
        <translation>&amp;Für</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>How is this found?</source>
        <translation>Wie wird das ermittelt?</translation>
    </message>
    <message>
        <source>&amp;How was this found?</source>
        <translation>&amp;Wie wurde das ermittelt?</translation>
    </message>
    <message>
        <source>How was this found?</source>
        <translation>Wie wurde das ermittelt?</translation>
    </message>
    <message>
        <source>&amp;Idle a year</source>
        <translation>Leerlauf &amp;im Jahr</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Kind:</source>
        <translation>T&amp;yp:</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>&amp;Larger text</source>
        <translation>&amp;Größerer Text</translation>
    </message>
    <message>
        <source>&amp;Lasting (min):</source>
        <translation>Da&amp;uer (min):</translation>
    </message>
    <message>
        <source>Len&amp;gth</source>
        <translation>Daue&amp;r</translation>
    </message>
    <message>
        <source>&amp;Machine</source>
        <translation>&amp;Maschine</translation>
    </message>
    <message>
        <source>&amp;Machine:</source>
        <translation>&amp;Maschine:</translation>
    </message>
    <message>
        <source>&amp;Machines shown</source>
        <translation>Ge&amp;zeigte Maschinen</translation>
    </message>
    <message>
        <source>&amp;Material:</source>
        <translation>&amp;Material:</translation>
    </message>
    <message>
        <source>&amp;Never below</source>
        <translation>&amp;Nie unter</translation>
    </message>
    <message>
        <source>&amp;New column:</source>
        <translation>&amp;Neue Spalte:</translation>
    </message>
    <message>
        <source>&amp;New study</source>
        <translation>&amp;Neue Studie</translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation>&amp;Normaler Text</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Vermerk</translation>
    </message>
    <message>
        <source>&amp;Off after</source>
        <translation>Aus na&amp;ch</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <source>&amp;Picture</source>
        <translation>Bi&amp;ld</translation>
    </message>
    <message>
        <source>&amp;Price a kWh</source>
        <translation>Preis &amp;je kWh</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Read</source>
        <translation>&amp;Gelesen</translation>
    </message>
    <message>
        <source>&amp;Read prices from a file…</source>
        <translation>Preise aus einer Datei &amp;einlesen…</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Replace personal data by names that say nothing</source>
        <translation>Pers&amp;önliche Daten durch nichtssagende Namen ersetzen</translation>
    </message>
    <message>
        <source>&amp;Room at (°C):</source>
        <translation>&amp;Raum bei (°C):</translation>
    </message>
    <message>
        <source>&amp;Save picture</source>
        <translation>Bild &amp;speichern</translation>
    </message>
    <message>
        <source>&amp;Save picture…</source>
        <translation>Bild &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Save table…</source>
        <translation>Tabelle &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Smaller text</source>
        <translation>&amp;Kleinerer Text</translation>
    </message>
    <message>
        <source>Stan&amp;ding, a day</source>
        <translation>&amp;Grundpreis je Tag</translation>
    </message>
    <message>
        <source>&amp;Stretch</source>
        <translation>Ab&amp;schnitt</translation>
    </message>
    <message>
        <source>&amp;Test:</source>
        <translation>&amp;Versuch:</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Erscheinungsbild</translation>
    </message>
    <message>
        <source>&amp;Then at</source>
        <translation>Dana&amp;ch bei</translation>
    </message>
    <message>
        <source>Transparent ground</source>
        <translation>Transparenter Hintergrund</translation>
    </message>
    <message>
        <source>&amp;Type readings…</source>
        <translation>Ablesungen &amp;eintippen…</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Up to four figures on one picture</source>
        <translation>Bis zu vier Diagramme je Bild</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Wee&amp;ks of</source>
        <translation>Wochen &amp;von</translation>
    </message>
    <message>
        <source>&amp;Zone</source>
        <translation>Zeitzo&amp;ne</translation>
    </message>
    <message>
        <source>&amp;in:</source>
        <translation>&amp;in:</translation>
    </message>
    <message>
        <source>({energy} Wh × 3600 − {lost} J lost meanwhile) ÷ ({to} °C − {from_} °C) = {value} J/K</source>
        <translation>({energy} Wh × 3600 − {lost} J unterdessen verloren) ÷ ({to} °C − {from_} °C) = {value} J/K</translation>
    </message>
    <message>
        <source>, adjusted for {pairs:pair|pairs} by Holm&apos;s way</source>
        <translation>, nach Holm angepasst an {pairs:Paar|Paare}</translation>
    </message>
    <message>
        <source>, and </source>
        <translation>, und </translation>
    </message>
    <message>
        <source>, and so is the counter, which runs backwards</source>
        <translation>, ebenso der Zähler, der rückwärts läuft</translation>
    </message>
    <message>
        <source>, and so needs {apart} Wh more{unsure}</source>
        <translation>, und braucht so {apart} Wh mehr{unsure}</translation>
    </message>
    <message>
        <source>, and the counter, which stood still meanwhile, is left out</source>
        <translation>, und der Zähler, der dabei stillstand, bleibt weg</translation>
    </message>
    <message>
        <source>, which makes {part} of the {apart} Wh that it needs more{unsure}</source>
        <translation>, was {part} der {apart} Wh ausmacht, die sie mehr braucht{unsure}</translation>
    </message>
    <message>
        <source>, which too few runs show</source>
        <translation>, was zu wenige Läufe zeigen</translation>
    </message>
    <message>
        <source>, {part} Wh less; warm-up takes {warm} Wh more, which makes {apart} Wh more in all{unsure}</source>
        <translation>, {part} Wh weniger; das Aufheizen braucht {warm} Wh mehr, zusammen {apart} Wh mehr{unsure}</translation>
    </message>
    <message>
        <source>, {part} Wh more; warm-up takes {warm} Wh less, which makes {apart} Wh more in all{unsure}</source>
        <translation>, {part} Wh mehr; das Aufheizen braucht {warm} Wh weniger, zusammen {apart} Wh mehr{unsure}</translation>
    </message>
    <message>
        <source>1 of {judged:run|runs} leaves its band</source>
        <translation>1 von {judged:Lauf|Läufen} verlässt sein Band</translation>
    </message>
    <message>
        <source>1000 Wh divided by the mean energy per part; not the mean of the runs’ own values.</source>
        <translation>1000 Wh geteilt durch die mittlere Energie je Teil; nicht das Mittel der Werte der einzelnen Läufe.</translation>
    </message>
    <message>
        <source>1000 Wh ÷ {used_wh} Wh = {term}</source>
        <translation>1000 Wh ÷ {used_wh} Wh = {term}</translation>
    </message>
    <message>
        <source>2× and 3× give the same picture with more pixels</source>
        <translation>2× und 3× ergeben dasselbe Bild mit mehr Pixeln</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95-%-Intervall</translation>
    </message>
    <message>
        <source>95 % interval: ± {k} × {u} = ± {half}</source>
        <translation>95-%-Intervall: ± {k} × {u} = ± {half}</translation>
    </message>
    <message>
        <source>95 % intervals hold noise, display and the meter&apos;s gain</source>
        <translation>95-%-Intervalle enthalten Rauschen, Anzeige und Verstärkung des Messgeräts</translation>
    </message>
    <message>
        <source>95 %, after the GUM [1]: every source of uncertainty is one input; what two runs share, such as the gain of one meter, adds up in a mean and cancels in a ratio. The effective degrees of freedom give the factor of Student’s t.</source>
        <translation>95 %, nach dem GUM [1]: Jede Unsicherheitsquelle ist eine Eingangsgröße; was zwei Läufe gemeinsam haben, etwa die Verstärkung eines Messgeräts, addiert sich im Mittel und hebt sich im Verhältnis auf. Die effektiven Freiheitsgrade ergeben den Faktor nach Student.</translation>
    </message>
    <message>
        <source>: {cost} at {price}</source>
        <translation>: {cost} bei {price}</translation>
    </message>
    <message>
        <source>: {cost} at {price} on average</source>
        <translation>: {cost} bei durchschnittlich {price}</translation>
    </message>
    <message>
        <source>; no difference in what they need is shown ({apart} Wh apart)</source>
        <translation>; ein Unterschied im Bedarf ist nicht nachgewiesen ({apart} Wh auseinander)</translation>
    </message>
    <message>
        <source>A CSV file with a date and time and a price in each row</source>
        <translation>Eine CSV-Datei mit Datum, Uhrzeit und Preis in jeder Zeile</translation>
    </message>
    <message>
        <source>A band that ends when it begins has no length.</source>
        <translation>Eine Preisstufe, die mit ihrem Beginn endet, hat keine Dauer.</translation>
    </message>
    <message>
        <source>A bench of five invented machines</source>
        <translation>Ein Versuchsstand mit fünf erfundenen Maschinen</translation>
    </message>
    <message>
        <source>A bound says how much it could be at most; it is most likely less.</source>
        <translation>Eine Schranke sagt, wie viel es höchstens sein könnte; wahrscheinlich ist es weniger.</translation>
    </message>
    <message>
        <source>A bracket joins {names}: no difference between them is shown</source>
        <translation>Eine Klammer verbindet {names}: Zwischen ihnen ist kein Unterschied nachgewiesen</translation>
    </message>
    <message>
        <source>A bundle saved beside this report holds the study and, if its maker chose so, the logs: with it “samepart compare BUNDLE” finds every figure again.</source>
        <translation>Ein neben diesem Bericht gespeichertes Bündel enthält die Studie und, falls so gewählt, die Logs: Damit findet „samepart compare BÜNDEL“ jede Zahl wieder.</translation>
    </message>
    <message>
        <source>A cell holds at most {most} letters; this text has {count}.</source>
        <translation>Eine Zelle fasst höchstens {most} Buchstaben; dieser Text hat {count}.</translation>
    </message>
    <message>
        <source>A cell of this row is no number: {text}.</source>
        <translation>Eine Zelle dieser Zeile ist keine Zahl: {text}.</translation>
    </message>
    <message>
        <source>A change between two rows of the log may lie anywhere between them.</source>
        <translation>Ein Wechsel zwischen zwei Zeilen des Logs kann überall dazwischen liegen.</translation>
    </message>
    <message>
        <source>A change of state placed a minute later moves it by a minute.</source>
        <translation>Ein um eine Minute später gesetzter Zustandswechsel verschiebt es um eine Minute.</translation>
    </message>
    <message>
        <source>A check takes two different meters: choose another one.</source>
        <translation>Eine Prüfung braucht zwei verschiedene Messgeräte: ein anderes wählen.</translation>
    </message>
    <message>
        <source>A column needs a name.</source>
        <translation>Eine Spalte braucht einen Namen.</translation>
    </message>
    <message>
        <source>A column&apos;s name has at most {most} letters; this one has {count}.</source>
        <translation>Der Name einer Spalte hat höchstens {most} Buchstaben; dieser hat {count}.</translation>
    </message>
    <message>
        <source>A cooler bed after the first layers</source>
        <translation>Ein kühleres Heizbett nach den ersten Schichten</translation>
    </message>
    <message>
        <source>A cooler bed can let the part come loose. How far one may go depends on material, plate and part: set your own limit, and try it on a part that may fail.</source>
        <translation>Auf einem kühleren Heizbett kann sich das Teil lösen. Wie weit man gehen darf, hängt von Material, Platte und Teil ab: eine eigene Grenze setzen und an einem Teil erproben, das misslingen darf.</translation>
    </message>
    <message>
        <source>A curve is taken only where the data demand it; this is its slope in the middle.</source>
        <translation>Eine Kurve wird nur genommen, wo die Daten sie verlangen; dies ist ihre Steigung in der Mitte.</translation>
    </message>
    <message>
        <source>A difference between two machines counts as shown where both the repeats alone (Welch’s test [2] for two machines, that of Games and Howell [3] for more) and the ratio with what the meters leave open (adjusted for all pairs by Holm’s way [4]) have a p below 0.05. Otherwise none is shown, which does not mean that there is no difference.</source>
        <translation>Ein Unterschied zwischen zwei Maschinen gilt als nachgewiesen, wo sowohl die Wiederholungen allein (Welch-Test [2] bei zwei Maschinen, Games-Howell-Test [3] bei mehr) als auch das Verhältnis mit dem, was die Messgeräte offen lassen (für alle Paare nach Holm [4] angepasst), ein p unter 0,05 haben. Sonst ist keiner nachgewiesen, was nicht heißt, dass es keinen Unterschied gibt.</translation>
    </message>
    <message>
        <source>A difference counts as shown where two tests say so: that of the repeats alone, and that of the ratio with what the meters leave open, adjusted for the number of pairs.</source>
        <translation>Ein Unterschied gilt als gezeigt, wo zwei Tests es sagen: der der Wiederholungen allein und der des Verhältnisses mit dem, was die Messgeräte offen lassen, angepasst an die Zahl der Paare.</translation>
    </message>
    <message>
        <source>A difference is shown</source>
        <translation>Unterschied nachgewiesen</translation>
    </message>
    <message>
        <source>A fair test</source>
        <translation>Ein fairer Versuch</translation>
    </message>
    <message>
        <source>A group&apos;s interval is that of the mean of its machines by Student&apos;s t; one machine has none.</source>
        <translation>Das Intervall einer Gruppe ist das des Mittels ihrer Maschinen nach Students t; eine einzige Maschine hat keines.</translation>
    </message>
    <message>
        <source>A held heater takes what is left of its step once it lets go.</source>
        <translation>Eine haltende Heizung braucht, was von ihrer Stufe bleibt, sobald sie nachlässt.</translation>
    </message>
    <message>
        <source>A hold test of this machine says what the bed draws at its temperature; that times the duration, and the warm-up, is the bed&apos;s.</source>
        <translation>Ein Halteversuch dieser Maschine sagt, was das Heizbett bei seiner Temperatur zieht; das mal die Dauer, dazu das Aufheizen, entfällt auf das Heizbett.</translation>
    </message>
    <message>
        <source>A hold test of this machine would tell the bed&apos;s part if the bed&apos;s temperature in the run were known: set the bed temperature of the test, or note that of the run.</source>
        <translation>Ein Halteversuch dieser Maschine würde den Anteil des Heizbetts nennen, wenn die Heizbetttemperatur im Lauf bekannt wäre: die Heizbetttemperatur des Versuchs setzen oder die des Laufs notieren.</translation>
    </message>
    <message>
        <source>A hold test: keep the bed at its temperature for an hour with nothing else running, and log it.</source>
        <translation>Ein Halteversuch: das Heizbett eine Stunde auf seiner Temperatur halten, ohne dass sonst etwas läuft, und aufzeichnen.</translation>
    </message>
    <message>
        <source>A hold test: machine cold and idle, meter logging every few seconds. Set the bed to a temperature, nothing else, and let it stand for an hour; then, if you can, 10 °C more for half an hour each. Note bed and room temperature. Drop the log here: a long stretch with the bed alone is found by itself, or mark one on the Logs page as a hold test.</source>
        <translation>Ein Halteversuch: Maschine kalt und untätig, Messgerät zeichnet alle paar Sekunden auf. Nur das Heizbett auf eine Temperatur stellen und eine Stunde stehen lassen; danach, wenn möglich, je eine halbe Stunde lang 10 °C mehr. Heizbett- und Raumtemperatur notieren. Das Log hierher ziehen: Ein langer Abschnitt mit dem Heizbett allein wird von selbst gefunden, oder einen auf der Seite „Logs“ als Halteversuch kennzeichnen.</translation>
    </message>
    <message>
        <source>A kWh &amp;costs</source>
        <translation>Eine kWh k&amp;ostet</translation>
    </message>
    <message>
        <source>A learnt level has no interval: it is the low end of what was drawn at rest.</source>
        <translation>Eine gelernte Leistungsstufe hat kein Intervall: Sie ist das untere Ende dessen, was in Ruhe gezogen wurde.</translation>
    </message>
    <message>
        <source>A line of your own under the charts</source>
        <translation>Eine eigene Zeile unter den Diagrammen</translation>
    </message>
    <message>
        <source>A line through the held temperatures, each weighted by how sure its watts are.</source>
        <translation>Eine Gerade durch die gehaltenen Temperaturen, jede danach gewichtet, wie sicher ihre Leistung ist.</translation>
    </message>
    <message>
        <source>A load measured alone may take other watts while the machine works.</source>
        <translation>Ein allein gemessener Verbraucher kann anders viel ziehen, während die Maschine arbeitet.</translation>
    </message>
    <message>
        <source>A log holds this run already, and knows more of it; of the row only its conditions were used.</source>
        <translation>Ein Log enthält diesen Lauf schon und weiß mehr davon; von der Zeile wurden nur die Bedingungen verwendet.</translation>
    </message>
    <message>
        <source>A log of a week of ordinary use, so that the rests are those of your work.</source>
        <translation>Ein Log über eine Woche gewöhnlicher Nutzung, damit die Pausen die der eigenen Arbeit sind.</translation>
    </message>
    <message>
        <source>A log of the bed alone stands beside one of the whole machine: choose this log&apos;s machine first, if it was taken for another</source>
        <translation>Ein Log nur vom Heizbett steht neben einem der ganzen Maschine: zuerst die Maschine dieses Logs wählen, falls es einer anderen zugeordnet wurde</translation>
    </message>
    <message>
        <source>A log with shorter intervals shows the edges better.</source>
        <translation>Ein Log mit kürzeren Intervallen zeigt die Ränder besser.</translation>
    </message>
    <message>
        <source>A log with shorter intervals, so that each pulse of the heater is seen.</source>
        <translation>Ein Log mit kürzeren Intervallen, damit jeder Puls der Heizung zu sehen ist.</translation>
    </message>
    <message>
        <source>A machine counts once, with the mean of its runs that count.</source>
        <translation>Eine Maschine zählt einmal, mit dem Mittel ihrer zählenden Läufe.</translation>
    </message>
    <message>
        <source>A measure against a property</source>
        <translation>Eine Messgröße gegen eine Eigenschaft</translation>
    </message>
    <message>
        <source>A measure of the machines against one of their properties</source>
        <translation>Eine Messgröße der Maschinen gegen eine ihrer Eigenschaften</translation>
    </message>
    <message>
        <source>A meter of better stated accuracy at a few watts; many are made for kilowatts.</source>
        <translation>Ein Messgerät mit besser angegebener Genauigkeit bei wenigen Watt; viele sind für Kilowatt gemacht.</translation>
    </message>
    <message>
        <source>A model stands between both values: believe the measured one first.</source>
        <translation>Zwischen beiden Werten steht ein Modell: zuerst dem gemessenen glauben.</translation>
    </message>
    <message>
        <source>A negative rest means that the loads were measured warmer, or held hotter, than in the part.</source>
        <translation>Ein negativer Rest heißt, dass die Verbraucher wärmer gemessen oder heißer gehalten wurden als beim Teil.</translation>
    </message>
    <message>
        <source>A p has no interval: it is a count of the orders, or divisions, that machines could have had.</source>
        <translation>Ein p hat kein Intervall: Es zählt die Reihenfolgen oder Aufteilungen, die die Maschinen hätten haben können.</translation>
    </message>
    <message>
        <source>A pale bar is shared: more runs do not lessen it.</source>
        <translation>Ein blasser Balken ist gemeinsam: Mehr Läufe verringern ihn nicht.</translation>
    </message>
    <message>
        <source>A picture needs one machine at least; all are shown again.</source>
        <translation>Ein Bild braucht mindestens eine Maschine; alle werden wieder gezeigt.</translation>
    </message>
    <message>
        <source>A point that could matter more than this could make a difference that is none.</source>
        <translation>Ein Punkt, der mehr als das ausmachen könnte, könnte einen Unterschied vortäuschen.</translation>
    </message>
    <message>
        <source>A print</source>
        <translation>Ein Druck</translation>
    </message>
    <message>
        <source>A print of {hours} h on {machine} costs least when it starts at {time}: {least}, against {most} at {other_time}</source>
        <translation>Ein Druck von {hours} h auf {machine} kostet am wenigsten, wenn er um {time} beginnt: {least}, gegen {most} um {other_time}</translation>
    </message>
    <message>
        <source>A print of {hours} h taken apart</source>
        <translation>Ein Druck von {hours} h, zerlegt</translation>
    </message>
    <message>
        <source>A print of {hours} takes {energy} on {machine} and {other_energy} on {other}, warm-up included.</source>
        <translation>Ein Druck von {hours} braucht {energy} auf {machine} und {other_energy} auf {other}, Aufheizen inbegriffen.</translation>
    </message>
    <message>
        <source>A print of {hours} takes {energy} on {machine}, warm-up included.</source>
        <translation>Ein Druck von {hours} braucht {energy} auf {machine}, Aufheizen inbegriffen.</translation>
    </message>
    <message>
        <source>A print taken apart</source>
        <translation>Ein Druck, zerlegt</translation>
    </message>
    <message>
        <source>A report that stands on its own, every table, and a bundle from which others can compute every figure again.</source>
        <translation>Ein Bericht, der für sich steht, jede Tabelle und ein Bündel, aus dem andere jede Zahl nachrechnen können.</translation>
    </message>
    <message>
        <source>A rest is a stretch with neither a run nor a test; the longest tells how far the logs reach.</source>
        <translation>Eine Pause ist ein Abschnitt ohne Lauf und ohne Versuch; die längste sagt, wie weit die Logs reichen.</translation>
    </message>
    <message>
        <source>A run as long as the print: other parts may move faster, cool more, or heat the bed less.</source>
        <translation>Ein Lauf so lang wie der Druck: Andere Teile können schneller gefahren, mehr gekühlt oder mit weniger Heizbett gefertigt werden.</translation>
    </message>
    <message>
        <source>A run of the same part with the bed off, where the part allows it: the difference is the bed&apos;s.</source>
        <translation>Ein Lauf desselben Teils ohne Heizbett, wo das Teil es erlaubt: Der Unterschied entfällt auf das Heizbett.</translation>
    </message>
    <message>
        <source>A same-load check in Wh needs its start and end; this one was not used.</source>
        <translation>Eine Prüfung an gleicher Last in Wh braucht Beginn und Ende; diese wurde nicht verwendet.</translation>
    </message>
    <message>
        <source>A same-load check takes two filled rows with the same name and two meters; this one was not used.</source>
        <translation>Eine Prüfung an gleicher Last braucht zwei ausgefüllte Zeilen mit gleichem Namen und zwei Messgeräten; diese wurde nicht verwendet.</translation>
    </message>
    <message>
        <source>A second meter measured the bed alone.</source>
        <translation>Ein zweites Messgerät maß das Heizbett allein.</translation>
    </message>
    <message>
        <source>A second meter, or a channel of its own, measured the heated bed and nothing else</source>
        <translation>Ein zweites Messgerät oder ein eigener Kanal maß das Heizbett und sonst nichts</translation>
    </message>
    <message>
        <source>A spreadsheet with a sheet for each table, and one for the method</source>
        <translation>Eine Arbeitsmappe mit einem Blatt je Tabelle und einem für die Methode</translation>
    </message>
    <message>
        <source>A straight line is a local description: it holds between the held temperatures.</source>
        <translation>Eine Gerade ist eine örtliche Beschreibung: Sie gilt zwischen den gehaltenen Temperaturen.</translation>
    </message>
    <message>
        <source>A switch-on test was marked, but no step stands out in it.</source>
        <translation>Ein Einschaltversuch ist gekennzeichnet, aber keine Stufe hebt sich darin ab.</translation>
    </message>
    <message>
        <source>A switch-on test: machine on and idle, meter logging every second or few. After five minutes turn on one load and wait three minutes, then the next: fans, motors, hot end, last the bed. Let a heater reach its temperature and hold it before you go on. Drop the log here: a staircase is found by itself, or mark a stretch on the Logs page as a switch-on test. Use the machine&apos;s own controls only: never open it, and keep away from mains and hot parts.</source>
        <translation>Ein Einschaltversuch: Maschine an und untätig, Messgerät zeichnet jede Sekunde oder alle paar Sekunden auf. Nach fünf Minuten einen Verbraucher einschalten und drei Minuten warten, dann den nächsten: Lüfter, Motoren, Hotend, zuletzt das Heizbett. Eine Heizung ihre Temperatur erreichen und halten lassen, bevor es weitergeht. Das Log hierher ziehen: Eine Treppe wird von selbst gefunden, oder einen Abschnitt auf der Seite „Logs“ als Einschaltversuch kennzeichnen. Nur die Bedienung der Maschine selbst verwenden: sie nie öffnen und von Netzspannung und heißen Teilen fernbleiben.</translation>
    </message>
    <message>
        <source>A test of several temperatures is told by its log alone.</source>
        <translation>Über einen Versuch mit mehreren Temperaturen gibt allein sein Log Auskunft.</translation>
    </message>
    <message>
        <source>A value stands for</source>
        <translation>Ein Wert steht für</translation>
    </message>
    <message>
        <source>A weighted line through the held temperatures tells the watts at the temperature asked for.</source>
        <translation>Eine gewichtete Gerade durch die gehaltenen Temperaturen gibt die Leistung bei der gefragten Temperatur.</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Im Jahr</translation>
    </message>
    <message>
        <source>A year of it [kWh]</source>
        <translation>Davon im Jahr [kWh]</translation>
    </message>
    <message>
        <source>A year of it: {yearly} kWh ({hours_per_year} h)</source>
        <translation>Ein Jahr davon: {yearly} kWh ({hours_per_year} h)</translation>
    </message>
    <message>
        <source>A zip with logs, readings, runs and results; opens in Samepart</source>
        <translation>Eine ZIP-Datei mit Logs, Ablesungen, Läufen und Ergebnissen; lässt sich mit Samepart öffnen</translation>
    </message>
    <message>
        <source>A&amp;gainst</source>
        <translation>&amp;Gegen</translation>
    </message>
    <message>
        <source>A&amp;rrange</source>
        <translation>An&amp;ordnen</translation>
    </message>
    <message>
        <source>About Samepart</source>
        <translation>Über Samepart</translation>
    </message>
    <message>
        <source>About this &amp;page</source>
        <translation>Über diese &amp;Seite</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Hinnehmen</translation>
    </message>
    <message>
        <source>Accept a point of fairness</source>
        <translation>Einen Punkt der Fairness hinnehmen</translation>
    </message>
    <message>
        <source>Accept with a reason</source>
        <translation>Mit Begründung hinnehmen</translation>
    </message>
    <message>
        <source>Accept with a reason…</source>
        <translation>Mit Begründung hinnehmen…</translation>
    </message>
    <message>
        <source>Accepted ({why})</source>
        <translation>Hingenommen ({why})</translation>
    </message>
    <message>
        <source>Accepted because</source>
        <translation>Hingenommen, weil</translation>
    </message>
    <message>
        <source>Accepted earlier, and no longer found</source>
        <translation>Früher hingenommen und nicht mehr gefunden</translation>
    </message>
    <message>
        <source>Accepted when it was less grave (“{why}”); that holds no longer.</source>
        <translation>Hingenommen, als es weniger schwer wog („{why}“); das gilt nicht mehr.</translation>
    </message>
    <message>
        <source>Accepted, and not counted</source>
        <translation>Hingenommen und nicht gezählt</translation>
    </message>
    <message>
        <source>Accepted, with the reason</source>
        <translation>Hingenommen, mit Begründung</translation>
    </message>
    <message>
        <source>Accepted; it is listed below</source>
        <translation>Hingenommen; es steht unten in der Liste</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>Accuracy as a share of the reading</source>
        <translation>Genauigkeit als Anteil der Anzeige</translation>
    </message>
    <message>
        <source>Accuracy not stated</source>
        <translation>Genauigkeit nicht angegeben</translation>
    </message>
    <message>
        <source>Accuracy that does not depend on the reading</source>
        <translation>Genauigkeit, die nicht von der Anzeige abhängt</translation>
    </message>
    <message>
        <source>Add a &amp;folder of logs…</source>
        <translation>&amp;Ordner mit Logs hinzufügen…</translation>
    </message>
    <message>
        <source>Add a check of {names}</source>
        <translation>Prüfung von {names} hinzufügen</translation>
    </message>
    <message>
        <source>Add a folder of logs</source>
        <translation>Einen Ordner mit Logs hinzufügen</translation>
    </message>
    <message>
        <source>Add a reading of {name}</source>
        <translation>Eine Ablesung von {name} hinzufügen</translation>
    </message>
    <message>
        <source>Add meter logs</source>
        <translation>Logs hinzufügen</translation>
    </message>
    <message>
        <source>Add the check</source>
        <translation>Prüfung hinzufügen</translation>
    </message>
    <message>
        <source>Add the column {name}</source>
        <translation>Spalte {name} hinzufügen</translation>
    </message>
    <message>
        <source>Add the prices of {name}</source>
        <translation>Preise aus {name} hinzufügen</translation>
    </message>
    <message>
        <source>Add the run</source>
        <translation>Lauf hinzufügen</translation>
    </message>
    <message>
        <source>Add to what is published</source>
        <translation>Zum Veröffentlichten hinzufügen</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation>{name} hinzufügen</translation>
    </message>
    <message>
        <source>Added to the Publish page</source>
        <translation>Zur Seite „Veröffentlichen“ hinzugefügt</translation>
    </message>
    <message>
        <source>After the test</source>
        <translation>Nach dem Versuch</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Gegen</translation>
    </message>
    <message>
        <source>Against a property</source>
        <translation>Gegen eine Eigenschaft</translation>
    </message>
    <message>
        <source>Against p&amp;roperty:</source>
        <translation>Gegen Eigenscha&amp;ft:</translation>
    </message>
    <message>
        <source>Against “{name}”: {advice}{gain}.</source>
        <translation>Gegen „{name}“: {advice}{gain}.</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>&amp;All tables…</source>
        <translation>Alle Tab&amp;ellen…</translation>
    </message>
    <message>
        <source>All files</source>
        <translation>Alle Dateien</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>All machines: standby of a year</source>
        <translation>Alle Maschinen: Bereitschaft eines Jahres</translation>
    </message>
    <message>
        <source>All numbers are invented: this is a demonstration.</source>
        <translation>Alle Zahlen sind erfunden: Dies ist eine Vorführung.</translation>
    </message>
    <message>
        <source>All {count:figure|figures} came out as its maker has them, to the last digit kept.</source>
        <translation>Alle {count:Zahl|Zahlen} stimmen mit denen des Erstellers überein, bis zur letzten gespeicherten Stelle.</translation>
    </message>
    <message>
        <source>All {count} machines have the same {measure}: there is no difference to explain.</source>
        <translation>Alle {count} Maschinen haben den gleichen Wert für „{measure}“: Es gibt keinen Unterschied zu erklären.</translation>
    </message>
    <message>
        <source>All {count} machines have the same {property} ({value}): it cannot tell why they differ.</source>
        <translation>Alle {count} Maschinen haben den gleichen Wert für „{property}“ ({value}): Er kann nicht erklären, warum sie sich unterscheiden.</translation>
    </message>
    <message>
        <source>All {count} machines have the same {property}: it cannot tell why they differ.</source>
        <translation>Alle {count} Maschinen haben den gleichen Wert für „{property}“: Er kann nicht erklären, warum sie sich unterscheiden.</translation>
    </message>
    <message>
        <source>An archive lies inside an archive inside an archive. Unpack it first.</source>
        <translation>Ein Archiv liegt in einem Archiv in einem Archiv. Es zuerst entpacken.</translation>
    </message>
    <message>
        <source>Another</source>
        <translation>Weitere</translation>
    </message>
    <message>
        <source>Another table begins before this line, with other headings. Put each table into a file of its own.</source>
        <translation>Vor dieser Zeile beginnt eine andere Tabelle mit anderen Überschriften. Jede Tabelle in eine eigene Datei schreiben.</translation>
    </message>
    <message>
        <source>Another table with other headings begins further down and was left out. Put it into its own file.</source>
        <translation>Weiter unten beginnt eine andere Tabelle mit anderen Überschriften; sie blieb weg. Sie in eine eigene Datei schreiben.</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>Apr</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>Area of one face (dm²)</source>
        <translation>Fläche einer Seite (dm²)</translation>
    </message>
    <message>
        <source>Article, 1600 × 900</source>
        <translation>Artikel, 1600 × 900</translation>
    </message>
    <message>
        <source>As it was noted with the readings of the display.</source>
        <translation>Wie mit den Ablesungen der Anzeige notiert.</translation>
    </message>
    <message>
        <source>As many prints of that length as the hours of a year hold, one warm-up each.</source>
        <translation>So viele Drucke dieser Dauer, wie die Stunden eines Jahres fassen, jeder mit einmal Aufheizen.</translation>
    </message>
    <message>
        <source>As shown…</source>
        <translation>Wie gezeigt…</translation>
    </message>
    <message>
        <source>As suits the runs</source>
        <translation>Passend zu den Läufen</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Desktop</translation>
    </message>
    <message>
        <source>Assign {name}</source>
        <translation>{name} zuordnen</translation>
    </message>
    <message>
        <source>Assumed: nobody has stated this meter&apos;s accuracy yet</source>
        <translation>Angenommen: Die Genauigkeit dieses Messgeräts hat noch niemand angegeben</translation>
    </message>
    <message>
        <source>At the first layer the bed was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; set one temperature for all.</source>
        <translation>Bei der ersten Schicht hatte das Heizbett bei {machines} {own:.0f} °C und bei {others} {usual:.0f} °C; für alle dieselbe Temperatur einstellen.</translation>
    </message>
    <message>
        <source>At the first layer the nozzle was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; set one temperature for all.</source>
        <translation>Bei der ersten Schicht hatte die Düse bei {machines} {own:.0f} °C und bei {others} {usual:.0f} °C; für alle dieselbe Temperatur einstellen.</translation>
    </message>
    <message>
        <source>At the plug, from the log’s power by what each value stands for (sampled, averaged, on change) or from its energy counter, whichever is less unsure; over gaps the counter decides, else the whole plausible range counts as uncertainty.</source>
        <translation>An der Steckdose, aus der Leistung im Log nach der Bedeutung jedes Werts (abgetastet, gemittelt, bei Änderung) oder aus dem Energiezähler, je nachdem, was weniger unsicher ist; über Lücken entscheidet der Zähler, sonst gilt der ganze plausible Bereich als Unsicherheit.</translation>
    </message>
    <message>
        <source>At the same t&amp;ime:</source>
        <translation>&amp;Gleichzeitig:</translation>
    </message>
    <message>
        <source>At the same time</source>
        <translation>Gleichzeitig</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>Aug</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>Back to the number</source>
        <translation>Zurück zur Zahl</translation>
    </message>
    <message>
        <source>Bands alone</source>
        <translation>Nur Bänder</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Heizbett</translation>
    </message>
    <message>
        <source>Bed (°C)</source>
        <translation>Heizbett (°C)</translation>
    </message>
    <message>
        <source>Bed [°C]</source>
        <translation>Heizbett [°C]</translation>
    </message>
    <message>
        <source>Bed above room</source>
        <translation>Heizbett über Raum</translation>
    </message>
    <message>
        <source>Bed alone</source>
        <translation>Nur Heizbett</translation>
    </message>
    <message>
        <source>Bed area (dm²)</source>
        <translation>Heizbettfläche (dm²)</translation>
    </message>
    <message>
        <source>Bed area of {name} in dm²</source>
        <translation>Heizbettfläche von {name} in dm²</translation>
    </message>
    <message>
        <source>Bed at the first layer in degrees</source>
        <translation>Heizbett bei der ersten Schicht in Grad</translation>
    </message>
    <message>
        <source>Bed at the start</source>
        <translation>Heizbett zu Beginn</translation>
    </message>
    <message>
        <source>Bed by</source>
        <translation>Heizbett nach</translation>
    </message>
    <message>
        <source>Bed held [W]</source>
        <translation>Heizbett gehalten [W]</translation>
    </message>
    <message>
        <source>Bed share</source>
        <translation>Heizbettanteil</translation>
    </message>
    <message>
        <source>Bed share [%]</source>
        <translation>Heizbettanteil [%]</translation>
    </message>
    <message>
        <source>Bed supply</source>
        <translation>Heizbettspeisung</translation>
    </message>
    <message>
        <source>Bed temperature</source>
        <translation>Heizbetttemperatur</translation>
    </message>
    <message>
        <source>Bed temperature during the hold test</source>
        <translation>Heizbetttemperatur während des Halteversuchs</translation>
    </message>
    <message>
        <source>Bed watts per area</source>
        <translation>Heizbettleistung je Fläche</translation>
    </message>
    <message>
        <source>Bed {bed} °C, room {room} °C, each run begun with a bed at room temperature, each machine at its own duration.</source>
        <translation>Heizbett {bed} °C, Raum {room} °C, jeder Lauf mit einem Heizbett bei Raumtemperatur begonnen, jede Maschine mit ihrer eigenen Dauer.</translation>
    </message>
    <message>
        <source>Bed {bed} °C, room {room} °C, each run begun with a bed at room temperature, processing for {length} each.</source>
        <translation>Heizbett {bed} °C, Raum {room} °C, jeder Lauf mit einem Heizbett bei Raumtemperatur begonnen, Fertigung je {length}.</translation>
    </message>
    <message>
        <source>Bed °C</source>
        <translation>Heizbett °C</translation>
    </message>
    <message>
        <source>Bed&apos;s temperature by</source>
        <translation>Heizbetttemperatur nach</translation>
    </message>
    <message>
        <source>Bed, first layer</source>
        <translation>Heizbett, erste Schicht</translation>
    </message>
    <message>
        <source>Beds</source>
        <translation>Heizbetten</translation>
    </message>
    <message>
        <source>Beds held warm</source>
        <translation>Warm gehaltene Heizbetten</translation>
    </message>
    <message>
        <source>Beds.</source>
        <translation>Heizbetten.</translation>
    </message>
    <message>
        <source>Beds: one row a machine, one column a measure</source>
        <translation>Heizbetten: eine Zeile je Maschine, eine Spalte je Messgröße</translation>
    </message>
    <message>
        <source>Before or after the test</source>
        <translation>Vor oder nach dem Versuch</translation>
    </message>
    <message>
        <source>Before the test</source>
        <translation>Vor dem Versuch</translation>
    </message>
    <message>
        <source>Before the test: plan it, so that it will be fair. After it, what was not alike is listed here.</source>
        <translation>Vor dem Versuch: ihn planen, damit er fair wird. Danach steht hier, was nicht gleich war.</translation>
    </message>
    <message>
        <source>Between columns</source>
        <translation>Zwischen Spalten</translation>
    </message>
    <message>
        <source>Between runs {short_machine} rested {short} and {long_machine} {long} (medians): a bed that is still warm spares a part of the warm-up; let all cool to the same temperature.</source>
        <translation>Zwischen den Läufen ruhte {short_machine} {short} und {long_machine} {long} (Mediane): Ein noch warmes Heizbett erspart einen Teil des Aufheizens; alle auf dieselbe Temperatur abkühlen lassen.</translation>
    </message>
    <message>
        <source>Beyond the held temperatures: scaled by the law of a plate&apos;s loss, with a wider interval.</source>
        <translation>Jenseits der gehaltenen Temperaturen: umgerechnet nach dem Gesetz des Wärmeverlusts einer Platte, mit weiterem Intervall.</translation>
    </message>
    <message>
        <source>Black on white</source>
        <translation>Schwarz auf Weiß</translation>
    </message>
    <message>
        <source>Bloc&amp;ks (runs of each):</source>
        <translation>Bl&amp;öcke (Läufe je Maschine):</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Block {block} of {blocks}</source>
        <translation>Block {block} von {blocks}</translation>
    </message>
    <message>
        <source>Blocks: runs of each machine</source>
        <translation>Blöcke: Läufe je Maschine</translation>
    </message>
    <message>
        <source>Both logs are set on their clocks. Two meters err each for itself; of one the gain cancels.</source>
        <translation>Beide Logs sind nach ihren Uhren ausgerichtet. Zwei Messgeräte irren jedes für sich; bei einem hebt sich die Verstärkung auf.</translation>
    </message>
    <message>
        <source>Boundary</source>
        <translation>Systemgrenze</translation>
    </message>
    <message>
        <source>Bundle</source>
        <translation>Bündel</translation>
    </message>
    <message>
        <source>Bundle (*{suffix})</source>
        <translation>Bündel (*{suffix})</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>By a meter of its own, of the watts at the plug {shares} reach the bed; the rest is lost in its supply and on the way.</source>
        <translation>Laut eigenem Messgerät erreichen von der Leistung am Stecker {shares} das Heizbett; der Rest geht in der Speisung und unterwegs verloren.</translation>
    </message>
    <message>
        <source>By all but the one that lies farthest off</source>
        <translation>Nach allen außer dem, das am weitesten abliegt</translation>
    </message>
    <message>
        <source>By all windows, the settled and the others</source>
        <translation>Nach allen Fenstern, den gleichmäßigen und den übrigen</translation>
    </message>
    <message>
        <source>By itself it has no interval: it is a part of the print&apos;s energy, and that has one.</source>
        <translation>Für sich hat es kein Intervall: Es ist ein Teil der Energie des Drucks, und die hat eines.</translation>
    </message>
    <message>
        <source>By the checks on one load {meter} most likely reads {error} too {way}, more than its accuracy of ±{limit} % allows; repeat the check, state the accuracy anew, or use another meter.</source>
        <translation>Nach den Prüfungen an gleicher Last zeigt {meter} höchstwahrscheinlich {error} zu {way} an, mehr als die Genauigkeit von ±{limit} % erlaubt; die Prüfung wiederholen, die Genauigkeit neu angeben oder ein anderes Messgerät verwenden.</translation>
    </message>
    <message>
        <source>CO₂ facto&amp;r</source>
        <translation>C&amp;O₂-Faktor</translation>
    </message>
    <message>
        <source>CO2 of the print</source>
        <translation>CO2 des Drucks</translation>
    </message>
    <message>
        <source>CO₂ [g]</source>
        <translation>CO₂ [g]</translation>
    </message>
    <message>
        <source>CO₂ at {grams} g/kWh ({source}).</source>
        <translation>CO₂ mit {grams} g/kWh ({source}).</translation>
    </message>
    <message>
        <source>CO₂ source</source>
        <translation>CO₂-Quelle</translation>
    </message>
    <message>
        <source>CSV, full precision (*.csv)</source>
        <translation>CSV, volle Genauigkeit (*.csv)</translation>
    </message>
    <message>
        <source>Calendar of operating states by hour, one row a week from Monday to Sunday: {weeks:week|weeks} of {machines:machine|machines}</source>
        <translation>Kalender der Betriebszustände nach Stunden, eine Zeile je Woche von Montag bis Sonntag: {weeks:Woche|Wochen}, {machines:Maschine|Maschinen}</translation>
    </message>
    <message>
        <source>Call a step {load}</source>
        <translation>Eine Stufe benennen: {load}</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Change how energy is priced</source>
        <translation>Ändern, wie Energie bepreist wird</translation>
    </message>
    <message>
        <source>Change how {file_name} is read</source>
        <translation>Ändern, wie {file_name} gelesen wird</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Change the check of {names}</source>
        <translation>Prüfung von {names} ändern</translation>
    </message>
    <message>
        <source>Change the costs</source>
        <translation>Kosten ändern</translation>
    </message>
    <message>
        <source>Change the costs of {name}</source>
        <translation>Kosten von {name} ändern</translation>
    </message>
    <message>
        <source>Change the one property on one machine and measure again: only that shows a cause.</source>
        <translation>Die eine Eigenschaft an einer Maschine ändern und neu messen: Nur das zeigt eine Ursache.</translation>
    </message>
    <message>
        <source>Change the price bands</source>
        <translation>Preisstufen ändern</translation>
    </message>
    <message>
        <source>Change what is published</source>
        <translation>Ändern, was veröffentlicht wird</translation>
    </message>
    <message>
        <source>Change {name}</source>
        <translation>{name} ändern</translation>
    </message>
    <message>
        <source>Chart of {quantities} against {x}, {runs:run|runs} of {machines}</source>
        <translation>Diagramm: {quantities} gegen {x}, {runs:Lauf|Läufe} ({machines})</translation>
    </message>
    <message>
        <source>Chart of {y} against {x}</source>
        <translation>Diagramm: {y} gegen {x}</translation>
    </message>
    <message>
        <source>Chart of {y} against {x}, both from zero</source>
        <translation>Diagramm: {y} gegen {x}, beide ab null</translation>
    </message>
    <message>
        <source>Chart of {y} step by step</source>
        <translation>Diagramm: {y} Schritt für Schritt</translation>
    </message>
    <message>
        <source>Chart with one row for each of {rows} and one column each for {titles}</source>
        <translation>Diagramm mit je einer Zeile ({rows}) und je einer Spalte für {titles}</translation>
    </message>
    <message>
        <source>Chart {place} of {of}: {text}</source>
        <translation>Diagramm {place} von {of}: {text}</translation>
    </message>
    <message>
        <source>Choose logs…</source>
        <translation>Logs wählen…</translation>
    </message>
    <message>
        <source>Choose this run on every page</source>
        <translation>Diesen Lauf auf allen Seiten wählen</translation>
    </message>
    <message>
        <source>Chosen co&amp;lumn:</source>
        <translation>Gewählt&amp;e Spalte:</translation>
    </message>
    <message>
        <source>Click a stretch, or press ← and → on a lane. Drag its edges; Enter chooses an edge for the arrow keys. Shift and drag marks a new stretch.</source>
        <translation>Einen Abschnitt anklicken oder in einer Spur ← und → drücken. Seine Ränder ziehen; die Eingabetaste wählt einen Rand für die Pfeiltasten. Mit Umschalt und Ziehen einen neuen Abschnitt markieren.</translation>
    </message>
    <message>
        <source>Click to rename the study</source>
        <translation>Klicken, um die Studie umzubenennen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the window; every edit is saved already</source>
        <translation>Das Fenster schließen; jede Änderung ist schon gespeichert</translation>
    </message>
    <message>
        <source>Coarse steps</source>
        <translation>Grobe Stufen</translation>
    </message>
    <message>
        <source>Cold start: before each run the machine has stood switched on, heaters off, for {wait} or longer.</source>
        <translation>Kaltstart: Vor jedem Lauf war die Maschine {wait} oder länger eingeschaltet, bei ausgeschalteten Heizungen.</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>Farbe&amp;n</translation>
    </message>
    <message>
        <source>Colour and marker</source>
        <translation>Farbe und Zeichen</translation>
    </message>
    <message>
        <source>Colours of the picture</source>
        <translation>Farben des Bildes</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Commas stand both between the cells and within numbers, and it is not clear which are which: {row}. Export it with semicolons between the cells, with quotes around them, or with decimal points.</source>
        <translation>Kommas stehen zwischen den Zellen und auch in Zahlen, und es ist nicht klar, welche welche sind: {row}. Mit Semikolons zwischen den Zellen, mit Anführungszeichen um sie oder mit Dezimalpunkten exportieren.</translation>
    </message>
    <message>
        <source>Common conditions: {conditions}. {length}</source>
        <translation>Gemeinsame Bedingungen: {conditions}. {length}</translation>
    </message>
    <message>
        <source>Common drift</source>
        <translation>Gemeinsame Drift</translation>
    </message>
    <message>
        <source>Common length of processing in minutes</source>
        <translation>Gemeinsame Dauer der Fertigung in Minuten</translation>
    </message>
    <message>
        <source>Common temperature of the beds in degrees</source>
        <translation>Gemeinsame Temperatur der Heizbetten in Grad</translation>
    </message>
    <message>
        <source>Common temperature of the room in degrees</source>
        <translation>Gemeinsame Raumtemperatur in Grad</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Compare like for like</source>
        <translation>Gleiches mit Gleichem vergleichen</translation>
    </message>
    <message>
        <source>Compare processing only</source>
        <translation>Nur die Fertigung vergleichen</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Comparison as a table</source>
        <translation>Vergleich als Tabelle</translation>
    </message>
    <message>
        <source>Comparison: one row a machine, one column a measure</source>
        <translation>Vergleich: eine Zeile je Maschine, eine Spalte je Messgröße</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Cooler bed</source>
        <translation>Kühleres Heizbett</translation>
    </message>
    <message>
        <source>Cop&amp;y</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Kopiert</translation>
    </message>
    <message>
        <source>Copied the picture and its numbers</source>
        <translation>Das Bild und seine Zahlen wurden kopiert</translation>
    </message>
    <message>
        <source>Copied the picture and the list</source>
        <translation>Das Bild und die Liste wurden kopiert</translation>
    </message>
    <message>
        <source>Copied the table</source>
        <translation>Die Tabelle wurde kopiert</translation>
    </message>
    <message>
        <source>Copied what the picture shows in words</source>
        <translation>Kopiert, was das Bild zeigt, in Worten</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy all of this as text, to be pasted into a report</source>
        <translation>All das als Text kopieren, zum Einfügen in einen Bericht</translation>
    </message>
    <message>
        <source>Copy as &amp;words</source>
        <translation>Als &amp;Worte kopieren</translation>
    </message>
    <message>
        <source>Copy text</source>
        <translation>Text kopieren</translation>
    </message>
    <message>
        <source>Copy the first chart&apos;s picture and its numbers (Ctrl+C on a chart)</source>
        <translation>Das Bild des ersten Diagramms und seine Zahlen kopieren (Strg+C auf einem Diagramm)</translation>
    </message>
    <message>
        <source>Copy the lane</source>
        <translation>Die Spur kopieren</translation>
    </message>
    <message>
        <source>Copy the lane&apos;s picture and its stretches as numbers</source>
        <translation>Das Bild der Spur und ihre Abschnitte als Zahlen kopieren</translation>
    </message>
    <message>
        <source>Copy the picture and its numbers (Ctrl+C on a chart); or drag a chart into another program</source>
        <translation>Das Bild und seine Zahlen kopieren (Strg+C auf einem Diagramm); oder ein Diagramm in ein anderes Programm ziehen</translation>
    </message>
    <message>
        <source>Copy the picture and its numbers (Ctrl+C on the chart)</source>
        <translation>Das Bild und seine Zahlen kopieren (Strg+C auf dem Diagramm)</translation>
    </message>
    <message>
        <source>Copy the picture and its numbers (Ctrl+C on the picture)</source>
        <translation>Das Bild und seine Zahlen kopieren (Strg+C auf dem Bild)</translation>
    </message>
    <message>
        <source>Copy the picture and the list of points (Ctrl+C on the chart)</source>
        <translation>Das Bild und die Liste der Punkte kopieren (Strg+C auf dem Diagramm)</translation>
    </message>
    <message>
        <source>Copy the picture of the beds and the held temperatures (Ctrl+C on a chart)</source>
        <translation>Das Bild der Heizbetten und die gehaltenen Temperaturen kopieren (Strg+C auf einem Diagramm)</translation>
    </message>
    <message>
        <source>Copy what the picture shows in words, for readers who cannot see it</source>
        <translation>In Worten kopieren, was das Bild zeigt, für Lesende, die es nicht sehen können</translation>
    </message>
    <message>
        <source>Cost of a print by the time of day at which it starts</source>
        <translation>Kosten eines Drucks nach der Uhrzeit seines Beginns</translation>
    </message>
    <message>
        <source>Cost of a year</source>
        <translation>Kosten eines Jahres</translation>
    </message>
    <message>
        <source>Cost of it</source>
        <translation>Kosten dafür</translation>
    </message>
    <message>
        <source>Could matter [Wh]</source>
        <translation>Könnte ausmachen [Wh]</translation>
    </message>
    <message>
        <source>Could matter {energy} Wh.</source>
        <translation>Könnte {energy} Wh ausmachen.</translation>
    </message>
    <message>
        <source>Could matter, each part</source>
        <translation>Könnte ausmachen, je Teil</translation>
    </message>
    <message>
        <source>Count it</source>
        <translation>Mitzählen</translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation>Wieder mitzählen</translation>
    </message>
    <message>
        <source>Count it as a run of the part</source>
        <translation>Als Lauf des Teils mitzählen</translation>
    </message>
    <message>
        <source>Count {boundary}</source>
        <translation>Zählen: {boundary}</translation>
    </message>
    <message>
        <source>Counted from the end of warm-up to the end of processing.</source>
        <translation>Gezählt vom Ende des Aufheizens bis zum Ende der Fertigung.</translation>
    </message>
    <message>
        <source>Counted from the first heating to the end of processing.</source>
        <translation>Gezählt vom ersten Heizen bis zum Ende der Fertigung.</translation>
    </message>
    <message>
        <source>Counted from the first heating until the machine is back at standby.</source>
        <translation>Gezählt vom ersten Heizen, bis die Maschine wieder in Bereitschaft ist.</translation>
    </message>
    <message>
        <source>Counting {boundary}: {value}</source>
        <translation>Gezählt ({boundary}): {value}</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Zählt</translation>
    </message>
    <message>
        <source>Currency, any symbol or code</source>
        <translation>Währung, beliebiges Zeichen oder Kürzel</translation>
    </message>
    <message>
        <source>Cut the stretch in two where the pointer is</source>
        <translation>Den Abschnitt an der Stelle des Zeigers teilen</translation>
    </message>
    <message>
        <source>Cutting the power at the plug while the hot end is hot also stops its cooling fan, and plastic may set in it: let it cool first.</source>
        <translation>Den Strom am Stecker zu trennen, solange das Hotend heiß ist, hält auch seinen Lüfter an, und Kunststoff kann darin erstarren: zuerst abkühlen lassen.</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Dashed lines through zero are equal mean power: {watts}</source>
        <translation>Gestrichelte Linien durch null sind gleiche mittlere Leistung: {watts}</translation>
    </message>
    <message>
        <source>Dashed, for reference: {limits} ({document}, from {date}); a material-extrusion machine is not named there, and this is no test after it.</source>
        <translation>Gestrichelt, zum Vergleich: {limits} ({document}, ab {date}); eine Maschine zur Materialextrusion ist dort nicht genannt, und dies ist keine Prüfung danach.</translation>
    </message>
    <message>
        <source>Day and month could be either in {sample}; taken as {taken}: {why}. Set the order in the Reading panel if it is wrong.</source>
        <translation>Tag und Monat könnten in {sample} beides sein; gelesen als: {taken} ({why}). Falls das falsch ist, die Reihenfolge unter „Einlesen“ setzen.</translation>
    </message>
    <message>
        <source>Day and month could be either; taken as {taken}, because only so time runs on evenly.</source>
        <translation>Tag und Monat könnten beides sein; gelesen als: {taken}, weil nur so die Zeit gleichmäßig läuft.</translation>
    </message>
    <message>
        <source>Days of band {place}</source>
        <translation>Tage der Preisstufe {place}</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>Dez</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Device in it</source>
        <translation>Gerät darin</translation>
    </message>
    <message>
        <source>Diagnostics</source>
        <translation>Diagnose</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Difference from a run</source>
        <translation>Unterschied zu einem Lauf</translation>
    </message>
    <message>
        <source>Difference looked for [%]</source>
        <translation>Gesuchter Unterschied [%]</translation>
    </message>
    <message>
        <source>Difference of the two means, p by all {ways} ways to divide {count} machines so</source>
        <translation>Unterschied der zwei Mittel, p aus allen {ways} Arten, {count} Maschinen so zu teilen</translation>
    </message>
    <message>
        <source>Difference shown</source>
        <translation>Unterschied nachgewiesen</translation>
    </message>
    <message>
        <source>Difference to be shown, in percent</source>
        <translation>Nachzuweisender Unterschied, in Prozent</translation>
    </message>
    <message>
        <source>Differences.</source>
        <translation>Unterschiede.</translation>
    </message>
    <message>
        <source>Displa&amp;ys in:</source>
        <translation>An&amp;zeige in:</translation>
    </message>
    <message>
        <source>Display after</source>
        <translation>Anzeige nachher</translation>
    </message>
    <message>
        <source>Display at end ({unit})</source>
        <translation>Anzeige am Ende ({unit})</translation>
    </message>
    <message>
        <source>Display at end [{unit}]</source>
        <translation>Anzeige am Ende [{unit}]</translation>
    </message>
    <message>
        <source>Display at start ({unit})</source>
        <translation>Anzeige zu Beginn ({unit})</translation>
    </message>
    <message>
        <source>Display at start [{unit}]</source>
        <translation>Anzeige zu Beginn [{unit}]</translation>
    </message>
    <message>
        <source>Display before</source>
        <translation>Anzeige vorher</translation>
    </message>
    <message>
        <source>Doing nothing</source>
        <translation>Nichtstun</translation>
    </message>
    <message>
        <source>Doing nothing for the hours you stated, the {machines} machines use {energy}</source>
        <translation>In den angegebenen Stunden untätig, brauchen die {machines} Maschinen {energy}</translation>
    </message>
    <message>
        <source>Doing nothing for the hours you stated, {machine} uses {energy}</source>
        <translation>In den angegebenen Stunden untätig, braucht {machine} {energy}</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Drag over the chart to read a span</source>
        <translation>Über das Diagramm ziehen, um eine Spanne abzulesen</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Drift</translation>
    </message>
    <message>
        <source>Drop meter logs anywhere in this window</source>
        <translation>Logs von Messgeräten irgendwo in dieses Fenster ziehen</translation>
    </message>
    <message>
        <source>Drop meter logs anywhere on this window, or open the demo from the File menu.</source>
        <translation>Logs irgendwo auf dieses Fenster ziehen oder die Demo über das Menü „Datei“ öffnen.</translation>
    </message>
    <message>
        <source>Drop meter logs here</source>
        <translation>Log-Dateien hierher ziehen</translation>
    </message>
    <message>
        <source>Drop meter logs of one machine or more anywhere on this window, or open the demo from the File menu.</source>
        <translation>Logs von einer oder mehr Maschinen irgendwo auf dieses Fenster ziehen oder die Demo über das Menü „Datei“ öffnen.</translation>
    </message>
    <message>
        <source>Drop meter logs of two or more machines anywhere on this window, or open the demo from the File menu.</source>
        <translation>Logs von zwei oder mehr Maschinen irgendwo auf dieses Fenster ziehen oder die Demo über das Menü „Datei“ öffnen.</translation>
    </message>
    <message>
        <source>Drop the logs here: text tables, spreadsheets, packed files, whole folders.</source>
        <translation>Die Logs hierher ziehen: Texttabellen, Arbeitsmappen, gepackte Dateien, ganze Ordner.</translation>
    </message>
    <message>
        <source>Duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Duration [min]</source>
        <translation>Dauer [min]</translation>
    </message>
    <message>
        <source>Duration [s]</source>
        <translation>Dauer [s]</translation>
    </message>
    <message>
        <source>E = {energy_wh} Wh</source>
        <translation>E = {energy_wh} Wh</translation>
    </message>
    <message>
        <source>E = {raw_wh} Wh</source>
        <translation>E = {raw_wh} Wh</translation>
    </message>
    <message>
        <source>Each bed has a meter of its own: both gains count.</source>
        <translation>Jedes Heizbett hat ein eigenes Messgerät: Beide Verstärkungen zählen.</translation>
    </message>
    <message>
        <source>Each hour more takes {processing_w} kWh more.</source>
        <translation>Jede Stunde mehr braucht {processing_w} kWh mehr.</translation>
    </message>
    <message>
        <source>Each machine</source>
        <translation>Jede Maschine</translation>
    </message>
    <message>
        <source>Each machine against each: how much less or more the first one needs. A difference counts as shown only where chance and the meters together would hardly make it.</source>
        <translation>Jede Maschine gegen jede: um wie viel weniger oder mehr die erste braucht. Ein Unterschied gilt nur dort als nachgewiesen, wo Zufall und Messgeräte zusammen ihn kaum hervorbringen würden.</translation>
    </message>
    <message>
        <source>Each of the {count} machines has a {property} of its own: groups need two machines or more.</source>
        <translation>Jede der {count} Maschinen hat einen eigenen Wert für „{property}“: Gruppen brauchen zwei oder mehr Maschinen.</translation>
    </message>
    <message>
        <source>Each run is cut where its warm-up ends; both parts are means over the runs of a machine.</source>
        <translation>Jeder Lauf wird am Ende seines Aufheizens geteilt; beide Teile sind Mittel über die Läufe einer Maschine.</translation>
    </message>
    <message>
        <source>Each step is the difference of the levels before and after it.</source>
        <translation>Jede Stufe ist der Unterschied der Leistungen davor und danach.</translation>
    </message>
    <message>
        <source>Each value is held for {rows} rows: the meter measures less often than it writes.</source>
        <translation>Jeder Wert bleibt {rows} Zeilen lang stehen: Das Messgerät misst seltener, als es schreibt.</translation>
    </message>
    <message>
        <source>Each value of the log is the mean power of the interval before it.</source>
        <translation>Jeder Wert des Logs ist die mittlere Leistung des Intervalls davor.</translation>
    </message>
    <message>
        <source>Each value of the log is the power at that instant; between two values a straight line is taken.</source>
        <translation>Jeder Wert des Logs ist die Leistung in diesem Augenblick; zwischen zwei Werten gilt eine gerade Linie.</translation>
    </message>
    <message>
        <source>Edges by hand</source>
        <translation>Ränder von Hand</translation>
    </message>
    <message>
        <source>Edges set by hand</source>
        <translation>Ränder von Hand gesetzt</translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Electricity as measured, beside what you stated: material by weight, wear and purchase spread over their hours, and prints that fail spread over those that do not.</source>
        <translation>Strom wie gemessen, neben den eigenen Angaben: Material nach Gewicht, Verschleiß und Anschaffung auf ihre Stunden verteilt, misslungene Drucke auf die gelungenen.</translation>
    </message>
    <message>
        <source>Electricity at the mean price of all times.</source>
        <translation>Strom zum mittleren Preis aller Zeiten.</translation>
    </message>
    <message>
        <source>Electricity of a part</source>
        <translation>Strom für ein Teil</translation>
    </message>
    <message>
        <source>Electricity of the print</source>
        <translation>Strom des Drucks</translation>
    </message>
    <message>
        <source>Electronics run as long as the machine is on; of others the test&apos;s end, or you, said so.</source>
        <translation>Die Elektronik läuft, solange die Maschine an ist; von anderen sagte es das Ende des Versuchs oder eine eigene Angabe.</translation>
    </message>
    <message>
        <source>Emissivity of the beds&apos; faces</source>
        <translation>Emissionsgrad der Heizbettflächen</translation>
    </message>
    <message>
        <source>Empty cell</source>
        <translation>Leere Zelle</translation>
    </message>
    <message>
        <source>Empty the fields for another check</source>
        <translation>Die Felder für eine weitere Prüfung leeren</translation>
    </message>
    <message>
        <source>Encoding</source>
        <translation>Zeichenkodierung</translation>
    </message>
    <message>
        <source>Encoding, clock, units, gaps and refused rows of the log, to be corrected</source>
        <translation>Zeichenkodierung, Uhr, Einheiten, Lücken und abgewiesene Zeilen des Logs, zum Berichtigen</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>End in the log [s]</source>
        <translation>Ende im Log [s]</translation>
    </message>
    <message>
        <source>End of the span that is read, in {unit}</source>
        <translation>Ende der abgelesenen Spanne, in {unit}</translation>
    </message>
    <message>
        <source>End of warm-up</source>
        <translation>Ende des Aufheizens</translation>
    </message>
    <message>
        <source>Energies as measured, made like for like, or a measure against a property</source>
        <translation>Energien wie gemessen, Gleiches mit Gleichem oder eine Messgröße gegen eine Eigenschaft</translation>
    </message>
    <message>
        <source>Energies or powers</source>
        <translation>Energien oder Leistungen</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>Energy (Wh)</source>
        <translation>Energie (Wh)</translation>
    </message>
    <message>
        <source>Energy [Wh]</source>
        <translation>Energie [Wh]</translation>
    </message>
    <message>
        <source>Energy [kWh]</source>
        <translation>Energie [kWh]</translation>
    </message>
    <message>
        <source>Energy against time</source>
        <translation>Energie gegen Zeit</translation>
    </message>
    <message>
        <source>Energy against time, with lines of equal mean watts</source>
        <translation>Energie gegen Zeit, mit Linien gleicher mittlerer Leistung</translation>
    </message>
    <message>
        <source>Energy by</source>
        <translation>Energie nach</translation>
    </message>
    <message>
        <source>Energy divided by duration.</source>
        <translation>Energie geteilt durch Dauer.</translation>
    </message>
    <message>
        <source>Energy of the print</source>
        <translation>Energie des Drucks</translation>
    </message>
    <message>
        <source>Energy of the print times the factor that you stated ({source}).</source>
        <translation>Energie des Drucks mal den angegebenen Faktor ({source}).</translation>
    </message>
    <message>
        <source>Energy per part</source>
        <translation>Energie je Teil</translation>
    </message>
    <message>
        <source>Energy per part [Wh]</source>
        <translation>Energie je Teil [Wh]</translation>
    </message>
    <message>
        <source>Energy per part, {machine}</source>
        <translation>Energie je Teil, {machine}</translation>
    </message>
    <message>
        <source>Energy used</source>
        <translation>Verbrauchte Energie</translation>
    </message>
    <message>
        <source>Energy.</source>
        <translation>Energie.</translation>
    </message>
    <message>
        <source>Enter runs of which only the display was read</source>
        <translation>Läufe eingeben, von denen nur die Anzeige abgelesen wurde</translation>
    </message>
    <message>
        <source>Enter runs of which only the meter&apos;s display was read</source>
        <translation>Läufe eingeben, von denen nur die Anzeige des Messgeräts abgelesen wurde</translation>
    </message>
    <message>
        <source>Every half hour of the day is tried as a start, on every day that has prices to the end of the print: warm-up and processing are priced by the price of their own time.</source>
        <translation>Jede halbe Stunde des Tages wird als Beginn versucht, an jedem Tag mit Preisen bis zum Ende des Drucks: Aufheizen und Fertigung werden mit dem Preis ihrer eigenen Zeit berechnet.</translation>
    </message>
    <message>
        <source>Every pair</source>
        <translation>Jedes Paar</translation>
    </message>
    <message>
        <source>Every reading of {whose} was multiplied by {factor}, as its same-load check says, and what the check leaves open of its gain takes the place of the stated accuracy.</source>
        <translation>Jede Anzeige von {whose} wurde mit {factor} multipliziert, wie die Prüfung an gleicher Last sagt, und was die Prüfung von der Verstärkung offen lässt, tritt an die Stelle der angegebenen Genauigkeit.</translation>
    </message>
    <message>
        <source>Failed</source>
        <translation>Fehldrucke</translation>
    </message>
    <message>
        <source>Failed prints</source>
        <translation>Fehldrucke</translation>
    </message>
    <message>
        <source>Fairness</source>
        <translation>Fairness</translation>
    </message>
    <message>
        <source>Fairness.</source>
        <translation>Fairness.</translation>
    </message>
    <message>
        <source>Far apart</source>
        <translation>Weit auseinander</translation>
    </message>
    <message>
        <source>Far from 100 % the warm-up matters, and a test of half an hour tells too much.</source>
        <translation>Weit von 100 % macht das Aufheizen etwas aus, und ein Versuch von einer halben Stunde sagt zu viel.</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>Feb</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation>Gespeist aus</translation>
    </message>
    <message>
        <source>Figures and tables to publish</source>
        <translation>Diagramme und Tabellen zum Veröffentlichen</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>File of the log</source>
        <translation>Datei des Logs</translation>
    </message>
    <message>
        <source>Fill {cells:cell|cells} of the properties</source>
        <translation>{cells:Zelle|Zellen} der Eigenschaften ausfüllen</translation>
    </message>
    <message>
        <source>Find its runs again</source>
        <translation>Seine Läufe neu suchen</translation>
    </message>
    <message>
        <source>Find the runs of {name} again</source>
        <translation>Die Läufe von {name} neu suchen</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>First half hour [W]</source>
        <translation>Erste halbe Stunde [W]</translation>
    </message>
    <message>
        <source>First half hour, all [W]</source>
        <translation>Erste halbe Stunde, gesamt [W]</translation>
    </message>
    <message>
        <source>First hour [W]</source>
        <translation>Erste Stunde [W]</translation>
    </message>
    <message>
        <source>First hour, all [W]</source>
        <translation>Erste Stunde, gesamt [W]</translation>
    </message>
    <message>
        <source>First layer, bed</source>
        <translation>Erste Schicht, Heizbett</translation>
    </message>
    <message>
        <source>First layer, bed [°C]</source>
        <translation>Erste Schicht, Heizbett [°C]</translation>
    </message>
    <message>
        <source>First layer, nozzle</source>
        <translation>Erste Schicht, Düse</translation>
    </message>
    <message>
        <source>First layer, nozzle [°C]</source>
        <translation>Erste Schicht, Düse [°C]</translation>
    </message>
    <message>
        <source>First layer: bed (°C)</source>
        <translation>Erste Schicht: Heizbett (°C)</translation>
    </message>
    <message>
        <source>First layer: {first}.</source>
        <translation>Erste Schicht: {first}.</translation>
    </message>
    <message>
        <source>First layers ta&amp;ke</source>
        <translation>Erste Schich&amp;ten dauern</translation>
    </message>
    <message>
        <source>First layers [s]</source>
        <translation>Erste Schichten [s]</translation>
    </message>
    <message>
        <source>First layers at [°C]</source>
        <translation>Erste Schichten bei [°C]</translation>
    </message>
    <message>
        <source>First machine of the pair</source>
        <translation>Erste Maschine des Paars</translation>
    </message>
    <message>
        <source>First meter</source>
        <translation>Erstes Messgerät</translation>
    </message>
    <message>
        <source>First rows</source>
        <translation>Erste Zeilen</translation>
    </message>
    <message>
        <source>First rows of the file</source>
        <translation>Erste Zeilen der Datei</translation>
    </message>
    <message>
        <source>Five invented machines that make a hose clip</source>
        <translation>Fünf erfundene Maschinen, die eine Schlauchklemme fertigen</translation>
    </message>
    <message>
        <source>For its size the bed of {machine} loses most: {watts} held at {celsius} °C, {than}.</source>
        <translation>Für seine Größe verliert das Heizbett von {machine} am meisten: {watts}, bei {celsius} °C gehalten, {than}.</translation>
    </message>
    <message>
        <source>For its size the bed of {machine} loses {watts} held at {celsius} °C, {than}; {machines} {count:~is|are} not told apart from it.</source>
        <translation>Für seine Größe verliert das Heizbett von {machine} {watts}, bei {celsius} °C gehalten, {than}; {machines} {count:~lässt|lassen} sich davon nicht unterscheiden.</translation>
    </message>
    <message>
        <source>For whoever mends a fault: versions and sizes. No name, path or number of yours is in it.</source>
        <translation>Für alle, die einen Fehler beheben: Versionen und Größen. Kein eigener Name, Pfad oder Zahlenwert ist darin.</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Found in the log by levels of power learnt from that log, never by fixed watts; edges that a person set win. Operating states are called off, standby, warm-up, processing and cooling, in the sense of ISO 14955-1.</source>
        <translation>Im Log an Leistungsstufen gefunden, die aus diesem Log gelernt sind, nie an festen Wattzahlen; von Hand gesetzte Ränder gehen vor. Die Betriebszustände heißen aus, Bereitschaft, Aufheizen, Fertigung und Abkühlen, im Sinne der ISO 14955-1.</translation>
    </message>
    <message>
        <source>Found: {found}; the log tells each step of this hold test</source>
        <translation>Gefunden: {found}; das Log nennt jede Stufe dieses Halteversuchs</translation>
    </message>
    <message>
        <source>Found: {found}; write another temperature to set it</source>
        <translation>Gefunden: {found}; eine andere Temperatur eintragen, um sie zu setzen</translation>
    </message>
    <message>
        <source>Free size</source>
        <translation>Freie Größe</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>Freitag</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>From measured to like for like</source>
        <translation>Vom Gemessenen zu Gleichem mit Gleichem</translation>
    </message>
    <message>
        <source>From run to run all machines took {way} and {way}, {rise} from the first to the last (by one line through all runs, p = {p:.3f}); whatever changed favours the machine that was tested at the right time: make the runs again in a shuffled order.</source>
        <translation>Von Lauf zu Lauf brauchten alle Maschinen immer {way}, {rise} vom ersten bis zum letzten (nach einer Geraden durch alle Läufe, p = {p:.3f}); was auch immer sich änderte, begünstigt die Maschine, die zur rechten Zeit gemessen wurde: die Läufe in gemischter Reihenfolge noch einmal machen.</translation>
    </message>
    <message>
        <source>From where the picture is looked at</source>
        <translation>Von wo das Bild betrachtet wird</translation>
    </message>
    <message>
        <source>Games and Howell&apos;s test of {tested} machines</source>
        <translation>Games-Howell-Test von {tested} Maschinen</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Lücken</translation>
    </message>
    <message>
        <source>Gaps and slow logs</source>
        <translation>Lücken und langsame Logs</translation>
    </message>
    <message>
        <source>Give edges, kind and counting back to the program</source>
        <translation>Ränder, Art und Zählen dem Programm zurückgeben</translation>
    </message>
    <message>
        <source>Give the height to what follows warm-up; the warm-up then leaves the chart at the top</source>
        <translation>Die Höhe dem geben, was auf das Aufheizen folgt; das Aufheizen ragt dann oben aus dem Diagramm</translation>
    </message>
    <message>
        <source>Give the stretch a name, or the machine if no stretch is selected</source>
        <translation>Dem Abschnitt einen Namen geben, oder der Maschine, wenn kein Abschnitt ausgewählt ist</translation>
    </message>
    <message>
        <source>Grams of carbon dioxide a kWh, your own figure</source>
        <translation>Gramm Kohlendioxid je kWh, eigene Angabe</translation>
    </message>
    <message>
        <source>Gravest first. Select a point to read why, and to do something about it.</source>
        <translation>Das Schwerwiegendste zuerst. Einen Punkt auswählen, um den Grund zu lesen und etwas dagegen zu tun.</translation>
    </message>
    <message>
        <source>HTML (*.html)</source>
        <translation>HTML (*.html)</translation>
    </message>
    <message>
        <source>HTML report (*.html)</source>
        <translation>HTML-Bericht (*.html)</translation>
    </message>
    <message>
        <source>Half / full hour</source>
        <translation>Halbe / ganze Stunde</translation>
    </message>
    <message>
        <source>Half the 95 % interval (JCGM 100:2008); empty where only one value was measured.</source>
        <translation>Das halbe 95-%-Intervall (JCGM 100:2008); leer, wo nur ein Wert gemessen wurde.</translation>
    </message>
    <message>
        <source>Hand back</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>Hand back to the program</source>
        <translation>Dem Programm zurückgeben</translation>
    </message>
    <message>
        <source>Hand runs back to the program</source>
        <translation>Läufe dem Programm zurückgeben</translation>
    </message>
    <message>
        <source>Hand the edges back</source>
        <translation>Die Ränder zurückgeben</translation>
    </message>
    <message>
        <source>Hand {title} back to the program</source>
        <translation>{title} dem Programm zurückgeben</translation>
    </message>
    <message>
        <source>Handed back to the program; Ctrl+Z takes that back</source>
        <translation>Dem Programm zurückgegeben; Strg+Z nimmt das zurück</translation>
    </message>
    <message>
        <source>Heat capacity</source>
        <translation>Wärmekapazität</translation>
    </message>
    <message>
        <source>Heat capacity [J/K]</source>
        <translation>Wärmekapazität [J/K]</translation>
    </message>
    <message>
        <source>Heat capacity: that energy, less what the bed lost meanwhile by the plate law, over the rise of its temperature. Behind a supply it holds the supply&apos;s losses too.</source>
        <translation>Wärmekapazität: diese Energie, vermindert um den Verlust des Heizbetts währenddessen nach dem Plattengesetz, je Grad Erwärmung. Hinter einem Netzteil enthält sie auch dessen Verluste.</translation>
    </message>
    <message>
        <source>Height for pr&amp;ocessing</source>
        <translation>Höhe für die &amp;Fertigung</translation>
    </message>
    <message>
        <source>Height in pixels</source>
        <translation>Höhe in Pixeln</translation>
    </message>
    <message>
        <source>Held against [Wh]</source>
        <translation>Gemessen an [Wh]</translation>
    </message>
    <message>
        <source>Held against what a square plate of its area must lose: {method}.</source>
        <translation>Gemessen daran, was eine quadratische Platte dieser Fläche verlieren muss: {method}.</translation>
    </message>
    <message>
        <source>Held at {celsius} °C, the bed of {machine} takes {watts} and that of {other} {other_watts}; with the areas of the beds they can be compared for their size.</source>
        <translation>Bei {celsius} °C gehalten, braucht das Heizbett von {machine} {watts} und das von {other} {other_watts}; mit den Flächen der Heizbetten lassen sie sich nach ihrer Größe vergleichen.</translation>
    </message>
    <message>
        <source>Held at {celsius} °C, the bed of {machine} takes {watts}.</source>
        <translation>Bei {celsius} °C gehalten, braucht das Heizbett von {machine} {watts}.</translation>
    </message>
    <message>
        <source>Held bed</source>
        <translation>Gehaltenes Heizbett</translation>
    </message>
    <message>
        <source>Held beds</source>
        <translation>Gehaltene Heizbetten</translation>
    </message>
    <message>
        <source>Held temperatures</source>
        <translation>Gehaltene Temperaturen</translation>
    </message>
    <message>
        <source>Hide</source>
        <translation>Verbergen</translation>
    </message>
    <message>
        <source>Hold a second temperature at least 5 K away: then a line tells what lies between.</source>
        <translation>Eine zweite Temperatur mit mindestens 5 K Abstand halten: Dann sagt eine Gerade, was dazwischen liegt.</translation>
    </message>
    <message>
        <source>Hold a third temperature, far from both: then the line is tested, and surer.</source>
        <translation>Eine dritte Temperatur halten, fern von beiden: Dann ist die Gerade geprüft und sicherer.</translation>
    </message>
    <message>
        <source>Hold both temperatures for an hour, from cold: then both watts and the cooling are measured.</source>
        <translation>Beide Temperaturen eine Stunde halten, aus dem kalten Zustand: Dann sind beide Leistungen und das Abkühlen gemessen.</translation>
    </message>
    <message>
        <source>Hold each temperature for an hour; log the bed&apos;s and the room&apos;s temperature with it.</source>
        <translation>Jede Temperatur eine Stunde halten; die Temperatur von Heizbett und Raum mit aufzeichnen.</translation>
    </message>
    <message>
        <source>Hold for an hour; a same-load check of both meters would tie their gains together.</source>
        <translation>Eine Stunde halten; eine Prüfung beider Messgeräte an gleicher Last würde ihre Verstärkungen aneinander binden.</translation>
    </message>
    <message>
        <source>Hold its bed from cold, an hour at the temperature of the part.</source>
        <translation>Das Heizbett aus dem kalten Zustand eine Stunde auf der Temperatur des Teils halten.</translation>
    </message>
    <message>
        <source>Hold tests were found, but nobody noted at which temperature: note that of the bed to tell what the beds take.</source>
        <translation>Halteversuche wurden gefunden, aber niemand hat notiert, bei welcher Temperatur: die des Heizbetts notieren, um zu erfahren, was die Heizbetten brauchen.</translation>
    </message>
    <message>
        <source>Hold tests were found, but what the beds took cannot be told: see the table below.</source>
        <translation>Halteversuche wurden gefunden, aber was die Heizbetten brauchten, lässt sich nicht sagen: siehe Tabelle unten.</translation>
    </message>
    <message>
        <source>Hold the bed at the temperature asked for.</source>
        <translation>Das Heizbett auf der gefragten Temperatur halten.</translation>
    </message>
    <message>
        <source>Hold the meters a&amp;gainst each other on one load, before and after</source>
        <translation>Messgeräte v&amp;orher und nachher an gleicher Last prüfen</translation>
    </message>
    <message>
        <source>Holds that never became steady are shown hollow and not counted.</source>
        <translation>Halteversuche, die nie gleichmäßig wurden, sind hohl gezeigt und nicht gezählt.</translation>
    </message>
    <message>
        <source>Hot parts: nozzle and bed burn. Do not pull the plug while the hot end is hot: its cooling fan stops too.</source>
        <translation>Heiße Teile: An Düse und Heizbett kann man sich verbrennen. Den Stecker nicht ziehen, solange das Hotend heiß ist: Auch sein Lüfter bleibt dann stehen.</translation>
    </message>
    <message>
        <source>Hours a year switched on and doing nothing</source>
        <translation>Stunden im Jahr eingeschaltet und untätig</translation>
    </message>
    <message>
        <source>Hours a year that one of them prints</source>
        <translation>Stunden im Jahr, die eine davon druckt</translation>
    </message>
    <message>
        <source>Hours in each operating state</source>
        <translation>Stunden in jedem Betriebszustand</translation>
    </message>
    <message>
        <source>Hours of printing over which the price is spread</source>
        <translation>Druckstunden, auf die der Preis verteilt wird</translation>
    </message>
    <message>
        <source>Hours of printing that a set of wearing parts lasts</source>
        <translation>Druckstunden, die ein Satz Verschleißteile hält</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>How &amp;it is read</source>
        <translation>W&amp;ie man es liest</translation>
    </message>
    <message>
        <source>How beds are measured; for a value click on it, or press F1 on a selected test</source>
        <translation>Wie Heizbetten gemessen werden; für einen Wert darauf klicken oder F1 bei einem gewählten Versuch drücken</translation>
    </message>
    <message>
        <source>How each number was found</source>
        <translation>Wie jede Zahl ermittelt wurde</translation>
    </message>
    <message>
        <source>How electricity is priced</source>
        <translation>Wie der Strompreis gebildet wird</translation>
    </message>
    <message>
        <source>How it looks</source>
        <translation>Wie es aussieht</translation>
    </message>
    <message>
        <source>How it was found</source>
        <translation>Wie es ermittelt wurde</translation>
    </message>
    <message>
        <source>How loads are measured; for a value click on it</source>
        <translation>Wie Verbraucher gemessen werden; für einen Wert darauf klicken</translation>
    </message>
    <message>
        <source>Ho&amp;w many</source>
        <translation>An&amp;zahl</translation>
    </message>
    <message>
        <source>How many repeats</source>
        <translation>Wie viele Wiederholungen</translation>
    </message>
    <message>
        <source>How much it could matter in Wh, no model tells.</source>
        <translation>Wie viel es in Wh ausmachen könnte, sagt kein Modell.</translation>
    </message>
    <message>
        <source>How runs are found</source>
        <translation>Wie Läufe gefunden werden</translation>
    </message>
    <message>
        <source>How sharp pixels are</source>
        <translation>Wie scharf Pixel sind</translation>
    </message>
    <message>
        <source>How the log was read</source>
        <translation>Wie das Log gelesen wurde</translation>
    </message>
    <message>
        <source>How the sentence above was found; for a value click on it, for a run double-click it or press F1</source>
        <translation>Wie der Satz oben ermittelt wurde; für einen Wert darauf klicken, für einen Lauf doppelklicken oder F1 drücken</translation>
    </message>
    <message>
        <source>How the sentence above was found; for a value on a chart, click on it</source>
        <translation>Wie der Satz oben ermittelt wurde; für einen Wert auf einem Diagramm darauf klicken</translation>
    </message>
    <message>
        <source>How this was found</source>
        <translation>Wie das ermittelt wurde</translation>
    </message>
    <message>
        <source>How was this found? Click, or press F1.</source>
        <translation>Wie wurde das gefunden? Klicken oder F1 drücken.</translation>
    </message>
    <message>
        <source>How {machine}&apos;s log was read</source>
        <translation>Wie das Log von {machine} gelesen wurde</translation>
    </message>
    <message>
        <source>Idle in a year [h]</source>
        <translation>Leerlauf im Jahr [h]</translation>
    </message>
    <message>
        <source>Idle minutes before switching off</source>
        <translation>Minuten Leerlauf bis zum Ausschalten</translation>
    </message>
    <message>
        <source>If 1 of 100 prints more failed</source>
        <translation>Wenn 1 von 100 Drucken mehr misslänge</translation>
    </message>
    <message>
        <source>If a kilowatt hour cost {more} {currency} more</source>
        <translation>Wenn eine Kilowattstunde {more} {currency} mehr kostete</translation>
    </message>
    <message>
        <source>If all were off for one hour more a day</source>
        <translation>Wenn alle täglich eine Stunde länger aus wären</translation>
    </message>
    <message>
        <source>If electricity cost 10 % more</source>
        <translation>Wenn Strom 10 % mehr kostete</translation>
    </message>
    <message>
        <source>If every run of {machine} ended {later} later</source>
        <translation>Wenn jeder Lauf von {machine} {later} später endete</translation>
    </message>
    <message>
        <source>If it drew 1 W more, in a print of {hours} h</source>
        <translation>Zöge sie 1 W mehr, in einem Druck von {hours} h</translation>
    </message>
    <message>
        <source>If it drew 1 W more, in a year</source>
        <translation>Zöge er 1 W mehr, in einem Jahr</translation>
    </message>
    <message>
        <source>If it had been 1 K warmer, the bed would be told at {celsius} °C with</source>
        <translation>Wäre es 1 K wärmer gewesen, lautete die Leistung des Heizbetts bei {celsius} °C anders um</translation>
    </message>
    <message>
        <source>If it had been otherwise</source>
        <translation>Wenn es anders gewesen wäre</translation>
    </message>
    <message>
        <source>If it had been otherwise:</source>
        <translation>Wäre es anders gewesen:</translation>
    </message>
    <message>
        <source>If it had ended one row of the log later</source>
        <translation>Hätte es eine Zeile des Logs später geendet</translation>
    </message>
    <message>
        <source>If it had ended {time} later</source>
        <translation>Hätte es {time} später geendet</translation>
    </message>
    <message>
        <source>If it lasted 10 % longer</source>
        <translation>Wenn sie 10 % länger hielte</translation>
    </message>
    <message>
        <source>If it printed 10 % more</source>
        <translation>Wenn sie 10 % mehr druckte</translation>
    </message>
    <message>
        <source>If it started at {time}</source>
        <translation>Wenn er um {time} begänne</translation>
    </message>
    <message>
        <source>If it were 1 W more: +{hours_per_year} kWh a year</source>
        <translation>Wäre es 1 W mehr: +{hours_per_year} kWh im Jahr</translation>
    </message>
    <message>
        <source>If it were counted 30 s longer</source>
        <translation>Würde es 30 s länger gezählt</translation>
    </message>
    <message>
        <source>If it were counted from {time} later on</source>
        <translation>Würde es von {time} später an gezählt</translation>
    </message>
    <message>
        <source>If it were off for one hour more a day</source>
        <translation>Wenn sie täglich eine Stunde länger aus wäre</translation>
    </message>
    <message>
        <source>If it were switched off after {minutes} min</source>
        <translation>Würde sie nach {minutes} min ausgeschaltet</translation>
    </message>
    <message>
        <source>If its one meter read 1 % too high: no change</source>
        <translation>Wenn ihr einziges Messgerät 1 % zu viel anzeigte: keine Änderung</translation>
    </message>
    <message>
        <source>If its wear cost 10 % more</source>
        <translation>Wenn ihr Verschleiß 10 % mehr kostete</translation>
    </message>
    <message>
        <source>If processing took 10 min longer</source>
        <translation>Wenn die Fertigung 10 min länger dauerte</translation>
    </message>
    <message>
        <source>If runs scattered by {percents} %</source>
        <translation>Wenn die Läufe um {percents} % streuten</translation>
    </message>
    <message>
        <source>If the area of {machine} were 1 dm² larger</source>
        <translation>Wäre die Fläche von {machine} 1 dm² größer</translation>
    </message>
    <message>
        <source>If the area were 1 dm² larger</source>
        <translation>Wäre die Fläche 1 dm² größer</translation>
    </message>
    <message>
        <source>If the bed became 1 K cooler still</source>
        <translation>Würde das Heizbett noch 1 K kühler</translation>
    </message>
    <message>
        <source>If the bed had become 1 K warmer</source>
        <translation>Wäre das Heizbett 1 K wärmer geworden</translation>
    </message>
    <message>
        <source>If the bed had begun 1 K warmer</source>
        <translation>Hätte das Heizbett 1 K wärmer begonnen</translation>
    </message>
    <message>
        <source>If the bed had held with 1 W more</source>
        <translation>Hätte das Heizbett mit 1 W mehr gehalten</translation>
    </message>
    <message>
        <source>If the bed were held 1 K warmer first</source>
        <translation>Würde das Heizbett zuerst 1 K wärmer gehalten</translation>
    </message>
    <message>
        <source>If the bed were held 10 K warmer</source>
        <translation>Würde das Heizbett 10 K wärmer gehalten</translation>
    </message>
    <message>
        <source>If the change came 10 min later</source>
        <translation>Käme der Wechsel 10 min später</translation>
    </message>
    <message>
        <source>If the common bed were 5 K cooler</source>
        <translation>Wäre das gemeinsame Heizbett 5 K kühler</translation>
    </message>
    <message>
        <source>If the common bed were 5 K warmer</source>
        <translation>Wäre das gemeinsame Heizbett 5 K wärmer</translation>
    </message>
    <message>
        <source>If the common room were 1 K warmer</source>
        <translation>Wäre der gemeinsame Raum 1 K wärmer</translation>
    </message>
    <message>
        <source>If the emissivity were {emissivity}</source>
        <translation>Wäre der Emissionsgrad {emissivity}</translation>
    </message>
    <message>
        <source>If the energy of {machine} were 1 % more: {ratio}</source>
        <translation>Wäre die Energie von {machine} 1 % größer: {ratio}</translation>
    </message>
    <message>
        <source>If the factor were 10 g/kWh higher</source>
        <translation>Wäre der Faktor um 10 g/kWh höher</translation>
    </message>
    <message>
        <source>If the log held {held}</source>
        <translation>Wenn das Log so zu lesen wäre: {held}</translation>
    </message>
    <message>
        <source>If the machine drew 1 W more all the time</source>
        <translation>Zöge die Maschine die ganze Zeit 1 W mehr</translation>
    </message>
    <message>
        <source>If the machine drew 1 W more beside the bed</source>
        <translation>Zöge die Maschine neben dem Heizbett 1 W mehr</translation>
    </message>
    <message>
        <source>If the machine were off for one hour a day</source>
        <translation>Wäre die Maschine täglich eine Stunde aus</translation>
    </message>
    <message>
        <source>If the material cost 10 % more</source>
        <translation>Wenn das Material 10 % mehr kostete</translation>
    </message>
    <message>
        <source>If the meter read 1 % too high: {change}</source>
        <translation>Wenn das Messgerät 1 % zu viel anzeigte: {change}</translation>
    </message>
    <message>
        <source>If the print took 1 h longer</source>
        <translation>Wenn der Druck 1 h länger dauerte</translation>
    </message>
    <message>
        <source>If the room had been 1 K warmer</source>
        <translation>Wäre der Raum 1 K wärmer gewesen</translation>
    </message>
    <message>
        <source>If the run with the bed off had drawn 1 W more</source>
        <translation>Hätte der Lauf ohne Heizbett 1 W mehr gezogen</translation>
    </message>
    <message>
        <source>If the span began later ({by})</source>
        <translation>Begänne die Spanne später ({by})</translation>
    </message>
    <message>
        <source>If the span ended later ({by})</source>
        <translation>Endete die Spanne später ({by})</translation>
    </message>
    <message>
        <source>If the warm-up of {machine} ended 30 s later</source>
        <translation>Endete das Aufheizen von {machine} 30 s später</translation>
    </message>
    <message>
        <source>If what is not the bed drew 1 W more</source>
        <translation>Zöge alles außer dem Heizbett 1 W mehr</translation>
    </message>
    <message>
        <source>If what was on before had risen by 1 % at the same moment</source>
        <translation>Wäre das schon Laufende im selben Augenblick um 1 % gestiegen</translation>
    </message>
    <message>
        <source>If {each} ended {later_s} later</source>
        <translation>Wenn {each} {later_s} später endete</translation>
    </message>
    <message>
        <source>If {each} started one sample ({sample_s}) earlier</source>
        <translation>Wenn {each} einen Abtastwert ({sample_s}) früher begänne</translation>
    </message>
    <message>
        <source>If {load} did not run</source>
        <translation>Liefe nicht mit: {load}</translation>
    </message>
    <message>
        <source>If {load} were not counted</source>
        <translation>Nicht mitgezählt: {load}</translation>
    </message>
    <message>
        <source>If {meter} read 1 % too high</source>
        <translation>Wenn {meter} 1 % zu viel anzeigte</translation>
    </message>
    <message>
        <source>If {percents} % were to be shown</source>
        <translation>Sollten {percents} % gezeigt werden</translation>
    </message>
    <message>
        <source>Import a log</source>
        <translation>Ein Log einlesen</translation>
    </message>
    <message>
        <source>Import {logs} logs</source>
        <translation>{logs} Logs einlesen</translation>
    </message>
    <message>
        <source>In numbers</source>
        <translation>In Zahlen</translation>
    </message>
    <message>
        <source>In {count_told} of {runs:run|runs}: {told}</source>
        <translation>In {count_told} von {runs:Lauf|Läufen}: {told}</translation>
    </message>
    <message>
        <source>In {unseen} of the runs it cannot be seen; they are not in this mean.</source>
        <translation>In {unseen} der Läufe ist er nicht zu sehen; sie fehlen in diesem Mittel.</translation>
    </message>
    <message>
        <source>Include a reading of {name}</source>
        <translation>Eine Ablesung von {name} mitzählen</translation>
    </message>
    <message>
        <source>Include {title}</source>
        <translation>{title} mitzählen</translation>
    </message>
    <message>
        <source>Intervals and differences</source>
        <translation>Intervalle und Unterschiede</translation>
    </message>
    <message>
        <source>Intervals.</source>
        <translation>Intervalle.</translation>
    </message>
    <message>
        <source>Invented data</source>
        <translation>Erfundene Daten</translation>
    </message>
    <message>
        <source>It cannot be read ({why}); check the path and your right to read it.</source>
        <translation>Nicht lesbar ({why}); den Pfad und das Leserecht prüfen.</translation>
    </message>
    <message>
        <source>It cannot be seen here because readings of a display tell nothing of the heater.</source>
        <translation>Er ist hier nicht zu sehen, weil Ablesungen einer Anzeige nichts über die Heizung sagen.</translation>
    </message>
    <message>
        <source>It changes no number of this page: this hold has no part in the watts that are compared.</source>
        <translation>Sie ändert keine Zahl dieser Seite: An der verglichenen Leistung hat dieser Versuch keinen Anteil.</translation>
    </message>
    <message>
        <source>It could matter {energy} Wh a part.</source>
        <translation>Es könnte {energy} Wh je Teil ausmachen.</translation>
    </message>
    <message>
        <source>It could matter {energy} a part, by {model}.</source>
        <translation>Es könnte {energy} je Teil ausmachen, nach diesem Modell: {model}.</translation>
    </message>
    <message>
        <source>It could matter {energy} a part.</source>
        <translation>Es könnte {energy} je Teil ausmachen.</translation>
    </message>
    <message>
        <source>It could not be read as a run sheet: {why}; save it as CSV text.</source>
        <translation>Nicht als Laufzettel lesbar: {why}; als CSV-Text speichern.</translation>
    </message>
    <message>
        <source>It does not count in the comparison: {why}.</source>
        <translation>Zählt im Vergleich nicht: {why}.</translation>
    </message>
    <message>
        <source>It ends before it starts; the duration is not known.</source>
        <translation>Das Ende liegt vor dem Beginn; die Dauer ist nicht bekannt.</translation>
    </message>
    <message>
        <source>It has no column named {missing}; a run sheet has the columns machine, run, start, end and energy.</source>
        <translation>Eine Spalte namens {missing} fehlt; ein Laufzettel hat die Spalten machine, run, start, end und energy.</translation>
    </message>
    <message>
        <source>It has no interval: both come from one log, so the meter&apos;s gain drops out.</source>
        <translation>Es hat kein Intervall: Beide stammen aus einem Log, daher fällt die Verstärkung des Messgeräts heraus.</translation>
    </message>
    <message>
        <source>It has no interval: both energies come from one log, so the meter&apos;s gain drops out; what the rests of other weeks would be is not known.</source>
        <translation>Es hat kein Intervall: Beide Energien stammen aus einem Log, daher fällt die Verstärkung des Messgeräts heraus; wie die Pausen anderer Wochen wären, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>It has no interval: it is told to a window of {window}.</source>
        <translation>Es hat kein Intervall: Es wird auf ein Fenster von {window} genau angegeben.</translation>
    </message>
    <message>
        <source>It has no interval: it is told to the row at which the heater first lets go.</source>
        <translation>Es hat kein Intervall: Es wird bis zu der Zeile angegeben, bei der die Heizung zum ersten Mal nachlässt.</translation>
    </message>
    <message>
        <source>It has no interval: it tells how much the point could matter, not how much it did.</source>
        <translation>Es hat kein Intervall: Es sagt, wie viel der Punkt ausmachen könnte, nicht, wie viel er ausmachte.</translation>
    </message>
    <message>
        <source>It holds for prints like the test part, with the same temperatures.</source>
        <translation>Gilt für Drucke wie das Prüfteil, mit denselben Temperaturen.</translation>
    </message>
    <message>
        <source>It holds what was not named, moving motors, plastic that melts, and heaters that work harder in a print.</source>
        <translation>Darin steckt, was nicht benannt ist, bewegte Motoren, schmelzender Kunststoff und Heizungen, die im Druck mehr leisten.</translation>
    </message>
    <message>
        <source>It is a count of pairs; each machine&apos;s own interval is told by its own number.</source>
        <translation>Es ist eine Zahl von Paaren; das Intervall jeder Maschine steht bei ihrer eigenen Zahl.</translation>
    </message>
    <message>
        <source>It is a count of stretches, so it has no interval.</source>
        <translation>Es ist eine Zahl von Abschnitten und hat daher kein Intervall.</translation>
    </message>
    <message>
        <source>It is a count: no reading moves it by a little.</source>
        <translation>Es ist eine Anzahl: Kein Messwert verschiebt sie ein wenig.</translation>
    </message>
    <message>
        <source>It is a time between two marks, told as they were set.</source>
        <translation>Es ist eine Zeit zwischen zwei Marken, so angegeben, wie sie gesetzt wurden.</translation>
    </message>
    <message>
        <source>It is a time on the log&apos;s own clock: no reading makes it unsure, only where a change of state is placed, to a row of the log.</source>
        <translation>Es ist eine Zeit auf der eigenen Uhr des Logs: Kein Messwert macht sie unsicher, nur, wo ein Zustandswechsel gesetzt wird, auf eine Zeile des Logs genau.</translation>
    </message>
    <message>
        <source>It is named twice; counted once.</source>
        <translation>Zweimal genannt; einmal gezählt.</translation>
    </message>
    <message>
        <source>It is no run of a part ({kind}), and is measured with the edges of one.</source>
        <translation>Es ist kein Lauf eines Teils ({kind}) und wird mit den Rändern eines solchen gemessen.</translation>
    </message>
    <message>
        <source>It is none of the bundle&apos;s logs, so it was passed over: a bundle is only checked.</source>
        <translation>Es ist keines der Logs des Bündels und wurde übergangen: Ein Bündel wird nur geprüft.</translation>
    </message>
    <message>
        <source>It is taken as it was told; for what bed and room leave open together, {kelvin} K is taken as a standard uncertainty in the watts at a temperature.</source>
        <translation>Sie wird genommen, wie sie angegeben ist; für das, was Heizbett und Raum zusammen offen lassen, werden {kelvin} K als Standardunsicherheit in die Leistung bei einer Temperatur gerechnet.</translation>
    </message>
    <message>
        <source>It is the median of what the log itself says over the settled part.</source>
        <translation>Sie ist der Median dessen, was das Log selbst im gleichmäßigen Teil sagt.</translation>
    </message>
    <message>
        <source>It is the temperature that you stated for the whole test.</source>
        <translation>Sie ist die für den ganzen Versuch angegebene Temperatur.</translation>
    </message>
    <message>
        <source>It is told by another log of this machine over the same time.</source>
        <translation>Ein anderes Log dieser Maschine sagt sie für dieselbe Zeit.</translation>
    </message>
    <message>
        <source>It made no whole part.</source>
        <translation>Es entstand kein ganzes Teil.</translation>
    </message>
    <message>
        <source>It moves by whole rows of the log only.</source>
        <translation>Es bewegt sich nur um ganze Zeilen des Logs.</translation>
    </message>
    <message>
        <source>It moves by whole windows of {window} only.</source>
        <translation>Es bewegt sich nur um ganze Fenster von {window}.</translation>
    </message>
    <message>
        <source>It needs a price of electricity and one run that counts.</source>
        <translation>Nötig sind ein Strompreis und ein Lauf, der zählt.</translation>
    </message>
    <message>
        <source>It needs one run of the part at least that counts.</source>
        <translation>Mindestens ein Lauf des Teils muss zählen.</translation>
    </message>
    <message>
        <source>It needs prices that change over the day and one run that counts.</source>
        <translation>Nötig sind Preise, die sich über den Tag ändern, und ein Lauf, der zählt.</translation>
    </message>
    <message>
        <source>It runs as long as the machine is on: {energy} kWh a year.</source>
        <translation>Läuft, solange die Maschine an ist: {energy} kWh im Jahr.</translation>
    </message>
    <message>
        <source>It stays as measured: {why_not}.</source>
        <translation>Bleibt wie gemessen: {why_not}.</translation>
    </message>
    <message>
        <source>It takes the scatter so far for that of the runs to come.</source>
        <translation>Die bisherige Streuung wird für die der kommenden Läufe genommen.</translation>
    </message>
    <message>
        <source>It took</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>It touches no run that could be left out.</source>
        <translation>Der Punkt betrifft keinen Lauf, der sich weglassen ließe.</translation>
    </message>
    <message>
        <source>It was accepted when it was less grave ({reason}); that holds no longer.</source>
        <translation>Es wurde hingenommen, als es weniger schwer wog ({reason}); das gilt nicht mehr.</translation>
    </message>
    <message>
        <source>It was accepted when it was less grave: {lapsed}</source>
        <translation>Hingenommen, als der Punkt weniger schwer wog: {lapsed}</translation>
    </message>
    <message>
        <source>It was accepted: {accepted}</source>
        <translation>Hingenommen: {accepted}</translation>
    </message>
    <message>
        <source>It was noted by you for this test.</source>
        <translation>Sie wurde für diesen Versuch notiert.</translation>
    </message>
    <message>
        <source>It was noted with the readings of a display, and nobody said how exactly.</source>
        <translation>Sie wurde mit den Ablesungen einer Anzeige notiert, und wie genau, hat niemand angegeben.</translation>
    </message>
    <message>
        <source>Its duration was not noted, so its mean power is not known.</source>
        <translation>Die Dauer wurde nicht notiert, daher ist die mittlere Leistung nicht bekannt.</translation>
    </message>
    <message>
        <source>Its electricity</source>
        <translation>Strom dafür</translation>
    </message>
    <message>
        <source>Its electricity has no interval, and what you stated is exact.</source>
        <translation>Der Strom hat kein Intervall, und die eigenen Angaben gelten als genau.</translation>
    </message>
    <message>
        <source>Its energy counter was run on over resets; both are joined, each by how sure it is.</source>
        <translation>Der Energiezähler wurde über Rückstellungen weitergeführt; beides ist verbunden, jedes danach, wie sicher es ist.</translation>
    </message>
    <message>
        <source>Its energy is that at the plug less what else the machine drew.</source>
        <translation>Seine Energie ist die an der Steckdose, vermindert um das, was die Maschine sonst zog.</translation>
    </message>
    <message>
        <source>Its hold tests lack the bed&apos;s temperature, or the log does not show what else the machine draws.</source>
        <translation>Ihren Halteversuchen fehlt die Temperatur des Heizbetts, oder das Log zeigt nicht, was die Maschine sonst zieht.</translation>
    </message>
    <message>
        <source>Its interval comes from the energy; how long the run took is known far better.</source>
        <translation>Ihr Intervall kommt von der Energie; wie lange der Lauf dauerte, ist viel besser bekannt.</translation>
    </message>
    <message>
        <source>Its interval is that of the energy, in the same proportion.</source>
        <translation>Ihr Intervall ist das der Energie, im selben Verhältnis.</translation>
    </message>
    <message>
        <source>Its interval is that of the spread between the runs.</source>
        <translation>Das Intervall ist das der Streuung zwischen den Läufen.</translation>
    </message>
    <message>
        <source>Its life</source>
        <translation>Lebensdauer</translation>
    </message>
    <message>
        <source>Its log has not been read, so what makes it unsure is not told.</source>
        <translation>Das Log wurde nicht eingelesen, daher ist nicht angegeben, was es unsicher macht.</translation>
    </message>
    <message>
        <source>Its logs show no rest between runs.</source>
        <translation>Ihre Logs zeigen keine Pause zwischen Läufen.</translation>
    </message>
    <message>
        <source>Its logs show {count:rest|rests}, {seconds} together, the longest {longest_s}: stretches with neither a run nor a test.</source>
        <translation>Ihre Logs zeigen {count:Pause|Pausen}, zusammen {seconds}, die längste {longest_s}: Abschnitte weder mit Lauf noch mit Versuch.</translation>
    </message>
    <message>
        <source>Its own duration stays.</source>
        <translation>Die eigene Dauer bleibt.</translation>
    </message>
    <message>
        <source>Its supply</source>
        <translation>Sein Netzteil</translation>
    </message>
    <message>
        <source>Its values are joined, each weighted by how sure it is.</source>
        <translation>Die Werte sind verbunden, jeder nach seiner Sicherheit gewichtet.</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>Jan</translation>
    </message>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Join with next</source>
        <translation>Mit dem nächsten verbinden</translation>
    </message>
    <message>
        <source>Join {number} stretches of {place}</source>
        <translation>{number} Abschnitte von {place} verbinden</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>Jul</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>Jun</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>Keep in mind</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Keep this study under a name of yours and go on there</source>
        <translation>Diese Studie unter eigenem Namen behalten und dort weiterarbeiten</translation>
    </message>
    <message>
        <source>Keep to the order: it is shuffled so that room and time of day favour no machine.</source>
        <translation>Die Reihenfolge einhalten: Sie ist gemischt, damit Raum und Tageszeit keine Maschine bevorzugen.</translation>
    </message>
    <message>
        <source>Kept by the program until you save it under a name</source>
        <translation>Vom Programm aufbewahrt, bis die Studie unter einem Namen gespeichert wird</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Kind of file</source>
        <translation>Dateityp</translation>
    </message>
    <message>
        <source>Kind of the new column</source>
        <translation>Typ der neuen Spalte</translation>
    </message>
    <message>
        <source>Last digit</source>
        <translation>Letzte Stelle</translation>
    </message>
    <message>
        <source>Least a plate of its size loses [W]</source>
        <translation>Mindestverlust einer Platte dieser Größe [W]</translation>
    </message>
    <message>
        <source>Leave each load on for three minutes or more, and log every second or two.</source>
        <translation>Jeden Verbraucher drei Minuten oder länger an lassen und alle ein bis zwei Sekunden aufzeichnen.</translation>
    </message>
    <message>
        <source>Leave it out of the comparison (Delete)</source>
        <translation>Aus dem Vergleich auslassen (Entf)</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Leave out a reading of {name}</source>
        <translation>Eine Ablesung von {name} auslassen</translation>
    </message>
    <message>
        <source>Leave out {title}</source>
        <translation>{title} auslassen</translation>
    </message>
    <message>
        <source>Leave the run out</source>
        <translation>Den Lauf auslassen</translation>
    </message>
    <message>
        <source>Leave the stretch out of the comparison, or count it again</source>
        <translation>Den Abschnitt aus dem Vergleich auslassen oder wieder zählen</translation>
    </message>
    <message>
        <source>Leave {name} out of the plan</source>
        <translation>{name} nicht in den Plan aufnehmen</translation>
    </message>
    <message>
        <source>Left as measured: {machines}.</source>
        <translation>Wie gemessen belassen: {machines}.</translation>
    </message>
    <message>
        <source>Left on all year and doing nothing, the {machines} machines use {energy}</source>
        <translation>Das ganze Jahr eingeschaltet und untätig brauchen die {machines} Maschinen {energy}</translation>
    </message>
    <message>
        <source>Left on all year and doing nothing, {machine} uses {energy}</source>
        <translation>Das ganze Jahr eingeschaltet und untätig, braucht {machine} {energy}</translation>
    </message>
    <message>
        <source>Left on all year between prints, doing nothing the {machines} machines use {energy}</source>
        <translation>Das ganze Jahr zwischen Drucken eingeschaltet, brauchen die {machines} Maschinen untätig {energy}</translation>
    </message>
    <message>
        <source>Left on all year between prints, doing nothing {machine} uses {energy}</source>
        <translation>Das ganze Jahr zwischen Drucken eingeschaltet, braucht {machine} untätig {energy}</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <source>Left out by hand</source>
        <translation>Von Hand ausgelassen</translation>
    </message>
    <message>
        <source>Left out for {reason}; Ctrl+Z takes that back</source>
        <translation>Ausgelassen; Grund: {reason}; Strg+Z nimmt das zurück</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Length [s]</source>
        <translation>Länge [s]</translation>
    </message>
    <message>
        <source>Length of the print, warm-up included</source>
        <translation>Dauer des Drucks einschließlich Aufheizen</translation>
    </message>
    <message>
        <source>Less than the floor: the bed is insulated below, or its area is smaller than typed.</source>
        <translation>Weniger als die Untergrenze: Das Heizbett ist unten gedämmt, oder seine Fläche ist kleiner als eingetippt.</translation>
    </message>
    <message>
        <source>Let a point of fairness count again</source>
        <translation>Einen Punkt der Fairness wieder zählen lassen</translation>
    </message>
    <message>
        <source>Let go to read this</source>
        <translation>Zum Einlesen loslassen</translation>
    </message>
    <message>
        <source>Let the bed cool to the room before each run.</source>
        <translation>Das Heizbett vor jedem Lauf auf Raumtemperatur abkühlen lassen.</translation>
    </message>
    <message>
        <source>Let the meter log for half an hour before and after the runs, with the machine switched on.</source>
        <translation>Das Messgerät eine halbe Stunde vor und nach den Läufen aufzeichnen lassen, mit eingeschalteter Maschine.</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Levels are learnt from each log; a stretch begins where heating lifts the power out of standby and ends where processing ends.</source>
        <translation>Die Leistungsstufen werden aus jedem Log gelernt; ein Abschnitt beginnt, wo das Heizen die Leistung aus der Bereitschaft hebt, und endet, wo die Fertigung endet.</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Like for like</source>
        <translation>Gleiches mit Gleichem</translation>
    </message>
    <message>
        <source>Like for like [Wh]</source>
        <translation>Gleiches mit Gleichem [Wh]</translation>
    </message>
    <message>
        <source>Like for like as a table</source>
        <translation>Gleiches mit Gleichem als Tabelle</translation>
    </message>
    <message>
        <source>Like for like: who changes places</source>
        <translation>Gleiches mit Gleichem: wer die Plätze tauscht</translation>
    </message>
    <message>
        <source>Like for like: {energy} Wh</source>
        <translation>Gleiches mit Gleichem: {energy} Wh</translation>
    </message>
    <message>
        <source>Like-for-like energy</source>
        <translation>Energie, Gleiches mit Gleichem</translation>
    </message>
    <message>
        <source>Line up a&amp;t</source>
        <translation>Aus&amp;richten an</translation>
    </message>
    <message>
        <source>Line-up</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Line-up as arranged</source>
        <translation>Verlauf wie angeordnet</translation>
    </message>
    <message>
        <source>Lined up at the end of warm-up. A machine&apos;s mean is of its runs that count.</source>
        <translation>Ausgerichtet am Ende des Aufheizens. Das Mittel einer Maschine ist das ihrer Läufe, die zählen.</translation>
    </message>
    <message>
        <source>Lines below {percents} % of the variance are left away.</source>
        <translation>Zeilen unter {percents} % der Varianz sind weggelassen.</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>Load [W]</source>
        <translation>Verbraucher [W]</translation>
    </message>
    <message>
        <source>Load of step {number}</source>
        <translation>Verbraucher der Stufe {number}</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>Loads one by one</source>
        <translation>Die Verbraucher einzeln</translation>
    </message>
    <message>
        <source>Loads: one row a machine, one column a load</source>
        <translation>Verbraucher: eine Zeile je Maschine, eine Spalte je Verbraucher</translation>
    </message>
    <message>
        <source>Log [h]</source>
        <translation>Log [h]</translation>
    </message>
    <message>
        <source>Log of the bed alone</source>
        <translation>Log nur vom Heizbett</translation>
    </message>
    <message>
        <source>Log of {machine}, {summary}</source>
        <translation>Log von {machine}, {summary}</translation>
    </message>
    <message>
        <source>Log the bed&apos;s temperature every few seconds, and start from room temperature.</source>
        <translation>Die Temperatur des Heizbetts alle paar Sekunden aufzeichnen und bei Raumtemperatur beginnen.</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Logs</translation>
    </message>
    <message>
        <source>Longer run</source>
        <translation>Längerer Lauf</translation>
    </message>
    <message>
        <source>Longest rest</source>
        <translation>Längste Pause</translation>
    </message>
    <message>
        <source>Longest rest [s]</source>
        <translation>Längste Pause [s]</translation>
    </message>
    <message>
        <source>Look closely</source>
        <translation>Genau ansehen</translation>
    </message>
    <message>
        <source>Looking for personal data…</source>
        <translation>Persönliche Daten werden gesucht…</translation>
    </message>
    <message>
        <source>Lowest bed temperature that you allow</source>
        <translation>Niedrigste zulässige Heizbetttemperatur</translation>
    </message>
    <message>
        <source>Materia&amp;l</source>
        <translation>Ma&amp;terial</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Machine against machine</source>
        <translation>Maschine gegen Maschine</translation>
    </message>
    <message>
        <source>Machine of this log</source>
        <translation>Maschine dieses Logs</translation>
    </message>
    <message>
        <source>Machine that stands out</source>
        <translation>Betonte Maschine</translation>
    </message>
    <message>
        <source>Machine under machine</source>
        <translation>Maschine unter Maschine</translation>
    </message>
    <message>
        <source>Machine whose cooler bed, line and floor are shown</source>
        <translation>Maschine, deren kühleres Heizbett, Gerade und Untergrenze gezeigt werden</translation>
    </message>
    <message>
        <source>Machine whose costs are shown below</source>
        <translation>Maschine, deren Kosten unten gezeigt werden</translation>
    </message>
    <message>
        <source>Machine whose steps are named</source>
        <translation>Maschine, deren Stufen benannt werden</translation>
    </message>
    <message>
        <source>Machine whose steps are shown</source>
        <translation>Maschine, deren Schritte gezeigt werden</translation>
    </message>
    <message>
        <source>Machine whose weeks are shown</source>
        <translation>Maschine, deren Wochen gezeigt werden</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>Machines are ranked by the property and by the measure; equal ones share the mean of theirs.</source>
        <translation>Maschinen erhalten Ränge nach der Eigenschaft und nach der Messgröße; gleiche teilen das Mittel ihrer Ränge.</translation>
    </message>
    <message>
        <source>Machines differ in many things at once: this shows no cause, and of many properties tried one fits by chance</source>
        <translation>Maschinen unterscheiden sich in vielem zugleich: Das zeigt keine Ursache, und von vielen erprobten Eigenschaften passt eine zufällig</translation>
    </message>
    <message>
        <source>Machines of this kind</source>
        <translation>Maschinen dieser Art</translation>
    </message>
    <message>
        <source>Machines shown and their order</source>
        <translation>Gezeigte Maschinen und ihre Reihenfolge</translation>
    </message>
    <message>
        <source>Machines that work at the same time</source>
        <translation>Maschinen, die gleichzeitig arbeiten</translation>
    </message>
    <message>
        <source>Machines, least energy first</source>
        <translation>Maschinen, die sparsamste zuerst</translation>
    </message>
    <message>
        <source>Machines:</source>
        <translation>Maschinen:</translation>
    </message>
    <message>
        <source>Made like for like, from the least energy up it is {machines}: {count} pairs of machines change places, though within what their intervals leave open.</source>
        <translation>Gleiches mit Gleichem verglichen, lautet die Reihenfolge von der geringsten Energie aufwärts {machines}: {count} Maschinenpaare tauschen die Plätze, wenn auch innerhalb dessen, was ihre Intervalle offen lassen.</translation>
    </message>
    <message>
        <source>Made like for like, from the least energy up it is {machines}: {count} pairs of machines change places.</source>
        <translation>Gleiches mit Gleichem verglichen, lautet die Reihenfolge von der geringsten Energie aufwärts {machines}: {count} Maschinenpaare tauschen die Plätze.</translation>
    </message>
    <message>
        <source>Made like for like, no two machines change places.</source>
        <translation>Gleiches mit Gleichem verglichen, tauschen keine zwei Maschinen die Plätze.</translation>
    </message>
    <message>
        <source>Made like for like, no two of the {count} machines that can be adjusted change places.</source>
        <translation>Gleiches mit Gleichem verglichen, tauschen keine zwei der {count} umrechenbaren Maschinen die Plätze.</translation>
    </message>
    <message>
        <source>Made like for like, {pairs} change places</source>
        <translation>Gleiches mit Gleichem verglichen, tauschen {pairs} die Plätze</translation>
    </message>
    <message>
        <source>Made like for like, {pairs} change places, though within what their intervals leave open</source>
        <translation>Gleiches mit Gleichem verglichen, tauschen {pairs} die Plätze, wenn auch innerhalb dessen, was ihre Intervalle offen lassen</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Gebildet aus</translation>
    </message>
    <message>
        <source>Made of:</source>
        <translation>Woraus es besteht:</translation>
    </message>
    <message>
        <source>Made on</source>
        <translation>Erstellt am</translation>
    </message>
    <message>
        <source>Made with {program} on {day}.</source>
        <translation>Erstellt mit {program} am {day}.</translation>
    </message>
    <message>
        <source>Mains ({mains}) against low voltage ({others}): per area {percents} % of the watts (95 % interval {low} to {high} %). If the beds were alike but for their supply, that would be the efficiency of the low-voltage supplies; {beds:bed|beds} cannot show it.</source>
        <translation>Netz ({mains}) gegen Kleinspannung ({others}): je Fläche {percents} % der Leistung (95-%-Intervall {low} bis {high} %). Wären die Heizbetten bis auf die Speisung gleich, wäre das der Wirkungsgrad der Kleinspannungsnetzteile; {beds:Heizbett|Heizbetten} {beds:~kann|können} es nicht zeigen.</translation>
    </message>
    <message>
        <source>Mains against low voltage: one fed from the mains, with its area and a hold test, is still missing.</source>
        <translation>Netz gegen Kleinspannung: Ein Heizbett am Netz, mit Fläche und Halteversuch, fehlt noch.</translation>
    </message>
    <message>
        <source>Mains against low voltage: one with a low-voltage supply, with its area and a hold test, is still missing.</source>
        <translation>Netz gegen Kleinspannung: Ein Heizbett mit Kleinspannung, mit Fläche und Halteversuch, fehlt noch.</translation>
    </message>
    <message>
        <source>Mains against low voltage: watts per area</source>
        <translation>Netz gegen Kleinspannung: Leistung je Fläche</translation>
    </message>
    <message>
        <source>Mains voltage, hot parts, and what the numbers are not</source>
        <translation>Netzspannung, heiße Teile und was die Zahlen nicht sind</translation>
    </message>
    <message>
        <source>Mains: only plug-in meters approved for your sockets, unopened, and a load within the rating of each.</source>
        <translation>Netzspannung: nur für die eigenen Steckdosen zugelassene, ungeöffnete Zwischenstecker-Messgeräte verwenden und eine Last innerhalb der Nennwerte jedes Geräts.</translation>
    </message>
    <message>
        <source>Mains: use enclosed, approved plug-in meters within their rating; open neither a meter nor a machine. Work on mains wiring belongs to a qualified electrician under local codes.</source>
        <translation>Netzspannung: geschlossene, zugelassene Zwischenstecker-Messgeräte innerhalb ihrer Nennwerte verwenden; weder Messgerät noch Maschine öffnen. Arbeiten an der Netzverkabelung gehören in die Hand einer Elektrofachkraft nach den örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Make as many blocks as the difference takes</source>
        <translation>So viele Blöcke planen, wie der Unterschied braucht</translation>
    </message>
    <message>
        <source>Make one stretch of this one and the next</source>
        <translation>Aus diesem und dem nächsten einen Abschnitt machen</translation>
    </message>
    <message>
        <source>Make the same part on each machine, a few times, with a plug-in meter that saves a log.</source>
        <translation>Dasselbe Teil auf jeder Maschine einige Male fertigen, mit einem Zwischenstecker-Messgerät, das ein Log speichert.</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>Mär</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>Mark a stretch</source>
        <translation>Abschnitt markieren</translation>
    </message>
    <message>
        <source>Mark a stretch in the middle of what is visible of the log</source>
        <translation>Einen Abschnitt in der Mitte des sichtbaren Logs markieren</translation>
    </message>
    <message>
        <source>Mark a stretch of {place}</source>
        <translation>Einen Abschnitt von {place} markieren</translation>
    </message>
    <message>
        <source>Mark no span (Esc on the chart)</source>
        <translation>Keine Spanne markieren (Esc auf dem Diagramm)</translation>
    </message>
    <message>
        <source>Markdown (*.md)</source>
        <translation>Markdown (*.md)</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Material in the print</source>
        <translation>Material im Druck</translation>
    </message>
    <message>
        <source>Material of the part</source>
        <translation>Material des Teils</translation>
    </message>
    <message>
        <source>Material, a kg</source>
        <translation>Material, je kg</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>Mean energy divided by mean duration, so that energy, duration and power agree.</source>
        <translation>Mittlere Energie geteilt durch mittlere Dauer, damit Energie, Dauer und Leistung zusammenpassen.</translation>
    </message>
    <message>
        <source>Mean energy divided by mean duration.</source>
        <translation>Mittlere Energie geteilt durch mittlere Dauer.</translation>
    </message>
    <message>
        <source>Mean energy of one divided by mean energy of the other.</source>
        <translation>Mittlere Energie der einen geteilt durch mittlere Energie der anderen.</translation>
    </message>
    <message>
        <source>Mean energy of the runs that count, times the price.</source>
        <translation>Mittlere Energie der zählenden Läufe mal Preis.</translation>
    </message>
    <message>
        <source>Mean of the longest steady rest of a quarter of an hour or more; with no rest that long, the low end of the values at which the power rests while nothing heats.</source>
        <translation>Mittel der längsten gleichmäßigen Ruhe von einer Viertelstunde oder mehr; ohne so lange Ruhe das untere Ende der Werte, bei denen die Leistung ruht, während nichts heizt.</translation>
    </message>
    <message>
        <source>Mean of the runs that count, each measured at the plug.</source>
        <translation>Mittel der Läufe, die zählen, jeder an der Steckdose gemessen.</translation>
    </message>
    <message>
        <source>Mean of the runs that count, within what counts of a run.</source>
        <translation>Mittel der Läufe, die zählen, soweit sie gezählt werden.</translation>
    </message>
    <message>
        <source>Mean of the runs that count.</source>
        <translation>Mittel der zählenden Läufe.</translation>
    </message>
    <message>
        <source>Mean of the runs that reach into the span.</source>
        <translation>Mittel der Läufe, die in die Spanne reichen.</translation>
    </message>
    <message>
        <source>Mean of the runs whose bed share is seen.</source>
        <translation>Mittel der Läufe, deren Heizbettanteil zu sehen ist.</translation>
    </message>
    <message>
        <source>Mean of {runs:run|runs} of the part that count, each measured at the plug.</source>
        <translation>Mittel aus {runs:zählenden Lauf|zählenden Läufen} des Teils, jeder an der Steckdose gemessen.</translation>
    </message>
    <message>
        <source>Mean over the runs that count, each priced by what it drew at each moment, not by a mean price.</source>
        <translation>Mittel der zählenden Läufe, jeder bepreist nach dem, was er in jedem Augenblick zog, nicht nach einem mittleren Preis.</translation>
    </message>
    <message>
        <source>Mean power</source>
        <translation>Mittlere Leistung</translation>
    </message>
    <message>
        <source>Mean power [W]</source>
        <translation>Mittlere Leistung [W]</translation>
    </message>
    <message>
        <source>Mean power at the plug from the start of heating on, warm-up and all that the machine draws.</source>
        <translation>Mittlere Leistung an der Steckdose ab Beginn des Heizens, mit dem Aufheizen und allem, was die Maschine zieht.</translation>
    </message>
    <message>
        <source>Mean power of the longest stretch of standby, cut into windows of five minutes; it counts from the first window on from which no window stands out and both halves agree.</source>
        <translation>Mittlere Leistung des längsten Abschnitts in Bereitschaft, in Fenster von fünf Minuten geteilt; er zählt vom ersten Fenster an, ab dem keines heraussticht und beide Hälften übereinstimmen.</translation>
    </message>
    <message>
        <source>Mean watts</source>
        <translation>Mittlere Leistung</translation>
    </message>
    <message>
        <source>Mean watts per area of the beds fed from the mains, over that of the others.</source>
        <translation>Mittlere Leistung je Fläche der Heizbetten am Netz, geteilt durch die der anderen.</translation>
    </message>
    <message>
        <source>Meaning of column {name}</source>
        <translation>Bedeutung der Spalte {name}</translation>
    </message>
    <message>
        <source>Meas&amp;ure:</source>
        <translation>Messg&amp;röße:</translation>
    </message>
    <message>
        <source>Measure that is held against a property</source>
        <translation>Messgröße, die gegen eine Eigenschaft gehalten wird</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured [Wh]</source>
        <translation>Gemessen [Wh]</translation>
    </message>
    <message>
        <source>Measured and adjusted energy: one row a machine</source>
        <translation>Gemessene und umgerechnete Energie: eine Zeile je Maschine</translation>
    </message>
    <message>
        <source>Measured and adjusted values stand side by side; the difference is what a model makes of other temperatures, with its own uncertainty.</source>
        <translation>Gemessene und umgerechnete Werte stehen nebeneinander; der Unterschied ist, was ein Modell aus anderen Temperaturen macht, mit eigener Unsicherheit.</translation>
    </message>
    <message>
        <source>Measured, and made like for like</source>
        <translation>Gemessen und umgerechnet auf gleiche Bedingungen</translation>
    </message>
    <message>
        <source>Measured: {energy} Wh</source>
        <translation>Gemessen: {energy} Wh</translation>
    </message>
    <message>
        <source>Merge {gone} into {kept}</source>
        <translation>{gone} mit {kept} zusammenlegen</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Meter reads off</source>
        <translation>Messgerät zeigt falsch an</translation>
    </message>
    <message>
        <source>Meter this log was taken with</source>
        <translation>Messgerät, mit dem dieses Log aufgenommen wurde</translation>
    </message>
    <message>
        <source>Meter {number}</source>
        <translation>Messgerät {number}</translation>
    </message>
    <message>
        <source>Meter: {meter}</source>
        <translation>Messgerät: {meter}</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Meters and logs</source>
        <translation>Messgeräte und Logs</translation>
    </message>
    <message>
        <source>Meters checked</source>
        <translation>Messgeräte geprüft</translation>
    </message>
    <message>
        <source>Meters differ</source>
        <translation>Messgeräte weichen ab</translation>
    </message>
    <message>
        <source>Meters:</source>
        <translation>Messgeräte:</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Method, uncertainty and sources of a number</source>
        <translation>Methode, Unsicherheit und Quellen einer Zahl</translation>
    </message>
    <message>
        <source>Minutes in that state before a run</source>
        <translation>Minuten in diesem Zustand vor einem Lauf</translation>
    </message>
    <message>
        <source>Minutes that the energies took</source>
        <translation>Minuten, über die die Energien liefen</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <source>Mon to Fri</source>
        <translation>Mo bis Fr</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>Montag</translation>
    </message>
    <message>
        <source>More about this</source>
        <translation>Mehr dazu</translation>
    </message>
    <message>
        <source>More beds of each kind, alike but for their supply.</source>
        <translation>Mehr Heizbetten jeder Art, bis auf die Speisung gleich.</translation>
    </message>
    <message>
        <source>More machines: with these no division into groups at all could show a link.</source>
        <translation>Mehr Maschinen: Mit diesen könnte keine Aufteilung in Gruppen einen Zusammenhang nachweisen.</translation>
    </message>
    <message>
        <source>More machines: with these no order at all could show a link.</source>
        <translation>Mehr Maschinen: Mit diesen könnte keine Reihenfolge einen Zusammenhang nachweisen.</translation>
    </message>
    <message>
        <source>More pictures</source>
        <translation>Weitere Bilder</translation>
    </message>
    <message>
        <source>More runs</source>
        <translation>Weitere Läufe</translation>
    </message>
    <message>
        <source>More runs lessen what differs from run to run; what the meters leave open stays.</source>
        <translation>Mehr Läufe verringern, was von Lauf zu Lauf anders ist; was die Messgeräte offen lassen, bleibt.</translation>
    </message>
    <message>
        <source>More runs of both: the rest of the variance falls with their number.</source>
        <translation>Mehr Läufe von beiden: Der Rest der Varianz fällt mit ihrer Zahl.</translation>
    </message>
    <message>
        <source>More runs: the interval falls a little faster than with the root of their number.</source>
        <translation>Mehr Läufe: Das Intervall fällt etwas schneller als mit der Wurzel ihrer Zahl.</translation>
    </message>
    <message>
        <source>More runs: what differs from run to run can only be seen with two or more.</source>
        <translation>Mehr Läufe: Was von Lauf zu Lauf anders ist, zeigt sich erst bei zwei oder mehr.</translation>
    </message>
    <message>
        <source>More runs: {more} instead of {runs} would give about ± {half}, if they differ as these do.</source>
        <translation>Mehr Läufe: {more} statt {runs} gäben etwa ± {half}, wenn sie sich so unterscheiden wie diese.</translation>
    </message>
    <message>
        <source>More runs; a meter of better stated accuracy.</source>
        <translation>Mehr Läufe; ein Messgerät mit besser angegebener Genauigkeit.</translation>
    </message>
    <message>
        <source>More than {runs} runs on each of {machines} would be needed to show a difference of {wanted}.</source>
        <translation>Mehr als {runs} Läufe je Maschine ({machines}) wären nötig, um einen Unterschied von {wanted} nachzuweisen.</translation>
    </message>
    <message>
        <source>More: {pages}</source>
        <translation>Mehr: {pages}</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>Move a log to {name}</source>
        <translation>Ein Log zu {name} verschieben</translation>
    </message>
    <message>
        <source>Move an edge of {title}</source>
        <translation>Einen Rand von {title} verschieben</translation>
    </message>
    <message>
        <source>Name (F2)</source>
        <translation>Name (F2)</translation>
    </message>
    <message>
        <source>Name every step; add a step with the motors moving.</source>
        <translation>Jede Stufe benennen; eine Stufe mit bewegten Motoren hinzufügen.</translation>
    </message>
    <message>
        <source>Name of another machine</source>
        <translation>Name einer weiteren Maschine</translation>
    </message>
    <message>
        <source>Name of another meter</source>
        <translation>Name eines weiteren Messgeräts</translation>
    </message>
    <message>
        <source>Name of band {place}</source>
        <translation>Name der Preisstufe {place}</translation>
    </message>
    <message>
        <source>Name of the column that is chosen in the table</source>
        <translation>Name der in der Tabelle gewählten Spalte</translation>
    </message>
    <message>
        <source>Name of the machine</source>
        <translation>Name der Maschine</translation>
    </message>
    <message>
        <source>Name of the meter</source>
        <translation>Name des Messgeräts</translation>
    </message>
    <message>
        <source>Name of the new column</source>
        <translation>Name der neuen Spalte</translation>
    </message>
    <message>
        <source>Name of the stretch</source>
        <translation>Name des Abschnitts</translation>
    </message>
    <message>
        <source>Name of the study</source>
        <translation>Name der Studie</translation>
    </message>
    <message>
        <source>Name of the test part</source>
        <translation>Name des Prüfteils</translation>
    </message>
    <message>
        <source>Name the source of the CO2 factor</source>
        <translation>Quelle des CO2-Faktors angeben</translation>
    </message>
    <message>
        <source>Neither mean has an interval.</source>
        <translation>Keines der beiden Mittel hat ein Intervall.</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>New study</source>
        <translation>Neue Studie</translation>
    </message>
    <message>
        <source>No column holds power or energy (columns: {columns}). Name it in the Reading panel.</source>
        <translation>Keine Spalte enthält Leistung oder Energie (Spalten: {columns}). Sie unter „Einlesen“ nennen.</translation>
    </message>
    <message>
        <source>No column tells the time (columns: {columns}). Name the time column in the Reading panel.</source>
        <translation>Keine Spalte nennt die Zeit (Spalten: {columns}). Unter „Einlesen“ die Zeitspalte nennen.</translation>
    </message>
    <message>
        <source>No complete run of the part was found</source>
        <translation>Kein vollständiger Lauf des Teils gefunden</translation>
    </message>
    <message>
        <source>No complete run of the {part} was found in no logs.</source>
        <translation>Kein vollständiger Lauf ({part}): Es gibt kein Log.</translation>
    </message>
    <message>
        <source>No complete run of the {part} was found in {logs:log|logs}.</source>
        <translation>Kein vollständiger Lauf ({part}) in {logs:Log|Logs} gefunden.</translation>
    </message>
    <message>
        <source>No difference between machines is shown.</source>
        <translation>Zwischen Maschinen ist kein Unterschied nachgewiesen.</translation>
    </message>
    <message>
        <source>No difference is shown</source>
        <translation>Kein Unterschied nachgewiesen</translation>
    </message>
    <message>
        <source>No difference shown between the beds of {machines} for their size: about {watts} held at {celsius} °C.</source>
        <translation>Kein Unterschied nachgewiesen zwischen den Heizbetten von {machines} für ihre Größe: etwa {watts}, bei {celsius} °C gehalten.</translation>
    </message>
    <message>
        <source>No difference shown by {property}: {told}; {p}.</source>
        <translation>Kein Unterschied nachgewiesen nach „{property}“: {told}; {p}.</translation>
    </message>
    <message>
        <source>No hold test of this machine shows a warm-up from cold.</source>
        <translation>Kein Halteversuch dieser Maschine zeigt ein Aufheizen aus dem kalten Zustand.</translation>
    </message>
    <message>
        <source>No hold test of this machine was found or marked.</source>
        <translation>Kein Halteversuch dieser Maschine wurde gefunden oder markiert.</translation>
    </message>
    <message>
        <source>No hold test yet: nobody has measured what a bed takes to stay warm.</source>
        <translation>Noch kein Halteversuch: Niemand hat gemessen, was ein Heizbett zum Warmbleiben braucht.</translation>
    </message>
    <message>
        <source>No link shown between {measure} and {property} ({told}).</source>
        <translation>Kein Zusammenhang nachgewiesen zwischen „{measure}“ und „{property}“ ({told}).</translation>
    </message>
    <message>
        <source>No log of this machine shows it doing nothing.</source>
        <translation>Kein Log dieser Maschine zeigt sie untätig.</translation>
    </message>
    <message>
        <source>No log of {name} shows it doing nothing.</source>
        <translation>Kein Log zeigt {name} untätig.</translation>
    </message>
    <message>
        <source>No log shows a machine doing nothing for a quarter of an hour, so standby is not known.</source>
        <translation>Kein Log zeigt eine Maschine eine Viertelstunde lang untätig, daher ist die Bereitschaft nicht bekannt.</translation>
    </message>
    <message>
        <source>No logs yet.</source>
        <translation>Noch keine Logs.</translation>
    </message>
    <message>
        <source>No longer found. Accepted before: “{why}”</source>
        <translation>Nicht mehr gefunden. Früher hingenommen: „{why}“</translation>
    </message>
    <message>
        <source>No machine</source>
        <translation>Keine Maschine</translation>
    </message>
    <message>
        <source>No machine can be adjusted yet: the note under the table says what would help.</source>
        <translation>Noch lässt sich keine Maschine umrechnen: Die Anmerkung unter der Tabelle sagt, was helfen würde.</translation>
    </message>
    <message>
        <source>No machine can be adjusted.</source>
        <translation>Keine Maschine lässt sich umrechnen.</translation>
    </message>
    <message>
        <source>No machine has both a value of {measure} and of {property}.</source>
        <translation>Keine Maschine hat einen Wert sowohl für „{measure}“ als auch für „{property}“.</translation>
    </message>
    <message>
        <source>No machine is planned yet: add the machines of the test below.</source>
        <translation>Noch ist keine Maschine geplant: die Maschinen des Versuchs unten hinzufügen.</translation>
    </message>
    <message>
        <source>No number of runs would show a difference of {wanted} between {machines}: what their meters leave open hides {hidden}</source>
        <translation>Keine Zahl von Läufen würde einen Unterschied von {wanted} zwischen {machines} nachweisen: Was ihre Messgeräte offen lassen, verdeckt {hidden}</translation>
    </message>
    <message>
        <source>No personal data was found in the logs or in the study&apos;s own words.</source>
        <translation>In den Logs und in den Texten der Studie wurden keine persönlichen Daten gefunden.</translation>
    </message>
    <message>
        <source>No price is set.</source>
        <translation>Kein Preis ist gesetzt.</translation>
    </message>
    <message>
        <source>No prices by date were found. A row needs a date and time, such as 2026-01-31 16:30, and a price.</source>
        <translation>Keine Preise nach Datum gefunden. Eine Zeile braucht Datum und Uhrzeit, etwa 2026-01-31 16:30, und einen Preis.</translation>
    </message>
    <message>
        <source>No rest in the logs lasts {shortest_s:.0f} minutes, so no mean was taken.</source>
        <translation>Keine Pause in den Logs dauert {shortest_s:.0f} Minuten, daher gibt es kein Mittel.</translation>
    </message>
    <message>
        <source>No rest of a quarter of an hour, so no year of it: {machines}.</source>
        <translation>Keine Pause von einer Viertelstunde, daher kein Jahr davon: {machines}.</translation>
    </message>
    <message>
        <source>No rest of it is long enough for a mean of its standby power.</source>
        <translation>Keine ihrer Pausen ist lang genug für ein Mittel der Bereitschaftsleistung.</translation>
    </message>
    <message>
        <source>No room here for {weeks:more week|more weeks}; choose fewer machines</source>
        <translation>Kein Platz für {weeks:weitere Woche|weitere Wochen}; weniger Maschinen wählen</translation>
    </message>
    <message>
        <source>No row could be used: the first time could not be read in: {text}. Name the time column, or its order of day and month, in the Reading panel.</source>
        <translation>Keine Zeile war brauchbar: Die erste Zeit ließ sich nicht lesen in: {text}. Unter „Einlesen“ die Zeitspalte oder die Reihenfolge von Tag und Monat nennen.</translation>
    </message>
    <message>
        <source>No row could be used: the first time is {text}, and a log can only be from {first} to {last}. Set the meter&apos;s clock, or name another time column in the Reading panel.</source>
        <translation>Keine Zeile war brauchbar: Die erste Zeit ist {text}, und ein Log kann nur von {first} bis {last} sein. Die Uhr des Messgeräts stellen oder unter „Einlesen“ eine andere Zeitspalte nennen.</translation>
    </message>
    <message>
        <source>No rows of values were found; it begins with: {first_line}. Save the log as comma-separated text.</source>
        <translation>Keine Zeilen mit Werten gefunden; es beginnt mit: {first_line}. Das Log als Text mit Kommas zwischen den Werten speichern.</translation>
    </message>
    <message>
        <source>No run</source>
        <translation>Kein Lauf</translation>
    </message>
    <message>
        <source>No run has been measured yet, so there is nothing to be fair or unfair.</source>
        <translation>Noch ist kein Lauf gemessen, also kann nichts fair oder unfair sein.</translation>
    </message>
    <message>
        <source>No run has been repeated yet, so a scatter of {spread} is assumed: state what you expect.</source>
        <translation>Noch wurde kein Lauf wiederholt, daher wird eine Streuung von {spread} angenommen: die erwartete Streuung angeben.</translation>
    </message>
    <message>
        <source>No run of this machine counts.</source>
        <translation>Kein Lauf dieser Maschine zählt.</translation>
    </message>
    <message>
        <source>No run of {name} counts.</source>
        <translation>Kein Lauf von {name} zählt.</translation>
    </message>
    <message>
        <source>No run tells what a print of {hours} takes.</source>
        <translation>Kein Lauf sagt, was ein Druck von {hours} braucht.</translation>
    </message>
    <message>
        <source>No run that counts was made at a time whose price is known.</source>
        <translation>Kein zählender Lauf fällt in eine Zeit, deren Preis bekannt ist.</translation>
    </message>
    <message>
        <source>No runs are chosen</source>
        <translation>Keine Läufe gewählt</translation>
    </message>
    <message>
        <source>No runs are shown.</source>
        <translation>Keine Läufe werden gezeigt.</translation>
    </message>
    <message>
        <source>No runs to line up yet</source>
        <translation>Noch keine Läufe für den Verlauf</translation>
    </message>
    <message>
        <source>No stretch selected</source>
        <translation>Kein Abschnitt ausgewählt</translation>
    </message>
    <message>
        <source>No study can be kept in {folder} ({why}); give this user the right to write there, or free some room.</source>
        <translation>In {folder} lässt sich keine Studie ablegen ({why}); diesem Benutzer dort Schreibrecht geben oder Platz schaffen.</translation>
    </message>
    <message>
        <source>No study is open, so the logs were not read; open one, or start a new one.</source>
        <translation>Keine Studie ist geöffnet, daher wurden die Logs nicht gelesen; eine öffnen oder eine neue beginnen.</translation>
    </message>
    <message>
        <source>No switch-on test yet: nobody has measured what each load takes.</source>
        <translation>Noch kein Einschaltversuch: Niemand hat gemessen, was jeder Verbraucher braucht.</translation>
    </message>
    <message>
        <source>No test from cold lasted an hour: whether the warm-up matters cannot be told.</source>
        <translation>Kein Versuch aus dem Kalten dauerte eine Stunde: Ob das Aufheizen etwas ausmacht, lässt sich nicht sagen.</translation>
    </message>
    <message>
        <source>No unit is stated for the energy counter; taken as {unit}. Set it in the Reading panel.</source>
        <translation>Für den Energiezähler ist keine Einheit angegeben; als {unit} gelesen. Sie unter „Einlesen“ setzen.</translation>
    </message>
    <message>
        <source>No unit is stated for the power and it never exceeds {highest}; taken as watts. Set kW in the Reading panel if that is meant.</source>
        <translation>Für die Leistung ist keine Einheit angegeben, und sie liegt nie über {highest}; als Watt gelesen. Falls kW gemeint ist, dies unter „Einlesen“ setzen.</translation>
    </message>
    <message>
        <source>No unit is stated for the power; at up to {highest} it must be milliwatts.</source>
        <translation>Für die Leistung ist keine Einheit angegeben; bei bis zu {highest} müssen es Milliwatt sein.</translation>
    </message>
    <message>
        <source>No warm-up was seen: the time the bed cools is an ordinary one.</source>
        <translation>Kein Aufheizen gesehen: Für die Zeit, in der das Heizbett abkühlt, gilt eine gewöhnliche.</translation>
    </message>
    <message>
        <source>Nobody noted it.</source>
        <translation>Niemand hat sie notiert.</translation>
    </message>
    <message>
        <source>Nobody noted it: an ordinary room is taken.</source>
        <translation>Niemand hat sie notiert: Es gilt ein gewöhnlicher Raum.</translation>
    </message>
    <message>
        <source>Nobody stated the accuracy of {meters}: taken as ±1 % of reading and ±0.3 W; enter what the data sheet states.</source>
        <translation>Niemand gab die Genauigkeit an ({meters}): angenommen ±1 % der Anzeige und ±0,3 W; eintragen, was das Datenblatt angibt.</translation>
    </message>
    <message>
        <source>None of {judged:run|runs} leaves its band</source>
        <translation>Von {judged:Lauf|Läufen} verlässt keiner sein Band</translation>
    </message>
    <message>
        <source>Not at all</source>
        <translation>Gar nicht</translation>
    </message>
    <message>
        <source>Not counted (hollow): {runs}.</source>
        <translation>Nicht gezählt (hohl): {runs}.</translation>
    </message>
    <message>
        <source>Not counted by the program’s rules</source>
        <translation>Nach den Regeln des Programms nicht gezählt</translation>
    </message>
    <message>
        <source>Not counted: {why}</source>
        <translation>Nicht gezählt: {why}</translation>
    </message>
    <message>
        <source>Not counted: {why}; edges set by hand</source>
        <translation>Nicht gezählt: {why}; Ränder von Hand gesetzt</translation>
    </message>
    <message>
        <source>Not known; never zero.</source>
        <translation>Nicht bekannt; nie null.</translation>
    </message>
    <message>
        <source>Not looked at, because nobody noted it: temperature of {places}.</source>
        <translation>Nicht betrachtet, weil niemand sie notiert hat: Temperatur von {places}.</translation>
    </message>
    <message>
        <source>Not noted</source>
        <translation>Nicht notiert</translation>
    </message>
    <message>
        <source>Not steady: {machines}.</source>
        <translation>Nicht gleichmäßig: {machines}.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Note a temperature of the runs of {name}</source>
        <translation>Eine Temperatur der Läufe von {name} notieren</translation>
    </message>
    <message>
        <source>Note temperatures of {title}</source>
        <translation>Temperaturen notieren ({title})</translation>
    </message>
    <message>
        <source>Note the property, or measure, on {lacking:more machine|more machines} that is left out now.</source>
        <translation>Die Eigenschaft an {lacking:weiteren Maschine|weiteren Maschinen} notieren oder messen, jetzt ausgelassen.</translation>
    </message>
    <message>
        <source>Note the temperatures of bed and room of every run, or log them.</source>
        <translation>Die Temperaturen von Heizbett und Raum bei jedem Lauf notieren oder aufzeichnen.</translation>
    </message>
    <message>
        <source>Note what went wrong in the remarks, and make a failed run again at the end of its block.</source>
        <translation>Was schiefging, unter Bemerkungen notieren und einen misslungenen Lauf am Ende seines Blocks wiederholen.</translation>
    </message>
    <message>
        <source>Nothing else was found in the logs.</source>
        <translation>Sonst wurde in den Logs nichts gefunden.</translation>
    </message>
    <message>
        <source>Nothing has been tested yet</source>
        <translation>Noch wurde nichts geprüft</translation>
    </message>
    <message>
        <source>Nothing here</source>
        <translation>Hier ist nichts</translation>
    </message>
    <message>
        <source>Nothing is known of what makes its energy unsure.</source>
        <translation>Was die Energie unsicher macht, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Nothing is known that makes it unsure: all runs took exactly as long.</source>
        <translation>Nichts ist bekannt, was sie unsicher macht: Alle Läufe dauerten genau gleich lang.</translation>
    </message>
    <message>
        <source>Nothing leaves this computer. The logs stay as they are; a copy is kept inside the study.</source>
        <translation>Nichts verlässt diesen Rechner. Die Logs bleiben, wie sie sind; eine Kopie liegt in der Studie.</translation>
    </message>
    <message>
        <source>Nothing scatters in these levels.</source>
        <translation>In diesen Leistungsstufen streut nichts.</translation>
    </message>
    <message>
        <source>Nothing that was found makes {what} unfair</source>
        <translation>Nichts, was gefunden wurde, macht {what} unfair</translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation>Noch nichts zu vergleichen</translation>
    </message>
    <message>
        <source>Nothing to compare yet: add the meter logs of two or more machines.</source>
        <translation>Noch nichts zu vergleichen: die Logs von zwei oder mehr Maschinen hinzufügen.</translation>
    </message>
    <message>
        <source>Nothing to make like for like yet.</source>
        <translation>Noch nichts, was sich Gleiches mit Gleichem vergleichen ließe.</translation>
    </message>
    <message>
        <source>Nothing to price yet</source>
        <translation>Noch nichts, was kostet</translation>
    </message>
    <message>
        <source>Nothing to price yet: add the meter logs of one machine or more.</source>
        <translation>Noch nichts zu berechnen: die Logs von einer oder mehr Maschinen hinzufügen.</translation>
    </message>
    <message>
        <source>Nothing to publish yet</source>
        <translation>Noch nichts zu veröffentlichen</translation>
    </message>
    <message>
        <source>Nothing was added to the file since it was read.</source>
        <translation>Seit dem Lesen ist nichts zur Datei hinzugekommen.</translation>
    </message>
    <message>
        <source>Nothing was found against {what}.</source>
        <translation>Nichts wurde gefunden, was gegen {what} spricht.</translation>
    </message>
    <message>
        <source>Nothing was measured of it.</source>
        <translation>Davon wurde nichts gemessen.</translation>
    </message>
    <message>
        <source>Nothing was printed ({error}). Choose another printer, or save the sheet as PDF.</source>
        <translation>Es wurde nichts gedruckt ({error}). Einen anderen Drucker wählen oder den Laufzettel als PDF speichern.</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>Nov</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>Nozzle</source>
        <translation>Düse</translation>
    </message>
    <message>
        <source>Nozzle (°C)</source>
        <translation>Düse (°C)</translation>
    </message>
    <message>
        <source>Nozzle [°C]</source>
        <translation>Düse [°C]</translation>
    </message>
    <message>
        <source>Nozzle at the first layer in degrees</source>
        <translation>Düse bei der ersten Schicht in Grad</translation>
    </message>
    <message>
        <source>Nozzle temperature</source>
        <translation>Düsentemperatur</translation>
    </message>
    <message>
        <source>Nozzle °C</source>
        <translation>Düse °C</translation>
    </message>
    <message>
        <source>Nozzle, first layer</source>
        <translation>Düse, erste Schicht</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>Okt</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Of all pairs of machines that are told apart, the two whose mean energies lie nearest.</source>
        <translation>Von allen unterscheidbaren Maschinenpaaren die zwei, deren mittlere Energien am nächsten liegen.</translation>
    </message>
    <message>
        <source>Of one run there is no spread, and so no interval.</source>
        <translation>Ein einziger Lauf hat keine Streuung und so kein Intervall.</translation>
    </message>
    <message>
        <source>Of the bed</source>
        <translation>Vom Heizbett</translation>
    </message>
    <message>
        <source>Of the bed [%]</source>
        <translation>Vom Heizbett [%]</translation>
    </message>
    <message>
        <source>Of the floor</source>
        <translation>Von der Untergrenze</translation>
    </message>
    <message>
        <source>Of the floor [%]</source>
        <translation>Von der Untergrenze [%]</translation>
    </message>
    <message>
        <source>Of the run</source>
        <translation>Vom Lauf</translation>
    </message>
    <message>
        <source>Of the run [%]</source>
        <translation>Vom Lauf [%]</translation>
    </message>
    <message>
        <source>Of the variance</source>
        <translation>Von der Varianz</translation>
    </message>
    <message>
        <source>Of two beds on one meter its gain drops out.</source>
        <translation>Bei zwei Heizbetten an einem Messgerät fällt dessen Verstärkung heraus.</translation>
    </message>
    <message>
        <source>On one load no difference is shown: {meter} reads {percents} % less than {other}.</source>
        <translation>An einer Last ist kein Unterschied nachgewiesen: {meter} zeigt {percents} % weniger an als {other}.</translation>
    </message>
    <message>
        <source>On one load no difference is shown: {meter} reads {percents} % more than {other}.</source>
        <translation>An einer Last ist kein Unterschied nachgewiesen: {meter} zeigt {percents} % mehr an als {other}.</translation>
    </message>
    <message>
        <source>On one load {meter} reads {percents} % less than {other}.</source>
        <translation>An einer Last zeigt {meter} {percents} % weniger an als {other}.</translation>
    </message>
    <message>
        <source>On one load {meter} reads {percents} % more than {other}.</source>
        <translation>An einer Last zeigt {meter} {percents} % mehr an als {other}.</translation>
    </message>
    <message>
        <source>On while idle</source>
        <translation>Im Leerlauf an</translation>
    </message>
    <message>
        <source>On {machine}: {loads}.</source>
        <translation>Bei {machine}: {loads}.</translation>
    </message>
    <message>
        <source>On {machine}: {loads}; {watts} of processing stay unexplained.</source>
        <translation>Bei {machine}: {loads}; {watts} der Fertigung bleiben unerklärt.</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws about as much as {other} ({watts} against {other_watts} W) for a shorter time ({times})</source>
        <translation>Einmal warm, zieht {machine} etwa so viel wie {other} ({watts} gegen {other_watts} W), aber kürzer ({times})</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws about as much as {other} ({watts} against {other_watts} W) for about as long ({times})</source>
        <translation>Einmal warm, zieht {machine} etwa so viel wie {other} ({watts} gegen {other_watts} W), etwa gleich lang ({times})</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws about as much as {other} ({watts} against {other_watts} W) for longer ({times})</source>
        <translation>Einmal warm, zieht {machine} etwa so viel wie {other} ({watts} gegen {other_watts} W), aber länger ({times})</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws less than {other} ({watts} against {other_watts} W) and for a shorter time ({times})</source>
        <translation>Einmal warm, zieht {machine} weniger als {other} ({watts} gegen {other_watts} W), und das kürzer ({times})</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws less than {other} ({watts} against {other_watts} W) but for longer ({times})</source>
        <translation>Einmal warm, zieht {machine} weniger als {other} ({watts} gegen {other_watts} W), aber länger ({times})</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws less than {other} ({watts} against {other_watts} W) for about as long ({times})</source>
        <translation>Einmal warm, zieht {machine} weniger als {other} ({watts} gegen {other_watts} W), etwa gleich lang ({times})</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws more than {other} ({watts} against {other_watts} W) and for longer ({times})</source>
        <translation>Einmal warm, zieht {machine} mehr als {other} ({watts} gegen {other_watts} W), und das länger ({times})</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws more than {other} ({watts} against {other_watts} W) but for a shorter time ({times})</source>
        <translation>Einmal warm, zieht {machine} mehr als {other} ({watts} gegen {other_watts} W), aber kürzer ({times})</translation>
    </message>
    <message>
        <source>Once warm, {machine} draws more than {other} ({watts} against {other_watts} W) for about as long ({times})</source>
        <translation>Einmal warm, zieht {machine} mehr als {other} ({watts} gegen {other_watts} W), etwa gleich lang ({times})</translation>
    </message>
    <message>
        <source>One file with pictures, tables and method, for any browser</source>
        <translation>Eine Datei mit Bildern, Tabellen und Methode, für jeden Browser</translation>
    </message>
    <message>
        <source>One kilowatt hour divided by the energy of the run.</source>
        <translation>Eine Kilowattstunde geteilt durch die Energie des Laufs.</translation>
    </message>
    <message>
        <source>One kilowatt hour divided by the mean energy; it is not the mean of the runs&apos; own values.</source>
        <translation>Eine Kilowattstunde geteilt durch die mittlere Energie; nicht das Mittel der einzelnen Läufe.</translation>
    </message>
    <message>
        <source>One meter for both machines: {share} of the variance is the meters&apos;, and would all but cancel.</source>
        <translation>Ein Messgerät für beide Maschinen: {share} der Varianz stammt von den Messgeräten und höbe sich fast ganz auf.</translation>
    </message>
    <message>
        <source>One print on each</source>
        <translation>Ein Druck auf jeder</translation>
    </message>
    <message>
        <source>One print on each: a cooler bed after the first layers</source>
        <translation>Je ein Druck: ein kühleres Heizbett nach den ersten Schichten</translation>
    </message>
    <message>
        <source>One row a machine, one column a property. Type to fill a cell, Delete empties, Ctrl+V pastes.</source>
        <translation>Eine Zeile je Maschine, eine Spalte je Eigenschaft. Tippen füllt eine Zelle, Entf leert sie, Strg+V fügt ein.</translation>
    </message>
    <message>
        <source>One run each: none can be left out.</source>
        <translation>Je ein Lauf: Keiner lässt sich weglassen.</translation>
    </message>
    <message>
        <source>One run only</source>
        <translation>Nur ein Lauf</translation>
    </message>
    <message>
        <source>One run only: the interval holds what the meter leaves open, not what differs from run to run.</source>
        <translation>Nur ein Lauf: Das Intervall enthält, was das Messgerät offen lässt, nicht, was von Lauf zu Lauf anders ist.</translation>
    </message>
    <message>
        <source>One study at a time: {other} is left aside; compare them one after another.</source>
        <translation>Eine Studie auf einmal: {other} bleibt außer Betracht; eine nach der anderen vergleichen.</translation>
    </message>
    <message>
        <source>One thing makes {what} unfair: {points}.</source>
        <translation>Eines macht {what} unfair: {points}.</translation>
    </message>
    <message>
        <source>One watt more would be {per_watt} kWh more a year.</source>
        <translation>Ein Watt mehr wären {per_watt} kWh mehr im Jahr.</translation>
    </message>
    <message>
        <source>Only an energy counter is logged; the power is its slope, in steps of {step_wh} Wh.</source>
        <translation>Nur ein Energiezähler ist aufgezeichnet; die Leistung ist seine Steigung, in Schritten von {step_wh} Wh.</translation>
    </message>
    <message>
        <source>Only one bundle is read at a time; {other} was passed over.</source>
        <translation>Es wird immer nur ein Bündel gelesen; {other} wurde übergangen.</translation>
    </message>
    <message>
        <source>Only the SHA-256 of each log</source>
        <translation>Nur der SHA-256 jedes Logs</translation>
    </message>
    <message>
        <source>Only volts and amperes are known, so this is apparent power in VA, which is more than the real power ({column}).</source>
        <translation>Nur Volt und Ampere sind bekannt, daher ist dies Scheinleistung in VA, die größer ist als die Wirkleistung ({column}).</translation>
    </message>
    <message>
        <source>Only {count:row|rows} could be used, and a trace needs two. Save a longer log.</source>
        <translation>Nur {count:Zeile war|Zeilen waren} brauchbar, und ein Verlauf braucht zwei. Ein längeres Log speichern.</translation>
    </message>
    <message>
        <source>Only {machine} can be adjusted: there is nothing to hold it against.</source>
        <translation>Nur {machine} lässt sich umrechnen: Es gibt nichts, woran sie zu messen wäre.</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Open a study</source>
        <translation>Eine Studie öffnen</translation>
    </message>
    <message>
        <source>Open a study or a bundle</source>
        <translation>Eine Studie oder ein Bündel öffnen</translation>
    </message>
    <message>
        <source>Open for reading only</source>
        <translation>Nur zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>Open points of fairness</source>
        <translation>Offene Punkte der Fairness</translation>
    </message>
    <message>
        <source>Open the &amp;demo</source>
        <translation>&amp;Demo öffnen</translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation>Demo öffnen</translation>
    </message>
    <message>
        <source>Open {name}</source>
        <translation>{name} öffnen</translation>
    </message>
    <message>
        <source>Opening…</source>
        <translation>Wird geöffnet…</translation>
    </message>
    <message>
        <source>Operating states week by week</source>
        <translation>Betriebszustände Woche für Woche</translation>
    </message>
    <message>
        <source>Or the same steady load held against both meters: it tells their ratio.</source>
        <translation>Oder dieselbe gleichmäßige Last an beiden Messgeräten: Das gibt ihr Verhältnis.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Order &amp;of seed:</source>
        <translation>Re&amp;ihenfolge zum Startwert:</translation>
    </message>
    <message>
        <source>Order and run sheet</source>
        <translation>Reihenfolge und Laufzettel</translation>
    </message>
    <message>
        <source>Order of a date</source>
        <translation>Reihenfolge im Datum</translation>
    </message>
    <message>
        <source>Order of the runs</source>
        <translation>Reihenfolge der Läufe</translation>
    </message>
    <message>
        <source>Order of the runs, a sheet to print, and how many repeats it takes</source>
        <translation>Reihenfolge der Läufe, ein Laufzettel zum Drucken und die nötige Zahl der Wiederholungen</translation>
    </message>
    <message>
        <source>Other &amp;times</source>
        <translation>&amp;Übrige Zeiten</translation>
    </message>
    <message>
        <source>Other machine of the pair</source>
        <translation>Andere Maschine des Paars</translation>
    </message>
    <message>
        <source>Outlier</source>
        <translation>Ausreißer</translation>
    </message>
    <message>
        <source>Over each other</source>
        <translation>Übereinander</translation>
    </message>
    <message>
        <source>P = {terms}, d in K above the room</source>
        <translation>P = {terms}, d in K über dem Raum</translation>
    </message>
    <message>
        <source>PDF page (*.pdf)</source>
        <translation>PDF-Seite (*.pdf)</translation>
    </message>
    <message>
        <source>PDF report (*.pdf)</source>
        <translation>PDF-Bericht (*.pdf)</translation>
    </message>
    <message>
        <source>PDF, drawing</source>
        <translation>PDF, Zeichnung</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>PNG-Bild (*.png)</translation>
    </message>
    <message>
        <source>PNG, pixels</source>
        <translation>PNG, Pixel</translation>
    </message>
    <message>
        <source>Page {number} of {count}</source>
        <translation>Seite {number} von {count}</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Part of the variance [%]</source>
        <translation>Anteil der Varianz [%]</translation>
    </message>
    <message>
        <source>Part: {part}.</source>
        <translation>Teil: {part}.</translation>
    </message>
    <message>
        <source>Part: {part}. Material: {material}.</source>
        <translation>Teil: {part}. Material: {material}.</translation>
    </message>
    <message>
        <source>Parts per kWh</source>
        <translation>Teile je kWh</translation>
    </message>
    <message>
        <source>Parts per kWh is 1000 Wh divided by a machine’s mean energy per part, mean power its mean energy divided by its mean duration; their intervals are that of the energy, in the same proportion.</source>
        <translation>Teile je kWh sind 1000 Wh geteilt durch die mittlere Energie je Teil einer Maschine, die mittlere Leistung ist ihre mittlere Energie geteilt durch ihre mittlere Dauer; ihre Intervalle sind das der Energie, im gleichen Verhältnis.</translation>
    </message>
    <message>
        <source>Pasted</source>
        <translation>Eingefügt</translation>
    </message>
    <message>
        <source>Per area</source>
        <translation>Je Fläche</translation>
    </message>
    <message>
        <source>Per area [W/dm²]</source>
        <translation>Je Fläche [W/dm²]</translation>
    </message>
    <message>
        <source>Personal data in {name} could not be replaced without changing how it is read, so the log itself is not given away, only its SHA-256.</source>
        <translation>Persönliche Daten in {name} ließen sich nicht ersetzen, ohne zu ändern, wie es gelesen wird; daher wird nicht das Log selbst weitergegeben, nur sein SHA-256.</translation>
    </message>
    <message>
        <source>Plan a test…</source>
        <translation>Versuch planen…</translation>
    </message>
    <message>
        <source>Plan for displays in {unit}</source>
        <translation>Für Anzeigen in {unit} planen</translation>
    </message>
    <message>
        <source>Plan more runs</source>
        <translation>Mehr Läufe planen</translation>
    </message>
    <message>
        <source>Plan more runs of {name}</source>
        <translation>Mehr Läufe von {name} einplanen</translation>
    </message>
    <message>
        <source>Plan no same-load checks</source>
        <translation>Keine Prüfungen an gleicher Last einplanen</translation>
    </message>
    <message>
        <source>Plan runs to be made again</source>
        <translation>Läufe zum Wiederholen einplanen</translation>
    </message>
    <message>
        <source>Plan same-load checks</source>
        <translation>Prüfungen an gleicher Last einplanen</translation>
    </message>
    <message>
        <source>Plan so many</source>
        <translation>So viele planen</translation>
    </message>
    <message>
        <source>Plan {count:block|blocks}</source>
        <translation>{count:Block|Blöcke} planen</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Power and energy</source>
        <translation>Leistung und Energie</translation>
    </message>
    <message>
        <source>Power below zero</source>
        <translation>Leistung unter null</translation>
    </message>
    <message>
        <source>Power in {power_unit} adds up to {ratio} times what the counter gained in {counter_unit}. Check the units in the Reading panel.</source>
        <translation>Die Leistung in {power_unit} ergibt das {ratio}-Fache dessen, was der Zähler in {counter_unit} zugelegt hat. Die Einheiten unter „Einlesen“ prüfen.</translation>
    </message>
    <message>
        <source>Power machine by machine</source>
        <translation>Leistung Maschine für Maschine</translation>
    </message>
    <message>
        <source>Power moved</source>
        <translation>Leistung änderte sich</translation>
    </message>
    <message>
        <source>Power of all machines</source>
        <translation>Leistung aller Maschinen</translation>
    </message>
    <message>
        <source>Power, {machine}</source>
        <translation>Leistung, {machine}</translation>
    </message>
    <message>
        <source>Pri&amp;ced</source>
        <translation>&amp;Preisbildung</translation>
    </message>
    <message>
        <source>Pri&amp;nt…</source>
        <translation>Druc&amp;ken…</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Price by {name}</source>
        <translation>Preise nach {name}</translation>
    </message>
    <message>
        <source>Price of a kilowatt hour</source>
        <translation>Preis einer Kilowattstunde</translation>
    </message>
    <message>
        <source>Price of a set of the parts that wear</source>
        <translation>Preis eines Satzes Verschleißteile</translation>
    </message>
    <message>
        <source>Price of band {place} a kWh</source>
        <translation>Preis der Preisstufe {place} je kWh</translation>
    </message>
    <message>
        <source>Price of electricity</source>
        <translation>Strompreis</translation>
    </message>
    <message>
        <source>Price of the material a kilogram</source>
        <translation>Preis des Materials je Kilogramm</translation>
    </message>
    <message>
        <source>Price of the print</source>
        <translation>Preis des Drucks</translation>
    </message>
    <message>
        <source>Price: {price}, as you stated it.</source>
        <translation>Preis: {price}, wie angegeben.</translation>
    </message>
    <message>
        <source>Price: {price}, the mean over all dates of the list.</source>
        <translation>Preis: {price}, das Mittel über alle Tage der Liste.</translation>
    </message>
    <message>
        <source>Price: {price}, the mean over the {year_hours} h of {year}.</source>
        <translation>Preis: {price}, das Mittel über die {year_hours} h des Jahres {year}.</translation>
    </message>
    <message>
        <source>Prices as text (*.csv *.txt *.tsv)</source>
        <translation>Preise als Text (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Print [h]</source>
        <translation>Druck [h]</translation>
    </message>
    <message>
        <source>Print [s]</source>
        <translation>Druck [s]</translation>
    </message>
    <message>
        <source>Printing a year</source>
        <translation>Drucken im Jahr</translation>
    </message>
    <message>
        <source>Pri&amp;nts that fail</source>
        <translation>&amp;Fehldrucke</translation>
    </message>
    <message>
        <source>Prints that fail, of all that are begun</source>
        <translation>Anteil der Fehldrucke an allen begonnenen Drucken</translation>
    </message>
    <message>
        <source>Processing</source>
        <translation>Fertigung</translation>
    </message>
    <message>
        <source>Processing [W]</source>
        <translation>Fertigung [W]</translation>
    </message>
    <message>
        <source>Processing for {processing_s}: its watts at these temperatures over that time.</source>
        <translation>Fertigung über {processing_s}: die Leistung bei diesen Temperaturen über diese Zeit.</translation>
    </message>
    <message>
        <source>Processing only is compared already; leave the run out, or accept this</source>
        <translation>Es wird schon nur die Fertigung verglichen; den Lauf auslassen oder dies hinnehmen</translation>
    </message>
    <message>
        <source>Processing only is compared now; Ctrl+Z takes that back</source>
        <translation>Jetzt wird nur die Fertigung verglichen; Strg+Z nimmt das zurück</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programm</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Properties</source>
        <translation>Eigenschaften</translation>
    </message>
    <message>
        <source>Properties of the machines</source>
        <translation>Eigenschaften der Maschinen</translation>
    </message>
    <message>
        <source>Property of the machines</source>
        <translation>Eigenschaft der Maschinen</translation>
    </message>
    <message>
        <source>Publish</source>
        <translation>Veröffentlichen</translation>
    </message>
    <message>
        <source>Published correlations for the floor differ by up to {differ}.</source>
        <translation>Veröffentlichte Formeln für die Untergrenze unterscheiden sich um bis zu {differ}.</translation>
    </message>
    <message>
        <source>Purchase</source>
        <translation>Anschaffung</translation>
    </message>
    <message>
        <source>Purchase price</source>
        <translation>Kaufpreis</translation>
    </message>
    <message>
        <source>Purchase price of the machine</source>
        <translation>Kaufpreis der Maschine</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>Put this away (Esc)</source>
        <translation>Ausblenden (Esc)</translation>
    </message>
    <message>
        <source>Putting figures on the shelf…</source>
        <translation>Die Diagramme werden bereitgestellt…</translation>
    </message>
    <message>
        <source>R&amp;oom (°C)</source>
        <translation>Ra&amp;um (°C)</translation>
    </message>
    <message>
        <source>Ranks take the means as they are: machines whose intervals overlap may belong in another order.</source>
        <translation>Ränge nehmen die Mittel, wie sie sind: Maschinen mit überlappenden Intervallen gehören vielleicht in eine andere Reihenfolge.</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>Ratio of the energies per part with its 95 % interval. A difference is shown where p, adjusted for all pairs, is below 0.05 by the repeats and by the ratio with what the meters leave open.</source>
        <translation>Verhältnis der Energien je Teil mit seinem 95-%-Intervall. Ein Unterschied ist nachgewiesen, wo p, für alle Paare angepasst, nach den Wiederholungen und nach dem Verhältnis mit dem, was die Messgeräte offen lassen, unter 0,05 liegt.</translation>
    </message>
    <message>
        <source>Ratio, high</source>
        <translation>Verhältnis, oben</translation>
    </message>
    <message>
        <source>Ratio, low</source>
        <translation>Verhältnis, unten</translation>
    </message>
    <message>
        <source>Raw logs inside</source>
        <translation>Mit den rohen Logs</translation>
    </message>
    <message>
        <source>Re&amp;move column</source>
        <translation>Spalte en&amp;tfernen</translation>
    </message>
    <message>
        <source>Read a fi&amp;lled sheet…</source>
        <translation>Ausge&amp;füllten Laufzettel einlesen…</translation>
    </message>
    <message>
        <source>Read a filled run sheet</source>
        <translation>Ausgefüllten Laufzettel einlesen</translation>
    </message>
    <message>
        <source>Read a run sheet of {rows:row|rows}</source>
        <translation>Einen Laufzettel mit {rows:Zeile|Zeilen} einlesen</translation>
    </message>
    <message>
        <source>Read conditions of logged runs from {name}</source>
        <translation>Bedingungen aufgezeichneter Läufe aus {name} eingelesen</translation>
    </message>
    <message>
        <source>Read every log in a folder</source>
        <translation>Alle Logs eines Ordners einlesen</translation>
    </message>
    <message>
        <source>Read from the meter&apos;s display before and after the run, and typed in.</source>
        <translation>Vor und nach dem Lauf von der Anzeige des Messgeräts abgelesen und eingetippt.</translation>
    </message>
    <message>
        <source>Read meter logs into this study</source>
        <translation>Logs von Messgeräten in diese Studie einlesen</translation>
    </message>
    <message>
        <source>Read off a display</source>
        <translation>Von einer Anzeige abgelesen</translation>
    </message>
    <message>
        <source>Read off what the part costs on each machine, and whether the difference is real.</source>
        <translation>Ablesen, was das Teil auf jeder Maschine kostet und ob der Unterschied echt ist.</translation>
    </message>
    <message>
        <source>Read one steady load with both meters, one after the other: what they differ by then no longer stands between machines. Write every digit that the display shows.</source>
        <translation>Eine gleichmäßige Last nacheinander mit beiden Messgeräten ablesen: Worin sie sich unterscheiden, steht dann nicht mehr zwischen den Maschinen. Jede Ziffer eintragen, die die Anzeige zeigt.</translation>
    </message>
    <message>
        <source>Read prices by date</source>
        <translation>Preise nach Datum einlesen</translation>
    </message>
    <message>
        <source>Read the file again</source>
        <translation>Datei neu einlesen</translation>
    </message>
    <message>
        <source>Read the log of {name} again</source>
        <translation>Das Log von {name} neu lesen</translation>
    </message>
    <message>
        <source>Read {checks:same-load check|same-load checks} from {name}</source>
        <translation>{checks:Prüfung an gleicher Last|Prüfungen an gleicher Last} aus {name} eingelesen</translation>
    </message>
    <message>
        <source>Read {runs:reading|readings} and {checks:same-load check|same-load checks} from {name}</source>
        <translation>{runs:Ablesung|Ablesungen} und {checks:Prüfung an gleicher Last|Prüfungen an gleicher Last} aus {name} eingelesen</translation>
    </message>
    <message>
        <source>Read {runs:reading|readings} from {name}</source>
        <translation>{runs:Ablesung|Ablesungen} aus {name} eingelesen</translation>
    </message>
    <message>
        <source>Read {span}. 95 % intervals; the mean of a machine&apos;s runs holds their spread.</source>
        <translation>Ausgewertet {span}. 95-%-Intervalle; das Mittel der Läufe einer Maschine enthält deren Streuung.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Reading the logs…</source>
        <translation>Die Logs werden gelesen…</translation>
    </message>
    <message>
        <source>Readings of a display have no trace. Drop a meter log anywhere on this window to see how power ran.</source>
        <translation>Ablesungen einer Anzeige haben keinen zeitlichen Verlauf. Ein Log irgendwo auf dieses Fenster ziehen, um den Gang der Leistung zu sehen.</translation>
    </message>
    <message>
        <source>Refused rows</source>
        <translation>Abgewiesene Zeilen</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove a log of {name}</source>
        <translation>Ein Log von {name} entfernen</translation>
    </message>
    <message>
        <source>Remove a reading of {name}</source>
        <translation>Eine Ablesung von {name} entfernen</translation>
    </message>
    <message>
        <source>Remove band {place}</source>
        <translation>Preisstufe {place} entfernen</translation>
    </message>
    <message>
        <source>Remove the check of {names}</source>
        <translation>Prüfung von {names} entfernen</translation>
    </message>
    <message>
        <source>Remove the column {name}</source>
        <translation>Spalte {name} entfernen</translation>
    </message>
    <message>
        <source>Remove the prices of {name}</source>
        <translation>Preise aus {name} entfernen</translation>
    </message>
    <message>
        <source>Remove this band</source>
        <translation>Diese Preisstufe entfernen</translation>
    </message>
    <message>
        <source>Remove this log</source>
        <translation>Dieses Log entfernen</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>{name} entfernen</translation>
    </message>
    <message>
        <source>Remove {title}</source>
        <translation>{title} entfernen</translation>
    </message>
    <message>
        <source>Removed the column {name}: Ctrl+Z brings it back</source>
        <translation>Spalte {name} entfernt: Strg+Z holt sie zurück</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>Rename the column {name}</source>
        <translation>Spalte {name} umbenennen</translation>
    </message>
    <message>
        <source>Rename the machine</source>
        <translation>Maschine umbenennen</translation>
    </message>
    <message>
        <source>Rename the part</source>
        <translation>Teil umbenennen</translation>
    </message>
    <message>
        <source>Rename the study</source>
        <translation>Studie umbenennen</translation>
    </message>
    <message>
        <source>Rename {name}</source>
        <translation>{name} umbenennen</translation>
    </message>
    <message>
        <source>Rename {title}</source>
        <translation>{title} umbenennen</translation>
    </message>
    <message>
        <source>Repeat each machine: the scatter is known the better the more runs there are.</source>
        <translation>Jede Maschine wiederholen: Die Streuung ist umso besser bekannt, je mehr Läufe es gibt.</translation>
    </message>
    <message>
        <source>Repeats do not average a meter&apos;s error. However many runs are made, the meters hide {apart} between {machines} with a meter for each, {together} with one meter for both, and {planned} as planned here.</source>
        <translation>Wiederholungen mitteln den Fehler eines Messgeräts nicht heraus. Wie viele Läufe auch gemacht werden, die Messgeräte verdecken zwischen {machines} {apart} mit je einem Messgerät, {together} mit einem Messgerät für beide und {planned} wie hier geplant.</translation>
    </message>
    <message>
        <source>Report, HTML…</source>
        <translation>Bericht, HTML…</translation>
    </message>
    <message>
        <source>Report, P&amp;DF…</source>
        <translation>Bericht, &amp;PDF…</translation>
    </message>
    <message>
        <source>Report, tables, pictures and bundle in one folder</source>
        <translation>Bericht, Tabellen, Bilder und Bündel in einem Ordner</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Room (°C)</source>
        <translation>Raum (°C)</translation>
    </message>
    <message>
        <source>Room [°C]</source>
        <translation>Raum [°C]</translation>
    </message>
    <message>
        <source>Room temperature</source>
        <translation>Raumtemperatur</translation>
    </message>
    <message>
        <source>Room temperature during the hold test</source>
        <translation>Raumtemperatur während des Halteversuchs</translation>
    </message>
    <message>
        <source>Room °C</source>
        <translation>Raum °C</translation>
    </message>
    <message>
        <source>Room&apos;s temperature by</source>
        <translation>Raumtemperatur nach</translation>
    </message>
    <message>
        <source>Room: {degrees}, without draught or sun on a machine.</source>
        <translation>Raum: {degrees}, ohne Zugluft oder Sonne auf einer Maschine.</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Run sheet: {part}</source>
        <translation>Laufzettel: {part}</translation>
    </message>
    <message>
        <source>Run under run</source>
        <translation>Lauf unter Lauf</translation>
    </message>
    <message>
        <source>Run with the bed off</source>
        <translation>Lauf ohne Heizbett</translation>
    </message>
    <message>
        <source>Run&apos;s temperature</source>
        <translation>Temperatur des Laufs</translation>
    </message>
    <message>
        <source>Running energy</source>
        <translation>Auflaufende Energie</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Runs alone</source>
        <translation>Nur Läufe</translation>
    </message>
    <message>
        <source>Runs and bands</source>
        <translation>Läufe und Bänder</translation>
    </message>
    <message>
        <source>Runs are taken to scatter by {spread}, as you have stated.</source>
        <translation>Es wird angenommen, dass die Läufe um {spread} streuen, wie angegeben.</translation>
    </message>
    <message>
        <source>Runs each would need to show it</source>
        <translation>Läufe je Maschine, die ihn nachweisen würden</translation>
    </message>
    <message>
        <source>Runs lined up</source>
        <translation>Läufe im Verlauf</translation>
    </message>
    <message>
        <source>Runs made at other times of the day would have cost something else.</source>
        <translation>Läufe zu anderen Tageszeiten hätten etwas anderes gekostet.</translation>
    </message>
    <message>
        <source>Runs of each machine, in all</source>
        <translation>Läufe je Maschine, insgesamt</translation>
    </message>
    <message>
        <source>Runs of the {part} in the logs</source>
        <translation>Läufe in den Logs ({part})</translation>
    </message>
    <message>
        <source>Runs scatter by {spread} (95 % interval {low} to {high}; {count:run|runs} so far).</source>
        <translation>Die Läufe streuen um {spread} (95-%-Intervall {low} bis {high}; bisher {count:Lauf|Läufe}).</translation>
    </message>
    <message>
        <source>Runs to line up</source>
        <translation>Läufe für den Verlauf</translation>
    </message>
    <message>
        <source>Runs typed in</source>
        <translation>Eingetippte Läufe</translation>
    </message>
    <message>
        <source>Runs while idle, a year of it</source>
        <translation>Läuft im Leerlauf, ein Jahr davon</translation>
    </message>
    <message>
        <source>Runs, and what was left out</source>
        <translation>Läufe, und was ausgelassen wurde</translation>
    </message>
    <message>
        <source>Runs.</source>
        <translation>Läufe.</translation>
    </message>
    <message>
        <source>S&amp;mooth</source>
        <translation>Glätte&amp;n</translation>
    </message>
    <message>
        <source>SHA-256 is that of the file as it was imported: any other file has another one.</source>
        <translation>SHA-256 ist der Wert der Datei, wie sie eingelesen wurde: Jede andere Datei hat einen anderen.</translation>
    </message>
    <message>
        <source>SVG drawing (*.svg)</source>
        <translation>SVG-Zeichnung (*.svg)</translation>
    </message>
    <message>
        <source>SVG, drawing</source>
        <translation>SVG, Zeichnung</translation>
    </message>
    <message>
        <source>Same load: let one steady load (a heater or lamp within the rating of each meter, some 100 W) run for an hour on each meter in turn, and write down what each has counted.</source>
        <translation>Gleiche Last: eine gleichmäßige Last (ein Heizgerät oder eine Lampe innerhalb der Nennwerte jedes Messgeräts, etwa 100 W) nacheinander je eine Stunde an jedem Messgerät betreiben und aufschreiben, was jedes gezählt hat.</translation>
    </message>
    <message>
        <source>Same-load check</source>
        <translation>Prüfung an gleicher Last</translation>
    </message>
    <message>
        <source>Same-load checks</source>
        <translation>Prüfungen an gleicher Last</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Abtastwerte</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <source>Sat and Sun</source>
        <translation>Sa und So</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>Samstag</translation>
    </message>
    <message>
        <source>Save all pic&amp;ked…</source>
        <translation>Alle gew&amp;ählten speichern…</translation>
    </message>
    <message>
        <source>Save all {count} pic&amp;ked…</source>
        <translation>Alle {count} gew&amp;ählten speichern…</translation>
    </message>
    <message>
        <source>Sa&amp;ve as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Its logs have not been read here, so how it was found is left unsaid.</source>
        <translation>Die Logs wurden hier nicht eingelesen, daher bleibt ungesagt, wie es gefunden wurde.</translation>
    </message>
    <message>
        <source>Not known without a hold test at a noted temperature: {named}.</source>
        <translation>Ohne Halteversuch bei notierter Temperatur nicht bekannt: {named}.</translation>
    </message>
    <message>
        <source>Nothing can be checked yet: none of the bundle&apos;s logs is there.</source>
        <translation>Noch lässt sich nichts prüfen: Keines der Logs des Bündels ist da.</translation>
    </message>
    <message>
        <source>Nothing could be compared: {what}</source>
        <translation>Nichts ließ sich vergleichen: {what}</translation>
    </message>
    <message>
        <source>Nothing that is known moves it by a little: it is a bound, not a value.</source>
        <translation>Nichts Bekanntes verschiebt sie ein wenig: Sie ist eine Schranke, kein Wert.</translation>
    </message>
    <message>
        <source>Save &amp;bundle…</source>
        <translation>B&amp;ündel speichern…</translation>
    </message>
    <message>
        <source>Save a &amp;copy…</source>
        <translation>&amp;Kopie speichern…</translation>
    </message>
    <message>
        <source>Save a copy of the study</source>
        <translation>Eine Kopie der Studie speichern</translation>
    </message>
    <message>
        <source>Save all picked into a folder</source>
        <translation>Alles Gewählte in einen Ordner speichern</translation>
    </message>
    <message>
        <source>Save all tables</source>
        <translation>Alle Tabellen speichern</translation>
    </message>
    <message>
        <source>Save every pick into a folder: pictures, and tables as CSV</source>
        <translation>Alles Gewählte in einem Ordner speichern: Bilder, und Tabellen als CSV</translation>
    </message>
    <message>
        <source>Save everything into a folder</source>
        <translation>Alles in einen Ordner speichern</translation>
    </message>
    <message>
        <source>Save numbered pictures that build the chart up machine by machine, for a video</source>
        <translation>Nummerierte Bilder speichern, die das Diagramm Maschine für Maschine aufbauen, für ein Video</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Save run sheet (&amp;CSV)…</source>
        <translation>Laufzettel speichern (&amp;CSV)…</translation>
    </message>
    <message>
        <source>Save run sheet (CSV)</source>
        <translation>Laufzettel speichern (CSV)</translation>
    </message>
    <message>
        <source>Save run sheet (P&amp;DF)…</source>
        <translation>Laufzettel speichern (&amp;PDF)…</translation>
    </message>
    <message>
        <source>Save run sheet (PDF)</source>
        <translation>Laufzettel speichern (PDF)</translation>
    </message>
    <message>
        <source>Save step by step into a folder</source>
        <translation>Schritt für Schritt in einen Ordner speichern</translation>
    </message>
    <message>
        <source>Save table</source>
        <translation>Tabelle speichern</translation>
    </message>
    <message>
        <source>Save the bundle</source>
        <translation>Das Bündel speichern</translation>
    </message>
    <message>
        <source>Save the picture that is shown</source>
        <translation>Das gezeigte Bild speichern</translation>
    </message>
    <message>
        <source>Save the report as HTML</source>
        <translation>Den Bericht als HTML speichern</translation>
    </message>
    <message>
        <source>Save the report as PDF</source>
        <translation>Den Bericht als PDF speichern</translation>
    </message>
    <message>
        <source>Save the study as</source>
        <translation>Die Studie speichern unter</translation>
    </message>
    <message>
        <source>Saved [Wh]</source>
        <translation>Gespart [Wh]</translation>
    </message>
    <message>
        <source>Saved [{currency}]</source>
        <translation>Gespart [{currency}]</translation>
    </message>
    <message>
        <source>Saved by switching off after {minutes} min [%]</source>
        <translation>Gespart durch Ausschalten nach {minutes} min [%]</translation>
    </message>
    <message>
        <source>Saved in a print of {length}</source>
        <translation>Gespart in einem Druck von {length}</translation>
    </message>
    <message>
        <source>Saved in a year, switched off after {minutes} min idle: {savings}.</source>
        <translation>In einem Jahr gespart, ausgeschaltet nach {minutes} min Leerlauf: {savings}.</translation>
    </message>
    <message>
        <source>Saved of what the rests took</source>
        <translation>Gespart von dem, was die Pausen brauchten</translation>
    </message>
    <message>
        <source>Saved {count:file|files} in {folder}</source>
        <translation>{count:Datei|Dateien} in {folder} gespeichert</translation>
    </message>
    <message>
        <source>Saved {count:picture|pictures} in {folder}</source>
        <translation>{count:Bild|Bilder} in {folder} gespeichert</translation>
    </message>
    <message>
        <source>Saved {name}</source>
        <translation>{name} gespeichert</translation>
    </message>
    <message>
        <source>Saved {name}, {pages:page|pages}</source>
        <translation>{name} gespeichert, {pages:Seite|Seiten}</translation>
    </message>
    <message>
        <source>Saved {name}.</source>
        <translation>{name} gespeichert.</translation>
    </message>
    <message>
        <source>Saved {name}: fill in its blanks and read it here</source>
        <translation>{name} gespeichert: Lücken ausfüllen und hier einlesen</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Ersparnis</translation>
    </message>
    <message>
        <source>Saving was stopped; what was saved before is there.</source>
        <translation>Das Speichern wurde abgebrochen; was vorher gespeichert war, ist da.</translation>
    </message>
    <message>
        <source>Savings are estimates from the rests in these logs; prices are your own.</source>
        <translation>Ersparnisse sind Schätzungen aus den Pausen in diesen Logs; die Preise sind eigene Angaben.</translation>
    </message>
    <message>
        <source>Say on the Logs page which stretches are runs of the part; they are lined up here at once.</source>
        <translation>Auf der Seite „Logs“ angeben, welche Abschnitte Läufe des Teils sind; sie erscheinen sofort hier im Verlauf.</translation>
    </message>
    <message>
        <source>Say that a log is of all of {machine}</source>
        <translation>Angeben, dass ein Log die ganze Maschine {machine} betrifft</translation>
    </message>
    <message>
        <source>Say that a log is of the bed of {machine}</source>
        <translation>Angeben, dass ein Log das Heizbett von {machine} betrifft</translation>
    </message>
    <message>
        <source>Say that the bed was off in {run}</source>
        <translation>Angeben, dass das Heizbett aus war ({run})</translation>
    </message>
    <message>
        <source>Say that the bed was on in {run}</source>
        <translation>Angeben, dass das Heizbett an war ({run})</translation>
    </message>
    <message>
        <source>Say that there is nothing here</source>
        <translation>Angeben, dass hier nichts ist</translation>
    </message>
    <message>
        <source>Say that {name} measured all</source>
        <translation>Angeben, dass {name} alle gemessen hat</translation>
    </message>
    <message>
        <source>Say that {title} is: {kind}</source>
        <translation>Angeben, was {title} ist: {kind}</translation>
    </message>
    <message>
        <source>Say whether the {load} of {machine} runs while idle</source>
        <translation>Angeben, ob im Leerlauf von {machine} läuft: {load}</translation>
    </message>
    <message>
        <source>Say which machine it was.</source>
        <translation>Angeben, welche Maschine es war.</translation>
    </message>
    <message>
        <source>Scatte&amp;r (%):</source>
        <translation>St&amp;reuung (%):</translation>
    </message>
    <message>
        <source>Scatter from run to run, in percent</source>
        <translation>Streuung von Lauf zu Lauf, in Prozent</translation>
    </message>
    <message>
        <source>Second meter</source>
        <translation>Zweites Messgerät</translation>
    </message>
    <message>
        <source>See to the meters</source>
        <translation>Messgeräte ansehen</translation>
    </message>
    <message>
        <source>See to them on the Fairness page</source>
        <translation>Auf der Seite „Fairness“ darum kümmern</translation>
    </message>
    <message>
        <source>Seed of the order</source>
        <translation>Startwert der Reihenfolge</translation>
    </message>
    <message>
        <source>Sent {pages:page|pages} to the printer</source>
        <translation>{pages:Seite|Seiten} an den Drucker gesandt</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>Sep</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>Set a temperature of the plan</source>
        <translation>Eine Temperatur des Plans setzen</translation>
    </message>
    <message>
        <source>Set by you; empty the field to hand it back (found: {found})</source>
        <translation>Selbst gesetzt; Feld leeren, um es zurückzugeben (gefunden: {found})</translation>
    </message>
    <message>
        <source>Set the bed temperature</source>
        <translation>Heizbetttemperatur setzen</translation>
    </message>
    <message>
        <source>Set the currency</source>
        <translation>Währung setzen</translation>
    </message>
    <message>
        <source>Set the emissivity of beds</source>
        <translation>Emissionsgrad der Heizbetten setzen</translation>
    </message>
    <message>
        <source>Set the machines at once</source>
        <translation>Zahl der Maschinen zugleich setzen</translation>
    </message>
    <message>
        <source>Set the marker of {name}</source>
        <translation>Zeichen von {name} setzen</translation>
    </message>
    <message>
        <source>Set the material of the plan</source>
        <translation>Material des Plans setzen</translation>
    </message>
    <message>
        <source>Set the price of a kWh</source>
        <translation>Preis einer kWh setzen</translation>
    </message>
    <message>
        <source>Set the repeats</source>
        <translation>Zahl der Wiederholungen setzen</translation>
    </message>
    <message>
        <source>Set the room temperature</source>
        <translation>Raumtemperatur setzen</translation>
    </message>
    <message>
        <source>Set the standing charge</source>
        <translation>Grundpreis setzen</translation>
    </message>
    <message>
        <source>Set the starting state</source>
        <translation>Anfangszustand setzen</translation>
    </message>
    <message>
        <source>Set the zone of the prices</source>
        <translation>Zeitzone der Preise setzen</translation>
    </message>
    <message>
        <source>Set the {what} of pictures</source>
        <translation>Bilder einstellen: {what}</translation>
    </message>
    <message>
        <source>Set what the test is to show</source>
        <translation>Setzen, was der Versuch nachweisen soll</translation>
    </message>
    <message>
        <source>Set {key} of {name}</source>
        <translation>{key} von {name} setzen</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Eingeschwungen</translation>
    </message>
    <message>
        <source>Several meters</source>
        <translation>Mehrere Messgeräte</translation>
    </message>
    <message>
        <source>Sh&amp;uffle</source>
        <translation>Neu misch&amp;en</translation>
    </message>
    <message>
        <source>Share of duration</source>
        <translation>Anteil der Dauer</translation>
    </message>
    <message>
        <source>Share of the run</source>
        <translation>Anteil am Lauf</translation>
    </message>
    <message>
        <source>Share of the run&apos;s duration</source>
        <translation>Anteil der Dauer des Laufs</translation>
    </message>
    <message>
        <source>Shared with</source>
        <translation>Gemeinsam mit</translation>
    </message>
    <message>
        <source>Sho&amp;w</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <source>Sho&amp;w a difference of (%):</source>
        <translation>Nachzuweisender &amp;Unterschied (%):</translation>
    </message>
    <message>
        <source>Sho&amp;w:</source>
        <translation>An&amp;zeigen:</translation>
    </message>
    <message>
        <source>Shorter run</source>
        <translation>Kürzerer Lauf</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show each pixel of the picture as one of the screen</source>
        <translation>Jedes Pixel des Bildes als eines des Bildschirms zeigen</translation>
    </message>
    <message>
        <source>Show every log from end to end</source>
        <translation>Jedes Log von Anfang bis Ende zeigen</translation>
    </message>
    <message>
        <source>Show the picture in its own size</source>
        <translation>Das Bild in seiner eigenen Größe zeigen</translation>
    </message>
    <message>
        <source>Show this run on the Logs page</source>
        <translation>Diesen Lauf auf der Seite „Logs“ zeigen</translation>
    </message>
    <message>
        <source>Show this stretch alone</source>
        <translation>Diesen Abschnitt allein zeigen</translation>
    </message>
    <message>
        <source>Shown from the next start on</source>
        <translation>Gilt ab dem nächsten Start</translation>
    </message>
    <message>
        <source>Shown means at the 95 % level, in four tests of five.</source>
        <translation>Nachgewiesen heißt: auf dem 95-%-Niveau, in vier von fünf Versuchen.</translation>
    </message>
    <message>
        <source>Shuffle the order</source>
        <translation>Reihenfolge mischen</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Slide, 1920 × 1080</source>
        <translation>Folie, 1920 × 1080</translation>
    </message>
    <message>
        <source>Smallest difference shown between {names}</source>
        <translation>Kleinster nachweisbarer Unterschied zwischen {names}</translation>
    </message>
    <message>
        <source>Smallest difference shown: {energy} Wh, between {machines}.</source>
        <translation>Kleinster nachgewiesener Unterschied: {energy} Wh, zwischen {machines}.</translation>
    </message>
    <message>
        <source>Smallest difference shown: {energy} Wh, {machines}</source>
        <translation>Kleinster nachgewiesener Unterschied: {energy} Wh, {machines}</translation>
    </message>
    <message>
        <source>Smallest difference shown: {name} and {name_2}</source>
        <translation>Kleinster gezeigter Unterschied: {name} und {name_2}</translation>
    </message>
    <message>
        <source>Smallest difference that is shown, against the runs of each machine</source>
        <translation>Kleinster nachweisbarer Unterschied gegen die Läufe je Maschine</translation>
    </message>
    <message>
        <source>So few runs leave nothing to be told apart.</source>
        <translation>So wenige Läufe lassen nichts unterscheiden.</translation>
    </message>
    <message>
        <source>Soak of the bed</source>
        <translation>Durchwärmen des Heizbetts</translation>
    </message>
    <message>
        <source>Some characters do not fit the encoding {encoding}. Choose another in the Reading panel.</source>
        <translation>Einige Zeichen passen nicht zur Kodierung {encoding}. Unter „Einlesen“ eine andere wählen.</translation>
    </message>
    <message>
        <source>Some dates state an offset from UTC and others do not. Write it with all of them or with none.</source>
        <translation>Manche Daten nennen einen Abstand von UTC und andere nicht. Ihn bei allen schreiben oder bei keinem.</translation>
    </message>
    <message>
        <source>Something went wrong inside the program</source>
        <translation>Im Programm ist etwas schiefgegangen</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Spa&amp;n</source>
        <translation>Spann&amp;e</translation>
    </message>
    <message>
        <source>Space picks the row that is chosen, or lets it go</source>
        <translation>Die Leertaste wählt die aktuelle Zeile aus oder wieder ab</translation>
    </message>
    <message>
        <source>Spearman&apos;s rank correlation, p by Student&apos;s t with {count} degrees of freedom</source>
        <translation>Rangkorrelation nach Spearman, p nach Students t mit {count} Freiheitsgraden</translation>
    </message>
    <message>
        <source>Spearman&apos;s rank correlation, p by all orders of {count} machines</source>
        <translation>Rangkorrelation nach Spearman, p aus allen Reihenfolgen von {count} Maschinen</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Split {title}</source>
        <translation>{title} teilen</translation>
    </message>
    <message>
        <source>Spread of duration</source>
        <translation>Streuung der Dauer</translation>
    </message>
    <message>
        <source>Spreadsheet (*.xlsx)</source>
        <translation>Arbeitsmappe (*.xlsx)</translation>
    </message>
    <message>
        <source>Square, 1080 × 1080</source>
        <translation>Quadratisch, 1080 × 1080</translation>
    </message>
    <message>
        <source>Square, 1080 × 1080…</source>
        <translation>Quadratisch, 1080 × 1080…</translation>
    </message>
    <message>
        <source>Stamps are cut to {tick_s} s, up to {most:row has|rows have} the same; they were spread evenly.</source>
        <translation>Die Zeitstempel sind auf {tick_s} s gekürzt, bis zu {most:Zeile hat|Zeilen haben} denselben; sie wurden gleichmäßig verteilt.</translation>
    </message>
    <message>
        <source>Standard uncertainties that each source gives the mean energy per part; their squares add up (JCGM 100:2008, 5.1).</source>
        <translation>Standardunsicherheiten, die jede Quelle zur mittleren Energie je Teil beiträgt; ihre Quadrate addieren sich (JCGM 100:2008, 5.1).</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Standard uncertainty [Wh]</source>
        <translation>Standardunsicherheit [Wh]</translation>
    </message>
    <message>
        <source>Standby</source>
        <translation>Bereitschaft</translation>
    </message>
    <message>
        <source>Standby and cost</source>
        <translation>Bereitschaft und Kosten</translation>
    </message>
    <message>
        <source>Standby by</source>
        <translation>Bereitschaft nach</translation>
    </message>
    <message>
        <source>Standby by window [W]</source>
        <translation>Bereitschaft nach Fenstern [W]</translation>
    </message>
    <message>
        <source>Standby in {year}</source>
        <translation>Bereitschaft im Jahr {year}</translation>
    </message>
    <message>
        <source>Standby not known: {machines}.</source>
        <translation>Bereitschaft nicht bekannt: {machines}.</translation>
    </message>
    <message>
        <source>Standby of a year</source>
        <translation>Bereitschaft eines Jahres</translation>
    </message>
    <message>
        <source>Standby of a year [kWh]</source>
        <translation>Bereitschaft eines Jahres [kWh]</translation>
    </message>
    <message>
        <source>Standby power</source>
        <translation>Bereitschaft</translation>
    </message>
    <message>
        <source>Standby power [W]</source>
        <translation>Bereitschaftsleistung [W]</translation>
    </message>
    <message>
        <source>Standby power is the mean of the longest steady rest of a quarter of an hour or more; “lowest” marks the low end of what is drawn at rest, where no rest is that long.</source>
        <translation>Die Bereitschaftsleistung ist das Mittel der längsten gleichmäßigen Ruhe von einer Viertelstunde oder mehr; „niedrigste“ kennzeichnet das untere Ende der Leistung in Ruhe, wo keine Ruhe so lang ist.</translation>
    </message>
    <message>
        <source>Standby power, and a year of it</source>
        <translation>Bereitschaftsleistung, und ein Jahr davon</translation>
    </message>
    <message>
        <source>Standby watts</source>
        <translation>Bereitschaftsleistung</translation>
    </message>
    <message>
        <source>Standby watts times the hours a year for which the machine stands switched on and does nothing.</source>
        <translation>Bereitschaftsleistung mal die Stunden im Jahr, in denen die Maschine eingeschaltet ist und nichts tut.</translation>
    </message>
    <message>
        <source>Standing charge a day, kept apart</source>
        <translation>Grundpreis je Tag, getrennt geführt</translation>
    </message>
    <message>
        <source>Standing charge apart: {charge} a year.</source>
        <translation>Grundpreis getrennt: {charge} im Jahr.</translation>
    </message>
    <message>
        <source>Stands o&amp;ut</source>
        <translation>Bet&amp;ont</translation>
    </message>
    <message>
        <source>Star&amp;t from:</source>
        <translation>S&amp;tart mit:</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>Start an empty study; this one stays where it is kept</source>
        <translation>Eine leere Studie beginnen; diese bleibt, wo sie liegt</translation>
    </message>
    <message>
        <source>Start by the clock of each log.</source>
        <translation>Beginn nach der Uhr des jeweiligen Logs.</translation>
    </message>
    <message>
        <source>Start in the log [s]</source>
        <translation>Beginn im Log [s]</translation>
    </message>
    <message>
        <source>Start of a print</source>
        <translation>Beginn eines Drucks</translation>
    </message>
    <message>
        <source>Start of the print, local time</source>
        <translation>Beginn des Drucks, Ortszeit</translation>
    </message>
    <message>
        <source>Start of the span that is read, in {unit}</source>
        <translation>Beginn der abgelesenen Spanne, in {unit}</translation>
    </message>
    <message>
        <source>Start: date, time</source>
        <translation>Beginn: Datum, Uhrzeit</translation>
    </message>
    <message>
        <source>Starting state</source>
        <translation>Anfangszustand</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>State from which each run starts</source>
        <translation>Zustand, aus dem jeder Lauf startet</translation>
    </message>
    <message>
        <source>State how many hours a year it prints, in the form beside the charts.</source>
        <translation>Im Formular neben den Diagrammen angeben, wie viele Stunden im Jahr sie druckt.</translation>
    </message>
    <message>
        <source>State the accuracy of {name} from its data sheet: ±{gain_percent:g} % of reading and ±{offset_w:g} W are assumed.</source>
        <translation>Die Genauigkeit von {name} aus dem Datenblatt angeben: Angenommen sind ±{gain_percent:g} % der Anzeige und ±{offset_w:g} W.</translation>
    </message>
    <message>
        <source>State the hours for which it is really left on, in the form beside the charts.</source>
        <translation>Im Formular neben den Diagrammen die Stunden angeben, in denen sie wirklich eingeschaltet bleibt.</translation>
    </message>
    <message>
        <source>Ste&amp;p by step…</source>
        <translation>S&amp;chrittweise…</translation>
    </message>
    <message>
        <source>Steady</source>
        <translation>Gleichmäßig</translation>
    </message>
    <message>
        <source>Steady after [min]</source>
        <translation>Gleichmäßig nach [min]</translation>
    </message>
    <message>
        <source>Steady for</source>
        <translation>Gleichmäßig seit</translation>
    </message>
    <message>
        <source>Steady, all [W]</source>
        <translation>Gleichmäßig, gesamt [W]</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Step {number} at {minutes} min</source>
        <translation>Stufe {number} bei {minutes} min</translation>
    </message>
    <message>
        <source>Step {number}: {load} {watts}</source>
        <translation>Stufe {number}: {load} {watts}</translation>
    </message>
    <message>
        <source>Step, median [s]</source>
        <translation>Schritt, Median [s]</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Steps &amp;of:</source>
        <translation>Schr&amp;itte von:</translation>
    </message>
    <message>
        <source>Steps from the measured to the adjusted energy of one machine</source>
        <translation>Schritte von der gemessenen zur umgerechneten Energie einer Maschine</translation>
    </message>
    <message>
        <source>Stop this and leave the study as it was</source>
        <translation>Anhalten und die Studie lassen, wie sie war</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Wird angehalten…</translation>
    </message>
    <message>
        <source>Stretches whose duration and energy agree belong to one part; the others are something else.</source>
        <translation>Abschnitte, deren Dauer und Energie übereinstimmen, gehören zu einem Teil; die übrigen sind etwas anderes.</translation>
    </message>
    <message>
        <source>Studies</source>
        <translation>Studien</translation>
    </message>
    <message>
        <source>Studies and bundles</source>
        <translation>Studien und Bündel</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>So</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>Sonntag</translation>
    </message>
    <message>
        <source>Suppose a cooler bed</source>
        <translation>Kühleres Heizbett annehmen</translation>
    </message>
    <message>
        <source>Switch-on test</source>
        <translation>Einschaltversuch</translation>
    </message>
    <message>
        <source>Switched off after so long idle</source>
        <translation>Abgeschaltet nach so langem Leerlauf</translation>
    </message>
    <message>
        <source>Switching off</source>
        <translation>Ausschalten</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>T&amp;itel</translation>
    </message>
    <message>
        <source>&apos;{unit}&apos; in the heading &apos;{column}&apos; is no unit that is known; the values are taken as {taken}. Export the log in W and kWh, or set the unit in the Reading panel.</source>
        <translation>„{unit}“ in der Überschrift „{column}“ ist keine bekannte Einheit; die Werte gelten als {taken}. Das Log in W und kWh exportieren oder die Einheit unter „Einlesen“ setzen.</translation>
    </message>
    <message>
        <source>A bound has no interval: it is wide enough by itself.</source>
        <translation>Eine Schranke hat kein Intervall: Sie ist von sich aus weit genug.</translation>
    </message>
    <message>
        <source>It holds {count} logs or sheets, more than the {limit} that are looked at in one file. Save those that are needed in files of their own.</source>
        <translation>Sie enthält {count} Logs oder Blätter, mehr als die {limit}, die in einer Datei angesehen werden. Speichern Sie die benötigten in eigenen Dateien.</translation>
    </message>
    <message>
        <source>It stands as it was noted: there is no log to measure it by again.</source>
        <translation>Es steht, wie es notiert wurde: Kein Log ist da, an dem es sich neu messen ließe.</translation>
    </message>
    <message>
        <source>Its columns would take more than {limit_mb} MB, too much to be read at once. Split it by month, or leave out columns.</source>
        <translation>Ihre Spalten bräuchten mehr als {limit_mb} MB, zu viel, um auf einmal gelesen zu werden. Teilen Sie sie nach Monaten oder lassen Sie Spalten weg.</translation>
    </message>
    <message>
        <source>Meter of {machine}</source>
        <translation>Messgerät von {machine}</translation>
    </message>
    <message>
        <source>No year is written beside the dates, so the log is read as elapsed time. Save it with the year if the date matters.</source>
        <translation>Neben den Daten steht kein Jahr, deshalb gilt das Log als verstrichene Zeit. Speichern Sie es mit Jahr, wenn das Datum zählt.</translation>
    </message>
    <message>
        <source>Purchase is in the price of {machines} alone.</source>
        <translation>Die Anschaffung steckt nur im Preis von {machines}.</translation>
    </message>
    <message>
        <source>Table as text (*.csv)</source>
        <translation>Tabelle als Text (*.csv)</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <source>Tables as text (*.csv *.txt *.tsv)</source>
        <translation>Tabellen als Text (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>Take back every decision about this stretch</source>
        <translation>Jede Entscheidung über diesen Abschnitt zurücknehmen</translation>
    </message>
    <message>
        <source>Take in what was added to the file, keeping what you decided</source>
        <translation>Übernehmen, was zur Datei hinzukam, und eigene Entscheidungen behalten</translation>
    </message>
    <message>
        <source>Take in what was added to the log&apos;s file, keeping what you decided</source>
        <translation>Aufnehmen, was in der Datei des Logs hinzugekommen ist; eigene Entscheidungen bleiben</translation>
    </message>
    <message>
        <source>Take out of what is published</source>
        <translation>Aus dem Veröffentlichten herausnehmen</translation>
    </message>
    <message>
        <source>Take out {runs:more run|more runs} of {machine}</source>
        <translation>{runs:weiteren Lauf|weitere Läufe} von {machine} herausnehmen</translation>
    </message>
    <message>
        <source>Take the measured spread</source>
        <translation>Die gemessene Streuung übernehmen</translation>
    </message>
    <message>
        <source>Take the name of a step away</source>
        <translation>Den Namen einer Stufe wegnehmen</translation>
    </message>
    <message>
        <source>Take the order of the next seed</source>
        <translation>Die Reihenfolge des nächsten Startwerts nehmen</translation>
    </message>
    <message>
        <source>Take {name} into the plan</source>
        <translation>{name} in den Plan aufnehmen</translation>
    </message>
    <message>
        <source>Taken as a filled run sheet: {what}.</source>
        <translation>Als ausgefüllter Laufzettel erkannt: {what}.</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Braucht</translation>
    </message>
    <message>
        <source>Tall, 1080 × 1920</source>
        <translation>Hoch, 1080 × 1920</translation>
    </message>
    <message>
        <source>Temperature of the bed in degrees</source>
        <translation>Temperatur des Heizbetts in Grad</translation>
    </message>
    <message>
        <source>Temperature of the bed in the test, in °C</source>
        <translation>Temperatur des Heizbetts im Versuch, in °C</translation>
    </message>
    <message>
        <source>Temperature of the bed in the test, where a run has none of its own</source>
        <translation>Temperatur des Heizbetts im Versuch, wo ein Lauf keine eigene hat</translation>
    </message>
    <message>
        <source>Temperature of the bed in this stretch, in °C</source>
        <translation>Temperatur des Heizbetts in diesem Abschnitt, in °C</translation>
    </message>
    <message>
        <source>Temperature of the nozzle in degrees</source>
        <translation>Temperatur der Düse in Grad</translation>
    </message>
    <message>
        <source>Temperature of the nozzle in this stretch, in °C</source>
        <translation>Temperatur der Düse in diesem Abschnitt, in °C</translation>
    </message>
    <message>
        <source>Temperature of the room in degrees</source>
        <translation>Raumtemperatur in Grad</translation>
    </message>
    <message>
        <source>Temperature of the room in the test, in °C</source>
        <translation>Raumtemperatur im Versuch, in °C</translation>
    </message>
    <message>
        <source>Temperature of the room in the test, where a run has none of its own</source>
        <translation>Raumtemperatur im Versuch, wo ein Lauf keine eigene hat</translation>
    </message>
    <message>
        <source>Temperature of the room in this stretch, in °C</source>
        <translation>Raumtemperatur in diesem Abschnitt, in °C</translation>
    </message>
    <message>
        <source>Temperatures of the runs, in °C</source>
        <translation>Temperaturen der Läufe, in °C</translation>
    </message>
    <message>
        <source>Temperatures of {name}:</source>
        <translation>Temperaturen von {name}:</translation>
    </message>
    <message>
        <source>Temperatures: {warm}, the first layer too.</source>
        <translation>Temperaturen: {warm}, auch in der ersten Schicht.</translation>
    </message>
    <message>
        <source>Temperatures: {warm}; first layer: {first}.</source>
        <translation>Temperaturen: {warm}; erste Schicht: {first}.</translation>
    </message>
    <message>
        <source>That is about {energy}, {what}.</source>
        <translation>Das ist etwa {energy}, {what}.</translation>
    </message>
    <message>
        <source>That is less than {energy}, {what}.</source>
        <translation>Das ist weniger als {energy}, {what}.</translation>
    </message>
    <message>
        <source>That is more than {energy}, {what}.</source>
        <translation>Das ist mehr als {energy}, {what}.</translation>
    </message>
    <message>
        <source>That not all {machines} are alike takes {count:run|runs} of each.</source>
        <translation>Um nachzuweisen, dass nicht alle {machines} gleich sind, braucht es {count:Lauf|Läufe} von jeder.</translation>
    </message>
    <message>
        <source>The Bed page asks for this column: it stays as it is</source>
        <translation>Die Seite „Heizbett“ braucht diese Spalte: Sie bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>The JSON holds no list of rows. Export a list of objects, or one object a line.</source>
        <translation>Das JSON enthält keine Liste von Zeilen. Eine Liste von Objekten exportieren, oder ein Objekt je Zeile.</translation>
    </message>
    <message>
        <source>The JSON is cut or damaged. Export it again, best with one object a line.</source>
        <translation>Das JSON ist abgeschnitten oder beschädigt. Es noch einmal exportieren, am besten mit einem Objekt je Zeile.</translation>
    </message>
    <message>
        <source>The XML is cut or damaged at line {line}; what stands before it is shown. Export it again.</source>
        <translation>Das XML ist in Zeile {line} abgeschnitten oder beschädigt; gezeigt wird, was davor steht. Exportieren Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The archive is damaged and nothing in it could be unpacked. Copy it again.</source>
        <translation>Das Archiv ist beschädigt, und nichts darin ließ sich entpacken. Es noch einmal kopieren.</translation>
    </message>
    <message>
        <source>The archive is damaged; what could be unpacked is shown. Copy it again.</source>
        <translation>Das Archiv ist beschädigt; gezeigt wird, was sich entpacken ließ. Es noch einmal kopieren.</translation>
    </message>
    <message>
        <source>The area of one face is the one you typed; it is taken as exact.</source>
        <translation>Die Fläche einer Seite ist die eingetippte; sie gilt als genau.</translation>
    </message>
    <message>
        <source>The bed began at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; begin every run from the same state, best from room temperature.</source>
        <translation>Das Heizbett begann bei {machines} mit {own:.0f} °C und bei {others} mit {usual:.0f} °C; jeden Lauf aus demselben Zustand beginnen, am besten bei Raumtemperatur.</translation>
    </message>
    <message>
        <source>The bed stays as warm as it is: nothing is saved.</source>
        <translation>Das Heizbett bleibt so warm, wie es ist: Nichts wird gespart.</translation>
    </message>
    <message>
        <source>The bed takes {note}.</source>
        <translation>Das Heizbett braucht {note}.</translation>
    </message>
    <message>
        <source>The bed was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; set one temperature for all.</source>
        <translation>Das Heizbett hatte bei {machines} {own:.0f} °C und bei {others} {usual:.0f} °C; für alle dieselbe Temperatur einstellen.</translation>
    </message>
    <message>
        <source>The bed&apos;s energy in each run, scaled as the loss of a hot plate changes with the temperatures. No hold test from cold tells this machine&apos;s own.</source>
        <translation>Die Energie des Heizbetts in jedem Lauf, umgerechnet, wie sich der Verlust einer heißen Platte mit den Temperaturen ändert. Kein Halteversuch aus dem kalten Zustand sagt, wie es bei dieser Maschine ist.</translation>
    </message>
    <message>
        <source>The bed&apos;s heater switches on and off. What was drawn between its pulses is not the bed; that level, followed through the run, is taken from the run&apos;s energy, and the rest is the bed&apos;s.</source>
        <translation>Die Heizung des Heizbetts schaltet ein und aus. Was zwischen ihren Pulsen gezogen wird, ist nicht das Heizbett; diese Leistung, durch den Lauf verfolgt, wird von der Energie des Laufs abgezogen, und der Rest entfällt auf das Heizbett.</translation>
    </message>
    <message>
        <source>The bed&apos;s own watts over the settled part of a hold test, by a log of the bed alone, over the watts that the bed takes at the plug in the same time.</source>
        <translation>Die eigene Leistung des Heizbetts im gleichmäßigen Teil eines Halteversuchs, aus einem Log des Heizbetts allein, geteilt durch die Leistung, die das Heizbett in derselben Zeit an der Steckdose braucht.</translation>
    </message>
    <message>
        <source>The bed&apos;s part came out as {percent:.0f} % of the run, which cannot be: the levels were not what they seemed. A hold test or a run with the bed off would tell.</source>
        <translation>Der Anteil des Heizbetts ergab {percent:.0f} % des Laufs, was nicht sein kann: Die Leistungsstufen waren nicht, was sie schienen. Ein Halteversuch oder ein Lauf ohne Heizbett würde ihn zeigen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen here.</source>
        <translation>Der Anteil des Heizbetts ist hier nicht zu sehen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: it shows no warm-up at full power to tell what the heater draws. A run from cold, or a hold test, would tell.</source>
        <translation>Der Anteil des Heizbetts ist in diesem Lauf nicht zu sehen: Er zeigt kein Aufheizen mit voller Leistung, das sagen würde, was die Heizung zieht. Ein Lauf aus dem Kalten oder ein Halteversuch würde ihn zeigen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: no heater is seen to switch on and off ({changes} changes). A hold test or a run with the bed off would tell.</source>
        <translation>Der Anteil des Heizbetts ist in diesem Lauf nicht zu sehen: Keine Heizung ist beim Ein- und Ausschalten zu sehen ({changes} Wechsel). Ein Halteversuch oder ein Lauf ohne Heizbett würde ihn zeigen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: short pulses of the bed, or those of the hot end, blur the level with the heater off, and two ways to it disagree. A hold test or a run with the bed off would tell.</source>
        <translation>Der Anteil des Heizbetts ist in diesem Lauf nicht zu sehen: Kurze Pulse des Heizbetts oder die des Hotends verwischen die Stufe mit ausgeschalteter Heizung, und zwei Wege zu ihr widersprechen sich. Ein Halteversuch oder ein Lauf ohne Heizbett würde ihn zeigen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: the heater is off in only {off_percent:.0f} % of the values. A hold test or a run with the bed off would tell.</source>
        <translation>Der Anteil des Heizbetts ist in diesem Lauf nicht zu sehen: Die Heizung ist in nur {off_percent:.0f} % der Werte aus. Ein Halteversuch oder ein Lauf ohne Heizbett würde ihn zeigen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: the heater switches faster than the meter looks, so that the low level ({off_w:.0f} W) is a mixture. A hold test or a run with the bed off would tell.</source>
        <translation>Der Anteil des Heizbetts ist in diesem Lauf nicht zu sehen: Die Heizung schaltet schneller, als das Messgerät hinsieht, sodass die untere Stufe ({off_w:.0f} W) eine Mischung ist. Ein Halteversuch oder ein Lauf ohne Heizbett würde ihn zeigen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: the values, {interval_s:.0f} s apart, show the heater on more seldom than a bed that took {warm_up_s:.0f} s to warm up needs it. They may keep step with its pulses. Log faster, use a meter with an energy counter, or make a hold test.</source>
        <translation>Der Anteil des Heizbetts ist in diesem Lauf nicht zu sehen: Die Werte im Abstand von {interval_s:.0f} s zeigen die Heizung seltener eingeschaltet, als ein Heizbett mit {warm_up_s:.0f} s Aufheizen sie braucht. Sie können im Gleichtakt mit ihren Pulsen sein. Schneller aufzeichnen, ein Messgerät mit Energiezähler verwenden oder einen Halteversuch machen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: values averaged over {interval_s:.0f} s mix the heater&apos;s on and off. Log faster, or make a hold test.</source>
        <translation>Der Anteil des Heizbetts ist in diesem Lauf nicht zu sehen: Über {interval_s:.0f} s gemittelte Werte vermischen An und Aus der Heizung. Schneller aufzeichnen oder einen Halteversuch machen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: what switches ({step_w:.0f} W) is no larger than the rest of the machine and may be the hot end. A hold test or a run with the bed off would tell.</source>
        <translation>Der Anteil des Heizbetts ist in diesem Lauf nicht zu sehen: Was schaltet ({step_w:.0f} W), ist nicht größer als der Rest der Maschine und kann das Hotend sein. Ein Halteversuch oder ein Lauf ohne Heizbett würde ihn zeigen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen: processing has only {rows} values. Log at least every 30 s, or make a hold test.</source>
        <translation>Der Anteil des Heizbetts ist nicht zu sehen: Die Fertigung hat nur {rows} Werte. Mindestens alle 30 s aufzeichnen oder einen Halteversuch machen.</translation>
    </message>
    <message>
        <source>The bed&apos;s part of a run without energy cannot be told.</source>
        <translation>Der Anteil des Heizbetts an einem Lauf ohne Energie lässt sich nicht sagen.</translation>
    </message>
    <message>
        <source>The beds</source>
        <translation>Die Heizbetten</translation>
    </message>
    <message>
        <source>The bed’s share is found by a meter of its own, by a run without it, by a hold test, or from the switching of its heater, in this order; each value names its way. The least that a plate of a bed’s size must lose is natural convection on both faces and radiation [5].</source>
        <translation>Der Anteil des Heizbetts wird mit einem eigenen Messgerät, durch einen Lauf ohne Heizbett, durch einen Halteversuch oder aus dem Schalten seiner Heizung ermittelt, in dieser Reihenfolge; jeder Wert nennt seinen Weg. Das Mindeste, was eine Platte von der Größe des Heizbetts verlieren muss, sind freie Konvektion auf beiden Seiten und Strahlung [5].</translation>
    </message>
    <message>
        <source>The block has {rows} × {columns} cells, and from here on the table has {free_rows} × {free_columns}: begin further up or left, or copy names and headings too.</source>
        <translation>Der Block hat {rows} × {columns} Zellen, und die Tabelle hat von hier an {free_rows} × {free_columns}: weiter oben oder links beginnen, oder Namen und Überschriften mitkopieren.</translation>
    </message>
    <message>
        <source>The bundle could not be written ({why}); give another place.</source>
        <translation>Das Bündel konnte nicht geschrieben werden ({why}); einen anderen Ort angeben.</translation>
    </message>
    <message>
        <source>The bundle has layout {version}, which a newer version of Samepart made; this one knows layouts up to {known}. Bring Samepart up to date.</source>
        <translation>Das Bündel hat Aufbau {version}, von einer neueren Version von Samepart; diese kennt Aufbauten bis {known}. Samepart aktualisieren.</translation>
    </message>
    <message>
        <source>The bundle holds only the SHA-256 of the log {name} ({expected}), so what depends on it is missing; give the bundle together with the folder of its logs.</source>
        <translation>Das Bündel enthält vom Log {name} nur den SHA-256 ({expected}), daher fehlt, was davon abhängt; das Bündel zusammen mit dem Ordner seiner Logs angeben.</translation>
    </message>
    <message>
        <source>The bundle holds only the SHA-256 of {count:log|logs} ({names}), so what depends on them is missing; give the bundle together with the folder of its logs.</source>
        <translation>Das Bündel enthält von {count:Log|Logs} ({names}) nur den SHA-256, daher fehlt, was davon abhängt; das Bündel zusammen mit dem Ordner seiner Logs angeben.</translation>
    </message>
    <message>
        <source>The bundle is damaged ({what}); ask whoever made it for another copy, or copy it again.</source>
        <translation>Das Bündel ist beschädigt ({what}); den Ersteller um eine neue Kopie bitten oder es noch einmal kopieren.</translation>
    </message>
    <message>
        <source>The bundle was not opened: it holds a file called {name!r}, which no bundle of Samepart does.</source>
        <translation>Das Bündel wurde nicht geöffnet: Es enthält eine Datei namens {name!r}, die kein Bündel von Samepart enthält.</translation>
    </message>
    <message>
        <source>The bundle was not opened: {name} unpacks to more than {limit_mb} MB, which no study&apos;s file does.</source>
        <translation>Das Bündel wurde nicht geöffnet: {name} ist entpackt größer als {limit_mb} MB, was bei keiner Datei einer Studie vorkommt.</translation>
    </message>
    <message>
        <source>The clock was put by {hours} h at {at} (summer time); the trace runs on evenly over it.</source>
        <translation>Die Uhr wurde am {at} um {hours} h umgestellt (Sommerzeit); der Verlauf läuft darüber gleichmäßig weiter.</translation>
    </message>
    <message>
        <source>The column file is damaged ({error}). Write it again.</source>
        <translation>Die Spaltendatei ist beschädigt ({error}). Sie noch einmal schreiben.</translation>
    </message>
    <message>
        <source>The comparison opens as soon as it is known.</source>
        <translation>Der Vergleich öffnet sich, sobald er feststeht.</translation>
    </message>
    <message>
        <source>The counter alone was taken, as the surer of the two.</source>
        <translation>Der Zähler allein wurde genommen, als der sicherere von beiden.</translation>
    </message>
    <message>
        <source>The database gave hardly a row in {seconds} s. Copy its rows into a plain table, or export the log as CSV.</source>
        <translation>Die Datenbank gab in {seconds} s kaum eine Zeile her. Kopieren Sie ihre Zeilen in eine einfache Tabelle oder exportieren Sie das Log als CSV.</translation>
    </message>
    <message>
        <source>The database has no table with a time and a power column. Export the log as CSV instead.</source>
        <translation>Die Datenbank hat keine Tabelle mit einer Zeit- und einer Leistungsspalte. Das Log stattdessen als CSV exportieren.</translation>
    </message>
    <message>
        <source>The database is damaged ({error}). Copy it again while its program is closed.</source>
        <translation>Die Datenbank ist beschädigt ({error}). Sie noch einmal kopieren, während ihr Programm geschlossen ist.</translation>
    </message>
    <message>
        <source>The dates are not all written in one way. Write them as 2026-01-31 16:30.</source>
        <translation>Die Daten sind nicht alle gleich geschrieben. Als 2026-01-31 16:30 schreiben.</translation>
    </message>
    <message>
        <source>The duration was not noted with the readings of the display.</source>
        <translation>Die Dauer wurde mit den Ablesungen der Anzeige nicht notiert.</translation>
    </message>
    <message>
        <source>The elapsed time starts again {count:time|times}; how long the {count:~pause was|pauses were} is not known.</source>
        <translation>Die verstrichene Zeit beginnt {count:Mal|Mal} von vorn; wie lang die {count:~Pause war|Pausen waren}, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The energy ({energy:.6g} Wh) is not what the display counted ({counted:.6g} Wh); the energy as written is taken.</source>
        <translation>Die Energie ({energy:.6g} Wh) ist nicht, was die Anzeige zählte ({counted:.6g} Wh); genommen wird die Energie wie geschrieben.</translation>
    </message>
    <message>
        <source>The energy column falls again and again: it was taken as the energy of each interval.</source>
        <translation>Die Energiespalte fällt immer wieder: Sie wurde als Energie je Abstand genommen.</translation>
    </message>
    <message>
        <source>The energy column holds nothing that could be used. Name another column in the Reading panel.</source>
        <translation>Die Energiespalte enthält nichts Brauchbares. Unter „Einlesen“ eine andere Spalte nennen.</translation>
    </message>
    <message>
        <source>The energy counter leaps {count:time|times} by more than any load could draw; {count:~the leap was|the leaps were} taken out.</source>
        <translation>Der Energiezähler springt {count:Mal|Mal} um mehr, als ein Verbraucher aufnehmen könnte; {count:~der Sprung wurde|die Sprünge wurden} herausgenommen.</translation>
    </message>
    <message>
        <source>The energy counter starts again {count:time|times}; it was made to run on.</source>
        <translation>Der Energiezähler beginnt {count:Mal|Mal} von vorn; er wurde fortlaufend gemacht.</translation>
    </message>
    <message>
        <source>The file changed while it was being read, so nothing of it was kept; drop it again when it is complete.</source>
        <translation>Die Datei änderte sich während des Lesens, daher wurde nichts davon behalten; noch einmal hierher ziehen, wenn sie vollständig ist.</translation>
    </message>
    <message>
        <source>The file changed while it was read; rows may be missing. Read it again.</source>
        <translation>Die Datei hat sich beim Lesen geändert; Zeilen können fehlen. Sie noch einmal lesen.</translation>
    </message>
    <message>
        <source>The file claims {bytes} bytes but hardly any are stored: it is a hole. Copy the log again.</source>
        <translation>Die Datei gibt {bytes} Bytes vor, aber kaum welche sind gespeichert: Ihr Inhalt fehlt. Das Log noch einmal kopieren.</translation>
    </message>
    <message>
        <source>The file could not be read ({error}). Please report it with a shortened sample.</source>
        <translation>Die Datei konnte nicht gelesen werden ({error}). Bitte mit einem gekürzten Beispiel melden.</translation>
    </message>
    <message>
        <source>The file could not be read: {error}. Copy it to another disk and try again.</source>
        <translation>Die Datei konnte nicht gelesen werden: {error}. Sie auf einen anderen Datenträger kopieren und es erneut versuchen.</translation>
    </message>
    <message>
        <source>The file has grown: read on from where it ended, {rows:more row|more rows}.</source>
        <translation>Die Datei ist gewachsen: ab ihrem bisherigen Ende weitergelesen, {rows:weitere Zeile|weitere Zeilen}.</translation>
    </message>
    <message>
        <source>The file has {megabytes} MB, too much for prices. Keep the dates that matter.</source>
        <translation>Die Datei hat {megabytes} MB, zu viel für Preise. Nur die nötigen Tage behalten.</translation>
    </message>
    <message>
        <source>The file holds no text. Save the prices as CSV: a date with time, and a price.</source>
        <translation>Die Datei enthält keinen Text. Die Preise als CSV speichern: ein Datum mit Uhrzeit und ein Preis.</translation>
    </message>
    <message>
        <source>The file is empty. Save the log again on the meter&apos;s side.</source>
        <translation>Die Datei ist leer. Das Log am Messgerät noch einmal speichern.</translation>
    </message>
    <message>
        <source>The file is one line of {bytes} characters. A log has a line for each row; export it again.</source>
        <translation>Die Datei ist eine einzige Zeile von {bytes} Zeichen. Ein Log hat eine Zeile für jeden Wert; es noch einmal exportieren.</translation>
    </message>
    <message>
        <source>The file may not be read by this user. Change its permissions or copy it elsewhere.</source>
        <translation>Dieser Benutzer darf die Datei nicht lesen. Ihre Rechte ändern oder sie an einen anderen Ort kopieren.</translation>
    </message>
    <message>
        <source>The file no longer begins with what was read from it, so the study was left as it is; to take the file as it is now, choose &apos;Read the file again&apos; on the Logs page.</source>
        <translation>Die Datei beginnt nicht mehr mit dem, was aus ihr gelesen wurde, daher blieb die Studie, wie sie ist; um die Datei zu nehmen, wie sie jetzt ist, auf der Seite „Logs“ „Datei neu einlesen“ wählen.</translation>
    </message>
    <message>
        <source>The file no longer holds what was read from it as the log of {machine}, so the study was left as it is; add the file as a new log if that is what it is.</source>
        <translation>Die Datei enthält nicht mehr, was aus ihr als Log von {machine} gelesen wurde, daher blieb die Studie, wie sie ist; die Datei als neues Log hinzufügen, wenn sie eines ist.</translation>
    </message>
    <message>
        <source>The file was read anew as it is now; what you decided about its runs was kept.</source>
        <translation>Die Datei wurde neu gelesen, wie sie jetzt ist; was über ihre Läufe entschieden war, blieb erhalten.</translation>
    </message>
    <message>
        <source>The file was read but could not be copied into the study ({why}); drop it again.</source>
        <translation>Die Datei wurde gelesen, ließ sich aber nicht in die Studie kopieren ({why}); noch einmal hierher ziehen.</translation>
    </message>
    <message>
        <source>The first and the last cell of a sheet are more than {limit} cells apart. Delete what stands far from the log, or save the log as CSV.</source>
        <translation>Die erste und die letzte Zelle eines Blatts liegen mehr als {limit} Zellen auseinander. Löschen, was weit vom Log entfernt steht, oder das Log als CSV speichern.</translation>
    </message>
    <message>
        <source>The first and the last date lie too far apart. Remove rows with a wrong date.</source>
        <translation>Das erste und das letzte Datum liegen zu weit auseinander. Zeilen mit falschem Datum entfernen.</translation>
    </message>
    <message>
        <source>The first {shown} of {rows} rows; the table “{key}” in the files holds all.</source>
        <translation>Die ersten {shown} von {rows} Zeilen; die Tabelle „{key}“ in den Dateien enthält alle.</translation>
    </message>
    <message>
        <source>The folder holds more than {limit} files; the rest is left out. Name a smaller folder.</source>
        <translation>Der Ordner enthält mehr als {limit} Dateien; der Rest bleibt weg. Einen kleineren Ordner nennen.</translation>
    </message>
    <message>
        <source>The folder holds no file that could be a log. Name a folder that does.</source>
        <translation>Der Ordner enthält keine Datei, die ein Log sein könnte. Einen Ordner nennen, der eine enthält.</translation>
    </message>
    <message>
        <source>The headings are repeated {count:time|times} in the file; {count:~that line was|those lines were} passed over.</source>
        <translation>Die Überschriften kommen in der Datei noch {count:Mal|Mal} vor; {count:~diese Zeile wurde|diese Zeilen wurden} übergangen.</translation>
    </message>
    <message>
        <source>The heated bed’s energy divided by the run’s; every run names its way.</source>
        <translation>Energie des Heizbetts geteilt durch die des Laufs; jeder Lauf nennt seinen Weg.</translation>
    </message>
    <message>
        <source>The heater seems to run in step with the values each {interval_s:.0f} s: they meet it at the same few moments of its cycle, so what each misses does not even out: +-{percent:.1f} % of the energy. A meter that logs at another interval, averages, or has a counter would tell.</source>
        <translation>Die Heizung scheint im Gleichtakt mit den Werten alle {interval_s:.0f} s zu laufen: Sie treffen sie in denselben wenigen Augenblicken ihres Takts, sodass sich nicht ausgleicht, was jeder verfehlt: +-{percent:.1f} % der Energie. Ein Messgerät, das in anderem Abstand aufzeichnet, mittelt oder einen Zähler hat, würde es zeigen.</translation>
    </message>
    <message>
        <source>The hold tests are too short: hold each temperature for at least half an hour.</source>
        <translation>Die Halteversuche sind zu kurz: jede Temperatur mindestens eine halbe Stunde halten.</translation>
    </message>
    <message>
        <source>The interval is Student&apos;s t on the spread of the runs.</source>
        <translation>Das Intervall ist Students t auf die Streuung der Läufe.</translation>
    </message>
    <message>
        <source>The interval is what the meter and its log leave open.</source>
        <translation>Das Intervall ist, was das Messgerät und sein Log offen lassen.</translation>
    </message>
    <message>
        <source>The interval joins what differs from run to run with what the meter does to all runs alike, which no repeat lessens.</source>
        <translation>Das Intervall verbindet, was von Lauf zu Lauf anders ist, mit dem, was das Messgerät allen Läufen gleich antut; Letzteres verringert keine Wiederholung.</translation>
    </message>
    <message>
        <source>The level at the test&apos;s end shows that it runs on while the machine is idle: {energy} kWh a year.</source>
        <translation>Die Leistung am Ende des Versuchs zeigt, dass der Verbraucher im Leerlauf weiterläuft: {energy} kWh im Jahr.</translation>
    </message>
    <message>
        <source>The line holds no name with a value.</source>
        <translation>Die Zeile enthält keinen Namen mit einem Wert.</translation>
    </message>
    <message>
        <source>The line is no JSON object.</source>
        <translation>Die Zeile ist kein JSON-Objekt.</translation>
    </message>
    <message>
        <source>The loads that draw all through processing, added up; a heater that heats up is not counted.</source>
        <translation>Die Verbraucher, die die ganze Fertigung über ziehen, addiert; eine aufheizende Heizung zählt nicht.</translation>
    </message>
    <message>
        <source>The log has clock times but no date; a time that falls back counts as the next day.</source>
        <translation>Das Log hat Uhrzeiten, aber kein Datum; eine Zeit, die zurückfällt, zählt als nächster Tag.</translation>
    </message>
    <message>
        <source>The log has its newest row first and was turned round.</source>
        <translation>Das Log hatte die neueste Zeile zuerst und wurde umgedreht.</translation>
    </message>
    <message>
        <source>The log holds a value only when the power changed; each holds until the next.</source>
        <translation>Das Log enthält nur dann einen Wert, wenn sich die Leistung änderte; jeder gilt bis zum nächsten.</translation>
    </message>
    <message>
        <source>The log {name} could not be put into the bundle ({why}); only its SHA-256 is in it.</source>
        <translation>Das Log {name} konnte nicht ins Bündel gelegt werden ({why}); nur sein SHA-256 ist darin.</translation>
    </message>
    <message>
        <source>The log {name} is not the one that the figures were made from: its SHA-256 begins {found}, that of the bundle {expected}. It was left out; find the unchanged file.</source>
        <translation>Das Log {name} ist nicht das, aus dem die Zahlen berechnet wurden: Sein SHA-256 beginnt mit {found}, der des Bündels mit {expected}. Es wurde ausgelassen; die unveränderte Datei suchen.</translation>
    </message>
    <message>
        <source>The logs are still being read; try again in a moment.</source>
        <translation>Die Logs werden noch gelesen; gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The logs were taken in different ways ({ways}): a slowly sampled log says less of a switching bed; use one interval for all machines.</source>
        <translation>Die Logs wurden verschieden aufgenommen ({ways}): Ein langsam abgetastetes Log sagt weniger über ein schaltendes Heizbett; für alle Maschinen denselben Abstand verwenden.</translation>
    </message>
    <message>
        <source>The lower temperature is stopped at your limit.</source>
        <translation>Die niedrigere Temperatur endet an der eigenen Grenze.</translation>
    </message>
    <message>
        <source>The machine</source>
        <translation>Die Maschine</translation>
    </message>
    <message>
        <source>The machines</source>
        <translation>Die Maschinen</translation>
    </message>
    <message>
        <source>The machines count as measured with {count} meters, so the error of a meter does not cancel between them; if one meter measured them all, say so; if not, hold one steady load against each meter.</source>
        <translation>Die Maschinen gelten als mit {count} Messgeräten gemessen, daher hebt sich der Fehler eines Messgeräts zwischen ihnen nicht auf; falls ein Messgerät alle maß, dies angeben; falls nicht, eine gleichmäßige Last an jedes Messgerät halten.</translation>
    </message>
    <message>
        <source>The machines were measured with {count} meters that were held against each other on one load; what the checks leave open is in the intervals.</source>
        <translation>Die Maschinen wurden mit {count} Messgeräten gemessen, die an einer Last gegeneinander gehalten wurden; was die Prüfungen offen lassen, ist in den Intervallen.</translation>
    </message>
    <message>
        <source>The mean power from the end of warm-up to the end, the mean of the runs that count.</source>
        <translation>Die mittlere Leistung vom Ende des Aufheizens bis zum Ende, gemittelt über die zählenden Läufe.</translation>
    </message>
    <message>
        <source>The meter&apos;s offset drops out of a difference; its gain stays.</source>
        <translation>Der Nullpunktfehler des Messgeräts fällt aus einem Unterschied heraus; seine Verstärkung bleibt.</translation>
    </message>
    <message>
        <source>The meter&apos;s own energy counter was read over the same time; the power column ties its steps to the run&apos;s edges.</source>
        <translation>Der Energiezähler des Messgeräts wurde über dieselbe Zeit gelesen; die Leistungsspalte bindet seine Stufen an die Ränder des Laufs.</translation>
    </message>
    <message>
        <source>The nozzle was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; set one temperature for all.</source>
        <translation>Die Düse hatte bei {machines} {own:.0f} °C und bei {others} {usual:.0f} °C; für alle dieselbe Temperatur einstellen.</translation>
    </message>
    <message>
        <source>The one run of the part that counts, measured at the plug.</source>
        <translation>Der eine zählende Lauf des Teils, an der Steckdose gemessen.</translation>
    </message>
    <message>
        <source>The p&amp;rint takes</source>
        <translation>Der D&amp;ruck dauert</translation>
    </message>
    <message>
        <source>The page about this number: what it means, how sure, cautions</source>
        <translation>Die Seite zu dieser Zahl: was sie bedeutet, wie sicher sie ist, was zu beachten ist</translation>
    </message>
    <message>
        <source>The part that is made on every machine</source>
        <translation>Das Teil, das auf jeder Maschine gefertigt wird</translation>
    </message>
    <message>
        <source>The picture as it is saved</source>
        <translation>Das Bild, wie es gespeichert wird</translation>
    </message>
    <message>
        <source>The point changes no number of the comparison by itself.</source>
        <translation>Der Punkt ändert von sich aus keine Zahl des Vergleichs.</translation>
    </message>
    <message>
        <source>The points lie off it, so what they leave open was widened until they do not.</source>
        <translation>Die Punkte liegen daneben, daher wurde das, was sie offen lassen, so weit vergrößert, bis sie passen.</translation>
    </message>
    <message>
        <source>The points lie on it as well as their uncertainties say.</source>
        <translation>Die Punkte liegen so gut darauf, wie ihre Unsicherheiten sagen.</translation>
    </message>
    <message>
        <source>The power adds up to {by_power_wh} Wh, the counter to {by_counter_wh} Wh. Check the kind of sampling and the units.</source>
        <translation>Die Leistung ergibt {by_power_wh} Wh, der Zähler {by_counter_wh} Wh. Die Art der Abtastung und die Einheiten prüfen.</translation>
    </message>
    <message>
        <source>The power adds up to {power_wh:.1f} Wh and the energy counter says {counter_wh:.1f} Wh, further apart than both explain; the surer one, {used:.1f} Wh, is used. Pulses that keep step with the meter&apos;s values can do this, and so can a column or a unit that was read wrongly: look at how the log was read.</source>
        <translation>Die Leistung ergibt {power_wh:.1f} Wh und der Energiezähler sagt {counter_wh:.1f} Wh, weiter auseinander, als beide erklären; verwendet wird der sicherere Wert, {used:.1f} Wh. Pulse im Gleichtakt mit den Werten des Messgeräts können das bewirken, ebenso eine falsch gelesene Spalte oder Einheit: nachsehen, wie das Log gelesen wurde.</translation>
    </message>
    <message>
        <source>The power alone was taken, as the surer of the two.</source>
        <translation>Die Leistung allein wurde genommen, als die sicherere von beiden.</translation>
    </message>
    <message>
        <source>The power column of the log was added up over the time of the run.</source>
        <translation>Die Leistungsspalte des Logs wurde über die Zeit des Laufs aufsummiert.</translation>
    </message>
    <message>
        <source>The power column was added up from the first row to the last, gaps bridged.</source>
        <translation>Die Leistungsspalte wurde von der ersten bis zur letzten Zeile addiert, Lücken überbrückt.</translation>
    </message>
    <message>
        <source>The price at that time is not known.</source>
        <translation>Der Preis zu dieser Zeit ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The prices do not follow each other every minute to every day. Save half-hourly or hourly prices.</source>
        <translation>Die Preise folgen nicht im Abstand von einer Minute bis zu einem Tag aufeinander. Halbstündliche oder stündliche Preise speichern.</translation>
    </message>
    <message>
        <source>The print</source>
        <translation>Der Druck</translation>
    </message>
    <message>
        <source>The program found its edges in the log.</source>
        <translation>Das Programm fand die Ränder im Log.</translation>
    </message>
    <message>
        <source>The reading after the run must be higher than the one before it.</source>
        <translation>Die Ablesung nach dem Lauf muss höher sein als die davor.</translation>
    </message>
    <message>
        <source>The room was at {own:.0f} °C with {machines} and at {usual:.0f} °C with {others}; test in one room and season, because a warm room spares the bed.</source>
        <translation>Der Raum hatte bei {machines} {own:.0f} °C und bei {others} {usual:.0f} °C; in einem Raum und einer Jahreszeit messen, denn ein warmer Raum nimmt dem Heizbett Arbeit ab.</translation>
    </message>
    <message>
        <source>The row could not be taken apart.</source>
        <translation>Die Zeile ließ sich nicht zerlegen.</translation>
    </message>
    <message>
        <source>The row has no energy; fill it in, in Wh or as two readings of the display.</source>
        <translation>Die Zeile hat keine Energie; in Wh oder als zwei Ablesungen der Anzeige eintragen.</translation>
    </message>
    <message>
        <source>The row has {bytes} characters and is no row of a log.</source>
        <translation>Die Zeile hat {bytes} Zeichen und ist keine Zeile eines Logs.</translation>
    </message>
    <message>
        <source>The row has {cells:cell|cells} where {usual:is|are} usual. It may be cut or run into another.</source>
        <translation>Die Zeile hat {cells:Zelle|Zellen}, üblich {usual:~ist|sind} {usual}. Sie kann abgeschnitten oder mit einer anderen vermengt sein.</translation>
    </message>
    <message>
        <source>The row names no machine; it was not used.</source>
        <translation>Die Zeile nennt keine Maschine; sie wurde nicht verwendet.</translation>
    </message>
    <message>
        <source>The rows are numbered ({column}) and nothing tells the time; each row was taken as one second. Write a line such as Interval: 10 s above the headings, or export the log with its times.</source>
        <translation>Die Zeilen sind nummeriert ({column}), und nichts nennt die Zeit; jede Zeile wurde als eine Sekunde genommen. Über den Überschriften eine Zeile wie Interval: 10 s schreiben oder das Log mit seinen Zeiten exportieren.</translation>
    </message>
    <message>
        <source>The rows of one log of {machine} name different meters ({meters}); a log is of one meter, so choose it on the Logs page.</source>
        <translation>Die Zeilen eines Logs von {machine} nennen verschiedene Messgeräte ({meters}); ein Log stammt von einem Messgerät, also auf der Seite „Logs“ wählen.</translation>
    </message>
    <message>
        <source>The rows {rows} have no energy yet; fill them in, in Wh or as two readings of the display.</source>
        <translation>Die Zeilen {rows} haben noch keine Energie; in Wh oder als zwei Ablesungen der Anzeige eintragen.</translation>
    </message>
    <message>
        <source>The runs of this plan with those so far would show {difference}.</source>
        <translation>Die Läufe dieses Plans würden mit den bisherigen {difference} nachweisen.</translation>
    </message>
    <message>
        <source>The runs of this plan would show {difference}.</source>
        <translation>Die Läufe dieses Plans würden {difference} nachweisen.</translation>
    </message>
    <message>
        <source>The runs so far are enough to show a difference of {wanted} between {machines}</source>
        <translation>Die bisherigen Läufe genügen, um einen Unterschied von {wanted} zwischen {machines} nachzuweisen</translation>
    </message>
    <message>
        <source>The runs that are shown never end their warm-up.</source>
        <translation>Die gezeigten Läufe beenden ihr Aufheizen nie.</translation>
    </message>
    <message>
        <source>The same bytes as {other}; counted once.</source>
        <translation>Dieselben Bytes wie {other}; einmal gezählt.</translation>
    </message>
    <message>
        <source>The same for {others}.</source>
        <translation>Dieselbe für {others}.</translation>
    </message>
    <message>
        <source>The same meter for all</source>
        <translation>Dasselbe Messgerät für alle</translation>
    </message>
    <message>
        <source>The same on pages</source>
        <translation>Dasselbe auf Seiten</translation>
    </message>
    <message>
        <source>The same part was made here with the bed off: what it took less is the bed&apos;s in the other runs</source>
        <translation>Dasselbe Teil wurde hier mit ausgeschaltetem Heizbett gefertigt: Was es weniger brauchte, entfällt in den anderen Läufen auf das Heizbett</translation>
    </message>
    <message>
        <source>The same part was made once with the bed off; what it took less is the bed&apos;s.</source>
        <translation>Dasselbe Teil wurde einmal ohne Heizbett gefertigt; was es weniger brauchte, entfällt auf das Heizbett.</translation>
    </message>
    <message>
        <source>The sheet has {count:more row|more rows}.</source>
        <translation>Der Laufzettel hat {count:weitere Zeile|weitere Zeilen}.</translation>
    </message>
    <message>
        <source>The spreadsheet could not be opened ({error}). Save it again as xlsx or as CSV.</source>
        <translation>Die Arbeitsmappe ließ sich nicht öffnen ({error}). Sie noch einmal als xlsx oder als CSV speichern.</translation>
    </message>
    <message>
        <source>The standby power of {machine} is not known: the program itself failed on it ({what}, at {where}); please report this.</source>
        <translation>Die Bereitschaftsleistung von {machine} ist nicht bekannt: Das Programm selbst scheiterte daran ({what}, bei {where}); bitte melden.</translation>
    </message>
    <message>
        <source>The states are told by levels that are learnt from each log itself.</source>
        <translation>Die Zustände folgen aus Leistungsstufen, die aus jedem Log selbst gelernt werden.</translation>
    </message>
    <message>
        <source>The states of all its logs, each from its levels, added up.</source>
        <translation>Die Zustände aller ihrer Logs, jeder aus seinen Leistungsstufen, addiert.</translation>
    </message>
    <message>
        <source>The stretch, {time} long, is steady; the means of its windows lie between {low} and {high} W.</source>
        <translation>Der Abschnitt, {time} lang, ist gleichmäßig; die Mittel seiner Fenster liegen zwischen {low} und {high} W.</translation>
    </message>
    <message>
        <source>The stretch, {time} long, never became steady, so the whole stretch is meant; the means of its windows lie between {low} and {high} W.</source>
        <translation>Der Abschnitt, {time} lang, wurde nie gleichmäßig, daher ist der ganze gemeint; die Mittel seiner Fenster liegen zwischen {low} und {high} W.</translation>
    </message>
    <message>
        <source>The study has one meter. Give another log its own with New, then hold the two against each other.</source>
        <translation>Die Studie hat ein Messgerät. Einem anderen Log mit „Neu“ ein eigenes geben, dann beide miteinander vergleichen.</translation>
    </message>
    <message>
        <source>The study is open for reading only, so nothing was changed; save it under another name and go on there.</source>
        <translation>Die Studie ist nur zum Lesen geöffnet, daher wurde nichts geändert; unter anderem Namen speichern und dort weitermachen.</translation>
    </message>
    <message>
        <source>The switch-on test over time, with its steps</source>
        <translation>Der Einschaltversuch über der Zeit, mit seinen Stufen</translation>
    </message>
    <message>
        <source>The table as it is saved</source>
        <translation>Die Tabelle, wie sie gespeichert wird</translation>
    </message>
    <message>
        <source>The temperature asked for was held to half a kelvin: its watts are taken, brought there by a hot plate&apos;s law.</source>
        <translation>Die gefragte Temperatur wurde auf ein halbes Kelvin gehalten: Ihre Leistung gilt, nach dem Gesetz einer heißen Platte dorthin umgerechnet.</translation>
    </message>
    <message>
        <source>The temperature asked for was not held: the nearest known watts are scaled by a hot plate&apos;s law.</source>
        <translation>Die gefragte Temperatur wurde nicht gehalten: Die nächste bekannte Leistung ist nach dem Gesetz einer heißen Platte umgerechnet.</translation>
    </message>
    <message>
        <source>The temperature of the {place} is not known of {machines} while it is of others; note it, or nobody can tell whether it was the same.</source>
        <translation>Die Temperatur ({place}) ist von {machines} nicht bekannt, von anderen schon; sie notieren, sonst weiß niemand, ob sie gleich war.</translation>
    </message>
    <message>
        <source>The temperature was not held for so long.</source>
        <translation>So lange wurde die Temperatur nicht gehalten.</translation>
    </message>
    <message>
        <source>The test</source>
        <translation>Der Versuch</translation>
    </message>
    <message>
        <source>The text {file} is missing.</source>
        <translation>Der Text {file} fehlt.</translation>
    </message>
    <message>
        <source>The time in this row could not be read: {text}.</source>
        <translation>Die Zeit in dieser Zeile ließ sich nicht lesen: {text}.</translation>
    </message>
    <message>
        <source>The time in this row is of a year that no log can be from (before {first} or after {last}): {text}.</source>
        <translation>Die Zeit in dieser Zeile liegt in einem Jahr, aus dem kein Log stammen kann (vor {first} oder nach {last}): {text}.</translation>
    </message>
    <message>
        <source>The times could be hours and minutes or minutes and seconds; they are taken as minutes and seconds. If they are hours and minutes, save the log with seconds.</source>
        <translation>Die Zeiten könnten Stunden und Minuten oder Minuten und Sekunden sein; sie gelten als Minuten und Sekunden. Sind es Stunden und Minuten, speichern Sie das Log mit Sekunden.</translation>
    </message>
    <message>
        <source>The times do not lie on an even grid. Save prices that each hold for the same time, such as half an hour; if the clock changes in the file, name the zone first.</source>
        <translation>Die Zeiten liegen auf keinem gleichmäßigen Raster. Preise speichern, die jeweils gleich lange gelten, etwa eine halbe Stunde; wenn die Uhr in der Datei umgestellt wird, zuerst die Zone nennen.</translation>
    </message>
    <message>
        <source>The times show minutes and seconds without the hour; where they fall back, one hour is taken as passed. Export the log with its hours.</source>
        <translation>Die Zeiten zeigen Minuten und Sekunden ohne die Stunde; wo sie zurückfallen, gilt eine Stunde als vergangen. Das Log mit seinen Stunden exportieren.</translation>
    </message>
    <message>
        <source>The two were joined, each weighted by how sure it is (generalized least squares).</source>
        <translation>Beide wurden verbunden, jedes nach seiner Sicherheit gewichtet (verallgemeinerte kleinste Quadrate).</translation>
    </message>
    <message>
        <source>The unit is taken as {unit}: with a small m the values would be those of no machine.</source>
        <translation>Die Einheit gilt als {unit}: mit kleinem m wären die Werte die keiner Maschine.</translation>
    </message>
    <message>
        <source>The warm-up shows a heater that the values each {interval_s:.0f} s then show hardly ever, or always, on. It may keep step with the meter and be missed, or met, each time: the interval is +-{percent:.0f} %. Log faster, average, or use a meter with an energy counter.</source>
        <translation>Das Aufheizen zeigt eine Heizung, die die Werte alle {interval_s:.0f} s danach fast nie oder immer eingeschaltet zeigen. Sie kann im Gleichtakt mit dem Messgerät sein und jedes Mal verfehlt oder getroffen werden: Das Intervall ist +-{percent:.0f} %. Schneller aufzeichnen, mitteln oder ein Messgerät mit Energiezähler verwenden.</translation>
    </message>
    <message>
        <source>The watts are those at the plug, with the losses of the machine&apos;s supply in them.</source>
        <translation>Die Leistung ist die an der Steckdose, mit den Verlusten des Netzteils der Maschine.</translation>
    </message>
    <message>
        <source>The watts are those that its hold tests tell; the cooling time follows from its warm-up.</source>
        <translation>Die Leistungen sind die aus ihren Halteversuchen; die Abkühlzeit folgt aus dem Aufheizen.</translation>
    </message>
    <message>
        <source>The watts of each load that never goes off, over all hours of a year.</source>
        <translation>Die Leistung jedes Verbrauchers, der nie ausgeht, über alle Stunden eines Jahres.</translation>
    </message>
    <message>
        <source>The watts that hold the bed at the common temperatures less those at its own, both by the machine&apos;s hold tests, over the time of processing; and the heat that the other rise takes, by the heat capacity of its warm-up.</source>
        <translation>Die Leistung, die das Heizbett bei den gemeinsamen Temperaturen hält, vermindert um die bei den eigenen, beides nach den Halteversuchen der Maschine, über die Zeit der Fertigung; dazu die Wärme für die andere Erwärmung, nach der Wärmekapazität beim Aufheizen.</translation>
    </message>
    <message>
        <source>The whole study</source>
        <translation>Die ganze Studie</translation>
    </message>
    <message>
        <source>The years of all machines whose standby is known, added up.</source>
        <translation>Die Jahre aller Maschinen, deren Bereitschaft bekannt ist, addiert.</translation>
    </message>
    <message>
        <source>The {name} of {meter} moves both machines alike and cancels.</source>
        <translation>{name} ({meter}): bewegt beide Maschinen gleich und hebt sich auf.</translation>
    </message>
    <message>
        <source>Their scatter adds in squares; the meter&apos;s gain moves all of them alike.</source>
        <translation>Ihre Streuung addiert sich in Quadraten; die Verstärkung des Messgeräts bewegt alle gleich.</translation>
    </message>
    <message>
        <source>Then at [°C]</source>
        <translation>Danach bei [°C]</translation>
    </message>
    <message>
        <source>There are headings but no row of values below them ({first_line}). Save the log again.</source>
        <translation>Es gibt Überschriften, aber keine Zeile mit Werten darunter ({first_line}). Das Log noch einmal speichern.</translation>
    </message>
    <message>
        <source>There are no cells to paste: copy some in a spreadsheet first.</source>
        <translation>Es gibt keine Zellen zum Einfügen: zuerst welche in einer Tabellenkalkulation kopieren.</translation>
    </message>
    <message>
        <source>There is a column “{name}” already: choose another name.</source>
        <translation>Eine Spalte „{name}“ gibt es schon: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>There is no part of a machine: write a whole number.</source>
        <translation>Teile von Maschinen gibt es nicht: eine ganze Zahl eintragen.</translation>
    </message>
    <message>
        <source>There is no such file. Check the name and the folder.</source>
        <translation>Diese Datei gibt es nicht. Namen und Ordner prüfen.</translation>
    </message>
    <message>
        <source>There is no time zone called {zone}. Choose one such as Europe/Berlin.</source>
        <translation>Eine Zeitzone namens {zone} gibt es nicht. Eine wie Europe/Berlin wählen.</translation>
    </message>
    <message>
        <source>There is no time zone “{text}”: write one such as Europe/Berlin.</source>
        <translation>Eine Zeitzone „{text}“ gibt es nicht: eine wie Europe/Berlin eintragen.</translation>
    </message>
    <message>
        <source>There is nothing to line up</source>
        <translation>Für den Verlauf ist nichts da</translation>
    </message>
    <message>
        <source>There is nothing to save: the study has this figure no more.</source>
        <translation>Es gibt nichts zu speichern: Die Studie hat dieses Diagramm nicht mehr.</translation>
    </message>
    <message>
        <source>There is nothing to save: the study has this table no more.</source>
        <translation>Es gibt nichts zu speichern: Die Studie hat diese Tabelle nicht mehr.</translation>
    </message>
    <message>
        <source>There was nothing to save.</source>
        <translation>Es gab nichts zu speichern.</translation>
    </message>
    <message>
        <source>These readings are too far apart for one load: check the digits and the unit.</source>
        <translation>Diese Ablesungen liegen für eine Last zu weit auseinander: Ziffern und Einheit prüfen.</translation>
    </message>
    <message>
        <source>They are planned after the blocks</source>
        <translation>Sie sind nach den Blöcken geplant</translation>
    </message>
    <message>
        <source>They last</source>
        <translation>Sie halten</translation>
    </message>
    <message>
        <source>This chart cannot be published; save its picture instead.</source>
        <translation>Dieses Diagramm lässt sich nicht veröffentlichen; stattdessen sein Bild speichern.</translation>
    </message>
    <message>
        <source>This figure has nothing to show for the machines that are chosen</source>
        <translation>Dieses Diagramm hat für die gewählten Maschinen nichts zu zeigen</translation>
    </message>
    <message>
        <source>This is a fault of the program, not of your data. The study is as it was before. Copy the text and send it to whoever looks after the program.</source>
        <translation>Das ist ein Fehler des Programms, nicht der eigenen Daten. Die Studie ist, wie sie vorher war. Den Text kopieren und an die Stelle senden, die das Programm betreut.</translation>
    </message>
    <message>
        <source>This is a folder, not a file. Name the files in it, or drop the folder on the window.</source>
        <translation>Das ist ein Ordner, keine Datei. Die Dateien darin nennen oder den Ordner auf das Fenster ziehen.</translation>
    </message>
    <message>
        <source>This is a pipe, a socket or a device, not an ordinary file. Save its data to a file first.</source>
        <translation>Das ist eine Pipe, ein Socket oder ein Gerät, keine gewöhnliche Datei. Die Daten zuerst in einer Datei speichern.</translation>
    </message>
    <message>
        <source>This is no block of cells ({why}): nothing was pasted.</source>
        <translation>Das ist kein Block von Zellen ({why}): Nichts wurde eingefügt.</translation>
    </message>
    <message>
        <source>This is the low end of the values at which the power rests while nothing heats, learnt from the log: one in twenty of them lies below it, so the mean will be higher, and no interval is given.</source>
        <translation>Dies ist das untere Ende der Werte, bei denen die Leistung ruht, während nichts heizt, aus dem Log gelernt: Einer von zwanzig liegt darunter, das Mittel liegt also höher, und es gibt kein Intervall.</translation>
    </message>
    <message>
        <source>This is too much text for a table of machines: nothing was pasted.</source>
        <translation>Das ist zu viel Text für eine Tabelle von Maschinen: Nichts wurde eingefügt.</translation>
    </message>
    <message>
        <source>This is {what}, not a table of values. Export the log as text (CSV) or as a spreadsheet.</source>
        <translation>Das ist {what}, keine Tabelle mit Werten. Das Log als Text (CSV) oder als Arbeitsmappe exportieren.</translation>
    </message>
    <message>
        <source>This link leads back to itself, so it is not followed. Name the file directly.</source>
        <translation>Diese Verknüpfung führt auf sich selbst zurück, daher wird ihr nicht gefolgt. Die Datei direkt nennen.</translation>
    </message>
    <message>
        <source>This link points to a file that is not there. Restore the file or name it directly.</source>
        <translation>Diese Verknüpfung zeigt auf eine Datei, die es nicht gibt. Die Datei wiederherstellen oder direkt nennen.</translation>
    </message>
    <message>
        <source>This log is in the study already, so it was not added again.</source>
        <translation>Dieses Log ist schon in der Studie und wurde nicht noch einmal hinzugefügt.</translation>
    </message>
    <message>
        <source>This log is of the bed alone</source>
        <translation>Dieses Log ist vom Heizbett allein</translation>
    </message>
    <message>
        <source>This log was taken with a meter that is not in the list</source>
        <translation>Dieses Log wurde mit einem Messgerät aufgenommen, das nicht in der Liste steht</translation>
    </message>
    <message>
        <source>This meter measured all machines, one after another: what it is off by cancels between them</source>
        <translation>Dieses Messgerät hat alle Maschinen gemessen, eine nach der anderen: Sein Fehler hebt sich zwischen ihnen auf</translation>
    </message>
    <message>
        <source>This row has been read before; it was not used again.</source>
        <translation>Diese Zeile wurde schon gelesen; sie wurde nicht noch einmal verwendet.</translation>
    </message>
    <message>
        <source>This row holds no date with a price and was left out: &quot;{text}&quot;.</source>
        <translation>Diese Zeile enthält kein Datum mit Preis und wurde ausgelassen: „{text}“.</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>Donnerstag</translation>
    </message>
    <message>
        <source>Tick runs in the list on the right.</source>
        <translation>In der Liste rechts Läufe ankreuzen.</translation>
    </message>
    <message>
        <source>Tick the machines to show; drag them, or press Alt with up or down, to order them</source>
        <translation>Zu zeigende Maschinen ankreuzen; zum Ordnen ziehen oder Alt mit Pfeil auf oder ab drücken</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Time [s]</source>
        <translation>Zeit [s]</translation>
    </message>
    <message>
        <source>Time from the end of warm-up</source>
        <translation>Zeit ab Ende des Aufheizens</translation>
    </message>
    <message>
        <source>Time from the start</source>
        <translation>Zeit ab Beginn</translation>
    </message>
    <message>
        <source>Time in the log</source>
        <translation>Zeit im Log</translation>
    </message>
    <message>
        <source>Time read [min]</source>
        <translation>Abgelesene Zeit [min]</translation>
    </message>
    <message>
        <source>Time to the end</source>
        <translation>Zeit bis zum Ende</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>Time zone by whose clock the price changes</source>
        <translation>Zeitzone, nach deren Uhr der Preis wechselt</translation>
    </message>
    <message>
        <source>Title of this picture</source>
        <translation>Titel dieses Bildes</translation>
    </message>
    <message>
        <source>To a ratio between machines on these two meters their gains bring {left}; without a check it would be {whole}.</source>
        <translation>In ein Verhältnis zwischen Maschinen an diesen zwei Messgeräten bringen ihre Verstärkungen {left}; ohne Prüfung wären es {whole}.</translation>
    </message>
    <message>
        <source>To be cautious about</source>
        <translation>Mit Vorsicht zu betrachten</translation>
    </message>
    <message>
        <source>To be noted</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Told is what is shown four times in five, over the spreads that runs happen to show.</source>
        <translation>Angegeben ist, was sich in vier von fünf Fällen zeigt, über die Streuungen, die Läufe zufällig zeigen.</translation>
    </message>
    <message>
        <source>Told of the first {told} machines; the tables hold the other {count:machine|machines}.</source>
        <translation>Gezeigt für die ersten {told} Maschinen; in den Tabellen {count:~steht|stehen} auch die {count:andere Maschine|anderen Maschinen}.</translation>
    </message>
    <message>
        <source>Too small to draw: {causes}.</source>
        <translation>Zu klein zum Zeichnen: {causes}.</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>Dienstag</translation>
    </message>
    <message>
        <source>Turn loads on by the machine&apos;s controls only: inside are mains voltage and hot parts.</source>
        <translation>Verbraucher nur über die Bedienung der Maschine einschalten: Innen sind Netzspannung und heiße Teile.</translation>
    </message>
    <message>
        <source>Turn the same load off and on again: each time gives another value.</source>
        <translation>Denselben Verbraucher aus- und wieder einschalten: Jedes Mal gibt einen weiteren Wert.</translation>
    </message>
    <message>
        <source>Twice the pixels (PNG)</source>
        <translation>Doppelte Pixelzahl (PNG)</translation>
    </message>
    <message>
        <source>Two machines change places where the one that needed less as measured needs more adjusted.</source>
        <translation>Zwei Maschinen tauschen die Plätze, wo die, die gemessen weniger brauchte, umgerechnet mehr braucht.</translation>
    </message>
    <message>
        <source>Two runs only</source>
        <translation>Nur zwei Läufe</translation>
    </message>
    <message>
        <source>Two ways to the bed&apos;s part disagree: {first} says {first_percent:.0f} %, {second} says {second_percent:.0f} %, and +-{u_percent:.0f} % was expected at most. Check that both were made at the same bed temperature and in the same room.</source>
        <translation>Zwei Wege zum Anteil des Heizbetts widersprechen sich: {first} sagt {first_percent:.0f} %, {second} sagt {second_percent:.0f} %, und höchstens +-{u_percent:.0f} % waren zu erwarten. Prüfen, ob beide bei derselben Heizbetttemperatur und im selben Raum gemacht wurden.</translation>
    </message>
    <message>
        <source>Type in</source>
        <translation>Eintippen</translation>
    </message>
    <message>
        <source>Type readings…</source>
        <translation>Ablesungen eintippen…</translation>
    </message>
    <message>
        <source>Unattended machines: stay within reach, with a smoke alarm in the room and nothing that burns beside a machine; follow local rules.</source>
        <translation>Unbeaufsichtigte Maschinen: in Reichweite bleiben, mit Rauchmelder im Raum und nichts Brennbarem neben einer Maschine; örtliche Regeln befolgen.</translation>
    </message>
    <message>
        <source>Uncertainty budget</source>
        <translation>Unsicherheitsbudget</translation>
    </message>
    <message>
        <source>Uncertainty budgets</source>
        <translation>Unsicherheitsbudgets</translation>
    </message>
    <message>
        <source>Unexplained</source>
        <translation>Nicht erklärt</translation>
    </message>
    <message>
        <source>Unfair</source>
        <translation>Unfair</translation>
    </message>
    <message>
        <source>Unfair: it could matter more than the difference it is held against</source>
        <translation>Unfair: Es könnte mehr ausmachen als der Unterschied, an dem es gemessen wird</translation>
    </message>
    <message>
        <source>Unit of the new column, for numbers</source>
        <translation>Einheit der neuen Spalte, bei Zahlen</translation>
    </message>
    <message>
        <source>Unlike rests</source>
        <translation>Ungleiche Pausen</translation>
    </message>
    <message>
        <source>Unlike sampling</source>
        <translation>Ungleiche Abtastung</translation>
    </message>
    <message>
        <source>Unlike starts</source>
        <translation>Ungleiche Starts</translation>
    </message>
    <message>
        <source>Unpacked it would be larger than {limit_mb} MB, so it is not unpacked. Unpack it by hand.</source>
        <translation>Entpackt wäre es größer als {limit_mb} MB, daher wird es nicht entpackt. Es von Hand entpacken.</translation>
    </message>
    <message>
        <source>Untitled study</source>
        <translation>Studie ohne Namen</translation>
    </message>
    <message>
        <source>Up and down scroll; Tab goes on to the choices in it</source>
        <translation>Auf und ab blättert; Tab führt zu den Auswahlfeldern darin</translation>
    </message>
    <message>
        <source>Up to {share} of the parts&apos; energy was used when no price is known.</source>
        <translation>Bis zu {share} der Energie der Teile wurde verbraucht, als kein Preis bekannt ist.</translation>
    </message>
    <message>
        <source>Use a switch or timer approved for the load of the machine; never work on mains wiring yourself.</source>
        <translation>Einen für die Last der Maschine zugelassenen Schalter oder eine solche Zeitschaltuhr verwenden; nie selbst an Netzleitungen arbeiten.</translation>
    </message>
    <message>
        <source>Use only a meter or channel that is there already: never open a supply or a mains-heated bed to put one in. Such work belongs to a qualified electrician under local codes.</source>
        <translation>Nur ein Messgerät oder einen Kanal verwenden, der schon vorhanden ist: Niemals ein Netzteil oder ein mit Netzspannung beheiztes Heizbett öffnen, um eines einzubauen. Solche Arbeit gehört nach den örtlichen Vorschriften in die Hände einer Elektrofachkraft.</translation>
    </message>
    <message>
        <source>Used on</source>
        <translation>Verwendet an</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Versions and sizes to send with a fault; nothing private</source>
        <translation>Versionen und Größen, um sie mit einem Fehler zu senden; nichts Privates</translation>
    </message>
    <message>
        <source>Warm start</source>
        <translation>Warmstart</translation>
    </message>
    <message>
        <source>Warm start: before each run hold bed and nozzle at temperature for {wait}, all machines alike.</source>
        <translation>Warmstart: Vor jedem Lauf Heizbett und Düse {wait} auf Temperatur halten, bei allen Maschinen gleich.</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Aufheizen</translation>
    </message>
    <message>
        <source>Warm-up [Wh]</source>
        <translation>Aufheizen [Wh]</translation>
    </message>
    <message>
        <source>Warm-up and processing</source>
        <translation>Aufheizen und Fertigung</translation>
    </message>
    <message>
        <source>Warm-up once, then processing for the rest of the print; ± is half the 95 % interval.</source>
        <translation>Einmal Aufheizen, dann Fertigung für den Rest des Drucks; ± ist das halbe 95-%-Intervall.</translation>
    </message>
    <message>
        <source>Warm-up time</source>
        <translation>Aufheizzeit</translation>
    </message>
    <message>
        <source>Watts</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Watts a kelvin</source>
        <translation>Watt je Kelvin</translation>
    </message>
    <message>
        <source>Watts held</source>
        <translation>Halteleistung</translation>
    </message>
    <message>
        <source>Watts held at one temperature and in one room, over the area of one face of the bed.</source>
        <translation>Gehaltene Leistung bei einer Temperatur und in einem Raum, geteilt durch die Fläche einer Seite des Heizbetts.</translation>
    </message>
    <message>
        <source>Watts of processing less the sum of the loads. With one meter for both its gain scales what is left; two meters err each for themselves.</source>
        <translation>Leistung der Fertigung, vermindert um die Summe der Verbraucher. Bei einem Messgerät für beides skaliert dessen Verstärkung den Rest; zwei Messgeräte irren jedes für sich.</translation>
    </message>
    <message>
        <source>Watts of the bed</source>
        <translation>Leistung des Heizbetts</translation>
    </message>
    <message>
        <source>Watts of the bed over the print, held and made cooler</source>
        <translation>Leistung des Heizbetts während des Drucks, gehalten und kühler gestellt</translation>
    </message>
    <message>
        <source>Watts of the beds against their difference from the room</source>
        <translation>Leistung der Heizbetten gegen ihren Abstand zur Raumtemperatur</translation>
    </message>
    <message>
        <source>Watts of the held bed</source>
        <translation>Leistung des gehaltenen Heizbetts</translation>
    </message>
    <message>
        <source>Watts over the line, {name}</source>
        <translation>Leistung über der Geraden, {name}</translation>
    </message>
    <message>
        <source>Wear</source>
        <translation>Verschleiß</translation>
    </message>
    <message>
        <source>Wear is in the price of {machines} alone.</source>
        <translation>Der Verschleiß steckt nur im Preis von {machines}.</translation>
    </message>
    <message>
        <source>Wearing parts</source>
        <translation>Verschleißteile</translation>
    </message>
    <message>
        <source>WebP picture (*.webp)</source>
        <translation>WebP-Bild (*.webp)</translation>
    </message>
    <message>
        <source>WebP, pixels</source>
        <translation>WebP, Pixel</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>Mittwoch</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>Welch&apos;s test</source>
        <translation>Welch-Test</translation>
    </message>
    <message>
        <source>Wh</source>
        <translation>Wh</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What a cooler bed saves is known once a hold test shows this machine&apos;s bed.</source>
        <translation>Was ein kühleres Heizbett spart, ist bekannt, sobald ein Halteversuch das Heizbett dieser Maschine zeigt.</translation>
    </message>
    <message>
        <source>What a cooler bed saves on each machine</source>
        <translation>Was ein kühleres Heizbett an jeder Maschine spart</translation>
    </message>
    <message>
        <source>What a print takes and costs</source>
        <translation>Was ein Druck braucht und kostet</translation>
    </message>
    <message>
        <source>What can be said is a bound: the least that was drawn for a while is at least what is not the bed, and standby power never is the bed&apos;s.</source>
        <translation>Sagen lässt sich eine Schranke: Das Wenigste, das eine Weile gezogen wurde, ist mindestens das, was nicht das Heizbett ist, und Bereitschaftsleistung entfällt nie auf das Heizbett.</translation>
    </message>
    <message>
        <source>What could make the comparison unfair</source>
        <translation>Was den Vergleich unfair machen könnte</translation>
    </message>
    <message>
        <source>What could not be read</source>
        <translation>Was nicht gelesen werden konnte</translation>
    </message>
    <message>
        <source>What counts.</source>
        <translation>Was zählt.</translation>
    </message>
    <message>
        <source>What does the same part cost in energy on different machines?</source>
        <translation>Was kostet dasselbe Teil an Energie auf verschiedenen Maschinen?</translation>
    </message>
    <message>
        <source>What each point of fairness could matter, in Wh a part</source>
        <translation>Was jeder Punkt der Fairness ausmachen könnte, in Wh je Teil</translation>
    </message>
    <message>
        <source>What each run&apos;s own share is unsure by is much the same in all; repeats do not lessen it.</source>
        <translation>Die Unsicherheit des Anteils jedes Laufs ist in allen fast gleich; Wiederholungen verringern sie nicht.</translation>
    </message>
    <message>
        <source>What feeds the bed of {name}</source>
        <translation>Woraus das Heizbett von {name} gespeist wird</translation>
    </message>
    <message>
        <source>What is counted as a run</source>
        <translation>Was als Lauf gezählt wird</translation>
    </message>
    <message>
        <source>What is known of the machines</source>
        <translation>Was über die Maschinen bekannt ist</translation>
    </message>
    <message>
        <source>What is not the bed is taken off.</source>
        <translation>Was nicht das Heizbett ist, wird abgezogen.</translation>
    </message>
    <message>
        <source>What is on before the first step: the level that the test begins with.</source>
        <translation>Was vor der ersten Stufe an ist: die Leistung, mit der der Versuch beginnt.</translation>
    </message>
    <message>
        <source>What it &amp;is</source>
        <translation>&amp;Was er ist</translation>
    </message>
    <message>
        <source>What it answers, how to read it, what to beware of</source>
        <translation>Was sie beantwortet, wie man sie liest, worauf zu achten ist</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>What it is, and what would mend it</source>
        <translation>Was es ist und was abhilft</translation>
    </message>
    <message>
        <source>What makes it unsure</source>
        <translation>Was es unsicher macht</translation>
    </message>
    <message>
        <source>What makes it unsure (standard uncertainty, share)</source>
        <translation>Was es unsicher macht (Standardunsicherheit, Anteil)</translation>
    </message>
    <message>
        <source>What makes it unsure, as standard uncertainties:</source>
        <translation>Was den Wert unsicher macht, als Standardunsicherheiten:</translation>
    </message>
    <message>
        <source>What moves both watts alike, such as the meter&apos;s gain, counts once.</source>
        <translation>Was beide Leistungen gleich bewegt, etwa die Verstärkung des Messgeräts, zählt einmal.</translation>
    </message>
    <message>
        <source>What no log and no note shows was not looked at: draughts, another roll of material, other settings.</source>
        <translation>Was kein Log und keine Notiz zeigt, wurde nicht betrachtet: Zugluft, eine andere Materialrolle, andere Einstellungen.</translation>
    </message>
    <message>
        <source>What nobody stated is left out, not taken as free: no work, no rent, no profit.</source>
        <translation>Was nicht angegeben ist, fehlt und gilt nicht als kostenlos: keine Arbeit, keine Miete, kein Gewinn.</translation>
    </message>
    <message>
        <source>What one meter gives several machines adds up in full; what is each machine&apos;s own, in squares.</source>
        <translation>Was ein Messgerät mehreren Maschinen mitgibt, addiert sich voll; was jeder Maschine eigen ist, in Quadraten.</translation>
    </message>
    <message>
        <source>What one meter is off by cancels between the machines that it measured; two meters&apos; does not</source>
        <translation>Der Fehler eines Messgeräts hebt sich zwischen den Maschinen auf, die es gemessen hat; der von zweien nicht</translation>
    </message>
    <message>
        <source>What one print on each machine whose bed is known would save, added up.</source>
        <translation>Was je ein Druck auf jeder Maschine mit bekanntem Heizbett sparen würde, addiert.</translation>
    </message>
    <message>
        <source>What stands here is noted in all runs of the machine that count; grey is what counts without.</source>
        <translation>Was hier steht, wird in allen gezählten Läufen der Maschine notiert; grau ist, was ohne Angabe gilt.</translation>
    </message>
    <message>
        <source>What switching off would have saved, against minutes waited</source>
        <translation>Was Ausschalten gespart hätte, gegen die gewarteten Minuten</translation>
    </message>
    <message>
        <source>What the first meter showed</source>
        <translation>Was das erste Messgerät anzeigte</translation>
    </message>
    <message>
        <source>What the keyboard can do</source>
        <translation>Was die Tastatur kann</translation>
    </message>
    <message>
        <source>What the load was</source>
        <translation>Was die Last war</translation>
    </message>
    <message>
        <source>What the log says between the two ends of the span, on each run&apos;s own clock.</source>
        <translation>Was das Log zwischen den beiden Enden der Spanne sagt, auf der eigenen Uhr jedes Laufs.</translation>
    </message>
    <message>
        <source>What the meters&apos; displays show</source>
        <translation>Was die Messgeräte anzeigen</translation>
    </message>
    <message>
        <source>What the picture is for</source>
        <translation>Wofür das Bild ist</translation>
    </message>
    <message>
        <source>What the runs used within the marked span</source>
        <translation>Was die Läufe in der markierten Spanne verbrauchten</translation>
    </message>
    <message>
        <source>What the second meter showed</source>
        <translation>Was das zweite Messgerät anzeigte</translation>
    </message>
    <message>
        <source>What the stretch is</source>
        <translation>Was der Abschnitt ist</translation>
    </message>
    <message>
        <source>What the {part} costs in energy</source>
        <translation>Was das Teil ({part}) an Energie kostet</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was tun</translation>
    </message>
    <message>
        <source>What was drawn in each rest after those minutes would have been saved. Where the next run began from a warm machine, what its warm-up lacks against the largest one is taken off: that is the most that warming up again can cost.</source>
        <translation>Was in jeder Pause nach diesen Minuten gezogen wurde, wäre gespart. Wo der nächste Lauf mit warmer Maschine begann, wird abgezogen, was seinem Aufheizen gegen das größte fehlt: Mehr kann ein neues Aufheizen nicht kosten.</translation>
    </message>
    <message>
        <source>What was it?</source>
        <translation>Was war es?</translation>
    </message>
    <message>
        <source>What was wrong with files</source>
        <translation>Was an Dateien nicht stimmte</translation>
    </message>
    <message>
        <source>What went wrong</source>
        <translation>Was schiefgegangen ist</translation>
    </message>
    <message>
        <source>What would make it surer</source>
        <translation>Was es sicherer machen würde</translation>
    </message>
    <message>
        <source>What would make it surer:</source>
        <translation>Was ihn sicherer machen würde:</translation>
    </message>
    <message>
        <source>What you know of the machines</source>
        <translation>Was über die Maschinen bekannt ist</translation>
    </message>
    <message>
        <source>When band {place} begins, hours and minutes</source>
        <translation>Beginn der Preisstufe {place}, Stunden und Minuten</translation>
    </message>
    <message>
        <source>When band {place} ends, hours and minutes</source>
        <translation>Ende der Preisstufe {place}, Stunden und Minuten</translation>
    </message>
    <message>
        <source>When to start</source>
        <translation>Wann beginnen</translation>
    </message>
    <message>
        <source>Where is {name} now?</source>
        <translation>Wo liegt {name} jetzt?</translation>
    </message>
    <message>
        <source>Where the CO₂ factor is from</source>
        <translation>Herkunft des CO₂-Faktors</translation>
    </message>
    <message>
        <source>Whether a difference is shown is told by the ratio and its interval, adjusted for {pairs:pair|pairs} by Holm&apos;s way: {p}.</source>
        <translation>Ob ein Unterschied gezeigt ist, sagt das Verhältnis mit seinem Intervall, angepasst für {pairs:Paar|Paare} nach Holm: {p}.</translation>
    </message>
    <message>
        <source>Whether raw logs go into the bundle</source>
        <translation>Ob rohe Logs ins Bündel kommen</translation>
    </message>
    <message>
        <source>Whether they differ cannot be judged: it takes two runs or more of each.</source>
        <translation>Ob sie sich unterscheiden, lässt sich nicht beurteilen: Nötig sind je zwei Läufe oder mehr.</translation>
    </message>
    <message>
        <source>Whether {name} takes part</source>
        <translation>Ob {name} teilnimmt</translation>
    </message>
    <message>
        <source>Whether {title} runs while the machine is idle</source>
        <translation>Ob {title} läuft, während die Maschine untätig ist</translation>
    </message>
    <message>
        <source>Which list of prices</source>
        <translation>Welche Preisliste</translation>
    </message>
    <message>
        <source>Which of the machine&apos;s switch-on tests is shown</source>
        <translation>Welcher Einschaltversuch der Maschine gezeigt wird</translation>
    </message>
    <message>
        <source>While the bed cools it takes nothing; from then on it takes the watts of the lower temperature. Against that stands a bed held at the first temperature to the end.</source>
        <translation>Solange das Heizbett abkühlt, braucht es nichts; von da an braucht es die Leistung der niedrigeren Temperatur. Dagegen steht ein Heizbett, das bis zum Ende auf der ersten Temperatur gehalten wird.</translation>
    </message>
    <message>
        <source>While {machine} is idle, these run on: {loads}.</source>
        <translation>Während {machine} untätig ist, laufen weiter: {loads}.</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganz</translation>
    </message>
    <message>
        <source>Whole logs</source>
        <translation>Ganze Logs</translation>
    </message>
    <message>
        <source>Why is it left out?</source>
        <translation>Warum wird er ausgelassen?</translation>
    </message>
    <message>
        <source>Why it does not count</source>
        <translation>Warum er nicht zählt</translation>
    </message>
    <message>
        <source>Why it is left out</source>
        <translation>Warum er ausgelassen wird</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Warum nicht</translation>
    </message>
    <message>
        <source>Why not adjusted</source>
        <translation>Warum nicht umgerechnet</translation>
    </message>
    <message>
        <source>Why this is accepted</source>
        <translation>Warum das hingenommen wird</translation>
    </message>
    <message>
        <source>Why this run is left out</source>
        <translation>Warum dieser Lauf ausgelassen wird</translation>
    </message>
    <message>
        <source>Why? (kept in the study and told in the report)</source>
        <translation>Warum? (bleibt in der Studie und steht im Bericht)</translation>
    </message>
    <message>
        <source>Why? (shown with the comparison)</source>
        <translation>Warum? (steht beim Vergleich)</translation>
    </message>
    <message>
        <source>Wide, 1920 × 1080</source>
        <translation>Breit, 1920 × 1080</translation>
    </message>
    <message>
        <source>Wide, 1920 × 1080…</source>
        <translation>Breit, 1920 × 1080…</translation>
    </message>
    <message>
        <source>Width in pixels</source>
        <translation>Breite in Pixeln</translation>
    </message>
    <message>
        <source>With a tit&amp;le</source>
        <translation>&amp;Mit Titel</translation>
    </message>
    <message>
        <source>With a value each {interval_s:.0f} s and no energy counter, which of the heater&apos;s pulses were met is chance: +-{percent:.0f} % of the energy. A meter that logs each second, averages, or has a counter would tell.</source>
        <translation>Mit einem Wert alle {interval_s:.0f} s und ohne Energiezähler ist es Zufall, welche Pulse der Heizung getroffen wurden: +-{percent:.0f} % der Energie. Ein Messgerät, das jede Sekunde aufzeichnet, mittelt oder einen Zähler hat, würde es zeigen.</translation>
    </message>
    <message>
        <source>With conditions and source</source>
        <translation>Mit Bedingungen und Quelle</translation>
    </message>
    <message>
        <source>With one machine less there would be too few to show anything.</source>
        <translation>Mit einer Maschine weniger wären es zu wenige, um etwas zu zeigen.</translation>
    </message>
    <message>
        <source>With so many machines p comes from Student&apos;s t.</source>
        <translation>Bei so vielen Maschinen kommt p aus Students t.</translation>
    </message>
    <message>
        <source>With the headline</source>
        <translation>Mit der Überschrift</translation>
    </message>
    <message>
        <source>With {bytes} bytes the file is too large to be read at once. Split it by month.</source>
        <translation>Mit {bytes} Bytes ist die Datei zu groß, um auf einmal gelesen zu werden. Sie nach Monaten teilen.</translation>
    </message>
    <message>
        <source>With {name} counted too</source>
        <translation>Mit {name}, wenn auch gezählt</translation>
    </message>
    <message>
        <source>Within a group the spread between beds counts where it is more than what the measurements leave open: beds are not alike.</source>
        <translation>In einer Gruppe zählt die Streuung zwischen den Heizbetten, wo sie größer ist als das, was die Messungen offen lassen: Heizbetten sind nicht gleich.</translation>
    </message>
    <message>
        <source>Without its window that lies farthest off</source>
        <translation>Ohne das Fenster, das am weitesten abliegt</translation>
    </message>
    <message>
        <source>Without step {numbers}</source>
        <translation>Ohne Stufe {numbers}</translation>
    </message>
    <message>
        <source>Without the hold at {kelvin} K</source>
        <translation>Ohne den Halteversuch bei {kelvin} K</translation>
    </message>
    <message>
        <source>Without the level before the first step</source>
        <translation>Ohne die Leistung vor der ersten Stufe</translation>
    </message>
    <message>
        <source>Without {name}</source>
        <translation>Ohne {name}</translation>
    </message>
    <message>
        <source>Without {name}, {name_2}</source>
        <translation>Ohne {name}, {name_2}</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>Working out what standby and prints cost…</source>
        <translation>Die Kosten von Bereitschaft und Drucken werden berechnet…</translation>
    </message>
    <message>
        <source>Write a copy and go on here; edits are saved by themselves</source>
        <translation>Eine Kopie schreiben und hier weiterarbeiten; Änderungen werden von selbst gespeichert</translation>
    </message>
    <message>
        <source>Write down the display just before the run is started and again {end}, every digit of it, with the time and the room&apos;s temperature.</source>
        <translation>Die Anzeige unmittelbar vor dem Start des Laufs aufschreiben und noch einmal, {end}, mit allen Stellen, dazu Uhrzeit und Raumtemperatur.</translation>
    </message>
    <message>
        <source>Write how many minutes the energies took: meters are also off by tenths of a watt.</source>
        <translation>Eintragen, über wie viele Minuten die Energien liefen: Messgeräte weichen auch um Zehntelwatt ab.</translation>
    </message>
    <message>
        <source>Write into the table below what you know of the machines: in a cell, or paste cells copied from a spreadsheet. Columns of your own can be added: age, enclosure, motion system, noise.</source>
        <translation>In die Tabelle unten schreiben, was über die Maschinen bekannt ist: in eine Zelle, oder aus einer Tabellenkalkulation kopierte Zellen einfügen. Eigene Spalten lassen sich hinzufügen: Alter, Gehäuse, Bewegungssystem, Geräusch.</translation>
    </message>
    <message>
        <source>Write what each meter showed, more than 0, such as 412.3.</source>
        <translation>Eintragen, was jedes Messgerät anzeigte, mehr als 0, etwa 412,3.</translation>
    </message>
    <message>
        <source>Year of prints</source>
        <translation>Ein Jahr Drucken</translation>
    </message>
    <message>
        <source>Year of prints [kWh]</source>
        <translation>Ein Jahr Drucken [kWh]</translation>
    </message>
    <message>
        <source>Yes or no</source>
        <translation>Ja oder nein</translation>
    </message>
    <message>
        <source>You said that it runs on while the machine is idle: {energy} kWh a year.</source>
        <translation>Nach eigener Angabe läuft der Verbraucher im Leerlauf weiter: {energy} kWh im Jahr.</translation>
    </message>
    <message>
        <source>You set its edges.</source>
        <translation>Die Ränder sind von Hand gesetzt.</translation>
    </message>
    <message>
        <source>Your choice changed {figures}. {keys} takes it back.</source>
        <translation>Diese Wahl änderte {figures}. {keys} nimmt sie zurück.</translation>
    </message>
    <message>
        <source>] not told apart</source>
        <translation>] nicht unterschieden</translation>
    </message>
    <message>
        <source>a 7z archive</source>
        <translation>ein 7z-Archiv</translation>
    </message>
    <message>
        <source>a PDF document</source>
        <translation>ein PDF-Dokument</translation>
    </message>
    <message>
        <source>a bound: all energy that is not the bed&apos;s, over the nozzle&apos;s distance from the room</source>
        <translation>eine Schranke: alle Energie, die nicht ins Heizbett geht, über den Abstand der Düse von der Raumtemperatur</translation>
    </message>
    <message>
        <source>a bound: all energy that is not the bed&apos;s, over the nozzle&apos;s distance from the room, for no longer than the first ten minutes</source>
        <translation>eine Schranke: alle Energie, die nicht ins Heizbett geht, über den Abstand der Düse von der Raumtemperatur, höchstens für die ersten zehn Minuten</translation>
    </message>
    <message>
        <source>a bound: half a step of the display throughout the run</source>
        <translation>eine Schranke: eine halbe Stufe der Anzeige über den ganzen Lauf</translation>
    </message>
    <message>
        <source>a bound: one step of the display, in the intervals already</source>
        <translation>eine Schranke: eine Stufe der Anzeige, schon in den Intervallen enthalten</translation>
    </message>
    <message>
        <source>a bound: the heat a bed keeps over the rest, if it cools to a third in twenty minutes</source>
        <translation>eine Schranke: die Wärme, die ein Heizbett über die Pause behält, wenn es in zwanzig Minuten auf ein Drittel abkühlt</translation>
    </message>
    <message>
        <source>a bound: the meters&apos; stated accuracy, in the intervals already</source>
        <translation>eine Schranke: die angegebene Genauigkeit der Messgeräte, schon in den Intervallen enthalten</translation>
    </message>
    <message>
        <source>a bzip2 archive</source>
        <translation>ein bzip2-Archiv</translation>
    </message>
    <message>
        <source>a cell without a place</source>
        <translation>eine Zelle ohne Platz</translation>
    </message>
    <message>
        <source>a cold machine</source>
        <translation>kalter Maschine</translation>
    </message>
    <message>
        <source>a display with finer steps, a log, or several parts made between two readings</source>
        <translation>eine Anzeige mit feineren Stufen, ein Log oder mehrere Teile zwischen zwei Ablesungen</translation>
    </message>
    <message>
        <source>a drift from run to run</source>
        <translation>eine Drift von Lauf zu Lauf</translation>
    </message>
    <message>
        <source>a drift of all machines</source>
        <translation>eine Drift aller Maschinen</translation>
    </message>
    <message>
        <source>a heater may switch in step with the readings, so that all miss it or all meet it</source>
        <translation>eine Heizung kann im Takt der Werte schalten, sodass alle sie verfehlen oder alle sie treffen</translation>
    </message>
    <message>
        <source>a hold test: the bed was kept warm with no part made</source>
        <translation>ein Halteversuch: das Heizbett wurde warm gehalten, ohne ein Teil zu fertigen</translation>
    </message>
    <message>
        <source>a line through the runs in their order: half its rise</source>
        <translation>eine Gerade durch die Läufe in ihrer Reihenfolge: die Hälfte ihres Anstiegs</translation>
    </message>
    <message>
        <source>a list by date</source>
        <translation>eine Liste nach Datum</translation>
    </message>
    <message>
        <source>a log kept in this study is damaged ({digest}); import the log again</source>
        <translation>Ein in dieser Studie aufbewahrtes Log ist beschädigt ({digest}); das Log noch einmal einlesen</translation>
    </message>
    <message>
        <source>a log of this study is not in the file ({digest}); import the log again</source>
        <translation>Ein Log dieser Studie ist nicht in der Datei ({digest}); das Log noch einmal einlesen</translation>
    </message>
    <message>
        <source>a log with another interval, of averages, or with an energy counter</source>
        <translation>ein Log mit anderem Intervall, mit Mittelwerten oder mit einem Energiezähler</translation>
    </message>
    <message>
        <source>a log with shorter intervals, of averages, or with an energy counter</source>
        <translation>ein Log mit kürzeren Intervallen, mit Mittelwerten oder mit einem Energiezähler</translation>
    </message>
    <message>
        <source>a log with shorter intervals, so that the run&apos;s edges are seen</source>
        <translation>ein Log mit kürzeren Intervallen, damit die Ränder des Laufs zu sehen sind</translation>
    </message>
    <message>
        <source>a log without gaps, or a meter with an energy counter to bridge them</source>
        <translation>ein Log ohne Lücken oder ein Messgerät mit Energiezähler, der sie überbrückt</translation>
    </message>
    <message>
        <source>a log&apos;s machine is missing ({name})</source>
        <translation>die Maschine eines Logs fehlt ({name})</translation>
    </message>
    <message>
        <source>a log&apos;s meter is missing ({name})</source>
        <translation>das Messgerät eines Logs fehlt ({name})</translation>
    </message>
    <message>
        <source>a longer run</source>
        <translation>ein längerer Lauf</translation>
    </message>
    <message>
        <source>a meter beyond its accuracy</source>
        <translation>ein Messgerät außerhalb seiner Genauigkeit</translation>
    </message>
    <message>
        <source>a meter of better stated accuracy at small loads</source>
        <translation>ein Messgerät mit besser angegebener Genauigkeit bei kleinen Lasten</translation>
    </message>
    <message>
        <source>a meter of better stated accuracy; between machines, one meter for all: then it cancels</source>
        <translation>ein Messgerät mit besser angegebener Genauigkeit; zwischen Maschinen ein Messgerät für alle: Dann hebt es sich auf</translation>
    </message>
    <message>
        <source>a meter that shows finer steps of power</source>
        <translation>ein Messgerät, das die Leistung in feineren Stufen zeigt</translation>
    </message>
    <message>
        <source>a meter whose energy counter has finer steps</source>
        <translation>ein Messgerät, dessen Energiezähler feinere Stufen hat</translation>
    </message>
    <message>
        <source>a photograph</source>
        <translation>ein Foto</translation>
    </message>
    <message>
        <source>a picture</source>
        <translation>ein Bild</translation>
    </message>
    <message>
        <source>a program</source>
        <translation>ein Programm</translation>
    </message>
    <message>
        <source>a rar archive</source>
        <translation>ein rar-Archiv</translation>
    </message>
    <message>
        <source>a reading&apos;s machine is missing ({name})</source>
        <translation>die Maschine einer Ablesung fehlt ({name})</translation>
    </message>
    <message>
        <source>a reading&apos;s meter is missing ({name})</source>
        <translation>das Messgerät einer Ablesung fehlt ({name})</translation>
    </message>
    <message>
        <source>a run at another temperature</source>
        <translation>ein Lauf bei anderer Temperatur</translation>
    </message>
    <message>
        <source>a run with the bed off does not wait for the bed, so its length is made alike</source>
        <translation>ein Lauf ohne Heizbett wartet nicht auf das Heizbett, daher wird seine Länge angeglichen</translation>
    </message>
    <message>
        <source>a run&apos;s log is missing ({name})</source>
        <translation>das Log eines Laufs fehlt ({name})</translation>
    </message>
    <message>
        <source>a sheet of the workbook is missing</source>
        <translation>ein Blatt der Arbeitsmappe fehlt</translation>
    </message>
    <message>
        <source>a shorter run</source>
        <translation>ein kürzerer Lauf</translation>
    </message>
    <message>
        <source>a soak of the bed</source>
        <translation>ein Durchwärmen des Heizbetts</translation>
    </message>
    <message>
        <source>a sound or video file</source>
        <translation>eine Ton- oder Videodatei</translation>
    </message>
    <message>
        <source>a study cannot be copied onto itself; choose another name</source>
        <translation>Eine Studie kann nicht auf sich selbst kopiert werden; einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>a switch-on test: loads were turned on one after another</source>
        <translation>ein Einschaltversuch: Verbraucher wurden nacheinander eingeschaltet</translation>
    </message>
    <message>
        <source>a table in a frame, as programs print it</source>
        <translation>eine Tabelle im Rahmen, wie Programme sie ausgeben</translation>
    </message>
    <message>
        <source>a temperature not noted</source>
        <translation>eine nicht notierte Temperatur</translation>
    </message>
    <message>
        <source>a value each {seconds} s: taken as of the instant, which at this pace is the same</source>
        <translation>ein Wert alle {seconds} s: als Augenblickswert genommen, was bei diesem Takt dasselbe ist</translation>
    </message>
    <message>
        <source>a video file</source>
        <translation>eine Videodatei</translation>
    </message>
    <message>
        <source>a warm machine</source>
        <translation>warmer Maschine</translation>
    </message>
    <message>
        <source>a warm start</source>
        <translation>ein Warmstart</translation>
    </message>
    <message>
        <source>a warmer or cooler bed at the start</source>
        <translation>ein wärmeres oder kühleres Heizbett am Anfang</translation>
    </message>
    <message>
        <source>a web page</source>
        <translation>eine Webseite</translation>
    </message>
    <message>
        <source>accuracy not stated</source>
        <translation>Genauigkeit nicht angegeben</translation>
    </message>
    <message>
        <source>across a room</source>
        <translation>quer durch den Raum</translation>
    </message>
    <message>
        <source>after the blocks</source>
        <translation>nach den Blöcken</translation>
    </message>
    <message>
        <source>all its accented characters are valid UTF-8</source>
        <translation>alle Zeichen mit Akzent sind gültiges UTF-8</translation>
    </message>
    <message>
        <source>all machines</source>
        <translation>alle Maschinen</translation>
    </message>
    <message>
        <source>all runs of this machine</source>
        <translation>alle Läufe dieser Maschine</translation>
    </message>
    <message>
        <source>all signs turned round</source>
        <translation>alle Vorzeichen umgekehrt</translation>
    </message>
    <message>
        <source>all that is its own of it</source>
        <translation>alles, was ihr davon eigen ist</translation>
    </message>
    <message>
        <source>all that was on, together?</source>
        <translation>alles, was an war, zusammen?</translation>
    </message>
    <message>
        <source>all the rest</source>
        <translation>der ganze Rest</translation>
    </message>
    <message>
        <source>all year</source>
        <translation>ganzjährig</translation>
    </message>
    <message>
        <source>also by {method}: {share}</source>
        <translation>auch durch {method}: {share}</translation>
    </message>
    <message>
        <source>among {count} machines</source>
        <translation>unter {count} Maschinen</translation>
    </message>
    <message>
        <source>among {count} machines: {share} is shown</source>
        <translation>unter {count} Maschinen: {share} wird nachgewiesen</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>an SVG names the font of its text and does not hold it, a PDF holds it</source>
        <translation>ein SVG nennt die Schrift seines Textes und enthält sie nicht, ein PDF enthält sie</translation>
    </message>
    <message>
        <source>an arrow stands between the time and the values</source>
        <translation>ein Pfeil steht zwischen der Zeit und den Werten</translation>
    </message>
    <message>
        <source>an outlier</source>
        <translation>ein Ausreißer</translation>
    </message>
    <message>
        <source>an unusual bed share</source>
        <translation>ein ungewöhnlicher Heizbettanteil</translation>
    </message>
    <message>
        <source>an xz archive</source>
        <translation>ein xz-Archiv</translation>
    </message>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>and {count:more row|more rows}</source>
        <translation>und {count:weitere Zeile|weitere Zeilen}</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <source>and {count} more: the table “runs” in the files holds all.</source>
        <translation>und {count} weitere: Die Tabelle „runs“ in den Dateien enthält alle.</translation>
    </message>
    <message>
        <source>another bed at the first layer</source>
        <translation>ein anders warmes Heizbett bei der ersten Schicht</translation>
    </message>
    <message>
        <source>another bed temperature</source>
        <translation>eine andere Heizbetttemperatur</translation>
    </message>
    <message>
        <source>another machine</source>
        <translation>weitere Maschine</translation>
    </message>
    <message>
        <source>another meter</source>
        <translation>weiteres Messgerät</translation>
    </message>
    <message>
        <source>another nozzle at the first layer</source>
        <translation>eine anders warme Düse bei der ersten Schicht</translation>
    </message>
    <message>
        <source>another nozzle temperature</source>
        <translation>eine andere Düsentemperatur</translation>
    </message>
    <message>
        <source>another part</source>
        <translation>anderes Teil</translation>
    </message>
    <message>
        <source>another part: its duration and energy do not agree with the runs of the compared part</source>
        <translation>anderes Teil: Dauer und Energie passen nicht zu den Läufen des verglichenen Teils</translation>
    </message>
    <message>
        <source>another part: its duration or energy differs from the runs of the part</source>
        <translation>anderes Teil: Dauer oder Energie unterscheidet sich von den Läufen des Teils</translation>
    </message>
    <message>
        <source>another program is using this file; wait until it has finished, then try again</source>
        <translation>Ein anderes Programm benutzt diese Datei; warten, bis es fertig ist, dann noch einmal versuchen</translation>
    </message>
    <message>
        <source>another room temperature</source>
        <translation>eine andere Raumtemperatur</translation>
    </message>
    <message>
        <source>another starting state</source>
        <translation>ein anderer Anfangszustand</translation>
    </message>
    <message>
        <source>another temperature of the bed</source>
        <translation>eine andere Temperatur des Heizbetts</translation>
    </message>
    <message>
        <source>another temperature of the room</source>
        <translation>eine andere Temperatur des Raums</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>apparent power</source>
        <translation>Scheinleistung</translation>
    </message>
    <message>
        <source>area?</source>
        <translation>Fläche?</translation>
    </message>
    <message>
        <source>arrow keys move its end</source>
        <translation>Pfeiltasten verschieben das Ende</translation>
    </message>
    <message>
        <source>arrow keys move its start</source>
        <translation>Pfeiltasten verschieben den Beginn</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>wie zuvor</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie gefunden</translation>
    </message>
    <message>
        <source>as many as there are</source>
        <translation>so viele, wie es gibt</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>as soon as the part is finished</source>
        <translation>sobald das Teil fertig ist</translation>
    </message>
    <message>
        <source>as soon as the part is finished (the first reading is at the end of warm-up)</source>
        <translation>sobald das Teil fertig ist (die erste Ablesung ist am Ende des Aufheizens)</translation>
    </message>
    <message>
        <source>as the program finds it</source>
        <translation>wie das Programm es findet</translation>
    </message>
    <message>
        <source>as the rest</source>
        <translation>wie der Rest</translation>
    </message>
    <message>
        <source>as written: nothing tells what the {energy} Wh below zero are</source>
        <translation>wie geschrieben: Nichts verrät, was die {energy} Wh unter null sind</translation>
    </message>
    <message>
        <source>as written: the counter counts only the {energy} Wh above zero</source>
        <translation>wie geschrieben: Der Zähler zählt nur die {energy} Wh über null</translation>
    </message>
    <message>
        <source>as written: {count} rows are at most {watts} W below zero, which is noise</source>
        <translation>wie geschrieben: {count} Zeilen liegen höchstens {watts} W unter null, das ist Rauschen</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>at a desk</source>
        <translation>am Schreibtisch</translation>
    </message>
    <message>
        <source>at least {percents}</source>
        <translation>mindestens {percents}</translation>
    </message>
    <message>
        <source>at least {percent} %</source>
        <translation>mindestens {percent} %</translation>
    </message>
    <message>
        <source>at least {value} {unit}</source>
        <translation>mindestens {value} {unit}</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>at most {percent} %</source>
        <translation>höchstens {percent} %</translation>
    </message>
    <message>
        <source>at most: all energy, because its share is not known</source>
        <translation>höchstens: alle Energie, weil sein Anteil nicht bekannt ist</translation>
    </message>
    <message>
        <source>at the end</source>
        <translation>am Ende</translation>
    </message>
    <message>
        <source>at the end of warm-up</source>
        <translation>am Ende des Aufheizens</translation>
    </message>
    <message>
        <source>at the start</source>
        <translation>zu Beginn</translation>
    </message>
    <message>
        <source>at {bed} °C in a room of {usual} instead of {own} °C: {ratio} times that</source>
        <translation>bei {bed} °C in einem Raum von {usual} statt {own} °C: das {ratio}-Fache davon</translation>
    </message>
    <message>
        <source>at {bed} °C in {room} °C, d = {kelvin} K: {watts} W</source>
        <translation>bei {bed} °C in {room} °C, d = {kelvin} K: {watts} W</translation>
    </message>
    <message>
        <source>at {celsius} °C: {all} W − {beside} W beside the bed = {bed} W</source>
        <translation>bei {celsius} °C: {all} W − {beside} W neben dem Heizbett = {bed} W</translation>
    </message>
    <message>
        <source>at {place} {unit}</source>
        <translation>bei {place} {unit}</translation>
    </message>
    <message>
        <source>at {place} {unit}: not running</source>
        <translation>bei {place} {unit}: läuft nicht</translation>
    </message>
    <message>
        <source>at {seconds} s</source>
        <translation>bei {seconds} s</translation>
    </message>
    <message>
        <source>at {usual} instead of {own} °C in a room of {room} °C: {ratio} times that</source>
        <translation>bei {usual} statt {own} °C in einem Raum von {room} °C: das {ratio}-Fache davon</translation>
    </message>
    <message>
        <source>averaged every {seconds} s</source>
        <translation>gemittelt alle {seconds} s</translation>
    </message>
    <message>
        <source>averaged, by little to tell: {why}</source>
        <translation>gemittelt, aber es gibt wenig, woran es zu erkennen ist: {why}</translation>
    </message>
    <message>
        <source>averaged: only a counter is logged, so each power is the mean of the interval before it</source>
        <translation>gemittelt: Nur ein Zähler ist aufgezeichnet, also ist jede Leistung das Mittel des Abstands davor</translation>
    </message>
    <message>
        <source>averaged: the values add up to the energy in {count} stretches between ticks of the counter</source>
        <translation>gemittelt: Die Werte ergeben die Energie in {count} Abschnitten zwischen den Schritten des Zählers</translation>
    </message>
    <message>
        <source>averaged: {mixed} of {count} times that the machine began to heat after a rest, or ended, show a value in between</source>
        <translation>gemittelt: {mixed} von {count} Malen, die die Maschine nach einer Ruhe zu heizen begann oder aufhörte, zeigen einen Wert dazwischen</translation>
    </message>
    <message>
        <source>averaged: {unmatched} of {count} values that differ from both neighbours are met nowhere near; of instants nearly all would be</source>
        <translation>gemittelt: {unmatched} von {count} Werten, die anders sind als beide Nachbarn, kommen in der Nähe nicht noch einmal vor; Augenblickswerte kämen fast alle wieder vor</translation>
    </message>
    <message>
        <source>averaged: {why}</source>
        <translation>gemittelt: {why}</translation>
    </message>
    <message>
        <source>averaged: {why}, and the pulses&apos; energies differ by only {percent} %</source>
        <translation>gemittelt: {why}, und die Energien der Pulse unterscheiden sich nur um {percent} %</translation>
    </message>
    <message>
        <source>band: 95 % interval of the scatter</source>
        <translation>Band: 95-%-Intervall der Streuung</translation>
    </message>
    <message>
        <source>band: 95 % of the line</source>
        <translation>Band: 95 % der Geraden</translation>
    </message>
    <message>
        <source>band: 95 % of the line of {name}</source>
        <translation>Band: 95 % der Geraden von {name}</translation>
    </message>
    <message>
        <source>band: spread of the repeats</source>
        <translation>Band: Streuung der Wiederholungen</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Strich</translation>
    </message>
    <message>
        <source>bars: 95 %</source>
        <translation>Balken: 95 %</translation>
    </message>
    <message>
        <source>baseline of the hold</source>
        <translation>Grundleistung des Halteversuchs</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>Heizbett</translation>
    </message>
    <message>
        <source>bed = {held_w} W held × {hours} h of processing + {warm_up_wh} Wh of warm-up = {energy_wh} Wh</source>
        <translation>Heizbett = {held_w} W gehalten × {hours} h Fertigung + {warm_up_wh} Wh Aufheizen = {energy_wh} Wh</translation>
    </message>
    <message>
        <source>bed = {used_wh} Wh − {rest_wh} Wh of all else = {energy_wh} Wh</source>
        <translation>Heizbett = {used_wh} Wh − {rest_wh} Wh für alles andere = {energy_wh} Wh</translation>
    </message>
    <message>
        <source>bed = {used} − {rest} with the bed off, brought to the length of this run = {bed_wh}</source>
        <translation>Heizbett = {used} − {rest} ohne Heizbett, auf die Länge dieses Laufs gebracht = {bed_wh}</translation>
    </message>
    <message>
        <source>bed and room are known to half a kelvin</source>
        <translation>Heizbett und Raum sind auf ein halbes Kelvin bekannt</translation>
    </message>
    <message>
        <source>bed at {celsius} °C</source>
        <translation>Heizbett bei {celsius} °C</translation>
    </message>
    <message>
        <source>bed filled</source>
        <translation>Heizbett gefüllt</translation>
    </message>
    <message>
        <source>bed heating</source>
        <translation>Heizbett beim Aufheizen</translation>
    </message>
    <message>
        <source>bed held</source>
        <translation>gehaltenes Heizbett</translation>
    </message>
    <message>
        <source>bed holding</source>
        <translation>Heizbett beim Halten</translation>
    </message>
    <message>
        <source>bed {bed} °C, room {room} °C, begun with the bed at {start_c} °C</source>
        <translation>Heizbett {bed} °C, Raum {room} °C, begonnen mit dem Heizbett bei {start_c} °C</translation>
    </message>
    <message>
        <source>bed {degrees}</source>
        <translation>Heizbett {degrees}</translation>
    </message>
    <message>
        <source>bed: {watts}</source>
        <translation>Heizbett: {watts}</translation>
    </message>
    <message>
        <source>below {value}</source>
        <translation>unter {value}</translation>
    </message>
    <message>
        <source>between</source>
        <translation>zwischen</translation>
    </message>
    <message>
        <source>between the heater&apos;s pulses: {off_w} W, in {off_share} of the rows of processing</source>
        <translation>zwischen den Pulsen der Heizung: {off_w} W, in {off_share} der Zeilen der Fertigung</translation>
    </message>
    <message>
        <source>between the pulses</source>
        <translation>zwischen den Heizpulsen</translation>
    </message>
    <message>
        <source>between two readings nobody looked: a heater may have been on for longer or shorter</source>
        <translation>zwischen zwei Werten sah niemand hin: Eine Heizung kann länger oder kürzer an gewesen sein</translation>
    </message>
    <message>
        <source>binary data</source>
        <translation>Binärdaten</translation>
    </message>
    <message>
        <source>both machines, through {meter}</source>
        <translation>beide Maschinen, durch {meter}</translation>
    </message>
    <message>
        <source>boundary</source>
        <translation>Laufgrenzen</translation>
    </message>
    <message>
        <source>bracket: no difference shown</source>
        <translation>Klammer: kein Unterschied nachgewiesen</translation>
    </message>
    <message>
        <source>broken off</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>broken off, or another part: shorter than the run under way as the log ends</source>
        <translation>abgebrochen oder anderes Teil: kürzer als der Lauf, der am Ende des Logs noch läuft</translation>
    </message>
    <message>
        <source>broken off, or another part: shorter than the runs of the part</source>
        <translation>abgebrochen oder anderes Teil: kürzer als die Läufe des Teils</translation>
    </message>
    <message>
        <source>broken off: it ends early, with less energy than a whole part takes</source>
        <translation>abgebrochen: endet früh, mit weniger Energie, als ein ganzes Teil braucht</translation>
    </message>
    <message>
        <source>brought up to date from format {version}; the study as it was is kept: {backup}</source>
        <translation>Von Format {version} aktualisiert; die bisherige Studie bleibt erhalten: {backup}</translation>
    </message>
    <message>
        <source>by its edges known to about ± {normal_95} s</source>
        <translation>durch die Ränder auf etwa ± {normal_95} s bekannt</translation>
    </message>
    <message>
        <source>by its share</source>
        <translation>nach seinem Anteil</translation>
    </message>
    <message>
        <source>by share of duration</source>
        <translation>nach Anteil der Dauer</translation>
    </message>
    <message>
        <source>by step {number}</source>
        <translation>aus Stufe {number}</translation>
    </message>
    <message>
        <source>by steps {numbers}</source>
        <translation>aus den Stufen {numbers}</translation>
    </message>
    <message>
        <source>by the interval of the scatter: {low} to {high}</source>
        <translation>nach dem Intervall der Streuung: {low} bis {high}</translation>
    </message>
    <message>
        <source>by the level before the first step</source>
        <translation>aus der Leistung vor der ersten Stufe</translation>
    </message>
    <message>
        <source>by time of day</source>
        <translation>nach Tageszeit</translation>
    </message>
    <message>
        <source>by your decision</source>
        <translation>nach eigener Entscheidung</translation>
    </message>
    <message>
        <source>camera</source>
        <translation>Kamera</translation>
    </message>
    <message>
        <source>cannot be seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>cannot be seen here</source>
        <translation>hier nicht zu sehen</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>cells are written as formulas, =&quot;…&quot;</source>
        <translation>die Zellen sind als Formeln geschrieben, =&quot;…&quot;</translation>
    </message>
    <message>
        <source>changes between the two levels</source>
        <translation>Wechsel zwischen beiden Stufen</translation>
    </message>
    <message>
        <source>changes only</source>
        <translation>nur Wechsel</translation>
    </message>
    <message>
        <source>channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>check after</source>
        <translation>Prüfung nachher</translation>
    </message>
    <message>
        <source>check before</source>
        <translation>Prüfung vorher</translation>
    </message>
    <message>
        <source>chosen by hand</source>
        <translation>von Hand gewählt</translation>
    </message>
    <message>
        <source>circle</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>clock of the logs</source>
        <translation>Uhr der Logs</translation>
    </message>
    <message>
        <source>clock time</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>coarse steps of power</source>
        <translation>grobe Stufen der Leistung</translation>
    </message>
    <message>
        <source>colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>column {position}</source>
        <translation>Spalte {position}</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>comma, as in 12,5</source>
        <translation>Komma, wie in 12,5</translation>
    </message>
    <message>
        <source>comma, between the cells too: every second number has as many digits in all rows, as fractions do</source>
        <translation>Komma, auch zwischen den Zellen: Jede zweite Zahl hat in allen Zeilen gleich viele Ziffern, wie es Nachkommastellen haben</translation>
    </message>
    <message>
        <source>comma, between the cells too: {headings} headings over {width} cells, so {columns} were cut in two</source>
        <translation>Komma, auch zwischen den Zellen: {headings} Überschriften über {width} Zellen, also wurden {columns} zerteilt</translation>
    </message>
    <message>
        <source>compared at {bed} °C in a room of {room} °C</source>
        <translation>verglichen bei {bed} °C in einem Raum von {room} °C</translation>
    </message>
    <message>
        <source>cooling</source>
        <translation>Abkühlen</translation>
    </message>
    <message>
        <source>copying the study</source>
        <translation>die Studie wird kopiert</translation>
    </message>
    <message>
        <source>corrected by the same-load check of {whose}: × {energy_wh} = {energy_wh_2} Wh</source>
        <translation>berichtigt nach der Prüfung an gleicher Last ({whose}): × {energy_wh} = {energy_wh_2} Wh</translation>
    </message>
    <message>
        <source>correlation of the ranks = {rho}</source>
        <translation>Korrelation der Ränge = {rho}</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>could matter {energy} Wh a part</source>
        <translation>könnte {energy} Wh je Teil ausmachen</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>counter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>counter from the first to the last row inside the run: rises by {rise_wh} Wh</source>
        <translation>Zähler von der ersten bis zur letzten Zeile im Lauf: steigt um {rise_wh} Wh</translation>
    </message>
    <message>
        <source>counter step</source>
        <translation>Zählerschritt</translation>
    </message>
    <message>
        <source>counter with power at the edges</source>
        <translation>Zähler, an den Rändern Leistung</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>Kreuz</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Stromstärke</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>abgeschnitten</translation>
    </message>
    <message>
        <source>cut by the log&apos;s end</source>
        <translation>vom Ende des Logs abgeschnitten</translation>
    </message>
    <message>
        <source>dashed: equal mean power</source>
        <translation>gestrichelt: gleiche mittlere Leistung</translation>
    </message>
    <message>
        <source>dashed: floor</source>
        <translation>gestrichelt: Untergrenze</translation>
    </message>
    <message>
        <source>dashed: levels</source>
        <translation>gestrichelt: Leistungsstufen</translation>
    </message>
    <message>
        <source>dashed: limits</source>
        <translation>gestrichelt: Grenzwerte</translation>
    </message>
    <message>
        <source>dashed: mean</source>
        <translation>gestrichelt: Mittel</translation>
    </message>
    <message>
        <source>dashed: mean; band: its 95 %</source>
        <translation>gestrichelt: Mittel; Band: dessen 95 %</translation>
    </message>
    <message>
        <source>dashed: published limits</source>
        <translation>gestrichelt: veröffentlichte Grenzwerte</translation>
    </message>
    <message>
        <source>dashed: smallest difference</source>
        <translation>gestrichelt: kleinster Unterschied</translation>
    </message>
    <message>
        <source>dashed: the smallest difference shown between machines</source>
        <translation>gestrichelt: der kleinste nachgewiesene Unterschied zwischen Maschinen</translation>
    </message>
    <message>
        <source>dashed: what a plate must lose</source>
        <translation>gestrichelt: was eine Platte verlieren muss</translation>
    </message>
    <message>
        <source>dashed: {minutes} min</source>
        <translation>gestrichelt: {minutes} min</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>Tag zuerst</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>device name</source>
        <translation>Gerätename</translation>
    </message>
    <message>
        <source>diamond</source>
        <translation>Raute</translation>
    </message>
    <message>
        <source>difference: {energy} Wh</source>
        <translation>Unterschied: {energy} Wh</translation>
    </message>
    <message>
        <source>display step</source>
        <translation>Anzeigestufe</translation>
    </message>
    <message>
        <source>drawing pictures</source>
        <translation>Bilder werden gezeichnet</translation>
    </message>
    <message>
        <source>drawing the picture</source>
        <translation>das Bild wird gezeichnet</translation>
    </message>
    <message>
        <source>drawing {name}</source>
        <translation>{name} wird gezeichnet</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>duration not adjusted: no log shows its processing</source>
        <translation>Dauer nicht umgerechnet: kein Log zeigt die Fertigung</translation>
    </message>
    <message>
        <source>e-mail address</source>
        <translation>E-Mail-Adresse</translation>
    </message>
    <message>
        <source>each row stands in brackets, as programs print it</source>
        <translation>jede Zeile steht in Klammern, wie Programme sie ausgeben</translation>
    </message>
    <message>
        <source>each step on top of what was on before it</source>
        <translation>jede Stufe zusätzlich zu dem, was vorher an war</translation>
    </message>
    <message>
        <source>each value holds until the next: {why}</source>
        <translation>jeder Wert gilt bis zum nächsten: {why}</translation>
    </message>
    <message>
        <source>edges set by hand</source>
        <translation>von Hand gesetzte Ränder</translation>
    </message>
    <message>
        <source>eight</source>
        <translation>acht</translation>
    </message>
    <message>
        <source>elapsed</source>
        <translation>verstrichene Zeit</translation>
    </message>
    <message>
        <source>elapsed time only</source>
        <translation>nur verstrichene Zeit</translation>
    </message>
    <message>
        <source>electricity</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>electronics</source>
        <translation>Elektronik</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>end of the warm-up&apos;s first plateau: {plateau_w} W</source>
        <translation>Ende der ersten Ebene des Aufheizens: {plateau_w} W</translation>
    </message>
    <message>
        <source>end {at}</source>
        <translation>Ende {at}</translation>
    </message>
    <message>
        <source>energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>energy of the run</source>
        <translation>Energie des Laufs</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <source>every other byte is zero</source>
        <translation>jedes zweite Byte ist null</translation>
    </message>
    <message>
        <source>every run</source>
        <translation>jeder Lauf</translation>
    </message>
    <message>
        <source>every run measured with the meters that were held against each other</source>
        <translation>jeder Lauf, gemessen mit den gegeneinander geprüften Messgeräten</translation>
    </message>
    <message>
        <source>every run measured with {name}</source>
        <translation>jeder Lauf, gemessen mit {name}</translation>
    </message>
    <message>
        <source>fans that always run</source>
        <translation>ständig laufende Lüfter</translation>
    </message>
    <message>
        <source>filled and %: electricity</source>
        <translation>gefüllt und %: Strom</translation>
    </message>
    <message>
        <source>filled: the bed</source>
        <translation>gefüllt: das Heizbett</translation>
    </message>
    <message>
        <source>finding runs</source>
        <translation>Läufe werden gesucht</translation>
    </message>
    <message>
        <source>finding runs in {name}</source>
        <translation>Läufe in {name} werden gesucht</translation>
    </message>
    <message>
        <source>five</source>
        <translation>fünf</translation>
    </message>
    <message>
        <source>floor = {up} W up + {down} W down + 2 × {radiation} W radiation = {floor} W</source>
        <translation>Untergrenze = {up} W nach oben + {down} W nach unten + 2 × {radiation} W Strahlung = {floor} W</translation>
    </message>
    <message>
        <source>floor of {name}</source>
        <translation>Untergrenze von {name}</translation>
    </message>
    <message>
        <source>for at least (min):</source>
        <translation>seit mindestens (min):</translation>
    </message>
    <message>
        <source>for the heat a plate must lose; 0.9 for paint or coating, 0.1 for bare metal</source>
        <translation>für die Wärme, die eine Platte verlieren muss; 0,9 für Lack oder Beschichtung, 0,1 für blankes Metall</translation>
    </message>
    <message>
        <source>for {percents} % of the time at most</source>
        <translation>für höchstens {percents} % der Zeit</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>found by: {method}</source>
        <translation>gefunden durch: {method}</translation>
    </message>
    <message>
        <source>four</source>
        <translation>vier</translation>
    </message>
    <message>
        <source>frequency</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>from the energy counter</source>
        <translation>aus dem Energiezähler</translation>
    </message>
    <message>
        <source>from the energy counter, edges from the power</source>
        <translation>aus dem Energiezähler, Ränder aus der Leistung</translation>
    </message>
    <message>
        <source>from the power</source>
        <translation>aus der Leistung</translation>
    </message>
    <message>
        <source>from typed readings</source>
        <translation>aus eingetippten Ablesungen</translation>
    </message>
    <message>
        <source>from {low} before to {high} after the end of warm-up</source>
        <translation>von {low} vor bis {high} nach dem Ende des Aufheizens</translation>
    </message>
    <message>
        <source>from {low} before to {high} before the end of warm-up</source>
        <translation>von {low} bis {high} vor dem Ende des Aufheizens</translation>
    </message>
    <message>
        <source>from {low} to {high}</source>
        <translation>von {low} bis {high}</translation>
    </message>
    <message>
        <source>from {low} to {high} % of its duration</source>
        <translation>von {low} bis {high} % der Dauer</translation>
    </message>
    <message>
        <source>from {low} to {high} after warm-up</source>
        <translation>von {low} bis {high} nach dem Aufheizen</translation>
    </message>
    <message>
        <source>from {low} to {high} before the end</source>
        <translation>von {low} bis {high} vor dem Ende</translation>
    </message>
    <message>
        <source>from {usual} °C: {degrees} degrees at {energy} Wh each</source>
        <translation>ab {usual} °C: {degrees} Grad zu je {energy} Wh</translation>
    </message>
    <message>
        <source>gaps</source>
        <translation>Lücken</translation>
    </message>
    <message>
        <source>gaps in the log</source>
        <translation>Lücken im Log</translation>
    </message>
    <message>
        <source>gaps: {gap_share} of the time</source>
        <translation>Lücken: {gap_share} der Zeit</translation>
    </message>
    <message>
        <source>half a step: {watts} W over {hours} h</source>
        <translation>eine halbe Stufe: {watts} W über {hours} h</translation>
    </message>
    <message>
        <source>half its rise of {energy} Wh: how far the first and the last run lie from the mean</source>
        <translation>die Hälfte ihres Anstiegs von {energy} Wh: wie weit der erste und der letzte Lauf vom Mittel liegen</translation>
    </message>
    <message>
        <source>half its rise of {share}, of the largest mean of {energy} Wh</source>
        <translation>die Hälfte ihres Anstiegs von {share}, vom größten Mittel von {energy} Wh</translation>
    </message>
    <message>
        <source>half-width of what the gaps leave open in {run}: {energy} Wh</source>
        <translation>halbe Breite dessen, was die Lücken in {run} offen lassen: {energy} Wh</translation>
    </message>
    <message>
        <source>hardly any switching to tell by; values are taken as of the instant</source>
        <translation>kaum ein Schaltvorgang, der es verriete; die Werte gelten als Augenblickswerte</translation>
    </message>
    <message>
        <source>hardware address</source>
        <translation>Hardwareadresse</translation>
    </message>
    <message>
        <source>heat capacity: {capacity}</source>
        <translation>Wärmekapazität: {capacity}</translation>
    </message>
    <message>
        <source>heat of the hot end</source>
        <translation>Wärme des Hotends</translation>
    </message>
    <message>
        <source>heat that was left in the bed from the run before</source>
        <translation>Wärme, die vom Lauf davor im Heizbett blieb</translation>
    </message>
    <message>
        <source>heater switching</source>
        <translation>Schalten der Heizung</translation>
    </message>
    <message>
        <source>heating</source>
        <translation>Heizen</translation>
    </message>
    <message>
        <source>heating only</source>
        <translation>nur Heizen</translation>
    </message>
    <message>
        <source>heating with no part made</source>
        <translation>Heizen, ohne ein Teil zu fertigen</translation>
    </message>
    <message>
        <source>heating with no part made: it draws far less than this machine does while it makes the part</source>
        <translation>Heizen, ohne dass ein Teil gefertigt wird: Die Leistung liegt weit unter der dieser Maschine bei der Fertigung des Teils</translation>
    </message>
    <message>
        <source>heating with no part made: the motors do not move</source>
        <translation>Heizen, ohne dass ein Teil gefertigt wird: Die Motoren bewegen sich nicht</translation>
    </message>
    <message>
        <source>hexagon</source>
        <translation>Sechseck</translation>
    </message>
    <message>
        <source>hidden by a meter for each: {share}</source>
        <translation>verdeckt, wenn jede ein eigenes Messgerät hat: {share}</translation>
    </message>
    <message>
        <source>hidden by one meter for both: {share}</source>
        <translation>verdeckt, wenn beide ein Messgerät teilen: {share}</translation>
    </message>
    <message>
        <source>hidden by the meters as planned: {share}</source>
        <translation>verdeckt durch die Messgeräte wie geplant: {share}</translation>
    </message>
    <message>
        <source>highest power of the warm-up</source>
        <translation>höchste Leistung beim Aufheizen</translation>
    </message>
    <message>
        <source>hold at {difference_k} K</source>
        <translation>Halten bei {difference_k} K</translation>
    </message>
    <message>
        <source>hold test</source>
        <translation>Halteversuch</translation>
    </message>
    <message>
        <source>hot end heating</source>
        <translation>Hotend beim Aufheizen</translation>
    </message>
    <message>
        <source>hot end holding</source>
        <translation>Hotend beim Halten</translation>
    </message>
    <message>
        <source>how a number of {name} was found</source>
        <translation>wie eine Zahl von {name} gefunden wurde</translation>
    </message>
    <message>
        <source>how a run with the bed off differs from the others in all else</source>
        <translation>wie sich ein Lauf ohne Heizbett in allem anderen von den übrigen unterscheidet</translation>
    </message>
    <message>
        <source>how far the loss of a real bed follows that of a plate beyond what was held</source>
        <translation>wie weit der Verlust eines wirklichen Heizbetts jenseits des Gehaltenen dem einer Platte folgt</translation>
    </message>
    <message>
        <source>how far the means of the windows scatter</source>
        <translation>wie weit die Mittel der Fenster streuen</translation>
    </message>
    <message>
        <source>how its windows scatter, and what is beside the bed</source>
        <translation>wie die Fenster streuen, und was neben dem Heizbett läuft</translation>
    </message>
    <message>
        <source>how the bed in a run differs from a bed held alone, and what its meter leaves open</source>
        <translation>wie sich das Heizbett im Lauf von einem allein gehaltenen unterscheidet, und was dessen Messgerät offen lässt</translation>
    </message>
    <message>
        <source>how the numbers of {machine} were found</source>
        <translation>wie die Zahlen von {machine} ermittelt wurden</translation>
    </message>
    <message>
        <source>how the power scatters on either side, and the display&apos;s step</source>
        <translation>wie die Leistung auf beiden Seiten streut, und die Stufe der Anzeige</translation>
    </message>
    <message>
        <source>how well the level between the heater&apos;s pulses is followed</source>
        <translation>wie gut die Leistung zwischen den Pulsen der Heizung verfolgt wird</translation>
    </message>
    <message>
        <source>in the warm-up the heater is never seen off, so what else was drawn then is made up</source>
        <translation>beim Aufheizen ist die Heizung nie ausgeschaltet zu sehen, daher ist angenommen, was sonst gezogen wurde</translation>
    </message>
    <message>
        <source>in your currency</source>
        <translation>in eigener Währung</translation>
    </message>
    <message>
        <source>in {length}</source>
        <translation>in {length}</translation>
    </message>
    <message>
        <source>instants</source>
        <translation>Augenblickswerte</translation>
    </message>
    <message>
        <source>interval of the log</source>
        <translation>Intervall des Logs</translation>
    </message>
    <message>
        <source>invented data</source>
        <translation>erfundene Daten</translation>
    </message>
    <message>
        <source>it has no version</source>
        <translation>sie hat keine Version</translation>
    </message>
    <message>
        <source>it holds {count} files</source>
        <translation>es enthält {count} Dateien</translation>
    </message>
    <message>
        <source>it is a packed file, such as a workbook</source>
        <translation>Es ist eine gepackte Datei, etwa eine Arbeitsmappe</translation>
    </message>
    <message>
        <source>it is far larger than any run sheet</source>
        <translation>Es ist viel größer als jeder Laufzettel</translation>
    </message>
    <message>
        <source>it is no file</source>
        <translation>Es ist keine Datei</translation>
    </message>
    <message>
        <source>it is without text</source>
        <translation>Es enthält keinen Text</translation>
    </message>
    <message>
        <source>it is {what}</source>
        <translation>Es ist {what}</translation>
    </message>
    <message>
        <source>it takes too long to open</source>
        <translation>das Öffnen dauert zu lange</translation>
    </message>
    <message>
        <source>its edges leave nothing of the log between them</source>
        <translation>seine Ränder lassen nichts vom Log zwischen sich</translation>
    </message>
    <message>
        <source>its log has not been read</source>
        <translation>sein Log wurde nicht gelesen</translation>
    </message>
    <message>
        <source>its manifest is none of a {kind}</source>
        <translation>sein Verzeichnis ist keines der Art „{kind}“</translation>
    </message>
    <message>
        <source>its meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>its parts do not fit together</source>
        <translation>ihre Teile passen nicht zusammen</translation>
    </message>
    <message>
        <source>its pulses: {step_w} W more; {changes} changes between the two</source>
        <translation>ihre Pulse: {step_w} W mehr; {changes} Wechsel zwischen beiden</translation>
    </message>
    <message>
        <source>its source was not named</source>
        <translation>Herkunft nicht genannt</translation>
    </message>
    <message>
        <source>its tables are not those of a study: {tables}</source>
        <translation>ihre Tabellen sind nicht die einer Studie: {tables}</translation>
    </message>
    <message>
        <source>keeping the log</source>
        <translation>das Log wird aufbewahrt</translation>
    </message>
    <message>
        <source>keeping the logs of the bundle</source>
        <translation>die Logs des Bündels werden übernommen</translation>
    </message>
    <message>
        <source>kept warm with no part made: the motors do not move</source>
        <translation>warm gehalten, ohne dass ein Teil gefertigt wird: Die Motoren bewegen sich nicht</translation>
    </message>
    <message>
        <source>lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>last digit of the display: {energy} Wh</source>
        <translation>letzte Stelle der Anzeige: {energy} Wh</translation>
    </message>
    <message>
        <source>learning levels</source>
        <translation>Leistungsstufen werden ermittelt</translation>
    </message>
    <message>
        <source>least at {time}: {cost}</source>
        <translation>am wenigsten um {time}: {cost}</translation>
    </message>
    <message>
        <source>left as written</source>
        <translation>belassen wie geschrieben</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>left out by hand</source>
        <translation>von Hand ausgelassen</translation>
    </message>
    <message>
        <source>left out by hand: {reason}</source>
        <translation>von Hand ausgelassen: {reason}</translation>
    </message>
    <message>
        <source>left out: {why}</source>
        <translation>ausgelassen: {why}</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>level before the first step = {watts} W</source>
        <translation>Leistung vor der ersten Stufe = {watts} W</translation>
    </message>
    <message>
        <source>level by two ways</source>
        <translation>Leistung auf zwei Wegen</translation>
    </message>
    <message>
        <source>level with the heater off</source>
        <translation>Leistung bei abgeschalteter Heizung</translation>
    </message>
    <message>
        <source>line through {runs:run|runs}: {energy} Wh from run to run</source>
        <translation>Gerade durch {runs:Lauf|Läufe}: {energy} Wh von Lauf zu Lauf</translation>
    </message>
    <message>
        <source>lining up runs</source>
        <translation>Läufe werden angeordnet</translation>
    </message>
    <message>
        <source>little</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>local, no zone stated</source>
        <translation>örtlich, keine Zone angegeben</translation>
    </message>
    <message>
        <source>log {log} has no file</source>
        <translation>Log {log} hat keine Datei</translation>
    </message>
    <message>
        <source>looked for, {share}</source>
        <translation>gesucht, {share}</translation>
    </message>
    <message>
        <source>looking at the file</source>
        <translation>Datei wird angesehen</translation>
    </message>
    <message>
        <source>looking for logs</source>
        <translation>Logs werden gesucht</translation>
    </message>
    <message>
        <source>looking for personal data in {name}</source>
        <translation>persönliche Daten in {name} werden gesucht</translation>
    </message>
    <message>
        <source>looking for what was added</source>
        <translation>Sucht, was hinzugekommen ist</translation>
    </message>
    <message>
        <source>looking into {file}</source>
        <translation>{file} wird durchgesehen</translation>
    </message>
    <message>
        <source>looking into {name}</source>
        <translation>{name} wird durchgesehen</translation>
    </message>
    <message>
        <source>looking the chart up</source>
        <translation>das Diagramm wird gesucht</translation>
    </message>
    <message>
        <source>low voltage</source>
        <translation>Kleinspannung</translation>
    </message>
    <message>
        <source>lowest level</source>
        <translation>niedrigste Leistung</translation>
    </message>
    <message>
        <source>lowest level during processing</source>
        <translation>niedrigste Leistung während der Fertigung</translation>
    </message>
    <message>
        <source>machine that stands out</source>
        <translation>betonte Maschine</translation>
    </message>
    <message>
        <source>machines</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>made with the bed off: it tells the bed&apos;s part of the other runs</source>
        <translation>mit ausgeschaltetem Heizbett gefertigt: zeigt den Anteil des Heizbetts an den anderen Läufen</translation>
    </message>
    <message>
        <source>made with {program}</source>
        <translation>erstellt mit {program}</translation>
    </message>
    <message>
        <source>mains</source>
        <translation>Netzspannung</translation>
    </message>
    <message>
        <source>making traces</source>
        <translation>Verläufe werden gebildet</translation>
    </message>
    <message>
        <source>marks: the cheapest start</source>
        <translation>Zeichen: der günstigste Beginn</translation>
    </message>
    <message>
        <source>material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>mean duration known to {half} by {count} runs</source>
        <translation>mittlere Dauer auf {half} bekannt durch {count} Läufe</translation>
    </message>
    <message>
        <source>mean of processing: {watts} W</source>
        <translation>Mittel der Fertigung: {watts} W</translation>
    </message>
    <message>
        <source>mean of the runs whose duration is known = {term}</source>
        <translation>Mittel der Läufe mit bekannter Dauer = {term}</translation>
    </message>
    <message>
        <source>mean of {count} runs: {energy} Wh</source>
        <translation>Mittel von {count} Läufen: {energy} Wh</translation>
    </message>
    <message>
        <source>mean of {runs}</source>
        <translation>Mittel aus {runs}</translation>
    </message>
    <message>
        <source>mean power</source>
        <translation>mittlere Leistung</translation>
    </message>
    <message>
        <source>mean with them: {energy} Wh</source>
        <translation>Mittel mit ihnen: {energy} Wh</translation>
    </message>
    <message>
        <source>mean without {run}: {energy} Wh</source>
        <translation>Mittel ohne {run}: {energy} Wh</translation>
    </message>
    <message>
        <source>mean without: {energy} Wh</source>
        <translation>Mittel ohne: {energy} Wh</translation>
    </message>
    <message>
        <source>mean {value}</source>
        <translation>Mittel {value}</translation>
    </message>
    <message>
        <source>means of intervals</source>
        <translation>Mittel von Intervallen</translation>
    </message>
    <message>
        <source>measured value</source>
        <translation>gemessener Wert</translation>
    </message>
    <message>
        <source>measured: {energy}</source>
        <translation>gemessen: {energy}</translation>
    </message>
    <message>
        <source>meter gain</source>
        <translation>Verstärkung des Messgeräts</translation>
    </message>
    <message>
        <source>meter offset</source>
        <translation>Nullpunkt des Messgeräts</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>Monat zuerst</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>motors holding</source>
        <translation>Motoren im Stillstand</translation>
    </message>
    <message>
        <source>motors moving</source>
        <translation>Motoren in Bewegung</translation>
    </message>
    <message>
        <source>moved edges: {energy} Wh in the sum of {runs:run|runs}</source>
        <translation>verschobene Ränder: {energy} Wh in der Summe von {runs:Lauf|Läufen}</translation>
    </message>
    <message>
        <source>moving mean over {width}, energy kept</source>
        <translation>gleitendes Mittel über {width}, Energie bleibt erhalten</translation>
    </message>
    <message>
        <source>much</source>
        <translation>viel</translation>
    </message>
    <message>
        <source>named by you</source>
        <translation>selbst benannt</translation>
    </message>
    <message>
        <source>natural convection after McAdams and radiation, both faces, still air</source>
        <translation>freie Konvektion nach McAdams und Strahlung, beide Seiten, ruhende Luft</translation>
    </message>
    <message>
        <source>network address</source>
        <translation>Netzwerkadresse</translation>
    </message>
    <message>
        <source>network name</source>
        <translation>Netzwerkname</translation>
    </message>
    <message>
        <source>networked standby</source>
        <translation>vernetzte Bereitschaft</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>nine</source>
        <translation>neun</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no JSON: {error}</source>
        <translation>kein JSON: {error}</translation>
    </message>
    <message>
        <source>no cell has a fraction; a point is assumed</source>
        <translation>keine Zelle hat Nachkommastellen; ein Punkt wird angenommen</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>keine Änderung</translation>
    </message>
    <message>
        <source>no energy: the two readings of the display are the same</source>
        <translation>keine Energie: die zwei Ablesungen der Anzeige sind gleich</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>no findings.</source>
        <translation>keine Befunde.</translation>
    </message>
    <message>
        <source>no hold test</source>
        <translation>kein Halteversuch</translation>
    </message>
    <message>
        <source>no hold test: {machines}</source>
        <translation>kein Halteversuch: {machines}</translation>
    </message>
    <message>
        <source>no long rest</source>
        <translation>keine lange Pause</translation>
    </message>
    <message>
        <source>no machines</source>
        <translation>keine Maschinen</translation>
    </message>
    <message>
        <source>no number of runs would show {percents} %, the meters allow no more</source>
        <translation>keine Zahl von Läufen würde {percents} % nachweisen, mehr geben die Messgeräte nicht her</translation>
    </message>
    <message>
        <source>no open points of fairness</source>
        <translation>keine offenen Punkte der Fairness</translation>
    </message>
    <message>
        <source>no points of fairness</source>
        <translation>keine Fairness-Punkte</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>kein Preis</translation>
    </message>
    <message>
        <source>no rest in the logs lasts {length}, so switching off cannot be judged</source>
        <translation>keine Pause in den Logs dauert {length}, daher lässt sich das Ausschalten nicht beurteilen</translation>
    </message>
    <message>
        <source>no room for {names:name|names}</source>
        <translation>kein Platz für {names:Namen|Namen}</translation>
    </message>
    <message>
        <source>no room for {rows:more row|more rows}</source>
        <translation>kein Platz für {rows:weitere Zeile|weitere Zeilen}</translation>
    </message>
    <message>
        <source>no room here for: {names}</source>
        <translation>kein Platz für: {names}</translation>
    </message>
    <message>
        <source>no run</source>
        <translation>kein Lauf</translation>
    </message>
    <message>
        <source>no run counts</source>
        <translation>kein Lauf zählt</translation>
    </message>
    <message>
        <source>no run to compare</source>
        <translation>kein Lauf zum Vergleichen</translation>
    </message>
    <message>
        <source>no runs</source>
        <translation>keine Läufe</translation>
    </message>
    <message>
        <source>no runs count</source>
        <translation>kein Lauf zählt</translation>
    </message>
    <message>
        <source>no samples</source>
        <translation>keine Messwerte</translation>
    </message>
    <message>
        <source>no share by the heater&apos;s switching is known better than this</source>
        <translation>kein Anteil aus dem Schalten der Heizung ist besser bekannt als so</translation>
    </message>
    <message>
        <source>no step is the present one</source>
        <translation>kein Schritt ist der gegenwärtige</translation>
    </message>
    <message>
        <source>no steps up found on {machine}: say below which load was turned on at each.</source>
        <translation>keine Stufen aufwärts an {machine} gefunden: unten angeben, welcher Verbraucher jeweils eingeschaltet wurde.</translation>
    </message>
    <message>
        <source>no test</source>
        <translation>kein Versuch</translation>
    </message>
    <message>
        <source>no test: {machines}</source>
        <translation>kein Versuch: {machines}</translation>
    </message>
    <message>
        <source>no tests</source>
        <translation>kein Versuch</translation>
    </message>
    <message>
        <source>no value of {measure}: {machines}</source>
        <translation>kein Wert für „{measure}“: {machines}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>none of these</source>
        <translation>nichts davon</translation>
    </message>
    <message>
        <source>none shown</source>
        <translation>keiner nachgewiesen</translation>
    </message>
    <message>
        <source>none shown; {count:run|runs} each would show {percents} %</source>
        <translation>keiner nachgewiesen; je {count:Lauf|Läufe} {count:~würde|würden} {percents} % nachweisen</translation>
    </message>
    <message>
        <source>not UTF-8, and its accented characters are letters of western European languages</source>
        <translation>kein UTF-8, und die Zeichen mit Akzent sind Buchstaben westeuropäischer Sprachen</translation>
    </message>
    <message>
        <source>not UTF-8, and nothing told the 8-bit encodings apart</source>
        <translation>kein UTF-8, und nichts unterschied die 8-Bit-Kodierungen</translation>
    </message>
    <message>
        <source>not UTF-8; the most likely encoding of its letters</source>
        <translation>kein UTF-8; die wahrscheinlichste Kodierung seiner Buchstaben</translation>
    </message>
    <message>
        <source>not adjusted</source>
        <translation>nicht umgerechnet</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>not counted: {why}</source>
        <translation>nicht gezählt: {why}</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not known in Wh</source>
        <translation>in Wh nicht bekannt</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>not named yet</source>
        <translation>noch nicht benannt</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gelesen</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>nicht gesetzt</translation>
    </message>
    <message>
        <source>not settled within {count} windows of {window}</source>
        <translation>nicht eingeschwungen innerhalb von {count} Fenstern zu {window}</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not steady</source>
        <translation>nicht gleichmäßig</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not tested: too few runs</source>
        <translation>nicht geprüft: zu wenige Läufe</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht da</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht verwendet</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing can be printed there</source>
        <translation>dort lässt sich nichts drucken</translation>
    </message>
    <message>
        <source>nothing can be written here ({what}); save a copy of the study elsewhere</source>
        <translation>Hier kann nichts geschrieben werden ({what}); anderswo eine Kopie der Studie speichern</translation>
    </message>
    <message>
        <source>nothing picked yet: tick what to publish</source>
        <translation>noch nichts gewählt: ankreuzen, was veröffentlicht wird</translation>
    </message>
    <message>
        <source>nozzle</source>
        <translation>Düse</translation>
    </message>
    <message>
        <source>nozzle (°C)</source>
        <translation>Düse (°C)</translation>
    </message>
    <message>
        <source>nozzle {degrees}</source>
        <translation>Düse {degrees}</translation>
    </message>
    <message>
        <source>of a bed&apos;s heat {share} are left there and {other_share} on {other}, in {part} of the runs</source>
        <translation>von der Wärme eines Heizbetts bleiben dort {share} und an {other} {other_share}, in {part} der Läufe</translation>
    </message>
    <message>
        <source>of it by the power: {parts}</source>
        <translation>davon nach der Leistung: {parts}</translation>
    </message>
    <message>
        <source>of it the bed: {part} % = {term}</source>
        <translation>davon das Heizbett: {part} % = {term}</translation>
    </message>
    <message>
        <source>of {energy} Wh in {count:rest|rests}</source>
        <translation>von {energy} Wh in {count:Pause|Pausen}</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>off after {minutes} min: {share} saved</source>
        <translation>aus nach {minutes} min: {share} gespart</translation>
    </message>
    <message>
        <source>off mode</source>
        <translation>Aus-Zustand</translation>
    </message>
    <message>
        <source>on a page</source>
        <translation>auf einer Seite</translation>
    </message>
    <message>
        <source>on a phone</source>
        <translation>am Handy</translation>
    </message>
    <message>
        <source>on change</source>
        <translation>bei Änderung</translation>
    </message>
    <message>
        <source>on change: {percent} % of intervals are far from the usual {seconds} s, and hardly any change is small, as if those were left out</source>
        <translation>bei Änderung: {percent} % der Abstände weichen stark von den üblichen {seconds} s ab, und kaum eine Änderung ist klein, als wären kleine ausgelassen</translation>
    </message>
    <message>
        <source>on change: {percent} % of intervals are far from the usual {seconds} s, and {others} % of rows that follow soon bring another value</source>
        <translation>bei Änderung: {percent} % der Abstände weichen stark von den üblichen {seconds} s ab, und {others} % der bald folgenden Zeilen bringen einen anderen Wert</translation>
    </message>
    <message>
        <source>one</source>
        <translation>eins</translation>
    </message>
    <message>
        <source>one line through the runs of all machines in their order: half its rise</source>
        <translation>eine Gerade durch die Läufe aller Maschinen in ihrer Reihenfolge: die Hälfte ihres Anstiegs</translation>
    </message>
    <message>
        <source>one line through {runs:run|runs}: {share} from run to run</source>
        <translation>eine Gerade durch {runs:Lauf|Läufe}: {share} von Lauf zu Lauf</translation>
    </message>
    <message>
        <source>one machine</source>
        <translation>eine Maschine</translation>
    </message>
    <message>
        <source>one more</source>
        <translation>ein weiterer</translation>
    </message>
    <message>
        <source>one price</source>
        <translation>ein Preis</translation>
    </message>
    <message>
        <source>one run only</source>
        <translation>nur ein Lauf</translation>
    </message>
    <message>
        <source>one steady load</source>
        <translation>eine gleichmäßige Last</translation>
    </message>
    <message>
        <source>only plain characters or valid UTF-8</source>
        <translation>nur einfache Zeichen oder gültiges UTF-8</translation>
    </message>
    <message>
        <source>only plain characters, which are the same in nearly every encoding</source>
        <translation>nur einfache Zeichen, die in fast jeder Kodierung gleich sind</translation>
    </message>
    <message>
        <source>opening {name}</source>
        <translation>{name} wird geöffnet</translation>
    </message>
    <message>
        <source>other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>other part</source>
        <translation>anderes Teil</translation>
    </message>
    <message>
        <source>other ways: {ways}</source>
        <translation>andere Wege: {ways}</translation>
    </message>
    <message>
        <source>own</source>
        <translation>eigene</translation>
    </message>
    <message>
        <source>own meter</source>
        <translation>eigenes Messgerät</translation>
    </message>
    <message>
        <source>p is the share of all orders of the machines whose ranks agree, or disagree, as much or more.</source>
        <translation>p ist der Anteil aller Reihenfolgen der Maschinen, deren Ränge ebenso sehr oder mehr übereinstimmen oder einander widersprechen.</translation>
    </message>
    <message>
        <source>p is the share of all ways to divide the machines into such groups whose means lie as far apart or farther.</source>
        <translation>p ist der Anteil aller Aufteilungen der Maschinen in solche Gruppen, deren Mittel so weit oder weiter auseinanderliegen.</translation>
    </message>
    <message>
        <source>page {number} of {pages}</source>
        <translation>Seite {number} von {pages}</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Probeteil</translation>
    </message>
    <message>
        <source>part fan</source>
        <translation>Bauteillüfter</translation>
    </message>
    <message>
        <source>parts per kWh</source>
        <translation>Teile je kWh</translation>
    </message>
    <message>
        <source>per area: {watts}</source>
        <translation>je Fläche: {watts}</translation>
    </message>
    <message>
        <source>percentage points</source>
        <translation>Prozentpunkte</translation>
    </message>
    <message>
        <source>piece {piece} is missing</source>
        <translation>Stück {piece} fehlt</translation>
    </message>
    <message>
        <source>piece {piece} is no list</source>
        <translation>Stück {piece} ist keine Liste</translation>
    </message>
    <message>
        <source>piece {piece} is no study</source>
        <translation>Stück {piece} ist keine Studie</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>senkrechter Strich</translation>
    </message>
    <message>
        <source>plate law</source>
        <translation>Plattengesetz</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>point, as in 12.5</source>
        <translation>Punkt, wie in 12.5</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>power and counter together: {energy_wh} Wh</source>
        <translation>Leistung und Zähler zusammen: {energy_wh} Wh</translation>
    </message>
    <message>
        <source>power as logged</source>
        <translation>Leistung wie im Log</translation>
    </message>
    <message>
        <source>power factor</source>
        <translation>Leistungsfaktor</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>prints that fail</source>
        <translation>Fehldrucke</translation>
    </message>
    <message>
        <source>problem</source>
        <translation>Problem</translation>
    </message>
    <message>
        <source>processing</source>
        <translation>Fertigung</translation>
    </message>
    <message>
        <source>processing as measured</source>
        <translation>Fertigung wie gemessen</translation>
    </message>
    <message>
        <source>processing only</source>
        <translation>nur Fertigung</translation>
    </message>
    <message>
        <source>pulsing hot end</source>
        <translation>pulsendes Hotend</translation>
    </message>
    <message>
        <source>purchase</source>
        <translation>Anschaffung</translation>
    </message>
    <message>
        <source>purchase spread over its life</source>
        <translation>Anschaffung, auf die Lebensdauer verteilt</translation>
    </message>
    <message>
        <source>purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>putting figures on the shelf</source>
        <translation>Diagramme werden bereitgestellt</translation>
    </message>
    <message>
        <source>putting {name} into the bundle</source>
        <translation>{name} wird ins Bündel gelegt</translation>
    </message>
    <message>
        <source>rank correlation = 1 − 6 × {squared} / {bottom} = {rho}</source>
        <translation>Rangkorrelation = 1 − 6 × {squared} / {bottom} = {rho}</translation>
    </message>
    <message>
        <source>rank correlation {rho}, {p}</source>
        <translation>Rangkorrelation {rho}, {p}</translation>
    </message>
    <message>
        <source>rank correlation {rho}, {p}, {count} machines</source>
        <translation>Rangkorrelation {rho}, {p}, {count} Maschinen</translation>
    </message>
    <message>
        <source>rank {across} across, {up} up, of {count}</source>
        <translation>Rang {across} waagerecht, {up} senkrecht, von {count}</translation>
    </message>
    <message>
        <source>reactive power</source>
        <translation>Blindleistung</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>reading a span</source>
        <translation>eine Spanne wird ausgewertet</translation>
    </message>
    <message>
        <source>reading hold tests</source>
        <translation>Halteversuche werden ausgewertet</translation>
    </message>
    <message>
        <source>reading rows</source>
        <translation>Zeilen werden gelesen</translation>
    </message>
    <message>
        <source>reading switch-on tests</source>
        <translation>Einschaltversuche werden ausgewertet</translation>
    </message>
    <message>
        <source>reading the log</source>
        <translation>das Log wird gelesen</translation>
    </message>
    <message>
        <source>reading {name}</source>
        <translation>{name} wird gelesen</translation>
    </message>
    <message>
        <source>reading {name} again</source>
        <translation>{name} wird noch einmal gelesen</translation>
    </message>
    <message>
        <source>reading {name} on</source>
        <translation>{name} wird weitergelesen</translation>
    </message>
    <message>
        <source>reading {place}</source>
        <translation>Ablesung {place}</translation>
    </message>
    <message>
        <source>readings in step</source>
        <translation>Werte im Takt</translation>
    </message>
    <message>
        <source>repeats</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>replacing personal data in {name}</source>
        <translation>persönliche Daten in {name} werden ersetzt</translation>
    </message>
    <message>
        <source>resolution</source>
        <translation>Auflösung</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>room at {celsius} °C</source>
        <translation>Raum bei {celsius} °C</translation>
    </message>
    <message>
        <source>room not noted: taken for {celsius} °C</source>
        <translation>Raum nicht notiert: mit {celsius} °C angenommen</translation>
    </message>
    <message>
        <source>room {celsius} °C</source>
        <translation>Raum {celsius} °C</translation>
    </message>
    <message>
        <source>round {round}</source>
        <translation>Runde {round}</translation>
    </message>
    <message>
        <source>row number</source>
        <translation>Zeilennummer</translation>
    </message>
    <message>
        <source>row {row}</source>
        <translation>Zeile {row}</translation>
    </message>
    <message>
        <source>row {row}: {text!r} - {why}</source>
        <translation>Zeile {row}: {text!r} - {why}</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>run of the part</source>
        <translation>Lauf des Teils</translation>
    </message>
    <message>
        <source>run with the bed off</source>
        <translation>Lauf ohne Heizbett</translation>
    </message>
    <message>
        <source>run {number}</source>
        <translation>Lauf {number}</translation>
    </message>
    <message>
        <source>run {place}</source>
        <translation>Lauf {place}</translation>
    </message>
    <message>
        <source>run {place}: {conditions}</source>
        <translation>Lauf {place}: {conditions}</translation>
    </message>
    <message>
        <source>run {run} has no length</source>
        <translation>Lauf {run} hat keine Dauer</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>runs left out without a reason</source>
        <translation>Läufe, ohne Grund ausgelassen</translation>
    </message>
    <message>
        <source>runs of unlike duration</source>
        <translation>Läufe ungleicher Dauer</translation>
    </message>
    <message>
        <source>runs read off a display</source>
        <translation>von einer Anzeige abgelesene Läufe</translation>
    </message>
    <message>
        <source>said to be no run</source>
        <translation>als kein Lauf bezeichnet</translation>
    </message>
    <message>
        <source>sampled every {seconds} s</source>
        <translation>abgetastet alle {seconds} s</translation>
    </message>
    <message>
        <source>sampled: only {mixed} of {count} times that the machine began to heat after a rest, or ended, show a value in between</source>
        <translation>abgetastet: Nur {mixed} von {count} Malen, die die Maschine nach einer Ruhe zu heizen begann oder aufhörte, zeigen einen Wert dazwischen</translation>
    </message>
    <message>
        <source>sampled: the values do not add up to the energy in {count} stretches between ticks of the counter, as means would</source>
        <translation>abgetastet: Die Werte ergeben nicht die Energie in {count} Abschnitten zwischen den Schritten des Zählers, wie Mittelwerte es täten</translation>
    </message>
    <message>
        <source>sampled: {why}</source>
        <translation>abgetastet: {why}</translation>
    </message>
    <message>
        <source>samples in step with the pulses</source>
        <translation>Abtastwerte im Takt der Pulse</translation>
    </message>
    <message>
        <source>sampling</source>
        <translation>Abtastung</translation>
    </message>
    <message>
        <source>saved: {energy}</source>
        <translation>gespart: {energy}</translation>
    </message>
    <message>
        <source>saving picture {number} of {of}</source>
        <translation>Bild {number} von {of} wird gespeichert</translation>
    </message>
    <message>
        <source>saving {name}</source>
        <translation>{name} wird gespeichert</translation>
    </message>
    <message>
        <source>screen</source>
        <translation>Bildschirm</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>settled {after} after heating began, by {count} windows of {window}</source>
        <translation>eingeschwungen {after} nach Heizbeginn, nach {count} Fenstern zu {window}</translation>
    </message>
    <message>
        <source>seven</source>
        <translation>sieben</translation>
    </message>
    <message>
        <source>several meters</source>
        <translation>mehrere Messgeräte</translation>
    </message>
    <message>
        <source>several meters, checked</source>
        <translation>mehrere Messgeräte, geprüft</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>share = {energy_wh} Wh ÷ {used_wh} Wh = {share}</source>
        <translation>Anteil = {energy_wh} Wh ÷ {used_wh} Wh = {share}</translation>
    </message>
    <message>
        <source>short dashes: what it is held against</source>
        <translation>kurze Striche: woran gemessen wird</translation>
    </message>
    <message>
        <source>shown</source>
        <translation>nachgewiesen</translation>
    </message>
    <message>
        <source>six</source>
        <translation>sechs</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>small for where it is read: show fewer machines, or say that it is read nearer</source>
        <translation>klein für den Ort, an dem es gelesen wird: weniger Maschinen zeigen oder einen näheren Ort angeben</translation>
    </message>
    <message>
        <source>spaces</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>spread between the runs s = {spread_wh} Wh, of their mean s ÷ √{count_values} = {error_wh} Wh</source>
        <translation>Streuung zwischen den Läufen s = {spread_wh} Wh, ihres Mittels s ÷ √{count_values} = {error_wh} Wh</translation>
    </message>
    <message>
        <source>spread of the other machines&apos; runs: {spread}, by {runs:run|runs}</source>
        <translation>Streuung der Läufe der anderen Maschinen: {spread}, aus {runs:Lauf|Läufen}</translation>
    </message>
    <message>
        <source>square</source>
        <translation>Quadrat</translation>
    </message>
    <message>
        <source>standby</source>
        <translation>Bereitschaft</translation>
    </message>
    <message>
        <source>standby with information or status display</source>
        <translation>Bereitschaft mit Informations- oder Statusanzeige</translation>
    </message>
    <message>
        <source>star</source>
        <translation>Stern</translation>
    </message>
    <message>
        <source>start at {time}: {cost}</source>
        <translation>Beginn um {time}: {cost}</translation>
    </message>
    <message>
        <source>start not adjusted: no hold test from cold</source>
        <translation>Anfang nicht umgerechnet: kein Halteversuch aus dem Kalten</translation>
    </message>
    <message>
        <source>start worked out from the rest before each run</source>
        <translation>Anfang aus der Pause vor jedem Lauf errechnet</translation>
    </message>
    <message>
        <source>start {at}</source>
        <translation>Beginn {at}</translation>
    </message>
    <message>
        <source>starts unlike each other</source>
        <translation>ungleiche Starts</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>stays unexplained</source>
        <translation>bleibt unerklärt</translation>
    </message>
    <message>
        <source>steady rest</source>
        <translation>gleichmäßige Ruhe</translation>
    </message>
    <message>
        <source>steady: the last {count} windows or more agree within {percents} % or their scatter</source>
        <translation>gleichmäßig: die letzten {count} oder mehr Fenster stimmen auf {percents} % oder ihre Streuung überein</translation>
    </message>
    <message>
        <source>step up from it</source>
        <translation>Stufe darüber</translation>
    </message>
    <message>
        <source>step {number} at {at_s} min: {step_name}, {step_watts}</source>
        <translation>Stufe {number} bei {at_s} min: {step_name}, {step_watts}</translation>
    </message>
    <message>
        <source>step {number}: {after} W − {before} W = {watts}</source>
        <translation>Stufe {number}: {after} W − {before} W = {watts}</translation>
    </message>
    <message>
        <source>step {place} could be {loads}, which take the same</source>
        <translation>Stufe {place} könnte {loads} sein, die gleich viel brauchen</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>steps are missing</source>
        <translation>Schritte fehlen</translation>
    </message>
    <message>
        <source>stretch</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>stretches with no readings were bridged</source>
        <translation>Abschnitte ohne Werte wurden überbrückt</translation>
    </message>
    <message>
        <source>strip: warm-up hatched</source>
        <translation>Streifen: Aufheizen schraffiert</translation>
    </message>
    <message>
        <source>sum of the loads in processing</source>
        <translation>Summe der Verbraucher in der Fertigung</translation>
    </message>
    <message>
        <source>switch-on test</source>
        <translation>Einschaltversuch</translation>
    </message>
    <message>
        <source>switching off after {minutes} min idle saves {share} of it</source>
        <translation>Ausschalten nach {minutes} min Leerlauf spart {share} davon</translation>
    </message>
    <message>
        <source>switching off after {minutes} min idle saves {share} of what {machines} would use</source>
        <translation>Ausschalten nach {minutes} min Leerlauf spart {share} des Verbrauchs von {machines}</translation>
    </message>
    <message>
        <source>switching off after {minutes} min idle would save nothing of it, because warming up again takes as much</source>
        <translation>Ausschalten nach {minutes} min Leerlauf würde nichts davon sparen, weil erneutes Aufheizen ebenso viel braucht</translation>
    </message>
    <message>
        <source>switching off after {minutes} min idle would save nothing of what {machines} would use, because warming up again takes as much</source>
        <translation>Ausschalten nach {minutes} min Leerlauf würde nichts vom Verbrauch von {machines} sparen, weil erneutes Aufheizen ebenso viel braucht</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>taken as 0 W</source>
        <translation>als 0 W genommen</translation>
    </message>
    <message>
        <source>taken as of the instant, which leaves energies less certain, as nothing tells for sure: {why}</source>
        <translation>als Augenblickswerte genommen, wodurch Energien weniger sicher sind, denn nichts sagt es sicher: {why}</translation>
    </message>
    <message>
        <source>taken for a run because it lasts as long and draws as the others do</source>
        <translation>für einen Lauf genommen, weil er so lange dauert und so viel aufnimmt wie die anderen</translation>
    </message>
    <message>
        <source>taken without their signs</source>
        <translation>ohne Vorzeichen genommen</translation>
    </message>
    <message>
        <source>taken without their signs: so they add up to the {energy} Wh that the counter gained</source>
        <translation>ohne Vorzeichen genommen: So ergeben sie die {energy} Wh, die der Zähler zugelegt hat</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>ten</source>
        <translation>zehn</translation>
    </message>
    <message>
        <source>tests far apart in time</source>
        <translation>zeitlich weit auseinanderliegende Versuche</translation>
    </message>
    <message>
        <source>text of {text_px:.0f} px</source>
        <translation>Text von {text_px:.0f} px</translation>
    </message>
    <message>
        <source>text size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>the bed</source>
        <translation>Heizbett</translation>
    </message>
    <message>
        <source>the bed alone</source>
        <translation>das Heizbett allein</translation>
    </message>
    <message>
        <source>the bed&apos;s energy scaled as a heated plate loses heat</source>
        <translation>die Energie des Heizbetts, umgerechnet nach dem Wärmeverlust einer geheizten Platte</translation>
    </message>
    <message>
        <source>the bed&apos;s energy scaled as a heated plate loses heat, for no longer than the first ten minutes</source>
        <translation>die Energie des Heizbetts, umgerechnet nach dem Wärmeverlust einer geheizten Platte, höchstens für die ersten zehn Minuten</translation>
    </message>
    <message>
        <source>the bed&apos;s watts are not known: a hold test from cold would tell them</source>
        <translation>die Leistung des Heizbetts ist nicht bekannt: ein Halteversuch aus dem Kalten würde sie zeigen</translation>
    </message>
    <message>
        <source>the counter follows {now} of the power at an interval&apos;s end and {before} of that before</source>
        <translation>der Zähler folgt zu {now} der Leistung am Ende eines Abstands und zu {before} der davor</translation>
    </message>
    <message>
        <source>the disk could not be read or written ({what}); save a copy of the study elsewhere</source>
        <translation>Der Datenträger ließ sich nicht lesen oder beschreiben ({what}); anderswo eine Kopie der Studie speichern</translation>
    </message>
    <message>
        <source>the disk is full and nothing more could be saved; make room on it, then go on</source>
        <translation>Der Datenträger ist voll, nichts Weiteres konnte gespeichert werden; Platz schaffen, dann weiterarbeiten</translation>
    </message>
    <message>
        <source>the display shows energy in steps</source>
        <translation>die Anzeige zeigt die Energie in Stufen</translation>
    </message>
    <message>
        <source>the energy counter moves in steps</source>
        <translation>der Energiezähler springt in Stufen</translation>
    </message>
    <message>
        <source>the energy of the warm-up over the degrees that the bed rose</source>
        <translation>die Energie des Aufheizens je Grad, um das sich das Heizbett erwärmte</translation>
    </message>
    <message>
        <source>the energy of the whole run is itself unsure</source>
        <translation>die Energie des ganzen Laufs ist selbst unsicher</translation>
    </message>
    <message>
        <source>the error that the checks on one load show, which is corrected</source>
        <translation>der Fehler, den die Prüfungen an gleicher Last zeigen und der berichtigt ist</translation>
    </message>
    <message>
        <source>the file starts with this encoding&apos;s mark</source>
        <translation>die Datei beginnt mit der Kennung dieser Kodierung</translation>
    </message>
    <message>
        <source>the first order that fits</source>
        <translation>die erste passende Reihenfolge</translation>
    </message>
    <message>
        <source>the first {most} figures share one picture</source>
        <translation>die ersten {most} Diagramme teilen sich ein Bild</translation>
    </message>
    <message>
        <source>the half-width of the machine&apos;s interval</source>
        <translation>die halbe Breite des Intervalls der Maschine</translation>
    </message>
    <message>
        <source>the half-width of the mean&apos;s interval</source>
        <translation>die halbe Breite des Intervalls des Mittels</translation>
    </message>
    <message>
        <source>the hot end pulses too, and its rows are told from pieces of the bed&apos;s pulses</source>
        <translation>auch das Hotend pulst, und seine Zeilen werden von Stücken der Pulse des Heizbetts unterschieden</translation>
    </message>
    <message>
        <source>the instant</source>
        <translation>den Augenblick</translation>
    </message>
    <message>
        <source>the log begins in the middle of it</source>
        <translation>das Log beginnt mitten darin</translation>
    </message>
    <message>
        <source>the log begins or ends in the middle of it</source>
        <translation>das Log beginnt oder endet mittendrin</translation>
    </message>
    <message>
        <source>the log begins while it warms up: its first seconds may be missing</source>
        <translation>das Log beginnt beim Aufheizen: Die ersten Sekunden können fehlen</translation>
    </message>
    <message>
        <source>the log ends in the middle of it</source>
        <translation>das Log endet mitten darin</translation>
    </message>
    <message>
        <source>the log holds runs of several lengths, none made more often; the longest is taken for the part</source>
        <translation>das Log enthält Läufe verschiedener Dauer, keine kommt öfter vor; der längste gilt als das Teil</translation>
    </message>
    <message>
        <source>the log shows no idle before or after it, so where it begins and ends is not seen</source>
        <translation>das Log zeigt davor und danach keinen Leerlauf, daher ist nicht zu sehen, wo er beginnt und endet</translation>
    </message>
    <message>
        <source>the machine may draw more or less while the bed heats than between its pulses</source>
        <translation>die Maschine kann mehr oder weniger ziehen, während das Heizbett heizt, als zwischen seinen Pulsen</translation>
    </message>
    <message>
        <source>the machine&apos;s mean by one meter against that by the other</source>
        <translation>das Mittel der Maschine mit dem einen Messgerät gegen das mit dem anderen</translation>
    </message>
    <message>
        <source>the machine&apos;s mean with these runs against the mean without</source>
        <translation>das Mittel der Maschine mit diesen Läufen gegen das Mittel ohne sie</translation>
    </message>
    <message>
        <source>the machine&apos;s mean with this run against the mean of its other runs</source>
        <translation>das Mittel der Maschine mit diesem Lauf gegen das Mittel ihrer anderen Läufe</translation>
    </message>
    <message>
        <source>the machine&apos;s mean with this run against the mean of its other runs; told by Grubbs&apos; test</source>
        <translation>das Mittel der Maschine mit diesem Lauf gegen das Mittel ihrer anderen Läufe; erkannt mit dem Grubbs-Test</translation>
    </message>
    <message>
        <source>the machine&apos;s own</source>
        <translation>das der Maschine</translation>
    </message>
    <message>
        <source>the mean before it</source>
        <translation>das Mittel davor</translation>
    </message>
    <message>
        <source>the mean watts over the half-width of the mean duration, in the intervals already</source>
        <translation>die mittlere Leistung über die halbe Intervallbreite der mittleren Dauer, schon in den Intervallen enthalten</translation>
    </message>
    <message>
        <source>the mean watts over the time by which edges were moved</source>
        <translation>die mittlere Leistung über die Zeit, um die Ränder verschoben wurden</translation>
    </message>
    <message>
        <source>the meter reads a few tenths of a watt too much or too little at any load</source>
        <translation>das Messgerät zeigt bei jeder Last einige Zehntel Watt zu viel oder zu wenig an</translation>
    </message>
    <message>
        <source>the meter reads a little high or low, by the same percentage always</source>
        <translation>das Messgerät zeigt etwas zu viel oder zu wenig an, immer um denselben Prozentsatz</translation>
    </message>
    <message>
        <source>the meter shows power in steps</source>
        <translation>das Messgerät zeigt die Leistung in Stufen</translation>
    </message>
    <message>
        <source>the model&apos;s: one source may move several steps, so they are added in full</source>
        <translation>die des Modells: Eine Quelle kann mehrere Schritte bewegen, daher werden sie voll addiert</translation>
    </message>
    <message>
        <source>the names of devices</source>
        <translation>den Namen von Geräten</translation>
    </message>
    <message>
        <source>the nozzle</source>
        <translation>Düse</translation>
    </message>
    <message>
        <source>the picture could not be encoded as {form}: {why}</source>
        <translation>das Bild ließ sich nicht als {form} kodieren: {why}</translation>
    </message>
    <message>
        <source>the program itself failed on a way to the bed&apos;s part ({what}, at {where}); please report this, with the log if you may</source>
        <translation>das Programm selbst ist auf einem Weg zum Anteil des Heizbetts gescheitert ({what}, bei {where}); bitte melden, wenn möglich mit dem Log</translation>
    </message>
    <message>
        <source>the program itself failed on it ({what}, at {where}); please report this</source>
        <translation>das Programm selbst scheiterte daran ({what}, bei {where}); bitte melden</translation>
    </message>
    <message>
        <source>the program itself failed on it ({what}, at {where}); please report this, with the file if you may</source>
        <translation>das Programm selbst scheiterte daran ({what}, bei {where}); bitte melden, wenn erlaubt mit der Datei</translation>
    </message>
    <message>
        <source>the readings keep step with the heater and meet it at the same few moments of its cycle</source>
        <translation>die Werte gehen im Takt mit der Heizung und treffen sie in denselben wenigen Augenblicken ihres Takts</translation>
    </message>
    <message>
        <source>the room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>the run</source>
        <translation>der Lauf</translation>
    </message>
    <message>
        <source>the run begins and ends somewhere between two readings</source>
        <translation>der Lauf beginnt und endet irgendwo zwischen zwei Werten</translation>
    </message>
    <message>
        <source>the runs differ from one another</source>
        <translation>die Läufe unterscheiden sich voneinander</translation>
    </message>
    <message>
        <source>the runs differ from one another by more than their own measurement explains</source>
        <translation>die Läufe unterscheiden sich stärker, als ihre eigene Messung erklärt</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>the smallest difference that is shown, or left open, between a machine it touches and another</source>
        <translation>der kleinste Unterschied, der zwischen einer betroffenen Maschine und einer anderen nachgewiesen oder offen gelassen ist</translation>
    </message>
    <message>
        <source>the spread of the other machines&apos; runs</source>
        <translation>die Streuung der Läufe der anderen Maschinen</translation>
    </message>
    <message>
        <source>the study</source>
        <translation>der Studie</translation>
    </message>
    <message>
        <source>the system lets nobody open or write it here ({what}); check the permissions</source>
        <translation>Das System erlaubt hier weder Öffnen noch Schreiben ({what}); die Berechtigungen prüfen</translation>
    </message>
    <message>
        <source>the usual order with this separator and a 24 h clock</source>
        <translation>die übliche Reihenfolge bei diesem Trennzeichen und 24-Stunden-Uhr</translation>
    </message>
    <message>
        <source>there is a file of this name already; choose another name</source>
        <translation>Eine Datei dieses Namens gibt es schon; einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>there is no encoding called {encoding}</source>
        <translation>eine Kodierung namens {encoding} gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>Diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such file; it may have been moved or renamed</source>
        <translation>Diese Datei gibt es nicht; vielleicht wurde sie verschoben oder umbenannt</translation>
    </message>
    <message>
        <source>these two alone</source>
        <translation>nur diese zwei</translation>
    </message>
    <message>
        <source>they would have shown one of {percents} %</source>
        <translation>sie hätten einen Unterschied von {percents} % nachgewiesen</translation>
    </message>
    <message>
        <source>this comparison</source>
        <translation>diesen Vergleich</translation>
    </message>
    <message>
        <source>this is a database of another program, not a study; it was left as it is</source>
        <translation>Das ist eine Datenbank eines anderen Programms, keine Studie; sie blieb, wie sie ist</translation>
    </message>
    <message>
        <source>this is a folder; open a study inside it, or drop the folder to read the logs in it</source>
        <translation>Das ist ein Ordner; eine Studie darin öffnen, oder den Ordner hierher ziehen, um die Logs darin zu lesen</translation>
    </message>
    <message>
        <source>this is no study; if it is a meter log, drop it on the window to import it</source>
        <translation>Das ist keine Studie; ist es ein Log eines Messgeräts, es zum Einlesen auf das Fenster ziehen</translation>
    </message>
    <message>
        <source>this log could not be read</source>
        <translation>dieses Log war nicht lesbar</translation>
    </message>
    <message>
        <source>this measurement</source>
        <translation>diese Messung</translation>
    </message>
    <message>
        <source>this study is damaged and cannot be read ({what}); it was left as it is: open a copy or a backup of it, or import its logs into a new study</source>
        <translation>Diese Studie ist beschädigt und nicht lesbar ({what}); sie blieb, wie sie ist: eine Kopie oder Sicherung öffnen oder ihre Logs in eine neue Studie einlesen</translation>
    </message>
    <message>
        <source>this study is open in another window, so it can be looked at but not changed here; close it there and open it again, or save a copy under another name</source>
        <translation>Diese Studie ist in einem anderen Fenster geöffnet und lässt sich hier ansehen, aber nicht ändern; dort schließen und neu öffnen oder eine Kopie unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>this study was written by a newer version of Samepart (format {version}; this one knows {known}); update Samepart to open it; the file was left as it is</source>
        <translation>Diese Studie hat eine neuere Version von Samepart geschrieben (Format {version}; diese kennt {known}); zum Öffnen Samepart aktualisieren; die Datei blieb, wie sie ist</translation>
    </message>
    <message>
        <source>this study was written by a newer version of Samepart ({what}); update Samepart to open it; the file was left as it is</source>
        <translation>Diese Studie hat eine neuere Version von Samepart geschrieben ({what}); zum Öffnen Samepart aktualisieren; die Datei blieb, wie sie ist</translation>
    </message>
    <message>
        <source>this study was written by an older version (format {version}) and must be brought up to date, but nothing can be written here; copy it to a folder of your own and open the copy</source>
        <translation>Diese Studie hat eine ältere Version geschrieben (Format {version}); sie muss aktualisiert werden, doch hier kann nichts geschrieben werden; in einen eigenen Ordner kopieren und die Kopie öffnen</translation>
    </message>
    <message>
        <source>this study, or the folder it is in, is write-protected, so it can be looked at but not changed; save a copy of it elsewhere to go on</source>
        <translation>Diese Studie oder ihr Ordner ist schreibgeschützt; sie lässt sich ansehen, aber nicht ändern; zum Weiterarbeiten anderswo eine Kopie speichern</translation>
    </message>
    <message>
        <source>three</source>
        <translation>drei</translation>
    </message>
    <message>
        <source>tied to the run&apos;s edges by the power ({by_counter_wh} Wh): {by_counter_wh_2} Wh</source>
        <translation>über die Leistung an die Ränder des Laufs gebunden ({by_counter_wh} Wh): {by_counter_wh_2} Wh</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>times mean watts of {watts} W</source>
        <translation>mal mittlere Leistung von {watts} W</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>together: {money}</source>
        <translation>zusammen: {money}</translation>
    </message>
    <message>
        <source>together: {total} W</source>
        <translation>zusammen: {total} W</translation>
    </message>
    <message>
        <source>together: {value} {unit}</source>
        <translation>zusammen: {value} {unit}</translation>
    </message>
    <message>
        <source>together: {watts} W</source>
        <translation>zusammen: {watts} W</translation>
    </message>
    <message>
        <source>too few machines</source>
        <translation>zu wenige Maschinen</translation>
    </message>
    <message>
        <source>too few rows to tell; values are taken as of the instant</source>
        <translation>zu wenige Zeilen, um es zu erkennen; die Werte gelten als Augenblickswerte</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>zu kurz</translation>
    </message>
    <message>
        <source>triangle down</source>
        <translation>Dreieck nach unten</translation>
    </message>
    <message>
        <source>triangle up</source>
        <translation>Dreieck nach oben</translation>
    </message>
    <message>
        <source>turned round: {percent} % of the energy is below zero, and no machine gives power back{counter}</source>
        <translation>umgedreht: {percent} % der Energie liegen unter null, und keine Maschine gibt Leistung zurück{counter}</translation>
    </message>
    <message>
        <source>twice</source>
        <translation>zweimal</translation>
    </message>
    <message>
        <source>two</source>
        <translation>zwei</translation>
    </message>
    <message>
        <source>two levels</source>
        <translation>zwei Leistungsstufen</translation>
    </message>
    <message>
        <source>two logs have one identifier</source>
        <translation>zwei Logs haben dieselbe Kennung</translation>
    </message>
    <message>
        <source>two machines have one identifier</source>
        <translation>zwei Maschinen haben dieselbe Kennung</translation>
    </message>
    <message>
        <source>two meters have one identifier</source>
        <translation>zwei Messgeräte haben dieselbe Kennung</translation>
    </message>
    <message>
        <source>two meters hide {share}</source>
        <translation>zwei Messgeräte verdecken {share}</translation>
    </message>
    <message>
        <source>two meters that differ on one machine</source>
        <translation>zwei Messgeräte, die an einer Maschine voneinander abweichen</translation>
    </message>
    <message>
        <source>two runs have one identifier</source>
        <translation>zwei Läufe haben dieselbe Kennung</translation>
    </message>
    <message>
        <source>two runs only</source>
        <translation>nur zwei Läufe</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>eingetippt</translation>
    </message>
    <message>
        <source>u = √({biggest}{rest}) = {u} {unit}</source>
        <translation>u = √({biggest}{rest}) = {u} {unit}</translation>
    </message>
    <message>
        <source>unfair</source>
        <translation>unfair</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>unknown temperature</source>
        <translation>unbekannte Temperatur</translation>
    </message>
    <message>
        <source>unlike length</source>
        <translation>ungleiche Länge</translation>
    </message>
    <message>
        <source>unlike rests between runs</source>
        <translation>ungleiche Pausen zwischen Läufen</translation>
    </message>
    <message>
        <source>unlike run</source>
        <translation>ungleicher Lauf</translation>
    </message>
    <message>
        <source>unlike sampling</source>
        <translation>ungleiche Abtastung</translation>
    </message>
    <message>
        <source>unseen heater</source>
        <translation>ungesehene Heizung</translation>
    </message>
    <message>
        <source>unsteady rest</source>
        <translation>ungleichmäßige Ruhe</translation>
    </message>
    <message>
        <source>until cooled</source>
        <translation>bis zum Erkalten</translation>
    </message>
    <message>
        <source>until the next one</source>
        <translation>bis zum nächsten</translation>
    </message>
    <message>
        <source>unusual mean watts</source>
        <translation>eine ungewöhnliche mittlere Leistung</translation>
    </message>
    <message>
        <source>unusual standby watts</source>
        <translation>eine ungewöhnliche Bereitschaftsleistung</translation>
    </message>
    <message>
        <source>unusual watts of a held bed</source>
        <translation>eine ungewöhnliche Leistung eines gehaltenen Heizbetts</translation>
    </message>
    <message>
        <source>user name in a path</source>
        <translation>Benutzername in einem Pfad</translation>
    </message>
    <message>
        <source>valid UTF-8 in every block</source>
        <translation>gültiges UTF-8 in jedem Block</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>Aufheizen</translation>
    </message>
    <message>
        <source>warm-up and processing</source>
        <translation>Aufheizen und Fertigung</translation>
    </message>
    <message>
        <source>warm-up goes up to {most} {unit}</source>
        <translation>Aufheizen geht bis {most} {unit}</translation>
    </message>
    <message>
        <source>warm-up not counted</source>
        <translation>Aufheizen nicht gezählt</translation>
    </message>
    <message>
        <source>warm-up of the bed</source>
        <translation>Aufheizen des Heizbetts</translation>
    </message>
    <message>
        <source>warm-up: {energy} in {length}</source>
        <translation>Aufheizen: {energy} in {length}</translation>
    </message>
    <message>
        <source>watts of processing over the time that it is longer or shorter</source>
        <translation>Leistung der Fertigung über die Zeit, um die sie länger oder kürzer ist</translation>
    </message>
    <message>
        <source>watts per area are divided by the area, which alone makes them fall with it</source>
        <translation>Leistung je Fläche ist durch die Fläche geteilt, was sie allein schon mit ihr fallen lässt</translation>
    </message>
    <message>
        <source>wear</source>
        <translation>Verschleiß</translation>
    </message>
    <message>
        <source>were they alone: {share}</source>
        <translation>wären sie allein: {share}</translation>
    </message>
    <message>
        <source>what else the machine draws is not in the log</source>
        <translation>was die Maschine sonst zieht, ist nicht im Log</translation>
    </message>
    <message>
        <source>what else the machine draws is taken off</source>
        <translation>was die Maschine sonst zieht, ist abgezogen</translation>
    </message>
    <message>
        <source>what is not the bed draws {rest_w} W on average</source>
        <translation>alles außer dem Heizbett zieht im Mittel {rest_w} W</translation>
    </message>
    <message>
        <source>what the bed took while it warmed up is carried over from the hold test</source>
        <translation>was das Heizbett beim Aufheizen brauchte, ist aus dem Halteversuch übernommen</translation>
    </message>
    <message>
        <source>what the gaps leave open, in the intervals already</source>
        <translation>was die Lücken offen lassen, schon in den Intervallen enthalten</translation>
    </message>
    <message>
        <source>what the hot end took to heat up is not seen apart from the bed</source>
        <translation>was das Hotend zum Aufheizen brauchte, ist nicht vom Heizbett getrennt zu sehen</translation>
    </message>
    <message>
        <source>what the machine drew beside the held bed</source>
        <translation>was die Maschine neben dem gehaltenen Heizbett zog</translation>
    </message>
    <message>
        <source>what the runs and their meter leave open</source>
        <translation>was die Läufe und ihr Messgerät offen lassen</translation>
    </message>
    <message>
        <source>what the samples leave open, in the intervals already</source>
        <translation>was die Abtastwerte offen lassen, schon in den Intervallen enthalten</translation>
    </message>
    <message>
        <source>when the machine has cooled down and stands by again</source>
        <translation>wenn die Maschine abgekühlt und wieder in Bereitschaft ist</translation>
    </message>
    <message>
        <source>whether a part was made cannot be told: the meter shows no change as small as motors make</source>
        <translation>ob ein Teil gefertigt wurde, ist nicht zu erkennen: Das Messgerät zeigt keine so kleine Änderung, wie Motoren sie bewirken</translation>
    </message>
    <message>
        <source>with slashes and a 12 h clock the month usually comes first</source>
        <translation>mit Schrägstrichen und 12-Stunden-Uhr steht der Monat gewöhnlich vorn</translation>
    </message>
    <message>
        <source>with what lies between these rows and the run&apos;s edges ({rest} Wh): {whole} Wh</source>
        <translation>mit dem, was zwischen diesen Zeilen und den Rändern des Laufs liegt ({rest} Wh): {whole} Wh</translation>
    </message>
    <message>
        <source>with what lies between these rows and the run&apos;s edges and gaps ({rest} Wh): {whole} Wh</source>
        <translation>mit dem, was zwischen diesen Zeilen und den Rändern und Lücken des Laufs liegt ({rest} Wh): {whole} Wh</translation>
    </message>
    <message>
        <source>without it about ± {interval}</source>
        <translation>ohne sie etwa ± {interval}</translation>
    </message>
    <message>
        <source>working out costs</source>
        <translation>Kosten werden berechnet</translation>
    </message>
    <message>
        <source>working out repeats</source>
        <translation>Wiederholungen werden berechnet</translation>
    </message>
    <message>
        <source>writing tables</source>
        <translation>Tabellen werden geschrieben</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>{at_s} s</source>
        <translation>{at_s} s</translation>
    </message>
    <message>
        <source>{bed_c} °C</source>
        <translation>{bed_c} °C</translation>
    </message>
    <message>
        <source>{blocks:block|blocks} of no machines, no runs in all, in the order of seed {seed}.</source>
        <translation>{blocks:Block|Blöcke} ohne Maschinen, keine Läufe, in der Reihenfolge des Startwerts {seed}.</translation>
    </message>
    <message>
        <source>{blocks:block|blocks} of {machines:machine|machines}, {runs:run|runs} in all, in the order of seed {seed}.</source>
        <translation>{blocks:Block|Blöcke} mit je {machines:Maschine|Maschinen}, insgesamt {runs:Lauf|Läufe}, in der Reihenfolge des Startwerts {seed}.</translation>
    </message>
    <message>
        <source>{boundary}; {runs}, lined up {where}; {smoothed}.</source>
        <translation>{boundary}; {runs}, ausgerichtet {where}; {smoothed}.</translation>
    </message>
    <message>
        <source>{clear}; one thing asks for caution: {point}.</source>
        <translation>{clear}; eines mahnt zur Vorsicht: {point}.</translation>
    </message>
    <message>
        <source>{clear}; {count} things ask for caution, above all {point}.</source>
        <translation>{clear}; {count} Dinge mahnen zur Vorsicht, vor allem {point}.</translation>
    </message>
    <message>
        <source>{clear}; {notes:note|notes} on how to be surer.</source>
        <translation>{clear}; {notes:Hinweis|Hinweise}, wie es sicherer wird.</translation>
    </message>
    <message>
        <source>{condition}: {energy} Wh</source>
        <translation>{condition}: {energy} Wh</translation>
    </message>
    <message>
        <source>{corrections}, by all checks and the meters&apos; accuracies.</source>
        <translation>{corrections}, nach allen Prüfungen und den Genauigkeiten der Messgeräte.</translation>
    </message>
    <message>
        <source>{count:caution|cautions}</source>
        <translation>{count}-mal Vorsicht</translation>
    </message>
    <message>
        <source>{count:earlier week|earlier weeks} not shown</source>
        <translation>{count:frühere Woche|frühere Wochen} nicht gezeigt</translation>
    </message>
    <message>
        <source>{count:figure|figures} came out otherwise than its maker has them, first {where}: {here}, not {there} (the bundle was made by {program}, this is {this}).</source>
        <translation>{count:Zahl weicht|Zahlen weichen} von denen des Erstellers ab, zuerst {where}: {here}, nicht {there} (das Bündel ist von {program}, dies ist {this}).</translation>
    </message>
    <message>
        <source>{count:figure|figures} of {of} could not be checked, because {logs:log|logs} of the bundle could not be read here; the others came out as its maker has them.</source>
        <translation>{count:Zahl|Zahlen} von {of} {count:~konnte|konnten} nicht geprüft werden, weil {logs:Log|Logs} des Bündels hier nicht lesbar {logs:~war|waren}; die übrigen stimmen mit denen des Erstellers überein.</translation>
    </message>
    <message>
        <source>{count:finding|findings}.</source>
        <translation>{count:Befund|Befunde}.</translation>
    </message>
    <message>
        <source>{count:gap of|gaps of together} {seconds} s, {percent} % of the log.</source>
        <translation>{count:Lücke von|Lücken von zusammen} {seconds} s, {percent} % des Logs.</translation>
    </message>
    <message>
        <source>{count:hollow dot is a run|hollow dots are runs} left out of the means</source>
        <translation>{count:hohler Punkt ist ein Lauf, der|hohle Punkte sind Läufe, die} in den Mittelwerten nicht {count:~zählt|zählen}</translation>
    </message>
    <message>
        <source>{count:log is|logs are} of a bed alone</source>
        <translation>{count:Log ist|Logs sind} von einem Heizbett allein</translation>
    </message>
    <message>
        <source>{count:log|logs}</source>
        <translation>{count:Log|Logs}</translation>
    </message>
    <message>
        <source>{count:machine|machines}</source>
        <translation>{count:Maschine|Maschinen}</translation>
    </message>
    <message>
        <source>{count:machine|machines} lie between {low} and {high}, {shortest} and {longest}</source>
        <translation>{count:Maschine liegt|Maschinen liegen} zwischen {low} und {high}, {shortest} und {longest}</translation>
    </message>
    <message>
        <source>{count:machine|machines} {count:~has|have} both {measure} and {property}: too few to show a link.</source>
        <translation>{count:Maschine|Maschinen} {count:~hat|haben} Werte für „{measure}“ und „{property}“: zu wenige, um einen Zusammenhang nachzuweisen.</translation>
    </message>
    <message>
        <source>{count:meter|meters}</source>
        <translation>{count:Messgerät|Messgeräte}</translation>
    </message>
    <message>
        <source>{count:more line|more lines} not told here</source>
        <translation>{count:weitere Zeile|weitere Zeilen} hier nicht genannt</translation>
    </message>
    <message>
        <source>{count:more machine|more machines} not told here</source>
        <translation>{count:weitere Maschine|weitere Maschinen} hier nicht genannt</translation>
    </message>
    <message>
        <source>{count:more machine|more machines} without a box of their own take part.</source>
        <translation>{count:weitere Maschine|weitere Maschinen} ohne eigenes Kästchen {count:~nimmt|nehmen} teil.</translation>
    </message>
    <message>
        <source>{count:more machine|more machines}: note the temperatures of those runs on the Logs page.</source>
        <translation>{count:weitere Maschine|weitere Maschinen}: die Temperaturen dieser Läufe auf der Seite „Logs“ notieren.</translation>
    </message>
    <message>
        <source>{count:more pair|more pairs}</source>
        <translation>{count:weiteres Paar|weitere Paare}</translation>
    </message>
    <message>
        <source>{count:more pair|more pairs}: no difference shown.</source>
        <translation>{count:weiteres Paar|weitere Paare}: kein Unterschied nachgewiesen.</translation>
    </message>
    <message>
        <source>{count:more point|more points} {count:~is|are} not drawn.</source>
        <translation>{count:weiterer Punkt|weitere Punkte} {count:~ist|sind} nicht gezeichnet.</translation>
    </message>
    <message>
        <source>{count:more run|more runs}</source>
        <translation>{count:weiterer Lauf|weitere Läufe}</translation>
    </message>
    <message>
        <source>{count:note|notes}</source>
        <translation>{count:Hinweis|Hinweise}</translation>
    </message>
    <message>
        <source>{count:open point|open points} of fairness</source>
        <translation>{count:offener Punkt|offene Punkte} der Fairness</translation>
    </message>
    <message>
        <source>{count:other stretch|other stretches} found and not counted</source>
        <translation>{count:anderer Abschnitt|andere Abschnitte} gefunden und nicht gezählt</translation>
    </message>
    <message>
        <source>{count:other stretch|other stretches} of the logs found to be no run of the part</source>
        <translation>{count:anderer Abschnitt|andere Abschnitte} der Logs, kein Lauf des Teils</translation>
    </message>
    <message>
        <source>{count:personal thing|personal things} would be given away:</source>
        <translation>{count:persönliche Angabe|persönliche Angaben} {count:~würde|würden} weitergegeben:</translation>
    </message>
    <message>
        <source>{count:picture|pictures}</source>
        <translation>{count:Bild|Bilder}</translation>
    </message>
    <message>
        <source>{count:point of fairness|points of fairness}</source>
        <translation>{count:Fairness-Punkt|Fairness-Punkte}</translation>
    </message>
    <message>
        <source>{count:point|points}</source>
        <translation>{count:Punkt|Punkte}</translation>
    </message>
    <message>
        <source>{count:point|points} accepted.</source>
        <translation>{count:Punkt|Punkte} hingenommen.</translation>
    </message>
    <message>
        <source>{count:problem|problems}</source>
        <translation>{count:Problem|Probleme}</translation>
    </message>
    <message>
        <source>{count:remark|remarks}</source>
        <translation>{count:Bemerkung|Bemerkungen}</translation>
    </message>
    <message>
        <source>{count:row has|rows have} no value for the power and {count:~was|were} passed over.</source>
        <translation>{count:Zeile hat|Zeilen haben} keinen Wert für die Leistung und {count:~wurde|wurden} übergangen.</translation>
    </message>
    <message>
        <source>{count:row is|rows are} a little below zero, at most to {lowest_w} W: noise of a meter at rest, left as written so that the mean stays right.</source>
        <translation>{count:Zeile liegt|Zeilen liegen} ein wenig unter null, höchstens bis {lowest_w} W: Rauschen eines ruhenden Messgeräts, wie geschrieben gelassen, damit das Mittel stimmt.</translation>
    </message>
    <message>
        <source>{count:row repeats|rows repeat} the one before exactly and {count:~was|were} counted once.</source>
        <translation>{count:Zeile wiederholt|Zeilen wiederholen} genau die vorige und {count:~wurde|wurden} einmal gezählt.</translation>
    </message>
    <message>
        <source>{count:row shows|rows show} a power below zero, but only without the {count:~sign|signs} does the power add up to the {counter_wh} Wh of the counter (with them: {signed_wh} Wh). So the signs were dropped.</source>
        <translation>{count:Zeile zeigt|Zeilen zeigen} eine Leistung unter null, aber nur ohne {count:~das|die} Vorzeichen ergibt die Leistung die {counter_wh} Wh des Zählers (mit Vorzeichen: {signed_wh} Wh). Daher fielen die Vorzeichen weg.</translation>
    </message>
    <message>
        <source>{count:row shows|rows show} a power below zero, down to {lowest_w} W and {back_wh} Wh in all. {count:~It was|They were} left as written; if the meter is at fault, choose under Power below zero.</source>
        <translation>{count:Zeile zeigt|Zeilen zeigen} eine Leistung unter null, bis {lowest_w} W und insgesamt {back_wh} Wh. {count:~Sie blieb|Sie blieben} wie geschrieben; liegt es am Messgerät, unter „Leistung unter null“ wählen.</translation>
    </message>
    <message>
        <source>{count:row shows|rows show} a power below zero, down to {lowest_w} W. {count:~It was|They were} left as written, but the counter leaves out those {back_wh} Wh; choose under Power below zero.</source>
        <translation>{count:Zeile zeigt|Zeilen zeigen} eine Leistung unter null, bis {lowest_w} W. {count:~Sie blieb|Sie blieben} wie geschrieben, aber der Zähler lässt diese {back_wh} Wh aus; unter „Leistung unter null“ wählen.</translation>
    </message>
    <message>
        <source>{count:row shows|rows show} a power below zero, down to {lowest_w} W; taken as you chose.</source>
        <translation>{count:Zeile zeigt|Zeilen zeigen} eine Leistung unter null, bis {lowest_w} W; genommen wie gewählt.</translation>
    </message>
    <message>
        <source>{count:row shows|rows show} {value} where the logger measured nothing; {count:~it was|they were} taken as no value.</source>
        <translation>{count:Zeile zeigt|Zeilen zeigen} {value}, wo der Logger nichts gemessen hat; {count:~sie wurde|sie wurden} als fehlend genommen.</translation>
    </message>
    <message>
        <source>{file} cannot be unpacked</source>
        <translation>{file} lässt sich nicht entpacken</translation>
    </message>
    <message>
        <source>{letters} behind the times is no time zone that is known, so they are taken as local time. Choose the zone in the Reading panel.</source>
        <translation>{letters} hinter den Zeiten ist keine bekannte Zeitzone; sie gelten deshalb als Ortszeit. Die Zone unter „Einlesen“ wählen.</translation>
    </message>
    <message>
        <source>{letters} behind the times means several zones; taken as {taken}. Export the log with its offset from UTC if it is another.</source>
        <translation>{letters} hinter den Zeiten steht für mehrere Zonen; gelesen als {taken}. Ist es eine andere, das Log mit seinem Abstand von UTC exportieren.</translation>
    </message>
    <message>
        <source>{name}: warm-up and after it</source>
        <translation>{name}: Aufheizen und danach</translation>
    </message>
    <message>
        <source>{name}: warm-up of a print</source>
        <translation>{name}: Aufheizen eines Drucks</translation>
    </message>
    <message>
        <source>{name}: watts a kelvin</source>
        <translation>{name}: Leistung je Kelvin</translation>
    </message>
    <message>
        <source>{name}: what runs while it is idle</source>
        <translation>{name}: was im Leerlauf läuft</translation>
    </message>
    <message>
        <source>{name}: when to start a print</source>
        <translation>{name}: wann ein Druck beginnen soll</translation>
    </message>
    <message>
        <source>{name}: {runs:run|runs}, scatter {spread}</source>
        <translation>{name}: {runs:Lauf|Läufe}, Streuung {spread}</translation>
    </message>
    <message>
        <source>{name}: {told} in {logs:log|logs}</source>
        <translation>{name}: {told} in {logs:Log|Logs}</translation>
    </message>
    <message>
        <source>{name}: {warm} Wh in {warm_time} of warm-up, then {watts} W × {hours} h = {after} Wh; together {all} Wh</source>
        <translation>{name}: {warm} Wh in {warm_time} Aufheizen, dann {watts} W × {hours} h = {after} Wh; zusammen {all} Wh</translation>
    </message>
    <message>
        <source>{own} W by its own meter ÷ ({plug} W at the plug − {beside} W beside the bed) = {share}</source>
        <translation>{own} W laut eigenem Messgerät ÷ ({plug} W an der Steckdose − {beside} W neben dem Heizbett) = {share}</translation>
    </message>
    <message>
        <source>{percent:.1f} % of the run&apos;s time lies in gaps of the log; the energy counter tells what was used in them.</source>
        <translation>{percent:.1f} % der Zeit des Laufs liegen in Lücken des Logs; was darin verbraucht wurde, sagt der Energiezähler.</translation>
    </message>
    <message>
        <source>{percents} % (95 % interval {low} to {high} %)</source>
        <translation>{percents} % (95-%-Intervall {low} bis {high} %)</translation>
    </message>
    <message>
        <source>{place}: first {time}</source>
        <translation>{place}: erste {time}</translation>
    </message>
    <message>
        <source>{place}: half hour against the full hour</source>
        <translation>{place}: halbe Stunde gegen die ganze Stunde</translation>
    </message>
    <message>
        <source>{place}: heat capacity</source>
        <translation>{place}: Wärmekapazität</translation>
    </message>
    <message>
        <source>{place}: steady after</source>
        <translation>{place}: gleichmäßig nach</translation>
    </message>
    <message>
        <source>{place}: steady, with all that the machine draws</source>
        <translation>{place}: gleichmäßig, mit allem, was die Maschine zieht</translation>
    </message>
    <message>
        <source>{place}: warm-up</source>
        <translation>{place}: Aufheizen</translation>
    </message>
    <message>
        <source>{place}: warm-up time</source>
        <translation>{place}: Aufheizzeit</translation>
    </message>
    <message>
        <source>{prints} prints × {energy} kWh = {kwh} kWh</source>
        <translation>{prints} Drucke × {energy} kWh = {kwh} kWh</translation>
    </message>
    <message>
        <source>{runs:run|runs} of the {part} taken apart into warm-up and processing; the mean of both.</source>
        <translation>{runs:Lauf|Läufe} zerlegt in Aufheizen und Fertigung; das Mittel von beidem. Teil: {part}.</translation>
    </message>
    <message>
        <source>{sign} stands between the cells, read as a tab</source>
        <translation>{sign} steht zwischen den Zellen und wird als Tabulator gelesen</translation>
    </message>
    <message>
        <source>{sign}; but {other} in {columns}</source>
        <translation>{sign}; aber {other} in {columns}</translation>
    </message>
    <message>
        <source>{tests:hold test|hold tests} at temperatures that nobody noted</source>
        <translation>{tests:Halteversuch|Halteversuche} bei Temperaturen, die niemand notiert hat</translation>
    </message>
    <message>
        <source>{tests:hold test|hold tests} at {celsius} °C</source>
        <translation>{tests:Halteversuch|Halteversuche} bei {celsius} °C</translation>
    </message>
    <message>
        <source>{tests:hold test|hold tests} at {celsius} °C and at temperatures nobody noted</source>
        <translation>{tests:Halteversuch|Halteversuche} bei {celsius} °C und bei Temperaturen, die niemand notiert hat</translation>
    </message>
    <message>
        <source>{text} ({size}, assumed: nobody stated it)</source>
        <translation>{text} ({size}, angenommen: nicht angegeben)</translation>
    </message>
    <message>
        <source>{text}, the lowest level</source>
        <translation>{text}, die niedrigste Leistung</translation>
    </message>
    <message>
        <source>{times} times</source>
        <translation>{times}-mal</translation>
    </message>
    <message>
        <source>{time} (suits these runs)</source>
        <translation>{time} (passt zu diesen Läufen)</translation>
    </message>
    <message>
        <source>{time} h of {whole} h of log = {share}</source>
        <translation>{time} h von {whole} h Log = {share}</translation>
    </message>
    <message>
        <source>{time}: {money}, against {most} at {late}</source>
        <translation>{time}: {money}, gegen {most} um {late}</translation>
    </message>
    <message>
        <source>{title} in {unit}</source>
        <translation>{title} in {unit}</translation>
    </message>
    <message>
        <source>{title} is left out.</source>
        <translation>{title} ist ausgelassen.</translation>
    </message>
    <message>
        <source>{title}, made with {program} on {day}</source>
        <translation>{title}, erstellt mit {program} am {day}</translation>
    </message>
    <message>
        <source>{title}, {study}, order by seed {seed}</source>
        <translation>{title}, {study}, Reihenfolge zum Startwert {seed}</translation>
    </message>
    <message>
        <source>{title}: from {least} {unit} for {first} to {most} {unit} for {last}</source>
        <translation>{title}: von {least} {unit} ({first}) bis {most} {unit} ({last})</translation>
    </message>
    <message>
        <source>{told} among {count} machines.</source>
        <translation>{told}, bei {count} Maschinen insgesamt.</translation>
    </message>
    <message>
        <source>{told}; whether they differ cannot be judged from these runs.</source>
        <translation>{told}; ob sie sich unterscheiden, lässt sich aus diesen Läufen nicht beurteilen.</translation>
    </message>
    <message>
        <source>{told}; whether they differ cannot be judged with one run of {machines}.</source>
        <translation>{told}; ob sie sich unterscheiden, lässt sich mit nur einem Lauf von {machines} nicht beurteilen.</translation>
    </message>
    <message>
        <source>{told}; with one meter for both it would not.</source>
        <translation>{told}; mit einem Messgerät für beide wäre es nicht so.</translation>
    </message>
    <message>
        <source>{used_wh} Wh × 3600 s/h ÷ {seconds} s = {term}</source>
        <translation>{used_wh} Wh × 3600 s/h ÷ {seconds} s = {term}</translation>
    </message>
    <message>
        <source>{used}; {saving}.</source>
        <translation>{used}; {saving}.</translation>
    </message>
    <message>
        <source>{value} is no {kind}</source>
        <translation>{value} ist kein Wert der Art {kind}</translation>
    </message>
    <message>
        <source>{warm_up_wh} Wh + {processing_w} W × {rest_h} h = {kwh} kWh</source>
        <translation>{warm_up_wh} Wh + {processing_w} W × {rest_h} h = {kwh} kWh</translation>
    </message>
    <message>
        <source>{warm_up} min of warm-up + {windows} min of windows passed over = {whole} min</source>
        <translation>{warm_up} min Aufheizen + {windows} min übergangene Fenster = {whole} min</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws about as much ({watts} against {other_watts} W) for a shorter time ({times})</source>
        <translation>{warm}; danach zieht {machine} etwa gleich viel ({watts} gegen {other_watts} W), aber kürzer ({times})</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws about as much ({watts} against {other_watts} W) for about as long ({times})</source>
        <translation>{warm}; danach zieht {machine} etwa gleich viel ({watts} gegen {other_watts} W), etwa gleich lang ({times})</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws about as much ({watts} against {other_watts} W) for longer ({times})</source>
        <translation>{warm}; danach zieht {machine} etwa gleich viel ({watts} gegen {other_watts} W), aber länger ({times})</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws less ({watts} against {other_watts} W) and for a shorter time ({times})</source>
        <translation>{warm}; danach zieht {machine} weniger ({watts} gegen {other_watts} W), und das kürzer ({times})</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws less ({watts} against {other_watts} W) but for longer ({times})</source>
        <translation>{warm}; danach zieht {machine} weniger ({watts} gegen {other_watts} W), aber länger ({times})</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws less ({watts} against {other_watts} W) for about as long ({times})</source>
        <translation>{warm}; danach zieht {machine} weniger ({watts} gegen {other_watts} W), etwa gleich lang ({times})</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws more ({watts} against {other_watts} W) and for longer ({times})</source>
        <translation>{warm}; danach zieht {machine} mehr ({watts} gegen {other_watts} W), und das länger ({times})</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws more ({watts} against {other_watts} W) but for a shorter time ({times})</source>
        <translation>{warm}; danach zieht {machine} mehr ({watts} gegen {other_watts} W), aber kürzer ({times})</translation>
    </message>
    <message>
        <source>{warm}; {machine} then draws more ({watts} against {other_watts} W) for about as long ({times})</source>
        <translation>{warm}; danach zieht {machine} mehr ({watts} gegen {other_watts} W), etwa gleich lang ({times})</translation>
    </message>
    <message>
        <source>{watts} (lowest)</source>
        <translation>{watts} (niedrigste)</translation>
    </message>
    <message>
        <source>{watts} W less</source>
        <translation>{watts} W weniger</translation>
    </message>
    <message>
        <source>{watts} W more</source>
        <translation>{watts} W mehr</translation>
    </message>
    <message>
        <source>{watts} against {other_watts}; {apart} Wh apart</source>
        <translation>{watts} gegen {other_watts}; {apart} Wh auseinander</translation>
    </message>
    <message>
        <source>{watts} without the meter&apos;s gain</source>
        <translation>{watts} ohne den Verstärkungsfehler des Messgeräts</translation>
    </message>
    <message>
        <source>{what} (found)</source>
        <translation>{what} (gefunden)</translation>
    </message>
    <message>
        <source>{what} (set by you)</source>
        <translation>{what} (selbst gesetzt)</translation>
    </message>
    <message>
        <source>{what}, show</source>
        <translation>{what}, zeigen</translation>
    </message>
    <message>
        <source>{what}, show which</source>
        <translation>{what}, welche zeigen</translation>
    </message>
    <message>
        <source>{what}, shown</source>
        <translation>{what}, gezeigt</translation>
    </message>
    <message>
        <source>{what}, then Enter</source>
        <translation>{what}, dann Eingabetaste</translation>
    </message>
    <message>
        <source>{what}; Enter adds it</source>
        <translation>{what}; Eingabetaste fügt hinzu</translation>
    </message>
    <message>
        <source>{who}: bed share</source>
        <translation>{who}: Heizbettanteil</translation>
    </message>
    <message>
        <source>{who}: duration</source>
        <translation>{who}: Dauer</translation>
    </message>
    <message>
        <source>{who}: energy</source>
        <translation>{who}: Energie</translation>
    </message>
    <message>
        <source>{who}: energy per part</source>
        <translation>{who}: Energie je Teil</translation>
    </message>
    <message>
        <source>{who}: mean power</source>
        <translation>{who}: mittlere Leistung</translation>
    </message>
    <message>
        <source>{who}: parts per kWh</source>
        <translation>{who}: Teile je kWh</translation>
    </message>
    <message>
        <source>{who}: {what} within {span}</source>
        <translation>{who}: {what}, {span}</translation>
    </message>
    <message>
        <source>{why} Nothing was pasted.</source>
        <translation>{why} Nichts wurde eingefügt.</translation>
    </message>
    <message>
        <source>{why}; but {sign} in {columns}, where every fraction has one</source>
        <translation>{why}; aber {sign} in {columns}, wo jede Nachkommastelle so steht</translation>
    </message>
    <message>
        <source>{wh} Wh</source>
        <translation>{wh} Wh</translation>
    </message>
    <message>
        <source>{without_trace:typed reading|typed readings} without a trace cannot be lined up.</source>
        <translation>{without_trace:eingetippte Ablesung|eingetippte Ablesungen} ohne Verlauf {without_trace:~lässt|lassen} sich nicht ausrichten.</translation>
    </message>
    <message>
        <source>{words} and {last}</source>
        <translation>{words} und {last}</translation>
    </message>
    <message>
        <source>{words} or {last}</source>
        <translation>{words} oder {last}</translation>
    </message>
    <message>
        <source>{words}: {points} percentage points</source>
        <translation>{words}: {points} Prozentpunkte</translation>
    </message>
    <message>
        <source>{word}: {label}</source>
        <translation>{word}: {label}</translation>
    </message>
    <message>
        <source>| What | Standard uncertainty | Share of the variance | Shared with |</source>
        <translation>| Was | Standardunsicherheit | Anteil an der Varianz | Gemeinsam mit |</translation>
    </message>
    <message>
        <source>°C, your limit</source>
        <translation>°C, eigene Grenze</translation>
    </message>
    <message>
        <source>± are half-widths of rectangular distributions. What nobody stated is taken as ±1 % of reading and ±0.3 W (common practice, no source).</source>
        <translation>± sind halbe Breiten von Rechteckverteilungen. Was niemand angegeben hat, gilt als ±1 % der Anzeige und ±0,3 W (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>± at any load [W]</source>
        <translation>± bei jeder Last [W]</translation>
    </message>
    <message>
        <source>± is half the 95 % interval, from the spread between runs and what the meters leave open. Parts per kWh is 1000 Wh divided by the energy per part. Bed share is the heated bed’s part of the energy.</source>
        <translation>± ist das halbe 95-%-Intervall aus der Streuung zwischen den Läufen und dem, was die Messgeräte offen lassen. Teile je kWh sind 1000 Wh geteilt durch die Energie je Teil. Der Heizbettanteil ist der Teil der Energie, den das Heizbett braucht.</translation>
    </message>
    <message>
        <source>± is half the 95 % interval.</source>
        <translation>± ist das halbe 95-%-Intervall.</translation>
    </message>
    <message>
        <source>± is half the 95 % interval; of one run it holds what the meter leaves open, not the spread.</source>
        <translation>± ist das halbe 95-%-Intervall; bei nur einem Lauf enthält es, was das Messgerät offen lässt, nicht die Streuung.</translation>
    </message>
    <message>
        <source>± is half the 95 % interval; the steps&apos; own is added to that of the measured value.</source>
        <translation>± ist das halbe 95-%-Intervall; das der Schritte ist zu dem des gemessenen Werts addiert.</translation>
    </message>
    <message>
        <source>± of reading [%]</source>
        <translation>± der Anzeige [%]</translation>
    </message>
    <message>
        <source>± √({own}² + {spread}²) = ± {whole} % (halves of 95 % intervals: each run&apos;s own, and Student&apos;s t of the spread)</source>
        <translation>± √({own}² + {spread}²) = ± {whole} % (halbe 95-%-Intervalle: das jedes Laufs selbst und Students t der Streuung)</translation>
    </message>
    <message>
        <source>±{gain_percent:g} % of reading</source>
        <translation>±{gain_percent:g} % der Anzeige</translation>
    </message>
    <message>
        <source>±{offset_w:g} W</source>
        <translation>±{offset_w:g} W</translation>
    </message>
    <message>
        <source>±{percents} % of reading and ±{watts} W, assumed: nobody stated it.</source>
        <translation>±{percents} % der Anzeige und ±{watts} W, angenommen: Niemand hat es angegeben.</translation>
    </message>
    <message>
        <source>±{percents} % of reading and ±{watts} W, stated.</source>
        <translation>±{percents} % der Anzeige und ±{watts} W, angegeben.</translation>
    </message>
    <message>
        <source>“Lowest”: the low end of standby, where no rest lasts a quarter of an hour.</source>
        <translation>„Niedrigste“: das untere Ende der Bereitschaft, wo keine Pause eine Viertelstunde dauert.</translation>
    </message>
    <message>
        <source>“{name}” is there twice.</source>
        <translation>„{name}“ ist zweimal da.</translation>
    </message>
    <message>
        <source>“{name}” would say the same as the column “{other}”: write into that one.</source>
        <translation>„{name}“ würde dasselbe sagen wie die Spalte „{other}“: in diese schreiben.</translation>
    </message>
    <message>
        <source>“{name}”: no machine is called so, so nothing was pasted.</source>
        <translation>„{name}“: Keine Maschine heißt so, daher wurde nichts eingefügt.</translation>
    </message>
    <message>
        <source>“{name}”: two machines are called so, so nothing was pasted.</source>
        <translation>„{name}“: Zwei Maschinen heißen so, daher wurde nichts eingefügt.</translation>
    </message>
    <message>
        <source>“{text}” cannot be used: write a number from {low} to {high}.</source>
        <translation>„{text}“ ist nicht brauchbar: eine Zahl von {low} bis {high} eintragen.</translation>
    </message>
    <message>
        <source>“{text}” does not say what feeds the bed: write {words}, or nothing.</source>
        <translation>„{text}“ sagt nicht, woraus das Heizbett gespeist wird: {words} oder nichts schreiben.</translation>
    </message>
    <message>
        <source>“{text}” is neither yes nor no: write yes, no, or nothing.</source>
        <translation>„{text}“ ist weder ja noch nein: ja, nein oder nichts schreiben.</translation>
    </message>
    <message>
        <source>“{text}” is no area of a bed: write a number above 0, or nothing.</source>
        <translation>„{text}“ ist keine Fläche eines Heizbetts: eine Zahl über 0 oder nichts schreiben.</translation>
    </message>
    <message>
        <source>“{text}” is no number: write one such as {like}, or nothing.</source>
        <translation>„{text}“ ist keine Zahl: eine wie {like} oder nichts schreiben.</translation>
    </message>
    <message>
        <source>“{wrong}” is no time of day: write it as 22:00.</source>
        <translation>„{wrong}“ ist keine Uhrzeit: Schreibweise wie 22:00.</translation>
    </message>
    <message>
        <source>… {values} more</source>
        <translation>… {values} weitere</translation>
    </message>
    <message>
        <source>{count:row was|rows were} out of order in time and {count:~was|were} sorted in.</source>
        <translation>{count:Zeile war|Zeilen waren} zeitlich nicht in der Reihenfolge und {count:~wurde|wurden} eingeordnet.</translation>
    </message>
    <message>
        <source>The time after the warm-up is cut into windows; the watts are steady from the first window on from which no window stands out and the halves of the rest have one mean.</source>
        <translation>Die Zeit nach dem Aufheizen wird in Fenster geteilt; die Leistung ist gleichmäßig vom ersten Fenster an, ab dem keines heraussticht und die Hälften des Rests ein Mittel haben.</translation>
    </message>
    <message>
        <source>The warm-up ends where the heater first lets go.</source>
        <translation>Das Aufheizen endet, wo die Heizung zum ersten Mal nachlässt.</translation>
    </message>
    <message>
        <source>both ends of the rise were logged</source>
        <translation>beide Enden des Anstiegs wurden aufgezeichnet</translation>
    </message>
    <message>
        <source>both machines as far as they share a meter</source>
        <translation>beide Maschinen, soweit sie ein Messgerät teilen</translation>
    </message>
    <message>
        <source>by 1 % of the run</source>
        <translation>um 1 % des Laufs</translation>
    </message>
    <message>
        <source>by the counter: {energy} Wh</source>
        <translation>nach dem Zähler: {energy} Wh</translation>
    </message>
    <message>
        <source>by the power column: {energy} Wh</source>
        <translation>nach der Leistungsspalte: {energy} Wh</translation>
    </message>
    <message>
        <source>by the runs so far: {difference}</source>
        <translation>durch die bisherigen Läufe: {difference}</translation>
    </message>
    <message>
        <source>cooler: {first} W × {before} h + nothing for {cooling} + {later} W × {after} h = {energy} Wh</source>
        <translation>kühler: {first} W × {before} h + nichts für {cooling} + {later} W × {after} h = {energy} Wh</translation>
    </message>
    <message>
        <source>every machine measured with {name}</source>
        <translation>jede mit {name} gemessene Maschine</translation>
    </message>
    <message>
        <source>from {start} s to {end} s of the log = {time} s</source>
        <translation>von {start} s bis {end} s des Logs = {time} s</translation>
    </message>
    <message>
        <source>gains and offsets of the meters as planned</source>
        <translation>Verstärkungen und Nullpunktfehler der Messgeräte wie geplant</translation>
    </message>
    <message>
        <source>half hour against the full hour</source>
        <translation>halbe Stunde gegen die ganze Stunde</translation>
    </message>
    <message>
        <source>heat capacity</source>
        <translation>Wärmekapazität</translation>
    </message>
    <message>
        <source>held: {watts} W × {hours} h = {energy} Wh</source>
        <translation>gehalten: {watts} W × {hours} h = {energy} Wh</translation>
    </message>
    <message>
        <source>hidden by the meters: {planned} as planned, {apart} with a meter for each, {together} with one for both</source>
        <translation>von den Messgeräten verdeckt: {planned} wie geplant, {apart} mit je einem Messgerät, {together} mit einem für beide</translation>
    </message>
    <message>
        <source>how its levels scatter</source>
        <translation>wie seine Leistungen streuen</translation>
    </message>
    <message>
        <source>how its windows scatter</source>
        <translation>wie seine Fenster streuen</translation>
    </message>
    <message>
        <source>how long the bed cools without heat is worked out from its heat capacity</source>
        <translation>wie lange das Heizbett ohne Heizen abkühlt, wird aus seiner Wärmekapazität berechnet</translation>
    </message>
    <message>
        <source>how the loads&apos; power scatters</source>
        <translation>wie die Leistung der Verbraucher streut</translation>
    </message>
    <message>
        <source>how the loss grows from nothing to the held watts is told by the plate law alone</source>
        <translation>wie der Verlust von nichts bis zur gehaltenen Leistung wächst, sagt allein das Plattengesetz</translation>
    </message>
    <message>
        <source>how the power scatters, and the display&apos;s step</source>
        <translation>wie die Leistung streut, und die Stufe der Anzeige</translation>
    </message>
    <message>
        <source>how the ratio scatters over eighths of the settled part</source>
        <translation>wie das Verhältnis über Achtel des gleichmäßigen Teils streut</translation>
    </message>
    <message>
        <source>its first half alone: {energy} Wh</source>
        <translation>seine erste Hälfte allein: {energy} Wh</translation>
    </message>
    <message>
        <source>its gain and its offset, which move all its readings alike</source>
        <translation>seine Verstärkung und sein Nullpunktfehler, die alle seine Messwerte gleich bewegen</translation>
    </message>
    <message>
        <source>learnt level = {power} W</source>
        <translation>gelernte Leistungsstufe = {power} W</translation>
    </message>
    <message>
        <source>level after</source>
        <translation>Leistung danach</translation>
    </message>
    <message>
        <source>level before</source>
        <translation>Leistung davor</translation>
    </message>
    <message>
        <source>levels</source>
        <translation>Leistungen</translation>
    </message>
    <message>
        <source>loss while it warms</source>
        <translation>Verlust beim Aufheizen</translation>
    </message>
    <message>
        <source>mean of the mains group</source>
        <translation>Mittel der Gruppe am Netz</translation>
    </message>
    <message>
        <source>mean of the other group</source>
        <translation>Mittel der anderen Gruppe</translation>
    </message>
    <message>
        <source>mean of what counts of them = {power} W</source>
        <translation>Mittel derer, die zählen = {power} W</translation>
    </message>
    <message>
        <source>mean of {runs:run|runs} = {watts} W</source>
        <translation>Mittel aus {runs:Lauf|Läufen} = {watts} W</translation>
    </message>
    <message>
        <source>mean of {runs:run|runs}: {energy} Wh in {time}</source>
        <translation>Mittel aus {runs:Lauf|Läufen}: {energy} Wh in {time}</translation>
    </message>
    <message>
        <source>mean power of the settled part, by windows of {window}: {windows} W</source>
        <translation>mittlere Leistung des gleichmäßigen Teils, nach Fenstern von {window}: {windows} W</translation>
    </message>
    <message>
        <source>means of the windows: {windows} W</source>
        <translation>Mittel der Fenster: {windows} W</translation>
    </message>
    <message>
        <source>measured with {name}</source>
        <translation>gemessen mit {name}</translation>
    </message>
    <message>
        <source>meter {name}</source>
        <translation>Messgerät {name}</translation>
    </message>
    <message>
        <source>meters</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>no number of runs shows it</source>
        <translation>keine Zahl von Läufen zeigt es</translation>
    </message>
    <message>
        <source>no number of runs shows {wanted}</source>
        <translation>keine Zahl von Läufen zeigt {wanted}</translation>
    </message>
    <message>
        <source>no two change places</source>
        <translation>keine zwei tauschen die Plätze</translation>
    </message>
    <message>
        <source>note the bed&apos;s temperature of each run</source>
        <translation>die Heizbetttemperatur jedes Laufs notieren</translation>
    </message>
    <message>
        <source>of a year&apos;s standby: {share} × {kwh} kWh = {saved} kWh</source>
        <translation>von der Bereitschaft eines Jahres: {share} × {kwh} kWh = {saved} kWh</translation>
    </message>
    <message>
        <source>of machines on one meter it adds up in full</source>
        <translation>bei Maschinen an einem Messgerät addiert sie sich voll</translation>
    </message>
    <message>
        <source>readings of a display</source>
        <translation>Ablesungen einer Anzeige</translation>
    </message>
    <message>
        <source>rise of temperature</source>
        <translation>Temperaturanstieg</translation>
    </message>
    <message>
        <source>rows of the warm-up</source>
        <translation>Zeilen des Aufheizens</translation>
    </message>
    <message>
        <source>runs of each</source>
        <translation>Läufe von jeder</translation>
    </message>
    <message>
        <source>scatter</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>scatter from run to run, over the root of the runs so far and planned</source>
        <translation>Streuung von Lauf zu Lauf, geteilt durch die Wurzel der bisherigen und geplanten Läufe</translation>
    </message>
    <message>
        <source>scatter, as you stated it: {spread}</source>
        <translation>Streuung, wie angegeben: {spread}</translation>
    </message>
    <message>
        <source>scatter, assumed: {spread}</source>
        <translation>Streuung, angenommen: {spread}</translation>
    </message>
    <message>
        <source>share of the run</source>
        <translation>Anteil am Lauf</translation>
    </message>
    <message>
        <source>smallest difference shown: {each}</source>
        <translation>kleinster gezeigter Unterschied: {each}</translation>
    </message>
    <message>
        <source>steady watts</source>
        <translation>gleichmäßige Leistung</translation>
    </message>
    <message>
        <source>stretch {place}</source>
        <translation>Abschnitt {place}</translation>
    </message>
    <message>
        <source>switched off after {minutes} min idle, weighted by their years: {shares}; together {share}</source>
        <translation>ausgeschaltet nach {minutes} min Leerlauf, gewichtet mit ihren Jahren: {shares}; zusammen {share}</translation>
    </message>
    <message>
        <source>the point is gone</source>
        <translation>der Punkt ist weg</translation>
    </message>
    <message>
        <source>the rise is taken from the room&apos;s to the held temperature</source>
        <translation>der Anstieg wird von der Raumtemperatur bis zur gehaltenen genommen</translation>
    </message>
    <message>
        <source>time read</source>
        <translation>ausgewertete Zeit</translation>
    </message>
    <message>
        <source>time that the bed cools</source>
        <translation>Abkühlzeit des Heizbetts</translation>
    </message>
    <message>
        <source>together: {energy} kWh</source>
        <translation>zusammen: {energy} kWh</translation>
    </message>
    <message>
        <source>warm-up time</source>
        <translation>Aufheizzeit</translation>
    </message>
    <message>
        <source>watts held, {machine}</source>
        <translation>gehaltene Leistung, {machine}</translation>
    </message>
    <message>
        <source>what it leaves of each point: {rest} W</source>
        <translation>was sie von jedem Punkt übrig lässt: {rest} W</translation>
    </message>
    <message>
        <source>what its holds and its meter leave open</source>
        <translation>was seine Halteversuche und sein Messgerät offen lassen</translation>
    </message>
    <message>
        <source>what its readings leave open</source>
        <translation>was seine Messwerte offen lassen</translation>
    </message>
    <message>
        <source>what its runs and their meter leave open</source>
        <translation>was ihre Läufe und deren Messgerät offen lassen</translation>
    </message>
    <message>
        <source>what makes the print&apos;s energy unsure; what you stated is exact</source>
        <translation>was die Energie des Drucks unsicher macht; die eigenen Angaben gelten als genau</translation>
    </message>
    <message>
        <source>what the measurements leave open, or how beds of one kind differ, whichever is more</source>
        <translation>was die Messungen offen lassen oder wie sich Heizbetten einer Art unterscheiden, je nachdem, was mehr ist</translation>
    </message>
    <message>
        <source>with those of the plan: {difference}</source>
        <translation>mit denen des Plans: {difference}</translation>
    </message>
    <message>
        <source>{all} Wh at the plug − {beside} W × {time} s beside the bed = {bed} Wh</source>
        <translation>{all} Wh an der Steckdose − {beside} W × {time} s neben dem Heizbett = {bed} Wh</translation>
    </message>
    <message>
        <source>{count:more run|more runs} of each</source>
        <translation>{count:weiterer Lauf|weitere Läufe} von jeder</translation>
    </message>
    <message>
        <source>{count:more run|more runs} of each for {wanted}</source>
        <translation>{count:weiterer Lauf|weitere Läufe} von jeder für {wanted}</translation>
    </message>
    <message>
        <source>{count:pair|pairs} of machines</source>
        <translation>{count:Maschinenpaar|Maschinenpaare}</translation>
    </message>
    <message>
        <source>{count:rest|rests}, {whole} together, {mean} each on average; the longest {longest}</source>
        <translation>{count:Pause|Pausen}, zusammen {whole}, im Mittel je {mean}; die längste {longest}</translation>
    </message>
    <message>
        <source>{count:row|rows} could not be used, the first at line {first}. The Reading panel lists {count:~it|them}.</source>
        <translation>{count:Zeile war|Zeilen waren} nicht brauchbar, die erste in Zeile {first}. Unter „Einlesen“ {count:~ist sie|sind sie} aufgeführt.</translation>
    </message>
    <message>
        <source>{count:run counts|runs count}</source>
        <translation>{count:Lauf zählt|Läufe zählen}</translation>
    </message>
    <message>
        <source>{count:run|runs}</source>
        <translation>{count:Lauf|Läufe}</translation>
    </message>
    <message>
        <source>{count:run|runs} a machine</source>
        <translation>{count:Lauf|Läufe} je Maschine</translation>
    </message>
    <message>
        <source>{count:run|runs} each would show {percents} %</source>
        <translation>je {count:Lauf|Läufe} {count:~würde|würden} {percents} % nachweisen</translation>
    </message>
    <message>
        <source>{count:run|runs} in the order of seed {seed}.</source>
        <translation>{count:Lauf|Läufe} in der Reihenfolge zum Startwert {seed}.</translation>
    </message>
    <message>
        <source>{count:run|runs} left out by hand</source>
        <translation>{count:Lauf|Läufe} von Hand ausgelassen</translation>
    </message>
    <message>
        <source>{count:run|runs} of each of {machine} and {other}</source>
        <translation>je {count:Lauf|Läufe} von {machine} und {other}</translation>
    </message>
    <message>
        <source>{count:run|runs} of each: {difference}</source>
        <translation>{count:Lauf|Läufe} von jeder: {difference}</translation>
    </message>
    <message>
        <source>{count:run|runs} of each: {share}</source>
        <translation>je {count:Lauf|Läufe}: {share}</translation>
    </message>
    <message>
        <source>{count:run|runs} of the {part} typed in</source>
        <translation>{count:Lauf|Läufe} ({part}) eingetippt</translation>
    </message>
    <message>
        <source>{count:same-load check|same-load checks}</source>
        <translation>{count:Prüfung an gleicher Last|Prüfungen an gleicher Last}</translation>
    </message>
    <message>
        <source>{count:stamp has|stamps have} two different values; the later one was taken.</source>
        <translation>{count:Zeitstempel hat|Zeitstempel haben} zwei verschiedene Werte; der spätere wurde genommen.</translation>
    </message>
    <message>
        <source>{count:step|steps} up found on {machine}: say below which load was turned on at each.</source>
        <translation>{count:Stufe|Stufen} aufwärts an {machine} gefunden: unten angeben, welcher Verbraucher jeweils eingeschaltet wurde.</translation>
    </message>
    <message>
        <source>{count:step|steps} up without a name</source>
        <translation>{count:Stufe|Stufen} aufwärts ohne Namen</translation>
    </message>
    <message>
        <source>{count:stretch is|stretches are} something else</source>
        <translation>{count:Abschnitt ist|Abschnitte sind} etwas anderes</translation>
    </message>
    <message>
        <source>{count:stretch is|stretches are} something else: {kinds}</source>
        <translation>{count:Abschnitt ist|Abschnitte sind} etwas anderes: {kinds}</translation>
    </message>
    <message>
        <source>{count:table|tables}</source>
        <translation>{count:Tabelle|Tabellen}</translation>
    </message>
    <message>
        <source>{count:test|tests}</source>
        <translation>{count:Versuch|Versuche}</translation>
    </message>
    <message>
        <source>{count:time has|times have} two prices; the one further down counts. Remove the other.</source>
        <translation>{count:Zeitpunkt hat|Zeitpunkte haben} zwei Preise; der weiter unten zählt. Den anderen entfernen.</translation>
    </message>
    <message>
        <source>{count:zero byte was|zero bytes were} taken out, as a logger leaves them when its power fails.</source>
        <translation>{count:Nullbyte wurde|Nullbytes wurden} entfernt, wie ein Messgerät sie bei Stromausfall hinterlässt.</translation>
    </message>
    <message>
        <source>{counted} The same for all machines.</source>
        <translation>{counted} Für alle Maschinen gleich.</translation>
    </message>
    <message>
        <source>{counter} Wh by the counter, {power} Wh by the power column</source>
        <translation>{counter} Wh nach dem Zähler, {power} Wh nach der Leistungsspalte</translation>
    </message>
    <message>
        <source>{count} files continue one log and were joined: {files}.</source>
        <translation>{count} Dateien setzen ein Log fort und wurden verbunden: {files}.</translation>
    </message>
    <message>
        <source>{count} logs stand side by side in this table, each with its own time; this one is in columns {first} to {last}.</source>
        <translation>{count} Logs stehen in dieser Tabelle nebeneinander, jedes mit eigener Zeit; dieses steht in den Spalten {first} bis {last}.</translation>
    </message>
    <message>
        <source>{count} machines</source>
        <translation>{count} Maschinen</translation>
    </message>
    <message>
        <source>{count} machines cannot show a link between {measure} and {property}: even in perfect order p would be {p}.</source>
        <translation>{count} Maschinen können keinen Zusammenhang zwischen „{measure}“ und „{property}“ nachweisen: Selbst bei vollkommener Ordnung wäre p {p}.</translation>
    </message>
    <message>
        <source>{count} machines, {first} to {last}</source>
        <translation>{count} Maschinen, {first} bis {last}</translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation>{count} weitere</translation>
    </message>
    <message>
        <source>{count} of them left out</source>
        <translation>{count} davon ausgelassen</translation>
    </message>
    <message>
        <source>{count} of {all} machines show no rest of {length} to judge switching off by.</source>
        <translation>{count} von {all} Maschinen zeigen keine Pause von {length}, nach der sich das Ausschalten beurteilen ließe.</translation>
    </message>
    <message>
        <source>{count} of {orders} orders go as far: {p}</source>
        <translation>{count} von {orders} Reihenfolgen gehen so weit: {p}</translation>
    </message>
    <message>
        <source>{count} prices are missing; energy used then is not priced. Add the missing rows.</source>
        <translation>{count} Preise fehlen; Energie aus dieser Zeit wird nicht berechnet. Die fehlenden Zeilen ergänzen.</translation>
    </message>
    <message>
        <source>{count} tests of an hour: the first half hour reads from {low} to {high} than the hour.</source>
        <translation>{count} Versuche von einer Stunde: Die erste halbe Stunde ergibt von {low} bis {high} als die Stunde.</translation>
    </message>
    <message>
        <source>{count} things make {what} unfair: {points}.</source>
        <translation>{count} Dinge machen {what} unfair: {points}.</translation>
    </message>
    <message>
        <source>{count} times</source>
        <translation>{count} Mal</translation>
    </message>
    <message>
        <source>{count} unfair</source>
        <translation>{count} unfair</translation>
    </message>
    <message>
        <source>{days} d</source>
        <translation>{days} d</translation>
    </message>
    <message>
        <source>{day} {month}</source>
        <translation>{day}. {month}</translation>
    </message>
    <message>
        <source>{day} {month} {year}</source>
        <translation>{day}. {month} {year}</translation>
    </message>
    <message>
        <source>{day} {month} {year} {time}</source>
        <translation>{day}. {month} {year} {time}</translation>
    </message>
    <message>
        <source>{degrees} (log)</source>
        <translation>{degrees} (Log)</translation>
    </message>
    <message>
        <source>{degrees} (test)</source>
        <translation>{degrees} (Versuch)</translation>
    </message>
    <message>
        <source>{degrees} by the log</source>
        <translation>{degrees} laut Log</translation>
    </message>
    <message>
        <source>{degrees} of the test</source>
        <translation>{degrees} des Versuchs</translation>
    </message>
    <message>
        <source>{degrees} of {all} degrees above the room</source>
        <translation>{degrees} von {all} Grad über dem Raum</translation>
    </message>
    <message>
        <source>{encoding}: {why}</source>
        <translation>{encoding}: {why}</translation>
    </message>
    <message>
        <source>{ended} − {began} = {seconds} s</source>
        <translation>{ended} − {began} = {seconds} s</translation>
    </message>
    <message>
        <source>{ends}; not known for {rows}</source>
        <translation>{ends}; nicht bekannt für {rows}</translation>
    </message>
    <message>
        <source>{energy_wh} Wh ÷ {energy_wh_2} Wh = {found}</source>
        <translation>{energy_wh} Wh ÷ {energy_wh_2} Wh = {found}</translation>
    </message>
    <message>
        <source>{energy} Wh / 1000 × {price} = {cost}</source>
        <translation>{energy} Wh / 1000 × {price} = {cost}</translation>
    </message>
    <message>
        <source>{energy} Wh in {time} = {watts} W</source>
        <translation>{energy} Wh in {time} = {watts} W</translation>
    </message>
    <message>
        <source>{energy} Wh so far</source>
        <translation>bisher {energy} Wh</translation>
    </message>
    <message>
        <source>{energy} kWh a year</source>
        <translation>{energy} kWh im Jahr</translation>
    </message>
    <message>
        <source>{energy} kWh at {price} on average over the print = {money}</source>
        <translation>{energy} kWh zu {price} im Mittel über den Druck = {money}</translation>
    </message>
    <message>
        <source>{energy} kWh × {factor} g/kWh = {grams} g</source>
        <translation>{energy} kWh × {factor} g/kWh = {grams} g</translation>
    </message>
    <message>
        <source>{energy}, set by you</source>
        <translation>{energy}, selbst gesetzt</translation>
    </message>
    <message>
        <source>{far} of {ways} divisions lie as far apart: {p}</source>
        <translation>{far} von {ways} Aufteilungen liegen so weit auseinander: {p}</translation>
    </message>
    <message>
        <source>{file_name}, of the bed alone</source>
        <translation>{file_name}, nur vom Heizbett</translation>
    </message>
    <message>
        <source>{file} (bed alone)</source>
        <translation>{file} (nur Heizbett)</translation>
    </message>
    <message>
        <source>{file} and {others} more</source>
        <translation>{file} und {others} weitere</translation>
    </message>
    <message>
        <source>{file} is encrypted</source>
        <translation>{file} ist verschlüsselt</translation>
    </message>
    <message>
        <source>{file} is missing</source>
        <translation>{file} fehlt</translation>
    </message>
    <message>
        <source>{findings:more point|more points} in the list of fairness.</source>
        <translation>{findings:weiterer Punkt|weitere Punkte} in der Liste der Fairness.</translation>
    </message>
    <message>
        <source>{finding} Accepted then: {reason}</source>
        <translation>{finding} Damals hingenommen: {reason}</translation>
    </message>
    <message>
        <source>{finding} Accepted: {reason}</source>
        <translation>{finding} Hingenommen: {reason}</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation>{first} bis {last}</translation>
    </message>
    <message>
        <source>{group} {mean} ({count:machine|machines})</source>
        <translation>{group} {mean} ({count:Maschine|Maschinen})</translation>
    </message>
    <message>
        <source>{hours} h a year</source>
        <translation>{hours} h im Jahr</translation>
    </message>
    <message>
        <source>{key} read as {kind}</source>
        <translation>{key} gelesen als {kind}</translation>
    </message>
    <message>
        <source>{kind} has no {field}</source>
        <translation>{kind} hat kein Feld {field}</translation>
    </message>
    <message>
        <source>{kind} needs {field}</source>
        <translation>{kind} braucht das Feld {field}</translation>
    </message>
    <message>
        <source>{kind} “{text}” in {places}</source>
        <translation>{kind} „{text}“ in {places}</translation>
    </message>
    <message>
        <source>{kwh} kWh</source>
        <translation>{kwh} kWh</translation>
    </message>
    <message>
        <source>{kwh} kWh × {price} = {cost}</source>
        <translation>{kwh} kWh × {price} = {cost}</translation>
    </message>
    <message>
        <source>{label}, left out</source>
        <translation>{label}, ausgelassen</translation>
    </message>
    <message>
        <source>{later} instead of {first} °C after {after} saves {energy} in a print of {length} on {machine}: {percents} % of what its bed takes, {money}.</source>
        <translation>{later} statt {first} °C nach {after} spart {energy} in einem Druck von {length} auf {machine}: {percents} % dessen, was das Heizbett braucht, {money}.</translation>
    </message>
    <message>
        <source>{later} instead of {first} °C after {after} saves {energy} in a print of {length} on {machine}: {percents} % of what its bed takes.</source>
        <translation>{later} statt {first} °C nach {after} spart {energy} in einem Druck von {length} auf {machine}: {percents} % dessen, was das Heizbett braucht.</translation>
    </message>
    <message>
        <source>{least} to {most} runs a machine</source>
        <translation>{least} bis {most} Läufe je Maschine</translation>
    </message>
    <message>
        <source>{least} to {most} times</source>
        <translation>{least}- bis {most}-mal</translation>
    </message>
    <message>
        <source>{leaving} of {judged:run|runs} leave their band</source>
        <translation>{leaving} von {judged:Lauf|Läufen} verlassen ihr Band</translation>
    </message>
    <message>
        <source>{length} from {start}</source>
        <translation>{length} ab {start}</translation>
    </message>
    <message>
        <source>{level}, accepted ({why})</source>
        <translation>{level}, hingenommen ({why})</translation>
    </message>
    <message>
        <source>{level}. {point}, {whom}: “{why}”</source>
        <translation>{level}. {point}, {whom}: „{why}“</translation>
    </message>
    <message>
        <source>{load} ({energy} kWh a year)</source>
        <translation>{load} ({energy} kWh im Jahr)</translation>
    </message>
    <message>
        <source>{load}: {watts} W × {hours} h / 1000 = {energy} kWh</source>
        <translation>{load}: {watts} W × {hours} h / 1000 = {energy} kWh</translation>
    </message>
    <message>
        <source>{lone_mixed} of {lone} lone switchings and {cycled_mixed} of {cycled} in cycles show a value in between</source>
        <translation>{lone_mixed} von {lone} einzelnen Schaltvorgängen und {cycled_mixed} von {cycled} im Wechsel zeigen einen Zwischenwert</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>{machines} were tested {days} days apart, and the room is not known of all: note its temperature, or test in one week.</source>
        <translation>{machines} wurden im Abstand von {days} Tagen gemessen, und der Raum ist nicht von allen bekannt: seine Temperatur notieren oder in einer Woche messen.</translation>
    </message>
    <message>
        <source>{machines}: no complete run.</source>
        <translation>{machines}: kein vollständiger Lauf.</translation>
    </message>
    <message>
        <source>{machines}: no difference shown</source>
        <translation>{machines}: kein Unterschied nachgewiesen</translation>
    </message>
    <message>
        <source>{machines}: no difference shown by these runs</source>
        <translation>{machines}: kein Unterschied nachgewiesen durch diese Läufe</translation>
    </message>
    <message>
        <source>{machines}: no difference shown by {count:run|runs} each</source>
        <translation>{machines}: kein Unterschied nachgewiesen, je {count:Lauf|Läufe}</translation>
    </message>
    <message>
        <source>{machines}: one run only.</source>
        <translation>{machines}: nur ein Lauf.</translation>
    </message>
    <message>
        <source>{machines}: too few runs here to say which one is odd.</source>
        <translation>{machines}: zu wenige Läufe, um zu sagen, welcher auffällt.</translation>
    </message>
    <message>
        <source>{machine} ({runs:run|runs}): warm-up {warm_s}, {warm_wh} Wh; then {watts} W for {after_s}, {after_wh} Wh</source>
        <translation>{machine} ({runs:Lauf|Läufe}): Aufheizen {warm_s}, {warm_wh} Wh; danach {watts} W über {after_s}, {after_wh} Wh</translation>
    </message>
    <message>
        <source>{machine} alone can be compared with nothing: add another machine below.</source>
        <translation>{machine} allein lässt sich mit nichts vergleichen: unten eine weitere Maschine hinzufügen.</translation>
    </message>
    <message>
        <source>{machine} and {other}</source>
        <translation>{machine} und {other}</translation>
    </message>
    <message>
        <source>{machine} and {other} are done with warm-up after {time}</source>
        <translation>{machine} und {other} sind nach {time} mit dem Aufheizen fertig</translation>
    </message>
    <message>
        <source>{machine} and {other}: no difference shown</source>
        <translation>{machine} und {other}: kein Unterschied nachgewiesen</translation>
    </message>
    <message>
        <source>{machine} draws {watts} W for {time} ({runs}); no warm-up counts or is seen.</source>
        <translation>{machine} zieht {watts} W über {time} ({runs}); kein Aufheizen zählt oder ist zu sehen.</translation>
    </message>
    <message>
        <source>{machine} has a log too, and the row names no date: if the log holds this run, it counts twice; write the date, or take the row out.</source>
        <translation>{machine} hat auch ein Log, und die Zeile nennt kein Datum: Enthält das Log diesen Lauf, zählt er doppelt; das Datum eintragen oder die Zeile herausnehmen.</translation>
    </message>
    <message>
        <source>{machine} is done with warm-up after {time}, {other} after {other_time}</source>
        <translation>{machine} ist nach {time} mit dem Aufheizen fertig, {other} nach {other_time}</translation>
    </message>
    <message>
        <source>{machine} is done with warm-up after {warm_time} and {warm} Wh; from then on it draws {watts} W for {time} ({runs}).</source>
        <translation>{machine} ist nach {warm_time} und {warm} Wh mit dem Aufheizen fertig und zieht von da an {watts} W über {time} ({runs}).</translation>
    </message>
    <message>
        <source>{machine} makes the {part} for {energy} Wh ({runs}).</source>
        <translation>{machine} fertigt das Teil ({part}) mit {energy} Wh ({runs}).</translation>
    </message>
    <message>
        <source>{machine} makes the {part} for {energy} Wh, {less} less than {other} (95 % interval {low} to {high}).</source>
        <translation>{machine} fertigt das Teil ({part}) mit {energy} Wh, {less} weniger als {other} (95-%-Intervall {low} bis {high}).</translation>
    </message>
    <message>
        <source>{machine} makes the {part} for {energy} Wh, {other} for {more} Wh</source>
        <translation>{machine} fertigt das Teil ({part}) mit {energy} Wh, {other} mit {more} Wh</translation>
    </message>
    <message>
        <source>{machine} makes the {part} for {energy} Wh, {parts} parts per kWh ({runs}).</source>
        <translation>{machine} fertigt das Teil ({part}) mit {energy} Wh, {parts} Teile je kWh ({runs}).</translation>
    </message>
    <message>
        <source>{machine} took {difference} more by {high} than by {low}, and the accuracy of both allows {allowed}; hold one steady load against each meter, and measure all machines with one.</source>
        <translation>{machine} brauchte nach {high} {difference} mehr als nach {low}, und die Genauigkeit beider erlaubt {allowed}; eine gleichmäßige Last an jedes Messgerät halten und alle Maschinen mit einem messen.</translation>
    </message>
    <message>
        <source>{machine} {saved} of {energy} kWh</source>
        <translation>{machine} {saved} von {energy} kWh</translation>
    </message>
    <message>
        <source>{machine} {value} in {time}</source>
        <translation>{machine} {value} in {time}</translation>
    </message>
    <message>
        <source>{machine}, hold test</source>
        <translation>{machine}, Halteversuch</translation>
    </message>
    <message>
        <source>{machine}, mean of {runs:run|runs}</source>
        <translation>{machine}, Mittel aus {runs:Lauf|Läufen}</translation>
    </message>
    <message>
        <source>{machine}, run {place}</source>
        <translation>{machine}, Lauf {place}</translation>
    </message>
    <message>
        <source>{machine}, step {place} at {minutes} min</source>
        <translation>{machine}, Stufe {place} bei {minutes} min</translation>
    </message>
    <message>
        <source>{machine}, {bed} in a room of {room}</source>
        <translation>{machine}, {bed} in einem Raum von {room}</translation>
    </message>
    <message>
        <source>{machine}, {column}: {why} Nothing was pasted.</source>
        <translation>{machine}, {column}: {why} Nichts wurde eingefügt.</translation>
    </message>
    <message>
        <source>{machine}, {run} (not counted)</source>
        <translation>{machine}, {run} (nicht gezählt)</translation>
    </message>
    <message>
        <source>{machine}, {run} ({why})</source>
        <translation>{machine}, {run} ({why})</translation>
    </message>
    <message>
        <source>{machine}, {run}: processing took {percent} less time than in its other runs; check that the part was finished and made with the same settings.</source>
        <translation>{machine}, {run}: Die Fertigung dauerte {percent} kürzer als in den anderen Läufen; prüfen, ob das Teil fertig wurde und mit denselben Einstellungen gefertigt ist.</translation>
    </message>
    <message>
        <source>{machine}, {run}: processing took {percent} longer than in its other runs, as after a pause; leave it out if it was interrupted.</source>
        <translation>{machine}, {run}: Die Fertigung dauerte {percent} länger als in den anderen Läufen, wie nach einer Pause; auslassen, falls unterbrochen.</translation>
    </message>
    <message>
        <source>{machine}, {run}: the warm-up took {seconds} against {usual} in its other runs, as after a warm start; let the bed cool to room temperature before each run, or leave this one out.</source>
        <translation>{machine}, {run}: Das Aufheizen dauerte {seconds} gegen {usual} in den anderen Läufen, wie nach einem Warmstart; das Heizbett vor jedem Lauf auf Raumtemperatur abkühlen lassen oder diesen auslassen.</translation>
    </message>
    <message>
        <source>{machine}, {run}: the {place} was at {own:.0f} °C against {usual:.0f} °C in its other runs; leave it out, or make it again.</source>
        <translation>{machine}, {run}: {place} bei {own:.0f} °C gegen {usual:.0f} °C in den anderen Läufen; auslassen oder noch einmal machen.</translation>
    </message>
    <message>
        <source>{machine}, {run}: {energy} Wh lies far from its other runs (Grubbs&apos; test: {statistic:.2f}, limit {limit:.2f}); look for a cause before leaving it out.</source>
        <translation>{machine}, {run}: {energy} Wh liegen weit von den anderen Läufen (Grubbs-Test: {statistic:.2f}, Grenze {limit:.2f}); vor dem Auslassen nach einer Ursache suchen.</translation>
    </message>
    <message>
        <source>{machine}, {run}: {seconds} from the first heating to the first motion against {usual} in its other run; one was a warm start or the other soaked the bed: start each run alike.</source>
        <translation>{machine}, {run}: {seconds} vom ersten Heizen bis zur ersten Bewegung gegen {usual} im anderen Lauf; einer war ein Warmstart oder der andere wärmte das Heizbett durch: jeden Lauf gleich beginnen.</translation>
    </message>
    <message>
        <source>{machine}, {run}: {seconds} from the first heating to the first motion against {usual} in its other runs, as after a soak of the bed; start each run alike, or compare processing only.</source>
        <translation>{machine}, {run}: {seconds} vom ersten Heizen bis zur ersten Bewegung gegen {usual} in den anderen Läufen, wie nach einem Durchwärmen des Heizbetts; jeden Lauf gleich beginnen oder nur die Fertigung vergleichen.</translation>
    </message>
    <message>
        <source>{machine}, {run}: {share} of its time lies in gaps of the log; its energy there is known only within wide limits; leave it out, or use a meter with a counter.</source>
        <translation>{machine}, {run}: {share} der Zeit liegen in Lücken des Logs; die Energie dort ist nur in weiten Grenzen bekannt; auslassen oder ein Messgerät mit Zähler verwenden.</translation>
    </message>
    <message>
        <source>{machine}, {run}: {why}.</source>
        <translation>{machine}, {run}: {why}.</translation>
    </message>
    <message>
        <source>{machine}: a bed held at {bed_c:.0f} °C with {value:.0f} W is {times:.1f} times the heat that a plate of {area:.1f} dm² must lose ({floor:.0f} W by {method}), outside the usual {low:.1f} to {high:.1f}; check the bed&apos;s area, the temperatures, and what else was on.</source>
        <translation>{machine}: Ein Heizbett, das mit {value:.0f} W auf {bed_c:.0f} °C gehalten wird, nimmt das {times:.1f}-Fache der Wärme auf, die eine Platte von {area:.1f} dm² verlieren muss ({floor:.0f} W nach: {method}), außerhalb der üblichen {low:.1f} bis {high:.1f}; die Fläche des Heizbetts, die Temperaturen und was sonst eingeschaltet war prüfen.</translation>
    </message>
    <message>
        <source>{machine}: a bed share of {value:.0f} % is outside the usual {low:.0f} to {high:.0f} %; check what was taken for the bed.</source>
        <translation>{machine}: Ein Heizbettanteil von {value:.0f} % liegt außerhalb der üblichen {low:.0f} bis {high:.0f} %; prüfen, was für das Heizbett genommen wurde.</translation>
    </message>
    <message>
        <source>{machine}: a cooler bed</source>
        <translation>{machine}: ein kühleres Heizbett</translation>
    </message>
    <message>
        <source>{machine}: bed {energy} Wh ({how})</source>
        <translation>{machine}: Heizbett {energy} Wh ({how})</translation>
    </message>
    <message>
        <source>{machine}: half-width of {energy} Wh by its samples</source>
        <translation>{machine}: halbe Breite von {energy} Wh durch ihre Abtastwerte</translation>
    </message>
    <message>
        <source>{machine}: its runs took from {short} to {long}; the same part made with the same settings takes nearly the same time, so look for a setting that differs.</source>
        <translation>{machine}: Die Läufe dauerten {short} bis {long}; dasselbe Teil mit denselben Einstellungen dauert fast gleich lang, also nach einer abweichenden Einstellung suchen.</translation>
    </message>
    <message>
        <source>{machine}: its runs took {way} and {way} in the order of making, {rise} from the first to the last (by a line through them, p = {p:.3f}); look for what changed, and make the runs again in a shuffled order.</source>
        <translation>{machine}: Die Läufe brauchten in der Reihenfolge der Fertigung immer {way}, {rise} vom ersten bis zum letzten (nach einer Geraden durch sie, p = {p:.3f}); suchen, was sich änderte, und die Läufe in gemischter Reihenfolge noch einmal machen.</translation>
    </message>
    <message>
        <source>{machine}: like for like in steps</source>
        <translation>{machine}: Umrechnung in Schritten</translation>
    </message>
    <message>
        <source>{machine}: no complete run of the part was found, so it is not in the comparison.</source>
        <translation>{machine}: Kein vollständiger Lauf des Teils wurde gefunden, daher nicht im Vergleich.</translation>
    </message>
    <message>
        <source>{machine}: one run only, so the spread from run to run is not known; make at least two more.</source>
        <translation>{machine}: nur ein Lauf, daher ist die Streuung von Lauf zu Lauf nicht bekannt; mindestens zwei weitere machen.</translation>
    </message>
    <message>
        <source>{machine}: switch-on test</source>
        <translation>{machine}: Einschaltversuch</translation>
    </message>
    <message>
        <source>{machine}: switch-on test {place}</source>
        <translation>{machine}: Einschaltversuch {place}</translation>
    </message>
    <message>
        <source>{machine}: temperature of the bed</source>
        <translation>{machine}: Temperatur des Heizbetts</translation>
    </message>
    <message>
        <source>{machine}: temperature of the bed at the first layer</source>
        <translation>{machine}: Temperatur des Heizbetts bei der ersten Schicht</translation>
    </message>
    <message>
        <source>{machine}: temperature of the nozzle</source>
        <translation>{machine}: Temperatur der Düse</translation>
    </message>
    <message>
        <source>{machine}: temperature of the nozzle at the first layer</source>
        <translation>{machine}: Temperatur der Düse bei der ersten Schicht</translation>
    </message>
    <message>
        <source>{machine}: temperature of the room</source>
        <translation>{machine}: Raumtemperatur</translation>
    </message>
    <message>
        <source>{machine}: the edges of {runs} were set by hand and the others by the program; use one rule for all, or hand them back.</source>
        <translation>{machine}: Die Ränder ({runs}) wurden von Hand gesetzt, die anderen vom Programm; eine Regel für alle verwenden oder sie zurückgeben.</translation>
    </message>
    <message>
        <source>{machine}: the first half hour reads {half} than the first hour, and that {hour} than settled.</source>
        <translation>{machine}: Die erste halbe Stunde ergibt {half} als die erste Stunde, und diese {hour} als eingeschwungen.</translation>
    </message>
    <message>
        <source>{machine}: the meter shows steps of {step:.3g} W, {share} of its mean power; a meter with finer steps would say more.</source>
        <translation>{machine}: Das Messgerät zeigt Stufen von {step:.3g} W, {share} der mittleren Leistung; ein Messgerät mit feineren Stufen würde mehr sagen.</translation>
    </message>
    <message>
        <source>{machine}: two runs only, so its interval is wide; a third narrows it most.</source>
        <translation>{machine}: nur zwei Läufe, daher ist das Intervall weit; ein dritter verengt es am meisten.</translation>
    </message>
    <message>
        <source>{machine}: warm-up {energy} Wh</source>
        <translation>{machine}: Aufheizen {energy} Wh</translation>
    </message>
    <message>
        <source>{machine}: warm-up {energy} Wh from {own} to {bed} °C</source>
        <translation>{machine}: Aufheizen {energy} Wh von {own} bis {bed} °C</translation>
    </message>
    <message>
        <source>{machine}: watts by temperature</source>
        <translation>{machine}: Leistung nach Temperatur</translation>
    </message>
    <message>
        <source>{machine}: {count:run|runs}</source>
        <translation>{machine}: {count:Lauf|Läufe}</translation>
    </message>
    <message>
        <source>{machine}: {energy} Wh are not known to be the bed&apos;s</source>
        <translation>{machine}: {energy} Wh sind nicht als die des Heizbetts bekannt</translation>
    </message>
    <message>
        <source>{machine}: {factor} times that of {energy} Wh</source>
        <translation>{machine}: das {factor}-Fache davon, bezogen auf {energy} Wh</translation>
    </message>
    <message>
        <source>{machine}: {percents:g} % of its energy by {meter}: {energy} Wh</source>
        <translation>{machine}: {percents:g} % ihrer Energie nach {meter}: {energy} Wh</translation>
    </message>
    <message>
        <source>{machine}: {runs} left out by hand with no reason given; say why, or count what was left out.</source>
        <translation>{machine}: {runs} ohne Angabe eines Grundes von Hand ausgelassen; den Grund angeben oder zählen, was ausgelassen wurde.</translation>
    </message>
    <message>
        <source>{machine}: {value:.0f} W on average is outside what machines of this kind usually draw ({low:.0f} to {high:.0f} W); check the unit of the power column and which stretches count as runs.</source>
        <translation>{machine}: {value:.0f} W im Mittel liegen außerhalb dessen, was Maschinen dieser Art gewöhnlich aufnehmen ({low:.0f} bis {high:.0f} W); prüfen, welche Einheit die Leistungsspalte hat und welche Abschnitte als Läufe zählen.</translation>
    </message>
    <message>
        <source>{machine}: {value:.1f} W doing nothing is outside the usual {low:.0f} to {high:.0f} W; check that the level was standby, with nothing else plugged in behind the meter.</source>
        <translation>{machine}: {value:.1f} W im Nichtstun liegen außerhalb der üblichen {low:.0f} bis {high:.0f} W; prüfen, ob die Maschine wirklich in Bereitschaft war und nichts anderes hinter dem Messgerät eingesteckt war.</translation>
    </message>
    <message>
        <source>{many}{watts} W × {idle_hours} h / 1000 = {kwh} kWh</source>
        <translation>{many}{watts} W × {idle_hours} h / 1000 = {kwh} kWh</translation>
    </message>
    <message>
        <source>{marker}, of {owner}: change places</source>
        <translation>{marker}, von {owner}: Plätze tauschen</translation>
    </message>
    <message>
        <source>{measure} against a property</source>
        <translation>{measure} gegen eine Eigenschaft</translation>
    </message>
    <message>
        <source>{measure} and {property}</source>
        <translation>{measure} und {property}</translation>
    </message>
    <message>
        <source>{measure} by {property}: from {low} ({low_group}) to {high} ({high_group}), {count} groups.</source>
        <translation>{measure} nach {property}: von {low} ({low_group}) bis {high} ({high_group}), {count} Gruppen.</translation>
    </message>
    <message>
        <source>{measure} by {property}: {told}.</source>
        <translation>{measure} nach {property}: {told}.</translation>
    </message>
    <message>
        <source>{measure} by {property}: {told}; with groups so small no difference could be shown (p is {p} at best).</source>
        <translation>{measure} nach {property}: {told}; mit so kleinen Gruppen ließe sich kein Unterschied nachweisen (p ist bestenfalls {p}).</translation>
    </message>
    <message>
        <source>{measure} falls with {property} ({told}).</source>
        <translation>{measure} fällt mit {property} ({told}).</translation>
    </message>
    <message>
        <source>{measure} is lower with {property} {low_group} than with {high_group}: {told}; {p}.</source>
        <translation>{measure} ist mit {property} {low_group} niedriger als mit {high_group}: {told}; {p}.</translation>
    </message>
    <message>
        <source>{measure} rises with {property} ({told}).</source>
        <translation>{measure} steigt mit {property} ({told}).</translation>
    </message>
    <message>
        <source>{member} in the archive is locked with a password. Unpack it by hand.</source>
        <translation>{member} im Archiv ist mit einem Kennwort gesperrt. Von Hand entpacken.</translation>
    </message>
    <message>
        <source>{meters} meters go round: each machine is measured with each meter {often}.</source>
        <translation>{meters} Messgeräte wechseln reihum: Jede Maschine wird mit jedem Messgerät {often} gemessen.</translation>
    </message>
    <message>
        <source>{meter} and {other}</source>
        <translation>{meter} und {other}</translation>
    </message>
    <message>
        <source>{meter}&apos;s energies are taken {share} higher</source>
        <translation>Energien von {meter} werden {share} höher genommen</translation>
    </message>
    <message>
        <source>{meter}&apos;s energies are taken {share} lower</source>
        <translation>Energien von {meter} werden {share} niedriger genommen</translation>
    </message>
    <message>
        <source>{meter}: {energy} Wh, the mean of {runs:run|runs}</source>
        <translation>{meter}: {energy} Wh, das Mittel aus {runs:Lauf|Läufen}</translation>
    </message>
    <message>
        <source>{middle} (95 % interval {low} to {high}): {less}</source>
        <translation>{middle} (95-%-Intervall {low} bis {high}): {less}</translation>
    </message>
    <message>
        <source>{minutes} min</source>
        <translation>{minutes} min</translation>
    </message>
    <message>
        <source>{minutes} min of cooling without heat</source>
        <translation>{minutes} min Abkühlen ohne Heizen</translation>
    </message>
    <message>
        <source>{mode}, {document}, from {date}</source>
        <translation>{mode}, {document}, ab {date}</translation>
    </message>
    <message>
        <source>{money}, {share} of it electricity</source>
        <translation>{money}, davon {share} Strom</translation>
    </message>
    <message>
        <source>{names}, measured with {name}</source>
        <translation>{names}, gemessen mit {name}</translation>
    </message>
    <message>
        <source>{name}  ◂ leaves</source>
        <translation>{name}  ◂ anders</translation>
    </message>
    <message>
        <source>{name} (invented data)</source>
        <translation>{name} (erfundene Daten)</translation>
    </message>
    <message>
        <source>{name} (not counted)</source>
        <translation>{name} (nicht gezählt)</translation>
    </message>
    <message>
        <source>{name} against {name_2}: energy per part</source>
        <translation>{name} gegen {name_2}: Energie je Teil</translation>
    </message>
    <message>
        <source>{name} against {name_2}: warm-up and after it</source>
        <translation>{name} gegen {name_2}: Aufheizen und danach</translation>
    </message>
    <message>
        <source>{name} against {name_2}: watts per area of the bed</source>
        <translation>{name} gegen {name_2}: Leistung je Fläche des Heizbetts</translation>
    </message>
    <message>
        <source>{name} against {title}</source>
        <translation>{name} gegen {title}</translation>
    </message>
    <message>
        <source>{name} and {name_2}: how many repeats</source>
        <translation>{name} und {name_2}: wie viele Wiederholungen</translation>
    </message>
    <message>
        <source>{name} had nothing new</source>
        <translation>{name} enthielt nichts Neues</translation>
    </message>
    <message>
        <source>{name} has no run that counts.</source>
        <translation>{name} hat keinen Lauf, der zählt.</translation>
    </message>
    <message>
        <source>{name} in the bundle is no longer what it was when the bundle was made; figures made from it may not be those of its maker.</source>
        <translation>{name} im Bündel ist nicht mehr, was es beim Erstellen war; daraus berechnete Zahlen sind vielleicht nicht die des Erstellers.</translation>
    </message>
    <message>
        <source>{name} is no number</source>
        <translation>{name} ist keine Zahl</translation>
    </message>
    <message>
        <source>{name} is no run sheet</source>
        <translation>{name} ist kein Laufzettel</translation>
    </message>
    <message>
        <source>{name} was not saved ({why}). Choose another folder or free some room.</source>
        <translation>{name} wurde nicht gespeichert ({why}). Einen anderen Ordner wählen oder Platz schaffen.</translation>
    </message>
    <message>
        <source>{name}, step {place}: {what}</source>
        <translation>{name}, Stufe {place}: {what}</translation>
    </message>
    <message>
        <source>{name}, {kind}, {time}</source>
        <translation>{name}, {kind}, {time}</translation>
    </message>
    <message>
        <source>{name}, {name_2}: {energy_wh} Wh</source>
        <translation>{name}, {name_2}: {energy_wh} Wh</translation>
    </message>
    <message>
        <source>{name}, {name_2}: {energy} Wh</source>
        <translation>{name}, {name_2}: {energy} Wh</translation>
    </message>
    <message>
        <source>{name}: CO₂ of a print</source>
        <translation>{name}: CO₂ eines Drucks</translation>
    </message>
    <message>
        <source>{name}: a cooler bed after the first layers</source>
        <translation>{name}: ein kühleres Heizbett nach den ersten Schichten</translation>
    </message>
    <message>
        <source>{name}: a curve: in its middle {slope} from {low} to {high} K above the room</source>
        <translation>{name}: eine Kurve, in ihrer Mitte {slope}, von {low} bis {high} K über dem Raum</translation>
    </message>
    <message>
        <source>{name}: a line of {slope} from {low} to {high} K above the room</source>
        <translation>{name}: eine Gerade mit {slope} von {low} bis {high} K über dem Raum</translation>
    </message>
    <message>
        <source>{name}: a print of {hours} h</source>
        <translation>{name}: ein Druck von {hours} h</translation>
    </message>
    <message>
        <source>{name}: a year of prints</source>
        <translation>{name}: ein Jahr Drucke</translation>
    </message>
    <message>
        <source>{name}: electricity of one {part}</source>
        <translation>{name}: Strom für ein Teil ({part})</translation>
    </message>
    <message>
        <source>{name}: from measured to like for like</source>
        <translation>{name}: vom Gemessenen zu Gleichem mit Gleichem</translation>
    </message>
    <message>
        <source>{name}: from {first} to {last}</source>
        <translation>{name}: von {first} bis {last}</translation>
    </message>
    <message>
        <source>{name}: hours of log</source>
        <translation>{name}: Stunden an Log</translation>
    </message>
    <message>
        <source>{name}: hours of {state}</source>
        <translation>{name}: Stunden im Zustand {state}</translation>
    </message>
    <message>
        <source>{name}: like for like</source>
        <translation>{name}: Gleiches mit Gleichem</translation>
    </message>
    <message>
        <source>{name}: longest rest</source>
        <translation>{name}: längste Pause</translation>
    </message>
    <message>
        <source>{name}: no hold test was found or marked.</source>
        <translation>{name}: Kein Halteversuch wurde gefunden oder markiert.</translation>
    </message>
    <message>
        <source>{name}: no log of the bed alone covers a hold test.</source>
        <translation>{name}: Kein Log des Heizbetts allein deckt einen Halteversuch ab.</translation>
    </message>
    <message>
        <source>{name}: no step is called so.</source>
        <translation>{name}: Keine Stufe heißt so.</translation>
    </message>
    <message>
        <source>{name}: no temperature was held for an hour from cold.</source>
        <translation>{name}: Keine Temperatur wurde vom kalten Zustand an eine Stunde gehalten.</translation>
    </message>
    <message>
        <source>{name}: not known</source>
        <translation>{name}: nicht bekannt</translation>
    </message>
    <message>
        <source>{name}: not steady over {hours} h; means of the windows {low} to {high} W.</source>
        <translation>{name}: nicht gleichmäßig über {hours} h; Mittel der Fenster {low} bis {high} W.</translation>
    </message>
    <message>
        <source>{name}: note the bed&apos;s temperature during the test, below.</source>
        <translation>{name}: unten die Temperatur des Heizbetts während des Versuchs notieren.</translation>
    </message>
    <message>
        <source>{name}: of the floor at {celsius} °C</source>
        <translation>{name}: im Verhältnis zur Untergrenze bei {celsius} °C</translation>
    </message>
    <message>
        <source>{name}: one temperature held, {watts} W at {kelvin} K above the room; a line needs two.</source>
        <translation>{name}: eine Temperatur gehalten, {watts} W bei {kelvin} K über dem Raum; eine Gerade braucht zwei.</translation>
    </message>
    <message>
        <source>{name}: per area at {celsius} °C</source>
        <translation>{name}: je Fläche bei {celsius} °C</translation>
    </message>
    <message>
        <source>{name}: price of a print of {print_hours} h</source>
        <translation>{name}: Preis eines Drucks von {print_hours} h</translation>
    </message>
    <message>
        <source>{name}: processing of a print</source>
        <translation>{name}: Fertigung eines Drucks</translation>
    </message>
    <message>
        <source>{name}: ranks {a} and {b}</source>
        <translation>{name}: Ränge {a} und {b}</translation>
    </message>
    <message>
        <source>{name}: standby of a year</source>
        <translation>{name}: Bereitschaft eines Jahres</translation>
    </message>
    <message>
        <source>{name}: standby power</source>
        <translation>{name}: Bereitschaftsleistung</translation>
    </message>
    <message>
        <source>{name}: steady over {hours} h; means of the windows {low} to {high} W.</source>
        <translation>{name}: gleichmäßig über {hours} h; Mittel der Fenster {low} bis {high} W.</translation>
    </message>
    <message>
        <source>{name}: sum of the loads</source>
        <translation>{name}: Summe der Verbraucher</translation>
    </message>
    <message>
        <source>{name}: switched off after {minutes} min idle</source>
        <translation>{name}: abgeschaltet nach {minutes} min Leerlauf</translation>
    </message>
    <message>
        <source>{name}: temperature of the held bed</source>
        <translation>{name}: Temperatur des gehaltenen Heizbetts</translation>
    </message>
    <message>
        <source>{name}: temperature of the room</source>
        <translation>{name}: Temperatur des Raums</translation>
    </message>
    <message>
        <source>{name}: the lowest level of its rests; none lasts a quarter of an hour.</source>
        <translation>{name}: die niedrigste Leistung der Pausen; keine dauert eine Viertelstunde.</translation>
    </message>
    <message>
        <source>{name}: the measure has no value.</source>
        <translation>{name}: Die Messgröße hat keinen Wert.</translation>
    </message>
    <message>
        <source>{name}: the property is not noted.</source>
        <translation>{name}: Die Eigenschaft ist nicht notiert.</translation>
    </message>
    <message>
        <source>{name}: the test began warm, or its warm-up is not in the log.</source>
        <translation>{name}: Der Versuch begann warm, oder sein Aufheizen fehlt im Log.</translation>
    </message>
    <message>
        <source>{name}: the whole log</source>
        <translation>{name}: das ganze Log</translation>
    </message>
    <message>
        <source>{name}: type the area of its bed below.</source>
        <translation>{name}: unten die Fläche des Heizbetts eintippen.</translation>
    </message>
    <message>
        <source>{name}: watts held at {celsius} °C</source>
        <translation>{name}: Halteleistung bei {celsius} °C</translation>
    </message>
    <message>
        <source>{name}: watts of processing</source>
        <translation>{name}: Leistung der Fertigung</translation>
    </message>
    <message>
        <source>{name}: what reaches the bed</source>
        <translation>{name}: was im Heizbett ankommt</translation>
    </message>
    <message>
        <source>{name}: what stays unexplained</source>
        <translation>{name}: was nicht erklärt ist</translation>
    </message>
    <message>
        <source>{name}: {count:rest|rests} of {energy} Wh</source>
        <translation>{name}: {count:Pause|Pausen} mit {energy} Wh</translation>
    </message>
    <message>
        <source>{name}: {mean}, mean of {included:run|runs}</source>
        <translation>{name}: {mean}, Mittel aus {included:Lauf|Läufen}</translation>
    </message>
    <message>
        <source>{name}: {percent} % of rows have the same count of {width} cells</source>
        <translation>{name}: {percent} % der Zeilen haben dieselbe Zahl von {width} Zellen</translation>
    </message>
    <message>
        <source>{name}: {uncertainty}, {share} of the variance</source>
        <translation>{name}: {uncertainty}, {share} der Varianz</translation>
    </message>
    <message>
        <source>{name}: {used} Wh with the bed off</source>
        <translation>{name}: {used} Wh ohne Heizbett</translation>
    </message>
    <message>
        <source>{name}: {watts} W on average at the plug</source>
        <translation>{name}: im Mittel {watts} W an der Steckdose</translation>
    </message>
    <message>
        <source>{not_shown:more run|more runs} can be ticked in the list.</source>
        <translation>{not_shown:weiterer Lauf|weitere Läufe} in der Liste ankreuzbar.</translation>
    </message>
    <message>
        <source>{note}; heating goes up to {watts} W</source>
        <translation>{note}; das Heizen reicht bis {watts} W</translation>
    </message>
    <message>
        <source>{number} of {of}</source>
        <translation>{number} von {of}</translation>
    </message>
    <message>
        <source>{one} against {other}</source>
        <translation>{one} gegen {other}</translation>
    </message>
    <message>
        <source>{one} against {other} min</source>
        <translation>{one} gegen {other} min</translation>
    </message>
    <message>
        <source>{percent:.0f} % of the run&apos;s time lies in gaps of the log: too much to bridge from the power alone. Run it again with the meter logging throughout, or use a meter with an energy counter.</source>
        <translation>{percent:.0f} % der Zeit des Laufs liegen in Lücken des Logs: zu viel, um sie allein aus der Leistung zu überbrücken. Den Lauf mit durchgehender Aufzeichnung wiederholen oder ein Messgerät mit Energiezähler verwenden.</translation>
    </message>
    <message>
        <source>{percent:.1f} % of the run&apos;s time lies in gaps of the log; they are bridged, and their doubt is in the interval. A log without gaps would narrow it.</source>
        <translation>{percent:.1f} % der Zeit des Laufs liegen in Lücken des Logs; sie sind überbrückt, und ihr Zweifel ist im Intervall. Ein Log ohne Lücken würde es verengen.</translation>
    </message>
    <message>
        <source>{percents} % less</source>
        <translation>{percents} % weniger</translation>
    </message>
    <message>
        <source>{percents} % more</source>
        <translation>{percents} % mehr</translation>
    </message>
    <message>
        <source>{percents} % more than {machine} (95 % interval {low} to {high} %)</source>
        <translation>{percents} % mehr als {machine} (95-%-Intervall {low} bis {high} %)</translation>
    </message>
    <message>
        <source>{percents} assumed</source>
        <translation>{percents} angenommen</translation>
    </message>
    <message>
        <source>{percents} so far</source>
        <translation>{percents} bisher</translation>
    </message>
    <message>
        <source>{percent} % of the energy is below zero, and no machine gives power back: the meter was the wrong way round. The power is taken with the opposite sign{counter}.</source>
        <translation>{percent} % der Energie liegen unter null, und keine Maschine gibt Leistung zurück: Das Messgerät war verkehrt herum. Die Leistung wird mit umgekehrtem Vorzeichen genommen{counter}.</translation>
    </message>
    <message>
        <source>{picks:pick|picks} of {entries}</source>
        <translation>{picks:gewählt|gewählt} von {entries}</translation>
    </message>
    <message>
        <source>{place} (usual)</source>
        <translation>{place} (üblich)</translation>
    </message>
    <message>
        <source>{place} ({count} times)</source>
        <translation>{place} ({count}-mal)</translation>
    </message>
    <message>
        <source>{point}, which could matter {energy} a part</source>
        <translation>{point}, was {energy} je Teil ausmachen könnte</translation>
    </message>
    <message>
        <source>{power} on average</source>
        <translation>{power} im Mittel</translation>
    </message>
    <message>
        <source>{property} not noted: {machines}</source>
        <translation>{property} nicht notiert: {machines}</translation>
    </message>
    <message>
        <source>{purpose}, {width} × {height} px</source>
        <translation>{purpose}, {width} × {height} px</translation>
    </message>
    <message>
        <source>{quantity} is not known for {machine}.</source>
        <translation>{quantity}: für {machine} nicht bekannt.</translation>
    </message>
    <message>
        <source>{quantity}, more than {run}</source>
        <translation>{quantity}, mehr als {run}</translation>
    </message>
    <message>
        <source>{quantity}: not known</source>
        <translation>{quantity}: nicht bekannt</translation>
    </message>
    <message>
        <source>{reading:.6g} and {other:.6g} Wh are too far apart for one load: check the digits and the unit.</source>
        <translation>{reading:.6g} und {other:.6g} Wh liegen für eine Last zu weit auseinander: Ziffern und Einheit prüfen.</translation>
    </message>
    <message>
        <source>{rests:rest|rests} in {length} of idle log, too little to speak for a year.</source>
        <translation>{rests:Pause|Pausen} in {length} untätigem Log, zu wenig, um für ein Jahr zu sprechen.</translation>
    </message>
    <message>
        <source>{rests:rest|rests} in {length} of idle log.</source>
        <translation>{rests:Pause|Pausen} in {length} untätigem Log.</translation>
    </message>
    <message>
        <source>{rests}, none so long</source>
        <translation>{rests}, keine so lang</translation>
    </message>
    <message>
        <source>{rests}, {share} saved after {minutes} min</source>
        <translation>{rests}, {share} gespart nach {minutes} min</translation>
    </message>
    <message>
        <source>{rows} read</source>
        <translation>{rows} gelesen</translation>
    </message>
    <message>
        <source>{rows} read, {count} refused</source>
        <translation>{rows} gelesen, {count} abgewiesen</translation>
    </message>
    <message>
        <source>{runs:run|runs} of the {part} taken apart: the warm-up once, then processing at the runs&apos; mean watts for the rest of the print.</source>
        <translation>{runs:Lauf|Läufe} ({part}) zerlegt: einmal das Aufheizen, dann Fertigung mit der mittleren Leistung der Läufe für den Rest des Drucks.</translation>
    </message>
    <message>
        <source>{runs_needed:run|runs} of each would show a difference of {percent_text} %.</source>
        <translation>Je {runs_needed:Lauf|Läufe} {runs_needed:~würde|würden} einen Unterschied von {percent_text} % nachweisen.</translation>
    </message>
    <message>
        <source>{runs} of the {part} found in {logs}</source>
        <translation>{runs} ({part}) in {logs} gefunden</translation>
    </message>
    <message>
        <source>{runs} of the {part} found in {logs}, {count} typed in</source>
        <translation>{runs} ({part}) in {logs} gefunden, {count} eingetippt</translation>
    </message>
    <message>
        <source>{runs} of {count:machine|machines}</source>
        <translation>{runs} von {count:Maschine|Maschinen}</translation>
    </message>
    <message>
        <source>{runs} of {machines} began {state} and the others {usual}, as was noted with them; begin every run from the same state.</source>
        <translation>Ungleich begonnen, wie dabei notiert: {runs} von {machines} „{state}“, die anderen „{usual}“; jeden Lauf aus demselben Zustand beginnen.</translation>
    </message>
    <message>
        <source>{runs} of {machines} were read off a display by hand while other runs were logged: a reading is good to the display&apos;s last digit, and a slip leaves no trace; log all machines alike.</source>
        <translation>{runs} von {machines} von Hand an einer Anzeige abgelesen, während andere Läufe aufgezeichnet wurden: Eine Ablesung ist auf die letzte Stelle der Anzeige genau, und ein Versehen hinterlässt keine Spur; alle Maschinen gleich aufzeichnen.</translation>
    </message>
    <message>
        <source>{runs} on each of {machines} would show a difference of {wanted} between them</source>
        <translation>Nötig, um einen Unterschied von {wanted} zwischen {machines} nachzuweisen: {runs} je Maschine</translation>
    </message>
    <message>
        <source>{runs}, {others:other|others}</source>
        <translation>{runs}, sonst {others}</translation>
    </message>
    <message>
        <source>{run} leaves its band {span}: {power}, {energy} Wh less</source>
        <translation>{run} verlässt das Band {span}: {power}, {energy} Wh weniger</translation>
    </message>
    <message>
        <source>{run} leaves its band {span}: {power}, {energy} Wh more</source>
        <translation>{run} verlässt das Band {span}: {power}, {energy} Wh mehr</translation>
    </message>
    <message>
        <source>{run}: {watts} W</source>
        <translation>{run}: {watts} W</translation>
    </message>
    <message>
        <source>{said}, in °C</source>
        <translation>{said}, in °C</translation>
    </message>
    <message>
        <source>{said}. If there were none, the repeats alone would lie this far apart with a chance of {by_repeats} ({test}), and the ratio, with what the meters leave open, with one of {by_ratio} (two-sided{adjusted}). It takes both below 0.05.</source>
        <translation>{said}. Gäbe es keinen, lägen allein die Wiederholungen mit einer Wahrscheinlichkeit von {by_repeats} so weit auseinander ({test}), und das Verhältnis, mit dem, was die Messgeräte offen lassen, mit {by_ratio} (zweiseitig{adjusted}). Beide müssen unter 0,05 liegen.</translation>
    </message>
    <message>
        <source>{said}; empty the field to take the note back</source>
        <translation>{said}; Feld leeren, um die Notiz zurückzunehmen</translation>
    </message>
    <message>
        <source>{said}; nothing was left out.</source>
        <translation>{said}; nichts wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{said}; the points lie off it, so the band was widened.</source>
        <translation>{said}; die Punkte liegen abseits davon, daher wurde das Band verbreitert.</translation>
    </message>
    <message>
        <source>{said}; the same for {others}</source>
        <translation>{said}; ebenso: {others}</translation>
    </message>
    <message>
        <source>{said}; {count:other stretch|other stretches} of the logs {count:~is|are} not compared.</source>
        <translation>{said}; {count:anderer Abschnitt|andere Abschnitte} der Logs {count:~wird|werden} nicht verglichen.</translation>
    </message>
    <message>
        <source>{saved_wh} Wh / {idle_wh} Wh = {share}</source>
        <translation>{saved_wh} Wh / {idle_wh} Wh = {share}</translation>
    </message>
    <message>
        <source>{seconds} s between rows (95 % under {most} s)</source>
        <translation>{seconds} s zwischen Zeilen (95 % unter {most} s)</translation>
    </message>
    <message>
        <source>{share} is shown</source>
        <translation>{share} wird nachgewiesen</translation>
    </message>
    <message>
        <source>{share} less</source>
        <translation>{share} weniger</translation>
    </message>
    <message>
        <source>{share} more</source>
        <translation>{share} mehr</translation>
    </message>
    <message>
        <source>{share} of its time lies in gaps of the log and no energy counter bridges them</source>
        <translation>{share} seiner Zeit liegen in Lücken des Logs, und kein Energiezähler überbrückt sie</translation>
    </message>
    <message>
        <source>{share} of the time has no price.</source>
        <translation>{share} der Zeit haben keinen Preis.</translation>
    </message>
    <message>
        <source>{share} of what a plate of its size must lose</source>
        <translation>{share} dessen, was eine Platte seiner Größe verlieren muss</translation>
    </message>
    <message>
        <source>{share} of what the rests took</source>
        <translation>{share} von dem, was die Pausen brauchten</translation>
    </message>
    <message>
        <source>{share} of {energy} Wh, the largest energy it measured</source>
        <translation>{share} von {energy} Wh, der größten Energie, die es maß</translation>
    </message>
    <message>
        <source>{share} on {machine}</source>
        <translation>{share} an {machine}</translation>
    </message>
    <message>
        <source>{shown} of {machines:machine|machines} shown</source>
        <translation>{shown} von {machines:Maschine|Maschinen} gezeigt</translation>
    </message>
    <message>
        <source>{shown} of {machines:machine|machines} shown.</source>
        <translation>{shown} von {machines:Maschine|Maschinen} gezeigt.</translation>
    </message>
    <message>
        <source>{sign} of the test, of another log, or an ordinary room.</source>
        <translation>{sign} des Versuchs, eines anderen Logs oder eines gewöhnlichen Raums.</translation>
    </message>
    <message>
        <source>{sign}: so in {count} of {most} sampled cells with a fraction</source>
        <translation>{sign}: so in {count} von {most} geprüften Zellen mit Nachkommastellen</translation>
    </message>
    <message>
        <source>{start} to {end}, {length}</source>
        <translation>{start} bis {end}, {length}</translation>
    </message>
    <message>
        <source>{state} [h]</source>
        <translation>{state} [h]</translation>
    </message>
    <message>
        <source>{state} until {end} {unit}</source>
        <translation>{state} bis {end} {unit}</translation>
    </message>
    <message>
        <source>{state} {part_wh} Wh in {b_s}</source>
        <translation>{state} {part_wh} Wh in {b_s}</translation>
    </message>
    <message>
        <source>{state}, {start} to {end}</source>
        <translation>{state}, {start} bis {end}</translation>
    </message>
    <message>
        <source>{steps}: say which it was.</source>
        <translation>{steps}: angeben, welcher es war.</translation>
    </message>
    <message>
        <source>{step} [Wh]</source>
        <translation>{step} [Wh]</translation>
    </message>
    <message>
        <source>{study} (invented data)</source>
        <translation>{study} (erfundene Daten)</translation>
    </message>
    <message>
        <source>{sum} ÷ 3600 over {count} rows inside the run = {energy} Wh</source>
        <translation>{sum} ÷ 3600 über {count} Zeilen im Lauf = {energy} Wh</translation>
    </message>
    <message>
        <source>{tests:hold test|hold tests} with no temperatures</source>
        <translation>{tests:Halteversuch|Halteversuche} ohne Temperaturen</translation>
    </message>
    <message>
        <source>{tests:switch-on test|switch-on tests}</source>
        <translation>{tests:Einschaltversuch|Einschaltversuche}</translation>
    </message>
    <message>
        <source>{text!r} is no energy; write a number, such as 21.4.</source>
        <translation>{text!r} ist keine Energie; eine Zahl wie 21.4 schreiben.</translation>
    </message>
    <message>
        <source>{text!r} is no temperature in degrees Celsius, such as 21.5; it was not used.</source>
        <translation>{text!r} ist keine Temperatur in Grad Celsius wie 21.5; nicht verwendet.</translation>
    </message>
    <message>
        <source>{text!r} is no time such as 2026-06-15 14:30 or 14:30; the duration is not known.</source>
        <translation>{text!r} ist keine Zeit wie 2026-06-15 14:30 oder 14:30; die Dauer ist nicht bekannt.</translation>
    </message>
</context>
</TS>
