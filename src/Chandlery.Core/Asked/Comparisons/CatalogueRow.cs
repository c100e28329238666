using Chandlery.Core.Assessed;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Comparisons;

/// <summary>A candle of a catalogue in a line.</summary>
public sealed record CatalogueRow
{
    /// <summary>Its name.</summary>
    public required string Id { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Edition of the law.</summary>
    public required string Edition { get; init; }

    /// <summary>Places of sale.</summary>
    public required IReadOnlyList<string> Places { get; init; }

    /// <summary>Classes.</summary>
    public required IReadOnlyList<string> Classes { get; init; }

    /// <summary>Danger, Warning, or null.</summary>
    public required string? SignalWord { get; init; }

    /// <summary>Hazard and supplemental statements.</summary>
    public required IReadOnlyList<string> Statements { get; init; }

    /// <summary>Oil in the finished candle, percent.</summary>
    public required double LoadOfCandlePercent { get; init; }

    /// <summary>Names of broken limits.</summary>
    public required IReadOnlyList<string> LimitsBroken { get; init; }

    /// <summary>True when something stops the sale.</summary>
    public required bool StopsSale { get; init; }

    /// <summary>UFI, or null.</summary>
    public required string? Ufi { get; init; }

    /// <summary>The line of an assessed candle.</summary>
    public static CatalogueRow Of(Assessment a) =>
        new CatalogueRow
        {
            Id = a.Id,
            Name = a.Candle.Name,
            Edition = a.Edition.Id,
            Places = [.. a.Places.Select(p => p.Code)],
            Classes = [.. a.Classification.Classes.Select(c => c.Category.Code)],
            SignalWord = a.Label.SignalWord?.Text,
            Statements = [.. a.Label.Hazard.Concat(a.Label.Supplemental).Select(s => s.Text)],
            LoadOfCandlePercent = Figures.Significant(a.Composition.Recipe.Load.Value),
            LimitsBroken = [.. a.Limits.Where(l => l.Holds == false).Select(l => l.Name)],
            StopsSale = a.StopsSale,
            Ufi = a.Ufi,
        };
}
