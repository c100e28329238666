using Chandlery.Core.Classified;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Whether the candle travels as dangerous goods, for section 14.</summary>
/// <param name="Classes">Codes of the classes that make it dangerous goods; empty when it is none.</param>
/// <param name="Names">Substances that the proper shipping name carries.</param>
/// <param name="IsSmallPackage">Whether its net mass is one that is free of the other provisions.</param>
public sealed record SheetTransport(IReadOnlyList<string> Classes, IReadOnlyList<string> Names, bool IsSmallPackage)
{
    /// <summary>True when it is dangerous goods.</summary>
    public bool IsDangerousGoods => Classes.Count > 0;

    /// <summary>Decides from the classification by the criteria of the UN Model Regulations, which all places share.</summary>
    public static SheetTransport Of(TransportRules rules, Classification classification, Grams net)
    {
        List<ClassResult> causes = [.. classification.Classes.Where(c => rules.Classes.Contains(c.Category))];
        IEnumerable<string> names = causes
            .SelectMany(c => c.Causes)
            .Distinct()
            .OrderByDescending(s => s.Ingredient.High.Value)
            .Select(s => s.Name)
            .Take(rules.MostNames);
        return new SheetTransport([.. causes.Select(c => c.Category.Code)], [.. names], net.Value <= rules.SmallUpTo.Value);
    }
}
