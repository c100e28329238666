using System.Globalization;

namespace Chandlery.Sheets;

/// <summary>What a sheet of the corpus says about an ingredient.</summary>
public sealed record TruthIngredient(
    string Name,
    string Cas,
    string? Ec,
    string Share,
    IReadOnlyList<string> Classes,
    IReadOnlyList<string> Limits,
    double? AcuteM,
    double? ChronicM,
    double? OralMgPerKg
);

/// <summary>What a sheet of the corpus says.</summary>
public sealed record Truth(
    string Id,
    string Name,
    string Supplier,
    string Document,
    string Version,
    DateOnly Revised,
    IReadOnlyList<string> Classes,
    IReadOnlyList<TruthIngredient> Ingredients,
    double FlashCelsius,
    bool FlashIsLowerBound,
    double Density
)
{
    private static readonly string[] Shares =
    [
        "1 - 5",
        ">= 1 - < 5",
        "< 1",
        "1 - < 2.5",
        "10 - 25",
        "2.5 - < 10",
        "0.1 - < 1",
        ">= 0.25 - < 1",
        "<= 0.3",
        "5 - < 10",
        "0.5",
        ">= 25 - < 50",
        "0.1 - < 0.25",
        "3.2",
    ];

    private static readonly string[] LongNames =
    [
        "1-(1,2,3,4,5,6,7,8-octahydro-2,3,8,8-tetramethyl-2-naphthyl)ethan-1-one",
        "Reaction mass of (1RS,2SR)-2-isopropyl cyclohexanol and its isomers",
        "Tetrahydro-2-isobutyl-4-methylpyran-4-ol, mixed isomers (cis and trans)",
    ];

    /// <summary>The three products of the corpus: a short table, one over several pages, and one with limits, factors and estimates.</summary>
    public static IReadOnlyList<Truth> All()
    {
        IReadOnlyList<SheetSubstance> entries = SheetSubstance.All();
        return
        [
            new(
                "dune",
                "Dune Grass 12",
                "Hollin Aroma Works",
                "HA-0612",
                "3.1",
                new DateOnly(2026, 3, 17),
                ["Skin Irrit. 2, H315", "Skin Sens. 1, H317", "Aquatic Chronic 2, H411"],
                [.. entries.Take(7).Select((e, i) => Ingredient(e, i))],
                93,
                true,
                0.958
            ),
            new(
                "pine-smoke",
                "Pine & Peat Smoke",
                "Corran Scent Supplies",
                "CS-2207",
                "7",
                new DateOnly(2025, 11, 4),
                ["Eye Irrit. 2, H319", "Skin Sens. 1, H317", "Aquatic Acute 1, H400", "Aquatic Chronic 1, H410"],
                [.. entries.Skip(3).Take(34).Select((e, i) => Ingredient(e, i + 5))],
                71.5,
                false,
                0.982
            ),
            new(
                "night-fig",
                "Night Fig",
                "Vael Fragrance House",
                "VF/118-B",
                "2",
                new DateOnly(2026, 8, 25),
                ["Acute Tox. 4, H302", "Skin Sens. 1A, H317", "Aquatic Chronic 1, H410"],
                [.. entries.Where((_, i) => i % 3 == 1).Take(13).Select((e, i) => Special(Ingredient(e, i + 2), i))],
                64,
                false,
                1.012
            ),
        ];
    }

    private static TruthIngredient Ingredient(SheetSubstance entry, int at)
    {
        IReadOnlyList<string> classes = entry.Classes;
        bool acute = classes.Any(c => c.StartsWith("Aquatic Acute 1", StringComparison.Ordinal));
        bool chronic = classes.Any(c => c.StartsWith("Aquatic Chronic 1", StringComparison.Ordinal));
        return new TruthIngredient(
            at % 9 == 4 ? LongNames[at / 9 % LongNames.Length] : entry.Name,
            entry.Cas,
            entry.Ec,
            Shares[at % Shares.Length],
            classes,
            [],
            acute && at % 2 == 0 ? (at % 4 == 0 ? 10 : 1) : null,
            chronic && at % 2 == 0 ? 1 : null,
            null
        );
    }

    private static TruthIngredient Special(TruthIngredient i, int at) =>
        i with
        {
            Limits =
                at % 3 == 0 && i.Classes.FirstOrDefault(c => c.StartsWith("Skin Sens.", StringComparison.Ordinal)) is { } sens
                    ? [sens + ": C >= 0.01 %"]
                    : [],
            OralMgPerKg = at % 4 == 1 ? 500 + (at * 10) : null,
        };

    /// <summary>The corpus's IFRA limits for a product.</summary>
    public IReadOnlyList<(string Category, string Limit)> IfraLimits() =>
        [
            ("1", "0.05"),
            ("4", Id == "dune" ? "2.4" : "1.15"),
            ("5A", "0.62"),
            ("9", "3.3"),
            ("10A", "not permitted"),
            ("12", Id == "dune" ? "not restricted" : "48.5"),
        ];

    /// <summary>Invariant text of a figure.</summary>
    public static string Figure(double value) => value.ToString(CultureInfo.InvariantCulture);
}
