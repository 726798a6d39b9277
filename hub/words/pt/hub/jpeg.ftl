### Why a file is not taken for a photo. Portuguese, read by no native speaker.

bytes_behind_end_picture = dados depois do fim da imagem
a_thumbnail = uma miniatura
exif_or_xmp_data = dados Exif ou XMP
a_colour_profile = um perfil de cor
iptc_data = dados IPTC
data_of_a_program = dados de um programa
a_comment = um comentário
too_large = A foto passa de { $most } MB. Abra a página de novo, para que ela reduza as fotos, e tire outra.
not_jpeg = O arquivo não é uma imagem JPEG. Tire a foto com a tecla FOTO da própria página.
broken = A imagem não está inteira ({ $why }). Tire outra.
tells_more = A foto traz { $what }, que pode dizer onde, quando ou por quem foi tirada. Não foi guardada. Tire com a tecla FOTO da própria página, que deixa isso de fora.
too_wide = A foto tem { $width } por { $height } pontos; nenhum lado pode passar de { $longest }. Abra a página de novo, para que ela reduza as fotos, e tire outra.
