### photo()
### English, the reference: a photo that was just taken.

keep = KEEP IT
throwAway = THROW AWAY
about = What it shows (may be empty)
reducing = The photo is made smaller…

# $width (number) the picture's width, pixels
# $height (number) the picture's height, pixels
# $kilobytes (number) the picture's size, thousands of bytes
size = { $width } × { $height }, { $kilobytes } kB, without place, hour or maker.
nobodyInIt = Nobody's face is needed.
noPicture = This phone can't read that file as a picture. Throw it away and take the photo with the camera.

# $entry (number) the entry's number in the log
withEntry = with entry { $entry }
