### Spanish: the visitors' page. What each variable is stands in the English file.

here = Usted está EN LA OBRA desde { $since }.
notHere = Usted no ha dicho que está en la obra.
onSite = ESTOY EN LA OBRA
offSite = YA SALÍ DE LA OBRA
nothingShown = El supervisor escoge qué ve usted aquí. Dígale a qué vino.
readOnly = Desde este teléfono no se cambia nada.
allowed = Permitido: { $high } ft alto, { $low } ft hondo
station = est. { $at }
revision = Revisión { $revision }
proven = COMPROBADA
notProven = SIN COMPROBAR
unproven = Sin comprobar: { $feet } de { $of } ft ({ $gaps })
allProven = Hay una lectura comprobada al alcance de cada estación.
lasers = Prueba del láser
noReading = Aún no hay lecturas.
doubt = EN DUDA
goodAt = hallado bueno a las { $at }
neverGood = nunca hallado bueno
lastCheck = última revisión en { $benchmark }: { $off } ft a las { $at }
down = quitado
tests = Pruebas de suelo
noTests = Ninguna prueba en sus marcas.

standing-passes = PASA
standing-fails = NO PASA
standing-void = NO VALE
byTester = { $mark } por { $tester } { $at }
photos = Fotos
inspections = Sus inspecciones

results-passed = APROBADA
results-in_part = EN PARTE
results-failed = NO APROBADA
sign = FIRMAR EL RESULTADO
signed = Firmada.

signature-signer = Nombre de quien firma
signature-draw = Firme aquí con el dedo
signature-wipe = BORRAR
