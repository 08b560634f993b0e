<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>window</name>
  <message>
   <source> years</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> {0} more entries need a look.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;About and safety</source>
   <translation>&amp;Über und Sicherheit</translation>
  </message>
  <message>
   <source>&amp;Accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Add</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Address</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Add…</source>
   <translation>&amp;Hinzufügen…</translation>
  </message>
  <message>
   <source>&amp;Agree</source>
   <translation>&amp;Vereinbaren</translation>
  </message>
  <message>
   <source>&amp;All</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;All surveys…</source>
   <translation>&amp;Alle Aufnahmen…</translation>
  </message>
  <message>
   <source>&amp;Also those that do not fit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Amount or percent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Answer for it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Back a step</source>
   <translation>Schritt &amp;zurück</translation>
  </message>
  <message>
   <source>&amp;Back up now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Book ({0} touched)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Calculate</source>
   <translation>&amp;Berechnen</translation>
  </message>
  <message>
   <source>&amp;Close</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Close all</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Conversion of the site</source>
   <translation>&amp;Umbau des Standorts</translation>
  </message>
  <message>
   <source>&amp;Copy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Copy answers to…</source>
   <translation>Antworten &amp;kopieren nach…</translation>
  </message>
  <message>
   <source>&amp;Copy these rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Currency</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Declined</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Dispenser</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Dispenser ({0})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Duplicate</source>
   <translation>&amp;Duplizieren</translation>
  </message>
  <message>
   <source>&amp;E-mail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>&amp;Bearbeiten</translation>
  </message>
  <message>
   <source>&amp;Edition</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Empty all figures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Filler height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Fit it and note it in the record</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Freight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Go</source>
   <translation>&amp;Gehe zu</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>&amp;Hilfe</translation>
  </message>
  <message>
   <source>&amp;History</source>
   <translation>&amp;Verlauf</translation>
  </message>
  <message>
   <source>&amp;Inspections and wear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Installer's work</source>
   <translation>Arbeit des &amp;Monteurs</translation>
  </message>
  <message>
   <source>&amp;Island of the dispenser</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Islands that they stand on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Issue it so</source>
   <translation>So &amp;abgeben</translation>
  </message>
  <message>
   <source>&amp;Joints of a container of sealant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Keys</source>
   <translation>&amp;Tasten</translation>
  </message>
  <message>
   <source>&amp;Leave as it was</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Leave it open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Let all parts go</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Local rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Local rules…</source>
   <translation>&amp;Örtliche Regeln…</translation>
  </message>
  <message>
   <source>&amp;Longest lead time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Margin lost per position and hour</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Metric units</source>
   <translation>&amp;Metrische Einheiten</translation>
  </message>
  <message>
   <source>&amp;Name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Name of the position</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Name of the site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Names of the new dispensers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;New survey…</source>
   <translation>&amp;Neue Aufnahme…</translation>
  </message>
  <message>
   <source>&amp;Next step</source>
   <translation>&amp;Nächster Schritt</translation>
  </message>
  <message>
   <source>&amp;Note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Offer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Other side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Other side of the dispenser…</source>
   <translation>&amp;Andere Seite der Zapfsäule…</translation>
  </message>
  <message>
   <source>&amp;Papers</source>
   <translation>&amp;Papiere</translation>
  </message>
  <message>
   <source>&amp;Percent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Planned, agreed and built</source>
   <translation>&amp;Geplant, vereinbart und gebaut</translation>
  </message>
  <message>
   <source>&amp;Position</source>
   <translation>&amp;Position</translation>
  </message>
  <message>
   <source>&amp;Prepared by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Put into the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>&amp;Beenden</translation>
  </message>
  <message>
   <source>&amp;Quotations</source>
   <translation>&amp;Angebote</translation>
  </message>
  <message>
   <source>&amp;Quote this survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Read from file…</source>
   <translation>Aus &amp;Datei lesen…</translation>
  </message>
  <message>
   <source>&amp;Ready ones, written into a file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Record</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Record of the position</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>&amp;Wiederholen</translation>
  </message>
  <message>
   <source>&amp;Registration</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Remove</source>
   <translation>&amp;Entfernen</translation>
  </message>
  <message>
   <source>&amp;Repeat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Restore…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Result</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Revisions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Rounding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Rules of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Save the record</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Separations at a position in a year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Side that is there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Site data</source>
   <translation>&amp;Standortdaten</translation>
  </message>
  <message>
   <source>&amp;Source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Start survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Stay here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Survey</source>
   <translation>&amp;Aufnahme</translation>
  </message>
  <message>
   <source>&amp;Take off the list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Take positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Take the marked set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Terms…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Thread standard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Title</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;US units</source>
   <translation>&amp;US-Einheiten</translation>
  </message>
  <message>
   <source>&amp;Undo</source>
   <translation>&amp;Rückgängig</translation>
  </message>
  <message>
   <source>&amp;Undo it</source>
   <translation>&amp;Zurücknehmen</translation>
  </message>
  <message>
   <source>&amp;Undo the last agreement…</source>
   <translation>Letzte Vereinbarung &amp;zurücknehmen…</translation>
  </message>
  <message>
   <source>&amp;Unit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Use it in the set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Use this part</source>
   <translation>Dieses Teil &amp;verwenden</translation>
  </message>
  <message>
   <source>&amp;Valid for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;View</source>
   <translation>Ansi&amp;cht</translation>
  </message>
  <message>
   <source>&amp;Way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Who fuels?</source>
   <translation>Wer &amp;tankt?</translation>
  </message>
  <message>
   <source>&amp;Whole drawing</source>
   <translation>&amp;Ganze Zeichnung</translation>
  </message>
  <message>
   <source>&amp;Why not this part?</source>
   <translation>&amp;Warum nicht dieses Teil?</translation>
  </message>
  <message>
   <source>&amp;Write to a file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Write to file…</source>
   <translation>In Datei &amp;schreiben…</translation>
  </message>
  <message>
   <source>&amp;XLSX…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Years</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>(cannot be read)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>(kept)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>0 to 1000.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>0.05 rounds to the next multiple of five cents.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1 page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1 to 30.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A change of liquid goes by tank, and a vapor pipe ends at one. For a blend of two write 1 + 2.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A comma in a figure is the decimal sign</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A cord pulls the hose in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A fault of the program</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A person's name.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A price that somebody answers for, in place of the lists. Without a price, the line says that it follows.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A pump draws vapor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A quotation in the book has revisions; keep this one or look one up.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A retractor or a reel moves the breakaway to the nozzle.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A set fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A set fits; a question is open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A set was found, but a must is broken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A&amp;ddress</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A&amp;gree on these sets…</source>
   <translation>Diese &amp;Sätze vereinbaren…</translation>
  </message>
  <message>
   <source>A&amp;ll</source>
   <translation>A&amp;lle</translation>
  </message>
  <message>
   <source>AP-42</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>About</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>About and safety</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Above 0.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Above the ground the hose hangs over.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Above the same ground; negative below a dock.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Adapter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add &amp;part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a filler</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a further f&amp;iller</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a hose position to this or another dispenser.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a position</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a position with the same answers.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a row behind the chosen one (Insert)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add dispensers with the same positions as this one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add p&amp;hotos…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add positions from a CSV file or a workbook; columns are mapped first, faults told cell by cell.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add the &amp;words of the fault; they may hold values of your survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add to the &amp;wear log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Adopted codes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Advice only: local codes and the authority having jurisdiction decide.</source>
   <translation>Nur ein Rat: örtliche Vorschriften und die zuständige Behörde entscheiden.</translation>
  </message>
  <message>
   <source>Advice, no permission: the agency of each site decides before its work begins.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ag&amp;ree on the planned set…</source>
   <translation>Geplanten Satz ve&amp;reinbaren…</translation>
  </message>
  <message>
   <source>Against the limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age of an installed part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age of the chosen part, years</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age, years</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Agree on the &amp;way shown…</source>
   <translation>Gezeigten &amp;Weg vereinbaren…</translation>
  </message>
  <message>
   <source>Agree on the planned sets of one position, several or all: papers show them from then on.</source>
   <translation>Geplante Sätze einer Position, mehrerer oder aller vereinbaren: Papiere zeigen sie von da an.</translation>
  </message>
  <message>
   <source>Agree on the sets of the way that the report follows, in bold above</source>
   <translation>Die Sätze des Weges vereinbaren, dem der Bericht folgt, oben fett</translation>
  </message>
  <message>
   <source>Agree on these sets</source>
   <translation>Diese Sätze vereinbaren</translation>
  </message>
  <message>
   <source>Agree on these sets…</source>
   <translation>Diese Sätze vereinbaren…</translation>
  </message>
  <message>
   <source>Agree&amp;ments…</source>
   <translation>Vereinbarun&amp;gen…</translation>
  </message>
  <message>
   <source>Agreed</source>
   <translation>Vereinbart</translation>
  </message>
  <message>
   <source>Agreement {0}</source>
   <translation>Vereinbarung {0}</translation>
  </message>
  <message>
   <source>Agreement {0}, by {1}: {2}. What was agreed before it holds again; the history keeps both.</source>
   <translation>Vereinbarung {0}, von {1}: {2}. Was vorher vereinbart war, gilt wieder; der Verlauf behält beides.</translation>
  </message>
  <message>
   <source>Agreements</source>
   <translation>Vereinbarungen</translation>
  </message>
  <message>
   <source>Agreements and withdrawals</source>
   <translation>Vereinbarungen und Rücknahmen</translation>
  </message>
  <message>
   <source>Al&amp;l agreements…</source>
   <translation>A&amp;lle Vereinbarungen…</translation>
  </message>
  <message>
   <source>All &amp;positions in a table</source>
   <translation>Alle &amp;Positionen als Tabelle</translation>
  </message>
  <message>
   <source>All changes are in the book</source>
   <translation>Alle Änderungen sind im Buch</translation>
  </message>
  <message>
   <source>All commands with their keys.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All kinds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All parts with sums, the paper to print, and files to save.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All positions and their answers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All positions planned; choosing sets together and adding up…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All surveys in the book. Every change is kept in it at once.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Allowed in some places only, and then together with a device that shuts the nozzle when pressure or flow ends.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Also changes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Also changes: {changes}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Alt+1 to Alt+5 go to a step. In the drawing: Space picks the next part, plus and minus change its size, arrows move it, 0 shows all of it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Amount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An attendant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An empty maker or group means every one; the row that says more counts.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An estimate, such as 0.04: one in 25 years.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An overhead outlet restricts the latch.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>And light vans</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Annual budget</source>
   <translation>Jahresbudget</translation>
  </message>
  <message>
   <source>Annual budget; empty: no limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Another part hangs here.</source>
   <translation>Hier hängt ein anderes Teil.</translation>
  </message>
  <message>
   <source>Another percentage for a kind of part or a discount group.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Answer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Answer for the missing prices; then it can be issued.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Answer for them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As a share of the hose's length from the dispenser: 0.5 is the middle.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As in the price list.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As printed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As printed; each once.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As the standard writes it, or as people say it: 3/4, 0.75 in, 19 mm, DN 20.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As the way of reckoning asks.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Asked for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At the clamp, with the hose drawn out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Authority</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bac&amp;kups…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Back on the hook by hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Back to the newest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Backups of the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Balance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Balance coaxial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bellows on the nozzle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Between 0 and 1.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Boats</source>
   <translation>Boote</translation>
  </message>
  <message>
   <source>Bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Breakaway</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Breakaways</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Built</source>
   <translation>Gebaut</translation>
  </message>
  <message>
   <source>Built-in rules stay as they are; copy them to change a row.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Buying</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>C&amp;ustomer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>CARB 2013</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>CSV…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Can the flow be started or stopped else&amp;where?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cars</source>
   <translation>Pkw</translation>
  </message>
  <message>
   <source>Catalog</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Catalog data</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Catalog number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Catalog number of an installed part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Catalog or price lists have changed under open quotations: {0}{1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Catalog parts found</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Catalog, makers and prices are invented.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Caution sheet alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cells that cannot be used, and how others were understood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change the chosen row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change the name of the position or its dispenser.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Changed (UTC)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Check</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Check again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Check the paper, then issue it: its papers are kept as they are sent.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Checking every stocked part…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Checks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Checks with their worked lines</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Choose &amp;folder…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Choose a part without a catalog number; a number brings its own figures.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Choose two different revisions.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clau&amp;se</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Climate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Close and &amp;lose the changes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Co&amp;py report</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Coaxial, balance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Coaxial, vacuum assist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Col&amp;dest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Command</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Commands with their keys</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Commissioning form to fill in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Compare agreement</source>
   <translation>Vereinbarung vergleichen</translation>
  </message>
  <message>
   <source>Comparing…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Computed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Con&amp;tact</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Condition</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Condition of an installed part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Condition of the chosen part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Conventional hardware</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Conversion of the site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Convert a folder of surveys over all cores and rank the sites over years under a yearly budget.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Copied</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Copy answers of {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Copy answers of {label}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Copy the chosen rows (Ctrl+Shift+D)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cost</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Counting the parts that come into question…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Counts for every position of the site.</source>
   <translation>Gilt für jede Position des Standorts.</translation>
  </message>
  <message>
   <source>Counts towards a grant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cu&amp;rrency</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Currency</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Currency and rounding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Customer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Customers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Customers, nobody on site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>DEF</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>DEF itself does not burn. Where its nozzle is used close to fuel, the nozzle has to be evaluated for that.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Date (YYYY-MM-DD)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Day of handing over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Day of handing over (YYYY-MM-DD)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days for which the offer stands, 1 to 730.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Decides automatic shut-off and the hold-open latch.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Decides how the whip hose bends in a drive-off.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Declined. Requote it and keep it: revision {0} opens.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Departures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Derived from the answers and the local rules. Open a row for the rule and its source.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Describe an installed part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Describe pa&amp;rt</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Description of an installed part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter of the hose on the &amp;drum</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diesel</source>
   <translation>Diesel</translation>
  </message>
  <message>
   <source>Difference</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Difference, hoses both cover</source>
   <translation>Unterschied, gemeinsame Schläuche</translation>
  </message>
  <message>
   <source>Discount group</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Discounts of makers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dispenser outlet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dispensers and positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dispensers in a row where no island is named</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Do this</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Does a separ&amp;ate vapor return pipe end beside the outlet?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Does not fit: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Does the hose come down from ove&amp;rhead?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Does the position e&amp;xist today?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawing &amp;larger</source>
   <translation>Zeichnung &amp;größer</translation>
  </message>
  <message>
   <source>Drawing &amp;smaller</source>
   <translation>Zeichnung &amp;kleiner</translation>
  </message>
  <message>
   <source>Drawing larger</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawing of the position</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawing or flow chart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawing smaller</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drive-offs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drive-offs expected, all years</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Due</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Duplicate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Duplicate chosen rows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Duplicate {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Duty</source>
   <translation>Einsatz</translation>
  </message>
  <message>
   <source>Duty and take-up</source>
   <translation>Einsatz und Schlauchführung</translation>
  </message>
  <message>
   <source>E&amp;xclude it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>E&amp;xclude this part</source>
   <translation>Dieses Teil aus&amp;schließen</translation>
  </message>
  <message>
   <source>EPA's public model</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Each differs in kind from the set in hand. Taking one keeps its parts; undo brings back the cheapest.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Each kind once.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Each once.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Each option is planned and priced by itself.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Each tax lies on the amounts ticked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Each was opened and read through when it was made. Kept: seven days, four weeks, those before changes, and those that were asked for.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Each year once.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edition</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edition: {0}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Empty: the price follows.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enlarge the drawing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Entry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Every answer may stay open; the report says what it lacks. The agency decides.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Every part new</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Every position of the dispenser is repeated, without the parts decided on and without notes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Exceptions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Exchange rates</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Exclude the marked part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Exclude {part}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Existing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feet, gallons, pounds-force, psi.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Female</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fewest departures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fi&amp;nd</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fields that could not be read, to be filled in here: {0}</source>
   <translation>Felder, die nicht lesbar waren und hier auszufüllen sind: {0}</translation>
  </message>
  <message>
   <source>Figures of a described part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Figures of an installed part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fill down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fill the form from a terms file (Ctrl+O)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Filler height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Findings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Findings about this part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Findings by weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fingerprint of the survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First day (YYYY-MM-DD)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Flow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Flow against pressure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Flow wanted at the no&amp;zzle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Folder of survey files</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For a part without a catalog number.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For price lists in another currency: one unit of theirs in units of the quotation's.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Forecourt from above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Forecourt from above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Freight and taxes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From a &amp;file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From a dock or slip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From center line to center line of the hose.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From memory</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the dispenser's maker. It must outlast the breakaway.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fuel oil</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fueling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Full renewal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Further costs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>G</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Gasoline</source>
   <translation>Benzin</translation>
  </message>
  <message>
   <source>Gen&amp;der</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Give other positions some of the answers of this one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Gives up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Gives up: {lines}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Go to the position above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Go to the position below.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Go to the step after.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Go to the step before.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Good practice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Goods, labor, freight: any of them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grant that was promised</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Greatest &amp;flow of the dispenser</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ha&amp;ng this one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hang {part}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Head of the bill.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heigh&amp;t from which the cord pulls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Highest temperature, sun on the hose included.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ho&amp;ttest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hold the last share</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hoo&amp;k height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Horizontal distance from the outlet to the nozzle at rest.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Horizontal distance from the point below the outlet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hose</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hose on the drum is curved and costs flow; it is counted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hose reel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hose take-up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hoses</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hours count once for each position, dispenser or site; kinds limit a task to sets that hold one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hours with a &amp;reconnectable breakaway</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hours with a &amp;single-use breakaway</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the quotation is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How is the hose taken &amp;up after use?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How is vapor recovered &amp;today?</source>
   <translation>Wie wird Gas &amp;heute zurückgeführt?</translation>
  </message>
  <message>
   <source>How is vapor to be recovered in f&amp;uture?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How many joints one container seals; empty: one container for each set.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much &amp;blend is in it?</source>
   <translation>Wie viel &amp;Beimischung ist darin?</translation>
  </message>
  <message>
   <source>How the customer's prices are made.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In a row where no island is named:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In detail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In no year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In the currency of the quotation.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In the currency of the site.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Inspections due</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Installed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Installed (part number)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Installed parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Installer's pack</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Installer's work</source>
   <translation>Arbeit des Monteurs</translation>
  </message>
  <message>
   <source>Is a hold-open l&amp;atch wanted?</source>
   <translation>Soll eine Arre&amp;tierung da sein?</translation>
  </message>
  <message>
   <source>Is a re&amp;connectable breakaway wanted?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Is it a &amp;fenced above-ground site, closed to the public?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Is the DEF nozzle used inside the flammable &amp;zone of a fuel dispenser?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Island of the dispenser</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Island {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Islands of the new dispensers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Iss&amp;ue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Issue although hoses are left out</source>
   <translation>Trotz fehlender Schläuche abgeben</translation>
  </message>
  <message>
   <source>It can be put together again after it separated, where its maker says so.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>It expired after {0}. Requote it and keep it: revision {1} opens.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>It hangs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>It is valid through {0}. Note the customer's answer, or requote it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Judged with the diesel family</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Judging {part} at {label}…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep as usual terms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep both</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep mine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep or replace</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keeps the grade on sale; empty goes by liquid and blend.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keeps, other than the set in hand: {lines}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kept</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kept as usual terms in {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kept parts cost nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kerosene</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keys</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kind of a part without a catalog number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kind of part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>La&amp;nguage</source>
   <translation>&amp;Sprache</translation>
  </message>
  <message>
   <source>Labor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Language of the papers</source>
   <translation>Sprache der Papiere</translation>
  </message>
  <message>
   <source>Large tanks, high flow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last day (YYYY-MM-DD)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last done</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lead time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least cost</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Leave and &amp;lose the changes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Leave the marked part open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Leave the terms as they were? What you wrote here is lost.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Leave {part} open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Legs of the way seen from above, separated by semicolons, where the hose must go round a corner.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Let all parts go</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Let the price lists decide again, and quote again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Letterhead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Letterhead, conditions, prices, labor and taxes stand in every new quotation then</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>License</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lies on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Limit from: {source}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Limits behind it: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Line by line, as printed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Liquid</source>
   <translation>Flüssigkeit</translation>
  </message>
  <message>
   <source>Liquid and blend</source>
   <translation>Flüssigkeit und Mischung</translation>
  </message>
  <message>
   <source>Liquid only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Liquid sold today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>List prices of the catalog in this currency.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>List prices with what goes with the sets; longest lead time {days}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Local rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Local rules to show</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Long hose, yard or delivery</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Look into the outlet: one bore, or one tube inside another.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Look up any catalog part and read what speaks against it here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Looking for sets…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lowest air temperature the hardware meets.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Made (UTC)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Make the change again that was taken back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Make the drawing smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Maker</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Making the paper…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Male</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Margin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Mark a part to read what speaks against it here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Measure from the point on the ground below the outlet. The drawing follows.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Measured at the dispenser's outlet with the nozzle open.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Merge both</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Merged. Yours stands where both changed the same (yours / theirs):</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Merged: both edits go into the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Meters, liters, newtons, kilopascals.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Metric</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Metric units</source>
   <translation>Metrische Einheiten</translation>
  </message>
  <message>
   <source>Money</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Move the chosen rows down (Alt+Down)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Move the chosen rows up (Alt+Up)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>N&amp;one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NOT in the book: taken off its list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NOT saved</source>
   <translation>NICHT gespeichert</translation>
  </message>
  <message>
   <source>NOT saved yet: waiting for the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NOT saved: saved by another window meanwhile</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NOT saved: the book may only be read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NPT</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>Name and reason stand on record with the quotation.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of a new site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of the dispenser</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of the g&amp;rade</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of the new site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of the position</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name printed on the quotation.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name, customer, local rules, climate and service of the site.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Names of the new dispensers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Near side, far side, high tank, boat deck.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Needed: stands on the paper beside your name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Net present value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>New option, total</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>New or refurbished</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>New part {0}, pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Next due</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No</source>
   <translation>Nein</translation>
  </message>
  <message>
   <source>No catalog part has this in its number, name or maker.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No for one that the conversion adds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No list of parts is offered until this is settled.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No open quotation is touched by a change of catalog or price lists.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No other part could hang here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No other set differs in a way worth showing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No part comes into question while the answers contradict each other.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No part of the set takes longer to come.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No plan can be made</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No position is surveyed yet: say what each of them sells, then quote.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No quotation yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No rows. Add, or the Insert key, makes one; rows can be pasted from a spreadsheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No set is planned for this position.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No terms in hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No&amp;tes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>None</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not all changes are in the book yet; choose the language when they are.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not everything is saved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not known yet</source>
   <translation>Noch nicht bekannt</translation>
  </message>
  <message>
   <source>Not ready</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not surveyed yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not surveyed yet, and not in the list: {labels}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not surveyed yet, and not quoted: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Note it as do&amp;ne today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Note to the answer: how it came, what was said</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Note to the customer's answer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing differs between the two.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing has been agreed yet.</source>
   <translation>Noch ist nichts vereinbart.</translation>
  </message>
  <message>
   <source>Nothing is agreed for this position.</source>
   <translation>Für diese Position ist nichts vereinbart.</translation>
  </message>
  <message>
   <source>Nothing is agreed that could be undone.</source>
   <translation>Es ist nichts vereinbart, was zurückgenommen werden könnte.</translation>
  </message>
  <message>
   <source>Nothing is hidden: what is broken, what is open, what is worth knowing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was recorded: answers that are marked need a look.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was saved: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was written. {path}: {reason}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was written: choose a cell further left, or copy fewer; the table has {0} columns.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was written: the table takes at most {0} rows.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nozzle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nozzle hook</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number and day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number, customer, site or part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number, name or maker</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number, name or maker of a part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>O&amp;utlet height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the converted hardware.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the dispenser's own thread.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the nozzle's inlet at rest, above the ground.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Once for each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Once, or before the lines are added up.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One bore</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One kind, or every kind.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One moment…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One of these kinds of part; empty: at every set.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One person a line: role; name; telephone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One revision so far.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One sentence in each row.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One sentence.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One to four alternatives side by side in one quotation.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Only gasoline has vapor recovery at the nozzle. Whether it may be taken out is for the local air agency to say.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Only where the set holds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open a file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open a row to follow the calculation by hand: formula, figures, result, source.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open a&amp;ll</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open, add or remove surveys of the book.</source>
   <translation>Aufnahmen im Buch öffnen, hinzufügen, entfernen.</translation>
  </message>
  <message>
   <source>Opening the book of surveys…</source>
   <translation>Das Buch der Aufnahmen wird geöffnet…</translation>
  </message>
  <message>
   <source>Option</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Option left out, total</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Option of the pick list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Option “{0}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Options</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Options leave hoses out: issuing it asks why. Check the paper first.</source>
   <translation>Varianten lassen Schläuche aus: beim Abgeben wird nach dem Grund gefragt. Zuerst das Papier prüfen.</translation>
  </message>
  <message>
   <source>Options side by side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Other parts for this place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Other set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Other sets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Other side of dispenser {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outcome</source>
   <translation>Ergebnis</translation>
  </message>
  <message>
   <source>Outcome or part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outlet p&amp;oints</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outlet to fille&amp;r, level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outlet to filler, level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outlet to hook, &amp;level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Own onboard shares</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Owner's offers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Owner's source, named above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>PD&amp;F…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>PNG or JPEG for the letterhead.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pages of the bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pages of the conversion report</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pages of the installer's paper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pages of the quotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Panels of the set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Paper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Papers to take along, the record of each position, replacements from the truck, inspections.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parallel, 55°</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>Part not on the &amp;truck</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Part number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Part that is not on the truck</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Part {0} left out, pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parts &amp;list of the site</source>
   <translation>Stück&amp;liste des Standorts</translation>
  </message>
  <message>
   <source>Parts list</source>
   <translation>Stückliste</translation>
  </message>
  <message>
   <source>Parts list of the site</source>
   <translation>Stückliste des Standorts</translation>
  </message>
  <message>
   <source>Parts of all positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parts of the set in hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parts of this set are kept by choice, which leaves no other set to compare. Let them go to see others.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Paste positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Path at the dispenser</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>People to call</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Percent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Percent by volume at most: ethanol in gasoline, biodiesel in diesel, kerosene or fuel oil. Take the highest figure the supplier may deliver.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Percent of separations after which it is replaced all the same.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Percent of what is fitted, rounded up to whole pieces.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Permit number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Photos</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pick &amp;list…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pick a &amp;file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pick a part in the drawing or the list.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Picture of the letterhead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pieces of {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Place and reach</source>
   <translation>Ort und Reichweite</translation>
  </message>
  <message>
   <source>Plan this pos&amp;ition again</source>
   <translation>Pos&amp;ition neu planen</translation>
  </message>
  <message>
   <source>Plan this position &amp;again</source>
   <translation>Position neu pl&amp;anen</translation>
  </message>
  <message>
   <source>Planned now</source>
   <translation>Jetzt geplant</translation>
  </message>
  <message>
   <source>Planned, agreed and built side by side</source>
   <translation>Geplant, vereinbart und gebaut nebeneinander</translation>
  </message>
  <message>
   <source>Planning all positions…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Planning and reading what hangs there…</source>
   <translation>Planen und lesen, was dort hängt…</translation>
  </message>
  <message>
   <source>Planning this position…</source>
   <translation>Diese Position wird geplant…</translation>
  </message>
  <message>
   <source>Planning {done} of {total} positions over all options…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Planning…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plate and figures of the chosen part…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pos&amp;ition today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Position</source>
   <translation>Position</translation>
  </message>
  <message>
   <source>Position &amp;above</source>
   <translation>Position &amp;darüber</translation>
  </message>
  <message>
   <source>Position b&amp;elow</source>
   <translation>Position dar&amp;unter</translation>
  </message>
  <message>
   <source>Position {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Position {0} today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Position {0}: an entry outside its limit is marked at once.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Position, dispenser or site.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Positions and parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Positions on the parts list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Positions that get the answers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Positions to agree on</source>
   <translation>Zu vereinbarende Positionen</translation>
  </message>
  <message>
   <source>Pr&amp;ices</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prepay, card or console. A latched nozzle would then spill at the next start.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pressure at the outlet while flow&amp;ing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price</source>
   <translation>Preis</translation>
  </message>
  <message>
   <source>Price follows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price lists</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price of an hour of &amp;work</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price of one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price of one &amp;more part number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price of one piece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price, sets chosen together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price, {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Price, {currency}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prices and where they come from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prices are shown once there is a quotation.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prices by name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prices missing in these amounts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prices that follow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prin&amp;t…</source>
   <translation>Druc&amp;ken…</translation>
  </message>
  <message>
   <source>Printed as written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Printed in full.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Printed in the report.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Printed on the bill with this position.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Printed on the bill.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pro&amp;gram of several sites…</source>
   <translation>Pro&amp;gramm mehrerer Standorte…</translation>
  </message>
  <message>
   <source>Program of several sites</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pu&amp;ll of the cord</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pull that the outlet &amp;bears</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Put a survey file into the book and open it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Put it back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Put this backup in the place of the book? What was saved after it is then no longer in the book. What lies there now is set aside beside it and can be put back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Put this price, your name and reason into the terms, and quote again; other parts may be cheaper then</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Qty</source>
   <translation>Menge</translation>
  </message>
  <message>
   <source>Quotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quotation and part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quotations in the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quotations that a change touches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quote on these terms (Ctrl+Return)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quote the marked quotation again: its own survey and terms, prices of today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quote the quotation looked at again: its own survey and terms, prices and catalog of today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quote the survey that is open, on the terms in hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quote the survey that is open; or look a quotation up in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quote this survey, issue the quotation, note the answer, revise it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quoted again: it is what the book holds as revision {0}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quoted on the survey as it was before. It has been changed since: quote this survey for that.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rate of an &amp;hour</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ratings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Re&amp;move own rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Re&amp;name</source>
   <translation>&amp;Umbenennen</translation>
  </message>
  <message>
   <source>Re&amp;name…</source>
   <translation>&amp;Umbenennen…</translation>
  </message>
  <message>
   <source>Read a &amp;filled form…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read a filled form</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read a revision</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read a stock &amp;list…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read a stock list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read a survey file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read and change the terms in hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read as {0}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read from &amp;file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read positions from a &amp;table…</source>
   <translation>Positionen aus &amp;Tabelle lesen…</translation>
  </message>
  <message>
   <source>Read positions from a table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read positions from {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read revision {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read the limits of a jurisdiction, or copy one and change rows.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read the price lists and the open quotations anew</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read where</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reading the open quotations…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reading what hangs there…</source>
   <translation>Lesen, was dort hängt…</translation>
  </message>
  <message>
   <source>Readings and trials</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ready stations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ready stations:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ready terms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reaso&amp;n</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reason</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reason for the replacement</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reconnectable ones re&amp;placed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Record an installed part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Record the planned set as installed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Registration or tax number, printed as written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remarks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove a filler</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove an installed part from the list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove chosen rows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove further filler {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove it &amp;from the list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove it from the list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove the chosen rows (Ctrl+Delete)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove the rules “{title}” for good?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove this filler</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove “{name}” from the list? Its past saves stay in the database.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Removed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Removed here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rename the position</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rename {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Repeat dispenser {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Repeat the d&amp;ispenser…</source>
   <translation>Zapfsäule &amp;wiederholen…</translation>
  </message>
  <message>
   <source>Repeat the positions of one side on the other.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Report of the fault</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Requo&amp;te it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Restore a backup…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Restore from a &amp;file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Restore from a file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Retractor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Return or a double click opens one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rev.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Revision after</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Revision before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Revision {0} as it was sent on {1}; {2}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Revision {0}, never issued; {1}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rows of the local rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rule tables</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rules of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>S&amp;tanding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>S&amp;top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sa&amp;ve as it lies in the book…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save &amp;CSV…</source>
   <translation>CS&amp;V speichern…</translation>
  </message>
  <message>
   <source>Save &amp;XLSX…</source>
   <translation>&amp;XLSX speichern…</translation>
  </message>
  <message>
   <source>Save &amp;again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save &amp;calendar…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save P&amp;DF…</source>
   <translation>P&amp;DF speichern…</translation>
  </message>
  <message>
   <source>Save a &amp;calendar…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save again</source>
   <translation>Erneut speichern</translation>
  </message>
  <message>
   <source>Save as a file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save in the boo&amp;k</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save it in the book as a draft.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save it: it takes the place of the draft in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save it: revision {0} opens as a draft, what was sent stays.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save the &amp;bill as built…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save the bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save the plan as P&amp;DF…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save the record as P&amp;DF…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save the terms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save this ro&amp;w</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saved as {path}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saved as {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saving…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Say what this position sells, for what, and whether vapor is recovered. Until then it is not quoted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sc&amp;ope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Scanned code of a sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Scope and conditions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Search quotations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Selling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set</source>
   <translation>Satz</translation>
  </message>
  <message>
   <source>Set in hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set of position {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set, list price</source>
   <translation>Satz, Listenpreis</translation>
  </message>
  <message>
   <source>Set, ± {currency}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sets</source>
   <translation>Sätze</translation>
  </message>
  <message>
   <source>Sets are chosen together so that parts and this price for each part number cost least; empty: each position is chosen for itself.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sets of the position side by side</source>
   <translation>Sätze der Position nebeneinander</translation>
  </message>
  <message>
   <source>Sets of this report: {0}. Other papers: {1}.</source>
   <translation>Sätze dieses Berichts: {0}. Andere Papiere: {1}.</translation>
  </message>
  <message>
   <source>Sets shown</source>
   <translation>Gezeigte Sätze</translation>
  </message>
  <message>
   <source>Sets shown on pages and papers</source>
   <translation>Auf Seiten und Papieren gezeigte Sätze</translation>
  </message>
  <message>
   <source>Sets: {0}</source>
   <translation>Sätze: {0}</translation>
  </message>
  <message>
   <source>Share of gasoline</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Share of gasoline into vehicles with onboard recovery, year by year; it goes before the table.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sho&amp;w again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Short name of the copy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show rows that hold these words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show rows that hold…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show the whole drawing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show theirs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sideways</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Signed (type the name)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Site</source>
   <translation>Standort</translation>
  </message>
  <message>
   <source>Site a&amp;nswers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Site data</source>
   <translation>Standortdaten</translation>
  </message>
  <message>
   <source>Sites converted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sites of the program</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Size</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Size for this thread: {0}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Some codes allow a longer hose there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Spares</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Spares and stock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Specifies the hanging hardware of motor-fuel dispensers: what fits, why, and what it costs.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Staff on site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Standing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stands beside every step that you take</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Start a survey of another site.</source>
   <translation>Eine Aufnahme eines weiteren Standorts beginnen.</translation>
  </message>
  <message>
   <source>Status</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stays and g&amp;oes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Step of &amp;unit prices</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Step of the &amp;total</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Step of the amount payable.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Steps of the quotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Still to save, at most</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stock list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stock list: part number and quantity, one part a line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stock, sets chosen together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stocked parts in place of the missing one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stopped. What was worked out so far is kept in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stopped; nothing was quoted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Subjects of the terms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sum</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sum, {currency}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Survey in hand (positions: {positions}, dispensers: {dispensers}): {most}{hours:f} hours.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Surveys</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Surveys in the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Swivel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ta&amp;ke it back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take &amp;over the planned set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take back the last change.</source>
   <translation>Die letzte Änderung zurücknehmen.</translation>
  </message>
  <message>
   <source>Take its successor {numbers}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take ter&amp;ms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take terms, then quote the survey; or look a quotation up in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take the last agreement back; the history keeps it, with who did so and why.</source>
   <translation>Die letzte Vereinbarung zurücknehmen; der Verlauf behält sie, mit wer und warum.</translation>
  </message>
  <message>
   <source>Take the position off the site. Undo brings it back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take theirs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Taken off the cost of the conversion, in the site's currency.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Takes the place alone; nothing else changes and no should is given up.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Taper NPT and parallel G look alike and do not seal with each other.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Taper, 60°</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Task</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tasks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tasks with their hours, at one rate.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tax</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tax is &amp;rounded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Taxes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Telep&amp;hone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ter&amp;ms of sale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Terms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Terms as in {path}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Terms not saved as a file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Terms of the quotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Terms: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tests, permits, closing: costs that the owner knows, in the currency of the site.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tests, repairs, spare parts of the recovery system.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The agreed set breaks a must</source>
   <translation>Der vereinbarte Satz bricht ein Muss</translation>
  </message>
  <message>
   <source>The bill could not be made: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book did not answer and was waited for no longer. Look whether the step was taken.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book is the backup again: {count} surveys. What lay there before is {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book of surveys cannot be opened.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The conversion could not be worked out: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The currency of every amount in the quotation, and how amounts are rounded.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The customer's own expectation, for comparing breakaways. All empty: no comparison.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The details for a report are in {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The duty decides spout, flow and how far the hose has to turn and reach.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The family decides which listing standards, seals and spouts come into question.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The flow cannot be shown here: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The forecourt from above, and all answers as a table to write into.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The form also holds {0}: go to each position, look at it and keep it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The history of agreements, two of them compared; planned, agreed and built side by side.</source>
   <translation>Der Verlauf der Vereinbarungen, zwei davon verglichen; geplant, vereinbart und gebaut nebeneinander.</translation>
  </message>
  <message>
   <source>The last agreement is taken back.</source>
   <translation>Die letzte Vereinbarung ist zurückgenommen.</translation>
  </message>
  <message>
   <source>The last changes are not in the book yet: {reason} It is tried again by itself.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The last changes of “{name}” are not in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The offer ended on {0}: requote it before it is issued.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The order stands. What changes now needs a quotation of its own.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The order stands; kept, this becomes a quotation of its own. Give it another number in its terms.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The program met a fault of its own and did not finish the last step. Your survey: {state}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The program met a fault of its own and did not finish this.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The quotation goes out without this price and says so on the paper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The record of {0} is kept in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The report below is what is copied; nothing is sent. Read it before you hand it on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The run was stopped early.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The same as wanted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The search was ended before the least cost was proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The set is agreed.</source>
   <translation>Der Satz ist vereinbart.</translation>
  </message>
  <message>
   <source>The set is held against this flow at the coldest and the hottest temperature.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The sets as planned for the answers of today. Papers show what is agreed from then on.</source>
   <translation>Die Sätze, wie für die Antworten von heute geplant. Papiere zeigen von da an, was vereinbart ist.</translation>
  </message>
  <message>
   <source>The sets of the conversion, {0}. Papers show what is agreed from then on.</source>
   <translation>Die Sätze des Umbaus, {0}. Papiere zeigen von da an, was vereinbart ist.</translation>
  </message>
  <message>
   <source>The sets of the option ordered are agreed: papers of the survey show them from now on.</source>
   <translation>Die Sätze der bestellten Variante sind vereinbart: Papiere der Aufnahme zeigen sie von nun an.</translation>
  </message>
  <message>
   <source>The stock holds no other part of this kind.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The survey has been changed since: quote this survey for that. Requoted, it stays as it was.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The survey has changed since this form was printed. Look at every line.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The survey was changed while it was quoted, so nothing was quoted. Quote it again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The two surveys do not go together. Keep both, or one of them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The usual terms are as they were</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The value is written as the source prints it: digits, yes or no, a word, cases separated by commas; empty for no figure. The adopted code and the authority having jurisdiction decide; this table only records them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Then a splitter can join both to a coaxial hose.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no set to pick a part from.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no set whose flow could be shown.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no such file here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>These options leave hoses out:
{0}
Your name and reason stand on the paper.</source>
   <translation>Diese Varianten lassen Schläuche aus:
{0}
Ihr Name und der Grund stehen auf dem Papier.</translation>
  </message>
  <message>
   <source>These positions take the place of all that are there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>They are on their way to the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>They are saved by themselves as soon as the book takes them; this question then goes away.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This change is not in the book yet: {reason} It stays in the window.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This is no PNG or JPEG picture.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This picture cannot be read.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This position has no set, so there is nothing to record.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This position only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This survey is not on the list of the book any more: it was taken off. It stays in the window.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Those of &amp;this quotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thread si&amp;ze</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Three letters of ISO 4217, such as EUR.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Three letters of ISO 4217, such as USD.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Title of the copy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To be read only.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To be read only. The papers are those that were sent.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To put a position back into service.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To which positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Total</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Total {sum}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Towards a grant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tried {done} of {total} parts…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Trucks</source>
   <translation>Lkw</translation>
  </message>
  <message>
   <source>Try again</source>
   <translation>Erneut versuchen</translation>
  </message>
  <message>
   <source>Trying the parts of the catalog…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tur&amp;ns left on the drum at the filler</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>US units</source>
   <translation>US-Einheiten</translation>
  </message>
  <message>
   <source>Undo the last agreement</source>
   <translation>Letzte Vereinbarung zurücknehmen</translation>
  </message>
  <message>
   <source>Unified</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Unit price of {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Urea solution for diesel exhaust</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use the marked part in the set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use these terms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use {part}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Vacuum assist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Vacuum-assist coaxial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Valid through</source>
   <translation>Gültig bis</translation>
  </message>
  <message>
   <source>Value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Value for the chosen cells</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Vapor</source>
   <translation>Gas</translation>
  </message>
  <message>
   <source>Vapor in the inner tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Vapor in the outer ring</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Vapor recovery</source>
   <translation>Gasrückführung</translation>
  </message>
  <message>
   <source>Wa&amp;y round the vehicle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wait no &amp;longer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Waiting for the book…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Way out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Way round the vehicle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ways to convert</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wear log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wh&amp;y not?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What changed between the two revisions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What changed from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What chose the sets</source>
   <translation>Was die Sätze wählte</translation>
  </message>
  <message>
   <source>What d&amp;oes the hose serve?</source>
   <translation>Was &amp;betankt der Schlauch?</translation>
  </message>
  <message>
   <source>What differs between two agreements</source>
   <translation>Was sich zwischen zwei Vereinbarungen unterscheidet</translation>
  </message>
  <message>
   <source>What else would &amp;do here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What else would do here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What flows through the hose decides listing class and seals.</source>
   <translation>Was durch den Schlauch fließt, bestimmt Zulassungsklasse und Dichtungen.</translation>
  </message>
  <message>
   <source>What hangs here today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What hangs there now decides which vapor openings have to be closed in a conversion.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What hangs there today, what is to hang there, and what the outlet offers.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What happened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is added to goods and labor.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is asked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is delivered beside the parts that are fitted, and what it is worth to stock few part numbers.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is kept of the book, one more now, or one put back in its place.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is missing, and what is there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is not included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is offered, what is not, and on which terms of sale.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is supplied and done.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What it changes that sets share part numbers, against each position chosen for itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What it does</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What it is reckoned from.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What it pays for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What its plate says</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What makers take off their lists for you: it makes the cost of the goods.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What meter and pump pass at most.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What passes through the dispenser's &amp;outlet?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What stays, goes and comes, in which order, at what cost, with what effect on emissions.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What stocking another part number is worth, in the currency of the site. Above 0 the sets of the whole station are chosen together, so that like positions get like parts.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What tells this quotation from others, and how long it stands.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the book holds of “{name}” is now in {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the conversion rests on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the dispenser gives</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the hose serves, how it is stowed, and what the dispenser gives.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the percentage is taken from.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the quotation is for.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What this position asks of its set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What this program can and cannot say.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What was found about it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What would help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>When (UTC)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the cord's cla&amp;mp sits on the hose</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the quotation stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the rate was read.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the set that is planned hangs here already.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the terms of the next quotation come from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which &amp;liquid is sold here?</source>
   <translation>Welche &amp;Flüssigkeit wird hier verkauft?</translation>
  </message>
  <message>
   <source>Which &amp;tank feeds the position?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which answers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which breakaways it draws on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which hoses it draws on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which limits apply. The adopted code and the authority having jurisdiction decide; ask them where a row is unconfirmed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which way a rest goes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>While out of service.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who answers for it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who answers questions.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who did it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who is quoted to.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who quotes. It stands at the top of the quotation.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whole drawing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whom the bill is for.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Why</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Why not?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Why the lists do not hold.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wishes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>With all figures the part is judged like a new one and may stay; without any, it goes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>With or without biodiesel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>With or without ethanol</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Without it no payback is shown.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Without price: {parts}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Work done by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Work in hand</source>
   <translation>Laufende Arbeit</translation>
  </message>
  <message>
   <source>Working out all positions…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Working out what is due…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Worth of one part number &amp;less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wound on a drum</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write into chosen cells</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write the survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write these terms into a file (Ctrl+S)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write this survey to a file. The book keeps every change by itself.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write to a file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write your name first: it stands on record with this step.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write {0} cells</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write {0} of {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Writes what the book holds of a survey that cannot be read into a file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Written to {path}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Year or rank</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Year {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Year-month-day.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Year-month-day. Prices that are valid on this day are used.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Yearly &amp;upkeep today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Yearly upkeep &amp;afterwards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Years of the program</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Yes</source>
   <translation>Ja</translation>
  </message>
  <message>
   <source>Your changes are in the book; a newer revision too</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Your name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Your own quotation number.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a fixed amount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a photo of the record</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a question is open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>always downwards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>always upwards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an amount for each kilogram</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an assumed figure, to be confirmed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>and {0} more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>any</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as agreed</source>
   <translation>wie vereinbart</translation>
  </message>
  <message>
   <source>as built</source>
   <translation>wie gebaut</translation>
  </message>
  <message>
   <source>as changed in the window</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as in the table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as in the worked example</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as planned</source>
   <translation>wie geplant</translation>
  </message>
  <message>
   <source>as the agency asks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at most </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>being planned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>built in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choose a cell further left: the table ends after {0} columns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>columns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>complete</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cost and a mark-up on it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cost with a margin on the selling price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dated {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>day of handing over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dispenser</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>does not fit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty: no picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fits, good practice not met in full</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for each line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its last day is over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>list price less a discount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>list price: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>my_county</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>needs a look</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no address yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no age limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no figure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no listing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no longer in the catalog</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no longer made</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not chosen in any option</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not dated</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not kept yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not known here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not recorded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not stated</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not surveyed yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>once for the whole quotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one for all, or one for each: 1, 2, 2, 3</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pasted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>percent of the goods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>put in {0}; set {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>quoted again, not kept yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>reason</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>replaced by its maker</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>replaced by its maker: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>r{0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>same</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>say why: it stands on the paper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>somebody has to answer for a price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>something is still needed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stock list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the catalog states otherwise: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file of the terms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the filled form</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the newest is revision {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the straight way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the usual figure for the duty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the usual figure of the local rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>those of {number} r{revision}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>title of the copy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to the nearest, a half to the even digit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to the nearest, a half upwards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>which blocks the issue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>with agreement</source>
   <translation>mit Vereinbarung</translation>
  </message>
  <message>
   <source>would not do</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>yes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>yes or no</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>your name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} (stays)</source>
   <translation>{0} (bleibt)</translation>
  </message>
  <message>
   <source>{0} against the first option</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} cells cannot be used; nothing is taken.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} differences</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} missing, {1} by a person's word, {2} in all.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} of {1} are due by today.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} of {1} positions differ.</source>
   <translation>{0} von {1} Positionen unterscheiden sich.</translation>
  </message>
  <message>
   <source>{0} of {1} stocked parts of this kind would do.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} open quotation is touched by a change of catalog or price lists:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} open quotations are touched by a change of catalog or price lists:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} pages</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} position picked</source>
   <translation>{0} Position gewählt</translation>
  </message>
  <message>
   <source>{0} positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} positions can be taken.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} positions picked</source>
   <translation>{0} Positionen gewählt</translation>
  </message>
  <message>
   <source>{0} price is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} prices are missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} quotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} quotations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} r{1}: an older revision</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} sets are agreed; papers show them from now on.</source>
   <translation>{0} Sätze sind vereinbart; Papiere zeigen sie von nun an.</translation>
  </message>
  <message>
   <source>{0}: installed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: not in the book yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: reason</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: the options differ</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: the same</source>
   <translation>{0}: gleich</translation>
  </message>
  <message>
   <source>{0}: the sets differ</source>
   <translation>{0}: die Sätze unterscheiden sich</translation>
  </message>
  <message>
   <source>{0}: the survey has changed since the sheet was printed. Print it anew before working by it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: the survey is as it was when the sheet was printed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} of {all} positions have no set and are not in the sum.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} other parts could hang here, {misfits} of the kind could not.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} other parts could hang here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} parts · lead time {days} · mass {mass} · list prices</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} positions would change.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: {done} of {ready} ready sites are placed; {others} are not ready.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is there already, and this program did not write it as such a file. Replace it?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{rows} rows in {place}. Say what each column holds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{site}, {count} positions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>“{name}” is open. Open another survey first.</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
