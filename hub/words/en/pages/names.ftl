### t().names
### English, the reference: what people read for names that the hub gives. A set-up S1 and a mark S1 on one page are two things; stored names stay.

# $number (text) the digits of the set-up's stored name
setUp = SETUP-{ $number }

# $number (text) the digits of the gravel patch's stored name
patch = PATCH-{ $number }
