using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads a specific concentration limit as sheets and the law print it: <c>Skin Irrit. 2, H315: 1 % &lt;= C &lt; 5 %</c>.</summary>
internal static partial class SpecificLimitText
{
    /// <summary>The limit, or what is wrong with the text.</summary>
    public static Parsed<SpecificLimit> Parse(string text, HazardVocabulary vocabulary)
    {
        int colon = text.LastIndexOf(':');
        Match condition = Condition().Match(colon < 0 ? "" : text[(colon + 1)..].Replace('≥', '>').Replace('≤', '<'));
        if (!condition.Success)
        {
            return Parsed.Not<SpecificLimit>(
                $"'{text}' is not a specific concentration limit. Write class, statement, colon and condition: 'Skin Sens. 1A, H317: C >= 0.01 %' or 'Skin Irrit. 2, H315: 1 % <= C < 5 %'."
            );
        }

        Parsed<HazardClaim> claim = vocabulary.Parse(text[..colon]);
        if (!claim.Success)
        {
            return Parsed.Not<SpecificLimit>(claim.Reason);
        }

        MassPercent from = Percent(condition, "from");
        MassPercent? below = condition.Groups["below"].Success ? Percent(condition, "below") : null;
        return below is { } end && end <= from
            ? Parsed.Not<SpecificLimit>($"'{text}' runs backwards.")
            : Parsed.As(new SpecificLimit(claim.Value.Category, from, below));
    }

    private static MassPercent Percent(Match match, string group) =>
        new(double.Parse(match.Groups[group].Value.Replace(',', '.'), CultureInfo.InvariantCulture));

    [GeneratedRegex(
        @"^\s*(?:C\s*>=?\s*(?<from>[0-9]+(?:[.,][0-9]+)?)\s*%|(?<from>[0-9]+(?:[.,][0-9]+)?)\s*%?\s*<=?\s*C\s*<=?\s*(?<below>[0-9]+(?:[.,][0-9]+)?)\s*%)\s*$"
    )]
    private static partial Regex Condition();
}
