### How a mark stands as it is built. Portuguese, read by no native speaker.

spot_elevation = cota avulsa
high_by_rule = ALTO POR REGRA
on = NA COTA
high = ALTO
low = FUNDO
too_close_call_high_side = no limite, lado ALTO
too_close_call_low_side = no limite, lado FUNDO
typed_in_from_paper = passada do papel
left_by_ruling = deixada, por decisão
patch_by_ruling = remendo, por decisão
trim_by_ruling = raspar, por decisão
soil_test_failed = O TESTE DE SOLO NÃO PASSOU: teste de novo
gravel = brita: { $patch }
same_if_laser_had_moved = igual se o laser tivesse se movido ({ $moved })
measured_before_its_target_changed = medida antes de seu greide mudar: leia de novo
in_doubt = EM DÚVIDA: leia de novo
settles_an_earlier_doubt = resolve uma dúvida anterior
void = NÃO VALE, { $what }: leia de novo
