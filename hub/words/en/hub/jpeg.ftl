### Why a file is not taken for a photo.

bytes_behind_end_picture = bytes behind the end of the picture
a_thumbnail = a thumbnail
exif_or_xmp_data = Exif or XMP data
a_colour_profile = a colour profile
iptc_data = IPTC data
data_of_a_program = data of a program
a_comment = a comment
# $most (text) the most that is allowed
too_large = The photo is larger than { $most } MB. Open the page again, so that it reduces photos, and take it anew.
not_jpeg = The file is no JPEG picture. Take the photo with the page's own PHOTO key.
# $why (text) the reason, as it was said or found
broken = The picture is not whole ({ $why }). Take it anew.
# $what (text) what is meant, in this language
tells_more = The photo carries { $what }, which may tell where, when or by whom it was taken. It was not kept. Take it with the page's own PHOTO key, which leaves that out.
# $width (text) how wide
# $height (text) how high
# $longest (text) the most that is allowed
too_wide = The photo is { $width } by { $height } dots; no side may be longer than { $longest }. Open the page again, so that it reduces photos, and take it anew.
