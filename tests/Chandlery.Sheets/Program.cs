using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Sheets;
using Chandlery.Sheets.Wild;
using Chandlery.Yaml;

if (args is ["wild", ..])
{
    return WildRun.Run(args[1..]);
}

// Writes the corpus's sources into a folder: PDFs of our own engine at once, HTML and LaTeX for other engines.
string folder = args.Length == 1 ? args[0] : throw new ArgumentException("Name the folder to write into.");
Directory.CreateDirectory(folder);
var problems = new Problems();
IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
PaperShop shop = ShippedShop.Open(data, null, problems);
foreach (Truth t in Truth.All())
{
    void Save(string name, string text) => File.WriteAllText(Path.Combine(folder, $"{t.Id}.{name}"), text);
    Save("writer-grid-de.writer.html", HtmlSheets.Write(t, Tongue.German, HtmlForm.Grid, 3));
    Save("writer-stacked-en.writer.html", HtmlSheets.Write(t, Tongue.English, HtmlForm.Stacked, 1));
    Save("chromium-plain-en.chromium.html", HtmlSheets.Write(t, Tongue.English, HtmlForm.Plain, 2));
    Save("chromium-list-fr.chromium.html", HtmlSheets.Write(t, Tongue.French, HtmlForm.List, 1));
    Save("chromium-airy-fr.chromium.html", HtmlSheets.Write(t, Tongue.French, HtmlForm.Airy, 0));
    Save("latex-open-en.tex", LatexSheets.Write(t, Tongue.English, grid: false, 1));
    Save("latex-grid-de.tex", LatexSheets.Write(t, Tongue.German, grid: true, 0));
    PaperDocument(t, OwnSheets.Write(t, Tongue.English, 0));
    Save("ifra-en.chromium.html", HtmlSheets.Ifra(t));
    Save("allergens-en.writer.html", HtmlSheets.Allergens(t));
}

return problems.None ? 0 : 1;

void PaperDocument(Truth t, string markup) =>
    File.WriteAllBytes(
        Path.Combine(folder, $"{t.Id}.own-lines-en.pdf"),
        PdfDrawing.Draw(ManyPages.FromMarkup(markup, t.Id, shop, problems)!)
    );
