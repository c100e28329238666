using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Intake.Drafts;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Sheets.Wild;

/// <summary>The random corpus on the command line.</summary>
public static class WildRun
{
    /// <summary>
    /// <c>wild FROM TO</c> prints, reads and counts these seeds with our own press; <c>wild write FROM TO FOLDER</c> writes them for
    /// outside engines; <c>wild read FOLDER</c> counts what these printed; <c>wild show SEED</c> prints a draft and keeps its PDF;
    /// <c>wild scans FROM TO DPI en,de</c> prints those in these languages with our own press, scans them with that resolution and reads the
    /// pictures with tesseract.
    /// </summary>
    public static int Run(string[] args)
    {
        var problems = new Problems();
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
        Lawbook lawbook = LawReader.Read(data, PaperList.Own.Ids, problems)!;
        var maker = new WildMaker(SheetSubstance.All(), data);
        var reader = new WildReader(lawbook, data);
        switch (args[0])
        {
            case "write":
                Write(maker, Number(args[1]), Number(args[2]), args[3]);
                return 0;
            case "read":
                ReadPrinted(maker, reader, args[1]);
                break;
            case "scans":
                ReadScans(
                    maker,
                    new WildReader(lawbook, data, Tesseract.Read),
                    Number(args[1]),
                    Number(args[2]),
                    Number(args[3]),
                    args[4].Split(',')
                );
                return 0;
            case "show":
                Show(maker.Make(Number(args[1])), reader, args.Length > 2 ? File.ReadAllBytes(args[2]) : null);
                return 0;
            default:
                for (int seed = Number(args[0]); seed < Number(args[1]); seed++)
                {
                    WildSheet sheet = maker.Make(seed);
                    reader.Read($"{seed} {sheet.Language} {sheet.Layout}", sheet, Press.Print(sheet));
                }

                break;
        }

        Report(reader);
        return reader.Seen.WrongUnmarked + reader.Seen.MissingUnsaid + reader.Unseen.WrongUnmarked + reader.Unseen.MissingUnsaid == 0
            ? 0
            : 1;
    }

    // Of the half that is held back only dangerous differences are told, so that nobody tunes the reader to its pages.
    private static void Report(WildReader reader)
    {
        (WildScore seen, WildScore unseen) = (reader.Seen, reader.Unseen);
        IEnumerable<string> dangerous = unseen.Differences.Where(d => d.StartsWith("UNMARKED", StringComparison.Ordinal));
        foreach (
            string line in seen
                .Differences.Concat(dangerous)
                .Append("\nEach field of each engine and layout, seen / held back:")
                .Concat(WildTable.Matrix(seen.Engines, unseen.Engines))
                .Concat(WildTable.Matrix(seen.Layouts, unseen.Layouts))
                .Append("")
                .Concat(WildTable.Groups("engine", seen.Engines, unseen.Engines))
                .Append("")
                .Concat(WildTable.Groups("layout", WildTable.Forms(seen.Layouts), WildTable.Forms(unseen.Layouts)))
                .Append("")
                .Concat(WildTable.Lines(seen, unseen))
        )
        {
            Console.WriteLine(line);
        }

        int doubted = seen.Fields.Values.Concat(unseen.Fields.Values).Sum(f => f.Doubted);
        int right = seen.Fields.Values.Concat(unseen.Fields.Values).Sum(f => f.Right);
        Console.WriteLine($"{doubted} of {right} right values are doubted all the same");
        Console.WriteLine(
            $"{reader.MedianMilliseconds} ms is the median time of a document, {reader.Slowest.Milliseconds:0} ms the longest ({reader.Slowest.Where})"
        );
    }

    // Each document that was written counts, also one that its engine could not print.
    private static void ReadPrinted(WildMaker maker, WildReader reader, string folder)
    {
        IEnumerable<string> sources = Directory
            .EnumerateFiles(folder)
            .Where(f => Path.GetExtension(f) is ".html" or ".tex" or ".tr" or ".json" or ".typ");
        foreach (string source in sources.Order(StringComparer.Ordinal))
        {
            string name = Path.GetFileNameWithoutExtension(source);
            string pdf = Path.ChangeExtension(source, ".pdf");
            reader.Read(name, maker.Make(Number(name.Split('.')[0])), File.Exists(pdf) ? File.ReadAllBytes(pdf) : []);
        }
    }

    private static void ReadScans(WildMaker maker, WildReader reader, int from, int to, int dotsPerInch, string[] languages)
    {
        for (int seed = from; seed < to; seed++)
        {
            WildSheet sheet = maker.Make(seed);
            if (languages.Contains(sheet.Language))
            {
                reader.Read($"{seed} {sheet.Language} {sheet.Layout}", sheet, Scanner.Scan(Press.Print(sheet), seed, dotsPerInch));
            }
        }

        Report(reader);
    }

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static void Show(WildSheet sheet, WildReader reader, byte[]? pdf)
    {
        pdf ??= Press.Print(sheet);
        File.WriteAllBytes($"{sheet.Seed}.pdf", pdf);
        if (reader.Read("it", sheet, pdf) is { } draft)
        {
            DraftSource[] sources = [new("it.pdf", "", SheetKind.SafetyDataSheet)];
            Console.WriteLine(DraftYaml.Write(draft with { Sources = sources }).Text);
        }

        WildScore score = sheet.IsSeen ? reader.Seen : reader.Unseen;
        Console.WriteLine(sheet.Language + " " + sheet.Layout + "\n" + string.Join('\n', score.Differences));
    }

    private static void Write(WildMaker maker, int from, int to, string folder)
    {
        Directory.CreateDirectory(folder);
        for (int seed = from; seed < to; seed++)
        {
            WildSheet sheet = maker.Make(seed);
            (string extension, string text) = Source(sheet, ((seed / 2) + (seed / 20)) % 7);
            File.WriteAllText(Path.Combine(folder, $"{seed}.{extension}"), text);
        }
    }

    // Text in two columns is left to Chromium and Typst, text sideways to Chromium, and Polish letters, which groff's faces lack, to
    // WeasyPrint.
    private static (string Extension, string Text) Source(WildSheet sheet, int engine) =>
        (
            sheet.Form.IsTurned || (sheet.Form.Columns == 2 && engine != 6) ? 0
            : sheet.Language == "pl" && engine == 4 ? 2
            : engine
        ) switch
        {
            0 => ("chromium.html", HtmlPress.Write(sheet)),
            1 => ("writer.html", HtmlPress.Write(sheet)),
            2 => ("weasyprint.html", HtmlPress.Write(sheet)),
            3 => ("latex.tex", LatexPress.Write(sheet)),
            4 => ("groff.tr", GroffPress.Write(sheet)),
            5 => ("reportlab.json", ReportLabPress.Write(sheet)),
            _ => ("typst.typ", TypstPress.Write(sheet)),
        };
}
