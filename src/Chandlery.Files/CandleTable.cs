using System.Diagnostics;
using System.Globalization;
using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Candles and blends as CSV (RFC 4180), out and in.</summary>
public static class CandleTable
{
    private static readonly string[] Temperatures = ["meltCelsius", "addFragranceCelsius", "pourCelsius", "topUpCelsius"];

    private static readonly string[] CandleHeads =
    [
        "id",
        "name",
        "use",
        "vessel",
        "netGrams",
        "wax",
        "loadPercent",
        "loadOf",
        "oils",
        "wickCount",
        "trimToMm",
        "soldIn",
        "waxGrams",
        "extras",
        "topUp",
        "headspaceMm",
        "languages",
        "formulationNumber",
        .. Temperatures,
    ];

    private static readonly string[] BlendHeads =
    [
        "id",
        "oil",
        "amount",
        "measure",
        "shareOfBlendPercent",
        "percentOfCandle",
        "document",
        "revised",
    ];

    /// <summary>Whether the columns hold all of a product: those of container candles do, other kinds have parts of their own.</summary>
    public static bool Holds(Candle candle) => candle.Kind is null;

    /// <summary>A row for each container candle.</summary>
    public static string Candles(IEnumerable<Candle> candles) =>
        Csv.Write(
            CandleHeads,
            candles
                .Where(Holds)
                .Select(c =>
                    new[]
                    {
                        c.Id,
                        c.Name,
                        c.Use == CandleUse.Outdoor ? "outdoor" : "indoor",
                        c.Vessel?.Id ?? "",
                        Number(c.NetMass.Value),
                        c.Wax.Id,
                        c.Load is { } load ? Number(load.Percent.Value) : "",
                        c.Load is { } basis ? (basis.Basis == LoadBasis.Wax ? "wax" : "candle") : "",
                        string.Join("; ", c.Oils.Select(o => $"{o.Oil.Id}={Number(o.Amount)} {MeasureName(o.Measure)}")),
                        c.Wicks.Count.ToString(CultureInfo.InvariantCulture),
                        Number(c.Wicks.TrimTo.Value),
                        string.Join(' ', c.SoldIn.Select(s => s.Code)),
                        c.WaxWeight is { } wax ? Number(wax.Value) : "",
                        string.Join("; ", c.Extras.Select(e => $"{e.Extra.Id}={AmountText(e.Amount, "percentOfWax")}")),
                        TopUpText(c.TopUp),
                        c.Headspace is { } headspace ? Number(headspace.Value) : "",
                        string.Join(' ', c.Languages.Select(l => l.Code)),
                        c.FormulationNumber?.ToString(CultureInfo.InvariantCulture) ?? "",
                        Degrees(c.Temperatures.Melt),
                        Degrees(c.Temperatures.AddFragrance),
                        Degrees(c.Temperatures.Pour),
                        Degrees(c.Temperatures.TopUp),
                    }
                )
        );

    /// <summary>A row for each oil of each candle, with what it comes to in the finished candle.</summary>
    public static string Blends(IEnumerable<Assessment> assessments) =>
        Csv.Write(
            BlendHeads,
            assessments
                .DistinctBy(a => a.Id)
                .SelectMany(a =>
                    a.Composition.Recipe.Oils.Select(o =>
                        new[]
                        {
                            a.Id,
                            o.Oil.Id,
                            Amount(a.Candle, o) is { } part ? Number(part.Amount) : "",
                            Amount(a.Candle, o) is { } kind ? MeasureName(kind.Measure) : "",
                            Number(o.ShareOfBlend.Value),
                            Number(o.Share.Value),
                            o.Oil.Document,
                            IsoDay.Plain(o.Oil.Revised),
                        }
                    )
                )
        );

