"""Turn OpenType/CFF outlines into TrueType ones: to_ttf.py IN.otf OUT.ttf. PDF writers embed those."""

import sys

from fontTools.pens.cu2quPen import Cu2QuPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont, newTable

font = TTFont(sys.argv[1])
outlines = font.getGlyphSet()
order = font.getGlyphOrder()
glyphs = {}
for name in order:
    pen = TTGlyphPen(outlines)
    outlines[name].draw(Cu2QuPen(pen, 1.0, reverse_direction=True))
    glyphs[name] = pen.glyph()
font["loca"] = newTable("loca")
font["glyf"] = glyf = newTable("glyf")
glyf.glyphOrder = order
glyf.glyphs = glyphs
for name, glyph in glyphs.items():
    glyph.recalcBounds(glyf)
    font["hmtx"][name] = (font["hmtx"][name][0], getattr(glyph, "xMin", 0))

maxp = font["maxp"]
maxp.tableVersion = 0x00010000
zeros = "TwilightPoints Storage FunctionDefs InstructionDefs StackElements SizeOfInstructions"
for key in zeros.split():
    setattr(maxp, "max" + key, 0)
maxp.maxSizeOfInstructions = maxp.maxComponentElements = 0
maxp.maxZones = 1
maxp.compile(font)

post = font["post"]
post.formatType = 2.0
post.extraNames = []
post.mapping = {}
post.glyphOrder = order
del font["CFF "]
font.sfntVersion = "\x00\x01\x00\x00"
font.save(sys.argv[2])
