"""Makes the two font files of this folder from Source Sans 3 (package source-sans 3.52.0, TTF/).

Usage: python3 subset.py FOLDER-WITH-THE-TTF-FILES   (needs fontTools, Debian package fonttools)

Hinting and layout features go, because the PDF library uses neither. The licence reserves the name "Source" for the
unchanged fonts, so what is changed here bears another name; copyright and licence stay in the file.
"""
import sys
from pathlib import Path

from fontTools import subset
from fontTools.ttLib import TTFont

NAME = "LogBook Papers"
CHARACTERS = (
    "U+20-7E,U+A0-17F,U+2010-2015,U+2018-201E,U+2020-2022,U+2026,U+2030,U+2032,U+2033,U+2039,U+203A,U+20AC,"
    "U+2070-208E,U+2190-2193,U+2212,U+2215,U+221A,U+221E,U+2248,U+2260,U+2264,U+2265,U+0391-03C9,"
    "U+25A0-25FF,U+2610-2612,U+2713,U+2717"
)

here = Path(__file__).parent
for weight in ("Regular", "Bold"):
    options = subset.Options()
    options.hinting = False
    options.layout_features = []
    options.notdef_outline = True
    options.name_IDs = [0, 1, 2, 3, 4, 5, 6, 13, 14]
    options.drop_tables += ["GDEF", "GPOS", "GSUB"]
    options.recalc_timestamp = False
    font = TTFont(Path(sys.argv[1]) / f"SourceSans3-{weight}.ttf", recalcTimestamp=False)
    shrink = subset.Subsetter(options)
    shrink.populate(unicodes=subset.parse_unicodes(CHARACTERS))
    shrink.subset(font)
    for record in font["name"].names:
        text = {1: NAME, 3: f"{NAME} {weight}", 4: f"{NAME} {weight}", 6: NAME.replace(" ", "") + "-" + weight}.get(record.nameID)
        if text:
            record.string = text
    font.save(here / f"LogBookPapers-{weight}.ttf")