    /// <summary>Declarations of candles from CSV; the result is empty when anything is wrong.</summary>
    /// <param name="csv">The text.</param>
    /// <param name="file">Its name, for messages.</param>
    /// <param name="problems">Collects what is wrong, with line and column.</param>
    /// <returns>Name of the declaration and its YAML.</returns>
    public static IReadOnlyList<(string Id, string Yaml)> Read(string csv, string file, Problems problems)
    {
        var own = new Problems();
        List<CsvRow> rows = [.. Rows(csv, file, own)];
        if (rows.Count == 0)
        {
            own.Add(
                new TextPlace(file, 1, 1),
                "The file holds no rows.",
                $"The first line names the columns: {string.Join(",", CandleHeads)}."
            );
        }
        else
        {
            foreach (string missing in CandleHeads.Except(rows[0].Cells))
            {
                own.Add(new TextPlace(file, 1, 1), $"The column '{missing}' is missing.", $"Columns: {string.Join(",", CandleHeads)}.");
            }
        }

        var candles = new List<(string, string)>();
        foreach (CsvRow row in own.None ? rows.Skip(1) : [])
        {
            string Cell(string head) => row.Cells.ElementAtOrDefault(Array.IndexOf([.. rows[0].Cells], head)) ?? "";
            string id = Cell("id");
            if (
                id.Length == 0
                || id.Any(c => !char.IsAsciiLetterLower(c) && !char.IsAsciiDigit(c) && c != '-')
                || candles.Any(c => c.Item1 == id)
            )
            {
                own.Add(
                    new TextPlace(file, row.Line, 1),
                    $"'{id}' is no name for a declaration, or stands there twice.",
                    "Write small letters, figures and hyphens, such as fig-tin."
                );
                continue;
            }

            candles.Add((id, Yaml(Cell, row, file, own)));
        }

        problems.AddRange(own.Found);
        return own.None ? candles : [];
    }

    private static string Yaml(Func<string, string> cell, CsvRow row, string file, Problems problems)
    {
        var yaml = new StringBuilder("declares: candle\n");
        void Field(string key, string value) => yaml.Append(CultureInfo.InvariantCulture, $"{key}: {YamlEdit.Scalar(value)}\n");
        Field("name", cell("name"));
        Field("use", cell("use"));
        Field("vessel", cell("vessel"));
        Field("netGrams", cell("netGrams"));
        Field("wax", cell("wax"));
        if (cell("loadPercent").Length > 0)
        {
            yaml.Append(
                CultureInfo.InvariantCulture,
                $"load: {{ percent: {YamlEdit.Scalar(cell("loadPercent"))}, of: {YamlEdit.Scalar(cell("loadOf"))} }}\n"
            );
        }

        Optional("waxGrams", cell("waxGrams"));
        yaml.Append("oils:\n");
        Parts("oils", "oil");
        if (cell("extras").Length > 0)
        {
            yaml.Append("extras:\n");
            Parts("extras", "extra");
        }

        if (cell("topUp").Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var scented, var amount, var unit])
        {
            yaml.Append(
                CultureInfo.InvariantCulture,
                $"topUp: {{ scented: {(scented == "scented" ? "yes" : "no")}, {YamlEdit.Scalar(unit)}: {YamlEdit.Scalar(amount)} }}\n"
            );
        }
        else if (cell("topUp") == "scented")
        {
            yaml.Append("topUp: { scented: yes }\n");
        }
        else if (cell("topUp").Length > 0)
        {
            problems.Add(
                new TextPlace(file, row.Line, 1),
                $"'{cell("topUp")}' is no top-up.",
                "Write 'plain 12 percentOfCandle', 'scented 5 percentOfCandle', or with grams."
            );
        }

        List<string> degrees = [.. Temperatures.Where(t => cell(t).Length > 0).Select(t => $"{t}: {YamlEdit.Scalar(cell(t))}")];
        if (degrees.Count > 0)
        {
            yaml.Append(CultureInfo.InvariantCulture, $"temperatures: {{ {string.Join(", ", degrees)} }}\n");
        }

        Optional("headspaceMm", cell("headspaceMm"));
        Optional("formulationNumber", cell("formulationNumber"));
        if (cell("languages").Length > 0)
        {
            yaml.Append(
                CultureInfo.InvariantCulture,
                $"languages: [{string.Join(", ", cell("languages").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(YamlEdit.Scalar))}]\n"
            );
        }

