<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
 <context>
  <name>window</name>
  <message>
   <source> {0} more entries need a look.</source>
   <translation>Otras {0} entradas necesitan revisión.</translation>
  </message>
  <message>
   <source>&amp;About and safety</source>
   <translation>&amp;Acerca de y seguridad</translation>
  </message>
  <message>
   <source>&amp;Accept this answer</source>
   <translation>&amp;Aceptar esta respuesta</translation>
  </message>
  <message>
   <source>&amp;Accept this way out</source>
   <translation>&amp;Aceptar esta salida</translation>
  </message>
  <message>
   <source>&amp;Accepted</source>
   <translation>Acepta&amp;da</translation>
  </message>
  <message>
   <source>&amp;Add</source>
   <translation>&amp;Añadir</translation>
  </message>
  <message>
   <source>&amp;Add a file…</source>
   <translation>&amp;Añadir un archivo…</translation>
  </message>
  <message>
   <source>&amp;Add part</source>
   <translation>Añadir pie&amp;za</translation>
  </message>
  <message>
   <source>&amp;Address</source>
   <translation>&amp;Dirección</translation>
  </message>
  <message>
   <source>&amp;Add…</source>
   <translation>&amp;Añadir…</translation>
  </message>
  <message>
   <source>&amp;Agree</source>
   <translation>&amp;Acordar</translation>
  </message>
  <message>
   <source>&amp;All</source>
   <translation>&amp;Todo</translation>
  </message>
  <message>
   <source>&amp;All surveys…</source>
   <translation>&amp;Todos los levantamientos…</translation>
  </message>
  <message>
   <source>&amp;Also those that do not fit</source>
   <translation>&amp;También las que no sirven</translation>
  </message>
  <message>
   <source>&amp;Amount or percent</source>
   <translation>&amp;Importe o porcentaje</translation>
  </message>
  <message>
   <source>&amp;Answer for it</source>
   <translation>Respon&amp;der por ello</translation>
  </message>
  <message>
   <source>&amp;Back</source>
   <translation>&amp;Atrás</translation>
  </message>
  <message>
   <source>&amp;Back a step</source>
   <translation>Paso &amp;anterior</translation>
  </message>
  <message>
   <source>&amp;Back up now</source>
   <translation>Respaldar ah&amp;ora</translation>
  </message>
  <message>
   <source>&amp;Backups…</source>
   <translation>Copias &amp;de seguridad…</translation>
  </message>
  <message>
   <source>&amp;Begin</source>
   <translation>&amp;Comenzar</translation>
  </message>
  <message>
   <source>&amp;Beyond the years whose onboard share is known</source>
   <translation>Más allá de los a&amp;ños cuya parte a bordo se conoce</translation>
  </message>
  <message>
   <source>&amp;Bill as built</source>
   <translation>Lista &amp;construida</translation>
  </message>
  <message>
   <source>&amp;Book</source>
   <translation>Lib&amp;ro</translation>
  </message>
  <message>
   <source>&amp;Book ({0} touched)</source>
   <translation>&amp;Libro ({0} tocadas)</translation>
  </message>
  <message>
   <source>&amp;Catalog the book plans with</source>
   <translation>&amp;Catálogo con el que planea el libro</translation>
  </message>
  <message>
   <source>&amp;Catalogs and editions</source>
   <translation>Catálogos y ediciones</translation>
  </message>
  <message>
   <source>&amp;Close</source>
   <translation>&amp;Cerrar</translation>
  </message>
  <message>
   <source>&amp;Close all</source>
   <translation>&amp;Cerrar todo</translation>
  </message>
  <message>
   <source>&amp;Compare</source>
   <translation>&amp;Comparar</translation>
  </message>
  <message>
   <source>&amp;Conversion of the site</source>
   <translation>Con&amp;versión de la estación</translation>
  </message>
  <message>
   <source>&amp;Copy</source>
   <translation>&amp;Copiar</translation>
  </message>
  <message>
   <source>&amp;Copy answers to…</source>
   <translation>&amp;Copiar respuestas a…</translation>
  </message>
  <message>
   <source>&amp;Copy the picture</source>
   <translation>&amp;Copiar la imagen</translation>
  </message>
  <message>
   <source>&amp;Currency</source>
   <translation>&amp;Moneda</translation>
  </message>
  <message>
   <source>&amp;Customers…</source>
   <translation>Cliente&amp;s…</translation>
  </message>
  <message>
   <source>&amp;Day</source>
   <translation>Dí&amp;a</translation>
  </message>
  <message>
   <source>&amp;Declined</source>
   <translation>Rec&amp;hazada</translation>
  </message>
  <message>
   <source>&amp;Describe part</source>
   <translation>Descri&amp;bir pieza</translation>
  </message>
  <message>
   <source>&amp;Dispenser</source>
   <translation>&amp;Surtidor</translation>
  </message>
  <message>
   <source>&amp;Dispenser ({0})</source>
   <translation>&amp;Surtidor ({0})</translation>
  </message>
  <message>
   <source>&amp;Duplicate</source>
   <translation>&amp;Duplicar</translation>
  </message>
  <message>
   <source>&amp;E-mail</source>
   <translation>&amp;Correo</translation>
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>Edit&amp;ar</translation>
  </message>
  <message>
   <source>&amp;Edition</source>
   <translation>&amp;Edición</translation>
  </message>
  <message>
   <source>&amp;Empty all figures</source>
   <translation>&amp;Vaciar todas las cifras</translation>
  </message>
  <message>
   <source>&amp;Export as a table…</source>
   <translation>&amp;Exportar como tabla…</translation>
  </message>
  <message>
   <source>&amp;Fill it</source>
   <translation>&amp;Rellenarlo</translation>
  </message>
  <message>
   <source>&amp;Filler height</source>
   <translation>Alt&amp;ura de la boca de llenado</translation>
  </message>
  <message>
   <source>&amp;Find anything…</source>
   <translation>B&amp;uscar cualquier cosa…</translation>
  </message>
  <message>
   <source>&amp;Fit it and note it in the record</source>
   <translation>&amp;Montarla y anotarla</translation>
  </message>
  <message>
   <source>&amp;Forget</source>
   <translation>&amp;Olvidar</translation>
  </message>
  <message>
   <source>&amp;Freight</source>
   <translation>&amp;Flete</translation>
  </message>
  <message>
   <source>&amp;Go</source>
   <translation>&amp;Ir</translation>
  </message>
  <message>
   <source>&amp;Headings in the first row</source>
   <translation>&amp;Títulos en la primera fila</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>A&amp;yuda</translation>
  </message>
  <message>
   <source>&amp;History</source>
   <translation>&amp;Historial</translation>
  </message>
  <message>
   <source>&amp;Hours with a single-use breakaway</source>
   <translation>&amp;Horas con una válvula de ruptura de un solo uso</translation>
  </message>
  <message>
   <source>&amp;Import a table…</source>
   <translation>&amp;Importar una tabla…</translation>
  </message>
  <message>
   <source>&amp;Import…</source>
   <translation>Imp&amp;ortar…</translation>
  </message>
  <message>
   <source>&amp;Inspections and wear</source>
   <translation>Insp&amp;ecciones y desgaste</translation>
  </message>
  <message>
   <source>&amp;Installer's work</source>
   <translation>Trabajo del &amp;instalador</translation>
  </message>
  <message>
   <source>&amp;Interest on spares</source>
   <translation>&amp;Interés de los repuestos</translation>
  </message>
  <message>
   <source>&amp;Interest, % a year</source>
   <translation>&amp;Interés, % al año</translation>
  </message>
  <message>
   <source>&amp;Island of the dispenser</source>
   <translation>&amp;Isla del surtidor</translation>
  </message>
  <message>
   <source>&amp;Islands that they stand on</source>
   <translation>&amp;Islas donde están</translation>
  </message>
  <message>
   <source>&amp;Issue it so</source>
   <translation>Em&amp;itirla así</translation>
  </message>
  <message>
   <source>&amp;Joints of a container of sealant</source>
   <translation>&amp;Uniones por envase de sellador</translation>
  </message>
  <message>
   <source>&amp;Keep for this supplier</source>
   <translation>&amp;Guardar para este proveedor</translation>
  </message>
  <message>
   <source>&amp;Keep today's answer; find sets that last for this one too</source>
   <translation>&amp;Conservar la respuesta de hoy; buscar conjuntos que sirvan también para esta</translation>
  </message>
  <message>
   <source>&amp;Keys</source>
   <translation>&amp;Teclas</translation>
  </message>
  <message>
   <source>&amp;Language</source>
   <translation>&amp;Idioma</translation>
  </message>
  <message>
   <source>&amp;Least margin, percent</source>
   <translation>Margen &amp;mínimo, por ciento</translation>
  </message>
  <message>
   <source>&amp;Leave it open</source>
   <translation>De&amp;jarlo abierto</translation>
  </message>
  <message>
   <source>&amp;Let all parts go</source>
   <translation>Libe&amp;rar todas las piezas</translation>
  </message>
  <message>
   <source>&amp;Let the book plan with it</source>
   <translation>&amp;Que el libro planifique con ella</translation>
  </message>
  <message>
   <source>&amp;List for a visit</source>
   <translation>&amp;Lista para una visita</translation>
  </message>
  <message>
   <source>&amp;Local rules</source>
   <translation>Re&amp;glas locales</translation>
  </message>
  <message>
   <source>&amp;Local rules…</source>
   <translation>&amp;Reglas locales…</translation>
  </message>
  <message>
   <source>&amp;Longest lead time</source>
   <translation>Pla&amp;zo de entrega máximo</translation>
  </message>
  <message>
   <source>&amp;Look at the demonstration</source>
   <translation>Ver la demo&amp;stración</translation>
  </message>
  <message>
   <source>&amp;Make the map</source>
   <translation>&amp;Hacer el mapa</translation>
  </message>
  <message>
   <source>&amp;Measure a distance</source>
   <translation>&amp;Medir una distancia</translation>
  </message>
  <message>
   <source>&amp;Metric units</source>
   <translation>&amp;Unidades métricas</translation>
  </message>
  <message>
   <source>&amp;Name</source>
   <translation>No&amp;mbre</translation>
  </message>
  <message>
   <source>&amp;Name of the position</source>
   <translation>&amp;Nombre de la posición</translation>
  </message>
  <message>
   <source>&amp;Name of the site</source>
   <translation>&amp;Nombre de la estación</translation>
  </message>
  <message>
   <source>&amp;Names of the new dispensers</source>
   <translation>&amp;Nombres de los surtidores nuevos</translation>
  </message>
  <message>
   <source>&amp;New catalog</source>
   <translation>&amp;Nuevo catálogo</translation>
  </message>
  <message>
   <source>&amp;New customer</source>
   <translation>&amp;Nuevo cliente</translation>
  </message>
  <message>
   <source>&amp;New family</source>
   <translation>&amp;Nueva familia</translation>
  </message>
  <message>
   <source>&amp;New survey…</source>
   <translation>Levantamiento &amp;nuevo…</translation>
  </message>
  <message>
   <source>&amp;New type</source>
   <translation>Tipo &amp;nuevo</translation>
  </message>
  <message>
   <source>&amp;Next</source>
   <translation>&amp;Siguiente</translation>
  </message>
  <message>
   <source>&amp;Next step</source>
   <translation>Paso &amp;siguiente</translation>
  </message>
  <message>
   <source>&amp;Note</source>
   <translation>&amp;Nota</translation>
  </message>
  <message>
   <source>&amp;Number</source>
   <translation>&amp;Número</translation>
  </message>
  <message>
   <source>&amp;Offer</source>
   <translation>Oferta</translation>
  </message>
  <message>
   <source>&amp;Old numbers</source>
   <translation>Números anti&amp;guos</translation>
  </message>
  <message>
   <source>&amp;One answer</source>
   <translation>&amp;Una respuesta</translation>
  </message>
  <message>
   <source>&amp;Open</source>
   <translation>Ab&amp;rir</translation>
  </message>
  <message>
   <source>&amp;Open with</source>
   <translation>A&amp;brir con</translation>
  </message>
  <message>
   <source>&amp;Other side</source>
   <translation>&amp;Otro lado</translation>
  </message>
  <message>
   <source>&amp;Other side of the dispenser…</source>
   <translation>&amp;Otro lado del surtidor…</translation>
  </message>
  <message>
   <source>&amp;Percent</source>
   <translation>&amp;Porcentaje</translation>
  </message>
  <message>
   <source>&amp;Picture</source>
   <translation>&amp;Imagen</translation>
  </message>
  <message>
   <source>&amp;Planned, agreed and built</source>
   <translation>&amp;Planificado, acordado y construido</translation>
  </message>
  <message>
   <source>&amp;Position</source>
   <translation>&amp;Posición</translation>
  </message>
  <message>
   <source>&amp;Preferences…</source>
   <translation>Pr&amp;eferencias…</translation>
  </message>
  <message>
   <source>&amp;Prepared by</source>
   <translation>&amp;Preparada por</translation>
  </message>
  <message>
   <source>&amp;Price rise, % a year</source>
   <translation>Alza &amp;de precios, % al año</translation>
  </message>
  <message>
   <source>&amp;Publish as next edition</source>
   <translation>&amp;Publicar como próxima edición</translation>
  </message>
  <message>
   <source>&amp;Put into the book</source>
   <translation>&amp;Poner en el libro</translation>
  </message>
  <message>
   <source>&amp;Put the article into the draft</source>
   <translation>&amp;Poner el artículo en el borrador</translation>
  </message>
  <message>
   <source>&amp;Put the family into the draft</source>
   <translation>&amp;Poner la familia en el borrador</translation>
  </message>
  <message>
   <source>&amp;Put the lengths into the draft</source>
   <translation>&amp;Poner las longitudes en el borrador</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>&amp;Salir</translation>
  </message>
  <message>
   <source>&amp;Quotations</source>
   <translation>&amp;Cotizaciones</translation>
  </message>
  <message>
   <source>&amp;Quote it so</source>
   <translation>&amp;Cotizarlo así</translation>
  </message>
  <message>
   <source>&amp;Quote to this customer</source>
   <translation>Cotizar &amp;a este cliente</translation>
  </message>
  <message>
   <source>&amp;Read from file…</source>
   <translation>&amp;Leer de un archivo…</translation>
  </message>
  <message>
   <source>&amp;Read it in</source>
   <translation>&amp;Leerlo</translation>
  </message>
  <message>
   <source>&amp;Ready ones, written into a file…</source>
   <translation>&amp;Listas, escritas en un archivo…</translation>
  </message>
  <message>
   <source>&amp;Record</source>
   <translation>&amp;Registro</translation>
  </message>
  <message>
   <source>&amp;Record of the position</source>
   <translation>Registro posició&amp;n</translation>
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>&amp;Rehacer</translation>
  </message>
  <message>
   <source>&amp;Registration</source>
   <translation>&amp;Registro fiscal</translation>
  </message>
  <message>
   <source>&amp;Reid vapor pressure</source>
   <translation>Presión de vap&amp;or Reid</translation>
  </message>
  <message>
   <source>&amp;Remove</source>
   <translation>&amp;Quitar</translation>
  </message>
  <message>
   <source>&amp;Rename</source>
   <translation>Cam&amp;biar nombre</translation>
  </message>
  <message>
   <source>&amp;Repeat</source>
   <translation>&amp;Repetir</translation>
  </message>
  <message>
   <source>&amp;Restore…</source>
   <translation>&amp;Restaurar…</translation>
  </message>
  <message>
   <source>&amp;Revisions</source>
   <translation>R&amp;evisiones</translation>
  </message>
  <message>
   <source>&amp;Rounding</source>
   <translation>&amp;Redondeo</translation>
  </message>
  <message>
   <source>&amp;Rules of</source>
   <translation>&amp;Reglas de</translation>
  </message>
  <message>
   <source>&amp;Save</source>
   <translation>&amp;Guardar</translation>
  </message>
  <message>
   <source>&amp;Save the picture…</source>
   <translation>&amp;Guardar la imagen…</translation>
  </message>
  <message>
   <source>&amp;Save the type</source>
   <translation>&amp;Guardar el tipo</translation>
  </message>
  <message>
   <source>&amp;Separations at a position in a year</source>
   <translation>Separaciones &amp;en una posición al año</translation>
  </message>
  <message>
   <source>&amp;Show it</source>
   <translation>&amp;Mostrarla</translation>
  </message>
  <message>
   <source>&amp;Side that is there</source>
   <translation>Lado que ya &amp;existe</translation>
  </message>
  <message>
   <source>&amp;Site data</source>
   <translation>&amp;Datos de la estación</translation>
  </message>
  <message>
   <source>&amp;Source</source>
   <translation>&amp;Fuente</translation>
  </message>
  <message>
   <source>&amp;Start survey</source>
   <translation>&amp;Empezar levantamiento</translation>
  </message>
  <message>
   <source>&amp;Stay here</source>
   <translation>&amp;Quedarse aquí</translation>
  </message>
  <message>
   <source>&amp;Steps taken…</source>
   <translation>&amp;Pasos dados…</translation>
  </message>
  <message>
   <source>&amp;Stop</source>
   <translation>&amp;Parar</translation>
  </message>
  <message>
   <source>&amp;Survey</source>
   <translation>&amp;Levantamiento</translation>
  </message>
  <message>
   <source>&amp;Take away</source>
   <translation>&amp;Quitar</translation>
  </message>
  <message>
   <source>&amp;Take back the last change</source>
   <translation>Des&amp;hacer el último cambio</translation>
  </message>
  <message>
   <source>&amp;Take back the last step</source>
   <translation>&amp;Deshacer el último paso</translation>
  </message>
  <message>
   <source>&amp;Take in a price file…</source>
   <translation>&amp;Tomar un archivo de precios…</translation>
  </message>
  <message>
   <source>&amp;Take it and quote so</source>
   <translation>&amp;Tomarla y cotizar así</translation>
  </message>
  <message>
   <source>&amp;Take its figures</source>
   <translation>&amp;Tomar sus datos</translation>
  </message>
  <message>
   <source>&amp;Take off the list</source>
   <translation>&amp;Quitar de la lista</translation>
  </message>
  <message>
   <source>&amp;Take positions</source>
   <translation>&amp;Tomar posiciones</translation>
  </message>
  <message>
   <source>&amp;Take the marked set</source>
   <translation>&amp;Tomar el conjunto marcado</translation>
  </message>
  <message>
   <source>&amp;Take this set</source>
   <translation>&amp;Tomar este conjunto</translation>
  </message>
  <message>
   <source>&amp;Terms…</source>
   <translation>&amp;Condiciones…</translation>
  </message>
  <message>
   <source>&amp;Theme</source>
   <translation>&amp;Tema</translation>
  </message>
  <message>
   <source>&amp;Thread standard</source>
   <translation>&amp;Norma de rosca</translation>
  </message>
  <message>
   <source>&amp;Three jobs in pictures</source>
   <translation>Tres trabajos en i&amp;mágenes</translation>
  </message>
  <message>
   <source>&amp;Title</source>
   <translation>&amp;Título</translation>
  </message>
  <message>
   <source>&amp;US units</source>
   <translation>Unidades de &amp;EE. UU.</translation>
  </message>
  <message>
   <source>&amp;Undo</source>
   <translation>&amp;Deshacer</translation>
  </message>
  <message>
   <source>&amp;Undo it</source>
   <translation>&amp;Deshacerlo</translation>
  </message>
  <message>
   <source>&amp;Undo the last agreement…</source>
   <translation>Deshacer el ú&amp;ltimo acuerdo…</translation>
  </message>
  <message>
   <source>&amp;Unit</source>
   <translation>Unid&amp;ad</translation>
  </message>
  <message>
   <source>&amp;Use it in the set</source>
   <translation>&amp;Usarla en el conjunto</translation>
  </message>
  <message>
   <source>&amp;Use these</source>
   <translation>Usar &amp;estas</translation>
  </message>
  <message>
   <source>&amp;Use this part</source>
   <translation>&amp;Usar esta pieza</translation>
  </message>
  <message>
   <source>&amp;Valid for</source>
   <translation>&amp;Vigencia</translation>
  </message>
  <message>
   <source>&amp;Value</source>
   <translation>&amp;Valor</translation>
  </message>
  <message>
   <source>&amp;View</source>
   <translation>&amp;Ver</translation>
  </message>
  <message>
   <source>&amp;Weigh all sets…</source>
   <translation>&amp;Sopesar todos…</translation>
  </message>
  <message>
   <source>&amp;What if…</source>
   <translation>Qué &amp;pasaría si…</translation>
  </message>
  <message>
   <source>&amp;Which price applies?</source>
   <translation>¿&amp;Qué precio se aplica?</translation>
  </message>
  <message>
   <source>&amp;Who fuels?</source>
   <translation>¿&amp;Quién carga?</translation>
  </message>
  <message>
   <source>&amp;Whole drawing</source>
   <translation>Dibujo &amp;completo</translation>
  </message>
  <message>
   <source>&amp;Why not this part?</source>
   <translation>¿&amp;Por qué no esta pieza?</translation>
  </message>
  <message>
   <source>&amp;Work out the cases</source>
   <translation>Calcular los &amp;casos</translation>
  </message>
  <message>
   <source>&amp;Write to a file…</source>
   <translation>&amp;Escribir en un archivo…</translation>
  </message>
  <message>
   <source>&amp;Write to file…</source>
   <translation>&amp;Guardar en un archivo…</translation>
  </message>
  <message>
   <source>&amp;XLSX…</source>
   <translation>&amp;XLSX…</translation>
  </message>
  <message>
   <source>&amp;Years</source>
   <translation>&amp;Años</translation>
  </message>
  <message>
   <source>(cannot be read)</source>
   <translation>(no se puede leer)</translation>
  </message>
  <message>
   <source>(hidden)</source>
   <translation>(oculta)</translation>
  </message>
  <message>
   <source>(kept)</source>
   <translation>(conservado)</translation>
  </message>
  <message>
   <source>(no title)</source>
   <translation>(sin título)</translation>
  </message>
  <message>
   <source>(one table)</source>
   <translation>(una tabla)</translation>
  </message>
  <message>
   <source>0 to 1000.</source>
   <translation>0 a 1000.</translation>
  </message>
  <message>
   <source>0.05 rounds to the next multiple of five cents.</source>
   <translation>0.05 redondea al siguiente múltiplo de cinco centavos.</translation>
  </message>
  <message>
   <source>0.1 to 100.</source>
   <translation>0,1 a 100.</translation>
  </message>
  <message>
   <source>1 page</source>
   <translation>1 página</translation>
  </message>
  <message>
   <source>1 survey</source>
   <translation>1 levantamiento</translation>
  </message>
  <message>
   <source>1 to 30.</source>
   <translation>1 a 30.</translation>
  </message>
  <message>
   <source>40 CFR 280.32(b), from memory</source>
   <translation>40 CFR 280.32(b), de memoria</translation>
  </message>
  <message>
   <source>77 FR 28772 table 1 (memory)</source>
   <translation>77 FR 28772 tabla 1 (de memoria)</translation>
  </message>
  <message>
   <source>A calendar needs dates: write the first day of the plan here, then save it.</source>
   <translation>Un calendario necesita fechas: escriba aquí el primer día del plan y luego guárdelo.</translation>
  </message>
  <message>
   <source>A catalog that you fill from your suppliers' tables, and the survey of your first site.</source>
   <translation>Un catálogo que se llena con las tablas de sus proveedores, y el levantamiento de su primer emplazamiento.</translation>
  </message>
  <message>
   <source>A change of liquid goes by tank, and a vapor pipe ends at one. For a blend of two write 1 + 2.</source>
   <translation>Un cambio de líquido va por tanque, y un tubo de vapor termina en uno. Para una mezcla de dos escriba 1 + 2.</translation>
  </message>
  <message>
   <source>A click chooses the column, a double click sorts by it</source>
   <translation>Un clic elige la columna, un doble clic ordena por ella</translation>
  </message>
  <message>
   <source>A comma is the decimal sign</source>
   <translation>La coma es el signo decimal</translation>
  </message>
  <message>
   <source>A cord pulls the hose in</source>
   <translation>Un cable recoge la manguera</translation>
  </message>
  <message>
   <source>A distributor quotes a refit</source>
   <translation>Un distribuidor cotiza una renovación</translation>
  </message>
  <message>
   <source>A fault of the program</source>
   <translation>Una falla del programa</translation>
  </message>
  <message>
   <source>A new part</source>
   <translation>Una pieza nueva</translation>
  </message>
  <message>
   <source>A new type: give it a name and what it answers.</source>
   <translation>Un tipo nuevo: indique su nombre y lo que responde.</translation>
  </message>
  <message>
   <source>A person's name.</source>
   <translation>El nombre de una persona.</translation>
  </message>
  <message>
   <source>A price that somebody answers for, in place of the lists. Without a price, the line says that it follows.</source>
   <translation>Un precio del que alguien responde, en lugar de las listas. Sin precio, la línea dice que está pendiente.</translation>
  </message>
  <message>
   <source>A program of several sites puts the site before those without one.</source>
   <translation>Un programa de varias estaciones la pone antes que las que no tienen plazo.</translation>
  </message>
  <message>
   <source>A pump draws vapor</source>
   <translation>Una bomba aspira el vapor</translation>
  </message>
  <message>
   <source>A quotation in the book has revisions; keep this one or look one up.</source>
   <translation>Una cotización del libro tiene revisiones; guarde esta o busque otra.</translation>
  </message>
  <message>
   <source>A ready station, planned with a catalog that is invented: its makers, parts and prices exist nowhere, and every paper made from it says so.</source>
   <translation>Una estación lista, planificada con un catálogo inventado: sus fabricantes, piezas y precios no existen, y cada documento hecho con él lo dice.</translation>
  </message>
  <message>
   <source>A retractor or a reel moves the breakaway to the nozzle.</source>
   <translation>Un retractor o un carrete lleva la válvula de ruptura a la pistola.</translation>
  </message>
  <message>
   <source>A set fits</source>
   <translation>Un conjunto sirve</translation>
  </message>
  <message>
   <source>A set fits; a question is open</source>
   <translation>Un conjunto sirve; queda una pregunta abierta</translation>
  </message>
  <message>
   <source>A set was found, but a must is broken</source>
   <translation>Se halló un conjunto, pero incumple algo exigido</translation>
  </message>
  <message>
   <source>A station owner plans a conversion</source>
   <translation>El dueño de una estación planea una conversión</translation>
  </message>
  <message>
   <source>A supplier's ta&amp;ble</source>
   <translation>Ta&amp;bla de un proveedor</translation>
  </message>
  <message>
   <source>A survey file; it can be dropped on the window too.</source>
   <translation>Un archivo de levantamiento; también se puede soltar sobre la ventana.</translation>
  </message>
  <message>
   <source>A whole number from 1 to 50.</source>
   <translation>Un número entero de 1 a 50.</translation>
  </message>
  <message>
   <source>A whole number; each is emptied before its pipe is closed.</source>
   <translation>Un número entero; cada una se vacía antes de cerrar su tubería.</translation>
  </message>
  <message>
   <source>A&amp;ddress</source>
   <translation>&amp;Dirección</translation>
  </message>
  <message>
   <source>A&amp;gree on these sets…</source>
   <translation>Acordar estos con&amp;juntos…</translation>
  </message>
  <message>
   <source>A&amp;gree on this set…</source>
   <translation>Ac&amp;ordar este conjunto…</translation>
  </message>
  <message>
   <source>A&amp;ll</source>
   <translation>&amp;Todas</translation>
  </message>
  <message>
   <source>A&amp;ll stations</source>
   <translation>Toda&amp;s las estaciones</translation>
  </message>
  <message>
   <source>A&amp;ll surveys…</source>
   <translation>&amp;Todos los levantamientos…</translation>
  </message>
  <message>
   <source>A&amp;nnual budget</source>
   <translation>P&amp;resupuesto anual</translation>
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
   <translation>Acerca de</translation>
  </message>
  <message>
   <source>About and safety</source>
   <translation>Acerca de y seguridad</translation>
  </message>
  <message>
   <source>Above 0.</source>
   <translation>Mayor que 0.</translation>
  </message>
  <message>
   <source>Above the ground the hose hangs over.</source>
   <translation>Sobre el suelo encima del cual cuelga la manguera.</translation>
  </message>
  <message>
   <source>Above the same ground; negative below a dock.</source>
   <translation>Sobre el mismo suelo; negativa bajo un muelle.</translation>
  </message>
  <message>
   <source>Adapter</source>
   <translation>Adaptador</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Añadir</translation>
  </message>
  <message>
   <source>Add a filler</source>
   <translation>Añadir boca de llenado</translation>
  </message>
  <message>
   <source>Add a further f&amp;iller</source>
   <translation>Aña&amp;dir otra boca de llenado</translation>
  </message>
  <message>
   <source>Add a hose position to this or another dispenser.</source>
   <translation>Añadir una posición de manguera a este surtidor o a otro.</translation>
  </message>
  <message>
   <source>Add a position</source>
   <translation>Añadir una posición</translation>
  </message>
  <message>
   <source>Add a position with the same answers.</source>
   <translation>Añadir una posición con las mismas respuestas.</translation>
  </message>
  <message>
   <source>Add a row</source>
   <translation>Añadir una fila</translation>
  </message>
  <message>
   <source>Add a row behind the chosen one (Insert)</source>
   <translation>Añadir una fila tras la elegida (Insert)</translation>
  </message>
  <message>
   <source>Add dispensers with the same positions as this one.</source>
   <translation>Añadir surtidores con las mismas posiciones que este.</translation>
  </message>
  <message>
   <source>Add pho&amp;tos…</source>
   <translation>Añadir &amp;fotos…</translation>
  </message>
  <message>
   <source>Add positions from a CSV file or a workbook; columns are mapped first, faults told cell by cell.</source>
   <translation>Añadir posiciones de un CSV o un libro de cálculo; primero se asignan las columnas, y las faltas se dicen celda por celda.</translation>
  </message>
  <message>
   <source>Add the &amp;words of the fault; they may hold values of your survey</source>
   <translation>Añadir el &amp;texto de la falla; puede contener valores de su levantamiento</translation>
  </message>
  <message>
   <source>Add to the &amp;wear log</source>
   <translation>Añadir al registr&amp;o de desgaste</translation>
  </message>
  <message>
   <source>Address</source>
   <translation>Dirección</translation>
  </message>
  <message>
   <source>Adds an annex to the paper: what the catalog has for each place and what decided.</source>
   <translation>Añade un anexo al papel: qué tiene el catálogo para cada lugar y qué decidió.</translation>
  </message>
  <message>
   <source>Adopted codes</source>
   <translation>Códigos adoptados</translation>
  </message>
  <message>
   <source>Advice only: local codes and the authority having jurisdiction decide.</source>
   <translation>Solo orientación: deciden los códigos locales y la autoridad competente.</translation>
  </message>
  <message>
   <source>Advice, no permission: the agency of each site decides before its work begins.</source>
   <translation>Consejo, no permiso: la agencia de cada estación decide antes de que empiece su trabajo.</translation>
  </message>
  <message>
   <source>After how many years a kind of part is replaced; a kind that is not here is as common practice has it.</source>
   <translation>Tras cuántos años se reemplaza un tipo de pieza; un tipo que no está aquí es como en la práctica común.</translation>
  </message>
  <message>
   <source>After: {0}</source>
   <translation>Después: {0}</translation>
  </message>
  <message>
   <source>Ag&amp;ree on the planned set…</source>
   <translation>Aco&amp;rdar el plan…</translation>
  </message>
  <message>
   <source>Against the limit</source>
   <translation>Frente al límite</translation>
  </message>
  <message>
   <source>Against {0}: {1}</source>
   <translation>Frente a {0}: {1}</translation>
  </message>
  <message>
   <source>Age</source>
   <translation>Edad</translation>
  </message>
  <message>
   <source>Age of an installed part</source>
   <translation>Edad de una pieza instalada</translation>
  </message>
  <message>
   <source>Age of the chosen part, years</source>
   <translation>Edad de la pieza elegida, años</translation>
  </message>
  <message>
   <source>Age, years</source>
   <translation>Edad, años</translation>
  </message>
  <message>
   <source>Agency</source>
   <translation>Agencia</translation>
  </message>
  <message>
   <source>Agency table</source>
   <translation>Tabla de agencias</translation>
  </message>
  <message>
   <source>Ages are given at each position, under what hangs there today.</source>
   <translation>Las edades se dan en cada posición, bajo lo que cuelga hoy.</translation>
  </message>
  <message>
   <source>Agree on one way; save its report and the calendar of its steps.</source>
   <translation>Acuerde una vía; guarde su informe y el calendario de sus pasos.</translation>
  </message>
  <message>
   <source>Agree on the &amp;way shown…</source>
   <translation>Acordar el ca&amp;mino mostrado…</translation>
  </message>
  <message>
   <source>Agree on the planned sets of one position, several or all: papers show them from then on.</source>
   <translation>Acordar los conjuntos planificados de una posición, de varias o de todas: los documentos los muestran desde entonces.</translation>
  </message>
  <message>
   <source>Agree on the sets of the way that the report follows, in bold above</source>
   <translation>Acordar los conjuntos del camino que sigue el informe, arriba en negrita</translation>
  </message>
  <message>
   <source>Agree on these sets</source>
   <translation>Acordar estos conjuntos</translation>
  </message>
  <message>
   <source>Agree on these sets…</source>
   <translation>Acordar estos conjuntos…</translation>
  </message>
  <message>
   <source>Agree&amp;ments…</source>
   <translation>Acuerdo&amp;s…</translation>
  </message>
  <message>
   <source>Agreed</source>
   <translation>Acordado</translation>
  </message>
  <message>
   <source>Agreement {0}</source>
   <translation>Acuerdo {0}</translation>
  </message>
  <message>
   <source>Agreement {0}, by {1}: {2}. What was agreed before it holds again; the history keeps both.</source>
   <translation>Acuerdo {0}, de {1}: {2}. Vuelve a valer lo acordado antes; el historial guarda ambos.</translation>
  </message>
  <message>
   <source>Agreements</source>
   <translation>Acuerdos</translation>
  </message>
  <message>
   <source>Agreements and withdrawals</source>
   <translation>Acuerdos y anulaciones</translation>
  </message>
  <message>
   <source>Air, fills and tanks</source>
   <translation>Aire, llenados y tanques</translation>
  </message>
  <message>
   <source>Al&amp;l agreements…</source>
   <translation>&amp;Todos los acuerdos…</translation>
  </message>
  <message>
   <source>All</source>
   <translation>Todos</translation>
  </message>
  <message>
   <source>All &amp;positions in a table</source>
   <translation>Todas las p&amp;osiciones en una tabla</translation>
  </message>
  <message>
   <source>All changes are in the book</source>
   <translation>Todos los cambios están en el libro</translation>
  </message>
  <message>
   <source>All commands with their keys.</source>
   <translation>Todas las órdenes con sus teclas.</translation>
  </message>
  <message>
   <source>All kinds</source>
   <translation>Todos los tipos</translation>
  </message>
  <message>
   <source>All parts with sums, the paper to print, and files to save.</source>
   <translation>Todas las piezas con sus sumas, el documento para imprimir y los archivos para guardar.</translation>
  </message>
  <message>
   <source>All positions</source>
   <translation>Todas las posiciones</translation>
  </message>
  <message>
   <source>All positions and their answers</source>
   <translation>Todas las posiciones y sus respuestas</translation>
  </message>
  <message>
   <source>All positions planned; choosing sets together and adding up…</source>
   <translation>Todas las posiciones planificadas; eligiendo conjuntos en común y sumando…</translation>
  </message>
  <message>
   <source>All reasons and &amp;ways out…</source>
   <translation>Todas las razones y &amp;salidas…</translation>
  </message>
  <message>
   <source>All reasons and ways out…</source>
   <translation>Todas las razones y salidas…</translation>
  </message>
  <message>
   <source>All surveys in the book. Every change is kept in it at once.</source>
   <translation>Todos los levantamientos del libro. Cada cambio se guarda en él enseguida.</translation>
  </message>
  <message>
   <source>Allowed in some places only, and then together with a device that shuts the nozzle when pressure or flow ends.</source>
   <translation>Solo se permite en algunos lugares, y entonces junto con un dispositivo que cierra la pistola cuando falta presión o caudal.</translation>
  </message>
  <message>
   <source>Also changes</source>
   <translation>También cambia</translation>
  </message>
  <message>
   <source>Also changes: {changes}</source>
   <translation>También cambia: {changes}</translation>
  </message>
  <message>
   <source>Alt+1 to Alt+5 go to a step. In the drawing: Space picks the next part, plus and minus change its size, arrows move it, 0 shows all of it.</source>
   <translation>Alt+1 a Alt+5 van a un paso. En el dibujo: Espacio elige la pieza siguiente, más y menos cambian su tamaño, las flechas lo mueven, 0 lo muestra entero.</translation>
  </message>
  <message>
   <source>Alternates</source>
   <translation>Alternativas</translation>
  </message>
  <message>
   <source>Amount</source>
   <translation>Importe</translation>
  </message>
  <message>
   <source>Amount, {currency}</source>
   <translation>Suma, {currency}</translation>
  </message>
  <message>
   <source>An alternate that is taken opens revision {0} beside it.</source>
   <translation>Una alternativa que se toma abre la revisión {0} a su lado.</translation>
  </message>
  <message>
   <source>An attendant</source>
   <translation>Un empleado</translation>
  </message>
  <message>
   <source>An empty maker or group means every one; the row that says more counts.</source>
   <translation>Un fabricante o grupo vacío vale por todos; cuenta la fila que dice más.</translation>
  </message>
  <message>
   <source>An estimate, such as 0.04: one in 25 years.</source>
   <translation>Una estimación, como 0.04: una en 25 años.</translation>
  </message>
  <message>
   <source>An installer prints the work</source>
   <translation>Un instalador imprime el trabajo</translation>
  </message>
  <message>
   <source>An overhead outlet restricts the latch.</source>
   <translation>Una salida en alto limita la traba.</translation>
  </message>
  <message>
   <source>And light vans</source>
   <translation>Y camionetas</translation>
  </message>
  <message>
   <source>And the spares of its quotation</source>
   <translation>Y los repuestos de su oferta</translation>
  </message>
  <message>
   <source>Another answer to compare</source>
   <translation>Otra respuesta para comparar</translation>
  </message>
  <message>
   <source>Another part</source>
   <translation>Otra pieza</translation>
  </message>
  <message>
   <source>Another part hangs here.</source>
   <translation>Aquí cuelga otra pieza.</translation>
  </message>
  <message>
   <source>Another percentage for a kind of part or a discount group.</source>
   <translation>Otro porcentaje para un tipo de pieza o un grupo de descuento.</translation>
  </message>
  <message>
   <source>Another quotation was sent under the number {0}, to {1} for {2}. Give this one its own in its terms; no paper of it can be saved before.</source>
   <translation>Otra cotización se envió con el número {0}, a {1} para {2}. Dé a esta uno propio en sus condiciones; antes no se puede guardar ningún papel suyo.</translation>
  </message>
  <message>
   <source>Answer</source>
   <translation>Respuesta</translation>
  </message>
  <message>
   <source>Answer for the missing prices; then it can be issued.</source>
   <translation>Responda por los precios que faltan; entonces se puede emitir.</translation>
  </message>
  <message>
   <source>Answer for them</source>
   <translation>Responder por ellos</translation>
  </message>
  <message>
   <source>Answers side by side</source>
   <translation>Respuestas lado a lado</translation>
  </message>
  <message>
   <source>Answers to compare</source>
   <translation>Respuestas comparadas</translation>
  </message>
  <message>
   <source>Arizona test list</source>
   <translation>Lista de pruebas de Arizona</translation>
  </message>
  <message>
   <source>As a share of the hose's length from the dispenser: 0.5 is the middle.</source>
   <translation>Como parte del largo de la manguera desde el surtidor: 0.5 es el medio.</translation>
  </message>
  <message>
   <source>As built</source>
   <translation>Según lo construido</translation>
  </message>
  <message>
   <source>As in the price list.</source>
   <translation>Como en la lista de precios.</translation>
  </message>
  <message>
   <source>As pages (PDF), or as one HTML page for screen readers and mails.</source>
   <translation>Como páginas (PDF) o como una sola página HTML para lectores de pantalla y correos.</translation>
  </message>
  <message>
   <source>As printed.</source>
   <translation>Como está impreso.</translation>
  </message>
  <message>
   <source>As printed; each once.</source>
   <translation>Como está impreso; cada uno una vez.</translation>
  </message>
  <message>
   <source>As the desktop</source>
   <translation>Como el escritorio</translation>
  </message>
  <message>
   <source>As the standard writes it, or as people say it: 3/4, 0.75 in, 19 mm, DN 20.</source>
   <translation>Como lo escribe la norma, o como se dice: 3/4, 0.75 in, 19 mm, DN 20.</translation>
  </message>
  <message>
   <source>As the survey was opened</source>
   <translation>Como se abrió el levantamiento</translation>
  </message>
  <message>
   <source>As the way of reckoning asks.</source>
   <translation>Según pide la forma de contar.</translation>
  </message>
  <message>
   <source>Ask in writing; what is not known is said in the report.</source>
   <translation>Pregunte por escrito; el informe dice lo que no se sabe.</translation>
  </message>
  <message>
   <source>Asked for</source>
   <translation>Pide</translation>
  </message>
  <message>
   <source>Asking the combinations…</source>
   <translation>Se preguntan las combinaciones…</translation>
  </message>
  <message>
   <source>At hand</source>
   <translation>A mano</translation>
  </message>
  <message>
   <source>At the clamp, with the hose drawn out.</source>
   <translation>En la abrazadera, con la manguera extendida.</translation>
  </message>
  <message>
   <source>At the dispenser: hang the set, measure, and fill the form.</source>
   <translation>Junto al surtidor: cuelgue el conjunto, mida y llene el formulario.</translation>
  </message>
  <message>
   <source>Authority</source>
   <translation>Autoridad</translation>
  </message>
  <message>
   <source>Axis to the right</source>
   <translation>Eje hacia la derecha</translation>
  </message>
  <message>
   <source>Axis told by the size of the points</source>
   <translation>Eje que indica el tamaño de los puntos</translation>
  </message>
  <message>
   <source>Axis upward</source>
   <translation>Eje hacia arriba</translation>
  </message>
  <message>
   <source>Bac&amp;kups…</source>
   <translation>&amp;Respaldos…</translation>
  </message>
  <message>
   <source>Back</source>
   <translation>Atrás</translation>
  </message>
  <message>
   <source>Back on the hook by hand</source>
   <translation>De vuelta al soporte a mano</translation>
  </message>
  <message>
   <source>Back to the newest</source>
   <translation>Volver a la más nueva</translation>
  </message>
  <message>
   <source>Backups</source>
   <translation>Copias de seguridad</translation>
  </message>
  <message>
   <source>Backups of the book</source>
   <translation>Respaldos del libro</translation>
  </message>
  <message>
   <source>Balance</source>
   <translation>Equilibrio</translation>
  </message>
  <message>
   <source>Balance coaxial</source>
   <translation>Coaxial de equilibrio</translation>
  </message>
  <message>
   <source>Bar ( | )</source>
   <translation>Barra ( | )</translation>
  </message>
  <message>
   <source>Because</source>
   <translation>Porque</translation>
  </message>
  <message>
   <source>Because: {0}</source>
   <translation>Porque: {0}</translation>
  </message>
  <message>
   <source>Before</source>
   <translation>Antes</translation>
  </message>
  <message>
   <source>Before → after</source>
   <translation>Antes → después</translation>
  </message>
  <message>
   <source>Before: {0}</source>
   <translation>Antes: {0}</translation>
  </message>
  <message>
   <source>Begin a survey</source>
   <translation>Comenzar un levantamiento</translation>
  </message>
  <message>
   <source>Begin my own</source>
   <translation>Comenzar lo mío</translation>
  </message>
  <message>
   <source>Bellows on the nozzle</source>
   <translation>Fuelle en la pistola</translation>
  </message>
  <message>
   <source>Between 0 and 1.</source>
   <translation>Entre 0 y 1.</translation>
  </message>
  <message>
   <source>Between 0 and 1; empty counts every gasoline position alike.</source>
   <translation>Entre 0 y 1; vacío: cada posición de gasolina cuenta igual.</translation>
  </message>
  <message>
   <source>Between 0 and 1; empty takes the table's figure.</source>
   <translation>Entre 0 y 1; vacío: la cifra de la tabla.</translation>
  </message>
  <message>
   <source>Between 0 and 1; the rest goes on selling.</source>
   <translation>Entre 0 y 1; el resto sigue vendiendo.</translation>
  </message>
  <message>
   <source>Between 0 and 50, written without the sign.</source>
   <translation>Entre 0 y 50, escrito sin el signo.</translation>
  </message>
  <message>
   <source>Between cells</source>
   <translation>Entre celdas</translation>
  </message>
  <message>
   <source>Blend</source>
   <translation>Mezcla</translation>
  </message>
  <message>
   <source>Boats</source>
   <translation>Embarcaciones</translation>
  </message>
  <message>
   <source>Bond test certificate</source>
   <translation>Certificado de la prueba de continuidad</translation>
  </message>
  <message>
   <source>Both are the same edition: nothing differs. Choose another one to compare it with.</source>
   <translation>Ambas son la misma edición: nada difiere. Elija otra con la que compararla.</translation>
  </message>
  <message>
   <source>Bought</source>
   <translation>Comprado</translation>
  </message>
  <message>
   <source>Breakaway</source>
   <translation>Válvula de ruptura</translation>
  </message>
  <message>
   <source>Breakaways</source>
   <translation>Válvulas de ruptura</translation>
  </message>
  <message>
   <source>Built</source>
   <translation>Construido</translation>
  </message>
  <message>
   <source>Built-in rules stay as they are; copy them to change a row.</source>
   <translation>Las reglas incluidas no cambian; cópielas para cambiar una fila.</translation>
  </message>
  <message>
   <source>Buying</source>
   <translation>Compra</translation>
  </message>
  <message>
   <source>C&amp;hoose</source>
   <translation>Elegi&amp;r</translation>
  </message>
  <message>
   <source>C&amp;limate</source>
   <translation>&amp;Clima</translation>
  </message>
  <message>
   <source>C&amp;ount them so</source>
   <translation>C&amp;ontarlas así</translation>
  </message>
  <message>
   <source>C&amp;ustomer</source>
   <translation>&amp;Cliente</translation>
  </message>
  <message>
   <source>CARB 2013</source>
   <translation>CARB 2013</translation>
  </message>
  <message>
   <source>CSV or XLSX, as the supplier sends it</source>
   <translation>CSV o XLSX, como lo envía el proveedor</translation>
  </message>
  <message>
   <source>CSV or XLSX: a row for each position</source>
   <translation>CSV o XLSX: una fila por posición</translation>
  </message>
  <message>
   <source>CSV or XLSX: a row for each type of dispenser</source>
   <translation>CSV o XLSX: una fila por tipo de surtidor</translation>
  </message>
  <message>
   <source>CSV or XLSX: old number and its maker, the part it leads to and its maker</source>
   <translation>CSV o XLSX: número antiguo y su fabricante, la pieza a la que lleva y su fabricante</translation>
  </message>
  <message>
   <source>CSV…</source>
   <translation>CSV…</translation>
  </message>
  <message>
   <source>Ca&amp;talogs</source>
   <translation>Ca&amp;tálogos</translation>
  </message>
  <message>
   <source>Calc&amp;ulate</source>
   <translation>Calc&amp;ular</translation>
  </message>
  <message>
   <source>Called</source>
   <translation>Se llama</translation>
  </message>
  <message>
   <source>Can the flow be started or stopped else&amp;where?</source>
   <translation>¿Se puede iniciar o detener el caudal en &amp;otro lugar?</translation>
  </message>
  <message>
   <source>Can the vapor pipe be reached at the tank?</source>
   <translation>¿Se puede llegar a la tubería de vapor en el tanque?</translation>
  </message>
  <message>
   <source>Capitals and double blanks do not count.</source>
   <translation>No cuentan mayúsculas ni espacios dobles.</translation>
  </message>
  <message>
   <source>Carry &amp;over what a year leaves</source>
   <translation>Pasar al año siguiente l&amp;o que sobre</translation>
  </message>
  <message>
   <source>Cars</source>
   <translation>Automóviles</translation>
  </message>
  <message>
   <source>Case</source>
   <translation>Caso</translation>
  </message>
  <message>
   <source>Cases</source>
   <translation>Ca&amp;sos</translation>
  </message>
  <message>
   <source>Cash</source>
   <translation>Efectivo</translation>
  </message>
  <message>
   <source>Catalog</source>
   <translation>Catálogo</translation>
  </message>
  <message>
   <source>Catalog data</source>
   <translation>Datos del catálogo</translation>
  </message>
  <message>
   <source>Catalog number</source>
   <translation>Catálogo</translation>
  </message>
  <message>
   <source>Catalog number of an installed part</source>
   <translation>Número de catálogo de una pieza instalada</translation>
  </message>
  <message>
   <source>Catalog or price lists have changed under open quotations: {0}{1}</source>
   <translation>El catálogo o las listas de precios cambiaron bajo cotizaciones abiertas: {0}{1}</translation>
  </message>
  <message>
   <source>Catalog parts found</source>
   <translation>Piezas del catálogo halladas</translation>
  </message>
  <message>
   <source>Catalogs</source>
   <translation>Catálogos</translation>
  </message>
  <message>
   <source>Catalogs and editions</source>
   <translation>Catálogos y ediciones</translation>
  </message>
  <message>
   <source>Caution sheet alone</source>
   <translation>Solo la hoja de advertencias</translation>
  </message>
  <message>
   <source>Cell</source>
   <translation>Celda</translation>
  </message>
  <message>
   <source>Chan&amp;ge</source>
   <translation>&amp;Cambiar</translation>
  </message>
  <message>
   <source>Change</source>
   <translation>Cambiar</translation>
  </message>
  <message>
   <source>Change &amp;many rows…</source>
   <translation>Cambiar &amp;muchas filas…</translation>
  </message>
  <message>
   <source>Change many rows</source>
   <translation>Cambiar muchas filas</translation>
  </message>
  <message>
   <source>Change the chosen row</source>
   <translation>Cambiar la fila elegida</translation>
  </message>
  <message>
   <source>Change the name of the position or its dispenser.</source>
   <translation>Cambiar el nombre de la posición o su surtidor.</translation>
  </message>
  <message>
   <source>Changed</source>
   <translation>Modificado</translation>
  </message>
  <message>
   <source>Changed in the book since they were chosen: dispenser type {0}. The survey stays as it is.</source>
   <translation>Cambiado en el libro desde que se eligió: tipo de surtidor {0}. El levantamiento queda como está.</translation>
  </message>
  <message>
   <source>Changed since.</source>
   <translation>Cambiado desde entonces.</translation>
  </message>
  <message>
   <source>Chart of the sets</source>
   <translation>Gráfico de los conjuntos</translation>
  </message>
  <message>
   <source>Check</source>
   <translation>Comprobación</translation>
  </message>
  <message>
   <source>Check again</source>
   <translation>Comprobar otra vez</translation>
  </message>
  <message>
   <source>Check the paper, then issue it: its papers are kept as they are sent.</source>
   <translation>Revise el documento y luego emítala: sus documentos se guardan tal como se envían.</translation>
  </message>
  <message>
   <source>Checking every stocked part…</source>
   <translation>Comprobando cada pieza en existencia…</translation>
  </message>
  <message>
   <source>Checks</source>
   <translation>Revisión</translation>
  </message>
  <message>
   <source>Checks with their worked lines</source>
   <translation>Comprobaciones con su cálculo</translation>
  </message>
  <message>
   <source>Choose &amp;a file…</source>
   <translation>Elegir &amp;un archivo…</translation>
  </message>
  <message>
   <source>Choose &amp;folder…</source>
   <translation>&amp;Elegir carpeta…</translation>
  </message>
  <message>
   <source>Choose a day</source>
   <translation>Elegir un día</translation>
  </message>
  <message>
   <source>Choose a file: nothing is changed before you take it over.</source>
   <translation>Elija un archivo: nada cambia antes de incorporarlo.</translation>
  </message>
  <message>
   <source>Choose a part without a catalog number; a number brings its own figures.</source>
   <translation>Elija una pieza sin número de catálogo; un número trae sus propias cifras.</translation>
  </message>
  <message>
   <source>Choose a step to go back to it, or forward to it again. The page behind follows at once.</source>
   <translation>Elija un paso para volver a él o avanzar de nuevo hasta él. La página de detrás lo sigue enseguida.</translation>
  </message>
  <message>
   <source>Choose a table</source>
   <translation>Elegir una tabla</translation>
  </message>
  <message>
   <source>Choose it for</source>
   <translation>Elegirlo para</translation>
  </message>
  <message>
   <source>Choose the column</source>
   <translation>Elegir la columna</translation>
  </message>
  <message>
   <source>Choose two different revisions.</source>
   <translation>Elija dos revisiones distintas.</translation>
  </message>
  <message>
   <source>Cl&amp;ause</source>
   <translation>Clá&amp;usula</translation>
  </message>
  <message>
   <source>Class limits: scopes of UL 2586A/B, 567A/B, 330A/B</source>
   <translation>Límites de las clases: alcances de UL 2586A/B, 567A/B, 330A/B</translation>
  </message>
  <message>
   <source>Climate</source>
   <translation>Clima</translation>
  </message>
  <message>
   <source>Climate band of the map</source>
   <translation>Franja climática del mapa</translation>
  </message>
  <message>
   <source>Close and &amp;lose the changes</source>
   <translation>Cerrar y &amp;perder los cambios</translation>
  </message>
  <message>
   <source>Close the count {0}</source>
   <translation>Cerrar el recuento {0}</translation>
  </message>
  <message>
   <source>Close the count…</source>
   <translation>Cerrar el recuento…</translation>
  </message>
  <message>
   <source>Co&amp;py report</source>
   <translation>Co&amp;piar informe</translation>
  </message>
  <message>
   <source>Coaxial, balance</source>
   <translation>Coaxial, equilibrio</translation>
  </message>
  <message>
   <source>Coaxial, vacuum assist</source>
   <translation>Coaxial, asistida por vacío</translation>
  </message>
  <message>
   <source>Code</source>
   <translation>Código</translation>
  </message>
  <message>
   <source>Col&amp;dest</source>
   <translation>M&amp;ínima</translation>
  </message>
  <message>
   <source>Column</source>
   <translation>Columna</translation>
  </message>
  <message>
   <source>Columns of the file</source>
   <translation>Columnas del archivo</translation>
  </message>
  <message>
   <source>Combinations asked</source>
   <translation>Combinaciones preguntadas</translation>
  </message>
  <message>
   <source>Comma ( , )</source>
   <translation>Coma ( , )</translation>
  </message>
  <message>
   <source>Comma (1,50)</source>
   <translation>Coma (1,50)</translation>
  </message>
  <message>
   <source>Command</source>
   <translation>Orden</translation>
  </message>
  <message>
   <source>Command, position, survey, quotation, part or help</source>
   <translation>Orden, posición, levantamiento, cotización, pieza o ayuda</translation>
  </message>
  <message>
   <source>Commands with their keys</source>
   <translation>Órdenes con sus teclas</translation>
  </message>
  <message>
   <source>Commissioning form to fill in</source>
   <translation>Hoja de puesta en servicio para rellenar</translation>
  </message>
  <message>
   <source>Compare agreement</source>
   <translation>Comparar el acuerdo</translation>
  </message>
  <message>
   <source>Compare {0}</source>
   <translation>Comparar {0}</translation>
  </message>
  <message>
   <source>Comparing…</source>
   <translation>Comparando…</translation>
  </message>
  <message>
   <source>Computed</source>
   <translation>Calculado</translation>
  </message>
  <message>
   <source>Con&amp;tact</source>
   <translation>Co&amp;ntacto</translation>
  </message>
  <message>
   <source>Condensate traps in the vapor pipes</source>
   <translation>Trampas de condensado en las tuberías de vapor</translation>
  </message>
  <message>
   <source>Condition</source>
   <translation>Estado</translation>
  </message>
  <message>
   <source>Condition of an installed part</source>
   <translation>Estado de una pieza instalada</translation>
  </message>
  <message>
   <source>Condition of the chosen part</source>
   <translation>Estado de la pieza elegida</translation>
  </message>
  <message>
   <source>Contact</source>
   <translation>Contacto</translation>
  </message>
  <message>
   <source>Content</source>
   <translation>Contenido</translation>
  </message>
  <message>
   <source>Conventional hardware</source>
   <translation>Equipo convencional</translation>
  </message>
  <message>
   <source>Conversion</source>
   <translation>Conversión</translation>
  </message>
  <message>
   <source>Conversion of the site</source>
   <translation>Conversión de la estación</translation>
  </message>
  <message>
   <source>Conversion: compare the ways, with what stays, goes and comes, their cost and their emissions.</source>
   <translation>Conversión: compare las vías, con lo que queda, se va y viene, su costo y sus emisiones.</translation>
  </message>
  <message>
   <source>Convert</source>
   <translation>Convertir</translation>
  </message>
  <message>
   <source>Convert a folder of surveys over all cores and rank the sites over years under a yearly budget.</source>
   <translation>Convertir una carpeta de levantamientos con todos los núcleos y ordenar las estaciones por años con un presupuesto anual.</translation>
  </message>
  <message>
   <source>Copied</source>
   <translation>Copiado</translation>
  </message>
  <message>
   <source>Copied from</source>
   <translation>Origen</translation>
  </message>
  <message>
   <source>Copied. From the next start on the book in {0} is used; what lies in the folder of today stays.</source>
   <translation>Copiado. Desde el próximo inicio se usa el libro de {0}; lo que hay en la carpeta de hoy se queda.</translation>
  </message>
  <message>
   <source>Copy answers of {0}</source>
   <translation>Copiar respuestas de {0}</translation>
  </message>
  <message>
   <source>Copy answers of {label}</source>
   <translation>Copiar respuestas de {label}</translation>
  </message>
  <message>
   <source>Copy t&amp;hese rules</source>
   <translation>C&amp;opiar estas reglas</translation>
  </message>
  <message>
   <source>Copy the chosen rows (Ctrl+Shift+D)</source>
   <translation>Copiar las filas elegidas (Ctrl+Shift+D)</translation>
  </message>
  <message>
   <source>Cost</source>
   <translation>Costo</translation>
  </message>
  <message>
   <source>Cost and margin by line and option: internal, never the customer's</source>
   <translation>Costo y margen por línea y opción: interno, nunca para el cliente</translation>
  </message>
  <message>
   <source>Cost of one piece</source>
   <translation>Costo de una pieza</translation>
  </message>
  <message>
   <source>Cost of the line</source>
   <translation>Costo de la línea</translation>
  </message>
  <message>
   <source>Cost, {0}</source>
   <translation>Costo, {0}</translation>
  </message>
  <message>
   <source>Count</source>
   <translation>Recuento</translation>
  </message>
  <message>
   <source>Counted</source>
   <translation>Contado</translation>
  </message>
  <message>
   <source>Counted as</source>
   <translation>Contado como</translation>
  </message>
  <message>
   <source>Counting the parts that come into question…</source>
   <translation>Contando las piezas posibles…</translation>
  </message>
  <message>
   <source>Counting what the catalog has for each place…</source>
   <translation>Contando lo que tiene el catálogo para cada lugar…</translation>
  </message>
  <message>
   <source>Counts for every position of the site.</source>
   <translation>Vale para cada posición de la estación.</translation>
  </message>
  <message>
   <source>Counts towards a grant</source>
   <translation>Cuenta para un subsidio</translation>
  </message>
  <message>
   <source>Coverage</source>
   <translation>Cobertura</translation>
  </message>
  <message>
   <source>Coverage map: combinations by outlet</source>
   <translation>Mapa de cobertura: combinaciones por salida</translation>
  </message>
  <message>
   <source>Crews side by side</source>
   <translation>Cuadrillas a la vez</translation>
  </message>
  <message>
   <source>Cu&amp;rrency</source>
   <translation>&amp;Moneda</translation>
  </message>
  <message>
   <source>Currency</source>
   <translation>Moneda</translation>
  </message>
  <message>
   <source>Currency and rounding</source>
   <translation>Moneda y redondeo</translation>
  </message>
  <message>
   <source>Currency of prices that name none</source>
   <translation>Moneda de los precios que no nombran ninguna</translation>
  </message>
  <message>
   <source>Currency of the cost</source>
   <translation>Moneda del costo</translation>
  </message>
  <message>
   <source>Currency of the list</source>
   <translation>Moneda de la lista</translation>
  </message>
  <message>
   <source>Currency of the price list</source>
   <translation>Moneda de la lista de precios</translation>
  </message>
  <message>
   <source>Currency: as the table says</source>
   <translation>Moneda: según la tabla</translation>
  </message>
  <message>
   <source>Customer</source>
   <translation>Cliente</translation>
  </message>
  <message>
   <source>Customer of the station</source>
   <translation>Cliente de la estación</translation>
  </message>
  <message>
   <source>Customer of this s&amp;tation</source>
   <translation>Cliente de esta es&amp;tación</translation>
  </message>
  <message>
   <source>Customer of this station.</source>
   <translation>Cliente de esta estación.</translation>
  </message>
  <message>
   <source>Customers</source>
   <translation>Clientes</translation>
  </message>
  <message>
   <source>Customers of the book</source>
   <translation>Clientes del libro</translation>
  </message>
  <message>
   <source>Customers, nobody on site</source>
   <translation>Clientes, sin personal</translation>
  </message>
  <message>
   <source>Cut to le&amp;ngth…</source>
   <translation>&amp;Cortar a medida…</translation>
  </message>
  <message>
   <source>D&amp;eadlines</source>
   <translation>Pla&amp;zos</translation>
  </message>
  <message>
   <source>DEF</source>
   <translation>DEF</translation>
  </message>
  <message>
   <source>DEF itself does not burn. Where its nozzle is used close to fuel, the nozzle has to be evaluated for that.</source>
   <translation>El DEF no arde. Donde su pistola se usa cerca de combustible, la pistola debe estar evaluada para ello.</translation>
  </message>
  <message>
   <source>Dark</source>
   <translation>Oscuro</translation>
  </message>
  <message>
   <source>Data folder</source>
   <translation>Carpeta de datos</translation>
  </message>
  <message>
   <source>Date</source>
   <translation>Fecha</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Día</translation>
  </message>
  <message>
   <source>Day of handing over</source>
   <translation>Día de entrega</translation>
  </message>
  <message>
   <source>Day of the price</source>
   <translation>Día del precio</translation>
  </message>
  <message>
   <source>Day of the quotation</source>
   <translation>Día de la cotización</translation>
  </message>
  <message>
   <source>Day on which to ask the customer again; the answer takes it away</source>
   <translation>Día en que hay que volver a preguntar al cliente; la respuesta lo quita</translation>
  </message>
  <message>
   <source>Days</source>
   <translation>Días</translation>
  </message>
  <message>
   <source>Days as</source>
   <translation>Días como</translation>
  </message>
  <message>
   <source>Days for which the offer stands, 1 to 730.</source>
   <translation>Días que vale la oferta, 1 a 730.</translation>
  </message>
  <message>
   <source>Days of noti&amp;ce</source>
   <translation>&amp;Días de aviso</translation>
  </message>
  <message>
   <source>Days overdue</source>
   <translation>Días de atraso</translation>
  </message>
  <message>
   <source>Days until the permission is expected</source>
   <translation>Días hasta el permiso esperado</translation>
  </message>
  <message>
   <source>De&amp;livery address</source>
   <translation>Dirección de en&amp;trega</translation>
  </message>
  <message>
   <source>Decides automatic shut-off and the hold-open latch.</source>
   <translation>Decide el corte automático y la traba.</translation>
  </message>
  <message>
   <source>Decides how the whip hose bends in a drive-off.</source>
   <translation>Decide cómo se dobla el latiguillo en un arranque con la manguera puesta.</translation>
  </message>
  <message>
   <source>Decides the throughput threshold in Europe.</source>
   <translation>Decide el umbral de ventas en Europa.</translation>
  </message>
  <message>
   <source>Decimal sign</source>
   <translation>Signo decimal</translation>
  </message>
  <message>
   <source>Declined. Requote it and keep it: revision {0} opens.</source>
   <translation>Rechazada. Vuelva a cotizarla y guárdela: se abre la revisión {0}.</translation>
  </message>
  <message>
   <source>Delivery address</source>
   <translation>Dirección de entrega</translation>
  </message>
  <message>
   <source>Departures</source>
   <translation>Desvíos</translation>
  </message>
  <message>
   <source>Derived from the answers and the local rules. Open a row for the rule and its source.</source>
   <translation>Derivado de las respuestas y de las reglas locales. Abra una fila para ver la regla y su fuente.</translation>
  </message>
  <message>
   <source>Describe an installed part</source>
   <translation>Describir una pieza instalada</translation>
  </message>
  <message>
   <source>Description</source>
   <translation>Descripción</translation>
  </message>
  <message>
   <source>Description of an installed part</source>
   <translation>Descripción de una pieza instalada</translation>
  </message>
  <message>
   <source>Diameter of the hose on the &amp;drum</source>
   <translation>Diámetro de la manguera en el &amp;tambor</translation>
  </message>
  <message>
   <source>Did you mean {0}?</source>
   <translation>¿Quiso decir {0}?</translation>
  </message>
  <message>
   <source>Diesel</source>
   <translation>Diésel</translation>
  </message>
  <message>
   <source>Difference</source>
   <translation>Diferencia</translation>
  </message>
  <message>
   <source>Difference, hoses both cover</source>
   <translation>Diferencia, mangueras comunes</translation>
  </message>
  <message>
   <source>Differs in</source>
   <translation>Se distingue por</translation>
  </message>
  <message>
   <source>Directive 2009/126/EC, EU summary</source>
   <translation>Directiva 2009/126/CE, resumen de la UE</translation>
  </message>
  <message>
   <source>Discard &amp;the draft…</source>
   <translation>Descar&amp;tar el borrador…</translation>
  </message>
  <message>
   <source>Discard the draft</source>
   <translation>Descartar el borrador</translation>
  </message>
  <message>
   <source>Discontinued from</source>
   <translation>Descatalogado desde</translation>
  </message>
  <message>
   <source>Discount group</source>
   <translation>Grupo de descuento</translation>
  </message>
  <message>
   <source>Discount groups</source>
   <translation>Grupos de descuento</translation>
  </message>
  <message>
   <source>Discount rate, percent a year</source>
   <translation>Tasa de descuento, por ciento al año</translation>
  </message>
  <message>
   <source>Discounts of makers</source>
   <translation>Descuentos de fabricantes</translation>
  </message>
  <message>
   <source>Dispenser</source>
   <translation>Surtidor</translation>
  </message>
  <message>
   <source>Dispenser &amp;types…</source>
   <translation>&amp;Tipos de surtidor…</translation>
  </message>
  <message>
   <source>Dispenser maker's data</source>
   <translation>Datos del fabricante del surtidor</translation>
  </message>
  <message>
   <source>Dispenser outlet</source>
   <translation>Salida del surtidor</translation>
  </message>
  <message>
   <source>Dispenser type</source>
   <translation>Tipo de surtidor</translation>
  </message>
  <message>
   <source>Dispenser types</source>
   <translation>Tipos de surtidor</translation>
  </message>
  <message>
   <source>Dispenser types of the book</source>
   <translation>Tipos de surtidor del libro</translation>
  </message>
  <message>
   <source>Dispenser {0}</source>
   <translation>Surtidor {0}</translation>
  </message>
  <message>
   <source>Dispenser's plate</source>
   <translation>Placa del surtidor</translation>
  </message>
  <message>
   <source>Dispensers and positions</source>
   <translation>Surtidores y posiciones</translation>
  </message>
  <message>
   <source>Dispensers in a row where no island is named</source>
   <translation>Surtidores en fila donde no se nombra isla</translation>
  </message>
  <message>
   <source>Do &amp;without the demonstration in this book</source>
   <translation>P&amp;rescindir de la demostración en este libro</translation>
  </message>
  <message>
   <source>Do not work out what the change means in money</source>
   <translation>No calcular lo que el cambio significa en dinero</translation>
  </message>
  <message>
   <source>Do superseded parts go?</source>
   <translation>¿Salen las piezas sustituidas?</translation>
  </message>
  <message>
   <source>Do the tanks lie underground?</source>
   <translation>¿Son subterráneos los tanques?</translation>
  </message>
  <message>
   <source>Do this</source>
   <translation>Haga esto</translation>
  </message>
  <message>
   <source>Does a separ&amp;ate vapor return pipe end beside the outlet?</source>
   <translation>¿Termina junto a la salida un &amp;tubo aparte de retorno de vapor?</translation>
  </message>
  <message>
   <source>Does each grade have a vapor pipe of its own?</source>
   <translation>¿Tiene cada producto su propia tubería de vapor?</translation>
  </message>
  <message>
   <source>Does it stand under living or working &amp;quarters?</source>
   <translation>¿Está bajo viviendas o lugares de trabajo?</translation>
  </message>
  <message>
   <source>Does not fit: {reason}</source>
   <translation>No sirve: {reason}</translation>
  </message>
  <message>
   <source>Does one central unit make the vacuum?</source>
   <translation>¿Hace el vacío una unidad central?</translation>
  </message>
  <message>
   <source>Does the hose come down from ove&amp;rhead?</source>
   <translation>¿La manguera baja desde arri&amp;ba?</translation>
  </message>
  <message>
   <source>Does the position e&amp;xist today?</source>
   <translation>¿La posición e&amp;xiste hoy?</translation>
  </message>
  <message>
   <source>Does the vacuum assist stop at vehicles with onboard recovery?</source>
   <translation>¿Se detiene la aspiración con vehículos de recuperación a bordo?</translation>
  </message>
  <message>
   <source>Does wor&amp;k go on at weekends?</source>
   <translation>¿Se trabaja los fines de semana?</translation>
  </message>
  <message>
   <source>Down</source>
   <translation>Abajo</translation>
  </message>
  <message>
   <source>Downwards</source>
   <translation>Hacia abajo</translation>
  </message>
  <message>
   <source>Draft</source>
   <translation>Borrador</translation>
  </message>
  <message>
   <source>Drawing</source>
   <translation>Dibujo</translation>
  </message>
  <message>
   <source>Drawing &amp;larger</source>
   <translation>Dibujo más &amp;grande</translation>
  </message>
  <message>
   <source>Drawing &amp;smaller</source>
   <translation>Dibujo más &amp;pequeño</translation>
  </message>
  <message>
   <source>Drawing larger</source>
   <translation>Dibujo más grande</translation>
  </message>
  <message>
   <source>Drawing of the position</source>
   <translation>Dibujo de la posición</translation>
  </message>
  <message>
   <source>Drawing or flow chart</source>
   <translation>Dibujo o gráfico de caudal</translation>
  </message>
  <message>
   <source>Drawing smaller</source>
   <translation>Dibujo más pequeño</translation>
  </message>
  <message>
   <source>Drive-offs</source>
   <translation>Arranques con manguera</translation>
  </message>
  <message>
   <source>Drive-offs expected, all years</source>
   <translation>Arranques con manguera esperados, todos los años</translation>
  </message>
  <message>
   <source>Due</source>
   <translation>Vence</translation>
  </message>
  <message>
   <source>Duplicate</source>
   <translation>Duplicar</translation>
  </message>
  <message>
   <source>Duplicate chosen rows</source>
   <translation>Duplicar filas</translation>
  </message>
  <message>
   <source>Duplicate {0}</source>
   <translation>Duplicar {0}</translation>
  </message>
  <message>
   <source>Duty</source>
   <translation>Uso</translation>
  </message>
  <message>
   <source>Duty and take-up</source>
   <translation>Uso y recogida</translation>
  </message>
  <message>
   <source>Duty, latch, prepay, overhead</source>
   <translation>Servicio, traba, prepago, salida en alto</translation>
  </message>
  <message>
   <source>E&amp;dit…</source>
   <translation>E&amp;ditar…</translation>
  </message>
  <message>
   <source>E&amp;ffect</source>
   <translation>E&amp;fecto</translation>
  </message>
  <message>
   <source>E&amp;xclude it</source>
   <translation>E&amp;xcluirla</translation>
  </message>
  <message>
   <source>E&amp;xclude this part</source>
   <translation>E&amp;xcluir esta pieza</translation>
  </message>
  <message>
   <source>E&amp;xport as a table…</source>
   <translation>E&amp;xportar como tabla…</translation>
  </message>
  <message>
   <source>E&amp;xport…</source>
   <translation>E&amp;xportar…</translation>
  </message>
  <message>
   <source>E-mail</source>
   <translation>Correo electrónico</translation>
  </message>
  <message>
   <source>EPA's public model</source>
   <translation>Modelo público de la EPA</translation>
  </message>
  <message>
   <source>EPA-457/B-12-001 and state rules; local air agency</source>
   <translation>EPA-457/B-12-001 y reglas estatales; agencia local del aire</translation>
  </message>
  <message>
   <source>Each differs in kind from the set in hand. Taking one keeps its parts; undo brings back the cheapest.</source>
   <translation>Cada uno difiere en algo del conjunto actual. Tomar uno conserva sus piezas; deshacer devuelve el más barato.</translation>
  </message>
  <message>
   <source>Each is judged again.</source>
   <translation>Cada una se juzga de nuevo.</translation>
  </message>
  <message>
   <source>Each kind once.</source>
   <translation>Cada tipo una vez.</translation>
  </message>
  <message>
   <source>Each once.</source>
   <translation>Cada uno una vez.</translation>
  </message>
  <message>
   <source>Each option is planned and priced by itself.</source>
   <translation>Cada opción se planifica y se valora por separado.</translation>
  </message>
  <message>
   <source>Each row names its own source: see Local rules</source>
   <translation>Cada fila nombra su fuente: vea Reglas locales</translation>
  </message>
  <message>
   <source>Each tax lies on the amounts ticked.</source>
   <translation>Cada impuesto grava los importes marcados.</translation>
  </message>
  <message>
   <source>Each was opened and read through when it was made. Kept: seven days, four weeks, those before changes, and those that were asked for.</source>
   <translation>Cada uno se abrió y se leyó entero al hacerlo. Se guardan: siete días, cuatro semanas, los anteriores a cambios y los que se pidieron.</translation>
  </message>
  <message>
   <source>Each way keeps every must.</source>
   <translation>Cada camino respeta todo lo exigido.</translation>
  </message>
  <message>
   <source>Each works at a dispenser of its own.</source>
   <translation>Cada una trabaja en su propio surtidor.</translation>
  </message>
  <message>
   <source>Each year once.</source>
   <translation>Cada año una vez.</translation>
  </message>
  <message>
   <source>Edition</source>
   <translation>Edición</translation>
  </message>
  <message>
   <source>Edition {0} of {1} by {2}: {3}.</source>
   <translation>Edición {0} del {1} por {2}: {3}.</translation>
  </message>
  <message>
   <source>Edition: {0}.</source>
   <translation>Edición: {0}.</translation>
  </message>
  <message>
   <source>Effect</source>
   <translation>Efecto</translation>
  </message>
  <message>
   <source>Effect &amp;on this station</source>
   <translation>Efecto en es&amp;ta estación</translation>
  </message>
  <message>
   <source>Efficiency at the no&amp;zzle in use</source>
   <translation>Eficiencia en la pistola en servicio</translation>
  </message>
  <message>
   <source>Either way the other stays open to you: stations under Survey, catalogs under Go.</source>
   <translation>Lo otro queda abierto: estaciones en el menú Levantamiento, catálogos en el menú Ir.</translation>
  </message>
  <message>
   <source>Emissions</source>
   <translation>Emisiones</translation>
  </message>
  <message>
   <source>Empty takes the agency's figure.</source>
   <translation>Vacío: la cifra de la agencia.</translation>
  </message>
  <message>
   <source>Empty: the price follows.</source>
   <translation>Vacío: precio pendiente.</translation>
  </message>
  <message>
   <source>Encoding</source>
   <translation>Codificación</translation>
  </message>
  <message>
   <source>Encoding of a text file</source>
   <translation>Codificación de un archivo de texto</translation>
  </message>
  <message>
   <source>Encoding: as found</source>
   <translation>Codificación: la hallada</translation>
  </message>
  <message>
   <source>End that no other part joins</source>
   <translation>Extremo al que no se une otra pieza</translation>
  </message>
  <message>
   <source>Enlarge the drawing.</source>
   <translation>Agrandar el dibujo.</translation>
  </message>
  <message>
   <source>Entries</source>
   <translation>Entradas</translation>
  </message>
  <message>
   <source>Entries of this name belong to one job; what it took already is left out.</source>
   <translation>Los apuntes de este nombre son de un trabajo; lo que ya tomó no se vuelve a tomar.</translation>
  </message>
  <message>
   <source>Entry</source>
   <translation>Entrada</translation>
  </message>
  <message>
   <source>Entry no. {0} counts no more.</source>
   <translation>El apunte n.º {0} ya no cuenta.</translation>
  </message>
  <message>
   <source>Equipment list of the station</source>
   <translation>Lista de equipos de la estación</translation>
  </message>
  <message>
   <source>Every answer may stay open; the report says what it lacks. The agency decides.</source>
   <translation>Cada respuesta puede quedar abierta; el informe dice qué le falta. Decide la agencia.</translation>
  </message>
  <message>
   <source>Every change of this survey since it was opened; go back to any of them, and forward again.</source>
   <translation>Cada cambio de este levantamiento desde que se abrió; volver a cualquiera y avanzar de nuevo.</translation>
  </message>
  <message>
   <source>Every combination is asked as a plan asks it.</source>
   <translation>Cada combinación se pregunta como la pregunta un plan.</translation>
  </message>
  <message>
   <source>Every obstacle with its numbers, and every way out with its set and price.</source>
   <translation>Cada obstáculo con sus cifras, y cada salida con su conjunto y precio.</translation>
  </message>
  <message>
   <source>Every part is held against the questions that stations can ask.</source>
   <translation>Cada pieza se coteja con las preguntas que pueden hacer las estaciones.</translation>
  </message>
  <message>
   <source>Every part new</source>
   <translation>Cada pieza nueva</translation>
  </message>
  <message>
   <source>Every part whose field Family says the name has these figures, unless it has one of its own.</source>
   <translation>Cada pieza cuyo campo Familia lleva el nombre tiene estos datos, salvo que tenga uno propio.</translation>
  </message>
  <message>
   <source>Every position of the dispenser is repeated, without the parts decided on and without notes.</source>
   <translation>Se repite cada posición del surtidor, sin las piezas decididas y sin notas.</translation>
  </message>
  <message>
   <source>Every position of the same liquid and blend</source>
   <translation>Cada posición con el mismo líquido y la misma mezcla</translation>
  </message>
  <message>
   <source>Every row left out where {where} shows “{shows}”</source>
   <translation>Omitida toda fila donde {where} muestra “{shows}”</translation>
  </message>
  <message>
   <source>Every set shown is one that no other outdoes on the axes chosen. Taking one asks for its parts.</source>
   <translation>Cada conjunto mostrado es uno que ningún otro supera en los ejes elegidos. Tomar uno pide sus piezas.</translation>
  </message>
  <message>
   <source>Every set that no other outdoes in price, lead time, flow and more.</source>
   <translation>Cada conjunto que ningún otro supera en precio, plazo, caudal y más.</translation>
  </message>
  <message>
   <source>Every step of a quotation comes here once it is saved in the book.</source>
   <translation>Cada paso de una cotización aparece aquí cuando se guarda en el libro.</translation>
  </message>
  <message>
   <source>Exceptions</source>
   <translation>Excepciones</translation>
  </message>
  <message>
   <source>Exchange rates</source>
   <translation>Tipos de cambio</translation>
  </message>
  <message>
   <source>Exclude the marked part</source>
   <translation>Excluir la pieza marcada</translation>
  </message>
  <message>
   <source>Exclude {part}</source>
   <translation>Excluir {part}</translation>
  </message>
  <message>
   <source>Existing</source>
   <translation>Existente</translation>
  </message>
  <message>
   <source>Export</source>
   <translation>Exportar</translation>
  </message>
  <message>
   <source>Export as a table</source>
   <translation>Exportar como tabla</translation>
  </message>
  <message>
   <source>Fa&amp;milies…</source>
   <translation>Fa&amp;milias…</translation>
  </message>
  <message>
   <source>Families</source>
   <translation>Familias</translation>
  </message>
  <message>
   <source>Families of parts in {0}</source>
   <translation>Familias de piezas de {0}</translation>
  </message>
  <message>
   <source>Family</source>
   <translation>Familia</translation>
  </message>
  <message>
   <source>Faults and questions</source>
   <translation>Errores y preguntas</translation>
  </message>
  <message>
   <source>Faults and questions ({0})</source>
   <translation>Errores y preguntas ({0})</translation>
  </message>
  <message>
   <source>Feet, gallons, pounds-force, psi.</source>
   <translation>Pies, galones, libras-fuerza, psi.</translation>
  </message>
  <message>
   <source>Female</source>
   <translation>Hembra</translation>
  </message>
  <message>
   <source>Fewest departures</source>
   <translation>Menos desviaciones</translation>
  </message>
  <message>
   <source>Fi&amp;les…</source>
   <translation>Archiv&amp;os…</translation>
  </message>
  <message>
   <source>Fi&amp;nd</source>
   <translation>&amp;Buscar</translation>
  </message>
  <message>
   <source>Fi&amp;rst year</source>
   <translation>Pri&amp;mer año</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Campo</translation>
  </message>
  <message>
   <source>Fields that could not be read, to be filled in here: {0}</source>
   <translation>Campos que no se pudieron leer y que hay que rellenar aquí: {0}</translation>
  </message>
  <message>
   <source>Figures in texts</source>
   <translation>Datos en textos</translation>
  </message>
  <message>
   <source>Figures in texts ({0})</source>
   <translation>Datos en textos ({0})</translation>
  </message>
  <message>
   <source>Figures of &amp;a similar part…</source>
   <translation>Datos de &amp;una pieza similar…</translation>
  </message>
  <message>
   <source>Figures of a described part</source>
   <translation>Cifras de una pieza descrita</translation>
  </message>
  <message>
   <source>Figures of a similar part</source>
   <translation>Datos de una pieza similar</translation>
  </message>
  <message>
   <source>Figures of an installed part</source>
   <translation>Cifras de una pieza instalada</translation>
  </message>
  <message>
   <source>Figures of its parts</source>
   <translation>Datos de sus piezas</translation>
  </message>
  <message>
   <source>Figures that are wrong</source>
   <translation>Datos erróneos</translation>
  </message>
  <message>
   <source>Files of the part</source>
   <translation>Archivos de la pieza</translation>
  </message>
  <message>
   <source>Fill down</source>
   <translation>Rellenar abajo</translation>
  </message>
  <message>
   <source>Fill the form from a terms file (Ctrl+O)</source>
   <translation>Rellenar con un archivo de condiciones (Ctrl+O)</translation>
  </message>
  <message>
   <source>Filler</source>
   <translation>Boca</translation>
  </message>
  <message>
   <source>Filler distance</source>
   <translation>Distancia boca</translation>
  </message>
  <message>
   <source>Filler height</source>
   <translation>Altura de la boca de llenado</translation>
  </message>
  <message>
   <source>Finding</source>
   <translation>Hallazgo</translation>
  </message>
  <message>
   <source>Findings</source>
   <translation>Hallazgos</translation>
  </message>
  <message>
   <source>Findings about this part</source>
   <translation>Hallazgos sobre esta pieza</translation>
  </message>
  <message>
   <source>Findings by weight</source>
   <translation>Hallazgos por peso</translation>
  </message>
  <message>
   <source>Fingerprint of the survey</source>
   <translation>Huella del levantamiento</translation>
  </message>
  <message>
   <source>First &amp;day of the plan</source>
   <translation>Primer d&amp;ía del plan</translation>
  </message>
  <message>
   <source>First day</source>
   <translation>Primer día</translation>
  </message>
  <message>
   <source>First day of the price list</source>
   <translation>Primer día de la lista de precios</translation>
  </message>
  <message>
   <source>Fittings and work, once</source>
   <translation>Accesorios y trabajo, una vez</translation>
  </message>
  <message>
   <source>Flow</source>
   <translation>Caudal</translation>
  </message>
  <message>
   <source>Flow against pressure</source>
   <translation>Caudal frente a presión</translation>
  </message>
  <message>
   <source>Flow wanted at the no&amp;zzle</source>
   <translation>Caudal de&amp;seado en la pistola</translation>
  </message>
  <message>
   <source>Folder for surveys, quotations, catalogs and rules</source>
   <translation>Carpeta para levantamientos, cotizaciones, catálogos y reglas</translation>
  </message>
  <message>
   <source>Folder for the orders of all suppliers</source>
   <translation>Carpeta para los pedidos de todos los proveedores</translation>
  </message>
  <message>
   <source>Folder of survey files</source>
   <translation>Carpeta de archivos de levantamiento</translation>
  </message>
  <message>
   <source>Follow up</source>
   <translation>Seguimiento</translation>
  </message>
  <message>
   <source>For</source>
   <translation>Para</translation>
  </message>
  <message>
   <source>For a bank or an agency, in place of the report: what hangs, what comes, when, at what cost.</source>
   <translation>Para un banco o una agencia, en lugar del informe: qué hay colgado, qué entra, cuándo y a qué costo.</translation>
  </message>
  <message>
   <source>For a distributor</source>
   <translation>Para distribuidores</translation>
  </message>
  <message>
   <source>For a part without a catalog number.</source>
   <translation>Para una pieza sin número de catálogo.</translation>
  </message>
  <message>
   <source>For a station owner</source>
   <translation>Para dueños de estaciones</translation>
  </message>
  <message>
   <source>For an installer</source>
   <translation>Para instaladores</translation>
  </message>
  <message>
   <source>For everybody</source>
   <translation>Para todos</translation>
  </message>
  <message>
   <source>For price lists in another currency: one unit of theirs in units of the quotation's.</source>
   <translation>Para listas de precios en otra moneda: una unidad de la suya en unidades de la cotización.</translation>
  </message>
  <message>
   <source>For quantities and masses.</source>
   <translation>Para cantidades y masas.</translation>
  </message>
  <message>
   <source>Forecourt from above</source>
   <translation>Estación vista desde arriba</translation>
  </message>
  <message>
   <source>Forecourt from above.</source>
   <translation>Estación vista desde arriba.</translation>
  </message>
  <message>
   <source>Free text</source>
   <translation>Texto libre</translation>
  </message>
  <message>
   <source>Freight and taxes</source>
   <translation>Flete e impuestos</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Desde</translation>
  </message>
  <message>
   <source>From a &amp;file…</source>
   <translation>De un &amp;archivo…</translation>
  </message>
  <message>
   <source>From a dock or slip</source>
   <translation>Desde un muelle</translation>
  </message>
  <message>
   <source>From center line to center line of the hose.</source>
   <translation>De eje a eje de la manguera.</translation>
  </message>
  <message>
   <source>From dispenser type {0}</source>
   <translation>Del tipo de surtidor {0}</translation>
  </message>
  <message>
   <source>From memory</source>
   <translation>De memoria</translation>
  </message>
  <message>
   <source>From quantity</source>
   <translation>Desde cantidad</translation>
  </message>
  <message>
   <source>From the dispenser's maker. It must outlast the breakaway.</source>
   <translation>Del fabricante del surtidor. Debe resistir más que la válvula de ruptura.</translation>
  </message>
  <message>
   <source>From the next start on the book in {0} is used; it was there already.</source>
   <translation>Desde el próximo inicio se usa el libro de {0}; ya estaba allí.</translation>
  </message>
  <message>
   <source>Fuel oil</source>
   <translation>Fuelóleo</translation>
  </message>
  <message>
   <source>Fueling</source>
   <translation>Carga de combustible</translation>
  </message>
  <message>
   <source>Full renewal</source>
   <translation>Renovación total</translation>
  </message>
  <message>
   <source>Further costs</source>
   <translation>Otros costos</translation>
  </message>
  <message>
   <source>Further filler {0}</source>
   <translation>Otra boca {0}</translation>
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
   <translation>Gasolina</translation>
  </message>
  <message>
   <source>Gasoline sold in a &amp;year</source>
   <translation>&amp;Gasolina vendida al año</translation>
  </message>
  <message>
   <source>Gauge on site, or the pump maker's data</source>
   <translation>Manómetro en el sitio, o datos del fabricante de la bomba</translation>
  </message>
  <message>
   <source>Gen&amp;der</source>
   <translation>Géner&amp;o</translation>
  </message>
  <message>
   <source>Georgia page</source>
   <translation>Página de Georgia</translation>
  </message>
  <message>
   <source>Give other positions some of the answers of this one.</source>
   <translation>Dar a otras posiciones algunas respuestas de esta.</translation>
  </message>
  <message>
   <source>Gives up</source>
   <translation>Renuncia a</translation>
  </message>
  <message>
   <source>Gives up: {lines}</source>
   <translation>Renuncia a: {lines}</translation>
  </message>
  <message>
   <source>Go to the position above.</source>
   <translation>Ir a la posición de arriba.</translation>
  </message>
  <message>
   <source>Go to the position below.</source>
   <translation>Ir a la posición de abajo.</translation>
  </message>
  <message>
   <source>Go to the step after.</source>
   <translation>Ir al paso siguiente.</translation>
  </message>
  <message>
   <source>Go to the step before.</source>
   <translation>Ir al paso anterior.</translation>
  </message>
  <message>
   <source>Good practice</source>
   <translation>Buena práctica</translation>
  </message>
  <message>
   <source>Grade</source>
   <translation>Producto</translation>
  </message>
  <message>
   <source>Grant that was promised</source>
   <translation>Subsidio prometido</translation>
  </message>
  <message>
   <source>Greatest &amp;flow of the dispenser</source>
   <translation>Caudal má&amp;ximo del surtidor</translation>
  </message>
  <message>
   <source>Greatest share of a grade out of service</source>
   <translation>Mayor parte de un producto fuera de servicio</translation>
  </message>
  <message>
   <source>HTML page, for screen readers</source>
   <translation>Página HTML, para lectores de pantalla</translation>
  </message>
  <message>
   <source>Ha&amp;ng this one</source>
   <translation>&amp;Colgar esta</translation>
  </message>
  <message>
   <source>Hand to &amp;mail…</source>
   <translation>Pasar al correo…</translation>
  </message>
  <message>
   <source>Hand to mail</source>
   <translation>Pasar al correo</translation>
  </message>
  <message>
   <source>Hang {part}</source>
   <translation>Colgar {part}</translation>
  </message>
  <message>
   <source>Head of the bill.</source>
   <translation>Encabezado de la lista.</translation>
  </message>
  <message>
   <source>Heading</source>
   <translation>Título</translation>
  </message>
  <message>
   <source>Health</source>
   <translation>E&amp;stado</translation>
  </message>
  <message>
   <source>Heigh&amp;t from which the cord pulls</source>
   <translation>Altura desde la que tira el ca&amp;ble</translation>
  </message>
  <message>
   <source>Help</source>
   <translation>Ayuda</translation>
  </message>
  <message>
   <source>Here the options of the quotation come to stand side by side: what each covers, costs and takes.</source>
   <translation>Aquí quedarán las opciones de la cotización lado a lado: qué cubre, cuesta y requiere cada una.</translation>
  </message>
  <message>
   <source>High contrast</source>
   <translation>Alto contraste</translation>
  </message>
  <message>
   <source>Highest temperature, sun on the hose included.</source>
   <translation>Temperatura máxima, con sol sobre la manguera.</translation>
  </message>
  <message>
   <source>Ho&amp;ttest</source>
   <translation>Má&amp;xima</translation>
  </message>
  <message>
   <source>Hold the last share</source>
   <translation>Mantener la última parte</translation>
  </message>
  <message>
   <source>Hold-open wanted</source>
   <translation>Traba deseada</translation>
  </message>
  <message>
   <source>Hoo&amp;k height</source>
   <translation>Altura del sopo&amp;rte</translation>
  </message>
  <message>
   <source>Hook distance</source>
   <translation>Distancia soporte</translation>
  </message>
  <message>
   <source>Hook height</source>
   <translation>Altura soporte</translation>
  </message>
  <message>
   <source>Horizontal distance from the outlet to the nozzle at rest.</source>
   <translation>Distancia horizontal de la salida a la pistola en reposo.</translation>
  </message>
  <message>
   <source>Horizontal distance from the point below the outlet.</source>
   <translation>Distancia horizontal desde el punto bajo la salida.</translation>
  </message>
  <message>
   <source>Hose</source>
   <translation>Manguera</translation>
  </message>
  <message>
   <source>Hose cut to length</source>
   <translation>Manguera cortada a medida</translation>
  </message>
  <message>
   <source>Hose on the drum is curved and costs flow; it is counted.</source>
   <translation>La manguera en el tambor va curvada y cuesta caudal; se cuenta.</translation>
  </message>
  <message>
   <source>Hose reel</source>
   <translation>Carrete de manguera</translation>
  </message>
  <message>
   <source>Hose take-up</source>
   <translation>Recogida de manguera</translation>
  </message>
  <message>
   <source>Hoses</source>
   <translation>Mangueras</translation>
  </message>
  <message>
   <source>Hours</source>
   <translation>Horas</translation>
  </message>
  <message>
   <source>Hours count once for each position, dispenser or site; kinds limit a task to sets that hold one.</source>
   <translation>Las horas cuentan una vez por posición, surtidor o estación; los tipos limitan una tarea a conjuntos que llevan uno.</translation>
  </message>
  <message>
   <source>Hours with a &amp;reconnectable breakaway</source>
   <translation>Horas con una válvula de ruptura &amp;reconectable</translation>
  </message>
  <message>
   <source>How do you want to begin?</source>
   <translation>¿Cómo quiere comenzar?</translation>
  </message>
  <message>
   <source>How each of three people works here.</source>
   <translation>Cómo trabaja aquí cada una de tres personas.</translation>
  </message>
  <message>
   <source>How far the change in money is worked out</source>
   <translation>Hasta dónde está calculado el cambio en dinero</translation>
  </message>
  <message>
   <source>How far the quotation is</source>
   <translation>En qué punto está la cotización</translation>
  </message>
  <message>
   <source>How far the step is</source>
   <translation>Cuánto avanzó el paso</translation>
  </message>
  <message>
   <source>How is the hose taken &amp;up after use?</source>
   <translation>¿Cómo se &amp;recoge la manguera después de usarla?</translation>
  </message>
  <message>
   <source>How is vapor recovered &amp;today?</source>
   <translation>¿Cómo se recupera el vapor &amp;hoy?</translation>
  </message>
  <message>
   <source>How is vapor to be recovered in f&amp;uture?</source>
   <translation>¿Cómo se recuperará el vapor en el &amp;futuro?</translation>
  </message>
  <message>
   <source>How many joints one container seals; empty: one container for each set.</source>
   <translation>Cuántas uniones sella un envase; vacío: un envase por conjunto.</translation>
  </message>
  <message>
   <source>How much &amp;blend is in it?</source>
   <translation>¿Cuánta &amp;mezcla contiene?</translation>
  </message>
  <message>
   <source>How sure?</source>
   <translation>¿Qué tan seguro?</translation>
  </message>
  <message>
   <source>How the customer's prices are made.</source>
   <translation>Cómo se forman los precios del cliente.</translation>
  </message>
  <message>
   <source>I&amp;mport a table…</source>
   <translation>I&amp;mportar una tabla…</translation>
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
   <translation>Importar tipos de surtidor</translation>
  </message>
  <message>
   <source>Import old numbers</source>
   <translation>Importar números antiguos</translation>
  </message>
  <message>
   <source>In a row where no island is named:</source>
   <translation>En fila sin isla:</translation>
  </message>
  <message>
   <source>In detail</source>
   <translation>En detalle</translation>
  </message>
  <message>
   <source>In flammable zone</source>
   <translation>Zona inflamable</translation>
  </message>
  <message>
   <source>In hand: {catalog}, {edition}</source>
   <translation>En curso: {catalog}, {edition}</translation>
  </message>
  <message>
   <source>In no year</source>
   <translation>En ningún año</translation>
  </message>
  <message>
   <source>In the currency of the quotation.</source>
   <translation>En la moneda de la cotización.</translation>
  </message>
  <message>
   <source>In the currency of the site.</source>
   <translation>En la moneda de la estación.</translation>
  </message>
  <message>
   <source>In the file: {0}</source>
   <translation>En el archivo: {0}</translation>
  </message>
  <message>
   <source>In the order entered</source>
   <translation>En el orden de entrada</translation>
  </message>
  <message>
   <source>Inspections due</source>
   <translation>Inspecciones que vencen</translation>
  </message>
  <message>
   <source>Inspections fall due from the day of handing over on; give it above.</source>
   <translation>Las inspecciones vencen desde el día de la entrega; indíquelo arriba.</translation>
  </message>
  <message>
   <source>Install</source>
   <translation>Instalar</translation>
  </message>
  <message>
   <source>Installed</source>
   <translation>Instalado</translation>
  </message>
  <message>
   <source>Installed (part number)</source>
   <translation>Instalado (n.º de pieza)</translation>
  </message>
  <message>
   <source>Installed parts</source>
   <translation>Piezas instaladas</translation>
  </message>
  <message>
   <source>Installer's pack</source>
   <translation>Carpeta del instalador</translation>
  </message>
  <message>
   <source>Installer's work</source>
   <translation>Trabajo del instalador</translation>
  </message>
  <message>
   <source>Installer's work: a loading list, a sheet for each position, and the caution sheet to sign.</source>
   <translation>Trabajo del instalador: una lista de carga, una hoja por posición y la hoja de precauciones para firmar.</translation>
  </message>
  <message>
   <source>Instruments used (type, number)</source>
   <translation>Instrumentos usados (tipo, número)</translation>
  </message>
  <message>
   <source>International Fire Code, overhead dispensers (recalled; confirm in the adopted edition)</source>
   <translation>International Fire Code, surtidores elevados (de memoria; confirme en la edición adoptada)</translation>
  </message>
  <message>
   <source>Is a hold-open l&amp;atch wanted?</source>
   <translation>¿Se quiere &amp;traba de retención?</translation>
  </message>
  <message>
   <source>Is a re&amp;connectable breakaway wanted?</source>
   <translation>¿Se quiere una válvula de ruptura reco&amp;nectable?</translation>
  </message>
  <message>
   <source>Is it a &amp;fenced above-ground site, closed to the public?</source>
   <translation>¿Es un lugar cercado con tanques &amp;sobre el suelo, cerrado al público?</translation>
  </message>
  <message>
   <source>Is the DEF nozzle used inside the flammable &amp;zone of a fuel dispenser?</source>
   <translation>¿La pistola de DEF se usa dentro de la &amp;zona inflamable de un surtidor de combustible?</translation>
  </message>
  <message>
   <source>Is the vapor pipe the only link between the tanks?</source>
   <translation>¿Es la tubería de vapor el único enlace entre los tanques?</translation>
  </message>
  <message>
   <source>Island</source>
   <translation>Isla</translation>
  </message>
  <message>
   <source>Island of the dispenser</source>
   <translation>Isla del surtidor</translation>
  </message>
  <message>
   <source>Island {0}</source>
   <translation>Isla {0}</translation>
  </message>
  <message>
   <source>Islands of the new dispensers</source>
   <translation>Islas de los surtidores nuevos</translation>
  </message>
  <message>
   <source>Islands that keep recovery</source>
   <translation>Islas que conservan la recuperación</translation>
  </message>
  <message>
   <source>Iss&amp;ue</source>
   <translation>E&amp;mitir</translation>
  </message>
  <message>
   <source>Issue although hoses are left out</source>
   <translation>Emitir aunque falten mangueras</translation>
  </message>
  <message>
   <source>Issue although the margin is low</source>
   <translation>Emitir aunque el margen es bajo</translation>
  </message>
  <message>
   <source>It begins with terms: whose offer it is, prices, labor, charges, days.</source>
   <translation>Empieza con las condiciones: de quién es la oferta, precios, mano de obra, cargos, días.</translation>
  </message>
  <message>
   <source>It can be put together again after it separated, where its maker says so.</source>
   <translation>Se puede volver a unir después de separarse, donde su fabricante lo dice.</translation>
  </message>
  <message>
   <source>It ends in 2020. Own shares, further down, go before it.</source>
   <translation>Termina en 2020. Las partes propias, más abajo, van primero.</translation>
  </message>
  <message>
   <source>It expired after {0}. Requote it and keep it: revision {1} opens.</source>
   <translation>Venció después del {0}. Vuelva a cotizarla y guárdela: se abre la revisión {1}.</translation>
  </message>
  <message>
   <source>It hangs</source>
   <translation>Cuelga</translation>
  </message>
  <message>
   <source>It is</source>
   <translation>Es</translation>
  </message>
  <message>
   <source>It is larger than many mail services take.</source>
   <translation>Es mayor de lo que aceptan muchos servicios de correo.</translation>
  </message>
  <message>
   <source>It is valid through {0}. Note the customer's answer, or requote it.</source>
   <translation>Es válida hasta el {0}. Anote la respuesta del cliente, o vuelva a cotizarla.</translation>
  </message>
  <message>
   <source>Item number</source>
   <translation>Número de artículo</translation>
  </message>
  <message>
   <source>Its figures</source>
   <translation>Sus datos</translation>
  </message>
  <message>
   <source>Its maker</source>
   <translation>Su fabricante</translation>
  </message>
  <message>
   <source>Its number.</source>
   <translation>Su número.</translation>
  </message>
  <message>
   <source>Its number; a part of the same kind.</source>
   <translation>Su número; una pieza de la misma clase.</translation>
  </message>
  <message>
   <source>Job</source>
   <translation>Trabajo</translation>
  </message>
  <message>
   <source>Judged with the diesel family</source>
   <translation>Se juzga con la familia del diésel</translation>
  </message>
  <message>
   <source>Judging {part} at {label}…</source>
   <translation>Juzgando {part} en {label}…</translation>
  </message>
  <message>
   <source>Keep an alternate in place of its part and quote so; the money is shown first</source>
   <translation>Conservar una alternativa en lugar de su pieza y cotizar así; el dinero se muestra primero</translation>
  </message>
  <message>
   <source>Keep as usual terms</source>
   <translation>Guardar como condiciones usuales</translation>
  </message>
  <message>
   <source>Keep at least</source>
   <translation>Guardar al menos</translation>
  </message>
  <message>
   <source>Keep both</source>
   <translation>Conservar ambos</translation>
  </message>
  <message>
   <source>Keep mine</source>
   <translation>Conservar el mío</translation>
  </message>
  <message>
   <source>Keep or replace</source>
   <translation>Conservar o sustituir</translation>
  </message>
  <message>
   <source>Keep the customers of the book, and choose whom to quote to</source>
   <translation>Llevar los clientes del libro y elegir a quién se cotiza</translation>
  </message>
  <message>
   <source>Keep the firm's types of dispensers and choose one for this dispenser, which its positions inherit.</source>
   <translation>Llevar los tipos de surtidor de la empresa y elegir uno para este surtidor; sus posiciones lo heredan.</translation>
  </message>
  <message>
   <source>Keep the invented catalog &amp;Demonstration in this book</source>
   <translation>Conservar el catálogo inventado &amp;Demonstration en este libro</translation>
  </message>
  <message>
   <source>Keep the parts that the file does not hold</source>
   <translation>Conservar las piezas que el archivo no contiene</translation>
  </message>
  <message>
   <source>Keeps the grade on sale; empty goes by liquid and blend.</source>
   <translation>Mantiene el producto en venta; vacío va por líquido y mezcla.</translation>
  </message>
  <message>
   <source>Keeps, other than the set in hand: {lines}</source>
   <translation>Conserva, a diferencia del conjunto actual: {lines}</translation>
  </message>
  <message>
   <source>Kept</source>
   <translation>Quedan</translation>
  </message>
  <message>
   <source>Kept as usual terms in {path}.</source>
   <translation>Guardado como condiciones usuales en {path}.</translation>
  </message>
  <message>
   <source>Kept parts cost nothing</source>
   <translation>Las piezas conservadas no cuestan nada</translation>
  </message>
  <message>
   <source>Kerosene</source>
   <translation>Queroseno</translation>
  </message>
  <message>
   <source>Keys</source>
   <translation>Teclas</translation>
  </message>
  <message>
   <source>Kilograms</source>
   <translation>Kilogramos</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Tipo</translation>
  </message>
  <message>
   <source>Kind of a part without a catalog number</source>
   <translation>Tipo de una pieza sin número de catálogo</translation>
  </message>
  <message>
   <source>Kind of part</source>
   <translation>Tipo de pieza</translation>
  </message>
  <message>
   <source>Kind of rows that name none</source>
   <translation>Tipo de las filas que no nombran ninguno</translation>
  </message>
  <message>
   <source>Kind: as the rows say</source>
   <translation>Tipo: según las filas</translation>
  </message>
  <message>
   <source>La&amp;nguage</source>
   <translation>&amp;Idioma</translation>
  </message>
  <message>
   <source>Labor</source>
   <translation>Mano de obra</translation>
  </message>
  <message>
   <source>Lacks</source>
   <translation>Falta</translation>
  </message>
  <message>
   <source>Language of the papers</source>
   <translation>Idioma</translation>
  </message>
  <message>
   <source>Language, units, theme, catalog, usual local rules, data folder and backups in one place.</source>
   <translation>Idioma, unidades, tema, catálogo, reglas locales usuales, carpeta de datos y copias en un solo lugar.</translation>
  </message>
  <message>
   <source>Large tanks, high flow</source>
   <translation>Tanques grandes, caudal alto</translation>
  </message>
  <message>
   <source>Last day</source>
   <translation>Último día</translation>
  </message>
  <message>
   <source>Last day of the price list</source>
   <translation>Último día de la lista de precios</translation>
  </message>
  <message>
   <source>Last done</source>
   <translation>Última vez</translation>
  </message>
  <message>
   <source>Last entries</source>
   <translation>Últimos apuntes</translation>
  </message>
  <message>
   <source>Lead days</source>
   <translation>Días de entrega</translation>
  </message>
  <message>
   <source>Lead time</source>
   <translation>Plazo de entrega</translation>
  </message>
  <message>
   <source>Lead time in days</source>
   <translation>Plazo de entrega en días</translation>
  </message>
  <message>
   <source>Leads to</source>
   <translation>Lleva a</translation>
  </message>
  <message>
   <source>Leak test certificate</source>
   <translation>Certificado de la prueba de fugas</translation>
  </message>
  <message>
   <source>Least</source>
   <translation>Mínimo</translation>
  </message>
  <message>
   <source>Least cost</source>
   <translation>Costo mínimo</translation>
  </message>
  <message>
   <source>Leave &amp;aside the parts asked for</source>
   <translation>Dejar de &amp;lado las piezas pedidas</translation>
  </message>
  <message>
   <source>Leave and &amp;lose the changes</source>
   <translation>Salir y &amp;perder los cambios</translation>
  </message>
  <message>
   <source>Leave as it &amp;was</source>
   <translation>De&amp;jar como estaba</translation>
  </message>
  <message>
   <source>Leave out every row that shows a text</source>
   <translation>Omitir toda fila que muestra un texto</translation>
  </message>
  <message>
   <source>Leave the marked part open</source>
   <translation>Dejar abierta la pieza marcada</translation>
  </message>
  <message>
   <source>Leave the row out</source>
   <translation>Omitir la fila</translation>
  </message>
  <message>
   <source>Leave the terms as they were? What you wrote here is lost.</source>
   <translation>¿Dejar las condiciones como estaban? Se pierde lo que escribió aquí.</translation>
  </message>
  <message>
   <source>Leave {part} open</source>
   <translation>Dejar abierta {part}</translation>
  </message>
  <message>
   <source>Left out by a repair</source>
   <translation>Omitida por una reparación</translation>
  </message>
  <message>
   <source>Left out: a heading between rows</source>
   <translation>Omitida: un encabezado entre filas</translation>
  </message>
  <message>
   <source>Left out: a total</source>
   <translation>Omitida: un total</translation>
  </message>
  <message>
   <source>Left out: the titles once more</source>
   <translation>Omitida: los títulos otra vez</translation>
  </message>
  <message>
   <source>Legs of the way seen from above, separated by semicolons, where the hose must go round a corner.</source>
   <translation>Tramos del camino visto desde arriba, separados por punto y coma, donde la manguera dobla una esquina.</translation>
  </message>
  <message>
   <source>Lengths are in</source>
   <translation>Longitudes en</translation>
  </message>
  <message>
   <source>Let all parts go</source>
   <translation>Liberar todas las piezas</translation>
  </message>
  <message>
   <source>Let the draft hold what the file holds and nothing else</source>
   <translation>Dejar en el borrador solo lo que contiene el archivo</translation>
  </message>
  <message>
   <source>Let the price lists decide again, and quote again</source>
   <translation>Que decidan otra vez las listas de precios, y volver a cotizar</translation>
  </message>
  <message>
   <source>Let this s&amp;urvey plan as the book does</source>
   <translation>Que este lev&amp;antamiento planifique como el libro</translation>
  </message>
  <message>
   <source>Let this survey plan &amp;with it</source>
   <translation>Que este levantamiento planifique &amp;con ella</translation>
  </message>
  <message>
   <source>Letterhead</source>
   <translation>Membrete</translation>
  </message>
  <message>
   <source>Letterhead, conditions, prices, labor and taxes stand in every new quotation then</source>
   <translation>Membrete, condiciones, precios, mano de obra e impuestos quedan entonces en cada cotización nueva</translation>
  </message>
  <message>
   <source>License</source>
   <translation>Licencia</translation>
  </message>
  <message>
   <source>Lies on</source>
   <translation>Se aplica a</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Claro</translation>
  </message>
  <message>
   <source>Limit</source>
   <translation>Límite</translation>
  </message>
  <message>
   <source>Limit from: {source}</source>
   <translation>Límite según: {source}</translation>
  </message>
  <message>
   <source>Limits behind it: {0}</source>
   <translation>Límites que lo apoyan: {0}</translation>
  </message>
  <message>
   <source>Line by line, as printed.</source>
   <translation>Línea por línea, como está impreso.</translation>
  </message>
  <message>
   <source>Lines are sold below cost or the least margin: issuing it asks why. See Prices.</source>
   <translation>Hay líneas bajo el costo o el margen mínimo: al emitirla se pregunta por qué. Vea Precios.</translation>
  </message>
  <message>
   <source>Liquid</source>
   <translation>Líquido</translation>
  </message>
  <message>
   <source>Liquid and blend</source>
   <translation>Líquido y mezcla</translation>
  </message>
  <message>
   <source>Liquid only</source>
   <translation>Solo líquido</translation>
  </message>
  <message>
   <source>Liquid sold today</source>
   <translation>Líquido que se vende hoy</translation>
  </message>
  <message>
   <source>List as a paper</source>
   <translation>Lista en papel</translation>
  </message>
  <message>
   <source>List price</source>
   <translation>Precio de lista</translation>
  </message>
  <message>
   <source>List prices of the catalog in this currency.</source>
   <translation>Precios de lista del catálogo en esta moneda.</translation>
  </message>
  <message>
   <source>List prices with what goes with the sets; longest lead time {days}.</source>
   <translation>Precios de lista con lo que va con los conjuntos; plazo de entrega más largo: {days}.</translation>
  </message>
  <message>
   <source>Listing class without a scheme</source>
   <translation>Clase de listado sin esquema</translation>
  </message>
  <message>
   <source>Local &amp;rules of new surveys</source>
   <translation>&amp;Reglas locales de levantamientos nuevos</translation>
  </message>
  <message>
   <source>Local rules</source>
   <translation>Reglas locales</translation>
  </message>
  <message>
   <source>Local rules to show</source>
   <translation>Reglas locales que mostrar</translation>
  </message>
  <message>
   <source>Long hose, yard or delivery</source>
   <translation>Manguera larga, patio o reparto</translation>
  </message>
  <message>
   <source>Longest</source>
   <translation>La más larga</translation>
  </message>
  <message>
   <source>Look &amp;at its health</source>
   <translation>Ver s&amp;u estado</translation>
  </message>
  <message>
   <source>Look at &amp;it</source>
   <translation>V&amp;erla</translation>
  </message>
  <message>
   <source>Look at the demonstration</source>
   <translation>Ver la demostración</translation>
  </message>
  <message>
   <source>Look into the outlet: one bore, or one tube inside another.</source>
   <translation>Mire dentro de la salida: un solo conducto, o un tubo dentro de otro.</translation>
  </message>
  <message>
   <source>Look up any catalog part and read what speaks against it here.</source>
   <translation>Busque cualquier pieza del catálogo y lea aquí qué habla en su contra.</translation>
  </message>
  <message>
   <source>Looking for other sets…</source>
   <translation>Buscando otros conjuntos…</translation>
  </message>
  <message>
   <source>Looking for reasons and ways out</source>
   <translation>Se buscan razones y salidas</translation>
  </message>
  <message>
   <source>Looking for sets…</source>
   <translation>Buscando conjuntos…</translation>
  </message>
  <message>
   <source>Looking for the reasons and for what would help…</source>
   <translation>Buscando los motivos y qué ayudaría…</translation>
  </message>
  <message>
   <source>Looking for what would help…</source>
   <translation>Buscando qué ayudaría…</translation>
  </message>
  <message>
   <source>Looking…</source>
   <translation>Revisando…</translation>
  </message>
  <message>
   <source>Lowers the threshold of a new station.</source>
   <translation>Baja el umbral de una estación nueva.</translation>
  </message>
  <message>
   <source>Lowest air temperature the hardware meets.</source>
   <translation>Temperatura mínima del aire que soporta el equipo.</translation>
  </message>
  <message>
   <source>Made</source>
   <translation>Hecha</translation>
  </message>
  <message>
   <source>Made up by</source>
   <translation>Montado por</translation>
  </message>
  <message>
   <source>Made with these packages; open one to read its license.</source>
   <translation>Hecho con estos paquetes; abra uno para leer su licencia.</translation>
  </message>
  <message>
   <source>Make the change again that was taken back.</source>
   <translation>Volver a hacer el cambio deshecho.</translation>
  </message>
  <message>
   <source>Make the drawing smaller.</source>
   <translation>Achicar el dibujo.</translation>
  </message>
  <message>
   <source>Make the paper</source>
   <translation>Hacer el documento</translation>
  </message>
  <message>
   <source>Make the parts list</source>
   <translation>Hacer la lista de piezas</translation>
  </message>
  <message>
   <source>Maker</source>
   <translation>Fabricante</translation>
  </message>
  <message>
   <source>Maker of rows that name none</source>
   <translation>Fabricante de las filas que no nombran ninguno</translation>
  </message>
  <message>
   <source>Maker of the old number</source>
   <translation>Fabricante del número antiguo</translation>
  </message>
  <message>
   <source>Maker of the part</source>
   <translation>Fabricante de la pieza</translation>
  </message>
  <message>
   <source>Maker of the price list</source>
   <translation>Fabricante de la lista de precios</translation>
  </message>
  <message>
   <source>Makers ordered there</source>
   <translation>Fabricantes pedidos allí</translation>
  </message>
  <message>
   <source>Makers whose parts are ordered there, parted by semicolons</source>
   <translation>Fabricantes cuyas piezas se piden allí, separados por puntos y comas</translation>
  </message>
  <message>
   <source>Makes one change of the survey, which can be undone.</source>
   <translation>Hace un cambio del levantamiento, que se puede deshacer.</translation>
  </message>
  <message>
   <source>Making the paper…</source>
   <translation>Haciendo el documento…</translation>
  </message>
  <message>
   <source>Male</source>
   <translation>Macho</translation>
  </message>
  <message>
   <source>Margi&amp;n</source>
   <translation>Mar&amp;gen</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Margen</translation>
  </message>
  <message>
   <source>Margin lost per position and hour</source>
   <translation>&amp;Margen perdido por posición y hora</translation>
  </message>
  <message>
   <source>Margin, %</source>
   <translation>Margen, %</translation>
  </message>
  <message>
   <source>Mark a part to read what speaks against it here.</source>
   <translation>Marque una pieza para leer aquí qué habla en su contra.</translation>
  </message>
  <message>
   <source>Mass of the line</source>
   <translation>Masa de la línea</translation>
  </message>
  <message>
   <source>Materials, labor, freight: any of them.</source>
   <translation>Materiales, mano de obra, flete: cualquiera de ellos.</translation>
  </message>
  <message>
   <source>Matter</source>
   <translation>Asunto</translation>
  </message>
  <message>
   <source>Maximum flow</source>
   <translation>Caudal máximo</translation>
  </message>
  <message>
   <source>May parts that still fit stay?</source>
   <translation>¿Pueden quedarse las pie&amp;zas que aún encajan?</translation>
  </message>
  <message>
   <source>Mean fill of a boat</source>
   <translation>Llenado medio de una embarcación</translation>
  </message>
  <message>
   <source>Mean temperature of the air</source>
   <translation>Temperatura media del aire</translation>
  </message>
  <message>
   <source>Measure a distance: drag from one point to the other (M)</source>
   <translation>Medir una distancia: arrastre de un punto al otro (M)</translation>
  </message>
  <message>
   <source>Measure from the point on the ground below the outlet. The drawing follows.</source>
   <translation>Mida desde el punto del suelo bajo la salida. El dibujo lo sigue.</translation>
  </message>
  <message>
   <source>Measured at the dispenser's outlet with the nozzle open.</source>
   <translation>Medida en la salida del surtidor con la pistola abierta.</translation>
  </message>
  <message>
   <source>Measured on site</source>
   <translation>Medido en el sitio</translation>
  </message>
  <message>
   <source>Merge both</source>
   <translation>Unir ambos</translation>
  </message>
  <message>
   <source>Merged. Yours stands where both changed the same (yours / theirs):</source>
   <translation>Unidos. Queda el suyo donde ambos cambiaron lo mismo (suyo / ajeno):</translation>
  </message>
  <message>
   <source>Merged: both edits go into the book.</source>
   <translation>Unidos: ambas ediciones van al libro.</translation>
  </message>
  <message>
   <source>Meters, liters, newtons, kilopascals.</source>
   <translation>Metros, litros, newtons, kilopascales.</translation>
  </message>
  <message>
   <source>Metric</source>
   <translation>Métrica</translation>
  </message>
  <message>
   <source>Metric units</source>
   <translation>Unidades métricas</translation>
  </message>
  <message>
   <source>Money</source>
   <translation>Dinero</translation>
  </message>
  <message>
   <source>More a year later</source>
   <translation>Sobrecosto un año después</translation>
  </message>
  <message>
   <source>More than {0} entries, {1} of them shown: type more of it</source>
   <translation>Más de {0} entradas, se muestran {1}: escriba más</translation>
  </message>
  <message>
   <source>Move the chosen rows down (Alt+Down)</source>
   <translation>Bajar las filas elegidas (Alt+Down)</translation>
  </message>
  <message>
   <source>Move the chosen rows up (Alt+Up)</source>
   <translation>Subir las filas elegidas (Alt+Up)</translation>
  </message>
  <message>
   <source>Movement</source>
   <translation>Movimiento</translation>
  </message>
  <message>
   <source>Moving each figure that nobody measured through its range…</source>
   <translation>Se mueve por su margen cada dato que nadie midió…</translation>
  </message>
  <message>
   <source>N&amp;one</source>
   <translation>&amp;Ninguna</translation>
  </message>
  <message>
   <source>NFPA 30A as reproduced by state agencies</source>
   <translation>NFPA 30A, reproducida por agencias estatales</translation>
  </message>
  <message>
   <source>NFPA 30A as reproduced by state agencies; local code</source>
   <translation>NFPA 30A, reproducida por agencias estatales; código local</translation>
  </message>
  <message>
   <source>NOT in the book: taken off its list</source>
   <translation>NO está en el libro: quitado de su lista</translation>
  </message>
  <message>
   <source>NOT saved</source>
   <translation>NO guardado</translation>
  </message>
  <message>
   <source>NOT saved yet: waiting for the book</source>
   <translation>NO guardado aún: esperando al libro</translation>
  </message>
  <message>
   <source>NOT saved: saved by another window meanwhile</source>
   <translation>NO guardado: otra ventana lo guardó entretanto</translation>
  </message>
  <message>
   <source>NOT saved: the book may only be read</source>
   <translation>NO guardado: el libro es de solo lectura</translation>
  </message>
  <message>
   <source>NPT</source>
   <translation>NPT</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Nombre</translation>
  </message>
  <message>
   <source>Name and reason stand on record with the quotation.</source>
   <translation>El nombre y el motivo quedan anotados con la cotización.</translation>
  </message>
  <message>
   <source>Name of a new catalog</source>
   <translation>Nombre de un catálogo nuevo</translation>
  </message>
  <message>
   <source>Name of a new site</source>
   <translation>Nombre de una estación nueva</translation>
  </message>
  <message>
   <source>Name of the &amp;catalog</source>
   <translation>&amp;Nombre del catálogo</translation>
  </message>
  <message>
   <source>Name of the dispenser</source>
   <translation>Nombre del surtidor</translation>
  </message>
  <message>
   <source>Name of the family</source>
   <translation>Nombre de la familia</translation>
  </message>
  <message>
   <source>Name of the first s&amp;ite</source>
   <translation>Nombre del primer &amp;emplazamiento</translation>
  </message>
  <message>
   <source>Name of the g&amp;rade</source>
   <translation>Nombre &amp;del producto</translation>
  </message>
  <message>
   <source>Name of the new site</source>
   <translation>Nombre de la estación nueva</translation>
  </message>
  <message>
   <source>Name of the position</source>
   <translation>Nombre de la posición</translation>
  </message>
  <message>
   <source>Name of the price list</source>
   <translation>Nombre de la lista de precios</translation>
  </message>
  <message>
   <source>Name printed on the quotation.</source>
   <translation>Nombre impreso en la cotización.</translation>
  </message>
  <message>
   <source>Name, customer, local rules, climate and service of the site.</source>
   <translation>Nombre, cliente, reglas locales, clima y servicio de la estación.</translation>
  </message>
  <message>
   <source>Named cases</source>
   <translation>Casos con nombre</translation>
  </message>
  <message>
   <source>Names of the new dispensers</source>
   <translation>Nombres de los surtidores nuevos</translation>
  </message>
  <message>
   <source>Ne&amp;w part…</source>
   <translation>Pie&amp;za nueva…</translation>
  </message>
  <message>
   <source>Near side, far side, high tank, boat deck.</source>
   <translation>Lado cercano, lado lejano, tanque alto, cubierta.</translation>
  </message>
  <message>
   <source>Nearest</source>
   <translation>Lo más cercano</translation>
  </message>
  <message>
   <source>Needed: stands on the paper beside your name</source>
   <translation>Necesario: queda en el documento junto a su nombre</translation>
  </message>
  <message>
   <source>New option, total</source>
   <translation>Opción nueva, total</translation>
  </message>
  <message>
   <source>New or refurbished</source>
   <translation>Nueva o remodelada</translation>
  </message>
  <message>
   <source>New part {0}, pieces</source>
   <translation>Pieza nueva {0}, unidades</translation>
  </message>
  <message>
   <source>New quotations of the station that is open go to this customer unasked</source>
   <translation>Las cotizaciones nuevas de la estación abierta van a este cliente sin preguntar</translation>
  </message>
  <message>
   <source>Next</source>
   <translation>Siguiente</translation>
  </message>
  <message>
   <source>Next due</source>
   <translation>Próxima vez</translation>
  </message>
  <message>
   <source>No</source>
   <translation>No</translation>
  </message>
  <message>
   <source>No &amp;type</source>
   <translation>Sin &amp;tipo</translation>
  </message>
  <message>
   <source>No catalog part has this in its number, name or maker.</source>
   <translation>Ninguna pieza del catálogo tiene esto en su número, nombre o fabricante.</translation>
  </message>
  <message>
   <source>No file yet</source>
   <translation>Aún ningún archivo</translation>
  </message>
  <message>
   <source>No for one that the conversion adds.</source>
   <translation>No, si la añade la conversión.</translation>
  </message>
  <message>
   <source>No list of parts is offered until this is settled.</source>
   <translation>No se ofrece lista de piezas hasta resolver esto.</translation>
  </message>
  <message>
   <source>No open quotation is touched by a change of catalog or price lists.</source>
   <translation>Ningún cambio del catálogo o de precios toca una cotización abierta.</translation>
  </message>
  <message>
   <source>No other part could hang here.</source>
   <translation>Ninguna otra pieza podría colgar aquí.</translation>
  </message>
  <message>
   <source>No other set differs in a way worth showing.</source>
   <translation>Ningún otro conjunto difiere en algo que valga mostrar.</translation>
  </message>
  <message>
   <source>No part comes into question while the answers contradict each other.</source>
   <translation>Ninguna pieza es posible mientras las respuestas se contradicen.</translation>
  </message>
  <message>
   <source>No part of the set takes longer to come.</source>
   <translation>Ninguna pieza del conjunto tarda más en llegar.</translation>
  </message>
  <message>
   <source>No plan can be made</source>
   <translation>No se puede hacer ningún plan</translation>
  </message>
  <message>
   <source>No position is surveyed yet: say what each of them sells, then quote.</source>
   <translation>Aún no hay posiciones levantadas: diga qué vende cada una, y cotice.</translation>
  </message>
  <message>
   <source>No price</source>
   <translation>Sin precio</translation>
  </message>
  <message>
   <source>No price list applies to {part} on {day}.</source>
   <translation>Ninguna lista de precios se aplica a {part} el {day}.</translation>
  </message>
  <message>
   <source>No question can choose it</source>
   <translation>Ninguna pregunta puede elegirla</translation>
  </message>
  <message>
   <source>No quotation yet</source>
   <translation>Aún no hay cotización</translation>
  </message>
  <message>
   <source>No rows. Add, or the Insert key, makes one; rows can be pasted from a spreadsheet.</source>
   <translation>Sin filas. Añadir, o la tecla Insert, crea una; se pueden pegar filas de una hoja de cálculo.</translation>
  </message>
  <message>
   <source>No set is planned for this position.</source>
   <translation>No hay conjunto planificado para esta posición.</translation>
  </message>
  <message>
   <source>No set was chosen for this position, so there is no part to replace.</source>
   <translation>No se eligió ningún conjunto para esta posición; no hay pieza que reemplazar.</translation>
  </message>
  <message>
   <source>No terms in hand</source>
   <translation>Sin condiciones en uso</translation>
  </message>
  <message>
   <source>No type</source>
   <translation>Sin tipo</translation>
  </message>
  <message>
   <source>No van and no store is known yet: count or receive something first.</source>
   <translation>Todavía no se conoce ninguna furgoneta ni almacén: primero cuente o reciba algo.</translation>
  </message>
  <message>
   <source>No&amp;tes</source>
   <translation>No&amp;tas</translation>
  </message>
  <message>
   <source>No.</source>
   <translation>N.º</translation>
  </message>
  <message>
   <source>None</source>
   <translation>Ninguno</translation>
  </message>
  <message>
   <source>None yet; one is made each day.</source>
   <translation>Aún ninguna; se hace una cada día.</translation>
  </message>
  <message>
   <source>Not all changes are in the book yet; choose the language when they are.</source>
   <translation>Aún no están todos los cambios en el libro; elija el idioma cuando estén.</translation>
  </message>
  <message>
   <source>Not counted, without a dated record or a set: {0}</source>
   <translation>Sin contar, sin registro fechado o sin conjunto: {0}</translation>
  </message>
  <message>
   <source>Not decided for {0} of them.</source>
   <translation>Sin decidir de {0} de ellas.</translation>
  </message>
  <message>
   <source>Not everything is saved</source>
   <translation>No está todo guardado</translation>
  </message>
  <message>
   <source>Not in the catalog and in no order file: {0}</source>
   <translation>No está en el catálogo ni en ningún archivo de pedido: {0}</translation>
  </message>
  <message>
   <source>Not included</source>
   <translation>No incluido</translation>
  </message>
  <message>
   <source>Not known yet</source>
   <translation>Aún no se sabe</translation>
  </message>
  <message>
   <source>Not ready</source>
   <translation>No lista</translation>
  </message>
  <message>
   <source>Not scanned</source>
   <translation>Sin escanear</translation>
  </message>
  <message>
   <source>Not surveyed yet</source>
   <translation>Aún sin levantar</translation>
  </message>
  <message>
   <source>Not surveyed yet, and not in the list: {labels}.</source>
   <translation>Aún sin levantar, y fuera de la lista: {labels}.</translation>
  </message>
  <message>
   <source>Not surveyed yet, and not quoted: {0}</source>
   <translation>Aún sin levantar, y sin cotizar: {0}</translation>
  </message>
  <message>
   <source>Not yet described</source>
   <translation>Aún sin describir</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Nota</translation>
  </message>
  <message>
   <source>Note it as do&amp;ne today</source>
   <translation>Anotar como &amp;hecha hoy</translation>
  </message>
  <message>
   <source>Note to the answer: how it came, what was said</source>
   <translation>Nota a la respuesta: cómo llegó, qué se dijo</translation>
  </message>
  <message>
   <source>Note to the customer's answer</source>
   <translation>Nota a la respuesta del cliente</translation>
  </message>
  <message>
   <source>Notes</source>
   <translation>Notas</translation>
  </message>
  <message>
   <source>Nothing differs between the two.</source>
   <translation>Nada difiere entre los dos.</translation>
  </message>
  <message>
   <source>Nothing has been agreed yet.</source>
   <translation>Aún no se ha acordado nada.</translation>
  </message>
  <message>
   <source>Nothing is agreed for this position.</source>
   <translation>No hay nada acordado para esta posición.</translation>
  </message>
  <message>
   <source>Nothing is agreed that could be undone.</source>
   <translation>No hay nada acordado que se pueda deshacer.</translation>
  </message>
  <message>
   <source>Nothing is called so. Try another word, or fewer.</source>
   <translation>Nada se llama así. Pruebe con otra palabra, o con menos.</translation>
  </message>
  <message>
   <source>Nothing is hidden: what is broken, what is open, what is worth knowing.</source>
   <translation>No se oculta nada: qué se incumple, qué queda abierto, qué conviene saber.</translation>
  </message>
  <message>
   <source>Nothing is kept; these are the usual columns.</source>
   <translation>No se guarda nada; estas son las columnas usuales.</translation>
  </message>
  <message>
   <source>Nothing of the survey is changed by looking. Accept makes one change of it, which can be undone.</source>
   <translation>Mirar no cambia el levantamiento. Aceptar hace un solo cambio, que se puede deshacer.</translation>
  </message>
  <message>
   <source>Nothing to look at.</source>
   <translation>Nada que revisar.</translation>
  </message>
  <message>
   <source>Nothing was changed.</source>
   <translation>No se cambió nada.</translation>
  </message>
  <message>
   <source>Nothing was changed: entries that are marked need a look.</source>
   <translation>No se cambió nada: revise las entradas marcadas.</translation>
  </message>
  <message>
   <source>Nothing was printed.</source>
   <translation>No se imprimió nada.</translation>
  </message>
  <message>
   <source>Nothing was printed: the printer, or the file that it prints into, takes nothing.</source>
   <translation>No se imprimió nada: la impresora, o el archivo en que imprime, no acepta nada.</translation>
  </message>
  <message>
   <source>Nothing was printed: {reason}</source>
   <translation>No se imprimió nada: {reason}</translation>
  </message>
  <message>
   <source>Nothing was recorded: answers that are marked need a look.</source>
   <translation>No se registró nada: hay respuestas marcadas que revisar.</translation>
  </message>
  <message>
   <source>Nothing was saved: {reason}</source>
   <translation>No se guardó nada: {reason}</translation>
  </message>
  <message>
   <source>Nothing was taken</source>
   <translation>No se tomó nada</translation>
  </message>
  <message>
   <source>Nothing was written. {path}: {reason}.</source>
   <translation>No se escribió nada. {path}: {reason}.</translation>
  </message>
  <message>
   <source>Nothing was written: choose a cell further left, or copy fewer; the table has {0} columns.</source>
   <translation>No se escribió nada: elija una celda más a la izquierda, o copie menos; la tabla tiene {0} columnas.</translation>
  </message>
  <message>
   <source>Nothing was written: the table takes at most {0} rows.</source>
   <translation>No se escribió nada: la tabla admite como máximo {0} filas.</translation>
  </message>
  <message>
   <source>Notice</source>
   <translation>Aviso</translation>
  </message>
  <message>
   <source>Notice: caution</source>
   <translation>Aviso: precaución</translation>
  </message>
  <message>
   <source>Notice: done</source>
   <translation>Aviso: hecho</translation>
  </message>
  <message>
   <source>Notice: question</source>
   <translation>Aviso: pregunta</translation>
  </message>
  <message>
   <source>Notice: trouble</source>
   <translation>Aviso: problema</translation>
  </message>
  <message>
   <source>Now, {0}</source>
   <translation>Ahora, {0}</translation>
  </message>
  <message>
   <source>Nozzle</source>
   <translation>Pistola</translation>
  </message>
  <message>
   <source>Nozzle hook</source>
   <translation>Soporte de la pistola</translation>
  </message>
  <message>
   <source>Number</source>
   <translation>Número</translation>
  </message>
  <message>
   <source>Number and day</source>
   <translation>Número y día</translation>
  </message>
  <message>
   <source>Number of the article</source>
   <translation>Número del artículo</translation>
  </message>
  <message>
   <source>Number of the line</source>
   <translation>Número de la línea</translation>
  </message>
  <message>
   <source>Number of the part</source>
   <translation>Número de la pieza</translation>
  </message>
  <message>
   <source>Number of the quotation</source>
   <translation>Número de la cotización</translation>
  </message>
  <message>
   <source>Number, customer, site or part</source>
   <translation>Número, cliente, estación o pieza</translation>
  </message>
  <message>
   <source>Number, name or maker</source>
   <translation>Número, nombre o fabricante</translation>
  </message>
  <message>
   <source>Number, name or maker of a part</source>
   <translation>Número, nombre o fabricante de una pieza</translation>
  </message>
  <message>
   <source>Number, old number, name, maker, item number, GTIN or supplier</source>
   <translation>Número, número antiguo, nombre, fabricante, número de artículo, GTIN o proveedor</translation>
  </message>
  <message>
   <source>Numbers that no part of the draft has: {0}, such as {1}.</source>
   <translation>Números que ninguna pieza del borrador tiene: {0}, como {1}.</translation>
  </message>
  <message>
   <source>O&amp;utlet height</source>
   <translation>Altura de la &amp;salida</translation>
  </message>
  <message>
   <source>OAR 340-244-0247(1)</source>
   <translation>OAR 340-244-0247(1)</translation>
  </message>
  <message>
   <source>Of a crew.</source>
   <translation>De una cuadrilla.</translation>
  </message>
  <message>
   <source>Of the converted hardware.</source>
   <translation>Del equipo convertido.</translation>
  </message>
  <message>
   <source>Of the dispenser's own thread.</source>
   <translation>De la rosca propia del surtidor.</translation>
  </message>
  <message>
   <source>Of the gasoline in the season that counts, such as 62 kPa.</source>
   <translation>De la gasolina en la temporada que cuenta, como 62 kPa.</translation>
  </message>
  <message>
   <source>Of the liquid that is lost through hoses; empty: such losses are left out.</source>
   <translation>Del líquido que se pierde por las mangueras; vacío: esas pérdidas se dejan fuera.</translation>
  </message>
  <message>
   <source>Of the nozzle's inlet at rest, above the ground.</source>
   <translation>De la entrada de la pistola en reposo, sobre el suelo.</translation>
  </message>
  <message>
   <source>Of the price; a line below it is asked about before the issue. Empty: only below cost.</source>
   <translation>Del precio; antes de emitir se pregunta por las líneas que quedan por debajo. Vacío: solo bajo el costo.</translation>
  </message>
  <message>
   <source>Of the season that counts, such as 15 °C.</source>
   <translation>De la temporada que cuenta, como 15 °C.</translation>
  </message>
  <message>
   <source>Offered instead</source>
   <translation>Ofrecida en su lugar</translation>
  </message>
  <message>
   <source>Old maker</source>
   <translation>Fabricante antiguo</translation>
  </message>
  <message>
   <source>Old number</source>
   <translation>Número antiguo</translation>
  </message>
  <message>
   <source>Old number, its maker, or the part it leads to</source>
   <translation>Número antiguo, su fabricante o la pieza a la que lleva</translation>
  </message>
  <message>
   <source>Old numbers</source>
   <translation>Números antiguos</translation>
  </message>
  <message>
   <source>Old numbers of the table's makers that the draft holds and the table does not</source>
   <translation>Números antiguos de los fabricantes de la tabla que el borrador tiene y la tabla no</translation>
  </message>
  <message>
   <source>Old numbers that lead to parts come here; a table of them can be read in.</source>
   <translation>Aquí aparecen los números antiguos que llevan a piezas; se puede leer una tabla de ellos.</translation>
  </message>
  <message>
   <source>Oldest age at which a part may stay, years</source>
   <translation>Edad máxima de una pieza que se queda, años</translation>
  </message>
  <message>
   <source>Once for each</source>
   <translation>Una vez por cada</translation>
  </message>
  <message>
   <source>Once more, whatever was taken already</source>
   <translation>Otra vez, sin mirar lo ya tomado</translation>
  </message>
  <message>
   <source>Once, or before the lines are added up.</source>
   <translation>Una vez, o antes de sumar las líneas.</translation>
  </message>
  <message>
   <source>One HTML page that is filled in without a network; what it saves is read back as a filled form.</source>
   <translation>Una página HTML que se rellena sin red; lo que guarda se lee como hoja rellenada.</translation>
  </message>
  <message>
   <source>One balance never mixes two.</source>
   <translation>Un balance nunca mezcla dos.</translation>
  </message>
  <message>
   <source>One bore</source>
   <translation>Un solo conducto</translation>
  </message>
  <message>
   <source>One field of {0} parts</source>
   <translation>Un campo de {0} piezas</translation>
  </message>
  <message>
   <source>One is made each day. The last is of {0}; {1} are kept.</source>
   <translation>Se hace una cada día. La última es de {0}; se guardan {1}.</translation>
  </message>
  <message>
   <source>One kind, or every kind.</source>
   <translation>Un tipo, o todos.</translation>
  </message>
  <message>
   <source>One line for each site (CSV)</source>
   <translation>Una línea por estación (CSV)</translation>
  </message>
  <message>
   <source>One moment…</source>
   <translation>Un momento…</translation>
  </message>
  <message>
   <source>One of these kinds of part; empty: at every set.</source>
   <translation>Uno de estos tipos de pieza; vacío: en cada conjunto.</translation>
  </message>
  <message>
   <source>One person a line: role; name; telephone</source>
   <translation>Una persona por línea: función; nombre; teléfono</translation>
  </message>
  <message>
   <source>One revision so far.</source>
   <translation>Una revisión hasta ahora.</translation>
  </message>
  <message>
   <source>One row for each column, from left to right. The customer's price is none of them.</source>
   <translation>Una fila por columna, de izquierda a derecha. El precio del cliente no es ninguna de ellas.</translation>
  </message>
  <message>
   <source>One search over commands, positions, surveys, quotations, parts and help.</source>
   <translation>Una búsqueda en órdenes, posiciones, levantamientos, cotizaciones, piezas y ayuda.</translation>
  </message>
  <message>
   <source>One sentence in each row.</source>
   <translation>Una frase por fila.</translation>
  </message>
  <message>
   <source>One sentence.</source>
   <translation>Una frase.</translation>
  </message>
  <message>
   <source>One to four alternatives side by side in one quotation.</source>
   <translation>De una a cuatro alternativas lado a lado en una cotización.</translation>
  </message>
  <message>
   <source>Only gasoline has vapor recovery at the nozzle. Whether it may be taken out is for the local air agency to say.</source>
   <translation>Solo la gasolina tiene recuperación de vapor en la pistola. Si se puede quitar lo dice la agencia local del aire.</translation>
  </message>
  <message>
   <source>Only rows that differ &amp;from where they were copied from</source>
   <translation>Solo filas que &amp;difieren de su origen</translation>
  </message>
  <message>
   <source>Only these years count then.</source>
   <translation>Entonces solo cuentan esos años.</translation>
  </message>
  <message>
   <source>Only what is not &amp;yet described</source>
   <translation>Solo lo aún &amp;no descrito</translation>
  </message>
  <message>
   <source>Only where boats are fueled; such as 120 L.</source>
   <translation>Solo donde se surten embarcaciones; como 120 L.</translation>
  </message>
  <message>
   <source>Only where the set holds</source>
   <translation>Solo donde el conjunto lleva</translation>
  </message>
  <message>
   <source>Open a file</source>
   <translation>Abrir un archivo</translation>
  </message>
  <message>
   <source>Open a file…</source>
   <translation>Abrir un archivo…</translation>
  </message>
  <message>
   <source>Open a row to follow the calculation by hand: formula, figures, result, source.</source>
   <translation>Abra una fila para seguir el cálculo a mano: fórmula, cifras, resultado, fuente.</translation>
  </message>
  <message>
   <source>Open a&amp;ll</source>
   <translation>Abrir &amp;todo</translation>
  </message>
  <message>
   <source>Open, add or remove surveys of the book.</source>
   <translation>Abrir, añadir o quitar levantamientos del libro.</translation>
  </message>
  <message>
   <source>Opening the book of surveys…</source>
   <translation>Abriendo el libro de levantamientos…</translation>
  </message>
  <message>
   <source>Option</source>
   <translation>Opción</translation>
  </message>
  <message>
   <source>Option and line</source>
   <translation>Opción y línea</translation>
  </message>
  <message>
   <source>Option left out, total</source>
   <translation>Opción excluida, total</translation>
  </message>
  <message>
   <source>Option of the pick list and the suppliers</source>
   <translation>Opción de la lista de surtido y de los proveedores</translation>
  </message>
  <message>
   <source>Option “{0}”</source>
   <translation>Opción «{0}»</translation>
  </message>
  <message>
   <source>Options</source>
   <translation>Opciones</translation>
  </message>
  <message>
   <source>Options leave hoses out: issuing it asks why. Check the paper first.</source>
   <translation>Hay opciones que dejan mangueras fuera: al emitirla se pregunta por qué. Revise antes el documento.</translation>
  </message>
  <message>
   <source>Options side by side</source>
   <translation>Opciones lado a lado</translation>
  </message>
  <message>
   <source>Order lot</source>
   <translation>Lote de pedido</translation>
  </message>
  <message>
   <source>Orders by supplier of what is to be ordered, as each supplier reads them</source>
   <translation>Pedidos por proveedor de lo que hay que pedir, como los lee cada uno</translation>
  </message>
  <message>
   <source>Orders by supplier: {0}</source>
   <translation>Pedidos por proveedor: {0}</translation>
  </message>
  <message>
   <source>Order…</source>
   <translation>Pedir…</translation>
  </message>
  <message>
   <source>Other answer</source>
   <translation>Otra respuesta</translation>
  </message>
  <message>
   <source>Other parts can then take their places.</source>
   <translation>Otras piezas pueden entonces ocupar su lugar.</translation>
  </message>
  <message>
   <source>Other parts for this place</source>
   <translation>Otras piezas para este lugar</translation>
  </message>
  <message>
   <source>Other set</source>
   <translation>Otro conjunto</translation>
  </message>
  <message>
   <source>Other sets</source>
   <translation>Otros</translation>
  </message>
  <message>
   <source>Other side of dispenser {0}</source>
   <translation>Otro lado del surtidor {0}</translation>
  </message>
  <message>
   <source>Otherwise than dispenser type {0}</source>
   <translation>Distinto del tipo de surtidor {0}</translation>
  </message>
  <message>
   <source>Outcome</source>
   <translation>Resultado</translation>
  </message>
  <message>
   <source>Outcome or part</source>
   <translation>Resultado o pieza</translation>
  </message>
  <message>
   <source>Outlet direction</source>
   <translation>Sentido salida</translation>
  </message>
  <message>
   <source>Outlet gender</source>
   <translation>Género salida</translation>
  </message>
  <message>
   <source>Outlet height</source>
   <translation>Altura salida</translation>
  </message>
  <message>
   <source>Outlet p&amp;oints</source>
   <translation>¿&amp;Hacia dónde apunta la salida?</translation>
  </message>
  <message>
   <source>Outlet path</source>
   <translation>Vía salida</translation>
  </message>
  <message>
   <source>Outlet pull strength</source>
   <translation>Tiro de salida</translation>
  </message>
  <message>
   <source>Outlet size</source>
   <translation>Medida salida</translation>
  </message>
  <message>
   <source>Outlet thread</source>
   <translation>Rosca salida</translation>
  </message>
  <message>
   <source>Outlet to fille&amp;r, level</source>
   <translation>De la salida a la &amp;boca, en horizontal</translation>
  </message>
  <message>
   <source>Outlet to filler, level</source>
   <translation>De la salida a la boca, en horizontal</translation>
  </message>
  <message>
   <source>Outlet to hook, &amp;level</source>
   <translation>De la salida al soporte, en hori&amp;zontal</translation>
  </message>
  <message>
   <source>Outlines UL 87C and 2586C; zones: NFPA 30A and the local code</source>
   <translation>Borradores UL 87C y 2586C; zonas: NFPA 30A y el código local</translation>
  </message>
  <message>
   <source>Overhead</source>
   <translation>Desde arriba</translation>
  </message>
  <message>
   <source>Own onboard shares</source>
   <translation>Proporciones propias a bordo</translation>
  </message>
  <message>
   <source>Owner's offers</source>
   <translation>Ofertas del propietario</translation>
  </message>
  <message>
   <source>Owner's source, named above</source>
   <translation>Fuente del propietario, nombrada arriba</translation>
  </message>
  <message>
   <source>Owner's wish</source>
   <translation>Deseo del propietario</translation>
  </message>
  <message>
   <source>P&amp;apers</source>
   <translation>Doc&amp;umentos</translation>
  </message>
  <message>
   <source>P&amp;rice lists</source>
   <translation>Listas de p&amp;recios</translation>
  </message>
  <message>
   <source>P&amp;ublish</source>
   <translation>P&amp;ublicar</translation>
  </message>
  <message>
   <source>PNG or JPEG for the letterhead.</source>
   <translation>PNG o JPEG para el membrete.</translation>
  </message>
  <message>
   <source>Pack</source>
   <translation>Paquete</translation>
  </message>
  <message>
   <source>Package</source>
   <translation>Paquete</translation>
  </message>
  <message>
   <source>Packages with their licenses</source>
   <translation>Paquetes con sus licencias</translation>
  </message>
  <message>
   <source>Packs</source>
   <translation>Paquetes</translation>
  </message>
  <message>
   <source>Page</source>
   <translation>Página</translation>
  </message>
  <message>
   <source>Page of help</source>
   <translation>Página de ayuda</translation>
  </message>
  <message>
   <source>Page {0}</source>
   <translation>Página {0}</translation>
  </message>
  <message>
   <source>Pages of help</source>
   <translation>Páginas de ayuda</translation>
  </message>
  <message>
   <source>Pages of the bill</source>
   <translation>Páginas de la lista de materiales</translation>
  </message>
  <message>
   <source>Pages of the conversion report</source>
   <translation>Páginas del informe de conversión</translation>
  </message>
  <message>
   <source>Pages of the installer's paper</source>
   <translation>Páginas del documento del instalador</translation>
  </message>
  <message>
   <source>Pages of the quotation</source>
   <translation>Páginas de la cotización</translation>
  </message>
  <message>
   <source>Panels of the set</source>
   <translation>Paneles del conjunto</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Documento</translation>
  </message>
  <message>
   <source>Paper (P&amp;DF)</source>
   <translation>Papel (PDF)</translation>
  </message>
  <message>
   <source>Papers show it from then on. At a station, the sets of all positions at once.</source>
   <translation>Los documentos lo muestran desde entonces. En una estación, los conjuntos de todas las posiciones a la vez.</translation>
  </message>
  <message>
   <source>Papers to take along, the record of each position, replacements from the truck, inspections.</source>
   <translation>Documentos para llevar, el registro de cada posición, cambios de la furgoneta, inspecciones.</translation>
  </message>
  <message>
   <source>Parallel, 55°</source>
   <translation>Paralela, 55°</translation>
  </message>
  <message>
   <source>Part</source>
   <translation>Pieza</translation>
  </message>
  <message>
   <source>Part &amp;number</source>
   <translation>Número &amp;de pieza</translation>
  </message>
  <message>
   <source>Part asked for</source>
   <translation>Pieza pedida</translation>
  </message>
  <message>
   <source>Part maker</source>
   <translation>Fabricante de la pieza</translation>
  </message>
  <message>
   <source>Part not on the tr&amp;uck</source>
   <translation>Pieza que fal&amp;ta</translation>
  </message>
  <message>
   <source>Part number</source>
   <translation>N.º de pieza</translation>
  </message>
  <message>
   <source>Part of a line</source>
   <translation>Pieza de una línea</translation>
  </message>
  <message>
   <source>Part refused</source>
   <translation>Pieza rechazada</translation>
  </message>
  <message>
   <source>Part that is not on the truck</source>
   <translation>Pieza que no va en la furgoneta</translation>
  </message>
  <message>
   <source>Part there today {0}</source>
   <translation>Pieza de hoy {0}</translation>
  </message>
  <message>
   <source>Part whose price is asked</source>
   <translation>Pieza cuyo precio se pregunta</translation>
  </message>
  <message>
   <source>Part {0} left out, pieces</source>
   <translation>Pieza {0} excluida, unidades</translation>
  </message>
  <message>
   <source>Parted by semicolons.</source>
   <translation>Separadas por punto y coma.</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Piezas</translation>
  </message>
  <message>
   <source>Parts and verdicts alone, a page for ten hoses, with the caution sheet.</source>
   <translation>Solo piezas y resultados, una página por cada diez mangueras, con la hoja de advertencias.</translation>
  </message>
  <message>
   <source>Parts installed once</source>
   <translation>Piezas instaladas una vez</translation>
  </message>
  <message>
   <source>Parts kept and refused, lead time</source>
   <translation>Piezas fijadas y descartadas, plazo</translation>
  </message>
  <message>
   <source>Parts left per place</source>
   <translation>Piezas que quedan por lugar</translation>
  </message>
  <message>
   <source>Parts list</source>
   <translation>Lista de piezas</translation>
  </message>
  <message>
   <source>Parts list &amp;of the site</source>
   <translation>&amp;Lista de piezas de la estación</translation>
  </message>
  <message>
   <source>Parts list of the site</source>
   <translation>Lista de piezas de la estación</translation>
  </message>
  <message>
   <source>Parts list: a set for each position that fits together, with its price and its reasons.</source>
   <translation>Lista de piezas: para cada posición un conjunto que encaja, con su precio y sus razones.</translation>
  </message>
  <message>
   <source>Parts of all positions</source>
   <translation>Piezas de todas las posiciones</translation>
  </message>
  <message>
   <source>Parts of the article, dispenser first</source>
   <translation>Piezas del artículo, primero la del surtidor</translation>
  </message>
  <message>
   <source>Parts of the catalog</source>
   <translation>Piezas del catálogo</translation>
  </message>
  <message>
   <source>Parts of the set in hand</source>
   <translation>Piezas del conjunto actual</translation>
  </message>
  <message>
   <source>Parts of the table's makers that the draft holds and the table does not</source>
   <translation>Piezas de los fabricantes de la tabla que están en el borrador y no en la tabla</translation>
  </message>
  <message>
   <source>Parts of this set are kept by choice, which leaves no other set to compare. Let them go to see others.</source>
   <translation>Hay piezas de este conjunto conservadas por elección, así que no queda otro con que comparar. Libérelas para ver otros.</translation>
  </message>
  <message>
   <source>Parts offered in place of those of lines, with the difference in price and in no total.</source>
   <translation>Piezas ofrecidas en lugar de las de las líneas, con la diferencia de precio y en ningún total.</translation>
  </message>
  <message>
   <source>Parts that differ</source>
   <translation>Piezas que difieren</translation>
  </message>
  <message>
   <source>Parts that differ ({0})</source>
   <translation>Piezas que difieren ({0})</translation>
  </message>
  <message>
   <source>Parts that were replaced come here; the fields below add the first.</source>
   <translation>Aquí aparecen las piezas reemplazadas; los campos de abajo añaden la primera.</translation>
  </message>
  <message>
   <source>Parts that were scanned at a van or store are listed here.</source>
   <translation>Aquí se listan las piezas escaneadas en una furgoneta o un almacén.</translation>
  </message>
  <message>
   <source>Paste positions</source>
   <translation>Pegar posiciones</translation>
  </message>
  <message>
   <source>Path at the dispenser</source>
   <translation>Vía en el surtidor</translation>
  </message>
  <message>
   <source>Path, where known</source>
   <translation>Vía, si se conoce</translation>
  </message>
  <message>
   <source>People to call</source>
   <translation>A quién llamar</translation>
  </message>
  <message>
   <source>Percent</source>
   <translation>Porcentaje</translation>
  </message>
  <message>
   <source>Percent biodiesel</source>
   <translation>Porcentaje de biodiésel</translation>
  </message>
  <message>
   <source>Percent by volume at most: ethanol in gasoline, biodiesel in diesel, kerosene or fuel oil. Take the highest figure the supplier may deliver.</source>
   <translation>Porcentaje máximo en volumen: etanol en gasolina, biodiésel en diésel, queroseno o fuelóleo. Tome la cifra más alta que pueda entregar el proveedor.</translation>
  </message>
  <message>
   <source>Percent ethanol</source>
   <translation>Porcentaje de etanol</translation>
  </message>
  <message>
   <source>Percent in a year on what lies in spares; empty: spares are left out.</source>
   <translation>Porcentaje al año sobre lo invertido en repuestos; vacío: los repuestos se dejan fuera.</translation>
  </message>
  <message>
   <source>Percent of all that is installed of a kind, rounded up once and spread over the parts of which there are most.</source>
   <translation>Porcentaje de todo lo instalado de una clase, redondeado hacia arriba una vez y repartido entre las piezas de las que hay más.</translation>
  </message>
  <message>
   <source>Percent of separations after which it is replaced all the same.</source>
   <translation>Porcentaje de separaciones tras las que se sustituye de todos modos.</translation>
  </message>
  <message>
   <source>Percent off the list, line by line: hoses = 14</source>
   <translation>Por ciento menos de la lista, línea por línea: hoses = 14</translation>
  </message>
  <message>
   <source>Percent, 0 to 100.</source>
   <translation>Por ciento, 0 a 100.</translation>
  </message>
  <message>
   <source>Permit number</source>
   <translation>Número de permiso</translation>
  </message>
  <message>
   <source>Photos</source>
   <translation>Fotos</translation>
  </message>
  <message>
   <source>Pick &amp;list</source>
   <translation>S&amp;urtido</translation>
  </message>
  <message>
   <source>Pick a &amp;file…</source>
   <translation>&amp;Elegir un archivo…</translation>
  </message>
  <message>
   <source>Pick a catalog of your own first: Demonstration is only read.</source>
   <translation>Elija primero un catálogo propio: Demonstration solo se lee.</translation>
  </message>
  <message>
   <source>Pick a combination to see what would be chosen, or why nothing fits.</source>
   <translation>Elija una combinación para ver qué se elegiría o por qué nada encaja.</translation>
  </message>
  <message>
   <source>Pick a part in the drawing or the list.</source>
   <translation>Elija una pieza en el dibujo o en la lista.</translation>
  </message>
  <message>
   <source>Pick the missing part, list what is in stock, and ask: what would do stands here.</source>
   <translation>Elija la pieza que falta, indique las existencias y pregunte: aquí aparece lo que serviría.</translation>
  </message>
  <message>
   <source>Picture of the letterhead</source>
   <translation>Imagen del membrete</translation>
  </message>
  <message>
   <source>Picture or document of the part</source>
   <translation>Imagen o documento de la pieza</translation>
  </message>
  <message>
   <source>Pictures (PNG, JPEG) and documents (PDF) are checked and kept with the part; files may be dropped.</source>
   <translation>Las imágenes (PNG, JPEG) y los documentos (PDF) se comprueban y se guardan con la pieza; también se pueden soltar aquí.</translation>
  </message>
  <message>
   <source>Pictures and documents of {0}</source>
   <translation>Imágenes y documentos de {0}</translation>
  </message>
  <message>
   <source>Pieces</source>
   <translation>Piezas</translation>
  </message>
  <message>
   <source>Pieces in a pack</source>
   <translation>Piezas por paquete</translation>
  </message>
  <message>
   <source>Pieces of one count add up; another name begins anew.</source>
   <translation>Las piezas de un recuento se suman; otro nombre empieza de nuevo.</translation>
  </message>
  <message>
   <source>Pieces of {0}</source>
   <translation>Unidades de {0}</translation>
  </message>
  <message>
   <source>Pieces short: {0}. Pieces to order: {1}.</source>
   <translation>Piezas que faltan: {0}. Piezas para pedir: {1}.</translation>
  </message>
  <message>
   <source>Pipe drawing of the station</source>
   <translation>Plano de tuberías de la estación</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Lugar</translation>
  </message>
  <message>
   <source>Place and reach</source>
   <translation>Lugar y alcance</translation>
  </message>
  <message>
   <source>Place, and what takes parts out of it</source>
   <translation>Lugar, y qué deja piezas fuera</translation>
  </message>
  <message>
   <source>Placement: breakaway makers' usual instructions, common practice</source>
   <translation>Lugar: instrucciones usuales de los fabricantes, práctica común</translation>
  </message>
  <message>
   <source>Places of the work</source>
   <translation>Lugares del trabajo</translation>
  </message>
  <message>
   <source>Plan &amp;with both</source>
   <translation>Planificar &amp;con ambas</translation>
  </message>
  <message>
   <source>Plan as the book does</source>
   <translation>Planificar como el libro</translation>
  </message>
  <message>
   <source>Plan this pos&amp;ition again</source>
   <translation>Planificar otra vez la pos&amp;ición</translation>
  </message>
  <message>
   <source>Plan this position &amp;again</source>
   <translation>Planificar &amp;otra vez</translation>
  </message>
  <message>
   <source>Plan with {0}</source>
   <translation>Planificar con {0}</translation>
  </message>
  <message>
   <source>Planned</source>
   <translation>Planificado</translation>
  </message>
  <message>
   <source>Planned now</source>
   <translation>Planificado ahora</translation>
  </message>
  <message>
   <source>Planned with by</source>
   <translation>La usa</translation>
  </message>
  <message>
   <source>Planned, agreed and built side by side</source>
   <translation>Planificado, acordado y construido lado a lado</translation>
  </message>
  <message>
   <source>Planning all positions…</source>
   <translation>Planificando todas las posiciones…</translation>
  </message>
  <message>
   <source>Planning and reading what hangs there…</source>
   <translation>Planificando y leyendo lo que cuelga allí…</translation>
  </message>
  <message>
   <source>Planning survey {0} of {1}…</source>
   <translation>Planificando el levantamiento {0} de {1}…</translation>
  </message>
  <message>
   <source>Planning the station under both…</source>
   <translation>Se planifica la estación con ambas…</translation>
  </message>
  <message>
   <source>Planning this position…</source>
   <translation>Planificando esta posición…</translation>
  </message>
  <message>
   <source>Planning {done} of {total} positions over all options…</source>
   <translation>Planificando {done} de {total} posiciones de todas las opciones…</translation>
  </message>
  <message>
   <source>Planning…</source>
   <translation>Planificando…</translation>
  </message>
  <message>
   <source>Plate and figures of the chosen part…</source>
   <translation>Placa y cifras de la pieza elegida…</translation>
  </message>
  <message>
   <source>Plate or maker's sheet</source>
   <translation>Placa u hoja del fabricante</translation>
  </message>
  <message>
   <source>Point (1.50)</source>
   <translation>Punto (1.50)</translation>
  </message>
  <message>
   <source>Pos&amp;ition today</source>
   <translation>Posición &amp;hoy</translation>
  </message>
  <message>
   <source>Position</source>
   <translation>Posición</translation>
  </message>
  <message>
   <source>Position &amp;above</source>
   <translation>Posición de arri&amp;ba</translation>
  </message>
  <message>
   <source>Position b&amp;elow</source>
   <translation>Posición de aba&amp;jo</translation>
  </message>
  <message>
   <source>Position {0}</source>
   <translation>Posición {0}</translation>
  </message>
  <message>
   <source>Position {0} today</source>
   <translation>Posición {0} hoy</translation>
  </message>
  <message>
   <source>Position {0}: an entry outside its limit is marked at once.</source>
   <translation>Posición {0}: una entrada fuera de su límite se marca enseguida.</translation>
  </message>
  <message>
   <source>Position, dispenser or site.</source>
   <translation>Posición, surtidor o estación.</translation>
  </message>
  <message>
   <source>Positions</source>
   <translation>Posiciones</translation>
  </message>
  <message>
   <source>Positions and parts</source>
   <translation>Posiciones y piezas</translation>
  </message>
  <message>
   <source>Positions looked at</source>
   <translation>Posiciones revisadas</translation>
  </message>
  <message>
   <source>Positions of the survey that the table does not hold go</source>
   <translation>Las posiciones del levantamiento que la tabla no tiene se quitan</translation>
  </message>
  <message>
   <source>Positions on the parts list</source>
   <translation>Posiciones de la lista de piezas</translation>
  </message>
  <message>
   <source>Positions that get the answers</source>
   <translation>Posiciones que reciben las respuestas</translation>
  </message>
  <message>
   <source>Positions that the answer is for</source>
   <translation>Posiciones para las que vale la respuesta</translation>
  </message>
  <message>
   <source>Positions that the answers are for</source>
   <translation>Posiciones para las que valen las respuestas</translation>
  </message>
  <message>
   <source>Positions to agree on</source>
   <translation>Posiciones por acordar</translation>
  </message>
  <message>
   <source>Positions with a dated record are counted; a row leads to its station.</source>
   <translation>Se cuentan las posiciones con registro fechado; una fila lleva a su estación.</translation>
  </message>
  <message>
   <source>Pounds</source>
   <translation>Libras</translation>
  </message>
  <message>
   <source>Pr&amp;ices</source>
   <translation>Precios</translation>
  </message>
  <message>
   <source>Preferences</source>
   <translation>Preferencias</translation>
  </message>
  <message>
   <source>Prepay</source>
   <translation>Prepago</translation>
  </message>
  <message>
   <source>Prepay, card or console. A latched nozzle would then spill at the next start.</source>
   <translation>Prepago, tarjeta o consola. Una pistola trabada derramaría al siguiente arranque.</translation>
  </message>
  <message>
   <source>Pressure and flow</source>
   <translation>Presión y caudal</translation>
  </message>
  <message>
   <source>Pressure at the outlet while flow&amp;ing</source>
   <translation>Presión en la salida con ca&amp;udal</translation>
  </message>
  <message>
   <source>Price</source>
   <translation>Precio</translation>
  </message>
  <message>
   <source>Price far from the usual</source>
   <translation>Precio lejos de lo habitual</translation>
  </message>
  <message>
   <source>Price follows</source>
   <translation>Precio pendiente</translation>
  </message>
  <message>
   <source>Price is &amp;for one</source>
   <translation>El precio es po&amp;r</translation>
  </message>
  <message>
   <source>Price list</source>
   <translation>Lista de precios</translation>
  </message>
  <message>
   <source>Price list ends soon</source>
   <translation>La lista de precios termina pronto</translation>
  </message>
  <message>
   <source>Price list has ended</source>
   <translation>La lista de precios terminó</translation>
  </message>
  <message>
   <source>Price list {0}</source>
   <translation>Lista de precios {0}</translation>
  </message>
  <message>
   <source>Price list {0}: {1} prices.</source>
   <translation>Lista de precios {0}: {1} precios.</translation>
  </message>
  <message>
   <source>Price lists</source>
   <translation>Listas de precios</translation>
  </message>
  <message>
   <source>Price lists of the edition in hand come here; a file of them can be read in.</source>
   <translation>Aquí aparecen las listas de precios de la edición elegida; se puede leer un archivo de ellas.</translation>
  </message>
  <message>
   <source>Price of an hour of &amp;work</source>
   <translation>Precio de una hora de tra&amp;bajo</translation>
  </message>
  <message>
   <source>Price of one</source>
   <translation>Precio de una</translation>
  </message>
  <message>
   <source>Price of one &amp;more part number</source>
   <translation>Precio de un número de pie&amp;za más</translation>
  </message>
  <message>
   <source>Price of one foot or meter</source>
   <translation>Precio de un pie o metro</translation>
  </message>
  <message>
   <source>Price of one piece</source>
   <translation>Precio de una pieza</translation>
  </message>
  <message>
   <source>Price of the article</source>
   <translation>Precio del artículo</translation>
  </message>
  <message>
   <source>Price of the liq&amp;uid</source>
   <translation>Precio del lí&amp;quido</translation>
  </message>
  <message>
   <source>Price of the set</source>
   <translation>Precio del conjunto</translation>
  </message>
  <message>
   <source>Price, sets chosen together</source>
   <translation>Precio, conjuntos elegidos en común</translation>
  </message>
  <message>
   <source>Price, {0}</source>
   <translation>Precio, {0}</translation>
  </message>
  <message>
   <source>Price, {currency}</source>
   <translation>Precio, {currency}</translation>
  </message>
  <message>
   <source>Prices and where they come from</source>
   <translation>Precios y de dónde vienen</translation>
  </message>
  <message>
   <source>Prices are shown once there is a quotation.</source>
   <translation>Los precios se muestran cuando hay una cotización.</translation>
  </message>
  <message>
   <source>Prices by name</source>
   <translation>Precios con responsable</translation>
  </message>
  <message>
   <source>Prices missing in these amounts</source>
   <translation>Precios que faltan en estos importes</translation>
  </message>
  <message>
   <source>Prices that follow</source>
   <translation>Precios pendientes</translation>
  </message>
  <message>
   <source>Printed as written.</source>
   <translation>Impreso como está escrito.</translation>
  </message>
  <message>
   <source>Printed beside them in the report.</source>
   <translation>Se imprime junto a ellas en el informe.</translation>
  </message>
  <message>
   <source>Printed in full.</source>
   <translation>Impreso entero.</translation>
  </message>
  <message>
   <source>Printed in the report.</source>
   <translation>Impreso en el informe.</translation>
  </message>
  <message>
   <source>Printed on the bill with this position.</source>
   <translation>Impreso en la lista con esta posición.</translation>
  </message>
  <message>
   <source>Printed on the bill.</source>
   <translation>Impreso en la lista.</translation>
  </message>
  <message>
   <source>Print…</source>
   <translation>Imprimir…</translation>
  </message>
  <message>
   <source>Pro&amp;gram of several sites…</source>
   <translation>Pro&amp;grama de varias estaciones…</translation>
  </message>
  <message>
   <source>Program of several sites</source>
   <translation>Programa de varias estaciones</translation>
  </message>
  <message>
   <source>Pu&amp;ll of the cord</source>
   <translation>&amp;Tirón del cable</translation>
  </message>
  <message>
   <source>Public texts, each with its status</source>
   <translation>Textos públicos, cada uno con su estado</translation>
  </message>
  <message>
   <source>Publish the draft as the next edition</source>
   <translation>Publicar el borrador como edición siguiente</translation>
  </message>
  <message>
   <source>Published by</source>
   <translation>Publicada por</translation>
  </message>
  <message>
   <source>Published: {0}</source>
   <translation>Publicada: {0}</translation>
  </message>
  <message>
   <source>Pull that the outlet &amp;bears</source>
   <translation>Tirón que a&amp;guanta la salida</translation>
  </message>
  <message>
   <source>Put a survey file into the book and open it.</source>
   <translation>Poner un archivo de levantamiento en el libro y abrirlo.</translation>
  </message>
  <message>
   <source>Put away</source>
   <translation>Guardar el aviso</translation>
  </message>
  <message>
   <source>Put into the &amp;draft</source>
   <translation>P&amp;oner en el borrador</translation>
  </message>
  <message>
   <source>Put it back</source>
   <translation>Devolverlo</translation>
  </message>
  <message>
   <source>Put this backup in the place of the book? What was saved after it is then no longer in the book. What lies there now is set aside beside it and can be put back.</source>
   <translation>¿Poner este respaldo en el lugar del libro? Lo que se guardó después ya no estará en el libro. Lo que hay ahora se aparta a su lado y se puede devolver.</translation>
  </message>
  <message>
   <source>Put this price, your name and reason into the terms, and quote again; other parts may be cheaper then</source>
   <translation>Poner este precio, su nombre y el motivo en las condiciones, y volver a cotizar; otras piezas pueden salir entonces más baratas</translation>
  </message>
  <message>
   <source>Qty</source>
   <translation>Cant.</translation>
  </message>
  <message>
   <source>Quantity</source>
   <translation>Cantidad</translation>
  </message>
  <message>
   <source>Quantity ordered</source>
   <translation>Cantidad pedida</translation>
  </message>
  <message>
   <source>Question</source>
   <translation>Pregunta</translation>
  </message>
  <message>
   <source>Question whose answer is changed</source>
   <translation>Pregunta cuya respuesta cambia</translation>
  </message>
  <message>
   <source>Question whose answers are compared</source>
   <translation>Pregunta cuyas respuestas se comparan</translation>
  </message>
  <message>
   <source>Quotation</source>
   <translation>Cotización</translation>
  </message>
  <message>
   <source>Quotation and part</source>
   <translation>Cotización y pieza</translation>
  </message>
  <message>
   <source>Quotation: on your terms, drafted, issued and answered. An accepted one agrees its sets.</source>
   <translation>Cotización: con sus condiciones, en borrador, emitida y respondida. Una aceptada acuerda sus conjuntos.</translation>
  </message>
  <message>
   <source>Quotations in the book</source>
   <translation>Cotizaciones del libro</translation>
  </message>
  <message>
   <source>Quotations that a change touches</source>
   <translation>Cotizaciones que toca un cambio</translation>
  </message>
  <message>
   <source>Quotations that are saved in the book come here, whichever station they are for.</source>
   <translation>Aquí aparecen las cotizaciones guardadas en el libro, sean de la estación que sean.</translation>
  </message>
  <message>
   <source>Quote</source>
   <translation>Cotizar</translation>
  </message>
  <message>
   <source>Quote on these terms (Ctrl+Return)</source>
   <translation>Cotizar en estas condiciones (Ctrl+Return)</translation>
  </message>
  <message>
   <source>Quote the marked quotation again: its own survey and terms, prices of today</source>
   <translation>Volver a cotizar la marcada: su levantamiento y condiciones, precios de hoy</translation>
  </message>
  <message>
   <source>Quote the quotation looked at again: its own survey and terms, prices and catalog of today</source>
   <translation>Volver a cotizar la que se mira: su levantamiento y condiciones, precios y catálogo de hoy</translation>
  </message>
  <message>
   <source>Quote the survey that is open, on the terms in hand</source>
   <translation>Cotizar el levantamiento abierto en las condiciones en uso</translation>
  </message>
  <message>
   <source>Quote the survey that is open; or look a quotation up in the book.</source>
   <translation>Cotice el levantamiento abierto, o busque una cotización en el libro.</translation>
  </message>
  <message>
   <source>Quote this surve&amp;y</source>
   <translation>Coti&amp;zar este levantamiento</translation>
  </message>
  <message>
   <source>Quote this survey, issue the quotation, note the answer, revise it.</source>
   <translation>Cotizar este levantamiento, emitir la cotización, anotar la respuesta, revisarla.</translation>
  </message>
  <message>
   <source>Quoted again: it is what the book holds as revision {0}.</source>
   <translation>Cotizada otra vez: es lo que el libro tiene como revisión {0}.</translation>
  </message>
  <message>
   <source>Quoted on the survey as it was before. It has been changed since: quote this survey for that.</source>
   <translation>Cotizada con el levantamiento anterior. Cambió desde entonces: para eso, cotice este levantamiento.</translation>
  </message>
  <message>
   <source>R&amp;ecent files</source>
   <translation>Archi&amp;vos recientes</translation>
  </message>
  <message>
   <source>Rate</source>
   <translation>Tarifa</translation>
  </message>
  <message>
   <source>Rate of an &amp;hour</source>
   <translation>Tarifa por &amp;hora</translation>
  </message>
  <message>
   <source>Ratings</source>
   <translation>Valores nominales</translation>
  </message>
  <message>
   <source>Re&amp;move own rules</source>
   <translation>&amp;Quitar reglas propias</translation>
  </message>
  <message>
   <source>Re&amp;name…</source>
   <translation>Cam&amp;biar nombre…</translation>
  </message>
  <message>
   <source>Re&amp;quote it</source>
   <translation>Volver a co&amp;tizarla</translation>
  </message>
  <message>
   <source>Read a &amp;filled form…</source>
   <translation>Leer &amp;hoja rellenada…</translation>
  </message>
  <message>
   <source>Read a filled form</source>
   <translation>Leer una hoja rellenada</translation>
  </message>
  <message>
   <source>Read a revision</source>
   <translation>Leer una revisión</translation>
  </message>
  <message>
   <source>Read a sto&amp;ck list…</source>
   <translation>Leer e&amp;xistencias…</translation>
  </message>
  <message>
   <source>Read a stock list</source>
   <translation>Leer una lista de existencias</translation>
  </message>
  <message>
   <source>Read a survey file</source>
   <translation>Leer un archivo de levantamiento</translation>
  </message>
  <message>
   <source>Read an exchange file</source>
   <translation>Leer un archivo de intercambio</translation>
  </message>
  <message>
   <source>Read an exchange file of the program into the draft</source>
   <translation>Leer en el borrador un archivo de intercambio del programa</translation>
  </message>
  <message>
   <source>Read and change the terms in hand</source>
   <translation>Leer y cambiar las condiciones en uso</translation>
  </message>
  <message>
   <source>Read as</source>
   <translation>Se lee como</translation>
  </message>
  <message>
   <source>Read as the last table with these titles.</source>
   <translation>Leída como la última tabla con estos títulos.</translation>
  </message>
  <message>
   <source>Read as {0}.</source>
   <translation>Leído como {0}.</translation>
  </message>
  <message>
   <source>Read from &amp;file…</source>
   <translation>Leer &amp;de un archivo…</translation>
  </message>
  <message>
   <source>Read positions from a &amp;table…</source>
   <translation>Leer posiciones de una ta&amp;bla…</translation>
  </message>
  <message>
   <source>Read positions from a table</source>
   <translation>Leer posiciones de una tabla</translation>
  </message>
  <message>
   <source>Read positions from {0}</source>
   <translation>Leer posiciones de {0}</translation>
  </message>
  <message>
   <source>Read revision {0}</source>
   <translation>Leer la revisión {0}</translation>
  </message>
  <message>
   <source>Read the form back: what hangs there is as built, and inspections fall due from then on.</source>
   <translation>Vuelva a leer el formulario: lo que cuelga queda según lo construido, y desde entonces vencen las inspecciones.</translation>
  </message>
  <message>
   <source>Read the limits of a jurisdiction, or copy one and change rows.</source>
   <translation>Leer los límites de una jurisdicción, o copiar una y cambiar filas.</translation>
  </message>
  <message>
   <source>Read the price lists and the open quotations anew</source>
   <translation>Leer de nuevo las listas de precios y las cotizaciones abiertas</translation>
  </message>
  <message>
   <source>Read where</source>
   <translation>Leído en</translation>
  </message>
  <message>
   <source>Reading the open quotations…</source>
   <translation>Leyendo las cotizaciones abiertas…</translation>
  </message>
  <message>
   <source>Reading the table…</source>
   <translation>Leyendo la tabla…</translation>
  </message>
  <message>
   <source>Reading what hangs there…</source>
   <translation>Leyendo lo que cuelga allí…</translation>
  </message>
  <message>
   <source>Reading {0}…</source>
   <translation>Leyendo {0}…</translation>
  </message>
  <message>
   <source>Readings and trials</source>
   <translation>Lecturas y pruebas</translation>
  </message>
  <message>
   <source>Ready stations</source>
   <translation>Estaciones listas</translation>
  </message>
  <message>
   <source>Ready stations with a catalog that is invented: its makers, parts and prices exist nowhere.</source>
   <translation>Estaciones listas con un catálogo inventado: sus fabricantes, piezas y precios no existen en ningún lado.</translation>
  </message>
  <message>
   <source>Ready stations:</source>
   <translation>Estaciones listas:</translation>
  </message>
  <message>
   <source>Ready terms</source>
   <translation>Condiciones listas</translation>
  </message>
  <message>
   <source>Reaso&amp;n</source>
   <translation>M&amp;otivo</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Motivo</translation>
  </message>
  <message>
   <source>Reason for the replacement</source>
   <translation>Motivo de la sustitución</translation>
  </message>
  <message>
   <source>Reason or way out</source>
   <translation>Razón o salida</translation>
  </message>
  <message>
   <source>Reasons</source>
   <translation>Razones</translation>
  </message>
  <message>
   <source>Reasons and ways out</source>
   <translation>Razones y salidas</translation>
  </message>
  <message>
   <source>Received</source>
   <translation>Recibido</translation>
  </message>
  <message>
   <source>Reconnectable ones re&amp;placed</source>
   <translation>Reconectables &amp;sustituidas</translation>
  </message>
  <message>
   <source>Record (P&amp;DF)</source>
   <translation>Registro (P&amp;DF)</translation>
  </message>
  <message>
   <source>Record an installed part</source>
   <translation>Registrar una pieza instalada</translation>
  </message>
  <message>
   <source>Record the planned set as installed</source>
   <translation>Registrar el conjunto planificado como instalado</translation>
  </message>
  <message>
   <source>Reel</source>
   <translation>Carrete</translation>
  </message>
  <message>
   <source>Reel drum diameter</source>
   <translation>Diámetro del tambor</translation>
  </message>
  <message>
   <source>Reel turns left</source>
   <translation>Vueltas que quedan en el carrete</translation>
  </message>
  <message>
   <source>Registration or tax number, printed as written.</source>
   <translation>Registro o número fiscal, impreso como está escrito.</translation>
  </message>
  <message>
   <source>Relation</source>
   <translation>Relación</translation>
  </message>
  <message>
   <source>Remark</source>
   <translation>Observación</translation>
  </message>
  <message>
   <source>Remarks</source>
   <translation>Observaciones</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Quitar</translation>
  </message>
  <message>
   <source>Remove a filler</source>
   <translation>Quitar una boca de llenado</translation>
  </message>
  <message>
   <source>Remove an installed part from the list</source>
   <translation>Quitar de la lista una pieza instalada</translation>
  </message>
  <message>
   <source>Remove chosen rows</source>
   <translation>Quitar filas</translation>
  </message>
  <message>
   <source>Remove further filler {number}</source>
   <translation>Quitar la boca de llenado adicional {number}</translation>
  </message>
  <message>
   <source>Remove it &amp;from the list</source>
   <translation>&amp;Quitarlo de la lista</translation>
  </message>
  <message>
   <source>Remove it from the list</source>
   <translation>Quitarlo de la lista</translation>
  </message>
  <message>
   <source>Remove the chosen rows (Ctrl+Delete)</source>
   <translation>Quitar las filas elegidas (Ctrl+Delete)</translation>
  </message>
  <message>
   <source>Remove the rules “{title}” for good?</source>
   <translation>¿Quitar para siempre las reglas «{title}»?</translation>
  </message>
  <message>
   <source>Remove this filler</source>
   <translation>Quitar esta boca de llenado</translation>
  </message>
  <message>
   <source>Remove {0}</source>
   <translation>Quitar {0}</translation>
  </message>
  <message>
   <source>Remove “{name}” from the list? Its past saves stay in the database.</source>
   <translation>¿Quitar «{name}» de la lista? Lo guardado antes queda en la base de datos.</translation>
  </message>
  <message>
   <source>Removed</source>
   <translation>Quitado</translation>
  </message>
  <message>
   <source>Removed here</source>
   <translation>Quitado aquí</translation>
  </message>
  <message>
   <source>Rename the position</source>
   <translation>Cambiar el nombre de la posición</translation>
  </message>
  <message>
   <source>Rename {0}</source>
   <translation>Cambiar el nombre de {0}</translation>
  </message>
  <message>
   <source>Repairs</source>
   <translation>Reparaciones</translation>
  </message>
  <message>
   <source>Repairs ({0})</source>
   <translation>Reparaciones ({0})</translation>
  </message>
  <message>
   <source>Repeat dispenser {0}</source>
   <translation>Repetir el surtidor {0}</translation>
  </message>
  <message>
   <source>Repeat the d&amp;ispenser…</source>
   <translation>Repetir el s&amp;urtidor…</translation>
  </message>
  <message>
   <source>Repeat the positions of one side on the other.</source>
   <translation>Repetir las posiciones de un lado en el otro.</translation>
  </message>
  <message>
   <source>Replace a word wherever it stands in the column</source>
   <translation>Sustituir una palabra en toda la columna</translation>
  </message>
  <message>
   <source>Replace what is recorded?</source>
   <translation>¿Sustituir lo registrado?</translation>
  </message>
  <message>
   <source>Report of the chosen row</source>
   <translation>Informe de la fila elegida</translation>
  </message>
  <message>
   <source>Report of the fault</source>
   <translation>Informe de la falla</translation>
  </message>
  <message>
   <source>Resistance read</source>
   <translation>Resistencia leída</translation>
  </message>
  <message>
   <source>Restore a backup…</source>
   <translation>Restaurar un respaldo…</translation>
  </message>
  <message>
   <source>Restore from a &amp;file…</source>
   <translation>Restaurar de un &amp;archivo…</translation>
  </message>
  <message>
   <source>Restore from a file</source>
   <translation>Restaurar de un archivo</translation>
  </message>
  <message>
   <source>Resu&amp;lt</source>
   <translation>&amp;Resultado</translation>
  </message>
  <message>
   <source>Retractor</source>
   <translation>Retractor</translation>
  </message>
  <message>
   <source>Retractor clamp fraction</source>
   <translation>Fracción de la abrazadera</translation>
  </message>
  <message>
   <source>Retractor force</source>
   <translation>Fuerza del retractor</translation>
  </message>
  <message>
   <source>Retractor height</source>
   <translation>Altura del retractor</translation>
  </message>
  <message>
   <source>Retrieval</source>
   <translation>Recogida</translation>
  </message>
  <message>
   <source>Return or a double click opens one</source>
   <translation>Intro o doble clic abre uno</translation>
  </message>
  <message>
   <source>Returned</source>
   <translation>Devuelto</translation>
  </message>
  <message>
   <source>Rev.</source>
   <translation>Rev.</translation>
  </message>
  <message>
   <source>Revision after</source>
   <translation>Revisión posterior</translation>
  </message>
  <message>
   <source>Revision before</source>
   <translation>Revisión anterior</translation>
  </message>
  <message>
   <source>Revision of the quotation</source>
   <translation>Revisión de la cotización</translation>
  </message>
  <message>
   <source>Revision {0} as it was sent on {1}; {2}.</source>
   <translation>Revisión {0} como se envió el {1}; {2}.</translation>
  </message>
  <message>
   <source>Revision {0} is ordered and stands as it is.</source>
   <translation>La revisión {0} está pedida y queda como está.</translation>
  </message>
  <message>
   <source>Revision {0}, never issued; {1}.</source>
   <translation>Revisión {0}, nunca emitida; {1}.</translation>
  </message>
  <message>
   <source>Row {row} left out</source>
   <translation>Fila {row} omitida</translation>
  </message>
  <message>
   <source>Row {row}, {field}: “{was}” becomes “{to}”</source>
   <translation>Fila {row}, {field}: “{was}” pasa a “{to}”</translation>
  </message>
  <message>
   <source>Rows of the local rules</source>
   <translation>Filas de las reglas locales</translation>
  </message>
  <message>
   <source>Rows of the table</source>
   <translation>Filas de la tabla</translation>
  </message>
  <message>
   <source>Rule tables</source>
   <translation>Tablas de reglas</translation>
  </message>
  <message>
   <source>Rules</source>
   <translation>Reglas</translation>
  </message>
  <message>
   <source>Rules of</source>
   <translation>Reglas de</translation>
  </message>
  <message>
   <source>S&amp;tanding</source>
   <translation>&amp;Situación</translation>
  </message>
  <message>
   <source>S&amp;top</source>
   <translation>&amp;Parar</translation>
  </message>
  <message>
   <source>S&amp;urvey, position by position</source>
   <translation>L&amp;evantamiento, posición por posición</translation>
  </message>
  <message>
   <source>Sa&amp;ve as it lies in the book…</source>
   <translation>Guardar tal como está en el li&amp;bro…</translation>
  </message>
  <message>
   <source>Same &amp;product</source>
   <translation>Mismo &amp;producto</translation>
  </message>
  <message>
   <source>Save</source>
   <translation>Guardar</translation>
  </message>
  <message>
   <source>Save &amp;CSV…</source>
   <translation>Guardar C&amp;SV…</translation>
  </message>
  <message>
   <source>Save &amp;XLSX…</source>
   <translation>Guardar &amp;XLSX…</translation>
  </message>
  <message>
   <source>Save &amp;again</source>
   <translation>&amp;Guardar otra vez</translation>
  </message>
  <message>
   <source>Save &amp;all…</source>
   <translation>Guardar to&amp;dos…</translation>
  </message>
  <message>
   <source>Save &amp;as CSV…</source>
   <translation>G&amp;uardar como CSV…</translation>
  </message>
  <message>
   <source>Save &amp;calendar…</source>
   <translation>Guardar &amp;calendario…</translation>
  </message>
  <message>
   <source>Save &amp;text…</source>
   <translation>Guardar t&amp;exto…</translation>
  </message>
  <message>
   <source>Save &amp;workbook…</source>
   <translation>Guardar libro de &amp;hojas…</translation>
  </message>
  <message>
   <source>Save PD&amp;F…</source>
   <translation>Guardar PD&amp;F…</translation>
  </message>
  <message>
   <source>Save a &amp;calendar…</source>
   <translation>Guardar un &amp;calendario…</translation>
  </message>
  <message>
   <source>Save a ta&amp;ble…</source>
   <translation>Guardar una ta&amp;bla…</translation>
  </message>
  <message>
   <source>Save again</source>
   <translation>Guardar de nuevo</translation>
  </message>
  <message>
   <source>Save as a file…</source>
   <translation>Guardar como archivo…</translation>
  </message>
  <message>
   <source>Save c&amp;alendar…</source>
   <translation>&amp;Guardar calendario…</translation>
  </message>
  <message>
   <source>Save in the boo&amp;k</source>
   <translation>Guardar en el li&amp;bro</translation>
  </message>
  <message>
   <source>Save it in the book as a draft.</source>
   <translation>Guárdela en el libro como borrador.</translation>
  </message>
  <message>
   <source>Save it: it takes the place of the draft in the book.</source>
   <translation>Guárdela: ocupa el lugar del borrador del libro.</translation>
  </message>
  <message>
   <source>Save it: revision {0} opens as a draft, what was sent stays.</source>
   <translation>Guárdela: la revisión {0} se abre como borrador, lo enviado se queda.</translation>
  </message>
  <message>
   <source>Save ta&amp;ble…</source>
   <translation>Guardar ta&amp;bla…</translation>
  </message>
  <message>
   <source>Save the bill</source>
   <translation>Guardar la lista</translation>
  </message>
  <message>
   <source>Save the form for a ta&amp;blet…</source>
   <translation>Guardar la hoja para una ta&amp;bleta…</translation>
  </message>
  <message>
   <source>Save the picture</source>
   <translation>Guardar la imagen</translation>
  </message>
  <message>
   <source>Save the re&amp;cord</source>
   <translation>&amp;Guardar el registro</translation>
  </message>
  <message>
   <source>Save the terms</source>
   <translation>Guardar las condiciones</translation>
  </message>
  <message>
   <source>Save this ro&amp;w</source>
   <translation>&amp;Guardar esta fila</translation>
  </message>
  <message>
   <source>Saved as {path}</source>
   <translation>Guardado como {path}</translation>
  </message>
  <message>
   <source>Saved as {path}.</source>
   <translation>Guardado como {path}.</translation>
  </message>
  <message>
   <source>Saved as {path}. Your mail program is asked to open it.</source>
   <translation>Guardado como {path}. Se pide a su programa de correo que lo abra.</translation>
  </message>
  <message>
   <source>Saved as {path}; no program here opens it.</source>
   <translation>Guardado como {path}; aquí ningún programa lo abre.</translation>
  </message>
  <message>
   <source>Saved.</source>
   <translation>Guardado.</translation>
  </message>
  <message>
   <source>Saves</source>
   <translation>Ahorra</translation>
  </message>
  <message>
   <source>Saving…</source>
   <translation>Guardando…</translation>
  </message>
  <message>
   <source>Say &amp;why these parts</source>
   <translation>Decir por &amp;qué estas piezas</translation>
  </message>
  <message>
   <source>Say what this position sells, for what, and whether vapor is recovered. Until then it is not quoted.</source>
   <translation>Diga qué vende esta posición, para qué, y si se recupera vapor. Hasta entonces no se cotiza.</translation>
  </message>
  <message>
   <source>Sc&amp;ope</source>
   <translation>&amp;Alcance</translation>
  </message>
  <message>
   <source>Scan</source>
   <translation>Escanear</translation>
  </message>
  <message>
   <source>Scan a code or type a part number, then Return</source>
   <translation>Escanee un código o escriba un número, luego Intro</translation>
  </message>
  <message>
   <source>Scanned code of a sheet</source>
   <translation>Código escaneado de una hoja</translation>
  </message>
  <message>
   <source>Scope and conditions</source>
   <translation>Alcance y condiciones</translation>
  </message>
  <message>
   <source>Se&amp;veral answers</source>
   <translation>&amp;Varias respuestas</translation>
  </message>
  <message>
   <source>Search entries</source>
   <translation>Buscar entradas</translation>
  </message>
  <message>
   <source>Search everything</source>
   <translation>Buscar en todo</translation>
  </message>
  <message>
   <source>Search old numbers</source>
   <translation>Buscar números antiguos</translation>
  </message>
  <message>
   <source>Search quotations</source>
   <translation>Buscar cotizaciones</translation>
  </message>
  <message>
   <source>Search the manual</source>
   <translation>Buscar en el manual</translation>
  </message>
  <message>
   <source>See every set that no other outdoes in price, lead time, flow and more, and take one of them.</source>
   <translation>Ver cada conjunto que ningún otro supera en precio, plazo, caudal y más, y tomar uno de ellos.</translation>
  </message>
  <message>
   <source>See the figures in the report</source>
   <translation>Vea las cifras del informe</translation>
  </message>
  <message>
   <source>See what another blend, duty, outlet, rule or catalog would do to sets, checks, parts and money.</source>
   <translation>Ver qué harían otra mezcla, uso, salida, norma o catálogo con conjuntos, comprobaciones, piezas y dinero.</translation>
  </message>
  <message>
   <source>Seen on site</source>
   <translation>Visto en el sitio</translation>
  </message>
  <message>
   <source>Sell made &amp;up…</source>
   <translation>Vender montado…</translation>
  </message>
  <message>
   <source>Selling</source>
   <translation>Venta</translation>
  </message>
  <message>
   <source>Semicolon ( ; )</source>
   <translation>Punto y coma ( ; )</translation>
  </message>
  <message>
   <source>Sent to the printer.</source>
   <translation>Enviado a la impresora.</translation>
  </message>
  <message>
   <source>Sequence</source>
   <translation>Secuencia</translation>
  </message>
  <message>
   <source>Service lives</source>
   <translation>Vidas útiles</translation>
  </message>
  <message>
   <source>Set</source>
   <translation>Conjunto</translation>
  </message>
  <message>
   <source>Set a f&amp;ield…</source>
   <translation>Fi&amp;jar un campo…</translation>
  </message>
  <message>
   <source>Set for the part</source>
   <translation>Fijar para la pieza</translation>
  </message>
  <message>
   <source>Set in hand</source>
   <translation>Conjunto actual</translation>
  </message>
  <message>
   <source>Set of position {0}</source>
   <translation>Conjunto de la posición {0}</translation>
  </message>
  <message>
   <source>Set sold made up</source>
   <translation>Conjunto vendido montado</translation>
  </message>
  <message>
   <source>Set, list price</source>
   <translation>Conjunto, precio de lista</translation>
  </message>
  <message>
   <source>Set, ± {currency}</source>
   <translation>± {currency}</translation>
  </message>
  <message>
   <source>Sets</source>
   <translation>Conjuntos</translation>
  </message>
  <message>
   <source>Sets are chosen together so that parts and this price for each part number cost least; empty: each position is chosen for itself.</source>
   <translation>Los conjuntos se eligen en común para que las piezas y este precio por número de pieza cuesten lo mínimo; vacío: cada posición se elige por sí misma.</translation>
  </message>
  <message>
   <source>Sets looked at</source>
   <translation>Conjuntos examinados</translation>
  </message>
  <message>
   <source>Sets of the position side by side</source>
   <translation>Conjuntos de la posición lado a lado</translation>
  </message>
  <message>
   <source>Sets of this report: {0}. Other papers: {1}.</source>
   <translation>Conjuntos de este informe: {0}. Otros documentos: {1}.</translation>
  </message>
  <message>
   <source>Sets shown</source>
   <translation>Conjuntos mostrados</translation>
  </message>
  <message>
   <source>Sets shown on pages and papers</source>
   <translation>Conjuntos mostrados en páginas y documentos</translation>
  </message>
  <message>
   <source>Sets that differ</source>
   <translation>Conjuntos que difieren</translation>
  </message>
  <message>
   <source>Sets that differ ({0})</source>
   <translation>Conjuntos que difieren ({0})</translation>
  </message>
  <message>
   <source>Sets: {0}</source>
   <translation>Conjuntos: {0}</translation>
  </message>
  <message>
   <source>Sh&amp;ort bill</source>
   <translation>Lista &amp;breve</translation>
  </message>
  <message>
   <source>Share of gasoline</source>
   <translation>Parte de la gasolina</translation>
  </message>
  <message>
   <source>Share of gasoline into vehicles with onboard recovery, year by year; it goes before the table.</source>
   <translation>Parte de la gasolina hacia vehículos con recuperación a bordo, año por año; va antes que la tabla.</translation>
  </message>
  <message>
   <source>Share of gasoline pumped through vacuum assist</source>
   <translation>Parte de gasolina surtida con aspiración</translation>
  </message>
  <message>
   <source>Sheet</source>
   <translation>Hoja</translation>
  </message>
  <message>
   <source>Sho&amp;w again</source>
   <translation>&amp;Mostrar otra vez</translation>
  </message>
  <message>
   <source>Short</source>
   <translation>Falta</translation>
  </message>
  <message>
   <source>Short name of the copy</source>
   <translation>Nombre corto de la copia</translation>
  </message>
  <message>
   <source>Shortest</source>
   <translation>La más corta</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Mostrar</translation>
  </message>
  <message>
   <source>Show &amp;the station</source>
   <translation>&amp;Mostrar la estación</translation>
  </message>
  <message>
   <source>Show quotations of this status</source>
   <translation>Mostrar cotizaciones de este estado</translation>
  </message>
  <message>
   <source>Show rows that hold these words</source>
   <translation>Mostrar filas que contienen estas palabras</translation>
  </message>
  <message>
   <source>Show rows that hold…</source>
   <translation>Mostrar filas que contienen…</translation>
  </message>
  <message>
   <source>Show the whole drawing.</source>
   <translation>Mostrar el dibujo entero.</translation>
  </message>
  <message>
   <source>Show theirs</source>
   <translation>Mostrar el ajeno</translation>
  </message>
  <message>
   <source>Show those alone whose customer is to be asked again by today</source>
   <translation>Mostrar solo aquellas cuyo cliente hay que volver a consultar hasta hoy</translation>
  </message>
  <message>
   <source>Show {0}</source>
   <translation>Mostrar {0}</translation>
  </message>
  <message>
   <source>Sideways</source>
   <translation>De lado</translation>
  </message>
  <message>
   <source>Signed (type the name)</source>
   <translation>Firmado (escriba el nombre)</translation>
  </message>
  <message>
   <source>Site</source>
   <translation>Estación</translation>
  </message>
  <message>
   <source>Site a&amp;nswers</source>
   <translation>Resp&amp;uestas</translation>
  </message>
  <message>
   <source>Site data</source>
   <translation>Datos de la estación</translation>
  </message>
  <message>
   <source>Sites converted</source>
   <translation>Estaciones convertidas</translation>
  </message>
  <message>
   <source>Sites of the program</source>
   <translation>Estaciones del programa</translation>
  </message>
  <message>
   <source>Size</source>
   <translation>Medida</translation>
  </message>
  <message>
   <source>Size for this thread: {0}.</source>
   <translation>Medida para esta rosca: {0}.</translation>
  </message>
  <message>
   <source>Sold after years</source>
   <translation>Se vende a los (años)</translation>
  </message>
  <message>
   <source>Some codes allow a longer hose there.</source>
   <translation>Algunos códigos permiten ahí una manguera más larga.</translation>
  </message>
  <message>
   <source>Sort by it, falling</source>
   <translation>Ordenar por ella, descendente</translation>
  </message>
  <message>
   <source>Sort by it, rising</source>
   <translation>Ordenar por ella, ascendente</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Fuente</translation>
  </message>
  <message>
   <source>Spares</source>
   <translation>Repuestos</translation>
  </message>
  <message>
   <source>Spares and stock</source>
   <translation>Repuestos y existencias</translation>
  </message>
  <message>
   <source>Specifies the hanging hardware of motor-fuel dispensers: what fits, why, and what it costs.</source>
   <translation>Especifica el conjunto colgante de surtidores de combustible: qué sirve, por qué y cuánto cuesta.</translation>
  </message>
  <message>
   <source>Spouts: SAE J285; the flow wanted is common practice</source>
   <translation>Picos: SAE J285; el caudal deseado es práctica común</translation>
  </message>
  <message>
   <source>Spring balance on site, or the maker's data</source>
   <translation>Dinamómetro en el sitio, o datos del fabricante</translation>
  </message>
  <message>
   <source>St&amp;ation on one page</source>
   <translation>La estació&amp;n en una página</translation>
  </message>
  <message>
   <source>Staff on site</source>
   <translation>Con personal</translation>
  </message>
  <message>
   <source>Standing</source>
   <translation>Situación</translation>
  </message>
  <message>
   <source>Stands beside every step that you take</source>
   <translation>Queda junto a cada paso que usted da</translation>
  </message>
  <message>
   <source>Start</source>
   <translation>Inicio</translation>
  </message>
  <message>
   <source>Start &amp;view</source>
   <translation>V&amp;ista de inicio</translation>
  </message>
  <message>
   <source>Start a survey of another site.</source>
   <translation>Empezar el levantamiento de otra estación.</translation>
  </message>
  <message>
   <source>State code texts; local code</source>
   <translation>Textos de códigos estatales; código local</translation>
  </message>
  <message>
   <source>Status</source>
   <translation>Estado</translation>
  </message>
  <message>
   <source>Stays and g&amp;oes</source>
   <translation>Queda y sal&amp;e</translation>
  </message>
  <message>
   <source>Step</source>
   <translation>Paso</translation>
  </message>
  <message>
   <source>Step of &amp;unit prices</source>
   <translation>Paso de los precios &amp;unitarios</translation>
  </message>
  <message>
   <source>Step of the &amp;total</source>
   <translation>Paso del &amp;total</translation>
  </message>
  <message>
   <source>Step of the amount payable.</source>
   <translation>Paso del importe a pagar.</translation>
  </message>
  <message>
   <source>Step {0}: {1}</source>
   <translation>Paso {0}: {1}</translation>
  </message>
  <message>
   <source>Steps of the quotation</source>
   <translation>Pasos de la cotización</translation>
  </message>
  <message>
   <source>Steps taken</source>
   <translation>Pasos dados</translation>
  </message>
  <message>
   <source>Steps taken since the survey was opened</source>
   <translation>Pasos dados desde que se abrió el levantamiento</translation>
  </message>
  <message>
   <source>Still to save, at most</source>
   <translation>Por guardar, como máximo</translation>
  </message>
  <message>
   <source>Sto&amp;p</source>
   <translation>De&amp;tener</translation>
  </message>
  <message>
   <source>Stock list</source>
   <translation>Lista de existencias</translation>
  </message>
  <message>
   <source>Stock list: part number and quantity, one part a line</source>
   <translation>Existencias: n.º de pieza y cantidad, una pieza por línea</translation>
  </message>
  <message>
   <source>Stock, sets chosen together</source>
   <translation>Existencias, conjuntos elegidos en común</translation>
  </message>
  <message>
   <source>Stocked parts in place of the missing one</source>
   <translation>Piezas en existencia en lugar de la que falta</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Parar</translation>
  </message>
  <message>
   <source>Stopped.</source>
   <translation>Detenido.</translation>
  </message>
  <message>
   <source>Stopped. What was answered is not asked again.</source>
   <translation>Parado. Lo contestado no se pregunta de nuevo.</translation>
  </message>
  <message>
   <source>Stopped. What was worked out is kept; Calculate goes on from there.</source>
   <translation>Detenido. Lo calculado se conserva; «Calcular» sigue desde ahí.</translation>
  </message>
  <message>
   <source>Stopped: nothing was changed.</source>
   <translation>Detenido: no se cambió nada.</translation>
  </message>
  <message>
   <source>Stopped; nothing was quoted.</source>
   <translation>Parado; no se cotizó nada.</translation>
  </message>
  <message>
   <source>Stopped; there may be more.</source>
   <translation>Parado; puede haber más.</translation>
  </message>
  <message>
   <source>Subjects of the terms</source>
   <translation>Temas de las condiciones</translation>
  </message>
  <message>
   <source>Such as 12.50 USD; 11.00 EUR.</source>
   <translation>Por ejemplo 12.50 USD; 11.00 EUR.</translation>
  </message>
  <message>
   <source>Such as 15 m3. Decides the pressure that a tightness test allows.</source>
   <translation>Como 15 m3. Decide la presión que admite una prueba de estanqueidad.</translation>
  </message>
  <message>
   <source>Such as 15; not for boats.</source>
   <translation>Como 15; no para barcos.</translation>
  </message>
  <message>
   <source>Such as 20.</source>
   <translation>Como 20.</translation>
  </message>
  <message>
   <source>Such as 5700 m3. Without it masses are not computed.</source>
   <translation>Como 5700 m3. Sin ella no se calculan masas.</translation>
  </message>
  <message>
   <source>Superseded and discontinued ones.</source>
   <translation>Las sustituidas y las descontinuadas.</translation>
  </message>
  <message>
   <source>Superseded by</source>
   <translation>Sustituido por</translation>
  </message>
  <message>
   <source>Superseded by maker</source>
   <translation>Sustituido por fabricante</translation>
  </message>
  <message>
   <source>Supplier</source>
   <translation>Proveedor</translation>
  </message>
  <message>
   <source>Supplier of the price list</source>
   <translation>Proveedor de la lista de precios</translation>
  </message>
  <message>
   <source>Supplier's sheet</source>
   <translation>Hoja del proveedor</translation>
  </message>
  <message>
   <source>Suppliers of the order</source>
   <translation>Proveedores del pedido</translation>
  </message>
  <message>
   <source>Suppliers…</source>
   <translation>Proveedores…</translation>
  </message>
  <message>
   <source>Supply pressure</source>
   <translation>Presión en salida</translation>
  </message>
  <message>
   <source>Survey</source>
   <translation>Levantamiento</translation>
  </message>
  <message>
   <source>Survey files that were read or written lately.</source>
   <translation>Archivos de levantamientos leídos o escritos hace poco.</translation>
  </message>
  <message>
   <source>Survey in hand (positions: {positions}, dispensers: {dispensers}): {most}{hours:f} hours.</source>
   <translation>Levantamiento actual (posiciones: {positions}, surtidores: {dispensers}): {most}{hours:f} horas.</translation>
  </message>
  <message>
   <source>Survey of the book</source>
   <translation>Levantamiento del libro</translation>
  </message>
  <message>
   <source>Survey: say for each position what flows, what it serves, and how far it has to reach.</source>
   <translation>Levantamiento: diga de cada posición qué fluye, a qué sirve y hasta dónde debe llegar.</translation>
  </message>
  <message>
   <source>Survey: say what hangs there today and what is wanted, above all for vapor.</source>
   <translation>Levantamiento: diga qué cuelga hoy y qué se quiere, sobre todo en el vapor.</translation>
  </message>
  <message>
   <source>Surveys</source>
   <translation>Levantamientos</translation>
  </message>
  <message>
   <source>Surveys changed last</source>
   <translation>Levantamientos cambiados al final</translation>
  </message>
  <message>
   <source>Surveys changed last, a new one, a file, the demonstration.</source>
   <translation>Levantamientos cambiados al final, uno nuevo, un archivo, la demostración.</translation>
  </message>
  <message>
   <source>Surveys in the book</source>
   <translation>Levantamientos del libro</translation>
  </message>
  <message>
   <source>Surveys to plan with both</source>
   <translation>Levantamientos que planificar con ambas</translation>
  </message>
  <message>
   <source>Swivel</source>
   <translation>Giratorio</translation>
  </message>
  <message>
   <source>Ta&amp;ke it back</source>
   <translation>A&amp;nularlo</translation>
  </message>
  <message>
   <source>Ta&amp;ke out</source>
   <translation>Re&amp;tirar</translation>
  </message>
  <message>
   <source>Ta&amp;ke over the planned set</source>
   <translation>T&amp;omar el conjunto planificado</translation>
  </message>
  <message>
   <source>Tabulator</source>
   <translation>Tabulador</translation>
  </message>
  <message>
   <source>Take &amp;over into the book</source>
   <translation>&amp;Pasar al libro</translation>
  </message>
  <message>
   <source>Take &amp;over into the price list</source>
   <translation>&amp;Pasar a la lista de precios</translation>
  </message>
  <message>
   <source>Take an alternate</source>
   <translation>Tomar una alternativa</translation>
  </message>
  <message>
   <source>Take away</source>
   <translation>Quitar</translation>
  </message>
  <message>
   <source>Take back the last change.</source>
   <translation>Deshacer el último cambio.</translation>
  </message>
  <message>
   <source>Take for this job</source>
   <translation>Tomar para este trabajo</translation>
  </message>
  <message>
   <source>Take in a price file</source>
   <translation>Tomar un archivo de precios</translation>
  </message>
  <message>
   <source>Take its successor {numbers}</source>
   <translation>Tomar su sucesora {numbers}</translation>
  </message>
  <message>
   <source>Take out what it does not hold</source>
   <translation>Sacar lo que no contiene</translation>
  </message>
  <message>
   <source>Take over into the &amp;draft</source>
   <translation>Inc&amp;orporar al borrador</translation>
  </message>
  <message>
   <source>Take terms</source>
   <translation>Tomar condiciones</translation>
  </message>
  <message>
   <source>Take terms, then quote the survey; or look a quotation up in the book.</source>
   <translation>Tome condiciones y cotice el levantamiento; o busque una cotización en el libro.</translation>
  </message>
  <message>
   <source>Take the last agreement back; the history keeps it, with who did so and why.</source>
   <translation>Anular el último acuerdo; el historial lo guarda, con quién y por qué.</translation>
  </message>
  <message>
   <source>Take the marked &amp;number out</source>
   <translation>Sacar el &amp;número marcado</translation>
  </message>
  <message>
   <source>Take the nearest, everywhere</source>
   <translation>Lo más cercano, en todas</translation>
  </message>
  <message>
   <source>Take the new &amp;figures</source>
   <translation>Tomar los &amp;datos nuevos</translation>
  </message>
  <message>
   <source>Take the new figures of dispenser types</source>
   <translation>Tomar los datos nuevos de los tipos de surtidor</translation>
  </message>
  <message>
   <source>Take the position off the site. Undo brings it back.</source>
   <translation>Quitar la posición de la estación. Deshacer la devuelve.</translation>
  </message>
  <message>
   <source>Take theirs</source>
   <translation>Tomar el ajeno</translation>
  </message>
  <message>
   <source>Take this &amp;list out</source>
   <translation>Q&amp;uitar esta lista</translation>
  </message>
  <message>
   <source>Take what is kept for this supplier out of the book</source>
   <translation>Quitar del libro lo que se guarda de este proveedor</translation>
  </message>
  <message>
   <source>Take {0} instead of {1}</source>
   <translation>Tomar {0} en lugar de {1}</translation>
  </message>
  <message>
   <source>Take {0} out of the book? Surveys keep what they have of it.</source>
   <translation>¿Sacar {0} del libro? Los levantamientos conservan lo que tienen de él.</translation>
  </message>
  <message>
   <source>Take {0} out? Its parts lose the figures that they have of it.</source>
   <translation>¿Quitar {0}? Sus piezas pierden los datos que tienen de ella.</translation>
  </message>
  <message>
   <source>Taken</source>
   <translation>Tomado</translation>
  </message>
  <message>
   <source>Taken already</source>
   <translation>Ya tomado</translation>
  </message>
  <message>
   <source>Taken already: {0}.</source>
   <translation>Ya tomado: {0}.</translation>
  </message>
  <message>
   <source>Taken and not needed, to bring back: {0}.</source>
   <translation>Tomado y no necesario, por devolver: {0}.</translation>
  </message>
  <message>
   <source>Taken for {0}.</source>
   <translation>Tomado para {0}.</translation>
  </message>
  <message>
   <source>Taken off the cost of the conversion, in the site's currency.</source>
   <translation>Se descuenta del costo de la conversión, en la moneda de la estación.</translation>
  </message>
  <message>
   <source>Takes the place alone; nothing else changes and no should is given up.</source>
   <translation>Ocupa sola el lugar; no cambia nada más y no se renuncia a ninguna buena práctica.</translation>
  </message>
  <message>
   <source>Taking over…</source>
   <translation>Incorporando…</translation>
  </message>
  <message>
   <source>Tank</source>
   <translation>Tanque</translation>
  </message>
  <message>
   <source>Tank gauge on the day</source>
   <translation>Medidor del tanque ese día</translation>
  </message>
  <message>
   <source>Taper NPT and parallel G look alike and do not seal with each other.</source>
   <translation>La NPT cónica y la G paralela se parecen y no sellan entre sí.</translation>
  </message>
  <message>
   <source>Taper, 60°</source>
   <translation>Cónica, 60°</translation>
  </message>
  <message>
   <source>Task</source>
   <translation>Tarea</translation>
  </message>
  <message>
   <source>Tasks</source>
   <translation>Tareas</translation>
  </message>
  <message>
   <source>Tasks with their hours, at one rate.</source>
   <translation>Tareas con sus horas, a una sola tarifa.</translation>
  </message>
  <message>
   <source>Tax</source>
   <translation>Impuesto</translation>
  </message>
  <message>
   <source>Tax is &amp;rounded</source>
   <translation>El impuesto se &amp;redondea</translation>
  </message>
  <message>
   <source>Tax number</source>
   <translation>Número fiscal</translation>
  </message>
  <message>
   <source>Taxes</source>
   <translation>Impuestos</translation>
  </message>
  <message>
   <source>Telep&amp;hone</source>
   <translation>Teléfon&amp;o</translation>
  </message>
  <message>
   <source>Telephone</source>
   <translation>Teléfono</translation>
  </message>
  <message>
   <source>Ter&amp;ms of sale</source>
   <translation>Condiciones de &amp;venta</translation>
  </message>
  <message>
   <source>Terms</source>
   <translation>Condiciones</translation>
  </message>
  <message>
   <source>Terms as in {path}</source>
   <translation>Condiciones como en {path}</translation>
  </message>
  <message>
   <source>Terms for the yearly &amp;cost…</source>
   <translation>&amp;Condiciones para el costo anual…</translation>
  </message>
  <message>
   <source>Terms for the yearly cost</source>
   <translation>Condiciones para el costo anual</translation>
  </message>
  <message>
   <source>Terms not saved as a file</source>
   <translation>Condiciones sin guardar en archivo</translation>
  </message>
  <message>
   <source>Terms of pa&amp;yment</source>
   <translation>Condiciones de &amp;pago</translation>
  </message>
  <message>
   <source>Terms of payment</source>
   <translation>Condiciones de pago</translation>
  </message>
  <message>
   <source>Terms of the quotation</source>
   <translation>Condiciones de la cotización</translation>
  </message>
  <message>
   <source>Terms: {0}</source>
   <translation>Condiciones: {0}</translation>
  </message>
  <message>
   <source>Tests, permits, closing: costs that the owner knows, in the currency of the site.</source>
   <translation>Ensayos, permisos, cierre: costos que conoce el propietario, en la moneda de la estación.</translation>
  </message>
  <message>
   <source>Tests, repairs, spare parts of the recovery system.</source>
   <translation>Ensayos, reparaciones, repuestos del sistema de recuperación.</translation>
  </message>
  <message>
   <source>Text (CSV)</source>
   <translation>Texto (CSV)</translation>
  </message>
  <message>
   <source>Text of the license</source>
   <translation>Texto de la licencia</translation>
  </message>
  <message>
   <source>Text of your own</source>
   <translation>Texto propio</translation>
  </message>
  <message>
   <source>Text to write</source>
   <translation>Texto que escribir</translation>
  </message>
  <message>
   <source>The agency demands that recovery stays</source>
   <translation>La agencia exige que la recuperación se quede</translation>
  </message>
  <message>
   <source>The agency's own word</source>
   <translation>Palabra de la agencia</translation>
  </message>
  <message>
   <source>The agreed set breaks a must</source>
   <translation>El conjunto acordado incumple algo exigido</translation>
  </message>
  <message>
   <source>The backups of a server are made by whoever keeps it.</source>
   <translation>Las copias de un servidor las hace quien lo mantiene.</translation>
  </message>
  <message>
   <source>The bar above each page leads through these places and says where each stands.</source>
   <translation>La barra sobre cada página lleva por estos lugares y dice cómo está cada uno.</translation>
  </message>
  <message>
   <source>The bill could not be made: {reason}</source>
   <translation>No se pudo hacer la lista: {reason}</translation>
  </message>
  <message>
   <source>The book did not answer and was waited for no longer. Look whether the step was taken.</source>
   <translation>El libro no respondió y no se esperó más. Vea si el paso se dio.</translation>
  </message>
  <message>
   <source>The book has no quotation of this survey.</source>
   <translation>El libro no tiene ninguna oferta de este levantamiento.</translation>
  </message>
  <message>
   <source>The book has not the content of this file.</source>
   <translation>El libro no tiene el contenido de este archivo.</translation>
  </message>
  <message>
   <source>The book is the backup again: {count} surveys. What lay there before is {path}.</source>
   <translation>El libro vuelve a ser el respaldo: {count} levantamientos. Lo que había antes está en {path}.</translation>
  </message>
  <message>
   <source>The book keeps these columns for every later order</source>
   <translation>El libro guarda estas columnas para cada pedido posterior</translation>
  </message>
  <message>
   <source>The book keeps this for {0}.</source>
   <translation>El libro guarda esto para {0}.</translation>
  </message>
  <message>
   <source>The book lies on a server.</source>
   <translation>El libro está en un servidor.</translation>
  </message>
  <message>
   <source>The book of surveys cannot be opened.</source>
   <translation>No se puede abrir el libro de levantamientos.</translation>
  </message>
  <message>
   <source>The book plans with {book}; this survey plans with {survey}.</source>
   <translation>El libro planifica con {book}; este levantamiento, con {survey}.</translation>
  </message>
  <message>
   <source>The cases side by side</source>
   <translation>Los casos lado a lado</translation>
  </message>
  <message>
   <source>The catalog Demonstration, its makers and prices are invented.</source>
   <translation>El catálogo Demonstration, sus fabricantes y precios son inventados.</translation>
  </message>
  <message>
   <source>The conversion could not be worked out: {reason}</source>
   <translation>No se pudo calcular la conversión: {reason}</translation>
  </message>
  <message>
   <source>The count {0} found everything that the book knows of.</source>
   <translation>El recuento {0} encontró todo lo que conoce el libro.</translation>
  </message>
  <message>
   <source>The count {0} is closed. Parts counted so: {1}.</source>
   <translation>El recuento {0} está cerrado. Piezas contadas así: {1}.</translation>
  </message>
  <message>
   <source>The currency of every amount in the quotation, and how amounts are rounded.</source>
   <translation>La moneda de cada importe de la cotización, y cómo se redondean.</translation>
  </message>
  <message>
   <source>The customer's own expectation, for comparing breakaways. All empty: no comparison.</source>
   <translation>Lo que espera el propio cliente, para comparar válvulas de ruptura. Todo vacío: sin comparación.</translation>
  </message>
  <message>
   <source>The customers in view, as a paper</source>
   <translation>Los clientes a la vista, en papel</translation>
  </message>
  <message>
   <source>The details for a report are in {path}.</source>
   <translation>Los detalles para un informe están en {path}.</translation>
  </message>
  <message>
   <source>The draft of {catalog}: {new} new, {changed} changed, {same} as they were.</source>
   <translation>Borrador de {catalog}: {new} nuevas, {changed} cambiadas, {same} como estaban.</translation>
  </message>
  <message>
   <source>The duty decides spout, flow and how far the hose has to turn and reach.</source>
   <translation>El uso decide pico, caudal y cuánto tiene que girar y alcanzar la manguera.</translation>
  </message>
  <message>
   <source>The ends of the part</source>
   <translation>Los extremos de la pieza</translation>
  </message>
  <message>
   <source>The family</source>
   <translation>La familia</translation>
  </message>
  <message>
   <source>The family decides which listing standards, seals and spouts come into question.</source>
   <translation>La familia decide qué normas de certificación, sellos y picos son posibles.</translation>
  </message>
  <message>
   <source>The field is filled alike in all of them; nothing else changes.</source>
   <translation>El campo se rellena igual en todas; nada más cambia.</translation>
  </message>
  <message>
   <source>The flow cannot be shown here: {reason}</source>
   <translation>El caudal no se puede mostrar aquí: {reason}</translation>
  </message>
  <message>
   <source>The forecourt from above, and all answers as a table to write into.</source>
   <translation>La estación vista desde arriba, y todas las respuestas como tabla editable.</translation>
  </message>
  <message>
   <source>The form also holds {0}: go to each position, look at it and keep it.</source>
   <translation>La hoja también contiene {0}: vaya a cada posición, mírela y guárdela.</translation>
  </message>
  <message>
   <source>The history of agreements, two of them compared; planned, agreed and built side by side.</source>
   <translation>El historial de acuerdos, dos de ellos comparados; planificado, acordado y construido lado a lado.</translation>
  </message>
  <message>
   <source>The inspection plan of the site, as a paper</source>
   <translation>El plan de inspección de la estación, en papel</translation>
  </message>
  <message>
   <source>The last agreement is taken back.</source>
   <translation>El último acuerdo está anulado.</translation>
  </message>
  <message>
   <source>The last change is taken back.</source>
   <translation>Se ha deshecho el último cambio.</translation>
  </message>
  <message>
   <source>The last changes are not in the book yet: {reason} It is tried again by itself.</source>
   <translation>Los últimos cambios aún no están en el libro: {reason} Se vuelve a intentar solo.</translation>
  </message>
  <message>
   <source>The last changes of “{name}” are not in the book.</source>
   <translation>Los últimos cambios de «{name}» no están en el libro.</translation>
  </message>
  <message>
   <source>The list as it stands here, as a paper; with its margins it is internal</source>
   <translation>La lista tal como está aquí, como documento; con sus márgenes es interna</translation>
  </message>
  <message>
   <source>The offer ended on {0}: requote it before it is issued.</source>
   <translation>La oferta terminó el {0}: vuelva a cotizarla antes de emitirla.</translation>
  </message>
  <message>
   <source>The order stands. What changes now needs a quotation of its own.</source>
   <translation>El pedido queda firme. Lo que cambie ahora necesita su propia cotización.</translation>
  </message>
  <message>
   <source>The order stands: revision {0} stays as it is. Taken, revision {1} opens as a draft, to be issued.</source>
   <translation>El pedido está en pie: la revisión {0} queda como está. Tomada, se abre la revisión {1} como borrador, para emitir.</translation>
  </message>
  <message>
   <source>The order stands; kept, this becomes a quotation of its own. Give it another number in its terms.</source>
   <translation>El pedido queda firme; al guardarla, esta pasa a ser otra cotización. Dele otro número en sus condiciones.</translation>
  </message>
  <message>
   <source>The other answer</source>
   <translation>La otra respuesta</translation>
  </message>
  <message>
   <source>The owner's own figure</source>
   <translation>Cifra del propietario</translation>
  </message>
  <message>
   <source>The owner's own question</source>
   <translation>Pregunta propia del propietario</translation>
  </message>
  <message>
   <source>The page of the manual that fits what has the keyboard; words of the trade; the source of every rule.</source>
   <translation>La página del manual para lo que tiene el teclado; palabras del oficio; la fuente de cada regla.</translation>
  </message>
  <message>
   <source>The part</source>
   <translation>La pieza</translation>
  </message>
  <message>
   <source>The parts of the catalog in hand come here. A supplier's table brings many at once.</source>
   <translation>Aquí aparecen las piezas del catálogo elegido. La tabla de un proveedor trae muchas a la vez.</translation>
  </message>
  <message>
   <source>The parts of the site as they hang there now, as a paper</source>
   <translation>Las piezas de la estación tal como cuelgan ahora, en papel</translation>
  </message>
  <message>
   <source>The price lists of the edition in hand, as a paper</source>
   <translation>Las listas de precios de la edición en curso, en papel</translation>
  </message>
  <message>
   <source>The prices of a quotation come here once a survey is quoted.</source>
   <translation>Los precios de una cotización aparecen aquí cuando se cotiza un levantamiento.</translation>
  </message>
  <message>
   <source>The program met a fault of its own and did not finish the last step. Your survey: {state}.</source>
   <translation>El programa encontró una falla propia y no terminó el último paso. Su levantamiento: {state}.</translation>
  </message>
  <message>
   <source>The program met a fault of its own and did not finish this.</source>
   <translation>El programa encontró una falla propia y no terminó esto.</translation>
  </message>
  <message>
   <source>The questions about the position in hand, and its set.</source>
   <translation>Las preguntas de la posición elegida y su conjunto.</translation>
  </message>
  <message>
   <source>The quotation goes out without this price and says so on the paper</source>
   <translation>La cotización sale sin este precio y lo dice en el documento</translation>
  </message>
  <message>
   <source>The reasons at this position, as a paper</source>
   <translation>Las razones en esta posición, en papel</translation>
  </message>
  <message>
   <source>The record of this position, as a paper</source>
   <translation>El registro de esta posición, en papel</translation>
  </message>
  <message>
   <source>The record of {0} is kept in the book.</source>
   <translation>El registro de {0} está en el libro.</translation>
  </message>
  <message>
   <source>The report below is what is copied; nothing is sent. Read it before you hand it on.</source>
   <translation>Se copia el informe de abajo; no se envía nada. Léalo antes de pasarlo.</translation>
  </message>
  <message>
   <source>The rows with their sources, as a paper</source>
   <translation>Las filas con sus fuentes, en papel</translation>
  </message>
  <message>
   <source>The run was stopped early.</source>
   <translation>La ejecución se paró antes de tiempo.</translation>
  </message>
  <message>
   <source>The same as wanted</source>
   <translation>Lo mismo que se desea</translation>
  </message>
  <message>
   <source>The same in every row: an account number, a unit.</source>
   <translation>Igual en cada fila: un número de cuenta, una unidad.</translation>
  </message>
  <message>
   <source>The search was ended before the least cost was proved</source>
   <translation>La búsqueda terminó antes de demostrar el costo mínimo</translation>
  </message>
  <message>
   <source>The set in hand, before and after</source>
   <translation>El conjunto elegido, antes y después</translation>
  </message>
  <message>
   <source>The set is agreed.</source>
   <translation>El conjunto está acordado.</translation>
  </message>
  <message>
   <source>The set is held against this flow at the coldest and the hottest temperature.</source>
   <translation>El conjunto se compara con este caudal a la temperatura mínima y a la máxima.</translation>
  </message>
  <message>
   <source>The sets as planned for the answers of today. Papers show what is agreed from then on.</source>
   <translation>Los conjuntos según el plan para las respuestas de hoy. Los documentos muestran desde entonces lo acordado.</translation>
  </message>
  <message>
   <source>The sets of the chart as a table</source>
   <translation>Los conjuntos del gráfico como tabla</translation>
  </message>
  <message>
   <source>The sets of the conversion, {0}. Papers show what is agreed from then on.</source>
   <translation>Los conjuntos de la conversión, {0}. Los documentos muestran desde entonces lo acordado.</translation>
  </message>
  <message>
   <source>The sets of the option ordered are agreed: papers of the survey show them from now on.</source>
   <translation>Los conjuntos de la opción pedida están acordados: los documentos del levantamiento los muestran desde ahora.</translation>
  </message>
  <message>
   <source>The sets picked: {0}. Papers show what is agreed from then on.</source>
   <translation>Los conjuntos elegidos: {0}. Los documentos muestran desde entonces lo acordado.</translation>
  </message>
  <message>
   <source>The stock holds no other part of this kind.</source>
   <translation>No hay en existencia otra pieza de este tipo.</translation>
  </message>
  <message>
   <source>The survey has been changed since: quote this survey for that. Requoted, it stays as it was.</source>
   <translation>El levantamiento cambió desde entonces: para eso, cotice este. Si se vuelve a cotizar, queda como estaba.</translation>
  </message>
  <message>
   <source>The survey has changed since this form was printed. Look at every line.</source>
   <translation>El levantamiento cambió desde que se imprimió esta hoja. Mire cada línea.</translation>
  </message>
  <message>
   <source>The survey was changed since. No amount of the quotation changes by that.</source>
   <translation>El levantamiento se cambió desde entonces. Ningún importe de la cotización cambia por ello.</translation>
  </message>
  <message>
   <source>The survey was changed since. Quoted now:</source>
   <translation>El levantamiento se cambió desde entonces. Cotizado ahora:</translation>
  </message>
  <message>
   <source>The survey was changed since; what that means in money was not worked out.</source>
   <translation>El levantamiento se cambió desde entonces; lo que eso significa en dinero no se calculó.</translation>
  </message>
  <message>
   <source>The survey was changed since; working out what that means in money…</source>
   <translation>El levantamiento se cambió desde entonces; se calcula lo que eso significa en dinero…</translation>
  </message>
  <message>
   <source>The survey was changed while it was quoted, so nothing was quoted. Quote it again.</source>
   <translation>El levantamiento cambió mientras se cotizaba, así que no se cotizó nada. Cotícelo otra vez.</translation>
  </message>
  <message>
   <source>The table ends in 2020 and is never prolonged without being asked.</source>
   <translation>La tabla termina en 2020 y nunca se prolonga sin que se pida.</translation>
  </message>
  <message>
   <source>The terms are in hand.</source>
   <translation>Las condiciones están listas.</translation>
  </message>
  <message>
   <source>The two surveys do not go together. Keep both, or one of them.</source>
   <translation>Los dos levantamientos no se pueden unir. Conserve ambos, o uno de ellos.</translation>
  </message>
  <message>
   <source>The usual terms are as they were</source>
   <translation>Las condiciones usuales son las de antes</translation>
  </message>
  <message>
   <source>The value is written as the source prints it: digits, yes or no, a word, cases separated by commas; empty for no figure. The adopted code and the authority having jurisdiction decide; this table only records them.</source>
   <translation>El valor se escribe como lo imprime la fuente: cifras, sí o no, una palabra, casos separados por comas; vacío si no hay cifra. Deciden el código adoptado y la autoridad competente; esta tabla solo los anota.</translation>
  </message>
  <message>
   <source>The volume that the price is of.</source>
   <translation>El volumen al que corresponde el precio.</translation>
  </message>
  <message>
   <source>The whole map, as a paper</source>
   <translation>Todo el mapa, en papel</translation>
  </message>
  <message>
   <source>Then a splitter can join both to a coaxial hose.</source>
   <translation>Entonces una bifurcación puede unir ambos a una manguera coaxial.</translation>
  </message>
  <message>
   <source>Then another link is needed, and a test shows it.</source>
   <translation>Entonces hace falta otro enlace, y una prueba lo muestra.</translation>
  </message>
  <message>
   <source>Then it does no harm there.</source>
   <translation>Entonces no perjudica ahí.</translation>
  </message>
  <message>
   <source>Then the tank agency is told before some blends; not answered counts as yes.</source>
   <translation>Entonces se avisa a la autoridad de tanques antes de algunas mezclas; sin respuesta cuenta como sí.</translation>
  </message>
  <message>
   <source>There is no set to give reasons for.</source>
   <translation>No hay conjunto que explicar.</translation>
  </message>
  <message>
   <source>There is no set to pick a part from.</source>
   <translation>No hay conjunto del que elegir una pieza.</translation>
  </message>
  <message>
   <source>There is no set whose checks could be looked at.</source>
   <translation>No hay ningún conjunto cuyas comprobaciones se puedan mirar.</translation>
  </message>
  <message>
   <source>There is no set whose flow could be shown.</source>
   <translation>No hay conjunto cuyo caudal se pueda mostrar.</translation>
  </message>
  <message>
   <source>There is no such file here.</source>
   <translation>Aquí no hay tal archivo.</translation>
  </message>
  <message>
   <source>These lines are sold below cost or below the least margin:
{0}
Name and reason stay in the book alone.</source>
   <translation>Estas líneas se venden bajo el costo o bajo el margen mínimo:
{0}
El nombre y el motivo quedan solo en el libro.</translation>
  </message>
  <message>
   <source>These options leave hoses out:
{0}
Your name and reason stand on the paper.</source>
   <translation>Estas opciones dejan mangueras fuera:
{0}
Su nombre y el motivo constan en el documento.</translation>
  </message>
  <message>
   <source>These parts</source>
   <translation>Estas piezas</translation>
  </message>
  <message>
   <source>These parts are sold joined to each other, as one article. Dispenser first, vehicle last:</source>
   <translation>Estas piezas se venden unidas entre sí, como un solo artículo. Primero la del surtidor, al final la del vehículo:</translation>
  </message>
  <message>
   <source>These parts of {0} were not scanned in this count. Look for them first. Closing counts them as shown on the right; entries are only added, and each can be undone.</source>
   <translation>Estas piezas de {0} no se escanearon en este recuento. Búsquelas primero. Al cerrarlo se cuentan como se ve a la derecha; los apuntes solo se añaden y cada uno se puede anular.</translation>
  </message>
  <message>
   <source>These positions take the place of all that are there</source>
   <translation>Estas posiciones sustituyen a todas las que hay</translation>
  </message>
  <message>
   <source>These recorded parts would go: {0}.</source>
   <translation>Saldrían estas piezas registradas: {0}.</translation>
  </message>
  <message>
   <source>They are on their way to the book.</source>
   <translation>Van camino al libro.</translation>
  </message>
  <message>
   <source>They are saved by themselves as soon as the book takes them; this question then goes away.</source>
   <translation>Se guardan solos en cuanto el libro los acepta; entonces esta pregunta desaparece.</translation>
  </message>
  <message>
   <source>They go before the deadline that a survey names among the site answers.</source>
   <translation>Van antes que el plazo que un levantamiento nombra entre las respuestas de la estación.</translation>
  </message>
  <message>
   <source>This change is not in the book yet: {reason} It stays in the window.</source>
   <translation>Este cambio aún no está en el libro: {reason} Se queda en la ventana.</translation>
  </message>
  <message>
   <source>This dispenser only</source>
   <translation>Solo este surtidor</translation>
  </message>
  <message>
   <source>This is no PNG or JPEG picture.</source>
   <translation>Esto no es una imagen PNG o JPEG.</translation>
  </message>
  <message>
   <source>This package brings no text of its license.</source>
   <translation>Este paquete no trae el texto de su licencia.</translation>
  </message>
  <message>
   <source>This picture cannot be read.</source>
   <translation>Esta imagen no se puede leer.</translation>
  </message>
  <message>
   <source>This position</source>
   <translation>Esta posición</translation>
  </message>
  <message>
   <source>This position has no set, so there is nothing to record.</source>
   <translation>Esta posición no tiene conjunto, así que no hay nada que registrar.</translation>
  </message>
  <message>
   <source>This position only</source>
   <translation>Solo esta posición</translation>
  </message>
  <message>
   <source>This quotation is not in the book yet. It is one of {0}.</source>
   <translation>Esta cotización todavía no está en el libro. Es de {0}.</translation>
  </message>
  <message>
   <source>This survey is not on the list of the book any more: it was taken off. It stays in the window.</source>
   <translation>Este levantamiento ya no está en la lista del libro: se quitó. Se queda en la ventana.</translation>
  </message>
  <message>
   <source>Those of &amp;this quotation</source>
   <translation>Las de &amp;esta cotización</translation>
  </message>
  <message>
   <source>Thread si&amp;ze</source>
   <translation>Medida de la ros&amp;ca</translation>
  </message>
  <message>
   <source>Thread standard, size, gender and path, such as NPT 3/4 male single.</source>
   <translation>Norma de rosca, tamaño, género y vía, como NPT 3/4 male single.</translation>
  </message>
  <message>
   <source>Three jobs in pictures</source>
   <translation>Tres trabajos en imágenes</translation>
  </message>
  <message>
   <source>Three letters of ISO 4217, such as EUR.</source>
   <translation>Tres letras de ISO 4217, como EUR.</translation>
  </message>
  <message>
   <source>Three letters of ISO 4217, such as USD.</source>
   <translation>Tres letras de ISO 4217, como USD.</translation>
  </message>
  <message>
   <source>Title of the copy</source>
   <translation>Título de la copia</translation>
  </message>
  <message>
   <source>Title of the next file</source>
   <translation>Título del archivo siguiente</translation>
  </message>
  <message>
   <source>To be read only.</source>
   <translation>Solo para leer.</translation>
  </message>
  <message>
   <source>To be read only. The papers are those that were sent.</source>
   <translation>Solo para leer. Los documentos son los que se enviaron.</translation>
  </message>
  <message>
   <source>To look at</source>
   <translation>Para revisar</translation>
  </message>
  <message>
   <source>To order</source>
   <translation>Para pedir</translation>
  </message>
  <message>
   <source>To put a position back into service.</source>
   <translation>Para volver a poner en servicio una posición.</translation>
  </message>
  <message>
   <source>To take</source>
   <translation>Para tomar</translation>
  </message>
  <message>
   <source>To which positions</source>
   <translation>A qué posiciones</translation>
  </message>
  <message>
   <source>Today</source>
   <translation>Hoy</translation>
  </message>
  <message>
   <source>Today and then side by side</source>
   <translation>Hoy y después lado a lado</translation>
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
   <translation>Hacia el &amp;surtidor</translation>
  </message>
  <message>
   <source>Toward the &amp;vehicle</source>
   <translation>Hacia el &amp;vehículo</translation>
  </message>
  <message>
   <source>Towards a grant</source>
   <translation>Para un subsidio</translation>
  </message>
  <message>
   <source>Trade-association paper, 2020 (secondary)</source>
   <translation>Documento de una asociación del ramo, 2020 (citado)</translation>
  </message>
  <message>
   <source>Tried {done} of {total} parts…</source>
   <translation>Probadas {done} de {total} piezas…</translation>
  </message>
  <message>
   <source>Trucks</source>
   <translation>Camiones</translation>
  </message>
  <message>
   <source>Try again</source>
   <translation>Reintentar</translation>
  </message>
  <message>
   <source>Trying the parts of the catalog…</source>
   <translation>Probando las piezas del catálogo…</translation>
  </message>
  <message>
   <source>Tur&amp;ns left on the drum at the filler</source>
   <translation>Vueltas que &amp;quedan en el tambor en la boca de llenado</translation>
  </message>
  <message>
   <source>U&amp;nits</source>
   <translation>&amp;Unidades</translation>
  </message>
  <message>
   <source>UL 2586, 567 and 330 with supplements A (ethanol) and B (diesel, biodiesel)</source>
   <translation>UL 2586, 567 y 330 con suplementos A (etanol) y B (diésel, biodiésel)</translation>
  </message>
  <message>
   <source>US units</source>
   <translation>Unidades de EE. UU.</translation>
  </message>
  <message>
   <source>UTF-8 with byte order mark</source>
   <translation>UTF-8 con marca de orden de bytes</translation>
  </message>
  <message>
   <source>UTF-8 without a mark</source>
   <translation>UTF-8 sin marca</translation>
  </message>
  <message>
   <source>Undo the entry</source>
   <translation>Anular el apunte</translation>
  </message>
  <message>
   <source>Undo the last agreement</source>
   <translation>Deshacer el último acuerdo</translation>
  </message>
  <message>
   <source>Unified</source>
   <translation>Unificada</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Unidad</translation>
  </message>
  <message>
   <source>Unit or currency of {0}</source>
   <translation>Unidad o moneda de {0}</translation>
  </message>
  <message>
   <source>Unit price</source>
   <translation>Precio unitario</translation>
  </message>
  <message>
   <source>Unit price of {0}</source>
   <translation>Precio unitario de {0}</translation>
  </message>
  <message>
   <source>Units of numbers that name none</source>
   <translation>Unidades de los números que no las indican</translation>
  </message>
  <message>
   <source>Units: SI</source>
   <translation>Unidades: SI</translation>
  </message>
  <message>
   <source>Units: US</source>
   <translation>Unidades: US</translation>
  </message>
  <message>
   <source>Units: as the titles say</source>
   <translation>Unidades: según los títulos</translation>
  </message>
  <message>
   <source>Up</source>
   <translation>Arriba</translation>
  </message>
  <message>
   <source>Urea solution for diesel exhaust</source>
   <translation>Solución de urea para escape diésel</translation>
  </message>
  <message>
   <source>Use &amp;another folder…</source>
   <translation>Usar &amp;otra carpeta…</translation>
  </message>
  <message>
   <source>Use the marked part in the set</source>
   <translation>Usar la pieza marcada en el conjunto</translation>
  </message>
  <message>
   <source>Use the table of the United States fleet?</source>
   <translation>¿Usar la tabla del parque de Estados Unidos?</translation>
  </message>
  <message>
   <source>Use these terms</source>
   <translation>Usar estas condiciones</translation>
  </message>
  <message>
   <source>Use {part}</source>
   <translation>Usar {part}</translation>
  </message>
  <message>
   <source>Vacuum assist</source>
   <translation>Asistida por vacío</translation>
  </message>
  <message>
   <source>Vacuum-assist coaxial</source>
   <translation>Coaxial con vacío</translation>
  </message>
  <message>
   <source>Valid from</source>
   <translation>Válida desde</translation>
  </message>
  <message>
   <source>Valid through</source>
   <translation>Válida hasta</translation>
  </message>
  <message>
   <source>Valid to</source>
   <translation>Válida hasta</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Valor</translation>
  </message>
  <message>
   <source>Value for the chosen cells</source>
   <translation>Valor para las celdas elegidas</translation>
  </message>
  <message>
   <source>Van</source>
   <translation>Furgoneta</translation>
  </message>
  <message>
   <source>Van and store</source>
   <translation>Furgoneta y almacén</translation>
  </message>
  <message>
   <source>Van or store</source>
   <translation>Furgoneta o almacén</translation>
  </message>
  <message>
   <source>Vapor</source>
   <translation>Vapor</translation>
  </message>
  <message>
   <source>Vapor in the inner tube</source>
   <translation>Vapor en el tubo interior</translation>
  </message>
  <message>
   <source>Vapor in the outer ring</source>
   <translation>Vapor en el anillo exterior</translation>
  </message>
  <message>
   <source>Vapor pipes and vacuum</source>
   <translation>Tuberías de vapor y vacío</translation>
  </message>
  <message>
   <source>Vapor recovery</source>
   <translation>Recuperación de vapor</translation>
  </message>
  <message>
   <source>Vapor recovery today and in future</source>
   <translation>Recuperación de vapores hoy y en el futuro</translation>
  </message>
  <message>
   <source>Vapor recovery today is recorded as {0}; the planned set is of another kind.</source>
   <translation>La recuperación de vapor de hoy está registrada como {0}; el conjunto planificado es de otro tipo.</translation>
  </message>
  <message>
   <source>Vapor return available</source>
   <translation>Retorno vapor</translation>
  </message>
  <message>
   <source>Vapor space of the tanks at the test</source>
   <translation>Espacio de vapor de los tanques en la prueba</translation>
  </message>
  <message>
   <source>Vapor today</source>
   <translation>Vapor hoy</translation>
  </message>
  <message>
   <source>Vapor wanted</source>
   <translation>Vapor deseado</translation>
  </message>
  <message>
   <source>Vehicle filler</source>
   <translation>Boca de llenado del vehículo</translation>
  </message>
  <message>
   <source>Vehicle fillers</source>
   <translation>Bocas de llenado del vehículo</translation>
  </message>
  <message>
   <source>Vehicles and their onboard recovery</source>
   <translation>Vehículos y su recuperación a bordo</translation>
  </message>
  <message>
   <source>Version</source>
   <translation>Versión</translation>
  </message>
  <message>
   <source>Visits and deadlines; the first year must be named</source>
   <translation>Visitas y plazos; el primer año debe estar indicado</translation>
  </message>
  <message>
   <source>W&amp;ay</source>
   <translation>&amp;Camino</translation>
  </message>
  <message>
   <source>W&amp;eigh sets…</source>
   <translation>Sop&amp;esar conjuntos…</translation>
  </message>
  <message>
   <source>Wa&amp;y round the vehicle</source>
   <translation>Ca&amp;mino alrededor del vehículo</translation>
  </message>
  <message>
   <source>Wait no &amp;longer</source>
   <translation>No &amp;esperar más</translation>
  </message>
  <message>
   <source>Waiting for the book…</source>
   <translation>Esperando al libro…</translation>
  </message>
  <message>
   <source>Waits until the other sets are found.</source>
   <translation>Espera hasta que se encuentren los otros conjuntos.</translation>
  </message>
  <message>
   <source>Wanted flow</source>
   <translation>Caudal deseado</translation>
  </message>
  <message>
   <source>Way</source>
   <translation>Camino</translation>
  </message>
  <message>
   <source>Way out</source>
   <translation>Salida</translation>
  </message>
  <message>
   <source>Way round the vehicle</source>
   <translation>Camino alrededor del vehículo</translation>
  </message>
  <message>
   <source>Ways to convert</source>
   <translation>Caminos de conversión</translation>
  </message>
  <message>
   <source>Wear log</source>
   <translation>Registro de desgaste</translation>
  </message>
  <message>
   <source>Weather records of the place</source>
   <translation>Registros del clima del lugar</translation>
  </message>
  <message>
   <source>Weigh</source>
   <translation>Sopesar</translation>
  </message>
  <message>
   <source>Weigh sets</source>
   <translation>Sopesar conjuntos</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Peso</translation>
  </message>
  <message>
   <source>Wh&amp;y not?</source>
   <translation>¿Por &amp;qué no?</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Qué</translation>
  </message>
  <message>
   <source>What &amp;changes…</source>
   <translation>Qué &amp;cambia…</translation>
  </message>
  <message>
   <source>What a type answers need not be asked at its positions. A survey keeps the type as it was chosen.</source>
   <translation>Lo que responde un tipo no hay que preguntarlo en sus posiciones. Un levantamiento conserva el tipo tal como se eligió.</translation>
  </message>
  <message>
   <source>What another answer would do, before the survey is changed.</source>
   <translation>Qué haría otra respuesta, antes de cambiar el levantamiento.</translation>
  </message>
  <message>
   <source>What changed between the two revisions</source>
   <translation>Qué cambió entre las dos revisiones</translation>
  </message>
  <message>
   <source>What changed from</source>
   <translation>Qué cambió desde</translation>
  </message>
  <message>
   <source>What changes in money</source>
   <translation>Lo que cambia en dinero</translation>
  </message>
  <message>
   <source>What chose the sets</source>
   <translation>Qué eligió los conjuntos</translation>
  </message>
  <message>
   <source>What d&amp;oes the hose serve?</source>
   <translation>¿Qué abastece la &amp;manguera?</translation>
  </message>
  <message>
   <source>What differs between two agreements</source>
   <translation>Qué difiere entre dos acuerdos</translation>
  </message>
  <message>
   <source>What else would &amp;do here</source>
   <translation>Qué más serviría a&amp;quí</translation>
  </message>
  <message>
   <source>What else would do here</source>
   <translation>Qué más serviría aquí</translation>
  </message>
  <message>
   <source>What flows through the hose decides listing class and seals.</source>
   <translation>Lo que pasa por la manguera decide la clase de certificación y los sellos.</translation>
  </message>
  <message>
   <source>What hangs here today</source>
   <translation>Qué cuelga aquí hoy</translation>
  </message>
  <message>
   <source>What hangs there now decides which vapor openings have to be closed in a conversion.</source>
   <translation>Lo que cuelga ahora decide qué aberturas de vapor hay que cerrar en una conversión.</translation>
  </message>
  <message>
   <source>What hangs there today</source>
   <translation>Lo que cuelga allí hoy</translation>
  </message>
  <message>
   <source>What hangs there today, what is to hang there, and what the outlet offers.</source>
   <translation>Qué cuelga hoy, qué debe colgar, y qué ofrece la salida.</translation>
  </message>
  <message>
   <source>What happened</source>
   <translation>Qué pasó</translation>
  </message>
  <message>
   <source>What happens</source>
   <translation>Qué ocurre</translation>
  </message>
  <message>
   <source>What if an answer were another?</source>
   <translation>¿Qué pasaría con otra respuesta?</translation>
  </message>
  <message>
   <source>What if…</source>
   <translation>Qué pasaría si…</translation>
  </message>
  <message>
   <source>What is added to materials and labor.</source>
   <translation>Lo que se añade a los materiales y la mano de obra.</translation>
  </message>
  <message>
   <source>What is asked</source>
   <translation>Qué se pide</translation>
  </message>
  <message>
   <source>What is delivered beside the parts that are installed, and what it is worth to stock few part numbers.</source>
   <translation>Qué se entrega además de las piezas instaladas, y cuánto vale tener pocos números de pieza.</translation>
  </message>
  <message>
   <source>What is kept of the book, one more now, or one put back in its place.</source>
   <translation>Qué se guarda del libro, uno más ahora, o uno puesto en su lugar.</translation>
  </message>
  <message>
   <source>What is missing, and what is there</source>
   <translation>Qué falta y qué hay</translation>
  </message>
  <message>
   <source>What is new in the edition</source>
   <translation>Qué hay de nuevo en la edición</translation>
  </message>
  <message>
   <source>What is new in this edition</source>
   <translation>Qué hay de nuevo en esta edición</translation>
  </message>
  <message>
   <source>What is not included</source>
   <translation>Qué no se incluye</translation>
  </message>
  <message>
   <source>What is offered, what is not, and on which terms of sale.</source>
   <translation>Qué se ofrece, qué no, y en qué condiciones de venta.</translation>
  </message>
  <message>
   <source>What is ordered from each supplier, as a file in the columns that it wants</source>
   <translation>Lo que se pide a cada proveedor, como archivo en las columnas que quiere</translation>
  </message>
  <message>
   <source>What is otherwise</source>
   <translation>Qué cambia</translation>
  </message>
  <message>
   <source>What is scanned comes here; an entry is taken back by another one.</source>
   <translation>Lo escaneado aparece aquí; un apunte se anula con otro.</translation>
  </message>
  <message>
   <source>What is supplied and done.</source>
   <translation>Qué se suministra y se hace.</translation>
  </message>
  <message>
   <source>What is the s&amp;tation?</source>
   <translation>¿Qué es&amp;tación es?</translation>
  </message>
  <message>
   <source>What is weighed</source>
   <translation>Qué se sopesa</translation>
  </message>
  <message>
   <source>What it changes that sets share part numbers, against each position chosen for itself</source>
   <translation>Qué cambia que los conjuntos compartan números de pieza, frente a elegir cada posición por sí misma</translation>
  </message>
  <message>
   <source>What it does</source>
   <translation>Qué hace</translation>
  </message>
  <message>
   <source>What it is</source>
   <translation>Qué es</translation>
  </message>
  <message>
   <source>What it is reckoned from.</source>
   <translation>A partir de qué se calcula.</translation>
  </message>
  <message>
   <source>What it pays for</source>
   <translation>Qué paga</translation>
  </message>
  <message>
   <source>What its plate says</source>
   <translation>Según la placa</translation>
  </message>
  <message>
   <source>What lies where, as a paper</source>
   <translation>Lo que hay en cada lugar, en papel</translation>
  </message>
  <message>
   <source>What makers take off their lists for you: it makes the cost of the materials.</source>
   <translation>Lo que los fabricantes le descuentan de sus listas: da el costo de los materiales.</translation>
  </message>
  <message>
   <source>What meter and pump pass at most.</source>
   <translation>Lo que medidor y bomba pasan como máximo.</translation>
  </message>
  <message>
   <source>What passes through the dispenser's &amp;outlet?</source>
   <translation>¿Qué pasa por la salida &amp;del surtidor?</translation>
  </message>
  <message>
   <source>What sets are weighed by beside their price. Spares and drive-offs have pages of their own. All empty: wear by common practice alone.</source>
   <translation>Por lo que se sopesan los conjuntos además de su precio. Los repuestos y los arranques tienen sus propias páginas. Todo vacío: solo el desgaste según la práctica común.</translation>
  </message>
  <message>
   <source>What speaks for it</source>
   <translation>Qué habla a su favor</translation>
  </message>
  <message>
   <source>What stands above the column.</source>
   <translation>Lo que va encima de la columna.</translation>
  </message>
  <message>
   <source>What stands behind the chosen combination</source>
   <translation>Qué hay tras la combinación elegida</translation>
  </message>
  <message>
   <source>What stands there</source>
   <translation>Qué dice</translation>
  </message>
  <message>
   <source>What stays, goes and comes, in which order, at what cost, with what effect on emissions.</source>
   <translation>Qué se queda, sale y entra, en qué orden, a qué costo, con qué efecto en las emisiones.</translation>
  </message>
  <message>
   <source>What stocking another part number is worth, in the currency of the site. Above 0 the sets of the whole station are chosen together, so that like positions get like parts.</source>
   <translation>Cuánto vale no tener otro número de pieza, en la moneda de la estación. Con más de 0, los conjuntos de toda la estación se eligen en común, para que posiciones iguales lleven piezas iguales.</translation>
  </message>
  <message>
   <source>What tells this quotation from others, and how long it stands.</source>
   <translation>Qué distingue esta cotización de otras, y cuánto tiempo vale.</translation>
  </message>
  <message>
   <source>What the book holds of “{name}” is now in {path}.</source>
   <translation>Lo que el libro contiene de «{name}» está ahora en {path}.</translation>
  </message>
  <message>
   <source>What the change means in money</source>
   <translation>Lo que el cambio significa en dinero</translation>
  </message>
  <message>
   <source>What the change means in money cannot be told: {0}</source>
   <translation>No se puede decir lo que el cambio significa en dinero: {0}</translation>
  </message>
  <message>
   <source>What the column holds.</source>
   <translation>Lo que lleva la columna.</translation>
  </message>
  <message>
   <source>What the columns hold</source>
   <translation>Qué contienen las columnas</translation>
  </message>
  <message>
   <source>What the conversion rests on</source>
   <translation>En qué se apoya la conversión</translation>
  </message>
  <message>
   <source>What the dispenser gives</source>
   <translation>Qué da el surtidor</translation>
  </message>
  <message>
   <source>What the draft of {0} holds otherwise than its newest edition is lost. Discard it?</source>
   <translation>Se pierde lo que el borrador de {0} tiene distinto de su última edición. ¿Descartarlo?</translation>
  </message>
  <message>
   <source>What the file holds</source>
   <translation>Lo que lleva el archivo</translation>
  </message>
  <message>
   <source>What the hose serves, how it is stowed, and what the dispenser gives.</source>
   <translation>Qué abastece la manguera, cómo se recoge, y qué da el surtidor.</translation>
  </message>
  <message>
   <source>What the percentage is taken from.</source>
   <translation>De qué se toma el porcentaje.</translation>
  </message>
  <message>
   <source>What the quotation is for.</source>
   <translation>Para qué es la cotización.</translation>
  </message>
  <message>
   <source>What the survey asks is worked out anyway; a case says what would be otherwise beside it.</source>
   <translation>Lo que pide el levantamiento se calcula siempre; un caso dice qué sería distinto.</translation>
  </message>
  <message>
   <source>What this position asks of its set</source>
   <translation>Qué pide esta posición a su conjunto</translation>
  </message>
  <message>
   <source>What this program can and cannot say.</source>
   <translation>Qué puede decir este programa y qué no.</translation>
  </message>
  <message>
   <source>What to do</source>
   <translation>Qué hacer</translation>
  </message>
  <message>
   <source>What to look at</source>
   <translation>Qué revisar</translation>
  </message>
  <message>
   <source>What to measure on site</source>
   <translation>Qué medir en la estación</translation>
  </message>
  <message>
   <source>What was found</source>
   <translation>Lo encontrado</translation>
  </message>
  <message>
   <source>What was found about it</source>
   <translation>Qué se halló sobre ella</translation>
  </message>
  <message>
   <source>What was not scanned in it is listed, and counted as none where you say so</source>
   <translation>Se enumera lo que no se escaneó en él, y se cuenta como nada si usted lo dice</translation>
  </message>
  <message>
   <source>What will change</source>
   <translation>Qué cambiará</translation>
  </message>
  <message>
   <source>What will change ({0})</source>
   <translation>Qué cambiará ({0})</translation>
  </message>
  <message>
   <source>What would be otherwise</source>
   <translation>Qué sería distinto</translation>
  </message>
  <message>
   <source>What would be right</source>
   <translation>Qué sería correcto</translation>
  </message>
  <message>
   <source>What would help</source>
   <translation>Qué ayudaría</translation>
  </message>
  <message>
   <source>When</source>
   <translation>Cuándo</translation>
  </message>
  <message>
   <source>Where it goes, where that is elsewhere.</source>
   <translation>Adónde se entrega, si es otro lugar.</translation>
  </message>
  <message>
   <source>Where own shares come from</source>
   <translation>De dónde vienen las partes propias</translation>
  </message>
  <message>
   <source>Where permission is open, nothing is ordered before it.</source>
   <translation>Donde falta el permiso, nada se pide antes.</translation>
  </message>
  <message>
   <source>Where the cord's cla&amp;mp sits on the hose</source>
   <translation>Dónde va la abra&amp;zadera del cable en la manguera</translation>
  </message>
  <message>
   <source>Where the quotation stands</source>
   <translation>Dónde está la cotización</translation>
  </message>
  <message>
   <source>Where the rate was read.</source>
   <translation>Dónde se leyó el tipo de cambio.</translation>
  </message>
  <message>
   <source>Where the set that is planned hangs here already.</source>
   <translation>Donde el conjunto planificado ya cuelga aquí.</translation>
  </message>
  <message>
   <source>Where the terms of the next quotation come from</source>
   <translation>De dónde vienen las condiciones de la próxima cotización</translation>
  </message>
  <message>
   <source>Where yes, one riser at the dispenser and one end at the tank are closed for each grade.</source>
   <translation>Si es así, se cierran por producto un tubo vertical en el surtidor y un extremo en el tanque.</translation>
  </message>
  <message>
   <source>Where yes, the unit is disconnected and its power isolated before the first dispenser is opened.</source>
   <translation>Si es así, se desconecta y se aísla su corriente antes de abrir el primer surtidor.</translation>
  </message>
  <message>
   <source>Where {where} shows “{shows}”: {field} becomes “{to}”</source>
   <translation>Donde {where} muestra “{shows}”: {field} pasa a “{to}”</translation>
  </message>
  <message>
   <source>Whether a part of which only one is installed has a share in the spares.</source>
   <translation>Si una pieza de la que hay una sola instalada participa en los repuestos.</translation>
  </message>
  <message>
   <source>Which &amp;liquid is sold here?</source>
   <translation>¿Qué líq&amp;uido se vende aquí?</translation>
  </message>
  <message>
   <source>Which &amp;tank feeds the position?</source>
   <translation>¿Qué &amp;tanque abastece la posición?</translation>
  </message>
  <message>
   <source>Which answers</source>
   <translation>Qué respuestas</translation>
  </message>
  <message>
   <source>Which breakaways it draws on.</source>
   <translation>En qué válvulas de ruptura se aplica.</translation>
  </message>
  <message>
   <source>Which hoses it draws on.</source>
   <translation>En qué mangueras se aplica.</translation>
  </message>
  <message>
   <source>Which limits apply. The adopted code and the authority having jurisdiction decide; ask them where a row is unconfirmed.</source>
   <translation>Qué límites valen. Deciden el código adoptado y la autoridad competente; pregúnteles donde una fila no esté confirmada.</translation>
  </message>
  <message>
   <source>Which way</source>
   <translation>Qué camino</translation>
  </message>
  <message>
   <source>Which way a rest goes.</source>
   <translation>Hacia dónde va el resto.</translation>
  </message>
  <message>
   <source>Which way do lists, sequence and money follow?</source>
   <translation>¿Qué &amp;camino siguen listas, secuencia y dinero?</translation>
  </message>
  <message>
   <source>While out of service.</source>
   <translation>Mientras está fuera de servicio.</translation>
  </message>
  <message>
   <source>Who</source>
   <translation>Quién</translation>
  </message>
  <message>
   <source>Who answers for it</source>
   <translation>Quién responde por ello</translation>
  </message>
  <message>
   <source>Who answers questions.</source>
   <translation>Quién responde preguntas.</translation>
  </message>
  <message>
   <source>Who did it</source>
   <translation>Quién lo hizo</translation>
  </message>
  <message>
   <source>Who is quoted to.</source>
   <translation>A quién se cotiza.</translation>
  </message>
  <message>
   <source>Who makes it</source>
   <translation>Quién la fabrica</translation>
  </message>
  <message>
   <source>Who publishes it</source>
   <translation>Quién la publica</translation>
  </message>
  <message>
   <source>Who quotes. It stands at the top of the quotation.</source>
   <translation>Quién cotiza. Va arriba en la cotización.</translation>
  </message>
  <message>
   <source>Who supplies the parts</source>
   <translation>Quién suministra las piezas</translation>
  </message>
  <message>
   <source>Whoever orders and stocks the parts</source>
   <translation>Quien pide y almacena las piezas</translation>
  </message>
  <message>
   <source>Whole drawing</source>
   <translation>Dibujo entero</translation>
  </message>
  <message>
   <source>Whole station</source>
   <translation>Toda la estación</translation>
  </message>
  <message>
   <source>Whom the bill is for. New quotations go to the customer of this name in the book.</source>
   <translation>Para quién es la lista. Las cotizaciones nuevas van al cliente de este nombre en el libro.</translation>
  </message>
  <message>
   <source>Whose e&amp;mission factors?</source>
   <translation>¿Qué &amp;factores de emisión?</translation>
  </message>
  <message>
   <source>Whose figures are shown</source>
   <translation>De quién son los datos que se muestran</translation>
  </message>
  <message>
   <source>Whose pages</source>
   <translation>Páginas de quién</translation>
  </message>
  <message>
   <source>Whose rule on removal applies?</source>
   <translation>¿De &amp;quién es la regla sobre el retiro?</translation>
  </message>
  <message>
   <source>Why</source>
   <translation>Por qué</translation>
  </message>
  <message>
   <source>Why no set fits</source>
   <translation>Por qué no hay ningún conjunto</translation>
  </message>
  <message>
   <source>Why the lists do not hold.</source>
   <translation>Por qué no valen las listas.</translation>
  </message>
  <message>
   <source>Why the site lies in its year</source>
   <translation>Por qué le toca ese año a la estación</translation>
  </message>
  <message>
   <source>Why these parts</source>
   <translation>Por qué estas piezas</translation>
  </message>
  <message>
   <source>Why this price applies</source>
   <translation>Por qué se aplica este precio</translation>
  </message>
  <message>
   <source>Why?</source>
   <translation>¿Por qué?</translation>
  </message>
  <message>
   <source>Windows-1252</source>
   <translation>Windows-1252</translation>
  </message>
  <message>
   <source>Wishes</source>
   <translation>Deseos</translation>
  </message>
  <message>
   <source>With all figures the part is judged like a new one and may stay; without any, it goes.</source>
   <translation>Con todas las cifras la pieza se juzga como una nueva y se puede quedar; sin ninguna, sale.</translation>
  </message>
  <message>
   <source>With or without biodiesel</source>
   <translation>Con o sin biodiésel</translation>
  </message>
  <message>
   <source>With or without ethanol</source>
   <translation>Con o sin etanol</translation>
  </message>
  <message>
   <source>With what the job of this survey takes</source>
   <translation>Con lo que lleva el trabajo de este levantamiento</translation>
  </message>
  <message>
   <source>Without breaking the ground.</source>
   <translation>Sin romper el suelo.</translation>
  </message>
  <message>
   <source>Without daily and weekly looks</source>
   <translation>Sin revisiones diarias ni semanales</translation>
  </message>
  <message>
   <source>Without it no payback is shown.</source>
   <translation>Sin ello no se muestra cuándo se paga.</translation>
  </message>
  <message>
   <source>Without price: {parts}.</source>
   <translation>Sin precio: {parts}.</translation>
  </message>
  <message>
   <source>Without terms the yearly cost is wear alone. Terms add drive-offs, losses through hoses and spares.</source>
   <translation>Sin condiciones el costo anual es solo el desgaste. Las condiciones añaden arranques, líquido perdido por las mangueras y repuestos.</translation>
  </message>
  <message>
   <source>Word or text there</source>
   <translation>Palabra o texto allí</translation>
  </message>
  <message>
   <source>Words between blanks, of: {0}</source>
   <translation>Palabras separadas por espacios, de: {0}</translation>
  </message>
  <message>
   <source>Words to look for</source>
   <translation>Palabras que buscar</translation>
  </message>
  <message>
   <source>Work done by</source>
   <translation>Trabajo hecho por</translation>
  </message>
  <message>
   <source>Work due at all stations</source>
   <translation>Trabajos pendientes en todas las estaciones</translation>
  </message>
  <message>
   <source>Work in hand</source>
   <translation>Trabajo en curso</translation>
  </message>
  <message>
   <source>Work it out</source>
   <translation>Calcularlo</translation>
  </message>
  <message>
   <source>Work out the conversion</source>
   <translation>Calcular la conversión</translation>
  </message>
  <message>
   <source>Workbook (XLSX)</source>
   <translation>Libro (XLSX)</translation>
  </message>
  <message>
   <source>Worked lines</source>
   <translation>Cálculos</translation>
  </message>
  <message>
   <source>Working hours o&amp;f a day</source>
   <translation>Horas de traba&amp;jo por día</translation>
  </message>
  <message>
   <source>Working out all positions…</source>
   <translation>Calculando todas las posiciones…</translation>
  </message>
  <message>
   <source>Working out the cases…</source>
   <translation>Calculando los casos…</translation>
  </message>
  <message>
   <source>Working out what is due…</source>
   <translation>Calculando qué vence…</translation>
  </message>
  <message>
   <source>Worth of one part number &amp;less</source>
   <translation>Valor de un número de pieza &amp;menos</translation>
  </message>
  <message>
   <source>Wound on a drum</source>
   <translation>Enrollada en un tambor</translation>
  </message>
  <message>
   <source>Write into chosen cells</source>
   <translation>Escribir</translation>
  </message>
  <message>
   <source>Write into column</source>
   <translation>Escribir en la columna</translation>
  </message>
  <message>
   <source>Write into every row that shows a text</source>
   <translation>Escribir en toda fila que muestra un texto</translation>
  </message>
  <message>
   <source>Write the maker and the number of the part as the maker writes it.</source>
   <translation>Escriba el fabricante y el número de la pieza como los escribe el fabricante.</translation>
  </message>
  <message>
   <source>Write the survey</source>
   <translation>Guardar el levantamiento</translation>
  </message>
  <message>
   <source>Write these terms into a file (Ctrl+S)</source>
   <translation>Guardar estas condiciones en un archivo (Ctrl+S)</translation>
  </message>
  <message>
   <source>Write this survey to a file. The book keeps every change by itself.</source>
   <translation>Guardar este levantamiento en un archivo. El libro guarda solo cada cambio.</translation>
  </message>
  <message>
   <source>Write to a file…</source>
   <translation>Guardar en un archivo…</translation>
  </message>
  <message>
   <source>Write your name first: it stands on record with this step.</source>
   <translation>Escriba antes su nombre: queda anotado con este paso.</translation>
  </message>
  <message>
   <source>Write {0} cells</source>
   <translation>Escribir {0} celdas</translation>
  </message>
  <message>
   <source>Write {0} of {1}</source>
   <translation>Escribir {0} de {1}</translation>
  </message>
  <message>
   <source>Writes a mail with this paper attached and opens it in your mail program; nothing is sent by itself.</source>
   <translation>Escribe un correo con este papel adjunto y lo abre en su programa de correo; nada se envía por sí solo.</translation>
  </message>
  <message>
   <source>Writes what the book holds of a survey that cannot be read into a file</source>
   <translation>Guarda en un archivo lo que el libro contiene de un levantamiento que no se puede leer</translation>
  </message>
  <message>
   <source>Written as YYYY-MM-DD.</source>
   <translation>Escrita como AAAA-MM-DD.</translation>
  </message>
  <message>
   <source>Written to {0}</source>
   <translation>Escrito en {0}</translation>
  </message>
  <message>
   <source>Written to {path}</source>
   <translation>Escrito en {path}</translation>
  </message>
  <message>
   <source>Year</source>
   <translation>Año</translation>
  </message>
  <message>
   <source>Year in which the agency wants it done</source>
   <translation>Año en que la agencia lo quiere hecho</translation>
  </message>
  <message>
   <source>Year or rank</source>
   <translation>Año o lugar</translation>
  </message>
  <message>
   <source>Year-month-day, such as 2027-03-01: the day of the notice. A calendar needs it.</source>
   <translation>Año-mes-día, como 2027-03-01: el día del aviso. Un calendario lo necesita.</translation>
  </message>
  <message>
   <source>Year-month-day.</source>
   <translation>Año-mes-día.</translation>
  </message>
  <message>
   <source>Year-month-day. Prices that are valid on this day are used.</source>
   <translation>Año-mes-día. Se usan los precios vigentes ese día.</translation>
  </message>
  <message>
   <source>Yearly &amp;upkeep today</source>
   <translation>Ma&amp;ntenimiento anual hoy</translation>
  </message>
  <message>
   <source>Yearly cost</source>
   <translation>Costo anual</translation>
  </message>
  <message>
   <source>Yearly upkeep &amp;afterwards</source>
   <translation>Mantenimiento anual despu&amp;és</translation>
  </message>
  <message>
   <source>Years</source>
   <translation>Años</translation>
  </message>
  <message>
   <source>Years that are compared</source>
   <translation>Años que se comparan</translation>
  </message>
  <message>
   <source>Years, sites and money, as a paper</source>
   <translation>Años, estaciones y dinero, en papel</translation>
  </message>
  <message>
   <source>Years, sites, visits and terms (XLSX)</source>
   <translation>Años, estaciones, visitas y condiciones (XLSX)</translation>
  </message>
  <message>
   <source>Yes</source>
   <translation>Sí</translation>
  </message>
  <message>
   <source>Your changes are in the book; a newer revision too</source>
   <translation>Sus cambios están en el libro; una revisión más nueva también</translation>
  </message>
  <message>
   <source>Your name</source>
   <translation>Su nombre</translation>
  </message>
  <message>
   <source>Your own parts and prices: suppliers' tables taken over, looked at, published as editions.</source>
   <translation>Piezas y precios propios: tablas de proveedores incorporadas, revisadas y publicadas como ediciones.</translation>
  </message>
  <message>
   <source>Your own quotation number, or a pattern for the book: {year}-{serial:04}.</source>
   <translation>Su propio número de cotización, o un patrón para el libro: {year}-{serial:04}.</translation>
  </message>
  <message>
   <source>Your text</source>
   <translation>Su texto</translation>
  </message>
  <message>
   <source>a day is needed</source>
   <translation>hace falta un día</translation>
  </message>
  <message>
   <source>a fixed amount</source>
   <translation>un importe fijo</translation>
  </message>
  <message>
   <source>a note</source>
   <translation>una nota</translation>
  </message>
  <message>
   <source>a photo of the record</source>
   <translation>una foto del registro</translation>
  </message>
  <message>
   <source>a question is open</source>
   <translation>queda una pregunta abierta</translation>
  </message>
  <message>
   <source>a whole number from 0 to {0} is needed</source>
   <translation>hace falta un número entero de 0 a {0}</translation>
  </message>
  <message>
   <source>accepted</source>
   <translation>aceptada</translation>
  </message>
  <message>
   <source>agreed</source>
   <translation>acordado</translation>
  </message>
  <message>
   <source>always downwards</source>
   <translation>siempre hacia abajo</translation>
  </message>
  <message>
   <source>always upwards</source>
   <translation>siempre hacia arriba</translation>
  </message>
  <message>
   <source>an amount for each kilogram</source>
   <translation>un importe por kilogramo</translation>
  </message>
  <message>
   <source>an assumed figure, to be confirmed</source>
   <translation>una cifra supuesta, por confirmar</translation>
  </message>
  <message>
   <source>and {0} more</source>
   <translation>y {0} más</translation>
  </message>
  <message>
   <source>any</source>
   <translation>cualquiera</translation>
  </message>
  <message>
   <source>applies</source>
   <translation>se aplica</translation>
  </message>
  <message>
   <source>as agreed</source>
   <translation>según lo acordado</translation>
  </message>
  <message>
   <source>as before</source>
   <translation>como antes</translation>
  </message>
  <message>
   <source>as built</source>
   <translation>según lo construido</translation>
  </message>
  <message>
   <source>as changed in the window</source>
   <translation>según los cambios en la ventana</translation>
  </message>
  <message>
   <source>as in the table</source>
   <translation>como en la tabla</translation>
  </message>
  <message>
   <source>as in the worked example</source>
   <translation>como en el ejemplo resuelto</translation>
  </message>
  <message>
   <source>as planned</source>
   <translation>según el plan</translation>
  </message>
  <message>
   <source>as published</source>
   <translation>como se publicó</translation>
  </message>
  <message>
   <source>as the agency asks</source>
   <translation>como pide la agencia</translation>
  </message>
  <message>
   <source>as the code says, else 1</source>
   <translation>lo que diga el código, si no 1</translation>
  </message>
  <message>
   <source>at most </source>
   <translation>como máximo </translation>
  </message>
  <message>
   <source>being planned</source>
   <translation>planificándose</translation>
  </message>
  <message>
   <source>being worked out</source>
   <translation>en curso</translation>
  </message>
  <message>
   <source>book</source>
   <translation>libro</translation>
  </message>
  <message>
   <source>built</source>
   <translation>instalado</translation>
  </message>
  <message>
   <source>built in</source>
   <translation>integrado</translation>
  </message>
  <message>
   <source>by positions</source>
   <translation>por posiciones</translation>
  </message>
  <message>
   <source>cannot be planned</source>
   <translation>no se puede planificar</translation>
  </message>
  <message>
   <source>caution</source>
   <translation>precaución</translation>
  </message>
  <message>
   <source>changed</source>
   <translation>cambiada</translation>
  </message>
  <message>
   <source>choose a cell further left: the table ends after {0} columns</source>
   <translation>elija una celda más a la izquierda: la tabla termina tras {0} columnas</translation>
  </message>
  <message>
   <source>choose, or write such as 1 1/2 NPT male</source>
   <translation>elija o escriba, por ejemplo 1 1/2 NPT male</translation>
  </message>
  <message>
   <source>choose, or write such as E15</source>
   <translation>elija o escriba, por ejemplo E15</translation>
  </message>
  <message>
   <source>columns</source>
   <translation>columnas</translation>
  </message>
  <message>
   <source>complete</source>
   <translation>completo</translation>
  </message>
  <message>
   <source>cost and a mark-up on it</source>
   <translation>costo más un recargo</translation>
  </message>
  <message>
   <source>cost with a margin on the selling price</source>
   <translation>costo con un margen sobre el precio de venta</translation>
  </message>
  <message>
   <source>costs less</source>
   <translation>cuesta menos</translation>
  </message>
  <message>
   <source>costs more</source>
   <translation>cuesta más</translation>
  </message>
  <message>
   <source>data sheet</source>
   <translation>hoja de datos</translation>
  </message>
  <message>
   <source>date</source>
   <translation>fecha</translation>
  </message>
  <message>
   <source>dated {0}</source>
   <translation>con fecha {0}</translation>
  </message>
  <message>
   <source>day</source>
   <translation>día</translation>
  </message>
  <message>
   <source>day of handing over</source>
   <translation>día de entrega</translation>
  </message>
  <message>
   <source>declined</source>
   <translation>rechazada</translation>
  </message>
  <message>
   <source>dispenser</source>
   <translation>surtidor</translation>
  </message>
  <message>
   <source>dispenser {0}</source>
   <translation>surtidor {0}</translation>
  </message>
  <message>
   <source>does not fit</source>
   <translation>no sirve</translation>
  </message>
  <message>
   <source>does not list this part</source>
   <translation>no incluye esta pieza</translation>
  </message>
  <message>
   <source>draft</source>
   <translation>borrador</translation>
  </message>
  <message>
   <source>drafted</source>
   <translation>en borrador</translation>
  </message>
  <message>
   <source>edition {0}</source>
   <translation>edición {0}</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>vacío</translation>
  </message>
  <message>
   <source>empty:</source>
   <translation>vacío:</translation>
  </message>
  <message>
   <source>empty: no limit</source>
   <translation>vacío: sin límite</translation>
  </message>
  <message>
   <source>empty: no picture</source>
   <translation>vacío: sin imagen</translation>
  </message>
  <message>
   <source>empty: none</source>
   <translation>vacío: ninguno</translation>
  </message>
  <message>
   <source>empty: {0}</source>
   <translation>vacío: {0}</translation>
  </message>
  <message>
   <source>ended</source>
   <translation>terminada</translation>
  </message>
  <message>
   <source>every dispenser</source>
   <translation>todos los surtidores</translation>
  </message>
  <message>
   <source>every kind</source>
   <translation>todos los tipos</translation>
  </message>
  <message>
   <source>every status</source>
   <translation>todo estado</translation>
  </message>
  <message>
   <source>expired</source>
   <translation>vencida</translation>
  </message>
  <message>
   <source>families changed</source>
   <translation>familias cambiadas</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>pies</translation>
  </message>
  <message>
   <source>file=year; file=year, such as north.json=2028</source>
   <translation>archivo=año; archivo=año, como norte.json=2028</translation>
  </message>
  <message>
   <source>fits</source>
   <translation>sirve</translation>
  </message>
  <message>
   <source>fits, good practice not met in full</source>
   <translation>sirve, con reservas</translation>
  </message>
  <message>
   <source>for each line</source>
   <translation>por cada línea</translation>
  </message>
  <message>
   <source>from the family {0}</source>
   <translation>de la familia {0}</translation>
  </message>
  <message>
   <source>from the similar part {0}</source>
   <translation>de la pieza similar {0}</translation>
  </message>
  <message>
   <source>from, such as 2027-01-01</source>
   <translation>desde, como 2027-01-01</translation>
  </message>
  <message>
   <source>gets a set</source>
   <translation>obtiene un conjunto</translation>
  </message>
  <message>
   <source>gets other parts</source>
   <translation>recibe otras piezas</translation>
  </message>
  <message>
   <source>gone</source>
   <translation>desaparecida</translation>
  </message>
  <message>
   <source>in order</source>
   <translation>en orden</translation>
  </message>
  <message>
   <source>instructions</source>
   <translation>instrucciones</translation>
  </message>
  <message>
   <source>is in a currency that is not wanted</source>
   <translation>en una moneda que no se pide</translation>
  </message>
  <message>
   <source>is of another supplier</source>
   <translation>de otro proveedor</translation>
  </message>
  <message>
   <source>issued</source>
   <translation>emitida</translation>
  </message>
  <message>
   <source>its answers go &amp;before those of the positions</source>
   <translation>sus respuestas van &amp;antes que las de las posiciones</translation>
  </message>
  <message>
   <source>its last day is over</source>
   <translation>pasó su último día</translation>
  </message>
  <message>
   <source>left out</source>
   <translation>dejado fuera</translation>
  </message>
  <message>
   <source>list price less a discount</source>
   <translation>precio de lista menos un descuento</translation>
  </message>
  <message>
   <source>list price: {0}</source>
   <translation>precio de lista: {0}</translation>
  </message>
  <message>
   <source>listing certificate</source>
   <translation>constancia de listado</translation>
  </message>
  <message>
   <source>looking…</source>
   <translation>buscando…</translation>
  </message>
  <message>
   <source>loses its set</source>
   <translation>pierde su conjunto</translation>
  </message>
  <message>
   <source>made from its parts</source>
   <translation>a partir de sus piezas</translation>
  </message>
  <message>
   <source>maker</source>
   <translation>fabricante</translation>
  </message>
  <message>
   <source>meters</source>
   <translation>metros</translation>
  </message>
  <message>
   <source>much like {0}</source>
   <translation>muy parecida a {0}</translation>
  </message>
  <message>
   <source>my_county</source>
   <translation>mi_municipio</translation>
  </message>
  <message>
   <source>name of the list</source>
   <translation>nombre de la lista</translation>
  </message>
  <message>
   <source>needs a look</source>
   <translation>hay que revisarlo</translation>
  </message>
  <message>
   <source>new</source>
   <translation>nueva</translation>
  </message>
  <message>
   <source>no</source>
   <translation>no</translation>
  </message>
  <message>
   <source>no address yet</source>
   <translation>aún sin dirección</translation>
  </message>
  <message>
   <source>no age limit</source>
   <translation>sin límite de edad</translation>
  </message>
  <message>
   <source>no figure</source>
   <translation>sin cifra</translation>
  </message>
  <message>
   <source>no listing</source>
   <translation>sin certificación</translation>
  </message>
  <message>
   <source>no longer in the catalog</source>
   <translation>ya no está en el catálogo</translation>
  </message>
  <message>
   <source>no longer made</source>
   <translation>ya no se fabrica</translation>
  </message>
  <message>
   <source>no set</source>
   <translation>sin conjunto</translation>
  </message>
  <message>
   <source>no spare</source>
   <translation>sin repuesto</translation>
  </message>
  <message>
   <source>none</source>
   <translation>ninguno</translation>
  </message>
  <message>
   <source>none is known</source>
   <translation>no se conoce ninguno</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>aún ninguna</translation>
  </message>
  <message>
   <source>not answered yet</source>
   <translation>aún sin respuesta</translation>
  </message>
  <message>
   <source>not chosen in any option</source>
   <translation>no elegida en ninguna opción</translation>
  </message>
  <message>
   <source>not dated</source>
   <translation>sin fecha</translation>
  </message>
  <message>
   <source>not decided whether it would do</source>
   <translation>sin decidir si serviría</translation>
  </message>
  <message>
   <source>not in order</source>
   <translation>no en orden</translation>
  </message>
  <message>
   <source>not in the table</source>
   <translation>no está en la tabla</translation>
  </message>
  <message>
   <source>not kept yet</source>
   <translation>aún sin guardar</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>no se sabe</translation>
  </message>
  <message>
   <source>not known here</source>
   <translation>aquí no se conoce</translation>
  </message>
  <message>
   <source>not known, none counted</source>
   <translation>no se sabe, no se cuenta ninguno</translation>
  </message>
  <message>
   <source>not noted which</source>
   <translation>no consta cuál</translation>
  </message>
  <message>
   <source>not open</source>
   <translation>no abierto</translation>
  </message>
  <message>
   <source>not recorded</source>
   <translation>sin registrar</translation>
  </message>
  <message>
   <source>not said</source>
   <translation>no dicho</translation>
  </message>
  <message>
   <source>not stated</source>
   <translation>sin indicar</translation>
  </message>
  <message>
   <source>not surveyed yet</source>
   <translation>aún sin levantar</translation>
  </message>
  <message>
   <source>not valid yet</source>
   <translation>aún no válida</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nada</translation>
  </message>
  <message>
   <source>nothing agreed</source>
   <translation>nada acordado</translation>
  </message>
  <message>
   <source>of {0}</source>
   <translation>de {0}</translation>
  </message>
  <message>
   <source>offered in its place</source>
   <translation>ofrecida en su lugar</translation>
  </message>
  <message>
   <source>old numbers changed</source>
   <translation>números antiguos cambiados</translation>
  </message>
  <message>
   <source>once for the whole quotation</source>
   <translation>una vez para toda la cotización</translation>
  </message>
  <message>
   <source>one for all, or one for each: 1, 2, 2, 3</source>
   <translation>uno para todos, o uno para cada uno: 1, 2, 2, 3</translation>
  </message>
  <message>
   <source>open</source>
   <translation>abierta</translation>
  </message>
  <message>
   <source>own</source>
   <translation>propio</translation>
  </message>
  <message>
   <source>part number</source>
   <translation>número de pieza</translation>
  </message>
  <message>
   <source>pasted</source>
   <translation>pegado</translation>
  </message>
  <message>
   <source>percent of the materials</source>
   <translation>por ciento de los materiales</translation>
  </message>
  <message>
   <source>picture</source>
   <translation>imagen</translation>
  </message>
  <message>
   <source>planned, not agreed</source>
   <translation>previsto, no acordado</translation>
  </message>
  <message>
   <source>planned; others agreed</source>
   <translation>previsto; otro acordado</translation>
  </message>
  <message>
   <source>position {0}</source>
   <translation>posición {0}</translation>
  </message>
  <message>
   <source>price</source>
   <translation>precio</translation>
  </message>
  <message>
   <source>price list</source>
   <translation>lista de precios</translation>
  </message>
  <message>
   <source>price lists changed</source>
   <translation>listas de precios cambiadas</translation>
  </message>
  <message>
   <source>price lists new, changed or taken out: {lists}</source>
   <translation>listas de precios nuevas, cambiadas o quitadas: {lists}</translation>
  </message>
  <message>
   <source>price {0:+.0%}</source>
   <translation>precio {0:+.0%}</translation>
  </message>
  <message>
   <source>program</source>
   <translation>programa</translation>
  </message>
  <message>
   <source>put in {0}; set {1}</source>
   <translation>puesto en {0}; conjunto {1}</translation>
  </message>
  <message>
   <source>quoted again, not kept yet</source>
   <translation>cotizada otra vez, aún sin guardar</translation>
  </message>
  <message>
   <source>read out of its text: {0}</source>
   <translation>leído de su texto: {0}</translation>
  </message>
  <message>
   <source>reason</source>
   <translation>motivo</translation>
  </message>
  <message>
   <source>replaced by its maker</source>
   <translation>sustituida por su fabricante</translation>
  </message>
  <message>
   <source>replaced by its maker: {0}</source>
   <translation>sustituida por su fabricante: {0}</translation>
  </message>
  <message>
   <source>r{0}</source>
   <translation>r{0}</translation>
  </message>
  <message>
   <source>same</source>
   <translation>igual</translation>
  </message>
  <message>
   <source>say why: it stands on the paper</source>
   <translation>diga por qué: consta en el documento</translation>
  </message>
  <message>
   <source>sells this part only from a greater quantity</source>
   <translation>vende esta pieza solo desde una cantidad mayor</translation>
  </message>
  <message>
   <source>share in the spares</source>
   <translation>con repuestos</translation>
  </message>
  <message>
   <source>site</source>
   <translation>estación</translation>
  </message>
  <message>
   <source>site visit</source>
   <translation>visita</translation>
  </message>
  <message>
   <source>size</source>
   <translation>tamaño</translation>
  </message>
  <message>
   <source>somebody has to answer for a price</source>
   <translation>alguien tiene que responder por un precio</translation>
  </message>
  <message>
   <source>something is still needed</source>
   <translation>aún falta algo</translation>
  </message>
  <message>
   <source>stock list</source>
   <translation>lista de existencias</translation>
  </message>
  <message>
   <source>such as 1 1/2 NPT male</source>
   <translation>por ejemplo 1 1/2 NPT male</translation>
  </message>
  <message>
   <source>such as 2027</source>
   <translation>como 2027</translation>
  </message>
  <message>
   <source>such as E30</source>
   <translation>por ejemplo E30</translation>
  </message>
  <message>
   <source>supplier</source>
   <translation>proveedor</translation>
  </message>
  <message>
   <source>the catalog states otherwise: {0}</source>
   <translation>el catálogo dice otra cosa: {0}</translation>
  </message>
  <message>
   <source>the file of the terms</source>
   <translation>el archivo de las condiciones</translation>
  </message>
  <message>
   <source>the filled form</source>
   <translation>la hoja rellenada</translation>
  </message>
  <message>
   <source>the name of the file</source>
   <translation>el nombre del archivo</translation>
  </message>
  <message>
   <source>the newest is revision {0}</source>
   <translation>la más nueva es la revisión {0}</translation>
  </message>
  <message>
   <source>the start view</source>
   <translation>la vista de inicio</translation>
  </message>
  <message>
   <source>the straight way</source>
   <translation>el camino recto</translation>
  </message>
  <message>
   <source>the survey that was open last</source>
   <translation>el levantamiento abierto al final</translation>
  </message>
  <message>
   <source>the usual figure for the duty</source>
   <translation>la cifra usual para el uso</translation>
  </message>
  <message>
   <source>the usual figure of the local rules</source>
   <translation>la cifra usual de las reglas locales</translation>
  </message>
  <message>
   <source>the usual ones</source>
   <translation>las usuales</translation>
  </message>
  <message>
   <source>the very part</source>
   <translation>la misma pieza</translation>
  </message>
  <message>
   <source>the whole station</source>
   <translation>toda la estación</translation>
  </message>
  <message>
   <source>there</source>
   <translation>hay</translation>
  </message>
  <message>
   <source>this survey</source>
   <translation>este levantamiento</translation>
  </message>
  <message>
   <source>those of {number} r{revision}</source>
   <translation>las de {number} r{revision}</translation>
  </message>
  <message>
   <source>title of the copy</source>
   <translation>título de la copia</translation>
  </message>
  <message>
   <source>to</source>
   <translation>a</translation>
  </message>
  <message>
   <source>to follow up b&amp;y today</source>
   <translation>&amp;seguimiento hasta hoy</translation>
  </message>
  <message>
   <source>to the nearest, a half to the even digit</source>
   <translation>al más cercano, el medio al dígito par</translation>
  </message>
  <message>
   <source>to the nearest, a half upwards</source>
   <translation>al más cercano, el medio hacia arriba</translation>
  </message>
  <message>
   <source>to the right</source>
   <translation>a la derecha</translation>
  </message>
  <message>
   <source>to {0}</source>
   <translation>para {0}</translation>
  </message>
  <message>
   <source>to; empty: open</source>
   <translation>hasta; vacío: abierta</translation>
  </message>
  <message>
   <source>undoes no. {0}</source>
   <translation>anula el n.º {0}</translation>
  </message>
  <message>
   <source>undone</source>
   <translation>anulado</translation>
  </message>
  <message>
   <source>upward</source>
   <translation>hacia arriba</translation>
  </message>
  <message>
   <source>valid</source>
   <translation>válida</translation>
  </message>
  <message>
   <source>valid from</source>
   <translation>válida desde</translation>
  </message>
  <message>
   <source>valid to</source>
   <translation>válida hasta</translation>
  </message>
  <message>
   <source>what its kind says</source>
   <translation>lo que dice su tipo</translation>
  </message>
  <message>
   <source>which blocks the issue</source>
   <translation>lo que impide emitirla</translation>
  </message>
  <message>
   <source>with agreement</source>
   <translation>con el acuerdo</translation>
  </message>
  <message>
   <source>would apply too: another currency is wanted, or it began earlier</source>
   <translation>también se aplicaría: se pide otra moneda, o empezó antes</translation>
  </message>
  <message>
   <source>would not do</source>
   <translation>no serviría</translation>
  </message>
  <message>
   <source>write a day such as {0}, or as YYYY-MM-DD</source>
   <translation>escriba un día como {0}, o como YYYY-MM-DD</translation>
  </message>
  <message>
   <source>write the day as 2027-03-01</source>
   <translation>escriba el día como 2027-03-01</translation>
  </message>
  <message>
   <source>write the name of the list and its maker first</source>
   <translation>escriba primero el nombre de la lista y su fabricante</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>sí</translation>
  </message>
  <message>
   <source>yes or no</source>
   <translation>sí o no</translation>
  </message>
  <message>
   <source>your name</source>
   <translation>su nombre</translation>
  </message>
  <message>
   <source>{0} (stays)</source>
   <translation>{0} (se queda)</translation>
  </message>
  <message>
   <source>{0} against the first option</source>
   <translation>{0} frente a la primera opción</translation>
  </message>
  <message>
   <source>{0} as it is in hand, and as the survey and the terms in hand would be quoted now.</source>
   <translation>{0} como está a la vista, y como se cotizarían ahora el levantamiento y los términos a la vista.</translation>
  </message>
  <message>
   <source>{0} as it is, and with {1} instead of {2}.</source>
   <translation>{0} como está, y con {1} en lugar de {2}.</translation>
  </message>
  <message>
   <source>{0} differences</source>
   <translation>{0} diferencias</translation>
  </message>
  <message>
   <source>{0} entries</source>
   <translation>{0} entradas</translation>
  </message>
  <message>
   <source>{0} entries, the first {1} shown</source>
   <translation>{0} entradas, se muestran las primeras {1}</translation>
  </message>
  <message>
   <source>{0} files are in {1}</source>
   <translation>{0} archivos están en {1}</translation>
  </message>
  <message>
   <source>{0} instead of {1}</source>
   <translation>{0} en lugar de {1}</translation>
  </message>
  <message>
   <source>{0} is a table of positions: begin a survey first, then drop it here.</source>
   <translation>{0} es una tabla de posiciones: comience primero un levantamiento y suéltela después aquí.</translation>
  </message>
  <message>
   <source>{0} is gone</source>
   <translation>{0} ha desaparecido</translation>
  </message>
  <message>
   <source>{0} is in the book.</source>
   <translation>{0} está en el libro.</translation>
  </message>
  <message>
   <source>{0} is new</source>
   <translation>{0} es nueva</translation>
  </message>
  <message>
   <source>{0} is no longer in the list; quotations keep what they have.</source>
   <translation>{0} ya no está en la lista; las cotizaciones conservan lo que tienen.</translation>
  </message>
  <message>
   <source>{0} is sold cut to length with its fittings: each length becomes a part that the search may choose.</source>
   <translation>{0} se vende cortada a medida con sus accesorios: cada longitud es una pieza que la búsqueda puede elegir.</translation>
  </message>
  <message>
   <source>{0} is the customer of this station from now on.</source>
   <translation>{0} es desde ahora el cliente de esta estación.</translation>
  </message>
  <message>
   <source>{0} lengths, from {1} to {2}</source>
   <translation>{0} longitudes, de {1} a {2}</translation>
  </message>
  <message>
   <source>{0} missing, {1} by a person's word, {2} in all.</source>
   <translation>{0} faltan, {1} por la palabra de una persona, {2} en total.</translation>
  </message>
  <message>
   <source>{0} more than the job needs: bring them back.</source>
   <translation>{0} más de lo que el trabajo necesita: devuélvalas.</translation>
  </message>
  <message>
   <source>{0} new, {1} changed, {2} as they were</source>
   <translation>{0} nuevos, {1} cambiados, {2} como estaban</translation>
  </message>
  <message>
   <source>{0} of {1} are due by today.</source>
   <translation>Vencen {0} de {1} hasta hoy.</translation>
  </message>
  <message>
   <source>{0} of {1} are overdue.</source>
   <translation>{0} de {1} están atrasados.</translation>
  </message>
  <message>
   <source>{0} of {1} built</source>
   <translation>{0} de {1} instaladas</translation>
  </message>
  <message>
   <source>{0} of {1} do not fit</source>
   <translation>{0} de {1} no sirven</translation>
  </message>
  <message>
   <source>{0} of {1} fit</source>
   <translation>{0} de {1} sirven</translation>
  </message>
  <message>
   <source>{0} of {1} positions differ.</source>
   <translation>{0} de {1} posiciones difieren.</translation>
  </message>
  <message>
   <source>{0} of {1} stocked parts of this kind would do.</source>
   <translation>Servirían {0} de {1} piezas en existencia de este tipo.</translation>
  </message>
  <message>
   <source>{0} of {1} surveyed</source>
   <translation>{0} de {1} levantadas</translation>
  </message>
  <message>
   <source>{0} of {1} that the job needs</source>
   <translation>{0} de {1} que el trabajo necesita</translation>
  </message>
  <message>
   <source>{0} of {1}, {2} faulty</source>
   <translation>{0} de {1}, {2} con fallos</translation>
  </message>
  <message>
   <source>{0} old numbers</source>
   <translation>{0} números antiguos</translation>
  </message>
  <message>
   <source>{0} old numbers, the first {1} shown</source>
   <translation>{0} números antiguos, se muestran los primeros {1}</translation>
  </message>
  <message>
   <source>{0} open quotation is touched by a change of catalog or price lists:</source>
   <translation>Un cambio del catálogo o de las listas de precios toca {0} cotización abierta:</translation>
  </message>
  <message>
   <source>{0} open quotations are touched by a change of catalog or price lists:</source>
   <translation>Un cambio del catálogo o de las listas de precios toca {0} cotizaciones abiertas:</translation>
  </message>
  <message>
   <source>{0} pages</source>
   <translation>{0} páginas</translation>
  </message>
  <message>
   <source>{0} part</source>
   <translation>{0} pieza</translation>
  </message>
  <message>
   <source>{0} parts</source>
   <translation>{0} piezas</translation>
  </message>
  <message>
   <source>{0} parts take over the figures that they lack; each figure says from which part it is.</source>
   <translation>{0} piezas toman los datos que les faltan; cada dato dice de qué pieza es.</translation>
  </message>
  <message>
   <source>{0} position picked</source>
   <translation>{0} posición elegida</translation>
  </message>
  <message>
   <source>{0} positions</source>
   <translation>{0} posiciones</translation>
  </message>
  <message>
   <source>{0} positions picked</source>
   <translation>{0} posiciones elegidas</translation>
  </message>
  <message>
   <source>{0} price is missing</source>
   <translation>Falta {0} precio</translation>
  </message>
  <message>
   <source>{0} price lists in the draft now.</source>
   <translation>Ahora {0} listas de precios en el borrador.</translation>
  </message>
  <message>
   <source>{0} price lists in this edition; those in folders hold beside them.</source>
   <translation>{0} listas de precios en esta edición; las de las carpetas valen además.</translation>
  </message>
  <message>
   <source>{0} prices are missing</source>
   <translation>Faltan {0} precios</translation>
  </message>
  <message>
   <source>{0} quotation</source>
   <translation>{0} cotización</translation>
  </message>
  <message>
   <source>{0} quotations</source>
   <translation>{0} cotizaciones</translation>
  </message>
  <message>
   <source>{0} rows differ from {1}.</source>
   <translation>{0} filas difieren de {1}.</translation>
  </message>
  <message>
   <source>{0} rows read…</source>
   <translation>{0} filas leídas…</translation>
  </message>
  <message>
   <source>{0} r{1}: an older revision</source>
   <translation>{0} r{1}: una revisión anterior</translation>
  </message>
  <message>
   <source>{0} r{1}: {2}</source>
   <translation>{0} rev. {1}: {2}</translation>
  </message>
  <message>
   <source>{0} sets are agreed; papers show them from now on.</source>
   <translation>{0} conjuntos están acordados; los documentos los muestran desde ahora.</translation>
  </message>
  <message>
   <source>{0} surveys</source>
   <translation>{0} levantamientos</translation>
  </message>
  <message>
   <source>{0} surveys cannot be planned with both.</source>
   <translation>{0} levantamientos no se pueden planificar con ambas.</translation>
  </message>
  <message>
   <source>{0} things to look at under the local rules of this site.</source>
   <translation>{0} puntos por revisar según las reglas locales de esta estación.</translation>
  </message>
  <message>
   <source>{0}, came since the count began</source>
   <translation>{0}, llegaron desde que empezó el recuento</translation>
  </message>
  <message>
   <source>{0}: installed</source>
   <translation>{0}: instalado</translation>
  </message>
  <message>
   <source>{0}: not in the book yet</source>
   <translation>{0}: aún no está en el libro</translation>
  </message>
  <message>
   <source>{0}: reason</source>
   <translation>{0}: motivo</translation>
  </message>
  <message>
   <source>{0}: the options differ</source>
   <translation>{0}: las opciones difieren</translation>
  </message>
  <message>
   <source>{0}: the same</source>
   <translation>{0}: igual</translation>
  </message>
  <message>
   <source>{0}: the sets differ</source>
   <translation>{0}: los conjuntos difieren</translation>
  </message>
  <message>
   <source>{0}: the survey has changed since the sheet was printed. Print it anew before working by it.</source>
   <translation>{0}: el levantamiento cambió desde que se imprimió la hoja. Imprímala de nuevo antes de trabajar con ella.</translation>
  </message>
  <message>
   <source>{0}: the survey is as it was when the sheet was printed.</source>
   <translation>{0}: el levantamiento está como cuando se imprimió la hoja.</translation>
  </message>
  <message>
   <source>{0}: {1} parts have its figures.</source>
   <translation>{0}: {1} piezas tienen sus datos.</translation>
  </message>
  <message>
   <source>{0}: {1}, {2} parts</source>
   <translation>{0}: {1}, {2} piezas</translation>
  </message>
  <message>
   <source>{0}; another unit may stand behind the number.</source>
   <translation>{0}; detrás del número puede ir otra unidad.</translation>
  </message>
  <message>
   <source>{0}; lines: {1}, pieces: {2}</source>
   <translation>{0}; líneas: {1}, piezas: {2}</translation>
  </message>
  <message>
   <source>{count} of {all} positions have no set and are not in the sum.</source>
   <translation>{count} de {all} posiciones no tienen conjunto y no están en la suma.</translation>
  </message>
  <message>
   <source>{count} other parts could hang here, {misfits} of the kind could not.</source>
   <translation>Aquí podrían colgar {count} piezas más; {misfits} de ese tipo no podrían.</translation>
  </message>
  <message>
   <source>{count} other parts could hang here.</source>
   <translation>Aquí podrían colgar {count} piezas más.</translation>
  </message>
  <message>
   <source>{count} parts · lead time {days} · mass {mass} · list prices</source>
   <translation>{count} piezas · plazo de entrega {days} · masa {mass} · precios de lista</translation>
  </message>
  <message>
   <source>{count} positions would change.</source>
   <translation>Cambiarían {count} posiciones.</translation>
  </message>
  <message>
   <source>{count} positions: {told}.</source>
   <translation>{count} posiciones: {told}.</translation>
  </message>
  <message>
   <source>{done} of {total} combinations asked</source>
   <translation>{done} de {total} combinaciones preguntadas</translation>
  </message>
  <message>
   <source>{done} of {total} positions planned over all options; choosing sets together…</source>
   <translation>{done} de {total} posiciones de todas las opciones planificadas; eligiendo conjuntos en común…</translation>
  </message>
  <message>
   <source>{done} of {total} sites converted</source>
   <translation>{done} de {total} estaciones convertidas</translation>
  </message>
  <message>
   <source>{field}: “{word}” becomes “{by}” everywhere</source>
   <translation>{field}: “{word}” pasa a “{by}” en todas partes</translation>
  </message>
  <message>
   <source>{file} into the draft of {catalog}</source>
   <translation>{file} al borrador de {catalog}</translation>
  </message>
  <message>
   <source>{file} is in the draft of {catalog}.</source>
   <translation>{file} está en el borrador de {catalog}.</translation>
  </message>
  <message>
   <source>{name}: {done} of {ready} ready sites are placed; {others} are not ready.</source>
   <translation>{name}: {done} de {ready} estaciones listas tienen año; {others} no están listas.</translation>
  </message>
  <message>
   <source>{new} new or changed, {gone} gone or changed</source>
   <translation>{new} nuevas o cambiadas, {gone} retiradas o cambiadas</translation>
  </message>
  <message>
   <source>{new} new, {changed} changed, {same} as they were, {gone} taken out</source>
   <translation>{new} nuevas, {changed} cambiadas, {same} como estaban, {gone} retiradas</translation>
  </message>
  <message>
   <source>{new} new, {changed} changed, {same} as they were.</source>
   <translation>{new} nuevas, {changed} cambiadas, {same} como estaban.</translation>
  </message>
  <message>
   <source>{parts} old numbers in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} números antiguos en {rows} filas, {left} omitidas; {faults} fallos, {questions} preguntas.</translation>
  </message>
  <message>
   <source>{parts} parts in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} piezas en {rows} filas, {left} omitidas; {faults} errores, {questions} preguntas.</translation>
  </message>
  <message>
   <source>{parts} positions in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} posiciones en {rows} filas, {left} omitidas; {faults} fallos, {questions} preguntas.</translation>
  </message>
  <message>
   <source>{parts} types in {rows} rows, {left} left out; {faults} faults, {questions} questions.</source>
   <translation>{parts} tipos en {rows} filas, {left} omitidas; {faults} fallos, {questions} preguntas.</translation>
  </message>
  <message>
   <source>{part} on {day}: {price} from list {name}</source>
   <translation>{part} el {day}: {price} de la lista {name}</translation>
  </message>
  <message>
   <source>{path} is there already, and this program did not write it as such a file. Replace it?</source>
   <translation>{path} ya existe, y este programa no lo escribió como tal archivo. ¿Sustituirlo?</translation>
  </message>
  <message>
   <source>{path} is there already. Replace it?</source>
   <translation>{path} ya existe. ¿Sustituirlo?</translation>
  </message>
  <message>
   <source>{place} was written by a newer version of Spoutline ({written_by}; form {form}). This is Spoutline {program}, which knows forms up to {known_form}; nothing was changed. Use the newer program, or restore a backup that was made before.</source>
   <translation>{place} se escribió con una versión más nueva de Spoutline ({written_by}; forma {form}). Esta es Spoutline {program}, que conoce formas hasta {known_form}; no se cambió nada. Use el programa más nuevo o restaure una copia de seguridad anterior.</translation>
  </message>
  <message>
   <source>{place}: {remaining} of {all} parts allowed; makers: {makers}</source>
   <translation>{place}: {remaining} de {all} piezas permitidas; fabricantes: {makers}</translation>
  </message>
  <message>
   <source>{site}, {count} positions</source>
   <translation>{site}, {count} posiciones</translation>
  </message>
  <message>
   <source>{type} for {dispenser}</source>
   <translation>{type} para {dispenser}</translation>
  </message>
  <message>
   <source>“{name}” is open. Open another survey first.</source>
   <translation>«{name}» está abierto. Abra antes otro levantamiento.</translation>
  </message>
  <message>
   <source>“{word}” becomes “{nearest}” ({count})</source>
   <translation>“{word}” pasa a “{nearest}” ({count})</translation>
  </message>
 </context>
</TS>
