using System.Text.RegularExpressions;

namespace Chandlery.Core.Law;

/// <summary>A hazard class with category, as GHS and CLP abbreviate it.</summary>
/// <param name="Index">Position in the vocabulary; lets rules look hazards up without comparing text.</param>
/// <param name="ClassCode">Abbreviated class, such as <c>Skin Sens.</c></param>
/// <param name="Category">Category, such as <c>1B</c>; empty for a class without categories.</param>
/// <param name="Variant">Route or effect where one category has several, such as <c>oral</c>; empty otherwise.</param>
/// <param name="Statement">Hazard statement code of the category.</param>
/// <param name="Group">The family in which only the worst result counts, such as <c>skin damage</c>.</param>
/// <param name="Severity">Rank within the group; 0 is the worst.</param>
/// <param name="Plain">What the class means, in a sentence for a reader who is no chemist.</param>
/// <param name="Area">Physical, health or environment.</param>
public sealed record HazardCategory(
    int Index,
    string ClassCode,
    string Category,
    string Variant,
    string Statement,
    string Group,
    int Severity,
    string Plain,
    HazardArea Area
)
{
    /// <summary>Class and category, such as <c>Skin Sens. 1B</c>; with the route or effect where there are several.</summary>
    public string Code { get; } =
        (Category.Length == 0 ? ClassCode : ClassCode + " " + Category) + (Variant.Length == 0 ? "" : " (" + Variant + ")");

    /// <inheritdoc/>
    public override string ToString() => Code;

    /// <inheritdoc/>
    public bool Equals(HazardCategory? other) => other is not null && Index == other.Index && Code == other.Code;

    /// <inheritdoc/>
    public override int GetHashCode() => Index;
}

/// <summary>The three parts of the hazard classes.</summary>
public enum HazardArea
{
    /// <summary>Physical hazards.</summary>
    Physical,

    /// <summary>Hazards to health.</summary>
    Health,

    /// <summary>Hazards to the environment.</summary>
    Environment,
}

/// <summary>All hazard categories that declarations and rules may name.</summary>
public sealed partial class HazardVocabulary
{
    private readonly Dictionary<string, List<HazardCategory>> byPlainName = [];

    /// <summary>Builds the vocabulary; each category's <see cref="HazardCategory.Index"/> is its position.</summary>
    public HazardVocabulary(IReadOnlyList<HazardCategory> categories)
    {
        Categories = categories;
        foreach (HazardCategory category in categories)
        {
            string plain = PlainText.Of(category.ClassCode + category.Category);
            if (!byPlainName.TryGetValue(plain, out List<HazardCategory>? list))
            {
                byPlainName[plain] = list = [];
            }

            list.Add(category);
        }
    }

    /// <summary>All categories in their order.</summary>
    public IReadOnlyList<HazardCategory> Categories { get; }

    /// <summary>The category with this full code (as <see cref="HazardCategory.Code"/> writes it), or null.</summary>
    public HazardCategory? Find(string code) => Categories.FirstOrDefault(c => c.Code == code);

    /// <summary>
    /// Reads a class as sheets print it: <c>Skin Sens. 1B, H317</c>, <c>Acute Tox. 4 * - H302</c>,
    /// <c>Aquatic Chronic 2</c>. The statement may be left out where the category alone decides.
    /// </summary>
    /// <param name="text">The printed text.</param>
    /// <param name="why">What is wrong and what to write, when the result is null.</param>
    public Declared.HazardClaim? TryParse(string text, out string why)
    {
        Match statementMatch = StatementCode().Match(text);
        string statement = statementMatch.Success ? statementMatch.Value : "";
        string name = statementMatch.Success ? text.Remove(statementMatch.Index, statementMatch.Length) : text;
        string plain = PlainText.Of(name);
        if (plain.Length == 0 && statement.StartsWith("EUH", StringComparison.Ordinal))
        {
            plain = PlainText.Of(statement);
        }

        if (!byPlainName.TryGetValue(plain, out List<HazardCategory>? candidates))
        {
            string nearest = Suggestion.Nearest(plain, byPlainName.Keys) is { } key
                ? $" Did you mean '{byPlainName[key][0].ClassCode} {byPlainName[key][0].Category}'?"
                : "";
            why =
                $"'{text.Trim()}' names no hazard class that is known here.{nearest} Write it as CLP abbreviates it, such as 'Skin Sens. 1B, H317'.";
            return null;
        }

        if (statement.Length == 0)
        {
            if (candidates.Count > 1)
            {
                why =
                    $"'{text.Trim()}' leaves open which of {string.Join(", ", candidates.Select(c => $"{c.Statement} ({c.Variant})"))} is meant: add the statement.";
                return null;
            }

            why = "";
            return new Declared.HazardClaim(candidates[0], candidates[0].Statement);
        }

        foreach (HazardCategory candidate in candidates)
        {
            if (Belongs(statement, candidate.Statement))
            {
                why = "";
                return new Declared.HazardClaim(candidate, statement);
            }
        }

        why =
            $"'{text.Trim()}': {statement} does not belong to {candidates[0].ClassCode} {candidates[0].Category}, whose statement is {string.Join(" or ", candidates.Select(c => c.Statement).Distinct())}.";
        return null;
    }

    // H360FD, H361d, H350i... are variants that say more about the same category.
    private static bool Belongs(string printed, string own) =>
        printed == own
        || (printed.Length > own.Length && printed.StartsWith(own, StringComparison.Ordinal) && !char.IsAsciiDigit(printed[own.Length]));

    [GeneratedRegex(@"\b(?:EUH|H)[0-9]{3}(?:[A-Za-z]{0,2})?", RegexOptions.CultureInvariant)]
    private static partial Regex StatementCode();
}
