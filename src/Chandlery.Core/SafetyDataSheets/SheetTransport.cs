using Chandlery.Core.Classified;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Section 14: how the candle travels.</summary>
/// <param name="UnNumber">UN number, or "not regulated".</param>
/// <param name="Name">Proper shipping name with the substances that cause it.</param>
/// <param name="Class">Transport hazard class.</param>
/// <param name="PackingGroup">Packing group.</param>
/// <param name="Environment">Environmental hazards.</param>
/// <param name="Precautions">Special precautions for the user.</param>
/// <param name="IsDangerousGoods">True when it is UN 3077.</param>
public sealed record SheetTransport(
    string UnNumber,
    string Name,
    string Class,
    string PackingGroup,
    string Environment,
    string Precautions,
    bool IsDangerousGoods
)
{
    private const string None = "Not regulated.";

    /// <summary>Decides from the classification by the criteria of the UN Model Regulations, which all places share.</summary>
    public static SheetTransport Of(TransportRules rules, Classification classification, Grams net)
    {
        List<ClassResult> causes = [.. classification.Classes.Where(c => rules.Classes.Contains(c.Category))];
        if (causes.Count == 0)
        {
            return new SheetTransport(
                $"{rules.NotRegulated} ({rules.Clause})",
                None,
                None,
                None,
                "None on the declared data.",
                rules.NotTested,
                false
            );
        }

        IEnumerable<string> names = causes
            .SelectMany(c => c.Causes)
            .Distinct()
            .OrderByDescending(s => s.Ingredient.High.Value)
            .Select(s => s.Name)
            .Take(rules.MostNames);
        string small =
            net.Value <= rules.SmallUpTo.Value
                ? $"This candle ({net}) is in packages of at most {Figures.Plain(rules.SmallUpTo.Value / 1000)} kg: then no other provision applies if the packaging meets the general rules ({rules.SmallClause})."
                : $"Packages over {Figures.Plain(rules.SmallUpTo.Value / 1000)} kg net travel as dangerous goods; smaller ones are free ({rules.SmallClause}).";
        return new SheetTransport(
            $"{rules.UnNumber} ({string.Join(", ", causes.Select(c => c.Category.Code))}; {rules.Clause})",
            $"{rules.Name} (contains {string.Join(", ", names)})",
            rules.Class,
            rules.PackingGroup,
            "Environmentally hazardous; marine pollutant.",
            $"{small} {rules.NotTested}",
            true
        );
    }
}
