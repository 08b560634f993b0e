<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>window</name>
  <message>
   <source> {0} more entries need a look.</source>
   <translation> {0} weitere Eingaben ansehen.</translation>
  </message>
  <message>
   <source>&amp;About and safety</source>
   <translation>&amp;Über und Sicherheit</translation>
  </message>
  <message>
   <source>&amp;Accept this answer</source>
   <translation>Diese Antwort &amp;übernehmen</translation>
  </message>
  <message>
   <source>&amp;Accept this way out</source>
   <translation>Diesen Ausweg &amp;annehmen</translation>
  </message>
  <message>
   <source>&amp;Accepted</source>
   <translation>&amp;Angenommen</translation>
  </message>
  <message>
   <source>&amp;Add</source>
   <translation>&amp;Hinzufügen</translation>
  </message>
  <message>
   <source>&amp;Add a file…</source>
   <translation>Datei &amp;hinzufügen…</translation>
  </message>
  <message>
   <source>&amp;Add part</source>
   <translation>Te&amp;il hinzufügen</translation>
  </message>
  <message>
   <source>&amp;Address</source>
   <translation>Anschri&amp;ft</translation>
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
   <translation>&amp;Alle</translation>
  </message>
  <message>
   <source>&amp;All surveys…</source>
   <translation>&amp;Alle Aufnahmen…</translation>
  </message>
  <message>
   <source>&amp;Also those that do not fit</source>
   <translation>&amp;Auch, was nicht passt</translation>
  </message>
  <message>
   <source>&amp;Amount or percent</source>
   <translation>Be&amp;trag oder Prozent</translation>
  </message>
  <message>
   <source>&amp;Answer for it</source>
   <translation>&amp;Dafür einstehen</translation>
  </message>
  <message>
   <source>&amp;Back</source>
   <translation>&amp;Zurück</translation>
  </message>
  <message>
   <source>&amp;Back a step</source>
   <translation>Schritt &amp;zurück</translation>
  </message>
  <message>
   <source>&amp;Back up now</source>
   <translation>Jetzt &amp;sichern</translation>
  </message>
  <message>
   <source>&amp;Backups…</source>
   <translation>Sicheru&amp;ngen…</translation>
  </message>
  <message>
   <source>&amp;Begin</source>
   <translation>&amp;Beginnen</translation>
  </message>
  <message>
   <source>&amp;Beyond the years whose onboard share is known</source>
   <translation>Nach den Jahren, deren Anteil bekannt ist</translation>
  </message>
  <message>
   <source>&amp;Bill as built</source>
   <translation>Stückl&amp;iste, wie gebaut</translation>
  </message>
  <message>
   <source>&amp;Book</source>
   <translation>&amp;Buch</translation>
  </message>
  <message>
   <source>&amp;Book ({0} touched)</source>
   <translation>B&amp;uch ({0} berührt)</translation>
  </message>
  <message>
   <source>&amp;Catalog the book plans with</source>
   <translation>&amp;Katalog, mit dem das Buch plant</translation>
  </message>
  <message>
   <source>&amp;Catalogs and editions</source>
   <translation>&amp;Kataloge und Ausgaben</translation>
  </message>
  <message>
   <source>&amp;Close</source>
   <translation>S&amp;chließen</translation>
  </message>
  <message>
   <source>&amp;Close all</source>
   <translation>Alle schl&amp;ießen</translation>
  </message>
  <message>
   <source>&amp;Compare</source>
   <translation>&amp;Vergleichen</translation>
  </message>
  <message>
   <source>&amp;Conversion of the site</source>
   <translation>Um&amp;bau der Tankstelle</translation>
  </message>
  <message>
   <source>&amp;Copy</source>
   <translation>K&amp;opieren</translation>
  </message>
  <message>
   <source>&amp;Copy answers to…</source>
   <translation>Antworten &amp;kopieren nach…</translation>
  </message>
  <message>
   <source>&amp;Copy the picture</source>
   <translation>Bild &amp;kopieren</translation>
  </message>
  <message>
   <source>&amp;Currency</source>
   <translation>Währ&amp;ung</translation>
  </message>
  <message>
   <source>&amp;Customers…</source>
   <translation>K&amp;unden…</translation>
  </message>
  <message>
   <source>&amp;Day</source>
   <translation>T&amp;ag</translation>
  </message>
  <message>
   <source>&amp;Declined</source>
   <translation>Abgelehnt</translation>
  </message>
  <message>
   <source>&amp;Describe part</source>
   <translation>Teil besch&amp;reiben</translation>
  </message>
  <message>
   <source>&amp;Dispenser</source>
   <translation>&amp;Zapfsäule</translation>
  </message>
  <message>
   <source>&amp;Dispenser ({0})</source>
   <translation>&amp;Zapfsäule ({0})</translation>
  </message>
  <message>
   <source>&amp;Duplicate</source>
   <translation>&amp;Duplizieren</translation>
  </message>
  <message>
   <source>&amp;E-mail</source>
   <translation>&amp;E-Mail</translation>
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>Bearbei&amp;ten</translation>
  </message>
  <message>
   <source>&amp;Edition</source>
   <translation>Au&amp;sgabe</translation>
  </message>
  <message>
   <source>&amp;Empty all figures</source>
   <translation>&amp;Alle Zahlen leeren</translation>
  </message>
  <message>
   <source>&amp;Export as a table…</source>
   <translation>Als Tabelle &amp;ausgeben…</translation>
  </message>
  <message>
   <source>&amp;Fill it</source>
   <translation>Aus&amp;füllen</translation>
  </message>
  <message>
   <source>&amp;Filler height</source>
   <translation>&amp;Höhe des Einfüllstutzens</translation>
  </message>
  <message>
   <source>&amp;Find anything…</source>
   <translation>Alles &amp;suchen…</translation>
  </message>
  <message>
   <source>&amp;Fit it and note it in the record</source>
   <translation>Einbauen und im Protokoll &amp;vermerken</translation>
  </message>
  <message>
   <source>&amp;Forget</source>
   <translation>&amp;Vergessen</translation>
  </message>
  <message>
   <source>&amp;Freight</source>
   <translation>&amp;Fracht</translation>
  </message>
  <message>
   <source>&amp;Go</source>
   <translation>&amp;Gehe zu</translation>
  </message>
  <message>
   <source>&amp;Headings in the first row</source>
   <translation>Überschriften in der ersten &amp;Zeile</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>Hilf&amp;e</translation>
  </message>
  <message>
   <source>&amp;History</source>
   <translation>&amp;Verlauf</translation>
  </message>
  <message>
   <source>&amp;Hours with a single-use breakaway</source>
   <translation>Stunden mit &amp;Einmal-Abreißkupplung</translation>
  </message>
  <message>
   <source>&amp;Import a table…</source>
   <translation>Tabelle &amp;einlesen…</translation>
  </message>
  <message>
   <source>&amp;Import…</source>
   <translation>Einle&amp;sen…</translation>
  </message>
  <message>
   <source>&amp;Inspections and wear</source>
   <translation>Inspekti&amp;onen und Verschleiß</translation>
  </message>
  <message>
   <source>&amp;Installer's work</source>
   <translation>Arbeit des &amp;Monteurs</translation>
  </message>
  <message>
   <source>&amp;Interest on spares</source>
   <translation>&amp;Zins auf Ersatzteile</translation>
  </message>
  <message>
   <source>&amp;Interest, % a year</source>
   <translation>&amp;Zinsen, % im Jahr</translation>
  </message>
  <message>
   <source>&amp;Island of the dispenser</source>
   <translation>&amp;Insel der Zapfsäule</translation>
  </message>
  <message>
   <source>&amp;Islands that they stand on</source>
   <translation>&amp;Inseln, auf denen sie stehen</translation>
  </message>
  <message>
   <source>&amp;Issue it so</source>
   <translation>So &amp;abgeben</translation>
  </message>
  <message>
   <source>&amp;Joints of a container of sealant</source>
   <translation>&amp;Verbindungen je Behälter Dichtmittel</translation>
  </message>
  <message>
   <source>&amp;Keep for this supplier</source>
   <translation>Für diesen Lieferanten &amp;behalten</translation>
  </message>
  <message>
   <source>&amp;Keep today's answer; find sets that last for this one too</source>
   <translation>Heutige Antwort &amp;behalten; Sätze suchen, die auch für diese taugen</translation>
  </message>
  <message>
   <source>&amp;Keys</source>
   <translation>&amp;Tasten</translation>
  </message>
  <message>
   <source>&amp;Language</source>
   <translation>&amp;Sprache</translation>
  </message>
  <message>
   <source>&amp;Least margin, percent</source>
   <translation>&amp;Mindestmarge, Prozent</translation>
  </message>
  <message>
   <source>&amp;Leave it open</source>
   <translation>&amp;Offen lassen</translation>
  </message>
  <message>
   <source>&amp;Let all parts go</source>
   <translation>Alle Teile f&amp;reigeben</translation>
  </message>
  <message>
   <source>&amp;Let the book plan with it</source>
   <translation>Das Buc&amp;h damit planen lassen</translation>
  </message>
  <message>
   <source>&amp;List for a visit</source>
   <translation>&amp;Liste für einen Besuch</translation>
  </message>
  <message>
   <source>&amp;Local rules</source>
   <translation>Örtliche &amp;Regeln</translation>
  </message>
  <message>
   <source>&amp;Local rules…</source>
   <translation>&amp;Örtliche Regeln…</translation>
  </message>
  <message>
   <source>&amp;Longest lead time</source>
   <translation>Längste &amp;Lieferzeit</translation>
  </message>
  <message>
   <source>&amp;Look at the demonstration</source>
   <translation>&amp;Vorführung ansehen</translation>
  </message>
  <message>
   <source>&amp;Make the map</source>
   <translation>Karte erstelle&amp;n</translation>
  </message>
  <message>
   <source>&amp;Measure a distance</source>
   <translation>Abstand &amp;messen</translation>
  </message>
  <message>
   <source>&amp;Metric units</source>
   <translation>&amp;Metrische Einheiten</translation>
  </message>
  <message>
   <source>&amp;Name</source>
   <translation>&amp;Name</translation>
  </message>
  <message>
   <source>&amp;Name of the position</source>
   <translation>Name &amp;des Platzes</translation>
  </message>
  <message>
   <source>&amp;Name of the site</source>
   <translation>&amp;Name der Tankstelle</translation>
  </message>
  <message>
   <source>&amp;Names of the new dispensers</source>
   <translation>&amp;Namen der neuen Zapfsäulen</translation>
  </message>
  <message>
   <source>&amp;New catalog</source>
   <translation>&amp;Neuer Katalog</translation>
  </message>
  <message>
   <source>&amp;New customer</source>
   <translation>Neuer &amp;Kunde</translation>
  </message>
  <message>
   <source>&amp;New family</source>
   <translation>&amp;Neue Familie</translation>
  </message>
  <message>
   <source>&amp;New survey…</source>
   <translation>&amp;Neue Aufnahme…</translation>
  </message>
  <message>
   <source>&amp;New type</source>
   <translation>&amp;Neuer Typ</translation>
  </message>
  <message>
   <source>&amp;Next</source>
   <translation>&amp;Weiter</translation>
  </message>
  <message>
   <source>&amp;Next step</source>
   <translation>&amp;Nächster Schritt</translation>
  </message>
  <message>
   <source>&amp;Note</source>
   <translation>Be&amp;merkung</translation>
  </message>
  <message>
   <source>&amp;Number</source>
   <translation>&amp;Nummer</translation>
  </message>
  <message>
   <source>&amp;Offer</source>
   <translation>Angeb&amp;ot</translation>
  </message>
  <message>
   <source>&amp;Old numbers</source>
   <translation>Alte N&amp;ummern</translation>
  </message>
  <message>
   <source>&amp;One answer</source>
   <translation>&amp;Eine Antwort</translation>
  </message>
  <message>
   <source>&amp;Open</source>
   <translation>Ö&amp;ffnen</translation>
  </message>
  <message>
   <source>&amp;Open with</source>
   <translation>Öffnen &amp;mit</translation>
  </message>
  <message>
   <source>&amp;Other side</source>
   <translation>&amp;Andere Seite</translation>
  </message>
  <message>
   <source>&amp;Other side of the dispenser…</source>
   <translation>&amp;Andere Seite der Zapfsäule…</translation>
  </message>
  <message>
   <source>&amp;Percent</source>
   <translation>&amp;Prozent</translation>
  </message>
  <message>
   <source>&amp;Picture</source>
   <translation>&amp;Bild</translation>
  </message>
  <message>
   <source>&amp;Planned, agreed and built</source>
   <translation>&amp;Geplant, vereinbart und gebaut</translation>
  </message>
  <message>
   <source>&amp;Position</source>
   <translation>&amp;Platz</translation>
  </message>
  <message>
   <source>&amp;Preferences…</source>
   <translation>&amp;Einstellungen…</translation>
  </message>
  <message>
   <source>&amp;Prepared by</source>
   <translation>&amp;Erstellt von</translation>
  </message>
  <message>
   <source>&amp;Price rise, % a year</source>
   <translation>Preissteiger&amp;ung, % im Jahr</translation>
  </message>
  <message>
   <source>&amp;Publish as next edition</source>
   <translation>Als &amp;nächste Ausgabe veröffentlichen</translation>
  </message>
  <message>
   <source>&amp;Put into the book</source>
   <translation>Ins Buch &amp;legen</translation>
  </message>
  <message>
   <source>&amp;Put the article into the draft</source>
   <translation>Artikel in den &amp;Entwurf</translation>
  </message>
  <message>
   <source>&amp;Put the family into the draft</source>
   <translation>Familie in den &amp;Entwurf aufnehmen</translation>
  </message>
  <message>
   <source>&amp;Put the lengths into the draft</source>
   <translation>Längen in den Entwurf &amp;stellen</translation>
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
   <source>&amp;Quote it so</source>
   <translation>So &amp;anbieten</translation>
  </message>
  <message>
   <source>&amp;Quote to this customer</source>
   <translation>Diesem Kunden an&amp;bieten</translation>
  </message>
  <message>
   <source>&amp;Read from file…</source>
   <translation>Aus &amp;Datei lesen…</translation>
  </message>
  <message>
   <source>&amp;Read it in</source>
   <translation>&amp;Einlesen</translation>
  </message>
  <message>
   <source>&amp;Ready ones, written into a file…</source>
   <translation>&amp;Fertige, in eine Datei geschrieben…</translation>
  </message>
  <message>
   <source>&amp;Record</source>
   <translation>Ein&amp;tragen</translation>
  </message>
  <message>
   <source>&amp;Record of the position</source>
   <translation>Protokoll des Plat&amp;zes</translation>
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>&amp;Wiederholen</translation>
  </message>
  <message>
   <source>&amp;Registration</source>
   <translation>&amp;Steuernummer</translation>
  </message>
  <message>
   <source>&amp;Reid vapor pressure</source>
   <translation>Dampfdruck nac&amp;h Reid</translation>
  </message>
  <message>
   <source>&amp;Remove</source>
   <translation>Entfe&amp;rnen</translation>
  </message>
  <message>
   <source>&amp;Rename</source>
   <translation>&amp;Umbenennen</translation>
  </message>
  <message>
   <source>&amp;Repeat</source>
   <translation>&amp;Wiederholen</translation>
  </message>
  <message>
   <source>&amp;Restore…</source>
   <translation>&amp;Zurückholen…</translation>
  </message>
  <message>
   <source>&amp;Revisions</source>
   <translation>Re&amp;visionen</translation>
  </message>
  <message>
   <source>&amp;Rounding</source>
   <translation>&amp;Rundung</translation>
  </message>
  <message>
   <source>&amp;Rules of</source>
   <translation>&amp;Regeln von</translation>
  </message>
  <message>
   <source>&amp;Save</source>
   <translation>&amp;Speichern</translation>
  </message>
  <message>
   <source>&amp;Save the picture…</source>
   <translation>Bild &amp;speichern…</translation>
  </message>
  <message>
   <source>&amp;Save the type</source>
   <translation>Typ &amp;sichern</translation>
  </message>
  <message>
   <source>&amp;Separations at a position in a year</source>
   <translation>&amp;Trennungen an einem Platz im Jahr</translation>
  </message>
  <message>
   <source>&amp;Show it</source>
   <translation>&amp;Zeigen</translation>
  </message>
  <message>
   <source>&amp;Side that is there</source>
   <translation>Vorhandene &amp;Seite</translation>
  </message>
  <message>
   <source>&amp;Site data</source>
   <translation>&amp;Tankstelle</translation>
  </message>
  <message>
   <source>&amp;Source</source>
   <translation>&amp;Quelle</translation>
  </message>
  <message>
   <source>&amp;Start survey</source>
   <translation>Aufnahme &amp;beginnen</translation>
  </message>
  <message>
   <source>&amp;Stay here</source>
   <translation>Hier&amp;bleiben</translation>
  </message>
  <message>
   <source>&amp;Steps taken…</source>
   <translation>&amp;Schritte…</translation>
  </message>
  <message>
   <source>&amp;Stop</source>
   <translation>A&amp;nhalten</translation>
  </message>
  <message>
   <source>&amp;Survey</source>
   <translation>Aufnah&amp;me</translation>
  </message>
  <message>
   <source>&amp;Take away</source>
   <translation>Entfe&amp;rnen</translation>
  </message>
  <message>
   <source>&amp;Take back the last change</source>
   <translation>Letzte Änderung zur&amp;ücknehmen</translation>
  </message>
  <message>
   <source>&amp;Take back the last step</source>
   <translation>Letzten &amp;Schritt zurücknehmen</translation>
  </message>
  <message>
   <source>&amp;Take in a price file…</source>
   <translation>Prei&amp;sdatei übernehmen…</translation>
  </message>
  <message>
   <source>&amp;Take it and quote so</source>
   <translation>&amp;Nehmen und so anbieten</translation>
  </message>
  <message>
   <source>&amp;Take its figures</source>
   <translation>Seine Angaben &amp;übernehmen</translation>
  </message>
  <message>
   <source>&amp;Take off the list</source>
   <translation>Von der Liste &amp;nehmen</translation>
  </message>
  <message>
   <source>&amp;Take positions</source>
   <translation>Plätze über&amp;nehmen</translation>
  </message>
  <message>
   <source>&amp;Take the marked set</source>
   <translation>Markierten Satz &amp;nehmen</translation>
  </message>
  <message>
   <source>&amp;Take this set</source>
   <translation>Diesen Satz &amp;nehmen</translation>
  </message>
  <message>
   <source>&amp;Terms…</source>
   <translation>Be&amp;dingungen…</translation>
  </message>
  <message>
   <source>&amp;Theme</source>
   <translation>&amp;Farben</translation>
  </message>
  <message>
   <source>&amp;Thread standard</source>
   <translation>Gewinde&amp;norm</translation>
  </message>
  <message>
   <source>&amp;Three jobs in pictures</source>
   <translation>Drei &amp;Aufgaben in Bildern</translation>
  </message>
  <message>
   <source>&amp;Title</source>
   <translation>&amp;Titel</translation>
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
   <translation>Ein&amp;heit</translation>
  </message>
  <message>
   <source>&amp;Use it in the set</source>
   <translation>Im Satz &amp;verwenden</translation>
  </message>
  <message>
   <source>&amp;Use these</source>
   <translation>Diese &amp;verwenden</translation>
  </message>
  <message>
   <source>&amp;Use this part</source>
   <translation>Dieses Teil &amp;verwenden</translation>
  </message>
  <message>
   <source>&amp;Valid for</source>
   <translation>&amp;Gültig für</translation>
  </message>
  <message>
   <source>&amp;Value</source>
   <translation>&amp;Wert</translation>
  </message>
  <message>
   <source>&amp;View</source>
   <translation>Ansi&amp;cht</translation>
  </message>
  <message>
   <source>&amp;Weigh all sets…</source>
   <translation>Alle Sätze a&amp;bwägen…</translation>
  </message>
  <message>
   <source>&amp;What if…</source>
   <translation>Was wäre, wen&amp;n…</translation>
  </message>
  <message>
   <source>&amp;Which price applies?</source>
   <translation>&amp;Welcher Preis gilt?</translation>
  </message>
  <message>
   <source>&amp;Who fuels?</source>
   <translation>&amp;Wer tankt?</translation>
  </message>
  <message>
   <source>&amp;Whole drawing</source>
   <translation>Ganze &amp;Zeichnung</translation>
  </message>
  <message>
   <source>&amp;Why not this part?</source>
   <translation>&amp;Warum nicht dieses Teil?</translation>
  </message>
  <message>
   <source>&amp;Work out the cases</source>
   <translation>Die &amp;Fälle durchrechnen</translation>
  </message>
  <message>
   <source>&amp;Write to a file…</source>
   <translation>In Datei &amp;schreiben…</translation>
  </message>
  <message>
   <source>&amp;Write to file…</source>
   <translation>In Datei &amp;schreiben…</translation>
  </message>
  <message>
   <source>&amp;XLSX…</source>
   <translation>&amp;XLSX…</translation>
  </message>
  <message>
   <source>&amp;Years</source>
   <translation>&amp;Jahre</translation>
  </message>
  <message>
   <source>(cannot be read)</source>
   <translation>(nicht lesbar)</translation>
  </message>
  <message>
   <source>(hidden)</source>
   <translation>(verborgen)</translation>
  </message>
  <message>
   <source>(kept)</source>
   <translation>(behalten)</translation>
  </message>
  <message>
   <source>(no title)</source>
   <translation>(ohne Titel)</translation>
  </message>
  <message>
   <source>(one table)</source>
   <translation>(eine Tabelle)</translation>
  </message>
  <message>
   <source>0 to 1000.</source>
   <translation>0 bis 1000.</translation>
  </message>
  <message>
   <source>0.05 rounds to the next multiple of five cents.</source>
   <translation>0,05 rundet auf das nächste Vielfache von fünf Cent.</translation>
  </message>
  <message>
   <source>0.1 to 100.</source>
   <translation>0,1 bis 100.</translation>
  </message>
  <message>
   <source>1 page</source>
   <translation>1 Seite</translation>
  </message>
  <message>
   <source>1 survey</source>
   <translation>1 Aufnahme</translation>
  </message>
  <message>
   <source>1 to 30.</source>
   <translation>1 bis 30.</translation>
  </message>
  <message>
   <source>40 CFR 280.32(b), from memory</source>
   <translation>40 CFR 280.32(b), aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>77 FR 28772 table 1 (memory)</source>
   <translation>77 FR 28772 Tabelle 1 (erinnert)</translation>
  </message>
  <message>
   <source>A calendar needs dates: write the first day of the plan here, then save it.</source>
   <translation>Ein Kalender braucht Daten: hier den ersten Tag des Plans eintragen, dann speichern.</translation>
  </message>
  <message>
   <source>A catalog that you fill from your suppliers' tables, and the survey of your first site.</source>
   <translation>Ein Katalog, den Sie aus den Tabellen Ihrer Lieferanten füllen, und die Aufnahme Ihres ersten Standorts.</translation>
  </message>
  <message>
   <source>A change of liquid goes by tank, and a vapor pipe ends at one. For a blend of two write 1 + 2.</source>
   <translation>Eine Sorte wechselt tankweise, und eine Gasleitung endet an einem Tank. Bei einer Mischung aus zweien 1 + 2 schreiben.</translation>
  </message>
  <message>
   <source>A click chooses the column, a double click sorts by it</source>
   <translation>Ein Klick wählt die Spalte, ein Doppelklick sortiert nach ihr</translation>
  </message>
  <message>
   <source>A comma is the decimal sign</source>
   <translation>Komma ist das Dezimalzeichen</translation>
  </message>
  <message>
   <source>A cord pulls the hose in</source>
   <translation>Ein Seil holt den Schlauch ein</translation>
  </message>
  <message>
   <source>A distributor quotes a refit</source>
   <translation>Ein Händler bietet eine Erneuerung an</translation>
  </message>
  <message>
   <source>A fault of the program</source>
   <translation>Ein Fehler des Programms</translation>
  </message>
  <message>
   <source>A new part</source>
   <translation>Ein neues Teil</translation>
  </message>
  <message>
   <source>A new type: give it a name and what it answers.</source>
   <translation>Ein neuer Typ: Name und was er beantwortet eintragen.</translation>
  </message>
  <message>
   <source>A person's name.</source>
   <translation>Name einer Person.</translation>
  </message>
  <message>
   <source>A price that somebody answers for, in place of the lists. Without a price, the line says that it follows.</source>
   <translation>Ein Preis, für den jemand einsteht, statt der Listen. Ohne Preis sagt die Zeile, dass er folgt.</translation>
  </message>
  <message>
   <source>A program of several sites puts the site before those without one.</source>
   <translation>Ein Programm für mehrere Tankstellen stellt sie vor jene ohne Frist.</translation>
  </message>
  <message>
   <source>A pump draws vapor</source>
   <translation>Eine Pumpe saugt das Gas ab</translation>
  </message>
  <message>
   <source>A quotation in the book has revisions; keep this one or look one up.</source>
   <translation>Ein Angebot im Buch hat Revisionen; dieses aufbewahren oder eines nachschlagen.</translation>
  </message>
  <message>
   <source>A ready station, planned with a catalog that is invented: its makers, parts and prices exist nowhere, and every paper made from it says so.</source>
   <translation>Eine fertige Tankstelle, geplant mit einem erfundenen Katalog: Seine Hersteller, Teile und Preise gibt es nirgends, und jedes Papier daraus sagt das.</translation>
  </message>
  <message>
   <source>A retractor or a reel moves the breakaway to the nozzle.</source>
   <translation>Rückzug oder Trommel verlegen die Abreißkupplung ans Zapfventil.</translation>
  </message>
  <message>
   <source>A set fits</source>
   <translation>Ein Satz passt</translation>
  </message>
  <message>
   <source>A set fits; a question is open</source>
   <translation>Ein Satz passt; eine Frage ist offen</translation>
  </message>
  <message>
   <source>A set was found, but a must is broken</source>
   <translation>Ein Satz ist gefunden, aber ein Muss ist verletzt</translation>
  </message>
  <message>
   <source>A station owner plans a conversion</source>
   <translation>Ein Betreiber plant einen Umbau</translation>
  </message>
  <message>
   <source>A supplier's ta&amp;ble</source>
   <translation>Ta&amp;belle eines Lieferanten</translation>
  </message>
  <message>
   <source>A survey file; it can be dropped on the window too.</source>
   <translation>Eine Datei einer Aufnahme; sie kann auch auf das Fenster gezogen werden.</translation>
  </message>
  <message>
   <source>A whole number from 1 to 50.</source>
   <translation>Eine ganze Zahl von 1 bis 50.</translation>
  </message>
  <message>
   <source>A whole number; each is emptied before its pipe is closed.</source>
   <translation>Eine ganze Zahl; jeder wird geleert, bevor seine Leitung geschlossen wird.</translation>
  </message>
  <message>
   <source>A&amp;ddress</source>
   <translation>Ans&amp;chrift</translation>
  </message>
  <message>
   <source>A&amp;gree on these sets…</source>
   <translation>Diese &amp;Sätze vereinbaren…</translation>
  </message>
  <message>
   <source>A&amp;gree on this set…</source>
   <translation>Diesen &amp;Satz vereinbaren…</translation>
  </message>
  <message>
   <source>A&amp;ll</source>
   <translation>&amp;Alle</translation>
  </message>
  <message>
   <source>A&amp;ll stations</source>
   <translation>&amp;Alle Stationen</translation>
  </message>
  <message>
   <source>A&amp;ll surveys…</source>
   <translation>A&amp;lle Aufnahmen…</translation>
  </message>
  <message>
   <source>A&amp;nnual budget</source>
   <translation>Jahres&amp;budget</translation>
  </message>
  <message>
   <source>AP-42</source>
   <translation>AP-42</translation>
  </message>
  <message>
   <source>ASME B1.20.1, ISO 228-1</source>
   <translation>ASME B1.20.1, ISO 228-1</translation>
  </message>
  <message>
   <source>About</source>
   <translation>Über</translation>
  </message>
  <message>
   <source>About and safety</source>
   <translation>Über und Sicherheit</translation>
  </message>
  <message>
   <source>Above 0.</source>
   <translation>Über 0.</translation>
  </message>
  <message>
   <source>Above the ground the hose hangs over.</source>
   <translation>Über dem Boden, über dem der Schlauch hängt.</translation>
  </message>
  <message>
   <source>Above the same ground; negative below a dock.</source>
   <translation>Über demselben Boden; negativ unter einem Steg.</translation>
  </message>
  <message>
   <source>Adapter</source>
   <translation>Adapter</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Hinzufügen</translation>
  </message>
  <message>
   <source>Add a filler</source>
   <translation>Einfüllstutzen hinzufügen</translation>
  </message>
  <message>
   <source>Add a further f&amp;iller</source>
   <translation>Weiteren Einfü&amp;llstutzen hinzufügen</translation>
  </message>
  <message>
   <source>Add a hose position to this or another dispenser.</source>
   <translation>Einen Schlauchplatz an dieser oder einer anderen Zapfsäule hinzufügen.</translation>
  </message>
  <message>
   <source>Add a position</source>
   <translation>Platz hinzufügen</translation>
  </message>
  <message>
   <source>Add a position with the same answers.</source>
   <translation>Einen Platz mit denselben Antworten hinzufügen.</translation>
  </message>
  <message>
   <source>Add a row</source>
   <translation>Zeile hinzufügen</translation>
  </message>
  <message>
   <source>Add a row behind the chosen one (Insert)</source>
   <translation>Zeile hinter der gewählten hinzufügen (Einfg)</translation>
  </message>
  <message>
   <source>Add dispensers with the same positions as this one.</source>
   <translation>Zapfsäulen mit denselben Plätzen wie diese hinzufügen.</translation>
  </message>
  <message>
   <source>Add pho&amp;tos…</source>
   <translation>Fotos &amp;hinzufügen…</translation>
  </message>
  <message>
   <source>Add positions from a CSV file or a workbook; columns are mapped first, faults told cell by cell.</source>
   <translation>Plätze aus CSV-Datei oder Arbeitsmappe hinzufügen; erst Spalten zuordnen, Fehler Zelle für Zelle.</translation>
  </message>
  <message>
   <source>Add the &amp;words of the fault; they may hold values of your survey</source>
   <translation>&amp;Worte des Fehlers anfügen; sie können Werte der Aufnahme enthalten</translation>
  </message>
  <message>
   <source>Add to the &amp;wear log</source>
   <translation>Ins &amp;Verschleißbuch eintragen</translation>
  </message>
  <message>
   <source>Address</source>
   <translation>Adresse</translation>
  </message>
  <message>
   <source>Adds an annex to the paper: what the catalog has for each place and what decided.</source>
   <translation>Fügt dem Papier einen Anhang hinzu: was der Katalog für jede Stelle hat und was entschieden hat.</translation>
  </message>
  <message>
   <source>Adopted codes</source>
   <translation>Geltende Vorschriften</translation>
  </message>
  <message>
   <source>Advice only: local codes and the authority having jurisdiction decide.</source>
   <translation>Nur ein Rat: örtliche Vorschriften und die zuständige Behörde entscheiden.</translation>
  </message>
  <message>
   <source>Advice, no permission: the agency of each site decides before its work begins.</source>
   <translation>Rat, keine Erlaubnis: die Behörde jeder Tankstelle entscheidet, bevor die Arbeit beginnt.</translation>
  </message>
  <message>
   <source>After how many years a kind of part is replaced; a kind that is not here is as common practice has it.</source>
   <translation>Nach wie vielen Jahren eine Teileart ersetzt wird; eine Art, die hier nicht steht, ist wie in der gängigen Praxis.</translation>
  </message>
  <message>
   <source>After: {0}</source>
   <translation>Nachher: {0}</translation>
  </message>
  <message>
   <source>Ag&amp;ree on the planned set…</source>
   <translation>Geplanten Satz ve&amp;reinbaren…</translation>
  </message>
  <message>
   <source>Against the limit</source>
   <translation>Gegen die Grenze</translation>
  </message>
  <message>
   <source>Against {0}: {1}</source>
   <translation>Gegen {0}: {1}</translation>
  </message>
  <message>
   <source>Age</source>
   <translation>Alter</translation>
  </message>
  <message>
   <source>Age of an installed part</source>
   <translation>Alter eines eingebauten Teils</translation>
  </message>
  <message>
   <source>Age of the chosen part, years</source>
   <translation>Alter des gewählten Teils, Jahre</translation>
  </message>
  <message>
   <source>Age, years</source>
   <translation>Alter, Jahre</translation>
  </message>
  <message>
   <source>Agency</source>
   <translation>Behörde</translation>
  </message>
  <message>
   <source>Agency table</source>
   <translation>Tabelle der Behörden</translation>
  </message>
  <message>
   <source>Ages are given at each position, under what hangs there today.</source>
   <translation>Das Alter steht bei jedem Platz unter dem, was dort heute hängt.</translation>
  </message>
  <message>
   <source>Agree on one way; save its report and the calendar of its steps.</source>
   <translation>Einen Weg vereinbaren; seinen Bericht und den Kalender seiner Schritte speichern.</translation>
  </message>
  <message>
   <source>Agree on the &amp;way shown…</source>
   <translation>Gezeigten &amp;Weg vereinbaren…</translation>
  </message>
  <message>
   <source>Agree on the planned sets of one position, several or all: papers show them from then on.</source>
   <translation>Geplante Sätze eines Platzes, mehrerer oder aller vereinbaren: Papiere zeigen sie von da an.</translation>
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
   <source>Air, fills and tanks</source>
   <translation>Luft, Füllungen und Tanks</translation>
  </message>
  <message>
   <source>Al&amp;l agreements…</source>
   <translation>A&amp;lle Vereinbarungen…</translation>
  </message>
  <message>
   <source>All</source>
   <translation>Alle</translation>
  </message>
  <message>
   <source>All &amp;positions in a table</source>
   <translation>Alle &amp;Plätze als Tabelle</translation>
  </message>
  <message>
   <source>All changes are in the book</source>
   <translation>Alle Änderungen sind im Buch</translation>
  </message>
  <message>
   <source>All commands with their keys.</source>
   <translation>Alle Befehle mit ihren Tasten.</translation>
  </message>
  <message>
   <source>All kinds</source>
   <translation>Alle Arten</translation>
  </message>
  <message>
   <source>All parts with sums, the paper to print, and files to save.</source>
   <translation>Alle Teile mit Summen, das Papier zum Drucken und Dateien zum Speichern.</translation>
  </message>
  <message>
   <source>All positions</source>
   <translation>Alle Plätze</translation>
  </message>
  <message>
   <source>All positions and their answers</source>
   <translation>Alle Plätze und ihre Antworten</translation>
  </message>
  <message>
   <source>All positions planned; choosing sets together and adding up…</source>
   <translation>Alle Plätze geplant; Sätze werden gemeinsam gewählt und summiert…</translation>
  </message>
  <message>
   <source>All reasons and &amp;ways out…</source>
   <translation>Alle Gründe und Aus&amp;wege…</translation>
  </message>
  <message>
   <source>All reasons and ways out…</source>
   <translation>Alle Gründe und Auswege…</translation>
  </message>
  <message>
   <source>All surveys in the book. Every change is kept in it at once.</source>
   <translation>Alle Aufnahmen im Buch. Jede Änderung steht sofort darin.</translation>
  </message>
  <message>
   <source>Allowed in some places only, and then together with a device that shuts the nozzle when pressure or flow ends.</source>
   <translation>Nur mancherorts erlaubt, und dann mit einer Sicherung, die das Zapfventil schließt, wenn Druck oder Durchfluss endet.</translation>
  </message>
  <message>
   <source>Also changes</source>
   <translation>Ändert auch</translation>
  </message>
  <message>
   <source>Also changes: {changes}</source>
   <translation>Ändert auch: {changes}</translation>
  </message>
  <message>
   <source>Alt+1 to Alt+5 go to a step. In the drawing: Space picks the next part, plus and minus change its size, arrows move it, 0 shows all of it.</source>
   <translation>Alt+1 bis Alt+5 gehen zu einem Schritt. In der Zeichnung: Leertaste wählt das nächste Teil, Plus und Minus ändern die Größe, Pfeile verschieben, 0 zeigt alles.</translation>
  </message>
  <message>
   <source>Alternates</source>
   <translation>Alternativen</translation>
  </message>
  <message>
   <source>Amount</source>
   <translation>Betrag</translation>
  </message>
  <message>
   <source>Amount, {currency}</source>
   <translation>Summe, {currency}</translation>
  </message>
  <message>
   <source>An alternate that is taken opens revision {0} beside it.</source>
   <translation>Eine Alternative, die genommen wird, öffnet Revision {0} daneben.</translation>
  </message>
  <message>
   <source>An attendant</source>
   <translation>Ein Tankwart</translation>
  </message>
  <message>
   <source>An empty maker or group means every one; the row that says more counts.</source>
   <translation>Leerer Hersteller oder leere Gruppe heißt jeder; die genauere Zeile gilt.</translation>
  </message>
  <message>
   <source>An estimate, such as 0.04: one in 25 years.</source>
   <translation>Eine Schätzung, etwa 0,04: eine in 25 Jahren.</translation>
  </message>
  <message>
   <source>An installer prints the work</source>
   <translation>Ein Monteur druckt die Arbeit</translation>
  </message>
  <message>
   <source>An overhead outlet restricts the latch.</source>
   <translation>Ein Abgang von oben schränkt die Raste ein.</translation>
  </message>
  <message>
   <source>And light vans</source>
   <translation>Und leichte Lieferwagen</translation>
  </message>
  <message>
   <source>And the spares of its quotation</source>
   <translation>Und die Ersatzteile ihres Angebots</translation>
  </message>
  <message>
   <source>Another answer to compare</source>
   <translation>Eine andere Antwort zum Vergleichen</translation>
  </message>
  <message>
   <source>Another part</source>
   <translation>Ein anderes Teil</translation>
  </message>
  <message>
   <source>Another part hangs here.</source>
   <translation>Hier hängt ein anderes Teil.</translation>
  </message>
  <message>
   <source>Another percentage for a kind of part or a discount group.</source>
   <translation>Ein anderer Prozentsatz für eine Art Teil oder eine Rabattgruppe.</translation>
  </message>
  <message>
   <source>Another quotation was sent under the number {0}, to {1} for {2}. Give this one its own in its terms; no paper of it can be saved before.</source>
   <translation>Ein anderes Angebot ging unter der Nummer {0} hinaus, an {1} für {2}. Diesem in seinen Bedingungen eine eigene geben; vorher lässt sich kein Papier davon speichern.</translation>
  </message>
  <message>
   <source>Answer</source>
   <translation>Antwort</translation>
  </message>
  <message>
   <source>Answer for the missing prices; then it can be issued.</source>
   <translation>Für die fehlenden Preise einstehen; dann lässt es sich abgeben.</translation>
  </message>
  <message>
   <source>Answer for them</source>
   <translation>Dafür einstehen</translation>
  </message>
  <message>
   <source>Answers side by side</source>
   <translation>Antworten nebeneinander</translation>
  </message>
  <message>
   <source>Answers to compare</source>
   <translation>Antworten, die verglichen werden</translation>
  </message>
  <message>
   <source>Arizona test list</source>
   <translation>Prüfliste von Arizona</translation>
  </message>
  <message>
   <source>As a share of the hose's length from the dispenser: 0.5 is the middle.</source>
   <translation>Als Anteil der Schlauchlänge ab Zapfsäule: 0,5 ist die Mitte.</translation>
  </message>
  <message>
   <source>As built</source>
   <translation>Wie gebaut</translation>
  </message>
  <message>
   <source>As in the price list.</source>
   <translation>Wie in der Preisliste.</translation>
  </message>
  <message>
   <source>As pages (PDF), or as one HTML page for screen readers and mails.</source>
   <translation>Als Seiten (PDF) oder als eine HTML-Seite für Bildschirmleser und E-Mails.</translation>
  </message>
  <message>
   <source>As printed.</source>
   <translation>Wie gedruckt.</translation>
  </message>
  <message>
   <source>As printed; each once.</source>
   <translation>Wie gedruckt; jede einmal.</translation>
  </message>
  <message>
   <source>As the desktop</source>
   <translation>Wie der Schreibtisch</translation>
  </message>
  <message>
   <source>As the standard writes it, or as people say it: 3/4, 0.75 in, 19 mm, DN 20.</source>
   <translation>Wie es die Norm schreibt oder wie man es sagt: 3/4, 0,75 in, 19 mm, DN 20.</translation>
  </message>
  <message>
   <source>As the survey was opened</source>
   <translation>Wie die Aufnahme geöffnet wurde</translation>
  </message>
  <message>
   <source>As the way of reckoning asks.</source>
   <translation>Wie es das Verfahren verlangt.</translation>
  </message>
  <message>
   <source>Ask in writing; what is not known is said in the report.</source>
   <translation>Schriftlich fragen; der Bericht sagt, was nicht bekannt ist.</translation>
  </message>
  <message>
   <source>Asked for</source>
   <translation>Verlangt</translation>
  </message>
  <message>
   <source>Asking the combinations…</source>
   <translation>Die Kombinationen werden gefragt…</translation>
  </message>
  <message>
   <source>At hand</source>
   <translation>Zur Hand</translation>
  </message>
  <message>
   <source>At the clamp, with the hose drawn out.</source>
   <translation>An der Schelle, bei ausgezogenem Schlauch.</translation>
  </message>
  <message>
   <source>At the dispenser: hang the set, measure, and fill the form.</source>
   <translation>Am Zapfgerät: den Satz aufhängen, messen und das Formular ausfüllen.</translation>
  </message>
  <message>
   <source>Authority</source>
   <translation>Behörde</translation>
  </message>
  <message>
   <source>Axis to the right</source>
   <translation>Achse nach rechts</translation>
  </message>
  <message>
   <source>Axis told by the size of the points</source>
   <translation>Achse, die die Größe der Punkte angibt</translation>
  </message>
  <message>
   <source>Axis upward</source>
   <translation>Achse nach oben</translation>
  </message>
  <message>
   <source>Bac&amp;kups…</source>
   <translation>Si&amp;cherungen…</translation>
  </message>
  <message>
   <source>Back</source>
   <translation>Zurück</translation>
  </message>
  <message>
   <source>Back on the hook by hand</source>
   <translation>Von Hand zurück an den Haken</translation>
  </message>
  <message>
   <source>Back to the newest</source>
   <translation>Zurück zur neuesten</translation>
  </message>
  <message>
   <source>Backups</source>
   <translation>Sicherungen</translation>
  </message>
  <message>
   <source>Backups of the book</source>
   <translation>Sicherungen des Buchs</translation>
  </message>
  <message>
   <source>Balance</source>
   <translation>Passiv</translation>
  </message>
  <message>
   <source>Balance coaxial</source>
   <translation>Koaxial, passiv</translation>
  </message>
  <message>
   <source>Bar ( | )</source>
   <translation>Strich ( | )</translation>
  </message>
  <message>
   <source>Because</source>
   <translation>Weil</translation>
  </message>
  <message>
   <source>Because: {0}</source>
   <translation>Weil: {0}</translation>
  </message>
  <message>
   <source>Before</source>
   <translation>Vorher</translation>
  </message>
  <message>
   <source>Before → after</source>
   <translation>Vorher → nachher</translation>
  </message>
  <message>
   <source>Before: {0}</source>
   <translation>Vorher: {0}</translation>
  </message>
  <message>
   <source>Begin a survey</source>
   <translation>Eine Aufnahme beginnen</translation>
  </message>
  <message>
   <source>Begin my own</source>
   <translation>Eigenes beginnen</translation>
  </message>
  <message>
   <source>Bellows on the nozzle</source>
   <translation>Faltenbalg am Zapfventil</translation>
  </message>
  <message>
   <source>Between 0 and 1.</source>
   <translation>Zwischen 0 und 1.</translation>
  </message>
  <message>
   <source>Between 0 and 1; empty counts every gasoline position alike.</source>
   <translation>Zwischen 0 und 1; leer zählt jeden Benzinplatz gleich.</translation>
  </message>
  <message>
   <source>Between 0 and 1; empty takes the table's figure.</source>
   <translation>Zwischen 0 und 1; leer nimmt den Wert der Tabelle.</translation>
  </message>
  <message>
   <source>Between 0 and 1; the rest goes on selling.</source>
   <translation>Zwischen 0 und 1; der Rest verkauft weiter.</translation>
  </message>
  <message>
   <source>Between 0 and 50, written without the sign.</source>
   <translation>Zwischen 0 und 50, ohne das Zeichen geschrieben.</translation>
  </message>
  <message>
   <source>Between cells</source>
   <translation>Zwischen Zellen</translation>
  </message>
  <message>
   <source>Blend</source>
   <translation>Beimischung</translation>
  </message>
  <message>
   <source>Boats</source>
   <translation>Boote</translation>
  </message>
  <message>
   <source>Bond test certificate</source>
   <translation>Nachweis der Potentialausgleichsmessung</translation>
  </message>
  <message>
   <source>Both are the same edition: nothing differs. Choose another one to compare it with.</source>
   <translation>Beide sind dieselbe Ausgabe: nichts ist verschieden. Eine andere zum Vergleich wählen.</translation>
  </message>
  <message>
   <source>Bought</source>
   <translation>Gekauft</translation>
  </message>
  <message>
   <source>Breakaway</source>
   <translation>Abreißkupplung</translation>
  </message>
  <message>
   <source>Breakaways</source>
   <translation>Abreißkupplungen</translation>
  </message>
  <message>
   <source>Built</source>
   <translation>Gebaut</translation>
  </message>
  <message>
   <source>Built-in rules stay as they are; copy them to change a row.</source>
   <translation>Eingebaute Regeln bleiben, wie sie sind; zum Ändern einer Zeile kopieren.</translation>
  </message>
  <message>
   <source>Buying</source>
   <translation>Einkauf</translation>
  </message>
  <message>
   <source>C&amp;hoose</source>
   <translation>&amp;Wählen</translation>
  </message>
  <message>
   <source>C&amp;limate</source>
   <translation>K&amp;lima</translation>
  </message>
  <message>
   <source>C&amp;ount them so</source>
   <translation>&amp;So zählen</translation>
  </message>
  <message>
   <source>C&amp;ustomer</source>
   <translation>&amp;Kunde</translation>
  </message>
  <message>
   <source>CARB 2013</source>
   <translation>CARB 2013</translation>
  </message>
  <message>
   <source>CSV or XLSX, as the supplier sends it</source>
   <translation>CSV oder XLSX, wie der Lieferant sie schickt</translation>
  </message>
  <message>
   <source>CSV or XLSX: a row for each position</source>
   <translation>CSV oder XLSX: eine Zeile für jede Position</translation>
  </message>
  <message>
   <source>CSV or XLSX: a row for each type of dispenser</source>
   <translation>CSV oder XLSX: eine Zeile für jeden Zapfsäulentyp</translation>
  </message>
  <message>
   <source>CSV or XLSX: old number and its maker, the part it leads to and its maker</source>
   <translation>CSV oder XLSX: alte Nummer und ihr Hersteller, das Teil, zu dem sie führt, und dessen Hersteller</translation>
  </message>
  <message>
   <source>CSV…</source>
   <translation>CSV…</translation>
  </message>
  <message>
   <source>Ca&amp;talogs</source>
   <translation>&amp;Kataloge</translation>
  </message>
  <message>
   <source>Calc&amp;ulate</source>
   <translation>Be&amp;rechnen</translation>
  </message>
  <message>
   <source>Called</source>
   <translation>Bezeichnung</translation>
  </message>
  <message>
   <source>Can the flow be started or stopped else&amp;where?</source>
   <translation>Lässt sich der Durchfluss anders&amp;wo starten oder stoppen?</translation>
  </message>
  <message>
   <source>Can the vapor pipe be reached at the tank?</source>
   <translation>Ist die Gasleitung am Tan&amp;k erreichbar?</translation>
  </message>
  <message>
   <source>Capitals and double blanks do not count.</source>
   <translation>Großschreibung und doppelte Leerzeichen zählen nicht.</translation>
  </message>
  <message>
   <source>Carry &amp;over what a year leaves</source>
   <translation>Re&amp;st eines Jahres ins nächste mitnehmen</translation>
  </message>
  <message>
   <source>Cars</source>
   <translation>Pkw</translation>
  </message>
  <message>
   <source>Case</source>
   <translation>Fall</translation>
  </message>
  <message>
   <source>Cases</source>
   <translation>F&amp;älle</translation>
  </message>
  <message>
   <source>Cash</source>
   <translation>Barkosten</translation>
  </message>
  <message>
   <source>Catalog</source>
   <translation>Katalog</translation>
  </message>
  <message>
   <source>Catalog data</source>
   <translation>Daten des Katalogs</translation>
  </message>
  <message>
   <source>Catalog number</source>
   <translation>Katalognummer</translation>
  </message>
  <message>
   <source>Catalog number of an installed part</source>
   <translation>Katalognummer eines eingebauten Teils</translation>
  </message>
  <message>
   <source>Catalog or price lists have changed under open quotations: {0}{1}</source>
   <translation>Katalog oder Preislisten unter offenen Angeboten haben sich geändert: {0}{1}</translation>
  </message>
  <message>
   <source>Catalog parts found</source>
   <translation>Gefundene Katalogteile</translation>
  </message>
  <message>
   <source>Catalogs</source>
   <translation>Kataloge</translation>
  </message>
  <message>
   <source>Catalogs and editions</source>
   <translation>Kataloge und Ausgaben</translation>
  </message>
  <message>
   <source>Caution sheet alone</source>
   <translation>Nur das Warnblatt</translation>
  </message>
  <message>
   <source>Cell</source>
   <translation>Zelle</translation>
  </message>
  <message>
   <source>Chan&amp;ge</source>
   <translation>Änd&amp;ern</translation>
  </message>
  <message>
   <source>Change</source>
   <translation>Änderung</translation>
  </message>
  <message>
   <source>Change &amp;many rows…</source>
   <translation>&amp;Viele Zeilen ändern…</translation>
  </message>
  <message>
   <source>Change many rows</source>
   <translation>Viele Zeilen ändern</translation>
  </message>
  <message>
   <source>Change the chosen row</source>
   <translation>Gewählte Zeile ändern</translation>
  </message>
  <message>
   <source>Change the name of the position or its dispenser.</source>
   <translation>Den Namen des Platzes oder seiner Zapfsäule ändern.</translation>
  </message>
  <message>
   <source>Changed</source>
   <translation>Geändert</translation>
  </message>
  <message>
   <source>Changed in the book since they were chosen: dispenser type {0}. The survey stays as it is.</source>
   <translation>Im Buch seit der Wahl geändert: Zapfsäulentyp {0}. Die Aufnahme bleibt, wie sie ist.</translation>
  </message>
  <message>
   <source>Changed since.</source>
   <translation>Seither geändert.</translation>
  </message>
  <message>
   <source>Chart of the sets</source>
   <translation>Diagramm der Sätze</translation>
  </message>
  <message>
   <source>Check</source>
   <translation>Prüfung</translation>
  </message>
  <message>
   <source>Check again</source>
   <translation>Neu prüfen</translation>
  </message>
  <message>
   <source>Check the paper, then issue it: its papers are kept as they are sent.</source>
   <translation>Das Papier prüfen, dann abgeben: seine Papiere bleiben, wie sie hinausgehen.</translation>
  </message>
  <message>
   <source>Checking every stocked part…</source>
   <translation>Jedes vorrätige Teil wird geprüft…</translation>
  </message>
  <message>
   <source>Checks</source>
   <translation>Prüfungen</translation>
  </message>
  <message>
   <source>Checks with their worked lines</source>
   <translation>Prüfungen mit ihren Rechenzeilen</translation>
  </message>
  <message>
   <source>Choose &amp;a file…</source>
   <translation>&amp;Datei wählen…</translation>
  </message>
  <message>
   <source>Choose &amp;folder…</source>
   <translation>&amp;Ordner wählen…</translation>
  </message>
  <message>
   <source>Choose a day</source>
   <translation>Tag wählen</translation>
  </message>
  <message>
   <source>Choose a file: nothing is changed before you take it over.</source>
   <translation>Wählen Sie eine Datei: bis zur Übernahme ändert sich nichts.</translation>
  </message>
  <message>
   <source>Choose a part without a catalog number; a number brings its own figures.</source>
   <translation>Ein Teil ohne Katalognummer wählen; eine Nummer bringt ihre eigenen Zahlen mit.</translation>
  </message>
  <message>
   <source>Choose a step to go back to it, or forward to it again. The page behind follows at once.</source>
   <translation>Einen Schritt wählen, um zu ihm zurück oder wieder vor zu gehen. Die Seite dahinter folgt sofort.</translation>
  </message>
  <message>
   <source>Choose a table</source>
   <translation>Tabelle wählen</translation>
  </message>
  <message>
   <source>Choose it for</source>
   <translation>Wählen für</translation>
  </message>
  <message>
   <source>Choose the column</source>
   <translation>Spalte wählen</translation>
  </message>
  <message>
   <source>Choose two different revisions.</source>
   <translation>Zwei verschiedene Revisionen wählen.</translation>
  </message>
  <message>
   <source>Cl&amp;ause</source>
   <translation>&amp;Abschnitt</translation>
  </message>
  <message>
   <source>Class limits: scopes of UL 2586A/B, 567A/B, 330A/B</source>
   <translation>Klassengrenzen: Anwendungsbereiche von UL 2586A/B, 567A/B, 330A/B</translation>
  </message>
  <message>
   <source>Climate</source>
   <translation>Klima</translation>
  </message>
  <message>
   <source>Climate band of the map</source>
   <translation>Klimabereich der Karte</translation>
  </message>
  <message>
   <source>Close and &amp;lose the changes</source>
   <translation>Schließen und die Änderungen &amp;verlieren</translation>
  </message>
  <message>
   <source>Close the count {0}</source>
   <translation>Zählung {0} abschließen</translation>
  </message>
  <message>
   <source>Close the count…</source>
   <translation>Zählung abschließen…</translation>
  </message>
  <message>
   <source>Co&amp;py report</source>
   <translation>Bericht &amp;kopieren</translation>
  </message>
  <message>
   <source>Coaxial, balance</source>
   <translation>Koaxial, passive Gasrückführung</translation>
  </message>
  <message>
   <source>Coaxial, vacuum assist</source>
   <translation>Koaxial, aktive Gasrückführung</translation>
  </message>
  <message>
   <source>Code</source>
   <translation>Code</translation>
  </message>
  <message>
   <source>Col&amp;dest</source>
   <translation>Tiefste Temper&amp;atur</translation>
  </message>
  <message>
   <source>Column</source>
   <translation>Spalte</translation>
  </message>
  <message>
   <source>Columns of the file</source>
   <translation>Spalten der Datei</translation>
  </message>
  <message>
   <source>Combinations asked</source>
   <translation>Gefragte Kombinationen</translation>
  </message>
  <message>
   <source>Comma ( , )</source>
   <translation>Komma ( , )</translation>
  </message>
  <message>
   <source>Comma (1,50)</source>
   <translation>Komma (1,50)</translation>
  </message>
  <message>
   <source>Command</source>
   <translation>Befehl</translation>
  </message>
  <message>
   <source>Command, position, survey, quotation, part or help</source>
   <translation>Befehl, Platz, Aufnahme, Angebot, Teil oder Hilfe</translation>
  </message>
  <message>
   <source>Commands with their keys</source>
   <translation>Befehle mit ihren Tasten</translation>
  </message>
  <message>
   <source>Commissioning form to fill in</source>
   <translation>Inbetriebnahmebogen zum Ausfüllen</translation>
  </message>
  <message>
   <source>Compare agreement</source>
   <translation>Vereinbarung vergleichen</translation>
  </message>
  <message>
   <source>Compare {0}</source>
   <translation>Vergleichen {0}</translation>
  </message>
  <message>
   <source>Comparing…</source>
   <translation>Vergleichen…</translation>
  </message>
  <message>
   <source>Computed</source>
   <translation>Berechnet</translation>
  </message>
  <message>
   <source>Con&amp;tact</source>
   <translation>Ans&amp;prechpartner</translation>
  </message>
  <message>
   <source>Condensate traps in the vapor pipes</source>
   <translation>Kondensatabscheider in den Gasleitungen</translation>
  </message>
  <message>
   <source>Condition</source>
   <translation>Zustand</translation>
  </message>
  <message>
   <source>Condition of an installed part</source>
   <translation>Zustand eines eingebauten Teils</translation>
  </message>
  <message>
   <source>Condition of the chosen part</source>
   <translation>Zustand des gewählten Teils</translation>
  </message>
  <message>
   <source>Contact</source>
   <translation>Ansprechpartner</translation>
  </message>
  <message>
   <source>Content</source>
   <translation>Inhalt</translation>
  </message>
  <message>
   <source>Conventional hardware</source>
   <translation>Ohne Gasrückführung</translation>
  </message>
  <message>
   <source>Conversion</source>
   <translation>Umbau</translation>
  </message>
  <message>
   <source>Conversion of the site</source>
   <translation>Umbau der Tankstelle</translation>
  </message>
  <message>
   <source>Conversion: compare the ways, with what stays, goes and comes, their cost and their emissions.</source>
   <translation>Umbau: die Wege vergleichen, mit dem, was bleibt, geht und kommt, ihren Kosten und Emissionen.</translation>
  </message>
  <message>
   <source>Convert</source>
   <translation>Umbauen</translation>
  </message>
  <message>
   <source>Convert a folder of surveys over all cores and rank the sites over years under a yearly budget.</source>
   <translation>Einen Ordner von Aufnahmen auf allen Kernen umrechnen und die Tankstellen über Jahre unter einem Jahresbudget reihen.</translation>
  </message>
  <message>
   <source>Copied</source>
   <translation>Kopiert</translation>
  </message>
  <message>
   <source>Copied from</source>
   <translation>Vorlage</translation>
  </message>
  <message>
   <source>Copied. From the next start on the book in {0} is used; what lies in the folder of today stays.</source>
   <translation>Kopiert. Ab dem nächsten Start gilt das Buch in {0}; was im heutigen Ordner liegt, bleibt.</translation>
  </message>
  <message>
   <source>Copy answers of {0}</source>
   <translation>Antworten von {0} kopieren</translation>
  </message>
  <message>
   <source>Copy answers of {label}</source>
   <translation>Antworten von {label} kopieren</translation>
  </message>
  <message>
   <source>Copy t&amp;hese rules</source>
   <translation>Diese Regeln &amp;kopieren</translation>
  </message>
  <message>
   <source>Copy the chosen rows (Ctrl+Shift+D)</source>
   <translation>Gewählte Zeilen kopieren (Strg+Umschalt+D)</translation>
  </message>
  <message>
   <source>Cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <source>Cost and margin by line and option: internal, never the customer's</source>
   <translation>Kosten und Marge je Zeile und Variante: intern, nie für den Kunden</translation>
  </message>
  <message>
   <source>Cost of one piece</source>
   <translation>Kosten eines Stücks</translation>
  </message>
  <message>
   <source>Cost of the line</source>
   <translation>Kosten der Zeile</translation>
  </message>
  <message>
   <source>Cost, {0}</source>
   <translation>Kosten, {0}</translation>
  </message>
  <message>
   <source>Count</source>
   <translation>Zählung</translation>
  </message>
  <message>
   <source>Counted</source>
   <translation>Gezählt</translation>
  </message>
  <message>
   <source>Counted as</source>
   <translation>Gezählt als</translation>
  </message>
  <message>
   <source>Counting the parts that come into question…</source>
   <translation>Teile, die in Frage kommen, werden gezählt…</translation>
  </message>
  <message>
   <source>Counting what the catalog has for each place…</source>
   <translation>Zählt, was der Katalog für jede Stelle hat…</translation>
  </message>
  <message>
   <source>Counts for every position of the site.</source>
   <translation>Gilt für jeden Platz der Tankstelle.</translation>
  </message>
  <message>
   <source>Counts towards a grant</source>
   <translation>Zählt zur Förderung</translation>
  </message>
  <message>
   <source>Coverage</source>
   <translation>Abdeckung</translation>
  </message>
  <message>
   <source>Coverage map: combinations by outlet</source>
   <translation>Abdeckungskarte: Kombinationen je Auslass</translation>
  </message>
  <message>
   <source>Crews side by side</source>
   <translation>Trupps nebeneinander</translation>
  </message>
  <message>
   <source>Cu&amp;rrency</source>
   <translation>Währ&amp;ung</translation>
  </message>
  <message>
   <source>Currency</source>
   <translation>Währung</translation>
  </message>
  <message>
   <source>Currency and rounding</source>
   <translation>Währung und Rundung</translation>
  </message>
  <message>
   <source>Currency of prices that name none</source>
   <translation>Währung von Preisen, die keine nennen</translation>
  </message>
  <message>
   <source>Currency of the cost</source>
   <translation>Währung der Kosten</translation>
  </message>
  <message>
   <source>Currency of the list</source>
   <translation>Währung der Liste</translation>
  </message>
  <message>
   <source>Currency of the price list</source>
   <translation>Währung der Preisliste</translation>
  </message>
  <message>
   <source>Currency: as the table says</source>
   <translation>Währung: wie die Tabelle sagt</translation>
  </message>
  <message>
   <source>Customer</source>
   <translation>Kunde</translation>
  </message>
  <message>
   <source>Customer of the station</source>
   <translation>Kunde der Tankstelle</translation>
  </message>
  <message>
   <source>Customer of this s&amp;tation</source>
   <translation>Kunde dieser &amp;Tankstelle</translation>
  </message>
  <message>
   <source>Customer of this station.</source>
   <translation>Kunde dieser Tankstelle.</translation>
  </message>
  <message>
   <source>Customers</source>
   <translation>Kunden</translation>
  </message>
  <message>
   <source>Customers of the book</source>
   <translation>Kunden des Buchs</translation>
  </message>
  <message>
   <source>Customers, nobody on site</source>
   <translation>Kunden, niemand vor Ort</translation>
  </message>
  <message>
   <source>Cut to le&amp;ngth…</source>
   <translation>Auf &amp;Länge schneiden…</translation>
  </message>
  <message>
   <source>D&amp;eadlines</source>
   <translation>&amp;Fristen</translation>
  </message>
  <message>
   <source>DEF</source>
   <translation>DEF</translation>
  </message>
  <message>
   <source>DEF itself does not burn. Where its nozzle is used close to fuel, the nozzle has to be evaluated for that.</source>
   <translation>DEF selbst brennt nicht. Wo sein Zapfventil nahe an Kraftstoff benutzt wird, muss es dafür bewertet sein.</translation>
  </message>
  <message>
   <source>Dark</source>
   <translation>Dunkel</translation>
  </message>
  <message>
   <source>Data folder</source>
   <translation>Datenordner</translation>
  </message>
  <message>
   <source>Date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>Day of handing over</source>
   <translation>Tag der Übergabe</translation>
  </message>
  <message>
   <source>Day of the price</source>
   <translation>Tag des Preises</translation>
  </message>
  <message>
   <source>Day of the quotation</source>
   <translation>Tag des Angebots</translation>
  </message>
  <message>
   <source>Day on which to ask the customer again; the answer takes it away</source>
   <translation>Tag, an dem beim Kunden nachzufassen ist; die Antwort nimmt ihn weg</translation>
  </message>
  <message>
   <source>Days</source>
   <translation>Tage</translation>
  </message>
  <message>
   <source>Days as</source>
   <translation>Tage als</translation>
  </message>
  <message>
   <source>Days for which the offer stands, 1 to 730.</source>
   <translation>Tage, für die das Angebot gilt, 1 bis 730.</translation>
  </message>
  <message>
   <source>Days of noti&amp;ce</source>
   <translation>A&amp;nzeigefrist, Tage</translation>
  </message>
  <message>
   <source>Days overdue</source>
   <translation>Tage überfällig</translation>
  </message>
  <message>
   <source>Days until the permission is expected</source>
   <translation>Tage bis zur erwarteten Erlaubnis</translation>
  </message>
  <message>
   <source>De&amp;livery address</source>
   <translation>Liefera&amp;dresse</translation>
  </message>
  <message>
   <source>Decides automatic shut-off and the hold-open latch.</source>
   <translation>Entscheidet über Abschaltautomatik und Raste.</translation>
  </message>
  <message>
   <source>Decides how the whip hose bends in a drive-off.</source>
   <translation>Entscheidet, wie sich der Anschlussschlauch beim Wegfahren biegt.</translation>
  </message>
  <message>
   <source>Decides the throughput threshold in Europe.</source>
   <translation>Entscheidet in Europa über die Schwelle des Jahresabsatzes.</translation>
  </message>
  <message>
   <source>Decimal sign</source>
   <translation>Dezimalzeichen</translation>
  </message>
  <message>
   <source>Declined. Requote it and keep it: revision {0} opens.</source>
   <translation>Abgelehnt. Neu anbieten und aufbewahren: Revision {0} wird eröffnet.</translation>
  </message>
  <message>
   <source>Delivery address</source>
   <translation>Lieferadresse</translation>
  </message>
  <message>
   <source>Departures</source>
   <translation>Abweich.</translation>
  </message>
  <message>
   <source>Derived from the answers and the local rules. Open a row for the rule and its source.</source>
   <translation>Aus den Antworten und den örtlichen Regeln abgeleitet. Eine Zeile öffnen für Regel und Quelle.</translation>
  </message>
  <message>
   <source>Describe an installed part</source>
   <translation>Eingebautes Teil beschreiben</translation>
  </message>
  <message>
   <source>Description</source>
   <translation>Beschreibung</translation>
  </message>
  <message>
   <source>Description of an installed part</source>
   <translation>Beschreibung eines eingebauten Teils</translation>
  </message>
  <message>
   <source>Diameter of the hose on the &amp;drum</source>
   <translation>Durchmesser des Schlauchs auf der &amp;Trommel</translation>
  </message>
  <message>
   <source>Did you mean {0}?</source>
   <translation>Meinten Sie {0}?</translation>
  </message>
  <message>
   <source>Diesel</source>
   <translation>Diesel</translation>
  </message>
  <message>
   <source>Difference</source>
   <translation>Unterschied</translation>
  </message>
  <message>
   <source>Difference, hoses both cover</source>
   <translation>Unterschied, gemeinsame Schläuche</translation>
  </message>
  <message>
   <source>Differs in</source>
   <translation>Unterscheidet sich in</translation>
  </message>
  <message>
   <source>Directive 2009/126/EC, EU summary</source>
   <translation>Richtlinie 2009/126/EG, Zusammenfassung der EU</translation>
  </message>
  <message>
   <source>Discard &amp;the draft…</source>
   <translation>Ent&amp;wurf verwerfen…</translation>
  </message>
  <message>
   <source>Discard the draft</source>
   <translation>Entwurf verwerfen</translation>
  </message>
  <message>
   <source>Discontinued from</source>
   <translation>Abgekündigt ab</translation>
  </message>
  <message>
   <source>Discount group</source>
   <translation>Rabattgruppe</translation>
  </message>
  <message>
   <source>Discount groups</source>
   <translation>Rabattgruppen</translation>
  </message>
  <message>
   <source>Discount rate, percent a year</source>
   <translation>Zinssatz, Prozent im Jahr</translation>
  </message>
  <message>
   <source>Discounts of makers</source>
   <translation>Rabatte der Hersteller</translation>
  </message>
  <message>
   <source>Dispenser</source>
   <translation>Zapfsäule</translation>
  </message>
  <message>
   <source>Dispenser &amp;types…</source>
   <translation>Zapfsäulen&amp;typen…</translation>
  </message>
  <message>
   <source>Dispenser maker's data</source>
   <translation>Daten des Zapfsäulenherstellers</translation>
  </message>
  <message>
   <source>Dispenser outlet</source>
   <translation>Abgang der Zapfsäule</translation>
  </message>
  <message>
   <source>Dispenser type</source>
   <translation>Zapfsäulentyp</translation>
  </message>
  <message>
   <source>Dispenser types</source>
   <translation>Zapfsäulentypen</translation>
  </message>
  <message>
   <source>Dispenser types of the book</source>
   <translation>Zapfsäulentypen des Buches</translation>
  </message>
  <message>
   <source>Dispenser {0}</source>
   <translation>Zapfsäule {0}</translation>
  </message>
  <message>
   <source>Dispenser's plate</source>
   <translation>Typenschild der Zapfsäule</translation>
  </message>
  <message>
   <source>Dispensers and positions</source>
   <translation>Zapfsäulen und Plätze</translation>
  </message>
  <message>
   <source>Dispensers in a row where no island is named</source>
   <translation>Zapfsäulen in einer Reihe, wo keine Insel genannt ist</translation>
  </message>
  <message>
   <source>Do &amp;without the demonstration in this book</source>
   <translation>In diesem Buch &amp;ohne die Vorführung auskommen</translation>
  </message>
  <message>
   <source>Do not work out what the change means in money</source>
   <translation>Nicht ausrechnen, was die Änderung in Geld bedeutet</translation>
  </message>
  <message>
   <source>Do superseded parts go?</source>
   <translation>Entfallen ersetzte Te&amp;ile?</translation>
  </message>
  <message>
   <source>Do the tanks lie underground?</source>
   <translation>Liegen die Tanks unter der Erde?</translation>
  </message>
  <message>
   <source>Do this</source>
   <translation>Das tun</translation>
  </message>
  <message>
   <source>Does a separ&amp;ate vapor return pipe end beside the outlet?</source>
   <translation>Endet neben dem Abgang eine eigene Gas&amp;rückleitung?</translation>
  </message>
  <message>
   <source>Does each grade have a vapor pipe of its own?</source>
   <translation>Hat jede Sorte ihre eigene Gasleitung?</translation>
  </message>
  <message>
   <source>Does it stand under living or working &amp;quarters?</source>
   <translation>Steht sie unter Wohn- &amp;oder Arbeitsräumen?</translation>
  </message>
  <message>
   <source>Does not fit: {reason}</source>
   <translation>Passt nicht: {reason}</translation>
  </message>
  <message>
   <source>Does one central unit make the vacuum?</source>
   <translation>Erzeugt eine zentrale Anlage das Vakuum?</translation>
  </message>
  <message>
   <source>Does the hose come down from ove&amp;rhead?</source>
   <translation>Kommt der Schlauch von &amp;oben?</translation>
  </message>
  <message>
   <source>Does the position e&amp;xist today?</source>
   <translation>Gibt e&amp;s den Platz heute?</translation>
  </message>
  <message>
   <source>Does the vacuum assist stop at vehicles with onboard recovery?</source>
   <translation>Hält die aktive Rückführung bei Fahrzeugen mit Rückhaltung an?</translation>
  </message>
  <message>
   <source>Does wor&amp;k go on at weekends?</source>
   <translation>Wird am Wochenende gearbeitet?</translation>
  </message>
  <message>
   <source>Down</source>
   <translation>Nach unten</translation>
  </message>
  <message>
   <source>Downwards</source>
   <translation>Nach unten</translation>
  </message>
  <message>
   <source>Draft</source>
   <translation>Entwurf</translation>
  </message>
  <message>
   <source>Drawing</source>
   <translation>Zeichnung</translation>
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
   <translation>Zeichnung größer</translation>
  </message>
  <message>
   <source>Drawing of the position</source>
   <translation>Zeichnung des Platzes</translation>
  </message>
  <message>
   <source>Drawing or flow chart</source>
   <translation>Zeichnung oder Durchflusskurve</translation>
  </message>
  <message>
   <source>Drawing smaller</source>
   <translation>Zeichnung kleiner</translation>
  </message>
  <message>
   <source>Drive-offs</source>
   <translation>Schlauchabrisse</translation>
  </message>
  <message>
   <source>Drive-offs expected, all years</source>
   <translation>Erwartete Abrisse, alle Jahre</translation>
  </message>
  <message>
   <source>Due</source>
   <translation>Fällig</translation>
  </message>
  <message>
   <source>Duplicate</source>
   <translation>Duplizieren</translation>
  </message>
  <message>
   <source>Duplicate chosen rows</source>
   <translation>Gewählte Zeilen kopieren</translation>
  </message>
  <message>
   <source>Duplicate {0}</source>
   <translation>{0} duplizieren</translation>
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
   <source>Duty, latch, prepay, overhead</source>
   <translation>Einsatz, Raste, Vorauszahlung, Abgang von oben</translation>
  </message>
  <message>
   <source>E&amp;dit…</source>
   <translation>Be&amp;arbeiten…</translation>
  </message>
  <message>
   <source>E&amp;ffect</source>
   <translation>W&amp;irkung</translation>
  </message>
  <message>
   <source>E&amp;xclude it</source>
   <translation>Aus&amp;schließen</translation>
  </message>
  <message>
   <source>E&amp;xclude this part</source>
   <translation>Dieses Teil aus&amp;schließen</translation>
  </message>
  <message>
   <source>E&amp;xport as a table…</source>
   <translation>Al&amp;s Tabelle ausgeben…</translation>
  </message>
  <message>
   <source>E&amp;xport…</source>
   <translation>E&amp;xportieren…</translation>
  </message>
  <message>
   <source>E-mail</source>
   <translation>E-Mail</translation>
  </message>
  <message>
   <source>EPA's public model</source>
   <translation>Öffentliches Modell der EPA</translation>
  </message>
  <message>
   <source>EPA-457/B-12-001 and state rules; local air agency</source>
   <translation>EPA-457/B-12-001 und Regeln der Bundesstaaten; örtliche Luftbehörde</translation>
  </message>
  <message>
   <source>Each differs in kind from the set in hand. Taking one keeps its parts; undo brings back the cheapest.</source>
   <translation>Jeder unterscheidet sich in der Art vom Satz. Einen zu nehmen, behält seine Teile; Rückgängig holt den billigsten zurück.</translation>
  </message>
  <message>
   <source>Each is judged again.</source>
   <translation>Jedes wird neu beurteilt.</translation>
  </message>
  <message>
   <source>Each kind once.</source>
   <translation>Jede Art einmal.</translation>
  </message>
  <message>
   <source>Each once.</source>
   <translation>Jede einmal.</translation>
  </message>
  <message>
   <source>Each option is planned and priced by itself.</source>
   <translation>Jede Variante wird für sich geplant und berechnet.</translation>
  </message>
  <message>
   <source>Each row names its own source: see Local rules</source>
   <translation>Jede Zeile nennt ihre Quelle: siehe Örtliche Regeln</translation>
  </message>
  <message>
   <source>Each tax lies on the amounts ticked.</source>
   <translation>Jede Steuer liegt auf den angekreuzten Beträgen.</translation>
  </message>
  <message>
   <source>Each was opened and read through when it was made. Kept: seven days, four weeks, those before changes, and those that were asked for.</source>
   <translation>Jede wurde beim Anlegen geöffnet und durchgelesen. Behalten werden: sieben Tage, vier Wochen, die vor Änderungen und die verlangten.</translation>
  </message>
  <message>
   <source>Each way keeps every must.</source>
   <translation>Jeder Weg hält jedes Muss ein.</translation>
  </message>
  <message>
   <source>Each works at a dispenser of its own.</source>
   <translation>Jeder arbeitet an einer eigenen Zapfsäule.</translation>
  </message>
  <message>
   <source>Each year once.</source>
   <translation>Jedes Jahr einmal.</translation>
  </message>
  <message>
   <source>Edition</source>
   <translation>Ausgabe</translation>
  </message>
  <message>
   <source>Edition {0} of {1} by {2}: {3}.</source>
   <translation>Ausgabe {0} vom {1} durch {2}: {3}.</translation>
  </message>
  <message>
   <source>Edition: {0}.</source>
   <translation>Ausgabe: {0}.</translation>
  </message>
  <message>
   <source>Effect</source>
   <translation>Wirkung</translation>
  </message>
  <message>
   <source>Effect &amp;on this station</source>
   <translation>Wirk&amp;ung auf diese Station</translation>
  </message>
  <message>
   <source>Efficiency at the no&amp;zzle in use</source>
   <translation>Wirkungsgrad am Zapfventil im Betrieb</translation>
  </message>
  <message>
   <source>Either way the other stays open to you: stations under Survey, catalogs under Go.</source>
   <translation>Das andere bleibt Ihnen offen: Tankstellen unter Aufnahme, Kataloge unter Gehe zu.</translation>
  </message>
  <message>
   <source>Emissions</source>
   <translation>Emissionen</translation>
  </message>
  <message>
   <source>Empty takes the agency's figure.</source>
   <translation>Leer nimmt den Wert der Behörde.</translation>
  </message>
  <message>
   <source>Empty: the price follows.</source>
   <translation>Leer: der Preis folgt.</translation>
  </message>
  <message>
   <source>Encoding</source>
   <translation>Zeichensatz</translation>
  </message>
  <message>
   <source>Encoding of a text file</source>
   <translation>Kodierung einer Textdatei</translation>
  </message>
  <message>
   <source>Encoding: as found</source>
   <translation>Kodierung: wie gefunden</translation>
  </message>
  <message>
   <source>End that no other part joins</source>
   <translation>Ende, an das kein anderes Teil passt</translation>
  </message>
  <message>
   <source>Enlarge the drawing.</source>
   <translation>Die Zeichnung vergrößern.</translation>
  </message>
  <message>
   <source>Entries</source>
   <translation>Einträge</translation>
  </message>
  <message>
   <source>Entries of this name belong to one job; what it took already is left out.</source>
   <translation>Einträge dieses Namens gehören zu einer Arbeit; was sie schon entnahm, bleibt weg.</translation>
  </message>
  <message>
   <source>Entry</source>
   <translation>Eingabe</translation>
  </message>
  <message>
   <source>Entry no. {0} counts no more.</source>
   <translation>Eintrag Nr. {0} zählt nicht mehr.</translation>
  </message>
  <message>
   <source>Equipment list of the station</source>
   <translation>Geräteliste der Tankstelle</translation>
  </message>
  <message>
   <source>Every answer may stay open; the report says what it lacks. The agency decides.</source>
   <translation>Jede Antwort darf offen bleiben; der Bericht sagt, was fehlt. Die Behörde entscheidet.</translation>
  </message>
  <message>
   <source>Every change of this survey since it was opened; go back to any of them, and forward again.</source>
   <translation>Jede Änderung dieser Aufnahme, seit sie geöffnet wurde; zu jeder zurück und wieder vor.</translation>
  </message>
  <message>
   <source>Every combination is asked as a plan asks it.</source>
   <translation>Jede Kombination wird so gefragt, wie ein Plan sie fragt.</translation>
  </message>
  <message>
   <source>Every obstacle with its numbers, and every way out with its set and price.</source>
   <translation>Jedes Hindernis mit seinen Zahlen, und jeder Ausweg mit Satz und Preis.</translation>
  </message>
  <message>
   <source>Every part is held against the questions that stations can ask.</source>
   <translation>Jedes Teil wird an den Fragen gemessen, die Tankstellen stellen können.</translation>
  </message>
  <message>
   <source>Every part new</source>
   <translation>Jedes Teil neu</translation>
  </message>
  <message>
   <source>Every part whose field Family says the name has these figures, unless it has one of its own.</source>
   <translation>Jedes Teil, dessen Feld Familie den Namen nennt, hat diese Angaben, sofern es keine eigene hat.</translation>
  </message>
  <message>
   <source>Every position of the dispenser is repeated, without the parts decided on and without notes.</source>
   <translation>Jeder Platz der Zapfsäule wird wiederholt, ohne entschiedene Teile und ohne Notizen.</translation>
  </message>
  <message>
   <source>Every position of the same liquid and blend</source>
   <translation>Jede Position mit derselben Flüssigkeit und Beimischung</translation>
  </message>
  <message>
   <source>Every row left out where {where} shows “{shows}”</source>
   <translation>Jede Zeile ausgelassen, in der {where} „{shows}“ zeigt</translation>
  </message>
  <message>
   <source>Every set shown is one that no other outdoes on the axes chosen. Taking one asks for its parts.</source>
   <translation>Jeder gezeigte Satz wird auf den gewählten Achsen von keinem anderen übertroffen. Wer einen nimmt, verlangt seine Teile.</translation>
  </message>
  <message>
   <source>Every set that no other outdoes in price, lead time, flow and more.</source>
   <translation>Jeder Satz, den in Preis, Lieferzeit, Durchfluss und mehr kein anderer übertrifft.</translation>
  </message>
  <message>
   <source>Every step of a quotation comes here once it is saved in the book.</source>
   <translation>Jeder Schritt eines Angebots erscheint hier, sobald es im Buch gespeichert ist.</translation>
  </message>
  <message>
   <source>Exceptions</source>
   <translation>Ausnahmen</translation>
  </message>
  <message>
   <source>Exchange rates</source>
   <translation>Wechselkurse</translation>
  </message>
  <message>
   <source>Exclude the marked part</source>
   <translation>Markiertes Teil ausschließen</translation>
  </message>
  <message>
   <source>Exclude {part}</source>
   <translation>{part} ausschließen</translation>
  </message>
  <message>
   <source>Existing</source>
   <translation>Bestehend</translation>
  </message>
  <message>
   <source>Export</source>
   <translation>Exportieren</translation>
  </message>
  <message>
   <source>Export as a table</source>
   <translation>Als Tabelle ausgeben</translation>
  </message>
  <message>
   <source>Fa&amp;milies…</source>
   <translation>Familien…</translation>
  </message>
  <message>
   <source>Families</source>
   <translation>Familien</translation>
  </message>
  <message>
   <source>Families of parts in {0}</source>
   <translation>Teilefamilien in {0}</translation>
  </message>
  <message>
   <source>Family</source>
   <translation>Baureihe</translation>
  </message>
  <message>
   <source>Faults and questions</source>
   <translation>Fehler und Fragen</translation>
  </message>
  <message>
   <source>Faults and questions ({0})</source>
   <translation>Fehler und Fragen ({0})</translation>
  </message>
  <message>
   <source>Feet, gallons, pounds-force, psi.</source>
   <translation>Fuß, Gallonen, Pound-force, psi.</translation>
  </message>
  <message>
   <source>Female</source>
   <translation>Innen</translation>
  </message>
  <message>
   <source>Fewest departures</source>
   <translation>Wenigste Abweichungen</translation>
  </message>
  <message>
   <source>Fi&amp;les…</source>
   <translation>&amp;Dateien…</translation>
  </message>
  <message>
   <source>Fi&amp;nd</source>
   <translation>S&amp;uchen</translation>
  </message>
  <message>
   <source>Fi&amp;rst year</source>
   <translation>&amp;Erstes Jahr</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Feld</translation>
  </message>
  <message>
   <source>Fields that could not be read, to be filled in here: {0}</source>
   <translation>Felder, die nicht lesbar waren und hier auszufüllen sind: {0}</translation>
  </message>
  <message>
   <source>Figures in texts</source>
   <translation>Angaben in Texten</translation>
  </message>
  <message>
   <source>Figures in texts ({0})</source>
   <translation>Angaben in Texten ({0})</translation>
  </message>
  <message>
   <source>Figures of &amp;a similar part…</source>
   <translation>Angaben eines ä&amp;hnlichen Teils…</translation>
  </message>
  <message>
   <source>Figures of a described part</source>
   <translation>Zahlen eines beschriebenen Teils</translation>
  </message>
  <message>
   <source>Figures of a similar part</source>
   <translation>Angaben eines ähnlichen Teils</translation>
  </message>
  <message>
   <source>Figures of an installed part</source>
   <translation>Zahlen eines eingebauten Teils</translation>
  </message>
  <message>
   <source>Figures of its parts</source>
   <translation>Angaben ihrer Teile</translation>
  </message>
  <message>
   <source>Figures that are wrong</source>
   <translation>Falsche Angaben</translation>
  </message>
  <message>
   <source>Files of the part</source>
   <translation>Dateien des Teils</translation>
  </message>
  <message>
   <source>Fill down</source>
   <translation>Nach unten ausfüllen</translation>
  </message>
  <message>
   <source>Fill the form from a terms file (Ctrl+O)</source>
   <translation>Das Formular aus einer Bedingungsdatei füllen (Strg+O)</translation>
  </message>
  <message>
   <source>Filler</source>
   <translation>Einfüllstutzen</translation>
  </message>
  <message>
   <source>Filler distance</source>
   <translation>Abstand Stutzen</translation>
  </message>
  <message>
   <source>Filler height</source>
   <translation>Höhe des Einfüllstutzens</translation>
  </message>
  <message>
   <source>Finding</source>
   <translation>Befund</translation>
  </message>
  <message>
   <source>Findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <source>Findings about this part</source>
   <translation>Befunde zu diesem Teil</translation>
  </message>
  <message>
   <source>Findings by weight</source>
   <translation>Befunde nach Gewicht</translation>
  </message>
  <message>
   <source>Fingerprint of the survey</source>
   <translation>Fingerabdruck der Aufnahme</translation>
  </message>
  <message>
   <source>First &amp;day of the plan</source>
   <translation>Erster Tag &amp;des Plans</translation>
  </message>
  <message>
   <source>First day</source>
   <translation>Erster Tag</translation>
  </message>
  <message>
   <source>First day of the price list</source>
   <translation>Erster Tag der Preisliste</translation>
  </message>
  <message>
   <source>Fittings and work, once</source>
   <translation>Armaturen und Arbeit, einmal</translation>
  </message>
  <message>
   <source>Flow</source>
   <translation>Durchfluss</translation>
  </message>
  <message>
   <source>Flow against pressure</source>
   <translation>Durchfluss gegen Druck</translation>
  </message>
  <message>
   <source>Flow wanted at the no&amp;zzle</source>
   <translation>Gewünschter Durchfluss am Zapf&amp;ventil</translation>
  </message>
  <message>
   <source>Folder for surveys, quotations, catalogs and rules</source>
   <translation>Ordner für Aufnahmen, Angebote, Kataloge und Regeln</translation>
  </message>
  <message>
   <source>Folder for the orders of all suppliers</source>
   <translation>Ordner für die Bestellungen aller Lieferanten</translation>
  </message>
  <message>
   <source>Folder of survey files</source>
   <translation>Ordner mit Aufnahmedateien</translation>
  </message>
  <message>
   <source>Follow up</source>
   <translation>Nachfassen</translation>
  </message>
  <message>
   <source>For</source>
   <translation>Für</translation>
  </message>
  <message>
   <source>For a bank or an agency, in place of the report: what hangs, what comes, when, at what cost.</source>
   <translation>Für Bank oder Behörde, anstelle des Berichts: was hängt, was kommt, wann, zu welchen Kosten.</translation>
  </message>
  <message>
   <source>For a distributor</source>
   <translation>Für Händler</translation>
  </message>
  <message>
   <source>For a part without a catalog number.</source>
   <translation>Für ein Teil ohne Katalognummer.</translation>
  </message>
  <message>
   <source>For a station owner</source>
   <translation>Für Betreiber</translation>
  </message>
  <message>
   <source>For an installer</source>
   <translation>Für Monteure</translation>
  </message>
  <message>
   <source>For everybody</source>
   <translation>Für alle</translation>
  </message>
  <message>
   <source>For price lists in another currency: one unit of theirs in units of the quotation's.</source>
   <translation>Für Preislisten in anderer Währung: eine Einheit davon in Einheiten des Angebots.</translation>
  </message>
  <message>
   <source>For quantities and masses.</source>
   <translation>Für Mengen und Massen.</translation>
  </message>
  <message>
   <source>Forecourt from above</source>
   <translation>Tankfeld von oben</translation>
  </message>
  <message>
   <source>Forecourt from above.</source>
   <translation>Tankfeld von oben.</translation>
  </message>
  <message>
   <source>Free text</source>
   <translation>Freier Text</translation>
  </message>
  <message>
   <source>Freight and taxes</source>
   <translation>Fracht und Steuern</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>From a &amp;file…</source>
   <translation>Aus einer &amp;Datei…</translation>
  </message>
  <message>
   <source>From a dock or slip</source>
   <translation>Von einem Steg oder Liegeplatz</translation>
  </message>
  <message>
   <source>From center line to center line of the hose.</source>
   <translation>Von Mitte zu Mitte des Schlauchs.</translation>
  </message>
  <message>
   <source>From dispenser type {0}</source>
   <translation>Vom Zapfsäulentyp {0}</translation>
  </message>
  <message>
   <source>From memory</source>
   <translation>Erinnert</translation>
  </message>
  <message>
   <source>From quantity</source>
   <translation>Ab Menge</translation>
  </message>
  <message>
   <source>From the dispenser's maker. It must outlast the breakaway.</source>
   <translation>Vom Hersteller der Zapfsäule. Er muss mehr aushalten als die Abreißkupplung.</translation>
  </message>
  <message>
   <source>From the next start on the book in {0} is used; it was there already.</source>
   <translation>Ab dem nächsten Start gilt das Buch in {0}; es war schon da.</translation>
  </message>
  <message>
   <source>Fuel oil</source>
   <translation>Heizöl</translation>
  </message>
  <message>
   <source>Fueling</source>
   <translation>Tanken</translation>
  </message>
  <message>
   <source>Full renewal</source>
   <translation>Volle Erneuerung</translation>
  </message>
  <message>
   <source>Further costs</source>
   <translation>Weitere Kosten</translation>
  </message>
  <message>
   <source>Further filler {0}</source>
   <translation>Weiterer Stutzen {0}</translation>
  </message>
  <message>
   <source>G</source>
   <translation>G</translation>
  </message>
  <message>
   <source>GTIN</source>
   <translation>GTIN</translation>
  </message>
  <message>
   <source>Gasoline</source>
   <translation>Benzin</translation>
  </message>
  <message>
   <source>Gasoline sold in a &amp;year</source>
   <translation>Benzin, &amp;verkauft im Jahr</translation>
  </message>
  <message>
   <source>Gauge on site, or the pump maker's data</source>
   <translation>Manometer vor Ort oder Daten des Pumpenherstellers</translation>
  </message>
  <message>
   <source>Gen&amp;der</source>
   <translation>Außen oder &amp;innen</translation>
  </message>
  <message>
   <source>Georgia page</source>
   <translation>Seite von Georgia</translation>
  </message>
  <message>
   <source>Give other positions some of the answers of this one.</source>
   <translation>Anderen Plätzen einige Antworten von diesem geben.</translation>
  </message>
  <message>
   <source>Gives up</source>
   <translation>Gibt auf</translation>
  </message>
  <message>
   <source>Gives up: {lines}</source>
   <translation>Gibt auf: {lines}</translation>
  </message>
  <message>
   <source>Go to the position above.</source>
   <translation>Zum Platz darüber gehen.</translation>
  </message>
  <message>
   <source>Go to the position below.</source>
   <translation>Zum Platz darunter gehen.</translation>
  </message>
  <message>
   <source>Go to the step after.</source>
   <translation>Zum nächsten Schritt gehen.</translation>
  </message>
  <message>
   <source>Go to the step before.</source>
   <translation>Zum vorigen Schritt gehen.</translation>
  </message>
  <message>
   <source>Good practice</source>
   <translation>Gute Praxis</translation>
  </message>
  <message>
   <source>Grade</source>
   <translation>Sorte</translation>
  </message>
  <message>
   <source>Grant that was promised</source>
   <translation>Zugesagte Förderung</translation>
  </message>
  <message>
   <source>Greatest &amp;flow of the dispenser</source>
   <translation>Größter Durch&amp;fluss der Zapfsäule</translation>
  </message>
  <message>
   <source>Greatest share of a grade out of service</source>
   <translation>Grö&amp;ßter Anteil einer Sorte außer Betrieb</translation>
  </message>
  <message>
   <source>HTML page, for screen readers</source>
   <translation>HTML-Seite, für Bildschirmleser</translation>
  </message>
  <message>
   <source>Ha&amp;ng this one</source>
   <translation>&amp;Dieses hängen</translation>
  </message>
  <message>
   <source>Hand to &amp;mail…</source>
   <translation>Per E-Mail…</translation>
  </message>
  <message>
   <source>Hand to mail</source>
   <translation>Per E-Mail</translation>
  </message>
  <message>
   <source>Hang {part}</source>
   <translation>{part} hängen</translation>
  </message>
  <message>
   <source>Head of the bill.</source>
   <translation>Kopf der Stückliste.</translation>
  </message>
  <message>
   <source>Heading</source>
   <translation>Überschrift</translation>
  </message>
  <message>
   <source>Health</source>
   <translation>&amp;Zustand</translation>
  </message>
  <message>
   <source>Heigh&amp;t from which the cord pulls</source>
   <translation>Höhe, in der das Sei&amp;l zieht</translation>
  </message>
  <message>
   <source>Help</source>
   <translation>Hilfe</translation>
  </message>
  <message>
   <source>Here the options of the quotation come to stand side by side: what each covers, costs and takes.</source>
   <translation>Hier stehen bald die Varianten des Angebots nebeneinander: was jede umfasst, kostet und braucht.</translation>
  </message>
  <message>
   <source>High contrast</source>
   <translation>Starker Kontrast</translation>
  </message>
  <message>
   <source>Highest temperature, sun on the hose included.</source>
   <translation>Höchste Temperatur, Sonne auf dem Schlauch eingerechnet.</translation>
  </message>
  <message>
   <source>Ho&amp;ttest</source>
   <translation>Höch&amp;ste Temperatur</translation>
  </message>
  <message>
   <source>Hold the last share</source>
   <translation>Den letzten Anteil halten</translation>
  </message>
  <message>
   <source>Hold-open wanted</source>
   <translation>Raste gewünscht</translation>
  </message>
  <message>
   <source>Hoo&amp;k height</source>
   <translation>Höhe des Ha&amp;kens</translation>
  </message>
  <message>
   <source>Hook distance</source>
   <translation>Abstand Haken</translation>
  </message>
  <message>
   <source>Hook height</source>
   <translation>Höhe Haken</translation>
  </message>
  <message>
   <source>Horizontal distance from the outlet to the nozzle at rest.</source>
   <translation>Waagrechter Abstand vom Abgang zum Zapfventil in Ruhe.</translation>
  </message>
  <message>
   <source>Horizontal distance from the point below the outlet.</source>
   <translation>Waagrechter Abstand vom Punkt unter dem Abgang.</translation>
  </message>
  <message>
   <source>Hose</source>
   <translation>Schlauch</translation>
  </message>
  <message>
   <source>Hose cut to length</source>
   <translation>Schlauch auf Länge geschnitten</translation>
  </message>
  <message>
   <source>Hose on the drum is curved and costs flow; it is counted.</source>
   <translation>Schlauch auf der Trommel ist gebogen und kostet Durchfluss; das ist eingerechnet.</translation>
  </message>
  <message>
   <source>Hose reel</source>
   <translation>Schlauchtrommel</translation>
  </message>
  <message>
   <source>Hose take-up</source>
   <translation>Schlauchführung</translation>
  </message>
  <message>
   <source>Hoses</source>
   <translation>Schläuche</translation>
  </message>
  <message>
   <source>Hours</source>
   <translation>Stunden</translation>
  </message>
  <message>
   <source>Hours count once for each position, dispenser or site; kinds limit a task to sets that hold one.</source>
   <translation>Stunden zählen einmal je Platz, Zapfsäule oder Tankstelle; Arten beschränken eine Arbeit auf Sätze mit einer davon.</translation>
  </message>
  <message>
   <source>Hours with a &amp;reconnectable breakaway</source>
   <translation>Stunden mit &amp;wiederverbindbarer Abreißkupplung</translation>
  </message>
  <message>
   <source>How do you want to begin?</source>
   <translation>Wie möchten Sie beginnen?</translation>
  </message>
  <message>
   <source>How each of three people works here.</source>
   <translation>Wie jeder von drei Menschen hier arbeitet.</translation>
  </message>
  <message>
   <source>How far the change in money is worked out</source>
   <translation>Wie weit die Änderung in Geld gerechnet ist</translation>
  </message>
  <message>
   <source>How far the quotation is</source>
   <translation>Wie weit das Angebot ist</translation>
  </message>
  <message>
   <source>How far the step is</source>
   <translation>Wie weit der Schritt ist</translation>
  </message>
  <message>
   <source>How is the hose taken &amp;up after use?</source>
   <translation>Wie wird der Schlauch nach dem Tanken a&amp;ufgenommen?</translation>
  </message>
  <message>
   <source>How is vapor recovered &amp;today?</source>
   <translation>Wie wird Gas heute &amp;zurückgeführt?</translation>
  </message>
  <message>
   <source>How is vapor to be recovered in f&amp;uture?</source>
   <translation>Wie soll Gas &amp;künftig zurückgeführt werden?</translation>
  </message>
  <message>
   <source>How many joints one container seals; empty: one container for each set.</source>
   <translation>Wie viele Verbindungen ein Behälter dichtet; leer: ein Behälter je Satz.</translation>
  </message>
  <message>
   <source>How much &amp;blend is in it?</source>
   <translation>Wie viel Beimischung ist &amp;darin?</translation>
  </message>
  <message>
   <source>How sure?</source>
   <translation>Wie sicher?</translation>
  </message>
  <message>
   <source>How the customer's prices are made.</source>
   <translation>Wie die Preise des Kunden entstehen.</translation>
  </message>
  <message>
   <source>I&amp;mport a table…</source>
   <translation>Tabelle ein&amp;lesen…</translation>
  </message>
  <message>
   <source>ISO 4217</source>
   <translation>ISO 4217</translation>
  </message>
  <message>
   <source>ISO 8859-1</source>
   <translation>ISO 8859-1</translation>
  </message>
  <message>
   <source>Import dispenser types</source>
   <translation>Zapfsäulentypen einlesen</translation>
  </message>
  <message>
   <source>Import old numbers</source>
   <translation>Alte Nummern einlesen</translation>
  </message>
  <message>
   <source>In a row where no island is named:</source>
   <translation>In einer Reihe, wo keine Insel genannt ist:</translation>
  </message>
  <message>
   <source>In detail</source>
   <translation>Im Einzelnen</translation>
  </message>
  <message>
   <source>In flammable zone</source>
   <translation>In der Zone</translation>
  </message>
  <message>
   <source>In hand: {catalog}, {edition}</source>
   <translation>In Arbeit: {catalog}, {edition}</translation>
  </message>
  <message>
   <source>In no year</source>
   <translation>In keinem Jahr</translation>
  </message>
  <message>
   <source>In the currency of the quotation.</source>
   <translation>In der Währung des Angebots.</translation>
  </message>
  <message>
   <source>In the currency of the site.</source>
   <translation>In der Währung der Tankstelle.</translation>
  </message>
  <message>
   <source>In the file: {0}</source>
   <translation>In der Datei: {0}</translation>
  </message>
  <message>
   <source>In the order entered</source>
   <translation>In der Reihenfolge der Eingabe</translation>
  </message>
  <message>
   <source>Inspections due</source>
   <translation>Fällige Inspektionen</translation>
  </message>
  <message>
   <source>Inspections fall due from the day of handing over on; give it above.</source>
   <translation>Prüfungen werden ab dem Tag der Übergabe fällig; ihn oben angeben.</translation>
  </message>
  <message>
   <source>Install</source>
   <translation>Montieren</translation>
  </message>
  <message>
   <source>Installed</source>
   <translation>Einbau</translation>
  </message>
  <message>
   <source>Installed (part number)</source>
   <translation>Eingebaut (Teilenummer)</translation>
  </message>
  <message>
   <source>Installed parts</source>
   <translation>Eingebaute Teile</translation>
  </message>
  <message>
   <source>Installer's pack</source>
   <translation>Montagemappe</translation>
  </message>
  <message>
   <source>Installer's work</source>
   <translation>Arbeit des Monteurs</translation>
  </message>
  <message>
   <source>Installer's work: a loading list, a sheet for each position, and the caution sheet to sign.</source>
   <translation>Arbeit des Monteurs: eine Ladeliste, ein Blatt für jeden Platz und das Warnblatt zum Unterschreiben.</translation>
  </message>
  <message>
   <source>Instruments used (type, number)</source>
   <translation>Benutzte Messgeräte (Art, Nummer)</translation>
  </message>
  <message>
   <source>International Fire Code, overhead dispensers (recalled; confirm in the adopted edition)</source>
   <translation>International Fire Code, Zapfsäulen mit Schlauch von oben (erinnert; in der geltenden Ausgabe bestätigen)</translation>
  </message>
  <message>
   <source>Is a hold-open l&amp;atch wanted?</source>
   <translation>Soll eine &amp;Raste da sein?</translation>
  </message>
  <message>
   <source>Is a re&amp;connectable breakaway wanted?</source>
   <translation>Ist eine wie&amp;derverbindbare Abreißkupplung gewünscht?</translation>
  </message>
  <message>
   <source>Is it a &amp;fenced above-ground site, closed to the public?</source>
   <translation>Ist es eine eingezäunte oberirdische Anlage, für Kun&amp;den gesperrt?</translation>
  </message>
  <message>
   <source>Is the DEF nozzle used inside the flammable &amp;zone of a fuel dispenser?</source>
   <translation>Wird das DEF-Zapfventil in der explosionsgefährdeten &amp;Zone einer Kraftstoff-Zapfsäule benutzt?</translation>
  </message>
  <message>
   <source>Is the vapor pipe the only link between the tanks?</source>
   <translation>Ist die Gasleitung die einzige Verbindung der Tanks?</translation>
  </message>
  <message>
   <source>Island</source>
   <translation>Insel</translation>
  </message>
  <message>
   <source>Island of the dispenser</source>
   <translation>Insel der Zapfsäule</translation>
  </message>
  <message>
   <source>Island {0}</source>
   <translation>Insel {0}</translation>
  </message>
  <message>
   <source>Islands of the new dispensers</source>
   <translation>Inseln der neuen Zapfsäulen</translation>
  </message>
  <message>
   <source>Islands that keep recovery</source>
   <translation>Inseln, die Rückführung behalten</translation>
  </message>
  <message>
   <source>Iss&amp;ue</source>
   <translation>Abgeben</translation>
  </message>
  <message>
   <source>Issue although hoses are left out</source>
   <translation>Trotz fehlender Schläuche abgeben</translation>
  </message>
  <message>
   <source>Issue although the margin is low</source>
   <translation>Trotz niedriger Marge abgeben</translation>
  </message>
  <message>
   <source>It begins with terms: whose offer it is, prices, labor, charges, days.</source>
   <translation>Es beginnt mit Bedingungen: wessen Angebot, Preise, Arbeit, Zuschläge, Tage.</translation>
  </message>
  <message>
   <source>It can be put together again after it separated, where its maker says so.</source>
   <translation>Sie lässt sich nach dem Trennen wieder verbinden, wo ihr Hersteller es sagt.</translation>
  </message>
  <message>
   <source>It ends in 2020. Own shares, further down, go before it.</source>
   <translation>Sie endet 2020. Eigene Anteile, weiter unten, gehen vor.</translation>
  </message>
  <message>
   <source>It expired after {0}. Requote it and keep it: revision {1} opens.</source>
   <translation>Es ist nach {0} abgelaufen. Neu anbieten und aufbewahren: Revision {1} wird eröffnet.</translation>
  </message>
  <message>
   <source>It hangs</source>
   <translation>Er hängt</translation>
  </message>
  <message>
   <source>It is</source>
   <translation>Es ist</translation>
  </message>
  <message>
   <source>It is larger than many mail services take.</source>
   <translation>Sie ist größer, als viele Maildienste annehmen.</translation>
  </message>
  <message>
   <source>It is valid through {0}. Note the customer's answer, or requote it.</source>
   <translation>Es gilt bis {0}. Die Antwort des Kunden vermerken oder neu anbieten.</translation>
  </message>
  <message>
   <source>Item number</source>
   <translation>Eigene Artikelnummer</translation>
  </message>
  <message>
   <source>Its figures</source>
   <translation>Seine Angaben</translation>
  </message>
  <message>
   <source>Its maker</source>
   <translation>Hersteller dazu</translation>
  </message>
  <message>
   <source>Its number.</source>
   <translation>Seine Nummer.</translation>
  </message>
  <message>
   <source>Its number; a part of the same kind.</source>
   <translation>Seine Nummer; ein Teil derselben Art.</translation>
  </message>
  <message>
   <source>Job</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Judged with the diesel family</source>
   <translation>Beurteilt mit der Dieselfamilie</translation>
  </message>
  <message>
   <source>Judging {part} at {label}…</source>
   <translation>{part} an {label} wird beurteilt…</translation>
  </message>
  <message>
   <source>Keep an alternate in place of its part and quote so; the money is shown first</source>
   <translation>Eine Alternative anstelle ihres Teils behalten und so anbieten; das Geld wird zuerst gezeigt</translation>
  </message>
  <message>
   <source>Keep as usual terms</source>
   <translation>Als übliche Bedingungen behalten</translation>
  </message>
  <message>
   <source>Keep at least</source>
   <translation>Mindestens</translation>
  </message>
  <message>
   <source>Keep both</source>
   <translation>Beide behalten</translation>
  </message>
  <message>
   <source>Keep mine</source>
   <translation>Meine behalten</translation>
  </message>
  <message>
   <source>Keep or replace</source>
   <translation>Behalten oder ersetzen</translation>
  </message>
  <message>
   <source>Keep the customers of the book, and choose whom to quote to</source>
   <translation>Die Kunden des Buchs führen und wählen, wem angeboten wird</translation>
  </message>
  <message>
   <source>Keep the firm's types of dispensers and choose one for this dispenser, which its positions inherit.</source>
   <translation>Die Zapfsäulentypen der Firma pflegen und einen für diese Zapfsäule wählen; ihre Plätze übernehmen ihn.</translation>
  </message>
  <message>
   <source>Keep the invented catalog &amp;Demonstration in this book</source>
   <translation>Den erfundenen Katalog &amp;Demonstration in diesem Buch behalten</translation>
  </message>
  <message>
   <source>Keep the parts that the file does not hold</source>
   <translation>Teile behalten, die nicht in der Datei stehen</translation>
  </message>
  <message>
   <source>Keeps the grade on sale; empty goes by liquid and blend.</source>
   <translation>Hält die Sorte im Verkauf; leer geht nach Flüssigkeit und Beimischung.</translation>
  </message>
  <message>
   <source>Keeps, other than the set in hand: {lines}</source>
   <translation>Erhalten, anders als im Satz: {lines}</translation>
  </message>
  <message>
   <source>Kept</source>
   <translation>Erhalten</translation>
  </message>
  <message>
   <source>Kept as usual terms in {path}.</source>
   <translation>Als übliche Bedingungen behalten in {path}.</translation>
  </message>
  <message>
   <source>Kept parts cost nothing</source>
   <translation>Erhaltene Teile kosten nichts</translation>
  </message>
  <message>
   <source>Kerosene</source>
   <translation>Kerosin</translation>
  </message>
  <message>
   <source>Keys</source>
   <translation>Tasten</translation>
  </message>
  <message>
   <source>Kilograms</source>
   <translation>Kilogramm</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>Kind of a part without a catalog number</source>
   <translation>Art eines Teils ohne Katalognummer</translation>
  </message>
  <message>
   <source>Kind of part</source>
   <translation>Art des Teils</translation>
  </message>
  <message>
   <source>Kind of rows that name none</source>
   <translation>Art von Zeilen, die keine nennen</translation>
  </message>
  <message>
   <source>Kind: as the rows say</source>
   <translation>Art: wie die Zeilen sagen</translation>
  </message>
  <message>
   <source>La&amp;nguage</source>
   <translation>&amp;Sprache</translation>
  </message>
  <message>
   <source>Labor</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Lacks</source>
   <translation>Es fehlt</translation>
  </message>
  <message>
   <source>Language of the papers</source>
   <translation>Papiere auf</translation>
  </message>
  <message>
   <source>Language, units, theme, catalog, usual local rules, data folder and backups in one place.</source>
   <translation>Sprache, Einheiten, Farben, Katalog, übliche örtliche Regeln, Datenordner und Sicherungen an einem Ort.</translation>
  </message>
  <message>
   <source>Large tanks, high flow</source>
   <translation>Große Tanks, großer Durchfluss</translation>
  </message>
  <message>
   <source>Last day</source>
   <translation>Letzter Tag</translation>
  </message>
  <message>
   <source>Last day of the price list</source>
   <translation>Letzter Tag der Preisliste</translation>
  </message>
  <message>
   <source>Last done</source>
   <translation>Letztes Mal</translation>
  </message>
  <message>
   <source>Last entries</source>
   <translation>Letzte Einträge</translation>
  </message>
  <message>
   <source>Lead days</source>
   <translation>Lieferzeit in Tagen</translation>
  </message>
  <message>
   <source>Lead time</source>
   <translation>Lieferzeit</translation>
  </message>
  <message>
   <source>Lead time in days</source>
   <translation>Lieferzeit in Tagen</translation>
  </message>
  <message>
   <source>Leads to</source>
   <translation>Führt zu</translation>
  </message>
  <message>
   <source>Leak test certificate</source>
   <translation>Nachweis der Dichtheitsprüfung</translation>
  </message>
  <message>
   <source>Least</source>
   <translation>Mindest</translation>
  </message>
  <message>
   <source>Least cost</source>
   <translation>Geringste Kosten</translation>
  </message>
  <message>
   <source>Leave &amp;aside the parts asked for</source>
   <translation>Verlangte Teile &amp;außer Acht lassen</translation>
  </message>
  <message>
   <source>Leave and &amp;lose the changes</source>
   <translation>Verlassen und die Änderungen &amp;verlieren</translation>
  </message>
  <message>
   <source>Leave as it &amp;was</source>
   <translation>&amp;Lassen, wie es war</translation>
  </message>
  <message>
   <source>Leave out every row that shows a text</source>
   <translation>Jede Zeile auslassen, die einen Text zeigt</translation>
  </message>
  <message>
   <source>Leave the marked part open</source>
   <translation>Markiertes Teil offen lassen</translation>
  </message>
  <message>
   <source>Leave the row out</source>
   <translation>Zeile auslassen</translation>
  </message>
  <message>
   <source>Leave the terms as they were? What you wrote here is lost.</source>
   <translation>Die Bedingungen lassen, wie sie waren? Was hier geschrieben ist, geht verloren.</translation>
  </message>
  <message>
   <source>Leave {part} open</source>
   <translation>{part} offen lassen</translation>
  </message>
  <message>
   <source>Left out by a repair</source>
   <translation>Durch eine Reparatur ausgelassen</translation>
  </message>
  <message>
   <source>Left out: a heading between rows</source>
   <translation>Ausgelassen: eine Überschrift zwischen Zeilen</translation>
  </message>
  <message>
   <source>Left out: a total</source>
   <translation>Ausgelassen: eine Summe</translation>
  </message>
  <message>
   <source>Left out: the titles once more</source>
   <translation>Ausgelassen: die Titel noch einmal</translation>
  </message>
  <message>
   <source>Legs of the way seen from above, separated by semicolons, where the hose must go round a corner.</source>
   <translation>Teilstrecken des Weges von oben, mit Semikolon getrennt, wo der Schlauch um eine Ecke muss.</translation>
  </message>
  <message>
   <source>Lengths are in</source>
   <translation>Längen in</translation>
  </message>
  <message>
   <source>Let all parts go</source>
   <translation>Alle Teile freigeben</translation>
  </message>
  <message>
   <source>Let the draft hold what the file holds and nothing else</source>
   <translation>Den Entwurf nur das enthalten lassen, was in der Datei steht</translation>
  </message>
  <message>
   <source>Let the price lists decide again, and quote again</source>
   <translation>Wieder die Preislisten entscheiden lassen und neu anbieten</translation>
  </message>
  <message>
   <source>Let this s&amp;urvey plan as the book does</source>
   <translation>Diese &amp;Aufnahme wie das Buch planen</translation>
  </message>
  <message>
   <source>Let this survey plan &amp;with it</source>
   <translation>Diese &amp;Aufnahme damit planen</translation>
  </message>
  <message>
   <source>Letterhead</source>
   <translation>Briefkopf</translation>
  </message>
  <message>
   <source>Letterhead, conditions, prices, labor and taxes stand in every new quotation then</source>
   <translation>Briefkopf, Bedingungen, Preise, Arbeit und Steuern stehen dann in jedem neuen Angebot</translation>
  </message>
  <message>
   <source>License</source>
   <translation>Befugnis</translation>
  </message>
  <message>
   <source>Lies on</source>
   <translation>Liegt auf</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Hell</translation>
  </message>
  <message>
   <source>Limit</source>
   <translation>Grenzwert</translation>
  </message>
  <message>
   <source>Limit from: {source}</source>
   <translation>Grenzwert aus: {source}</translation>
  </message>
  <message>
   <source>Limits behind it: {0}</source>
   <translation>Grenzwerte dahinter: {0}</translation>
  </message>
  <message>
   <source>Line by line, as printed.</source>
   <translation>Zeile für Zeile, wie gedruckt.</translation>
  </message>
  <message>
   <source>Lines are sold below cost or the least margin: issuing it asks why. See Prices.</source>
   <translation>Zeilen liegen unter Kosten oder Mindestmarge: beim Abgeben wird nach dem Grund gefragt. Siehe Preise.</translation>
  </message>
  <message>
   <source>Liquid</source>
   <translation>Flüssigkeit</translation>
  </message>
  <message>
   <source>Liquid and blend</source>
   <translation>Flüssigkeit und Beimischung</translation>
  </message>
  <message>
   <source>Liquid only</source>
   <translation>Nur Flüssigkeit</translation>
  </message>
  <message>
   <source>Liquid sold today</source>
   <translation>Heute verkaufte Flüssigkeit</translation>
  </message>
  <message>
   <source>List as a paper</source>
   <translation>Liste als Papier</translation>
  </message>
  <message>
   <source>List price</source>
   <translation>Listenpreis</translation>
  </message>
  <message>
   <source>List prices of the catalog in this currency.</source>
   <translation>Listenpreise des Katalogs in dieser Währung.</translation>
  </message>
  <message>
   <source>List prices with what goes with the sets; longest lead time {days}.</source>
   <translation>Listenpreise mit dem, was zu den Sätzen gehört; längste Lieferzeit {days}.</translation>
  </message>
  <message>
   <source>Listing class without a scheme</source>
   <translation>Zulassungsklasse ohne Grundlage</translation>
  </message>
  <message>
   <source>Local &amp;rules of new surveys</source>
   <translation>Örtliche &amp;Regeln neuer Aufnahmen</translation>
  </message>
  <message>
   <source>Local rules</source>
   <translation>Örtliche Regeln</translation>
  </message>
  <message>
   <source>Local rules to show</source>
   <translation>Anzuzeigende örtliche Regeln</translation>
  </message>
  <message>
   <source>Long hose, yard or delivery</source>
   <translation>Langer Schlauch, Hof oder Lieferung</translation>
  </message>
  <message>
   <source>Longest</source>
   <translation>Längste</translation>
  </message>
  <message>
   <source>Look &amp;at its health</source>
   <translation>Zustand &amp;ansehen</translation>
  </message>
  <message>
   <source>Look at &amp;it</source>
   <translation>Anse&amp;hen</translation>
  </message>
  <message>
   <source>Look at the demonstration</source>
   <translation>Vorführung ansehen</translation>
  </message>
  <message>
   <source>Look into the outlet: one bore, or one tube inside another.</source>
   <translation>In den Abgang sehen: eine Bohrung oder ein Rohr im anderen.</translation>
  </message>
  <message>
   <source>Look up any catalog part and read what speaks against it here.</source>
   <translation>Ein Katalogteil nachschlagen und lesen, was hier dagegen spricht.</translation>
  </message>
  <message>
   <source>Looking for other sets…</source>
   <translation>Andere Sätze werden gesucht…</translation>
  </message>
  <message>
   <source>Looking for reasons and ways out</source>
   <translation>Gründe und Auswege werden gesucht</translation>
  </message>
  <message>
   <source>Looking for sets…</source>
   <translation>Sätze werden gesucht…</translation>
  </message>
  <message>
   <source>Looking for the reasons and for what would help…</source>
   <translation>Gründe und mögliche Abhilfen werden gesucht…</translation>
  </message>
  <message>
   <source>Looking for what would help…</source>
   <translation>Mögliche Abhilfen werden gesucht…</translation>
  </message>
  <message>
   <source>Looking…</source>
   <translation>Wird angesehen…</translation>
  </message>
  <message>
   <source>Lowers the threshold of a new station.</source>
   <translation>Senkt die Schwelle einer neuen Tankstelle.</translation>
  </message>
  <message>
   <source>Lowest air temperature the hardware meets.</source>
   <translation>Tiefste Lufttemperatur, die die Teile erleben.</translation>
  </message>
  <message>
   <source>Made</source>
   <translation>Erstellt</translation>
  </message>
  <message>
   <source>Made up by</source>
   <translation>Montiert von</translation>
  </message>
  <message>
   <source>Made with these packages; open one to read its license.</source>
   <translation>Gemacht mit diesen Paketen; eines öffnen, um seine Lizenz zu lesen.</translation>
  </message>
  <message>
   <source>Make the change again that was taken back.</source>
   <translation>Die zurückgenommene Änderung wieder machen.</translation>
  </message>
  <message>
   <source>Make the drawing smaller.</source>
   <translation>Die Zeichnung verkleinern.</translation>
  </message>
  <message>
   <source>Make the paper</source>
   <translation>Papier erstellen</translation>
  </message>
  <message>
   <source>Make the parts list</source>
   <translation>Stückliste erstellen</translation>
  </message>
  <message>
   <source>Maker</source>
   <translation>Hersteller</translation>
  </message>
  <message>
   <source>Maker of rows that name none</source>
   <translation>Hersteller von Zeilen, die keinen nennen</translation>
  </message>
  <message>
   <source>Maker of the old number</source>
   <translation>Hersteller der alten Nummer</translation>
  </message>
  <message>
   <source>Maker of the part</source>
   <translation>Hersteller des Teils</translation>
  </message>
  <message>
   <source>Maker of the price list</source>
   <translation>Hersteller der Preisliste</translation>
  </message>
  <message>
   <source>Makers ordered there</source>
   <translation>Dort bestellte Hersteller</translation>
  </message>
  <message>
   <source>Makers whose parts are ordered there, parted by semicolons</source>
   <translation>Hersteller, deren Teile dort bestellt werden, durch Strichpunkte getrennt</translation>
  </message>
  <message>
   <source>Makes one change of the survey, which can be undone.</source>
   <translation>Macht eine Änderung der Aufnahme, die sich zurücknehmen lässt.</translation>
  </message>
  <message>
   <source>Making the paper…</source>
   <translation>Das Papier entsteht…</translation>
  </message>
  <message>
   <source>Male</source>
   <translation>Außen</translation>
  </message>
  <message>
   <source>Margi&amp;n</source>
   <translation>Ma&amp;rge</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Abstand</translation>
  </message>
  <message>
   <source>Margin lost per position and hour</source>
   <translation>Entgangene Marge je Platz und Stunde</translation>
  </message>
  <message>
   <source>Margin, %</source>
   <translation>Marge, %</translation>
  </message>
  <message>
   <source>Mark a part to read what speaks against it here.</source>
   <translation>Ein Teil markieren, um zu lesen, was hier dagegen spricht.</translation>
  </message>
  <message>
   <source>Mass of the line</source>
   <translation>Masse der Zeile</translation>
  </message>
  <message>
   <source>Materials, labor, freight: any of them.</source>
   <translation>Material, Arbeit, Fracht: beliebig viele davon.</translation>
  </message>
  <message>
   <source>Matter</source>
   <translation>Worum es geht</translation>
  </message>
  <message>
   <source>Maximum flow</source>
   <translation>Max. Durchfluss</translation>
  </message>
  <message>
   <source>May parts that still fit stay?</source>
   <translation>D&amp;ürfen Teile, die noch passen, bleiben?</translation>
  </message>
  <message>
   <source>Mean fill of a boat</source>
   <translation>Mittlere Füllung eines Bootes</translation>
  </message>
  <message>
   <source>Mean temperature of the air</source>
   <translation>Mittlere Lufttemperatur</translation>
  </message>
  <message>
   <source>Measure a distance: drag from one point to the other (M)</source>
   <translation>Abstand messen: von einem Punkt zum anderen ziehen (M)</translation>
  </message>
  <message>
   <source>Measure from the point on the ground below the outlet. The drawing follows.</source>
   <translation>Vom Punkt am Boden unter dem Abgang messen. Die Zeichnung folgt.</translation>
  </message>
  <message>
   <source>Measured at the dispenser's outlet with the nozzle open.</source>
   <translation>Am Abgang der Zapfsäule gemessen, bei offenem Zapfventil.</translation>
  </message>
  <message>
   <source>Measured on site</source>
   <translation>Vor Ort gemessen</translation>
  </message>
  <message>
   <source>Merge both</source>
   <translation>Beide zusammenführen</translation>
  </message>
  <message>
   <source>Merged. Yours stands where both changed the same (yours / theirs):</source>
   <translation>Zusammengeführt. Ihres gilt, wo beide dasselbe geändert haben (Ihres / das andere):</translation>
  </message>
  <message>
   <source>Merged: both edits go into the book.</source>
   <translation>Zusammengeführt: beide Änderungen gehen ins Buch.</translation>
  </message>
  <message>
   <source>Meters, liters, newtons, kilopascals.</source>
   <translation>Meter, Liter, Newton, Kilopascal.</translation>
  </message>
  <message>
   <source>Metric</source>
   <translation>Metrisch</translation>
  </message>
  <message>
   <source>Metric units</source>
   <translation>Metrische Einheiten</translation>
  </message>
  <message>
   <source>Money</source>
   <translation>Geld</translation>
  </message>
  <message>
   <source>More a year later</source>
   <translation>Ein Jahr später mehr</translation>
  </message>
  <message>
   <source>More than {0} entries, {1} of them shown: type more of it</source>
   <translation>Mehr als {0} Einträge, {1} davon gezeigt: mehr davon eingeben</translation>
  </message>
  <message>
   <source>Move the chosen rows down (Alt+Down)</source>
   <translation>Gewählte Zeilen nach unten (Alt+Ab)</translation>
  </message>
  <message>
   <source>Move the chosen rows up (Alt+Up)</source>
   <translation>Gewählte Zeilen nach oben (Alt+Auf)</translation>
  </message>
  <message>
   <source>Movement</source>
   <translation>Bewegung</translation>
  </message>
  <message>
   <source>Moving each figure that nobody measured through its range…</source>
   <translation>Jede Angabe, die niemand gemessen hat, wird durch ihren Bereich bewegt…</translation>
  </message>
  <message>
   <source>N&amp;one</source>
   <translation>&amp;Keine</translation>
  </message>
  <message>
   <source>NFPA 30A as reproduced by state agencies</source>
   <translation>NFPA 30A, wiedergegeben von Behörden der Bundesstaaten</translation>
  </message>
  <message>
   <source>NFPA 30A as reproduced by state agencies; local code</source>
   <translation>NFPA 30A, wiedergegeben von Behörden der Bundesstaaten; örtliche Vorschrift</translation>
  </message>
  <message>
   <source>NOT in the book: taken off its list</source>
   <translation>NICHT im Buch: von seiner Liste genommen</translation>
  </message>
  <message>
   <source>NOT saved</source>
   <translation>NICHT gespeichert</translation>
  </message>
  <message>
   <source>NOT saved yet: waiting for the book</source>
   <translation>NOCH NICHT gespeichert: warten auf das Buch</translation>
  </message>
  <message>
   <source>NOT saved: saved by another window meanwhile</source>
   <translation>NICHT gespeichert: inzwischen von einem anderen Fenster gespeichert</translation>
  </message>
  <message>
   <source>NOT saved: the book may only be read</source>
   <translation>NICHT gespeichert: das Buch darf nur gelesen werden</translation>
  </message>
  <message>
   <source>NPT</source>
   <translation>NPT</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>Name and reason stand on record with the quotation.</source>
   <translation>Name und Grund bleiben beim Angebot festgehalten.</translation>
  </message>
  <message>
   <source>Name of a new catalog</source>
   <translation>Name eines neuen Katalogs</translation>
  </message>
  <message>
   <source>Name of a new site</source>
   <translation>Name einer neuen Tankstelle</translation>
  </message>
  <message>
   <source>Name of the &amp;catalog</source>
   <translation>Name des &amp;Katalogs</translation>
  </message>
  <message>
   <source>Name of the dispenser</source>
   <translation>Name der Zapfsäule</translation>
  </message>
  <message>
   <source>Name of the family</source>
   <translation>Name der Familie</translation>
  </message>
  <message>
   <source>Name of the first s&amp;ite</source>
   <translation>Name des ersten &amp;Standorts</translation>
  </message>
  <message>
   <source>Name of the g&amp;rade</source>
   <translation>Name der S&amp;orte</translation>
  </message>
  <message>
   <source>Name of the new site</source>
   <translation>Name der neuen Tankstelle</translation>
  </message>
  <message>
   <source>Name of the position</source>
   <translation>Name des Platzes</translation>
  </message>
  <message>
   <source>Name of the price list</source>
   <translation>Name der Preisliste</translation>
  </message>
  <message>
   <source>Name printed on the quotation.</source>
   <translation>Name, der auf dem Angebot steht.</translation>
  </message>
  <message>
   <source>Name, customer, local rules, climate and service of the site.</source>
   <translation>Name, Kunde, örtliche Regeln, Klima und Betrieb der Tankstelle.</translation>
  </message>
  <message>
   <source>Named cases</source>
   <translation>Benannte Fälle</translation>
  </message>
  <message>
   <source>Names of the new dispensers</source>
   <translation>Namen der neuen Zapfsäulen</translation>
  </message>
  <message>
   <source>Ne&amp;w part…</source>
   <translation>Neue&amp;s Teil…</translation>
  </message>
  <message>
   <source>Near side, far side, high tank, boat deck.</source>
   <translation>Nahe Seite, ferne Seite, hoher Tank, Bootsdeck.</translation>
  </message>
  <message>
   <source>Nearest</source>
   <translation>Nächstliegend</translation>
  </message>
  <message>
   <source>Needed: stands on the paper beside your name</source>
   <translation>Nötig: steht auf dem Papier neben Ihrem Namen</translation>
  </message>
  <message>
   <source>New option, total</source>
   <translation>Neue Variante, gesamt</translation>
  </message>
  <message>
   <source>New or refurbished</source>
   <translation>Neu oder erneuert</translation>
  </message>
  <message>
   <source>New part {0}, pieces</source>
   <translation>Neues Teil {0}, Stück</translation>
  </message>
  <message>
   <source>New quotations of the station that is open go to this customer unasked</source>
   <translation>Neue Angebote für die geöffnete Tankstelle gehen ohne Nachfrage an diesen Kunden</translation>
  </message>
  <message>
   <source>Next</source>
   <translation>Weiter</translation>
  </message>
  <message>
   <source>Next due</source>
   <translation>Nächstes Mal</translation>
  </message>
  <message>
   <source>No</source>
   <translation>Nein</translation>
  </message>
  <message>
   <source>No &amp;type</source>
   <translation>Kein &amp;Typ</translation>
  </message>
  <message>
   <source>No catalog part has this in its number, name or maker.</source>
   <translation>Kein Katalogteil hat das in Nummer, Name oder Hersteller.</translation>
  </message>
  <message>
   <source>No file yet</source>
   <translation>Noch keine Datei</translation>
  </message>
  <message>
   <source>No for one that the conversion adds.</source>
   <translation>Nein für einen, den der Umbau hinzufügt.</translation>
  </message>
  <message>
   <source>No list of parts is offered until this is settled.</source>
   <translation>Es werden keine Teile angeboten, bis das geklärt ist.</translation>
  </message>
  <message>
   <source>No open quotation is touched by a change of catalog or price lists.</source>
   <translation>Kein offenes Angebot ist von einer Änderung an Katalog oder Preislisten berührt.</translation>
  </message>
  <message>
   <source>No other part could hang here.</source>
   <translation>Kein anderes Teil könnte hier hängen.</translation>
  </message>
  <message>
   <source>No other set differs in a way worth showing.</source>
   <translation>Kein anderer Satz unterscheidet sich in zeigenswerter Weise.</translation>
  </message>
  <message>
   <source>No part comes into question while the answers contradict each other.</source>
   <translation>Kein Teil kommt in Frage, solange die Antworten sich widersprechen.</translation>
  </message>
  <message>
   <source>No part of the set takes longer to come.</source>
   <translation>Kein Teil des Satzes hat eine längere Lieferzeit.</translation>
  </message>
  <message>
   <source>No plan can be made</source>
   <translation>Kein Plan möglich</translation>
  </message>
  <message>
   <source>No position is surveyed yet: say what each of them sells, then quote.</source>
   <translation>Noch ist kein Platz aufgenommen: sagen, was jeder verkauft, dann anbieten.</translation>
  </message>
  <message>
   <source>No price</source>
   <translation>Kein Preis</translation>
  </message>
  <message>
   <source>No price list applies to {part} on {day}.</source>
   <translation>Für {part} gilt am {day} keine Preisliste.</translation>
  </message>
  <message>
   <source>No question can choose it</source>
   <translation>Keine Frage kann es wählen</translation>
  </message>
  <message>
   <source>No quotation yet</source>
   <translation>Noch kein Angebot</translation>
  </message>
  <message>
   <source>No rows. Add, or the Insert key, makes one; rows can be pasted from a spreadsheet.</source>
   <translation>Keine Zeilen. Hinzufügen oder die Taste Einfg legt eine an; Zeilen lassen sich aus einer Tabelle einfügen.</translation>
  </message>
  <message>
   <source>No set is planned for this position.</source>
   <translation>Für diesen Platz ist kein Satz geplant.</translation>
  </message>
  <message>
   <source>No set was chosen for this position, so there is no part to replace.</source>
   <translation>Für diese Position wurde kein Satz gewählt, also gibt es kein Teil zu ersetzen.</translation>
  </message>
  <message>
   <source>No terms in hand</source>
   <translation>Keine Bedingungen zur Hand</translation>
  </message>
  <message>
   <source>No type</source>
   <translation>Kein Typ</translation>
  </message>
  <message>
   <source>No van and no store is known yet: count or receive something first.</source>
   <translation>Noch ist kein Wagen und kein Lager bekannt: erst etwas zählen oder annehmen.</translation>
  </message>
  <message>
   <source>No&amp;tes</source>
   <translation>&amp;Notizen</translation>
  </message>
  <message>
   <source>No.</source>
   <translation>Nr.</translation>
  </message>
  <message>
   <source>None</source>
   <translation>Keine</translation>
  </message>
  <message>
   <source>None yet; one is made each day.</source>
   <translation>Noch keine; jeden Tag wird eine gemacht.</translation>
  </message>
  <message>
   <source>Not all changes are in the book yet; choose the language when they are.</source>
   <translation>Noch sind nicht alle Änderungen im Buch; die Sprache wählen, wenn sie es sind.</translation>
  </message>
  <message>
   <source>Not counted, without a dated record or a set: {0}</source>
   <translation>Nicht gezählt, ohne datiertes Protokoll oder ohne Satz: {0}</translation>
  </message>
  <message>
   <source>Not decided for {0} of them.</source>
   <translation>Von {0} davon nicht entschieden.</translation>
  </message>
  <message>
   <source>Not everything is saved</source>
   <translation>Nicht alles ist gespeichert</translation>
  </message>
  <message>
   <source>Not in the catalog and in no order file: {0}</source>
   <translation>Nicht im Katalog und in keiner Bestelldatei: {0}</translation>
  </message>
  <message>
   <source>Not included</source>
   <translation>Nicht enthalten</translation>
  </message>
  <message>
   <source>Not known yet</source>
   <translation>Noch nicht bekannt</translation>
  </message>
  <message>
   <source>Not ready</source>
   <translation>Nicht bereit</translation>
  </message>
  <message>
   <source>Not scanned</source>
   <translation>Nicht gescannt</translation>
  </message>
  <message>
   <source>Not surveyed yet</source>
   <translation>Noch nicht aufgenommen</translation>
  </message>
  <message>
   <source>Not surveyed yet, and not in the list: {labels}.</source>
   <translation>Noch nicht aufgenommen und nicht in der Liste: {labels}.</translation>
  </message>
  <message>
   <source>Not surveyed yet, and not quoted: {0}</source>
   <translation>Noch nicht aufgenommen und nicht angeboten: {0}</translation>
  </message>
  <message>
   <source>Not yet described</source>
   <translation>Noch nicht beschrieben</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Bemerkung</translation>
  </message>
  <message>
   <source>Note it as do&amp;ne today</source>
   <translation>Als &amp;heute erledigt vermerken</translation>
  </message>
  <message>
   <source>Note to the answer: how it came, what was said</source>
   <translation>Bemerkung zur Antwort: wie sie kam, was gesagt wurde</translation>
  </message>
  <message>
   <source>Note to the customer's answer</source>
   <translation>Bemerkung zur Antwort des Kunden</translation>
  </message>
  <message>
   <source>Notes</source>
   <translation>Notizen</translation>
  </message>
  <message>
   <source>Nothing differs between the two.</source>
   <translation>Zwischen den beiden ist nichts verschieden.</translation>
  </message>
  <message>
   <source>Nothing has been agreed yet.</source>
   <translation>Noch ist nichts vereinbart.</translation>
  </message>
  <message>
   <source>Nothing is agreed for this position.</source>
   <translation>Für diesen Platz ist nichts vereinbart.</translation>
  </message>
  <message>
   <source>Nothing is agreed that could be undone.</source>
   <translation>Es ist nichts vereinbart, was zurückgenommen werden könnte.</translation>
  </message>
  <message>
   <source>Nothing is called so. Try another word, or fewer.</source>
   <translation>Nichts heißt so. Ein anderes Wort versuchen, oder weniger.</translation>
  </message>
  <message>
   <source>Nothing is hidden: what is broken, what is open, what is worth knowing.</source>
   <translation>Nichts ist verborgen: was verletzt ist, was offen ist, was wissenswert ist.</translation>
  </message>
  <message>
   <source>Nothing is kept; these are the usual columns.</source>
   <translation>Nichts ist behalten; dies sind die üblichen Spalten.</translation>
  </message>
  <message>
   <source>Nothing of the survey is changed by looking. Accept makes one change of it, which can be undone.</source>
   <translation>Das Ansehen ändert die Aufnahme nicht. Übernehmen macht daraus eine Änderung, die sich zurücknehmen lässt.</translation>
  </message>
  <message>
   <source>Nothing to look at.</source>
   <translation>Nichts anzusehen.</translation>
  </message>
  <message>
   <source>Nothing was changed.</source>
   <translation>Nichts wurde geändert.</translation>
  </message>
  <message>
   <source>Nothing was changed: entries that are marked need a look.</source>
   <translation>Nichts wurde geändert: Markierte Eingaben ansehen.</translation>
  </message>
  <message>
   <source>Nothing was printed.</source>
   <translation>Es wurde nichts gedruckt.</translation>
  </message>
  <message>
   <source>Nothing was printed: the printer, or the file that it prints into, takes nothing.</source>
   <translation>Nichts wurde gedruckt: Der Drucker, oder die Datei, in die er druckt, nimmt nichts an.</translation>
  </message>
  <message>
   <source>Nothing was printed: {reason}</source>
   <translation>Es wurde nichts gedruckt: {reason}</translation>
  </message>
  <message>
   <source>Nothing was recorded: answers that are marked need a look.</source>
   <translation>Nichts wurde festgehalten: die markierten Antworten ansehen.</translation>
  </message>
  <message>
   <source>Nothing was saved: {reason}</source>
   <translation>Nichts wurde gespeichert: {reason}</translation>
  </message>
  <message>
   <source>Nothing was taken</source>
   <translation>Nichts wurde übernommen</translation>
  </message>
  <message>
   <source>Nothing was written. {path}: {reason}.</source>
   <translation>Nichts wurde geschrieben. {path}: {reason}.</translation>
  </message>
  <message>
   <source>Nothing was written: choose a cell further left, or copy fewer; the table has {0} columns.</source>
   <translation>Nichts wurde geschrieben: eine Zelle weiter links wählen oder weniger kopieren; die Tabelle hat {0} Spalten.</translation>
  </message>
  <message>
   <source>Nothing was written: the table takes at most {0} rows.</source>
   <translation>Nichts wurde geschrieben: die Tabelle fasst höchstens {0} Zeilen.</translation>
  </message>
  <message>
   <source>Notice</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>Notice: caution</source>
   <translation>Hinweis: Vorsicht</translation>
  </message>
  <message>
   <source>Notice: done</source>
   <translation>Hinweis: erledigt</translation>
  </message>
  <message>
   <source>Notice: question</source>
   <translation>Hinweis: Frage</translation>
  </message>
  <message>
   <source>Notice: trouble</source>
   <translation>Hinweis: Störung</translation>
  </message>
  <message>
   <source>Now, {0}</source>
   <translation>Jetzt, {0}</translation>
  </message>
  <message>
   <source>Nozzle</source>
   <translation>Zapfventil</translation>
  </message>
  <message>
   <source>Nozzle hook</source>
   <translation>Haken des Zapfventils</translation>
  </message>
  <message>
   <source>Number</source>
   <translation>Nummer</translation>
  </message>
  <message>
   <source>Number and day</source>
   <translation>Nummer und Tag</translation>
  </message>
  <message>
   <source>Number of the article</source>
   <translation>Nummer des Artikels</translation>
  </message>
  <message>
   <source>Number of the line</source>
   <translation>Nummer der Zeile</translation>
  </message>
  <message>
   <source>Number of the part</source>
   <translation>Nummer des Teils</translation>
  </message>
  <message>
   <source>Number of the quotation</source>
   <translation>Nummer des Angebots</translation>
  </message>
  <message>
   <source>Number, customer, site or part</source>
   <translation>Nummer, Kunde, Tankstelle oder Teil</translation>
  </message>
  <message>
   <source>Number, name or maker</source>
   <translation>Nummer, Name oder Hersteller</translation>
  </message>
  <message>
   <source>Number, name or maker of a part</source>
   <translation>Nummer, Name oder Hersteller eines Teils</translation>
  </message>
  <message>
   <source>Number, old number, name, maker, item number, GTIN or supplier</source>
   <translation>Nummer, alte Nummer, Name, Hersteller, Artikelnummer, GTIN oder Lieferant</translation>
  </message>
  <message>
   <source>Numbers that no part of the draft has: {0}, such as {1}.</source>
   <translation>Nummern, die kein Teil des Entwurfs hat: {0}, etwa {1}.</translation>
  </message>
  <message>
   <source>O&amp;utlet height</source>
   <translation>Höhe &amp;des Abgangs</translation>
  </message>
  <message>
   <source>OAR 340-244-0247(1)</source>
   <translation>OAR 340-244-0247(1)</translation>
  </message>
  <message>
   <source>Of a crew.</source>
   <translation>Eines Trupps.</translation>
  </message>
  <message>
   <source>Of the converted hardware.</source>
   <translation>Der umgebauten Teile.</translation>
  </message>
  <message>
   <source>Of the dispenser's own thread.</source>
   <translation>Des Gewindes der Zapfsäule selbst.</translation>
  </message>
  <message>
   <source>Of the gasoline in the season that counts, such as 62 kPa.</source>
   <translation>Des Benzins in der maßgebenden Jahreszeit, etwa 62 kPa.</translation>
  </message>
  <message>
   <source>Of the liquid that is lost through hoses; empty: such losses are left out.</source>
   <translation>Der Flüssigkeit, die durch Schläuche verloren geht; leer: solche Verluste bleiben weg.</translation>
  </message>
  <message>
   <source>Of the nozzle's inlet at rest, above the ground.</source>
   <translation>Des Eingangs am Zapfventil in Ruhe, über dem Boden.</translation>
  </message>
  <message>
   <source>Of the price; a line below it is asked about before the issue. Empty: only below cost.</source>
   <translation>Vom Preis; nach einer Zeile darunter wird vor dem Abgeben gefragt. Leer: nur unter Kosten.</translation>
  </message>
  <message>
   <source>Of the season that counts, such as 15 °C.</source>
   <translation>In der maßgebenden Jahreszeit, etwa 15 °C.</translation>
  </message>
  <message>
   <source>Offered instead</source>
   <translation>Stattdessen angeboten</translation>
  </message>
  <message>
   <source>Old maker</source>
   <translation>Alter Hersteller</translation>
  </message>
  <message>
   <source>Old number</source>
   <translation>Alte Nummer</translation>
  </message>
  <message>
   <source>Old number, its maker, or the part it leads to</source>
   <translation>Alte Nummer, ihr Hersteller oder das Teil, zu dem sie führt</translation>
  </message>
  <message>
   <source>Old numbers</source>
   <translation>Alte Nummern</translation>
  </message>
  <message>
   <source>Old numbers of the table's makers that the draft holds and the table does not</source>
   <translation>Alte Nummern der Hersteller der Tabelle, die der Entwurf hat und die Tabelle nicht</translation>
  </message>
  <message>
   <source>Old numbers that lead to parts come here; a table of them can be read in.</source>
   <translation>Alte Nummern, die zu Teilen führen, erscheinen hier; eine Tabelle davon kann eingelesen werden.</translation>
  </message>
  <message>
   <source>Oldest age at which a part may stay, years</source>
   <translation>Höchstes Alter eines bleibenden Teils, Jahre</translation>
  </message>
  <message>
   <source>Once for each</source>
   <translation>Einmal für jeden</translation>
  </message>
  <message>
   <source>Once more, whatever was taken already</source>
   <translation>Noch einmal, was auch schon entnommen ist</translation>
  </message>
  <message>
   <source>Once, or before the lines are added up.</source>
   <translation>Einmal oder vor dem Summieren der Zeilen.</translation>
  </message>
  <message>
   <source>One HTML page that is filled in without a network; what it saves is read back as a filled form.</source>
   <translation>Eine HTML-Seite, die ohne Netz ausgefüllt wird; was sie speichert, wird als ausgefüllter Bogen gelesen.</translation>
  </message>
  <message>
   <source>One balance never mixes two.</source>
   <translation>Eine Bilanz mischt nie zwei.</translation>
  </message>
  <message>
   <source>One bore</source>
   <translation>Eine Bohrung</translation>
  </message>
  <message>
   <source>One field of {0} parts</source>
   <translation>Ein Feld von {0} Teilen</translation>
  </message>
  <message>
   <source>One is made each day. The last is of {0}; {1} are kept.</source>
   <translation>Jeden Tag wird eine gemacht. Die letzte ist von {0}; {1} sind da.</translation>
  </message>
  <message>
   <source>One kind, or every kind.</source>
   <translation>Eine Art oder jede Art.</translation>
  </message>
  <message>
   <source>One line for each site (CSV)</source>
   <translation>Eine Zeile für jede Tankstelle (CSV)</translation>
  </message>
  <message>
   <source>One moment…</source>
   <translation>Einen Augenblick…</translation>
  </message>
  <message>
   <source>One of these kinds of part; empty: at every set.</source>
   <translation>Eine dieser Arten Teil; leer: an jedem Satz.</translation>
  </message>
  <message>
   <source>One person a line: role; name; telephone</source>
   <translation>Eine Person je Zeile: Aufgabe; Name; Telefon</translation>
  </message>
  <message>
   <source>One revision so far.</source>
   <translation>Bisher eine Revision.</translation>
  </message>
  <message>
   <source>One row for each column, from left to right. The customer's price is none of them.</source>
   <translation>Eine Zeile für jede Spalte, von links nach rechts. Der Preis des Kunden ist keine davon.</translation>
  </message>
  <message>
   <source>One search over commands, positions, surveys, quotations, parts and help.</source>
   <translation>Eine Suche über Befehle, Plätze, Aufnahmen, Angebote, Teile und Hilfe.</translation>
  </message>
  <message>
   <source>One sentence in each row.</source>
   <translation>Ein Satz je Zeile.</translation>
  </message>
  <message>
   <source>One sentence.</source>
   <translation>Ein Satz.</translation>
  </message>
  <message>
   <source>One to four alternatives side by side in one quotation.</source>
   <translation>Eine bis vier Varianten nebeneinander in einem Angebot.</translation>
  </message>
  <message>
   <source>Only gasoline has vapor recovery at the nozzle. Whether it may be taken out is for the local air agency to say.</source>
   <translation>Nur Benzin hat Gasrückführung am Zapfventil. Ob sie entfallen darf, sagt die örtliche Luftbehörde.</translation>
  </message>
  <message>
   <source>Only rows that differ &amp;from where they were copied from</source>
   <translation>Nur Zeilen, die von der &amp;Vorlage abweichen</translation>
  </message>
  <message>
   <source>Only these years count then.</source>
   <translation>Dann zählen nur diese Jahre.</translation>
  </message>
  <message>
   <source>Only what is not &amp;yet described</source>
   <translation>Nur n&amp;och nicht Beschriebenes</translation>
  </message>
  <message>
   <source>Only where boats are fueled; such as 120 L.</source>
   <translation>Nur wo Boote betankt werden; etwa 120 L.</translation>
  </message>
  <message>
   <source>Only where the set holds</source>
   <translation>Nur wo der Satz enthält</translation>
  </message>
  <message>
   <source>Open a file</source>
   <translation>Eine Datei öffnen</translation>
  </message>
  <message>
   <source>Open a file…</source>
   <translation>Eine Datei öffnen…</translation>
  </message>
  <message>
   <source>Open a row to follow the calculation by hand: formula, figures, result, source.</source>
   <translation>Eine Zeile öffnen, um von Hand nachzurechnen: Formel, Zahlen, Ergebnis, Quelle.</translation>
  </message>
  <message>
   <source>Open a&amp;ll</source>
   <translation>Alle ö&amp;ffnen</translation>
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
   <translation>Variante</translation>
  </message>
  <message>
   <source>Option and line</source>
   <translation>Variante und Zeile</translation>
  </message>
  <message>
   <source>Option left out, total</source>
   <translation>Variante weggelassen, gesamt</translation>
  </message>
  <message>
   <source>Option of the pick list and the suppliers</source>
   <translation>Variante der Packliste und der Lieferanten</translation>
  </message>
  <message>
   <source>Option “{0}”</source>
   <translation>Variante „{0}“</translation>
  </message>
  <message>
   <source>Options</source>
   <translation>Varianten</translation>
  </message>
  <message>
   <source>Options leave hoses out: issuing it asks why. Check the paper first.</source>
   <translation>Varianten lassen Schläuche aus: beim Abgeben wird nach dem Grund gefragt. Zuerst das Papier prüfen.</translation>
  </message>
  <message>
   <source>Options side by side</source>
   <translation>Varianten nebeneinander</translation>
  </message>
  <message>
   <source>Order lot</source>
   <translation>Bestelllos</translation>
  </message>
  <message>
   <source>Orders by supplier of what is to be ordered, as each supplier reads them</source>
   <translation>Bestellungen nach Lieferant von dem, was zu bestellen ist, wie jeder sie liest</translation>
  </message>
  <message>
   <source>Orders by supplier: {0}</source>
   <translation>Bestellungen je Lieferant: {0}</translation>
  </message>
  <message>
   <source>Order…</source>
   <translation>Bestellen…</translation>
  </message>
  <message>
   <source>Other answer</source>
   <translation>Andere Antwort</translation>
  </message>
  <message>
   <source>Other parts can then take their places.</source>
   <translation>Andere Teile können dann an ihre Stelle treten.</translation>
  </message>
  <message>
   <source>Other parts for this place</source>
   <translation>Andere Teile für diese Stelle</translation>
  </message>
  <message>
   <source>Other set</source>
   <translation>Anderer Satz</translation>
  </message>
  <message>
   <source>Other sets</source>
   <translation>Andere</translation>
  </message>
  <message>
   <source>Other side of dispenser {0}</source>
   <translation>Andere Seite der Zapfsäule {0}</translation>
  </message>
  <message>
   <source>Otherwise than dispenser type {0}</source>
   <translation>Anders als Zapfsäulentyp {0}</translation>
  </message>
  <message>
   <source>Outcome</source>
   <translation>Ergebnis</translation>
  </message>
  <message>
   <source>Outcome or part</source>
   <translation>Ergebnis oder Teil</translation>
  </message>
  <message>
   <source>Outlet direction</source>
   <translation>Richtung Abgang</translation>
  </message>
  <message>
   <source>Outlet gender</source>
   <translation>Innen/außen</translation>
  </message>
  <message>
   <source>Outlet height</source>
   <translation>Höhe Abgang</translation>
  </message>
  <message>
   <source>Outlet p&amp;oints</source>
   <translation>Abgang &amp;zeigt</translation>
  </message>
  <message>
   <source>Outlet path</source>
   <translation>Weg Abgang</translation>
  </message>
  <message>
   <source>Outlet pull strength</source>
   <translation>Zugfestigkeit Abgang</translation>
  </message>
  <message>
   <source>Outlet size</source>
   <translation>Größe Abgang</translation>
  </message>
  <message>
   <source>Outlet thread</source>
   <translation>Gewinde Abgang</translation>
  </message>
  <message>
   <source>Outlet to fille&amp;r, level</source>
   <translation>Abgang bis Einfüll&amp;stutzen, waagrecht</translation>
  </message>
  <message>
   <source>Outlet to filler, level</source>
   <translation>Abgang bis Einfüllstutzen, waagrecht</translation>
  </message>
  <message>
   <source>Outlet to hook, &amp;level</source>
   <translation>Abgang bis Haken, &amp;waagrecht</translation>
  </message>
  <message>
   <source>Outlines UL 87C and 2586C; zones: NFPA 30A and the local code</source>
   <translation>Entwürfe UL 87C und 2586C; Zonen: NFPA 30A und örtliche Vorschrift</translation>
  </message>
  <message>
   <source>Overhead</source>
   <translation>Von oben</translation>
  </message>
  <message>
   <source>Own onboard shares</source>
   <translation>Eigene Anteile mit Rückhaltung</translation>
  </message>
  <message>
   <source>Owner's offers</source>
   <translation>Angebote des Betreibers</translation>
  </message>
  <message>
   <source>Owner's source, named above</source>
   <translation>Quelle des Betreibers, oben genannt</translation>
  </message>
  <message>
   <source>Owner's wish</source>
   <translation>Wunsch des Betreibers</translation>
  </message>
  <message>
   <source>P&amp;apers</source>
   <translation>Papie&amp;re</translation>
  </message>
  <message>
   <source>P&amp;rice lists</source>
   <translation>P&amp;reislisten</translation>
  </message>
  <message>
   <source>P&amp;ublish</source>
   <translation>&amp;Veröffentlichen</translation>
  </message>
  <message>
   <source>PNG or JPEG for the letterhead.</source>
   <translation>PNG oder JPEG für den Briefkopf.</translation>
  </message>
  <message>
   <source>Pack</source>
   <translation>Packung</translation>
  </message>
  <message>
   <source>Package</source>
   <translation>Paket</translation>
  </message>
  <message>
   <source>Packages with their licenses</source>
   <translation>Pakete mit ihren Lizenzen</translation>
  </message>
  <message>
   <source>Packs</source>
   <translation>Packungen</translation>
  </message>
  <message>
   <source>Page</source>
   <translation>Seite</translation>
  </message>
  <message>
   <source>Page of help</source>
   <translation>Seite der Hilfe</translation>
  </message>
  <message>
   <source>Page {0}</source>
   <translation>Seite {0}</translation>
  </message>
  <message>
   <source>Pages of help</source>
   <translation>Seiten der Hilfe</translation>
  </message>
  <message>
   <source>Pages of the bill</source>
   <translation>Seiten der Stückliste</translation>
  </message>
  <message>
   <source>Pages of the conversion report</source>
   <translation>Seiten des Umbauberichts</translation>
  </message>
  <message>
   <source>Pages of the installer's paper</source>
   <translation>Seiten des Montagepapiers</translation>
  </message>
  <message>
   <source>Pages of the quotation</source>
   <translation>Seiten des Angebots</translation>
  </message>
  <message>
   <source>Panels of the set</source>
   <translation>Tafeln des Satzes</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Paper (P&amp;DF)</source>
   <translation>Papier (P&amp;DF)</translation>
  </message>
  <message>
   <source>Papers show it from then on. At a station, the sets of all positions at once.</source>
   <translation>Papiere zeigen ihn von da an. Bei einer Tankstelle sind es die Sätze aller Plätze auf einmal.</translation>
  </message>
  <message>
   <source>Papers to take along, the record of each position, replacements from the truck, inspections.</source>
   <translation>Papiere zum Mitnehmen, das Protokoll jedes Platzes, Ersatz aus dem Wagen, Inspektionen.</translation>
  </message>
  <message>
   <source>Parallel, 55°</source>
   <translation>Zylindrisch, 55°</translation>
  </message>
  <message>
   <source>Part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>Part &amp;number</source>
   <translation>Teile&amp;nummer</translation>
  </message>
  <message>
   <source>Part asked for</source>
   <translation>Gewünschtes Teil</translation>
  </message>
  <message>
   <source>Part maker</source>
   <translation>Hersteller des Teils</translation>
  </message>
  <message>
   <source>Part not on the tr&amp;uck</source>
   <translation>Teil nicht im &amp;Wagen</translation>
  </message>
  <message>
   <source>Part number</source>
   <translation>Teilenummer</translation>
  </message>
  <message>
   <source>Part of a line</source>
   <translation>Teil einer Zeile</translation>
  </message>
  <message>
   <source>Part refused</source>
   <translation>Abgelehntes Teil</translation>
  </message>
  <message>
   <source>Part that is not on the truck</source>
   <translation>Teil, das nicht im Wagen ist</translation>
  </message>
  <message>
   <source>Part there today {0}</source>
   <translation>Teil, das heute dort hängt {0}</translation>
  </message>
  <message>
   <source>Part whose price is asked</source>
   <translation>Teil, dessen Preis gefragt ist</translation>
  </message>
  <message>
   <source>Part {0} left out, pieces</source>
   <translation>Teil {0} entfällt, Stück</translation>
  </message>
  <message>
   <source>Parted by semicolons.</source>
   <translation>Durch Strichpunkte getrennt.</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>Parts and verdicts alone, a page for ten hoses, with the caution sheet.</source>
   <translation>Nur Teile und Ergebnisse, eine Seite für zehn Schläuche, mit den Warnhinweisen.</translation>
  </message>
  <message>
   <source>Parts installed once</source>
   <translation>Einmal eingebaute Teile</translation>
  </message>
  <message>
   <source>Parts kept and refused, lead time</source>
   <translation>Festgehaltene und abgelehnte Teile, Lieferzeit</translation>
  </message>
  <message>
   <source>Parts left per place</source>
   <translation>Verbleibende Teile je Stelle</translation>
  </message>
  <message>
   <source>Parts list</source>
   <translation>Stückliste</translation>
  </message>
  <message>
   <source>Parts list &amp;of the site</source>
   <translation>Stück&amp;liste der Tankstelle</translation>
  </message>
  <message>
   <source>Parts list of the site</source>
   <translation>Stückliste der Tankstelle</translation>
  </message>
  <message>
   <source>Parts list: a set for each position that fits together, with its price and its reasons.</source>
   <translation>Stückliste: für jeden Platz ein Satz, der zusammenpasst, mit Preis und Gründen.</translation>
  </message>
  <message>
   <source>Parts of all positions</source>
   <translation>Teile aller Plätze</translation>
  </message>
  <message>
   <source>Parts of the article, dispenser first</source>
   <translation>Teile des Artikels, Zapfsäule zuerst</translation>
  </message>
  <message>
   <source>Parts of the catalog</source>
   <translation>Teile des Katalogs</translation>
  </message>
  <message>
   <source>Parts of the set in hand</source>
   <translation>Teile des Satzes</translation>
  </message>
  <message>
   <source>Parts of the table's makers that the draft holds and the table does not</source>
   <translation>Teile der Hersteller der Tabelle, die der Entwurf enthält und die Tabelle nicht</translation>
  </message>
  <message>
   <source>Parts of this set are kept by choice, which leaves no other set to compare. Let them go to see others.</source>
   <translation>Teile dieses Satzes sind mit Absicht behalten, daher kein Vergleich mit anderen. Freigeben, um andere zu sehen.</translation>
  </message>
  <message>
   <source>Parts offered in place of those of lines, with the difference in price and in no total.</source>
   <translation>Teile, die anstelle derer von Zeilen angeboten werden, mit dem Preisunterschied und in keiner Summe.</translation>
  </message>
  <message>
   <source>Parts that differ</source>
   <translation>Andere Teile</translation>
  </message>
  <message>
   <source>Parts that differ ({0})</source>
   <translation>Andere Teile ({0})</translation>
  </message>
  <message>
   <source>Parts that were replaced come here; the fields below add the first.</source>
   <translation>Ersetzte Teile erscheinen hier; die Felder unten fügen das erste hinzu.</translation>
  </message>
  <message>
   <source>Parts that were scanned at a van or store are listed here.</source>
   <translation>Hier stehen Teile, die an einem Wagen oder Lager gescannt wurden.</translation>
  </message>
  <message>
   <source>Paste positions</source>
   <translation>Plätze einfügen</translation>
  </message>
  <message>
   <source>Path at the dispenser</source>
   <translation>Weg an der Zapfsäule</translation>
  </message>
  <message>
   <source>Path, where known</source>
   <translation>Weg, wo bekannt</translation>
  </message>
  <message>
   <source>People to call</source>
   <translation>Wen man anruft</translation>
  </message>
  <message>
   <source>Percent</source>
   <translation>Prozent</translation>
  </message>
  <message>
   <source>Percent biodiesel</source>
   <translation>Prozent Biodiesel</translation>
  </message>
  <message>
   <source>Percent by volume at most: ethanol in gasoline, biodiesel in diesel, kerosene or fuel oil. Take the highest figure the supplier may deliver.</source>
   <translation>Höchstens so viel Volumenprozent: Ethanol in Benzin, Biodiesel in Diesel, Kerosin oder Heizöl. Die höchste Zahl nehmen, die der Lieferant liefern darf.</translation>
  </message>
  <message>
   <source>Percent ethanol</source>
   <translation>Prozent Ethanol</translation>
  </message>
  <message>
   <source>Percent in a year on what lies in spares; empty: spares are left out.</source>
   <translation>Prozent im Jahr auf das, was in Ersatzteilen liegt; leer: Ersatzteile bleiben weg.</translation>
  </message>
  <message>
   <source>Percent of all that is installed of a kind, rounded up once and spread over the parts of which there are most.</source>
   <translation>Prozent von allem, was von einer Art eingebaut ist, einmal aufgerundet und auf die Teile verteilt, von denen es am meisten gibt.</translation>
  </message>
  <message>
   <source>Percent of separations after which it is replaced all the same.</source>
   <translation>Prozent der Trennungen, nach denen sie trotzdem ersetzt wird.</translation>
  </message>
  <message>
   <source>Percent off the list, line by line: hoses = 14</source>
   <translation>Prozent vom Listenpreis, Zeile für Zeile: hoses = 14</translation>
  </message>
  <message>
   <source>Percent, 0 to 100.</source>
   <translation>Prozent, 0 bis 100.</translation>
  </message>
  <message>
   <source>Permit number</source>
   <translation>Genehmigungsnummer</translation>
  </message>
  <message>
   <source>Photos</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <source>Pick &amp;list</source>
   <translation>Pack&amp;liste</translation>
  </message>
  <message>
   <source>Pick a &amp;file…</source>
   <translation>Eine &amp;Datei wählen…</translation>
  </message>
  <message>
   <source>Pick a catalog of your own first: Demonstration is only read.</source>
   <translation>Wählen Sie zuerst einen eigenen Katalog: Demonstration wird nur gelesen.</translation>
  </message>
  <message>
   <source>Pick a combination to see what would be chosen, or why nothing fits.</source>
   <translation>Eine Kombination wählen, um zu sehen, was gewählt würde oder warum nichts passt.</translation>
  </message>
  <message>
   <source>Pick a part in the drawing or the list.</source>
   <translation>In Zeichnung oder Liste ein Teil wählen.</translation>
  </message>
  <message>
   <source>Pick the missing part, list what is in stock, and ask: what would do stands here.</source>
   <translation>Das fehlende Teil wählen, den Bestand angeben und fragen: hier steht dann, was passen würde.</translation>
  </message>
  <message>
   <source>Picture of the letterhead</source>
   <translation>Bild des Briefkopfs</translation>
  </message>
  <message>
   <source>Picture or document of the part</source>
   <translation>Bild oder Dokument des Teils</translation>
  </message>
  <message>
   <source>Pictures (PNG, JPEG) and documents (PDF) are checked and kept with the part; files may be dropped.</source>
   <translation>Bilder (PNG, JPEG) und Dokumente (PDF) werden geprüft und beim Teil aufbewahrt; man kann sie auch hierher ziehen.</translation>
  </message>
  <message>
   <source>Pictures and documents of {0}</source>
   <translation>Bilder und Dokumente zu {0}</translation>
  </message>
  <message>
   <source>Pieces</source>
   <translation>Stücke</translation>
  </message>
  <message>
   <source>Pieces in a pack</source>
   <translation>Stück in einer Packung</translation>
  </message>
  <message>
   <source>Pieces of one count add up; another name begins anew.</source>
   <translation>Stücke einer Zählung addieren sich; ein anderer Name beginnt neu.</translation>
  </message>
  <message>
   <source>Pieces of {0}</source>
   <translation>Stück von {0}</translation>
  </message>
  <message>
   <source>Pieces short: {0}. Pieces to order: {1}.</source>
   <translation>Fehlende Stücke: {0}. Zu bestellen: {1}.</translation>
  </message>
  <message>
   <source>Pipe drawing of the station</source>
   <translation>Leitungsplan der Tankstelle</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>Place and reach</source>
   <translation>Ort und Reichweite</translation>
  </message>
  <message>
   <source>Place, and what takes parts out of it</source>
   <translation>Stelle, und was dort Teile ausschließt</translation>
  </message>
  <message>
   <source>Placement: breakaway makers' usual instructions, common practice</source>
   <translation>Stelle: übliche Anleitungen der Hersteller, übliche Praxis</translation>
  </message>
  <message>
   <source>Places of the work</source>
   <translation>Orte der Arbeit</translation>
  </message>
  <message>
   <source>Plan &amp;with both</source>
   <translation>Mit beiden pl&amp;anen</translation>
  </message>
  <message>
   <source>Plan as the book does</source>
   <translation>Wie das Buch planen</translation>
  </message>
  <message>
   <source>Plan this pos&amp;ition again</source>
   <translation>Platz neu pla&amp;nen</translation>
  </message>
  <message>
   <source>Plan this position &amp;again</source>
   <translation>Plat&amp;z neu planen</translation>
  </message>
  <message>
   <source>Plan with {0}</source>
   <translation>Mit {0} planen</translation>
  </message>
  <message>
   <source>Planned</source>
   <translation>Geplant</translation>
  </message>
  <message>
   <source>Planned now</source>
   <translation>Jetzt geplant</translation>
  </message>
  <message>
   <source>Planned with by</source>
   <translation>Damit plant</translation>
  </message>
  <message>
   <source>Planned, agreed and built side by side</source>
   <translation>Geplant, vereinbart und gebaut nebeneinander</translation>
  </message>
  <message>
   <source>Planning all positions…</source>
   <translation>Alle Plätze werden geplant…</translation>
  </message>
  <message>
   <source>Planning and reading what hangs there…</source>
   <translation>Planen und lesen, was dort hängt…</translation>
  </message>
  <message>
   <source>Planning survey {0} of {1}…</source>
   <translation>Aufnahme {0} von {1} wird geplant…</translation>
  </message>
  <message>
   <source>Planning the station under both…</source>
   <translation>Die Station wird unter beiden geplant…</translation>
  </message>
  <message>
   <source>Planning this position…</source>
   <translation>Dieser Platz wird geplant…</translation>
  </message>
  <message>
   <source>Planning {done} of {total} positions over all options…</source>
   <translation>{done} von {total} Plätzen über alle Varianten geplant…</translation>
  </message>
  <message>
   <source>Planning…</source>
   <translation>Planung läuft…</translation>
  </message>
  <message>
   <source>Plate and figures of the chosen part…</source>
   <translation>Schild und Zahlen des gewählten Teils…</translation>
  </message>
  <message>
   <source>Plate or maker's sheet</source>
   <translation>Schild oder Herstellerblatt</translation>
  </message>
  <message>
   <source>Point (1.50)</source>
   <translation>Punkt (1.50)</translation>
  </message>
  <message>
   <source>Pos&amp;ition today</source>
   <translation>Plat&amp;z heute</translation>
  </message>
  <message>
   <source>Position</source>
   <translation>Platz</translation>
  </message>
  <message>
   <source>Position &amp;above</source>
   <translation>Platz &amp;darüber</translation>
  </message>
  <message>
   <source>Position b&amp;elow</source>
   <translation>Platz dar&amp;unter</translation>
  </message>
  <message>
   <source>Position {0}</source>
   <translation>Platz {0}</translation>
  </message>
  <message>
   <source>Position {0} today</source>
   <translation>Platz {0} heute</translation>
  </message>
  <message>
   <source>Position {0}: an entry outside its limit is marked at once.</source>
   <translation>Platz {0}: eine Eingabe außerhalb ihrer Grenze wird sofort markiert.</translation>
  </message>
  <message>
   <source>Position, dispenser or site.</source>
   <translation>Platz, Zapfsäule oder Tankstelle.</translation>
  </message>
  <message>
   <source>Positions</source>
   <translation>Plätze</translation>
  </message>
  <message>
   <source>Positions and parts</source>
   <translation>Plätze und Teile</translation>
  </message>
  <message>
   <source>Positions looked at</source>
   <translation>Betrachtete Plätze</translation>
  </message>
  <message>
   <source>Positions of the survey that the table does not hold go</source>
   <translation>Positionen der Aufnahme, die die Tabelle nicht hat, fallen weg</translation>
  </message>
  <message>
   <source>Positions on the parts list</source>
   <translation>Plätze in der Stückliste</translation>
  </message>
  <message>
   <source>Positions that get the answers</source>
   <translation>Plätze, die die Antworten bekommen</translation>
  </message>
  <message>
   <source>Positions that the answer is for</source>
   <translation>Plätze, für die die Antwort gilt</translation>
  </message>
  <message>
   <source>Positions that the answers are for</source>
   <translation>Plätze, für die die Antworten gelten</translation>
  </message>
  <message>
   <source>Positions to agree on</source>
   <translation>Zu vereinbarende Plätze</translation>
  </message>
  <message>
   <source>Positions with a dated record are counted; a row leads to its station.</source>
   <translation>Gezählt werden Plätze mit datiertem Protokoll; eine Zeile führt zu ihrer Station.</translation>
  </message>
  <message>
   <source>Pounds</source>
   <translation>Pfund</translation>
  </message>
  <message>
   <source>Pr&amp;ices</source>
   <translation>Pre&amp;ise</translation>
  </message>
  <message>
   <source>Preferences</source>
   <translation>Einstellungen</translation>
  </message>
  <message>
   <source>Prepay</source>
   <translation>Freigabe anderswo</translation>
  </message>
  <message>
   <source>Prepay, card or console. A latched nozzle would then spill at the next start.</source>
   <translation>Freigabe an Karte oder Kasse. Ein eingerastetes Zapfventil liefe beim nächsten Start aus.</translation>
  </message>
  <message>
   <source>Pressure and flow</source>
   <translation>Druck und Durchfluss</translation>
  </message>
  <message>
   <source>Pressure at the outlet while flow&amp;ing</source>
   <translation>&amp;Druck am Abgang bei Durchfluss</translation>
  </message>
  <message>
   <source>Price</source>
   <translation>Preis</translation>
  </message>
  <message>
   <source>Price far from the usual</source>
   <translation>Preis weit vom Üblichen</translation>
  </message>
  <message>
   <source>Price follows</source>
   <translation>Preis folgt</translation>
  </message>
  <message>
   <source>Price is &amp;for one</source>
   <translation>Preis &amp;für</translation>
  </message>
  <message>
   <source>Price list</source>
   <translation>Preisliste</translation>
  </message>
  <message>
   <source>Price list ends soon</source>
   <translation>Preisliste läuft bald ab</translation>
  </message>
  <message>
   <source>Price list has ended</source>
   <translation>Preisliste ist abgelaufen</translation>
  </message>
  <message>
   <source>Price list {0}</source>
   <translation>Preisliste {0}</translation>
  </message>
  <message>
   <source>Price list {0}: {1} prices.</source>
   <translation>Preisliste {0}: {1} Preise.</translation>
  </message>
  <message>
   <source>Price lists</source>
   <translation>Preislisten</translation>
  </message>
  <message>
   <source>Price lists of the edition in hand come here; a file of them can be read in.</source>
   <translation>Preislisten der gewählten Ausgabe erscheinen hier; eine Datei davon kann eingelesen werden.</translation>
  </message>
  <message>
   <source>Price of an hour of &amp;work</source>
   <translation>Preis einer Arbeit&amp;sstunde</translation>
  </message>
  <message>
   <source>Price of one</source>
   <translation>Preis von einem</translation>
  </message>
  <message>
   <source>Price of one &amp;more part number</source>
   <translation>Preis einer weiteren Tei&amp;lenummer</translation>
  </message>
  <message>
   <source>Price of one foot or meter</source>
   <translation>Preis für einen Fuß oder Meter</translation>
  </message>
  <message>
   <source>Price of one piece</source>
   <translation>Preis eines Stücks</translation>
  </message>
  <message>
   <source>Price of the article</source>
   <translation>Preis des Artikels</translation>
  </message>
  <message>
   <source>Price of the liq&amp;uid</source>
   <translation>Preis der Fl&amp;üssigkeit</translation>
  </message>
  <message>
   <source>Price of the set</source>
   <translation>Preis des Satzes</translation>
  </message>
  <message>
   <source>Price, sets chosen together</source>
   <translation>Preis, Sätze gemeinsam gewählt</translation>
  </message>
  <message>
   <source>Price, {0}</source>
   <translation>Preis, {0}</translation>
  </message>
  <message>
   <source>Price, {currency}</source>
   <translation>Preis, {currency}</translation>
  </message>
  <message>
   <source>Prices and where they come from</source>
   <translation>Preise und woher sie stammen</translation>
  </message>
  <message>
   <source>Prices are shown once there is a quotation.</source>
   <translation>Preise erscheinen, sobald ein Angebot da ist.</translation>
  </message>
  <message>
   <source>Prices by name</source>
   <translation>Preise mit Namen</translation>
  </message>
  <message>
   <source>Prices missing in these amounts</source>
   <translation>Preise, die in diesen Beträgen fehlen</translation>
  </message>
  <message>
   <source>Prices that follow</source>
   <translation>Preise, die folgen</translation>
  </message>
  <message>
   <source>Printed as written.</source>
   <translation>Gedruckt wie geschrieben.</translation>
  </message>
  <message>
   <source>Printed beside them in the report.</source>
   <translation>Steht im Bericht daneben.</translation>
  </message>
  <message>
   <source>Printed in full.</source>
   <translation>Voll gedruckt.</translation>
  </message>
  <message>
   <source>Printed in the report.</source>
   <translation>Im Bericht gedruckt.</translation>
  </message>
  <message>
   <source>Printed on the bill with this position.</source>
   <translation>Bei diesem Platz auf der Stückliste gedruckt.</translation>
  </message>
  <message>
   <source>Printed on the bill.</source>
   <translation>Auf der Stückliste gedruckt.</translation>
  </message>
  <message>
   <source>Print…</source>
   <translation>Druc&amp;ken…</translation>
  </message>
  <message>
   <source>Pro&amp;gram of several sites…</source>
   <translation>Pro&amp;gramm mehrerer Tankstellen…</translation>
  </message>
  <message>
   <source>Program of several sites</source>
   <translation>Programm mehrerer Tankstellen</translation>
  </message>
  <message>
   <source>Pu&amp;ll of the cord</source>
   <translation>&amp;Zug des Seils</translation>
  </message>
  <message>
   <source>Public texts, each with its status</source>
   <translation>Öffentliche Texte, jeder mit seinem Stand</translation>
  </message>
  <message>
   <source>Publish the draft as the next edition</source>
   <translation>Den Entwurf als nächste Ausgabe veröffentlichen</translation>
  </message>
  <message>
   <source>Published by</source>
   <translation>Veröffentlicht von</translation>
  </message>
  <message>
   <source>Published: {0}</source>
   <translation>Veröffentlicht: {0}</translation>
  </message>
  <message>
   <source>Pull that the outlet &amp;bears</source>
   <translation>Zug, den der Abgang a&amp;ushält</translation>
  </message>
  <message>
   <source>Put a survey file into the book and open it.</source>
   <translation>Eine Aufnahmedatei ins Buch legen und öffnen.</translation>
  </message>
  <message>
   <source>Put away</source>
   <translation>Weglegen</translation>
  </message>
  <message>
   <source>Put into the &amp;draft</source>
   <translation>In den Ent&amp;wurf aufnehmen</translation>
  </message>
  <message>
   <source>Put it back</source>
   <translation>Wieder einsetzen</translation>
  </message>
  <message>
   <source>Put this backup in the place of the book? What was saved after it is then no longer in the book. What lies there now is set aside beside it and can be put back.</source>
   <translation>Diese Sicherung an die Stelle des Buchs setzen? Was nach ihr gespeichert wurde, steht dann nicht mehr im Buch. Was jetzt dort liegt, wird daneben aufgehoben und lässt sich zurückholen.</translation>
  </message>
  <message>
   <source>Put this price, your name and reason into the terms, and quote again; other parts may be cheaper then</source>
   <translation>Diesen Preis, Ihren Namen und Grund in die Bedingungen setzen und neu anbieten; andere Teile können dann billiger sein</translation>
  </message>
  <message>
   <source>Qty</source>
   <translation>Stk.</translation>
  </message>
  <message>
   <source>Quantity</source>
   <translation>Menge</translation>
  </message>
  <message>
   <source>Quantity ordered</source>
   <translation>Bestellte Menge</translation>
  </message>
  <message>
   <source>Question</source>
   <translation>Frage</translation>
  </message>
  <message>
   <source>Question whose answer is changed</source>
   <translation>Frage, deren Antwort geändert wird</translation>
  </message>
  <message>
   <source>Question whose answers are compared</source>
   <translation>Frage, deren Antworten verglichen werden</translation>
  </message>
  <message>
   <source>Quotation</source>
   <translation>Angebot</translation>
  </message>
  <message>
   <source>Quotation and part</source>
   <translation>Angebot und Teil</translation>
  </message>
  <message>
   <source>Quotation: on your terms, drafted, issued and answered. An accepted one agrees its sets.</source>
   <translation>Angebot: zu Ihren Bedingungen entworfen, ausgegeben und beantwortet. Ein angenommenes vereinbart seine Sätze.</translation>
  </message>
  <message>
   <source>Quotations in the book</source>
   <translation>Angebote im Buch</translation>
  </message>
  <message>
   <source>Quotations that a change touches</source>
   <translation>Angebote, die eine Änderung berührt</translation>
  </message>
  <message>
   <source>Quotations that are saved in the book come here, whichever station they are for.</source>
   <translation>Angebote, die im Buch gespeichert sind, erscheinen hier, für welche Tankstelle auch immer.</translation>
  </message>
  <message>
   <source>Quote</source>
   <translation>Anbieten</translation>
  </message>
  <message>
   <source>Quote on these terms (Ctrl+Return)</source>
   <translation>Zu diesen Bedingungen anbieten (Strg+Eingabe)</translation>
  </message>
  <message>
   <source>Quote the marked quotation again: its own survey and terms, prices of today</source>
   <translation>Das markierte Angebot neu anbieten: eigene Aufnahme und Bedingungen, Preise von heute</translation>
  </message>
  <message>
   <source>Quote the quotation looked at again: its own survey and terms, prices and catalog of today</source>
   <translation>Das angesehene Angebot neu anbieten: eigene Aufnahme und Bedingungen, Preise und Katalog von heute</translation>
  </message>
  <message>
   <source>Quote the survey that is open, on the terms in hand</source>
   <translation>Die offene Aufnahme zu den Bedingungen zur Hand anbieten</translation>
  </message>
  <message>
   <source>Quote the survey that is open; or look a quotation up in the book.</source>
   <translation>Die offene Aufnahme anbieten; oder ein Angebot im Buch nachschlagen.</translation>
  </message>
  <message>
   <source>Quote this surve&amp;y</source>
   <translation>Diese Auf&amp;nahme anbieten</translation>
  </message>
  <message>
   <source>Quote this survey, issue the quotation, note the answer, revise it.</source>
   <translation>Diese Aufnahme anbieten, abgeben, die Antwort vermerken, überarbeiten.</translation>
  </message>
  <message>
   <source>Quoted again: it is what the book holds as revision {0}.</source>
   <translation>Neu angeboten: es ist, was das Buch als Revision {0} hält.</translation>
  </message>
  <message>
   <source>Quoted on the survey as it was before. It has been changed since: quote this survey for that.</source>
   <translation>Zur früheren Fassung der Aufnahme angeboten. Sie ist seither geändert: dafür diese Aufnahme anbieten.</translation>
  </message>
  <message>
   <source>R&amp;ecent files</source>
   <translation>Z&amp;uletzt benutzte Dateien</translation>
  </message>
  <message>
   <source>Rate</source>
   <translation>Kurs</translation>
  </message>
  <message>
   <source>Rate of an &amp;hour</source>
   <translation>Stun&amp;densatz</translation>
  </message>
  <message>
   <source>Ratings</source>
   <translation>Nennwerte</translation>
  </message>
  <message>
   <source>Re&amp;move own rules</source>
   <translation>Eigene Regeln ent&amp;fernen</translation>
  </message>
  <message>
   <source>Re&amp;name…</source>
   <translation>&amp;Umbenennen…</translation>
  </message>
  <message>
   <source>Re&amp;quote it</source>
   <translation>Neu anbieten</translation>
  </message>
  <message>
   <source>Read a &amp;filled form…</source>
   <translation>A&amp;usgefüllter Bogen…</translation>
  </message>
  <message>
   <source>Read a filled form</source>
   <translation>Ausgefüllten Bogen lesen</translation>
  </message>
  <message>
   <source>Read a revision</source>
   <translation>Revision lesen</translation>
  </message>
  <message>
   <source>Read a sto&amp;ck list…</source>
   <translation>Bestands&amp;liste lesen…</translation>
  </message>
  <message>
   <source>Read a stock list</source>
   <translation>Bestandsliste lesen</translation>
  </message>
  <message>
   <source>Read a survey file</source>
   <translation>Aufnahmedatei lesen</translation>
  </message>
  <message>
   <source>Read an exchange file</source>
   <translation>Austauschdatei einlesen</translation>
  </message>
  <message>
   <source>Read an exchange file of the program into the draft</source>
   <translation>Eine Austauschdatei des Programms in den Entwurf einlesen</translation>
  </message>
  <message>
   <source>Read and change the terms in hand</source>
   <translation>Bedingungen zur Hand lesen und ändern</translation>
  </message>
  <message>
   <source>Read as</source>
   <translation>Gelesen als</translation>
  </message>
  <message>
   <source>Read as the last table with these titles.</source>
   <translation>Gelesen wie die letzte Tabelle mit diesen Titeln.</translation>
  </message>
  <message>
   <source>Read as {0}.</source>
   <translation>Gelesen als {0}.</translation>
  </message>
  <message>
   <source>Read from &amp;file…</source>
   <translation>Aus &amp;Datei lesen…</translation>
  </message>
  <message>
   <source>Read positions from a &amp;table…</source>
   <translation>Plätze aus &amp;Tabelle lesen…</translation>
  </message>
  <message>
   <source>Read positions from a table</source>
   <translation>Plätze aus einer Tabelle lesen</translation>
  </message>
  <message>
   <source>Read positions from {0}</source>
   <translation>Plätze aus {0} lesen</translation>
  </message>
  <message>
   <source>Read revision {0}</source>
   <translation>Revision {0} lesen</translation>
  </message>
  <message>
   <source>Read the form back: what hangs there is as built, and inspections fall due from then on.</source>
   <translation>Das Formular einlesen: was dort hängt, ist wie gebaut, und Prüfungen werden von da an fällig.</translation>
  </message>
  <message>
   <source>Read the limits of a jurisdiction, or copy one and change rows.</source>
   <translation>Grenzwerte eines Regelwerks lesen oder eines kopieren und Zeilen ändern.</translation>
  </message>
  <message>
   <source>Read the price lists and the open quotations anew</source>
   <translation>Preislisten und offene Angebote neu lesen</translation>
  </message>
  <message>
   <source>Read where</source>
   <translation>Gelesen in</translation>
  </message>
  <message>
   <source>Reading the open quotations…</source>
   <translation>Offene Angebote werden gelesen…</translation>
  </message>
  <message>
   <source>Reading the table…</source>
   <translation>Die Tabelle wird gelesen…</translation>
  </message>
  <message>
   <source>Reading what hangs there…</source>
   <translation>Lesen, was dort hängt…</translation>
  </message>
  <message>
   <source>Reading {0}…</source>
   <translation>{0} wird gelesen…</translation>
  </message>
  <message>
   <source>Readings and trials</source>
   <translation>Messwerte und Versuche</translation>
  </message>
  <message>
   <source>Ready stations</source>
   <translation>Fertige Tankstellen</translation>
  </message>
  <message>
   <source>Ready stations with a catalog that is invented: its makers, parts and prices exist nowhere.</source>
   <translation>Fertige Tankstellen mit einem erfundenen Katalog: seine Hersteller, Teile und Preise gibt es nirgends.</translation>
  </message>
  <message>
   <source>Ready stations:</source>
   <translation>Fertige Tankstellen:</translation>
  </message>
  <message>
   <source>Ready terms</source>
   <translation>Fertige Bedingungen</translation>
  </message>
  <message>
   <source>Reaso&amp;n</source>
   <translation>Gru&amp;nd</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Grund</translation>
  </message>
  <message>
   <source>Reason for the replacement</source>
   <translation>Grund des Tauschs</translation>
  </message>
  <message>
   <source>Reason or way out</source>
   <translation>Grund oder Ausweg</translation>
  </message>
  <message>
   <source>Reasons</source>
   <translation>Gründe</translation>
  </message>
  <message>
   <source>Reasons and ways out</source>
   <translation>Gründe und Auswege</translation>
  </message>
  <message>
   <source>Received</source>
   <translation>Angenommen</translation>
  </message>
  <message>
   <source>Reconnectable ones re&amp;placed</source>
   <translation>&amp;Davon ersetzte wiederverbindbare</translation>
  </message>
  <message>
   <source>Record (P&amp;DF)</source>
   <translation>Protokoll (P&amp;DF)</translation>
  </message>
  <message>
   <source>Record an installed part</source>
   <translation>Eingebautes Teil festhalten</translation>
  </message>
  <message>
   <source>Record the planned set as installed</source>
   <translation>Den geplanten Satz als eingebaut festhalten</translation>
  </message>
  <message>
   <source>Reel</source>
   <translation>Schlauchtrommel</translation>
  </message>
  <message>
   <source>Reel drum diameter</source>
   <translation>Trommeldurchmesser</translation>
  </message>
  <message>
   <source>Reel turns left</source>
   <translation>Restwindungen der Trommel</translation>
  </message>
  <message>
   <source>Registration or tax number, printed as written.</source>
   <translation>Register- oder Steuernummer, gedruckt wie geschrieben.</translation>
  </message>
  <message>
   <source>Relation</source>
   <translation>Beziehung</translation>
  </message>
  <message>
   <source>Remark</source>
   <translation>Bemerkung</translation>
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
   <source>Remove a filler</source>
   <translation>Einfüllstutzen entfernen</translation>
  </message>
  <message>
   <source>Remove an installed part from the list</source>
   <translation>Eingebautes Teil aus der Liste nehmen</translation>
  </message>
  <message>
   <source>Remove chosen rows</source>
   <translation>Gewählte Zeilen entfernen</translation>
  </message>
  <message>
   <source>Remove further filler {number}</source>
   <translation>Weiteren Einfüllstutzen {number} entfernen</translation>
  </message>
  <message>
   <source>Remove it &amp;from the list</source>
   <translation>Aus der &amp;Liste nehmen</translation>
  </message>
  <message>
   <source>Remove it from the list</source>
   <translation>Aus der Liste nehmen</translation>
  </message>
  <message>
   <source>Remove the chosen rows (Ctrl+Delete)</source>
   <translation>Gewählte Zeilen entfernen (Strg+Entf)</translation>
  </message>
  <message>
   <source>Remove the rules “{title}” for good?</source>
   <translation>Die Regeln „{title}“ endgültig entfernen?</translation>
  </message>
  <message>
   <source>Remove this filler</source>
   <translation>Diesen Einfüllstutzen entfernen</translation>
  </message>
  <message>
   <source>Remove {0}</source>
   <translation>{0} entfernen</translation>
  </message>
  <message>
   <source>Remove “{name}” from the list? Its past saves stay in the database.</source>
   <translation>„{name}“ aus der Liste nehmen? Frühere Stände bleiben in der Datenbank.</translation>
  </message>
  <message>
   <source>Removed</source>
   <translation>Ausbau</translation>
  </message>
  <message>
   <source>Removed here</source>
   <translation>Hier abgebaut</translation>
  </message>
  <message>
   <source>Rename the position</source>
   <translation>Platz umbenennen</translation>
  </message>
  <message>
   <source>Rename {0}</source>
   <translation>{0} umbenennen</translation>
  </message>
  <message>
   <source>Repairs</source>
   <translation>Reparaturen</translation>
  </message>
  <message>
   <source>Repairs ({0})</source>
   <translation>Reparaturen ({0})</translation>
  </message>
  <message>
   <source>Repeat dispenser {0}</source>
   <translation>Zapfsäule {0} wiederholen</translation>
  </message>
  <message>
   <source>Repeat the d&amp;ispenser…</source>
   <translation>Zapfsäule &amp;wiederholen…</translation>
  </message>
  <message>
   <source>Repeat the positions of one side on the other.</source>
   <translation>Die Plätze einer Seite auf der anderen wiederholen.</translation>
  </message>
  <message>
   <source>Replace a word wherever it stands in the column</source>
   <translation>Ein Wort überall in der Spalte ersetzen</translation>
  </message>
  <message>
   <source>Replace what is recorded?</source>
   <translation>Aufgenommenes ersetzen?</translation>
  </message>
  <message>
   <source>Report of the chosen row</source>
   <translation>Bericht der gewählten Zeile</translation>
  </message>
  <message>
   <source>Report of the fault</source>
   <translation>Bericht über den Fehler</translation>
  </message>
  <message>
   <source>Resistance read</source>
   <translation>Gemessener Widerstand</translation>
  </message>
  <message>
   <source>Restore a backup…</source>
   <translation>Eine Sicherung zurückholen…</translation>
  </message>
  <message>
   <source>Restore from a &amp;file…</source>
   <translation>Aus einer &amp;Datei zurückholen…</translation>
  </message>
  <message>
   <source>Restore from a file</source>
   <translation>Aus einer Datei zurückholen</translation>
  </message>
  <message>
   <source>Resu&amp;lt</source>
   <translation>Erge&amp;bnis</translation>
  </message>
  <message>
   <source>Retractor</source>
   <translation>Schlauchrückzug</translation>
  </message>
  <message>
   <source>Retractor clamp fraction</source>
   <translation>Lage der Schelle</translation>
  </message>
  <message>
   <source>Retractor force</source>
   <translation>Zug des Rückzugs</translation>
  </message>
  <message>
   <source>Retractor height</source>
   <translation>Höhe des Rückzugs</translation>
  </message>
  <message>
   <source>Retrieval</source>
   <translation>Schlauchführung</translation>
  </message>
  <message>
   <source>Return or a double click opens one</source>
   <translation>Eingabetaste oder Doppelklick öffnet eines</translation>
  </message>
  <message>
   <source>Returned</source>
   <translation>Zurückgegeben</translation>
  </message>
  <message>
   <source>Rev.</source>
   <translation>Rev.</translation>
  </message>
  <message>
   <source>Revision after</source>
   <translation>Revision danach</translation>
  </message>
  <message>
   <source>Revision before</source>
   <translation>Revision davor</translation>
  </message>
  <message>
   <source>Revision of the quotation</source>
   <translation>Revision des Angebots</translation>
  </message>
  <message>
   <source>Revision {0} as it was sent on {1}; {2}.</source>
   <translation>Revision {0}, wie am {1} abgegeben; {2}.</translation>
  </message>
  <message>
   <source>Revision {0} is ordered and stands as it is.</source>
   <translation>Revision {0} ist bestellt und bleibt, wie sie ist.</translation>
  </message>
  <message>
   <source>Revision {0}, never issued; {1}.</source>
   <translation>Revision {0}, nie abgegeben; {1}.</translation>
  </message>
  <message>
   <source>Row {row} left out</source>
   <translation>Zeile {row} ausgelassen</translation>
  </message>
  <message>
   <source>Row {row}, {field}: “{was}” becomes “{to}”</source>
   <translation>Zeile {row}, {field}: aus „{was}“ wird „{to}“</translation>
  </message>
  <message>
   <source>Rows of the local rules</source>
   <translation>Zeilen der örtlichen Regeln</translation>
  </message>
  <message>
   <source>Rows of the table</source>
   <translation>Zeilen der Tabelle</translation>
  </message>
  <message>
   <source>Rule tables</source>
   <translation>Regeltabellen</translation>
  </message>
  <message>
   <source>Rules</source>
   <translation>Regeln</translation>
  </message>
  <message>
   <source>Rules of</source>
   <translation>Regeln von</translation>
  </message>
  <message>
   <source>S&amp;tanding</source>
   <translation>S&amp;tand</translation>
  </message>
  <message>
   <source>S&amp;top</source>
   <translation>An&amp;halten</translation>
  </message>
  <message>
   <source>S&amp;urvey, position by position</source>
   <translation>Au&amp;fnahme, Platz für Platz</translation>
  </message>
  <message>
   <source>Sa&amp;ve as it lies in the book…</source>
   <translation>&amp;Sichern, wie es im Buch liegt…</translation>
  </message>
  <message>
   <source>Same &amp;product</source>
   <translation>Gleiches &amp;Produkt</translation>
  </message>
  <message>
   <source>Save</source>
   <translation>Speichern</translation>
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
   <translation>&amp;Erneut speichern</translation>
  </message>
  <message>
   <source>Save &amp;all…</source>
   <translation>&amp;Alle speichern…</translation>
  </message>
  <message>
   <source>Save &amp;as CSV…</source>
   <translation>Als CS&amp;V sichern…</translation>
  </message>
  <message>
   <source>Save &amp;calendar…</source>
   <translation>Ka&amp;lender speichern…</translation>
  </message>
  <message>
   <source>Save &amp;text…</source>
   <translation>&amp;Text speichern…</translation>
  </message>
  <message>
   <source>Save &amp;workbook…</source>
   <translation>&amp;Arbeitsmappe speichern…</translation>
  </message>
  <message>
   <source>Save PD&amp;F…</source>
   <translation>PDF speichern…</translation>
  </message>
  <message>
   <source>Save a &amp;calendar…</source>
   <translation>Ka&amp;lender…</translation>
  </message>
  <message>
   <source>Save a ta&amp;ble…</source>
   <translation>Tabelle spe&amp;ichern…</translation>
  </message>
  <message>
   <source>Save again</source>
   <translation>Erneut speichern</translation>
  </message>
  <message>
   <source>Save as a file…</source>
   <translation>Als Datei speichern…</translation>
  </message>
  <message>
   <source>Save c&amp;alendar…</source>
   <translation>&amp;Kalender speichern…</translation>
  </message>
  <message>
   <source>Save in the boo&amp;k</source>
   <translation>Ins Buch &amp;sichern</translation>
  </message>
  <message>
   <source>Save it in the book as a draft.</source>
   <translation>Als Entwurf ins Buch sichern.</translation>
  </message>
  <message>
   <source>Save it: it takes the place of the draft in the book.</source>
   <translation>Sichern: es tritt an die Stelle des Entwurfs im Buch.</translation>
  </message>
  <message>
   <source>Save it: revision {0} opens as a draft, what was sent stays.</source>
   <translation>Sichern: Revision {0} wird als Entwurf eröffnet, Abgegebenes bleibt.</translation>
  </message>
  <message>
   <source>Save ta&amp;ble…</source>
   <translation>Tabelle spe&amp;ichern…</translation>
  </message>
  <message>
   <source>Save the bill</source>
   <translation>Stückliste speichern</translation>
  </message>
  <message>
   <source>Save the form for a ta&amp;blet…</source>
   <translation>Bogen für ein Ta&amp;blet speichern…</translation>
  </message>
  <message>
   <source>Save the picture</source>
   <translation>Bild speichern</translation>
  </message>
  <message>
   <source>Save the re&amp;cord</source>
   <translation>Das Protokoll &amp;sichern</translation>
  </message>
  <message>
   <source>Save the terms</source>
   <translation>Bedingungen speichern</translation>
  </message>
  <message>
   <source>Save this ro&amp;w</source>
   <translation>Diese &amp;Zeile speichern</translation>
  </message>
  <message>
   <source>Saved as {path}</source>
   <translation>Gespeichert als {path}</translation>
  </message>
  <message>
   <source>Saved as {path}.</source>
   <translation>Gespeichert als {path}.</translation>
  </message>
  <message>
   <source>Saved as {path}. Your mail program is asked to open it.</source>
   <translation>Gespeichert als {path}. Ihr Mailprogramm ist gebeten, es zu öffnen.</translation>
  </message>
  <message>
   <source>Saved as {path}; no program here opens it.</source>
   <translation>Gespeichert als {path}; hier öffnet es kein Programm.</translation>
  </message>
  <message>
   <source>Saved.</source>
   <translation>Gesichert.</translation>
  </message>
  <message>
   <source>Saves</source>
   <translation>Stände</translation>
  </message>
  <message>
   <source>Saving…</source>
   <translation>Wird gespeichert…</translation>
  </message>
  <message>
   <source>Say &amp;why these parts</source>
   <translation>&amp;Warum diese Teile</translation>
  </message>
  <message>
   <source>Say what this position sells, for what, and whether vapor is recovered. Until then it is not quoted.</source>
   <translation>Sagen, was dieser Platz verkauft, wofür, und ob Gas zurückgeführt wird. Bis dahin wird er nicht angeboten.</translation>
  </message>
  <message>
   <source>Sc&amp;ope</source>
   <translation>&amp;Umfang</translation>
  </message>
  <message>
   <source>Scan</source>
   <translation>Scannen</translation>
  </message>
  <message>
   <source>Scan a code or type a part number, then Return</source>
   <translation>Code scannen oder Teilenummer tippen, dann Eingabe</translation>
  </message>
  <message>
   <source>Scanned code of a sheet</source>
   <translation>Gelesener Code eines Blatts</translation>
  </message>
  <message>
   <source>Scope and conditions</source>
   <translation>Umfang und Bedingungen</translation>
  </message>
  <message>
   <source>Se&amp;veral answers</source>
   <translation>&amp;Mehrere Antworten</translation>
  </message>
  <message>
   <source>Search entries</source>
   <translation>Einträge suchen</translation>
  </message>
  <message>
   <source>Search everything</source>
   <translation>Alles durchsuchen</translation>
  </message>
  <message>
   <source>Search old numbers</source>
   <translation>Alte Nummern suchen</translation>
  </message>
  <message>
   <source>Search quotations</source>
   <translation>Angebote suchen</translation>
  </message>
  <message>
   <source>Search the manual</source>
   <translation>Im Handbuch suchen</translation>
  </message>
  <message>
   <source>See every set that no other outdoes in price, lead time, flow and more, and take one of them.</source>
   <translation>Jeden Satz sehen, den in Preis, Lieferzeit, Durchfluss und mehr kein anderer übertrifft, und einen davon nehmen.</translation>
  </message>
  <message>
   <source>See the figures in the report</source>
   <translation>Siehe die Zahlen im Bericht</translation>
  </message>
  <message>
   <source>See what another blend, duty, outlet, rule or catalog would do to sets, checks, parts and money.</source>
   <translation>Ansehen, was Beimischung, Einsatz, Abgang, Regeln oder Katalog an Sätzen, Prüfungen, Teilen und Geld ändern würden.</translation>
  </message>
  <message>
   <source>Seen on site</source>
   <translation>Vor Ort gesehen</translation>
  </message>
  <message>
   <source>Sell made &amp;up…</source>
   <translation>Fertig montiert &amp;verkaufen…</translation>
  </message>
  <message>
   <source>Selling</source>
   <translation>Verkauf</translation>
  </message>
  <message>
   <source>Semicolon ( ; )</source>
   <translation>Strichpunkt ( ; )</translation>
  </message>
  <message>
   <source>Sent to the printer.</source>
   <translation>An den Drucker gesendet.</translation>
  </message>
  <message>
   <source>Sequence</source>
   <translation>Ablauf</translation>
  </message>
  <message>
   <source>Service lives</source>
   <translation>Lebensdauern</translation>
  </message>
  <message>
   <source>Set</source>
   <translation>Satz</translation>
  </message>
  <message>
   <source>Set a f&amp;ield…</source>
   <translation>&amp;Feld setzen…</translation>
  </message>
  <message>
   <source>Set for the part</source>
   <translation>Für das Teil festlegen</translation>
  </message>
  <message>
   <source>Set in hand</source>
   <translation>Satz zur Hand</translation>
  </message>
  <message>
   <source>Set of position {0}</source>
   <translation>Satz von Platz {0}</translation>
  </message>
  <message>
   <source>Set sold made up</source>
   <translation>Fertig montiert verkaufter Satz</translation>
  </message>
  <message>
   <source>Set, list price</source>
   <translation>Satz, Listenpreis</translation>
  </message>
  <message>
   <source>Set, ± {currency}</source>
   <translation>Satz, ± {currency}</translation>
  </message>
  <message>
   <source>Sets</source>
   <translation>Sätze</translation>
  </message>
  <message>
   <source>Sets are chosen together so that parts and this price for each part number cost least; empty: each position is chosen for itself.</source>
   <translation>Sätze werden so gemeinsam gewählt, dass Teile und dieser Preis je Teilenummer am wenigsten kosten; leer: jeder Platz für sich.</translation>
  </message>
  <message>
   <source>Sets looked at</source>
   <translation>Angesehene Sätze</translation>
  </message>
  <message>
   <source>Sets of the position side by side</source>
   <translation>Sätze des Platzes nebeneinander</translation>
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
   <source>Sets that differ</source>
   <translation>Andere Sätze</translation>
  </message>
  <message>
   <source>Sets that differ ({0})</source>
   <translation>Andere Sätze ({0})</translation>
  </message>
  <message>
   <source>Sets: {0}</source>
   <translation>Sätze: {0}</translation>
  </message>
  <message>
   <source>Sh&amp;ort bill</source>
   <translation>Kurze &amp;Stückliste</translation>
  </message>
  <message>
   <source>Share of gasoline</source>
   <translation>Anteil des Benzins</translation>
  </message>
  <message>
   <source>Share of gasoline into vehicles with onboard recovery, year by year; it goes before the table.</source>
   <translation>Anteil des Benzins in Fahrzeuge mit Tankdampfrückhaltung, Jahr für Jahr; er geht der Tabelle vor.</translation>
  </message>
  <message>
   <source>Share of gasoline pumped through vacuum assist</source>
   <translation>Anteil des Benzins mit aktiver Rückführung</translation>
  </message>
  <message>
   <source>Sheet</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <source>Sho&amp;w again</source>
   <translation>Er&amp;neut zeigen</translation>
  </message>
  <message>
   <source>Short</source>
   <translation>Fehlt</translation>
  </message>
  <message>
   <source>Short name of the copy</source>
   <translation>Kurzer Name der Kopie</translation>
  </message>
  <message>
   <source>Shortest</source>
   <translation>Kürzeste</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <source>Show &amp;the station</source>
   <translation>&amp;Station zeigen</translation>
  </message>
  <message>
   <source>Show quotations of this status</source>
   <translation>Angebote dieses Stands zeigen</translation>
  </message>
  <message>
   <source>Show rows that hold these words</source>
   <translation>Zeilen mit diesen Wörtern zeigen</translation>
  </message>
  <message>
   <source>Show rows that hold…</source>
   <translation>Zeilen zeigen mit…</translation>
  </message>
  <message>
   <source>Show the whole drawing.</source>
   <translation>Die ganze Zeichnung zeigen.</translation>
  </message>
  <message>
   <source>Show theirs</source>
   <translation>Das andere zeigen</translation>
  </message>
  <message>
   <source>Show those alone whose customer is to be asked again by today</source>
   <translation>Nur die zeigen, bei deren Kunden bis heute nachzufassen ist</translation>
  </message>
  <message>
   <source>Show {0}</source>
   <translation>{0} zeigen</translation>
  </message>
  <message>
   <source>Sideways</source>
   <translation>Zur Seite</translation>
  </message>
  <message>
   <source>Signed (type the name)</source>
   <translation>Unterzeichnet (Name eintippen)</translation>
  </message>
  <message>
   <source>Site</source>
   <translation>Tankstelle</translation>
  </message>
  <message>
   <source>Site a&amp;nswers</source>
   <translation>&amp;Antworten</translation>
  </message>
  <message>
   <source>Site data</source>
   <translation>Tankstelle</translation>
  </message>
  <message>
   <source>Sites converted</source>
   <translation>Umgebaute Tankstellen</translation>
  </message>
  <message>
   <source>Sites of the program</source>
   <translation>Tankstellen des Programms</translation>
  </message>
  <message>
   <source>Size</source>
   <translation>Größe</translation>
  </message>
  <message>
   <source>Size for this thread: {0}.</source>
   <translation>Größe für dieses Gewinde: {0}.</translation>
  </message>
  <message>
   <source>Sold after years</source>
   <translation>Verkauf nach (Jahren)</translation>
  </message>
  <message>
   <source>Some codes allow a longer hose there.</source>
   <translation>Manche Vorschriften erlauben dort einen längeren Schlauch.</translation>
  </message>
  <message>
   <source>Sort by it, falling</source>
   <translation>Nach ihr sortieren, absteigend</translation>
  </message>
  <message>
   <source>Sort by it, rising</source>
   <translation>Nach ihr sortieren, aufsteigend</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>Spares</source>
   <translation>Ersatz</translation>
  </message>
  <message>
   <source>Spares and stock</source>
   <translation>Ersatz und Vorrat</translation>
  </message>
  <message>
   <source>Specifies the hanging hardware of motor-fuel dispensers: what fits, why, and what it costs.</source>
   <translation>Legt die Schlauchgarnituren von Zapfsäulen fest: was passt, warum, und was es kostet.</translation>
  </message>
  <message>
   <source>Spouts: SAE J285; the flow wanted is common practice</source>
   <translation>Auslaufrohre: SAE J285; der gewünschte Durchfluss ist übliche Praxis</translation>
  </message>
  <message>
   <source>Spring balance on site, or the maker's data</source>
   <translation>Federwaage vor Ort oder Herstellerdaten</translation>
  </message>
  <message>
   <source>St&amp;ation on one page</source>
   <translation>Tankstelle auf ei&amp;ner Seite</translation>
  </message>
  <message>
   <source>Staff on site</source>
   <translation>Personal vor Ort</translation>
  </message>
  <message>
   <source>Standing</source>
   <translation>Stand</translation>
  </message>
  <message>
   <source>Stands beside every step that you take</source>
   <translation>Steht bei jedem Schritt, den Sie tun</translation>
  </message>
  <message>
   <source>Start</source>
   <translation>Start</translation>
  </message>
  <message>
   <source>Start &amp;view</source>
   <translation>Startans&amp;icht</translation>
  </message>
  <message>
   <source>Start a survey of another site.</source>
   <translation>Eine Aufnahme einer weiteren Tankstelle beginnen.</translation>
  </message>
  <message>
   <source>State code texts; local code</source>
   <translation>Vorschriften der Bundesstaaten; örtliche Vorschrift</translation>
  </message>
  <message>
   <source>Status</source>
   <translation>Stand</translation>
  </message>
  <message>
   <source>Stays and g&amp;oes</source>
   <translation>Bleibt &amp;und geht</translation>
  </message>
  <message>
   <source>Step</source>
   <translation>Schritt</translation>
  </message>
  <message>
   <source>Step of &amp;unit prices</source>
   <translation>Schritt der Stück&amp;preise</translation>
  </message>
  <message>
   <source>Step of the &amp;total</source>
   <translation>Schritt &amp;der Summe</translation>
  </message>
  <message>
   <source>Step of the amount payable.</source>
   <translation>Schritt des Zahlbetrags.</translation>
  </message>
  <message>
   <source>Step {0}: {1}</source>
   <translation>Schritt {0}: {1}</translation>
  </message>
  <message>
   <source>Steps of the quotation</source>
   <translation>Schritte des Angebots</translation>
  </message>
  <message>
   <source>Steps taken</source>
   <translation>Schritte</translation>
  </message>
  <message>
   <source>Steps taken since the survey was opened</source>
   <translation>Schritte, seit die Aufnahme geöffnet wurde</translation>
  </message>
  <message>
   <source>Still to save, at most</source>
   <translation>Noch zu speichern, spätestens</translation>
  </message>
  <message>
   <source>Sto&amp;p</source>
   <translation>An&amp;halten</translation>
  </message>
  <message>
   <source>Stock list</source>
   <translation>Bestandsliste</translation>
  </message>
  <message>
   <source>Stock list: part number and quantity, one part a line</source>
   <translation>Bestandsliste: Teilenummer und Menge, ein Teil je Zeile</translation>
  </message>
  <message>
   <source>Stock, sets chosen together</source>
   <translation>Vorrat, Sätze gemeinsam gewählt</translation>
  </message>
  <message>
   <source>Stocked parts in place of the missing one</source>
   <translation>Vorrätige Teile anstelle des fehlenden</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Anhalten</translation>
  </message>
  <message>
   <source>Stopped.</source>
   <translation>Angehalten.</translation>
  </message>
  <message>
   <source>Stopped. What was answered is not asked again.</source>
   <translation>Angehalten. Was beantwortet ist, wird nicht noch einmal gefragt.</translation>
  </message>
  <message>
   <source>Stopped. What was worked out is kept; Calculate goes on from there.</source>
   <translation>Angehalten. Was berechnet ist, bleibt erhalten; „Berechnen“ macht dort weiter.</translation>
  </message>
  <message>
   <source>Stopped: nothing was changed.</source>
   <translation>Angehalten: nichts wurde geändert.</translation>
  </message>
  <message>
   <source>Stopped; nothing was quoted.</source>
   <translation>Angehalten; nichts wurde angeboten.</translation>
  </message>
  <message>
   <source>Stopped; there may be more.</source>
   <translation>Angehalten; es kann mehr geben.</translation>
  </message>
  <message>
   <source>Subjects of the terms</source>
   <translation>Themen der Bedingungen</translation>
  </message>
  <message>
   <source>Such as 12.50 USD; 11.00 EUR.</source>
   <translation>Etwa 12.50 USD; 11.00 EUR.</translation>
  </message>
  <message>
   <source>Such as 15 m3. Decides the pressure that a tightness test allows.</source>
   <translation>Etwa 15 m3. Entscheidet über den Druck, den eine Dichtheitsprüfung zulässt.</translation>
  </message>
  <message>
   <source>Such as 15; not for boats.</source>
   <translation>Etwa 15; nicht für Boote.</translation>
  </message>
  <message>
   <source>Such as 20.</source>
   <translation>Etwa 20.</translation>
  </message>
  <message>
   <source>Such as 5700 m3. Without it masses are not computed.</source>
   <translation>Etwa 5700 m3. Ohne sie werden keine Massen berechnet.</translation>
  </message>
  <message>
   <source>Superseded and discontinued ones.</source>
   <translation>Ersetzte und nicht mehr hergestellte.</translation>
  </message>
  <message>
   <source>Superseded by</source>
   <translation>Ersetzt durch</translation>
  </message>
  <message>
   <source>Superseded by maker</source>
   <translation>Ersetzt durch Hersteller</translation>
  </message>
  <message>
   <source>Supplier</source>
   <translation>Lieferant</translation>
  </message>
  <message>
   <source>Supplier of the price list</source>
   <translation>Lieferant der Preisliste</translation>
  </message>
  <message>
   <source>Supplier's sheet</source>
   <translation>Blatt des Lieferanten</translation>
  </message>
  <message>
   <source>Suppliers of the order</source>
   <translation>Lieferanten der Bestellung</translation>
  </message>
  <message>
   <source>Suppliers…</source>
   <translation>Lieferanten…</translation>
  </message>
  <message>
   <source>Supply pressure</source>
   <translation>Druck am Abgang</translation>
  </message>
  <message>
   <source>Survey</source>
   <translation>Aufnahme</translation>
  </message>
  <message>
   <source>Survey files that were read or written lately.</source>
   <translation>Dateien von Aufnahmen, die zuletzt gelesen oder geschrieben wurden.</translation>
  </message>
  <message>
   <source>Survey in hand (positions: {positions}, dispensers: {dispensers}): {most}{hours:f} hours.</source>
   <translation>Offene Aufnahme (Plätze: {positions}, Zapfsäulen: {dispensers}): {most}{hours:f} Stunden.</translation>
  </message>
  <message>
   <source>Survey of the book</source>
   <translation>Aufnahme des Buchs</translation>
  </message>
  <message>
   <source>Survey: say for each position what flows, what it serves, and how far it has to reach.</source>
   <translation>Aufnahme: für jeden Platz sagen, was fließt, was er bedient und wie weit er reichen muss.</translation>
  </message>
  <message>
   <source>Survey: say what hangs there today and what is wanted, above all for vapor.</source>
   <translation>Aufnahme: sagen, was heute hängt und was gewünscht ist, vor allem beim Gas.</translation>
  </message>
  <message>
   <source>Surveys</source>
   <translation>Aufnahmen</translation>
  </message>
  <message>
   <source>Surveys changed last</source>
   <translation>Zuletzt geänderte Aufnahmen</translation>
  </message>
  <message>
   <source>Surveys changed last, a new one, a file, the demonstration.</source>
   <translation>Zuletzt geänderte Aufnahmen, eine neue, eine Datei, die Demonstration.</translation>
  </message>
  <message>
   <source>Surveys in the book</source>
   <translation>Aufnahmen im Buch</translation>
  </message>
  <message>
   <source>Surveys to plan with both</source>
   <translation>Mit beiden zu planende Aufnahmen</translation>
  </message>
  <message>
   <source>Swivel</source>
   <translation>Drehgelenk</translation>
  </message>
  <message>
   <source>Ta&amp;ke it back</source>
   <translation>&amp;Zurücknehmen</translation>
  </message>
  <message>
   <source>Ta&amp;ke out</source>
   <translation>Heraus&amp;nehmen</translation>
  </message>
  <message>
   <source>Ta&amp;ke over the planned set</source>
   <translation>Geplanten Satz über&amp;nehmen</translation>
  </message>
  <message>
   <source>Tabulator</source>
   <translation>Tabulator</translation>
  </message>
  <message>
   <source>Take &amp;over into the book</source>
   <translation>Ins Buch &amp;übernehmen</translation>
  </message>
  <message>
   <source>Take &amp;over into the price list</source>
   <translation>In die Preisliste &amp;übernehmen</translation>
  </message>
  <message>
   <source>Take an alternate</source>
   <translation>Alternative nehmen</translation>
  </message>
  <message>
   <source>Take away</source>
   <translation>Wegnehmen</translation>
  </message>
  <message>
   <source>Take back the last change.</source>
   <translation>Die letzte Änderung zurücknehmen.</translation>
  </message>
  <message>
   <source>Take for this job</source>
   <translation>Für diese Arbeit entnehmen</translation>
  </message>
  <message>
   <source>Take in a price file</source>
   <translation>Preisdatei übernehmen</translation>
  </message>
  <message>
   <source>Take its successor {numbers}</source>
   <translation>Nachfolger {numbers} nehmen</translation>
  </message>
  <message>
   <source>Take out what it does not hold</source>
   <translation>Was fehlt, herausnehmen</translation>
  </message>
  <message>
   <source>Take over into the &amp;draft</source>
   <translation>In den Entwurf &amp;übernehmen</translation>
  </message>
  <message>
   <source>Take terms</source>
   <translation>Bedingungen nehmen</translation>
  </message>
  <message>
   <source>Take terms, then quote the survey; or look a quotation up in the book.</source>
   <translation>Bedingungen nehmen, dann anbieten; oder ein Angebot im Buch nachschlagen.</translation>
  </message>
  <message>
   <source>Take the last agreement back; the history keeps it, with who did so and why.</source>
   <translation>Die letzte Vereinbarung zurücknehmen; der Verlauf behält sie, mit wer und warum.</translation>
  </message>
  <message>
   <source>Take the marked &amp;number out</source>
   <translation>Markierte Nummer &amp;herausnehmen</translation>
  </message>
  <message>
   <source>Take the nearest, everywhere</source>
   <translation>Überall das Nächstliegende</translation>
  </message>
  <message>
   <source>Take the new &amp;figures</source>
   <translation>Neue &amp;Angaben übernehmen</translation>
  </message>
  <message>
   <source>Take the new figures of dispenser types</source>
   <translation>Neue Angaben der Zapfsäulentypen übernehmen</translation>
  </message>
  <message>
   <source>Take the position off the site. Undo brings it back.</source>
   <translation>Den Platz aus der Tankstelle nehmen. Rückgängig bringt ihn zurück.</translation>
  </message>
  <message>
   <source>Take theirs</source>
   <translation>Das andere nehmen</translation>
  </message>
  <message>
   <source>Take this &amp;list out</source>
   <translation>Diese Liste her&amp;ausnehmen</translation>
  </message>
  <message>
   <source>Take what is kept for this supplier out of the book</source>
   <translation>Aus dem Buch nehmen, was für diesen Lieferanten behalten ist</translation>
  </message>
  <message>
   <source>Take {0} instead of {1}</source>
   <translation>{0} anstelle von {1} nehmen</translation>
  </message>
  <message>
   <source>Take {0} out of the book? Surveys keep what they have of it.</source>
   <translation>{0} aus dem Buch nehmen? Aufnahmen behalten, was sie davon haben.</translation>
  </message>
  <message>
   <source>Take {0} out? Its parts lose the figures that they have of it.</source>
   <translation>{0} herausnehmen? Ihre Teile verlieren die Angaben, die sie von ihr haben.</translation>
  </message>
  <message>
   <source>Taken</source>
   <translation>Entnommen</translation>
  </message>
  <message>
   <source>Taken already</source>
   <translation>Schon entnommen</translation>
  </message>
  <message>
   <source>Taken already: {0}.</source>
   <translation>Schon entnommen: {0}.</translation>
  </message>
  <message>
   <source>Taken and not needed, to bring back: {0}.</source>
   <translation>Entnommen und nicht gebraucht, zurückzubringen: {0}.</translation>
  </message>
  <message>
   <source>Taken for {0}.</source>
   <translation>Für {0} entnommen.</translation>
  </message>
  <message>
   <source>Taken off the cost of the conversion, in the site's currency.</source>
   <translation>Von den Kosten des Umbaus abgezogen, in der Währung der Tankstelle.</translation>
  </message>
  <message>
   <source>Takes the place alone; nothing else changes and no should is given up.</source>
   <translation>Nimmt allein die Stelle ein; sonst ändert sich nichts, und kein Soll wird aufgegeben.</translation>
  </message>
  <message>
   <source>Taking over…</source>
   <translation>Wird übernommen…</translation>
  </message>
  <message>
   <source>Tank</source>
   <translation>Tank</translation>
  </message>
  <message>
   <source>Tank gauge on the day</source>
   <translation>Tankinhaltsanzeige am Tag</translation>
  </message>
  <message>
   <source>Taper NPT and parallel G look alike and do not seal with each other.</source>
   <translation>Kegeliges NPT und zylindrisches G sehen gleich aus und dichten nicht miteinander.</translation>
  </message>
  <message>
   <source>Taper, 60°</source>
   <translation>Kegelig, 60°</translation>
  </message>
  <message>
   <source>Task</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Tasks</source>
   <translation>Arbeiten</translation>
  </message>
  <message>
   <source>Tasks with their hours, at one rate.</source>
   <translation>Arbeiten mit ihren Stunden, zu einem Satz.</translation>
  </message>
  <message>
   <source>Tax</source>
   <translation>Steuer</translation>
  </message>
  <message>
   <source>Tax is &amp;rounded</source>
   <translation>Steuer wird &amp;gerundet</translation>
  </message>
  <message>
   <source>Tax number</source>
   <translation>Steuernummer</translation>
  </message>
  <message>
   <source>Taxes</source>
   <translation>Steuern</translation>
  </message>
  <message>
   <source>Telep&amp;hone</source>
   <translation>Tele&amp;fon</translation>
  </message>
  <message>
   <source>Telephone</source>
   <translation>Telefon</translation>
  </message>
  <message>
   <source>Ter&amp;ms of sale</source>
   <translation>&amp;Bedingungen</translation>
  </message>
  <message>
   <source>Terms</source>
   <translation>Bedingungen</translation>
  </message>
  <message>
   <source>Terms as in {path}</source>
   <translation>Bedingungen wie in {path}</translation>
  </message>
  <message>
   <source>Terms for the yearly &amp;cost…</source>
   <translation>Bedingungen für die Kosten im Jah&amp;r…</translation>
  </message>
  <message>
   <source>Terms for the yearly cost</source>
   <translation>Bedingungen für die Kosten im Jahr</translation>
  </message>
  <message>
   <source>Terms not saved as a file</source>
   <translation>Bedingungen nicht als Datei gespeichert</translation>
  </message>
  <message>
   <source>Terms of pa&amp;yment</source>
   <translation>Zahlun&amp;gsbedingungen</translation>
  </message>
  <message>
   <source>Terms of payment</source>
   <translation>Zahlungsbedingungen</translation>
  </message>
  <message>
   <source>Terms of the quotation</source>
   <translation>Bedingungen des Angebots</translation>
  </message>
  <message>
   <source>Terms: {0}</source>
   <translation>Bedingungen: {0}</translation>
  </message>
  <message>
   <source>Tests, permits, closing: costs that the owner knows, in the currency of the site.</source>
   <translation>Prüfungen, Genehmigungen, Schließung: Kosten, die der Betreiber kennt, in der Währung der Tankstelle.</translation>
  </message>
  <message>
   <source>Tests, repairs, spare parts of the recovery system.</source>
   <translation>Prüfungen, Reparaturen, Ersatzteile der Gasrückführung.</translation>
  </message>
  <message>
   <source>Text (CSV)</source>
   <translation>Text (CSV)</translation>
  </message>
  <message>
   <source>Text of the license</source>
   <translation>Text der Lizenz</translation>
  </message>
  <message>
   <source>Text of your own</source>
   <translation>Eigener Text</translation>
  </message>
  <message>
   <source>Text to write</source>
   <translation>Zu schreibender Text</translation>
  </message>
  <message>
   <source>The agency demands that recovery stays</source>
   <translation>Die Behörde verlangt, dass die Rückführung bleibt</translation>
  </message>
  <message>
   <source>The agency's own word</source>
   <translation>Auskunft der Behörde</translation>
  </message>
  <message>
   <source>The agreed set breaks a must</source>
   <translation>Der vereinbarte Satz verletzt ein Muss</translation>
  </message>
  <message>
   <source>The backups of a server are made by whoever keeps it.</source>
   <translation>Die Sicherungen eines Servers macht, wer ihn betreut.</translation>
  </message>
  <message>
   <source>The bar above each page leads through these places and says where each stands.</source>
   <translation>Die Leiste über jeder Seite führt durch diese Orte und sagt, wie es an jedem steht.</translation>
  </message>
  <message>
   <source>The bill could not be made: {reason}</source>
   <translation>Die Stückliste ließ sich nicht erstellen: {reason}</translation>
  </message>
  <message>
   <source>The book did not answer and was waited for no longer. Look whether the step was taken.</source>
   <translation>Das Buch hat nicht geantwortet, und es wurde nicht länger gewartet. Nachsehen, ob der Schritt getan ist.</translation>
  </message>
  <message>
   <source>The book has no quotation of this survey.</source>
   <translation>Das Buch hat kein Angebot zu dieser Aufnahme.</translation>
  </message>
  <message>
   <source>The book has not the content of this file.</source>
   <translation>Das Buch hat den Inhalt dieser Datei nicht.</translation>
  </message>
  <message>
   <source>The book is the backup again: {count} surveys. What lay there before is {path}.</source>
   <translation>Das Buch ist wieder die Sicherung: {count} Aufnahmen. Was vorher dort lag, ist {path}.</translation>
  </message>
  <message>
   <source>The book keeps these columns for every later order</source>
   <translation>Das Buch behält diese Spalten für jede spätere Bestellung</translation>
  </message>
  <message>
   <source>The book keeps this for {0}.</source>
   <translation>Das Buch behält dies für {0}.</translation>
  </message>
  <message>
   <source>The book lies on a server.</source>
   <translation>Das Buch liegt auf einem Server.</translation>
  </message>
  <message>
   <source>The book of surveys cannot be opened.</source>
   <translation>Das Buch der Aufnahmen lässt sich nicht öffnen.</translation>
  </message>
  <message>
   <source>The book plans with {book}; this survey plans with {survey}.</source>
   <translation>Das Buch plant mit {book}, diese Aufnahme mit {survey}.</translation>
  </message>
  <message>
   <source>The cases side by side</source>
   <translation>Die Fälle nebeneinander</translation>
  </message>
  <message>
   <source>The catalog Demonstration, its makers and prices are invented.</source>
   <translation>Der Katalog Demonstration, seine Hersteller und Preise sind erfunden.</translation>
  </message>
  <message>
   <source>The conversion could not be worked out: {reason}</source>
   <translation>Der Umbau ließ sich nicht ausarbeiten: {reason}</translation>
  </message>
  <message>
   <source>The count {0} found everything that the book knows of.</source>
   <translation>Die Zählung {0} hat alles gefunden, was das Buch kennt.</translation>
  </message>
  <message>
   <source>The count {0} is closed. Parts counted so: {1}.</source>
   <translation>Die Zählung {0} ist abgeschlossen. So gezählte Teile: {1}.</translation>
  </message>
  <message>
   <source>The currency of every amount in the quotation, and how amounts are rounded.</source>
   <translation>Die Währung jedes Betrags im Angebot, und wie Beträge gerundet werden.</translation>
  </message>
  <message>
   <source>The customer's own expectation, for comparing breakaways. All empty: no comparison.</source>
   <translation>Die eigene Erwartung des Kunden, zum Vergleich von Abreißkupplungen. Alles leer: kein Vergleich.</translation>
  </message>
  <message>
   <source>The customers in view, as a paper</source>
   <translation>Die gezeigten Kunden als Papier</translation>
  </message>
  <message>
   <source>The details for a report are in {path}.</source>
   <translation>Die Einzelheiten für einen Bericht stehen in {path}.</translation>
  </message>
  <message>
   <source>The draft of {catalog}: {new} new, {changed} changed, {same} as they were.</source>
   <translation>Entwurf von {catalog}: {new} neu, {changed} geändert, {same} wie zuvor.</translation>
  </message>
  <message>
   <source>The duty decides spout, flow and how far the hose has to turn and reach.</source>
   <translation>Der Einsatz bestimmt Auslaufrohr, Durchfluss und wie weit der Schlauch drehen und reichen muss.</translation>
  </message>
  <message>
   <source>The ends of the part</source>
   <translation>Die Enden des Teils</translation>
  </message>
  <message>
   <source>The family</source>
   <translation>Die Familie</translation>
  </message>
  <message>
   <source>The family decides which listing standards, seals and spouts come into question.</source>
   <translation>Die Familie entscheidet, welche Normen, Dichtungen und Auslaufrohre in Frage kommen.</translation>
  </message>
  <message>
   <source>The field is filled alike in all of them; nothing else changes.</source>
   <translation>Das Feld wird in allen gleich gefüllt; sonst ändert sich nichts.</translation>
  </message>
  <message>
   <source>The flow cannot be shown here: {reason}</source>
   <translation>Der Durchfluss lässt sich hier nicht zeigen: {reason}</translation>
  </message>
  <message>
   <source>The forecourt from above, and all answers as a table to write into.</source>
   <translation>Das Tankfeld von oben und alle Antworten als beschreibbare Tabelle.</translation>
  </message>
  <message>
   <source>The form also holds {0}: go to each position, look at it and keep it.</source>
   <translation>Der Bogen enthält auch {0}: zu jedem Platz gehen, ansehen und behalten.</translation>
  </message>
  <message>
   <source>The history of agreements, two of them compared; planned, agreed and built side by side.</source>
   <translation>Der Verlauf der Vereinbarungen, zwei davon verglichen; geplant, vereinbart und gebaut nebeneinander.</translation>
  </message>
  <message>
   <source>The inspection plan of the site, as a paper</source>
   <translation>Der Prüfplan der Tankstelle als Papier</translation>
  </message>
  <message>
   <source>The last agreement is taken back.</source>
   <translation>Die letzte Vereinbarung ist zurückgenommen.</translation>
  </message>
  <message>
   <source>The last change is taken back.</source>
   <translation>Die letzte Änderung ist zurückgenommen.</translation>
  </message>
  <message>
   <source>The last changes are not in the book yet: {reason} It is tried again by itself.</source>
   <translation>Die letzten Änderungen sind noch nicht im Buch: {reason} Es wird von selbst erneut versucht.</translation>
  </message>
  <message>
   <source>The last changes of “{name}” are not in the book.</source>
   <translation>Die letzten Änderungen von „{name}“ sind nicht im Buch.</translation>
  </message>
  <message>
   <source>The list as it stands here, as a paper; with its margins it is internal</source>
   <translation>Die Liste, wie sie hier steht, als Papier; mit ihren Margen ist sie intern</translation>
  </message>
  <message>
   <source>The offer ended on {0}: requote it before it is issued.</source>
   <translation>Das Angebot endete am {0}: vor dem Abgeben neu anbieten.</translation>
  </message>
  <message>
   <source>The order stands. What changes now needs a quotation of its own.</source>
   <translation>Der Auftrag steht. Was sich jetzt ändert, braucht ein eigenes Angebot.</translation>
  </message>
  <message>
   <source>The order stands: revision {0} stays as it is. Taken, revision {1} opens as a draft, to be issued.</source>
   <translation>Der Auftrag steht: Revision {0} bleibt, wie sie ist. Genommen, öffnet Revision {1} als Entwurf, der auszugeben ist.</translation>
  </message>
  <message>
   <source>The order stands; kept, this becomes a quotation of its own. Give it another number in its terms.</source>
   <translation>Der Auftrag steht; aufbewahrt wird dies ein eigenes Angebot. In seinen Bedingungen eine andere Nummer geben.</translation>
  </message>
  <message>
   <source>The other answer</source>
   <translation>Die andere Antwort</translation>
  </message>
  <message>
   <source>The owner's own figure</source>
   <translation>Zahl des Betreibers</translation>
  </message>
  <message>
   <source>The owner's own question</source>
   <translation>Eigene Frage des Betreibers</translation>
  </message>
  <message>
   <source>The page of the manual that fits what has the keyboard; words of the trade; the source of every rule.</source>
   <translation>Die Seite des Handbuchs zu dem, was die Tastatur hat; Wörter des Fachs; die Quelle jeder Regel.</translation>
  </message>
  <message>
   <source>The part</source>
   <translation>Das Teil</translation>
  </message>
  <message>
   <source>The parts of the catalog in hand come here. A supplier's table brings many at once.</source>
   <translation>Die Teile des gewählten Katalogs erscheinen hier. Die Tabelle eines Lieferanten bringt viele auf einmal.</translation>
  </message>
  <message>
   <source>The parts of the site as they hang there now, as a paper</source>
   <translation>Die Teile der Tankstelle, wie sie jetzt dort hängen, als Papier</translation>
  </message>
  <message>
   <source>The price lists of the edition in hand, as a paper</source>
   <translation>Die Preislisten der Ausgabe in Arbeit als Papier</translation>
  </message>
  <message>
   <source>The prices of a quotation come here once a survey is quoted.</source>
   <translation>Die Preise eines Angebots erscheinen hier, sobald eine Aufnahme angeboten ist.</translation>
  </message>
  <message>
   <source>The program met a fault of its own and did not finish the last step. Your survey: {state}.</source>
   <translation>Das Programm hatte einen eigenen Fehler und hat den letzten Schritt nicht beendet. Ihre Aufnahme: {state}.</translation>
  </message>
  <message>
   <source>The program met a fault of its own and did not finish this.</source>
   <translation>Das Programm hatte einen eigenen Fehler und hat dies nicht beendet.</translation>
  </message>
  <message>
   <source>The questions about the position in hand, and its set.</source>
   <translation>Die Fragen zum gewählten Platz und sein Satz.</translation>
  </message>
  <message>
   <source>The quotation goes out without this price and says so on the paper</source>
   <translation>Das Angebot geht ohne diesen Preis hinaus und sagt es auf dem Papier</translation>
  </message>
  <message>
   <source>The reasons at this position, as a paper</source>
   <translation>Die Gründe an dieser Position als Papier</translation>
  </message>
  <message>
   <source>The record of this position, as a paper</source>
   <translation>Das Protokoll dieser Position als Papier</translation>
  </message>
  <message>
   <source>The record of {0} is kept in the book.</source>
   <translation>Das Protokoll von {0} ist im Buch.</translation>
  </message>
  <message>
   <source>The report below is what is copied; nothing is sent. Read it before you hand it on.</source>
   <translation>Der Bericht unten ist, was kopiert wird; nichts wird gesendet. Vor dem Weitergeben lesen.</translation>
  </message>
  <message>
   <source>The rows with their sources, as a paper</source>
   <translation>Die Zeilen mit ihren Quellen als Papier</translation>
  </message>
  <message>
   <source>The run was stopped early.</source>
   <translation>Der Lauf wurde vorzeitig angehalten.</translation>
  </message>
  <message>
   <source>The same as wanted</source>
   <translation>Dasselbe wie gewünscht</translation>
  </message>
  <message>
   <source>The same in every row: an account number, a unit.</source>
   <translation>In jeder Zeile gleich: eine Kontonummer, eine Einheit.</translation>
  </message>
  <message>
   <source>The search was ended before the least cost was proved</source>
   <translation>Die Suche endete, bevor die geringsten Kosten bewiesen waren</translation>
  </message>
  <message>
   <source>The set in hand, before and after</source>
   <translation>Der gewählte Satz, vorher und nachher</translation>
  </message>
  <message>
   <source>The set is agreed.</source>
   <translation>Der Satz ist vereinbart.</translation>
  </message>
  <message>
   <source>The set is held against this flow at the coldest and the hottest temperature.</source>
   <translation>Der Satz wird bei tiefster und höchster Temperatur an diesem Durchfluss gemessen.</translation>
  </message>
  <message>
   <source>The sets as planned for the answers of today. Papers show what is agreed from then on.</source>
   <translation>Die Sätze, wie für die Antworten von heute geplant. Papiere zeigen von da an, was vereinbart ist.</translation>
  </message>
  <message>
   <source>The sets of the chart as a table</source>
   <translation>Die Sätze des Diagramms als Tabelle</translation>
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
   <source>The sets picked: {0}. Papers show what is agreed from then on.</source>
   <translation>Die ausgesuchten Sätze: {0}. Papiere zeigen von da an, was vereinbart ist.</translation>
  </message>
  <message>
   <source>The stock holds no other part of this kind.</source>
   <translation>Im Bestand ist kein anderes Teil dieser Art.</translation>
  </message>
  <message>
   <source>The survey has been changed since: quote this survey for that. Requoted, it stays as it was.</source>
   <translation>Die Aufnahme ist seither geändert: dafür diese Aufnahme anbieten. Neu angeboten bleibt es, wie es war.</translation>
  </message>
  <message>
   <source>The survey has changed since this form was printed. Look at every line.</source>
   <translation>Die Aufnahme hat sich seit dem Druck dieses Bogens geändert. Jede Zeile ansehen.</translation>
  </message>
  <message>
   <source>The survey was changed since. No amount of the quotation changes by that.</source>
   <translation>Die Aufnahme wurde seither geändert. Kein Betrag des Angebots ändert sich dadurch.</translation>
  </message>
  <message>
   <source>The survey was changed since. Quoted now:</source>
   <translation>Die Aufnahme wurde seither geändert. Jetzt angeboten:</translation>
  </message>
  <message>
   <source>The survey was changed since; what that means in money was not worked out.</source>
   <translation>Die Aufnahme wurde seither geändert; was das in Geld bedeutet, wurde nicht ausgerechnet.</translation>
  </message>
  <message>
   <source>The survey was changed since; working out what that means in money…</source>
   <translation>Die Aufnahme wurde seither geändert; was das in Geld bedeutet, wird ausgerechnet…</translation>
  </message>
  <message>
   <source>The survey was changed while it was quoted, so nothing was quoted. Quote it again.</source>
   <translation>Die Aufnahme wurde beim Anbieten geändert, also wurde nichts angeboten. Noch einmal anbieten.</translation>
  </message>
  <message>
   <source>The table ends in 2020 and is never prolonged without being asked.</source>
   <translation>Die Tabelle endet 2020 und wird nie ungefragt verlängert.</translation>
  </message>
  <message>
   <source>The terms are in hand.</source>
   <translation>Die Bedingungen liegen vor.</translation>
  </message>
  <message>
   <source>The two surveys do not go together. Keep both, or one of them.</source>
   <translation>Die beiden Aufnahmen passen nicht zusammen. Beide behalten oder eine davon.</translation>
  </message>
  <message>
   <source>The usual terms are as they were</source>
   <translation>Die üblichen Bedingungen sind, wie sie waren</translation>
  </message>
  <message>
   <source>The value is written as the source prints it: digits, yes or no, a word, cases separated by commas; empty for no figure. The adopted code and the authority having jurisdiction decide; this table only records them.</source>
   <translation>Der Wert steht, wie ihn die Quelle druckt: Ziffern, ja oder nein, ein Wort, Fälle mit Komma getrennt; leer für keine Zahl. Die geltende Vorschrift und die zuständige Behörde entscheiden; diese Tabelle hält sie nur fest.</translation>
  </message>
  <message>
   <source>The volume that the price is of.</source>
   <translation>Das Volumen, für das der Preis gilt.</translation>
  </message>
  <message>
   <source>The whole map, as a paper</source>
   <translation>Die ganze Karte als Papier</translation>
  </message>
  <message>
   <source>Then a splitter can join both to a coaxial hose.</source>
   <translation>Dann kann eine Verzweigung beide zu einem koaxialen Schlauch verbinden.</translation>
  </message>
  <message>
   <source>Then another link is needed, and a test shows it.</source>
   <translation>Dann ist eine andere Verbindung nötig, und eine Prüfung zeigt sie.</translation>
  </message>
  <message>
   <source>Then it does no harm there.</source>
   <translation>Dann schadet sie dort nicht.</translation>
  </message>
  <message>
   <source>Then the tank agency is told before some blends; not answered counts as yes.</source>
   <translation>Dann wird die Tankbehörde vor manchen Mischungen benachrichtigt; ohne Antwort gilt ja.</translation>
  </message>
  <message>
   <source>There is no set to give reasons for.</source>
   <translation>Es gibt keinen Satz, der zu begründen wäre.</translation>
  </message>
  <message>
   <source>There is no set to pick a part from.</source>
   <translation>Es gibt keinen Satz, aus dem ein Teil zu wählen wäre.</translation>
  </message>
  <message>
   <source>There is no set whose checks could be looked at.</source>
   <translation>Es gibt keinen Satz, dessen Prüfungen betrachtet werden könnten.</translation>
  </message>
  <message>
   <source>There is no set whose flow could be shown.</source>
   <translation>Es gibt keinen Satz, dessen Durchfluss zu zeigen wäre.</translation>
  </message>
  <message>
   <source>There is no such file here.</source>
   <translation>Diese Datei gibt es hier nicht.</translation>
  </message>
  <message>
   <source>These lines are sold below cost or below the least margin:
{0}
Name and reason stay in the book alone.</source>
   <translation>Diese Zeilen liegen unter Kosten oder unter der Mindestmarge:
{0}
Name und Grund bleiben allein im Buch.</translation>
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
   <source>These parts</source>
   <translation>Diese Teile</translation>
  </message>
  <message>
   <source>These parts are sold joined to each other, as one article. Dispenser first, vehicle last:</source>
   <translation>Diese Teile werden verbunden als ein Artikel verkauft. Zapfsäule zuerst, Fahrzeug zuletzt:</translation>
  </message>
  <message>
   <source>These parts of {0} were not scanned in this count. Look for them first. Closing counts them as shown on the right; entries are only added, and each can be undone.</source>
   <translation>Diese Teile von {0} wurden in dieser Zählung nicht gescannt. Zuerst nach ihnen suchen. Das Abschließen zählt sie wie rechts gezeigt; Einträge kommen nur hinzu, und jeder lässt sich aufheben.</translation>
  </message>
  <message>
   <source>These positions take the place of all that are there</source>
   <translation>Diese Plätze treten an die Stelle aller vorhandenen</translation>
  </message>
  <message>
   <source>These recorded parts would go: {0}.</source>
   <translation>Diese aufgenommenen Teile fielen weg: {0}.</translation>
  </message>
  <message>
   <source>They are on their way to the book.</source>
   <translation>Sie sind auf dem Weg ins Buch.</translation>
  </message>
  <message>
   <source>They are saved by themselves as soon as the book takes them; this question then goes away.</source>
   <translation>Sie werden von selbst gespeichert, sobald das Buch sie nimmt; diese Frage verschwindet dann.</translation>
  </message>
  <message>
   <source>They go before the deadline that a survey names among the site answers.</source>
   <translation>Sie gehen der Frist vor, die eine Aufnahme unter den Antworten zur Tankstelle nennt.</translation>
  </message>
  <message>
   <source>This change is not in the book yet: {reason} It stays in the window.</source>
   <translation>Diese Änderung ist noch nicht im Buch: {reason} Sie bleibt im Fenster.</translation>
  </message>
  <message>
   <source>This dispenser only</source>
   <translation>Nur diese Zapfsäule</translation>
  </message>
  <message>
   <source>This is no PNG or JPEG picture.</source>
   <translation>Das ist kein PNG- oder JPEG-Bild.</translation>
  </message>
  <message>
   <source>This package brings no text of its license.</source>
   <translation>Dieses Paket bringt keinen Text seiner Lizenz mit.</translation>
  </message>
  <message>
   <source>This picture cannot be read.</source>
   <translation>Dieses Bild ist nicht lesbar.</translation>
  </message>
  <message>
   <source>This position</source>
   <translation>Dieser Platz</translation>
  </message>
  <message>
   <source>This position has no set, so there is nothing to record.</source>
   <translation>Dieser Platz hat keinen Satz, also ist nichts zu protokollieren.</translation>
  </message>
  <message>
   <source>This position only</source>
   <translation>Nur dieser Platz</translation>
  </message>
  <message>
   <source>This quotation is not in the book yet. It is one of {0}.</source>
   <translation>Dieses Angebot ist noch nicht im Buch. Es gehört zu {0}.</translation>
  </message>
  <message>
   <source>This survey is not on the list of the book any more: it was taken off. It stays in the window.</source>
   <translation>Diese Aufnahme steht nicht mehr in der Liste des Buchs: sie wurde herausgenommen. Im Fenster bleibt sie.</translation>
  </message>
  <message>
   <source>Those of &amp;this quotation</source>
   <translation>Die dieses &amp;Angebots</translation>
  </message>
  <message>
   <source>Thread si&amp;ze</source>
   <translation>Gewindeg&amp;röße</translation>
  </message>
  <message>
   <source>Thread standard, size, gender and path, such as NPT 3/4 male single.</source>
   <translation>Gewindenorm, Größe, Geschlecht und Weg, etwa NPT 3/4 male single.</translation>
  </message>
  <message>
   <source>Three jobs in pictures</source>
   <translation>Drei Aufgaben in Bildern</translation>
  </message>
  <message>
   <source>Three letters of ISO 4217, such as EUR.</source>
   <translation>Drei Buchstaben nach ISO 4217, etwa EUR.</translation>
  </message>
  <message>
   <source>Three letters of ISO 4217, such as USD.</source>
   <translation>Drei Buchstaben nach ISO 4217, etwa USD.</translation>
  </message>
  <message>
   <source>Title of the copy</source>
   <translation>Titel der Kopie</translation>
  </message>
  <message>
   <source>Title of the next file</source>
   <translation>Titel der nächsten Datei</translation>
  </message>
  <message>
   <source>To be read only.</source>
   <translation>Nur zu lesen.</translation>
  </message>
  <message>
   <source>To be read only. The papers are those that were sent.</source>
   <translation>Nur zu lesen. Die Papiere sind die abgegebenen.</translation>
  </message>
  <message>
   <source>To look at</source>
   <translation>Anzusehen</translation>
  </message>
  <message>
   <source>To order</source>
   <translation>Bestellen</translation>
  </message>
  <message>
   <source>To put a position back into service.</source>
   <translation>Um einen Platz wieder in Betrieb zu nehmen.</translation>
  </message>
  <message>
   <source>To take</source>
   <translation>Entnehmen</translation>
  </message>
  <message>
   <source>To which positions</source>
   <translation>Zu welchen Plätzen</translation>
  </message>
  <message>
   <source>Today</source>
   <translation>Heute</translation>
  </message>
  <message>
   <source>Today and then side by side</source>
   <translation>Heute und dann nebeneinander</translation>
  </message>
  <message>
   <source>Total</source>
   <translation>Gesamt</translation>
  </message>
  <message>
   <source>Total {sum}</source>
   <translation>Gesamt {sum}</translation>
  </message>
  <message>
   <source>Toward the &amp;dispenser</source>
   <translation>Zur &amp;Zapfsäule</translation>
  </message>
  <message>
   <source>Toward the &amp;vehicle</source>
   <translation>Zum &amp;Fahrzeug</translation>
  </message>
  <message>
   <source>Towards a grant</source>
   <translation>Zur Förderung</translation>
  </message>
  <message>
   <source>Trade-association paper, 2020 (secondary)</source>
   <translation>Papier eines Fachverbands, 2020 (berichtet)</translation>
  </message>
  <message>
   <source>Tried {done} of {total} parts…</source>
   <translation>{done} von {total} Teilen erprobt…</translation>
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
   <translation>Die Teile des Katalogs werden erprobt…</translation>
  </message>
  <message>
   <source>Tur&amp;ns left on the drum at the filler</source>
   <translation>Windungen, die beim Tanken auf der Tro&amp;mmel bleiben</translation>
  </message>
  <message>
   <source>U&amp;nits</source>
   <translation>&amp;Einheiten</translation>
  </message>
  <message>
   <source>UL 2586, 567 and 330 with supplements A (ethanol) and B (diesel, biodiesel)</source>
   <translation>UL 2586, 567 und 330 mit Zusätzen A (Ethanol) und B (Diesel, Biodiesel)</translation>
  </message>
  <message>
   <source>US units</source>
   <translation>US-Einheiten</translation>
  </message>
  <message>
   <source>UTF-8 with byte order mark</source>
   <translation>UTF-8 mit Bytereihenfolgemarke</translation>
  </message>
  <message>
   <source>UTF-8 without a mark</source>
   <translation>UTF-8 ohne Marke</translation>
  </message>
  <message>
   <source>Undo the entry</source>
   <translation>Eintrag aufheben</translation>
  </message>
  <message>
   <source>Undo the last agreement</source>
   <translation>Letzte Vereinbarung zurücknehmen</translation>
  </message>
  <message>
   <source>Unified</source>
   <translation>UN (Unified)</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>Unit or currency of {0}</source>
   <translation>Einheit oder Währung von {0}</translation>
  </message>
  <message>
   <source>Unit price</source>
   <translation>Stückpreis</translation>
  </message>
  <message>
   <source>Unit price of {0}</source>
   <translation>Stückpreis von {0}</translation>
  </message>
  <message>
   <source>Units of numbers that name none</source>
   <translation>Einheiten von Zahlen, die keine nennen</translation>
  </message>
  <message>
   <source>Units: SI</source>
   <translation>Einheiten: SI</translation>
  </message>
  <message>
   <source>Units: US</source>
   <translation>Einheiten: US</translation>
  </message>
  <message>
   <source>Units: as the titles say</source>
   <translation>Einheiten: wie die Titel sagen</translation>
  </message>
  <message>
   <source>Up</source>
   <translation>Nach oben</translation>
  </message>
  <message>
   <source>Urea solution for diesel exhaust</source>
   <translation>Harnstofflösung für Dieselabgas</translation>
  </message>
  <message>
   <source>Use &amp;another folder…</source>
   <translation>Einen &amp;anderen Ordner nehmen…</translation>
  </message>
  <message>
   <source>Use the marked part in the set</source>
   <translation>Markiertes Teil im Satz verwenden</translation>
  </message>
  <message>
   <source>Use the table of the United States fleet?</source>
   <translation>Tabelle des Fahrzeugbestands der USA verwenden?</translation>
  </message>
  <message>
   <source>Use these terms</source>
   <translation>Diese Bedingungen verwenden</translation>
  </message>
  <message>
   <source>Use {part}</source>
   <translation>{part} verwenden</translation>
  </message>
  <message>
   <source>Vacuum assist</source>
   <translation>Aktiv</translation>
  </message>
  <message>
   <source>Vacuum-assist coaxial</source>
   <translation>Koaxial, aktiv</translation>
  </message>
  <message>
   <source>Valid from</source>
   <translation>Gültig ab</translation>
  </message>
  <message>
   <source>Valid through</source>
   <translation>Gültig bis</translation>
  </message>
  <message>
   <source>Valid to</source>
   <translation>Gültig bis</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>Value for the chosen cells</source>
   <translation>Wert für die gewählten Zellen</translation>
  </message>
  <message>
   <source>Van</source>
   <translation>Wagen</translation>
  </message>
  <message>
   <source>Van and store</source>
   <translation>Wagen und Lager</translation>
  </message>
  <message>
   <source>Van or store</source>
   <translation>Wagen oder Lager</translation>
  </message>
  <message>
   <source>Vapor</source>
   <translation>Gas</translation>
  </message>
  <message>
   <source>Vapor in the inner tube</source>
   <translation>Gas im Innenrohr</translation>
  </message>
  <message>
   <source>Vapor in the outer ring</source>
   <translation>Gas im äußeren Ring</translation>
  </message>
  <message>
   <source>Vapor pipes and vacuum</source>
   <translation>Gasleitungen und Vakuum</translation>
  </message>
  <message>
   <source>Vapor recovery</source>
   <translation>Gasrückführung</translation>
  </message>
  <message>
   <source>Vapor recovery today and in future</source>
   <translation>Gasrückführung heute und künftig</translation>
  </message>
  <message>
   <source>Vapor recovery today is recorded as {0}; the planned set is of another kind.</source>
   <translation>Die heutige Gasrückführung ist als {0} aufgenommen; der geplante Satz ist von anderer Art.</translation>
  </message>
  <message>
   <source>Vapor return available</source>
   <translation>Gasrückleitung</translation>
  </message>
  <message>
   <source>Vapor space of the tanks at the test</source>
   <translation>Gasraum der Tanks bei der Prüfung</translation>
  </message>
  <message>
   <source>Vapor today</source>
   <translation>Gas heute</translation>
  </message>
  <message>
   <source>Vapor wanted</source>
   <translation>Gas gewünscht</translation>
  </message>
  <message>
   <source>Vehicle filler</source>
   <translation>Einfüllstutzen des Fahrzeugs</translation>
  </message>
  <message>
   <source>Vehicle fillers</source>
   <translation>Einfüllstutzen des Fahrzeugs</translation>
  </message>
  <message>
   <source>Vehicles and their onboard recovery</source>
   <translation>Fahrzeuge und Tankdampfrückhaltung</translation>
  </message>
  <message>
   <source>Version</source>
   <translation>Version</translation>
  </message>
  <message>
   <source>Visits and deadlines; the first year must be named</source>
   <translation>Einsätze und Fristen; das erste Jahr muss genannt sein</translation>
  </message>
  <message>
   <source>W&amp;ay</source>
   <translation>&amp;Verfahren</translation>
  </message>
  <message>
   <source>W&amp;eigh sets…</source>
   <translation>Sätze a&amp;bwägen…</translation>
  </message>
  <message>
   <source>Wa&amp;y round the vehicle</source>
   <translation>Weg um das &amp;Fahrzeug</translation>
  </message>
  <message>
   <source>Wait no &amp;longer</source>
   <translation>Nicht länger &amp;warten</translation>
  </message>
  <message>
   <source>Waiting for the book…</source>
   <translation>Warten auf das Buch…</translation>
  </message>
  <message>
   <source>Waits until the other sets are found.</source>
   <translation>Wartet, bis die anderen Sätze gefunden sind.</translation>
  </message>
  <message>
   <source>Wanted flow</source>
   <translation>Gewünschter Durchfluss</translation>
  </message>
  <message>
   <source>Way</source>
   <translation>Weg</translation>
  </message>
  <message>
   <source>Way out</source>
   <translation>Ausweg</translation>
  </message>
  <message>
   <source>Way round the vehicle</source>
   <translation>Weg um das Fahrzeug</translation>
  </message>
  <message>
   <source>Ways to convert</source>
   <translation>Wege zum Umbau</translation>
  </message>
  <message>
   <source>Wear log</source>
   <translation>Verschleißbuch</translation>
  </message>
  <message>
   <source>Weather records of the place</source>
   <translation>Wetteraufzeichnungen des Orts</translation>
  </message>
  <message>
   <source>Weigh</source>
   <translation>Abwägen</translation>
  </message>
  <message>
   <source>Weigh sets</source>
   <translation>Sätze abwägen</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>Wh&amp;y not?</source>
   <translation>&amp;Warum nicht?</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>What &amp;changes…</source>
   <translation>Was sich &amp;ändert…</translation>
  </message>
  <message>
   <source>What a type answers need not be asked at its positions. A survey keeps the type as it was chosen.</source>
   <translation>Was ein Typ beantwortet, muss an seinen Plätzen niemand fragen. Eine Aufnahme behält den Typ, wie er gewählt wurde.</translation>
  </message>
  <message>
   <source>What another answer would do, before the survey is changed.</source>
   <translation>Was eine andere Antwort bewirken würde, bevor die Aufnahme geändert wird.</translation>
  </message>
  <message>
   <source>What changed between the two revisions</source>
   <translation>Was sich zwischen den beiden Revisionen geändert hat</translation>
  </message>
  <message>
   <source>What changed from</source>
   <translation>Was sich geändert hat von</translation>
  </message>
  <message>
   <source>What changes in money</source>
   <translation>Was sich in Geld ändert</translation>
  </message>
  <message>
   <source>What chose the sets</source>
   <translation>Was die Sätze wählte</translation>
  </message>
  <message>
   <source>What d&amp;oes the hose serve?</source>
   <translation>Was betan&amp;kt der Schlauch?</translation>
  </message>
  <message>
   <source>What differs between two agreements</source>
   <translation>Was sich zwischen zwei Vereinbarungen unterscheidet</translation>
  </message>
  <message>
   <source>What else would &amp;do here</source>
   <translation>Was hier so&amp;nst ginge</translation>
  </message>
  <message>
   <source>What else would do here</source>
   <translation>Was hier sonst ginge</translation>
  </message>
  <message>
   <source>What flows through the hose decides listing class and seals.</source>
   <translation>Was durch den Schlauch fließt, bestimmt Zulassungsklasse und Dichtungen.</translation>
  </message>
  <message>
   <source>What hangs here today</source>
   <translation>Was heute hier hängt</translation>
  </message>
  <message>
   <source>What hangs there now decides which vapor openings have to be closed in a conversion.</source>
   <translation>Was heute dort hängt, bestimmt, welche Gasöffnungen bei einem Umbau zu verschließen sind.</translation>
  </message>
  <message>
   <source>What hangs there today</source>
   <translation>Was heute dort hängt</translation>
  </message>
  <message>
   <source>What hangs there today, what is to hang there, and what the outlet offers.</source>
   <translation>Was heute dort hängt, was dort hängen soll und was der Abgang bietet.</translation>
  </message>
  <message>
   <source>What happened</source>
   <translation>Was geschehen ist</translation>
  </message>
  <message>
   <source>What happens</source>
   <translation>Was geschieht</translation>
  </message>
  <message>
   <source>What if an answer were another?</source>
   <translation>Was wäre, wenn eine Antwort anders lautete?</translation>
  </message>
  <message>
   <source>What if…</source>
   <translation>Was wäre, wenn…</translation>
  </message>
  <message>
   <source>What is added to materials and labor.</source>
   <translation>Was zu Material und Arbeit hinzukommt.</translation>
  </message>
  <message>
   <source>What is asked</source>
   <translation>Was verlangt ist</translation>
  </message>
  <message>
   <source>What is delivered beside the parts that are installed, and what it is worth to stock few part numbers.</source>
   <translation>Was neben den eingebauten Teilen geliefert wird, und was es wert ist, wenige Teilenummern zu führen.</translation>
  </message>
  <message>
   <source>What is kept of the book, one more now, or one put back in its place.</source>
   <translation>Was vom Buch aufgehoben ist, jetzt eine mehr oder eine zurückgeholt.</translation>
  </message>
  <message>
   <source>What is missing, and what is there</source>
   <translation>Was fehlt und was da ist</translation>
  </message>
  <message>
   <source>What is new in the edition</source>
   <translation>Was in der Ausgabe neu ist</translation>
  </message>
  <message>
   <source>What is new in this edition</source>
   <translation>Was in dieser Ausgabe neu ist</translation>
  </message>
  <message>
   <source>What is not included</source>
   <translation>Was nicht enthalten ist</translation>
  </message>
  <message>
   <source>What is offered, what is not, and on which terms of sale.</source>
   <translation>Was angeboten wird, was nicht, und zu welchen Verkaufsbedingungen.</translation>
  </message>
  <message>
   <source>What is ordered from each supplier, as a file in the columns that it wants</source>
   <translation>Was bei jedem Lieferanten bestellt wird, als Datei in den Spalten, die er will</translation>
  </message>
  <message>
   <source>What is otherwise</source>
   <translation>Was anders ist</translation>
  </message>
  <message>
   <source>What is scanned comes here; an entry is taken back by another one.</source>
   <translation>Gescanntes kommt hierher; ein Eintrag wird durch einen weiteren aufgehoben.</translation>
  </message>
  <message>
   <source>What is supplied and done.</source>
   <translation>Was geliefert und getan wird.</translation>
  </message>
  <message>
   <source>What is the s&amp;tation?</source>
   <translation>Was für eine Tankstelle ist es?</translation>
  </message>
  <message>
   <source>What is weighed</source>
   <translation>Was abgewogen wird</translation>
  </message>
  <message>
   <source>What it changes that sets share part numbers, against each position chosen for itself</source>
   <translation>Was es ändert, dass Sätze Teilenummern teilen, gegen jeden Platz für sich gewählt</translation>
  </message>
  <message>
   <source>What it does</source>
   <translation>Was es tut</translation>
  </message>
  <message>
   <source>What it is</source>
   <translation>Was es ist</translation>
  </message>
  <message>
   <source>What it is reckoned from.</source>
   <translation>Woraus es sich errechnet.</translation>
  </message>
  <message>
   <source>What it pays for</source>
   <translation>Wofür es bezahlt</translation>
  </message>
  <message>
   <source>What its plate says</source>
   <translation>Was auf dem Schild steht</translation>
  </message>
  <message>
   <source>What lies where, as a paper</source>
   <translation>Was wo liegt, als Papier</translation>
  </message>
  <message>
   <source>What makers take off their lists for you: it makes the cost of the materials.</source>
   <translation>Was Hersteller Ihnen auf ihre Listen nachlassen: Es ergibt die Kosten des Materials.</translation>
  </message>
  <message>
   <source>What meter and pump pass at most.</source>
   <translation>Was Zähler und Pumpe höchstens durchlassen.</translation>
  </message>
  <message>
   <source>What passes through the dispenser's &amp;outlet?</source>
   <translation>Was führt der Abgang der Zapf&amp;säule?</translation>
  </message>
  <message>
   <source>What sets are weighed by beside their price. Spares and drive-offs have pages of their own. All empty: wear by common practice alone.</source>
   <translation>Wonach Sätze neben ihrem Preis abgewogen werden. Ersatz und Schlauchabrisse haben eigene Seiten. Alles leer: nur Verschleiß nach gängiger Praxis.</translation>
  </message>
  <message>
   <source>What speaks for it</source>
   <translation>Was dafür spricht</translation>
  </message>
  <message>
   <source>What stands above the column.</source>
   <translation>Was über der Spalte steht.</translation>
  </message>
  <message>
   <source>What stands behind the chosen combination</source>
   <translation>Was hinter der gewählten Kombination steht</translation>
  </message>
  <message>
   <source>What stands there</source>
   <translation>Was dort steht</translation>
  </message>
  <message>
   <source>What stays, goes and comes, in which order, at what cost, with what effect on emissions.</source>
   <translation>Was bleibt, geht und kommt, in welcher Folge, zu welchen Kosten, mit welcher Wirkung auf die Emissionen.</translation>
  </message>
  <message>
   <source>What stocking another part number is worth, in the currency of the site. Above 0 the sets of the whole station are chosen together, so that like positions get like parts.</source>
   <translation>Was es wert ist, eine weitere Teilenummer nicht zu führen, in der Währung der Tankstelle. Über 0 werden die Sätze der ganzen Tankstelle gemeinsam gewählt, sodass gleiche Plätze gleiche Teile bekommen.</translation>
  </message>
  <message>
   <source>What tells this quotation from others, and how long it stands.</source>
   <translation>Was dieses Angebot von anderen unterscheidet, und wie lange es gilt.</translation>
  </message>
  <message>
   <source>What the book holds of “{name}” is now in {path}.</source>
   <translation>Was das Buch von „{name}“ enthält, steht jetzt in {path}.</translation>
  </message>
  <message>
   <source>What the change means in money</source>
   <translation>Was die Änderung in Geld bedeutet</translation>
  </message>
  <message>
   <source>What the change means in money cannot be told: {0}</source>
   <translation>Was die Änderung in Geld bedeutet, ist nicht zu sagen: {0}</translation>
  </message>
  <message>
   <source>What the column holds.</source>
   <translation>Was die Spalte enthält.</translation>
  </message>
  <message>
   <source>What the columns hold</source>
   <translation>Was die Spalten enthalten</translation>
  </message>
  <message>
   <source>What the conversion rests on</source>
   <translation>Worauf der Umbau beruht</translation>
  </message>
  <message>
   <source>What the dispenser gives</source>
   <translation>Was die Zapfsäule gibt</translation>
  </message>
  <message>
   <source>What the draft of {0} holds otherwise than its newest edition is lost. Discard it?</source>
   <translation>Was der Entwurf von {0} anders enthält als die neueste Ausgabe, geht verloren. Verwerfen?</translation>
  </message>
  <message>
   <source>What the file holds</source>
   <translation>Was die Datei enthält</translation>
  </message>
  <message>
   <source>What the hose serves, how it is stowed, and what the dispenser gives.</source>
   <translation>Was der Schlauch betankt, wie er aufgenommen wird und was die Zapfsäule gibt.</translation>
  </message>
  <message>
   <source>What the percentage is taken from.</source>
   <translation>Wovon der Prozentsatz genommen wird.</translation>
  </message>
  <message>
   <source>What the quotation is for.</source>
   <translation>Wofür das Angebot ist.</translation>
  </message>
  <message>
   <source>What the survey asks is worked out anyway; a case says what would be otherwise beside it.</source>
   <translation>Was die Aufnahme verlangt, wird ohnehin gerechnet; ein Fall sagt, was dabei anders wäre.</translation>
  </message>
  <message>
   <source>What this position asks of its set</source>
   <translation>Was dieser Platz von seinem Satz verlangt</translation>
  </message>
  <message>
   <source>What this program can and cannot say.</source>
   <translation>Was dieses Programm sagen kann und was nicht.</translation>
  </message>
  <message>
   <source>What to do</source>
   <translation>Was zu tun ist</translation>
  </message>
  <message>
   <source>What to look at</source>
   <translation>Was anzusehen ist</translation>
  </message>
  <message>
   <source>What to measure on site</source>
   <translation>Was an der Station zu messen ist</translation>
  </message>
  <message>
   <source>What was found</source>
   <translation>Was gefunden wurde</translation>
  </message>
  <message>
   <source>What was found about it</source>
   <translation>Was dazu gefunden wurde</translation>
  </message>
  <message>
   <source>What was not scanned in it is listed, and counted as none where you say so</source>
   <translation>Was in ihr nicht gescannt wurde, wird aufgezählt und auf Ihr Wort als nichts gezählt</translation>
  </message>
  <message>
   <source>What will change</source>
   <translation>Was sich ändert</translation>
  </message>
  <message>
   <source>What will change ({0})</source>
   <translation>Was sich ändert ({0})</translation>
  </message>
  <message>
   <source>What would be otherwise</source>
   <translation>Was anders wäre</translation>
  </message>
  <message>
   <source>What would be right</source>
   <translation>Was richtig wäre</translation>
  </message>
  <message>
   <source>What would help</source>
   <translation>Was helfen würde</translation>
  </message>
  <message>
   <source>When</source>
   <translation>Wann</translation>
  </message>
  <message>
   <source>Where it goes, where that is elsewhere.</source>
   <translation>Wohin geliefert wird, wo das anderswo ist.</translation>
  </message>
  <message>
   <source>Where own shares come from</source>
   <translation>Woher eigene Anteile stammen</translation>
  </message>
  <message>
   <source>Where permission is open, nothing is ordered before it.</source>
   <translation>Wo die Erlaubnis offen ist, wird vorher nichts bestellt.</translation>
  </message>
  <message>
   <source>Where the cord's cla&amp;mp sits on the hose</source>
   <translation>Wo die Schelle am Schlauch &amp;sitzt</translation>
  </message>
  <message>
   <source>Where the quotation stands</source>
   <translation>Wo das Angebot steht</translation>
  </message>
  <message>
   <source>Where the rate was read.</source>
   <translation>Wo der Kurs gelesen wurde.</translation>
  </message>
  <message>
   <source>Where the set that is planned hangs here already.</source>
   <translation>Wo der geplante Satz schon hängt.</translation>
  </message>
  <message>
   <source>Where the terms of the next quotation come from</source>
   <translation>Woher die Bedingungen des nächsten Angebots kommen</translation>
  </message>
  <message>
   <source>Where yes, one riser at the dispenser and one end at the tank are closed for each grade.</source>
   <translation>Wenn ja, werden je Sorte ein Steigrohr an der Säule und ein Ende am Tank geschlossen.</translation>
  </message>
  <message>
   <source>Where yes, the unit is disconnected and its power isolated before the first dispenser is opened.</source>
   <translation>Wenn ja, wird sie vor dem Öffnen der ersten Säule abgeklemmt und spannungsfrei geschaltet.</translation>
  </message>
  <message>
   <source>Where {where} shows “{shows}”: {field} becomes “{to}”</source>
   <translation>Wo {where} „{shows}“ zeigt: {field} wird „{to}“</translation>
  </message>
  <message>
   <source>Whether a part of which only one is installed has a share in the spares.</source>
   <translation>Ob ein Teil, von dem nur eines eingebaut ist, am Ersatz teilhat.</translation>
  </message>
  <message>
   <source>Which &amp;liquid is sold here?</source>
   <translation>Welche &amp;Flüssigkeit wird hier verkauft?</translation>
  </message>
  <message>
   <source>Which &amp;tank feeds the position?</source>
   <translation>Welcher Tan&amp;k speist den Platz?</translation>
  </message>
  <message>
   <source>Which answers</source>
   <translation>Welche Antworten</translation>
  </message>
  <message>
   <source>Which breakaways it draws on.</source>
   <translation>Von welchen Abreißkupplungen er abhängt.</translation>
  </message>
  <message>
   <source>Which hoses it draws on.</source>
   <translation>Von welchen Schläuchen er abhängt.</translation>
  </message>
  <message>
   <source>Which limits apply. The adopted code and the authority having jurisdiction decide; ask them where a row is unconfirmed.</source>
   <translation>Welche Grenzwerte gelten. Die geltende Vorschrift und die zuständige Behörde entscheiden; fragen, wo eine Zeile unbestätigt ist.</translation>
  </message>
  <message>
   <source>Which way</source>
   <translation>Welcher Weg</translation>
  </message>
  <message>
   <source>Which way a rest goes.</source>
   <translation>Wohin ein Rest geht.</translation>
  </message>
  <message>
   <source>Which way do lists, sequence and money follow?</source>
   <translation>Welchem Weg folgen Listen, Ablauf und Geld?</translation>
  </message>
  <message>
   <source>While out of service.</source>
   <translation>Während der Sperrung.</translation>
  </message>
  <message>
   <source>Who</source>
   <translation>Wer</translation>
  </message>
  <message>
   <source>Who answers for it</source>
   <translation>Wer dafür einsteht</translation>
  </message>
  <message>
   <source>Who answers questions.</source>
   <translation>Wer Fragen beantwortet.</translation>
  </message>
  <message>
   <source>Who did it</source>
   <translation>Wer es getan hat</translation>
  </message>
  <message>
   <source>Who is quoted to.</source>
   <translation>Wem angeboten wird.</translation>
  </message>
  <message>
   <source>Who makes it</source>
   <translation>Wer es herstellt</translation>
  </message>
  <message>
   <source>Who publishes it</source>
   <translation>Wer sie veröffentlicht</translation>
  </message>
  <message>
   <source>Who quotes. It stands at the top of the quotation.</source>
   <translation>Wer anbietet. Steht oben auf dem Angebot.</translation>
  </message>
  <message>
   <source>Who supplies the parts</source>
   <translation>Wer die Teile liefert</translation>
  </message>
  <message>
   <source>Whoever orders and stocks the parts</source>
   <translation>Wer die Teile bestellt und lagert</translation>
  </message>
  <message>
   <source>Whole drawing</source>
   <translation>Ganze Zeichnung</translation>
  </message>
  <message>
   <source>Whole station</source>
   <translation>Ganze Station</translation>
  </message>
  <message>
   <source>Whom the bill is for. New quotations go to the customer of this name in the book.</source>
   <translation>Für wen die Stückliste ist. Neue Angebote gehen an den Kunden dieses Namens im Buch.</translation>
  </message>
  <message>
   <source>Whose e&amp;mission factors?</source>
   <translation>Wessen Emissions&amp;faktoren?</translation>
  </message>
  <message>
   <source>Whose figures are shown</source>
   <translation>Wessen Angaben gezeigt werden</translation>
  </message>
  <message>
   <source>Whose pages</source>
   <translation>Wessen Seiten</translation>
  </message>
  <message>
   <source>Whose rule on removal applies?</source>
   <translation>&amp;Wessen Regel zum Abbau gilt?</translation>
  </message>
  <message>
   <source>Why</source>
   <translation>Warum</translation>
  </message>
  <message>
   <source>Why no set fits</source>
   <translation>Warum kein Satz passt</translation>
  </message>
  <message>
   <source>Why the lists do not hold.</source>
   <translation>Warum die Listen nicht gelten.</translation>
  </message>
  <message>
   <source>Why the site lies in its year</source>
   <translation>Warum die Tankstelle in diesem Jahr an der Reihe ist</translation>
  </message>
  <message>
   <source>Why these parts</source>
   <translation>Warum diese Teile</translation>
  </message>
  <message>
   <source>Why this price applies</source>
   <translation>Warum dieser Preis gilt</translation>
  </message>
  <message>
   <source>Why?</source>
   <translation>Warum?</translation>
  </message>
  <message>
   <source>Windows-1252</source>
   <translation>Windows-1252</translation>
  </message>
  <message>
   <source>Wishes</source>
   <translation>Wünsche</translation>
  </message>
  <message>
   <source>With all figures the part is judged like a new one and may stay; without any, it goes.</source>
   <translation>Mit allen Zahlen wird das Teil wie ein neues beurteilt und darf bleiben; ohne Zahlen geht es.</translation>
  </message>
  <message>
   <source>With or without biodiesel</source>
   <translation>Mit oder ohne Biodiesel</translation>
  </message>
  <message>
   <source>With or without ethanol</source>
   <translation>Mit oder ohne Ethanol</translation>
  </message>
  <message>
   <source>With what the job of this survey takes</source>
   <translation>Mit dem, was die Arbeit dieser Aufnahme braucht</translation>
  </message>
  <message>
   <source>Without breaking the ground.</source>
   <translation>Ohne den Boden aufzubrechen.</translation>
  </message>
  <message>
   <source>Without daily and weekly looks</source>
   <translation>Ohne tägliche und wöchentliche Blicke</translation>
  </message>
  <message>
   <source>Without it no payback is shown.</source>
   <translation>Ohne ihn wird keine Amortisation gezeigt.</translation>
  </message>
  <message>
   <source>Without price: {parts}.</source>
   <translation>Ohne Preis: {parts}.</translation>
  </message>
  <message>
   <source>Without terms the yearly cost is wear alone. Terms add drive-offs, losses through hoses and spares.</source>
   <translation>Ohne Bedingungen sind die Kosten im Jahr nur Verschleiß. Bedingungen fügen Abrisse, durch Schläuche verlorene Flüssigkeit und Ersatzteile hinzu.</translation>
  </message>
  <message>
   <source>Word or text there</source>
   <translation>Wort oder Text dort</translation>
  </message>
  <message>
   <source>Words between blanks, of: {0}</source>
   <translation>Wörter zwischen Leerzeichen, aus: {0}</translation>
  </message>
  <message>
   <source>Words to look for</source>
   <translation>Gesuchte Wörter</translation>
  </message>
  <message>
   <source>Work done by</source>
   <translation>Ausgeführt von</translation>
  </message>
  <message>
   <source>Work due at all stations</source>
   <translation>Fällige Arbeiten an allen Stationen</translation>
  </message>
  <message>
   <source>Work in hand</source>
   <translation>Laufende Arbeit</translation>
  </message>
  <message>
   <source>Work it out</source>
   <translation>Ausrechnen</translation>
  </message>
  <message>
   <source>Work out the conversion</source>
   <translation>Umbau ausrechnen</translation>
  </message>
  <message>
   <source>Workbook (XLSX)</source>
   <translation>Arbeitsmappe (XLSX)</translation>
  </message>
  <message>
   <source>Worked lines</source>
   <translation>Rechnungen</translation>
  </message>
  <message>
   <source>Working hours o&amp;f a day</source>
   <translation>A&amp;rbeitsstunden am Tag</translation>
  </message>
  <message>
   <source>Working out all positions…</source>
   <translation>Alle Plätze werden ausgearbeitet…</translation>
  </message>
  <message>
   <source>Working out the cases…</source>
   <translation>Die Fälle werden durchgerechnet…</translation>
  </message>
  <message>
   <source>Working out what is due…</source>
   <translation>Was fällig ist, wird ermittelt…</translation>
  </message>
  <message>
   <source>Worth of one part number &amp;less</source>
   <translation>Wert einer Teilenummer &amp;weniger</translation>
  </message>
  <message>
   <source>Wound on a drum</source>
   <translation>Auf eine Trommel gewickelt</translation>
  </message>
  <message>
   <source>Write into chosen cells</source>
   <translation>In die gewählten Zellen schreiben</translation>
  </message>
  <message>
   <source>Write into column</source>
   <translation>In Spalte schreiben</translation>
  </message>
  <message>
   <source>Write into every row that shows a text</source>
   <translation>In jede Zeile schreiben, die einen Text zeigt</translation>
  </message>
  <message>
   <source>Write the maker and the number of the part as the maker writes it.</source>
   <translation>Hersteller und Nummer des Teils so schreiben, wie der Hersteller sie schreibt.</translation>
  </message>
  <message>
   <source>Write the survey</source>
   <translation>Aufnahme schreiben</translation>
  </message>
  <message>
   <source>Write these terms into a file (Ctrl+S)</source>
   <translation>Diese Bedingungen in eine Datei schreiben (Strg+S)</translation>
  </message>
  <message>
   <source>Write this survey to a file. The book keeps every change by itself.</source>
   <translation>Diese Aufnahme in eine Datei schreiben. Das Buch hält jede Änderung von selbst.</translation>
  </message>
  <message>
   <source>Write to a file…</source>
   <translation>In eine Datei schreiben…</translation>
  </message>
  <message>
   <source>Write your name first: it stands on record with this step.</source>
   <translation>Erst Ihren Namen schreiben: er bleibt bei diesem Schritt festgehalten.</translation>
  </message>
  <message>
   <source>Write {0} cells</source>
   <translation>{0} Zellen schreiben</translation>
  </message>
  <message>
   <source>Write {0} of {1}</source>
   <translation>{0} von {1} schreiben</translation>
  </message>
  <message>
   <source>Writes a mail with this paper attached and opens it in your mail program; nothing is sent by itself.</source>
   <translation>Schreibt eine E-Mail mit diesem Papier im Anhang und öffnet sie in Ihrem Mailprogramm; nichts wird von selbst gesendet.</translation>
  </message>
  <message>
   <source>Writes what the book holds of a survey that cannot be read into a file</source>
   <translation>Schreibt in eine Datei, was das Buch von einer nicht lesbaren Aufnahme enthält</translation>
  </message>
  <message>
   <source>Written as YYYY-MM-DD.</source>
   <translation>Geschrieben als JJJJ-MM-TT.</translation>
  </message>
  <message>
   <source>Written to {0}</source>
   <translation>Geschrieben nach {0}</translation>
  </message>
  <message>
   <source>Written to {path}</source>
   <translation>Geschrieben nach {path}</translation>
  </message>
  <message>
   <source>Year</source>
   <translation>Jahr</translation>
  </message>
  <message>
   <source>Year in which the agency wants it done</source>
   <translation>Jahr, bis zu dessen Ende die Behörde es verlangt</translation>
  </message>
  <message>
   <source>Year or rank</source>
   <translation>Jahr oder Rang</translation>
  </message>
  <message>
   <source>Year-month-day, such as 2027-03-01: the day of the notice. A calendar needs it.</source>
   <translation>Jahr-Monat-Tag, etwa 2027-03-01: der Tag der Anzeige. Ein Kalender braucht ihn.</translation>
  </message>
  <message>
   <source>Year-month-day.</source>
   <translation>Jahr-Monat-Tag.</translation>
  </message>
  <message>
   <source>Year-month-day. Prices that are valid on this day are used.</source>
   <translation>Jahr-Monat-Tag. Es gelten die Preise von diesem Tag.</translation>
  </message>
  <message>
   <source>Yearly &amp;upkeep today</source>
   <translation>Jähr&amp;licher Unterhalt heute</translation>
  </message>
  <message>
   <source>Yearly cost</source>
   <translation>Kosten im Jahr</translation>
  </message>
  <message>
   <source>Yearly upkeep &amp;afterwards</source>
   <translation>&amp;Jährlicher Unterhalt danach</translation>
  </message>
  <message>
   <source>Years</source>
   <translation>Jahre</translation>
  </message>
  <message>
   <source>Years that are compared</source>
   <translation>Jahre im Vergleich</translation>
  </message>
  <message>
   <source>Years, sites and money, as a paper</source>
   <translation>Jahre, Tankstellen und Geld als Papier</translation>
  </message>
  <message>
   <source>Years, sites, visits and terms (XLSX)</source>
   <translation>Jahre, Tankstellen, Einsätze und Vorgaben (XLSX)</translation>
  </message>
  <message>
   <source>Yes</source>
   <translation>Ja</translation>
  </message>
  <message>
   <source>Your changes are in the book; a newer revision too</source>
   <translation>Ihre Änderungen sind im Buch; eine neuere Revision auch</translation>
  </message>
  <message>
   <source>Your name</source>
   <translation>Ihr Name</translation>
  </message>
  <message>
   <source>Your own parts and prices: suppliers' tables taken over, looked at, published as editions.</source>
   <translation>Eigene Teile und Preise: Tabellen von Lieferanten übernommen, durchgesehen, als Ausgaben veröffentlicht.</translation>
  </message>
  <message>
   <source>Your own quotation number, or a pattern for the book: {year}-{serial:04}.</source>
   <translation>Ihre eigene Angebotsnummer oder ein Muster für das Buch: {year}-{serial:04}.</translation>
  </message>
  <message>
   <source>Your text</source>
   <translation>Ihr Text</translation>
  </message>
  <message>
   <source>a day is needed</source>
   <translation>ein Tag wird gebraucht</translation>
  </message>
  <message>
   <source>a fixed amount</source>
   <translation>ein fester Betrag</translation>
  </message>
  <message>
   <source>a note</source>
   <translation>ein Hinweis</translation>
  </message>
  <message>
   <source>a photo of the record</source>
   <translation>ein Foto des Protokolls</translation>
  </message>
  <message>
   <source>a question is open</source>
   <translation>eine Frage ist offen</translation>
  </message>
  <message>
   <source>a whole number from 0 to {0} is needed</source>
   <translation>eine ganze Zahl von 0 bis {0} ist nötig</translation>
  </message>
  <message>
   <source>accepted</source>
   <translation>angenommen</translation>
  </message>
  <message>
   <source>agreed</source>
   <translation>vereinbart</translation>
  </message>
  <message>
   <source>always downwards</source>
   <translation>immer abwärts</translation>
  </message>
  <message>
   <source>always upwards</source>
   <translation>immer aufwärts</translation>
  </message>
  <message>
   <source>an amount for each kilogram</source>
   <translation>ein Betrag je Kilogramm</translation>
  </message>
  <message>
   <source>an assumed figure, to be confirmed</source>
   <translation>eine angenommene Zahl, zu bestätigen</translation>
  </message>
  <message>
   <source>and {0} more</source>
   <translation>und {0} weitere</translation>
  </message>
  <message>
   <source>any</source>
   <translation>beliebig</translation>
  </message>
  <message>
   <source>applies</source>
   <translation>gilt</translation>
  </message>
  <message>
   <source>as agreed</source>
   <translation>wie vereinbart</translation>
  </message>
  <message>
   <source>as before</source>
   <translation>wie zuvor</translation>
  </message>
  <message>
   <source>as built</source>
   <translation>wie gebaut</translation>
  </message>
  <message>
   <source>as changed in the window</source>
   <translation>wie im Fenster geändert</translation>
  </message>
  <message>
   <source>as in the table</source>
   <translation>wie in der Tabelle</translation>
  </message>
  <message>
   <source>as in the worked example</source>
   <translation>wie im Rechenbeispiel</translation>
  </message>
  <message>
   <source>as planned</source>
   <translation>wie geplant</translation>
  </message>
  <message>
   <source>as published</source>
   <translation>wie veröffentlicht</translation>
  </message>
  <message>
   <source>as the agency asks</source>
   <translation>wie die Behörde es verlangt</translation>
  </message>
  <message>
   <source>as the code says, else 1</source>
   <translation>wie der Code sagt, sonst 1</translation>
  </message>
  <message>
   <source>at most </source>
   <translation>höchstens </translation>
  </message>
  <message>
   <source>being planned</source>
   <translation>wird geplant</translation>
  </message>
  <message>
   <source>being worked out</source>
   <translation>wird ermittelt</translation>
  </message>
  <message>
   <source>book</source>
   <translation>Buch</translation>
  </message>
  <message>
   <source>built</source>
   <translation>gebaut</translation>
  </message>
  <message>
   <source>built in</source>
   <translation>eingebaut</translation>
  </message>
  <message>
   <source>by positions</source>
   <translation>nach Plätzen</translation>
  </message>
  <message>
   <source>cannot be planned</source>
   <translation>nicht planbar</translation>
  </message>
  <message>
   <source>caution</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <source>changed</source>
   <translation>geändert</translation>
  </message>
  <message>
   <source>choose a cell further left: the table ends after {0} columns</source>
   <translation>eine Zelle weiter links wählen: die Tabelle endet nach {0} Spalten</translation>
  </message>
  <message>
   <source>choose, or write such as 1 1/2 NPT male</source>
   <translation>wählen oder schreiben, etwa 1 1/2 NPT male</translation>
  </message>
  <message>
   <source>choose, or write such as E15</source>
   <translation>wählen oder schreiben, etwa E15</translation>
  </message>
  <message>
   <source>columns</source>
   <translation>Spalten</translation>
  </message>
  <message>
   <source>complete</source>
   <translation>vollständig</translation>
  </message>
  <message>
   <source>cost and a mark-up on it</source>
   <translation>Kosten und ein Aufschlag darauf</translation>
  </message>
  <message>
   <source>cost with a margin on the selling price</source>
   <translation>Kosten mit einer Marge auf den Verkaufspreis</translation>
  </message>
  <message>
   <source>costs less</source>
   <translation>kostet weniger</translation>
  </message>
  <message>
   <source>costs more</source>
   <translation>kostet mehr</translation>
  </message>
  <message>
   <source>data sheet</source>
   <translation>Datenblatt</translation>
  </message>
  <message>
   <source>date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <source>dated {0}</source>
   <translation>vom {0}</translation>
  </message>
  <message>
   <source>day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>day of handing over</source>
   <translation>Tag der Übergabe</translation>
  </message>
  <message>
   <source>declined</source>
   <translation>abgelehnt</translation>
  </message>
  <message>
   <source>dispenser</source>
   <translation>Zapfsäule</translation>
  </message>
  <message>
   <source>dispenser {0}</source>
   <translation>Zapfsäule {0}</translation>
  </message>
  <message>
   <source>does not fit</source>
   <translation>passt nicht</translation>
  </message>
  <message>
   <source>does not list this part</source>
   <translation>führt dieses Teil nicht</translation>
  </message>
  <message>
   <source>draft</source>
   <translation>Entwurf</translation>
  </message>
  <message>
   <source>drafted</source>
   <translation>entworfen</translation>
  </message>
  <message>
   <source>edition {0}</source>
   <translation>Ausgabe {0}</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>leer</translation>
  </message>
  <message>
   <source>empty:</source>
   <translation>leer:</translation>
  </message>
  <message>
   <source>empty: no limit</source>
   <translation>leer: keine Grenze</translation>
  </message>
  <message>
   <source>empty: no picture</source>
   <translation>leer: kein Bild</translation>
  </message>
  <message>
   <source>empty: none</source>
   <translation>leer: keine</translation>
  </message>
  <message>
   <source>empty: {0}</source>
   <translation>leer: {0}</translation>
  </message>
  <message>
   <source>ended</source>
   <translation>abgelaufen</translation>
  </message>
  <message>
   <source>every dispenser</source>
   <translation>jede Zapfsäule</translation>
  </message>
  <message>
   <source>every kind</source>
   <translation>jede Art</translation>
  </message>
  <message>
   <source>every status</source>
   <translation>jeder Stand</translation>
  </message>
  <message>
   <source>expired</source>
   <translation>abgelaufen</translation>
  </message>
  <message>
   <source>families changed</source>
   <translation>Familien geändert</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>Fuß</translation>
  </message>
  <message>
   <source>file=year; file=year, such as north.json=2028</source>
   <translation>Datei=Jahr; Datei=Jahr, etwa nord.json=2028</translation>
  </message>
  <message>
   <source>fits</source>
   <translation>passt</translation>
  </message>
  <message>
   <source>fits, good practice not met in full</source>
   <translation>passt, gute Praxis nicht ganz erfüllt</translation>
  </message>
  <message>
   <source>for each line</source>
   <translation>je Zeile</translation>
  </message>
  <message>
   <source>from the family {0}</source>
   <translation>aus der Familie {0}</translation>
  </message>
  <message>
   <source>from the similar part {0}</source>
   <translation>vom ähnlichen Teil {0}</translation>
  </message>
  <message>
   <source>from, such as 2027-01-01</source>
   <translation>ab, etwa 2027-01-01</translation>
  </message>
  <message>
   <source>gets a set</source>
   <translation>bekommt einen Satz</translation>
  </message>
  <message>
   <source>gets other parts</source>
   <translation>bekommt andere Teile</translation>
  </message>
  <message>
   <source>gone</source>
   <translation>entfallen</translation>
  </message>
  <message>
   <source>in order</source>
   <translation>in Ordnung</translation>
  </message>
  <message>
   <source>instructions</source>
   <translation>Anleitung</translation>
  </message>
  <message>
   <source>is in a currency that is not wanted</source>
   <translation>in einer Währung, die nicht gewünscht ist</translation>
  </message>
  <message>
   <source>is of another supplier</source>
   <translation>von einem anderen Lieferanten</translation>
  </message>
  <message>
   <source>issued</source>
   <translation>ausgegeben</translation>
  </message>
  <message>
   <source>its answers go &amp;before those of the positions</source>
   <translation>seine Antworten gehen &amp;vor die der Plätze</translation>
  </message>
  <message>
   <source>its last day is over</source>
   <translation>sein letzter Tag ist vorbei</translation>
  </message>
  <message>
   <source>left out</source>
   <translation>ausgelassen</translation>
  </message>
  <message>
   <source>list price less a discount</source>
   <translation>Listenpreis abzüglich Rabatt</translation>
  </message>
  <message>
   <source>list price: {0}</source>
   <translation>Listenpreis: {0}</translation>
  </message>
  <message>
   <source>listing certificate</source>
   <translation>Bescheinigung der Listung</translation>
  </message>
  <message>
   <source>looking…</source>
   <translation>gesucht…</translation>
  </message>
  <message>
   <source>loses its set</source>
   <translation>verliert seinen Satz</translation>
  </message>
  <message>
   <source>made from its parts</source>
   <translation>aus seinen Teilen gebildet</translation>
  </message>
  <message>
   <source>maker</source>
   <translation>Hersteller</translation>
  </message>
  <message>
   <source>meters</source>
   <translation>Meter</translation>
  </message>
  <message>
   <source>much like {0}</source>
   <translation>fast wie {0}</translation>
  </message>
  <message>
   <source>my_county</source>
   <translation>mein_bezirk</translation>
  </message>
  <message>
   <source>name of the list</source>
   <translation>Name der Liste</translation>
  </message>
  <message>
   <source>needs a look</source>
   <translation>ansehen</translation>
  </message>
  <message>
   <source>new</source>
   <translation>neu</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>no address yet</source>
   <translation>noch keine Anschrift</translation>
  </message>
  <message>
   <source>no age limit</source>
   <translation>keine Altersgrenze</translation>
  </message>
  <message>
   <source>no figure</source>
   <translation>keine Zahl</translation>
  </message>
  <message>
   <source>no listing</source>
   <translation>keine Listung</translation>
  </message>
  <message>
   <source>no longer in the catalog</source>
   <translation>nicht mehr im Katalog</translation>
  </message>
  <message>
   <source>no longer made</source>
   <translation>nicht mehr hergestellt</translation>
  </message>
  <message>
   <source>no set</source>
   <translation>kein Satz</translation>
  </message>
  <message>
   <source>no spare</source>
   <translation>kein Ersatz</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keiner</translation>
  </message>
  <message>
   <source>none is known</source>
   <translation>keines bekannt</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>noch keins</translation>
  </message>
  <message>
   <source>not answered yet</source>
   <translation>noch nicht beantwortet</translation>
  </message>
  <message>
   <source>not chosen in any option</source>
   <translation>in keiner Variante gewählt</translation>
  </message>
  <message>
   <source>not dated</source>
   <translation>ohne Datum</translation>
  </message>
  <message>
   <source>not decided whether it would do</source>
   <translation>nicht entschieden, ob es ginge</translation>
  </message>
  <message>
   <source>not in order</source>
   <translation>nicht in Ordnung</translation>
  </message>
  <message>
   <source>not in the table</source>
   <translation>nicht in der Tabelle</translation>
  </message>
  <message>
   <source>not kept yet</source>
   <translation>noch nicht aufbewahrt</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>not known here</source>
   <translation>hier nicht bekannt</translation>
  </message>
  <message>
   <source>not known, none counted</source>
   <translation>nicht bekannt, keiner gerechnet</translation>
  </message>
  <message>
   <source>not noted which</source>
   <translation>nicht vermerkt, welche</translation>
  </message>
  <message>
   <source>not open</source>
   <translation>nicht offen</translation>
  </message>
  <message>
   <source>not recorded</source>
   <translation>nicht festgehalten</translation>
  </message>
  <message>
   <source>not said</source>
   <translation>nicht gesagt</translation>
  </message>
  <message>
   <source>not stated</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>not surveyed yet</source>
   <translation>noch nicht aufgenommen</translation>
  </message>
  <message>
   <source>not valid yet</source>
   <translation>noch nicht gültig</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>nothing agreed</source>
   <translation>nichts vereinbart</translation>
  </message>
  <message>
   <source>of {0}</source>
   <translation>von {0}</translation>
  </message>
  <message>
   <source>offered in its place</source>
   <translation>an seiner Stelle angeboten</translation>
  </message>
  <message>
   <source>old numbers changed</source>
   <translation>alte Nummern geändert</translation>
  </message>
  <message>
   <source>once for the whole quotation</source>
   <translation>einmal für das ganze Angebot</translation>
  </message>
  <message>
   <source>one for all, or one for each: 1, 2, 2, 3</source>
   <translation>eine für alle oder eine je Säule: 1, 2, 2, 3</translation>
  </message>
  <message>
   <source>open</source>
   <translation>offen</translation>
  </message>
  <message>
   <source>own</source>
   <translation>eigene</translation>
  </message>
  <message>
   <source>part number</source>
   <translation>Teilenummer</translation>
  </message>
  <message>
   <source>pasted</source>
   <translation>eingefügt</translation>
  </message>
  <message>
   <source>percent of the materials</source>
   <translation>Prozent des Materials</translation>
  </message>
  <message>
   <source>picture</source>
   <translation>Bild</translation>
  </message>
  <message>
   <source>planned, not agreed</source>
   <translation>geplant, nicht vereinbart</translation>
  </message>
  <message>
   <source>planned; others agreed</source>
   <translation>geplant; anderes vereinbart</translation>
  </message>
  <message>
   <source>position {0}</source>
   <translation>Platz {0}</translation>
  </message>
  <message>
   <source>price</source>
   <translation>Preis</translation>
  </message>
  <message>
   <source>price list</source>
   <translation>Preisliste</translation>
  </message>
  <message>
   <source>price lists changed</source>
   <translation>Preislisten geändert</translation>
  </message>
  <message>
   <source>price lists new, changed or taken out: {lists}</source>
   <translation>Preislisten neu, geändert oder entfallen: {lists}</translation>
  </message>
  <message>
   <source>price {0:+.0%}</source>
   <translation>Preis {0:+.0%}</translation>
  </message>
  <message>
   <source>program</source>
   <translation>programm</translation>
  </message>
  <message>
   <source>put in {0}; set {1}</source>
   <translation>einzubauen: {0}; Satz {1}</translation>
  </message>
  <message>
   <source>quoted again, not kept yet</source>
   <translation>neu angeboten, noch nicht aufbewahrt</translation>
  </message>
  <message>
   <source>read out of its text: {0}</source>
   <translation>aus seinem Text gelesen: {0}</translation>
  </message>
  <message>
   <source>reason</source>
   <translation>Grund</translation>
  </message>
  <message>
   <source>replaced by its maker</source>
   <translation>vom Hersteller ersetzt</translation>
  </message>
  <message>
   <source>replaced by its maker: {0}</source>
   <translation>vom Hersteller ersetzt: {0}</translation>
  </message>
  <message>
   <source>r{0}</source>
   <translation>r{0}</translation>
  </message>
  <message>
   <source>same</source>
   <translation>gleich</translation>
  </message>
  <message>
   <source>say why: it stands on the paper</source>
   <translation>sagen, warum: es steht auf dem Papier</translation>
  </message>
  <message>
   <source>sells this part only from a greater quantity</source>
   <translation>verkauft dieses Teil erst ab einer größeren Menge</translation>
  </message>
  <message>
   <source>share in the spares</source>
   <translation>am Ersatz beteiligt</translation>
  </message>
  <message>
   <source>site</source>
   <translation>Tankstelle</translation>
  </message>
  <message>
   <source>site visit</source>
   <translation>Besuch</translation>
  </message>
  <message>
   <source>size</source>
   <translation>Größe</translation>
  </message>
  <message>
   <source>somebody has to answer for a price</source>
   <translation>jemand muss für einen Preis einstehen</translation>
  </message>
  <message>
   <source>something is still needed</source>
   <translation>etwas fehlt noch</translation>
  </message>
  <message>
   <source>stock list</source>
   <translation>Bestandsliste</translation>
  </message>
  <message>
   <source>such as 1 1/2 NPT male</source>
   <translation>etwa 1 1/2 NPT male</translation>
  </message>
  <message>
   <source>such as 2027</source>
   <translation>etwa 2027</translation>
  </message>
  <message>
   <source>such as E30</source>
   <translation>etwa E30</translation>
  </message>
  <message>
   <source>supplier</source>
   <translation>Lieferant</translation>
  </message>
  <message>
   <source>the catalog states otherwise: {0}</source>
   <translation>der Katalog sagt anderes: {0}</translation>
  </message>
  <message>
   <source>the file of the terms</source>
   <translation>die Datei der Bedingungen</translation>
  </message>
  <message>
   <source>the filled form</source>
   <translation>der ausgefüllte Bogen</translation>
  </message>
  <message>
   <source>the name of the file</source>
   <translation>der Name der Datei</translation>
  </message>
  <message>
   <source>the newest is revision {0}</source>
   <translation>die neueste ist Revision {0}</translation>
  </message>
  <message>
   <source>the start view</source>
   <translation>der Startansicht</translation>
  </message>
  <message>
   <source>the straight way</source>
   <translation>der gerade Weg</translation>
  </message>
  <message>
   <source>the survey that was open last</source>
   <translation>der zuletzt offenen Aufnahme</translation>
  </message>
  <message>
   <source>the usual figure for the duty</source>
   <translation>der übliche Wert für den Einsatz</translation>
  </message>
  <message>
   <source>the usual figure of the local rules</source>
   <translation>der übliche Wert der örtlichen Regeln</translation>
  </message>
  <message>
   <source>the usual ones</source>
   <translation>die üblichen</translation>
  </message>
  <message>
   <source>the very part</source>
   <translation>dasselbe Teil</translation>
  </message>
  <message>
   <source>the whole station</source>
   <translation>die ganze Tankstelle</translation>
  </message>
  <message>
   <source>there</source>
   <translation>vorhanden</translation>
  </message>
  <message>
   <source>this survey</source>
   <translation>diese Aufnahme</translation>
  </message>
  <message>
   <source>those of {number} r{revision}</source>
   <translation>die von {number} r{revision}</translation>
  </message>
  <message>
   <source>title of the copy</source>
   <translation>Titel der Kopie</translation>
  </message>
  <message>
   <source>to</source>
   <translation>bis</translation>
  </message>
  <message>
   <source>to follow up b&amp;y today</source>
   <translation>bis heute nach&amp;zufassen</translation>
  </message>
  <message>
   <source>to the nearest, a half to the even digit</source>
   <translation>zum nächsten, eine Hälfte zur geraden Ziffer</translation>
  </message>
  <message>
   <source>to the nearest, a half upwards</source>
   <translation>zum nächsten, eine Hälfte aufwärts</translation>
  </message>
  <message>
   <source>to the right</source>
   <translation>nach rechts</translation>
  </message>
  <message>
   <source>to {0}</source>
   <translation>an {0}</translation>
  </message>
  <message>
   <source>to; empty: open</source>
   <translation>bis; leer: offen</translation>
  </message>
  <message>
   <source>undoes no. {0}</source>
   <translation>hebt Nr. {0} auf</translation>
  </message>
  <message>
   <source>undone</source>
   <translation>aufgehoben</translation>
  </message>
  <message>
   <source>upward</source>
   <translation>nach oben</translation>
  </message>
  <message>
   <source>valid</source>
   <translation>gültig</translation>
  </message>
  <message>
   <source>valid from</source>
   <translation>gültig ab</translation>
  </message>
  <message>
   <source>valid to</source>
   <translation>gültig bis</translation>
  </message>
  <message>
   <source>what its kind says</source>
   <translation>was seine Art sagt</translation>
  </message>
  <message>
   <source>which blocks the issue</source>
   <translation>was das Abgeben verhindert</translation>
  </message>
  <message>
   <source>with agreement</source>
   <translation>mit Vereinbarung</translation>
  </message>
  <message>
   <source>would apply too: another currency is wanted, or it began earlier</source>
   <translation>würde auch gelten: eine andere Währung ist gewünscht, oder sie begann früher</translation>
  </message>
  <message>
   <source>would not do</source>
   <translation>ginge nicht</translation>
  </message>
  <message>
   <source>write a day such as {0}, or as YYYY-MM-DD</source>
   <translation>einen Tag schreiben wie {0} oder als YYYY-MM-DD</translation>
  </message>
  <message>
   <source>write the day as 2027-03-01</source>
   <translation>den Tag als 2027-03-01 schreiben</translation>
  </message>
  <message>
   <source>write the name of the list and its maker first</source>
   <translation>zuerst den Namen der Liste und ihren Hersteller schreiben</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>yes or no</source>
   <translation>ja oder nein</translation>
  </message>
  <message>
   <source>your name</source>
   <translation>Ihr Name</translation>
  </message>
  <message>
   <source>{0} (stays)</source>
   <translation>{0} (bleibt)</translation>
  </message>
  <message>
   <source>{0} against the first option</source>
   <translation>{0} gegenüber der ersten Variante</translation>
  </message>
  <message>
   <source>{0} as it is in hand, and as the survey and the terms in hand would be quoted now.</source>
   <translation>{0}, wie es vorliegt, und wie Aufnahme und vorliegende Bedingungen jetzt angeboten würden.</translation>
  </message>
  <message>
   <source>{0} as it is, and with {1} instead of {2}.</source>
   <translation>{0}, wie es ist, und mit {1} anstelle von {2}.</translation>
  </message>
  <message>
   <source>{0} differences</source>
   <translation>{0} Unterschiede</translation>
  </message>
  <message>
   <source>{0} entries</source>
   <translation>{0} Einträge</translation>
  </message>
  <message>
   <source>{0} entries, the first {1} shown</source>
   <translation>{0} Einträge, die ersten {1} gezeigt</translation>
  </message>
  <message>
   <source>{0} files are in {1}</source>
   <translation>{0} Dateien liegen in {1}</translation>
  </message>
  <message>
   <source>{0} instead of {1}</source>
   <translation>{0} anstelle von {1}</translation>
  </message>
  <message>
   <source>{0} is a table of positions: begin a survey first, then drop it here.</source>
   <translation>{0} ist eine Tabelle von Plätzen: zuerst eine Aufnahme beginnen, dann hier ablegen.</translation>
  </message>
  <message>
   <source>{0} is gone</source>
   <translation>{0} ist entfallen</translation>
  </message>
  <message>
   <source>{0} is in the book.</source>
   <translation>{0} steht im Buch.</translation>
  </message>
  <message>
   <source>{0} is new</source>
   <translation>{0} ist neu</translation>
  </message>
  <message>
   <source>{0} is no longer in the list; quotations keep what they have.</source>
   <translation>{0} steht nicht mehr in der Liste; Angebote behalten, was sie haben.</translation>
  </message>
  <message>
   <source>{0} is sold cut to length with its fittings: each length becomes a part that the search may choose.</source>
   <translation>{0} wird mit seinen Armaturen auf Länge geschnitten verkauft: jede Länge wird ein Teil, das die Suche wählen kann.</translation>
  </message>
  <message>
   <source>{0} is the customer of this station from now on.</source>
   <translation>{0} ist von jetzt an der Kunde dieser Tankstelle.</translation>
  </message>
  <message>
   <source>{0} lengths, from {1} to {2}</source>
   <translation>{0} Längen, von {1} bis {2}</translation>
  </message>
  <message>
   <source>{0} missing, {1} by a person's word, {2} in all.</source>
   <translation>{0} fehlen, {1} auf jemandes Wort, {2} insgesamt.</translation>
  </message>
  <message>
   <source>{0} more than the job needs: bring them back.</source>
   <translation>{0} mehr, als die Arbeit braucht: zurückbringen.</translation>
  </message>
  <message>
   <source>{0} new, {1} changed, {2} as they were</source>
   <translation>{0} neu, {1} geändert, {2} wie zuvor</translation>
  </message>
  <message>
   <source>{0} of {1} are due by today.</source>
   <translation>{0} von {1} sind bis heute fällig.</translation>
  </message>
  <message>
   <source>{0} of {1} are overdue.</source>
   <translation>{0} von {1} sind überfällig.</translation>
  </message>
  <message>
   <source>{0} of {1} built</source>
   <translation>{0} von {1} gebaut</translation>
  </message>
  <message>
   <source>{0} of {1} do not fit</source>
   <translation>{0} von {1} passen nicht</translation>
  </message>
  <message>
   <source>{0} of {1} fit</source>
   <translation>{0} von {1} passen</translation>
  </message>
  <message>
   <source>{0} of {1} positions differ.</source>
   <translation>{0} von {1} Plätzen unterscheiden sich.</translation>
  </message>
  <message>
   <source>{0} of {1} stocked parts of this kind would do.</source>
   <translation>{0} von {1} vorrätigen Teilen dieser Art gingen.</translation>
  </message>
  <message>
   <source>{0} of {1} surveyed</source>
   <translation>{0} von {1} aufgenommen</translation>
  </message>
  <message>
   <source>{0} of {1} that the job needs</source>
   <translation>{0} von {1}, die die Arbeit braucht</translation>
  </message>
  <message>
   <source>{0} of {1}, {2} faulty</source>
   <translation>{0} von {1}, {2} fehlerhaft</translation>
  </message>
  <message>
   <source>{0} old numbers</source>
   <translation>{0} alte Nummern</translation>
  </message>
  <message>
   <source>{0} old numbers, the first {1} shown</source>
   <translation>{0} alte Nummern, die ersten {1} gezeigt</translation>
  </message>
  <message>
   <source>{0} open quotation is touched by a change of catalog or price lists:</source>
   <translation>{0} offenes Angebot ist von einer Änderung an Katalog oder Preislisten berührt:</translation>
  </message>
  <message>
   <source>{0} open quotations are touched by a change of catalog or price lists:</source>
   <translation>{0} offene Angebote sind von einer Änderung an Katalog oder Preislisten berührt:</translation>
  </message>
  <message>
   <source>{0} pages</source>
   <translation>{0} Seiten</translation>
  </message>
  <message>
   <source>{0} part</source>
   <translation>{0} Teil</translation>
  </message>
  <message>
   <source>{0} parts</source>
   <translation>{0} Teile</translation>
  </message>
  <message>
   <source>{0} parts take over the figures that they lack; each figure says from which part it is.</source>
   <translation>{0} Teile übernehmen die Angaben, die ihnen fehlen; jede sagt, von welchem Teil sie ist.</translation>
  </message>
  <message>
   <source>{0} position picked</source>
   <translation>{0} Platz gewählt</translation>
  </message>
  <message>
   <source>{0} positions</source>
   <translation>{0} Plätze</translation>
  </message>
  <message>
   <source>{0} positions picked</source>
   <translation>{0} Plätze gewählt</translation>
  </message>
  <message>
   <source>{0} price is missing</source>
   <translation>{0} Preis fehlt</translation>
  </message>
  <message>
   <source>{0} price lists in the draft now.</source>
   <translation>Jetzt {0} Preislisten im Entwurf.</translation>
  </message>
  <message>
   <source>{0} price lists in this edition; those in folders hold beside them.</source>
   <translation>{0} Preislisten in dieser Ausgabe; die in Ordnern gelten daneben.</translation>
  </message>
  <message>
   <source>{0} prices are missing</source>
   <translation>{0} Preise fehlen</translation>
  </message>
  <message>
   <source>{0} quotation</source>
   <translation>{0} Angebot</translation>
  </message>
  <message>
   <source>{0} quotations</source>
   <translation>{0} Angebote</translation>
  </message>
  <message>
   <source>{0} rows differ from {1}.</source>
   <translation>{0} Zeilen weichen von {1} ab.</translation>
  </message>
  <message>
   <source>{0} rows read…</source>
   <translation>{0} Zeilen gelesen…</translation>
  </message>
  <message>
   <source>{0} r{1}: an older revision</source>
   <translation>{0} r{1}: eine ältere Revision</translation>
  </message>
  <message>
   <source>{0} r{1}: {2}</source>
   <translation>{0} Rev. {1}: {2}</translation>
  </message>
  <message>
   <source>{0} sets are agreed; papers show them from now on.</source>
   <translation>{0} Sätze sind vereinbart; Papiere zeigen sie von nun an.</translation>
  </message>
  <message>
   <source>{0} surveys</source>
   <translation>{0} Aufnahmen</translation>
  </message>
  <message>
   <source>{0} surveys cannot be planned with both.</source>
   <translation>{0} Aufnahmen sind nicht mit beiden planbar.</translation>
  </message>
  <message>
   <source>{0} things to look at under the local rules of this site.</source>
   <translation>{0} Hinweise nach den örtlichen Regeln dieser Tankstelle.</translation>
  </message>
  <message>
   <source>{0}, came since the count began</source>
   <translation>{0}, kamen seit Beginn der Zählung</translation>
  </message>
  <message>
   <source>{0}: installed</source>
   <translation>{0}: eingebaut</translation>
  </message>
  <message>
   <source>{0}: not in the book yet</source>
   <translation>{0}: noch nicht im Buch</translation>
  </message>
  <message>
   <source>{0}: reason</source>
   <translation>{0}: Grund</translation>
  </message>
  <message>
   <source>{0}: the options differ</source>
   <translation>{0}: die Varianten unterscheiden sich</translation>
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
   <translation>{0}: die Aufnahme hat sich seit dem Druck des Blatts geändert. Vor der Arbeit danach neu drucken.</translation>
  </message>
  <message>
   <source>{0}: the survey is as it was when the sheet was printed.</source>
   <translation>{0}: die Aufnahme ist wie beim Druck des Blatts.</translation>
  </message>
  <message>
   <source>{0}: {1} parts have its figures.</source>
   <translation>{0}: {1} Teile haben ihre Angaben.</translation>
  </message>
  <message>
   <source>{0}: {1}, {2} parts</source>
   <translation>{0}: {1}, {2} Teile</translation>
  </message>
  <message>
   <source>{0}; another unit may stand behind the number.</source>
   <translation>{0}; hinter der Zahl darf eine andere Einheit stehen.</translation>
  </message>
  <message>
   <source>{0}; lines: {1}, pieces: {2}</source>
   <translation>{0}; Zeilen: {1}, Stück: {2}</translation>
  </message>
  <message>
   <source>{count} of {all} positions have no set and are not in the sum.</source>
   <translation>{count} von {all} Plätzen haben keinen Satz und sind nicht in der Summe.</translation>
  </message>
  <message>
   <source>{count} other parts could hang here, {misfits} of the kind could not.</source>
   <translation>{count} andere Teile könnten hier hängen, {misfits} der Art nicht.</translation>
  </message>
  <message>
   <source>{count} other parts could hang here.</source>
   <translation>{count} andere Teile könnten hier hängen.</translation>
  </message>
  <message>
   <source>{count} parts · lead time {days} · mass {mass} · list prices</source>
   <translation>{count} Teile · Lieferzeit {days} · Masse {mass} · Listenpreise</translation>
  </message>
  <message>
   <source>{count} positions would change.</source>
   <translation>{count} Plätze würden sich ändern.</translation>
  </message>
  <message>
   <source>{count} positions: {told}.</source>
   <translation>{count} Positionen: {told}.</translation>
  </message>
  <message>
   <source>{done} of {total} combinations asked</source>
   <translation>{done} von {total} Kombinationen gefragt</translation>
  </message>
  <message>
   <source>{done} of {total} positions planned over all options; choosing sets together…</source>
   <translation>{done} von {total} Plätzen über alle Varianten geplant; Sätze werden gemeinsam gewählt…</translation>
  </message>
  <message>
   <source>{done} of {total} sites converted</source>
   <translation>{done} von {total} Tankstellen umgebaut</translation>
  </message>
  <message>
   <source>{field}: “{word}” becomes “{by}” everywhere</source>
   <translation>{field}: aus „{word}“ wird überall „{by}“</translation>
  </message>
  <message>
   <source>{file} into the draft of {catalog}</source>
   <translation>{file} in den Entwurf von {catalog}</translation>
  </message>
  <message>
   <source>{file} is in the draft of {catalog}.</source>
   <translation>{file} steht im Entwurf von {catalog}.</translation>
  </message>
  <message>
   <source>{name}: {done} of {ready} ready sites are placed; {others} are not ready.</source>
   <translation>{name}: {done} von {ready} Tankstellen, die bereit sind, haben ein Jahr; {others} sind nicht bereit.</translation>
  </message>
  <message>
   <source>{new} new or changed, {gone} gone or changed</source>
   <translation>{new} neu oder geändert, {gone} entfallen oder geändert</translation>
  </message>
  <message>
   <source>{new} new, {changed} changed, {same} as they were, {gone} taken out</source>
   <translation>{new} neu, {changed} geändert, {same} wie sie waren, {gone} herausgenommen</translation>
  </message>
  <message>
   <source>{new} new, {changed} changed, {same} as they were.</source>
   <translation>{new} neu, {changed} geändert, {same} wie sie waren.</translation>
  </message>
  <message>
   <source>{parts} old numbers in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} alte Nummern in {rows} Zeilen, {left} ausgelassen; {faults} Fehler, {questions} Fragen.</translation>
  </message>
  <message>
   <source>{parts} parts in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} Teile in {rows} Zeilen, {left} ausgelassen; {faults} Fehler, {questions} Fragen.</translation>
  </message>
  <message>
   <source>{parts} positions in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} Positionen in {rows} Zeilen, {left} ausgelassen; {faults} Fehler, {questions} Fragen.</translation>
  </message>
  <message>
   <source>{parts} types in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} Typen in {rows} Zeilen, {left} ausgelassen; {faults} Fehler, {questions} Fragen.</translation>
  </message>
  <message>
   <source>{part} on {day}: {price} from list {name}</source>
   <translation>{part} am {day}: {price} aus Liste {name}</translation>
  </message>
  <message>
   <source>{path} is there already, and this program did not write it as such a file. Replace it?</source>
   <translation>{path} ist schon da, und dieses Programm hat es nicht als solche Datei geschrieben. Ersetzen?</translation>
  </message>
  <message>
   <source>{path} is there already. Replace it?</source>
   <translation>{path} ist schon da. Ersetzen?</translation>
  </message>
  <message>
   <source>{place} was written by a newer version of Spoutline ({written_by}; form {form}). This is Spoutline {program}, which knows forms up to {known_form}; nothing was changed. Use the newer program, or restore a backup that was made before.</source>
   <translation>{place} wurde von einer neueren Version von Spoutline geschrieben ({written_by}; Form {form}). Dies ist Spoutline {program}, das Formen bis {known_form} kennt; es wurde nichts geändert. Nehmen Sie das neuere Programm, oder spielen Sie eine Sicherung von vorher zurück.</translation>
  </message>
  <message>
   <source>{place}: {remaining} of {all} parts allowed; makers: {makers}</source>
   <translation>{place}: {remaining} von {all} Teilen zulässig; Hersteller: {makers}</translation>
  </message>
  <message>
   <source>{site}, {count} positions</source>
   <translation>{site}, {count} Plätze</translation>
  </message>
  <message>
   <source>{type} for {dispenser}</source>
   <translation>{type} für {dispenser}</translation>
  </message>
  <message>
   <source>“{name}” is open. Open another survey first.</source>
   <translation>„{name}“ ist offen. Zuerst eine andere Aufnahme öffnen.</translation>
  </message>
  <message>
   <source>“{word}” becomes “{nearest}” ({count})</source>
   <translation>„{word}“ wird „{nearest}“ ({count})</translation>
  </message>
 </context>
</TS>
