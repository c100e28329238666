using Chandlery.Core.Assessed;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Comparisons;

/// <summary>A candle of a catalogue in a line.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Edition">Edition of the law.</param>
/// <param name="Places">Places of sale.</param>
/// <param name="Classes">Classes.</param>
/// <param name="SignalWord">Danger, Warning, or null.</param>
/// <param name="Statements">Hazard and supplemental statements.</param>
/// <param name="LoadOfCandlePercent">Oil in the finished candle, percent.</param>
/// <param name="LimitsBroken">Names of broken limits.</param>
/// <param name="StopsSale">True when something stops the sale.</param>
/// <param name="Ufi">UFI, or null.</param>
public sealed record CatalogueRow(
    string Id,
    string Name,
    string Edition,
    IReadOnlyList<string> Places,
    IReadOnlyList<string> Classes,
    string? SignalWord,
    IReadOnlyList<string> Statements,
    double LoadOfCandlePercent,
    IReadOnlyList<string> LimitsBroken,
    bool StopsSale,
    string? Ufi
)
{
    /// <summary>The line of an assessed candle.</summary>
    public static CatalogueRow Of(Assessment a) =>
        new(
            a.Id,
            a.Candle.Name,
            a.Edition.Id,
            [.. a.Places.Select(p => p.Code)],
            [.. a.Classification.Classes.Select(c => c.Category.Code)],
            a.Label.SignalWord?.Text,
            [.. a.Label.Hazard.Concat(a.Label.Supplemental).Select(s => s.Text)],
            double.Parse(Figures.Plain(a.Composition.Recipe.Load.Value), System.Globalization.CultureInfo.InvariantCulture),
            [.. a.Limits.Where(l => l.Holds == false).Select(l => l.Name)],
            a.StopsSale,
            a.Ufi
        );
}
