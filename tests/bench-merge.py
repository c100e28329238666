"""A mail merge in LibreOffice Writer: a label of 120 x 90 mm with fields, a table of records, one PDF of all of them.

Run with the system's Python, which has LibreOffice's bridge: bench-merge.py FOLDER COUNT. The folder holds drawing.png and
label.txt (the label's text without its name and batch). Prints the milliseconds from starting LibreOffice to the PDF.
"""

import base64
import os
import subprocess
import sys
import time
import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from xml.sax.saxutils import escape

FOLDER, COUNT = os.path.abspath(sys.argv[1]), int(sys.argv[2])
FILE, TABLE = 2, 0  # com.sun.star.text.MailMergeType.FILE, com.sun.star.sdb.CommandType.TABLE

NAMESPACES = " ".join(
    f'xmlns:{prefix}="{name}"'
    for prefix, name in {
        "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
        "style": "urn:oasis:names:tc:opendocument:xmlns:style:1.0",
        "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
        "draw": "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0",
        "fo": "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0",
        "svg": "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0",
    }.items()
)


def field(name):
    return (
        '<text:database-display text:database-name="records" text:table-name="records" text:table-type="table" '
        f'text:column-name="{name}">&lt;{name}&gt;</text:database-display>'
    )


def write_template(path, picture):
    with open(os.path.join(FOLDER, "label.txt"), encoding="utf-8") as source:
        lines = [line.strip() for line in source if line.strip()]
    paragraphs = "".join(f'<text:p text:style-name="P">{escape(line)}</text:p>' for line in lines)
    with open(path, "w", encoding="utf-8") as template:
        template.write(
            f'<?xml version="1.0" encoding="UTF-8"?><office:document {NAMESPACES} office:version="1.3" '
            'office:mimetype="application/vnd.oasis.opendocument.text"><office:automatic-styles>'
            '<style:page-layout style:name="L"><style:page-layout-properties fo:page-width="120mm" fo:page-height="90mm" '
            'fo:margin="2.5mm"/></style:page-layout>'
            '<style:style style:name="P" style:family="paragraph"><style:text-properties fo:font-size="5pt"/></style:style>'
            '<style:style style:name="G" style:family="graphic"><style:graphic-properties style:wrap="right" '
            'style:horizontal-rel="page" style:vertical-rel="page" style:horizontal-pos="from-left" '
            'style:vertical-pos="from-top"/></style:style></office:automatic-styles>'
            '<office:master-styles><style:master-page style:name="Standard" style:page-layout-name="L"/></office:master-styles>'
            f'<office:body><office:text><text:p text:style-name="P"><draw:frame draw:style-name="G" text:anchor-type="paragraph" '
            f'svg:x="0mm" svg:y="0mm" svg:width="32mm" svg:height="24mm"><draw:image><office:binary-data>{picture}'
            f'</office:binary-data></draw:image></draw:frame>{field("name")}</text:p>{paragraphs}'
            f'<text:p text:style-name="P">{field("batch")}</text:p></office:text></office:body></office:document>'
        )


def connect(pipe):
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(600):
        try:
            return resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
        except NoConnectException:
            time.sleep(0.02)
    raise SystemExit("LibreOffice did not start")


def main():
    os.makedirs(os.path.join(FOLDER, "table"), exist_ok=True)
    os.makedirs(os.path.join(FOLDER, "merged"), exist_ok=True)
    with open(os.path.join(FOLDER, "table", "records.csv"), "w", encoding="utf-8") as table:
        table.write('"name","batch"\n')
        table.writelines(f'"Harbour Bowl {i}","B-{i:05d}"\n' for i in range(1, COUNT + 1))
    template = os.path.join(FOLDER, "template.fodt")
    with open(os.path.join(FOLDER, "drawing.png"), "rb") as picture:
        write_template(template, base64.b64encode(picture.read()).decode())

    start = time.monotonic()
    office = subprocess.Popen(
        [
            "soffice",
            "--headless",
            "--norestore",
            f"-env:UserInstallation=file://{FOLDER}/profile",
            f"--accept=pipe,name=labels{os.getpid()};urp;",
        ],
        stderr=subprocess.DEVNULL,
    )
    context = connect(f"labels{os.getpid()}")
    services = context.ServiceManager
    sources = services.createInstanceWithContext("com.sun.star.sdb.DatabaseContext", context)
    source = sources.createInstance()
    source.URL = f"sdbc:flat:file://{FOLDER}/table"
    source.Info = (
        PropertyValue("Extension", 0, "csv", 0),
        PropertyValue("HeaderLine", 0, True, 0),
        PropertyValue("FieldDelimiter", 0, ",", 0),
        PropertyValue("StringDelimiter", 0, '"', 0),
        PropertyValue("CharSet", 0, "UTF-8", 0),
    )
    source.DatabaseDocument.storeAsURL(f"file://{FOLDER}/records.odb", ())
    sources.registerObject("records", source)
    merge = services.createInstanceWithContext("com.sun.star.text.MailMerge", context)
    merge.DataSourceName = "records"
    merge.CommandType = TABLE
    merge.Command = "records"
    merge.DocumentURL = f"file://{template}"
    merge.OutputType = FILE
    merge.SaveAsSingleFile = True
    merge.OutputURL = f"file://{FOLDER}/merged"
    merge.SaveFilter = "writer_pdf_Export"
    merge.FileNameFromColumn = False
    merge.FileNamePrefix = "labels"
    merge.execute(())
    print(round((time.monotonic() - start) * 1000))
    try:
        services.createInstanceWithContext("com.sun.star.frame.Desktop", context).terminate()
    finally:
        office.wait(30)


main()
