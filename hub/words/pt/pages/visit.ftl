### Portuguese, read by no native speaker: the visitors' page. What each variable is stands in the English file.

here = Você está NA OBRA desde { $since }.
notHere = Você não disse que está na obra.
onSite = ESTOU NA OBRA
offSite = JÁ SAÍ DA OBRA
nothingShown = O supervisor escolhe o que você vê aqui. Diga a que veio.
readOnly = Deste celular não se muda nada.
allowed = Permitido: { $high } ft alto, { $low } ft fundo
station = est. { $at }
revision = Revisão { $revision }
proven = COMPROVADO
notProven = NÃO COMPROVADO
unproven = Não comprovado: { $feet } de { $of } ft ({ $gaps })
allProven = Há uma leitura comprovada ao alcance de cada estaca.
lasers = Prova do laser
noReading = Ainda sem leituras.
doubt = EM DÚVIDA
goodAt = achado bom às { $at }
neverGood = nunca achado bom
lastCheck = última conferência em { $benchmark }: { $off } ft às { $at }
down = desmontado
tests = Testes de solo
noTests = Nenhum teste em suas marcas.

standing-passes = PASSA
standing-fails = NÃO PASSA
standing-void = NÃO VALE
byTester = { $mark } por { $tester } { $at }
photos = Fotos
inspections = Suas inspeções

results-passed = APROVADA
results-in_part = EM PARTE
results-failed = NÃO APROVADA
sign = ASSINAR O RESULTADO
signed = Assinado.

signature-signer = Nome de quem assina
signature-draw = Assine aqui com o dedo
signature-wipe = APAGAR
