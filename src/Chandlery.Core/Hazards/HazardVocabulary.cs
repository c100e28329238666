using System.Text.RegularExpressions;
using Chandlery.Yaml;

namespace Chandlery.Core.Hazards;

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
    public Parsed<HazardClaim> Parse(string text)
    {
        Match statementMatch = StatementText().Match(text);
        StatementCode? statement = statementMatch.Success ? StatementCode.TryParse(statementMatch.Value) : null;
        string name = statementMatch.Success ? text.Remove(statementMatch.Index, statementMatch.Length) : text;
        string plain = PlainText.Of(name);
        if (plain.Length == 0 && statement?.IsSupplemental == true)
        {
            plain = PlainText.Of(statement);
        }

        // "STOT RE 2, H373 (kidneys)": the organs are kept, and are no part of the class's name.
        string organs = "";
        if (OrgansText().Match(name) is { Success: true } match && !byPlainName.ContainsKey(plain))
        {
            string without = PlainText.Of(name.Remove(match.Index, match.Length));
            if (byPlainName.TryGetValue(without, out List<HazardCategory>? named) && named[0].NamesOrgans)
            {
                plain = without;
                organs = match.Groups["organs"].Value.Trim();
            }
        }

        if (!byPlainName.TryGetValue(plain, out List<HazardCategory>? candidates))
        {
            string nearest = Suggestion.Nearest(plain, byPlainName.Keys) is { } key
                ? $" Did you mean '{byPlainName[key][0].ClassCode} {byPlainName[key][0].Category}'?"
                : "";
            return Parsed.Not<HazardClaim>(
                $"'{text.Trim()}' names no hazard class that is known here.{nearest} Write the class as sheets abbreviate it, such as 'Skin Sens. 1B, H317'."
            );
        }

        if (statement is null)
        {
            if (candidates.Count > 1)
            {
                return Parsed.Not<HazardClaim>(
                    $"'{text.Trim()}' leaves open which of {string.Join(", ", candidates.Select(c => $"{c.Statement} ({c.Variant})"))} is meant: add the statement."
                );
            }

            return Parsed.As(new HazardClaim(candidates[0], candidates[0].Statement, organs));
        }

        foreach (HazardCategory candidate in candidates)
        {
            if (Belongs(statement, candidate.Statement))
            {
                return Parsed.As(new HazardClaim(candidate, statement, organs));
            }
        }

        return Parsed.Not<HazardClaim>(
            $"'{text.Trim()}': {statement} does not belong to {candidates[0].ClassCode} {candidates[0].Category}, whose statement is {string.Join(" or ", candidates.Select(c => c.Statement).Distinct())}."
        );
    }

    // H360FD, H361d, H350i... are variants that say more about the same category.
    private static bool Belongs(string printed, string own) =>
        printed == own
        || (printed.Length > own.Length && printed.StartsWith(own, StringComparison.Ordinal) && !char.IsAsciiDigit(printed[own.Length]));

    [GeneratedRegex(@"\b(?:EUH|H)[0-9]{3}(?:[A-Za-z]{0,2})?", RegexOptions.CultureInvariant)]
    private static partial Regex StatementText();

    [GeneratedRegex(@"\((?<organs>[^()]+)\)", RegexOptions.CultureInvariant)]
    private static partial Regex OrgansText();
}