        yaml.Append(
            CultureInfo.InvariantCulture,
            $"wicks: {{ count: {YamlEdit.Scalar(cell("wickCount"))}, trimToMm: {YamlEdit.Scalar(cell("trimToMm"))} }}\n"
        );
        yaml.Append(
            CultureInfo.InvariantCulture,
            $"soldIn: [{string.Join(", ", cell("soldIn").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(YamlEdit.Scalar))}]\n"
        );
        return yaml.ToString();

        void Optional(string key, string value)
        {
            if (value.Length > 0)
            {
                Field(key, value);
            }
        }

        void Parts(string column, string key)
        {
            foreach (string part in cell(column).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            {
                string[] sides = part.Split('=', 2);
                string[] words = sides.Length == 2 ? sides[1].Split(' ', StringSplitOptions.RemoveEmptyEntries) : [];
                if (words.Length != 2)
                {
                    problems.Add(
                        new TextPlace(file, row.Line, 1),
                        $"'{part}' in '{column}' is no name with its amount.",
                        "Write 'fig-leaf=60 share; rain-on-slate=40 share', or grams, millilitres, drops."
                    );
                    continue;
                }

                yaml.Append(
                    CultureInfo.InvariantCulture,
                    $"  - {{ {key}: {YamlEdit.Scalar(sides[0])}, {YamlEdit.Scalar(words[1])}: {YamlEdit.Scalar(words[0])} }}\n"
                );
            }
        }
    }

    private static string Degrees(Core.Quantities.Celsius? temperature) => temperature is { } t ? Number(t.Value) : "";

    private static string TopUpText(TopUp? topUp) =>
        topUp switch
        {
            PlainTopUp plain => $"plain {AmountText(plain.Amount, "percentOfCandle")}",
            ScentedTopUp { Amount: { } amount } => $"scented {AmountText(amount, "percentOfCandle")}",
            ScentedTopUp => "scented",
            _ => "",
        };

    private static string AmountText(Amount amount, string shareUnit) =>
        amount switch
        {
            RelativeAmount share => $"{Number(share.Percent.Value)} {shareUnit}",
            WeighedAmount weighed => $"{Number(weighed.Weight.Value)} grams",
            _ => throw new UnreachableException(),
        };

    private static OilPart? Amount(Candle candle, OilShare share) => candle.Oils.FirstOrDefault(o => o.Oil.Id == share.Oil.Id);

    private static string MeasureName(OilMeasure measure) => measure.ToString().ToLowerInvariant();

    private static string Number(double value) => Math.Round(value, 6).ToString(CultureInfo.InvariantCulture);

    private sealed record CsvRow(int Line, IReadOnlyList<string> Cells);

    private static IEnumerable<CsvRow> Rows(string csv, string file, Problems problems)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        bool quoted = false;
        int line = 1;
        int start = 1;
        string text = csv.TrimStart('\ufeff');
        for (int i = 0; i <= text.Length; i++)
        {
            char c = i < text.Length ? text[i] : '\n';
            if (quoted && i < text.Length)
            {
                if (c != '"')
                {
                    cell.Append(c);
                }
                else if (i + 1 < text.Length && text[i + 1] == '"')
                {
                    cell.Append('"');
                    i++;
                }
                else
                {
                    quoted = false;
                }
            }
            else if (c == '"' && cell.Length == 0)
            {
                quoted = true;
            }
            else if (c is ',' or '\n')
            {
                cells.Add(cell.ToString().TrimEnd('\r'));
                cell.Clear();
                if (c == '\n')
                {
                    if (cells.Any(x => x.Length > 0))
                    {
                        yield return new CsvRow(start, [.. cells]);
                    }

                    cells.Clear();
                    start = line + 1;
                }
            }
            else
            {
                cell.Append(c);
            }

            line += c == '\n' ? 1 : 0;
        }

        if (quoted)
        {
            problems.Add(new TextPlace(file, start, 1), "A quoted cell is not closed.", "Every opening \" needs a closing one.");
        }
    }
}
