"""Make Inter's tabular figures the default ones: freeze.py IN.otf OUT.otf FAMILY.

Java 17 cannot switch an OpenType feature on, so the digits' cmap entries are pointed at the glyphs
of "tnum". Only 0-9: the whole feature would also widen hyphen and point.
"""

import sys

from fontTools.ttLib import TTFont

source, target, family = sys.argv[1:4]
font = TTFont(source)
gsub = font["GSUB"].table
tabular = {}
for record in gsub.FeatureList.FeatureRecord:
    if record.FeatureTag == "tnum":
        for index in record.Feature.LookupListIndex:
            for subtable in gsub.LookupList.Lookup[index].SubTable:
                tabular.update(getattr(getattr(subtable, "ExtSubTable", subtable), "mapping", {}))
for table in font["cmap"].tables:
    for code, name in list(table.cmap.items()):
        if 0x30 <= code <= 0x39 and name in tabular:
            table.cmap[code] = tabular[name]

joined = family.replace(" ", "")
for record in list(font["name"].names):
    if record.nameID in (1, 3, 4, 6, 16):
        new = family if record.nameID != 6 else joined
        font["name"].setName(
            record.toUnicode().replace("Inter", new),
            record.nameID,
            record.platformID,
            record.platEncID,
            record.langID,
        )
top = font["CFF "].cff
top.fontNames[0] = top.fontNames[0].replace("Inter", joined)
for key in ("FullName", "FamilyName"):
    setattr(top.topDictIndex[0], key, getattr(top.topDictIndex[0], key).replace("Inter", family))
font.save(target)
