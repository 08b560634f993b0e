<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>window</name>
  <message>
   <source> {0} more entries need a look.</source>
   <translation> {0} autres entrées sont à revoir.</translation>
  </message>
  <message>
   <source>&amp;About and safety</source>
   <translation>À &amp;propos et sécurité</translation>
  </message>
  <message>
   <source>&amp;Accept this answer</source>
   <translation>&amp;Accepter cette réponse</translation>
  </message>
  <message>
   <source>&amp;Accept this way out</source>
   <translation>&amp;Accepter cette issue</translation>
  </message>
  <message>
   <source>&amp;Accepted</source>
   <translation>&amp;Accepté</translation>
  </message>
  <message>
   <source>&amp;Add</source>
   <translation>&amp;Ajouter</translation>
  </message>
  <message>
   <source>&amp;Add a file…</source>
   <translation>&amp;Ajouter un fichier…</translation>
  </message>
  <message>
   <source>&amp;Add part</source>
   <translation>Ajouter la &amp;pièce</translation>
  </message>
  <message>
   <source>&amp;Address</source>
   <translation>Adre&amp;sse</translation>
  </message>
  <message>
   <source>&amp;Add…</source>
   <translation>&amp;Ajouter…</translation>
  </message>
  <message>
   <source>&amp;Agree</source>
   <translation>&amp;Convenir</translation>
  </message>
  <message>
   <source>&amp;All</source>
   <translation>&amp;Tous</translation>
  </message>
  <message>
   <source>&amp;All surveys…</source>
   <translation>&amp;Tous les relevés…</translation>
  </message>
  <message>
   <source>&amp;Also those that do not fit</source>
   <translation>&amp;Aussi celles qui ne conviennent pas</translation>
  </message>
  <message>
   <source>&amp;Amount or percent</source>
   <translation>&amp;Montant ou pourcentage</translation>
  </message>
  <message>
   <source>&amp;Answer for it</source>
   <translation>En &amp;répondre</translation>
  </message>
  <message>
   <source>&amp;Back</source>
   <translation>&amp;Retour</translation>
  </message>
  <message>
   <source>&amp;Back a step</source>
   <translation>Étape &amp;précédente</translation>
  </message>
  <message>
   <source>&amp;Back up now</source>
   <translation>&amp;Sauvegarder maintenant</translation>
  </message>
  <message>
   <source>&amp;Backups…</source>
   <translation>&amp;Sauvegardes…</translation>
  </message>
  <message>
   <source>&amp;Begin</source>
   <translation>&amp;Commencer</translation>
  </message>
  <message>
   <source>&amp;Beyond the years whose onboard share is known</source>
   <translation>Au-delà des années dont la part embarquée est connue</translation>
  </message>
  <message>
   <source>&amp;Bill as built</source>
   <translation>Nomenclature &amp;posée</translation>
  </message>
  <message>
   <source>&amp;Book</source>
   <translation>Regis&amp;tre</translation>
  </message>
  <message>
   <source>&amp;Book ({0} touched)</source>
   <translation>&amp;Registre ({0} touchés)</translation>
  </message>
  <message>
   <source>&amp;Catalog the book plans with</source>
   <translation>&amp;Catalogue avec lequel le livre planifie</translation>
  </message>
  <message>
   <source>&amp;Catalogs and editions</source>
   <translation>&amp;Catalogues et éditions</translation>
  </message>
  <message>
   <source>&amp;Close</source>
   <translation>Fer&amp;mer</translation>
  </message>
  <message>
   <source>&amp;Close all</source>
   <translation>Tout &amp;fermer</translation>
  </message>
  <message>
   <source>&amp;Compare</source>
   <translation>&amp;Comparer</translation>
  </message>
  <message>
   <source>&amp;Conversion of the site</source>
   <translation>&amp;Conversion de la station</translation>
  </message>
  <message>
   <source>&amp;Copy</source>
   <translation>&amp;Copier</translation>
  </message>
  <message>
   <source>&amp;Copy answers to…</source>
   <translation>&amp;Copier les réponses vers…</translation>
  </message>
  <message>
   <source>&amp;Copy the picture</source>
   <translation>&amp;Copier l’image</translation>
  </message>
  <message>
   <source>&amp;Currency</source>
   <translation>&amp;Monnaie</translation>
  </message>
  <message>
   <source>&amp;Customers…</source>
   <translation>C&amp;lients…</translation>
  </message>
  <message>
   <source>&amp;Day</source>
   <translation>&amp;Jour</translation>
  </message>
  <message>
   <source>&amp;Declined</source>
   <translation>&amp;Refusé</translation>
  </message>
  <message>
   <source>&amp;Describe part</source>
   <translation>Décrire la pi&amp;èce</translation>
  </message>
  <message>
   <source>&amp;Dispenser</source>
   <translation>&amp;Distributeur</translation>
  </message>
  <message>
   <source>&amp;Dispenser ({0})</source>
   <translation>&amp;Distributeur ({0})</translation>
  </message>
  <message>
   <source>&amp;Duplicate</source>
   <translation>&amp;Dupliquer</translation>
  </message>
  <message>
   <source>&amp;E-mail</source>
   <translation>Co&amp;urriel</translation>
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>&amp;Édition</translation>
  </message>
  <message>
   <source>&amp;Edition</source>
   <translation>&amp;Édition</translation>
  </message>
  <message>
   <source>&amp;Empty all figures</source>
   <translation>&amp;Vider tous les chiffres</translation>
  </message>
  <message>
   <source>&amp;Export as a table…</source>
   <translation>Exporter en &amp;tableau…</translation>
  </message>
  <message>
   <source>&amp;Fill it</source>
   <translation>Le &amp;remplir</translation>
  </message>
  <message>
   <source>&amp;Filler height</source>
   <translation>&amp;Hauteur de l'orifice</translation>
  </message>
  <message>
   <source>&amp;Find anything…</source>
   <translation>Trouver &amp;n'importe quoi…</translation>
  </message>
  <message>
   <source>&amp;Fit it and note it in the record</source>
   <translation>&amp;Poser et noter</translation>
  </message>
  <message>
   <source>&amp;Forget</source>
   <translation>&amp;Oublier</translation>
  </message>
  <message>
   <source>&amp;Freight</source>
   <translation>&amp;Transport</translation>
  </message>
  <message>
   <source>&amp;Go</source>
   <translation>All&amp;er</translation>
  </message>
  <message>
   <source>&amp;Headings in the first row</source>
   <translation>&amp;Titres dans la première ligne</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>A&amp;ide</translation>
  </message>
  <message>
   <source>&amp;History</source>
   <translation>&amp;Historique</translation>
  </message>
  <message>
   <source>&amp;Hours with a single-use breakaway</source>
   <translation>Heures, raccord à &amp;usage unique</translation>
  </message>
  <message>
   <source>&amp;Import a table…</source>
   <translation>&amp;Importer un tableau…</translation>
  </message>
  <message>
   <source>&amp;Import…</source>
   <translation>I&amp;mporter…</translation>
  </message>
  <message>
   <source>&amp;Inspections and wear</source>
   <translation>Contr&amp;ôles et usure</translation>
  </message>
  <message>
   <source>&amp;Installer's work</source>
   <translation>Travail de l'&amp;installateur</translation>
  </message>
  <message>
   <source>&amp;Interest on spares</source>
   <translation>&amp;Intérêt des rechanges</translation>
  </message>
  <message>
   <source>&amp;Interest, % a year</source>
   <translation>&amp;Intérêt, % par an</translation>
  </message>
  <message>
   <source>&amp;Island of the dispenser</source>
   <translation>&amp;Îlot du distributeur</translation>
  </message>
  <message>
   <source>&amp;Islands that they stand on</source>
   <translation>Î&amp;lots où ils se trouvent</translation>
  </message>
  <message>
   <source>&amp;Issue it so</source>
   <translation>&amp;L'émettre ainsi</translation>
  </message>
  <message>
   <source>&amp;Joints of a container of sealant</source>
   <translation>&amp;Joints par récipient de produit</translation>
  </message>
  <message>
   <source>&amp;Keep for this supplier</source>
   <translation>&amp;Garder pour ce fournisseur</translation>
  </message>
  <message>
   <source>&amp;Keep today's answer; find sets that last for this one too</source>
   <translation>&amp;Garder la réponse actuelle ; chercher des ensembles qui servent aussi pour celle-ci</translation>
  </message>
  <message>
   <source>&amp;Keys</source>
   <translation>&amp;Touches</translation>
  </message>
  <message>
   <source>&amp;Language</source>
   <translation>&amp;Langue</translation>
  </message>
  <message>
   <source>&amp;Least margin, percent</source>
   <translation>Marge &amp;minimale, pour cent</translation>
  </message>
  <message>
   <source>&amp;Leave it open</source>
   <translation>&amp;Laisser libre</translation>
  </message>
  <message>
   <source>&amp;Let all parts go</source>
   <translation>Libérer &amp;toutes les pièces</translation>
  </message>
  <message>
   <source>&amp;Let the book plan with it</source>
   <translation>&amp;Le registre planifie avec elle</translation>
  </message>
  <message>
   <source>&amp;List for a visit</source>
   <translation>&amp;Liste pour une visite</translation>
  </message>
  <message>
   <source>&amp;Local rules</source>
   <translation>&amp;Règles locales</translation>
  </message>
  <message>
   <source>&amp;Local rules…</source>
   <translation>&amp;Règles locales…</translation>
  </message>
  <message>
   <source>&amp;Longest lead time</source>
   <translation>&amp;Délai le plus long</translation>
  </message>
  <message>
   <source>&amp;Look at the demonstration</source>
   <translation>Voir la &amp;démonstration</translation>
  </message>
  <message>
   <source>&amp;Make the map</source>
   <translation>&amp;Faire la carte</translation>
  </message>
  <message>
   <source>&amp;Measure a distance</source>
   <translation>&amp;Mesurer une distance</translation>
  </message>
  <message>
   <source>&amp;Metric units</source>
   <translation>&amp;Unités métriques</translation>
  </message>
  <message>
   <source>&amp;Name</source>
   <translation>&amp;Nom</translation>
  </message>
  <message>
   <source>&amp;Name of the position</source>
   <translation>&amp;Nom du poste</translation>
  </message>
  <message>
   <source>&amp;Name of the site</source>
   <translation>&amp;Nom de la station</translation>
  </message>
  <message>
   <source>&amp;Names of the new dispensers</source>
   <translation>&amp;Noms des nouveaux distributeurs</translation>
  </message>
  <message>
   <source>&amp;New catalog</source>
   <translation>&amp;Nouveau catalogue</translation>
  </message>
  <message>
   <source>&amp;New customer</source>
   <translation>&amp;Nouveau client</translation>
  </message>
  <message>
   <source>&amp;New family</source>
   <translation>&amp;Nouvelle famille</translation>
  </message>
  <message>
   <source>&amp;New survey…</source>
   <translation>&amp;Nouveau relevé…</translation>
  </message>
  <message>
   <source>&amp;New type</source>
   <translation>&amp;Nouveau type</translation>
  </message>
  <message>
   <source>&amp;Next</source>
   <translation>&amp;Suivant</translation>
  </message>
  <message>
   <source>&amp;Next step</source>
   <translation>Étape &amp;suivante</translation>
  </message>
  <message>
   <source>&amp;Note</source>
   <translation>&amp;Note</translation>
  </message>
  <message>
   <source>&amp;Number</source>
   <translation>&amp;Numéro</translation>
  </message>
  <message>
   <source>&amp;Offer</source>
   <translation>Offre</translation>
  </message>
  <message>
   <source>&amp;Old numbers</source>
   <translation>Ancien&amp;s numéros</translation>
  </message>
  <message>
   <source>&amp;One answer</source>
   <translation>&amp;Une réponse</translation>
  </message>
  <message>
   <source>&amp;Open</source>
   <translation>O&amp;uvrir</translation>
  </message>
  <message>
   <source>&amp;Open with</source>
   <translation>Ou&amp;vrir sur</translation>
  </message>
  <message>
   <source>&amp;Other side</source>
   <translation>&amp;Autre côté</translation>
  </message>
  <message>
   <source>&amp;Other side of the dispenser…</source>
   <translation>Autre côté du distri&amp;buteur…</translation>
  </message>
  <message>
   <source>&amp;Percent</source>
   <translation>&amp;Pourcentage</translation>
  </message>
  <message>
   <source>&amp;Picture</source>
   <translation>I&amp;mage</translation>
  </message>
  <message>
   <source>&amp;Planned, agreed and built</source>
   <translation>&amp;Prévu, convenu et posé</translation>
  </message>
  <message>
   <source>&amp;Position</source>
   <translation>P&amp;oste</translation>
  </message>
  <message>
   <source>&amp;Preferences…</source>
   <translation>&amp;Préférences…</translation>
  </message>
  <message>
   <source>&amp;Prepared by</source>
   <translation>&amp;Établi par</translation>
  </message>
  <message>
   <source>&amp;Price rise, % a year</source>
   <translation>Hausse des &amp;prix, % par an</translation>
  </message>
  <message>
   <source>&amp;Publish as next edition</source>
   <translation>&amp;Publier comme édition suivante</translation>
  </message>
  <message>
   <source>&amp;Put into the book</source>
   <translation>Mettre &amp;au registre</translation>
  </message>
  <message>
   <source>&amp;Put the article into the draft</source>
   <translation>&amp;Mettre l'article dans le brouillon</translation>
  </message>
  <message>
   <source>&amp;Put the family into the draft</source>
   <translation>Mettre la famille dans le &amp;brouillon</translation>
  </message>
  <message>
   <source>&amp;Put the lengths into the draft</source>
   <translation>&amp;Mettre les longueurs dans le brouillon</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>&amp;Quitter</translation>
  </message>
  <message>
   <source>&amp;Quotations</source>
   <translation>De&amp;vis</translation>
  </message>
  <message>
   <source>&amp;Quote it so</source>
   <translation>Le &amp;chiffrer ainsi</translation>
  </message>
  <message>
   <source>&amp;Quote to this customer</source>
   <translation>&amp;Proposer à ce client</translation>
  </message>
  <message>
   <source>&amp;Read from file…</source>
   <translation>&amp;Lire un fichier…</translation>
  </message>
  <message>
   <source>&amp;Read it in</source>
   <translation>&amp;Lire le fichier</translation>
  </message>
  <message>
   <source>&amp;Ready ones, written into a file…</source>
   <translation>&amp;Conditions prêtes, dans un fichier…</translation>
  </message>
  <message>
   <source>&amp;Record</source>
   <translation>&amp;Procès-verbal</translation>
  </message>
  <message>
   <source>&amp;Record of the position</source>
   <translation>Proc&amp;ès-verbal du poste</translation>
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>&amp;Rétablir</translation>
  </message>
  <message>
   <source>&amp;Registration</source>
   <translation>&amp;Immatriculation</translation>
  </message>
  <message>
   <source>&amp;Reid vapor pressure</source>
   <translation>&amp;Pression de vapeur Reid</translation>
  </message>
  <message>
   <source>&amp;Remove</source>
   <translation>&amp;Retirer</translation>
  </message>
  <message>
   <source>&amp;Rename</source>
   <translation>&amp;Renommer</translation>
  </message>
  <message>
   <source>&amp;Repeat</source>
   <translation>&amp;Répéter</translation>
  </message>
  <message>
   <source>&amp;Restore…</source>
   <translation>&amp;Restaurer…</translation>
  </message>
  <message>
   <source>&amp;Revisions</source>
   <translation>Révisions</translation>
  </message>
  <message>
   <source>&amp;Rounding</source>
   <translation>A&amp;rrondi</translation>
  </message>
  <message>
   <source>&amp;Rules of</source>
   <translation>&amp;Règles de</translation>
  </message>
  <message>
   <source>&amp;Save</source>
   <translation>Enregi&amp;strer</translation>
  </message>
  <message>
   <source>&amp;Save the picture…</source>
   <translation>&amp;Enregistrer l’image…</translation>
  </message>
  <message>
   <source>&amp;Save the type</source>
   <translation>&amp;Enregistrer le type</translation>
  </message>
  <message>
   <source>&amp;Separations at a position in a year</source>
   <translation>&amp;Séparations par poste et par an</translation>
  </message>
  <message>
   <source>&amp;Show it</source>
   <translation>&amp;Montrer</translation>
  </message>
  <message>
   <source>&amp;Side that is there</source>
   <translation>&amp;Côté existant</translation>
  </message>
  <message>
   <source>&amp;Site data</source>
   <translation>&amp;Données de la station</translation>
  </message>
  <message>
   <source>&amp;Source</source>
   <translation>&amp;Source</translation>
  </message>
  <message>
   <source>&amp;Start survey</source>
   <translation>&amp;Commencer le relevé</translation>
  </message>
  <message>
   <source>&amp;Stay here</source>
   <translation>&amp;Rester ici</translation>
  </message>
  <message>
   <source>&amp;Steps taken…</source>
   <translation>É&amp;tapes effectuées…</translation>
  </message>
  <message>
   <source>&amp;Stop</source>
   <translation>&amp;Arrêter</translation>
  </message>
  <message>
   <source>&amp;Survey</source>
   <translation>Rele&amp;vé</translation>
  </message>
  <message>
   <source>&amp;Take away</source>
   <translation>&amp;Retirer</translation>
  </message>
  <message>
   <source>&amp;Take back the last change</source>
   <translation>Annuler la derni&amp;ère modification</translation>
  </message>
  <message>
   <source>&amp;Take back the last step</source>
   <translation>Annuler la dernière é&amp;tape</translation>
  </message>
  <message>
   <source>&amp;Take in a price file…</source>
   <translation>Re&amp;prendre un fichier de prix…</translation>
  </message>
  <message>
   <source>&amp;Take it and quote so</source>
   <translation>La &amp;prendre et chiffrer ainsi</translation>
  </message>
  <message>
   <source>&amp;Take its figures</source>
   <translation>&amp;Prendre ses valeurs</translation>
  </message>
  <message>
   <source>&amp;Take off the list</source>
   <translation>&amp;Ôter de la liste</translation>
  </message>
  <message>
   <source>&amp;Take positions</source>
   <translation>&amp;Prendre les postes</translation>
  </message>
  <message>
   <source>&amp;Take the marked set</source>
   <translation>&amp;Prendre l'ensemble marqué</translation>
  </message>
  <message>
   <source>&amp;Take this set</source>
   <translation>&amp;Prendre cet ensemble</translation>
  </message>
  <message>
   <source>&amp;Terms…</source>
   <translation>&amp;Conditions…</translation>
  </message>
  <message>
   <source>&amp;Theme</source>
   <translation>&amp;Thème</translation>
  </message>
  <message>
   <source>&amp;Thread standard</source>
   <translation>Norme de &amp;filetage</translation>
  </message>
  <message>
   <source>&amp;Three jobs in pictures</source>
   <translation>Trois &amp;métiers en images</translation>
  </message>
  <message>
   <source>&amp;Title</source>
   <translation>&amp;Titre</translation>
  </message>
  <message>
   <source>&amp;US units</source>
   <translation>Unités &amp;américaines</translation>
  </message>
  <message>
   <source>&amp;Undo</source>
   <translation>&amp;Annuler</translation>
  </message>
  <message>
   <source>&amp;Undo it</source>
   <translation>&amp;L'annuler</translation>
  </message>
  <message>
   <source>&amp;Undo the last agreement…</source>
   <translation>Ann&amp;uler le dernier accord…</translation>
  </message>
  <message>
   <source>&amp;Unit</source>
   <translation>&amp;Unité</translation>
  </message>
  <message>
   <source>&amp;Use it in the set</source>
   <translation>&amp;Utiliser dans l'ensemble</translation>
  </message>
  <message>
   <source>&amp;Use these</source>
   <translation>&amp;Utiliser celles-ci</translation>
  </message>
  <message>
   <source>&amp;Use this part</source>
   <translation>Utiliser &amp;cette pièce</translation>
  </message>
  <message>
   <source>&amp;Valid for</source>
   <translation>&amp;Valable</translation>
  </message>
  <message>
   <source>&amp;Value</source>
   <translation>&amp;Valeur</translation>
  </message>
  <message>
   <source>&amp;View</source>
   <translation>Afficha&amp;ge</translation>
  </message>
  <message>
   <source>&amp;Weigh all sets…</source>
   <translation>&amp;Comparer tous…</translation>
  </message>
  <message>
   <source>&amp;What if…</source>
   <translation>Et &amp;si…</translation>
  </message>
  <message>
   <source>&amp;Which price applies?</source>
   <translation>&amp;Quel prix s’applique ?</translation>
  </message>
  <message>
   <source>&amp;Who fuels?</source>
   <translation>&amp;Qui fait le plein ?</translation>
  </message>
  <message>
   <source>&amp;Whole drawing</source>
   <translation>Dessin &amp;entier</translation>
  </message>
  <message>
   <source>&amp;Why not this part?</source>
   <translation>Po&amp;urquoi pas cette pièce ?</translation>
  </message>
  <message>
   <source>&amp;Work out the cases</source>
   <translation>&amp;Calculer les cas</translation>
  </message>
  <message>
   <source>&amp;Write to a file…</source>
   <translation>&amp;Écrire dans un fichier…</translation>
  </message>
  <message>
   <source>&amp;Write to file…</source>
   <translation>&amp;Écrire dans un fichier…</translation>
  </message>
  <message>
   <source>&amp;XLSX…</source>
   <translation>&amp;XLSX…</translation>
  </message>
  <message>
   <source>&amp;Years</source>
   <translation>&amp;Années</translation>
  </message>
  <message>
   <source>(cannot be read)</source>
   <translation>(illisible)</translation>
  </message>
  <message>
   <source>(hidden)</source>
   <translation>(masquée)</translation>
  </message>
  <message>
   <source>(kept)</source>
   <translation>(gardée)</translation>
  </message>
  <message>
   <source>(no title)</source>
   <translation>(sans titre)</translation>
  </message>
  <message>
   <source>(one table)</source>
   <translation>(un tableau)</translation>
  </message>
  <message>
   <source>0 to 1000.</source>
   <translation>0 à 1000.</translation>
  </message>
  <message>
   <source>0.05 rounds to the next multiple of five cents.</source>
   <translation>0,05 arrondit au multiple de cinq cents le plus proche.</translation>
  </message>
  <message>
   <source>0.1 to 100.</source>
   <translation>0,1 à 100.</translation>
  </message>
  <message>
   <source>1 page</source>
   <translation>1 page</translation>
  </message>
  <message>
   <source>1 survey</source>
   <translation>1 relevé</translation>
  </message>
  <message>
   <source>1 to 30.</source>
   <translation>1 à 30.</translation>
  </message>
  <message>
   <source>40 CFR 280.32(b), from memory</source>
   <translation>40 CFR 280.32(b), de mémoire</translation>
  </message>
  <message>
   <source>77 FR 28772 table 1 (memory)</source>
   <translation>77 FR 28772 table 1 (de mémoire)</translation>
  </message>
  <message>
   <source>A calendar needs dates: write the first day of the plan here, then save it.</source>
   <translation>Un calendrier a besoin de dates : écrire ici le premier jour du plan, puis l'enregistrer.</translation>
  </message>
  <message>
   <source>A catalog that you fill from your suppliers' tables, and the survey of your first site.</source>
   <translation>Un catalogue que vous remplissez avec les tableaux de vos fournisseurs, et le relevé de votre premier site.</translation>
  </message>
  <message>
   <source>A change of liquid goes by tank, and a vapor pipe ends at one. For a blend of two write 1 + 2.</source>
   <translation>Un changement de liquide va par cuve, et une conduite de vapeur finit à l'une d'elles. Pour un mélange de deux, écrivez 1 + 2.</translation>
  </message>
  <message>
   <source>A click chooses the column, a double click sorts by it</source>
   <translation>Un clic choisit la colonne, un double clic trie selon elle</translation>
  </message>
  <message>
   <source>A comma is the decimal sign</source>
   <translation>La virgule est le signe décimal</translation>
  </message>
  <message>
   <source>A cord pulls the hose in</source>
   <translation>Un câble ramène le flexible</translation>
  </message>
  <message>
   <source>A distributor quotes a refit</source>
   <translation>Un distributeur établit le devis d'une rénovation</translation>
  </message>
  <message>
   <source>A fault of the program</source>
   <translation>Une faute du programme</translation>
  </message>
  <message>
   <source>A new part</source>
   <translation>Une nouvelle pièce</translation>
  </message>
  <message>
   <source>A new type: give it a name and what it answers.</source>
   <translation>Un nouveau type : donnez son nom et ce à quoi il répond.</translation>
  </message>
  <message>
   <source>A person's name.</source>
   <translation>Le nom d'une personne.</translation>
  </message>
  <message>
   <source>A price that somebody answers for, in place of the lists. Without a price, the line says that it follows.</source>
   <translation>Un prix dont quelqu'un répond, à la place des listes. Sans prix, la ligne dit qu'il suivra.</translation>
  </message>
  <message>
   <source>A program of several sites puts the site before those without one.</source>
   <translation>Un programme de plusieurs stations la place avant celles qui n'en ont pas.</translation>
  </message>
  <message>
   <source>A pump draws vapor</source>
   <translation>Une pompe aspire les vapeurs</translation>
  </message>
  <message>
   <source>A quotation in the book has revisions; keep this one or look one up.</source>
   <translation>Un devis du registre a des révisions ; gardez celui-ci ou ouvrez-en un.</translation>
  </message>
  <message>
   <source>A ready station, planned with a catalog that is invented: its makers, parts and prices exist nowhere, and every paper made from it says so.</source>
   <translation>Une station toute prête, planifiée avec un catalogue inventé : ses fabricants, pièces et prix n'existent nulle part, et chaque document qui en est tiré le dit.</translation>
  </message>
  <message>
   <source>A retractor or a reel moves the breakaway to the nozzle.</source>
   <translation>Un rappel ou un enrouleur met le raccord cassant côté pistolet.</translation>
  </message>
  <message>
   <source>A set fits</source>
   <translation>Un ensemble convient</translation>
  </message>
  <message>
   <source>A set fits; a question is open</source>
   <translation>Un ensemble convient ; une question est ouverte</translation>
  </message>
  <message>
   <source>A set was found, but a must is broken</source>
   <translation>Un ensemble est trouvé, mais un impératif est enfreint</translation>
  </message>
  <message>
   <source>A station owner plans a conversion</source>
   <translation>Un exploitant prévoit une conversion</translation>
  </message>
  <message>
   <source>A supplier's ta&amp;ble</source>
   <translation>Ta&amp;bleau d'un fournisseur</translation>
  </message>
  <message>
   <source>A survey file; it can be dropped on the window too.</source>
   <translation>Un fichier de relevé ; on peut aussi le déposer sur la fenêtre.</translation>
  </message>
  <message>
   <source>A whole number from 1 to 50.</source>
   <translation>Un nombre entier de 1 à 50.</translation>
  </message>
  <message>
   <source>A whole number; each is emptied before its pipe is closed.</source>
   <translation>Un nombre entier ; chacun est vidé avant que sa conduite soit fermée.</translation>
  </message>
  <message>
   <source>A&amp;ddress</source>
   <translation>A&amp;dresse</translation>
  </message>
  <message>
   <source>A&amp;gree on these sets…</source>
   <translation>Convenir de ces &amp;ensembles…</translation>
  </message>
  <message>
   <source>A&amp;gree on this set…</source>
   <translation>&amp;Convenir de cet ensemble…</translation>
  </message>
  <message>
   <source>A&amp;ll</source>
   <translation>&amp;Toutes</translation>
  </message>
  <message>
   <source>A&amp;ll stations</source>
   <translation>&amp;Toutes les stations</translation>
  </message>
  <message>
   <source>A&amp;ll surveys…</source>
   <translation>Tous &amp;les relevés…</translation>
  </message>
  <message>
   <source>A&amp;nnual budget</source>
   <translation>B&amp;udget annuel</translation>
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
   <translation>Au sujet de</translation>
  </message>
  <message>
   <source>About and safety</source>
   <translation>À propos et sécurité</translation>
  </message>
  <message>
   <source>Above 0.</source>
   <translation>Au-dessus de 0.</translation>
  </message>
  <message>
   <source>Above the ground the hose hangs over.</source>
   <translation>Au-dessus du sol que surplombe le flexible.</translation>
  </message>
  <message>
   <source>Above the same ground; negative below a dock.</source>
   <translation>Au-dessus du même sol ; négatif sous un quai.</translation>
  </message>
  <message>
   <source>Adapter</source>
   <translation>Adaptateur</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Ajouter</translation>
  </message>
  <message>
   <source>Add a filler</source>
   <translation>Ajouter un orifice</translation>
  </message>
  <message>
   <source>Add a further f&amp;iller</source>
   <translation>Ajouter &amp;un autre orifice</translation>
  </message>
  <message>
   <source>Add a hose position to this or another dispenser.</source>
   <translation>Ajouter un poste à ce distributeur ou à un autre.</translation>
  </message>
  <message>
   <source>Add a position</source>
   <translation>Ajouter un poste</translation>
  </message>
  <message>
   <source>Add a position with the same answers.</source>
   <translation>Ajouter un poste aux mêmes réponses.</translation>
  </message>
  <message>
   <source>Add a row</source>
   <translation>Ajouter une ligne</translation>
  </message>
  <message>
   <source>Add a row behind the chosen one (Insert)</source>
   <translation>Ajouter une ligne après celle choisie (Inser)</translation>
  </message>
  <message>
   <source>Add dispensers with the same positions as this one.</source>
   <translation>Ajouter des distributeurs aux mêmes postes que celui-ci.</translation>
  </message>
  <message>
   <source>Add pho&amp;tos…</source>
   <translation>Ajouter des p&amp;hotos…</translation>
  </message>
  <message>
   <source>Add positions from a CSV file or a workbook; columns are mapped first, faults told cell by cell.</source>
   <translation>Ajouter des postes d'un fichier CSV ou d'un classeur ; les colonnes sont d'abord affectées, les fautes dites cellule par cellule.</translation>
  </message>
  <message>
   <source>Add the &amp;words of the fault; they may hold values of your survey</source>
   <translation>Ajouter le &amp;texte de la faute ; il peut contenir des valeurs de votre relevé</translation>
  </message>
  <message>
   <source>Add to the &amp;wear log</source>
   <translation>Ajouter au c&amp;arnet d'usure</translation>
  </message>
  <message>
   <source>Address</source>
   <translation>Adresse</translation>
  </message>
  <message>
   <source>Adds an annex to the paper: what the catalog has for each place and what decided.</source>
   <translation>Ajoute une annexe au papier : ce que le catalogue a pour chaque place et ce qui a décidé.</translation>
  </message>
  <message>
   <source>Adopted codes</source>
   <translation>Règles adoptées</translation>
  </message>
  <message>
   <source>Advice only: local codes and the authority having jurisdiction decide.</source>
   <translation>Simple conseil : les règles locales et l'autorité compétente décident.</translation>
  </message>
  <message>
   <source>Advice, no permission: the agency of each site decides before its work begins.</source>
   <translation>Conseil, pas une autorisation : l'agence de chaque station décide avant le début du travail.</translation>
  </message>
  <message>
   <source>After how many years a kind of part is replaced; a kind that is not here is as common practice has it.</source>
   <translation>Après combien d'années un type de pièce est remplacé ; un type absent d'ici suit la pratique courante.</translation>
  </message>
  <message>
   <source>After: {0}</source>
   <translation>Après : {0}</translation>
  </message>
  <message>
   <source>Ag&amp;ree on the planned set…</source>
   <translation>Convenir de l'ensemble p&amp;révu…</translation>
  </message>
  <message>
   <source>Against the limit</source>
   <translation>Face à la limite</translation>
  </message>
  <message>
   <source>Against {0}: {1}</source>
   <translation>Par rapport à {0} : {1}</translation>
  </message>
  <message>
   <source>Age</source>
   <translation>Âge</translation>
  </message>
  <message>
   <source>Age of an installed part</source>
   <translation>Âge d'une pièce en place</translation>
  </message>
  <message>
   <source>Age of the chosen part, years</source>
   <translation>Âge de la pièce choisie, ans</translation>
  </message>
  <message>
   <source>Age, years</source>
   <translation>Âge, ans</translation>
  </message>
  <message>
   <source>Agency</source>
   <translation>Agence</translation>
  </message>
  <message>
   <source>Agency table</source>
   <translation>Table des agences</translation>
  </message>
  <message>
   <source>Ages are given at each position, under what hangs there today.</source>
   <translation>Les âges se donnent à chaque poste, sous ce qui y pend aujourd'hui.</translation>
  </message>
  <message>
   <source>Agree on one way; save its report and the calendar of its steps.</source>
   <translation>Convenez d'une voie ; enregistrez son rapport et le calendrier de ses étapes.</translation>
  </message>
  <message>
   <source>Agree on the &amp;way shown…</source>
   <translation>Convenir de &amp;la voie montrée…</translation>
  </message>
  <message>
   <source>Agree on the planned sets of one position, several or all: papers show them from then on.</source>
   <translation>Convenir des ensembles prévus d'un poste, de plusieurs ou de tous : les documents les montrent dès lors.</translation>
  </message>
  <message>
   <source>Agree on the sets of the way that the report follows, in bold above</source>
   <translation>Convenir des ensembles de la voie que suit le rapport, en gras ci-dessus</translation>
  </message>
  <message>
   <source>Agree on these sets</source>
   <translation>Convenir de ces ensembles</translation>
  </message>
  <message>
   <source>Agree on these sets…</source>
   <translation>Convenir de ces ensembles…</translation>
  </message>
  <message>
   <source>Agree&amp;ments…</source>
   <translation>Acc&amp;ords…</translation>
  </message>
  <message>
   <source>Agreed</source>
   <translation>Convenu</translation>
  </message>
  <message>
   <source>Agreement {0}</source>
   <translation>Accord {0}</translation>
  </message>
  <message>
   <source>Agreement {0}, by {1}: {2}. What was agreed before it holds again; the history keeps both.</source>
   <translation>Accord {0}, par {1} : {2}. Ce qui était convenu avant vaut de nouveau ; l'historique garde les deux.</translation>
  </message>
  <message>
   <source>Agreements</source>
   <translation>Accords</translation>
  </message>
  <message>
   <source>Agreements and withdrawals</source>
   <translation>Accords et annulations</translation>
  </message>
  <message>
   <source>Air, fills and tanks</source>
   <translation>Air, pleins et cuves</translation>
  </message>
  <message>
   <source>Al&amp;l agreements…</source>
   <translation>Tous &amp;les accords…</translation>
  </message>
  <message>
   <source>All</source>
   <translation>Tous</translation>
  </message>
  <message>
   <source>All &amp;positions in a table</source>
   <translation>Tous les p&amp;ostes en tableau</translation>
  </message>
  <message>
   <source>All changes are in the book</source>
   <translation>Toutes les modifications sont au registre</translation>
  </message>
  <message>
   <source>All commands with their keys.</source>
   <translation>Toutes les commandes avec leurs touches.</translation>
  </message>
  <message>
   <source>All kinds</source>
   <translation>Tous les genres</translation>
  </message>
  <message>
   <source>All parts with sums, the paper to print, and files to save.</source>
   <translation>Toutes les pièces avec les sommes, le document à imprimer et les fichiers.</translation>
  </message>
  <message>
   <source>All positions</source>
   <translation>Tous les postes</translation>
  </message>
  <message>
   <source>All positions and their answers</source>
   <translation>Tous les postes et leurs réponses</translation>
  </message>
  <message>
   <source>All positions planned; choosing sets together and adding up…</source>
   <translation>Tous les postes sont prévus ; choix commun des ensembles et totaux…</translation>
  </message>
  <message>
   <source>All reasons and &amp;ways out…</source>
   <translation>Toutes les raisons et &amp;issues…</translation>
  </message>
  <message>
   <source>All reasons and ways out…</source>
   <translation>Toutes les raisons et issues…</translation>
  </message>
  <message>
   <source>All surveys in the book. Every change is kept in it at once.</source>
   <translation>Tous les relevés du registre. Chaque modification y est gardée aussitôt.</translation>
  </message>
  <message>
   <source>Allowed in some places only, and then together with a device that shuts the nozzle when pressure or flow ends.</source>
   <translation>Permis en certains lieux seulement, et alors avec un dispositif qui ferme le pistolet quand la pression ou le débit cesse.</translation>
  </message>
  <message>
   <source>Also changes</source>
   <translation>Change aussi</translation>
  </message>
  <message>
   <source>Also changes: {changes}</source>
   <translation>Change aussi : {changes}</translation>
  </message>
  <message>
   <source>Alt+1 to Alt+5 go to a step. In the drawing: Space picks the next part, plus and minus change its size, arrows move it, 0 shows all of it.</source>
   <translation>Alt+1 à Alt+5 mènent à une étape. Dans le dessin : Espace choisit la pièce suivante, plus et moins changent la taille, les flèches déplacent, 0 montre tout.</translation>
  </message>
  <message>
   <source>Alternates</source>
   <translation>Pièces en variante</translation>
  </message>
  <message>
   <source>Amount</source>
   <translation>Montant</translation>
  </message>
  <message>
   <source>Amount, {currency}</source>
   <translation>Total, {currency}</translation>
  </message>
  <message>
   <source>An alternate that is taken opens revision {0} beside it.</source>
   <translation>Une variante qui est prise ouvre la révision {0} à côté.</translation>
  </message>
  <message>
   <source>An attendant</source>
   <translation>Un pompiste</translation>
  </message>
  <message>
   <source>An empty maker or group means every one; the row that says more counts.</source>
   <translation>Fabricant ou groupe vide : tous ; la ligne la plus précise compte.</translation>
  </message>
  <message>
   <source>An estimate, such as 0.04: one in 25 years.</source>
   <translation>Une estimation, par exemple 0,04 : une en 25 ans.</translation>
  </message>
  <message>
   <source>An installer prints the work</source>
   <translation>Un installateur imprime le travail</translation>
  </message>
  <message>
   <source>An overhead outlet restricts the latch.</source>
   <translation>Une sortie en hauteur restreint le cran.</translation>
  </message>
  <message>
   <source>And light vans</source>
   <translation>Et utilitaires légers</translation>
  </message>
  <message>
   <source>And the spares of its quotation</source>
   <translation>Et les rechanges de son devis</translation>
  </message>
  <message>
   <source>Another answer to compare</source>
   <translation>Une autre réponse à comparer</translation>
  </message>
  <message>
   <source>Another part</source>
   <translation>Une autre pièce</translation>
  </message>
  <message>
   <source>Another part hangs here.</source>
   <translation>Une autre pièce est ici.</translation>
  </message>
  <message>
   <source>Another percentage for a kind of part or a discount group.</source>
   <translation>Un autre pourcentage pour un genre de pièce ou un groupe de remise.</translation>
  </message>
  <message>
   <source>Another quotation was sent under the number {0}, to {1} for {2}. Give this one its own in its terms; no paper of it can be saved before.</source>
   <translation>Un autre devis a été envoyé sous le numéro {0}, à {1} pour {2}. Donnez-en un propre à celui-ci dans ses conditions ; aucun papier n'en peut être enregistré avant.</translation>
  </message>
  <message>
   <source>Answer</source>
   <translation>Réponse</translation>
  </message>
  <message>
   <source>Answer for the missing prices; then it can be issued.</source>
   <translation>Répondez des prix manquants ; le devis peut alors être émis.</translation>
  </message>
  <message>
   <source>Answer for them</source>
   <translation>En répondre</translation>
  </message>
  <message>
   <source>Answers side by side</source>
   <translation>Réponses côte à côte</translation>
  </message>
  <message>
   <source>Answers to compare</source>
   <translation>Réponses comparées</translation>
  </message>
  <message>
   <source>Arizona test list</source>
   <translation>Liste d'essais de l'Arizona</translation>
  </message>
  <message>
   <source>As a share of the hose's length from the dispenser: 0.5 is the middle.</source>
   <translation>En part de la longueur du flexible depuis le distributeur : 0,5 est le milieu.</translation>
  </message>
  <message>
   <source>As built</source>
   <translation>Tel que posé</translation>
  </message>
  <message>
   <source>As in the price list.</source>
   <translation>Comme dans la liste de prix.</translation>
  </message>
  <message>
   <source>As pages (PDF), or as one HTML page for screen readers and mails.</source>
   <translation>En pages (PDF), ou en une seule page HTML pour lecteurs d’écran et courriels.</translation>
  </message>
  <message>
   <source>As printed.</source>
   <translation>Comme imprimé.</translation>
  </message>
  <message>
   <source>As printed; each once.</source>
   <translation>Comme imprimé ; chacun une fois.</translation>
  </message>
  <message>
   <source>As the desktop</source>
   <translation>Comme le bureau</translation>
  </message>
  <message>
   <source>As the standard writes it, or as people say it: 3/4, 0.75 in, 19 mm, DN 20.</source>
   <translation>Comme l'écrit la norme ou comme on le dit : 3/4, 0,75 in, 19 mm, DN 20.</translation>
  </message>
  <message>
   <source>As the survey was opened</source>
   <translation>Comme le relevé a été ouvert</translation>
  </message>
  <message>
   <source>As the way of reckoning asks.</source>
   <translation>Selon le mode de calcul.</translation>
  </message>
  <message>
   <source>Ask in writing; what is not known is said in the report.</source>
   <translation>Demandez par écrit ; le rapport dit ce qui n'est pas connu.</translation>
  </message>
  <message>
   <source>Asked for</source>
   <translation>Demandé</translation>
  </message>
  <message>
   <source>Asking the combinations…</source>
   <translation>Les combinaisons sont demandées…</translation>
  </message>
  <message>
   <source>At hand</source>
   <translation>En stock</translation>
  </message>
  <message>
   <source>At the clamp, with the hose drawn out.</source>
   <translation>Au collier, flexible tiré.</translation>
  </message>
  <message>
   <source>At the dispenser: hang the set, measure, and fill the form.</source>
   <translation>Au distributeur : posez l'ensemble, mesurez et remplissez le formulaire.</translation>
  </message>
  <message>
   <source>Authority</source>
   <translation>Autorité</translation>
  </message>
  <message>
   <source>Axis to the right</source>
   <translation>Axe vers la droite</translation>
  </message>
  <message>
   <source>Axis told by the size of the points</source>
   <translation>Axe indiqué par la taille des points</translation>
  </message>
  <message>
   <source>Axis upward</source>
   <translation>Axe vers le haut</translation>
  </message>
  <message>
   <source>Bac&amp;kups…</source>
   <translation>Sau&amp;vegardes…</translation>
  </message>
  <message>
   <source>Back</source>
   <translation>Retour</translation>
  </message>
  <message>
   <source>Back on the hook by hand</source>
   <translation>Raccroché à la main</translation>
  </message>
  <message>
   <source>Back to the newest</source>
   <translation>Revenir à la plus récente</translation>
  </message>
  <message>
   <source>Backups</source>
   <translation>Sauvegardes</translation>
  </message>
  <message>
   <source>Backups of the book</source>
   <translation>Sauvegardes du registre</translation>
  </message>
  <message>
   <source>Balance</source>
   <translation>Équilibrage</translation>
  </message>
  <message>
   <source>Balance coaxial</source>
   <translation>Coaxial à équilibrage</translation>
  </message>
  <message>
   <source>Bar ( | )</source>
   <translation>Barre ( | )</translation>
  </message>
  <message>
   <source>Because</source>
   <translation>Raison</translation>
  </message>
  <message>
   <source>Because: {0}</source>
   <translation>Raison : {0}</translation>
  </message>
  <message>
   <source>Before</source>
   <translation>Avant</translation>
  </message>
  <message>
   <source>Before → after</source>
   <translation>Avant → après</translation>
  </message>
  <message>
   <source>Before: {0}</source>
   <translation>Avant : {0}</translation>
  </message>
  <message>
   <source>Begin a survey</source>
   <translation>Commencer un relevé</translation>
  </message>
  <message>
   <source>Begin my own</source>
   <translation>Commencer le mien</translation>
  </message>
  <message>
   <source>Bellows on the nozzle</source>
   <translation>Soufflet sur le pistolet</translation>
  </message>
  <message>
   <source>Between 0 and 1.</source>
   <translation>Entre 0 et 1.</translation>
  </message>
  <message>
   <source>Between 0 and 1; empty counts every gasoline position alike.</source>
   <translation>Entre 0 et 1 ; vide : chaque poste d'essence compte pareil.</translation>
  </message>
  <message>
   <source>Between 0 and 1; empty takes the table's figure.</source>
   <translation>Entre 0 et 1 ; vide : le chiffre de la table.</translation>
  </message>
  <message>
   <source>Between 0 and 1; the rest goes on selling.</source>
   <translation>Entre 0 et 1 ; le reste continue à vendre.</translation>
  </message>
  <message>
   <source>Between 0 and 50, written without the sign.</source>
   <translation>Entre 0 et 50, écrit sans le signe.</translation>
  </message>
  <message>
   <source>Between cells</source>
   <translation>Entre cellules</translation>
  </message>
  <message>
   <source>Blend</source>
   <translation>Mélange</translation>
  </message>
  <message>
   <source>Boats</source>
   <translation>Bateaux</translation>
  </message>
  <message>
   <source>Bond test certificate</source>
   <translation>Attestation d'essai de continuité</translation>
  </message>
  <message>
   <source>Both are the same edition: nothing differs. Choose another one to compare it with.</source>
   <translation>C'est deux fois la même édition : rien ne diffère. Choisissez-en une autre pour la comparer.</translation>
  </message>
  <message>
   <source>Bought</source>
   <translation>Acheté</translation>
  </message>
  <message>
   <source>Breakaway</source>
   <translation>Raccord cassant</translation>
  </message>
  <message>
   <source>Breakaways</source>
   <translation>Raccords cassants</translation>
  </message>
  <message>
   <source>Built</source>
   <translation>Posé</translation>
  </message>
  <message>
   <source>Built-in rules stay as they are; copy them to change a row.</source>
   <translation>Les règles livrées restent telles quelles ; copiez-les pour changer une ligne.</translation>
  </message>
  <message>
   <source>Buying</source>
   <translation>Achat</translation>
  </message>
  <message>
   <source>C&amp;hoose</source>
   <translation>&amp;Choisir</translation>
  </message>
  <message>
   <source>C&amp;limate</source>
   <translation>C&amp;limat</translation>
  </message>
  <message>
   <source>C&amp;ount them so</source>
   <translation>Les c&amp;ompter ainsi</translation>
  </message>
  <message>
   <source>C&amp;ustomer</source>
   <translation>C&amp;lient</translation>
  </message>
  <message>
   <source>CARB 2013</source>
   <translation>CARB 2013</translation>
  </message>
  <message>
   <source>CSV or XLSX, as the supplier sends it</source>
   <translation>CSV ou XLSX, tel que le fournisseur l'envoie</translation>
  </message>
  <message>
   <source>CSV or XLSX: a row for each position</source>
   <translation>CSV ou XLSX : une ligne par position</translation>
  </message>
  <message>
   <source>CSV or XLSX: a row for each type of dispenser</source>
   <translation>CSV ou XLSX : une ligne par type de distributeur</translation>
  </message>
  <message>
   <source>CSV or XLSX: old number and its maker, the part it leads to and its maker</source>
   <translation>CSV ou XLSX : ancien numéro et son fabricant, la pièce à laquelle il mène et son fabricant</translation>
  </message>
  <message>
   <source>CSV…</source>
   <translation>CSV…</translation>
  </message>
  <message>
   <source>Ca&amp;talogs</source>
   <translation>Ca&amp;talogues</translation>
  </message>
  <message>
   <source>Calc&amp;ulate</source>
   <translation>&amp;Calculer</translation>
  </message>
  <message>
   <source>Called</source>
   <translation>Désignation</translation>
  </message>
  <message>
   <source>Can the flow be started or stopped else&amp;where?</source>
   <translation>Le débit peut-il être lancé ou arrêté d'aille&amp;urs ?</translation>
  </message>
  <message>
   <source>Can the vapor pipe be reached at the tank?</source>
   <translation>La conduite de vapeur est-elle accessible &amp;à la cuve ?</translation>
  </message>
  <message>
   <source>Capitals and double blanks do not count.</source>
   <translation>Majuscules et espaces doubles ne comptent pas.</translation>
  </message>
  <message>
   <source>Carry &amp;over what a year leaves</source>
   <translation>Rep&amp;orter le reste d'une année sur la suivante</translation>
  </message>
  <message>
   <source>Cars</source>
   <translation>Voitures</translation>
  </message>
  <message>
   <source>Case</source>
   <translation>Cas</translation>
  </message>
  <message>
   <source>Cases</source>
   <translation>Cas no&amp;mmés</translation>
  </message>
  <message>
   <source>Cash</source>
   <translation>Dépense</translation>
  </message>
  <message>
   <source>Catalog</source>
   <translation>Catalogue</translation>
  </message>
  <message>
   <source>Catalog data</source>
   <translation>Données du catalogue</translation>
  </message>
  <message>
   <source>Catalog number</source>
   <translation>Numéro de catalogue</translation>
  </message>
  <message>
   <source>Catalog number of an installed part</source>
   <translation>Numéro de catalogue d'une pièce en place</translation>
  </message>
  <message>
   <source>Catalog or price lists have changed under open quotations: {0}{1}</source>
   <translation>Le catalogue ou des listes de prix ont changé sous des devis ouverts : {0}{1}</translation>
  </message>
  <message>
   <source>Catalog parts found</source>
   <translation>Pièces trouvées au catalogue</translation>
  </message>
  <message>
   <source>Catalogs</source>
   <translation>Catalogues</translation>
  </message>
  <message>
   <source>Catalogs and editions</source>
   <translation>Catalogues et éditions</translation>
  </message>
  <message>
   <source>Caution sheet alone</source>
   <translation>Feuille d'avertissements seule</translation>
  </message>
  <message>
   <source>Cell</source>
   <translation>Cellule</translation>
  </message>
  <message>
   <source>Chan&amp;ge</source>
   <translation>Chan&amp;ger</translation>
  </message>
  <message>
   <source>Change</source>
   <translation>Modifier</translation>
  </message>
  <message>
   <source>Change &amp;many rows…</source>
   <translation>Changer &amp;plusieurs lignes…</translation>
  </message>
  <message>
   <source>Change many rows</source>
   <translation>Changer plusieurs lignes</translation>
  </message>
  <message>
   <source>Change the chosen row</source>
   <translation>Modifier la ligne choisie</translation>
  </message>
  <message>
   <source>Change the name of the position or its dispenser.</source>
   <translation>Changer le nom du poste ou de son distributeur.</translation>
  </message>
  <message>
   <source>Changed</source>
   <translation>Modifié</translation>
  </message>
  <message>
   <source>Changed in the book since they were chosen: dispenser type {0}. The survey stays as it is.</source>
   <translation>Modifié dans le livre depuis son choix : type de distributeur {0}. Le relevé reste tel quel.</translation>
  </message>
  <message>
   <source>Changed since.</source>
   <translation>Modifié depuis.</translation>
  </message>
  <message>
   <source>Chart of the sets</source>
   <translation>Graphique des ensembles</translation>
  </message>
  <message>
   <source>Check</source>
   <translation>Contrôle</translation>
  </message>
  <message>
   <source>Check again</source>
   <translation>Recontrôler</translation>
  </message>
  <message>
   <source>Check the paper, then issue it: its papers are kept as they are sent.</source>
   <translation>Vérifiez le document, puis émettez-le : ses documents sont gardés tels qu'envoyés.</translation>
  </message>
  <message>
   <source>Checking every stocked part…</source>
   <translation>Contrôle de chaque pièce en stock…</translation>
  </message>
  <message>
   <source>Checks</source>
   <translation>Contrôles</translation>
  </message>
  <message>
   <source>Checks with their worked lines</source>
   <translation>Contrôles avec leurs lignes de calcul</translation>
  </message>
  <message>
   <source>Choose &amp;a file…</source>
   <translation>Choisir un &amp;fichier…</translation>
  </message>
  <message>
   <source>Choose &amp;folder…</source>
   <translation>Choisir un &amp;dossier…</translation>
  </message>
  <message>
   <source>Choose a day</source>
   <translation>Choisir un jour</translation>
  </message>
  <message>
   <source>Choose a file: nothing is changed before you take it over.</source>
   <translation>Choisissez un fichier : rien ne change avant la reprise.</translation>
  </message>
  <message>
   <source>Choose a part without a catalog number; a number brings its own figures.</source>
   <translation>Choisissez une pièce sans numéro de catalogue ; un numéro apporte ses propres chiffres.</translation>
  </message>
  <message>
   <source>Choose a step to go back to it, or forward to it again. The page behind follows at once.</source>
   <translation>Choisissez une étape pour y revenir ou y retourner. La page derrière suit aussitôt.</translation>
  </message>
  <message>
   <source>Choose a table</source>
   <translation>Choisir un tableau</translation>
  </message>
  <message>
   <source>Choose it for</source>
   <translation>Le choisir pour</translation>
  </message>
  <message>
   <source>Choose the column</source>
   <translation>Choisir la colonne</translation>
  </message>
  <message>
   <source>Choose two different revisions.</source>
   <translation>Choisissez deux révisions différentes.</translation>
  </message>
  <message>
   <source>Cl&amp;ause</source>
   <translation>&amp;Article</translation>
  </message>
  <message>
   <source>Class limits: scopes of UL 2586A/B, 567A/B, 330A/B</source>
   <translation>Limites des classes : domaines d'UL 2586A/B, 567A/B, 330A/B</translation>
  </message>
  <message>
   <source>Climate</source>
   <translation>Climat</translation>
  </message>
  <message>
   <source>Climate band of the map</source>
   <translation>Plage climatique de la carte</translation>
  </message>
  <message>
   <source>Close and &amp;lose the changes</source>
   <translation>Fermer et &amp;perdre les modifications</translation>
  </message>
  <message>
   <source>Close the count {0}</source>
   <translation>Clore le comptage {0}</translation>
  </message>
  <message>
   <source>Close the count…</source>
   <translation>Clore le comptage…</translation>
  </message>
  <message>
   <source>Co&amp;py report</source>
   <translation>Co&amp;pier le rapport</translation>
  </message>
  <message>
   <source>Coaxial, balance</source>
   <translation>Coaxial, équilibrage</translation>
  </message>
  <message>
   <source>Coaxial, vacuum assist</source>
   <translation>Coaxial, aspiration</translation>
  </message>
  <message>
   <source>Code</source>
   <translation>Code</translation>
  </message>
  <message>
   <source>Col&amp;dest</source>
   <translation>Le plus &amp;froid</translation>
  </message>
  <message>
   <source>Column</source>
   <translation>Colonne</translation>
  </message>
  <message>
   <source>Columns of the file</source>
   <translation>Colonnes du fichier</translation>
  </message>
  <message>
   <source>Combinations asked</source>
   <translation>Combinaisons demandées</translation>
  </message>
  <message>
   <source>Comma ( , )</source>
   <translation>Virgule ( , )</translation>
  </message>
  <message>
   <source>Comma (1,50)</source>
   <translation>Virgule (1,50)</translation>
  </message>
  <message>
   <source>Command</source>
   <translation>Commande</translation>
  </message>
  <message>
   <source>Command, position, survey, quotation, part or help</source>
   <translation>Commande, poste, relevé, devis, pièce ou aide</translation>
  </message>
  <message>
   <source>Commands with their keys</source>
   <translation>Commandes et leurs touches</translation>
  </message>
  <message>
   <source>Commissioning form to fill in</source>
   <translation>Fiche de mise en service à remplir</translation>
  </message>
  <message>
   <source>Compare agreement</source>
   <translation>Comparer l'accord</translation>
  </message>
  <message>
   <source>Compare {0}</source>
   <translation>Comparer {0}</translation>
  </message>
  <message>
   <source>Comparing…</source>
   <translation>Comparaison…</translation>
  </message>
  <message>
   <source>Computed</source>
   <translation>Calculé</translation>
  </message>
  <message>
   <source>Con&amp;tact</source>
   <translation>In&amp;terlocuteur</translation>
  </message>
  <message>
   <source>Condensate traps in the vapor pipes</source>
   <translation>Pièges à condensats des conduites de vapeur</translation>
  </message>
  <message>
   <source>Condition</source>
   <translation>État</translation>
  </message>
  <message>
   <source>Condition of an installed part</source>
   <translation>État d'une pièce en place</translation>
  </message>
  <message>
   <source>Condition of the chosen part</source>
   <translation>État de la pièce choisie</translation>
  </message>
  <message>
   <source>Contact</source>
   <translation>Contact</translation>
  </message>
  <message>
   <source>Content</source>
   <translation>Contenu</translation>
  </message>
  <message>
   <source>Conventional hardware</source>
   <translation>Matériel conventionnel</translation>
  </message>
  <message>
   <source>Conversion</source>
   <translation>Conversion</translation>
  </message>
  <message>
   <source>Conversion of the site</source>
   <translation>Conversion de la station</translation>
  </message>
  <message>
   <source>Conversion: compare the ways, with what stays, goes and comes, their cost and their emissions.</source>
   <translation>Conversion : comparez les voies, avec ce qui reste, part et vient, leur coût et leurs émissions.</translation>
  </message>
  <message>
   <source>Convert</source>
   <translation>Convertir</translation>
  </message>
  <message>
   <source>Convert a folder of surveys over all cores and rank the sites over years under a yearly budget.</source>
   <translation>Convertir un dossier de relevés sur tous les cœurs et classer les stations sur des années selon un budget annuel.</translation>
  </message>
  <message>
   <source>Copied</source>
   <translation>Copié</translation>
  </message>
  <message>
   <source>Copied from</source>
   <translation>Origine</translation>
  </message>
  <message>
   <source>Copied. From the next start on the book in {0} is used; what lies in the folder of today stays.</source>
   <translation>Copié. Dès le prochain démarrage, le livre de {0} est utilisé ; ce qui se trouve dans le dossier actuel reste.</translation>
  </message>
  <message>
   <source>Copy answers of {0}</source>
   <translation>Copier les réponses de {0}</translation>
  </message>
  <message>
   <source>Copy answers of {label}</source>
   <translation>Copier les réponses de {label}</translation>
  </message>
  <message>
   <source>Copy t&amp;hese rules</source>
   <translation>&amp;Copier ces règles</translation>
  </message>
  <message>
   <source>Copy the chosen rows (Ctrl+Shift+D)</source>
   <translation>Copier les lignes choisies (Ctrl+Maj+D)</translation>
  </message>
  <message>
   <source>Cost</source>
   <translation>Coût</translation>
  </message>
  <message>
   <source>Cost and margin by line and option: internal, never the customer's</source>
   <translation>Coût et marge par ligne et option : interne, jamais pour le client</translation>
  </message>
  <message>
   <source>Cost of one piece</source>
   <translation>Coût d’une pièce</translation>
  </message>
  <message>
   <source>Cost of the line</source>
   <translation>Coût de la ligne</translation>
  </message>
  <message>
   <source>Cost, {0}</source>
   <translation>Coût, {0}</translation>
  </message>
  <message>
   <source>Count</source>
   <translation>Comptage</translation>
  </message>
  <message>
   <source>Counted</source>
   <translation>Compté</translation>
  </message>
  <message>
   <source>Counted as</source>
   <translation>Compté comme</translation>
  </message>
  <message>
   <source>Counting the parts that come into question…</source>
   <translation>Décompte des pièces envisageables…</translation>
  </message>
  <message>
   <source>Counting what the catalog has for each place…</source>
   <translation>Compte de ce que le catalogue a pour chaque place…</translation>
  </message>
  <message>
   <source>Counts for every position of the site.</source>
   <translation>Vaut pour chaque poste de la station.</translation>
  </message>
  <message>
   <source>Counts towards a grant</source>
   <translation>Compte pour une subvention</translation>
  </message>
  <message>
   <source>Coverage</source>
   <translation>Co&amp;uverture</translation>
  </message>
  <message>
   <source>Coverage map: combinations by outlet</source>
   <translation>Carte de couverture : combinaisons par sortie</translation>
  </message>
  <message>
   <source>Crews side by side</source>
   <translation>Équipes en parallèle</translation>
  </message>
  <message>
   <source>Cu&amp;rrency</source>
   <translation>&amp;Monnaie</translation>
  </message>
  <message>
   <source>Currency</source>
   <translation>Monnaie</translation>
  </message>
  <message>
   <source>Currency and rounding</source>
   <translation>Monnaie et arrondi</translation>
  </message>
  <message>
   <source>Currency of prices that name none</source>
   <translation>Monnaie des prix qui n'en nomment pas</translation>
  </message>
  <message>
   <source>Currency of the cost</source>
   <translation>Monnaie du coût</translation>
  </message>
  <message>
   <source>Currency of the list</source>
   <translation>Monnaie de la liste</translation>
  </message>
  <message>
   <source>Currency of the price list</source>
   <translation>Monnaie de la liste de prix</translation>
  </message>
  <message>
   <source>Currency: as the table says</source>
   <translation>Monnaie : selon le tableau</translation>
  </message>
  <message>
   <source>Customer</source>
   <translation>Client</translation>
  </message>
  <message>
   <source>Customer of the station</source>
   <translation>Client de la station</translation>
  </message>
  <message>
   <source>Customer of this s&amp;tation</source>
   <translation>&amp;Client de cette station</translation>
  </message>
  <message>
   <source>Customer of this station.</source>
   <translation>Client de cette station.</translation>
  </message>
  <message>
   <source>Customers</source>
   <translation>Clients</translation>
  </message>
  <message>
   <source>Customers of the book</source>
   <translation>Clients du registre</translation>
  </message>
  <message>
   <source>Customers, nobody on site</source>
   <translation>Clients, personne sur place</translation>
  </message>
  <message>
   <source>Cut to le&amp;ngth…</source>
   <translation>Couper &amp;à longueur…</translation>
  </message>
  <message>
   <source>D&amp;eadlines</source>
   <translation>&amp;Échéances</translation>
  </message>
  <message>
   <source>DEF</source>
   <translation>DEF</translation>
  </message>
  <message>
   <source>DEF itself does not burn. Where its nozzle is used close to fuel, the nozzle has to be evaluated for that.</source>
   <translation>Le DEF ne brûle pas. Là où son pistolet sert près de carburant, il doit être évalué pour cela.</translation>
  </message>
  <message>
   <source>Dark</source>
   <translation>Sombre</translation>
  </message>
  <message>
   <source>Data folder</source>
   <translation>Dossier des données</translation>
  </message>
  <message>
   <source>Date</source>
   <translation>Date</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Jour</translation>
  </message>
  <message>
   <source>Day of handing over</source>
   <translation>Jour de la remise</translation>
  </message>
  <message>
   <source>Day of the price</source>
   <translation>Jour du prix</translation>
  </message>
  <message>
   <source>Day of the quotation</source>
   <translation>Jour du devis</translation>
  </message>
  <message>
   <source>Day on which to ask the customer again; the answer takes it away</source>
   <translation>Jour où relancer le client ; la réponse l’enlève</translation>
  </message>
  <message>
   <source>Days</source>
   <translation>Jours</translation>
  </message>
  <message>
   <source>Days as</source>
   <translation>Jours en</translation>
  </message>
  <message>
   <source>Days for which the offer stands, 1 to 730.</source>
   <translation>Jours de validité de l'offre, 1 à 730.</translation>
  </message>
  <message>
   <source>Days of noti&amp;ce</source>
   <translation>Jours &amp;d'avis</translation>
  </message>
  <message>
   <source>Days overdue</source>
   <translation>Jours de retard</translation>
  </message>
  <message>
   <source>Days until the permission is expected</source>
   <translation>Jours jusqu'à l'autorisation attendue</translation>
  </message>
  <message>
   <source>De&amp;livery address</source>
   <translation>Adresse de &amp;livraison</translation>
  </message>
  <message>
   <source>Decides automatic shut-off and the hold-open latch.</source>
   <translation>Décide de l'arrêt automatique et du cran de maintien.</translation>
  </message>
  <message>
   <source>Decides how the whip hose bends in a drive-off.</source>
   <translation>Décide comment plie le flexible de liaison lors d'un départ intempestif.</translation>
  </message>
  <message>
   <source>Decides the throughput threshold in Europe.</source>
   <translation>Décide du seuil de ventes en Europe.</translation>
  </message>
  <message>
   <source>Decimal sign</source>
   <translation>Signe décimal</translation>
  </message>
  <message>
   <source>Declined. Requote it and keep it: revision {0} opens.</source>
   <translation>Refusé. Refaites le devis et gardez-le : la révision {0} s'ouvre.</translation>
  </message>
  <message>
   <source>Delivery address</source>
   <translation>Adresse de livraison</translation>
  </message>
  <message>
   <source>Departures</source>
   <translation>Écarts</translation>
  </message>
  <message>
   <source>Derived from the answers and the local rules. Open a row for the rule and its source.</source>
   <translation>Tiré des réponses et des règles locales. Ouvrez une ligne pour la règle et sa source.</translation>
  </message>
  <message>
   <source>Describe an installed part</source>
   <translation>Décrire une pièce en place</translation>
  </message>
  <message>
   <source>Description</source>
   <translation>Désignation</translation>
  </message>
  <message>
   <source>Description of an installed part</source>
   <translation>Description d'une pièce en place</translation>
  </message>
  <message>
   <source>Diameter of the hose on the &amp;drum</source>
   <translation>Diamètre du flexible sur le &amp;tambour</translation>
  </message>
  <message>
   <source>Did you mean {0}?</source>
   <translation>Vouliez-vous dire {0} ?</translation>
  </message>
  <message>
   <source>Diesel</source>
   <translation>Gazole</translation>
  </message>
  <message>
   <source>Difference</source>
   <translation>Différence</translation>
  </message>
  <message>
   <source>Difference, hoses both cover</source>
   <translation>Différence, flexibles communs</translation>
  </message>
  <message>
   <source>Differs in</source>
   <translation>Se distingue par</translation>
  </message>
  <message>
   <source>Directive 2009/126/EC, EU summary</source>
   <translation>Directive 2009/126/CE, synthèse de l'UE</translation>
  </message>
  <message>
   <source>Discard &amp;the draft…</source>
   <translation>Aban&amp;donner le brouillon…</translation>
  </message>
  <message>
   <source>Discard the draft</source>
   <translation>Abandonner le brouillon</translation>
  </message>
  <message>
   <source>Discontinued from</source>
   <translation>Supprimé à partir du</translation>
  </message>
  <message>
   <source>Discount group</source>
   <translation>Groupe de remise</translation>
  </message>
  <message>
   <source>Discount groups</source>
   <translation>Groupes de remise</translation>
  </message>
  <message>
   <source>Discount rate, percent a year</source>
   <translation>Taux d'actualisation, pour cent par an</translation>
  </message>
  <message>
   <source>Discounts of makers</source>
   <translation>Remises des fabricants</translation>
  </message>
  <message>
   <source>Dispenser</source>
   <translation>Distributeur</translation>
  </message>
  <message>
   <source>Dispenser &amp;types…</source>
   <translation>&amp;Types de distributeur…</translation>
  </message>
  <message>
   <source>Dispenser maker's data</source>
   <translation>Données du fabricant du distributeur</translation>
  </message>
  <message>
   <source>Dispenser outlet</source>
   <translation>Sortie du distributeur</translation>
  </message>
  <message>
   <source>Dispenser type</source>
   <translation>Type de distributeur</translation>
  </message>
  <message>
   <source>Dispenser types</source>
   <translation>Types de distributeur</translation>
  </message>
  <message>
   <source>Dispenser types of the book</source>
   <translation>Types de distributeur du livre</translation>
  </message>
  <message>
   <source>Dispenser {0}</source>
   <translation>Distributeur {0}</translation>
  </message>
  <message>
   <source>Dispenser's plate</source>
   <translation>Plaque du distributeur</translation>
  </message>
  <message>
   <source>Dispensers and positions</source>
   <translation>Distributeurs et postes</translation>
  </message>
  <message>
   <source>Dispensers in a row where no island is named</source>
   <translation>Distributeurs par rangée sans îlot nommé</translation>
  </message>
  <message>
   <source>Do &amp;without the demonstration in this book</source>
   <translation>Se &amp;passer de la démonstration dans ce livre</translation>
  </message>
  <message>
   <source>Do not work out what the change means in money</source>
   <translation>Ne pas calculer ce que le changement signifie en argent</translation>
  </message>
  <message>
   <source>Do superseded parts go?</source>
   <translation>Les pièces remplacées partent-elles ?</translation>
  </message>
  <message>
   <source>Do the tanks lie underground?</source>
   <translation>Les cuves sont-elles enterrées ?</translation>
  </message>
  <message>
   <source>Do this</source>
   <translation>Faire ceci</translation>
  </message>
  <message>
   <source>Does a separ&amp;ate vapor return pipe end beside the outlet?</source>
   <translation>Une conduite séparée de retour de vapeur finit-elle à &amp;côté de la sortie ?</translation>
  </message>
  <message>
   <source>Does each grade have a vapor pipe of its own?</source>
   <translation>Chaque produit a-t-il sa propre conduite de vapeur ?</translation>
  </message>
  <message>
   <source>Does it stand under living or working &amp;quarters?</source>
   <translation>Est-elle sous des logements ou des &amp;bureaux ?</translation>
  </message>
  <message>
   <source>Does not fit: {reason}</source>
   <translation>Ne convient pas : {reason}</translation>
  </message>
  <message>
   <source>Does one central unit make the vacuum?</source>
   <translation>Une centrale fait-elle l'aspiration ?</translation>
  </message>
  <message>
   <source>Does the hose come down from ove&amp;rhead?</source>
   <translation>Le flexible descend-il d'en &amp;haut ?</translation>
  </message>
  <message>
   <source>Does the position e&amp;xist today?</source>
   <translation>Le poste e&amp;xiste-t-il aujourd'hui ?</translation>
  </message>
  <message>
   <source>Does the vacuum assist stop at vehicles with onboard recovery?</source>
   <translation>L'aspiration s'arr&amp;ête-t-elle aux véhicules à récupération embarquée ?</translation>
  </message>
  <message>
   <source>Does wor&amp;k go on at weekends?</source>
   <translation>Travaille-t-on le &amp;week-end ?</translation>
  </message>
  <message>
   <source>Down</source>
   <translation>Descendre</translation>
  </message>
  <message>
   <source>Downwards</source>
   <translation>Vers le bas</translation>
  </message>
  <message>
   <source>Draft</source>
   <translation>Brouillon</translation>
  </message>
  <message>
   <source>Drawing</source>
   <translation>Dessin</translation>
  </message>
  <message>
   <source>Drawing &amp;larger</source>
   <translation>Dessin plus &amp;grand</translation>
  </message>
  <message>
   <source>Drawing &amp;smaller</source>
   <translation>Dessin plus &amp;petit</translation>
  </message>
  <message>
   <source>Drawing larger</source>
   <translation>Dessin plus grand</translation>
  </message>
  <message>
   <source>Drawing of the position</source>
   <translation>Dessin du poste</translation>
  </message>
  <message>
   <source>Drawing or flow chart</source>
   <translation>Dessin ou courbe de débit</translation>
  </message>
  <message>
   <source>Drawing smaller</source>
   <translation>Dessin plus petit</translation>
  </message>
  <message>
   <source>Drive-offs</source>
   <translation>Départs intempestifs</translation>
  </message>
  <message>
   <source>Drive-offs expected, all years</source>
   <translation>Départs attendus, toutes années</translation>
  </message>
  <message>
   <source>Due</source>
   <translation>Échéance</translation>
  </message>
  <message>
   <source>Duplicate</source>
   <translation>Dupliquer</translation>
  </message>
  <message>
   <source>Duplicate chosen rows</source>
   <translation>Dupliquer</translation>
  </message>
  <message>
   <source>Duplicate {0}</source>
   <translation>Dupliquer {0}</translation>
  </message>
  <message>
   <source>Duty</source>
   <translation>Usage</translation>
  </message>
  <message>
   <source>Duty and take-up</source>
   <translation>Service et rappel du flexible</translation>
  </message>
  <message>
   <source>Duty, latch, prepay, overhead</source>
   <translation>Service, cran, prépaiement, sortie en hauteur</translation>
  </message>
  <message>
   <source>E&amp;dit…</source>
   <translation>Mo&amp;difier…</translation>
  </message>
  <message>
   <source>E&amp;ffect</source>
   <translation>Effet</translation>
  </message>
  <message>
   <source>E&amp;xclude it</source>
   <translation>L'e&amp;xclure</translation>
  </message>
  <message>
   <source>E&amp;xclude this part</source>
   <translation>E&amp;xclure cette pièce</translation>
  </message>
  <message>
   <source>E&amp;xport as a table…</source>
   <translation>Exporter en &amp;tableau…</translation>
  </message>
  <message>
   <source>E&amp;xport…</source>
   <translation>Expor&amp;ter…</translation>
  </message>
  <message>
   <source>E-mail</source>
   <translation>Courriel</translation>
  </message>
  <message>
   <source>EPA's public model</source>
   <translation>Modèle public de l'EPA</translation>
  </message>
  <message>
   <source>EPA-457/B-12-001 and state rules; local air agency</source>
   <translation>EPA-457/B-12-001 et règles des États ; agence de l'air locale</translation>
  </message>
  <message>
   <source>Each differs in kind from the set in hand. Taking one keeps its parts; undo brings back the cheapest.</source>
   <translation>Chacun diffère par son genre de l'ensemble en main. En prendre un garde ses pièces ; Annuler ramène le moins cher.</translation>
  </message>
  <message>
   <source>Each is judged again.</source>
   <translation>Chacune est jugée de nouveau.</translation>
  </message>
  <message>
   <source>Each kind once.</source>
   <translation>Chaque genre une fois.</translation>
  </message>
  <message>
   <source>Each once.</source>
   <translation>Chacun une fois.</translation>
  </message>
  <message>
   <source>Each option is planned and priced by itself.</source>
   <translation>Chaque option est prévue et chiffrée pour elle-même.</translation>
  </message>
  <message>
   <source>Each row names its own source: see Local rules</source>
   <translation>Chaque ligne nomme sa source : voir Règles locales</translation>
  </message>
  <message>
   <source>Each tax lies on the amounts ticked.</source>
   <translation>Chaque taxe porte sur les montants cochés.</translation>
  </message>
  <message>
   <source>Each was opened and read through when it was made. Kept: seven days, four weeks, those before changes, and those that were asked for.</source>
   <translation>Chacune a été ouverte et relue lors de sa création. Sont gardées : sept jours, quatre semaines, celles d'avant les changements, et celles demandées.</translation>
  </message>
  <message>
   <source>Each way keeps every must.</source>
   <translation>Chaque voie respecte chaque impératif.</translation>
  </message>
  <message>
   <source>Each works at a dispenser of its own.</source>
   <translation>Chacune travaille à son distributeur.</translation>
  </message>
  <message>
   <source>Each year once.</source>
   <translation>Chaque année une fois.</translation>
  </message>
  <message>
   <source>Edition</source>
   <translation>Édition</translation>
  </message>
  <message>
   <source>Edition {0} of {1} by {2}: {3}.</source>
   <translation>Édition {0} du {1} par {2} : {3}.</translation>
  </message>
  <message>
   <source>Edition: {0}.</source>
   <translation>Édition : {0}.</translation>
  </message>
  <message>
   <source>Effect</source>
   <translation>Effet</translation>
  </message>
  <message>
   <source>Effect &amp;on this station</source>
   <translation>&amp;Effet sur cette station</translation>
  </message>
  <message>
   <source>Efficiency at the no&amp;zzle in use</source>
   <translation>Rendement au pistolet en service</translation>
  </message>
  <message>
   <source>Either way the other stays open to you: stations under Survey, catalogs under Go.</source>
   <translation>L'autre reste ouvert : stations sous Relevé, catalogues sous Aller.</translation>
  </message>
  <message>
   <source>Emissions</source>
   <translation>Émissions</translation>
  </message>
  <message>
   <source>Empty takes the agency's figure.</source>
   <translation>Vide : le chiffre de l'agence.</translation>
  </message>
  <message>
   <source>Empty: the price follows.</source>
   <translation>Vide : le prix suivra.</translation>
  </message>
  <message>
   <source>Encoding</source>
   <translation>Encodage</translation>
  </message>
  <message>
   <source>Encoding of a text file</source>
   <translation>Encodage d'un fichier texte</translation>
  </message>
  <message>
   <source>Encoding: as found</source>
   <translation>Encodage : tel que trouvé</translation>
  </message>
  <message>
   <source>End that no other part joins</source>
   <translation>Extrémité qu'aucune autre pièce ne joint</translation>
  </message>
  <message>
   <source>Enlarge the drawing.</source>
   <translation>Agrandir le dessin.</translation>
  </message>
  <message>
   <source>Entries</source>
   <translation>Entrées</translation>
  </message>
  <message>
   <source>Entries of this name belong to one job; what it took already is left out.</source>
   <translation>Les écritures de ce nom sont d'un même travail ; ce qu'il a déjà pris est laissé de côté.</translation>
  </message>
  <message>
   <source>Entry</source>
   <translation>Entrée</translation>
  </message>
  <message>
   <source>Entry no. {0} counts no more.</source>
   <translation>L'écriture n° {0} ne compte plus.</translation>
  </message>
  <message>
   <source>Equipment list of the station</source>
   <translation>Liste d'équipement de la station</translation>
  </message>
  <message>
   <source>Every answer may stay open; the report says what it lacks. The agency decides.</source>
   <translation>Chaque réponse peut rester ouverte ; le rapport dit ce qui manque. L'agence décide.</translation>
  </message>
  <message>
   <source>Every change of this survey since it was opened; go back to any of them, and forward again.</source>
   <translation>Chaque modification de ce relevé depuis son ouverture ; revenir à l'une d'elles, puis avancer de nouveau.</translation>
  </message>
  <message>
   <source>Every combination is asked as a plan asks it.</source>
   <translation>Chaque combinaison est demandée comme un plan la demande.</translation>
  </message>
  <message>
   <source>Every obstacle with its numbers, and every way out with its set and price.</source>
   <translation>Chaque obstacle avec ses nombres, et chaque issue avec son ensemble et son prix.</translation>
  </message>
  <message>
   <source>Every part is held against the questions that stations can ask.</source>
   <translation>Chaque pièce est confrontée aux questions que les stations peuvent poser.</translation>
  </message>
  <message>
   <source>Every part new</source>
   <translation>Toutes pièces neuves</translation>
  </message>
  <message>
   <source>Every part whose field Family says the name has these figures, unless it has one of its own.</source>
   <translation>Chaque pièce dont le champ Famille porte ce nom a ces données, sauf si elle en a une propre.</translation>
  </message>
  <message>
   <source>Every position of the dispenser is repeated, without the parts decided on and without notes.</source>
   <translation>Chaque poste du distributeur est répété, sans les pièces décidées ni les notes.</translation>
  </message>
  <message>
   <source>Every position of the same liquid and blend</source>
   <translation>Chaque position du même liquide et du même mélange</translation>
  </message>
  <message>
   <source>Every row left out where {where} shows “{shows}”</source>
   <translation>Toute ligne écartée où {where} montre « {shows} »</translation>
  </message>
  <message>
   <source>Every set shown is one that no other outdoes on the axes chosen. Taking one asks for its parts.</source>
   <translation>Chaque ensemble montré n'est surpassé par aucun autre sur les axes choisis. En prendre un demande ses pièces.</translation>
  </message>
  <message>
   <source>Every set that no other outdoes in price, lead time, flow and more.</source>
   <translation>Tout ensemble qu'aucun autre ne surpasse en prix, délai, débit et plus.</translation>
  </message>
  <message>
   <source>Every step of a quotation comes here once it is saved in the book.</source>
   <translation>Chaque étape d'un devis apparaît ici dès qu'il est enregistré dans le livre.</translation>
  </message>
  <message>
   <source>Exceptions</source>
   <translation>Exceptions</translation>
  </message>
  <message>
   <source>Exchange rates</source>
   <translation>Cours de change</translation>
  </message>
  <message>
   <source>Exclude the marked part</source>
   <translation>Exclure la pièce marquée</translation>
  </message>
  <message>
   <source>Exclude {part}</source>
   <translation>Exclure {part}</translation>
  </message>
  <message>
   <source>Existing</source>
   <translation>Existante</translation>
  </message>
  <message>
   <source>Export</source>
   <translation>Exporter</translation>
  </message>
  <message>
   <source>Export as a table</source>
   <translation>Exporter en tableau</translation>
  </message>
  <message>
   <source>Fa&amp;milies…</source>
   <translation>Fami&amp;lles…</translation>
  </message>
  <message>
   <source>Families</source>
   <translation>Familles</translation>
  </message>
  <message>
   <source>Families of parts in {0}</source>
   <translation>Familles de pièces de {0}</translation>
  </message>
  <message>
   <source>Family</source>
   <translation>Famille</translation>
  </message>
  <message>
   <source>Faults and questions</source>
   <translation>Erreurs et questions</translation>
  </message>
  <message>
   <source>Faults and questions ({0})</source>
   <translation>Erreurs et questions ({0})</translation>
  </message>
  <message>
   <source>Feet, gallons, pounds-force, psi.</source>
   <translation>Pieds, gallons, livres-force, psi.</translation>
  </message>
  <message>
   <source>Female</source>
   <translation>Femelle</translation>
  </message>
  <message>
   <source>Fewest departures</source>
   <translation>Le moins d'écarts</translation>
  </message>
  <message>
   <source>Fi&amp;les…</source>
   <translation>&amp;Fichiers…</translation>
  </message>
  <message>
   <source>Fi&amp;nd</source>
   <translation>Cherc&amp;her</translation>
  </message>
  <message>
   <source>Fi&amp;rst year</source>
   <translation>P&amp;remière année</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Champ</translation>
  </message>
  <message>
   <source>Fields that could not be read, to be filled in here: {0}</source>
   <translation>Champs illisibles, à remplir ici : {0}</translation>
  </message>
  <message>
   <source>Figures in texts</source>
   <translation>Données dans les textes</translation>
  </message>
  <message>
   <source>Figures in texts ({0})</source>
   <translation>Données dans les textes ({0})</translation>
  </message>
  <message>
   <source>Figures of &amp;a similar part…</source>
   <translation>Valeurs d'une &amp;pièce semblable…</translation>
  </message>
  <message>
   <source>Figures of a described part</source>
   <translation>Chiffres d'une pièce décrite</translation>
  </message>
  <message>
   <source>Figures of a similar part</source>
   <translation>Valeurs d'une pièce semblable</translation>
  </message>
  <message>
   <source>Figures of an installed part</source>
   <translation>Chiffres d'une pièce en place</translation>
  </message>
  <message>
   <source>Figures of its parts</source>
   <translation>Données de ses pièces</translation>
  </message>
  <message>
   <source>Figures that are wrong</source>
   <translation>Données fausses</translation>
  </message>
  <message>
   <source>Files of the part</source>
   <translation>Fichiers de la pièce</translation>
  </message>
  <message>
   <source>Fill down</source>
   <translation>Recopier en bas</translation>
  </message>
  <message>
   <source>Fill the form from a terms file (Ctrl+O)</source>
   <translation>Remplir d'après un fichier de conditions (Ctrl+O)</translation>
  </message>
  <message>
   <source>Filler</source>
   <translation>Orifice</translation>
  </message>
  <message>
   <source>Filler distance</source>
   <translation>Distance orifice</translation>
  </message>
  <message>
   <source>Filler height</source>
   <translation>Hauteur orifice</translation>
  </message>
  <message>
   <source>Finding</source>
   <translation>Constat</translation>
  </message>
  <message>
   <source>Findings</source>
   <translation>Constats</translation>
  </message>
  <message>
   <source>Findings about this part</source>
   <translation>Constats sur cette pièce</translation>
  </message>
  <message>
   <source>Findings by weight</source>
   <translation>Constats par poids</translation>
  </message>
  <message>
   <source>Fingerprint of the survey</source>
   <translation>Empreinte du relevé</translation>
  </message>
  <message>
   <source>First &amp;day of the plan</source>
   <translation>Premier &amp;jour du plan</translation>
  </message>
  <message>
   <source>First day</source>
   <translation>Premier jour</translation>
  </message>
  <message>
   <source>First day of the price list</source>
   <translation>Premier jour de la liste de prix</translation>
  </message>
  <message>
   <source>Fittings and work, once</source>
   <translation>Raccords et travail, une fois</translation>
  </message>
  <message>
   <source>Flow</source>
   <translation>Débit</translation>
  </message>
  <message>
   <source>Flow against pressure</source>
   <translation>Débit face à la pression</translation>
  </message>
  <message>
   <source>Flow wanted at the no&amp;zzle</source>
   <translation>Débit souhaité au pi&amp;stolet</translation>
  </message>
  <message>
   <source>Folder for surveys, quotations, catalogs and rules</source>
   <translation>Dossier pour relevés, devis, catalogues et règles</translation>
  </message>
  <message>
   <source>Folder for the orders of all suppliers</source>
   <translation>Dossier pour les commandes de tous les fournisseurs</translation>
  </message>
  <message>
   <source>Folder of survey files</source>
   <translation>Dossier de fichiers de relevé</translation>
  </message>
  <message>
   <source>Follow up</source>
   <translation>Relance</translation>
  </message>
  <message>
   <source>For</source>
   <translation>Pour</translation>
  </message>
  <message>
   <source>For a bank or an agency, in place of the report: what hangs, what comes, when, at what cost.</source>
   <translation>Pour une banque ou une agence, à la place du rapport : ce qui est en place, ce qui vient, quand, à quel coût.</translation>
  </message>
  <message>
   <source>For a distributor</source>
   <translation>Pour un distributeur</translation>
  </message>
  <message>
   <source>For a part without a catalog number.</source>
   <translation>Pour une pièce sans numéro de catalogue.</translation>
  </message>
  <message>
   <source>For a station owner</source>
   <translation>Pour un exploitant</translation>
  </message>
  <message>
   <source>For an installer</source>
   <translation>Pour un installateur</translation>
  </message>
  <message>
   <source>For everybody</source>
   <translation>Pour tous</translation>
  </message>
  <message>
   <source>For price lists in another currency: one unit of theirs in units of the quotation's.</source>
   <translation>Pour les listes dans une autre monnaie : une unité de la leur en unités de celle du devis.</translation>
  </message>
  <message>
   <source>For quantities and masses.</source>
   <translation>Pour les quantités et les masses.</translation>
  </message>
  <message>
   <source>Forecourt from above</source>
   <translation>Piste vue de dessus</translation>
  </message>
  <message>
   <source>Forecourt from above.</source>
   <translation>Piste vue de dessus.</translation>
  </message>
  <message>
   <source>Free text</source>
   <translation>Texte libre</translation>
  </message>
  <message>
   <source>Freight and taxes</source>
   <translation>Transport et taxes</translation>
  </message>
  <message>
   <source>From</source>
   <translation>De</translation>
  </message>
  <message>
   <source>From a &amp;file…</source>
   <translation>D'un &amp;fichier…</translation>
  </message>
  <message>
   <source>From a dock or slip</source>
   <translation>D'un quai ou d'un ponton</translation>
  </message>
  <message>
   <source>From center line to center line of the hose.</source>
   <translation>D'axe à axe du flexible.</translation>
  </message>
  <message>
   <source>From dispenser type {0}</source>
   <translation>Du type de distributeur {0}</translation>
  </message>
  <message>
   <source>From memory</source>
   <translation>De mémoire</translation>
  </message>
  <message>
   <source>From quantity</source>
   <translation>À partir de la quantité</translation>
  </message>
  <message>
   <source>From the dispenser's maker. It must outlast the breakaway.</source>
   <translation>Du fabricant du distributeur. Elle doit tenir plus que le raccord cassant.</translation>
  </message>
  <message>
   <source>From the next start on the book in {0} is used; it was there already.</source>
   <translation>Dès le prochain démarrage, le livre de {0} est utilisé ; il y était déjà.</translation>
  </message>
  <message>
   <source>Fuel oil</source>
   <translation>Fioul</translation>
  </message>
  <message>
   <source>Fueling</source>
   <translation>Remplissage</translation>
  </message>
  <message>
   <source>Full renewal</source>
   <translation>Renouvellement complet</translation>
  </message>
  <message>
   <source>Further costs</source>
   <translation>Autres coûts</translation>
  </message>
  <message>
   <source>Further filler {0}</source>
   <translation>Autre goulotte {0}</translation>
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
   <translation>Essence</translation>
  </message>
  <message>
   <source>Gasoline sold in a &amp;year</source>
   <translation>Essen&amp;ce vendue par an</translation>
  </message>
  <message>
   <source>Gauge on site, or the pump maker's data</source>
   <translation>Manomètre sur place, ou données du fabricant de la pompe</translation>
  </message>
  <message>
   <source>Gen&amp;der</source>
   <translation>Gen&amp;re</translation>
  </message>
  <message>
   <source>Georgia page</source>
   <translation>Page de la Géorgie</translation>
  </message>
  <message>
   <source>Give other positions some of the answers of this one.</source>
   <translation>Donner à d'autres postes des réponses de celui-ci.</translation>
  </message>
  <message>
   <source>Gives up</source>
   <translation>Renonce à</translation>
  </message>
  <message>
   <source>Gives up: {lines}</source>
   <translation>Renonce à : {lines}</translation>
  </message>
  <message>
   <source>Go to the position above.</source>
   <translation>Aller au poste au-dessus.</translation>
  </message>
  <message>
   <source>Go to the position below.</source>
   <translation>Aller au poste au-dessous.</translation>
  </message>
  <message>
   <source>Go to the step after.</source>
   <translation>Aller à l'étape suivante.</translation>
  </message>
  <message>
   <source>Go to the step before.</source>
   <translation>Aller à l'étape précédente.</translation>
  </message>
  <message>
   <source>Good practice</source>
   <translation>Bonne pratique</translation>
  </message>
  <message>
   <source>Grade</source>
   <translation>Produit</translation>
  </message>
  <message>
   <source>Grant that was promised</source>
   <translation>Subvention promise</translation>
  </message>
  <message>
   <source>Greatest &amp;flow of the dispenser</source>
   <translation>&amp;Débit maximal du distributeur</translation>
  </message>
  <message>
   <source>Greatest share of a grade out of service</source>
   <translation>Part maximale d'un produit hors service</translation>
  </message>
  <message>
   <source>HTML page, for screen readers</source>
   <translation>Page HTML, pour lecteurs d’écran</translation>
  </message>
  <message>
   <source>Ha&amp;ng this one</source>
   <translation>&amp;Suspendre celui-ci</translation>
  </message>
  <message>
   <source>Hand to &amp;mail…</source>
   <translation>Confier au mail…</translation>
  </message>
  <message>
   <source>Hand to mail</source>
   <translation>Confier au mail</translation>
  </message>
  <message>
   <source>Hang {part}</source>
   <translation>Suspendre {part}</translation>
  </message>
  <message>
   <source>Head of the bill.</source>
   <translation>En-tête de la nomenclature.</translation>
  </message>
  <message>
   <source>Heading</source>
   <translation>Titre</translation>
  </message>
  <message>
   <source>Health</source>
   <translation>Ét&amp;at</translation>
  </message>
  <message>
   <source>Heigh&amp;t from which the cord pulls</source>
   <translation>Hauteur d'où ti&amp;re le câble</translation>
  </message>
  <message>
   <source>Help</source>
   <translation>Aide</translation>
  </message>
  <message>
   <source>Here the options of the quotation come to stand side by side: what each covers, costs and takes.</source>
   <translation>Ici viendront les options du devis côte à côte : ce que chacune couvre, coûte et demande.</translation>
  </message>
  <message>
   <source>High contrast</source>
   <translation>Contraste élevé</translation>
  </message>
  <message>
   <source>Highest temperature, sun on the hose included.</source>
   <translation>Température la plus haute, soleil sur le flexible compris.</translation>
  </message>
  <message>
   <source>Ho&amp;ttest</source>
   <translation>Le plus ch&amp;aud</translation>
  </message>
  <message>
   <source>Hold the last share</source>
   <translation>Maintenir la dernière part</translation>
  </message>
  <message>
   <source>Hold-open wanted</source>
   <translation>Cran souhaité</translation>
  </message>
  <message>
   <source>Hoo&amp;k height</source>
   <translation>Hauteur du cro&amp;chet</translation>
  </message>
  <message>
   <source>Hook distance</source>
   <translation>Distance crochet</translation>
  </message>
  <message>
   <source>Hook height</source>
   <translation>Hauteur crochet</translation>
  </message>
  <message>
   <source>Horizontal distance from the outlet to the nozzle at rest.</source>
   <translation>Distance horizontale de la sortie au pistolet au repos.</translation>
  </message>
  <message>
   <source>Horizontal distance from the point below the outlet.</source>
   <translation>Distance horizontale depuis l'aplomb de la sortie.</translation>
  </message>
  <message>
   <source>Hose</source>
   <translation>Flexible</translation>
  </message>
  <message>
   <source>Hose cut to length</source>
   <translation>Flexible coupé à longueur</translation>
  </message>
  <message>
   <source>Hose on the drum is curved and costs flow; it is counted.</source>
   <translation>Le flexible enroulé est courbé et coûte du débit ; c'est compté.</translation>
  </message>
  <message>
   <source>Hose reel</source>
   <translation>Enrouleur de flexible</translation>
  </message>
  <message>
   <source>Hose take-up</source>
   <translation>Rangement du flexible</translation>
  </message>
  <message>
   <source>Hoses</source>
   <translation>Flexibles</translation>
  </message>
  <message>
   <source>Hours</source>
   <translation>Heures</translation>
  </message>
  <message>
   <source>Hours count once for each position, dispenser or site; kinds limit a task to sets that hold one.</source>
   <translation>Les heures comptent une fois par poste, distributeur ou station ; les genres limitent une tâche aux ensembles qui en contiennent.</translation>
  </message>
  <message>
   <source>Hours with a &amp;reconnectable breakaway</source>
   <translation>Heures, raccord &amp;réarmable</translation>
  </message>
  <message>
   <source>How do you want to begin?</source>
   <translation>Comment voulez-vous commencer ?</translation>
  </message>
  <message>
   <source>How each of three people works here.</source>
   <translation>Comment chacune de trois personnes travaille ici.</translation>
  </message>
  <message>
   <source>How far the change in money is worked out</source>
   <translation>Où en est le calcul du changement en argent</translation>
  </message>
  <message>
   <source>How far the quotation is</source>
   <translation>Où en est le devis</translation>
  </message>
  <message>
   <source>How far the step is</source>
   <translation>Avancement de l’étape</translation>
  </message>
  <message>
   <source>How is the hose taken &amp;up after use?</source>
   <translation>Comment le flexible est-il &amp;rangé après usage ?</translation>
  </message>
  <message>
   <source>How is vapor recovered &amp;today?</source>
   <translation>Comment les vapeurs sont-elles récupérées au&amp;jourd'hui ?</translation>
  </message>
  <message>
   <source>How is vapor to be recovered in f&amp;uture?</source>
   <translation>Comment les vapeurs seront-elles récupérées à l'&amp;avenir ?</translation>
  </message>
  <message>
   <source>How many joints one container seals; empty: one container for each set.</source>
   <translation>Combien de joints étanche un récipient ; vide : un récipient par ensemble.</translation>
  </message>
  <message>
   <source>How much &amp;blend is in it?</source>
   <translation>Quelle part de &amp;mélange contient-il ?</translation>
  </message>
  <message>
   <source>How sure?</source>
   <translation>Quelle certitude ?</translation>
  </message>
  <message>
   <source>How the customer's prices are made.</source>
   <translation>Comment se forment les prix du client.</translation>
  </message>
  <message>
   <source>I&amp;mport a table…</source>
   <translation>I&amp;mporter un tableau…</translation>
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
   <translation>Importer des types de distributeur</translation>
  </message>
  <message>
   <source>Import old numbers</source>
   <translation>Importer d'anciens numéros</translation>
  </message>
  <message>
   <source>In a row where no island is named:</source>
   <translation>Par rangée sans îlot :</translation>
  </message>
  <message>
   <source>In detail</source>
   <translation>En détail</translation>
  </message>
  <message>
   <source>In flammable zone</source>
   <translation>Zone inflammable</translation>
  </message>
  <message>
   <source>In hand: {catalog}, {edition}</source>
   <translation>En main : {catalog}, {edition}</translation>
  </message>
  <message>
   <source>In no year</source>
   <translation>Aucune année</translation>
  </message>
  <message>
   <source>In the currency of the quotation.</source>
   <translation>Dans la monnaie du devis.</translation>
  </message>
  <message>
   <source>In the currency of the site.</source>
   <translation>Dans la monnaie de la station.</translation>
  </message>
  <message>
   <source>In the file: {0}</source>
   <translation>Dans le fichier : {0}</translation>
  </message>
  <message>
   <source>In the order entered</source>
   <translation>Dans l’ordre de saisie</translation>
  </message>
  <message>
   <source>Inspections due</source>
   <translation>Contrôles à échéance</translation>
  </message>
  <message>
   <source>Inspections fall due from the day of handing over on; give it above.</source>
   <translation>Les inspections arrivent à échéance dès le jour de la remise ; indiquez-le ci-dessus.</translation>
  </message>
  <message>
   <source>Install</source>
   <translation>Poser</translation>
  </message>
  <message>
   <source>Installed</source>
   <translation>Posé</translation>
  </message>
  <message>
   <source>Installed (part number)</source>
   <translation>En place (n°)</translation>
  </message>
  <message>
   <source>Installed parts</source>
   <translation>Pièces en place</translation>
  </message>
  <message>
   <source>Installer's pack</source>
   <translation>Dossier de l'installateur</translation>
  </message>
  <message>
   <source>Installer's work</source>
   <translation>Travail de l'installateur</translation>
  </message>
  <message>
   <source>Installer's work: a loading list, a sheet for each position, and the caution sheet to sign.</source>
   <translation>Travail de l'installateur : une liste de chargement, une feuille par poste et la feuille de précautions à signer.</translation>
  </message>
  <message>
   <source>Instruments used (type, number)</source>
   <translation>Appareils de mesure (type, numéro)</translation>
  </message>
  <message>
   <source>International Fire Code, overhead dispensers (recalled; confirm in the adopted edition)</source>
   <translation>International Fire Code, distributeurs suspendus (de mémoire ; à confirmer dans l'édition adoptée)</translation>
  </message>
  <message>
   <source>Is a hold-open l&amp;atch wanted?</source>
   <translation>Faut-il un &amp;cran de maintien ?</translation>
  </message>
  <message>
   <source>Is a re&amp;connectable breakaway wanted?</source>
   <translation>&amp;Un raccord cassant réarmable est-il souhaité ?</translation>
  </message>
  <message>
   <source>Is it a &amp;fenced above-ground site, closed to the public?</source>
   <translation>Est-ce un site &amp;clos à cuves aériennes, fermé au public ?</translation>
  </message>
  <message>
   <source>Is the DEF nozzle used inside the flammable &amp;zone of a fuel dispenser?</source>
   <translation>Le pistolet DEF sert-il dans la &amp;zone inflammable d'un distributeur de carburant ?</translation>
  </message>
  <message>
   <source>Is the vapor pipe the only link between the tanks?</source>
   <translation>La conduite de vapeur est-elle le seul &amp;lien entre les cuves ?</translation>
  </message>
  <message>
   <source>Island</source>
   <translation>Îlot</translation>
  </message>
  <message>
   <source>Island of the dispenser</source>
   <translation>Îlot du distributeur</translation>
  </message>
  <message>
   <source>Island {0}</source>
   <translation>Îlot {0}</translation>
  </message>
  <message>
   <source>Islands of the new dispensers</source>
   <translation>Îlots des nouveaux distributeurs</translation>
  </message>
  <message>
   <source>Islands that keep recovery</source>
   <translation>Îlots qui gardent la récupération</translation>
  </message>
  <message>
   <source>Iss&amp;ue</source>
   <translation>É&amp;mettre</translation>
  </message>
  <message>
   <source>Issue although hoses are left out</source>
   <translation>Émettre malgré des flexibles omis</translation>
  </message>
  <message>
   <source>Issue although the margin is low</source>
   <translation>Émettre malgré une marge faible</translation>
  </message>
  <message>
   <source>It begins with terms: whose offer it is, prices, labor, charges, days.</source>
   <translation>Il commence par des conditions : de qui est l'offre, prix, main-d'œuvre, frais, jours.</translation>
  </message>
  <message>
   <source>It can be put together again after it separated, where its maker says so.</source>
   <translation>Il se réarme après s'être séparé, là où son fabricant le dit.</translation>
  </message>
  <message>
   <source>It ends in 2020. Own shares, further down, go before it.</source>
   <translation>Elle finit en 2020. Les parts propres, plus bas, priment.</translation>
  </message>
  <message>
   <source>It expired after {0}. Requote it and keep it: revision {1} opens.</source>
   <translation>Il a expiré après le {0}. Refaites le devis et gardez-le : la révision {1} s'ouvre.</translation>
  </message>
  <message>
   <source>It hangs</source>
   <translation>Ce qui pend</translation>
  </message>
  <message>
   <source>It is</source>
   <translation>C'est</translation>
  </message>
  <message>
   <source>It is larger than many mail services take.</source>
   <translation>Il est plus gros que ce que beaucoup de services de messagerie acceptent.</translation>
  </message>
  <message>
   <source>It is valid through {0}. Note the customer's answer, or requote it.</source>
   <translation>Il vaut jusqu'au {0}. Notez la réponse du client, ou refaites le devis.</translation>
  </message>
  <message>
   <source>Item number</source>
   <translation>Numéro d'article</translation>
  </message>
  <message>
   <source>Its figures</source>
   <translation>Ses valeurs</translation>
  </message>
  <message>
   <source>Its maker</source>
   <translation>Son fabricant</translation>
  </message>
  <message>
   <source>Its number.</source>
   <translation>Son numéro.</translation>
  </message>
  <message>
   <source>Its number; a part of the same kind.</source>
   <translation>Son numéro ; une pièce du même genre.</translation>
  </message>
  <message>
   <source>Job</source>
   <translation>Travail</translation>
  </message>
  <message>
   <source>Judged with the diesel family</source>
   <translation>Jugé avec la famille du gazole</translation>
  </message>
  <message>
   <source>Judging {part} at {label}…</source>
   <translation>Examen de {part} à {label}…</translation>
  </message>
  <message>
   <source>Keep an alternate in place of its part and quote so; the money is shown first</source>
   <translation>Garder une variante à la place de sa pièce et chiffrer ainsi ; l’argent est montré d’abord</translation>
  </message>
  <message>
   <source>Keep as usual terms</source>
   <translation>Garder comme conditions usuelles</translation>
  </message>
  <message>
   <source>Keep at least</source>
   <translation>Garder au moins</translation>
  </message>
  <message>
   <source>Keep both</source>
   <translation>Garder les deux</translation>
  </message>
  <message>
   <source>Keep mine</source>
   <translation>Garder le mien</translation>
  </message>
  <message>
   <source>Keep or replace</source>
   <translation>Garder ou remplacer</translation>
  </message>
  <message>
   <source>Keep the customers of the book, and choose whom to quote to</source>
   <translation>Tenir les clients du registre et choisir à qui l’on propose</translation>
  </message>
  <message>
   <source>Keep the firm's types of dispensers and choose one for this dispenser, which its positions inherit.</source>
   <translation>Tenir les types de distributeur de la maison et en choisir un pour ce distributeur ; ses postes en héritent.</translation>
  </message>
  <message>
   <source>Keep the invented catalog &amp;Demonstration in this book</source>
   <translation>Garder le catalogue inventé Demonstration dans ce livre</translation>
  </message>
  <message>
   <source>Keep the parts that the file does not hold</source>
   <translation>Garder les pièces que le fichier ne contient pas</translation>
  </message>
  <message>
   <source>Keeps the grade on sale; empty goes by liquid and blend.</source>
   <translation>Garde le produit en vente ; vide : d'après liquide et mélange.</translation>
  </message>
  <message>
   <source>Keeps, other than the set in hand: {lines}</source>
   <translation>Respecte, à la différence de l'ensemble en main : {lines}</translation>
  </message>
  <message>
   <source>Kept</source>
   <translation>Gardé</translation>
  </message>
  <message>
   <source>Kept as usual terms in {path}.</source>
   <translation>Gardées comme conditions usuelles dans {path}.</translation>
  </message>
  <message>
   <source>Kept parts cost nothing</source>
   <translation>Les pièces gardées ne coûtent rien</translation>
  </message>
  <message>
   <source>Kerosene</source>
   <translation>Kérosène</translation>
  </message>
  <message>
   <source>Keys</source>
   <translation>Touches</translation>
  </message>
  <message>
   <source>Kilograms</source>
   <translation>Kilogrammes</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Genre</translation>
  </message>
  <message>
   <source>Kind of a part without a catalog number</source>
   <translation>Genre d'une pièce sans numéro de catalogue</translation>
  </message>
  <message>
   <source>Kind of part</source>
   <translation>Genre de pièce</translation>
  </message>
  <message>
   <source>Kind of rows that name none</source>
   <translation>Genre des lignes qui n'en nomment pas</translation>
  </message>
  <message>
   <source>Kind: as the rows say</source>
   <translation>Genre : selon les lignes</translation>
  </message>
  <message>
   <source>La&amp;nguage</source>
   <translation>&amp;Langue</translation>
  </message>
  <message>
   <source>Labor</source>
   <translation>Main-d'œuvre</translation>
  </message>
  <message>
   <source>Lacks</source>
   <translation>Manque</translation>
  </message>
  <message>
   <source>Language of the papers</source>
   <translation>Langue des documents</translation>
  </message>
  <message>
   <source>Language, units, theme, catalog, usual local rules, data folder and backups in one place.</source>
   <translation>Langue, unités, thème, catalogue, règles locales usuelles, dossier des données et sauvegardes au même endroit.</translation>
  </message>
  <message>
   <source>Large tanks, high flow</source>
   <translation>Grands réservoirs, fort débit</translation>
  </message>
  <message>
   <source>Last day</source>
   <translation>Dernier jour</translation>
  </message>
  <message>
   <source>Last day of the price list</source>
   <translation>Dernier jour de la liste de prix</translation>
  </message>
  <message>
   <source>Last done</source>
   <translation>Dernière</translation>
  </message>
  <message>
   <source>Last entries</source>
   <translation>Dernières écritures</translation>
  </message>
  <message>
   <source>Lead days</source>
   <translation>Délai en jours</translation>
  </message>
  <message>
   <source>Lead time</source>
   <translation>Délai</translation>
  </message>
  <message>
   <source>Lead time in days</source>
   <translation>Délai de livraison en jours</translation>
  </message>
  <message>
   <source>Leads to</source>
   <translation>Mène à</translation>
  </message>
  <message>
   <source>Leak test certificate</source>
   <translation>Attestation d'essai d'étanchéité</translation>
  </message>
  <message>
   <source>Least</source>
   <translation>Minimum</translation>
  </message>
  <message>
   <source>Least cost</source>
   <translation>Moindre coût</translation>
  </message>
  <message>
   <source>Leave &amp;aside the parts asked for</source>
   <translation>&amp;Laisser de côté les pièces demandées</translation>
  </message>
  <message>
   <source>Leave and &amp;lose the changes</source>
   <translation>Quitter et &amp;perdre les modifications</translation>
  </message>
  <message>
   <source>Leave as it &amp;was</source>
   <translation>Laisser tel &amp;quel</translation>
  </message>
  <message>
   <source>Leave out every row that shows a text</source>
   <translation>Écarter toute ligne qui montre un texte</translation>
  </message>
  <message>
   <source>Leave the marked part open</source>
   <translation>Laisser libre la pièce marquée</translation>
  </message>
  <message>
   <source>Leave the row out</source>
   <translation>Écarter la ligne</translation>
  </message>
  <message>
   <source>Leave the terms as they were? What you wrote here is lost.</source>
   <translation>Laisser les conditions telles qu'avant ? Ce que vous avez écrit ici est perdu.</translation>
  </message>
  <message>
   <source>Leave {part} open</source>
   <translation>Laisser {part} libre</translation>
  </message>
  <message>
   <source>Left out by a repair</source>
   <translation>Écartée par une réparation</translation>
  </message>
  <message>
   <source>Left out: a heading between rows</source>
   <translation>Écartée : un intertitre</translation>
  </message>
  <message>
   <source>Left out: a total</source>
   <translation>Écartée : un total</translation>
  </message>
  <message>
   <source>Left out: the titles once more</source>
   <translation>Écartée : les titres à nouveau</translation>
  </message>
  <message>
   <source>Legs of the way seen from above, separated by semicolons, where the hose must go round a corner.</source>
   <translation>Tronçons du chemin vus de dessus, séparés par des points-virgules, là où le flexible contourne un angle.</translation>
  </message>
  <message>
   <source>Lengths are in</source>
   <translation>Longueurs en</translation>
  </message>
  <message>
   <source>Let all parts go</source>
   <translation>Libérer toutes les pièces</translation>
  </message>
  <message>
   <source>Let the draft hold what the file holds and nothing else</source>
   <translation>Ne laisser dans le brouillon que ce que contient le fichier</translation>
  </message>
  <message>
   <source>Let the price lists decide again, and quote again</source>
   <translation>Laisser de nouveau décider les listes de prix, et refaire le devis</translation>
  </message>
  <message>
   <source>Let this s&amp;urvey plan as the book does</source>
   <translation>Planifier ce rele&amp;vé comme le registre</translation>
  </message>
  <message>
   <source>Let this survey plan &amp;with it</source>
   <translation>Plani&amp;fier ce relevé avec elle</translation>
  </message>
  <message>
   <source>Letterhead</source>
   <translation>En-tête de lettre</translation>
  </message>
  <message>
   <source>Letterhead, conditions, prices, labor and taxes stand in every new quotation then</source>
   <translation>En-tête, conditions, prix, main-d'œuvre et taxes figurent alors dans chaque nouveau devis</translation>
  </message>
  <message>
   <source>License</source>
   <translation>Habilitation</translation>
  </message>
  <message>
   <source>Lies on</source>
   <translation>Porte sur</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Clair</translation>
  </message>
  <message>
   <source>Limit</source>
   <translation>Limite</translation>
  </message>
  <message>
   <source>Limit from: {source}</source>
   <translation>Limite d'après : {source}</translation>
  </message>
  <message>
   <source>Limits behind it: {0}</source>
   <translation>Limites sous-jacentes : {0}</translation>
  </message>
  <message>
   <source>Line by line, as printed.</source>
   <translation>Ligne par ligne, comme imprimé.</translation>
  </message>
  <message>
   <source>Lines are sold below cost or the least margin: issuing it asks why. See Prices.</source>
   <translation>Des lignes sont sous le coût ou la marge minimale : l’émission demande pourquoi. Voir Prix.</translation>
  </message>
  <message>
   <source>Liquid</source>
   <translation>Liquide</translation>
  </message>
  <message>
   <source>Liquid and blend</source>
   <translation>Liquide et mélange</translation>
  </message>
  <message>
   <source>Liquid only</source>
   <translation>Liquide seul</translation>
  </message>
  <message>
   <source>Liquid sold today</source>
   <translation>Liquide vendu aujourd'hui</translation>
  </message>
  <message>
   <source>List as a paper</source>
   <translation>Liste sur papier</translation>
  </message>
  <message>
   <source>List price</source>
   <translation>Prix de liste</translation>
  </message>
  <message>
   <source>List prices of the catalog in this currency.</source>
   <translation>Prix de liste du catalogue dans cette monnaie.</translation>
  </message>
  <message>
   <source>List prices with what goes with the sets; longest lead time {days}.</source>
   <translation>Prix de liste avec ce qui va avec les ensembles ; délai le plus long {days}.</translation>
  </message>
  <message>
   <source>Listing class without a scheme</source>
   <translation>Classe de listage sans référentiel</translation>
  </message>
  <message>
   <source>Local &amp;rules of new surveys</source>
   <translation>&amp;Règles locales des nouveaux relevés</translation>
  </message>
  <message>
   <source>Local rules</source>
   <translation>Règles locales</translation>
  </message>
  <message>
   <source>Local rules to show</source>
   <translation>Règles locales à montrer</translation>
  </message>
  <message>
   <source>Long hose, yard or delivery</source>
   <translation>Long flexible, dépôt ou livraison</translation>
  </message>
  <message>
   <source>Longest</source>
   <translation>La plus longue</translation>
  </message>
  <message>
   <source>Look &amp;at its health</source>
   <translation>Voir son é&amp;tat</translation>
  </message>
  <message>
   <source>Look at &amp;it</source>
   <translation>Voi&amp;r</translation>
  </message>
  <message>
   <source>Look at the demonstration</source>
   <translation>Voir la démonstration</translation>
  </message>
  <message>
   <source>Look into the outlet: one bore, or one tube inside another.</source>
   <translation>Regardez dans la sortie : un seul passage, ou un tube dans un autre.</translation>
  </message>
  <message>
   <source>Look up any catalog part and read what speaks against it here.</source>
   <translation>Cherchez une pièce du catalogue et lisez ce qui s'y oppose ici.</translation>
  </message>
  <message>
   <source>Looking for other sets…</source>
   <translation>Recherche d'autres ensembles…</translation>
  </message>
  <message>
   <source>Looking for reasons and ways out</source>
   <translation>Recherche de raisons et d'issues</translation>
  </message>
  <message>
   <source>Looking for sets…</source>
   <translation>Recherche d'ensembles…</translation>
  </message>
  <message>
   <source>Looking for the reasons and for what would help…</source>
   <translation>Recherche des raisons et de ce qui aiderait…</translation>
  </message>
  <message>
   <source>Looking for what would help…</source>
   <translation>Recherche de ce qui aiderait…</translation>
  </message>
  <message>
   <source>Looking…</source>
   <translation>Examen en cours…</translation>
  </message>
  <message>
   <source>Lowers the threshold of a new station.</source>
   <translation>Abaisse le seuil d'une station neuve.</translation>
  </message>
  <message>
   <source>Lowest air temperature the hardware meets.</source>
   <translation>Température d'air la plus basse que subit le matériel.</translation>
  </message>
  <message>
   <source>Made</source>
   <translation>Faite</translation>
  </message>
  <message>
   <source>Made up by</source>
   <translation>Monté par</translation>
  </message>
  <message>
   <source>Made with these packages; open one to read its license.</source>
   <translation>Fait avec ces paquets ; ouvrez-en un pour lire sa licence.</translation>
  </message>
  <message>
   <source>Make the change again that was taken back.</source>
   <translation>Rétablir la modification annulée.</translation>
  </message>
  <message>
   <source>Make the drawing smaller.</source>
   <translation>Réduire le dessin.</translation>
  </message>
  <message>
   <source>Make the paper</source>
   <translation>Composer le document</translation>
  </message>
  <message>
   <source>Make the parts list</source>
   <translation>Composer la liste des pièces</translation>
  </message>
  <message>
   <source>Maker</source>
   <translation>Fabricant</translation>
  </message>
  <message>
   <source>Maker of rows that name none</source>
   <translation>Fabricant des lignes qui n'en nomment pas</translation>
  </message>
  <message>
   <source>Maker of the old number</source>
   <translation>Fabricant de l'ancien numéro</translation>
  </message>
  <message>
   <source>Maker of the part</source>
   <translation>Fabricant de la pièce</translation>
  </message>
  <message>
   <source>Maker of the price list</source>
   <translation>Fabricant de la liste de prix</translation>
  </message>
  <message>
   <source>Makers ordered there</source>
   <translation>Fabricants commandés là</translation>
  </message>
  <message>
   <source>Makers whose parts are ordered there, parted by semicolons</source>
   <translation>Fabricants dont les pièces y sont commandées, séparés par des points-virgules</translation>
  </message>
  <message>
   <source>Makes one change of the survey, which can be undone.</source>
   <translation>Fait un changement du relevé, qui peut être annulé.</translation>
  </message>
  <message>
   <source>Making the paper…</source>
   <translation>Composition du document…</translation>
  </message>
  <message>
   <source>Male</source>
   <translation>Mâle</translation>
  </message>
  <message>
   <source>Margi&amp;n</source>
   <translation>Marge</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Marge</translation>
  </message>
  <message>
   <source>Margin lost per position and hour</source>
   <translation>Marge perdue par poste et heure</translation>
  </message>
  <message>
   <source>Margin, %</source>
   <translation>Marge, %</translation>
  </message>
  <message>
   <source>Mark a part to read what speaks against it here.</source>
   <translation>Marquez une pièce pour lire ce qui s'y oppose ici.</translation>
  </message>
  <message>
   <source>Mass of the line</source>
   <translation>Masse de la ligne</translation>
  </message>
  <message>
   <source>Materials, labor, freight: any of them.</source>
   <translation>Fournitures, main-d’œuvre, fret : au choix.</translation>
  </message>
  <message>
   <source>Matter</source>
   <translation>Objet</translation>
  </message>
  <message>
   <source>Maximum flow</source>
   <translation>Débit maximal</translation>
  </message>
  <message>
   <source>May parts that still fit stay?</source>
   <translation>Les pi&amp;èces qui conviennent encore peuvent-elles rester ?</translation>
  </message>
  <message>
   <source>Mean fill of a boat</source>
   <translation>Plein moyen d'un bateau</translation>
  </message>
  <message>
   <source>Mean temperature of the air</source>
   <translation>Température moyenne de l'air</translation>
  </message>
  <message>
   <source>Measure a distance: drag from one point to the other (M)</source>
   <translation>Mesurer une distance : glissez d’un point à l’autre (M)</translation>
  </message>
  <message>
   <source>Measure from the point on the ground below the outlet. The drawing follows.</source>
   <translation>Mesurez depuis l'aplomb de la sortie au sol. Le dessin suit.</translation>
  </message>
  <message>
   <source>Measured at the dispenser's outlet with the nozzle open.</source>
   <translation>Mesurée à la sortie du distributeur, pistolet ouvert.</translation>
  </message>
  <message>
   <source>Measured on site</source>
   <translation>Mesuré sur place</translation>
  </message>
  <message>
   <source>Merge both</source>
   <translation>Réunir les deux</translation>
  </message>
  <message>
   <source>Merged. Yours stands where both changed the same (yours / theirs):</source>
   <translation>Réunis. Le vôtre vaut là où les deux ont changé la même chose (le vôtre / l'autre) :</translation>
  </message>
  <message>
   <source>Merged: both edits go into the book.</source>
   <translation>Réunis : les deux modifications vont au registre.</translation>
  </message>
  <message>
   <source>Meters, liters, newtons, kilopascals.</source>
   <translation>Mètres, litres, newtons, kilopascals.</translation>
  </message>
  <message>
   <source>Metric</source>
   <translation>Métrique</translation>
  </message>
  <message>
   <source>Metric units</source>
   <translation>Unités métriques</translation>
  </message>
  <message>
   <source>Money</source>
   <translation>Argent</translation>
  </message>
  <message>
   <source>More a year later</source>
   <translation>Surcoût un an plus tard</translation>
  </message>
  <message>
   <source>More than {0} entries, {1} of them shown: type more of it</source>
   <translation>Plus de {0} entrées, dont {1} montrées : tapez davantage</translation>
  </message>
  <message>
   <source>Move the chosen rows down (Alt+Down)</source>
   <translation>Descendre les lignes choisies (Alt+Bas)</translation>
  </message>
  <message>
   <source>Move the chosen rows up (Alt+Up)</source>
   <translation>Monter les lignes choisies (Alt+Haut)</translation>
  </message>
  <message>
   <source>Movement</source>
   <translation>Mouvement</translation>
  </message>
  <message>
   <source>Moving each figure that nobody measured through its range…</source>
   <translation>Chaque donnée que personne n'a mesurée varie dans sa plage…</translation>
  </message>
  <message>
   <source>N&amp;one</source>
   <translation>&amp;Aucun</translation>
  </message>
  <message>
   <source>NFPA 30A as reproduced by state agencies</source>
   <translation>NFPA 30A, reprise par des agences d'États</translation>
  </message>
  <message>
   <source>NFPA 30A as reproduced by state agencies; local code</source>
   <translation>NFPA 30A, reprise par des agences d'États ; règles locales</translation>
  </message>
  <message>
   <source>NOT in the book: taken off its list</source>
   <translation>PAS au registre : ôté de sa liste</translation>
  </message>
  <message>
   <source>NOT saved</source>
   <translation>NON enregistré</translation>
  </message>
  <message>
   <source>NOT saved yet: waiting for the book</source>
   <translation>PAS encore enregistré : attente du registre</translation>
  </message>
  <message>
   <source>NOT saved: saved by another window meanwhile</source>
   <translation>PAS enregistré : une autre fenêtre l'a enregistré entre-temps</translation>
  </message>
  <message>
   <source>NOT saved: the book may only be read</source>
   <translation>PAS enregistré : registre en lecture seule</translation>
  </message>
  <message>
   <source>NPT</source>
   <translation>NPT</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Nom</translation>
  </message>
  <message>
   <source>Name and reason stand on record with the quotation.</source>
   <translation>Nom et raison restent notés avec le devis.</translation>
  </message>
  <message>
   <source>Name of a new catalog</source>
   <translation>Nom d'un nouveau catalogue</translation>
  </message>
  <message>
   <source>Name of a new site</source>
   <translation>Nom d'une nouvelle station</translation>
  </message>
  <message>
   <source>Name of the &amp;catalog</source>
   <translation>&amp;Nom du catalogue</translation>
  </message>
  <message>
   <source>Name of the dispenser</source>
   <translation>Nom du distributeur</translation>
  </message>
  <message>
   <source>Name of the family</source>
   <translation>Nom de la famille</translation>
  </message>
  <message>
   <source>Name of the first s&amp;ite</source>
   <translation>Nom du premier &amp;site</translation>
  </message>
  <message>
   <source>Name of the g&amp;rade</source>
   <translation>Nom &amp;du produit</translation>
  </message>
  <message>
   <source>Name of the new site</source>
   <translation>Nom de la nouvelle station</translation>
  </message>
  <message>
   <source>Name of the position</source>
   <translation>Nom du poste</translation>
  </message>
  <message>
   <source>Name of the price list</source>
   <translation>Nom de la liste de prix</translation>
  </message>
  <message>
   <source>Name printed on the quotation.</source>
   <translation>Nom imprimé sur le devis.</translation>
  </message>
  <message>
   <source>Name, customer, local rules, climate and service of the site.</source>
   <translation>Nom, client, règles locales, climat et service de la station.</translation>
  </message>
  <message>
   <source>Named cases</source>
   <translation>Cas nommés</translation>
  </message>
  <message>
   <source>Names of the new dispensers</source>
   <translation>Noms des nouveaux distributeurs</translation>
  </message>
  <message>
   <source>Ne&amp;w part…</source>
   <translation>&amp;Nouvelle pièce…</translation>
  </message>
  <message>
   <source>Near side, far side, high tank, boat deck.</source>
   <translation>Côté proche, côté opposé, réservoir haut, pont du bateau.</translation>
  </message>
  <message>
   <source>Nearest</source>
   <translation>Le plus proche</translation>
  </message>
  <message>
   <source>Needed: stands on the paper beside your name</source>
   <translation>Nécessaire : figure sur le document à côté de votre nom</translation>
  </message>
  <message>
   <source>New option, total</source>
   <translation>Nouvelle option, total</translation>
  </message>
  <message>
   <source>New or refurbished</source>
   <translation>Neuve ou rénovée</translation>
  </message>
  <message>
   <source>New part {0}, pieces</source>
   <translation>Nouvelle pièce {0}, unités</translation>
  </message>
  <message>
   <source>New quotations of the station that is open go to this customer unasked</source>
   <translation>Les nouveaux devis de la station ouverte vont à ce client sans rien demander</translation>
  </message>
  <message>
   <source>Next</source>
   <translation>Suivant</translation>
  </message>
  <message>
   <source>Next due</source>
   <translation>Échéance</translation>
  </message>
  <message>
   <source>No</source>
   <translation>Non</translation>
  </message>
  <message>
   <source>No &amp;type</source>
   <translation>A&amp;ucun type</translation>
  </message>
  <message>
   <source>No catalog part has this in its number, name or maker.</source>
   <translation>Aucune pièce du catalogue n'a cela dans son numéro, son nom ou son fabricant.</translation>
  </message>
  <message>
   <source>No file yet</source>
   <translation>Aucun fichier encore</translation>
  </message>
  <message>
   <source>No for one that the conversion adds.</source>
   <translation>Non pour un poste que la conversion ajoute.</translation>
  </message>
  <message>
   <source>No list of parts is offered until this is settled.</source>
   <translation>Aucune liste de pièces n'est offerte avant que ce soit réglé.</translation>
  </message>
  <message>
   <source>No open quotation is touched by a change of catalog or price lists.</source>
   <translation>Aucun devis ouvert n'est touché par un changement de catalogue ou de listes de prix.</translation>
  </message>
  <message>
   <source>No other part could hang here.</source>
   <translation>Aucune autre pièce ne pourrait pendre ici.</translation>
  </message>
  <message>
   <source>No other set differs in a way worth showing.</source>
   <translation>Aucun autre ensemble ne diffère d'une façon qui mérite d'être montrée.</translation>
  </message>
  <message>
   <source>No part comes into question while the answers contradict each other.</source>
   <translation>Aucune pièce n'est envisageable tant que les réponses se contredisent.</translation>
  </message>
  <message>
   <source>No part of the set takes longer to come.</source>
   <translation>Aucune pièce de l'ensemble ne met plus longtemps.</translation>
  </message>
  <message>
   <source>No plan can be made</source>
   <translation>Aucun plan possible</translation>
  </message>
  <message>
   <source>No position is surveyed yet: say what each of them sells, then quote.</source>
   <translation>Aucun poste n'est encore relevé : dites ce que chacun vend, puis faites le devis.</translation>
  </message>
  <message>
   <source>No price</source>
   <translation>Sans prix</translation>
  </message>
  <message>
   <source>No price list applies to {part} on {day}.</source>
   <translation>Aucune liste de prix ne s’applique à {part} le {day}.</translation>
  </message>
  <message>
   <source>No question can choose it</source>
   <translation>Aucune question ne peut la choisir</translation>
  </message>
  <message>
   <source>No quotation yet</source>
   <translation>Pas encore de devis</translation>
  </message>
  <message>
   <source>No rows. Add, or the Insert key, makes one; rows can be pasted from a spreadsheet.</source>
   <translation>Aucune ligne. Ajouter, ou la touche Inser, en crée une ; des lignes peuvent être collées d'un tableur.</translation>
  </message>
  <message>
   <source>No set is planned for this position.</source>
   <translation>Aucun ensemble n'est prévu pour ce poste.</translation>
  </message>
  <message>
   <source>No set was chosen for this position, so there is no part to replace.</source>
   <translation>Aucun ensemble n'a été choisi pour cette position ; il n'y a pas de pièce à remplacer.</translation>
  </message>
  <message>
   <source>No terms in hand</source>
   <translation>Pas de conditions en main</translation>
  </message>
  <message>
   <source>No type</source>
   <translation>Aucun type</translation>
  </message>
  <message>
   <source>No van and no store is known yet: count or receive something first.</source>
   <translation>Aucun fourgon ni dépôt n'est encore connu : comptez ou recevez d'abord quelque chose.</translation>
  </message>
  <message>
   <source>No&amp;tes</source>
   <translation>No&amp;tes</translation>
  </message>
  <message>
   <source>No.</source>
   <translation>N°</translation>
  </message>
  <message>
   <source>None</source>
   <translation>Aucune</translation>
  </message>
  <message>
   <source>None yet; one is made each day.</source>
   <translation>Aucune encore ; il s'en fait une chaque jour.</translation>
  </message>
  <message>
   <source>Not all changes are in the book yet; choose the language when they are.</source>
   <translation>Des modifications ne sont pas encore au registre ; choisissez la langue quand elles y seront.</translation>
  </message>
  <message>
   <source>Not counted, without a dated record or a set: {0}</source>
   <translation>Non comptés, sans relevé daté ou sans ensemble : {0}</translation>
  </message>
  <message>
   <source>Not decided for {0} of them.</source>
   <translation>Non tranché pour {0} d'entre elles.</translation>
  </message>
  <message>
   <source>Not everything is saved</source>
   <translation>Tout n'est pas enregistré</translation>
  </message>
  <message>
   <source>Not in the catalog and in no order file: {0}</source>
   <translation>Ni au catalogue ni dans aucun fichier de commande : {0}</translation>
  </message>
  <message>
   <source>Not included</source>
   <translation>Non compris</translation>
  </message>
  <message>
   <source>Not known yet</source>
   <translation>Pas encore connu</translation>
  </message>
  <message>
   <source>Not ready</source>
   <translation>Pas prête</translation>
  </message>
  <message>
   <source>Not scanned</source>
   <translation>Non scanné</translation>
  </message>
  <message>
   <source>Not surveyed yet</source>
   <translation>Pas encore relevé</translation>
  </message>
  <message>
   <source>Not surveyed yet, and not in the list: {labels}.</source>
   <translation>Pas encore relevés, et pas dans la liste : {labels}.</translation>
  </message>
  <message>
   <source>Not surveyed yet, and not quoted: {0}</source>
   <translation>Pas encore relevés, et hors du devis : {0}</translation>
  </message>
  <message>
   <source>Not yet described</source>
   <translation>Pas encore décrit</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Remarque</translation>
  </message>
  <message>
   <source>Note it as do&amp;ne today</source>
   <translation>Noter &amp;fait</translation>
  </message>
  <message>
   <source>Note to the answer: how it came, what was said</source>
   <translation>Note sur la réponse : comment elle est venue, ce qui a été dit</translation>
  </message>
  <message>
   <source>Note to the customer's answer</source>
   <translation>Note sur la réponse du client</translation>
  </message>
  <message>
   <source>Notes</source>
   <translation>Notes</translation>
  </message>
  <message>
   <source>Nothing differs between the two.</source>
   <translation>Rien ne diffère entre les deux.</translation>
  </message>
  <message>
   <source>Nothing has been agreed yet.</source>
   <translation>Rien n'est encore convenu.</translation>
  </message>
  <message>
   <source>Nothing is agreed for this position.</source>
   <translation>Rien n'est convenu pour ce poste.</translation>
  </message>
  <message>
   <source>Nothing is agreed that could be undone.</source>
   <translation>Rien n'est convenu qui puisse être annulé.</translation>
  </message>
  <message>
   <source>Nothing is called so. Try another word, or fewer.</source>
   <translation>Rien ne s'appelle ainsi. Essayez un autre mot, ou moins de mots.</translation>
  </message>
  <message>
   <source>Nothing is hidden: what is broken, what is open, what is worth knowing.</source>
   <translation>Rien n'est caché : ce qui est enfreint, ce qui est ouvert, ce qui est bon à savoir.</translation>
  </message>
  <message>
   <source>Nothing is kept; these are the usual columns.</source>
   <translation>Rien n’est gardé ; ce sont les colonnes usuelles.</translation>
  </message>
  <message>
   <source>Nothing of the survey is changed by looking. Accept makes one change of it, which can be undone.</source>
   <translation>Consulter ne change pas le relevé. Accepter en fait une seule modification, qui peut être annulée.</translation>
  </message>
  <message>
   <source>Nothing to look at.</source>
   <translation>Rien à examiner.</translation>
  </message>
  <message>
   <source>Nothing was changed.</source>
   <translation>Rien n'a été modifié.</translation>
  </message>
  <message>
   <source>Nothing was changed: entries that are marked need a look.</source>
   <translation>Rien n'a été modifié : les saisies marquées sont à revoir.</translation>
  </message>
  <message>
   <source>Nothing was printed.</source>
   <translation>Rien n'a été imprimé.</translation>
  </message>
  <message>
   <source>Nothing was printed: the printer, or the file that it prints into, takes nothing.</source>
   <translation>Rien n'a été imprimé : l'imprimante, ou le fichier où elle imprime, n'accepte rien.</translation>
  </message>
  <message>
   <source>Nothing was printed: {reason}</source>
   <translation>Rien n'a été imprimé : {reason}</translation>
  </message>
  <message>
   <source>Nothing was recorded: answers that are marked need a look.</source>
   <translation>Rien n'a été noté : les réponses marquées sont à revoir.</translation>
  </message>
  <message>
   <source>Nothing was saved: {reason}</source>
   <translation>Rien n'a été enregistré : {reason}</translation>
  </message>
  <message>
   <source>Nothing was taken</source>
   <translation>Rien n'a été pris</translation>
  </message>
  <message>
   <source>Nothing was written. {path}: {reason}.</source>
   <translation>Rien n'a été écrit. {path} : {reason}.</translation>
  </message>
  <message>
   <source>Nothing was written: choose a cell further left, or copy fewer; the table has {0} columns.</source>
   <translation>Rien n'a été écrit : choisissez une cellule plus à gauche, ou copiez moins ; la table a {0} colonnes.</translation>
  </message>
  <message>
   <source>Nothing was written: the table takes at most {0} rows.</source>
   <translation>Rien n'a été écrit : la table prend au plus {0} lignes.</translation>
  </message>
  <message>
   <source>Notice</source>
   <translation>Avis</translation>
  </message>
  <message>
   <source>Notice: caution</source>
   <translation>Avis : attention</translation>
  </message>
  <message>
   <source>Notice: done</source>
   <translation>Avis : fait</translation>
  </message>
  <message>
   <source>Notice: question</source>
   <translation>Avis : question</translation>
  </message>
  <message>
   <source>Notice: trouble</source>
   <translation>Avis : problème</translation>
  </message>
  <message>
   <source>Now, {0}</source>
   <translation>Maintenant, {0}</translation>
  </message>
  <message>
   <source>Nozzle</source>
   <translation>Pistolet</translation>
  </message>
  <message>
   <source>Nozzle hook</source>
   <translation>Crochet du pistolet</translation>
  </message>
  <message>
   <source>Number</source>
   <translation>Numéro</translation>
  </message>
  <message>
   <source>Number and day</source>
   <translation>Numéro et jour</translation>
  </message>
  <message>
   <source>Number of the article</source>
   <translation>Numéro de l'article</translation>
  </message>
  <message>
   <source>Number of the line</source>
   <translation>Numéro de la ligne</translation>
  </message>
  <message>
   <source>Number of the part</source>
   <translation>Numéro de la pièce</translation>
  </message>
  <message>
   <source>Number of the quotation</source>
   <translation>Numéro du devis</translation>
  </message>
  <message>
   <source>Number, customer, site or part</source>
   <translation>Numéro, client, station ou pièce</translation>
  </message>
  <message>
   <source>Number, name or maker</source>
   <translation>Numéro, nom ou fabricant</translation>
  </message>
  <message>
   <source>Number, name or maker of a part</source>
   <translation>Numéro, nom ou fabricant d'une pièce</translation>
  </message>
  <message>
   <source>Number, old number, name, maker, item number, GTIN or supplier</source>
   <translation>Numéro, ancien numéro, nom, fabricant, numéro d'article, GTIN ou fournisseur</translation>
  </message>
  <message>
   <source>Numbers that no part of the draft has: {0}, such as {1}.</source>
   <translation>Numéros qu’aucune pièce du brouillon n’a : {0}, comme {1}.</translation>
  </message>
  <message>
   <source>O&amp;utlet height</source>
   <translation>Hauteur &amp;de sortie</translation>
  </message>
  <message>
   <source>OAR 340-244-0247(1)</source>
   <translation>OAR 340-244-0247(1)</translation>
  </message>
  <message>
   <source>Of a crew.</source>
   <translation>D'une équipe.</translation>
  </message>
  <message>
   <source>Of the converted hardware.</source>
   <translation>Du matériel converti.</translation>
  </message>
  <message>
   <source>Of the dispenser's own thread.</source>
   <translation>Du filetage propre au distributeur.</translation>
  </message>
  <message>
   <source>Of the gasoline in the season that counts, such as 62 kPa.</source>
   <translation>De l'essence dans la saison qui compte, par exemple 62 kPa.</translation>
  </message>
  <message>
   <source>Of the liquid that is lost through hoses; empty: such losses are left out.</source>
   <translation>Du liquide perdu par les flexibles ; vide : ces pertes sont laissées de côté.</translation>
  </message>
  <message>
   <source>Of the nozzle's inlet at rest, above the ground.</source>
   <translation>De l'entrée du pistolet au repos, au-dessus du sol.</translation>
  </message>
  <message>
   <source>Of the price; a line below it is asked about before the issue. Empty: only below cost.</source>
   <translation>Du prix ; une ligne au-dessous fait poser la question avant l’émission. Vide : seulement sous le coût.</translation>
  </message>
  <message>
   <source>Of the season that counts, such as 15 °C.</source>
   <translation>De la saison qui compte, par exemple 15 °C.</translation>
  </message>
  <message>
   <source>Offered instead</source>
   <translation>Proposée à la place</translation>
  </message>
  <message>
   <source>Old maker</source>
   <translation>Ancien fabricant</translation>
  </message>
  <message>
   <source>Old number</source>
   <translation>Ancien numéro</translation>
  </message>
  <message>
   <source>Old number, its maker, or the part it leads to</source>
   <translation>Ancien numéro, son fabricant ou la pièce à laquelle il mène</translation>
  </message>
  <message>
   <source>Old numbers</source>
   <translation>Anciens numéros</translation>
  </message>
  <message>
   <source>Old numbers of the table's makers that the draft holds and the table does not</source>
   <translation>Anciens numéros des fabricants du tableau que le brouillon contient et le tableau non</translation>
  </message>
  <message>
   <source>Old numbers that lead to parts come here; a table of them can be read in.</source>
   <translation>Les anciens numéros qui mènent à des pièces apparaissent ici ; on peut en lire un tableau.</translation>
  </message>
  <message>
   <source>Oldest age at which a part may stay, years</source>
   <translation>Âge maximal d'une pièce qui reste, ans</translation>
  </message>
  <message>
   <source>Once for each</source>
   <translation>Une fois par</translation>
  </message>
  <message>
   <source>Once more, whatever was taken already</source>
   <translation>Encore une fois, quoi qu'on ait déjà pris</translation>
  </message>
  <message>
   <source>Once, or before the lines are added up.</source>
   <translation>Une fois, ou avant l'addition des lignes.</translation>
  </message>
  <message>
   <source>One HTML page that is filled in without a network; what it saves is read back as a filled form.</source>
   <translation>Une page HTML qui se remplit sans réseau ; ce qu'elle enregistre est relu comme fiche remplie.</translation>
  </message>
  <message>
   <source>One balance never mixes two.</source>
   <translation>Un bilan n'en mêle jamais deux.</translation>
  </message>
  <message>
   <source>One bore</source>
   <translation>Un seul passage</translation>
  </message>
  <message>
   <source>One field of {0} parts</source>
   <translation>Un champ de {0} pièces</translation>
  </message>
  <message>
   <source>One is made each day. The last is of {0}; {1} are kept.</source>
   <translation>Il s'en fait une chaque jour. La dernière est du {0} ; {1} sont gardées.</translation>
  </message>
  <message>
   <source>One kind, or every kind.</source>
   <translation>Un genre, ou tous.</translation>
  </message>
  <message>
   <source>One line for each site (CSV)</source>
   <translation>Une ligne par station (CSV)</translation>
  </message>
  <message>
   <source>One moment…</source>
   <translation>Un instant…</translation>
  </message>
  <message>
   <source>One of these kinds of part; empty: at every set.</source>
   <translation>Un de ces genres de pièce ; vide : à chaque ensemble.</translation>
  </message>
  <message>
   <source>One person a line: role; name; telephone</source>
   <translation>Une personne par ligne : rôle ; nom ; téléphone</translation>
  </message>
  <message>
   <source>One revision so far.</source>
   <translation>Une seule révision jusqu'ici.</translation>
  </message>
  <message>
   <source>One row for each column, from left to right. The customer's price is none of them.</source>
   <translation>Une ligne pour chaque colonne, de gauche à droite. Le prix du client n’en est pas.</translation>
  </message>
  <message>
   <source>One search over commands, positions, surveys, quotations, parts and help.</source>
   <translation>Une recherche parmi commandes, postes, relevés, devis, pièces et aide.</translation>
  </message>
  <message>
   <source>One sentence in each row.</source>
   <translation>Une phrase par ligne.</translation>
  </message>
  <message>
   <source>One sentence.</source>
   <translation>Une phrase.</translation>
  </message>
  <message>
   <source>One to four alternatives side by side in one quotation.</source>
   <translation>Une à quatre variantes côte à côte dans un devis.</translation>
  </message>
  <message>
   <source>Only gasoline has vapor recovery at the nozzle. Whether it may be taken out is for the local air agency to say.</source>
   <translation>Seule l'essence a une récupération des vapeurs au pistolet. L'agence de l'air dit si elle peut être ôtée.</translation>
  </message>
  <message>
   <source>Only rows that differ &amp;from where they were copied from</source>
   <translation>Seulement les lignes qui diffèrent de leur &amp;origine</translation>
  </message>
  <message>
   <source>Only these years count then.</source>
   <translation>Seules ces années comptent alors.</translation>
  </message>
  <message>
   <source>Only what is not &amp;yet described</source>
   <translation>Seulement ce &amp;qui n'est pas décrit</translation>
  </message>
  <message>
   <source>Only where boats are fueled; such as 120 L.</source>
   <translation>Seulement si l'on remplit des bateaux ; par exemple 120 L.</translation>
  </message>
  <message>
   <source>Only where the set holds</source>
   <translation>Seulement si l'ensemble contient</translation>
  </message>
  <message>
   <source>Open a file</source>
   <translation>Ouvrir un fichier</translation>
  </message>
  <message>
   <source>Open a file…</source>
   <translation>Ouvrir un fichier…</translation>
  </message>
  <message>
   <source>Open a row to follow the calculation by hand: formula, figures, result, source.</source>
   <translation>Ouvrez une ligne pour suivre le calcul à la main : formule, chiffres, résultat, source.</translation>
  </message>
  <message>
   <source>Open a&amp;ll</source>
   <translation>&amp;Tout ouvrir</translation>
  </message>
  <message>
   <source>Open, add or remove surveys of the book.</source>
   <translation>Ouvrir, ajouter ou retirer des relevés du registre.</translation>
  </message>
  <message>
   <source>Opening the book of surveys…</source>
   <translation>Ouverture du registre des relevés…</translation>
  </message>
  <message>
   <source>Option</source>
   <translation>Option</translation>
  </message>
  <message>
   <source>Option and line</source>
   <translation>Option et ligne</translation>
  </message>
  <message>
   <source>Option left out, total</source>
   <translation>Option ôtée, total</translation>
  </message>
  <message>
   <source>Option of the pick list and the suppliers</source>
   <translation>Option de la liste de prélèvement et des fournisseurs</translation>
  </message>
  <message>
   <source>Option “{0}”</source>
   <translation>Option « {0} »</translation>
  </message>
  <message>
   <source>Options</source>
   <translation>Options</translation>
  </message>
  <message>
   <source>Options leave hoses out: issuing it asks why. Check the paper first.</source>
   <translation>Des options omettent des flexibles : à l'émission la raison est demandée. Vérifier d'abord le document.</translation>
  </message>
  <message>
   <source>Options side by side</source>
   <translation>Options côte à côte</translation>
  </message>
  <message>
   <source>Order lot</source>
   <translation>Lot de commande</translation>
  </message>
  <message>
   <source>Orders by supplier of what is to be ordered, as each supplier reads them</source>
   <translation>Commandes par fournisseur de ce qui est à commander, comme chacun les lit</translation>
  </message>
  <message>
   <source>Orders by supplier: {0}</source>
   <translation>Commandes par fournisseur : {0}</translation>
  </message>
  <message>
   <source>Order…</source>
   <translation>Commander…</translation>
  </message>
  <message>
   <source>Other answer</source>
   <translation>Autre réponse</translation>
  </message>
  <message>
   <source>Other parts can then take their places.</source>
   <translation>D'autres pièces peuvent alors les remplacer.</translation>
  </message>
  <message>
   <source>Other parts for this place</source>
   <translation>Autres pièces pour cette place</translation>
  </message>
  <message>
   <source>Other set</source>
   <translation>Autre ensemble</translation>
  </message>
  <message>
   <source>Other sets</source>
   <translation>Autres</translation>
  </message>
  <message>
   <source>Other side of dispenser {0}</source>
   <translation>Autre côté du distributeur {0}</translation>
  </message>
  <message>
   <source>Otherwise than dispenser type {0}</source>
   <translation>Autrement que le type de distributeur {0}</translation>
  </message>
  <message>
   <source>Outcome</source>
   <translation>Résultat</translation>
  </message>
  <message>
   <source>Outcome or part</source>
   <translation>Résultat</translation>
  </message>
  <message>
   <source>Outlet direction</source>
   <translation>Sens sortie</translation>
  </message>
  <message>
   <source>Outlet gender</source>
   <translation>Genre sortie</translation>
  </message>
  <message>
   <source>Outlet height</source>
   <translation>Hauteur sortie</translation>
  </message>
  <message>
   <source>Outlet p&amp;oints</source>
   <translation>Sortie orie&amp;ntée</translation>
  </message>
  <message>
   <source>Outlet path</source>
   <translation>Voie sortie</translation>
  </message>
  <message>
   <source>Outlet pull strength</source>
   <translation>Tenue sortie</translation>
  </message>
  <message>
   <source>Outlet size</source>
   <translation>Taille sortie</translation>
  </message>
  <message>
   <source>Outlet thread</source>
   <translation>Filetage sortie</translation>
  </message>
  <message>
   <source>Outlet to fille&amp;r, level</source>
   <translation>&amp;Sortie à orifice, à plat</translation>
  </message>
  <message>
   <source>Outlet to filler, level</source>
   <translation>Sortie à orifice, à plat</translation>
  </message>
  <message>
   <source>Outlet to hook, &amp;level</source>
   <translation>Sortie à crochet, à p&amp;lat</translation>
  </message>
  <message>
   <source>Outlines UL 87C and 2586C; zones: NFPA 30A and the local code</source>
   <translation>Projets UL 87C et 2586C ; zones : NFPA 30A et règles locales</translation>
  </message>
  <message>
   <source>Overhead</source>
   <translation>En hauteur</translation>
  </message>
  <message>
   <source>Own onboard shares</source>
   <translation>Parts embarquées du propriétaire</translation>
  </message>
  <message>
   <source>Owner's offers</source>
   <translation>Offres du propriétaire</translation>
  </message>
  <message>
   <source>Owner's source, named above</source>
   <translation>Source du propriétaire, nommée ci-dessus</translation>
  </message>
  <message>
   <source>Owner's wish</source>
   <translation>Souhait du propriétaire</translation>
  </message>
  <message>
   <source>P&amp;apers</source>
   <translation>Docume&amp;nts</translation>
  </message>
  <message>
   <source>P&amp;rice lists</source>
   <translation>Listes de pri&amp;x</translation>
  </message>
  <message>
   <source>P&amp;ublish</source>
   <translation>&amp;Publier</translation>
  </message>
  <message>
   <source>PNG or JPEG for the letterhead.</source>
   <translation>PNG ou JPEG pour l'en-tête.</translation>
  </message>
  <message>
   <source>Pack</source>
   <translation>Conditionnement</translation>
  </message>
  <message>
   <source>Package</source>
   <translation>Paquet</translation>
  </message>
  <message>
   <source>Packages with their licenses</source>
   <translation>Paquets avec leurs licences</translation>
  </message>
  <message>
   <source>Packs</source>
   <translation>Paquets</translation>
  </message>
  <message>
   <source>Page</source>
   <translation>Page</translation>
  </message>
  <message>
   <source>Page of help</source>
   <translation>Page d'aide</translation>
  </message>
  <message>
   <source>Page {0}</source>
   <translation>Page {0}</translation>
  </message>
  <message>
   <source>Pages of help</source>
   <translation>Pages d'aide</translation>
  </message>
  <message>
   <source>Pages of the bill</source>
   <translation>Pages de la nomenclature</translation>
  </message>
  <message>
   <source>Pages of the conversion report</source>
   <translation>Pages du rapport de conversion</translation>
  </message>
  <message>
   <source>Pages of the installer's paper</source>
   <translation>Pages du document de l'installateur</translation>
  </message>
  <message>
   <source>Pages of the quotation</source>
   <translation>Pages du devis</translation>
  </message>
  <message>
   <source>Panels of the set</source>
   <translation>Volets de l'ensemble</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Document</translation>
  </message>
  <message>
   <source>Paper (P&amp;DF)</source>
   <translation>Papier (PDF)</translation>
  </message>
  <message>
   <source>Papers show it from then on. At a station, the sets of all positions at once.</source>
   <translation>Les documents le montrent dès lors. Pour une station, les ensembles de toutes les positions à la fois.</translation>
  </message>
  <message>
   <source>Papers to take along, the record of each position, replacements from the truck, inspections.</source>
   <translation>Documents à emporter, procès-verbal de chaque poste, remplacements depuis le fourgon, contrôles.</translation>
  </message>
  <message>
   <source>Parallel, 55°</source>
   <translation>Cylindrique, 55°</translation>
  </message>
  <message>
   <source>Part</source>
   <translation>Pièce</translation>
  </message>
  <message>
   <source>Part &amp;number</source>
   <translation>&amp;Numéro de pièce</translation>
  </message>
  <message>
   <source>Part asked for</source>
   <translation>Pièce demandée</translation>
  </message>
  <message>
   <source>Part maker</source>
   <translation>Fabricant de la pièce</translation>
  </message>
  <message>
   <source>Part not on the tr&amp;uck</source>
   <translation>Pièce absente du fou&amp;rgon</translation>
  </message>
  <message>
   <source>Part number</source>
   <translation>Numéro de pièce</translation>
  </message>
  <message>
   <source>Part of a line</source>
   <translation>Pièce d’une ligne</translation>
  </message>
  <message>
   <source>Part refused</source>
   <translation>Pièce refusée</translation>
  </message>
  <message>
   <source>Part that is not on the truck</source>
   <translation>Pièce absente du fourgon</translation>
  </message>
  <message>
   <source>Part there today {0}</source>
   <translation>Pièce d'aujourd'hui {0}</translation>
  </message>
  <message>
   <source>Part whose price is asked</source>
   <translation>Pièce dont le prix est demandé</translation>
  </message>
  <message>
   <source>Part {0} left out, pieces</source>
   <translation>Pièce {0} ôtée, unités</translation>
  </message>
  <message>
   <source>Parted by semicolons.</source>
   <translation>Séparés par des points-virgules.</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Pièces</translation>
  </message>
  <message>
   <source>Parts and verdicts alone, a page for ten hoses, with the caution sheet.</source>
   <translation>Pièces et résultats seuls, une page pour dix flexibles, avec la feuille d'avertissements.</translation>
  </message>
  <message>
   <source>Parts installed once</source>
   <translation>Pièces montées une fois</translation>
  </message>
  <message>
   <source>Parts kept and refused, lead time</source>
   <translation>Pièces retenues et refusées, délai</translation>
  </message>
  <message>
   <source>Parts left per place</source>
   <translation>Pièces restantes par place</translation>
  </message>
  <message>
   <source>Parts list</source>
   <translation>Liste des pièces</translation>
  </message>
  <message>
   <source>Parts list &amp;of the site</source>
   <translation>&amp;Liste des pièces de la station</translation>
  </message>
  <message>
   <source>Parts list of the site</source>
   <translation>Liste des pièces de la station</translation>
  </message>
  <message>
   <source>Parts list: a set for each position that fits together, with its price and its reasons.</source>
   <translation>Liste des pièces : pour chaque poste un ensemble qui s'assemble, avec son prix et ses raisons.</translation>
  </message>
  <message>
   <source>Parts of all positions</source>
   <translation>Pièces de tous les postes</translation>
  </message>
  <message>
   <source>Parts of the article, dispenser first</source>
   <translation>Pièces de l'article, côté distributeur d'abord</translation>
  </message>
  <message>
   <source>Parts of the catalog</source>
   <translation>Pièces du catalogue</translation>
  </message>
  <message>
   <source>Parts of the set in hand</source>
   <translation>Pièces de l'ensemble en main</translation>
  </message>
  <message>
   <source>Parts of the table's makers that the draft holds and the table does not</source>
   <translation>Pièces des fabricants du tableau que le brouillon contient et le tableau non</translation>
  </message>
  <message>
   <source>Parts of this set are kept by choice, which leaves no other set to compare. Let them go to see others.</source>
   <translation>Des pièces de cet ensemble sont gardées par choix, il ne reste aucun autre ensemble à comparer. Libérez-les pour en voir d'autres.</translation>
  </message>
  <message>
   <source>Parts offered in place of those of lines, with the difference in price and in no total.</source>
   <translation>Pièces proposées à la place de celles des lignes, avec la différence de prix et dans aucun total.</translation>
  </message>
  <message>
   <source>Parts that differ</source>
   <translation>Pièces différentes</translation>
  </message>
  <message>
   <source>Parts that differ ({0})</source>
   <translation>Pièces différentes ({0})</translation>
  </message>
  <message>
   <source>Parts that were replaced come here; the fields below add the first.</source>
   <translation>Les pièces remplacées apparaissent ici ; les champs ci-dessous ajoutent la première.</translation>
  </message>
  <message>
   <source>Parts that were scanned at a van or store are listed here.</source>
   <translation>Ici figurent les pièces scannées dans un camion ou un magasin.</translation>
  </message>
  <message>
   <source>Paste positions</source>
   <translation>Coller des postes</translation>
  </message>
  <message>
   <source>Path at the dispenser</source>
   <translation>Voie au distributeur</translation>
  </message>
  <message>
   <source>Path, where known</source>
   <translation>Voie, si connue</translation>
  </message>
  <message>
   <source>People to call</source>
   <translation>Qui appeler</translation>
  </message>
  <message>
   <source>Percent</source>
   <translation>Pourcentage</translation>
  </message>
  <message>
   <source>Percent biodiesel</source>
   <translation>Pourcentage de biodiesel</translation>
  </message>
  <message>
   <source>Percent by volume at most: ethanol in gasoline, biodiesel in diesel, kerosene or fuel oil. Take the highest figure the supplier may deliver.</source>
   <translation>Pourcentage en volume au plus : éthanol dans l'essence, biodiesel dans le gazole, le kérosène ou le fioul. Prenez le chiffre le plus haut que le fournisseur peut livrer.</translation>
  </message>
  <message>
   <source>Percent ethanol</source>
   <translation>Pourcentage d'éthanol</translation>
  </message>
  <message>
   <source>Percent in a year on what lies in spares; empty: spares are left out.</source>
   <translation>Pour cent par an sur ce que valent les rechanges ; vide : les rechanges sont laissées de côté.</translation>
  </message>
  <message>
   <source>Percent of all that is installed of a kind, rounded up once and spread over the parts of which there are most.</source>
   <translation>Pourcentage de tout ce qui est monté d’un genre, arrondi une fois vers le haut et réparti sur les pièces les plus nombreuses.</translation>
  </message>
  <message>
   <source>Percent of separations after which it is replaced all the same.</source>
   <translation>Pourcentage des séparations après lesquelles il est remplacé quand même.</translation>
  </message>
  <message>
   <source>Percent off the list, line by line: hoses = 14</source>
   <translation>Pour cent de moins que la liste, ligne par ligne : hoses = 14</translation>
  </message>
  <message>
   <source>Percent, 0 to 100.</source>
   <translation>Pour cent, 0 à 100.</translation>
  </message>
  <message>
   <source>Permit number</source>
   <translation>Numéro d'autorisation</translation>
  </message>
  <message>
   <source>Photos</source>
   <translation>Photos</translation>
  </message>
  <message>
   <source>Pick &amp;list</source>
   <translation>Prél&amp;èvement</translation>
  </message>
  <message>
   <source>Pick a &amp;file…</source>
   <translation>Choisir un &amp;fichier…</translation>
  </message>
  <message>
   <source>Pick a catalog of your own first: Demonstration is only read.</source>
   <translation>Choisissez d'abord un catalogue à vous : Demonstration ne fait que se lire.</translation>
  </message>
  <message>
   <source>Pick a combination to see what would be chosen, or why nothing fits.</source>
   <translation>Choisissez une combinaison pour voir ce qui serait choisi, ou pourquoi rien ne convient.</translation>
  </message>
  <message>
   <source>Pick a part in the drawing or the list.</source>
   <translation>Choisissez une pièce dans le dessin ou la liste.</translation>
  </message>
  <message>
   <source>Pick the missing part, list what is in stock, and ask: what would do stands here.</source>
   <translation>Choisissez la pièce manquante, indiquez le stock et demandez : ce qui conviendrait s'affiche ici.</translation>
  </message>
  <message>
   <source>Picture of the letterhead</source>
   <translation>Image de l'en-tête</translation>
  </message>
  <message>
   <source>Picture or document of the part</source>
   <translation>Image ou document de la pièce</translation>
  </message>
  <message>
   <source>Pictures (PNG, JPEG) and documents (PDF) are checked and kept with the part; files may be dropped.</source>
   <translation>Les images (PNG, JPEG) et les documents (PDF) sont vérifiés et gardés avec la pièce ; on peut aussi les déposer ici.</translation>
  </message>
  <message>
   <source>Pictures and documents of {0}</source>
   <translation>Images et documents de {0}</translation>
  </message>
  <message>
   <source>Pieces</source>
   <translation>Pièces</translation>
  </message>
  <message>
   <source>Pieces in a pack</source>
   <translation>Pièces par paquet</translation>
  </message>
  <message>
   <source>Pieces of one count add up; another name begins anew.</source>
   <translation>Les pièces d'un comptage s'additionnent ; un autre nom recommence.</translation>
  </message>
  <message>
   <source>Pieces of {0}</source>
   <translation>Unités de {0}</translation>
  </message>
  <message>
   <source>Pieces short: {0}. Pieces to order: {1}.</source>
   <translation>Pièces manquantes : {0}. Pièces à commander : {1}.</translation>
  </message>
  <message>
   <source>Pipe drawing of the station</source>
   <translation>Plan des conduites de la station</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Place</translation>
  </message>
  <message>
   <source>Place and reach</source>
   <translation>Lieu et portée</translation>
  </message>
  <message>
   <source>Place, and what takes parts out of it</source>
   <translation>Place, et ce qui en écarte des pièces</translation>
  </message>
  <message>
   <source>Placement: breakaway makers' usual instructions, common practice</source>
   <translation>Place : notices usuelles des fabricants de raccords cassants, pratique courante</translation>
  </message>
  <message>
   <source>Places of the work</source>
   <translation>Lieux du travail</translation>
  </message>
  <message>
   <source>Plan &amp;with both</source>
   <translation>&amp;Planifier avec les deux</translation>
  </message>
  <message>
   <source>Plan as the book does</source>
   <translation>Planifier comme le registre</translation>
  </message>
  <message>
   <source>Plan this pos&amp;ition again</source>
   <translation>Prévo&amp;ir ce poste à nouveau</translation>
  </message>
  <message>
   <source>Plan this position &amp;again</source>
   <translation>Prévoir ce poste à nouve&amp;au</translation>
  </message>
  <message>
   <source>Plan with {0}</source>
   <translation>Planifier avec {0}</translation>
  </message>
  <message>
   <source>Planned</source>
   <translation>Prévu</translation>
  </message>
  <message>
   <source>Planned now</source>
   <translation>Prévu maintenant</translation>
  </message>
  <message>
   <source>Planned with by</source>
   <translation>Planifie avec</translation>
  </message>
  <message>
   <source>Planned, agreed and built side by side</source>
   <translation>Prévu, convenu et posé côte à côte</translation>
  </message>
  <message>
   <source>Planning all positions…</source>
   <translation>Prévision de tous les postes…</translation>
  </message>
  <message>
   <source>Planning and reading what hangs there…</source>
   <translation>Prévision et lecture de ce qui est posé…</translation>
  </message>
  <message>
   <source>Planning survey {0} of {1}…</source>
   <translation>Planification du relevé {0} sur {1}…</translation>
  </message>
  <message>
   <source>Planning the station under both…</source>
   <translation>La station est planifiée sous les deux…</translation>
  </message>
  <message>
   <source>Planning this position…</source>
   <translation>Prévision de ce poste…</translation>
  </message>
  <message>
   <source>Planning {done} of {total} positions over all options…</source>
   <translation>Prévision de {done} postes sur {total}, toutes options…</translation>
  </message>
  <message>
   <source>Planning…</source>
   <translation>Prévision…</translation>
  </message>
  <message>
   <source>Plate and figures of the chosen part…</source>
   <translation>Plaque et chiffres de la pièce choisie…</translation>
  </message>
  <message>
   <source>Plate or maker's sheet</source>
   <translation>Plaque ou fiche du fabricant</translation>
  </message>
  <message>
   <source>Point (1.50)</source>
   <translation>Point (1.50)</translation>
  </message>
  <message>
   <source>Pos&amp;ition today</source>
   <translation>Poste aujourd'&amp;hui</translation>
  </message>
  <message>
   <source>Position</source>
   <translation>Poste</translation>
  </message>
  <message>
   <source>Position &amp;above</source>
   <translation>Poste &amp;au-dessus</translation>
  </message>
  <message>
   <source>Position b&amp;elow</source>
   <translation>Poste au-d&amp;essous</translation>
  </message>
  <message>
   <source>Position {0}</source>
   <translation>Poste {0}</translation>
  </message>
  <message>
   <source>Position {0} today</source>
   <translation>Poste {0} aujourd'hui</translation>
  </message>
  <message>
   <source>Position {0}: an entry outside its limit is marked at once.</source>
   <translation>Poste {0} : une saisie hors limite est marquée aussitôt.</translation>
  </message>
  <message>
   <source>Position, dispenser or site.</source>
   <translation>Poste, distributeur ou station.</translation>
  </message>
  <message>
   <source>Positions</source>
   <translation>Postes</translation>
  </message>
  <message>
   <source>Positions and parts</source>
   <translation>Postes et pièces</translation>
  </message>
  <message>
   <source>Positions looked at</source>
   <translation>Postes examinés</translation>
  </message>
  <message>
   <source>Positions of the survey that the table does not hold go</source>
   <translation>Les positions du relevé que le tableau ne contient pas sont retirées</translation>
  </message>
  <message>
   <source>Positions on the parts list</source>
   <translation>Postes de la liste des pièces</translation>
  </message>
  <message>
   <source>Positions that get the answers</source>
   <translation>Postes qui reçoivent les réponses</translation>
  </message>
  <message>
   <source>Positions that the answer is for</source>
   <translation>Postes pour lesquels vaut la réponse</translation>
  </message>
  <message>
   <source>Positions that the answers are for</source>
   <translation>Postes pour lesquels valent les réponses</translation>
  </message>
  <message>
   <source>Positions to agree on</source>
   <translation>Postes à convenir</translation>
  </message>
  <message>
   <source>Positions with a dated record are counted; a row leads to its station.</source>
   <translation>Sont comptées les positions avec un relevé daté ; une ligne mène à sa station.</translation>
  </message>
  <message>
   <source>Pounds</source>
   <translation>Livres</translation>
  </message>
  <message>
   <source>Pr&amp;ices</source>
   <translation>Prix</translation>
  </message>
  <message>
   <source>Preferences</source>
   <translation>Préférences</translation>
  </message>
  <message>
   <source>Prepay</source>
   <translation>Prépaiement</translation>
  </message>
  <message>
   <source>Prepay, card or console. A latched nozzle would then spill at the next start.</source>
   <translation>Prépaiement, carte ou pupitre. Un pistolet enclenché déborderait alors à la vente suivante.</translation>
  </message>
  <message>
   <source>Pressure and flow</source>
   <translation>Pression et débit</translation>
  </message>
  <message>
   <source>Pressure at the outlet while flow&amp;ing</source>
   <translation>&amp;Pression à la sortie en débit</translation>
  </message>
  <message>
   <source>Price</source>
   <translation>Prix</translation>
  </message>
  <message>
   <source>Price far from the usual</source>
   <translation>Prix loin de l'habituel</translation>
  </message>
  <message>
   <source>Price follows</source>
   <translation>Prix à suivre</translation>
  </message>
  <message>
   <source>Price is &amp;for one</source>
   <translation>Pri&amp;x pour un</translation>
  </message>
  <message>
   <source>Price list</source>
   <translation>Liste de prix</translation>
  </message>
  <message>
   <source>Price list ends soon</source>
   <translation>La liste de prix finit bientôt</translation>
  </message>
  <message>
   <source>Price list has ended</source>
   <translation>La liste de prix est finie</translation>
  </message>
  <message>
   <source>Price list {0}</source>
   <translation>Tarif {0}</translation>
  </message>
  <message>
   <source>Price list {0}: {1} prices.</source>
   <translation>Tarif {0} : {1} prix.</translation>
  </message>
  <message>
   <source>Price lists</source>
   <translation>Listes de prix</translation>
  </message>
  <message>
   <source>Price lists of the edition in hand come here; a file of them can be read in.</source>
   <translation>Les listes de prix de l'édition choisie apparaissent ici ; on peut en lire un fichier.</translation>
  </message>
  <message>
   <source>Price of an hour of &amp;work</source>
   <translation>Pri&amp;x d'une heure de travail</translation>
  </message>
  <message>
   <source>Price of one</source>
   <translation>Prix d'un</translation>
  </message>
  <message>
   <source>Price of one &amp;more part number</source>
   <translation>Coût d'&amp;une référence de plus</translation>
  </message>
  <message>
   <source>Price of one foot or meter</source>
   <translation>Prix d'un pied ou d'un mètre</translation>
  </message>
  <message>
   <source>Price of one piece</source>
   <translation>Prix d'une unité</translation>
  </message>
  <message>
   <source>Price of the article</source>
   <translation>Prix de l'article</translation>
  </message>
  <message>
   <source>Price of the liq&amp;uid</source>
   <translation>Prix du liq&amp;uide</translation>
  </message>
  <message>
   <source>Price of the set</source>
   <translation>Prix de l'ensemble</translation>
  </message>
  <message>
   <source>Price, sets chosen together</source>
   <translation>Prix, ensembles choisis en commun</translation>
  </message>
  <message>
   <source>Price, {0}</source>
   <translation>Prix, {0}</translation>
  </message>
  <message>
   <source>Price, {currency}</source>
   <translation>Prix, {currency}</translation>
  </message>
  <message>
   <source>Prices and where they come from</source>
   <translation>Prix et leur origine</translation>
  </message>
  <message>
   <source>Prices are shown once there is a quotation.</source>
   <translation>Les prix se montrent dès qu'il y a un devis.</translation>
  </message>
  <message>
   <source>Prices by name</source>
   <translation>Prix sur parole</translation>
  </message>
  <message>
   <source>Prices missing in these amounts</source>
   <translation>Prix manquants dans ces montants</translation>
  </message>
  <message>
   <source>Prices that follow</source>
   <translation>Prix à suivre</translation>
  </message>
  <message>
   <source>Printed as written.</source>
   <translation>Imprimé comme écrit.</translation>
  </message>
  <message>
   <source>Printed beside them in the report.</source>
   <translation>Imprimé à côté d'elles dans le rapport.</translation>
  </message>
  <message>
   <source>Printed in full.</source>
   <translation>Imprimé en entier.</translation>
  </message>
  <message>
   <source>Printed in the report.</source>
   <translation>Imprimé dans le rapport.</translation>
  </message>
  <message>
   <source>Printed on the bill with this position.</source>
   <translation>Imprimé dans la nomenclature avec ce poste.</translation>
  </message>
  <message>
   <source>Printed on the bill.</source>
   <translation>Imprimé dans la nomenclature.</translation>
  </message>
  <message>
   <source>Print…</source>
   <translation>Imprimer…</translation>
  </message>
  <message>
   <source>Pro&amp;gram of several sites…</source>
   <translation>Pro&amp;gramme de plusieurs stations…</translation>
  </message>
  <message>
   <source>Program of several sites</source>
   <translation>Programme de plusieurs stations</translation>
  </message>
  <message>
   <source>Pu&amp;ll of the cord</source>
   <translation>Trac&amp;tion du câble</translation>
  </message>
  <message>
   <source>Public texts, each with its status</source>
   <translation>Textes publics, chacun avec son état</translation>
  </message>
  <message>
   <source>Publish the draft as the next edition</source>
   <translation>Publier le brouillon comme édition suivante</translation>
  </message>
  <message>
   <source>Published by</source>
   <translation>Publiée par</translation>
  </message>
  <message>
   <source>Published: {0}</source>
   <translation>Publiée : {0}</translation>
  </message>
  <message>
   <source>Pull that the outlet &amp;bears</source>
   <translation>Effort &amp;que supporte la sortie</translation>
  </message>
  <message>
   <source>Put a survey file into the book and open it.</source>
   <translation>Mettre un fichier de relevé au registre et l'ouvrir.</translation>
  </message>
  <message>
   <source>Put away</source>
   <translation>Ranger</translation>
  </message>
  <message>
   <source>Put into the &amp;draft</source>
   <translation>Mettre &amp;dans le brouillon</translation>
  </message>
  <message>
   <source>Put it back</source>
   <translation>La remettre</translation>
  </message>
  <message>
   <source>Put this backup in the place of the book? What was saved after it is then no longer in the book. What lies there now is set aside beside it and can be put back.</source>
   <translation>Mettre cette sauvegarde à la place du registre ? Ce qui a été enregistré après elle n'y sera plus. Ce qui s'y trouve est mis de côté et peut être remis.</translation>
  </message>
  <message>
   <source>Put this price, your name and reason into the terms, and quote again; other parts may be cheaper then</source>
   <translation>Mettre ce prix, votre nom et la raison dans les conditions, et refaire le devis ; d'autres pièces peuvent alors être moins chères</translation>
  </message>
  <message>
   <source>Qty</source>
   <translation>Qté</translation>
  </message>
  <message>
   <source>Quantity</source>
   <translation>Quantité</translation>
  </message>
  <message>
   <source>Quantity ordered</source>
   <translation>Quantité commandée</translation>
  </message>
  <message>
   <source>Question</source>
   <translation>Question</translation>
  </message>
  <message>
   <source>Question whose answer is changed</source>
   <translation>Question dont la réponse change</translation>
  </message>
  <message>
   <source>Question whose answers are compared</source>
   <translation>Question dont les réponses sont comparées</translation>
  </message>
  <message>
   <source>Quotation</source>
   <translation>Devis</translation>
  </message>
  <message>
   <source>Quotation and part</source>
   <translation>Devis et pièce</translation>
  </message>
  <message>
   <source>Quotation: on your terms, drafted, issued and answered. An accepted one agrees its sets.</source>
   <translation>Devis : à vos conditions, en projet, émis et répondu. Un devis accepté convient de ses ensembles.</translation>
  </message>
  <message>
   <source>Quotations in the book</source>
   <translation>Devis du registre</translation>
  </message>
  <message>
   <source>Quotations that a change touches</source>
   <translation>Devis touchés par un changement</translation>
  </message>
  <message>
   <source>Quotations that are saved in the book come here, whichever station they are for.</source>
   <translation>Les devis enregistrés dans le livre apparaissent ici, quelle que soit leur station.</translation>
  </message>
  <message>
   <source>Quote</source>
   <translation>Établir un devis</translation>
  </message>
  <message>
   <source>Quote on these terms (Ctrl+Return)</source>
   <translation>Faire le devis à ces conditions (Ctrl+Entrée)</translation>
  </message>
  <message>
   <source>Quote the marked quotation again: its own survey and terms, prices of today</source>
   <translation>Refaire le devis marqué : son relevé et ses conditions, prix d'aujourd'hui</translation>
  </message>
  <message>
   <source>Quote the quotation looked at again: its own survey and terms, prices and catalog of today</source>
   <translation>Refaire le devis regardé : son relevé et ses conditions, prix et catalogue d'aujourd'hui</translation>
  </message>
  <message>
   <source>Quote the survey that is open, on the terms in hand</source>
   <translation>Faire le devis du relevé ouvert, aux conditions en main</translation>
  </message>
  <message>
   <source>Quote the survey that is open; or look a quotation up in the book.</source>
   <translation>Faites le devis du relevé ouvert, ou ouvrez un devis du registre.</translation>
  </message>
  <message>
   <source>Quote this surve&amp;y</source>
   <translation>Faire le &amp;devis du relevé</translation>
  </message>
  <message>
   <source>Quote this survey, issue the quotation, note the answer, revise it.</source>
   <translation>Faire le devis du relevé, l'émettre, noter la réponse, le réviser.</translation>
  </message>
  <message>
   <source>Quoted again: it is what the book holds as revision {0}.</source>
   <translation>Devis refait : il est ce que le registre garde comme révision {0}.</translation>
  </message>
  <message>
   <source>Quoted on the survey as it was before. It has been changed since: quote this survey for that.</source>
   <translation>Établi sur le relevé tel qu'il était. Il a été modifié depuis : faites le devis de ce relevé pour cela.</translation>
  </message>
  <message>
   <source>R&amp;ecent files</source>
   <translation>&amp;Fichiers récents</translation>
  </message>
  <message>
   <source>Rate</source>
   <translation>Taux</translation>
  </message>
  <message>
   <source>Rate of an &amp;hour</source>
   <translation>Prix de l'&amp;heure</translation>
  </message>
  <message>
   <source>Ratings</source>
   <translation>Caractéristiques</translation>
  </message>
  <message>
   <source>Re&amp;move own rules</source>
   <translation>Ô&amp;ter ses propres règles</translation>
  </message>
  <message>
   <source>Re&amp;name…</source>
   <translation>Re&amp;nommer…</translation>
  </message>
  <message>
   <source>Re&amp;quote it</source>
   <translation>Refaire le devi&amp;s</translation>
  </message>
  <message>
   <source>Read a &amp;filled form…</source>
   <translation>Lire une &amp;fiche…</translation>
  </message>
  <message>
   <source>Read a filled form</source>
   <translation>Lire une fiche remplie</translation>
  </message>
  <message>
   <source>Read a revision</source>
   <translation>Lire une révision</translation>
  </message>
  <message>
   <source>Read a sto&amp;ck list…</source>
   <translation>Lire une &amp;liste de stock…</translation>
  </message>
  <message>
   <source>Read a stock list</source>
   <translation>Lire une liste de stock</translation>
  </message>
  <message>
   <source>Read a survey file</source>
   <translation>Lire un fichier de relevé</translation>
  </message>
  <message>
   <source>Read an exchange file</source>
   <translation>Lire un fichier d'échange</translation>
  </message>
  <message>
   <source>Read an exchange file of the program into the draft</source>
   <translation>Lire un fichier d'échange du programme dans le brouillon</translation>
  </message>
  <message>
   <source>Read and change the terms in hand</source>
   <translation>Lire et modifier les conditions en main</translation>
  </message>
  <message>
   <source>Read as</source>
   <translation>Lu comme</translation>
  </message>
  <message>
   <source>Read as the last table with these titles.</source>
   <translation>Lu comme le dernier tableau avec ces titres.</translation>
  </message>
  <message>
   <source>Read as {0}.</source>
   <translation>Lu comme {0}.</translation>
  </message>
  <message>
   <source>Read from &amp;file…</source>
   <translation>Lire d'un &amp;fichier…</translation>
  </message>
  <message>
   <source>Read positions from a &amp;table…</source>
   <translation>Lire les postes d'un ta&amp;bleau…</translation>
  </message>
  <message>
   <source>Read positions from a table</source>
   <translation>Lire des postes d'un tableau</translation>
  </message>
  <message>
   <source>Read positions from {0}</source>
   <translation>Lire des postes de {0}</translation>
  </message>
  <message>
   <source>Read revision {0}</source>
   <translation>Lire la révision {0}</translation>
  </message>
  <message>
   <source>Read the form back: what hangs there is as built, and inspections fall due from then on.</source>
   <translation>Relisez le formulaire : ce qui est posé devient comme posé, et les inspections arrivent à échéance dès lors.</translation>
  </message>
  <message>
   <source>Read the limits of a jurisdiction, or copy one and change rows.</source>
   <translation>Lire les limites d'un jeu de règles, ou en copier un et changer des lignes.</translation>
  </message>
  <message>
   <source>Read the price lists and the open quotations anew</source>
   <translation>Relire les listes de prix et les devis ouverts</translation>
  </message>
  <message>
   <source>Read where</source>
   <translation>Lu où</translation>
  </message>
  <message>
   <source>Reading the open quotations…</source>
   <translation>Lecture des devis ouverts…</translation>
  </message>
  <message>
   <source>Reading the table…</source>
   <translation>Lecture du tableau…</translation>
  </message>
  <message>
   <source>Reading what hangs there…</source>
   <translation>Lecture de ce qui est posé…</translation>
  </message>
  <message>
   <source>Reading {0}…</source>
   <translation>Lecture de {0}…</translation>
  </message>
  <message>
   <source>Readings and trials</source>
   <translation>Relevés et essais</translation>
  </message>
  <message>
   <source>Ready stations</source>
   <translation>Stations prêtes</translation>
  </message>
  <message>
   <source>Ready stations with a catalog that is invented: its makers, parts and prices exist nowhere.</source>
   <translation>Stations prêtes avec un catalogue inventé : ses fabricants, pièces et prix n'existent nulle part.</translation>
  </message>
  <message>
   <source>Ready stations:</source>
   <translation>Stations prêtes :</translation>
  </message>
  <message>
   <source>Ready terms</source>
   <translation>Conditions prêtes</translation>
  </message>
  <message>
   <source>Reaso&amp;n</source>
   <translation>Raiso&amp;n</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Raison</translation>
  </message>
  <message>
   <source>Reason for the replacement</source>
   <translation>Raison du remplacement</translation>
  </message>
  <message>
   <source>Reason or way out</source>
   <translation>Raison ou issue</translation>
  </message>
  <message>
   <source>Reasons</source>
   <translation>Raisons</translation>
  </message>
  <message>
   <source>Reasons and ways out</source>
   <translation>Raisons et issues</translation>
  </message>
  <message>
   <source>Received</source>
   <translation>Reçu</translation>
  </message>
  <message>
   <source>Reconnectable ones re&amp;placed</source>
   <translation>Réarmables rem&amp;placés</translation>
  </message>
  <message>
   <source>Record (P&amp;DF)</source>
   <translation>Procès-verbal (P&amp;DF)</translation>
  </message>
  <message>
   <source>Record an installed part</source>
   <translation>Noter une pièce en place</translation>
  </message>
  <message>
   <source>Record the planned set as installed</source>
   <translation>Noter l'ensemble prévu comme en place</translation>
  </message>
  <message>
   <source>Reel</source>
   <translation>Enrouleur</translation>
  </message>
  <message>
   <source>Reel drum diameter</source>
   <translation>Diamètre du tambour</translation>
  </message>
  <message>
   <source>Reel turns left</source>
   <translation>Tours restant sur le tambour</translation>
  </message>
  <message>
   <source>Registration or tax number, printed as written.</source>
   <translation>Numéro d'immatriculation ou fiscal, imprimé comme écrit.</translation>
  </message>
  <message>
   <source>Relation</source>
   <translation>Relation</translation>
  </message>
  <message>
   <source>Remark</source>
   <translation>Remarque</translation>
  </message>
  <message>
   <source>Remarks</source>
   <translation>Remarques</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Retirer</translation>
  </message>
  <message>
   <source>Remove a filler</source>
   <translation>Retirer un orifice</translation>
  </message>
  <message>
   <source>Remove an installed part from the list</source>
   <translation>Retirer de la liste une pièce en place</translation>
  </message>
  <message>
   <source>Remove chosen rows</source>
   <translation>Retirer</translation>
  </message>
  <message>
   <source>Remove further filler {number}</source>
   <translation>Retirer l'autre orifice {number}</translation>
  </message>
  <message>
   <source>Remove it &amp;from the list</source>
   <translation>Retirer de la &amp;liste</translation>
  </message>
  <message>
   <source>Remove it from the list</source>
   <translation>Retirer de la liste</translation>
  </message>
  <message>
   <source>Remove the chosen rows (Ctrl+Delete)</source>
   <translation>Retirer les lignes choisies (Ctrl+Suppr)</translation>
  </message>
  <message>
   <source>Remove the rules “{title}” for good?</source>
   <translation>Retirer pour de bon les règles « {title} » ?</translation>
  </message>
  <message>
   <source>Remove this filler</source>
   <translation>Retirer cet orifice</translation>
  </message>
  <message>
   <source>Remove {0}</source>
   <translation>Retirer {0}</translation>
  </message>
  <message>
   <source>Remove “{name}” from the list? Its past saves stay in the database.</source>
   <translation>Retirer « {name} » de la liste ? Ses enregistrements passés restent dans la base.</translation>
  </message>
  <message>
   <source>Removed</source>
   <translation>Retiré</translation>
  </message>
  <message>
   <source>Removed here</source>
   <translation>Retiré ici</translation>
  </message>
  <message>
   <source>Rename the position</source>
   <translation>Renommer le poste</translation>
  </message>
  <message>
   <source>Rename {0}</source>
   <translation>Renommer {0}</translation>
  </message>
  <message>
   <source>Repairs</source>
   <translation>Réparations</translation>
  </message>
  <message>
   <source>Repairs ({0})</source>
   <translation>Réparations ({0})</translation>
  </message>
  <message>
   <source>Repeat dispenser {0}</source>
   <translation>Répéter le distributeur {0}</translation>
  </message>
  <message>
   <source>Repeat the d&amp;ispenser…</source>
   <translation>Répéter le d&amp;istributeur…</translation>
  </message>
  <message>
   <source>Repeat the positions of one side on the other.</source>
   <translation>Répéter les postes d'un côté sur l'autre.</translation>
  </message>
  <message>
   <source>Replace a word wherever it stands in the column</source>
   <translation>Remplacer un mot partout dans la colonne</translation>
  </message>
  <message>
   <source>Replace what is recorded?</source>
   <translation>Remplacer ce qui est relevé ?</translation>
  </message>
  <message>
   <source>Report of the chosen row</source>
   <translation>Rapport de la ligne choisie</translation>
  </message>
  <message>
   <source>Report of the fault</source>
   <translation>Rapport de la faute</translation>
  </message>
  <message>
   <source>Resistance read</source>
   <translation>Résistance lue</translation>
  </message>
  <message>
   <source>Restore a backup…</source>
   <translation>Restaurer une sauvegarde…</translation>
  </message>
  <message>
   <source>Restore from a &amp;file…</source>
   <translation>Restaurer d'un &amp;fichier…</translation>
  </message>
  <message>
   <source>Restore from a file</source>
   <translation>Restaurer d'un fichier</translation>
  </message>
  <message>
   <source>Resu&amp;lt</source>
   <translation>&amp;Résultat</translation>
  </message>
  <message>
   <source>Retractor</source>
   <translation>Rappel de flexible</translation>
  </message>
  <message>
   <source>Retractor clamp fraction</source>
   <translation>Fraction du collier</translation>
  </message>
  <message>
   <source>Retractor force</source>
   <translation>Traction du rappel</translation>
  </message>
  <message>
   <source>Retractor height</source>
   <translation>Hauteur du rappel</translation>
  </message>
  <message>
   <source>Retrieval</source>
   <translation>Rangement</translation>
  </message>
  <message>
   <source>Return or a double click opens one</source>
   <translation>Entrée ou un double clic en ouvre un</translation>
  </message>
  <message>
   <source>Returned</source>
   <translation>Rendu</translation>
  </message>
  <message>
   <source>Rev.</source>
   <translation>Rév.</translation>
  </message>
  <message>
   <source>Revision after</source>
   <translation>Révision après</translation>
  </message>
  <message>
   <source>Revision before</source>
   <translation>Révision avant</translation>
  </message>
  <message>
   <source>Revision of the quotation</source>
   <translation>Révision du devis</translation>
  </message>
  <message>
   <source>Revision {0} as it was sent on {1}; {2}.</source>
   <translation>Révision {0} telle qu'envoyée le {1} ; {2}.</translation>
  </message>
  <message>
   <source>Revision {0} is ordered and stands as it is.</source>
   <translation>La révision {0} est commandée et reste telle quelle.</translation>
  </message>
  <message>
   <source>Revision {0}, never issued; {1}.</source>
   <translation>Révision {0}, jamais émise ; {1}.</translation>
  </message>
  <message>
   <source>Row {row} left out</source>
   <translation>Ligne {row} écartée</translation>
  </message>
  <message>
   <source>Row {row}, {field}: “{was}” becomes “{to}”</source>
   <translation>Ligne {row}, {field} : « {was} » devient « {to} »</translation>
  </message>
  <message>
   <source>Rows of the local rules</source>
   <translation>Lignes des règles locales</translation>
  </message>
  <message>
   <source>Rows of the table</source>
   <translation>Lignes du tableau</translation>
  </message>
  <message>
   <source>Rule tables</source>
   <translation>Tables de règles</translation>
  </message>
  <message>
   <source>Rules</source>
   <translation>Règles</translation>
  </message>
  <message>
   <source>Rules of</source>
   <translation>Règles de</translation>
  </message>
  <message>
   <source>S&amp;tanding</source>
   <translation>S&amp;ituation</translation>
  </message>
  <message>
   <source>S&amp;top</source>
   <translation>Arrê&amp;ter</translation>
  </message>
  <message>
   <source>S&amp;urvey, position by position</source>
   <translation>&amp;Questions du relevé, poste par poste</translation>
  </message>
  <message>
   <source>Sa&amp;ve as it lies in the book…</source>
   <translation>Enregistrer tel qu'au re&amp;gistre…</translation>
  </message>
  <message>
   <source>Same &amp;product</source>
   <translation>Même &amp;produit</translation>
  </message>
  <message>
   <source>Save</source>
   <translation>Enregistrer</translation>
  </message>
  <message>
   <source>Save &amp;CSV…</source>
   <translation>Enregistrer le &amp;CSV…</translation>
  </message>
  <message>
   <source>Save &amp;XLSX…</source>
   <translation>Enregistrer le &amp;XLSX…</translation>
  </message>
  <message>
   <source>Save &amp;again</source>
   <translation>&amp;Enregistrer à nouveau</translation>
  </message>
  <message>
   <source>Save &amp;all…</source>
   <translation>Enregistrer to&amp;ut…</translation>
  </message>
  <message>
   <source>Save &amp;as CSV…</source>
   <translation>E&amp;nregistrer en CSV…</translation>
  </message>
  <message>
   <source>Save &amp;calendar…</source>
   <translation>Enregistrer le &amp;calendrier…</translation>
  </message>
  <message>
   <source>Save &amp;text…</source>
   <translation>Enregistrer le text&amp;e…</translation>
  </message>
  <message>
   <source>Save &amp;workbook…</source>
   <translation>E&amp;nregistrer le classeur…</translation>
  </message>
  <message>
   <source>Save PD&amp;F…</source>
   <translation>Enregistrer le PD&amp;F…</translation>
  </message>
  <message>
   <source>Save a &amp;calendar…</source>
   <translation>&amp;Calendrier…</translation>
  </message>
  <message>
   <source>Save a ta&amp;ble…</source>
   <translation>Enregistrer un ta&amp;bleau…</translation>
  </message>
  <message>
   <source>Save again</source>
   <translation>Enregistrer à nouveau</translation>
  </message>
  <message>
   <source>Save as a file…</source>
   <translation>Enregistrer dans un fichier…</translation>
  </message>
  <message>
   <source>Save c&amp;alendar…</source>
   <translation>&amp;Enregistrer le calendrier…</translation>
  </message>
  <message>
   <source>Save in the boo&amp;k</source>
   <translation>Enregistrer a&amp;u registre</translation>
  </message>
  <message>
   <source>Save it in the book as a draft.</source>
   <translation>Enregistrer au registre comme brouillon.</translation>
  </message>
  <message>
   <source>Save it: it takes the place of the draft in the book.</source>
   <translation>Enregistrez : il prend la place du brouillon au registre.</translation>
  </message>
  <message>
   <source>Save it: revision {0} opens as a draft, what was sent stays.</source>
   <translation>Enregistrez : la révision {0} s'ouvre en brouillon, ce qui est parti reste.</translation>
  </message>
  <message>
   <source>Save ta&amp;ble…</source>
   <translation>Enregistrer le ta&amp;bleau…</translation>
  </message>
  <message>
   <source>Save the bill</source>
   <translation>Enregistrer la nomenclature</translation>
  </message>
  <message>
   <source>Save the form for a ta&amp;blet…</source>
   <translation>Enregistrer la fiche pour une ta&amp;blette…</translation>
  </message>
  <message>
   <source>Save the picture</source>
   <translation>Enregistrer l’image</translation>
  </message>
  <message>
   <source>Save the re&amp;cord</source>
   <translation>Enregi&amp;strer</translation>
  </message>
  <message>
   <source>Save the terms</source>
   <translation>Enregistrer les conditions</translation>
  </message>
  <message>
   <source>Save this ro&amp;w</source>
   <translation>Enregistrer la &amp;ligne</translation>
  </message>
  <message>
   <source>Saved as {path}</source>
   <translation>Enregistré sous {path}</translation>
  </message>
  <message>
   <source>Saved as {path}.</source>
   <translation>Enregistré sous {path}.</translation>
  </message>
  <message>
   <source>Saved as {path}. Your mail program is asked to open it.</source>
   <translation>Enregistré sous {path}. Votre messagerie est priée de l'ouvrir.</translation>
  </message>
  <message>
   <source>Saved as {path}; no program here opens it.</source>
   <translation>Enregistré sous {path} ; aucun programme ici ne l'ouvre.</translation>
  </message>
  <message>
   <source>Saved.</source>
   <translation>Enregistré.</translation>
  </message>
  <message>
   <source>Saves</source>
   <translation>Économise</translation>
  </message>
  <message>
   <source>Saving…</source>
   <translation>Enregistrement…</translation>
  </message>
  <message>
   <source>Say &amp;why these parts</source>
   <translation>Dire pour&amp;quoi ces pièces</translation>
  </message>
  <message>
   <source>Say what this position sells, for what, and whether vapor is recovered. Until then it is not quoted.</source>
   <translation>Dites ce que vend ce poste, pour quoi, et si les vapeurs sont récupérées. Jusque-là il n'est pas dans le devis.</translation>
  </message>
  <message>
   <source>Sc&amp;ope</source>
   <translation>&amp;Étendue</translation>
  </message>
  <message>
   <source>Scan</source>
   <translation>Scanner</translation>
  </message>
  <message>
   <source>Scan a code or type a part number, then Return</source>
   <translation>Scannez un code ou tapez un numéro, puis Entrée</translation>
  </message>
  <message>
   <source>Scanned code of a sheet</source>
   <translation>Code scanné d'une fiche</translation>
  </message>
  <message>
   <source>Scope and conditions</source>
   <translation>Étendue et conditions</translation>
  </message>
  <message>
   <source>Se&amp;veral answers</source>
   <translation>&amp;Plusieurs réponses</translation>
  </message>
  <message>
   <source>Search entries</source>
   <translation>Chercher des entrées</translation>
  </message>
  <message>
   <source>Search everything</source>
   <translation>Chercher partout</translation>
  </message>
  <message>
   <source>Search old numbers</source>
   <translation>Chercher d'anciens numéros</translation>
  </message>
  <message>
   <source>Search quotations</source>
   <translation>Chercher des devis</translation>
  </message>
  <message>
   <source>Search the manual</source>
   <translation>Chercher dans le manuel</translation>
  </message>
  <message>
   <source>See every set that no other outdoes in price, lead time, flow and more, and take one of them.</source>
   <translation>Voir tout ensemble qu'aucun autre ne surpasse en prix, délai, débit et plus, et en prendre un.</translation>
  </message>
  <message>
   <source>See the figures in the report</source>
   <translation>Voir les chiffres du rapport</translation>
  </message>
  <message>
   <source>See what another blend, duty, outlet, rule or catalog would do to sets, checks, parts and money.</source>
   <translation>Voir l'effet d'un autre mélange, usage, sortie, règlement ou catalogue sur ensembles, contrôles, pièces et coûts.</translation>
  </message>
  <message>
   <source>Seen on site</source>
   <translation>Vu sur place</translation>
  </message>
  <message>
   <source>Sell made &amp;up…</source>
   <translation>Vendre &amp;monté…</translation>
  </message>
  <message>
   <source>Selling</source>
   <translation>Vente</translation>
  </message>
  <message>
   <source>Semicolon ( ; )</source>
   <translation>Point-virgule ( ; )</translation>
  </message>
  <message>
   <source>Sent to the printer.</source>
   <translation>Envoyé à l'imprimante.</translation>
  </message>
  <message>
   <source>Sequence</source>
   <translation>Déroulement</translation>
  </message>
  <message>
   <source>Service lives</source>
   <translation>Durées de service</translation>
  </message>
  <message>
   <source>Set</source>
   <translation>Ensemble</translation>
  </message>
  <message>
   <source>Set a f&amp;ield…</source>
   <translation>Remplir un c&amp;hamp…</translation>
  </message>
  <message>
   <source>Set for the part</source>
   <translation>Fixer pour la pièce</translation>
  </message>
  <message>
   <source>Set in hand</source>
   <translation>Ensemble en main</translation>
  </message>
  <message>
   <source>Set of position {0}</source>
   <translation>Ensemble du poste {0}</translation>
  </message>
  <message>
   <source>Set sold made up</source>
   <translation>Ensemble vendu monté</translation>
  </message>
  <message>
   <source>Set, list price</source>
   <translation>Ensemble, prix de liste</translation>
  </message>
  <message>
   <source>Set, ± {currency}</source>
   <translation>± {currency}</translation>
  </message>
  <message>
   <source>Sets</source>
   <translation>Ensembles</translation>
  </message>
  <message>
   <source>Sets are chosen together so that parts and this price for each part number cost least; empty: each position is chosen for itself.</source>
   <translation>Les ensembles sont choisis en commun pour que pièces et coût par référence soient au plus bas ; vide : chaque poste est choisi pour lui-même.</translation>
  </message>
  <message>
   <source>Sets looked at</source>
   <translation>Ensembles examinés</translation>
  </message>
  <message>
   <source>Sets of the position side by side</source>
   <translation>Ensembles du poste côte à côte</translation>
  </message>
  <message>
   <source>Sets of this report: {0}. Other papers: {1}.</source>
   <translation>Ensembles de ce rapport : {0}. Autres documents : {1}.</translation>
  </message>
  <message>
   <source>Sets shown</source>
   <translation>Ensembles montrés</translation>
  </message>
  <message>
   <source>Sets shown on pages and papers</source>
   <translation>Ensembles montrés sur pages et documents</translation>
  </message>
  <message>
   <source>Sets that differ</source>
   <translation>Ensembles différents</translation>
  </message>
  <message>
   <source>Sets that differ ({0})</source>
   <translation>Ensembles différents ({0})</translation>
  </message>
  <message>
   <source>Sets: {0}</source>
   <translation>Ensembles : {0}</translation>
  </message>
  <message>
   <source>Sh&amp;ort bill</source>
   <translation>&amp;Nomenclature abrégée</translation>
  </message>
  <message>
   <source>Share of gasoline</source>
   <translation>Part de l'essence</translation>
  </message>
  <message>
   <source>Share of gasoline into vehicles with onboard recovery, year by year; it goes before the table.</source>
   <translation>Part de l'essence vendue à des véhicules à récupération embarquée, année par année ; elle prime la table.</translation>
  </message>
  <message>
   <source>Share of gasoline pumped through vacuum assist</source>
   <translation>Part de l'essence distribuée avec aspiration</translation>
  </message>
  <message>
   <source>Sheet</source>
   <translation>Feuille</translation>
  </message>
  <message>
   <source>Sho&amp;w again</source>
   <translation>Re&amp;montrer</translation>
  </message>
  <message>
   <source>Short</source>
   <translation>Manque</translation>
  </message>
  <message>
   <source>Short name of the copy</source>
   <translation>Nom court de la copie</translation>
  </message>
  <message>
   <source>Shortest</source>
   <translation>La plus courte</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Montrer</translation>
  </message>
  <message>
   <source>Show &amp;the station</source>
   <translation>Montrer la &amp;station</translation>
  </message>
  <message>
   <source>Show quotations of this status</source>
   <translation>Montrer les devis de cet état</translation>
  </message>
  <message>
   <source>Show rows that hold these words</source>
   <translation>Montrer les lignes qui contiennent ces mots</translation>
  </message>
  <message>
   <source>Show rows that hold…</source>
   <translation>Montrer les lignes qui contiennent…</translation>
  </message>
  <message>
   <source>Show the whole drawing.</source>
   <translation>Montrer le dessin entier.</translation>
  </message>
  <message>
   <source>Show theirs</source>
   <translation>Montrer l'autre</translation>
  </message>
  <message>
   <source>Show those alone whose customer is to be asked again by today</source>
   <translation>Ne montrer que ceux dont le client est à relancer d’ici aujourd’hui</translation>
  </message>
  <message>
   <source>Show {0}</source>
   <translation>Montrer {0}</translation>
  </message>
  <message>
   <source>Sideways</source>
   <translation>Sur le côté</translation>
  </message>
  <message>
   <source>Signed (type the name)</source>
   <translation>Signé (tapez le nom)</translation>
  </message>
  <message>
   <source>Site</source>
   <translation>Station</translation>
  </message>
  <message>
   <source>Site a&amp;nswers</source>
   <translation>Répo&amp;nses</translation>
  </message>
  <message>
   <source>Site data</source>
   <translation>Données de la station</translation>
  </message>
  <message>
   <source>Sites converted</source>
   <translation>Stations converties</translation>
  </message>
  <message>
   <source>Sites of the program</source>
   <translation>Stations du programme</translation>
  </message>
  <message>
   <source>Size</source>
   <translation>Taille</translation>
  </message>
  <message>
   <source>Size for this thread: {0}.</source>
   <translation>Taille pour ce filetage : {0}.</translation>
  </message>
  <message>
   <source>Sold after years</source>
   <translation>Vendue après (années)</translation>
  </message>
  <message>
   <source>Some codes allow a longer hose there.</source>
   <translation>Certaines règles y permettent un flexible plus long.</translation>
  </message>
  <message>
   <source>Sort by it, falling</source>
   <translation>Trier selon elle, décroissant</translation>
  </message>
  <message>
   <source>Sort by it, rising</source>
   <translation>Trier selon elle, croissant</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Source</translation>
  </message>
  <message>
   <source>Spares</source>
   <translation>Rechanges</translation>
  </message>
  <message>
   <source>Spares and stock</source>
   <translation>Rechanges et stock</translation>
  </message>
  <message>
   <source>Specifies the hanging hardware of motor-fuel dispensers: what fits, why, and what it costs.</source>
   <translation>Définit la garniture suspendue des distributeurs de carburant : ce qui convient, pourquoi, et à quel prix.</translation>
  </message>
  <message>
   <source>Spouts: SAE J285; the flow wanted is common practice</source>
   <translation>Becs : SAE J285 ; le débit souhaité est de pratique courante</translation>
  </message>
  <message>
   <source>Spring balance on site, or the maker's data</source>
   <translation>Peson sur place, ou données du fabricant</translation>
  </message>
  <message>
   <source>St&amp;ation on one page</source>
   <translation>La s&amp;tation en une page</translation>
  </message>
  <message>
   <source>Staff on site</source>
   <translation>Personnel sur place</translation>
  </message>
  <message>
   <source>Standing</source>
   <translation>Situation</translation>
  </message>
  <message>
   <source>Stands beside every step that you take</source>
   <translation>Figure à côté de chaque étape que vous faites</translation>
  </message>
  <message>
   <source>Start</source>
   <translation>Accueil</translation>
  </message>
  <message>
   <source>Start &amp;view</source>
   <translation>&amp;Accueil</translation>
  </message>
  <message>
   <source>Start a survey of another site.</source>
   <translation>Commencer le relevé d'une autre station.</translation>
  </message>
  <message>
   <source>State code texts; local code</source>
   <translation>Textes des codes d'États ; règles locales</translation>
  </message>
  <message>
   <source>Status</source>
   <translation>État</translation>
  </message>
  <message>
   <source>Stays and g&amp;oes</source>
   <translation>Reste et p&amp;art</translation>
  </message>
  <message>
   <source>Step</source>
   <translation>Étape</translation>
  </message>
  <message>
   <source>Step of &amp;unit prices</source>
   <translation>Pas des prix &amp;unitaires</translation>
  </message>
  <message>
   <source>Step of the &amp;total</source>
   <translation>Pas du &amp;total</translation>
  </message>
  <message>
   <source>Step of the amount payable.</source>
   <translation>Pas du montant à payer.</translation>
  </message>
  <message>
   <source>Step {0}: {1}</source>
   <translation>Étape {0} : {1}</translation>
  </message>
  <message>
   <source>Steps of the quotation</source>
   <translation>Étapes du devis</translation>
  </message>
  <message>
   <source>Steps taken</source>
   <translation>Étapes effectuées</translation>
  </message>
  <message>
   <source>Steps taken since the survey was opened</source>
   <translation>Étapes effectuées depuis l'ouverture du relevé</translation>
  </message>
  <message>
   <source>Still to save, at most</source>
   <translation>Encore à économiser, au plus</translation>
  </message>
  <message>
   <source>Sto&amp;p</source>
   <translation>Arrê&amp;ter</translation>
  </message>
  <message>
   <source>Stock list</source>
   <translation>Liste de stock</translation>
  </message>
  <message>
   <source>Stock list: part number and quantity, one part a line</source>
   <translation>Stock : numéro et quantité, une pièce par ligne</translation>
  </message>
  <message>
   <source>Stock, sets chosen together</source>
   <translation>Stock, ensembles choisis en commun</translation>
  </message>
  <message>
   <source>Stocked parts in place of the missing one</source>
   <translation>Pièces en stock à la place de celle qui manque</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Arrêter</translation>
  </message>
  <message>
   <source>Stopped.</source>
   <translation>Arrêté.</translation>
  </message>
  <message>
   <source>Stopped. What was answered is not asked again.</source>
   <translation>Arrêté. Ce qui a reçu une réponse n'est pas redemandé.</translation>
  </message>
  <message>
   <source>Stopped. What was worked out is kept; Calculate goes on from there.</source>
   <translation>Arrêté. Ce qui est calculé est gardé ; « Calculer » reprend de là.</translation>
  </message>
  <message>
   <source>Stopped: nothing was changed.</source>
   <translation>Arrêté : rien n'a été modifié.</translation>
  </message>
  <message>
   <source>Stopped; nothing was quoted.</source>
   <translation>Arrêté ; aucun devis n'a été fait.</translation>
  </message>
  <message>
   <source>Stopped; there may be more.</source>
   <translation>Arrêté ; il peut y en avoir d'autres.</translation>
  </message>
  <message>
   <source>Subjects of the terms</source>
   <translation>Sujets des conditions</translation>
  </message>
  <message>
   <source>Such as 12.50 USD; 11.00 EUR.</source>
   <translation>Par exemple 12.50 USD; 11.00 EUR.</translation>
  </message>
  <message>
   <source>Such as 15 m3. Decides the pressure that a tightness test allows.</source>
   <translation>Par exemple 15 m3. Décide de la pression que permet un essai d'étanchéité.</translation>
  </message>
  <message>
   <source>Such as 15; not for boats.</source>
   <translation>Comme 15 ; pas pour les bateaux.</translation>
  </message>
  <message>
   <source>Such as 20.</source>
   <translation>Comme 20.</translation>
  </message>
  <message>
   <source>Such as 5700 m3. Without it masses are not computed.</source>
   <translation>Par exemple 5700 m3. Sans elle, les masses ne sont pas calculées.</translation>
  </message>
  <message>
   <source>Superseded and discontinued ones.</source>
   <translation>Celles remplacées ou plus fabriquées.</translation>
  </message>
  <message>
   <source>Superseded by</source>
   <translation>Remplacé par</translation>
  </message>
  <message>
   <source>Superseded by maker</source>
   <translation>Remplacé par le fabricant</translation>
  </message>
  <message>
   <source>Supplier</source>
   <translation>Fournisseur</translation>
  </message>
  <message>
   <source>Supplier of the price list</source>
   <translation>Fournisseur de la liste de prix</translation>
  </message>
  <message>
   <source>Supplier's sheet</source>
   <translation>Fiche du fournisseur</translation>
  </message>
  <message>
   <source>Suppliers of the order</source>
   <translation>Fournisseurs de la commande</translation>
  </message>
  <message>
   <source>Suppliers…</source>
   <translation>Fournisseurs…</translation>
  </message>
  <message>
   <source>Supply pressure</source>
   <translation>Pression sortie</translation>
  </message>
  <message>
   <source>Survey</source>
   <translation>Relevé</translation>
  </message>
  <message>
   <source>Survey files that were read or written lately.</source>
   <translation>Fichiers de relevés lus ou écrits récemment.</translation>
  </message>
  <message>
   <source>Survey in hand (positions: {positions}, dispensers: {dispensers}): {most}{hours:f} hours.</source>
   <translation>Relevé en main (postes : {positions}, distributeurs : {dispensers}) : {most}{hours:f} heures.</translation>
  </message>
  <message>
   <source>Survey of the book</source>
   <translation>Relevé du livre</translation>
  </message>
  <message>
   <source>Survey: say for each position what flows, what it serves, and how far it has to reach.</source>
   <translation>Relevé : dites pour chaque poste ce qui coule, ce qu'il dessert et jusqu'où il doit aller.</translation>
  </message>
  <message>
   <source>Survey: say what hangs there today and what is wanted, above all for vapor.</source>
   <translation>Relevé : dites ce qui est posé aujourd'hui et ce qui est voulu, surtout pour la vapeur.</translation>
  </message>
  <message>
   <source>Surveys</source>
   <translation>Relevés</translation>
  </message>
  <message>
   <source>Surveys changed last</source>
   <translation>Relevés modifiés en dernier</translation>
  </message>
  <message>
   <source>Surveys changed last, a new one, a file, the demonstration.</source>
   <translation>Relevés modifiés en dernier, un nouveau, un fichier, la démonstration.</translation>
  </message>
  <message>
   <source>Surveys in the book</source>
   <translation>Relevés du registre</translation>
  </message>
  <message>
   <source>Surveys to plan with both</source>
   <translation>Relevés à planifier avec les deux</translation>
  </message>
  <message>
   <source>Swivel</source>
   <translation>Raccord tournant</translation>
  </message>
  <message>
   <source>Ta&amp;ke it back</source>
   <translation>L'&amp;annuler</translation>
  </message>
  <message>
   <source>Ta&amp;ke out</source>
   <translation>Re&amp;tirer</translation>
  </message>
  <message>
   <source>Ta&amp;ke over the planned set</source>
   <translation>Reprendre l'ensem&amp;ble prévu</translation>
  </message>
  <message>
   <source>Tabulator</source>
   <translation>Tabulation</translation>
  </message>
  <message>
   <source>Take &amp;over into the book</source>
   <translation>&amp;Reprendre dans le livre</translation>
  </message>
  <message>
   <source>Take &amp;over into the price list</source>
   <translation>&amp;Reprendre dans le tarif</translation>
  </message>
  <message>
   <source>Take an alternate</source>
   <translation>Prendre une variante</translation>
  </message>
  <message>
   <source>Take away</source>
   <translation>Retirer</translation>
  </message>
  <message>
   <source>Take back the last change.</source>
   <translation>Annuler la dernière modification.</translation>
  </message>
  <message>
   <source>Take for this job</source>
   <translation>Prendre pour ce travail</translation>
  </message>
  <message>
   <source>Take in a price file</source>
   <translation>Reprendre un fichier de prix</translation>
  </message>
  <message>
   <source>Take its successor {numbers}</source>
   <translation>Prendre son successeur {numbers}</translation>
  </message>
  <message>
   <source>Take out what it does not hold</source>
   <translation>Retirer ce qu'il n'a pas</translation>
  </message>
  <message>
   <source>Take over into the &amp;draft</source>
   <translation>Reprendre &amp;dans le brouillon</translation>
  </message>
  <message>
   <source>Take terms</source>
   <translation>Prendre des conditions</translation>
  </message>
  <message>
   <source>Take terms, then quote the survey; or look a quotation up in the book.</source>
   <translation>Prenez des conditions, puis faites le devis ; ou ouvrez un devis du registre.</translation>
  </message>
  <message>
   <source>Take the last agreement back; the history keeps it, with who did so and why.</source>
   <translation>Annuler le dernier accord ; l'historique le garde, avec qui et pourquoi.</translation>
  </message>
  <message>
   <source>Take the marked &amp;number out</source>
   <translation>Retirer le &amp;numéro marqué</translation>
  </message>
  <message>
   <source>Take the nearest, everywhere</source>
   <translation>Le plus proche, partout</translation>
  </message>
  <message>
   <source>Take the new &amp;figures</source>
   <translation>Prendre les nouvelles &amp;valeurs</translation>
  </message>
  <message>
   <source>Take the new figures of dispenser types</source>
   <translation>Prendre les nouvelles valeurs des types de distributeur</translation>
  </message>
  <message>
   <source>Take the position off the site. Undo brings it back.</source>
   <translation>Ôter le poste de la station. Annuler le ramène.</translation>
  </message>
  <message>
   <source>Take theirs</source>
   <translation>Prendre l'autre</translation>
  </message>
  <message>
   <source>Take this &amp;list out</source>
   <translation>Re&amp;tirer cette liste</translation>
  </message>
  <message>
   <source>Take what is kept for this supplier out of the book</source>
   <translation>Retirer du livre ce qui est gardé pour ce fournisseur</translation>
  </message>
  <message>
   <source>Take {0} instead of {1}</source>
   <translation>Prendre {0} au lieu de {1}</translation>
  </message>
  <message>
   <source>Take {0} out of the book? Surveys keep what they have of it.</source>
   <translation>Retirer {0} du livre ? Les relevés gardent ce qu'ils en ont.</translation>
  </message>
  <message>
   <source>Take {0} out? Its parts lose the figures that they have of it.</source>
   <translation>Retirer {0} ? Ses pièces perdent les données qu'elles tiennent d'elle.</translation>
  </message>
  <message>
   <source>Taken</source>
   <translation>Pris</translation>
  </message>
  <message>
   <source>Taken already</source>
   <translation>Déjà pris</translation>
  </message>
  <message>
   <source>Taken already: {0}.</source>
   <translation>Déjà pris : {0}.</translation>
  </message>
  <message>
   <source>Taken and not needed, to bring back: {0}.</source>
   <translation>Pris et non nécessaire, à rapporter : {0}.</translation>
  </message>
  <message>
   <source>Taken for {0}.</source>
   <translation>Pris pour {0}.</translation>
  </message>
  <message>
   <source>Taken off the cost of the conversion, in the site's currency.</source>
   <translation>Déduite du coût de la conversion, dans la monnaie de la station.</translation>
  </message>
  <message>
   <source>Takes the place alone; nothing else changes and no should is given up.</source>
   <translation>Prend la place seule ; rien d'autre ne change et aucune bonne pratique n'est abandonnée.</translation>
  </message>
  <message>
   <source>Taking over…</source>
   <translation>Reprise en cours…</translation>
  </message>
  <message>
   <source>Tank</source>
   <translation>Cuve</translation>
  </message>
  <message>
   <source>Tank gauge on the day</source>
   <translation>Jauge de cuve le jour même</translation>
  </message>
  <message>
   <source>Taper NPT and parallel G look alike and do not seal with each other.</source>
   <translation>Le NPT conique et le G cylindrique se ressemblent et n'étanchent pas l'un avec l'autre.</translation>
  </message>
  <message>
   <source>Taper, 60°</source>
   <translation>Conique, 60°</translation>
  </message>
  <message>
   <source>Task</source>
   <translation>Tâche</translation>
  </message>
  <message>
   <source>Tasks</source>
   <translation>Tâches</translation>
  </message>
  <message>
   <source>Tasks with their hours, at one rate.</source>
   <translation>Tâches avec leurs heures, à un seul taux.</translation>
  </message>
  <message>
   <source>Tax</source>
   <translation>Taxe</translation>
  </message>
  <message>
   <source>Tax is &amp;rounded</source>
   <translation>La taxe est a&amp;rrondie</translation>
  </message>
  <message>
   <source>Tax number</source>
   <translation>Numéro fiscal</translation>
  </message>
  <message>
   <source>Taxes</source>
   <translation>Taxes</translation>
  </message>
  <message>
   <source>Telep&amp;hone</source>
   <translation>Télép&amp;hone</translation>
  </message>
  <message>
   <source>Telephone</source>
   <translation>Téléphone</translation>
  </message>
  <message>
   <source>Ter&amp;ms of sale</source>
   <translation>Conditions de &amp;vente</translation>
  </message>
  <message>
   <source>Terms</source>
   <translation>Conditions</translation>
  </message>
  <message>
   <source>Terms as in {path}</source>
   <translation>Conditions selon {path}</translation>
  </message>
  <message>
   <source>Terms for the yearly &amp;cost…</source>
   <translation>Con&amp;ditions pour le coût annuel…</translation>
  </message>
  <message>
   <source>Terms for the yearly cost</source>
   <translation>Conditions pour le coût annuel</translation>
  </message>
  <message>
   <source>Terms not saved as a file</source>
   <translation>Conditions non enregistrées</translation>
  </message>
  <message>
   <source>Terms of pa&amp;yment</source>
   <translation>Conditions de &amp;paiement</translation>
  </message>
  <message>
   <source>Terms of payment</source>
   <translation>Conditions de paiement</translation>
  </message>
  <message>
   <source>Terms of the quotation</source>
   <translation>Conditions du devis</translation>
  </message>
  <message>
   <source>Terms: {0}</source>
   <translation>Conditions : {0}</translation>
  </message>
  <message>
   <source>Tests, permits, closing: costs that the owner knows, in the currency of the site.</source>
   <translation>Essais, autorisations, fermeture : coûts que connaît le propriétaire, dans la monnaie de la station.</translation>
  </message>
  <message>
   <source>Tests, repairs, spare parts of the recovery system.</source>
   <translation>Essais, réparations, rechanges du système de récupération.</translation>
  </message>
  <message>
   <source>Text (CSV)</source>
   <translation>Texte (CSV)</translation>
  </message>
  <message>
   <source>Text of the license</source>
   <translation>Texte de la licence</translation>
  </message>
  <message>
   <source>Text of your own</source>
   <translation>Texte à vous</translation>
  </message>
  <message>
   <source>Text to write</source>
   <translation>Texte à écrire</translation>
  </message>
  <message>
   <source>The agency demands that recovery stays</source>
   <translation>L'agence exige que la récupération reste</translation>
  </message>
  <message>
   <source>The agency's own word</source>
   <translation>Parole de l'agence</translation>
  </message>
  <message>
   <source>The agreed set breaks a must</source>
   <translation>L'ensemble convenu enfreint un impératif</translation>
  </message>
  <message>
   <source>The backups of a server are made by whoever keeps it.</source>
   <translation>Les sauvegardes d'un serveur sont faites par qui le gère.</translation>
  </message>
  <message>
   <source>The bar above each page leads through these places and says where each stands.</source>
   <translation>La barre au-dessus de chaque page mène par ces lieux et dit où en est chacun.</translation>
  </message>
  <message>
   <source>The bill could not be made: {reason}</source>
   <translation>La nomenclature n'a pu être faite : {reason}</translation>
  </message>
  <message>
   <source>The book did not answer and was waited for no longer. Look whether the step was taken.</source>
   <translation>Le registre n'a pas répondu et n'est plus attendu. Regardez si l'étape est faite.</translation>
  </message>
  <message>
   <source>The book has no quotation of this survey.</source>
   <translation>Le livre n'a aucun devis de ce relevé.</translation>
  </message>
  <message>
   <source>The book has not the content of this file.</source>
   <translation>Le registre n'a pas le contenu de ce fichier.</translation>
  </message>
  <message>
   <source>The book is the backup again: {count} surveys. What lay there before is {path}.</source>
   <translation>Le registre est de nouveau la sauvegarde : {count} relevés. Ce qui s'y trouvait est {path}.</translation>
  </message>
  <message>
   <source>The book keeps these columns for every later order</source>
   <translation>Le livre garde ces colonnes pour chaque commande suivante</translation>
  </message>
  <message>
   <source>The book keeps this for {0}.</source>
   <translation>Le livre garde ceci pour {0}.</translation>
  </message>
  <message>
   <source>The book lies on a server.</source>
   <translation>Le livre se trouve sur un serveur.</translation>
  </message>
  <message>
   <source>The book of surveys cannot be opened.</source>
   <translation>Le registre des relevés ne peut être ouvert.</translation>
  </message>
  <message>
   <source>The book plans with {book}; this survey plans with {survey}.</source>
   <translation>Le registre planifie avec {book}, ce relevé avec {survey}.</translation>
  </message>
  <message>
   <source>The cases side by side</source>
   <translation>Les cas côte à côte</translation>
  </message>
  <message>
   <source>The catalog Demonstration, its makers and prices are invented.</source>
   <translation>Le catalogue Demonstration, ses fabricants et ses prix sont inventés.</translation>
  </message>
  <message>
   <source>The conversion could not be worked out: {reason}</source>
   <translation>La conversion n'a pu être calculée : {reason}</translation>
  </message>
  <message>
   <source>The count {0} found everything that the book knows of.</source>
   <translation>Le comptage {0} a trouvé tout ce que connaît le livre.</translation>
  </message>
  <message>
   <source>The count {0} is closed. Parts counted so: {1}.</source>
   <translation>Le comptage {0} est clos. Pièces comptées ainsi : {1}.</translation>
  </message>
  <message>
   <source>The currency of every amount in the quotation, and how amounts are rounded.</source>
   <translation>La monnaie de chaque montant du devis, et comment les montants s'arrondissent.</translation>
  </message>
  <message>
   <source>The customer's own expectation, for comparing breakaways. All empty: no comparison.</source>
   <translation>L'attente du client lui-même, pour comparer les raccords cassants. Tout vide : pas de comparaison.</translation>
  </message>
  <message>
   <source>The customers in view, as a paper</source>
   <translation>Les clients affichés, sur papier</translation>
  </message>
  <message>
   <source>The details for a report are in {path}.</source>
   <translation>Les détails pour un rapport sont dans {path}.</translation>
  </message>
  <message>
   <source>The draft of {catalog}: {new} new, {changed} changed, {same} as they were.</source>
   <translation>Brouillon de {catalog} : {new} nouvelles, {changed} changées, {same} inchangées.</translation>
  </message>
  <message>
   <source>The duty decides spout, flow and how far the hose has to turn and reach.</source>
   <translation>L'usage décide du bec, du débit, et de combien le flexible doit tourner et porter.</translation>
  </message>
  <message>
   <source>The ends of the part</source>
   <translation>Les extrémités de la pièce</translation>
  </message>
  <message>
   <source>The family</source>
   <translation>La famille</translation>
  </message>
  <message>
   <source>The family decides which listing standards, seals and spouts come into question.</source>
   <translation>La famille décide des normes d'homologation, des joints et des becs envisageables.</translation>
  </message>
  <message>
   <source>The field is filled alike in all of them; nothing else changes.</source>
   <translation>Le champ est rempli de la même façon dans toutes ; rien d'autre ne change.</translation>
  </message>
  <message>
   <source>The flow cannot be shown here: {reason}</source>
   <translation>Le débit ne peut être montré ici : {reason}</translation>
  </message>
  <message>
   <source>The forecourt from above, and all answers as a table to write into.</source>
   <translation>La piste vue de dessus, et toutes les réponses en tableau à remplir.</translation>
  </message>
  <message>
   <source>The form also holds {0}: go to each position, look at it and keep it.</source>
   <translation>La fiche contient aussi {0} : allez à chaque poste, regardez-la et gardez-la.</translation>
  </message>
  <message>
   <source>The history of agreements, two of them compared; planned, agreed and built side by side.</source>
   <translation>L'historique des accords, deux d'entre eux comparés ; prévu, convenu et posé côte à côte.</translation>
  </message>
  <message>
   <source>The inspection plan of the site, as a paper</source>
   <translation>Le plan d'inspection de la station, sur papier</translation>
  </message>
  <message>
   <source>The last agreement is taken back.</source>
   <translation>Le dernier accord est annulé.</translation>
  </message>
  <message>
   <source>The last change is taken back.</source>
   <translation>Le dernier changement est annulé.</translation>
  </message>
  <message>
   <source>The last changes are not in the book yet: {reason} It is tried again by itself.</source>
   <translation>Les dernières modifications ne sont pas encore au registre : {reason} Un nouvel essai se fait de lui-même.</translation>
  </message>
  <message>
   <source>The last changes of “{name}” are not in the book.</source>
   <translation>Les dernières modifications de « {name} » ne sont pas au registre.</translation>
  </message>
  <message>
   <source>The list as it stands here, as a paper; with its margins it is internal</source>
   <translation>La liste telle qu'elle est ici, comme document ; avec ses marges elle est interne</translation>
  </message>
  <message>
   <source>The offer ended on {0}: requote it before it is issued.</source>
   <translation>L'offre a pris fin le {0} : refaites le devis avant de l'émettre.</translation>
  </message>
  <message>
   <source>The order stands. What changes now needs a quotation of its own.</source>
   <translation>La commande tient. Ce qui change désormais demande un devis propre.</translation>
  </message>
  <message>
   <source>The order stands: revision {0} stays as it is. Taken, revision {1} opens as a draft, to be issued.</source>
   <translation>La commande tient : la révision {0} reste telle quelle. Prise, la révision {1} s'ouvre comme brouillon, à émettre.</translation>
  </message>
  <message>
   <source>The order stands; kept, this becomes a quotation of its own. Give it another number in its terms.</source>
   <translation>La commande tient ; gardé, ceci devient un devis propre. Donnez-lui un autre numéro dans ses conditions.</translation>
  </message>
  <message>
   <source>The other answer</source>
   <translation>L'autre réponse</translation>
  </message>
  <message>
   <source>The owner's own figure</source>
   <translation>Chiffre du propriétaire</translation>
  </message>
  <message>
   <source>The owner's own question</source>
   <translation>Question propre du propriétaire</translation>
  </message>
  <message>
   <source>The page of the manual that fits what has the keyboard; words of the trade; the source of every rule.</source>
   <translation>La page du manuel pour ce qui a le clavier ; mots du métier ; la source de chaque règle.</translation>
  </message>
  <message>
   <source>The part</source>
   <translation>La pièce</translation>
  </message>
  <message>
   <source>The parts of the catalog in hand come here. A supplier's table brings many at once.</source>
   <translation>Les pièces du catalogue choisi apparaissent ici. Le tableau d'un fournisseur en apporte beaucoup à la fois.</translation>
  </message>
  <message>
   <source>The parts of the site as they hang there now, as a paper</source>
   <translation>Les pièces de la station telles qu'elles y pendent, sur papier</translation>
  </message>
  <message>
   <source>The price lists of the edition in hand, as a paper</source>
   <translation>Les listes de prix de l'édition en cours, sur papier</translation>
  </message>
  <message>
   <source>The prices of a quotation come here once a survey is quoted.</source>
   <translation>Les prix d'un devis apparaissent ici dès qu'un relevé est chiffré.</translation>
  </message>
  <message>
   <source>The program met a fault of its own and did not finish the last step. Your survey: {state}.</source>
   <translation>Le programme a rencontré une faute à lui et n'a pas fini la dernière étape. Votre relevé : {state}.</translation>
  </message>
  <message>
   <source>The program met a fault of its own and did not finish this.</source>
   <translation>Le programme a rencontré une faute à lui et n'a pas fini ceci.</translation>
  </message>
  <message>
   <source>The questions about the position in hand, and its set.</source>
   <translation>Les questions sur le poste choisi et son ensemble.</translation>
  </message>
  <message>
   <source>The quotation goes out without this price and says so on the paper</source>
   <translation>Le devis part sans ce prix et le dit sur le document</translation>
  </message>
  <message>
   <source>The reasons at this position, as a paper</source>
   <translation>Les raisons à cette position, sur papier</translation>
  </message>
  <message>
   <source>The record of this position, as a paper</source>
   <translation>Le procès-verbal de cette position, sur papier</translation>
  </message>
  <message>
   <source>The record of {0} is kept in the book.</source>
   <translation>Le procès-verbal de {0} est gardé au registre.</translation>
  </message>
  <message>
   <source>The report below is what is copied; nothing is sent. Read it before you hand it on.</source>
   <translation>Le rapport ci-dessous est ce qui est copié ; rien n'est envoyé. Lisez-le avant de le transmettre.</translation>
  </message>
  <message>
   <source>The rows with their sources, as a paper</source>
   <translation>Les lignes avec leurs sources, sur papier</translation>
  </message>
  <message>
   <source>The run was stopped early.</source>
   <translation>Le calcul a été arrêté avant la fin.</translation>
  </message>
  <message>
   <source>The same as wanted</source>
   <translation>Pareil que souhaité</translation>
  </message>
  <message>
   <source>The same in every row: an account number, a unit.</source>
   <translation>Le même à chaque ligne : un numéro de compte, une unité.</translation>
  </message>
  <message>
   <source>The search was ended before the least cost was proved</source>
   <translation>La recherche a pris fin avant que le moindre coût soit prouvé</translation>
  </message>
  <message>
   <source>The set in hand, before and after</source>
   <translation>L'ensemble choisi, avant et après</translation>
  </message>
  <message>
   <source>The set is agreed.</source>
   <translation>L'ensemble est convenu.</translation>
  </message>
  <message>
   <source>The set is held against this flow at the coldest and the hottest temperature.</source>
   <translation>L'ensemble est comparé à ce débit à la température la plus froide et la plus chaude.</translation>
  </message>
  <message>
   <source>The sets as planned for the answers of today. Papers show what is agreed from then on.</source>
   <translation>Les ensembles prévus pour les réponses d'aujourd'hui. Les documents montrent dès lors ce qui est convenu.</translation>
  </message>
  <message>
   <source>The sets of the chart as a table</source>
   <translation>Les ensembles du graphique en tableau</translation>
  </message>
  <message>
   <source>The sets of the conversion, {0}. Papers show what is agreed from then on.</source>
   <translation>Les ensembles de la conversion, {0}. Les documents montrent dès lors ce qui est convenu.</translation>
  </message>
  <message>
   <source>The sets of the option ordered are agreed: papers of the survey show them from now on.</source>
   <translation>Les ensembles de l'option commandée sont convenus : les documents du relevé les montrent désormais.</translation>
  </message>
  <message>
   <source>The sets picked: {0}. Papers show what is agreed from then on.</source>
   <translation>Les ensembles choisis : {0}. Les documents montrent dès lors ce qui est convenu.</translation>
  </message>
  <message>
   <source>The stock holds no other part of this kind.</source>
   <translation>Le stock n'a pas d'autre pièce de ce genre.</translation>
  </message>
  <message>
   <source>The survey has been changed since: quote this survey for that. Requoted, it stays as it was.</source>
   <translation>Le relevé a été modifié depuis : faites le devis de ce relevé pour cela. Refait, celui-ci reste tel qu'il était.</translation>
  </message>
  <message>
   <source>The survey has changed since this form was printed. Look at every line.</source>
   <translation>Le relevé a changé depuis l'impression de cette fiche. Regardez chaque ligne.</translation>
  </message>
  <message>
   <source>The survey was changed since. No amount of the quotation changes by that.</source>
   <translation>Le relevé a changé depuis. Aucun montant du devis n’en change.</translation>
  </message>
  <message>
   <source>The survey was changed since. Quoted now:</source>
   <translation>Le relevé a changé depuis. Chiffré maintenant :</translation>
  </message>
  <message>
   <source>The survey was changed since; what that means in money was not worked out.</source>
   <translation>Le relevé a changé depuis ; ce que cela signifie en argent n’a pas été calculé.</translation>
  </message>
  <message>
   <source>The survey was changed since; working out what that means in money…</source>
   <translation>Le relevé a changé depuis ; calcul de ce que cela signifie en argent…</translation>
  </message>
  <message>
   <source>The survey was changed while it was quoted, so nothing was quoted. Quote it again.</source>
   <translation>Le relevé a été modifié pendant le devis, aucun devis n'a donc été fait. Refaites-le.</translation>
  </message>
  <message>
   <source>The table ends in 2020 and is never prolonged without being asked.</source>
   <translation>La table finit en 2020 et n'est jamais prolongée sans qu'on le demande.</translation>
  </message>
  <message>
   <source>The terms are in hand.</source>
   <translation>Les conditions sont prêtes.</translation>
  </message>
  <message>
   <source>The two surveys do not go together. Keep both, or one of them.</source>
   <translation>Les deux relevés ne vont pas ensemble. Gardez les deux, ou l'un d'eux.</translation>
  </message>
  <message>
   <source>The usual terms are as they were</source>
   <translation>Les conditions usuelles sont telles qu'avant</translation>
  </message>
  <message>
   <source>The value is written as the source prints it: digits, yes or no, a word, cases separated by commas; empty for no figure. The adopted code and the authority having jurisdiction decide; this table only records them.</source>
   <translation>La valeur s'écrit comme la source l'imprime : chiffres, oui ou non, un mot, cas séparés par des virgules ; vide pour aucun chiffre. Les règles adoptées et l'autorité compétente décident ; cette table ne fait que les noter.</translation>
  </message>
  <message>
   <source>The volume that the price is of.</source>
   <translation>Le volume auquel le prix se rapporte.</translation>
  </message>
  <message>
   <source>The whole map, as a paper</source>
   <translation>Toute la carte, sur papier</translation>
  </message>
  <message>
   <source>Then a splitter can join both to a coaxial hose.</source>
   <translation>Une dérivation peut alors réunir les deux vers un flexible coaxial.</translation>
  </message>
  <message>
   <source>Then another link is needed, and a test shows it.</source>
   <translation>Un autre lien est alors nécessaire, et un essai le montre.</translation>
  </message>
  <message>
   <source>Then it does no harm there.</source>
   <translation>Elle n'y nuit alors pas.</translation>
  </message>
  <message>
   <source>Then the tank agency is told before some blends; not answered counts as yes.</source>
   <translation>L'autorité des cuves est alors avisée avant certains mélanges ; sans réponse, c'est oui.</translation>
  </message>
  <message>
   <source>There is no set to give reasons for.</source>
   <translation>Il n'y a pas d'ensemble à expliquer.</translation>
  </message>
  <message>
   <source>There is no set to pick a part from.</source>
   <translation>Il n'y a pas d'ensemble où choisir une pièce.</translation>
  </message>
  <message>
   <source>There is no set whose checks could be looked at.</source>
   <translation>Il n'y a pas d'ensemble dont on pourrait regarder les vérifications.</translation>
  </message>
  <message>
   <source>There is no set whose flow could be shown.</source>
   <translation>Il n'y a pas d'ensemble dont montrer le débit.</translation>
  </message>
  <message>
   <source>There is no such file here.</source>
   <translation>Ce fichier n'existe pas ici.</translation>
  </message>
  <message>
   <source>These lines are sold below cost or below the least margin:
{0}
Name and reason stay in the book alone.</source>
   <translation>Ces lignes sont vendues sous le coût ou sous la marge minimale :
{0}
Le nom et la raison restent dans le registre seul.</translation>
  </message>
  <message>
   <source>These options leave hoses out:
{0}
Your name and reason stand on the paper.</source>
   <translation>Ces options omettent des flexibles :
{0}
Votre nom et la raison figurent sur le document.</translation>
  </message>
  <message>
   <source>These parts</source>
   <translation>Ces pièces</translation>
  </message>
  <message>
   <source>These parts are sold joined to each other, as one article. Dispenser first, vehicle last:</source>
   <translation>Ces pièces se vendent assemblées, en un seul article. Côté distributeur d'abord, côté véhicule en dernier :</translation>
  </message>
  <message>
   <source>These parts of {0} were not scanned in this count. Look for them first. Closing counts them as shown on the right; entries are only added, and each can be undone.</source>
   <translation>Ces pièces de {0} n'ont pas été scannées dans ce comptage. Cherchez-les d'abord. Le clore les compte comme indiqué à droite ; les écritures ne font que s'ajouter, et chacune peut être annulée.</translation>
  </message>
  <message>
   <source>These positions take the place of all that are there</source>
   <translation>Ces postes prennent la place de tous ceux qui y sont</translation>
  </message>
  <message>
   <source>These recorded parts would go: {0}.</source>
   <translation>Ces pièces relevées disparaîtraient : {0}.</translation>
  </message>
  <message>
   <source>They are on their way to the book.</source>
   <translation>Elles sont en route vers le registre.</translation>
  </message>
  <message>
   <source>They are saved by themselves as soon as the book takes them; this question then goes away.</source>
   <translation>Elles s'enregistrent d'elles-mêmes dès que le registre les prend ; cette question disparaît alors.</translation>
  </message>
  <message>
   <source>They go before the deadline that a survey names among the site answers.</source>
   <translation>Elles passent avant l'échéance qu'un relevé nomme parmi les réponses sur la station.</translation>
  </message>
  <message>
   <source>This change is not in the book yet: {reason} It stays in the window.</source>
   <translation>Cette modification n'est pas encore au registre : {reason} Elle reste dans la fenêtre.</translation>
  </message>
  <message>
   <source>This dispenser only</source>
   <translation>Ce distributeur seulement</translation>
  </message>
  <message>
   <source>This is no PNG or JPEG picture.</source>
   <translation>Ce n'est pas une image PNG ou JPEG.</translation>
  </message>
  <message>
   <source>This package brings no text of its license.</source>
   <translation>Ce paquet n'apporte pas le texte de sa licence.</translation>
  </message>
  <message>
   <source>This picture cannot be read.</source>
   <translation>Cette image ne peut être lue.</translation>
  </message>
  <message>
   <source>This position</source>
   <translation>Ce poste</translation>
  </message>
  <message>
   <source>This position has no set, so there is nothing to record.</source>
   <translation>Ce poste n'a pas d'ensemble, il n'y a donc rien à noter.</translation>
  </message>
  <message>
   <source>This position only</source>
   <translation>Ce poste seulement</translation>
  </message>
  <message>
   <source>This quotation is not in the book yet. It is one of {0}.</source>
   <translation>Ce devis n’est pas encore dans le registre. Il est de {0}.</translation>
  </message>
  <message>
   <source>This survey is not on the list of the book any more: it was taken off. It stays in the window.</source>
   <translation>Ce relevé n'est plus dans la liste du registre : il en a été ôté. Il reste dans la fenêtre.</translation>
  </message>
  <message>
   <source>Those of &amp;this quotation</source>
   <translation>Celles &amp;de ce devis</translation>
  </message>
  <message>
   <source>Thread si&amp;ze</source>
   <translation>&amp;Taille du filetage</translation>
  </message>
  <message>
   <source>Thread standard, size, gender and path, such as NPT 3/4 male single.</source>
   <translation>Norme de filetage, taille, genre et voie, comme NPT 3/4 male single.</translation>
  </message>
  <message>
   <source>Three jobs in pictures</source>
   <translation>Trois métiers en images</translation>
  </message>
  <message>
   <source>Three letters of ISO 4217, such as EUR.</source>
   <translation>Trois lettres de l'ISO 4217, par exemple EUR.</translation>
  </message>
  <message>
   <source>Three letters of ISO 4217, such as USD.</source>
   <translation>Trois lettres de l'ISO 4217, par exemple USD.</translation>
  </message>
  <message>
   <source>Title of the copy</source>
   <translation>Titre de la copie</translation>
  </message>
  <message>
   <source>Title of the next file</source>
   <translation>Titre du prochain fichier</translation>
  </message>
  <message>
   <source>To be read only.</source>
   <translation>En lecture seule.</translation>
  </message>
  <message>
   <source>To be read only. The papers are those that were sent.</source>
   <translation>En lecture seule. Les documents sont ceux qui ont été envoyés.</translation>
  </message>
  <message>
   <source>To look at</source>
   <translation>À examiner</translation>
  </message>
  <message>
   <source>To order</source>
   <translation>À commander</translation>
  </message>
  <message>
   <source>To put a position back into service.</source>
   <translation>Pour remettre un poste en service.</translation>
  </message>
  <message>
   <source>To take</source>
   <translation>À prendre</translation>
  </message>
  <message>
   <source>To which positions</source>
   <translation>À quels postes</translation>
  </message>
  <message>
   <source>Today</source>
   <translation>Aujourd'hui</translation>
  </message>
  <message>
   <source>Today and then side by side</source>
   <translation>Aujourd'hui et ensuite, côte à côte</translation>
  </message>
  <message>
   <source>Total</source>
   <translation>Total</translation>
  </message>
  <message>
   <source>Total {sum}</source>
   <translation>Total {sum}</translation>
  </message>
  <message>
   <source>Toward the &amp;dispenser</source>
   <translation>Vers le &amp;distributeur</translation>
  </message>
  <message>
   <source>Toward the &amp;vehicle</source>
   <translation>Vers le &amp;véhicule</translation>
  </message>
  <message>
   <source>Towards a grant</source>
   <translation>Pour une subvention</translation>
  </message>
  <message>
   <source>Trade-association paper, 2020 (secondary)</source>
   <translation>Note d'une association du métier, 2020 (rapportée)</translation>
  </message>
  <message>
   <source>Tried {done} of {total} parts…</source>
   <translation>{done} pièces essayées sur {total}…</translation>
  </message>
  <message>
   <source>Trucks</source>
   <translation>Poids lourds</translation>
  </message>
  <message>
   <source>Try again</source>
   <translation>Réessayer</translation>
  </message>
  <message>
   <source>Trying the parts of the catalog…</source>
   <translation>Essai des pièces du catalogue…</translation>
  </message>
  <message>
   <source>Tur&amp;ns left on the drum at the filler</source>
   <translation>To&amp;urs restant au tambour, à l'orifice</translation>
  </message>
  <message>
   <source>U&amp;nits</source>
   <translation>U&amp;nités</translation>
  </message>
  <message>
   <source>UL 2586, 567 and 330 with supplements A (ethanol) and B (diesel, biodiesel)</source>
   <translation>UL 2586, 567 et 330 avec suppléments A (éthanol) et B (gazole, biodiesel)</translation>
  </message>
  <message>
   <source>US units</source>
   <translation>Unités américaines</translation>
  </message>
  <message>
   <source>UTF-8 with byte order mark</source>
   <translation>UTF-8 avec marque d’ordre des octets</translation>
  </message>
  <message>
   <source>UTF-8 without a mark</source>
   <translation>UTF-8 sans marque</translation>
  </message>
  <message>
   <source>Undo the entry</source>
   <translation>Annuler l'écriture</translation>
  </message>
  <message>
   <source>Undo the last agreement</source>
   <translation>Annuler le dernier accord</translation>
  </message>
  <message>
   <source>Unified</source>
   <translation>Unifié</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Unité</translation>
  </message>
  <message>
   <source>Unit or currency of {0}</source>
   <translation>Unité ou monnaie de {0}</translation>
  </message>
  <message>
   <source>Unit price</source>
   <translation>Prix unitaire</translation>
  </message>
  <message>
   <source>Unit price of {0}</source>
   <translation>Prix unitaire de {0}</translation>
  </message>
  <message>
   <source>Units of numbers that name none</source>
   <translation>Unités des nombres qui n'en indiquent pas</translation>
  </message>
  <message>
   <source>Units: SI</source>
   <translation>Unités : SI</translation>
  </message>
  <message>
   <source>Units: US</source>
   <translation>Unités : US</translation>
  </message>
  <message>
   <source>Units: as the titles say</source>
   <translation>Unités : selon les titres</translation>
  </message>
  <message>
   <source>Up</source>
   <translation>Monter</translation>
  </message>
  <message>
   <source>Urea solution for diesel exhaust</source>
   <translation>Solution d'urée pour gaz d'échappement</translation>
  </message>
  <message>
   <source>Use &amp;another folder…</source>
   <translation>Utiliser un &amp;autre dossier…</translation>
  </message>
  <message>
   <source>Use the marked part in the set</source>
   <translation>Utiliser la pièce marquée dans l'ensemble</translation>
  </message>
  <message>
   <source>Use the table of the United States fleet?</source>
   <translation>Employer la table du parc des États-Unis ?</translation>
  </message>
  <message>
   <source>Use these terms</source>
   <translation>Utiliser ces conditions</translation>
  </message>
  <message>
   <source>Use {part}</source>
   <translation>Utiliser {part}</translation>
  </message>
  <message>
   <source>Vacuum assist</source>
   <translation>Aspiration</translation>
  </message>
  <message>
   <source>Vacuum-assist coaxial</source>
   <translation>Coaxial à aspiration</translation>
  </message>
  <message>
   <source>Valid from</source>
   <translation>Valable du</translation>
  </message>
  <message>
   <source>Valid through</source>
   <translation>Valable jusqu'au</translation>
  </message>
  <message>
   <source>Valid to</source>
   <translation>Valable jusqu'au</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Valeur</translation>
  </message>
  <message>
   <source>Value for the chosen cells</source>
   <translation>Valeur des cellules</translation>
  </message>
  <message>
   <source>Van</source>
   <translation>Camion</translation>
  </message>
  <message>
   <source>Van and store</source>
   <translation>Camion et magasin</translation>
  </message>
  <message>
   <source>Van or store</source>
   <translation>Camion ou magasin</translation>
  </message>
  <message>
   <source>Vapor</source>
   <translation>Vapeur</translation>
  </message>
  <message>
   <source>Vapor in the inner tube</source>
   <translation>Vapeur dans le tube interne</translation>
  </message>
  <message>
   <source>Vapor in the outer ring</source>
   <translation>Vapeur dans l'anneau extérieur</translation>
  </message>
  <message>
   <source>Vapor pipes and vacuum</source>
   <translation>Conduites de vapeur et aspiration</translation>
  </message>
  <message>
   <source>Vapor recovery</source>
   <translation>Récupération des vapeurs</translation>
  </message>
  <message>
   <source>Vapor recovery today and in future</source>
   <translation>Récupération des vapeurs aujourd'hui et à l'avenir</translation>
  </message>
  <message>
   <source>Vapor recovery today is recorded as {0}; the planned set is of another kind.</source>
   <translation>La récupération actuelle est relevée comme {0} ; l'ensemble prévu est d'un autre type.</translation>
  </message>
  <message>
   <source>Vapor return available</source>
   <translation>Retour vapeur</translation>
  </message>
  <message>
   <source>Vapor space of the tanks at the test</source>
   <translation>Ciel gazeux des cuves lors de l'essai</translation>
  </message>
  <message>
   <source>Vapor today</source>
   <translation>Vapeur actuelle</translation>
  </message>
  <message>
   <source>Vapor wanted</source>
   <translation>Vapeur voulue</translation>
  </message>
  <message>
   <source>Vehicle filler</source>
   <translation>Orifice du véhicule</translation>
  </message>
  <message>
   <source>Vehicle fillers</source>
   <translation>Orifices du véhicule</translation>
  </message>
  <message>
   <source>Vehicles and their onboard recovery</source>
   <translation>Véhicules et récupération embarquée</translation>
  </message>
  <message>
   <source>Version</source>
   <translation>Version</translation>
  </message>
  <message>
   <source>Visits and deadlines; the first year must be named</source>
   <translation>Passages et échéances ; la première année doit être nommée</translation>
  </message>
  <message>
   <source>W&amp;ay</source>
   <translation>&amp;Voie</translation>
  </message>
  <message>
   <source>W&amp;eigh sets…</source>
   <translation>Co&amp;mparer des ensembles…</translation>
  </message>
  <message>
   <source>Wa&amp;y round the vehicle</source>
   <translation>Chemin &amp;autour du véhicule</translation>
  </message>
  <message>
   <source>Wait no &amp;longer</source>
   <translation>Ne &amp;plus attendre</translation>
  </message>
  <message>
   <source>Waiting for the book…</source>
   <translation>Attente du registre…</translation>
  </message>
  <message>
   <source>Waits until the other sets are found.</source>
   <translation>Attend que les autres ensembles soient trouvés.</translation>
  </message>
  <message>
   <source>Wanted flow</source>
   <translation>Débit voulu</translation>
  </message>
  <message>
   <source>Way</source>
   <translation>Voie</translation>
  </message>
  <message>
   <source>Way out</source>
   <translation>Issue</translation>
  </message>
  <message>
   <source>Way round the vehicle</source>
   <translation>Chemin autour du véhicule</translation>
  </message>
  <message>
   <source>Ways to convert</source>
   <translation>Voies de conversion</translation>
  </message>
  <message>
   <source>Wear log</source>
   <translation>Carnet d'usure</translation>
  </message>
  <message>
   <source>Weather records of the place</source>
   <translation>Relevés météo du lieu</translation>
  </message>
  <message>
   <source>Weigh</source>
   <translation>Comparer</translation>
  </message>
  <message>
   <source>Weigh sets</source>
   <translation>Comparer des ensembles</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Poids</translation>
  </message>
  <message>
   <source>Wh&amp;y not?</source>
   <translation>Po&amp;urquoi pas ?</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Quoi</translation>
  </message>
  <message>
   <source>What &amp;changes…</source>
   <translation>Ce qui &amp;change…</translation>
  </message>
  <message>
   <source>What a type answers need not be asked at its positions. A survey keeps the type as it was chosen.</source>
   <translation>Ce à quoi un type répond n'est plus à demander à ses postes. Un relevé garde le type tel qu'il a été choisi.</translation>
  </message>
  <message>
   <source>What another answer would do, before the survey is changed.</source>
   <translation>L'effet d'une autre réponse, avant de changer le relevé.</translation>
  </message>
  <message>
   <source>What changed between the two revisions</source>
   <translation>Ce qui a changé entre les deux révisions</translation>
  </message>
  <message>
   <source>What changed from</source>
   <translation>Ce qui a changé de</translation>
  </message>
  <message>
   <source>What changes in money</source>
   <translation>Ce qui change en argent</translation>
  </message>
  <message>
   <source>What chose the sets</source>
   <translation>Ce qui a choisi les ensembles</translation>
  </message>
  <message>
   <source>What d&amp;oes the hose serve?</source>
   <translation>Que dessert le &amp;flexible ?</translation>
  </message>
  <message>
   <source>What differs between two agreements</source>
   <translation>Ce qui diffère entre deux accords</translation>
  </message>
  <message>
   <source>What else would &amp;do here</source>
   <translation>&amp;Ce qui irait aussi ici</translation>
  </message>
  <message>
   <source>What else would do here</source>
   <translation>Ce qui irait aussi ici</translation>
  </message>
  <message>
   <source>What flows through the hose decides listing class and seals.</source>
   <translation>Ce qui passe dans le flexible décide de la classe d'homologation et des joints.</translation>
  </message>
  <message>
   <source>What hangs here today</source>
   <translation>Ce qui pend ici aujourd'hui</translation>
  </message>
  <message>
   <source>What hangs there now decides which vapor openings have to be closed in a conversion.</source>
   <translation>Ce qui y pend aujourd'hui décide quelles ouvertures de vapeur sont à fermer lors d'une conversion.</translation>
  </message>
  <message>
   <source>What hangs there today</source>
   <translation>Ce qui y pend aujourd'hui</translation>
  </message>
  <message>
   <source>What hangs there today, what is to hang there, and what the outlet offers.</source>
   <translation>Ce qui y pend, ce qui doit y pendre, et ce qu'offre la sortie.</translation>
  </message>
  <message>
   <source>What happened</source>
   <translation>Ce qui est arrivé</translation>
  </message>
  <message>
   <source>What happens</source>
   <translation>Ce qui se passe</translation>
  </message>
  <message>
   <source>What if an answer were another?</source>
   <translation>Et si une réponse changeait ?</translation>
  </message>
  <message>
   <source>What if…</source>
   <translation>Et si…</translation>
  </message>
  <message>
   <source>What is added to materials and labor.</source>
   <translation>Ce qui s’ajoute aux fournitures et à la main-d’œuvre.</translation>
  </message>
  <message>
   <source>What is asked</source>
   <translation>Ce qui est demandé</translation>
  </message>
  <message>
   <source>What is delivered beside the parts that are installed, and what it is worth to stock few part numbers.</source>
   <translation>Ce qui est livré en plus des pièces montées, et ce que vaut un stock de peu de références.</translation>
  </message>
  <message>
   <source>What is kept of the book, one more now, or one put back in its place.</source>
   <translation>Ce qui est gardé du registre, une de plus maintenant, ou une remise à sa place.</translation>
  </message>
  <message>
   <source>What is missing, and what is there</source>
   <translation>Ce qui manque, et ce qui est là</translation>
  </message>
  <message>
   <source>What is new in the edition</source>
   <translation>Ce qui est nouveau dans l'édition</translation>
  </message>
  <message>
   <source>What is new in this edition</source>
   <translation>Ce qui est nouveau dans cette édition</translation>
  </message>
  <message>
   <source>What is not included</source>
   <translation>Ce qui n'est pas compris</translation>
  </message>
  <message>
   <source>What is offered, what is not, and on which terms of sale.</source>
   <translation>Ce qui est offert, ce qui ne l'est pas, et à quelles conditions de vente.</translation>
  </message>
  <message>
   <source>What is ordered from each supplier, as a file in the columns that it wants</source>
   <translation>Ce qui est commandé à chaque fournisseur, en un fichier aux colonnes qu’il veut</translation>
  </message>
  <message>
   <source>What is otherwise</source>
   <translation>Ce qui change</translation>
  </message>
  <message>
   <source>What is scanned comes here; an entry is taken back by another one.</source>
   <translation>Ce qui est scanné vient ici ; une écriture s'annule par une autre.</translation>
  </message>
  <message>
   <source>What is supplied and done.</source>
   <translation>Ce qui est fourni et fait.</translation>
  </message>
  <message>
   <source>What is the s&amp;tation?</source>
   <translation>&amp;Quelle station est-ce ?</translation>
  </message>
  <message>
   <source>What is weighed</source>
   <translation>Ce qui est comparé</translation>
  </message>
  <message>
   <source>What it changes that sets share part numbers, against each position chosen for itself</source>
   <translation>Ce que change le partage de références entre ensembles, face à des postes choisis chacun pour soi</translation>
  </message>
  <message>
   <source>What it does</source>
   <translation>Ce que cela fait</translation>
  </message>
  <message>
   <source>What it is</source>
   <translation>De quoi il s'agit</translation>
  </message>
  <message>
   <source>What it is reckoned from.</source>
   <translation>D'après quoi c'est calculé.</translation>
  </message>
  <message>
   <source>What it pays for</source>
   <translation>Ce que cela paie</translation>
  </message>
  <message>
   <source>What its plate says</source>
   <translation>Ce que dit sa plaque</translation>
  </message>
  <message>
   <source>What lies where, as a paper</source>
   <translation>Ce qui se trouve où, sur papier</translation>
  </message>
  <message>
   <source>What makers take off their lists for you: it makes the cost of the materials.</source>
   <translation>Ce que les fabricants vous remettent sur leurs tarifs : cela donne le coût des fournitures.</translation>
  </message>
  <message>
   <source>What meter and pump pass at most.</source>
   <translation>Ce que mesureur et pompe laissent passer au plus.</translation>
  </message>
  <message>
   <source>What passes through the dispenser's &amp;outlet?</source>
   <translation>Que passe-t-il par la &amp;sortie du distributeur ?</translation>
  </message>
  <message>
   <source>What sets are weighed by beside their price. Spares and drive-offs have pages of their own. All empty: wear by common practice alone.</source>
   <translation>Ce qui sert à comparer les ensembles à côté de leur prix. Les rechanges et les départs intempestifs ont leurs pages. Tout vide : l'usure seule, selon la pratique courante.</translation>
  </message>
  <message>
   <source>What speaks for it</source>
   <translation>Ce qui parle pour elle</translation>
  </message>
  <message>
   <source>What stands above the column.</source>
   <translation>Ce qui est au-dessus de la colonne.</translation>
  </message>
  <message>
   <source>What stands behind the chosen combination</source>
   <translation>Ce qu'il y a derrière la combinaison choisie</translation>
  </message>
  <message>
   <source>What stands there</source>
   <translation>Ce qui s'y trouve</translation>
  </message>
  <message>
   <source>What stays, goes and comes, in which order, at what cost, with what effect on emissions.</source>
   <translation>Ce qui reste, part et vient, dans quel ordre, à quel coût, avec quel effet sur les émissions.</translation>
  </message>
  <message>
   <source>What stocking another part number is worth, in the currency of the site. Above 0 the sets of the whole station are chosen together, so that like positions get like parts.</source>
   <translation>Ce que vaut une référence de plus en stock, dans la monnaie de la station. Au-dessus de 0, les ensembles de toute la station sont choisis en commun, pour que des postes semblables aient les mêmes pièces.</translation>
  </message>
  <message>
   <source>What tells this quotation from others, and how long it stands.</source>
   <translation>Ce qui distingue ce devis des autres, et combien de temps il vaut.</translation>
  </message>
  <message>
   <source>What the book holds of “{name}” is now in {path}.</source>
   <translation>Ce que le registre contient de « {name} » est désormais dans {path}.</translation>
  </message>
  <message>
   <source>What the change means in money</source>
   <translation>Ce que le changement signifie en argent</translation>
  </message>
  <message>
   <source>What the change means in money cannot be told: {0}</source>
   <translation>On ne peut dire ce que le changement signifie en argent : {0}</translation>
  </message>
  <message>
   <source>What the column holds.</source>
   <translation>Ce que porte la colonne.</translation>
  </message>
  <message>
   <source>What the columns hold</source>
   <translation>Ce que contiennent les colonnes</translation>
  </message>
  <message>
   <source>What the conversion rests on</source>
   <translation>Ce sur quoi repose la conversion</translation>
  </message>
  <message>
   <source>What the dispenser gives</source>
   <translation>Ce que donne le distributeur</translation>
  </message>
  <message>
   <source>What the draft of {0} holds otherwise than its newest edition is lost. Discard it?</source>
   <translation>Ce que le brouillon de {0} a d'autre que la dernière édition sera perdu. L'abandonner ?</translation>
  </message>
  <message>
   <source>What the file holds</source>
   <translation>Ce que porte le fichier</translation>
  </message>
  <message>
   <source>What the hose serves, how it is stowed, and what the dispenser gives.</source>
   <translation>Ce que dessert le flexible, comment il se range, et ce que donne le distributeur.</translation>
  </message>
  <message>
   <source>What the percentage is taken from.</source>
   <translation>Ce à quoi s'applique le pourcentage.</translation>
  </message>
  <message>
   <source>What the quotation is for.</source>
   <translation>Ce pour quoi est le devis.</translation>
  </message>
  <message>
   <source>What the survey asks is worked out anyway; a case says what would be otherwise beside it.</source>
   <translation>Ce que le relevé demande est calculé de toute façon ; un cas dit ce qui changerait.</translation>
  </message>
  <message>
   <source>What this position asks of its set</source>
   <translation>Ce que ce poste demande à son ensemble</translation>
  </message>
  <message>
   <source>What this program can and cannot say.</source>
   <translation>Ce que ce programme peut dire, et ne peut pas.</translation>
  </message>
  <message>
   <source>What to do</source>
   <translation>Que faire</translation>
  </message>
  <message>
   <source>What to look at</source>
   <translation>À examiner</translation>
  </message>
  <message>
   <source>What to measure on site</source>
   <translation>Ce qu'il faut mesurer sur place</translation>
  </message>
  <message>
   <source>What was found</source>
   <translation>Ce qui a été trouvé</translation>
  </message>
  <message>
   <source>What was found about it</source>
   <translation>Ce qui a été constaté</translation>
  </message>
  <message>
   <source>What was not scanned in it is listed, and counted as none where you say so</source>
   <translation>Ce qui n'y a pas été scanné est énuméré, et compté comme rien si vous le dites</translation>
  </message>
  <message>
   <source>What will change</source>
   <translation>Ce qui changera</translation>
  </message>
  <message>
   <source>What will change ({0})</source>
   <translation>Ce qui changera ({0})</translation>
  </message>
  <message>
   <source>What would be otherwise</source>
   <translation>Ce qui serait différent</translation>
  </message>
  <message>
   <source>What would be right</source>
   <translation>Ce qui serait juste</translation>
  </message>
  <message>
   <source>What would help</source>
   <translation>Ce qui aiderait</translation>
  </message>
  <message>
   <source>When</source>
   <translation>Quand</translation>
  </message>
  <message>
   <source>Where it goes, where that is elsewhere.</source>
   <translation>Où livrer, si c’est ailleurs.</translation>
  </message>
  <message>
   <source>Where own shares come from</source>
   <translation>D'où viennent les parts propres</translation>
  </message>
  <message>
   <source>Where permission is open, nothing is ordered before it.</source>
   <translation>Sans autorisation acquise, rien n'est commandé avant elle.</translation>
  </message>
  <message>
   <source>Where the cord's cla&amp;mp sits on the hose</source>
   <translation>Place du co&amp;llier du câble sur le flexible</translation>
  </message>
  <message>
   <source>Where the quotation stands</source>
   <translation>Où en est le devis</translation>
  </message>
  <message>
   <source>Where the rate was read.</source>
   <translation>Où le cours a été lu.</translation>
  </message>
  <message>
   <source>Where the set that is planned hangs here already.</source>
   <translation>Là où l'ensemble prévu pend déjà ici.</translation>
  </message>
  <message>
   <source>Where the terms of the next quotation come from</source>
   <translation>D'où viennent les conditions du prochain devis</translation>
  </message>
  <message>
   <source>Where yes, one riser at the dispenser and one end at the tank are closed for each grade.</source>
   <translation>Si oui, une colonne au distributeur et un bout à la cuve se ferment par produit.</translation>
  </message>
  <message>
   <source>Where yes, the unit is disconnected and its power isolated before the first dispenser is opened.</source>
   <translation>Si oui, elle est débranchée et consignée avant l'ouverture du premier distributeur.</translation>
  </message>
  <message>
   <source>Where {where} shows “{shows}”: {field} becomes “{to}”</source>
   <translation>Où {where} montre « {shows} » : {field} devient « {to} »</translation>
  </message>
  <message>
   <source>Whether a part of which only one is installed has a share in the spares.</source>
   <translation>Si une pièce montée une seule fois a part aux rechanges.</translation>
  </message>
  <message>
   <source>Which &amp;liquid is sold here?</source>
   <translation>Quel &amp;liquide est vendu ici ?</translation>
  </message>
  <message>
   <source>Which &amp;tank feeds the position?</source>
   <translation>Quelle &amp;cuve alimente le poste ?</translation>
  </message>
  <message>
   <source>Which answers</source>
   <translation>Quelles réponses</translation>
  </message>
  <message>
   <source>Which breakaways it draws on.</source>
   <translation>Sur quels raccords cassants elle puise.</translation>
  </message>
  <message>
   <source>Which hoses it draws on.</source>
   <translation>Sur quels flexibles elle puise.</translation>
  </message>
  <message>
   <source>Which limits apply. The adopted code and the authority having jurisdiction decide; ask them where a row is unconfirmed.</source>
   <translation>Quelles limites s'appliquent. Les règles adoptées et l'autorité compétente décident ; demandez-leur là où une ligne n'est pas confirmée.</translation>
  </message>
  <message>
   <source>Which way</source>
   <translation>Quelle voie</translation>
  </message>
  <message>
   <source>Which way a rest goes.</source>
   <translation>Dans quel sens va un reste.</translation>
  </message>
  <message>
   <source>Which way do lists, sequence and money follow?</source>
   <translation>Quelle voie suivent listes, déroulement et argent ?</translation>
  </message>
  <message>
   <source>While out of service.</source>
   <translation>Pendant l'arrêt.</translation>
  </message>
  <message>
   <source>Who</source>
   <translation>Qui</translation>
  </message>
  <message>
   <source>Who answers for it</source>
   <translation>Qui en répond</translation>
  </message>
  <message>
   <source>Who answers questions.</source>
   <translation>Qui répond aux questions.</translation>
  </message>
  <message>
   <source>Who did it</source>
   <translation>Qui l'a fait</translation>
  </message>
  <message>
   <source>Who is quoted to.</source>
   <translation>À qui est destiné le devis.</translation>
  </message>
  <message>
   <source>Who makes it</source>
   <translation>Qui la fabrique</translation>
  </message>
  <message>
   <source>Who publishes it</source>
   <translation>Qui la publie</translation>
  </message>
  <message>
   <source>Who quotes. It stands at the top of the quotation.</source>
   <translation>Qui fait le devis. Figure en tête du devis.</translation>
  </message>
  <message>
   <source>Who supplies the parts</source>
   <translation>Qui fournit les pièces</translation>
  </message>
  <message>
   <source>Whoever orders and stocks the parts</source>
   <translation>Qui commande et stocke les pièces</translation>
  </message>
  <message>
   <source>Whole drawing</source>
   <translation>Dessin entier</translation>
  </message>
  <message>
   <source>Whole station</source>
   <translation>Toute la station</translation>
  </message>
  <message>
   <source>Whom the bill is for. New quotations go to the customer of this name in the book.</source>
   <translation>Pour qui est la nomenclature. Les nouveaux devis vont au client de ce nom dans le registre.</translation>
  </message>
  <message>
   <source>Whose e&amp;mission factors?</source>
   <translation>Quels &amp;facteurs d'émission ?</translation>
  </message>
  <message>
   <source>Whose figures are shown</source>
   <translation>De qui les données sont montrées</translation>
  </message>
  <message>
   <source>Whose pages</source>
   <translation>Pages de qui</translation>
  </message>
  <message>
   <source>Whose rule on removal applies?</source>
   <translation>Quelle règle de dépose s'applique ?</translation>
  </message>
  <message>
   <source>Why</source>
   <translation>Motif</translation>
  </message>
  <message>
   <source>Why no set fits</source>
   <translation>Pourquoi aucun ensemble ne convient</translation>
  </message>
  <message>
   <source>Why the lists do not hold.</source>
   <translation>Pourquoi les listes ne valent pas.</translation>
  </message>
  <message>
   <source>Why the site lies in its year</source>
   <translation>Pourquoi la station vient cette année-là</translation>
  </message>
  <message>
   <source>Why these parts</source>
   <translation>Pourquoi ces pièces</translation>
  </message>
  <message>
   <source>Why this price applies</source>
   <translation>Pourquoi ce prix s’applique</translation>
  </message>
  <message>
   <source>Why?</source>
   <translation>Pourquoi</translation>
  </message>
  <message>
   <source>Windows-1252</source>
   <translation>Windows-1252</translation>
  </message>
  <message>
   <source>Wishes</source>
   <translation>Souhaits</translation>
  </message>
  <message>
   <source>With all figures the part is judged like a new one and may stay; without any, it goes.</source>
   <translation>Avec tous ses chiffres, la pièce est jugée comme une neuve et peut rester ; sans aucun, elle part.</translation>
  </message>
  <message>
   <source>With or without biodiesel</source>
   <translation>Avec ou sans biodiesel</translation>
  </message>
  <message>
   <source>With or without ethanol</source>
   <translation>Avec ou sans éthanol</translation>
  </message>
  <message>
   <source>With what the job of this survey takes</source>
   <translation>Avec ce que prend le travail de ce relevé</translation>
  </message>
  <message>
   <source>Without breaking the ground.</source>
   <translation>Sans ouvrir le sol.</translation>
  </message>
  <message>
   <source>Without daily and weekly looks</source>
   <translation>Sans les contrôles quotidiens et hebdomadaires</translation>
  </message>
  <message>
   <source>Without it no payback is shown.</source>
   <translation>Sans lui, aucun amortissement n'est montré.</translation>
  </message>
  <message>
   <source>Without price: {parts}.</source>
   <translation>Sans prix : {parts}.</translation>
  </message>
  <message>
   <source>Without terms the yearly cost is wear alone. Terms add drive-offs, losses through hoses and spares.</source>
   <translation>Sans conditions, le coût annuel est l'usure seule. Les conditions ajoutent les arrachements, le liquide perdu par les flexibles et les rechanges.</translation>
  </message>
  <message>
   <source>Word or text there</source>
   <translation>Mot ou texte à cet endroit</translation>
  </message>
  <message>
   <source>Words between blanks, of: {0}</source>
   <translation>Mots séparés par des espaces, parmi : {0}</translation>
  </message>
  <message>
   <source>Words to look for</source>
   <translation>Mots à chercher</translation>
  </message>
  <message>
   <source>Work done by</source>
   <translation>Travail fait par</translation>
  </message>
  <message>
   <source>Work due at all stations</source>
   <translation>Travaux à faire dans toutes les stations</translation>
  </message>
  <message>
   <source>Work in hand</source>
   <translation>Travail en cours</translation>
  </message>
  <message>
   <source>Work it out</source>
   <translation>Le calculer</translation>
  </message>
  <message>
   <source>Work out the conversion</source>
   <translation>Calculer la conversion</translation>
  </message>
  <message>
   <source>Workbook (XLSX)</source>
   <translation>Classeur (XLSX)</translation>
  </message>
  <message>
   <source>Worked lines</source>
   <translation>Calculs</translation>
  </message>
  <message>
   <source>Working hours o&amp;f a day</source>
   <translation>Heures de &amp;travail par jour</translation>
  </message>
  <message>
   <source>Working out all positions…</source>
   <translation>Calcul de tous les postes…</translation>
  </message>
  <message>
   <source>Working out the cases…</source>
   <translation>Calcul des cas…</translation>
  </message>
  <message>
   <source>Working out what is due…</source>
   <translation>Calcul des échéances…</translation>
  </message>
  <message>
   <source>Worth of one part number &amp;less</source>
   <translation>Valeur d'une référence de &amp;moins</translation>
  </message>
  <message>
   <source>Wound on a drum</source>
   <translation>Enroulé sur un tambour</translation>
  </message>
  <message>
   <source>Write into chosen cells</source>
   <translation>Écrire</translation>
  </message>
  <message>
   <source>Write into column</source>
   <translation>Écrire dans la colonne</translation>
  </message>
  <message>
   <source>Write into every row that shows a text</source>
   <translation>Écrire dans toute ligne qui montre un texte</translation>
  </message>
  <message>
   <source>Write the maker and the number of the part as the maker writes it.</source>
   <translation>Écrivez le fabricant et le numéro de la pièce comme le fabricant les écrit.</translation>
  </message>
  <message>
   <source>Write the survey</source>
   <translation>Écrire le relevé</translation>
  </message>
  <message>
   <source>Write these terms into a file (Ctrl+S)</source>
   <translation>Écrire ces conditions dans un fichier (Ctrl+S)</translation>
  </message>
  <message>
   <source>Write this survey to a file. The book keeps every change by itself.</source>
   <translation>Écrire ce relevé dans un fichier. Le registre garde de lui-même chaque modification.</translation>
  </message>
  <message>
   <source>Write to a file…</source>
   <translation>Écrire dans un fichier…</translation>
  </message>
  <message>
   <source>Write your name first: it stands on record with this step.</source>
   <translation>Écrivez d'abord votre nom : il reste noté avec cette étape.</translation>
  </message>
  <message>
   <source>Write {0} cells</source>
   <translation>Écrire {0} cellules</translation>
  </message>
  <message>
   <source>Write {0} of {1}</source>
   <translation>Écrire {0} sur {1}</translation>
  </message>
  <message>
   <source>Writes a mail with this paper attached and opens it in your mail program; nothing is sent by itself.</source>
   <translation>Écrit un mail avec ce papier joint et l'ouvre dans votre programme de messagerie ; rien n'est envoyé tout seul.</translation>
  </message>
  <message>
   <source>Writes what the book holds of a survey that cannot be read into a file</source>
   <translation>Écrit dans un fichier ce que le registre contient d'un relevé illisible</translation>
  </message>
  <message>
   <source>Written as YYYY-MM-DD.</source>
   <translation>Écrite AAAA-MM-JJ.</translation>
  </message>
  <message>
   <source>Written to {0}</source>
   <translation>Écrit dans {0}</translation>
  </message>
  <message>
   <source>Written to {path}</source>
   <translation>Écrit dans {path}</translation>
  </message>
  <message>
   <source>Year</source>
   <translation>Année</translation>
  </message>
  <message>
   <source>Year in which the agency wants it done</source>
   <translation>Année où l'agence le veut fait</translation>
  </message>
  <message>
   <source>Year or rank</source>
   <translation>Année ou rang</translation>
  </message>
  <message>
   <source>Year-month-day, such as 2027-03-01: the day of the notice. A calendar needs it.</source>
   <translation>Année-mois-jour, par exemple 2027-03-01 : le jour de l'avis. Un calendrier en a besoin.</translation>
  </message>
  <message>
   <source>Year-month-day.</source>
   <translation>Année-mois-jour.</translation>
  </message>
  <message>
   <source>Year-month-day. Prices that are valid on this day are used.</source>
   <translation>Année-mois-jour. Les prix valables ce jour-là sont employés.</translation>
  </message>
  <message>
   <source>Yearly &amp;upkeep today</source>
   <translation>Entretien annuel a&amp;ujourd'hui</translation>
  </message>
  <message>
   <source>Yearly cost</source>
   <translation>Coût annuel</translation>
  </message>
  <message>
   <source>Yearly upkeep &amp;afterwards</source>
   <translation>Entretien annuel en&amp;suite</translation>
  </message>
  <message>
   <source>Years</source>
   <translation>Années</translation>
  </message>
  <message>
   <source>Years that are compared</source>
   <translation>Années comparées</translation>
  </message>
  <message>
   <source>Years, sites and money, as a paper</source>
   <translation>Années, stations et argent, sur papier</translation>
  </message>
  <message>
   <source>Years, sites, visits and terms (XLSX)</source>
   <translation>Années, stations, passages et conditions (XLSX)</translation>
  </message>
  <message>
   <source>Yes</source>
   <translation>Oui</translation>
  </message>
  <message>
   <source>Your changes are in the book; a newer revision too</source>
   <translation>Vos modifications sont au registre ; une révision plus récente aussi</translation>
  </message>
  <message>
   <source>Your name</source>
   <translation>Votre nom</translation>
  </message>
  <message>
   <source>Your own parts and prices: suppliers' tables taken over, looked at, published as editions.</source>
   <translation>Vos pièces et prix : tableaux de fournisseurs repris, examinés, publiés comme éditions.</translation>
  </message>
  <message>
   <source>Your own quotation number, or a pattern for the book: {year}-{serial:04}.</source>
   <translation>Votre propre numéro de devis, ou un modèle pour le registre : {year}-{serial:04}.</translation>
  </message>
  <message>
   <source>Your text</source>
   <translation>Votre texte</translation>
  </message>
  <message>
   <source>a day is needed</source>
   <translation>un jour est nécessaire</translation>
  </message>
  <message>
   <source>a fixed amount</source>
   <translation>un montant fixe</translation>
  </message>
  <message>
   <source>a note</source>
   <translation>une note</translation>
  </message>
  <message>
   <source>a photo of the record</source>
   <translation>une photo du procès-verbal</translation>
  </message>
  <message>
   <source>a question is open</source>
   <translation>une question est ouverte</translation>
  </message>
  <message>
   <source>a whole number from 0 to {0} is needed</source>
   <translation>il faut un entier de 0 à {0}</translation>
  </message>
  <message>
   <source>accepted</source>
   <translation>accepté</translation>
  </message>
  <message>
   <source>agreed</source>
   <translation>convenu</translation>
  </message>
  <message>
   <source>always downwards</source>
   <translation>toujours vers le bas</translation>
  </message>
  <message>
   <source>always upwards</source>
   <translation>toujours vers le haut</translation>
  </message>
  <message>
   <source>an amount for each kilogram</source>
   <translation>un montant par kilogramme</translation>
  </message>
  <message>
   <source>an assumed figure, to be confirmed</source>
   <translation>un chiffre supposé, à confirmer</translation>
  </message>
  <message>
   <source>and {0} more</source>
   <translation>et {0} de plus</translation>
  </message>
  <message>
   <source>any</source>
   <translation>au choix</translation>
  </message>
  <message>
   <source>applies</source>
   <translation>s’applique</translation>
  </message>
  <message>
   <source>as agreed</source>
   <translation>comme convenu</translation>
  </message>
  <message>
   <source>as before</source>
   <translation>comme avant</translation>
  </message>
  <message>
   <source>as built</source>
   <translation>comme posé</translation>
  </message>
  <message>
   <source>as changed in the window</source>
   <translation>comme modifiées dans la fenêtre</translation>
  </message>
  <message>
   <source>as in the table</source>
   <translation>comme dans la table</translation>
  </message>
  <message>
   <source>as in the worked example</source>
   <translation>comme dans l'exemple calculé</translation>
  </message>
  <message>
   <source>as planned</source>
   <translation>selon le plan</translation>
  </message>
  <message>
   <source>as published</source>
   <translation>tel que publié</translation>
  </message>
  <message>
   <source>as the agency asks</source>
   <translation>comme l'agence le demande</translation>
  </message>
  <message>
   <source>as the code says, else 1</source>
   <translation>ce que dit le code, sinon 1</translation>
  </message>
  <message>
   <source>at most </source>
   <translation>au plus </translation>
  </message>
  <message>
   <source>being planned</source>
   <translation>en prévision</translation>
  </message>
  <message>
   <source>being worked out</source>
   <translation>en cours</translation>
  </message>
  <message>
   <source>book</source>
   <translation>registre</translation>
  </message>
  <message>
   <source>built</source>
   <translation>posé</translation>
  </message>
  <message>
   <source>built in</source>
   <translation>livré</translation>
  </message>
  <message>
   <source>by positions</source>
   <translation>par postes</translation>
  </message>
  <message>
   <source>cannot be planned</source>
   <translation>ne peut être planifié</translation>
  </message>
  <message>
   <source>caution</source>
   <translation>attention</translation>
  </message>
  <message>
   <source>changed</source>
   <translation>changée</translation>
  </message>
  <message>
   <source>choose a cell further left: the table ends after {0} columns</source>
   <translation>choisissez une cellule plus à gauche : la table finit après {0} colonnes</translation>
  </message>
  <message>
   <source>choose, or write such as 1 1/2 NPT male</source>
   <translation>choisir ou écrire, par exemple 1 1/2 NPT male</translation>
  </message>
  <message>
   <source>choose, or write such as E15</source>
   <translation>choisir ou écrire, par exemple E15</translation>
  </message>
  <message>
   <source>columns</source>
   <translation>colonnes</translation>
  </message>
  <message>
   <source>complete</source>
   <translation>complet</translation>
  </message>
  <message>
   <source>cost and a mark-up on it</source>
   <translation>coût plus une majoration</translation>
  </message>
  <message>
   <source>cost with a margin on the selling price</source>
   <translation>coût avec une marge sur le prix de vente</translation>
  </message>
  <message>
   <source>costs less</source>
   <translation>coûte moins</translation>
  </message>
  <message>
   <source>costs more</source>
   <translation>coûte plus</translation>
  </message>
  <message>
   <source>data sheet</source>
   <translation>fiche technique</translation>
  </message>
  <message>
   <source>date</source>
   <translation>date</translation>
  </message>
  <message>
   <source>dated {0}</source>
   <translation>daté du {0}</translation>
  </message>
  <message>
   <source>day</source>
   <translation>jour</translation>
  </message>
  <message>
   <source>day of handing over</source>
   <translation>jour de la remise</translation>
  </message>
  <message>
   <source>declined</source>
   <translation>refusé</translation>
  </message>
  <message>
   <source>dispenser</source>
   <translation>distributeur</translation>
  </message>
  <message>
   <source>dispenser {0}</source>
   <translation>distributeur {0}</translation>
  </message>
  <message>
   <source>does not fit</source>
   <translation>ne convient pas</translation>
  </message>
  <message>
   <source>does not list this part</source>
   <translation>ne contient pas cette pièce</translation>
  </message>
  <message>
   <source>draft</source>
   <translation>brouillon</translation>
  </message>
  <message>
   <source>drafted</source>
   <translation>en projet</translation>
  </message>
  <message>
   <source>edition {0}</source>
   <translation>édition {0}</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>vide</translation>
  </message>
  <message>
   <source>empty:</source>
   <translation>vide :</translation>
  </message>
  <message>
   <source>empty: no limit</source>
   <translation>vide : sans limite</translation>
  </message>
  <message>
   <source>empty: no picture</source>
   <translation>vide : pas d'image</translation>
  </message>
  <message>
   <source>empty: none</source>
   <translation>vide : aucun</translation>
  </message>
  <message>
   <source>empty: {0}</source>
   <translation>vide : {0}</translation>
  </message>
  <message>
   <source>ended</source>
   <translation>terminée</translation>
  </message>
  <message>
   <source>every dispenser</source>
   <translation>tous les distributeurs</translation>
  </message>
  <message>
   <source>every kind</source>
   <translation>tous les genres</translation>
  </message>
  <message>
   <source>every status</source>
   <translation>tout état</translation>
  </message>
  <message>
   <source>expired</source>
   <translation>expiré</translation>
  </message>
  <message>
   <source>families changed</source>
   <translation>familles modifiées</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>pieds</translation>
  </message>
  <message>
   <source>file=year; file=year, such as north.json=2028</source>
   <translation>fichier=année; fichier=année, comme nord.json=2028</translation>
  </message>
  <message>
   <source>fits</source>
   <translation>convient</translation>
  </message>
  <message>
   <source>fits, good practice not met in full</source>
   <translation>convient, avec écarts</translation>
  </message>
  <message>
   <source>for each line</source>
   <translation>pour chaque ligne</translation>
  </message>
  <message>
   <source>from the family {0}</source>
   <translation>de la famille {0}</translation>
  </message>
  <message>
   <source>from the similar part {0}</source>
   <translation>de la pièce semblable {0}</translation>
  </message>
  <message>
   <source>from, such as 2027-01-01</source>
   <translation>du, par exemple 2027-01-01</translation>
  </message>
  <message>
   <source>gets a set</source>
   <translation>obtient un ensemble</translation>
  </message>
  <message>
   <source>gets other parts</source>
   <translation>reçoit d'autres pièces</translation>
  </message>
  <message>
   <source>gone</source>
   <translation>disparue</translation>
  </message>
  <message>
   <source>in order</source>
   <translation>en ordre</translation>
  </message>
  <message>
   <source>instructions</source>
   <translation>notice</translation>
  </message>
  <message>
   <source>is in a currency that is not wanted</source>
   <translation>dans une monnaie non demandée</translation>
  </message>
  <message>
   <source>is of another supplier</source>
   <translation>d’un autre fournisseur</translation>
  </message>
  <message>
   <source>issued</source>
   <translation>émis</translation>
  </message>
  <message>
   <source>its answers go &amp;before those of the positions</source>
   <translation>ses réponses passent &amp;avant celles des postes</translation>
  </message>
  <message>
   <source>its last day is over</source>
   <translation>son dernier jour est passé</translation>
  </message>
  <message>
   <source>left out</source>
   <translation>laissé de côté</translation>
  </message>
  <message>
   <source>list price less a discount</source>
   <translation>prix de liste moins une remise</translation>
  </message>
  <message>
   <source>list price: {0}</source>
   <translation>prix de liste : {0}</translation>
  </message>
  <message>
   <source>listing certificate</source>
   <translation>attestation de référencement</translation>
  </message>
  <message>
   <source>looking…</source>
   <translation>recherche…</translation>
  </message>
  <message>
   <source>loses its set</source>
   <translation>perd son ensemble</translation>
  </message>
  <message>
   <source>made from its parts</source>
   <translation>formée de ses pièces</translation>
  </message>
  <message>
   <source>maker</source>
   <translation>fabricant</translation>
  </message>
  <message>
   <source>meters</source>
   <translation>mètres</translation>
  </message>
  <message>
   <source>much like {0}</source>
   <translation>très proche de {0}</translation>
  </message>
  <message>
   <source>my_county</source>
   <translation>mon_comte</translation>
  </message>
  <message>
   <source>name of the list</source>
   <translation>nom de la liste</translation>
  </message>
  <message>
   <source>needs a look</source>
   <translation>à revoir</translation>
  </message>
  <message>
   <source>new</source>
   <translation>nouvelle</translation>
  </message>
  <message>
   <source>no</source>
   <translation>non</translation>
  </message>
  <message>
   <source>no address yet</source>
   <translation>pas encore d'adresse</translation>
  </message>
  <message>
   <source>no age limit</source>
   <translation>pas de limite d'âge</translation>
  </message>
  <message>
   <source>no figure</source>
   <translation>pas de chiffre</translation>
  </message>
  <message>
   <source>no listing</source>
   <translation>pas d'homologation</translation>
  </message>
  <message>
   <source>no longer in the catalog</source>
   <translation>plus au catalogue</translation>
  </message>
  <message>
   <source>no longer made</source>
   <translation>plus fabriquée</translation>
  </message>
  <message>
   <source>no set</source>
   <translation>aucun ensemble</translation>
  </message>
  <message>
   <source>no spare</source>
   <translation>sans rechange</translation>
  </message>
  <message>
   <source>none</source>
   <translation>aucun</translation>
  </message>
  <message>
   <source>none is known</source>
   <translation>aucune n'est connue</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>aucun encore</translation>
  </message>
  <message>
   <source>not answered yet</source>
   <translation>pas encore répondu</translation>
  </message>
  <message>
   <source>not chosen in any option</source>
   <translation>choisi dans aucune option</translation>
  </message>
  <message>
   <source>not dated</source>
   <translation>non daté</translation>
  </message>
  <message>
   <source>not decided whether it would do</source>
   <translation>non tranché s'il irait</translation>
  </message>
  <message>
   <source>not in order</source>
   <translation>pas en ordre</translation>
  </message>
  <message>
   <source>not in the table</source>
   <translation>pas dans le tableau</translation>
  </message>
  <message>
   <source>not kept yet</source>
   <translation>pas encore gardé</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>inconnu</translation>
  </message>
  <message>
   <source>not known here</source>
   <translation>inconnu ici</translation>
  </message>
  <message>
   <source>not known, none counted</source>
   <translation>inconnu, aucun compté</translation>
  </message>
  <message>
   <source>not noted which</source>
   <translation>laquelle n’est pas notée</translation>
  </message>
  <message>
   <source>not open</source>
   <translation>pas ouvert</translation>
  </message>
  <message>
   <source>not recorded</source>
   <translation>non noté</translation>
  </message>
  <message>
   <source>not said</source>
   <translation>non précisé</translation>
  </message>
  <message>
   <source>not stated</source>
   <translation>non indiqué</translation>
  </message>
  <message>
   <source>not surveyed yet</source>
   <translation>pas encore relevé</translation>
  </message>
  <message>
   <source>not valid yet</source>
   <translation>pas encore valable</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>rien</translation>
  </message>
  <message>
   <source>nothing agreed</source>
   <translation>rien de convenu</translation>
  </message>
  <message>
   <source>of {0}</source>
   <translation>sur {0}</translation>
  </message>
  <message>
   <source>offered in its place</source>
   <translation>proposée à sa place</translation>
  </message>
  <message>
   <source>old numbers changed</source>
   <translation>anciens numéros modifiés</translation>
  </message>
  <message>
   <source>once for the whole quotation</source>
   <translation>une fois pour tout le devis</translation>
  </message>
  <message>
   <source>one for all, or one for each: 1, 2, 2, 3</source>
   <translation>un pour tous, ou un pour chacun : 1, 2, 2, 3</translation>
  </message>
  <message>
   <source>open</source>
   <translation>ouverte</translation>
  </message>
  <message>
   <source>own</source>
   <translation>propre</translation>
  </message>
  <message>
   <source>part number</source>
   <translation>numéro de pièce</translation>
  </message>
  <message>
   <source>pasted</source>
   <translation>collé</translation>
  </message>
  <message>
   <source>percent of the materials</source>
   <translation>pour cent des fournitures</translation>
  </message>
  <message>
   <source>picture</source>
   <translation>image</translation>
  </message>
  <message>
   <source>planned, not agreed</source>
   <translation>prévu, non convenu</translation>
  </message>
  <message>
   <source>planned; others agreed</source>
   <translation>prévu ; autre convenu</translation>
  </message>
  <message>
   <source>position {0}</source>
   <translation>poste {0}</translation>
  </message>
  <message>
   <source>price</source>
   <translation>prix</translation>
  </message>
  <message>
   <source>price list</source>
   <translation>tarif</translation>
  </message>
  <message>
   <source>price lists changed</source>
   <translation>listes de prix modifiées</translation>
  </message>
  <message>
   <source>price lists new, changed or taken out: {lists}</source>
   <translation>listes de prix nouvelles, changées ou retirées : {lists}</translation>
  </message>
  <message>
   <source>price {0:+.0%}</source>
   <translation>prix {0:+.0%}</translation>
  </message>
  <message>
   <source>program</source>
   <translation>programme</translation>
  </message>
  <message>
   <source>put in {0}; set {1}</source>
   <translation>posez {0} ; ensemble {1}</translation>
  </message>
  <message>
   <source>quoted again, not kept yet</source>
   <translation>devis refait, pas encore gardé</translation>
  </message>
  <message>
   <source>read out of its text: {0}</source>
   <translation>lu dans son texte : {0}</translation>
  </message>
  <message>
   <source>reason</source>
   <translation>raison</translation>
  </message>
  <message>
   <source>replaced by its maker</source>
   <translation>remplacée par son fabricant</translation>
  </message>
  <message>
   <source>replaced by its maker: {0}</source>
   <translation>remplacée par son fabricant : {0}</translation>
  </message>
  <message>
   <source>r{0}</source>
   <translation>r{0}</translation>
  </message>
  <message>
   <source>same</source>
   <translation>identique</translation>
  </message>
  <message>
   <source>say why: it stands on the paper</source>
   <translation>dites pourquoi : cela figure sur le document</translation>
  </message>
  <message>
   <source>sells this part only from a greater quantity</source>
   <translation>ne vend cette pièce qu’à partir d’une quantité plus grande</translation>
  </message>
  <message>
   <source>share in the spares</source>
   <translation>avec rechanges</translation>
  </message>
  <message>
   <source>site</source>
   <translation>station</translation>
  </message>
  <message>
   <source>site visit</source>
   <translation>visite</translation>
  </message>
  <message>
   <source>size</source>
   <translation>taille</translation>
  </message>
  <message>
   <source>somebody has to answer for a price</source>
   <translation>quelqu'un doit répondre d'un prix</translation>
  </message>
  <message>
   <source>something is still needed</source>
   <translation>il manque encore quelque chose</translation>
  </message>
  <message>
   <source>stock list</source>
   <translation>liste de stock</translation>
  </message>
  <message>
   <source>such as 1 1/2 NPT male</source>
   <translation>par exemple 1 1/2 NPT male</translation>
  </message>
  <message>
   <source>such as 2027</source>
   <translation>comme 2027</translation>
  </message>
  <message>
   <source>such as E30</source>
   <translation>par exemple E30</translation>
  </message>
  <message>
   <source>supplier</source>
   <translation>fournisseur</translation>
  </message>
  <message>
   <source>the catalog states otherwise: {0}</source>
   <translation>le catalogue dit autre chose : {0}</translation>
  </message>
  <message>
   <source>the file of the terms</source>
   <translation>le fichier des conditions</translation>
  </message>
  <message>
   <source>the filled form</source>
   <translation>la fiche remplie</translation>
  </message>
  <message>
   <source>the name of the file</source>
   <translation>le nom du fichier</translation>
  </message>
  <message>
   <source>the newest is revision {0}</source>
   <translation>la plus récente est la révision {0}</translation>
  </message>
  <message>
   <source>the start view</source>
   <translation>la vue d'accueil</translation>
  </message>
  <message>
   <source>the straight way</source>
   <translation>le chemin droit</translation>
  </message>
  <message>
   <source>the survey that was open last</source>
   <translation>le dernier relevé ouvert</translation>
  </message>
  <message>
   <source>the usual figure for the duty</source>
   <translation>le chiffre usuel pour l'usage</translation>
  </message>
  <message>
   <source>the usual figure of the local rules</source>
   <translation>le chiffre usuel des règles locales</translation>
  </message>
  <message>
   <source>the usual ones</source>
   <translation>les règles usuelles</translation>
  </message>
  <message>
   <source>the very part</source>
   <translation>la même pièce</translation>
  </message>
  <message>
   <source>the whole station</source>
   <translation>toute la station</translation>
  </message>
  <message>
   <source>there</source>
   <translation>là</translation>
  </message>
  <message>
   <source>this survey</source>
   <translation>ce relevé</translation>
  </message>
  <message>
   <source>those of {number} r{revision}</source>
   <translation>celles de {number} r{revision}</translation>
  </message>
  <message>
   <source>title of the copy</source>
   <translation>titre de la copie</translation>
  </message>
  <message>
   <source>to</source>
   <translation>à</translation>
  </message>
  <message>
   <source>to follow up b&amp;y today</source>
   <translation>à relancer d’ici aujo&amp;urd’hui</translation>
  </message>
  <message>
   <source>to the nearest, a half to the even digit</source>
   <translation>au plus proche, un demi au chiffre pair</translation>
  </message>
  <message>
   <source>to the nearest, a half upwards</source>
   <translation>au plus proche, un demi vers le haut</translation>
  </message>
  <message>
   <source>to the right</source>
   <translation>à droite</translation>
  </message>
  <message>
   <source>to {0}</source>
   <translation>à {0}</translation>
  </message>
  <message>
   <source>to; empty: open</source>
   <translation>au ; vide : ouverte</translation>
  </message>
  <message>
   <source>undoes no. {0}</source>
   <translation>annule le n° {0}</translation>
  </message>
  <message>
   <source>undone</source>
   <translation>annulé</translation>
  </message>
  <message>
   <source>upward</source>
   <translation>vers le haut</translation>
  </message>
  <message>
   <source>valid</source>
   <translation>valable</translation>
  </message>
  <message>
   <source>valid from</source>
   <translation>valable du</translation>
  </message>
  <message>
   <source>valid to</source>
   <translation>valable jusqu’au</translation>
  </message>
  <message>
   <source>what its kind says</source>
   <translation>ce que dit son type</translation>
  </message>
  <message>
   <source>which blocks the issue</source>
   <translation>ce qui empêche l'émission</translation>
  </message>
  <message>
   <source>with agreement</source>
   <translation>avec l'accord</translation>
  </message>
  <message>
   <source>would apply too: another currency is wanted, or it began earlier</source>
   <translation>s’appliquerait aussi : une autre monnaie est demandée, ou elle a commencé plus tôt</translation>
  </message>
  <message>
   <source>would not do</source>
   <translation>n'irait pas</translation>
  </message>
  <message>
   <source>write a day such as {0}, or as YYYY-MM-DD</source>
   <translation>écrire un jour comme {0}, ou sous la forme YYYY-MM-DD</translation>
  </message>
  <message>
   <source>write the day as 2027-03-01</source>
   <translation>écrivez le jour comme 2027-03-01</translation>
  </message>
  <message>
   <source>write the name of the list and its maker first</source>
   <translation>écrire d'abord le nom du tarif et son fabricant</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>oui</translation>
  </message>
  <message>
   <source>yes or no</source>
   <translation>oui ou non</translation>
  </message>
  <message>
   <source>your name</source>
   <translation>votre nom</translation>
  </message>
  <message>
   <source>{0} (stays)</source>
   <translation>{0} (reste)</translation>
  </message>
  <message>
   <source>{0} against the first option</source>
   <translation>{0} face à la première option</translation>
  </message>
  <message>
   <source>{0} as it is in hand, and as the survey and the terms in hand would be quoted now.</source>
   <translation>{0} tel qu’il est en main, et tel que le relevé et les conditions en main seraient chiffrés maintenant.</translation>
  </message>
  <message>
   <source>{0} as it is, and with {1} instead of {2}.</source>
   <translation>{0} tel quel, et avec {1} au lieu de {2}.</translation>
  </message>
  <message>
   <source>{0} differences</source>
   <translation>{0} différences</translation>
  </message>
  <message>
   <source>{0} entries</source>
   <translation>{0} entrées</translation>
  </message>
  <message>
   <source>{0} entries, the first {1} shown</source>
   <translation>{0} entrées, les {1} premières montrées</translation>
  </message>
  <message>
   <source>{0} files are in {1}</source>
   <translation>{0} fichiers sont dans {1}</translation>
  </message>
  <message>
   <source>{0} instead of {1}</source>
   <translation>{0} à la place de {1}</translation>
  </message>
  <message>
   <source>{0} is a table of positions: begin a survey first, then drop it here.</source>
   <translation>{0} est un tableau de positions : commencez d'abord un relevé, puis déposez-le ici.</translation>
  </message>
  <message>
   <source>{0} is gone</source>
   <translation>{0} a disparu</translation>
  </message>
  <message>
   <source>{0} is in the book.</source>
   <translation>{0} est dans le registre.</translation>
  </message>
  <message>
   <source>{0} is new</source>
   <translation>{0} est nouvelle</translation>
  </message>
  <message>
   <source>{0} is no longer in the list; quotations keep what they have.</source>
   <translation>{0} n’est plus dans la liste ; les devis gardent ce qu’ils ont.</translation>
  </message>
  <message>
   <source>{0} is sold cut to length with its fittings: each length becomes a part that the search may choose.</source>
   <translation>{0} se vend coupé à longueur avec ses raccords : chaque longueur devient une pièce que la recherche peut choisir.</translation>
  </message>
  <message>
   <source>{0} is the customer of this station from now on.</source>
   <translation>{0} est désormais le client de cette station.</translation>
  </message>
  <message>
   <source>{0} lengths, from {1} to {2}</source>
   <translation>{0} longueurs, de {1} à {2}</translation>
  </message>
  <message>
   <source>{0} missing, {1} by a person's word, {2} in all.</source>
   <translation>{0} manquants, {1} sur parole, {2} en tout.</translation>
  </message>
  <message>
   <source>{0} more than the job needs: bring them back.</source>
   <translation>{0} de plus que le travail n'en demande : rapportez-les.</translation>
  </message>
  <message>
   <source>{0} new, {1} changed, {2} as they were</source>
   <translation>{0} nouveaux, {1} modifiés, {2} inchangés</translation>
  </message>
  <message>
   <source>{0} of {1} are due by today.</source>
   <translation>{0} sur {1} sont à échéance aujourd'hui.</translation>
  </message>
  <message>
   <source>{0} of {1} are overdue.</source>
   <translation>{0} sur {1} sont en retard.</translation>
  </message>
  <message>
   <source>{0} of {1} built</source>
   <translation>{0} sur {1} posés</translation>
  </message>
  <message>
   <source>{0} of {1} do not fit</source>
   <translation>{0} sur {1} ne conviennent pas</translation>
  </message>
  <message>
   <source>{0} of {1} fit</source>
   <translation>{0} sur {1} conviennent</translation>
  </message>
  <message>
   <source>{0} of {1} positions differ.</source>
   <translation>{0} postes sur {1} diffèrent.</translation>
  </message>
  <message>
   <source>{0} of {1} stocked parts of this kind would do.</source>
   <translation>{0} pièces en stock sur {1} de ce genre iraient.</translation>
  </message>
  <message>
   <source>{0} of {1} surveyed</source>
   <translation>{0} sur {1} relevés</translation>
  </message>
  <message>
   <source>{0} of {1} that the job needs</source>
   <translation>{0} sur {1} que demande le travail</translation>
  </message>
  <message>
   <source>{0} of {1}, {2} faulty</source>
   <translation>{0} sur {1}, {2} en défaut</translation>
  </message>
  <message>
   <source>{0} old numbers</source>
   <translation>{0} anciens numéros</translation>
  </message>
  <message>
   <source>{0} old numbers, the first {1} shown</source>
   <translation>{0} anciens numéros, les {1} premiers affichés</translation>
  </message>
  <message>
   <source>{0} open quotation is touched by a change of catalog or price lists:</source>
   <translation>{0} devis ouvert est touché par un changement de catalogue ou de listes de prix :</translation>
  </message>
  <message>
   <source>{0} open quotations are touched by a change of catalog or price lists:</source>
   <translation>{0} devis ouverts sont touchés par un changement de catalogue ou de listes de prix :</translation>
  </message>
  <message>
   <source>{0} pages</source>
   <translation>{0} pages</translation>
  </message>
  <message>
   <source>{0} part</source>
   <translation>{0} pièce</translation>
  </message>
  <message>
   <source>{0} parts</source>
   <translation>{0} pièces</translation>
  </message>
  <message>
   <source>{0} parts take over the figures that they lack; each figure says from which part it is.</source>
   <translation>{0} pièces reprennent les valeurs qui leur manquent ; chacune dit de quelle pièce elle vient.</translation>
  </message>
  <message>
   <source>{0} position picked</source>
   <translation>{0} poste choisi</translation>
  </message>
  <message>
   <source>{0} positions</source>
   <translation>{0} postes</translation>
  </message>
  <message>
   <source>{0} positions picked</source>
   <translation>{0} postes choisis</translation>
  </message>
  <message>
   <source>{0} price is missing</source>
   <translation>{0} prix manque</translation>
  </message>
  <message>
   <source>{0} price lists in the draft now.</source>
   <translation>Maintenant {0} listes de prix dans le brouillon.</translation>
  </message>
  <message>
   <source>{0} price lists in this edition; those in folders hold beside them.</source>
   <translation>{0} listes de prix dans cette édition ; celles des dossiers valent en plus.</translation>
  </message>
  <message>
   <source>{0} prices are missing</source>
   <translation>{0} prix manquent</translation>
  </message>
  <message>
   <source>{0} quotation</source>
   <translation>{0} devis</translation>
  </message>
  <message>
   <source>{0} quotations</source>
   <translation>{0} devis</translation>
  </message>
  <message>
   <source>{0} rows differ from {1}.</source>
   <translation>{0} lignes diffèrent de {1}.</translation>
  </message>
  <message>
   <source>{0} rows read…</source>
   <translation>{0} lignes lues…</translation>
  </message>
  <message>
   <source>{0} r{1}: an older revision</source>
   <translation>{0} r{1} : une révision plus ancienne</translation>
  </message>
  <message>
   <source>{0} r{1}: {2}</source>
   <translation>{0} rév. {1} : {2}</translation>
  </message>
  <message>
   <source>{0} sets are agreed; papers show them from now on.</source>
   <translation>{0} ensembles sont convenus ; les documents les montrent désormais.</translation>
  </message>
  <message>
   <source>{0} surveys</source>
   <translation>{0} relevés</translation>
  </message>
  <message>
   <source>{0} surveys cannot be planned with both.</source>
   <translation>{0} relevés ne peuvent être planifiés avec les deux.</translation>
  </message>
  <message>
   <source>{0} things to look at under the local rules of this site.</source>
   <translation>{0} points à examiner selon les règles locales de cette station.</translation>
  </message>
  <message>
   <source>{0}, came since the count began</source>
   <translation>{0}, arrivées depuis le début du comptage</translation>
  </message>
  <message>
   <source>{0}: installed</source>
   <translation>{0} : en place</translation>
  </message>
  <message>
   <source>{0}: not in the book yet</source>
   <translation>{0} : pas encore au registre</translation>
  </message>
  <message>
   <source>{0}: reason</source>
   <translation>{0} : raison</translation>
  </message>
  <message>
   <source>{0}: the options differ</source>
   <translation>{0} : les options diffèrent</translation>
  </message>
  <message>
   <source>{0}: the same</source>
   <translation>{0} : identique</translation>
  </message>
  <message>
   <source>{0}: the sets differ</source>
   <translation>{0} : les ensembles diffèrent</translation>
  </message>
  <message>
   <source>{0}: the survey has changed since the sheet was printed. Print it anew before working by it.</source>
   <translation>{0} : le relevé a changé depuis l'impression de la fiche. Imprimez-la de nouveau avant de travailler d'après elle.</translation>
  </message>
  <message>
   <source>{0}: the survey is as it was when the sheet was printed.</source>
   <translation>{0} : le relevé est tel qu'à l'impression de la fiche.</translation>
  </message>
  <message>
   <source>{0}: {1} parts have its figures.</source>
   <translation>{0} : {1} pièces ont ses données.</translation>
  </message>
  <message>
   <source>{0}: {1}, {2} parts</source>
   <translation>{0} : {1}, {2} pièces</translation>
  </message>
  <message>
   <source>{0}; another unit may stand behind the number.</source>
   <translation>{0} ; une autre unité peut suivre le nombre.</translation>
  </message>
  <message>
   <source>{0}; lines: {1}, pieces: {2}</source>
   <translation>{0} ; lignes : {1}, pièces : {2}</translation>
  </message>
  <message>
   <source>{count} of {all} positions have no set and are not in the sum.</source>
   <translation>{count} postes sur {all} n'ont pas d'ensemble et sont hors de la somme.</translation>
  </message>
  <message>
   <source>{count} other parts could hang here, {misfits} of the kind could not.</source>
   <translation>{count} autres pièces pourraient pendre ici, {misfits} de ce genre non.</translation>
  </message>
  <message>
   <source>{count} other parts could hang here.</source>
   <translation>{count} autres pièces pourraient pendre ici.</translation>
  </message>
  <message>
   <source>{count} parts · lead time {days} · mass {mass} · list prices</source>
   <translation>{count} pièces · délai {days} · masse {mass} · prix de liste</translation>
  </message>
  <message>
   <source>{count} positions would change.</source>
   <translation>{count} postes changeraient.</translation>
  </message>
  <message>
   <source>{count} positions: {told}.</source>
   <translation>{count} positions : {told}.</translation>
  </message>
  <message>
   <source>{done} of {total} combinations asked</source>
   <translation>{done} combinaisons sur {total} demandées</translation>
  </message>
  <message>
   <source>{done} of {total} positions planned over all options; choosing sets together…</source>
   <translation>{done} postes prévus sur {total}, toutes options ; choix commun des ensembles…</translation>
  </message>
  <message>
   <source>{done} of {total} sites converted</source>
   <translation>{done} stations sur {total} converties</translation>
  </message>
  <message>
   <source>{field}: “{word}” becomes “{by}” everywhere</source>
   <translation>{field} : « {word} » devient « {by} » partout</translation>
  </message>
  <message>
   <source>{file} into the draft of {catalog}</source>
   <translation>{file} dans le brouillon de {catalog}</translation>
  </message>
  <message>
   <source>{file} is in the draft of {catalog}.</source>
   <translation>{file} est dans le brouillon de {catalog}.</translation>
  </message>
  <message>
   <source>{name}: {done} of {ready} ready sites are placed; {others} are not ready.</source>
   <translation>{name} : {done} stations prêtes sur {ready} ont une année ; {others} ne sont pas prêtes.</translation>
  </message>
  <message>
   <source>{new} new or changed, {gone} gone or changed</source>
   <translation>{new} nouvelles ou changées, {gone} retirées ou changées</translation>
  </message>
  <message>
   <source>{new} new, {changed} changed, {same} as they were, {gone} taken out</source>
   <translation>{new} nouvelles, {changed} modifiées, {same} inchangées, {gone} retirées</translation>
  </message>
  <message>
   <source>{new} new, {changed} changed, {same} as they were.</source>
   <translation>{new} nouvelles, {changed} modifiées, {same} inchangées.</translation>
  </message>
  <message>
   <source>{parts} old numbers in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} anciens numéros dans {rows} lignes, {left} laissées de côté ; {faults} fautes, {questions} questions.</translation>
  </message>
  <message>
   <source>{parts} parts in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} pièces en {rows} lignes, {left} écartées ; {faults} erreurs, {questions} questions.</translation>
  </message>
  <message>
   <source>{parts} positions in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} positions dans {rows} lignes, {left} laissées de côté ; {faults} fautes, {questions} questions.</translation>
  </message>
  <message>
   <source>{parts} types in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} types dans {rows} lignes, {left} laissées de côté ; {faults} fautes, {questions} questions.</translation>
  </message>
  <message>
   <source>{part} on {day}: {price} from list {name}</source>
   <translation>{part} le {day} : {price} de la liste {name}</translation>
  </message>
  <message>
   <source>{path} is there already, and this program did not write it as such a file. Replace it?</source>
   <translation>{path} existe déjà, et ce programme ne l'a pas écrit comme tel. Le remplacer ?</translation>
  </message>
  <message>
   <source>{path} is there already. Replace it?</source>
   <translation>{path} existe déjà. Le remplacer ?</translation>
  </message>
  <message>
   <source>{place} was written by a newer version of Spoutline ({written_by}; form {form}). This is Spoutline {program}, which knows forms up to {known_form}; nothing was changed. Use the newer program, or restore a backup that was made before.</source>
   <translation>{place} a été écrit par une version plus récente de Spoutline ({written_by}; forme {form}). Ceci est Spoutline {program}, qui connaît les formes jusqu’à {known_form} ; rien n’a été modifié. Utilisez le programme plus récent, ou restaurez une sauvegarde antérieure.</translation>
  </message>
  <message>
   <source>{place}: {remaining} of {all} parts allowed; makers: {makers}</source>
   <translation>{place} : {remaining} pièces permises sur {all} ; fabricants : {makers}</translation>
  </message>
  <message>
   <source>{site}, {count} positions</source>
   <translation>{site}, {count} postes</translation>
  </message>
  <message>
   <source>{type} for {dispenser}</source>
   <translation>{type} pour {dispenser}</translation>
  </message>
  <message>
   <source>“{name}” is open. Open another survey first.</source>
   <translation>« {name} » est ouvert. Ouvrez d'abord un autre relevé.</translation>
  </message>
  <message>
   <source>“{word}” becomes “{nearest}” ({count})</source>
   <translation>« {word} » devient « {nearest} » ({count})</translation>
  </message>
 </context>
</TS>
