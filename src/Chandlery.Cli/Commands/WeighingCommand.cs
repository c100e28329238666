using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Quantities;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery weighing</c>: whether the contents of batches hold, and the e-mark with them.</summary>
internal static class WeighingCommand
{
    public static Command Build()
    {
        Option<bool> json = JsonOption.Of("weighing");
        Option<string?> into = KeptFolder.Out();
        var place = new Option<string>("--place")
        {
            Description = "The place of sale whose rule is applied. Default: IE, the rule of the Union.",
            DefaultValueFactory = _ => "IE",
        };
        return KeptFolder.Build(
            "weighing",
            "Give the verdict on weighed batches: the mean, and how many fall short by more than once and twice the tolerance; the e-mark needs one that passes.",
            (folder, parse) => Run(folder, parse.GetValue(json), parse.GetValue(into), parse.GetValue(place)!),
            place,
            json,
            into
        );
    }

    private static int Run(KeptFolder folder, bool json, string? into, string place)
    {
        if (folder.Lawbook.Safety.For(folder.Lawbook.Safety.Quantities, place) is not { } rules)
        {
            folder.Session.Complain($"No rule on the contents of packages is known for '{place}'.");
            return ExitCode.BadInput;
        }

        List<(WeighingVerdict Verdict, string Batch)> verdicts = [.. Verdicts(folder.Catalogue, rules)];
        List<WeighingLine> lines = [.. verdicts.Select(v => WeighingLine.Of(v.Verdict, v.Batch))];
        List<(Batch Batch, WeighingVerdict? Newest)> marked = [.. EMarks.Of(folder.Catalogue, rules)];
        lines.AddRange(
            marked
                .Where(e => e.Newest is null)
                .Select(e => new WeighingLine(
                    null,
                    e.Batch.Code,
                    0,
                    folder.Catalogue.OfKind<Candle>().First(c => c.Id == e.Batch.Candle.Id).NetMass.Value,
                    null,
                    null,
                    "not weighed, and its label has the e-mark: it may not be used on this batch"
                ))
        );
        var table = new TextTable("weighing", "batch", "packages", "label g", "mean g", "tolerance g", "verdict");
        foreach (WeighingLine l in lines)
        {
            table.Add(
                l.Weighing ?? "-",
                l.Batch,
                $"{l.Packages}",
                Figures.Plain(l.NominalGrams),
                l.MeanGrams is { } mean ? Figures.Rounded(mean, 2) : "-",
                l.ToleranceGrams is { } tolerance ? Figures.Rounded(tolerance, 2) : "-",
                l.Verdict
            );
        }

        folder.Print(json, JsonSerializer.Serialize([.. lines], SafetyFileJson.Plain.WeighingLineArray), table);
        if (!json)
        {
            folder.Session.Output.WriteLine(
                $"By {rules.Clause}; the e-mark is at least {Figures.Plain(rules.MarkHeightMm)} mm high. A candle with 'eMark: yes' gets it on its label once its batches pass."
            );
        }

        folder.Write(WeighingRecord.Of(folder.MakerName, verdicts, rules.Clause), "weighings", into);
        return marked.TrueForAll(e => e.Newest?.Passes == true) && verdicts.TrueForAll(v => v.Verdict.Passes == true)
            ? ExitCode.Fine
            : ExitCode.StopsSale;
    }

    private static IEnumerable<(WeighingVerdict, string)> Verdicts(Catalogue catalogue, QuantityRules rules)
    {
        foreach (Weighing weighing in catalogue.OfKind<Weighing>().OrderBy(w => w.On).ThenBy(w => w.Id, StringComparer.Ordinal))
        {
            var found = new Problems();
            if (catalogue.Find<Batch>(weighing.Batch, found) is { } batch && catalogue.Find<Candle>(batch.Candle, found) is { } candle)
            {
                yield return (WeighingVerdict.Of(weighing, candle, rules), batch.Code);
            }
        }
    }
}
