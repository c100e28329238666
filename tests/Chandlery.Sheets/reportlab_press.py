"""Prints a random sheet that Chandlery.Sheets wrote as JSON, with ReportLab."""
import json
import sys
from xml.sax.saxutils import escape
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.platypus import LongTable, Paragraph, SimpleDocTemplate, Spacer

FACE = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"


def main(source, target):
    sheet = json.load(open(source, encoding="utf-8"))
    pdfmetrics.registerFont(TTFont("Sheet", FACE))
    style = ParagraphStyle("body", fontName="Sheet", fontSize=sheet["size"], leading=sheet["size"] * 1.25)
    large = ParagraphStyle("heading", parent=style, fontSize=sheet["size"] * 1.2, leading=sheet["size"] * 1.5, spaceBefore=4)
    width = (sheet["width"] - 2 * sheet["margin"]) * mm - 12
    story = []
    for block in sheet["blocks"]:
        if block["kind"] == "heading":
            story.append(Paragraph(escape(block["text"]), large))
        elif block["kind"] == "lines":
            story += [Paragraph(escape(line), style) for line in block["lines"]]
        else:
            story += [table(block, style, width), Spacer(1, 6)]
    page = (sheet["width"] * mm, sheet["height"] * mm)
    margin = sheet["margin"] * mm
    SimpleDocTemplate(
        target, pagesize=page, leftMargin=margin, rightMargin=margin, topMargin=margin, bottomMargin=margin
    ).build(story)


def table(block, style, width):
    total = sum(block["widths"])
    rules = [("VALIGN", (0, 0), (-1, -1), "MIDDLE" if block["middle"] else "TOP")]
    if block["rules"] == "Grid":
        rules.append(("GRID", (0, 0), (-1, -1), 0.5, "black"))
    if block["rules"] == "Level":
        rules.append(("LINEBELOW", (0, 0), (-1, -1), 0.5, "black"))
    if block["rules"] == "Head":
        rules.append(("LINEBELOW", (0, 0), (-1, 0), 0.5, "black"))
    rows = []
    for at, row in enumerate(block["rows"]):
        cells = []
        for cell in row:
            cells.append(Paragraph("<br/>".join(escape(line) for line in cell["lines"]), style))
            if cell["span"] > 1:
                rules.append(("SPAN", (0, at), (-1, at)))
                cells += [""] * (cell["span"] - 1)
        rows.append(cells)
    widths = [w / total * width for w in block["widths"]]
    return LongTable(rows, colWidths=widths, repeatRows=block["head"], style=rules)


main(sys.argv[1], sys.argv[2])
