### t()
### English, the reference: the settings of a screen.

screen = SCREEN
language = Language

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

units = Units

unitNames-tenths = Tenths of a foot
unitNames-feet_inches = Feet and inches
unitNames-millimetres = Millimetres

light = Light
sun = SUN
dusk = DUSK
voice = Spoken calls
on = ON
off = OFF
