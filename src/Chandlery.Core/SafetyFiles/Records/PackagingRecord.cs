using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyFiles.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>The packaging that went out, as a paper for the registers of producers.</summary>
public static class PackagingRecord
{
    /// <summary>The record.</summary>
    /// <param name="maker">Whose it is.</param>
    /// <param name="packaging">Sums, marks, and what is not declared.</param>
    /// <param name="day">The day.</param>
    public static KeptRecord Of(string maker, PackagingReport packaging, DateOnly day) =>
        new(
            "Packaging",
            maker,
            [
                $"As of {IsoDay.Plain(day)}, by the dispatches and the packaging that are declared. Registering and reporting is done by hand.",
            ],
            [
                new RecordSection(
                    "What went out",
                    RecordSection.Table(
                        [15, 20, 35, 30],
                        ["Year", "Country", "Material", "Grams"],
                        [.. packaging.Sums.Select(s => new[] { $"{s.Year}", s.Country, s.Material, Figures.Rounded(s.Grams, 1) })],
                        "No dispatch is declared."
                    )
                ),
                new RecordSection(
                    "Missing from the sums",
                    [
                        .. RecordSection.Texts(
                            packaging
                                .NotDeclared.Select(candle => $"{candle}: it went out, and its packaging is not declared.")
                                .DefaultIfEmpty("Nothing that the program can see.")
                        ),
                    ]
                ),
                new RecordSection(
                    "Marks and registers",
                    RecordSection.Table(
                        [12, 16, 48, 24],
                        ["Country", "From", "What is wanted", "Where it stands"],
                        [.. packaging.Marks.Select(m => new[] { m.Country, m.From ?? "-", m.Says, m.Clause.Length > 0 ? m.Clause : "-" })],
                        "No place of sale is declared."
                    )
                ),
            ]
        );
}
