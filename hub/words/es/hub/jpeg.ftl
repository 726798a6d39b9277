### Why a file is not taken for a photo.

bytes_behind_end_picture = datos detrás del final de la imagen
a_thumbnail = una miniatura
exif_or_xmp_data = datos Exif o XMP
a_colour_profile = un perfil de color
iptc_data = datos IPTC
data_of_a_program = datos de un programa
a_comment = un comentario
too_large = La foto pasa de { $most } MB. Abra la página otra vez, para que reduzca las fotos, y tómela de nuevo.
not_jpeg = El archivo no es una imagen JPEG. Tome la foto con la tecla FOTO de la página.
broken = La imagen no está completa o no se puede leer ({ $why }). Tómela de nuevo.
tells_more = La foto trae { $what }, que puede decir dónde, cuándo o quién la tomó. No se guardó. Tómela con la tecla FOTO de la página, que lo quita.
too_wide = La foto es de { $width } por { $height } puntos; ningún lado puede pasar de { $longest }. Abra la página otra vez, para que reduzca las fotos, y tómela de nuevo.
