#!/usr/bin/env python3
"""Makes the typeface that the report room carries, from the B612 fonts (Debian package fonts-b612).

Usage: make_typeface.py SOURCE_FOLDER TARGET_FOLDER
Needs fontTools, and woff2_compress on the path. The same input gives the same bytes.

Outlines become quadratic, for TrueType readers; the set of characters is cut to what Daylight
writes; the family is renamed, so that a B612 installed on a machine is never taken in its place.
"""
import subprocess
import sys
from pathlib import Path

from fontTools import subset
from fontTools.pens.cu2quPen import Cu2QuPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont, newTable

FAMILY = "Daylight Sans"
CHARACTERS = [
    (0x0020, 0x007E), (0x00A0, 0x017F),  # Basic Latin, Latin-1, Latin Extended-A
    (0x0391, 0x03C9),  # Greek letters of formulas
    (0x2010, 0x203A), (0x2044, 0x2044),  # dashes, quotes, prime, double prime, fraction slash
    (0x2070, 0x2094), (0x20AC, 0x20AC),  # superscripts and subscripts, euro
    (0x2122, 0x2122), (0x2150, 0x215E),  # trade mark, fractions
    (0x2190, 0x2199), (0x2200, 0x22FF), (0x25A0, 0x25FF), (0x2713, 0x2717),
]
MAX_ERROR = 1.0  # font units of 2000 to the em: far below what can be seen


def to_quadratic(font):
    """Replaces the PostScript outlines of the font by TrueType ones."""
    names, glyphs = font.getGlyphOrder(), font.getGlyphSet()
    outlines = {}
    for name in names:
        pen = TTGlyphPen(None)
        glyphs[name].draw(Cu2QuPen(pen, MAX_ERROR, reverse_direction=True))
        outlines[name] = pen.glyph()
    font["loca"] = newTable("loca")
    font["glyf"] = glyf = newTable("glyf")
    glyf.glyphOrder, glyf.glyphs = names, outlines
    del font["CFF "]
    for name in names:
        glyf[name].recalcBounds(glyf)
        font["hmtx"].metrics[name] = (font["hmtx"].metrics[name][0], getattr(glyf[name], "xMin", 0))
    font["maxp"].tableVersion = 0x00010000
    for field, value in dict(maxZones=1, maxTwilightPoints=0, maxStorage=0, maxFunctionDefs=0,
                             maxInstructionDefs=0, maxStackElements=0, maxSizeOfInstructions=0,
                             maxPoints=0, maxContours=0, maxCompositePoints=0, maxCompositeContours=0,
                             maxComponentElements=0, maxComponentDepth=0).items():
        setattr(font["maxp"], field, value)
    font["post"].formatType, font["post"].extraNames, font["post"].mapping = 2.0, [], {}
    font["post"].glyphOrder = names
    font["head"].glyphDataFormat = 0
    font.sfntVersion = "\000\001\000\000"


def rename(font, style):
    names = font["name"]
    version = names.getDebugName(5)
    names.names = [n for n in names.names if n.nameID in (0, 2, 5, 7, 9, 13, 14)]
    postscript = f"{FAMILY.replace(' ', '')}-{style}"
    for name_id, text in {
        1: FAMILY, 3: f"{postscript} from B612 {version}", 4: f"{FAMILY} {style}", 6: postscript,
        10: f"Made from B612 {version}: fewer characters, quadratic outlines, renamed.",
    }.items():
        names.setName(text, name_id, 3, 1, 0x409)


def make(source, target, style):
    font = TTFont(source / f"B612-{style}.otf", recalcTimestamp=False)
    to_quadratic(font)
    rename(font, style)
    options = subset.Options(layout_features=["*"], name_IDs=["*"], notdef_outline=True,
                             glyph_names=True, hinting=False, recalc_timestamp=False)
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=[c for first, last in CHARACTERS for c in range(first, last + 1)])
    cutter.subset(font)
    path = target / f"{FAMILY.replace(' ', '')}-{style}.ttf"
    font.save(path)
    subprocess.run(["woff2_compress", str(path)], check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


for weight in ("Regular", "Bold"):
    make(Path(sys.argv[1]), Path(sys.argv[2]), weight)
