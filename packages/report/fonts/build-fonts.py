"""Makes the three font files of this folder from the Noto Sans files of the Debian packages fonts-noto-core and
fonts-noto-extra: keeps the scripts that names and places are likely written in, drops hinting, and adds the comparison,
minus and arrow signs that Noto Sans leaves to its companion fonts. Only needed to make the files again.

    python3 build-fonts.py /usr/share/fonts/truetype/noto
"""

import sys
from pathlib import Path

from fontTools import subset
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

LATIN = [(0x20, 0x7E), (0xA0, 0x17F)]
WIDE = LATIN + [(0x180, 0x24F), (0x259, 0x259), (0x2BC, 0x2BC), (0x300, 0x304), (0x370, 0x3FF), (0x400, 0x45F), (0x1E00, 0x1EFF)]
SIGNS = [(0x2010, 0x2015), (0x2018, 0x201E), (0x2020, 0x2022), (0x2026, 0x2026), (0x2030, 0x2030), (0x2032, 0x2033),
         (0x2039, 0x203A), (0x2044, 0x2044), (0x2070, 0x2070), (0x2074, 0x2079), (0x2080, 0x2089), (0x20AC, 0x20AC),
         (0x2116, 0x2116), (0x2122, 0x2122)]

FILES = [
    ("NotoSans-Regular.ttf", "undercroft-text.ttf", "Undercroft Text", "Regular", WIDE),
    ("NotoSans-SemiBold.ttf", "undercroft-text-bold.ttf", "Undercroft Text", "Bold", WIDE),
    ("NotoSans-SemiCondensedMedium.ttf", "undercroft-figures.ttf", "Undercroft Figures", "Regular", LATIN),
]


def bar(pen, x0, y0, x1, y1):
    pen.moveTo((x0, y0))
    pen.lineTo((x0, y1))
    pen.lineTo((x1, y1))
    pen.lineTo((x1, y0))
    pen.closePath()


def polygon(pen, points):
    pen.moveTo(points[0])
    for point in points[1:]:
        pen.lineTo(point)
    pen.closePath()


def contours(font, name):
    glyph = font["glyf"][name]
    coordinates, ends, _ = glyph.getCoordinates(font["glyf"])
    out, start = [], 0
    for end in ends:
        out.append([tuple(p) for p in coordinates[start : end + 1]])
        start = end + 1
    return out


def add(font, code, name, draw, width):
    pen = TTGlyphPen(None)
    draw(pen)
    font["glyf"][name] = pen.glyph()
    font["hmtx"][name] = (width, getattr(font["glyf"][name], "xMin", 0))
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap[code] = name


def add_signs(font):
    """Signs in the weight of the font's own plus, equal and less signs."""
    cmap = font.getBestCmap()
    width = font["hmtx"][cmap[ord("+")]][0]
    bars = sorted(contours(font, cmap[ord("=")]), key=lambda c: min(p[1] for p in c))
    left, right = min(p[0] for p in bars[0]), max(p[0] for p in bars[0])
    thick = max(p[1] for p in bars[0]) - min(p[1] for p in bars[0])
    middle = (min(p[1] for p in bars[0]) + max(p[1] for p in bars[1])) / 2
    low, high = round(middle - thick / 2), round(middle + thick / 2)
    less, more = contours(font, cmap[ord("<")])[0], contours(font, cmap[ord(">")])[0]

    def compare(shape):
        bottom = min(p[1] for p in shape)
        foot = bottom - 40
        raised = [(x, round(foot + thick + 70 + (y - bottom) * 0.92)) for x, y in shape]

        def draw(pen):
            polygon(pen, raised)
            bar(pen, left, foot, right, foot + thick)

        return draw

    wave = contours(font, cmap[ord("~")])[0]
    flags = font["glyf"][cmap[ord("~")]].flags

    def about(pen):
        for shift in (-round(thick * 1.15), round(thick * 1.15)):
            points = [(x, y + shift) for x, y in wave]
            quadratic(pen, points, flags)

    reach, wing = 150, 165
    far = width + 190

    def arrow(pen):
        tip = far - 45
        bar(pen, 45, low, tip - thick, high)
        slope = thick * 1.35
        head = [(tip, middle), (tip - reach - slope * 0.2, middle + wing), (tip - reach - slope, middle + wing),
                (tip - slope, middle), (tip - reach - slope, middle - wing), (tip - reach - slope * 0.2, middle - wing)]
        polygon(pen, [(round(x), round(y)) for x, y in reversed(head)])

    add(font, 0x2212, "minus", lambda pen: bar(pen, left, low, right, high), width)
    add(font, 0x2264, "lessequal", compare(less), width)
    add(font, 0x2265, "greaterequal", compare(more), width)
    add(font, 0x2248, "approxequal", about, width)
    add(font, 0x2192, "arrowright", arrow, far)


def quadratic(pen, points, flags):
    on = [(p, flags[i] & 1) for i, p in enumerate(points)]
    first = next(i for i, (_, f) in enumerate(on) if f)
    on = on[first:] + on[:first]
    pen.moveTo(on[0][0])
    off = []
    for p, is_on in on[1:] + [on[0]]:
        if is_on:
            pen.qCurveTo(*off, p) if off else pen.lineTo(p)
            off = []
        else:
            off.append(p)
    pen.closePath()


def rename(font, family, style):
    names = font["name"]
    full = family if style == "Regular" else f"{family} {style}"
    post = f"{family.replace(chr(32), str())}-{style}"
    names.names = [n for n in names.names if n.nameID in (0, 13, 14)]
    for id_, text in ((1, family), (2, style), (3, post), (4, full), (5, "Version 1.0"), (6, post)):
        names.setName(text, id_, 3, 1, 0x409)


def make(folder, source, target, family, style, ranges):
    font = TTFont(Path(folder) / source, recalcTimestamp=False)
    options = subset.Options()
    options.hinting = False
    options.notdef_outline = True
    options.name_IDs = ["*"]
    options.layout_features = ["kern", "mark", "mkmk", "ccmp"]
    cutter = subset.Subsetter(options)
    wanted = [c for a, b in ranges + SIGNS for c in range(a, b + 1)]
    cutter.populate(unicodes=wanted)
    cutter.subset(font)
    add_signs(font)
    rename(font, family, style)
    font.save(Path(__file__).parent / target)


for row in FILES:
    make(sys.argv[1], *row)
