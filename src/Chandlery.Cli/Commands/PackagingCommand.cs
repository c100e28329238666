using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Quantities;
using Chandlery.Core.SafetyFiles.Records;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery packaging</c>: grams of packaging by country, year and material.</summary>
internal static class PackagingCommand
{
    public static Command Build()
    {
        Option<bool> json = JsonOption.Of("packaging");
        Option<string?> into = KeptFolder.Out();
        var year = new Option<int?>("--year") { Description = "One year only." };
        return KeptFolder.Build(
            "packaging",
            "Sum the packaging that went out, by country, year and material, for the registers of producers, and list the marks that each country wants.",
            (folder, parse) => Run(folder, parse.GetValue(json), parse.GetValue(year), parse.GetValue(into)),
            year,
            json,
            into
        );
    }

    private static int Run(KeptFolder folder, bool json, int? year, string? into)
    {
        List<PackagingSum> sums = [.. PackagingSum.Of(folder.Catalogue).Where(s => year is null || s.Year == year)];
        var table = new TextTable("year", "country", "material", "grams");
        foreach (PackagingSum s in sums)
        {
            table.Add($"{s.Year}", s.Country, s.Material.ToString().ToLowerInvariant(), Figures.Rounded(s.Grams, 1));
        }

        IReadOnlyList<string> without = PackagingSum.NotDeclared(folder.Catalogue);
        IReadOnlyList<PackagingMark> marks = PackagingMark.Of(folder.Catalogue, folder.Lawbook, folder.AsOf);
        var report = new PackagingReport([.. sums.Select(PackagingLine.Of)], [.. marks.Select(PackagingMarkReport.Of)], without);
        folder.Print(json, JsonSerializer.Serialize(report, SafetyFileJson.Plain.PackagingReport), table);
        if (!json)
        {
            var wanted = new TextTable("country", "from", "what is wanted");
            foreach (PackagingMarkReport mark in report.Marks)
            {
                wanted.Add(mark.Country, mark.From ?? "-", mark.Clause.Length > 0 ? $"{mark.Says} ({mark.Clause})" : mark.Says);
            }

            folder.Session.Output.WriteLine();
            wanted.Write(folder.Session.Output, AssessCommand.Width);
        }

        folder.Write(PackagingRecord.Of(folder.MakerName, report, folder.AsOf), "packaging", into);
        foreach (string candle in without)
        {
            folder.Session.Complain(
                $"{candle}: it went out and its 'packaging' is not declared, so their grams are missing from the sums."
            );
        }

        return without.Count > 0 ? ExitCode.StopsSale : ExitCode.Fine;
    }
}
