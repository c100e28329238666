using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads flash point and density from section 9.</summary>
internal sealed partial class PhysicalReader(SheetWording wording, LabelFinder labels, int document)
{
    /// <summary>The flash point; null when none is found.</summary>
    public Found<DraftFlashPoint>? FlashPoint(IReadOnlyList<TextLine> lines)
    {
        foreach (Labelled value in labels.All(lines, "flashPoint"))
        {
            Match match = Temperature().Match(value.Text);
            if (!match.Success)
            {
                continue;
            }

            var doubts = new List<string>();
            double figure = Number(match.Groups["t"].Value);
            string sign = match.Groups["sign"].Value;
            if (match.Groups["unit"].Value.Equals("F", StringComparison.OrdinalIgnoreCase))
            {
                doubts.Add($"converted from {match.Groups["t"].Value} °F");
                figure = Math.Floor((figure - 32) * 50 / 9) / 10;
            }

            if (sign.StartsWith('<') || sign == "≤")
            {
                doubts.Add("the sheet gives only an upper bound; it is drafted as the flash point, the true one may be lower");
            }

            if (match.Groups["to"].Success)
            {
                doubts.Add("the sheet gives a range; its low end is drafted");
            }

            string? method =
                Phrase.AnyIn(wording.Lists["closedCup"], value.Text) ? "closed cup"
                : Phrase.AnyIn(wording.Lists["openCup"], value.Text) ? "open cup"
                : null;
            return new Found<DraftFlashPoint>(
                new DraftFlashPoint(figure, sign.StartsWith('>') || sign == "≥", method),
                document,
                value.Page,
                value.Box,
                value.IsUnder ? [.. doubts, "it stands under its label, not beside it"] : doubts
            );
        }

        return null;
    }

    /// <summary>The density, grams per millilitre; null when none is found.</summary>
    public Found<double>? Density(IReadOnlyList<TextLine> lines)
    {
        foreach (Labelled value in labels.All(lines, "density"))
        {
            Match match = DensityPattern().Match(value.Text);
            if (!match.Success)
            {
                continue;
            }

            var doubts = new List<string>();
            double figure = Number(match.Groups["d"].Value);
            if (match.Groups["to"].Success)
            {
                doubts.Add($"the sheet gives a range; its high end is drafted");
                figure = Math.Max(figure, Number(match.Groups["to"].Value));
            }

            if (match.Groups["perCubicMetre"].Success)
            {
                figure /= 1000;
            }
            else if (!match.Groups["unit"].Success)
            {
                doubts.Add("the sheet gives no unit; grams per millilitre were assumed");
            }

            if (figure is < 0.6 or > 1.6)
            {
                doubts.Add("an oil of this density would be unusual");
            }

            return new Found<double>(figure, document, value.Page, value.Box, doubts);
        }

        return null;
    }

    private static double Number(string text) => double.Parse(text.Replace(',', '.').Replace('\u2212', '-'), CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"(?<sign>[<>≤≥]=?)?\s*(?<t>-?[0-9]{1,3}(?:[.,][0-9]+)?)(?:\s*[-\u2013]\s*(?<to>[0-9]{1,3}(?:[.,][0-9]+)?))?\s*(?:°|º|deg\.?|degrees)?\s*(?<unit>[CF])\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Temperature();

    [GeneratedRegex(
        @"(?<d>[0-9]+[.,][0-9]+|[0-9](?=\s*(?:g\s*/|kg\s*/\s*(?:l|dm)))|[0-9]{3,4}(?=\s*kg))(?:\s*(?:[-\u2013]|to|bis|à)\s*(?<to>[0-9]+[.,][0-9]+|[0-9]{3,4}))?\s*(?<unit>g\s*/\s*(?:cm|ml|cc)|kg\s*/\s*(?:l|dm)|(?<perCubicMetre>kg\s*/\s*m))?",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex DensityPattern();
}
