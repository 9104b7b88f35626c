import type { Messages } from './messages.ts';

/** Español, con las palabras del taller. Los nombres van entre «» porque son de quien los puso. */
export const es: Messages = {
  decimal: ',',
  name: '«{name}»',
  case: 'carcasa',
  'list.two': '{a} y {b}',
  'list.either': '{a} o {b}',
  'list.more': '{a}, {b}',
  'span.between': 'entre {from} y {to}',
  'span.least': '{from} o más',
  'span.most': '{to} o menos',
  'span.any': 'libre',
  way: '{way, select, clockwise {en sentido horario} other {en sentido antihorario}}',
  'seen from':
    'visto desde {end, select, named {{name}} output {el lado de salida} other {el lado de entrada}}',
  times: '{size, select, 1 {una vuelta} other {{size} vueltas}}',
  torque:
    '{end, select, input {{size, select, 1 {el par de entrada} other {{size} veces el par de entrada}}} output {{size, select, 1 {el par de salida} other {{size} veces el par de salida}}} given {{size, select, 1 {el par en la primera velocidad dada} other {{size} veces el par en la primera velocidad dada}}} other {{size, select, 1 {el par de la mano} other {{size} veces el par de la mano}}}}',

  'part on': '{part} ({body})',
  'fact.turned':
    '{end, select, input {Se hace girar la entrada, {member}, {way}, {seen}.} other {Se hace girar la salida, {member}, {way}, {seen}.}}',
  'fact.given':
    '{still, select, yes {{member} se mantiene sin girar.} other {Se hace girar {member} {way} a {speed}, {seen}.}}',
  'fact.carries':
    '{kind, select, clutch {{device} lleva} brake {{device} lleva} band {{device} lleva} pawl {{device} lleva} one_way {{device} se bloquea y lleva} other {{device} lleva}} la carga de {from} a {to}, y lo empuja {way} con {torque}.',
  'fact.works':
    '{count, plural, =0 {El juego planetario {set} empuja {ports}.} one {{drivers} mueve el juego planetario {set}, que empuja {ports}.} other {{drivers} mueven el juego planetario {set}, que empuja {ports}.}}',
  'fact.works.port':
    '{role, select, reacts {{member}, que no gira, {way} con {torque}} other {{member} {way} con {torque}}}',
  'fact.works.alone': '{drivers} y el juego planetario {set} se empujan entre sí.',
  'fact.meshes': 'Por los engranajes {pair}, {from} empuja {to} {way} con {torque}.',
  'fact.as one':
    'En el juego planetario {set} giran como una sola pieza {members}: nada se mueve sobre sus ejes.',
  'fact.holds':
    'El esfuerzo empuja {member} {way}{kind, select, clutch {; {device} retiene {member} contra la carcasa} brake {; {device} retiene {member} contra la carcasa} band {; {device} retiene {member} contra la carcasa} pawl {; {device} retiene {member} contra la carcasa} one_way { contra {device}, que lo pasa a la carcasa} other {; {device} retiene {member} contra la carcasa}}: {torque}.',
  'fact.fixed':
    'La carga empuja {member} {way}; forma una pieza con la carcasa, que recibe {torque}.',
  'fact.fixed.case': 'La carcasa recibe la reacción {way}: {torque}.',
  'fact.shares': '{devices} comparten una reacción: nada determina cuánto lleva cada uno.',
  'fact.sets share':
    '{count, plural, one {El juego planetario {sets} lleva una parte de la carga: nada determina cuánta, ni en qué sentido empuja.} other {Los juegos planetarios {sets} comparten una carga: nada determina cuánto lleva cada uno, ni en qué sentido empuja.}}',
  'fact.outputs':
    'Las salidas giran a una misma velocidad, como en carretera recta, y reparten la carga: {shares}.',
  'output share': '{member} recibe {torque}',
  'fact.over-runs':
    '{size, select, none {{device} gira libre; nada determina a qué velocidad.} 1 {{device} gira libre a {end, select, input {la velocidad de la entrada} output {la velocidad de la salida} given {una velocidad de 1} other {la velocidad de la mano}}.} other {{device} gira libre a {end, select, input {{size} veces la velocidad de la entrada} output {{size} veces la velocidad de la salida} given {una velocidad de {size}} other {{size} veces la velocidad de la mano}}.}}',
  'fact.idle':
    '{because, select, over_run {{device} está aplicado, pero no lleva carga, porque {other} gira libre: nada lo empuja.} other {{device} está aplicado, pero no lleva carga.}}',
  'fact.result':
    '{end, select, output {Por cada vuelta de la entrada, la salida, {member}, da {turns} {way}: la relación es {ratio}.} other {Por cada vuelta de la salida, la entrada, {member}, da {turns} {way}: la relación es {ratio}.}}',
  'fact.result.given':
    '{still, select, yes {La salida, {member}, queda entonces quieta.} other {La salida, {member}, gira entonces {way} a {speed}.}}',
  'fact.neutral':
    '{end, select, output {Nada hace girar la salida, {member}, contra su carga: punto muerto.} other {Nada hace girar la entrada, {member}: puede quedarse quieta, y en retención el motor no es arrastrado.}}',
  'fact.tied up':
    '{end, select, given {Estas velocidades no pueden darse juntas: el tren está bloqueado.} input {La entrada, {member}, no puede girar {way}: el tren está bloqueado.} rolled {La salida, {member}, no puede girar {way}: el tren no rueda {toward, select, forward {hacia delante} other {hacia atrás}}.} other {La salida, {member}, no puede girar {way}: el tren está bloqueado.}}',
  'fact.free':
    '{count, plural, one {Queda libre {members}: nada determina su velocidad.} other {Quedan libres {members}: nada determina sus velocidades.}}',
  'fact.recirculates':
    '{count, plural, one {En el juego planetario {sets} la potencia da vueltas en círculo: {power} veces la que entra.} other {En los juegos planetarios {sets} la potencia da vueltas en círculo: {power} veces la que entra.}}',
  'fact.goes round':
    '{count, plural, =0 {El par da vueltas en círculo por {devices}, que giran como una sola pieza: por eso lo que está en el círculo puede llevar más de lo que entra. Nada rueda, así que no se pierde potencia.} one {El par da vueltas en círculo por {devices} y el juego planetario {sets}, que giran como una sola pieza: por eso lo que está en el círculo puede llevar más de lo que entra. Nada rueda, así que no se pierde potencia.} other {El par da vueltas en círculo por {devices} y los juegos planetarios {sets}, que giran como una sola pieza: por eso lo que está en el círculo puede llevar más de lo que entra. Nada rueda, así que no se pierde potencia.}}',
  'fact.engine braking':
    '{there, select, yes {En retención el tren hace girar el motor: hay freno motor.} other {{count, plural, =0 {En retención nada hace girar el motor: no hay freno motor.} one {{devices} gira libre y el motor no es arrastrado: no hay freno motor.} other {{devices} giran libres y el motor no es arrastrado: no hay freno motor.}}}}',
  'fact.rolls':
    '{held, select, yes {Incluso reteniendo {member}, el tren rueda {toward, select, forward {hacia delante} other {hacia atrás}}.} other {Con la entrada libre, el tren rueda {toward, select, forward {hacia delante} other {hacia atrás}}.}}',
  'fact.checked':
    '{count, plural, =0 {{turns, select, yes {Sin retener nada, {turned} gira {way}, {seen}.} other {Sin retener nada, {turned} se bloquea {way}, {seen}.}}} other {{turns, select, yes {Reteniendo {held}, {turned} gira {way}, {seen}.} other {Reteniendo {held}, {turned} se bloquea {way}, {seen}.}}}}',
  'fact.moves':
    '{still, select, yes {{member} no gira.} other {{member} da {turns} {way} por cada vuelta de la mano.}}',
  'fact.held by hand': 'La carga empuja {member} {way} contra la mano que retiene: {torque}.',

  'one-way':
    'Retenga la pista {hold, select, inner {interior} other {exterior}} de {device} ({held}) y gire la {hold, select, inner {exterior} other {interior}} ({turned}): {state, select, open {gira libre en ambos sentidos y no retiene nada.} locked {se bloquea en ambos sentidos.} other {{seen}, montada {fitted, select, other_way_up {del revés} other {como se describe}}, gira libre {free} y se bloquea {locked}.}}',
  'one-way.none': 'Este tren no tiene ruedas libres.',
  'one-way.turned': 'Esta se encontró montada del revés.',
  'one-way.legend':
    'En un sentido debe arrastrar apenas y en el otro bloquearse en seco en pocos grados: pruebe en varios ángulos. Las palabras valen solo con las cuatro cosas: qué pista se retiene, cuál gira, desde qué lado se mira, qué cara queda arriba.',
  fault:
    '{name}: {is, select, will_not_apply {no aplica} will_not_release {no suelta} slips {patina} leaks {su circuito fuga} parted {sin unión con sus elementos} seized {se ha gripado} backwards {al revés} left_out {sin montar} stripped_at {estriado roto en {place}} join {estriado roto} never_flows {nunca da paso} always_flows {siempre da paso} no_current {sin corriente} swapped {cables cruzados con {place}} spring_broken {muelle roto} stuck {clavada en la posición {place}} line_leaks {fuga} blocked {sin paso} joined {comunicada con {place}} other {dientes rotos}}',
  'sign.bench':
    'En el banco: {count, plural, =0 {sin retener nada} other {reteniendo {held}}}{air, plural, =0 {} other { y con aire en {on}}}, {turned} {turns, select, yes {gira {way}, y debería bloquearse} other {se bloquea {way}, y debería girar}}, {seen}.',
  'sign.bench.none': 'En el banco: ninguna prueba con dos cosas retenidas o aplicadas lo muestra.',
  'sign.road':
    '{end, select, drive {{is, select, slips {En carretera: {gear} patina con carga; por encima de la que aún aguanta, el motor se embala.} neutral {En carretera: {gear} no mueve el vehículo.} tied_up {En carretera: {gear} queda bloqueada.} drives {En carretera: {gear} transmite con una relación de {ratio}, y no debería.} other {En carretera: {gear} transmite con una relación de {ratio} en vez de {was}.}}} coast {{is, select, slips {En carretera: {gear} patina en retención, y frena menos de lo que debería.} neutral {En carretera: {gear} no tiene freno motor, y debería.} tied_up {En carretera: {gear} se bloquea en retención.} drives {En carretera: {gear} tiene freno motor, y no debería.} other {En carretera: {gear} arrastra el motor con una relación de {ratio} en vez de {was}.}}} other {{is, select, slips {Empujado hacia atrás: {gear} patina.} neutral {Empujado hacia atrás: {gear} no arrastra el motor, y debería.} tied_up {Empujado hacia atrás: {gear} se bloquea.} drives {Empujado hacia atrás: {gear} arrastra el motor, y no debería.} other {Empujado hacia atrás: {gear} arrastra el motor con una relación de {ratio} en vez de {was}.}}}}',
  'sign.road.none': 'En carretera: ninguna marcha lo muestra.',
  'sign.free':
    '{count, plural, one {Allí nada determina ya la velocidad de {members}.} other {Allí nada determina ya las velocidades de {members}.}}',
  'sign.fast':
    '{end, select, drive {En {gear}, {member} gira rápido: {speed} veces la velocidad de la entrada.} other {En {gear}, {member} gira rápido en retención: {speed} veces la velocidad de la salida.}}',

  'problem.too large': 'demasiado grande: {characters} caracteres; se leen {most} como mucho',
  'problem.bad character':
    'carácter no válido: {code}{turns, select, yes {, que da la vuelta a las letras que siguen; quítelo} other {; guarde el archivo como texto UTF-8 y quítelo}}',
  'problem.syntax':
    '{what, select, indent {sangría incorrecta: la línea debe empezar justo debajo de la primera de su sección, o más adentro} tab {tabulador como sangría: use espacios} unclosed_bracket {corchete sin cerrar: ciérrelo, con comas entre las entradas} unclosed_quote {comillas sin cerrar: ciérrelas en la misma línea} missing_comma {falta una coma entre dos entradas} second_colon {segundos dos puntos en una entrada: ponga el texto entre comillas} needs_quotes {texto que empieza con un carácter especial: póngalo entre comillas} escape {escape desconocido tras la barra inversa: use comillas simples} key {clave ilegible: una clave es un nombre, dos puntos y un espacio} other {texto inesperado: una entrada es un nombre, dos puntos, un espacio y un valor}}',
  'problem.merge mark':
    'marca de fusión: aquí se juntaron dos copias del archivo; deje lo que vale de ambas y quite las líneas de marcas',
  'problem.several documents': 'segundo tren en un archivo: ponga cada uno en el suyo',
  'problem.refused':
    '{what, select, anchor {ancla de YAML: escriba el texto donde haga falta} alias {alias de YAML: escriba el texto donde haga falta} tag {etiqueta de YAML: quítela} merge_key {clave de fusión de YAML: escriba las entradas} other {directiva de YAML: quítela}}',
  'problem.too deep':
    'demasiado profundo: se leen {most} niveles de corchetes y sangrías como mucho',
  'problem.duplicate key': 'clave repetida: {name}; deje una sola',
  'problem.unknown key':
    'clave desconocida: {name}{has, select, yes {; ¿quiso decir {near}?} other {; quítela}}',
  'problem.misplaced key':
    'clave fuera de lugar: {name} no puede estar junto a {beside}; deje una de las dos',
  'problem.missing key': 'falta una clave: añada {names}',
  'problem.expected keys':
    'se esperaban entradas, como en {form}{has, select, yes {, no {found}} other {}}',
  'problem.expected': '{what}{has, select, yes {, no {found}} other {}}',
  'problem.newer version':
    'versión más nueva: {version}; este Holdturn lee hasta la {newest}, actualícelo',
  'problem.too many':
    '{what, select, members {demasiados miembros: {count}; se leen {most} como mucho} other {demasiados elementos: {count}; se leen {most} como mucho}}',
  'problem.unknown set':
    'juego desconocido: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre uno de los que están en sets}}',
  'problem.unknown part':
    'parte desconocida: {part} del juego {set}{has, select, yes {; ¿quiso decir {near}?} other {; tiene {names}}}',
  'problem.unknown wheel':
    'rueda desconocida: {name} del juego {set}{has, select, yes {; ¿quiso decir {near}?} other {; nombre una de sus ruedas}}',
  'problem.unknown gear pair':
    'par de engranajes desconocido: {name}{has, select, yes {; ¿quiso decir {near}?} other {}}',
  'problem.unknown device':
    'elemento desconocido: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre uno de los que están en devices}}',
  'problem.not applied': 'rueda libre en una gama: {name}; nadie la aplica, quítela',
  'problem.inside out':
    'al revés: {inner} no es menor que {outer}; ponga primero el diámetro exterior',
  'problem.ends reversed':
    'extremos al revés: el menor, {least}, es más que el mayor, {most}; cámbielos o corríjalos',
  'problem.two units':
    'dos unidades: el menor es {least} y el mayor {most}; escriba los dos en la unidad de su fuente',
  'limit.ends':
    '{kind, select, both {de {least} a {most}} least {al menos {least}} other {como máximo {most}}}',
  'problem.limit doubted':
    'límite que hay que mirar: {of} tendría {job}, y el archivo del tren da {file}{by, select, unit {: ¿se tomaron pulgadas por milímetros, o al revés?} point {: ¿se corrió la coma?} wide {, mucho más estrecho;} other {, muy lejos de eso;}} {way, select, asked {corríjalo, o diga que es a propósito} other {corríjalo, o, si es a propósito, escríbalo otra vez con sure: yes detrás}}',
  'problem.limit in two units':
    'límite en dos unidades: un límite de {name} tiene un extremo en milímetros y otro en pulgadas; escriba los dos en la unidad de su fuente',
  'problem.nothing measured':
    'nada que medir: {name}{has, select, yes {; ¿quiso decir {near}?} other {; diga en el archivo del tren qué se mide de ello, en packs, endplay, preload, bands o wear}}',
  'problem.other kind':
    'medidas de otra cosa: {name} es {kind, select, clutch {un embrague multidisco} brake {un freno multidisco} band {una banda} pawl {un trinquete de estacionamiento} one_way {una rueda libre} other {un elemento}}; ponga las suyas, o {kind, select, clutch {un par} brake {un par} band {un par} pawl {un par} one_way {un solo torque Nm} other {un par}}',
  'problem.no plates':
    'sin discos: {name} no es un embrague ni un freno multidisco; nombre uno que lo sea',
  'problem.not a band': 'sin banda: {name} no lo es; nombre una de las de devices',
  'problem.no band':
    'sin banda: {name}{has, select, yes {; ¿quiso decir {near}?} other {; diga cómo se ajusta en bands, en el archivo del tren}}',
  'problem.no preload':
    'sin precarga: {name}{has, select, yes {; ¿quiso decir {near}?} other {; dígala en preload, en el archivo del tren}}',
  'problem.no wear':
    'sin desgaste: {name}{has, select, yes {; ¿quiso decir {near}?} other {; diga qué se mide en wear, en el archivo del tren}}',
  'problem.no end play':
    'sin juego axial: {name}{has, select, yes {; ¿quiso decir {near}?} other {; descríbalo en endplay, en el archivo del tren}}',
  'problem.no pack':
    'sin paquete: {name}{has, select, yes {; ¿quiso decir {near}?} other {; describa sus discos en packs, en el archivo del tren}}',
  'problem.listed twice': 'repetido en la lista: {name}; basta una vez',
  'problem.name taken':
    '{by, select, set {nombre ocupado: {name} ya es un juego; elija otro} gear_pair {nombre ocupado: {name} ya es un par de engranajes; elija otro} device {nombre ocupado: {name} ya es un elemento; elija otro} other {nombre ocupado: {name} ya es una unión; ponga todos sus miembros en una lista}}',
  'problem.reserved name': 'nombre reservado: {name} tiene su propio sentido; elija otro',
  'problem.name of nobody':
    'nombre de nadie: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre algo que esté en este archivo}}',
  'problem.told alike':
    'dos con un nombre: {other} también se llama {said}, y {name} debe distinguirse; dé a uno de los dos otro nombre',
  'problem.not a member':
    '{is, select, set {no es un miembro: {name} es un juego; nombre una de sus partes, como {name}.carrier} gear_pair {no es un miembro: {name} es un par de engranajes; nombre el miembro de una de sus ruedas} device {no es un miembro: {name} es un elemento; nombre un miembro que retenga} other {no es un miembro: {name} es una unión; nombre un miembro de ella}}',
  'problem.joined to itself': 'unido consigo mismo: {name}; nombre otro miembro',
  'problem.case cannot turn':
    '{end, select, input {la carcasa no puede girar: nombre otro miembro como entrada} other {la carcasa no puede girar: nombre otro miembro como salida}}',
  'problem.end taken':
    '{end, select, input {la salida es la entrada: {member} gira con {by}; nombre el miembro que mueve la carga} other {una salida con dos nombres: {member} gira con {by}; nómbrela una vez}}',
  'problem.planet as an end':
    'un satélite como salida: {member} da vueltas con su portasatélites; ¿no será un miembro del eje?',
  'problem.forward against':
    'la mayoría de las marchas giran la salida en sentido contrario al que dice {key}: ¿está visto desde el extremo de entrada?',
  'problem.forward taken':
    'las marchas mueven la salida en los dos sentidos; se toma por adelante {way}, como la mayoría: escriba {key}, o el otro sentido',
  'problem.cannot share':
    'no se puede compartir: {name} no tiene satélites que sirvan a otro juego; comparta los de un juego simple, de pares o escalonado',
  'problem.shares in a circle':
    'compartidos en círculo: {names}; uno de ellos debe tener satélites propios',
  'problem.planets differ':
    'los satélites no coinciden: {planets} aquí, {there} en el juego {set}, que es el suyo; iguálelos',
  'problem.meshes itself': 'rueda que engrana consigo misma: {name}; nombre la otra rueda',
  'problem.none carried':
    'ninguna va en el portasatélites: {a} y {b} giran sobre el eje principal y no pueden engranar; nombre una de ellas en carried',
  'problem.ring does not fit':
    '{kind, select, one {la corona no encaja: {ring} dientes en el juego {set}, donde {from} cierran sobre el planetario y los satélites; la corrección de perfil permite {allowance} más o menos; cuente otra vez} least {la corona no encaja: {ring} dientes en el juego {set}, donde el planetario y los satélites piden {from} o más; la corrección de perfil permite {allowance} menos; cuente otra vez} other {la corona no encaja: {ring} dientes en el juego {set}, donde de {from} a {to} cierran sobre el planetario y los satélites; la corrección de perfil permite {allowance} más o menos; cuente otra vez}}',
  'problem.planets not evenly spaced':
    '{has, select, yes {satélites mal repartidos: {planets} en el juego {set}, donde {rule} = {sum} no se divide entre {planets}; sí entre {counts}} other {satélites mal repartidos: {planets} en el juego {set}, donde {rule} = {sum} no se divide entre {planets}; cuente otra vez}}',
  'problem.planets touch':
    'los satélites se tocan: {planets} de {teeth} dientes en el juego {set} se montan {overlap} módulos en las puntas; {most, plural, =0 {no cabe ninguno} one {cabe uno como mucho} other {caben {most} como mucho}}',
  'problem.centre distances differ':
    'distancias entre centros distintas: {name} del juego {set} estaría a {distances} módulos del eje principal; la corrección de perfil permite {allowance} diente por rueda; cuente otra vez',
  spacing:
    '{by, select, sun_ring {planetario + corona} ring_sun {corona − planetario} sides {izquierda + derecha} other {planetario · segundo escalón + corona · primer escalón}}',
  'centre distance': '{distance} por su engrane con {name}',
  'problem.no room inside':
    'no cabe dentro: una rueda de {inner} dientes en una corona de {outer}, en {name}; cuente otra vez',
  'problem.half written':
    'anotación escrita a medias: quedó cortada y no cuenta; lo que no se guardó hay que añadirlo de nuevo',
  'problem.changed since':
    'anotación cambiada después de escrita; no cuenta: una anotación se tacha, nunca se edita',
  'problem.strikes nothing': 'no tacha nada: no hay ninguna anotación {id} en este trabajo',
  'problem.unknown test':
    'prueba desconocida: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre una marcha, una marcha y coast (retención), stall (calado), pressure (presión), fluid (aceite), air (aire) o turn (girar)}}',
  'problem.no scale of speeds':
    "una velocidad del motor da una relación por neumático y grupo final, o junto a una marcha que transmite: añada car: '{' tyre mm: 632, final drive: 3.65 '}' al archivo del tren, o escriba qué se lee en una marcha buena y que transmite",
  'problem.unknown outcome':
    '{test} no puede dar {name}{has, select, yes {; ¿quiso decir {near}?} other {; escriba {all}}}',
  'problem.unknown carried':
    'nada que llevar: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre un miembro, un elemento, o NOMBRE.inner o NOMBRE.outer de una rueda libre}}',
  'problem.unknown teardown part':
    'pieza desconocida: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre una de las que están en teardown}}',
  'problem.nothing to measure':
    'nada que medir: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre lo que está en packs, bands, endplay o preload}}',
  'problem.carried twice': 'llevado dos veces: {name} ya viene con {by}; quítelo de una de las dos',
  'problem.comes off too early':
    '{itself, select, yes {tapada por sí misma: {part}; nombre otra pieza} other {sale demasiado pronto: {part} está debajo de {cover}, que debe ir antes}}',
  'problem.closes too early':
    '{part} cierra {name}, pero {later}, que lo ajusta o lleva uno de sus engranajes, se monta después: se mide tras ella; que lo cierre la última de ellas',
  'problem.feeds all':
    '{part} alimenta todos los embragues, frenos y bandas: se toma por un cuerpo de válvulas, que tapa los orificios de la carcasa, así que plan da aire a todo antes de montarlo; quite feeds de un cuerpo de válvulas, y en una bomba o un soporte nombre solo lo que pasa únicamente por ellos',
  'problem.not carried': 'pieza olvidada: nada lleva {name}; haga que una pieza lo lleve',
  'problem.and more':
    '{count, plural, one {y uno más como estos} other {y {count} más como estos}}',
  'problem.member carries nothing':
    'miembro inútil: {name} solo toca {touched} y no puede llevar carga; únalo, o dele un elemento',
  'problem.set stands alone':
    'juego inútil: nada más que {name} toca sus miembros; únalos, o deles elementos',
  'problem.device does nothing':
    'elemento inútil: {name} une miembros que de todos modos no giran entre sí; mire sus nombres',
  'problem.device never applied': 'elemento inútil: ninguna marcha aplica {name}; añádalo a una',
  'problem.oil':
    '{is, select, unfed_line {nada da aceite a esta línea: {name}{has, select, yes {; ¿quiso decir {near}?} other {; diga qué la alimenta}}} unknown_solenoid {no hay tal solenoide: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre uno de los solenoides}}} unknown_range {no hay tal posición: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre una de las posiciones}}} unknown_gear {no hay tal marcha en esta posición: {name}{has, select, yes {; ¿quiso decir {near}?} other {; nombre una de sus marchas}}} range_without_position {el selector no tiene la posición {name}, que las marchas nombran; diga qué alimenta ahí, [] si nada} never_asked {ninguna marcha da corriente a {name}, ni nombra su presión; nómbrelo donde la tenga, o quítelo} no_chamber {nada lleva aquí aceite a {name}; dé su línea, o diga que otra cosa lo mueve} other {solo la propia {name} alimenta lo que la empuja, así que nunca se mueve; nombre qué la mueve primero}}',
  'problem.one cause':
    '{mend, select, turned {rueda libre del revés: mire primero {name}; con {key},} devices {elementos cambiados entre sí: mire primero {name} y {other}; cada uno con los miembros del otro,} members {miembros cambiados entre sí: mire primero {name} y {other}; cada uno donde el archivo tiene el otro,} other {otro miembro: mire primero {name}; con {other} en lugar de {was},}} {gears, plural, one {no queda nada raro en la marcha nombrada abajo} other {no queda nada raro en ninguna de las # marchas nombradas abajo}}',
  'problem.gear is neutral': 'marcha en punto muerto: {name} no mueve nada; mire qué aplica',
  'problem.oil differs':
    '{does, select, applies {el aceite aplica {device} en {gear}, y las marchas no} other {ningún aceite aplica {device} en {gear}, y las marchas sí}}; mire su línea, y qué aplica la marcha',
  'problem.oil unsettled':
    '{is, select, chase {las válvulas se persiguen en {gear}, y nada queda quieto} short {hay un paso abierto de la bomba al escape en {gear}: ninguna línea tiene presión segura} other {qué válvula se mueve primero decide qué aplica {gear}}}; mire qué las empuja',
  'problem.gear ties up': 'marcha bloqueada: {name} no deja girar nada; mire qué aplica',
  'problem.neutral drives': 'punto muerto que transmite: {name} mueve la salida; mire qué aplica',
  'problem.counts differ':
    'cuentas distintas: los discos de fricción de {name} son {counts}, y un disco de fricción tiene dos caras; cuente los discos y corrija lo que esté mal',
  'problem.counted':
    '{faces, select, yes {{count, plural, one {una cara} other {{count} caras}}} other {{count, plural, =0 {ninguno} other {{count}}}}} en {section}',
  'problem.limit without figures':
    'límite sin cifras: un límite de {name} no dice ni least ni most, así que nada se juzga por él; añada uno',
  'problem.limits turned round':
    'límites al revés: el mínimo de {name} supera a su máximo; cámbielos o corríjalos',
  'problem.shelf out of reach':
    'surtido fuera de alcance: según las medidas del archivo ninguna pieza deja {name} dentro de límites; busque una medida, un disco o una unidad errónea',
  'problem.shelf too coarse':
    'surtido demasiado basto: dos espesores de {name} distan más que sus límites, y hay holguras que no se pueden ajustar; ¿falta uno?',
  'problem.fitted not on the shelf':
    'pieza montada fuera del surtido: la de {name} no es de ningún espesor de la lista; mídala otra vez o añádalo',
  'problem.shelf without limits':
    'surtido sin límites: {name} necesita un mínimo y un máximo, o no se puede elegir pieza',
  'problem.no friction to share':
    'sin disco de fricción: {name} tiene límites por disco de fricción y ninguno de ellos',
  'problem.squash of no cushion':
    'aplastamiento sin disco ondulado: en {name} solo puede tenerlo un cushion; no se cuenta',
  'problem.squash without air':
    'aplastamiento sin aire: diga en at, para {name}, a qué presión se midió',
  'problem.lonely name': 'nombre suelto: {name} no está en ningún otro lugar; ¿quiso decir {near}?',
  'problem.renamed': 'otro nombre: {old} se llama ahora {now}; se sigue leyendo',
  'problem.one body':
    'elemento inútil: {name} une {a} con {b}, que son una sola pieza; nombre otro miembro',
  expected:
    "{what, select, section {se esperaban entradas, cada una con nombre, dos puntos y contenido} two_ends {se esperaban los nombres de los dos lados, primero el de entrada, como en [pump end, cover end]} gear_pairs {se esperaba un par de engranajes o una lista de ellos} facing {se esperaba input, output, up o down} end {se esperaba input o output} bolts {se esperaban tornillos, como en '{' torque: 24 Nm, count: 7, once: yes '}'} torque {se esperaba un par con su unidad, como en 24 Nm, 18 lbft o 72 lbin} volume {se esperaba un volumen con su unidad, como en 5.4 L o 5.7 qt} fluid_to_fill {se esperaba con qué se llena, como en '{' kind: el del manual, fill: 5.4 L '}'} closed {se esperaba una lista de paquetes, bandas y ejes, como en [turbine shaft]} version {se esperaba el número 1} text {se esperaba un texto} name {se esperaba un nombre} member {se esperaba el nombre de un miembro} members {se esperaba una lista de miembros, como [front.sun, rear.sun]} two_members {se esperaban dos miembros, como [front.sun, case]} devices {se esperaba una lista de elementos, como [forward clutch]} wheel_names {se esperaba una lista de ruedas, como [idler]} meshes {se esperaba una lista de engranes, como [[sun, idler]]} mesh {se esperaban dos ruedas, como [sun, planet] o [ring, planet, internal]} internal {se esperaba la palabra internal, o nada} wheel {se esperaba un miembro y sus dientes, como [layshaft, 43]} teeth {se esperaba un número de dientes, entero de 1 a 1000000} two_teeth {se esperaban dos números de dientes, como [24, 44]} count {se esperaba un número entero de 1 a 100} way {se esperaba clockwise (horario) o anticlockwise (antihorario)} pair_kind {se esperaba external, internal o chain} set {se esperaba un juego, como '{' sun: 30, ring: 66 '}'} gear_pair {se esperaba un par de engranajes, como '{' driver: [shaft, 41], driven: [layshaft, 43] '}'} proportion {se esperaba un número de 0 a 1000000} proportions {se esperaban números mayores que 0, o nada se puede mostrar} minutes {se esperaba un número mayor que 0} under_fifty {se esperaba un número mayor que 0 y menor que 50} over_fifty {se esperaba un número mayor que 50 y menor que 100} risk {se esperaba none, low o high} stage {se esperaba in the car, pan off u on the bench} tool {se esperaba nothing, road, rag and light, scan tool, stopwatch, gauge, tachometer, logger, rule, air nozzle, bench o dial indicator} pressure {se esperaba good, low o high} fluid {se esperaba clean, burnt, metal o milky} tests_seen {se esperaba lo que se vio, como en D 1: drives} outcome {se esperaba lo que se vio, como en slips o: slips, not sure} part {se esperaba una pieza, como '{' carries: [front.sun] '}'} carried {se esperaba una lista de miembros y elementos, como [front.sun, low brake]} part_kind {se esperaba qué es la pieza: shaft (eje), drum (tambor), shell (campana), hub (cubo), sun (planetario), ring (corona), carrier (portasatélites), gear (rueda), pack (paquete), band (banda), one-way clutch (rueda libre), race (pista), washer (arandela), bearing (rodamiento), snap ring (anillo elástico), gasket (junta), seal (retén), piston (pistón), spring (muelle), servo, pawl (trinquete), pump (bomba), support (soporte), cover (tapa) o valve body (cuerpo de válvulas)} part_names {se esperaba una lista de piezas, como [sun shell]} note {se esperaba un texto de una línea, de 1 a 200 caracteres} yes_or_no {se esperaba yes (sí) o no} refit {se esperaba reuse (sirve) o replace (nueva)} size {se esperaba un número de 0.001 a 100000 (el abrazo de una banda hasta 1440 grados, una palanca hasta 20)} ring {se esperaban dos diámetros, primero el exterior, como [136, 100]} friction {se esperaba un coeficiente de rozamiento de 0.001 a 1} presses {se esperaba uniform pressure (presión uniforme) o uniform wear (desgaste uniforme)} stall_ratio {se esperaba una relación de par de 1 a 10} tyre {se esperaba el diámetro con que rueda el neumático, de 200 a 2500 mm, como en 632} final_drive {se esperaban vueltas de la salida por una de las ruedas, de 0.2 a 20, como en 3.65} capacity {se esperaba una capacidad, como '{' torque Nm: 600 '}'} pack {se esperaba un paquete, como '{' plates: ['{' kind: steel, thickness: 1.80 mm '}'] '}'} plates {se esperaba una lista de discos desde el pistón, como ['{' kind: steel, thickness: 1.80 mm '}']} plate {se esperaba un disco, como '{' kind: steel, thickness: 1.80 mm '}'} plate_kind {se esperaba friction (forrado), steel (acero), cushion (ondulado) o backing plate (de apoyo)} depth {se esperaba una profundidad, como '{' size: 22.20 mm '}'} shelf {se esperaba un surtido, como '{' part: backing plate, fitted: 5.00 mm, sizes: [4.80 mm, 5.00 mm] '}'} shelf_part {se esperaba backing plate (disco de apoyo), steel (acero), snap ring (anillo elástico) o piston (pistón)} limit {se esperaba un límite, como '{' least: 0.80 mm, most: 1.20 mm, source: manual p. 12, by: HT '}'} length {se esperaba una longitud con su unidad, como 0.42 mm, 0.017 in, 17 thou o 1/64 in} lengths {se esperaba una lista de longitudes con sus unidades, como [0.42 mm, 0.44 mm]} air {se esperaba una presión con su unidad, como 300 kPa, 3 bar o 45 psi} readings {se esperaban lecturas, como '{' feeler: [0.42 mm, 0.44 mm, 0.42 mm] '}'} on_air {se esperaban carreras con aire, como '{' pressure: 300 kPa, strokes: [1.12 mm, 1.14 mm] '}'} depth_gauge {se esperaban profundidades, como '{' depth: 30.10 mm, edge: 6.40 mm, stack: 22.70 mm '}'} again {se esperaba la pieza montada ahora y lo leído, como '{' fitted: 5.40 mm, read: [1.02 mm] '}'} step_gauge {se esperaban pasos, como '{' fits: 0.80 mm, does not fit: 1.20 mm '}'} end_play {se esperaba un juego axial, como '{' limit: '{' least: 0.30 mm, most: 0.60 mm '}' '}'} washer_part {se esperaba washer (arandela), race (pista) o shim (calce)} stack {se esperaba una lista de piezas, como ['{' part: case, size: 80.00 mm, gap: opens '}']} band_setting {se esperaba cómo se ajusta una banda, como '{' pitch: 1.50 mm, lever: 1.5 '}'} lever {se esperaba una relación de palanca de 0.001 a 20, como 1.5} rod_part {se esperaba servo rod, apply rod o apply pin} turns {se esperaba un número de vueltas, de 0 a 100, como 2.5 por dos y media} wear_check {se esperaba qué se mide, como '{' measure: bushing, limit: '{' most: 0.15 mm '}' '}'} wear_kind {se esperaba bushing (casquillo), planet side (lateral de satélite), gear to case (piñón a cuerpo), gear to crescent (piñón a media luna), gear side (lateral de piñón), ring gap (abertura de aro), ring side (aro en su ranura), drum dish (cóncavo de tambor), spline play (juego de un estriado), thickness (grueso) o spring length (longitud de muelle)} band_readings {se esperaban lecturas de una banda, como '{' turns: 2.5 '}' o '{' travel: [3.10 mm] '}'} preload {se esperaba una precarga, como '{' turning: '{' least: 0.6 Nm, most: 1.4 Nm '}' '}'} preload_part {se esperaba shim (calce), washer (arandela) o spacer (separador)} torque_limit {se esperaba un límite de un par, como '{' least: 0.6 Nm, most: 1.4 Nm, source: manual p. 12, by: HT '}'} force {se esperaba una fuerza con su unidad, como 22 N, 5 lbf o 2.2 kgf} torques {se esperaba una lista de pares con sus unidades, como [1.2 Nm, 1.3 Nm]} forces {se esperaba una lista de fuerzas con sus unidades, como [22 N, 23 N]} pull {se esperaban fuerzas en un cordón y su radio, como '{' force: [22 N], radius: 45 mm '}'} bearings {se esperaba new (nuevos) o used (usados)} preload_readings {se esperaban lecturas de una precarga, como '{' turning: [1.2 Nm] '}' o '{' gap: [0.14 mm] '}'} play_kind {se esperaba end play (juego axial) o backlash (juego entre dientes)} play_readings {se esperaban lecturas de un juego axial, como [0.82 mm, 0.84 mm] o '{' play: [0.82 mm], again: '{' fitted: 2.00 mm, read: [0.44 mm] '}' '}'} sure {se esperaba yes, donde un límite lejos del que da el archivo del tren es a propósito} limit_of {se esperaba de qué es el límite: clearance, each friction, friction, steel o cone de un paquete; clearance o travel de una banda} wear_readings {se esperaban lecturas, como '{' read: [0.08 mm] '}' o '{' bore: [38.10 mm], shaft: [38.03 mm] '}'} stack_part {se esperaba una pieza, como '{' part: case, size: 80.00 mm, tolerance: 0.10 mm, gap: opens '}'} opens_or_fills {se esperaba opens (abre) o fills (llena)} controls {se esperaba el control hidráulico, como '{' selector: '{' D: [drive] '}', solenoids: … '}'} lines {se esperaba una lista de líneas, como [drive]} normally {se esperaba open (abierto) o closed (cerrado), de uno que conmuta high (con presión) o low (sin presión)} solenoid {se esperaba un solenoide, como '{' bleeds: signal, normally: open '}'} solenoids {se esperaba una lista de solenoides, como [shift A]} valve {se esperaba una válvula, como '{' away: [signal], positions: ['{' apply: exhaust '}', '{' apply: drive '}'] '}'} pressures {se esperaba una lista de presiones, como [120 kPa]} positions {se esperaban dos posiciones o más, como ['{' apply: exhaust '}', '{' apply: drive '}']} one_or_two_lines {se esperaba una línea o dos, como [drive, reverse]} ball {se esperaba una bola, como '{' from: [drive], to: apply '}'} orifice {se esperaba un orificio, como '{' from: drive, to: signal '}'} servo {se esperaban cámaras, como '{' applies: [second apply] '}'} side {se esperaba applies (aplica) o releases (suelta)} job {se espera el número 1, la forma de los archivos de trabajo} entry {se espera una sola cosa dicha, como reading: '{' low brake: '{' feeler: [0.42 mm] '}' '}'} photograph {se espera una fotografía, como IMG_0012.jpg o '{' file: IMG_0012.jpg, part: sun shell '}'} installed {se espera una pieza que se puso, como sun shell o '{' part: sun shell, replaced: yes '}'} built {se espera una tarea del montaje, como en '{' task: 8, of: sun shell '}', '{' task: 8.1, went: right '}', 8 sound, 8 stop o start 2} unbuilt {se espera el paso desde el que se quitó todo otra vez, y por qué, como en '{' step: 6, why: rear ring not home '}'} went {se espera right (bien), wrong (mal) o found (se encontró así)} time {se espera una fecha con hora, como 2026-11-25T12:40:07.000Z o 2026-11-25T13:40:07.000+01:00} initials {se esperan iniciales, de 1 a 8 letras y cifras, como TW} id {se espera el número de una anotación, 8 letras y cifras} other {se esperaba un elemento, como '{' brake: rear.carrier '}'}}",

  state: '{state, select, driving {transmite} neutral {punto muerto} other {bloqueado}}',
  'both ways': '{forward}; marcha atrás {reverse}',
  coast:
    '{state, select, driving {arrastra el motor} neutral {no arrastra el motor} other {bloqueado}}',
  kind: '{kind, select, clutch {embrague} brake {freno} band {banda} pawl {trinquete} one_way {rueda libre} other {elemento}}',
  'device.state':
    '{state, select, applied {aplicado} released {suelto} holding {retiene} over_running {gira libre} other {libre}}',
  braking:
    '{state, select, driving {{braking, select, yes {sí} other {no}}} neutral {no} other {bloqueado}}',
  'on.nothing': 'nada',
  head: `{head, select,
    device {elemento} kind {tipo} state {estado} slip {deslizamiento} torque {par}
    member {miembro} speed {velocidad} pin {sobre su eje} set {juego} power {potencia que entra}
    wheel {rueda} meshing {engrana con} gear {marcha} on {aplicados} ratio {relación}
    holding {retiene} braking {freno motor} coast {en retención} step {de > a} release {saliente}
    apply {entrante} both {solape} neither {hueco} turns {vueltas} part {pieza}
    test {prueba} seen {visto} sure {seguro} chance {probab.} leaves {dejaría}
    shows {mostraría} known {cómo se sabe}
    passes {pasa, N·m} spare {margen} first {patina primero}
    must {debe llevar, N·m} can {puede llevar, N·m}
    mistake {error} made {hecho} felt {se nota en el paso} instead {en su lugar} until {hasta}
    way {con} clearance {holgura} spread {dispersión} worst {peor punto} rank {elección}
    size {espesor} gives {deja} give {± peor} likely {± probable} then {entonces} limit {límite}
    verdict {juicio}
    stacks {de 1000 montajes} leave {dejan como mucho} measure {medida}
    own {antes del grupo final} other {}}`,
  severity: '{severity, select, error {error} other {aviso}}',
  'check.summary':
    '{errors, plural, =0 {{warnings, plural, =0 {{file} es un tren: sin faltas.} one {{file} es un tren: un aviso.} other {{file} es un tren: {warnings} avisos.}}} one {{file} aún no es un tren: un error, {warnings, plural, one {un aviso} other {{warnings} avisos}}.} other {{file} aún no es un tren: {errors} errores, {warnings, plural, one {un aviso} other {{warnings} avisos}}.}}',
  'flow.title':
    '{named, select, yes {{train}, marcha {gear}: {count, plural, =0 {sin nada aplicado} other {con {on}}}} other {{train}: {count, plural, =0 {sin nada aplicado} other {con {on}}}}}',
  'flow.drive':
    '{state, select, driving {{sense, select, reverse {En tracción transmite en marcha atrás con una relación de {ratio}.} direct {En tracción transmite en directa, con una relación de {ratio}.} overdrive {En tracción transmite en superdirecta con una relación de {ratio}.} other {En tracción transmite con una relación de {ratio}, una reducción.}}} neutral {En tracción está en punto muerto: nada llega a la salida.} other {En tracción está bloqueado: la entrada no puede girar.}}',
  'flow.before final': 'Antes del grupo final la relación es {ratio}.',
  'flow.efficiency':
    '{state, select, runs {Tras las pérdidas de engrane sale el {percent} % de la potencia.} other {Con las pérdidas de engrane es irreversible: ningún par en la entrada lo mueve.}}',
  'flow.coasting':
    '{travels, select, reverse {En retención marcha atrás} other {En retención}} {state, select, driving {la salida arrastra el motor: hay freno motor, con una relación de {ratio}.} neutral {no arrastra el motor: no hay freno motor.} other {está bloqueado: la salida no puede girar.}}',
  'flow.rollback':
    '{free, select, rolls {{held, select, rolls {En una cuesta rueda hacia {travels, select, reverse {delante} other {atrás}}, incluso con la entrada retenida.} other {En una cuesta rueda hacia {travels, select, reverse {delante} other {atrás}} con la entrada libre; con la entrada retenida {heldCount, plural, =0 {no rueda} other {lo impide {heldBy}}}.}}} other {En una cuesta no rueda hacia {travels, select, reverse {delante} other {atrás}}{freeCount, plural, =0 {} other {: lo impide {freeBy}}}.}}',
  'flow.power': 'En tracción',
  'flow.why': 'Por qué',
  'flow.coast': 'En retención',
  'flow.coast.why': 'Por qué, en retención',
  'flow.coast.reverse': 'En retención marcha atrás',
  'flow.coast.reverse.why': 'Por qué, en retención marcha atrás',
  'flow.rollback.free': 'En cuesta, con la entrada libre',
  'flow.rollback.held': 'En cuesta, con la entrada retenida',
  'flow.legend':
    '{end, select, drive {Velocidades: vueltas por una vuelta de la entrada.} coast {Velocidades: vueltas por una vuelta de la salida.} other {Velocidades: en la unidad de las dadas.}} {unit, select, input {Pares: veces el par de entrada; el de un elemento, sobre el miembro que nombra primero.} given {Pares: veces el par en la primera velocidad dada; el de un elemento, sobre el miembro que nombra primero.} other {Pares: veces el par de salida; el de un elemento, sobre el miembro que nombra primero.}} Más es girar {plus}, {seen}. Potencia que entra: la que el miembro lleva al juego, veces la aportada.',
  'flow.more': 'La retención y la marcha hacia atrás por completo, y cada engrane: --all.',
  'gears.none': 'El archivo no nombra marchas; pida elementos con --on.',
  'gears.more':
    'Una marcha con sus razones: --range GAMA --gear MARCHA, o --on "ELEMENTO,ELEMENTO".',
  'chart.title':
    '{train}: {devices, plural, one {{devices} elemento de fricción} other {{devices} elementos de fricción}}{pawls, plural, =0 {} one { y un trinquete de estacionamiento} other { y {pawls} trinquetes}}, {combinations, plural, one {{combinations} combinación} other {{combinations} combinaciones}}\n{driving, plural, =0 {Ninguna transmite} one {{driving} transmite} other {{driving} transmiten}}, {neutral, plural, one {{neutral} es punto muerto} other {{neutral} son punto muerto}}, {tied, plural, one {{tied} bloquea} other {{tied} bloquean}}.',
  'chart.all': 'Todas las combinaciones',
  doing:
    '{doing, select, on {aplicado} idle {sin carga} holding {retiene} over_running {gira libre} other {suelto}}',
  'chart.named': 'Marchas que las gamas nombran',
  'chart.unnamed': 'Marchas que ninguna gama nombra',
  'chart.steps': 'Cambios de un elemento, y qué da un solape o un hueco entre dos',
  'chart.through':
    '{state, select, driving {{named, select, yes {transmite: {gear}} other {transmite a {ratio}}}} neutral {punto muerto} other {bloqueado}}',
  'chart.more':
    'Todas las combinaciones, también punto muerto y bloqueo: --all. Qué hace cada elemento en cada marcha, para una hoja de cálculo: --csv.',
  'hand.turns': 'Gira',
  'hand.locks': 'Se bloquea',
  'hand.legend':
    'Vueltas: por una vuelta de la mano. Pares: veces el par de la mano. Más es girar {plus}, {seen}.',
  'faults.title':
    '{train}: {faults, plural, one {una avería} other {{faults} averías}}{pairs, plural, =0 {} one { y un par} other { y {pairs} pares}}, en {gears, plural, one {una marcha} other {{gears} marchas}}',
  'faults.caution':
    'Cuidado: un tren que se bloquea puede clavar las ruedas motrices. Pruebe despacio, lejos del tráfico, y pare al primer agarre; no se meta bajo ruedas que giran en el elevador; ninguna prueba de calado antes de saber que la presión es buena.{air, select, yes { Pruebas con aire: como mucho al límite del fabricante, un trapo sobre el orificio, los dedos fuera.} other {}} Lo que dice el fabricante va primero.',
  'faults.legend':
    'Dos líneas cada una: en tracción y, debajo, en retención, hacia donde va la marcha sana. Un punto: como el tren sano. Un número: otra relación, velocidad de entrada entre velocidad de salida. --: punto muerto, o en retención no arrastra el motor. Si una marcha no transmite nada y marcha atrás es distinto: adelante / marcha atrás. {tied}: bloqueado. {slips}: como debe hasta la carga que aún aguanta; por encima el motor se embala.',
  'faults.apart': 'ninguna prueba en carretera las separa',
  'faults.signs': 'Qué se nota primero',
  'faults.silent': 'Estas no cambian nada en ninguna marcha',
  'faults.healthy': 'sano',
  'faults.more':
    'Dos averías a la vez: --pairs. Algunas averías: --only "NOMBRE: AVERÍA, NOMBRE: AVERÍA". Fracciones exactas: --json. Para una hoja de cálculo: --csv.',
  'faults.cell': '{state, select, neutral {--} slips {patina} other {bloq}}',
  'faults.column':
    '{column, select, fault {avería} class {clase} bench {en el banco} road {en carretera} drive {{gear} en tracción} coast {{gear} en retención} other {{gear} en retención marcha atrás}}',

  cause:
    '{cause, select, low_line_pressure {presión de línea baja} high_line_pressure {presión de línea alta} stator_slips {el estator del convertidor patina} engine_weak {un motor débil} selector_linkage {el varillaje del selector} control {el control se queda en una marcha} nothing_wrong {nada mal en el tren} other {varias averías}}',
  test: '{test, select, under_power {{name} en tracción} coast {{name} en retención} noise {ruido en {name}} shift {cambio {name}} engagement {N a {name}} stall {calado en {name}} slip_log {patinaje en {name}, con registrador} manual_shift {marchas solo con la palanca} pan {cárter e imán} valve_body {cuerpo de válvulas} build_record {registro del montaje} seal_rings {anillos en la alimentación de {name}} seals {retenes del pistón de {name}} one_way_check {{name} girado en las manos, fuera de la unidad} pump {bomba desarmada} inspection {{name} desarmado y mirado} fluid {aceite} codes {códigos y marcha ordenada} selector {selector en la unidad} filter {filtro} end_play {{has, select, yes {juego axial del juego {name}} other {juego axial}}} pressure {{has, select, yes {presión de línea en {name}} other {presión de línea}}} device_pressure {presión en {name}} stray_pressure {presión donde no debe haberla, en {name}} engine {el motor por sí solo} converter {el estator del convertidor a mano} air_check {prueba de aire de {name}} band_check {ajuste y carrera de {name}} other {comprobación a mano}}',
  'test.standing': '{name} con el motor en marcha',
  'test.hand':
    '{name} girado {way}{count, plural, =0 {} other {, reteniendo {held}}}{devices, plural, =0 {} other {, con {on}}}',
  outcome:
    '{word, select, drives {{has, select, yes {transmite a {ratio}} other {transmite}}} brakes {{has, select, yes {retiene a {ratio}} other {retiene}}} slips {patina} no_drive {no transmite} ties_up {se bloquea} another_ratio {otra relación} runs_free {no arrastra el motor} turns {gira} locks {se bloquea} normal {normal} high {alto} low {bajo} good {bien} flares {se revoluciona} late {tarde} harsh {brusco} none {no llega} quiet {silencio} growls {ruge} clear {limpio de códigos} set {con códigos} blocked {obstruido} in_place {en su sitio} out_of_place {fuera de sitio} right {correcto} too_big {demasiado grande} too_small {demasiado pequeño} loose {floja} tight {apretada} thud {golpe seco} hiss {silbido} nothing {nada} clean {limpio} burnt {quemado} metal {metal} milky {lechoso} holds {aguanta} gears_come {las marchas entran} gears_missing {faltan marchas} friction {material de fricción} free {libre} sticks {se atasca} worn {gastado} complete {completo} part_missing {falta una pieza} wrong_way_round {montado al revés} cut {duros o cortados} one_way {gira en un sentido y se bloquea en el otro} turns_both_ways {gira en ambos sentidos} locks_both_ways {se bloquea en ambos sentidos} wrong_way {gira en el sentido que no es} weak {flojo} pressure {presión} sound {sano} broken {roto} as_it_should {como debe} other {no como debe}}',
  'seen.said': '{test}: {outcome}',
  'seen.speed': '{reading}, una relación de {from} a {to}',
  'seen.against': '{test}: {outcome}, no {would}',
  'seen.of': '{evidence} (solo de {suspects}{more, plural, =0 {} other { y {more} más}})',
  'seen.sure': '{sure, select, sure {seguro} other {no seguro}}',
  'suspects.title': '{train}: qué puede fallar',
  'suspects.nothing seen': 'Aún no se ha visto nada: así de a menudo falla cada cosa.',
  'suspects.seen': 'Visto',
  'suspects.stage':
    'Dónde está la unidad, según el trabajo: {stage, select, on_the_road {en carretera} on_the_hoist {en el elevador} open {abierta} other {desarmada; se pregunta solo lo que se mira en el banco, y nada del coche}}.',
  'suspects.ranked': 'Sospechosos, primero el más probable',
  'suspects.bracket':
    '{place}. {chance} %: {count, plural, one {{suspect}} other {{count} sospechosos que nada visto hasta ahora separa con seguridad}}',
  'suspects.starves':
    '{suspect} (no lleva nada donde patina; una fuga quita la presión a lo que lleva)',
  'flow.slipping':
    '{count, plural, one {Con {devices} patinando, así queda la marcha por encima de la carga que aún lleva. Por debajo es como debe ser; entre ambas, las velocidades quedan en medio, y donde esta queda libre suben con el motor.} other {Con {devices} patinando, así queda la marcha por encima de la carga que aún llevan. Por debajo es como debe ser; entre ambas, las velocidades quedan en medio, y donde esta queda libre suben con el motor.}}',
  'suspects.one': '{chance} %  {suspect}',
  'suspects.hidden':
    '{count, plural, one {y uno más, {chance} %} other {y {count} más, juntos {chance} %}}',
  'suspects.for': 'A favor: {evidence}',
  'suspects.against': 'En contra: {evidence}',
  'suspects.others':
    '{count, plural, one {Otro sospechoso: {chance} %. Todos: --all.} other {Otros {count} sospechosos, juntos {chance} %. Todos: --all.}}',
  'suspects.enough':
    'El primero es bastante probable para actuar; si hay una prueba que lo separe más, está abajo.',
  'few.more': '{count, plural, other { y {count} más}}',
  'suspects.legend':
    'Pesos, minutos y riesgos son práctica común, no medidos, de {file}. El fabricante de la unidad tiene la última palabra en cada prueba.',
  'proof.title': 'Qué mostraría de todo lo que se vio',
  'proof.all': '{suspect}: explica todo lo que se vio.',
  'proof.not':
    '{count, plural, one {{suspect}: una cosa que se vio no la explica.} other {{suspect}: {count} cosas que se vieron no las explica.}}',
  'proof.by': '{by, select, train {demostrado en el tren} other {experiencia del taller}}',
  'proof.shows': '{agrees, select, yes {{outcome}} other {{outcome}: no lo explica}}',
  'suspects.next': 'La mejor prueba siguiente',
  'next.best':
    '{test}: {minutes} min{opening, plural, =0 {} other {, y {opening} min para abrir la unidad hasta ahí o cerrarla}}, con {tool}; riesgo: {risk}.',
  'next.none': 'Ninguna: no queda prueba que separe a los sospechosos.',
  'next.again': 'Ya se hizo, y se vio así: corríjalo y pruebe otra vez.',
  'next.held':
    '{shown, select, yes {Alto, nada de {test}: {first} debe estar {must}, y no se vio así; arréglelo antes.} other {Alto, nada de {test} todavía: {first} debe estar {must}, y nadie lo ha visto con seguridad; pruebe eso antes.}}',
  risk: '{risk, select, none {poco} low {bajo} other {alto}}',
  contradiction: 'Lo visto no concuerda',
  'contradiction.doubt':
    '{count, plural, one {Ninguna cosa sola lo explica todo. Sin {observations} puede ser {causes}.} other {Ninguna cosa sola lo explica todo. Sin estas {count} puede ser {causes}: {observations}.}}',
  'contradiction.again': 'Vale la pena mirar otra vez, antes de abrir nada: {tests}.',
  'next.reread': 'Ya se vio, y no casa con lo demás: mire otra vez antes de abrir nada.',
  'contradiction.more':
    '{count, plural, one {Hay otra manera de explicarlo dejando de lado otras tantas respuestas.} other {Hay otras {count} maneras de explicarlo dejando de lado otras tantas respuestas.}}',
  'cause.at':
    '{cause, select, thrust_washer_left_out {{name}: arandela de empuje sin montar o gastada} device_fed_by_mistake {{name}: recibe aceite cuando no debe} other {{name}}}',
  'test.under':
    '{test}{load, select, light {, con poca carga} heavy {, a plena carga} other {}}{speed, select, idle {, al ralentí} fast_idle {, a ralentí alto} full_throttle {, a fondo} other {}}{heat, select, cold {, en frío} hot {, en caliente} other {}}',
  'next.then': '{count, plural, one {Junto a ella: {tests}.} other {Junto a ella: {tests}.}}',
  'contradiction.pairs':
    '{count, plural, one {Ninguna cosa sola lo explica todo; dos a la vez sí, y están abajo.} other {Ninguna cosa sola lo explica todo; dos a la vez sí, {count} pares, que están abajo.}}',
  'caution.engagement':
    'El pie en el freno, ruedas calzadas, nadie delante ni detrás. Solo al ralentí.',
  'caution.shift': 'En carretera, quien pueda conducirlo, atento al tráfico.',
  'caution.noise':
    'En carretera, quien pueda conducirlo. Un juego que ruge se está comiendo: no más de lo necesario para oírlo.',
  'caution.codes': 'Cables lejos de partes que giran y queman; nadie lee y conduce a la vez.',
  'caution.selector':
    'Motor parado, ruedas calzadas, freno de mano puesto: sin su cable, la palanca del coche no dice nada.',
  'caution.filter':
    'Bajo el coche solo sobre caballetes. El aceite puede quemar, y un cárter lleno pesa.',
  'caution.end play':
    'Motor parado, batería desconectada si el reloj lo pide; dedos lejos de los ejes que se apalancan. Levante la unidad con grúa o entre dos, y trabe su soporte.',
  'caution.device pressure':
    'Ruedas calzadas, freno de mano puesto, manos y mangueras lejos de correas y escape. El aceite está caliente y a presión. Parado no a fondo: eso es una prueba de calado.',
  'caution.band check':
    'Motor parado, la contratuerca apretada después. Solo con los datos de la unidad: una banda demasiado apretada arrastra y se quema.',
  pair: '{a} con {b}',
  'caution.slip log':
    'En carretera, quien pueda conducirlo, mientras otro lee el registrador. Solo a medio gas: suelte en cuanto patine.',
  'caution.manual shift':
    'Solo si el fabricante de la unidad lo permite: con el control desenchufado la presión puede ir al máximo, los cambios son bruscos y una marcha corta puede pasar de vueltas el motor. Despacio, lejos del tráfico.',
  'caution.pan':
    'Debajo del coche solo si está sobre caballetes. El aceite puede quemar, y un cárter lleno pesa.',
  'caution.valve body':
    'Saltan muelles y bolas: con gafas, sobre una bandeja. Guarde las válvulas en su orden.',
  'caution.seal rings':
    'Levante la unidad con grúa o entre dos, y trabe su soporte. Los bordes de los alojamientos cortan.',
  'caution.seals':
    'Los muelles bajo anillos elásticos guardan cientos de newtons: el compresor del fabricante, centrado, la cara fuera de la línea, con gafas.',
  'caution.one-way check':
    'Los dedos lejos de sus muelles: uno que salta se lleva rodillos. Con gafas; gírelo despacio.',
  'caution.pump':
    'Una bomba pesa y gotea aceite caliente, sus cantos cortan; algunas tienen un muelle cargado. Con gafas; marque qué cara de cada engranaje mira arriba.',
  'caution.build record': 'No se toca nada.',
  'caution.engine':
    'Ruedas calzadas, freno de mano puesto, palanca en P; manos, mangas y mangueras lejos de correas, ventilador y escape. Los gases, fuera del local.',
  'caution.converter':
    'Un convertidor pesa y está lleno de aceite caliente: entre dos personas, o con polipasto, y una bandeja bajo el cubo.',
  'caution.stray pressure':
    'Sobre borriquetas, las ruedas libres y nadie cerca de ellas, al ralentí. Manos y mangueras lejos de correas y escape; el aceite está caliente y a presión. Una marcha en la que el tren se bloquea se quita enseguida.',
  'caution.inspection':
    'Los muelles bajo los anillos elásticos guardan cientos de newtons: el compresor del fabricante, centrado, la cara fuera de línea. Levante la unidad con grúa o entre dos, y trabe su soporte. Discos de acero y anillos elásticos cortan.',
  stop: '{stops, select, road_test {Alto, nada de prueba en carretera} pulling_hard {Nada de acelerar fuerte} stall_test {Nada de calado} other {La unidad sigue cerrada}}: {count, plural, =0 {por lo mismo} other {{reasons}}}.',
  'stop.why':
    '{why, select, low_pressure {la presión baja quema lo que patina} high_pressure {la presión es demasiado alta} bad_fluid {agua o metal en el aceite estropea lo que aún anda} burnt_fluid {el aceite está quemado} ties_up {un tren que se bloquea puede clavar las ruedas} no_drive {lo que debería tirar no tira, y forzarlo rompe más} drives_in_neutral {se mueve con la palanca en punto muerto} end_play {con tanto juego axial se come a sí misma} growls {lo que suena se está comiendo} slips {tirar fuerte quema lo que patina} pressure_unknown {nadie ha leído la presión con seguridad} shows_nothing {no mostraría nada de lo que está en duda} lever_first {la palanca puede estar fuera de su punto, y eso se mira antes} backwards {nadie deja rodar un coche hacia atrás para ver si frena} not_in_question {nada de lo visto apunta ahí} made {ya se hizo} in_pieces {la unidad está desarmada} other {antes se mira el aceite}}',
  'stop.seen': '{why} ({seen})',
  'stop.left':
    'Qué se puede hacer mientras, {place, select, on_the_road {en carretera} standing_still {parado} on_stands {sobre caballetes} other {en el banco}}: {tests}.',
  'test.kind':
    '{test, select, under_power {marchas en tracción} coast {freno motor} noise {escuchar} shift {cambios} engagement {engrane desde N} stall {calado} fluid {aceite} codes {códigos} selector {palanca y retén} filter {filtro} end_play {juego axial} pressure {presión de línea} device_pressure {presión en un elemento} stray_pressure {presión donde no debe haberla} engine {el motor por sí solo} converter {el convertidor a mano} air_check {pruebas de aire} band_check {ajuste de bandas} slip_log {patinaje con registrador, a medio gas} manual_shift {marchas solo con la palanca} pan {cárter e imán} valve_body {cuerpo de válvulas} build_record {registro del montaje} seal_rings {anillos} seals {retenes de pistones} one_way_check {ruedas libres en las manos} pump {la bomba desarmada} inspection {desarmar y mirar} other {comprobaciones a mano}}',
  'next.with':
    '{tool, select, nothing {nada} road {una carretera tranquila} rag_and_light {un trapo y una luz} scan_tool {un lector de códigos} stopwatch {un cronómetro} gauge {un manómetro} tachometer {un tacómetro} logger {un registrador} rule {una regla} air_nozzle {una pistola de aire} dial_indicator {un reloj comparador} other {el banco}}',
  'noise.title': 'Dónde puede estar el ruido',
  'noise.part':
    '{part, select, planets {satélites del juego {name}} pair {las ruedas {name}} races {las pistas de {name}} other {los cojinetes de {name}}}: {because, select, turns {trabajan en cada marcha ruidosa y en ninguna silenciosa} other {cargados solo en las marchas ruidosas}}{count, plural, =0 {} other {; con carga en {gears}}}',
  // Por qué falló: de lo encontrado a su causa. Práctica común, sin fuente.
  'failure.title': 'Por qué falló, según lo encontrado',
  finding:
    '{has, select, yes {{name}: } other {}}{sign, select, burnt {quemado} hot_spots {manchas de calor} bad_seal {un retén duro o cortado} worn_rings {anillos o su ranura gastados} broken {roto o mellado} blued {azulado, o pernos flojos} worn_bushing {un casquillo gastado} worn_thrust_face {una cara de empuje gastada} worn_splines {el estriado gastado} turns_both_ways {gira en ambos sentidos} locks_both_ways {se bloquea en ambos sentidos} wrong_way_round {montado al revés} sound {en buen estado} burnt_fluid {aceite quemado} water {agua en el aceite} metal {metal} lining_dust {polvo de forro} blocked_filter {el filtro tapado} worn_pump {la bomba gastada} stuck_valve {una válvula atascada} worn_converter {el convertidor gastado o azulado} other {el enfriador tapado}}',
  failure:
    '{root, select, low_pressure {Presión de línea demasiado baja: dejó sin aceite a lo que está quemado} high_pressure {Presión de línea demasiado alta: todo entraba a golpes} poor_cooling {Demasiado calor: poco caudal por el enfriador, o ninguno} water {Agua en el aceite: despega los forros y oxida lo que gira} debris {Pasaron restos: tapan el filtro, rayan la bomba y atascan válvulas} wrong_fluid {No es el aceite para el que están hechos sus forros y retenes} leaking_circuit {Fuga en el circuito de {name}} wrong_clearance {El juego de {name} no era bueno: si sobra llega tarde y patina, si falta arrastra} dragging_device {{by} arrastraba contra {name}: con los dos aplicados el tren se bloquea} shock {Golpes en {name}: entrada brusca, o ruedas que patinaron y agarraron} no_lubrication {Llegaba poco aceite a {name}} other {El juego axial en {name} no era bueno, o su arandela faltaba o estaba al revés}}',
  'failure.from': '{failure} ({findings}).',
  'failure.mend':
    'Antes de montar: {root, select, low_pressure {mida la bomba, cambie el filtro, vea que el regulador se mueve libre; lea la presión antes de toda carga} high_pressure {vea que el regulador y lo que lo manda se mueven libres; lea la presión antes de toda carga} poor_cooling {lave el enfriador y sus tubos en los dos sentidos y mida el caudal, o cámbielo} water {pruebe el enfriador o cámbielo; cambie todos los forros; lave los tubos} debris {cambie o lave el enfriador, limpie cada conducto, cambie el filtro, mire el convertidor} wrong_fluid {llene el que nombra el fabricante} leaking_circuit {retenes y anillos nuevos, mida sus alojamientos y ranuras, prueba de aire antes de poner el cuerpo de válvulas} wrong_clearance {mida el paquete o la banda, y elija la pieza} dragging_device {busque qué dejó aplicado a {by}: su pistón, su bola, su juego, su circuito} shock {mire la presión y los acumuladores, y cambie las pistas con él} no_lubrication {abra sus orificios, mida los casquillos anteriores, vea hacia dónde miran sus arandelas} other {mida el juego axial y elija la arandela}}.',
  'failure.legend':
    'Práctica común, sin fuente; pueden ser varias a la vez. Lo que dice el fabricante va primero.',
  'complaint.unused': 'De lo que dice el conductor, de esto no se sacó nada: {parts}.',
  'ask.driver':
    '¿Qué dice el conductor? Con sus palabras, en una línea, como: no hay marcha atrás, patina en segunda en caliente, se revoluciona de segunda a tercera, brusco al poner D, sin freno motor, ruido en primera. Intro para nada.',
  'ask.understood': 'Tomado por visto, sin seguridad: {observations}.',
  'caution.under power':
    'En carretera, quien pueda conducirlo, atento al tráfico. En un elevador, nadie debajo de ruedas que giran, sin mangas sueltas; con una rueda retenida la otra gira al doble.',
  'caution.coast':
    'En una bajada tranquila, marcha atrás al paso y en un patio vacío, sin acelerador y con el pie listo sobre el freno.',
  'caution.fluid':
    'El aceite puede quemar: deje que se enfríe, o use guantes largos y pantalla facial. Un cárter lleno pesa.',
  'caution.pressure':
    'Ruedas calzadas, freno de mano puesto, manos y mangueras lejos de correas y escape. El aceite está caliente y a presión. A fondo, una prueba de presión es una de calado: valen las mismas precauciones.',
  'caution.stall':
    'Puede herir a personas y quemar discos. Solo si el fabricante de la unidad lo permite: ruedas calzadas, freno de mano y de pie, nadie delante, detrás ni al lado, todas las ruedas en el suelo; 5 segundos a fondo como mucho, después dos minutos en punto muerto a ralentí alto; suelte enseguida si el régimen pasa del límite.',
  'caution.air check':
    'Con gafas, un trapo sobre el orificio, dedos fuera de pistones y servos, aire a no más de la presión del fabricante. Gotea aceite caliente.',
  'caution.hand check':
    'Visto desde el lado de entrada. Dedos fuera de dientes, orejetas y estriados; gire despacio, y acuerden quién gira y quién retiene. Levante la unidad con grúa o entre dos, y trabe su soporte.',
  'describe.empty': 'Solo Intro: {means}.',
  'describe.further': '¿Qué más hay que decir? Solo Intro termina.',
  'describe.how':
    'Una pregunta tras otra; responda con el número o con sus palabras, varias separadas por comas. back retira la última respuesta, q termina. Cuando una ronda de preguntas está completa, se escribe en {file}.',
  'describe.known':
    '“{given}” no es una respuesta aquí: dé un número de la lista, o lo que se pregunta.',
  'describe.no': 'no, eso es todo',
  'describe.seen from the input': 'Visto desde la entrada.',
  'describe.units': 'Con su unidad: {units}.',
  'describe.yes': 'sí',
  'ask.how':
    'Cada pregunta es sobre una prueba. Responda y (como debe), n (no como debe), o lo que hizo: {example}. Un ? detrás dice que no está seguro. s salta, p escribe lo visto como archivo, q termina.',
  'ask.test': '{test}, {minutes} min: {whole}, ¿como debe? ({others})',
  'ask.known':
    'No es una respuesta: {given}. Escriba y, n, {others}, s, p o q; ? detrás si no está seguro.',
  'ask.leading': 'Van delante: {suspects}.',
  'ask.leading one': '{suspect} ({chance} %)',
  'ask.leading group':
    '{count, plural, one {# sospechoso} other {# sospechosos sin separar}} ({chance} %)',
  'ask.end': 'Lo visto, como archivo para otra vez:',

  // El montaje.
  mistake:
    '{what, select, jammed {{name}: arrastra, discos trabados} tight {{name}: arrastra, demasiado ajustada} weak {{name}: no agarra} stays_in {{name}: no sale} no_hold {{name}: no retiene} backwards {{name}: al revés} seized {{name}: se ha gripado} left_out {{name}: sin montar} out_or_slips {{name}: sin montar, o patina por desgaste} unseated {{place}: sin asentar en {name}} wrong_way_round {{name}: con la cara al revés} out_of_line {{name}: sin alinear} miscounted {{name}: discos mal contados} wrong_thickness {{name}: espesor equivocado} other {{name}: estriado roto}}',
  felt: '{felt, select, both_ways {gira en ambos sentidos} neither_way {no gira en ningún sentido} clockwise_only {gira solo en sentido horario} other {gira solo en sentido antihorario}}',
  inspection:
    '{inspection, select, look {mirar} count {contar} measure {medir} height {altura} clearance {holgura} band {ajuste de la banda} end_play {juego axial} hand_check {comprobación a mano} preload {precarga} pawl_check {probar el trinquete} other {prueba de aire}}',
  'part.note':
    '{what, select, inner {Engrana por dentro: {note}} outer {Engrana por fuera: {note}} align {Alinear: {note}} other {Fotografía: {note}}}',
  'part.faces':
    '{end, select, input {Mira a la entrada} output {Mira a la salida} other {Mira}}{way, select, up {{end, select, none { arriba} other { (ahora arriba)}}} down {{end, select, none { abajo} other { (ahora abajo)}}} other {}}{named, select, yes {: {note}} other {}}',
  'part.plates':
    '{frictions, plural, =0 {Contar los discos: {steels, plural, one {# de acero} other {# de acero}}} one {Contar los discos: # de fricción{steels, plural, =0 {} other { y # de acero}}} other {Contar los discos: # de fricción{steels, plural, =0 {} other { y # de acero}}}}',
  'part.selective': 'Selectiva: medir y elegir',
  'part.refit':
    '{refit, select, reuse {Se vuelve a montar: limpiar y revisar} other {Se monta una nueva}}',
  'part.fitted': 'Montada',
  'plan.title': '{train}: el montaje en {steps, plural, one {un paso} other {{steps} pasos}}',
  'plan.caution': 'Precaución',
  'plan.caution.of':
    '{what, select, hands {Las comprobaciones a mano acercan los dedos a dientes, orejetas y estriados: acuerden quién retiene y quién gira, y giren despacio. Un miembro libre puede ponerse en marcha.} springs {Los muelles de retorno y los anillos elásticos guardan energía: use el compresor del fabricante, aparte la cara, lleve protección ocular y compruebe que el anillo asienta en su ranura en toda la vuelta antes de soltar.} air {Pruebas de aire: como máximo a la presión del fabricante, con protección ocular, un trapo sobre el orificio y los dedos fuera de pistones y servos.} weight {La unidad pesa y resbala: levántela con un polipasto o entre dos personas, y bloquee el soporte antes de darle la vuelta.} other {El fabricante de la unidad tiene la última palabra sobre orden, holguras, pares y presiones.}}',
  'plan.coverage':
    '{checks, plural, =0 {Ninguna comprobación a mano nota ninguno de los {mistakes} errores posibles de este montaje: cada uno pide mirar, contar, medir o una prueba de aire.} other {{caught} de los {mistakes} errores posibles de este montaje se notan con {checks, plural, one {una comprobación a mano} other {{checks} comprobaciones a mano}}, cada uno en el primer paso en que la mano puede notarlo. {proven, select, yes {Está demostrado que menos no bastan.} other {Quizá basten menos: la búsqueda se interrumpió.}} Los demás piden mirar, contar, medir o una prueba de aire.}}',
  'plan.how':
    'En una comprobación a mano nada está aplicado: gire a mano, en ambos sentidos. Sentido horario: {seen}. Prediga primero y apunte después lo que notó.',
  'plan.check':
    '{holds, select, yes {Comprobación {number}. Retenga {hold} y gire {turn}.} other {Comprobación {number}. Sin retener nada, gire {turn}.}}',
  'plan.right': 'Correcto: {felt}.',
  'plan.wrong': 'Si {felt}: {mistakes}',
  'strip.finding':
    '{is, select, worn_splines {Estriado gastado} scored {Rayado} worn_ring_groove {Ranura del anillo gastada} bent {Doblado} notched {Orejetas o dientes con muescas} worn_bushing {Casquillo gastado} scored_bore {Alojamiento rayado} glazed {Superficie de la banda cristalizada} cracked {Agrietado} blocked_hole {Orificio de aceite tapado} chipped {Dientes saltados o picados} scored_face {Cara de empuje rayada} loose_pins {Pasadores flojos} loose_planets {Satélites flojos en sus pasadores} blued {Azul por calor} burnt {Forros quemados} worn_linings {Forros gastados} hot_spots {Aceros con puntos calientes} wrong_order {Discos en otro orden} strut_out {Puntal o anclaje fuera de sitio} backwards {Estaba montado al revés} warped {Aceros alabeados} worn_ends {Extremos gastados} slips_both_ways {Gira en ambos sentidos} locks_both_ways {Se bloquea en ambos sentidos} marked_rollers {Calzos o rodillos marcados} broken_springs {Muelle roto} marked_track {Pista marcada} worn_thin {Adelgazada} broken_tangs {Uñas rotas} rough {Gira áspero} falls_apart {Se deshace} worn_groove {Su ranura gastada} torn {Rota o con fugas} hard_or_cut {Duro o cortado} cut_seals {Retenes cortados o duros} stuck_ball {Bola de retención atascada o con fugas} sagged {Vencido} worn_rod {Vástago o pasador gastado} rounded {Diente redondeado} scored_gears {Engranajes rayados} stuck_valve {Una válvula se pega} other {Metal dentro}}',
  'strip.sound': 'En buen estado',
  'strip.counted':
    'Contados de otro modo: {frictions, plural, one {uno de fricción} other {{frictions} de fricción}}, {steels, plural, one {uno de acero} other {{steels} de acero}}; el archivo dice {fileFrictions} y {fileSteels}{follows, select, larger {: la pila es {by} más delgada, así que la holgura crece otro tanto} smaller {: la pila es {by} más gruesa, así que la holgura mengua otro tanto} other {}}',
  'strip.held on':
    'Todavía no: {count, plural, =1 {{parts} está encima, y sigue puesta} other {{parts} están encima, y siguen puestas}}.',
  'strip.kept off':
    'Todavía no: {count, plural, =1 {{parts} va debajo, y sigue fuera} other {{parts} van debajo, y siguen fuera}}.',
  'plan.late': '{mistake} (desmontar hasta el paso {step})',
  'plan.stop': 'Alto. Último paso en que aún se puede ver, y corregir sin desmontar: {mistakes}.',
  'plan.step':
    '{does, select, height {Altura: {name}} tighten {Apretar: {name}} clearance {Holgura del paquete: {name}} band {Ajuste de la banda: {name}} end_play {Juego axial: {name}} backlash {Juego entre dientes: {name}} preload {Precarga: {name}} pawl_check {Probar a mano: {name}} air_check {Prueba de aire: {name}} other {Llenar de fluido}}',
  'plan.first up':
    'Se empieza con el lado de {end, select, input {entrada} other {salida}} arriba.',
  'plan.turn over':
    'Dar la vuelta a la unidad: el lado de {end, select, input {entrada} other {salida}} arriba',
  'plan.turned': 'Vuelta, y el soporte bloqueado',
  'plan.danger':
    '{danger, select, springs {Muelles: el compresor centrado, la cara fuera de la línea, el anillo en su ranura en toda la vuelta.} air {Aire: primero a baja presión y nunca por encima de la del fabricante; con gafas, un trapo sobre el orificio y los dedos fuera.} weight {Polipasto o dos personas; que nada suelto se caiga, y bloquee el soporte antes de acercar las manos.} other {El fluido usado puede estar caliente: déjelo enfriar, o lleve guantes largos y careta.}}',
  'plan.height':
    'Calibre de profundidad desde la cara de la carcasa, en varios puntos. Lo que sobresale no ha entrado: un disco o un estriado no engrana.',
  'plan.clearance':
    'Galga entre el anillo elástico y el disco de apoyo, levantado contra el anillo, en tres o cuatro puntos de la vuelta.',
  'plan.select':
    'Fuera de los límites: lo ajusta {part, select, flange {el disco de apoyo} backing_plate {el disco de apoyo} steel {el disco de acero} snap_ring {el anillo elástico} piston {el pistón} washer {la arandela} race {la pista} shim {el calce} spacer {el separador} servo_rod {la varilla del servo} apply_rod {la varilla de aplicación} other {el pasador de aplicación}} del surtido. Elija, monte y mida otra vez.',
  'plan.read': 'Leído: {places}  media: {mean}',
  'plan.bolts once': 'De un solo uso: tornillos nuevos',
  'plan.draw down': 'Bajada por igual, poco a poco{has, select, yes {: {sequence}} other {}}',
  'plan.bolts':
    '{count, plural, =0 {Tornillos} one {Un tornillo} other {# tornillos}}{has, select, yes { a {torque}} other {: el par no está en el archivo}}; {sourced, select, yes {fuente: {source}} other {sin fuente}}{signed, select, yes {, {by}} other {}}. Mandan los datos propios de su unidad',
  'plan.still':
    'Tras cada vuelta de apriete gire {turn} a mano: {felt}, como antes. Si se agarra, pare y sáquela otra vez',
  'plan.air heard': '{sound, select, thud {golpe (correcto)} hiss {silbido} other {nada}}',
  'plan.air locks':
    '{joins, select, yes {Con el aire puesto, {a} y {b} giran como una sola pieza} other {Con el aire puesto, {a} no gira}}',
  'plan.air check':
    '{holds, select, yes {Con el aire puesto, retenga {hold} y gire {turn}.} other {Con el aire puesto, sin retener nada, gire {turn}.}}',
  'plan.air unseen': 'Las manos no alcanzan nada que lo muestre ahora: guíese por el sonido.',
  'plan.air doubt':
    'Silbido: una junta pierde, o el orificio ventila por diseño, y entonces lo dice el manual del fabricante. Nada: no llega aire, o el pistón está trabado.',
  'plan.pawl':
    'Métalo con su propia varilla y su palanca, como hace el selector en estacionamiento, y mire dónde cae. Un trinquete que no retiene deja rodar el coche: no se sigue hasta que esto esté bien.',
  'plan.pawl locks':
    'Metido, {a} no gira en ninguno de los dos sentidos; suelto, sale del todo y {a} gira',
  'plan.pawl check':
    '{holds, select, yes {Con él metido, retenga {hold} y gire {turn}.} other {Con él metido, sin retener nada, gire {turn}.}}',
  'plan.one-way':
    'Ninguna comprobación a mano posterior nota que esté al revés: pruébelo aquí, antes de que se tapen sus pistas. {words} Si va al revés: sáquelo y dele la vuelta. La ficha de ruedas libres da todas las maneras de retenerlo.',
  'plan.assumed':
    '{count, plural, one {De una pieza el archivo no dice qué la aparta de las manos: se toma la que tiene encima. Donde la mano llegue, dígalo con under o hidden by, y se podrán hacer más comprobaciones.} other {De {count} piezas el archivo no dice qué las aparta de las manos: se toma la que cada una tiene encima. Donde la mano llegue, dígalo con under o hidden by, y se podrán hacer más comprobaciones.}}',
  'plan.fill':
    '{has, select, yes {Entran {fill}} other {Cuánto entra no está en el archivo}}{named, select, yes {, {kind}} other {}}; {sourced, select, yes {fuente: {source}} other {sin fuente}}{signed, select, yes {, {by}} other {}}. Mandan los datos propios de su unidad',
  'plan.fill level':
    'El nivel se lee como dice el fabricante, en caliente, y se compara con lo que salió',
  'plan.soak':
    'Discos de fricción en remojo antes, en el fluido de la unidad, lo que diga su fabricante; montados mojados',
  'plan.clicks':
    'Girar con suavidad, sin apretar: {frictions, plural, one {un clic} other {# clics}}, uno por cada disco de fricción que entra',
  'plan.catches': 'Descubre: {mistakes}',
  'plan.until': '{late, select, yes {{until}, desmontar hasta {open}} other {{until}}}',
  'plan.at': '{by}, paso {step}',
  'plan.felt': 'Errores que descubre una comprobación a mano',
  'plan.instead': 'Errores que ninguna comprobación a mano descubre',
  'plan.end': 'fin',
  'plan.legend':
    'Hecho: el paso en que se puede cometer. Hasta: el último paso en que se puede descubrir; «desmontar hasta 5»: para entonces está tapado, y lo montado después del paso 5 vuelve a salir.',

  // The first start of a rebuilt unit.
  'start.heading': 'Primer arranque',
  'start.numbered': 'Arranque {number}. {title}',
  'start.practice':
    'Práctica común, sin fuente: el fabricante de la unidad tiene la última palabra en cada línea, y donde diga otra cosa, haga lo que dice.',
  'start.title':
    '{step, select, cooler {Enfriador lavado} converter {Convertidor lleno y en su sitio} fill {Aceite antes de que gire} prime {Cebar al ralentí} pressure {Presión antes de carga} ranges {Cada posición al ralentí} leaks {Fugas} level {Nivel, en caliente} drive {Un primer recorrido suave} other {Después del recorrido}}',
  'start.cooler':
    'Antes de montar la unidad: lave el enfriador y sus tubos en los dos sentidos hasta que salga limpio, y vea que el aceite pasa libre. Ahí está lo que soltó la unidad vieja; un enfriador que no queda limpio se cambia.',
  'start.converter':
    'Ponga aceite en el convertidor, gírelo hasta que caiga en su sitio y mida hasta la cara donde se atornilla, como diga el fabricante. Tiene que girar libre antes de apretar un tornillo: si no está en su sitio, rompe la bomba en el primer arranque.',
  'start.fill':
    'Ponga aceite del tipo del fabricante: casi todo lo que lleva la unidad, no todo. El resto entra cuando la bomba haya llenado el convertidor y el enfriador.',
  'start.prime':
    'Primero, un manómetro en la toma de presión de línea, antes de arrancar el motor. Calzos en las ruedas, estacionamiento, freno de mano puesto. Arranque y deje el motor al ralentí; si en segundos no hay presión, apague. Complete enseguida según baja el nivel. Apague si la bomba aúlla.',
  'start.pressure':
    'Al ralentí, en estacionamiento y en punto muerto, lea el manómetro de la toma de presión de línea antes de poner ninguna posición: si es poca, apague. Compárela con los datos del fabricante.',
  'start.ranges':
    'Con buena presión: los dos frenos puestos, al ralentí, la palanca despacio por todas las posiciones, unos segundos en cada una. Lea la presión y cuánto tarda cada una en entrar; la que llega tarde o brusca se encuentra ahora.',
  'start.leaks':
    'Mire el cárter, los tubos del enfriador, los retenes de salida y la campana del convertidor: con el motor apagado, o desde donde nada pueda girar.',
  'start.level':
    'A la temperatura y en la posición que diga el fabricante, lea el nivel y corríjalo. Borre lo que aprendió la unidad de control, donde el fabricante lo diga; lea sus códigos.',
  'start.drive':
    'Camino tranquilo, poco acelerador, sin pisar a fondo: todas las marchas arriba y abajo, y luego en retención. Lea la relación y el patinaje en cada marcha, la temperatura, los códigos. Pare a la primera subida de vueltas, patinaje o bloqueo: si sigue, se quema lo que armó.',
  'start.after':
    'Otra vez fugas, nivel y códigos; mire si el aceite trae metal o espuma. Anote las presiones y cómo fue el recorrido. Diga al conductor con qué debe volver, y cuándo se mira otra vez el nivel.',
  'start.danger':
    '{danger, select, oil {El aceite caliente quema, y también el cárter y los tubos del enfriador: deje que se enfríe, o lleve guantes largos y careta.} car {El coche puede echar a andar: calzos, los dos frenos, nadie delante ni detrás. El escape, hacia fuera.} wheels {Ruedas que giran en el elevador: un elevador o soportes que permita el fabricante del coche, nadie debajo, sin mangas sueltas y a poca velocidad; una rueda frenada hace girar la otra al doble.} other {Sin prueba de calado en una unidad recién armada, salvo que su fabricante la pida: nunca con presión baja, con todas las ruedas calzadas y los dos frenos puestos, 5 segundos como mucho, y luego al ralentí en punto muerto. Algunos fabricantes la prohíben.}}',

  // Paquetes de discos: longitudes, límites, lo medido y la pieza del surtido.
  length: '{first} ({second})',
  limit:
    '{kind, select, both {de {least} a {most}} least {al menos {least}} other {como máximo {most}}}; {sourced, select, yes {fuente: {source}} other {sin fuente}}{signed, select, yes {, {by}} other {}}',
  verdict:
    '{verdict, select, inside {dentro} too_small {bajo el mínimo} too_big {sobre el máximo} other {sin juzgar}}',
  plate:
    '{kind, select, friction {disco de fricción} steel {disco de acero} cushion {disco ondulado} other {disco de apoyo}}',
  'clearance way':
    '{way, select, feeler {galgas} lifted {reloj, disco de apoyo levantado} on_air {reloj, con aire} other {sonda de profundidad}}',
  'remark.no gap':
    'Las lecturas con {way} no dejan holgura: así nada puede girar. Lea otra vez y cuente los discos.',
  'remark.plate missing':
    'Sobra más o menos el espesor de un {kinds}: falta un disco. Cuente antes de elegir nada.',
  'remark.plate doubled':
    'Falta más o menos el espesor de un {kinds}: hay un disco de más. Cuente antes de elegir nada.',
  'remark.other unit':
    '{of, select, place {Sitio {place}. } friction {Disco de fricción {place}. } steel {Disco de acero {place}. } cone {Cono {place}. } other {}}{meant, select, in {¿Eran pulgadas? Con esa unidad las mismas cifras estarían dentro de los límites. Corrija la unidad.} thou {¿Eran milésimas de pulgada? Con esa unidad las mismas cifras estarían dentro de los límites. Corrija la unidad.} um {¿Eran micrómetros? Con esa unidad las mismas cifras estarían dentro de los límites. Corrija la unidad.} other {¿Eran milímetros? Con esa unidad las mismas cifras estarían dentro de los límites. Corrija la unidad.}}',
  'remark.point slipped':
    '¿Eran {meant}? {read} queda muy fuera, y la coma se corre con facilidad. Lea otra vez y corrija; otra lectura al lado que diga lo mismo la confirma.',
  'remark.digits swapped':
    'Sitio {place}: ¿se cambiaron dos cifras de lugar? {read} está sola, y {meant} iría con las otras. Léala otra vez antes de elegir nada.',
  'remark.not possible':
    'Sitio {place}: {read} no es posible donde el límite es {limit}. No se juzga nada por eso: táchelo y lea otra vez.',
  'remark.sizes apart':
    'Un alojamiento de {bore} y un eje de {shaft} no van juntos: se corrió la coma, o la unidad no es esa. Mida los dos otra vez.',
  'remark.uneven torque':
    'Las lecturas van de {least} a {most}: así no prueban nada. Así se lee un punto duro, un rodamiento áspero o suciedad: gírelo unas veces en los dos sentidos, búsquelo y lea otra vez.',
  'remark.uneven':
    '{where, select, round {Alrededor del paquete las lecturas difieren en {spread}, y los límites distan {width}. {beyond, select, yes {Ninguna pieza puede corregirlo, así que no se elige ninguna.} other {Mire antes de elegir una pieza.}} Así se lee un disco ladeado, un disco de apoyo doblado, un anillo mal asentado o una galga que no está a escuadra: búsquelo y lea otra vez.} teeth {De diente a diente las lecturas difieren en {spread}, y los límites distan {width}. {beyond, select, yes {Ninguna pieza puede corregirlo, así que no se elige ninguna.} other {Mire antes de elegir una pieza.}} Así se lee una corona mal asentada o descentrada, suciedad o una rebaba: búsquelo y lea otra vez.} other {Las lecturas del mismo juego difieren en {spread}, y los límites distan {width}. {beyond, select, yes {Ninguna pieza puede corregirlo, así que no se elige ninguna.} other {Mire antes de elegir una pieza.}} Así se lee un comparador que se ha movido, un eje que no se empujó hasta el tope en los dos sentidos, o suciedad: búsquelo y lea otra vez.}}',
  'remark.few places':
    '{places, plural, one {Un solo punto} other {Solo {places} puntos}} con las galgas: tome tres o cuatro, repartidos, con el disco de apoyo levantado contra el anillo.',
  'remark.squash unknown':
    'El aire aplasta el disco ondulado, y el archivo no dice cuánto: la carrera no se juzga. Añada squash, con at, al disco; o use galgas.',
  'remark.other pressure':
    'El aplastamiento se da a {given}, y la carrera se leyó a {read}: léala otra vez a {given}.',
  'remark.ways differ':
    'Con {a} y con {b} la holgura difiere en más de un cuarto de lo que permiten los límites: averigüe por qué. Se juzga la primera.',
  'remark.no limit':
    'El archivo no da límite, así que nada se juzga: añádalo, con los datos de su unidad.',
  'remark.one limit': 'El archivo da un solo límite, así que no se elige pieza: añada el otro.',
  'remark.limits turned round':
    'El mínimo permitido es mayor que el máximo, así que nada se juzga: corrija los límites.',
  'remark.limit doubted':
    '{by, select, unit {El límite del trabajo es unas 25,4 veces el del archivo del tren, o esa parte de él: se tomaron pulgadas por milímetros, o al revés.} point {El límite del trabajo es unas 10, 100 o 1000 veces el del archivo del tren, o esa parte de él: se corrió la coma.} wide {El límite del trabajo es mucho más ancho que el del archivo del tren.} other {El límite del trabajo queda muy lejos del que da el archivo del tren.}} Así que nada se juzga con él, y no se elige pieza. Táchelo y escriba el correcto; si es a propósito, {way, select, asked {escríbalo otra vez y diga allí que es a propósito} other {escríbalo otra vez con sure: yes detrás}}.',
  'remark.not on the shelf':
    'La pieza montada, {size}, no es de los espesores del surtido: mídala otra vez, o corrija el archivo.',
  'remark.gauge turned round':
    'Un escalón que entra no es menor que uno que no entra: pruebe otra vez.',
  'remark.place outside':
    'El punto {place} está fuera de los límites, aunque la media está dentro: busque suciedad, una rebaba o un anillo mal asentado.',
  'remark.coned on purpose':
    'El archivo dice que un disco de acero es cónico a propósito, {by}: ese disco no está alabeado. Juzgue solo los planos.',
  'remark.coned or warped':
    'Un disco de acero deja pasar la galga. Algunos son cónicos a propósito: consulte los datos de su unidad antes de llamarlo alabeado. Si no es a propósito, cambie los discos de acero.',
  'remark.plates spent':
    'Se encontraron discos quemados en este paquete, y nada dice que los nuevos estuvieran puestos cuando se midió. Cuando lo estén, anote que el paquete se montó cambiado, y mida otra vez: lo medido antes no elige ninguna pieza.',
  'remark.worn':
    '{what, select, friction {Un disco de fricción está bajo su límite: cambie todos los de fricción del paquete, nunca uno, y mida otra vez; hasta entonces no se elige pieza.} other {Un disco de acero está bajo su límite: cambie todos los de acero del paquete, nunca uno, y mida otra vez; hasta entonces no se elige pieza.}}',
  'remark.shelf too short':
    'Ningún espesor del surtido la lleva dentro: busque otra pieza, y cuente otra vez lo montado.',
  'remark.not as predicted':
    '{like, select, none {Medido otra vez, no es lo previsto} other {Medido otra vez, da lo que daría la pieza de {like}: ¿es esa la que está puesta? Si no}}: mire si está la pieza correcta, un disco fuera de orden o un anillo mal asentado.',
  'remark.nothing read': 'Aquí no hay lecturas, así que no se juzga nada: mida y anótelo.',
  'remark.gap hidden':
    'Con esta pieza no hay juego, así que nada dice cuánto se aprietan ya los rodamientos: ponga un calce más fino o un separador más grueso, para que haya juego, y lea otra vez.',
  'remark.other torque unit':
    '{meant, select, lbf_in {¿Eran libras-pulgada? Con ellas la misma cifra estaría dentro de los límites. Corrija la unidad.} lbf_ft {¿Eran libras-pie? Con ellas la misma cifra estaría dentro de los límites. Corrija la unidad.} kgf_cm {¿Eran kgf·cm? Con ellos la misma cifra estaría dentro de los límites. Corrija la unidad.} Ncm {¿Eran newton centímetro? Con ellos la misma cifra estaría dentro de los límites. Corrija la unidad.} other {¿Eran newton metro? Con ellos la misma cifra estaría dentro de los límites. Corrija la unidad.}}',
  'remark.wrench and pull differ':
    'Por la llave y por el tirón el par difiere en más de un cuarto de lo que dejan los límites: mire el radio y lea los dos otra vez. Se juzga la llave.',
  'remark.no pitch':
    'Hay vueltas leídas y el archivo no dice el paso: anote en bands cuánto mueve el tornillo una vuelta.',
  'remark.no slack':
    'No hay juego alguno: busque una lectura en la fila equivocada, suciedad o una pieza que agarra, y mida otra vez.',
  'remark.turns and travel differ':
    'Por vueltas y por recorrido difiere más de un cuarto de lo que admiten los límites: averigüe por qué. Se juzga el recorrido.',
  'pack.title':
    '{train}: {packs, plural, one {la holgura de un paquete} other {la holgura de {packs} paquetes}}',
  'pack.device':
    '{device}: {frictions, plural, =0 {sin discos de fricción} one {un disco de fricción} other {{frictions} discos de fricción}}',
  'pack.clearance':
    'Holgura {clearance}: {verdict}.{has, select, yes { Por disco de fricción {each}.} other {}}',
  'pack.before': 'Antes, con la pieza que estaba montada: {clearance}.',
  'pack.gauge':
    'Galga escalonada: {does, select, yes {{fits} entra} other {no se anotó lo que entra}}, {stops, select, yes {{not} no entra} other {no se anotó lo que no entra}}: {verdict}.',
  'pack.limits':
    '{each, select, yes {Límites, según los de cada disco de fricción: {limits}.} other {Límites: {limits}.}}',
  'pack.thicker':
    '{which, select, thinner {Para quedar dentro, el paquete ha de ser más delgado: de {from} a {to}.} other {Para quedar dentro, el paquete ha de ser más grueso: de {from} a {to}.}}',
  'pack.drawn':
    'Las medidas del archivo dejarían {clearance}, ± {worst} en el peor caso, ± {likely} como es probable.',
  'trials.made':
    '{trials} ensayos al azar, cada medida igual de probable entre sus extremos (serie {series}):',
  'trials.outside':
    '{none, select, yes {Ninguno está fuera de límites: lo está menos del {to} % de todos, hasta donde tantos lo dicen.} other {Fuera de límites: {all} % (de {from} a {to} %, hasta donde tantos lo dicen): {below} % bajo el mínimo, {above} % sobre el máximo.}}',
  'pack.first': 'Mire esto primero',
  'pack.measured': 'Medido',
  'pack.way':
    '{way}{has, select, squash {, {air}, {squash} de aplastamiento descontado} air {, {air}} other {}}',
  'pack.place': '{place}: {reading}',
  'shelf part':
    '{part, select, backing_plate {disco de apoyo} steel {disco de acero} snap_ring {anillo elástico} piston {pistón} washer {arandela} race {pista} shim {calce} spacer {separador} servo_rod {vástago del servo} apply_rod {vástago de aplicación} other {pasador de aplicación}}',
  'pack.shelf':
    '{part, select, backing_plate {Disco de apoyo del surtido} steel {Disco de acero del surtido} snap_ring {Anillo elástico del surtido} washer {Arandela del surtido} race {Pista del surtido} shim {Calce del surtido} spacer {Separador del surtido} servo_rod {Vástago del servo del surtido} apply_rod {Vástago de aplicación del surtido} apply_pin {Pasador de aplicación del surtido} other {Pistón del surtido}}',
  'pack.rank': '{rank, select, best {mejor} other {segunda}}',
  'pack.prediction':
    '{verdict, select, inside {{safe, select, yes {dentro, aun en el peor caso} other {dentro, pero no en el peor caso}}} too_small {bajo el mínimo} other {sobre el máximo}}',
  'pack.again':
    '{part, select, backing_plate {Monte el disco de apoyo de {size}} steel {Monte el disco de acero de {size}} snap_ring {Monte el anillo elástico de {size}} washer {Monte la arandela de {size}} race {Monte la pista de {size}} shim {Monte el calce de {size}} servo_rod {Monte el vástago del servo de {size}} apply_rod {Monte el vástago de aplicación de {size}} apply_pin {Monte el pasador de aplicación de {size}} other {Monte el pistón de {size}}} y mida otra vez del mismo modo: espere {clearance}, ± {worst}.{safe, select, yes {} other { En el peor caso eso queda fuera de los límites.}} Anote las dos; solo la segunda cierra el trabajo.',
  'pack.stays':
    'Lo mejor del surtido es {part, select, backing_plate {el disco de apoyo montado} steel {el disco de acero montado} snap_ring {el anillo elástico montado} washer {la arandela montada} race {la pista montada} shim {el calce montado} servo_rod {el vástago del servo montado} apply_rod {el vástago de aplicación montado} apply_pin {el pasador de aplicación montado} other {el pistón montado}}, de {size}: no se cambia.',
  'pack.closed':
    'Medido otra vez con la pieza de {size}: {clearance}: {verdict}{agrees, select, yes {, como se preveía ({predicted}, ± {worst})} no {, y no como se preveía ({predicted}, ± {worst})} other {}}.{closes, select, yes { Con eso se cierra.} other { No queda cerrado.}}',
  'pack.wear': 'Discos',
  'pack.wear of':
    '{what, select, friction {disco de fricción más delgado} steel {disco de acero más delgado} other {mayor hueco bajo uno de acero}}',
  'pack.legend':
    'Mandan los datos de su unidad. Los límites son los del archivo; uno sin fuente es solo palabra de quien lo escribió. Peor caso: todas las tolerancias en su extremo a la vez. Probable: la raíz de la suma de sus cuadrados. Los tres puntos, el cuarto de los límites entre dos modos y el cuarto de disco para contar son práctica común, sin fuente.',

  // Márgenes: qué aguanta, qué patina.
  'margin.title':
    '{train}: qué aguanta a {pressure}, con {engine} N·m del motor y una relación de calado de {ratio}',
  'margin.pressure': '{value} {unit}',
  'margin.least': 'aguanta desde, {unit}',
  'margin.caution':
    'No pruebe un margen calando: un elemento que patina a todo gas se quema en segundos. Antes, la prueba de presión; nunca una prueba de calado con presión baja.',
  'margin.own data':
    'Mandan los datos de su unidad: estas son cuentas con las cifras del archivo, sin desgaste, calor, ranuras, arrastre del aceite ni el par propio de un cambio.',
  'margin.drive': 'En tracción, {torque} N·m en la entrada (en calado)',
  'margin.reverse': '{gear}, marcha atrás',
  'margin.coast': 'En retención, {torque} N·m en la entrada (un motor frena con menos)',
  'margin.first':
    'Lo primero en patinar de todo, si la carga creciera por igual: {devices}, en {gear} {load, select, drive {en tracción} coast {en retención} other {en retención marcha atrás}}, a {spare} veces lo pedido{holds, select, yes {} other { (menos de lo pedido: patina)}}.',
  'margin.devices': '{gear}. {side}',
  'margin.no limit': 'sin límite conocido',
  'margin.never': 'a ninguna',
  'margin.unknown': 'nadie lo ha dicho',
  'margin.shared': '{from} a {to}, compartido',
  'margin.engine': 'motor',
  'margin.sources': 'De dónde salen las cifras',
  'margin.source': '{place}: {names}',
  'margin.place':
    '{has, select, yes {{source}{signed, select, yes { ({by})} other {, sin iniciales}}} other {SIN FUENTE{signed, select, yes { ({by})} other {}}}}',
  'margin.legend':
    'Pasa: el mayor par en la entrada antes de que algo patine, a esta presión. Margen: ese par entre el que se pide; por debajo de 1 no aguanta. Aguanta desde: la presión mínima con la que aguanta lo que se pide. Todas las marchas se cuentan en calado. Los elementos que comparten una reacción se cuentan con el mejor reparto; el margen de cada uno, como si llevara su mayor parte. La presión es la misma en todos los pistones, y no se cuenta la del propio aceite en un tambor que gira. Un elemento de fricción patina; una rueda libre a la que se pide demasiado vuelca y se rompe.',
  'margin.more':
    'Lo que lleva cada elemento: --range RANGE --gear GEAR. Fracciones exactas: --json.',
  'endplay.title':
    '{kind, select, along {{train}: el juego axial de {shafts, plural, one {un eje} other {{shafts} ejes}}} teeth {{train}: {shafts, plural, one {un juego entre dientes} other {{shafts} juegos entre dientes}}} other {{train}: {shafts} juegos, axiales y entre dientes}}',
  'endplay.how':
    'Reloj comparador sobre el eje: empujar, cero, tirar, y antes quitar el juego del otro eje. Lo anotado antes de desmontar vale más que cualquier suma.',
  'endplay.backlash':
    'Entre dientes: retenga un engranaje, ponga el comparador a escuadra de un diente del otro en su círculo primitivo, y muévalo. Lea en cuatro sitios alrededor.',
  'endplay.measured':
    'Medido {clearance}: {verdict}.{places, plural, one {} other { Media de {places}, dispersión {spread}, peor {worst}.}}',
  'endplay.stack':
    'Las medidas del archivo dejan {clearance}, ± {worst} en el peor caso, ± {likely} como es probable.',
  'endplay.add':
    '{which, select, thinner {Para quedar dentro, la pieza ha de ser más delgada: de {from} a {to}; no se puede añadir nada.} other {Para quedar dentro, añada de {from} a {to}.}}',
  'endplay.legend':
    'Mandan los datos de su unidad. Los límites son los del archivo; uno sin fuente es solo palabra de quien lo escribió. Mida la pieza que sale del surtido: las manchas tapan los colores. Peor caso: todas las tolerancias en su extremo a la vez. Probable: la raíz de la suma de sus cuadrados.',

  // Hojas de papel: lo que está en cada página, y las palabras de cada clase.

  // Las bandas en su tambor: vueltas, recorrido del vástago y lo que las ajusta.
  'preload.title': '{train}: {count, plural, one {una precarga} other {{count} precargas}}',
  'preload.how':
    'Limpie y aceite los rodamientos, gírelos unas veces en los dos sentidos para que asienten los rodillos, y deje fuera los retenes y cuanto más se arrastraría. Lea mientras sigue girando, nunca lo que lo arranca. Con un dinamómetro: enrolle un cordón en el cubo y tire por igual; la fuerza por el radio es el par.',
  'preload.turning':
    '{by, select, pull {Fuerza por radio: sigue girando con {torque}} other {Sigue girando con {torque}}}: {verdict, select, inside {dentro} too_small {demasiado flojo} too_big {demasiado apretado} other {sin juzgar}}.',
  'preload.limits':
    '{state, select, used {Límites de rodamientos que se usan otra vez: {limits}.} other {Límites de rodamientos nuevos: {limits}.}}',
  'preload.do':
    '{verdict, select, inside {Eso lo prueba: anótelo.} too_small {Apriételos más: un calce más grueso, o un separador más fino; luego pruébelo otra vez.} other {Apriételos menos: un calce más fino, o un separador más grueso; luego pruébelo otra vez. Nunca lo deje así: los rodamientos apretados se queman.}}',
  'preload.squeeze': 'Apriete que se quiere: {limits}.',
  'preload.gap':
    '{has, select, yes {Con {fitted} montado, el juego es {gap}.} other {El juego es {gap}.}}',
  'preload.tighter':
    '{part, select, spacer {{which, select, thinner {Para el apriete que se quiere, el separador debe ser más grueso en {from} a {to}.} other {Para el apriete que se quiere, el separador debe ser más fino en {from} a {to}.}}} other {{which, select, thinner {Para el apriete que se quiere, el calce debe ser más fino en {from} a {to}.} other {Para el apriete que se quiere, el calce debe ser más grueso en {from} a {to}.}}}}',
  'preload.choice':
    '{part, select, spacer {Monte el separador de {size}} washer {Monte la arandela de {size}} other {Monte el calce de {size}}}: aprieta los rodamientos {squeeze}, ± {worst}.{safe, select, yes {} other { En el peor caso el apriete queda fuera de sus límites.}} Luego pruébelo por el par que lo mantiene girando; solo eso cierra el trabajo.',
  'preload.legend':
    'Mandan los datos de su unidad. La pieza que la ajusta es la montada más el juego leído más el apriete que se quiere; su prueba es el par. Los rodamientos que se usan otra vez quieren menos que los nuevos. Cómo se lee es práctica común, sin fuente.',

  'band.title':
    '{train}: la holgura de {bands, plural, one {una banda} other {{bands} bandas}} en el tambor',
  'band.how':
    'Con tornillo: apriételo al par del fabricante, que asienta la banda; cuente las vueltas al aflojarlo; sujételo mientras bloquea la tuerca. Sin él: un reloj comparador sobre el vástago del servo, desde el reposo hasta que el tambor queda retenido.',
  'band.measured':
    '{by, select, turns {{many, select, no {Aflojado {turns} vuelta de {pitch}} other {Aflojado {turns} vueltas de {pitch}}}, el tornillo se ha movido {travel}} other {{places, plural, one {Recorrido {travel}} other {Recorrido {travel} (media de {places}, dispersión {spread}, peor {worst})}}}}. Por la relación de palanca de {lever}, el extremo de la banda queda libre del tambor {clearance}: {verdict}.',
  'band.all round': 'Repartida por igual en torno al tambor es {clearance}.',
  'band.clearance': 'Holgura en el tambor: {limits}.',
  'band.limits':
    '{from, select, clearance {Límites del recorrido, por los de la holgura y la palanca: {limits}.} other {Límites del recorrido: {limits}.}}',
  'band.back off':
    '{many, select, no {Afloje {turns} vuelta} other {Afloje {turns} vueltas}}, para el medio de los límites; de {from} a {to} está dentro. Cuéntelas otra vez y anote las dos.',
  'band.legend':
    'Mandan los datos de su unidad. Los límites son los del archivo; uno sin fuente es solo palabra de quien lo escribió. La mano distingue un octavo de vuelta, y ninguna longitud se da aquí más fina: práctica común, sin fuente.',

  // Desgaste: casquillos, satélites, bombas y muelles frente a sus límites.
  'wear.title':
    '{train}: {parts, plural, one {una pieza} other {{parts} piezas}} frente al desgaste',
  'wear.do': 'Qué hacer',
  'wear.how': 'Cómo se mide',
  'wear.kind':
    '{kind, select, bushing {holgura de casquillo} planet_side {holgura lateral de satélite} gear_to_case {piñón a cuerpo} gear_to_crescent {piñón a media luna} gear_side {holgura lateral de piñón} ring_gap {abertura de aro de cierre} ring_side {aro de cierre en su ranura} drum_dish {cóncavo de un tambor} spline_play {juego de un estriado} thickness {grueso} other {longitud libre de muelle}}',
  'wear.how of':
    '{kind, select, bushing {Casquillo: micrómetro de interiores en dos direcciones y en ambos extremos, menos el eje donde gira. Cuenta el agujero más ancho con el eje más fino.} planet_side {Lateral de satélite: una galga junto a cada satélite, empujado al otro lado. Cuenta el más suelto.} gear_to_case {Piñón a cuerpo: una galga entre el piñón exterior y el cuerpo de la bomba, en tres puntos o más.} gear_to_crescent {Piñón a media luna: una galga entre las puntas de los dientes y la media luna, en ambos piñones.} gear_side {Lateral de piñón: una regla sobre el cuerpo y una galga hasta cada piñón, en seco y limpio.} ring_gap {Abertura de aro: el aro a escuadra en el agujero donde trabaja, y una galga entre sus puntas.} ring_side {Aro en su ranura: el aro libre en una ranura limpia, y una galga a su lado en varios puntos.} drum_dish {Tambor: una regla a lo largo de la superficie donde trabaja la banda o el forro, y una galga debajo en varios puntos.} spline_play {Estriado: retenga una pieza, ponga el reloj a escuadra sobre la otra en el radio del estriado y muévala; en los dos extremos del recorrido y en varios puntos.} thickness {Grueso: un micrómetro en tres puntos o más, fuera de las ranuras de aceite. Cuenta el más fino.} other {Longitud libre: varios muelles del juego, uno junto a otro y a escuadra sobre una placa. Cuenta el más corto.}}',
  'wear.do of':
    '{verdict, select, inside {Se queda puesta; anote la lectura.} too_big {{kind, select, bushing {Monte un casquillo nuevo, a la misma profundidad y con su orificio alineado; mire el eje antes de culpar al casquillo.} planet_side {Cambie el portasatélites con sus satélites; mire el remachado de los pasadores, el azulado y las arandelas.} gear_to_case {Cambie juntos el cuerpo y los piñones de la bomba: van apareados.} gear_to_crescent {Cambie juntos el cuerpo y los piñones de la bomba: van apareados.} gear_side {Cambie los piñones, apareados al cuerpo, o la bomba; busque rayas en la tapa.} ring_gap {Monte un aro nuevo; si el nuevo también abre, el agujero está gastado.} ring_side {Monte un aro nuevo y mire las paredes de la ranura; una ranura gastada pide otro eje o tambor.} drum_dish {Cambie el tambor: ni una banda ni un forro asientan sobre un cóncavo.} spline_play {Cambie la más gastada de las dos y mire la otra: un estriado gastado gasta el nuevo.} thickness {Demasiado gruesa: mire si es la pieza de este sitio, o dos pegadas.} other {Más largo de lo debido: mire si es siquiera un muelle de este juego.}}} other {{kind, select, bushing {Demasiado justo: busque una rebaba, suciedad o un casquillo torcido; ajústelo solo como diga el fabricante.} planet_side {Demasiado justo: busque una arandela de más, un pasador movido o suciedad.} gear_to_case {Demasiado justo: busque suciedad, rebabas o piñones que no son de este cuerpo.} gear_to_crescent {Demasiado justo: busque suciedad, rebabas o piñones que no son de este cuerpo.} gear_side {Demasiado justo: busque suciedad, rebabas o un piñón con la cara al revés; marque las caras antes de sacarlos.} ring_gap {Demasiado justo: sus puntas se tocan en caliente; mire si es el aro de este agujero.} ring_side {Demasiado justo: busque suciedad, una rebaba o un aro de otra ranura; debe girar libre.} drum_dish {Mírelo otra vez: tan plano no es ningún tambor; la galga o la regla no asentaban.} spline_play {Demasiado justo: busque una rebaba, suciedad o una pieza de otro estriado.} thickness {Gastada: cámbiela y mire contra qué trabajaba.} other {Vencido: cambie los muelles como juego, nunca uno.}}}}',
  'wear.legend':
    'Mandan los datos de su unidad. Los límites son los del archivo; uno sin fuente es solo palabra de quien lo escribió. Qué hacer es práctica común, sin fuente.',

  'lesson.gear':
    '{gear}: {count, plural, =0 {nada está aplicado.} one {{devices} está aplicado.} other {{devices} están aplicados.}} {end, select, coast {Se hace girar la salida {way}, {seen}, como en retención.} other {Se hace girar la entrada {way}, {seen}.}}',
  'lesson.hands':
    '{count, plural, =0 {Ningún elemento está aplicado.} one {Solo {devices} está aplicado.} other {Solo {devices} están aplicados.}} Retenga {held} y gire {turned} {way}, {seen}.',
  'lesson.fault': 'Algo está mal: {fault}.',
  'lesson.question':
    '{kind, select, state {¿El tren transmite?} way {¿Hacia dónde gira la salida, {thing}?} engine_braking {¿Hay freno motor?} device {¿Qué hace {thing}?} hand {¿Gira, y hacia dónde va {thing}?} ratio {¿Cuál es la relación, velocidad de entrada entre velocidad de salida?} carriers {¿Qué elementos llevan la carga?} left_free {¿Qué miembros quedan sin velocidad determinada?} held_torque {{held, select, yes {¿Qué par pone {thing}, que no gira, en {holder}?} other {¿Qué par pone {thing}, que no gira, en la carcasa?}}} backwards {¿Qué hace ahora la salida?} comes_off {¿Cuál de estas puede salir ahora?} faces {¿Hacia qué lado mira esta cara de «{thing}»: {face}?} other {Recorra las marchas en el orden de la tabla, antes las que no transmiten, cada una en tracción y luego en retención. ¿Dónde se nota primero, y cómo?}}',
  'lesson.off':
    'Se está desarmando la unidad. {more, plural, =0 {Fuera: {parts}.} one {Fuera hay una pieza y, las últimas, {parts}.} other {Fuera hay # piezas y, las últimas, {parts}.}}',
  'lesson.facing':
    '{to, select, input {mira a la entrada} output {mira a la salida} other {da igual: sirve de los dos modos}}',
  'lesson.turning':
    '{is, select, still {no gira} free {queda libre: nada determina hacia dónde} locked {nada gira: se bloquea} other {gira {way}}}',
  'lesson.ratio':
    '{back, select, yes {{ratio} (la salida gira al revés que la entrada)} other {{ratio}}}',
  'lesson.device':
    '{does, select, carries {lleva carga} idle {no lleva carga ni gira libre} other {gira libre}}',
  'lesson.members': '{count, plural, =0 {ninguno} other {{members}}}',
  'lesson.yes or no': '{is, select, yes {sí} other {no}}',
  'lesson.torque': '{torque}, {way}',
  'lesson.no torque': 'ningún par',
  'lesson.state':
    '{state, select, driving {{at, select, yes {transmite con una relación de {ratio}} other {transmite}}} tied_up {está bloqueado} other {no transmite nada}}',
  'lesson.sign':
    '{end, select, coast {{state, select, driving {{gear}: en retención el motor es arrastrado con una relación de {ratio}} tied_up {{gear}: bloqueado en retención} other {{gear}: sin freno motor}}} other {{state, select, driving {{gear}: transmite con una relación de {ratio}} tied_up {{gear}: bloqueado} other {{gear}: no transmite}}}}',
  'lesson.no sign': 'no se nota en ninguna marcha',
  'misconception.upside down':
    'Eso es la velocidad de salida entre la de entrada. La relación es entrada entre salida: si su tamaño pasa de 1 la salida gira más lenta, si no llega, más rápida.',
  'misconception.sign dropped':
    'El tamaño puede ser correcto, pero gira al revés. Siga el movimiento de engrane en engrane: dos ruedas que engranan por fuera giran al revés una de otra; una corona, como el satélite que lleva dentro.',
  'misconception.mesh reverses':
    'No todo engrane invierte el giro: una corona gira igual que el satélite que lleva dentro, y el portasatélites es arrastrado.',
  'misconception.other member held':
    'El planetario y la corona han cambiado de sitio en la cuenta: esa es la relación de un juego cuyo planetario tiene los dientes de la corona. Mire cuál mueve, cuál se retiene y cuál es movido, y ponga ahí sus propios dientes.',
  'misconception.carrier turns':
    'El 1 está solo donde gira el portasatélites. Con él retenido cuentan solo los dientes del planetario y de la corona.',
  'misconception.one forgotten':
    'Falta el 1. También gira el portasatélites, y lleva los satélites una vuelta consigo.',
  'misconception.one formula for all':
    'La fórmula 1 + R/S es la de un juego simple en que mueve el planetario, se retiene la corona y es movido el portasatélites. Mire qué mueve, qué se retiene y qué es movido aquí.',
  'misconception.pairs taken for plain':
    'Los satélites de este juego son pares engranados: el segundo invierte el giro una vez más. Vistos desde el portasatélites, el planetario y la corona giran en el mismo sentido, no al revés uno de otro.',
  'misconception.planets counted in':
    'Los dientes de los satélites simples no cuentan: pasan tantos como reciben. Cuentan en los juegos escalonados.',
  'misconception.ratios multiplied':
    'Eso es 1 + R/S de cada juego, multiplicado. Los juegos no están uno tras otro: comparten miembros, y sus velocidades se calculan juntas.',
  'misconception.direct':
    'Un embrague aplicado no hace la directa. La directa pide dos miembros de un juego unidos entre sí; el tercero los sigue.',
  'misconception.gears always change':
    'Un juego no cambia nada si dos de sus miembros giran como uno: el tercero va con ellos, y ningún satélite gira sobre su eje.',
  'misconception.one-way turned round':
    'La rueda libre se ha leído al revés. Diga qué pista se retiene, cuál gira y desde qué lado se mira.',
  'misconception.turning means holding':
    'Siga el empuje: necesita una salida. Si lo retenido no le deja ninguna en ese sentido, lo que se empuja no gira.',
  'misconception.path unseen':
    'Siga la carga de miembro en miembro: hay un camino de la entrada a la salida.',
  'misconception.holding stops all':
    'Un miembro retenido no para los demás: da al juego planetario en qué apoyarse.',
  'misconception.nothing settles it':
    'Hay más determinado que eso: lo que se retiene y lo que se gira no deja elección a algunos miembros, pues los dientes y los elementos determinan su velocidad.',
  'misconception.always settled':
    'Hay menos determinado que eso: un miembro que nadie retiene y que no mueve nada queda libre, y nadie puede decir su velocidad.',
  'misconception.one-way never holds':
    'Nadie aplica una rueda libre, pero la carga sí: empujada contra su sentido libre, retiene.',
  'misconception.one-way always holds':
    'Una rueda libre retiene solo lo que empuja contra su sentido libre. La que gira libre no lleva carga, ni tampoco la que nada empuja.',
  'misconception.over-running unseen':
    'No lleva carga, pero mire sus dos pistas: giran a velocidades distintas, y por eso gira libre.',
  'misconception.applied means carrying':
    'Estar aplicado no es llevar carga. Mire si aquí algo lo empuja.',
  'misconception.released by sharing':
    'Se toma por ocioso algo que lleva carga. Sin él la carga no tiene adónde ir: es un eslabón del camino de la entrada a la salida y a la carcasa.',
  'misconception.friction slips one way':
    'Un embrague, un freno o una banda aplicados retienen en ambos sentidos. Solo una rueda libre gira libre.',
  'misconception.applied means driving':
    'Para transmitir, la carga necesita un camino a la salida y algo contra lo que empujar. Cuente qué se une a la entrada y qué se retiene: si falta, punto muerto; si sobra, bloqueo.',
  'misconception.more devices tie up':
    'Varios elementos pueden estar aplicados a la vez, mientras no pidan velocidades distintas a un mismo miembro.',
  'misconception.neutral means still':
    'Punto muerto no significa que nada gire, y bloqueado no es punto muerto. En punto muerto hay miembros que giran, algunos sin velocidad fija; bloqueado, la entrada no puede girar.',
  'misconception.braking always':
    'No toda marcha da freno motor. Lo que retiene en tracción debe retener también en el otro sentido, y una rueda libre gira libre.',
  'misconception.one-way ends braking':
    'Lo que lleva la retención retiene aquí en ambos sentidos, y el motor es arrastrado. Una rueda libre lo impide solo donde retiene ella sola.',
  'misconception.still means no torque':
    'Velocidad cero es potencia cero, pero no par cero. Lo que no gira recibe la reacción, a menudo el mayor par de todos.',
  'misconception.reaction is the input':
    'La reacción no es el par que entra. Todos los pares sobre el tren suman cero: calcule lo que queda.',
  'misconception.reaction is the output':
    'La reacción no es el par que sale. Todos los pares sobre el tren suman cero: calcule lo que queda.',
  'misconception.reaction added up':
    'Cuidado con los signos. Todos los pares sobre el tren suman cero: si la salida gira como la entrada, la carcasa recibe salida menos entrada; si gira al revés, salida más entrada.',
  'misconception.reaction turned round':
    'Ese es el sentido en que el elemento devuelve el empuje. El miembro es empujado en el otro.',
  'misconception.fits either way':
    'Una rueda libre entra de ambas maneras, pero no trabaja igual: del revés gira libre donde debería retener, y retiene donde debería girar libre.',
  'misconception.fault means no drive':
    'Una avería no siempre quita la transmisión. Pregunte qué hace el tren en su lugar: otro camino puede llevar la carga.',
  'misconception.fault ties up':
    'Se bloquea solo donde dos elementos piden velocidades distintas. Pregunte qué hace el tren en su lugar.',
  'misconception.fault shows wherever fitted':
    'La marcha que lo usa no lo muestra así. Allí otra cosa hace su trabajo, o lo muestra antes otra marcha.',
  'misconception.cover unseen':
    'Aún tiene algo encima. Lo que cubre una pieza sale primero, por muy a mano que parezca estar.',
  'misconception.far end first':
    'Una unidad se desarma desde el lado que está arriba; lo más hondo sale al final.',
  'misconception.wrong way round':
    'Es al revés. Busque la marca de la cara, y anote cómo iba al salir.',
  'misconception.any way round':
    'Que entre de los dos modos no hace buenos los dos: un rodamiento, una arandela o una pista del revés trabaja con la cara que no es.',
  'misconception.fault hides':
    'Algo sí lo muestra. Recorra las marchas, en tracción y en retención.',

  'sheet.title':
    '{sheet, select, chart {Tabla de aplicación} drawing {Esquema cinemático} set {Juego de hojas} job {Ficha de trabajo} strip {Hoja de desmontaje} build {Hoja de montaje} measure {Medir y elegir} capacity {Capacidad de par} diagnosis {Hoja de diagnóstico} one_way {Ficha de ruedas libres} other {Hojas}}',
  'sheet.stamp': 'Archivo {hash} · {date} · Holdturn',
  'sheet.page': 'página {page} de {pages}',
  'sheet.printed': '{file}: {pages, plural, one {una página} other {{pages} páginas}}',
  'sheet.written': '{file}: texto fuente, para Typst 0.14',
  'sheet.left out': 'Queda fuera, porque el archivo no da nada de ello: {sheets}.',
  'sheet.letters missing':
    'Ninguna fuente instalada tiene algunos de sus caracteres: salen como cuadros. Instale una que los tenga e imprima otra vez.',
  'sheet.with': '{train} con {faults}',
  'sheet.own data': 'Mandan los datos propios de su unidad.',
  'sheet.caution.sharp':
    'Los discos de acero y los anillos elásticos cortan: use guantes anticorte y gafas.',
  'sheet.caution.maker':
    'El fabricante de la unidad, las normas locales y la práctica autorizada mandan sobre todo lo que aquí se imprime.',
  drawn: '{file}: esquema cinemático de {train}',
  'drawn.end': '{set}, {seen}',
  'drawn.circles':
    'Un círculo fuerte lleva carga. A trazos: quieto; a puntos: libre. Los pares son para 100 N·m de entrada.',
  'drawn.end written': '{file}: {title}',
  'drawn.lever': 'Diagrama de palancas de {train}',
  'drawn.exploded': 'Despiece de {train}{page, plural, =1 {} other {, parte {page}}}',
  'drawn.exploded up': 'Lado de {end, select, input {entrada} other {salida}} arriba',
  'drawn.exploded key':
    'Sin escala: las ruedas según sus dientes, los discos contados, el resto como suelen ser. Una punta junto al número: el lado al que mira la cara nombrada.',
  'drawn.bevel':
    'Un esquema: el planetario más lejano se dibuja mayor, y no se ve girar ningún piñón en su eje.',
  'drawn.teeth not counted':
    'El archivo no cuenta los dientes de {planets}: se dibujan los que caben.',
  'drawn.planets not counted':
    'El archivo no cuenta sus satélites: {drawn, plural, one {se dibuja uno} other {se dibujan {drawn}}}.',
  'drawn.planets left out':
    'De {counted} satélites solo {drawn} pueden ponerse donde engranan sus dientes.',
  'drawn.not evenly spaced':
    'Los satélites están donde engranan sus dientes, a {degrees}° o menos del reparto igual.',
  'drawn.teeth do not fit':
    'Estos números de dientes no van juntos: un satélite se dibuja dos veces, una para cada rueda que lo engrana.',
  'drawn.teeth too fine': 'Demasiados dientes para dibujarlos: las ruedas son discos.',
  'drawn.gear':
    '{gear}, {side, select, coast {en retención} other {en tracción}}{state, select, neutral {: punto muerto} tied_up {: bloqueado} other {}}',
  'drawn.nothing on': 'Nada aplicado',
  'marks.picture':
    '● está aplicado y lleva carga. ○ está aplicado y no lleva nada. ■ retiene, o está retenido. » gira libre. ~ queda libre. Una línea gruesa lleva carga, tanto más gruesa cuanta más potencia. A trazos: quieto; a puntos: libre. Los pares son para 100 N·m de entrada: en la entrada y la salida, lo que entra o sale; en lo demás, lo que pasa.',
  'sheet.drawing': 'La mitad sobre el eje; juegos y elementos son símbolos, sin escala.',
  'sheet.field':
    '{field, select, job {Trabajo} complaint {Queja} by {Por} day {Fecha} initials {Iniciales} limit {Límite} source {Fuente} driver {Lo que dice el conductor} other {Unidad}}',
  'sheet.head':
    '{head, select, off {sale} look {mirar} found {hallado} check {comprobación a mano} felt {notado} before {antes} fitted {montado} best {mejor} time {hora} who {quién} what {qué} chosen {elegido} after {después} initials {iniciales} predicted {previsto} held {se retiene} turned {se gira} end {visto desde} face {cara arriba} chance {probab.} suspect {sospechoso} reason {porque} reading {lectura} mean {media} other {n.º}}',
  'sheet.strip.first':
    '{what, select, wash {Lavada por fuera y fotografiada.} fixture {En su soporte, con el seguro puesto.} feel {Entrada y salida giradas a mano; lo notado queda escrito abajo.} plates {Hay una bandeja o un tablero de clavijas para el orden y las caras.} other {Juego axial de cada eje medido antes de quitar nada que lo cierre.}}',
  'sheet.strip.before': 'Antes de desarmar',
  'sheet.strip.felt': 'Lo que se notó',
  'sheet.strip.play': 'Juego axial antes, {shaft}',
  'sheet.strip.preload': 'Par que mantiene el giro, antes, {bearings}',
  'sheet.strip.row': 'Las piezas en fila',
  'sheet.strip.order': 'En el orden en que sale',
  'sheet.strip.how':
    'Marque lo que ha mirado. Hallado: qué cara mira a la entrada, marcas, discos contados, espesor de una pieza selectiva, desgaste.',
  'sheet.strip.blank': 'El archivo no da las piezas: escríbalas en el orden en que salen.',
  'sheet.measure.how':
    'Galgas: entre el anillo elástico y el disco de apoyo, levantado contra el anillo, repartidas en toda la vuelta. Con aire: anote la presión. Sonda de profundidad: la profundidad menos el paquete. Los discos se cambian todos a la vez.',
  'sheet.measure.shelf':
    '{part, select, backing_plate {Discos de apoyo} steel {Discos de acero} snap_ring {Anillos elásticos} washer {Arandelas} race {Pistas} shim {Calces} spacer {Separadores} servo_rod {Vástagos del servo} apply_rod {Vástagos de aplicación} apply_pin {Pasadores de aplicación} other {Pistones}} del surtido: {sizes}. Montado: {fitted}.',
  'sheet.measure.no limit': 'Sin límite en el archivo: escríbalo con su fuente y sus iniciales.',
  'sheet.measure.band': 'Banda, {band}',
  'sheet.measure.wear': 'Lo que se desgasta',
  'sheet.measure.dial':
    '{kind, select, backlash {comparador, a un lado y a otro} other {comparador, empujar y tirar}}',
  'sheet.measure.turns': 'vueltas aflojadas',
  'sheet.measure.travel': 'recorrido',
  'sheet.measure.play':
    '{kind, select, backlash {Juego entre dientes, {shaft}} other {Juego axial, {shaft}}}',
  'sheet.measure.preload': 'Precarga, {bearings}',
  'sheet.measure.preload by':
    '{by, select, turning {par, girando} pull {fuerza × radio} other {juego}}',
  'sheet.test':
    '{test, select, engine {Motor} stray_pressure {Presión donde no debe haberla} under_power {Prueba en carretera} coast {Retención} noise {Ruido} shift {Cambios} engagement {Engrane de gama} stall {Prueba de calado} fluid {Aceite} slip_log {Patinaje, con registrador} manual_shift {Solo la palanca} pan {Cárter e imán} valve_body {Cuerpo de válvulas} build_record {Registro del montaje} seal_rings {Anillos} seals {Retenes de pistones} one_way_check {Ruedas libres} pump {Bomba} inspection {Desarmado} codes {Códigos} selector {Selector} filter {Filtro} end_play {Juego axial} pressure {Presión de línea} device_pressure {Presión en un elemento} air_check {Pruebas de aire} band_check {Bandas} other {Comprobaciones a mano}}: {caution}',
  'sheet.diagnosis.tests': 'Pruebas, en el orden del oficio',
  'sheet.diagnosis.notes': 'Razones: qué filas lo señalan y qué hablaría en contra',
  'sheet.diagnosis.others':
    '{count, plural, one {Otro sospechoso: {chance} %.} other {Otros {count} sospechosos, juntos {chance} %.}}',
  'sheet.race': 'pista {race, select, inner {interior} other {exterior}}: {member}',
  'sheet.end': '{end, select, named {{name}} output {lado de salida} other {lado de entrada}}',
  'sheet.one-way face': 'La cara que se mira, de {part}: {face}',
  'sheet.fitted': '{fitted, select, other_way_up {mal: al revés} other {como se describe}}',
  'sheet.one-way':
    '{state, select, open {gira en ambos sentidos} locked {bloquea en ambos sentidos} other {{free, select, clockwise {gira: horario; bloquea: antihorario} other {gira: antihorario; bloquea: horario}}}}',
  'sheet.job.checks': 'Comprobaciones del trabajo',
  'sheet.job.entries': 'Lo anotado, por orden de tiempo',
  'job.title': 'Trabajo: {unit}',
  'job.train': 'Tren: {file}',
  'job.complaint': 'Queja: {complaint}',
  'job.opened': 'Abierto por {by}, {at}',
  'job.damaged': 'Lo que no se puede leer del archivo (sigue en él)',
  'job.problem': 'línea {line}: {problem}',
  'job.strikes': 'tacha {id}: {because}',
  'job.struck': 'tachado por {who} en {id}',
  'job.new': '{file} queda abierto.',
  'sign.open':
    '{signed, select, yes {Firmado con esto aún abierto} other {Queda esto abierto}}, fuera de límites, en duda o sin probar: {open}.',
  'sign.faulty': 'Se encontraron mal y no se cambiaron: {parts}.',
  'sign.part': '{part} ({what})',
  'sign.off': 'Aún fuera de la unidad: {names}.',
  'sign.unread': 'Nunca medido en este trabajo: {names}.',
  'sign.wrong': 'Mal en el armado, y sin corregir desde entonces: {steps}.',
  'sign.unseen': 'Tapado sin que nadie de este trabajo mirara antes: la última mirada de {steps}.',
  'sign.build':
    '{done, plural, =0 {Del armado no hay nada anotado: {all} pasos, comprobaciones y altos.} other {Del armado faltan {undone} de {all} pasos, comprobaciones y altos, el primero en el paso {from}.}}',
  'sign.start': 'Del primer arranque faltan {undone} de {all} pasos.',
  'sign.after': 'anotado después de que firmara {who}',
  'job.added': '{id} queda anotado.{strikes, select, yes { Tacha {struck}.} other {}}',
  'sheet.job.none': 'Aún no hay nada anotado.',
  'sheet.job.struck': 'Tachado por {who}, {at}: {because}',
  'sheet.job.limit':
    'El límite de {of} es el del trabajo: {job}. El archivo del tren tiene {file}.',
  'sheet.job.unused':
    '{count, plural, one {Una línea del trabajo se deja fuera: {place}: {problem}} other {{count} líneas del trabajo se dejan fuera: {place}: {problem}, y otras}}',
  'sheet.job.rebuilt':
    'La unidad se armó de nuevo y se firmó: lo que se vio y se dijo antes ya no cuenta. Diga qué hace ahora.',
  'sheet.job.other train':
    '{file} se abrió con otra versión del archivo de tren: mire si aún le corresponde.',
  'sheet.job.time': '{day} {time} UTC{zone}',
  'job.off': '{count, plural, one {Una pieza está fuera} other {# piezas están fuera}}: {names}.',
  'sheet.told':
    '{kind, select, seen {Visto, {of}: {what}} reading {Leído, {of}: {what}} chosen {Elegido, {of}: {what}} check {Comprobado, {of}: {what}} limit {Límite, {of}: {what}} shelf {Surtido, {of}: {what}} photograph {Fotografía: {what}} removed {Fuera: {what}} installed {Puesta: {what}} built {Montaje: {what}} unbuilt {Quitado otra vez: {what}} note {{what}} signed {Firmado: {what}} other {Corrección}}',
  'sheet.shelf': '{part} {sizes} (está puesta la de {fitted})',
  'sheet.job.shelf': '{of}: el surtido es de este trabajo: {row}.',
  'sheet.photograph':
    '{of, select, part {{name}, de {part}} step {{name}, en {step}} both {{name}, de {part}, en {step}} other {{name}}}',
  'sheet.installed':
    '{how, select, replaced {{part}, una nueva} why {{part}, la misma otra vez: {why}} other {{part}}}',
  'sheet.built':
    '{what, select, sound {paso {n}, lo que se oyó} check {paso {n}, comprobación a mano} stop {paso {n}, la última mirada} start {primer arranque, {n}} other {paso {n}}}{has, select, no {} other {, {of}}}{went, select, right {, bien} wrong {, mal} found {, se encontró así} other {}}{says, select, no {} other {: {said}}}',
  'sheet.unbuilt': 'desde el paso {step}: {why}',
  'sheet.felt': '{has, select, yes {previsto {predicted}; notado {felt}} other {notado {felt}}}',
  'marks.chart':
    '● está aplicado y lleva carga. ○ está aplicado y no lleva nada. ■ retiene. » gira libre. Vacío: suelto, o sin carga.',
  'sheet.chart.ratios': '{whole}\nmarcha: {own}',
  'sheet.chart.parked': 'bloqueado en estacionamiento',
  'sheet.chart.legend':
    'Nadie aplica una rueda libre: la carga la hace retener. La relación es velocidad de entrada entre velocidad de salida, negativa si la salida gira al revés que la entrada; la fracción es exacta. En retención la salida hace girar la entrada.',

  'cli.about':
    'Para trenes de juegos planetarios: describa uno según lo desmonta y sabrá, con exactitud y con prueba, cómo trabaja.',
  'cli.usage': 'Uso:',
  'cli.usage.program': 'VERBO ARCHIVO [opciones]',
  'cli.usage.verb': 'ARCHIVO [opciones]',
  'cli.usage.job': 'ACCIÓN ARCHIVO [PALABRAS] [opciones]',
  'cli.arguments': 'Argumentos:',
  'cli.options': 'Opciones:',
  'cli.commands': 'Además:',
  'cli.example': 'Ejemplo:',
  'cli.group.explain': 'Explicar un tren:',
  'cli.group.fault': 'Buscar una avería:',
  'cli.group.measure': 'Medir:',
  'cli.group.build': 'Montar:',
  'cli.group.teach': 'Enseñar:',
  'cli.group.keep': 'Guardar:',
  'cli.file': 'un archivo de tren, o - para la entrada estándar',
  'cli.seen': 'un archivo de lo visto, o - para la entrada estándar; sin él, se hacen preguntas',
  'cli.readings.pack': 'un archivo de lecturas de los paquetes, o - para la entrada estándar',
  'cli.readings.endplay': 'un archivo de lecturas de juegos axiales, o - para la entrada estándar',
  'cli.readings.preload': 'un archivo de lecturas de precargas, o - para la entrada estándar',
  'cli.readings.band': 'un archivo de lecturas de bandas, o - para la entrada estándar',
  'cli.readings.wear': 'un archivo de lecturas de piezas gastadas, o - para la entrada estándar',
  'cli.action':
    'qué hacer: new (abrir), add (añadir: un tipo y sus palabras), strike (tachar: un número, y lo que vale en su lugar) o show (mostrar)',
  'cli.job': 'un archivo de trabajo, como banco-4.job.yaml',
  'cli.words':
    'seen (visto), reading (lectura), chosen (elegido), check (comprobación), limit (límite), photograph (fotografía), note (nota) o signed (firmado), y sus palabras, como reading "low brake" "feeler: [0.42 mm]"',
  'cli.kind':
    'qué se imprime: chart (tabla), drawing (dibujo), diagnosis (diagnóstico), strip (desmontaje), measure (medir), build (montaje), one-way (ruedas libres), capacity (capacidad de par), job (trabajo) o set (todas)',
  'verb.describe': 'hace un archivo de tren con preguntas, o sigue con uno',
  'verb.check': '¿es esto un tren? cada error y aviso con su lugar',
  'verb.flow': 'una marcha en tracción y en retención: velocidades, pares y por qué',
  'verb.chart': 'cada combinación de los elementos de fricción, y los relevos entre marchas',
  'verb.draw': 'el esquema cinemático como SVG: del tren solo, o como queda todo en una marcha',
  'verb.hand': 'retener unos miembros y girar otro: ¿gira?, ¿y qué hacen los demás?',
  'verb.faults': 'cada avería en cada marcha: qué hace, y qué la delata primero',
  'verb.suspects':
    '¿qué avería significa? sospechosos según lo visto y lo dicho, qué no debe probarse ahora y por qué, y la mejor prueba siguiente',
  'verb.capacity':
    'cuánto puede pasar cada marcha, qué patina primero y la presión mínima que aguanta',
  'verb.plan':
    'el montaje, paso a paso: qué mirar, y las comprobaciones a mano que descubren errores',
  'verb.pack': 'la holgura de los paquetes según sus lecturas, y la pieza del surtido que sirve',
  'verb.endplay': 'el juego axial de los ejes según sus lecturas, y la arandela o pista que sirve',
  'verb.preload': 'la precarga de rodamientos por el par que los gira, y el calce que la ajusta',
  'verb.band': 'la holgura de las bandas por vueltas o recorrido, y cómo ajustarla',
  'verb.wear': 'casquillos, satélites, bomba y muelles según sus lecturas, y qué hacer',
  'verb.job': 'anotar qué se hace y se encuentra en un trabajo, y quién; nada se borra',
  'verb.sheet': 'una hoja de papel para el banco o la clase, como PDF',
  'verb.screen': 'abre la página en un navegador; sin ningún verbo hace lo mismo',
  'verb.help': 'qué hace un verbo, y sus opciones',
  'verb.completion': 'imprime el guion de completado de un intérprete: bash, zsh o fish',
  'option.range': 'posición del selector',
  'option.gear': 'marcha de la gama',
  'option.on': 'elementos de fricción aplicados, con comas; "" para ninguno',
  'option.at': 'velocidades de dos miembros o más, como en "engine=1000,motor=0"',
  'option.hold':
    'miembros retenidos, con comas; outer (exterior) o inner (interior): esa pista de una rueda libre',
  'option.turn': 'el miembro que la mano hace girar',
  'option.way':
    'clockwise (horario) o anticlockwise (antihorario), visto desde el lado de --seen-from; ambos si falta',
  'option.load':
    'cómo está una salida, como en "left half shaft: held" (retenida; none, sin carga, como sobre hielo; o road); puede repetirse',
  'option.without': 'piezas aún sin montar, con comas',
  'option.fault': 'qué está mal, como en "low sprag: backwards"; puede repetirse',
  'option.mesh-efficiency':
    'potencia que un engrane transmite, como en "external=0.985,internal=0.99"',
  'option.one-way':
    'la comprobación a mano de cada rueda libre, o de la que se nombra; con --hold outer o inner',
  'option.side': 'drive (en tracción) o coast (en retención); drive si falta',
  'option.end': 'el juego o par de engranajes que se ve desde un extremo, con sus dientes',
  'option.lever': 'el diagrama de palancas: cada juego una palanca, las alturas son velocidades',
  'option.exploded': 'las piezas del desarme en su eje, numeradas según salen',
  'option.seen-from': 'el lado desde el que usted mira: input (entrada) u output (salida)',
  'option.pairs': 'también cada dos averías a la vez',
  'option.only': 'algunas averías, con comas, como en "low sprag: backwards"',
  'option.csv': 'imprime la respuesta como CSV, para una hoja de cálculo',
  'option.pressure': 'en todos los pistones: 900 (kPa), "9 bar" o "130 psi"; sin ella, 900 kPa',
  'option.torque': 'del motor: 220 (N·m) o "162 lbft"; sin él, el del archivo',
  'option.stall-ratio': 'cuánto multiplica el par el convertidor en calado; 1 sin convertidor',
  'option.ask': 'sigue preguntando después de lo que dice el archivo o el trabajo',
  'option.experience':
    'un archivo de la experiencia del taller: pruebas, minutos, riesgos, qué falla más',
  'option.unit': 'en qué se trabaja',
  'option.train': 'el archivo del tren: en él se buscan los nombres',
  'option.complaint': 'en palabras de quien lo trajo',
  'option.by': 'sus iniciales',
  'option.time': 'cuándo fue, como "2026-11-25 12:40"; ahora si no se da',
  'option.predicted': 'qué debía mostrar la comprobación',
  'option.because': 'por qué se tacha la anotación',
  'option.output': 'el archivo que se escribe, como chart.pdf; o .typ, para su texto fuente',
  'option.paper': 'a4 o letter; a4 si falta',
  'option.job': 'un archivo de trabajo, del que se toma lo leído y lo visto',
  'option.seen': 'un archivo de lo que se vio, para la hoja de diagnóstico',
  'option.readings': 'un archivo de lecturas de los paquetes, para la hoja de medir',
  'option.plays': 'un archivo de lecturas del juego axial, para la hoja de medir',
  'option.trials': 'tantos montajes al azar, junto al peor caso y la raíz de cuadrados: 1000000',
  'option.series': 'qué ensayos: el mismo número da los mismos otra vez; 1 si falta',
  'option.date': 'la fecha de la hoja, como 2026-11-25; hoy si falta',
  'option.all': 'no abreviar nada',
  'option.inch': 'las pulgadas primero',
  'option.json': 'imprime la respuesta como JSON',
  'option.lang': 'idioma de la respuesta: en o es',
  'option.help': 'imprime esto',
  'option.port': 'sirve la página en otro puerto de esta máquina que el 8477',
  'option.version': 'imprime la versión',
  'screen.at':
    'La página está abierta en {address} (Ctrl-C la cierra; holdturn help cuenta el resto)',
  'screen.over': 'La página está cerrada.',
  'no.screen': 'aquí no hay red con la que abrir la página',
  'bad.port': '--port toma un número entero de 0 a 65535, no {given}',

  'no.verb':
    'verbo desconocido: {given}; {has, select, yes {¿quiso decir {near}?} other {escriba holdturn help}}',
  'no.capacities':
    'sin capacidades en {file}: diga en capacities cuánto puede llevar cada elemento, por sus medidas o como torque Nm',
  'no.torque': 'sin par motor: escríbalo como en --torque 220, o póngalo en engine, en {file}',
  'bad.pressure':
    'no es una presión con que calcular: {given}; escriba cifras mayores que 0 con su unidad, hasta 100 MPa, como en --pressure 900 (kPa), --pressure "9 bar" o --pressure "130 psi"',
  'bad.torque':
    'par ilegible: {given}; escríbalo mayor que 0, como en --torque 220 o --torque "162 lbft"',
  'bad.stall ratio':
    'relación de calado ilegible: {given}; escriba 1 o más, como en --stall-ratio 2',
  'no.teardown':
    'no hay teardown en {file}: escriba sus piezas bajo teardown, en el orden en que salen',
  'no.measured pack':
    "no hay lecturas en {file}: anótelas por elemento, como low brake: '{' feeler: [0.42 mm, 0.44 mm, 0.42 mm] '}'",
  'no.measured endplay':
    'no hay lecturas en {file}: anótelas por eje, como input shaft: [0.42 mm, 0.44 mm]',
  'no.measured preload':
    "no hay lecturas en {file}: anótelas por rodamientos, como differential bearings: '{' turning: [1.2 Nm] '}' o '{' gap: [0.14 mm] '}'",
  'no.measured band':
    "no hay lecturas en {file}: anótelas por banda, como low band: '{' turns: 2.5 '}' o low band: '{' travel: [3.10 mm] '}'",
  'no.measured wear':
    "no hay lecturas en {file}: anótelas por pieza, como pump gear side: '{' read: [0.04 mm] '}'",
  'bad.trials':
    'número de ensayos ilegible: {given}; escriba un entero, como en --trials 1000000, de {least} a {most}',
  'bad.series':
    'serie ilegible: {given}; escriba un entero, como en --series 7, de {least} a {most}',
  'bad.series alone':
    '--series va con --trials: escriba las dos, como en --trials 1000000 --series 7',
  'no.kind':
    'hoja desconocida: {given}; {has, select, yes {¿quiso decir {near}?} other {las hojas son {all}}}',
  'no.job': 'falta el trabajo: nombre su archivo, como en --job unidad.job.yaml',
  'no.paper': 'papel desconocido: {given}; escriba --paper a4 o --paper letter',
  'no.press':
    'el tipógrafo no está instalado: instale el paquete @myriaddreamin/typst-ts-node-compiler junto a holdturn, o escriba el texto fuente con -o hoja.typ',
  'bad.date': 'fecha ilegible: {given}; escríbala como en --date 2026-11-25',
  'bad.missing output': 'falta el archivo que se escribe: añada -o hoja.pdf',
  'bad.unwritable':
    'no se puede escribir {file} ({reason}); dé la ruta de un archivo en el que pueda escribir',
  working:
    '{is, select, counted {{done} de {all} hechos, tras {seconds} s} other {sigue en ello, tras {seconds} s}}; Ctrl-C lo detiene',
  'bad.many faults':
    'demasiados que probar: {rows} fallos en {gears} marchas; nombre algunos con --only, o quite --pairs',
  'bad.output read':
    '{file} es de donde sale esta respuesta, y se perdería: dé otro nombre detrás de -o',
  'bad.output kind':
    '{file} ya existe y no es un archivo {kind}; quedó como estaba: dé otro nombre detrás de -o',
  'bad.full': 'el disco está lleno: {file} no se escribió entero; haga sitio y repítalo',
  'bad.stdout': 'no se puede imprimir ({reason}): lo pedido no llegó; imprímalo en otro lugar',
  'bad.too big':
    'demasiado grande: {file} tiene más de {most} MB; dé la ruta de un archivo de tren',
  'bad.nobody asked':
    'describe hace preguntas: dé la ruta de un archivo de tren, exista o no, y una terminal donde responder',
  'bad.silent': 'de {file} no llega nada, y nadie escribe en él; dé la ruta de un archivo de tren',
  'bad.link':
    'no existe el archivo: {file} es un enlace a {target}, que no está; arregle el enlace, o dé la ruta de un archivo de tren',
  'bad.ours':
    'algo falla en Holdturn mismo, no en lo que usted escribió ({reason}): avísenos, por favor, con su archivo',
  'no.action':
    'acción desconocida: {given}; {has, select, yes {¿quiso decir {near}?} other {es una de {all}}}',
  'bad.missing action':
    'falta qué hacer, o el archivo de trabajo: escriba holdturn job show ARCHIVO',
  'bad.missing id': 'falta el número de una anotación: holdturn job show ARCHIVO los dice',
  'bad.missing option': 'falta una opción: añada {option}',
  'bad.missing words':
    'faltan palabras tras {kind}: escríbalas como {kind, select, seen {seen "D 2: slips"} reading {reading "low brake" "feeler: [0.42 mm]"} chosen {chosen "low brake" "1.80 mm steel"} check {check "turn rear.carrier clockwise" locks} limit {limit "low brake" "least: 0.80 mm, most: 1.20 mm, source: manual p. 12"} photograph {photograph IMG_0012.jpg} removed {removed "sun shell"} installed {installed "sun shell" replaced} built {built "6.1" "right: no gira"} unbuilt {unbuilt 6 "corona trasera sin asentar"} note {note "el tambor está rayado"} other {signed "hoja de montaje"}}',
  'bad.words':
    'ilegible: {given}; escríbalo como {kind, select, seen {seen "D 2: slips"} reading {reading "low brake" "feeler: [0.42 mm]"} photograph {photograph IMG_0012.jpg "part: sun shell"} other {limit "low brake" "least: 0.80 mm, most: 1.20 mm, source: manual p. 12"}}',
  'bad.entry': 'no se ha anotado nada: {problem}',
  'bad.exists': '{file} ya existe: a un trabajo solo se le añade; elija otro nombre',
  'bad.time': 'hora ilegible: {given}; escríbala como --time "2026-11-25 12:40"',
  'no.entry kind':
    'tipo de anotación desconocido: {given}; {has, select, yes {¿quiso decir {near}?} other {es uno de {all}}}',
  'no.entry':
    'ninguna anotación así, o varias: {given}; {has, select, yes {¿quiso decir {near}?} other {holdturn job show ARCHIVO dice los números}}',
  'no.measured':
    'elemento o eje desconocido: {given}; {has, select, yes {¿quiso decir {near}?} other {el tren tiene {all}}}',
  'no.task':
    'no es tarea de este montaje: {given}; {has, select, yes {¿quiso decir {near}?} other {tiene {all}}}',
  'bad.task of': 'el paso {task} de este montaje es de {of}: escríbalo como en built {task} "{of}"',
  'bad.missing kind':
    'falta la hoja o el archivo de tren: escriba holdturn sheet chart ARCHIVO -o hoja.pdf',
  'no.verb.file': 'falta el verbo antes de {given}: escriba holdturn flow {given}',
  'no.option':
    'opción desconocida: {given}; {has, select, yes {¿quiso decir {near}?} other {escriba holdturn help {verb}}}',
  'no.device':
    'elemento desconocido: {given}; {has, select, yes {¿quiso decir {near}?} other {los elementos de fricción son {all}}}',
  'no.device.at all': 'elemento desconocido: {given}; este tren no tiene elementos de fricción',
  'no.friction':
    'no es un elemento de fricción: {given} es una rueda libre, que nadie aplica; quítela de --on',
  'no.part':
    'pieza desconocida: {given}; {has, select, yes {¿quiso decir {near}?} other {las que se pueden dejar sin montar son {all}}}',
  'no.fault name':
    'nombre desconocido en {option}: {given}; {has, select, yes {¿quiso decir {near}?} other {escríbalo como en "low sprag: backwards"}}',
  'no.fault':
    'avería desconocida de {name}: {given}; {has, select, yes {¿quiso decir {near}?} other {escriba una de {all}}}',
  'no.fault place':
    'lugar desconocido: {given}; {has, select, yes {¿quiso decir {near}?} other {escriba uno de {all}}}',
  'no.output':
    'salida desconocida: {given}; {has, select, yes {¿quiso decir {near}?} other {las salidas son {all}}}',
  'no.load': 'carga desconocida: {given}; escriba {name}: held, {name}: none o {name}: road',
  'bad.oil chase':
    'con esto las válvulas se persiguen en {gear}, y nada queda quieto: no se puede decir qué aplica; nombre otro fallo, o los elementos con --on y ningún fallo del aceite',
  'bad.oil on':
    'lo que falla antes de los elementos cambia lo que una marcha aplica, y --on dice lo que está aplicado: nombre la marcha con --gear, o un fallo de los propios elementos',
  'bad.fault twice':
    'dos fallos de una misma cosa: {given} y {before}; nombre un fallo de cada una',
  'bad.load twice': 'dos cargas de una misma salida: {output}; nombre una',
  'bad.loads': 'no queda ninguna salida que mueva una carga: deje una de {all} en la carretera',
  'no.member':
    'miembro desconocido: {given}; {has, select, yes {¿quiso decir {near}?} other {los miembros son {all}}}',
  'no.range':
    'gama desconocida: {given}; {has, select, yes {¿quiso decir {near}?} other {las gamas son {all}}}',
  'flow.given':
    '{state, select, driving {A estas velocidades la salida queda determinada.} neutral {A estas velocidades la salida queda libre: punto muerto.} other {Estas velocidades no pueden darse juntas: está bloqueado.}}',
  'no.ranges': 'el archivo no nombra gamas: diga qué elementos se aplican con --on',
  'no.gear':
    'marcha desconocida: {given}; {has, select, yes {¿quiso decir {near}?} other {las marchas son {all}}}',
  'no.set':
    'juego desconocido: {given}; {has, select, yes {¿quiso decir {near}?} other {hay {all}}}',
  'no.side': 'lado desconocido: {given}; escriba --side drive o --side coast',
  'bad.picture': 'demasiado: dé solo una de --end, --lever y --exploded',
  'bad.exploded in gear': 'un despiece no muestra marchas: quite --range, --gear, --on y --side',
  'bad.side alone': '¿qué marcha? añada --range y --gear, o --on',
  'no.way': 'sentido desconocido: {given}; escriba --way clockwise o --way anticlockwise',
  'no.end':
    'lado desconocido: {given}; escriba {all, select, no {--seen-from input o --seen-from output} other {--seen-from con {all}}}',
  'no.race': 'pista desconocida: {given}; escriba --hold outer o --hold inner',
  'no.one-way':
    'rueda libre desconocida: {given}; {has, select, yes {¿quiso decir {near}?} other {las ruedas libres son {all}}}',
  'no.language': 'idioma desconocido: {given}; escriba --lang {all}',
  'no.shell': 'intérprete desconocido: {given}; escriba holdturn completion bash, zsh o fish',
  'no.file':
    'no existe el archivo {file}{has, select, yes {; ¿quiso decir {near}?} other {; dé la ruta de un archivo de tren}}',
  'bad.directory': 'no es un archivo: {file} es un directorio; dé la ruta de un archivo de tren',
  'bad.unreadable':
    'no se puede leer {file} ({reason}); dé la ruta de un archivo de tren que pueda leer',
  'bad.train':
    '{place}: {problem}{more, plural, =0 {} one { (y uno más: escriba holdturn check {file})} other { (y {more} más: escriba holdturn check {file})}}',
  'bad.missing file':
    'falta el archivo de tren: escriba holdturn {verb} ARCHIVO, o - para la entrada estándar',
  'bad.missing readings': 'falta el archivo de lecturas: escriba holdturn {verb} ARCHIVO LECTURAS',
  'bad.missing value': 'falta el valor: escriba {option}',
  'bad.missing turn': 'falta el miembro que gira: escriba --turn MIEMBRO',
  'bad.missing shell': 'falta el intérprete: escriba holdturn completion bash, zsh o fish',
  'bad.excess': 'sobra {given}; ponga entre comillas los nombres que llevan espacios',
  'bad.choice': 'sobra una: dé --on, o bien --range y --gear, pero no ambas cosas',
  'bad.gear alone': 'la marcha {gear} está en varias gamas: añada --range con una de {all}',
  'bad.held turned': 'no se puede retener y girar a la vez {member}: quite ese nombre de --hold',
  'bad.case turned': 'la carcasa no se puede girar: nombre otro miembro con --turn',
  'bad.speeds': 'velocidades ilegibles: {given}; escríbalas como en --at "engine=1000,motor=0"',
  'bad.few speeds': 'una velocidad no basta: dé dos o más, como en --at "engine=1000,motor=0"',
  'bad.at losses':
    'sobra una: a velocidades dadas no se cuentan pérdidas; quite --mesh-efficiency o --at',
  'bad.efficiency':
    'rendimiento ilegible: {given}; escríbalo como en --mesh-efficiency "external=0.985,internal=0.99", mayor que 0 y como mucho 1',
  'bad.many devices':
    'demasiados elementos de fricción para una tabla: {count}, y {most} como mucho; pida una combinación con holdturn flow ARCHIVO --on ELEMENTOS',
  'bad.csv': 'sobra una: dé --json o --csv, pero no ambas',
  'bad.one-way': 'sobra una: --one-way pregunta por pistas; quite {option}',
  'bad.file': '{place}: {problem}{more, plural, =0 {} one { (y uno más)} other { (y {more} más)}}',
  'bad.stdin twice': 'la entrada estándar se lee una vez: dé uno de los dos archivos por su ruta',
  'bad.many parts':
    'demasiadas piezas para un plan: {count}, y {most} como máximo; quite de teardown las que nadie puede montar mal',
  'bad.stdin': 'no se puede leer la entrada estándar ({reason}); dé la ruta de un archivo de tren',
};
