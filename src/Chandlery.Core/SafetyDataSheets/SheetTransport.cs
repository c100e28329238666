using Chandlery.Core.Classified;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Whether the candle travels as dangerous goods, for section 14.</summary>
/// <param name="Entry">The entry of the list of dangerous goods; where it is none, the one that its state could lead to.</param>
/// <param name="Classes">Codes of the classes that make it dangerous goods; empty when it is none.</param>
/// <param name="Names">Substances that the proper shipping name carries.</param>
/// <param name="IsSmallPackage">Whether its net quantity is one that is free of the other provisions.</param>
public sealed record SheetTransport(TransportEntry Entry, IReadOnlyList<string> Classes, IReadOnlyList<string> Names, bool IsSmallPackage)
{
    /// <summary>True when it is dangerous goods.</summary>
    public bool IsDangerousGoods => Classes.Count > 0;

    /// <summary>True when it is dangerous to waters, whatever its entry.</summary>
    public required bool IsDangerousToWaters { get; init; }

    /// <summary>True when it may travel as a limited quantity.</summary>
    public required bool IsLimitedQuantity { get; init; }

    /// <summary>Decides from the classification by the criteria of the UN Model Regulations, which all places share.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="classification">Its classes.</param>
    /// <param name="state">Solid or liquid.</param>
    /// <param name="net">Net mass.</param>
    /// <param name="volume">Net volume of a liquid; null for solids.</param>
    public static SheetTransport Of(
        TransportRules rules,
        Classification classification,
        PhysicalState state,
        Grams net,
        Millilitres? volume
    )
    {
        List<TransportEntry> entries = [.. rules.EntriesOf(state)];
        TransportEntry entry = entries.Find(e => classification.Classes.Any(c => e.Classes.Contains(c.Category))) ?? entries[^1];
        List<ClassResult> causes = [.. classification.Classes.Where(c => entry.Classes.Contains(c.Category))];
        IEnumerable<string> names = causes
            .SelectMany(c => c.Causes)
            .Distinct()
            .OrderByDescending(s => s.Ingredient.High.Value)
            .Select(s => s.Name)
            .Take(entry.NamesSubstances ? rules.MostNames : 0);
        bool isSmall = volume is { } millilitres ? millilitres.Value <= rules.SmallLiquidUpTo.Value : net.Value <= rules.SmallUpTo.Value;
        return new SheetTransport(entry, [.. causes.Select(c => c.Category.Code)], [.. names], entry.IsFreeWhenSmall && isSmall)
        {
            IsDangerousToWaters = classification.Classes.Any(c => rules.Solid.Classes.Contains(c.Category)),
            IsLimitedQuantity = causes.Count > 0 && entry.LimitedUpTo is { } most && volume?.Value <= most.Value,
        };
    }
}
